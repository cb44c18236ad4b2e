"""A new series or a new pattern: proved in memory first, and then written whole or not at all."""

import os
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path

from packetgen.diagnostics import Problem, Problems, added
from packetgen.load import load_content
from packetgen.load.cards import load_beads
from packetgen.load.files import ContentFolder
from packetgen.model import Series
from packetgen.pipeline.proofs import proof
from packetgen.write.together import written_together


@dataclass(frozen=True)
class Found:
    """What is in a content folder. No series where there is none yet, or where something is wrong."""

    series: tuple[Series, ...]
    problems: Problems
    beads: tuple[str, str] | None = None  # a bead card, and a number of it


@dataclass(frozen=True)
class Begun:
    """`in_the_way` has what is there already; then, and where there would be new faults, nothing was
    written. `faults` counts all of them, old ones too."""

    in_the_way: tuple[str, ...]
    new_faults: tuple[Problem, ...] = ()
    faults: int = 0


def found_in(content_folder: Path) -> Found:
    """Read the folder, if it has a series."""
    quiet = Problems()
    folder = ContentFolder(content_folder, quiet)
    if not folder.folders("series"):
        folder.unfinished()
        return Found((), quiet)
    content, problems = load_content(content_folder)
    if content is None:
        return Found((), problems)
    cards = load_beads(folder, quiet)
    numbers = [(name, number) for name, card in cards.items() if card for number in card.colours]
    return Found(content.series, problems, numbers[0] if numbers else None)


def begin(
    content_folder: Path,
    series_id: str,
    folders: tuple[str, ...],
    new: Mapping[str, bytes],
    changed: Mapping[str, bytes],
) -> Begun:
    """Write the files `new`, in `folders` that must not be there yet, and `changed` in place of what they
    held, if the series that has them has no fault then that it had not before. Raises OSError."""
    there = _in_the_way(content_folder, new, folders)
    if there:
        return Begun(tuple(there))
    checked = proof(content_folder, frozenset({series_id}), {**new, **changed})
    before = Problems()
    if not checked.sound and changed:
        before = proof(content_folder, frozenset({series_id})).problems
    wrong = added(before, checked.problems)
    if not wrong:
        written_together(content_folder, new, changed)
    return Begun((), wrong, len(checked.problems.errors))


def _in_the_way(root: Path, files: Iterable[str], folders: tuple[str, ...]) -> list[str]:
    """Which of the `folders` and of the `files`, that shall be new below `root`, are there already; of the
    files only those outside of such a folder."""
    there = [one for one in folders if os.path.lexists(root / one)]
    inside = tuple(f"{one}/" for one in there)
    return there + [
        one for one in files if not one.startswith(inside) and os.path.lexists(root / one)
    ]
