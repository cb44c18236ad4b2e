"""A legend below a table: rows that say for each code of the stitches above which thread it is."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from packetgen.model import BARE

_LEAST = 2  # rows
_FIELDS = (
    2,
    5,
)  # in a row: a code and its thread, and perhaps its name, its colour and how many stitches


@dataclass(frozen=True)
class Legend:
    first: int  # rows from 0: its first, or its heading if it has one
    last: int
    said: tuple[tuple[str, str], ...]  # codes, each with its thread


def legend_below(rows: Sequence[Sequence[str]], is_thread: Callable[[str], bool]) -> Legend | None:
    """The legend at the end of a table, parted from its stitches by an empty row.

    Each row begins with a code that stands above and in no other row of the legend, goes on with what `is_thread`
    knows, and says something that comes nowhere above, which stitches hardly do.
    """
    last = max((number for number, row in enumerate(rows) if _there(row)), default=-1)
    start = last + 1
    while start and _there(rows[start - 1]):
        start -= 1
    above = {field for row in rows[:start] for field in row if field != BARE}
    found = [(number, _there(rows[number])) for number in range(start, last + 1)]
    if found and start and not above & {*found[0][1]}:
        found = found[1:]  # its heading: 'code, number, name'
    said: dict[str, str] = {}
    for _, (code, *others) in found:
        thread = next(filter(is_thread, others), None)
        fits = _FIELDS[0] <= 1 + len(others) <= _FIELDS[1] and not {*others} <= above
        if thread is None or not fits or code not in above or code in said:
            return None
        said[code] = thread
    return Legend(start, last, tuple(said.items())) if len(said) >= _LEAST else None


def _there(row: Sequence[str]) -> list[str]:
    return [field for field in row if field != BARE]
