"""What the first page of a series shows, and every page of it may ask for."""

from dataclasses import dataclass

from markupsafe import Markup

from packetgen.reckon.standing import Standing
from packetgen.render.calendar_file import CALENDAR_FILE
from packetgen.render.feed import FEED_FILE
from packetgen.render.site_designers import DesignerRow, designer_rows
from packetgen.render.site_notices import NoticeRow, NoticesView, latest_notice, notices_view
from packetgen.render.site_pattern import PatternView
from packetgen.render.site_pictures import SitePictures
from packetgen.render.site_teaser import TeaserView, teaser_views
from packetgen.render.site_text import counted, prose_under
from packetgen.render.site_year import Release, Swap, before_its_day, release, swaps


@dataclass(frozen=True)
class SeriesView:
    title: str
    tagline: str
    release: Release
    welcome: Markup
    patterns: tuple[PatternView, ...]  # in the order of the year
    teasers: tuple[TeaserView, ...]  # of those that are not out yet, in the order of the year
    untold: tuple[str, ...]  # titles of those of which nothing else may be shown yet
    calendar: tuple[Swap, ...]
    calendar_file: str
    feed_file: str
    goes_up: str  # '7 days before its day'
    to_come: tuple[Swap, ...]  # that have no page yet
    designers: tuple[DesignerRow, ...]
    notices: NoticesView
    latest: NoticeRow | None
    licence: str

    @property
    def extent(self) -> str:
        """'3 patterns, 5 to come'."""
        expected = len(self.teasers) + len(self.untold) + len(self.to_come)
        if not self.patterns:
            return f"{counted(expected, 'pattern')} to come" if expected else ""
        out = counted(len(self.patterns), "pattern")
        return f"{out}, {expected} to come" if expected else out


def series_view(
    standing: Standing, year: tuple[PatternView, ...], pictures: SitePictures
) -> SeriesView:
    """`year` holds the patterns that are out, from January to December."""
    series = standing.series
    calendar = swaps(series)
    return SeriesView(
        title=series.title,
        tagline=series.tagline,
        release=release(series.release),
        welcome=prose_under(series.welcome_markdown, 3),
        patterns=year,
        teasers=teaser_views(standing, pictures),
        untold=tuple(one.title for one in standing.awaited if not one.teaser),
        calendar=calendar,
        calendar_file=CALENDAR_FILE,
        feed_file=FEED_FILE,
        goes_up=before_its_day(series.goes_up_days),
        to_come=tuple(swap for swap in calendar if not swap.href),
        designers=designer_rows(standing, year),
        notices=notices_view(series),
        latest=latest_notice(series),
        licence=series.licence,
    )
