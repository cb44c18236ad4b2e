"""What authors have laid aside, also where their files cannot be read as a whole."""

from collections.abc import Mapping
from pathlib import Path

from packetgen.diagnostics import Problems
from packetgen.load.documents import read_document
from packetgen.load.files import ContentFolder
from packetgen.load.laid_aside import read_laid_aside
from packetgen.load.shape_pattern import PATTERN
from packetgen.load.shape_series import SERIES
from packetgen.model import LaidAside
from packetgen.model.laid_aside import CARDS

Asides = dict[str, tuple[LaidAside, ...]]


def asides_in(root: Path, instead: Mapping[str, bytes] | None = None) -> Asides:
    """What the files of series and patterns under `root` lay aside, by the folder on whose files it is advice.
    What is wrong with a file was told when all was read."""
    problems = Problems()
    folder = ContentFolder(root, problems, instead)
    found: Asides = {}
    for series in (f"series/{name}" for name in folder.folders("series")):
        filled = read_document(folder, f"{series}/series.yaml", SERIES, problems)
        if filled is not None:
            for path in (series, f"finishes/{filled['finish']}", *CARDS):
                found[path] = (*found.get(path, ()), *read_laid_aside(filled, problems))
        for path in (f"{series}/{name}" for name in folder.folders(series)):
            filled = read_document(folder, f"{path}/pattern.yaml", PATTERN, problems)
            if filled is not None:
                found[path] = read_laid_aside(filled, problems)
    return found
