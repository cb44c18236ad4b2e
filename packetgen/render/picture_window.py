"""A part of a design, moved so that it can be drawn by itself."""

from dataclasses import replace

from packetgen.model import BARE, Grid, Pattern, Point

_NEAR = 2  # cells beyond the part from which a knot or a loop may still reach into it


def window(pattern: Pattern, left: int, top: int, columns: int, rows: int) -> Pattern:
    """The cells from column `left` and row `top` on (from 0); beyond the chart there is bare cloth."""
    grid = pattern.grid
    cut = tuple(
        "".join(
            grid.rows[y][x] if 0 <= x < grid.width and 0 <= y < grid.height else BARE
            for x in range(left, left + columns)
        )
        for y in range(top, top + rows)
    )

    def moved(point: Point) -> Point:
        return point[0] - left, point[1] - top

    def seen(*points: Point) -> bool:
        xs, ys = zip(*(moved(point) for point in points))
        return bool(
            max(xs) > 1 - _NEAR
            and min(xs) < columns + 1 + _NEAR
            and max(ys) > 1 - _NEAR
            and min(ys) < rows + 1 + _NEAR
        )

    return replace(
        pattern,
        grid=Grid(cut, grid.place),
        fractions=tuple(
            replace(part, column=part.column - left, row=part.row - top)
            for part in pattern.fractions
            if left < part.column <= left + columns and top < part.row <= top + rows
        ),
        lines=tuple(
            replace(line, points=tuple(map(moved, line.points)))
            for line in pattern.lines
            if seen(*line.points)
        ),
        knots=tuple(replace(knot, at=moved(knot.at)) for knot in pattern.knots if seen(knot.at)),
        beads=tuple(replace(bead, at=moved(bead.at)) for bead in pattern.beads if seen(bead.at)),
        daisies=tuple(
            replace(daisy, base=moved(daisy.base), tip=moved(daisy.tip))
            for daisy in pattern.daisies
            if seen(daisy.base, daisy.tip)
        ),
    )


def bordered(pattern: Pattern, cells: int) -> Pattern:
    """The whole pattern with so many bare cells on every side."""
    grid = pattern.grid
    return window(pattern, -cells, -cells, grid.width + 2 * cells, grid.height + 2 * cells)
