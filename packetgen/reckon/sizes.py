"""How large a chart becomes on a cloth, and how much cloth to cut.

A stitch over `over` threads of a cloth of `count` threads in an inch is a square cell of
25.4 · over / count mm, since the inch is 25.4 mm exactly.
"""

from dataclasses import dataclass

from packetgen.model import Pattern, Weave
from packetgen.units import MM_PER_INCH

# Cloth left round the stitching for a framer: common practice, no source.
FRAMING_MARGIN_MM = 3 * MM_PER_INCH

# The counts a shop usually has, and how they are worked: common practice, no source.
USUAL_COUNTS: tuple[tuple[Weave, int, int], ...] = (
    *((Weave.AIDA, count, 1) for count in (11, 14, 16, 18, 20)),
    *((Weave.EVENWEAVE, count, 2) for count in (25, 28, 32, 36, 40)),
    *((Weave.EVENWEAVE, count, 1) for count in (25, 28, 32, 36, 40)),
)


@dataclass(frozen=True)
class Size:
    width_mm: float
    height_mm: float

    def grown(self, margin_mm: float) -> "Size":
        """The size with `margin_mm` more on each of the four sides."""
        return Size(self.width_mm + 2 * margin_mm, self.height_mm + 2 * margin_mm)


@dataclass(frozen=True)
class UsualSize:
    """One row of the table of usual counts."""

    weave: Weave
    count_per_inch: int
    over: int
    finished: Size
    framing_cut: Size


def cell_mm(count_per_inch: float, over: int) -> float:
    """The side of one stitch."""
    return MM_PER_INCH * over / count_per_inch


def finished_size(width_stitches: int, height_stitches: int, cell: float) -> Size:
    return Size(width_stitches * cell, height_stitches * cell)


def usual_sizes(pattern: Pattern) -> tuple[UsualSize, ...]:
    """The design's size on every usual count, whether or not its author offers that cloth."""

    def row(weave: Weave, count: int, over: int) -> UsualSize:
        size = finished_size(pattern.grid.width, pattern.grid.height, cell_mm(count, over))
        return UsualSize(weave, count, over, size, size.grown(FRAMING_MARGIN_MM))

    return tuple(row(*usual) for usual in USUAL_COUNTS)
