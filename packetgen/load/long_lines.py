"""A line of backstitch that runs slanting over many more stitches than any other, as where a figure of a point is wrong."""

from collections.abc import Iterable
from itertools import pairwise
from math import dist

from packetgen.diagnostics import Problems
from packetgen.load.points import point_otherwise, point_said
from packetgen.model import Line, Pattern, Point

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
    if _is_odd(start, end, next_long) and lengths:
        over = max(abs(end[0] - start[0]), abs(end[1] - start[1]))
        facts = {"start": point_said(start), "end": point_said(end), "over": f"{over:g}"}
        facts |= {"longest": f"{next_long:.0f}", "slip": _slip(longest, (start, end), next_long)}
        problems.add(longest.place, "line-long", **facts)


def _is_odd(start: Point, end: Point, next_long: float) -> bool:
    """Whether it is far longer than the next and runs neither level, nor upright, nor from corner to corner."""
    across, down = abs(end[0] - start[0]), abs(end[1] - start[1])
    slanting = across and down and across != down
    return bool(slanting) and dist(start, end) >= max(_LONG, _TIMES * next_long)


def _slip(line: Line, ends: Iterable[Point], next_long: float) -> str:
    """A question that goes before the cure, where one of these points with its two numbers exchanged, or two of its figures,
    ends it."""
    meant = [
        (at, other)
        for at in ends
        for other in {at[::-1], *point_otherwise(point_said(at))} - {at}
        if not any(
            _is_odd(one, next_one, next_long)
            for one, next_one in pairwise(other if point == at else point for point in line.points)
        )
    ]
    if len(meant) != 1:
        return ""
    ((at, other),) = meant
    return f"should {point_said(at)} be {point_said(other)}? Else "
