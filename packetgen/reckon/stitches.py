"""The length of thread in one stitch, front and back, from its geometry on a cell of side a.

full cross      two diagonals on the front, two sides behind        2√2·a + 2·a
half            one diagonal, one side                              √2·a + a
quarter         half of a half
three-quarter   a half and a quarter
petite          a full cross on a cell of half the side             √2·a + a
backstitch      a run of length L on the front, twice that behind   3·L
long stitch     the same length behind as before                    2·L
lazy daisy      of length L: out to the tip and back on the front, L behind to the next, and the
                stitch that holds the loop down                     3·L + a/2
                (the loop is taken as straight, and the stitch that holds it as a quarter of a cell on
                either face: from memory)
"""

from math import dist, sqrt

from packetgen.model import Daisy, Line, Point, Stitch

_IN_CELLS: dict[Stitch, float] = {
    Stitch.FULL: 2 * sqrt(2) + 2,
    Stitch.HALF: sqrt(2) + 1,
    Stitch.HALF_BACK: sqrt(2) + 1,
    Stitch.QUARTER: (sqrt(2) + 1) / 2,
    Stitch.THREE_QUARTER: (sqrt(2) + 1) * 1.5,
    Stitch.PETITE: sqrt(2) + 1,
}
# Cells of thread in the stitch that holds a lazy daisy down, front and back: from memory.
DAISY_HOLD = 0.5
# Thread wound round the needle and pulled down, whatever the cloth: from memory.
KNOT_MM = 15.0
# Up through the bead and down again: from memory.
BEAD_MM = 10.0


def stitch_mm(stitch: Stitch, cell_mm: float) -> float:
    """Thread in one stitch, mm."""
    return _IN_CELLS[stitch] * cell_mm


def path_length(points: tuple[Point, ...]) -> float:
    """Length of a path through `points`, in cells."""
    return sum(dist(start, end) for start, end in zip(points, points[1:]))


def line_cells(line: Line) -> float:
    """Thread in a run of backstitch or in a long stitch, in sides of a cell."""
    return path_length(line.points) * (2 if line.long else 3)


def line_mm(line: Line, cell_mm: float) -> float:
    """Thread in a run of backstitch or in a long stitch, mm."""
    return line_cells(line) * cell_mm


def daisy_cells(daisy: Daisy) -> float:
    """Thread in a lazy daisy, in sides of a cell."""
    return 3 * dist(daisy.base, daisy.tip) + DAISY_HOLD
