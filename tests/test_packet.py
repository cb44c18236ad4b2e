"""The packet that a stranger prints: the PDFs of the demo series, read back."""

import csv
import io
import json
import re
import shutil
import subprocess
import sys
from itertools import pairwise
from pathlib import Path

import pypdfium2
import pytest

from packetgen.chart.sheet import look_of
from packetgen.colour import channels
from packetgen.model import Stitch
from packetgen.render.apostrophes import curled
from packetgen.render.packet import symbols_of
from tests.demo_patterns import CONTENT, PATTERNS, SERIES
from tests.outside import rows
from tests.read_back import READERS, Document, in_marks, seen_by_pdfminer, whole_chart, with_pypdf

PAPERS = ("letter", "a4")
PACKETS = [(name, paper) for name in PATTERNS for paper in PAPERS]

pytestmark = pytest.mark.slow


def packet_path(built: Path, name: str, paper: str) -> Path:
    return built / "packets" / SERIES / f"{name}-{paper}.pdf"


@pytest.fixture(scope="module")
def packets(built):
    return {key: Document(packet_path(built, *key).read_bytes()) for key in PACKETS}


# --- the chart ----------------------------------------------------------------------------------


def author_rows(name: str) -> list[str]:
    lines = (CONTENT / "series" / SERIES / name / "chart.txt").read_text("utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def author_s_grid(name: str) -> tuple[str, ...]:
    """Fractional stitches stand over cells that the chart leaves bare."""
    return tuple(author_rows(name))


def symbols_by_mark(built: Path, name: str) -> dict[str, str]:
    """Mark → symbol, from the published character map."""
    ledger = json.loads((built / "ledger" / SERIES / f"{name}.json").read_text("utf-8"))
    return {mark: chr(int(code[2:], 16)) for code, mark in ledger["character_map"].items()}


@pytest.mark.parametrize("charts", ["charts_by_pypdf", "charts_by_pdfminer"])
@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_the_chart_read_back_from_the_pdf_is_the_author_s_grid(built, packets, name, paper, charts):
    """Cell by cell, by two libraries, through the published character map; repeats count once."""
    pages = getattr(packets[name, paper], charts)
    rows_back = in_marks(whole_chart(pages.values()), symbols_by_mark(built, name))
    assert rows_back == author_s_grid(name)


@pytest.mark.parametrize("reader", READERS)
@pytest.mark.parametrize("ending", ["black-and-white-letter", "large-print-a4", "tablet"])
@pytest.mark.parametrize("name", PATTERNS)
def test_every_edition_with_symbols_reads_back_as_the_same_grid(
    built, editions, name, ending, reader
):
    pages = reader(editions[f"{name}-{ending}.pdf"])
    rows_back = in_marks(whole_chart(pages.values()), symbols_by_mark(built, name))
    assert rows_back == author_s_grid(name)


@pytest.mark.parametrize("name", PATTERNS)
def test_the_map_inside_the_document_is_the_published_one(built, packets, name):
    """A CSV attachment (RFC 4180), of which the packet tells; the key is for people and has no codes."""
    packet = packets[name, "letter"]
    (data,) = packet.by_pypdf.attachments["chart-characters.csv"]
    table = list(csv.DictReader(io.StringIO(data.decode("utf-8"), newline="")))
    inside = {row["chart_character"]: chr(int(row["code_point"][2:], 16)) for row in table}
    assert inside == symbols_by_mark(built, name)
    assert len(inside) >= 15
    credits = next(text for text in packet.texts if "For programs that read the chart" in text)
    assert "chart-characters.csv" in credits
    assert not any(re.search(r"U\+[0-9A-F]{4}", text) for text in packet.texts)


def test_fractional_stitches_stand_in_the_chart_as_small_symbols(built, packets):
    """Every close-up of the squash barrow is found again, at half the size of a cell."""
    ledger = json.loads((built / "ledger" / SERIES / "squash-barrow.json").read_text("utf-8"))
    fractions = ledger["pattern"]["fractions"]
    marks = {symbol: mark for mark, symbol in symbols_by_mark(built, "squash-barrow").items()}
    small, expected = [], []
    packet = packets["squash-barrow", "letter"]
    for number, chart in packet.charts_by_pypdf.items():
        (left, right), (top, bottom) = chart.columns, chart.rows
        # The last two columns and rows of the page before are shown again.
        expected += [
            f["mark"]
            for f in fractions
            if left - 2 <= f["column"] <= right and top - 2 <= f["row"] <= bottom
        ]
        _, symbols = seen_by_pdfminer(packet.letters[number - 1])
        small += [
            marks[symbol.character]
            for symbol in symbols
            if symbol.size == pytest.approx(chart.cell_pt / 2, rel=0.01)
        ]
    assert len(fractions) >= 10
    assert sorted(small) == sorted(expected)


@pytest.mark.parametrize(
    ("ending", "least_mm"),
    [("letter", 3.0), ("black-and-white-a4", 3.0), ("large-print-letter", 4.5), ("tablet", 3.0)],
)
@pytest.mark.parametrize("name", PATTERNS)
def test_no_symbol_is_smaller_than_its_edition_promises(packets, editions, name, ending, least_mm):
    """3 mm for everybody: from memory; 4.5 mm in large print."""
    pages = (
        packets[name, ending].charts_by_pypdf
        if ending in PAPERS
        else with_pypdf(editions[f"{name}-{ending}.pdf"])
    )
    for page in pages.values():
        assert page.cell_pt / 72 * 25.4 >= least_mm - 1e-3


def covered_cells(pattern):
    """Cells on or beside which a line, daisy, knot or bead lies."""
    found = set()
    paths = [step for line in pattern.lines for step in pairwise(line.points)]
    paths += [(daisy.base, daisy.tip) for daisy in pattern.daisies]
    paths += [(one.at,) for one in (*pattern.knots, *pattern.beads)]
    for path in paths:
        xs, ys = [x for x, _ in path], [y for _, y in path]
        found |= {
            (x, y)
            for x in range(int(min(xs)) - 1, int(max(xs)) + 2)
            for y in range(int(min(ys)) - 1, int(max(ys)) + 2)
        }
    return found


@pytest.mark.parametrize("name", PATTERNS)
def test_every_cell_has_the_tint_of_its_colour(demo, packets, name):
    """Rasterised by a third library: the colour of most of the cell that is not ink."""
    figure = next(f for each in demo.reckoned for f in each.figures if f.pattern.id == name)
    pattern = figure.pattern
    tints = look_of(pattern, symbols_of(figure)).cells
    full = {line.mark for line in pattern.key if line.stitch is Stitch.FULL}
    packet = packets[name, "letter"]
    document, seen = pypdfium2.PdfDocument(packet.pdf), 0
    covered = covered_cells(pattern)
    for number, chart in packet.charts_by_pypdf.items():
        scale = 3.0
        image = document[number - 1].render(scale=scale).to_pil().convert("RGB")
        page_left, _, _, page_top = document[number - 1].get_mediabox()
        repeated = len(chart.shown[0]) - len(chart.own[0]), len(chart.shown) - len(chart.own)
        for row, line in enumerate(chart.own, chart.rows[0]):
            for column, _ in enumerate(line, chart.columns[0]):
                mark = pattern.grid.rows[row - 1][column - 1]
                if mark not in full or (column, row) in covered:
                    continue
                left = chart.left_pt + (column - chart.columns[0] + repeated[0]) * chart.cell_pt
                top = chart.top_pt - (row - chart.rows[0] + repeated[1]) * chart.cell_pt
                left, top = left - page_left, page_top - top
                box = (left, top, left + chart.cell_pt, top + chart.cell_pt)
                cell = image.crop([round(edge * scale) for edge in box])
                # Most of what is not ink: the symbol and the grid are the darker colours.
                (_, found), *_ = sorted(
                    (pair for pair in cell.getcolors(4096) if sum(pair[1]) > 150), reverse=True
                )
                wanted = channels(tints[mark])
                assert max(abs(a - b) for a, b in zip(found, wanted)) <= 3, (column, row, mark)
                seen += 1
    assert seen > 500


# --- the document ---------------------------------------------------------------------------------


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_every_page_has_the_size_of_its_paper(packets, name, paper):
    """ISO 216 for A4, ANSI/ASME Y14.1 size A for Letter; in points of 1/72 inch."""
    sizes = {row["name"].lower(): row for row in rows("paper_sizes_points")}
    for page in packets[name, paper].by_pypdf.pages:
        for box in (page.mediabox, page.trimbox):
            assert float(box.width) == pytest.approx(float(sizes[paper]["width_pt"]), abs=0.01)
            assert float(box.height) == pytest.approx(float(sizes[paper]["height_pt"]), abs=0.01)


@pytest.mark.parametrize("name", PATTERNS)
def test_each_paper_s_document_has_a_name_of_its_own(packets, name):
    """ISO 32000-1, 14.4: the first part names what it is, the second these very contents."""
    letter, a4 = (packets[name, paper].by_pypdf.trailer["/ID"] for paper in PAPERS)
    assert letter[0] == a4[0] and str(a4[0]).startswith(f"{name}/")
    assert letter[1] != a4[1]


@pytest.mark.parametrize("name", PATTERNS)
def test_both_papers_have_the_same_pages(packets, name):
    letter, a4 = (packets[name, paper].texts for paper in PAPERS)
    assert letter == a4


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_every_page_but_the_cover_has_number_revision_and_licence(packets, name, paper):
    texts = packets[name, paper].texts
    total = len(texts)
    for number, text in enumerate(texts[1:], 2):
        assert f"page {number} of {total}" in text
        assert re.search(r"revision \d+, \d+ \w+ \d{4}", text)
        assert "For your own stitching and for gifts." in text


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_the_packet_has_all_its_parts_bookmarked(packets, name, paper):
    reader = packets[name, paper].by_pypdf

    def titles(outline):
        for item in outline:
            if isinstance(item, list):
                yield from titles(item)
            else:
                yield item.title

    found = list(titles(reader.outline))
    for part in (
        "What you need",
        "Key and totals",
        "Sizes and cuts",
        "The whole chart",
        "Working notes",
        "Finishing",
        "Painting the wood",
        "Care and cautions",
        "Credits",
        "Licence and revisions",
    ):
        assert part in found
    assert any(title.startswith("Chart 1 of") for title in found)


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_all_fonts_are_embedded(packets, name, paper):
    fonts = set()
    for page in packets[name, paper].by_pypdf.pages:
        for font in page["/Resources"]["/Font"].values():
            inner = font.get_object()["/DescendantFonts"][0].get_object()
            name = font.get_object()["/BaseFont"].removeprefix("/")
            fonts.add(name.partition("+")[2] or name)
            assert "/FontFile2" in inner["/FontDescriptor"].get_object()
    assert {"Packet-Text", "Packet-Text-Bold", "PottingSymbols-Regular"} <= fonts
    ours = ("Packet-", "Potting", "AtkinsonHyperlegibleNext-")
    assert all(font.startswith(ours) for font in fonts), fonts


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_nothing_runs_off_the_page(packets, name, paper):
    """All text stands inside the printable area: no less than 4 mm from an edge."""
    edge, packet = 4 / 25.4 * 72, packets[name, paper]
    for page, found in zip(packet.by_pypdf.pages, packet.letters):
        # pdfminer counts from the corner of the page box.
        width, height = float(page.mediabox.width), float(page.mediabox.height)
        for letter in found:
            assert edge <= letter.x0 and letter.x1 <= width - edge, letter
            assert edge <= letter.y0 and letter.y1 <= height - edge, letter


@pytest.mark.parametrize("name", PATTERNS)
def test_no_heading_stands_alone_at_the_foot_and_no_page_is_empty(packets, name):
    footer_top = 17 / 25.4 * 72
    for number, found in enumerate(packets[name, "letter"].letters, 1):
        body = [letter for letter in found if letter.y0 > footer_top]
        lowest = min(body, key=lambda letter: letter.y0)
        assert "Heading" not in lowest.fontname, f"page {number} ends with a heading"
        assert len(body) > 200, f"page {number} is all but empty"


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_a_screen_reader_finds_tags_language_title_and_one_figure_a_chart(packets, name, paper):
    reader, texts = packets[name, paper].by_pypdf, packets[name, paper].texts
    catalogue = reader.trailer["/Root"]
    assert catalogue["/Lang"] == "en-GB"
    assert catalogue["/MarkInfo"]["/Marked"]
    assert reader.metadata.title.endswith("– The Potting Bench Almanac")
    figures = [f for f in struct_elements(catalogue["/StructTreeRoot"]) if f["/S"] == "/Figure"]
    charts = [f for f in figures if f.get("/Alt", "").startswith("Chart page")]
    pages = sum(bool(re.search(r"Chart \d+ of \d+", text)) for text in texts)
    assert len(charts) == pages >= 2
    assert all(figure.get("/Alt") for figure in figures)


def struct_elements(node):
    node = node.get_object()
    if isinstance(node, list):
        for kid in node:
            yield from struct_elements(kid)
    elif hasattr(node, "get") and "/K" in node:
        if "/S" in node:
            yield node
        yield from struct_elements(node["/K"])


@pytest.fixture(scope="module")
def checked(built):
    """Path → what an independent checker has to say of that packet."""
    checker = Path(sys.executable).with_name("outloud")
    paths = [packet_path(built, *key) for key in PACKETS]
    said = subprocess.run([checker, "--json", "-", *paths], capture_output=True, text=True)
    found = json.loads(said.stdout)["results"]
    sound = all(not one["error"] and not one["counts"]["error"] for one in found)
    assert said.returncode == (0 if sound else 1), said.stdout + said.stderr
    return {Path(one["path"]): one for one in found}


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_an_accessibility_checker_reports_no_error(checked, built, name, paper):
    """PDF/UA-1 (ISO 14289-1)."""
    found = checked[packet_path(built, name, paper)]
    assert found["error"] is None
    assert found["counts"]["error"] == 0, found["findings"]


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_a_second_reader_finds_no_fault_in_the_syntax(built, name, paper):
    if not shutil.which("qpdf"):
        pytest.skip("qpdf is not installed here")
    said = subprocess.run(
        ["qpdf", "--check", packet_path(built, name, paper)], capture_output=True, text=True
    )
    assert said.returncode == 0, said.stdout + said.stderr


# --- what it says -------------------------------------------------------------------------------


@pytest.mark.parametrize("name", PATTERNS)
def test_every_thread_of_the_key_is_on_the_buy_list(demo, packets, name):
    figure = next(f for each in demo.reckoned for f in each.figures if f.pattern.id == name)
    before_key = " ".join(packets[name, "letter"].texts[1:]).partition("Key and totals")[0]
    buying = " ".join(before_key.partition("What you need")[2].split())
    for thread_set in figure.pattern.thread_sets:
        for line in figure.pattern.key:
            for colour in line.threads[thread_set.id]:
                assert curled(f"{colour.number} {colour.name}") in buying


@pytest.mark.parametrize("name", PATTERNS)
def test_every_caution_of_the_finishing_piece_is_printed(demo, packets, name):
    from packetgen.cautions import CAUTIONS

    text = " ".join(packets[name, "letter"].texts)
    for caution in demo.reckoned[0].series.finish.cautions:
        assert CAUTIONS[caution].title in text


def test_the_count_of_every_colour_is_that_of_the_grid(built):
    """Counted here from the author's file, and compared with the ledger."""
    for name in PATTERNS:
        ledger = json.loads((built / "ledger" / SERIES / f"{name}.json").read_text("utf-8"))
        grid = "".join(author_rows(name))
        stitches = [entry for entry in ledger["figures"] if entry["figure"] == "stitches"]
        for line in ledger["pattern"]["key"]:
            mark = line["mark"]
            in_cells = grid.count(mark)
            fractions = sum(f["mark"] == mark for f in ledger["pattern"]["fractions"])
            said = sum(entry["value"] for entry in stitches if entry["of"]["mark"] == mark)
            assert said == in_cells + fractions


def test_every_printed_word_has_its_letters_in_the_shipped_faces(packets):
    """No glyph is missing: glyph 0 of a face would print an empty box."""
    for key, packet in packets.items():
        for text in packet.texts:
            assert "\ufffd" not in text, key
