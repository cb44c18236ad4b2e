"""YAML read as plain text with places: with `yaml_events` the only module that knows the YAML library.

Every single value stays the author's own characters ('07', 'no', '1e3', '2026-02-30'); what it
means is decided by the schema alone. Anchors, tags and second documents are refused: they have no
use in an author's file.
"""

import re
from dataclasses import dataclass
from functools import lru_cache
from typing import NoReturn, cast

import yaml

from packetgen.diagnostics import Place, Problem, Problems
from packetgen.load.characters import describe, unseen
from packetgen.load.explained import Explained
from packetgen.load.half_remarks import names_hidden, remarks_in_texts, value_hidden
from packetgen.load.left_out import colon_before_bracket, entry_too_deep, no_dash_before
from packetgen.load.quotes import ended_by_next, not_closed, runs_over_names
from packetgen.load.schema import Below
from packetgen.load.sure import sure
from packetgen.load.syntax import explain, facts_unquoted, spaces_before
from packetgen.load.words import LOST, counted, said
from packetgen.load.yaml_events import events

DEEPEST = 12
MOST_VALUES = 50_000
_FAR_ESCAPE = re.compile(r"\\U(?!000|0010)|^%", re.ASCII)
_OF_POINTS = re.compile(r"""[\d. ]+[”“’»"']?""", re.ASCII)
_REMARK = re.compile(r" +#[^\n]*")
_INDENT = re.compile(r"^[ \t\u00a0\u2000-\u200a\u3000]*")


@dataclass(frozen=True)
class TextNode:
    """A single value. `line_places` are those of its lines' first characters, where known;
    `span` is from where to where it stands in the file's text, its quotes included. A plain one `ends` there,
    with `behind` it a remark, the spaces before that included. Of a value that is missing, `hidden` says whether
    it stands below as a remark.
    """

    value: str
    place: Place
    plain: bool = True
    line_places: tuple[Place, ...] = ()
    span: tuple[int, int] = (0, 0)
    ends: Place = Place("")
    behind: str = ""
    hidden: bool = False

    def at(self, offset: int, line: int = 0) -> Place:
        """The place of one character of the value; of the whole value where that cannot be told."""
        if line >= len(self.line_places):
            return self.place
        start = self.line_places[line]
        return Place(start.path, start.line, start.column + offset)


def is_nothing(node: "Node") -> bool:
    """Whether nothing at all stands where a value should."""
    return isinstance(node, TextNode) and node.plain and not node.value


def of_points(name: TextNode, value: "Node") -> bool:
    """Whether it is no name but a piece of points that stand between braces without quotes: '1 4'."""
    return is_nothing(value) and bool(_OF_POINTS.fullmatch(name.value))


@dataclass(frozen=True)
class ListNode:
    items: "tuple[Node, ...]"
    place: Place
    span: tuple[int, int] = (0, 0)


@dataclass(frozen=True)
class GroupNode:
    """`repeated`: whether a name stood in it a second time, which was reported and left out."""

    entries: "tuple[tuple[TextNode, Node], ...]"
    place: Place
    span: tuple[int, int] = (0, 0)
    repeated: bool = False


Node = TextNode | ListNode | GroupNode
Entry = tuple[TextNode, Node]


class _Refused(Exception):
    """Something that ends the reading of this file; it has been reported."""


def read_nodes(
    text: str,
    path: str,
    problems: Problems,
    names: tuple[str, ...] = (),
    below: tuple[Below, ...] = (),
) -> Node | None:
    """The tree of a YAML file; None where it is empty or cannot be read, with the reason in
    `problems`. `names` are those that may be meant on a line without a colon, and `below` tells what belongs to
    those at the margin.
    """
    node, found = _read(text, path, names, below)
    problems.take(found)
    return node


@lru_cache(maxsize=128)  # where files are read again and again, most are as they were
def _read(
    text: str, path: str, names: tuple[str, ...], below: tuple[Below, ...]
) -> tuple[Node | None, tuple[Problem, ...]]:
    problems = Problems()
    node = _tree(text, path, names, below, problems)
    return node, tuple(problems)


def _tree(
    text: str, path: str, names: tuple[str, ...], below: tuple[Below, ...], problems: Problems
) -> Node | None:
    if not _well_indented(text, path, problems):
        return None
    lines = text.split("\n")
    hidden = tuple(names_hidden(lines, names))
    for found in (*hidden, *remarks_in_texts(lines, names)):
        problems.add(Place(path, found.line, found.column), found.code, **found.facts)
    if hidden:
        return None
    try:
        return _Tree(text, path, problems).root()
    except _Refused:
        return None
    except yaml.MarkedYAMLError as error:
        found = explain(
            error.problem or "",
            error.context or "",
            _spot(error.problem_mark),
            _spot(error.context_mark),
            text,
            names,
            below,
        )
        problems.add(Place(path, found.line, found.column), found.code, **found.facts)
    except (
        yaml.YAMLError,
        ValueError,
        OverflowError,
    ):  # an escape for a character that does not exist, and the like
        far = (
            (number, _FAR_ESCAPE.search(line)) for number, line in enumerate(text.split("\n"), 1)
        )
        line, column = next(((number, match.start() + 1) for number, match in far if match), (1, 1))
        problems.add(Place(path, line, column), "backslash")
    return None


def _of_twice(name: str, first: Node, second: Node) -> str:
    """What to do with a name that stands twice."""
    lists = isinstance(first, ListNode) and isinstance(second, ListNode)
    if lists or (isinstance(first, GroupNode) and isinstance(second, GroupNode) and len(name) > 1):
        what = "its entries" if lists else "its lines"
        return (
            f"put {what} below those of the first, and take this line away; or keep one of the two"
        )
    other = ", or give one of them another mark" if len(name) == 1 else ""
    return f"keep one of the two{other}"


def _spot(mark: "yaml.Mark | None") -> tuple[int, int] | None:
    return None if mark is None else (mark.line + 1, mark.column + 1)


def _mark(mark: object) -> yaml.Mark:
    """A mark of an event: the library's readers give one to each."""
    return cast(yaml.Mark, mark)


def _well_indented(text: str, path: str, problems: Problems) -> bool:
    indents = (
        (number, sure(_INDENT.match(line))[0])
        for number, line in enumerate(text.split("\n"), 1)
        if line.strip()
    )
    odd = [(number, indent) for number, indent in indents if indent.strip(" ")]
    if not odd:
        return True
    number, indent = odd[0]
    column = len(indent) - len(indent.lstrip(" ")) + 1
    more = f" (and {counted(len(odd) - 1, 'more line')})" if len(odd) > 1 else ""
    what = "a tab" if indent[column - 1] == "\t" else "a space of an unusual kind"
    spaces = spaces_before(number, text.split("\n"))
    hint = (
        "let it begin at the margin"
        if not spaces
        else f"begin it with {counted(spaces, 'plain space')}"
    )
    problems.add(Place(path, number, column), "indent-not-spaces", what=what, more=more, hint=hint)
    return False


def _second_entry(held: list[Node]) -> int:
    """The line on which the names of a group, on a line each, begin anew: the first of them and another one;
    0 where they do not."""
    names = [key for key in held[::2] if isinstance(key, TextNode)]
    first = names[0].value if names else ""
    again = [
        key for key in names[1:] if key.value == first and key.place.line > names[0].place.line
    ]
    others = [key.value for key in names if key.value != first]
    if not again or len(set(others)) == len(others):
        return 0
    line = again[0].place.line
    return line if sum(key.place.line == line for key in names) == 1 else 0


class _Tree:
    """Builds nodes from the library's events;
    its own stack, so that depth is counted and limited.
    """

    def __init__(self, text: str, path: str, problems: Problems) -> None:
        self._text = text
        self._lines = text.split("\n")
        self._path = path
        self._problems = problems

    def root(self) -> Node | None:
        documents = 0
        root: Node | None = None
        open_nodes: list[
            tuple[bool, Place, int, list[Node]]
        ] = []  # (a group?, where it starts: place and index, what it holds)
        for number, event in enumerate(events(self._text, MOST_VALUES)):
            mark = _mark(event.start_mark)
            place = Place(self._path, mark.line + 1, mark.column + 1)
            if isinstance(event, yaml.DocumentStartEvent):
                documents += 1
                if documents > 1:
                    self._refuse(place, "second-document")
                continue
            if isinstance(event, yaml.NodeEvent):
                self._refuse_specials(event, place)
                if number > MOST_VALUES:
                    self._refuse(place, "too-many-values", limit=MOST_VALUES)
            node: Node | None = None
            if isinstance(event, yaml.ScalarEvent):
                node = self._text_node(event, place)
            elif isinstance(event, yaml.CollectionStartEvent):
                if len(open_nodes) == DEEPEST:
                    self._refuse(place, "too-deep", limit=DEEPEST)
                is_group = isinstance(event, yaml.MappingStartEvent)
                open_nodes.append((is_group, place, mark.index, []))
            elif isinstance(event, yaml.CollectionEndEvent):
                is_group, start, first, held = open_nodes.pop()
                span = (first, max(first, _mark(event.end_mark).index))
                if is_group:
                    in_list = bool(open_nodes) and not open_nodes[-1][0]
                    if in_list and (line := _second_entry(held)):
                        self._refuse_explained(no_dash_before(line, self._lines))
                    node = self._group(held, start, span)
                else:
                    node = ListNode(tuple(held), start, span)
            if node is None:
                continue
            if open_nodes:
                open_nodes[-1][3].append(node)
            else:
                root = node
        if root is None or (isinstance(root, TextNode) and not root.value.strip()):
            self._problems.add(Place(self._path), "file-empty")
            return None
        return root

    def _refuse(self, place: Place, code: str, **facts: object) -> NoReturn:
        self._problems.add(place, code, **facts)
        raise _Refused

    def _refuse_explained(self, found: Explained) -> NoReturn:
        self._refuse(Place(self._path, found.line, found.column), found.code, **found.facts)

    def _refuse_specials(self, event: yaml.NodeEvent, place: Place) -> None:
        if isinstance(event, yaml.AliasEvent):
            special = True
        else:
            special = event.anchor is not None or getattr(event, "tag", None) is not None
        if special:
            facts = facts_unquoted(self._lines[place.line - 1], place.column)
            self._refuse(place, "needs-quotes", **facts)

    def _group(self, held: list[Node], start: Place, span: tuple[int, int]) -> GroupNode:
        entries: dict[str, tuple[TextNode, Node]] = {}
        repeated = False
        for key, value in zip(held[::2], held[1::2], strict=True):
            if not isinstance(key, TextNode):
                self._problems.add(key.place, "name-not-a-word")
            elif key.value in entries and of_points(key, value):
                entries[str(key.place)] = (key, value)
            elif key.value in entries:
                first = entries[key.value][0].place.line
                repeated = True
                hint = _of_twice(key.value, entries[key.value][1], value)
                facts = {"name": said(key.value), "line": first, "hint": hint}
                self._problems.add(key.place, "name-repeated", **facts)
            else:
                entries[key.value] = (key, value)
        return GroupNode(tuple(entries.values()), start, span, repeated)

    def _text_node(self, event: yaml.ScalarEvent, place: Place) -> TextNode:
        value = event.value
        plain = value.isascii() and value.isprintable()
        hidden = [] if plain else sorted({letter for letter in value if unseen(letter)} - {LOST})
        for letter in hidden:  # came in by an escape such as "\u202e"
            self._problems.add(place, "unseen-character", what=describe(letter), more="")
            value = value.replace(letter, LOST)
        span = (_mark(event.start_mark).index, _mark(event.end_mark).index)
        if event.style in ("'", '"') and self._swallows(span):
            self._refuse_explained(not_closed((place.line, place.column), self._lines))
        if not event.style and self._text[span[1] : span[1] + 1] == ":" and {*"[{"} & {*value}:
            if found := colon_before_bracket(place.line, self._lines):
                self._refuse_explained(found)
        end = _mark(event.end_mark)
        if not event.style and end.line > place.line - 1:
            if deep := entry_too_deep((place.line, place.column), end.line + 1, self._lines):
                self._refuse_explained(deep)
        return TextNode(
            value,
            place,
            not event.style,
            self._line_places(event, place),
            span,
            Place(self._path, end.line + 1, end.column + 1),
            "" if event.style else self._remark_at(end.index),
            not (value or event.style) and value_hidden(place.line, self._lines),
        )

    def _swallows(self, span: tuple[int, int]) -> bool:
        """Whether a value between quotes has taken for its own what belongs to those below."""
        return ended_by_next(self._text, *span) or runs_over_names(self._text, *span)

    def _remark_at(self, index: int) -> str:
        found = _REMARK.match(self._text, index)
        return found[0] if found else ""

    def _line_places(self, event: yaml.ScalarEvent, place: Place) -> tuple[Place, ...]:
        if event.style == "|":
            lines = self._lines[place.line : place.line + event.value.count("\n") + 1]
            first = next((line for line in lines if line.strip()), "")
            value_first = next((line for line in event.value.split("\n") if line.strip()), "")
            indent = len(first) - len(
                value_first
            )  # more than the lines' own leading spaces: the block's indentation
            return tuple(
                Place(self._path, place.line + 1 + number, indent + 1)
                for number in range(len(lines))
            )
        quote = 1 if event.style in ("'", '"') else 0
        start, end = _mark(event.start_mark), _mark(event.end_mark)
        source = self._text[start.index + quote : end.index - quote]
        if source != event.value:
            return ()
        return (Place(self._path, place.line, place.column + quote),)
