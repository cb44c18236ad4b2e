"""What is done to a chart: it is turned or mirrored, and then a window of it becomes the new chart.

Columns and rows of stitches count from 1, and so do the corners between them: 1,1 is the top left
corner of the first stitch.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import floor
from typing import TypeVar

from packetgen.model import BARE, Corner, Grid, Point, Stitch

Cell = TypeVar("Cell")

_HALVES = {Stitch.HALF: Stitch.HALF_BACK, Stitch.HALF_BACK: Stitch.HALF}
# Corner → whether it is on the right, and whether at the bottom.
_SIDES = {
    Corner.TOP_LEFT: (False, False),
    Corner.TOP_RIGHT: (True, False),
    Corner.BOTTOM_LEFT: (False, True),
    Corner.BOTTOM_RIGHT: (True, True),
}
_CORNERS = {sides: corner for corner, sides in _SIDES.items()}


@dataclass(frozen=True)
class Change:
    """First rows and columns change places where they are `swapped`, then left and right where it is
    `flipped_across`, then top and bottom where it is `flipped_down`. Of the chart so far the window
    `width` × `height` is kept that begins after `left` columns and `top` rows; where it reaches
    beyond, cells of `fill` come in.
    """

    old_width: int
    old_height: int
    width: int
    height: int
    left: int = 0
    top: int = 0
    swapped: bool = False
    flipped_across: bool = False
    flipped_down: bool = False
    fill: str = BARE

    @property
    def leans(self) -> bool:
        """Whether a half stitch comes to lean the other way."""
        return self.flipped_across != self.flipped_down

    def point(self, at: Point) -> Point:
        """Where a point of the old chart comes to lie, perhaps outside the new one."""
        across, down = reversed(at) if self.swapped else at
        wide, high = self._turned
        across = wide + 2 - across if self.flipped_across else across
        down = high + 2 - down if self.flipped_down else down
        return across - self.left, down - self.top

    def cell(self, column: int, row: int) -> tuple[int, int]:
        """Where a stitch of the old chart comes to lie, perhaps outside the new one."""
        x, y = self.point((column + 0.5, row + 0.5))
        return floor(x), floor(y)

    def corner(self, corner: Corner) -> Corner:
        """Where a corner of a stitch comes to lie."""
        right, bottom = _SIDES[corner]
        if self.swapped:
            right, bottom = bottom, right
        return _CORNERS[right != self.flipped_across, bottom != self.flipped_down]

    def stitch(self, stitch: Stitch) -> Stitch:
        """How a stitch is worked after it."""
        return _HALVES.get(stitch, stitch) if self.leans else stitch

    def holds_point(self, at: Point) -> bool:
        """Whether a point that has come to lie at `at` is on the new chart."""
        return 1 <= at[0] <= self.width + 1 and 1 <= at[1] <= self.height + 1

    def holds_cell(self, column: int, row: int) -> bool:
        """The same of a stitch."""
        return 1 <= column <= self.width and 1 <= row <= self.height

    def turned(self, rows: Sequence[Sequence[Cell]]) -> list[list[Cell]]:
        """A table of cells, turned and mirrored but not cut."""
        table = [list(row) for row in rows]
        if self.swapped:
            table = [list(column) for column in zip(*table)]
        if self.flipped_across:
            table = [row[::-1] for row in table]
        return table[::-1] if self.flipped_down else table

    def table(self, rows: Sequence[Sequence[Cell]], fill: Cell) -> list[list[Cell]]:
        """The new chart's cells from the old one's, with `fill` where it reaches beyond."""
        turned = self.turned(rows)
        wide, high = self._turned
        return [
            [
                turned[y][x] if 0 <= x < wide and 0 <= y < high else fill
                for x in range(self.left, self.left + self.width)
            ]
            for y in range(self.top, self.top + self.height)
        ]

    def grid(self, grid: Grid) -> Grid:
        """The chart after it."""
        return replace(grid, rows=tuple("".join(row) for row in self.table(grid.rows, self.fill)))

    @property
    def _turned(self) -> tuple[int, int]:
        size = self.old_width, self.old_height
        return size[::-1] if self.swapped else size


def mirrored(grid: Grid, left_right: bool) -> Change:
    """Left for right, or else top for bottom."""
    return replace(_same(grid), flipped_across=left_right, flipped_down=not left_right)


def turned(grid: Grid, degrees: int) -> Change:
    """Turned clockwise by 90, 180 or 270 degrees."""
    if degrees == 180:
        return replace(_same(grid), flipped_across=True, flipped_down=True)
    return replace(
        _same(grid),
        width=grid.height,
        height=grid.width,
        swapped=True,
        flipped_across=degrees == 90,
        flipped_down=degrees == 270,
    )


def shifted(grid: Grid, right: int, down: int) -> Change:
    """Everything moved on a chart that keeps its size."""
    return replace(_same(grid), left=-right, top=-down)


def bordered(grid: Grid, left: int, right: int, top: int, bottom: int, fill: str = BARE) -> Change:
    """So many columns and rows added at each side, all of them `fill`; less than none takes away."""
    return replace(
        _same(grid),
        width=grid.width + left + right,
        height=grid.height + top + bottom,
        left=-left,
        top=-top,
        fill=fill,
    )


def _same(grid: Grid) -> Change:
    return Change(grid.width, grid.height, grid.width, grid.height)
