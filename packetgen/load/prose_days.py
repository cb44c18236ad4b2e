"""Days that an author's texts name, and that there are not: 31 June, or a Thursday that is a Friday."""

import re
from calendar import monthrange
from datetime import date
from difflib import get_close_matches

from packetgen.diagnostics import Report
from packetgen.load.spoken_days import LEAP_YEAR, MONTHS, WEEKDAYS, month_number, why_not
from packetgen.load.words import said

# Names of months are whole and begin large: '31 marigolds' are no day.
_MONTH = rf"(?P<month>{'|'.join(MONTHS)})"
_NUMBER = r"(?P<day>[0-3]?\d)(?:st|nd|rd|th)?"
_WEEKDAY = rf"(?:\b(?P<weekday>{'|'.join(WEEKDAYS)}),?\s+(?:the\s+)?)?"
_YEAR = r"(?:,?\s+(?P<year>20\d\d))?(?![\w:])"
_CAPITAL = re.compile(r"(?<![\w'’-])[A-Z][a-z]{5,9}(?![\w'’-])")
_LONG = 6  # letters: 'Marsh' may be a name
_ALIKE = 0.85  # of the letters: our own choice
DAYS = (
    re.compile(rf"{_WEEKDAY}(?<![\w.,:/-]){_NUMBER}\s+(?:of\s+)?{_MONTH}{_YEAR}", re.ASCII),
    re.compile(rf"{_WEEKDAY}\b{_MONTH}\s+{_NUMBER}(?!\d){_YEAR}", re.ASCII),
)


def complain_of_days(text: str, report: Report) -> None:
    """`report(code, line=…, column=…, **facts)` hears of each, as advice; line and column count from 0."""
    for form in DAYS:
        for found in form.finditer(text):
            month, day = month_number(found["month"]), int(found["day"])
            year = int(found["year"]) if found["year"] else None
            place = _place(text, found.start())
            words = said(found[0])
            if not 1 <= day <= monthrange(year or LEAP_YEAR, month)[1]:
                report("prose-no-day", **place, day=words, hint=why_not(month, year))
            elif year and found["weekday"]:
                weekday = WEEKDAYS[date(year, month, day).weekday()]
                if weekday != found["weekday"]:
                    report("prose-weekday", **place, day=words, weekday=weekday)
    _complain_of_misspelt(text, report)


def _complain_of_misspelt(text: str, report: Report) -> None:
    """`report` hears of the first 'Septmber' or 'Sonday'."""
    for found in _CAPITAL.finditer(text):
        word = found[0]
        near = get_close_matches(word, (*MONTHS, *WEEKDAYS), n=1, cutoff=_ALIKE)
        if near and not word.startswith(near[0]) and len(near[0]) >= _LONG:
            place = _place(text, found.start())
            report("prose-day-misspelt", **place, said=said(word), near=near[0])
            return


def _place(text: str, start: int) -> dict[str, int]:
    """Line and column of a letter, from 0."""
    return {
        "line": text.count("\n", 0, start),
        "column": start - text.rfind("\n", 0, start) - 1,
    }
