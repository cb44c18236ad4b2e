"""Close-ups: a window of the chart at double size, two characters by two for each stitch."""

from collections import Counter

from packetgen.diagnostics import Place, Problems
from packetgen.load.chart import Chart
from packetgen.load.values import Filled
from packetgen.load.words import LOST, counted, offer, said
from packetgen.model import BARE, Corner, Fraction, Stitch

_CORNERS = (Corner.TOP_LEFT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.BOTTOM_RIGHT)
Marks = tuple[str, ...] | None
Taken = dict[tuple[int, int], int]  # stitch → line of the file that fills it


def read_close_up(
    filled: Filled, marks: Marks, chart: Chart | None, taken: Taken, problems: Problems
) -> tuple[tuple[Fraction, ...], frozenset[str]]:
    """The fractional stitches of one window, and every mark that stands in it.

    chart: None where it cannot be told what the chart holds. taken:
    grows by the stitches that the window fills.
    """
    rows = _rows(filled)
    if rows is None or filled["at"] is None or not _even(rows, filled, problems):
        return (), frozenset("".join(rows or ())) - {BARE}
    left, top = filled["at"]
    fractions: list[Fraction] = []
    _fits(left, top, len(rows[0]) // 2, len(rows) // 2, filled.place_of("at"), chart, problems)
    unknown: set[str] = set()
    for down in range(0, len(rows), 2):
        for across in range(0, len(rows[0]), 2):
            block = rows[down][across : across + 2] + rows[down + 1][across : across + 2]
            if block == BARE * 4 or LOST in block:
                continue
            place = _row_place(filled, down, across)
            column, row = left + across // 2, top + down // 2
            strange = [mark for mark in block if marks is not None and mark not in (BARE, *marks)]
            for mark in dict.fromkeys(strange):
                if mark not in unknown:
                    spot = _row_place(
                        filled, down + block.index(mark) // 2, across + block.index(mark) % 2
                    )
                    problems.add(spot, "mark-unknown", mark=said(mark), hint=offer(mark, marks))
                unknown.add(mark)
            if strange:
                continue
            stitches = _stitches(block, column, row)
            if stitches is None:
                code = "close-up-full" if len(set(block)) == 1 else "close-up-block"
                shown = f"'{block[:2]}' over '{block[2:]}'"
                problems.add(place, code, block=shown, mark=said(block[0]), column=column, row=row)
                continue
            _free(column, row, place, marks, chart, taken, problems)
            fractions += stitches
    return tuple(fractions), frozenset("".join(rows)) - {BARE, LOST}


def _stitches(block: str, column: int, row: int) -> tuple[Fraction, ...] | None:
    """What one stitch's four quarters (top left, top right, bottom left, bottom right) say;
    None for nonsense.
    """
    counts = Counter(mark for mark in block if mark != BARE)
    most, times = counts.most_common(1)[0]
    where = [number for number, mark in enumerate(block) if mark == most]
    if times == 1:
        return tuple(
            Fraction(column, row, mark, Stitch.QUARTER, corner)
            for mark, corner in zip(block, _CORNERS, strict=True)
            if mark != BARE
        )
    if times == 2 and len(counts) == 1 and where in ([0, 3], [1, 2]):
        stitch = Stitch.HALF_BACK if where == [0, 3] else Stitch.HALF
        return (Fraction(column, row, most, stitch, None),)
    if times == 3:
        open_corner = next(number for number, mark in enumerate(block) if mark != most)
        corner = _CORNERS[open_corner]
        long = Fraction(column, row, most, Stitch.THREE_QUARTER, corner)
        other = block[open_corner]
        return (
            (long,)
            if other == BARE
            else (long, Fraction(column, row, other, Stitch.QUARTER, corner))
        )
    return None


def _rows(filled: Filled) -> list[str] | None:
    text = filled["rows"]
    if text is None:
        return None
    return [line.rstrip() for line in text.rstrip().split("\n")]


def _row_place(filled: Filled, line: int, offset: int) -> Place:
    return filled.given["rows"].at(offset, line)


def _even(rows: list[str], filled: Filled, problems: Problems) -> bool:
    place = filled.place_of("rows")
    if len(rows) % 2:
        problems.add(place, "close-up-rows", number=counted(len(rows), "row"))
        return False
    usual = Counter(map(len, rows)).most_common(1)[0][0]
    for number, row in enumerate(rows):
        if len(row) != usual or len(row) % 2:
            spot = _row_place(filled, number, 0)
            problems.add(
                spot, "close-up-ragged", row=number + 1, length=len(row), usual=usual + usual % 2
            )
            return False
    return True


def _fits(
    left: int,
    top: int,
    width: int,
    height: int,
    place: Place,
    chart: Chart | None,
    problems: Problems,
) -> None:
    if chart is None:
        return
    wide, high = len(chart.rows[0]), len(chart.rows)
    if left < 1 or top < 1 or left + width - 1 > wide or top + height - 1 > high:
        problems.add(
            place,
            "close-up-outside",
            window=f"{width} × {height}",
            at=f"{left},{top}",
            columns=f"1 to {wide}",
            rows=f"1 to {high}",
        )


def _free(
    column: int,
    row: int,
    place: Place,
    marks: Marks,
    chart: Chart | None,
    taken: Taken,
    problems: Problems,
) -> None:
    """A fractional stitch needs bare cloth under it, and only one window may fill it."""
    if chart is not None and 1 <= row <= len(chart.rows) and 1 <= column <= len(chart.rows[0]):
        mark = chart.rows[row - 1][column - 1]
        if mark != BARE and (marks is None or mark in marks):
            problems.add(place, "close-up-over-stitch", mark=said(mark), column=column, row=row)
    if (column, row) in taken:
        problems.add(place, "close-up-twice", column=column, row=row, line=taken[column, row])
    taken.setdefault((column, row), place.line)
