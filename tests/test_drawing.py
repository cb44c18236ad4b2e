"""The chart as a drawing: what is stitched is what is drawn."""

import re
from xml.etree import ElementTree

import pytest

from packetgen.chart.diagrams import diagram
from packetgen.chart.drawing import look_of, over, overview, page_map, under, whole
from packetgen.chart.paintbox import tint
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.chart.tiling import tiles
from packetgen.model import Corner, Fraction, Knot, Line, Stitch
from packetgen.reckon.fit import fit
from packetgen.reckon.sizes import Size
from tests.stitching import HERE, MOSS, pattern, piece

SVG = "{http://www.w3.org/2000/svg}"
SYMBOLS = {"m": "\ue001", "t": "\ue002", "s": "\ue003"}


def drawn(chart, symbols=SYMBOLS):
    return chart, look_of(chart, symbols)


def runs_of(svg: str, colour: str) -> list[tuple[int, int, int]]:
    """(column, row, length) from 1 of every tinted run of a colour."""
    result = []
    for path in ElementTree.fromstring(svg).iter(f"{SVG}path"):
        if path.get("stroke") == colour:
            for x, y, length in re.findall(r"M(\d+) ([\d.]+)h(\d+)", path.get("d")):
                result.append((int(x) + 1, int(float(y) + 0.5), int(length)))
    return result


def test_a_row_of_stitches_is_one_stroke_of_its_tint():
    chart, look = drawn(pattern(".mmm.", "m...m"))
    (tile,) = tiles(5, 2, 60, 75)
    svg = under(chart, tile, look)
    assert sorted(runs_of(svg, tint(MOSS.hex))) == [(1, 2, 1), (2, 1, 3), (5, 2, 1)]


def test_the_second_page_repeats_two_columns_and_shades_them():
    chart, look = drawn(pattern("m" * 80))
    second = tiles(80, 1, 60, 75)[1]
    svg = under(chart, second, look)
    assert runs_of(svg, tint(MOSS.hex)) == [(39, 1, 42)]
    shades = [r for r in ElementTree.fromstring(svg).iter(f"{SVG}rect") if r.get("fill-opacity")]
    assert [(r.get("x"), r.get("width")) for r in shades] == [("38", "2")]


def test_there_is_a_line_round_every_stitch_and_a_heavier_one_each_ten():
    chart, look = drawn(pattern(*["m" * 25] * 12))
    (tile,) = tiles(25, 12, 60, 75)
    paths = [p for p in ElementTree.fromstring(under(chart, tile, look)).iter(f"{SVG}path")]
    thin, heavy = [p for p in paths if "V" in p.get("d")]
    assert float(heavy.get("stroke-width")) > 2 * float(thin.get("stroke-width"))
    assert set(re.findall(r"M(\d+) 0V", heavy.get("d"))) == {"0", "10", "20"}
    assert len(re.findall(r"V", thin.get("d"))) + len(re.findall(r"V", heavy.get("d"))) == 26
    assert len(re.findall(r"H", thin.get("d"))) + len(re.findall(r"H", heavy.get("d"))) == 13


def test_arrows_point_at_the_middle():
    """Four arrows on a chart of one page; their tips are at the middle column and row."""
    chart, look = drawn(pattern(*["m" * 9] * 5))
    (tile,) = tiles(9, 5, 60, 75)
    shapes = list(ElementTree.fromstring(under(chart, tile, look)).iter(f"{SVG}polygon"))
    tips = {shape.get("points").split()[0] for shape in shapes}
    assert tips == {"4.5,0", "4.5,5", "0,2.5", "9,2.5"}


def test_backstitch_and_knots_lie_on_top_where_they_are_worked():
    chart, look = drawn(
        pattern(
            "mmmm",
            lines=(Line("t", ((1, 1), (3, 1.5)), False, HERE),),
            knots=(Knot("s", (2.5, 1.5), HERE),),
        )
    )
    (tile,) = tiles(4, 1, 60, 75)
    svg = ElementTree.fromstring(over(chart, tile, look))
    assert [line.get("points") for line in svg.iter(f"{SVG}polyline")] == ["0,0 2,0.5"] * 2
    (knot,) = svg.iter(f"{SVG}circle")
    assert (knot.get("cx"), knot.get("cy")) == ("1.5", "0.5")


def test_a_page_with_nothing_on_top_has_no_upper_sheet():
    chart, look = drawn(pattern("mmmm"))
    assert over(chart, tiles(4, 1, 60, 75)[0], look) == ""


@pytest.mark.parametrize(
    ("stitch", "corner", "covered"),
    [
        (Stitch.THREE_QUARTER, Corner.TOP_LEFT, "1,0 1,1 0,1"),
        (Stitch.THREE_QUARTER, Corner.BOTTOM_RIGHT, "0,0 1,0 0,1"),
        (Stitch.QUARTER, Corner.TOP_RIGHT, "1,0 0.5,0 0.5,0.5 1,0.5"),
        (Stitch.HALF, None, "0,1 1,0 1,1"),
    ],
)
def test_a_fraction_tints_the_part_of_the_cell_that_it_covers(stitch, corner, covered):
    chart, look = drawn(pattern("..", fractions=(Fraction(1, 1, "m", stitch, corner),)))
    svg = ElementTree.fromstring(under(chart, tiles(2, 1, 60, 75)[0], look))
    points = [p.get("points") for p in svg.iter(f"{SVG}polygon") if p.get("fill") == tint(MOSS.hex)]
    assert points == [covered]


def test_the_chart_in_one_piece_carries_every_symbol():
    rows = (".mm.", "tttt", "s..s")
    chart, look = drawn(pattern(*rows))
    svg = ElementTree.fromstring(whole(chart, look, "Potting Symbols"))
    seen = [["."] * 4 for _ in rows]
    back = {symbol: mark for mark, symbol in SYMBOLS.items()}
    for text in svg.iter(f"{SVG}text"):
        for offset, symbol in enumerate(text.text):
            seen[int(text.get("y")) - 1][int(text.get("x")) + offset] = back[symbol]
    assert tuple("".join(row) for row in seen) == rows


def test_the_overview_frames_every_page():
    chart, look = drawn(pattern(*["m" * 80] * 90))
    layout = tiles(80, 90, 60, 75)
    frames = list(ElementTree.fromstring(overview(chart, layout, look)).iter(f"{SVG}rect"))
    assert len(frames) == len(layout) == 4


def test_the_page_map_fills_this_page_alone():
    layout = tiles(80, 90, 60, 75)
    boxes = list(ElementTree.fromstring(page_map(layout, layout[2])).iter(f"{SVG}rect"))
    filled = [index for index, box in enumerate(boxes) if box.get("fill") != "#ffffff"]
    assert filled == [2]


@pytest.mark.parametrize(
    "kind",
    ["full", "half", "half back", "three-quarter", "quarter", "backstitch", "long", "knot", "bead"],
)
def test_every_stitch_has_a_diagram(kind):
    shapes = [e for e in ElementTree.fromstring(diagram(kind)).iter() if e.get("stroke-width")]
    assert shapes


def test_the_finishing_piece_is_drawn_to_scale_with_the_card_on_it():
    """User units are millimetres: the card of the drawing has the card's size at the card's place."""
    size = Size(150, 100)
    laid = fit(size, 1.0, piece())
    svg = ElementTree.fromstring(piece_drawing(piece(), laid, size))
    card, stitching = svg.iter(f"{SVG}rect")
    assert [float(card.get(name)) for name in ("x", "y", "width", "height")] == [20, 35, 160, 110]
    assert [float(stitching.get(name)) for name in ("width", "height")] == [150, 100]
    texts = [text.text for text in svg.iter(f"{SVG}text")]
    assert "5.91 in × 3.94 in" in texts and "7.87 in  20.0 cm" in texts
