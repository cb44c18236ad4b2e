"""The photograph beside a pattern's file, and the name of who took it."""

from packetgen.diagnostics import Place, Problems
from packetgen.load.files import ContentFolder
from packetgen.load.pixels import read_photo
from packetgen.load.values import Filled
from packetgen.model import Photo

PHOTO_FILES = ("photo.jpg", "photo.png")


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
    return named, False


def _there(folder: ContentFolder, path: str) -> list[str]:
    return [name for name in PHOTO_FILES if name in folder.files(path)]
