"""Single values: one reader for each kind, from the author's characters to what they mean."""

import re
from collections.abc import Callable
from dataclasses import dataclass

from packetgen.diagnostics import Problems, Report
from packetgen.load.addresses import check_address
from packetgen.load.dates import read_day, read_days_before, read_moment, read_rule
from packetgen.load.money import read_money
from packetgen.load.number_words import last_of_range, meant_number
from packetgen.load.outlines import read_outline
from packetgen.load.points import read_cell, read_pair, read_points
from packetgen.load.prose_days import complain_of_days
from packetgen.load.prose_links import check_links
from packetgen.load.prose_size import check_size
from packetgen.load.prose_slips import complain_of_slips
from packetgen.load.schema import (
    Cell,
    Choice,
    Day,
    DaysBefore,
    Hex,
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
    WebAddress,
    Whole,
    YarnSize,
    YesNo,
)
from packetgen.load.words import LIKE_FIGURES, LOST, offer, said, shown, to_write
from packetgen.load.yaml_nodes import TextNode
from packetgen.units import MM_PER_INCH, parse_number, plain
from packetgen.yarn_numbers import read_yarn_number

# '12.5 per cm', '12 threads/cm': a count of cloth as some labels have it.
_PER_CM = re.compile(
    r"(\d{1,3}(?:\.\d{1,3})?)\s*(?:[a-z]+\s*)?(?:/|per\b|to the\b)\s*(?:cm|centimet(?:re|er))",
    re.ASCII | re.IGNORECASE,
)
_NUMBER = re.compile(r"-?\d{1,12}(\.\d{1,12})?", re.ASCII)
_MEASURE = re.compile(
    r"((?:\d{1,6} )?\d{1,6}/\d{1,6}|\d{1,12}(?:\.\d{1,12})?)\s*(.*)", re.ASCII | re.DOTALL
)
_TWO_UNITS = re.compile(r"([a-z]+),? (?:and )?(\d{1,6}) ?([a-z]+)", re.ASCII | re.IGNORECASE)
_PARTS = re.compile(r"(?:rgb)?\s*\(?\s*(\d{1,3})[\s,]+(\d{1,3})[\s,]+(\d{1,3})\s*\)?", re.ASCII)
# The last are copied from an example of a message.
_NOTHING = ("", "…", "...")
_ENDS_IN_QUOTE = re.compile(r'([^"]+)"')  # an apostrophe may end a word
_CURLY = {"“": "”", "‘": "’", "„": "“", "«": "»"}


@dataclass(frozen=True)
class Asking:
    """Which value is being read, for the sentences of a fault."""

    called: str  # as a sentence calls it
    example: str  # a line that would be right
    problems: Problems


def read_single(kind: object, node: TextNode, asking: Asking) -> object | None:
    """The value of `node` read as `kind`; None where it cannot be, with the reason reported."""
    if LOST in node.value:
        return None

    def report(code: str, column: int = 0, line: int = 0, **facts: object) -> None:
        facts = {"name": asking.called, "said": said(node.value), "example": asking.example} | facts
        asking.problems.add(node.at(column, line), code, **facts)

    text = node.value
    if node.plain and len(text) > 1 and _CURLY.get(text[0]) == text[-1]:
        report("curly-quotes", straight=f'"{shown(text[1:-1])}"')
        return None
    stray = _ENDS_IN_QUOTE.fullmatch(text) if node.plain else None
    in_inches = isinstance(kind, Measure) or (isinstance(kind, Text) and kind.inches)
    if stray and not (in_inches and stray[1][-1].isdigit()):
        hint = to_write(f'"{stray[1]}"') or "write it at the beginning too, or take it away"
        report("quote-stray", hint=hint)
        return None
    value: object | None = _READERS[type(kind)](kind, text, report)
    return value


def _text(kind: Text, text: str, report: Report) -> str | None:
    if text.strip() in _NOTHING:
        report("value-empty")
        return None
    if not kind.long and "\n" in text.strip():
        report("text-one-line")
        return None
    if len(text) > kind.at_most:
        report("text-long", length=len(text), limit=kind.at_most)
        return None
    if kind.markdown and not (check_size(text, report) and check_links(text, report)):
        return None
    if kind.markdown:
        complain_of_slips(text, report)
        complain_of_days(text, report)
    return text.strip()


def _reference(kind: Reference, text: str, report: Report) -> str | None:
    return _text(Text(at_most=100), text, report)


def _short_name(kind: ShortName, text: str, report: Report) -> str | None:
    if re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", text) and len(text) <= 60:
        return text
    better = re.sub(r"[^a-z0-9]+", "-", text.casefold()).strip("-")[:60] or "larkmoss"
    report("short-name", better=better)
    return None


def _whole(kind: Whole, text: str, report: Report) -> int | None:
    if not re.fullmatch(r"-?\d{1,12}", text, re.ASCII):
        report("not-whole-number", hint=_plainly(kind, text))
        return None
    value = int(text)
    if not kind.low <= value <= kind.high:
        report("out-of-range", low=kind.low, high=kind.high)
        return None
    return value


def _number(kind: Number, text: str, report: Report) -> float | None:
    if re.fullmatch(r"\d+,\d+", text, re.ASCII):
        report("decimal-comma", better=said(text.replace(",", ".")))
        return None
    if not _NUMBER.fullmatch(text):
        per_cm = _PER_CM.fullmatch(text) if kind.per_inch else None
        per_inch = round(float(per_cm[1]) * MM_PER_INCH / 10) if per_cm else 0
        hint = _plainly(kind, text)
        if kind.low <= per_inch <= kind.high:
            hint = f"write {per_inch}, which is so many to the inch"
        report("not-a-number", hint=hint)
        return None
    value = float(text)
    if not kind.low <= value <= kind.high:
        report("out-of-range", low=plain(kind.low), high=plain(kind.high))
        return None
    return value


def _plainly(kind: Whole | Number, text: str) -> str:
    """The number that the text names, where it could stand there; else what could."""
    ends = last_of_range(text)
    if ends and kind.low <= float(ends[0]) <= kind.high:
        return f"write one number only, for example {ends[0]}"
    meant = meant_number(text)
    fits = meant is not None and kind.low <= meant <= kind.high
    if meant is None or not fits or (isinstance(kind, Whole) and meant != int(meant)):
        return f"write {kind.words}, in plain digits"
    return f"write {plain(meant)}"


_METRIC = (("mm", "cm", "m"), ("ml", "l"))
# How units are said in full, or by a sign.
_SHORT_OF = {
    name: unit
    for unit, names in {
        "mm": "millimetre millimetres millimeter millimeters",
        "cm": "centimetre centimetres centimeter centimeters",
        "m": "metre metres meter meters",
        "in": 'inch inches " ″ ”',
        "yd": "yard yards yds",
        "g": "gram grams gramme grammes",
        "oz": "ounce ounces",
        "h": "hour hours hr hrs",
        "min": "minute minutes mins",
        "ml": "millilitre millilitres milliliter milliliters",
        "l": "litre litres liter liters",
    }.items()
    for name in names.split()
}


def _added(kind: Measure, number: str, units: str) -> str:
    """'1 h 30 min' as '90 min', where the first number stands before `units`, 'h 30 min'; '' where that is no sum."""
    found = _TWO_UNITS.fullmatch(units)
    if found is None:
        return ""
    large, small = (_SHORT_OF.get(one.casefold(), one) for one in (found[1], found[3]))
    if large not in kind.units or small not in kind.units or kind.units[large] <= kind.units[small]:
        return ""
    both = parse_number(number) * kind.units[large] + float(found[2]) * kind.units[small]
    return f"{plain(round(both / kind.units[small], 2))} {small}"


def _measure(kind: Measure, text: str, report: Report) -> float | None:
    if re.match(r"\d+,\d", text, re.ASCII):
        better = text.replace(",", ".", 1)
        if parted := re.fullmatch(r"(\d+\.\d+)\s*(.*)", better, re.ASCII | re.DOTALL):
            unit = _SHORT_OF.get(parted[2].casefold(), parted[2]) or kind.unit
            better = f"{parted[1]} {unit}" if unit in kind.units else better
        report("decimal-comma", better=said(better))
        return None
    if ends := last_of_range(text):
        last, said_unit = ends
        short = _SHORT_OF.get(said_unit.casefold(), said_unit)
        better = f"{last} {short if short in kind.units else kind.unit}"
        report("range-given", what=kind.what, better=better)
        return None
    match = _MEASURE.fullmatch(text.strip())
    if not match:
        report("not-a-measure", what=kind.what)
        return None
    unit = " ".join(match[2].split())
    if not unit:
        report("unit-missing", better=said(f"{match[1]} {kind.unit}"))
        return None
    if unit not in kind.units:
        hint = offer(_SHORT_OF.get(unit.casefold(), unit), tuple(filter(str.isascii, kind.units)))
        if better := _turned(kind, match[1], unit):
            hint = better
        if better := _added(kind, match[1], unit):
            hint = f"write {better}"
        report("unit-unknown", text.rindex(match[2]), unit=said(unit), hint=hint)
        return None
    try:
        value = parse_number(match[1]) * kind.units[unit]
    except ValueError:  # a fraction with a nought below the line
        report("not-a-measure", what=kind.what)
        return None
    if not kind.low <= value <= kind.high:
        report(
            "out-of-range",
            low=f"{plain(kind.low)} {kind.unit}",
            high=f"{plain(kind.high)} {kind.unit}{_in_range(kind, match[1], unit)}",
        )
        return None
    return value


def _in_range(kind: Measure, number: str, unit: str) -> str:
    """The same number in the one other metric unit that could be meant, or else without its last nought; '' where there are
    several such units, or neither."""
    there = [
        other
        for units in _METRIC
        if unit in units
        for other in units
        if other != unit
        and other in kind.units
        and kind.low <= parse_number(number) * kind.units[other] <= kind.high
    ]
    if not there and re.fullmatch(r"[1-9]\d*0", number):
        shorter = number[:-1]
        if kind.low <= parse_number(shorter) * kind.units[unit] <= kind.high:
            return f"; did you mean {shorter} {unit}?"
    return f"; did you mean {number} {there[0]}?" if len(there) == 1 else ""


def _turned(kind: Measure, number: str, unit: str) -> str:
    """'100 ml per m2' → that it is 10 m2 per litre; of '11 litre per m2' the two units changed places, since so little is
    covered by nothing; '' where it cannot be turned."""
    try:
        value = parse_number(number)
    except ValueError:
        return ""
    whole = kind.turned.get(unit.casefold())
    if not whole or not value:
        return ""
    if value > whole:
        return f"write {number} {kind.unit}"
    return f"the other way round that is {plain(round(whole / value, 2))} {kind.unit}"


def _yarn_size(kind: YarnSize, text: str, report: Report) -> float | None:
    if re.search(r"\d,\d", text, re.ASCII):
        report("decimal-comma", better=said(text.replace(",", ".")))
        return None
    found = read_yarn_number(text)
    if found is None:
        report("not-a-yarn-number")
        return None
    if not kind.low_tex <= found.tex <= kind.high_tex:
        report("out-of-range", low=f"{plain(kind.low_tex)} tex", high=f"{plain(kind.high_tex)} tex")
        return None
    return found.tex


def _choice(kind: Choice, text: str, report: Report) -> str | None:
    meant = dict(kind.means).get(text.casefold(), text)
    if meant in kind.options:
        return meant
    named = [option for option in kind.options if re.search(rf"\b{option}\b", text.casefold())]
    several = kind.several if len(named) > 1 else ""
    report("choice-unknown", hint=several or offer(text, kind.options))
    return None


def _yes_no(kind: YesNo, text: str, report: Report) -> bool | None:
    value = {"true": True, "yes": True, "false": False, "no": False}.get(text.casefold())
    if value is None:
        report("not-yes-no")
    return value


def of_parts(text: str) -> str:
    """'rgb(217, 194, 74)' → '#d9c24a'; '' where it says no colour."""
    found = _PARTS.fullmatch(text.strip())
    parts = [int(one) for one in found.groups()] if found else []
    return f"#{bytes(parts).hex()}" if parts and max(parts) <= 255 else ""


def _hex(kind: Hex, text: str, report: Report) -> str | None:
    if re.fullmatch(r"#[0-9a-fA-F]{6}", text):
        return text.lower()
    hint = 'write six after the sign #, for example "#6b503a"'
    if re.fullmatch(r"#[0-9a-fA-F]{1,12}", text):
        hint = f'here are {len(text) - 1} after the sign #: write six, as in "#6b503a"'
    if re.fullmatch(r"[0-9a-fA-F]{6}", text):
        hint = f'write the sign # before it: "#{text}"'
    elif re.fullmatch(r"#[0-9a-fA-F]{3}", text):
        hint = f'write all six: "#{"".join(letter * 2 for letter in text[1:])}"'
    elif right := of_parts(text):
        hint = f'write it in six: "{right}"'
    elif re.fullmatch(r"#[0-9a-fA-F]{6}", figures := text.translate(LIKE_FIGURES)):
        hint = f'write figures where letters are like them: "{figures.lower()}"'
    report("not-a-colour", hint=hint)
    return None


def _web_address(kind: WebAddress, text: str, report: Report) -> str | None:
    return text if check_address(text, report) else None


def _by_report(reader: Callable[[str, Report], object]) -> Callable[..., object]:
    return lambda kind, text, report: reader(text, report)


_READERS: dict[type, Callable[..., object]] = {
    Text: _text,
    ShortName: _short_name,
    Reference: _reference,
    Whole: _whole,
    Number: _number,
    Measure: _measure,
    Money: _by_report(read_money),
    YarnSize: _yarn_size,
    Choice: _choice,
    YesNo: _yes_no,
    Hex: _hex,
    Day: _by_report(read_day),
    Moment: _by_report(read_moment),
    Rule: _by_report(read_rule),
    DaysBefore: lambda kind, text, report: read_days_before(text, kind.at_most, report),
    OutlineOf: _by_report(read_outline),
    Pair: _by_report(read_pair),
    Cell: _by_report(read_cell),
    Points: lambda kind, text, report: read_points(text, kind.at_most, report),
    WebAddress: _web_address,
}
