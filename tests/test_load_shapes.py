"""What may stand in a file is plain data, and its examples are right by its own rules."""

import dataclasses

import pytest

from packetgen.diagnostics import Problems
from packetgen.load.schema import Field, Group, ListOf, MapOf, TextOr
from packetgen.load.shapes import FILES
from packetgen.load.values import read_field
from packetgen.load.yaml_nodes import read_nodes


def fields_of(group: Group):
    for field in (*group.fields, *([group.others] if group.others else [])):
        yield field
        kind = field.kind
        while isinstance(kind, ListOf | MapOf):
            kind = kind.kind
        if isinstance(kind, TextOr):
            kind = kind.group
        if isinstance(kind, Group):
            yield from fields_of(kind)


FIELDS = [
    pytest.param(field, id=f"{file.path}-{field.name}")
    for file in FILES
    for field in fields_of(file.shape)
]


@pytest.mark.parametrize("field", FIELDS)
def test_a_field_is_explained(field: Field):
    assert field.doc.endswith(".")
    assert field.kind.words
    assert field.required or not isinstance(field.default, Field)


@pytest.mark.parametrize("field", [one for one in FIELDS if "..." not in one.values[0].example])
def test_an_example_is_right_by_its_own_rule(field: Field):
    """Every example that stands for itself is read without a complaint."""
    problems = Problems()
    on_lines = field.example.startswith("- ")
    example = f"\n{field.example}" if on_lines else field.example
    if field.example == "|":
        example = "|\n  AA\n  A."
    ((_, node),) = read_nodes(f"name: {example}", "example", problems).entries
    value = read_field(field, node, field.name, problems)
    assert [str(problem) for problem in problems] == []
    assert value.whole


def test_shapes_are_frozen_data():
    """A page of reference can be made from them: nothing in them is code."""
    for file in FILES:
        for field in fields_of(file.shape):
            assert dataclasses.is_dataclass(field.kind)
            for part in dataclasses.fields(field.kind):
                assert not callable(getattr(field.kind, part.name))


def test_no_name_stands_twice_in_a_group():
    for file in FILES:
        for kind in (file.shape, *(field.kind for field in fields_of(file.shape))):
            if isinstance(kind, Group):
                names = [field.name for field in kind.fields]
                assert len(names) == len(set(names))
