"""What a hostile folder may not make the program do: no network, no writing elsewhere, not much time or room."""

import os
import resource
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

CPU_S, MEMORY_MB = 10, 500
_SOCKETS = ("socket.", "urllib.", "http.", "ftplib.", "smtplib.")
_PROCESSES = {"subprocess.Popen", "os.system", "os.exec", "os.posix_spawn", "os.startfile"}
_CHANGES = {"os.rename", "os.remove", "os.mkdir", "os.rmdir", "os.link", "os.symlink"} | {
    *("os.truncate", "os.chmod", "os.chown", "shutil.rmtree", "shutil.move", "shutil.copyfile")
}
_WRITES = os.O_WRONLY | os.O_RDWR | os.O_CREAT | os.O_TRUNC | os.O_APPEND
_SECRET_PLACES = ("/etc/passwd", "/etc/shadow", "/dev/zero", "/dev/random", "/proc/")


class Breach(BaseException):
    """Something happened that may not; no `except Exception` hides it."""


class _Watch:
    """The rules in force; one for the process, since a hook cannot be taken away again."""

    on = False
    content, out, secret = Path(), Path(), Path()
    breaches: list[str] = []


_watch: _Watch | None = None


@contextmanager
def guarded(content: Path, out: Path, secret: Path) -> Iterator[None]:
    """While this lasts nothing may reach the network, start a process, write outside `out`, or read `secret`
    (a folder) or a file of the machine. Raises Breach at the end, even where the code swallowed it.
    """
    watch = _installed()
    watch.content, watch.out, watch.secret = content, out, secret
    watch.breaches = []
    kept = sys.dont_write_bytecode, tempfile.tempdir
    # The engine lays the faces of a document into a folder for the time being, and takes it away later.
    sys.dont_write_bytecode, tempfile.tempdir = True, str(out)
    watch.on = True
    try:
        yield
    finally:
        watch.on = False
        sys.dont_write_bytecode, tempfile.tempdir = kept
    if watch.breaches:
        raise Breach("; ".join(watch.breaches))


def _installed() -> _Watch:
    global _watch
    if _watch is None:
        _watch = _Watch()
        sys.addaudithook(lambda event, given: _heard(_watch, event, given))
    return _watch


def _heard(watch: _Watch, event: str, given: tuple) -> None:
    if not watch.on:
        return
    if event.startswith(_SOCKETS) or event in _PROCESSES:
        _breach(watch, f"{event} {given!r:.80}")
    elif event in _CHANGES:
        for path in given[:2] if event in ("os.rename", "os.link", "os.symlink") else given[:1]:
            if isinstance(path, str | bytes | os.PathLike):
                at = given[-1] if isinstance(given[-1], int) and event != "os.truncate" else -1
                path = os.path.join(_open_folder(at), os.fsdecode(path))
                if not _within(path, watch.out):
                    _breach(watch, f"{event} {path!r}")
    elif event == "open" and isinstance(given[0], str | bytes | os.PathLike):
        path, flags = given[0], given[2]
        if flags & _WRITES and not _within(path, watch.out):
            _breach(watch, f"writes {path!r}")
        real = os.path.realpath(os.fsdecode(path))
        if _within(real, watch.secret) or real.startswith(_SECRET_PLACES):
            _breach(watch, f"reads {path!r}")


def _open_folder(number: int) -> str:
    """The folder that a path is told from: one that is open under this number, or the present one."""
    return os.readlink(f"/proc/self/fd/{number}") if number >= 0 else ""


def _within(path: object, folder: Path) -> bool:
    """Whether it lies there; what the engine made for itself lies in any folder of output."""
    real = os.path.realpath(os.fsdecode(path))
    if folder == _watch.out and f"{os.sep}weasyprint-" in real:
        return True
    top = os.path.realpath(folder)
    return real == top or real.startswith(top + os.sep)


def _breach(watch: _Watch, what: str) -> None:
    watch.breaches.append(what)
    raise Breach(what)


def limited(*words: object, seconds: int = CPU_S, megabytes: int = MEMORY_MB):
    """The command line in a process of its own that may use so much and no more; its completed process."""

    def limits() -> None:
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds))
        resource.setrlimit(resource.RLIMIT_AS, (megabytes * 1_000_000,) * 2)

    # Libraries set room aside for each thread, used or not.
    few = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1", "PYTHONDONTWRITEBYTECODE": "1"}
    return subprocess.run(
        [sys.executable, "-m", "packetgen", *map(str, words)],
        cwd=Path(__file__).resolve().parents[2],
        env=os.environ | few,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        preexec_fn=limits,
        timeout=120,
    )
