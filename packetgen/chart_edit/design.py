"""A change done to a design, and what of the design falls off the chart by it."""

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TypeVar

from packetgen.chart_edit.change import Change
from packetgen.diagnostics import Place
from packetgen.model import BARE, Bead, Fraction, Knot, Line, Pattern, Point

_Sewn = TypeVar("_Sewn", Knot, Bead)


def moved(pattern: Pattern, change: Change) -> Pattern:
    """The design after the change; of what falls off the chart only the pieces that stay on it.

    A key line goes with the last of what is worked in it.
    """
    after = replace(
        pattern,
        grid=change.grid(pattern.grid),
        fractions=tuple(
            one
            for one in (_fraction(fraction, change) for fraction in pattern.fractions)
            if change.holds_cell(one.column, one.row)
        ),
        lines=tuple(piece for line in pattern.lines for piece in _line(line, change)),
        daisies=tuple(
            replace(daisy, base=base, tip=tip)
            for daisy in pattern.daisies
            for base, tip in stretches((daisy.base, daisy.tip), change)
        ),
        knots=_staying(pattern.knots, change),
        beads=_staying(pattern.beads, change),
    )
    gone = marks_used(pattern) - marks_used(after)
    key = (
        replace(line, stitch=change.stitch(line.stitch))
        for line in pattern.key
        if line.mark not in gone
    )
    return in_order(replace(after, key=tuple(key)))


def in_order(pattern: Pattern) -> Pattern:
    """The same design with its fractional stitches row by row, in whatever windows they were written."""

    def place(one: Fraction) -> tuple[int, int, str, str]:
        return one.row, one.column, one.corner.value if one.corner else "", one.mark

    return replace(pattern, fractions=tuple(sorted(pattern.fractions, key=place)))


def marks_used(pattern: Pattern) -> frozenset[str]:
    """The marks of the key lines that anything is worked in."""
    besides = (
        one.mark
        for of in (pattern.fractions, pattern.lines, pattern.daisies, pattern.knots)
        for one in of
    )
    return frozenset(besides).union(*pattern.grid.rows) - {BARE}


def stretches(points: tuple[Point, ...], change: Change) -> Iterator[tuple[Point, ...]]:
    """The stretches of a path that stay on the chart, where they come to lie."""
    stretch: list[Point] = []
    for point in map(change.point, points):
        if change.holds_point(point):
            stretch.append(point)
            continue
        if len(stretch) > 1:
            yield tuple(stretch)
        stretch = []
    if len(stretch) > 1:
        yield tuple(stretch)


def _line(line: Line, change: Change) -> Iterator[Line]:
    for points in stretches(line.points, change):
        yield replace(line, points=points)


def _fraction(fraction: Fraction, change: Change) -> Fraction:
    column, row = change.cell(fraction.column, fraction.row)
    corner = fraction.corner and change.corner(fraction.corner)
    stitch = change.stitch(fraction.stitch)
    return replace(fraction, column=column, row=row, corner=corner, stitch=stitch)


def _staying(ones: tuple[_Sewn, ...], change: Change) -> tuple[_Sewn, ...]:
    there = (replace(one, at=change.point(one.at)) for one in ones)
    return tuple(one for one in there if change.holds_point(one.at))


# --- what falls off -------------------------------------------------------------------------------


@dataclass(frozen=True)
class Lost:
    """So many of `what` of one mark (or bead) fall off; the first of them stands at `place`."""

    number: int
    what: str
    of: str
    place: Place


def lost(pattern: Pattern, change: Change) -> tuple[Lost, ...]:
    """What of the design would fall off the chart, by kind and mark, in the order of its places."""
    first: dict[tuple[str, str], Place] = {}
    times: Counter[tuple[str, str]] = Counter()
    for what, of, place in _falling(pattern, change):
        times[what, of] += 1
        first[what, of] = min(place, first.get((what, of), place))
    found = (Lost(times[what, of], what, of, place) for (what, of), place in first.items())
    return tuple(sorted(found, key=lambda one: one.place))


def _falling(pattern: Pattern, change: Change) -> Iterator[tuple[str, str, Place]]:
    grid = pattern.grid
    for y, row in enumerate(grid.rows, 1):
        for x, mark in enumerate(row, 1):
            if mark != BARE and not change.holds_cell(*change.cell(x, y)):
                yield "stitch", mark, replace(grid.place, line=grid.place.line + y - 1, column=x)
    for one in pattern.fractions:
        if not change.holds_cell(*change.cell(one.column, one.row)):
            yield "stitch of a close-up", one.mark, pattern.place

    def off(points: Iterable[Point]) -> bool:
        return not all(change.holds_point(change.point(point)) for point in points)

    for line in pattern.lines:
        what = "long stitch" if line.long else "stretch of backstitch"
        for stretch in pairwise(line.points):
            if off(stretch):
                yield what, line.mark, line.place
    for daisy in pattern.daisies:
        if off((daisy.base, daisy.tip)):
            yield "lazy daisy", daisy.mark, daisy.place
    yield from (("French knot", one.mark, one.place) for one in pattern.knots if off([one.at]))
    yield from (("bead", one.colour.number, one.place) for one in pattern.beads if off([one.at]))
