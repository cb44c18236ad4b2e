"""The public web site of a series: every file of it, from the figures and finished pictures.

All links are relative, so that the site works from a folder and under any path; no page asks
another host for anything. Templates stand in `site/` of the templates folder, one a page.
"""

from functools import cache
from importlib.resources import files

import jinja2
from markupsafe import Markup

from packetgen.model import Series
from packetgen.reckon.figures import Figures
from packetgen.render.calendar_file import CALENDAR_FILE, calendar_file
from packetgen.render.faces import font_css, font_files
from packetgen.render.site_head import INDEX, Head, head, list_head, lost_head
from packetgen.render.site_pattern import pattern_view
from packetgen.render.site_pictures import (
    PIECE_SHARE,
    SERIES_SHARE,
    Picture,
    SitePictures,
    pattern_share,
    picture_files,
)
from packetgen.render.site_piece import PIECE_PAGE, piece_view
from packetgen.render.site_series import series_view
from packetgen.render.site_year import place_in_year
from packetgen.render.templates import fill

__all__ = ["Picture", "SitePictures", "series_list_files", "site_files"]

_FONTS = "fonts/"
_SYMBOLS = "symbols.ttf"  # the charts' own; a public page has none


def site_files(
    series: Series,
    figures: tuple[Figures, ...],
    pictures: SitePictures,
    env: jinja2.Environment,
) -> dict[str, bytes]:
    """The whole site of one series: path in it, with forward slashes → contents of the file."""
    release = series.release
    year = tuple(sorted(figures, key=lambda f: place_in_year(f.pattern.occasion, release)))
    patterns = tuple(pattern_view(one, series, pictures) for one in year)
    piece = piece_view(series, year, pictures)
    view = series_view(series, patterns)

    def page(template: str, about: Head, **facts: object) -> bytes:
        return _page(env, template, about, series=view, piece=piece, **facts)

    alt = f"{series.title}: {series.tagline}"
    pages = {
        INDEX: page("series", head(series, INDEX, "", series.tagline, SERIES_SHARE, alt)),
        PIECE_PAGE: page(
            "piece",
            head(series, PIECE_PAGE, piece.name, piece.about, PIECE_SHARE, piece.picture.alt),
        ),
        CALENDAR_FILE: calendar_file(series),
    }
    for before, pattern, after in zip((None, *patterns), patterns, (*patterns[1:], None)):
        share = pattern_share(pattern.id)
        about = head(series, pattern.href, pattern.title, pattern.about, share, pattern.picture.alt)
        pages[pattern.href] = page("pattern", about, pattern=pattern, before=before, after=after)
    lost = lost_head(series.title, series.address, SERIES_SHARE, alt)
    return pages | picture_files(pictures) | _furniture(env, lost)


def series_list_files(all_series: tuple[Series, ...], env: jinja2.Environment) -> dict[str, bytes]:
    """The page above several series, whose `site_files` each stand in a folder named by its id."""
    first = all_series[0]
    image, alt = f"{first.id}/{SERIES_SHARE}", f"{first.title}: {first.tagline}"
    about = list_head(tuple(series.title for series in all_series), image, alt)
    lost = lost_head(about.site_name, None, image, alt)
    return {INDEX: _page(env, "list", about, all_series=all_series)} | _furniture(env, lost)


def _page(env: jinja2.Environment, template: str, about: Head, **facts: object) -> bytes:
    return fill(env, f"site/{template}.html", head=about, **facts).encode()


def _furniture(env: jinja2.Environment, lost: Head) -> dict[str, bytes]:
    """What every site has: style, faces and their licence, icon, the page for a wrong address."""
    style = fill(env, "site/site.css")
    fonts = {_FONTS + name: data for name, data in font_files().items() if name != _SYMBOLS}
    return fonts | {
        _FONTS + "OFL.txt": _font_licence(),
        "site.css": f"{font_css(_FONTS, symbols=False)}\n{style}\n".encode(),
        "favicon.svg": fill(env, "site/favicon.svg").encode(),
        # Served for any path at all, so that it may lean on no other file.
        "404.html": _page(env, "404", lost, style=Markup(style)),
    }


@cache
def _font_licence() -> bytes:
    return (files("packetgen") / "fonts" / "OFL.txt").read_bytes()
