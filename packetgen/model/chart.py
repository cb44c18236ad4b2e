"""What is drawn on a chart: its grid, and what lies on its lines."""

from dataclasses import dataclass, field
from enum import Enum

from packetgen.diagnostics import Place
from packetgen.model.goods import BeadCard, Colour

BARE = "."


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

    @property
    def kind(self) -> tuple[str, str]:
        """Its card and its number there."""
        return self.card.id, self.colour.number
