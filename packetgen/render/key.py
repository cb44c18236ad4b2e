"""The key as it is printed: one row a key line, in an order that a stitcher can search."""

from collections.abc import Mapping
from dataclasses import dataclass

from packetgen.chart.drawing import Look
from packetgen.chart.paintbox import tint
from packetgen.model import Colour, Pattern, Stitch, ThreadSet
from packetgen.reckon.colour import blended, closeness
from packetgen.reckon.figures import Figures
from packetgen.reckon.stitches import path_length
from packetgen.reckon.thread import strands_for

STITCH_WORDS: Mapping[Stitch, str] = {
    Stitch.FULL: "cross stitch",
    Stitch.HALF: "half stitch, rising",
    Stitch.HALF_BACK: "half stitch, falling",
    Stitch.THREE_QUARTER: "three-quarter stitch",
    Stitch.QUARTER: "quarter stitch",
}


@dataclass(frozen=True)
class KeyThread:
    """A key line in one thread set."""

    set: ThreadSet
    colours: tuple[Colour, ...]
    strands: int
    closeness: str  # to the model's set, in words; '' for the model's set itself


@dataclass(frozen=True)
class KeyRow:
    mark: str
    symbol: str  # '' where the line has no stitches in cells
    hex: str
    tint: str
    threads: tuple[KeyThread, ...]
    stitches: tuple[tuple[str, int], ...]  # (in words, how many)
    backstitch_stitches: float  # length of all runs, in stitches
    long_stitches: int
    knots: int

    @property
    def name(self) -> str:
        return " with ".join(colour.name for colour in self.threads[0].colours)


def key_rows(figures: Figures, look: Look) -> tuple[KeyRow, ...]:
    """Cell stitches first, the most used first; then the lines that only draw lines and knots."""
    pattern = figures.pattern
    rows = []
    for work in figures.works:
        mark = work.line.mark
        drawn = [line for line in pattern.lines if line.mark == mark]
        rows.append(
            KeyRow(
                mark=mark,
                symbol=look.symbols[mark] if work.total_stitches else "",
                hex=look.hexes[mark],
                tint=tint(look.hexes[mark]),
                threads=tuple(
                    _thread(pattern, work.line.threads, s, strands_for(work.line, s))
                    for s in pattern.thread_sets
                ),
                stitches=tuple(
                    (STITCH_WORDS[s], work.stitches[s]) for s in Stitch if s in work.stitches
                ),
                backstitch_stitches=sum(path_length(d.points) for d in drawn if not d.long),
                long_stitches=sum(1 for line in drawn if line.long),
                knots=sum(1 for knot in pattern.knots if knot.mark == mark),
            )
        )
    total = {work.line.mark: work.total_stitches for work in figures.works}
    return tuple(sorted(rows, key=lambda row: (not row.symbol, -total[row.mark], row.mark)))


def _thread(
    pattern: Pattern,
    threads: Mapping[str, tuple[Colour, ...]],
    thread_set: ThreadSet,
    strands: int,
) -> KeyThread:
    model = pattern.thread_sets[0]
    said = ""
    if thread_set.id != model.id:
        mixed = (blended(tuple(c.hex for c in threads[s.id])) for s in (model, thread_set))
        said = closeness(*mixed)
    return KeyThread(thread_set, threads[thread_set.id], strands, said)
