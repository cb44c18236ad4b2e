"""Words on a picture: set in the project's faces or the author's, broken into lines, in their room."""

import unicodedata
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from io import BytesIO

from PIL import ImageDraw, ImageFont, features

from packetgen.model.look import FontFile

LEADING = 1.22
_FONTS = files("packetgen") / "fonts"
# Letters of further languages lie in a file of their own; these few of that range do not.
_IN_MAIN_FILE = frozenset("ıŒœʼˆ˚˜")
_NO_LETTER = "\U0010ffff"  # no face has one: it is drawn as a missing letter is
_FROM_RIGHT = ("R", "AL")  # bidirectional classes of letters, Unicode Standard Annex 9

Font = ImageFont.FreeTypeFont


@lru_cache(maxsize=256)
def _font(file: str | FontFile, size_px: int, from_right: bool = False) -> Font:
    """One that sets letters from the right needs an engine that knows how they join and turn."""
    engine = ImageFont.Layout.RAQM if from_right else ImageFont.Layout.BASIC
    data = file.data if isinstance(file, FontFile) else (_FONTS / file).read_bytes()
    return ImageFont.truetype(BytesIO(data), size_px, layout_engine=engine)


@lru_cache(maxsize=4096)
def _draws(file: str | FontFile, letter: str) -> bool:
    """Whether a face has a letter. A blank, or a sign that only steers others, needs none."""
    if letter.isspace() or unicodedata.category(letter) == "Cf":
        return True
    if isinstance(file, FontFile):
        return ord(letter) in file.letters
    font = _font(file, 40)
    drawn, missing = font.getmask(letter), font.getmask(_NO_LETTER)
    return drawn.getbbox() is not None and bytes(drawn) != bytes(missing)


def _stretches(text: str) -> list[tuple[bool, str]]:
    """(whether it runs from the right, stretch) in reading order, for a line that itself runs from the left.

    What has no direction of its own, such as a blank, runs from the right only between letters that do.
    """
    stretches: list[tuple[bool, str]] = []
    undecided = ""

    def add(from_right: bool, more: str) -> None:
        if more and stretches and stretches[-1][0] is from_right:
            stretches[-1] = (from_right, stretches[-1][1] + more)
        elif more:
            stretches.append((from_right, more))

    for letter in text:
        kind = unicodedata.bidirectional(letter)
        if kind in _FROM_RIGHT:
            if stretches and stretches[-1][0]:
                add(True, undecided + letter)
            else:
                add(False, undecided)
                add(True, letter)
            undecided = ""
        elif kind == "L":
            add(False, undecided + letter)
            undecided = ""
        elif kind == "NSM" and not undecided and stretches:
            add(stretches[-1][0], letter)
        else:
            undecided += letter
    add(False, undecided)
    return stretches


def _is_further(letter: str) -> bool:
    latin = "\u0100" <= letter < "\u0300" or "\u1e00" <= letter < "\u1f00"
    return latin and letter not in _IN_MAIN_FILE


@dataclass(frozen=True)
class Face:
    """One face at one size. `further` is its file for letters beyond western Europe; `own` is the
    author's face, which comes before both."""

    main: str
    further: str
    size_px: int
    own: FontFile | None = None

    def can_write(self, text: str) -> bool:
        """Whether every letter can be drawn, and in its order.

        A stretch that runs from the right needs one face for all of it, and an engine that orders it.
        """
        return all(
            features.check("raqm") and self._whole(stretch) is not None
            if from_right
            else all(self._file(letter) is not None for letter in stretch)
            for from_right, stretch in _stretches(text)
        )

    def _file(self, letter: str) -> str | FontFile | None:
        if self.own and _draws(self.own, letter):
            return self.own
        file = self.further if _is_further(letter) else self.main
        return file if _draws(file, letter) else None

    def _whole(self, text: str) -> str | FontFile | None:
        """The one face that has every letter."""
        faces = (self.own, self.main, self.further)
        return next((f for f in faces if f and all(_draws(f, c) for c in text)), None)

    def _runs(self, text: str) -> list[tuple[str, Font]]:
        runs: list[tuple[str, Font]] = []
        for from_right, stretch in _stretches(text):
            if from_right:
                font = _font(self._whole(stretch) or self.main, self.size_px, True)
                runs.append((stretch, font))
                continue
            for letter in stretch:
                font = _font(self._file(letter) or self.main, self.size_px)
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
