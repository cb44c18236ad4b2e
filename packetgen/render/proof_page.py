"""An editor's review as one page that needs no other file: the author's own, with a picture of each design."""

import re
from base64 import b64encode
from collections.abc import Iterable
from dataclasses import dataclass

from jinja2 import Environment
from markupsafe import Markup

from packetgen.chart.page_chart import shape_path
from packetgen.chart.shapes_paper import CELL
from packetgen.diagnostics import Problem
from packetgen.faults.whys import WHYS
from packetgen.model import Look, Pattern
from packetgen.reckon.review import Chapter, Praise, Review
from packetgen.render.faces import web_font_files
from packetgen.render.look_style import site_style
from packetgen.render.picture_file import png_bytes, size_of
from packetgen.render.stitched_picture import MARGIN_CELLS, stitched
from packetgen.render.templates import fill

_THUMBNAIL_PX, _MOST_BYTES = 460, 90_000
_FEWEST_PX_PER_CELL = 2
_FONT = re.compile(r'url\("([^"]+)"\)')


@dataclass(frozen=True)
class Found:
    """One problem: what is wrong as a sentence, what would be right, and where."""

    wrong: str
    right: str
    where: str


@dataclass(frozen=True)
class Alike:
    """All problems of one kind in a chapter, and why they come."""

    code: str
    cause: str
    found: tuple[Found, ...]


@dataclass(frozen=True)
class Thumbnail:
    source: Markup  # an address that holds the picture itself
    width_px: int
    height_px: int
    alt: str
    size: str  # the chart's, in stitches


@dataclass(frozen=True)
class SymbolView:
    """A symbol with the name of its colour, drawn black in a cell of CELL units."""

    path: str
    colour: str


@dataclass(frozen=True)
class PraiseView:
    words: str
    symbols: tuple[SymbolView, ...]


@dataclass(frozen=True)
class ChapterView:
    anchor: str
    title: str
    faults: tuple[Alike, ...]
    advice: tuple[Alike, ...]
    praise: tuple[PraiseView, ...]
    aside: tuple[str, ...]
    counts: tuple[int, int, int]  # of faults, advice, praise
    thumbnail: Thumbnail | None


def proof_page(
    review: Review, title: str, content_folder: str, look: Look, env: Environment
) -> bytes:
    """The page, in a series' own look. Raises TemplateFault."""
    chapters = [
        _view(chapter, number, content_folder) for number, chapter in enumerate(review.chapters, 1)
    ]
    return fill(
        env,
        "proof/report.html",
        title=title,
        review=review,
        chapters=chapters,
        style=_style(look),
        cell=CELL,
    ).encode()


def _view(chapter: Chapter, number: int, content_folder: str) -> ChapterView:
    return ChapterView(
        anchor=f"chapter-{number}",
        title=chapter.title,
        faults=_alike(chapter.faults, content_folder),
        advice=_alike(chapter.advice, content_folder),
        praise=tuple(map(_praise, chapter.praise)),
        aside=chapter.aside,
        counts=(len(chapter.faults), len(chapter.advice), len(chapter.praise)),
        thumbnail=_thumbnail(chapter.figures.pattern) if chapter.figures else None,
    )


def _praise(praise: Praise) -> PraiseView:
    symbols = tuple(SymbolView(shape_path(shape), colour) for shape, colour in praise.symbols)
    return PraiseView(praise.words, symbols)


def _alike(problems: Iterable[Problem], content_folder: str) -> tuple[Alike, ...]:
    """By kind, each kind where its first one stands."""
    by_code: dict[str, list[Found]] = {}
    for problem in problems:
        where = f"{content_folder}/{problem.place}"
        found = Found(_sentence(problem.wrong), _sentence(problem.right), where)
        by_code.setdefault(problem.code, []).append(found)
    return tuple(Alike(code, WHYS[code].cause, tuple(found)) for code, found in by_code.items())


def _sentence(words: str) -> str:
    """With a capital letter, unless it begins with a name of the file's own, and with an end."""
    first = words.split(" ", 1)[0]
    capital = words[:1].upper() + words[1:] if first.isalpha() else words
    return capital + ("" if words.rstrip("'\"’”").endswith((".", "?", "!", "…")) else ".")


def _thumbnail(pattern: Pattern) -> Thumbnail:
    cells = max(pattern.grid.width, pattern.grid.height) + 2 * MARGIN_CELLS
    picture = stitched(pattern, pattern.cloths[0], max(_FEWEST_PX_PER_CELL, _THUMBNAIL_PX // cells))
    picture.thumbnail((_THUMBNAIL_PX, _THUMBNAIL_PX))
    data = png_bytes(picture, _MOST_BYTES)
    return Thumbnail(
        _inline("image/png", data),
        *size_of(data),
        alt=f"{pattern.title}, stitched",
        size=f"{pattern.grid.width} × {pattern.grid.height} stitches",
    )


def _style(look: Look) -> Markup:
    """Colours and faces, the faces within it."""
    fonts = web_font_files(look)
    css = site_style("", look)
    return Markup(_FONT.sub(lambda font: f'url("{_inline("font/woff2", fonts[font[1]])}")', css))


def _inline(kind: str, data: bytes) -> Markup:
    """A file as an address (RFC 2397)."""
    return Markup(f"data:{kind};base64,{b64encode(data).decode()}")
