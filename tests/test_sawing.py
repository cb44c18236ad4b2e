"""Parts as they are sawn: which are alike, which are shaped, and how the packet tells both."""

import re
from dataclasses import replace

import pytest

from packetgen.pipeline import proof
from packetgen.reckon.figures import figures
from packetgen.reckon.sawing import any_shaped, blank, sawn_mm2, to_saw
from packetgen.reckon.sizes import Size
from packetgen.render.packet import packet
from packetgen.render.templates import environment
from tests.content_builder import FINISH, TINY, build
from tests.stitching import pattern, piece, series
from tests.test_packet_breaks import pages_with

BOARD = piece().parts[0]
SPRIG = pattern("mt")


def part(name: str, *outline: tuple[float, float], pieces: int = 1, thickness_mm: float = 6.0):
    return replace(BOARD, name=name, outline=outline, pieces=pieces, thickness_mm=thickness_mm)


def slat(name: str, left: float = 0.0, **more: float):
    return part(name, (left, 0.0), (left + 25.4, 0.0), (left + 25.4, 100.0), (left, 100.0), **more)


GABLE = part("gable", (0.0, 40.0), (50.8, 0.0), (101.6, 40.0))


def html_of(*parts, address=None) -> str:
    finish = piece(parts=parts)
    whole = replace(series(SPRIG, finish=finish), address=address)
    return packet(whole, figures(SPRIG, finish), b"", environment()).html


def section(html: str) -> str:
    return html[html.index("<h3>Parts to saw") :].partition("</table>")[0] + "</table>"


def words(html: str) -> str:
    return " ".join(re.sub(r"<[^>]*>", " ", section(html)).split())


@pytest.mark.parametrize(
    ("outline", "size", "shaped"),
    [
        (((0.1, 0.2), (30.3, 0.2), (30.3, 7.4), (0.1, 7.4)), (30.2, 7.2), False),
        (((0, 0), (15, 0), (30, 0), (30, 7), (0, 7)), (30, 7), False),  # a point on a side
        (((0, 7), (15, 0), (30, 7)), (30, 7), True),
        (((10, 0), (20, 10), (10, 20), (0, 10)), (20, 20), True),  # a square on its corner
        (((0, 0), (30, 0), (30, 7), (1, 7), (0, 6)), (30, 7), True),  # one corner cut off
    ],
)
def test_a_part_that_does_not_fill_its_outer_box_is_shaped(outline, size, shaped):
    made = blank(part("it", *outline))
    assert (made.size.width_mm, made.size.height_mm) == pytest.approx(size)
    assert made.shaped is shaped


@pytest.mark.parametrize(
    ("wide_mm", "high_mm", "deep_mm", "board"),
    [
        (190, 12, 60, (190, 60, 12, True)),  # a foot that lies flat
        (12, 190, 60, (60, 190, 12, True)),  # a side that stands across
        (190, 60, 12, (190, 60, 12, False)),
        (20, 100, 20, (20, 100, 20, False)),  # a square bar
    ],
)
def test_a_part_deeper_than_it_is_high_or_wide_is_sawn_from_a_board_seen_from_its_edge(
    wide_mm, high_mm, deep_mm, board
):
    corners = ((0, 0), (wide_mm, 0), (wide_mm, high_mm), (0, high_mm))
    lying = part("foot", *corners, thickness_mm=deep_mm)
    made = blank(lying)
    assert (made.size.width_mm, made.size.height_mm, made.thickness_mm, made.on_edge) == board
    assert not made.shaped and sawn_mm2(lying) == board[0] * board[1]
    assert ("seen from its edge" in words(html_of(lying))) == made.on_edge


def test_a_shaped_part_is_sawn_from_a_board_as_thick_as_it_is_deep():
    made = blank(replace(GABLE, thickness_mm=60.0))
    assert (made.size, made.thickness_mm, made.on_edge) == (Size(101.6, 40.0), 60.0, False)


def test_only_a_part_that_is_thick_each_way_is_called_a_thick_board(tmp_path):
    """60 mm from front to back is no thickness of a board that lies flat."""
    lying = TINY[FINISH].replace("thickness: 6 mm", "thickness: 60 mm")
    (outline,) = re.findall(r"parts:\n.*\n    (outline: .*)", lying)
    for written, thick in (("0,0 100,0 100,12 0,12", False), ("0,0 100,0 50,50", True)):
        changes = {FINISH: lying.replace(f"    {outline}", f'    outline: "{written}"')}
        told = {one.code for one in proof(build(tmp_path / str(thick), changes)).problems}
        assert ("part-thick" in told) is thick


def test_parts_with_the_same_blank_are_one_row_where_the_first_stands():
    """Not those of another board, nor a shaped one in a box of the same size."""
    cut = part("cut slat", (0.0, 0.0), (25.4, 0.0), (25.4, 100.0), (5.0, 100.0), (0.0, 95.0))
    found = to_saw(
        piece(
            parts=(
                slat("left slat", pieces=2),
                GABLE,
                slat("thin slat", thickness_mm=3.0),
                cut,
                slat("right slat", left=40.0),
            )
        )
    )
    assert [(one.names, one.pieces, one.blank.shaped) for one in found] == [
        (("left slat", "right slat"), 3, False),
        (("gable",), 1, True),
        (("thin slat",), 1, False),
        (("cut slat",), 1, True),
    ]
    assert found[0].blank.size == Size(25.4, 100.0)


def test_the_corners_of_a_shaped_part_are_told_from_the_upper_left_of_its_box():
    """So that it can be sawn: 0,40 of the gable is where its slope begins."""
    lower = part("lower", (10.0, 60.0), (60.8, 50.0), (111.6, 60.0), (111.6, 90.0), (10.0, 90.0))
    of = replace(piece(), parts=(GABLE, BOARD, lower))
    gable, _, other = to_saw(of)
    assert gable.corners_mm == ((0, 40), (50.8, 0), (101.6, 40))
    assert other.corners_mm == ((0, 10), (50.8, 0), (101.6, 10), (101.6, 40), (0, 40))
    assert gable.blank == other.blank, "though their boxes are the same they are no one row"
    told = " ".join(re.sub("<[^>]*>", " ", html_of(GABLE)).replace("\u00a0", " ").split())
    assert "Corners of gable, in mm across and down from the upper left of its box" in told
    assert "0,40 · 50.8,0 · 101.6,40" in told


def test_the_packet_has_the_sizes_to_saw_in_both_systems_before_the_steps():
    html = html_of(slat("left slat", pieces=2), slat("right slat"), GABLE)
    assert (
        "left slat, right slat 3 1.00 × 3.94 in · 25.4 × 100 mm 0.24 in · 6 mm "
        "gable 1 4.00 × 1.57 in · 101.6 × 40 mm, shaped 0.24 in · 6 mm"
    ) in words(html)
    assert html.index("<h3>Parts to saw") < html.index("Sand it.")


def test_the_page_with_the_drawing_is_named_where_a_part_is_shaped_and_the_address_known():
    address = "https://almanac.example.org/hedge"
    page = f'<a href="{address}/finishing-piece.html">{address}/finishing-piece.html</a>'
    assert page in section(html_of(GABLE, address=address))
    unknown = words(html_of(GABLE))
    assert (
        "the drawing of the whole piece , and at full size, to print, in the templates of the piece; where they did not come with this packet, ask for them where you had it from."
        in unknown
    )
    plain = html_of(slat("slat"), address=address)
    assert "finishing-piece.html" not in plain and "shaped" not in words(plain)
    assert not any_shaped(piece(parts=(slat("slat"),)))


@pytest.mark.parametrize("above_mm", [0, 120, 180, 200, 220])
def test_a_long_list_has_its_head_on_every_page_and_its_heading_is_not_left_alone(above_mm):
    parts = [slat(f"slat {n} of ash", thickness_mm=3.0 + n) for n in range(60)]
    html = html_of(*parts)
    texts = pages_with(html, section(html), above_mm)
    on_pages = [text for text in texts if " of ash" in text]
    assert len(on_pages) >= 2
    assert all("Thickness" in text for text in on_pages)
    assert sum(text.count(" of ash") for text in on_pages) == 60
    (headed,) = (text for text in texts if "Parts to saw" in text)
    assert headed.count(" of ash") >= 3
