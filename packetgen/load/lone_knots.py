"""French knots with bare cloth all round them, where the others of their colour have stitches: their stitches were rubbed
out, or they lie elsewhere."""

from packetgen.diagnostics import Problems
from packetgen.load.words import said
from packetgen.model import Knot, Pattern
from packetgen.model.extent import squares_at, worked_squares

_FEWEST = 3  # knots of one mark, of which some may be told from the others: our own choice


def complain_of_lone_knots(pattern: Pattern, problems: Problems) -> None:
    """Advice on the one knot of a mark, or the knots of one entry, that have no stitch in their squares nor in those round
    them, where each other has one; or none in their squares, where each other has one in all of its own."""
    worked = worked_squares(pattern)
    of_marks: dict[str, list[Knot]] = {}
    for knot in pattern.knots:
        of_marks.setdefault(knot.mark, []).append(knot)
    for mark, knots in of_marks.items():
        alone = [knot for knot in knots if worked.isdisjoint(squares_at(knot.at, 1))]
        others = [knot for knot in knots if not worked.isdisjoint(squares_at(knot.at))]
        # Where the others lie wholly on stitches, one with none in its own squares.
        if not alone and all(worked.issuperset(squares_at(knot.at)) for knot in others):
            alone = [knot for knot in knots if knot not in others]
        lines = {knot.place.line for knot in alone}
        of_entry = [knot for knot in knots if knot.place.line in lines]
        apart = len(alone) == 1 or (len(lines) == 1 and len(alone) == len(of_entry))
        enough = len(others) >= (_FEWEST - 1 if len(alone) == 1 else _FEWEST)
        if apart and enough and len(others) == len(knots) - len(alone):
            of = said(mark)
            one = len(alone) == 1
            facts = {
                "knots": f"this French knot of {of} has"
                if one
                else f"these {len(alone)} French knots of {of} have"
            }
            facts |= {"them": "it" if one else "them", "others": str(len(others))}
            problems.add(alone[0].place, "knot-alone", **facts)
