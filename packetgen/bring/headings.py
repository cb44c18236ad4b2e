"""Whether the first row or column of a table names or counts what stands below or beside it, and is no
stitches.

Nothing is left out before its author has said so.
"""

from collections.abc import Callable, Collection, Sequence
from itertools import product

from packetgen.load.headings import counted_through
from packetgen.load.headings import headings as counted_headings
from packetgen.model import BARE

_ROWS_BESIDE = 3  # a title or a sum, headings, and a row of stitches
_WIDE, _LETTERS = 6, 4  # columns of a table below a title in words, and letters of it
_LEAST = 5  # fields: in fewer, stitches may well be all of different colours


def headings(
    rows: Sequence[Sequence[str]], known: Callable[[str], bool], own: Collection[str] = ()
) -> tuple[Sequence[str], Sequence[str]]:
    """The fields of a first row that are headings, and those of a first column, without the corner of
    the two; nothing where they may be stitches. `known` tells whether a field is a colour, and the author
    herself has said so of those in `own`."""
    columns = [[row[0] for row in rows if row], [field for row in rows for field in row[1:]]]
    if len(rows) < 2 or not columns[1]:
        return (), ()
    below = {field for row in rows[1:] for field in row}
    across = rows[0] if _heads(rows[0], below, known, own) else ()
    down = columns[0][1:] if across else columns[0]
    beside = {field for row in rows[bool(across) :] for field in row[1:]}
    return across, down if _heads(down, beside, known, own) else ()


def rows_beside(rows: Sequence[Sequence[str]], known: Callable[[str], bool]) -> tuple[int, int]:
    """How many rows at the top may be a title, and how many at the end a sum: those without which rows or
    columns turn out to be counted, and words that no stitch is like. `rows` end with the last that is not empty."""

    def counted(ends: tuple[int, int]) -> int:
        return sum(map(bool, counted_headings(rows[ends[0] : len(rows) - ends[1]], None)))

    if len(rows) < _ROWS_BESIDE or not rows[0] or not rows[-1]:
        return 0, 0
    wide = max(map(len, rows))
    # Below a title a row is often left empty.
    titles = 1 if any(field != BARE for field in rows[1]) else 2
    tops = (0, titles) if _few(rows[0], wide) else (0,)
    sums = (rows[-1][0] != BARE and _few(rows[-1], wide)) or _sums(rows[-1])
    ends = (0, 1) if sums else (0,)
    top, end = max(product(tops, ends), key=lambda one: (counted(one), -sum(one)))
    return top or (titles if _in_words(rows, known) else 0), end


def column_of_sums(rows: Sequence[Sequence[str]]) -> int | None:
    """The number of the last column, from 0, if it counts the stitches of each row, beside headings or none."""
    wide = max(map(len, rows), default=0)
    padded = [[*row, *[BARE] * wide][:wide] for row in rows]
    for top, left in product((0, 1), (0, 1)):
        body = padded[top:]
        worked = [sum(field != BARE for field in row[left:-1]) for row in body]
        said = [row[-1] for row in body]
        if (
            len(body) >= _LEAST
            and all(
                field == f"{number}" or (number == 0 and field == BARE)
                for field, number in zip(said, worked)
            )
            and any(worked)
        ):
            return wide - 1
    return None


def _in_words(rows: Sequence[Sequence[str]], known: Callable[[str], bool]) -> bool:
    """Whether a first row of a few fields begins with words that are no colour, come nowhere else and are longer than
    all that does."""
    first = [field for field in rows[0] if field != BARE]
    others = {field for row in rows[1:] for field in row}
    wide = max(map(len, rows))
    return bool(
        wide >= _WIDE
        and rows[0][0] != BARE
        and len(first) <= _few_of(wide)
        and not others & {*first}
        and not any(map(known, first))
        and sum(sign.isalpha() for sign in rows[0][0]) >= _LETTERS
        and len(rows[0][0]) > max(map(len, others), default=0)
    )


def counted_columns(rows: Sequence[Sequence[str]]) -> int:
    """How many columns the first row counts, with the corner, where it ends before the table does; else 0."""
    first = rows[0] if rows else ()
    last = max((n for n, field in enumerate(first, 1) if field != BARE), default=0)
    there = first[:last]
    counts = any(
        len(part) >= _LEAST and BARE not in part and counted_through(part)
        for part in (there, there[1:])
    )
    return last if counts and last < len(first) else 0


def _few(row: Sequence[str], wide: int) -> bool:
    """A name, perhaps with a day or a number."""
    return sum(field != BARE for field in row) <= min(_few_of(wide), wide - 1)


def _few_of(wide: int) -> int:
    return max(2, wide // 4)


def _sums(row: Sequence[str]) -> bool:
    """A word, and numbers."""
    return all(field.isdigit() for field in row[1:] if field != BARE)


def _heads(
    fields: Sequence[str],
    others: Collection[str],
    known: Callable[[str], bool],
    own: Collection[str],
) -> bool:
    """Counted through, in numbers or in letters; or each a word of its own that comes nowhere else and is no
    colour. A corner may be empty. Words beside which nothing else is a colour either may be codes that
    nobody has explained yet."""
    there = [field for field in fields if field != BARE]
    if len(there) < max(_LEAST, len(fields) - 1) or len(set(there)) < len(there):
        return False
    if any(field.startswith("#") for field in there) or all(field in own for field in there):
        return False
    if any(counted_through(part) for part in (there, there[1:]) if len(part) >= _LEAST):
        return True
    strange = all(field not in others and not known(field) for field in there)
    return strange and any(map(known, others))
