"""One description of one chart page, from which it is drawn as SVG and painted into a PDF alike.

Everything is in stitches: 0,0 is the upper left corner of column 1, row 1; x to the right, y down.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import Enum
from itertools import groupby, pairwise

from packetgen.chart.outlines import daisy_anchor, daisy_loop, fraction_outline, symbol_corner
from packetgen.chart.paintbox import INK, PAPER, edge_of
from packetgen.chart.symbols import BLANK
from packetgen.chart.tiling import Span, Tile
from packetgen.chart.tints import tints_of
from packetgen.colour import blended, lab
from packetgen.model import BARE, Fraction, Pattern, Point, Stitch

# Room round the grid for the arrows, in stitches.
ARROW_ROOM = 0.8
_FRAME_CLEAR = 0.4  # of a stitch, from the edge to the frame where a line lies on it
Box = tuple[float, float, float, float]  # left, top, right, bottom
# The symbol of a fractional stitch is set at this share of a cell.
FRACTION_SHARE = 0.5
LINE_WIDTH, LONG_WIDTH, HALO = 0.22, 0.16, 0.12
_KNOT_RADIUS, _BEAD_RADIUS = 0.26, 0.34
_SIGNED_RADIUS = 0.42  # of a knot or bead that carries its sign inside
# Lines by which colours of backstitch are told apart without colour.
_DASHES: tuple[tuple[float, ...], ...] = (
    (),
    (0.7, 0.35),
    (0.12, 0.36),
    (1.2, 0.3, 0.12, 0.3),
    (1.2, 0.6),
    (0.4, 0.2, 0.12, 0.2, 0.12, 0.2),
    (0.35, 0.7),
    (2.0, 0.4, 0.4, 0.4),
)

# Lines whose CIELAB lightness differs less are hardly told apart in grey: our own choice.
_AS_LIGHT = 20

Outline = tuple[Point, ...]


class Manner(Enum):
    TINTED = "tinted"  # symbols are read on every cell
    PLAIN_COLOUR = "plain colour"
    BLACK_AND_WHITE = "black and white"


@dataclass(frozen=True)
class Look:
    """How each key mark is shown. Lines are told apart by their dashes, also in colour where two are as dark as one another
    and symbols stand, as such a page may be printed in grey; in black and white, knots and beads by a sign inside."""

    manner: Manner
    symbols: Mapping[str, str]
    cells: Mapping[str, str]  # colour of a cell
    lines: Mapping[str, str]  # colour of lines and knots
    dashes: Mapping[str, tuple[float, ...]]

    @property
    def coloured(self) -> bool:
        return self.manner is not Manner.BLACK_AND_WHITE


@dataclass(frozen=True)
class Stroke:
    points: Outline
    colour: str
    width: float
    dash: tuple[float, ...] = ()
    dash_from: float = 0  # how far into its dashes it begins
    is_edge: bool = False  # of the line that lies on it


@dataclass(frozen=True)
class Fill:
    outline: Outline
    colour: str


@dataclass(frozen=True)
class Dot:
    """A knot or a bead; `sign` is set inside it where colour cannot tell."""

    at: Point
    radius: float
    fill: str
    edge: str
    edge_width: float
    sign: str = ""


@dataclass(frozen=True)
class SmallSymbol:
    """The symbol of a fraction; `at` is its upper left corner."""

    symbol: str
    at: Point


@dataclass(frozen=True)
class Sheet:
    tile: Tile
    runs: Mapping[str, tuple[tuple[int, int, int], ...]]  # colour → (x, y, length) of full cells
    fills: tuple[Fill, ...]
    repeats: tuple[tuple[int, int, int, int], ...]  # x, y, width, height of what is shown again
    arrows: tuple[Outline, ...]
    symbol_rows: tuple[str, ...]
    small_symbols: tuple[SmallSymbol, ...]
    strokes: tuple[Stroke, ...]  # in the order in which they are drawn
    dots: tuple[Dot, ...]
    marks: frozenset[str]  # key marks that the page shows in its cells
    line_marks: frozenset[str]  # and those of its lines and knots
    beads: frozenset[tuple[str, str]]  # card and number of those that lie on it
    frame: Box  # round the grid: clear of an edge of the design along which a line lies

    @property
    def left(self) -> int:
        return self.tile.columns.shown_first - 1

    @property
    def top(self) -> int:
        return self.tile.rows.shown_first - 1

    @property
    def right(self) -> int:
        return self.tile.columns.last

    @property
    def bottom(self) -> int:
        return self.tile.rows.last

    @property
    def room(self) -> Box:
        """What lines and knots may be drawn on: up to the next page, and over an edge of the design, on which they may lie."""
        ends = (self.tile.left, self.tile.above, self.tile.right, self.tile.below)
        left, above, right, below = ((end is None) * ARROW_ROOM for end in ends)
        return self.left - left, self.top - above, self.right + right, self.bottom + below

    def columns(self, tens: bool) -> tuple[int, ...]:
        """Where upright grid lines stand: each ten, or all others."""
        return tuple(x for x in range(self.left, self.right + 1) if (x % 10 == 0) is tens)

    def rows(self, tens: bool) -> tuple[int, ...]:
        return tuple(y for y in range(self.top, self.bottom + 1) if (y % 10 == 0) is tens)


def look_of(pattern: Pattern, symbols: Mapping[str, str], manner: Manner = Manner.TINTED) -> Look:
    """Colours of the model's thread set; the two of a blend are mixed as the eye mixes them."""
    model_set = pattern.thread_sets[0].id
    hexes = {
        line.mark: blended(tuple(colour.hex for colour in line.threads[model_set]))
        for line in pattern.key
    }
    solid = dict.fromkeys(hexes, ())
    if manner is Manner.PLAIN_COLOUR:
        return Look(manner, symbols, hexes, hexes, solid)
    drawn = {line.mark for line in pattern.lines} | {daisy.mark for daisy in pattern.daisies}
    in_order = [line.mark for line in pattern.key if line.mark in drawn]
    if manner is Manner.BLACK_AND_WHITE:
        white, black = dict.fromkeys(hexes, PAPER), dict.fromkeys(hexes, INK)
        return Look(manner, symbols, white, black, solid | _dashes(in_order, black))
    return Look(manner, symbols, tints_of(pattern), hexes, solid | _dashes(in_order, hexes))


def _dashes(marks: Iterable[str], hexes: Mapping[str, str]) -> dict[str, tuple[float, ...]]:
    """For each mark the first dashes that no earlier line has which is as light in grey."""
    found: dict[str, tuple[float, ...]] = {}
    for mark in marks:
        light = lab(hexes[mark])[0]
        taken = [found[one] for one in found if abs(lab(hexes[one])[0] - light) < _AS_LIGHT]
        found[mark] = next(
            (dash for dash in _DASHES if dash not in taken), _DASHES[len(taken) % len(_DASHES)]
        )
    return found


def whole_tile(pattern: Pattern) -> Tile:
    """The chart as one page."""
    columns, rows = Span(1, 1, pattern.grid.width), Span(1, 1, pattern.grid.height)
    return Tile(1, columns, rows, None, None, None, None)


def sheet(pattern: Pattern, tile: Tile, look: Look) -> Sheet:
    """Everything that one page of the chart shows."""
    rows = _shown_rows(pattern, tile)
    fractions = tuple(f for f in pattern.fractions if _on_page(f, tile))
    stitch_of = {line.mark: line.stitch for line in pattern.key}
    runs, fills = cells(rows, tile, stitch_of, look)
    fills += tuple(
        Fill(fraction_outline(f.column - 1, f.row - 1, f.stitch, f.corner), look.cells[f.mark])
        for f in fractions
    )
    strokes, dots, line_marks = _on_top(pattern, tile, look)
    bead_dots, beads = _beads(pattern, tile, look)
    return Sheet(
        tile=tile,
        runs=runs,
        fills=fills,
        repeats=_repeats(tile),
        arrows=_arrows(pattern, tile),
        symbol_rows=tuple(
            "".join(BLANK if mark == BARE else look.symbols[mark] for mark in row) for row in rows
        ),
        small_symbols=tuple(_small_symbol(f, look) for f in fractions),
        strokes=strokes,
        dots=dots + bead_dots,
        marks=frozenset(mark for row in rows for mark in set(row) if mark != BARE)
        | frozenset(f.mark for f in fractions),
        line_marks=line_marks,
        beads=beads,
        frame=_frame(pattern, tile),
    )


def cells(
    rows: tuple[str, ...], tile: Tile, stitch_of: Mapping[str, Stitch], look: Look
) -> tuple[dict[str, tuple[tuple[int, int, int], ...]], tuple[Fill, ...]]:
    """Full crosses as runs by colour, and the stitches that cover half a cell as outlines."""
    runs: dict[str, list[tuple[int, int, int]]] = {}
    fills: list[Fill] = []
    left, top = tile.columns.shown_first - 1, tile.rows.shown_first - 1
    for y, row in enumerate(rows, top):
        x = left
        for mark, group in groupby(row):
            length = len(tuple(group))
            if mark == BARE:
                pass
            elif stitch_of[mark] in (Stitch.HALF, Stitch.HALF_BACK):
                fills += (
                    Fill(fraction_outline(column, y, stitch_of[mark], None), look.cells[mark])
                    for column in range(x, x + length)
                )
            else:
                runs.setdefault(look.cells[mark], []).append((x, y, length))
            x += length
    return {colour: tuple(found) for colour, found in runs.items()}, tuple(fills)


def _shown_rows(pattern: Pattern, tile: Tile) -> tuple[str, ...]:
    columns = slice(tile.columns.shown_first - 1, tile.columns.last)
    return tuple(
        row[columns] for row in pattern.grid.rows[tile.rows.shown_first - 1 : tile.rows.last]
    )


def _on_page(fraction: Fraction, tile: Tile) -> bool:
    in_columns = tile.columns.shown_first <= fraction.column <= tile.columns.last
    return in_columns and tile.rows.shown_first <= fraction.row <= tile.rows.last


def _small_symbol(fraction: Fraction, look: Look) -> SmallSymbol:
    x, y = symbol_corner(fraction.stitch, fraction.corner)
    return SmallSymbol(look.symbols[fraction.mark], (fraction.column - 1 + x, fraction.row - 1 + y))


def _repeats(tile: Tile) -> tuple[tuple[int, int, int, int], ...]:
    left, top = tile.columns.shown_first - 1, tile.rows.shown_first - 1
    beside, above = tile.columns.repeated, tile.rows.repeated
    found = []
    if beside:
        found.append((left, top, beside, tile.rows.shown))
    if above:
        found.append((left + beside, top, tile.columns.shown - beside, above))
    return tuple(found)


def _frame(pattern: Pattern, tile: Tile) -> Box:
    """On the edges of the page, and clear of one on which a line of the design lies along it: black on black nobody sees it."""
    along = {
        (axis, first[axis] - 1)
        for line in pattern.lines
        for first, then in pairwise(line.points)
        for axis in (0, 1)
        if first[axis] == then[axis]
    }
    ends = (0, 0), (1, 0), (0, pattern.grid.width), (1, pattern.grid.height)
    edges = (
        tile.columns.shown_first - 1, tile.rows.shown_first - 1, tile.columns.last, tile.rows.last
    )  # fmt: skip
    left, top, right, bottom = (
        (end[1] == edge and end in along) * _FRAME_CLEAR for end, edge in zip(ends, edges)
    )
    return edges[0] - left, edges[1] - top, edges[2] + right, edges[3] + bottom


def _arrows(pattern: Pattern, tile: Tile) -> tuple[Outline, ...]:
    """Arrows at the edges that point to the middle column and row, on the pages that hold them."""
    middle_x, middle_y = pattern.grid.width / 2, pattern.grid.height / 2
    left, right = tile.columns.shown_first - 1, tile.columns.last
    top, bottom = tile.rows.shown_first - 1, tile.rows.last
    long = ARROW_ROOM * 0.9
    found: list[Outline] = []
    if tile.columns.first - 1 <= middle_x <= right:
        for y, base in ((top, top - long), (bottom, bottom + long)):
            found.append(((middle_x, y), (middle_x - 0.5, base), (middle_x + 0.5, base)))
    if tile.rows.first - 1 <= middle_y <= bottom:
        for x, base in ((left, left - long), (right, right + long)):
            found.append(((x, middle_y), (base, middle_y - 0.5), (base, middle_y + 0.5)))
    return tuple(found)


def _on_top(
    pattern: Pattern, tile: Tile, look: Look
) -> tuple[tuple[Stroke, ...], tuple[Dot, ...], frozenset[str]]:
    """Lines with their edges, then knots."""
    strokes: list[Stroke] = []
    dots: list[Dot] = []
    marks: set[str] = set()
    for line in pattern.lines:
        if _touches(line.points, tile):
            points = tuple((x - 1, y - 1) for x, y in line.points)
            width = LONG_WIDTH if line.long else LINE_WIDTH
            strokes += _drawn(points, line.mark, width, look)
            marks.add(line.mark)
    for daisy in pattern.daisies:
        if _touches((daisy.base, daisy.tip), tile):
            strokes += _drawn(daisy_loop(daisy), daisy.mark, LONG_WIDTH, look)
            strokes += _drawn(daisy_anchor(daisy), daisy.mark, LONG_WIDTH, look)
            marks.add(daisy.mark)
    for knot in pattern.knots:
        if _touches((knot.at,), tile):
            dots.append(knot_dot((knot.at[0] - 1, knot.at[1] - 1), knot.mark, look))
            marks.add(knot.mark)
    return tuple(strokes), tuple(dots), frozenset(marks)


def _beads(
    pattern: Pattern, tile: Tile, look: Look
) -> tuple[tuple[Dot, ...], frozenset[tuple[str, str]]]:
    """The beads on a page, and which they are."""
    dots: list[Dot] = []
    there: set[tuple[str, str]] = set()
    numbers: dict[tuple[str, str], int] = {}
    for bead in pattern.beads:
        number = numbers.setdefault(bead.kind, len(numbers) + 1)
        if _touches((bead.at,), tile):
            dots += bead_dots((bead.at[0] - 1, bead.at[1] - 1), bead.colour.hex, number, look)
            there.add(bead.kind)
    return tuple(dots), frozenset(there)


def _drawn(points: Outline, mark: str, width: float, look: Look) -> Iterable[Stroke]:
    return with_edge(Stroke(points, look.lines[mark], width, look.dashes[mark]))


def with_edge(line: Stroke, stitch: float = 1.0) -> tuple[Stroke, Stroke]:
    """A line and, below it, its edge; `stitch` is how long a stitch is."""
    width = line.width + HALO * stitch
    return Stroke(line.points, edge_of(line.colour), width, is_edge=True), line


def piece_of_line(ends: Outline, colour: str, width: float, dash: tuple[float, ...]) -> Stroke:
    """A sample for a key. It begins in the middle of a dash, or so short a piece might show no gap."""
    return Stroke(ends, colour, width, dash, sum(dash[:1]) / 2)


def knot_dot(middle: Point, mark: str, look: Look) -> Dot:
    """A knot as the chart shows it, and so its key; the unit is one stitch."""
    if look.coloured:
        return Dot(middle, _KNOT_RADIUS, look.lines[mark], edge_of(look.lines[mark]), HALO)
    return Dot(middle, _SIGNED_RADIUS, PAPER, INK, 0.08, look.symbols[mark])


def bead_dots(middle: Point, hex: str, number: int, look: Look) -> tuple[Dot, ...]:
    """A bead as the chart shows it, and so its key; `number` is told where colour cannot tell."""
    if look.coloured:
        hole = Dot(middle, _BEAD_RADIUS / 4, PAPER, PAPER, 0)
        return Dot(middle, _BEAD_RADIUS, hex, INK, 0.1), hole
    return (Dot(middle, _SIGNED_RADIUS, PAPER, INK, 0.14, str(number)),)


def _touches(points: Outline, tile: Tile) -> bool:
    """Whether the box round `points` meets the page."""
    xs, ys = [x - 1 for x, _ in points], [y - 1 for _, y in points]
    return (
        max(xs) >= tile.columns.shown_first - 1
        and min(xs) <= tile.columns.last
        and max(ys) >= tile.rows.shown_first - 1
        and min(ys) <= tile.rows.last
    )
