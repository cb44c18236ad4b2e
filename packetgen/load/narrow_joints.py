"""Which parts of a finishing piece meet the others in one point only, so that no glue would hold them there."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shapely import unary_union
from shapely.geometry.base import BaseGeometry
from shapely.ops import nearest_points

from packetgen.load.placed_parts import ROUNDED_MM, placed_part
from packetgen.model import Part

# Our own choice, as all limits of what is told: what lies no further away than the nearest point and a rounded figure
# counts as meeting, and a joint that is shorter than this share of either part is one point.
_NARROW = 0.07
_NEAR_MM = 5  # further away it stands apart, and is told of as that
_LEAST_MM = 10  # a part no longer than this is held by anything


@dataclass(frozen=True)
class Narrow:
    """A part, by its number, the nearest other, and where they meet."""

    number: int
    other: int
    at_mm: tuple[float, float]


def met_in_a_point(parts: Sequence[Part]) -> Iterator[Narrow]:
    """The parts that meet all others together in one point. Of two that meet only each other there, the smaller."""
    placed = [placed_part(part) for part in parts]
    told: set[tuple[int, int]] = set()
    for number in sorted(range(len(parts)), key=lambda number: placed[number].area):
        one = placed[number]
        others = [other for at, other in enumerate(placed) if at != number]
        if not others or _longest(one) <= _LEAST_MM:
            continue
        gaps = {at: one.distance(other) for at, other in enumerate(placed) if at != number}
        nearest = min(gaps, key=lambda at: gaps[at])
        if gaps[nearest] > _NEAR_MM or (nearest, number) in told:
            continue
        meeting = one.intersection(unary_union(others).buffer(gaps[nearest] + ROUNDED_MM))
        if _longest(meeting) < _NARROW * min(_longest(one), _longest(placed[nearest])):
            told.add((number, nearest))
            point, _ = nearest_points(one, placed[nearest])
            yield Narrow(number, nearest, (point.x, point.y))


def _longest(shape: BaseGeometry) -> float:
    left, top, right, bottom = shape.bounds
    return float(max(right - left, bottom - top))
