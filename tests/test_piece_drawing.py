"""The finishing piece drawn to scale, and designs laid on its panel side by side."""

import re
from dataclasses import replace
from datetime import date
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.chart.piece_drawing import panel_drawing, piece_drawing
from packetgen.model import Coating, KeepOut, Trim
from packetgen.reckon.figures import figures
from packetgen.reckon.fit import fit
from packetgen.reckon.paint import front_hex
from packetgen.reckon.sizes import Size
from packetgen.render.faces import font_css, font_files
from packetgen.render.pdf import documents
from packetgen.render.room_left import (
    in_a_row,
    laid_on_panel,
    piece_stands_beside,
    piece_type_mm,
)
from packetgen.render.templates import environment
from tests.read_back import Document
from tests.stitching import SAGE, option, pattern, piece

SVG = "{http://www.w3.org/2000/svg}"
DESIGN = Size(
    150, 100
)  # mm, with 5 mm of border a card of 160 × 110 mm, in the middle of 200 × 180 mm


def shapes(svg: str, kind: str) -> list[ElementTree.Element]:
    return list(ElementTree.fromstring(svg).iter(f"{SVG}{kind}"))


def corners(polygon: ElementTree.Element) -> list[tuple[float, float]]:
    return [tuple(map(float, spot.split(","))) for spot in polygon.get("points").split()]


def box(rect: ElementTree.Element) -> list[float]:
    return [float(rect.get(name)) for name in ("x", "y", "width", "height")]


def drawn(of=None, cloth_hex: str = "#ffffff") -> str:
    of = of or piece()
    return panel_drawing(of, fit(DESIGN, 1.0, of), DESIGN, cloth_hex)


def test_card_and_stitching_lie_on_the_panel_in_millimetres():
    """By hand: the card at 20,35, the stitching 5 mm further in."""
    card, stitching = shapes(drawn(cloth_hex="#e6dcc6"), "rect")
    assert box(card) == [20, 35, 160, 110]
    assert box(stitching) == [25, 40, 150, 100]
    assert stitching.get("fill") == "#e6dcc6"


def test_the_trim_is_a_band_as_wide_as_it_shows():
    """By hand: 8 mm beyond the card on every side; without a width there is no band."""
    panel, band = shapes(drawn(piece(trim=Trim("gathered", 1.5, 20, 8))), "polygon")
    assert corners(band) == [(12, 27), (188, 27), (188, 153), (12, 153)]
    assert corners(panel) == [(0, 0), (200, 0), (200, 180), (0, 180)]
    assert len(shapes(drawn(), "polygon")) == 1


def test_what_the_panel_must_keep_free_is_drawn():
    pot = KeepOut("a pot", ((90, 160), (110, 160), (110, 180), (90, 180)))
    assert corners(shapes(drawn(piece(keep_outs=(pot,))), "polygon")[1]) == list(pot.outline)


def test_the_whole_piece_says_its_size_in_both_systems():
    """200 × 180 mm are 7.87 × 7.09 in; the stitching of 150 × 100 mm is 5.91 × 3.94 in."""
    said = [
        text.text
        for text in shapes(piece_drawing(piece(), fit(DESIGN, 1.0, piece()), DESIGN), "text")
    ]
    assert said == [
        "5.91 in × 3.94 in",
        "15.0 cm × 10.0 cm",
        "7.87 in · 20.0 cm",
        "7.09 in · 18.0 cm",
    ]


def test_every_size_is_written_in_the_middle_of_what_it_measures():
    """By hand: the piece is 200 × 180 mm, and the card lies in its middle."""
    size_in, size_cm, across, upright = shapes(
        piece_drawing(piece(), fit(DESIGN, 1.0, piece()), DESIGN), "text"
    )
    for text in (size_in, size_cm, across, upright):
        assert text.get("text-anchor") == "middle"
    assert [float(text.get("x")) for text in (size_in, size_cm, across)] == [100, 100, 100]
    assert float(upright.get("y")) == 90 and upright.get("transform").startswith("rotate(-90")
    assert float(size_in.get("y")) < 90 < float(size_cm.get("y"))


def test_the_engine_of_the_packet_puts_the_middle_there_too():
    """Read back with pdfminer; a millimetre of the drawing is one of the page here."""
    svg = piece_drawing(piece(), fit(DESIGN, 1.0, piece()), DESIGN)
    left, top, wide, high = map(float, ElementTree.fromstring(svg).get("viewBox").split(","))
    html = (
        f"<html lang='en'><head><title>A board</title><style>{font_css('asset:')} @page {{ size: 400mm 400mm; "
        f"margin: 0 }} body {{ margin: 0 }} img {{ display: block; width: {wide}mm }}</style></head>"
        "<body><img src='asset:piece.svg' alt='A board'></body></html>"
    )
    assets = {"piece.svg": svg.encode(), **font_files()}
    made = documents(
        html, assets, b"board", {}, (400, 400), {"only": (400, 400)}, {}, date(2027, 1, 15)
    )
    letters = Document(made["only"]).letters[0]
    per_mm = 72 / 25.4
    lines: dict[tuple[int, int], list[float]] = {}
    for letter in letters:
        if letter.upright:
            lines.setdefault(round(letter.y0), []).extend((letter.x0, letter.x1))
    assert len(lines) == 3
    for ends in lines.values():
        assert (min(ends) + max(ends)) / 2 / per_mm + left == pytest.approx(100, abs=1)
    turned = [y for one in letters if not one.upright for y in (one.y0, one.y1)]
    assert 400 - (min(turned) + max(turned)) / 2 / per_mm + top == pytest.approx(90, abs=1)


@given(st.floats(20, 190), st.floats(20, 170))
def test_the_size_is_never_wider_than_the_stitching_it_stands_on(width_mm, height_mm):
    """Reckoned with 0.6 em a letter, more than the mean of any face that words are set in (from memory)."""
    small = Size(width_mm, height_mm)
    texts = shapes(piece_drawing(piece(), fit(small, 1.0, piece()), small), "text")
    size, dimensions = texts[:-2], texts[-2:]
    assert len(size) in (0, 2, 4) and dimensions[0].text == "7.87 in · 20.0 cm"
    middle = float(dimensions[1].get("y"))  # of the panel, and of the card that lies on it
    for text in size:
        type_mm, foot = float(text.get("font-size")), float(text.get("y"))
        assert len(text.text) * 0.6 * type_mm <= width_mm
        assert middle - height_mm / 2 <= foot - 0.7 * type_mm
        assert foot + 0.2 * type_mm <= middle + height_mm / 2


def test_a_narrow_stitching_has_its_size_in_four_lines_and_a_tiny_one_in_none():
    """By hand: 80 mm hold nine letters of 11 mm and not seventeen, and 20 mm not even nine."""
    narrow, tiny = Size(80, 100), Size(20, 20)
    said = [
        [text.text for text in shapes(piece_drawing(piece(), fit(of, 1.0, piece()), of), "text")]
        for of in (narrow, tiny)
    ]
    dimensions = ["7.87 in · 20.0 cm", "7.09 in · 18.0 cm"]
    assert said == [["3.15 in ×", "3.94 in", "8.0 cm ×", "10.0 cm", *dimensions], dimensions]


@pytest.mark.parametrize("beside", [True, False])
@pytest.mark.parametrize(("width_mm", "height_mm"), [(140, 205), (200, 180), (90, 330), (600, 250)])
def test_sizes_in_the_drawing_come_out_as_large_as_the_captions(width_mm, height_mm, beside):
    """8.5 points in the room that the style sheet gives the drawing, whatever the piece; the size on the
    stitching is no smaller than 8."""
    of, env = piece(width_mm, height_mm), environment()
    (room,) = re.findall(
        r"\.piece\.beside \{.*width: (\d+)mm; height: (\d+)mm"
        if beside
        else r"\.piece \{.*width: (\d+)mm; height: (\d+)mm",
        env.loader.get_source(env, "packet/packet.css")[0],
    )
    design = Size(60, 75)
    svg = piece_drawing(of, fit(design, 1.0, of), design, piece_type_mm(of, beside))
    _, _, wide, high = map(float, ElementTree.fromstring(svg).get("viewBox").split(","))
    scale = min(int(room[0]) / wide, int(room[1]) / high)
    *size, across, upright = (float(text.get("font-size")) for text in shapes(svg, "text"))
    for type_mm in (across, upright):
        assert type_mm * scale * 72 / 25.4 == pytest.approx(8.5, abs=0.05)
    assert all(8 - 0.05 <= type_mm * scale * 72 / 25.4 <= 8.55 for type_mm in size)


def test_a_part_is_drawn_in_the_paint_of_its_front():
    """A white edge does not turn a sage board white."""
    white = replace(SAGE, name="white", hex="#ffffff")
    two = replace(piece().parts[0], painted=(Coating(SAGE, 2, "front"), Coating(white, 1, "edges")))
    assert shapes(piece_drawing(piece(parts=(two,))), "polygon")[0].get("fill") == SAGE.hex
    bare = replace(two, painted=(Coating(white, 1, "edges"),))
    assert shapes(piece_drawing(piece(parts=(bare,))), "polygon")[0].get("fill") == front_hex(bare)


def test_every_cloth_is_drawn_in_the_same_frame():
    """Side by side at one scale: the coarser cloth has the larger card."""
    of = figures(pattern(*["m" * 60] * 50, cloths=(option(14), option(36, 2))), piece())
    coarse, fine = laid_on_panel(of, piece())
    frames = {ElementTree.fromstring(one.drawing).get("viewBox") for one in (coarse, fine)}
    assert len(frames) == 1
    widths = [box(shapes(one.drawing, "rect")[0])[2] for one in (coarse, fine)]
    assert widths[0] > widths[1]
    assert (coarse.cloth, fine.cloth) == ("Cloth 14", "Cloth 36, over 2")


def test_the_room_left_is_told_side_by_side():
    """By hand: 84 × 70 stitches at 14 count are 152.4 × 127 mm, the card 162.4 × 137: 18.8 mm left and
    right, 21.5 above and below. A pot at the foot sends the card up, and then each is told by itself."""
    sewn = pattern(*["m" * 84] * 70)
    (laid,) = laid_on_panel(figures(sewn, piece()), piece())
    assert [(one.side, one.room_mm) for one in laid.reveals] == [
        ("left and right", pytest.approx(18.8)),
        ("above and below", pytest.approx(21.5)),
    ]
    potted = piece(keep_outs=(KeepOut("a pot", ((90, 150), (110, 150), (110, 180), (90, 180))),))
    (moved,) = laid_on_panel(figures(sewn, potted), potted)
    assert [one.side for one in moved.reveals] == ["left and right", "above", "below"]
    assert moved.reveals[2].room_mm >= 30 > moved.reveals[1].room_mm


@given(st.integers(1, 40))
def test_no_row_of_the_packet_has_more_than_five(number):
    """And no row that could be filled evenly is left with a single one beside full rows of five."""
    row = in_a_row(number)
    rows = -(-number // row)
    assert row <= 5 and rows == -(-number // 5)


@pytest.mark.parametrize(
    ("width_mm", "height_mm", "cloths", "beside"),
    [
        (200, 180, 1, True),
        (200, 180, 2, True),
        (200, 180, 3, False),  # their designs take the whole row
        (120, 330, 2, True),
        # By hand, at a fifth of the size and in type of 8.5 points, which are 3.0 mm: of 66 mm 2 · 2.9 ems are
        # for dimensions and of 80 mm 2.9 ems, so a piece may be 243.0 mm wide and 356.5 mm high.
        (243, 356, 2, True),
        (244, 180, 2, False),
        (200, 357, 2, False),
    ],
)
def test_the_piece_stands_beside_few_designs_while_its_size_can_be_read(
    width_mm, height_mm, cloths, beside
):
    assert piece_stands_beside(piece(width_mm, height_mm), cloths) is beside
