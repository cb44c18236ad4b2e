"""Days and moments as authors write them."""

import re
from calendar import monthrange
from collections.abc import Callable
from datetime import UTC, date, datetime, time
from functools import cache
from zoneinfo import ZoneInfo, available_timezones

from packetgen.diagnostics import Report
from packetgen.load.spoken_days import (
    DAY,
    HOURS,
    LEAP_YEAR,
    MONTHS,
    WEEKDAYS,
    complain_of_impossible,
    either_day,
    meant_day,
    meant_time,
    why_not,
)
from packetgen.load.spoken_rules import OF_YEAR, meant_rule, with_words_mended
from packetgen.load.sure import sure
from packetgen.load.words import offer, said
from packetgen.model import DateRule

NTH = {"first": 1, "second": 2, "third": 3, "fourth": 4, "last": -1}
SEASONS = {"spring": 3, "summer": 6, "autumn": 9, "winter": 12}
FURTHEST_FROM_EASTER = 150  # days; beyond, nobody thinks of it as a day about Easter
FURTHEST_FROM_SOLSTICE = 90  # days; beyond, the next equinox or solstice is nearer

_SUN_MONTHS = {"March": 3, "June": 6, "September": 9, "December": 12} | SEASONS
_ANCHORS = (
    "Easter", "Julian Easter",
    *(f"{word} {'equinox' if month in (3, 9) else 'solstice'}" for word, month in _SUN_MONTHS.items()),
)  # fmt: skip
_EXAMPLE = "2027-01-15, or 2027-01-15 09:00 Europe/London"
_LOOSE = re.ASCII | re.IGNORECASE
_BEFORE_OR_AFTER = r"(?:(\d{1,3}) days? (before|after) )?"
_LEAD = re.compile(r"(\d{1,3})\s*([A-Za-z]*)(?:\s+before)?", re.ASCII)
_DAYS_IN = {"days": 1, "day": 1, "weeks": 7, "week": 7}


def read_day(text: str, report: Report) -> date | None:
    """'2026-11-25' as a date."""
    match = DAY.fullmatch(text)
    if not match:
        if complain_of_impossible(text, report, "write it like 2026-11-25"):
            return None
        meant = meant_day(text) or either_day(text)
        hint = f"write {meant}" if meant else "write year-month-day, for example 2026-11-25"
        report("day-form", 0, said=said(text), hint=hint)
        return None
    year, month, day = (int(part) for part in match.groups())
    if not 2000 <= year <= 2100:
        report("year-range", 0, said=said(text), year=year)
        return None
    try:
        return date(year, month, day)
    except ValueError:
        hint = why_not(month, year)
        if month > 12 and 1 <= day <= 12 and month <= monthrange(year, day)[1]:
            hint += f"; did you mean {year}-{day:02}-{month:02}?"
        report("no-such-day", 0, said=said(text), hint=hint)
        return None


def read_moment(text: str, report: Report) -> datetime | None:
    """'2027-01-15 09:00 Europe/London' as a moment with its time zone; a day alone begins when it does in UTC."""
    words = text.split()
    if len(words) == 1 and DAY.fullmatch(words[0]):
        alone = read_day(words[0], report)
        return None if alone is None else datetime.combine(alone, time.min, ZoneInfo("UTC"))
    if len(words) != 3 or not re.fullmatch(r"\d{1,2}:\d{2}", words[1], re.ASCII):
        if complain_of_impossible(text, report, f"write it like {_EXAMPLE}"):
            return None
        day_meant = meant_day(text) or date(2027, 1, 15)
        clock = meant_time(text) or "09:00"
        hint = f"write {day_meant}, or with hour and place {day_meant} {clock} Europe/London"
        if either := either_day(text):
            hint = f"write {either}"
        report("moment-form", 0, said=said(text), hint=hint)
        return None
    day = read_day(words[0], report)
    hour, minute = (int(part) for part in words[1].split(":"))
    in_day = hour < 24 and minute < 60
    if not in_day:
        report(
            "no-such-time",
            text.index(words[1]),
            said=said(words[1]),
            hint=HOURS,
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
    """'6 January', 'second Sunday of May', '21 days before Easter', '3 days after June solstice', 'in May'
    or 'spring' as a rule for every year.

    A month, and a season, is its first day. The seasons of the weather begin with March, June, September
    and December, and those of the sky with the equinox or solstice of that month: north of the equator.
    """
    shown = " ".join(text.split())
    for form, read in _FORMS:
        if match := form.fullmatch(shown):
            return read(match, shown, text, report)
    if complain_of_impossible(text, report, "write it like '6 January' or 'second Sunday of May'"):
        return None
    meant = meant_rule(shown) or _without_year(shown)
    hint = f"write {said(meant)}" if meant else _nearest_rule(shown)
    report("rule-form", 0, said=said(text), hint=hint)
    return None


def is_rule(text: str) -> bool:
    return read_rule(text, lambda *_, **__: None) is not None


def _without_year(shown: str) -> str:
    """'Easter 2027' → 'Easter'; '' where that is no rule either."""
    rest = OF_YEAR.sub("", shown)
    return rest if any(form.fullmatch(rest) for form, _ in _FORMS) else ""


def _easter(match: re.Match[str], shown: str, text: str, report: Report) -> DateRule | None:
    days = _days(match, shown, FURTHEST_FROM_EASTER, "Easter", report)
    return None if days is None else DateRule(shown, easter=(days, bool(match[3])))


def _sun(match: re.Match[str], shown: str, text: str, report: Report) -> DateRule | None:
    words, kind = tuple(_SUN_MONTHS), match[4].lower()
    index = _named(match[3], words, "month or season", text, report)
    if index is None:
        return None
    month = _SUN_MONTHS[words[index]]
    right = "equinox" if month in (3, 9) else "solstice"
    if kind != right:
        better = f"{words[index]} {right}"
        report("no-such-day", 0, said=said(shown), hint=f"did you mean '{better}'?")
        return None
    days = _days(match, shown, FURTHEST_FROM_SOLSTICE, f"the {kind}", report)
    return None if days is None else DateRule(shown, sun=(days, month))


def _days(match: re.Match[str], shown: str, limit: int, anchor: str, report: Report) -> int | None:
    days = int(match[1] or 0) * (-1 if match[2] and match[2].lower() == "before" else 1)
    if abs(days) > limit:
        report("rule-too-far", 0, said=said(shown), anchor=anchor, limit=limit)
        return None
    return days


def _season(match: re.Match[str], shown: str, text: str, report: Report) -> DateRule | None:
    season = match[1].lower()
    return DateRule(shown, fixed=(SEASONS[season], 1), whole=season)


def _month(match: re.Match[str], shown: str, text: str, report: Report) -> DateRule | None:
    month = _named(match[1], MONTHS, "month", text, report)
    return None if month is None else DateRule(shown, fixed=(month + 1, 1), whole=MONTHS[month])


def _fixed(match: re.Match[str], shown: str, text: str, report: Report) -> DateRule | None:
    month = _named(match[2], MONTHS, "month", text, report)
    if month is None:
        return None
    day = int(match[1])
    if not 1 <= day <= monthrange(LEAP_YEAR, month + 1)[1]:
        report("no-such-day", 0, said=said(shown), hint=why_not(month + 1))
        return None
    if (day, month) == (29, 1):
        report("rule-not-every-year", 0, said=said(shown), hint="choose 28 February or 1 March")
        return None
    return DateRule(shown, fixed=(month + 1, day))


def _nth(match: re.Match[str], shown: str, text: str, report: Report) -> DateRule | None:
    weekday = _named(match[2], WEEKDAYS, "weekday", text, report)
    month = _named(match[3], MONTHS, "month", text, report)
    count = match[1].lower()
    if count == "fifth":
        hint = "choose first to fourth, or last"
        report("rule-not-every-year", 0, said=said(shown), hint=hint)
        return None
    if count not in NTH:
        hint = offer(match[1], tuple(NTH))
        report("word-unknown", 0, said=said(match[1]), what="count", hint=hint)
        return None
    if weekday is None or month is None:
        return None
    return DateRule(shown, nth=(NTH[count], weekday, month + 1))


# The first form that a text has is the one it is read by.
_FORMS: tuple[tuple[re.Pattern[str], Callable[..., DateRule | None]], ...] = (
    (re.compile(f"{_BEFORE_OR_AFTER}(julian )?easter", _LOOSE), _easter),
    (re.compile(f"{_BEFORE_OR_AFTER}(?:the )?([A-Za-z]+) (solstice|equinox)", _LOOSE), _sun),
    (re.compile(f"(?:in )?({'|'.join(SEASONS)})", _LOOSE), _season),
    (re.compile("in ([A-Za-z]+)", _LOOSE), _month),
    (re.compile(r"(\d{1,2}) ([A-Za-z]+)", _LOOSE), _fixed),
    (re.compile("([A-Za-z]+) ([A-Za-z]+) (?:of|in) ([A-Za-z]+)", _LOOSE), _nth),
)


def _nearest_rule(shown: str) -> str:
    """The rule that an author may have meant; examples where none is near."""
    mended = with_words_mended(shown)
    if mended != shown and (meant := meant_rule(mended) or mended * is_rule(mended)):
        return f"did you mean {said(meant)}?"
    lead = sure(re.match(_BEFORE_OR_AFTER, shown, _LOOSE))[0]
    near = offer(shown[len(lead) :], _ANCHORS if lead else (*_ANCHORS, *SEASONS))
    if near.startswith("did you mean"):
        return near.replace("'", f"'{lead}", 1)
    return (
        "write it like '6 January', 'second Sunday of May', '21 days before Easter', "
        "'June solstice', 'in May' or 'spring'"
    )


def read_days_before(text: str, at_most: int, report: Report) -> int | None:
    """'7 days', '2 weeks' or 'on the day' as days."""
    if text.casefold() == "on the day":
        return 0
    match = _LEAD.fullmatch(text)
    if not match:
        report("days-before-form", 0, said=said(text))
        return None
    number, unit = int(match[1]), match[2]
    if not unit:
        report("unit-missing", 0, better=said(f"{number} day{'s' * (number != 1)}"))
        return None
    if unit not in _DAYS_IN:
        hint = offer(unit, tuple(_DAYS_IN))
        report("unit-unknown", text.rindex(unit), unit=said(unit), hint=hint)
        return None
    if number * _DAYS_IN[unit] > at_most:
        report("out-of-range", 0, low="0 days", high=f"{at_most} days")
        return None
    return number * _DAYS_IN[unit]


def _named(word: str, valid: tuple[str, ...], what: str, text: str, report: Report) -> int | None:
    folded = [name.casefold() for name in valid]
    if word.casefold() in folded:
        return folded.index(word.casefold())
    report("word-unknown", text.rindex(word), said=said(word), what=what, hint=offer(word, valid))
    return None


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
