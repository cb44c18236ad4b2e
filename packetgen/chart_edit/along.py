"""What lies on a chart beside its stitches, carried along where a drawing moved them."""

from dataclasses import replace

from packetgen.chart_edit.change import Change
from packetgen.chart_edit.pattern_text import CannotBeTold, pattern_text
from packetgen.diagnostics import Problems
from packetgen.load.yaml_nodes import GroupNode, read_nodes


def carried_along(text: str, change: Change) -> str | None:
    """pattern.yaml with all of that as far to the right and down as the stitches of a chart that is not turned; None
    where some of it would fall off, or cannot be written anew."""
    back = replace(
        change,
        old_width=change.width,
        old_height=change.height,
        width=change.old_width,
        height=change.old_height,
        left=-change.left,
        top=-change.top,
    )
    carried = _after(text, change)
    whole = carried is not None and _after(carried, back) == text
    return carried if whole else None


def _after(text: str, change: Change) -> str | None:
    root = read_nodes(text, "", Problems())
    if not isinstance(root, GroupNode):
        return None
    try:
        return pattern_text(text, root, change, frozenset())
    except (CannotBeTold, ValueError):  # what is no number is told of the file itself
        return None
