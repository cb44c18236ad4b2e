"""Which colour gets which shape: different for each, unlike where colours are close, and stable."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.chart.assignment import Wish, assign, close_pairs, contacts, shapes_for
from packetgen.chart.likeness import blackness, likeness
from packetgen.chart.shapes_order import GIVING_ORDER
from packetgen.colour import mix
from packetgen.model import Pattern
from packetgen.shape_names import SHAPE_NAMES
from tests.many_colours import MARKS, many_coloured, wheel
from tests.stitching import pattern

OTHER_COLOURS = ("#202020", "#f0f0e8", "#b03030", "#3060a0", "#5a7a3a")

charts = st.dictionaries(
    st.text(alphabet="abcdefghijklmnopqrstuvwxyz", min_size=1, max_size=2),
    st.integers(min_value=0, max_value=20_000),
    min_size=1,
    max_size=60,
)


def wishes(stitches, pins=None):
    return [Wish(mark, count, (pins or {}).get(mark)) for mark, count in stitches.items()]


@st.composite
def pinned_charts(draw):
    stitches = draw(charts)
    marks = draw(st.lists(st.sampled_from(sorted(stitches)), unique=True, max_size=12))
    shapes = draw(
        st.lists(
            st.sampled_from(SHAPE_NAMES), unique=True, min_size=len(marks), max_size=len(marks)
        )
    )
    return stitches, dict(zip(marks, shapes))


@given(pinned_charts())
@settings(deadline=None, max_examples=50)
def test_every_colour_gets_a_shape_of_its_own_and_pins_win(chart):
    stitches, pins = chart
    shapes = assign(wishes(stitches, pins), frozenset())
    assert tuple(shapes) == tuple(stitches)
    assert len(set(shapes.values())) == len(stitches)
    assert set(shapes.values()) <= set(SHAPE_NAMES)
    assert pins.items() <= shapes.items()


@given(charts)
@settings(deadline=None, max_examples=50)
def test_a_colour_added_last_moves_no_other(stitches):
    """One that has no stitches yet, so that no other becomes less dense by it."""
    before = assign(wishes(stitches), frozenset())
    after = assign([*wishes(stitches), Wish("new")], frozenset())
    assert after.items() >= before.items()


@given(charts, st.integers(0, 59), st.data())
@settings(deadline=None, max_examples=50)
def test_an_edited_colour_moves_none_above_it(stitches, place, data):
    """Whatever the edit makes it close to: the lines before it keep their shapes."""
    marks = list(stitches)
    edited = marks[place % len(marks)]
    close = frozenset(
        frozenset((edited, other))
        for other in data.draw(st.sets(st.sampled_from(marks), max_size=5))
        if other != edited
    )
    before, after = assign(wishes(stitches), frozenset()), assign(wishes(stitches), close)
    for mark in marks[: marks.index(edited)]:
        partners = {other for pair in close if mark in pair for other in pair} - {mark}
        if all(marks.index(other) > marks.index(mark) for other in partners):
            assert after[mark] == before[mark]


def test_a_few_stitches_more_or_less_move_no_shape():
    stitches = {"ground": 6000, "border": 600, "leaf": 500, "eye": 3}
    nudged = {"ground": 5990, "border": 604, "leaf": 620, "eye": 5}
    assert assign(wishes(stitches), frozenset()) == assign(wishes(nudged), frozenset())


@given(charts)
@settings(deadline=None, max_examples=50)
def test_dense_colours_get_light_shapes(stitches):
    """One stitch in twenty or more is dense: its shape is of the lightest third, whatever the others are."""
    lightest = sorted(SHAPE_NAMES, key=blackness)[: len(SHAPE_NAMES) // 3]
    total = sum(stitches.values())
    shapes = assign(wishes(stitches), frozenset())
    for mark, count in stitches.items():
        if total and count >= total / 20:
            assert shapes[mark] in lightest


def test_all_shapes_can_be_given_out_and_not_one_more():
    marks = [f"m{number}" for number in range(len(SHAPE_NAMES))]
    shapes = assign([Wish(mark, 1) for mark in marks], frozenset())
    assert sorted(shapes.values()) == sorted(SHAPE_NAMES)
    with pytest.raises(ValueError, match=f"only {len(SHAPE_NAMES)} shapes"):
        assign([Wish(mark, 1) for mark in (*marks, "more")], frozenset())


def test_wrong_pins_are_named():
    with pytest.raises(ValueError, match="'leef'"):
        assign([Wish("a", 1, "leef")], frozenset())
    with pytest.raises(ValueError, match="'disc'.*'a' and 'b'"):
        assign([Wish("a", 1, "disc"), Wish("b", 1, "disc")], frozenset())


def test_contacts_are_counted_side_by_side():
    """By hand: m and t meet once in the first row, twice between the rows; bare cloth touches nobody."""
    met = contacts(pattern("mt.", "tm."))
    assert met[frozenset("mt")] == 4


def stripes(hexes) -> Pattern:
    """Two columns of every colour, each beside its next neighbours."""
    row = "".join(mark * 2 for mark in MARKS[: len(hexes)])
    return many_coloured((row,) * 6, hexes)


def test_colours_that_are_close_have_shapes_that_are_not():
    """The worst close pair of sixty colours is less alike than if shapes were handed out in order."""
    of = stripes(wheel(60))
    shapes = shapes_for(of, {line.mark: 12 for line in of.key})
    in_order = {line.mark: name for line, name in zip(of.key, SHAPE_NAMES)}
    close = [tuple(pair) for pair in close_pairs(of)]

    def worst(given):
        return max(likeness(given[one], given[other]) for one, other in close)

    assert len(close) > 60
    assert worst(shapes) < 0.5 and worst(in_order) > 0.8


def test_another_colour_in_a_line_moves_few_others():
    """Each of twenty colours changed into each of six others, far and near: 120 edits of one line.

    No line above moves; in three of five edits no other at all; and never more than four of nineteen.
    """
    hexes = wheel(20)
    counts = {mark: (400, 150, 40, 12, 3)[n % 5] for n, mark in enumerate(MARKS[:20])}
    before = shapes_for(stripes(hexes), counts)
    moved = []
    for place, own in enumerate(hexes):
        for other in (*OTHER_COLOURS, mix(own, "#ffffff", 0.1)):
            edited = stripes((*hexes[:place], other, *hexes[place + 1 :]))
            after = shapes_for(edited, counts)
            assert all(after[mark] == before[mark] for mark in MARKS[:place])
            below = MARKS[place + 1 : 20]
            moved.append(sum(after[mark] != before[mark] for mark in below))
    assert len(moved) == 120
    assert moved.count(0) >= 72 and max(moved) <= 4


def test_no_two_shapes_of_a_small_key_are_much_alike():
    shapes = assign([Wish(f"m{number}", 10) for number in range(20)], frozenset())
    assert max(likeness(a, b) for a, b in combinations(shapes.values(), 2)) < 0.63


def test_figures_that_may_be_taken_for_numbers_are_given_last():
    """A sign that reads as a number stands ill beside a chart's own: our own choice."""
    figures = {name for name in GIVING_ORDER if name.startswith("figure-")}
    marks = [chr(0x4E00 + number) for number in range(len(GIVING_ORDER))]
    counts = (400, 40, 3)
    wishes = [Wish(mark, counts[place % 3]) for place, mark in enumerate(marks)]
    some = assign(wishes[: -len(figures)], frozenset())
    assert len(figures) == 5 and figures.isdisjoint(some.values())
    assert figures < set(assign(wishes, frozenset()).values())
