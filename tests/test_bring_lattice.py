"""The size of a stitch is told by where the edges stand, in simple drawings too, whose few edges are long."""

import random
from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFilter

from packetgen.bring.borne_out import borne_out
from packetgen.bring.cells import Found
from packetgen.bring.comb import Comb
from packetgen.bring.lattice import lattice_of
from packetgen.bring.pixel_chart import found_in
from tests.content_builder import drawn_freely
from tests.test_bring_cells import codes, large_shapes, read, with_loss

COLOURS = (
    "#cfe3ee", "#a8774a", "#7d5230", "#4f8a3d", "#2f5c2b", "#d9c24a", "#c9683c", "#3f6f8f", "#a03040",
)  # fmt: skip


def rails_and_leaves(chance: random.Random) -> Image.Image:
    """Posts, rails and a border, which are long, and a few leaves and stems among them."""
    wide, high = chance.randint(35, 80), chance.randint(35, 80)
    picture = Image.new("RGB", (wide, high), chance.choice(("white", "#f6f3ea", "#dfe8d8")))
    draw = ImageDraw.Draw(picture)
    for _ in range(2):
        x, y, thick = chance.randint(3, wide - 6), chance.randint(3, high - 6), chance.randint(0, 2)
        draw.rectangle((x, 2, x + thick, high - 4), fill=chance.choice(COLOURS))
        draw.rectangle((1, y, wide - 5, y + thick), fill=chance.choice(COLOURS))
    for _ in range(4):
        x, y = chance.randint(2, wide - 14), chance.randint(2, high - 14)
        box = x, y, x + chance.randint(4, 12), y + chance.randint(4, 12)
        (draw.ellipse if chance.random() < 0.7 else draw.line)(box, fill=chance.choice(COLOURS))
    if chance.random() < 0.4:
        draw.rectangle((0, 0, wide - 1, high - 1), outline=chance.choice(COLOURS), width=2)
    return picture


def enlarged(picture: Image.Image, cell_px: float, softened: float) -> Image.Image:
    """`softened` is the radius of the blur in stitches."""
    size = round(picture.width * cell_px), round(picture.height * cell_px)
    larger = picture.resize(size, Image.Resampling.NEAREST)
    return larger.filter(ImageFilter.GaussianBlur(softened * cell_px))


def pixels(picture: Image.Image) -> np.ndarray:
    return np.asarray(picture.convert("RGBA"))


@pytest.mark.parametrize("softened", [0.08, 0.14, 0.2, 0.27, 0.35])
@pytest.mark.parametrize("cell_px", [5, 6, 9])
def test_a_simple_drawing_is_read_back_however_soft(cell_px, softened):
    """Every stitch, and its colour as near as a thread needs: a soft edge changes its neighbours a little."""
    chance = random.Random(100 * cell_px + int(100 * softened))
    for draw in (rails_and_leaves, large_shapes) * 2:
        picture = draw(chance)
        soft = enlarged(picture, cell_px, softened)
        found = found_in(pixels(soft))
        assert isinstance(found, Found) or (found.sure and borne_out(pixels(soft), found))
        assert (found.across.number, found.down.number) == picture.size
        got, drawn = (
            np.array([one >> 16, one >> 8 & 255, one & 255]) for one in (read(soft), codes(picture))
        )
        assert np.mean(np.abs(got - drawn).max(0) > 30) < 0.02


@pytest.mark.parametrize("quality", [85, 60])
def test_so_is_one_that_was_saved_with_loss(quality):
    chance = random.Random(quality)
    for softened in (0, 0.1, 0.2):
        for cell_px in (5, 6.4, 9):
            picture = rails_and_leaves(chance)
            lattice = lattice_of(pixels(with_loss(enlarged(picture, cell_px, softened), quality)))
            assert lattice is not None
            assert abs(lattice.cell_px - cell_px) * max(picture.size) < cell_px / 2


@pytest.mark.parametrize("cell_px", [3, 5, 9])
def test_a_lattice_begins_where_a_stitch_begins(cell_px):
    """By hand: the first rows and columns are cut off."""
    picture = enlarged(rails_and_leaves(random.Random(4)), cell_px, 0.2)
    lattice = lattice_of(pixels(picture.crop((2, 1, picture.width, picture.height))))
    places = (lattice.across_px + 2) % cell_px, (lattice.down_px + 1) % cell_px
    assert all(min(at, cell_px - at) < 0.05 * cell_px for at in places)


def test_stripes_and_checks_of_a_pixel_each_are_no_soft_stitches():
    """They come again every few pixels too; but from one to the next the colour changes another way."""
    chance = np.random.default_rng(1)
    for turn in range(60):
        period = chance.integers(3, 9)
        colours = chance.integers(0, 255, (period, 3)).astype(np.uint8)
        x, y = np.meshgrid(*(np.arange(length) for length in chance.integers(20, 90, 2)))
        number = (x, x + y, x % period + y % period)[turn % 3] % period
        assert not isinstance(found_in(pixels(Image.fromarray(colours[number]))), Comb)


def test_a_drawing_without_stitches_stands_on_no_lattice():
    for number in range(20):
        drawn = Image.open(BytesIO(drawn_freely(number))).convert("RGB")
        for picture in (drawn, with_loss(drawn, 85), with_loss(drawn, 40)):
            assert lattice_of(pixels(picture)) is None


def test_bands_that_lie_on_a_lattice_one_way_only_are_no_stitches():
    """By hand: a step of colour every 20 pixels down, and one that wanders across."""
    x, y = np.meshgrid(np.arange(400), np.arange(300))
    shades = 40 * (y // 20 % 5) + 2 * ((x + 7 * y) // 97 % 40)
    picture = np.stack([shades, 255 - shades, shades, np.full_like(shades, 255)], -1)
    assert lattice_of(picture.astype(np.uint8)) is None
