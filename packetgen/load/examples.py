"""What a series or a pattern began with (templates/begin) and its author has not put her own in place of.

A text then begins with an invitation, a name with the word 'example', and whoever is thanked has the name of
one that we invented: so each carries its mark with it until it is changed, wherever it stands. Numbers,
outlines and charts cannot; a remark above them says it, and asks to be taken out with them.
"""

from collections.abc import Iterator, Sequence

from packetgen.diagnostics import Place, Problems
from packetgen.load.words import said
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode
from packetgen.nouns import listed

_INVITES = ("Write here", "Tell here")
_EXAMPLE = "example "
# Who stitches, finishes and dyes in all examples; there is no such person.
EXAMPLE_PERSON = "Maud Fennimore"
_REMARK = "# EXAMPLE: "  # how such a remark begins
_MOST_NAMED = 4  # in one line
_ONE, _ITS = "is still the example that it began with", "its place, or take it out"
_MANY, _THEIRS = "are still the examples that they began with", "their place, or take them out"


def complain_of_examples(node: Node, problems: Problems) -> None:
    """Advice on the first value of a YAML file that is an example still, which names the others; of a list's
    names the first."""
    complain_of_left(tuple(_left(node, "")), problems)


def complain_of_left(found: Sequence[tuple[Place, str]], problems: Problems) -> None:
    """Advice on the first of what is an example still, each with its place, which names the others."""
    if len(found) == 1:
        problems.add(found[0][0], "example-left", what=found[0][1], are=_ONE, them=_ITS)
    elif found:
        (place, what), *others = found
        shown = (what, *(f"{one} (line {at.line})" for at, one in others[: _MOST_NAMED - 1]))
        more = len(found) - len(shown)
        words = (*shown, f"{more} more") if more else shown
        problems.add(place, "example-left", what=listed(words), are=_MANY, them=_THEIRS)


def complain_of_invitations(text: str, path: str, problems: Problems) -> None:
    """Advice on each line of Markdown that only asks for the author's words."""
    for number, line in enumerate(text.split("\n"), 1):
        if line.startswith(_INVITES):
            problems.add(Place(path, number), "example-left", what="the text", are=_ONE, them=_ITS)


def complain_of_example_remark(text: str, path: str, problems: Problems) -> None:
    """Advice on each remark which says that something is an example, in a YAML file or a chart."""
    for number, line in enumerate(text.split("\n"), 1):
        if line.startswith(_REMARK):
            what = line.removeprefix(_REMARK).partition(".")[0]
            problems.add(Place(path, number), "example-remark", what=said(what))


def is_invitation(text: str) -> bool:
    """Whether a text only asks for the author's words."""
    return text.startswith(_INVITES)


def is_example_chart(folder: str, told: Problems) -> bool:
    """Whether a chart in that folder was told to be the example still."""
    return any(
        one.code == "example-remark"
        and one.place.path.rpartition("/")[0] == folder
        and not one.place.path.endswith(".yaml")
        for one in told
    )


def without_example_remark(text: str) -> str:
    """The text without such remarks."""
    return "\n".join(line for line in text.split("\n") if not line.startswith(_REMARK))


def _left(node: Node, field: str) -> Iterator[tuple[Place, str]]:
    if isinstance(node, TextNode):
        example = field == "name" and node.value.casefold().startswith(_EXAMPLE)
        if example or node.value.startswith(_INVITES) or node.value == EXAMPLE_PERSON:
            yield node.place, said(field)
    elif isinstance(node, ListNode):
        named = [item for item in node.items if _named(item)]
        for item in node.items:
            if item in named[1:]:
                continue
            for place, what in _left(item, field):
                rest = len(named) - 1 if item in named else 0
                yield place, what + f", with {rest} more," * (rest > 0)
    else:
        for name, value in node.entries:
            for place, what in _left(value, name.value):
                of_this = isinstance(value, TextNode) and field
                yield place, f"{what} in {said(field)}" if of_this else what


def _named(item: Node) -> bool:
    """Whether it is a group whose name is an example."""
    return isinstance(item, GroupNode) and any(
        name.value == "name" and list(_left(value, "name")) for name, value in item.entries
    )
