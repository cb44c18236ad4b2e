"""Draws charts as SVG in units of one stitch. The only module that knows svgwrite's shapes for charts.

A page is drawn in two sheets with the symbols, which are set as text, between them: `under` holds the
tints and the grid, `over` holds what is stitched on top. `whole` is the chart in one piece.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import groupby

import svgwrite

from packetgen.chart.outlines import fraction_outline
from packetgen.chart.paintbox import INK, tint
from packetgen.chart.tiling import Span, Tile
from packetgen.model import BARE, Pattern, Point, Stitch
from packetgen.reckon.colour import blended

_GRID, _TEN, _EDGE = "#8a8a86", "#2c2c2a", "#2c2c2a"
_GRID_WIDTH, _TEN_WIDTH, _EDGE_WIDTH = 0.04, 0.11, 0.16
_LINE_WIDTH, _LONG_WIDTH, _HALO = 0.22, 0.16, 0.12
_KNOT_RADIUS, _BEAD_RADIUS = 0.26, 0.34
# Room for the centre arrows round the chart, in stitches.
ARROW_ROOM = 0.8


@dataclass(frozen=True)
class Look:
    """How each key mark is shown: the thread's own colour, and the symbol's character."""

    hexes: Mapping[str, str]
    symbols: Mapping[str, str]

    def thinned(self) -> "Look":
        """The same with every colour thinned to a tint on which its symbol is read."""
        return Look({mark: tint(colour) for mark, colour in self.hexes.items()}, self.symbols)


def look_of(pattern: Pattern, symbols: Mapping[str, str]) -> Look:
    """Colours of the model's thread set; the two of a blend are mixed as the eye mixes them."""
    model_set = pattern.thread_sets[0].id
    hexes = {
        line.mark: blended(tuple(colour.hex for colour in line.threads[model_set]))
        for line in pattern.key
    }
    return Look(hexes, symbols)


def under(pattern: Pattern, tile: Tile, look: Look) -> str:
    """Tints, grid, heavier line each ten, shaded repeats and centre arrows of one page."""
    drawing = _sheet(tile.columns, tile.rows)
    _add_cells(drawing, pattern, tile.columns, tile.rows, look.thinned())
    _add_repeats(drawing, tile)
    _add_grid(drawing, tile.columns, tile.rows)
    _add_arrows(drawing, pattern, tile)
    return drawing.tostring()


def over(pattern: Pattern, tile: Tile, look: Look) -> str:
    """Backstitch, long stitches, knots and beads of one page; '' where it has none."""
    drawing = _sheet(tile.columns, tile.rows)
    clip = drawing.clipPath(id="page")
    clip.add(_box(drawing, tile.columns, tile.rows))
    drawing.defs.add(clip)
    group = drawing.g(clip_path="url(#page)")
    _add_top_stitches(drawing, group, pattern, look, tile)
    drawing.add(group)
    return drawing.tostring() if group.elements else ""


def overview(pattern: Pattern, tiles: Iterable[Tile], look: Look) -> str:
    """The whole chart small, in plain colour, with the outlines of its pages."""
    columns, rows = Span(1, 1, pattern.grid.width), Span(1, 1, pattern.grid.height)
    drawing = _sheet(columns, rows, room=0.3)
    _add_cells(drawing, pattern, columns, rows, look)
    group = drawing.g()
    _add_top_stitches(drawing, group, pattern, look)
    drawing.add(group)
    for tile in tiles:
        box = drawing.rect(
            (tile.columns.first - 1, tile.rows.first - 1),
            (tile.columns.last - tile.columns.first + 1, tile.rows.last - tile.rows.first + 1),
        )
        box.fill("none").stroke(INK, width=0.35)
        drawing.add(box)
    return drawing.tostring()


def page_map(tiles: tuple[Tile, ...], here: Tile) -> str:
    """Which page of the chart this one is: the pages as boxes, this one filled."""
    width = max(tile.columns.last for tile in tiles)
    height = max(tile.rows.last for tile in tiles)
    drawing = _sheet(Span(1, 1, width), Span(1, 1, height), room=2)
    for tile in tiles:
        size = (tile.columns.last - tile.columns.first + 1, tile.rows.last - tile.rows.first + 1)
        box = drawing.rect((tile.columns.first - 1, tile.rows.first - 1), size)
        box.fill("#5a5a56" if tile == here else "#ffffff").stroke(INK, width=2)
        drawing.add(box)
    return drawing.tostring()


def whole(pattern: Pattern, look: Look, font_family: str) -> str:
    """The chart in one piece with its symbols as text, for a screen."""
    columns, rows = Span(1, 1, pattern.grid.width), Span(1, 1, pattern.grid.height)
    tile = Tile(1, columns, rows, None, None, None, None)
    drawing = _sheet(columns, rows)
    _add_cells(drawing, pattern, columns, rows, look.thinned())
    _add_grid(drawing, columns, rows)
    _add_arrows(drawing, pattern, tile)
    text = drawing.g(font_family=font_family, font_size=1, fill=INK)
    for y, row in enumerate(pattern.grid.rows):
        for mark, x, length in _stretches(row):
            symbols = look.symbols[mark] * length
            text.add(drawing.text(symbols, insert=(x, y + 1)))
    drawing.add(text)
    group = drawing.g()
    _add_top_stitches(drawing, group, pattern, look)
    drawing.add(group)
    return drawing.tostring()


# --- parts of a sheet -----------------------------------------------------------------------------


def _sheet(columns: Span, rows: Span, room: float = ARROW_ROOM) -> svgwrite.Drawing:
    """An empty drawing whose user units are stitches, 0,0 the corner of column 1, row 1."""
    width, height = columns.shown + 2 * room, rows.shown + 2 * room
    drawing = svgwrite.Drawing(size=(_n(width), _n(height)), debug=False)
    drawing.viewbox(columns.shown_first - 1 - room, rows.shown_first - 1 - room, width, height)
    return drawing


def _n(value: float) -> float:
    return round(value, 3)


def _box(drawing: svgwrite.Drawing, columns: Span, rows: Span) -> svgwrite.shapes.Rect:
    corner = (columns.shown_first - 1, rows.shown_first - 1)
    return drawing.rect(corner, (columns.shown, rows.shown))


def _stretches(row: str) -> Iterable[tuple[str, int, int]]:
    """(mark, column from 0, length) of every run of one mark that is not bare."""
    x = 0
    for mark, run in groupby(row):
        length = sum(1 for _ in run)
        if mark != BARE:
            yield mark, x, length
        x += length


def _add_cells(
    drawing: svgwrite.Drawing, pattern: Pattern, columns: Span, rows: Span, look: Look
) -> None:
    """Full crosses as thick strokes, one path a colour; halves and fractions as polygons."""
    stitch_of = {line.mark: line.stitch for line in pattern.key}
    strokes: dict[str, list[str]] = {}
    shapes: list[tuple[str, tuple[Point, ...]]] = []
    for y in range(rows.shown_first - 1, rows.last):
        row = pattern.grid.rows[y][columns.shown_first - 1 : columns.last]
        for mark, x, length in _stretches(row):
            start = x + columns.shown_first - 1
            if stitch_of[mark] is Stitch.FULL:
                strokes.setdefault(mark, []).append(f"M{start} {y + 0.5}h{length}")
            else:
                for column in range(start, start + length):
                    shapes.append((mark, fraction_outline(column, y, stitch_of[mark], None)))
    for fraction in pattern.fractions:
        x, y = fraction.column - 1, fraction.row - 1
        if columns.shown_first <= x + 1 <= columns.last and rows.shown_first <= y + 1 <= rows.last:
            outline = fraction_outline(x, y, fraction.stitch, fraction.corner)
            shapes.append((fraction.mark, outline))
    for mark, runs in strokes.items():
        path = drawing.path(d="".join(runs)).fill("none")
        drawing.add(path.stroke(look.hexes[mark], width=1))
    for mark, outline in shapes:
        drawing.add(drawing.polygon(outline).fill(look.hexes[mark]))


def _add_repeats(drawing: svgwrite.Drawing, tile: Tile) -> None:
    left, top = tile.columns.shown_first - 1, tile.rows.shown_first - 1
    shade = {"fill": INK, "fill_opacity": 0.16}
    if tile.columns.repeated:
        size = (tile.columns.repeated, tile.rows.shown)
        drawing.add(drawing.rect((left, top), size, **shade))
    if tile.rows.repeated:
        start = left + tile.columns.repeated
        size = (tile.columns.shown - tile.columns.repeated, tile.rows.repeated)
        drawing.add(drawing.rect((start, top), size, **shade))


def _add_grid(drawing: svgwrite.Drawing, columns: Span, rows: Span) -> None:
    left, right = columns.shown_first - 1, columns.last
    top, bottom = rows.shown_first - 1, rows.last
    for tens, colour, width in ((False, _GRID, _GRID_WIDTH), (True, _TEN, _TEN_WIDTH)):
        steps = [f"M{x} {top}V{bottom}" for x in range(left, right + 1) if (x % 10 == 0) is tens]
        steps += [f"M{left} {y}H{right}" for y in range(top, bottom + 1) if (y % 10 == 0) is tens]
        path = drawing.path(d="".join(steps)).fill("none")
        drawing.add(path.stroke(colour, width=width))
    drawing.add(_box(drawing, columns, rows).fill("none").stroke(_EDGE, width=_EDGE_WIDTH))


def _add_arrows(drawing: svgwrite.Drawing, pattern: Pattern, tile: Tile) -> None:
    """Arrows at the edges that point to the middle column and row, on the pages that hold them."""
    middle_x, middle_y = pattern.grid.width / 2, pattern.grid.height / 2
    left, right = tile.columns.shown_first - 1, tile.columns.last
    top, bottom = tile.rows.shown_first - 1, tile.rows.last
    if tile.columns.first - 1 <= middle_x <= right:
        for y, tip in ((top, -1), (bottom, 1)):
            base = y + tip * ARROW_ROOM * 0.9
            points = [(middle_x, y), (middle_x - 0.5, base), (middle_x + 0.5, base)]
            drawing.add(drawing.polygon(points).fill(INK))
    if tile.rows.first - 1 <= middle_y <= bottom:
        for x, tip in ((left, -1), (right, 1)):
            base = x + tip * ARROW_ROOM * 0.9
            points = [(x, middle_y), (base, middle_y - 0.5), (base, middle_y + 0.5)]
            drawing.add(drawing.polygon(points).fill(INK))


def _add_top_stitches(
    drawing: svgwrite.Drawing,
    group: svgwrite.container.Group,
    pattern: Pattern,
    look: Look,
    tile: Tile | None = None,
) -> None:
    """Lines with a white edge so that they are seen on any tint, then knots, then beads."""
    for line in pattern.lines:
        if not _touches(line.points, tile):
            continue
        points = [(x - 1, y - 1) for x, y in line.points]
        width = _LONG_WIDTH if line.long else _LINE_WIDTH
        for colour, thick in (("#ffffff", width + _HALO), (look.hexes[line.mark], width)):
            drawn = drawing.polyline(points).fill("none").stroke(colour, width=thick)
            drawn.update({"stroke-linecap": "round", "stroke-linejoin": "round"})
            group.add(drawn)
    for knot in pattern.knots:
        if _touches((knot.at,), tile):
            at = (knot.at[0] - 1, knot.at[1] - 1)
            circle = drawing.circle(at, _KNOT_RADIUS).fill(look.hexes[knot.mark])
            group.add(circle.stroke("#ffffff", width=_HALO))
    for bead in pattern.beads:
        if _touches((bead.at,), tile):
            at = (bead.at[0] - 1, bead.at[1] - 1)
            group.add(drawing.circle(at, _BEAD_RADIUS).fill(bead.colour.hex).stroke(INK, width=0.1))
            group.add(drawing.circle(at, _BEAD_RADIUS / 4).fill("#ffffff"))


def _touches(points: tuple[Point, ...], tile: Tile | None) -> bool:
    """Whether the box round `points` meets the page."""
    if tile is None:
        return True
    xs, ys = [x - 1 for x, _ in points], [y - 1 for _, y in points]
    return (
        max(xs) >= tile.columns.shown_first - 1
        and min(xs) <= tile.columns.last
        and max(ys) >= tile.rows.shown_first - 1
        and min(ys) <= tile.rows.last
    )
