"""A JSON Schema (draft 2020-12) for each kind of file, so that editors complete and check while one types.

A schema sees values as YAML types them (see `plain_data`), so wherever an author may write a number
without quotes, a number is allowed beside the text, and quoted numbers beside numbers. It refuses nothing
"""

import json
from collections.abc import Mapping

from packetgen.load.schema import (
    Cell,
    Choice,
    Day,
    DaysBefore,
    Field,
    FileShape,
    Group,
    Hex,
    Kind,
    ListOf,
    MapOf,
    Measure,
    Moment,
    Money,
    Number,
    OutlineOf,
    Pair,
    Points,
    Reference,
    Rule,
    ShortName,
    Text,
    TextOr,
    WebAddress,
    Whole,
    YarnSize,
    YesNo,
)
from packetgen.load.shapes import FILES
from packetgen.reference import patterns
from packetgen.reference.fields import default_text, shape_name
from packetgen.reference.plain_data import Json, from_text
from packetgen.shape_names import SHAPE_NAMES

Schema = dict[str, Json]

DRAFT = "https://json-schema.org/draft/2020-12/schema"
_WORDS: list[Json] = ["string", "number", "boolean"]


def json_schemas() -> Mapping[str, Schema]:
    """Every schema by its file's name: 'thread-card.schema.json' and so on."""
    return {f"{shape_name(file)}.schema.json": schema_of(file) for file in FILES}


def schema_of(file: FileShape) -> Schema:
    """The schema of one kind of file."""
    head: Schema = {"$schema": DRAFT, "title": file.path, "description": file.doc}
    return head | kind_schema(file.shape)


def kind_schema(kind: Kind) -> Schema:
    """What a value of this kind may be."""
    if isinstance(kind, Group):
        return _group(kind)
    if isinstance(kind, ListOf):
        entries: Schema = {
            "type": "array",
            "items": kind_schema(kind.kind),
            "minItems": kind.at_least,
            "maxItems": kind.at_most,
        }
        return {"anyOf": [kind_schema(kind.kind), entries]} if kind.or_one else entries
    if isinstance(kind, MapOf):
        return {"type": "object", "additionalProperties": kind_schema(kind.kind)}
    if isinstance(kind, TextOr):
        return {"anyOf": [kind_schema(kind.text), kind_schema(kind.group)]}
    return _single(kind)


def _group(kind: Group) -> Schema:
    fields: dict[str, Json] = {field.name: _field(field) for field in kind.fields}
    schema: Schema = {
        "type": "object",
        "properties": fields,
        "required": [field.name for field in kind.fields if field.required],
        "additionalProperties": False if kind.others is None else _field(kind.others),
    }
    rules: list[Json] = [
        {"oneOf": [{"required": [name]} for name in names]} for names in kind.one_of
    ]
    rules += [
        {
            "if": {"properties": {needs.name: {"const": needs.option}}, "required": [needs.name]},
            "then": {"required": list(needs.names)},
        }
        for needs in kind.needs
    ]
    return schema | {"allOf": rules} if rules else schema


def _field(field: Field) -> Schema:
    described: Schema = {"description": field.doc}
    schema = described | kind_schema(field.kind)
    if default_text(field):
        schema["default"] = from_text(default_text(field))
    if "..." not in field.example and field.example != "|":
        schema["examples"] = [from_text(field.example)]
    return schema


def _single(kind: Kind) -> Schema:
    if isinstance(kind, Text):
        form = patterns.SOME_WORD if kind.long else patterns.ONE_LINE
        return {"type": _WORDS, "pattern": form, "maxLength": kind.at_most}
    if isinstance(kind, Reference):
        if kind.to == "a chart shape":
            return {"enum": list(SHAPE_NAMES)}
        return {"type": _WORDS, "pattern": patterns.ONE_LINE, "maxLength": 100}
    if isinstance(kind, ShortName):
        form = patterns.SHORT_NAME
        return {"type": ["string", "integer"], "pattern": form, "maxLength": 60, "minimum": 0}
    if isinstance(kind, Whole | Number):
        whole = isinstance(kind, Whole)
        return {
            "type": ["integer" if whole else "number", "string"],
            "minimum": kind.low,
            "maximum": kind.high,
            "pattern": patterns.WHOLE if whole else patterns.NUMBER,
        }
    if isinstance(kind, Choice):
        return _choice(kind)
    if isinstance(kind, YesNo):
        return _one_of_words([True, False], ("true", "false", "yes", "no"))
    return {"type": "string", "pattern": _form(kind)}


def _choice(kind: Choice) -> Schema:
    means = [word for word, _ in kind.means]
    options: list[Json] = [*kind.options]
    if not means:
        return {"enum": options}
    options += [word == "true" for word in means if word in ("true", "false")]
    return _one_of_words(options, means)


def _one_of_words(options: list[Json], words: "list[str] | tuple[str, ...]") -> Schema:
    """One of the options, or one of the words in letters of any size."""
    any_of = "|".join(patterns.any_case(word) for word in words)
    return {"anyOf": [{"enum": options}, {"type": "string", "pattern": f"^(?:{any_of})$"}]}


def _form(kind: Kind) -> str:
    if isinstance(kind, Measure):
        return patterns.measure(kind)
    if isinstance(kind, DaysBefore):
        return patterns.days_before(kind)
    return _FORMS[type(kind)]


_FORMS: Mapping[type, str] = {
    Money: patterns.MONEY,
    YarnSize: patterns.yarn_size(),
    Hex: patterns.HEX,
    Day: patterns.DAY,
    Moment: patterns.MOMENT,
    Rule: patterns.rule(),
    OutlineOf: patterns.OUTLINE,
    Pair: patterns.PAIR,
    Cell: patterns.CELL,
    Points: patterns.POINTS,
    WebAddress: patterns.WEB_ADDRESS,
}


def schema_text(schema: Schema) -> str:
    """The schema as the text of a file."""
    return json.dumps(schema, ensure_ascii=False, indent=2) + "\n"
