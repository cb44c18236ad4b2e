"""The JSON Schemas say the same as the loader, as far as a schema can see."""

import re
from collections.abc import Callable
from functools import cache

import jsonschema
import pytest

from packetgen.load import load_content
from packetgen.load.shapes import FILES
from packetgen.reference.beyond import BEYOND, UNSEEN
from packetgen.reference.codes import OF_ANY_FILE
from packetgen.reference.json_schema import json_schemas, schema_of
from packetgen.reference.plain_data import from_node, from_text
from tests.content_builder import build
from tests.demo_patterns import CONTENT
from tests.hostile.corpus import CASES as HOSTILE
from tests.test_reference import file_of, tree
from tests.test_wrong_input import CASES

VALIDATORS = {file.path: jsonschema.Draft202012Validator(schema_of(file)) for file in FILES}
# Found while the characters are read: of such a file there are no values to be checked.
CHARACTERS = set(OF_ANY_FILE) - {
    "name-unknown", "name-set-out", "text-goes-on", "name-gone-within", "name-alone", "name-left-out", "colon-left-out", "value-in-remark",
}  # fmt: skip
# The order does not name the pattern, so the loader does not read what an editor would.
NOT_READ = {"a pattern folder that is not in the order"}
ALL_CASES = (*CASES, *(case for case in HOSTILE if not case.heavy and not case.prepare))


def refused(path: str, value: object) -> list[str]:
    """What the schema of the file at `path` has to say of a value."""
    file = file_of(path)
    assert file
    return [error.message for error in VALIDATORS[file.path].iter_errors(value)]


@pytest.mark.parametrize("name", json_schemas())
def test_a_schema_is_one_by_the_draft_that_it_names(name):
    schema = json_schemas()[name]
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    jsonschema.Draft202012Validator.check_schema(schema)


@pytest.mark.parametrize(
    "path", [path.relative_to(CONTENT).as_posix() for path in sorted(CONTENT.rglob("*.yaml"))]
)
def test_every_file_of_the_demo_is_taken(path):
    assert refused(path, from_text((CONTENT / path).read_text("utf-8"))) == []


@pytest.mark.parametrize("name", json_schemas())
def test_what_a_field_offers_is_taken_by_its_own_schema(name):
    """Examples and defaults, which editors put in, are themselves right."""
    offered = 0
    for schema in within(json_schemas()[name]):
        given = [*schema.get("examples", ()), *([schema["default"]] if "default" in schema else ())]
        for value in given:
            jsonschema.Draft202012Validator(schema).validate(value)
            offered += 1
        if "description" in schema:
            assert schema["description"].endswith(".")
    assert offered


def within(schema: object):
    """Every schema in a schema."""
    if isinstance(schema, dict):
        yield schema
        for name, part in schema.items():
            if name not in ("examples", "default", "enum", "const"):
                yield from within(part)
    elif isinstance(schema, list):
        for part in schema:
            yield from within(part)


@pytest.fixture(scope="module")
def judged(tmp_path_factory) -> Callable[[int], dict[str, tuple[set[str], bool]]]:
    """Number of the case → path → (what the loader says of that file, whether its schema refuses it)."""
    folder = tmp_path_factory.mktemp("cases")

    @cache
    def judge(number: int) -> dict[str, tuple[set[str], bool]]:
        root = build(folder / str(number), dict(ALL_CASES[number].changes))
        errors = load_content(root)[1].errors
        return {
            path: (
                {problem.code for problem in errors if problem.place.path == path},
                bool(refused(path, from_node(node))),
            )
            for path in (file.relative_to(root).as_posix() for file in sorted(root.rglob("*.yaml")))
            if file_of(path) and (node := tree(root, path)) is not None
        }

    return judge


@pytest.mark.parametrize("number", range(len(ALL_CASES)), ids=lambda number: ALL_CASES[number].slip)
def test_schema_and_loader_refuse_the_same(number, judged):
    """What the schema refuses the loader refuses in that file; what the loader refuses by the shape of a file
    the schema refuses too, and `BEYOND` lists all else."""
    if ALL_CASES[number].slip in NOT_READ:
        return
    for path, (codes, is_refused) in judged(number).items():
        if is_refused:
            assert codes, path
        else:
            assert codes <= UNSEEN | CHARACTERS, path


def test_nothing_is_listed_as_unseen_that_a_schema_always_sees(judged):
    unseen = set()
    for number in range(len(ALL_CASES)):
        for codes, is_refused in judged(number).values():
            unseen |= set() if is_refused else codes
    assert unseen - CHARACTERS | (unseen & UNSEEN) == UNSEEN
    listed = [code for _, codes in BEYOND for code in codes]
    assert len(listed) == len(set(listed))


@pytest.mark.parametrize(
    ("path", "line", "right", "wrong"),
    [
        ("threads/moss.yaml", "strands: {}", ("1", "12", '"6"'), ("0", "13", "six", "1.5", "[6]", "")),
        ("threads/moss.yaml", "tex: {}", ("25", "33.3", '"25"'), ("0.5", "2001", "2,5", "25 tex")),
        ("threads/moss.yaml", "length: {}", ("8 m", "8.75 yd", "3 1/2 in"), ("8", "8 metres", "8,5 m", "m")),
        ("threads/moss.yaml", "size: {}", ("Ne 12/2", "140 dtex x 2", "nm 34"), ("12/2", "Ne", "No 5")),
        ("threads/moss.yaml", "price: {}", ("1.40 EUR",), ("EUR 1.40", "1.40", "1,40 EUR", "1.40 eur")),
        ("threads/moss.yaml", "dyed: {}", ("plain", "by hand"), ("hand", "true")),
        ("threads/moss.yaml", "braid: {}", ("true", "no", '"Yes"'), ("maybe", "1")),
        ("threads/moss.yaml", "name: {}", ("Moss", "12", '" a "'), ("[a]", "''", '"a\\nb"', "x" * 81)),
        (
            "series/a/series.yaml",
            "goes_up: {}",
            ("7 days", "on the day", "8 weeks", "60 days", "1 day before"),
            ("61 days", "9 weeks", "7", "a week"),
        ),
        (
            "series/a/series.yaml",
            "release: {}",
            ("2027-01-15", "2027-01-15 09:00 Europe/London"),
            ("15 January 2027", "2027-01-15 09:00", "2027-13-01 09:00 Europe/London", "1999-01-01 09:00 Europe/London"),
        ),
        ("series/a/series.yaml", "address: {}", ("https://almanac.example.org/",), ("almanac.example.org", "ftp://a.b")),
    ],
)  # fmt: skip
def test_a_single_value_is_taken_or_refused(path, line, right, wrong):
    """Each kind of value by itself; whatever else the file lacks is not asked."""
    name = line.partition(":")[0]
    file = file_of(path)
    assert file
    schema = schema_of(file)["properties"][name]
    for words in right:
        jsonschema.Draft202012Validator(schema).validate(from_text(line.format(words))[name])
    for words in wrong:
        value = from_text(line.format(words))[name]
        assert not jsonschema.Draft202012Validator(schema).is_valid(value), words


@pytest.mark.parametrize(
    ("day", "taken"),
    [
        ("6 January", True),
        ("second Sunday of May", True),
        ("LAST monday in august", True),
        ("21 days before Easter", True),
        ("3 days after Julian Easter", True),
        ("the June solstice", True),
        ("autumn equinox", True),
        ("in May", True),
        ("spring", True),
        ("fifth Sunday of May", False),
        ("June equinox", False),
        ("6th of January", False),
        ("Candlemas", False),
        ("second Sonday of May", False),
    ],
)
def test_a_day_of_every_year_is_taken_or_refused(day, taken):
    from packetgen.load.schema import Rule
    from packetgen.reference.json_schema import kind_schema

    assert bool(re.search(kind_schema(Rule())["pattern"], day)) == taken


def test_values_have_the_types_that_yaml_gives_them():
    """YAML 1.2.2, 10.3.2: the core schema."""
    text = (
        'a: 07\nb: "07"\nc: true\nd: yes\ne:\nf: ~\ng: 1.5\nh: 2026-11-25\ni: [0x1f, 0o17]\nj: -3\n'
    )
    assert from_text(text) == {
        "a": 7, "b": "07", "c": True, "d": "yes", "e": None, "f": None, "g": 1.5, "h": "2026-11-25",
        "i": [31, 15], "j": -3,
    }  # fmt: skip
