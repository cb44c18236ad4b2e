"""The picture of a pattern that is sold: the mounted piece on its bench, from which no chart can be read.

What is sold is the chart, so a public picture must look like the needlework without giving it away.
The design is softened over SOFT_CELLS and then kept as one colour for every SHOWN_CELLS square: fewer
than half as many colours as the chart has stitches. Both lose detail for good, and nothing later puts it
back. What is left is worked again in crosses of that larger size, so that the picture shows real thread
and weave, and yet no stitch of it is a stitch of the design. Every size of the picture is made from the
same few colours, so that several of them together tell no more than one.
"""

from collections import Counter
from collections.abc import Sequence
from math import ceil, hypot
from random import Random

from PIL import Image, ImageChops, ImageFilter

from packetgen.model import FinishingPiece, Pattern
from packetgen.reckon.colour import channels, lab, mix
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.render.picture_bench import FINE, hang, painted, scene, wall
from packetgen.render.picture_cloth import weave_light
from packetgen.render.picture_surface import lit, noise, rounded_edge, throw_shadow, together
from packetgen.render.picture_thread import Layers, thread
from packetgen.render.picture_trim import trim_layers
from packetgen.render.stitched_picture import stitched_layers

SOFT_CELLS = 0.7  # standard deviation of the softening
SHOWN_CELLS = 1.5  # side of a cross in the picture, in cells of the chart
TILT_DEGREES = 1.8  # anticlockwise: magnets are never set quite straight
_CHART_PX = 8  # a cell of the chart while it is softened
_CROSS_PX = 24  # a shown cross, before the picture is brought to its size
# Softened cover, of 255, from which a cross or at least a half stitch is shown: chosen by eye.
_FULL_COVER, _HALF_COVER = 125, 62


def bench(piece: FinishingPiece, width_px: int) -> Image.Image:
    """The finishing piece, painted and empty."""
    return painted(piece, width_px)


def mounted_public(figures: Figures, piece: FinishingPiece, width_px: int) -> Image.Image:
    """The softened design, mounted, at the true scale of the model's cloth where it fits on the panel."""
    fit = figures.cloths[0].fit
    middle_mm = (fit.at_mm[0] + fit.card.width_mm / 2, fit.at_mm[1] + fit.card.height_mm / 2)
    px_per_mm = scene(piece, width_px * FINE).px_per_mm
    return painted(piece, width_px, mounted(figures, piece, px_per_mm), middle_mm)


def gathering(
    all_figures: Sequence[Figures], piece: FinishingPiece, width_px: int, height_px: int
) -> Image.Image:
    """The first three mounted designs of a series side by side on the wall, to one scale."""
    shown = all_figures[: len(_PLACES)]
    canvas = wall((width_px * FINE, height_px * FINE))
    places = _PLACES[len(shown) - 1] if shown else ()
    largest_mm = max((_longer_mm(f) for f in shown), default=1)
    px_per_mm = min(canvas.size) * _SHARE_OF_ROOM[len(shown) - 1] / largest_mm
    for figures, (x, y) in zip(shown, places):
        hang(
            canvas,
            mounted(figures, piece, px_per_mm),
            (canvas.width * x, canvas.height * y),
            5 * px_per_mm,
        )
    return canvas.reduce(FINE)


# Middles of one, two and three designs, and the larger side of the largest, as shares of the picture.
_PLACES = (
    ((0.5, 0.5),),
    ((0.34, 0.3), (0.64, 0.72)),
    ((0.28, 0.26), (0.73, 0.33), (0.47, 0.77)),
)
_SHARE_OF_ROOM = (0.78, 0.5, 0.42)


def mounted(figures: Figures, piece: FinishingPiece, px_per_mm: float) -> Image.Image:
    """RGBA: the padded design with its trim, a little tilted, on nothing."""
    on = figures.cloths[0]
    card = on.fit.card
    card_px = (round(card.width_mm * px_per_mm), round(card.height_mm * px_per_mm))
    trim_light, trim_mask = trim_layers(piece.trim, card_px, px_per_mm)
    edge = (trim_light.width - card_px[0]) // 2
    trim_light = together(trim_light, noise(trim_light.size, 3, 5))
    trim_rgb = channels(_trim_colour(figures.pattern, on))
    whole = lit(Image.new("RGB", trim_light.size, trim_rgb), trim_light)
    solid = Image.new("L", card_px, 255)
    throw_shadow(whole, solid, (edge, edge), 1.5 * px_per_mm, 0.6)
    face = shown_needlework(figures.pattern, on, piece.border_mm)
    face = face.resize(card_px, Image.Resampling.LANCZOS)
    whole.paste(lit(face, rounded_edge(solid, 3.5 * px_per_mm, 2.6)), (edge, edge))
    trim_mask.paste(solid, (edge, edge))
    whole.putalpha(trim_mask)
    return whole.rotate(TILT_DEGREES, Image.Resampling.BICUBIC, expand=True)


def shown_needlework(pattern: Pattern, on: OnCloth, border_mm: float) -> Image.Image:
    """The card's face: the softened design worked again in crosses of SHOWN_CELLS."""
    colour, cover = softened(pattern, on, border_mm)
    columns, rows = cover.size
    side, rng = float(_CROSS_PX), Random(4)
    cloth = weave_light(on.option.cloth.weave, on.option.over, _CROSS_PX, cover.size)
    layers = Layers(channels(on.option.colour.hex), cloth)
    for run, start_y, least in (((side, side), 0, _FULL_COVER), ((side, -side), 1, _HALF_COVER)):
        for y in range(rows):
            for x in range(columns):
                sprite = thread(run, 0.25 * side, 2, (0, 1), rng.randrange(5))
                share = cover.getpixel((x, y))
                if share >= least:
                    # Only thread counts for a cross's colour, so bare cloth must not darken it.
                    rgb = tuple(min(255, v * 255 // share) for v in colour.getpixel((x, y)))
                    layers.lay(sprite, (x * side, (y + start_y) * side), rgb)
    return layers.lit()


def softened(pattern: Pattern, on: OnCloth, border_mm: float) -> tuple[Image.Image, Image.Image]:
    """(colour of thread weighed by its cover, cover): one px is one shown cross of the card's face."""
    border = border_mm / on.cell_mm
    margin = ceil(border + 4 * SOFT_CELLS)
    fine = stitched_layers(pattern, on.option, _CHART_PX, margin)
    spare = (margin - border) * _CHART_PX
    box = (spare, spare, fine.cover.width - spare, fine.cover.height - spare)
    crosses = tuple(
        max(1, round((side - 2 * spare) / _CHART_PX / SHOWN_CELLS)) for side in fine.cover.size
    )
    soft = ImageFilter.GaussianBlur(SOFT_CELLS * _CHART_PX)
    weighed = ImageChops.multiply(fine.colour, Image.merge("RGB", (fine.cover,) * 3))
    colour, cover = (
        layer.filter(soft).resize(crosses, Image.Resampling.BOX, box)
        for layer in (weighed, fine.cover)
    )
    return colour, cover


def _longer_mm(figures: Figures) -> float:
    card = figures.cloths[0].fit.card
    return max(card.width_mm, card.height_mm)


def _trim_colour(pattern: Pattern, on: OnCloth) -> str:
    """The thread that colours the design most, a little paled; with none, the cloth's colour deepened."""
    cloth = on.option.colour.hex
    used = Counter("".join(pattern.grid.rows))
    first = pattern.thread_sets[0].id
    seen = []
    for line in pattern.key:
        thread_hex = line.threads[first][0].hex
        _, a, b = lab(thread_hex)
        seen.append((used[line.mark] * hypot(a, b), thread_hex))
    weight, strongest = max(seen, default=(0, cloth))
    return mix(strongest, cloth, 0.25) if weight else mix(cloth, "#6b6257", 0.3)
