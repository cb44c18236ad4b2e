"""Lengths are read with their unit and printed in both systems."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.units import (
    MM_PER_INCH,
    centimetres,
    cut_centimetres,
    cut_inches,
    cut_size_inches,
    inches,
    metres,
    metric,
    millimetres,
    parse_number,
    size_centimetres,
    split_measure,
    up_to_step,
)


@pytest.mark.parametrize(
    ("mm", "said"),
    [(152.4, "6.00 in"), (25.4, "1.00 in"), (0.254, "0.01 in"), (127.1, "5.00 in")],
)
def test_a_finished_size_has_two_decimals_of_an_inch(mm, said):
    """The inch is 25.4 mm exactly (international yard and pound agreement, 1959)."""
    assert inches(mm) == said


@pytest.mark.parametrize(
    ("mm", "said"),
    [
        (25.4, "1 in"),
        (25.5, "1 1/8 in"),
        (311, "12 1/4 in"),
        (12.7, "1/2 in"),
        (28.575, "1 1/8 in"),
        (44.45, "1 3/4 in"),
    ],
)
def test_a_cut_goes_up_to_the_next_eighth(mm, said):
    """Worked by hand: 311 mm is 12.244 in, and the next eighth is 12 1/4."""
    assert cut_inches(mm) == said


@pytest.mark.parametrize(
    ("mm", "said"), [(311, "31.5 cm"), (310, "31 cm"), (305.1, "31 cm"), (5, "0.5 cm")]
)
def test_a_cut_goes_up_to_the_next_half_centimetre(mm, said):
    assert cut_centimetres(mm) == said


@given(st.floats(1, 5000))
def test_no_cut_is_ever_smaller_than_what_is_needed(mm):
    """Neither system may shave cloth off, and neither wastes a whole step."""
    needed = mm - 1e-6
    assert needed <= up_to_step(mm / 25.4, 1 / 8) * 25.4 < mm + 25.4 / 8 + 1e-6
    assert needed <= up_to_step(mm, 5) < mm + 5 + 1e-6


def test_wood_is_sawn_to_a_tenth_of_a_millimetre():
    assert [millimetres(mm) for mm in (4.5, 208.0, 26.958)] == ["4.5 mm", "208 mm", "27 mm"]


def test_what_is_less_than_a_centimetre_is_told_in_millimetres():
    """As rulers are marked: common practice, no source."""
    assert [metric(mm) for mm in (2, 2.25, 9.9, 10, 63.5)] == [
        "2 mm",
        "2.3 mm",
        "9.9 mm",
        "1.0 cm",
        "6.4 cm",
    ]


def test_a_size_names_its_unit_once():
    assert cut_size_inches(311, 100) == "12 1/4 × 4 in"
    assert size_centimetres(152.4, 101.6) == "15.2 × 10.2 cm"
    assert centimetres(152.4) == "15.2 cm"


def test_half_a_step_is_rounded_up():
    """As it is done by hand: common practice, no source. In twos 6.35 lies below the half, and 0.625 at it."""
    assert centimetres(63.5) == "6.4 cm"
    assert inches(0.625 * MM_PER_INCH) == "0.63 in"
    assert size_centimetres(63.5, 64.5) == "6.4 × 6.5 cm"
    assert millimetres(4.25) == "4.3 mm"
    assert metres(2.25) == "2.3 m"


def test_thread_that_is_needed_is_never_printed_as_none():
    assert metres(0.01) == "0.1 m"
    assert metres(0) == "0 m"
    assert metres(3.24) == "3.2 m"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 m", (8.0, "m")),
        ("2 1/2 in", (2.5, "in")),
        ("1/2 in", (0.5, "in")),
        ("6mm", (6.0, "mm")),
        ("8", (8.0, "")),
        ("a little", None),
        ("1/0 in", None),
    ],
)
def test_a_measure_is_a_number_and_a_unit(text, read):
    assert split_measure(text) == read


def test_a_mixed_number_is_its_parts_added():
    assert parse_number("2 3/4") == 2.75
