"""The shapes of the chart symbols, in the order their code points follow.

The order is a promise: new shapes go into a family of their own at the end, or
charts saved earlier would read back as something else.
"""

from dataclasses import dataclass
from functools import cache

from packetgen.chart.shapes_cut import Contour, area, cut
from packetgen.chart.shapes_garden import GARDEN
from packetgen.chart.shapes_letters import LETTERS
from packetgen.chart.shapes_lines import BARS, CHEVRONS, CROSSES, STARS
from packetgen.chart.shapes_paper import CELL
from packetgen.chart.shapes_plain import DIAMONDS, ROUNDS, SQUARES, TRIANGLES

_PILES = {
    **ROUNDS,
    **SQUARES,
    **DIAMONDS,
    **TRIANGLES,
    **CROSSES,
    **BARS,
    **CHEVRONS,
    **STARS,
    **GARDEN,
    **LETTERS,
}


@dataclass(frozen=True)
class Shape:
    """A named shape: filled contours in whole units of a 1000-unit cell."""

    name: str
    contours: tuple[Contour, ...]

    @property
    def ink(self) -> float:
        """Share of the cell that is black, 0 to 1, from the outline area."""
        return area(self.contours) / (CELL * CELL)


NAMES: tuple[str, ...] = tuple(_PILES)


@cache
def shape(name: str) -> Shape:
    """The shape of this name. Raises KeyError for a name not in `NAMES`."""
    return Shape(name, cut(_PILES[name]))
