"""The shapes of the chart symbols, by name. Their order is that of `packetgen.shape_names`."""

from dataclasses import dataclass
from functools import cache

from packetgen.chart.shapes_cut import Contour, area, cut
from packetgen.chart.shapes_garden import GARDEN
from packetgen.chart.shapes_letters import LETTERS
from packetgen.chart.shapes_lines import BARS, CHEVRONS, CROSSES, STARS
from packetgen.chart.shapes_paper import CELL
from packetgen.chart.shapes_plain import DIAMONDS, ROUNDS, SQUARES, TRIANGLES
from packetgen.shape_names import SHAPE_NAMES

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


NAMES = SHAPE_NAMES
if set(NAMES) != set(_PILES):
    raise RuntimeError(f"Named or drawn, but not both: {sorted(set(NAMES) ^ set(_PILES))}.")


@cache
def shape(name: str) -> Shape:
    """The shape of this name. Raises KeyError for a name not in `NAMES`."""
    return Shape(name, cut(_PILES[name]))
