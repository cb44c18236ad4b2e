"""The design that a new pattern has until its author draws her own: a sprig in a frame, or in a small one a
few stitches."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from packetgen.model import BARE, Point
from packetgen.starting import LEAST

MARKS = "lfbs"  # leaf, frame, berry, stem: with fewer colours the last ones are left out

_ROOM = 20  # stitches either way that a sprig needs
_LEAF = 9  # columns, at most
_APART = 6  # rows from one leaf to the next
_AROUND = 4  # columns from a leaf's tip to the edge


@dataclass(frozen=True)
class Sprig:
    """A drawn chart, and where its line and its knot go; and what could lie on the bare cloth of its columns
    2 to 4. Corners are written 'column,row', from 1."""

    rows: tuple[str, ...]
    vein: str
    knot: str
    long_stitch: str = "3,6 3,9"
    daisy: str = "3,12 4,10"
    beads: str = "3.5,14.5 4.5,16.5"
    called: str = "a sprig in a frame"
    alt_text: str = "A green sprig with red berries in a plain brown frame."


def sprig(wide: int, high: int, marks: str = MARKS) -> Sprig:
    """The sprig on so many stitches, in no other marks than these of MARKS. From column 2 to 4 all
    is bare cloth, where there is room for a sprig."""
    if min(wide, high) < _ROOM:
        return _few_stitches(wide, high, marks)
    middle, top, ground = _middle(wide, high)
    long = min(_LEAF, middle - _AROUND)
    cells = _frame(wide, high)
    cells |= {(middle, y): "s" for y in range(top, ground + 1)}
    for number, row in enumerate(range(ground - 2, top + long // 2 + 2, -_APART)):
        side = -1 if number % 2 else 1
        cells |= {(middle + side * x, row - y): "l" for x, y in _leaf(long)}
    cells |= {(middle + x, top + y): "b" for x in (-1, 0, 1) for y in (-1, 0, 1)}
    vein, knot = _line_and_knot(wide, high)
    return Sprig(_rows(wide, high, cells, marks), written(*vein), written(knot))


def written(*points: Point) -> str:
    """Points as they stand in a pattern.yaml."""
    return " ".join(f"{x:g},{y:g}" for x, y in points)


def marks_beside(marks: str) -> tuple[str, str]:
    """The marks that the vein and the knot have, on a sprig in these of MARKS."""
    return marks[-1], marks[1 % len(marks)]


def knots_with(vein: tuple[Point, ...]) -> Iterator[Point]:
    """Where the knot is on a sprig, of whatever size, that has this vein; nothing where none has."""
    x, y = vein[0]
    # The vein begins two stitches beside the middle and so many above the lower edge; or a row below a few.
    sizes = ((2 * (x - 2), y + 5), (2 * x + 1, LEAST))
    for wide, high in sizes:
        if min(wide, high) >= LEAST:
            of_size, knot = _line_and_knot(int(wide), int(high))
            if of_size == vein:
                yield knot


def _middle(wide: int, high: int) -> tuple[int, int, int]:
    """The column of the stem, its uppermost row and its lowest."""
    return wide // 2, high // 6 + 2, high - 4


def _line_and_knot(wide: int, high: int) -> tuple[tuple[Point, Point], Point]:
    """The vein of a leaf and the knot of the berry; among a few stitches a line below them."""
    if min(wide, high) < _ROOM:
        left = wide // 2 - 1
        return ((left + 1, 3), (left + 4, 3)), (left + 2.5, 2.5)
    middle, top, ground = _middle(wide, high)
    long = min(_LEAF, middle - _AROUND)
    x, y = middle + 2, ground - 1
    return ((x, y), (x + long - 2, y - long // 2)), (middle + 1.5, top + 1.5)


def _few_stitches(wide: int, high: int, marks: str) -> Sprig:
    """One of each mark below the top of the frame; from the third row on all is bare cloth."""
    left = wide // 2 - 1
    cells = _frame(wide, high) | {(left + x, 1): mark for x, mark in enumerate("lbs")}
    vein, knot = _line_and_knot(wide, high)
    return Sprig(
        _rows(wide, high, cells, marks),
        written(*vein),
        written(knot),
        long_stitch="2,3 2,5",
        daisy="2,5 3,4",
        beads="2.5,3.5 2.5,4.5",
        called="a few stitches in a frame",
        alt_text="Three stitches in a plain brown frame.",
    )


def _frame(wide: int, high: int) -> dict[tuple[int, int], str]:
    return {
        (x, y): "f"
        for x in range(wide)
        for y in range(high)
        if x in (0, wide - 1) or y in (0, high - 1)
    }


def _rows(
    wide: int, high: int, cells: Mapping[tuple[int, int], str], marks: str
) -> tuple[str, ...]:
    drawn = {at: marks[MARKS.index(mark) % len(marks)] for at, mark in cells.items()}
    return tuple("".join(drawn.get((x, y), BARE) for x in range(wide)) for y in range(high))


def _leaf(long: int) -> Iterator[tuple[int, int]]:
    """Columns away from the stem and rows up from the leaf's root."""
    for x in range(1, long + 1):
        for y in range(min(x, long + 1 - x, 3)):
            yield x, x // 2 + y - 1
