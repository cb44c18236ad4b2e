"""Share pictures: words that always stand in their room, in the type and colours of the series."""

from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
from PIL import Image, ImageChops, ImageDraw, features

from packetgen.colour import channels
from packetgen.model.look import BY_DAY, Faces, FontFile, Look
from packetgen.render.picture_letters import Face
from packetgen.render.share_picture import PICTURE_PX, share_picture
from packetgen.render.site_pictures import SHARE_SIZES_PX

PLAIN = Image.new("RGB", (60, 60))
# "Shira", "Layla": names that are written from the right.
HEBREW, ARABIC = "\u05e9\u05d9\u05e8\u05d4", "\u0644\u064a\u0644\u0649"

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
    assert shared.size == SHARE_SIZES_PX["wide"] == (1200, 630)
    paper = shared.getpixel((2, 2))
    end = 1200 - PICTURE_PX["wide"][0]
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


@pytest.mark.parametrize("title", TITLES, ids=lambda title: title[:12])
@pytest.mark.parametrize("shape", ["square", "upright"])
def test_every_title_stands_wholly_below_the_picture_of_a_standing_shape(shape, title):
    shared = share_picture(title, ("The Hedge Year", "Designed by Isolde Fernsby"), PLAIN, shape)
    width, height = SHARE_SIZES_PX[shape]
    top = PICTURE_PX[shape][1]
    assert shared.size == (width, height)
    paper = channels(BY_DAY.paper)
    edges = (
        (0, top, 48, height),
        (width - 48, top, width, height),
        (0, height - 20, width, height),
    )
    for box in (*edges, (0, top, width, top + 20)):
        assert set(shared.crop(box).get_flattened_data()) == {paper}
    assert len(set(shared.crop((48, top + 20, width - 48, height - 20)).get_flattened_data())) > 20


def test_words_have_the_colours_of_the_series():
    """Paper, title, stitches, first line and quiet line, each in its own colour."""
    light = BY_DAY.__class__(
        "#102030", "#102030", "#ffeedd", "#00ff00", "#ff00ff", "#eeeeff", "#000000"
    )
    shared = share_picture("Hm", ("One", "Two"), PLAIN, look=Look(light=light))
    seen = set(shared.crop((0, 0, 560, 630)).get_flattened_data())
    for colour in (light.paper, light.heading, light.ink, light.quiet):
        assert channels(colour) in seen
    assert any(r > 150 and b > 150 and g < 60 for r, g, b in seen)  # stitches, under their light


def own_face(letters):
    """One of the project's own files, as if an author had given it with these letters."""
    path = Path(__file__).parent.parent / "packetgen" / "fonts" / "text-italic.ttf"
    return FontFile("own.ttf", path.read_bytes(), frozenset(map(ord, letters)))


def test_an_author_s_face_writes_what_it_has_letters_for():
    """And the project's own face writes the rest."""
    plain, own = (
        share_picture("Hm", ("Rue and Zest",), PLAIN, look=Look(faces=faces))
        for faces in (Faces(), Faces(text=own_face("Rue and")))
    )
    assert ImageChops.difference(plain, own).getbbox() is not None
    face = Face("text-regular.ttf", "text-regular-ext.ttf", 30, own_face("Rue"))
    assert face.can_write("Rue and Zest")


@pytest.mark.parametrize("name", [HEBREW, ARABIC])
def test_a_name_that_no_face_can_write_is_left_out(name):
    """Rather than boxes or a gap: the picture is the one without that line."""
    with_name = share_picture("A Sprig", ("The Hedge Year", f"designed by {name}"), PLAIN)
    without = share_picture("A Sprig", ("The Hedge Year", ""), PLAIN)
    assert not Face("text-regular.ttf", "text-regular-ext.ttf", 30).can_write(name)
    ink = np.asarray(with_name.crop((0, 0, 560, 630)).convert("L")) < 120
    bare = np.asarray(without.crop((0, 0, 560, 630)).convert("L")) < 120
    assert ink.sum() == bare.sum()


@pytest.mark.parametrize("title", [HEBREW, "\u4e2d\u6587"])
def test_a_title_that_no_face_can_write_is_left_out(title):
    shared = share_picture(title, ("The Hedge Year",), PLAIN)
    assert (
        ImageChops.difference(shared, share_picture("", ("The Hedge Year",), PLAIN)).getbbox()
        is None
    )


def two_letter_face():
    """A face of two Hebrew letters: alef is a low block, bet a high one."""
    builder = FontBuilder(1000)
    builder.setupGlyphOrder([".notdef", "alef", "bet"])
    builder.setupCharacterMap({0x05D0: "alef", 0x05D1: "bet"})
    heights = {".notdef": 0, "alef": 300, "bet": 900}
    glyphs = {}
    for name, height in heights.items():
        pen = TTGlyphPen(None)
        if height:
            pen.moveTo((100, 0))
            for point in ((100, height), (400, height), (400, 0)):
                pen.lineTo(point)
            pen.closePath()
        glyphs[name] = pen.glyph()
    builder.setupGlyf(glyphs)
    builder.setupHorizontalMetrics(dict.fromkeys(heights, (500, 100)))
    builder.setupHorizontalHeader(ascent=1000, descent=-200)
    builder.setupNameTable({"familyName": "Two Letters", "styleName": "Regular"})
    builder.setupOS2(sTypoAscender=1000, usWinAscent=1000, usWinDescent=200)
    builder.setupPost()
    target = BytesIO()
    builder.save(target)
    return FontFile("two.ttf", target.getvalue(), frozenset({0x05D0, 0x05D1}))


@pytest.mark.skipif(not features.check("raqm"), reason="this Pillow cannot order such letters")
@pytest.mark.parametrize("before", ["", "designed by "])
def test_letters_that_run_from_the_right_are_drawn_from_the_right(before):
    """Of alef and bet, alef is read first, and so stands at the right end of the line."""
    face = Face("text-regular.ttf", "text-regular-ext.ttf", 40, two_letter_face())
    text = f"{before}\u05d0\u05d1"
    assert face.can_write(text)
    paper = Image.new("L", (600, 80), 255)
    face.write(ImageDraw.Draw(paper), 10, 60, text, 0)
    start = round(10 + face.width(before))
    left, right = (
        np.flatnonzero(np.asarray(paper)[:, x] < 100).size for x in (start + 10, start + 30)
    )
    assert left > 2 * right > 0
