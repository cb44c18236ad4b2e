"""A French knot with bare cloth all round it, where the others of its colour have stitches: its stitches were rubbed out, or
it lies elsewhere."""

from collections.abc import Sequence
from math import ceil, floor

from packetgen.diagnostics import Problems
from packetgen.load.words import said
from packetgen.model import BARE, Knot, Pattern, Point

_FEWEST = 3  # knots of one mark, of which one may be told from the others: our own choice


def complain_of_lone_knot(pattern: Pattern, problems: Problems) -> None:
    """Advice on the one knot of a mark that has no stitch in its square nor in those round it, where each other has one."""
    worked = {(one.column, one.row) for one in pattern.fractions}
    worked |= {
        (x, y)
        for y, row in enumerate(pattern.grid.rows, 1)
        for x, mark in enumerate(row, 1)
        if mark != BARE
    }
    of_marks: dict[str, list[Knot]] = {}
    for knot in pattern.knots:
        of_marks.setdefault(knot.mark, []).append(knot)
    for mark, knots in of_marks.items():
        alone = [knot for knot in knots if worked.isdisjoint(_squares(knot.at, 1))]
        others = [knot for knot in knots if not worked.isdisjoint(_squares(knot.at, 0))]
        if len(knots) >= _FEWEST and len(alone) == 1 and len(others) == len(knots) - 1:
            facts = {"mark": said(mark), "others": len(others)}
            problems.add(alone[0].place, "knot-alone", **facts)


def _squares(at: Point, round_it: int) -> Sequence[tuple[int, int]]:
    """Columns and rows of the squares that the point touches, and of so many round them."""
    across, down = (range(ceil(one) - 1 - round_it, floor(one) + 1 + round_it) for one in at)
    return [(x, y) for x in across for y in down]
