"""The parts of a finishing piece as they are sawn."""

from dataclasses import dataclass

from packetgen.model import FinishingPiece, Outline, Part
from packetgen.reckon.outline import bounds, fills_its_box
from packetgen.reckon.sizes import Size

# Of a millimetre: what is left is the dust of floating point, which would part what is alike.
_DIGITS = 6
_MOST_CORNERS = 12  # that are told; a curve has many more


@dataclass(frozen=True)
class Blank:
    """What is sawn for a part: the smallest upright rectangle round its outline, of a board."""

    size: Size
    thickness_mm: float
    shaped: bool  # the part is less than that rectangle
    on_edge: bool  # an edge of the board is seen from the front


@dataclass(frozen=True)
class Alike:
    """Parts that are sawn alike."""

    names: tuple[str, ...]
    pieces: int  # of all of them together
    blank: Blank
    outline_mm: Outline = ()  # of a shaped one, from the upper left of its blank

    @property
    def corners_mm(self) -> Outline:
        """Of a shaped part, where they are few."""
        return self.outline_mm if len(self.outline_mm) <= _MOST_CORNERS else ()


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
    alike: dict[tuple[Blank, Outline], list[Part]] = {}
    for part in piece.parts:
        of = blank(part)
        alike.setdefault((of, _outline_mm(part) if of.shaped else ()), []).append(part)
    return tuple(
        Alike(
            names=tuple(dict.fromkeys(part.name for part in parts)),
            pieces=sum(part.pieces for part in parts),
            blank=of,
            outline_mm=outline,
        )
        for (of, outline), parts in alike.items()
    )


def _outline_mm(part: Part) -> Outline:
    left, top, _, _ = bounds(part.outline)
    return tuple((round(x - left, 1), round(y - top, 1)) for x, y in part.outline)


def any_shaped(piece: FinishingPiece) -> bool:
    return any(blank(part).shaped for part in piece.parts)
