"""Chart symbols: the shapes, the font made of them, and their giving to colours."""

import hashlib
import os
import re
import shutil
import subprocess
import sys
from io import BytesIO

import pytest
from fontTools.ttLib import TTFont
from shapely.geometry import Point, Polygon, box

from packetgen.chart.likeness import blackness
from packetgen.chart.likeness import likeness as stored_likeness
from packetgen.chart.shapes import NAMES, shape
from packetgen.chart.shapes_order import GIVING_ORDER
from packetgen.chart.symbols import BLANK, SHAPES, code_point, ink
from tests.bench.symbol_likeness import blurred_likeness, kinship, likeness, most_alike
from tests.symbol_font import STORED, build_symbol_font

FINEST = 90  # units; the thinnest line or gap that a 2.5 mm cell holds in print


@pytest.fixture(scope="module")
def font() -> TTFont:
    return TTFont(BytesIO(build_symbol_font()))


def paper(name: str):
    """The black of a shape as shapely reads its contours, even-odd."""
    black = Polygon()
    for contour in shape(name).contours:
        black = black.symmetric_difference(Polygon(contour))
    return black


def parts(area) -> int:
    return len(getattr(area, "geoms", [area])) if not area.is_empty else 0


# Shapes ---------------------------------------------------------------------


def test_there_are_shapes_enough_for_a_rich_chart():
    """At least 96 colours can each have a shape of their own, all differently named."""
    assert len(NAMES) >= 96
    assert len(set(NAMES)) == len(NAMES)


@pytest.mark.parametrize("name", NAMES)
def test_no_shape_touches_the_grid_and_each_stands_centred(name):
    """A shape keeps clear of the grid lines and stands in the middle of its cell."""
    xs, ys = zip(*(point for contour in shape(name).contours for point in contour))
    assert min(*xs, *ys) >= 120 and max(*xs, *ys) <= 880
    assert min(xs) + max(xs) == pytest.approx(1000, abs=2)
    assert min(ys) + max(ys) == pytest.approx(1000, abs=2)


@pytest.mark.parametrize("name", NAMES)
def test_outlines_are_sound(name):
    """Contours are simple, never cross, and wind so that ink is the area really printed.

    Checked against shapely, which knows nothing of how the outlines were cut.
    """
    rings = [Polygon(contour) for contour in shape(name).contours]
    assert all(ring.is_valid for ring in rings)
    assert not any(a.boundary.crosses(b.boundary) for a in rings for b in rings if a is not b)
    assert ink(name) * 1_000_000 == pytest.approx(paper(name).area)
    # Clockwise outside, anticlockwise holes: a contour's depth tells which it must be.
    for ring, contour in zip(rings, shape(name).contours):
        depth = sum(other.contains(Point(contour[0])) for other in rings if other is not ring)
        assert ring.exterior.is_ccw == (depth % 2 == 1)


@pytest.mark.parametrize("name", NAMES)
def test_no_line_or_gap_is_too_fine_to_print(name):
    """Half the finest width off every edge breaks no line; as much on fills no gap."""
    cell, black, half = box(0, 0, 1000, 1000), paper(name), FINEST / 2 - 2
    thinner, thicker = black.buffer(-half), black.buffer(half)
    assert parts(thinner) == parts(black) == parts(thicker)
    assert parts(cell - thicker) == parts(cell - black)
    # Beyond that only sharp corners may go.
    assert (black - thinner.buffer(half)).area < 0.11 * black.area


def test_ink_is_neither_a_speck_nor_a_blot():
    """Every shape can be seen, and leaves at least half of its cell to the tint."""
    assert all(0.07 < symbol.ink < 0.5 for symbol in SHAPES)
    assert ink("blank") == 0


def test_no_two_shapes_look_alike_when_small_and_blurred():
    """In a 24-pixel blurred cell every pair stays apart, by detail and by plain correlation."""
    (detail, *_), (plain, *_) = most_alike(likeness())[0], most_alike(blurred_likeness())[0]
    assert detail < 0.87
    assert plain < 0.98


def test_first_shapes_given_are_strongly_different():
    """The first thirty shapes are far apart, even when turned or mirrored twins count as near."""
    assert most_alike(kinship(), names=GIVING_ORDER[:30])[0][0] < 0.55


def test_each_shape_given_is_as_unlike_those_before_as_can_be_had():
    """The stored order is farthest first, as the likeness of the drawn shapes gives it today.

    A hair's breadth is allowed, for other versions of the imaging library.
    """
    assert sorted(GIVING_ORDER) == sorted(NAMES)
    table = kinship()
    order = [NAMES.index(name) for name in GIVING_ORDER]
    for place in range(1, len(order)):
        nearest = table[order[:place]].max(axis=0)
        assert nearest[order[place]] <= nearest[order[place:]].min() + 0.02, GIVING_ORDER[place]


def test_the_stored_likeness_is_that_of_the_drawn_shapes():
    """Measured anew; two hundredths are allowed for other versions of the imaging library."""
    table = kinship()
    for place, one in enumerate(NAMES):
        for before, other in enumerate(NAMES[:place]):
            measured = max(0.0, table[place, before])
            assert stored_likeness(one, other) == pytest.approx(measured, abs=0.02)
            assert stored_likeness(other, one) == stored_likeness(one, other)
        assert stored_likeness(one, one) == 1
        assert blackness(one) == pytest.approx(ink(one), abs=0.006)


# Font -----------------------------------------------------------------------


def test_each_glyph_fills_one_cell(font):
    """One em is one cell: every advance 1000, ascent 1000, nothing below the line."""
    assert font["head"].unitsPerEm == 1000
    assert {advance for advance, _ in font["hmtx"].metrics.values()} == {1000}
    os2, hhea = font["OS/2"], font["hhea"]
    assert (hhea.ascent, hhea.descent, hhea.lineGap) == (1000, 0, 0)
    assert (os2.sTypoAscender, os2.sTypoDescender, os2.sTypoLineGap) == (1000, 0, 0)
    assert (os2.usWinAscent, os2.usWinDescent) == (1000, 0)


def test_each_code_point_shows_one_shape(font):
    """Code points and glyphs match one to one, from U+E000, the bare cell, upwards."""
    expected = {0xE000: "blank"} | {0xE001 + i: name for i, name in enumerate(NAMES)}
    assert font.getBestCmap() == expected | {ord(" "): "space"}
    assert {ord(code_point(name)): name for name in ("blank", *NAMES)} == expected
    assert ord(BLANK) == 0xE000


def test_glyph_outlines_are_the_shapes(font):
    """What the font draws is the shape, point for point; the blank draws nothing."""
    glyphs = font["glyf"]
    assert glyphs["blank"].numberOfContours == 0
    for name in NAMES:
        points, ends, _ = glyphs[name].getCoordinates(glyphs)
        starts = [0, *(end + 1 for end in ends[:-1])]
        drawn = {frozenset(points[start : end + 1]) for start, end in zip(starts, ends)}
        assert drawn == {frozenset(contour) for contour in shape(name).contours}


def test_code_points_once_given_out_stay():
    """The names of the first 208 shapes keep their order, so that saved charts read back."""
    digest = hashlib.sha256("\n".join(NAMES[:208]).encode()).hexdigest()
    assert digest == "c8a8da7d24edb99cb1b7f7248100571300e282b65eb3eb69f36a70bb5b849bea"


def test_font_bytes_repeat():
    """Two builds, and one in another process, time zone and hash seed, give the same bytes."""
    here = build_symbol_font()
    assert build_symbol_font() == here
    code = (
        "import hashlib; from tests.symbol_font import build_symbol_font as b;"
        "print(hashlib.sha256(b()).hexdigest())"
    )
    env = os.environ | {
        "PYTHONHASHSEED": "4711",
        "TZ": "Pacific/Auckland",
        "SOURCE_DATE_EPOCH": "1",
    }
    env["PYTHONPATH"] = os.pathsep.join(path for path in sys.path if path)
    run = subprocess.run(
        [sys.executable, "-c", code], env=env, capture_output=True, text=True, check=True
    )
    assert run.stdout.strip() == hashlib.sha256(here).hexdigest()


def test_the_font_that_lies_there_is_the_one_that_the_shapes_make():
    """Where this fails, shapes have changed: python -m tests.symbol_font"""
    assert STORED.read_bytes() == build_symbol_font()


@pytest.mark.skipif(not shutil.which("pdftotext"), reason="poppler's pdftotext is not installed")
def test_chart_rows_read_back_from_a_pdf_cell_by_cell(tmp_path):
    """Rows of symbols come out of a PDF as the code points that went in, each in its 3 mm cell.

    Set by WeasyPrint, read by poppler's pdftotext, which also tells where the rows stand.
    """
    weasyprint = pytest.importorskip("weasyprint")
    (tmp_path / "symbols.ttf").write_bytes(build_symbol_font())
    characters = [symbol.code_point for symbol in SHAPES]
    rows = ["".join(characters[i : i + 32]) for i in range(0, 192, 32)]
    rows += [BLANK * 5 + characters[0] + BLANK * 20 + characters[1] * 3 + BLANK * 3] * 50
    weasyprint.HTML(
        string=(
            '<style>@font-face {font-family: "Potting Symbols"; src: url(symbols.ttf)}'
            "@page {size: 100mm 180mm; margin: 0} body {margin: 0}"
            'pre {font: 3mm/1 "Potting Symbols"; margin: 0}</style><pre>'
            + "\n".join(rows)
            + "</pre>"
        ),
        base_url=str(tmp_path) + os.sep,
    ).write_pdf(tmp_path / "chart.pdf")
    command = ["pdftotext", "-bbox", "-enc", "UTF-8", str(tmp_path / "chart.pdf"), "-"]
    text = subprocess.run(command, capture_output=True, check=True).stdout.decode("utf-8")
    words = re.findall(
        r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax=".*?">(.*?)</word>', text
    )
    assert [word for *_, word in words] == rows
    cell_pt = 3 / 25.4 * 72
    first = float(words[0][1])
    for place, (left, top, right, _) in enumerate(words):
        assert float(left) == pytest.approx(0, abs=0.05)
        assert float(right) == pytest.approx(32 * cell_pt, abs=0.05)
        assert float(top) - first == pytest.approx(place * cell_pt, abs=0.05)
