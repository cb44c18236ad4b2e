"""The door of the load layer: a content folder becomes one frozen `Content`, or problems."""

from collections.abc import Mapping
from pathlib import Path

from packetgen.diagnostics import Place, Problems
from packetgen.load.files import ContentFolder
from packetgen.load.library import load_library
from packetgen.load.moved_folders import tell_moved
from packetgen.load.series import load_series
from packetgen.load.sure import all_sure, sure
from packetgen.load.words import listed, offer, said
from packetgen.model import Content

_HINT = "give the folder that holds threads, cloths and series, or make one with packetgen begin"
_FOLDERS = ("threads", "cloths", "beads", "finishes", "series")


def load_content(
    root: Path,
    only: frozenset[str] | None = None,
    instead: Mapping[str, bytes] | None = None,
) -> tuple[Content | None, Problems]:
    """Everything under `root`, resolved, and every problem found;
    no content where any of them hinders reckoning. Of the series only those in `only`, unless it is None.
    The files of `instead`, by path, are read as they are there and not as the disk has them.

    Raises nothing over what an author wrote: all of that is in the problems.
    """
    problems = Problems()
    folder = ContentFolder(Path(root), problems, instead)
    if not folder.exists():
        problems.add(
            Place(""),
            "folder-missing",
            hint=_where_instead(Path(root)),
        )
        return None, problems
    if folder.unfinished():
        return None, problems
    tell_moved(folder, _FOLDERS, problems)
    folder.unread("", (), f"what is read lies in the folders {listed(_FOLDERS, 'and')}")
    for name in folder.folders(""):
        if name not in _FOLDERS:
            problems.add(Place(name), "file-not-read", name=said(name), hint=offer(name, _FOLDERS))
    folder.unread("series", (), "each series has a folder of its own in here")
    folder.unread("finishes", (), "each finishing piece has a folder of its own in here")
    library = load_library(folder, problems)
    names = folder.folders("series")
    if not names and not folder.moved:
        problems.add(Place("series"), "series-missing")
    series = tuple(
        load_series(folder, name, library, problems)
        for name in names
        if only is None or name in only
    )
    folder.tell_unread()
    for code in ("reference-unknown", "colour-unknown"):
        problems.tell_once(code)
    if problems.hindering:
        return None, problems
    threads = {card_id: sure(card) for card_id, card in library.threads.items()}
    return Content(all_sure(series), threads, tuple(folder.for_review)), problems


def _where_instead(root: Path) -> str:
    """What to do where there is no such folder: it may lie in a folder below the author's."""
    below = sorted(root.parent.glob(f"*/{root.name}/series"))
    if len(below) != 1:
        return _HINT
    folder = below[0].parents[1].name
    return f"there is one in {said(folder)}: go there first, with cd {folder}"
