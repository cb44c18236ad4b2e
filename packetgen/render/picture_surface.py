"""Surfaces of things: their uneven grain, their rounded edges and the shadows they throw, as light.

Light is a layer of its own: NEUTRAL leaves a colour as it is, less darkens it, more brightens it
(`lit`). Everything here is the same on every machine. Light falls from the upper left.
"""

from random import Random

from PIL import Image, ImageChops, ImageFilter, ImageOps

NEUTRAL = 128
_SHADE = (48, 38, 34)


def lit(colour: Image.Image, light: Image.Image) -> Image.Image:
    """The colour layer under its light: below NEUTRAL multiplied, above it screened."""
    return ImageChops.hard_light(colour, Image.merge("RGB", (light,) * 3))


def together(*lights: Image.Image) -> Image.Image:
    """Light upon light."""
    total = lights[0]
    for light in lights[1:]:
        total = ImageChops.add(total, light, 1, -NEUTRAL)
    return total


def noise(size: tuple[int, int], seed: int, depth: int) -> Image.Image:
    """One px, one value: NEUTRAL give or take `depth`."""
    values = Random(seed).randbytes(size[0] * size[1])
    steps = [NEUTRAL + round((value / 127.5 - 1) * depth) for value in range(256)]
    return Image.frombytes("L", size, values).point(steps)


def grain(size: tuple[int, int], seed: int, depth: int, streak: tuple[float, float]) -> Image.Image:
    """Noise drawn out to spots of `streak` px."""
    small = (max(2, round(size[0] / streak[0])), max(2, round(size[1] / streak[1])))
    return noise(small, seed, depth).resize(size, Image.Resampling.BICUBIC)


def shifted(layer: Image.Image, by: int) -> Image.Image:
    """Moved down and to the right; what is left open is black."""
    moved = Image.new(layer.mode, layer.size)
    moved.paste(layer, (by, by))
    return moved


def rounded_edge(mask: Image.Image, reach_px: float, softness: float) -> Image.Image:
    """Light on the upper left edges of a shape and shade on the lower right ones.

    `softness` 1 is the strongest edge, larger is fainter. Beyond the mask there is nothing.
    """
    room = round(reach_px) + 1
    soft = ImageOps.expand(mask, room).filter(ImageFilter.GaussianBlur(reach_px / 2))
    step = max(1, round(reach_px / 2))
    edge = ImageChops.subtract(shifted(soft, -step), shifted(soft, step), softness * 2, NEUTRAL)
    return ImageOps.crop(edge, room)


def throw_shadow(
    ground: Image.Image, mask: Image.Image, at: tuple[int, int], fall_px: float, strength: float
) -> None:
    """Darken `ground` below and to the right of a shape with its corner `at`, `fall_px` before it."""
    room = round(shadow_reach_px(fall_px))
    roomy = ImageOps.expand(mask, room)
    for fall, blur in ((0.25, 0.3), (1.0, 1.0)):
        shadow = shifted(roomy, max(1, round(fall_px * fall)))
        shadow = shadow.filter(ImageFilter.GaussianBlur(fall_px * blur))
        shadow = shadow.point([round(value * strength / 2) for value in range(256)])
        left, top = at[0] - room, at[1] - room
        ground.paste(_SHADE, (left, top, left + shadow.width, top + shadow.height), shadow)


def shadow_reach_px(fall_px: float) -> float:
    """How far from a shape its shadow can be seen at all."""
    return fall_px * 4 + 1


def tilted_light(size: tuple[int, int], depth: int) -> Image.Image:
    """A little lighter at the upper left than at the lower right, by `depth` either way."""
    down = Image.linear_gradient("L").resize(size)
    right = Image.linear_gradient("L").rotate(90).resize(size)
    falling = ImageChops.add(down, right, 2)
    return falling.point([NEUTRAL + depth - round(value / 127.5 * depth) for value in range(256)])
