"""What a ledger must look like, as JSON Schema (draft 2020-12): one file for all ledgers of a build."""

import json
from collections.abc import Mapping

from packetgen.render.ledger_formulas import FORMULAS, Formula

FORMAT = 1  # of the ledger; another number where a reader's program would have to change
FILE_NAME = "ledger.schema.json"
UNITS = (
    "mm", "cm", "in", "m", "mm2", "ml", "g", "h", "share", "word", "points",
    "stitches", "patches", "pieces", "beads", "packets", "tins", "units",
)  # fmt: skip

_NUMBER = {"type": "number"}
_TEXT = {"type": "string", "minLength": 1}
_DAY = {"type": "string", "pattern": r"^\d{4}-\d{2}-\d{2}$"}


def _list(of: Mapping[str, object], **more: object) -> dict[str, object]:
    return {"type": "array", "items": of, **more}


def _tuple(*of: Mapping[str, object]) -> dict[str, object]:
    return {"type": "array", "prefixItems": list(of), "items": False, "minItems": len(of)}


def _object(required: Mapping[str, object], **optional: object) -> dict[str, object]:
    return {
        "type": "object",
        "properties": {**required, **optional},
        "required": list(required),
        "additionalProperties": False,
    }


_POINT = _tuple(_NUMBER, _NUMBER)

# The kinds of input that formulas name.
KINDS: Mapping[str, Mapping[str, object]] = {
    "number": _NUMBER,
    "numbers": _list(_NUMBER),
    "point": _POINT,
    "points": _list(_POINT),
    "outlines": _list(_list(_POINT)),
    "pairs": _list(_tuple(_NUMBER, _NUMBER)),
    "groups": _list(_tuple(_NUMBER, _NUMBER, _NUMBER)),
    "words": _list(_tuple(_NUMBER, _TEXT)),
    "needles": _list(
        _object(
            {
                "mark": _TEXT,
                "kind": _TEXT,
                "one_strand_m": _NUMBER,
                "strands": {"type": "integer", "minimum": 1},
                "colours_in_needle": {"enum": [1, 2]},
            }
        )
    ),
}

_PATTERN = _object(
    {
        "id": _TEXT,
        "title": _TEXT,
        "designer": _TEXT,
        "series": _TEXT,
        "revision": _object({"number": {"type": "integer", "minimum": 1}, "date": _DAY}),
        "finishing_piece": _TEXT,
        "chart": _list(_TEXT, minItems=1),
        "key": _list(
            _object(
                {
                    "mark": {"type": "string", "minLength": 1, "maxLength": 1},
                    "stitch": _TEXT,
                    "threads": {
                        "type": "object",
                        "additionalProperties": _list(
                            _object({"card": _TEXT, "number": _TEXT, "name": _TEXT}), minItems=1
                        ),
                    },
                }
            )
        ),
        "fractions": _list(
            _object(
                {
                    "column": {"type": "integer", "minimum": 1},
                    "row": {"type": "integer", "minimum": 1},
                    "mark": _TEXT,
                    "stitch": _TEXT,
                    "corner": {"type": ["string", "null"]},
                }
            )
        ),
        "lines": _list(
            _object({"mark": _TEXT, "points": _list(_POINT), "long": {"type": "boolean"}})
        ),
        "knots": _list(_object({"mark": _TEXT, "at": _POINT})),
        "daisies": _list(_object({"mark": _TEXT, "base": _POINT, "tip": _POINT})),
        "beads": _list(_object({"card": _TEXT, "number": _TEXT, "at": _POINT})),
    }
)

_ASSUMPTIONS = _object(
    {
        "needleful_mm": _NUMBER,
        "tail_mm": _NUMBER,
        "travel_stitches": _NUMBER,
        "ease": _object({"careful": _NUMBER, "usual": _NUMBER, "generous": _NUMBER}),
        "stitches_an_hour": _object({"slow": _NUMBER, "usual": _NUMBER, "quick": _NUMBER}),
    }
)


def schema() -> dict[str, object]:
    """The schema. Each figure must name a formula of the list and give exactly that formula's inputs."""
    figure = _object(
        {
            "figure": _TEXT,
            "of": {"type": "object"},
            "value": {"type": ["number", "string"]},
            "unit": {"enum": list(UNITS)},
            "formula": {"enum": list(FORMULAS)},
            "inputs": {"type": "object"},
        }
    )
    figure["allOf"] = [
        _where("formula", name, {"inputs": _inputs(formula)}) for name, formula in FORMULAS.items()
    ]
    # A word is a text, and every other value a number.
    figure["if"] = {"properties": {"unit": {"const": "word"}}}
    figure["then"] = {"properties": {"value": _TEXT}}
    figure["else"] = {"properties": {"value": _NUMBER}}
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "A ledger: every reckoned figure of a pattern, and what it follows from",
        **_object(
            {
                "$schema": _TEXT,
                "ledger": {"const": FORMAT},
                "pattern": _PATTERN,
                "assumptions": _ASSUMPTIONS,
                "formulas": _object({name: {"const": one.text} for name, one in FORMULAS.items()}),
                "figures": _list(figure, minItems=1),
                "character_map": {
                    "type": "object",
                    "propertyNames": {"pattern": "^U\\+[0-9A-F]{4}$"},
                    "additionalProperties": {"type": "string", "minLength": 1, "maxLength": 1},
                },
            }
        ),
    }


def schema_file() -> bytes:
    return (json.dumps(schema(), ensure_ascii=False, indent=1) + "\n").encode()


def _inputs(formula: Formula) -> dict[str, object]:
    return _object({name: KINDS[kind] for name, kind in formula.inputs.items()})


def _where(name: str, value: str, then: Mapping[str, object]) -> dict[str, object]:
    return {
        "if": {"properties": {name: {"const": value}}},
        "then": {"properties": then},
    }
