"""A chart that one upright page holds at the least size of stitch is not cut."""

import re
from dataclasses import replace

import pytest

from packetgen.chart.editions import EDITIONS
from packetgen.diagnostics import Place
from packetgen.model import Bead, BeadCard, Colour, Knot
from packetgen.render.chart_pages import alternative
from packetgen.render.chart_paint import painted
from packetgen.render.packet import booklet
from packetgen.render.page_key import SYMBOL_EM, text_em
from packetgen.render.templates import environment
from tests.chart_only import reckoned
from tests.many_colours import MARKS, many_coloured, wheel
from tests.stitching import series
from tests.test_turned_chart import pages_of, sampler

# (edition, stitches across, down, colours): 50 × 64 is what many a small design is.
WHOLE = (
    ("colour", 50, 64, 4),
    ("colour", 50, 64, 12),
    ("colour", 50, 64, 24),
    ("colour", 55, 40, 12),
    ("colour", 20, 70, 12),
    ("black-and-white", 50, 64, 12),
    ("large-print", 33, 40, 12),
    ("tablet", 45, 55, 12),
)


@pytest.mark.parametrize(("name", "width", "height", "colours"), WHOLE)
def test_one_upright_page_holds_chart_and_key(name, width, height, colours):
    """No stitch is smaller than its edition promises, every thread is named, and there is no page map."""
    edition = EDITIONS[name]
    (page,) = pages_of(sampler(width, height, colours), edition)
    assert not page.turned and not page.page_map
    assert edition.least_cell_mm <= page.cell_mm <= edition.largest_cell_mm
    assert (page.sheet.tile.columns.shown, page.sheet.tile.rows.shown) == (width, height)
    assert len(page.key) == colours and not page.key_beyond


@pytest.mark.parametrize(("name", "width", "height", "colours"), WHOLE)
def test_numbers_scale_and_key_lie_inside_the_page_and_below_one_another(
    name, width, height, colours
):
    edition = EDITIONS[name]
    (page,) = pages_of(sampler(width, height, colours), edition)
    foot = page.grid_top_mm + height * page.cell_mm
    assert all(0 <= label.y_mm - 0.8 * page.edition.number_mm for label in page.labels)
    assert foot < max(label.y_mm for label in page.labels) < page.scale_at_mm[1]
    assert page.grid_left_mm + width * page.cell_mm < page.width_mm
    for entry in page.key:
        beside = entry.x_mm > page.grid_left_mm + width * page.cell_mm
        assert beside or entry.y_mm > page.scale_at_mm[1]
        assert entry.y_mm + 1.3 * edition.key_text_mm <= page.height_mm


@pytest.mark.parametrize("colours", [30, 45, 60])
def test_a_chart_whose_key_needs_the_room_is_cut_in_even_halves(colours):
    pages = pages_of(sampler(50, 64, colours), EDITIONS["colour"])
    spans = [(page.sheet.tile.rows.first, page.sheet.tile.rows.last) for page in pages]
    assert spans == [(1, 32), (33, 64)]
    assert all(page.cell_mm >= 3.0 for page in pages)


@pytest.mark.parametrize("high", range(48, 72, 3))
@pytest.mark.parametrize("name", ["large-print", "tablet"])
def test_the_key_of_a_page_of_several_stands_whole_below_its_grid(name, high):
    """Whatever the last digits of its lengths: a key of a few lines never needs a page of its own."""
    for colours in (5, 9, 12):
        pages = pages_of(sampler(90, high, colours), EDITIONS[name])
        assert len(pages) > 1 and not any(page.key_beyond for page in pages)


@pytest.mark.parametrize("name", ["colour", "black-and-white"])
def test_the_key_of_a_page_shows_the_knots_of_a_colour_and_leaves_them_room(name):
    """Of one that has cells too, and of one that is worked in knots alone and so has no square."""
    edition = EDITIONS[name]
    in_cells, knots_alone = MARKS[0], MARKS[3]
    rows = tuple("".join(MARKS[(x + y) % 3] for x in range(20)) for y in range(20))
    plain = many_coloured(rows, wheel(4))
    knots = tuple(Knot(mark, (5.5, 5.5), Place("")) for mark in (in_cells, knots_alone))
    (page,) = pages_of(reckoned(replace(plain, knots=knots)), edition)
    knotted = [entry for entry in page.key if entry.line.has_knot]
    assert [entry.line.mark for entry in knotted] == [in_cells, knots_alone]
    assert [entry.line.has_line for entry in knotted] == [False, False]
    assert [text_em(entry.line) for entry in knotted] == [2 * SYMBOL_EM, SYMBOL_EM]
    (bare,) = pages_of(reckoned(plain), edition)
    assert not any(entry.line.has_knot for entry in bare.key)
    circles = painted(page, {}).count(b" c ") - painted(bare, {}).count(b" c ")
    assert circles == 4 * (len(page.sheet.dots) + len(knotted)), "four curves each"


def test_a_key_without_colours_shows_knots_by_the_symbol_that_they_carry_on_the_chart():
    """Also of a colour that is worked in knots alone; where there are colours, the knot is a dot of its own."""
    rows = tuple("".join(MARKS[(x + y) % 3] for x in range(20)) for y in range(20))
    plain = many_coloured(rows, wheel(4))
    figures = reckoned(replace(plain, knots=(Knot(MARKS[3], (5.5, 5.5), Place("")),)))
    for name in ("black-and-white", "colour"):
        edition = EDITIONS[name]
        html = booklet(series(figures.pattern), figures, edition, environment()).html
        (page,) = pages_of(figures, edition)
        signs = [dot.sign for dot in page.sheet.dots if dot.sign]
        assert re.findall(r'<span class="knot">(.)</span>', html) == signs
        assert len(signs) == (name == "black-and-white")


@pytest.mark.parametrize("name", ["colour", "black-and-white"])
def test_the_key_of_a_page_shows_the_beads_that_lie_on_it_as_the_chart_shows_them(name):
    """On the first page of two one kind, on the other both; each in words, and for who cannot see the page."""
    edition = EDITIONS[name]
    plain = many_coloured(tuple(MARKS[0] * 90 for _ in range(60)), wheel(1))
    frost, dew = (BeadCard(id, id.title(), 2, 100, {}) for id in ("frost", "dew"))
    clear, red = Colour("03", "clear", "#dde8ee"), Colour("07", "red", "#aa2030")
    places = ((frost, clear, (3.5, 3.5)), (frost, clear, (80.5, 3.5)), (dew, red, (80.5, 9.5)))
    beads = tuple(Bead(card, colour, at, Place("")) for card, colour, at in places)
    pages = pages_of(reckoned(replace(plain, beads=beads)), edition)
    told = [[entry.line.words for entry in page.key if entry.line.bead] for page in pages]
    assert told == [["bead 03 clear"], ["bead 03 clear", "bead 07 red"]]
    for page in pages:
        drawn = {(dot.fill, dot.radius, dot.sign) for dot in page.sheet.dots}
        of_key = {(dot.fill, dot.radius, dot.sign) for one in page.key for dot in one.line.dots}
        assert drawn == of_key
        assert all(entry.line.words in alternative(page) for entry in page.key)
    plainly = pages_of(reckoned(plain), edition)
    assert not any(entry.line.dots for page in plainly for entry in page.key)
