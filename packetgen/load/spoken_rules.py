"""Days of every year as people say them, put into the words that a file takes."""

import re
from difflib import get_close_matches

from packetgen.load.spoken_days import MONTH, MONTHS, NUMBER, WEEKDAYS, month_number, spoken_day

# Common knowledge of the western calendar, no source; those that move with Easter are counted from it.
_FEASTS = {
    "new year": "1 January",
    "valentine": "14 February",
    "pancake day": "47 days before Easter",
    "shrove tuesday": "47 days before Easter",
    "mothering sunday": "21 days before Easter",
    "good friday": "2 days before Easter",
    "easter sunday": "Easter",
    "easter monday": "1 day after Easter",
    "pentecost": "49 days after Easter",
    "whit sunday": "49 days after Easter",
    "midsummer": "24 June",
    "halloween": "31 October",
    "christmas eve": "24 December",
    "christmas": "25 December",
    "boxing day": "26 December",
}
_SAID_SHORT = {"1st": "first", "2nd": "second", "3rd": "third", "4th": "fourth"}
_WEEKDAY = rf"(?P<weekday>{'|'.join(day[:3] for day in WEEKDAYS)})[a-z]*\.?"
_COUNT = rf"(?P<count>{'|'.join((*_SAID_SHORT, *_SAID_SHORT.values(), 'last'))})"
_NTH = re.compile(rf"(?:the )?{_COUNT} {_WEEKDAY} (?:of|in) {MONTH}\.?", re.IGNORECASE)
# A month ends where the next begins: the last Sunday before November is October's.
_LAST_BEFORE = re.compile(rf"(?:the )?last {_WEEKDAY} before {MONTH}\.?", re.IGNORECASE)
_FIRST_AFTER = re.compile(rf"(?:the )?first {_WEEKDAY} after {MONTH}\.?", re.IGNORECASE)
_DAYS = (
    re.compile(rf"(?:the )?{NUMBER}(?: of)? {MONTH}\.?", re.IGNORECASE),
    re.compile(rf"{MONTH}\.? (?:the )?{NUMBER}", re.IGNORECASE),
    re.compile(r"\d{4}-(?P<month>\d\d?)-(?P<day>\d\d?)"),
)
_WEEKS = re.compile(
    r"(?P<weeks>a|one|two|three|\d\d?)? ?weeks? (?P<rest>(?:before|after) .+)", re.IGNORECASE
)
OF_YEAR = re.compile(r",? (?:of )?(?:19|20)\d\d$")
_WORDS = {
    word.casefold(): word
    for word in (
        *(
            *MONTHS,
            *WEEKDAYS,
            *_SAID_SHORT.values(),
            "last",
            "day",
            "days",
            "weeks",
            "before",
            "after",
        ),
        *("Easter", "Julian", "solstice", "equinox", "spring", "summer", "autumn", "winter"),
    )
}
_IN_WORDS = {"": 1, "a": 1, "one": 1, "two": 2, "three": 3}


def meant_rule(text: str) -> str:
    """The day of every year that a text means, as a file has it: '2nd Sunday in May' → 'second Sunday of May';
    '' where it cannot be told. Whether there is such a day is not looked at."""
    text = " ".join(text.split())
    if day := spoken_day(text):
        return f"{day.day} {MONTHS[day.month - 1]}"
    text = OF_YEAR.sub("", text)
    if found := _NTH.fullmatch(text):
        count = found["count"].casefold()
        month = MONTHS[month_number(found["month"]) - 1]
        return f"{_SAID_SHORT.get(count, count)} {_weekday(found)} of {month}"
    for count, form, turn in (("last", _LAST_BEFORE, -1), ("first", _FIRST_AFTER, 1)):
        if found := form.fullmatch(text):
            beside = MONTHS[(month_number(found["month"]) - 1 + turn) % len(MONTHS)]
            return f"{count} {_weekday(found)} of {beside}"
    for form in _DAYS:
        found = form.fullmatch(text)
        if found and 1 <= month_number(found["month"]) <= 12:
            return f"{int(found['day'])} {MONTHS[month_number(found['month']) - 1]}"
    if found := re.fullmatch(MONTH, text, re.IGNORECASE):
        return f"in {MONTHS[month_number(found['month']) - 1]}"
    if found := _WEEKS.fullmatch(text):
        said = (found["weeks"] or "").casefold()
        return f"{7 * (_IN_WORDS.get(said) or int(said))} days {found['rest']}"
    said = re.sub(r"['’]s\b| day$", "", text.casefold().removeprefix("the "))
    return _FEASTS.get(text.casefold()) or _FEASTS.get(said, "")


def _weekday(found: re.Match[str]) -> str:
    return next(day for day in WEEKDAYS if day[:3].casefold() == found["weekday"].casefold())


def with_words_mended(text: str) -> str:
    """The same with each word that is nearly one of those that a day of every year is told by as that: '35 days befor Easter'
    → '35 days before Easter', 'Mach 14' → 'March 14'."""
    return re.sub(r"[A-Za-z]{3,}", lambda word: _nearly(word[0]), text)


def _nearly(word: str) -> str:
    near = get_close_matches(word.casefold(), _WORDS, n=1, cutoff=0.8)
    return _WORDS[near[0]] if near and near[0] != word.casefold() else word
