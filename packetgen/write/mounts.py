"""Whether something is mounted at a folder, which then cannot be moved or exchanged.

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
    if os.path.ismount(folder):
        return True
    try:
        listed = _MOUNTINFO.read_bytes()
    except OSError:
        return False
    return os.fsencode(folder) in mount_points(listed)


def mount_points(mountinfo: bytes) -> frozenset[bytes]:
    """The folders at which something is mounted, as the list of that name tells them."""
    lines = (line.split(b" ") for line in mountinfo.splitlines())
    return frozenset(_OCTAL.sub(_byte, line[_FOLDER]) for line in lines if len(line) > _FOLDER)


def _byte(octal: re.Match[bytes]) -> bytes:
    return bytes([int(octal[1], 8) & 0xFF])
