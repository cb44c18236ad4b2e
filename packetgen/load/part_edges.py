"""How far edges of two parts of a finishing piece lie from one another, where they stand."""

from collections.abc import Iterable, Iterator
from itertools import product

from packetgen.load.placed_parts import ROUNDED_MM, edges_where_they_meet, placed_part
from packetgen.model import Part

_SHAPED_MM = 2  # that a shaped edge may differ where two parts meet: our own choice


def edges_mm(one: Part, other: Part) -> Iterator[float]:
    """How far apart their left, upper, right and lower edges are."""
    bounds = zip(placed_part(one).bounds, placed_part(other).bounds, strict=True)
    return (first - second for first, second in bounds)


def over_both_ends(one: Part, other: Part) -> bool:
    """Whether one of the two is longer than the other at both of its ends, across or down."""
    left, upper, right, lower = edges_mm(one, other)
    return left * right < 0 or upper * lower < 0


def gaps_mm(one: Part, other: Part) -> Iterator[float]:
    """From side to side, from middle to middle and from the outside to the outside, across and down."""
    bounds = placed_part(one).bounds, placed_part(other).bounds
    for way in (0, 1):
        (first, last), (other_first, other_last) = (of[way::2] for of in bounds)
        yield max(first, other_first) - min(last, other_last)
        yield abs(first + last - other_first - other_last) / 2
        yield max(last, other_last) - min(first, other_first)


def laps_mm(one: Part, other: Part) -> Iterator[float]:
    """How far one lies over the other, across and down; none where they do not meet."""
    bounds = tuple(zip(*(placed_part(part).bounds for part in (one, other)), strict=True))
    laps = [min(bounds[way + 2]) - max(bounds[way]) for way in (0, 1)]
    yield from laps if min(laps) >= 0 else ()


def apart_mm(one: Part, other: Part, ways: Iterable[int] = (0, 1)) -> Iterator[float]:
    """How far upright edges of one lie from those of the other, 0, and level ones from level ones, 1."""
    first, second = placed_part(one).bounds, placed_part(other).bounds
    for way in ways:
        yield from (abs(a - b) for a, b in product(first[way::2], second[way::2]))


def edges_so_far(one: Part, other: Part, told_mm: float) -> set[int]:
    """The numbers of the edges, left, upper, right and lower, that lie so far from those of the other."""
    found = set()
    for edge, all_mm in enumerate(zip(*edges_where_they_meet(one, other), strict=True)):
        least, most = min(all_mm), max(all_mm)
        shaped = -ROUNDED_MM <= told_mm - least <= min(most - least, _SHAPED_MM) + ROUNDED_MM
        if shaped or abs(told_mm - all_mm[0]) <= ROUNDED_MM:
            found.add(edge)
    return found
