"""The faces that pages are set in: files the project ships, so that a page looks the same everywhere."""

from collections.abc import Mapping
from functools import cache
from importlib.resources import files

from packetgen.chart.font import FAMILY, build_symbol_font

# Role, weight, style → files; the second of a pair holds the letters of further languages.
_FACES = (
    ("Packet Text", 400, "normal", "text-regular.ttf"),
    ("Packet Text", 400, "italic", "text-italic.ttf"),
    ("Packet Text", 700, "normal", "text-bold.ttf"),
    ("Packet Text Further", 400, "normal", "text-regular-ext.ttf"),
    ("Packet Text Further", 700, "normal", "text-bold-ext.ttf"),
    ("Packet Heading", 600, "normal", "heading.ttf"),
    ("Packet Heading Further", 600, "normal", "heading-ext.ttf"),
)


@cache
def font_files() -> Mapping[str, bytes]:
    """File name → bytes of every face, the project's own symbols included."""
    folder = files("packetgen") / "fonts"
    shipped = {name: (folder / name).read_bytes() for *_, name in _FACES}
    return shipped | {"symbols.ttf": build_symbol_font()}


def font_css(prefix: str, symbols: bool = True) -> str:
    """`@font-face` rules; `prefix` stands before each file name."""
    faces = _FACES + (((FAMILY, 400, "normal", "symbols.ttf"),) if symbols else ())
    return "\n".join(
        f'@font-face {{ font-family: "{family}"; font-weight: {weight}; font-style: {style}; '
        f'src: url("{prefix}{name}"); font-display: swap }}'
        for family, weight, style, name in faces
    )
