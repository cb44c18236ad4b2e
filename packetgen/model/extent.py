"""How far what is worked reaches on a chart."""

from collections.abc import Sequence
from math import ceil, floor

from packetgen.model.chart import BARE, Point
from packetgen.model.pattern import Pattern


def bare_margins(pattern: Pattern) -> tuple[int, int, int, int]:
    """How many columns at the left and the right, and rows at the top and the bottom, hold nothing."""
    grid = pattern.grid
    points = [(x - 1, y - 1) for x, y in points_of(pattern)]
    cells = [
        (x, y) for y, row in enumerate(grid.rows) for x, mark in enumerate(row) if mark != BARE
    ] + [(one.column - 1, one.row - 1) for one in pattern.fractions]
    points += [corner for x, y in cells for corner in ((x, y), (x + 1, y + 1))]
    if not points:
        return 0, 0, 0, 0
    across, down = zip(*points)
    return (
        int(min(across)),
        int(grid.width - max(across)),
        int(min(down)),
        int(grid.height - max(down)),
    )


def points_of(pattern: Pattern) -> list[Point]:
    """Every point at which something lies that is no stitch in a cell."""
    return [
        *(point for line in pattern.lines for point in line.points),
        *(point for daisy in pattern.daisies for point in (daisy.base, daisy.tip)),
        *(knot.at for knot in pattern.knots),
        *(bead.at for bead in pattern.beads),
    ]


def worked_squares(pattern: Pattern) -> set[tuple[int, int]]:
    """Columns and rows of the squares that hold a stitch, whole or in part."""
    worked = {(one.column, one.row) for one in pattern.fractions}
    return worked | {
        (x, y)
        for y, row in enumerate(pattern.grid.rows, 1)
        for x, mark in enumerate(row, 1)
        if mark != BARE
    }


def squares_at(at: Point, round_it: int = 0) -> Sequence[tuple[int, int]]:
    """Columns and rows of the squares that the point touches, and of so many round them."""
    across, down = (range(ceil(one) - 1 - round_it, floor(one) + 1 + round_it) for one in at)
    return [(x, y) for x in across for y in down]
