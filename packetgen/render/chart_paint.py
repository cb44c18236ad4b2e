"""Paints a chart page as PDF operators: the quick way to what `chart.drawing` draws as SVG.

Inside, the unit is the millimetre and y runs down; within the grid the unit is one stitch.
Operators are those of ISO 32000-1, annex A.
"""

from collections.abc import Iterable, Iterator, Mapping

from packetgen.chart.drawing import (
    EDGE_WIDTH,
    GRID_COLOUR,
    GRID_WIDTH,
    KNOT_GROUND,
    TEN_COLOUR,
    TEN_WIDTH,
)
from packetgen.chart.paintbox import INK, PAPER
from packetgen.chart.sheet import (
    FRACTION_SHARE,
    LINE_WIDTH,
    Box,
    Dot,
    Sheet,
    Stroke,
    piece_of_line,
    with_edge,
)
from packetgen.colour import channels
from packetgen.render.chart_pages import SCALE_MM, ChartPage, Label
from packetgen.render.page_key import LINE_EM, SYMBOL_EM, KeyEntry, dot_em, text_em
from packetgen.render.text_face import TEXT_FACE, Face, face

# Face file → the name by which the page's resources know it.
FONTS: Mapping[str, str] = {
    "symbols.ttf": "/ChartSymbols",
    TEXT_FACE: "/ChartText",
    "text-regular-ext.ttf": "/ChartTextFurther",
}
# A circle's quarter as a Bézier curve: the usual length of the handles, 4/3·(√2 − 1).
_HANDLE = 0.5522847498


def painted(page: ChartPage, numbers: Mapping[int, int]) -> bytes:
    """The operators of one page. `numbers`: chart page → page of the document."""
    grid = page.sheet
    parts = ["q"]
    parts.append(_matrix(page.cell_mm, page.grid_left_mm, page.grid_top_mm, grid))
    parts += _cells(grid)
    parts += _lines_of_grid(grid)
    parts += _symbols(grid)
    parts += [
        "q",
        f"{_box(grid.room)} W n",
    ]
    parts += (line for stroke in grid.strokes for line in _stroke(stroke))
    parts += (line for dot in grid.dots for line in _dot(dot))
    parts += ["Q", "Q"]
    parts += _labels(page.labels, numbers, page.edition.number_mm)
    parts += _foot(page)
    parts += (line for entry in page.key for line in _entry(entry, page))
    return "\n".join(parts).encode("ascii")


def _matrix(cell: float, left: float, top: float, sheet: Sheet) -> str:
    x, y = left - sheet.left * cell, top - sheet.top * cell
    return f"{cell:.4f} 0 0 {cell:.4f} {x:.4f} {y:.4f} cm"


def _ink(colour: str, operator: str = "rg") -> str:
    """Sets the colour of fills (rg) or of lines (RG)."""
    red, green, blue = (f"{channel / 255:.3f}" for channel in channels(colour))
    return f"{red} {green} {blue} {operator}"


def _path(points: Iterable[tuple[float, float]]) -> str:
    steps = [f"{x:.6g} {y:.6g}" for x, y in points]
    return f"{steps[0]} m " + " ".join(f"{step} l" for step in steps[1:])


def _box(of: Box) -> str:
    left, top, right, bottom = of
    return f"{left:g} {top:g} {right - left:g} {bottom - top:g} re"


# --- the grid -------------------------------------------------------------------------------------


def _cells(sheet: Sheet) -> Iterator[str]:
    for colour, runs in sheet.runs.items():
        if colour != PAPER:
            yield _ink(colour)
            yield "\n".join(f"{x} {y} {length} 1 re" for x, y, length in runs)
            yield "f"
    for fill in sheet.fills:
        yield f"{_ink(fill.colour)} {_path(fill.outline)} h f"
    if sheet.repeats:
        yield "q /ChartShade gs 0 g"
        yield " ".join(f"{x} {y} {width} {height} re" for x, y, width, height in sheet.repeats)
        yield "f Q"


def _lines_of_grid(sheet: Sheet) -> Iterator[str]:
    for tens, colour, width in (
        (False, GRID_COLOUR, GRID_WIDTH),
        (True, TEN_COLOUR, TEN_WIDTH),
    ):
        yield f"{_ink(colour, 'RG')} {width} w"
        yield "\n".join(f"{x} {sheet.top} m {x} {sheet.bottom} l" for x in sheet.columns(tens))
        yield "\n".join(f"{sheet.left} {y} m {sheet.right} {y} l" for y in sheet.rows(tens))
        yield "S"
    yield f"{_ink(TEN_COLOUR, 'RG')} {EDGE_WIDTH} w {_box(sheet.frame)} S"
    yield "0 g"
    for outline in sheet.arrows:
        yield f"{_path(outline)} h f"


def _symbols(sheet: Sheet) -> Iterator[str]:
    symbols = face("symbols.ttf")
    yield f"BT {FONTS['symbols.ttf']} 1 Tf 0 g"
    for y, row in enumerate(sheet.symbol_rows, sheet.top + 1):
        yield f"1 0 0 -1 {sheet.left} {y} Tm {symbols.encoded(row)} Tj"
    for small in sheet.small_symbols:
        left, foot = small.at[0], small.at[1] + FRACTION_SHARE
        yield f"{FRACTION_SHARE} 0 0 -{FRACTION_SHARE} {left:.4f} {foot:.4f} Tm"
        yield f"{symbols.encoded(small.symbol)} Tj"
    yield "ET"


def _stroke(stroke: Stroke) -> Iterator[str]:
    # Dots of a broken line would run together with round ends.
    ends = "0 J" if stroke.dash else "1 J"
    dash = " ".join(f"{part:g}" for part in stroke.dash)
    yield f"{_ink(stroke.colour, 'RG')} {stroke.width:.4g} w {ends} 1 j [{dash}] {stroke.dash_from:g} d"
    yield f"{_path(stroke.points)} S"


def _dot(dot: Dot) -> Iterator[str]:
    (x, y), r = dot.at, dot.radius
    k = r * _HANDLE

    def curve(*points: tuple[float, float]) -> str:
        return " ".join(f"{x + dx:.4f} {y + dy:.4f}" for dx, dy in points) + " c"

    circle = f"{x + r:.4f} {y:.4f} m " + " ".join(
        (
            curve((r, k), (k, r), (0, r)),
            curve((-k, r), (-r, k), (-r, 0)),
            curve((-r, -k), (-k, -r), (0, -r)),
            curve((k, -r), (r, -k), (r, 0)),
        )
    )
    width = f"{dot.edge_width:.4g} w" if dot.edge_width else ""
    yield f"{_ink(dot.fill)} {_ink(dot.edge, 'RG')} {width} [] 0 d {circle} h {'B' if width else 'f'}"
    if dot.sign:
        size = r * 1.3
        yield from _text(dot.sign, x, y + size * (0.5 if _is_symbol(dot.sign) else 0.36), size, 0.5)


# --- text -------------------------------------------------------------------------------------------


def _is_symbol(text: str) -> bool:
    return "\ue000" <= text[0] <= "\uf8ff"


def _stretches(text: str) -> list[tuple[str, str]]:
    """(face file, piece): symbols, letters of the text face, and letters that only the further face has."""
    if text and _is_symbol(text):
        return [("symbols.ttf", text)]
    plain = face(TEXT_FACE)
    pieces: list[tuple[str, str]] = []
    for char in text:
        file_name = TEXT_FACE if char in plain.glyphs else "text-regular-ext.ttf"
        if pieces and pieces[-1][0] == file_name:
            pieces[-1] = (file_name, pieces[-1][1] + char)
        else:
            pieces.append((file_name, char))
    return pieces


def _wide(text: str) -> float:
    return sum(face(file_name).width(piece) for file_name, piece in _stretches(text))


def _text(
    text: str, x: float, y: float, size: float, share: float = 0.0, turn: int = 0
) -> Iterator[str]:
    """`share` of the text's length lies before x, y; turned by a quarter either way."""
    back = _wide(text) * size * share
    if turn == 0:
        matrix, x = f"{size:.4f} 0 0 {-size:.4f}", x - back
    elif turn > 0:
        matrix, y = f"0 {-size:.4f} {-size:.4f} 0", y + back
    else:
        matrix, y = f"0 {size:.4f} {size:.4f} 0", y - back
    yield f"BT 0 g {matrix} {x:.4f} {y:.4f} Tm"
    for file_name, piece in _stretches(text):
        of: Face = face(file_name)
        yield f"{FONTS[file_name]} 1 Tf {of.encoded(piece)} Tj"
    yield "ET"


def _labels(labels: Iterable[Label], numbers: Mapping[int, int], high_mm: float) -> Iterator[str]:
    for label in labels:
        text = label.text + (str(numbers[label.to_chart]) if label.to_chart else "")
        yield from _text(text, label.x_mm, label.y_mm, high_mm, label.share, label.turn)


# --- below the grid ---------------------------------------------------------------------------------


def _foot(page: ChartPage) -> Iterator[str]:
    yield f"{_ink(INK, 'RG')} 0.25 w [] 0 d"
    for box in page.page_map:
        grey = "0.35 g" if box.here else "1 g"
        place = f"{box.x_mm:.3f} {box.y_mm:.3f} {box.width_mm:.3f} {box.height_mm:.3f}"
        yield f"{grey} {place} re B"
    x, y = page.scale_at_mm
    yield f"0.35 w {x:.3f} {y - 2:.3f} m {x:.3f} {y:.3f} l {x + SCALE_MM:.3f} {y:.3f} l"
    yield f"{x + SCALE_MM:.3f} {y - 2:.3f} l S"
    yield from _text("50 mm when printed at full size", x + SCALE_MM + 2, y, page.edition.number_mm)


def _entry(entry: KeyEntry, page: ChartPage) -> Iterator[str]:
    one, size = entry.line, page.edition.key_text_mm
    look = page.look
    x, y = entry.x_mm, entry.y_mm
    box = size * 1.3
    if one.symbol:
        yield f"{_ink(look.cells[one.mark])} {_ink(INK, 'RG')} 0.15 w [] 0 d"
        yield f"{x:.3f} {y:.3f} {box:.3f} {box:.3f} re B"
        yield from _text(one.symbol, x, y + box, box)
        x += size * SYMBOL_EM
    if one.has_line:
        thick = LINE_WIDTH * page.cell_mm
        dash = tuple(part * page.cell_mm for part in look.dashes[one.mark])
        middle = y + box / 2
        end = x + size * (LINE_EM - 0.5)
        ends = (x + 0.3, middle), (end, middle)
        sample = piece_of_line(ends, look.lines[one.mark], thick, dash)
        for stroke in with_edge(sample, page.cell_mm):
            yield from _stroke(stroke)
    if one.dots:
        yield f"q {box:.4f} 0 0 {box:.4f} {entry.x_mm + size * dot_em(one):.3f} {y:.3f} cm"
        if one.has_knot and look.coloured:  # where cells meet, as on the chart
            yield f"{_ink(KNOT_GROUND)} 0 0 1 1 re f"
            yield f"{_ink(GRID_COLOUR, 'RG')} {GRID_WIDTH} w [] 0 d 0 .5 m 1 .5 l .5 0 m .5 1 l S"
        for dot in one.dots:
            yield from _dot(dot)
        yield "Q"
    x = entry.x_mm + size * text_em(one)
    for index, line in enumerate(entry.text):
        yield from _text(line, x, y + size * (1.0 + 1.15 * index), size)
