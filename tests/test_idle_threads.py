"""Threads that an author's texts name beside those of the key."""

from dataclasses import replace

import pytest

from packetgen.diagnostics import Problems
from packetgen.load.idle_threads import complain_of_idle_threads
from packetgen.load.told_numbers import complain_of_told_numbers
from tests.test_told_numbers import card

FLOSS = card(haw="M170", blue="M153", moss="07", white="12", wet_plank="219")


def told(text: str, *used: str) -> list[str]:
    problems = Problems()
    complain_of_idle_threads(text, "fern/stitching.md", [FLOSS], used, {}, problems)
    return [f"{one.place.line}:{one.place.column} {one.wrong.split(' is ')[0]}" for one in problems]


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("Fill the wing.\nThen M170, in rows.\n", "2:6 'M170'"),
        ("The ground is 07 moss.", "1:15 '07'"),
        ("Moss (07) hides well.", "1:1 '07'"),
        ("Use 219  wet plank.", "1:5 '219'"),
        ("White (12) last.", "1:1 '12'"),
        ("Then 12 white, in rows.", "1:6 '12'"),
    ],
)
def test_a_thread_of_the_card_that_the_key_has_not_is_told_where_it_stands(text, where):
    assert told(text, "M153") == [where]


@pytest.mark.parametrize(
    "text",
    [
        "M153 first, and blue (M153) last.",  # the key has it
        "12 white stitches, then 7 moss ones",  # are counted
        "Print it on A4, and see row 219.",
        "M1700 and XM170 are no threads, nor is www.example.org/M170.",
        "Wet planks dry by 07:00.",
    ],
)
def test_other_figures_are_let_be(text):
    assert told(text, "M153") == []


def test_a_number_that_no_card_has_is_told_where_it_looks_like_theirs():
    """Three numbers or more have its letters and as many figures; of M170 and M153 nobody can say."""
    quill = card(rib="Q41", peat="Q50", dock="Q62")
    problems = Problems()
    complain_of_idle_threads(
        "Rib in Q41, grass (Q43), then Q4 on A43 and Q43.\n",
        "fern/stitching.md",
        [quill],
        ["Q41"],
        {},
        problems,
    )
    (only,) = problems
    assert (only.code, only.place.column) == ("thread-told-none", 20)
    assert only.wrong.endswith("and the card does not have it".replace("the card", quill.name))
    assert only.right == "did you mean Q41? Else take it out"
    assert told("Then M171, in rows.", "M153") == []


@pytest.mark.parametrize("text", ["Fill in M170 blue.", "Fill in blue (M170), then in wet plank."])
def test_a_number_that_is_told_as_another_s_is_not_told_a_second_time(text):
    problems = Problems()
    complain_of_told_numbers(text, "fern/stitching.md", [FLOSS], problems, ["M153"])
    complain_of_idle_threads(text, "fern/stitching.md", [FLOSS], ["M153"], {}, problems)
    codes = ["number-told-other", *["thread-idle"] * text.endswith("plank.")]
    assert [one.code for one in problems] == codes


def test_a_number_between_signs_is_a_thread_s():
    three = card(rib="411", peat="502", dock="620")
    problems = Problems()
    notes = "Begin with the bar in the middle, 412, and then the frame, 502. In 2027, 400 times, and 31, rows."
    complain_of_idle_threads(notes, "fern/stitching.md", [three], ["411"], {}, problems)
    assert [(one.code, one.place.column) for one in problems] == [
        ("thread-told-none", 35),
        ("thread-idle", 60),
    ]


@pytest.mark.parametrize(
    ("notes", "column"),
    [
        ("Work the slug in 502 upwards.", 18),
        ("The planks are long rows of 502: park the thread.", 29),
        ("Fill it with 502, then rest.", 14),
        ("Done in 502 stitches, or in 502 hours, in 502.5 mm.", 0),
        ("It is 502 long, in 1902.", 0),
    ],
)
def test_a_number_in_which_one_works_is_a_thread_s(notes, column):
    three = card(rib="411", peat="502", dock="620")
    problems = Problems()
    complain_of_idle_threads(notes, "fern/stitching.md", [three], ["411"], {}, problems)
    assert [(one.code, one.place.column) for one in problems] == [("thread-idle", column)] * bool(
        column
    )


@pytest.mark.parametrize(
    ("notes", "right"),
    [
        ("Lay the lawn on it in Q14.", "did you mean Q15, 'lawn'? Else take it out"),
        ("Lay the lawn, Q15, on it in Q14.", "did you mean Q15? Else take it out"),
        ("Lay the lawn and the rib in Q14.", "did you mean Q15? Else take it out"),
    ],
)
def test_of_a_number_that_no_card_has_the_colour_beside_it_tells_which_is_meant(notes, right):
    quill = card(rib="Q1", lawn="Q15", peat="Q16", dock="Q17")
    problems = Problems()
    used = ["Q1", "Q15"]
    complain_of_idle_threads(notes, "fern/stitching.md", [quill], used, {}, problems)
    assert [(one.code, one.right) for one in problems] == [("thread-told-none", right)]


@pytest.mark.parametrize(
    ("notes", "column"),
    [
        ("Fill in the sun: rib, peat, dock.", 29),
        ("Fill in the sun: dock, rib and peat.", 18),
        ("Fill in the sun: rib, dock, and peat.", 23),
        ("Fill in the sun, rib and peat, beside the dock.", 0),
        ("The rib, dock and all.", 0),
        ("First the rib, then fill in dock.", 29),
        ("First the rib, then sit in the dock.", 0),
        ("Work the rib first and the rim of dock last.", 35),
        ("Work the rib beside a leaf of dock.", 0),
        ("Work rib first, then peat, then dock and rib.", 33),
        ("Begin in the rib and work on to dock.", 0),
        ("Her comb is *dock*, her beak *rib*.", 14),
        ("Fill in dock.", 0),
        ("The eyes are in dock.", 17),
        ("Its eyes in dock with a bar below.", 13),
        ("The frogs sit in dock beside the tap.", 0),
    ],
)
def test_of_three_colours_in_a_row_one_that_the_key_has_not_is_told(notes, column):
    three = card(rib="411", peat="502", dock="620")
    problems = Problems()
    used = ["411", "502"]
    complain_of_idle_threads(notes, "fern/stitching.md", [three], used, {}, problems)
    told = [(one.code, one.place.column) for one in problems]
    assert told == [("thread-idle", column)] * bool(column)


def test_each_thread_is_told_once_with_the_lines_that_name_it_too():
    problems = Problems()
    notes = "M170, and M170.\nM170 haw\n07 moss\nM153\nM170"
    complain_of_idle_threads(notes, "fern/stitching.md", [FLOSS], ["M153"], {}, problems)
    first, second = problems
    assert (first.place.line, second.place.line) == (1, 3)
    assert first.wrong.endswith(
        "no line of the key has that thread, named here and on lines 2 and 5"
    )
    assert second.wrong.endswith("no line of the key has that thread")


def test_a_name_of_several_words_that_no_line_of_the_key_has_is_told_where_one_stitches_in_it():
    of = card(clay_pipe="G47", old_stave="G12", hail="G50", stave="G51")

    def said(notes: str) -> list[str]:
        problems = Problems()
        complain_of_idle_threads(notes, "fern/stitching.md", [of], ["G12"], {}, problems)
        return [f"{one.place.column} {one.wrong.partition(',')[0]}" for one in problems]

    assert said("Fill the staves in clay pipe, then in old stave.") == [
        "20 'clay pipe' is G47 of Bramble"
    ]
    assert said("The clay pipe is old. Walk in hail.") == []
    assert said("If you like, work it in clay pipe instead.") == []


@pytest.mark.parametrize(
    ("notes", "column"),
    [
        ("Work 40 stitches of clay pipe.", 21),
        ("Row 1 is 20 stitches of old stave and 4 of clay pipe.", 44),
        ("Row 1 is 20 stitches of old stave and 4 of hail.", 44),
        ("Five knots: two in hail for the eyes, three in old stave.", 20),
        ("Two strands of the clay pipe.", 20),
        ("First old stave, then the clay pipe.", 27),
        ("The old stave rows, clay pipe and all.", 21),
        ("Clay pipe, old stave and nothing else.", 1),
        ("Clay pipe, number 47, on top.", 1),
        ("If you like. Then use clay pipe no. 47.", 23),
        ("Stitch the jam red last.", 12),
        ("The pale jam red, then stitch the jam red.", 35),
        ("If you like, use clay pipe and jam red.", 0),
        ("The handle is clay pipe, with a shadow.", 15),
        ("A shadow of clay pipe.", 13),
        ("A ring of clay pipe.", 11),
        ("Then the hail spots.", 10),
        ("Then the hail shower.", 0),
        ("The pale jam red and the old stave.", 0),
        ("Smoke from the clay pipe, and hail on the old stave.", 0),
    ],
)
def test_a_name_of_several_words_is_told_as_a_thread_s_where_it_can_be_nothing_else(notes, column):
    of = card(clay_pipe="47", hail="50", old_stave="12", jam_red="51", pale_jam_red="52")
    problems = Problems()
    complain_of_idle_threads(notes, "fern/stitching.md", [of], ["12", "52"], {}, problems)
    assert [one.place.column for one in problems] == [column] * bool(column)


def test_a_story_may_speak_of_a_colour_that_a_thread_is_called_by():
    problems = Problems()
    of = card(jam_red="51", old_stave="12")
    complain_of_idle_threads("The jam red of autumn.", "fern/story.md", [of], ["12"], {}, problems)
    assert not list(problems)


def test_a_name_that_begins_with_that_of_a_colour_of_the_key_is_told():
    plain = card(lettuce="1", heart="2", peat="3")
    heart = replace(plain.colours["2"], name="lettuce heart")
    cards = [replace(plain, colours={**plain.colours, "2": heart})]
    problems = Problems()
    notes = "Begin with the heart, in lettuce heart, and work outwards to lettuce."
    complain_of_idle_threads(notes, "fern/stitching.md", cards, ["1", "3"], {}, problems)
    assert [(one.code, one.place.column) for one in problems] == [("thread-idle", 26)]


def test_a_card_s_name_is_not_taken_for_the_colour_that_it_begins_with():
    of, problems = replace(card(bramble="10", clay="15"), name="Bramble Cotton"), Problems()
    notes = "Two strands of Bramble Cotton make the crosses.\nThe rim in bramble, in rows.\n"
    instead = {"10": "15 clay"}
    complain_of_idle_threads(notes, "fern/stitching.md", [of], ["15"], instead, problems)
    assert [(one.place.line, one.place.column) for one in problems] == [(2, 12)]


@pytest.mark.parametrize(
    ("notes", "write"),
    [
        ("The rows are in hail.", "'12 old stave'"),
        ("The rows are in hail (50).", "'old stave (12)'"),
        ("The rows are in hail, number 50.", "'old stave, number 12'"),
        ("The rows are in hail (H50).", "'old stave (H12)' for 'hail (H50)'"),
        ("The rows are in H50 (hail).", "'H12 old stave'"),
        ("The rows are in H50 hail.", "'H12 old stave' for 'H50 hail'"),
    ],
)
def test_the_thread_that_the_key_has_instead_is_written_as_the_old_one_stood_there(notes, write):
    problems = Problems()
    h = "H" if "H" in notes else ""
    of = card(hail=f"{h}50", old_stave=f"{h}12")
    instead = {f"{h}50": f"{h}12 old stave"}
    complain_of_idle_threads(notes, "fern/stitching.md", [of], [f"{h}12"], instead, problems)
    (told,) = problems
    assert f"write {write} or take it out" in told.right
