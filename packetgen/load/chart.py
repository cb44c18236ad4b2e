"""A chart as it was drawn, before anybody asks whether its marks mean anything."""

import unicodedata
from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace

from packetgen.diagnostics import Place, Problems
from packetgen.load.row_slips import row_slips
from packetgen.load.words import LOST, counted, listed, offer, said
from packetgen.model import BARE, Grid, Stitch

LARGEST = 1000  # stitches, either way
STITCHED = (
    250  # pixels of a side: a larger picture was hardly drawn a stitch a pixel. Our own choice
)
# Rows of so many lengths, and so large a share of rows that are not as long as most, are no single slips.
_FEWEST_LENGTHS = 4
_MANY = 1 / 4
# Columns that lie within so small a share of the row are one spot to an eye that looks for a slip.
_NARROW = 8
_ROUND = 3  # marks of one kind beside another: our own choice
_SHOWN = 4  # marks in a message


@dataclass(frozen=True)
class Chart:
    """Rows of marks, perhaps ragged, perhaps with marks that no key line explains.

    Row 1 is line `first_line` of the file, and column 1 its column `first_column` (in a table: its cell).
    """

    rows: tuple[str, ...]
    path: str
    first_line: int = 1
    first_column: int = 1

    def place(self, row: int, column: int = 1) -> Place:
        """Of the stitch at `row`, `column`, both from 1."""
        return Place(self.path, self.first_line + row - 1, self.first_column + column - 1)

    @property
    def even(self) -> bool:
        return len({len(row) for row in self.rows}) == 1

    @property
    def marks(self) -> frozenset[str]:
        return frozenset().union(*self.rows) - {BARE, LOST}


def check_size(chart: Chart, problems: Problems) -> Chart | None:
    """The chart again, or None where it is empty or too large to be one."""
    width, height = max(map(len, chart.rows), default=0), len(chart.rows)
    if not width:
        problems.add(Place(chart.path), "chart-empty")
        return None
    if width > LARGEST or height > LARGEST:
        problems.add(Place(chart.path), "chart-large", width=width, height=height, limit=LARGEST)
        return None
    return chart


def check_rows(chart: Chart, problems: Problems) -> Chart:
    """The chart without spaces that are too many in their row. They are reported, and so is every row that is
    not as long as most of them; but where spaces stand for bare cloth, short ones may have lost theirs at the
    end, and mending these mends them. Rows that all lack the '.' at one end are reported together."""
    cut_short = _bare_end_left_out(chart)
    lengths = tuple(map(len, chart.rows))
    usual = max(lengths) if cut_short else Counter(lengths).most_common(1)[0][0]
    spaced = _complain_of_spaces(chart, usual, problems)
    in_place = [
        sum(map(str.isspace, row))
        for number, row in enumerate(chart.rows, 1)
        if number not in spaced
    ]
    for_cloth = sum(in_place) > len(in_place)
    if cut_short and not for_cloth:
        _complain_of_ends(chart, cut_short, usual, problems)
    broken = () if cut_short or spaced or any(in_place) else row_slips(chart.rows, usual)
    for slip in broken:
        place = chart.place(slip.rows[0], slip.column)
        problems.add(place, "rows-broken", what=slip.what, hint=slip.hint)
    spoken_of = {number for slip in broken for number in slip.rows}
    for number, row in enumerate(chart.rows, 1):
        with_spaces = any(map(str.isspace, row))  # told, with the length that the row must have
        told = for_cloth or cut_short or with_spaces
        if len(row) == usual or number in spaced or (told and len(row) < usual):
            continue
        if number in spoken_of:
            continue
        odd = abs(usual - len(row))
        change = f"add {odd} ('.' is bare cloth)" if len(row) < usual else f"take {odd} away"
        beside = [one for one in chart.rows[max(0, number - 2) : number + 1] if len(one) == usual]
        found = slipped(row, usual, beside) or _torn_run(row, usual)
        where, certain = found or (None, False)
        if not row:
            hint = f"{change}, or take the line away"
        elif where and not certain:
            hint = f"{change}, perhaps at column {where}: compare the rows above and below before you do"
        elif where:
            hint = f"{change}, most likely at column {where}: the row is then most like those beside it"
        else:
            what = f"add {odd} where missing ('.' if bare)" if len(row) < usual else change
            hint = f"{what}: look where in the row it stops agreeing with those above and below"
        place = chart.place(number, where or 1)
        length = counted(len(row), "stitch", "stitches")
        problems.add(place, "row-ragged", row=number, length=length, usual=usual, hint=hint)
    rows = enumerate(chart.rows, 1)
    return replace(
        chart, rows=tuple("".join(row.split()) if number in spaced else row for number, row in rows)
    )


def blank_said(mark: str) -> str:
    return "a tab" if mark == "\t" else "a space"


def _bare_end_left_out(chart: Chart) -> str:
    """'right' where the rows end with their last stitches, as if '.' behind these were not needed, 'left' where
    they begin with their first; '' where neither is so."""
    lengths = Counter(map(len, chart.rows))
    unusual = len(chart.rows) - lengths.most_common(1)[0][1]
    if len(lengths) < _FEWEST_LENGTHS or unusual < len(chart.rows) * _MANY:
        return ""
    reading = {"right": chart.rows, "left": tuple(row[::-1] for row in chart.rows)}
    found = [end for end, rows in reading.items() if not any(row.endswith(BARE) for row in rows)]
    return max(found, key=lambda end: _agreeing(reading[end]), default="")


def _agreeing(rows: tuple[str, ...]) -> int:
    """How many stitches are the same as the one above."""
    return sum(one == other for row, below in zip(rows, rows[1:]) for one, other in zip(row, below))


def _complain_of_ends(chart: Chart, end: str, width: int, problems: Problems) -> None:
    """One line for all rows that are shorter than the widest."""
    short = [number for number, row in enumerate(chart.rows, 1) if len(row) < width]
    rows = f"{len(short)} rows, from row {short[0]} to row {short[-1]},"
    if end == "left":
        place, what, where = chart.place(short[0]), "begin with their first stitch", "before it"
    else:
        place = chart.place(short[0], len(chart.rows[short[0] - 1]) + 1)
        what, where = "end with their last stitch", "behind it"
    problems.add(place, "rows-short", what=f"{rows} {what}", where=where, width=width)


def _complain_of_spaces(chart: Chart, usual: int, problems: Problems) -> tuple[int, ...]:
    """The rows that are `usual` long without their spaces. Those spaces are reported once, where they stand
    first, and so are those that stand in a stitch's place."""
    spaces = {
        number: [column for column, mark in enumerate(row, 1) if mark.isspace()]
        for number, row in enumerate(chart.rows, 1)
    }
    with_spaces = [number for number, columns in spaces.items() if columns]
    without = {number: len(chart.rows[number - 1]) - len(spaces[number]) for number in with_spaces}
    if len(without) == len(chart.rows) and len({*without.values()}) == 1:
        usual = without[1]  # the whole chart is spaced out or set in
    too_many = tuple(number for number in with_spaces if without[number] == usual)
    others = tuple(number for number in with_spaces if number not in too_many)
    if others:  # a row of nothing else has lost its spaces
        blank = {number for number, row in enumerate(chart.rows, 1) if not row}
        others = tuple(sorted({*others, *blank}))
    for numbers in (too_many, others):
        if not numbers:
            continue
        line, column = numbers[0], (spaces[numbers[0]] or [1])[0]
        times = sum(len(spaces[number]) for number in numbers)
        if numbers is too_many:
            more = f" ({times} in all)" if times > 1 else ""
            hint = f"take {'them' if times > 1 else 'it'} away"
        else:
            more, hint = _for_bare_cloth(chart, numbers, times, usual)
        spot = f"column {column}, row {line}{more}"
        what = blank_said(chart.rows[line - 1][column - 1 : column] or " ")
        problems.add(chart.place(line, column), "chart-space", what=what, spot=spot, hint=hint)
    return too_many


def _for_bare_cloth(chart: Chart, rows: tuple[int, ...], times: int, usual: int) -> tuple[str, str]:
    """Where else blanks stand for bare cloth, and what to write; those at the ends of rows are not counted."""
    hint = "write '.' for bare cloth"
    missing = max(usual - len(chart.rows[row - 1]) for row in rows)
    if rows[1:]:
        hint += f", so many that each row is {usual} long" * (missing > 0)
        return f" (and in {counted(len(rows) - 1, 'more row')})", hint
    hint += f", {times + missing} in all: each row is {usual} long" * (missing > 0)
    return f" (and in {counted(times - 1, 'more column')})" * (times > 1), hint


def slipped(row: str, usual: int, beside: list[str]) -> tuple[int, bool] | None:
    """The column at which stitches are most likely missing or too many: with them put in or taken out there,
    the row has the most stitches in common with the rows beside it; and whether it has all in common with them. None
    where several columns, far apart, are as good or nearly so, or where it cannot be told."""
    odd = usual - len(row)

    def alike(column: int) -> int:
        mended = row[:column] + (LOST * odd if odd > 0 else "") + row[column + max(0, -odd) :]
        return sum(one == other for near in beside for one, other in zip(mended, near))

    found = [alike(column) for column in range(min(len(row), usual) + 1)]
    best = [column for column, number in enumerate(found) if number == max(found)]
    if not beside or best[-1] - best[0] > usual // _NARROW:
        return None
    # A slip moves all that follows it; elsewhere a stitch or two may agree by chance.
    far = [
        number
        for column, number in enumerate(found)
        if not best[0] - usual // _NARROW <= column <= best[-1] + usual // _NARROW
    ]
    alike_in_all = max(found) == len(beside) * min(len(row), usual)
    if not alike_in_all and max(found) - max(far, default=0) <= abs(odd) * len(beside):
        return None
    column = len(found) if best[-1] == len(found) - 1 else best[0] + 1
    return column, alike_in_all


def _torn_run(row: str, usual: int) -> tuple[int, bool] | None:
    """The column of the one bare stitch too many, where a run of one mark is parted by one bare stitch and no other is, as by a
    comma too many in a table."""
    parted = [
        column
        for column in range(2, len(row))
        if row[column - 1] == BARE and row[column - 2] == row[column] != BARE
    ]
    return (parted[0], False) if len(row) == usual + 1 and len(parted) == 1 else None


def check_marks(
    chart: Chart,
    marks: Collection[str],
    places: Mapping[str, Place],
    unused: Collection[str],
    problems: Problems,
) -> None:
    """Report every mark of the chart that the key does not explain, once, where it stands first, and every mark of
    the key that is `unused`, at its place; where there is one of each, they may be the same and are told as that."""
    first: dict[str, tuple[int, int]] = {}
    times: Counter[str] = Counter()
    for number, row in enumerate(chart.rows, 1):
        for mark in sorted(set(row) - {BARE, LOST, *marks}):
            if mark.isspace():
                continue  # told with the rows
            first.setdefault(mark, (number, row.index(mark) + 1))
            times[mark] += row.count(mark)
    if len(first) == len(unused) == 1 and (other := next(iter(first))) != "#":
        (idle,) = unused
        in_all = f" ({times[other]:,} stitches)" if times[other] > 1 else ""
        facts = {"mark": said(idle), "other": said(other), "right": said(f"{other}:")}
        problems.add(places[idle], "key-mark-other", **facts, times=in_all)
        return
    swapped = sorted(mark for mark in first if mark.swapcase() in marks)
    if len(swapped) == len(first) > 1:
        line, column = min(first.values())
        facts = {"marks": listed(swapped[:_SHOWN], "and"), "others": _swapped(swapped[:_SHOWN])}
        problems.add(chart.place(line, column), "chart-case", **facts)
        first.clear()
        unused = [mark for mark in unused if mark.swapcase() not in swapped]
    for mark in sorted(unused):  # of very many the same are told each time
        if mark.swapcase() in first:
            continue  # told in the chart: 'v' is not in the key, did you mean 'V'?
        problems.add(places[mark], "key-line-unused", mark=said(mark))
    too_many = _too_many(chart, first, times)
    for mark, (line, column) in first.items():
        more = f" ({times[mark]} stitches in all)" if times[mark] > 1 else ""
        spot = f"column {column}, row {line}{more}"
        place = chart.place(line, column)
        if mark == "#":
            problems.add(place, "mark-reserved", mark=said(mark), why="begins a remark")
        else:
            hint = _other_letters(mark, marks) or _line_or_mark(mark, marks)
            if times[mark] == 1 and (beside := _all_round(chart.rows, line, column)) in marks:
                hint = f"did you mean {said(beside)}, as all round it?"
            if line in too_many:
                it = "it" if times[mark] == 1 else "them"
                hint = f"take {it} out: the row is {too_many[line]} too long"
                problems.forget("row-ragged", chart.path, chart.place(line).line)
            if BARE not in "".join(chart.rows) and 2 * times[mark] > sum(map(len, chart.rows)):
                hint = f"if it is bare cloth, write {said(BARE)} in its place"
            problems.add(place, "chart-mark-unknown", mark=said(mark), spot=spot, hint=hint)


def _all_round(rows: Sequence[str], line: int, column: int) -> str:
    """The one mark that stands to the left and right, above and below; '' where these differ, or fewer than three are there."""
    beside = [
        rows[y - 1][x - 1]
        for y, x in ((line, column - 1), (line, column + 1), (line - 1, column), (line + 1, column))
        if 1 <= y <= len(rows) and 1 <= x <= len(rows[y - 1])
    ]
    return beside[0] if len(beside) >= _ROUND and len(set(beside)) == 1 else ""


def _line_or_mark(mark: str, marks: Collection[str]) -> str:
    offered = offer(mark, tuple(marks))
    known = offered.removeprefix("known here: ")
    one_of = "one of " * (len(marks) > 1)
    return offered if known == offered else f"add it to the key, or write {one_of}{known} for it"


def _swapped(marks: Sequence[str]) -> str:
    return listed([mark.swapcase() for mark in marks], "and")


def _too_many(
    chart: Chart, first: Mapping[str, tuple[int, int]], times: Mapping[str, int]
) -> dict[int, int]:
    """By how much rows are too long that have as many strange marks too, which stand in no other."""
    usual = Counter(map(len, chart.rows)).most_common(1)[0][0]
    found = {}
    for line in {line for line, _ in first.values()}:
        row, marks = chart.rows[line - 1], [mark for mark, (of, _) in first.items() if of == line]
        if sum(times[mark] for mark in marks) == sum(map(row.count, marks)) == len(row) - usual:
            found[line] = len(row) - usual
    return found


def _other_letters(mark: str, marks: Collection[str]) -> str:
    """That `mark` is a letter of another alphabet than the key's, some of whose letters look like those; '' where
    it is none."""
    alphabet, others = _alphabet(mark), {*map(_alphabet, marks)} - {""}
    if not alphabet or not others or alphabet in others:
        return ""
    name = f"it is a letter of the {alphabet.capitalize()} alphabet, however it looks"
    like = _LOOKS_LIKE.get(mark, "")
    return (
        f"{name}: write {said(like)}" if like in marks else f"{name}; {offer(mark, tuple(marks))}"
    )


# Letters of Cyrillic and Greek, and those of Latin that look the same; common knowledge of their shapes, no source.
_LOOKS_LIKE = dict(
    zip(
        "аеокрсухіјѕАВЕКМНОРСТУХІЈЅακορνΑΒΕΖΗΙΚΜΝΟΡΤΥΧ",
        "aeokpcyxijsABEKMHOPCTYXIJSakopvABEZHIKMNOPTYX",
        strict=True,
    )
)


def _alphabet(sign: str) -> str:
    """'м' → 'cyrillic'; '' where it is of none that has letters in the shape of another's."""
    first = unicodedata.name(sign, "").partition(" ")[0].lower()
    return first if first in ("latin", "greek", "cyrillic") else ""


def check_corners(chart: Chart, stitch_of: Mapping[str, Stitch | None], problems: Problems) -> None:
    """Report every mark of the chart whose stitch sits in a corner, once, where it stands first."""
    for mark in sorted(chart.marks):
        stitch = stitch_of.get(mark)
        if stitch is None or not stitch.in_a_corner:
            continue
        row = next(number for number, text in enumerate(chart.rows, 1) if mark in text)
        column = chart.rows[row - 1].index(mark) + 1
        problems.add(
            chart.place(row, column),
            "corner-unsaid",
            mark=said(mark),
            stitch=stitch.value,
            spot=f"column {column}, row {row}",
        )


def as_grid(chart: Chart) -> Grid:
    return Grid(chart.rows, chart.place(1))


def unused_marks(
    marks: Collection[str], chart: Chart, elsewhere: frozenset[str], beads: bool, problems: Problems
) -> frozenset[str]:
    """The marks of the key that nothing is stitched with; a chart with no stitch at all is reported instead."""
    if any(LOST in row for row in chart.rows):
        return frozenset()  # what cannot be read may well be the mark that seems to be missing
    used = chart.marks | elsewhere
    if not used and not beads:
        problems.add(chart.place(1), "nothing-stitched")
        return frozenset()
    return frozenset(mark for mark in marks if mark not in used)
