"""The picture of a pattern that is sold: the mounted piece on its bench, from which no chart can be read.

What is sold is the chart, so a public picture must look like the needlework without giving it away.
The colours of the design are softened over SOFT_CELLS first: that is the one thing which keeps the chart
safe, and nothing later puts detail back. Then the softened colours are worked again, as crosses of
another size than the chart's, so that the picture shows real thread and weave and yet no stitch of it
stands where a stitch of the design stands.
"""

from math import ceil
from random import Random

from PIL import Image, ImageFilter

from packetgen.model import FinishingPiece, Pattern
from packetgen.reckon.colour import channels, difference, lab, mix
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.render.picture_bench import FINE, painted, scene
from packetgen.render.picture_cloth import weave_light
from packetgen.render.picture_surface import grain, lit, noise, rounded_edge, throw_shadow, together
from packetgen.render.picture_thread import Layers, thread
from packetgen.render.picture_trim import trim_layers, trim_width_mm
from packetgen.render.stitched_picture import stitched_layers

SOFT_CELLS = 1.45  # standard deviation of the softening
SHOWN_CELLS = 0.83  # side of a cross in the picture, in cells of the chart
TILT_DEGREES = 1.8  # anticlockwise: magnets are never set quite straight
_CHART_PX = 8  # a cell of the chart while it is softened
_CROSS_PX = 12  # a shown cross


def bench(piece: FinishingPiece, width_px: int) -> Image.Image:
    """The finishing piece, painted and empty."""
    return painted(piece, width_px)


def mounted_public(figures: Figures, piece: FinishingPiece, width_px: int) -> Image.Image:
    """The softened design, mounted, at the true scale of the model's cloth where it fits on the panel."""
    on = figures.cloths[0]
    card = on.fit.card
    middle = (on.fit.at_mm[0] + card.width_mm / 2, on.fit.at_mm[1] + card.height_mm / 2)
    px_per_mm = scene(piece, width_px * FINE).px_per_mm
    return painted(piece, width_px, _mounted(figures.pattern, on, piece, px_per_mm), middle)


def _mounted(pattern: Pattern, on: OnCloth, piece: FinishingPiece, px_per_mm: float) -> Image.Image:
    """RGBA: the padded design with its trim, tilted."""
    card_px = (round(on.fit.card.width_mm * px_per_mm), round(on.fit.card.height_mm * px_per_mm))
    trim_light, trim_mask = trim_layers(piece.trim, card_px, px_per_mm)
    edge = (trim_light.width - card_px[0]) // 2
    trim_light = together(trim_light, noise(trim_light.size, 3, 5))
    whole = lit(Image.new("RGB", trim_light.size, channels(_trim_colour(pattern, on))), trim_light)
    face_mask = Image.new("L", whole.size)
    face_mask.paste(255, (edge, edge, edge + card_px[0], edge + card_px[1]))
    throw_shadow(whole, face_mask, 1.5 * px_per_mm, 0.6)
    face = Image.new("RGB", whole.size)
    face.paste(shown_needlework(pattern, on, piece).resize(card_px, Image.Resampling.LANCZOS), (edge, edge))
    whole.paste(lit(face, rounded_edge(face_mask, 3.5 * px_per_mm, 2.6)), None, face_mask)
    trim_mask.paste(255, None, face_mask)
    whole.putalpha(trim_mask)
    return whole.rotate(TILT_DEGREES, Image.Resampling.BICUBIC, expand=True)


def softened(pattern: Pattern, on: OnCloth, border_mm: float) -> tuple[Image.Image, Image.Image]:
    """(colour, how much is stitched) of the card's face, both softened; _CHART_PX to a cell."""
    border = border_mm / on.cell_mm
    margin = ceil(border + 4 * SOFT_CELLS)
    colour = stitched_layers(pattern, on.option, _CHART_PX, margin).colour
    worked = Image.new("L", (pattern.grid.width + 2 * margin, pattern.grid.height + 2 * margin))
    for y, row in enumerate(pattern.grid.rows):
        for x, mark in enumerate(row):
            if mark != ".":
                worked.putpixel((x + margin, y + margin), 255)
    for part in pattern.fractions:
        worked.putpixel((part.column - 1 + margin, part.row - 1 + margin), 255)
    soft = ImageFilter.GaussianBlur(SOFT_CELLS * _CHART_PX)
    spare = (margin - border) * _CHART_PX
    box = (spare, spare, colour.width - spare, colour.height - spare)
    worked = worked.resize(colour.size, Image.Resampling.NEAREST).filter(soft)
    return _cut(colour.filter(soft), box), _cut(worked, box)


def _cut(layer: Image.Image, box: tuple[float, float, float, float]) -> Image.Image:
    return layer.resize((round(box[2] - box[0]), round(box[3] - box[1])), Image.Resampling.BICUBIC, box)


def shown_needlework(pattern: Pattern, on: OnCloth, piece: FinishingPiece) -> Image.Image:
    """The card's face: softened colours worked again in crosses of SHOWN_CELLS."""
    colour, worked = softened(pattern, on, piece.border_mm)
    crosses = tuple(round(side / _CHART_PX / SHOWN_CELLS) for side in colour.size)
    size = (crosses[0] * _CROSS_PX, crosses[1] * _CROSS_PX)
    colour = colour.resize(crosses, Image.Resampling.BOX).resize(size, Image.Resampling.NEAREST)
    cloth = weave_light(on.option.cloth.weave, on.option.over, _CROSS_PX, crosses)
    needlework = cloth.copy()
    needlework.paste(_crosses(cloth, crosses), None, worked.resize(size).point(_STITCHED))
    uneven = noise(crosses, 9, 4).resize(size, Image.Resampling.NEAREST)
    sheen = grain(size, 10, 4, (_CROSS_PX * 14, _CROSS_PX * 14))
    return lit(colour, together(needlework, uneven, sheen))


# Crosses show where more than half of the softened ground is stitched, with a short passage to bare cloth.
_STITCHED = [min(255, max(0, round((value / 255 - 0.3) / 0.3 * 255))) for value in range(256)]


def _crosses(cloth: Image.Image, count: tuple[int, int]) -> Image.Image:
    """Light of crosses all over this cloth."""
    layers = Layers(Image.new("RGB", cloth.size), cloth.copy())
    rng, side = Random(4), float(_CROSS_PX)
    for run, start_y in (((side, side), 0), ((side, -side), 1)):
        for row in range(count[1]):
            for column in range(count[0]):
                sprite = thread(run, 0.26 * side, 2, (0, 1), rng.randrange(5))
                layers.lay(sprite, (column * side, (row + start_y) * side), (0, 0, 0))
    return layers.light


def _trim_colour(pattern: Pattern, on: OnCloth) -> str:
    """The thread that is used most and stands out from the cloth, paled with the cloth's own colour."""
    cloth = on.option.colour.hex
    used = "".join(pattern.grid.rows)
    first = pattern.thread_sets[0].id
    seen = [
        (used.count(line.mark), line.threads[first][0].hex)
        for line in pattern.key
        if difference(lab(cloth), lab(line.threads[first][0].hex)) > 25
    ]
    return mix(max(seen)[1], cloth, 0.4) if seen else mix(cloth, "#6b6257", 0.3)
