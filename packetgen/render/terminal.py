"""Colour on a terminal: what it can show, and text painted for it.

Escapes are those of ITU-T T.416 (ISO/IEC 8613-6), 13.1.8. The 256 colours that terminals have are a
cube of six steps a channel and 24 greys (from memory).
"""

from collections.abc import Mapping
from enum import Enum
from functools import cache

from packetgen.colour import channels, contrast, difference, lab

_RESET = "\x1b[0m"
_STEPS = (0, 95, 135, 175, 215, 255)
_INK, _PAPER = 38, 48


class Depth(Enum):
    """How many colours there are. The value is what an option calls it."""

    EVERY = "24-bit"
    MANY = "256"
    NONE = "none"


def depth_of(environment: Mapping[str, str], on_terminal: bool) -> Depth:
    """What can be shown: nothing where there is no terminal, or where NO_COLOR says so."""
    kind = environment.get("TERM", "")
    if not on_terminal or environment.get("NO_COLOR") or kind == "dumb":
        return Depth.NONE
    if environment.get("COLORTERM", "").casefold() in ("truecolor", "24bit"):
        return Depth.EVERY
    return Depth.MANY if "256color" in kind else Depth.NONE


def painted(text: str, ink: str | None, paper: str | None, depth: Depth) -> str:
    """`text` in a colour on another ('#rrggbb'), as far as there are any."""
    if depth is Depth.NONE:
        return text
    given = ((_INK, ink), (_PAPER, paper))
    codes = ";".join(_code(layer, colour, depth) for layer, colour in given if colour)
    return f"\x1b[{codes}m{text}{_RESET}" if codes else text


def ink_on(paper: str) -> str:
    """Black or white, whichever is read better."""
    return max(("#000000", "#ffffff"), key=lambda ink: contrast(ink, paper))


def _code(layer: int, colour: str, depth: Depth) -> str:
    if depth is Depth.EVERY:
        red, green, blue = channels(colour)
        return f"{layer};2;{red};{green};{blue}"
    return f"{layer};5;{nearest_of_256(colour)}"


@cache
def nearest_of_256(colour: str) -> int:
    """The number of the nearest of the 240 colours that are the same on every such terminal."""
    seen = lab(colour)
    return min(_table(), key=lambda number: difference(seen, lab(_table()[number])))


@cache
def _table() -> dict[int, str]:
    cube = [(red, green, blue) for red in _STEPS for green in _STEPS for blue in _STEPS]
    greys = [(8 + 10 * step,) * 3 for step in range(24)]
    return {
        number: "#" + "".join(f"{channel:02x}" for channel in colour)
        for number, colour in enumerate((*cube, *greys), 16)
    }
