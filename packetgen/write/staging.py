"""The next build is put together beside the last one, which it then replaces in one step.

Beside the folder `build` stands, while a build is at work, `.build-next`: in it `lock`, held until all
is done; `new-…`, the next build, under a name of its own, so that a process left over by a build that was
cut off cannot write into the next one; `scratch-…`, what is made on the way; and, only where the system
cannot exchange two folders in one step, for a moment `old`, the last build. Whoever finds `.build-next`
left over puts `old` back where `build` is missing and throws the rest away.

Where nothing can stand beside the build folder (a disk or a folder is mounted there, or the folder around
it may not be written), the same stands in it as `.next`, and what lies in it is exchanged one after the
other: first the single files, which tell what the folders hold, are set aside, and last the new ones are
put in their place.
"""

import errno
import os
import secrets
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from filelock import FileLock, Timeout

from packetgen.write.exchange import CannotExchange, exchange
from packetgen.write.mounts import is_mounted, mounted_below

_MOUNTED = "a folder or disk is mounted there, in the build folder; mount it at the build folder itself, or elsewhere"
_NOT_PUT_BACK = (
    "the last build could not be put back whole; until the next build the rest of it lies here"
)
TOPS = ("site", "packets", "share", "ledger", ".kept")  # the folders of a build


class NotPutBack(OSError):
    """Of the last build some is left in the work folder only."""


class Staging:
    """The next build while it grows. Paths have forward slashes and begin with a top folder."""

    def __init__(self, last: Path, work: Path) -> None:
        turn = secrets.token_hex(4)
        self.last, self.folder = last, work / f"new-{turn}"
        # For what is needed until the build is done; may not exist yet.
        self.scratch = work / f"scratch-{turn}"
        self._folders: set[str] = set()  # those that were made

    def write(self, path: str, data: bytes) -> None:
        """Raises OSError, and ValueError for a path that would leave the build."""
        target = Path(self._target(path))
        target.unlink(missing_ok=True)  # what is linked to the last build must not change there
        target.write_bytes(data)

    def keep(self, path: str) -> None:
        """Take a file over from the last build, without reading it where the disk can do that."""
        _link(f"{self.last}/{path}", self._target(path))

    def read(self, path: str) -> bytes:
        """A file of the next build. Raises OSError."""
        return (self.folder / path).read_bytes()

    def _target(self, path: str) -> str:
        """Text, since a path object for each of many thousand files costs more than to link it."""
        if not _stands_inside(path):
            raise ValueError(f"{path!r} does not stand in the build folder")
        folder = path.rpartition("/")[0]
        if folder not in self._folders:
            (self.folder / folder).mkdir(parents=True, exist_ok=True)
            self._folders.add(folder)
        return f"{self.folder}/{path}"


def _stands_inside(path: str) -> bool:
    parts = path.split("/")
    return (
        all(parts)
        and ".." not in parts
        and "." not in parts
        and "\\" not in path
        and ":" not in parts[0]
    )


@contextmanager
def next_build(build: Path, wait: Callable[[], None] = lambda: None) -> Iterator[Staging]:
    """What is written inside replaces `build` on leaving; on any exception the last build stays.

    Where another build is at work there, `wait` is called and its end is waited for. What else
    lies in `build` stays in it. Raises OSError; NotPutBack where the disk did not allow even the last build.
    """
    build = build.resolve()
    if mounted := mounted_below(
        build
    ):  # it would be emptied with the last build, and not filled again
        raise OSError(errno.EBUSY, _MOUNTED, str(mounted))
    inside = is_mounted(build) or (build.exists() and not os.access(build.parent, os.W_OK))
    work = build / ".next" if inside else build.with_name(f".{build.name}-next")
    with _locked(work / "lock", wait):
        _recover(build, work)
        staging = Staging(build, work)
        try:
            staging.folder.mkdir()
            yield staging
            if inside:
                _swap_tops(staging, work / "old")
            else:
                _carry_over(staging)
                _swap(staging, work / "old")
        except NotPutBack:  # there is no other copy
            raise
        except BaseException:
            _clear(work)
            raise
        _clear(work)


@contextmanager
def _locked(path: Path, wait: Callable[[], None]) -> Iterator[None]:
    lock = FileLock(path)
    try:
        _acquire(lock, path, wait)
        yield
    finally:
        if os.name == "posix":  # elsewhere an open file cannot be removed
            with suppress(OSError):  # another build holds it
                if not lock.is_locked:  # the end may have come before it was
                    lock.acquire(timeout=0)
                path.unlink()
            with suppress(OSError):  # another build has begun in it
                path.parent.rmdir()
        lock.release()


def _acquire(lock: FileLock, path: Path, wait: Callable[[], None]) -> None:
    """Wait for as long as it takes. The build that is waited for removes the lock and its folder."""
    while True:
        path.parent.mkdir(parents=True, exist_ok=True)
        with suppress(FileNotFoundError):
            try:
                lock.acquire(timeout=0)
            except Timeout:
                wait()
                lock.acquire()
            if path.exists():
                return
            lock.release()


def _recover(build: Path, work: Path) -> None:
    if (work / "old").exists() and not build.exists():
        os.replace(work / "old", build)
    _clear(work)


def _clear(work: Path) -> None:
    for entry in work.iterdir():
        if entry.name != "lock":
            shutil.rmtree(entry, ignore_errors=True)


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
            _put_back([lambda: os.replace(aside, staging.last)], aside.parent)
            raise


def _swap_tops(staging: Staging, aside: Path) -> None:
    """Raises OSError; what was exchanged by then is put back, the single files last. NotPutBack if that
    fails: those files are then missing, and no record tells of folders that are not there."""
    aside.mkdir()
    back: list[Callable[[], None]] = []

    def move(source: Path, target: Path) -> None:
        os.replace(source, target)
        back.append(lambda: os.replace(target, source))

    def take_place(entry: Path, top: Path) -> None:
        try:
            exchange(entry, top)
            back.append(lambda: exchange(entry, top))
        except CannotExchange:
            move(top, aside / entry.name)
            move(entry, top)

    entries = sorted(staging.folder.iterdir())
    try:
        for entry in entries:
            top = staging.last / entry.name
            if entry.is_file() and top.exists():
                move(top, aside / entry.name)
        for entry in sorted(entries, key=Path.is_file):
            top = staging.last / entry.name
            if top.exists():
                take_place(entry, top)
            else:
                move(entry, top)
    except OSError:
        _put_back(back, aside.parent)
        raise


def _put_back(back: list[Callable[[], None]], work: Path) -> None:
    """Raises NotPutBack at the first step that fails."""
    try:
        for undo in reversed(back):
            undo()
    except OSError as error:
        raise NotPutBack(error.errno, _NOT_PUT_BACK, str(work)) from error


def _link(source: str | Path, target: str | Path) -> None:
    try:
        os.link(source, target, follow_symlinks=False)
    except OSError:
        shutil.copy2(source, target, follow_symlinks=False)
