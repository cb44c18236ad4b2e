"""Which cautions a finishing piece needs: those of its author, and those that its own figures ask for."""

from packetgen.model import FinishingPiece
from packetgen.reckon.paint import paint_cautions


def precautions(piece: FinishingPiece) -> tuple[str, ...]:
    """Names of `packetgen.cautions`, the author's first. Magnets, the blade that cuts the card and the pins
    that hold the cloth are warned of whether or not she lists them, and so are the ways of putting her
    paints on."""
    needed = ["small magnets"] if piece.magnets.pairs else []
    needed += ["blades", "needles"]
    return tuple(dict.fromkeys((*piece.cautions, *needed, *paint_cautions(piece))))
