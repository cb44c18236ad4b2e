"""Entries that stand in the list above the one they are of, whose name is still a remark or stands elsewhere."""

from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.load.schema import Below, Group, all_below
from packetgen.load.words import listed, said
from packetgen.load.yaml_nodes import Entry, GroupNode, ListNode, Node


def without_astray(root: GroupNode, shape: Group, problems: Problems) -> GroupNode:
    """The file without them, each told in one line."""
    below = {one.name: one for one in all_below(shape)}
    lines = {key.value: key.place.line for key, _ in root.entries}
    return replace(
        root, entries=tuple(_without(entry, below, lines, problems) for entry in root.entries)
    )


def _without(
    entry: Entry, below: dict[str, Below], lines: dict[str, int], problems: Problems
) -> Entry:
    key, value = entry
    own = below.get(key.value)
    if own is None or not own.names or not isinstance(value, ListNode):
        return entry
    kept: list[Node] = []
    for item in value.items:
        home = _home(item, own, below)
        if not home or not isinstance(item, GroupNode):
            kept.append(item)
            continue
        there = lines.get(home.name)
        names = listed([name.value for name, _ in item.entries], "and")
        facts = {"names": names, "home": said(home.name), "here": said(key.value)}
        facts["mend"] = (
            f"move it below that name, which stands on line {there}"
            if there
            else f"write a line {home.name}: above it, or take the # away from the one that is there"
        )
        problems.add(item.place, "entry-astray", **facts)
    return (key, replace(value, items=tuple(kept))) if len(kept) < len(value.items) else entry


def _home(item: Node, own: Below, below: dict[str, Below]) -> Below | None:
    """The list that an entry is of, if it has no name of its own list's, and all that the other asks for."""
    if not isinstance(item, GroupNode):
        return None
    names = frozenset(name.value for name, _ in item.entries)
    homes = [] if names & own.names else [one for one in below.values() if one.has(names)]
    return homes[0] if len(homes) == 1 else None
