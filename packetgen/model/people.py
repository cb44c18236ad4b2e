"""Who made a design, and when it is due."""

from dataclasses import dataclass, field
from enum import Enum

from packetgen.diagnostics import Place

_NOWHERE = Place("")  # for nouns that no author wrote down


@dataclass(frozen=True)
class DateRule:
    """A day of the year, as a rule. Exactly one of the four forms is filled.

    fixed: (month, day). nth: (n, weekday, month) with Monday 0 and n = -1 for the last.
    easter: (days after Easter, may be negative; Julian or not).
    sun: (days after, may be negative; the month of the equinox or solstice: 3, 6, 9 or 12).

    whole: 'April' or 'spring' where the occasion is all of it, and `fixed` only the day it begins; else ''.
    """

    said: str
    fixed: tuple[int, int] | None = None
    nth: tuple[int, int, int] | None = None
    easter: tuple[int, bool] | None = None
    sun: tuple[int, int] | None = None
    whole: str = ""


@dataclass(frozen=True)
class Occasion:
    name: str
    rule: DateRule
    place: Place = field(default=_NOWHERE, compare=False)  # of the rule


class Sells(Enum):
    """How a designer sells her patterns."""

    PDF = "PDF"
    PRINTED = "printed"
    BOTH = "both"
    NEITHER = "neither"

    @property
    def as_pdf(self) -> bool:
        return self in (Sells.PDF, Sells.BOTH)

    @property
    def on_paper(self) -> bool:
        return self in (Sells.PRINTED, Sells.BOTH)


@dataclass(frozen=True)
class Link:
    name: str
    url: str


@dataclass(frozen=True)
class Designer:
    id: str
    name: str
    about: str
    sells: Sells
    shop: str | None
    links: tuple[Link, ...] = ()  # besides the shop
    studio: str = ""  # that she shares with others
    place: Place = field(default=_NOWHERE, compare=False)
