"""Chart symbols: which private-use character shows which shape."""

from dataclasses import dataclass

from packetgen.chart.shapes import NAMES, shape

FAMILY = "Potting Symbols"  # the face that has them, fonts/symbols.ttf
BLANK = "\ue000"  # a bare cell; a character of its own so that it survives text extraction


@dataclass(frozen=True)
class Symbol:
    """A shape as the chart uses it."""

    name: str
    code_point: str

    @property
    def ink(self) -> float:
        """The black share of its cell, 0 to 1."""
        return shape(self.name).ink


SHAPES: tuple[Symbol, ...] = tuple(
    Symbol(name, chr(ord(BLANK) + 1 + place)) for place, name in enumerate(NAMES)
)
_BY_NAME = {symbol.name: symbol for symbol in SHAPES}


def code_point(shape_name: str) -> str:
    """The private-use character that shows this shape; "blank" is the bare cell.

    Raises ValueError for a shape that does not exist.
    """
    if shape_name == "blank":
        return BLANK
    return _symbol(shape_name).code_point


def ink(shape_name: str) -> float:
    """The black share of the cell, 0 to 1. Raises ValueError for an unknown shape."""
    return 0.0 if shape_name == "blank" else _symbol(shape_name).ink


def _symbol(shape_name: str) -> Symbol:
    try:
        return _BY_NAME[shape_name]
    except KeyError:
        raise ValueError(f"There is no chart shape called {shape_name!r}.") from None
