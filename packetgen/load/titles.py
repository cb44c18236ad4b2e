"""Folders of series and patterns, and titles as they stand in files that cannot be read as a whole."""

import re
from collections.abc import Mapping
from pathlib import Path

from packetgen.diagnostics import Problems
from packetgen.load.files import ContentFolder
from packetgen.load.text_lines import plain

_TITLE = re.compile(r"title: +(.*\S)")


def names_in(root: Path) -> frozenset[str]:
    """The folders of series and of patterns under `root`, whatever is in them."""
    folder = ContentFolder(root, Problems())
    series = folder.folders("series")
    return frozenset(
        (*series, *(name for one in series for name in folder.folders(f"series/{one}")))
    )


def titles_in(root: Path, instead: Mapping[str, bytes] | None = None) -> dict[str, str]:
    """The titles of series and patterns under `root`, by folder, as far as a line says them. What is wrong
    with a file was told when all was read."""
    folder = ContentFolder(root, Problems(), instead)
    found = {}
    for series in (f"series/{name}" for name in folder.folders("series")):
        paths = {series: f"{series}/series.yaml"} | {
            f"{series}/{name}": f"{series}/{name}/pattern.yaml" for name in folder.folders(series)
        }
        for path, file in paths.items():
            if title := title_in(folder, path, file):
                found[path] = title
    return found


def title_in(folder: ContentFolder, path: str, file: str) -> str:
    """What a line of the `file` in the folder `path` says; '' where none does."""
    there = file.rpartition("/")[2] in folder.files(path)
    lines = ((there and folder.text(file)) or "").split("\n")
    said = next(filter(None, (_TITLE.fullmatch(plain(line)) for line in lines)), None)
    return said[1].strip("\"'") if said else ""
