"""Puts a finished build on the disk: staged beside the old one, then swapped in."""

import io
import os
import shutil
import zipfile
from collections.abc import Mapping
from pathlib import Path

# Zip files carry a date for every entry; this is the earliest that the format knows.
_NO_DATE = (1980, 1, 1, 0, 0, 0)


def swap_in(build: Path, files: Mapping[str, bytes], keep_others: bool = False) -> None:
    """Make `build` hold `files` (paths with forward slashes; the first part is a top folder).

    Each top folder is replaced whole once everything is written. With `keep_others`, files of the last
    build that are not in `files` are kept. Raises OSError; the last build is then still in its place.
    """
    staging, previous = build / ".next", build / ".previous"
    for leftover in (staging, previous):
        shutil.rmtree(leftover, ignore_errors=True)
    staging.mkdir(parents=True)
    try:
        tops = sorted({path.partition("/")[0] for path in files})
        if keep_others:
            for top in tops:
                if (build / top).is_dir():
                    shutil.copytree(build / top, staging / top)
        for path, data in files.items():
            target = staging / path
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_bytes(data)
        previous.mkdir()
        for top in tops:
            if (build / top).exists():
                os.replace(build / top, previous / top)
            os.replace(staging / top, build / top)
    except OSError:
        _put_back(build, previous)
        raise
    finally:
        shutil.rmtree(staging, ignore_errors=True)
        shutil.rmtree(previous, ignore_errors=True)


def _put_back(build: Path, previous: Path) -> None:
    """Undo a swap that stopped half way: every top folder that was set aside returns."""
    for kept in sorted(previous.iterdir()) if previous.is_dir() else ():
        shutil.rmtree(build / kept.name, ignore_errors=True)
        os.replace(kept, build / kept.name)


def replaced(path: Path, data: bytes) -> bool:
    """Whether the file had to be written, since it did not hold `data` yet; never half written.

    Raises OSError.
    """
    if path.is_file() and path.read_bytes() == data:
        return False
    beside = path.with_name(f"_{path.name}.next")  # a name that nothing reads
    try:
        beside.write_bytes(data)
        os.replace(beside, path)
    finally:
        beside.unlink(missing_ok=True)
    return True


def zipped(files: Mapping[str, bytes]) -> bytes:
    """A zip with these files, the same bytes every time."""
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in files.items():
            entry = zipfile.ZipInfo(name, _NO_DATE)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, data)
    return target.getvalue()
