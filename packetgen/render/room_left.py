"""Designs laid on the panel side by side, at one scale, each with the room that is left round it."""

from dataclasses import dataclass
from math import ceil

from packetgen.chart.piece_drawing import panel_drawing, piece_scale
from packetgen.model import ClothOption, FinishingPiece
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.sizes import Size

# Less than this is not seen, nor printed.
_SAME_MM = 0.05
_MOST_IN_ROW = 5
# So many designs leave room for the whole piece beside them.
_FEW = 2
# The room of the drawing of the piece, beside them and alone (packet.css has both too), and the type of
# its dimensions there: 8.5 points, as in the captions beside it.
_BESIDE_MM, _ALONE_MM = (66.0, 80.0), (150.0, 84.0)
_TYPE_MM = 8.5 * 25.4 / 72
# Drawn smaller, a card has no room for the size of its stitching in such type: from memory.
_LEAST_SCALE = 0.2


@dataclass(frozen=True)
class Reveal:
    side: str  # 'left', or 'left and right' where they are alike
    room_mm: float


@dataclass(frozen=True)
class Laid:
    """One design on one cloth, lying on the panel."""

    cloth: str
    finished: Size
    reveals: tuple[Reveal, ...]
    drawing: str  # SVG
    alt: str


def laid_on_panel(figures: Figures, piece: FinishingPiece) -> tuple[Laid, ...]:
    """The design on every cloth that its author offers, the model's first."""
    return tuple(_laid(figures.pattern.title, on, piece) for on in figures.cloths)


def cloth_said(option: ClothOption) -> str:
    """'Brindle Linen 32, over 2'."""
    return option.cloth.name + (f", over {option.over}" if option.over > 1 else "")


def _laid(title: str, on: OnCloth, piece: FinishingPiece) -> Laid:
    fit, cloth = on.fit, cloth_said(on.option)
    across = _reveals(("left", fit.reveal_left_mm), ("right", fit.reveal_right_mm))
    upright = _reveals(("above", fit.reveal_above_mm), ("below", fit.reveal_below_mm))
    return Laid(
        cloth,
        on.finished,
        across + upright,
        panel_drawing(piece, fit, on.finished, on.option.colour.hex),
        f"{title} on {cloth}, mounted and lying on the panel, to scale.",
    )


def _reveals(*sides: tuple[str, float]) -> tuple[Reveal, ...]:
    if abs(sides[0][1] - sides[1][1]) < _SAME_MM:
        return (Reveal(" and ".join(side for side, _ in sides), sides[0][1]),)
    return tuple(Reveal(side, room) for side, room in sides)


def in_a_row(number: int) -> int:
    """How many of so many stand in a row of the packet: five at most, in rows as even as can be."""
    rows = ceil(number / _MOST_IN_ROW)
    return ceil(number / rows)


def piece_stands_beside(piece: FinishingPiece, number: int) -> bool:
    """Whether the drawing of the whole piece stands beside so many designs on the panel and is not too
    small there; else it has a place of its own above them."""
    return number <= _FEW and piece_scale(piece, _BESIDE_MM, _TYPE_MM) >= _LEAST_SCALE


def piece_type_mm(piece: FinishingPiece, beside: bool) -> float:
    """The type of the drawing's dimensions, in the piece's millimetres, that comes out as 8.5 points."""
    return _TYPE_MM / piece_scale(piece, _BESIDE_MM if beside else _ALONE_MM, _TYPE_MM)
