"""Needlework as it is drawn, and public pictures that show a design without giving its chart away."""

import subprocess
import sys
from dataclasses import replace
from functools import cache
from io import BytesIO
from math import cos, hypot
from pathlib import Path

import numpy as np
import pytest
from PIL import Image, ImageChops, ImageDraw, ImageStat

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
from packetgen.reckon.colour import channels
from packetgen.reckon.figures import figures
from packetgen.render import public_picture
from packetgen.render.picture_bench import scene
from packetgen.render.picture_cloth import weave_light
from packetgen.render.picture_file import jpeg_bytes, png_bytes
from packetgen.render.picture_letters import Face
from packetgen.render.public_picture import bench, gathering, mounted_public, softened
from packetgen.render.share_picture import PICTURE_PX, SIZE_PX, share_picture
from packetgen.render.stitched_picture import MARGIN_CELLS, stitched, stitched_layers
from tests.chart_attack import Attacker
from tests.demo_patterns import PATTERNS
from tests.stitching import CLAY, HERE, MOSS, SAGE, SOOT, option, pattern, piece, thread_set

PX = 16
# How much of the detail somebody may read out of a public picture: at once, and after undoing the softening.
MOST_AT_ONCE, MOST_DEBLURRED = 0.60, 0.70
# Out of the softened colours themselves, which nobody is shown: no rule asks for this, it is watched.
MOST_FROM_COLOURS = 0.75


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

WIDTH_PX = 1200
TINTS = {
    **{"t": "#cb7347", "u": "#e3a178", "b": "#a9522f", "g": "#5a7f69", "G": "#38594b"},
    **{"l": "#95b34f", "y": "#e5b440", "w": "#fdfbf4", "p": "#f2b3b8", "r": "#e07c88"},
    **{"R": "#c44a5e", "h": "#9a7fbe", "W": "#47789f", "s": "#aed0e4"},
}


def flowers(side: int = 84):
    """A chart full of detail, by rule: a chequered frame, a shaded pot, leaves, flowers, a sprigged sky."""

    def mark(x: int, y: int) -> str:
        for across, down, petals in (
            *((22, 30, "pr"), (42, 20, "wy"), (62, 30, "hW")),
            *((33, 38, "wy"), (53, 40, "pR")),
        ):
            away = hypot(x - across, y - down)
            if away < 2.4:
                return "y"
            if away < 6.5 + 2 * cos((x - across) * 0.9 + (y - down) * 1.3):
                return petals[away > 6]
        edge, aside = min(x, y, side - 1 - x, side - 1 - y), x - side / 2 + 0.5
        if edge == 0:
            return "gR"[(x + y) // 2 % 2]
        if 54 <= y < 78 and abs(aside) < 20 - max(0, y - 60) * 0.35:
            return "u" if aside < -6 else "t" if aside + (x + y) % 2 * 4 < 9 else "b"
        if y < 54 and hypot(aside, (y - 46) * 1.3) < 24:
            return "Ggl."[(x * x + y * 3 + x * y) // 7 % 4]
        return "s" if (x * 7 + y * 3) % 23 == 0 else "."

    rows = tuple("".join(mark(x, y) for x in range(side)) for y in range(side))
    key = tuple(
        KeyLine(m, Stitch.FULL, {"bramble": (Colour(m, m, tint),)}, {}, HERE)
        for m, tint in TINTS.items()
    )
    return pattern(*rows, key=key, cloths=(option(14),), id="flowers")


@cache
def flowers_figures():
    return figures(flowers(), piece())


@pytest.fixture(scope="module", params=[*PATTERNS, "flowers"])
def published(request):
    """(figures, finishing piece, bytes of the public picture) of each demo pattern and of the flowers."""
    if request.param == "flowers":
        of, finish = flowers_figures(), piece()
    else:
        shown = request.getfixturevalue("demo").reckoned[0]
        finish = shown.series.finish
        of = next(each for each in shown.figures if each.pattern.id == request.param)
    return of, finish, jpeg_bytes(mounted_public(of, finish, WIDTH_PX))


def test_no_chart_can_be_read_out_of_a_public_picture(published, record_property):
    of, finish, data = published
    attacker = Attacker(Image.open(BytesIO(data)), of, finish)
    at_once, deblurred = attacker.as_published(), attacker.deblurred()
    record_property("read at once", at_once)
    record_property("read after deblurring", deblurred)
    print(f"{of.pattern.id}: {at_once:.0%} at once, {deblurred:.0%} deblurred")
    assert at_once <= MOST_AT_ONCE and deblurred <= MOST_DEBLURRED


def test_the_softened_colours_themselves_keep_the_chart(published):
    """Even he who takes all thread, weave and compression away from the picture reads no chart."""
    of, finish, _ = published
    attacker = Attacker(bench(finish, 300), of, finish)
    colour, hidden = softened(of.pattern, of.cloths[0], finish.border_mm)
    bare = 1 - np.asarray(hidden, float)[..., None] / 255
    seen = np.asarray(colour, float) + bare * attacker.chart.palette[0]
    share = attacker.deblurred(seen)
    print(f"{of.pattern.id}: {share:.0%} from the softened colours themselves")
    assert share <= MOST_FROM_COLOURS


def test_the_attack_reads_a_picture_that_is_not_softened(monkeypatch):
    """Else its failure above would say nothing. So place and scale of the mounted design are right too."""
    monkeypatch.setattr(public_picture, "SOFT_CELLS", 0.1)
    monkeypatch.setattr(public_picture, "SHOWN_CELLS", 0.5)
    sharp = mounted_public(flowers_figures(), piece(), WIDTH_PX)
    attacker = Attacker(sharp, flowers_figures(), piece())
    assert attacker.as_published() > 0.8


def test_a_public_picture_is_light_to_load(published):
    assert len(published[2]) < 450_000


def test_a_part_in_front_of_the_panel_hides_the_mounted_design():
    square = ((0, 0), (40, 0), (40, 40), (0, 40))
    pot = Part("pot", square, (150, 130), 6, 1, (Coating(SAGE, 1, "both"),))
    finish = piece(parts=(*piece().parts, pot))
    of = figures(pattern(*["m" * 100] * 88), finish)
    view = scene(finish, 600)
    with_design, empty = mounted_public(of, finish, 600), bench(finish, 600)
    for at, hidden in (((158, 140), True), ((100, 90), False)):
        x, y = view.px(*at)
        box = (round(x) - 4, round(y) - 4, round(x) + 4, round(y) + 4)
        same = ImageChops.difference(with_design.crop(box), empty.crop(box)).getbbox() is None
        assert same is hidden


def test_a_design_hangs_where_the_panel_has_room_for_it():
    """A board whose right half must stay free shows the design on the left."""
    finish = piece(keep_outs=(KeepOut("shelf", ((100, 0), (200, 0), (200, 180), (100, 180))),))
    of = figures(pattern(*["m" * 30] * 30), finish)
    changed = ImageChops.difference(mounted_public(of, finish, 600), bench(finish, 600)).convert(
        "L"
    )
    left, _, right, _ = changed.point(lambda v: 255 * (v > 40)).getbbox()
    start, end = scene(finish, 600).px(0, 0)[0], scene(finish, 600).px(100, 0)[0]
    trim_and_shadow = 8 * scene(finish, 600).px_per_mm
    assert start < left and right < end + trim_and_shadow


@pytest.mark.parametrize("kind", ["gathered", "straight", "round"])
def test_every_kind_of_trim_shows_round_the_card(kind):
    trimmed = piece(trim=Trim(kind, 1.5, 20))
    of = figures(pattern(*["m" * 40] * 40), trimmed)
    card, at = of.cloths[0].fit.card, of.cloths[0].fit.at_mm
    x, y = scene(trimmed, 600).px(at[0] - 1.2, at[1] + card.height_mm / 2)
    colour = mounted_public(of, trimmed, 600).getpixel((round(x), round(y)))
    assert colour[1] > colour[2] + 25  # moss green, which the sage board is not


def test_a_gathering_shows_as_many_designs_as_there_are_up_to_three():
    of = figures(pattern(*["m" * 40] * 40), piece())
    empty = gathering((), piece(), 290, 315)
    covered = []
    for count in (1, 2, 3, 4):
        changed = ImageChops.difference(gathering((of,) * count, piece(), 290, 315), empty)
        covered.append(ImageStat.Stat(changed.convert("L").point(lambda v: v > 25)).sum[0])
    assert covered[0] > 5000 and covered[1] > 5000 and covered[2] == covered[3] > 5000


# --- share pictures -------------------------------------------------------------------------------

TITLES = (
    "Rue",
    "Robin on the Spade",
    "The Long and Winding Garden Path with Hollyhocks, Delphiniums, Żonkile and Œillets on Both Sides",
    "Rhododendronschnittwerkzeugaufbewahrungsschuppen",
    "All of it " * 60,
)


@pytest.mark.parametrize("title", TITLES, ids=lambda title: title[:12])
def test_every_title_stands_wholly_on_a_share_picture(title):
    """1200 × 630, and nothing but paper along the edges of the words' room."""
    said = ("The Hedge Year", "Designed by Isolde Fernsby")
    shared = share_picture(title, said, Image.new("RGB", (60, 60)))
    assert shared.size == SIZE_PX == (1200, 630)
    paper = shared.getpixel((2, 2))
    end = SIZE_PX[0] - PICTURE_PX[0]
    for box in ((0, 0, 48, 630), (end - 30, 0, end, 630), (0, 0, end, 40), (0, 590, end, 630)):
        assert set(shared.crop(box).get_flattened_data()) == {paper}
    assert len(set(shared.crop((48, 40, end - 30, 590)).get_flattened_data())) > 20


def test_a_short_title_is_written_larger_than_a_long_one():
    heights = []
    for title in ("Hm", "Hm " * 60):
        shared = share_picture(title, (), Image.new("RGB", (60, 60))).convert("L")
        column = np.asarray(shared.crop((60, 0, 72, 630))) < 100
        runs = np.diff(np.flatnonzero(np.diff(column.any(axis=1).astype(int))))
        heights.append(runs[0])
    assert heights[0] > 1.5 * heights[1]


def test_letters_of_further_languages_are_drawn():
    """No letter comes out as the box or gap that stands for a missing one."""
    for faces in (("heading.ttf", "heading-ext.ttf"), ("text-regular.ttf", "text-regular-ext.ttf")):
        shapes = {letter: _drawn(Face(*faces, 40), letter) for letter in "łżřűšœÉß\ue123"}
        assert len(set(shapes.values())) == len(shapes)


def _drawn(face: Face, letter: str) -> bytes:
    paper = Image.new("L", (60, 60), 255)
    face.write(ImageDraw.Draw(paper), 10, 45, letter, 0)
    return paper.tobytes()


def test_a_share_picture_is_a_png_of_its_promised_weight(demo):
    shown = demo.reckoned[0]
    picture = mounted_public(shown.figures[0], shown.series.finish, WIDTH_PX)
    data = png_bytes(share_picture("A Title", ("A series", "A designer"), picture), 690_000)
    assert data.startswith(b"\x89PNG") and len(data) < 700_000


def test_a_png_loses_colours_only_when_it_would_be_too_heavy():
    busy = Image.effect_noise((200, 200), 90).convert("RGB")
    assert ImageChops.difference(Image.open(BytesIO(png_bytes(busy))), busy).getbbox() is None
    assert Image.open(BytesIO(png_bytes(busy, 1000))).mode == "P"


# --- sameness -------------------------------------------------------------------------------------

_MAKE = """
import hashlib
from packetgen.reckon.figures import figures
from packetgen.render.picture_file import jpeg_bytes, png_bytes
from packetgen.render.public_picture import mounted_public
from packetgen.render.share_picture import share_picture
from packetgen.render.stitched_picture import stitched
from tests.stitching import pattern, piece
of = figures(pattern(*["mts." * 6] * 20), piece())
public = mounted_public(of, piece(), 300)
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
