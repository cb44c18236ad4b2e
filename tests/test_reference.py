"""The reference tells every field, each with the messages that it can really give, and is as new as the schema."""

import os
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from packetgen.diagnostics import Place, Problem, Problems
from packetgen.faults import FAULTS
from packetgen.load.schema import FileShape, Group, Kind, ListOf, MapOf, TextOr
from packetgen.load.shapes import FILES
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, read_nodes
from packetgen.program import PACKAGE, message_examples
from packetgen.reference.catalogue import as_json, catalogue_page, read_examples
from packetgen.reference.codes import OF_ANY_FILE, codes_of
from packetgen.reference.codes_by_field import BY_FIELD
from packetgen.reference.field_pages import anchor, reference_page
from packetgen.reference.fields import entries
from packetgen.reference.json_schema import json_schemas, schema_text
from tests import message_examples as of_messages
from tests.test_load_shapes import fields_of
from tests.test_wrong_input import CASES

GUIDE = PACKAGE / "guide"
RENEW = "UPDATE_GUIDE=1 python -m pytest tests/test_reference.py"


def renewed(path: Path, data: bytes) -> None:
    """The file holds `data`; where UPDATE_GUIDE is set it is written."""
    if os.environ.get("UPDATE_GUIDE"):
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
    assert path.is_file() and path.read_bytes() == data, f"{path.name} is stale; renew it: {RENEW}"


@pytest.fixture(scope="module")
def proved(tmp_path_factory):
    return of_messages.Proved(tmp_path_factory.mktemp("cases"))


def test_examples_of_messages_are_as_the_messages_are_now(tmp_path, proved):
    """Each is provoked again. What is kept is what an author would read today."""
    found = of_messages.message_examples(tmp_path, proved)
    renewed(PACKAGE / "reference" / "examples.json", as_json(found))
    assert set(found) == set(FAULTS)


def test_the_reference_is_as_new_as_the_schema():
    renewed(GUIDE / "reference.md", reference_page().encode())


def test_the_catalogue_is_as_new_as_the_messages():
    page = catalogue_page(read_examples(message_examples()))
    renewed(GUIDE / "messages.md", page.encode())


def test_the_json_schemas_are_as_new_as_the_schema():
    for name, schema in json_schemas().items():
        renewed(GUIDE / "schemas" / name, schema_text(schema).encode())
    assert {path.name for path in (GUIDE / "schemas").iterdir()} == set(json_schemas())


@pytest.mark.parametrize("file", FILES, ids=lambda file: file.path)
def test_every_field_has_its_place_in_the_reference(file):
    page = reference_page()
    found = entries(file)
    assert {id(entry.field) for entry in found} >= {id(field) for field in fields_of(file.shape)}
    for entry in found:
        part = page.partition(f"\n### {anchor(file, entry)}\n")[2].partition("\n#")[0]
        for line in ("*What:*", "*Needed:*", "*Example:*", "*Messages:*"):
            assert line in part, entry.path
        assert codes_of(file, entry)


def test_no_heading_of_the_reference_stands_twice():
    headings = re.findall(r"^#+ .*$", reference_page(), re.MULTILINE)
    assert len(headings) == len(set(headings)) > 150


def test_every_code_that_is_named_is_one_that_there_is():
    named = {code for file in FILES for entry in entries(file) for code in codes_of(file, entry)}
    named |= {code for fields in BY_FIELD.values() for codes in fields.values() for code in codes}
    assert (named | set(OF_ANY_FILE)) <= set(FAULTS)
    for path, fields in BY_FIELD.items():
        (file,) = (file for file in FILES if file.path == path)
        assert set(fields) - {""} <= {entry.path for entry in entries(file)}


@pytest.mark.parametrize("case", (*CASES, *of_messages.OF_FIGURES), ids=lambda case: case.slip)
def test_a_field_lists_every_message_that_it_is_seen_to_give(case, proved):
    """Whatever is told at a place of a YAML file stands in the reference, under the field at that place."""
    root, problems = proved(case)
    for problem in problems:
        file = file_of(problem.place.path)
        node = file and tree(root, problem.place.path)
        if not file or not node or problem.code in OF_ANY_FILE:
            continue
        of_file = BY_FIELD[file.path].get("", ())
        # What is missing in a group is told where the group begins.
        if problem.code in (*of_file, "name-missing", "names-instead"):
            continue
        assert problem.code in codes_at(file, node, problem), (problem.printed, case.slip)


def codes_at(file: FileShape, node: Node, problem: Problem) -> tuple[str, ...]:
    """What the reference says of the field that begins last before the place of the problem."""
    begun = [
        (place, number, path)
        for number, (place, path) in enumerate(places(file.shape, node, ""))
        if place <= problem.place
    ]
    path = max(begun)[2] if begun else ""
    return next((codes_of(file, entry) for entry in entries(file) if entry.path == path), ())


def places(kind: Kind, node: Node, path: str) -> Iterator[tuple[Place, str]]:
    """Where each field's name and each value begins, with the path of the field."""
    if path:
        yield node.place, path
    if isinstance(kind, TextOr):
        kind = kind.group if isinstance(node, GroupNode) else kind.text
    if isinstance(kind, ListOf):
        items = node.items if isinstance(node, ListNode) else (node,) if kind.or_one else ()
        for item in items:
            yield from _below(kind.kind, item, path, "[]")
    elif isinstance(node, GroupNode) and isinstance(kind, MapOf):
        for key, value in node.entries:
            yield key.place, path
            yield from _below(kind.kind, value, path, ".<name>")
    elif isinstance(node, GroupNode) and isinstance(kind, Group):
        by_name = {field.name: field for field in kind.fields}
        for key, value in node.entries:
            field = by_name.get(key.value) or kind.others
            if field:
                here = f"{path}.{field.name}" if path else field.name
                yield key.place, here
                yield from places(field.kind, value, here)


def _below(kind: Kind, node: Node, path: str, step: str) -> Iterator[tuple[Place, str]]:
    """The entries of a list or map: fields within them have a longer path, they themselves have not."""
    for place, inner in places(kind, node, path + step):
        yield place, path if inner == path + step else inner


def file_of(path: str) -> FileShape | None:
    """The kind of file that stands at this path, if it is one with a schema."""
    for file in FILES:
        if re.fullmatch(re.sub("<[^>]*>", "[^/]+", file.path), path):
            return file
    return None


def tree(root: Path, path: str) -> Node | None:
    """The nodes of the file; None where it cannot be read."""
    try:
        text = (root / path).read_bytes().decode()
    except (OSError, UnicodeDecodeError):
        return None
    return read_nodes(text.replace("\r\n", "\n"), path, Problems())
