"""The buy list: one table a thread set, one row a colour, one column a cloth option."""

from dataclasses import dataclass

from packetgen.model import ClothOption, Colour, ThreadCard, ThreadSet
from packetgen.reckon.figures import Figures
from packetgen.reckon.thread import Lengths, Need, units_to_buy


@dataclass(frozen=True)
class BuyRow:
    colour: Colour
    needs: tuple[Need, ...]  # one a cloth option


@dataclass(frozen=True)
class Warned:
    """A sentence of warning, and the cloths on which it is true."""

    colour: Colour
    sentence: str
    cloths: tuple[ClothOption, ...]


@dataclass(frozen=True)
class BuyTable:
    set: ThreadSet
    cloths: tuple[ClothOption, ...]
    rows: tuple[BuyRow, ...]
    units: tuple[int, ...]  # in all, one figure a cloth option
    warnings: tuple[Warned, ...]


def buy_tables(figures: Figures) -> tuple[BuyTable, ...]:
    """The tables of one pattern, the model's thread set first."""
    tables = []
    for index, thread_set in enumerate(figures.pattern.thread_sets):
        columns = [on.needs[index][1] for on in figures.cloths]
        rows = tuple(BuyRow(cells[0].colour, cells) for cells in zip(*columns))
        tables.append(
            BuyTable(
                thread_set,
                figures.pattern.cloths,
                rows,
                tuple(sum(need.units for need in column) for column in columns),
                tuple(warned for row in rows for warned in _warnings(row, figures.pattern.cloths)),
            )
        )
    return tuple(tables)


def _warnings(row: BuyRow, cloths: tuple[ClothOption, ...]) -> tuple[Warned, ...]:
    by_sentence: dict[str, list[ClothOption]] = {}
    for need, option in zip(row.needs, cloths):
        if need.warning:
            by_sentence.setdefault(need.warning, []).append(option)
    return tuple(Warned(row.colour, said, tuple(on)) for said, on in by_sentence.items())


@dataclass(frozen=True)
class Shared:
    """One colour for several patterns together."""

    colour: Colour
    strand: Lengths
    units: int
    units_apart: int  # if each pattern were bought for by itself


def shared_needs(lists: tuple[tuple[Need, ...], ...], card: ThreadCard) -> tuple[Shared, ...]:
    """One list for several patterns of one thread card, in the card's order: the generous figures are
    summed before they are rounded up, so what is left of a unit in one design serves the next."""
    strand: dict[str, Lengths] = {}
    apart: dict[str, int] = {}
    for need in (need for needs in lists for need in needs):
        strand[need.colour.number] = strand.get(need.colour.number, Lengths()) + need.strand
        apart[need.colour.number] = apart.get(need.colour.number, 0) + need.units
    return tuple(
        Shared(colour, strand[number], units_to_buy(strand[number], card), apart[number])
        for number, colour in card.colours.items()
        if number in strand
    )
