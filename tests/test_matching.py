"""Colours of one thread card on another: the nearest, all distinct, and a whole set filled by the tool."""

from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.colour import closeness
from packetgen.diagnostics import Problems
from packetgen.load import load_content
from packetgen.model import Colour, KeyLine, MatchedSet, Stitch, ThreadCard, ThreadSet
from packetgen.pipeline import proof
from packetgen.reckon.conversions import complain_of_conversions
from packetgen.reckon.matching import (
    TooFewColours,
    collisions,
    distinct_matches,
    matches_of,
    nearest_matches,
    with_matches,
)
from tests.content_builder import PATTERN, SERIES, build
from tests.stitching import HERE, pattern

hexes = st.integers(0, 0xFFFFFF).map(lambda value: f"#{value:06x}")


def colours(of: list[str], letter: str = "N") -> tuple[Colour, ...]:
    return tuple(Colour(f"{letter}{n}", f"no {n}", one) for n, one in enumerate(of, 1))


def card(name: str, of: tuple[Colour, ...], **more) -> ThreadCard:
    by_number = {one.number: one for one in of}
    facts = dict(material="cotton", strands=6, tex=25, sold_as="skein", length_m=8.0)
    return ThreadCard(name, name.title(), hand_dyed=False, colours=by_number, **(facts | more))


def set_of(of: ThreadCard, name: str | None = None) -> ThreadSet:
    return ThreadSet(name or of.id, of, min(2, of.strands), 1, 1)


# --- two lists of colours -------------------------------------------------------------------------

GREYS = colours(["#000000", "#404040", "#808080", "#c0c0c0", "#ffffff"], "G")


def test_the_nearest_of_a_dark_grey_is_the_darker_of_two():
    (found,) = nearest_matches(colours(["#484848"]), GREYS)
    assert found.target.number == "G2"
    assert found.words == closeness("#484848", "#404040")


def test_two_greys_may_fall_on_one():
    found = nearest_matches(colours(["#7f7f7f", "#818181", "#000000"]), GREYS)
    ((one, other),) = collisions(found)
    assert (one.source.number, other.source.number) == ("N1", "N2")
    assert one.target == other.target == GREYS[2]


def test_kept_distinct_the_two_go_to_the_least_sum_and_not_to_the_first_come():
    """Worked by hand on greys: taken in turn, 70 gets 80 and 7c is left with c0; crossed over, 70 gets
    40 and 7c gets 80, which is nearer in all."""
    wanted = colours(["#707070", "#7c7c7c"])
    free = colours(["#808080", "#404040", "#f0f0f0"], "F")
    assert [one.target.number for one in distinct_matches(wanted, free)] == ["F2", "F1"]


@settings(max_examples=60, deadline=None)
@given(st.lists(hexes, max_size=4), st.lists(hexes, min_size=4, max_size=5))
def test_the_distinct_pairs_are_the_best_of_all_there_are(wanted, free):
    """Against every arrangement, tried one by one."""
    wanted, free = colours(wanted, "W"), colours(free, "F")
    apart = {
        (one.source, one.target): one.difference
        for f in free
        for one in nearest_matches(wanted, [f])
    }
    best = min(
        sum(apart[pair] for pair in zip(wanted, order)) for order in permutations(free, len(wanted))
    )
    found = distinct_matches(wanted, free)
    assert sum(one.difference for one in found) == pytest.approx(best, abs=1e-6)


@settings(max_examples=60, deadline=None)
@given(st.lists(hexes, max_size=12), st.lists(hexes, min_size=12, max_size=20))
def test_no_colour_is_given_twice_and_greed_is_never_better(wanted, free):
    """Greed: each colour in turn takes the nearest that is left."""
    wanted, free = colours(wanted, "W"), colours(free, "F")
    found = distinct_matches(wanted, free)
    assert [one.source for one in found] == list(wanted)
    assert len({one.target.number for one in found}) == len(wanted)
    left, greedy = list(free), 0.0
    for one in wanted:
        (taken,) = nearest_matches([one], left)
        left.remove(taken.target)
        greedy += taken.difference
    assert sum(one.difference for one in found) <= greedy + 1e-6
    nearest = sum(one.difference for one in nearest_matches(wanted, free))
    assert nearest <= sum(one.difference for one in found) + 1e-6


@settings(max_examples=60, deadline=None)
@given(st.lists(hexes, min_size=1, max_size=20))
def test_a_card_matched_to_itself_stays_as_it_is(of):
    """Also where two of its colours look the same on a screen."""
    own = colours(of)
    for found in (nearest_matches(own, own), distinct_matches(own, own)):
        assert all(one.source == one.target and one.difference == 0 for one in found)


@given(st.integers(1, 6), st.integers(1, 6))
def test_more_colours_than_the_other_card_has_cannot_be_kept_distinct(few, more):
    with pytest.raises(TooFewColours) as told:
        distinct_matches(GREYS[:1] * (few + more), GREYS[:1] * few)
    assert (told.value.wanted, told.value.free) == (few + more, few)


# --- a thread set that the tool fills -------------------------------------------------------------

MOSS = card("moss", colours(["#a04030", "#6b503a", "#4f7942", "#e0c060"], "M"))
SPOOL = card(
    "spool",
    colours(["#9c4a2f", "#69513c", "#507840", "#ddbb55", "#2244aa"], "S"),
    strands=1,
    sold_as="spool",
)
BRAID = card("gleam", colours(["#d0b060"], "B"), strands=1, braid=True)
FROM, INTO = set_of(MOSS), set_of(SPOOL)


def line(mark: str, source: str, own: str = "", stitch: Stitch = Stitch.FULL, **more) -> KeyLine:
    """Numbers parted by a blank are a blend; without `own` the line is left to the tool."""
    return KeyLine(
        mark,
        stitch,
        {
            "moss": tuple(MOSS.colours[n] for n in source.split()),
            "spool": tuple(SPOOL.colours[n] for n in own.split()),
        },
        more.pop("strands", {}),
        HERE,
        matched=() if own else ("spool",),
        **more,
    )


def with_key(*lines: KeyLine, into: ThreadSet = INTO):
    rows = ["".join(one.mark for one in lines)]
    return pattern(*rows, sets=(FROM, into), key=lines, matched=(MatchedSet(into, FROM, HERE),))


def filled(*lines: KeyLine, into: ThreadSet = INTO) -> dict[str, str]:
    """Mark → numbers in the set that was matched."""
    problems = Problems()
    done = with_matches(with_key(*lines, into=into), problems)
    assert [str(problem) for problem in problems] == []
    return {one.mark: " ".join(c.number for c in one.threads[into.id]) for one in done.key}


def test_a_line_that_gives_no_colour_gets_the_nearest():
    assert filled(line("a", "M1"), line("b", "M2"), line("c", "M3")) == {
        "a": "S1",
        "b": "S2",
        "c": "S3",
    }


def test_the_authors_own_choice_stays_and_is_given_to_nobody_else():
    """M1 would be nearest to S1, which the author has given to M3."""
    found = filled(line("a", "M1"), line("b", "M3", "S1"))
    assert found["b"] == "S1"
    assert found["a"] not in ("", "S1")


def test_the_same_thread_in_another_stitch_gets_the_same_colour():
    found = filled(line("a", "M1"), line("b", "M1", stitch=Stitch.HALF), line("c", "M1 M4"))
    assert found == {"a": "S1", "b": "S1", "c": "S1 S4"}


def test_what_the_author_chose_for_a_thread_holds_for_its_other_lines():
    found = filled(line("a", "M1", "S5"), line("b", "M1", stitch=Stitch.PETITE), line("c", "M4 M1"))
    assert found == {"a": "S5", "b": "S5", "c": "S4 S5"}


def test_a_blend_of_the_author_guides_the_other_way_round_too():
    """S2 with S1 stands for M1 with M2, each for the one that it is nearer to."""
    assert filled(line("a", "M1 M2", "S2 S1"), line("b", "M1"))["b"] == "S1"


def test_a_line_in_one_thread_guides_before_a_blend():
    """A blend is chosen for its mixture, and the author may have bent its threads for that."""
    lines = (
        line("a", "M1 M2", "S3 S4"),
        line("b", "M1", "S5"),
        line("c", "M1", stitch=Stitch.HALF),
    )
    assert filled(*lines)["c"] == "S5"


def test_two_threads_that_the_author_made_one_are_one_in_a_blend():
    found = filled(
        line("a", "M1", "S5"),
        line("b", "M2", "S5", stitch=Stitch.HALF),
        line("c", "M1 M2", stitch=Stitch.PETITE),
    )
    assert found["c"] == "S5"


def test_a_thread_of_another_card_stays_what_it_is():
    sparkle = KeyLine(
        "g",
        Stitch.FULL,
        {"moss": (BRAID.colours["B1"],), "spool": ()},
        {},
        HERE,
        cards={"moss": (BRAID,)},
        matched=("spool",),
    )
    done = with_matches(with_key(line("a", "M4"), sparkle), Problems())
    assert done.key[1].threads["spool"] == (BRAID.colours["B1"],)
    assert done.key[1].cards_in(INTO) == (BRAID,)
    assert done.key[0].cards_in(INTO) == (SPOOL,)


def test_a_set_of_the_same_card_is_matched_with_the_same_numbers():
    into = set_of(MOSS, "spool")
    found = filled(line("a", "M4"), line("b", "M2"), line("c", "M1 M3"), into=into)
    assert found == {"a": "M4", "b": "M2", "c": "M1 M3"}


def test_too_few_colours_are_told_with_their_numbers_and_nothing_is_left_empty():
    small = set_of(card("spool", tuple(SPOOL.colours.values())[:2], strands=1))
    problems = Problems()
    lines = (line("a", "M1", "S1"), line("b", "M2"), line("c", "M3"), line("d", "M4"))
    done = with_matches(with_key(*lines, into=small), problems)
    (told,) = (problem for problem in problems if problem.code == "match-too-few")
    assert str(told) == (
        "tests:1:1: 3 colours of Moss are to be matched, and Spool has only 1 free; give some of "
        "them a number in the key yourself, or take 'spool' out of thread_sets"
    )
    assert all(one.threads["spool"] for one in done.key)


def test_lines_that_only_the_strands_of_the_source_kept_apart_are_told():
    """In the matched set nobody could tell them apart; the author hears what she would hear of her own."""
    problems = Problems()
    with_matches(with_key(line("a", "M1"), line("b", "M1", strands={"moss": 1})), problems)
    assert [str(problem) for problem in problems] == [
        "tests:1:1: 'b' and 'a' are stitched alike in 'spool', both with 'S1'; change the one that is a "
        "slip; or use one mark for both, in the chart too"
    ]


@st.composite
def half_chosen_keys(draw):
    """Lines in single threads and blends, each thread of a card of eight; some with colours of their own."""
    source = card("moss", colours(draw(st.lists(hexes, min_size=8, max_size=8)), "M"))
    into = card("spool", colours(draw(st.lists(hexes, min_size=24, max_size=24)), "S"), strands=1)
    lines = []
    for mark in "abcdefgh"[: draw(st.integers(1, 8))]:
        ours = draw(
            st.lists(st.sampled_from(sorted(source.colours)), min_size=1, max_size=2, unique=True)
        )
        many = st.lists(st.sampled_from(sorted(into.colours)), min_size=1, max_size=2, unique=True)
        theirs = draw(st.just([]) | many)
        lines.append(
            KeyLine(
                mark,
                draw(st.sampled_from((Stitch.FULL, Stitch.HALF))),
                {
                    "moss": tuple(source.colours[n] for n in ours),
                    "spool": tuple(into.colours[n] for n in theirs),
                },
                {},
                HERE,
                matched=() if theirs else ("spool",),
            )
        )
    sets = (set_of(source), set_of(into))
    request = MatchedSet(sets[1], sets[0], HERE)
    rows = ["".join(one.mark for one in lines)]
    return pattern(*rows, sets=sets, key=tuple(lines), matched=(request,)), request


@settings(max_examples=100, deadline=None)
@given(half_chosen_keys())
def test_own_choices_always_win_and_what_the_tool_chooses_is_distinct(made):
    before, request = made
    done = with_matches(before, Problems())
    own = {
        c.number for one in before.key if not one.matched for c in one.threads["spool"]
    }  # what the author gave anywhere
    for old, new in zip(before.key, done.key, strict=True):
        assert new.threads["spool"]
        assert old.matched or new == old
    found = matches_of(done, request)
    targets = [one.target.number for one in found]
    assert len(set(targets)) == len(targets)
    assert not own & set(targets)
    assert with_matches(done, Problems()) == done


# --- in an author's files -------------------------------------------------------------------------

LEFT_TO_THE_TOOL = {
    SERIES: ("card: spool, strands: 1}", "card: spool, strands: 1}"),
    PATTERN: (
        'thread_sets: [moss, spool]\nkey:\n  r: {moss: E2, spool: "10"}\n'
        '  k: {moss: K4, spool: "12"}\n  b: {moss: [E2, "07"], spool: ["10", "14"]}\n',
        "thread_sets: [moss, spool]\nmatched: {spool: moss}\nkey:\n  r: {moss: E2}\n"
        '  k: {moss: K4, spool: "12"}\n  b: {moss: [E2, "07"]}\n',
    ),
}


def test_an_author_leaves_a_whole_conversion_to_the_tool(tmp_path):
    """One line in the pattern's file; the line of `k` keeps the author's own colour."""
    content, problems = load_content(build(tmp_path, LEFT_TO_THE_TOOL))
    assert [str(problem) for problem in problems] == []
    (fern,) = content.series[0].patterns
    assert [one.threads["spool"] for one in fern.key if one.mark != "k"] == [(), ()]
    done = with_matches(fern, problems)
    numbers = {one.mark: [c.number for c in one.threads["spool"]] for one in done.key}
    assert numbers == {"r": ["10"], "k": ["12"], "b": ["10", "14"]}
    found = matches_of(done, done.matched[0])
    assert [(one.source.number, one.target.number) for one in found] == [("E2", "10"), ("07", "14")]


def test_every_card_of_the_folder_can_be_looked_up(tmp_path):
    content, _ = load_content(build(tmp_path))
    assert set(content.thread_cards) == {"moss", "spool"}


# --- advice on conversions ------------------------------------------------------------------------


def advice(*lines: KeyLine) -> list[str]:
    problems = Problems()
    complain_of_conversions(pattern("a", sets=(FROM, INTO), key=lines), problems)
    return [str(problem).removeprefix("tests:1:1: advice: ") for problem in problems]


def test_two_key_colours_that_fall_on_one_are_told_with_a_way_out():
    said = advice(line("a", "M1", "S1"), line("b", "M2", "S1", stitch=Stitch.HALF))
    apart = nearest_matches([MOSS.colours["M2"]], [SPOOL.colours["S2"]])[0]
    assert said == [
        "in 'spool' both 'M1' of the mark 'a' and 'M2' of 'b' become 'S1'; the nearest free colour for "
        f"the latter is 'S2' no 2 ({apart.words}, {apart.difference:.1f})"
    ]


def test_the_same_thread_in_two_stitches_is_no_collision():
    assert advice(line("a", "M1", "S1"), line("b", "M1", "S1", stitch=Stitch.HALF)) == []


def test_two_that_fall_together_on_a_full_card_get_no_false_hope():
    numbers = zip("bcdef", ("M2", "M3", "M4", "M2 M3", "M1"), ("S2", "S3", "S4", "S5", "S1"))
    rest = [line(mark, ours, theirs, stitch=Stitch.HALF) for mark, ours, theirs in numbers]
    said = advice(line("a", "M4", "S1"), *rest)
    assert [one for one in said if one.endswith("Spool has no colour that is still free")]


def test_a_collision_stands_in_the_proof_at_the_later_line(tmp_path):
    """Alike in every way it is an error already; in another stitch it is advice."""
    half = {PATTERN: ('k: {moss: K4, spool: "12"}', 'k: {moss: K4, spool: "10", stitch: half}')}
    checked = proof(build(tmp_path, half))
    (told,) = (str(one) for one in checked.problems if one.code == "conversion-collides")
    assert checked.sound
    assert told.startswith(
        f"{PATTERN}:10:3: advice: in 'spool' both 'E2' of the mark 'r' and 'K4' of 'k' become '10'; "
        "the nearest free colour for the latter is '12' earth ("
    )


def test_a_far_colour_is_told_only_where_a_nearer_one_is_free():
    """S5 is a blue; once all others stand for something else, it is the best there is."""
    (said,) = advice(line("a", "M1", "S5"))
    assert said.startswith("with 'S5' in 'spool' the mark 'a' is far from the model's colour (")
    assert "; 'S1' no 1 is nearer (" in said
    taken = [
        line("b", "M2", "S2"),
        line("c", "M3", "S3"),
        line("d", "M4", "S4"),
        line("e", "M2 M3", "S1"),
    ]
    assert not any("'a'" in one for one in advice(line("a", "M1", "S5"), *taken))


def test_a_number_of_the_model_that_is_almost_another_may_be_the_slip():
    """M2 is green where the conversion is red, as M1 is: one sign was typed wrong."""
    reds = advice_on(["#c02020", "#20c020"], ["#c02020", "#20c020"], ("M2", "S1"))
    assert (
        reds[0]
        .partition("; ")[2]
        .startswith("should 'M2' be 'M1' no 1? Else of the other card 'S2' no 2 is nearer (")
    )
    used = advice_on(["#c02020", "#20c020"], ["#c02020", "#20c020"], ("M2", "S1"), ("M1", "S1"))
    assert used and not any("should" in one for one in used)
    named = advice_on(
        ["#c02020", "#20c020"], ["#c02020", "#20c020"], ("M2", "S1"), notes="The rim is in no 2."
    )
    assert named and not any("should" in one for one in named)


def advice_on(
    ours: list[str], theirs: list[str], *lines: tuple[str, str], notes: str = ""
) -> list[str]:
    """Advice on lines of (numbers in the model's card, numbers in the other), each card in these colours."""
    sets = set_of(card("moss", colours(ours, "M"))), set_of(card("spool", colours(theirs, "S")))
    key = tuple(
        KeyLine(
            mark,
            Stitch.FULL,
            {
                one.id: tuple(one.card.colours[number] for number in numbers.split())
                for one, numbers in zip(sets, both)
            },
            {},
            HERE,
        )
        for mark, both in zip("abc", lines)
    )
    problems = Problems()
    of = replace(pattern("a", sets=sets, key=key), notes_markdown=notes)
    complain_of_conversions(of, problems)
    return [str(problem) for problem in problems]


def test_the_best_there_is_draws_no_advice_however_far():
    """A grey on a card that has only a lighter one and white."""
    assert closeness("#606060", "#909090") == "far"
    assert advice_on(["#606060"], ["#909090", "#ffffff"], ("M1", "S1")) == []


def test_a_nearer_colour_is_offered_to_one_line_only():
    said = advice_on(
        ["#606060", "#686868"], ["#c0c0c0", "#d0d0d0", "#646464"], ("M1", "S1"), ("M2", "S2")
    )
    assert [one for one in said if "'S3'" in one] == said[:1]


def test_a_blend_is_judged_as_the_eye_mixes_it():
    """Both threads of the blend are far from the model's, their mixture is not."""
    assert closeness("#606060", "#404040") == closeness("#a0a0a0", "#c0c0c0") == "far"
    theirs = ["#404040", "#c0c0c0", "#606060", "#a0a0a0"]
    assert advice_on(["#606060", "#a0a0a0"], theirs, ("M1 M2", "S1 S2")) == []


def test_what_the_tool_matched_draws_no_advice():
    """It has chosen the best that is free already."""
    problems = Problems()
    done = with_matches(with_key(line("a", "M1", "S5"), line("b", "M2")), problems)
    complain_of_conversions(done, problems)
    assert {problem.code for problem in problems} == {"conversion-far"}
    assert all("'a'" in str(problem) for problem in problems)
