"""What is bought for one pattern or for several together: threads, beads and cloth, and what they cost.

Remnants serve the next design: threads and beads are summed before they are rounded up to whole units,
and pieces of one cloth are cut from the same fat quarters.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from packetgen.model import BeadCard, Cloth, Colour, Price, ThreadSet
from packetgen.reckon.buying import Shared, shared_needs
from packetgen.reckon.cutting import FAT_QUARTER, as_cut, order
from packetgen.reckon.figures import Figures, OnCloth, beads_with_spares
from packetgen.reckon.sizes import Size
from packetgen.reckon.thread import Need
from packetgen.units import up_to_step

# What one of it is called.
PACKET, FAT_QUARTER_SAID = "packet", "fat quarter"


@dataclass(frozen=True)
class Chosen:
    """A pattern with the cloth and the thread set that are bought for it."""

    figures: Figures
    on: OnCloth
    set: ThreadSet

    @property
    def needs(self) -> tuple[Need, ...]:
        return next(needs for thread_set, needs in self.on.needs if thread_set.id == self.set.id)

    @property
    def cut(self) -> Size:
        """The piece of cloth that the design takes, rounded up."""
        return as_cut(self.on.mounting.cloth)


@dataclass(frozen=True)
class Beads:
    """Beads of one colour for all the patterns."""

    card: BeadCard
    colour: Colour
    sewn: int
    with_spares: int
    units: int
    units_apart: int


@dataclass(frozen=True)
class ClothPieces:
    """One cloth in one colour for all the patterns, a piece for each design."""

    cloth: Cloth
    colour: Colour
    pieces: tuple[Size, ...]  # as cut, those that a fat quarter holds
    units: int  # fat quarters
    units_apart: int  # if each design had its own
    by_measure: tuple[Size, ...]  # as cut, too large for a fat quarter


Line = Shared | Beads | ClothPieces


@dataclass(frozen=True)
class Kit:
    designs: tuple[Chosen, ...]
    threads: tuple[Shared, ...]
    beads: tuple[Beads, ...]
    cloths: tuple[ClothPieces, ...]

    @property
    def lines(self) -> tuple[Line, ...]:
        return (*self.threads, *self.beads, *self.cloths)

    @property
    def totals(self) -> tuple[Price, ...]:
        """What all lines with a price cost, one total a currency, in the order of their letters."""
        sums: dict[str, Price] = {}
        for cost in filter(None, map(cost_of, self.lines)):
            before = sums.get(cost.currency)
            sums[cost.currency] = (
                Price(before.amount + cost.amount, cost.currency) if before else cost
            )
        return tuple(sums[currency] for currency in sorted(sums))

    @property
    def without_price(self) -> tuple[Line, ...]:
        """Lines of which something is bought at a price that nobody has given."""
        return tuple(
            line
            for line in self.lines
            if cost_of(line) is None or (isinstance(line, ClothPieces) and line.by_measure)
        )


def kit(designs: Sequence[Chosen]) -> Kit:
    """One list for these designs. The list of one design alone is that design's own."""
    threads = shared_needs(tuple(design.needs for design in designs))
    return Kit(
        tuple(designs),
        tuple(line for line in threads if line.units),
        shared_beads([design.figures for design in designs]),
        cloth_pieces(designs),
    )


def shared_beads(all_figures: Iterable[Figures]) -> tuple[Beads, ...]:
    """Beads summed over the patterns before spares are added and packets counted."""
    sewn: dict[tuple[str, str], int] = {}
    apart: dict[tuple[str, str], int] = {}
    samples: dict[tuple[str, str], tuple[BeadCard, Colour]] = {}
    for need in (need for figures in all_figures for need in figures.beads):
        card, colour = need.sample.card, need.sample.colour
        key = (card.id, colour.number)
        samples[key] = card, colour
        sewn[key] = sewn.get(key, 0) + need.sewn
        apart[key] = apart.get(key, 0) + need.packets
    result = []
    for key, (card, colour) in samples.items():
        total = beads_with_spares(sewn[key])
        packets = round(up_to_step(total / card.per_packet, 1))
        result.append(Beads(card, colour, sewn[key], total, packets, apart[key]))
    return tuple(result)


def cloth_pieces(designs: Iterable[Chosen]) -> tuple[ClothPieces, ...]:
    """For each cloth in each colour the fat quarters that give every design its piece."""
    cuts: dict[tuple[str, str], list[Size]] = {}
    cloths: dict[tuple[str, str], tuple[Cloth, Colour]] = {}
    for design in designs:
        option = design.on.option
        key = (option.cloth.id, option.colour.name)
        cloths[key] = option.cloth, option.colour
        cuts.setdefault(key, []).append(design.cut)
    result = []
    for key, (cloth, colour) in cloths.items():
        ordered = order(cuts[key], FAT_QUARTER)
        large = tuple(cuts[key][index] for index in ordered.too_large)
        pieces = tuple(cut for i, cut in enumerate(cuts[key]) if i not in ordered.too_large)
        result.append(ClothPieces(cloth, colour, pieces, len(ordered.cloths), len(pieces), large))
    return tuple(result)


def price_of(line: Line) -> Price | None:
    """Of one unit."""
    return line.cloth.price if isinstance(line, ClothPieces) else line.card.price


def cost_of(line: Line) -> Price | None:
    """What the line's units cost; None where their price is not known."""
    price = price_of(line)
    return Price(price.amount * line.units, price.currency) if price and line.units else None


def unit_of(line: Line) -> str:
    """The word for one unit: skein, packet, fat quarter."""
    if isinstance(line, Shared):
        return line.card.sold_as
    return PACKET if isinstance(line, Beads) else FAT_QUARTER_SAID


def price_name(line: Line) -> str:
    """Whose price it is: 'Larkmoss Stranded', 'Wren Linen 36 by measure'."""
    if not isinstance(line, ClothPieces):
        return line.card.name
    return f"{line.cloth.name} by measure" if line.by_measure else line.cloth.name
