"""The public web site of a series: every file of it, from the figures and finished pictures.

All links are relative, so that the site works from a folder and under any path; no page asks
another host for anything. Templates stand in `site/` of the templates folder, one a page.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from types import MappingProxyType

import jinja2

from packetgen.model import Listed, Series
from packetgen.reckon.alt_text import series_alt, share_alt
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import Standing
from packetgen.render import json_ld
from packetgen.render.address import INDEX, in_full
from packetgen.render.calendar_file import CALENDAR_FILE, calendar_file
from packetgen.render.feed import FEED_FILE, feed
from packetgen.render.share_tags import tags
from packetgen.render.site_corrections import corrections_view
from packetgen.render.site_furniture import TICKS_FILE, furniture, page, ticks
from packetgen.render.site_given import given_files
from packetgen.render.site_head import Head, head, list_head, lost_head
from packetgen.render.site_nav import (
    CORRECTIONS_PAGE,
    DESIGNERS_PAGE,
    NOTICES_PAGE,
    PIECE_PAGE,
    SUPPLIES_PAGE,
    navigation,
)
from packetgen.render.site_pattern import PatternView, pattern_view
from packetgen.render.site_pictures import (
    OF_PIECE,
    OF_SERIES,
    SitePictures,
    picture_files,
)
from packetgen.render.site_piece import PieceView, piece_view
from packetgen.render.site_series import SeriesView, series_view
from packetgen.render.site_supplies import supplies_view
from packetgen.render.site_year import in_order
from packetgen.render.sitemap import ROBOTS_FILE, SITEMAP_FILE, robots, search_files

__all__ = ["series_list_files", "site_files"]

_NO_PACKETS: Mapping[str, Mapping[str, bytes]] = MappingProxyType({})
_NO_PARTS: Mapping[str, bytes] = MappingProxyType({})


# What a page tells of, where that is more than itself.
_TOLD_AS = {DESIGNERS_PAGE: json_ld.designer_list, NOTICES_PAGE: json_ld.notice_blog}


@dataclass(frozen=True)
class _Page:
    """One page of the site: where it stands, the template that makes it, and what else that is given."""

    path: str
    template: str
    head: Head
    facts: Mapping[str, object] = field(default_factory=dict)


def site_files(
    standing: Standing,
    pictures: SitePictures,
    env: jinja2.Environment,
    packets: Mapping[str, Mapping[str, bytes]] = _NO_PACKETS,
    parts: Mapping[str, bytes] = _NO_PARTS,
) -> dict[str, bytes]:
    """The whole site of one series as it stands: path in it, with forward slashes → contents of the file.

    `packets` holds by pattern id the files of those that are given away, and `parts` the templates of the finishing
    piece's shaped parts, as far as they have been set.
    """
    series, release = standing.series, standing.series.release
    year = in_order(standing.figures, lambda one: one.pattern.occasion, release)
    given = {one.pattern.id: packets.get(one.pattern.id, {}) for one in year}
    patterns = tuple(pattern_view(one, series, pictures, given[one.pattern.id]) for one in year)
    view = series_view(standing, patterns, pictures)
    piece = piece_view(series, year, pictures, parts)
    pages = (
        *_pages_of_series(standing, view, piece, year),
        *_pages_of_patterns(series, year, patterns),
        *_pages_of_teasers(standing, view),
    )
    every_page = {"series": view, "piece": piece, "nav": navigation(series)}
    made = {
        one.path: page(env, one.template, one.head, here=one.path, **every_page, **one.facts)
        for one in pages
    }
    lost = lost_head(series.title, series.address, OF_SERIES, series_alt(series), series.look)
    given_away: dict[str, bytes] = {}
    for one in year:
        given_away |= given_files(one, given[one.pattern.id])
    return (
        made
        | given_away
        | dict(parts)
        | {CALENDAR_FILE: calendar_file(series), FEED_FILE: feed(standing), TICKS_FILE: ticks(env)}
        | search_files(standing, made)
        | picture_files(pictures)
        | furniture(env, lost, series.look)
    )


def _pages_of_series(
    standing: Standing, view: SeriesView, piece: PieceView, year: tuple[Figures, ...]
) -> Iterator[_Page]:
    """The first page, the finishing piece, and the pages that tell of all patterns together."""
    series, alt = standing.series, series_alt(standing.series)
    of_series = json_ld.series_work(standing)
    first = head(series, INDEX, "", series.tagline, OF_SERIES, alt, of_series)
    yield _Page(INDEX, "series", first)
    piece_alt = share_alt(piece.name, piece.picture.alt)
    of_piece = json_ld.piece_work(series.finish, series)
    about_piece = head(series, PIECE_PAGE, piece.title, piece.about, OF_PIECE, piece_alt, of_piece)
    yield _Page(PIECE_PAGE, "piece", about_piece)
    supplies, corrections = supplies_view(standing, year), corrections_view(year)
    for path, template, title, about, facts in (
        (
            SUPPLIES_PAGE,
            "supplies",
            "Supplies",
            f"Everything to buy for {series.title}, on one list to print and tick off.",
            {"supplies": supplies},
        ),
        (
            DESIGNERS_PAGE,
            "designers",
            "Designers",
            f"Who draws {series.title}, what each has drawn, and how she sells it.",
            {},
        ),
        (
            NOTICES_PAGE,
            "notices",
            "Notices",
            f"News, open calls and prize draws of {series.title}.",
            {},
        ),
        (
            CORRECTIONS_PAGE,
            "corrections",
            "Corrections",
            f"What has been put right in the patterns of {series.title}, and the newest issue of each.",
            {"corrections": corrections},
        ),
    ):
        told = _TOLD_AS.get(path)
        thing = told(series, title, about) if told else None
        yield _Page(path, template, head(series, path, title, about, OF_SERIES, alt, thing), facts)


def _pages_of_patterns(
    series: Series, year: tuple[Figures, ...], patterns: tuple[PatternView, ...]
) -> Iterator[_Page]:
    """Each leads to the ones before and after it in the year."""
    neighbours = zip((None, *patterns), (*patterns[1:], None))
    for figures, one, (before, after) in zip(year, patterns, neighbours):
        issue = json_ld.issued(figures.pattern, series, tags(figures.pattern, series))
        thing = json_ld.pattern_work(figures, series, issue)
        alt = share_alt(one.title, one.picture.alt)
        about = head(series, one.href, one.title, one.about, one.id, alt, thing, issue)
        facts = {"pattern": one, "before": before, "after": after}
        yield _Page(one.href, "pattern", about, facts)


def _pages_of_teasers(standing: Standing, view: SeriesView) -> Iterator[_Page]:
    series = standing.series
    awaited = {one.pattern_id: one for one in standing.awaited}
    for one in view.teasers:
        alt = share_alt(one.title, one.picture.alt)
        thing = json_ld.teaser_work(awaited[one.id], series)
        about = head(series, one.href, one.title, one.about, one.id, alt, thing)
        yield _Page(one.href, "teaser", about, {"teaser": one})


def series_list_files(
    first: Series, all_series: Sequence[Listed], env: jinja2.Environment
) -> dict[str, bytes]:
    """The page above several series, whose `site_files` each stand in a folder named by its id; in the look
    of the first."""
    titles = tuple(series.title for series in all_series)
    about = list_head(titles, first.id, OF_SERIES, series_alt(first), first.look)
    lost = replace(lost_head(about.site_name, None, OF_SERIES, "", first.look), images=about.images)
    maps = tuple(in_full(one.address, SITEMAP_FILE) for one in all_series if one.address)
    return {
        INDEX: page(env, "list", about, all_series=all_series),
        ROBOTS_FILE: robots(maps),
    } | furniture(env, lost, first.look)
