"""Somebody who publishes a drawing of her chart as its photograph is told that the chart can be copied from it."""

import time
from dataclasses import replace
from functools import cache
from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageFilter

from packetgen.colour import blended, channels
from packetgen.diagnostics import Problems
from packetgen.model import BARE, Photo
from packetgen.pipeline import proof
from packetgen.reckon.figures import figures
from packetgen.render.photo_told import READ_BACK, complain_of_photo_told, read_back
from packetgen.render.picture_told import detail_of, signs
from packetgen.render.public_picture import face, mounted_public
from tests.attacked_designs import DESIGNS
from tests.demo_patterns import CONTENT, PATTERNS
from tests.stitching import piece

PX = 16  # a stitch


@cache
def designs():
    """By name, figures and piece, all of them sold: those of the demo, and some by rule."""
    (demo,) = proof(CONTENT).reckoned
    sold = [replace(of, pattern=replace(of.pattern, given_away=())) for of in demo.figures]
    return {of.pattern.id: (of, demo.series.finish) for of in sold} | {
        name: (figures(drawn(), piece()), piece()) for name, drawn in DESIGNS.items()
    }


def rendering(pattern, blur, border=0):
    """The chart in the colours of its threads, softened by `blur` stitches, with so many of bare cloth round it."""
    cloth = channels(pattern.cloths[0].colour.hex)
    first = pattern.thread_sets[0].id
    colours = {
        line.mark: channels(blended(tuple(colour.hex for colour in line.threads[first])))
        for line in pattern.key
    }
    cells = np.array([[colours.get(mark, cloth) for mark in row] for row in pattern.grid.rows])
    high, wide = cells.shape[:2]
    drawn = Image.new("RGB", (wide + 2 * border, high + 2 * border), cloth)
    drawn.paste(Image.fromarray(cells.astype(np.uint8)), (border, border))
    large = drawn.resize((drawn.width * PX, drawn.height * PX), Image.Resampling.NEAREST)
    return large.filter(ImageFilter.GaussianBlur(blur * PX))


def with_photo(pattern, image, **changes):
    data = BytesIO()
    image.save(data, "JPEG", quality=85)
    return replace(pattern, photo=Photo(data.getvalue(), *image.size), **changes)


def told(pattern):
    problems = Problems()
    complain_of_photo_told(pattern, problems)
    return [problem.code for problem in problems]


def copied(image, pattern):
    """Share of the detail that a copier gets who knows where each stitch lies, and takes its middle for the
    nearest of the middle colours of all marks."""
    chart = signs(pattern.grid.rows)
    seen = np.asarray(image, float)[PX // 2 :: PX, PX // 2 :: PX]
    marks = np.unique(chart)
    colours = np.array([np.median(seen[chart == mark], axis=0) for mark in marks])
    said = marks[((seen[:, :, None] - colours) ** 2).sum(-1).argmin(-1)]
    return (said == chart)[detail_of(chart)].mean()


@pytest.mark.parametrize("blur", [0.5, 1.0, 1.5])
@pytest.mark.parametrize("name", [*PATTERNS, *DESIGNS])
def test_who_can_copy_most_of_the_detail_is_why_it_is_told(name, blur):
    """The nearest to the limit are left to chance: the copier of this test has another way."""
    pattern = designs()[name][0].pattern
    image = rendering(pattern, blur)
    share = copied(image, pattern)
    if abs(share - READ_BACK) > 0.06:
        expected = ["photo-tells-chart"] if share > READ_BACK else []
        assert told(with_photo(pattern, image)) == expected, share


@pytest.mark.parametrize("blur", [0.5, 1.0, 1.5])
def test_it_is_told_of_drawings_at_each_softness(blur):
    assert told(with_photo(designs()["bars"][0].pattern, rendering(DESIGNS["bars"](), blur)))


@pytest.mark.parametrize("name", PATTERNS)
def test_bare_cloth_round_the_drawing_hides_nothing(name):
    pattern = designs()[name][0].pattern
    for border in (3, 12):
        assert told(with_photo(pattern, rendering(pattern, 0.2, border))), border


@pytest.mark.parametrize("name", PATTERNS[:3])
def test_the_light_of_a_lamp_hides_nothing(name):
    pattern = designs()[name][0].pattern
    lit = rendering(pattern, 0.2).point(lambda level: level * 0.8 + 10)
    red, green, blue = lit.split()
    warm = Image.merge("RGB", (red, green, blue.point(lambda level: level * 0.7)))
    assert told(with_photo(pattern, warm))


@pytest.mark.parametrize("name", [*PATTERNS, *DESIGNS])
def test_the_public_picture_of_a_design_would_not_be_complained_of(name):
    """As it is, and cut to the design: it is stitched from another chart."""
    of, board = designs()[name]
    image = mounted_public(face(of, board), board, 1200)
    assert told(with_photo(of.pattern, image)) == []
    for share in (1.0, 0.8, 0.65):
        assert told(with_photo(of.pattern, _middle(image, of.pattern, share))) == []


@pytest.mark.parametrize("name", [*PATTERNS, *DESIGNS])
def test_a_photograph_of_something_else_is_not_complained_of(name):
    from sklearn.datasets import load_sample_images  # "china" and "flower", Creative Commons

    pattern = designs()[name][0].pattern
    for photograph in map(Image.fromarray, load_sample_images().images):
        assert told(with_photo(pattern, photograph)) == []
        assert told(with_photo(pattern, _middle(photograph, pattern, 1.0))) == []


def _middle(image, pattern, share):
    """A part of the picture in the chart's proportions."""
    across, down = pattern.grid.width, pattern.grid.height
    scale = share * min(image.width / across, image.height / down)
    wide, high = int(across * scale), int(down * scale)
    left, top = (image.width - wide) // 2, (image.height - high) // 2
    return image.crop((left, top, left + wide, top + high))


@pytest.mark.parametrize("name", PATTERNS)
def test_at_an_angle_on_a_table_it_is_a_photograph(name):
    """What the advice says to do helps."""
    pattern = designs()[name][0].pattern
    table = Image.new("RGB", (1600, 1200), "#7a5c42")
    turned = rendering(pattern, 0.2).convert("RGBA").rotate(12, expand=True)
    turned.thumbnail((1100, 1100))
    table.paste(turned, (250, 40), turned)
    assert told(with_photo(pattern, table)) == []


def test_what_anybody_may_have_may_be_shown():
    pattern = designs()["bars"][0].pattern
    image = rendering(pattern, 0.2)
    assert told(with_photo(pattern, image)) == ["photo-tells-chart"]
    assert told(with_photo(pattern, image, given_away=("chart",))) == []
    assert told(pattern) == []


def test_a_chart_of_a_few_stitches_is_not_judged_by_chance():
    of = figures(DESIGNS["bars"](), piece()).pattern
    small = replace(of, grid=replace(of.grid, rows=("mm.", ".m.")))
    assert told(with_photo(small, Image.new("RGB", (90, 60), "#a04030"))) == []
    bare = replace(of, grid=replace(of.grid, rows=(BARE * 9,) * 6))
    assert told(with_photo(bare, Image.new("RGB", (90, 60), "#a04030"))) == []


def test_looking_at_a_photograph_costs_less_than_drawing_a_picture():
    of, board = designs()[PATTERNS[0]]
    pattern = with_photo(of.pattern, rendering(of.pattern, 0.5))
    read_back(np.zeros((90, 90, 3), np.uint8), pattern)
    begun_s = time.process_time()
    complain_of_photo_told(pattern, Problems())
    looked_s = time.process_time() - begun_s
    begun_s = time.process_time()
    mounted_public(face(of, board), board, 1200)
    assert looked_s < (time.process_time() - begun_s) / 2
