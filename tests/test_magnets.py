"""How many magnets hold a design, and where: the same for all designs of a series."""

import re
from dataclasses import replace
from math import dist, pi

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS, Level
from packetgen.load.piece_checks import _most_held_g
from packetgen.model import KeepOut, Magnets
from packetgen.pipeline import Proof, Reckoned, review
from packetgen.reckon.bunched import bare_rows_to_spare, draws_magnets_in
from packetgen.reckon.figures import figures
from packetgen.reckon.magnets import Card, magnet_plan, pairs_for, plan_for_most
from packetgen.reckon.series_magnets import complain_of_magnets, series_figures
from packetgen.reckon.weighing import bead_g, washers_g
from tests.stitching import option, pattern, piece, series


def rows(width: int, height: int) -> tuple[str, ...]:
    return ("m" * width,) * height


def card(width: float, height: float, left: float = 0.0, top: float = 0.0, grams: float = 0.0):
    return Card(left, top, left + width, top + height, grams)


# --- where ------------------------------------------------------------------------------------------


def test_four_magnets_sit_in_the_corners():
    """By hand: 18 mm in from the edges of a card of 160 × 110 mm."""
    plan = magnet_plan([card(160, 110)], Magnets(4, 10, 2, 18))
    assert set(plan.centres_mm) == {(18, 18), (142, 18), (18, 92), (142, 92)}


def test_six_magnets_also_hold_the_middles_of_the_long_sides():
    plan = magnet_plan([card(160, 110)], Magnets(6, 10, 2, 18))
    assert set(plan.centres_mm[:4]) == {(18, 18), (142, 18), (18, 92), (142, 92)}
    assert set(plan.centres_mm[4:]) == {(80, 18), (80, 92)}


def test_ten_magnets_have_equal_gaps_on_every_side():
    """By hand: of six further ones, round 124 × 74 mm, two on each long side (gaps of 41.3 mm) and one on each
    short side (37 mm)."""
    plan = magnet_plan([card(160, 110)], Magnets(10, 10, 2, 18))
    third = 124 / 3
    wanted = {
        (18 + third, 18),
        (142 - third, 18),
        (18 + third, 92),
        (142 - third, 92),
        (18, 55),
        (142, 55),
    }
    found = {(round(x, 6), round(y, 6)) for x, y in plan.centres_mm[4:]}
    assert found == {(round(x, 6), round(y, 6)) for x, y in wanted}


def test_magnets_lie_inside_what_all_cards_cover():
    """By hand: a wide card 20–180 × 40–120 and a high one 60–140 × 10–150 share 60–140 × 40–120; 15 mm in."""
    plan = magnet_plan([card(160, 80, 20, 40), card(80, 140, 60, 10)], Magnets(4, 10, 2, 15))
    assert set(plan.centres_mm) == {(75, 55), (125, 55), (75, 105), (125, 105)}


def test_cards_that_share_too_little_have_no_common_magnets():
    plan = magnet_plan([card(60, 60), card(60, 60, 50, 50)], Magnets(4, 10, 2, 15))
    assert plan.spots == () and plan.centres_mm == ()


CARDS = st.builds(
    lambda x, y, w, h: Card(x - w / 2, y - h / 2, x + w / 2, y + h / 2),
    st.floats(80, 120), st.floats(80, 120), st.floats(20, 160), st.floats(20, 160),
)  # fmt: skip


@given(
    cards=st.lists(CARDS, min_size=1, max_size=6),
    pairs=st.integers(1, 20),
    diameter=st.floats(2, 20),
    further=st.floats(0, 15),
)
def test_every_magnet_lies_wholly_in_every_card_and_no_two_touch(cards, pairs, diameter, further):
    plan = magnet_plan(cards, Magnets(pairs, diameter, 2.0, diameter / 2 + further))
    assert len(plan.spots) in (0, max(4, pairs))
    centres = plan.centres_mm
    for x, y in centres:
        for each in cards:
            assert (
                x - diameter / 2 >= each.left_mm - 1e-6 and x + diameter / 2 <= each.right_mm + 1e-6
            )
            assert (
                y - diameter / 2 >= each.top_mm - 1e-6 and y + diameter / 2 <= each.bottom_mm + 1e-6
            )
    for number, one in enumerate(centres):
        assert all(dist(one, other) > diameter for other in centres[:number])


@given(
    cards=st.lists(CARDS, min_size=1, max_size=6),
    pairs=st.integers(4, 12),
    diameter=st.floats(2, 20),
)
def test_there_is_a_plan_wherever_the_shared_room_is_large(cards, pairs, diameter):
    """A rectangle whose sides hold a magnet and its gap as often as there are magnets is always enough."""
    plan = magnet_plan(cards, Magnets(pairs, diameter, 2.0, diameter / 2))
    wide = min(c.right_mm for c in cards) - max(c.left_mm for c in cards) - diameter
    high = min(c.bottom_mm for c in cards) - max(c.top_mm for c in cards) - diameter
    assume(min(wide, high) >= pairs * (diameter + 2))
    assert len(plan.spots) == pairs


@pytest.fixture(scope="module")
def demo_discs(demo):
    each = demo.reckoned[0]
    return each, each.figures[0].magnets.centres_mm, each.series.finish.magnets.diameter_mm / 2


def test_one_painted_piece_takes_every_design_of_the_demo(demo_discs):
    """Every disc of the one plan lies in every card, of every design on every cloth, where it is laid."""
    each, centres, radius = demo_discs
    assert len(centres) >= 4
    seen = 0
    for figure in each.figures:
        assert figure.magnets == each.figures[0].magnets
        for on in figure.cloths:
            (left, top), size = on.fit.at_mm, on.fit.card
            for x, y in centres:
                assert left <= x - radius and x + radius <= left + size.width_mm
                assert top <= y - radius and y + radius <= top + size.height_mm
            seen += 1
    assert seen >= 15


def test_the_demo_s_magnets_lie_on_its_panel_and_off_what_must_stay_free(demo_discs):
    """A ring of points round each disc, and a point-in-polygon test written here (crossing number)."""
    each, centres, radius = demo_discs

    def inside(point, outline):
        x, y = point
        crossings = 0
        for (x0, y0), (x1, y1) in zip(outline, (*outline[1:], outline[0])):
            if (y0 > y) != (y1 > y) and x < x0 + (y - y0) / (y1 - y0) * (x1 - x0):
                crossings += 1
        return crossings % 2 == 1

    finish = each.series.finish
    for x, y in centres:
        for dx, dy in ((0, 0), (radius, 0), (-radius, 0), (0, radius), (0, -radius)):
            assert inside((x + dx, y + dy), finish.panel)
            assert not any(inside((x + dx, y + dy), k.outline) for k in finish.keep_outs)


def test_a_card_that_a_keep_out_pushes_aside_still_has_the_magnets_inside():
    """The large design must make room for a pot at the right; the small one stays in the middle."""
    pot = KeepOut("the pot", ((180, 0), (200, 0), (200, 180), (180, 180)))
    finish = piece(keep_outs=(pot,), magnets=Magnets(4, 10.0, 2.0, 8.0))
    whole = series(pattern(*rows(90, 60)), pattern(*rows(30, 30), id="little"), finish=finish)
    large, small = series_figures(whole)
    large_card, small_card = large.cloths[0].card, small.cloths[0].card
    assert large_card.middle_mm[0] < small_card.middle_mm[0] - 4
    assert large.magnets == small.magnets and len(large.magnets.spots) == 4
    for x, _ in large.magnets.centres_mm:
        for each in (large_card, small_card):
            assert each.left_mm + 8 <= x + 1e-9 and x <= each.right_mm - 8 + 1e-9


# --- how many ---------------------------------------------------------------------------------------


def test_pairs_are_reckoned_from_weight_and_the_label_by_hand():
    """300 g on the label: 0.4 through cloth and 0.2 against sliding leave 24 g; 110 g ask for five."""
    assert pairs_for(110, Magnets(1, 10, 2, 15, 300)) == (5, 5)
    assert pairs_for(96, Magnets(1, 10, 2, 15, 300)) == (4, 4)


def test_there_are_four_pairs_at_least_and_never_fewer_than_the_author_s():
    assert pairs_for(1, Magnets(2, 10, 2, 15, 5000)) == (4, 1)
    assert pairs_for(1, Magnets(7, 10, 2, 15, 5000)) == (7, 1)
    assert pairs_for(1000, Magnets(6, 10, 2, 15)) == (6, 0)


def test_an_author_who_wants_none_has_none():
    plan = magnet_plan([card(160, 110, grams=500)], Magnets(0, 10, 2, 15, 300))
    assert (plan.pairs, plan.spots) == (0, ())


@given(grams=st.floats(0, 5000), holds=st.floats(20, 50000), asked=st.integers(1, 50))
def test_what_the_pairs_carry_is_never_less_than_the_weight(grams, holds, asked):
    pairs, by_weight = pairs_for(grams, Magnets(asked, 10, 2, 15, holds))
    assert pairs >= max(4, asked, by_weight)
    assert pairs * holds * 0.4 * 0.2 >= grams * (1 - 1e-6)


def test_the_heaviest_of_the_series_decides():
    plan = magnet_plan(
        [card(160, 110, grams=30), card(150, 110, grams=200)], Magnets(4, 10, 2, 15, 300)
    )
    assert plan.heaviest_g == 200 and plan.pairs == 9


def test_a_mounted_design_is_weighed_by_hand():
    """100 × 55 crosses at 12.7 to the inch are 200 × 110 mm: too large for the board, but weighed all the same.
    Card 210 × 120 mm: 0.0252 m² · 1250 = 31.5 g; wadding 208 × 118: 0.024544 · 200 = 4.9 g; cloth
    260 × 170: 0.0442 · 250 = 11.05 g; backing 230 × 140: 0.0322 · 150 = 4.83 g; trim 660 + 20 mm: 3.4 g."""
    reckoned = figures(pattern(*rows(100, 55), cloths=(option(12.7),)), piece())
    on = reckoned.cloths[0]
    weight, strand_m = on.weight, on.needs[0][1][0].strand.usual_m
    assert weight.card_g == pytest.approx(31.5)
    assert weight.wadding_g == pytest.approx(4.9088)
    assert weight.cloth_g == pytest.approx(11.05)
    assert weight.backing_g == pytest.approx(4.83)
    assert weight.trim_g == pytest.approx(3.4)
    # 25 tex: 25 g in 1000 m (ISO 1144).
    assert weight.thread_g == pytest.approx(strand_m * 25 / 1000)
    assert weight.total_g == pytest.approx(31.5 + 4.9088 + 11.05 + 4.83 + 3.4 + strand_m * 0.025)


def test_magnets_and_beads_are_weighed_by_hand():
    """Four discs of 10 × 2 mm: 4 · π · 25 · 2 = 628 mm³ at 7.5 g/cm³ are 4.71 g; a bead of 2 mm has half of
    8 mm³ of glass, 0.01 g."""
    assert washers_g(Magnets(4, 10, 2, 15)) == pytest.approx(4 * pi * 25 * 2 / 1000 * 7.85)
    assert bead_g(2) == pytest.approx(0.01)


# --- what the author reads --------------------------------------------------------------------------


def complaints(whole) -> list[str]:
    problems = Problems()
    complain_of_magnets(series_figures(whole), whole, problems)
    return [str(problem) for problem in problems]


def test_the_design_that_is_in_the_way_is_named_with_its_cloth():
    """Two designs have room in common; the third is a strip. By hand: 90 × 8 crosses at 14 are 163.29 × 14.51 mm,
    with the border 173.29 × 24.51 mm, 6.82 × 0.97 in."""
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 12.0))
    strip = pattern(*rows(90, 8), id="strip", title="A Hedge", cloths=(option(14),))
    whole = series(pattern(*rows(60, 60)), strip, pattern(*rows(50, 60), id="c"), finish=finish)
    (said,) = complaints(whole)
    assert said == (
        "tests:1:1: advice: A Hedge on Cloth 14, a card of 6.82 × 0.97 in (17.3 × 2.5 cm), leaves no room for "
        "4 magnets where all designs have them; inset: 6 mm would do, or a wider border, or more bare rows round "
        "it, or write pairs: 0"
    )
    assert FAULTS["magnets-no-room"].level is Level.ADVICE


@pytest.mark.parametrize("others", [(), ((60, 60),), ((60, 60), (30, 9))])
def test_the_inset_that_is_named_gives_it_magnets_and_half_a_millimetre_more_does_not(others):
    """Tried by making the change, beside none, one that has magnets, and a further one that has none."""
    strip = pattern(*rows(90, 8), id="strip", title="A Hedge")
    more = [pattern(*rows(*size), id=f"other-{number}") for number, size in enumerate(others)]

    def with_inset(mm):
        return series(strip, *more, finish=piece(magnets=Magnets(4, 10.0, 2.0, mm)))

    (said,) = (words for words in complaints(with_inset(18.0)) if "A Hedge" in words)
    named = float(said.partition("inset: ")[2].partition(" mm would do")[0])
    assert named < 18 and not series_figures(with_inset(named))[0].without_magnets
    assert series_figures(with_inset(named + 0.5))[0].without_magnets


def test_where_no_smaller_inset_helps_none_is_named():
    """17 mm of card hold no two magnets of 10 mm side by side; 40 mm of panel no larger card that does."""
    dot, magnets = pattern(*rows(4, 4)), Magnets(4, 10.0, 2.0, 18.0)
    (said,) = complaints(series(dot, finish=piece(magnets=magnets)))
    assert said.endswith(
        "; make its border wider, or leave more bare rows round it, or write pairs: 0"
    )
    (said,) = complaints(series(dot, finish=piece(40, 40, magnets=magnets)))
    assert said.endswith("; make its border wider, or write pairs: 0")


# --- what a small design does to a large one ----------------------------------------------------------

HERON = pattern(*rows(50, 64), title="Heron at the Lock", cloths=(option(14), option(18)))
MOTH = pattern(*rows(28, 16), id="moth", title="A Moth", cloths=(option(18),))


def framed(width: int, height: int, bare: int) -> tuple[str, ...]:
    """With so many bare rows and columns on every side."""
    side, empty = "." * bare, ("." * (width + 2 * bare),) * bare
    return (*empty, *(f"{side}{row}{side}" for row in rows(width, height)), *empty)


def of_two(*patterns):
    return series(*patterns, finish=piece(magnets=Magnets(4, 10.0, 2.0, 9.0)))


def test_of_magnets_that_hold_the_middle_of_a_card_the_design_that_draws_them_there_is_named_first():
    """By hand: the small card is 28 · 25.4 ÷ 18 + 10 = 49.5 by 32.6 mm; 9 mm in from each edge leave
    31.5 × 14.6 mm; on the large card alone, of 100.7 × 126.1 mm, they would stand 82.7 × 108.1 mm apart."""
    assert complaints(of_two(HERON, MOTH)) == [
        "tests:1:1: advice: A Moth on Cloth 18 is so small that Heron at the Lock may lift at its corners: all share "
        "magnets 1.24 × 0.57 in (3.2 × 1.5 cm) apart; make that one larger, or see --explain"
    ]
    assert FAULTS["magnets-bunched"].level is Level.ADVICE


def narrow_and_low(narrow="Post", low="Hedge"):
    return (
        pattern(*rows(*size), id=name, title=name, cloths=(option(14),))
        for name, size in ((narrow, (16, 64)), (low, (50, 16)))
    )


def test_a_narrow_and_a_low_design_are_both_named():
    upright, across = narrow_and_low()
    said = [
        words
        for words in complaints(of_two(HERON, upright, across))
        if "Heron at the Lock on Cloth 14 may lift at" in words
    ]
    assert len(said) == 1 and "advice: Post and Hedge are so small that Heron" in said[0]
    assert said[0].endswith("; make those larger, or see --explain")


def test_nobody_is_told_to_cut_bare_rows_off_a_design_that_draws_the_magnets_in():
    small = pattern(*rows(16, 64), id="post", title="Post", cloths=(option(14),))
    assert draws_magnets_in(series_figures(of_two(HERON, small))) == {"post"}
    assert draws_magnets_in(series_figures(of_two(HERON))) == frozenset()


def test_a_few_bare_rows_that_let_the_magnets_stand_apart_are_offered_and_then_left_alone():
    """By hand: on the large card alone the magnets would stand 82.7 mm apart; half of that, 9 mm in from both
    edges and less the border of 5 mm, takes 2 · 9 + 41.4 - 10 = 49.4 mm, 28 columns of 14 count. It has 20: four
    more on either side are enough, and three are not."""
    slim = pattern(*rows(20, 64), id="post", title="Post", cloths=(option(14),))
    (said,) = complaints(of_two(HERON, slim))
    assert said.endswith("; add bare edges: 'packetgen chart border post 4'")
    bordered = [
        pattern(*framed(20, 64, bare), id="post", title="Post", cloths=(option(14),))
        for bare in (3, 4)
    ]
    assert [len(complaints(of_two(HERON, one))) for one in bordered] == [1, 0]
    for one in (slim, *bordered):
        all_figures = series_figures(of_two(HERON, one))
        assert not bare_rows_to_spare([one], all_figures, of_two(HERON, one).finish)


@pytest.mark.parametrize("tall, wide", [((16, 48), (40, 18)), ((26, 48), (40, 28))])
def test_the_edges_that_two_designs_need_for_one_another_are_enough_together(tall, wide):
    """A tall and a wide one: with more rows round it either of them asks more of the other."""

    def complaints_with(columns: int, rows_more: int) -> list[str]:
        of_post = framed_by(rows(*tall), columns, columns, 0, 0)
        of_hedge = framed_by(rows(*wide), 0, 0, rows_more, rows_more)
        cloths = (option(18), option(14))
        post = pattern(*of_post, id="post", title="Post", cloths=cloths)
        hedge = pattern(*of_hedge, id="hedge", title="Hedge", cloths=cloths)
        return complaints(of_two(post, hedge))

    low, narrow = complaints_with(0, 0)
    assert "Hedge on Cloth 18 is so low that Post may lift" in low
    assert "Post on Cloth 18 is so narrow that Hedge may lift" in narrow
    more_rows = re.search(r"'packetgen chart border hedge --top (\d+) --bottom \1'", low)
    more_columns = re.search(r"'packetgen chart border post --left (\d+) --right \1'", narrow)
    columns, down = int(more_columns[1]), int(more_rows[1])
    assert not complaints_with(columns, down)
    assert complaints_with(columns - 1, down) and complaints_with(columns, down - 1)


def test_the_edge_that_is_offered_leaves_wood_enough_round_the_design():
    """By hand, on 14 count: 4 columns a side are needed, as above. The panel is as high as 68 rows, their border and 3 mm
    of wood above and below, so of two rows a side; with three the wood looks pinched, and four do not fit."""
    slim = pattern(*rows(20, 64), id="post", title="Post", cloths=(option(14),))
    low = piece(200, 68 * 25.4 / 14 + 2 * 5 + 2 * 3, magnets=Magnets(4, 10.0, 2.0, 9.0))
    (said,) = complaints(series(HERON, slim, finish=low))
    assert said.endswith(
        "; add bare edges: 'packetgen chart border post --left 4 --right 4 --top 2 --bottom 2'"
    )


def test_what_draws_the_magnets_in_is_told_at_the_design_that_is_to_be_mended():
    small = replace(MOTH, cloths=(replace(option(18), place=Place("series/moth/pattern.yaml", 6)),))
    (said,) = complaints(of_two(HERON, small))
    assert said.startswith(
        "series/moth/pattern.yaml:6:1: advice: A Moth on Cloth 18 is so small that Heron at the Lock may lift at its "
    )


def test_bare_rows_that_only_another_design_s_bare_rows_need_are_told_together_with_those():
    """By hand, 14 count and 9 mm in: the post without its rows, of 28 columns, lets the magnets stand
    28 · 25.4 ÷ 14 + 10 - 18 = 42.8 mm apart. Of the pond with its rows, 70 stitches, that is less than half of 119;
    without them, 50 stitches, it is more than half of 82.7."""
    pond = pattern(*framed(50, 50, 10), id="pond", title="A Pond", cloths=(option(14),))
    post = pattern(*framed(28, 50, 4), id="post", title="A Post", cloths=(option(14),))
    of = of_two(pond, post)
    all_figures = series_figures(of)
    assert bare_rows_to_spare([post], all_figures, of.finish) == frozenset()
    assert bare_rows_to_spare([post, pond], all_figures, of.finish) == {"pond", "post"}


def test_the_advice_stays_short_with_titles_as_authors_give_them():
    large = replace(HERON, title="Sweet Peas and String")
    said = complaints(of_two(large, *narrow_and_low("Robin on the Spade", "Foxgloves in the Can")))
    assert len(said) == 3
    assert max(len(words.partition(": advice: ")[2]) for words in said) <= 220


def test_a_design_can_draw_its_own_magnets_in_with_a_fine_cloth():
    of = pattern(*rows(50, 50), cloths=(option(14), option(40)))
    (said,) = complaints(of_two(of))
    assert (
        "A Sprig on Cloth 40 is so small that A Sprig on Cloth 14 may lift at its corners: all share magnets 0.94 ×"
        in said
    )
    assert said.endswith("; offer no cloth so fine, or leave bare rows round it")


def test_magnets_half_as_far_apart_as_on_the_card_alone_still_hold_its_corners():
    """By hand: 9 mm in, on a card of 118 mm they stand 100 mm apart alone; 50 mm do, 49 mm do not."""
    large = card(118, 118)
    for apart, drawn in ((50, False), (49, True)):
        plan = magnet_plan([large, card(apart + 18, 100, 20, 9)], Magnets(4, 10, 2, 9))
        assert plan.apart.width_mm == pytest.approx(apart)
        assert plan.drawn_in(large) == (drawn, False)


@given(wide=st.floats(40, 200), high=st.floats(40, 200), inset=st.floats(5, 12))
def test_a_card_alone_never_draws_its_own_magnets_in(wide, high, inset):
    alone = card(wide, high)
    assert magnet_plan([alone], Magnets(4, 10, 2, inset)).drawn_in(alone) == (False, False)


def test_no_magnets_of_the_demo_stand_in_the_middle_only(demo):
    assert not any(figure.bunched for figure in demo.reckoned[0].figures)
    assert "magnets-bunched" not in {problem.code for problem in demo.problems}


def test_every_design_without_room_is_named():
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 12.0))
    across = pattern(*rows(80, 8), id="across", title="A Hedge")
    upright = pattern(*rows(6, 70), id="upright", title="A Post")
    dot = pattern(*rows(9, 9), id="dot", title="A Dot")
    said = complaints(series(across, upright, dot, finish=finish))
    assert sorted(words.split(": ")[2].partition(" on ")[0] for words in said) == [
        "A Dot", "A Hedge", "A Post",
    ]  # fmt: skip


def test_while_a_design_does_not_fit_nothing_is_said_of_magnets():
    """Its card will be another one when that is mended."""
    across = pattern(*rows(80, 8), id="across", title="A Hedge")
    large = pattern(*rows(200, 200), id="large", title="A Field")
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 12.0))
    assert complaints(series(across, finish=finish))
    assert complaints(series(across, large, finish=finish)) == []


def test_an_inset_that_suits_no_card_is_told_once_with_one_that_suits_all():
    """By hand: 31 stitches on cloth of 14 are 56.2 mm, and with borders of 5 mm the card 66.2 mm: two magnets that stand 40 mm inside
    each edge would change places. What lies within the smaller card suits the larger one too."""
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 40.0))
    small, other = pattern(*rows(31, 31)), pattern(*rows(33, 33), id="other")
    (said,) = complaints(series(small, other, finish=finish))
    assert "no card of the series has room for 4 magnets; the smallest is 2.61 × 2.61 in" in said
    inset_mm = float(said.partition("inset: ")[2].partition(" mm")[0])
    for mm, left in ((inset_mm, 0), (inset_mm + 0.5, 1)):
        finish = piece(magnets=Magnets(4, 10.0, 2.0, mm))
        assert len(complaints(series(small, other, finish=finish))) == left


@pytest.mark.parametrize(
    "magnets, named, at, kept, one_more",
    [
        (Magnets(40, 10.0, 2.0, 12.0), "pairs: 12 would do", 41, Magnets(12, 10.0, 2.0, 12.0), Magnets(13, 10.0, 2.0, 12.0)),
        (
            Magnets(4, 50.0, 2.0, 30.0),
            "magnets 32 mm across would do with inset: 16 mm",
            41,
            Magnets(4, 32.0, 2.0, 16.0),
            Magnets(4, 33.0, 2.0, 16.5),
        ),
    ],
)  # fmt: skip
def test_magnets_that_suit_no_card_are_told_once_with_what_would_do(
    magnets, named, at, kept, one_more
):
    """Tried by making the change, and with one step more. By hand for the second: the card is 66.2 mm wide, so the
    middles stand 66.2 - 2 x 16 = 34.2 mm apart, and two of 32 mm have 2 mm between their rims, while two of 33 mm
    that stand 66.2 - 2 x 16.5 = 33.2 mm apart have not."""
    small, other = pattern(*rows(31, 31)), pattern(*rows(33, 33), id="other")

    def told(one):
        finish = replace(piece(magnets=one), magnets_place=Place("finish.yaml", at))
        problems = Problems()
        of = series(small, other, finish=finish)
        complain_of_magnets(series_figures(of), of, problems)
        return [str(problem) for problem in problems]

    (line,) = told(magnets)
    assert line.startswith(f"finish.yaml:{at}:") and named in line
    assert told(kept) == [] and told(one_more)


def test_a_small_design_leaves_the_others_their_magnets():
    """It has none itself, on the cloth where its card is too small; the others have theirs where they were."""
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 12.0))
    large, other = pattern(*rows(60, 60)), pattern(*rows(50, 60), id="other")
    dot = pattern(*rows(20, 12), id="dot", cloths=(option(14), option(6)))
    with_dot = series_figures(series(large, other, dot, finish=finish))
    without = series_figures(series(large, other, finish=finish))
    assert without[0].magnets.spots
    assert with_dot[0].magnets.spots == without[0].magnets.spots
    assert [len(each.by_magnets) for each in with_dot] == [1, 1, 1]
    (left_out,) = with_dot[2].without_magnets
    assert left_out.option.cloth.count_per_inch == 14


@given(
    cards=st.lists(CARDS, min_size=1, max_size=6),
    diameter=st.floats(2, 20),
    further=st.floats(0, 15),
)
def test_a_card_is_served_exactly_where_all_magnets_lie_in_it(cards, diameter, further):
    """Reckoned again from the discs; and if any card alone has room for them, some card has them."""
    magnets = Magnets(4, diameter, 2.0, diameter / 2 + further)
    plan = plan_for_most(cards, magnets)
    for each in cards:
        inside = all(
            min(x - each.left_mm, each.right_mm - x, y - each.top_mm, each.bottom_mm - y)
            >= magnets.inset_mm - 1e-6
            for x, y in plan.centres_mm
        )
        assert plan.serves(each) == (bool(plan.spots) and inside)
    assert bool(plan.spots) == any(magnet_plan([each], magnets).spots for each in cards)


def test_a_card_that_is_heavier_than_the_magnets_were_reckoned_for_is_not_hung_by_them():
    """By hand: 240 g ask for ten of 24 g each, for which a card of 30 mm has no room; 24 g ask for one."""
    small, large = card(30, 30, 65, 40, 240), card(160, 110, grams=24)
    plan = plan_for_most([small, large], Magnets(4, 10, 2, 6, 300))
    assert plan.pairs == 4 and plan.serves(large) and not plan.serves(small)


def test_a_series_whose_magnets_have_room_is_not_complained_of():
    assert complaints(series(pattern(*rows(60, 60)))) == []


def test_neither_is_one_without_magnets():
    finish = piece(magnets=Magnets(0, 10.0, 2.0, 12.0))
    assert complaints(series(pattern(*rows(6, 6)), finish=finish)) == []


def test_a_design_that_does_not_fit_the_panel_is_told_once_by_its_fit():
    """It is left out of the plan: it will not be hung there."""
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 12.0))
    whole = series(pattern(*rows(60, 60)), pattern(*rows(300, 8), id="wide"), finish=finish)
    assert complaints(whole) == []
    assert len(series_figures(whole)[0].magnets.spots) == 4


def test_bare_rows_of_a_large_design_go_before_those_that_a_small_one_needs():
    """How many these are, is another number without the large one's."""
    pond = in_hedge(pattern(*framed(50, 50, 10), id="pond", title="A Pond", cloths=(option(14),)))
    moth = in_hedge(replace(MOTH, cloths=(option(18),)))
    cropped = in_hedge(pattern(*rows(50, 50), id="pond", title="A Pond", cloths=(option(14),)))
    assert "packetgen chart crop pond" in reviewed(HERON, pond)["edges-bare"]
    with_moth = reviewed(HERON, pond, moth)
    assert "packetgen chart crop pond" in with_moth["edges-bare"]
    assert (
        "; whether smaller designs then need rows for the magnets, the next proof says"
        in with_moth["edges-bare"]
    )
    assert "the next proof says" not in reviewed(HERON, pond)["edges-bare"]
    assert "magnets-bunched" not in with_moth
    then = reviewed(HERON, cropped, moth)
    assert "magnets-bunched" in then and "edges-bare" not in then


def test_bare_rows_of_a_small_design_are_not_complained_of_while_it_needs_others():
    small = pattern(*framed(24, 24, 2), id="moth", title="A Moth", cloths=(option(14),))
    told = reviewed(HERON, in_hedge(small))
    assert "magnets-bunched" in told and "edges-bare" not in told


def test_the_bare_rows_that_are_asked_for_bring_a_design_to_the_middle():
    """By hand: 4 are bare above and none below, so of twice 4 two go above and six below."""

    def moth(*chart):
        return in_hedge(pattern(*chart, id="moth", title="A Moth", cloths=(option(14),)))

    body = rows(28, 24)
    asked = reviewed(HERON, moth(*framed_by(body, 0, 0, 4, 0)))["magnets-bunched"]
    assert "'packetgen chart border moth --left 4 --right 4 --top 2 --bottom 6'" in asked
    mended = reviewed(HERON, moth(*framed_by(body, 4, 4, 4 + 2, 6)))
    assert not {"magnets-bunched", "edges-bare"} & set(mended)


def framed_by(body, left: int, right: int, top: int, bottom: int) -> list[str]:
    wide = left + len(body[0]) + right
    sides = ["." * left + row + "." * right for row in body]
    return ["." * wide] * top + sides + ["." * wide] * bottom


def in_hedge(of):
    """A pattern in a folder of its own, so that it can be told which one is spoken of."""
    folder = f"series/hedge/{of.id}"
    cloths = tuple(replace(one, place=Place(f"{folder}/pattern.yaml")) for one in of.cloths)
    return replace(of, cloths=cloths, grid=replace(of.grid, place=Place(f"{folder}/chart.txt")))


def reviewed(*patterns) -> dict[str, str]:
    """Code → its line."""
    of = replace(of_two(*patterns), place=Place("series/hedge/series.yaml"))
    all_figures, problems = series_figures(of), Problems()
    complain_of_magnets(all_figures, of, problems)
    found = review(Proof((Reckoned(of, all_figures),), problems))
    return {one.code: str(one) for chapter in found.chapters for one in chapter.problems}


def test_no_magnet_is_believed_to_hold_more_than_its_face_can():
    """Maxwell's stress, B² · area ÷ (2 · µ0), by hand for 1.5 T and 10 mm: 2.25 · 78.54e-6 ÷ 2.5133e-6 = 70.3 N,
    of which 9.80665 N weigh 1 kg: 7.17 kg."""
    assert _most_held_g(10) == pytest.approx(7170, rel=1e-3)
    assert _most_held_g(20) == pytest.approx(4 * _most_held_g(10))
