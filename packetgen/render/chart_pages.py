"""Lays out chart pages: cell size, numbers round the edge, page map, and the key of each page.

A page is a box of the packet; positions are mm from the box's upper left corner, x to the right and y
down, text by its baseline.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from math import floor

from packetgen.chart.editions import Edition
from packetgen.chart.sheet import ARROW_ROOM, Look, Sheet, sheet
from packetgen.chart.tiling import Span, Tile, tiles
from packetgen.model import BARE, Pattern
from packetgen.render.key import KeyRow
from packetgen.render.text_face import broken, face

TEXT_FACE = "text-regular.ttf"
NUMBER_MM = 2.6  # height of the type of numbers and notes
SCALE_MM = 50.0
_HEADING_MM = 11.5  # what the page's heading takes, with the space below it
_NOTE_MM, _NUMBERS_WIDE_MM = 4.0, 7.0  # a line of notes or numbers; the widest row number
_MAP_MM, _FOOT_MM = 14.0, 18.0
_LEAST_GRID_MM = 90.0


@dataclass(frozen=True)
class Label:
    """A number or note. `share` of its length lies to the left of x; `turn` is in degrees."""

    text: str
    x_mm: float
    y_mm: float
    share: float
    turn: int = 0
    to_chart: int = 0  # the page of this chart is named at its end


@dataclass(frozen=True)
class KeyEntry:
    row: KeyRow
    lines: tuple[str, ...]
    x_mm: float
    y_mm: float  # upper edge


@dataclass(frozen=True)
class MapBox:
    x_mm: float
    y_mm: float
    width_mm: float
    height_mm: float
    here: bool


@dataclass(frozen=True)
class ChartPage:
    sheet: Sheet
    look: Look
    edition: Edition
    of: int  # chart pages in all
    cell_mm: float
    grid_left_mm: float
    grid_top_mm: float
    labels: tuple[Label, ...]
    page_map: tuple[MapBox, ...]
    scale_at_mm: tuple[float, float]
    key: tuple[KeyEntry, ...]
    key_beyond: tuple[KeyRow, ...]  # what finds no room below the grid: it has a page of its own
    width_mm: float  # of the box
    height_mm: float

    @property
    def anchor(self) -> str:
        return f"chart-{self.sheet.tile.number}"


def chart_pages(
    pattern: Pattern, look: Look, rows: tuple[KeyRow, ...], edition: Edition
) -> tuple[ChartPage, ...]:
    """The pages in order. One cell size serves all of them."""
    wide, high = box_mm(edition)
    layout, key_mm = _layout(pattern, rows, edition)
    cell = min(
        edition.largest_cell_mm,
        *(_grid_wide_mm(wide) / (t.columns.shown + 2 * ARROW_ROOM) for t in layout),
        *(_grid_high_mm(high, key_mm) / (t.rows.shown + 2 * ARROW_ROOM) for t in layout),
    )
    pages = []
    for tile in layout:
        drawn = sheet(pattern, tile, look)
        left = (wide - cell * tile.columns.shown) / 2
        top = 2 * _NOTE_MM + cell * ARROW_ROOM
        foot = top + cell * (tile.rows.shown + ARROW_ROOM) + 2 * _NOTE_MM + 1.5
        page_map = tuple(_page_map(layout, tile, foot))
        shown = tuple(row for row in rows if row.mark in drawn.marks | drawn.line_marks)
        entries = tuple(_key(shown, edition, foot + _FOOT_MM, high))
        pages.append(
            ChartPage(
                sheet=drawn,
                look=look,
                edition=edition,
                of=len(layout),
                cell_mm=cell,
                grid_left_mm=left,
                grid_top_mm=top,
                labels=tuple(_numbers(tile, cell, left, top))
                + tuple(_neighbours(tile, cell, left, top)),
                page_map=page_map,
                scale_at_mm=(max((b.x_mm + b.width_mm for b in page_map), default=0) + 6, foot + 5),
                key=entries,
                key_beyond=shown[len(entries) :],
                width_mm=wide,
                height_mm=high,
            )
        )
    return tuple(pages)


def box_mm(edition: Edition) -> tuple[float, float]:
    """Width and height of the box that a chart page is painted in."""
    above, beside, below = edition.margins_mm
    return (
        edition.page_mm[0] - 2 * beside,
        edition.page_mm[1] - above - below - _HEADING_MM,
    )


def _grid_wide_mm(box_wide: float) -> float:
    return box_wide - 2 * (_NOTE_MM + _NUMBERS_WIDE_MM)


def _grid_high_mm(box_high: float, key_mm: float) -> float:
    return box_high - 4 * _NOTE_MM - _FOOT_MM - 1.5 - key_mm


def _layout(
    pattern: Pattern, rows: tuple[KeyRow, ...], edition: Edition
) -> tuple[tuple[Tile, ...], float]:
    """The fewest pages on which no cell is too small and each page's own key has room, and that room.

    The grid keeps _LEAST_GRID_MM whatever the key asks for.
    """
    wide, high = box_mm(edition)
    most_columns = floor(_grid_wide_mm(wide) / edition.least_cell_mm - 2 * ARROW_ROOM)
    heights = {row.mark: _entry_mm(row, edition) for row in rows}
    line_mm = edition.key_text_mm * 1.75
    most_room = _grid_high_mm(high, 0) - _LEAST_GRID_MM
    room = line_mm
    while True:
        most_rows = floor(_grid_high_mm(high, room) / edition.least_cell_mm - 2 * ARROW_ROOM)
        layout = tiles(pattern.grid.width, pattern.grid.height, most_columns, most_rows)
        needed = max(
            _key_mm([heights[row.mark] for row in rows if row.mark in marks], edition)
            for marks in _marks_by_tile(pattern, layout)
        )
        if needed <= room or room == most_room:
            return layout, min(needed, room)
        room = min(room + line_mm, most_room)


def _marks_by_tile(pattern: Pattern, layout: tuple[Tile, ...]) -> Iterator[set[str]]:
    """The marks whose cells stand on each page; those of lines and knots on all of them."""
    always = {line.mark for line in pattern.lines} | {knot.mark for knot in pattern.knots}
    always |= {fraction.mark for fraction in pattern.fractions}
    always |= {daisy.mark for daisy in pattern.daisies}
    for tile in layout:
        columns = slice(tile.columns.shown_first - 1, tile.columns.last)
        shown = pattern.grid.rows[tile.rows.shown_first - 1 : tile.rows.last]
        yield (set().union(*(row[columns] for row in shown)) | always) - {BARE}


# --- the key of a page ----------------------------------------------------------------------------


def _column_mm(edition: Edition) -> float:
    return box_mm(edition)[0] / edition.key_columns


# In the key of a page, in ems: the box of a symbol and the sample of a line, each with its space.
SYMBOL_EM, LINE_EM = 1.9, 2.6


def has_sample(row: KeyRow) -> bool:
    """Whether a key line draws lines, of which the key shows a sample; one without a symbol always does."""
    return not row.symbol or any(one.kind in ("backstitch", "long", "daisy") for one in row.kinds)


def text_em(row: KeyRow) -> float:
    """Where the words of an entry begin, in ems from its left edge."""
    return (SYMBOL_EM if row.symbol else 0) + (LINE_EM if has_sample(row) else 0)


def _entry_lines(row: KeyRow, edition: Edition) -> tuple[str, ...]:
    numbers = "+".join(colour.number for colour in row.threads[0].colours)
    room = _column_mm(edition) - (text_em(row) + 0.4) * edition.key_text_mm
    return _broken(f"{numbers} {row.name}", edition.key_text_mm, room)


@cache
def _broken(text: str, size: float, room: float) -> tuple[str, ...]:
    return broken(text, size, room, face(TEXT_FACE))


def _entry_mm(row: KeyRow, edition: Edition) -> float:
    text = edition.key_text_mm
    return (len(_entry_lines(row, edition)) - 1) * text * 1.15 + text * 1.75


def _key_mm(heights: list[float], edition: Edition) -> float:
    """Entries fill the columns row by row; a row is as high as its highest entry."""
    step = edition.key_columns
    return sum(max(heights[first : first + step]) for first in range(0, len(heights), step))


def _key(
    rows: tuple[KeyRow, ...], edition: Edition, top: float, bottom: float
) -> Iterator[KeyEntry]:
    """The entries that stand above `bottom`."""
    step = edition.key_columns
    for first in range(0, len(rows), step):
        together = rows[first : first + step]
        highest = max(_entry_mm(row, edition) for row in together)
        if top + highest > bottom:
            return
        for column, row in enumerate(together):
            yield KeyEntry(row, _entry_lines(row, edition), column * _column_mm(edition), top)
        top += highest


# --- round the grid ---------------------------------------------------------------------------------


def _counted(span: Span) -> Iterator[int]:
    """The first and last, and every tenth that does not crowd them."""
    yield span.shown_first
    for number in range(span.shown_first + 2, span.last - 1):
        if number % 10 == 0:
            yield number
    if span.last > span.shown_first:
        yield span.last


def _numbers(tile: Tile, cell: float, left: float, top: float) -> Iterator[Label]:
    right, bottom = left + cell * tile.columns.shown, top + cell * tile.rows.shown
    clear = cell * ARROW_ROOM + 0.8
    for column in _counted(tile.columns):
        x = left + (column - tile.columns.shown_first + 0.5) * cell
        yield Label(str(column), x, top - clear, 0.5)
        yield Label(str(column), x, bottom + clear + NUMBER_MM * 0.75, 0.5)
    for row in _counted(tile.rows):
        y = top + (row - tile.rows.shown_first + 0.5) * cell + NUMBER_MM * 0.35
        yield Label(str(row), left - clear, y, 1.0)
        yield Label(str(row), right + clear, y, 0.0)


def _neighbours(tile: Tile, cell: float, left: float, top: float) -> Iterator[Label]:
    """'continues on page n' along each edge beyond which the chart goes on."""
    right, bottom = left + cell * tile.columns.shown, top + cell * tile.rows.shown
    middle_x, middle_y = (left + right) / 2, (top + bottom) / 2
    beside = cell * ARROW_ROOM + _NUMBERS_WIDE_MM
    beyond = cell * ARROW_ROOM + _NOTE_MM
    said = "continues on page "
    if tile.above:
        yield Label(said, middle_x, top - beyond - 1.0, 0.5, 0, tile.above)
    if tile.below:
        yield Label(said, middle_x, bottom + beyond + NUMBER_MM + 0.4, 0.5, 0, tile.below)
    if tile.left:
        yield Label(said, left - beside - 0.6, middle_y, 0.5, 90, tile.left)
    if tile.right:
        yield Label(said, right + beside + 0.6, middle_y, 0.5, -90, tile.right)


def _page_map(layout: tuple[Tile, ...], here: Tile, top: float) -> Iterator[MapBox]:
    """All pages as small boxes, this one filled; none for a chart of one page."""
    if len(layout) == 1:
        return
    width = max(tile.columns.last for tile in layout)
    height = max(tile.rows.last for tile in layout)
    scale = min(_MAP_MM / height, 2 * _MAP_MM / width)
    for tile in layout:
        yield MapBox(
            (tile.columns.first - 1) * scale,
            top + (tile.rows.first - 1) * scale,
            (tile.columns.last - tile.columns.first + 1) * scale,
            (tile.rows.last - tile.rows.first + 1) * scale,
            tile == here,
        )


def alternative(page: ChartPage) -> str:
    """The words of a chart page for who cannot see it; begins as `render.pdf` expects."""
    tile = page.sheet.tile
    rows = (*(entry.row for entry in page.key), *page.key_beyond)
    names = ", ".join(
        f"{'+'.join(c.number for c in row.threads[0].colours)} {row.name}" for row in rows
    )
    return (
        f"Chart page {tile.number} of {page.of}: columns {tile.columns.first} to {tile.columns.last}, "
        f"rows {tile.rows.first} to {tile.rows.last}. On it: {names or 'bare cloth'}."
    )
