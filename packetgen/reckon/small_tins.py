"""Tins of paint of which one is not enough."""

from packetgen.diagnostics import Problems
from packetgen.model import FinishingPiece
from packetgen.nouns import counted
from packetgen.reckon.paint import paint_needs

_MUCH_LARGER = 4  # times as large: our own choice


def complain_of_small_tins(piece: FinishingPiece, problems: Problems) -> None:
    """A tin that is not enough, where another paint comes in much larger ones: a nought may be missing."""
    largest_ml = max((paint.tin_ml for paint in piece.paints), default=0)
    for need in paint_needs(piece):
        tin_ml = need.paint.tin_ml
        if need.tins > 1 and largest_ml >= _MUCH_LARGER * tin_ml:
            facts = {
                "paint": need.paint.name,
                "takes": f"{need.volume_ml:.0f}",
                "tins": f"{counted(need.tins, 'tin')} of {tin_ml:g} ml",
                "larger": f"{largest_ml:g}",
                "better": f"{10 * tin_ml:g}",
            }
            problems.add(need.paint.place or piece.place, "tin-small", **facts)
