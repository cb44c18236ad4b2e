"""A packet as a spreadsheet: its words and tables on one sheet, its chart, a cell a stitch, on the next."""

from pathlib import Path
from typing import Any

import xlsxwriter

from tests.bench.packet_words import SYMBOLS, Block, Cell

_MM_PER_PIXEL = 25.4 / 96
_TEXT, _HEADING = "Atkinson Hyperlegible Next", "Fraunces"
_COLUMN_MM = 22
_A4 = 9
Stitch = tuple[str, str]  # colour and symbol of a cell; '' and '' where the cloth is bare


def write(
    cells: list[list[Stitch]], cell_mm: float, blocks: list[Block], folder: Path, into: Path
) -> None:
    """`cells` is the whole chart, row by row; `folder` holds the picture of the cover."""
    book = xlsxwriter.Workbook(into)
    _words(book, blocks, folder)
    _chart(book, cells, cell_mm)
    book.close()


def _sheet(book: xlsxwriter.Workbook, name: str) -> Any:
    sheet = book.add_worksheet(name)
    sheet.set_paper(_A4)
    sheet.set_margins(*[12 / 25.4] * 4)
    sheet.hide_gridlines(2)
    sheet.set_footer("&R&P / &N")
    return sheet


def _words(book: xlsxwriter.Workbook, blocks: list[Block], folder: Path) -> None:
    sheet = _sheet(book, "Packet")
    columns = max(len(line) for kind, lines in blocks if kind == "table" for line in lines)
    sheet.set_column_pixels(0, columns - 1, _px(_COLUMN_MM))
    sheet.fit_to_pages(1, 0)
    plain = {"font_name": _TEXT, "font_size": 10, "text_wrap": True, "valign": "top"}
    words = book.add_format(plain)
    cell = book.add_format(plain | {"font_size": 8, "bottom": 1})
    at = 0
    for kind, value in blocks:
        if kind == "table":
            for line in value:
                for column, one in enumerate(line):
                    _cell(book, sheet, at, column, one, cell)
                at += 1
        elif kind == "picture":
            sheet.insert_image(at, 0, folder / value, {"x_scale": 0.3, "y_scale": 0.3})
            at += 20
        else:
            level = int(kind[-1]) if kind != "words" else 0
            size = {0: 10, 1: 28, 2: 18, 3: 13, 4: 11}[level]
            heading = plain | {"font_name": _HEADING, "font_size": size}
            sheet.merge_range(
                at, 0, at, columns - 1, value, book.add_format(heading) if level else words
            )
            # A merged cell has no height of its own.
            letters = columns * _COLUMN_MM / (0.19 * size)
            lines = sum(1 + len(line) // letters for line in value.split("\n"))
            sheet.set_row(at, 1.4 * size * lines)
            at += 1


def _cell(
    book: xlsxwriter.Workbook, sheet: Any, at: int, column: int, cell: Cell, plain: Any
) -> None:
    words, tint, symbol = cell
    if not tint:
        sheet.write_string(at, column, words, plain)
        return
    mark = book.add_format({"bg_color": tint, "font_name": SYMBOLS, "font_size": 14, "border": 1})
    sheet.write_string(at, column, symbol or words, mark)


def _chart(book: xlsxwriter.Workbook, cells: list[list[Stitch]], cell_mm: float) -> None:
    """Every tenth line heavy, every tenth row and column numbered."""
    sheet = _sheet(book, "Chart")
    cell_px = _px(cell_mm)
    sheet.set_column_pixels(0, 0, _px(8))
    sheet.set_column_pixels(1, len(cells[0]), cell_px)
    face = {"font_name": SYMBOLS, "font_size": 0.72 * cell_px, "align": "center", "border": 4}
    formats: dict[tuple[str, bool, bool], Any] = {}
    for y, row in enumerate(cells, 1):
        sheet.set_row_pixels(y, cell_px)
        for x, (tint, symbol) in enumerate(row, 1):
            right, below = x % 10 == 0, y % 10 == 0
            if (tint, right, below) not in formats:
                look = face | ({"bg_color": tint} if tint else {})
                look |= ({"right": 2} if right else {}) | ({"bottom": 2} if below else {})
                formats[tint, right, below] = book.add_format(look)
            sheet.write_string(y, x, symbol or " ", formats[tint, right, below])
    number = book.add_format({"font_name": _TEXT, "font_size": 7})
    for x in range(10, len(cells[0]) + 1, 10):
        sheet.write_number(0, x, x, number)
    for y in range(10, len(cells) + 1, 10):
        sheet.write_number(y, 0, y, number)


def _px(mm: float) -> int:
    return round(mm / _MM_PER_PIXEL)
