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


@dataclass(frozen=True)
class Alike:
    """Parts that have the same blank."""

    names: tuple[str, ...]
    pieces: int  # of all of them together
    blank: Blank


def blank(part: Part) -> Blank:
    left, top, right, bottom = bounds(part.outline)
    size = Size(round(right - left, _DIGITS), round(bottom - top, _DIGITS))
    return Blank(size, part.thickness_mm, not fills_its_box(part.outline))


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
