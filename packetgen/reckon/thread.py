"""How much thread a pattern takes, colour by colour, on one cloth with one thread set.

From worked length to bought length:
- ease: thread that goes into the thickness of the cloth and the slack of the hand. The three shares
  are set so that a six-ply 8 m skein gives 2,000 to 1,800 crosses at 14 count with two strands, which
  is what stitchers reckon with (common practice, no source).
- a needleful of 45 cm loses two tails of 4 cm (common practice, no source), and so does every patch
  that is started anew.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil

from packetgen.model import Bead, Colour, Grid, KeyLine, Pattern, Stitch, ThreadCard, ThreadSet
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
)
from packetgen.reckon.patches import Cell, Patch, patches, runs
from packetgen.reckon.stitches import BEAD_MM, KNOT_MM, daisy_mm, line_mm, stitch_mm
from packetgen.units import up_to_step

NEEDLEFUL_MM = 450.0
TAIL_MM = 40.0
USABLE_MM = NEEDLEFUL_MM - 2 * TAIL_MM
EASE = {"careful": 0.13, "usual": 0.18, "generous": 0.25}
# A usual figure this near to a whole number of units is worth a word.
NEARLY = 0.10


@dataclass(frozen=True)
class Lengths:
    """Metres of single strand, reckoned three ways."""

    careful_m: float = 0.0
    usual_m: float = 0.0
    generous_m: float = 0.0

    def __add__(self, other: "Lengths") -> "Lengths":
        return Lengths(
            self.careful_m + other.careful_m,
            self.usual_m + other.usual_m,
            self.generous_m + other.generous_m,
        )

    def __mul__(self, factor: float) -> "Lengths":
        return Lengths(self.careful_m * factor, self.usual_m * factor, self.generous_m * factor)


@dataclass(frozen=True)
class Work:
    """What one key line asks for, whatever the cloth."""

    line: KeyLine
    cells: Mapping[Stitch, tuple[Patch, ...]]
    stitches: Mapping[Stitch, int]
    line_runs: tuple[tuple[int, ...], ...]
    knot_runs: tuple[tuple[int, ...], ...]
    daisy_runs: tuple[tuple[int, ...], ...]

    @property
    def total_stitches(self) -> int:
        """Stitches in cells, of every kind."""
        return sum(self.stitches.values())


@dataclass(frozen=True)
class Need:
    """Thread of one colour for one pattern: metres of strand, and whole units to buy."""

    colour: Colour
    strand: Lengths
    units: int
    warning: str  # '' or one plain sentence
    card: ThreadCard


def work_of(pattern: Pattern) -> tuple[Work, ...]:
    """Every key line with its stitches, patches and runs, in the order of the key."""
    cells: dict[str, dict[Stitch, list[Cell]]] = {line.mark: {} for line in pattern.key}
    stitch_of = {line.mark: line.stitch for line in pattern.key}
    for at, mark in stitched_cells(pattern.grid):
        cells[mark].setdefault(stitch_of[mark], []).append(at)
    for fraction in pattern.fractions:
        at = (fraction.column, fraction.row)
        cells[fraction.mark].setdefault(fraction.stitch, []).append(at)
    return tuple(
        Work(
            line,
            {stitch: patches(where) for stitch, where in cells[line.mark].items()},
            {stitch: len(where) for stitch, where in cells[line.mark].items()},
            runs(drawn.points for drawn in pattern.lines if drawn.mark == line.mark),
            runs((knot.at,) for knot in pattern.knots if knot.mark == line.mark),
            runs((one.base, one.tip) for one in pattern.daisies if one.mark == line.mark),
        )
        for line in pattern.key
    )


def stitched_cells(grid: Grid) -> "tuple[tuple[Cell, str], ...]":
    """((column, row), mark) of every cell that is not bare, both from 1, row by row."""
    return tuple(
        ((x, y), mark)
        for y, row in enumerate(grid.rows, 1)
        for x, mark in enumerate(row, 1)
        if mark != "."
    )


def with_tails(worked_mm: float) -> float:
    """A patch of `worked_mm` with the tails of every needleful that it takes, mm."""
    return worked_mm + ceil(worked_mm / USABLE_MM) * 2 * TAIL_MM


def _lengths(groups_mm: "list[float]") -> Lengths:
    """Metres of one strand for patches of these worked lengths, three ways."""
    figures = (
        sum(with_tails(worked * (1 + ease)) for worked in groups_mm) / 1000
        for ease in EASE.values()
    )
    return Lengths(*figures)


def strand_lengths(pattern: Pattern, work: Work, thread_set: ThreadSet, cell_mm: float) -> Lengths:
    """Metres of strand, all colours of the key line's needle together."""
    total = Lengths()
    for stitch, groups in work.cells.items():
        worked = [
            patch.stitches * stitch_mm(stitch, cell_mm) + patch.travel_cells * cell_mm
            for patch in groups
        ]
        total += _lengths(worked) * strands_for(work.line, thread_set)
    lines = [line for line in pattern.lines if line.mark == work.line.mark]
    worked = [sum(line_mm(lines[index], cell_mm) for index in run) for run in work.line_runs]
    total += _lengths(worked) * line_strands_for(work.line, thread_set)
    worked = [len(run) * KNOT_MM for run in work.knot_runs]
    total += _lengths(worked) * knot_strands_for(work.line, thread_set)
    daisies = [daisy for daisy in pattern.daisies if daisy.mark == work.line.mark]
    worked = [sum(daisy_mm(daisies[index], cell_mm) for index in run) for run in work.daisy_runs]
    return total + _lengths(worked) * daisy_strands_for(work.line, thread_set)


def needs(
    pattern: Pattern, works: tuple[Work, ...], thread_set: ThreadSet, cell_mm: float
) -> tuple[Need, ...]:
    """What to buy of every colour, in the order of the key, the set's own card first; a colour in two
    lines is summed."""
    strand: dict[tuple[str, str], Lengths] = {}
    threads: dict[tuple[str, str], tuple[ThreadCard, Colour]] = {}
    for work in works:
        needle = work.line.threads[thread_set.id]
        lengths = strand_lengths(pattern, work, thread_set, cell_mm) * (1 / len(needle))
        for card, colour in zip(work.line.cards_in(thread_set), needle):
            key = (card.id, colour.number)
            threads[key] = (card, colour)
            strand[key] = strand.get(key, Lengths()) + lengths
    order = sorted(threads, key=lambda key: key[0] != thread_set.card.id)
    return tuple(_need(*threads[key], strand[key]) for key in order)


def _need(card: ThreadCard, colour: Colour, strand: Lengths) -> Need:
    return Need(colour, strand, units_to_buy(strand, card), warning(strand, card), card)


def strand_m_per_unit(card: ThreadCard) -> float:
    """Metres of single strand in one unit: a six-ply 8 m skein holds 48 m."""
    return card.length_m * card.strands


def units_to_buy(strand: Lengths, card: ThreadCard) -> int:
    """Whole units that hold the generous figure."""
    return round(up_to_step(strand.generous_m / strand_m_per_unit(card), 1))


def warning(strand: Lengths, card: ThreadCard) -> str:
    """One plain sentence where the usual figure is within a tenth of a whole number of units, else ''."""
    usual_units = strand.usual_m / strand_m_per_unit(card)
    whole = round(usual_units)
    if whole < 1 or abs(usual_units - whole) > NEARLY * whole:
        return ""
    buy = units_to_buy(strand, card)
    if buy > whole:
        return (
            f"{_spoken(whole, card).capitalize()} will not quite do: buy {_NUMBERS.get(buy, buy)}."
        )
    return f"{_spoken(whole, card).capitalize()} will only just do: start no length too long."


_NUMBERS = {1: "one", 2: "two", 3: "three", 4: "four", 5: "five", 6: "six"}


def _spoken(units: int, card: ThreadCard) -> str:
    return f"{_NUMBERS.get(units, units)} {card.sold_as}{'' if units == 1 else 's'}"


def bead_lengths(beads: tuple[Bead, ...]) -> Lengths:
    """Metres of one strand to sew these beads on."""
    return _lengths([len(run) * BEAD_MM for run in runs((bead.at,) for bead in beads)])
