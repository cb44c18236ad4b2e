"""What to cut for mounting one design on one cloth: card, wadding, cloth, backing and trim.

The stitching is laid over wadding on a card; its cloth is folded to the back, a backing fabric covers that,
and a trim runs round the edge.
"""

from dataclasses import dataclass
from math import pi, sqrt

from packetgen.model import FinishingPiece, Trim
from packetgen.reckon.sizes import Size

# Turned under round the backing fabric: common practice, no source.
SEAM_MM = 10.0
# Mounting board, and wadding as it lies pressed under stitching: from memory.
CARD_THICK_MM, WADDING_THICK_MM = 2.0, 2.0
# About two threads of cloth, which may fray at a cut edge: common practice, no source.
FRAYS_MM = 2.0


@dataclass(frozen=True)
class Mounting:
    """Sizes to cut, before any rounding."""

    card: Size
    wadding: Size
    cloth: Size  # the stitched cloth trimmed to its fold-over
    backing: Size
    trim_mm: float


@dataclass(frozen=True)
class CornerCut:
    """Where the folded cloth is cut across at 45°, at each corner."""

    clear_of_card_mm: float  # from the corner of the card, square to the cut
    along_edge_mm: float  # what it takes off either edge of the trimmed cloth; 0 for no cut


def cloth_margin_mm(piece: FinishingPiece) -> float:
    """Cloth round the stitching when it is mounted: the border that shows, and what is folded over."""
    return piece.border_mm + piece.fold_over_mm


def mounting(finished: Size, piece: FinishingPiece) -> Mounting:
    """Card, wadding, cloth, backing and trim for a design of `finished` size.

    Each is the one before it with a margin on every side: the border makes the card, the wadding is the card
    less its inset, the cloth the card with the fold-over, the backing the card with a seam (all common
    practice, no source).
    """
    card = finished.grown(piece.border_mm)
    return Mounting(
        card=card,
        wadding=card.grown(-piece.wadding_inset_mm),
        cloth=finished.grown(cloth_margin_mm(piece)),
        backing=card.grown(SEAM_MM),
        trim_mm=trim_mm(card, piece.trim),
    )


def trim_mm(card: Size, trim: Trim) -> float:
    """Round the card once, times the ratio of gathers, with four corners and the overlap of the ends; 0 where no
    trim runs round it."""
    perimeter = 2 * (card.width_mm + card.height_mm)
    return perimeter * trim.ratio + 4 * trim_corner_mm(trim) + trim.overlap_mm


def trim_corner_mm(trim: Trim) -> float:
    """What a trim laid outside the edge of the card takes more at a right-angled corner (plane geometry).

    A flat ribbon is mitred: its outer edge runs its width further to the corner, and as far back. A round
    cord turns a quarter circle about the corner, with its middle half a width out. A gathered trim has
    its gathers pushed into the corner and takes nothing more (common practice, no source).
    """
    corners = {"straight": 2 * trim.width_mm, "round": pi / 4 * trim.width_mm}
    return corners.get(trim.kind, 0.0)


def corner_cut(piece: FinishingPiece) -> CornerCut:
    """How far from the card's corner the cloth is cut, so that the two folds meet and cover the corner.

    A cut at the distance d leaves a flap that reaches √2 · d − u past the corner where it is u beyond the
    edge. It first climbs the thickness t of card and wadding, so on the back the two flaps just meet on
    the mitre where √2 · d = t (own geometry); what may fray is added to d.
    """
    clear_mm = (CARD_THICK_MM + WADDING_THICK_MM) / sqrt(2) + FRAYS_MM
    along_mm = 2 * piece.fold_over_mm - sqrt(2) * clear_mm
    return CornerCut(clear_mm, max(0.0, along_mm))
