"""Names and values between braces that a slip has run together, or commas have cut apart."""

import re
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass

from packetgen.load.schema import Field, Group, Hex, Measure, Money, Number, Points
from packetgen.load.single_values import of_parts
from packetgen.load.words import said, shown
from packetgen.load.yaml_nodes import Entry, Node, TextNode, is_nothing, of_points

_CURLY = "“”„‘’«»"
# A name and its value, with a space, a bare colon, a semicolon or an equals sign between them.
_RUN_TOGETHER = re.compile(r"""(?P<name>[^\s:;="']+)(?:\s*[=;]|[:\s])\s*(?P<value>[^\s:;=].*)""")

_DECIMALS = re.compile(r"\d{1,2}(?:\s*[^\d\s].*)?", re.ASCII)  # and their unit
_TWO_MEASURES = re.compile(
    r"(?P<one>\d+(?:\.\d+)?)\s*(?P<first>mm|cm|in)?\s*[x×]\s*(?P<other>\d+(?:\.\d+)?)\s*(?P<unit>mm|cm|in)?",
    re.ASCII,
)


@dataclass(frozen=True)
class Slip:
    """Of the first of some entries: the field that it is meant to be, and the message on it. So many `entries` have
    pieces of its value; `at_value` says whether the message is about that."""

    name: str
    code: str
    facts: dict[str, object]
    entries: int = 1
    at_value: bool = False


def slip(
    entries: Sequence[Entry], at: int, fields: Collection[str], first: bool, field: Field | None
) -> Slip | None:
    """What is wrong with entry `at`, and with those behind it that have pieces of its value. `fields` are the names
    that may stand there, and `field` is the one that its name is of; `first` says whether nothing stands before it."""
    key, value = entries[at]
    apart = _run_together(key, value)
    # Elsewhere it may be the end of a text that had a comma, of which name-alone speaks.
    if apart and (first or apart["name"] in fields or apart["value"][0] in "\"'"):
        text, more = _text_of(apart["value"], entries[at + 1 :])
        right = f"{shown(apart['name'])}: {shown(text)}"
        parting = key.value[len(apart["name"]) :]
        hint = f"write {right}"
        if parting.startswith(":"):
            typed = parting[1:2].isspace()  # by a word processor, as a space that does not break
            what = "type the space after the colon anew" if typed else "put a space after the colon"
            hint = f"{what}: {right}"
        facts: dict[str, object] = {"name": said(apart["name"]), "hint": hint}
        return Slip(apart["name"], "colon-left-out", facts, 1 + more)
    if comma := _comma_for_colon(entries, at, fields, field) or _decimal_comma(
        key, value, entries[at + 1 : at + 2], field
    ):
        return comma
    if field is not None and isinstance(field.kind, Hex):
        return _parts_of_colour(key, value, entries[at + 1 :])
    if field is None or not isinstance(field.kind, Points):
        return None
    behind = tuple(_points_behind(entries[at + 1 :]))
    if not behind or not isinstance(value, TextNode) or not value.plain:
        return None
    text = ",".join((value.value, *behind))
    points = text.strip(_CURLY + "\"'")
    facts = {
        "quotes": "straight quotes" if {*text} & {*_CURLY} else "quotes",
        "example": f'{key.value}: "{shown(points)}"',
    }
    return Slip(key.value, "points-unquoted", facts, 1 + len(behind), at_value=True)


def two_measures(kind: Group, entries: Sequence[Entry], at: int) -> tuple[str, str] | None:
    """Of a measure that stands as '10 x 2 mm' the name that its second figure belongs to, which is missing, and how both
    are written."""
    key, value = entries[at]
    found = isinstance(value, TextNode) and _TWO_MEASURES.fullmatch(value.value.strip())
    names = [field.name for field in kind.fields if found and isinstance(field.kind, Measure)]
    if not found or key.value not in names:
        return None
    there = {name.value for name, _ in entries}
    later = [name for name in names[names.index(key.value) + 1 :] if name not in there]
    if not later:
        return None
    unit = found["unit"] or found["first"] or "mm"
    return later[0], f"{key.value}: {found['one']} {unit}, {later[0]}: {found['other']} {unit}"


def _comma_for_colon(
    entries: Sequence[Entry], at: int, fields: Collection[str], field: Field | None
) -> Slip | None:
    """'{moss, "31"}': a name that may stand there without a value, and behind it what is no name."""
    (key, value), behind = entries[at], entries[at + 1 : at + 2]
    if field is None or not is_nothing(value) or not key.plain or not behind:
        return None
    (said_next, nothing), *_ = behind
    is_value = is_nothing(nothing) and said_next.value not in fields
    if not is_value or (key.value not in fields and said_next.plain):
        return None
    quote = "" if said_next.plain else '"'
    right = f"{shown(key.value)}: {quote}{shown(said_next.value)}{quote}"
    return Slip(key.value, "comma-for-colon", {"name": said(key.value), "right": right}, 2)


def _decimal_comma(
    key: TextNode, value: Node, behind: Sequence[Entry], field: Field | None
) -> Slip | None:
    """'overlap: 1,5 cm', of which the comma has parted '5 cm'."""
    numbers = field is not None and isinstance(field.kind, Measure | Money | Number)
    if not numbers or not isinstance(value, TextNode) or not value.plain or not behind:
        return None
    ((more, nothing),) = behind
    whole = re.fullmatch(r"\d+", value.value, re.ASCII)
    if not whole or not is_nothing(nothing) or not _DECIMALS.fullmatch(more.value):
        return None
    facts: dict[str, object] = {
        "said": said(f"{value.value},{more.value}"),
        "better": said(f"{value.value}.{more.value}"),
    }
    return Slip(key.value, "decimal-comma", facts, 2, at_value=True)


def _parts_of_colour(key: TextNode, value: Node, behind: Sequence[Entry]) -> Slip | None:
    """'hex: rgb(217, 194, 74)', which commas have cut apart."""
    if not isinstance(value, TextNode) or not value.plain:
        return None
    text = ", ".join((value.value, *(name.value for name, _ in behind[:2])))
    if len(behind) < 2 or not all(is_nothing(nothing) for _, nothing in behind[:2]):
        return None
    if not (right := of_parts(text)):
        return None
    facts = {"name": said(key.value), "said": said(text), "hint": f'write it in six: "{right}"'}
    return Slip(key.value, "not-a-colour", {**facts}, 3, at_value=True)


def _points_behind(entries: Sequence[Entry]) -> Iterator[str]:
    """The pieces of points that stand next, as names without a value: '1 4', '2.5'."""
    for key, value in entries:
        if not of_points(key, value):
            return
        yield key.value


def _run_together(key: TextNode, value: Node) -> re.Match[str] | None:
    """The name and the value of which both stand in `key`, since no colon with a space parts them."""
    if not (key.plain and is_nothing(value) and value.span[0] == key.span[1]):
        return None
    return _RUN_TOGETHER.fullmatch(key.value)


def _text_of(begun: str, entries: Sequence[Entry]) -> tuple[str, int]:
    """A text with what its commas have parted from it, and over how many of the entries it goes on."""
    quote = begun[0]
    words = [begun]
    if quote not in "\"'" or (len(begun) > 1 and begun.endswith(quote)):
        return begun, 0
    for key, _ in entries:
        words.append(key.value)
        if key.value.endswith(quote):
            return ",".join(words), len(words) - 1
    return begun, 0
