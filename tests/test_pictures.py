"""Needlework as it is drawn, and public pictures that show a design without giving its chart away."""

import subprocess
import sys
from colorsys import rgb_to_hsv
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageChops, ImageStat

from packetgen.colour import channels
from packetgen.digest import afresh
from packetgen.model import (
    Bead,
    BeadCard,
    Coating,
    Colour,
    Corner,
    Daisy,
    Fraction,
    KeepOut,
    KeyLine,
    Knot,
    Line,
    Part,
    Stitch,
    Trim,
    Weave,
)
from packetgen.reckon.cover import ROOM_MM, drawn_px_per_cell, printed_mm
from packetgen.reckon.figures import figures
from packetgen.render.cover_room import picture_high_mm
from packetgen.render.picture_bench import scene
from packetgen.render.picture_cloth import weave_light
from packetgen.render.pictures import cover_jpeg
from packetgen.render.public_picture import bench, close_box, face, gathering, mounted_public
from packetgen.render.share_picture import PICTURE_PX
from packetgen.render.stitched_picture import MARGIN_CELLS, picture_cells, stitched, stitched_layers
from packetgen.units import MM_PER_INCH
from tests.stitching import CLAY, HERE, MOSS, SAGE, SOOT, option, pattern, piece, thread_set

PX = 16


def layers(drawn):
    """Colour, light and cover of the design alone."""
    return stitched_layers(drawn, drawn.cloths[0], PX, margin_cells=0)


def cover(drawn, x: float, y: float) -> int:
    """How far thread hides the cloth at a place in cells from the design's corner."""
    return layers(drawn).cover.getpixel((round(x * PX), round(y * PX)))


# --- stitches -------------------------------------------------------------------------------------


def test_a_picture_holds_the_design_and_a_margin_of_cloth():
    drawn = pattern("mmm", "mmm")
    size = stitched(drawn, drawn.cloths[0], PX).size
    assert size == ((3 + 2 * MARGIN_CELLS) * PX, (2 + 2 * MARGIN_CELLS) * PX)


@pytest.mark.parametrize(
    ("wide", "high"), [(1, 1), (12, 10), (20, 16), (5, 40), (64, 50), (100, 120), (200, 3)]
)
def test_the_cover_of_a_packet_is_filled_by_its_picture_however_small_the_design(wide, high):
    """From edge to edge or to all its height, and fine enough for print: 100 px to the inch and more."""
    drawn = pattern(*["m" * wide] * high)
    cells = picture_cells(drawn)
    px = [drawn_px_per_cell(*cells) * side for side in cells]
    width_mm, height_mm = printed_mm(*px)
    assert width_mm == pytest.approx(ROOM_MM[0]) or height_mm == pytest.approx(ROOM_MM[1])
    assert picture_high_mm(drawn) == pytest.approx(height_mm)
    assert px[0] / width_mm * MM_PER_INCH >= 100


def test_the_cover_of_a_small_design_has_as_many_px_as_fill_it():
    drawn = pattern("m" * 12, *["m" + "." * 10 + "m"] * 8, "m" * 12)
    with Image.open(BytesIO(cover_jpeg(figures(drawn, piece()), afresh))) as picture:
        width_px, height_px = picture.size
    assert width_px == 20 * drawn_px_per_cell(20, 18) and height_px == 18 * drawn_px_per_cell(
        20, 18
    )
    assert max(width_px / ROOM_MM[0], height_px / ROOM_MM[1]) * MM_PER_INCH >= 150


def test_bare_cloth_has_the_colour_that_its_maker_gives():
    """Light and shade of the weave leave the mean colour where it was."""
    flax = Colour("flax", "flax", "#ddd0b4")
    for weave in Weave:
        cloth = replace(option(28, 2, weave), colour=flax)
        drawn = pattern("....", "....", cloths=(cloth,))
        mean = ImageStat.Stat(stitched(drawn, cloth, PX)).mean
        assert max(abs(a - b) for a, b in zip(mean, channels(flax.hex))) < 7, weave


@pytest.mark.parametrize("weave", Weave)
def test_cloth_shows_its_weave(weave):
    assert ImageStat.Stat(weave_light(weave, 2, PX, (6, 6))).stddev[0] > 4


def test_a_cross_is_thread_in_the_middle_and_out_to_all_four_corners():
    for x, y in ((0.5, 0.5), (0.15, 0.15), (0.85, 0.15), (0.15, 0.85), (0.85, 0.85)):
        assert cover(pattern("m"), x, y) > 200
    for x, y in ((0.5, 0.02), (0.02, 0.5)):
        assert cover(pattern("m"), x, y) < 60


def test_all_upper_legs_run_from_lower_left_to_upper_right():
    """Along the upper leg the light hardly changes at the crossing; along the lower one it does."""
    light = np.asarray(layers(pattern("m")).light, float)
    steps = range(-3, 4)
    upper = [light[PX // 2 - step, PX // 2 + step] for step in steps]
    lower = [light[PX // 2 + step, PX // 2 + step] for step in steps]
    assert np.std(upper) < np.std(lower)


@pytest.mark.parametrize(
    ("stitch", "worked", "bare"),
    [
        (Stitch.HALF, [(0.2, 0.8), (0.8, 0.2)], [(0.15, 0.15), (0.85, 0.85)]),
        (Stitch.HALF_BACK, [(0.2, 0.2), (0.8, 0.8)], [(0.15, 0.85), (0.85, 0.15)]),
    ],
)
def test_a_half_stitch_is_one_leg(stitch, worked, bare):
    drawn = pattern("m", stitch=stitch)
    assert all(cover(drawn, *at) > 200 for at in worked)
    assert all(cover(drawn, *at) < 40 for at in bare)


CORNERS = {
    Corner.TOP_LEFT: (0.15, 0.15),
    Corner.TOP_RIGHT: (0.85, 0.15),
    Corner.BOTTOM_LEFT: (0.15, 0.85),
    Corner.BOTTOM_RIGHT: (0.85, 0.85),
}


@pytest.mark.parametrize("corner", Corner)
def test_a_quarter_stitch_sits_in_its_corner_and_nowhere_else(corner):
    drawn = pattern(".", fractions=(Fraction(1, 1, "m", Stitch.QUARTER, corner),))
    for other, at in CORNERS.items():
        assert (cover(drawn, *at) > 180) is (other is corner)


@pytest.mark.parametrize("corner", Corner)
def test_a_three_quarter_stitch_leaves_its_open_corner_bare(corner):
    drawn = pattern(".", fractions=(Fraction(1, 1, "m", Stitch.THREE_QUARTER, corner),))
    for other, at in CORNERS.items():
        assert (cover(drawn, *at) > 180) is (other is not corner)


@pytest.mark.parametrize("corner", Corner)
def test_a_petite_is_a_small_cross_in_its_quarter_and_nowhere_else(corner):
    """Thread on both diagonals of the quarter, out to the middle of the cell; bare cloth beyond."""
    drawn = pattern(".", fractions=(Fraction(1, 1, "m", Stitch.PETITE, corner),))
    left, top = (0.5 if CORNERS[corner][0] > 0.5 else 0), (0.5 if CORNERS[corner][1] > 0.5 else 0)
    for x, y in ((0.12, 0.12), (0.38, 0.12), (0.12, 0.38), (0.38, 0.38)):
        assert cover(drawn, left + x, top + y) > 180
    for other, at in CORNERS.items():
        assert other is corner or cover(drawn, *at) < 60


@pytest.mark.parametrize("turned", [False, True])
def test_two_three_quarters_in_a_cell_both_show_their_long_leg(turned):
    one, other = (
        (Corner.BOTTOM_LEFT, Corner.TOP_RIGHT) if turned else (Corner.BOTTOM_RIGHT, Corner.TOP_LEFT)
    )
    parts = (
        Fraction(1, 1, "m", Stitch.THREE_QUARTER, one),
        Fraction(1, 1, "t", Stitch.THREE_QUARTER, other),
    )
    drawn = layers(pattern(".", fractions=parts)).colour
    # Across the shared diagonal, at a quarter of its length: moss on its own side, clay on the other.
    middle_x, middle_y = (0.25, 0.25) if turned else (0.25, 0.75)
    side = (1, -1) if turned else (-1, -1)
    seen = [
        {
            drawn.getpixel((round((middle_x + dx * far) * PX), round((middle_y + dy * far) * PX)))
            for far in (0.12, 0.16, 0.2)
        }
        for dx, dy in (side, (-side[0], -side[1]))
    ]
    assert channels(MOSS.hex) in seen[0] and channels(MOSS.hex) not in seen[1]
    assert channels(CLAY.hex) in seen[1]


def test_a_lazy_daisy_is_a_loop_with_cloth_inside_it():
    """From 2,5 up to 2,1: thread to the left and right of its line, none on it, and held at the tip."""
    drawn = pattern("..", *["...."[:2]] * 3, daisies=(Daisy("t", (2, 5), (2, 1), HERE),))
    picture = layers(drawn)
    row = [picture.cover.getpixel((x, round(1.4 * PX))) for x in range(2 * PX)]
    covered = [x for x, value in enumerate(row) if value > 180]
    assert min(covered) < PX - 3 and max(covered) > PX + 3 and row[PX] < 60
    assert picture.cover.getpixel((PX, 1)) > 180
    assert picture.colour.getpixel((min(covered) + 1, round(1.4 * PX))) == channels(CLAY.hex)


def test_a_braid_glints():
    """A metallic braid has brighter lights than any cotton; it is one strand, so it covers less."""
    whole = replace(thread_set().card, id="glow", strands=1, braid=True)
    glow = KeyLine("m", Stitch.FULL, {"bramble": (MOSS,)}, {}, HERE, cards={"bramble": (whole,)})
    cotton, braid = layers(pattern("mmm")), layers(pattern("mmm", key=(glow,)))
    assert braid.light.getextrema()[1] > cotton.light.getextrema()[1] + 40
    assert ImageStat.Stat(braid.cover).mean[0] < ImageStat.Stat(cotton.cover).mean[0]


def test_more_strands_cover_more_cloth():
    one, two = (
        ImageStat.Stat(layers(pattern("mmm", sets=(thread_set(strands=n),))).cover).mean[0]
        for n in (1, 2)
    )
    assert two > one * 1.2


def test_a_blend_shows_both_of_its_colours():
    needle = {"bramble": (MOSS, CLAY)}
    drawn = pattern("mm", key=(KeyLine("m", Stitch.FULL, needle, {}, HERE),))
    seen = set(layers(drawn).colour.get_flattened_data())
    assert channels(MOSS.hex) in seen and channels(CLAY.hex) in seen


def test_backstitch_runs_where_its_corners_say():
    """Corner coordinates count from 1: '2,1 2,4' runs down between the first and second column."""
    drawn = pattern("...", "...", "...", lines=(Line("s", ((2, 1), (2, 4)), False, HERE),))
    colour = layers(drawn).colour
    assert all(colour.getpixel((PX, round(y * PX))) == channels(SOOT.hex) for y in (0.5, 1.5, 2.5))
    assert colour.getpixel((PX * 2, PX * 2)) != channels(SOOT.hex)


def test_backstitch_dives_into_every_hole_and_a_long_stitch_lies_over_them():
    at_the_hole, elsewhere = (PX * 2, PX), (round(PX * 1.5), PX)
    for long in (False, True):
        drawn = pattern("....", "....", lines=(Line("s", ((1, 2), (5, 2)), long, HERE),))
        hidden = layers(drawn).cover
        assert hidden.getpixel(elsewhere) > 200
        light = layers(drawn).light
        dip = light.getpixel(elsewhere) - light.getpixel(at_the_hole)
        assert abs(dip) < 12 if long else dip > 12


def test_a_knot_is_a_small_round_of_its_colour():
    drawn = pattern("...", "...", "...", knots=(Knot("t", (2.5, 2.5), HERE),))
    box = layers(drawn).cover.getbbox()
    assert abs(box[0] + box[2] - 3 * PX) <= 2 and abs(box[1] + box[3] - 3 * PX) <= 2
    assert 0.4 * PX < box[2] - box[0] < 1.3 * PX
    assert layers(drawn).colour.getpixel((PX * 3 // 2, PX * 3 // 2)) == channels(CLAY.hex)


def test_a_bead_has_its_true_size_and_a_glint():
    """A 2.2 mm bead on 14 count is 2.2 / (25.4 / 14) = 1.21 cells wide; it is drawn a little smaller."""
    card = BeadCard("dew", "Dew", 2.2, 100, {})
    bead = Bead(card, Colour("1", "hip", "#b32c2e"), (2.5, 2.5), HERE)
    drawn = layers(pattern("...", "...", "...", beads=(bead,)))
    left, _, right, _ = drawn.cover.getbbox()
    assert (right - left) / PX == pytest.approx(2.2 / (25.4 / 14), abs=0.2)
    assert drawn.light.getextrema()[1] > 200


# --- public pictures ------------------------------------------------------------------------------


def public(of, finish, width_px: int = 600):
    """The picture of a mounted design."""
    return mounted_public(face(of, finish), finish, width_px)


def test_a_part_in_front_of_the_panel_hides_the_mounted_design():
    square = ((0, 0), (40, 0), (40, 40), (0, 40))
    pot = Part("pot", square, (150, 130), 6, 1, (Coating(SAGE, 1, "both"),))
    finish = piece(parts=(*piece().parts, pot))
    of = figures(pattern(*["m" * 100] * 88), finish)
    view = scene(finish, 600)
    with_design, empty = public(of, finish), bench(finish, 600)
    for at, hidden in (((158, 140), True), ((100, 90), False)):
        x, y = view.px(*at)
        box = (round(x) - 4, round(y) - 4, round(x) + 4, round(y) + 4)
        same = ImageChops.difference(with_design.crop(box), empty.crop(box)).getbbox() is None
        assert same is hidden


def test_a_design_hangs_where_the_panel_has_room_for_it():
    """A board whose right half must stay free shows the design on the left."""
    finish = piece(keep_outs=(KeepOut("shelf", ((100, 0), (200, 0), (200, 180), (100, 180))),))
    of = figures(pattern(*["m" * 30] * 30), finish)
    changed = ImageChops.difference(public(of, finish), bench(finish, 600)).convert("L")
    left, _, right, _ = changed.point(lambda v: 255 * (v > 40)).getbbox()
    start, end = scene(finish, 600).px(0, 0)[0], scene(finish, 600).px(100, 0)[0]
    trim_and_shadow = 8 * scene(finish, 600).px_per_mm
    assert start < left and right < end + trim_and_shadow


def test_the_trim_of_a_drawn_picture_has_the_colour_that_its_author_gives():
    """Light and shade lie over it, so its hue is compared."""
    trimmed = piece(trim=Trim("straight", 1, 20))
    rows = ["m" * 40] * 40

    def at_the_edge(**more):
        of = figures(pattern(*rows, **more), trimmed)
        at, card = of.cloths[0].fit.at_mm, of.cloths[0].fit.card
        x, y = scene(trimmed, 600).px(at[0] - 1.2, at[1] + card.height_mm / 2)
        return rgb_to_hsv(*public(of, trimmed).getpixel((round(x), round(y))))[0]

    assert at_the_edge(trim_hex="#2040d0") == pytest.approx(
        rgb_to_hsv(0x20, 0x40, 0xD0)[0], abs=0.04
    )
    assert abs(at_the_edge() - at_the_edge(trim_hex="#2040d0")) > 0.2


@pytest.mark.parametrize("kind", ["gathered", "straight", "round"])
def test_every_kind_of_trim_shows_round_the_card(kind):
    trimmed = piece(trim=Trim(kind, 1.5, 20))
    of = figures(pattern(*["m" * 40] * 40), trimmed)
    card, at = of.cloths[0].fit.card, of.cloths[0].fit.at_mm
    x, y = scene(trimmed, 600).px(at[0] - 1.2, at[1] + card.height_mm / 2)
    colour = public(of, trimmed).getpixel((round(x), round(y)))
    assert colour[1] > colour[2] + 25  # moss green, which the sage board is not


def test_a_gathering_shows_as_many_designs_as_there_are_up_to_three():
    of = figures(pattern(*["m" * 40] * 40), piece())
    empty = gathering((), piece(), 290, 315)
    covered = []
    for count in (1, 2, 3, 4):
        changed = ImageChops.difference(
            gathering((face(of, piece()),) * count, piece(), 290, 315), empty
        )
        covered.append(ImageStat.Stat(changed.convert("L").point(lambda v: v > 25)).sum[0])
    assert covered[0] > 5000 and covered[1] > 5000 and covered[2] == covered[3] > 5000


# --- close views ----------------------------------------------------------------------------------


@given(
    wide_mm=st.floats(40, 400),
    high_mm=st.floats(40, 400),
    share=st.floats(0.1, 1),
    width_px=st.integers(600, 2000),
    shape=st.sampled_from(sorted(PICTURE_PX.values())),
)
def test_a_close_view_lies_within_its_picture_on_every_piece(
    wide_mm, high_mm, share, width_px, shape
):
    """Also where it takes all of the width or of the height, and not a hair more."""
    hung_on = piece(wide_mm, high_mm)
    columns, rows = (max(1, int(share * side * 14 / MM_PER_INCH)) for side in (wide_mm, high_mm))
    one = figures(pattern(*["m" * columns] * rows), hung_on).cloths[0]
    size = width_px, scene(hung_on, width_px).height_px
    left, top, right, bottom = close_box(one, hung_on, size, shape)
    assert 0 <= left < right <= size[0] and 0 <= top < bottom <= size[1]
    assert (right - left) / (bottom - top) == pytest.approx(shape[0] / shape[1])


# --- sameness -------------------------------------------------------------------------------------

_MAKE = """
import hashlib
from packetgen.reckon.figures import figures
from packetgen.render.picture_file import jpeg_bytes, png_bytes
from packetgen.render.public_picture import face, mounted_public
from packetgen.render.share_picture import share_picture
from packetgen.render.stitched_picture import stitched
from tests.stitching import pattern, piece
of = figures(pattern(*["mts." * 6] * 20), piece())
public = mounted_public(face(of, piece()), piece(), 300)
sharp = stitched(of.pattern, of.pattern.cloths[0], 12)
made = jpeg_bytes(public) + png_bytes(sharp) + png_bytes(share_picture("A", ("b",), public))
print(hashlib.sha256(made).hexdigest())
"""


def test_pictures_are_the_same_every_time():
    """Whatever the seed of Python's own hashing, byte for byte."""
    said = {
        subprocess.run(
            [sys.executable, "-c", _MAKE],
            cwd=Path(__file__).parent.parent,
            env={"PYTHONHASHSEED": seed, "PYTHONPATH": "."},
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for seed in ("0", "1")
    }
    assert len(said) == 1
