"""The faces that pages are set in: files the project ships, so that a page looks the same everywhere,
and before them the author's own, where a series has some."""

import io
from collections.abc import Mapping
from functools import cache, lru_cache
from importlib.resources import files

from fontTools.ttLib import TTFont

from packetgen.chart.symbols import FAMILY
from packetgen.model import FontFile, Look

# Family, weight, style → file.
_Face = tuple[str, int, str, str]
# Role in a look → weight, style, the project's own file.
_ROLES: Mapping[str, tuple[int, str, str]] = {
    "text": (400, "normal", "text-regular.ttf"),
    "text_italic": (400, "italic", "text-italic.ttf"),
    "text_bold": (700, "normal", "text-bold.ttf"),
    "heading": (600, "normal", "heading.ttf"),
}
_TEXT, _HEADING = "Packet Text", "Packet Heading"
# Letters of further languages lie in files of their own, which a reader loads only for such a letter.
_FURTHER: tuple[_Face, ...] = (
    (f"{_TEXT} Further", 400, "normal", "text-regular-ext.ttf"),
    (f"{_TEXT} Further", 700, "normal", "text-bold-ext.ttf"),
    (f"{_HEADING} Further", 600, "normal", "heading-ext.ttf"),
)
_SERIES_TEXT, _SERIES_HEADING = "Series Text", "Series Heading"
_SYMBOLS: _Face = (FAMILY, 400, "normal", "symbols.ttf")
_PLAIN_LOOK = Look()


@cache
def font_files() -> Mapping[str, bytes]:
    """File name → bytes of every face of the project, its own symbols included."""
    return {name: _own_file(name) for name in (*_own_names(), _SYMBOLS[-1])}


def series_font_files(look: Look) -> dict[str, bytes]:
    """File name → bytes of the author's own faces."""
    return {_file_name(role, font): font.data for role, font in _given(look).items()}


def web_font_files(look: Look) -> dict[str, bytes]:
    """File name → WOFF2 of every face that the public pages of a series may ask for."""
    given = series_font_files(look)
    return _own_web_files() | {_web_name(name): _woff2(data) for name, data in given.items()}


def font_css(prefix: str, look: Look = _PLAIN_LOOK) -> str:
    """`@font-face` rules for a packet; `prefix` stands before each file name."""
    return "\n".join(_rule(face, f"{prefix}{face[-1]}") for face in (*_faces(look), _SYMBOLS))


def web_font_css(prefix: str, look: Look = _PLAIN_LOOK) -> str:
    """`@font-face` rules for the site: WOFF2, and further letters only where a page has some."""
    return "\n".join(
        _rule(face, prefix + _web_name(face[-1]), _range(face[-1]) if face in _FURTHER else "")
        for face in _faces(look)
    )


def text_families(look: Look) -> str:
    """The families of plain words, as a CSS value, the author's own first."""
    own = any(role in _given(look) for role in _ROLES if role != "heading")
    return _quoted((_SERIES_TEXT,) * own + (_TEXT, f"{_TEXT} Further"))


def heading_families(look: Look) -> str:
    """The families of titles and headings, as a CSS value, the author's own first."""
    own = look.faces.heading is not None
    return _quoted((_SERIES_HEADING,) * own + (_HEADING, f"{_HEADING} Further"))


def _given(look: Look) -> dict[str, FontFile]:
    """Role → the author's own face."""
    return {role: font for role in _ROLES if (font := getattr(look.faces, role)) is not None}


def _faces(look: Look) -> tuple[_Face, ...]:
    """The author's own families, whole, and the project's behind them for letters that they lack.

    What the author's text lacks of bold and italic is the project's: the PDF engine would leave bold
    words plain, and browsers would thicken them.
    """
    given = _given(look)
    faces: list[_Face] = []
    for series, own, roles in (
        (_SERIES_TEXT, _TEXT, [role for role in _ROLES if role != "heading"]),
        (_SERIES_HEADING, _HEADING, ["heading"]),
    ):
        if any(role in given for role in roles):
            for role in roles:
                weight, style, file = _ROLES[role]
                name = _file_name(role, given[role]) if role in given else file
                faces.append((series, weight, style, name))
        faces += [(own, *_ROLES[role]) for role in roles]
    return (*faces, *_FURTHER)


def _own_names() -> tuple[str, ...]:
    return (*(name for *_, name in _ROLES.values()), *(name for *_, name in _FURTHER))


def _file_name(role: str, font: FontFile) -> str:
    return f"series-{role.replace('_', '-')}{font.suffix}"


def _web_name(name: str) -> str:
    return f"{name.rpartition('.')[0]}.woff2"


def _rule(face: _Face, url: str, letters: str = "") -> str:
    family, weight, style, _ = face
    only = f"; unicode-range: {letters}" if letters else ""
    return (
        f'@font-face {{ font-family: "{family}"; font-weight: {weight}; font-style: {style}; '
        f'src: url("{url}"); font-display: swap{only} }}'
    )


def _quoted(families: tuple[str, ...]) -> str:
    return ", ".join(f'"{family}"' for family in families)


@cache
def _own_web_files() -> dict[str, bytes]:
    """The project's faces are compressed for good, which takes long."""
    folder = files("packetgen") / "fonts"
    return {name: (folder / name).read_bytes() for name in map(_web_name, _own_names())}


@lru_cache(maxsize=64)
def _woff2(data: bytes) -> bytes:
    """The font compressed for the web (W3C, WOFF File Format 2.0); its dates stay as they are."""
    font = TTFont(io.BytesIO(data), recalcTimestamp=False)
    font.flavor = "woff2"
    packed = io.BytesIO()
    font.save(packed)
    return packed.getvalue()


@cache
def _range(name: str) -> str:
    """The letters of a file of further letters, as a CSS `unicode-range`."""
    main = _letters(name.replace("-ext", ""))
    codes = sorted(_letters(name) - main)
    runs: list[list[int]] = []
    for code in codes:
        if runs and runs[-1][1] == code - 1:
            runs[-1][1] = code
        else:
            runs.append([code, code])
    return ", ".join(f"U+{a:X}" if a == b else f"U+{a:X}-{b:X}" for a, b in runs)


def _letters(name: str) -> set[int]:
    return set(TTFont(io.BytesIO(_own_file(name)), lazy=True).getBestCmap())


def _own_file(name: str) -> bytes:
    return (files("packetgen") / "fonts" / name).read_bytes()
