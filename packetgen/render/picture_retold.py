"""A design told anew: another chart of the same picture, which may be shown where the chart itself is sold.

A public picture shows needlework worked from this other chart, so whatever is read out of it, however
large, and out of however many of them, is this chart and never the one that is sold. It has fewer, larger
crosses, which lie over no cell of the sold chart; every cross takes one of the design's own colours, so
that no mixture tells how a border runs between two cells; and every place has strayed a little, by a
`Wander` whose key is the sold chart itself: who has not got the chart has not got the key, although he
may read how it is used. How far places stray is measured: just so far that the other chart tells
less than MOST_AT_ONCE and MOST_VOTED of the sold one. A design of few colours needs more than one of many.
"""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache, cached_property, partial
from itertools import islice, product
from math import ceil

import numpy as np

from packetgen.colour import Lab, blended, lab, mix
from packetgen.model import BARE, Grid, KeyLine, Pattern, Stitch
from packetgen.reckon.figures import OnCloth
from packetgen.render.picture_path import pieces, smooth
from packetgen.render.picture_thread import Vector
from packetgen.render.picture_told import Detail, Told, signs
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
# straying may hide a design better by luck, how much louder a thin thing speaks than a wide one, and whether
# the design is kept in the middle of its card, which hides less of it.
_TURNS = tuple(
    (turn, 1 + turn % 4 // 2, in_the_middle) for in_the_middle in (False, True) for turn in range(8)
)
# Of the nine cells round and with one of a thin line so many are alike. With fewer it is a speck, and as loud as such
# a line at its least: louder it would fill all crosses that touch it, and a few pebbles the whole bed.
_THIN, _AS_A_LINE = 3, 3.0
# So much further places may stray where specks are no louder than that.
_FURTHER = 1.5
_FILLED = 0.9  # share of an edge that makes it a straight one
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
    """The other chart, with as little straying as the limits allow, or else with the most; of two that stray
    alike the one that stays on its card. One in which specks are small is taken where it strays not much further."""
    border = border_mm / on.cell_mm
    design, detail = _Design(pattern, on, border), Detail(pattern.grid.rows, border)
    found, _ = _least_strayed(design, detail, REACHES, specks=True)
    near = tuple(reach for reach in REACHES if reach <= _FURTHER * found.reach_cells)
    with_small, within = _least_strayed(design, detail, near, specks=False)
    return with_small if within and design.is_on_card(with_small.pattern.grid.rows) else found


def _least_strayed(
    design: "_Design", detail: Detail, reaches: Sequence[float], specks: bool
) -> tuple[Retold, bool]:
    """With as little of the `reaches` as the limits allow, or else with the most; and whether it is within them.
    `specks` says whether they are as loud as they are thin."""
    speakers = cache(lambda loud: design.speakers(loud, specks))
    telling_of = cache(
        lambda turn, loud, in_the_middle: _Telling(design, turn, speakers(loud), in_the_middle)
    )
    for reach in reaches:
        over_the_edge: Retold | None = None
        for turn in _TURNS:
            telling = telling_of(*turn)
            rows = telling.rows(reach)
            told = detail.told(rows)
            if not _little(told):
                continue
            made = telling.pattern(rows, reach)
            view = detail_view(made)
            if all(
                _little(detail.told(rows, partial(view.shows, share=share))) for share in _CLOSE_UPS
            ):
                if design.is_on_card(rows):
                    return Retold(made, told, reach), True
                over_the_edge = over_the_edge or Retold(made, told, reach)
        if over_the_edge:
            return over_the_edge, True
    return Retold(telling.pattern(rows, reach), told, reach), False


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


class _Design:
    """What every telling of a design begins with."""

    def __init__(self, pattern: Pattern, on: OnCloth, border: float) -> None:
        self.pattern, self.border, self.key = pattern, border, _key(pattern)
        self.size = pattern.grid.width, pattern.grid.height
        self.crosses = crosses(self.size, border)
        self.side = tuple((n + 2 * border) / c for n, c in zip(self.size, self.crosses))
        self.middles = tuple(
            (np.arange(count) + 0.5) * side - border for side, count in zip(self.side, self.crosses)
        )
        self.filled = _filled_edges(pattern.grid.rows)
        colours = _colours(pattern, on)
        self.marks = sorted(colours)
        self.apart = _apart(np.array([colours[mark] for mark in self.marks]))

    @cached_property
    def paths(self) -> list[tuple[Vector, ...]]:
        """The corners of every line, cut into stitches of the other chart."""
        return [
            line.points if line.long else pieces(smooth(line.points), _PIECE * self.side[0])
            for line in self.pattern.lines
        ]

    def is_on_card(self, rows: tuple[str, ...]) -> bool:
        """Whether the outermost crosses of the other chart are bare; always where no border is as wide."""
        outermost = {*rows[0], *rows[-1], *(row[0] for row in rows), *(row[-1] for row in rows)}
        return outermost == {BARE} or self.border < max(self.side)

    def speakers(self, loud: int, specks: bool) -> np.ndarray:
        """How loudly each mark speaks in every cell, rows × columns × marks, with a bare cell all round.

        What is thin has more weight, or it would be lost: `loud` says how much more, and `specks`
        whether what is no line has as much.
        """
        number = {mark: at for at, mark in enumerate(self.marks)}
        there = signs(self.pattern.grid.rows)
        near = np.pad(np.pad(there, ((1, 1), (0, 0)), "edge"), ((0, 0), (1, 1)))
        rows, columns = there.shape
        alike = sum(
            near[down : down + rows, across : across + columns] == there
            for down, across in product(range(3), repeat=2)
        )
        share = (there[..., None] == signs(("".join(self.marks),))).astype(float)
        for part in self.pattern.fractions:
            share[part.row - 1, part.column - 1] = 0
        for part in self.pattern.fractions:
            coloured = _COLOURED.get(part.stitch, _SMALL)
            share[part.row - 1, part.column - 1, number[part.mark]] += coloured
        share[..., number[BARE]] += np.maximum(0, 1 - share.sum(axis=-1))
        speaking = np.zeros((rows + 2, columns + 2, len(self.marks)))
        speaking[..., number[BARE]] = 1
        louder = (9 / alike) ** loud
        if not specks:
            louder = np.where(alike < _THIN, _AS_A_LINE, louder)
        speaking[1:-1, 1:-1] = share * louder[..., None]
        return speaking


class _Telling:
    def __init__(
        self, design: _Design, turn: int, speaking: np.ndarray, in_the_middle: bool
    ) -> None:
        self._design, self._speaking = design, speaking
        self._wander = Wander(f"telling {turn}\n{design.key}", *design.size)
        strays = self._wander.over(*design.middles)
        self._aside = strays.mean(axis=(0, 1)) * in_the_middle
        self._strays = strays - self._aside

    def rows(self, reach: float) -> tuple[str, ...]:
        """The marks of the other chart: for each cross, of the marks in the place that it looks at, the one
        nearest to all that speak there."""
        design = self._design
        looks = (
            _kept_behind(
                design.filled[axis],
                middles,
                middles + reach * self._strays[..., axis],
                design.side[axis] / 2,
                design.size[axis],
            )
            for axis, middles in enumerate((design.middles[0], design.middles[1][:, None]))
        )
        across, down = (
            [*_spans(look, side, cells)]
            for look, side, cells in zip(looks, design.side, design.size)
        )
        weights = sum(
            self._speaking[row, column] * (tall * wide)[..., None]
            for (row, tall), (column, wide) in product(down, across)
        )
        # Rounded, so that equals stay equal however a machine adds.
        far = np.where(weights > 0, np.round(weights @ design.apart, 6), np.inf)
        marks = np.array(design.marks)[far.argmin(axis=-1)]
        return tuple("".join(row) for row in marks)

    def pattern(self, rows: tuple[str, ...], reach: float) -> Pattern:
        """Everything that the pattern shows, in the places of the other chart."""
        of, side, paths = self._design.pattern, self._design.side[0], self._design.paths
        points = [point for path in paths for point in path]
        points += [knot.at for knot in of.knots] + [bead.at for bead in of.beads]
        points += [end for daisy in of.daisies for end in (daisy.base, daisy.tip)]
        placed = self._placed(points, reach)
        return replace(
            of,
            grid=Grid(rows, of.grid.place),
            fractions=(),
            key=tuple(_in_a_whole_cell(line) for line in of.key),
            lines=tuple(
                replace(line, points=tuple(islice(placed, len(path))))
                for line, path in zip(of.lines, paths)
            ),
            knots=tuple(replace(knot, at=next(placed)) for knot in of.knots),
            beads=tuple(
                replace(
                    bead,
                    at=next(placed),
                    card=replace(bead.card, size_mm=bead.card.size_mm / side),
                )
                for bead in of.beads
            ),
            daisies=tuple(
                replace(daisy, base=next(placed), tip=next(placed)) for daisy in of.daisies
            ),
        )

    def _placed(self, points: list[Vector], reach: float) -> Iterator[Vector]:
        """Where corners of the chart come to lie: the places from which one strays to them."""
        wanted = np.array(points, float).reshape(-1, 2) - 1
        here = wanted
        for _ in range(3):  # comes nearer each time, since neighbours stray alike
            here = wanted - reach * (self._wander.at(here) - self._aside)
        return map(tuple, ((here + self._design.border) / self._design.side + 1).tolist())


def _filled_edges(rows: Sequence[str]) -> tuple[tuple[bool, bool], tuple[bool, bool]]:
    """Whether the design fills its first and its last column, and its first and its last row."""

    def filled(edge: Collection[str]) -> bool:
        return sum(mark != BARE for mark in edge) >= _FILLED * len(edge)

    columns = [[row[at] for row in rows] for at in (0, -1)]
    return (filled(columns[0]), filled(columns[1])), (filled(rows[0]), filled(rows[-1]))


def _kept_behind(
    filled: tuple[bool, bool], middles: np.ndarray, looks: np.ndarray, half: float, cells: int
) -> np.ndarray:
    """Where crosses look along one axis: those within a filled edge of the design at what is within it, those beyond
    at what is beyond, and those along it at its last cell and the bare cloth next to it, which is less. A straight
    edge would be shown ragged, and a thin frame be lost."""
    if filled[0]:
        within = np.where(middles < 2 * half, 1 - half, np.maximum(looks, half))
        looks = np.where(middles < 0, np.minimum(looks, -half), within)
    if filled[1]:
        within = np.where(
            middles > cells - 2 * half, cells - 1 + half, np.minimum(looks, cells - half)
        )
        looks = np.where(middles > cells, np.maximum(looks, cells + half), within)
    return looks


def _spans(middles: np.ndarray, side: float, cells: int) -> Iterator[tuple[np.ndarray, np.ndarray]]:
    """The cells along one axis that each cross lies over, from 1, and how much of each; what lies beyond
    the chart's `cells` is the bare cell next to it."""
    start, end = middles - side / 2, middles + side / 2
    for step in range(ceil(side) + 1):
        cell = np.floor(start) + step
        share = np.minimum(end, cell + 1) - np.maximum(start, cell)
        yield np.clip(cell + 1, 0, cells + 1).astype(int), np.maximum(0, share)


def _key(pattern: Pattern) -> str:
    """What is stitched of the sold chart, as text. Pictures of the same chart stray alike in every release
    of this program: two tellings would tell more than one."""
    said = [*pattern.grid.rows]
    said += [f"{part.mark} {part.column},{part.row}" for part in pattern.fractions]
    for line in pattern.lines:
        said.append(" ".join([line.mark, *(f"{x:g},{y:g}" for x, y in line.points)]))
    return "\n".join(said)


def _in_a_whole_cell(line: KeyLine) -> KeyLine:
    return replace(line, stitch=Stitch.FULL) if line.stitch.in_a_corner else line


def _colours(pattern: Pattern, on: OnCloth) -> dict[str, Lab]:
    """What is seen of every mark."""
    cloth, first = on.option.colour.hex, pattern.thread_sets[0].id
    seen = {BARE: lab(cloth)}
    for line in pattern.key:
        thread = blended(tuple(colour.hex for colour in line.threads[first]))
        seen[line.mark] = lab(thread if line.stitch is Stitch.FULL else mix(thread, cloth, 0.5))
    return seen


def _apart(colours: np.ndarray) -> np.ndarray:
    """How far apart any two colours are, in CIELAB; different marks are never quite alike."""
    away: np.ndarray = np.sqrt(((colours[:, None] - colours) ** 2).sum(axis=-1))
    return away + 1 - np.eye(len(colours))
