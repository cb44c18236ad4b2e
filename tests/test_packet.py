"""The packet that a stranger prints: the PDFs of the demo series, read back."""

import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from pypdf import PdfReader

from tests.conftest import CONTENT
from tests.outside import rows

SERIES = "potting-bench-almanac"
PATTERNS = ("robin-on-the-spade", "foxglove-can", "squash-barrow")
PAPERS = ("letter", "a4")
PACKETS = [(name, paper) for name in PATTERNS for paper in PAPERS]

pytestmark = pytest.mark.slow


def packet_path(built: Path, name: str, paper: str) -> Path:
    return built / "packets" / SERIES / f"{name}-{paper}.pdf"


@pytest.fixture(scope="module")
def readers(built):
    return {key: PdfReader(packet_path(built, *key)) for key in PACKETS}


def pieces(page):
    """(text, x, y, size, font) of every piece of text on a page; x, y in points from the lower left."""
    found = []

    def see(text, cm, tm, font, size):
        if text.strip() and font:
            x = cm[0] * tm[4] + cm[2] * tm[5] + cm[4]
            y = cm[1] * tm[4] + cm[3] * tm[5] + cm[5]
            found.append((text.rstrip("\n"), x, y, size, font["/BaseFont"]))

    page.extract_text(visitor_text=see)
    return found


# --- the chart ----------------------------------------------------------------------------------


def author_rows(name: str) -> list[str]:
    lines = (CONTENT / "series" / SERIES / name / "chart.txt").read_text("utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_the_chart_read_back_from_the_pdf_is_the_author_s_grid(built, readers, name, paper):
    """Cell by cell, through the published character map; repeated columns and rows count once."""
    ledger = json.loads((built / "ledger" / SERIES / f"{name}.json").read_text("utf-8"))
    marks = {chr(int(code[2:], 16)): mark for code, mark in ledger["character_map"].items()}
    author = author_rows(name)
    seen: dict[tuple[int, int], str] = {}
    for page in readers[name, paper].pages:
        caption = re.search(
            r"Chart \d+ of \d+\s+columns (\d+)–(\d+), rows (\d+)–(\d+)", page.extract_text()
        )
        if not caption:
            continue
        left, right, top, bottom = map(int, caption.groups())
        symbol_rows = [
            piece
            for piece in pieces(page)
            if "Potting" in piece[4] and len(piece[0]) > right - left
        ]
        symbol_rows.sort(key=lambda piece: -piece[2])
        own_rows = symbol_rows[-(bottom - top + 1) :]
        assert len(own_rows) == bottom - top + 1
        for row, piece in zip(range(top, bottom + 1), own_rows):
            own = piece[0][-(right - left + 1) :]
            for column, symbol in zip(range(left, right + 1), own, strict=True):
                assert (column, row) not in seen
                seen[column, row] = marks[symbol]
    width, height = len(author[0]), len(author)
    back = ["".join(seen[x, y] for x in range(1, width + 1)) for y in range(1, height + 1)]
    assert back == author
    assert len(seen) == width * height


def test_fractional_stitches_stand_in_the_chart_as_small_symbols(built, readers):
    """Every close-up of the squash barrow is found again, at half the size of a cell."""
    ledger = json.loads((built / "ledger" / SERIES / "squash-barrow.json").read_text("utf-8"))
    fractions = ledger["figures"]["pattern"]["fractions"]
    marks = {chr(int(code[2:], 16)): mark for code, mark in ledger["character_map"].items()}
    small, expected = [], []
    for page in readers["squash-barrow", "letter"].pages:
        caption = re.search(r"columns (\d+)–(\d+), rows (\d+)–(\d+)", page.extract_text())
        if not caption:
            continue
        left, right, top, bottom = map(int, caption.groups())
        # The last two columns and rows of the page before are shown again.
        expected += [
            f["mark"]
            for f in fractions
            if left - 2 <= f["column"] <= right and top - 2 <= f["row"] <= bottom
        ]
        symbols = [piece for piece in pieces(page) if "Potting" in piece[4]]
        cell = max(size for text, _, _, size, _ in symbols if len(text) > 20)
        small += [marks[p[0]] for p in symbols if p[3] == pytest.approx(cell / 2, rel=0.01)]
    assert len(fractions) >= 10
    assert sorted(small) == sorted(expected)


@pytest.mark.parametrize("name", PATTERNS)
def test_no_symbol_is_smaller_than_weak_eyes_can_bear(readers, name):
    """Cells of at least 3 mm: from memory. Sizes in the file are CSS pixels of 1/96 inch."""
    for page in readers[name, "letter"].pages:
        rows_of_symbols = [p for p in pieces(page) if "Potting" in p[4] and len(p[0]) > 20]
        assert all(size / 96 * 25.4 >= 3.0 for _, _, _, size, _ in rows_of_symbols)


# --- the document ---------------------------------------------------------------------------------


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_every_page_has_the_size_of_its_paper(readers, name, paper):
    """ISO 216 for A4, ANSI/ASME Y14.1 size A for Letter; in points of 1/72 inch."""
    sizes = {row["name"].lower(): row for row in rows("paper_sizes_points")}
    for page in readers[name, paper].pages:
        for box in (page.mediabox, page.trimbox):
            assert float(box.width) == pytest.approx(float(sizes[paper]["width_pt"]), abs=0.01)
            assert float(box.height) == pytest.approx(float(sizes[paper]["height_pt"]), abs=0.01)


@pytest.mark.parametrize("name", PATTERNS)
def test_both_papers_have_the_same_pages(readers, name):
    letter, a4 = (readers[name, paper] for paper in PAPERS)
    assert [p.extract_text() for p in letter.pages] == [p.extract_text() for p in a4.pages]


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_every_page_but_the_cover_has_number_revision_and_licence(readers, name, paper):
    reader = readers[name, paper]
    total = len(reader.pages)
    for number, page in enumerate(reader.pages[1:], 2):
        text = page.extract_text()
        assert f"page {number} of {total}" in text
        assert re.search(r"revision \d+, \d+ \w+ \d{4}", text)
        assert "For your own stitching and for gifts." in text


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_the_packet_has_all_its_parts_bookmarked(readers, name, paper):
    reader = readers[name, paper]

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
        "Painting The Little Potting Bench",
        "Care and cautions",
        "Credits and licence",
    ):
        assert part in found
    assert any(title.startswith("Chart 1 of") for title in found)


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_all_fonts_are_embedded(readers, name, paper):
    fonts = set()
    for page in readers[name, paper].pages:
        for font in page["/Resources"]["/Font"].values():
            inner = font.get_object()["/DescendantFonts"][0].get_object()
            fonts.add(font.get_object()["/BaseFont"].partition("+")[2])
            assert "/FontFile2" in inner["/FontDescriptor"].get_object()
    assert {"Packet-Text", "Packet-Text-Bold", "Potting-Symbols"} <= fonts
    assert all(font.startswith(("Packet-", "Potting-")) for font in fonts), fonts


@pytest.mark.parametrize("name", PATTERNS)
def test_nothing_runs_off_the_page(readers, name):
    """All text begins inside the printable area: no less than 4 mm from an edge of either paper."""
    for paper in PAPERS:
        for page in readers[name, paper].pages:
            box, edge = page.mediabox, 4 / 25.4 * 72
            for text, x, y, _, _ in pieces(page):
                assert float(box.left) + edge <= x <= float(box.right) - edge, text
                assert float(box.bottom) + edge <= y <= float(box.top) - edge, text


@pytest.mark.parametrize("name", PATTERNS)
def test_no_heading_stands_alone_at_the_foot_and_no_page_is_empty(readers, name):
    footer_top = 17 / 25.4 * 72
    for number, page in enumerate(readers[name, "letter"].pages, 1):
        body = [piece for piece in pieces(page) if piece[2] > footer_top]
        lowest = min(body, key=lambda piece: piece[2])
        assert "Heading" not in lowest[4], f"page {number} ends with the heading {lowest[0]!r}"
        words = sum(len(piece[0]) for piece in body)
        assert words > 200, f"page {number} is all but empty"


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_a_screen_reader_finds_tags_language_title_and_one_figure_a_chart(readers, name, paper):
    reader = readers[name, paper]
    catalogue = reader.trailer["/Root"]
    assert catalogue["/Lang"] == "en-GB"
    assert catalogue["/MarkInfo"]["/Marked"]
    assert reader.metadata.title.endswith("– The Potting Bench Almanac")
    figures = [f for f in struct_elements(catalogue["/StructTreeRoot"]) if f["/S"] == "/Figure"]
    charts = [f for f in figures if f.get("/Alt", "").startswith("Chart page")]
    pages = sum(bool(re.search(r"Chart \d+ of \d+", p.extract_text())) for p in reader.pages)
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


@pytest.mark.parametrize(("name", "paper"), PACKETS)
def test_an_accessibility_checker_reports_no_error(built, name, paper):
    """PDF/UA-1 (ISO 14289-1) by an independent checker."""
    said = subprocess.run(
        [Path(sys.executable).with_name("outloud"), "-q", packet_path(built, name, paper)],
        capture_output=True,
        text=True,
    )
    assert said.returncode == 0, said.stdout + said.stderr
    assert " 0 error" in said.stdout or "PASS" in said.stdout, said.stdout


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
def test_every_thread_of_the_key_is_on_the_buy_list(demo, readers, name):
    figure = next(f for each in demo.reckoned for f in each.figures if f.pattern.id == name)
    buying = " ".join(
        " ".join(page.extract_text() for page in readers[name, "letter"].pages[1:3]).split()
    )
    for thread_set in figure.pattern.thread_sets:
        for line in figure.pattern.key:
            for colour in line.threads[thread_set.id]:
                assert f"{colour.number} {colour.name}" in buying


@pytest.mark.parametrize("name", PATTERNS)
def test_every_caution_of_the_finishing_piece_is_printed(demo, readers, name):
    from packetgen.cautions import CAUTIONS

    text = " ".join(p.extract_text() for p in readers[name, "letter"].pages)
    for caution in demo.reckoned[0].series.finish.cautions:
        assert CAUTIONS[caution].title in text


def test_the_count_of_every_colour_is_that_of_the_grid(built):
    """Counted here from the author's file, and compared with the ledger."""
    for name in PATTERNS:
        ledger = json.loads((built / "ledger" / SERIES / f"{name}.json").read_text("utf-8"))
        grid = "".join(author_rows(name))
        for work in ledger["figures"]["works"]:
            mark = work["line"]["mark"]
            in_cells = grid.count(mark)
            fractions = sum(f["mark"] == mark for f in ledger["figures"]["pattern"]["fractions"])
            assert sum(work["stitches"].values()) == in_cells + fractions


def test_every_printed_word_has_its_letters_in_the_shipped_faces(readers):
    """No glyph is missing: glyph 0 of a face would print an empty box."""
    for key, reader in readers.items():
        for page in reader.pages:
            assert "\ufffd" not in page.extract_text(), key
