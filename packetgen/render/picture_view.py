"""Which part of a design a close-up shows: where there is most to see."""

from dataclasses import dataclass
from math import ceil, cos, hypot, radians, sin

import numpy as np

from packetgen.colour import blended, lab
from packetgen.model import BARE, Pattern
from packetgen.render.picture_told import signs

DETAIL_PX = (1200, 800)
DETAIL_TILT_DEGREES = -4.0  # a camera in the hand
_SHARE = 0.5  # of the card's width that is shown: a good third of the design
_FEWEST_CROSSES, _MOST_CROSSES = 15, 40  # across
_SPARE = 1  # crosses drawn beyond the picture's edges
_LINE_COUNTS = 0.5  # a backstitch that runs by is worth so many borders between colours
_DULL = 15.0  # chroma that is counted for every part, so that a grey design has one too
_COLOUR_SEEN = 0.5  # of all its stitches: a part that holds so many of a colour shows that colour


@dataclass(frozen=True)
class DetailView:
    """Where a close-up lies on its card: its middle in crosses, and the size of a cross in it."""

    middle: tuple[float, float]
    across: int  # crosses over the picture's width

    @property
    def cross_px(self) -> float:
        return DETAIL_PX[0] / self.across

    def shows(self, x: np.ndarray, y: np.ndarray, share: float = 1.0) -> np.ndarray:
        """Which places of the card, in crosses, lie in the middle `share` of the picture's width."""
        turn = radians(DETAIL_TILT_DEGREES)
        right, down = x - self.middle[0], y - self.middle[1]
        across = right * cos(turn) - down * sin(turn)
        along = right * sin(turn) + down * cos(turn)
        half = self.across / 2
        return (abs(across) < half * share) & (abs(along) < half * DETAIL_PX[1] / DETAIL_PX[0])

    @property
    def drawn(self) -> tuple[int, int, int, int]:
        """Left, top, columns and rows that must be drawn so that the tilted picture is full."""
        turn = radians(abs(DETAIL_TILT_DEGREES))
        across, down = self.across, self.across * DETAIL_PX[1] / DETAIL_PX[0]
        sides = (across * cos(turn) + down * sin(turn), across * sin(turn) + down * cos(turn))
        columns, rows = (ceil(side / 2 + _SPARE) * 2 for side in sides)
        left, top = (round(m - n / 2) for m, n in zip(self.middle, (columns, rows)))
        return left, top, columns, rows


def detail_view(pattern: Pattern) -> DetailView:
    """Where there is most to see: borders between colours, lines, beads and knots, in bright colours, and in
    many of the design's colours, so that it is not all leaves where there is a bird too."""
    columns, rows = pattern.grid.width, pattern.grid.height
    across = min(max(round(columns * _SHARE), _FEWEST_CROSSES), _MOST_CROSSES)
    down = round(across * DETAIL_PX[1] / DETAIL_PX[0])
    interest, bright = (
        _within(each, across, down)
        for each in (_interest(pattern), _brightness(pattern) / (across * down))
    )
    colours = _colours_shown(pattern, across, down)
    much = np.round(interest * (_DULL + bright) * np.sqrt(np.maximum(colours, 1)), 6)
    # Of equal places the one nearest to the middle of the height, then the uppermost, then the leftmost.
    tops, lefts = np.nonzero(much == much.max())
    _, top, left = min(
        (abs(2 * int(top) + down - rows), int(top), int(left)) for top, left in zip(tops, lefts)
    )
    return DetailView((left + across / 2, top + down / 2), across)


def _interest(pattern: Pattern) -> np.ndarray:
    """How much there is to see at every cross."""
    marks = np.pad(signs(pattern.grid.rows), ((0, 1), (0, 1)), "edge")
    here = marks[:-1, :-1]
    seen: np.ndarray = (here != marks[1:, :-1]) + (here != marks[:-1, 1:]).astype(float)

    def add(x: float, y: float, much: float) -> None:
        column, row = int(x) - 1, int(y) - 1
        if 0 <= column < pattern.grid.width and 0 <= row < pattern.grid.height:
            seen[row, column] += much

    for line in pattern.lines:
        for (x0, y0), (x1, y1) in zip(line.points, line.points[1:]):
            add((x0 + x1) / 2, (y0 + y1) / 2, _LINE_COUNTS * hypot(x1 - x0, y1 - y0))
    small = [knot.at for knot in pattern.knots] + [bead.at for bead in pattern.beads]
    for x, y in small + [daisy.base for daisy in pattern.daisies]:
        add(x, y, 2)
    return seen


def _brightness(pattern: Pattern) -> np.ndarray:
    """Chroma in CIELAB of the thread at every cross; of bare cloth none."""
    first, marks = pattern.thread_sets[0].id, signs(pattern.grid.rows)
    chroma = np.zeros(marks.shape)
    for line in pattern.key:
        thread = blended(tuple(colour.hex for colour in line.threads[first]))
        chroma[marks == ord(line.mark)] = hypot(*lab(thread)[1:])
    return chroma


def _colours_shown(pattern: Pattern, across: int, down: int) -> np.ndarray:
    """How many of the design's colours a part of so many columns and rows shows, for every place of it; a
    colour of which it has few stitches counts in part."""
    marks = signs(pattern.grid.rows)
    shares = (
        _within(here / here.sum(), across, down) / _COLOUR_SEEN
        for here in (marks == mark for mark in np.unique(marks) if mark != ord(BARE))
    )
    shown: np.ndarray = np.add.reduce([np.minimum(share, 1) for share in shares])
    return shown


def _within(values: np.ndarray, across: int, down: int) -> np.ndarray:
    """The sum of `values` in a part of so many columns and rows, for every place of its upper left corner."""
    rows, columns = values.shape
    across, down = min(across, columns), min(down, rows)
    sums = np.pad(values.cumsum(axis=0).cumsum(axis=1), ((1, 0), (1, 0)))
    high = sums[down:] - sums[:-down]
    within: np.ndarray = high[:, across:] - high[:, :-across]
    return within
