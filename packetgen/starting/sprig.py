"""The design that a new pattern has until its author draws her own: a sprig in a frame, of any size."""

from collections.abc import Iterator
from dataclasses import dataclass

from packetgen.model import BARE

MARKS = "lfbs"  # leaf, frame, berry, stem: with fewer colours the last ones are left out

_LEAF = 9  # columns, at most
_APART = 6  # rows from one leaf to the next
_AROUND = 4  # columns from a leaf's tip to the edge


@dataclass(frozen=True)
class Sprig:
    """A drawn chart, and where its line and its knot go; corners are written 'column,row', from 1."""

    rows: tuple[str, ...]
    vein: str
    knot: str


def sprig(wide: int, high: int, marks: str = MARKS) -> Sprig:
    """The sprig on so many stitches, in no other marks than these of MARKS. From column 2 to 4 all
    is bare cloth."""
    middle, top, ground = wide // 2, high // 6 + 2, high - 4
    long = min(_LEAF, middle - _AROUND)
    cells = {(x, y): "f" for x in range(wide) for y in (0, high - 1)}
    cells |= {(x, y): "f" for y in range(high) for x in (0, wide - 1)}
    cells |= {(middle, y): "s" for y in range(top, ground + 1)}
    for number, row in enumerate(range(ground - 2, top + long // 2 + 2, -_APART)):
        side = -1 if number % 2 else 1
        cells |= {(middle + side * x, row - y): "l" for x, y in _leaf(long)}
    cells |= {(middle + x, top + y): "b" for x in (-1, 0, 1) for y in (-1, 0, 1)}
    drawn = {at: marks[MARKS.index(mark) % len(marks)] for at, mark in cells.items()}
    root = middle + 2, ground - 1
    return Sprig(
        tuple("".join(drawn.get((x, y), BARE) for x in range(wide)) for y in range(high)),
        vein=f"{root[0]},{root[1]} {root[0] + long - 2},{root[1] - long // 2}",
        knot=f"{middle + 1.5:g},{top + 1.5:g}",
    )


def _leaf(long: int) -> Iterator[tuple[int, int]]:
    """Columns away from the stem and rows up from the leaf's root."""
    for x in range(1, long + 1):
        for y in range(min(x, long + 1 - x, 3)):
            yield x, x // 2 + y - 1
