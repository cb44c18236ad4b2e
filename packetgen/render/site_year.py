"""The gardener's year of a series: on which days its pictures are hung, and in which order."""

from dataclasses import dataclass
from datetime import date

from packetgen.model import Occasion, Series
from packetgen.reckon.calendar import day_of

# A moving feast is printed for this many years ahead.
YEARS_AHEAD = 3


@dataclass(frozen=True)
class Hanging:
    """An occasion and its days. `moving` holds the coming days of a feast that has no fixed day."""

    name: str
    said: str
    first: date  # the first one on or after the release
    moving: tuple[date, ...]


@dataclass(frozen=True)
class Swap:
    """A line of the swap calendar; `href` is '' for a pattern that is still to come."""

    hanging: Hanging
    title: str
    designer: str
    href: str


def hanging(occasion: Occasion, release: date) -> Hanging:
    """The days of an occasion from the release day on."""
    years = range(release.year - 1, release.year + YEARS_AHEAD + 2)
    coming = [day for year in years if (day := day_of(occasion.rule, year)) >= release]
    coming = coming[:YEARS_AHEAD]
    if occasion.rule.fixed:
        return Hanging(occasion.name, occasion.rule.said, coming[0], ())
    return Hanging(occasion.name, occasion.rule.said, coming[0], tuple(coming))


def place_in_year(occasion: Occasion, release: date) -> tuple[int, int]:
    """Month and day in the first whole year after the release: what the calendar is sorted by."""
    day = day_of(occasion.rule, release.year + 1)
    return day.month, day.day


def swaps(series: Series) -> tuple[Swap, ...]:
    """Every pattern of the series, out or still to come, from January to December."""
    release = series.release.date()
    lines = [(p.occasion, p.title, p.designer.name, pattern_page(p.id)) for p in series.patterns]
    lines += [(p.occasion, p.title, p.designer.name, "") for p in series.to_come]
    lines.sort(key=lambda line: place_in_year(line[0], release))
    return tuple(Swap(hanging(occasion, release), *rest) for occasion, *rest in lines)


def pattern_page(pattern_id: str) -> str:
    """Where a pattern's page stands in the site."""
    return f"{pattern_id}/index.html"
