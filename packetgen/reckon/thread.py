"""How much thread a pattern takes, colour by colour, on one cloth with one thread set.

From worked length to bought length, by what is assumed of stitchers (`model.Assumptions`):
- ease: thread that goes into the thickness of the cloth and the slack of the hand.
- every needleful loses two tails, and so does every patch that is started anew.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import ceil

from packetgen.model import (
    Assumptions,
    Bead,
    Colour,
    KeyLine,
    Pattern,
    Point,
    Stitch,
    ThreadCard,
    ThreadSet,
)
from packetgen.nouns import plural
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
)
from packetgen.reckon.patches import Patches, patches_of
from packetgen.reckon.runs import runs
from packetgen.reckon.stitches import BEAD_MM, KNOT_MM, daisy_cells, line_cells, stitch_mm
from packetgen.units import up_to_step

# A usual figure that is this part of a unit away from a whole number of units is worth a word.
NEARLY = 0.10
_USUAL = Assumptions()
# A needleful that is used up but for the dust of floating point takes no second one.
_DUST = 1e-9


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
    """What one key line asks for, whatever the cloth. What is alike is counted, not listed.

    A run is what is worked from one start: lines, knots or daisies that lie within a travel.
    """

    line: KeyLine
    cells: Mapping[Stitch, Patches]
    stitches: Mapping[Stitch, int]
    line_runs: Mapping[float, int]  # thread in a run, in sides of a cell → how many such runs
    knot_runs: Mapping[float, int]  # knots in a run → how many such runs
    daisy_runs: Mapping[float, int]  # as line_runs

    @property
    def total_stitches(self) -> int:
        """Stitches in cells, of every kind."""
        return sum(self.stitches.values())


@dataclass(frozen=True)
class Worked:
    """One strand for a key line on a cloth, with ease and tails, by ways of stitching."""

    line: KeyLine
    cells: Lengths
    lines: Lengths
    knots: Lengths
    daisies: Lengths


@dataclass(frozen=True)
class Need:
    """Thread of one colour for one pattern: metres of strand, and whole units to buy."""

    colour: Colour
    strand: Lengths
    units: int
    warning: str  # '' or one plain sentence
    card: ThreadCard


def work_of(pattern: Pattern, assumptions: Assumptions = _USUAL) -> tuple[Work, ...]:
    """Every key line with its stitches, patches and runs, in the order of the key."""
    limit = assumptions.travel_stitches
    cells: dict[str, dict[Stitch, Patches]] = {line.mark: {} for line in pattern.key}
    for (mark, stitch), found in patches_of(pattern, limit).items():
        cells[mark][stitch] = found
    lines = _by_mark((one.mark, one.points, line_cells(one)) for one in pattern.lines)
    knots = _by_mark((one.mark, (one.at,), 1) for one in pattern.knots)
    daisies = _by_mark((one.mark, (one.base, one.tip), daisy_cells(one)) for one in pattern.daisies)
    return tuple(
        Work(
            line,
            cells[line.mark],
            {
                stitch: sum(patch.stitches * times for patch, times in found.items())
                for stitch, found in cells[line.mark].items()
            },
            *(_runs(of.get(line.mark, []), limit) for of in (lines, knots, daisies)),
        )
        for line in pattern.key
    )


_Piece = tuple[tuple[Point, ...], float]  # where it lies, and how much it counts for


def _by_mark(pieces: Iterable[tuple[str, tuple[Point, ...], float]]) -> dict[str, list[_Piece]]:
    found: dict[str, list[_Piece]] = {}
    for mark, points, amount in pieces:
        found.setdefault(mark, []).append((points, amount))
    return found


def _runs(pieces: list[_Piece], limit: int) -> Mapping[float, int]:
    """What the pieces of each run count for together → how many such runs."""
    together = runs((points for points, _ in pieces), limit)
    return Counter(sum(pieces[index][1] for index in run) for run in together)


def with_tails(worked_mm: float, assumptions: Assumptions = _USUAL) -> float:
    """A patch of `worked_mm` with the tails of every needleful that it takes, mm."""
    return _with_tails([(worked_mm, 1)], 1, assumptions)


def _with_tails(
    groups: Sequence[tuple[float, int]], stretch: float, assumptions: Assumptions
) -> float:
    """Thread for patches or runs, mm: each worked length with how many have it, and how much longer
    than that they become."""
    tails_mm = 2 * assumptions.tail_mm
    needlefuls_a_mm = stretch / (assumptions.needleful_mm - tails_mm)
    needlefuls = sum(times * ceil(mm * needlefuls_a_mm - _DUST) for mm, times in groups)
    return sum(mm * times for mm, times in groups) * stretch + needlefuls * tails_mm


def _lengths(groups: Sequence[tuple[float, int]], assumptions: Assumptions) -> Lengths:
    """Metres of one strand, three ways; `groups` as above."""
    if not groups:
        return Lengths()
    ease = assumptions.ease
    return Lengths(
        *(
            _with_tails(groups, 1 + share, assumptions) / 1000
            for share in (ease.careful, ease.usual, ease.generous)
        )
    )


def worked_of(
    works: tuple[Work, ...], cell_mm: float, assumptions: Assumptions = _USUAL
) -> tuple[Worked, ...]:
    """Every key line on one cloth, in the same order; the same for all thread sets."""
    return tuple(
        Worked(
            work.line,
            _lengths(_in_cells(work, cell_mm), assumptions),
            *(
                _lengths([(amount * mm, times) for amount, times in of.items()], assumptions)
                for of, mm in (
                    (work.line_runs, cell_mm),
                    (work.knot_runs, KNOT_MM),
                    (work.daisy_runs, cell_mm),
                )
            ),
        )
        for work in works
    )


def _in_cells(work: Work, cell_mm: float) -> list[tuple[float, int]]:
    """Thread in the patches of a key line, mm, with how many there are of each."""
    found = []
    for stitch, alike in work.cells.items():
        one_mm = stitch_mm(stitch, cell_mm)
        found += [
            (patch.stitches * one_mm + patch.travel_cells * cell_mm, times)
            for patch, times in alike.items()
        ]
    return found


def strand_lengths(worked: Worked, thread_set: ThreadSet) -> Lengths:
    """Metres of strand, all colours of the key line's needle together."""
    line, total = worked.line, Lengths()
    for lengths, strands in (
        (worked.cells, strands_for),
        (worked.lines, line_strands_for),
        (worked.knots, knot_strands_for),
        (worked.daisies, daisy_strands_for),
    ):
        if lengths.generous_m:
            total += lengths * strands(line, thread_set)
    return total


def needs(worked: tuple[Worked, ...], thread_set: ThreadSet) -> tuple[Need, ...]:
    """What to buy of every colour, in the order of the key, the set's own card first; a colour in two
    lines is summed."""
    strand: dict[tuple[str, str], Lengths] = {}
    threads: dict[tuple[str, str], tuple[ThreadCard, Colour]] = {}
    for one in worked:
        needle = one.line.threads[thread_set.id]
        lengths = strand_lengths(one, thread_set) * (1 / len(needle))
        for card, colour in zip(one.line.cards_in(thread_set), needle):
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
    """One plain sentence where the usual figure is within a tenth of a unit of whole units, else ''."""
    usual_units = strand.usual_m / strand_m_per_unit(card)
    whole = round(usual_units)
    if whole < 1 or abs(usual_units - whole) > NEARLY + _DUST:
        return ""
    units = f"{in_words(whole)} {card.sold_as if whole == 1 else plural(card.sold_as)}".capitalize()
    buy = units_to_buy(strand, card)
    if buy > whole:
        return f"{units} will not quite do: buy {in_words(buy)}."
    return f"{units} will only just do: start no length too long."


_WORDS = (
    "none one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
    "sixteen seventeen eighteen nineteen"
).split()
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()


def in_words(number: int) -> str:
    """7 → 'seven', 42 → 'forty-two'; from a hundred on in figures."""
    if number < len(_WORDS):
        return _WORDS[number]
    tens, ones = divmod(number, 10)
    if tens >= 10:
        return str(number)
    return f"{_TENS[tens - 2]}-{_WORDS[ones]}" if ones else _TENS[tens - 2]


def bead_lengths(beads: tuple[Bead, ...], assumptions: Assumptions = _USUAL) -> Lengths:
    """Metres of one strand to sew these beads on."""
    sewn = Counter(
        len(run) for run in runs(((bead.at,) for bead in beads), assumptions.travel_stitches)
    )
    return _lengths([(count * BEAD_MM, times) for count, times in sewn.items()], assumptions)
