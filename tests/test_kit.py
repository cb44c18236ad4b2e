"""The kit: what is bought for one pattern or for several, what it costs, and for whom it is written."""

import csv
import io
import json
from dataclasses import replace
from decimal import Decimal

import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.cli import main
from packetgen.load import load_content
from packetgen.model import Bead, BeadCard, Price
from packetgen.reckon.cutting import FAT_QUARTER, pieces_from
from packetgen.reckon.figures import figures
from packetgen.reckon.kit import cost_of
from packetgen.render.kit import kit_of, kit_table
from packetgen.render.kit_data import COLUMNS, as_csv, as_json, safe
from tests.content_builder import BEADS, CLOTH, build
from tests.content_builder import MOSS as CARD
from tests.demo_patterns import CONTENT
from tests.stitching import HERE, MOSS, card, option, pattern, piece, thread_set

EUR = "EUR"


def price(amount: str, currency: str = EUR) -> Price:
    return Price(Decimal(amount), currency)


DEW = BeadCard("dew", "Dew", 2.2, 100, {MOSS.number: MOSS}, price("2.50"))


def beads(number: int, of: BeadCard = DEW) -> tuple[Bead, ...]:
    return tuple(Bead(of, MOSS, (1 + i % 9, 1), HERE) for i in range(number))


def design(*rows: str, thread=None, cloth_price=None, **more):
    """Figures of a small pattern whose thread and cloth may have a price."""
    cloth = option(14)
    cloth = replace(cloth, cloth=replace(cloth.cloth, price=cloth_price))
    sets = (thread_set(2, replace(card(), price=thread)),)
    drawn = pattern(*(rows or ("mmm", "ttt")), sets=sets, cloths=(cloth,), **more)
    return figures(drawn, piece(900, 900))


# --- the stitcher's own piece of cloth ------------------------------------------------------------


def test_a_piece_of_cloth_that_lies_in_the_cupboard_is_reckoned_both_ways_round():
    """By hand: the robin on 28 count is cut 201.5 × 212.4 mm, rounded up 205 × 215 mm.
    50 × 70 cm take 2 × 3 upright (410 × 645) and 2 × 3 turned (430 × 615): 6, and no mixture gives more."""
    words = ["kit", "robin-on-the-spade", "--content", str(CONTENT), "--from", "50 x 70 cm"]
    result = CliRunner().invoke(main, words)
    assert result.exit_code == 0, result.output
    *_, said, how = result.stdout.splitlines()
    assert how == "Pieces are counted by inches and by centimetres: the smaller number is given."
    assert said == "Robin on the Spade: 6 (all upright 6, all turned 6)"


@pytest.mark.parametrize(
    "size", ["50 cm", "50 x cm", "a x b cm", "50 x 70", "0 x 70 cm", "5 x 7 ell"]
)
def test_what_is_no_size_of_cloth_is_told(size):
    result = CliRunner().invoke(main, ["kit", "--content", str(CONTENT), "--from", size])
    assert result.exit_code == 2 and "no size of cloth" in result.output


# --- prices on cards ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("written", "amount"),
    [("1.40 EUR", "1.40"), ("12 EUR", "12"), ("0.125EUR", "0.125"), ("3 EUR  # a skein", "3")],
)
def test_a_price_is_read_to_its_last_figure(tmp_path, written, amount):
    """An amount and the three letters of a currency as ISO 4217 has them; no binary fraction between."""
    folder = build(tmp_path / "content", {CARD: ("length: 8 m", f"length: 8 m\nprice: {written}")})
    content, problems = load_content(folder)
    assert list(problems) == []
    read = content.series[0].thread_sets[0].card.price
    assert read == price(amount) and str(read.amount) == amount


def test_a_card_need_not_say_what_it_costs(tmp_path):
    content, _ = load_content(build(tmp_path / "content", {}))
    drawn = content.series[0].patterns[0]
    assert drawn.thread_sets[0].card.price is None
    assert drawn.cloths[0].cloth.price is None
    assert drawn.beads[0].card.price is None


def test_cloth_and_beads_have_prices_too(tmp_path):
    changes = {
        CLOTH: ("count: 28", "count: 28\nprice: 11.80 EUR"),
        BEADS: ("packet: 300", "packet: 300\nprice: 2.60 EUR"),
    }
    content, problems = load_content(build(tmp_path / "content", changes))
    assert list(problems) == []
    drawn = content.series[0].patterns[0]
    assert drawn.cloths[0].cloth.price == price("11.80")
    assert drawn.beads[0].card.price == price("2.60")


# --- what it costs --------------------------------------------------------------------------------


def test_each_line_costs_its_units_and_the_whole_is_exact():
    """By hand: two colours at 1.35 are 2.70, a packet of beads 2.50, a fat quarter 9.10: 14.30."""
    kit = kit_of(
        (design(thread=price("1.35"), cloth_price=price("9.10"), beads=beads(3)),), None, None
    )
    assert [cost_of(line).amount for line in kit.threads] == [Decimal("1.35")] * 2
    assert kit.totals == (price("14.30"),)
    assert kit.without_price == ()
    said = kit_table(
        (design(thread=price("1.35"), cloth_price=price("9.10"), beads=beads(3)),), None, None
    )
    assert "Cost of threads, beads and cloth: 14.30 EUR" in said and "no price" not in said


def test_what_has_no_price_is_named_and_not_summed():
    kit_ = kit_of((design(thread=price("1.35")),), None, None)
    assert kit_.totals == (price("2.70"),)
    said = kit_table((design(thread=price("1.35")),), None, None)
    assert "Cost of threads: 2.70 EUR" in said
    assert "Not in it, since no price is given: Cloth 14." in said


def test_without_any_price_nothing_is_said_of_money():
    said = kit_table((design(beads=()),), None, None)
    assert "Cost" not in said and "price" not in said


def test_two_currencies_are_two_totals():
    kit = kit_of((design(thread=price("1.35", "NOK"), cloth_price=price("9.10")),), None, None)
    assert kit.totals == (price("9.10"), price("2.70", "NOK"))


@settings(deadline=None)
@given(
    st.lists(st.tuples(st.integers(1, 999_999), st.sampled_from(["EUR", "NOK", "CHF"])), max_size=3)
)
def test_totals_are_the_sum_of_the_lines_to_the_cent(prices):
    prices = [Price(Decimal(cents) / 100, currency) for cents, currency in prices]
    thread, cloth, bead = (prices + [None] * 3)[:3]
    made = design(thread=thread, cloth_price=cloth, beads=beads(2, replace(DEW, price=bead)))
    kit = kit_of((made,), None, None)
    costs = [cost for line in kit.lines if (cost := cost_of(line))]
    for total in kit.totals:
        of_it = [cost.amount for cost in costs if cost.currency == total.currency]
        assert total.amount == sum(of_it)
    assert {total.currency for total in kit.totals} == {cost.currency for cost in costs}
    assert len(costs) + len(kit.without_price) == len(kit.lines)


# --- beads and cloth of several patterns ------------------------------------------------------------


def test_beads_of_several_patterns_are_summed_before_spares_and_packets():
    """By hand: 40 and 40 sewn on. Apart 45 each, a packet of 100 each: two. Together 88: one packet."""
    both = (design(beads=beads(40)), design(beads=beads(40)))
    (line,) = kit_of(both, None, None).beads
    assert (line.sewn, line.with_spares, line.units, line.units_apart) == (80, 88, 1, 2)


@settings(deadline=None)
@given(st.lists(st.integers(1, 250), min_size=1, max_size=4))
def test_beads_together_are_enough_and_never_dearer(numbers):
    (line,) = kit_of(tuple(design(beads=beads(n)) for n in numbers), None, None).beads
    assert line.sewn == sum(numbers)
    assert line.with_spares >= line.sewn + 5
    assert line.units * 100 >= line.with_spares
    assert line.units <= line.units_apart


def test_designs_on_one_cloth_share_its_fat_quarters():
    """By hand: 140 × 98 stitches at 14 count are 10 × 7 in, with 30 mm round 314 × 237.8 mm, cut 31.5 × 24 cm.
    On 55.88 × 45.72 cm one lies upright with one turned beside it, 31.5 + 24 = 55.5 cm wide; a third has
    no room above or below. So three take two fat quarters."""
    one = design(*["m" * 140] * 98)
    kit = kit_of((one,) * 3, None, None)
    (line,) = kit.cloths
    assert (len(line.pieces), line.units, line.units_apart) == (3, 2, 3)


@settings(deadline=None, max_examples=40)
@given(st.lists(st.tuples(st.integers(1, 320), st.integers(1, 320)), min_size=1, max_size=5))
def test_cloth_is_never_short(sizes):
    """Every design has its piece; the fat quarters are no smaller than all pieces together; and what no
    fat quarter holds is to be bought by measure."""
    made = tuple(design(*["m" * wide] * high) for wide, high in sizes)
    (line,) = kit_of(made, None, None).cloths
    assert len(line.pieces) + len(line.by_measure) == len(sizes)
    area = sum(size.width_mm * size.height_mm for size in line.pieces)
    assert line.units * FAT_QUARTER.width_mm * FAT_QUARTER.height_mm >= area - 1e-3
    assert line.units <= line.units_apart == len(line.pieces)
    assert all(pieces_from(FAT_QUARTER, size) >= 1 for size in line.pieces)
    assert all(pieces_from(FAT_QUARTER, size) == 0 for size in line.by_measure)


def test_a_design_too_large_for_a_fat_quarter_is_bought_by_measure():
    """By hand: 280 stitches at 14 count are 20 in both ways, and 30 mm round them make 568 mm: 57 cm."""
    large = design(*["m" * 280] * 280, cloth_price=price("9.10"), thread=price("1"))
    kit = kit_of((large,), None, None)
    (line,) = kit.cloths
    assert (line.units, len(line.by_measure)) == (0, 1)
    assert cost_of(line) is None
    said = kit_table((large,), None, None)
    assert "a piece of 22 1/2 × 22 1/2 in (57 × 57 cm), too large for a fat quarter" in said
    assert "no price is given: Cloth 14 by measure" in said


# --- the three formats ----------------------------------------------------------------------------


def listed(*names: str, form: str) -> bytes:
    result = CliRunner().invoke(main, ["kit", *names, "--format", form, "--content", str(CONTENT)])
    assert result.exit_code == 0, result.output
    return result.stdout_bytes


def test_a_table_of_values_is_as_rfc_4180_says(demo):
    """One header line, CRLF at every line's end, as many fields in each: RFC 4180, section 2."""
    data = listed(form="csv")
    text = data.decode("utf-8")
    assert text.endswith("\r\n") and "\n" not in text.replace("\r\n", "")
    rows = list(csv.reader(io.StringIO(text, newline="")))
    assert tuple(rows[0]) == COLUMNS
    assert {len(row) for row in rows} == {len(COLUMNS)}
    kit = kit_of(demo.reckoned[0].figures, None, None)
    assert len(rows) - 1 == len(kit.lines)
    things = [dict(zip(rows[0], row)) for row in rows[1:]]
    assert {row["item"] for row in things} == {"thread", "beads", "cloth"}
    for row, line in zip(things, kit.lines):
        assert int(row["quantity"]) == line.units
        if row["cost"]:
            assert Decimal(row["cost"]) == Decimal(row["price"]) * line.units


def test_json_says_the_same_and_each_key_its_unit(demo):
    data = json.loads(listed(form="json"))
    kit = kit_of(demo.reckoned[0].figures, None, None)
    assert [line["units"] for line in data["threads"]] == [line.units for line in kit.threads]
    assert [line["beads_with_spares"] for line in data["beads"]] == [
        line.with_spares for line in kit.beads
    ]
    assert [line["units"] for line in data["cloths"]] == [line.units for line in kit.cloths]
    assert [t["amount"] for t in data["totals"]] == [str(total.amount) for total in kit.totals]
    assert data["fat_quarter_mm"] == {"width": 457.2, "height": 558.8}
    lengths = {
        key for line in data["threads"] for key, value in line.items() if isinstance(value, float)
    }
    assert lengths and all(key.endswith("_m") for key in lengths)
    assert all(key.endswith("_mm") for d in data["designs"] for key in d if key.startswith("cut"))


def test_the_table_says_what_the_others_say(demo):
    table = listed(form="table").decode("utf-8")
    kit = kit_of(demo.reckoned[0].figures, None, None)
    for line in kit.threads:
        row = next(
            row
            for row in table.splitlines()
            if row.startswith(f"{line.colour.number} {line.colour.name} ")
        )
        assert f" {line.units}{'*' if line.warning else ' '} " in row
    for total in kit.totals:
        assert f"{total.amount} {total.currency}" in table
    assert "Usual lengths; a skein of 8.0 m and 6 strands holds 48.0 m of single strand.\n" in table
    assert "Usual lengths; a reel holds 11.0 m of single strand.\n" in table
    assert "Dewdrop Glass" in table and "fat quarters: 18 × 22 in" in table
    assert max(map(len, table.splitlines())) <= 80


def test_a_pattern_or_its_series_may_be_named(demo):
    one, whole = listed("squash-barrow", form="json"), listed("potting-bench-almanac", form="json")
    assert [d["pattern"] for d in json.loads(one)["designs"]] == ["squash-barrow"]
    assert whole == listed(form="json")
    two = json.loads(listed("squash-barrow", "foxglove-can", form="json"))
    assert [d["pattern"] for d in two["designs"]] == ["foxglove-can", "squash-barrow"]


def test_one_pattern_s_kit_is_its_packet_s_list(demo):
    for figure in demo.reckoned[0].figures:
        kit = kit_of((figure,), None, None)
        bought = {(n.card.id, n.colour.number): n.units for n in figure.cloths[0].needs[0][1]}
        assert {(n.card.id, n.colour.number): n.units for n in kit.threads} == bought
        assert [line.units for line in kit.beads] == [need.packets for need in figure.beads]


@pytest.mark.parametrize("begins", ["=", "+", "-", "@", "\t", "\r"])
def test_no_cell_is_taken_for_a_formula(begins):
    """A spreadsheet reckons what begins with one of these; behind an apostrophe it shows it."""
    assert safe(f"{begins}1+1") == f"'{begins}1+1"
    assert safe("moss = green") == "moss = green"
    odd = replace(MOSS, name=f"{begins}SUM(A1)")
    of = replace(card(), colours={"M1": odd})
    drawn = pattern("mm", sets=(thread_set(2, of),))
    drawn = replace(drawn, key=(replace(drawn.key[0], threads={"bramble": (odd,)}), *drawn.key[1:]))
    kit = kit_of((figures(drawn, piece()),), None, None)
    for row in csv.reader(io.StringIO(as_csv(kit), newline="")):
        assert not any(cell.startswith(("=", "+", "-", "@", "\t", "\r")) for cell in row)
    assert json.loads(as_json(kit))["threads"][0]["name"] == odd.name


def test_commas_and_quotes_in_names_survive():
    odd = replace(MOSS, name='moss, "the old"')
    of = replace(card(), colours={"M1": odd})
    drawn = pattern("mm", sets=(thread_set(2, of),))
    drawn = replace(drawn, key=(replace(drawn.key[0], threads={"bramble": (odd,)}), *drawn.key[1:]))
    text = as_csv(kit_of((figures(drawn, piece()),), None, None))
    assert list(csv.DictReader(io.StringIO(text, newline="")))[0]["colour"] == odd.name


def test_a_form_that_nobody_knows_is_wrong_usage():
    result = CliRunner().invoke(main, ["kit", "--format", "pdf", "--content", str(CONTENT)])
    assert result.exit_code == 2
    assert "'pdf' is not one of table, csv, json" in result.output
