"""A chart with signs between its marks, or with numbers before its rows, as tables and other papers have them."""

import re
from collections.abc import Collection

from packetgen.diagnostics import Problems
from packetgen.load.chart import Chart
from packetgen.load.words import said
from packetgen.model import BARE

_SIGNS = {",": "comma", ";": "semicolon", "|": "bar", "\t": "tab", " ": "space"}
_NUMBERED = re.compile(r"\s*(\d{1,4})([.:|]?[ \t]+|[:|,;])(?=\S)", re.ASCII)
_FEWEST = 3  # rows, or marks in a row, from which on that is no chance


def without_habits(chart: Chart, marks: Collection[str] | None, problems: Problems) -> Chart | None:
    """The chart again; None where it has one of the two, which is reported. `marks` are those of the key, None
    where nobody can tell them."""
    rows = [row for row in chart.rows if row]
    if begins := _numbers_before(rows, marks or ()):
        problems.add(chart.place(chart.rows.index(rows[0]) + 1), "chart-numbered", begins=begins)
        return None
    for sign, name in _SIGNS.items():
        a_mark = sign in marks if marks is not None else not sign.isspace()
        if a_mark or not _all_parted(rows, sign):
            continue
        number = chart.rows.index(rows[0]) + 1
        hint = ", or call the file chart.csv" if sign in ",;\t" else ""
        place = chart.place(number, rows[0].index(sign) + 1)
        problems.add(place, "chart-parted", sign=name, else_call=hint)
        return None
    return chart


def _numbers_before(rows: list[str], marks: Collection[str]) -> str:
    """The number of the first row, as it stands there, if all rows have theirs; '' otherwise."""
    found = [number for number in map(_NUMBERED.match, rows) if number]
    if not len(found) == len(rows) >= _FEWEST or any({*one[2]} & {*marks} for one in found):
        return ""
    numbers = [int(one[1]) for one in found]
    steps = {after - before for before, after in zip(numbers, numbers[1:])}
    return said(found[0][0].strip()) if steps in ({1}, {-1}) else ""


def _all_parted(rows: list[str], sign: str) -> bool:
    """Whether in each row that sign stands between any two marks, perhaps with spaces, and perhaps round all of
    them."""
    longest = 0
    for row in rows:
        cells = row.strip(" ").strip(sign).split(sign)
        marks = [cell.strip(" ") for cell in cells]
        if not all(len(mark) == 1 and not mark.isspace() for mark in marks):
            return False
        longest = max(longest, len(marks))
    # Without a mark for bare cloth, spaces may stand for it.
    return longest >= _FEWEST and (not sign.isspace() or any(BARE in row for row in rows))
