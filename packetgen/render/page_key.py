"""A chart page's own key: what its entries say, how high they are, where they stand."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from packetgen.chart.sheet import Dot, Look, bead_dots, knot_dot
from packetgen.reckon.figures import BeadNeed
from packetgen.render.key import KeyRow
from packetgen.render.text_face import TEXT_FACE, broken, face

# In ems: the box of a symbol, of a knot or bead, and the sample of a line, each with its space.
SYMBOL_EM, LINE_EM = 1.9, 2.6


@dataclass(frozen=True)
class PageLine:
    """A thread of the design, or a bead on it, as a page's key tells it."""

    words: str  # '88 mid berry'
    mark: str = ""  # in the pattern's key; '' of a bead
    symbol: str = ""  # '' without stitches in cells
    has_line: bool = False
    dots: tuple[Dot, ...] = ()  # its knot, or the bead, in the middle of a square of 1
    bead: tuple[str, str] | None = None  # its card and its number there

    @property
    def has_knot(self) -> bool:
        return bool(self.dots) and self.bead is None


def page_lines(
    rows: Sequence[KeyRow], beads: Sequence[BeadNeed], look: Look
) -> tuple[PageLine, ...]:
    """All that a chart's pages may have to explain, in the order of the key."""
    middle = (0.5, 0.5)
    threads = (
        PageLine(
            f"{'+'.join(colour.number for colour in row.threads[0].colours)} {row.name}",
            row.mark,
            row.symbol,
            row.draws_lines,
            (knot_dot(middle, row.mark, look),) if row.knots else (),
        )
        for row in rows
    )
    of_beads = (
        PageLine(
            f"bead {need.sample.colour.number} {need.sample.colour.name}",
            dots=bead_dots(middle, need.sample.colour.hex, number, look),
            bead=need.sample.kind,
        )
        for number, need in enumerate(beads, 1)
    )
    return (*threads, *of_beads)


@dataclass(frozen=True)
class KeyEntry:
    line: PageLine
    text: tuple[str, ...]  # its words, line by line
    x_mm: float
    y_mm: float  # upper edge


@dataclass(frozen=True)
class KeyColumns:
    """Where a key stands: columns of one width side by side, in type of `text_mm`."""

    left_mm: float
    count: int
    wide_mm: float  # of each
    text_mm: float

    @property
    def line_mm(self) -> float:
        """What an entry of one line takes, with the space below it."""
        return self.text_mm * 1.75

    def high_mm(self, told: Iterable[PageLine]) -> float:
        """Entries fill the columns row by row; a row is as high as its highest entry."""
        heights = [self._entry_mm(one) for one in told]
        return sum(
            max(heights[first : first + self.count]) for first in range(0, len(heights), self.count)
        )

    def entries(self, told: tuple[PageLine, ...], top: float, bottom: float) -> Iterator[KeyEntry]:
        """The entries that stand above `bottom`, both in mm of the page's box."""
        for first in range(0, len(told), self.count):
            together = told[first : first + self.count]
            highest = max(self._entry_mm(one) for one in together)
            if top + highest > bottom:
                return
            for column, one in enumerate(together):
                yield KeyEntry(one, self._text(one), self.left_mm + column * self.wide_mm, top)
            top += highest

    def _entry_mm(self, one: PageLine) -> float:
        return (len(self._text(one)) - 1) * self.text_mm * 1.15 + self.line_mm

    def _text(self, one: PageLine) -> tuple[str, ...]:
        room = self.wide_mm - (text_em(one) + 0.4) * self.text_mm
        return _broken(one.words, self.text_mm, room)


def dot_em(one: PageLine) -> float:
    """Where the knot or bead of an entry stands, after its symbol and its line, in ems from its left edge."""
    return (SYMBOL_EM if one.symbol else 0) + (LINE_EM if one.has_line else 0)


def text_em(one: PageLine) -> float:
    """Where the words of an entry begin, in ems from its left edge."""
    return dot_em(one) + (SYMBOL_EM if one.dots else 0)


@cache
def _broken(text: str, size: float, room: float) -> tuple[str, ...]:
    return broken(text, size, room, face(TEXT_FACE))
