"""The trim round a mounted design: gathered, straight or round, as light on a mask. Chosen by eye."""

from collections.abc import Iterator
from math import cos, pi, sin
from random import Random

from PIL import Image, ImageDraw, ImageFilter

from packetgen.model import Trim
from packetgen.render.picture_thread import Vector

_WIDE_MM = {"gathered": 8.0, "straight": 3.0, "round": 3.0, "": 0.0}  # shown beyond the card
_FINE = 2  # it is drawn so many times larger, then reduced
_FRILL_MM, _TURN_MM = 6.5, 2.2  # along the edge


def trim_width_mm(trim: Trim) -> float:
    """How far the trim shows beyond the card."""
    return _WIDE_MM[trim.kind]


def trim_layers(
    trim: Trim, card_px: tuple[int, int], px_per_mm: float
) -> tuple[Image.Image, Image.Image]:
    """(light, mask) of the trim round a card of this size, `trim_width_mm` larger on every side."""
    edge = round(trim_width_mm(trim) * px_per_mm) * _FINE
    card, mm = (card_px[0] * _FINE, card_px[1] * _FINE), px_per_mm * _FINE
    size = (card[0] + 2 * edge, card[1] + 2 * edge)
    light, mask = Image.new("L", size, 128), Image.new("L", size)
    if not edge:
        return light.reduce(_FINE), mask.reduce(_FINE)
    if trim.kind == "straight":
        ImageDraw.Draw(mask).rounded_rectangle((0, 0, size[0] - 1, size[1] - 1), edge / 2, 255)
        return light.reduce(_FINE), mask.reduce(_FINE)
    gathered = trim.kind == "gathered"
    hand = (_Frill if gathered else _Cord)(light, mask, edge, mm)
    step = (_FRILL_MM if gathered else _TURN_MM) * mm
    for place in _round_the_card(card, edge, step):
        hand.lay(*place)
    soft = light.filter(ImageFilter.GaussianBlur(0.25 * mm))
    return soft.reduce(_FINE), mask.reduce(_FINE)


def _round_the_card(
    card_px: tuple[int, int], edge: int, step: float
) -> Iterator[tuple[float, float, float]]:
    """Points on the card's edge with the direction outward, clockwise, three of them round each corner."""
    width, height = card_px
    sides = (
        ((edge, edge), (1, 0), width, -pi / 2),
        ((edge + width, edge), (0, 1), height, 0.0),
        ((edge + width, edge + height), (-1, 0), width, pi / 2),
        ((edge, edge + height), (0, -1), height, pi),
    )
    for (x, y), (dx, dy), length, outward in sides:
        for turn in (-pi / 3, -pi / 6):
            yield x, y, outward + turn
        count = max(1, round(length / step))
        for index in range(count):
            far = (index + 0.5) / count * length
            yield x + dx * far, y + dy * far, outward


class _Frill:
    """Laps of gathered fabric: wide and light at the hem, drawn together where they are stitched on."""

    def __init__(self, light: Image.Image, mask: Image.Image, edge: int, px_per_mm: float) -> None:
        self._light, self._mask = ImageDraw.Draw(light), ImageDraw.Draw(mask)
        self._edge, self._mm, self._rng = edge, px_per_mm, Random(8)

    def lay(self, x: float, y: float, outward: float) -> None:
        outward += self._rng.uniform(-0.06, 0.06)
        reach = self._edge * self._rng.uniform(0.9, 1.0)
        half = _FRILL_MM * self._mm * self._rng.uniform(0.6, 0.68)
        ox, oy = cos(outward), sin(outward)
        # From the whole lap in shade to its crest in light; the crest leans towards the light.
        for step in range(12):
            share = step / 11
            wide = half * (1 - 0.82 * share)
            lean = -share * half * 0.3 * (ox - oy) / 2
            hem = reach * (1 - 0.04 * share)
            root, light = (x - oy * lean, y + ox * lean), round(100 + 40 * share)
            self._lap(root, (ox, oy), hem, wide, light, hides=not step)
        for _ in range(4):
            aside = self._rng.uniform(-0.5, 0.5) * half
            far = reach * self._rng.uniform(0.45, 0.8)
            start = (x - oy * aside * 0.7, y + ox * aside * 0.7)
            end = (x - oy * aside * 1.5 + ox * far, y + ox * aside * 1.5 + oy * far)
            crease = round(92 + 10 * self._rng.random())
            self._light.line((*start, *end), crease, max(1, round(self._mm * 0.22)))

    def _lap(
        self, at: Vector, out: Vector, hem: float, wide: float, light: int, hides: bool
    ) -> None:
        (x, y), (ox, oy), root = at, out, wide * 0.75
        outline = [(x - oy * root - ox * hem * 0.5, y + ox * root - oy * hem * 0.5)]
        for index in range(13):
            angle = pi * index / 12
            far, aside = hem - wide * 0.55 * (1 - sin(angle)), wide * cos(angle)
            outline.append((x + ox * far - oy * aside, y + oy * far + ox * aside))
        outline.append((x + oy * root - ox * hem * 0.5, y - ox * root - oy * hem * 0.5))
        self._light.polygon(outline, fill=light)
        if hides:
            self._mask.polygon(outline, fill=255)


class _Cord:
    """Turns of a twisted cord."""

    def __init__(self, light: Image.Image, mask: Image.Image, edge: int, px_per_mm: float) -> None:
        self._light, self._mask = ImageDraw.Draw(light), ImageDraw.Draw(mask)
        self._edge, self._turn = edge, _TURN_MM * px_per_mm

    def lay(self, x: float, y: float, outward: float) -> None:
        slant = outward + 0.9
        for step in range(7):
            share = step / 6
            radius = self._turn * 0.5 * (1 - share * 0.8)
            for along in range(-6, 7):
                far = along / 6 * self._edge * 0.3 * (1 - share * 0.3)
                cx = x + cos(outward) * self._edge * 0.5 + cos(slant) * far - share * radius * 0.2
                cy = y + sin(outward) * self._edge * 0.5 + sin(slant) * far - share * radius * 0.2
                box = (cx - radius, cy - radius, cx + radius, cy + radius)
                self._light.ellipse(box, fill=round(88 + 58 * share))
                if not step:
                    self._mask.ellipse(box, fill=255)
