"""A YAML file, read and checked against its shape."""

from collections.abc import Mapping
from types import MappingProxyType

from packetgen.diagnostics import Place, Problems
from packetgen.load.astray import without_astray
from packetgen.load.examples import (
    complain_of_example_remark,
    complain_of_example_words,
    complain_of_examples,
)
from packetgen.load.files import ContentFolder
from packetgen.load.prose_days import complain_of_days
from packetgen.load.prose_links import check_links
from packetgen.load.prose_size import check_size
from packetgen.load.prose_slips import complain_of_slips
from packetgen.load.schema import Group, all_below, names_in
from packetgen.load.values import Filled, read_value
from packetgen.load.words import said
from packetgen.load.yaml_nodes import GroupNode, read_nodes

_NOWHERE: Mapping[str, Group] = MappingProxyType({})


def read_document(
    folder: ContentFolder,
    path: str,
    shape: Group,
    problems: Problems,
    elsewhere: Mapping[str, Group] = _NOWHERE,
) -> Filled | None:
    """The file's values; None where nothing of it can be used.
    Every fault of it goes to `problems`. `elsewhere` are shapes by the folders where such files stand, for one that
    may have come here from there.
    """
    text = folder.text(path)
    node = None
    if text is not None:
        node = read_nodes(text, path, problems, names_in(shape), all_below(shape))
    if text is None or node is None:
        return None
    if not isinstance(node, GroupNode):
        first = shape.fields[0]
        problems.add(
            node.place, "file-not-names", what=shape.what, example=f"{first.name}: {first.example}"
        )
        return None
    names = {key.value for key, _ in node.entries}
    for where, other in elsewhere.items():
        if other is not shape and has_all(names, other) and not has_all(names, shape):
            place = Place(path, node.place.line)
            problems.add(
                place, "file-elsewhere", what=other.what, own=shape.what, folder=said(where)
            )
            return None
    complain_of_examples(node, folder.for_review)
    complain_of_example_remark(text, path, folder.for_review)
    node = without_astray(node, shape, problems)
    filled: Filled | None = read_value(shape, node, "the file", "", problems).value
    return filled


def has_all(names: set[str], shape: Group) -> bool:
    """Whether a file with those names has all that this shape asks for."""
    return names >= {field.name for field in shape.fields if field.required}


def read_markdown(folder: ContentFolder, path: str, problems: Problems) -> str | None:
    """A file of Markdown, not empty, whose links could be right."""
    text = folder.text(path)
    if text is not None and not text.strip():
        problems.add(Place(path), "file-empty")
        return None
    if text is not None:

        def report(code: str, line: int, column: int, **facts: object) -> None:
            problems.add(Place(path, line + 1, column + 1), code, **facts)

        if check_size(text, report):
            check_links(text, report)
            complain_of_slips(text, report)
            complain_of_days(text, report)
            complain_of_example_words(text, path, folder.for_review)
    return text
