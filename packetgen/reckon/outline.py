"""Plane geometry of outlines, in mm. The only module that knows the polygon library."""

from collections.abc import Iterable, Iterator
from itertools import pairwise

from shapely import LineString, Point, Polygon, box
from shapely.geometry.base import BaseGeometry
from shapely.ops import nearest_points, unary_union

from packetgen.model import Outline

# Less than this is no overlap, but the dust of floating point.
_DUST_MM = 1e-7


def area_mm2(outline: Outline) -> float:
    return Polygon(outline).area


def perimeter_mm(outline: Outline) -> float:
    return Polygon(outline).length


def bounds(outline: Outline) -> tuple[float, float, float, float]:
    """Left, top, right, bottom."""
    return Polygon(outline).bounds


def fills_its_box(outline: Outline) -> bool:
    """Whether it is an upright rectangle."""
    return box(*bounds(outline)).area - area_mm2(outline) < _DUST_MM


def covers(outline: Outline, inner: Outline) -> bool:
    """Whether `inner` lies wholly in `outline`; touching its edge is allowed."""
    return Polygon(outline).covers(Polygon(inner))


def edge_meets(outline: Outline, left: float, top: float, right: float, bottom: float) -> bool:
    """Whether the line of the outline itself runs into a rectangle."""
    return Polygon(outline).exterior.intersects(box(left, top, right, bottom))


class Room:
    """The part of a panel that is free of keep-outs."""

    def __init__(self, panel: Outline, keep_outs: Iterable[Outline]) -> None:
        self._free = Polygon(panel).difference(unary_union([Polygon(o) for o in keep_outs]))
        self.left, self.top, self.right, self.bottom = Polygon(panel).bounds
        around = box(self.left, self.top, self.right, self.bottom).difference(self._free)
        self._in_the_way = [part for part in _polygons(around) if part.area > _DUST_MM]
        self._corners = [xy for part in self._in_the_way for xy in part.exterior.coords]

    def holds(self, left: float, top: float, width: float, height: float) -> bool:
        """Whether the rectangle lies wholly in the room; touching its edge is allowed."""
        return self._free.covers(box(left, top, left + width, top + height))

    def nearest_place(
        self, left: float, top: float, width: float, height: float
    ) -> tuple[float, float] | None:
        """Where the rectangle lies in the room with its top left corner as near to `left`, `top` as may be;
        None where it has no place. It may touch what is in the way, and overlap it by the dust of floating
        point."""
        if self.holds(left, top, width, height):
            return left, top
        spare = self.right - self.left - width, self.bottom - self.top - height
        if min(spare) < -_DUST_MM:
            return None
        wide, high = max(0.0, width - _DUST_MM), max(0.0, height - _DUST_MM)
        places: BaseGeometry = box(self.left, self.top, self.right - wide, self.bottom - high)
        if self._in_the_way:
            barred = [shape for part in self._in_the_way for shape in _swept(part, wide, high)]
            places = places.difference(unary_union(barred))
        if places.is_empty:
            return None
        found = nearest_points(places, Point(left, top))[0]
        xs = (left, self.left, self.right - width, *_touching((x for x, _ in self._corners), width))
        ys = (
            top,
            self.top,
            self.bottom - height,
            *_touching((y for _, y in self._corners), height),
        )
        return _snapped(found.x, xs), _snapped(found.y, ys)


def _polygons(shape: BaseGeometry) -> list[Polygon]:
    parts = getattr(shape, "geoms", [shape])
    return [part for part in parts if isinstance(part, Polygon) and not part.is_empty]


def _swept(part: Polygon, width: float, height: float) -> list[BaseGeometry]:
    """Every top left corner from which a rectangle would reach into `part`: its Minkowski sum with the
    rectangle turned about that corner. For a convex part that is the hull of the corners' sums; for
    another, the hulls of its edges' sums and the part itself."""

    def hull(points: Iterable[tuple[float, ...]]) -> BaseGeometry:
        return LineString(
            [(x - dx, y - dy) for x, y in points for dx in (0, width) for dy in (0, height)]
        ).convex_hull

    corners = list(part.exterior.coords)
    if not part.interiors and part.convex_hull.area - part.area < _DUST_MM:
        return [hull(corners)]
    rings = [corners, *(list(ring.coords) for ring in part.interiors)]
    return [part, *(hull(edge) for ring in rings for edge in pairwise(ring))]


def _touching(coordinates: Iterable[float], side: float) -> Iterator[float]:
    """Where a side begins that starts or ends at one of the coordinates."""
    for at in coordinates:
        yield at
        yield at - side


def _snapped(value: float, exact: Iterable[float]) -> float:
    """The exact coordinate that `value` means but for dust, or itself."""
    return next((at for at in exact if abs(at - value) <= 2 * _DUST_MM), value)
