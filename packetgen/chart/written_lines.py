"""What lies on top of the stitches in the rows, as sentences: lines, lazy daisies, knots and beads."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import TypeVar

from packetgen.chart.spoken import Spoken
from packetgen.model import Bead, Daisy, Line, Pattern, Point
from packetgen.units import plain

# Points that one sentence names, so that nobody has to find a place in a long list again.
POINTS_A_SENTENCE = 10

Thing = TypeVar("Thing")


@dataclass(frozen=True)
class Passage:
    """Sentences on one kind of stitch."""

    heading: str
    sentences: tuple[str, ...]


def passages(pattern: Pattern, said: Mapping[str, Spoken]) -> tuple[Passage, ...]:
    """Kind by kind; kinds that the chart lacks are left out."""
    names = {mark: one.thread for mark, one in said.items()}
    knots = _grouped(pattern.knots, lambda knot: names[knot.mark])
    beads = _grouped(pattern.beads, bead_name)
    found = (
        Passage("Backstitch", _paths(pattern.lines, names, False)),
        Passage("Long stitches", _paths(pattern.lines, names, True)),
        Passage("Lazy daisies", _daisies(pattern.daisies, names)),
        Passage("French knots", _points("French knot", {n: [k.at for k in g] for n, g in knots})),
        Passage("Beads", _points("Bead", {n: [b.at for b in g] for n, g in beads})),
    )
    return tuple(passage for passage in found if passage.sentences)


def convention(pattern: Pattern) -> str:
    """How places off the middle of a square are told, with an example that lies in this chart."""
    x, y = min(12, pattern.grid.width), min(30, pattern.grid.height)
    daisy = " A lazy daisy is a loop that is held down at its tip." if pattern.daisies else ""
    bead = " Beads are sewn on with 1 strand." if pattern.beads else ""
    return (
        "These lie on top of the stitches in the rows, and their places are told by corners, the "
        f"column first and then the row: corner {_place((x, y))} is the upper left corner of "
        f"the stitch in column {x}, row {y}, and {_place((x + 0.5, y + 0.5))} is the middle of "
        f"that stitch.{daisy}{bead}"
    )


def bead_name(bead: Bead) -> str:
    """'hip red, Dewdrop Glass 07'."""
    return f"{bead.colour.name}, {bead.card.name} {bead.colour.number}"


def _place(point: Point) -> str:
    """'12.5, 30': the column first, then the row."""
    return f"{plain(point[0])}, {plain(point[1])}"


def _paths(lines: Iterable[Line], names: Mapping[str, str], long: bool) -> tuple[str, ...]:
    """One sentence a line, colour by colour in the order in which the author drew them."""
    kind = "Long stitch" if long else "Line"
    groups = _grouped((line for line in lines if line.long is long), lambda line: names[line.mark])
    return tuple(
        f"{kind} {index} of {len(group)} in {name}: from corner {_path_words(line.points)}."
        for name, group in groups
        for index, line in enumerate(group, 1)
    )


def _path_words(points: tuple[Point, ...]) -> str:
    """'1, 1 to 3, 1, then 3, 4, then back to 1, 1'."""
    start, second, *others = (_place(point) for point in points)
    more = "".join(f", then {other}" for other in others)
    if others and points[-1] == points[0]:
        more = more.removesuffix(f"then {start}") + f"then back to {start}"
    return f"{start} to {second}{more}"


def _daisies(daisies: Iterable[Daisy], names: Mapping[str, str]) -> tuple[str, ...]:
    """One sentence a loop, colour by colour in the order in which the author drew them."""
    return tuple(
        f"Lazy daisy {index} of {len(group)} in {name}: from corner {_place(daisy.base)} to its tip "
        f"at {_place(daisy.tip)}."
        for name, group in _grouped(daisies, lambda daisy: names[daisy.mark])
        for index, daisy in enumerate(group, 1)
    )


def _points(kind: str, places: Mapping[str, list[Point]]) -> tuple[str, ...]:
    """Ten places a sentence, row by row from the top."""
    sentences = []
    for name, points in places.items():
        ordered = sorted(points, key=lambda point: (point[1], point[0]))
        for start in range(0, len(ordered), POINTS_A_SENTENCE):
            some = ordered[start : start + POINTS_A_SENTENCE]
            which = (
                f"{kind} {start + 1}"
                if len(some) == 1
                else f"{kind}s {start + 1} to {start + len(some)}"
            )
            at = "; ".join(_place(point) for point in some)
            sentences.append(f"{which} of {len(ordered)} in {name}: at {at}.")
    return tuple(sentences)


def _grouped(
    things: Iterable[Thing], called: Callable[[Thing], str]
) -> tuple[tuple[str, list[Thing]], ...]:
    """Things of one name together, in the order in which the names are first met."""
    groups: dict[str, list[Thing]] = {}
    for thing in things:
        groups.setdefault(called(thing), []).append(thing)
    return tuple(groups.items())
