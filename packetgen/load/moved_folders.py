"""An author's folders, and cards, that lie in another folder than the one in which they are read: each is told once,
with where to move it, and nothing else is told of it."""

import re
from collections.abc import Iterator

from packetgen.diagnostics import Place, Problems
from packetgen.load.cards import SHAPES
from packetgen.load.documents import has_all
from packetgen.load.files import ContentFolder
from packetgen.load.words import said

# The file by which such a folder is known → what it is of.
_KINDS = {
    "series.yaml": "a series",
    "pattern.yaml": "a pattern",
    "finish.yaml": "a finishing piece",
}

_NAME = re.compile(r"^([a-z_]+):", re.MULTILINE)  # at the margin


def tell_moved(folder: ContentFolder, own: tuple[str, ...], problems: Problems) -> None:
    """Report them, and leave them out of what `folder` lists. `own` are the folders of the content itself."""
    found = tuple(_folders(folder, own))
    for path, file in found:
        where = said(_right_place(folder, path, file))
        problems.add(Place(path), "folder-elsewhere", what=_KINDS[file], where=where)
    folder.moved = frozenset((*(path for path, _ in found), *_cards(folder, problems)))


def _cards(folder: ContentFolder, problems: Problems) -> Iterator[str]:
    """Report cards that lie beside the folders of cards, and give their paths without the ending."""
    for name in folder.files(""):
        if not name.endswith(".yaml") or (text := folder.text(name)) is None:
            continue
        names = {*_NAME.findall(text)}
        where = next((one for one, shape in SHAPES.items() if has_all(names, shape)), None)
        if where:
            folder.spoken_of.add(name)
            problems.add(Place(name), "card-elsewhere", what=SHAPES[where].what, where=said(where))
            yield name.removesuffix(".yaml")


def _folders(folder: ContentFolder, own: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """Each such folder, and the file by which it is known."""
    for name in folder.folders(""):
        if name not in own:
            yield from _known(folder, name)
    for name in folder.folders("finishes"):
        yield from _known(folder, f"finishes/{name}", "finish.yaml")
    for series in folder.folders("series"):
        yield from _known(folder, f"series/{series}", "series.yaml")
        for pattern in folder.folders(f"series/{series}"):
            path = f"series/{series}/{pattern}"
            yield from _known(folder, path, "pattern.yaml")
            for below in folder.folders(path):
                yield from _known(folder, f"{path}/{below}")


def _known(folder: ContentFolder, path: str, right: str = "") -> Iterator[tuple[str, str]]:
    """Nothing of a folder that has the right file, maybe beside a wrong one."""
    files = [name for name in folder.files(path) if name in _KINDS]
    if files and right not in files:
        yield path, files[0]


def _right_place(folder: ContentFolder, path: str, file: str) -> str:
    if file == "pattern.yaml":
        all_series = [
            one
            for one in folder.folders("series")
            if "series.yaml" in folder.files(f"series/{one}")
        ]
        series = all_series[0] if len(all_series) == 1 else "SERIES"
        return f"series/{series}"
    return "series" if file == "series.yaml" else "finishes"
