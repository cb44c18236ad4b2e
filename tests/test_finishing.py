"""What is cut for mounting, and how much paint the wood takes."""

import pytest

from packetgen.model import Magnets, Paint, Part, Trim
from packetgen.reckon.finishing import mounting, paint_needs, painted_area_mm2
from packetgen.reckon.sizes import Size
from tests.stitching import SAGE, piece


def test_card_wadding_cloth_and_backing_by_hand():
    """Stitching of 150 × 100 mm, border 5, wadding 1 less, fold-over 25, seam 10 on every side."""
    cut = mounting(Size(150, 100), piece())
    assert cut.card == Size(160, 110)
    assert cut.wadding == Size(158, 108)
    assert cut.cloth == Size(210, 160)
    assert cut.backing == Size(180, 130)


def test_trim_goes_round_the_card_and_overlaps():
    """By hand: round a card of 160 × 110 mm is 540 mm; straight with 20 mm over 560; gathered half as much again."""
    assert mounting(Size(150, 100), piece()).trim_mm == pytest.approx(560)
    gathered = piece(trim=Trim("gathered", 1.5, 20.0))
    assert mounting(Size(150, 100), gathered).trim_mm == pytest.approx(830)


def test_four_magnets_sit_in_the_corners():
    """By hand: 18 mm in from the edges of a card of 160 × 110 mm."""
    centres = mounting(Size(150, 100), piece()).magnet_centres_mm
    assert set(centres) == {(18, 18), (142, 18), (18, 92), (142, 92)}


def test_six_magnets_also_hold_the_middles_of_the_long_sides():
    centres = mounting(Size(150, 100), piece(magnets=Magnets(6, 10, 2, 18))).magnet_centres_mm
    assert set(centres[4:]) == {(80, 18), (80, 92)}


def test_both_faces_and_the_edges_are_painted():
    """By hand: 100 × 50 mm, 6 mm thick: twice 5,000 and 300 · 6 = 11,800 mm²; the front alone 5,000."""
    outline = ((0, 0), (100, 0), (100, 50), (0, 50))
    board = Part("shelf", outline, (0, 0), 6.0, 1, SAGE, 2, True)
    front = Part("shelf", outline, (0, 0), 6.0, 3, SAGE, 2, False)
    assert painted_area_mm2(board) == pytest.approx(11_800)
    assert painted_area_mm2(front) == pytest.approx(15_000)


def test_paint_is_area_times_coats_over_what_the_label_says():
    """By hand: 200 × 180 mm, 6 mm thick: 72,000 + 4,560 mm² = 0.07656 m²; two coats 0.15312 m²; at
    10 m² in a litre 15.312 ml, and with a tenth left in the brush 17.013 ml: one tin of 100 ml."""
    (need,) = paint_needs(piece())
    assert need.volume_ml == pytest.approx(17.0133, abs=1e-3)
    assert need.tins == 1
    assert need.coats == 2


def test_a_spray_loses_more_than_a_brush():
    spray = Paint("chalk white", "#f4f1e8", "spray", 10.0, 1.0, 100.0)
    board = piece().parts[0]
    sprayed = Part(board.name, board.outline, (0, 0), 6.0, 1, spray, 2, True)
    (need,) = paint_needs(piece(parts=(sprayed,), paints=(spray,)))
    assert need.volume_ml == pytest.approx(15.312 / 0.6, abs=1e-3)
