"""Stitches that stand alone: no other of their colour in their own cell or the eight around it.

Each of them costs a start, an end and a thread changed in the needle, so a chart full of them is slow to
stitch. Colours are those of the model's thread set; a blend is a colour of its own.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from packetgen.diagnostics import Problems
from packetgen.model import BARE, Pattern
from packetgen.units import percent

WINDOW = 10  # stitches, as the heavy lines of a chart have them
MOST_PLACES = 10
# From these on the designer is told; both our own choice.
ADVISE_ABOVE_SHARE = 0.04
ADVISE_FROM_STITCHES = 20

Cell = tuple[int, int]


@dataclass(frozen=True)
class Window:
    """`alone` isolated stitches in the columns and rows from the first to the last, counted from 1."""

    first_column: int
    last_column: int
    first_row: int
    last_row: int
    alone: int


@dataclass(frozen=True)
class Isolated:
    alone: int
    stitches: int  # in cells, of every kind
    worst: tuple[Window, ...]  # most isolated stitches first

    @property
    def share(self) -> float:
        return self.alone / self.stitches if self.stitches else 0.0


def isolated(pattern: Pattern) -> Isolated:
    """How many stitches of a pattern stand alone, and where most of them do."""
    alone = tuple(isolated_cells(pattern))
    stitches = sum(len(row) - row.count(BARE) for row in pattern.grid.rows)
    windows = Counter(((x - 1) // WINDOW, (y - 1) // WINDOW) for x, y in alone)
    order = sorted(windows, key=lambda at: (-windows[at], at[1], at[0]))
    return Isolated(
        len(alone),
        stitches + len(pattern.fractions),
        tuple(_window(pattern, at, windows[at]) for at in order[:MOST_PLACES]),
    )


def isolated_cells(pattern: Pattern) -> Iterator[Cell]:
    """(column, row) of every stitch that stands alone; a cell with two such stitches comes twice."""
    colour_of = _colours(pattern)
    rows = [row.translate(colour_of) for row in pattern.grid.rows]
    small: dict[Cell, list[str]] = {}  # the colours of the fractional stitches in a cell
    for one in pattern.fractions:
        small.setdefault((one.column, one.row), []).append(one.mark.translate(colour_of))
    for y, x, colour in _alone_in_grid(rows):
        if not small or not _among(small, x, y, colour):
            yield x, y
    padded = _padded(rows)
    for (x, y), colours in small.items():
        for colour in colours:
            in_grid = any(colour in padded[row][x - 1 : x + 2] for row in (y - 1, y, y + 1))
            if not in_grid and _among(small, x, y, colour) == 1:
                yield x, y


def _colours(pattern: Pattern) -> dict[int, str]:
    """For str.translate: key mark → one character for each colour of the model's thread set."""
    model = pattern.thread_sets[0]
    characters: dict[frozenset[tuple[str, str]], str] = {}
    table = {}
    for line in pattern.key:
        threads = frozenset(
            (card.id, colour.number)
            for card, colour in zip(line.cards_in(model), line.threads[model.id])
        )
        # From the first printable sign beyond the bare cell's own.
        character = characters.setdefault(threads, chr(0x100 + len(characters)))
        table[ord(line.mark)] = character
    return table


def _padded(rows: list[str]) -> list[str]:
    """The rows with a bare cell all round: row and column 0 are outside the chart."""
    edge = BARE * (len(rows[0]) + 2)
    return [edge, *(f"{BARE}{row}{BARE}" for row in rows), edge]


def _alone_in_grid(rows: list[str]) -> Iterator[tuple[int, int, str]]:
    """(row, column, colour) of every cell unlike the eight around it."""
    padded = _padded(rows)
    for y, (above, here, below) in enumerate(zip(padded, padded[1:], padded[2:]), 1):
        around = zip(here[1:], here, here[2:], above[1:], below[1:])
        for x, (colour, left, right, up, down) in enumerate(around, 1):
            if (
                colour != left
                and colour != right
                and colour != up
                and colour != down
                and colour != BARE
                and colour not in above[x - 1 : x + 2]
                and colour not in below[x - 1 : x + 2]
            ):
                yield y, x, colour


def _among(small: dict[Cell, list[str]], x: int, y: int, colour: str) -> int:
    """How many fractional stitches of a colour lie in the nine cells around and at (x, y)."""
    return sum(
        small.get((column, row), []).count(colour)
        for column in (x - 1, x, x + 1)
        for row in (y - 1, y, y + 1)
    )


def _window(pattern: Pattern, at: tuple[int, int], alone: int) -> Window:
    left, top = at[0] * WINDOW + 1, at[1] * WINDOW + 1
    return Window(
        left,
        min(left + WINDOW - 1, pattern.grid.width),
        top,
        min(top + WINDOW - 1, pattern.grid.height),
        alone,
    )


def complain_of_isolated(pattern: Pattern, found: Isolated, problems: Problems) -> None:
    """Advice where many stitches stand alone, at the place where most of them do."""
    if found.alone < ADVISE_FROM_STITCHES or found.share <= ADVISE_ABOVE_SHARE:
        return
    place, worst = pattern.grid.place, found.worst[0]
    problems.add(
        replace(place, line=place.line + worst.first_row - 1, column=worst.first_column),
        "alone-counted",
        share=percent(found.share),
        alone=f"{found.alone:,}",
        stitches=f"{found.stitches:,}",
        here=worst.alone,
        columns=f"{worst.first_column}–{worst.last_column}",
        rows=f"{worst.first_row}–{worst.last_row}",
    )
