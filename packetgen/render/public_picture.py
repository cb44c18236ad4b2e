"""The picture of a pattern that is sold: the mounted piece on its bench, from which no chart can be read.

What is shown is worked from another chart than the one that is sold (`picture_retold`). Every size and
every crop of it shows the same crosses, so that several of them together tell no more than one. A pattern
whose chart is given away is shown as it is.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import hypot

from PIL import Image

from packetgen.colour import channels, lab, mix
from packetgen.model import FinishingPiece, Pattern
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.render.picture_bench import empty, hang, painted, scene, wall
from packetgen.render.picture_retold import retold
from packetgen.render.picture_surface import lit, noise, rounded_edge, throw_shadow, together
from packetgen.render.picture_trim import trim_layers
from packetgen.render.picture_window import bordered
from packetgen.render.stitched_picture import stitched_layers

TILT_DEGREES = 1.8  # anticlockwise: magnets are never set quite straight
_CROSS_PX = 20  # a shown cross, before the picture is brought to its size
_ROOM = 1.34  # of a close view, for the larger side of the card that it holds


@dataclass(frozen=True)
class Face:
    """What is seen of a card: `pattern` has a chart that covers all of it, border and all."""

    pattern: Pattern
    on: OnCloth
    trim_hex: str

    @property
    def size(self) -> tuple[int, int]:
        return self.pattern.grid.width, self.pattern.grid.height

    @cached_property
    def needlework(self) -> Image.Image:
        """The whole card as it is stitched, larger than any picture shows it."""
        return stitched_layers(self.pattern, self.on.option, _CROSS_PX, 0).lit()


def face(figures: Figures, piece: FinishingPiece) -> Face:
    """The other chart; of a pattern whose chart is given away its own."""
    pattern, on = figures.pattern, figures.cloths[0]
    if "chart" in pattern.given_away:
        shown = bordered(pattern, round(piece.border_mm / on.cell_mm))
    else:
        shown = retold(pattern, on, piece.border_mm).pattern
    return Face(shown, on, pattern.trim_hex or _trim_colour(pattern, on))


def bench(piece: FinishingPiece, width_px: int, height_px: int | None = None) -> Image.Image:
    """The finishing piece, painted and empty: as high as it is, or whole in a picture so high."""
    return painted(piece, width_px) if height_px is None else empty(piece, width_px, height_px)


def mounted_public(shown: Face, piece: FinishingPiece, width_px: int) -> Image.Image:
    """The design, mounted, at the true scale of the model's cloth where it fits on the panel."""
    px_per_mm = scene(piece, width_px).px_per_mm
    return painted(piece, width_px, mounted(shown, piece, px_per_mm), middle_mm(shown.on))


def middle_mm(on: OnCloth) -> tuple[float, float]:
    """Where the middle of the mounted card hangs, in the piece's own millimetres."""
    fit = on.fit
    return fit.at_mm[0] + fit.card.width_mm / 2, fit.at_mm[1] + fit.card.height_mm / 2


def close_box(
    on: OnCloth, piece: FinishingPiece, size_px: tuple[int, int], shape: tuple[int, int]
) -> tuple[float, float, float, float]:
    """The part of a mounted picture that shows its card large, in the proportions of `shape`."""
    view = scene(piece, size_px[0])
    middle = view.px(*middle_mm(on))
    card = [side * view.px_per_mm * _ROOM for side in (on.fit.card.width_mm, on.fit.card.height_mm)]
    scale = max(card[0] / shape[0], card[1] / shape[1])
    scale = min(scale, size_px[0] / shape[0], size_px[1] / shape[1])
    return _within(middle, (shape[0] * scale, shape[1] * scale), size_px)


def _within(
    middle: tuple[float, float], size: tuple[float, float], room: tuple[int, int]
) -> tuple[float, float, float, float]:
    """A box of this size, or as much of it as there is room for, as near to `middle` as that allows."""
    # The dust of floating point can make a box that fills the room a little larger.
    wide, high = (min(s, r) for s, r in zip(size, room))
    left, top = (min(max(0, m - s / 2), r - s) for m, s, r in zip(middle, (wide, high), room))
    return left, top, min(left + wide, room[0]), min(top + high, room[1])


def gathering(
    faces: Sequence[Face], piece: FinishingPiece, width_px: int, height_px: int
) -> Image.Image:
    """The first three mounted designs of a series side by side on the wall, to one scale."""
    canvas = wall((width_px, height_px))
    for shown, at, px_per_mm in hung(faces, (width_px, height_px)):
        hang(canvas, mounted(shown, piece, px_per_mm), at, 5 * px_per_mm)
    return canvas


def hung(
    faces: Sequence[Face], size_px: tuple[int, int]
) -> list[tuple[Face, tuple[float, float], float]]:
    """(face, middle in px, px for a millimetre) of every design that a gathering of this size shows."""
    shown = faces[:MOST_GATHERED]
    if not shown:
        return []
    lying = size_px[0] > 1.2 * size_px[1]
    places = (_PLACES_LYING if lying else _PLACES)[len(shown) - 1]
    largest_mm = max(_longer_mm(one) for one in shown)
    px_per_mm = min(size_px) * (_ROOM_LYING if lying else _ROOM_EACH)[len(shown) - 1] / largest_mm
    return [
        (one, (size_px[0] * x, size_px[1] * y), px_per_mm) for one, (x, y) in zip(shown, places)
    ]


# Middles of one, two and three designs, and the larger side of the largest, as shares of the picture: of
# one about as wide as high, and of one that is much wider.
_PLACES = (
    ((0.5, 0.5),),
    ((0.34, 0.3), (0.64, 0.72)),
    ((0.28, 0.26), (0.73, 0.33), (0.47, 0.77)),
)
MOST_GATHERED = len(_PLACES)
_ROOM_EACH = (0.78, 0.5, 0.42)
_PLACES_LYING = (
    ((0.5, 0.5),),
    ((0.28, 0.47), (0.72, 0.53)),
    ((0.185, 0.45), (0.5, 0.56), (0.815, 0.45)),
)
_ROOM_LYING = (0.86, 0.6, 0.4)


def mounted(shown: Face, piece: FinishingPiece, px_per_mm: float) -> Image.Image:
    """RGBA: the padded design with its trim, a little tilted, on nothing."""
    card = shown.on.fit.card
    card_px = (round(card.width_mm * px_per_mm), round(card.height_mm * px_per_mm))
    trim_light, trim_mask = trim_layers(piece.trim, card_px, px_per_mm)
    edge = (trim_light.width - card_px[0]) // 2
    trim_light = together(trim_light, noise(trim_light.size, 3, 3))
    trim_rgb = channels(shown.trim_hex)
    whole = lit(Image.new("RGB", trim_light.size, trim_rgb), trim_light)
    solid = Image.new("L", card_px, 255)
    throw_shadow(whole, solid, (edge, edge), 1.5 * px_per_mm, 0.6)
    needlework = shown.needlework.resize(card_px, Image.Resampling.LANCZOS)
    whole.paste(lit(needlework, rounded_edge(solid, 3.5 * px_per_mm, 2.6)), (edge, edge))
    trim_mask.paste(solid, (edge, edge))
    whole.putalpha(trim_mask)
    return whole.rotate(TILT_DEGREES, Image.Resampling.BICUBIC, expand=True)


def _longer_mm(shown: Face) -> float:
    card = shown.on.fit.card
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
