"""A line that is set in by less than the lines above it, to which it belongs: it is told once, and read as if it stood
among them."""

from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.load.schema import Group, Kind, ListOf, MapOf
from packetgen.load.words import counted, said
from packetgen.load.yaml_nodes import Entry, GroupNode, ListNode, Node, TextNode, is_nothing

_STEP = 2  # spaces that are usual below a name


def gathered(kind: Group, node: GroupNode, problems: Problems) -> tuple[Entry, ...]:
    """The entries of a group. One that is set in by less than the lines above it, to which it belongs, or no more
    than a name above it that has nothing of its own yet, is reported and put where it belongs."""
    fields = {field.name: field for field in kind.fields}
    entries: list[Entry] = []
    for key, value in node.entries:
        name, above = entries[-1] if entries else (key, value)
        known = key.value in fields or kind.others or name.value not in fields
        group = None if known else _last_lines(above) or _empty(name, above)
        if not group or not _fits(fields[name.value].kind, group, key, value):
            entries.append((key, value))
            continue
        before = max(group.place.column - 1, name.place.column - 1 + _STEP)
        spaces = counted(before, "space")
        facts = {"name": said(key.value), "other": said(name.value), "spaces": spaces}
        problems.add(key.place, "name-set-out", what=kind.what, **facts)
        place = group.place if group.entries else key.place
        whole: Node = replace(group, entries=(*group.entries, (key, value)), place=place)
        if isinstance(above, ListNode):
            whole = replace(above, items=(*above.items[:-1], whole))
        entries[-1] = (name, whole)
    return tuple(entries)


def _names(node: Node) -> set[str]:
    return {name.value for name, _ in node.entries} if isinstance(node, GroupNode) else set()


def _last_lines(node: Node) -> GroupNode | None:
    """The names on lines of their own, of the last entry if it is a list, to which one line more would belong."""
    if isinstance(node, ListNode) and node.items:
        node = node.items[-1]
    in_lines = (
        isinstance(node, GroupNode) and node.entries and node.place == node.entries[0][0].place
    )
    return node if in_lines and isinstance(node, GroupNode) else None


def _empty(name: TextNode, value: Node) -> GroupNode | None:
    """The group that a name without a value stands for, if lines below it are its."""
    return GroupNode((), name.place) if is_nothing(value) and name.plain else None


def _fits(kind: Kind, group: GroupNode, key: TextNode, value: Node) -> bool:
    """Whether a line `key: value` would be right in the group: by its own name, or where these are the author's
    choice, by the names that it has as the lines there have them."""
    if isinstance(kind, MapOf) and not group.entries:
        return isinstance(value, GroupNode)
    if isinstance(kind, ListOf) and not group.entries:
        return False  # its entries have dashes
    if isinstance(kind, MapOf):
        return bool(_names(value) & {name for _, other in group.entries for name in _names(other)})
    kind = kind.kind if isinstance(kind, ListOf) else kind
    named = isinstance(kind, Group) and any(field.name == key.value for field in kind.fields)
    return named and all(name.value != key.value for name, _ in group.entries)
