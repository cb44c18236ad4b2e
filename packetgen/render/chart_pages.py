"""Chart pages ready to be set: two drawings, rows of symbols between them, numbers round the edge."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil, floor

from packetgen.chart import drawing
from packetgen.chart.drawing import ARROW_ROOM, Look
from packetgen.chart.symbols import BLANK
from packetgen.chart.tiling import Span, Tile, tiles
from packetgen.model import BARE, Corner, Fraction, Pattern, Stitch
from packetgen.render.key import KeyRow

# The paper that a chart page has for its grid with the key of the page below it, mm.
_ROOM_WIDE_MM, _ROOM_HIGH_MM = 168.0, 204.0
_KEY_LINE_MM, _KEY_COLUMNS = 5.2, 4
_LEAST_GRID_MM = 110.0
# Smaller cells try weak eyes; larger ones no longer look like a chart.
_LEAST_CELL_MM, _LARGEST_CELL_MM = 3.0, 4.4
_NUMBER_WIDTH_MM, _NUMBER_HEIGHT_MM = 8.0, 4.0


@dataclass(frozen=True)
class Label:
    """A small text placed on the chart: a column or row number, or the symbol of a fraction."""

    text: str
    left_mm: str
    top_mm: str
    kind: str  # 'column', 'row-left', 'row-right' or 'fraction'


@dataclass(frozen=True)
class ChartPage:
    tile: Tile
    cell_mm: str
    fraction_mm: str  # size of the small symbols of fractional stitches
    width_mm: str  # of the grid, arrows' room not counted
    height_mm: str
    sheet_left_mm: str  # the drawings reach out by the arrows' room
    sheet_width_mm: str
    sheet_height_mm: str
    under: str  # asset names
    over: str  # '' where nothing lies on top
    page_map: str
    rows: tuple[str, ...]
    labels: tuple[Label, ...]
    marks: frozenset[str]  # the key marks seen on the page


def chart_pages(pattern: Pattern, look: Look) -> tuple[tuple[ChartPage, ...], dict[str, bytes]]:
    """The pages in order, and the drawings they name as assets. One cell size serves all pages."""
    layout = chart_layout(pattern)
    cell = min(
        _LARGEST_CELL_MM,
        *(_ROOM_WIDE_MM / (tile.columns.shown + 2 * ARROW_ROOM) for tile in layout),
        *(_grid_room_mm(pattern) / (tile.rows.shown + 2 * ARROW_ROOM) for tile in layout),
    )
    assets: dict[str, bytes] = {}
    pages = []
    for tile in layout:
        names = {kind: f"chart-{tile.number}-{kind}.svg" for kind in ("under", "over", "map")}
        assets[names["under"]] = drawing.under(pattern, tile, look).encode()
        assets[names["map"]] = drawing.page_map(layout, tile).encode()
        over = drawing.over(pattern, tile, look)
        if over:
            assets[names["over"]] = over.encode()
        shown = _shown(pattern, tile)
        pages.append(
            ChartPage(
                tile=tile,
                cell_mm=_mm(cell),
                fraction_mm=_mm(cell * FRACTION_SHARE),
                width_mm=_mm(cell * tile.columns.shown),
                height_mm=_mm(cell * tile.rows.shown),
                sheet_left_mm=_mm(-cell * ARROW_ROOM),
                sheet_width_mm=_mm(cell * (tile.columns.shown + 2 * ARROW_ROOM)),
                sheet_height_mm=_mm(cell * (tile.rows.shown + 2 * ARROW_ROOM)),
                under=names["under"],
                over=names["over"] if over else "",
                page_map=names["map"],
                rows=tuple(
                    "".join(BLANK if mark == BARE else look.symbols[mark] for mark in row)
                    for row in shown
                ),
                labels=tuple(_labels(pattern, tile, look, cell)),
                marks=frozenset(mark for row in shown for mark in row if mark != BARE)
                | frozenset(f.mark for f in pattern.fractions if _on_page(f, tile)),
            )
        )
    return tuple(pages), assets


def chart_layout(pattern: Pattern) -> tuple[Tile, ...]:
    """The fewest pages on which no cell is smaller than weak eyes can bear."""
    grid = pattern.grid
    return tiles(
        grid.width,
        grid.height,
        floor(_ROOM_WIDE_MM / _LEAST_CELL_MM - 2 * ARROW_ROOM),
        floor(_grid_room_mm(pattern) / _LEAST_CELL_MM - 2 * ARROW_ROOM),
    )


def _grid_room_mm(pattern: Pattern) -> float:
    """The height left for the grid when every symbol of the chart stands in the key of the page."""
    blends = any(len(colours) > 1 for line in pattern.key for colours in line.threads.values())
    lines = ceil(len(pattern.key) / _KEY_COLUMNS) + blends
    return max(_LEAST_GRID_MM, _ROOM_HIGH_MM - _KEY_LINE_MM * lines)


def rows_on(page: ChartPage, rows: tuple[KeyRow, ...]) -> tuple[KeyRow, ...]:
    """The key rows whose symbols this page shows, in the order of the key."""
    return tuple(row for row in rows if row.mark in page.marks)


def _mm(value: float) -> str:
    return f"{value:.3f}"


def _shown(pattern: Pattern, tile: Tile) -> tuple[str, ...]:
    columns = slice(tile.columns.shown_first - 1, tile.columns.last)
    rows = pattern.grid.rows[tile.rows.shown_first - 1 : tile.rows.last]
    return tuple(row[columns] for row in rows)


def _on_page(fraction: Fraction, tile: Tile) -> bool:
    in_columns = tile.columns.shown_first <= fraction.column <= tile.columns.last
    return in_columns and tile.rows.shown_first <= fraction.row <= tile.rows.last


def _numbers(span: Span) -> Iterator[int]:
    """The first and last, and every tenth that does not crowd them."""
    yield span.shown_first
    for number in range(span.shown_first + 2, span.last - 1):
        if number % 10 == 0:
            yield number
    if span.last > span.shown_first:
        yield span.last


def _labels(pattern: Pattern, tile: Tile, look: Look, cell: float) -> Iterator[Label]:
    for column in _numbers(tile.columns):
        middle = (column - tile.columns.shown_first + 0.5) * cell
        left = _mm(middle - _NUMBER_WIDTH_MM / 2)
        outside = cell * ARROW_ROOM
        yield Label(str(column), left, _mm(-outside - _NUMBER_HEIGHT_MM), "column")
        yield Label(str(column), left, _mm(tile.rows.shown * cell + outside), "column")
    for row in _numbers(tile.rows):
        top = _mm((row - tile.rows.shown_first + 0.5) * cell - _NUMBER_HEIGHT_MM / 2)
        outside = cell * ARROW_ROOM
        yield Label(str(row), _mm(-outside - _NUMBER_WIDTH_MM - 0.6), top, "row-left")
        yield Label(str(row), _mm(tile.columns.shown * cell + outside + 0.6), top, "row-right")
    for fraction in pattern.fractions:
        if not _on_page(fraction, tile):
            continue
        x, y = _symbol_corner(fraction)
        left = (fraction.column - tile.columns.shown_first + x) * cell
        top = (fraction.row - tile.rows.shown_first + y) * cell
        yield Label(look.symbols[fraction.mark], _mm(left), _mm(top), "fraction")


# The symbol of a fraction is set at this share of a cell, pushed into what the stitch covers.
FRACTION_SHARE = 0.5


def _symbol_corner(fraction: Fraction) -> tuple[float, float]:
    """Top left of the small symbol, in cells from the top left of its own cell."""
    low, high = 0.02, 0.48
    if fraction.corner is None:
        return (high, high) if fraction.stitch is Stitch.HALF else (low, high)
    right = fraction.corner in (Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT)
    bottom = fraction.corner in (Corner.BOTTOM_LEFT, Corner.BOTTOM_RIGHT)
    if fraction.stitch is Stitch.THREE_QUARTER:
        right, bottom = not right, not bottom
    return high if right else low, high if bottom else low
