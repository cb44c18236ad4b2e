"""What may stand in an author's file, as pure data.

A file is a `Group` of `Field`s; each field has a kind. Nothing here reads anything:
the same data check a file, make the reference page and make the JSON Schema.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from packetgen.load.words import listed
from packetgen.units import MM_PER_UNIT, plain


@dataclass(frozen=True)
class Text:
    """Words. `long` text may run over several lines; the links and pictures of `markdown` are looked at. A figure
    with a " behind it may be one of `inches`."""

    long: bool = False
    at_most: int = 200  # characters
    markdown: bool = False
    inches: bool = True

    @property
    def words(self) -> str:
        return "text" if self.long else "text on one line"


@dataclass(frozen=True)
class ShortName:
    """A name that other lines refer to and that becomes part of file names:
    small letters, digits, hyphens.
    """

    words = "a short name of small letters, digits and hyphens"


@dataclass(frozen=True)
class Reference:
    """The name of something written elsewhere, for instance a thread card."""

    to: str

    @property
    def words(self) -> str:
        return f"the name of {self.to}"


@dataclass(frozen=True)
class Whole:
    low: int
    high: int

    @property
    def words(self) -> str:
        return f"a whole number from {self.low} to {self.high}"


@dataclass(frozen=True)
class Number:
    low: float
    high: float
    per_inch: bool = False  # a count, of which labels may say how many are in a centimetre

    @property
    def words(self) -> str:
        return f"a number from {plain(self.low)} to {plain(self.high)}"


@dataclass(frozen=True)
class Measure:
    """A number with its unit. The value is kept in `unit`;
    `units` holds how many of it one of each is.
    """

    what: str
    unit: str
    units: Mapping[str, float]
    low: float
    high: float
    # The other way round, as 'ml per m2' is of 'm2 per litre': what is divided by such a number.
    turned: Mapping[str, float] = field(default_factory=dict)

    @property
    def words(self) -> str:
        return f"{self.what} from {plain(self.low)} to {plain(self.high)} {self.unit}"


def length_mm(low: float, high: float) -> Measure:
    return Measure("a length", "mm", MM_PER_UNIT, low, high)


def length_m(low: float, high: float) -> Measure:
    return Measure(
        "a length", "m", {unit: mm / 1000 for unit, mm in MM_PER_UNIT.items()}, low, high
    )


COVERAGE = Measure(
    "a coverage",
    "m2 per litre",
    {"m2 per litre": 1, "m² per litre": 1, "m2/l": 1, "m²/l": 1},
    0.1,
    50,
    {
        f"{volume}{per}{area}": litres
        for volume, litres in (("ml", 1000.0), ("l", 1.0), ("litre", 1.0), ("litres", 1.0))
        for per in (" per ", "/")
        for area in ("m2", "m²", "square metre")
    },
)
DURATION = Measure("a time", "h", {"h": 1, "min": 1 / 60, "days": 24, "day": 24}, 0, 240)
VOLUME = Measure("a volume", "ml", {"ml": 1, "cl": 10, "l": 1000}, 1, 20000)
# The ounce is a sixteenth of a pound of 453.59237 g exactly.
WEIGHT = Measure("a weight", "g", {"g": 1, "kg": 1000, "oz": 453.59237 / 16}, 0.1, 2000)


@dataclass(frozen=True)
class YarnSize:
    """How fine a thread is, in the system of its label. The value is kept in tex."""

    low_tex: float
    high_tex: float

    words = "a yarn number with its system: tex, dtex, denier, Nm or Ne"


@dataclass(frozen=True)
class Money:
    """An amount, exactly as written, and the three letters of its currency."""

    words = "an amount and the three letters of its currency"


@dataclass(frozen=True)
class Choice:
    options: tuple[str, ...]
    means: tuple[tuple[str, str], ...] = ()  # other words → the option that each stands for
    several: str = ""  # how an author writes what is several of them

    @property
    def words(self) -> str:
        return listed(self.options)


@dataclass(frozen=True)
class YesNo:
    words = "true or false"


@dataclass(frozen=True)
class Hex:
    words = "a colour of '#' and six digits or letters a to f"


@dataclass(frozen=True)
class Day:
    words = "a date as year-month-day"


@dataclass(frozen=True)
class Moment:
    words = "a day, or a day with an hour and its time zone"


@dataclass(frozen=True)
class Rule:
    """A day that comes every year."""

    words = "a day that comes every year"


@dataclass(frozen=True)
class DaysBefore:
    """How long before a day."""

    at_most: int

    @property
    def words(self) -> str:
        return f"up to {self.at_most} days or as many weeks, or 'on the day'"


@dataclass(frozen=True)
class OutlineOf:
    """A shape in mm, as corners or as the data of an SVG path: x to the right, y down; it closes by itself."""

    words = "three corners or more, as x,y in mm with a space between, or an SVG path"


@dataclass(frozen=True)
class Pair:
    """One x,y in mm."""

    words = "one x,y in mm"


@dataclass(frozen=True)
class Cell:
    """One stitch of the chart: column,row counted from 1."""

    words = "one column,row in whole stitches"


@dataclass(frozen=True)
class Points:
    """Corner coordinates in the chart, column first."""

    at_most: int = 2000

    @property
    def words(self) -> str:
        return "points of column,row with a space between"


@dataclass(frozen=True)
class WebAddress:
    words = "a web address that starts with https:// or http://"


@dataclass(frozen=True)
class ListOf:
    kind: "Kind"
    at_least: int = 0
    at_most: int = 2000
    or_one: bool = False  # a single value may stand without the brackets

    @property
    def words(self) -> str:
        return f"a list of {self.kind.words}"


@dataclass(frozen=True)
class TextOr:
    """One line of text, or a group that says more."""

    text: Text
    group: "Group"

    @property
    def words(self) -> str:
        return f"{self.text.words}, or {self.group.words}"


@dataclass(frozen=True)
class MapOf:
    """Names of the author's own choice, each with a value of the same kind;
    `example` is such a value.
    """

    kind: "Kind"
    of: str
    example: str

    @property
    def words(self) -> str:
        return f"{self.of}, each with a name of its own"


@dataclass(frozen=True)
class Needs:
    """Where the field `name` has this option, the fields `names` are required too."""

    name: str
    option: str
    names: tuple[str, ...]


@dataclass(frozen=True)
class Group:
    """Named fields. `others` is for names of the author's own, where these are allowed."""

    what: str  # in words: 'a thread card'
    fields: "tuple[Field, ...]"
    others: "Field | None" = None
    one_of: tuple[tuple[str, ...], ...] = ()  # of each of these sets of names exactly one is given
    apart: tuple[tuple[str, str], ...] = ()  # not both of such two are given; or neither
    needs: tuple[Needs, ...] = ()

    @property
    def words(self) -> str:
        return self.what


def names_in(kind: "Kind") -> tuple[str, ...]:
    """Every name that a field has in there, however deep."""
    if isinstance(kind, ListOf | MapOf):
        return names_in(kind.kind)
    if isinstance(kind, TextOr):
        return names_in(kind.group)
    if not isinstance(kind, Group):
        return ()
    below = (name for field in kind.fields for name in (field.name, *names_in(field.kind)))
    others = names_in(kind.others.kind) if kind.others else ()
    return tuple(dict.fromkeys((*below, *others)))


Kind = (
    Text | ShortName | Reference | Whole | Number | Measure | Money | YarnSize | Choice | YesNo | Hex | Day | Moment |
    Rule | DaysBefore
    | OutlineOf | Pair | Cell | Points | WebAddress | ListOf | TextOr | MapOf | Group
)  # fmt: skip


@dataclass(frozen=True)
class Field:
    """One name in a file. `example` is written as an author would write it after the colon."""

    name: str
    kind: Kind
    doc: str
    example: str
    required: bool = True
    default: object = None  # the value where an optional field is left out
    example_for: tuple[
        tuple[str, str, str], ...
    ] = ()  # beside a name with a value: another example


@dataclass(frozen=True)
class Below:
    """The names that may stand, and those that must, in what belongs to the field `name`, or in an entry of it."""

    name: str
    names: frozenset[str]
    needed: frozenset[str]

    def has(self, names: frozenset[str]) -> bool:
        """Whether what has these names is complete and may stand there."""
        return bool(names) and self.needed <= names <= self.names


def all_below(kind: Group) -> tuple[Below, ...]:
    """Of each field of a group what stands below it: nothing, unless it is a group itself, or a list of groups."""
    return tuple(map(_below, kind.fields))


def _below(field: Field) -> Below:
    kind = field.kind.kind if isinstance(field.kind, ListOf) else field.kind
    kind = kind.group if isinstance(kind, TextOr) else kind
    if not isinstance(kind, Group) or kind.others:
        return Below(field.name, frozenset(), frozenset())
    names = frozenset(one.name for one in kind.fields)
    return Below(field.name, names, frozenset(one.name for one in kind.fields if one.required))


@dataclass(frozen=True)
class FileShape:
    """One kind of file: its path with <names> of the author's choice, and what stands in it."""

    path: str
    doc: str
    shape: Group
