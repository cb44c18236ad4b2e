"""Small disks, full disks, and disks that may not be written: for whoever may mount some."""

import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from tests.running import environment


@contextmanager
def small_disk(folder: Path, megabytes: int) -> Iterator[Path]:
    """A disk of its own at `folder`; a test is left out where none may be mounted."""
    folder.mkdir(exist_ok=True)
    _mount("-t", "tmpfs", "-o", f"size={megabytes}m", "tmpfs", folder)
    try:
        yield folder
    finally:
        subprocess.run(["umount", "--lazy", folder], check=True)


@contextmanager
def only_to_read(disk: Path) -> Iterator[None]:
    """Nobody may write to that disk meanwhile, not even whoever may do everything."""
    _mount("-o", "remount,ro", disk)
    try:
        yield
    finally:
        _mount("-o", "remount,rw", disk)


def where_mounted(folder: Path, at: Path, *words: object) -> subprocess.CompletedProcess:
    """A command for which `folder` is mounted at `at` too, as containers do it, and for nobody else; a test
    is left out where that may not be."""
    mounted = ("unshare", "--mount", "sh", "-c", _MOUNT_AND_GO, "sh", str(folder), str(at))
    try:
        tried = subprocess.run([*mounted, "true"], capture_output=True, text=True)
    except FileNotFoundError:
        pytest.skip("NOT CHECKED: there is no command that gives a process its own mounts")
    if tried.returncode:
        pytest.skip(f"NOT CHECKED: no folder may be mounted here: {tried.stderr.strip()}")
    return subprocess.run(
        [*mounted, *map(str, words)], capture_output=True, text=True, env=environment()
    )


_MOUNT_AND_GO = 'mount --bind "$1" "$2" && shift 2 && exec "$@"'


def fill(disk: Path, leave_bytes: int) -> Path:
    """A file that takes all the room of the disk but a little."""
    ballast = disk / "ballast"
    # Unbuffered: what did not fit would wait, and fail once more when the file is cut.
    with ballast.open("wb", buffering=0) as file:
        try:
            while True:
                file.write(bytes(65536))
        except OSError:
            pass
        file.truncate(max(0, file.tell() // 65536 * 65536 - leave_bytes))
    return ballast


def _mount(*words: object) -> None:
    try:
        done = subprocess.run(["mount", *map(str, words)], capture_output=True, text=True)
    except FileNotFoundError:
        pytest.skip("NOT CHECKED: there is no command to mount a disk")
    if done.returncode:
        pytest.skip(f"NOT CHECKED: no disk may be mounted here: {done.stderr.strip()}")
