"""The line and the knot of the design that a new pattern begins with, where its author has left them."""

from collections.abc import Sequence

from packetgen.bring.key_text import entry, word
from packetgen.diagnostics import Problems
from packetgen.load.examples import Left, complain_of_left
from packetgen.load.shape_pattern import ON_THE_CHART
from packetgen.load.yaml_nodes import GroupNode, ListNode
from packetgen.model import Pattern
from packetgen.starting import LEAST, MOST
from packetgen.starting.sprig import MARKS, knots_with, marks_beside, sprig

_SPRIGS = tuple(MARKS[: n + 1] for n in range(len(MARKS)))  # a card may have fewer colours


def lines_of_example(pattern: GroupNode, rows: Sequence[str]) -> tuple[str, ...]:
    """The entries of a pattern.yaml that lie on its chart, where chart and entries are still the very
    example; none where anything of them is the author's own."""
    there = tuple(name for name in ON_THE_CHART if entry(pattern, name) is not None)
    wide, high = len(rows[0]) if rows else 0, len(rows)
    if not there or not LEAST <= min(wide, high) <= max(wide, high) <= MOST:
        return ()
    for marks in _SPRIGS:
        example = sprig(wide, high, marks)
        if example.rows != tuple(rows):
            continue
        last, second = marks_beside(marks)
        begun = {
            "backstitch": {"colour": last, "path": example.vein},
            "french_knots": {"colour": second, "at": example.knot},
        }
        return there if all(_values(pattern, name) == begun.get(name) for name in there) else ()
    return ()


def complain_of_example_lines(pattern: Pattern, problems: Problems) -> None:
    """Advice on the example's line and knot, where a pattern has both: on whatever chart they lie now, since
    nobody draws them so by chance."""
    knots = {(knot.mark, knot.at): knot.place for knot in pattern.knots}
    beside = [marks_beside(marks) for marks in _SPRIGS]
    for line in pattern.lines:
        at = next(knots_with(line.points), None)
        places = [knots.get((knot, at)) for mark, knot in beside if at and mark == line.mark]
        for place in filter(None, places):
            found = Left(line.place, "backstitch"), Left(place, "french_knots")
            complain_of_left(found, problems)
            return


def _values(pattern: GroupNode, name: str) -> dict[str, str] | None:
    """What stands in the only item of a list; None where there are more."""
    node = entry(pattern, name)
    if not isinstance(node, ListNode) or len(node.items) != 1:
        return None
    item = node.items[0]
    if not isinstance(item, GroupNode):
        return None
    return {key.value: " ".join(word(value).split()) for key, value in item.entries}
