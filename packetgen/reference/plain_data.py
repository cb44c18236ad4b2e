"""An author's file as editors and JSON Schema see it: each value with the type that YAML gives it.

Types are those of the core schema of YAML 1.2.2 (10.3). The project itself reads every value as the
characters that stand there; here '07' becomes the number 7, and a name with nothing after it becomes null.
"""

import re

from packetgen.diagnostics import Problems
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode, read_nodes

Json = str | int | float | bool | None | list["Json"] | dict[str, "Json"]

_NULL = re.compile(r"null|Null|NULL|~|")
_TRUE_FALSE = re.compile(r"true|True|TRUE|false|False|FALSE")
_INTEGER = re.compile(r"[-+]?[0-9]+")
_OTHER_BASE = re.compile(r"0o[0-7]+|0x[0-9a-fA-F]+")
_FLOAT = re.compile(r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]{1,3})?")


def from_text(text: str) -> Json:
    """The value that a YAML text holds; None also where it holds none or cannot be read."""
    node = read_nodes(text, "", Problems())
    return None if node is None else from_node(node)


def from_node(node: Node) -> Json:
    """The value of a tree."""
    if isinstance(node, GroupNode):
        return {key.value: from_node(value) for key, value in node.entries}
    if isinstance(node, ListNode):
        return [from_node(item) for item in node.items]
    return _typed(node)


def _typed(node: TextNode) -> Json:
    text = node.value
    if not node.plain:
        return text
    if _NULL.fullmatch(text):
        return None
    if _TRUE_FALSE.fullmatch(text):
        return text.lower() == "true"
    if _INTEGER.fullmatch(text) and len(text) < 400:
        return int(text)
    if _OTHER_BASE.fullmatch(text):
        return int(text, 0)
    if _FLOAT.fullmatch(text) and len(text) < 400:
        return float(text)
    return text
