"""Checks a tree of nodes against a shape and gives its values, each still knowing its place."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from packetgen.diagnostics import Place, Problems
from packetgen.load.schema import Group, Hex, Kind, ListOf, MapOf
from packetgen.load.single_values import Asking, read_single
from packetgen.load.words import counted, offer, said
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode


@dataclass(frozen=True)
class Given:
    """A value as given (or a default). `value` is None where it could not be read; that was reported.

    `whole` is false when anything in it, however deep, could not be read.
    """

    value: Any
    place: Place
    whole: bool = True
    name_place: Place | None = None  # of the name before the colon, where the author chose that name
    text: TextNode | None = None

    def at(self, offset: int, line: int = 0) -> Place:
        """The place of one character of a single value."""
        return self.text.at(offset, line) if self.text is not None else self.place


@dataclass(frozen=True)
class Filled:
    """A group of named values. Names that were left out, or could not be read, have the value None."""

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


def read_value(kind: Kind, node: Node, name: str, example: str, problems: Problems) -> Given:
    """The value of the field `name`, of which `example` is one. What is wrong goes to `problems`."""
    if isinstance(kind, Group):
        return _group(kind, node, name, example, problems)
    if isinstance(kind, MapOf):
        return _map(kind, node, name, example, problems)
    if isinstance(kind, ListOf):
        return _list(kind, node, name, example, problems)
    if not isinstance(node, TextNode):
        shape = "a list" if isinstance(node, ListNode) else "a group of names with values"
        problems.add(node.place, "wants-one-value", name=said(name), shape=shape, example=_line(name, example))
        return Given(None, node.place, False)
    if not node.value.strip() and node.plain:
        return _empty(kind, node, name, example, problems)
    value = read_single(kind, node, Asking(name, example, problems))
    return Given(value, node.place, value is not None, text=node)


def _line(name: str, example: str) -> str:
    return f"{name}: {example}"


def _empty(kind: Kind, node: TextNode, name: str, example: str, problems: Problems) -> Given:
    code = "colour-empty" if isinstance(kind, Hex) else "value-empty"
    problems.add(node.place, code, name=said(name), example=_line(name, example))
    return Given(None, node.place, False)


def _listed(example: str) -> str:
    """An example of a list on one line: '- {…}' → '[{…}]'."""
    return f"[{example[2:]}]" if example.startswith("- ") else example


def _is_empty(node: Node) -> bool:
    return isinstance(node, TextNode) and node.plain and not node.value


def _group(kind: Group, node: Node, name: str, example: str, problems: Problems) -> Given:
    if _is_empty(node):
        return _empty(kind, node, name, example, problems)
    if not isinstance(node, GroupNode):
        shape = "a list" if isinstance(node, ListNode) else said(node.value)
        problems.add(node.place, "wants-names", name=said(name), shape=shape, example=_line(name, example))
        return Given(None, node.place, False)
    fields = {field.name: field for field in kind.fields}
    given: dict[str, Given] = {}
    misspelt: set[str] = set()  # names that are missing only because of a slip, which was reported
    whole = True
    for key, value in node.entries:
        field = fields.get(key.value)
        if field is not None:
            given[field.name] = read_value(field.kind, value, field.name, field.example, problems)
        elif kind.others is not None:
            read = read_value(kind.others.kind, value, key.value, kind.others.example, problems)
            given[key.value] = replace(read, name_place=key.place)
        elif _is_empty(value):
            problems.add(key.place, "name-alone", name=said(key.value), what=kind.what)
            whole = False
        else:
            hint = offer(key.value, tuple(fields))
            problems.add(key.place, "name-unknown", name=said(key.value), what=kind.what, hint=hint)
            misspelt.update(field for field in fields if f"'{field}'?" in hint)
            whole = False
    missing = [field for field in kind.fields if field.name not in given and field.name not in misspelt]
    for field in missing:
        if field.required:
            problems.add(node.place, "name-missing", name=said(field.name), what=kind.what, example=_line(field.name, field.example))
            whole = False
        elif field.default is not None:
            given[field.name] = Given(field.default, node.place)
    whole = whole and all(value.whole for value in given.values())
    return Given(Filled(given, node.place, whole), node.place, whole)


def _map(kind: MapOf, node: Node, name: str, example: str, problems: Problems) -> Given:
    if _is_empty(node):
        return _empty(kind, node, name, example, problems)
    if not isinstance(node, GroupNode):
        shape = "a list" if isinstance(node, ListNode) else said(node.value)
        example = _line(name, example) if example.startswith("{") else example
        problems.add(node.place, "wants-lines", name=said(name), what=kind.of, shape=shape, example=example)
        return Given(None, node.place, False)
    entries = tuple(
        (key, read_value(kind.kind, value, key.value, kind.example, problems)) for key, value in node.entries
    )
    return Given(entries, node.place, all(value.whole for _, value in entries))


def _list(kind: ListOf, node: Node, name: str, example: str, problems: Problems) -> Given:
    if _is_empty(node):
        return _empty(kind, node, name, example, problems)
    if kind.or_one and isinstance(node, TextNode):
        only = read_value(kind.kind, node, name, example, problems)
        return Given((only,), node.place, only.whole)
    if not isinstance(node, ListNode):
        shape = said(node.value) if isinstance(node, TextNode) else "a group of names with values"
        problems.add(node.place, "wants-list", name=said(name), shape=shape, example=_line(name, _listed(example)))
        return Given(None, node.place, False)
    if len(node.items) < kind.at_least:
        problems.add(node.place, "list-empty", name=said(name), example=_line(name, _listed(example)))
        return Given(None, node.place, False)
    if len(node.items) > kind.at_most:
        problems.add(node.place, "list-long", name=said(name), number=counted(len(node.items), "entry", "entries"), limit=kind.at_most)
        return Given(None, node.place, False)
    entry = example.removeprefix("- ").strip("[]")  # one entry of an example of the list
    items = tuple(read_value(kind.kind, item, name, entry, problems) for item in node.items)
    return Given(items, node.place, all(item.whole for item in items))
