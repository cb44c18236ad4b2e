"""Colours that some eyes cannot tell apart must have symbols that everybody can."""

import pytest

from packetgen.chart.assignment import Wish, assign, close_pairs, shapes_for
from packetgen.chart.likeness import likeness
from packetgen.chart.vision_check import SYMBOLS_ALIKE, complain_of_likeness
from packetgen.colour import channels, difference, lab
from packetgen.diagnostics import Problems
from packetgen.model import Colour, KeyLine, Stitch
from packetgen.reckon.vision import EYES, seen
from packetgen.shape_names import SHAPE_NAMES
from tests.outside import rows
from tests.stitching import HERE, pattern

RED, GREEN = Colour("E1", "brick", "#a9522f"), Colour("M1", "moss", "#6e6a30")


def red_and_green(red_symbol=None, green_symbol=None):
    lines = tuple(
        KeyLine(mark, Stitch.FULL, {"bramble": (colour,)}, {}, HERE, symbol=symbol)
        for mark, colour, symbol in (("r", RED, red_symbol), ("g", GREEN, green_symbol))
    )
    return pattern("rg", key=lines)


def advice(of):
    problems = Problems()
    complain_of_likeness(of, {"r": 1, "g": 1}, problems)
    return [str(problem) for problem in problems]


def most_alike():
    return max(
        ((a, b) for n, a in enumerate(SHAPE_NAMES) for b in SHAPE_NAMES[:n]),
        key=lambda pair: likeness(*pair),
    )


def test_brick_and_moss_with_symbols_alike_are_warned_of():
    (said,) = advice(red_and_green(*most_alike()))
    assert "advice: seen with" in said
    assert "'r' (brick) and 'g' (moss) look alike, and so do their symbols" in said
    assert "pin another, for example symbol: " in said


def test_symbols_that_differ_are_enough():
    assert advice(red_and_green()) == []


def test_close_colours_get_shapes_that_are_unlike():
    of = red_and_green()
    shapes = shapes_for(of, {"r": 1, "g": 1})
    assert frozenset("rg") in close_pairs(of)
    assert likeness(shapes["r"], shapes["g"]) < SYMBOLS_ALIKE / 2


def test_a_pin_is_kept_and_moves_no_other():
    wishes = [Wish(mark, 10) for mark in "abcdef"]
    before = assign(wishes, frozenset())
    pinned = [*wishes[:5], Wish("f", 10, "acorn")]
    assert assign(pinned, frozenset()) == before | {"f": "acorn"}


@pytest.mark.parametrize("eyes", EYES)
def test_greys_are_seen_as_greys(eyes):
    """All three simulations leave the neutral axis alone: Brettel, Viénot and Mollon (1997)."""
    for grey in ("#000000", "#808080", "#ffffff"):
        level = int(grey[1:3], 16)
        assert max(abs(channel - level) for channel in channels(seen(grey, eyes))) <= 3


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("row", rows("dichromats_brettel1997"), ids=lambda row: row["hex"])
def test_a_colour_is_seen_as_another_implementation_has_it(row, eyes):
    """Brettel, Viénot and Mollon (1997) by two libraries, which differ by their cone matrices' digits."""
    ours, theirs = seen(row["hex"], eyes), row[eyes]
    assert max(abs(a - b) for a, b in zip(channels(ours), channels(theirs))) <= 5
    assert difference(lab(ours), lab(theirs)) < 1.6


def test_red_and_green_come_nearer_without_red_or_green_cones():
    ordinary = difference(lab("#c03020"), lab("#5a7a20"))
    for eyes in ("protanopia", "deuteranopia"):
        assert difference(lab(seen("#c03020", eyes)), lab(seen("#5a7a20", eyes))) < ordinary / 2
