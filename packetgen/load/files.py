"""The only module that touches the disk: folders listed in order, files read as text or as bytes.

Nothing outside the content folder is ever read, whatever a file calls itself or points to.
"""

import os
import re
import unicodedata
from collections.abc import Mapping
from difflib import get_close_matches
from pathlib import Path
from types import MappingProxyType

from packetgen.diagnostics import Place, Problems
from packetgen.load.characters import checked_text
from packetgen.load.office_files import office_file_for, saved_for
from packetgen.load.words import counted, offer, said

LARGEST_TEXT_MB = 2
LARGEST_PICTURE_MB = 40
LARGEST_FONT_MB = 5

# Where the files of a change wait until all of them are whole (see `write.together`).
UNFINISHED = "_next"

LONGEST_ID = 60  # other words and an ending are added, and 255 bytes is all that a disk allows

_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
# Devices, whatever ending follows the name (Microsoft, "Naming Files, Paths, and Namespaces"; from memory).
_KEPT = re.compile(r"con|prn|aux|nul|com[0-9]|lpt[0-9]", re.IGNORECASE)
_TEXT_ENDINGS = (".txt", ".text", ".markdown", ".mdown", ".yml")  # in place of ours
_AUTOSAVED = re.compile("#.*#")
# What file managers and habit leave lying about; it disturbs nothing and needs no advice.
_UNREMARKABLE = {"thumbs.db", "desktop.ini", "readme.md", "readme.txt"}


class ContentFolder:
    """An author's folder. Every `path` is relative to it, with forward slashes.

    instead: files as they shall be read, whatever the disk holds of them.
    """

    def __init__(
        self, root: Path, problems: Problems, instead: Mapping[str, bytes] | None = None
    ) -> None:
        self.root = root
        self._problems = problems
        self._instead = instead or {}
        self._instead_folders = {
            path[:cut] for path in self._instead for cut, sign in enumerate(path) if sign == "/"
        }
        self.for_review = Problems()  # what is said by an editor, and by no build
        self.moved: frozenset[str] = frozenset()  # folders that are listed nowhere
        self.spoken_of: set[str] = set()  # files that were told to take another's name or place
        self._unread: dict[str, str] = {}

    def exists(self) -> bool:
        return bool(self._instead) or self.root.is_dir()

    def has_folder(self, path: str) -> bool:
        return path in self._instead_folders or (self.root / path).is_dir()

    def unfinished(self) -> bool:
        """Whether a change of several files was cut off, or is just being made; reports it."""
        waiting = waiting_in(self.root)
        if waiting:
            files = counted(len(waiting), "file")
            self._problems.add(
                Place(UNFINISHED), "change-unfinished", files=files, folder=said(UNFINISHED)
            )
        return bool(waiting)

    def files(self, path: str) -> tuple[str, ...]:
        """Names of the files in the folder `path`, sorted; none where there is no such folder."""
        return self._names(path, folders=False)

    def folders(self, path: str) -> tuple[str, ...]:
        """Names of the folders in the folder `path`, sorted."""
        below = f"{path}/" if path else ""
        names = self._names(path, folders=True)
        return tuple(name for name in names if f"{below}{name}" not in self.moved)

    def moved_names(self) -> frozenset[str]:
        """Of the folders that lie elsewhere than where they are read, the last names."""
        return frozenset(path.rpartition("/")[2] for path in self.moved)

    def text(self, path: str) -> str | None:
        """The file as text with plain line ends, or None where a problem forbids reading it."""
        data = self._bytes(path, LARGEST_TEXT_MB, "split it, or take out what is not needed")
        return None if data is None else checked_text(data, path, self._problems)

    def picture(self, path: str) -> bytes | None:
        """The bytes of a picture file, or None where a problem forbids reading it."""
        return self._bytes(path, LARGEST_PICTURE_MB, "save the picture smaller")

    def font(self, path: str) -> bytes | None:
        """The bytes of a font file, or None where a problem forbids reading it."""
        return self._bytes(path, LARGEST_FONT_MB, "keep in it only the letters that you need")

    def unread(
        self,
        path: str,
        known: tuple[str, ...],
        hint: str = "",
        hints: Mapping[str, str] = MappingProxyType({}),
    ) -> None:
        """Note files in the folder `path` that nothing reads: most are slips in a name. `hints` has by
        name what is said of one file."""
        for name in self.files(path):
            file = f"{path}/{name}" if path else name
            if name not in known and name.casefold() not in _UNREMARKABLE:
                of_this = hints.get(name) or hint or saved_for(name, known) or offer(name, known)
                self._unread[file] = of_this

    def tell_unread(self) -> None:
        """Advise on all files that have been noted as such, and of which nothing else was said."""
        for file, hint in self._unread.items():
            if file not in self.spoken_of:
                name = said(file.rpartition("/")[2])
                self._problems.add(Place(file), "file-not-read", name=name, hint=hint)

    def missing(self, folder: str, name: str, hint: str) -> None:
        """Report that there is no file `name`; one that is nearly it should take that name."""
        files = self.files(folder)
        kept = office_file_for(name, files)
        saved = kept and saved_for(kept, (name,))
        stem = name.rpartition(".")[0]
        texts = [
            one for one in files if one.casefold() in {f"{stem}{end}" for end in _TEXT_ENDINGS}
        ]
        close = texts or get_close_matches(name, files, n=1, cutoff=0.75)
        beside = self._beside(folder, name)
        if kept and saved:
            self.spoken_of.add(f"{folder}/{kept}")
            hint = saved
        elif close:
            self.spoken_of.add(f"{folder}/{close[0]}")
            hint = f"rename {said(close[0])} to {said(name)}"
        elif beside is not None:
            self.spoken_of.add(f"{beside}/{name}")
            hint = f"move it here from the folder {said(beside)}"
        self._problems.add(Place(f"{folder}/{name}"), "file-missing", name=said(name), hint=hint)

    def _beside(self, folder: str, name: str) -> str | None:
        """The folder above or below in which a file of that name lies, where it is read in neither."""
        above = folder.rpartition("/")[0]
        below = (f"{folder}/{one}" for one in self.folders(folder))
        return next((one for one in (above, *below) if one and name in self.files(one)), None)

    def _names(self, path: str, folders: bool) -> tuple[str, ...]:
        ours = {
            other.rpartition("/")[2]
            for other in (*self._instead, *self._instead_folders)
            if other.rpartition("/")[0] == path
        }
        try:
            names = sorted({*os.listdir(self.root / path), *ours})
        except OSError:
            names = sorted(ours)
        found = []
        alike: dict[str, str] = {}
        for name in names:
            # A leading dot or underscore is how an author keeps something aside, and the others are what
            # editors write beside a file while it is open, or keep of its last state.
            if (
                name.startswith((".", "_", "~$"))
                or name.endswith("~")
                or _AUTOSAVED.fullmatch(name)
            ):
                continue
            other = alike.setdefault(_on_other_machines(name), name)
            if other != name:
                self._problems.add(
                    Place(f"{path}/{name}" if path and name.isprintable() else path or "."),
                    "names-alike",
                    name=said(name),
                    other=said(other),
                )
            if self.has_folder(f"{path}/{name}" if path else name) != folders:
                continue
            if not name.isprintable() or "\\" in name:
                self._problems.add(
                    Place(path or "."), "file-name", name=said(name), hint=_PLAIN_NAME
                )
                continue
            found.append(name)
        return tuple(found)

    def _bytes(self, path: str, limit_mb: int, smaller: str) -> bytes | None:
        place = Place(path)
        if path in self._instead:
            return self._instead[path]
        file = self.root / path
        limit = limit_mb * 1_000_000
        try:
            if not file.resolve().is_relative_to(self.root.resolve()):
                self._problems.add(place, "outside-folder", name=said(file.name))
                return None
            if not file.exists():
                folder = path.rpartition("/")[0]
                self.missing(folder, file.name, "write one (it may be short)")
                return None
            if not file.is_file():  # reading a pipe or a device might never end
                self._problems.add(place, "file-unreadable", name=said(file.name))
                return None
            with file.open("rb") as stream:
                data = stream.read(limit + 1)
        except (OSError, RuntimeError, ValueError):  # RuntimeError: links that go round in a circle
            self._problems.add(place, "file-unreadable", name=said(file.name))
            return None
        if len(data) > limit:
            self._problems.add(
                place, "file-too-big", name=said(file.name), limit=limit_mb, hint=smaller
            )
            return None
        return data


def waiting_in(root: Path) -> tuple[str, ...]:
    """The files of a change that was cut off which are not in their places yet, by their paths in `root`."""
    beside = root / UNFINISHED
    files = (path for path in beside.rglob("*") if path.is_file())
    return tuple(sorted(path.relative_to(beside).as_posix() for path in files))


def _on_other_machines(name: str) -> str:
    """The same for all names that a disk may take for one: it sees no capitals, or writes accents otherwise."""
    return unicodedata.normalize("NFC", unicodedata.normalize("NFC", name).casefold())


def valid_id(name: str, place: Place, problems: Problems, also: str = "") -> bool:
    """Whether a file or folder may be called `name`, part of web addresses; reports if not, and `also` where
    else a better name belongs."""
    if _KEPT.fullmatch(name):
        problems.add(place, "file-name-kept", name=said(name), better=said(f"{name}-1"))
        return False
    if len(name) > LONGEST_ID:
        problems.add(place, "file-name-long", name=said(name), length=len(name), limit=LONGEST_ID)
        return False
    if _ID.fullmatch(name):
        return True
    better = as_id(name)
    problems.add(
        place,
        "file-name",
        name=said(name),
        hint=f"for example {said(better)}{also}" if better else _PLAIN_NAME,
    )
    return False


def as_id(name: str) -> str:
    """`name` in small letters, digits and hyphens; '' where nothing of it is left."""
    return re.sub(r"[^a-z0-9]+", "-", name.casefold()).strip("-")


_PLAIN_NAME = "for example 'robin-on-the-spade'"
