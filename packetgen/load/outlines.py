"""Outlines of wood: as corners, or as the data of an SVG path."""

from collections.abc import Iterable
from dataclasses import dataclass

from shapely import Point, Polygon, is_valid, is_valid_reason, unary_union

from packetgen.diagnostics import Report
from packetgen.load.points import IN_MM, read_spots
from packetgen.load.svg_path import is_path, path_corners
from packetgen.model import Outline, Part

MOST_CORNERS = 500  # that an author writes
FURTHEST_MM = 5000
# Less beyond the wood is a rounded figure.
_ROUNDED_MM = 0.5
# Pieces that stand apart fill a room so many times as large.
_APART = 2


@dataclass(frozen=True)
class Beyond:
    """How far a panel reaches beyond the wood of which the bounds are told: to the left, above, to the right
    and below; `most_mm` is what its corner `at` does, in whatever direction."""

    bounds: tuple[float, float, float, float]
    sides_mm: tuple[float, float, float, float]
    most_mm: float
    at: tuple[float, float]


def beyond_wood(panel: Outline, parts: Iterable[Part]) -> Beyond | None:
    """None where the panel lies within the parts as they stand: gaps between them, and what they enclose, count
    as wood. Of a part with several pieces only one has a place; where the others could fill what lies beyond,
    nobody can tell, and None is given too."""
    parts = tuple(parts)
    placed = [
        Polygon([(x + part.at_mm[0], y + part.at_mm[1]) for x, y in part.outline]) for part in parts
    ]
    wood, shape = unary_union(placed).convex_hull, Polygon(panel)
    at = max(panel, key=lambda corner: wood.distance(Point(corner)))
    most_mm = wood.distance(Point(at))
    elsewhere = sum((part.pieces - 1) * one.area for part, one in zip(parts, placed, strict=True))
    if most_mm <= _ROUNDED_MM or shape.difference(wood).area <= _APART * elsewhere:
        return None
    left, top, right, bottom = wood.bounds
    of = shape.bounds
    sides = (left - of[0], top - of[1], of[2] - right, of[3] - bottom)
    return Beyond(wood.bounds, sides, most_mm, at)


def read_outline(text: str, report: Report) -> Outline | None:
    """A closed shape: three corners or more, an area, and nowhere across or upon itself.

    `text` is '0,0 180,0 180,176 0,176' or 'M 0,24 C 14,8 40,8 60,0 L 60,90 Z', in mm.
    """
    path = is_path(text)
    try:
        corners = path_corners(text, report) if path else _corners(text, report)
    except OverflowError:
        _out_of_range(report)
        return None
    if corners is None:
        return None
    if len(corners) > 1 and corners[0] == corners[-1]:
        corners.pop()  # closed by the author's own hand
    if len(corners) < 3:
        report("outline-short", 0, number=len(corners))
    elif not path and len(corners) > MOST_CORNERS:
        report("list-long", 0, number=f"{len(corners)} corners", limit=MOST_CORNERS)
    elif any(abs(value) > FURTHEST_MM for corner in corners for value in corner):
        _out_of_range(report)
    elif not _sound(corners, path, report):
        return None
    else:
        return tuple(corners)
    return None


def _out_of_range(report: Report) -> None:
    report("out-of-range", 0, low=f"-{FURTHEST_MM} mm", high=f"{FURTHEST_MM} mm")


def _corners(text: str, report: Report) -> list[tuple[float, float]] | None:
    spots = read_spots(text, report, IN_MM, "180,12.5")
    return None if spots is None else [(spot.x, spot.y) for spot in spots]


def _sound(corners: list[tuple[float, float]], path: bool, report: Report) -> bool:
    """Whether it is a simple shape with an area. A curve has no sides to be counted, so a place is told."""
    shape = Polygon(corners)
    if is_valid(shape):
        return True
    if not path and (crossing := _crossing(corners)):
        first, second = crossing
        report("outline-crosses", 0, first=first + 1, second=second + 1)
    elif shape.area < 1e-6 and shape.convex_hull.area < 1e-6:
        report("outline-flat", 0)
    else:
        # 'Self-intersection[5 5]'
        x, _, y = is_valid_reason(shape).partition("[")[2].removesuffix("]").partition(" ")
        near = (
            f"{float(x):.1f},{float(y):.1f}" if x and y else f"{corners[0][0]:g},{corners[0][1]:g}"
        )
        report("outline-touches", 0, near=near)
    return False


def _crossing(corners: list[tuple[float, float]]) -> tuple[int, int] | None:
    """Numbers (from 0) of the first two sides that properly cross."""
    edges = list(zip(corners, corners[1:] + corners[:1], strict=True))
    for first, (a, b) in enumerate(edges):
        for second in range(first + 2, len(edges)):
            c, d = edges[second]
            if _side(a, b, c) * _side(a, b, d) < 0 and _side(c, d, a) * _side(c, d, b) < 0:
                return first, second
    return None


def _side(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
