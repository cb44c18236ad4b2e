"""Threads for the colours of a design, as few as were asked for, and what that costs is said truly."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.bring.apart import apart, encoded, lab_of, linear, rgb_of, table
from packetgen.bring.brought import bring
from packetgen.bring.choosing import TooFewAsked
from packetgen.bring.drawing import Drawing, Wish
from packetgen.bring.key_text import KnownLine, key_line
from packetgen.bring.marks import marks_for
from packetgen.bring.photograph import drawing_of, reduced
from packetgen.bring.speckles import alone, tidied
from packetgen.colour import difference, lab
from packetgen.model import Colour, Stitch
from packetgen.reckon.isolated import isolated_cells
from tests.outside import rows
from tests.stitching import CLAY, MOSS, SOOT, pattern

CARD = (MOSS, CLAY, SOOT)
HEXES = st.from_regex(r"#[0-9a-f]{6}", fullmatch=True)


def drawn(*lines: str, **colours: str) -> Drawing:
    """A drawing of these rows: 'm' is moss, 't' clay, 's' soot, or as `colours` say."""
    hexes = {"m": MOSS.hex, "t": CLAY.hex, "s": SOOT.hex, **colours}
    used = sorted(set("".join(lines)) - {"."})
    numbers = {".": 0, **{sign: n for n, sign in enumerate(used, 1)}}
    cells = np.array([[numbers[sign] for sign in line] for line in lines], np.int32)
    return Drawing(cells, rgb_of(tuple(hexes[sign] for sign in used)))


# --- colours ---


def test_differences_are_those_that_were_published():
    """The 34 pairs of Sharma, Wu and Dalal (2005), to the four places that they print."""
    pairs = rows("ciede2000_sharma2005")
    one, other = (
        np.array([[float(pair[f"{part}{n}"]) for part in "Lab"] for pair in pairs]) for n in (1, 2)
    )
    published = [float(pair["dE00"]) for pair in pairs]
    assert len(pairs) == 34
    assert apart(one, other) == pytest.approx(published, abs=5.1e-5)
    assert apart(other, one) == pytest.approx(published, abs=5.1e-5)


@given(st.lists(st.tuples(HEXES, HEXES), min_size=1, max_size=20))
def test_many_colours_at_once_differ_as_two_do(pairs):
    one, other = (lab_of(rgb_of(tuple(side))) for side in zip(*pairs))
    assert one == pytest.approx(np.array([lab(hex_one) for hex_one, _ in pairs]), abs=1e-9)
    expected = [difference(lab(a), lab(b)) for a, b in pairs]
    assert apart(one, other) == pytest.approx(expected, abs=1e-9)
    assert np.diag(table(one, other)) == pytest.approx(expected, abs=1e-9)


def test_light_goes_there_and_back():
    assert (encoded(linear(np.arange(256))) == np.arange(256)).all()


# --- threads ---


def test_each_colour_gets_its_nearest_thread():
    found = bring(drawn("aab.", "aabb", a="#688b38", b="#5c6164"), CARD)
    assert [(one.colour, one.stitches) for one in found.entries] == [(MOSS, 4), (SOOT, 3)]
    assert found.rows == ("mms.", "mmss")
    assert found.mean < found.largest < 1


def test_two_colours_that_fall_on_one_thread_are_told():
    found = bring(drawn("ab", a="#678a37", b="#688b38"), CARD)
    (together,) = found.together
    assert together.colour == MOSS
    assert dict(together.of) == {"#678a37": 1, "#688b38": 1}


def test_where_fewer_are_asked_for_that_thread_goes_whose_stitches_lose_least():
    """One stitch of clay costs less than six of soot or nine of moss."""
    found = bring(drawn("mmmmmmmmm", "sssssst.."), CARD, most=2)
    assert {one.colour for one in found.entries} == {MOSS, SOOT}
    (merge,) = found.merges
    assert (merge.gone, merge.stitches) == (CLAY, 1)
    assert merge.difference == pytest.approx(
        difference(lab(CLAY.hex), lab(merge.into.hex)), abs=1e-9
    )
    assert found.largest == pytest.approx(merge.difference)
    assert found.mean == pytest.approx(merge.difference / 16)


@settings(max_examples=40, deadline=None)
@given(st.lists(HEXES, min_size=2, max_size=12, unique=True), st.integers(1, 6), st.data())
def test_the_loss_is_what_the_stitches_say(hexes, most, data):
    """Reckoned again, stitch by stitch, from the drawing and the chart alone."""
    card = tuple(Colour(f"N{n}", f"colour {n}", one) for n, one in enumerate(hexes))
    own = data.draw(st.lists(HEXES, min_size=1, max_size=8, unique=True))
    sign = st.sampled_from([".", *"abcdefgh"[: len(own)]])
    lines = data.draw(
        st.lists(st.lists(sign, min_size=5, max_size=5).map("".join), min_size=2, max_size=6)
    )
    if not set("".join(lines)) - {"."}:
        return
    drawing = drawn(*lines, **dict(zip("abcdefgh", own)))
    found = bring(drawing, card, most=most)
    assert len(found.entries) <= most
    thread = {one.mark: one.colour for one in found.entries}
    losses = [
        difference(lab(dict(zip("abcdefgh", own))[was]), lab(thread[mark].hex))
        for before, after in zip(lines, found.rows)
        for was, mark in zip(before, after)
        if was != "."
    ]
    assert found.mean == pytest.approx(sum(losses) / len(losses), abs=1e-9)
    assert found.largest == pytest.approx(max(losses), abs=1e-9)
    assert [row.replace(".", "") == "" for row in found.rows] == [
        set(row) == {"."} for row in lines
    ]
    assert sum(one.stitches for one in found.entries) == len(losses)


def test_a_colour_of_few_stitches_is_told_with_the_number_of_colours_that_leaves_it_out():
    """One stitch of clay among 300; of soot there are too many to be a slip."""
    field = ["m" * 20] * 10 + ["s" * 20] * 4 + ["t" + "s" * 19]
    (small,) = bring(drawn(*field), CARD).small
    assert (small.colour, small.stitches, small.colours) == (CLAY, 1, 2)
    assert bring(drawn(*field), CARD, most=2).small == ()


@settings(max_examples=40, deadline=None)
@given(st.lists(HEXES, min_size=3, max_size=12, unique=True), st.data())
def test_what_is_told_of_leaving_out_a_colour_comes_true(hexes, data):
    """With so many colours it is gone, and nothing besides but what was told before it."""
    card = tuple(Colour(f"N{n}", f"colour {n}", one) for n, one in enumerate(hexes))
    own = data.draw(st.lists(st.sampled_from(hexes), min_size=2, max_size=8, unique=True))
    few = data.draw(st.lists(st.integers(1, 9), min_size=len(own) - 1, max_size=len(own) - 1))
    signs = "abcdefgh"[: len(own)]
    line = signs[0] * 1500 + "".join(sign * number for sign, number in zip(signs[1:], few))
    drawing = drawn(line, **dict(zip(signs, own)))
    found = bring(drawing, card)
    had = {one.colour for one in found.entries}
    for number, small in enumerate(found.small, 1):
        left = {one.colour for one in bring(drawing, card, most=small.colours).entries}
        assert had - left == {one.colour for one in found.small[:number]}


def test_a_colour_that_the_file_names_cannot_be_left_out_and_is_not_offered():
    drawing = drawn("m" * 300 + "t")
    named = {1: Wish(number="M1", coloured=False), 2: Wish(number="T1", coloured=False)}
    assert bring(drawing, CARD).small and not bring(replace(drawing, wishes=named), CARD).small


def test_a_thread_that_the_file_names_is_not_taken_away():
    drawing = Drawing(
        np.array([[1, 2, 2, 2]]),
        rgb_of((CLAY.hex, MOSS.hex)),
        {1: Wish(number="T1"), 2: Wish(number="M1")},
    )
    with pytest.raises(TooFewAsked) as refused:
        bring(drawing, CARD, most=1)
    assert refused.value.named == 2


def test_a_line_of_the_key_keeps_its_mark_and_its_way_of_working():
    """A blend and a half stitch have colours that no thread of the card has in full crosses."""
    half = KnownLine("h", CLAY, "T1", Stitch.HALF)
    blend = KnownLine("b", Colour("M1+C1", "moss and soot", "#62764e"), "", Stitch.FULL)
    moss = KnownLine("Z", MOSS, "M1", Stitch.FULL)
    found = bring(drawn("xtm", x="#62764e"), CARD, known=(half, blend, moss))
    assert found.rows == ("bhZ",)
    assert all(one.kept for one in found.entries) and found.largest == 0


# --- stitches that stand alone ---


@settings(max_examples=60, deadline=None)
@given(st.lists(st.text("mts.", min_size=7, max_size=7), min_size=1, max_size=7))
def test_a_stitch_stands_alone_as_proof_has_it(lines):
    found = alone(np.array([[".mts".index(mark) for mark in line] for line in lines]))
    cells = {(x + 1, y + 1) for y, x in zip(*np.nonzero(found))}
    assert cells == set(isolated_cells(pattern(*lines)))


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.text("mts.", min_size=8, max_size=8), min_size=2, max_size=8),
    st.floats(0, 60),
)
def test_tidying_keeps_within_the_loss_that_was_allowed(lines, most):
    """Bare cloth stays bare; only stitches that stood alone change, each by no more than was said; and
    of those that are left alone none could still go."""
    cells = np.array([[".mts".index(mark) for mark in line] for line in lines])
    labs = lab_of(rgb_of((MOSS.hex, CLAY.hex, SOOT.hex)))
    gaps = np.pad(table(labs, labs), ((1, 0), (1, 0)))
    tidy, changed = tidied(cells, gaps, most)
    moved = tidy != cells
    assert ((tidy == 0) == (cells == 0)).all()
    assert alone(cells)[moved].all() and not (alone(tidy) & ~alone(cells)).any()
    assert all(gaps[a, b] <= most for a, b in changed)
    assert moved.sum() == changed.total()
    assert tidied(tidy, gaps, most)[1].total() == 0


def test_one_red_stitch_in_a_field_of_moss_becomes_moss_only_where_that_may_be():
    field = drawn("mmm", "mtm", "mmm")
    far = difference(lab(CLAY.hex), lab(MOSS.hex))
    kept, gone = bring(field, CARD, tidy=far - 0.1), bring(field, CARD, tidy=far + 0.1)
    assert kept.rows[1][1] != kept.rows[0][0] and kept.alone == 1
    assert gone.rows == ("mmm",) * 3 and gone.alone == 0
    (change,) = gone.tidied
    assert (change.gone, change.into, change.stitches) == (CLAY, MOSS, 1)
    assert gone.largest == pytest.approx(far)


# --- photographs ---


def test_half_of_black_and_white_is_half_the_light():
    """Mid-grey of sRGB is far darker than that: 188 has half the light of white (IEC 61966-2-1)."""
    board = np.full((40, 40, 4), 255, np.uint8)
    board[::2, ::2, :3] = board[1::2, 1::2, :3] = 0
    assert {tuple(pixel) for pixel in reduced(board, 5).reshape(-1, 4)} == {(188, 188, 188, 255)}


def test_a_photograph_keeps_its_proportions_and_its_clear_parts():
    picture = np.zeros((300, 200, 4), np.uint8)
    picture[:, 100:] = (200, 30, 30, 255)
    small = reduced(picture, 20)
    assert small.shape == (30, 20, 4)
    drawing = drawing_of(small, ())
    assert (drawing.cells[:, :10] == 0).all() and (drawing.cells[:, 10:] == 1).all()
    assert drawing.colours.tolist() == [[200, 30, 30]]


@pytest.mark.parametrize("name", ["china.jpg", "flower.jpg"])
def test_a_photograph_loses_less_with_more_threads(name, demo):
    """scikit-learn's two photographs. The same photograph gives the same chart."""
    from sklearn.datasets import load_sample_image

    rgb = load_sample_image(name)
    rgba = np.dstack((rgb, np.full(rgb.shape[:2], 255, np.uint8)))
    card = tuple(demo.thread_cards["larkmoss"].colours.values())
    drawing = drawing_of(reduced(rgba, 60), ())
    found = {most: bring(drawing, card, most=most) for most in (3, 8, 20)}
    assert all(most - 2 <= len(one.entries) <= most for most, one in found.items())
    assert found[3].mean > found[8].mean > found[20].mean
    assert found[20].stitches == 60 * len(drawing.cells)
    assert bring(drawing, card, most=8).rows == found[8].rows
    tidy = bring(drawing, card, most=20, tidy=20.0)
    assert all(one.difference <= 20 for one in tidy.tidied)
    assert tidy.alone <= found[20].alone - found[20].could_tidy[1] < found[20].alone


# --- marks ---


def test_a_mark_is_a_letter_of_the_threads_name():
    assert marks_for(("chalk white", "winter sun", "robin", "hip red", "raffia")) == (
        "w",
        "s",
        "r",
        "h",
        "a",
    )
    assert marks_for(("robin",), taken="rb") == ("i",)


def test_a_mark_does_not_depend_on_what_comes_after_it():
    names = ("chalk white", "frost", "old flowerpot", "pea pod")
    assert marks_for(names)[:2] == marks_for(names[:2])


def test_there_are_marks_for_the_longest_key():
    marks = marks_for(("moss",) * 208)
    assert len(set(marks)) == 208
    assert not set(marks) & set(".#/\\\"' \t") and all(
        len(one) == 1 and one.isprintable() for one in marks
    )


@pytest.mark.parametrize(
    ("mark", "line"),
    [
        ("m", "  m: {floss: M1}   # moss"),
        ("n", '  "n": {floss: M1}   # moss (n in quotes: alone it can mean no)'),
        ("Y", '  "Y": {floss: M1}   # moss (Y in quotes: alone it can mean yes)'),
        ("é", '  "é": {floss: M1}   # moss'),
    ],
)
def test_a_letter_between_quotes_says_why(mark, line):
    assert key_line(mark, {"floss": "M1"}, Stitch.FULL, "moss") == line
