"""What is cut for mounting a design."""

from dataclasses import replace
from math import cos, hypot, pi, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.cautions import CAUTIONS
from packetgen.model import Hardware, Magnets, Trim
from packetgen.reckon.mounting import (
    CARD_THICK_MM,
    WADDING_THICK_MM,
    corner_cut,
    mounting,
    trim_corner_mm,
    trim_mm,
)
from packetgen.reckon.precautions import precautions
from packetgen.reckon.sizes import Size
from packetgen.units import cut_centimetres, cut_inches
from tests.stitching import piece


def test_card_wadding_cloth_and_backing_by_hand():
    """Stitching of 150 × 100 mm, border 5, wadding 1 less, fold-over 25, seam 10 on every side."""
    cut = mounting(Size(150, 100), piece())
    assert cut.card == Size(160, 110)
    assert cut.wadding == Size(158, 108)
    assert cut.cloth == Size(210, 160)
    assert cut.backing == Size(180, 130)


def test_cuts_are_printed_up_to_the_eighth_and_the_half_centimetre():
    """By hand: 6 3/8 in is 161.925 mm, so 160 mm is 6.299 in and goes up to 6 3/8; 16 cm stays. The backing of
    180 mm is 7.087 in and goes up to 7 1/8."""
    cut = mounting(Size(150, 100), piece())
    assert (cut_inches(cut.card.width_mm), cut_centimetres(cut.card.width_mm)) == (
        "6 3/8 in",
        "16 cm",
    )
    assert cut_inches(cut.backing.width_mm) == "7 1/8 in"


def test_trim_goes_round_the_card_and_overlaps():
    """By hand: round a card of 160 × 110 mm is 540 mm; straight with 20 mm over 560; gathered half as much again."""
    assert mounting(Size(150, 100), piece()).trim_mm == pytest.approx(560)
    gathered = piece(trim=Trim("gathered", 1.5, 20.0))
    assert mounting(Size(150, 100), gathered).trim_mm == pytest.approx(830)


def test_a_mitred_ribbon_takes_twice_its_width_at_a_corner():
    """By hand: a ribbon of 10 mm round 160 × 110 mm has an outer edge of 180 × 130 mm, 620 mm round, and 20 mm
    over make 640."""
    assert trim_mm(Size(160, 110), Trim("straight", 1.0, 20.0, 10.0)) == pytest.approx(640)


@given(width_mm=st.floats(0.5, 40))
def test_a_cord_turns_a_quarter_circle_at_a_corner(width_mm):
    """Walked along in a thousand steps: the middle of the cord is half its width from the corner."""
    places = [radians(90 * step / 1000) for step in range(1001)]
    walk = [(width_mm / 2 * cos(turn), width_mm / 2 * sin(turn)) for turn in places]
    walked = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in zip(walk, walk[1:]))
    assert trim_corner_mm(Trim("round", 1.0, 0.0, width_mm)) == pytest.approx(walked, rel=1e-5)


def test_a_cord_is_laid_once_round_the_card():
    """By hand: 540 mm round the card, 8 mm · π = 25.13 mm for four corners, 20 mm over."""
    laid = trim_mm(Size(160, 110), Trim("round", 1.0, 20.0, 8.0))
    assert laid == pytest.approx(540 + 8 * pi + 20)


def test_gathers_are_pushed_into_the_corner():
    assert trim_corner_mm(Trim("gathered", 1.5, 20.0, 30.0)) == 0


def test_the_corner_is_cut_so_that_the_folds_meet_by_hand():
    """4 mm of card and wadding: 4/√2 = 2.83 mm, and 2 mm that may fray: 4.83 mm clear of the card. A fold-over
    of 25 mm ends 25·√2 = 35.36 mm from the corner; the cut takes a triangle 30.53 mm high, whose sides
    along the edges are 30.53·√2 = 43.17 mm."""
    cut = corner_cut(piece())
    assert cut.clear_of_card_mm == pytest.approx(4.828, abs=1e-3)
    assert cut.along_edge_mm == pytest.approx(43.17, abs=1e-2)


@given(fold_mm=st.floats(1, 200))
def test_the_two_folds_cover_the_corner_and_nothing_is_cut_that_is_not_there(fold_mm):
    """Folded in numbers: where a flap has climbed the edge, its end stands past the mitre on the back."""
    cut = corner_cut(piece(fold_over_mm=fold_mm))
    thick = CARD_THICK_MM + WADDING_THICK_MM
    assert 0 <= cut.along_edge_mm < 2 * fold_mm
    for beyond in (thick, thick + 3, thick + 9):  # the card's edge, which it has climbed by `thick`
        reaches = cut.clear_of_card_mm * 2**0.5 - beyond
        mitre = -(beyond - thick)
        assert reaches > mitre


def test_magnets_blades_and_pins_are_always_warned_of():
    """Whatever the author lists: the blade cuts the card, pins hold the cloth, and magnets can be swallowed."""
    listed = precautions(piece(cautions=()))
    assert {"small magnets", "blades", "needles"} <= set(listed)
    assert all(name in CAUTIONS for name in listed)


def test_a_piece_without_magnets_does_not_warn_of_them():
    assert "small magnets" not in precautions(piece(cautions=(), magnets=Magnets(0, 10, 2, 18)))


def test_the_author_s_cautions_come_first_and_none_comes_twice():
    listed = precautions(piece(cautions=("dust", "blades")))
    assert listed[:2] == ("dust", "blades")
    assert len(listed) == len(set(listed))


@pytest.mark.parametrize(
    ("words", "caution"),
    [
        ("Fix it with hot-melt glue.", "hot glue"),
        ("Hold it with a glue gun.", "hot glue"),
        ("Wipe it with white spirit.", "solvents"),
        ("Spray the back.", "spray paint"),
        ("Sand every edge.", "dust"),
        ("Saw the board.", "dust"),
        ("Dissolve the dye powder.", "dye powder"),
    ],
)
def test_what_a_step_speaks_of_is_warned_of_though_the_author_lists_nothing(words, caution):
    bare = piece(cautions=(), magnets=Magnets(0, 10, 2, 18))
    assert caution not in precautions(replace(bare, steps_markdown=""))
    assert caution in precautions(replace(bare, steps_markdown=f"1. {words}"))


def test_what_can_be_swallowed_is_warned_of():
    assert "small parts" in precautions(piece(cautions=()))  # it has magnets and washers
    bare = replace(piece(cautions=(), magnets=Magnets(0, 10, 2, 18)), hardware=())
    assert "small parts" not in precautions(bare)
    assert "small parts" in precautions(bare, beads=True)
    screws = replace(bare, hardware=(Hardware("wood screw", 2, "3 × 16 mm"),))
    assert "small parts" in precautions(screws)


def test_the_caution_of_magnets_names_every_danger():
    """Swallowing, implants, children and pets: what a doctor would ask first (from memory)."""
    text = CAUTIONS["small magnets"].text.casefold()
    for danger in ("swallowed", "hospital", "pacemakers", "implants", "children", "pets"):
        assert danger in text
