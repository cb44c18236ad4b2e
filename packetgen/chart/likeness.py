"""How alike two chart shapes look on paper, from a table measured once.

Each shape was drawn in a cell of 24 pixels, which is 2.5 mm as finely as the eye parts it at reading
distance, and blurred by 1.2 pixels as a photocopy does. The same picture blurred by 3 pixels was taken
away, because that every symbol is a dark blot in the middle tells nobody anything. Likeness is
Pearson's correlation of what is left, the best of eight: the other shape as it is, or turned by
quarters or mirrored, for which 0.15 is taken off. 1 is the same shape; 0 is nothing in common, and
what is below counts as 0. `tests/bench/symbol_likeness.py` measures and writes the table.
"""

from packetgen.chart.likeness_table import INKS, ROWS
from packetgen.shape_names import SHAPE_NAMES

# A share in hundredths is written as one sign: the printable ones of ASCII that need no escape.
SCALE = "".join(sign for sign in map(chr, range(33, 127)) if sign not in "\"'\\")
_HUNDREDTHS = {sign: place / 100 for place, sign in enumerate(SCALE)}
_PLACES = {name: place for place, name in enumerate(SHAPE_NAMES)}


def likeness(one: str, other: str) -> float:
    """How alike two shapes are, 0 to 1, to a hundredth. Raises KeyError for an unknown shape."""
    low, high = sorted((_PLACES[one], _PLACES[other]))
    return 1.0 if low == high else _HUNDREDTHS[ROWS[high - 1][low]]


def blackness(name: str) -> float:
    """The black share of the cell, 0 to 1, to a hundredth; without cutting the shape's outlines.

    Raises KeyError for an unknown shape.
    """
    return _HUNDREDTHS[INKS[_PLACES[name]]]
