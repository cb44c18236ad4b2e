"""A design brought into the folder of a pattern, or into a new folder."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from packetgen.bring.brought import Brought, Entry
from packetgen.bring.chart_text import chart_text, legend, relisted, remarks_of, rows_of
from packetgen.bring.gone_colours import gone_colours, named_in
from packetgen.bring.key_text import (
    entry,
    key_line,
    known_lines,
    quoted,
    remarks_gone,
    with_key,
    with_value,
    word,
)
from packetgen.bring.moved import moved
from packetgen.bring.offers import with_lines_offered
from packetgen.chart_edit.along import carried_along
from packetgen.chart_edit.change import Change
from packetgen.chart_edit.pattern_text import symbols_text
from packetgen.diagnostics import Place, Problem, Problems
from packetgen.load.examples import is_example, lists_example, without_example_remark
from packetgen.load.files import UNFINISHED
from packetgen.load.grid import CHART_FILES
from packetgen.load.symbols_file import SYMBOLS_FILE
from packetgen.load.yaml_nodes import GroupNode, read_nodes
from packetgen.model import Colour, Stitch, ThreadCard
from packetgen.pipeline.pattern_folder import CHART, PATTERN, PatternFolder, kept_as, set_name_of
from packetgen.pipeline.proofs import proof
from packetgen.reckon.matching import TooFewColours, distinct_matches, nearest_matches
from packetgen.write.together import written_together

KEY = "key.yaml"
_BOM = b"\xef\xbb\xbf"


class WouldReplace(Exception):
    """A file is there already."""


class NotSound(Exception):
    """With the new files the content could not be read, for faults that it has not now."""

    def __init__(self, new: Sequence[Problem], on_the_chart: Sequence[str]) -> None:
        super().__init__(f"{len(new)} faults")
        self.new, self.on_the_chart = tuple(new), tuple(on_the_chart)


@dataclass(frozen=True)
class Written:
    files: tuple[Path, ...]
    kept: tuple[Path, ...]  # old files under other names
    faults: tuple[Problem, ...] = ()  # new ones that figures show, as of a design that is too large
    lines: tuple[str, ...] = ()  # what of the old chart lies on the new one beside the stitches
    faults_before: tuple[Problem, ...] = ()  # that the content had already and still has
    chart: str = ""  # its file, where pattern.yaml has to name it now
    charts_left: tuple[Path, ...] = ()  # others that are no longer read, where it has
    example: tuple[str, ...] = ()  # what lay on the example's chart, and went with it
    remarks: int = 0  # lines of remarks in pattern.yaml that went with what they spoke of
    was: tuple[int, int] = (0, 0)  # width and height of the old chart, where they were others
    moved: tuple[int, int] = (0, 0)  # how far to the right and down its stitches lie farther now
    carried: bool = False  # whether what lay on it beside them was moved along
    alike: tuple[Problem, ...] = ()  # that designs of the series are the very same now
    gone: tuple[Colour, ...] = ()  # of the old key, that the new one has no longer
    named: tuple[tuple[Place, str], ...] = ()  # where texts name one of these still


@dataclass(frozen=True)
class Planned:
    """What shall be written below `root`, by path; nothing of it is on the disk yet."""

    root: Path
    new: Mapping[str, bytes]
    changed: Mapping[str, bytes]
    told: Written  # true once it is written


def carried_out(planned: Planned) -> Written:
    """Write it, all or nothing. Raises OSError."""
    written_together(planned.root, planned.new, planned.changed)
    return planned.told


def into_pattern(
    content_folder: Path, into: PatternFolder, found: Brought, replace: bool
) -> Planned:
    """The chart and the key in the pattern's folder, which keeps its old files under other names.

    Nothing is planned that would make the series unreadable. A fault that only figures show is told
    instead: a finishing piece that is too small can be changed when the design is there. Raises
    WouldReplace where there is a chart and `replace` is not given, NotSound, OSError.
    """
    if not replace:
        complain_of_chart(content_folder, into)
    chart, left = _chart_named(content_folder, into)
    was, farther = _compared(_old_chart(content_folder, into), found)
    files = _files(content_folder, into, found)
    pattern = f"{into.path}/{PATTERN}"
    carried = _carried(files[pattern], was, farther, found) if any(farther) else None
    if carried is not None:
        files[pattern] = carried
    files = {path: data for path, data in files.items() if _on_disk(content_folder / path) != data}
    after = proof(content_folder, frozenset({into.series}), files)
    before = proof(content_folder, frozenset({into.series})) if after.problems.errors else after
    known = {str(problem) for problem in before.problems.errors}
    new = [problem for problem in after.problems.errors if str(problem) not in known]
    if new and not after.reckoned:
        raise NotSound(new, into.on_the_chart)
    old = {path: data for path in files if (data := _on_disk(content_folder / path)) is not None}
    kept = {kept_as(content_folder, path): data for path, data in old.items()}
    added = {path: data for path, data in files.items() if path not in old}
    gone = () if into.example or into.of_example else _gone(into, found)
    return Planned(
        content_folder,
        kept | added,
        {path: files[path] for path in old},
        Written(
            tuple(content_folder / path for path in files),
            tuple(content_folder / path for path in kept),
            tuple(new),
            into.on_the_chart if any(path.endswith(".txt") for path in kept) else (),
            tuple(problem for problem in after.problems.errors if str(problem) in known),
            chart,
            left,
            into.example,
            _remarks(pattern, old, files),
            was,
            farther,
            carried is not None,
            tuple(problem for problem in after.problems if problem.code == "chart-copied"),
            gone,
            tuple(named_in(_texts(content_folder, into), gone)),
        ),
    )


def _gone(into: PatternFolder, found: Brought) -> tuple[Colour, ...]:
    cards = {card.id: card for _, card in into.sets}
    return gone_colours(
        known_lines(into.root, into.set_name, cards, into.card.id), found.entries, into.elsewhere
    )


def _texts(content_folder: Path, into: PatternFolder) -> dict[str, str]:
    """All Markdown of the pattern, by path."""
    return {
        f"{into.path}/{file.name}": file.read_text("utf-8-sig", "replace")
        for file in (content_folder / into.path).glob("*.md")
    }


def _old_chart(content_folder: Path, into: PatternFolder) -> tuple[str, ...]:
    """The rows of the chart whose place the new one takes; none where there is no such file."""
    to_name, _ = _chart_named(content_folder, into)
    name = to_name or word(entry(into.root, "chart")) or CHART
    data = _on_disk(content_folder / into.path / name)
    return rows_of(data.decode("utf-8-sig", "replace")) if data else ()


def _compared(old: Sequence[str], found: Brought) -> tuple[tuple[int, int], tuple[int, int]]:
    """Width and height of the old chart, and where it lies in the new one; 0, 0 where they are those of the new one or
    cannot be told."""
    size = max(map(len, old), default=0), len(old)
    if not old or size == (len(found.rows[0]), len(found.rows)):
        return (0, 0), (0, 0)
    return size, moved(old, found.rows)


def _carried(
    pattern: bytes, was: tuple[int, int], farther: tuple[int, int], found: Brought
) -> bytes | None:
    """pattern.yaml with what lies on the chart moved as far as its stitches; None where that cannot be."""
    (right, down), (wide, high) = farther, (len(found.rows[0]), len(found.rows))
    text = pattern.decode("utf-8-sig").replace("\r\n", "\n")
    carried = carried_along(text, Change(*was, wide, high, left=-right, top=-down))
    return None if carried is None else _with_ends_of(pattern, carried)


def complain_of_chart(content_folder: Path, into: PatternFolder) -> None:
    """Raises WouldReplace where the pattern has a chart."""
    folder = content_folder / into.path
    for name in (*CHART_FILES, word(entry(into.root, "chart"))):
        if name and (folder / name).is_file():
            raise WouldReplace((folder / name).as_posix())


def complain_of_folder(folder: Path, replace: bool) -> None:
    """Raises WouldReplace where a folder has one of the files already, or a change in it is unfinished."""
    for name in (UNFINISHED,) if replace else (CHART, KEY, UNFINISHED):
        if (folder / name).exists():
            raise WouldReplace((folder / name).as_posix())


def into_folder(
    content_folder: Path, folder: Path, card: ThreadCard, found: Brought, replace: bool
) -> Planned:
    """The chart, and a key to put into a pattern.yaml, in a folder that has neither, or, with `replace`, keeps
    them under other names.

    Raises WouldReplace, OSError.
    """
    set_name = set_name_of(content_folder, card)
    files = {
        CHART: _chart(found, folder.name),
        KEY: "\n".join(
            (
                f"# The key of the chart beside it, in {card.name}: it belongs into a pattern.yaml.",
                "key:",
                *(
                    key_line(one.mark, {set_name: one.colour.number}, one.stitch, one.colour.name)
                    for one in found.entries
                ),
                "",
            )
        ),
    }
    complain_of_folder(folder, replace)
    data = {name: text.encode() for name, text in files.items()}
    data = {name: new for name, new in data.items() if _on_disk(folder / name) != new}
    old = {name: was for name in data if (was := _on_disk(folder / name)) is not None}
    kept = {kept_as(folder, name): was for name, was in old.items()}
    added = {name: new for name, new in data.items() if name not in old}
    paths = tuple(folder / name for name in data), tuple(folder / name for name in kept)
    return Planned(folder, kept | added, {name: data[name] for name in old}, Written(*paths))


def _files(content_folder: Path, into: PatternFolder, found: Brought) -> dict[str, bytes]:
    """The pattern's files as they shall be, by their paths in the content folder."""
    marks = {one.mark for one in found.entries if one.kept} | into.elsewhere
    new = [one for one in found.entries if not one.kept]
    lines = [
        key_line(one.mark, numbers, one.stitch, one.colour.name)
        for one, numbers in _numbers(into, new, marks)
    ]
    named = {one.mark: one.colour.name for one in found.entries if one.kept}
    text = with_key(into.text, into.root, marks, lines, named)
    folder = content_folder / into.path
    before = (folder / PATTERN).read_text("utf-8-sig")
    text = with_lines_offered(before, text, found.rows, [one.mark for one in found.entries], quoted)
    to_name, _ = _chart_named(content_folder, into)
    if to_name:
        text = with_value(text, _root(text), "chart", to_name)
    chart = to_name or word(entry(into.root, "chart")) or CHART
    title = word(entry(into.root, "title")) or into.path.rpartition("/")[2]
    old_chart = _on_disk(folder / chart)
    # Nothing that they say has changed where every line of the key is one that was there; only the list of
    # the marks may name some that went.
    old_remarks = remarks_of(old_chart.decode("utf-8-sig", "replace")) if old_chart else ""
    # That of the example, where the key is her own already.
    own = not any(is_example("name", one.colour.name) for one in found.entries)
    of_example = own and lists_example(old_remarks)
    remarks = "" if new or of_example else without_example_remark(old_remarks)
    remarks = relisted(remarks, _listed(found), _listable(into))
    files = {
        f"{into.path}/{PATTERN}": _as_before(text, folder / PATTERN),
        f"{into.path}/{chart}": _chart(found, title, remarks).encode(),
    }
    symbols = _on_disk(folder / SYMBOLS_FILE)
    gone = frozenset(one.mark for one in into.known) - marks
    if symbols is not None and gone:
        old = symbols.decode("utf-8")
        files[f"{into.path}/{SYMBOLS_FILE}"] = symbols_text(old, _root(old), gone).encode()
    return files


def _chart_named(content_folder: Path, into: PatternFolder) -> tuple[str, tuple[Path, ...]]:
    """The chart's file where pattern.yaml has to name it and does not yet, '' else; and the other charts in the
    folder, which nobody reads then."""
    folder = content_folder / into.path
    named = word(entry(into.root, "chart"))
    plain = not {"/", "\\"} & set(named)
    chart = named if named.endswith(".txt") and plain else CHART
    others = dict.fromkeys((*CHART_FILES, *([named] if named and plain else ())))
    left = tuple(folder / one for one in others if one != chart and (folder / one).is_file())
    return (chart, left) if chart != named and (named or left) else ("", ())


def _remarks(pattern: str, old: Mapping[str, bytes], new: Mapping[str, bytes]) -> int:
    if pattern not in old:
        return 0
    before, after = (files[pattern].decode("utf-8-sig") for files in (old, new))
    return remarks_gone(before, after)


def _numbers(
    into: PatternFolder, new: Sequence[Entry], marks: "set[str] | frozenset[str]"
) -> list[tuple[Entry, dict[str, str]]]:
    """The number of each new line's thread in every set: in the other sets the best pairing in which no
    two become one, with what the lines that stay have."""
    wanted = list(dict.fromkeys(one.colour for one in new))
    number_in: dict[str, dict[Colour, str]] = {}
    for name, card in into.sets:
        if name == into.set_name:
            number_in[name] = {colour: colour.number for colour in wanted}
            continue
        taken = {one.number for one in into.known_in[name] if one.mark in marks}
        free = [colour for colour in card.colours.values() if colour.number not in taken]
        try:
            pairs = distinct_matches(wanted, free)
        except TooFewColours:
            pairs = nearest_matches(wanted, tuple(card.colours.values()))
        number_in[name] = {pair.source: pair.target.number for pair in pairs}
    return [(one, {name: number_in[name][one.colour] for name, _ in into.sets}) for one in new]


def _chart(found: Brought, title: str, remarks: str = "") -> str:
    return chart_text(found.remarks or remarks or legend(title, _listed(found)), found.rows)


def _listed(found: Brought) -> list[tuple[str, str]]:
    """Each mark, and what it is, as the chart's head lists them."""
    return [(one.mark, _thread_words(one.colour, one.stitch)) for one in found.entries]


def _thread_words(colour: Colour, stitch: Stitch) -> str:
    return f"{colour.number} {colour.name}" + ("" if stitch is Stitch.FULL else f", {stitch.value}")


def _listable(into: PatternFolder) -> frozenset[str]:
    """All that such a list may say of a mark, in whatever thread set it was written; of a new pattern the
    names alone."""
    threads = [colour for _, card in into.sets for colour in card.colours.values()]
    blends = [line.colour for lines in into.known_in.values() for line in lines]
    said = {_thread_words(colour, stitch) for colour in (*threads, *blends) for stitch in Stitch}
    said |= {colour.name for colour in threads}
    return frozenset(" ".join(words.split()) for words in said)


def _root(text: str) -> GroupNode:
    root = read_nodes(text, "", Problems())
    assert isinstance(root, GroupNode), "it was read before"
    return root


def _as_before(text: str, path: Path) -> bytes:
    """The text with the line ends of the file whose place it takes."""
    return _with_ends_of(path.read_bytes(), text)


def _with_ends_of(old: bytes, text: str) -> bytes:
    data = text.encode("utf-8")
    data = data.replace(b"\n", b"\r\n") if b"\r\n" in old else data
    return _BOM + data if old.startswith(_BOM) else data


def _on_disk(path: Path) -> bytes | None:
    return path.read_bytes() if path.is_file() else None
