"""The author's chart.txt or chart.csv after a change: her remarks and her way of writing stay."""

import re
from collections.abc import Sequence

from packetgen.chart_edit.change import Change
from packetgen.model import BARE, Grid

# A cell of a table as it stands in the file, quotes and all (RFC 4180).
_QUOTED = r'"(?:[^"]|"")*"[^{0}]*|[^{0}]*'


def chart_text(text: str, grid: Grid, change: Change) -> str:
    """A chart.txt. The lines before its first row, and what stands below its last one, stay."""
    lines = text.split("\n")
    first = grid.place.line - 1
    after = change.grid(grid).rows
    return "\n".join((*lines[:first], *after, *lines[first + grid.height :]))


def table_text(text: str, grid: Grid, change: Change) -> str:
    """A chart.csv. Cells go as they are written; new ones are written as the author writes them."""
    lines = text.split("\n")
    separator = _separator(lines[0])
    cells = [_cells(line, separator, grid.width) for line in lines[: grid.height]]
    fill = _written(change.fill, cells, grid)
    after = change.table(cells, fill)
    if change.width == 1:  # a line with nothing in it is no row of a table
        after = [[cell if cell.strip() else BARE for cell in row] for row in after]
    rows = ((separator or ",").join(row) for row in after)
    return "\n".join((*rows, *lines[grid.height :]))


def _separator(first: str) -> str:
    """As the loader tells it: by the first line."""
    for separator in (";", "\t"):
        if separator in first and "," not in first:
            return separator
    return "," if "," in first else ""


def _cells(line: str, separator: str, width: int) -> list[str]:
    if not separator:
        return [line]
    cells: list[str] = []
    at = 0
    pattern = re.compile(_QUOTED.format(re.escape(separator)))
    while len(cells) < width:
        match = pattern.match(line, at)
        cells.append(match[0] if match else "")
        at += len(cells[-1]) + 1
    return cells


def _written(mark: str, cells: Sequence[Sequence[str]], grid: Grid) -> str:
    """How the author writes a mark: as it stands first in her table, else as it is."""
    for row, marks in zip(cells, grid.rows):
        if mark in marks:
            return row[marks.index(mark)]
    return mark
