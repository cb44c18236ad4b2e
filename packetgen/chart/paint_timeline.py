"""The hours of painting as bars: which coat of which paint goes on when, and when it is dry."""

from collections.abc import Sequence
from itertools import accumulate, pairwise
from textwrap import wrap

import svgwrite

from packetgen.nouns import listed
from packetgen.reckon.paint import Coat
from packetgen.units import plain

_INK, _LINE = "#1c1c1a", "#8a8a82"
_WIDTH_MM, _ROW_MM, _BAR_MM, _TEXT_MM = 182.0, 7.0, 5.0, 3.2
_LINE_MM = 4.2  # from one line of a name to the next
# Mean width of a letter of the text face, in ems.
_MEAN_ADVANCE = 0.53
_STEPS_H = (1, 2, 3, 4, 6, 12, 24, 48, 96, 240, 480)
_MOST_TICKS = 14
_NAME_MM = 60.0  # for what stands before the bars, at most
_DUST_H = 1e-6


def paint_timeline(coats: Sequence[Coat]) -> str:
    """SVG, `_WIDTH_MM` wide, a row for each paint: a black bar while it is put on, then an open bar with
    the number of the coat while it dries. A paint that goes on one part while it dries on another has a row for each."""
    rows = _rows(coats)
    names = [_lines(name) for name in rows]
    end_h = max((coat.dry_h for coat in coats), default=0) or 1
    longest = max((len(line) for lines in names for line in lines), default=0)
    left = min(_NAME_MM, longest * _MEAN_ADVANCE * _TEXT_MM + 4)
    mm_per_h = (_WIDTH_MM - left - 3) / end_h
    tops = list(accumulate((_ROW_MM + _LINE_MM * (len(lines) - 1) for lines in names), initial=0.0))
    bottom = tops[-1]
    height = bottom + 9
    drawing = svgwrite.Drawing(size=(f"{_WIDTH_MM}mm", f"{height}mm"), debug=False)
    drawing.viewbox(0, 0, _WIDTH_MM, height)
    step = next((s for s in _STEPS_H if end_h / s <= _MOST_TICKS), _STEPS_H[-1])
    for hour in range(0, int(end_h) + 1, step):
        x = round(left + hour * mm_per_h, 2)
        drawing.add(drawing.line((x, 0), (x, bottom + 1)).stroke(_LINE, width=0.15))
        _add_text(drawing, plain(float(hour)), (x, bottom + 4.6), middle=True)
    _add_text(drawing, "hours", (0, bottom + 4.6))
    for (above, below), lines, of_row in zip(pairwise(tops), names, rows.values(), strict=True):
        middle = (above + below) / 2
        top = middle - _BAR_MM / 2
        for number, line in enumerate(lines):
            y = middle + (number - (len(lines) - 1) / 2) * _LINE_MM
            _add_text(drawing, line, (0, y + _TEXT_MM * 0.36))
        for coat in of_row:
            start, done, dry = (
                round(left + hour * mm_per_h, 2)
                for hour in (coat.starts_h, coat.done_h, coat.dry_h)
            )
            _add_bar(drawing, (start, done, dry), top, str(coat.number))
    return drawing.tostring()


def _rows(coats: Sequence[Coat]) -> dict[str, list[Coat]]:
    """The coats of each row, by what stands before it."""
    of_paint: dict[str, list[Coat]] = {}
    for coat in coats:
        of_paint.setdefault(coat.paint.name, []).append(coat)
    rows: dict[str, list[Coat]] = {}
    for name, of_one in of_paint.items():
        in_turn = sorted(of_one, key=lambda coat: coat.starts_h)
        lap = any(after.starts_h < coat.dry_h - _DUST_H for coat, after in pairwise(in_turn))
        for coat in in_turn:
            parts = listed(tuple(dict.fromkeys(one.part.name for one in coat.parts)))
            rows.setdefault(f"{name}: {parts}" if lap else name, []).append(coat)
    return rows


def _lines(name: str) -> list[str]:
    return wrap(name, int((_NAME_MM - 4) / (_MEAN_ADVANCE * _TEXT_MM))) or [""]


def _add_bar(
    drawing: svgwrite.Drawing, at: tuple[float, float, float], top: float, number: str
) -> None:
    start, done, dry = at
    whole = drawing.rect((start, top), (round(dry - start, 2), _BAR_MM))
    drawing.add(whole.fill("#ffffff").stroke(_INK, width=0.25))
    drawing.add(drawing.rect((start, top), (round(done - start, 2), _BAR_MM)).fill(_INK))
    if dry - done > _TEXT_MM:
        at_text = ((done + dry) / 2, top + _BAR_MM / 2 + _TEXT_MM * 0.36)
        _add_text(drawing, number, at_text, middle=True)


def _add_text(
    drawing: svgwrite.Drawing, text: str, at: tuple[float, float], middle: bool = False
) -> None:
    half = len(text) * _MEAN_ADVANCE * _TEXT_MM / 2 if middle else 0
    at = (round(at[0] - half, 2), round(at[1], 2))
    drawing.add(
        drawing.text(text, insert=at, font_size=_TEXT_MM, font_family="Packet Text", fill=_INK)
    )
