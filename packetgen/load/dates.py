"""Days and moments as authors write them."""

import re
from calendar import monthrange
from collections.abc import Callable
from datetime import UTC, date, datetime
from functools import cache
from zoneinfo import ZoneInfo, available_timezones

from packetgen.load.words import offer, said
from packetgen.model import DateRule

MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
NTH = {"first": 1, "second": 2, "third": 3, "fourth": 4, "last": -1}
FURTHEST_FROM_EASTER = 150  # days; beyond, the day could fall into another year

_LEAP_YEAR = 2024
Report = Callable[..., None]  # (code, offset in the text, **facts)

_DAY = re.compile(r"(\d{4})-(\d{2})-(\d{2})", re.ASCII)
_FIXED = re.compile(r"(\d{1,2}) ([A-Za-z]+)", re.ASCII)
_NTH = re.compile(r"([A-Za-z]+) ([A-Za-z]+) (?:of|in) ([A-Za-z]+)", re.ASCII)
_EASTER = re.compile(
    r"(?:(\d{1,3}) days? (before|after) )?(julian )?easter", re.ASCII | re.IGNORECASE
)


def read_day(text: str, report: Report) -> date | None:
    """'2026-11-25' as a date."""
    match = _DAY.fullmatch(text)
    if not match:
        report("day-form", 0, said=said(text))
        return None
    year, month, day = (int(part) for part in match.groups())
    if not 2000 <= year <= 2100:
        report("year-range", 0, said=said(text), year=year)
        return None
    try:
        return date(year, month, day)
    except ValueError:
        report("no-such-day", 0, said=said(text), hint=_why_not(month, year))
        return None


def read_moment(text: str, report: Report) -> datetime | None:
    """'2027-01-15 09:00 Europe/London' as a moment with its time zone."""
    words = text.split()
    if len(words) != 3 or not re.fullmatch(r"\d{1,2}:\d{2}", words[1], re.ASCII):
        report("moment-form", 0, said=said(text))
        return None
    day = read_day(words[0], report)
    hour, minute = (int(part) for part in words[1].split(":"))
    in_day = hour < 24 and minute < 60
    if not in_day:
        report(
            "no-such-time",
            text.index(words[1]),
            said=said(words[1]),
            hint="hours go from 00 to 23, minutes from 00 to 59",
        )
    if words[2] not in _zones():
        report(
            "zone-unknown", text.rindex(words[2]), said=said(words[2]), hint=_zone_hint(words[2])
        )
        return None
    if day is None or not in_day:
        return None
    moment = datetime(day.year, day.month, day.day, hour, minute, tzinfo=ZoneInfo(words[2]))
    back = moment.astimezone(UTC).astimezone(moment.tzinfo)
    if back.replace(tzinfo=None) != moment.replace(tzinfo=None):
        hint = f"the clocks go forward that day; write {back:%H:%M}"
        report("no-such-time", text.index(words[1]), said=said(words[1]), hint=hint)
        return None
    return moment


def read_rule(text: str, report: Report) -> DateRule | None:
    """'6 January', 'second Sunday of May', '21 days before Easter' as a rule for every year."""
    shown = " ".join(text.split())
    if match := _EASTER.fullmatch(shown):
        days = int(match[1] or 0) * (-1 if match[2] and match[2].lower() == "before" else 1)
        if abs(days) > FURTHEST_FROM_EASTER:
            report("rule-too-far", 0, said=said(shown), limit=FURTHEST_FROM_EASTER)
            return None
        return DateRule(shown, easter=(days, bool(match[3])))
    if match := _FIXED.fullmatch(shown):
        month = _named(match[2], MONTHS, "month", text, report)
        if month is None:
            return None
        day = int(match[1])
        if not 1 <= day <= monthrange(_LEAP_YEAR, month + 1)[1]:
            report("no-such-day", 0, said=said(shown), hint=_why_not(month + 1))
            return None
        if (day, month) == (29, 1):
            report("rule-not-every-year", 0, said=said(shown), hint="choose 28 February or 1 March")
            return None
        return DateRule(shown, fixed=(month + 1, day))
    if match := _NTH.fullmatch(shown):
        weekday = _named(match[2], WEEKDAYS, "weekday", text, report)
        month = _named(match[3], MONTHS, "month", text, report)
        if match[1].lower() == "fifth":
            report(
                "rule-not-every-year", 0, said=said(shown), hint="choose first to fourth, or last"
            )
            return None
        if match[1].lower() not in NTH:
            report(
                "word-unknown",
                0,
                said=said(match[1]),
                what="count",
                hint=offer(match[1], tuple(NTH)),
            )
            return None
        if weekday is None or month is None:
            return None
        return DateRule(shown, nth=(NTH[match[1].lower()], weekday, month + 1))
    report("rule-form", 0, said=said(text))
    return None


def _named(word: str, valid: tuple[str, ...], what: str, text: str, report: Report) -> int | None:
    folded = [name.casefold() for name in valid]
    if word.casefold() in folded:
        return folded.index(word.casefold())
    report("word-unknown", text.rindex(word), said=said(word), what=what, hint=offer(word, valid))
    return None


def _why_not(month: int, year: int | None = None) -> str:
    if not 1 <= month <= 12:
        return "months go from 01 to 12"
    if year is None:
        return f"{MONTHS[month - 1]} has {monthrange(_LEAP_YEAR, month)[1]} days" + " at most" * (
            month == 2
        )
    when = f" {year}" if month == 2 else ""
    return f"{MONTHS[month - 1]}{when} has {monthrange(year, month)[1]} days"


def _zone_hint(name: str) -> str:
    zones = sorted(zone for zone in _zones() if "/" in zone)
    sentence = offer(name, zones)
    return (
        sentence
        if sentence.startswith("did you mean")
        else "write region and city, for example Europe/London"
    )


@cache
def _zones() -> frozenset[str]:
    return frozenset(available_timezones())
