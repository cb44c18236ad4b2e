"""Outlines of wood: corners, or SVG paths flattened to corners."""

from dataclasses import replace
from math import hypot, pi

import pytest
from fontTools.pens.areaPen import AreaPen
from fontTools.svgLib.path import parse_path
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon, hausdorff_distance

from packetgen.load.outlines import read_outline
from packetgen.load.panel_on_wood import Beside, beside_middle, beyond_wood
from packetgen.load.placed_parts import (
    Misplaced,
    better_at,
    clear_at,
    hidden,
    over_panel,
    standing_apart,
)
from packetgen.load.slipped_places import figures_exchanged, turned_about
from packetgen.load.svg_path import FLAT_WITHIN_MM
from packetgen.model import Coating, Paint, Part
from packetgen.reckon.outline import area_mm2, bounds, perimeter_mm


def refuse(code: str, offset: int = 0, **facts: object) -> None:
    raise AssertionError(f"{code} at {offset}: {facts}")


def outline(text: str):
    return read_outline(text, refuse)


def complaint(text: str) -> tuple[str, int]:
    """The first fault of an outline that is refused, and where it stands."""
    found: list[tuple[str, int]] = []
    assert read_outline(text, lambda code, offset=0, **_: found.append((code, offset))) is None
    return found[0]


def test_a_trapezoid_has_the_area_of_its_formula():
    """A flowerpot 28 and 20 mm wide and 32 mm high: (28 + 20) / 2 · 32 = 768 mm² by hand."""
    assert area_mm2(outline("0,0 28,0 24,32 4,32")) == pytest.approx(768)
    assert area_mm2(outline("M0 0H28L24 32H4Z")) == pytest.approx(768)


def test_a_quarter_of_a_circle_has_a_quarter_of_its_area():
    """π r² / 4 and π r / 2 + 2 r, both to a thousandth."""
    sector = outline("M 0,0 H 24 A 24,24 0 0 1 0,24 Z")
    assert area_mm2(sector) == pytest.approx(pi * 24**2 / 4, rel=1e-3)
    assert perimeter_mm(sector) == pytest.approx(pi * 24 / 2 + 48, rel=1e-3)


def test_the_large_arc_goes_the_long_way_round():
    """Three quarters of the circle with the large arc flag, one quarter without; sweep turns it over."""
    long = outline("M 0,0 L 24,0 A 24,24 0 1 0 0,24 Z")
    assert area_mm2(long) == pytest.approx(pi * 24**2 * 3 / 4, rel=1e-3)


def test_an_arc_too_small_for_its_ends_is_made_just_large_enough():
    """SVG 2, 9.5.1: radii that cannot reach are scaled up; a half circle of 10 mm radius is left."""
    half = outline("M 0,0 A 1,1 0 0 1 20,0 Z")
    assert area_mm2(half) == pytest.approx(pi * 10**2 / 2, rel=1e-3)


def test_an_ellipse_may_be_turned():
    """Half of π · 20 · 10, whichever way it is turned: its long axis, 40 mm, goes from 0,0 to 40 cos 30°, 40 sin 30°."""
    turned = outline("M 0,0 A 20,10 30 0 1 34.6410162,20 Z")
    assert area_mm2(turned) == pytest.approx(pi * 20 * 10 / 2, rel=1e-3)


def test_every_side_lies_within_a_tenth_of_a_millimetre_of_its_circle():
    circle = outline("M 0,50 A 50,50 0 0 1 100,50 A 50,50 0 0 1 0,50")
    away = [abs(hypot(x - 50, y - 50) - 50) for x, y in circle]
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in zip(circle, circle[1:])]
    away += [abs(hypot(x - 50, y - 50) - 50) for x, y in middles]
    assert max(away) <= FLAT_WITHIN_MM * 1.001 < 0.1


def test_the_same_shape_in_large_and_small_letters():
    large = outline(
        "M 10,10 L 30,10 H 40 V 20 C 40,30 30,40 20,40 S 12,35 10,30 Q 4,25 8,20 T 10,10 Z"
    )
    small = outline(
        "m 10,10 l 20,0 h 10 v 10 c 0,10 -10,20 -20,20 s -8,-5 -10,-10 q -6,-5 -2,-10 t 2,-10 z"
    )
    assert hausdorff_distance(LineString(large), LineString(small)) < 1e-9


def test_numbers_may_run_together_as_the_standard_allows():
    """A minus sign or a second point begins a number; flags need no gap; points run on as lines."""
    assert outline("M0 0 20 0 20-.5.5-.5z") == ((0, 0), (20, 0), (20, -0.5), (0.5, -0.5))
    assert outline("M0,0h24a24,24 0 01-24,24z") == outline("M 0,0 H 24 A 24,24 0 0 1 0,24 Z")


COORDINATE = st.integers(-200, 200).map(lambda n: n / 2)
SPOT = st.tuples(COORDINATE, COORDINATE)


@given(SPOT, SPOT, SPOT, SPOT)
def test_a_cubic_curve_is_followed_closely(a, b, c, d):
    """Against the curve itself, a thousand points of Bernstein's polynomials: none further off than 0.01 mm."""
    text = (
        "M "
        + " ".join(f"{x},{y}" for x, y in (a,))
        + " C "
        + " ".join(f"{x},{y}" for x, y in (b, c, d))
    )
    corners: list = []
    read = read_outline(text + " Z", lambda *_, **__: None)
    if read is None:  # a curve that meets itself
        return
    corners = [*read, read[0]]
    line = LineString(corners)
    for step in range(0, 1001, 25):
        t = step / 1000
        s = 1 - t
        at = [
            s**3 * p + 3 * s * s * t * q + 3 * s * t * t * r + t**3 * e
            for p, q, r, e in zip(a, b, c, d)
        ]
        assert line.distance(Point(at)) <= 2 * FLAT_WITHIN_MM


@pytest.mark.parametrize(
    "text",
    [
        "M 0,24 C 14,8 40,8 60,0 L 60,90 L 0,90 Z",
        "M 0,0 H 60 A 30,20 15 1 1 20,60 Q 0,50 0,0 Z",
        "m 5,5 h 50 t 10,30 t -20,30 s -30,-10 -40,-60 z",
        "M10 80 C 40 10, 65 10, 95 80 S 150 150, 180 80 V 200 H 10 z",
    ],
)
def test_another_reader_of_paths_finds_the_same_area(text):
    """fontTools reads the same path with its own parser and adds up the area of its curves exactly."""
    pen = AreaPen()
    parse_path(text, pen)
    assert area_mm2(outline(text)) == pytest.approx(abs(pen.value), rel=1e-3)


def test_curves_reach_beyond_their_ends():
    """By hand: the top of a cubic with both handles 40 mm up is three quarters of that, 30 mm."""
    left, top, right, bottom = bounds(outline("M 0,0 C 0,-40 60,-40 60,0 Z"))
    assert (left, right, bottom) == pytest.approx((0, 60, 0))
    assert top == pytest.approx(-30, abs=0.05)


@pytest.mark.parametrize(
    ("text", "code", "offset"),
    [
        ("L 0,0 10,0 10,10", "path-start", 0),
        ("M 0,0 L 10,0 L 10,10 Z M 2,2 L 4,2 L 4,4 Z", "path-second", 23),
        ("M 0,0 L 10,0 10,10 Z L 5,5", "path-second", 21),
        ("M 0,0 L 10,0 K 10,10 Z", "path-sign", 13),
        ("M 0,0 L 10 Z", "path-numbers", 6),
        ("M 0,0 A 5,5 0 2 1 10,0 Z", "path-numbers", 6),
        ("M 0,0 H 10 V 0 Z", "outline-short", 0),
        ("M 0,0 L 10,10 L 10,0 L 0,10 Z", "outline-touches", 0),
        ("0,0 10,10 10,0 0,10", "outline-crosses", 0),
        ("0,0 10,0 10,10 5,0 0,10", "outline-touches", 0),
        ("0,0 10,0 5,0", "outline-flat", 0),
        ("M 0,0 L 9000,0 L 0,10 Z", "out-of-range", 0),
    ],
)
def test_a_shape_that_cannot_be_sawn_is_refused_where_it_goes_wrong(text, code, offset):
    assert complaint(text) == (code, offset)


@given(st.lists(SPOT, min_size=3, max_size=8))
def test_exactly_the_sound_polygons_are_read(corners):
    """Whatever the corners: what is read is a valid polygon to the geometry library, and the rest is not."""
    text = " ".join(f"{x},{y}" for x, y in corners)
    read = read_outline(text, lambda *_, **__: None)
    shape = Polygon(corners)
    assert (read is not None) == (shape.is_valid and shape.area > 0)


def board(shape: str, at: tuple[float, float] = (0.0, 0.0), pieces: int = 1) -> Part:
    return Part("board", outline(shape), at, 6.0, pieces, ())


def test_a_panel_may_lie_over_gaps_and_in_what_the_parts_enclose():
    """Four rails round an opening, and slats with gaps."""
    panel = outline("5,5 95,5 95,95 5,95")
    wide, high = "0,0 100,0 100,10 0,10", "0,0 10,0 10,100 0,100"
    rails = board(wide), board(wide, (0, 90)), board(high), board(high, (90, 0))
    slats = [board(high, (x, 0)) for x in (0, 30, 60, 90)]
    assert beyond_wood(panel, rails) is None and beyond_wood(panel, slats) is None
    assert beyond_wood(panel, slats[:3]).sides_mm[2] == pytest.approx(25)


def test_of_a_part_with_several_pieces_the_others_may_be_below_the_panel():
    """Five slats of 19 mm with gaps of a millimetre, drawn once; and two small feet, which cannot be meant."""
    panel = outline("0,0 99,0 99,100 0,100")
    assert beyond_wood(panel, [board("0,0 19,0 19,100 0,100", pieces=5)]) is None
    feet = board("0,0 10,0 10,10 0,10", pieces=2)
    assert beyond_wood(panel, [board("0,0 19,0 19,100 0,100"), feet]) is not None


def test_a_rounded_figure_is_not_told():
    wood = [board("0,0 100,0 100,100 0,100")]
    assert beyond_wood(outline("0,0 100.4,0 100.4,100 0,100"), wood) is None
    assert beyond_wood(outline("0,0 101,0 101,100 0,100"), wood) is not None


PANEL = outline("10,10 90,10 90,90 10,90")
BACK = board("0,0 100,0 100,100 0,100")
ACROSS = board("0,0 100,0 100,8 0,8", (0, 40))


def over(*parts: Part, keep_out: str = "") -> list[tuple[int, float]]:
    found = over_panel(PANEL, [outline(keep_out)] if keep_out else [], parts)
    return [(one.number, round(one.share, 3)) for one in found]


def test_a_part_before_the_wood_that_carries_the_panel_hides_some_of_it():
    slats = [board("0,0 24,0 24,100 0,100", (x, 0)) for x in (0, 25, 50, 75)]
    assert over(BACK, ACROSS) == [(1, 0.1)]
    assert over(*slats, ACROSS) == [(4, 0.1)]
    assert over(BACK, *slats, ACROSS) == [(5, 0.1)]


def test_what_carries_the_panel_hides_nothing():
    """Slats, side by side or each a little over the next, on a back or alone; a board behind another."""
    slats = [board("0,0 24,0 24,100 0,100", (x, 0)) for x in (0, 25, 50, 75)]
    lapped = [board("0,0 27,0 27,100 0,100", (x, 0)) for x in (0, 25, 50, 73)]
    for parts in (slats, lapped, [BACK, *slats], [BACK, *lapped], [ACROSS, BACK], [BACK, BACK]):
        assert over(*parts) == []


def test_a_part_may_reach_over_the_edge_of_the_panel_or_stand_where_it_is_kept_free():
    assert over(BACK, board("0,0 100,0 100,15 0,15")) == []
    assert over(BACK, board("0,0 100,0 100,17 0,17")) == [(1, 0.087)]
    assert over(BACK, ACROSS, keep_out="10,35 90,35 90,50 10,50") == []
    assert over(BACK, ACROSS, keep_out="10,35 90,35 90,45 10,45") == [(1, 0.1)]


def test_a_part_is_offered_no_place_at_which_it_reaches_beyond_what_it_lies_on():
    """By hand: 20 wide and high, at 70,4 it would lie within the wood, at 90,4 10 mm beyond its edge; the panel begins
    at 34, so that what is 20 high ends there from 14 on."""
    panel, square = outline("5,34 95,34 95,95 5,95"), "0,0 20,0 20,20 0,20"
    assert better_at(Misplaced(panel, [], [BACK, board(square, (4, 70))], 1)) == (70, 4)
    assert better_at(Misplaced(panel, [], [BACK, board(square, (4, 90))], 1)) is None
    assert clear_at(Misplaced(panel, [], [BACK, board(square, (4, 30))], 1)) == (4, 14)
    assert clear_at(Misplaced(panel, [], [BACK, board("0,0 40,0 40,40 0,40", (4, 40))], 1)) is None


def test_in_an_open_frame_nobody_knows_what_is_before_the_panel():
    wide, high = "0,0 100,0 100,14 0,14", "0,0 14,0 14,100 0,100"
    frame = board(wide), board(wide, (0, 86)), board(high), board(high, (86, 0))
    assert over(*frame, ACROSS) == []


def test_a_part_is_hidden_where_a_larger_one_before_it_covers_all_of_its_painted_front():
    sage = Paint("sage", "#b0c8b3", "brush", 10.0, 1.0, 100.0)

    def found(*parts: Part, faces: str = "both") -> list[tuple[int, int]]:
        painted = [replace(one, painted=(Coating(sage, 2, faces),)) for one in parts]
        return [(one.number, one.behind) for one in hidden(painted)]

    small = "0,0 10,0 10,10 0,10"
    foot = board(small, (20, 20))
    assert found(foot, BACK) == found(foot, BACK, faces="front") == [(0, 1)]
    assert found(foot, BACK, faces="edges") == found(foot, BACK, faces="back") == []
    assert found(BACK, foot) == found(BACK, BACK) == []
    assert found(foot, board("0,0 30,0 30,30 0,30"), BACK) == [(0, 2), (1, 2)]
    assert found(board(small, (90.5, 20)), BACK) == [(0, 1)]
    assert found(board(small, (91, 20)), BACK) == []


def test_a_part_stands_apart_when_it_touches_none_and_is_not_at_the_panel():
    def apart(*parts: Part) -> list[tuple[int, float]]:
        return [(one.number, one.gap_mm) for one in standing_apart(PANEL, parts, hung=True)]

    foot = "0,0 10,0 10,10 0,10"
    assert apart(BACK, board(foot, (0, 100)), board(foot, (90, 101))) == []
    assert apart(BACK, board(foot, (0, 110))) == []  # hung up
    assert apart(BACK, board(foot, (0, 111))) == [(1, 11)]
    rod = "0,0 100,0 100,4 0,4"
    assert apart(BACK, board(rod, (0, 130)), board(rod, (0, -34))) == []
    assert apart(BACK, board(rod, (0, 131))) == [(1, 31)]
    assert apart(BACK, board("0,0 2,0 2,2 0,2", (0, 105))) == []
    assert apart(BACK, board(foot, (0, 1300))) == [(1, 1200)]
    assert apart(BACK, board(rod, (105, 0))) == []
    assert apart(BACK, board(rod, (114, 0))) == [(1, 14)]  # nothing hangs beside
    assert apart(BACK) == []
    fast = standing_apart(PANEL, [BACK, board(rod, (0, 124))], hung=False)  # by glue and screws
    assert [(one.gap_mm, one.nearer_mm) for one in fast] == [(24, (0, -24))]


def test_parts_that_touch_only_one_another_stand_apart_together():
    """By hand: two boards of 10 mm, one beside the other, 40 mm beside the back, which is 100 wide."""
    foot = "0,0 10,0 10,10 0,10"
    found = standing_apart(PANEL, [BACK, board(foot, (140, 0)), board(foot, (150, 0))], hung=True)
    assert [(one.number, one.together_with, one.gap_mm) for one in found] == [(1, (2,), 40)]
    reaching = [board(foot, (100 + 10 * n, 0)) for n in range(5)]
    assert list(standing_apart(PANEL, [BACK, *reaching], hung=True)) == []
    alone = standing_apart(PANEL, [board(foot, (140, 0)), BACK, board(foot, (-200, 0))], hung=True)
    assert [(one.number, one.together_with) for one in alone] == [(0, ()), (2, ())]


@pytest.mark.parametrize(
    ("panel", "at", "found"),
    [
        (
            "20,20 120,20 120,120 20,120",
            (20, 0),
            Beside(0, 20.0, "to the left of"),
        ),  # 20 from the board's own corner
        ("40,20 140,20 140,120 40,120", (20, 0), None),  # in the middle
        ("30,20 130,20 130,120 30,120", (20, 0), None),  # nor from its corner
        ("20,20 120,20 120,120 20,120", (0, 10), None),  # from either corner as far to the left
    ],
)
def test_a_panel_measured_from_the_corner_of_its_board_lies_beside_its_middle(panel, at, found):
    wood = replace(BACK, outline=outline("0,0 140,0 140,140 0,140"), at_mm=at)
    assert beside_middle(outline(panel), [wood]) == found


def test_a_panel_in_the_middle_of_the_whole_piece_is_meant():
    """The board stands at 20,0, and an ear of 20 mm beside it makes the whole reach from 0 to 160."""
    wood = replace(BACK, outline=outline("0,0 140,0 140,140 0,140"), at_mm=(20, 0))
    ear = replace(BACK, outline=outline("0,0 20,0 20,20 0,20"), at_mm=(0, 0))
    panel = outline("30,20 130,20 130,120 30,120")
    assert beside_middle(panel, [wood, ear]) is None


def test_a_main_board_turned_about_is_known_where_then_all_parts_hang_together():
    """By hand: a barrel 90 wide and 150 high at 5,14, whose foot begins where it ends; at 14,5 it ends 9 mm above.
    A sign that hangs below is no slip, wherever it would touch."""
    barrel, foot = "0,0 90,0 90,150 0,150", "0,0 100,0 100,12 0,12"

    def turned(at: tuple[float, float], below: str = foot) -> int | None:
        return turned_about([board(barrel, at), board(below, (0, 164))])

    assert turned((14, 5)) == 0
    assert turned((5, 14)) is None
    assert turned((9, 9)) is None, "it is the same either way"
    assert turned((4, 300)) is None, "it would not help"
    sign = board("0,0 40,0 40,20 0,20", (30, 160))
    assert turned_about([board(barrel), sign]) is None


def test_two_figures_of_a_place_that_changed_places_are_known_where_then_all_parts_hang_together():
    """By hand: on a board 200 high a candle 40 high at 177,146 carries a flame that ends at 146; at 177,164 it hangs free."""
    whole = [
        board("0,0 180,0 180,200 0,200", (0, 0)),
        board("0,0 16,0 16,36 0,36", (177, 164)),
        board("0,0 10,0 10,20 0,20", (181, 126)),
    ]
    assert figures_exchanged(whole) == (1, (177, 146))
    assert figures_exchanged([whole[0], replace(whole[1], at_mm=(177, 146)), whole[2]]) is None
    assert figures_exchanged([whole[0], replace(whole[1], at_mm=(177, 155)), whole[2]]) is None


def test_a_part_that_touches_with_the_two_numbers_of_its_place_changed_is_known():
    """By hand: a rail that belongs below a board 60 wide and 100 high, at 8,100."""
    tall, rail = board("0,0 60,0 60,100 0,100"), "0,0 44,0 44,8 0,8"

    def apart(at: tuple[float, float]) -> list[tuple[float, tuple[tuple[float, float], ...]]]:
        return [
            (one.gap_mm, one.meant_mm)
            for one in standing_apart(PANEL, [tall, board(rail, at)], hung=True)
        ]

    assert apart((8, 100)) == []
    assert apart((100, 8)) == [(40, ((60, 8), (8, 100)))]
    assert apart((140, 108)) == [(pytest.approx(80.4, abs=0.1), ())]


def test_of_the_places_where_a_part_would_touch_the_one_in_line_with_its_twin_is_meant():
    """By hand: two feet below a box 160 wide and 130 high at 0,20, the second 8 mm too low at 125,158; with its
    numbers changed it would touch the side of the box, where no foot is."""
    box, foot = board("0,0 160,0 160,130 0,130", (0, 20)), "0,0 20,0 20,12 0,12"
    panel = outline("20,40 140,40 140,130 20,130")

    def meant(*feet: Part) -> list[tuple[tuple[float, float], ...]]:
        return [one.meant_mm for one in standing_apart(panel, [box, *feet], hung=False)]

    assert meant(board(foot, (15, 150)), board(foot, (125, 158))) == [((125, 150),)]
    assert meant(board(foot, (125, 158))) == [((125, 150), (158, 125))], "alone it may be either"
