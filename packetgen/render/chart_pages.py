"""Lays out chart pages: numbers round the edge, page map, and the key of each page.

Positions are mm from the box's upper left corner, x to the right and y down, text by its baseline.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from packetgen.chart.editions import Edition
from packetgen.chart.sheet import ARROW_ROOM, Look, Sheet, sheet
from packetgen.chart.tiling import Span, Tile
from packetgen.model import Pattern
from packetgen.render.chart_layout import MAP_MM, NOTE_MM, NUMBERS_WIDE_MM, layout_of
from packetgen.render.page_key import KeyEntry, PageLine

SCALE_MM = 50.0


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
    key_beyond: tuple[PageLine, ...]  # what finds no room below the grid: it has a page of its own
    width_mm: float  # of the box
    height_mm: float
    turned: bool  # whether its page lies on its side

    @property
    def anchor(self) -> str:
        return f"chart-{self.sheet.tile.number}"


def chart_pages(
    pattern: Pattern, look: Look, told: tuple[PageLine, ...], edition: Edition
) -> tuple[ChartPage, ...]:
    """The pages in order. One cell size serves all of them."""
    layout = layout_of(pattern, told, edition)
    cell, top = layout.cell_mm, layout.grid_top_mm
    pages = []
    for tile in layout.tiles:
        drawn = sheet(pattern, tile, look)
        left, foot = layout.grid_left_mm(tile), layout.foot_mm(tile)
        page_map = tuple(_page_map(layout.tiles, tile, foot))
        scale_left = max((b.x_mm + b.width_mm for b in page_map), default=0) + 6
        marks = drawn.marks | drawn.line_marks
        shown = tuple(one for one in told if one.mark in marks or one.bead in drawn.beads)
        entries = tuple(layout.key.entries(shown, layout.key_top_mm(tile), layout.height_mm))
        pages.append(
            ChartPage(
                sheet=drawn,
                look=look,
                edition=edition,
                of=len(layout.tiles),
                cell_mm=cell,
                grid_left_mm=left,
                grid_top_mm=top,
                labels=tuple(_numbers(tile, cell, left, top, edition.number_mm))
                + tuple(_neighbours(tile, cell, left, top, edition.number_mm)),
                page_map=page_map,
                scale_at_mm=(scale_left, foot + layout.scale_mm),
                key=entries,
                key_beyond=shown[len(entries) :],
                width_mm=layout.width_mm,
                height_mm=layout.height_mm,
                turned=layout.turned,
            )
        )
    return tuple(pages)


# --- round the grid ---------------------------------------------------------------------------------


def _counted(span: Span) -> Iterator[int]:
    """The first and last, and every tenth that does not crowd them."""
    yield span.shown_first
    for number in range(span.shown_first + 2, span.last - 1):
        if number % 10 == 0:
            yield number
    if span.last > span.shown_first:
        yield span.last


def _numbers(tile: Tile, cell: float, left: float, top: float, high: float) -> Iterator[Label]:
    right, bottom = left + cell * tile.columns.shown, top + cell * tile.rows.shown
    clear = cell * ARROW_ROOM + 0.8
    for column in _counted(tile.columns):
        x = left + (column - tile.columns.shown_first + 0.5) * cell
        yield Label(str(column), x, top - clear, 0.5)
        yield Label(str(column), x, bottom + clear + high * 0.75, 0.5)
    for row in _counted(tile.rows):
        y = top + (row - tile.rows.shown_first + 0.5) * cell + high * 0.35
        yield Label(str(row), left - clear, y, 1.0)
        yield Label(str(row), right + clear, y, 0.0)


def _neighbours(tile: Tile, cell: float, left: float, top: float, high: float) -> Iterator[Label]:
    """'continues on page n' along each edge beyond which the chart goes on."""
    right, bottom = left + cell * tile.columns.shown, top + cell * tile.rows.shown
    middle_x, middle_y = (left + right) / 2, (top + bottom) / 2
    beside = cell * ARROW_ROOM + NUMBERS_WIDE_MM
    beyond = cell * ARROW_ROOM + NOTE_MM
    said = "continues on page "
    if tile.above:
        yield Label(said, middle_x, top - beyond - 1.0, 0.5, 0, tile.above)
    if tile.below:
        yield Label(said, middle_x, bottom + beyond + high + 0.4, 0.5, 0, tile.below)
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
    scale = min(MAP_MM / height, 2 * MAP_MM / width)
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
    names = ", ".join(one.words for one in (*(entry.line for entry in page.key), *page.key_beyond))
    return (
        f"Chart page {tile.number} of {page.of}: columns {tile.columns.first} to {tile.columns.last}, "
        f"rows {tile.rows.first} to {tile.rows.last}. On it: {names or 'bare cloth'}."
    )
