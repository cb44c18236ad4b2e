"""An edge of a picture at which a part of a stitch is left over in the design's own colours: it was cut off there, mostly.

What lies round a chart is its margin or frame, in one colour.
"""

import numpy as np

from packetgen.bring.cells import Found, Raster, sampled
from packetgen.nouns import listed

_LEAST = 1 / 4  # of a stitch: less may be a line between two; our own choice
_COLOURS = 2  # that a margin has not: our own choice


def cut_edges(rgba: np.ndarray, found: Found) -> str:
    """'5 px at the left edge are no whole stitch and have colours of the drawing: look whether it is cut off there'; ''
    where there is no such edge."""
    packed = np.ascontiguousarray(rgba).view(np.uint32)[..., 0]
    drawn = np.unique(sampled(packed, found))
    left, right = _left_over(found.across, found.cell_px, packed.shape[1])
    top, bottom = _left_over(found.down, found.cell_px, packed.shape[0])
    strips = {
        "left": packed[:, :left],
        "right": packed[:, packed.shape[1] - right :],
        "upper": packed[:top],
        "lower": packed[packed.shape[0] - bottom :],
    }
    wide = {"left": left, "right": right, "upper": top, "lower": bottom}
    cut = [
        f"{wide[edge]} px at the {edge} edge"
        for edge, strip in strips.items()
        if wide[edge] >= _LEAST * found.cell_px
        and np.isin(np.unique(strip), drawn).sum() >= _COLOURS
    ]
    if not cut:
        return ""
    return f"{listed(tuple(cut))} are no whole stitch and have colours of the drawing: look whether it is cut off there"


def _left_over(side: Raster, cell_px: float, length_px: int) -> tuple[int, int]:
    """Pixels before the first whole stitch and behind the last, without the lines beside them."""
    line_px = cell_px - side.pure_px
    before = side.start_px - line_px
    behind = length_px - (side.start_px + (side.number - 1) * cell_px + side.pure_px) - line_px
    return max(0, round(before)), max(0, round(behind))
