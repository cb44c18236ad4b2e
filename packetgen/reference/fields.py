"""Every field of every file, one after the other, as the schema of `load` has them."""

from collections.abc import Iterator
from dataclasses import dataclass

from packetgen.load.schema import (
    DaysBefore,
    Field,
    FileShape,
    Group,
    Kind,
    ListOf,
    MapOf,
    Measure,
    Number,
    Pair,
    Points,
    ShortName,
    Text,
    TextOr,
    Whole,
    YarnSize,
)
from packetgen.units import plain


@dataclass(frozen=True)
class Entry:
    """A field at its place: `path` is 'colours[].hex' for the colour of each entry of the list."""

    path: str
    field: Field
    group: Group  # that it stands in


def entries(file: FileShape) -> tuple[Entry, ...]:
    """All fields of a kind of file, each before the fields within it."""
    return tuple(_within(file.shape, ""))


def _within(group: Group, before: str) -> Iterator[Entry]:
    for field in (*group.fields, *([group.others] if group.others else [])):
        path = before + field.name
        yield Entry(path, field, group)
        kind = field.kind
        while isinstance(kind, ListOf | MapOf | TextOr):
            if isinstance(kind, TextOr):
                kind = kind.group
                continue
            path += "[]" if isinstance(kind, ListOf) else ".<name>"
            kind = kind.kind
        if isinstance(kind, Group):
            yield from _within(kind, f"{path}.")


def shape_name(file: FileShape) -> str:
    """'finish' for finishes/<piece>/finish.yaml, 'thread-card' for threads/<card>.yaml."""
    stem = file.path.rpartition("/")[2].removesuffix(".yaml")
    return file.shape.what.partition(" ")[2].replace(" ", "-") if "<" in stem else stem


def type_words(kind: Kind) -> str:
    """What may be written, in words, for a cell of a table."""
    if isinstance(kind, ListOf):
        one = type_words(kind.kind)
        return f"{one}, or a list of such" if kind.or_one else f"a list, each entry {one}"
    if isinstance(kind, MapOf):
        return f"{kind.of}, each with {type_words(kind.kind)}"
    if isinstance(kind, Measure):
        return f"{kind.what} with its unit: {', '.join(kind.units)}"
    if isinstance(kind, Whole | Number):
        return kind.words.partition(" from ")[0]
    if isinstance(kind, DaysBefore):
        return "a number of days or weeks, or 'on the day'"
    return kind.words


def limits(kind: Kind) -> tuple[str, ...]:
    """Between which bounds a value must lie; the lengths of texts, the numbers of entries."""
    if isinstance(kind, Text):
        return (f"at most {kind.at_most:,} characters",)
    if isinstance(kind, ShortName):
        return ("at most 60 characters",)
    if isinstance(kind, Whole | Number):
        return (f"{_bound(kind.low)} to {_bound(kind.high)}",)
    if isinstance(kind, Measure):
        return (f"{_bound(kind.low)} to {_bound(kind.high)} {kind.unit}",)
    if isinstance(kind, YarnSize):
        return (f"{_bound(kind.low_tex)} to {_bound(kind.high_tex)} tex",)
    if isinstance(kind, DaysBefore):
        return (f"0 to {kind.at_most} days",)
    if isinstance(kind, Points):
        return (f"at most {kind.at_most:,} points", "each on a quarter of a stitch")
    if isinstance(kind, TextOr):
        return limits(kind.text)
    if isinstance(kind, MapOf):
        return limits(kind.kind)
    if isinstance(kind, ListOf):
        least = f"{kind.at_least} to " if kind.at_least else "at most "
        return (f"{least}{kind.at_most:,} entries", *limits(kind.kind))
    return ()


def default_text(field: Field) -> str:
    """The value that stands for a field left out, written as an author would write it.

    '' where there is none, or where its own words say what happens.
    """
    value, kind = field.default, field.kind
    if value is None or value == "":
        return ""
    if value == ():
        return "{}" if isinstance(kind, MapOf) else "[]"
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(kind, DaysBefore):
        return f"{value} days"
    if isinstance(kind, Pair) and isinstance(value, tuple):
        return ",".join(plain(part) for part in value)
    if isinstance(value, int | float):
        unit = f" {kind.unit}" if isinstance(kind, Measure) else ""
        return f"{plain(value)}{unit}"
    return str(value)


def required_words(entry: Entry) -> str:
    """'required', 'optional', or what it depends on."""
    field, group = entry.field, entry.group
    if field is group.others:
        return "as many as there are"
    if field.required:
        return "required"
    for names in group.one_of:
        if field.name in names:
            others = " or ".join(f"`{name}`" for name in names if name != field.name)
            return f"exactly one of this and {others}"
    for needs in group.needs:
        if field.name in needs.names:
            return f"optional; required where `{needs.name}` is '{needs.option}'"
    return "optional"


def within(kind: Kind) -> tuple[Kind, ...]:
    """The kind itself and, for lists, maps and choices of form, those that it is made of; not groups' fields."""
    if isinstance(kind, ListOf | MapOf):
        return kind, *within(kind.kind)
    if isinstance(kind, TextOr):
        return kind, *within(kind.text), *within(kind.group)
    return (kind,)


def _bound(value: float) -> str:
    """Thousands set apart, as in 100,000."""
    return f"{value:,}" if value == int(value) else plain(value)
