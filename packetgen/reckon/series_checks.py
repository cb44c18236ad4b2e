"""What a series as a whole lacks: titles, credits, photographs, dates, and names that nothing uses.

Whether every design fits the finishing piece is `reckon.figures.complain`'s.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta, tzinfo
from itertools import pairwise

from packetgen.diagnostics import Place, Problems
from packetgen.model import DateRule, Pattern, Revision, Series, ToCome
from packetgen.nouns import counted
from packetgen.reckon.alt_colours import colour_not_there
from packetgen.reckon.alt_text import model_alt
from packetgen.reckon.calendar import begun, coming, day_of, in_words
from packetgen.reckon.small import only_hinted_at
from packetgen.reckon.whose_design import complain_of_designers

# A name in the credits → how a sentence asks for it.
_ASKED = {"model_stitcher": "who stitched the model", "finisher": "who finished it"}

_NEAR = timedelta(days=120)  # our own choice
_FAR = timedelta(days=2 * 365 + 1)  # from the day on which all is ready to the release
_OF_ANOTHER_YEAR = timedelta(days=200)  # our own choice
_JUST_BEHIND = timedelta(days=31)  # a day: mostly the release is wrong; our own choice
_SAME_SEASON = timedelta(
    days=21
)  # a packet is ready so long before its release, mostly; our own choice
_LONG_AFTER = timedelta(days=5 * 365 + 1)  # from one revision to the next; our own choice


def complain_of_series(series: Series, problems: Problems) -> None:
    """An error for two patterns of one title; for the rest, advice."""
    _titles(series, problems)
    _days(series, problems)
    _begun(series, problems)
    _all_over(series, problems)
    _unused(series, problems)
    complain_of_designers(series, problems)
    _series_release(series, problems)
    _issued_on_that_day(series, problems)
    for pattern in series.patterns:
        _revisions(pattern, problems)
        _day_missed(pattern, series.release.tzinfo, problems)
        _picture(pattern, series, problems)
        _credits(pattern, problems)
    _releases(series, problems)


def _titles(series: Series, problems: Problems) -> None:
    """Readers, shops and search engines know a pattern by its title, capitals or not."""
    first: dict[str, Pattern] = {}
    for pattern in series.patterns:
        other = first.setdefault(pattern.title.casefold(), pattern)
        if other is not pattern:
            problems.add(pattern.place, "title-twice", title=pattern.title, other=other.id)
    here = set(map(_without_article, first))
    for one in series.to_come:
        if _without_article(one.title) in here:
            problems.add(one.place or series.place, "to-come-here", title=one.title)


def _without_article(title: str) -> str:
    return re.sub(r"^(?:a|an|the)\s+", "", title.casefold())


_EXAMPLE = "example "  # begins a name that begin wrote: told by that
EXAMPLE_DAY = "Example Day"  # that begin writes, until its author has put her own in its place


def _days(series: Series, problems: Problems) -> None:
    """Designs with one day hang at the same time, and a reader has room for one. Two rules that fall together
    in some years only, Easter and a day of March, are let be."""
    titles = {_without_article(one.title) for one in series.patterns}
    to_come = [
        one for one in series.to_come if _without_article(one.title) not in titles
    ]  # else told already
    designs: tuple[Pattern | ToCome, ...] = (*series.patterns, *to_come)
    first: dict[DateRule, str] = {}
    for one in designs:
        title, rule = one.title, one.occasion.rule
        if one.occasion.name == EXAMPLE_DAY:
            continue
        other = first.setdefault(replace(rule, said="", whole=""), title)
        if other.casefold() != title.casefold():  # of one title twice is told already
            place = one.occasion.place
            problems.add(place, "day-shared", title=title, other=other, said=rule.said)


def _begun(series: Series, problems: Problems) -> None:
    """All of a month, or of a season, of which some is over when the series is out: it waits for the next year."""
    release = series.release.date()
    designs: tuple[Pattern | ToCome, ...] = (*series.patterns, *series.to_come)
    for one in designs:
        since = begun(one.occasion.rule, release)
        if since:
            problems.add(
                one.occasion.place,
                "occasion-begun",
                title=one.title,
                whole=in_words(one.occasion.rule, since),
                release=release,
                next=in_words(one.occasion.rule, since.replace(year=since.year + 1)),
            )


def _all_over(series: Series, problems: Problems) -> None:
    """A release just behind the days of its designs, which all wait for the next year then: one was moved, mostly."""
    release = series.release.date()
    designs: tuple[Pattern | ToCome, ...] = (*series.patterns, *series.to_come)
    days = [
        (one.title, day_of(one.occasion.rule, release.year, series.release.tzinfo), one)
        for one in designs
    ]
    over = [day for _, day, _ in days if release - _NEAR <= day < release]
    _, first = min(
        (coming(one.occasion.rule, release, 1, series.release.tzinfo)[0] for _, _, one in days),
        key=lambda one: one[1],
        default=(0, release),
    )
    if (
        over
        and first - release > _NEAR
        and not any(begun(one.occasion.rule, release) for *_, one in days)
    ):
        problems.add(
            series.release_place or series.place,
            "release-behind",
            release=release,
            over=_whose([title for title, day, _ in days if day in over]),
            last=max(over),
            first=first,
        )


def _whose(titles: Sequence[str]) -> str:
    """'the day of Sprig,', or of several designs."""
    if len(titles) == 1:
        return f"the day of {titles[0]},"
    return f"the days of {counted(len(titles), 'design')}, the last"


def _day_missed(pattern: Pattern, zone: tzinfo | None, problems: Problems) -> None:
    """A pattern's own release just behind the day that it is for, so that it waits for the next year."""
    if pattern.release is None:
        return
    release, rule = pattern.release.date(), pattern.occasion.rule
    days = (day_of(rule, year, zone) for year in (release.year - 1, release.year))
    missed = [day for day in days if release - _JUST_BEHIND <= day < release]
    if missed and not begun(rule, release):
        year, day = coming(rule, release, 1, zone)[0]
        problems.add(
            pattern.release_place or pattern.place,
            "day-missed",
            release=release,
            behind=counted((release - missed[0]).days, "day"),
            day=missed[0],
            next=day,
        )


def _unused(series: Series, problems: Problems) -> None:
    """Thread sets and paints that are listed for nothing."""
    sets = {thread_set.id for pattern in series.patterns for thread_set in pattern.thread_sets}
    for thread_set in series.thread_sets:
        if thread_set.id not in sets:
            problems.add(thread_set.place, "thread-set-unused", set=thread_set.id)
    piece = series.finish
    painted = {coating.paint.name for part in piece.parts for coating in part.painted}
    for paint in piece.paints:
        if paint.name not in painted and not paint.name.casefold().startswith(_EXAMPLE):
            place = paint.place or piece.place
            problems.add(place, "paint-unused", piece=piece.name, paint=paint.name)


def _picture(pattern: Pattern, series: Series, problems: Problems) -> None:
    """Told of each pattern, so that one whose model is not stitched yet can lay it aside for itself."""
    if pattern.photo is None and not pattern.photo_awaited:
        small = ", very small" if only_hinted_at(pattern) else ""
        problems.add(pattern.place, "photo-missing", title=pattern.title, small=small)
    if not pattern.photo_alt:
        problems.add(pattern.place, "alt-missing", alt=model_alt(pattern, series.finish))
    elif word := colour_not_there(pattern.photo_alt, pattern, series.finish):
        place = pattern.photo_alt_place or pattern.place
        problems.add(place, "alt-colour-none", word=word)
    if pattern.trim_hex and not series.finish.trim.kind:
        place = pattern.trim_place or pattern.place
        problems.add(place, "trim-idle", piece=series.finish.name)


def _credits(pattern: Pattern, problems: Problems) -> None:
    missing = [name for name in _ASKED if not getattr(pattern, name)]
    if missing:
        who = " and ".join(_ASKED[name] for name in missing)
        names = ", ".join(f"{name}: Maud Fennimore" for name in missing)
        mend = f"add a line, for example credits: {{{names}}}"
        if pattern.credits_place:
            mend = f"add it here, for example {names}"
        place = pattern.credits_place or pattern.place
        problems.add(place, "credit-missing", who=who, mend=mend)


def _series_release(series: Series, problems: Problems) -> None:
    """Of a series whose patterns are all ready long before it."""
    ready = [_latest(pattern).on for pattern in series.patterns if not pattern.release]
    if ready:
        place = series.release_place or series.place
        _complain_of_far("the series", series.release.date(), max(ready), place, problems)


def _complain_of_far(
    what: str, release: date, ready: date, place: Place, problems: Problems
) -> None:
    if release - ready <= _FAR:
        return
    problems.add(
        place,
        "release-far",
        what=what,
        release=release,
        revision=ready,
        years=(release - ready).days // 365,
        hint=_meant(release, ready, _FAR),
    )


def _meant(day: date, since: date, at_most: timedelta) -> str:
    """A hint to the day whose year has two digits the other way round, where that lies not so far behind another."""
    century, year = divmod(day.year, 100)
    turned = _day(f"{century:02}{year % 10}{year // 10}{day:-%m-%d}")
    if turned and timedelta() <= turned - since <= at_most:
        return f"did you mean {turned}?"
    return "look at the year of both"


def _revisions(pattern: Pattern, problems: Problems) -> None:
    """Of the first that lies many years behind the one before it."""
    for before, after in pairwise(pattern.revisions):
        if after.on - before.on > _LONG_AFTER:
            problems.add(
                after.place or pattern.place,
                "revision-far",
                years=(after.on - before.on).days // 365,
                before=before.on,
                hint=_meant(after.on, before.on, _LONG_AFTER),
            )
            return


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:  # 29 February
        return None


def _first_issue(pattern: Pattern) -> Revision:
    return min(pattern.revisions, key=lambda revision: revision.on)


def _latest(pattern: Pattern) -> Revision:
    return max(pattern.revisions, key=lambda revision: revision.on)


def _releases(series: Series, problems: Problems) -> None:
    """Patterns that come out before they are there; of several it is the release of their series, mostly, that is
    wrong. What is revised later corrects a pattern that is out."""
    release = series.release.date()
    early = [one for one in series.patterns if not one.release and _first_issue(one).on > release]
    if len(early) > 1:
        last = max(_first_issue(one).on for one in early)
        problems.add(
            series.release_place or series.place,
            "release-early",
            what="the series",
            release=release,
            by="",
            issued=f"the first issues of {len(early)} patterns are later, the last of {last}",
            mend=f"let the release be later{_same_day_after(release, last)}, or date these issues {release} or before",
        )
    for pattern in series.patterns:
        if pattern.release or early == [pattern]:
            _release(pattern, release, problems)


def _issued_on_that_day(series: Series, problems: Problems) -> None:
    """Of first issues about the day of their release in another year, or with day and month exchanged; of several it is the
    release, mostly, that is wrong."""
    near = [
        (pattern, release)
        for pattern in series.patterns
        if (release := (pattern.release or series.release).date()) > _first_issue(pattern).on
        and _slipped(_first_issue(pattern).on, release)
    ]
    of_series = [one for one in near if not one[0].release]
    if len(of_series) > 1:
        pattern, release = of_series[0]
        place = series.release_place or series.place
        first = _first_issue(pattern).on
        facts = {"release": release, "first": first, "what": "first issues"}
        problems.add(place, "issue-day-near", **facts, mend=_one_day(first, release))
        near = [one for one in near if one[0].release]
    for pattern, release in near:
        first_issue = _first_issue(pattern)
        place = first_issue.place or pattern.place
        facts = {"release": release, "first": first_issue.on, "what": "first issue"}
        mend = _one_day(first_issue.on, release)
        problems.add(place, "issue-day-near", **facts, mend=mend)


def _one_day(issued: date, release: date) -> str:
    if turned := _turned_near(issued, release):
        return f"should the release be {turned}?"
    return "look whether the two should be of one year, or one day, and mend the one that is wrong"


def _sooner(release: date, issued: date) -> str:
    """How a first issue and the release before it are mended: with day and month exchanged the issue may be in time."""
    turned = _day(f"{issued.year}-{issued.day:02}-{issued.month:02}")
    if turned and turned <= release and release - turned < _OF_ANOTHER_YEAR:
        return f"should that issue be of {turned}? Else let the release be later"
    return f"let the release be later{_same_day_after(release, issued)}, or date that issue {release} or before"


def _turned_near(issued: date, release: date) -> date | None:
    """The release with day and month exchanged, where that lies just behind the first issue, and the release does not."""
    turned = _day(f"{release.year}-{release.day:02}-{release.month:02}")
    far = release - issued > _SAME_SEASON
    near = turned and timedelta() <= turned - issued <= _SAME_SEASON
    return turned if far and near else None


def _slipped(day: date, other: date) -> bool:
    """Whether a first issue and its release are nearly the same day of two years, or would be with day and month exchanged."""
    if _turned_near(day, other):
        return True
    if day.year != other.year:
        years = timedelta(days=365.25) * (other.year - day.year)
        return abs(other - day - years) <= _SAME_SEASON
    return (day.month, day.day) == (other.day, other.month)


def _same_day_after(release: date, issued: date) -> str:
    """A hint to the same day of a year after the last of the first issues, where that lies so far behind that the year of the
    release is wrong, mostly."""
    if issued - release < _OF_ANOTHER_YEAR:
        return ""
    years = (release.year, issued.year, issued.year + 1)
    later = [_day(f"{year}{release:-%m-%d}") for year in years]
    return next((f", as {day}" for day in later if day and day >= issued), "")


def _release(pattern: Pattern, release: date, problems: Problems) -> None:
    first = _first_issue(pattern)
    by = " with its series"
    if pattern.release:
        release, by = pattern.release.date(), ""
    place = pattern.release_place or first.place or pattern.place
    if release < first.on:
        problems.add(
            place,
            "release-early",
            what="the pattern",
            release=release,
            by=by,
            issued=f"its first issue is of {first.on}",
            mend=_sooner(release, first.on),
        )
    elif pattern.release:
        _complain_of_far("the pattern", release, _latest(pattern).on, place, problems)
