"""Thread: from the geometry of one stitch to whole skeins."""

import re
from collections import Counter
from math import ceil, sqrt

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from packetgen.model import Knot, Line, Stitch
from packetgen.reckon.buying import shared_needs
from packetgen.reckon.figures import figures
from packetgen.reckon.patches import Patch, patches
from packetgen.reckon.runs import runs
from packetgen.reckon.sizes import cell_mm
from packetgen.reckon.stitches import KNOT_MM, line_mm, stitch_mm
from packetgen.reckon.thread import (
    Lengths,
    Work,
    in_words,
    needs,
    strand_lengths,
    strand_m_per_unit,
    units_to_buy,
    warning,
    with_tails,
    work_of,
    worked_of,
)
from tests.any_pattern import assumptions, patterns
from tests.stitching import CLAY, HERE, MOSS, card, pattern, piece, thread_set

CELL_14 = cell_mm(14, 1)


# --- one stitch ---------------------------------------------------------------------------------


def test_a_full_cross_takes_two_diagonals_in_front_and_two_sides_behind():
    """By hand on a 2 mm cell: 2 · 2.828 + 2 · 2 = 9.657 mm."""
    assert stitch_mm(Stitch.FULL, 2.0) == pytest.approx(9.656854)


def test_the_smaller_stitches_are_shares_of_the_half():
    """Half √2·a + a; quarter half of that; three-quarter the two together. By hand on a 2 mm cell."""
    assert stitch_mm(Stitch.HALF, 2.0) == pytest.approx(4.828427)
    assert stitch_mm(Stitch.HALF_BACK, 2.0) == pytest.approx(4.828427)
    assert stitch_mm(Stitch.QUARTER, 2.0) == pytest.approx(2.414214)
    assert stitch_mm(Stitch.THREE_QUARTER, 2.0) == pytest.approx(7.242641)


def test_backstitch_lies_once_in_front_and_twice_behind():
    """By hand: a run of 3 and then 4 cells of 2 mm is 14 mm in front, 28 mm behind."""
    run = Line("m", ((1, 1), (4, 1), (4, 5)), False, HERE)
    assert line_mm(run, 2.0) == pytest.approx(42.0)


def test_a_long_stitch_lies_as_long_behind_as_before():
    """By hand: the diagonal of 3 by 4 cells is 5 cells, 10 mm, and 20 mm with its back."""
    assert line_mm(Line("m", ((1, 1), (4, 5)), True, HERE), 2.0) == pytest.approx(20.0)


# --- three stitches worked by hand ----------------------------------------------------------------


def test_three_crosses_in_a_row_by_hand():
    """Three crosses at 14 count, two strands, usual figure.

    Cell 25.4 / 14 = 1.814286 mm. One cross (2√2 + 2) · 1.814286 = 8.760147 mm, three 26.280441 mm.
    With 18 % ease 31.010920 mm. One needleful, so one pair of tails of 40 mm: 111.010920 mm.
    Two strands: 222.021841 mm = 0.222 m.
    """
    three = pattern("mmm")
    lengths = strand_lengths(worked_of(work_of(three), CELL_14)[0], thread_set(2))
    assert lengths.usual_m == pytest.approx(0.2220218, abs=1e-6)


def test_a_stitch_too_far_away_pays_its_own_tails():
    """From one cross to the next a thread is led five columns on, over four bare cells; not six."""
    assert patches({(1, 1), (6, 1)}, 5) == {Patch(2, 4): 1}
    assert patches({(1, 1), (7, 1)}, 5) == {Patch(1, 0): 2}


def test_travel_behind_costs_its_length():
    """By hand: two crosses four columns apart have three cells of travel behind, and one pair of tails."""
    apart = pattern("m...m")
    lengths = strand_lengths(worked_of(work_of(apart), CELL_14)[0], thread_set(1))
    by_hand = (2 * (2 * sqrt(2) + 2) + 3) * CELL_14 * 1.18 + 80
    assert lengths.usual_m * 1000 == pytest.approx(by_hand)


def test_a_needleful_is_forty_five_centimetres_with_two_tails_of_four():
    """By hand: 37 cm can be stitched from one; a millimetre more takes a second. Common practice, no source."""
    assert with_tails(370.0) == 370 + 80
    assert with_tails(371.0) == 371 + 160


def test_lines_and_knots_of_a_colour_are_paid_for():
    """By hand, one strand: 5 cells of backstitch and one knot, each started once, careful figure."""
    drawn = pattern(
        "....",
        lines=(Line("m", ((1, 1), (6, 1)), False, HERE),),
        knots=(Knot("m", (2.5, 1.5), HERE),),
    )
    lengths = strand_lengths(worked_of(work_of(drawn), CELL_14)[0], thread_set(2))
    by_hand = (15 * CELL_14 * 1.13 + 80) + (KNOT_MM * 1.13 + 80)
    assert lengths.careful_m * 1000 == pytest.approx(by_hand)


# --- what the trade knows -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("figure", "crosses"), [("careful_m", 2000), ("usual_m", 1900), ("generous_m", 1800)]
)
def test_a_skein_gives_1800_to_2000_crosses_at_14_count(figure, crosses):
    """A six-ply 8 m skein with two strands at 14 count: common practice, no source.

    A solid block of that many crosses uses the skein up to within 3 % by the careful figure (the
    many), by the usual one (between) and by the generous one (the few).
    """
    width = 50
    block = pattern(*["m" * width] * (crosses // width))
    lengths = strand_lengths(worked_of(work_of(block), CELL_14)[0], thread_set(2))
    assert getattr(lengths, figure) == pytest.approx(48.0, rel=0.03)


def test_where_a_skein_will_not_quite_do_a_spool_does():
    """On 32 count over two, two strands of the six-ply want a second skein where one 50 yd spool of a
    12-weight at one strand is enough: a fact of the trade, common practice; 2,200 crosses are our own.
    """
    spool = card(strands=1, length_m=45.72, sold_as="spool")
    block = pattern(*["m" * 44] * 50)
    (worked, *_) = worked_of(work_of(block), cell_mm(32, 2))
    skeins = strand_lengths(worked, thread_set(2))
    whole = strand_lengths(worked, thread_set(1, spool))
    assert units_to_buy(skeins, card()) == 2
    assert warning(skeins, card()) == "One skein will not quite do: buy two."
    assert units_to_buy(whole, spool) == 1
    assert warning(whole, spool) == ""


# --- from metres to units -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("usual", "generous", "units", "said"),
    [
        (20.0, 21.2, 1, ""),
        (45.0, 47.7, 1, "One skein will only just do: start no length too long."),
        (46.0, 48.8, 2, "One skein will not quite do: buy two."),
        (50.0, 53.0, 2, "One skein will not quite do: buy two."),
        (60.0, 63.6, 2, ""),
        (95.0, 100.7, 3, "Two skeins will not quite do: buy three."),
        (3.0, 3.2, 1, ""),
    ],
)
def test_a_plain_warning_stands_where_the_usual_figure_is_near_a_whole_skein(
    usual, generous, units, said
):
    strand = Lengths(usual * 0.96, usual, generous)
    assert units_to_buy(strand, card()) == units
    assert warning(strand, card()) == said


@pytest.mark.parametrize(
    ("usual", "generous", "said"),
    [
        # one
        (0.49, 0.52, ""),
        (0.89, 0.94, ""),
        (0.90, 0.95, "One skein will only just do: start no length too long."),
        (0.94, 1.00, "One skein will only just do: start no length too long."),
        (0.95, 1.01, "One skein will not quite do: buy two."),
        (1.00, 1.06, "One skein will not quite do: buy two."),
        (1.10, 1.17, "One skein will not quite do: buy two."),
        (1.11, 1.18, ""),
        # two
        (1.89, 2.00, ""),
        (1.90, 1.99, "Two skeins will only just do: start no length too long."),
        (1.90, 2.01, "Two skeins will not quite do: buy three."),
        (2.10, 2.22, "Two skeins will not quite do: buy three."),
        (2.11, 2.24, ""),
        # seven: a tenth is of one skein, not of all seven
        (6.50, 6.89, ""),
        (6.89, 7.30, ""),
        (6.95, 7.00, "Seven skeins will only just do: start no length too long."),
        (6.90, 7.31, "Seven skeins will not quite do: buy eight."),
        (7.10, 7.52, "Seven skeins will not quite do: buy eight."),
        (7.11, 7.53, ""),
        (7.50, 7.94, ""),
        # and more
        (12.0, 12.7, "Twelve skeins will not quite do: buy thirteen."),
        (19.0, 20.1, "Nineteen skeins will not quite do: buy twenty-one."),
        (30.0, 31.8, "Thirty skeins will not quite do: buy thirty-two."),
        (99.0, 104.9, "Ninety-nine skeins will not quite do: buy 105."),
        (100.0, 100.0, "100 skeins will only just do: start no length too long."),
    ],
)
def test_nearly_a_whole_number_is_said_in_plain_words(usual, generous, said):
    """Within a tenth of a skein, on either side; whether it will do is for the generous figure to say."""
    strand = Lengths(48 * usual * 0.96, 48 * usual, 48 * generous)
    assert warning(strand, card()) == said


def test_units_are_said_in_the_word_they_are_sold_by():
    boxes = card(sold_as="box")
    assert warning(Lengths(90, 95, 95.9), boxes).startswith("Two boxes will only just do")


@pytest.mark.parametrize("number", range(1, 100))
def test_every_number_below_a_hundred_has_words_of_its_own(number):
    words = [in_words(each) for each in range(1, 100)]
    assert re.fullmatch("[a-z]+(-[a-z]+)?", in_words(number))
    assert words.count(in_words(number)) == 1


def test_a_colour_in_two_key_lines_is_bought_once():
    two = pattern("mm", "tt")
    one_thread = {"bramble": (MOSS,)}
    both_moss = tuple(
        type(line)(line.mark, line.stitch, one_thread, {}, HERE) for line in two.key[:2]
    )
    doubled = pattern("mm", "tt", key=both_moss)
    bought = needs(worked_of(work_of(doubled), CELL_14), thread_set())
    assert [need.colour for need in bought] == [MOSS]
    alone = needs(worked_of(work_of(two), CELL_14), thread_set())
    assert bought[0].strand.usual_m == pytest.approx(2 * alone[0].strand.usual_m)


def test_a_blend_shares_the_needle_between_its_two_colours():
    """With two strands each colour gets one; a single-strand line still takes one of each."""
    plain = pattern("mmmm")
    line = plain.key[0]
    blend = type(line)("m", line.stitch, {"bramble": (MOSS, CLAY)}, {}, HERE)
    mixed = pattern("mmmm", key=(blend,))
    whole = needs(worked_of(work_of(plain), CELL_14), thread_set(2))[0].strand.usual_m
    for strands, share in ((2, 0.5), (1, 0.5)):
        bought = needs(worked_of(work_of(mixed), CELL_14), thread_set(strands))
        assert [need.colour for need in bought] == [MOSS, CLAY]
        assert [need.strand.usual_m for need in bought] == pytest.approx([whole * share] * 2)


# --- what must always hold ------------------------------------------------------------------------

charts = st.lists(st.text("mts.", min_size=7, max_size=7), min_size=1, max_size=9)


@given(charts)
def test_no_stitch_is_lost_or_counted_twice(rows):
    chart = pattern(*rows)
    for work in work_of(chart):
        drawn = sum(row.count(work.line.mark) for row in rows)
        assert work.total_stitches == drawn
        groups = [found for of in work.cells.values() for found in of.items()]
        assert sum(patch.stitches * times for patch, times in groups) == drawn


@given(charts)
def test_careful_usual_generous_come_in_that_order_and_coarse_cloth_takes_more(rows):
    chart = pattern(*rows)
    works = work_of(chart)
    both = (worked_of(works, cell_mm(count, 1)) for count in (18, 11))
    for on_fine, on_coarse in zip(*both):
        fine, coarse = (strand_lengths(of, thread_set()) for of in (on_fine, on_coarse))
        assert fine.careful_m <= fine.usual_m <= fine.generous_m
        assert fine.usual_m <= coarse.usual_m


@given(charts)
def test_what_is_bought_is_never_less_than_the_generous_figure(rows):
    chart = pattern(*rows)
    for need in needs(worked_of(work_of(chart), CELL_14), thread_set()):
        assert need.units * 48.0 >= need.strand.generous_m - 1e-6
        assert need.units == ceil(need.strand.generous_m / 48.0)


@given(st.sets(st.tuples(st.integers(1, 14), st.integers(1, 14)), min_size=1, max_size=40))
def test_patches_are_as_an_honest_search_finds_them(cells):
    """Checked against a plain flood fill over all pairs of cells."""
    left, sizes = set(cells), []
    while left:
        group, edge = set(), [left.pop()]
        while edge:
            x, y = edge.pop()
            group.add((x, y))
            near = {c for c in left if max(abs(c[0] - x), abs(c[1] - y)) <= 5}
            left -= near
            edge += near
        sizes.append(len(group))
    found = Counter(patches(cells, 5)).elements()
    assert sorted(patch.stitches for patch in found) == sorted(sizes)


@given(st.lists(charts, min_size=1, max_size=3))
def test_a_shared_list_is_never_short_and_never_dearer(several):
    """For every colour the units of the shared list hold all designs' generous figures together."""
    lists = tuple(
        needs(worked_of(work_of(chart), CELL_14), thread_set())
        for chart in (pattern(*rows) for rows in several)
    )
    for shared in shared_needs(lists):
        total = sum(
            n.strand.generous_m for needs_ in lists for n in needs_ if n.colour == shared.colour
        )
        assert shared.units * 48.0 >= total - 1e-6
        assert shared.units <= shared.units_apart


def test_lines_that_come_near_are_worked_in_one_go():
    """Two lines meet, a third is far away."""
    paths = (((1, 1), (3, 1)), ((8, 1), (9, 1)), ((30, 30), (31, 30)))
    assert runs(paths, 5) == ((0, 1), (2,))


def test_a_run_goes_on_from_line_to_line_however_many_there_are():
    """A chain of 3,000 lines, each as far from the last as a thread is led, is one run; the lines come
    in no order. One more, a quarter too far from its end, is another.
    """
    chain = [((1.0, 1.0 + 6 * n), (1.0, 2.0 + 6 * n)) for n in range(3000)]
    chain = chain[1::2] + chain[::2][::-1]
    far = ((6.25, 1.0), (7.0, 1.0))
    assert runs([*chain, far], 5) == (tuple(range(3000)), (3000,))
    assert runs([*chain, far], 5.25) == (tuple(range(3001)),)


@given(patterns(), assumptions())
@settings(deadline=None)
def test_careful_is_never_more_than_usual_nor_usual_than_generous(of, assumed):
    """Whatever a series assumes; nothing is negative, and what is bought holds the generous figure."""
    for on in figures(of, piece(), assumptions=assumed).cloths:
        for _, needed in on.needs:
            for need in needed:
                strand = need.strand
                assert 0 <= strand.careful_m <= strand.usual_m <= strand.generous_m
                assert need.units * strand_m_per_unit(need.card) >= strand.generous_m - 1e-6


@given(patterns(), assumptions())
@settings(deadline=None)
def test_a_finer_cloth_never_needs_more(of, assumed):
    """Every kind of stitch: from 11 to 40 count, no colour takes more on the finer cloth."""
    works = work_of(of, assumed)
    by_count = [
        worked_of(works, cell_mm(count, over), assumed)
        for count, over in ((11, 1), (14, 1), (32, 2), (18, 1), (40, 2), (40, 1))
    ]
    for thread_set_ in of.thread_sets:
        on_cloths = [needs(worked, thread_set_) for worked in by_count]
        for coarser, finer in zip(on_cloths, on_cloths[1:]):
            for more, less in zip(coarser, finer):
                assert less.strand.careful_m <= more.strand.careful_m + 1e-9
                assert less.strand.usual_m <= more.strand.usual_m + 1e-9
                assert less.strand.generous_m <= more.strand.generous_m + 1e-9
                assert less.units <= more.units


@given(charts, st.data())
def test_each_added_stitch_needs_more(rows, data):
    """One more cross, on any bare cell, takes more of its colour and nothing of another; but for a
    stepping stone, which saves a start or some travel behind the cloth (see below).
    """
    bare = [(x, y) for y, row in enumerate(rows) for x, mark in enumerate(row) if mark == "."]
    assume(bare)
    column, row = data.draw(st.sampled_from(bare))
    mark = data.draw(st.sampled_from("mts"))
    grown = list(rows)
    grown[row] = grown[row][:column] + mark + grown[row][column + 1 :]
    before, after = work_of(pattern(*rows)), work_of(pattern(*grown))
    for work, more_work in zip(before, after):
        less, more = (
            strand_lengths(worked_of((each,), CELL_14)[0], thread_set())
            for each in (work, more_work)
        )
        if work.line.mark != mark:
            assert more == less
            continue
        starts, travel = starts_and_travel(work)
        starts_then, travel_then = starts_and_travel(more_work)
        assume(starts_then >= starts and travel_then >= travel)
        assert more.careful_m > less.careful_m
        assert more.usual_m > less.usual_m
        assert more.generous_m > less.generous_m


def starts_and_travel(work: Work) -> tuple[int, int]:
    found = work.cells.get(Stitch.FULL, {})
    return sum(found.values()), sum(patch.travel_cells * times for patch, times in found.items())


def test_a_stepping_stone_saves_a_start():
    """By hand, one strand, usual figure: two crosses eight columns apart are two starts, and with one
    half way between them one start with six cells of travel.

    Two: 2 · ((2√2 + 2) · 1.814286 · 1.18 + 80) = 180.673947 mm. Three: (3 · (2√2 + 2) + 6) · 1.814286 ·
    1.18 + 80 = 123.856063 mm.
    """
    two, three = (
        strand_lengths(worked_of(work_of(pattern(row)), CELL_14)[0], thread_set(1))
        for row in ("m.......m", "m...m...m")
    )
    assert two.usual_m * 1000 == pytest.approx(180.673947)
    assert three.usual_m * 1000 == pytest.approx(123.856063)
