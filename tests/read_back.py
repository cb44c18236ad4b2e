"""Reads a chart back out of a PDF, as a stitcher reads it: by what is printed, nothing else.

A chart page says "Chart 2 of 4  columns 41–80, rows 1–50". Its symbols are characters of the
private use area, set in the symbol face, each as wide as a cell. They stand in rows without gaps;
columns and rows that are repeated from the page before stand before the page's own. Two libraries
that share no code read the same page, so that one reader's mistake does not hide ours.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from io import BytesIO
from itertools import count
from math import hypot

from pdfminer.converter import PDFPageAggregator
from pdfminer.layout import LTChar, LTContainer, LTItem, LTPage
from pdfminer.pdfinterp import PDFPageInterpreter, PDFResourceManager
from pdfminer.pdfpage import PDFPage
from pypdf import PageObject, PdfReader

SYMBOL_FACE = "Potting"
_HEADING = re.compile(
    r"Chart\s*(\d+)\s*of\s*(\d+)\s*columns\s*(\d+)\s*–\s*(\d+),\s*rows\s*(\d+)\s*–\s*(\d+)"
)
# Of a cell: how far a symbol may stand from where its neighbour says that it should.
_SLACK = 0.05
# Of the size of letters: the furthest from where the one before ends.
_KERNED = 0.1


@dataclass(frozen=True)
class ChartPage:
    """What one chart page says. Spans are (first, last), from 1, of the page's own stitches."""

    number: int
    of: int
    columns: tuple[int, int]
    rows: tuple[int, int]
    shown: tuple[str, ...]  # the rows of symbols from the top, repeated ones included
    cell_pt: float
    left_pt: float  # upper left corner of the shown rows, from the page's lower left corner
    top_pt: float

    @property
    def own(self) -> tuple[str, ...]:
        """The rows of symbols without what is repeated from the page before."""
        wide, high = (last - first + 1 for first, last in (self.columns, self.rows))
        return tuple(row[-wide:] for row in self.shown[-high:])


Reader = Callable[[bytes], Mapping[int, ChartPage]]


@dataclass(frozen=True)
class Symbol:
    """One character; x, y is the left end of its baseline, from the lower left, in points."""

    character: str
    x: float
    y: float
    size: float


def with_pypdf(pdf: bytes) -> dict[int, ChartPage]:
    """The chart pages by the page of the document on which they stand, from 1."""
    return charts_on(map(seen_by_pypdf, PdfReader(BytesIO(pdf)).pages))


def with_pdfminer(pdf: bytes) -> dict[int, ChartPage]:
    """The same, read by another library."""
    return charts_on(map(seen_by_pdfminer, pages_by_pdfminer(pdf)))


READERS: tuple[Reader, ...] = (with_pypdf, with_pdfminer)


@dataclass(frozen=True)
class Document:
    """A PDF of which much is asked: each library reads it once."""

    pdf: bytes

    @cached_property
    def by_pypdf(self) -> PdfReader:
        return PdfReader(BytesIO(self.pdf))

    @cached_property
    def _seen_by_pypdf(self) -> list[tuple[str, list[Symbol]]]:
        return [seen_by_pypdf(page) for page in self.by_pypdf.pages]

    @property
    def texts(self) -> list[str]:
        """The text of each page, by pypdf."""
        return [text for text, _ in self._seen_by_pypdf]

    @cached_property
    def letters(self) -> list[list[LTChar]]:
        """The characters of each page, by pdfminer."""
        return [list(characters_of(page)) for page in pages_by_pdfminer(self.pdf)]

    @cached_property
    def charts_by_pypdf(self) -> dict[int, ChartPage]:
        return charts_on(self._seen_by_pypdf)

    @cached_property
    def charts_by_pdfminer(self) -> dict[int, ChartPage]:
        return charts_on(map(seen_by_pdfminer, self.letters))


def whole_chart(pages: Iterable[ChartPage]) -> tuple[str, ...]:
    """The rows of the whole chart. AssertionError where a stitch is missing or stands on two pages."""
    found: dict[tuple[int, int], str] = {}
    for page in pages:
        for row, symbols in enumerate(page.own, page.rows[0]):
            for column, symbol in enumerate(symbols, page.columns[0]):
                assert (row, column) not in found, f"row {row}, column {column} stands twice"
                found[row, column] = symbol
    width, height = max(column for _, column in found), max(row for row, _ in found)
    assert len(found) == width * height, "the pages leave out stitches"
    return tuple(
        "".join(found[row, column] for column in range(1, width + 1))
        for row in range(1, height + 1)
    )


def in_marks(rows: Iterable[str], symbols: Mapping[str, str]) -> tuple[str, ...]:
    """Rows of symbols in the author's marks; `symbols` is mark → symbol, the bare cell's too."""
    marks = str.maketrans({symbol: mark for mark, symbol in symbols.items()})
    return tuple(row.translate(marks) for row in rows)


# --- what a library sees --------------------------------------------------------------------------


def seen_by_pypdf(page: PageObject) -> tuple[str, list[Symbol]]:
    symbols: list[Symbol] = []

    def see(text: str, cm: list[float], tm: list[float], font: dict, size: float) -> None:
        if not font or SYMBOL_FACE not in font["/BaseFont"]:
            return
        x = cm[0] * tm[4] + cm[2] * tm[5] + cm[4]
        y = cm[1] * tm[4] + cm[3] * tm[5] + cm[5]
        up = (cm[0] * tm[2] + cm[2] * tm[3], cm[1] * tm[2] + cm[3] * tm[3])
        cell = size * hypot(*up)
        symbols.extend(
            Symbol(character, x + place * cell, y, cell)
            for place, character in enumerate(text.strip())
        )

    return page.extract_text(visitor_text=see), symbols


def pages_by_pdfminer(pdf: bytes) -> Iterator[LTPage]:
    """As they are set: characters are not gathered into lines, which takes as long again."""
    resources = PDFResourceManager()
    device = PDFPageAggregator(resources, laparams=None)
    interpreter = PDFPageInterpreter(resources, device)
    for page in PDFPage.get_pages(BytesIO(pdf)):
        interpreter.process_page(page)
        yield device.get_result()


def seen_by_pdfminer(page: Iterable[LTItem]) -> tuple[str, list[Symbol]]:
    characters = tuple(characters_of(page))
    return _in_words(characters), [
        Symbol(each.get_text(), each.x0, each.matrix[5], each.width)
        for each in characters
        if SYMBOL_FACE in each.fontname
    ]


def characters_of(items: Iterable[LTItem]) -> Iterator[LTChar]:
    for item in items:
        if isinstance(item, LTChar):
            yield item
        elif isinstance(item, LTContainer):
            yield from characters_of(item)


def _in_words(characters: tuple[LTChar, ...]) -> str:
    """The text, with a space wherever the pen was lifted."""
    words: list[str] = []
    for before, each in zip((None, *characters), characters):
        # A pair such as 7 and 4 is set closer than its widths say.
        near = before and abs(each.x0 - before.x1) < _KERNED * each.size
        follows = near and each.matrix[5] == before.matrix[5]
        words += ("" if follows else " ", each.get_text())
    return "".join(words)


# --- what it means --------------------------------------------------------------------------------


def charts_on(seen: Iterable[tuple[str, list[Symbol]]]) -> dict[int, ChartPage]:
    pages = {}
    for place, (text, symbols) in enumerate(seen, 1):
        heading = _HEADING.search(text)
        if heading:
            number, of, left, right, top, bottom = map(int, heading.groups())
            grid = _grid(symbols, right - left + 1, bottom - top + 1)
            pages[place] = ChartPage(number, of, (left, right), (top, bottom), *grid)
    return pages


def _grid(
    symbols: list[Symbol], wide: int, high: int
) -> tuple[tuple[str, ...], float, float, float]:
    """The rows of the chart, at least so wide and high, the size of a cell, and where they begin.

    Symbols of fractions, of knots and of the key are of other sizes, or stand below the chart.
    """
    found = []
    for cell in sorted({round(symbol.size, 3) for symbol in symbols}):
        alike = [symbol for symbol in symbols if abs(symbol.size - cell) < _SLACK * cell]
        top = max(symbol.y for symbol in alike)
        rows = tuple(_rows_from(top, cell, alike))
        if len(rows) >= high and {len(row) for row in rows} == {max(wide, len(rows[0]))}:
            left = min(symbol.x for symbol in alike if abs(symbol.y - top) < _SLACK * cell)
            found.append((top + cell, rows, cell, left))
    assert found, f"no rows of symbols fill {wide} × {high} cells"
    top, rows, cell, left = max(found)
    return rows, cell, left, top


def _rows_from(top: float, cell: float, symbols: list[Symbol]) -> Iterator[str]:
    """Each row stands right below the one above it, and each symbol right beside its neighbour."""
    slack = _SLACK * cell
    lines: dict[int, list[Symbol]] = {}
    for symbol in symbols:
        lines.setdefault(round((top - symbol.y) / cell), []).append(symbol)
    for number in count():
        line = sorted(lines.get(number, ()), key=lambda symbol: symbol.x)
        level = all(abs(top - number * cell - symbol.y) < slack for symbol in line)
        close = all(abs(b.x - a.x - cell) < slack for a, b in zip(line, line[1:]))
        if not line or not level or not close:
            return
        yield "".join(symbol.character for symbol in line)
