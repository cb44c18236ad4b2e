"""A design told anew: another chart of the same picture, which may be shown where the chart itself is sold.

A public picture shows needlework worked from this other chart, so whatever is read out of it, however
large, and out of however many of them, is this chart and never the one that is sold. It has fewer, larger
crosses, which lie over no cell of the sold chart; every cross takes one of the design's own colours, so
that no mixture tells how a border runs between two cells; and every place has strayed a little, by a
`Wander` whose key is the sold chart itself: who has not got the chart has not got the key, although he
may read how it is used. How far places stray is measured: just so far that the other chart tells
less than MOST_AT_ONCE and MOST_VOTED of the sold one. A design of few colours needs more than one of many.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property, partial
from itertools import product
from math import ceil, floor

from packetgen.digest import digest
from packetgen.model import BARE, Grid, KeyLine, Line, Pattern, Stitch
from packetgen.reckon.colour import blended, lab, mix
from packetgen.reckon.figures import OnCloth
from packetgen.render.picture_path import pieces, smooth
from packetgen.render.picture_thread import Vector
from packetgen.render.picture_told import Detail, Told
from packetgen.render.picture_view import detail_view
from packetgen.render.picture_wander import Wander

SHOWN_CELLS = 1.5  # side of a cross of the other chart, in cells of the sold one
MOST_CROSSES = 110  # along the longer side: a picture for a page shows no more
# What the other chart may tell; whoever reads it from a picture reads it a little worse.
MOST_AT_ONCE, MOST_VOTED = 0.58, 0.62
_LESS_THAN_GUESSED = 0.05
# Standard deviations of the straying that are tried, in cells, the least first.
REACHES = (0.8, 0.95, 1.1, 1.3, 1.5, 1.75, 2.0, 2.4, 2.8, 3.3, 4.0, 5.0, 6.5)
# What is tried at each of them, before places must stray further: a number for the key, since one
# straying may hide a design better by luck, and how much louder a thin thing speaks than a wide one.
_TURNS = tuple((turn, 1 + turn % 4 // 2) for turn in range(8))
_CLOSE_UPS = (1.0, 0.9, 0.73, 0.61)  # shares of the close-up's width that pictures show
_PIECE = 0.8  # length of a backstitch, in crosses of the other chart
# How much of its cell a stitch colours; what is left is bare.
_COLOURED = {Stitch.THREE_QUARTER: 0.75, Stitch.HALF: 0.5, Stitch.HALF_BACK: 0.5}
_SMALL = 0.25


@dataclass(frozen=True)
class Retold:
    """`pattern` has the other chart, which covers the design and its border of bare cloth."""

    pattern: Pattern
    told: Told
    reach_cells: float


def retold(pattern: Pattern, on: OnCloth, border_mm: float) -> Retold:
    """The other chart, with as little straying as the limits allow, or else with the most."""
    border = border_mm / on.cell_mm
    tellings = [_Telling(pattern, on, border, *turn) for turn in _TURNS]
    detail = Detail(pattern.grid.rows, border)
    for reach, telling in product(REACHES, tellings):
        rows = telling.rows(reach)
        told = detail.told(rows)
        if _little(told):
            made = telling.pattern(rows, reach)
            view = detail_view(made)
            if all(
                _little(detail.told(rows, partial(view.shows, share=share))) for share in _CLOSE_UPS
            ):
                return Retold(made, told, reach)
    return Retold(telling.pattern(rows, reach), told, reach)


def _little(told: Told) -> bool:
    """Whether so much may be told: no more than the limits; of a sparse design, in which the commonest mark
    alone would be right more often than that, no more than such a guess, and at once less."""
    most_at_once = max(MOST_AT_ONCE, told.guessed - _LESS_THAN_GUESSED)
    return told.at_once <= most_at_once and told.voted <= max(MOST_VOTED, told.guessed)


def crosses(cells: tuple[int, int], border: float) -> tuple[int, int]:
    """Columns and rows of the other chart of a design of so many cells with `border` cells round it."""
    sides = [n + 2 * border for n in cells]
    side = max(SHOWN_CELLS, max(sides) / MOST_CROSSES)
    return max(1, round(sides[0] / side)), max(1, round(sides[1] / side))


class _Telling:
    def __init__(self, pattern: Pattern, on: OnCloth, border: float, turn: int, loud: int) -> None:
        self._of, self.border, self._loud = pattern, border, loud
        self._rows, self._size = pattern.grid.rows, (pattern.grid.width, pattern.grid.height)
        self._crosses = crosses(self._size, border)
        self._side = tuple((n + 2 * border) / c for n, c in zip(self._size, self._crosses))
        key = digest(pattern.grid, pattern.fractions, pattern.lines, turn)
        self._wander = Wander(key, *self._size)
        self._apart = _apart(pattern, on)

    def rows(self, reach: float) -> tuple[str, ...]:
        """The marks of the other chart."""
        return tuple(
            "".join(
                self._mark(x + reach * dx, y + reach * dy)
                for x, (dx, dy) in zip(self._middles[0], strays)
            )
            for y, strays in zip(self._middles[1], self._strays)
        )

    def pattern(self, rows: tuple[str, ...], reach: float) -> Pattern:
        """Everything that the pattern shows, in the places of the other chart."""
        of, side = self._of, self._side[0]

        def place(point: Vector) -> Vector:
            return self._place(point, reach)

        def path(line: Line) -> tuple[Vector, ...]:
            if line.long:
                return tuple(place(point) for point in line.points)
            return tuple(place(point) for point in pieces(smooth(line.points), _PIECE * side))

        return replace(
            of,
            grid=Grid(rows, of.grid.place),
            fractions=(),
            key=tuple(_in_a_whole_cell(line) for line in of.key),
            lines=tuple(replace(line, points=path(line)) for line in of.lines),
            knots=tuple(replace(knot, at=place(knot.at)) for knot in of.knots),
            daisies=tuple(replace(d, base=place(d.base), tip=place(d.tip)) for d in of.daisies),
            beads=tuple(
                replace(
                    bead,
                    at=place(bead.at),
                    card=replace(bead.card, size_mm=bead.card.size_mm / side),
                )
                for bead in of.beads
            ),
        )

    @cached_property
    def _middles(self) -> tuple[list[float], ...]:
        """Of the crosses' columns and rows, in cells from the design's corner."""
        return tuple(
            [(n + 0.5) * side - self.border for n in range(count)]
            for side, count in zip(self._side, self._crosses)
        )

    @cached_property
    def _strays(self) -> list[list[Vector]]:
        return self._wander.over(*self._middles)

    def _mark(self, x: float, y: float) -> str:
        """What speaks for a cross that looks at x, y: of the marks there, the one nearest to all."""
        weights: dict[str, float] = {}
        for row, tall in _spans(y, self._side[1]):
            for column, wide in _spans(x, self._side[0]):
                for mark, share in self._speaking(column, row):
                    weights[mark] = weights.get(mark, 0) + share * tall * wide
        if len(weights) == 1:
            return next(iter(weights))
        return min(
            weights,
            key=lambda mark: (sum(w * self._apart[mark, o] for o, w in weights.items()), mark),
        )

    def _speaking(self, column: int, row: int) -> tuple[tuple[str, float], ...]:
        if 0 <= column < self._size[0] and 0 <= row < self._size[1]:
            return self._speakers[row][column]
        return ((BARE, 1.0),)

    @cached_property
    def _speakers(self) -> list[list[tuple[tuple[str, float], ...]]]:
        """The marks of every cell with their weights: what is thin has more, or it would be lost."""
        parts: dict[tuple[int, int], list[tuple[str, float]]] = {}
        for part in self._of.fractions:
            share = _COLOURED.get(part.stitch, _SMALL)
            parts.setdefault((part.column - 1, part.row - 1), []).append((part.mark, share))
        result = []
        for y, row in enumerate(self._rows):
            above, below = self._rows[max(0, y - 1)], self._rows[min(len(self._rows) - 1, y + 1)]
            line = []
            for x, mark in enumerate(row):
                near = slice(max(0, x - 1), x + 2)
                alike = sum(three[near].count(mark) for three in (above, row, below))
                weight = (9 / alike) ** self._loud
                own = parts.get((x, y), [(mark, 1.0)])
                bare = 1 - sum(share for _, share in own)
                said = [*own, (BARE, bare)] if bare > 0 else own
                line.append(tuple((m, share * weight) for m, share in said))
            result.append(line)
        return result

    def _place(self, point: Vector, reach: float) -> Vector:
        """Where a corner of the chart comes to lie: the place from which one strays to it."""
        wanted = point[0] - 1, point[1] - 1
        here = wanted
        for _ in range(3):  # comes nearer each time, since neighbours stray alike
            dx, dy = self._wander.at(here)
            here = wanted[0] - reach * dx, wanted[1] - reach * dy
        return tuple((at + self.border) / side + 1 for at, side in zip(here, self._side))


def _spans(middle: float, side: float) -> Iterator[tuple[int, float]]:
    """The cells along one axis that a cross lies over, and how much of each."""
    start, end = middle - side / 2, middle + side / 2
    for cell in range(floor(start), ceil(end)):
        yield cell, min(end, cell + 1) - max(start, cell)


def _in_a_whole_cell(line: KeyLine) -> KeyLine:
    return replace(line, stitch=Stitch.FULL) if line.stitch.in_a_corner else line


def _apart(pattern: Pattern, on: OnCloth) -> dict[tuple[str, str], float]:
    """How far apart the colours of any two marks are, in CIELAB; different marks are never quite alike."""
    cloth, first = on.option.colour.hex, pattern.thread_sets[0].id
    seen = {BARE: lab(cloth)}
    for line in pattern.key:
        thread = blended(tuple(colour.hex for colour in line.threads[first]))
        seen[line.mark] = lab(thread if line.stitch is Stitch.FULL else mix(thread, cloth, 0.5))
    return {
        (one, other): 0.0 if one == other else 1 + sum((p - q) ** 2 for p, q in zip(a, b)) ** 0.5
        for one, a in seen.items()
        for other, b in seen.items()
    }
