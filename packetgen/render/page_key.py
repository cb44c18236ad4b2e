"""A chart page's own key: what its entries say, how high they are, where they stand."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache

from packetgen.render.key import KeyRow
from packetgen.render.text_face import TEXT_FACE, broken, face

# In ems: the box of a symbol or of a knot and the sample of a line, each with its space.
SYMBOL_EM, LINE_EM = 1.9, 2.6


@dataclass(frozen=True)
class KeyEntry:
    row: KeyRow
    lines: tuple[str, ...]
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

    def high_mm(self, rows: Iterable[KeyRow]) -> float:
        """Entries fill the columns row by row; a row is as high as its highest entry."""
        heights = [self._entry_mm(row) for row in rows]
        return sum(
            max(heights[first : first + self.count]) for first in range(0, len(heights), self.count)
        )

    def entries(self, rows: tuple[KeyRow, ...], top: float, bottom: float) -> Iterator[KeyEntry]:
        """The entries that stand above `bottom`, both in mm of the page's box."""
        for first in range(0, len(rows), self.count):
            together = rows[first : first + self.count]
            highest = max(self._entry_mm(row) for row in together)
            if top + highest > bottom:
                return
            for column, row in enumerate(together):
                yield KeyEntry(row, self._lines(row), self.left_mm + column * self.wide_mm, top)
            top += highest

    def _entry_mm(self, row: KeyRow) -> float:
        return (len(self._lines(row)) - 1) * self.text_mm * 1.15 + self.line_mm

    def _lines(self, row: KeyRow) -> tuple[str, ...]:
        numbers = "+".join(colour.number for colour in row.threads[0].colours)
        room = self.wide_mm - (text_em(row) + 0.4) * self.text_mm
        return _broken(f"{numbers} {row.name}", self.text_mm, room)


def has_sample(row: KeyRow) -> bool:
    """Whether a key line draws lines, of which the key shows a sample."""
    return any(one.kind in ("backstitch", "long", "daisy") for one in row.kinds)


def knot_em(row: KeyRow) -> float:
    """Where the knot of an entry stands, after its symbol and its line, in ems from its left edge."""
    return (SYMBOL_EM if row.symbol else 0) + (LINE_EM if has_sample(row) else 0)


def text_em(row: KeyRow) -> float:
    """Where the words of an entry begin, in ems from its left edge."""
    return knot_em(row) + (SYMBOL_EM if row.knots else 0)


@cache
def _broken(text: str, size: float, room: float) -> tuple[str, ...]:
    return broken(text, size, room, face(TEXT_FACE))
