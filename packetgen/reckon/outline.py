"""Plane geometry of outlines, in mm. The only module that knows the polygon library."""

from collections.abc import Iterable

from shapely import Polygon, box
from shapely.ops import unary_union

from packetgen.model import Outline


def area_mm2(outline: Outline) -> float:
    return Polygon(outline).area


def perimeter_mm(outline: Outline) -> float:
    return Polygon(outline).length


def bounds(outline: Outline) -> tuple[float, float, float, float]:
    """Left, top, right, bottom."""
    return Polygon(outline).bounds


class Room:
    """The part of a panel that is free of keep-outs."""

    def __init__(self, panel: Outline, keep_outs: Iterable[Outline]) -> None:
        self._free = Polygon(panel).difference(unary_union([Polygon(o) for o in keep_outs]))
        self.left, self.top, self.right, self.bottom = Polygon(panel).bounds

    def holds(self, left: float, top: float, width: float, height: float) -> bool:
        """Whether the rectangle lies wholly in the room; touching its edge is allowed."""
        return self._free.covers(box(left, top, left + width, top + height))
