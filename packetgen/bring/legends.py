"""A legend below a table or at its right: rows that say for each code of the stitches which thread it is."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

_LEAST = 2  # rows
_FIELDS = (
    2,
    5,
)  # in a row: a code and its thread, and perhaps its name, its colour and how many stitches

Table = Sequence[Sequence[str]]  # '' is an empty field


@dataclass(frozen=True)
class Legend:
    where: str
    line: int  # of the file, its first
    said: tuple[tuple[str, str], ...]  # codes, each with its thread
    stitches: Table  # the table without it, and without what is empty between


def legend_of(table: Table, is_thread: Callable[[str], bool]) -> Legend | None:
    """The legend that an empty row parts from the stitches above it, or an empty column from those beside it.

    Each row begins with a code that is stitched and that no other row has, goes on with what `is_thread` knows,
    and says something that no stitch does.
    """
    filled = [number for number, row in enumerate(table) if any(row)]
    last = filled[-1] if filled else 0
    start = next((n + 1 for n in range(last, -1, -1) if not any(table[n])), 0)
    above, below = table[: max(start - 1, 0)], table[start : last + 1]
    if start and (said := _said(below, above, is_thread)):
        return Legend(f"rows {start + 1} to {last + 1}", start + 1, said, above)
    wide = max(map(len, table), default=0)
    empty = [n for n in range(wide) if not any(row[n] for row in table if n < len(row))]
    for column in reversed(empty):
        beside = [row[column + 1 :] for row in table]
        there = [number for number, row in enumerate(beside) if any(row)]
        left = [row[:column] for row in table]
        if there and (said := _said([beside[n] for n in there], left, is_thread)):
            return Legend(f"the columns from {column + 2} on", there[0] + 1, said, left)
    return None


def _said(
    rows: Table, stitches: Table, is_thread: Callable[[str], bool]
) -> tuple[tuple[str, str], ...]:
    """What the rows say of each code; nothing where they are no legend of these stitches."""
    worked = {field for row in stitches for field in row if field}
    found = [[field for field in row if field] for row in rows]
    if found and not worked & {*found[0]}:
        found = found[1:]  # its heading: 'code, number, name'
    said: dict[str, str] = {}
    for code, *others in found:
        thread = next(filter(is_thread, others), None)
        fits = _FIELDS[0] <= 1 + len(others) <= _FIELDS[1] and not {*others} <= worked
        if thread is None or not fits or code not in worked or code in said:
            return ()
        said[code] = thread
    return tuple(said.items()) if len(said) >= _LEAST else ()
