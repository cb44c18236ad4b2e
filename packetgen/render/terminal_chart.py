"""A chart for a terminal: in colour two rows of stitches to a line, or one mark a stitch; with rulers
every ten, cut into strips of columns where it is wide, and a legend below.
"""

from collections.abc import Iterator, Sequence
from itertools import groupby

from packetgen.colour import blended, mix
from packetgen.model import BARE, Fraction, Pattern, Stitch
from packetgen.nouns import counted
from packetgen.reckon.colour_counts import ColourCount, line_counts
from packetgen.reckon.figures import Figures
from packetgen.render.chart_tables import said, thread_said
from packetgen.render.terminal import Depth, ink_on, painted

_UPPER_HALF = "▀"
# How much of its cell a stitch covers, for showing it; the rest is cloth.
_SHARES = {
    Stitch.FULL: 1.0,
    Stitch.HALF: 0.5,
    Stitch.HALF_BACK: 0.5,
    Stitch.THREE_QUARTER: 0.75,
    Stitch.QUARTER: 0.25,
    Stitch.PETITE: 0.25,
}
_Cell = tuple[str, str]  # its mark, and its colour


def terminal_chart(figures: Figures, depth: Depth, wide: int | None, large: bool) -> str:
    """The whole chart and its legend, no wider than `wide` characters where that is given.

    large: two characters a stitch, its mark on its colour. Without colours there are marks anyway.
    """
    cells = _cells(figures.pattern)
    margin = len(str(len(cells))) + 1
    across = 2 if large else 1
    columns = len(cells[0])
    room = columns if wide is None else max(10, (wide - margin) // across // 10 * 10)
    in_marks = large or depth is Depth.NONE
    strips = []
    for first in range(0, columns, room):
        strip = [row[first : first + room] for row in cells]
        body = _in_marks(strip, depth, across) if in_marks else _in_halves(strip, depth)
        step = 1 if in_marks else 2
        lines = _ruled(list(body), step, margin)
        strips.append([*_ruler(first, len(strip[0]), across, margin), *lines])
    return "\n\n".join(
        "\n".join(lines) for lines in (*strips, list(_legend(figures, depth, in_marks)))
    )


def _cells(pattern: Pattern) -> list[list[_Cell]]:
    cloth = pattern.cloths[0].colour.hex
    model = pattern.thread_sets[0].id
    threads = {
        line.mark: blended(tuple(colour.hex for colour in line.threads[model]))
        for line in pattern.key
    }
    worked = {line.mark: line.stitch for line in pattern.key}
    shown = {
        mark: (mark, mix(cloth, colour, _SHARES[worked[mark]])) for mark, colour in threads.items()
    }
    cells = [[shown.get(mark, (BARE, cloth)) for mark in row] for row in pattern.grid.rows]
    for one in sorted(
        pattern.fractions, key=_share
    ):  # of several in a cell the largest says its mark
        _, ground = cells[one.row - 1][one.column - 1]
        colour = mix(ground, threads[one.mark], _share(one))
        cells[one.row - 1][one.column - 1] = one.mark, colour
    return cells


def _share(fraction: Fraction) -> float:
    return _SHARES[fraction.stitch]


def _in_halves(strip: Sequence[Sequence[_Cell]], depth: Depth) -> Iterator[str]:
    """Two rows to a line: the upper one in ink, the lower one as the ground it stands on."""
    for number in range(0, len(strip), 2):
        upper = [colour for _, colour in strip[number]]
        lower: list[str | None] = [None] * len(upper)
        if number + 1 < len(strip):
            lower = [colour for _, colour in strip[number + 1]]
        yield "".join(
            painted(_UPPER_HALF * len(list(run)), *pair, depth)
            for pair, run in groupby(zip(upper, lower))
        )


def _in_marks(strip: Sequence[Sequence[_Cell]], depth: Depth, across: int) -> Iterator[str]:
    for row in strip:
        yield "".join(
            painted("".join(mark.ljust(across) for mark, _ in run), ink_on(colour), colour, depth)
            for colour, run in groupby(row, key=lambda cell: cell[1])
        )


def _ruler(first: int, columns: int, across: int, margin: int) -> list[str]:
    """The numbers of every tenth column, each ending above its column, and a line of ticks."""
    numbers, ticks = "", ""
    for column in range(first + 1, first + columns + 1):
        ticks += ("|" if column % 10 == 0 else "-").rjust(across, "-")
        if column % 10 == 0:
            numbers += str(column).rjust(len(ticks) - len(numbers))
    return [line for line in (" " * margin + numbers, " " * margin + ticks) if line.strip()]


def _ruled(lines: Sequence[str], step: int, margin: int) -> list[str]:
    """Each line with the number of its row before it, where that is a tenth one."""
    said_rows = []
    for number, line in enumerate(lines, 1):
        row = number * step
        label = str(row) if row % 10 == 0 else ""
        said_rows.append(f"{label:>{margin - 1}} {line}")
    return said_rows


def _legend(figures: Figures, depth: Depth, in_marks: bool) -> Iterator[str]:
    pattern = figures.pattern
    model = pattern.thread_sets[0]
    cloth = pattern.cloths[0]
    yield f"{pattern.title}: {said(pattern.grid.width)} × {said(pattern.grid.height)} stitches"
    yield f"on {cloth.cloth.name}, {cloth.colour.name}; threads of {model.card.name}"
    for count in line_counts(figures):
        (line,) = count.lines
        colour = blended(tuple(one.hex for one in line.threads[model.id]))
        swatch = painted("  ", None, colour, depth) + " " if depth is not Depth.NONE else ""
        yield f"{swatch}{line.mark}  {thread_said(line, model)}: {', '.join(_counted(count))}"
    besides = (*pattern.lines, *pattern.daisies, *pattern.knots, *pattern.beads)
    if besides or (pattern.fractions and in_marks):
        yield _not_shown(bool(besides), bool(pattern.fractions) and in_marks)


def _counted(count: ColourCount) -> Iterator[str]:
    for number, what in (
        (count.whole, "whole"),
        (count.half, "half"),
        (count.fractional, "fractional"),
    ):
        if number:
            yield f"{said(number)} {what}"
    if count.backstitch:
        yield f"backstitch over {said(count.backstitch)} stitch{'es' * (count.backstitch != 1)}"
    for number, what in (
        (count.long_stitches, "long stitch"),
        (count.daisies, "lazy daisy"),
        (count.knots, "knot"),
    ):
        if number:
            yield counted(number, what)


def _not_shown(besides: bool, fractions: bool) -> str:
    remarks = []
    if besides:
        remarks.append("Lines, daisies, knots and beads are counted, not drawn.")
    if fractions:
        remarks.append("A cell of fractional stitches shows one of its marks.")
    return " ".join(remarks)
