"""A change to a pattern's chart, done in its author's files: checked before and after, then written."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from packetgen.chart_edit.change import Change
from packetgen.chart_edit.chart_text import chart_text, table_text
from packetgen.chart_edit.design import Lost, in_order, lost, marks_used, moved
from packetgen.chart_edit.mentions import mentions
from packetgen.chart_edit.pattern_text import (
    CannotBeTold,
    order_text,
    pattern_text,
    symbols_text,
    titled,
)
from packetgen.diagnostics import Place, Problems, added
from packetgen.load.content import load_content
from packetgen.load.files import valid_id
from packetgen.load.photos import PHOTO_FILES
from packetgen.load.symbols_file import SYMBOLS_FILE
from packetgen.load.yaml_nodes import GroupNode, read_nodes
from packetgen.model import Pattern
from packetgen.pipeline.pattern_folder import kept_as
from packetgen.pipeline.proofs import proof
from packetgen.write.together import written_together

_BOM = b"\xef\xbb\xbf"


class ChartIsPicture(Exception):
    """The chart is drawn in pixels, and only charts of text can be edited."""


class WouldLose(Exception):
    """Something would fall off the chart."""

    def __init__(self, what: tuple[Lost, ...]) -> None:
        super().__init__(f"{len(what)} kinds")
        self.what = what


class NotSound(Exception):
    """What the files would be after the change has faults."""

    def __init__(self, problems: Problems) -> None:
        super().__init__(f"{len(problems.errors)} faults")
        self.problems = problems


@dataclass(frozen=True)
class Copy:
    """The change goes to a new pattern folder beside the old one, which needs a title of its own."""

    id: str
    title: str


@dataclass(frozen=True)
class Edited:
    """What has been done. Paths are relative to the content folder."""

    before: Pattern
    after: Pattern
    written: tuple[str, ...]
    kept: tuple[str, ...]  # the old files, where something was lost
    lost: tuple[Lost, ...]
    mentioned: tuple[tuple[Place, str], ...]  # words that the author has to look at herself
    photo_left: str | None  # a photograph that did not go along, or shows the model as it was

    @property
    def marks_gone(self) -> tuple[str, ...]:
        """Marks whose key lines went, in the order of the key."""
        left = {line.mark for line in self.after.key}
        return tuple(line.mark for line in self.before.key if line.mark not in left)

    @property
    def marks_leaning(self) -> tuple[str, ...]:
        """Marks whose key lines now say the other half stitch."""
        worked = {line.mark: line.stitch for line in self.before.key}
        return tuple(line.mark for line in self.after.key if line.stitch != worked[line.mark])


def edit_chart(
    content_folder: Path, path: str, change: Change, lose: bool = False, to: Copy | None = None
) -> Edited:
    """Do the change in the pattern folder `path` (relative to the content, which can be reckoned).

    Nothing is written until the whole series as it will be has been checked, has no fault that it had not
    before, and has been read back as the very design that the change makes of this one. Raises ChartIsPicture, WouldLose unless `lose`,
    NotSound, CannotBeTold, FileExistsError for a copy that is there already, OSError.
    """
    series_id, name = path.split("/")[1:3]
    named = Problems()
    if to is not None and not valid_id(to.id, Place(f"series/{series_id}"), named):
        raise NotSound(named)
    before = _loaded(content_folder, series_id, name)
    if before.grid.place.path.endswith(".png"):
        raise ChartIsPicture(before.grid.place.path)
    falling = lost(before, change)
    if falling and not lose:
        raise WouldLose(falling)
    wanted = moved(before, change)
    old = _files(content_folder, path, before)
    new = _after(old, before, change, marks_used(before) - marks_used(wanted))
    files = dict(new)
    if to is not None:
        wanted = replace(wanted, id=to.id, title=to.title, photo=None, photographer="")
        files = _as_copy(content_folder, path, before, new, to)
    _check(content_folder, series_id, files, wanted)
    kept = {}
    if falling and to is None:
        kept = {
            kept_as(content_folder, file): data for file, data in old.items() if new[file] != data
        }
    writing = {file: data for file, data in files.items() if data != old.get(file)}
    changed = {file: data for file, data in writing.items() if (content_folder / file).exists()}
    added = {file: data for file, data in writing.items() if file not in changed}
    written_together(content_folder, kept | added, changed)
    photo = next((file for file in PHOTO_FILES if (content_folder / path / file).exists()), None)
    return Edited(
        before,
        wanted,
        tuple(sorted(writing)),
        tuple(sorted(kept)),
        falling,
        tuple(
            _mentioned(
                _prose(content_folder, path) if to is None else {}, files, change, before.title
            )
        ),
        photo,
    )


def _loaded(
    content_folder: Path,
    series_id: str,
    name: str,
    instead: Mapping[str, bytes] | None = None,
) -> Pattern:
    """One pattern of a content folder that can be read; colours left to the tool are not filled in."""
    content, problems = load_content(content_folder, frozenset({series_id}), instead)
    if content is None or problems.errors:
        raise NotSound(problems)
    return next(one for one in content.series[0].patterns if one.id == name)


def _check(
    content_folder: Path, series_id: str, files: Mapping[str, bytes], wanted: Pattern
) -> None:
    """The series as it will be has no new fault, and what was written says what is wanted."""
    series = frozenset({series_id})
    checked = proof(content_folder, series, files)
    if not checked.sound and added(proof(content_folder, series).problems, checked.problems):
        raise NotSound(checked.problems)
    there = _loaded(content_folder, series_id, wanted.id, files)
    if in_order(there) != wanted:
        raise CannotBeTold(there.place)


def _files(content_folder: Path, path: str, pattern: Pattern) -> dict[str, bytes]:
    """The files of a pattern that a change may touch."""
    found = [pattern.grid.place.path, f"{path}/pattern.yaml", f"{path}/{SYMBOLS_FILE}"]
    there = ((file, content_folder / file) for file in found)
    return {file: on_disk.read_bytes() for file, on_disk in there if on_disk.exists()}


def _after(
    files: Mapping[str, bytes], pattern: Pattern, change: Change, gone: frozenset[str]
) -> dict[str, bytes]:
    grid = pattern.grid
    new = {}
    for file, data in files.items():
        text = _text(data)
        if file == grid.place.path:
            write = table_text if file.endswith(".csv") else chart_text
            text = write(text, grid, change)
        elif file.endswith(SYMBOLS_FILE):
            text = symbols_text(text, _root(text, file), gone) if gone else text
        else:
            text = pattern_text(text, _root(text, file), change, gone)
        new[file] = _data(text, data)
    return new


def _as_copy(
    content_folder: Path, path: str, before: Pattern, new: Mapping[str, bytes], to: Copy
) -> dict[str, bytes]:
    """Everything of the pattern under its new name, and the series with it in its order.

    A photograph shows the old design and stays behind.
    """
    series, name = path.rpartition("/")[::2]
    if (content_folder / series / to.id).exists():
        raise FileExistsError(17, "it is there already", f"{series}/{to.id}")
    files = {}
    for file in sorted((content_folder / path).iterdir()):
        if file.is_file() and not file.name.startswith(("_", ".")) and file.name not in PHOTO_FILES:
            files[f"{series}/{to.id}/{file.name}"] = new.get(
                f"{path}/{file.name}", file.read_bytes()
            )
    own = f"{series}/{to.id}/pattern.yaml"
    text = _text(files[own])
    files[own] = _data(titled(text, _root(text, own), to.title), files[own])
    chart = f"{series}/{to.id}/{before.grid.place.path.rpartition('/')[2]}"
    begins = f"# {before.title}: ".encode()
    if files.get(chart, b"").startswith(begins):  # as it was brought in
        files[chart] = f"# {to.title}: ".encode() + files[chart].removeprefix(begins)
    order = f"{series}/series.yaml"
    data = (content_folder / order).read_bytes()
    text = _text(data)
    files[order] = _data(order_text(text, _root(text, order), name, to.id), data)
    return files


def _prose(content_folder: Path, path: str) -> dict[str, bytes]:
    """The texts of a pattern that no change touches."""
    texts = (content_folder / path).glob("*.md")
    return {f"{path}/{file.name}": file.read_bytes() for file in texts}


def _mentioned(
    prose: Mapping[str, bytes], files: Mapping[str, bytes], change: Change, title: str
) -> list[tuple[Place, str]]:
    return [
        found
        for file, data in sorted({**prose, **files}.items())
        if file.endswith((".txt", ".md", "/pattern.yaml"))
        for found in mentions(file, _text(data), change, title)
    ]


def _root(text: str, file: str) -> GroupNode:
    node = read_nodes(text, file, Problems())
    assert isinstance(node, GroupNode), f"{file} was checked"
    return node


def _text(data: bytes) -> str:
    """As the loader reads it: with plain line ends."""
    text = data.removeprefix(_BOM).decode("utf-8")
    return text.replace("\r\n", "\n").replace("\r", "\n")


def _data(text: str, old: bytes) -> bytes:
    """The text with the line ends of the file that it comes from."""
    ends = {b"\r\n": old.count(b"\r\n")}
    ends[b"\r"] = old.count(b"\r") - ends[b"\r\n"]
    ends[b"\n"] = old.count(b"\n") - ends[b"\r\n"]
    usual = max(reversed(ends), key=lambda end: ends[end])
    mark = _BOM if old.startswith(_BOM) else b""
    return mark + text.encode("utf-8").replace(b"\n", usual)
