"""What the first page of a series shows, and every page of it may ask for."""

from collections.abc import Mapping
from dataclasses import dataclass

from markupsafe import Markup

from packetgen.markdown_text import paragraphs
from packetgen.reckon.standing import Standing
from packetgen.reckon.swaps import Turn
from packetgen.render.calendar_file import CALENDAR_FILE
from packetgen.render.feed import FEED_FILE
from packetgen.render.site_designers import DesignerRow, designer_rows
from packetgen.render.site_notices import NoticeRow, NoticesView, latest_notice, notices_view
from packetgen.render.site_pattern import PatternView
from packetgen.render.site_pictures import SitePictures
from packetgen.render.site_teaser import TeaserView, teaser_views
from packetgen.render.site_text import counted, prose_under
from packetgen.render.site_year import Release, Swap, before_its_day, release, swaps

# A line of the welcome on a wide screen; the large first letter is three lines high.
_LETTERS_A_LINE, _LINES = 70, 3


@dataclass(frozen=True)
class SeriesView:
    title: str
    tagline: str
    release: Release
    welcome: Markup
    opens_large: bool  # whether the welcome begins with words enough for a large first letter
    patterns: tuple[PatternView, ...]  # in the order of the year
    teasers: tuple[TeaserView, ...]  # of those that are not out yet, in the order of the year
    untold: tuple[str, ...]  # titles of those of which nothing else may be shown yet
    calendar: tuple[Swap, ...]
    turns: Mapping[str, Turn]  # by a pattern's page: the first turn of its picture
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
    """`year` holds the patterns that are out, in the order of the year."""
    series = standing.series
    calendar = swaps(series)
    return SeriesView(
        title=series.title,
        tagline=series.tagline,
        release=release(series.release),
        welcome=prose_under(series.welcome_markdown, 3),
        opens_large=_opens_large(series.welcome_markdown),
        patterns=year,
        teasers=teaser_views(standing, pictures),
        untold=tuple(one.title for one in standing.awaited if not one.teaser),
        calendar=calendar,
        turns={swap.href: swap.turn for swap in calendar if swap.href},
        calendar_file=CALENDAR_FILE,
        feed_file=FEED_FILE,
        goes_up=before_its_day(series.goes_up_days),
        to_come=tuple(swap for swap in calendar if not swap.href),
        designers=designer_rows(standing, year),
        notices=notices_view(series),
        latest=latest_notice(series),
        licence=series.licence,
    )


def _opens_large(welcome: str) -> bool:
    """A large letter beside a single line would hang down into what follows."""
    first = next(iter(paragraphs(welcome)), "")
    return len(first) >= _LETTERS_A_LINE * _LINES
