"""Bare cloth with its weave, as light (see `picture_surface`)."""

from functools import lru_cache

from PIL import Image, ImageDraw, ImageStat

from packetgen.model import Weave
from packetgen.render.picture_surface import NEUTRAL, grain, together
from packetgen.render.picture_thread import Layers, thread

_FINE = 4
_AIDA_THREADS = 4  # fine threads that make one block, seen from the front: chosen by eye
_RELIEF = 0.55  # of the light that thread itself would have
_UNEVEN = {Weave.AIDA: 2, Weave.EVENWEAVE: 3, Weave.LINEN: 8}  # light, either way


def weave_light(
    weave: Weave, over: int, px_per_cell: int, cells: tuple[int, int], seed: int = 1
) -> Image.Image:
    """The weave of `cells` columns and rows of cloth, each cell over `over` threads (or blocks)."""
    size = (cells[0] * px_per_cell, cells[1] * px_per_cell)
    tile = _weave_tile(weave, over, px_per_cell)
    cloth = Image.new("L", size)
    for y in range(0, size[1], tile.height):
        for x in range(0, size[0], tile.width):
            cloth.paste(tile, (x, y))
    thread_px = px_per_cell / over
    depth = _UNEVEN[weave]
    return together(
        cloth,
        grain(size, seed, depth, (thread_px * 9, thread_px)),
        grain(size, seed + 1, depth, (thread_px, thread_px * 9)),
        grain(size, seed + 2, 2, (px_per_cell * 12, px_per_cell * 12)),
    )


@lru_cache(maxsize=16)
def _weave_tile(weave: Weave, over: int, px_per_cell: int) -> Image.Image:
    """Two by two cells, which repeat without a seam."""
    side = 2 * px_per_cell * _FINE
    threads = 2 * over * (_AIDA_THREADS if weave is Weave.AIDA else 1)
    pitch = side / threads
    layers = Layers((0, 0, 0), Image.new("L", (side, side), 84))
    thick = pitch * (0.95 if weave is Weave.AIDA else 0.84)
    reach = pitch * 1.3
    for upright in (False, True):
        run = (0.0, reach) if upright else (reach, 0.0)
        sprite = thread(run, thick, 1, (0,), 0)
        for row in range(-1, threads + 1):
            for column in range(-1, threads + 1):
                if (row + column) % 2 == upright:
                    middle = ((column + 0.5) * pitch, (row + 0.5) * pitch)
                    layers.lay(sprite, (middle[0] - run[0] / 2, middle[1] - run[1] / 2), (0, 0, 0))
    if weave is Weave.AIDA:
        _holes(layers.light, side / (2 * over))
    # A cloth's colour is given as it is seen, with the shade between its threads: the mean stays neutral.
    mean = ImageStat.Stat(layers.light).mean[0]
    light = layers.light.point([round(NEUTRAL - 1 + (v - mean) * _RELIEF) for v in range(256)])
    return light.reduce(_FINE)


def _holes(light: Image.Image, block: float) -> None:
    """The hole at every corner of an aida block, and the furrows between blocks."""
    draw, side = ImageDraw.Draw(light, "L"), light.width
    count, radius, furrow = round(side / block), block * 0.13, max(1, round(block * 0.05))
    for index in range(count + 1):
        at = index * block
        draw.line((at, 0, at, side), fill=100, width=furrow)
        draw.line((0, at, side, at), fill=100, width=furrow)
    for row in range(count + 1):
        for column in range(count + 1):
            x, y = column * block, row * block
            draw.ellipse((x - radius, y - radius, x + radius, y + radius), fill=8)
            draw.ellipse((x - radius * 0.3, y - radius * 0.1, x + radius, y + radius), fill=32)
