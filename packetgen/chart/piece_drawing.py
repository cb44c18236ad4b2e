"""The finishing piece drawn to scale, with a mounted design on it: whole, or its panel alone."""

import svgwrite

from packetgen.model import FinishingPiece, Outline
from packetgen.reckon.fit import Fit
from packetgen.reckon.paint import front_hex
from packetgen.reckon.sizes import Size
from packetgen.units import centimetres, inches

_INK, _DIMENSION = "#2b2b28", "#55554f"
_LINEN, _WOOD, _TRIM, _TAKEN = "#e2ddd1", "#eee9df", "#a9a79c", "#c9c7bd"
TEXT_MM = 11.0  # height of the type of dimensions
# Room at the sides of the piece for dimensions, below it, above it, and round the panel alone, mm.
_ROOM, _ROOM_BELOW, _ROOM_ABOVE, _ROOM_OF_PANEL = 32.0, 27.0, 4.0, 3.0


def piece_frame_mm(piece: FinishingPiece) -> tuple[float, float]:
    """Width and height of the drawing of the whole piece, dimensions included."""
    left, top, right, bottom = _reach(piece)
    return right - left + 2 * _ROOM, bottom - top + _ROOM_ABOVE + _ROOM_BELOW


def _reach(piece: FinishingPiece) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of all its parts."""
    outlines = [_moved(part.outline, part.at_mm) for part in piece.parts]
    xs = [x for outline in outlines for x, _ in outline]
    ys = [y for outline in outlines for _, y in outline]
    return min(xs), min(ys), max(xs), max(ys)


def piece_drawing(
    piece: FinishingPiece, fit: Fit | None = None, finished: Size | None = None
) -> str:
    """SVG in millimetres, overall dimensions marked. With `fit` and `finished`, the card and the
    stitching lie on the panel, with the size of the stitching."""
    placed = [(part, _moved(part.outline, part.at_mm)) for part in piece.parts]
    left, top, right, bottom = _reach(piece)
    width, height = piece_frame_mm(piece)
    drawing = svgwrite.Drawing(size=(f"{width:.2f}", f"{height:.2f}"), debug=False)
    drawing.viewbox(left - _ROOM, top - _ROOM_ABOVE, width, height)
    for part, outline in placed:
        shape = drawing.polygon(outline).fill(front_hex(part))
        shape.stroke(_INK, width=0.8)
        shape.update({"stroke-linejoin": "round"})
        drawing.add(shape)
    if fit and finished:
        _add_panel(drawing, piece, "none")
        _add_card(drawing, piece, fit, finished, _LINEN)
        _add_size(drawing, fit, finished, piece.border_mm)
    _add_dimension(drawing, (left, bottom + 9), (right, bottom + 9))
    _add_dimension(drawing, (left - 9, top), (left - 9, bottom))
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


def _add_size(drawing: svgwrite.Drawing, fit: Fit, finished: Size, border_mm: float) -> None:
    """The size in the middle of the stitching, in letters that it has room for."""
    middle_x = fit.at_mm[0] + border_mm + finished.width_mm / 2
    middle_y = fit.at_mm[1] + border_mm + finished.height_mm / 2
    lines = (
        inches(finished.width_mm) + " × " + inches(finished.height_mm),
        centimetres(finished.width_mm) + " × " + centimetres(finished.height_mm),
    )
    widest = max(map(len, lines)) * _WIDE_ADVANCE
    size_mm = min(TEXT_MM, finished.width_mm / widest, finished.height_mm / 3)
    for line, below_ems in zip(lines, (-0.3, 1.0)):
        _add_text(drawing, line, (middle_x, middle_y + below_ems * size_mm), size_mm)


def _add_dimension(
    drawing: svgwrite.Drawing, start: tuple[float, float], end: tuple[float, float]
) -> None:
    drawing.add(drawing.line(start, end).stroke(_DIMENSION, width=0.5))
    flat = start[1] == end[1]
    for x, y in (start, end):
        tick = ((x, y - 3), (x, y + 3)) if flat else ((x - 3, y), (x + 3, y))
        drawing.add(drawing.line(*tick).stroke(_DIMENSION, width=0.5))
    length = abs(end[0] - start[0]) if flat else abs(end[1] - start[1])
    text = f"{inches(length)} · {centimetres(length)}"
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    if flat:
        _add_text(drawing, text, (middle[0], middle[1] + 13))
    else:
        _add_text(drawing, text, (middle[0] - 5, middle[1]), turned=True)


# Of a letter in the widest of faces, in ems: only to keep a line within the stitching.
_WIDE_ADVANCE = 0.65


def _add_text(
    drawing: svgwrite.Drawing,
    text: str,
    middle: tuple[float, float],
    size_mm: float = TEXT_MM,
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
