"""The picture that stands beside a shared link: a public picture, and words beside or below it.

The sizes of the three shapes (`SHARE_SIZES_PX`) are those that readers of the Open Graph protocol and
people who post pictures commonly ask for (common practice, no source: https://ogp.me/ names no size).
"""

from collections.abc import Sequence
from dataclasses import dataclass

from PIL import Image, ImageDraw, ImageOps

from packetgen.colour import channels
from packetgen.model.look import Look
from packetgen.render.picture_letters import Face
from packetgen.render.picture_surface import NEUTRAL
from packetgen.render.picture_thread import Layers, thread
from packetgen.render.site_pictures import SHARE_SIZES_PX

_LEFT, _TOP, _GAP, _APART = 60, 56, 34, 44
_CROSS_PX, _CROSSES = 18, 9
# Sizes that are tried, the largest first; below the picture of a standing shape a line is longer.
_TITLE_SIZES, _LINE_SIZES = range(82, 19, -2), (30, 27, 24, 21, 18)
_LARGER_LINE_SIZES = (40, 36, *_LINE_SIZES)
_HEADING = ("heading.ttf", "heading-ext.ttf")
_BOLD = ("text-bold.ttf", "text-bold-ext.ttf")
_PLAIN_LOOK = Look()
_PLAIN = ("text-regular.ttf", "text-regular-ext.ttf")
# The picture takes the right of a lying shape, and the top of the others.
PICTURE_PX = {"wide": (580, 630), "square": (1080, 800), "upright": (1080, 980)}


@dataclass(frozen=True)
class _Sheet:
    """Where things stand on a shape, in px."""

    shape: str

    @property
    def size(self) -> tuple[int, int]:
        return SHARE_SIZES_PX[self.shape]

    @property
    def picture_at(self) -> tuple[int, int]:
        return (self.size[0] - PICTURE_PX[self.shape][0], 0)

    @property
    def words_top(self) -> int:
        lying = self.shape == "wide"
        return _TOP if lying else PICTURE_PX[self.shape][1] + _TOP // 2

    @property
    def room(self) -> tuple[int, int]:
        lying = self.shape == "wide"
        width = self.size[0] - _LEFT - (PICTURE_PX[self.shape][0] + _APART if lying else _LEFT)
        return width, self.size[1] - self.words_top - (_TOP if lying else _TOP // 2)


def share_picture(
    title: str,
    lines: Sequence[str],
    picture: Image.Image,
    shape: str = "wide",
    look: Look = _PLAIN_LOOK,
) -> Image.Image:
    """`title` large, then `lines` (the first of several in bold), with the middle of `picture`.

    The words are made smaller until all of them stand in their room. A title that would not even do
    so in the smallest size ends with '…'. Words that no face can write are left out.
    """
    sheet, palette = _Sheet(shape), look.light
    canvas = Image.new("RGB", sheet.size, channels(palette.paper))
    shown = ImageOps.fit(picture.convert("RGB"), PICTURE_PX[shape], Image.Resampling.LANCZOS)
    canvas.paste(shown, sheet.picture_at)
    words = _Words(look, sheet.room, _LINE_SIZES if shape == "wide" else _LARGER_LINE_SIZES)
    title_face, title_lines, below = words.fitted(title, lines)
    draw = ImageDraw.Draw(canvas)
    y = sheet.words_top + (sheet.room[1] - _height(title_face, title_lines, below)) // 2
    for text in title_lines:
        title_face.write(draw, _LEFT, y + title_face.size_px, text, palette.heading)
        y += title_face.line_px
    y += _GAP // 2
    canvas.paste(*_row_of_crosses((_LEFT, y), palette.accent))
    y += _CROSS_PX + _GAP
    for face, text, ink in below:
        face.write(draw, _LEFT, y + face.size_px * 0.8, text, ink)
        y += face.line_px
    return canvas


def title_size_px(title: str, lines: Sequence[str], shape: str, look: Look = _PLAIN_LOOK) -> int:
    """How large `share_picture` sets the title."""
    sizes = _LINE_SIZES if shape == "wide" else _LARGER_LINE_SIZES
    return _Words(look, _Sheet(shape).room, sizes).fitted(title, lines)[0].size_px


Below = list[tuple[Face, str, str]]


@dataclass(frozen=True)
class _Words:
    look: Look
    room: tuple[int, int]
    line_sizes: tuple[int, ...]

    def fitted(self, title: str, lines: Sequence[str]) -> tuple[Face, list[str], Below]:
        """The largest title with which everything fits, then the smallest with its end cut off."""
        title = title if self._heading(20).can_write(title) else ""
        for whole_words in (True, False):
            for size in _TITLE_SIZES:
                for line_size in self.line_sizes if size <= 44 else self.line_sizes[:2]:
                    below = self._below(lines, line_size)
                    face = self._heading(size)
                    title_lines = face.broken(title, self.room[0])
                    if whole_words and not face.keeps_words_whole(title, self.room[0]):
                        continue
                    if _height(face, title_lines, below) <= self.room[1]:
                        return face, title_lines, below
        face = self._heading(_TITLE_SIZES[-1])
        below = self._below(lines, self.line_sizes[-1])[:6]
        title_lines = face.broken(title, self.room[0] - face.width("…"))
        while len(title_lines) > 1 and _height(face, title_lines, below) > self.room[1]:
            title_lines = [*title_lines[:-2], title_lines[-2] + "…"]
        return face, title_lines, below

    def _heading(self, size: int) -> Face:
        return Face(*_HEADING, size, self.look.faces.heading)

    def _below(self, lines: Sequence[str], size: int) -> Below:
        faces, palette, result = self.look.faces, self.look.light, []
        for index, line in enumerate(lines):
            leads = index == 0 and len(lines) > 1
            face = Face(*_BOLD, size, faces.text_bold) if leads else Face(*_PLAIN, size, faces.text)
            ink = palette.ink if leads else palette.quiet
            if face.can_write(line):
                result += [(face, part, ink) for part in face.broken(line, self.room[0])]
        return result


def _height(title_face: Face, title_lines: list[str], below: Below) -> int:
    words = len(title_lines) * title_face.line_px + sum(face.line_px for face, *_ in below)
    return words + _GAP // 2 + _CROSS_PX + _GAP


def _row_of_crosses(
    at: tuple[int, int], hex_colour: str
) -> tuple[Image.Image, tuple[int, int], Image.Image]:
    """A short row of stitches instead of a rule: what `paste` takes."""
    side = float(_CROSS_PX)
    layers = Layers((0, 0, 0), Image.new("L", (_CROSS_PX * (_CROSSES + 1), _CROSS_PX * 2), NEUTRAL))
    for run, start_y in (((side, side), 0.0), ((side, -side), side)):
        sprite = thread(run, 0.2 * side, 2, (0, 1), 0)
        for index in range(_CROSSES):
            layers.lay(sprite, (side * (index + 0.5), side * 0.5 + start_y), channels(hex_colour))
    return layers.lit(), (at[0] - _CROSS_PX // 2, at[1] - _CROSS_PX // 2), layers.cover
