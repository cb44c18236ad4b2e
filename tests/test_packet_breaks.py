"""Where a packet's pages end: what belongs together stays together, wherever on a page it comes."""

import re
from dataclasses import replace
from datetime import date

import numpy as np
import pypdfium2 as pdfium
import pytest

from packetgen.chart.editions import COLOUR
from packetgen.model import (
    Colour,
    Counter,
    DateRule,
    KeyLine,
    Occasion,
    Pattern,
    Stitch,
    ThreadSet,
)
from packetgen.pipeline.packets import papers
from packetgen.reckon.figures import figures
from packetgen.render.key import KeyRow, KindOfWork, fits_a_page
from packetgen.render.packet import packet
from packetgen.render.pdf import PAPERS_MM, documents
from packetgen.render.templates import environment
from tests.read_back import Document
from tests.stitching import HERE, card, option, pattern, piece, series
from tests.test_packet_page import cover

SPRIG = pattern("mt", story_markdown="It grew by the gate.\n\n## In May\n\nIt flowered.")


@pytest.fixture(scope="module")
def html() -> str:
    return packet(series(SPRIG), figures(SPRIG, piece()), b"", environment()).html


def pages(html: str, above_mm: int) -> list[str]:
    """The texts of the pages of the cautions, when so much of the first is taken."""
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


def test_the_story_stands_between_the_sizes_and_the_working_notes(html):
    told = html[html.index("<h2>Sizes and cuts") : html.index("<h2>Working notes")]
    told = told.rpartition("<section")[0].rpartition("<section")[2]
    assert "<h2>The story</h2>\n<p>It grew by the gate.</p>\n<h3>In May</h3>" in told
    assert html.count("It grew by the gate.") == 1


def test_a_pattern_without_a_story_has_no_heading_for_it():
    silent = pattern("mt", story_markdown="\n")
    made = packet(series(silent), figures(silent, piece()), b"", environment()).html
    assert "Licence and revisions" in made and "The story" not in made


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


FRAME = ["m" * 50] + ["m" + "t" * 20 + "." * 28 + "m"] * 62 + ["m" * 50]
EASTER = Occasion("Easter", DateRule("Easter", easter=0))
KIND = KindOfWork("full", "cross stitch", 9, (2,))
KEY_ROW = KeyRow("m", "+", "+", "#556b2f", "#e0e8d0", (), (KIND,))
SCARCE = pattern("mt")
CREDITED = pattern(
    *FRAME,
    model_stitcher="Maud Fennimore",
    photographer="Odo Larch",
    sold_at=(Counter("The Counter", "https://example.org/sprig"),),
    cloths=(option(14), option(28, 2)),
)


@pytest.mark.parametrize("story_lines", range(0, 44, 4))
@pytest.mark.parametrize("of", [SCARCE, CREDITED], ids=["a sprig", "a frame"])
def test_no_page_is_nearly_empty_however_long_the_story_is(of, story_lines):
    """A third of its height at least. What ends where it ends, the charts and templates, is left out."""
    story = "\n\n".join(["It grew by the gate."] * story_lines)
    told = replace(of, story_markdown=story)
    filled = running_pages(told)
    assert len(filled) > 4
    assert min(filled.values()) > 1 / 3, filled


@pytest.mark.parametrize("lines", [10, 40, 47, 60, 80])
@pytest.mark.parametrize("above_mm", [0, 90, 180])
def test_a_key_of_a_page_is_not_parted_and_a_longer_one_fills_a_third_of_its_last(
    html, lines, above_mm
):
    """Of two ways of working each colour, which take two lines of a row: 22 rows are a page."""
    work = "cross stitch<br>backstitch"
    row = f"<tr><td>+</td><td>moss</td><td>{work}</td><td>2<br>1</td><td>9<br>9</td></tr>"
    number = lines // 2
    rows = [replace(KEY_ROW, kinds=(KIND, KIND))] * number
    head = "<thead><tr><td>Symbol</td><th>A</th><th>Stitch</th><th>Strands</th><th>Count</th></tr>"
    table = f'<table class="key">{head}</thead><tbody>{row * number}</tbody></table>'
    whole = fits_a_page(rows)
    assert whole == (number <= 22)
    kept = f'</section><section class="flow{" keep" if whole else ""}"><h2>Key</h2>{table}'
    on_pages = [text.count("moss") for text in pages_with(html, kept, above_mm)]
    on_pages = [count for count in on_pages if count]
    assert sum(on_pages) == number
    assert (len(on_pages) == 1) if whole else (on_pages[-1] >= 12)


def test_the_last_line_of_a_cloth_over_a_narrow_column_is_not_its_number_alone():
    kept_whole = environment().filters["whole_end"]
    assert kept_whole("Brindle Linen 32") == "Brindle Linen\u00a032"
    assert kept_whole("Brindle Linen 32, over 2") == "Brindle Linen 32, over\u00a02"
    assert kept_whole("Merle Aida") == "Merle Aida"


@pytest.mark.parametrize("above_mm", range(10, 241, 46))
@pytest.mark.parametrize(
    ("designs", "moving"), [(1, 0), (1, 1), (8, 0), (8, 1), (8, 3), (8, 5), (8, 8)]
)
@pytest.mark.parametrize("of", [SCARCE, CREDITED], ids=["few credits", "many"])
def test_days_that_move_do_not_stand_alone_on_a_page(of, designs, moving, above_mm):
    """Wherever the calendar begins, and whether its series has one design or many."""
    days = [EASTER] * moving + [of.occasion] * (designs - moving)
    designs = [replace(of, id=f"sprig-{n}", occasion=day) for n, day in enumerate(days)]
    html = packet(series(*designs), figures(of, piece()), b"", environment()).html
    rest = html[: html.index('<section class="full-size">')]
    (kept,) = re.findall(r'<section class="[^"]*">\n<h2>Credits.*', rest, re.S)
    texts = pages_with(html, f"</section>{kept}", above_mm)
    told = [text for text in texts if "Days that move" in text]
    assert len(told) == (1 if moving else 0)
    assert all("Comes down" in text for text in told)
    last = re.split(r"\W*A Sprig · revision", texts[-1])[0]
    assert len(re.findall(r"20\d\d", last)) > 4, last


def test_the_pages_of_a_small_packet_follow_one_another_without_empty_halves():
    """Of 50 × 64 stitches. What stands above the footer reaches into the lowest third of every page with
    running text; its last one, on which nothing follows, may end sooner."""
    filled = running_pages(
        pattern(*FRAME, story_markdown="It grew by the gate.", cloths=(option(14), option(28, 2)))
    )
    del filled[max(filled)]
    assert 5 <= len(filled)
    assert min(filled.values()) > 2 / 3, filled


def running_pages(of: Pattern) -> dict[int, float]:
    """How far down each page with running text is filled, by its number; covers, charts and templates
    are none."""
    source = packet(series(of), figures(of, piece()), cover(), environment())
    document = pdfium.PdfDocument(papers(of.id, 1, source, environment())["sprig-letter.pdf"])
    texts = [page.get_textpage().get_text_range() for page in document]
    running = [
        number
        for number, text in enumerate(texts)
        if number and not re.match(r"Chart \d|The whole chart|Template", text)
    ]
    assert len(running) < len(texts) - 2
    return {number + 1: inked_share(document[number]) for number in running}


def inked_share(page: pdfium.PdfPage) -> float:
    """How far down a page reaches what stands between its margins, of 1 at the footer's line."""
    top_mm, foot_mm = 12.0, 279.4 - 17.0
    grey = np.asarray(page.render(scale=1).to_pil().convert("L"))
    inked = np.flatnonzero((grey < 200).any(axis=1)) * 25.4 / 72
    return float((inked[inked < foot_mm - 2].max() - top_mm) / (foot_mm - top_mm))


@pytest.mark.parametrize("above_mm", range(120, 241, 8))
def test_neither_the_last_caution_nor_the_first_step_of_a_list_is_left_alone(html, above_mm):
    """Wherever on a page they come."""
    cautions = re.findall(r'<div class="caution"><h3>([^<]+)', html)
    (*_, last, very_last) = cautions
    (on_page,) = (text for text in pages(html, above_mm) if very_last in text)
    assert last in on_page
    steps = "".join(f"<li>Step {word}, which is told in a line.</li>" for word in "ABCDE")
    listed = f"</section><section><p>Before it.</p><ol>{steps}</ol></section>"
    first, *_ = (text for text in pages_with(html, listed, above_mm) if "Step A" in text)
    assert "Step B" in first


def coloured(number: int) -> Pattern:
    """A design in so many threads of one card."""
    marks = "abcdefghijklmnopqrstuvwx"[:number]
    colours = {mark: Colour(f"1{mark}", f"shade {mark}", "#556b2f") for mark in marks}
    threads = ThreadSet("bramble", replace(card(), colours=colours), 2, 1, 1)
    key = tuple(
        KeyLine(mark, Stitch.FULL, {"bramble": (colour,)}, {}, HERE)
        for mark, colour in colours.items()
    )
    rows = ["".join(marks[(x + y) % number] for x in range(50)) for y in range(40)]
    cloths = (option(14), option(28, 2))
    return pattern(*rows, key=key, sets=(threads,), cloths=cloths, story_markdown="")


@pytest.mark.parametrize("number", range(4, 21, 2))
def test_what_to_buy_stands_below_its_heading_in_however_many_threads(number):
    """And neither its page nor that of the key is nearly empty."""
    of = coloured(number)
    source = packet(series(of), figures(of, piece()), cover(), environment())
    document = pdfium.PdfDocument(papers(of.id, 1, source, environment())["sprig-letter.pdf"])
    texts = [page.get_textpage().get_text_range() for page in document]
    (buying,) = (text for text in texts if "What you need" in text)
    assert "of single strand" in buying and "Skeins in all" in buying
    filled = [inked_share(document[n]) for n, text in enumerate(texts) if "What you need" in text]
    filled += [inked_share(document[n]) for n, text in enumerate(texts) if "Key and totals" in text]
    assert min(filled) > 1 / 3, filled
