"""Words on a picture: set in the project's own faces, broken into lines, never wider than their room."""

from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from io import BytesIO

from PIL import ImageDraw, ImageFont

LEADING = 1.22
_FONTS = files("packetgen") / "fonts"
# Letters of further languages lie in a file of their own; these few of that range do not.
_IN_MAIN_FILE = frozenset("ıŒœʼˆ˚˜")


@lru_cache(maxsize=128)
def _font(name: str, size_px: int) -> ImageFont.FreeTypeFont:
    data = BytesIO((_FONTS / name).read_bytes())
    return ImageFont.truetype(data, size_px, layout_engine=ImageFont.Layout.BASIC)


def _is_further(letter: str) -> bool:
    latin = "\u0100" <= letter < "\u0300" or "\u1e00" <= letter < "\u1f00"
    return latin and letter not in _IN_MAIN_FILE


@dataclass(frozen=True)
class Face:
    """One face at one size. `further` is its file for letters beyond western Europe."""

    main: str
    further: str
    size_px: int

    def _runs(self, text: str) -> list[tuple[str, ImageFont.FreeTypeFont]]:
        runs: list[tuple[str, ImageFont.FreeTypeFont]] = []
        for letter in text:
            font = _font(self.further if _is_further(letter) else self.main, self.size_px)
            if runs and runs[-1][1] is font:
                runs[-1] = (runs[-1][0] + letter, font)
            else:
                runs.append((letter, font))
        return runs

    def width(self, text: str) -> float:
        return sum(font.getlength(run) for run, font in self._runs(text))

    @property
    def line_px(self) -> int:
        return round(self.size_px * LEADING)

    def broken(self, text: str, room_px: float) -> list[str]:
        """Lines no wider than the room; a word that is wider by itself is broken between letters."""
        lines = [""]
        for word in text.split():
            longer = f"{lines[-1]} {word}".strip()
            if self.width(longer) <= room_px:
                lines[-1] = longer
                continue
            if lines[-1]:
                lines.append("")
            for letter in word:
                if lines[-1] and self.width(lines[-1] + letter) > room_px:
                    lines.append("")
                lines[-1] += letter
        return lines

    def keeps_words_whole(self, text: str, room_px: float) -> bool:
        return all(self.width(word) <= room_px for word in text.split())

    def write(
        self, draw: ImageDraw.ImageDraw, left: float, baseline: float, text: str, ink: str | int
    ) -> None:
        for run, font in self._runs(text):
            draw.text((left, baseline), run, fill=ink, font=font, anchor="ls")
            left += font.getlength(run)
