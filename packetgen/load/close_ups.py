"""Close-ups: a window of the chart at double size, two characters by two for each stitch."""

from collections import Counter
from collections.abc import Collection, Mapping

from packetgen.diagnostics import Place, Problems
from packetgen.load.blocks import LINES, parted, read_block
from packetgen.load.chart import Chart
from packetgen.load.values import Filled
from packetgen.load.words import LOST, counted, offer, said
from packetgen.model import BARE, Fraction, Stitch

# How the key works each mark, None for a line that is broken; None altogether where nobody can tell.
Marks = Mapping[str, Stitch | None] | None
Taken = dict[tuple[int, int], int]  # stitch → line of the file that fills it


def read_close_up(
    filled: Filled,
    marks: Marks,
    chart: Chart | None,
    taken: Taken,
    problems: Problems,
    told: Collection[str] = (),
) -> tuple[tuple[Fraction, ...], frozenset[str]]:
    """The fractional stitches of one window, and every mark that stands in it.

    chart: None where it cannot be told what the chart holds. taken:
    grows by the stitches that the window fills. told: marks that the key lacks, of which something else tells.
    """
    rows = _rows(filled)
    if rows is None or filled["at"] is None or not _even(rows, filled, problems):
        return (), frozenset("".join(rows or ())) - {BARE}
    left, top = filled["at"]
    fractions: list[Fraction] = []
    over: list[tuple[Place, str, int, int]] = []
    used: set[str] = set()
    _fits(left, top, len(rows[0]) // 2, len(rows) // 2, filled.place_of("at"), chart, problems)
    unknown: set[str] = set()
    for down in range(0, len(rows), 2):
        for across in range(0, len(rows[0]), 2):
            block = rows[down][across : across + 2] + rows[down + 1][across : across + 2]
            used.update(set(block) - LINES if parted(block) else block)
            if block == BARE * 4 or LOST in block:
                continue
            place = _row_place(filled, down, across)
            column, row = left + across // 2, top + down // 2
            strange = () if marks is None else _strange(block, marks)
            for mark in strange:
                if mark not in unknown and mark not in told:
                    spot = _row_place(
                        filled, down + block.index(mark) // 2, across + block.index(mark) % 2
                    )
                    problems.add(
                        spot, "mark-unknown", mark=said(mark), hint=offer(mark, marks or ())
                    )
                unknown.add(mark)
            if strange:
                continue
            stitches = read_block(block, column, row, marks or {})
            if isinstance(stitches, str):
                if marks is not None and all(marks.get(mark) for mark in set(block) & set(marks)):
                    _nonsense(stitches, block, column, row, place, problems)
                continue
            if mark := _worked(column, row, marks, chart):
                over.append((place, mark, column, row))
            if (column, row) in taken:
                line = taken[column, row]
                problems.add(place, "close-up-twice", column=column, row=row, line=line)
            taken.setdefault((column, row), place.line)
            fractions += stitches
    if over:  # told once: where it lies elsewhere, all of them go
        place, mark, column, row = over[0]
        more = len(over) - 1
        also = f", and stitches below {more} more of this close-up" if more else ""
        facts = {"mark": said(mark), "column": column, "row": row, "more": also}
        problems.add(place, "close-up-over-stitch", **facts)
    return tuple(fractions), frozenset(used) - {BARE, LOST}


def _nonsense(
    code: str, block: str, column: int, row: int, place: Place, problems: Problems
) -> None:
    one, other = block[0], next((mark for mark in block if mark != block[0]), block[0])
    problems.add(
        place,
        code,
        block=_said(block),
        mark=said(one),
        column=column,
        row=row,
        rising=_said(f"{one}//{other}"),
        falling=_said(f"\\{one}{other}\\"),
    )


def _strange(block: str, marks: Collection[str]) -> tuple[str, ...]:
    """What in the block is none of the key's marks, each once."""
    known = (BARE, *LINES, *marks)
    return tuple(dict.fromkeys(mark for mark in block if mark not in known))


def _said(block: str) -> str:
    return f"'{block[:2]}' over '{block[2:]}'"


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


def _worked(column: int, row: int, marks: Marks, chart: Chart | None) -> str:
    """The mark of a stitch that the chart has there, where bare cloth is needed; '' where it has none."""
    if chart is None or not (1 <= row <= len(chart.rows) and 1 <= column <= len(chart.rows[0])):
        return ""
    mark = chart.rows[row - 1][column - 1]
    return mark if mark != BARE and (marks is None or mark in marks) else ""
