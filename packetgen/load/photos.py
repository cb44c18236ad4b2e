"""The photograph beside a pattern's file, and the name of who took it."""

from pathlib import PurePath

from packetgen.diagnostics import Place, Problems, nearest_of
from packetgen.load.files import ContentFolder
from packetgen.load.grid import CHART_FILES
from packetgen.load.pixels import read_photo
from packetgen.load.symbols_file import SYMBOLS_FILE
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Photo

PHOTO_FILES = ("photo.jpg", "photo.png")
# Endings of pictures → what a picture of that kind must be called; and those of kinds that are not read.
_CALLED = {".jpg": "photo.jpg", ".jpeg": "photo.jpg", ".png": "photo.png"}
_OTHER_KINDS = (".heic", ".heif", ".webp")
_IF_IT_IS = "if it is the photograph of the model"


# What else lies in a pattern's folder and is read.
FILES = ("pattern.yaml", SYMBOLS_FILE, "story.md", "stitching.md", *PHOTO_FILES)


def photo_in(folder: ContentFolder, path: str, problems: Problems) -> Photo | None:
    """The photograph of the pattern in `path`, if there is one that can be read."""
    found = _there(folder, path)
    if len(found) > 1:
        problems.add(Place(f"{path}/{found[1]}"), "photos-two")
    if not found:
        return None
    data = folder.picture(f"{path}/{found[0]}")
    return None if data is None else read_photo(data, f"{path}/{found[0]}", problems)


def photographer_in(
    folder: ContentFolder, path: str, filled: Filled, problems: Problems
) -> tuple[str, bool]:
    """Who is thanked for it, and whether it is still awaited: then nobody is thanked, and that is told."""
    credits: Filled | None = filled["credits"]
    named: str = credits["photographer"] if credits else ""
    if credits and named and not _there(folder, path):
        problems.add(credits.place_of("photographer"), "photographer-idle")
        return "", True
    return named, bool(photo_hints(folder, path))


def photo_hints(folder: ContentFolder, path: str) -> dict[str, str]:
    """By name what is said of pictures under other names, where there is no photograph yet; nothing of one
    whose name is a slip for one that is read."""
    known = (*FILES, *CHART_FILES)
    if _there(folder, path):
        return {}
    hints = {}
    for name in folder.files(path):
        ending = PurePath(name).suffix.casefold()
        if ending in _OTHER_KINDS:
            hints[name] = f"{_IF_IT_IS}, save it as 'photo.jpg'"
        elif ending in _CALLED and nearest_of(name, known) is None:
            hints[name] = f"{_IF_IT_IS}, call it {said(_CALLED[ending])}"
    return hints


def _there(folder: ContentFolder, path: str) -> list[str]:
    return [name for name in PHOTO_FILES if name in folder.files(path)]
