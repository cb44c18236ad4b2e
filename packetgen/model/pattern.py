"""A pattern: its key, its chart and its credits."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime

from packetgen.diagnostics import Place
from packetgen.model.chart import Bead, Daisy, Fraction, Grid, Knot, Line, Stitch
from packetgen.model.goods import Cloth, Colour, ThreadCard, Weave
from packetgen.model.laid_aside import LaidAside
from packetgen.model.people import Designer, Occasion

_NOWHERE = Place("")  # for nouns that no author wrote down


# What a pattern that costs nothing may show on its page.
GIVEN_AWAY = ("chart", "packet")

# Ways of finishing a design that need no wooden piece.
GENERIC_FINISHES = ("framed", "hoop", "flat-fold", "pillow", "ornament")


@dataclass(frozen=True)
class ThreadSet:
    """One line of thread with the strands it is worked in. A pattern's first set is the model's."""

    id: str
    card: ThreadCard
    strands: int
    backstitch_strands: int
    knot_strands: int
    daisy_strands: int = 1
    place: Place = field(default=_NOWHERE, compare=False)


@dataclass(frozen=True)
class MatchedSet:
    """A thread set whose colours the tool matches from another's where a key line does not give them."""

    into: ThreadSet
    source: ThreadSet
    place: Place = field(compare=False)


@dataclass(frozen=True)
class ClothOption:
    """A cloth in a colourway, worked over `over` of its threads."""

    cloth: Cloth
    colour: Colour
    over: int
    place: Place = field(compare=False)

    @property
    def over_blocks(self) -> bool:
        """Whether a stitch covers several blocks of aida, which is rare and mostly a slip."""
        return self.cloth.weave is Weave.AIDA and self.over > 1


@dataclass(frozen=True)
class KeyLine:
    """One character of the chart: its colour in every thread set, and how it is worked.

    `threads[set id]` holds one colour, or two for a blend (both in one needle).
    `strands[set id]` holds the author's own number of strands where she gave one.
    `cards[set id]` holds the cards of those colours where they are not all the set's own.
    `symbol` is the name of the chart shape that the author chose, if she did.
    `matched` names the sets in which it is left to the tool; `threads` has nothing for them until then.
    """

    mark: str
    stitch: Stitch
    threads: Mapping[str, tuple[Colour, ...]]
    strands: Mapping[str, int]
    place: Place = field(compare=False)
    cards: Mapping[str, tuple[ThreadCard, ...]] = field(default_factory=dict)
    symbol: str | None = None
    matched: tuple[str, ...] = ()

    def cards_in(self, thread_set: ThreadSet) -> tuple[ThreadCard, ...]:
        """The card of each colour in that set's needle."""
        own = (thread_set.card,) * len(self.threads[thread_set.id])
        return self.cards.get(thread_set.id, own)


@dataclass(frozen=True)
class Counter:
    """Where a pattern is sold."""

    name: str
    url: str
    place: Place | None = field(default=None, compare=False)  # of the address


@dataclass(frozen=True)
class Revision:
    on: date
    note: str
    place: Place | None = field(default=None, compare=False)  # of its day


@dataclass(frozen=True)
class Photo:
    """The stitched model, checked to be a readable picture."""

    data: bytes
    width_px: int
    height_px: int


@dataclass(frozen=True)
class Pattern:
    id: str
    title: str
    about: str
    designer: Designer
    occasion: Occasion
    cloths: tuple[ClothOption, ...]  # the first is the model's
    thread_sets: tuple[ThreadSet, ...]  # the first is the model's
    key: tuple[KeyLine, ...]
    grid: Grid
    fractions: tuple[Fraction, ...]
    lines: tuple[Line, ...]
    knots: tuple[Knot, ...]
    beads: tuple[Bead, ...]
    model_stitcher: str
    finisher: str
    sold_at: tuple[Counter, ...]
    revisions: tuple[Revision, ...]  # oldest first; at least one
    story_markdown: str
    notes_markdown: str
    photo: Photo | None
    place: Place = field(compare=False)
    daisies: tuple[Daisy, ...] = ()
    editions: tuple[str, ...] = ("colour",)  # of EDITION_NAMES
    matched: tuple[MatchedSet, ...] = ()
    also_finished_as: tuple[str, ...] = ()  # of GENERIC_FINISHES
    dyer: str = ""  # of its hand-dyed cloth or thread
    photographer: str = ""
    photo_awaited: bool = field(
        default=False, compare=False
    )  # told: its photographer is named, or a picture lies there
    trim_hex: str = ""  # in pictures; '' for one that goes with the design
    photo_alt: str = ""  # what the picture shows, in the author's words
    release: datetime | None = None  # where it is not that of the series
    release_place: Place | None = field(default=None, compare=False)
    designer_place: Place | None = field(default=None, compare=False)
    trim_place: Place | None = field(default=None, compare=False)  # of trim_hex
    about_place: Place | None = field(default=None, compare=False)
    photo_alt_place: Place | None = field(default=None, compare=False)
    credits_place: Place | None = field(default=None, compare=False)
    given_away: tuple[str, ...] = ()  # of GIVEN_AWAY; nothing of a pattern that is sold
    laid_aside: tuple[LaidAside, ...] = field(default=(), compare=False)

    @property
    def texts(self) -> dict[str, str]:
        """What its author tells in Markdown, by the files in its folder."""
        return {"story.md": self.story_markdown, "stitching.md": self.notes_markdown}
