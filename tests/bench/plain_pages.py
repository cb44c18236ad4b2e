"""A chart's pages described in plain lists, for drawing them by other means than the project's own.

All of it is what our own page shows: same cells, tints, lines, symbols, numbers, map and key, in the
same places. Runs, repeats and arrows are in cells from the grid's upper left corner; all else is in
millimetres from the page's, text by its baseline.
"""

from typing import Any

from packetgen.chart.drawing import (
    EDGE_WIDTH,
    GRID_COLOUR,
    GRID_WIDTH,
    TEN_COLOUR,
    TEN_WIDTH,
)
from packetgen.reckon.figures import Figures
from packetgen.render.chart_pages import SCALE_MM, ChartPage
from tests.chart_only import EDITION, pages_of

_HEADING_MM = 11.5  # from the upper margin to our chart's box
Plain = dict[str, Any]


def plain(of: Figures) -> Plain:
    """Everything that is needed to draw the chart, as JSON can hold it."""
    return {
        "title": of.pattern.title,
        "page_mm": EDITION.page_mm,
        "number_mm": EDITION.number_mm,
        "scale_mm": SCALE_MM,
        "key_mm": EDITION.key_text_mm,
        "grid": [GRID_COLOUR, GRID_WIDTH],
        "tens": [TEN_COLOUR, TEN_WIDTH],
        "edge": [TEN_COLOUR, EDGE_WIDTH],
        "pages": [_page(page) for page in pages_of(of)],
    }


def _page(page: ChartPage) -> Plain:
    sheet, tile = page.sheet, page.sheet.tile
    above, beside, _ = EDITION.margins_mm
    x0, y0 = beside, above + _HEADING_MM
    columns, rows = tile.columns, tile.rows
    return {
        "heading": f"Chart {tile.number} of {page.of}",
        "spans": f"columns {columns.first}–{columns.last}, rows {rows.first}–{rows.last}",
        "heading_at": [beside, above + 6],
        "corner": [x0 + page.grid_left_mm, y0 + page.grid_top_mm],
        "cell": page.cell_mm,
        "size": [columns.shown, rows.shown],
        "runs": {
            colour: [[x - sheet.left, y - sheet.top, length] for x, y, length in runs]
            for colour, runs in sheet.runs.items()
        },
        "repeats": [[x - sheet.left, y - sheet.top, w, h] for x, y, w, h in sheet.repeats],
        "arrows": [[[x - sheet.left, y - sheet.top] for x, y in arrow] for arrow in sheet.arrows],
        "across": {ten: [x - sheet.left for x in sheet.columns(ten == "tens")] for ten in _LINES},
        "down": {ten: [y - sheet.top for y in sheet.rows(ten == "tens")] for ten in _LINES},
        "symbols": sheet.symbol_rows,
        "labels": [
            [
                label.text + (str(label.to_chart) if label.to_chart else ""),
                x0 + label.x_mm,
                y0 + label.y_mm,
                label.share,
                label.turn,
            ]
            for label in page.labels
        ],
        "map": [
            [x0 + box.x_mm, y0 + box.y_mm, box.width_mm, box.height_mm, box.here]
            for box in page.page_map
        ],
        "scale_at": [x0 + page.scale_at_mm[0], y0 + page.scale_at_mm[1]],
        "key": [
            [
                entry.line.symbol,
                page.look.cells[entry.line.mark],
                entry.text,
                x0 + entry.x_mm,
                y0 + entry.y_mm,
            ]
            for entry in page.key
        ],
    }


_LINES = ("grid", "tens")
