"""What makes a list of what an author wrote in place of one, in her own words where they can be told."""

import re

from packetgen.diagnostics import nearest_of
from packetgen.load.left_out import BULLETS
from packetgen.load.schema import Choice, Group, ListOf, Reference
from packetgen.load.words import shown
from packetgen.load.yaml_nodes import Node, TextNode

_MOST_GROUPS = 2  # of several, in one line
_PLAIN = re.compile(r"[\w.-]+")  # needs no quotes


def as_list(kind: ListOf, node: Node, example: str) -> str:
    """What makes a list of what is none."""
    if isinstance(node, TextNode) and node.plain and re.fullmatch(r"[^\[\]]+\]", node.value):
        return f"its opening bracket is missing: write {example.partition(':')[0]}: [{shown(node.value)}"
    if isinstance(node, TextNode) and not isinstance(kind.kind, Group):
        meant = node.value
        if isinstance(kind.kind, Choice):
            meant = nearest_of(node.value, kind.kind.options) or ""
        own = f"{example.partition(':')[0]}: [{shown(meant)}]"
        example = own if re.fullmatch(r"[\w-]+(?:, *[\w-]+)*", meant) else example
    if isinstance(node, TextNode) and node.plain and re.match(r"-\w", node.value):
        return f"put a space after each dash: - {shown(node.value[1:].split(' -')[0])}"
    if isinstance(node, TextNode) and node.plain and re.match(rf"[{BULLETS}] +[^\s:]", node.value):
        entry = node.value[1:].split(f" {node.value[0]} ")[0].strip()
        return f"begin each entry with a hyphen and a space: - {shown(entry)}"
    if isinstance(node, TextNode) and isinstance(kind.kind, Group):
        own = _as_groups(kind.kind, node.value)
        name = example.partition(":")[0]
        return f"write {name}: [{own}]" if own else f"write for example {example}"
    return f"put brackets round it, or a dash before each entry, for example {example}"


def _as_groups(kind: Group, text: str) -> str:
    """'{cloth: moss-14, colour: frost}, {…}' of 'moss-14 frost, …'; the first few of many. '' where any is none."""
    groups = [as_group(kind, entry) for entry in text.split(",")]
    if not all(groups):
        return ""
    return ", ".join((*groups[:_MOST_GROUPS], *["…"] * (len(groups) > _MOST_GROUPS)))


def as_group(kind: Group, text: str) -> str:
    """'{cloth: moss-14, colour: frost}' of 'moss-14 frost', where it has as many words as must be given and begins with
    what names something; '' of other words."""
    words = text.replace(",", " ").split()
    needed = [field for field in kind.fields if field.required]
    if len(words) != len(needed) or not all(map(_PLAIN.fullmatch, words)):
        return ""
    if not isinstance(needed[0].kind, Reference):
        return ""
    return f"{{{', '.join(f'{field.name}: {word}' for field, word in zip(needed, words))}}}"
