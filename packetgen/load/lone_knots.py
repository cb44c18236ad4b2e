"""A French knot with bare cloth all round it, where the others of its colour have stitches: its stitches were rubbed out, or
it lies elsewhere."""

from packetgen.diagnostics import Problems
from packetgen.load.words import said
from packetgen.model import Knot, Pattern
from packetgen.model.extent import squares_at, worked_squares

_FEWEST = 3  # knots of one mark, of which one may be told from the others: our own choice


def complain_of_lone_knot(pattern: Pattern, problems: Problems) -> None:
    """Advice on the one knot of a mark that has no stitch in its square nor in those round it, where each other has one."""
    worked = worked_squares(pattern)
    of_marks: dict[str, list[Knot]] = {}
    for knot in pattern.knots:
        of_marks.setdefault(knot.mark, []).append(knot)
    for mark, knots in of_marks.items():
        alone = [knot for knot in knots if worked.isdisjoint(squares_at(knot.at, 1))]
        others = [knot for knot in knots if not worked.isdisjoint(squares_at(knot.at))]
        if len(knots) >= _FEWEST and len(alone) == 1 and len(others) == len(knots) - 1:
            facts = {"mark": said(mark), "others": len(others)}
            problems.add(alone[0].place, "knot-alone", **facts)
