"""The gardener's year of a series, as the pages of the site print it."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import TypeVar

from packetgen.model import Occasion, Series
from packetgen.reckon import swaps as reckoned
from packetgen.reckon.calendar import coming, in_words
from packetgen.reckon.swaps import YEARS_AHEAD, Turn

T = TypeVar("T")


@dataclass(frozen=True)
class Hanging:
    """An occasion and its days. `moving` holds the coming days of a feast that has no fixed day.

    `whole` is the month or season that the occasion is all of: `first` only begins it, and is not printed.
    """

    name: str
    said: str
    first: date  # the first one on or after the release
    first_said: str  # '2 May 2027', or 'April 2027'
    moving: tuple[date, ...]
    whole: str


@dataclass(frozen=True)
class Swap:
    """A line of the swap calendar; `href` is '' for a pattern that is still to come."""

    hanging: Hanging
    title: str
    designer: str
    href: str
    turn: Turn  # the first one


@dataclass(frozen=True)
class Release:
    """The day of a release, and its hour where the author keeps her clock; a plain day is its first minute,
    and has no hour and no zone to print."""

    day: date
    machine: str  # for <time datetime>
    clock: str  # '09:00'; '' of a plain day
    zone: str  # 'Europe/London time, UTC+00:00'; '' of a plain day

    @property
    def said(self) -> str:
        """'15 January 2027, 09:00', or '15 January 2027'."""
        day = f"{self.day.day} {self.day:%B %Y}"
        return f"{day}, {self.clock}" if self.clock else day


def release(moment: datetime) -> Release:
    """'09:00' with its zone by name and by its distance from UTC on that day."""
    machine = moment.isoformat(timespec="minutes")
    if moment.time() == time.min:
        return Release(moment.date(), machine, "", "")
    offset = f"{moment:%z}"
    from_utc = f"UTC{offset[:3]}:{offset[3:5]}"
    named = zone_said(moment)
    zone = f"{named}, {from_utc}" if named else from_utc
    return Release(moment.date(), machine, f"{moment:%H:%M}", zone)


def zone_said(moment: datetime) -> str:
    """'Europe/London time'; '' where the zone is only a distance from UTC."""
    named = getattr(moment.tzinfo, "key", "")
    return f"{named.replace('_', ' ')} time" if named else ""


def hanging(occasion: Occasion, release: datetime) -> Hanging:
    """The days of an occasion from the release day on, where the release has its clock."""
    coming_days = coming(occasion.rule, release.date(), YEARS_AHEAD, release.tzinfo)
    days = tuple(day for _, day in coming_days)
    rule = occasion.rule
    moving = () if rule.fixed else days
    said = in_words(rule, days[0])
    return Hanging(occasion.name, rule.said, days[0], said, moving, rule.whole)


def in_order(
    those: Iterable[T], occasion_of: Callable[[T], Occasion], release: datetime
) -> tuple[T, ...]:
    """As a list of them is printed: where a day of it moves, all stand with their years, the first after the
    release at the top; else from January to December."""
    listed = tuple(those)
    dated = any(not occasion_of(one).rule.fixed for one in listed)

    def place(one: T) -> tuple[int, int, int]:
        ((_, day),) = coming(occasion_of(one).rule, release.date(), 1, release.tzinfo)
        return day.year if dated else 0, day.month, day.day

    return tuple(sorted(listed, key=place))


def swaps(series: Series) -> tuple[Swap, ...]:
    """Every pattern of the series, out or still to come, as they first go up."""
    return tuple(
        Swap(
            hanging(swap.occasion, swap.out),
            swap.title,
            swap.designer,
            pattern_page(swap.pattern_id) if swap.pattern_id else "",
            swap.turns[0],
        )
        for swap in reckoned.swaps(series)
    )


def before_its_day(days: int) -> str:
    """7 → '7 days before its day'."""
    if not days:
        return "on the morning of its day"
    return f"{days} {'day' if days == 1 else 'days'} before its day"


def pattern_page(pattern_id: str) -> str:
    """Where a pattern's page stands in the site."""
    return f"{pattern_id}/index.html"
