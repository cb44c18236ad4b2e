"""Tints of a chart: colours that differ in the hand differ on paper, and every symbol is read."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.chart.paintbox import INK, LEAST_CONTRAST, PAPER, tint
from packetgen.chart.sheet import look_of
from packetgen.chart.tints import APART, tints, tints_of
from packetgen.colour import contrast, difference, lab
from tests.many_colours import wheel
from tests.stitching import MOSS, pattern

CHANNEL = st.integers(0, 255)
DARK = st.integers(0, 110)


def _hex(red: int, green: int, blue: int) -> str:
    return f"#{red:02x}{green:02x}{blue:02x}"


ANY = st.builds(_hex, CHANNEL, CHANNEL, CHANNEL)
DARKS = st.builds(_hex, DARK, DARK, DARK)
GREYS = CHANNEL.map(lambda value: _hex(value, value, value))
KEYS = st.one_of(
    *(st.lists(kind, min_size=1, max_size=60) for kind in (ANY, DARKS, GREYS, ANY | DARKS))
)
# Two greens and two browns of a design with eight colours, which once were one green and one brown.
GARDEN = ("#4c7a3f", "#2f4f2c", "#8a5a3b", "#5a3d28", "#f0dc7d", "#b8323c", "#6d8aa3", "#3d4347")


def _apart(one: str, other: str) -> float:
    return difference(lab(one), lab(other))


@settings(deadline=None)
@given(KEYS)
def test_tints_are_as_far_apart_as_eyes_need_or_as_their_threads_are(threads):
    """Bare cloth is paper, so that no stitch is taken for none."""
    pairs = [*zip(threads, tints(tuple(threads))), (PAPER, PAPER)]
    for (thread, found), (other, beside) in combinations(pairs, 2):
        assert _apart(found, beside) >= min(APART, _apart(thread, other)) - 1e-9


@settings(deadline=None)
@given(KEYS)
def test_black_is_read_on_every_tint_of_a_key(threads):
    assert all(contrast(found, INK) >= LEAST_CONTRAST for found in tints(tuple(threads)))


@settings(deadline=None)
@given(KEYS, st.randoms())
def test_the_order_of_the_key_moves_no_tint(threads, chance):
    shuffled = list(threads)
    chance.shuffle(shuffled)
    assert dict(zip(threads, tints(tuple(threads)))) == dict(zip(shuffled, tints(tuple(shuffled))))


def test_two_greens_and_two_browns_are_told_apart_on_paper():
    greens, browns = GARDEN[:2], GARDEN[2:4]
    assert _apart(*map(tint, greens)) < APART and _apart(*map(tint, browns)) < APART
    found = dict(zip(GARDEN, tints(GARDEN)))
    for one, other in (greens, browns):
        assert _apart(found[one], found[other]) >= APART


def test_a_tint_that_is_far_from_all_others_is_the_thinned_thread():
    assert tints((MOSS.hex,)) == (tint(MOSS.hex),)


def test_a_tint_that_moves_stays_nearest_to_its_own_thread():
    """A dark green is no brown on paper: of all tints its own is the likest to the thinned thread."""
    found = tints(GARDEN)
    for thread, own in zip(GARDEN, found):
        assert min(found, key=lambda one: _apart(one, tint(thread))) == own


@pytest.mark.parametrize("count", (100, 208))
def test_keys_of_very_many_colours_have_closer_tints_and_as_many_of_them(count):
    """By the cube root of the room: 208 colours stand 8 · ∛(80 / 208) = 5.8 apart."""
    threads = wheel(count)
    found = tints(threads)
    least = APART * (80 / count) ** (1 / 3)
    for one, other in combinations(range(count), 2):
        apart = _apart(threads[one], threads[other])
        assert _apart(found[one], found[other]) >= min(least, apart) - 1e-9


def test_the_chart_is_coloured_with_these_tints():
    of = pattern("mm")
    assert look_of(of, {line.mark: "" for line in of.key}).cells == tints_of(of)
