"""The author's pattern.yaml after a change: only what says where something lies is written anew.

Numbers keep their decimals, and values their quotes. What falls off the chart goes, and so do key
lines in which nothing is left to work.
"""

import re
from collections.abc import Iterator

from packetgen.chart_edit.change import Change
from packetgen.chart_edit.design import stretches
from packetgen.chart_edit.windows import Window, window_after
from packetgen.chart_edit.yaml_text import Exchanges, Patch, YamlText, patched, quoted
from packetgen.diagnostics import Place
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode
from packetgen.model import Stitch

_PAIR = re.compile(r"(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)", re.ASCII)
_HALVES = (Stitch.HALF.value, Stitch.HALF_BACK.value)
# Lists of what lies on points → the name of the points in an entry, and whether they are a path.
_ON_POINTS = {
    "backstitch": ("path", True),
    "long_stitch": ("path", True),
    "lazy_daisies": ("path", True),
    "french_knots": ("at", False),
    "beads": ("at", False),
}


class CannotBeTold(Exception):
    """Something that the loader can read and that cannot be written anew; `place` is where it stands."""

    def __init__(self, place: Place) -> None:
        super().__init__(str(place))
        self.place = place


def pattern_text(text: str, root: GroupNode, change: Change, gone: frozenset[str]) -> str:
    """pattern.yaml after the change, without the key lines of the marks in `gone`.

    Raises CannotBeTold.
    """
    yaml = YamlText(text)
    patches: list[Patch] = []
    for name, of in root.entries:
        if isinstance(of, GroupNode) and name.value == "key":
            patches += yaml.exchanged(_leaning(yaml, of, change))
            if gone:
                patches += yaml.without(name, of, gone)
        elif isinstance(of, ListNode) and of.items and name.value == "close_ups":
            copies = [_moved_window(yaml, item, change) for item in of.items]
            patches += yaml.copied(name, of, copies)
        elif isinstance(of, ListNode) and of.items and name.value in _ON_POINTS:
            points, is_path = _ON_POINTS[name.value]
            copies = [list(_moved_points(yaml, item, points, is_path, change)) for item in of.items]
            patches += yaml.copied(name, of, copies)
    return patched(text, patches)


def symbols_text(text: str, root: GroupNode, gone: frozenset[str]) -> str:
    """symbols.yaml without the marks in `gone`."""
    yaml = YamlText(text)
    for name, symbols in root.entries:
        if isinstance(symbols, GroupNode) and gone & {mark.value for mark, _ in symbols.entries}:
            return patched(text, yaml.without(name, symbols, gone))
    return text


def order_text(text: str, root: GroupNode, after: str, new: str) -> str:
    """series.yaml with the pattern `new` in its order after another; as it is where it has no order."""
    for name, order in root.entries:
        if name.value == "order" and isinstance(order, ListNode):
            names = [item.value if isinstance(item, TextNode) else "" for item in order.items]
            return patched(text, YamlText(text).with_entry(order, names.index(after), new))
    return text


def titled(text: str, root: GroupNode, title: str) -> str:
    """pattern.yaml with another title."""
    return patched(text, YamlText(text).exchanged({_value(root, "title"): quoted(title)}))


def _value(group: Node, name: str) -> TextNode:
    """The single value of a name that the loader has found there."""
    if isinstance(group, GroupNode):
        for key, value in group.entries:
            if key.value == name and isinstance(value, TextNode):
                return value
    raise CannotBeTold(group.place)


def _leaning(yaml: YamlText, key: GroupNode, change: Change) -> Exchanges:
    """The other half stitch in every key line that is worked in one, where they lean otherwise now."""
    found: dict[TextNode, str] = {}
    for _, line in key.entries if change.leans else ():
        for name, value in line.entries if isinstance(line, GroupNode) else ():
            if name.value == "stitch" and isinstance(value, TextNode) and value.value in _HALVES:
                other = _HALVES[value.value == _HALVES[0]]
                found[value] = yaml.written(value).replace(value.value, other)
    return found


def _moved_points(
    yaml: YamlText, item: Node, name: str, is_path: bool, change: Change
) -> Iterator[Exchanges]:
    """The entry once for each stretch of its path that stays, or once with the points that stay."""
    node = _value(item, name)
    old = tuple((float(x), float(y)) for x, y in _PAIR.findall(node.value))
    if is_path:
        staying = [list(points) for points in stretches(old, change)]
    else:
        there = [point for point in map(change.point, old) if change.holds_point(point)]
        staying = [there] if there else []
    for points in staying:
        if len(points) == len(old):
            yield {node: _in_place(yaml, node, change)}
        else:
            yield {node: quoted(" ".join(f"{x:g},{y:g}" for x, y in points))}


def _in_place(yaml: YamlText, node: TextNode, change: Change) -> str:
    """All pairs of a value exchanged where they stand."""
    written = yaml.written(node)
    head, rest = _body(written)
    if len(_PAIR.findall(rest)) != len(node.value.split()):
        raise CannotBeTold(node.place)
    return head + _PAIR.sub(lambda match: _moved_pair(match[1], match[2], change), rest)


def _body(written: str) -> tuple[str, str]:
    """The line of a block's bar, where there is one, and what is the value itself."""
    if written[:1] in "|>":
        head, end, rest = written.partition("\n")
        return head + end, rest
    return "", written


def _moved_pair(across: str, down: str, change: Change) -> str:
    x, y = change.point((float(across), float(down)))
    # What is added is whole, so a number needs as many decimals as it had.
    places = [len(one.partition(".")[2]) for one in (across, down)]
    of_x, of_y = reversed(places) if change.swapped else places
    return f"{x:.{of_x}f},{y:.{of_y}f}"


def _moved_window(yaml: YamlText, item: Node, change: Change) -> list[Exchanges]:
    """The close-up at its new place, with its rows turned; none where it has left the chart."""
    at, rows = _value(item, "at"), _value(item, "rows")
    column, row = (int(part) for part in at.value.split(","))
    lines = tuple(line.rstrip() for line in rows.value.rstrip().split("\n"))
    window = window_after(Window(column, row, lines), change)
    if window is None:
        return []
    spot = _PAIR.sub(f"{window.column},{window.row}", yaml.written(at))
    return [{at: spot, rows: _rows_written(yaml, rows, window)}]


def _rows_written(yaml: YamlText, node: TextNode, window: Window) -> str:
    """A block of rows as deep in as it was; rows that were between quotes stay there."""
    written = yaml.written(node)
    if not written.startswith("|") or not node.line_places:
        return quoted("\n".join(window.rows))
    head, _ = _body(written)
    indent = " " * (node.line_places[0].column - 1)
    return head + "\n".join(indent + row for row in window.rows)
