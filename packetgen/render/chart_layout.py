"""How a chart is laid on pages: upright or turned, in which tiles, how large a stitch, where the key.

A page is a box of the packet; positions are mm from the box's upper left corner, x to the right and y
down.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import floor

from packetgen.chart.editions import Edition
from packetgen.chart.sheet import ARROW_ROOM, whole_tile
from packetgen.chart.tiling import MOST_COLUMNS, MOST_ROWS, Tile, tiles
from packetgen.model import BARE, Pattern
from packetgen.render.page_key import KeyColumns, PageLine

NOTE_MM, NUMBERS_WIDE_MM = 4.0, 7.0  # a line of notes or numbers; the widest row number
_TWO_DIGITS, _TWO_DIGITS_WIDE_MM = 99, 5.0  # numbers up to that are narrower
MAP_MM = 14.0
_HEADING_MM = 11.5  # what the page's heading takes, with the space below it
_FOOT_MM = 18.0  # page map and scale
_SCALE_MM = 5.5  # the scale alone: a chart of one page has no map
_LEAST_GRID_MM = 90.0
_HAIR_MM = 0.01  # left free, so that a sum of many lengths does not run over by its rounding
# Of a column of the key beside the grid: a symbol and some twenty letters.
_BESIDE_EM = 13.0


@dataclass(frozen=True)
class Layout:
    """One cell size and one frame for all pages of a chart."""

    tiles: tuple[Tile, ...]
    cell_mm: float
    width_mm: float  # of the box
    height_mm: float
    turned: bool  # whether its page lies on its side
    grid_room_mm: float  # the grid stands in the middle of so much, from the box's left edge
    above_mm: float  # from the box's upper edge to the arrows
    below_mm: float  # from the arrows to the foot
    scale_mm: float  # from the foot down to the line of the scale
    key: KeyColumns
    key_beside: bool  # beside the grid and level with it, or below
    key_below_mm: float  # from the foot

    def grid_left_mm(self, tile: Tile) -> float:
        return (self.grid_room_mm - self.cell_mm * tile.columns.shown) / 2

    @property
    def grid_top_mm(self) -> float:
        return self.above_mm + self.cell_mm * ARROW_ROOM

    def foot_mm(self, tile: Tile) -> float:
        """Where page map and scale begin."""
        return self.grid_top_mm + self.cell_mm * (tile.rows.shown + ARROW_ROOM) + self.below_mm

    def key_top_mm(self, tile: Tile) -> float:
        return self.grid_top_mm if self.key_beside else self.foot_mm(tile) + self.key_below_mm


def layout_of(pattern: Pattern, told: tuple[PageLine, ...], edition: Edition) -> Layout:
    """One page where it holds the whole chart, upright or, if only that does, turned; else several."""
    high, wide = sorted(edition.page_mm, reverse=True)
    return (
        _whole(pattern, told, edition, (wide, high))
        or _whole(pattern, told, edition, (high, wide))
        or _cut(pattern, told, edition)
    )


def _box_mm(page_mm: tuple[float, float], edition: Edition) -> tuple[float, float]:
    """Width and height of the box that a chart page is painted in."""
    above, beside, below = edition.margins_mm
    return page_mm[0] - 2 * beside, page_mm[1] - above - below - _HEADING_MM


def _largest_cell_mm(edition: Edition, wide: float, high: float, tile: Tile) -> float:
    """The largest with which a tile and its arrows find room."""
    return min(
        edition.largest_cell_mm,
        wide / (tile.columns.shown + 2 * ARROW_ROOM),
        high / (tile.rows.shown + 2 * ARROW_ROOM),
    )


def _on(pattern: Pattern, tile: Tile, told: tuple[PageLine, ...]) -> Iterator[PageLine]:
    """What of the key has its cells on a page; lines, knots and beads are taken to be on all of them."""
    marks = {line.mark for line in pattern.lines} | {knot.mark for knot in pattern.knots}
    marks |= {fraction.mark for fraction in pattern.fractions}
    marks |= {daisy.mark for daisy in pattern.daisies}
    columns = slice(tile.columns.shown_first - 1, tile.columns.last)
    shown = pattern.grid.rows[tile.rows.shown_first - 1 : tile.rows.last]
    marks = marks.union(*(row[columns] for row in shown)) - {BARE}
    return (one for one in told if one.mark in marks or one.bead)


# --- on one page ------------------------------------------------------------------------------------


def _whole(
    pattern: Pattern,
    told: tuple[PageLine, ...],
    edition: Edition,
    page_mm: tuple[float, float],
) -> Layout | None:
    """The whole chart and its whole key on one page of this width and height, the key where it leaves the
    stitches largest; None where they are too small or too many for it."""
    tile = whole_tile(pattern)
    upright = page_mm[0] < page_mm[1]
    most = (MOST_COLUMNS, MOST_ROWS) if upright else (MOST_ROWS, MOST_COLUMNS)
    if tile.columns.shown > most[0] or tile.rows.shown > most[1]:
        return None
    layouts = _one_page(tile, tuple(_on(pattern, tile, told)), edition, page_mm)
    largest = max(layouts, key=_cell_mm, default=None)
    return largest if largest and largest.cell_mm >= edition.least_cell_mm else None


def _cell_mm(layout: Layout) -> float:
    return layout.cell_mm


def _one_page(
    tile: Tile, told: tuple[PageLine, ...], edition: Edition, page_mm: tuple[float, float]
) -> Iterator[Layout]:
    """With the key below the grid in the edition's columns or in one more, and beside it in one column or
    more. No chart page is next to this one: it needs neither notes nor a map."""
    wide, high = _box_mm(page_mm, edition)
    numbers_mm = NUMBERS_WIDE_MM if tile.rows.last > _TWO_DIGITS else _TWO_DIGITS_WIDE_MM
    text = edition.key_text_mm
    below = floor(wide / (_box_mm(edition.page_mm, edition)[0] / edition.key_columns))
    beside = _BESIDE_EM * text
    keys = [KeyColumns(0, count, wide / count, text) for count in (below, below + 1)]
    keys += (
        KeyColumns(wide - count * beside, count, beside, text)
        for count in range(1, floor(wide / 2 / beside) + 1)
    )
    for key in keys:
        is_beside = key.left_mm > 0
        grid_room = key.left_mm if is_beside else wide
        key_high = key.high_mm(told)
        grid_high = high - 2 * NOTE_MM - _SCALE_MM - _HAIR_MM - (0 if is_beside else key_high)
        layout = Layout(
            turned=page_mm[0] > page_mm[1],
            tiles=(tile,),
            cell_mm=_largest_cell_mm(edition, grid_room - 2 * numbers_mm, grid_high, tile),
            width_mm=wide,
            height_mm=high,
            grid_room_mm=grid_room,
            above_mm=NOTE_MM,
            below_mm=NOTE_MM,
            scale_mm=_SCALE_MM - 2,
            key=key,
            key_beside=is_beside,
            key_below_mm=_SCALE_MM,
        )
        if layout.key_top_mm(tile) + key_high <= high:
            yield replace(layout, height_mm=_used_mm(layout, tile, key_high))


def _used_mm(layout: Layout, tile: Tile, key_high_mm: float) -> float:
    """How much of its box one page takes: below a small chart there is room for what follows it."""
    lowest = max(layout.foot_mm(tile) + layout.key_below_mm, layout.key_top_mm(tile) + key_high_mm)
    return min(layout.height_mm, lowest + _HAIR_MM)


# --- on several upright pages -----------------------------------------------------------------------


def _cut(pattern: Pattern, told: tuple[PageLine, ...], edition: Edition) -> Layout:
    """The fewest pages on which no cell is too small and each page's own key has room.

    The grid keeps _LEAST_GRID_MM whatever the key asks for.
    """
    wide, high = _box_mm(edition.page_mm, edition)
    grid_wide = wide - 2 * (NOTE_MM + NUMBERS_WIDE_MM)
    grid_high = high - 4 * NOTE_MM - _FOOT_MM - 1.5 - _HAIR_MM  # with no key
    most_columns = floor(grid_wide / edition.least_cell_mm - 2 * ARROW_ROOM)
    key = KeyColumns(0, edition.key_columns, wide / edition.key_columns, edition.key_text_mm)
    most_room = grid_high - _LEAST_GRID_MM
    room = key.line_mm
    while True:
        most_rows = floor((grid_high - room) / edition.least_cell_mm - 2 * ARROW_ROOM)
        parts = tiles(pattern.grid.width, pattern.grid.height, most_columns, most_rows)
        needed = max(key.high_mm(_on(pattern, tile, told)) for tile in parts)
        if needed <= room or room == most_room:
            break
        room = min(room + key.line_mm, most_room)
    grid_high -= min(needed, room)
    return Layout(
        turned=False,
        tiles=parts,
        cell_mm=min(_largest_cell_mm(edition, grid_wide, grid_high, tile) for tile in parts),
        width_mm=wide,
        height_mm=high,
        grid_room_mm=wide,
        above_mm=2 * NOTE_MM,
        below_mm=2 * NOTE_MM + 1.5,
        scale_mm=5.0,
        key=key,
        key_beside=False,
        key_below_mm=_FOOT_MM,
    )
