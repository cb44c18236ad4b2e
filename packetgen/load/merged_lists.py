"""Two lists that have become one, since the line with the name of the second is gone: it is told once, and both are
read as if the line stood there."""

from collections.abc import Collection, Iterator

from packetgen.diagnostics import Problems
from packetgen.load.schema import Field, Group, Kind, ListOf, TextOr, all_below
from packetgen.load.words import said
from packetgen.load.yaml_nodes import Entry, GroupNode, ListNode, Node, TextNode


def parted(kind: Group, entries: tuple[Entry, ...], problems: Problems) -> tuple[Entry, ...]:
    """The entries of a group, with lists parted again that a line had parted which is gone; that is reported."""
    return tuple(one for entry in entries for one in _parted_list(kind, entry, entries, problems))


def _parted_list(
    kind: Group, entry: Entry, entries: Collection[Entry], problems: Problems
) -> Iterator[Entry]:
    name, value = entry
    own = None
    if isinstance(value, ListNode) and len(value.items) > 1:
        own = next((field.kind for field in kind.fields if field.name == name.value), None)
    if not isinstance(own, ListOf) or not isinstance(value, ListNode):
        yield entry
        return
    there = {key.value for key, _ in entries}
    missing = tuple(field for field in kind.fields if field.name not in there)
    begins = next((at for at, item in enumerate(value.items) if not _like(own.kind, item)), 0)
    lost = _meant(kind, missing, value.items[begins]) if begins else ""
    if not lost or any(_like(own.kind, item) for item in value.items[begins:]):
        yield entry
        return
    place = value.items[begins].place
    where = "at the margin" if name.place.column == 1 else f"set in as far as {said(name.value)}"
    facts = {"name": said(f"{lost}:"), "other": said(name.value), "where": where}
    problems.add(place, "name-gone-within", **facts)
    yield name, ListNode(value.items[:begins], value.place, value.span)
    gone = TextNode(lost, place)
    yield gone, ListNode(value.items[begins:], place, value.span)


def _like(kind: Kind, item: Node) -> bool:
    """Whether an entry may be meant for such a list: a group has a name of its own there, beside what all have."""
    if isinstance(kind, TextOr):
        return isinstance(item, TextNode) or _like(kind.group, item)
    if not isinstance(kind, Group):
        return isinstance(item, TextNode)
    return isinstance(item, GroupNode) and not _strange(kind, item)


def _strange(kind: Group, item: GroupNode) -> bool:
    """Whether most of an entry's names have no place in the group."""
    names = {name.value for name, _ in item.entries}
    return 2 * len(names - {field.name for field in kind.fields}) >= len(names)


def _meant(kind: Group, missing: tuple[Field, ...], item: Node) -> str:
    """The name of the one list that is missing and to which an entry belongs; '' if there is none or several."""
    lists = {field.name: field.kind.kind for field in missing if isinstance(field.kind, ListOf)}
    if isinstance(item, TextNode):
        needed = {field.name for field in missing if field.required}
        fitting = [name for name in needed & {*lists} if _like(lists[name], item)]
    elif isinstance(item, GroupNode):
        names = frozenset(name.value for name, _ in item.entries)
        have = {below.name for below in all_below(kind) if below.has(names)}
        fitting = [name for name in lists if name in have]
    else:
        return ""
    return fitting[0] if len(fitting) == 1 else ""
