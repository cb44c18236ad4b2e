"""Where a packet's pages end: what belongs together stays together, wherever on a page it comes."""

from datetime import date

import pytest

from packetgen.chart.editions import COLOUR
from packetgen.reckon.figures import figures
from packetgen.render.packet import packet
from packetgen.render.pdf import PAPERS_MM, documents
from packetgen.render.templates import environment
from tests.read_back import Document
from tests.stitching import pattern, piece, series

SPRIG = pattern("mt", story_markdown="It grew by the gate.\n\n## In May\n\nIt flowered.")


@pytest.fixture(scope="module")
def html() -> str:
    return packet(series(SPRIG), figures(SPRIG, piece()), b"", environment()).html


def pages(html: str, above_mm: int) -> list[str]:
    """The texts of the pages from the cautions to the revisions, when so much of the first is taken."""
    head, rest = html[: html.index("<body>")], html[html.index("<h2>Care and cautions") :]
    kept = rest[: rest.index("<h2>Swap calendar")]
    page = f'{head}<body><h1>A Sprig</h1><div style="height: {above_mm}mm"></div><section>{kept}'
    made = documents(page, {}, b"x", {}, COLOUR.page_mm, PAPERS_MM, {}, date(2026, 11, 25))
    return Document(made["a4"]).texts


@pytest.mark.parametrize("above_mm", [60, 150, 170, 185, 200, 215])
def test_cautions_begin_on_the_page_of_their_heading(html, above_mm):
    texts = pages(html, above_mm)
    (where,) = (text for text in texts if "Care and cautions" in text)
    assert "Before anything else" in where and "Small magnets" in where
    assert ("A Sprig" in where.split("Care and cautions")[0]) == (above_mm < 160)


def test_the_story_has_a_heading_of_its_own(html):
    credits = html[html.index("<h2>Credits and licence") :]
    assert credits.index("Designer") < credits.index("<h3>The story</h3>")
    assert "<h3>The story</h3>\n<p>It grew by the gate.</p>\n<h4>In May</h4>" in credits


def test_a_pattern_without_a_story_has_no_heading_for_it():
    silent = pattern("mt", story_markdown="\n")
    made = packet(series(silent), figures(silent, piece()), b"", environment()).html
    assert "Credits and licence" in made and "The story" not in made
