"""What the page of notices shows: news, open calls and prize draws, the newest first."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, time, tzinfo

from markupsafe import Markup

from packetgen.model import Notice, Series
from packetgen.render.site_text import prose_under
from packetgen.render.site_year import zone_said


@dataclass(frozen=True)
class Day:
    """A day as it is printed, and the moment at which it begins or ends where the series keeps its clock."""

    day: date
    machine: str  # for <time datetime>


@dataclass(frozen=True)
class NoticeRow:
    anchor: str
    on: Day
    title: str
    text: Markup
    kind: str
    opens: Day | None
    closes: Day | None
    who: str

    @property
    def is_news(self) -> bool:
        return self.kind == "news"

    @property
    def is_draw(self) -> bool:
        return self.kind == "prize draw"


@dataclass(frozen=True)
class NoticesView:
    notices: tuple[NoticeRow, ...]
    zone: str  # 'Europe/London time'


def notices_view(series: Series) -> NoticesView:
    """All notices of the series as it stands; headings in their texts stand below one of level 2."""
    rows = (_row(series, notice, key, 3) for notice, key in _keyed(series))
    newest_first = tuple(sorted(rows, key=lambda row: row.on.day, reverse=True))
    return NoticesView(newest_first, zone_said(series.release))


def latest_notice(series: Series) -> NoticeRow | None:
    """The newest one by itself, with the headings in its text below one of level 3."""
    newest = max(_keyed(series), key=lambda one: one[0].on, default=None)
    return _row(series, *newest, 4) if newest else None


def _keyed(series: Series) -> tuple[tuple[Notice, str], ...]:
    return tuple(zip(series.notices, notice_keys(series.notices)))


def _row(series: Series, notice: Notice, key: str, level: int) -> NoticeRow:
    zone = series.release.tzinfo
    return NoticeRow(
        anchor=notice_anchor(key),
        on=Day(notice.on, beginning(notice.on, zone).isoformat(timespec="minutes")),
        title=notice.title,
        text=prose_under(notice.markdown, level),
        kind=notice.kind,
        opens=_opens(notice, zone),
        closes=_closes(notice, zone),
        who=notice.who,
    )


def notice_keys(notices: Iterable[Notice]) -> tuple[str, ...]:
    """What each notice is known by for good: its day, and its number among those of that day.

    Its title is not in it, since a slip in a title may be mended.
    """
    seen: Counter[date] = Counter()
    keys = []
    for notice in notices:
        seen[notice.on] += 1
        number = seen[notice.on]
        keys.append(f"{notice.on.isoformat()}{f'-{number}' if number > 1 else ''}")
    return tuple(keys)


def notice_anchor(key: str) -> str:
    return f"notice-{key}"


def beginning(day: date, zone: tzinfo | None) -> datetime:
    """The first moment of a day."""
    return datetime.combine(day, time.min, zone)


def _opens(notice: Notice, zone: tzinfo | None) -> Day | None:
    if notice.opens is None:
        return None
    return Day(notice.opens, beginning(notice.opens, zone).isoformat(timespec="minutes"))


def _closes(notice: Notice, zone: tzinfo | None) -> Day | None:
    if notice.closes is None:
        return None
    last = datetime.combine(notice.closes, time(23, 59), zone)
    return Day(notice.closes, last.isoformat(timespec="minutes"))
