"""Colours of a drawing with few stitches, and with how many colours they go.

Of a soft picture such a colour may be the shade of an edge; of a clean one it may be the eye of a bird. Only its
author knows, so she is told how to leave it out.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from packetgen.bring.choosing import TooFewAsked
from packetgen.bring.chosen import chosen
from packetgen.bring.drawing import Drawing
from packetgen.bring.key_text import KnownLine
from packetgen.model import Colour

_SHARE = 0.005  # of the stitches, at most. Our own choice
_MOST_TOLD = 3


@dataclass(frozen=True)
class Small:
    colour: Colour
    stitches: int
    colours: (
        int  # with so many at most it is left out, and besides only those that are told before it
    )


def small_colours(
    drawing: Drawing,
    card: Sequence[Colour],
    known: Sequence[KnownLine],
    stitches: Sequence[tuple[Colour, int]],
) -> tuple[Small, ...]:
    """Those that go first where fewer colours are asked for; none where a larger one would go before them.

    `stitches` are those of each line of the key. Of a photograph nobody has drawn any colour; and of squares that
    may be bare cloth it is told already what to do.
    """
    total = sum(number for _, number in stitches)
    few = {colour: number for colour, number in stitches if number <= _SHARE * total}
    found: list[Small] = []
    if drawing.photograph or not few or min(few.values()) <= drawing.nearly_bare:
        return ()
    left = {colour for colour, _ in stitches}
    for most in range(len(stitches) - 1, max(len(stitches) - 1 - _MOST_TOLD, 0), -1):
        try:
            held, choice = chosen(drawing, card, known, most)
        except TooFewAsked:
            break
        threads = enumerate(choice.thread_of.tolist(), 1)
        now = {card[place] for number, place in threads if number not in held}
        now |= {line.colour for line in held.values()}
        gone = left - now
        if now - left or len(gone) != 1 or not gone <= set(few):
            break
        (colour,) = gone
        found.append(Small(colour, few[colour], most))
        left = now
    return tuple(found)
