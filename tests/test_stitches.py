"""Petites, lazy daisies, braids and shared cells: from the outline to the reel in the basket."""

from dataclasses import replace
from math import dist, sqrt
from xml.etree import ElementTree

import pytest
from shapely.geometry import LineString, Polygon

from packetgen.chart.diagrams import diagram
from packetgen.chart.outlines import daisy_anchor, daisy_loop, fraction_outline, symbol_corner
from packetgen.chart.sheet import look_of
from packetgen.model import Colour, Corner, Daisy, Fraction, KeyLine, Knot, Line, Stitch
from packetgen.reckon.buying import buy_tables, shared_needs
from packetgen.reckon.figures import figures
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
    threads_used,
)
from packetgen.reckon.patches import Patch, patches
from packetgen.reckon.sizes import cell_mm
from packetgen.reckon.stitches import daisy_cells, stitch_mm
from packetgen.reckon.thread import needs, strand_lengths, units_to_buy, work_of, worked_of
from packetgen.render.key import key_rows
from packetgen.render.kit import kit_table
from tests.stitching import CLAY, HERE, MOSS, card, option, pattern, piece, thread_set

CELL_14 = cell_mm(14, 1)
RIME = Colour("M1", "rime", "#b9d2e3")  # the same number as moss has on its own card
BRAID = replace(
    card(strands=1, length_m=11, sold_as="reel"),
    id="glow",
    name="Glow Braid",
    colours={"M1": RIME},
    braid=True,
)
SYMBOLS = {"m": "\ue001", "t": "\ue002", "s": "\ue003"}


def line(mark: str, *colours: Colour, of=None, stitch: Stitch = Stitch.FULL, **more) -> KeyLine:
    cards = {"bramble": (of,)} if of else {}
    return KeyLine(mark, stitch, {"bramble": colours}, {}, HERE, **({"cards": cards} | more))


def with_braid(*rows: str, **more: object):
    """'m' is moss, 't' the braid."""
    return pattern(*rows, key=(line("m", MOSS), line("t", RIME, of=BRAID)), **more)


# --- the geometry of a stitch ---------------------------------------------------------------------


def test_a_petite_is_a_full_cross_on_a_cell_of_half_the_side():
    """By hand on a 2 mm cell: a cross of side 1 mm, 2 · 1.414 + 2 · 1 = 4.828 mm."""
    assert stitch_mm(Stitch.PETITE, 2.0) == pytest.approx(4.828427)
    assert stitch_mm(Stitch.PETITE, 2.0) == pytest.approx(stitch_mm(Stitch.FULL, 1.0))


def test_a_lazy_daisy_lies_twice_in_front_and_once_behind_and_is_held_down():
    """By hand, 3 by 4 cells of 2 mm, so L = 10 mm: out 10, back 10, behind 10, held by half a cell, 1."""
    assert 2.0 * daisy_cells(Daisy("m", (1, 1), (4, 5), HERE)) == pytest.approx(31.0)


def test_two_lazy_daisies_by_hand():
    """14 count, two strands, usual figure: two of 2 cells from one base are one start.

    Each (3 · 2 + 0.5) · 1.814286 = 11.792857 mm; both 23.585714; with 18 % ease 27.831143; with
    tails 107.831143; two strands 0.215662 m.
    """
    leaves = (Daisy("m", (3, 3), (3, 1), HERE), Daisy("m", (3, 3), (5, 3), HERE))
    drawn = pattern("....", daisies=leaves)
    thread = replace(thread_set(2), daisy_strands=2)
    lengths = strand_lengths(worked_of(work_of(drawn), CELL_14)[0], thread)
    assert lengths.usual_m == pytest.approx(0.215662, abs=1e-6)


def test_two_three_quarters_in_a_cell_by_hand():
    """One strand: each 1.5 · (√2 + 1) · 1.814286 mm, with ease and its own tails."""
    shared = (
        Fraction(1, 1, "m", Stitch.THREE_QUARTER, Corner.BOTTOM_RIGHT),
        Fraction(1, 1, "t", Stitch.THREE_QUARTER, Corner.TOP_LEFT),
    )
    drawn = pattern(".", fractions=shared)
    bought = needs(worked_of(work_of(drawn), CELL_14), thread_set(1))
    by_hand = 1.5 * (sqrt(2) + 1) * CELL_14 * 1.18 + 80
    assert [need.strand.usual_m * 1000 for need in bought[:2]] == pytest.approx([by_hand] * 2)


def test_a_cell_of_four_petites_is_paid_four_times_and_started_once():
    four = tuple(Fraction(1, 1, "m", Stitch.PETITE, corner) for corner in Corner)
    (work, *_) = work_of(pattern("..", fractions=four))
    assert work.stitches == {Stitch.PETITE: 4}
    assert work.cells[Stitch.PETITE] == {Patch(4, 0): 1}
    assert patches([(1, 1), (1, 1), (4, 1)], 5) == {Patch(3, 2): 1}


# --- the needle -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "strands", [strands_for, line_strands_for, knot_strands_for, daisy_strands_for]
)
def test_a_braid_is_one_strand_whatever_the_set_says(strands):
    three = replace(thread_set(3), backstitch_strands=3, knot_strands=3, daisy_strands=3)
    assert strands(line("m", MOSS), three) == 3
    assert strands(line("t", RIME, of=BRAID), three) == 1


def test_a_thread_of_another_card_is_never_more_than_it_has():
    spool = replace(card(strands=1), id="spool")
    assert strands_for(line("m", MOSS, of=spool), thread_set(2)) == 1
    assert strands_for(line("m", MOSS, of=replace(spool, strands=4)), thread_set(2)) == 2


def test_a_blend_has_one_strand_of_each_in_lines_and_knots_too():
    blend = line("m", MOSS, CLAY)
    assert line_strands_for(blend, thread_set()) == knot_strands_for(blend, thread_set()) == 2


# --- what is bought -------------------------------------------------------------------------------


def test_a_braid_is_bought_as_reels_of_its_own_card():
    """Numbers may be the same on two cards: moss M1 and rime M1 are two things to buy."""
    drawn = with_braid("ttmm")
    own, braid = needs(worked_of(work_of(drawn), CELL_14), thread_set(2))
    assert [(n.card.name, n.colour.name) for n in (own, braid)] == [
        ("Bramble", "moss"),
        ("Glow Braid", "rime"),
    ]
    # Two crosses each; one strand of the braid, two of the cotton.
    assert own.strand.usual_m == pytest.approx(2 * braid.strand.usual_m)


def test_a_reel_holds_its_length_once():
    """By hand: 11 m of braid are 11 m of strand, so 11.5 m are two reels."""
    drawn = with_braid("t" * 40, *["t" * 40] * 22)
    (braid,) = [n for n in needs(worked_of(work_of(drawn), CELL_14), thread_set(2)) if n.card.braid]
    assert braid.units == units_to_buy(braid.strand, BRAID) == -(-braid.strand.generous_m // 11)
    assert braid.units > 1


def test_the_buy_list_totals_skeins_and_reels_apart():
    drawn = with_braid("ttmm", cloths=(option(14), option(18)))
    (table,) = buy_tables(figures(drawn, piece()))
    assert [(row.card.name, row.colour.name) for row in table.rows] == [
        ("Bramble", "moss"),
        ("Glow Braid", "rime"),
    ]
    assert [(total.sold_as, total.units) for total in table.totals] == [
        ("skein", (1, 1)),
        ("reel", (1, 1)),
    ]


def test_a_shared_list_keeps_the_cards_apart():
    drawn = with_braid("ttmm")
    needed = needs(worked_of(work_of(drawn), CELL_14), thread_set())
    shared = shared_needs((needed, needed))
    assert [(one.card.name, one.units, one.units_apart) for one in shared] == [
        ("Bramble", 1, 2),
        ("Glow Braid", 1, 2),
    ]


def test_the_kit_has_a_block_for_every_card():
    said = kit_table((figures(with_braid("ttmm"), piece()),), None, None)
    assert "Bramble" in said and "skeins in all" in said
    assert said.index("skeins in all") < said.index("Glow Braid") < said.index("reels in all")


def test_every_thread_is_named_once_the_sets_own_card_first():
    drawn = with_braid("tm")
    assert [(c.name, colour.name) for c, colour in threads_used(drawn, thread_set())] == [
        ("Bramble", "moss"),
        ("Glow Braid", "rime"),
    ]


# --- the key --------------------------------------------------------------------------------------


def test_the_key_counts_every_kind_of_work_with_its_strands():
    drawn = with_braid(
        "tm..",
        fractions=(
            Fraction(3, 1, "m", Stitch.PETITE, Corner.TOP_LEFT),
            Fraction(3, 1, "m", Stitch.PETITE, Corner.TOP_RIGHT),
        ),
        daisies=(Daisy("m", (1, 1), (2, 2), HERE), Daisy("t", (1, 1), (2, 2), HERE)),
        lines=(Line("m", ((1, 1), (4, 1)), False, HERE), Line("m", ((1, 1), (2, 2)), True, HERE)),
        knots=(Knot("t", (1.5, 1.5), HERE),),
        sets=(replace(thread_set(2), daisy_strands=2),),
    )
    rows = {row.mark: row for row in key_rows(figures(drawn, piece()), look_of(drawn, SYMBOLS))}
    assert [(k.kind, k.words, k.count, k.strands) for k in rows["m"].kinds] == [
        ("full", "cross stitch", 1, (2,)),
        ("petite", "petite stitch", 2, (2,)),
        ("backstitch", "backstitch", 3, (1,)),
        ("long", "long stitch", 1, (1,)),
        ("daisy", "lazy daisy", 1, (2,)),
    ]
    assert [(k.kind, k.count, k.strands) for k in rows["t"].kinds] == [
        ("full", 1, (1,)),
        ("daisy", 1, (1,)),
        ("knot", 1, (1,)),
    ]


def test_the_key_names_the_card_of_a_thread_that_is_not_the_sets():
    """The same braid in both sets is no conversion."""
    sets = (thread_set(), replace(thread_set(), id="other", card=replace(card(), id="other")))
    both = {"bramble": (RIME,), "other": (RIME,)}
    cards = {"bramble": (BRAID,), "other": (BRAID,)}
    key = (KeyLine("t", Stitch.FULL, both, {}, HERE, cards=cards),)
    drawn = pattern("tt", key=key, sets=sets)
    (row,) = key_rows(figures(drawn, piece()), look_of(drawn, {"t": "\ue002"}))
    assert [thread.other_cards for thread in row.threads] == [("Glow Braid",)] * 2
    assert [thread.closeness for thread in row.threads] == ["", "the same thread"]


# --- where it is shown ----------------------------------------------------------------------------


def test_two_three_quarters_fill_their_cell_and_do_not_overlap():
    """Checked with a polygon library: halves of the cell that share an edge."""
    for one, other in (
        (Corner.TOP_LEFT, Corner.BOTTOM_RIGHT),
        (Corner.TOP_RIGHT, Corner.BOTTOM_LEFT),
    ):
        shapes = [Polygon(fraction_outline(0, 0, Stitch.THREE_QUARTER, c)) for c in (one, other)]
        assert shapes[0].union(shapes[1]).equals(Polygon([(0, 0), (1, 0), (1, 1), (0, 1)]))
        assert shapes[0].intersection(shapes[1]).area == 0


@pytest.mark.parametrize("corner", Corner)
def test_a_petite_is_a_small_square_inside_its_quarter(corner):
    petite = Polygon(fraction_outline(4, 2, Stitch.PETITE, corner))
    quarter = Polygon(fraction_outline(4, 2, Stitch.QUARTER, corner))
    left, top, right, bottom = petite.bounds
    assert quarter.buffer(-0.02).contains(petite)
    assert right - left == pytest.approx(bottom - top) and petite.area > 0.1


@pytest.mark.parametrize("corner", Corner)
@pytest.mark.parametrize("stitch", [Stitch.QUARTER, Stitch.PETITE, Stitch.THREE_QUARTER])
def test_the_small_symbol_sits_on_what_the_stitch_covers(stitch, corner):
    """The middle of the half-size symbol lies in the outline."""
    x, y = symbol_corner(stitch, corner)
    assert 0 <= x <= 0.5 and 0 <= y <= 0.5
    middle = Polygon([(x + 0.2, y + 0.2), (x + 0.3, y + 0.2), (x + 0.3, y + 0.3)]).centroid
    assert Polygon(fraction_outline(0, 0, stitch, corner)).contains(middle)


def test_a_daisy_is_a_closed_loop_from_its_base_to_its_tip():
    """Corner coordinates count from 1: base 3,3 is two stitches right of the chart's corner."""
    daisy = Daisy("m", (3, 3), (6, 7), HERE)
    points = daisy_loop(daisy)
    assert points[0] == pytest.approx((2, 2)) and points[-1] == pytest.approx((2, 2))
    assert max(dist(point, (2, 2)) for point in points) == pytest.approx(5)
    assert min(dist(point, (5, 6)) for point in points) == pytest.approx(0)
    assert LineString(points).is_ring and 0 < Polygon(points).area < 5


def test_the_stitch_that_holds_a_daisy_crosses_its_loop_at_the_tip():
    daisy = Daisy("m", (1, 1), (1, 3), HERE)
    held = LineString(daisy_anchor(daisy))
    assert held.intersects(LineString(daisy_loop(daisy)))
    assert held.interpolate(0.5, normalized=True).coords[0] == pytest.approx((0, 2))


@pytest.mark.parametrize("kind", [*(s.value for s in Stitch), "two three-quarters", "daisy"])
def test_every_stitch_has_a_diagram_with_thread_in_it(kind):
    svg = ElementTree.fromstring(diagram(kind))
    strokes = [e for e in svg.iter("{http://www.w3.org/2000/svg}polyline")]
    assert len(strokes) >= 2


@pytest.mark.parametrize("kind", ["full", "petite", "three-quarter"])
def test_the_leg_worked_last_rises_to_the_right(kind):
    """As in the stitched pictures: all upper legs run from lower left to upper right."""
    svg = ElementTree.fromstring(diagram(kind))
    last = [e for e in svg.iter("{http://www.w3.org/2000/svg}polyline")][-1]
    (x0, y0), (x1, y1) = (map(float, point.split(",")) for point in last.get("points").split())
    assert x0 < x1 and y0 > y1
