"""How sizes, lengths and points of a finishing piece are said to its author."""

from packetgen.load.points import point_said
from packetgen.load.values import Filled
from packetgen.model import Outline
from packetgen.units import plain

# In patterns for steps: a unit, and what parts are sawn from.
UNIT = r"(?:mm|cm|in)\b"
WOOD = r"(?:plywood|ply|wood|timber|board|pine|oak|beech|birch|lime|poplar|mdf)"
_ROUNDED_MM = 0.5
_OF_SIXTEENTHS_MM = 25.4 / 16  # a rule in inches is read to one of them
SHOWN = 4  # corners of an outline
_READ_MM = 10  # from here on a gap is told in whole mm
_HALF_MM = 0.05  # but for what is so near to half of one
_SLIM_MM = 3  # from side to side; a narrower piece of wood is hardly sawn: our own choice


def sides_of(panel: Filled) -> tuple[float, float]:
    """Width and height of what has an outline, mm."""
    return extent_of(panel["outline"])


def extent_of(outline: Outline) -> tuple[float, float]:
    """Its width and height, mm."""
    wide, high = (max(side) - min(side) for side in zip(*outline))
    return wide, high


def slim(outline: Outline) -> bool:
    """Whether nobody can saw it: in another unit, mostly."""
    return min(extent_of(outline)) < _SLIM_MM


def size_said(sides: tuple[float, float]) -> str:
    """'120 × 110 mm'."""
    return f"{plain(round(sides[0], 2))} × {mm_said(sides[1])}"


def from_cm(outline: Outline) -> str:
    """The first corners in mm, as they are if the author's are cm."""
    corners = " ".join(point_said((10 * x, 10 * y)) for x, y in outline[:SHOWN])
    return corners + " …" * (len(outline) > SHOWN)


def gap_said(length_mm: float) -> str:
    """As one reads it off a rule: '30 mm', '12.5 mm', '2.3 mm'."""
    half = abs(length_mm % 1 - 0.5) < _HALF_MM
    return mm_said(round(length_mm) if length_mm >= _READ_MM and not half else round(length_mm, 1))


def mm_said(length_mm: float) -> str:
    """'12.5 mm'."""
    return f"{plain(round(length_mm, 2))} mm"


def near_mm(unit: str) -> float:
    """How far a length told in this unit may be from the true one."""
    return _OF_SIXTEENTHS_MM if unit.casefold() == "in" else _ROUNDED_MM
