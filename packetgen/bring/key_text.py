"""The `key:` block of a pattern.yaml: what stands there already, and the same file with another block.

Only these lines are exchanged. A key line that stays, stays as it was written, with the remarks above it.
"""

import re
from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from packetgen.bring.offers import without_offers
from packetgen.colour import blended
from packetgen.load.shape_pattern import ON_THE_CHART
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode
from packetgen.model import Colour, Stitch, ThreadCard

# What lies on a chart and names its marks or its cells.

_OF_EXAMPLE = re.compile(r"([^#]*\}\s+# )example .*")
_PLAIN = re.compile(r"[A-Za-z][A-Za-z0-9-]*(?: [A-Za-z0-9-]+)*")
# Words that some readers of YAML take for yes, no or nothing (YAML 1.1, bool and null).
_SPECIAL = {"y", "n", "yes", "no", "true", "false", "on", "off", "null"}


@dataclass(frozen=True)
class KnownLine:
    """A line of the key that the pattern has."""

    mark: str
    colour: Colour  # as it is drawn; of a blend both names, and the mixture
    number: str  # of the set's own card; '' where it is a blend or of another card
    stitch: Stitch

    @property
    def hex(self) -> str:
        return self.colour.hex

    @property
    def plain(self) -> bool:
        """Whether it is a full cross in one thread of the set's own card."""
        return self.stitch is Stitch.FULL and bool(self.number)


def known_lines(
    pattern: GroupNode, set_name: str, cards: Mapping[str, ThreadCard | None], card_id: str
) -> tuple[KnownLine, ...]:
    """The lines of the key whose thread in the set `set_name`, of the card `card_id`, can be told."""
    found = []
    kinds = {one.value: one for one in Stitch}
    for key, value in _key_entries(pattern):
        threads = _threads(entry(value, set_name), cards, card_id)
        kind = word(entry(value, "stitch")) or Stitch.FULL.value
        if len(key.value) != 1 or not threads or kind not in kinds:
            continue
        own = threads[0][1].number if len(threads) == 1 and threads[0][0] == card_id else ""
        colours = [colour for _, colour in threads]
        drawn = Colour(
            "+".join(one.number for one in colours),
            " and ".join(one.name for one in colours),
            blended(tuple(one.hex for one in colours)),
        )
        found.append(KnownLine(key.value, drawn, own, kinds[kind]))
    return tuple(found)


def marks_elsewhere(pattern: GroupNode) -> frozenset[str]:
    """The marks of its key that lines, daisies, knots and close-ups of a pattern.yaml name; of others a new chart decides."""
    of_key = {key.value for key, _ in _key_entries(pattern)}
    marks = set()
    for name in ON_THE_CHART:
        node = entry(pattern, name)
        for item in node.items if isinstance(node, ListNode) else ():
            marks |= {word(entry(item, "colour"))} | set(word(entry(item, "rows")))
    return frozenset(marks & of_key)


def key_line(mark: str, numbers: Mapping[str, str], stitch: Stitch, name: str) -> str:
    """One line of a key: the number of its thread in each set, and its name as a remark; with it why a
    letter stands between quotes."""
    parts = [f"{quoted(name)}: {quoted(number)}" for name, number in numbers.items()]
    if stitch is not Stitch.FULL:
        parts.append(f"stitch: {stitch.value}")
    remark = " ".join(name.split())
    if mark.lower() in _SPECIAL:
        remark += f" ({mark} in quotes: alone it can mean {'yes' if mark in 'yY' else 'no'})"
    return f"  {quoted(mark)}: {{{', '.join(parts)}}}   # {remark}"


def with_key(
    text: str,
    pattern: GroupNode,
    kept: Collection[str],
    new: Sequence[str],
    named: Mapping[str, str] = MappingProxyType({}),
) -> str:
    """The file with the key lines of the marks `kept` as they are, its other key lines gone, and `new`
    after them. A file without a key gets one at its end. Where a remark behind a line is still the name of an
    example's colour, it becomes the one that the line's colour is `named` by its mark."""
    lines = text.split("\n")
    for key, _ in _key_entries(pattern):
        line = lines[key.place.line - 1]
        if (found := _OF_EXAMPLE.fullmatch(line)) and key.value in named:
            lines[key.place.line - 1] = found[1] + " ".join(named[key.value].split())
    where, end = _lines_of(lines, pattern, "key")
    if not where:
        return text.rstrip("\n") + "\n" + "\n".join(("key:", *new)) + "\n"
    entries = _key_entries(pattern)
    starts = [_with_remarks(lines, key.place.line) for key, _ in entries]
    old: list[str] = []
    if len(set(starts)) < len(starts) or min(starts, default=0) <= where:
        for key, value in entries:  # all between brackets, perhaps on one line
            written = " ".join(text[key.span[0] : value.span[1]].split())
            old += [f"  {written}"] if key.value in kept else []
        head = "key:"
    else:
        for (key, _), first, after in zip(entries, starts, [*starts[1:], end + 1]):
            old += lines[first - 1 : after - 1] if key.value in kept else []
        head = lines[where - 1]
    gone = {key.value for key, _ in entries} - set(kept)
    above, below = (without_offers(part, gone) for part in (lines[: where - 1], lines[end:]))
    return "\n".join((*above, head, *old, *new, *below))


def without_entries(text: str, pattern: GroupNode, names: Collection[str]) -> str:
    """The file without the entries of these names and what stands in them. Remarks above one of them and
    below it stay apart: they do not speak of the same."""
    lines = text.split("\n")
    spans = [_lines_of(lines, pattern, name) for name in names if entry(pattern, name) is not None]
    for first, last in sorted(spans, reverse=True):
        between = first > 1 and all(
            one[:1] == "#" for one in (lines[first - 2], *lines[last : last + 1])
        )
        lines[first - 1 : last] = [""] if between else []
    return "\n".join(lines)


def remarks_gone(before: str, after: str) -> int:
    """How many lines of remarks the file had and has no longer."""
    old, new = (
        Counter(line.strip() for line in text.splitlines() if line.lstrip().startswith("#"))
        for text in (before, after)
    )
    return (old - new).total()


def with_value(text: str, pattern: GroupNode, name: str, value: str) -> str:
    """The file with a single value of that name at its margin."""
    node = entry(pattern, name)
    if isinstance(node, TextNode):
        return text[: node.span[0]] + quoted(value) + text[node.span[1] :]
    return f"{text.rstrip()}\n{name}: {quoted(value)}\n"


def quoted(text: str) -> str:
    """The word for a YAML file, between quotes unless nobody could read it otherwise."""
    if _PLAIN.fullmatch(text) and text.lower() not in _SPECIAL:
        return text
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


def entry(node: Node | None, name: str) -> Node | None:
    """What stands under a name."""
    if not isinstance(node, GroupNode):
        return None
    return next((value for key, value in node.entries if key.value == name), None)


def word(node: Node | None) -> str:
    """A single value; '' where there is none."""
    return node.value if isinstance(node, TextNode) else ""


def words(node: Node | None) -> tuple[str, ...]:
    """The single values of a list."""
    return tuple(word(item) for item in node.items) if isinstance(node, ListNode) else ()


def _key_entries(pattern: GroupNode) -> tuple[tuple[TextNode, Node], ...]:
    node = entry(pattern, "key")
    return node.entries if isinstance(node, GroupNode) else ()


def _lines_of(lines: list[str], pattern: GroupNode, name: str) -> tuple[int, int]:
    """First and last line of an entry at the margin, from 1; 0 where there is none. Remarks at the margin
    just above what follows belong to that."""
    where = next((key.place.line for key, _ in pattern.entries if key.value == name), 0)
    after = [key.place.line for key, _ in pattern.entries if key.place.line > where]
    end = min(after, default=len(lines) + 1) - 1
    while end > where and (not lines[end - 1].strip() or lines[end - 1].startswith("#")):
        end -= 1
    return where, end


def _with_remarks(lines: list[str], start: int) -> int:
    while lines[start - 2].lstrip().startswith("#"):
        start -= 1
    return start


def _threads(
    node: Node | None, cards: Mapping[str, ThreadCard | None], card_id: str
) -> list[tuple[str, Colour]]:
    """(card, colour) of one thread or a blend; none where it cannot be told."""
    found = []
    for one in node.items if isinstance(node, ListNode) else (node,):
        of = word(entry(one, "card")) if isinstance(one, GroupNode) else card_id
        number = word(entry(one, "number")) if isinstance(one, GroupNode) else word(one)
        card = cards.get(of)
        if card is None or number not in card.colours:
            return []
        found.append((of, card.colours[number]))
    return found
