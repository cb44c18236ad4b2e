"""Rows of a chart that were cut in two or run together, and a chart that stands twice: each is one slip, however many
rows are not as long as the others for it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

_MOST_JOINED = 4  # rows in one; more are no slip of a key


@dataclass(frozen=True)
class RowSlip:
    """`rows` are the numbers, from 1, of those whose lengths are odd for it; it is told in the first, at `column`."""

    rows: tuple[int, ...]
    column: int
    what: str
    hint: str


def row_slips(rows: Sequence[str], usual: int) -> tuple[RowSlip, ...]:
    """Those of a chart of which most rows are `usual` long."""
    if not usual:
        return ()
    twice = _twice(rows)
    return (twice,) if twice else (*_cut(rows, usual), *_joined(rows, usual))


def _twice(rows: Sequence[str]) -> RowSlip | None:
    """An empty line parts the chart from itself."""
    empty = [number for number, row in enumerate(rows, 1) if not row]
    if len(empty) != 1 or rows[: empty[0] - 1] != rows[empty[0] :]:
        return None
    what = f"the whole chart stands here a second time, from row {empty[0] + 1} on"
    return RowSlip((empty[0],), 1, what, "take that away, with the empty line before it")


def _cut(rows: Sequence[str], usual: int) -> Iterator[RowSlip]:
    """Two short rows below each other that together are as long as the others."""
    lengths = [*map(len, rows)]
    at = 0
    while at + 1 < len(lengths):
        first, second = lengths[at : at + 2]
        if first and second and first + second == usual:
            what = f"rows {at + 1} and {at + 2} are {first} and {second} stitches long, together {usual} as most are"
            hint = "if a row was cut in two there, make one line of them"
            yield RowSlip((at + 1, at + 2), first + 1, what, hint)
            at += 1
        at += 1


def _joined(rows: Sequence[str], usual: int) -> Iterator[RowSlip]:
    """A row as long as several."""
    for number, row in enumerate(rows, 1):
        times, over = divmod(len(row), usual)
        if not over and 2 <= times <= _MOST_JOINED:
            what = f"row {number} is {len(row)} stitches long, {times} times as long as most"
            hint = f"begin a new line after every {usual} stitches"
            yield RowSlip((number,), usual + 1, what, hint)
