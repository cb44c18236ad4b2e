"""Stitches that stand alone in a chart of numbers, and taking the colour of a neighbour instead.

A stitch stands alone as `packetgen.reckon.isolated` has it: none of the eight around it is of its colour.
"""

from collections import Counter
from collections.abc import Iterator

import numpy as np

from packetgen.bring.drawing import Cells

_AROUND = [(y, x) for y in (-1, 0, 1) for x in (-1, 0, 1) if (y, x) != (0, 0)]


def alone(cells: Cells) -> np.ndarray:
    """Where a stitch stands alone: height × width of true and false."""
    padded = np.pad(cells, 1)
    height, width = cells.shape
    like = np.zeros(cells.shape, bool)
    for y, x in _AROUND:
        like |= padded[1 + y : 1 + y + height, 1 + x : 1 + x + width] == cells
    return ~like & (cells != 0)


def tidied(cells: Cells, apart: np.ndarray, most: float) -> tuple[Cells, Counter[tuple[int, int]]]:
    """The cells without stitches that stand alone, as far as a stitch loses at most `most`;
    and how many went from one number to another.

    `apart[a, b]` is the difference (CIEDE2000) of the numbers a and b. Of the colours around it a stitch
    takes the nearest, of equals the one with most neighbours, then the one with the lower number. Bare
    cloth stays bare, and no stitch becomes bare. A stitch that leaves its colour leaves nobody alone,
    since it stood alone itself: so their number only falls.
    """
    cells = cells.copy()
    changed: Counter[tuple[int, int]] = Counter()
    while True:
        before = changed.total()
        for y, x in zip(*(of.tolist() for of in np.nonzero(alone(cells)))):
            own = int(cells[y, x])
            near = Counter(_neighbours(cells, y, x))
            if own in near or not near:
                continue
            best = min(near, key=lambda other: (apart[own, other], -near[other], other))
            if apart[own, best] <= most:
                cells[y, x] = best
                changed[own, best] += 1
        if changed.total() == before:
            return cells, changed


def _neighbours(cells: Cells, y: int, x: int) -> Iterator[int]:
    height, width = cells.shape
    for down, right in _AROUND:
        if 0 <= y + down < height and 0 <= x + right < width and cells[y + down, x + right]:
            yield int(cells[y + down, x + right])
