"""Thread, reckoned a second time the slow and obvious way: stitch by stitch, needleful by needleful.

Nothing is shared with `packetgen.reckon` but the nouns of the model. What a stitch takes is walked
here, hole by hole; patches are found by looking round from each stitch; needlefuls are cut one by one.
"""

from collections import Counter, defaultdict
from functools import cache
from heapq import heappop, heappush
from math import ceil, dist

import pytest
from hypothesis import given, settings

from packetgen.model import Assumptions, KeyLine, Pattern, Stitch, ThreadSet
from packetgen.reckon.figures import Figures, figures
from tests.any_pattern import assumptions, patterns
from tests.demo_patterns import PATTERNS
from tests.stitching import piece

# From memory, as the project says where it has them: no geometry gives these.
KNOT_MM, BEAD_MM, HOLD_CELLS = 15.0, 10.0, 0.5

# The holes through which the thread goes, on a cell of side 1: up, down, up, down; and last where it
# comes up again for the next stitch of its kind.
_HOLES = {
    Stitch.FULL: ((0, 1), (1, 0), (1, 1), (0, 0), (0, 1)),
    Stitch.HALF: ((0, 1), (1, 0), (1, 1)),
    Stitch.HALF_BACK: ((0, 0), (1, 1), (1, 0)),
    Stitch.QUARTER: ((0, 1), (0.5, 0.5), (0.5, 1)),
    Stitch.THREE_QUARTER: ((0, 1), (1, 0), (1, 1), (0.5, 0.5), (1, 0.5)),
    Stitch.PETITE: ((0, 0.5), (0.5, 0), (0.5, 0.5), (0, 0), (0, 0.5)),
}


def walked(holes) -> float:
    """The way from hole to hole."""
    return sum(dist(here, there) for here, there in zip(holes, holes[1:]))


def backstitch_cells(points) -> float:
    """Each straight piece once in front and twice behind."""
    return sum(dist(a, b) + 2 * dist(a, b) for a, b in zip(points, points[1:]))


def long_cells(points) -> float:
    (start, end) = points
    return walked((start, end, start))


def daisy_cells(base, tip) -> float:
    """Out to the tip and back in front, on behind to the next; and held down."""
    return walked((base, tip, base, tip)) + HOLD_CELLS


# --- what is worked from one start ----------------------------------------------------------------


@cache
def cells_of(rows: tuple[str, ...], mark: str) -> tuple[tuple[int, int], ...]:
    """The cells of a chart that hold this mark."""
    return tuple(
        (x, y) for y, row in enumerate(rows, 1) for x, each in enumerate(row, 1) if each == mark
    )


# Neither cloth nor ease changes what is worked from one start, so each way is walked once.
@cache
def patches_of(cells: tuple[tuple[int, int], ...], limit: int) -> list[tuple[int, int]]:
    """(stitches, bare cells travelled) of each patch: from any stitch on, always to the nearest that is
    not yet worked of all those within the limit of what is."""
    times = Counter(cells)  # a cell may hold several
    left = set(cells)
    found = []
    while left:
        stitches = travelled = 0
        ahead = [(1, left.pop())]
        worked = set()
        while ahead:
            distance, cell = heappop(ahead)
            if cell in worked:
                continue
            worked.add(cell)
            left.discard(cell)
            stitches += times[cell]
            travelled += distance - 1
            for dx in range(-limit, limit + 1):
                for dy in range(-limit, limit + 1):
                    other = (cell[0] + dx, cell[1] + dy)
                    if other in left and other not in worked:
                        heappush(ahead, (max(abs(dx), abs(dy)), other))
        found.append((stitches, travelled))
    return found


def runs_of(pieces: list[tuple[tuple, float]], limit: int) -> list[float]:
    """What the pieces of each run take together. A piece is its points and what it takes."""
    left = list(pieces)
    found = []
    while left:
        run = [left.pop()]
        for points, _ in run:  # the list grows as neighbours are found
            near = [
                other
                for other in left
                if any(
                    abs(x - u) <= limit and abs(y - v) <= limit
                    for x, y in points
                    for u, v in other[0]
                )
            ]
            left = [other for other in left if other not in near]
            run += near
        found.append(sum(takes for _, takes in run))
    return found


# --- what is cut ----------------------------------------------------------------------------------


def cut_mm(worked_mm: float, assumed: Assumptions) -> float:
    """Thread cut to work so much of it: needleful by needleful, each with a tail at either end."""
    cut, left = worked_mm, worked_mm
    while left > 1e-6:
        cut += assumed.tail_mm + assumed.tail_mm
        left -= assumed.needleful_mm - assumed.tail_mm - assumed.tail_mm
    return cut


def strands(line: KeyLine, thread_set: ThreadSet, wanted: int) -> int:
    cards = line.cards.get(thread_set.id) or (thread_set.card,) * len(line.threads[thread_set.id])
    if any(card.braid for card in cards):
        return 1
    if thread_set.id in line.cards:  # never more than a thread of another card has
        most = min(card.strands for card in cards)
        wanted = min(wanted, most + most if len(cards) == 2 else most)
    return 2 if len(cards) == 2 and wanted < 2 else wanted


def thread_by_colour(
    pattern: Pattern, thread_set: ThreadSet, cell_mm: float, assumed: Assumptions, ease: float
) -> dict[tuple[str, str], float]:
    """Metres of strand for every colour of the key, by card and number."""
    total: dict[tuple[str, str], float] = defaultdict(float)
    for line in pattern.key:
        strand_mm = 0.0

        def take(worked_mm: float, in_needle: int) -> None:
            nonlocal strand_mm
            strand_mm += cut_mm(worked_mm * (1 + ease), assumed) * in_needle

        own = line.strands.get(thread_set.id, thread_set.strands)
        for stitch in Stitch:
            whole = cells_of(pattern.grid.rows, line.mark) if line.stitch is stitch else ()
            cells = (
                *whole,
                *(
                    (f.column, f.row)
                    for f in pattern.fractions
                    if f.mark == line.mark and f.stitch is stitch
                ),
            )
            for number, travelled in patches_of(cells, assumed.travel_stitches):
                in_cells = number * walked(_HOLES[stitch]) + travelled
                take(in_cells * cell_mm, strands(line, thread_set, own))
        drawn = [
            (one.points, (long_cells if one.long else backstitch_cells)(one.points))
            for one in pattern.lines
            if one.mark == line.mark
        ]
        for in_cells in runs_of(drawn, assumed.travel_stitches):
            take(in_cells * cell_mm, strands(line, thread_set, thread_set.backstitch_strands))
        knots = [((one.at,), KNOT_MM) for one in pattern.knots if one.mark == line.mark]
        for worked_mm in runs_of(knots, assumed.travel_stitches):
            take(worked_mm, strands(line, thread_set, thread_set.knot_strands))
        loops = [
            ((one.base, one.tip), daisy_cells(one.base, one.tip))
            for one in pattern.daisies
            if one.mark == line.mark
        ]
        for in_cells in runs_of(loops, assumed.travel_stitches):
            take(in_cells * cell_mm, strands(line, thread_set, thread_set.daisy_strands))
        colours = line.threads[thread_set.id]
        cards = line.cards.get(thread_set.id) or (thread_set.card,) * len(colours)
        for card, colour in zip(cards, colours):
            total[card.id, colour.number] += strand_mm / len(colours) / 1000
    return dict(total)


def beads_m(beads: list, assumed: Assumptions, ease: float) -> float:
    pieces = [((bead.at,), BEAD_MM) for bead in beads]
    runs = runs_of(pieces, assumed.travel_stitches)
    return sum(cut_mm(worked_mm * (1 + ease), assumed) for worked_mm in runs) / 1000


# --- the two beside each other --------------------------------------------------------------------


def agree(of: Figures, assumed: Assumptions) -> int:
    """Fails where any figure differs, or the units to buy; how many lengths were compared."""
    pattern, compared = of.pattern, 0
    for ease, three_ways in (
        (assumed.ease.careful, "careful_m"),
        (assumed.ease.usual, "usual_m"),
        (assumed.ease.generous, "generous_m"),
    ):
        for on in of.cloths:
            cell_mm = 25.4 / on.option.cloth.count_per_inch * on.option.over
            for thread_set, needs in on.needs:
                expected = thread_by_colour(pattern, thread_set, cell_mm, assumed, ease)
                found = {
                    (need.card.id, need.colour.number): getattr(need.strand, three_ways)
                    for need in needs
                }
                assert found == pytest.approx(expected, rel=1e-9, abs=1e-12)
                compared += len(expected)
                if three_ways == "generous_m":
                    for need in needs:
                        wanted_m = expected[need.card.id, need.colour.number]
                        unit_m = need.card.length_m * need.card.strands
                        assert need.units == ceil(wanted_m / unit_m - 1e-9)
        for need in of.beads:
            alike = [
                bead
                for bead in pattern.beads
                if (bead.card.id, bead.colour.number)
                == (need.sample.card.id, need.sample.colour.number)
            ]
            expected_m = beads_m(alike, assumed, ease)
            assert getattr(need.strand, three_ways) == pytest.approx(expected_m, rel=1e-9)
    return compared


@pytest.mark.parametrize("name", PATTERNS)
def test_a_demo_pattern_takes_the_thread_that_a_walk_through_it_takes(demo, name):
    """Every cloth, thread set, colour, three ways."""
    (reckoned,) = demo.reckoned
    (of,) = (one for one in reckoned.figures if one.pattern.id == name)
    colours = {
        (thread_set.id, card.id, colour.number)
        for thread_set in of.pattern.thread_sets
        for line in of.pattern.key
        for card, colour in zip(line.cards_in(thread_set), line.threads[thread_set.id])
    }
    assert agree(of, Assumptions()) == 3 * len(of.cloths) * len(colours)


@settings(max_examples=150, deadline=None)
@given(patterns(), assumptions())
def test_any_small_pattern_takes_the_thread_that_a_walk_through_it_takes(of, assumed):
    """Full and half crosses, parts of cells, lines, loops, knots and beads; blends, braids, threads of
    other cards, the author's own strands; however people work."""
    agree(figures(of, piece(), assumptions=assumed), assumed)
