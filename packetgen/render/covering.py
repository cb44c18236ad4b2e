"""How the thread covers at every count, told in a few rows: counts that go alike stand together."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from packetgen.model import ThreadSet
from packetgen.nouns import counted
from packetgen.reckon.coverage import AtCount, Coverage
from packetgen.units import plain


@dataclass(frozen=True)
class CoverRow:
    thread: str  # 'Larkmoss Stranded, 2 strands'; '' where it is that of the row above
    counts: str  # '11, 12.5, 14*'
    covers: str  # 'crowded; 1 strand would be good'


def cover_rows(
    sets: Sequence[ThreadSet], at_counts: Sequence[AtCount]
) -> tuple[tuple[CoverRow, ...], ...]:
    """The rows of each thread set, the coarsest count first; '*' marks a count of the pattern's own cloths."""
    return tuple(tuple(_rows(one, row, at_counts)) for row, one in enumerate(sets))


def _rows(of: ThreadSet, row: int, at_counts: Sequence[AtCount]) -> Iterator[CoverRow]:
    strands = 1 if of.card.braid else of.strands
    thread = f"{of.card.name}, {counted(strands, 'strand')}"
    for said, these in groupby(at_counts, key=lambda at: _said(at.by_set[row])):
        counts = (f"{plain(at.stitches_per_inch)}{'*' * at.offered}" for at in these)
        yield CoverRow(thread, ", ".join(counts), said)
        thread = ""


def _said(covers: Coverage) -> str:
    if not covers.better:
        return covers.word
    return f"{covers.word}; {counted(covers.better, 'strand')} would be good"
