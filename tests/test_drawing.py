"""The chart as a description and as a drawing: what is stitched is what is shown."""

import re
from dataclasses import replace
from xml.etree import ElementTree

import pytest

from packetgen.chart.diagrams import diagram
from packetgen.chart.drawing import chart, line_sample, overview
from packetgen.chart.paintbox import INK, PAPER, tint
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.chart.sheet import Manner, look_of, sheet, whole_tile
from packetgen.chart.symbols import BLANK
from packetgen.chart.tiling import tiles
from packetgen.colour import contrast
from packetgen.model import Bead, BeadCard, Corner, Daisy, Fraction, Knot, Line, Stitch
from packetgen.reckon.fit import fit
from packetgen.reckon.sizes import Size
from tests.stitching import CLAY, HERE, MOSS, SOOT, pattern, piece

SVG = "{http://www.w3.org/2000/svg}"
SYMBOLS = {"m": "\ue001", "t": "\ue002", "s": "\ue003"}


def shown(of, tile=None, manner=Manner.TINTED):
    return sheet(of, tile or whole_tile(of), look_of(of, SYMBOLS, manner))


# --- what a page holds ----------------------------------------------------------------------------


def test_a_row_of_stitches_is_one_run_of_its_tint():
    page = shown(pattern(".mmm.", "m...m"))
    assert page.runs == {tint(MOSS.hex): ((1, 0, 3), (0, 1, 1), (4, 1, 1))}


def test_bare_cloth_has_a_character_of_its_own():
    assert shown(pattern(".m.", "t..")).symbol_rows == (
        f"{BLANK}\ue001{BLANK}",
        f"\ue002{BLANK}{BLANK}",
    )


def test_the_second_page_repeats_two_columns_and_shades_them():
    of = pattern("m" * 80)
    page = shown(of, tiles(80, 1, 60, 75)[1])
    assert page.runs == {tint(MOSS.hex): ((38, 0, 42),)}
    assert page.repeats == ((38, 0, 2, 1),)
    assert len(page.symbol_rows[0]) == 42


def test_there_is_a_line_round_every_stitch_and_a_heavier_one_each_ten():
    page = shown(pattern(*["m" * 25] * 12))
    assert page.columns(True) == (0, 10, 20)
    assert page.rows(True) == (0, 10)
    assert len(page.columns(True)) + len(page.columns(False)) == 26
    assert len(page.rows(True)) + len(page.rows(False)) == 13


@pytest.mark.parametrize(
    ("path", "frame"),
    [
        (((2, 1), (7, 1)), (0, -0.4, 9, 5)),
        (((1, 2), (1, 4)), (-0.4, 0, 9, 5)),
        (((10, 2), (10, 3), (8, 3)), (0, 0, 9.4, 5)),
        (((1, 6), (10, 6)), (0, 0, 9, 5.4)),
        (((2, 2), (7, 2)), (0, 0, 9, 5)),
        (((3, 1), (4, 2)), (0, 0, 9, 5)),  # only begins there
    ],
)
def test_the_frame_stands_clear_of_backstitch_on_the_edge_of_the_design(path, frame):
    page = shown(pattern(*["m" * 9] * 5, lines=(Line("s", path, False, HERE),)))
    assert page.frame == pytest.approx(frame)


def test_lines_are_drawn_whole_over_the_edges_of_the_design_and_end_where_the_next_page_begins():
    of = pattern("m" * 80, lines=(Line("s", ((40, 1), (40, 2)), False, HERE),))
    first, second = (shown(of, tile) for tile in tiles(80, 1, 60, 75))
    assert first.room == pytest.approx((-0.8, -0.8, first.right, 1.8))
    assert second.room == pytest.approx((second.left, -0.8, 80.8, 1.8))
    assert first.frame[2] == first.right and second.frame[0] == second.left


def test_arrows_point_at_the_middle():
    """Four arrows on a chart of one page; their tips are at the middle column and row."""
    tips = {outline[0] for outline in shown(pattern(*["m" * 9] * 5)).arrows}
    assert tips == {(4.5, 0), (4.5, 5), (0, 2.5), (9, 2.5)}


def test_a_page_shows_only_its_own_marks():
    of = pattern("m" * 40 + "t" * 40, knots=(Knot("s", (2.5, 1.5), HERE),))
    first, second = (shown(of, tile) for tile in tiles(80, 1, 60, 75))
    assert (first.marks, first.line_marks) == ({"m"}, {"s"})
    assert (second.marks, second.line_marks) == ({"m", "t"}, frozenset())


@pytest.mark.parametrize(
    ("stitch", "corner", "covered"),
    [
        (Stitch.THREE_QUARTER, Corner.TOP_LEFT, ((1, 0), (1, 1), (0, 1))),
        (Stitch.THREE_QUARTER, Corner.BOTTOM_RIGHT, ((0, 0), (1, 0), (0, 1))),
        (Stitch.QUARTER, Corner.TOP_RIGHT, ((1, 0), (0.5, 0), (0.5, 0.5), (1, 0.5))),
        (Stitch.HALF, None, ((0, 1), (1, 0), (1, 1))),
    ],
)
def test_a_fraction_tints_the_part_of_the_cell_that_it_covers(stitch, corner, covered):
    page = shown(pattern("..", fractions=(Fraction(1, 1, "m", stitch, corner),)))
    (fill,) = page.fills
    assert fill.outline == covered and fill.colour == tint(MOSS.hex)
    (small,) = page.small_symbols
    assert small.symbol == SYMBOLS["m"]
    assert 0 <= small.at[0] <= 0.5 and 0 <= small.at[1] <= 0.5


def test_lines_knots_and_daisies_lie_where_they_are_worked():
    page = shown(
        pattern(
            "mmmm",
            lines=(Line("t", ((1, 1), (3, 1.5)), False, HERE),),
            knots=(Knot("s", (2.5, 1.5), HERE),),
            daisies=(Daisy("t", (1, 2), (3, 2), HERE),),
        )
    )
    halo, line, *loop = page.strokes
    assert halo.points == line.points == ((0, 0), (2, 0.5))
    assert (halo.colour, line.colour) == (PAPER, CLAY.hex) and halo.width > line.width
    xs = [x for stroke in loop for x, _ in stroke.points]
    assert min(xs) == pytest.approx(0, abs=0.05) and max(xs) == pytest.approx(2, abs=0.2)
    (knot,) = page.dots
    assert knot.at == (1.5, 0.5)


def test_what_is_too_pale_for_white_paper_has_an_edge_of_ink():
    """WCAG 2.2, success criterion 1.4.11: what is no text has a contrast of 3:1 at least."""
    pale = replace(CLAY, hex="#f2efe2")
    assert contrast(pale.hex, PAPER) < 3 <= contrast(CLAY.hex, PAPER)
    for colour, edge in ((pale, INK), (CLAY, PAPER)):
        of = pattern(
            "mm",
            lines=(Line("t", ((1, 1), (3, 1)), False, HERE),),
            knots=(Knot("t", (2.5, 1.5), HERE),),
        )
        lines = tuple(
            replace(one, threads={name: (colour,) for name in one.threads})
            if one.mark == "t"
            else one
            for one in of.key
        )
        page = shown(replace(of, key=lines))
        assert [(one.colour, one.is_edge) for one in page.strokes] == [
            (edge, True),
            (colour.hex, False),
        ]
        assert [(dot.fill, dot.edge) for dot in page.dots] == [(colour.hex, edge)]
        assert edge in line_sample(colour.hex, (), 0.2)


# --- without colour ---------------------------------------------------------------------------------


def test_lines_as_dark_as_one_another_are_told_apart_by_dashes_in_colour_too():
    """A packet in colour may be printed in black and white."""
    lines = tuple(Line(mark, ((1, 1), (3, 1)), False, HERE) for mark in "mts")
    of = pattern("mts.", lines=lines)
    _, clay, soot = of.key
    night = replace(soot, threads={of.thread_sets[0].id: (replace(SOOT, hex="#101214"),)})
    dark = replace(of, key=(replace(clay, mark="m"), clay, night))

    def dashes(of, manner):
        return [look_of(of, SYMBOLS, manner).dashes[mark] for mark in "mts"]

    assert len(set(dashes(of, Manner.TINTED))) == 3  # L* 53, 57 and 41
    one, other, far = dashes(dark, Manner.TINTED)
    assert one == far != other
    assert len(set(dashes(dark, Manner.BLACK_AND_WHITE))) == 3
    assert set(dashes(of, Manner.PLAIN_COLOUR)) == {()}  # no symbols stand on it


def test_in_black_and_white_lines_are_told_apart_by_dashes_and_knots_by_their_sign():
    of = pattern(
        "mts.",
        lines=(Line("t", ((1, 1), (3, 1)), False, HERE), Line("s", ((1, 2), (3, 2)), False, HERE)),
        knots=(Knot("m", (2.5, 1.5), HERE),),
        beads=(Bead(BeadCard("dew", "Dew", 2.2, 50, {}), MOSS, (3.5, 1.5), HERE),),
    )
    page = shown(of, manner=Manner.BLACK_AND_WHITE)
    assert set(page.runs) == {PAPER}
    drawn = [stroke for stroke in page.strokes if stroke.colour == INK]
    assert len({stroke.dash for stroke in drawn}) == 2
    assert [dot.sign for dot in page.dots] == [SYMBOLS["m"], "1"]
    assert {dot.fill for dot in page.dots} == {PAPER}


# --- as SVG -----------------------------------------------------------------------------------------


def test_the_chart_in_one_piece_carries_every_symbol():
    rows = (".mm.", "tttt", "s..s")
    svg = ElementTree.fromstring(chart(shown(pattern(*rows)), "Potting Symbols"))
    back = {symbol: mark for mark, symbol in SYMBOLS.items()} | {BLANK: "."}
    lines = {int(text.get("y")): text.text for text in svg.iter(f"{SVG}text")}
    assert tuple("".join(back[c] for c in lines[y]) for y in sorted(lines)) == rows


def test_a_drawing_has_the_strokes_and_dots_of_its_sheet():
    of = pattern(
        "mmmm",
        lines=(Line("t", ((1, 1), (3, 1.5)), False, HERE),),
        knots=(Knot("s", (2.5, 1.5), HERE),),
    )
    svg = ElementTree.fromstring(chart(shown(of), "Potting Symbols"))
    assert [line.get("points") for line in svg.iter(f"{SVG}polyline")] == ["0,0 2,0.5"] * 2
    (knot,) = svg.iter(f"{SVG}circle")
    assert (knot.get("cx"), knot.get("cy")) == ("1.5", "0.5")
    runs = [p for p in svg.iter(f"{SVG}path") if p.get("stroke") == tint(MOSS.hex)]
    assert [re.findall(r"M(\d+) ([\d.]+)h(\d+)", p.get("d")) for p in runs] == [[("0", "0.5", "4")]]


def test_the_overview_frames_every_page_in_the_threads_own_colours():
    of = pattern(*["m" * 80] * 90)
    layout = tiles(80, 90, 60, 75)
    svg = overview(shown(of, manner=Manner.PLAIN_COLOUR), layout)
    frames = list(ElementTree.fromstring(svg).iter(f"{SVG}rect"))
    assert len(frames) == len(layout) == 4
    assert MOSS.hex in svg


def test_a_sample_of_a_line_has_its_dashes():
    assert 'stroke-dasharray="0.7 0.35"' in line_sample(INK, (0.7, 0.35), 0.2)
    assert "dasharray" not in line_sample(INK, (), 0.2)


@pytest.mark.parametrize(
    "kind",
    ["full", "half", "half back", "three-quarter", "quarter", "petite"]
    + ["backstitch", "long", "daisy", "knot", "bead"],
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
    assert "5.91 in × 3.94 in" in texts and "7.87 in · 20.0 cm" in texts
