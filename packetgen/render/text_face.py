"""Measures and encodes text for what is painted directly: which glyphs, and how wide they run."""

from functools import cache
from io import BytesIO

from fontTools.ttLib import TTFont

from packetgen.render.faces import font_files

TEXT_FACE = "text-regular.ttf"


class Face:
    """One face file. Lengths are in ems."""

    def __init__(self, file_name: str) -> None:
        self.data = font_files()[file_name]
        font = TTFont(BytesIO(self.data))
        self.per_em: int = font["head"].unitsPerEm
        self.name = font["name"].getDebugName(6).replace(" ", "-")
        self.box = tuple(
            getattr(font["head"], edge) * 1000 // self.per_em
            for edge in ("xMin", "yMin", "xMax", "yMax")
        )
        self.ascent = font["hhea"].ascent * 1000 // self.per_em
        self.descent = font["hhea"].descent * 1000 // self.per_em
        order = font.getGlyphOrder()
        number = {name: index for index, name in enumerate(order)}
        self.glyphs = {chr(code): number[name] for code, name in font.getBestCmap().items()}
        self.advances: list[int] = [font["hmtx"][name][0] for name in order]

    def width(self, text: str) -> float:
        """How far `text` runs; a letter that the face lacks counts as none."""
        run = sum(self.advances[self.glyphs[char]] for char in text if char in self.glyphs)
        return run / self.per_em

    def encoded(self, text: str) -> str:
        """The glyph numbers of `text` as a PDF hex string."""
        return (
            "<" + "".join(f"{self.glyphs[char]:04x}" for char in text if char in self.glyphs) + ">"
        )


@cache
def face(file_name: str) -> Face:
    """The face in that file; read once."""
    return Face(file_name)


def broken(text: str, size: float, width: float, of: Face) -> tuple[str, ...]:
    """`text` in lines no wider than `width` where words allow it; `size` in the unit of `width`."""
    lines = [""]
    for word in text.split():
        longer = f"{lines[-1]} {word}".strip()
        if lines[-1] and of.width(longer) * size > width:
            lines.append(word)
        else:
            lines[-1] = longer
    return tuple(lines)
