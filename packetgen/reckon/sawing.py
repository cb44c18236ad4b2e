"""The parts of a finishing piece as they are sawn."""

from dataclasses import dataclass

from packetgen.model import FinishingPiece, Part
from packetgen.reckon.outline import bounds, fills_its_box
from packetgen.reckon.sizes import Size

# Of a millimetre: what is left is the dust of floating point, which would part what is alike.
_DIGITS = 6


@dataclass(frozen=True)
class Blank:
    """What is sawn for a part: the smallest upright rectangle round its outline, of a board."""

    size: Size
    thickness_mm: float
    shaped: bool  # the part is less than that rectangle
    on_edge: bool  # an edge of the board is seen from the front


@dataclass(frozen=True)
class Alike:
    """Parts that have the same blank."""

    names: tuple[str, ...]
    pieces: int  # of all of them together
    blank: Blank


def blank(part: Part) -> Blank:
    """A rectangle deeper than it is high, or wide, is a board seen from its edge, as a shelf or a foot is."""
    left, top, right, bottom = bounds(part.outline)
    wide_mm, high_mm = round(right - left, _DIGITS), round(bottom - top, _DIGITS)
    deep_mm = part.thickness_mm
    if not fills_its_box(part.outline):
        return Blank(Size(wide_mm, high_mm), deep_mm, True, False)
    if deep_mm <= min(wide_mm, high_mm):
        return Blank(Size(wide_mm, high_mm), deep_mm, False, False)
    if high_mm <= wide_mm:
        return Blank(Size(wide_mm, deep_mm), high_mm, False, True)
    return Blank(Size(deep_mm, high_mm), wide_mm, False, True)


def sawn_mm2(part: Part) -> float:
    """What one piece of it takes of the board: its box, of which a shaped part leaves some."""
    size = blank(part).size
    return size.width_mm * size.height_mm


def to_saw(piece: FinishingPiece) -> tuple[Alike, ...]:
    """In the author's order, each where the first of its like stands."""
    alike: dict[Blank, list[Part]] = {}
    for part in piece.parts:
        alike.setdefault(blank(part), []).append(part)
    return tuple(
        Alike(tuple(dict.fromkeys(p.name for p in parts)), sum(p.pieces for p in parts), of)
        for of, parts in alike.items()
    )


def any_shaped(piece: FinishingPiece) -> bool:
    return any(blank(part).shaped for part in piece.parts)
