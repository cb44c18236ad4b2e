"""The nouns of the trade, frozen. No arithmetic here: that is `packetgen.reckon`'s.

Every noun that a later stage may complain about keeps the `Place` where its author wrote it.
Lengths are millimetres or metres, as the name says; names and numbers are the author's own.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import Enum

from packetgen.diagnostics import Place

BARE = "."
# The editions of a chart. The packet itself is in colour; each other one is a document of its own.
EDITION_NAMES = ("colour", "black-and-white", "large-print", "tablet", "written")


class Stitch(Enum):
    """What a key line is worked in. The value is the author's word for it."""

    FULL = "full"
    HALF = "half"  # lower left to upper right
    HALF_BACK = "half back"  # upper left to lower right
    THREE_QUARTER = "three-quarter"
    QUARTER = "quarter"
    PETITE = "petite"  # a full cross in one quarter of a cell

    @property
    def in_a_corner(self) -> bool:
        """Whether it is not said by its cell alone: it sits in a corner, or leaves one open."""
        return self in (Stitch.THREE_QUARTER, Stitch.QUARTER, Stitch.PETITE)


class Corner(Enum):
    """Where a quarter or petite stitch sits, or which corner a three-quarter stitch leaves open."""

    TOP_LEFT = "top left"
    TOP_RIGHT = "top right"
    BOTTOM_LEFT = "bottom left"
    BOTTOM_RIGHT = "bottom right"


class Weave(Enum):
    AIDA = "aida"
    EVENWEAVE = "evenweave"
    LINEN = "linen"


# --- what is bought -------------------------------------------------------------------------------


@dataclass(frozen=True)
class Colour:
    """One colour of a card of threads or beads."""

    number: str
    name: str
    hex: str


@dataclass(frozen=True)
class ThreadCard:
    """A line of thread: how it is sold and its colours by number."""

    id: str
    name: str
    material: str
    strands: int  # plies that can be parted; 1 is a thread used whole
    tex: float  # of one strand, grams in 1000 m (ISO 1144)
    sold_as: str  # the word for one unit: skein, spool, ball
    length_m: float  # of one unit as sold, before parting
    hand_dyed: bool
    colours: Mapping[str, Colour]
    braid: bool = False  # a metallic braid: one strand of it, whatever a thread set says


@dataclass(frozen=True)
class Cloth:
    id: str
    name: str
    weave: Weave
    count_per_inch: float
    over: int  # threads (or blocks) that one stitch covers, as usually worked
    hand_dyed: bool
    colours: Mapping[str, Colour]  # by name; number is the name again


@dataclass(frozen=True)
class BeadCard:
    id: str
    name: str
    size_mm: float
    per_packet: int
    colours: Mapping[str, Colour]


# --- the finishing piece --------------------------------------------------------------------------

Outline = tuple[tuple[float, float], ...]  # corners in mm, x to the right, y down, closed by itself


@dataclass(frozen=True)
class Paint:
    name: str
    hex: str
    put_on_with: str  # brush or spray
    covers_m2_per_litre: float  # from the tin's label
    dries_in_h: float
    tin_ml: float


@dataclass(frozen=True)
class Part:
    """A sawn piece of wood."""

    name: str
    outline: Outline
    at_mm: tuple[float, float]  # where its own 0,0 stands in the drawing of the whole
    thickness_mm: float
    pieces: int
    paint: Paint
    coats: int
    both_faces: bool  # with edges; otherwise the front alone


@dataclass(frozen=True)
class KeepOut:
    name: str
    outline: Outline


@dataclass(frozen=True)
class Trim:
    kind: str  # straight, round or gathered
    ratio: float  # length of trim for a length of edge; 1 unless gathered
    overlap_mm: float


@dataclass(frozen=True)
class Magnets:
    pairs: int  # a magnet in the mounted stitching, a steel washer on the wood
    diameter_mm: float
    thickness_mm: float
    inset_mm: float  # centre to edge of the mounting card


@dataclass(frozen=True)
class Hardware:
    name: str
    pieces: int
    size: str


@dataclass(frozen=True)
class FinishingPiece:
    """The painted wooden piece on which every design of a series is shown."""

    id: str
    name: str
    about: str
    panel: Outline
    keep_outs: tuple[KeepOut, ...]
    border_mm: float
    fold_over_mm: float
    wadding_inset_mm: float
    parts: tuple[Part, ...]
    paints: tuple[Paint, ...]
    trim: Trim
    magnets: Magnets
    hardware: tuple[Hardware, ...]
    cautions: tuple[str, ...]
    steps_markdown: str
    place: Place = field(compare=False)


# --- the pattern ----------------------------------------------------------------------------------


@dataclass(frozen=True)
class ThreadSet:
    """One line of thread with the strands it is worked in. A pattern's first set is the model's."""

    id: str
    card: ThreadCard
    strands: int
    backstitch_strands: int
    knot_strands: int
    daisy_strands: int = 1


@dataclass(frozen=True)
class ClothOption:
    """A cloth in a colourway, worked over `over` of its threads."""

    cloth: Cloth
    colour: Colour
    over: int
    place: Place = field(compare=False)


@dataclass(frozen=True)
class KeyLine:
    """One character of the chart: its colour in every thread set, and how it is worked.

    `threads[set id]` holds one colour, or two for a blend (both in one needle).
    `strands[set id]` holds the author's own number of strands where she gave one.
    `cards[set id]` holds the cards of those colours where they are not all the set's own.
    `symbol` is the name of the chart shape that the author chose, if she did.
    """

    mark: str
    stitch: Stitch
    threads: Mapping[str, tuple[Colour, ...]]
    strands: Mapping[str, int]
    place: Place = field(compare=False)
    cards: Mapping[str, tuple[ThreadCard, ...]] = field(default_factory=dict)
    symbol: str | None = None

    def cards_in(self, thread_set: ThreadSet) -> tuple[ThreadCard, ...]:
        """The card of each colour in that set's needle."""
        own = (thread_set.card,) * len(self.threads[thread_set.id])
        return self.cards.get(thread_set.id, own)


@dataclass(frozen=True)
class Grid:
    """The chart: `rows[y][x]` is a key mark or BARE; all rows are equally long."""

    rows: tuple[str, ...]
    place: Place = field(compare=False)

    @property
    def width(self) -> int:
        return len(self.rows[0])

    @property
    def height(self) -> int:
        return len(self.rows)


@dataclass(frozen=True)
class Fraction:
    """A fractional stitch in the cell at `column`, `row` (from 1).

    A quarter or petite stitch sits in `corner`; a three-quarter stitch leaves `corner` open; a half stitch has none.
    """

    column: int
    row: int
    mark: str
    stitch: Stitch
    corner: Corner | None


Point = tuple[float, float]  # corner coordinates: 1,1 is the top left corner of the first stitch


@dataclass(frozen=True)
class Line:
    """Backstitch or one long stitch along `points`."""

    mark: str
    points: tuple[Point, ...]
    long: bool
    place: Place = field(compare=False)


@dataclass(frozen=True)
class Knot:
    mark: str
    at: Point
    place: Place = field(compare=False)


@dataclass(frozen=True)
class Daisy:
    """A lazy daisy: a loop of thread from `base` and back, held down at its `tip`."""

    mark: str
    base: Point
    tip: Point
    place: Place = field(compare=False)


@dataclass(frozen=True)
class Bead:
    card: BeadCard
    colour: Colour
    at: Point
    place: Place = field(compare=False)


@dataclass(frozen=True)
class DateRule:
    """A day of the year, as a rule. Exactly one of the three forms is filled.

    fixed: (month, day). nth: (n, weekday, month) with Monday 0 and n = -1 for the last.
    easter: (days after Easter, may be negative; Julian or not).
    """

    said: str
    fixed: tuple[int, int] | None = None
    nth: tuple[int, int, int] | None = None
    easter: tuple[int, bool] | None = None


@dataclass(frozen=True)
class Occasion:
    name: str
    rule: DateRule


@dataclass(frozen=True)
class Designer:
    id: str
    name: str
    about: str
    sells: bool
    shop: str | None


@dataclass(frozen=True)
class Counter:
    """Where a pattern is sold."""

    name: str
    url: str


@dataclass(frozen=True)
class Revision:
    on: date
    note: str


@dataclass(frozen=True)
class Photo:
    """The stitched model, checked to be a readable picture."""

    data: bytes
    width_px: int
    height_px: int


@dataclass(frozen=True)
class Pattern:
    id: str
    title: str
    about: str
    designer: Designer
    occasion: Occasion
    cloths: tuple[ClothOption, ...]  # the first is the model's
    thread_sets: tuple[ThreadSet, ...]  # the first is the model's
    key: tuple[KeyLine, ...]
    grid: Grid
    fractions: tuple[Fraction, ...]
    lines: tuple[Line, ...]
    knots: tuple[Knot, ...]
    beads: tuple[Bead, ...]
    model_stitcher: str
    finisher: str
    sold_at: tuple[Counter, ...]
    revisions: tuple[Revision, ...]  # oldest first; at least one
    story_markdown: str
    notes_markdown: str
    photo: Photo | None
    place: Place = field(compare=False)
    daisies: tuple[Daisy, ...] = ()
    editions: tuple[str, ...] = ("colour",)  # of EDITION_NAMES


@dataclass(frozen=True)
class Notice:
    on: date
    title: str
    markdown: str


@dataclass(frozen=True)
class ToCome:
    title: str
    designer: Designer
    occasion: Occasion


@dataclass(frozen=True)
class Series:
    id: str
    title: str
    tagline: str
    release: datetime  # with its time zone
    finish: FinishingPiece
    thread_sets: tuple[ThreadSet, ...]
    designers: tuple[Designer, ...]
    patterns: tuple[Pattern, ...]  # in the author's order
    to_come: tuple[ToCome, ...]
    notices: tuple[Notice, ...]
    licence: str
    welcome_markdown: str
    place: Place = field(compare=False)
    address: str | None = None  # where the site will stand; shared links need it in full


@dataclass(frozen=True)
class Content:
    """Everything under the content folder that a build needs, resolved: nobody looks a name up again."""

    series: tuple[Series, ...]
