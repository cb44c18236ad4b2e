"""A JSON Schema (draft 2020-12) for each kind of file, so that editors complete and check while one types.

A schema sees values as YAML types them (see `plain_data`), so wherever an author may write a number
without quotes, a number is allowed beside the text, and quoted numbers beside numbers. It refuses nothing
that the loader takes.

Two things are there for editors alone. `errorMessage`, which JSON Schema does not know and validators pass
over, is what YAML editors say in place of a regular expression. A `title` is what they call a group of names.
"""

import json
from collections.abc import Mapping
from itertools import combinations

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
    head: Schema = {"$schema": DRAFT, "description": file.doc}
    return head | kind_schema(file.shape)


def kind_schema(kind: Kind, example: str = "") -> Schema:
    """What a value of this kind may be; an editor that refuses one shows the example."""
    if isinstance(kind, Group):
        return _group(kind)
    if isinstance(kind, ListOf):
        entries: Schema = {
            "type": "array",
            "items": kind_schema(kind.kind),
            "minItems": kind.at_least,
            "maxItems": kind.at_most,
            "errorMessage": "Put brackets round it, or a dash before each entry.",
        }
        return {"anyOf": [kind_schema(kind.kind, example), entries]} if kind.or_one else entries
    if isinstance(kind, MapOf):
        return {
            "type": "object",
            "additionalProperties": kind_schema(kind.kind),
            "errorMessage": f"Write {kind.words}.",
        }
    if isinstance(kind, TextOr):
        return {"anyOf": [kind_schema(kind.text, example), kind_schema(kind.group)]}
    single = _single(kind)
    if "pattern" in single or isinstance(kind, Reference):  # of which one may be any of 200 shapes
        such = f", for example {example}" if example else ""
        single["errorMessage"] = f"Write {kind.words}{such}"
    return single


def _group(kind: Group) -> Schema:
    fields: dict[str, Json] = {field.name: _field(field) for field in kind.fields}
    schema: Schema = {
        "title": kind.what,
        "type": "object",
        "properties": fields,
        "required": [field.name for field in kind.fields if field.required],
        "additionalProperties": False,
    }
    if kind.others is not None:
        # As additionalProperties, what they may be would be offered for the group's own fields too.
        schema["patternProperties"] = {f"^(?!(?:{'|'.join(fields)})$)": _field(kind.others)}
    rules: list[Json] = [rule for names in kind.one_of for rule in _one_of_names(names)]
    rules += [_not_both(*names) for names in kind.apart]
    rules += [
        {
            "if": {"properties": {needs.name: {"const": needs.option}}, "required": [needs.name]},
            "then": {"required": list(needs.names)},
        }
        for needs in kind.needs
    ]
    return schema | {"allOf": rules} if rules else schema


def _one_of_names(names: tuple[str, ...]) -> list[Json]:
    """Exactly one of the names. A plain `oneOf` would have the whole group marked, and not the lines."""
    return [
        {"anyOf": [{"required": [name]} for name in names]},
        *(_not_both(one, other) for one, other in combinations(names, 2)),
    ]


def _not_both(one: str, other: str) -> Schema:
    return {
        "if": {"required": [one, other]},
        "then": {
            "properties": {one: False, other: False},
            "errorMessage": f"'{one}' and '{other}' both stand here; keep one of the two",
        },
    }


def _field(field: Field) -> Schema:
    """What may stand after a name, with what editors may put there: no list of groups, which they spoil, and
    no list that is empty, which is of no help to anybody."""
    simple = "{" not in field.example or isinstance(field.kind, MapOf)
    offered = simple and "..." not in field.example and field.example != "|"
    described: Schema = {"description": field.doc}
    schema = described | kind_schema(field.kind, field.example if offered else "")
    if default_text(field) not in ("", "[]", "{}"):
        schema["default"] = from_text(default_text(field))
    if offered:
        schema["examples"] = [from_text(field.example)]
    return schema


def _single(kind: Kind) -> Schema:
    if isinstance(kind, Text):
        form = patterns.SOME_WORD if kind.long else patterns.ONE_LINE
        return {"type": _WORDS, "pattern": form, "maxLength": kind.at_most}
    if isinstance(kind, Reference):
        if kind.to == "a chart shape":
            return {"type": "string", "enum": list(SHAPE_NAMES)}
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
        return {"type": ["boolean", "string"], "pattern": _words_of(("true", "false", "yes", "no"))}
    return {"type": "string", "pattern": _form(kind)}


def _choice(kind: Choice) -> Schema:
    means = [word for word, _ in kind.means]
    options: list[Json] = [*kind.options]
    if not means:
        return {"type": "string", "enum": options}
    options += [word == "true" for word in means if word in ("true", "false")]
    return {"anyOf": [{"enum": options}, {"type": "string", "pattern": _words_of(means)}]}


def _words_of(words: "list[str] | tuple[str, ...]") -> str:
    """One of the words in letters of any size."""
    return f"^(?:{'|'.join(patterns.any_case(word) for word in words)})$"


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
