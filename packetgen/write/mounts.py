"""Whether something is mounted at a folder or in it, which then cannot be moved, exchanged or replaced.

A folder of the same disk that is mounted there (a bind mount, as containers make them) looks to stat(2)
like any other folder. Linux lists what is mounted in /proc/self/mountinfo: fields between blanks, of which
the fifth is the folder, with blank, tab, line feed and backslash as three octal digits (proc(5)).
"""

import os
import re
from pathlib import Path

_MOUNTINFO = Path("/proc/self/mountinfo")
_FOLDER = 4  # the fifth field
_OCTAL = re.compile(rb"\\([0-7]{3})")


def is_mounted(folder: Path) -> bool:
    """`folder` is an absolute path without symlinks. Where the system has no such list, what stat(2) tells
    must do. Raises nothing."""
    return os.path.ismount(folder) or os.fsencode(folder) in _mounted()


def mounted_below(folder: Path) -> Path | None:
    """The first folder in `folder`, however deep, at which something is mounted. As `is_mounted` otherwise."""
    below = os.fsencode(folder) + b"/"
    found = [Path(os.fsdecode(point)) for point in _mounted() if point.startswith(below)]
    return min(found, default=None)


def _mounted() -> frozenset[bytes]:
    try:
        return mount_points(_MOUNTINFO.read_bytes())
    except OSError:
        return frozenset()


def mount_points(mountinfo: bytes) -> frozenset[bytes]:
    """The folders at which something is mounted, as the list of that name tells them."""
    lines = (line.split(b" ") for line in mountinfo.splitlines())
    return frozenset(_OCTAL.sub(_byte, line[_FOLDER]) for line in lines if len(line) > _FOLDER)


def _byte(octal: re.Match[bytes]) -> bytes:
    return bytes([int(octal[1], 8) & 0xFF])
