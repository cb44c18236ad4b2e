"""Date rules: on which day an occasion falls in a given year. Easter comes from a reference library."""

from calendar import monthrange
from datetime import date, timedelta

from dateutil.easter import EASTER_ORTHODOX, EASTER_WESTERN, easter

from packetgen.model import DateRule


def day_of(rule: DateRule, year: int) -> date:
    """The day in the Gregorian calendar. A 29 February falls on 28 February in common years."""
    if rule.fixed:
        month, day = rule.fixed
        return date(year, month, min(day, monthrange(year, month)[1]))
    if rule.nth:
        return _nth_weekday(year, *rule.nth)
    days, julian = rule.easter or (0, False)
    return easter(year, EASTER_ORTHODOX if julian else EASTER_WESTERN) + timedelta(days=days)


def _nth_weekday(year: int, n: int, weekday: int, month: int) -> date:
    last = monthrange(year, month)[1]
    if n == -1:
        back = (date(year, month, last).weekday() - weekday) % 7
        return date(year, month, last - back)
    first = 1 + (weekday - date(year, month, 1).weekday()) % 7
    return date(year, month, first + 7 * (n - 1))
