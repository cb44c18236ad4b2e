"""Every design must lie on the panel of the finishing piece, whatever the cloth."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.diagnostics import Problems
from packetgen.model import KeepOut
from packetgen.reckon.figures import complain, figures
from packetgen.reckon.fit import Verdict, fit
from packetgen.reckon.sizes import Size, cell_mm
from tests.stitching import option, pattern, piece, series


def test_a_card_lies_in_the_middle_with_the_same_wood_on_both_sides():
    """By hand: 150 × 100 mm and 5 mm border make 160 × 110 mm on a board of 200 × 180 mm."""
    laid = fit(Size(150, 100), 1.0, piece())
    assert laid.verdict is Verdict.FITS
    assert (laid.card.width_mm, laid.card.height_mm) == (160, 110)
    assert (laid.reveal_left_mm, laid.reveal_right_mm) == (20, 20)
    assert (laid.reveal_above_mm, laid.reveal_below_mm) == (35, 35)


def test_room_is_counted_in_whole_stitches():
    """By hand: a board of 200 mm less twice 5 mm holds 190 mm: 104.72 cells of 14 count, so 104."""
    laid = fit(Size(10, 10), cell_mm(14, 1), piece())
    assert laid.most_stitches_wide == 104
    assert laid.most_stitches_high == 93


def test_a_card_that_just_touches_the_edge_is_tight_and_a_larger_one_does_not_fit():
    assert fit(Size(190, 170), 1.0, piece()).verdict is Verdict.TIGHT
    assert fit(Size(190.5, 170), 1.0, piece()).verdict is Verdict.DOES_NOT_FIT


def test_a_card_moves_up_to_clear_a_pot_at_the_foot_of_the_board():
    """The pot keeps the lowest 60 mm free of cards; a card of 110 mm has to go up from the middle by 25 mm."""
    pot = KeepOut("a pot", ((90, 120), (110, 120), (110, 180), (90, 180)))
    laid = fit(Size(150, 100), 1.0, piece(keep_outs=(pot,)))
    assert laid.verdict is Verdict.FITS
    assert laid.at_mm == (20, 10)


def test_a_card_that_a_pot_leaves_no_room_for_does_not_fit():
    pot = KeepOut("a pot", ((90, 80), (110, 80), (110, 180), (90, 180)))
    assert fit(Size(150, 100), 1.0, piece(keep_outs=(pot,))).verdict is Verdict.DOES_NOT_FIT


@given(st.floats(10, 260), st.floats(10, 260))
def test_on_a_plain_board_a_card_fits_exactly_when_it_is_no_larger(width, height):
    laid = fit(Size(width, height), 1.0, piece())
    fits = width + 10 <= 200 and height + 10 <= 180
    assert (laid.verdict is not Verdict.DOES_NOT_FIT) == fits


def test_a_cloth_on_which_the_design_does_not_fit_is_told_by_how_many_stitches():
    """By hand: at 14 count a board of 100 × 180 mm holds 90 mm, 49 stitches; the design has 60."""
    narrow = piece(100)
    wide = pattern("m" * 60, cloths=(option(14), option(36, 2)))
    problems = Problems()
    complain((figures(wide, narrow),), series(wide, finish=narrow), problems)
    assert [str(problem) for problem in problems] == [
        "tests:1:1: on Cloth 14 the mounted design is 4.68 in × 0.47 in and The Board does not hold it; "
        "it is 11 stitches too wide (room for 49 × 93 stitches); offer a finer cloth instead or make the "
        "design smaller"
    ]


@pytest.mark.parametrize("count", [14, 16, 18])
def test_a_design_that_fits_is_not_complained_of(count):
    small = pattern("m" * 60, cloths=(option(count),))
    problems = Problems()
    complain((figures(small, piece()),), series(small), problems)
    assert not list(problems)
