"""Points and outlines: 'x,y x,y' with a space between points and none inside."""

import re
from collections.abc import Callable
from dataclasses import dataclass

from packetgen.load.words import said
from packetgen.model import Outline

Report = Callable[..., None]

MOST_CORNERS = 500
FURTHEST_MM = 5000
_PAIR = re.compile(r"(-?\d{1,6}(?:\.\d{1,9})?),(-?\d{1,6}(?:\.\d{1,9})?)", re.ASCII)


@dataclass(frozen=True)
class Spot:
    """A point, the author's own writing of it, and where it starts in the line."""

    x: float
    y: float
    said: str
    offset: int


def read_points(text: str, at_most: int, report: Report) -> tuple[Spot, ...] | None:
    """All points of `text`, each a quarter of a stitch or coarser;
    None where one cannot be read.
    """
    spots = _spots(text, report)
    if spots is None:
        return None
    if len(spots) > at_most:
        report("list-long", 0, number=f"{len(spots)} points", limit=at_most)
        return None
    uneven = [spot for spot in spots if spot.x * 4 % 1 or spot.y * 4 % 1]
    for spot in uneven:
        report(
            "not-a-quarter",
            spot.offset,
            point=said(spot.said),
            better=said(f"{_quarter(spot.x)},{_quarter(spot.y)}"),
        )
    return None if uneven else spots


def read_cell(text: str, report: Report) -> tuple[int, int] | None:
    """'12,30' as column and row of one stitch."""
    if not re.fullmatch(r"\d{1,5},\d{1,5}", text.strip(), re.ASCII):
        report("not-a-stitch", 0)
        return None
    column, row = (int(part) for part in text.split(","))
    return column, row


def read_pair(text: str, report: Report) -> tuple[float, float] | None:
    """'0,0' as x and y."""
    match = _PAIR.fullmatch(text.strip())
    if not match:
        report("not-a-point", 0, point=said(text), example="0,0")
        return None
    return float(match[1]), float(match[2])


def read_outline(text: str, report: Report) -> Outline | None:
    """A closed shape: three corners or more, an area, and no edge across another."""
    spots = _spots(text, report)
    if spots is None:
        return None
    corners = [(spot.x, spot.y) for spot in spots]
    if len(corners) > 1 and corners[0] == corners[-1]:
        corners.pop()  # closed by the author's own hand
    if len(corners) < 3:
        report("outline-short", 0, number=len(corners))
    elif len(corners) > MOST_CORNERS:
        report("list-long", 0, number=f"{len(corners)} corners", limit=MOST_CORNERS)
    elif any(abs(value) > FURTHEST_MM for corner in corners for value in corner):
        report("out-of-range", 0, low=f"-{FURTHEST_MM} mm", high=f"{FURTHEST_MM} mm")
    elif crossing := _crossing(corners):
        first, second = crossing
        report("outline-crosses", 0, first=first + 1, second=second + 1)
    elif abs(_area(corners)) < 1e-6:
        report("outline-flat", 0)
    else:
        return tuple(corners)
    return None


def _spots(text: str, report: Report) -> tuple[Spot, ...] | None:
    words = [(match.start(), match[0]) for match in re.finditer(r"\S+", text)]
    spots = []
    for offset, word in words:
        match = _PAIR.fullmatch(word)
        if match:
            spots.append(Spot(float(match[1]), float(match[2]), word, offset))
        else:
            report("not-a-point", offset, point=said(word), example="12,30.5")
    if not words:
        report("value-empty", 0)
    return tuple(spots) if words and len(spots) == len(words) else None


def _quarter(value: float) -> str:
    return f"{round(value * 4) / 4:g}"


def _area(corners: list[tuple[float, float]]) -> float:
    """The shoelace formula: half the sum of x1*y2 - x2*y1 round the outline."""
    pairs = zip(corners, corners[1:] + corners[:1], strict=True)
    return sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs) / 2


def _crossing(corners: list[tuple[float, float]]) -> tuple[int, int] | None:
    """Numbers (from 0) of the first two edges that properly cross; touching is left to the eye."""
    edges = list(zip(corners, corners[1:] + corners[:1], strict=True))
    for first, (a, b) in enumerate(edges):
        for second in range(first + 2, len(edges)):
            c, d = edges[second]
            if _side(a, b, c) * _side(a, b, d) < 0 and _side(c, d, a) * _side(c, d, b) < 0:
                return first, second
    return None


def _side(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
