"""The painted finishing piece on a calm wall."""

from dataclasses import dataclass
from functools import lru_cache
from math import ceil, floor

from PIL import Image, ImageDraw, ImageFilter

from packetgen.colour import channels
from packetgen.model import FinishingPiece, Outline, Part
from packetgen.reckon.paint import front_hex
from packetgen.render.picture_surface import (
    grain,
    lit,
    noise,
    rounded_edge,
    shadow_reach_px,
    throw_shadow,
    tilted_light,
    together,
)

_WALL = "#d8cdbd"
_ROOM_SHARE = 0.10  # wall left and right of the piece, of its width
_SANDED_MM = 1.0  # corners are sanded round
_STANDS_OFF_MM = 5  # card, wadding and magnets


@dataclass(frozen=True)
class Scene:
    """Where millimetres of the finishing piece lie in a picture `width_px` wide."""

    width_px: int
    height_px: int
    px_per_mm: float
    left_mm: float  # of the picture, in the piece's own millimetres
    top_mm: float

    def px(self, x_mm: float, y_mm: float) -> tuple[float, float]:
        return (x_mm - self.left_mm) * self.px_per_mm, (y_mm - self.top_mm) * self.px_per_mm


def scene(piece: FinishingPiece, width_px: int, height_px: int | None = None) -> Scene:
    """The whole piece with wall all round: as high as that takes, or in the middle of a picture so high."""
    corners = [corner for part in piece.parts for corner in _placed(part)] or list(piece.panel)
    left, right = min(x for x, _ in corners), max(x for x, _ in corners)
    top, bottom = min(y for _, y in corners), max(y for _, y in corners)
    room = (right - left) * _ROOM_SHARE
    wide_mm, high_mm = right - left + 2 * room, bottom - top + 2 * room
    px_per_mm = width_px / wide_mm
    if height_px is None:
        return Scene(width_px, ceil(high_mm * px_per_mm), px_per_mm, left - room, top - room)
    px_per_mm = min(px_per_mm, height_px / high_mm)
    beside_mm = (width_px / px_per_mm - wide_mm) / 2
    above_mm = (height_px / px_per_mm - high_mm) / 2
    return Scene(width_px, height_px, px_per_mm, left - room - beside_mm, top - room - above_mm)


def painted(
    piece: FinishingPiece,
    width_px: int,
    mounted: Image.Image | None = None,
    middle_mm: tuple[float, float] = (0, 0),
) -> Image.Image:
    """The piece with its paint, and `mounted` on it: an RGBA picture.

    It hangs with its middle at `middle_mm` on the board of the panel and behind every part that is
    listed after that board: pots stand in front.
    """
    whole, before = _stages(piece, width_px)
    if not mounted:
        return whole
    view = scene(piece, width_px)
    middle, fall = view.px(*middle_mm), _STANDS_OFF_MM * view.px_per_mm
    canvas = before.copy()
    hang(canvas, mounted, middle, fall)
    # Only what lies near the design looks otherwise than on the empty piece, so only that is painted.
    changed = _round(middle, mounted.size, fall)
    front = _board_of_the_panel(piece) + 1
    for index, part in enumerate(piece.parts[front:], front):
        if _meet(changed, _reach(view, part)):
            _paint(canvas, view, part, index)
    result = whole.copy()
    result.paste(canvas.crop(changed), changed[:2])
    return result


Box = tuple[int, int, int, int]


def _round(middle: tuple[float, float], size: tuple[int, int], fall_px: float) -> Box:
    """Whole px round a thing and its shadow."""
    reach = ceil(shadow_reach_px(fall_px)) + 1
    left, top = (floor(m - n / 2) - reach for m, n in zip(middle, size))
    return left, top, left + size[0] + 2 * reach + 1, top + size[1] + 2 * reach + 1


def _reach(view: Scene, part: Part) -> Box:
    xs, ys = zip(*(view.px(*corner) for corner in _placed(part)))
    middle = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    rim = 4 * _SANDED_MM * view.px_per_mm + 2
    size = ceil(max(xs) - min(xs) + rim), ceil(max(ys) - min(ys) + rim)
    return _round(middle, size, _fall_px(view, part))


def _meet(one: Box, other: Box) -> bool:
    return all(one[axis] < other[axis + 2] and other[axis] < one[axis + 2] for axis in (0, 1))


def _fall_px(view: Scene, part: Part) -> float:
    return part.thickness_mm * 0.6 * view.px_per_mm


def empty(piece: FinishingPiece, width_px: int, height_px: int) -> Image.Image:
    """The piece with its paint, whole, in a picture of that size."""
    return _painted(piece, scene(piece, width_px, height_px))[0]


@lru_cache(maxsize=1)
def _stages(piece: FinishingPiece, width_px: int) -> tuple[Image.Image, Image.Image]:
    """The whole piece, and as it is when only what lies behind the design is painted."""
    return _painted(piece, scene(piece, width_px))


def _painted(piece: FinishingPiece, view: Scene) -> tuple[Image.Image, Image.Image]:
    canvas = wall((view.width_px, view.height_px))
    front = _board_of_the_panel(piece) + 1
    before = canvas
    for index, part in enumerate(piece.parts):
        if index == front:
            before = canvas.copy()
        _paint(canvas, view, part, index)
    return canvas, before if front < len(piece.parts) else canvas


def hang(
    canvas: Image.Image, thing: Image.Image, middle: tuple[float, float], fall_px: float
) -> None:
    """Put an RGBA picture on `canvas`, with the shadow of a thing that stands off by `fall_px`."""
    corner = (round(middle[0] - thing.width / 2), round(middle[1] - thing.height / 2))
    throw_shadow(canvas, thing.getchannel("A"), corner, fall_px, 0.6)
    canvas.paste(thing, corner, thing)


def _placed(part: Part) -> Outline:
    return tuple((x + part.at_mm[0], y + part.at_mm[1]) for x, y in part.outline)


def _board_of_the_panel(piece: FinishingPiece) -> int:
    """The first part whose box holds the panel, else the last part."""
    xs, ys = [x for x, _ in piece.panel], [y for _, y in piece.panel]
    for index, part in enumerate(piece.parts):
        corners = _placed(part)
        if (
            min(x for x, _ in corners) <= min(xs)
            and max(x for x, _ in corners) >= max(xs)
            and min(y for _, y in corners) <= min(ys)
            and max(y for _, y in corners) >= max(ys)
        ):
            return index
    return len(piece.parts) - 1


def wall(size: tuple[int, int]) -> Image.Image:
    """Limewash in a soft light."""
    colour = Image.new("RGB", size, channels(_WALL))
    patch = size[0] / 9
    light = together(tilted_light(size, 13), noise(size, 5, 1), grain(size, 6, 3, (patch, patch)))
    return lit(colour, light)


def _paint(canvas: Image.Image, view: Scene, part: Part, seed: int) -> None:
    """One board: its shadow, its paint with the strokes of the brush, its edges."""
    mm = view.px_per_mm
    corners = [view.px(*corner) for corner in _placed(part)]
    left, top = (floor(min(c[axis] for c in corners)) for axis in (0, 1))
    right, bottom = (ceil(max(c[axis] for c in corners)) for axis in (0, 1))
    room = ceil(2 * _SANDED_MM * mm)
    at, size = (left - room, top - room), (right - left + 2 * room, bottom - top + 2 * room)
    mask = Image.new("L", size)
    ImageDraw.Draw(mask).polygon([(x - at[0], y - at[1]) for x, y in corners], fill=255)
    mask = mask.filter(ImageFilter.GaussianBlur(_SANDED_MM * mm)).point(_SANDED)
    throw_shadow(canvas, mask, at, _fall_px(view, part), 0.55)
    if part.seen is None or part.seen.paint.put_on_with == "brush":
        stroke = (60 * mm, 0.7 * mm) if size[0] >= size[1] else (0.7 * mm, 60 * mm)
        strokes = grain(size, 40 + seed, 5, stroke)
    else:
        strokes = noise(size, 40 + seed, 2)
    light = together(
        strokes,
        grain(size, 60 + seed, 3, (30 * mm, 30 * mm)),
        rounded_edge(mask, 1.6 * mm, 2.2),
        tilted_light(size, 7),
    )
    canvas.paste(lit(Image.new("RGB", size, channels(front_hex(part))), light), at, mask)


# A blurred outline cut back to an edge: straight runs stay, corners come out round.
_SANDED = [min(255, max(0, (value - 96) * 4)) for value in range(256)]
