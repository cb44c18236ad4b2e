"""A legend beside the stitches of a table or a grid: rows that say for each of their codes which thread it is."""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from packetgen.load.headings import filled, headings

_LEAST = 2  # rows
# Fields of a row: a code and its thread, and perhaps its name, its colour and how many stitches.
_FIELDS = (2, 5)
# 'K = 101 wet bark', 'K: 101', 'K  101 wet bark'.
_OF_SIGN = re.compile(r"\s*(\S)(?:\s*(?P<says>[=:])\s*|\s+)(\S.*?)\s*")
_IN_ONE = re.compile(r"(\S{1,12}?)\s*[=:]\s*(\S.*?)")
# Rows and columns of a table in which a legend is looked for: twice those of a chart.
_LARGEST = 2000
_EMPTY = 4  # columns that may be between, the last of all
_TITLES = 2  # rows that may be above headings
_LETTERS = 3  # that a title has beside the signs of the grid, at least

Table = Sequence[Sequence[str]]  # '' is an empty field


@dataclass(frozen=True)
class Legend:
    where: str
    line: int  # of the file, its first
    said: tuple[tuple[str, str], ...]  # codes, each with its thread
    stitches: Table  # the table without it, and without what is empty between
    above: int = 0  # rows of the table that are above the stitches


def legend_of(table: Table, is_thread: Callable[[str], bool]) -> Legend | None:
    """The legend that an empty row parts from the stitches above or below it, or an empty column from those beside it.

    Each row begins with a code that is stitched and that no other row has, goes on with what `is_thread` knows,
    and says something that no stitch does.
    """
    wide = max(map(len, table), default=0)
    if max(wide, len(table)) > _LARGEST:
        return None
    there = [number for number, row in enumerate(table) if any(row)]
    if not there:
        return None
    first, last = there[0], there[-1]
    start = next((n + 1 for n in range(last, -1, -1) if not any(table[n])), 0)
    above, below = table[: max(start - 1, 0)], table[start : last + 1]
    if start and (said := _said(below, above, is_thread)):
        return Legend(f"rows {start + 1} to {last + 1}", start + 1, said, above)
    used = {column for row in table for column, field in enumerate(row) if field}
    empty = [n for n in range(max(used, default=0)) if n not in used]
    for column in empty[: -_EMPTY - 1 : -1]:
        beside = [row[column + 1 :] for row in table]
        rows = [number for number, row in enumerate(beside) if any(row)]
        left = [row[:column] for row in table]
        if rows and (said := _said([beside[n] for n in rows], left, is_thread)):
            return Legend(f"the columns from {column + 2} on", rows[0] + 1, said, left)
    end = next((n for n in range(first, last) if not any(table[n])), last)
    top = next((n for n in there if n > end), len(table))
    if said := _said(table[first:end], table[top:], is_thread):
        return Legend(f"rows {first + 1} to {end}", first + 1, said, table[top:], top)
    return None


def _said(
    rows: Table, stitches: Table, is_thread: Callable[[str], bool]
) -> tuple[tuple[str, str], ...]:
    """What the rows say of each code; nothing where they are no legend of these stitches."""
    worked = _worked(stitches)
    found = [_parted([field for field in row if field]) for row in rows]
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


def _parted(row: list[str]) -> list[str]:
    """'BK = 27 seed black' in one field is a code, its thread, and that as it begins."""
    match = _IN_ONE.fullmatch(row[0]) if len(row) == 1 else None
    return [match[1], match[2], _first(match[2])] if match else row


def _worked(stitches: Table) -> set[str]:
    """What stands in the table, but for headings that count it, perhaps below a title: they may be numbers of threads
    too."""
    wide, high = filled(stitches)
    rows = [[*row, *[""] * wide][:wide] for row in stitches[:high]]
    tops = range(min(high, _TITLES + 1))
    counted = [(top, *map(bool, headings(rows[top:], None))) for top in tops]
    top, across, down = max(counted, key=lambda one: one[1] + one[2], default=(0, False, False))
    return {field for row in rows[top + across :] for field in row[down:] if field}


@dataclass(frozen=True)
class SignLegend:
    where: str
    said: tuple[tuple[str, str], ...]  # signs, each with its thread, or a word for bare cloth
    grid: tuple[str, ...]  # all lines, in which those of the legend are empty


def legend_of_signs(lines: Sequence[str], is_thread: Callable[[str], bool]) -> SignLegend | None:
    """The legend that an empty line parts from a grid of signs, below it or above."""
    blocks = _blocks(lines)
    for first, last in (blocks[-1], blocks[0]) if len(blocks) > 1 else ():
        rest = [line for at, line in enumerate(lines) if not first <= at <= last]
        worked = {sign for line in rest if not line.startswith("#") for sign in line}
        if said := _said_of_signs(lines[first : last + 1], worked, is_thread):
            grid = ("" if first <= at <= last else line for at, line in enumerate(lines))
            return SignLegend(f"lines {first + 1} to {last + 1}", said, tuple(grid))
    return None


@dataclass(frozen=True)
class Strange:
    """What a legend of signs says that is no thread."""

    where: str
    line: int
    sign: str
    word: str


def strange_in_legend(lines: Sequence[str], is_thread: Callable[[str], bool]) -> Strange | None:
    """The first word that is none in what is a legend but for one line, or for few; None where there is no such."""
    blocks = _blocks(lines)
    for first, last in (blocks[-1], blocks[0]) if len(blocks) > 1 else ():
        found = [(at, _OF_SIGN.fullmatch(lines[at])) for at in range(first, last + 1)]
        signs = [(at, line[1], line[3]) for at, line in found if line and line["says"]]
        strange = [one for one in signs if not is_thread(one[2]) and not is_thread(_first(one[2]))]
        if len(signs) == len(found) and strange and 2 * len(strange) < len(signs):
            at, sign, word = strange[0]
            return Strange(f"lines {first + 1} to {last + 1}", at + 1, sign, word)
    return None


def _first(words: str) -> str:
    return words.split()[0].strip(",;")


def _blocks(lines: Sequence[str]) -> list[tuple[int, int]]:
    """First and last line, from 0, of what empty lines part; remarks are in none."""
    blocks: list[tuple[int, int]] = []
    for at, line in enumerate(lines):
        if not line.strip() or line.startswith("#"):
            continue
        if blocks and blocks[-1][1] == at - 1:
            blocks[-1] = blocks[-1][0], at
        else:
            blocks.append((at, at))
    return blocks


def _said_of_signs(
    lines: Sequence[str], worked: set[str], is_thread: Callable[[str], bool]
) -> tuple[tuple[str, str], ...]:
    found = [_OF_SIGN.fullmatch(line) for line in lines]
    if len(found) > 1 and not found[0]:
        found = found[1:]  # its heading: 'Legend'
    said: dict[str, str] = {}
    for line in found:
        words = (line[3], _first(line[3])) if line else ()
        thread = next(filter(is_thread, words), None)
        if line is None or thread is None or line[1] in said or line[1] not in worked:
            return ()
        said[line[1]] = thread
    sure = len(said) >= _LEAST or any(line and line["says"] for line in found)
    return tuple(said.items()) if sure else ()


def title_above(lines: Sequence[str]) -> int | None:
    """The number, from 0, of a line of words that an empty line parts from the grid of signs below it; most of its
    letters are no signs of the grid."""
    blocks = _blocks(lines)
    if len(blocks) < 2 or blocks[0][0] != blocks[0][1]:
        return None
    number = blocks[0][0]
    signs = {sign for line in lines[number + 1 :] for sign in line}
    letters = {sign for sign in lines[number] if sign.isalpha()}
    strange = letters - signs  # a row of one or two colours that come nowhere else is no title
    return number if len(strange) >= _LETTERS and 2 * len(strange) > len(letters) else None
