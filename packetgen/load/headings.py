"""Whether the first row or the first column of a chart's table only counts its columns or rows.

A spreadsheet has such headings beside its cells, and not every program leaves them out when it saves a table.
"""

from collections.abc import Collection, Iterator, Sequence
from itertools import count, product
from string import ascii_uppercase

_LEAST = 3  # fields: fewer may follow each other by chance
_LEAST_UNKNOWN = 5  # where nobody can tell which marks the key has


def headings(
    table: Sequence[Sequence[str]], marks: Collection[str] | None
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The fields of a first row and of a first column that count 1, 2, 3 … or A, B, C …; nothing for one that
    does not, or whose fields are all `marks` of the key (None where the key cannot be read).

    The corner of the two may hold anything.
    """
    if len(table) < 2:
        return (), ()
    first = tuple(table[0])
    least = _LEAST if marks is not None else _LEAST_UNKNOWN
    across = next((one for one in (first, first[1:]) if _counts(one, marks, least)), ())
    down = tuple(row[0] for row in table[bool(across) :] if row)
    cornered = 0 < len(across) < len(first)  # then the column below the corner is headings as well
    return across, down if _counts(down, marks, 1 if cornered else least) else ()


def filled(table: Sequence[Sequence[str]]) -> tuple[int, int]:
    """Columns and rows of a table without the empty ones at its right and at its end, which spreadsheets often
    save with it. (0, 0) where all of it is empty."""
    ends = [max((n for n, field in enumerate(row, 1) if field), default=0) for row in table]
    return max(ends, default=0), max((n for n, end in enumerate(ends, 1) if end), default=0)


def without_headings(
    table: Sequence[Sequence[str]], part: tuple[int, int], across: bool, down: bool
) -> list[list[str]]:
    """What stands below and beside headings, as far as they go: columns and rows beyond the filled `part` of
    the table are none of the chart then. Where none are, that may be bare cloth, and stays."""
    wide, high = part[0] if across else None, part[1] if down else None
    return [list(row[int(down) : wide]) for row in table[int(across) : high]]


def _counts(fields: Sequence[str], marks: Collection[str] | None, least: int) -> bool:
    if len(fields) < least:
        return False
    if marks is not None and all(field in marks for field in fields):
        return False
    return counted_through([field.upper() for field in fields])


def counted_through(fields: Sequence[str]) -> bool:
    """Whether they go 0, 1, 2 … or 1, 2, 3 … or A, B, C … Z, AA, as spreadsheets call their columns."""
    if all(field.isascii() and field.isdigit() and len(field) < 5 for field in fields):
        first = int(fields[0])
        return first in (0, 1) and [*map(int, fields)] == [*range(first, first + len(fields))]
    return all(field == letters for field, letters in zip(fields, _letters()))


def _letters() -> Iterator[str]:
    for length in count(1):
        yield from map("".join, product(ascii_uppercase, repeat=length))
