"""The next build is put together beside the last one, which it then replaces in one step.

Beside the folder `build` stands, while a build is at work, `.build-next`: in it `lock`, held until all
is done; `new`, the next build; `scratch`, what is made on the way; and, only where the system cannot exchange two folders in one step, for
a moment `old`, the last build. Whoever finds `.build-next` left over by a build that was cut off puts
`old` back where `build` is missing and throws the rest away.

Where nothing can stand beside the build folder (another disk, a folder that may not be written), the
same stands in it as `.next`, and its top folders are exchanged one after the other.
"""

import os
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path, PurePosixPath

from filelock import FileLock, Timeout

from packetgen.write.exchange import CannotExchange, exchange

TOPS = ("site", "packets", "share", "ledger")  # the folders of a build


class Staging:
    """The next build while it grows. Paths have forward slashes and begin with a top folder."""

    def __init__(self, last: Path, work: Path) -> None:
        self.last, self.folder = last, work / "new"
        self.scratch = (
            work / "scratch"
        )  # for what is needed until the build is done; may not exist yet

    def write(self, path: str, data: bytes) -> None:
        """Raises OSError, and ValueError for a path that would leave the build."""
        target = self._target(path)
        target.unlink(missing_ok=True)  # what is linked to the last build must not change there
        target.write_bytes(data)

    def keep(self, path: str) -> None:
        """Take a file over from the last build, without reading it where the disk can do that."""
        _link(self.last / path, self._target(path))

    def read(self, path: str) -> bytes:
        """A file of the next build. Raises OSError."""
        return (self.folder / path).read_bytes()

    def keep_rest(self) -> None:
        """Take over every file of the last build that this one has not made."""
        for path in files_of(self.last):
            if not (self.folder / path).exists():
                self.keep(path)

    def _target(self, path: str) -> Path:
        parts = PurePosixPath(path).parts
        if not parts or path.startswith("/") or ".." in parts or "\\" in path or ":" in parts[0]:
            raise ValueError(f"{path!r} does not stand in the build folder")
        target = self.folder.joinpath(*parts)
        target.parent.mkdir(parents=True, exist_ok=True)
        return target


def files_of(build: Path) -> tuple[str, ...]:
    """Every file in the top folders of a build, by its path in it."""
    return tuple(
        path.relative_to(build).as_posix()
        for top in TOPS
        for path in sorted((build / top).rglob("*"))
        if path.is_file()
    )


@contextmanager
def next_build(build: Path, wait: Callable[[], None] = lambda: None) -> Iterator[Staging]:
    """What is written inside replaces `build` on leaving; on any exception the last build stays.

    Where another build is at work there, `wait` is called once and its end is waited for. What else
    lies in `build` stays in it. Raises OSError.
    """
    build = build.resolve()
    inside = os.path.ismount(build) or (build.exists() and not os.access(build.parent, os.W_OK))
    work = build / ".next" if inside else build.with_name(f".{build.name}-next")
    work.mkdir(parents=True, exist_ok=True)
    with _locked(work / "lock", wait):
        _recover(build, work)
        staging = Staging(build, work)
        staging.folder.mkdir()
        try:
            yield staging
            if inside:
                _swap_tops(staging, work / "old")
            else:
                _carry_over(staging)
                _swap(staging, work / "old")
        finally:
            _clear(work)


@contextmanager
def _locked(path: Path, wait: Callable[[], None]) -> Iterator[None]:
    lock = FileLock(path)
    try:
        lock.acquire(timeout=0)
    except Timeout:
        wait()
        _acquire(lock, path)
    try:
        yield
    finally:
        if os.name == "posix":  # elsewhere an open file cannot be removed
            path.unlink(missing_ok=True)
            with suppress(OSError):  # another build has begun in it
                path.parent.rmdir()
        lock.release()


def _acquire(lock: FileLock, path: Path) -> None:
    """Wait for as long as it takes. The build that is waited for removes the folder of the lock."""
    while True:
        with suppress(FileNotFoundError):
            path.parent.mkdir(exist_ok=True)
            lock.acquire()
            return


def _recover(build: Path, work: Path) -> None:
    if (work / "old").exists() and not build.exists():
        os.replace(work / "old", build)
    _clear(work)


def _clear(work: Path) -> None:
    for name in ("new", "old", "scratch"):
        shutil.rmtree(work / name, ignore_errors=True)


def _carry_over(staging: Staging) -> None:
    """What an author has put into the build folder herself stays there."""
    if not staging.last.is_dir():
        return
    for entry in staging.last.iterdir():
        if entry.name in TOPS or entry.name == ".next" or (staging.folder / entry.name).exists():
            continue
        target = staging.folder / entry.name
        if entry.is_dir() and not entry.is_symlink():
            shutil.copytree(entry, target, symlinks=True, copy_function=_link)
        else:
            _link(entry, target)


def _swap(staging: Staging, aside: Path) -> None:
    if not staging.last.exists():
        os.replace(staging.folder, staging.last)
        return
    try:
        exchange(staging.folder, staging.last)
    except CannotExchange:
        os.replace(staging.last, aside)
        try:
            os.replace(staging.folder, staging.last)
        except OSError:
            os.replace(aside, staging.last)
            raise


def _swap_tops(staging: Staging, aside: Path) -> None:
    aside.mkdir()
    for entry in sorted(staging.folder.iterdir()):
        top = staging.last / entry.name
        try:
            if top.exists():
                exchange(entry, top)
            else:
                os.replace(entry, top)
        except CannotExchange:
            os.replace(top, aside / entry.name)
            os.replace(entry, top)


def _link(source: str | Path, target: str | Path) -> None:
    try:
        os.link(source, target, follow_symlinks=False)
    except OSError:
        shutil.copy2(source, target, follow_symlinks=False)
