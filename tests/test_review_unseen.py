"""A thread of nearly the cloth's colour shows by what lies round it; where that is bare cloth, its author is told."""

from dataclasses import replace

import pytest
from coloraide import Color

from packetgen.diagnostics import Place, Problems
from packetgen.model import BARE, Colour, Knot, Line
from packetgen.reckon.review_unseen import complain_of_unseen
from tests.stitching import option, pattern, thread_set

MILK = Colour("01", "milk", "#fcfcfa")
PATCH = ("....", ".mm.", ".mm.", ".mm.", ".mm.", ".mm.", "....")  # ten stitches


def told(*rows: str, thread: Colour = MILK, code: str = "thread-unseen", **more) -> list[str]:
    drawn = pattern(*rows, **more)
    model = drawn.thread_sets[0].id
    key = tuple(
        replace(line, threads={model: (thread,)}) if line.mark == "m" else line
        for line in drawn.key
    )
    problems = Problems()
    complain_of_unseen(replace(drawn, key=key), problems)
    assert {one.code for one in problems} <= {"thread-unseen", "ground-worked"}
    return [str(one) for one in problems if one.code == code]


FRAMED = ("tttttt", "tmmmmt", "tmttmt", "tmmmmt", "tmmmmt", "tmmmmt", "tttttt")


def test_half_of_a_design_in_the_colour_of_the_cloth_is_told_though_a_frame_goes_round_it():
    """By hand: of 42 stitches 18 are snow, and with three more rows 30 of 60."""
    snow = Colour("03", "snow", "#fefefe")
    here = replace(option(), place=Place("sprig/pattern.yaml", 22, 5))
    assert not told(*FRAMED, code="ground-worked", thread=snow, cloths=(here,))
    wider = (*FRAMED[:-1], *["tmmmmt"] * 3, FRAMED[-1])
    assert told(*wider, code="ground-worked", thread=snow, cloths=(here,)) == [
        "sprig/pattern.yaml:22:5: advice: 30 of 60 stitches are in 03 snow, to the eye the colour of Cloth 14 in white; if that "
        "ground is bare cloth, put '.' in the chart for its mark; if it is to be stitched, lay this aside in pattern.yaml"
    ]
    # What is seen beside the cloth, though it is near.
    assert not told(*wider, code="ground-worked", thread=MILK)


def test_white_on_white_is_told_at_the_cloth():
    here = replace(option(), place=Place("sprig/pattern.yaml", 22, 5))
    assert told(*PATCH, cloths=(here,)) == [
        "sprig/pattern.yaml:22:5: advice: 10 stitches of 01 milk can hardly be seen on Cloth 14 in white: nearly of that "
        "colour, and most of their edge lies on bare cloth; offer a cloth of another colour, or outline them"
    ]


def test_of_several_cloths_the_first_is_named_on_which_it_hardly_shows():
    dark = Colour("soil", "soil", "#4a3628")
    soil = option(16)
    soil = replace(soil, colour=dark, cloth=replace(soil.cloth, colours={"soil": dark}))
    (said,) = told(*PATCH, cloths=(soil, option(18), option(20), option(22)))
    assert "can hardly be seen on Cloth 18 in white and 2 more cloths: " in said
    assert not told(*PATCH, cloths=(soil,))


@pytest.mark.parametrize("hex", ["#fcfcfa", "#f9f5ec", "#f8f3e8", "#f6f1e4", "#f5efe0", "#f2e6c4"])
def test_a_thread_shows_from_a_visible_difference_on(hex):
    """As a colour library of others reckons CIEDE2000; up to 6 is our own choice."""
    apart = Color(hex).delta_e("#ffffff", method="2000")
    assert bool(told(*PATCH, thread=Colour("01", "pale", hex))) == (apart <= 6)


def test_a_few_stitches_are_a_glint():
    assert not told(*PATCH[:-2], "....", "....")


@pytest.mark.parametrize(
    "rows",
    [
        ("tttt", "tmmt", "tmmt", "tmmt", "tmmt", "tmmt", "tttt"),
        ("tttt", "tmm.", "tmmt", "tmmt", "tmmt", "tmmt", "...."),  # 11 of its 14 sides are worked
    ],
)
def test_what_lies_among_other_colours_shows(rows):
    assert not told(*rows)


def test_half_of_its_edge_is_enough_and_the_edge_of_the_chart_is_bare():
    """By hand: two columns of five stitches have 14 sides, of which 7 are 5 at the left and 2 above."""
    half = ("mmt",) * 5 + ("tt.",)
    assert not told(*half)
    assert told("mmt", *half[1:-1], "t..")


@pytest.mark.parametrize(
    "points",
    [
        ((2, 2), (4, 2), (4, 7), (2, 7), (2, 2)),  # along its edge
        ((1.5, 1.5), (4.5, 1.5), (4.5, 7.5), (1.5, 7.5), (1.5, 1.5)),  # half a stitch outside
    ],
)
def test_an_outline_makes_it_seen(points):
    line = Line("s", points, False, Place(""))
    assert not told(*PATCH, lines=(line,))
    across = Line("s", ((2, 4), (4, 4)), False, Place(""))
    assert told(*PATCH, lines=(across,)), "that leaves most of it open"


@pytest.mark.parametrize(
    ("at", "told_of"),
    [
        ([(1.5, 1.5), (5.5, 5.5)], "2 French knots of 01 milk"),
        ([(1.5, 1.5), (3, 3)], ""),  # half of them lie on stitches
        ([(3, 4)], ""),  # at a corner of one
        ([(2, 7)], "1 French knot of 01 milk"),
    ],
)
def test_knots_in_the_colour_of_the_cloth_are_lost_on_it(at, told_of):
    knots = tuple(Knot("m", one, Place("")) for one in at)
    said = told(".....", ".....", "..tt.", "..tt.", ".....", ".....", ".....", knots=knots)
    assert [told_of in one and "mostly on bare cloth" in one for one in said] == [True] * bool(
        told_of
    )


@pytest.mark.parametrize(
    ("points", "lost"),
    [
        (((1, 6), (6, 6)), True),
        (((3, 3), (5, 3)), False),  # along the edge of what is worked
        (
            ((1, 3), (6, 3)),
            True,
        ),  # two of its five stitches, with their ends 5 of 11 points, lie there
    ],
)
def test_lines_in_the_colour_of_the_cloth_are_lost_on_it(points, lost):
    lines = (Line("m", points, False, Place("")),)
    said = told(".....", ".....", "..tt.", "..tt.", ".....", ".....", ".....", lines=lines)
    assert ["the lines of 01 milk" in one for one in said] == [True] * lost


def test_a_thread_of_another_card_shows_by_its_sheen_and_a_blend_is_no_colour_of_the_card():
    drawn = pattern(*PATCH)
    model = thread_set().id
    glint = replace(drawn.thread_sets[0].card, id="glint")
    by = {
        "another": replace(drawn.key[0], threads={model: (MILK,)}, cards={model: (glint,)}),
        "blend": replace(drawn.key[0], threads={model: (MILK, Colour("02", "cream", "#f6f0e2"))}),
    }
    for line in by.values():
        problems = Problems()
        complain_of_unseen(replace(drawn, key=(line, *drawn.key[1:])), problems)
        assert not len(problems)
    assert BARE not in {line.mark for line in drawn.key}
