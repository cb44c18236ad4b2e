"""The finishing piece drawn to scale, with a mounted design on it: whole, or its panel alone."""

import svgwrite

from packetgen.model import FinishingPiece, Outline
from packetgen.reckon.fit import Fit
from packetgen.reckon.paint import front_hex
from packetgen.reckon.sizes import Size
from packetgen.units import centimetres, inches

_INK, _DIMENSION = "#2b2b28", "#55554f"
_LINEN, _WOOD, _TRIM, _TAKEN = "#e2ddd1", "#eee9df", "#a9a79c", "#c9c7bd"
# The type of dimensions where nobody says how large the drawing will be seen, mm of the piece.
_TYPE_MM = 11.0
# Room at the sides of the piece for dimensions, below it and above it, in ems; round the panel alone, mm.
_ROOM_EM, _BELOW_EM, _ABOVE_EM, _ROOM_OF_PANEL = 2.9, 2.5, 0.4, 3.0


def piece_scale(piece: FinishingPiece, room_mm: tuple[float, float], printed_mm: float) -> float:
    """The scale at which the drawing of the whole piece fills a room in print, with dimensions in type of
    `printed_mm` there. In the piece's own millimetres that type is `printed_mm` / scale."""
    left, top, right, bottom = _reach(piece)
    return min(
        (room_mm[0] - 2 * _ROOM_EM * printed_mm) / (right - left),
        (room_mm[1] - (_ABOVE_EM + _BELOW_EM) * printed_mm) / (bottom - top),
    )


def _reach(piece: FinishingPiece) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of all its parts."""
    outlines = [_moved(part.outline, part.at_mm) for part in piece.parts]
    xs = [x for outline in outlines for x, _ in outline]
    ys = [y for outline in outlines for _, y in outline]
    return min(xs), min(ys), max(xs), max(ys)


def piece_drawing(
    piece: FinishingPiece,
    fit: Fit | None = None,
    finished: Size | None = None,
    type_mm: float = _TYPE_MM,
) -> str:
    """SVG in millimetres, overall dimensions marked in type of `type_mm`. With `fit` and `finished`, the
    card and the stitching lie on the panel, with the size of the stitching."""
    placed = [(part, _moved(part.outline, part.at_mm)) for part in piece.parts]
    left, top, right, bottom = _reach(piece)
    room, above = _ROOM_EM * type_mm, _ABOVE_EM * type_mm
    width, height = right - left + 2 * room, bottom - top + above + _BELOW_EM * type_mm
    drawing = svgwrite.Drawing(size=(f"{width:.2f}", f"{height:.2f}"), debug=False)
    drawing.viewbox(*(round(at, 2) for at in (left - room, top - above, width, height)))
    for part, outline in placed:
        shape = drawing.polygon(outline).fill(front_hex(part))
        shape.stroke(_INK, width=0.8)
        shape.update({"stroke-linejoin": "round"})
        drawing.add(shape)
    if fit and finished:
        # A light line below, or the dark one would be lost on dark paint.
        drawing.add(drawing.polygon(piece.panel).fill("none").stroke("#ffffff", width=1.1))
        _add_panel(drawing, piece, "none")
        _add_card(drawing, piece, fit, finished, _LINEN)
        _add_size(drawing, fit, finished, piece.border_mm, type_mm)
    off = 0.8 * type_mm
    _add_dimension(drawing, (left, bottom + off), (right, bottom + off), type_mm)
    _add_dimension(drawing, (left - off, top), (left - off, bottom), type_mm)
    return drawing.tostring()


def panel_drawing(piece: FinishingPiece, fit: Fit, finished: Size, cloth_hex: str = _LINEN) -> str:
    """SVG in millimetres of the panel alone, with the card on it: the same frame for every design and
    cloth, so that several side by side are at one scale."""
    xs, ys = [x for x, _ in piece.panel], [y for _, y in piece.panel]
    left, top = min(xs) - _ROOM_OF_PANEL, min(ys) - _ROOM_OF_PANEL
    width, height = max(xs) + _ROOM_OF_PANEL - left, max(ys) + _ROOM_OF_PANEL - top
    drawing = svgwrite.Drawing(size=(f"{width:.2f}", f"{height:.2f}"), debug=False)
    drawing.viewbox(round(left, 2), round(top, 2), round(width, 2), round(height, 2))
    _add_panel(drawing, piece, _WOOD)
    for keep_out in piece.keep_outs:
        drawing.add(drawing.polygon(keep_out.outline).fill(_TAKEN).stroke(_INK, width=0.7))
    _add_card(drawing, piece, fit, finished, cloth_hex)
    return drawing.tostring()


def _add_panel(drawing: svgwrite.Drawing, piece: FinishingPiece, fill: str) -> None:
    panel = drawing.polygon(piece.panel).fill(fill).stroke(_DIMENSION, width=0.5)
    panel.update({"stroke-dasharray": "3 2"})
    drawing.add(panel)


def _moved(outline: Outline, by: tuple[float, float]) -> Outline:
    return tuple((x + by[0], y + by[1]) for x, y in outline)


def _add_card(
    drawing: svgwrite.Drawing, piece: FinishingPiece, fit: Fit, finished: Size, cloth_hex: str
) -> None:
    if piece.trim.width_mm:
        left, top = (at - piece.trim.width_mm for at in fit.at_mm)
        right, bottom = left + fit.covered.width_mm, top + fit.covered.height_mm
        band = drawing.polygon([(left, top), (right, top), (right, bottom), (left, bottom)])
        drawing.add(band.fill(_TRIM).stroke(_INK, width=0.4))
    card = drawing.rect(fit.at_mm, (fit.card.width_mm, fit.card.height_mm))
    drawing.add(card.fill("#ffffff").stroke(_INK, width=0.7))
    corner = (fit.at_mm[0] + piece.border_mm, fit.at_mm[1] + piece.border_mm)
    stitching = drawing.rect(corner, (finished.width_mm, finished.height_mm))
    drawing.add(stitching.fill(cloth_hex).stroke(_INK, width=0.4))


def _add_size(
    drawing: svgwrite.Drawing, fit: Fit, finished: Size, border_mm: float, type_mm: float
) -> None:
    """The size in the middle of the stitching: in two lines, in four where it is narrow, and not at all
    where letters would have to be much smaller than those of the dimensions."""
    middle_x = fit.at_mm[0] + border_mm + finished.width_mm / 2
    middle_y = fit.at_mm[1] + border_mm + finished.height_mm / 2
    parts = tuple(
        (f"{said(finished.width_mm)} ×", said(finished.height_mm)) for said in (inches, centimetres)
    )
    for lines in (tuple(map(" ".join, parts)), parts[0] + parts[1]):
        air = _AIR if len(lines) > len(parts) else 0.3  # a heap of lines needs some
        widest = max(map(len, lines)) * _WIDE_ADVANCE
        high = (len(lines) + air) * _LINE
        size_mm = min(type_mm, finished.width_mm / widest, finished.height_mm / high)
        if size_mm >= _LEAST_SHARE * type_mm:
            foot_mm = middle_y + size_mm * (0.35 - _LINE * (len(lines) - 1) / 2)
            for line in lines:
                _add_text(drawing, line, (middle_x, foot_mm), size_mm)
                foot_mm += _LINE * size_mm
            return


def _add_dimension(
    drawing: svgwrite.Drawing, start: tuple[float, float], end: tuple[float, float], type_mm: float
) -> None:
    drawing.add(drawing.line(start, end).stroke(_DIMENSION, width=0.5))
    flat = start[1] == end[1]
    tick = 0.27 * type_mm
    for x, y in (start, end):
        ends = ((x, y - tick), (x, y + tick)) if flat else ((x - tick, y), (x + tick, y))
        drawing.add(drawing.line(*ends).stroke(_DIMENSION, width=0.5))
    length = abs(end[0] - start[0]) if flat else abs(end[1] - start[1])
    text = f"{inches(length)} · {centimetres(length)}"
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    if flat:
        _add_text(drawing, text, (middle[0], middle[1] + 1.2 * type_mm), type_mm)
    else:
        _add_text(drawing, text, (middle[0] - 0.45 * type_mm, middle[1]), type_mm, turned=True)


# Of a letter in the widest of faces, in ems: only to keep a line within the stitching.
_WIDE_ADVANCE = 0.65
_LINE = 1.3  # from line to line, in ems
_AIR = 1.2  # above and below four lines together, in lines
_LEAST_SHARE = 0.94  # of the type of the dimensions: 8 points beside 8.5


def _add_text(
    drawing: svgwrite.Drawing,
    text: str,
    middle: tuple[float, float],
    size_mm: float,
    turned: bool = False,
) -> None:
    """One line with the middle of its foot at `middle`, whatever face it is set in."""
    at = (round(middle[0], 2), round(middle[1], 2))
    written = drawing.text(
        text,
        insert=at,
        font_size=round(size_mm, 2),
        font_family="Packet Text",
        text_anchor="middle",
        fill=_INK,
    )
    if turned:
        written.rotate(-90, at)
    drawing.add(written)
