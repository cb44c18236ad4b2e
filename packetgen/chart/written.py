"""The chart in words, row by row: for whoever hears it from a screen reader or feels it in Braille.

It holds the same stitches as the drawn chart, in reading order, with the same totals.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import groupby

from packetgen.chart.spoken import (
    CLOTH,
    EXPLAINED,
    PARTS,
    Spoken,
    counted,
    part_words,
    spoken,
    stitch_words,
)
from packetgen.chart.written_key import (
    Total,
    WrittenColour,
    in_key_order,
    totals,
    written_colours,
)
from packetgen.chart.written_lines import Passage, convention, passages
from packetgen.model import BARE, Fraction, Pattern, Stitch
from packetgen.reckon.thread import Work, work_of

ROWS_A_GROUP = 10  # the heavier lines of a drawn chart stand every ten rows too
COUNTS_A_CHECK = 10  # after so many counts a row says which column it has come to


@dataclass(frozen=True)
class Run:
    """Cells side by side that hold the same: a mark of the key, BARE, or PARTS."""

    cells: int
    what: str


@dataclass(frozen=True)
class WrittenRow:
    """One row, or several bare ones together: '`lead`: `said`', with its part stitches in `parts`."""

    first: int
    last: int
    lead: str
    said: str
    parts: tuple[str, ...] = ()  # one sentence a cell
    repeats: int | None = None  # the row that this one is the same as

    @property
    def parts_lead(self) -> str:
        return f"Row {self.first}, in parts"


@dataclass(frozen=True)
class RowGroup:
    first: int
    last: int
    rows: tuple[WrittenRow, ...]

    @property
    def heading(self) -> str:
        return f"Row {self.first}" if self.first == self.last else _rows(self.first, self.last)


@dataclass(frozen=True)
class WrittenChart:
    title: str
    designer: str
    revision: str
    how_to_read: tuple[str, ...]
    colours: tuple[WrittenColour, ...]  # in the order of the printed key
    groups: tuple[RowGroup, ...]
    lines_convention: str  # '' where there is nothing to say
    passages: tuple[Passage, ...]
    totals: tuple[Total, ...]
    stitches: int  # in the rows, of every kind and colour


def written(pattern: Pattern) -> WrittenChart:
    """The whole chart of `pattern` in words, by the names of the model's thread set."""
    said = spoken(pattern)
    works = in_key_order(work_of(pattern))
    groups = _groups(pattern, said)
    on_top = passages(pattern, said)
    revision = pattern.revisions[-1].on
    return WrittenChart(
        title=pattern.title,
        designer=pattern.designer.name,
        revision=f"Revision {len(pattern.revisions)}, {revision.day} {revision:%B %Y}",
        how_to_read=_how_to_read(pattern, works, said, groups),
        colours=written_colours(pattern, works, said),
        groups=groups,
        lines_convention=convention(pattern) if on_top else "",
        passages=on_top,
        totals=totals(pattern, works, said),
        stitches=sum(work.total_stitches for work in works),
    )


# --- rows -----------------------------------------------------------------------------------------


def _groups(pattern: Pattern, said: Mapping[str, Spoken]) -> tuple[RowGroup, ...]:
    """Every row, in groups that begin at row 1, 11, 21: no sentence reaches back beyond its group."""
    by_row: dict[int, list[Fraction]] = {}
    for fraction in pattern.fractions:
        by_row.setdefault(fraction.row, []).append(fraction)
    height = pattern.grid.height
    groups = []
    for start in range(1, height + 1, ROWS_A_GROUP):
        numbers = range(start, min(start + ROWS_A_GROUP, height + 1))
        rows = [(n, pattern.grid.rows[n - 1], by_row.get(n, [])) for n in numbers]
        groups.append(RowGroup(numbers[0], numbers[-1], tuple(_written_rows(rows, said))))
    return tuple(groups)


def _written_rows(
    rows: list[tuple[int, str, list[Fraction]]], said: Mapping[str, Spoken]
) -> list[WrittenRow]:
    """Rows that follow each other: bare ones in one sentence, a repeated one by the row it repeats."""
    result = []
    alike = groupby(rows, key=lambda row: (row[1], _by_column(row[2], said)))
    for (cells, parts), same in alike:
        numbers = [number for number, _, _ in same]
        runs = _runs(cells, parts)
        if all(run.what == BARE for run in runs):
            first, last = numbers[0], numbers[-1]
            lead = f"Row {first}" if first == last else _rows(first, last)
            result.append(WrittenRow(first, last, lead, f"{CLOTH}."))
            continue
        stitches = len(cells) - cells.count(BARE)
        total = _total_words(stitches, sum(len(pieces) for pieces in parts.values()))
        first, *again = numbers
        sentences = tuple(f"Column {x}: {'; '.join(pieces)}." for x, pieces in parts.items())
        result.append(
            WrittenRow(first, first, f"Row {first}, {total}", _row_words(runs, said), sentences)
        )
        result += [
            WrittenRow(number, number, f"Row {number}, {total}", f"as row {first}.", repeats=first)
            for number in again
        ]
    return result


def _by_column(fractions: list[Fraction], said: Mapping[str, Spoken]) -> dict[int, list[str]]:
    """Column → what lies in its cell, part by part, from the left to the right."""
    parts: dict[int, list[str]] = {}
    for fraction in sorted(fractions, key=lambda one: one.column):
        words = part_words(fraction, said[fraction.mark].part)
        parts.setdefault(fraction.column, []).append(words)
    return parts


def _runs(cells: str, parts: Mapping[int, list[str]]) -> tuple[Run, ...]:
    what = (
        PARTS if mark == BARE and column in parts else mark for column, mark in enumerate(cells, 1)
    )
    return tuple(Run(len(list(same)), mark) for mark, same in groupby(what))


def _row_words(runs: tuple[Run, ...], said: Mapping[str, Spoken]) -> str:
    """'3 moss, 2 bare, 4 clay to column 9, rest bare.'"""
    rest_bare = runs[-1].what == BARE
    counts = runs[:-1] if rest_bare else runs
    words, column = [], 0
    for index, run in enumerate(counts, 1):
        column += run.cells
        if run.what == BARE:
            count = f"{run.cells} {CLOTH}"
        elif run.what == PARTS:
            count = f"{run.cells} {PARTS}"
        else:
            count = said[run.what].counted(run.cells)
        check = index % COUNTS_A_CHECK == 0 or index == len(counts)
        words.append(f"{count} to column {column}" if check else count)
    return ", ".join([*words, f"rest {CLOTH}"] if rest_bare else words) + "."


def _total_words(stitches: int, parts: int) -> str:
    """'41 stitches and 2 part stitches'."""
    total = [counted(stitches, "stitch", "stitches")] if stitches else []
    total += [counted(parts, "part stitch", "part stitches")] if parts else []
    return " and ".join(total)


def _rows(first: int, last: int) -> str:
    return f"Rows {first} to {last}"


# --- how to read it -------------------------------------------------------------------------------


def _how_to_read(
    pattern: Pattern,
    works: tuple[Work, ...],
    said: Mapping[str, Spoken],
    groups: tuple[RowGroup, ...],
) -> tuple[str, ...]:
    grid = pattern.grid
    rows = [row for group in groups for row in group.rows]
    size = f"{counted(grid.width, 'column', 'columns')} wide and {counted(grid.height, 'row', 'rows')} high"
    paragraphs = [
        f"The chart is {size}. Row 1 is at the top and column 1 at the left, and every row is read "
        f"from the left to the right. The middle of the design is {_middle('column', grid.width)} "
        f"and {_middle('row', grid.height)}.",
    ]
    if any(work.total_stitches for work in works):
        example = said[works[0].line.mark]
        paragraphs.append(
            "Each row begins with its number and its total of stitches. Then come the counts, one "
            f"after the other: '{example.counted(3)}' means 3 squares side by side, each with 1 "
            f"{_stitch_in(example)}. Bare cloth is counted too, 1 square for each stitch that would "
            "fit, and 'rest bare' means that nothing more comes in this row. 'To column "
            f"{min(12, grid.width)}' is a check for you: the square you have just counted is in that "
            f"column. You hear it after every {COUNTS_A_CHECK} counts and after the last stitch of a "
            "row."
        )
    repeated = next((row.repeats for row in rows if row.repeats), None)
    if repeated:
        paragraphs.append(
            f"'As row {repeated}' means that a row is the same as row {repeated}, stitch by stitch."
        )
    if pattern.fractions:
        paragraphs.append(
            "A square 'in parts' holds less than a whole cross, or parts of 2 colours. What lies in "
            "it follows straight after its row, column by column, and each part counts as 1 part "
            "stitch."
        )
    used = {stitch for work in works for stitch in work.stitches}
    explained = [EXPLAINED[stitch] for stitch in Stitch if stitch in used and stitch in EXPLAINED]
    return (*paragraphs, *([" ".join(explained)] if explained else []))


def _stitch_in(example: Spoken) -> str:
    return f"{stitch_words(example.stitch)} in {example.name}"


def _middle(word: str, count: int) -> str:
    half = count // 2
    return f"in {word} {half + 1}" if count % 2 else f"between {word}s {half} and {half + 1}"


# --- plain text -----------------------------------------------------------------------------------


def as_text(chart: WrittenChart) -> str:
    """The chart as plain text, one row a line, each line as long as it must be."""
    lines = [f"{chart.title}, in words", f"Designed by {chart.designer}", chart.revision]
    lines += ["", "How to read this", *chart.how_to_read]
    lines += ["", "Colours", *(f"{one.heading}: {one.threads}" for one in chart.colours)]
    lines += ["", "Rows"]
    for group in chart.groups:
        lines += ["", group.heading]
        for row in group.rows:
            lines.append(f"{row.lead}: {row.said}")
            if row.parts:
                lines.append(f"{row.parts_lead}. {' '.join(row.parts)}")
    if chart.passages:
        lines += ["", "Lines and knots", chart.lines_convention]
    for passage in chart.passages:
        lines += ["", passage.heading, *passage.sentences]
    lines += ["", "Totals"]
    lines += [f"{total.name}, {total.kind}: {total.figure:,}" for total in chart.totals]
    lines.append(f"All stitches in the rows: {chart.stitches:,}")
    return "\n".join(lines) + "\n"
