"""Whether the first row or column of a table names what stands below or beside it, and is no stitches.

Nothing is left out for that: where it says no more than this, a row of headings could not be stitched
anyhow, since its words are no colours.
"""

from collections.abc import Callable, Collection, Sequence

from packetgen.model import BARE

_LEAST = 5  # fields: in fewer, stitches may well be all of different colours
_COUNTED = 10  # so many columns, one number after the other, nobody stitches in as many threads


def headings(
    rows: Sequence[Sequence[str]], known: Callable[[str], bool]
) -> tuple[Sequence[str], Sequence[str]]:
    """The fields of a first row that are headings, and those of a first column, without the corner of
    the two; nothing where they may be stitches. `known` tells whether a field is a colour."""
    columns = [[row[0] for row in rows if row], [field for row in rows for field in row[1:]]]
    if len(rows) < 2 or not columns[1]:
        return (), ()
    below = {field for row in rows[1:] for field in row}
    across = rows[0] if _named(rows[0], below, known) else ()
    down = columns[0][1:] if across else columns[0]
    beside = {field for row in rows[bool(across) :] for field in row[1:]}
    return across, down if _named(down, beside, known) else ()


def _named(fields: Sequence[str], others: Collection[str], known: Callable[[str], bool]) -> bool:
    """Counted through, where one of the numbers at least comes nowhere else and is no colour; or each such
    a word of its own. A corner may be empty. Words beside which nothing else is a colour either may be
    codes that nobody has explained yet."""
    own = [field for field in fields if field != BARE]
    if len(own) < max(_LEAST, len(fields) - 1) or len(set(own)) < len(own):
        return False
    strange = [field not in others and not known(field) for field in own]
    if any(field.startswith("#") for field in own):
        return False
    return (any(strange) and _counts_up(own)) or (all(strange) and any(map(known, others)))


def _counts_up(fields: Sequence[str]) -> bool:
    """1, 2, 3 …, or from 0, in one field after the other; a corner may say what is counted."""
    numbers = [field for field in fields if field.isascii() and field.isdigit()]
    return (
        len(fields) - 1 <= len(numbers) >= _COUNTED
        and int(numbers[0]) in (0, 1)
        and all(int(one) + 1 == int(other) for one, other in zip(numbers, numbers[1:]))
    )
