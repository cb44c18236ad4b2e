"""Charts as designers draw them, made here: patches of colour with ragged edges, no noise.

Smooth random fields, cut into as many levels as there are colours. The same chart every time.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby
from random import Random

from packetgen.model import Pattern
from tests.many_colours import MARKS, many_coloured, wheel


@dataclass(frozen=True)
class Size:
    width: int
    height: int
    colours: int

    @property
    def stitches(self) -> int:
        return self.width * self.height


SIZES = {
    "small": Size(105, 105, 12),
    "medium": Size(250, 200, 40),
    "large": Size(500, 400, 60),
}
# (random values across the chart, weight): broad patches, and their ragged edges.
_FIELDS = ((3, 1.0), (9, 0.4), (90, 0.06))


def chart(size: Size) -> Pattern:
    """A chart of this size without bare cells, in which each colour has about as many stitches."""
    return many_coloured(rows(size), wheel(size.colours))


def rows(size: Size) -> tuple[str, ...]:
    random = Random(f"{size}")
    fields = [
        (list(_field(size, max(2, size.width // across), random)), w) for across, w in _FIELDS
    ]
    heights = [
        sum(weight * values[place] for values, weight in fields) for place in range(size.stitches)
    ]
    by_height = sorted(range(size.stitches), key=heights.__getitem__)
    marks = [""] * size.stitches
    for rank, place in enumerate(by_height):
        marks[place] = MARKS[rank * size.colours // size.stitches]
    return tuple(
        "".join(marks[start : start + size.width]) for start in range(0, size.stitches, size.width)
    )


def mean_run(of: tuple[str, ...]) -> float:
    """How many stitches of one colour stand beside each other in a row, on average."""
    return sum(map(len, of)) / sum(1 for row in of for _ in groupby(row))


def _field(size: Size, step: int, random: Random) -> Iterator[float]:
    """A value from 0 to 1 for each stitch, row by row, blended from random ones `step` apart."""
    across, down = size.width // step + 2, size.height // step + 2
    lattice = [[random.random() for _ in range(across)] for _ in range(down)]
    for y in range(size.height):
        above, below, share_y = *lattice[y // step : y // step + 2], _eased(y % step / step)
        line = [a + (b - a) * share_y for a, b in zip(above, below)]
        for x in range(size.width):
            left, right = line[x // step : x // step + 2]
            yield left + (right - left) * _eased(x % step / step)


def _eased(share: float) -> float:
    return share * share * (3 - 2 * share)
