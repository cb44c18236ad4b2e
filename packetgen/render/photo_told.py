"""Advice on a photograph from which anybody could copy the chart: one that shows an even cell a stitch."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import product

import numpy as np

from packetgen.diagnostics import Problems
from packetgen.model import Pattern
from packetgen.model.extent import bare_margins
from packetgen.reckon.review_texts import photo_place
from packetgen.render.photo import upright
from packetgen.render.picture_told import Rows, detail_of, signs

# From this share of the cells that differ from a neighbour on, a picture gives its chart away, if a guess
# without it has so much less; of fewer such cells a share says nothing. All three are our own choice.
READ_BACK, _BEYOND_GUESSING, _FEWEST = 0.6, 0.1, 25
_PX_PER_CELL = 5  # of what is looked at, where the design fills the picture
_PROPORTION = 0.05  # so far the picture may be wider or higher than the chart
_UNLIKE = (10, 30, 70)  # levels by which a design may stand out from an even border
_STEPS = (0.0, 0.5, 1.0, 2.0, -1.0)  # by which a side of it may lie further in
_TRIED = 500  # cells that say where it lies; all of them say what can be read

Box = tuple[float, float, float, float]  # left, top, right, bottom


def complain_of_photo_told(pattern: Pattern, problems: Problems) -> bool:
    """Advice for the photograph of a pattern that is sold, from which the chart can be read back; whether that is
    so."""
    if pattern.photo is None or pattern.given_away:
        return False
    most_px = _PX_PER_CELL * max(pattern.grid.width, pattern.grid.height)
    share = read_back(np.asarray(upright(pattern.photo, most_px)), pattern)
    told = share >= READ_BACK
    if told:
        problems.add(photo_place(pattern), "photo-tells-chart", share=round(share * 100))
    return told


def read_back(picture: np.ndarray, pattern: Pattern) -> float:
    """Share of the cells that differ from a neighbour of which the picture (height × width × 3) shows the
    colour in its place; 0 where that is no better than guessing, or where nothing fits the chart's sides.

    A colour is what the cells of its mark have in the middle, so that light and camera do not matter.
    """
    charts = [_Cells(rows) for rows in dict.fromkeys(_worked(pattern))]
    tried = [
        (chart, box)
        for chart, box in product(charts, dict.fromkeys(_boxes(picture)))
        if chart.fits(box)
    ]
    if not tried:
        return 0.0
    chart, box = max(tried, key=lambda one: one[0].read(picture, one[1], _TRIED))
    for cells in (1.0, 0.25):
        box = chart.laid(picture, box, cells)
    share = chart.read(picture, box)
    return share if share >= chart.guessed + _BEYOND_GUESSING else 0.0


def _worked(pattern: Pattern) -> Iterator[tuple[str, ...]]:
    """The chart; the part of it on which something is worked; and that on which stitches are, which is what a
    picture without lines and knots shows."""
    grid = pattern.grid
    yield grid.rows
    for one in (pattern, replace(pattern, lines=(), daisies=(), knots=(), beads=())):
        left, right, top, bottom = bare_margins(one)
        yield tuple(row[left : grid.width - right] for row in grid.rows[top : grid.height - bottom])


def _boxes(picture: np.ndarray) -> Iterator[Box]:
    """The whole picture, and what stands out from a border of one colour."""
    high, wide = picture.shape[:2]
    yield 0, 0, wide, high
    edge = np.concatenate([picture[0], picture[-1], picture[:, 0], picture[:, -1]])
    unlike = np.abs(picture.astype(np.int16) - np.median(edge, axis=0).astype(np.int16)).max(
        axis=-1
    )
    for level in _UNLIKE:
        stands_out = unlike > level
        across, down = (np.flatnonzero(stands_out.mean(axis) > 0.01) for axis in (0, 1))
        if across.size and down.size:
            yield across[0], down[0], across[-1] + 1, down[-1] + 1


class _Cells:
    """The cells of a chart that differ from a neighbour, and how they are looked for in a picture."""

    def __init__(self, rows: Rows) -> None:
        chart = signs(rows)
        self._high, self._wide = chart.shape
        self._rows, self._columns = np.nonzero(detail_of(chart))
        marks, self._marks = np.unique(chart[self._rows, self._columns], return_inverse=True)
        self.guessed = np.bincount(self._marks).max() / len(self._marks) if marks.size else 1.0

    def fits(self, box: Box) -> bool:
        """Whether there is enough to look for, and a box of the chart's proportions."""
        shape = (box[2] - box[0]) / (box[3] - box[1]) * self._high / self._wide
        return len(self._marks) >= _FEWEST and abs(shape - 1) <= _PROPORTION

    def laid(self, picture: np.ndarray, box: Box, cells: float) -> Box:
        """The box with its sides, first left and right, moved to where most can be read, in steps of `cells`."""
        left, top, right, bottom = box
        wide, high = cells * (right - left) / self._wide, cells * (bottom - top) / self._high
        ways = tuple(product(_STEPS, _STEPS))
        sides = [(left + a * wide, top, right - b * wide, bottom) for a, b in ways]
        left, _, right, _ = max(sides, key=lambda one: self.read(picture, one, _TRIED))
        ends = [(left, top + a * high, right, bottom - b * high) for a, b in ways]
        return max(ends, key=lambda one: self.read(picture, one, _TRIED))

    def read(self, picture: np.ndarray, box: Box, most: int | None = None) -> float:
        """Share of the cells that have the colour of their own mark, if the chart fills the box; of `most` or
        fewer cells, if not of all."""
        every = 1 if most is None else max(1, len(self._marks) // most)
        marks, seen = self._marks[::every], self._seen(picture, box, every)
        kinds, of_kind = np.unique(marks, return_inverse=True)
        # The mean is found much faster, and serves to find the place.
        middle = _medians if most is None else _means
        colours = middle(seen, of_kind, len(kinds))
        apart = (colours**2).sum(axis=1) - 2 * seen @ colours.T
        return float((apart.argmin(axis=1) == of_kind).mean())

    def _seen(self, picture: np.ndarray, box: Box, every: int) -> np.ndarray:
        """What the picture shows in the middle of each cell."""
        left, top, right, bottom = box
        high, wide = picture.shape[:2]
        across = left + (self._columns[::every] + 0.5) * (right - left) / self._wide
        down = top + (self._rows[::every] + 0.5) * (bottom - top) / self._high
        return picture[
            np.clip(down.astype(int), 0, high - 1), np.clip(across.astype(int), 0, wide - 1)
        ].astype(float)


def _means(seen: np.ndarray, of_kind: np.ndarray, kinds: int) -> np.ndarray:
    belongs = (np.arange(kinds)[:, None] == of_kind).astype(float)
    return belongs @ seen / belongs.sum(axis=1, keepdims=True)


def _medians(seen: np.ndarray, of_kind: np.ndarray, kinds: int) -> np.ndarray:
    return np.array([np.median(seen[of_kind == one], axis=0) for one in range(kinds)])
