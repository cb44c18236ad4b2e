"""Which columns and rows of the chart stand on which page."""

from dataclasses import dataclass
from math import ceil

MOST_COLUMNS, MOST_ROWS = 60, 75
# Columns (rows) repeated, shaded, from the page before, so that a stitcher finds her place.
OVERLAP = 2


@dataclass(frozen=True)
class Span:
    """Columns (or rows) `first` to `last`, from 1, both included; those from `shown_first` up to
    `first` are repeated from the page before."""

    shown_first: int
    first: int
    last: int

    @property
    def shown(self) -> int:
        return self.last - self.shown_first + 1

    @property
    def repeated(self) -> int:
        return self.first - self.shown_first


@dataclass(frozen=True)
class Tile:
    """One chart page; `number` counts the chart pages from 1, row of pages by row of pages."""

    number: int
    columns: Span
    rows: Span
    left: int | None  # numbers of the neighbouring chart pages
    right: int | None
    above: int | None
    below: int | None


def spans(total: int, most: int, overlap: int = OVERLAP) -> tuple[Span, ...]:
    """Cut `total` columns into the fewest even spans that show at most `most`; no thin last one."""
    parts = 1 if total <= most else ceil(total / (most - overlap))
    short, longer = divmod(total, parts)
    result, first = [], 1
    for index in range(parts):
        last = first + short + (index < longer) - 1
        result.append(Span(first - overlap if index else first, first, last))
        first = last + 1
    return tuple(result)


def tiles(width: int, height: int, most_columns: int, most_rows: int) -> tuple[Tile, ...]:
    """The chart pages of a chart of `width` × `height` stitches, never more than MOST_COLUMNS and
    MOST_ROWS on one, whatever the paper would hold."""
    across = spans(width, min(most_columns, MOST_COLUMNS))
    down = spans(height, min(most_rows, MOST_ROWS))

    def number(x: int, y: int) -> int | None:
        inside = 0 <= x < len(across) and 0 <= y < len(down)
        return y * len(across) + x + 1 if inside else None

    return tuple(
        Tile(
            y * len(across) + x + 1,
            columns,
            rows,
            left=number(x - 1, y),
            right=number(x + 1, y),
            above=number(x, y - 1),
            below=number(x, y + 1),
        )
        for y, rows in enumerate(down)
        for x, columns in enumerate(across)
    )
