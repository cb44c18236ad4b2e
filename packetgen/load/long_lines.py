"""A line of backstitch that runs slanting over many more stitches than any other, as where a figure of a point is wrong."""

from itertools import pairwise
from math import dist

from packetgen.diagnostics import Problems
from packetgen.load.points import point_said
from packetgen.model import Pattern

# Over so many stitches at least, of so many lines at least, and so many times the next: limits of our own choice.
_LONG, _FEWEST, _TIMES = 12, 4, 3


def complain_of_long_line(pattern: Pattern, problems: Problems) -> None:
    """Advice on the longest line of backstitch from one point to the next, where it is neither level, upright nor from
    corner to corner of its stitches, and the next longest is far shorter; of a corner set wrong both are."""
    lines = [
        (line, pair) for line in pattern.lines if not line.long for pair in pairwise(line.points)
    ]
    lines.sort(key=lambda one: -dist(*one[1]))
    if len(lines) < _FEWEST:
        return
    (longest, (start, end)), others = lines[0], lines[1:]
    # A corner that lies elsewhere makes the line to it long, and that from it.
    lengths = [
        dist(*pair) for line, pair in others if line is not longest or {start, end}.isdisjoint(pair)
    ]
    next_long = max(lengths, default=0)
    across, down = abs(end[0] - start[0]), abs(end[1] - start[1])
    slanting = across and down and across != down
    if slanting and dist(start, end) >= max(_LONG, _TIMES * next_long) and lengths:
        facts = {"start": point_said(start), "end": point_said(end)}
        facts |= {"over": f"{max(across, down):g}", "longest": f"{next_long:.0f}"}
        problems.add(longest.place, "line-long", **facts)
