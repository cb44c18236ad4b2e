"""Whether a picture bears out the size of stitch that was found in it.

Where soft shapes are drawn without any stitches, some size explains their edges a little better than half a
width aside does. But then other sizes, which have nothing to do with it, do so nearly as well; of a picture
that has stitches they explain next to nothing. The method is our own; the limits are from 400 soft drawings
without stitches and 330 enlarged charts that were softened or saved with loss, made for it. Of 120 other such
drawings two were still taken for charts, where without it one of three got a size.
"""

import numpy as np

from packetgen.bring.comb import Comb, combs_at

# Times the size that was found; no halves, wholes and thirds of it, which explain a chart too.
_OTHERS = (0.7, 0.77, 0.83, 0.88, 1.13, 1.19, 1.27, 1.36, 1.45)
_LEAST_NUMBER = 8  # of stitches along the longer side
_LEAST_PX = 2.2
_CLEAR = 0.25  # doubt: such a picture needs nothing else
_FARTHER = 0.29  # doubt that most other sizes leave more
_TIMES = 2  # of a guess: what it explains, in what any other size but one does


def borne_out(rgba: np.ndarray, comb: Comb) -> bool:
    """Whether the size can be told to the author as one that is seen in the picture, height × width × 4."""
    if max(comb.across.number, comb.down.number) < _LEAST_NUMBER:
        return False
    if comb.on_lattice or comb.doubt < _CLEAR:
        return True
    sizes = (comb.cell_px * times for times in _OTHERS)
    fit = (size for size in sizes if _LEAST_PX <= size <= min(rgba.shape[:2]) / 2)
    doubts = sorted(other.doubt for other in combs_at(rgba, fit))
    if len(doubts) < 2 or np.median(doubts) - comb.doubt < _FARTHER:
        return False
    return comb.believed or 1 - comb.doubt >= _TIMES * (1 - doubts[1])
