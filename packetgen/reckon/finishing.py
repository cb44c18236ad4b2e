"""What to cut for mounting one design on one cloth, and how much paint the wooden piece takes."""

from dataclasses import dataclass

from packetgen.model import FinishingPiece, Paint, Part
from packetgen.reckon.outline import area_mm2, perimeter_mm
from packetgen.reckon.sizes import Size
from packetgen.units import up_to_step

# Turned under round the backing fabric: common practice, no source.
SEAM_MM = 10.0
# Paint that a spray loses beside a small part: from memory.
SPRAY_LOSS = 0.4
BRUSH_LOSS = 0.1


@dataclass(frozen=True)
class Mounting:
    """Sizes to cut, before any rounding."""

    card: Size
    wadding: Size
    cloth: Size  # the stitched cloth trimmed to its fold-over
    backing: Size
    trim_mm: float
    magnet_centres_mm: tuple[tuple[float, float], ...]  # from the card's top left corner


def mounting(finished: Size, piece: FinishingPiece) -> Mounting:
    """Card, wadding, cloth, backing, trim and magnet places for a design of `finished` size."""
    card = finished.grown(piece.border_mm)
    inset = piece.magnets.inset_mm
    perimeter = 2 * (card.width_mm + card.height_mm)
    return Mounting(
        card=card,
        wadding=card.grown(-piece.wadding_inset_mm),
        cloth=card.grown(piece.fold_over_mm),
        backing=card.grown(SEAM_MM),
        trim_mm=perimeter * piece.trim.ratio + piece.trim.overlap_mm,
        magnet_centres_mm=_round_the_edge(card.grown(-inset), piece.magnets.pairs, inset),
    )


def _round_the_edge(inner: Size, pairs: int, inset: float) -> tuple[tuple[float, float], ...]:
    """The four corners first, then the middles of the long sides, then of the short ones."""
    left, middle_x, right = inset, inset + inner.width_mm / 2, inset + inner.width_mm
    top, middle_y, bottom = inset, inset + inner.height_mm / 2, inset + inner.height_mm
    corners = [(left, top), (right, bottom), (right, top), (left, bottom)]
    across = [(middle_x, top), (middle_x, bottom)]
    upright = [(left, middle_y), (right, middle_y)]
    wide = inner.width_mm >= inner.height_mm
    return tuple((corners + (across + upright if wide else upright + across))[:pairs])


@dataclass(frozen=True)
class PartPaint:
    part: Part
    area_mm2: float  # painted once, all pieces


@dataclass(frozen=True)
class PaintNeed:
    paint: Paint
    parts: tuple[PartPaint, ...]
    volume_ml: float  # all coats, with the loss of the way it is put on
    tins: int
    coats: int


def painted_area_mm2(part: Part) -> float:
    """The front, or both faces and the edges all round; all pieces together."""
    face = area_mm2(part.outline)
    edges = perimeter_mm(part.outline) * part.thickness_mm
    return part.pieces * (2 * face + edges if part.both_faces else face)


def paint_needs(piece: FinishingPiece) -> tuple[PaintNeed, ...]:
    """Area × coats ÷ coverage of the label, with the loss, for every paint that some part uses."""
    result = []
    for paint in piece.paints:
        parts = tuple(
            PartPaint(part, painted_area_mm2(part))
            for part in piece.parts
            if part.paint.name == paint.name
        )
        if not parts:
            continue
        coated_m2 = sum(p.area_mm2 * p.part.coats for p in parts) / 1e6
        loss = SPRAY_LOSS if paint.put_on_with == "spray" else BRUSH_LOSS
        volume_ml = coated_m2 / paint.covers_m2_per_litre * 1000 / (1 - loss)
        tins = round(up_to_step(volume_ml / paint.tin_ml, 1))
        coats = max(p.part.coats for p in parts)
        result.append(PaintNeed(paint, parts, volume_ml, tins, coats))
    return tuple(result)
