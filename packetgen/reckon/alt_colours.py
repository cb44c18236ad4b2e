"""Plain words for colours in what is said of a picture, beside the colours that are in it."""

import re
from dataclasses import dataclass
from math import atan2, degrees, hypot

from packetgen.colour import lab
from packetgen.model import FinishingPiece, Pattern


@dataclass(frozen=True)
class _Family:
    """What may be called so at the most: hues from one angle of CIELAB to another, degrees, from a least chroma and
    lightness on."""

    first: float
    last: float
    chroma: float
    light: float = 0

    def has(self, hex_colour: str) -> bool:
        light, a, b = lab(hex_colour)
        hue = degrees(atan2(b, a)) % 360
        turned = hue if self.first <= hue else hue + 360
        return turned <= self.last and hypot(a, b) >= self.chroma and light >= self.light


# Wide on purpose: our own choice.
_FAMILIES = {
    "red": _Family(345, 410, 18),
    "pink": _Family(315, 405, 8, 42),
    "orange": _Family(25, 90, 22),
    "yellow": _Family(55, 118, 18),
    "green": _Family(102, 205, 6),
    "blue": _Family(185, 315, 7),
    "purple": _Family(275, 385, 6),
    "violet": _Family(275, 385, 6),
}
_WORD = re.compile(rf"(?<![\w-])(?:{'|'.join(_FAMILIES)})(?![\w-])")


def colour_not_there(words: str, pattern: Pattern, piece: FinishingPiece) -> str:
    """The first word for a colour that none of the threads, the cloths, the trim and the paints has, by hue or by name; ''
    where there is none."""
    threads = [
        colour for line in pattern.key for needle in line.threads.values() for colour in needle
    ]
    colours = [
        *threads,
        *(bead.colour for bead in pattern.beads),
        *(option.colour for option in pattern.cloths),
    ]
    seen = [(colour.name, colour.hex) for colour in colours]
    seen += [(paint.name, paint.hex) for paint in piece.paints]
    seen += [(pattern.title, pattern.trim_hex or seen[0][1])]
    names = " ".join(name for name, _ in seen).casefold()
    for found in _WORD.finditer(words):
        in_it = any(_FAMILIES[found[0]].has(hex_colour) for _, hex_colour in seen)
        if found[0] not in names and not in_it:
            return found[0]
    return ""
