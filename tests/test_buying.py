"""What a pattern's buy list says: from the cards' own put-up, with dye lots, near misses and remnants."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.model import Colour, Fraction, KeyLine, Stitch
from packetgen.nouns import all_of, counted, plural
from packetgen.reckon.buying import buy_tables, by_number, shared_needs
from packetgen.reckon.figures import beads_with_spares, figures
from packetgen.reckon.thread import Lengths, Need, units_to_buy, warning
from packetgen.render.templates import environment
from tests.stitching import CLAY, HERE, MOSS, SOOT, card, option, pattern, piece

RIME = Colour("G1", "rime", "#b9d2e3")
BRAID = replace(
    card(strands=1, length_m=11, sold_as="box"),
    id="glow",
    name="Glow Braid",
    colours={"G1": RIME},
    braid=True,
    hand_dyed=True,
)


def key_line(mark: str, *colours: Colour, of=None) -> KeyLine:
    cards = {"bramble": (of,) * len(colours)} if of else {}
    return KeyLine(mark, Stitch.FULL, {"bramble": colours}, {}, HERE, cards)


# --- the words for what is sold --------------------------------------------------------------------


@pytest.mark.parametrize(
    ("one", "many"),
    [
        ("skein", "skeins"),
        ("spool", "spools"),
        ("ball", "balls"),
        ("card", "cards"),
        ("reel", "reels"),
        ("box", "boxes"),
        ("bunch", "bunches"),
        ("hank of two", "hanks of two"),
        ("caddy", "caddies"),
        ("tray", "trays"),
    ],
)
def test_goods_have_their_right_plural(one, many):
    assert plural(one) == many
    assert (counted(1, one), counted(3, one)) == (f"1 {one}", f"3 {many}")


@pytest.mark.parametrize(
    ("sold_as", "length_m", "strands", "units"),
    [("skein", 8.0, 6, 1), ("spool", 45.72, 1, 1), ("ball", 20.0, 1, 2), ("box", 10.0, 1, 4)],
)
def test_units_follow_the_put_up_of_the_card(sold_as, length_m, strands, units):
    """By hand for 33 m of strand: 48 m in a skein of six plies, 45.72 on a spool; 20 m twice; 10 m four
    times."""
    of = card(strands=strands, length_m=length_m, sold_as=sold_as)
    assert units_to_buy(Lengths(30, 31, 33), of) == units


# --- dye lots -------------------------------------------------------------------------------------


def bought_page(figure) -> str:
    """The buying page of the packet, in one line of text."""
    page = environment().get_template("packet/buying.html")
    drawn = figure.pattern
    html = page.render(
        buy=buy_tables(figure),
        rows=drawn.key,
        figures=figure,
        pattern=drawn,
        model=figure.cloths[0],
        assumptions=figure.assumptions,
    )
    return " ".join(html.split())


def test_hand_dyed_thread_of_any_card_in_the_set_is_noted():
    """Also where only a braid of another card is dyed by hand, and not the set's own thread."""
    drawn = pattern("mt", key=(key_line("m", MOSS), key_line("t", RIME, of=BRAID)))
    figure = figures(drawn, piece())
    (table,) = buy_tables(figure)
    assert table.hand_dyed == (BRAID,)
    said = bought_page(figure)
    assert "Glow Braid is dyed by hand: buy all of a colour at once." in said
    assert "so will any thread that you take instead" in said
    assert "Bramble is dyed by hand" not in said
    assert 'a box of <span class="unbroken">11 m (12 yd)</span>' in said and "Boxes in all" in said


def test_hand_dyed_cloth_is_noted_once_however_many_colours_it_comes_in():
    plain, dyed = option(14), option(32, 2)
    cloth = replace(dyed.cloth, id="linen", name="Old Linen", hand_dyed=True)
    blue = Colour("blue", "blue", "#8899aa")
    options = (plain, replace(dyed, cloth=cloth), replace(dyed, cloth=cloth, colour=blue))
    said = bought_page(figures(pattern("mt", cloths=options), piece()))
    assert said.count("Old Linen is dyed by hand: buy all that you need at once.") == 1
    assert "so will a cloth that you take instead" in said
    assert buy_tables(figures(pattern("mt", cloths=options), piece()))[0].hand_dyed == ()


def test_nothing_is_said_of_dye_lots_where_nothing_is_dyed_by_hand():
    assert "dyed by hand" not in bought_page(figures(pattern("mt"), piece()))


# --- blends, near misses --------------------------------------------------------------------------


def test_both_threads_of_a_blend_are_bought():
    """By hand: 2,000 crosses of a blend of two in two strands are one strand of each colour, half of what
    moss alone would take; and the same colour in another line is added."""
    rows = ["m" * 40] * 50
    alone = figures(pattern(*rows), piece(900, 900)).cloths[0].needs[0][1]
    blended = figures(pattern(*rows, key=(key_line("m", MOSS, CLAY),)), piece(900, 900))
    both = blended.cloths[0].needs[0][1]
    assert [need.colour for need in both] == [MOSS, CLAY]
    for need in both:
        assert need.strand.usual_m == pytest.approx(alone[0].strand.usual_m / 2)
        assert need.units == 1
    (table,) = buy_tables(blended)
    assert [total.units for total in table.totals] == [(2,)]
    assert alone[0].units == 2


def test_a_near_miss_names_its_card_where_that_is_not_the_set_s_own():
    """26 crosses of braid on their own in every row: eleven metres will only just do, or not quite."""
    for rows in range(1, 60):
        drawn = pattern(
            *["t" * 40] * rows, key=(key_line("m", MOSS), key_line("t", RIME, of=BRAID))
        )
        figure = figures(drawn, piece(900, 900))
        (table,) = buy_tables(figure)
        if table.warnings:
            break
    (warned,) = table.warnings
    assert (warned.card, warned.colour) == (BRAID, RIME)
    assert "* Glow Braid G1 rime: One box will" in bought_page(figure)


# --- one list for several patterns ----------------------------------------------------------------

OTHER = replace(card(strands=1, length_m=5.0, sold_as="spool"), id="nettle", name="Nettle")
threads = st.sampled_from([(of, colour) for of in (card(), OTHER) for colour in (MOSS, CLAY, SOOT)])


@st.composite
def need_lists(draw) -> tuple[tuple[Need, ...], ...]:
    """Lists of one to five patterns; in each a thread stands once."""
    lists = []
    for _ in range(draw(st.integers(1, 5))):
        taken = draw(st.lists(threads, unique_by=lambda t: (t[0].id, t[1].number), max_size=6))
        needs = []
        for of, colour in taken:
            careful = draw(st.floats(0.001, 200) | st.sampled_from([5.0, 24.0, 48.0, 48.0 + 1e-8]))
            strand = Lengths(careful, careful * 1.05, careful * 1.1)
            needs.append(Need(colour, strand, units_to_buy(strand, of), warning(strand, of), of))
        lists.append(tuple(needs))
    return tuple(lists)


@given(need_lists())
def test_one_list_is_never_short_and_never_dearer_than_lists_apart(lists):
    """For every colour the units hold all generous figures together; they are at most those of lists
    apart; and no thread is lost, added or told twice."""
    shared = shared_needs(lists)
    asked = {(need.card.id, need.colour.number) for needs in lists for need in needs}
    assert sorted((line.card.id, line.colour.number) for line in shared) == sorted(asked)
    for line in shared:
        of_it = [
            need
            for needs in lists
            for need in needs
            if (need.card.id, need.colour) == (line.card.id, line.colour)
        ]
        held_m = line.units * line.card.length_m * line.card.strands
        assert held_m >= sum(need.strand.generous_m for need in of_it) - 1e-6
        assert line.units_apart == sum(need.units for need in of_it)
        assert 1 <= line.units <= line.units_apart


@given(need_lists())
def test_the_list_of_one_pattern_is_that_pattern_s_own(lists):
    own = {(need.card.id, need.colour.number): need for need in lists[0]}
    shared = shared_needs(lists[:1])
    assert len(shared) == len(own)
    for line in shared:
        need = own[line.card.id, line.colour.number]
        assert (line.units, line.units_apart, line.strand, line.warning) == (
            need.units,
            need.units,
            need.strand,
            need.warning,
        )


@given(need_lists())
def test_another_pattern_never_makes_a_list_shorter(lists):
    before = {(line.card.id, line.colour.number): line.units for line in shared_needs(lists[:-1])}
    after = {(line.card.id, line.colour.number): line.units for line in shared_needs(lists)}
    assert all(after[thread] >= units for thread, units in before.items())


def test_what_is_left_of_a_skein_serves_the_next_design():
    """By hand: 20, 20 and 7 m of a skein of 48 m are one skein, and apart they would be three."""
    lists = tuple((Need(MOSS, Lengths(m, m, m), 1, "", card()),) for m in (20.0, 20.0, 7.0))
    (line,) = shared_needs(lists)
    assert (line.units, line.units_apart) == (1, 3)
    assert line.warning == "One skein will only just do: start no length too long."


# --- beads ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("sewn", "bought"), [(1, 6), (50, 55), (51, 57), (60, 66), (61, 68), (100, 110), (300, 330)]
)
def test_spare_beads_are_a_tenth_and_five_at_least(sewn, bought):
    """By hand; one in ten and never fewer than five: common practice, no source."""
    assert beads_with_spares(sewn) == bought


def test_a_fraction_is_bought_for_with_its_colour():
    """A quarter stitch alone makes its colour part of the list."""
    drawn = pattern("m..", fractions=(Fraction(2, 1, "t", Stitch.QUARTER, None),))
    bought = figures(drawn, piece()).cloths[0].needs[0][1]
    lengths = {need.colour.name: need.strand.usual_m for need in bought}
    assert 0 < lengths["clay"] < lengths["moss"]


def test_two_of_a_kind_are_both_and_more_are_all_of_them():
    assert all_of(2, "cloth") == "both cloths"
    assert all_of(4, "berry") == "all 4 berries"


def test_rows_come_by_number_whatever_the_order_of_the_key():
    """As the threads hang in a shop. A card's own come before those of another."""
    soot, moss = key_line("s", SOOT), key_line("m", MOSS)
    glow = key_line("g", RIME, of=BRAID)
    for key in ((glow, soot, moss), (moss, glow, soot)):
        of = replace(pattern("smg"), key=key)
        (table,) = buy_tables(figures(of, piece()))
        numbers = [row.colour.number for row in table.rows]
        assert numbers == [*sorted((SOOT.number, MOSS.number)), "G1"]


def test_numbers_of_colours_are_sorted_as_they_count():
    assert sorted(["E10", "07", "310", "E2", "9", "B5200"], key=by_number) == [
        *("07", "9", "310", "B5200", "E2", "E10"),
    ]
