"""A chart that one page on its side holds is not cut in two for an upright one."""

import pytest

from packetgen.chart.editions import EDITIONS
from packetgen.chart.sheet import look_of
from packetgen.pipeline.packets import papers
from packetgen.render.chart_layout import NUMBERS_WIDE_MM
from packetgen.render.chart_pages import chart_pages
from packetgen.render.key import key_rows
from packetgen.render.packet import booklet, symbols_of
from packetgen.render.page_key import page_lines
from packetgen.render.templates import environment
from tests.chart_only import reckoned, symbols
from tests.many_colours import MARKS, many_coloured, wheel
from tests.outside import rows as table
from tests.read_back import READERS, Document, in_marks, whole_chart
from tests.stitching import series

MM = 72 / 25.4
# (edition, stitches across, down): as much as one turned page of it holds in a dozen colours.
TURNED = (
    ("colour", 70, 45),
    ("colour", 64, 50),
    ("black-and-white", 75, 41),
    ("large-print", 38, 32),
    ("tablet", 54, 44),
)
# Where the upright page of the edition holds all, or neither does.
UPRIGHT = (
    ("colour", 40, 40),
    ("colour", 53, 45),
    ("colour", 53, 80),
    ("colour", 64, 53),
    ("colour", 77, 20),
    ("colour", 140, 100),
    ("large-print", 70, 45),
    ("tablet", 75, 45),
)


def sampler(width: int, height: int, colours: int = 12):
    """Stripes of every colour, aslant, so that each comes in any part of the chart."""
    rows = tuple("".join(MARKS[(x + y) % colours] for x in range(width)) for y in range(height))
    return reckoned(many_coloured(rows, wheel(colours)))


def pages_of(figures, edition):
    look = look_of(figures.pattern, symbols_of(figures), edition.manner)
    return chart_pages(
        figures.pattern, look, page_lines(key_rows(figures, look), figures.beads, look), edition
    )


@pytest.mark.parametrize(("name", "width", "height"), TURNED)
def test_one_turned_page_takes_what_would_be_cut_for_upright_ones(name, width, height):
    """Its stitches are no smaller than on any page of the edition, and it names all its threads."""
    edition = EDITIONS[name]
    (page,) = pages_of(sampler(width, height), edition)
    assert page.turned and page.width_mm > page.height_mm
    assert edition.least_cell_mm <= page.cell_mm <= edition.largest_cell_mm
    assert (page.sheet.tile.columns.shown, page.sheet.tile.rows.shown) == (width, height)
    assert len(page.key) == 12 and not page.key_beyond


@pytest.mark.parametrize(("name", "width", "height"), TURNED)
def test_the_key_of_a_turned_page_stands_clear_of_the_grid_and_of_the_edge(name, width, height):
    edition = EDITIONS[name]
    (page,) = pages_of(sampler(width, height), edition)
    right = page.grid_left_mm + width * page.cell_mm + NUMBERS_WIDE_MM
    for entry in page.key:
        below = entry.y_mm > page.scale_at_mm[1]
        assert below or entry.x_mm >= right
        assert entry.x_mm + 10 * edition.key_text_mm < page.width_mm
        assert entry.y_mm + 1.3 * edition.key_text_mm <= page.height_mm
    assert page.scale_at_mm[1] < page.height_mm


@pytest.mark.parametrize(("name", "width", "height"), UPRIGHT)
def test_all_other_charts_stand_upright(name, width, height):
    assert not any(page.turned for page in pages_of(sampler(width, height), EDITIONS[name]))


def test_a_chart_is_not_turned_when_its_key_would_not_stand_beside_it():
    """Sixty threads are named on the pages where they are stitched, and two upright pages have the room."""
    pages = pages_of(sampler(70, 45, colours=60), EDITIONS["colour"])
    assert len(pages) > 1 and not any(page.turned for page in pages)


@pytest.fixture(scope="module", params=TURNED, ids=lambda turned: turned[0] + str(turned[1:]))
def turned(request):
    """The figures of a turned chart, its edition and its files by paper."""
    name, width, height = request.param
    figures, edition = sampler(width, height), EDITIONS[name]
    source = booklet(series(figures.pattern), figures, edition, environment())
    files = papers(figures.pattern.id, 1, source, environment())
    by_paper = {path.removesuffix(".pdf").rpartition("-")[2]: data for path, data in files.items()}
    return figures, edition, {paper: Document(data) for paper, data in by_paper.items()}


@pytest.mark.slow
def test_a_turned_page_lies_in_the_middle_of_the_paper_laid_on_its_side(turned):
    """The sides of the paper change places; viewers and printers need not turn anything."""
    _, edition, files = turned
    sizes = {row["name"].lower(): row for row in table("paper_sizes_points")}
    assert set(files) >= {"a4", "letter"} or not edition.on_paper
    for paper, document in files.items():
        key, chart = document.by_pypdf.pages
        if edition.on_paper:
            short, long = (float(sizes[paper][side]) for side in ("width_pt", "height_pt"))
        else:
            short, long = (side * MM for side in edition.page_mm)
        for page, (width, height) in ((key, (short, long)), (chart, (long, short))):
            assert "/Rotate" not in page
            for box in (page.mediabox, page.trimbox):
                assert float(box.width) == pytest.approx(width, abs=0.01)
                assert float(box.height) == pytest.approx(height, abs=0.01)
        # What was laid out begins at 0, 0: as much paper lies before it as after it.
        high, wide = edition.page_mm
        assert float(chart.mediabox.left) == pytest.approx((wide - long / MM) / 2 * MM, abs=0.01)
        assert float(chart.mediabox.bottom) == pytest.approx((high - short / MM) / 2 * MM, abs=0.01)


@pytest.mark.slow
def test_a_turned_chart_is_read_back_cell_by_cell_by_two_readers(turned):
    figures, edition, files = turned
    for document in files.values():
        for reader in READERS:
            charts = reader(document.pdf)
            rows = in_marks(whole_chart(charts.values()), symbols(figures))
            assert rows == figures.pattern.grid.rows
            assert all(chart.cell_pt >= edition.least_cell_mm * MM for chart in charts.values())


@pytest.mark.slow
def test_heading_grid_key_and_footer_of_a_turned_page_are_whole(turned):
    """No letter comes nearer to an edge of paper than 4 mm; the footer runs from margin to margin."""
    _, edition, files = turned
    edge = 4 * MM if edition.on_paper else 0
    for document in files.values():
        page, letters = document.by_pypdf.pages[1], document.letters[1]
        width, height = float(page.mediabox.width), float(page.mediabox.height)
        for letter in letters:
            assert edge <= letter.x0 and letter.x1 <= width - edge, letter
            assert edge <= letter.y0 and letter.y1 <= height - edge, letter
        text = " ".join(document.texts[1].split())
        assert "page 2 of 2" in text and "revision 1" in text
        footer = [
            letter for letter in letters if letter.y1 < min(letter.y1 for letter in letters) + 30
        ]
        margin = edition.margins_mm[1] * MM + (width - edition.page_mm[1] * MM) / 2
        assert min(letter.x0 for letter in footer) == pytest.approx(margin, abs=2)
        assert max(letter.x1 for letter in footer) == pytest.approx(width - margin, abs=2)
        for number in range(1, 13):
            assert f"dye bath {number}" in text
