"""Outlines of wood: as corners, or as the data of an SVG path."""

import re

from shapely import Polygon, is_valid, is_valid_reason

from packetgen.diagnostics import Report
from packetgen.load.corner_slips import rectangle_slips
from packetgen.load.points import IN_MM, point_said, read_spots
from packetgen.load.svg_path import is_path, path_corners
from packetgen.load.words import counted, said, shown
from packetgen.model import Outline
from packetgen.units import plain

# What says how large a rectangle is, and not where: '145 x 163 mm'.
_SIZE = re.compile(
    r"\s*(\d{1,4}(?:\.\d)?)\s*(?:mm|cm)?\s*(?:x|×|by)\s*(\d{1,4}(?:\.\d)?)\s*(mm|cm)?\s*", re.ASCII
)
_IN_MM = {"mm": 1, "cm": 10}
# How a drawing file begins what it says of a shape.
_ATTRIBUTE = re.compile(
    r"""\s*(?:<\w+\s[^>]*?\b)?(d|points)\s*=\s*["'](?P<shape>[^"']*)""", re.ASCII
)
MOST_CORNERS = 500  # that an author writes
FURTHEST_MM = 5000


def read_outline(text: str, report: Report) -> Outline | None:
    """A closed shape: three corners or more, an area, and nowhere across or upon itself.

    `text` is '0,0 180,0 180,176 0,176' or 'M 0,24 C 14,8 40,8 60,0 L 60,90 Z', in mm.
    """
    if sides := _SIZE.fullmatch(text):
        wide, high = (plain(float(one) * _IN_MM[sides[3] or "mm"]) for one in sides.group(1, 2))
        hint = f"write its corners: 0,0 {wide},0 {wide},{high} 0,{high}"
        report("not-a-point", 0, point=said(text), hint=hint)
        return None
    if attribute := _ATTRIBUTE.match(text):
        start = shown(" ".join(attribute["shape"].split()[:3]))
        report("outline-attribute", 0, name=said(f"{attribute[1]}="), start=f"{start} …")
        return None
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
        two = len(corners) == 2 and all(a != b for a, b in zip(*corners))
        rectangle = _rectangles(*corners) if two else ""
        number = counted(len(corners), "corner")
        report("outline-short", 0, corners=number, rectangle=rectangle)
    elif not path and len(corners) > MOST_CORNERS:
        report("list-long", 0, number=f"{len(corners)} corners", limit=MOST_CORNERS)
    elif any(abs(value) > FURTHEST_MM for corner in corners for value in corner):
        _out_of_range(report)
    elif not _sound(corners, path, report):
        return None
    else:
        return tuple(corners)
    return None


def _rectangles(one: tuple[float, float], other: tuple[float, float]) -> str:
    """What two numbers twice may mean: two corners, or a corner and a size."""
    told = f"; as a rectangle from one to the other {said(_between(one, other))}"
    if one == (0, 0) or min(other) <= 0:
        return told
    size = f"{plain(other[0])} × {plain(other[1])} mm"
    end = one[0] + other[0], one[1] + other[1]
    return f"{told}, and as one of {size} from the first {said(_between(one, end))}"


def _between(one: tuple[float, float], other: tuple[float, float]) -> str:
    (left, top), (right, bottom) = one, other
    corners = (left, top), (right, top), (right, bottom), (left, bottom)
    return " ".join(f"{plain(x)},{plain(y)}" for x, y in corners)


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
        order = "give the corners in order round the shape"
        if slips := rectangle_slips(corners):
            corner, meant = map(point_said, slips[0])
            order = f"write {meant} for {corner}: it is a rectangle then"
        elif mended := _in_order(corners):
            order = f"two corners have changed places; write {said(mended)}"
        report("outline-crosses", 0, first=first + 1, second=second + 1, order=order)
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


def _in_order(corners: list[tuple[float, float]]) -> str:
    """The corners with two neighbours exchanged, where that makes one shape and no other; '' otherwise."""
    shapes: list[tuple[Polygon, str]] = []
    for place in range(len(corners)):
        other = (place + 1) % len(corners)
        exchanged = list(corners)
        exchanged[place], exchanged[other] = exchanged[other], exchanged[place]
        shape = Polygon(exchanged)
        if is_valid(shape) and not any(shape.equals(known) for known, _ in shapes):
            shapes.append((shape, " ".join(f"{plain(x)},{plain(y)}" for x, y in exchanged)))
    return shapes[0][1] if len(shapes) == 1 else ""


def _side(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
