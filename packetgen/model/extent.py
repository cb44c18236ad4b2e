"""How far what is worked reaches on a chart."""

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
