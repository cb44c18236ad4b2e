"""What a series or a pattern began with (templates/begin) and its author has not put her own in place of.

A text then begins with an invitation, a name with the word 'example', and whoever is thanked has the name of
one that we invented: so each carries its mark with it until it is changed, wherever it stands. What the remarks
of the files only offer is known word for word. Numbers, outlines and charts cannot be; a remark above them says
it, and asks to be taken out with them.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from urllib.parse import urlsplit

from packetgen.diagnostics import Place, Problem, Problems
from packetgen.load.words import said, shown
from packetgen.load.yaml_nodes import ListNode, Node, TextNode
from packetgen.nouns import listed

_INVITES = ("Write here", "Tell here")
_EXAMPLE = "example "
_NAMES = ("name", "studio")
# Who stitches, finishes and dyes in all examples; there is no such person.
EXAMPLE_PERSON = "Maud Fennimore"
# What remarks offer, and messages that hand out a line, by the field it is for.
_OFFERED = {
    "photo_alt": {
        "A green sprig with red berries in a plain brown frame.",
        "Three stitches in a plain brown frame.",
    },
    "name": {"Name of the shop", "Her garden notes"},
    "url": {"https://example.org/counter", "https://example.org/notes"},
    "shop": {"https://example.org/counter"},
    "address": {"https://almanac.example.org/"},
    "title": {"Onions on a String", "The first pattern is ready", "One piece"},
    "text": {"It is charted, checked and stitched.", "We draw lots."},
}
_ADDRESSES = ("address", "shop", "url")
_LINK = re.compile(r"\[[^\[\]]{1,200}\]\((?P<address>https?://[^\s()]+)\)")
_REMARK = "# EXAMPLE: "  # how such a remark begins
_UNADDRESSED = " while there is no site, and lay templates-unaddressed aside if told"
_MOST_NAMED = 4  # in one line
_ONE = {"are": "is still the example", "it": "it", "its": "its"}
_MANY = {"are": "are still the examples", "it": "them", "its": "their"}


@dataclass(frozen=True)
class Left:
    """A value that is an example still, by the names of its field and of the group that it stands in."""

    place: Place
    field: str
    within: str = ""
    host: str = ""  # of an address that is at no host, and is none that we offer
    in_a_link: bool = False


def complain_of_examples(node: Node, problems: Problems) -> None:
    """Advice on the first value of a YAML file that is an example still, which names the others; and on each address of
    the author's that is nobody's."""
    found = tuple(examples_in(node))
    complain_of_left([one for one in found if not one.host], problems)
    for one in found:
        if one.host:
            then = _UNADDRESSED * (one.field == "address")
            name = f"a link in {said(one.field)}" if one.in_a_link else said(one.field)
            facts = {"name": name, "host": shown(one.host), "then": then}
            problems.add(one.place, "example-host", **facts)


def complain_of_left(found: Sequence[Left], problems: Problems) -> None:
    """Advice on the first of what is an example still, which names the others; those of one group together."""
    groups: dict[object, list[Left]] = {}
    for one in found:
        groups.setdefault(one.within or one.place, []).append(one)
    alike = list(groups.values())
    if not alike:
        return
    words = [_called(alike[0])]
    words += [f"{_called(group)} (line {group[0].place.line})" for group in alike[1:_MOST_NAMED]]
    if beyond := alike[_MOST_NAMED:]:
        more = sum(map(len, beyond))
        words.append(f"{more} more (from line {beyond[0][0].place.line})")
    number = _ONE if len(found) == 1 else _MANY
    problems.add(found[0].place, "example-left", what=listed(tuple(words)), **number)


def _called(group: Sequence[Left]) -> str:
    """'about' in 'designers'; 2 names in 'parts'; 4 values in 'credits'."""
    field, within = group[0].field, group[0].within
    if len(group) == 1:
        return f"{said(field)} in {said(within)}" if within else said(field)
    kind = "names" if {one.field for one in group} == {"name"} else "values"
    return f"{len(group)} {kind} in {said(within)}"


def examples_in(node: Node, field: str = "", within: str = "") -> Iterator[Left]:
    """Each value that is an example still, in the order of the file."""
    if isinstance(node, TextNode):
        if is_example(field, node.value):
            offered = node.value in _OFFERED.get(field, ())
            yield Left(node.place, field, within, "" if offered else _no_host(field, node.value))
        elif host := next((host for _, host in _linked(node.value)), ""):
            yield Left(node.place, field, within, host, in_a_link=True)
    elif isinstance(node, ListNode):
        for item in node.items:
            yield from examples_in(item, field, within)
    else:
        named = next((value for name, value in node.entries if name.value == "name"), None)
        example_day = isinstance(named, TextNode) and is_example("name", named.value)
        for name, value in node.entries:
            if field == "occasion" and name.value == "on" and example_day:
                yield Left(value.place, "on", field)
            yield from examples_in(value, name.value, field)


def complain_of_example_words(text: str, path: str, problems: Problems) -> None:
    """Advice on each line of Markdown that only asks for the author's words; where there is none, on each link to what is
    nobody's."""
    lines = text.split("\n")
    asks = any(line.startswith(_INVITES) for line in lines)
    for number, line in enumerate(lines, 1):
        if line.startswith(_INVITES):
            problems.add(Place(path, number), "example-left", what="the text", **_ONE)
        elif not asks:
            for start, host in _linked(line):
                facts = {"name": "the link", "host": shown(host), "then": ""}
                problems.add(Place(path, number, start + 1), "example-host", **facts)


def complain_of_example_remark(text: str, path: str, problems: Problems) -> None:
    """Advice on each remark which says that something is an example, in a YAML file or a chart."""
    for number, line in enumerate(text.split("\n"), 1):
        if line.startswith(_REMARK):
            what = line.removeprefix(_REMARK).partition(".")[0]
            problems.add(Place(path, number), "example-remark", what=said(what))


def is_invitation(text: str) -> bool:
    """Whether a text only asks for the author's words."""
    return text.startswith(_INVITES)


def example_charts(told: Iterable[Problem]) -> frozenset[str]:
    """The folders whose chart was told to be the example still."""
    return frozenset(
        one.place.path.rpartition("/")[0]
        for one in told
        if one.code == "example-remark" and not one.place.path.endswith(".yaml")
    )


def is_example_chart(text: str) -> bool:
    """Whether a chart is marked as the example still."""
    return any(line.startswith(_REMARK) for line in text.split("\n"))


def without_example_remark(text: str) -> str:
    """The text without such remarks."""
    return "\n".join(line for line in text.split("\n") if not line.startswith(_REMARK))


def lists_example(remarks: str) -> bool:
    """Whether the list of the marks above a chart is that of our example: '# l  example bean leaf'."""
    return bool(re.search(rf"^# \S  {_EXAMPLE}", remarks, re.IGNORECASE | re.MULTILINE))


def is_example(field: str, text: str) -> bool:
    """Whether what stands in that field is an example of ours."""
    named = field in _NAMES and text.casefold().startswith(_EXAMPLE)
    offered = text in _OFFERED.get(field, ()) or bool(_no_host(field, text))
    return named or offered or is_invitation(text) or text == EXAMPLE_PERSON


def _linked(text: str) -> Iterator[tuple[int, str]]:
    """Where a link of Markdown to such a host begins, and the host."""
    for link in _LINK.finditer(text):
        if host := _host_of_nobody(link["address"]):
            yield link.start(), host


def _no_host(field: str, text: str) -> str:
    """The host of an address below the name that our examples have, which nobody may own (RFC 2606); else ''."""
    return _host_of_nobody(text) if field in _ADDRESSES else ""


def _host_of_nobody(text: str) -> str:
    try:
        host = urlsplit(text).hostname or ""
    except ValueError:  # no address at all: told elsewhere
        return ""
    return host if f".{host}".endswith(".example.org") else ""
