"""Which files a build is made from, and whether they have changed since another time."""

import hashlib
import os
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from stat import S_ISREG

# A file that was changed this shortly before it was read may be changed again without its time showing it.
_TOO_FRESH_NS = 2_000_000_000


@dataclass(frozen=True)
class Seen:
    """A file as it was found. `sign` is what the disk says of it: a file whose sign is the same need not
    be read again; '' for one that was too fresh to be sure of.
    """

    sha256: str
    sign: str


def seen_files(
    root: Path, known: Mapping[str, Seen], now_ns: int, prefix: str = ""
) -> dict[str, Seen]:
    """Every file under `root`, by `prefix` and its path with forward slashes, hidden ones left out.

    `known` is what was found another time; `now_ns` is the time. Links to folders are not followed. A file
    that cannot be read is found with the digest ''. Raises nothing: what is wrong is said by who reads it.
    """
    found: dict[str, Seen] = {}
    top = os.fspath(root)
    for folder, folders, names in os.walk(top):
        folders[:] = sorted(name for name in folders if not name.startswith("."))
        # Text, since a path object for each of many thousand files costs more than to ask the disk.
        below = folder[len(top) :].replace(os.sep, "/").lstrip("/")
        before = f"{prefix}{below}/" if below else prefix
        for name in sorted(names):
            if not name.startswith("."):
                path = before + name
                found[path] = _seen(os.path.join(folder, name), known.get(path), now_ns)
    return found


def changed(before: Mapping[str, Seen], after: Mapping[str, Seen]) -> tuple[str, ...]:
    """Paths of the files that were added, taken away or have other contents, sorted."""
    return tuple(
        path
        for path in sorted({*before, *after})
        if path not in before or path not in after or before[path].sha256 != after[path].sha256
    )


def _seen(file: str, known: Seen | None, now_ns: int) -> Seen:
    try:
        stat = os.stat(file)
        if not S_ISREG(stat.st_mode):  # reading a pipe or a device might never end
            return Seen("", "")
        newest = max(stat.st_mtime_ns, stat.st_ctime_ns)
        fresh = newest > now_ns - _TOO_FRESH_NS
        sign = f"{stat.st_size} {stat.st_mtime_ns} {stat.st_ctime_ns} {stat.st_ino}"
        if known and known.sign == sign and not fresh:
            return known
        with open(file, "rb") as stream:
            return Seen(hashlib.file_digest(stream, "sha256").hexdigest(), "" if fresh else sign)
    except OSError:
        return Seen("", "")
