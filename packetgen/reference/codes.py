"""Which messages each field of a file can bring forth: those of its kind, and those that need more than
the value itself (a card, a chart, another field)."""

from collections.abc import Mapping

from packetgen.load.schema import (
    Cell,
    Choice,
    Day,
    DaysBefore,
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
from packetgen.reference.codes_by_field import BY_FIELD
from packetgen.reference.fields import Entry, within

# Of every file of YAML, whatever stands in it.
OF_ANY_FILE = (
    "file-missing", "file-unreadable", "outside-folder", "file-too-big", "file-empty", "file-name",
    "file-name-kept", "file-name-long", "names-alike", "file-ending", "file-not-read", "more-alike",
    "not-utf8", "not-text", "text-kept-otherwise", "unseen-character", "letter-lost", "indent-not-spaces", "tab",
    "name-repeated", "name-not-a-word", "needs-quotes", "second-document", "too-deep",
    "too-many-values", "quote-open", "bracket-open", "comma-missing", "comma-left-out", "colour-unquoted",
    "colon-in-value", "colon-missing", "line-goes-on", "space-left-out", "indentation", "dash-missing",
    "name-gone", "name-gone-within", "values-exchanged", "entry-astray", "dash-too-many", "list-beside-name", "after-value", "backslash", "bar-then-line", "line-unclear", "file-not-names",
    "file-elsewhere", "folder-elsewhere", "card-elsewhere", "name-unknown", "name-set-out", "text-goes-on", "name-alone", "comma-for-colon", "name-left-out", "colon-left-out", "bar-left-out",
    "name-in-remark", "value-in-remark", "remark-in-text",
)  # fmt: skip

_ADDRESS = ("not-an-address", "address-scheme", "address-login", "address-host", "address-port")
MARKDOWN = (
    "prose-long", "prose-brackets", "prose-too-deep", "prose-picture", "prose-link-open", "prose-no-day", "prose-weekday", "prose-day-misspelt",
    "prose-link-parted", "prose-list-sign", "prose-heading-lost", "prose-list-above", "prose-struck", "prose-bold-open", "prose-tag", *_ADDRESS, "not-a-mail-address",
)  # fmt: skip
_DAY = ("day-form", "year-range", "no-such-day")
_POINTS = ("not-a-point", "list-long")

_BY_KIND: Mapping[type, tuple[str, ...]] = {
    Text: ("text-long", "text-cut", "colour-empty"),
    Reference: ("text-one-line", "text-long", "reference-unknown"),
    ShortName: ("short-name",),
    Whole: ("not-whole-number", "out-of-range"),
    Number: ("not-a-number", "decimal-comma", "out-of-range"),
    Measure: ("not-a-measure", "two-measures", "range-given", "unit-missing", "unit-unknown", "decimal-comma", "out-of-range"),
    Money: ("not-a-price", "price-order", "decimal-comma", "out-of-range"),
    YarnSize: ("not-a-yarn-number", "decimal-comma", "out-of-range"),
    Choice: ("choice-unknown",),
    YesNo: ("not-yes-no",),
    Hex: ("not-a-colour", "colour-empty"),
    Day: _DAY,
    Moment: ("moment-form", *_DAY, "no-such-time", "zone-unknown"),
    Rule: ("rule-form", "word-unknown", "no-such-day", "rule-not-every-year", "rule-too-far"),
    DaysBefore: ("days-before-form", "unit-missing", "unit-unknown", "out-of-range"),
    OutlineOf: (
        *_POINTS, "out-of-range", "outline-short", "outline-crosses", "outline-touches", "outline-flat",
        "path-start", "path-sign", "path-numbers", "path-second", "outline-attribute",
    ),
    Pair: ("not-a-point",),
    Cell: ("not-a-stitch",),
    Points: (*_POINTS, "points-unquoted", "not-a-quarter"),
    WebAddress: _ADDRESS,
    ListOf: ("wants-list", "none-said"),
    MapOf: ("wants-lines", "none-said"),
    Group: ("wants-names", "none-said"),
}  # fmt: skip


def codes_of(file: FileShape, entry: Entry) -> tuple[str, ...]:
    """Codes of all messages that this field can give, those of every file apart."""
    besides = BY_FIELD.get(file.path, {}).get(entry.path, ())
    found = _of_name(entry) + _of_kind(entry.field.kind) + besides
    return tuple(dict.fromkeys(found))


def _of_name(entry: Entry) -> tuple[str, ...]:
    name, group = entry.field.name, entry.group
    alone = any(name in names for names in group.one_of)
    needed = any(name in needs.names for needs in group.needs)
    required = entry.field.required and entry.field is not group.others
    missing = ("name-missing",) if required or alone or needed else ()
    return missing + (("names-instead",) if alone else ()) + ("value-empty",)


def _of_kind(kind: Kind) -> tuple[str, ...]:
    codes: list[str] = []
    for one in within(kind):
        codes += _BY_KIND.get(type(one), ())
        if isinstance(one, Text):
            codes += () if one.long else ("text-one-line",)
            codes += MARKDOWN if one.markdown else ()
        if isinstance(one, ListOf):
            codes += ("list-empty",) if one.at_least else ()
            codes += ("list-long",)
        if not isinstance(one, Group | ListOf | MapOf | TextOr):
            codes += ("wants-one-value", "curly-quotes", "quote-stray")
    return tuple(codes)
