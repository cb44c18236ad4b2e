"""Which cautions a finishing piece needs: those of its author, and those that its own figures ask for."""

import re

from packetgen.model import FinishingPiece
from packetgen.reckon.paint import paint_cautions

# What steps and glues are called that ask for a caution.
_SPOKEN_OF = {
    "spray paint": r"spray\w*",
    "solvents": r"white spirit|turpentine|turps|mineral spirits?|solvents?|thinners?|acetone|methylated spirits?",
    "dye powder": r"dye powders?",
    "hot glue": r"hot[ -](?:melt[ -])?glue|hot[ -]melt|glue guns?",
    "dust": r"sand(?:ed|ing|paper)?|glass ?paper|fine paper|saw(?:n|ed|s|ing)?|rasp",
}


def precautions(piece: FinishingPiece, beads: bool = False) -> tuple[str, ...]:
    """Names of `packetgen.cautions`, the author's first. Magnets, the blade that cuts the card and the pins
    that hold the cloth are warned of whether or not she lists them, and so are the ways of putting her
    paints on, what can be swallowed, and what her steps speak of. `beads`: whether any are sewn on."""
    needed = ["small magnets"] if piece.magnets.pairs else []
    needed += ["blades", "needles"]
    spoken = " ".join([piece.steps_markdown, *(glue.name for glue in piece.glues)])
    needed += [
        name for name, words in _SPOKEN_OF.items() if re.search(rf"(?i)\b(?:{words})\b", spoken)
    ]
    needed += ["small parts"] if piece.magnets.pairs or piece.hardware or beads else []
    return tuple(dict.fromkeys((*piece.cautions, *needed, *paint_cautions(piece))))
