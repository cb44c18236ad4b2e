"""What is bought: thread, cloth and beads, as their cards tell."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import Enum

from packetgen.diagnostics import Place


class Weave(Enum):
    AIDA = "aida"
    EVENWEAVE = "evenweave"
    LINEN = "linen"


@dataclass(frozen=True)
class Price:
    """What one unit costs as it is sold; of cloth, a fat quarter."""

    amount: Decimal
    currency: str  # three letters, as in ISO 4217: EUR
    place: Place = field(default=Place(""), compare=False)


@dataclass(frozen=True)
class Colour:
    """One colour of a card of threads or beads."""

    number: str
    name: str
    hex: str


@dataclass(frozen=True)
class ThreadCard:
    """A line of thread: how it is sold and its colours by number."""

    id: str
    name: str
    material: str
    strands: int  # plies that can be parted; 1 is a thread used whole
    tex: float  # of one strand, grams in 1000 m (ISO 1144)
    sold_as: str  # the word for one unit: skein, spool, ball
    length_m: float  # of one unit as sold, before parting
    hand_dyed: bool
    colours: Mapping[str, Colour]
    braid: bool = False  # a metallic braid: one strand of it, whatever a thread set says
    price: Price | None = None
    tex_place: Place | None = field(default=None, compare=False)  # where it is given so


@dataclass(frozen=True)
class Cloth:
    id: str
    name: str
    weave: Weave
    count_per_inch: float
    over: int  # threads (or blocks) that one stitch covers, as usually worked
    hand_dyed: bool
    colours: Mapping[str, Colour]  # by name; number is the name again
    price: Price | None = None  # of a fat quarter


@dataclass(frozen=True)
class BeadCard:
    id: str
    name: str
    size_mm: float
    per_packet: int
    colours: Mapping[str, Colour]
    price: Price | None = None  # of a packet
