"""Whether the panel of a finishing piece lies on the wood, and where on it."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from shapely import Point, Polygon, box, unary_union
from shapely.affinity import translate
from shapely.geometry.base import BaseGeometry

from packetgen.load.placed_parts import ROUNDED_MM, Bounds, placed_part, touching
from packetgen.model import Outline, Part

# Limits of what is told; all are our own choice. Pieces that stand apart fill a room so many times as large.
_APART = 2
_GAP = 0.02  # of a panel; less without wood below it is a groove
_BOARD = 0.2  # of a panel, that its board has below it, and twice as much as any other part
_MIDDLE_MM = 1  # a panel so near to the middle of its board is in it
_NEXT_TO_NOTHING = 0.05  # of the panel, that a board in centimetres lies below
LARGE = 3  # times the panel: no wood round it is larger in both


@dataclass(frozen=True)
class Beyond:
    """How far a panel reaches beyond the wood of which the bounds are told: to the left, above, to the right
    and below; `most_mm` is what its corner `at` does, in whatever direction."""

    bounds: Bounds
    sides_mm: Bounds
    most_mm: float
    at: tuple[float, float]


def held_by_boxes(panel: Outline, parts: Sequence[Part]) -> tuple[int, ...]:
    """The parts, by number, that do not hold the panel, and of which the rectangle round them would."""
    shape = Polygon(panel)
    placed = [placed_part(part).buffer(ROUNDED_MM) for part in parts]
    return tuple(
        number
        for number, part in enumerate(placed)
        if part.envelope.covers(shape) and not part.covers(shape)
    )


def beyond_wood(panel: Outline, parts: Iterable[Part]) -> Beyond | None:
    """None where the panel lies within the parts as they stand: gaps between them, and what they enclose, count
    as wood. Of a part with several pieces only one has a place; where the others could fill what lies beyond,
    nobody can tell, and None is given too."""
    parts = tuple(parts)
    placed = [placed_part(part) for part in parts]
    wood, shape = unary_union(placed).convex_hull, Polygon(panel)
    at = max(panel, key=lambda corner: wood.distance(Point(corner)))
    most_mm = wood.distance(Point(at))
    elsewhere = sum((part.pieces - 1) * one.area for part, one in zip(parts, placed, strict=True))
    if most_mm <= ROUNDED_MM or shape.difference(wood).area <= _APART * elsewhere:
        return None
    left, top, right, bottom = wood.bounds
    of = shape.bounds
    sides = (left - of[0], top - of[1], of[2] - right, of[3] - bottom)
    return Beyond(wood.bounds, sides, most_mm, at)


def lies_on(panel: Outline, part: Part, parts: Iterable[Part]) -> bool:
    """Whether a panel lies on the wood, and on no more of it than that part is wide and high."""
    round_part = box(*placed_part(part).bounds).buffer(ROUNDED_MM)
    return round_part.covers(Polygon(panel)) and beyond_wood(panel, parts) is None


@dataclass(frozen=True)
class Beside:
    """By how much, and on which side, a panel lies beside the middle of a part."""

    number: int  # of the part
    by_mm: float
    side: str  # 'to the left of'


def beside_middle(panel: Outline, parts: Sequence[Part]) -> Beside | None:
    """Where a panel lies on one part beside its middle, and in its middle if its corners are counted from the part's
    own 0,0."""
    middle = _middle(Polygon(panel))
    if abs(middle - _middle(unary_union([placed_part(part) for part in parts]))) <= _MIDDLE_MM:
        return None
    found = []
    for number, part in enumerate(parts):
        across, own = part.at_mm[0], _middle(placed_part(part))
        if (
            abs(middle - own) > _MIDDLE_MM >= abs(middle + across - own)
            and lies_on(panel, part, parts)
            and lies_on(_from_corner(panel, part), part, parts)
        ):
            side = "to the left of" if middle < own else "to the right of"
            found.append(Beside(number, abs(middle - own), side))
    return found[0] if len(found) == 1 else None


@dataclass(frozen=True)
class Across:
    """A part, by its number, that a panel lies on only with some of it, and the other that it reaches onto most."""

    number: int
    onto: int


def across_parts(panel: Outline, parts: Sequence[Part]) -> Across | None:
    """The one part that all of a panel lies on if its corners are counted from the part's own 0,0, where as it is no part
    has all of it."""
    shape, placed = Polygon(panel), [placed_part(part) for part in parts]
    if any(_has_all(one, shape) for one in placed):
        return None
    found = []
    for number, part in enumerate(parts):
        moved = translate(shape, *part.at_mm)
        if part.at_mm != (0, 0) and _has_all(placed[number], moved):
            beyond = shape.difference(placed[number])
            reached = [beyond.intersection(other).area for other in placed]
            onto = max(range(len(parts)), key=lambda other: reached[other])
            if reached[onto] > ROUNDED_MM**2 and shape.intersects(placed[number]):
                found.append(Across(number, onto))
    return found[0] if len(found) == 1 else None


def _has_all(part: BaseGeometry, panel: BaseGeometry) -> bool:
    return bool(part.buffer(ROUNDED_MM).covers(panel))


def _from_corner(panel: Outline, part: Part) -> Outline:
    """The panel where its corners were counted from the part's own 0,0."""
    return tuple((x + part.at_mm[0], y + part.at_mm[1]) for x, y in panel)


def over_gap(panel: Outline, parts: Sequence[Part]) -> tuple[int, float] | None:
    """The number of the one part that all of a panel lies on if its corners are counted from the part's own 0,0, where
    as it is there is no wood below a share of it; and that share."""
    shape = Polygon(panel)
    bare = shape.difference(unary_union([placed_part(part) for part in parts])).area / shape.area
    if bare < _GAP:
        return None
    found = [
        number
        for number, part in enumerate(parts)
        if part.at_mm != (0, 0) and _has_all(placed_part(part), translate(shape, *part.at_mm))
    ]
    return (found[0], bare) if len(found) == 1 else None


def beyond_board(panel: Outline, parts: Sequence[Part]) -> tuple[int, float] | None:
    """The number of the one part that a panel lies on, where beside it there is no wood below a share of
    the panel; and that share."""
    shape, shares = Polygon(panel), shares_below(panel, parts)
    board = max(range(len(parts)), key=lambda number: shares[number])
    wood = unary_union([placed_part(part).buffer(ROUNDED_MM) for part in parts])
    bare = shape.difference(wood).area / shape.area
    others = [share for number, share in enumerate(shares) if number != board]
    is_board = shares[board] >= max(_BOARD, 2 * max(others, default=0.0))
    if bare < _GAP or not is_board or parts[board].pieces > 1:
        return None
    return board, bare


def place_below(panel: Outline, part: Part) -> tuple[float, float] | None:
    """The 'at' with which a part has a panel within it, and in its middle in the directions in which it is moved; None where
    it is smaller."""
    at = []
    for corners, own, place in zip(zip(*panel), zip(*part.outline), part.at_mm, strict=True):
        first, last, begins, ends = min(corners), max(corners), min(own), max(own)
        if ends - begins < last - first:
            return None
        within = place + begins - ROUNDED_MM <= first and last <= place + ends + ROUNDED_MM
        at.append(place if within else (first + last - begins - ends) / 2)
    return at[0], at[1]


def in_cm(panel: Outline, parts: Sequence[Part]) -> int | None:
    """The number of the one part that would lie below all of the panel if its corners were in centimetres, and join
    parts that hang apart without it."""
    shape, placed = Polygon(panel), [placed_part(part) for part in parts]
    apart, most = len(touching(placed)), LARGE * max(_extent(shape))
    found = []
    for number, part in enumerate(parts):
        tenfold = replace(part, outline=tuple((10 * x, 10 * y) for x, y in part.outline))
        large = placed_part(tenfold)
        if (
            placed[number].intersection(shape).area <= _NEXT_TO_NOTHING * shape.area
            and large.buffer(ROUNDED_MM).covers(shape)
            and max(_extent(large)) <= most
            and len(touching([*placed[:number], large, *placed[number + 1 :]])) < apart
        ):
            found.append(number)
    return found[0] if len(found) == 1 else None


def _middle(shape: BaseGeometry) -> float:
    left, _, right, _ = shape.bounds
    return float(left + right) / 2


def _extent(shape: Polygon) -> tuple[float, float]:
    left, top, right, bottom = shape.bounds
    return right - left, bottom - top


def shares_below(panel: Outline, parts: Sequence[Part]) -> list[float]:
    """Of the panel's area, what each part has below it."""
    shape = Polygon(panel)
    return [placed_part(part).intersection(shape).area / shape.area for part in parts]
