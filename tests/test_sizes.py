"""A chart becomes a size on a cloth."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.model import Weave
from packetgen.reckon.figures import figures
from packetgen.reckon.sizes import FRAMING_MARGIN_MM, cell_mm, finished_size, usual_sizes
from packetgen.units import (
    MM_PER_INCH,
    MM_PER_UNIT,
    cut_size_centimetres,
    cut_size_inches,
    inches,
)
from tests.stitching import option, pattern, piece


@pytest.mark.parametrize(
    ("count", "over", "stitches_per_inch"),
    [(14, 1, 14), (28, 2, 14), (32, 2, 16), (36, 2, 18), (25, 1, 25), (11, 1, 11)],
)
def test_stitches_in_an_inch_are_the_count_over_the_threads_crossed(count, over, stitches_per_inch):
    """28 count over two gives the same 14 stitches in an inch as 14 count aida: common practice, no source."""
    assert 25.4 / cell_mm(count, over) == pytest.approx(stitches_per_inch)


def test_eighty_four_stitches_on_fourteen_count_are_six_inches():
    """By hand: 84 / 14 = 6 in = 152.4 mm; 70 / 14 = 5 in."""
    size = finished_size(84, 70, cell_mm(14, 1))
    assert size.width_mm == pytest.approx(152.4)
    assert size.height_mm == pytest.approx(127.0)


def test_a_framer_gets_three_inches_on_every_side():
    """By hand: 6 × 5 in and twice 3 in make 12 × 11 in. The margin is common practice, no source."""
    cut = finished_size(84, 70, cell_mm(14, 1)).grown(FRAMING_MARGIN_MM)
    assert cut_size_inches(cut.width_mm, cut.height_mm) == "12 × 11 in"


def test_an_inch_and_a_yard_are_what_they_were_agreed_to_be():
    """1 in = 25.4 mm and 1 yd = 0.9144 m, both exactly: international yard and pound agreement, 1959;
    NIST Special Publication 811 (2008), appendix B.8."""
    assert MM_PER_INCH == 25.4
    assert MM_PER_UNIT["in"] == 25.4
    assert MM_PER_UNIT["yd"] == 914.4
    assert 36 * MM_PER_INCH == pytest.approx(MM_PER_UNIT["yd"], abs=1e-9)


# A design of 100 × 75 stitches, worked by hand with pencil and paper. A framer's cut is 6 in more.
BY_HAND = [
    # count, over, width in, width mm, height in, cut in, cut cm
    # 100/11 = 9.0909 in = 230.91 mm; 75/11 = 6.8182 in. Cut 15.0909 → 15 1/8 and 12.8182 → 12 7/8 in;
    # 383.309 mm → 38.5 cm, 325.582 mm → 33 cm
    (11, 1, "9.09 in", 230.909, "6.82 in", "15 1/8 × 12 7/8 in", "38.5 × 33 cm"),
    # 100/14 = 7.1429 in = 181.43 mm; 75/14 = 5.3571 in. Cut 13.1429 → 13 1/4 and 11.3571 → 11 3/8 in;
    # 333.829 mm → 33.5 cm, 288.471 mm → 29 cm
    (14, 1, "7.14 in", 181.429, "5.36 in", "13 1/4 × 11 3/8 in", "33.5 × 29 cm"),
    # 18 is 36 over two: 100/18 = 5.5556 in = 141.11 mm; 75/18 = 4.1667 in. Cut 11.5556 → 11 5/8 and
    # 10.1667 → 10 1/4 in; 293.511 mm → 29.5 cm, 258.233 mm → 26 cm
    (36, 2, "5.56 in", 141.111, "4.17 in", "11 5/8 × 10 1/4 in", "29.5 × 26 cm"),
    # 16 is 32 over two: 100/16 = 6.25 in = 158.75 mm; 75/16 = 4.6875 in. Cut 12.25 and 10.6875 → 10 3/4 in;
    # 311.15 mm → 31.5 cm, 271.4625 mm → 27.5 cm
    (32, 2, "6.25 in", 158.75, "4.69 in", "12 1/4 × 10 3/4 in", "31.5 × 27.5 cm"),
    # 25 over one: 100/25 = 4 in = 101.6 mm; 75/25 = 3 in. Cut 10 × 9 in; 254 mm → 25.5 cm, 228.6 mm → 23 cm
    (25, 1, "4.00 in", 101.6, "3.00 in", "10 × 9 in", "25.5 × 23 cm"),
]


@pytest.mark.parametrize(("count", "over", "wide", "wide_mm", "high", "cut_in", "cut_cm"), BY_HAND)
def test_sizes_are_those_of_a_table_worked_by_hand(
    count, over, wide, wide_mm, high, cut_in, cut_cm
):
    """Beside each line of the table stands its working."""
    drawn = pattern(*["m" * 100] * 75, cloths=(option(count, over),))
    on = figures(drawn, piece()).cloths[0]
    assert (inches(on.finished.width_mm), inches(on.finished.height_mm)) == (wide, high)
    assert on.finished.width_mm == pytest.approx(wide_mm, abs=1e-3)
    cut = on.framing_cut
    assert cut_size_inches(cut.width_mm, cut.height_mm) == cut_in
    assert cut_size_centimetres(cut.width_mm, cut.height_mm) == cut_cm


@given(st.floats(0.1, 3000))
def test_a_printed_cut_is_never_smaller_than_the_cut(mm):
    """Up to the next eighth of an inch and half centimetre, and less than a whole step more."""
    said = cut_size_inches(mm, mm).removesuffix(" in").split(" × ")[0]
    eighths = sum(float(Fraction(word)) for word in said.split())
    assert mm - 1e-6 <= eighths * 25.4 < mm + 25.4 / 8
    halves = float(cut_size_centimetres(mm, mm).split(" × ")[0])
    assert mm - 1e-6 <= halves * 10 < mm + 5


def test_a_design_tells_how_many_pieces_a_fat_quarter_gives():
    """By hand, 40 × 30 stitches on 10 count are 4 × 3 in. With 3 in all round 10 × 9 in; cut 25.5 × 23 cm,
    as the larger rounding: 2 columns (51 of 55.88 cm), but 46 cm of 45.72 take one row: 2 pieces. Turned
    23 × 25.5: 2 columns, 1 row: 2. For the board 30 mm all round: 161.6 × 136.2 mm, cut 16.5 × 14 cm:
    3 columns, 3 rows: 9."""
    drawn = pattern(*["m" * 40] * 30, cloths=(option(10, 1),))
    on = figures(drawn, piece()).cloths[0]
    assert (on.framing_pieces, on.finishing_pieces) == (2, 9)


def test_every_usual_count_has_a_row():
    rows = usual_sizes(pattern("mmmm", "mmmm"))
    counts = {(row.weave, row.count_per_inch, row.over) for row in rows}
    assert {(Weave.AIDA, c, 1) for c in (11, 14, 16, 18, 20)} <= counts
    assert {(Weave.EVENWEAVE, c, o) for c in (25, 28, 32, 36, 40) for o in (1, 2)} <= counts
    assert len(rows) == 15


def test_a_finer_cloth_makes_a_smaller_picture():
    aida = [row.finished.width_mm for row in usual_sizes(pattern("mm")) if row.weave is Weave.AIDA]
    assert aida == sorted(aida, reverse=True)
    assert len(set(aida)) == 5
