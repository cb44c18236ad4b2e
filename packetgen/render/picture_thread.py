"""Light and shade of one piece of thread, as small sprites that are laid on a picture many times.

A picture of needlework is kept as two layers, colour and light (see `picture_surface`), so a sprite has
no colour of its own. Light falls from the upper left. Shades and proportions are chosen by eye.
"""

from dataclasses import dataclass
from functools import lru_cache
from math import ceil, hypot
from random import Random

from PIL import Image, ImageDraw, ImageFilter

from packetgen.render.picture_surface import lit

_FINE = 6  # sprites are drawn this many times larger, then reduced
_STEPS = 10  # of shade, from edge to crest
_EDGE, _CREST = 90, 148  # light at a thread's edge and along its crest
_SHADOW, _DEEP = 92, 44  # how strongly a thread shades what lies under it, and how dark
_GLINT, _FACET = 232, 62  # light of a metallic braid where it faces the lamp, and between

Vector = tuple[float, float]


@dataclass(frozen=True, eq=False)
class Sprite:
    """`cover` is where it hides what lies beneath, `shadow` where it only shades it."""

    light: Image.Image
    cover: Image.Image
    shadow: Image.Image
    offset: tuple[int, int]  # of its top left corner from the point it is laid at


class Layers:
    """A picture in the making: colour, light, and how far thread covers the cloth."""

    def __init__(self, rgb: tuple[int, int, int], light: Image.Image) -> None:
        self.colour, self.light = Image.new("RGB", light.size, rgb), light
        self.cover = Image.new("L", light.size)

    def lay(self, sprite: Sprite, at: Vector, rgb: tuple[int, int, int]) -> None:
        """Lay `sprite` at a point in px, in this colour."""
        left, top = round(at[0]) + sprite.offset[0], round(at[1]) + sprite.offset[1]
        box = (left, top, left + sprite.cover.width, top + sprite.cover.height)
        self.light.paste(_DEEP, box, sprite.shadow)
        self.light.paste(sprite.light, box, sprite.cover)
        self.colour.paste(rgb, box, sprite.cover)
        self.cover.paste(255, box, sprite.cover)

    def lit(self) -> Image.Image:
        return lit(self.colour, self.light)


@lru_cache(maxsize=512)
def thread(
    run: Vector,
    strand_px: float,
    strands: int,
    shown: tuple[int, ...],
    variant: int,
    braid: bool = False,
) -> Sprite:
    """Strands side by side from the laying point along `run`, all in px.

    `shown` are the strands that this sprite draws, 0 the uppermost of `strands`: a blend is laid one
    strand at a time. Variants differ a little, as stitches do.
    """
    rng = Random(variant * 7919 + 17)
    length = hypot(*run)
    along = (run[0] / length, run[1] / length)
    across = (along[1], -along[0])
    if across[0] + across[1] > 0:  # towards the light
        across = (-across[0], -across[1])
    wide = strand_px * (1 + rng.uniform(-0.06, 0.06))
    lean = rng.uniform(-0.05, 0.05) * strand_px * strands
    canvas = _Canvas(((0, 0), run), strand_px * strands)
    for strand in shown:
        shift = ((strands - 1) / 2 - strand) * strand_px + lean
        start = (across[0] * shift, across[1] * shift)
        end = (start[0] + run[0], start[1] + run[1])
        canvas.strand(start, end, along, across, wide, variant if braid else None)
    return canvas.sprite(strand_px)


@lru_cache(maxsize=128)
def loop(
    points: tuple[Vector, ...],
    strand_px: float,
    strands: int,
    shown: tuple[int, ...],
    braid: bool = False,
) -> Sprite:
    """Strands side by side along a path that bends, in px from the laying point."""
    canvas = _Canvas(points, strand_px * strands)
    for strand in shown:
        shift = ((strands - 1) / 2 - strand) * strand_px
        canvas.path(_beside(points, shift), strand_px, braid)
    return canvas.sprite(strand_px)


def _beside(points: tuple[Vector, ...], shift: float) -> tuple[Vector, ...]:
    """The path moved sideways by `shift`."""
    moved = []
    for index, (x, y) in enumerate(points):
        (x0, y0), (x1, y1) = points[max(0, index - 1)], points[min(len(points) - 1, index + 1)]
        length = hypot(x1 - x0, y1 - y0) or 1
        moved.append((x + (y1 - y0) / length * shift, y - (x1 - x0) / length * shift))
    return tuple(moved)


@lru_cache(maxsize=64)
def ball(diameter_px: float, glass: bool) -> Sprite:
    """A French knot, or a bead when it is of glass, centred on the laying point."""
    canvas = _Canvas(((0, 0),), diameter_px)
    for step in range(_STEPS):
        share = step / (_STEPS - 1)
        value = round((64 if glass else 76) + (150 - 70) * share)
        size = diameter_px * (1 - share * 0.9)
        shift = -share * diameter_px * (0.16 if glass else 0.1)
        canvas.dot((shift, shift), size, value, hides=not step)
    if glass:
        canvas.dot(
            (diameter_px * 0.16,) * 2, diameter_px * 0.3, 150
        )  # light gathered at the far side
        canvas.dot((-diameter_px * 0.2,) * 2, diameter_px * 0.24, 236)  # glint
    else:
        canvas.coil(diameter_px)
    return canvas.sprite(diameter_px * 0.5)


class _Canvas:
    """Draws a sprite large, in the px of the picture with the laying point as 0,0."""

    def __init__(self, reach: tuple[Vector, ...], width_px: float) -> None:
        pad = ceil(width_px) + 2
        left, top = (min(0, *(ceil(d) - 1 for d in side)) - pad for side in zip(*reach))
        right, bottom = (max(0, *(ceil(d) for d in side)) + pad for side in zip(*reach))
        self.offset = (left, top)
        size = ((right - left) * _FINE, (bottom - top) * _FINE)
        self._light, self._cover = Image.new("L", size, _EDGE), Image.new("L", size)
        self._on_light, self._on_cover = ImageDraw.Draw(self._light), ImageDraw.Draw(self._cover)

    def _at(self, point: Vector) -> Vector:
        return (point[0] - self.offset[0]) * _FINE, (point[1] - self.offset[1]) * _FINE

    def dot(self, at: Vector, diameter: float, light: int, hides: bool = False) -> None:
        (x, y), r = self._at(at), diameter / 2 * _FINE
        self._on_light.ellipse((x - r, y - r, x + r, y + r), fill=light)
        if hides:
            self._on_cover.ellipse((x - r, y - r, x + r, y + r), fill=255)

    def _bar(self, start: Vector, end: Vector, width: float, light: int, hides: bool) -> None:
        ends, thick = (*self._at(start), *self._at(end)), max(1, round(width * _FINE))
        self._on_light.line(ends, fill=light, width=thick)
        if hides:
            self._on_cover.line(ends, fill=255, width=thick)
        for point in (start, end):
            self.dot(point, width, light, hides)

    def path(self, points: tuple[Vector, ...], wide: float, braid: bool) -> None:
        """A round thread along a path, with glints where it is a braid."""
        for step in range(_STEPS):
            share = step / (_STEPS - 1)
            light = round(_EDGE + (_CREST - _EDGE) * share)
            lift = -wide * 0.14 * share  # towards the light
            lifted = [(x + lift, y + lift) for x, y in points]
            for start, end in zip(lifted, lifted[1:]):
                self._bar(start, end, wide * (1 - share * 0.85), light, hides=not step)
        for x, y in points[::2] if braid else ():
            self.dot((x - wide * 0.1, y - wide * 0.1), wide * 0.45, _GLINT)

    def strand(
        self,
        start: Vector,
        end: Vector,
        along: Vector,
        across: Vector,
        wide: float,
        glints: int | None = None,
    ) -> None:
        """A round thread that dives into the cloth at both ends, with the slant of its twist; a braid
        has facets instead, and glints that begin with the one of this number."""
        length = hypot(end[0] - start[0], end[1] - start[1])

        def on(far: float, aside: float) -> Vector:
            return (
                start[0] + along[0] * far + across[0] * aside,
                start[1] + along[1] * far + across[1] * aside,
            )

        for step in range(_STEPS):
            share = step / (_STEPS - 1)
            dive, lift = wide * (0.1 + 0.5 * share), wide * 0.2 * share
            light = round(_EDGE + (_CREST - _EDGE) * share)
            thick = wide * (1 - share * 0.85)
            self._bar(on(dive, lift), on(length - dive, lift), thick, light, hides=not step)
        turns = max(1, round(length / (wide * (1.1 if glints is None else 0.8))))
        for turn in range(turns):
            if glints is not None:
                middle, side = (turn + 0.5) / turns * length, 1 if turn % 2 else -1
                self.dot(on(middle, -side * wide * 0.28), wide * 0.34, _FACET)
                if (turn + glints) % 3 < 2:
                    self.dot(on(middle, side * wide * 0.12), wide * 0.5, _GLINT)
                continue
            middle = (turn + 0.5) / turns * length
            low, high = on(middle - wide * 0.35, -wide * 0.4), on(middle + wide * 0.35, wide * 0.4)
            self._on_light.line(
                (*self._at(low), *self._at(high)), _EDGE + 20, max(1, round(wide * 0.1 * _FINE))
            )

    def coil(self, diameter: float) -> None:
        """The turns of thread round a French knot."""
        for share in (0.32, 0.72):
            (x, y), r = self._at((0, 0)), diameter / 2 * share * _FINE
            thick = max(1, round(diameter * 0.06 * _FINE))
            self._on_light.arc((x - r, y - r, x + r, y + r), 20, 250, _EDGE - 4, thick)

    def sprite(self, depth_px: float) -> Sprite:
        light, cover = self._light.reduce(_FINE), self._cover.reduce(_FINE)
        fall = max(1, round(depth_px * 0.35))
        shadow = Image.new("L", cover.size)
        shadow.paste(cover, (fall, fall))
        shadow = shadow.filter(ImageFilter.GaussianBlur(max(0.6, depth_px * 0.3)))
        return Sprite(light, cover, shadow.point(_SHADED), self.offset)


_SHADED = [value * _SHADOW // 255 for value in range(256)]
