"""The threads of a drawing, where the file or the key that the pattern has may name some of them."""

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from packetgen.bring.choosing import Choice, TooFewAsked, choose
from packetgen.bring.drawing import Drawing, hex_of
from packetgen.bring.key_text import KnownLine
from packetgen.model import Colour
from packetgen.shape_names import SHAPE_NAMES

MOST_COLOURS = len(SHAPE_NAMES)  # a key line needs a chart symbol of its own


def chosen(
    drawing: Drawing, card: Sequence[Colour], known: Sequence[KnownLine], most: int | None
) -> tuple[dict[int, KnownLine], Choice]:
    """Colours that a line of the key has which is no plain thread of the card; and a thread of it for each of
    the others, so that they are `most` at most. Raises TooFewAsked."""
    held, named = _settled(drawing, card, known, most)
    return held, _choice(drawing, card, held, named, most)


def _settled(
    drawing: Drawing, card: Sequence[Colour], known: Sequence[KnownLine], most: int | None
) -> tuple[dict[int, KnownLine], dict[int, int]]:
    """Colours that a line of the key has which is no plain thread of the card; and the places in the card
    of those whose thread is said."""
    held: dict[int, KnownLine] = {}
    named: dict[int, int] = {}
    if drawing.photograph and not drawing.wishes:
        return held, named
    places = {colour.number: place for place, colour in enumerate(card)}
    by_mark = {line.mark: line for line in known}
    for number, colour in enumerate(drawing.colours, 1):
        wish = drawing.wish(number)
        if wish.number:
            named[number] = places[wish.number]
            continue
        if drawing.photograph:
            continue
        drawn = hex_of(colour)
        alike = [
            line
            for line in known
            if line.hex == drawn and (not wish.mark or line.stitch is wish.stitch)
        ]
        line = by_mark.get(wish.mark)
        if line is None or line.hex != drawn:
            line = next((one for one in alike if one.plain), alike[0] if alike else None)
        if line is None:
            continue
        if not line.plain:
            held[number] = line
        elif most is None or not wish.coloured:
            named[number] = places[line.number]
    return held, named


def _choice(
    drawing: Drawing,
    card: Sequence[Colour],
    held: dict[int, KnownLine],
    named: dict[int, int],
    most: int | None,
) -> Choice:
    lines = len({line.mark for line in held.values()})
    room = (MOST_COLOURS if most is None else most) - lines
    rest = np.arange(len(drawing.colours) + 1)
    rest[list(held)] = 0
    left = replace(drawing, cells=rest[drawing.cells])
    if room < 1 and left.cells.any():
        raise TooFewAsked(lines + 1)
    if not left.cells.any():
        none = np.zeros(len(drawing.colours), int)
        return Choice(none, none)
    return choose(left, card, named, room)
