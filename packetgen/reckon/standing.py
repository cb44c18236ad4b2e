"""What of a series may be seen at a moment: nothing that comes out later is handed on to any page."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime, time

from packetgen.model import Designer, Occasion, Pattern, Series, ToCome
from packetgen.reckon.figures import Figures
from packetgen.reckon.moments import AsOf, moment_of


@dataclass(frozen=True)
class Awaited:
    """A pattern before its release. `designer` and `occasion` are None where only its title may be shown."""

    pattern_id: str
    title: str
    release: datetime
    designer: Designer | None = None
    occasion: Occasion | None = None

    @property
    def teaser(self) -> bool:
        """Whether it has a page of its own, with a close-up."""
        return self.designer is not None


@dataclass(frozen=True)
class Standing:
    """A series as it stands. `teased` is for drawing the close-ups of `awaited`, and for no page."""

    series: Series  # with only the patterns, revisions and notices that are out
    figures: tuple[Figures, ...]  # of those patterns, in the same order
    awaited: tuple[Awaited, ...] = ()  # in the author's order
    teased: tuple[Figures, ...] = ()  # of those with a teaser
    since: datetime | None = None  # when something last came out; None if nothing had
    until: datetime | None = None  # when something more comes out; None if nothing does


def standing(series: Series, figures: tuple[Figures, ...], as_of: AsOf) -> Standing:
    """`series` with its `figures`, cut down to what is out; a bare day is taken at its very end."""
    if as_of is None:
        return Standing(series, figures)
    moment = moment_of(as_of, series.release.tzinfo)
    today = moment.astimezone(series.release.tzinfo).date()
    out, teased, awaited = [], [], []
    for each in figures:
        pattern = each.pattern
        if series.before_release == "all" or release_of(pattern, series) <= moment:
            out.append(replace(each, pattern=_issued(pattern, today)))
            continue
        awaited.append(_awaited(pattern, series))
        if awaited[-1].teaser:
            teased.append(each)
    own_release = {pattern.id: pattern.release for pattern in series.patterns}
    expected = tuple(
        ToCome(
            one.title, one.designer, one.occasion, one.pattern_id, own_release.get(one.pattern_id)
        )
        for one in awaited
        if one.designer and one.occasion
    )
    seen = replace(
        series,
        patterns=tuple(each.pattern for each in out),
        notices=tuple(notice for notice in series.notices if notice.on <= today),
        to_come=expected + series.to_come,
    )
    since = max((one for one in _moments(series) if one <= moment), default=None)
    until = min((one for one in _moments(series) if one > moment), default=None)
    return Standing(seen, tuple(out), tuple(awaited), tuple(teased), since, until)


def release_of(pattern: Pattern, series: Series) -> datetime:
    """When the pattern may be seen: its own moment, or that of the series."""
    return pattern.release or series.release


def _moments(series: Series) -> Iterator[datetime]:
    """Every moment at which something of the series comes out. A first issue comes out with its pattern, and so does a
    later one of before that day."""
    zone = series.release.tzinfo
    yield from (datetime.combine(notice.on, time.min, zone) for notice in series.notices)
    for pattern in series.patterns:
        out = release_of(pattern, series)
        yield out
        later = (datetime.combine(one.on, time.min, zone) for one in pattern.revisions[1:])
        yield from (day for day in later if series.before_release == "all" or day > out)


def _issued(pattern: Pattern, today: date) -> Pattern:
    """Without the revisions that are dated later; the first issue stays."""
    first, *later = pattern.revisions
    return replace(pattern, revisions=(first, *(one for one in later if one.on <= today)))


def _awaited(pattern: Pattern, series: Series) -> Awaited:
    of = Awaited(pattern.id, pattern.title, release_of(pattern, series))
    if series.before_release == "title":
        return of
    return replace(of, designer=pattern.designer, occasion=pattern.occasion)
