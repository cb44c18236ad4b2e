"""A close-up after a change: its rows two by two, each such block turned and set in its new place."""

from collections.abc import Sequence
from dataclasses import dataclass

from packetgen.chart_edit.change import Change
from packetgen.load.blocks import FALLING, RISING, parted
from packetgen.model import BARE

_EMPTY = BARE * 4
_OTHER_WAY = {RISING: FALLING, FALLING: RISING}


@dataclass(frozen=True)
class Window:
    """Two characters by two for each stitch; the first of them in `column` and `row`."""

    column: int
    row: int
    rows: tuple[str, ...]


def window_after(window: Window, change: Change) -> Window | None:
    """What of the window is on the new chart; None where nothing in it is."""
    blocks = change.turned([[_turned(block, change) for block in row] for row in _blocks(window)])
    wide, high = len(window.rows[0]) // 2, len(window.rows) // 2
    opposite = change.cell(window.column + wide - 1, window.row + high - 1)
    corners = change.cell(window.column, window.row), opposite
    column, row = (min(ends) for ends in zip(*corners))
    there = [
        [(x, y) for x in range(len(blocks[0])) if change.holds_cell(column + x, row + y)]
        for y in range(len(blocks))
    ]
    there = [cells for cells in there if cells]
    if not there:
        return None
    cut = [[blocks[y][x] for x, y in cells] for cells in there]
    whole = len(cut) == len(blocks) and len(cut[0]) == len(blocks[0])
    if not whole and all(block == _EMPTY for row_of in cut for block in row_of):
        return None
    x, y = there[0][0]
    return Window(column + x, row + y, _rows(cut))


def _blocks(window: Window) -> list[list[str]]:
    pairs = zip(window.rows[::2], window.rows[1::2])
    return [
        [upper[x : x + 2] + lower[x : x + 2] for x in range(0, len(upper), 2)]
        for upper, lower in pairs
    ]


def _rows(blocks: Sequence[Sequence[str]]) -> tuple[str, ...]:
    return tuple(
        "".join(block[half : half + 2] for block in row) for row in blocks for half in (0, 2)
    )


def _turned(block: str, change: Change) -> str:
    """Its quarters in their new places, and a line between two stitches leaning as they then lie."""
    (top_left, top_right), (bottom_left, bottom_right) = change.turned((block[:2], block[2:]))
    quarters = top_left + top_right + bottom_left + bottom_right
    if parted(block) and change.leans:
        lines = _OTHER_WAY
        line = block[1] if block[1] == block[2] and block[1] in lines else block[0]
        return "".join(lines[line] if mark == line else mark for mark in quarters)
    return quarters
