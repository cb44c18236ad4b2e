"""Days that an author's texts tell otherwise than her series and its patterns have them: of the release, and of an occasion."""

import re
from collections.abc import Collection, Iterable
from datetime import date

from packetgen.diagnostics import Problems, place_in
from packetgen.load.prose_days import DAYS
from packetgen.load.prose_words import sentences
from packetgen.load.spoken_days import MONTHS, WEEKDAYS, month_number
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Pattern, Series

_OUT = re.compile(
    r"\b(?:comes?\s+out|(?:is|are|will\s+be)\s+(?:released|published|out|for\s+sale)|goes?\s+on\s+sale|appears?|released),?\s+"
    r"(?:(?!(?:on|and|but|is|are|was|were|will|that|which|when|while|after|before|for)\b)[\w'’]+,?\s+){0,5}on\s+(?:the\s+)?\Z",
    re.IGNORECASE,
)
_OUT_TODAY = re.compile(
    r"\b(?:(?:comes?|goes?|are|is|now)\s+out|released|published|on\s+sale)\s+(?:today|now)\b|\btoday\b[^.!?]{0,40}\b(?:comes?\s+out|released?)\b",
    re.IGNORECASE,
)
_ORDINALS = {"first": 1, "second": 2, "third": 3, "fourth": 4, "last": -1}
_NTH = re.compile(
    rf"\b(?P<n>{'|'.join(_ORDINALS)})\s+(?P<weekday>{'|'.join(WEEKDAYS)})\s+(?:of|in)\s+(?P<month>{'|'.join(MONTHS)})\b",
    re.IGNORECASE,
)


def complain_of_told_days(series: Series, path: str, problems: Problems) -> None:
    """Advice on the welcome of the series in the folder `path`, and on stories and notes of its patterns."""
    released = series.release.date()
    _look_at_release(series.welcome_markdown, f"{path}/welcome.md", released, problems)
    for pattern in series.patterns:
        for file, text in pattern.texts.items():
            of_file = f"{path}/{pattern.id}/{file}"
            own = pattern.release.date() if pattern.release else released
            _look_at_release(text, of_file, own, problems)
            _look_at_occasion(text, of_file, pattern, problems)


def complain_of_notice_days(
    series: Series,
    notices: Iterable[Filled],
    problems: Problems,
) -> None:
    """Advice on each notice whose day is a release with day and month
    exchanged or in another year, that tells of another day of release, or that tells of what comes out 'today' on a day on which nothing does."""
    released = {series.release.date()}
    released |= {one.release.date() for one in series.patterns if one.release}
    for notice in notices:
        day, place = notice["date"], notice.place_of("date")
        texts = [notice.given[field] for field in ("title", "text")]
        turned = {
            one
            for one in released
            if (one.month, one.day) in ((day.day, day.month), (day.month, day.day))
        }
        near = min(turned - {day} or released, key=lambda one: abs(one - day))
        today = any(_OUT_TODAY.search(text.value) for text in texts)
        if day not in released and (turned or today):
            own = series.release_place if near == series.release.date() else None
            line = f" on line {own.line}" if own and own.path == place.path else ""
            problems.add(place, "notice-day-other", day=day, released=near, line=line)
        for text in texts:
            if told := _told_release(text.value, released):
                facts = {"said": said(told[0]), "released": series.release.date()}
                problems.add(text.letter(told.start()), "release-told-other", **facts)


def _look_at_release(text: str, path: str, released: date, problems: Problems) -> None:
    """Whether 'it comes out on 3 March' is so. A text may tell of the release of something else by its own words."""
    if found := _told_release(text, {released}):
        facts = {"said": said(found[0]), "released": released}
        problems.add(place_in(text, found.start(), path), "release-told-other", **facts)


def _told_release(text: str, released: Collection[date]) -> re.Match[str] | None:
    """The first day on which something comes out by the text, and that is none of those."""
    for form in DAYS:
        for found in form.finditer(text):
            told = month_number(found["month"]), int(found["day"])
            right = any(
                told == (day.month, day.day) and int(found["year"] or day.year) == day.year
                for day in released
            )
            if _OUT.search(text, 0, found.start()) and not right:
                return found
    return None


def _look_at_occasion(text: str, path: str, pattern: Pattern, problems: Problems) -> None:
    """Whether the day by its name, or one that is nearly that of the pattern, is the one of pattern.yaml."""
    occasion = pattern.occasion
    rule = occasion.rule
    for start, sentence in sentences(text):
        by_name = occasion.name.casefold() in sentence.casefold()
        found = _NTH.search(sentence)
        if found and rule.nth:
            other = _other(found, rule.nth, by_name)
        elif rule.fixed and not rule.whole and by_name:
            found = next(filter(None, (form.search(sentence) for form in DAYS)), None)
            other = (
                found is not None
                and (month_number(found["month"]), int(found["day"])) != rule.fixed
            )
        else:
            continue
        if found and other:
            facts = {"said": said(found[0]), "name": said(occasion.name)}
            facts |= {"own": said(rule.said)}
            problems.add(
                place_in(text, start + found.start(), path), "occasion-told-other", **facts
            )
            return


def _other(found: re.Match[str], nth: tuple[int, int, int], by_name: bool) -> bool:
    """Whether the day is another one, and meant as that: it is called so, or in the same month and on the same weekday, or
    as many of them on."""
    told = _ORDINALS[found["n"].casefold()], WEEKDAYS.index(found["weekday"].capitalize())
    month = month_number(found["month"])
    near = month == nth[2] and bool({*enumerate(told)} & {*enumerate(nth[:2])})
    return (*told, month) != nth and (by_name or near)
