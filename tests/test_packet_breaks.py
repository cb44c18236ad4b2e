"""Where a packet's pages end: what belongs together stays together, wherever on a page it comes."""

import re
from datetime import date

import numpy as np
import pypdfium2 as pdfium
import pytest

from packetgen.chart.editions import COLOUR
from packetgen.pipeline.packets import papers
from packetgen.reckon.figures import figures
from packetgen.render.packet import packet
from packetgen.render.pdf import PAPERS_MM, documents
from packetgen.render.templates import environment
from tests.read_back import Document
from tests.stitching import option, pattern, piece, series
from tests.test_packet_page import cover

SPRIG = pattern("mt", story_markdown="It grew by the gate.\n\n## In May\n\nIt flowered.")


@pytest.fixture(scope="module")
def html() -> str:
    return packet(series(SPRIG), figures(SPRIG, piece()), b"", environment()).html


def pages(html: str, above_mm: int) -> list[str]:
    """The texts of the pages from the cautions to the revisions, when so much of the first is taken."""
    rest = html[html.index("<h2>Care and cautions") :]
    return pages_with(html, rest[: rest.index("<h2>Swap calendar")], above_mm)


def pages_with(html: str, kept: str, above_mm: int) -> list[str]:
    """The texts of pages in the packet's style, when so much of the first is taken."""
    head = html[: html.index("<body>")]
    page = f'{head}<body><h1>A Sprig</h1><div style="height: {above_mm}mm"></div><section>{kept}'
    made = documents(page, {}, b"x", {}, COLOUR.page_mm, PAPERS_MM, {}, date(2026, 11, 25))
    return Document(made["a4"]).texts


@pytest.mark.parametrize("above_mm", [60, 150, 170, 185, 200, 215])
def test_cautions_begin_on_the_page_of_their_heading(html, above_mm):
    texts = pages(html, above_mm)
    (where,) = (text for text in texts if "Care and cautions" in text)
    assert "Before anything else" in where and "Small magnets" in where
    assert ("A Sprig" in where.split("Care and cautions")[0]) == (above_mm < 180)


def test_the_story_has_a_heading_of_its_own(html):
    credits = html[html.index("<h2>Credits and licence") :]
    assert credits.index("Designer") < credits.index("<h3>The story</h3>")
    assert "<h3>The story</h3>\n<p>It grew by the gate.</p>\n<h4>In May</h4>" in credits


def test_a_pattern_without_a_story_has_no_heading_for_it():
    silent = pattern("mt", story_markdown="\n")
    made = packet(series(silent), figures(silent, piece()), b"", environment()).html
    assert "Credits and licence" in made and "The story" not in made


@pytest.mark.parametrize("above_mm", range(180, 241, 6))
@pytest.mark.parametrize("rows", [2, 3, 5, 9])
def test_no_table_leaves_one_or_two_of_its_rows_on_a_page(html, rows, above_mm):
    """Not at its foot and not at its head; one of five rows or fewer is never parted."""
    table = "".join(f"<tr><th scope='row'>Row {n}</th><td>moss</td></tr>" for n in range(rows))
    table = (
        f"<table><thead><tr><td>Colour</td><td>Name</td></tr></thead><tbody>{table}</tbody></table>"
    )
    texts = pages_with(html, f"<h3>Thread</h3>{table}<p>Below it.</p>", above_mm)
    on_pages = [n for n in (text.count("moss") for text in texts) if n]
    assert sum(on_pages) == rows
    assert min(on_pages) >= min(3, rows)
    (headed,) = (text for text in texts if "Thread" in text)
    assert "Row 0" in headed


@pytest.mark.parametrize("above_mm", range(130, 241, 10))
def test_the_usual_counts_part_between_their_kinds_of_cloth(html, above_mm):
    """Aida, cloth worked over two, cloth worked over one: a page ends with a kind, or three rows into it."""
    table = html[html.index("<h3>On the usual counts") : html.index("<h2>Working notes")]
    table = table[: table.rindex("</section>")]
    texts = pages_with(html, table, above_mm)
    for kind in (r"Aida \d+", "over two", "over one"):
        on_pages = [n for n in (len(re.findall(kind, text)) for text in texts) if n]
        assert len(on_pages) == 1 or min(on_pages) >= 3, on_pages
    assert sum("On the usual counts" in text for text in texts) == 1


def test_the_pages_of_a_small_packet_follow_one_another_without_empty_halves():
    """Of 50 × 64 stitches. What stands above the footer reaches into the lowest third of every page with
    running text; its last one, on which nothing follows, may end sooner."""
    frame = ["m" * 50] + ["m" + "t" * 20 + "." * 28 + "m"] * 62 + ["m" * 50]
    small = pattern(
        *frame, story_markdown="It grew by the gate.", cloths=(option(14), option(28, 2))
    )
    source = packet(series(small), figures(small, piece()), cover(), environment())
    document = pdfium.PdfDocument(papers(small, "", source, environment())["sprig-letter.pdf"])
    texts = [page.get_textpage().get_text_range() for page in document]
    running = [
        number
        for number, text in enumerate(texts)
        if number and not re.match(r"Chart \d|Template", text)
    ]
    assert 6 <= len(running) < len(texts) - 2
    filled = {number + 1: inked_share(document[number]) for number in running[:-1]}
    assert min(filled.values()) > 2 / 3, filled


def inked_share(page: pdfium.PdfPage) -> float:
    """How far down a page reaches what stands between its margins, of 1 at the footer's line."""
    top_mm, foot_mm = 12.0, 279.4 - 17.0
    grey = np.asarray(page.render(scale=1).to_pil().convert("L"))
    inked = np.flatnonzero((grey < 200).any(axis=1)) * 25.4 / 72
    return float((inked[inked < foot_mm - 2].max() - top_mm) / (foot_mm - top_mm))
