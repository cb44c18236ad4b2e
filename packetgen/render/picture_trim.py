"""The trim round a mounted design: gathered, straight or round, as colour and light on a mask."""

from math import atan2, cos, pi, sin

from PIL import Image, ImageDraw

from packetgen.model import Trim

_WIDE_MM = {"gathered": 7.5, "straight": 3.0, "round": 3.0}  # shown beyond the card: chosen by eye
_FOLD_MM = 8.0
_TWIST_MM = 3.2
_UNDER_MM = 6.0  # reaches this far under the design


def trim_width_mm(trim: Trim) -> float:
    return _WIDE_MM.get(trim.kind, _WIDE_MM["straight"])


def trim_layers(trim: Trim, card_px: tuple[int, int], px_per_mm: float):
    """(light, mask) round a card of this size that lies `trim_width_mm` inside the picture."""
    edge = round(trim_width_mm(trim) * px_per_mm)
    size = (card_px[0] + 2 * edge, card_px[1] + 2 * edge)
    light, mask = Image.new("L", size, 96), Image.new("L", size)
    draw = (ImageDraw.Draw(light), ImageDraw.Draw(mask))
    if trim.kind == "straight":
        draw[0].rectangle((0, 0, *size), fill=128)
        draw[1].rounded_rectangle((0, 0, size[0] - 1, size[1] - 1), edge / 2, fill=255)
        return light, mask
    step = (_FOLD_MM if trim.kind == "gathered" else _TWIST_MM) * px_per_mm
    shape = _fold if trim.kind == "gathered" else _twist
    for x, y, outward in _round_the_card(card_px, edge, step):
        shape(draw, x, y, outward, edge, step)
    return light, mask


def _round_the_card(card_px: tuple[int, int], edge: int, step: float):
    """Points on the card's edge with their outward direction, clockwise; corners turn in between."""
    (width, height), points = card_px, []
    sides = (
        ((edge, edge), (1, 0), width, -pi / 2),
        ((edge + width, edge), (0, 1), height, 0.0),
        ((edge + width, edge + height), (-1, 0), width, pi / 2),
        ((edge, edge + height), (0, -1), height, pi),
    )
    for (x, y), (dx, dy), length, outward in sides:
        points.append((x, y, outward - pi / 4))
        count = max(1, round(length / step))
        for index in range(count):
            far = (index + 0.5) / count * length
            points.append((x + dx * far, y + dy * far, outward))
    return points


def _fold(draw, x: float, y: float, outward: float, edge: int, step: float) -> None:
    """One frill: a rounded lap that rises from the card's edge, its gathers running together there."""
    on_light, on_mask = draw
    ox, oy = cos(outward), sin(outward)
    half = step * 0.62
    for index in range(9):
        share = index / 8
        r = half * (1 - share * 0.75)
        reach = edge - half + half * 0.15 * share
        cx, cy = x + ox * reach - share * half * 0.16, y + oy * reach - share * half * 0.16
        value = round(98 + 42 * share)
        for ink, surface in ((value, on_light), (255, on_mask)):
            if surface is on_mask and index:
                continue
            surface.ellipse((cx - r, cy - r, cx + r, cy + r), fill=ink)
            wide = r * 0.9
            surface.polygon(
                [
                    (cx - oy * r, cy + ox * r),
                    (cx + oy * r, cy - ox * r),
                    (x - ox * edge * 0.6 + oy * wide, y - oy * edge * 0.6 - ox * wide),
                    (x - ox * edge * 0.6 - oy * wide, y - oy * edge * 0.6 + ox * wide),
                ],
                fill=ink,
            )
    for turn in (-0.42, 0.0, 0.42):  # gathers
        angle = outward + turn
        far = edge * (0.62 if turn else 0.74)
        start = (x + oy * turn * -half, y + ox * turn * half)
        on_light.line(
            (*start, start[0] + cos(angle) * far * 0.8, start[1] + sin(angle) * far * 0.8),
            fill=92,
            width=max(1, round(step * 0.045)),
        )


def _twist(draw, x: float, y: float, outward: float, edge: int, step: float) -> None:
    """One turn of a cord."""
    on_light, on_mask = draw
    angle = outward + 0.9
    for index in range(7):
        share = index / 6
        for along in range(-6, 7):
            far = along / 6 * edge * 0.42 * (1 - share * 0.3)
            r = step * 0.42 * (1 - share * 0.8)
            cx = x + cos(outward) * edge * 0.5 + cos(angle) * far - share * r * 0.2
            cy = y + sin(outward) * edge * 0.5 + sin(angle) * far - share * r * 0.2
            on_light.ellipse((cx - r, cy - r, cx + r, cy + r), fill=round(88 + 58 * share))
            if not index:
                on_mask.ellipse((cx - r, cy - r, cx + r, cy + r), fill=255)
