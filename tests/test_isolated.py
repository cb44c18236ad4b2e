"""Stitches that stand alone, and where most of them do."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from packetgen.diagnostics import Place, Problems
from packetgen.model import Corner, Fraction, Grid, KeyLine, Stitch
from packetgen.reckon.figures import figures
from packetgen.reckon.isolated import (
    ADVISE_FROM_STITCHES,
    Window,
    complain_of_isolated,
    isolated,
    isolated_cells,
)
from tests.stitching import CLAY, HERE, MOSS, pattern, piece


def alone(*rows, **more):
    return sorted(isolated_cells(pattern(*rows, **more)))


def quarter(column, row, mark="m", corner=Corner.TOP_LEFT):
    return Fraction(column, row, mark, Stitch.QUARTER, corner)


def test_a_stitch_has_company_beside_it_and_across_a_corner():
    assert alone("mm", "..") == []
    assert alone("m.", ".m") == []
    assert alone("m.m") == [(1, 1), (3, 1)]


def test_another_colour_is_no_company():
    assert alone("ttt", "tmt", "ttt") == [(2, 2)]


def test_the_edge_of_the_chart_is_no_company_and_rows_do_not_run_on():
    """The end of one row is not beside the start of the next."""
    assert alone("..m", "...", "m..") == [(1, 3), (3, 1)]
    assert alone("..m", "m..") == [(1, 2), (3, 1)]


def test_one_thread_in_two_stitches_is_one_colour():
    """A full cross beside a half stitch of the same thread is in company."""
    lines = (
        KeyLine("m", Stitch.FULL, {"bramble": (MOSS,)}, {}, HERE),
        KeyLine("h", Stitch.HALF, {"bramble": (MOSS,)}, {}, HERE),
    )
    assert alone("mh", key=lines) == []


def test_a_blend_is_a_colour_of_its_own_in_whichever_order():
    one, other = ((MOSS, CLAY), (CLAY, MOSS))
    lines = (
        KeyLine("m", Stitch.FULL, {"bramble": (MOSS,)}, {}, HERE),
        KeyLine("x", Stitch.FULL, {"bramble": one}, {}, HERE),
        KeyLine("y", Stitch.FULL, {"bramble": other}, {"bramble": 4}, HERE),
    )
    assert alone("mx", key=lines) == [(1, 1), (2, 1)]
    assert alone("xy", key=lines) == []


def test_fractional_stitches_are_company_and_may_want_it():
    assert alone("m..", fractions=(quarter(2, 1),)) == []
    assert alone("...", fractions=(quarter(2, 1),)) == [(2, 1)]
    assert alone("m..", fractions=(quarter(3, 1),)) == [(1, 1), (3, 1)]
    two = (quarter(2, 1), quarter(2, 1, corner=Corner.BOTTOM_RIGHT))
    assert alone("...", fractions=two) == []
    assert alone("t..", fractions=(quarter(2, 1, "m"), quarter(2, 1, "s"))) == [
        (1, 1),
        (2, 1),
        (2, 1),
    ]


def test_the_share_is_of_all_stitches_in_cells():
    """By hand: five crosses and a quarter, of which the clay cross and the quarter stand alone."""
    found = isolated(pattern("mm...", "mm..t", fractions=(quarter(3, 1, "s"),)))
    assert (found.alone, found.stitches) == (2, 6)
    assert found.share == 2 / 6


def test_a_chart_without_stitches_has_no_share():
    assert isolated(pattern("..")).share == 0.0


charts = st.lists(st.text("mts.", min_size=6, max_size=6), min_size=1, max_size=8)
quarters = st.lists(
    st.builds(
        quarter,
        st.integers(1, 6),
        st.integers(1, 8),
        st.sampled_from("mts"),
        st.sampled_from(Corner),
    ),
    max_size=6,
)


@given(charts, quarters)
def test_it_is_as_a_look_at_every_pair_finds_it(rows, fractions):
    """Plainly: each stitch against each other one. Fractions lie where the chart is bare."""
    small = tuple(
        one
        for one in fractions
        if one.row <= len(rows) and rows[one.row - 1][one.column - 1] == "."
    )
    stitches = [
        ((x, y), mark)
        for y, row in enumerate(rows, 1)
        for x, mark in enumerate(row, 1)
        if mark != "."
    ] + [((one.column, one.row), one.mark) for one in small]
    expected = sorted(
        at
        for number, (at, mark) in enumerate(stitches)
        if not any(
            mark == other_mark and max(abs(at[0] - x), abs(at[1] - y)) <= 1
            for other, ((x, y), other_mark) in enumerate(stitches)
            if other != number
        )
    )
    assert alone(*rows, fractions=small) == expected
    assert isolated(pattern(*rows, fractions=small)).alone == len(expected)


@given(st.lists(st.text("mts.", min_size=23, max_size=23), min_size=1, max_size=25))
def test_no_lonely_stitch_is_lost_between_windows(rows):
    found = isolated(pattern(*rows))
    assert len(found.worst) <= 10
    counts = [window.alone for window in found.worst]
    assert counts == sorted(counts, reverse=True)
    if len(counts) < 9:  # 3 × 3 windows cover the chart
        assert sum(counts) == found.alone


# --- places and advice ----------------------------------------------------------------------------

SPECKLED = ("m.m.m.m.m.", "..........") * 5  # 25 in ten columns and ten rows
CALM = ("..........",) * 10


def test_places_are_windows_of_ten_by_ten_the_worst_first():
    """Speckles in the middle window of the upper row; one stitch at the far corner, cut off by the edge."""
    rows = ["." * 10 + row + "." * 5 for row in SPECKLED] + ["." * 24 + "t"]
    assert isolated(pattern(*rows)).worst == (
        Window(11, 20, 1, 10, 25),
        Window(21, 25, 11, 11, 1),
    )


def advice(*rows, at=HERE):
    of = pattern(*rows, grid=Grid(rows, at))
    problems = Problems()
    complain_of_isolated(of, isolated(of), problems)
    assert not problems.errors
    return [str(problem) for problem in problems]


def test_it_is_told_once_where_most_of_them_stand_in_the_chart_s_file():
    """The chart begins on the second line of its file."""
    rows = tuple("." * 30 + row for row in (*CALM, *SPECKLED))
    assert advice(*rows, at=Place("fern/chart.txt", 2)) == [
        "fern/chart.txt:12:31: advice: 100.0 % of the stitches (25 of 25) have no neighbour of their colour; each "
        "takes a start and an end of its own; begin with the 25 in columns 31–40, rows 11–20; "
        "packetgen proof --alone lists more places"
    ]


def test_ten_places_are_the_most_that_are_told():
    rows = tuple(row * 12 for row in SPECKLED)
    assert len(isolated(pattern(*rows)).worst) == 10


def test_a_small_share_is_no_matter():
    """25 alone are above the limit of 4 % of 600 stitches, and below that of 700."""
    speckles = [row + "." for row in SPECKLED]
    assert len(advice(*(row + "t" * 58 for row in speckles))) == 1
    assert advice(*(row + "t" * 68 for row in speckles)) == []


def test_a_few_stitches_in_a_tiny_chart_are_no_matter():
    lonely = "m." * (ADVISE_FROM_STITCHES - 1)
    assert advice(lonely) == []
    assert len(advice(lonely + "m.")) == 1


def test_figures_hold_share_and_places():
    found = figures(pattern(*SPECKLED), piece()).isolated
    assert (found.share, found.worst[0].alone) == (1.0, 25)
    assert found == isolated(replace(pattern(*SPECKLED), title="Another"))
