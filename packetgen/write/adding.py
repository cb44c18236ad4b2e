"""Files put beside others that are there already: all of them or none, and nothing is written over."""

import os
from collections.abc import Iterable, Mapping
from contextlib import suppress
from pathlib import Path

from packetgen.write.files import replaced


def in_the_way(root: Path, files: Iterable[str], folders: tuple[str, ...]) -> list[str]:
    """Which of the `folders` and of the `files`, that shall be new below `root`, are there already; of the
    files only those outside of such a folder."""
    there = [one for one in folders if os.path.lexists(root / one)]
    inside = tuple(f"{one}/" for one in there)
    return there + [
        one for one in files if not one.startswith(inside) and os.path.lexists(root / one)
    ]


def added(root: Path, new: Mapping[str, bytes], changed: Mapping[str, bytes]) -> None:
    """Write the files `new`, by their paths below `root`, and the folders that they need; and last of all
    the files `changed` in place of what they held.

    Raises OSError, also where a new file is there; then everything is as it was before.
    """
    made: list[Path] = []
    before = {path: (root / path).read_bytes() for path in changed}
    try:
        for path, data in new.items():
            file = root / path
            for folder in reversed([one for one in file.parents if not one.exists()]):
                folder.mkdir()
                made.append(folder)
            with file.open("xb") as stream:
                made.append(file)
                stream.write(data)
        for path, data in changed.items():
            replaced(root / path, data)
    except BaseException:
        with suppress(OSError):
            for path, data in before.items():
                replaced(root / path, data)
        for one in reversed(made):
            with suppress(OSError):
                one.rmdir() if one.is_dir() else one.unlink()
        raise
