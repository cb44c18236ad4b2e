"""Draws the plain pages of a chart with Typst: one document of placed shapes and text; and whole packets,
their words and tables before it.
"""

import json
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

import typst

from tests.bench.packet_words import SYMBOLS, Block, Cell

Plain = dict[str, Any]  # as `plain_pages` describes it; importing that would load our own rooms

_WORDS = """
#set page(width: 210mm, height: 297mm, margin: 12mm, numbering: "1")
#set text(font: "Atkinson Hyperlegible Next", size: 10pt)
#show heading: set text(font: "Fraunces")
#show table: set text(size: 8.5pt)
"""
# Shapes by absolute place; text by its baseline.
_HEAD = """
#set page(width: {wide}mm, height: {high}mm, margin: 0mm)
#set document(title: "{title}")
#set text(font: "Atkinson Hyperlegible Next", size: {number}mm, top-edge: "baseline", bottom-edge: "baseline")
#let at(x, y, what) = place(top + left, dx: x * 1mm, dy: y * 1mm, what)
#let words(x, y, what, size: {number}mm) = at(x, y, text(size: size, what))
#let box-at(x, y, w, h, fill, line) = at(x, y, rect(width: w * 1mm, height: h * 1mm, fill: fill, stroke: line))
#let symbol(x, y, size, what) = at(x, y, text(font: "Potting Symbols", size: size * 1mm, what))
#let label(x, y, share, turn, what) = context {{
  let wide = measure(what).width
  at(x, y, rotate(turn * -1deg, origin: top + left, move(dx: -share * wide, box(width: wide, what))))
}}
"""


def draw(chart: Plain, fonts: Path) -> bytes:
    """The chart as a PDF; `fonts` holds the face files."""
    return _compiled(_chart(chart), fonts, Path("."))


def draw_packet(chart: Plain, blocks: list[Block], folder: Path) -> bytes:
    """Words, tables and chart as a PDF; `folder` holds the face files and the pictures."""
    words = "\n".join(map(_block, blocks))
    return _compiled(f"{_WORDS}\n{words}\n#pagebreak()\n{_chart(chart)}", folder, folder)


def _chart(chart: Plain) -> str:
    wide, high = chart["page_mm"]
    head = _HEAD.format(wide=wide, high=high, title=chart["title"], number=chart["number_mm"])
    pages = ("\n".join(_page(chart, page)) for page in chart["pages"])
    return head + "\n#pagebreak()\n".join(pages)


def _compiled(source: str, fonts: Path, root: Path) -> bytes:
    return typst.compile(
        source.encode(), root=root, font_paths=[fonts], ignore_system_fonts=True, format="pdf"
    )


def _block(block: Block) -> str:
    kind, value = block
    if kind == "picture":
        return f"#align(center, image({_said(value)}, height: 150mm))"
    if kind == "table":
        columns = max(map(len, value))
        cells = [cell for line in value for cell in line + [None] * (columns - len(line))]
        return (
            f"#table(columns: {columns}, stroke: 0.3pt + luma(60%), {', '.join(map(_cell, cells))})"
        )
    if kind == "words":
        return f"#par[#{_said(value)}]"
    return f"#heading(level: {kind[-1]}, {_said(value)})"


def _cell(cell: Cell | None) -> str:
    if cell is None:
        return "[]"
    words, tint, symbol = cell
    mark = f"text(font: {_said(SYMBOLS)}, size: 4mm, {_said(symbol)})" if symbol else "[]"
    box = f"width: 5mm, height: 4mm, fill: rgb({_said(tint)}), stroke: 0.3pt, {mark}"
    before = f"#box({box}) " if tint else ""
    return f"[{before}#{_said(words)}]"


def _said(text: str) -> str:
    """As a string of Typst's."""
    return json.dumps(text, ensure_ascii=False)


def _page(chart: Plain, page: Plain) -> Iterator[str]:
    x, y = page["heading_at"]
    yield f'#at({x}, {y}, text(font: "Fraunces", weight: 600, size: 5.3mm)[{page["heading"]}])'
    yield f"#words({x + 40}, {y}, [{page['spans']}], size: 3.5mm)"
    yield from _grid(chart, page)
    for words, x, y, share, turn in page["labels"]:
        yield f"#label({x:.3f}, {y:.3f}, {share}, {turn})[{words}]"
    for x, y, wide, high, here in page["map"]:
        fill = "luma(35%)" if here else "white"
        yield f"#box-at({x:.3f}, {y:.3f}, {wide:.3f}, {high:.3f}, {fill}, 0.25mm)"
    (x, y), length = page["scale_at"], chart["scale_mm"]
    steps = _steps(((0, -2), (0, 0), (length, 0), (length, -2)), 1)
    yield f"#at({x}, {y}, curve(stroke: 0.35mm, {steps}))"
    yield f"#words({x + length + 2}, {y})[50 mm when printed at full size]"
    size = chart["key_mm"]
    box = 1.3 * size
    for symbol, tint, lines, x, y in page["key"]:
        yield f'#box-at({x:.3f}, {y:.3f}, {box:.3f}, {box:.3f}, rgb("{tint}"), 0.15mm)'
        yield f"#symbol({x:.3f}, {y + box:.3f}, {box:.3f})[{symbol}]"
        for number, line in enumerate(lines):
            baseline = y + size * (1 + 1.15 * number)
            yield f"#words({x + 1.9 * size:.3f}, {baseline:.3f}, size: {size}mm)[{line}]"


def _grid(chart: Plain, page: Plain) -> Iterator[str]:
    (x, y), cell, (wide, high) = page["corner"], page["cell"], page["size"]

    def curve(look: str, steps: Iterable[str]) -> str:
        return f"#at({x:.3f}, {y:.3f}, curve({look}, {', '.join(steps)}))"

    for tint, runs in page["runs"].items():
        yield curve(
            f'stroke: (paint: rgb("{tint}"), thickness: {cell:.4f}mm)',
            (_steps(((c, r + 0.5), (c + length, r + 0.5)), cell) for c, r, length in runs),
        )
    for left, top, across, down in page["repeats"]:
        corners = (
            (left, top),
            (left + across, top),
            (left + across, top + down),
            (left, top + down),
        )
        yield curve("fill: black.transparentize(84%)", (_steps(corners, cell), "curve.close()"))
    for name in ("grid", "tens"):
        colour, width = chart[name]
        lines = [((c, 0), (c, high)) for c in page["across"][name]]
        lines += [((0, r), (wide, r)) for r in page["down"][name]]
        yield curve(
            f'stroke: (paint: rgb("{colour}"), thickness: {width * cell:.4f}mm)',
            (_steps(line, cell) for line in lines),
        )
    colour, width = chart["edge"]
    corners = ((0, 0), (wide, 0), (wide, high), (0, high))
    yield curve(
        f'stroke: (paint: rgb("{colour}"), thickness: {width * cell:.4f}mm)',
        (_steps(corners, cell), "curve.close()"),
    )
    for arrow in page["arrows"]:
        yield curve("fill: black", (_steps(arrow, cell), "curve.close()"))
    for number, row in enumerate(page["symbols"], 1):
        yield f"#symbol({x:.3f}, {y + number * cell:.3f}, {cell:.4f})[{row}]"


def _steps(points: Iterable[tuple[float, float]], unit: float) -> str:
    first, *others = (f"({x * unit:.3f}mm, {y * unit:.3f}mm)" for x, y in points)
    return ", ".join((f"curve.move({first})", *(f"curve.line({point})" for point in others)))
