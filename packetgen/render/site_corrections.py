"""What the page of corrections shows: what has been put right in which pattern, and its newest issue."""

from dataclasses import dataclass
from datetime import date

from packetgen.model import Pattern
from packetgen.reckon.figures import Figures
from packetgen.render.site_year import pattern_page


@dataclass(frozen=True)
class Correction:
    number: int  # of the revision; the first issue is 1
    on: date
    note: str


@dataclass(frozen=True)
class Issued:
    """A pattern that is out; `corrections` has the newest first, and nothing of the first issue."""

    id: str
    title: str
    href: str
    number: int  # of the newest revision
    on: date
    corrections: tuple[Correction, ...]


@dataclass(frozen=True)
class CorrectionsView:
    corrected: tuple[Issued, ...]  # the one that was corrected last first
    as_issued: tuple[Issued, ...]  # all others, as the year has them


def corrections_view(year: tuple[Figures, ...]) -> CorrectionsView:
    """`year` holds the patterns that are out, in the order of the year."""
    issued = [_issued(figures.pattern) for figures in year]
    corrected = [one for one in issued if one.corrections]
    return CorrectionsView(
        tuple(sorted(corrected, key=lambda one: one.on, reverse=True)),
        tuple(one for one in issued if not one.corrections),
    )


def _issued(pattern: Pattern) -> Issued:
    numbered = [
        Correction(number, revision.on, revision.note)
        for number, revision in enumerate(pattern.revisions, start=1)
    ]
    newest = numbered[-1]
    return Issued(
        pattern.id,
        pattern.title,
        pattern_page(pattern.id),
        newest.number,
        newest.on,
        tuple(reversed(numbered[1:])),
    )
