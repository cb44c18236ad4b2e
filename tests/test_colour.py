"""Colour as seen, checked against published values."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.chart.paintbox import INK, tint
from packetgen.reckon.colour import blended, channels, closeness, contrast, difference, lab, mix
from tests.outside import rows

hexes = st.integers(0, 0xFFFFFF).map(lambda value: f"#{value:06x}")


@pytest.mark.parametrize("row", rows("ciede2000_sharma2005"), ids=lambda row: row["dE00"])
def test_the_difference_of_two_colours_is_that_of_the_published_pairs(row):
    """Sharma, Wu, Dalal (2005), table 1; pair 14's hue difference is 180° within rounding, where 4.7461
    and 4.8045 are both right by float order."""
    one = tuple(float(row[name]) for name in ("L1", "a1", "b1"))
    other = tuple(float(row[name]) for name in ("L2", "a2", "b2"))
    published = float(row["dE00"])
    answers = {4.8045, 4.7461} if published == 4.8045 else {published}
    assert min(abs(difference(one, other) - answer) for answer in answers) < 1e-4


@pytest.mark.parametrize("row", rows("srgb_to_lab_d65"), ids=lambda row: row["hex"])
def test_a_screen_colour_has_the_lab_values_of_three_libraries(row):
    """IEC 61966-2-1 by three libraries, which differ among themselves by up to 0.0233."""
    expected = [float(row[f"{axis}_coloraide"]) for axis in "Lab"]
    assert lab(row["hex"]) == pytest.approx(expected, abs=0.03)


@pytest.mark.parametrize("row", rows("wcag_contrast"), ids=lambda row: row["fg"] + row["bg"])
def test_contrast_is_that_of_the_web_guidelines(row):
    """WCAG 2.2, definitions of contrast ratio and relative luminance."""
    assert contrast(row["fg"], row["bg"]) == pytest.approx(float(row["ratio_formula"]), abs=1e-5)


@given(hexes)
def test_black_ink_is_read_on_every_tint(hex_colour):
    """WCAG 2.2, criterion 1.4.6: at least 7 to 1."""
    assert contrast(tint(hex_colour), INK) >= 7


@given(hexes)
def test_a_colour_does_not_differ_from_itself(hex_colour):
    assert difference(lab(hex_colour), lab(hex_colour)) == 0
    assert closeness(hex_colour, hex_colour) == "same to the eye"


@given(hexes, hexes)
def test_a_difference_is_the_same_both_ways(one, other):
    assert difference(lab(one), lab(other)) == pytest.approx(
        difference(lab(other), lab(one)), abs=1e-9
    )


def test_black_and_white_are_far_apart():
    assert closeness("#000000", "#ffffff") == "far"


def test_two_threads_in_one_needle_are_seen_as_their_middle():
    assert blended(("#000000", "#646464")) == "#323232"
    assert blended(("#123456",)) == "#123456"
    assert mix("#000000", "#ffffff", 0.2) == "#333333"
    assert channels("#6b503a") == (107, 80, 58)
