"""Checks a tree of nodes against a shape and gives its values, each still knowing its place."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from packetgen.diagnostics import Place, Problems, nearest_of
from packetgen.load.as_list import as_list
from packetgen.load.between_braces import slip, two_measures
from packetgen.load.cut_off import between_quotes
from packetgen.load.merged_lists import parted
from packetgen.load.remarks import complain_of_cut, lost_to_remark
from packetgen.load.right_lines import example_line, for_others, like_others, of_own, with_first
from packetgen.load.schema import (
    Choice,
    Field,
    Group,
    Hex,
    Kind,
    ListOf,
    MapOf,
    Text,
    TextOr,
    Whole,
)
from packetgen.load.set_out import gathered
from packetgen.load.single_values import Asking, read_single
from packetgen.load.values_exchanged import tell_exchanged_values
from packetgen.load.words import counted, listed, offer, said, shown
from packetgen.load.yaml_nodes import Entry, GroupNode, ListNode, Node, TextNode, is_nothing

_NONE = ("none", "no", "nothing", "n/a", "-", "false")

_AN_ENTRY = "an entry of "


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

    def letter(self, number: int) -> Place:
        """The place of one letter, from 0, of a single value that may run over several lines."""
        before = str(self.value)[:number]
        return self.at(number - (before.rfind("\n") + 1), before.count("\n"))


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
        lost = lost_to_remark(node) if isinstance(kind, Text | Hex) else ""
        lost = lost.split()[0] if lost and isinstance(kind, Hex) else lost
        code = "colour-empty" if lost or isinstance(kind, Hex) else "value-empty"
        if quoted := lost and between_quotes(lost):
            example = f"{example.partition(':')[0]}: {quoted}"
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
        hint = f"write for example {of_own(kind, example, node)}"
        if isinstance(kind, Choice) and isinstance(node, ListNode) and len(node.items) > 1:
            hint = kind.several or hint
        elif called.startswith(_AN_ENTRY) and isinstance(node, ListNode) and len(node.items) > 1:
            hint = "take its brackets away, and let each value be an entry of its own"
        problems.add(node.place, "wants-one-value", name=called, shape=_shape(node), hint=hint)
        return Given(None, node.place, False)
    if isinstance(kind, Text):
        complain_of_cut(kind, node, problems)
    value = read_single(kind, node, Asking(called, example, problems))
    return Given(value, node.place, value is not None, text=node)


def read_field(field: Field, node: Node, name: str, problems: Problems, own: str = "") -> Given:
    """The value of `field`, which stands under `name`. `own` is a name of the author's that stands beside it."""
    if isinstance(node, TextNode) and not field.required and _says_none(field.kind, node):
        problems.add(node.place, "none-said", name=said(name), said=said(node.value))
        return Given(None, node.place, False)
    example = example_line(field, name)
    if own and isinstance(field.kind, MapOf) and isinstance(node, TextNode) and node.value:
        example = f"{name}: {{{shown(own)}: {shown(node.value)}}}"
    return read_value(field.kind, node, said(name), example, problems)


def _says_none(kind: Kind, node: TextNode) -> bool:
    """Whether a word says that there is none of what is a list or a group."""
    several = isinstance(kind, ListOf | Group | MapOf)
    return several and node.plain and node.value.casefold() in _NONE


def _shape(node: Node) -> str:
    if isinstance(node, TextNode):
        return said(node.value)
    return "a list" if isinstance(node, ListNode) else "a group of names with values"


def _group(kind: Group, node: Node, called: str, example: str, problems: Problems) -> Given:
    if not isinstance(node, GroupNode):
        example = with_first(kind, node, example)
        problems.add(node.place, "wants-names", name=called, shape=_shape(node), example=example)
        return Given(None, node.place, False)
    fields = {field.name: field for field in kind.fields}
    given: dict[str, Given] = {}
    misspelt: set[str] = set()  # names that are missing only because of a slip, which was reported
    entries = parted(kind, gathered(kind, node, problems), problems)
    whole = True
    told = 0  # entries that a slip before them has spoken of
    for number, (key, value) in enumerate(entries):
        if told:
            told -= 1
            continue
        field = fields.get(key.value) or kind.others
        first = number == 0 or kind.others is not None
        if not number and (missing := _nameless(kind, entries)):
            facts = {"said": said(key.value), "right": f"{missing}: {shown(key.value)}"}
            problems.add(key.place, "name-left-out", **facts)
            given[missing] = Given(None, key.place, False, name_place=key.place)
            continue
        if found := slip(entries, number, fields, first, field):
            place = value.place if found.at_value else key.place
            problems.add(place, found.code, **found.facts)
            given[found.name] = Given(None, place, False, name_place=key.place)
            told = found.entries - 1
            continue
        if field is not None and field is kind.others and is_nothing(value):
            # Who knows those names can tell what it is meant to be.
            given[key.value] = Given((), value.place, False, name_place=key.place)
            continue
        if both := two_measures(kind, entries, number):
            other, right = both
            problems.add(value.place, "two-measures", name=said(key.value), right=right)
            given[key.value] = Given(None, value.place, False, name_place=key.place)
            misspelt.add(other)
            continue
        if field is not None:
            own = _first_of_own(kind, entries)
            given[key.value] = replace(
                read_field(field, value, key.value, problems, own), name_place=key.place
            )
            continue
        whole = False
        if is_nothing(value) and (missing := _numberless(kind, entries, key)):
            facts = {"said": said(key.value), "right": f"{missing}: {shown(key.value)}"}
            problems.add(key.place, "name-left-out", **facts)
            given[missing] = Given(None, key.place, False, name_place=key.place)
            continue
        if is_nothing(value):
            problems.add(key.place, "name-alone", name=said(key.value), what=kind.what)
            continue
        if number and (text := _of_text(fields, entries[number - 1], key)):
            facts = {"name": said(text), "more": said(key.value), "right": f"{shown(text)}: |"}
            problems.add(key.place, "text-goes-on", **facts)
            continue
        hint = offer(key.value, tuple(fields))
        if not hint.startswith("did you mean") and (lost := _only_missing(kind, entries, value)):
            hint = f"did you mean {said(lost)}, which is missing?"
        problems.add(key.place, "name-unknown", name=said(key.value), what=kind.what, hint=hint)
        if hint.startswith("did you mean"):
            misspelt.update(name for name in fields if said(name) in hint)
    failed = [
        (key, value)
        for key, value in entries
        if key.value in fields
        and (read := given.get(key.value))
        and read.text
        and read.value is None
    ]
    if len(failed) > 1:
        tell_exchanged_values(failed, fields, _reads, problems)
    whole = _complete(kind, node, given, misspelt, problems) and whole
    whole = whole and all(value.whole for value in given.values())
    return Given(Filled(given, node.place, whole), node.place, whole)


def _reads(field: Field, node: TextNode, problems: Problems) -> bool:
    return read_field(field, node, field.name, problems).value is not None


def _nameless(kind: Group, entries: tuple[Entry, ...]) -> str:
    """The first name of the group, where the first value between its braces is a text that stands there without it: '{wood
    screw, pieces: 2}'; '' otherwise."""
    (key, value), first = entries[0], kind.fields[0]
    names = tuple(field.name for field in kind.fields)
    there = {name.value for name, _ in entries}
    bare = is_nothing(value) and value.span[0] == key.span[1] and key.value not in names
    needed = first.required and isinstance(first.kind, Text) and first.name not in there
    if not (bare and needed) or kind.others is not None or len(entries) < 2:
        return ""
    return "" if nearest_of(re.split(r"[\s:=]", key.value)[0], names) else first.name


def _numberless(kind: Group, entries: tuple[Entry, ...], key: TextNode) -> str:
    """The one name of a whole number that must be there and is not, where such a number stands without it: '{name: wood
    screw, 2}'; '' otherwise."""
    there = {name.value for name, _ in entries}
    missing = [field for field in kind.fields if field.required and field.name not in there]
    if len(missing) != 1 or not isinstance(missing[0].kind, Whole) or not key.value.isdecimal():
        return ""
    return missing[0].name


def _only_missing(kind: Group, entries: tuple[Entry, ...], value: Node) -> str:
    """The one name that must be there and is not, where only one strange name is there, and its value is of that make;
    '' otherwise."""
    there = {key.value for key, _ in entries}
    missing = [field for field in kind.fields if field.required and field.name not in there]
    strange = there - {field.name for field in kind.fields}
    if len(missing) != 1 or len(strange) != 1:
        return ""
    (field,) = missing
    if isinstance(field.kind, ListOf):
        fits = isinstance(value, ListNode)
    elif isinstance(field.kind, Group | MapOf):
        fits = isinstance(value, GroupNode)
    else:
        fits = isinstance(value, TextNode)
    return field.name if fits else ""


def _of_text(fields: dict[str, Field], before: Entry, key: TextNode) -> str:
    """The name of the text above, of which words before a colon are no name but the next line; '' where they are
    not."""
    name, value = before
    field = fields.get(name.value)
    below = key.place.line > value.place.line and key.place.column == name.place.column
    prose = field is not None and isinstance(field.kind, Text) and isinstance(value, TextNode)
    return name.value if prose and below and key.plain and len(key.value.split()) > 1 else ""


def _first_of_own(kind: Group, entries: tuple[Entry, ...]) -> str:
    """The first name of the author's own, where these are allowed; '' where there is none."""
    if kind.others is None:
        return ""
    fields = {field.name for field in kind.fields}
    return next((name.value for name, _ in entries if name.value not in fields), "")


def _complete(
    kind: Group, node: GroupNode, given: dict[str, Given], misspelt: set[str], problems: Problems
) -> bool:
    """Whether all names are there that must be; what is missing is reported, and `given` gets what is usual for
    the others. Names that are `misspelt` are not missed."""
    fields = {field.name: field for field in kind.fields}
    place = node.place
    facts = {
        "what": kind.what,
        "how": "add it within the braces" if _braced(node) else "add a line",
    }
    complete = True
    for name, field in fields.items():
        if name in given or name in misspelt:
            continue
        if field.required:
            example = example_line(for_others(field, node), name)
            problems.add(place, "name-missing", name=said(name), example=example, **facts)
            complete = False
        elif field.default is not None:
            given[name] = Given(field.default, place)
    for names in kind.one_of:
        there = [name for name in names if name in given]
        if not there and not misspelt.intersection(names):
            example = example_line(fields[names[0]], names[0])
            problems.add(place, "name-missing", name=said(names[0]), example=example, **facts)
        complete = complete and len(there) == 1
    return _apart(kind, given, problems) and complete


def _braced(node: GroupNode) -> bool:
    """Whether it stands between braces, of which the first is its place."""
    first = node.entries[0][0].place if node.entries else node.place
    return first.line == node.place.line and first.column > node.place.column


def _apart(kind: Group, given: dict[str, Given], problems: Problems) -> bool:
    """Whether no two names stand there of which one is in place of the other; all that are in place of the same
    one are reported together, at the last of them."""
    places = {name: one.name_place for name, one in given.items() if one.name_place is not None}
    beside: dict[str, list[str]] = {}
    for *ones, other in (*kind.one_of, *kind.apart):
        if other in places:
            beside.setdefault(other, []).extend(name for name in ones if name in places)
    for other, names in beside.items():
        if not names:
            continue
        both, hint = f"{said(names[0])} and {said(other)} both stand", "keep one of the two"
        if len(names) > 1:
            both, hint = (
                f"{listed(names, 'and')} stand beside {said(other)}",
                f"keep these, or {said(other)}",
            )
        place = max(places[name] for name in (*names, other))
        problems.add(place, "names-instead", both=both, what=kind.what, hint=hint)
    return not any(beside.values())


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

    def read(key: TextNode, value: Node) -> tuple[TextNode, Given]:
        if run := _run_together(key, value):
            facts = {"name": said(run[1]), "right": f"{run[1]}: {{{run[2]}: {shown(run['value'])}"}
            problems.add(key.place, "space-left-out", **facts)
            return replace(key, value=run[1]), Given(None, value.place, False)
        like = like_others(kind, node, key.value, value)
        return key, read_value(kind.kind, value, said(key.value), like, problems)

    entries = tuple(read(key, value) for key, value in node.entries)
    whole = all(value.whole for _, value in entries) and not node.repeated
    return Given(entries, node.place, whole, repeated=node.repeated)


def _run_together(key: TextNode, value: Node) -> re.Match[str] | None:
    """'r:{moss: E2}', where no space parts the author's own name from the braces."""
    text = value.value if isinstance(value, TextNode) else ""
    return re.fullmatch(
        r"([^\s:{}]+):\{([^\s:{}]+)\n(?P<value>[^{}]*\})\s*", f"{key.value}\n{text}"
    )


def _list(kind: ListOf, node: Node, called: str, example: str, problems: Problems) -> Given:
    one = (TextNode, GroupNode) if isinstance(kind.kind, TextOr) else TextNode
    if kind.or_one and isinstance(node, one):
        only = read_value(kind.kind, node, called, example, problems)
        return Given((only,), node.place, only.whole)
    if not isinstance(node, ListNode):
        problems.add(
            node.place,
            "wants-list",
            name=called,
            shape=_shape(node),
            hint=as_list(kind, node, example),
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
    or_none = ", or take its dash away" if len(node.items) > kind.at_least else ""
    items = tuple(
        read_value(
            kind.kind,
            item,
            f"{_AN_ENTRY}{called}",
            f"- {entry}{or_none if is_nothing(item) else ''}",
            problems,
        )
        for item in node.items
    )
    return Given(items, node.place, all(item.whole for item in items))
