"""The picture that stands beside a shared link: words on the left, a public picture on the right.

1200 × 630 px is the size that readers of the Open Graph protocol commonly ask for (common practice, no
source: https://ogp.me/ itself names no size).
"""

from collections.abc import Sequence

from PIL import Image, ImageDraw, ImageOps

from packetgen.reckon.colour import channels
from packetgen.render.picture_letters import Face
from packetgen.render.picture_surface import NEUTRAL
from packetgen.render.picture_thread import Layers, thread

SIZE_PX = (1200, 630)
PICTURE_PX = (580, 630)
_PAPER, _INK, _QUIET, _STITCH = "#faf6ec", "#33372f", "#5b5f52", "#4f7356"
_LEFT, _TOP, _GAP = 60, 56, 34
_ROOM = (SIZE_PX[0] - PICTURE_PX[0] - _LEFT - 44, SIZE_PX[1] - 2 * _TOP)
_CROSS_PX, _CROSSES = 18, 9
_TITLE_SIZES, _LINE_SIZES = range(82, 19, -2), (30, 27, 24, 21, 18)
_HEADING = ("heading.ttf", "heading-ext.ttf")
_BOLD = ("text-bold.ttf", "text-bold-ext.ttf")
_PLAIN = ("text-regular.ttf", "text-regular-ext.ttf")


def share_picture(title: str, lines: Sequence[str], picture: Image.Image) -> Image.Image:
    """`title` large, then `lines` (the first of several in bold), beside the middle of `picture`.

    The words are made smaller until all of them stand in their room. A title that would not even do
    so in the smallest size ends with '…'.
    """
    canvas = Image.new("RGB", SIZE_PX, channels(_PAPER))
    shown = ImageOps.fit(picture.convert("RGB"), PICTURE_PX, Image.Resampling.LANCZOS)
    canvas.paste(shown, (SIZE_PX[0] - PICTURE_PX[0], 0))
    title_face, title_lines, below = _fitted(title, lines)
    draw = ImageDraw.Draw(canvas)
    y = _TOP + (_ROOM[1] - _height(title_face, title_lines, below)) // 2
    for text in title_lines:
        title_face.write(draw, _LEFT, y + title_face.size_px, text, _INK)
        y += title_face.line_px
    y += _GAP // 2
    canvas.paste(*_row_of_crosses((_LEFT, y)))
    y += _CROSS_PX + _GAP
    for face, text, ink in below:
        face.write(draw, _LEFT, y + face.size_px * 0.8, text, ink)
        y += face.line_px
    return canvas


Below = list[tuple[Face, str, str]]


def _fitted(title: str, lines: Sequence[str]) -> tuple[Face, list[str], Below]:
    """The largest title with which everything fits, then the smallest with its end cut off."""
    for whole_words in (True, False):
        for size in _TITLE_SIZES:
            for line_size in _LINE_SIZES if size <= 44 else _LINE_SIZES[:2]:
                below = _below(lines, line_size)
                face = Face(*_HEADING, size)
                title_lines = face.broken(title, _ROOM[0])
                if whole_words and not face.keeps_words_whole(title, _ROOM[0]):
                    continue
                if _height(face, title_lines, below) <= _ROOM[1]:
                    return face, title_lines, below
    face, below = Face(*_HEADING, _TITLE_SIZES[-1]), _below(lines, _LINE_SIZES[-1])[:6]
    title_lines = face.broken(title, _ROOM[0] - face.width("…"))
    while len(title_lines) > 1 and _height(face, title_lines, below) > _ROOM[1]:
        title_lines = [*title_lines[:-2], title_lines[-2] + "…"]
    return face, title_lines, below


def _below(lines: Sequence[str], size: int) -> Below:
    result: Below = []
    for index, line in enumerate(lines):
        leads = index == 0 and len(lines) > 1
        face, ink = (Face(*_BOLD, size), _INK) if leads else (Face(*_PLAIN, size), _QUIET)
        result += [(face, part, ink) for part in face.broken(line, _ROOM[0])]
    return result


def _height(title_face: Face, title_lines: list[str], below: Below) -> int:
    words = len(title_lines) * title_face.line_px + sum(face.line_px for face, *_ in below)
    return words + _GAP // 2 + _CROSS_PX + _GAP


def _row_of_crosses(at: tuple[int, int]) -> tuple[Image.Image, tuple[int, int], Image.Image]:
    """A short row of stitches instead of a rule: what `paste` takes."""
    side = float(_CROSS_PX)
    layers = Layers((0, 0, 0), Image.new("L", (_CROSS_PX * (_CROSSES + 1), _CROSS_PX * 2), NEUTRAL))
    for run, start_y in (((side, side), 0.0), ((side, -side), side)):
        sprite = thread(run, 0.2 * side, 2, (0, 1), 0)
        for index in range(_CROSSES):
            layers.lay(sprite, (side * (index + 0.5), side * 0.5 + start_y), channels(_STITCH))
    return layers.lit(), (at[0] - _CROSS_PX // 2, at[1] - _CROSS_PX // 2), layers.cover
