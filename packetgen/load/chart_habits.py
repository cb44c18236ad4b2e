"""A chart with signs between its marks or at its edge, numbers beside its rows, words among them or other dots than full stops, as
tables, other papers and word processors have them."""

import re
from collections import Counter
from collections.abc import Collection, Sequence
from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.load.chart import Chart
from packetgen.load.words import said
from packetgen.model import BARE

_SIGNS = {",": "comma", ";": "semicolon", "|": "bar", "\t": "tab", " ": "space"}
_NUMBERED = re.compile(r"\s*(\d{1,4})([.:|]?[ \t]+|[:|,;])(?=\S)", re.ASCII)
_DOTS = {"…": "...", "·": ".", "•": ".", "∙": ".", "⋅": ".", "․": ".", "‧": "."}
_FEWEST = 3  # rows, or marks in a row, from which on that is no chance


def without_habits(chart: Chart, marks: Collection[str] | None, problems: Problems) -> Chart | None:
    """The chart again, with full stops for other dots; None where it has one of the others. All are reported.
    `marks` are those of the key, None where nobody can tell them."""
    chart = chart if marks is None else _with_full_stops(chart, marks, problems)
    rows = [row for row in chart.rows if row]
    words = [] if marks is None else _words(chart.rows, marks)
    if words[:1] == [1]:
        del words[1:]  # remarks below the first are in order with it
    _tell_words(words, chart, problems)
    if words:
        return None
    first = chart.rows.index(rows[0]) + 1 if rows else 1
    if begins := _numbers_before(rows, marks or ()):
        problems.add(chart.place(first), "chart-numbered", where="before", begins=begins)
        return None
    if ends := _numbers_before([row[::-1] for row in rows], marks or (), backwards=True):
        place = chart.place(first, len(rows[0]))
        problems.add(place, "chart-numbered", where="behind", begins=ends)
        return None
    if marks and (edged := _signs_at_ends(rows, marks)):
        problems.add(chart.place(first), "chart-edged", **edged)
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


def _tell_words(numbers: Sequence[int], chart: Chart, problems: Problems) -> None:
    """Each such row by its number; several remarks on end, above which rows have got, in one."""
    on_end = len(numbers) > 1 and list(numbers) == list(range(numbers[0], numbers[-1] + 1))
    for number in numbers[:1] if on_end else numbers:
        hint = "take it out: remarks stand above the chart" if number > 1 else "put # before it"
        if on_end and number > 1:
            below, all_of_them = f"are the {len(numbers) - 1} lines", f"all {len(numbers)}"
            if len(numbers) == 2:
                below, all_of_them = "is the line", "both"
            hint = f"nor {below} below it; move {all_of_them} above the first row of the chart"
        row = said(chart.rows[number - 1])
        problems.add(chart.place(number), "chart-words", said=row, hint=hint)


def _with_full_stops(chart: Chart, marks: Collection[str], problems: Problems) -> Chart:
    """The chart with full stops where other dots stand that are no marks of the key: they are told once, where each
    stands first."""
    rows = chart.rows
    for sign, meant in _DOTS.items():
        lines = [] if sign in marks else [at for at, row in enumerate(rows, 1) if sign in row]
        if not lines:
            continue
        times = sum(row.count(sign) for row in rows)
        column = rows[lines[0] - 1].index(sign) + 1
        more = f" ({times} in all)" if times > 1 else ""
        spot = f"column {column}, row {lines[0]}{more}"
        what = (
            "one sign and no three full stops" if len(meant) > 1 else "another dot than a full stop"
        )
        each = " for each" if times > 1 else ""
        place = chart.place(lines[0], column)
        problems.add(
            place, "chart-dots", said=said(sign), spot=spot, what=what, hint=f"{said(meant)}{each}"
        )
        rows = tuple(row.replace(sign, meant) for row in rows)
    return replace(chart, rows=rows)


def _words(rows: Sequence[str], marks: Collection[str]) -> list[int]:
    """The numbers, from 1, of rows that are remarks or words and not stitches."""
    usual = Counter(len(row) for row in rows if row).most_common(1)[0][0] if any(rows) else 0

    def is_words(row: str) -> bool:
        letters = [sign for sign in row if sign.isalpha()]
        strange = [sign for sign in letters if sign not in marks]
        ruler = [sign for sign in row if not sign.isspace() and sign not in "|+-'"]
        if len(ruler) >= _FEWEST and all(map(str.isdigit, ruler)) and not {*ruler} & {*marks}:
            return True  # columns counted above the chart
        return len(row) != usual and (
            re.search(r"[^\W\d_]{3,}", row) is not None
            and len({*strange}) >= _FEWEST
            and 2 * len(strange) >= len(letters)
        )

    found = [number for number, row in enumerate(rows, 1) if row.startswith("#") or is_words(row)]
    # The marks of a large key are most letters: by what stands below it a remark is known that lost its #.
    if found and found[0] > 1 and rows[found[0] - 1].startswith("#"):
        above = rows[: found[0] - 1]
        if all(len(row) != usual and not {*row} <= {*marks, BARE} for row in above):
            found.insert(0, 1)
    return found if 2 * len(found) < len(rows) else found[:1] * (found[:1] == [1])


def _signs_at_ends(rows: list[str], marks: Collection[str]) -> dict[str, str] | None:
    """A sign that is no mark and stands before all rows, behind all, or both, and nowhere else."""
    strange = {row[at] for row in rows for at in (0, -1)} - {*marks, BARE, "#"}
    strange = {sign for sign in strange if not sign.isspace()}
    if len(rows) < _FEWEST or len(strange) != 1 or min(map(len, rows)) < _FEWEST:
        return None
    (sign,) = strange
    before, behind = (all(row[at] == sign for row in rows) for at in (0, -1))
    where = "at both ends of" if before and behind else "before" if before else "behind"
    inside = any(sign in row[before : len(row) - behind] for row in rows)
    return None if inside or not (before or behind) else {"sign": said(sign), "where": where}


def _numbers_before(rows: list[str], marks: Collection[str], backwards: bool = False) -> str:
    """The number of the first row, as it stands there, if all rows have theirs; '' otherwise. `backwards` says
    whether the rows are turned round, with what stands behind them before them."""
    found = [number for number in map(_NUMBERED.match, rows) if number]
    if not len(found) == len(rows) >= _FEWEST or any({*one[2]} & {*marks} for one in found):
        return ""
    turn = -1 if backwards else 1
    numbers = [int(one[1][::turn]) for one in found]
    steps = {after - before for before, after in zip(numbers, numbers[1:])}
    return said(found[0][0][::turn].strip()) if steps in ({1}, {-1}) else ""


def _all_parted(rows: list[str], sign: str) -> bool:
    """Whether in each row that sign stands between any two marks, perhaps with spaces, and perhaps round all of
    them."""
    if not any(sign in row for row in rows):
        return False  # soon said of a million rows
    longest = 0
    for row in rows:
        cells = row.strip(" ").strip(sign).split(sign)
        marks = [cell.strip(" ") for cell in cells]
        if not all(len(mark) == 1 and not mark.isspace() for mark in marks):
            return False
        longest = max(longest, len(marks))
    # Without a mark for bare cloth, spaces may stand for it.
    return longest >= _FEWEST and (not sign.isspace() or any(BARE in row for row in rows))
