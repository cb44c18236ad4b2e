"""Names of colours that an author's texts misspell."""

import pytest

from packetgen.diagnostics import Problems
from packetgen.load.told_spellings import complain_of_told_spellings
from tests.test_told_numbers import card

FLOSS = card(windfall_yellow="110", old_soot="120", berry="170", windfall_mellow="130")


def told(text: str) -> list[str]:
    problems = Problems()
    used = ["110", "120", "170"]
    former = {"110": "butter", "120": "chimney black"}
    complain_of_told_spellings(text, "fern/stitching.md", [FLOSS], used, former, problems)
    return [f"{one.place.line}:{one.place.column} {one.wrong}; {one.right}" for one in problems]


@pytest.mark.parametrize(
    ("text", "line"),
    [
        (
            "Look.\nThen 110 windfall yelow.",
            "2:10 here stands 'windfall yelow', and '110' of Bramble is called 'windfall yellow'; write 'windfall yellow'",
        ),
        (
            "Fill in Windfal yellow.",
            "1:9 here stands 'Windfal yellow', and '110' of Bramble is called 'windfall yellow'; write 'windfall yellow'",
        ),
        (
            "Bery (170) last, bery (170) again.",
            "1:1 here stands 'Bery', and '170' of Bramble is called 'berry'; write 'berry'",
        ),
        (
            "Butter (110) last, and butter on bread.",
            "1:1 here stands 'Butter', and '110' of Bramble is called 'windfall yellow'; write 'windfall yellow'",
        ),
        (
            "In chimney black.",
            "1:4 here stands 'chimney black', and '120' of Bramble is called 'old soot'; write 'old soot'",
        ),
        (
            "The hat in *old sot*.",
            "1:13 here stands 'old sot', and '120' of Bramble is called 'old soot'; write 'old soot'",
        ),
        (
            "Old sot (120), in rows.",
            "1:1 here stands 'Old sot', and '120' of Bramble is called 'old soot'; write 'old soot'",
        ),
    ],
)
def test_a_name_that_is_misspelt_is_told_with_the_name_that_the_card_has(text, line):
    assert told(text) == [line]


def test_a_story_may_speak_of_what_a_colour_is_called_by():
    problems = Problems()
    of = card(windfall_yellow="110")
    story = "The windfal yellow of October. A windfal yellow (110)."
    complain_of_told_spellings("Windfall yelow.", "fern/story.md", [of], ["110"], {}, problems)
    assert not list(problems)
    complain_of_told_spellings(story, "fern/story.md", [of], ["110"], {}, problems)
    assert [one.place.column for one in problems] == [34]


@pytest.mark.parametrize(
    "text",
    [
        "Windfall yellow (110), berries (170) and windfall yellows.",
        "An old boot, and a bery.",  # may be other words
        "In windfall mellow.",  # another colour of the card
        "Windfall, yelow and all.",  # no name: a comma stands in it
        "130 windfall mellows",
        "The windfall yellowest of all.",
        "Bread with butter, as yellow as butter (170).",  # another's number
    ],
)
def test_other_words_and_other_forms_of_a_name_are_let_be(text):
    assert told(text) == []


def test_a_former_name_is_told_on_each_line_that_has_it():
    """After a colour was renamed on its card, all of them are mended in one go."""
    problems = Problems()
    notes = "Work it in bee coat.\nThen rest.\nLast the line of bee coat, and bee coat again.\n"
    bees = card(humble_coat="168")
    complain_of_told_spellings(
        notes, "fern/stitching.md", [bees], ["168"], {"168": "bee coat"}, problems
    )
    assert [(one.place.line, one.code) for one in problems] == [
        (1, "colour-told-near"),
        (3, "colour-told-near"),
    ]
