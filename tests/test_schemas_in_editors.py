"""The JSON Schemas hold what editors need to complete, explain and mark a file as an author would like it."""

import json
import re
from pathlib import PurePosixPath

import jsonschema
import pytest

from packetgen.load.schema import FileShape
from packetgen.load.shapes import FILES
from packetgen.reference.field_pages import files_of, first_line, reference_page, schema_path
from packetgen.reference.json_schema import json_schemas, schema_of
from packetgen.reference.plain_data import from_text
from tests.content_builder import TINY
from tests.demo_patterns import CONTENT
from tests.test_json_schema import within
from tests.test_reference import file_of

ALL_FILES = pytest.mark.parametrize("file", FILES, ids=lambda file: file.path)

THREAD_CARDS = next(file for file in FILES if file.path == "threads/<card>.yaml")


def groups(file: FileShape):
    return [part for part in within(schema_of(file)) if "title" in part and "properties" in part]


@ALL_FILES
def test_every_name_has_its_sentence_and_every_group_its_word(file):
    told = [
        field
        for group in groups(file)
        for field in (*group["properties"].values(), *group.get("patternProperties", {}).values())
    ]
    assert told
    for field in told:
        assert field["description"].endswith(".")
    for part in within(schema_of(file)):
        if "additionalProperties" in part and part["additionalProperties"] is False:
            assert part["title"]


def test_no_author_reads_an_expression():
    """Where a value is refused by its form, words stand for the form."""
    parts = [part for file in FILES for part in within(schema_of(file))]
    forms = [part for part in parts if isinstance(part.get("pattern"), str)]
    assert len(forms) > 100
    beside_options = [
        choice["anyOf"][1]
        for choice in parts
        if isinstance(choice.get("anyOf"), list) and "enum" in choice["anyOf"][0]
    ]
    for part in forms:
        if part not in beside_options:  # there the options are said
            assert re.fullmatch(r"Write [^\\^$]+", part["errorMessage"])


@ALL_FILES
def test_a_required_value_has_a_type_so_that_editors_put_its_name_in(file):
    for group in groups(file):
        for name in group["required"]:
            field = group["properties"][name]
            assert "type" in field or "anyOf" in field, name


@ALL_FILES
def test_nothing_is_put_in_that_is_empty_or_a_list_of_groups(file):
    for part in within(schema_of(file)):
        if not isinstance(part.get("description"), str):
            continue  # the names of a group, not a field
        for value in [*part.get("examples", ()), part.get("default", "none")]:
            assert value not in ([], {}, "", None)
            if isinstance(value, list):
                assert not any(isinstance(entry, dict | list) for entry in value)


def test_only_its_own_values_are_offered_for_a_name_beside_names_of_the_authors_own():
    lines = [group for file in FILES for group in groups(file) if "patternProperties" in group]
    assert [line["title"] for line in lines] == ["a key line"]
    ((form, _),) = lines[0]["patternProperties"].items()
    assert not any(re.search(form, name) for name in lines[0]["properties"])
    assert all(re.search(form, name) for name in ("larkmoss", "stitches", "a-stitch", "symbol-2"))


@pytest.mark.parametrize(
    ("instead", "marked"),
    [
        ("tex: 25\nsize: Ne 24", [25, "Ne 24"]),
        ("tex: 25", []),
        ("size: Ne 24", []),
    ],
)
def test_of_two_names_of_which_one_is_due_both_lines_are_marked(instead, marked):
    """And not the whole card, as a `oneOf` would do."""
    text = TINY["threads/moss.yaml"].replace("tex: 25", instead)
    schema = schema_of(THREAD_CARDS)
    errors = jsonschema.Draft202012Validator(schema).iter_errors(from_text(text))
    assert [error.instance for error in errors] == marked
    words = "'tex' and 'size' both stand here; keep one of the two"
    assert words in [part.get("errorMessage") for part in within(schema)]


def test_where_neither_of_two_names_stands_the_card_is_marked():
    value = from_text(TINY["threads/moss.yaml"].replace("tex: 25\n", ""))
    errors = jsonschema.Draft202012Validator(schema_of(THREAD_CARDS)).iter_errors(value)
    assert [error.instance for error in errors] == [value]


@pytest.mark.parametrize("path", [p.relative_to(CONTENT) for p in sorted(CONTENT.rglob("*.yaml"))])
def test_the_guide_leads_an_editor_from_every_file_to_its_schema(path):
    """The first line goes from the folder of the file, the setting from the folder above content."""
    file = file_of(path.as_posix())
    assert file
    named = first_line(file).partition("$schema=")[2]
    folder = PurePosixPath("content") / path.parent
    ups = named.count("../")
    assert ups == len(folder.parts)
    assert named.replace("../", "") == schema_path(file)
    assert PurePosixPath(schema_path(file)).name in json_schemas()
    assert PurePosixPath("content", path).match(files_of(file))
    assert f"`{first_line(file)}`" in reference_page()


def test_the_setting_in_the_guide_is_read_as_json():
    block = re.search(r'    "yaml\.schemas": (\{.*?\n    \})', reference_page(), re.DOTALL)
    assert block
    assert json.loads(block[1]) == {schema_path(file): files_of(file) for file in FILES}
