"""Checks a tree of nodes against a shape and gives its values, each still knowing its place."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from packetgen.diagnostics import Place, Problems
from packetgen.load.cut_off import between_quotes
from packetgen.load.left_out import BULLETS
from packetgen.load.remarks import complain_of_cut, lost_to_remark
from packetgen.load.schema import (
    Field,
    Group,
    Hex,
    Kind,
    ListOf,
    MapOf,
    Points,
    Reference,
    Text,
    TextOr,
)
from packetgen.load.single_values import Asking, read_single
from packetgen.load.words import counted, offer, said, shown
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode, is_nothing, of_points

Entry = tuple[TextNode, Node]
_CURLY = "“”„‘’«»"
# A name and its value between braces, with a space, a bare colon or an equals sign between them.
_RUN_TOGETHER = re.compile(r"""(?P<name>[^\s:="']+)(?:\s*=|[:\s])\s*(?P<value>[^\s:=].*)""")


@dataclass(frozen=True)
class Given:
    """A value as given (or a default). `value` is None where it could not be read;
    that was reported.

    `whole` is false when anything in it, however deep, could not be read; `repeated` says whether a name
    stood twice in lines of the author's own names.
    """

    value: Any
    place: Place
    whole: bool = True
    name_place: Place | None = (
        None  # of the name before the colon, where the author chose that name
    )
    text: TextNode | None = None
    repeated: bool = False

    def at(self, offset: int, line: int = 0) -> Place:
        """The place of one character of a single value."""
        return self.text.at(offset, line) if self.text is not None else self.place


@dataclass(frozen=True)
class Filled:
    """A group of named values. What was left out, or could not be read, has the value None."""

    given: dict[str, Given]
    place: Place
    whole: bool

    def __getitem__(self, name: str) -> Any:
        return self.given[name].value if name in self.given else None

    def each(self, name: str) -> Iterator[Given]:
        """The entries of a list; none where it is missing."""
        yield from self[name] or ()

    def place_of(self, name: str) -> Place:
        return self.given[name].place if name in self.given else self.place


def read_value(kind: Kind, node: Node, called: str, example: str, problems: Problems) -> Given:
    """The value of `node`. What is wrong goes to `problems`.

    called: what a sentence calls the value ("'length'"); example:
    a line that would be right ("length: 8 m").
    """
    if isinstance(node, TextNode) and node.hidden:
        problems.add(node.place, "value-in-remark", name=called)
        return Given(None, node.place, False)
    if isinstance(node, TextNode) and is_nothing(node):
        lost = isinstance(kind, Text) and lost_to_remark(node)
        code = "colour-empty" if lost or isinstance(kind, Hex) else "value-empty"
        example = f"{example.partition(':')[0]}: {between_quotes(lost)}" if lost else example
        problems.add(node.place, code, name=called, example=example)
        return Given(None, node.place, False)
    if isinstance(kind, TextOr):
        kind = kind.group if isinstance(node, GroupNode) else kind.text
    if isinstance(kind, Group):
        return _group(kind, node, called, example, problems)
    if isinstance(kind, MapOf):
        return _map(kind, node, called, example, problems)
    if isinstance(kind, ListOf):
        return _list(kind, node, called, example, problems)
    if not isinstance(node, TextNode):
        problems.add(
            node.place, "wants-one-value", name=called, shape=_shape(node), example=example
        )
        return Given(None, node.place, False)
    if isinstance(kind, Text):
        complain_of_cut(kind, node, problems)
    value = read_single(kind, node, Asking(called, example, problems))
    return Given(value, node.place, value is not None, text=node)


def read_field(field: Field, node: Node, name: str, problems: Problems) -> Given:
    """The value of `field`, which stands under `name`."""
    return read_value(field.kind, node, said(name), _example(field, name), problems)


def _example(field: Field, name: str) -> str:
    """A right line for the field; a list goes on that one line: 'colours: [{number: K4, …}]'."""
    example = field.example
    return f"{name}: [{example[2:]}]" if example.startswith("- ") else f"{name}: {example}"


def _shape(node: Node) -> str:
    if isinstance(node, TextNode):
        return said(node.value)
    return "a list" if isinstance(node, ListNode) else "a group of names with values"


def _as_list(node: Node, example: str) -> str:
    """What makes a list of what is none."""
    if isinstance(node, TextNode) and node.plain and re.match(r"-\w", node.value):
        return f"put a space after each dash: - {shown(node.value[1:].split(' -')[0])}"
    if isinstance(node, TextNode) and node.plain and re.match(rf"[{BULLETS}] +[^\s:]", node.value):
        entry = node.value[1:].split(f" {node.value[0]} ")[0].strip()
        return f"begin each entry with a hyphen and a space: - {shown(entry)}"
    return f"put brackets round it, or a dash before each entry, for example {example}"


def _with_first(kind: Group, node: Node, example: str) -> str:
    """The example of a group with what the author wrote in place of the name that it begins with."""
    first = kind.fields[0]
    if not isinstance(node, TextNode) or not isinstance(first.kind, Reference):
        return example
    begun = f"{{{first.name}: {first.example}"
    return example.replace(begun, f"{{{first.name}: {shown(node.value)}")


def _group(kind: Group, node: Node, called: str, example: str, problems: Problems) -> Given:
    if not isinstance(node, GroupNode):
        example = _with_first(kind, node, example)
        problems.add(node.place, "wants-names", name=called, shape=_shape(node), example=example)
        return Given(None, node.place, False)
    fields = {field.name: field for field in kind.fields}
    given: dict[str, Given] = {}
    misspelt: set[str] = set()  # names that are missing only because of a slip, which was reported
    entries = _gathered(kind, node, problems)
    whole = True
    rest = ""  # the quote at whose end a text ends that its commas have cut into several names
    commas = 0  # by which points without quotes are cut into so many names more
    for number, (key, value) in enumerate(entries):
        if rest:
            rest = "" if key.value.endswith(rest) else rest
            continue
        if commas:
            commas -= 1
            continue
        apart = _run_together(key, value)
        # Elsewhere it may be the end of a text that had a comma, of which name-alone speaks.
        if apart and (
            number == 0 or kind.others or apart["name"] in fields or apart["value"][0] in "\"'"
        ):
            text, rest = _text_of(apart["value"], entries[number + 1 :])
            right = f"{shown(apart['name'])}: {shown(text)}"
            bare = key.value[len(apart["name"])] == ":"
            hint = f"put a space after the colon: {right}" if bare else f"write {right}"
            problems.add(key.place, "colon-left-out", name=said(apart["name"]), hint=hint)
            given[apart["name"]] = Given(None, key.place, False, name_place=key.place)
            continue
        field = fields.get(key.value) or kind.others
        if field is not None and isinstance(field.kind, Points):
            behind = tuple(_points_behind(entries[number + 1 :]))
            if behind and isinstance(value, TextNode) and value.plain:
                text = ",".join((value.value, *behind))
                points = text.strip(_CURLY)
                problems.add(
                    value.place,
                    "points-unquoted",
                    quotes="quotes" if points == text else "straight quotes",
                    example=f'{key.value}: "{shown(points)}"',
                )
                given[key.value] = Given(None, value.place, False, name_place=key.place)
                commas = len(behind)
                continue
        if field is not None and field is kind.others and is_nothing(value):
            # Who knows those names can tell what it is meant to be.
            given[key.value] = Given((), value.place, False, name_place=key.place)
            continue
        if field is not None:
            given[key.value] = replace(
                read_field(field, value, key.value, problems), name_place=key.place
            )
            continue
        whole = False
        if is_nothing(value):
            problems.add(key.place, "name-alone", name=said(key.value), what=kind.what)
            continue
        hint = offer(key.value, tuple(fields))
        problems.add(key.place, "name-unknown", name=said(key.value), what=kind.what, hint=hint)
        if hint.startswith("did you mean"):
            misspelt.update(name for name in fields if said(name) in hint)
    for name, field in fields.items():
        if name in given or name in misspelt:
            continue
        if field.required:
            example = _example(field, name)
            problems.add(
                node.place, "name-missing", name=said(name), what=kind.what, example=example
            )
            whole = False
        elif field.default is not None:
            given[name] = Given(field.default, node.place)
    for names in kind.one_of:
        there = [name for name in names if name in given]
        if not there and not misspelt.intersection(names):
            example = _example(fields[names[0]], names[0])
            problems.add(
                node.place, "name-missing", name=said(names[0]), what=kind.what, example=example
            )
        elif len(there) > 1:
            later = max((given[name].name_place or node.place) for name in there)
            one, other = (said(name) for name in there[:2])
            problems.add(later, "names-instead", name=one, other=other, what=kind.what)
        whole = whole and len(there) == 1
    whole = whole and all(value.whole for value in given.values())
    return Given(Filled(given, node.place, whole), node.place, whole)


def _gathered(kind: Group, node: GroupNode, problems: Problems) -> tuple[Entry, ...]:
    """The entries of a group. One that is set in by less than the lines above it, to which it belongs, is reported
    and put among them."""
    fields = {field.name: field for field in kind.fields}
    entries: list[Entry] = []
    for key, value in node.entries:
        name, above = entries[-1] if entries else (key, value)
        known = key.value in fields or kind.others or name.value not in fields
        group = None if known else _last_lines(above)
        if not group or not _fits(fields[name.value].kind, group, key, value):
            entries.append((key, value))
            continue
        spaces = counted(group.place.column - 1, "space")
        facts = {"name": said(key.value), "other": said(name.value), "spaces": spaces}
        problems.add(key.place, "name-set-out", what=kind.what, **facts)
        whole: Node = replace(group, entries=(*group.entries, (key, value)))
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


def _fits(kind: Kind, group: GroupNode, key: TextNode, value: Node) -> bool:
    """Whether a line `key: value` would be right in the group: by its own name, or where these are the author's
    choice, by the names that it has as the lines there have them."""
    if isinstance(kind, MapOf):
        return bool(_names(value) & {name for _, other in group.entries for name in _names(other)})
    kind = kind.kind if isinstance(kind, ListOf) else kind
    named = isinstance(kind, Group) and any(field.name == key.value for field in kind.fields)
    return named and all(name.value != key.value for name, _ in group.entries)


def _points_behind(entries: Sequence[tuple[TextNode, Node]]) -> Iterator[str]:
    """The pieces of points that stand next, as names without a value: '1 4', '2.5'."""
    for key, value in entries:
        if not of_points(key, value):
            return
        yield key.value


def _run_together(key: TextNode, value: Node) -> re.Match[str] | None:
    """The name and the value of which both stand in `key`, since no colon with a space parts them."""
    if not (key.plain and is_nothing(value) and value.span[0] == key.span[1]):
        return None
    return _RUN_TOGETHER.fullmatch(key.value)


def _text_of(begun: str, entries: Sequence[tuple[TextNode, Node]]) -> tuple[str, str]:
    """A text with what its commas have parted from it, and its quote where that is so."""
    quote = begun[0]
    words = [begun]
    if quote not in "\"'" or (len(begun) > 1 and begun.endswith(quote)):
        return begun, ""
    for key, _ in entries:
        words.append(key.value)
        if key.value.endswith(quote):
            return ",".join(words), quote
    return begun, ""


def _map(kind: MapOf, node: Node, called: str, example: str, problems: Problems) -> Given:
    if not isinstance(node, GroupNode):
        problems.add(
            node.place,
            "wants-lines",
            name=called,
            what=kind.of,
            shape=_shape(node),
            example=example,
        )
        return Given(None, node.place, False)
    entries = tuple(
        (
            key,
            read_value(
                kind.kind, value, said(key.value), f"{shown(key.value)}: {kind.example}", problems
            ),
        )
        for key, value in node.entries
    )
    whole = all(value.whole for _, value in entries) and not node.repeated
    return Given(entries, node.place, whole, repeated=node.repeated)


def _list(kind: ListOf, node: Node, called: str, example: str, problems: Problems) -> Given:
    one = (TextNode, GroupNode) if isinstance(kind.kind, TextOr) else TextNode
    if kind.or_one and isinstance(node, one):
        only = read_value(kind.kind, node, called, example, problems)
        return Given((only,), node.place, only.whole)
    if not isinstance(node, ListNode):
        problems.add(
            node.place, "wants-list", name=called, shape=_shape(node), hint=_as_list(node, example)
        )
        return Given(None, node.place, False)
    if len(node.items) < kind.at_least:
        problems.add(node.place, "list-empty", name=called, example=example)
        return Given(None, node.place, False)
    if len(node.items) > kind.at_most:
        number = counted(len(node.items), "entry", "entries")
        problems.add(node.place, "list-long", name=called, number=number, limit=kind.at_most)
        return Given(None, node.place, False)
    entry = example.partition(": ")[2].removeprefix("[").removesuffix("]")
    items = tuple(
        read_value(kind.kind, item, f"an entry of {called}", f"- {entry}", problems)
        for item in node.items
    )
    return Given(items, node.place, all(item.whole for item in items))
