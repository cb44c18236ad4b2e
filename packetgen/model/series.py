"""A series, and how its stitchers are taken to work."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime

from packetgen.diagnostics import Place, Problem
from packetgen.model.goods import ThreadCard
from packetgen.model.laid_aside import LaidAside
from packetgen.model.look import Look
from packetgen.model.pattern import Pattern, ThreadSet
from packetgen.model.people import Designer, Occasion
from packetgen.model.piece import FinishingPiece

# What a notice tells of, and what may be shown of a series before its release.
NOTICE_KINDS = ("news", "open call", "prize draw")


BEFORE_RELEASE = ("title", "teaser", "all")


@dataclass(frozen=True)
class Ease:
    """Thread that goes into the thickness of the cloth and the slack of the hand, as a share of what the
    stitches measure.

    Set so that a six-ply 8 m skein gives 2,000 to 1,800 crosses at 14 count with two strands, which is
    what stitchers reckon with (common practice, no source).
    """

    careful: float = 0.13
    usual: float = 0.18
    generous: float = 0.25


@dataclass(frozen=True)
class Assumptions:
    """How thread is worked with, as far as no chart can say: what a series may say otherwise.

    A needleful of 45 cm that loses two tails of 4 cm, and a thread led at most five stitches on behind
    the cloth, are common practice, no source.
    """

    needleful_mm: float = 450.0
    tail_mm: float = 40.0  # left at either end of a needleful
    travel_stitches: int = 5
    ease: Ease = Ease()


@dataclass(frozen=True)
class Notice:
    on: date
    title: str
    markdown: str
    kind: str = "news"  # of NOTICE_KINDS
    opens: date | None = None
    closes: date | None = None  # the last day
    who: str = ""  # may enter


@dataclass(frozen=True)
class ToCome:
    title: str
    designer: Designer
    occasion: Occasion
    pattern_id: str = ""  # of a pattern that is here but not out yet
    release: datetime | None = None  # its own, where it has one
    place: Place | None = field(default=None, compare=False)


@dataclass(frozen=True)
class Pace:
    """Stitches in an hour with the needle, three ways: common practice, no source."""

    slow: float = 100
    usual: float = 150
    quick: float = 200


@dataclass(frozen=True)
class Series:
    id: str
    title: str
    tagline: str
    release: datetime  # with its time zone
    finish: FinishingPiece
    thread_sets: tuple[ThreadSet, ...]
    designers: tuple[Designer, ...]
    patterns: tuple[Pattern, ...]  # in the author's order
    to_come: tuple[ToCome, ...]
    notices: tuple[Notice, ...]
    licence: str
    welcome_markdown: str
    place: Place = field(compare=False)
    address: str | None = None  # where the site will stand; shared links need it in full
    assumptions: Assumptions = Assumptions()
    pace: Pace = Pace()
    goes_up_days: int = 7  # before its day that each design is hung up
    release_place: Place | None = field(default=None, compare=False)
    before_release: str = "teaser"  # of BEFORE_RELEASE: what may be shown until then
    look: Look = Look()
    laid_aside: tuple[LaidAside, ...] = field(default=(), compare=False)


@dataclass(frozen=True)
class Listed:
    """What the page above several series says of one of them."""

    id: str
    title: str
    tagline: str
    address: str

    @classmethod
    def of(cls, series: Series) -> "Listed":
        return cls(series.id, series.title, series.tagline, series.address or "")


@dataclass(frozen=True)
class Content:
    """Everything under the content folder that a build needs, resolved: nobody looks a name up again."""

    series: tuple[Series, ...]
    thread_cards: Mapping[str, ThreadCard] = field(default_factory=dict)  # by id, used or not
    examples: tuple[Problem, ...] = ()  # that stand in its files still: advice for an editor
