"""Days and times of day in texts that are no form of ours: which are meant, and which there are not."""

import re
from calendar import monthrange
from datetime import date

from packetgen.diagnostics import Report
from packetgen.load.words import said

MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
LEAP_YEAR = 2024
HOURS = "hours go from 00 to 23, minutes from 00 to 59"

DAY = re.compile(r"(\d{4})-(\d{2})-(\d{2})", re.ASCII)
_LOOSE = re.ASCII | re.IGNORECASE
_TIME = re.compile(r"(?<![\d:])(\d{1,2}):(\d{2})(?!\d)", re.ASCII)
# A day as people say it, which is no form of ours: '30 February 2027', 'the 30th of Feb', 'February 30, 2027'.
MONTH = f"(?P<month>{'|'.join(f'{name[:3]}[a-z]*' for name in MONTHS)})"
NUMBER, _YEAR = r"\b(?P<day>\d{1,2})(?:st|nd|rd|th)?", r"(?:,? (?P<year>\d{4}))?(?![\w:])"
_NUMBERS = re.compile(
    r"(?<!\d)(?P<year>\d{4})[-/.](?P<month>\d{1,2})[-/.](?P<day>\d{1,2})(?!\d)", re.ASCII
)
_DOTTED = re.compile(
    r"(?<![\d.])(?P<day>\d{1,2})\. ?(?P<month>\d{1,2})\. ?(?P<year>\d{4})(?!\d)", re.ASCII
)
_STROKES = re.compile(r"(?<![\d/-])(\d{1,2})[/-](\d{1,2})[/-](20\d\d)(?![\d/-])", re.ASCII)
_SPOKEN = (
    _DOTTED,
    re.compile(rf"{NUMBER}(?: of)? {MONTH}\.?{_YEAR}", _LOOSE),
    re.compile(rf"\b{MONTH}\.? {NUMBER}{_YEAR}", _LOOSE),
)


def _with_strokes(text: str) -> date | None:
    """'20/5/2028' and '5-20-2028': the number above 12 is the day. Of two that may both be months nobody knows."""
    found = _STROKES.search(text)
    if not found:
        return None
    one, other, year = (int(number) for number in found.groups())
    if (one > 12) == (other > 12) and one != other:
        return None
    day, month = (one, other) if one > 12 else (other, one)
    try:
        return date(year, month, day)
    except ValueError:
        return None  # which is told for itself


def either_day(text: str) -> str:
    """Both days that '6/3/2027' may be, with what is to be written for each; '' of a text that may not be two."""
    found = _STROKES.search(text)
    one, other, year = (int(number) for number in found.groups()) if found else (0, 0, 0)
    if not found or one == other or not (1 <= one <= 12 and 1 <= other <= 12):
        return ""
    days = date(year, other, one), date(year, one, other)
    return " or ".join(f"{day} for {day.day} {MONTHS[day.month - 1]}" for day in days)


def meant_day(text: str) -> date | None:
    """The day that a text of another form names with its year: '1 May 2027', '2027-5-1 at noon'."""
    return _day([form.search(text) for form in (_NUMBERS, *_SPOKEN)]) or _with_strokes(text)


def spoken_day(text: str) -> date | None:
    """The day that a text names and nothing besides: '1 May 2027', '2027/5/1'."""
    text = text.strip()
    strokes = _with_strokes(text) if _STROKES.fullmatch(text) else None
    return _day([form.fullmatch(text) for form in (_NUMBERS, *_SPOKEN)]) or strokes


def _day(matches: list[re.Match[str] | None]) -> date | None:
    for found in matches:
        if found and found["year"] and 2000 <= int(found["year"]) <= 2100:
            try:
                return date(int(found["year"]), month_number(found["month"]), int(found["day"]))
            except ValueError:
                return None  # which is told for itself
    return None


def meant_time(text: str) -> str:
    """The first time of day in the text, '09:00'; '' where it has none."""
    return next((one[0] for one in _TIME.finditer(text) if _is_time(one)), "")


def month_number(name: str) -> int:
    """'Feb' and '2' → 2."""
    if name.isdigit():
        return int(name)
    short = name[:3].casefold()
    return next(n for n, month in enumerate(MONTHS, 1) if month[:3].casefold() == short)


def complain_of_impossible(text: str, report: Report, written: str = "") -> bool:
    """Whether a text of another form names a day or a time that there is not: her calendar, and not her
    writing, is then the thing to mend. `written` says besides how it is done."""
    told = 0

    def tell(code: str, column: int, hint: str, **facts: object) -> None:
        nonlocal told
        told += 1
        report(code, column, hint=f"{hint}; {written}" if written else hint, **facts)

    if iso := DAY.search(text):
        year, month, day = (int(part) for part in iso.groups())
        _complain_of_day(iso, (year, month, day), tell)
    for form in _SPOKEN:
        if spoken := form.search(text):
            month = month_number(spoken["month"])
            of_year = int(spoken["year"]) if spoken["year"] else None
            _complain_of_day(spoken, (of_year, month, int(spoken["day"])), tell)
            break
    for clock in _TIME.finditer(text):
        if not _is_time(clock):
            tell("no-such-time", clock.start(), said=said(clock[0]), hint=HOURS)
    return told > 0


def _is_time(clock: re.Match[str]) -> bool:
    return int(clock[1]) < 24 and int(clock[2]) < 60


def _complain_of_day(
    found: re.Match[str], day: tuple[int | None, int, int], report: Report
) -> None:
    year, month, number = day
    if year == 0 or (1 <= month <= 12 and 1 <= number <= monthrange(year or LEAP_YEAR, month)[1]):
        return  # of no year there is nothing to say but that it has another form
    report("no-such-day", found.start(), said=said(found[0]), hint=why_not(month, year))


def why_not(month: int, year: int | None = None) -> str:
    """How many days the month has, or months the year: why there is no such day."""
    if not 1 <= month <= 12:
        return "months go from 01 to 12"
    if year is None:
        return f"{MONTHS[month - 1]} has {monthrange(LEAP_YEAR, month)[1]} days" + " at most" * (
            month == 2
        )
    when = f" {year}" if month == 2 else ""
    return f"{MONTHS[month - 1]}{when} has {monthrange(year, month)[1]} days"
