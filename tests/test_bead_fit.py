"""Beads: whether they fit their stitch, and how many to buy."""

from dataclasses import replace
from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.diagnostics import Problems
from packetgen.model import Bead, BeadCard, Colour, Weave
from packetgen.reckon.bead_fit import (
    LOOSE_BELOW,
    bead_fit,
    bead_fits,
    complain_of_beads,
    side_by_side,
)
from packetgen.reckon.figures import beads_with_spares, figures
from packetgen.reckon.sizes import cell_mm
from packetgen.render.packet import packet
from packetgen.render.templates import environment
from tests.stitching import HERE, option, pattern, piece, series

RED = Colour("07", "hip red", "#b32c2e")


def beads(*at, size_mm=2.2, per_packet=150):
    card = BeadCard("drop", "Drop", size_mm, per_packet, {RED.number: RED})
    return tuple(Bead(card, RED, point, HERE) for point in at)


# --- size against count ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("size_mm", "count", "over", "word"),
    [
        (2.2, 14, 1, "fits"),
        (2.2, 28, 2, "fits"),
        (2.2, 18, 1, "crowds"),
        (2.2, 36, 2, "crowds"),
        (1.5, 18, 1, "fits"),
        (2.2, 8, 1, "loose"),
        (4.0, 14, 1, "crowds"),
    ],
)
def test_a_bead_of_2_2_mm_fits_14_count_and_crowds_on_18(size_mm, count, over, word):
    """The first four are common practice, no source; the limits between them are our own."""
    assert bead_fit(size_mm, cell_mm(count, over)) == word


def test_the_limits_by_hand():
    """On a cell of 2 mm: the diagonal is 2.828 mm; loose is below 0.85 of the side, 1.7 mm."""
    assert [bead_fit(size, 2.0) for size in (1.69, 1.71, 2.82, 2.83)] == [
        "loose",
        "fits",
        "fits",
        "crowds",
    ]


@given(size_mm=st.floats(0.5, 6), cell=st.floats(0.5, 4))
def test_a_bead_crowds_where_it_would_overlap_the_one_across_the_corner(size_mm, cell):
    """Two round beads in the middles of cells that meet at a corner."""
    apart = dist((cell / 2, cell / 2), (1.5 * cell, 1.5 * cell))
    if abs(apart - size_mm) > 1e-9:
        assert (bead_fit(size_mm, cell) == "crowds") == (size_mm > apart)
    assert (bead_fit(size_mm, cell) == "loose") == (size_mm < LOOSE_BELOW * cell)


def test_cloths_on_which_a_bead_does_the_same_stand_together():
    cloths = (option(14), option(18), option(16), option(8))
    found = [
        (fit.word, [one.cloth.count_per_inch for one in fit.cloths])
        for fit in bead_fits(2.2, cloths)
    ]
    assert found == [("fits", [14, 16]), ("crowds", [18]), ("loose", [8])]


# --- neighbours -----------------------------------------------------------------------------------


def test_beads_are_neighbours_where_their_cells_touch():
    """Side by side and across a corner, not with a cell between; also over the crossing of two lines."""
    assert len(side_by_side(beads((2.5, 2.5), (3.5, 2.5)))) == 2
    assert len(side_by_side(beads((2.5, 2.5), (3.5, 3.5)))) == 2
    assert side_by_side(beads((2.5, 2.5), (4.5, 2.5))) == ()
    assert len(side_by_side(beads((3, 2), (2, 2), (9, 9)))) == 2
    assert side_by_side(beads((2.5, 2.5))) == ()


points = st.tuples(st.integers(4, 40), st.integers(4, 40)).map(lambda at: (at[0] / 4, at[1] / 4))


@given(st.lists(points, max_size=30, unique=True))
def test_neighbours_are_as_a_look_at_every_pair_finds_them(at):
    drawn = beads(*at)
    expected = [
        one.at
        for one in drawn
        if any(
            max(abs(one.at[0] - other.at[0]), abs(one.at[1] - other.at[1])) <= 1
            for other in drawn
            if other is not one
        )
    ]
    assert [bead.at for bead in side_by_side(drawn)] == expected


def advice(*cloths, at=((1.5, 1.5), (2.5, 1.5)), size_mm=2.2):
    problems = Problems()
    complain_of_beads(pattern("....", beads=beads(*at, size_mm=size_mm), cloths=cloths), problems)
    return [str(problem) for problem in problems]


def test_a_row_of_beads_that_crowds_is_told():
    """The diagonal at 36 over two is 1.995 mm; beads are told of to the tenth that surely fits."""
    assert advice(option(14), option(36, 2, Weave.LINEN)) == [
        "tests:1:1: advice: 2 beads of 2.2 mm stand side by side, and on Cloth 36 over 2 they crowd; take "
        "beads of 1.9 mm or less, a coarser cloth, or move them apart"
    ]


def test_what_is_named_as_small_enough_does_fit():
    for count in range(11, 41):
        for line in advice(option(count), size_mm=9.9):
            most = float(line.split("beads of ")[2].split(" mm")[0])
            assert bead_fit(most, cell_mm(count, 1)) == "fits"


def test_beads_apart_from_one_another_may_be_as_large_as_they_like():
    assert advice(option(18), at=((1.5, 1.5), (4.5, 1.5)), size_mm=3) == []


# --- how many to buy ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("sewn", "bought"),
    [(1, 6), (10, 15), (49, 54), (50, 55), (51, 57), (60, 66), (61, 68), (100, 110), (101, 112)],
)
def test_one_bead_in_ten_is_spare_and_never_fewer_than_five(sewn, bought):
    """Common practice, no source. From 51 on a tenth is more than five; a part of a bead is a bead."""
    assert beads_with_spares(sewn) == bought


@pytest.mark.parametrize(("sewn", "packets"), [(136, 1), (137, 2), (272, 2), (273, 3)])
def test_packets_hold_the_spares_too(sewn, packets):
    """By hand with 150 in a packet: 136 and 14 spare are one packet; one more bead takes a second."""
    row = beads(*((1 + x / 4, 1.5) for x in range(sewn)))
    (need,) = figures(pattern("." * 99, beads=row), piece(2000)).beads
    assert (need.sewn, need.packets) == (sewn, packets)
    assert need.with_spares <= packets * 150


def test_each_colour_of_bead_is_bought_for_itself():
    red, blue = beads((1.5, 1.5))[0], Colour("09", "sloe", "#334466")
    two = (red, replace(red, colour=blue, at=(2.5, 1.5)), replace(red, at=(3.5, 1.5)))
    needs = figures(pattern("....", beads=two), piece()).beads
    assert [(need.sample.colour.number, need.sewn, need.with_spares) for need in needs] == [
        ("07", 2, 7),
        ("09", 1, 6),
    ]
    assert needs[0].fits[0].word == "fits"


def test_the_packet_says_on_which_cloths_a_bead_fits_once_a_card():
    red, blue = beads((1.5, 1.5))[0], Colour("09", "sloe", "#334466")
    cloths = (option(14), option(28, 2, Weave.LINEN), option(18))
    of = pattern("....", beads=(red, replace(red, colour=blue, at=(2.5, 1.5))), cloths=cloths)
    page = packet(series(of), figures(of, piece()), b"cover", environment()).html
    said = "A bead of this size fits the stitches of Cloth 14 and Cloth 28 over 2, and crowds, side by side, on Cloth 18."
    assert page.count(said) == 1
    assert page.count("A bead of this size") == 1
