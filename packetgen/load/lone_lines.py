"""A line of backstitch that goes round bare cloth, away from all stitches: what it was the outline of was rubbed out, or it
lies elsewhere."""

from collections.abc import Iterator
from itertools import pairwise
from math import ceil, dist

from packetgen.diagnostics import Problems
from packetgen.load.words import said
from packetgen.model import Line, Pattern, Point
from packetgen.model.extent import squares_at, worked_squares

_STEP = 0.5  # of a stitch, from one place that is looked at to the next


def complain_of_lone_lines(pattern: Pattern, problems: Problems) -> None:
    """Advice on each line that ends where it begins and touches no stitch, where another line touches one: letters and what
    flies over bare cloth are open."""
    worked = worked_squares(pattern)
    alone = [
        line
        for line in pattern.lines
        if all(worked.isdisjoint(squares_at(point)) for point in _along(line))
    ]
    for line in alone:
        if line.points[0] == line.points[-1] and len(alone) < len(pattern.lines):
            problems.add(line.place, "line-alone", mark=said(line.mark))


def _along(line: Line) -> Iterator[Point]:
    for (x, y), end in pairwise(line.points):
        parts = max(1, ceil(dist((x, y), end) / _STEP))
        across, down = end[0] - x, end[1] - y
        yield from ((x + across * n / parts, y + down * n / parts) for n in range(parts + 1))
