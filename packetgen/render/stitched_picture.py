"""The stitched design, drawn stitch by stitch as it will look on the cloth: the cover of a packet."""

from collections import Counter
from collections.abc import Callable
from math import hypot, pi, sqrt
from typing import NamedTuple

from PIL import Image

from packetgen.chart.outlines import daisy_anchor, daisy_loop
from packetgen.colour import channels
from packetgen.model import (
    BARE,
    ClothOption,
    Corner,
    Daisy,
    Fraction,
    KeyLine,
    Line,
    Pattern,
    Stitch,
    ThreadSet,
)
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
)
from packetgen.reckon.sizes import cell_mm
from packetgen.render.picture_cloth import weave_light
from packetgen.render.picture_thread import Layers, Vector, ball, loop, thread

MARGIN_CELLS = 4  # bare cloth round the design
_VARIANTS = 5
# Cotton as it lies in a strand, g/cm³, and how far a strand spreads on the cloth: chosen by eye.
_DENSITY, _SPREAD = 0.6, 1.75
_STRAND_CELLS = (0.13, 0.27)  # never drawn thinner or thicker than this
_HOLE = 0.07  # cells of a backstitch, at each end, that have gone down into its hole
_KNOT_STRANDS = 3.7
_SHARED = (
    0.07  # cells that the long legs of two three-quarter stitches in one cell lie to either side
)

# Legs in cells from the cell's top left corner: start and run.
_UNDER = ((0.0, 0.0), (1.0, 1.0))
_UPPER = ((0.0, 1.0), (1.0, -1.0))
_TO_MIDDLE = {
    Corner.TOP_LEFT: ((0.0, 0.0), (0.5, 0.5)),
    Corner.TOP_RIGHT: ((1.0, 0.0), (-0.5, 0.5)),
    Corner.BOTTOM_LEFT: ((0.0, 1.0), (0.5, -0.5)),
    Corner.BOTTOM_RIGHT: ((1.0, 1.0), (-0.5, -0.5)),
}
_ACROSS = {
    Corner.TOP_LEFT: Corner.BOTTOM_RIGHT,
    Corner.TOP_RIGHT: Corner.BOTTOM_LEFT,
    Corner.BOTTOM_LEFT: Corner.TOP_RIGHT,
    Corner.BOTTOM_RIGHT: Corner.TOP_LEFT,
}


Leg = tuple[Vector, Vector]


class _Needle(NamedTuple):
    colours: tuple[tuple[int, int, int], ...]
    strands: int
    strand_px: float
    braid: bool


def picture_cells(pattern: Pattern) -> tuple[int, int]:
    """Columns and rows of the picture: the design's, and those of the bare cloth round it."""
    return pattern.grid.width + 2 * MARGIN_CELLS, pattern.grid.height + 2 * MARGIN_CELLS


def stitched(pattern: Pattern, option: ClothOption, px_per_cell: int) -> Image.Image:
    """The design in the model's thread on this cloth, with MARGIN_CELLS of bare cloth all round."""
    return stitched_layers(pattern, option, px_per_cell).lit()


def stitched_layers(
    pattern: Pattern, option: ClothOption, px_per_cell: int, margin_cells: int = MARGIN_CELLS
) -> Layers:
    """The same as colour, light and cover. Every mark must have its key line: loading sees to it."""
    return _Hand(pattern, option, px_per_cell, margin_cells).work()


class _Hand:
    """Stitches one pattern: under legs, upper legs, then what lies on top of the crosses."""

    def __init__(self, pattern: Pattern, option: ClothOption, px: int, margin: int) -> None:
        self._pattern, self._px, self._margin = pattern, px, margin
        self._set = pattern.thread_sets[0]
        self._key = {line.mark: line for line in pattern.key}
        self._needles: dict[object, _Needle] = {}
        self._cell_mm = cell_mm(option.cloth.count_per_inch, option.over)
        cells = (pattern.grid.width + 2 * margin, pattern.grid.height + 2 * margin)
        light = weave_light(option.cloth.weave, option.over, px, cells)
        self._layers = Layers(channels(option.colour.hex), light)

    def work(self) -> Layers:
        legs = self._legs()
        for under in (True, False):
            for is_under, cell, needle, (start, run) in legs:
                if is_under is under:
                    self._thread((cell[0] + start[0], cell[1] + start[1]), run, needle)
        lines = sorted(self._pattern.lines, key=lambda line: line.long)
        for line in lines:
            self._line(line)
        for daisy in self._pattern.daisies:
            self._daisy(daisy)
        for knot in self._pattern.knots:
            needle = self._needle(knot.mark, knot_strands_for)
            sprite = ball(needle.strand_px * _KNOT_STRANDS * needle.strands**0.5, False)
            self._layers.lay(sprite, self._at(_from_corner(knot.at)), needle.colours[0])
        for bead in self._pattern.beads:
            sprite = ball(bead.card.size_mm / self._cell_mm * self._px * 0.92, True)
            self._layers.lay(sprite, self._at(_from_corner(bead.at)), channels(bead.colour.hex))
        return self._layers

    def _legs(self) -> list[tuple[bool, Vector, _Needle, Leg]]:
        """(is under, cell from 0, needle, leg) of every stitch in a cell, in reading order."""
        legs: list[tuple[bool, Vector, _Needle, Leg]] = []
        for y, row in enumerate(self._pattern.grid.rows):
            for x, mark in enumerate(row):
                if mark != BARE:
                    needle = self._needle(mark, strands_for)
                    for is_under, leg in _legs_of(self._key[mark].stitch, None):
                        legs.append((is_under, (x, y), needle, leg))
        shared = _shared(self._pattern.fractions)
        for part in self._pattern.fractions:
            needle, at = self._needle(part.mark, strands_for), (part.column, part.row)
            for is_under, leg in _legs_of(part.stitch, part.corner):
                aside = 0 if is_under or at not in shared else _SHARED
                away_x, away_y = _TO_MIDDLE[part.corner][1] if part.corner and aside else (0, 0)
                cell = (at[0] - 1 + away_x * 2 * aside, at[1] - 1 + away_y * 2 * aside)
                legs.append((is_under, cell, needle, leg))
        return legs

    def _needle(self, mark: str, strands: Callable[[KeyLine, ThreadSet], int]) -> _Needle:
        if (mark, strands) not in self._needles:
            self._needles[mark, strands] = self._threaded(mark, strands)
        return self._needles[mark, strands]

    def _threaded(self, mark: str, strands: Callable[[KeyLine, ThreadSet], int]) -> _Needle:
        line = self._key[mark]
        colours = tuple(channels(c.hex) for c in line.threads[self._set.id])
        cards = line.cards_in(self._set)
        area_mm2 = sum(card.tex for card in cards) / len(cards) / 1000 / _DENSITY
        spread = 2 * sqrt(area_mm2 / pi) * _SPREAD / self._cell_mm
        strand_px = min(max(spread, _STRAND_CELLS[0]), _STRAND_CELLS[1]) * self._px
        braid = any(card.braid for card in cards)
        return _Needle(colours, strands(line, self._set), strand_px, braid)

    def _at(self, cell: Vector) -> Vector:
        return (cell[0] + self._margin) * self._px, (cell[1] + self._margin) * self._px

    def _thread(self, start: Vector, run: Vector, needle: _Needle) -> None:
        """One straight piece of thread; `start` and `run` in cells from the design's corner."""
        x, y = self._at(start)
        px_run = (run[0] * self._px, run[1] * self._px)
        # Neighbours differ, without a pattern that the eye would find.
        mixed = round(start[0] * 2) * 7 + round(start[1] * 2) * 13 + round(run[1] * 3)
        variant = mixed % 31 % _VARIANTS
        total = needle.strands
        strand_px = needle.strand_px * min(1, 2.6 / total) ** 0.5
        for index, colour in enumerate(needle.colours):
            shown = tuple(range(index, total, len(needle.colours)))
            sprite = thread(px_run, strand_px, total, shown, variant, needle.braid)
            self._layers.lay(sprite, (x, y), colour)

    def _daisy(self, daisy: Daisy) -> None:
        """The loop, then the stitch that holds it down."""
        needle = self._needle(daisy.mark, daisy_strands_for)
        base_x, base_y = _from_corner(daisy.base)
        points = tuple(
            (round((x - base_x) * self._px, 2), round((y - base_y) * self._px, 2))
            for x, y in daisy_loop(daisy)
        )
        for index, colour in enumerate(needle.colours):
            shown = tuple(range(index, needle.strands, len(needle.colours)))
            sprite = loop(points, needle.strand_px, needle.strands, shown, needle.braid)
            self._layers.lay(sprite, self._at((base_x, base_y)), colour)
        (x0, y0), (x1, y1) = daisy_anchor(daisy)
        self._thread((x0, y0), (x1 - x0, y1 - y0), needle)

    def _line(self, line: Line) -> None:
        needle = self._needle(line.mark, line_strands_for)
        points = [_from_corner(point) for point in line.points]
        for (x0, y0), (x1, y1) in zip(points, points[1:]):
            dx, dy = x1 - x0, y1 - y0
            length = hypot(dx, dy)
            if not length:
                continue
            # Backstitch goes down into every hole that it passes; a long stitch into none.
            pieces = 1 if line.long else max(1, round(max(abs(dx), abs(dy))))
            for piece in range(pieces):
                gap = 0 if line.long else min(0.2 / pieces, _HOLE / length)
                first, last = piece / pieces + gap, (piece + 1) / pieces - gap
                start = (x0 + dx * first, y0 + dy * first)
                self._thread(start, (dx * (last - first), dy * (last - first)), needle)


def _from_corner(point: Vector) -> Vector:
    """Corner coordinates count from 1."""
    return point[0] - 1, point[1] - 1


def _shared(fractions: tuple[Fraction, ...]) -> set[tuple[int, int]]:
    """Cells in which two three-quarter stitches meet."""
    long = ((part.column, part.row) for part in fractions if part.stitch is Stitch.THREE_QUARTER)
    return {cell for cell, times in Counter(long).items() if times > 1}


def _legs_of(stitch: Stitch, corner: Corner | None) -> list[tuple[bool, Leg]]:
    """(is under, leg) of one stitch. The long leg of a three-quarter stitch holds the short one down."""
    if stitch is Stitch.FULL:
        return [(True, _UNDER), (False, _UPPER)]
    if stitch is Stitch.HALF:
        return [(False, _UPPER)]
    if stitch is Stitch.HALF_BACK:
        return [(False, _UNDER)]
    if stitch is Stitch.PETITE:
        # A full cross in its quarter of the cell.
        (x, y), (run_x, run_y) = _TO_MIDDLE[corner or Corner.TOP_LEFT]
        left, top = min(x, x + run_x), min(y, y + run_y)
        return [
            (True, ((left, top), (0.5, 0.5))),
            (False, ((left, top + 0.5), (0.5, -0.5))),
        ]
    if stitch is Stitch.QUARTER:
        return [(False, _TO_MIDDLE[corner or Corner.BOTTOM_LEFT])]
    open_corner = corner or Corner.TOP_RIGHT
    long_leg = _UPPER if open_corner in (Corner.TOP_LEFT, Corner.BOTTOM_RIGHT) else _UNDER
    return [(True, _TO_MIDDLE[_ACROSS[open_corner]]), (False, long_leg)]
