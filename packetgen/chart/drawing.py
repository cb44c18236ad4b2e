"""Draws sheets of the chart as SVG, in units of one stitch."""

from collections.abc import Iterable

import svgwrite
from svgwrite.container import Group

from packetgen.chart.paintbox import INK
from packetgen.chart.sheet import (
    ARROW_ROOM,
    FRACTION_SHARE,
    Box,
    Dot,
    Sheet,
    Stroke,
    piece_of_line,
    with_edge,
)
from packetgen.chart.tiling import Tile

GRID_COLOUR, TEN_COLOUR = "#8a8a86", "#2c2c2a"
KNOT_GROUND = "#c2c2bb"  # in the key, where a knot's white ring would not be seen on paper
GRID_WIDTH, TEN_WIDTH, EDGE_WIDTH = 0.04, 0.11, 0.16
REPEAT_SHADE = 0.16  # how much black lies over what is shown again
FRAME_WIDTH = 0.35


def chart(sheet: Sheet, font_family: str) -> str:
    """One page with tints, grid, symbols as text, and what lies on top."""
    drawing = _canvas(sheet, ARROW_ROOM)
    _add_cells(drawing, sheet)
    for x, y, width, height in sheet.repeats:
        drawing.add(drawing.rect((x, y), (width, height), fill=INK, fill_opacity=REPEAT_SHADE))
    _add_grid(drawing, sheet)
    for outline in sheet.arrows:
        drawing.add(drawing.polygon(outline).fill(INK))
    _add_symbols(drawing, sheet, font_family)
    clip = drawing.clipPath(id="page")
    clip.add(box(drawing, sheet.room))
    drawing.defs.add(clip)
    group = drawing.g(clip_path="url(#page)")
    _add_on_top(drawing, group, sheet, font_family)
    drawing.add(group)
    return drawing.tostring()


def overview(whole: Sheet, tiles: Iterable[Tile]) -> str:
    """The whole chart small and without symbols, with the outlines of its pages and arrows to its middle."""
    drawing = _canvas(whole, ARROW_ROOM)
    _add_cells(drawing, whole)
    for outline in whole.arrows:
        drawing.add(drawing.polygon(outline).fill(INK))
    group = drawing.g()
    _add_on_top(drawing, group, whole, "")
    drawing.add(group)
    for tile in tiles:
        box = drawing.rect(
            (tile.columns.first - 1, tile.rows.first - 1),
            (tile.columns.last - tile.columns.first + 1, tile.rows.last - tile.rows.first + 1),
        )
        drawing.add(box.fill("none").stroke(INK, width=FRAME_WIDTH))
    return drawing.tostring()


def line_sample(colour: str, dash: tuple[float, ...], width: float) -> str:
    """A short piece of backstitch for the key."""
    drawing = svgwrite.Drawing(size=(6, 1), debug=False)
    drawing.viewbox(0, 0, 6, 1)
    for stroke in with_edge(piece_of_line(((0.2, 0.5), (5.8, 0.5)), colour, width, dash)):
        _add_stroke(drawing, drawing, stroke)
    return drawing.tostring()


def knot_sample(knot: Dot) -> str:
    """A knot for a key in colour, as it lies on the chart: where cells meet."""
    drawing = svgwrite.Drawing(size=(1, 1), debug=False)
    drawing.viewbox(0, 0, 1, 1)
    drawing.add(drawing.rect((0, 0), (1, 1), fill=KNOT_GROUND))
    cross = drawing.path(d="M0 .5h1M.5 0v1").fill("none")
    drawing.add(cross.stroke(GRID_COLOUR, width=GRID_WIDTH))
    ring = drawing.circle(knot.at, knot.radius, fill=knot.fill)
    drawing.add(ring.stroke(knot.edge, width=knot.edge_width))
    return drawing.tostring()


def _canvas(sheet: Sheet, room: float) -> svgwrite.Drawing:
    """An empty drawing whose user units are stitches, with `room` round the grid."""
    width, height = sheet.right - sheet.left + 2 * room, sheet.bottom - sheet.top + 2 * room
    drawing = svgwrite.Drawing(size=(round(width, 3), round(height, 3)), debug=False)
    drawing.viewbox(sheet.left - room, sheet.top - room, width, height)
    return drawing


def box(drawing: svgwrite.Drawing, of: Box) -> svgwrite.shapes.Rect:
    left, top, right, bottom = of
    return drawing.rect((left, top), (round(right - left, 3), round(bottom - top, 3)))


def _add_cells(drawing: svgwrite.Drawing, sheet: Sheet) -> None:
    """Full crosses as thick strokes, other stitches by their outlines; one path a colour."""
    for colour, runs in sheet.runs.items():
        path = drawing.path(d="".join(f"M{x} {y + 0.5}h{length}" for x, y, length in runs))
        drawing.add(path.fill("none").stroke(colour, width=1))
    outlines: dict[str, list[str]] = {}
    for fill in sheet.fills:
        points = "L".join(f"{x:.6g} {y:.6g}" for x, y in fill.outline)
        outlines.setdefault(fill.colour, []).append(f"M{points}Z")
    for colour, paths in outlines.items():
        drawing.add(drawing.path(d="".join(paths)).fill(colour))


def _add_grid(drawing: svgwrite.Drawing, sheet: Sheet) -> None:
    for tens, colour, width in (
        (False, GRID_COLOUR, GRID_WIDTH),
        (True, TEN_COLOUR, TEN_WIDTH),
    ):
        steps = [f"M{x} {sheet.top}V{sheet.bottom}" for x in sheet.columns(tens)]
        steps += [f"M{sheet.left} {y}H{sheet.right}" for y in sheet.rows(tens)]
        path = drawing.path(d="".join(steps)).fill("none")
        drawing.add(path.stroke(colour, width=width))
    drawing.add(box(drawing, sheet.frame).fill("none").stroke(TEN_COLOUR, width=EDGE_WIDTH))


def _add_symbols(drawing: svgwrite.Drawing, sheet: Sheet, font_family: str) -> None:
    text = drawing.g(font_family=font_family, font_size=1, fill=INK)
    for y, row in enumerate(sheet.symbol_rows, sheet.top + 1):
        text.add(drawing.text(row, insert=(sheet.left, y)))
    for small in sheet.small_symbols:
        at = (round(small.at[0], 3), round(small.at[1] + FRACTION_SHARE, 3))
        text.add(drawing.text(small.symbol, insert=at, font_size=FRACTION_SHARE))
    drawing.add(text)


def _add_on_top(drawing: svgwrite.Drawing, group: Group, sheet: Sheet, font_family: str) -> None:
    for stroke in sheet.strokes:
        _add_stroke(drawing, group, stroke)
    for dot in sheet.dots:
        circle = drawing.circle(dot.at, dot.radius).fill(dot.fill)
        group.add(circle.stroke(dot.edge, width=dot.edge_width))
        if dot.sign:
            size = dot.radius * 1.3
            at = (round(dot.at[0] - size / 2, 3), round(dot.at[1] + size / 2, 3))
            group.add(drawing.text(dot.sign, insert=at, font_size=size, font_family=font_family))


def _add_stroke(drawing: svgwrite.Drawing, group: Group, stroke: Stroke) -> None:
    drawn = drawing.polyline(stroke.points).fill("none").stroke(stroke.colour, width=stroke.width)
    # Dots of a broken line would run together with round ends.
    drawn.update({"stroke-linecap": "butt" if stroke.dash else "round", "stroke-linejoin": "round"})
    if stroke.dash:
        drawn.update({"stroke-dasharray": " ".join(f"{part:g}" for part in stroke.dash)})
    if stroke.dash_from:
        drawn.update({"stroke-dashoffset": f"{stroke.dash_from:g}"})
    group.add(drawn)
