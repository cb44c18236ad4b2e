"""The swap calendar of a series: when each design goes up, and when it makes room for the next.

A design goes up some days before its own day, but not before it is released or before the day of the one
ahead of it is over, and comes down when the next goes up. Designs with the same day share it. Days are counted from the
release, so that the same series has the same calendar whenever it is built.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from itertools import groupby

from packetgen.model import Occasion, Series
from packetgen.reckon.calendar import coming, in_words

# As far as a moving feast is printed ahead.
YEARS_AHEAD = 3


@dataclass(frozen=True)
class Turn:
    """One time that a design hangs: up on the morning of `up`, down on the morning of `down`."""

    year: int  # that the rule of its occasion counts it to
    up: date
    day: date
    down: date


@dataclass(frozen=True)
class Swap:
    """A design of the series and its next turns, `YEARS_AHEAD` of them, the first one first."""

    title: str
    designer: str
    occasion: Occasion
    pattern_id: str | None  # None where it is only announced
    out: datetime  # from then on it may hang
    turns: tuple[Turn, ...] = ()

    @property
    def first_said(self) -> str:
        """The first day that it hangs for, or the month or season."""
        return in_words(self.occasion.rule, self.turns[0].day)

    @property
    def moves(self) -> bool:
        """Whether its day is another one from year to year."""
        return not self.occasion.rule.fixed


def swaps(series: Series) -> tuple[Swap, ...]:
    """Every design of the series, out or still to come, in the order in which they first go up."""
    designs = [
        Swap(p.title, p.designer.name, p.occasion, p.id, hangs_from(series, p.release))
        for p in series.patterns
    ]
    designs += [
        Swap(
            p.title,
            p.designer.name,
            p.occasion,
            p.pattern_id or None,
            hangs_from(series, p.release),
        )
        for p in series.to_come
    ]
    made = [replace(one, turns=turns) for one, turns in zip(designs, _turns(designs, series))]
    return tuple(sorted(made, key=lambda swap: swap.turns[0].day))


def hangs_from(series: Series, own: datetime | None) -> datetime:
    """The release of the series, or that of the pattern itself where it is later, by the same clock."""
    first = series.release
    return first if own is None else max(first, own.astimezone(first.tzinfo))


def _turns(designs: Sequence[Swap], series: Series) -> list[tuple[Turn, ...]]:
    """For each design its turns."""
    release, zone = series.release.date(), series.release.tzinfo
    # Two more than are kept: the last one kept must find the one that follows it.
    released = [one.out.date() for one in designs]
    number = YEARS_AHEAD + 2 + max(released, default=release).year - release.year
    days = sorted(
        (day, design, year)
        for design, one in enumerate(designs)
        for year, day in coming(one.occasion.rule, release, number, zone)
        if day >= released[design]
    )
    shared = [(day, list(those)) for day, those in groupby(days, key=lambda one: one[0])]
    ups, free = [], release
    for day, those in shared:
        out = min(released[design] for _, design, _ in those)
        ups.append(max(free, out, day - timedelta(days=series.goes_up_days)))
        free = day + timedelta(days=1)
    turns: list[list[Turn]] = [[] for _ in designs]
    for (day, those), up, down in zip(shared, ups, ups[1:]):
        for _, design, year in those:
            turns[design].append(Turn(year, max(up, released[design]), day, down))
    return [tuple(each[:YEARS_AHEAD]) for each in turns]
