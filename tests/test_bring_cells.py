"""How large a stitch is drawn is found from the picture alone, however it was enlarged."""

import random
from io import BytesIO

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageDraw, ImageFilter

from packetgen.bring.borne_out import borne_out
from packetgen.bring.cells import Found, edges, find, sampled
from packetgen.bring.chart_text import rows_of
from packetgen.bring.comb import Comb, stitches
from packetgen.bring.pixel_chart import counted_px, sure_px
from packetgen.bring.pixel_chart import found_in as found_in_pixels
from tests.content_builder import drawn_freely
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


def rgba(picture: Image.Image) -> np.ndarray:
    return np.asarray(picture.convert("RGBA"))


def found_in(picture: Image.Image):
    return found_in_pixels(rgba(picture))


def read(picture: Image.Image) -> np.ndarray:
    found = found_in(picture)
    assert found is not None, "no size was found"
    if isinstance(found, Comb):
        assert found.believed, "it is only a guess"
        return codes(Image.fromarray(stitches(rgba(picture), found)[0]))
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


def blocks(number: int, cell: float, how: Image.Resampling) -> Image.Image:
    """Stitches of four colours in no order, enlarged."""
    colours = np.array([[107, 80, 58], [160, 64, 48], [79, 121, 66], [240, 240, 230]], np.uint8)
    stitches = colours[np.random.default_rng(3).integers(0, 4, (number - 7, number))]
    size = round(number * cell), round((number - 7) * cell)
    return Image.fromarray(stitches).resize(size, how)


@pytest.mark.parametrize("how", [Image.Resampling.NEAREST, Image.Resampling.BICUBIC])
@pytest.mark.parametrize("cell", [4, 4.5, 12.4])
@pytest.mark.parametrize("number", [40, 61])
def test_a_size_is_told_with_no_more_places_than_are_sure(number, cell, how):
    """61 stitches of 4.5 px make 275 px, as 61 of 4.508 would: her picture cannot tell the two apart."""
    assert counted_px(sure_px(found_in(blocks(number, cell, how)))) == f"{cell:g} px"


def test_a_size_that_is_no_round_number_is_told_as_it_is():
    assert counted_px(sure_px(found_in(blocks(61, 4.33, Image.Resampling.NEAREST)))) == "4.33 px"


@pytest.mark.parametrize("pattern", PATTERNS[::3])
def test_resampling_to_another_size_is_seen_through(pattern):
    picture = painted(pattern)
    size = round(picture.width * 9.6), round(picture.height * 9.6)
    soft = enlarged(picture, 8).resize(size, Image.Resampling.LANCZOS)
    assert (read(soft) == codes(picture)).mean() > 0.99


def test_a_photograph_has_no_stitches():
    from sklearn.datasets import load_sample_images  # "china" and "flower", Creative Commons

    for photograph in load_sample_images().images:
        assert found_in(Image.fromarray(photograph)) is None
        assert found_in(Image.fromarray(photograph[::2, ::2])) is None


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


# --- soft edges, no whole number of pixels, noise ---------------------------------------------------


def with_loss(picture: Image.Image, quality: int) -> Image.Image:
    """As a picture becomes that was saved as JPEG once."""
    file = BytesIO()
    picture.save(file, "JPEG", quality=quality)
    return Image.open(file).convert("RGB")


def in_few_colours(picture: Image.Image) -> Image.Image:
    return picture.quantize(256).convert("RGB")


def nearest(got: np.ndarray, own: np.ndarray) -> np.ndarray:
    """Each code's nearest among the colours of the design."""
    kinds = np.unique(own)
    parted = [np.stack([of >> shift & 255 for shift in (16, 8, 0)], -1) for of in (got, kinds)]
    apart = ((parted[0][:, :, None] - parted[1]) ** 2).sum(-1)
    return kinds[apart.argmin(-1)]


def wrong_stitches(picture: Image.Image, larger: Image.Image) -> float:
    """The share of stitches whose colour comes nearest to another of the design's than its own."""
    got, own = read(larger), codes(picture)
    assert got.shape == own.shape
    return float((nearest(got, own) != own).mean())


# Pixels of a stitch → the share that may be wrong, crisp or soft; saved as JPEG of quality 90; and that in
# 256 colours. Chosen from what was seen, some way above it: where a stitch has 3 pixels, JPEG (which
# halves the colours' own resolution) hides a few.
MAY_BE_WRONG = {
    3.3: (0, 0.06, 0.06),
    4.5: (0, 0.02, 0.03),
    5.7: (0, 0.005, 0.02),
    7.25: (0, 0.001, 0.02),
    12.4: (0, 0, 0.01),
}
HOW = {"hard": Image.Resampling.NEAREST, "soft": Image.Resampling.BILINEAR}


@pytest.mark.parametrize("cell", MAY_BE_WRONG)
@pytest.mark.parametrize("how", HOW)
def test_any_enlargement_is_read_back(cell, how, record_property):
    """In full colour and in 256 colours, as it is and after a JPEG; on three designs."""
    shown = []
    for pattern in PATTERNS[::3]:
        picture = painted(pattern)
        size = round(picture.width * cell), round(picture.height * cell)
        larger = picture.resize(size, HOW[how])
        lossy = with_loss(larger, 90)
        shares = [wrong_stitches(picture, one) for one in (larger, lossy)]
        crisp, noisy, few = MAY_BE_WRONG[cell]
        assert shares[0] <= crisp and shares[1] <= noisy, (pattern, shares)
        for drawn, may in ((in_few_colours(larger), few), (in_few_colours(lossy), few)):
            found = found_in(drawn)
            assert found is not None, "stitches of 256 colours are at least guessed at"
            if isinstance(found, Comb) and not found.believed:
                assert found.cell_px == pytest.approx(cell, rel=0.01)
                shares.append(float("nan"))
                continue
            shares.append(wrong_stitches(picture, drawn))
            assert shares[-1] <= may, (pattern, shares)
        shown.append(f"{pattern} {cell} px {how}: " + ", ".join(f"{of:.2%}" for of in shares))
    record_property("shown", "\n".join(shown))


@pytest.mark.parametrize("quality", [90, 40, 20])
def test_loss_alone_makes_no_stitches(quality):
    """JPEG has a grid of its own, of 8 pixels; it is none of the design's."""
    from sklearn.datasets import load_sample_images

    for photograph in load_sample_images().images:
        assert found_in(with_loss(Image.fromarray(photograph), quality)) is None
    for pattern in PATTERNS[::3]:
        found = found_in(with_loss(painted(pattern), quality))
        assert found is None or not found.believed


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_a_picture_that_was_cut_anywhere_keeps_its_whole_stitches(data):
    """A stitch of which a good part is cut off is left out, and nothing else is moved or lost."""
    width, height = data.draw(st.integers(20, 50)), data.draw(st.integers(20, 50))
    chance = np.random.default_rng(data.draw(st.integers(0, 2**32)))
    kinds = np.array([(200, 40, 30), (30, 90, 60), (240, 235, 220), (60, 60, 160)], np.uint8)
    small = kinds[chance.integers(0, 4, (height, width))]
    cell = data.draw(st.sampled_from([3.3, 4.5, 5.7, 7.25, 12.4]))
    large = Image.fromarray(small).resize(
        (round(width * cell), round(height * cell)), Image.Resampling.BILINEAR
    )
    left, top = (data.draw(st.integers(0, int(cell))) for _ in range(2))
    got = read(large.crop((left, top, *large.size)))
    own = codes(Image.fromarray(small))
    cut = [height - got.shape[0], width - got.shape[1]]
    for gone, px in zip(cut, (top, left)):
        assert int(px / cell) <= gone <= px / cell + 1
    whole = own[cut[0] :, cut[1] :]
    assert (nearest(got, own) == whole).mean() > 0.99


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_a_chart_of_one_pixel_a_stitch_is_never_taken_for_a_soft_one(data):
    """Patches of colour as designs have them, of any size."""
    from scipy.ndimage import gaussian_filter

    height, width = data.draw(st.integers(12, 120)), data.draw(st.integers(12, 120))
    number = data.draw(st.integers(2, 20))
    chance = np.random.default_rng(data.draw(st.integers(0, 2**32)))
    field = gaussian_filter(chance.normal(size=(height, width)), data.draw(st.floats(0.5, 4)))
    steps = np.quantile(field, np.linspace(0, 1, number + 1)[1:-1])
    kinds = chance.integers(0, 256, (number, 3)).astype(np.uint8)
    picture = Image.fromarray(kinds[np.searchsorted(steps, field)])
    assert not isinstance(found_in(picture), Comb)


def test_edges_that_every_lattice_holds_as_well_are_looked_through_as_any_others():
    """Two halves of a small chart: one edge alone, so no frequency near it is any better."""
    from scipy.ndimage import gaussian_filter

    chance = np.random.default_rng(51)
    field = gaussian_filter(chance.normal(size=(12, 12)), 4.0)
    kinds = chance.integers(0, 256, (2, 3)).astype(np.uint8)
    picture = Image.fromarray(kinds[(field > np.median(field)).astype(int)])
    assert not isinstance(found_in(picture), Comb)


@pytest.mark.parametrize("seed", [283, 467, 490, 787, 920])
def test_patches_of_two_colours_are_stitches_of_a_pixel_since_a_soft_edge_has_shades(seed):
    """Of some three thousand that were looked at, these fit a comb by chance."""
    from scipy.ndimage import gaussian_filter

    chance = np.random.default_rng(seed)
    field = gaussian_filter(chance.normal(size=chance.integers(20, 60, 2)), chance.uniform(2, 4))
    kinds = chance.integers(0, 256, (2, 3)).astype(np.uint8)
    picture = Image.fromarray(kinds[(field > np.median(field)).astype(int)])
    assert not isinstance(found_in(picture), Comb)


def test_soft_drawings_without_stitches_get_no_size():
    """Some size always explains their edges a little; it must not be told for that."""
    told = []
    for number in range(14):
        drawn = Image.open(BytesIO(drawn_freely(number))).convert("RGB")
        for picture in (drawn, with_loss(drawn, 85)):
            found = found_in(picture)
            if found and (isinstance(found, Found) or borne_out(rgba(picture), found)):
                told.append(f"{number}: {found.cell_px:.1f} px")
    assert told == []


@pytest.mark.parametrize("cell", [3.3, 5.7, 9])
def test_stitches_that_are_hard_to_see_are_borne_out(cell):
    for pattern in PATTERNS[::3]:
        picture = painted(pattern)
        size = round(picture.width * cell), round(picture.height * cell)
        for quality in (90, 70):
            lossy = with_loss(picture.resize(size, HOW["soft"]), quality)
            found = found_in(lossy)
            assert isinstance(found, Comb) and borne_out(rgba(lossy), found)


def large_shapes(chance: random.Random) -> Image.Image:
    """A drawing of a few patches, whose edges lie far apart and on few of its columns."""
    wide, high = chance.randint(40, 70), chance.randint(40, 70)
    picture = Image.new("RGB", (wide, high), "white")
    draw = ImageDraw.Draw(picture)
    for colour in ("#3f6f8f", "#8fb4c9", "#8a97a3", "#e0a03a", "#4a3b2a", "#5a7a4a", "#a03040"):
        left, top = chance.randint(1, wide - 12), chance.randint(1, high - 12)
        right = min(left + chance.randint(4, wide // 2), wide - 2)
        bottom = min(top + chance.randint(4, high // 2), high - 2)
        shape = draw.rectangle if chance.random() < 0.5 else draw.ellipse
        shape((left, top, right, bottom), fill=colour)
    return picture


@pytest.mark.parametrize("cell", [6, 9])
def test_softened_stitches_of_large_patches_are_not_taken_for_larger_or_smaller_ones(cell):
    """The distances of a few edges look like stitches too, and so do halves of stitches."""
    chance = random.Random(27)
    for _ in range(6):
        picture = large_shapes(chance)
        larger = picture.resize((picture.width * cell, picture.height * cell), HOW["hard"])
        found = found_in(larger.filter(ImageFilter.GaussianBlur(1.2)))
        assert (found.across.number, found.down.number) == picture.size


@pytest.mark.parametrize(("cell", "blur_px"), [(5, 1), (7, 1.5), (9, 1.5), (9, 2), (11, 2)])
@pytest.mark.parametrize("quality", [None, 90])
def test_stitches_are_not_taken_for_halves_of_them(cell, blur_px, quality):
    """Halves explain a picture too, and that far better than halves of halves: the edge stands in their middle."""
    chance = random.Random(3)
    for _ in range(4):
        picture = large_shapes(chance)
        soft = enlarged(picture, cell).filter(ImageFilter.GaussianBlur(blur_px))
        found = found_in(with_loss(soft, quality) if quality else soft)
        assert (found.across.number, found.down.number) == picture.size
