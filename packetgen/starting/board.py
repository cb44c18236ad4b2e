"""The finishing piece that a new series has until its author draws her own: a plant label."""

from dataclasses import dataclass
from math import ceil

from packetgen.reckon.sizes import cell_mm

_OVER_MM, _CAP_MM, _POINT_MM = (
    8,
    12,
    20,
)  # how far the cap stands over and how high it is; the point
_BORDER_MM, _FREE_WOOD_MM = 6, 12


@dataclass(frozen=True)
class Board:
    """A label with a cap above it and a point below. Its outlines are in mm, ready to be written."""

    wide_mm: int
    high_mm: int
    border_mm: int = _BORDER_MM

    @property
    def label_at(self) -> str:
        return f"{_OVER_MM},{_CAP_MM}"

    @property
    def panel(self) -> str:
        return _rectangle(_OVER_MM, _CAP_MM, self.wide_mm, self.high_mm)

    @property
    def hook(self) -> str:
        """A corner of the panel."""
        return _rectangle(_OVER_MM, _CAP_MM, 4, 4)

    @property
    def cap(self) -> str:
        return _rectangle(0, 0, self.wide_mm + 2 * _OVER_MM, _CAP_MM)

    @property
    def label(self) -> str:
        middle, high = self.wide_mm // 2, self.high_mm
        point = f"{middle + _POINT_MM},{high} {middle},{high + 2 * _POINT_MM} {middle - _POINT_MM},{high}"
        return f"0,0 {self.wide_mm},0 {self.wide_mm},{high} {point} 0,{high}"


def board_for(wide: int, high: int, count_per_inch: float) -> Board:
    """So large that a design of so many stitches, mounted, leaves some wood free on cloth of that count."""
    cell = cell_mm(count_per_inch, 1)
    wide_mm, high_mm = (
        ceil(stitches * cell) + 2 * (_BORDER_MM + _FREE_WOOD_MM) for stitches in (wide, high)
    )
    return Board(wide_mm, high_mm)


def _rectangle(left: int, top: int, wide: int, high: int) -> str:
    right, bottom = left + wide, top + high
    return f"{left},{top} {right},{top} {right},{bottom} {left},{bottom}"
