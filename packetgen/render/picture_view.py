"""Which part of a design a close-up shows: where there is most to see."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, cos, hypot, radians, sin

from packetgen.model import BARE, Pattern
from packetgen.reckon.colour import blended, lab

DETAIL_PX = (1200, 800)
DETAIL_TILT_DEGREES = -4.0  # a camera in the hand
_SHARE = 0.5  # of the card's width that is shown: a good third of the design
_FEWEST_CROSSES, _MOST_CROSSES = 15, 40  # across
_SPARE = 1  # crosses drawn beyond the picture's edges
_LINE_COUNTS = 0.5  # a backstitch that runs by is worth so many borders between colours
_DULL = 15.0  # chroma that is counted for every part, so that a grey design has one too


@dataclass(frozen=True)
class DetailView:
    """Where a close-up lies on its card: its middle in crosses, and the size of a cross in it."""

    middle: tuple[float, float]
    across: int  # crosses over the picture's width

    @property
    def cross_px(self) -> float:
        return DETAIL_PX[0] / self.across

    def shows(self, x: float, y: float, share: float = 1.0) -> bool:
        """Whether a place of the card, in crosses, lies in the middle `share` of the picture's width."""
        turn = radians(DETAIL_TILT_DEGREES)
        right, down = x - self.middle[0], y - self.middle[1]
        across = right * cos(turn) - down * sin(turn)
        along = right * sin(turn) + down * cos(turn)
        half = self.across / 2
        return abs(across) < half * share and abs(along) < half * DETAIL_PX[1] / DETAIL_PX[0]

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
    """Where there is most to see: borders between colours, lines, beads and knots, in bright colours."""
    columns, rows = pattern.grid.width, pattern.grid.height
    across = min(max(round(columns * _SHARE), _FEWEST_CROSSES), _MOST_CROSSES)
    down = round(across * DETAIL_PX[1] / DETAIL_PX[0])
    interest, brightness = _sums(_interest(pattern)), _sums(_brightness(pattern))

    def much(left: int, top: int) -> float:
        part = (left, top, across, down)
        bright = _within(brightness, *part) / (across * down)
        return round(_within(interest, *part) * (_DULL + bright), 6)

    places = [
        (much(left, top), -abs(2 * top + down - rows), -top, -left)
        for top in range(max(1, rows - down + 1))
        for left in range(max(1, columns - across + 1))
    ]
    *_, top, left = max(places)
    return DetailView((-left + across / 2, -top + down / 2), across)


def _interest(pattern: Pattern) -> list[list[float]]:
    """How much there is to see at every cross."""
    grid = pattern.grid
    seen = [[0.0] * grid.width for _ in range(grid.height)]

    def add(x: float, y: float, much: float) -> None:
        column, row = int(x) - 1, int(y) - 1
        if 0 <= column < grid.width and 0 <= row < grid.height:
            seen[row][column] += much

    for y, row in enumerate(grid.rows):
        below = grid.rows[min(y + 1, grid.height - 1)]
        for x, mark in enumerate(row):
            seen[y][x] += (mark != below[x]) + (mark != row[min(x + 1, grid.width - 1)])
    for line in pattern.lines:
        for (x0, y0), (x1, y1) in zip(line.points, line.points[1:]):
            add((x0 + x1) / 2, (y0 + y1) / 2, _LINE_COUNTS * hypot(x1 - x0, y1 - y0))
    for thing in (*pattern.knots, *pattern.beads):
        add(*thing.at, 2)
    for daisy in pattern.daisies:
        add(*daisy.base, 2)
    return seen


def _brightness(pattern: Pattern) -> list[list[float]]:
    """Chroma in CIELAB of the thread at every cross; of bare cloth none."""
    first, chroma = pattern.thread_sets[0].id, {BARE: 0.0}
    for line in pattern.key:
        thread = blended(tuple(colour.hex for colour in line.threads[first]))
        chroma[line.mark] = hypot(*lab(thread)[1:])
    return [[chroma[mark] for mark in row] for row in pattern.grid.rows]


def _sums(values: Sequence[Sequence[float]]) -> list[list[float]]:
    """Of everything above and to the left of each corner."""
    sums = [[0.0] * (len(values[0]) + 1)]
    for row in values:
        line = [0.0]
        for value in row:
            line.append(line[-1] + value)
        sums.append([above + here for above, here in zip(sums[-1], line)])
    return sums


def _within(sums: list[list[float]], left: int, top: int, across: int, down: int) -> float:
    right, bottom = min(left + across, len(sums[0]) - 1), min(top + down, len(sums) - 1)
    return sums[bottom][right] - sums[top][right] - sums[bottom][left] + sums[top][left]
