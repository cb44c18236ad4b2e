"""The text of symbols.yaml, which keeps the chart symbols of a pattern as they are."""

from collections.abc import Mapping

_REMARKS = """\
# The chart symbol of each mark of the key, kept so that editing a colour moves no other symbol.
# Written by `packetgen settle`. You may change a shape, or take a line out to have it given anew;
# `symbol:` in a key line goes before what stands here.
"""


def symbols_file(shapes: Mapping[str, str]) -> str:
    """YAML with the shape of each mark, in the order given."""
    lines = "".join(f"  {_quoted(mark)}: {shape}\n" for mark, shape in shapes.items())
    return f"{_REMARKS}symbols:\n{lines}"


def _quoted(mark: str) -> str:
    escaped = mark.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{escaped}"'
