"""Numbers of colours that an author's texts tell."""

import pytest

from packetgen.diagnostics import Problems
from packetgen.load.told_numbers import complain_of_told_numbers
from packetgen.model import Colour
from tests.stitching import thread_set

CARD = thread_set().card


def card(**numbers):
    """A card with these names, of which '_' is a space, and their numbers."""
    colours = {no: Colour(no, name.replace("_", " "), "#808080") for name, no in numbers.items()}
    return type(CARD)(**(vars(CARD) | {"colours": colours}))


FLOSS = card(wet_plank="219", hedge="141", moss="07", brick="E2", plank="300")


def told(text: str, path: str = "fern/stitching.md") -> list[str]:
    problems = Problems()
    complain_of_told_numbers(text, path, [FLOSS], problems)
    return [f"{one.place.line}:{one.place.column} {one.wrong}" for one in problems]


def test_a_number_that_the_card_no_longer_has_for_that_name_is_told_where_it_stands():
    (line,) = told("Look closely.\nWet plank (119) and hedge (141) are alike to some.\n")
    assert line.startswith("2:12 here stands 'Wet plank (119)', and 'wet plank' is '219' on ")


@pytest.mark.parametrize(
    "text, told_of",
    [
        ("Begin in hedge 219, two rows deep.", "hedge 219"),
        ("Stitch in thread hedge, no. 149.", "hedge, no. 149"),
        ("Hedge no 219 comes last.", "Hedge no 219"),
        ("All in 141 hedge, number 219, from edge to edge.", "141 hedge, number 219"),
        ("All in 141 hedge, number 219, from edge to edge.", "141 hedge, number 219"),
        ("In brick E7.", ""),  # no card has it
        ("Begin in 17 moss, two rows deep.", "17 moss"),
        ("First the rim in hedge, 149, then more.", "hedge, 149"),
        ("The rim is hedge, 141, or moss, 12, and hedge, 149 of them.", ""),
        ("Begin in **17 moss**.", "17 moss"),
        ("Work the bricks in 17 moss and 41 brick dust.", "17 moss"),
        ("Last the line in 17 moss with one strand.", "17 moss"),
        ("A heart of 17 moss and two stitches of hedge.", "17 moss"),
        ("Put 17 moss stitches there.", ""),
        ("There are 17 moss, 12 pale and 3 white stitches.", ""),
        ("Work the wet plank boots (141) next.", "wet plank boots (141)"),
        ("Work the hedge leaves (149) next.", "hedge leaves (149)"),
        ("Work the plank or hedge (141) next.", ""),
        ("In plank 300, moss 12 stitches wide and hedge 219 stitches.", ""),
    ],
)
def test_a_number_straight_behind_a_name_is_told_where_it_is_another_s(text, told_of):
    said = told(text)
    assert [f"'{told_of}'" in one for one in said] == [True] * bool(told_of), said


def test_a_thing_called_by_one_word_may_be_in_another_colour_of_the_key():
    for notes, used, number in (
        ("The hedge eyes (300) come last.", ["141", "300"], 0),
        ("The hedge eyes (300) come last.", ["141"], 1),
        ("The wet plank eyes (300) come last.", ["219", "300"], 1),
    ):
        problems = Problems()
        complain_of_told_numbers(notes, "fern/stitching.md", [FLOSS], problems, used)
        assert len(problems) == number, notes


@pytest.mark.parametrize(
    "used, right",
    [
        (["219", "141"], "write '141', or 'wet plank', which is '219', or take the number out"),
        (["219"], "write 'wet plank', which is '219'"),
        (["300"], "name a colour of the key, with its number"),
    ],
)
def test_a_number_of_another_colour_is_told_with_those_that_the_key_has(used, right):
    problems = Problems()
    complain_of_told_numbers("219 hedge", "fern/story.md", [FLOSS], problems, used)
    (only,) = problems
    assert only.right == right


@pytest.mark.parametrize(
    "text",
    [
        "Wet plank (219) and hedge (141).",
        "219 wet plank, 300 plank",
        "12 moss stitches, then 3 hedge stitches and 40 brick ones",  # are counted
        "12 moss and 14 hedge stitches, 12 small moss knots, 12 moss-green leaves",
        "hedge (2)",
        "In 2024 hedge and moss grew.",  # another form than any number has
        "Use hedgerow 119.",
    ],
)
def test_other_figures_beside_a_name_are_let_be(text):
    assert told(text) == []


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("119 wet plank", "'219'"),
        ("C2 brick", "'E2'"),
        ("moss (08)", "'07'"),
        ("141 plank", "'300'"),
    ],
)
def test_it_is_told_before_the_name_and_behind_it(text, number):
    (line,) = told(text)
    assert f"is {number} on" in line


def test_of_a_chart_only_the_list_at_its_head_is_read():
    chart = "# w  119 wet plank\n# m  07 moss\n# k  8 moss\n# 119 wet plank was here\nww\n"
    (line,) = told(chart, "fern/chart.txt")
    assert line.startswith("1:6 here stands '119 wet plank'")
