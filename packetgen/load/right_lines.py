"""A right line for what an author wrote wrongly, with her own words in it as far as they can be told."""

import re
from dataclasses import replace

from packetgen.load.as_list import as_group
from packetgen.load.dates import is_rule
from packetgen.load.schema import (
    Cell,
    Field,
    Group,
    Kind,
    MapOf,
    Pair,
    Points,
    Reference,
    Rule,
    Text,
)
from packetgen.load.words import shown
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode, is_nothing

_NUMBER = re.compile(r"\d{1,6}(?:\.\d{1,4})?", re.ASCII)


def example_line(field: Field, name: str) -> str:
    """A right line for the field; a list goes on that one line: 'colours: [{number: K4, …}]'."""
    example = field.example
    return f"{name}: [{example[2:]}]" if example.startswith("- ") else f"{name}: {example}"


def of_own(kind: Kind, example: str, node: Node) -> str:
    """The example with the only value of a list that the author wrote in place of it, or, of points, with all."""
    if isinstance(kind, Points | Cell | Pair) and isinstance(node, ListNode):
        items = [one.value if isinstance(one, TextNode) else "" for one in node.items]
        points = " ".join(map(",".join, zip(items[::2], items[1::2])))
        right = not len(items) % 2 and all(map(_NUMBER.fullmatch, items))
        return f'{example.partition(":")[0]}: "{shown(points)}"' if right else example
    if isinstance(kind, Reference) and isinstance(node, ListNode) and node.items:
        node = replace(node, items=node.items[:1])
    alone = node.items[0] if isinstance(node, ListNode) and len(node.items) == 1 else None
    if not isinstance(alone, TextNode) or is_nothing(alone):
        return example
    if example.startswith("- "):
        return f"- {shown(alone.value)}"
    return f"{example.partition(':')[0]}: {shown(alone.value)}"


def with_first(kind: Group, node: Node, example: str) -> str:
    """The example of a group with what the author wrote in place of the name that it begins with."""
    first = kind.fields[0]
    if not isinstance(node, TextNode) or not isinstance(first.kind, Reference | Text):
        return example
    if own := as_group(kind, node.value):
        return re.sub(r"\{.*\}", own, example)
    named, _, last = (part.strip() for part in node.value.rpartition(","))
    for field in kind.fields:  # what is a day is no name
        if isinstance(field.kind, Rule) and named and is_rule(last):
            both = f"{{{first.name}: {shown(named)}, {field.name}: {shown(last)}}}"
            return f"{example.partition('{')[0]}{both}"
        if isinstance(field.kind, Rule) and is_rule(node.value):
            return re.sub(
                rf"\b{field.name}: [^,}}]+", f"{field.name}: {shown(node.value)}", example
            )
    begun = f"{{{first.name}: {first.example}"
    return example.replace(begun, f"{{{first.name}: {shown(node.value)}")


def for_others(field: Field, node: GroupNode) -> Field:
    """The field with the example that suits what stands beside it."""
    there = {name.value: one.value for name, one in node.entries if isinstance(one, TextNode)}
    suits = [example for name, value, example in field.example_for if there.get(name) == value]
    return replace(field, example=suits[0]) if suits else field


def like_others(kind: MapOf, node: GroupNode, name: str, value: Node) -> str:
    """A right line for an entry, of the same make as another that is right, with what the author wrote in it."""
    groups = (one.entries for _, one in node.entries if isinstance(one, GroupNode) and one.entries)
    like = next((entries for entries in groups if isinstance(entries[0][1], TextNode)), None)
    if not isinstance(kind.kind, Group) or like is None:
        return f"{shown(name)}: {kind.example}"
    first, usual = like[0]
    meant = value if isinstance(value, TextNode) and not is_nothing(value) else usual
    text = meant.value if isinstance(meant, TextNode) else ""
    pairs = [part.split() for part in text.split(",")]
    names = {key.value for key, _ in like}
    if not all(len(pair) == 2 and pair[0] in names for pair in pairs):
        pairs = [[first.value, text]]
    own = ", ".join(f'{shown(one)}: "{shown(other)}"' for one, other in pairs)
    return f"{shown(name)}: {{{own}}}"
