"""Several files that belong together: all of them written, or none.

Everything is written into a folder beside first, and that folder takes its name when it is whole. From
then on the change can be finished by moving what is in it, whatever happens: nothing of it is lost, and
of the old files only those are gone whose new ones stand in their places. Who reads content says so
while the folder is there (`load.files`).
"""

import os
import shutil
from collections.abc import Mapping, Sequence
from contextlib import suppress
from pathlib import Path

from packetgen.load.files import UNFINISHED, waiting_in

_NOT_WHOLE = f"{UNFINISHED}.part"


_WAITS = "what was done of the change could not be undone; finish it: move all that is here to the same places outside"


class ChangeWaits(OSError):
    """Some files stand in their places; all the others are whole in the folder beside."""


def written_together(root: Path, new: Mapping[str, bytes], changed: Mapping[str, bytes]) -> None:
    """Write the files `new`, by their paths below `root`, and the folders that they need; then the files
    `changed` in place of what they held.

    Raises OSError, also where a new file is there already, or what was left of a change that was cut off;
    everything is then as it was before. ChangeWaits where the disk allows not even that; who reads content
    says so too.
    """
    beside = root / UNFINISHED
    if waiting_in(root):
        raise FileExistsError(17, "an earlier change was cut off", str(beside))
    before = {path: (root / path).read_bytes() for path in changed}
    made: list[Path] = []  # folders, and where each new file comes to stand
    placed: list[str] = []
    try:
        _make(root, made)
        _staged(root, {**new, **changed})
        for path in new:
            _make((root / path).parent, made)
            (root / path).open("xb").close()  # fails where somebody else has put one meanwhile
            made.append(root / path)
            os.replace(beside / path, root / path)
            placed.append(path)
        for path in changed:
            os.replace(beside / path, root / path)
            placed.append(path)
    except BaseException:
        try:
            _put_back(root, placed, before)
            for file in (one for one in made if not one.is_dir()):
                file.unlink(missing_ok=True)
            _swept(root)
        except OSError as error:
            raise ChangeWaits(error.errno, _WAITS, str(beside)) from error
        with suppress(OSError):  # an empty folder disturbs nobody
            for folder in reversed([one for one in made if one.is_dir()]):
                folder.rmdir()
        raise
    with suppress(OSError):  # all is done, and what is left is empty
        _swept(root)


def _put_back(root: Path, placed: Sequence[str], before: Mapping[str, bytes]) -> None:
    """What has taken its place waits beside again; where a file was before, it is there again.

    Raises OSError; nothing is lost then, and the change can still be finished.
    """
    aside = root / _NOT_WHOLE
    for path in before.keys() & set(placed):  # all of them first: there may be no room
        (aside / path).parent.mkdir(parents=True, exist_ok=True)
        (aside / path).write_bytes(before[path])
    for path in reversed(placed):
        os.replace(root / path, root / UNFINISHED / path)
        if path in before:
            os.replace(aside / path, root / path)


def _staged(root: Path, files: Mapping[str, bytes]) -> None:
    """All files whole in the folder beside, which has its name last."""
    _swept(root)
    for path, data in files.items():
        file = root / _NOT_WHOLE / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(data)
    if files:
        (root / _NOT_WHOLE).rename(root / UNFINISHED)


def _make(folder: Path, made: list[Path]) -> None:
    """The folder with those above it that are missing, each entered in `made`."""
    for one in reversed([one for one in (folder, *folder.parents) if not one.exists()]):
        one.mkdir()
        made.append(one)


def _swept(root: Path) -> None:
    """The folder beside gives up its name first, so that no part of it looks like a change."""
    part, whole = root / _NOT_WHOLE, root / UNFINISHED
    shutil.rmtree(part, ignore_errors=True)
    if whole.exists():
        whole.rename(part)
        shutil.rmtree(part, ignore_errors=True)
