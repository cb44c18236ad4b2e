"""Working time and difficulty: stated rules, checked by hand."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.load import load_content
from packetgen.model import (
    Bead,
    BeadCard,
    Colour,
    Corner,
    Daisy,
    Fraction,
    KeyLine,
    Knot,
    Line,
    Pace,
    Stitch,
)
from packetgen.reckon.figures import figures
from packetgen.reckon.isolated import Isolated, isolated
from packetgen.reckon.thread import work_of
from packetgen.reckon.working_time import RULE_SAID, difficulty, weights_said, working_time
from packetgen.render.packet import packet
from packetgen.render.templates import environment
from packetgen.units import hours, percent
from tests.content_builder import SERIES, build
from tests.stitching import CLAY, HERE, MOSS, pattern, piece, series

RED = Colour("07", "hip red", "#b32c2e")
BEAD = Bead(BeadCard("drop", "Drop", 2.2, 300, {RED.number: RED}), RED, (1.5, 1.5), HERE)


def counted(of):
    return working_time(of, work_of(of), Pace()).counted


# --- time -----------------------------------------------------------------------------------------


def test_three_hundred_crosses_take_two_hours_at_the_usual_pace():
    """By hand: 300 / 150, 300 / 100, 300 / 200."""
    block = pattern(*["m" * 30] * 10)
    time = working_time(block, work_of(block), Pace())
    assert (time.usual_h, time.slow_h, time.quick_h) == (2.0, 3.0, 1.5)


def test_a_series_has_a_pace_of_its_own():
    block = pattern(*["m" * 30] * 10)
    time = working_time(block, work_of(block), Pace(60, 100, 300))
    assert (time.slow_h, time.usual_h, time.quick_h) == (5.0, 3.0, 1.0)


def test_a_quarter_takes_as_long_as_a_stitch_and_a_half_stitch_half():
    assert counted(pattern("mm", stitch=Stitch.HALF)) == 1.0
    assert counted(pattern("mm", stitch=Stitch.HALF_BACK)) == 1.0
    for stitch in (Stitch.QUARTER, Stitch.THREE_QUARTER, Stitch.PETITE):
        one = Fraction(1, 1, "m", stitch, Corner.TOP_LEFT)
        assert counted(pattern("..", fractions=(one,))) == 1.0


def test_backstitch_counts_by_its_length_and_a_long_stitch_as_one():
    """By hand: 3 and 4 cells round a corner are seven; 3 by 4 cells in one long stitch are one."""
    bent = Line("m", ((1, 1), (4, 1), (4, 5)), False, HERE)
    assert counted(pattern("....", lines=(bent,))) == 7.0
    assert counted(pattern("....", lines=(Line("m", ((1, 1), (4, 5)), True, HERE),))) == 1.0


def test_knots_daisies_and_beads_count_as_two():
    assert counted(pattern("..", knots=(Knot("m", (1.5, 1.5), HERE),))) == 2.0
    assert counted(pattern("..", daisies=(Daisy("m", (1, 1), (2, 2), HERE),))) == 2.0
    assert counted(pattern("..", beads=(BEAD,))) == 2.0


def test_all_that_is_worked_adds_up():
    """By hand: 3 crosses, 2 cells of backstitch, a knot and a bead: 3 + 2 + 2 + 2."""
    of = pattern(
        "mtm",
        lines=(Line("m", ((1, 1), (3, 1)), False, HERE),),
        knots=(Knot("t", (1.5, 1.5), HERE),),
        beads=(BEAD,),
    )
    assert counted(of) == 9.0


@given(st.lists(st.text("mts.", min_size=5, max_size=5), min_size=1, max_size=6))
def test_a_chart_of_crosses_counts_its_crosses(rows):
    assert counted(pattern(*rows)) == sum(len(row) - row.count(".") for row in rows)


def test_the_author_s_pace_is_read(tmp_path):
    pace = ("finish: shelf\n", "finish: shelf\npace: {slow: 80, usual: 120, quick: 160.5}\n")
    content, problems = load_content(build(tmp_path / "content", {SERIES: pace}))
    assert list(problems) == []
    assert content.series[0].pace == Pace(80, 120, 160.5)


def test_without_a_word_the_pace_is_100_150_and_200(tmp_path):
    """Common practice, no source."""
    content, _ = load_content(build(tmp_path / "content"))
    assert content.series[0].pace == Pace(100, 150, 200)


@pytest.mark.parametrize(
    ("time_h", "said"),
    [(0.4, "less than an hour"), (1.2, "1 hour"), (23.44, "23 hours"), (1234.5, "1,234 hours")],
)
def test_hours_are_told_whole(time_h, said):
    assert hours(time_h) == said


def test_shares_are_told_with_one_decimal():
    assert percent(0.01181) == "1.2 %"


# --- difficulty -----------------------------------------------------------------------------------


def rated(colours=1, fractional=0, lonely=0, stitches=1000):
    """A pattern with so many colours, fractional stitches and stitches alone, of so many."""
    palette = [Colour(f"N{n}", f"colour {n}", "#123456") for n in range(colours)]
    lines = tuple(
        KeyLine(chr(0x4E00 + n), Stitch.FULL, {"bramble": (colour,)}, {}, HERE)
        for n, colour in enumerate(palette)
    )
    card = pattern("m").thread_sets[0].card
    every = replace(card, colours={colour.number: colour for colour in palette})
    of = pattern(
        lines[0].mark * (stitches - fractional),
        key=lines,
        sets=(replace(pattern("m").thread_sets[0], card=every),),
        fractions=(Fraction(1, 1, lines[0].mark, Stitch.QUARTER, Corner.TOP_LEFT),) * fractional,
    )
    return difficulty(of, work_of(of), Isolated(lonely, stitches, ()))


@pytest.mark.parametrize(
    ("colours", "fractional", "lonely", "points", "word"),
    [
        (1, 0, 0, 0, "gentle"),
        (15, 10, 20, 0, "gentle"),
        (16, 0, 0, 1, "gentle"),
        (31, 0, 0, 2, "steady"),
        (16, 11, 0, 2, "steady"),
        (16, 11, 21, 3, "steady"),
        (30, 100, 80, 3, "steady"),
        (31, 101, 0, 4, "patient"),
        (31, 101, 81, 6, "patient"),
    ],
)
def test_points_by_hand_at_every_limit(colours, fractional, lonely, points, word):
    """Limits: 15 and 30 colours; 1 % and 10 % fractional; 2 % and 8 % alone. Each is still the easier side."""
    found = rated(colours, fractional, lonely)
    assert (found.points, found.word) == (points, word)
    assert (found.colours, found.fractional_share) == (colours, fractional / 1000)


def test_the_printed_rule_says_what_is_reckoned():
    assert RULE_SAID == (
        "A pattern gets one point for more than 15 colours (two for more than 30), one for more than 1 % of "
        "fractional stitches (two for more than 10 %) and one for more than 2 % of stitches with no "
        "neighbour of their colour (two for more than 8 %). With 1 or fewer the work is gentle, with 2 or 3 "
        "it is steady, and with 4 or more patient."
    )


def test_half_stitches_of_the_chart_are_not_fractional():
    of = pattern("mmtt", stitch=Stitch.HALF)
    assert difficulty(of, work_of(of), isolated(of)).fractional_share == 0.0


def test_both_colours_of_a_blend_count():
    both = KeyLine("m", Stitch.FULL, {"bramble": (MOSS, CLAY)}, {}, HERE)
    of = pattern("mm", key=(both,))
    assert difficulty(of, work_of(of), isolated(of)).colours == 2


# --- in the packet --------------------------------------------------------------------------------


def test_the_packet_says_hours_word_and_rule():
    """300 crosses: two hours, three for a slow hand, two (of one and a half) for a quick one."""
    of = pattern(*["m" * 30] * 10)
    html = packet(series(of), figures(of, piece()), b"cover", environment()).html
    page = html.replace("\u00a0", " ")  # before a per cent sign no line breaks
    assert "1\u00a0% of fractional" in html
    assert "gentle work<br>about 2 hours" in page
    assert "Reckon with 2 hours of stitching; 3 hours for a slow one" in page
    assert "150 stitches an hour (200 and 100)" in page
    assert f"The rule: a{RULE_SAID[1:]}" in page
    assert "where every stitch in a cell counts as one. Your own hour" in page
    assert "no fractional stitches, and every stitch has a neighbour of its colour" in page


def test_only_what_the_pattern_has_is_weighed_in_words():
    crosses = pattern("mm")
    assert weights_said(crosses, work_of(crosses)) == "every stitch in a cell counts as one"
    beaded = replace(crosses, beads=(BEAD,), lines=(Line("m", ((1, 1), (2, 1)), True, HERE),))
    assert weights_said(beaded, work_of(beaded)) == (
        "every stitch in a cell counts as one, a long stitch as one, a bead as two"
    )
    halves = pattern("mm", stitch=Stitch.HALF)
    assert weights_said(halves, work_of(halves)) == "a half stitch counts as a half"
