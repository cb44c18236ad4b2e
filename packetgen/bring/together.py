"""Colours of a drawing that have one and the same thread as their nearest: which of them fall together, and
which were never drawn and are shades along a soft edge."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import numpy as np

from packetgen.bring.apart import lab_of, table
from packetgen.bring.choosing import Choice
from packetgen.bring.drawing import Drawing, Wish, hex_of
from packetgen.load.words import shown
from packetgen.model import Colour, Stitch
from packetgen.reckon.colour import CLOSE, FAR


@dataclass(frozen=True)
class Together:
    """Colours of the drawing, or codes (with their squares), that have one and the same thread as their nearest."""

    colour: Colour
    of: tuple[tuple[str, int], ...]


def together(
    drawing: Drawing, card: Sequence[Colour], held: Collection[int], choice: Choice
) -> tuple[tuple[Together, ...], int]:
    """The colours that fall together, thread by thread; and how many squares have a shade of one beside them.

    `held` are colours that need no thread of the card.
    """
    if drawing.photograph:
        return (), 0
    counts = drawing.counts()
    groups: dict[tuple[int, Stitch], list[int]] = {}
    for number in np.argsort(-counts[1:], kind="stable") + 1:
        if int(number) not in held and counts[number]:
            stitch = drawing.wishes.get(int(number), Wish()).stitch
            groups.setdefault((int(choice.nearest[number - 1]), stitch), []).append(int(number))
    patches = _patches(drawing)
    found, soft_squares = [], 0
    for (place, _), numbers in sorted(groups.items(), key=lambda one: min(one[1])):
        squares, strayed = _drawn(drawing, numbers, patches)
        soft_squares += strayed
        if len(squares) > 1:
            of = [(_called(drawing, number), squares[number]) for number in squares]
            found.append(Together(card[place], tuple(sorted(of, key=lambda one: -one[1]))))
    return tuple(found), soft_squares


def _called(drawing: Drawing, number: int) -> str:
    """A colour as its author knows it: her code for it, or else the colour itself."""
    code = drawing.wishes.get(number, Wish()).code
    return shown(code) if code else hex_of(drawing.colours[number - 1])


def _drawn(
    drawing: Drawing, common_first: Sequence[int], patches: Collection[int]
) -> tuple[dict[int, int], int]:
    """Of these colours those that somebody drew, each with its squares; and how many squares of them have
    another.

    Where edges are soft, a colour is a shade of a more common one that is close to it; or not far from it,
    if it is nowhere two squares wide both ways, as what is drawn mostly is. Any other is drawn.
    """
    counts = drawing.counts()
    labs = lab_of(drawing.colours)
    squares: dict[int, int] = {}
    strayed = 0
    for number in common_first:
        own = int(counts[number])
        if drawing.soft and squares:
            drawn = list(squares)
            gaps = table(labs[[number - 1]], labs[np.array(drawn) - 1])[0]
            if gaps.min() <= (CLOSE if number in patches else FAR):
                squares[drawn[int(gaps.argmin())]] += own
                strayed += own
                continue
        squares[number] = own
    return squares, strayed


def _patches(drawing: Drawing) -> frozenset[int]:
    """The colours that are somewhere two squares wide both ways."""
    cells = drawing.cells
    corner = cells[:-1, :-1]
    whole = (corner == cells[1:, :-1]) & (corner == cells[:-1, 1:]) & (corner == cells[1:, 1:])
    return frozenset(np.unique(corner[whole]).tolist())
