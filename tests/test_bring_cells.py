"""How large a stitch is drawn is found from the picture alone, however it was enlarged."""

import random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageFilter

from packetgen.bring.cells import edges, find, sampled
from packetgen.bring.chart_text import rows_of
from tests.demo_patterns import CONTENT, PATTERNS, SERIES


def painted(pattern: str) -> Image.Image:
    """The demo chart, each mark in some colour, bare cloth white."""
    text = (CONTENT / "series" / SERIES / pattern / "chart.txt").read_text("utf-8")
    rows = rows_of(text)
    chance = random.Random(pattern)
    colours = {
        mark: bytes(chance.randrange(250) for _ in range(3)) for mark in sorted(set("".join(rows)))
    }
    colours["."] = b"\xff\xff\xff"
    data = b"".join(colours[mark] for row in rows for mark in row)
    return Image.frombytes("RGB", (len(rows[0]), len(rows)), data)


def codes(picture) -> np.ndarray:
    rgb = np.asarray(picture.convert("RGB")).astype(np.int64)
    return rgb[..., 0] << 16 | rgb[..., 1] << 8 | rgb[..., 2]


def found_in(picture: Image.Image):
    pixels = np.asarray(picture.convert("RGBA"))
    return find(*edges(pixels), must=max(picture.size) > 1000)


def read(picture: Image.Image) -> np.ndarray:
    found = found_in(picture)
    assert found is not None, "no size was found"
    return sampled(codes(picture), found)


def enlarged(picture: Image.Image, cell: int) -> Image.Image:
    return picture.resize((picture.width * cell, picture.height * cell), Image.Resampling.NEAREST)


def ruled(picture: Image.Image, cell: int, heavy: bool, outside: bool) -> Image.Image:
    """Enlarged, with a line of one pixel between the stitches; a broader one every ten."""
    large = np.asarray(enlarged(picture, cell)).copy()
    large = np.pad(large, ((0, 1), (0, 1), (0, 0)))
    for every, wide in ((cell, 1), (10 * cell, 2 if heavy else 1)):
        for offset in range(wide):
            large[offset::every] = 40
            large[:, offset::every] = 40
    return Image.fromarray(large if outside else large[1:-1, 1:-1])


@pytest.mark.parametrize("pattern", PATTERNS)
def test_a_chart_of_one_pixel_a_stitch_is_left_as_it_is(pattern):
    assert found_in(painted(pattern)) is None


@pytest.mark.parametrize("pattern", PATTERNS)
@pytest.mark.parametrize("cell", [2, 3, 8, 13])
def test_every_demo_chart_is_read_back_from_its_enlargement(pattern, cell):
    picture = painted(pattern)
    assert (read(enlarged(picture, cell)) == codes(picture)).all()


@pytest.mark.parametrize("pattern", PATTERNS[::3])
@pytest.mark.parametrize("cell", [5, 8, 12])
@pytest.mark.parametrize(("heavy", "outside"), [(False, False), (False, True), (True, True)])
def test_lines_between_the_stitches_are_no_stitches(pattern, cell, heavy, outside):
    picture = painted(pattern)
    assert (read(ruled(picture, cell, heavy, outside)) == codes(picture)).all()


@pytest.mark.parametrize("pattern", PATTERNS[::3])
@pytest.mark.parametrize(("cell", "blur_px"), [(7, 0.7), (10, 1), (16, 1.5), (16, 2), (20, 2)])
def test_blur_of_a_few_pixels_spoils_nothing(pattern, cell, blur_px):
    """The middles of the stitches are as they were."""
    picture = painted(pattern)
    blurred = enlarged(picture, cell).filter(ImageFilter.GaussianBlur(blur_px))
    got = read(blurred)
    assert got.shape == codes(picture).shape
    far = [abs((got >> shift & 255) - (codes(picture) >> shift & 255)) for shift in (16, 8, 0)]
    assert np.max(far) <= 12


@pytest.mark.parametrize("pattern", PATTERNS[::3])
@pytest.mark.parametrize("cell", [4.5, 7.3, 9.6, 13.37])
def test_a_stitch_need_not_be_a_whole_number_of_pixels_wide(pattern, cell):
    picture = painted(pattern)
    size = round(picture.width * cell), round(picture.height * cell)
    assert (read(picture.resize(size, Image.Resampling.NEAREST)) == codes(picture)).all()


@pytest.mark.parametrize("pattern", PATTERNS[::3])
def test_resampling_to_another_size_is_seen_through(pattern):
    picture = painted(pattern)
    size = round(picture.width * 9.6), round(picture.height * 9.6)
    soft = enlarged(picture, 8).resize(size, Image.Resampling.LANCZOS)
    assert (read(soft) == codes(picture)).mean() > 0.99


def test_a_photograph_has_no_stitches():
    from sklearn.datasets import load_sample_images  # "china" and "flower", Creative Commons

    for photograph in load_sample_images().images:
        assert find(*edges(photograph), must=False) is None
        assert find(*edges(photograph[::2, ::2]), must=False) is None


def test_two_squares_are_too_little_to_tell_a_size_from():
    """They may well be meant as they are: nobody makes a chart of 4 stitches out of them."""
    small = np.full((40, 40, 4), 255, np.uint8)
    small[10:20, 10:20] = (200, 30, 30, 255)
    assert find(*edges(small)) is None


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_any_chart_of_many_colours_is_read_back(data):
    """Where the colours change from stitch to stitch as chance has it, nothing else explains the edges."""
    width, height = data.draw(st.integers(8, 60)), data.draw(st.integers(8, 60))
    chance = np.random.default_rng(data.draw(st.integers(0, 2**32)))
    small = chance.integers(0, 5, (height, width)).astype(np.uint8) * 60
    cell = data.draw(st.integers(2, 20))
    left, top = data.draw(st.integers(0, cell - 1)), data.draw(st.integers(0, cell - 1))
    picture = Image.fromarray(np.stack([small] * 3, -1))
    cut = enlarged(picture, cell).crop((left, top, width * cell, height * cell))
    got = read(cut)
    assert (got == codes(picture)[int(top > 0) :, int(left > 0) :]).all()
