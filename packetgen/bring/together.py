"""Colours of a drawing that have one and the same thread as their nearest: which of them fall together, and
which were never drawn and are shades along a soft edge."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import numpy as np

from packetgen.bring.apart import lab_of, rgb_of, table
from packetgen.bring.choosing import Choice
from packetgen.bring.drawing import Drawing, hex_of
from packetgen.colour import CLOSE, FAR
from packetgen.load.words import shown
from packetgen.model import Colour, Stitch

# Of the step between two colours, the part by which a soft edge changes a stitch beside it. Seen at nine squares
# of ten in drawings of 50 × 64 stitches on white: a seventh and less where they were blurred, a fifth where they
# were sharpened; but a darker outline that is drawn round a leaf may be a fifth of the step to white too.
_OF_EDGE, _ROUNDING, _MOST = 0.15, 3, 0.9


@dataclass(frozen=True)
class Together:
    """Colours of the drawing, or codes (with their squares), that have one and the same thread as their nearest."""

    colour: Colour
    of: tuple[tuple[str, int], ...]


@dataclass(frozen=True, eq=False)
class Fallen:
    """`drawn_as[n - 1]` is the colour that somebody drew where colour n stands: n itself, or, of a shade along
    a soft edge, the one that it is a shade of."""

    together: tuple[Together, ...]
    drawn_as: np.ndarray


def together(
    drawing: Drawing, card: Sequence[Colour], held: Collection[int], choice: Choice
) -> Fallen:
    """The colours that fall together, thread by thread; and which of them are shades that nobody drew.

    `held` are colours that need no thread of the card.
    """
    drawn_as = np.arange(1, len(drawing.colours) + 1)
    if drawing.photograph:
        return Fallen((), drawn_as)
    counts = drawing.counts()
    groups: dict[tuple[int, Stitch], list[int]] = {}
    for number in np.argsort(-counts[1:], kind="stable") + 1:
        if int(number) not in held and counts[number]:
            stitch = drawing.wish(int(number)).stitch
            groups.setdefault((int(choice.nearest[number - 1]), stitch), []).append(int(number))
    seen = _Seen(drawing, lab_of(drawing.colours), _patches(drawing), np.pad(drawing.cells, 1))
    found = []
    for (place, _), numbers in sorted(groups.items(), key=lambda one: min(one[1])):
        drawn: list[int] = []
        for number in numbers:
            of = _shade_of(number, drawn, seen)
            if of is None:
                drawn.append(number)
            else:
                drawn_as[number - 1] = of
        if len(drawn) > 1:
            squares = {one: int(counts[1:][drawn_as == one].sum()) for one in drawn}
            of_thread = [(_called(drawing, one), squares[one]) for one in drawn]
            found.append(Together(card[place], tuple(sorted(of_thread, key=lambda one: -one[1]))))
    return Fallen(tuple(found), drawn_as)


def _called(drawing: Drawing, number: int) -> str:
    """A colour as its author knows it: her code for it, or else the colour itself."""
    code = drawing.wish(number).code
    return shown(code) if code else hex_of(drawing.colours[number - 1])


@dataclass(frozen=True, eq=False)
class _Seen:
    """A drawing with what is asked of it for every colour."""

    drawing: Drawing
    labs: np.ndarray
    patches: Collection[int]  # the colours that are somewhere two squares wide both ways
    around: np.ndarray  # the cells within a margin of bare cloth


def _shade_of(number: int, drawn: Sequence[int], seen: _Seen) -> int | None:
    """Which of these more common colours that were drawn it is a shade of; None where it was drawn itself.

    Where edges are soft, a colour is a shade of one that is close to it; of one that is not far from it, if it
    is nowhere two squares wide both ways, as what is drawn mostly is; and of one that its neighbours may have
    drawn it away from.
    """
    if not seen.drawing.soft or seen.drawing.own or not drawn:
        return None
    gaps = table(seen.labs[[number - 1]], seen.labs[np.array(drawn) - 1])[0]
    near = drawn[int(gaps.argmin())]
    close = gaps.min() <= (CLOSE if number in seen.patches else FAR)
    return near if close or _drawn_away(number, near, seen) else None


def _drawn_away(number: int, of: int, seen: _Seen) -> bool:
    """Whether most squares of a colour differ from `of` by no more, channel by channel, than a soft edge makes
    out of what some neighbour differs by: in either direction, since what sharpens an edge goes beyond it."""
    own = seen.drawing.colours[of - 1].astype(np.int16)
    bare = np.abs(rgb_of(seen.drawing.bare) - own).max(0, initial=0)
    apart = np.concatenate(([bare], np.abs(seen.drawing.colours - own)))
    rows, columns = np.nonzero(seen.drawing.cells == number)
    most = np.zeros((len(rows), 3), apart.dtype)
    for down in range(3):
        for right in range(3):
            np.maximum(most, apart[seen.around[rows + down, columns + right]], out=most)
    within = (apart[number] <= _OF_EDGE * most + _ROUNDING).all(1)
    return bool(within.mean() >= _MOST)


def _patches(drawing: Drawing) -> frozenset[int]:
    """The colours that are somewhere two squares wide both ways."""
    cells = drawing.cells
    corner = cells[:-1, :-1]
    whole = (corner == cells[1:, :-1]) & (corner == cells[:-1, 1:]) & (corner == cells[1:, 1:])
    return frozenset(np.unique(corner[whole]).tolist())
