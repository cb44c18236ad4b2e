"""One list for the whole series: what is shared is bought once, what each design has is summed."""

import csv
import io
import json
from dataclasses import replace

from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.cli import main
from packetgen.model import Coating, Glue, Hardware, Magnets, Part, Trim
from packetgen.pipeline import proof
from packetgen.reckon.figures import Figures
from packetgen.reckon.kit import Chosen, kit
from packetgen.reckon.series_list import finishing_rows, series_list
from packetgen.reckon.series_magnets import series_figures
from tests.demo_patterns import CONTENT
from tests.stitching import SAGE, pattern, piece, series

BOARD = piece(
    hardware=(Hardware("wood screw", 4, "3 × 12 mm"),),
    glues=(Glue("wood glue", 24.0, "legs and shelf"),),
)


def chosen(figures: Figures, cloth: int = 0) -> Chosen:
    return Chosen(figures, figures.cloths[cloth], figures.pattern.thread_sets[0])


def designs(*sizes: tuple[int, int], finish=BOARD) -> list[Chosen]:
    patterns = [
        pattern(*["m" * wide] * high, id=f"design-{n}", title=f"Design {n}")
        for n, (wide, high) in enumerate(sizes)
    ]
    return [chosen(figures) for figures in series_figures(series(*patterns, finish=finish))]


def test_the_piece_is_bought_once_however_many_designs_hang_on_it():
    one, three = designs((20, 20)), designs((20, 20), (20, 20), (20, 20))
    assert series_list(one, BOARD).once == series_list(three, BOARD).once


def test_magnets_are_for_the_piece_and_washers_for_each_design():
    """Four places: four magnets on the wood; three designs have twelve washers."""
    made = series_list(designs((50, 50), (50, 50), (50, 50)), BOARD)
    assert (made.once.magnets, made.mounting.washers) == (4, 12)


def test_wood_is_summed_by_its_thickness():
    """By hand: two boards of 100 × 50 mm and one of 20 × 20 mm, 6 mm thick; one of 10 × 10 mm, 3 mm thick."""
    coat = (Coating(SAGE, 1, "both"),)

    def part(name, wide, high, thick, pieces):
        outline = ((0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high))
        return Part(name, outline, (0.0, 0.0), thick, pieces, coat)

    parts = part("hook", 10, 10, 3, 1), part("side", 100, 50, 6, 2), part("peg", 20, 20, 6, 1)
    made = series_list(designs((20, 20)), replace(BOARD, parts=parts))
    assert [(board.thickness_mm, board.area_mm2) for board in made.once.boards] == [
        (6, 10400),
        (3, 100),
    ]
    said = [row.detail.split("; ") for row in finishing_rows(made) if row.item == "wood"]
    assert [row[0] for row in said] == ["for side (2 pieces) and peg", "for hook"]
    areas = [row[3].partition(",")[0] for row in said]
    assert areas == ["17 square inches", "1 square inch"], "16.1 and 0.155, rounded up"
    assert [row[2] for row in said] == [
        "the longest piece 100 mm (3.94 in), the widest 50 mm (1.97 in)",
        "the longest piece 10 mm (0.39 in), the widest 10 mm (0.39 in)",
    ]


def test_the_wood_of_a_board_seen_from_its_edge_is_that_board():
    """By hand: a foot of 190 × 60 mm lies flat, and is sawn from a board of 12 mm: 11,400 mm²."""
    outline = ((0.0, 0.0), (190.0, 0.0), (190.0, 12.0), (0.0, 12.0))
    foot = Part("foot", outline, (0.0, 0.0), 60, 1, (Coating(SAGE, 1, "both"),))
    made = series_list(designs((20, 20)), replace(BOARD, parts=(foot,)))
    assert [(board.thickness_mm, board.area_mm2) for board in made.once.boards] == [(12, 11400)]


def test_mounting_is_summed_design_by_design():
    """By hand, 14 count: 70 × 70 stitches are 5 in, 127 mm; the card has 5 mm more on each side, 137 mm; the
    wadding is 1 mm less on each side, 135 mm, the backing 10 mm more, 157 mm. A straight trim of no width runs
    4 × 137 mm and 20 mm more: 568 mm, which is cut at 57 cm or at 179 eighths of an inch, each for itself, as the
    packets say."""
    listed = series_list(designs((70, 70), (70, 70)), BOARD)
    made = listed.mounting
    assert [(s.width_mm, s.height_mm) for s in made.cards] == [(137, 137)] * 2
    assert [s.width_mm for s in made.wadding] == [135, 135]
    assert [s.width_mm for s in made.backing] == [157, 157]
    assert made.trims_mm == (568, 568)
    (trim,) = [row for row in finishing_rows(listed) if row.item == "trim"]
    assert (trim.quantity, trim.unit) == (114, "cm")
    assert trim.detail == "44 3/4 in; a piece for each design", "twice 22 3/8"
    (alone,) = [
        row for row in finishing_rows(series_list(designs((70, 70)), BOARD)) if row.item == "trim"
    ]
    assert alone.detail == "22 3/8 in"


def test_backings_share_fat_quarters():
    """By hand: of 18 × 22 in (457 × 559 mm), pieces of 160 mm come two by three."""
    assert series_list(designs(*[(70, 70)] * 6), BOARD).mounting.backing_fat_quarters == 1
    assert series_list(designs(*[(70, 70)] * 7), BOARD).mounting.backing_fat_quarters == 2


def test_a_backing_larger_than_a_fat_quarter_is_bought_by_measure():
    huge = piece(1000, 1000)
    made = series_list(designs((400, 20), finish=huge), huge)
    assert made.mounting.backing_fat_quarters == 0 and len(made.mounting.backing_by_measure) == 1
    said = [row.name for row in finishing_rows(made) if row.item == "backing"]
    assert said == ["backing fabric by measure"]


def test_every_line_is_told_with_its_unit():
    glimpsed = {row.item: row for row in finishing_rows(series_list(designs((70, 70)), BOARD))}
    assert list(glimpsed) == [
        *("wood", "paint", "glue", "hardware", "magnet"),
        *("card", "wadding", "backing", "trim", "washer"),
    ]
    assert (glimpsed["hardware"].quantity, glimpsed["hardware"].unit) == (4, "pieces")
    assert (glimpsed["backing"].quantity, glimpsed["backing"].unit) == (1, "fat quarter")
    assert glimpsed["card"].detail == "5 1/2 × 5 1/2 in (14 × 14 cm)"


def test_a_design_too_small_for_magnets_needs_no_washers():
    """Four for each of the two large ones; and where all are small, no magnets either."""
    made = series_list(designs((50, 50), (50, 50), (20, 12)), BOARD)
    assert (made.once.magnets, made.mounting.washers) == (4, 8)
    small = series_list(designs((20, 12)), BOARD)
    assert (small.once.magnets, small.mounting.washers) == (0, 0)
    assert not {"magnet", "washer"} & {row.item for row in finishing_rows(small)}


def test_a_piece_without_magnets_needs_no_washers():
    bare = replace(BOARD, magnets=Magnets(0, 10.0, 2.0, 18.0))
    made = series_list(designs((20, 20), finish=bare), bare)
    assert not {"washer", "magnet"} & {row.item for row in finishing_rows(made)}


@settings(max_examples=25, deadline=None)
@given(st.lists(st.tuples(st.integers(5, 90), st.integers(5, 80)), min_size=1, max_size=5))
def test_a_list_for_several_designs_is_the_sum_of_their_mountings(sizes):
    """Trim, cards and magnets are no remnants: two lists together are one list."""
    gathered = replace(BOARD, trim=Trim("gathered", 1.5, 20.0))
    all_of_them = designs(*sizes, finish=gathered)
    whole = series_list(all_of_them, gathered).mounting
    single = [series_list([one], gathered).mounting for one in all_of_them]
    assert whole.trims_mm == tuple(mm for one in single for mm in one.trims_mm)
    assert whole.cards == tuple(card for one in single for card in one.cards)
    assert whole.washers == sum(one.washers for one in single)
    assert whole.backing_fat_quarters <= sum(one.backing_fat_quarters for one in single)


def test_the_demo_has_one_list():
    """Every colour of every demo pattern is on its kit, and the bench's own paints once each."""
    (demo,) = proof(CONTENT).reckoned
    all_designs = [chosen(figures) for figures in demo.figures]
    made = series_list(all_designs, demo.series.finish)
    paints = [row.name for row in finishing_rows(made) if row.item == "paint"]
    assert paints == [paint.name for paint in demo.series.finish.paints]
    wanted = {(n.card.id, n.colour.number) for f in demo.figures for n in f.cloths[0].needs[0][1]}
    assert {(line.card.id, line.colour.number) for line in kit(all_designs).threads} == wanted


def test_the_kit_of_a_series_lists_its_finishing_once_when_asked():
    """In each format, and not unless it is asked for."""

    def kit_of_all(*words):
        result = CliRunner().invoke(main, ["kit", "--content", str(CONTENT), *words])
        assert result.exit_code == 0, result.output
        return result.stdout

    assert "Finishing piece" not in kit_of_all()
    table = kit_of_all("--finishing")
    assert table.count("\nmagnet: 4 pieces") == 1 and table.count("\nsteel washer: 32 pieces") == 1
    assert max(map(len, table.splitlines())) <= 80
    lines = list(csv.DictReader(io.StringIO(kit_of_all("--finishing", "--format", "csv"))))
    assert [row["quantity"] for row in lines if row["item"] == "washer"] == ["32"]
    listed = json.loads(kit_of_all("--finishing", "--format", "json"))["finishing"]
    assert {row["name"] for row in listed} >= {"soft sage", "wood glue", "wood screw", "magnet"}
    (thin, *_) = [
        row for row in finishing_rows(series_list(designs((20, 20)), BOARD)) if row.item == "wood"
    ]
    assert thin.detail.endswith(" square inches, and what the saw takes besides")
