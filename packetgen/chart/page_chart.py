"""The whole chart as one light SVG drawing for a web page.

A colour is a single path of its cells, and its symbol a pattern laid over that path, so that a chart of ten
thousand stitches takes some hundred elements. Units are stitches.
"""

from collections.abc import Iterable, Mapping
from itertools import groupby

import svgwrite

from packetgen.chart.drawing import (
    EDGE_WIDTH,
    GRID_COLOUR,
    GRID_WIDTH,
    TEN_COLOUR,
    TEN_WIDTH,
    box,
)
from packetgen.chart.outlines import fraction_outline
from packetgen.chart.paintbox import INK, PAPER
from packetgen.chart.shapes import shape
from packetgen.chart.shapes_paper import CELL
from packetgen.chart.sheet import FRACTION_SHARE, Look, Sheet, look_of, sheet, whole_tile
from packetgen.chart.symbols import code_point
from packetgen.model import BARE, Pattern, Point, Stitch

# Room round the grid for numbers and arrows, and the size of a number, in stitches.
_ROOM, _NUMBER, _NUMBER_GAP = 4.0, 1.6, 1.1
_HALVES = (Stitch.HALF, Stitch.HALF_BACK)


def symbol_id(shape_name: str) -> str:
    """The name under which the drawing defines a shape; a key on the same page may use it too."""
    return f"chart-{shape_name.replace(' ', '-')}"


def page_chart(pattern: Pattern, shapes: Mapping[str, str]) -> str:
    """SVG of the chart on white paper; `shapes` gives each key mark the name of its shape."""
    look = look_of(pattern, {mark: code_point(name) for mark, name in shapes.items()})
    page = sheet(pattern, whole_tile(pattern), look)
    drawing = svgwrite.Drawing(debug=False)
    width, height = pattern.grid.width + 2 * _ROOM, pattern.grid.height + 2 * _ROOM
    drawing.viewbox(-_ROOM, -_ROOM, width, height)
    drawing.add(drawing.rect((-_ROOM, -_ROOM), (width, height)).fill(PAPER))
    for mark in sorted(page.marks, key=list(shapes).index):
        drawing.defs.add(_symbol(drawing, shapes[mark]))
    _add_cells(drawing, pattern, shapes, look)
    _add_fractions(drawing, pattern, shapes, look, page)
    _add_grid(drawing, page)
    _add_numbers(drawing, page)
    for arrow in page.arrows:
        drawing.add(drawing.polygon(arrow).fill(INK))
    _add_on_top(drawing, page)
    return drawing.tostring().replace("xlink:href", "href")  # as SVG 2 and HTML have it


def shape_path(name: str) -> str:
    """The path of a shape in a cell of CELL units, its first row at the top; shapes are drawn as letters are,
    with their foot at nought."""
    contours = (((x, CELL - y) for x, y in contour) for contour in shape(name).contours)
    return "".join(map(_closed, contours))


def _symbol(drawing: svgwrite.Drawing, name: str) -> svgwrite.container.Symbol:
    """A shape as a picture of one cell."""
    symbol = drawing.symbol(id=symbol_id(name))
    symbol.viewbox(0, 0, CELL, CELL)
    symbol.add(drawing.path(d=shape_path(name)))
    return symbol


def _add_cells(
    drawing: svgwrite.Drawing, pattern: Pattern, shapes: Mapping[str, str], look: Look
) -> None:
    """Each colour as one path, filled first with its tint, then with its symbol cell by cell."""
    runs: dict[str, list[str]] = {}
    for y, row in enumerate(pattern.grid.rows):
        x = 0
        for mark, run in groupby(row):
            length = len(tuple(run))
            if mark != BARE:
                runs.setdefault(mark, []).append(f"M{x} {y}h{length}v1h-{length}z")
            x += length
    stitches = {line.mark: line.stitch for line in pattern.key}
    for mark, path in runs.items():
        name = symbol_id(shapes[mark])
        tile = drawing.pattern(size=(1, 1), patternUnits="userSpaceOnUse", id=f"{name}-cell")
        half = stitches[mark] in _HALVES
        if half:
            outline = _closed(fraction_outline(0, 0, stitches[mark], None))
            tile.add(drawing.path(d=outline, fill=look.cells[mark]))
        tile.add(drawing.use(f"#{name}", size=(1, 1)))
        drawing.defs.add(tile)
        drawing.defs.add(drawing.path(d="".join(path), id=f"{name}-cells"))
        cells = f"#{name}-cells"
        if not half:
            drawing.add(drawing.use(cells, fill=look.cells[mark]))
        drawing.add(drawing.use(cells, fill=f"url(#{name}-cell)"))


def _add_fractions(
    drawing: svgwrite.Drawing,
    pattern: Pattern,
    shapes: Mapping[str, str],
    look: Look,
    page: Sheet,
) -> None:
    paths: dict[str, str] = {}
    for one in pattern.fractions:
        outline = fraction_outline(one.column - 1, one.row - 1, one.stitch, one.corner)
        colour = look.cells[one.mark]
        paths[colour] = paths.get(colour, "") + _closed(outline)
    for colour, path in paths.items():
        drawing.add(drawing.path(d=path, fill=colour))
    half = (FRACTION_SHARE, FRACTION_SHARE)
    for one, small in zip(pattern.fractions, page.small_symbols):
        at = tuple(round(side, 2) for side in small.at)
        drawing.add(drawing.use(f"#{symbol_id(shapes[one.mark])}", insert=at, size=half))


def _add_grid(drawing: svgwrite.Drawing, page: Sheet) -> None:
    for tens, colour, width in ((False, GRID_COLOUR, GRID_WIDTH), (True, TEN_COLOUR, TEN_WIDTH)):
        lines = [f"M{x} 0V{page.bottom}" for x in page.columns(tens)]
        lines += [f"M0 {y}H{page.right}" for y in page.rows(tens)]
        drawing.add(drawing.path(d="".join(lines)).fill("none").stroke(colour, width=width))
    drawing.add(box(drawing, page.frame).fill("none").stroke(TEN_COLOUR, width=EDGE_WIDTH))


def _add_numbers(drawing: svgwrite.Drawing, page: Sheet) -> None:
    """Every tenth column above the grid, every tenth row to its left."""
    numbers = drawing.g(fill=INK, font_size=_NUMBER, text_anchor="middle")
    for x in range(10, page.right + 1, 10):
        numbers.add(drawing.text(str(x), insert=(x, -_NUMBER_GAP)))
    for y in range(10, page.bottom + 1, 10):
        numbers.add(drawing.text(str(y), insert=(-_ROOM / 2, round(y + _NUMBER / 3, 2))))
    drawing.add(numbers)


def _add_on_top(drawing: svgwrite.Drawing, page: Sheet) -> None:
    """Lines of one colour and width as one path, their edges below all of them; then what is dotted."""
    paths: dict[tuple[bool, str, float], str] = {}
    for stroke in page.strokes:
        kind = (not stroke.is_edge, stroke.colour, stroke.width)
        paths[kind] = paths.get(kind, "") + _open(stroke.points)
    lines = drawing.g(fill="none", stroke_linecap="round", stroke_linejoin="round")
    for kind in sorted(paths, key=lambda kind: kind[0]):
        _, colour, width = kind
        path = drawing.path(d=paths[kind])
        lines.add(path.stroke(colour, width=round(width, 2)))
    drawing.add(lines)
    for dot in page.dots:
        circle = drawing.circle(dot.at, round(dot.radius, 3)).fill(dot.fill)
        drawing.add(circle.stroke(dot.edge, width=dot.edge_width))


def _open(points: Iterable[Point]) -> str:
    (x, y), *others = points
    return f"M{_said(x)} {_said(y)}" + "".join(f"L{_said(x)} {_said(y)}" for x, y in others)


def _closed(points: Iterable[Point]) -> str:
    return f"{_open(points)}z"


def _said(number: float) -> str:
    return f"{round(number, 2):g}"
