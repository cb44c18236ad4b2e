"""On which day an occasion falls in a given year. Easter comes from a reference library."""

from calendar import month_name, monthrange
from datetime import UTC, date, timedelta, tzinfo

from dateutil.easter import EASTER_ORTHODOX, EASTER_WESTERN, easter

from packetgen.model import DateRule
from packetgen.reckon.solstices import sun_turns

_MONTHS_OF_SEASON = 3


def day_of(rule: DateRule, year: int, zone: tzinfo | None = None) -> date:
    """The day in the Gregorian calendar; of an equinox or solstice, the day that it is in `zone`, or by UTC.

    A 29 February falls on 28 February in common years. Days counted from Easter or a solstice may fall
    into the year before or after.
    """
    if rule.fixed:
        month, day = rule.fixed
        return date(year, month, min(day, monthrange(year, month)[1]))
    if rule.nth:
        return _nth_weekday(year, *rule.nth)
    if rule.sun:
        days, month = rule.sun
        return sun_turns(year, month).astimezone(zone or UTC).date() + timedelta(days=days)
    days, julian = rule.easter or (0, False)
    return easter(year, EASTER_ORTHODOX if julian else EASTER_WESTERN) + timedelta(days=days)


def in_words(rule: DateRule, day: date) -> str:
    """The `day` on which the occasion falls, or begins: '2 May 2027', and 'April 2027' of all April."""
    return f"{rule.whole or f'{day.day} {day:%B}'} {day.year}"


def coming(
    rule: DateRule, since: date, number: int, zone: tzinfo | None = None
) -> tuple[tuple[int, date], ...]:
    """The next `number` days on or after `since`, each with the year that the rule counts it to."""
    years = range(since.year - 1, since.year + number + 2)
    days = ((year, day_of(rule, year, zone)) for year in years)
    return tuple((year, day) for year, day in days if day >= since)[:number]


def begun(rule: DateRule, day: date) -> date | None:
    """The day before `day` on which the month or season began that is the whole of the occasion and is not over;
    None where none is."""
    if not rule.whole or not rule.fixed:
        return None
    lasts = 1 if rule.whole in month_name else _MONTHS_OF_SEASON
    for first in (date(year, *rule.fixed) for year in (day.year - 1, day.year)):
        since = 12 * (day.year - first.year) + day.month - first.month
        if first < day and since < lasts:
            return first
    return None


def _nth_weekday(year: int, n: int, weekday: int, month: int) -> date:
    last = monthrange(year, month)[1]
    if n == -1:
        back = (date(year, month, last).weekday() - weekday) % 7
        return date(year, month, last - back)
    first = 1 + (weekday - date(year, month, 1).weekday()) % 7
    return date(year, month, first + 7 * (n - 1))
