"""Several files that belong together: all of them written, or none."""

import os
from collections.abc import Mapping
from pathlib import Path


def replaced_together(files: Mapping[Path, bytes]) -> None:
    """Make every path hold its bytes; folders that are not there yet are made.

    Everything is written beside the old files first, so that little can go wrong once the first of
    them is exchanged. Raises OSError; every file is then as it was.
    """
    before = {path: path.read_bytes() if path.exists() else None for path in files}
    new_folders = {path.parent for path in files if not path.parent.exists()}
    beside = {path: path.with_name(f"_{path.name}.next") for path in files}
    exchanged: list[Path] = []
    try:
        for folder in sorted(new_folders):
            folder.mkdir()
        for path, data in files.items():
            beside[path].write_bytes(data)
        for path in files:
            os.replace(beside[path], path)
            exchanged.append(path)
    except OSError:
        for path in exchanged:
            _put_back(path, beside[path], before[path])
        for path in beside.values():
            path.unlink(missing_ok=True)
        for folder in sorted(new_folders, reverse=True):
            if folder.exists():
                folder.rmdir()
        raise


def _put_back(path: Path, beside: Path, data: bytes | None) -> None:
    if data is None:
        path.unlink()
        return
    beside.write_bytes(data)
    os.replace(beside, path)
