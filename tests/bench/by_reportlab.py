"""Draws the plain pages of a chart straight onto reportlab's canvas."""

from io import BytesIO
from pathlib import Path
from typing import Any

from reportlab.lib.colors import HexColor
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

Plain = dict[str, Any]  # as `plain_pages` describes it; importing that would load our own rooms

_FACES = {"symbols": "symbols.ttf", "text": "text-regular.ttf", "heading": "heading.ttf"}


def draw(chart: Plain, fonts: Path) -> bytes:
    """The chart as a PDF; `fonts` holds the face files."""
    for name, file_name in _FACES.items():
        pdfmetrics.registerFont(TTFont(name, fonts / file_name))
    wide, high = chart["page_mm"]
    target = BytesIO()
    canvas = Canvas(target, pagesize=(wide * mm, high * mm), pageCompression=1)
    canvas.setTitle(chart["title"])
    for page in chart["pages"]:
        # Millimetres from the upper left corner; y is given below zero, or text would be mirrored.
        canvas.translate(0, high * mm)
        canvas.scale(mm, mm)
        _heading(canvas, page)
        _grid(canvas, chart, page)
        _round_about(canvas, chart, page)
        _key(canvas, chart, page)
        canvas.showPage()
    canvas.save()
    return target.getvalue()


def _heading(canvas: Canvas, page: Plain) -> None:
    x, y = page["heading_at"]
    canvas.setFont("heading", 5.3)
    canvas.drawString(x, -y, page["heading"])
    canvas.setFont("text", 3.5)
    canvas.drawString(x + 40, -y, page["spans"])


def _grid(canvas: Canvas, chart: Plain, page: Plain) -> None:
    (x, y), (wide, high) = page["corner"], page["size"]
    canvas.saveState()
    canvas.translate(x, -y)
    canvas.scale(page["cell"], page["cell"])
    for tint, runs in page["runs"].items():
        path = canvas.beginPath()
        for column, row, length in runs:
            path.rect(column, -row - 1, length, 1)
        canvas.setFillColor(HexColor(tint))
        canvas.drawPath(path, stroke=0, fill=1)
    canvas.setFillColor(HexColor("#000000"))
    canvas.setFillAlpha(0.16)
    for left, top, across, down in page["repeats"]:
        canvas.rect(left, -top - down, across, down, stroke=0, fill=1)
    canvas.setFillAlpha(1)
    for name in ("grid", "tens"):
        colour, width = chart[name]
        canvas.setStrokeColor(HexColor(colour))
        canvas.setLineWidth(width)
        canvas.lines(
            [(column, 0, column, -high) for column in page["across"][name]]
            + [(0, -row, wide, -row) for row in page["down"][name]]
        )
    canvas.setLineWidth(chart["edge"][1])
    canvas.rect(0, -high, wide, high)
    for arrow in page["arrows"]:
        path = canvas.beginPath()
        path.moveTo(arrow[0][0], -arrow[0][1])
        for left, top in arrow[1:]:
            path.lineTo(left, -top)
        canvas.drawPath(path, stroke=0, fill=1)
    text = canvas.beginText(0, -1)
    text.setFont("symbols", 1, leading=1)
    for row in page["symbols"]:
        text.textLine(row)
    canvas.drawText(text)
    canvas.restoreState()


def _round_about(canvas: Canvas, chart: Plain, page: Plain) -> None:
    canvas.setFont("text", chart["number_mm"])
    for words, x, y, share, turn in page["labels"]:
        back = share * pdfmetrics.stringWidth(words, "text", chart["number_mm"])
        if turn:
            canvas.saveState()
            canvas.translate(x, -y)
            canvas.rotate(turn)
            canvas.drawString(-back, 0, words)
            canvas.restoreState()
        else:
            canvas.drawString(x - back, -y, words)
    canvas.setLineWidth(0.25)
    for x, y, wide, high, here in page["map"]:
        canvas.setFillGray(0.35 if here else 1)
        canvas.rect(x, -y - high, wide, high, fill=1)
    canvas.setFillGray(0)
    (x, y), length = page["scale_at"], chart["scale_mm"]
    canvas.setLineWidth(0.35)
    ends = [(end, 2 - y, end, -y) for end in (x, x + length)]
    canvas.lines([*ends, (x, -y, x + length, -y)])
    canvas.drawString(x + length + 2, -y, "50 mm when printed at full size")


def _key(canvas: Canvas, chart: Plain, page: Plain) -> None:
    size = chart["key_mm"]
    box = 1.3 * size
    canvas.setLineWidth(0.15)
    for symbol, tint, lines, x, y in page["key"]:
        canvas.setFillColor(HexColor(tint))
        canvas.rect(x, -y - box, box, box, fill=1)
        canvas.setFillGray(0)
        canvas.setFont("symbols", box)
        canvas.drawString(x, -y - box, symbol)
        canvas.setFont("text", size)
        for number, line in enumerate(lines):
            canvas.drawString(x + 1.9 * size, -y - size * (1 + 1.15 * number), line)
