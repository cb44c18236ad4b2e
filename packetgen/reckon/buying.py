"""The buy list: one table a thread set, one row a colour, one column a cloth option.

A set's table may have colours of another card too, a braid for example: each row names its own.
"""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from packetgen.model import ClothOption, Colour, ThreadCard, ThreadSet
from packetgen.reckon.figures import Figures
from packetgen.reckon.thread import Lengths, Need, units_to_buy, warning


@dataclass(frozen=True)
class BuyRow:
    card: ThreadCard
    colour: Colour
    needs: tuple[Need, ...]  # one a cloth option


@dataclass(frozen=True)
class Warned:
    """A sentence of warning, and the cloths on which it is true."""

    card: ThreadCard
    colour: Colour
    sentence: str
    cloths: tuple[ClothOption, ...]


@dataclass(frozen=True)
class Total:
    """What to buy in all of what is sold by one word: skeins, reels."""

    sold_as: str
    units: tuple[int, ...]  # one figure a cloth option


@dataclass(frozen=True)
class BuyTable:
    set: ThreadSet
    cloths: tuple[ClothOption, ...]
    rows: tuple[BuyRow, ...]
    totals: tuple[Total, ...]  # in the order of the rows
    warnings: tuple[Warned, ...]

    @property
    def hand_dyed(self) -> tuple[ThreadCard, ...]:
        """Every card of these rows that is dyed by hand, the set's own or another."""
        cards = {row.card.id: row.card for row in self.rows if row.card.hand_dyed}
        return tuple(cards.values())


def buy_tables(figures: Figures) -> tuple[BuyTable, ...]:
    """The tables of one pattern, the model's thread set first."""
    tables = []
    for index, thread_set in enumerate(figures.pattern.thread_sets):
        columns = [_as_on_cards(on.needs[index][1], thread_set.card) for on in figures.cloths]
        rows = tuple(BuyRow(cells[0].card, cells[0].colour, cells) for cells in zip(*columns))
        tables.append(
            BuyTable(
                thread_set,
                figures.pattern.cloths,
                rows,
                _totals(columns),
                tuple(warned for row in rows for warned in _warnings(row, figures.pattern.cloths)),
            )
        )
    return tuple(tables)


def _as_on_cards(needs: tuple[Need, ...], own: ThreadCard) -> tuple[Need, ...]:
    """Those of the set's own card first, and of each card by number, as a shop has its threads."""
    cards = list(dict.fromkeys((own.id, *(need.card.id for need in needs))))
    return tuple(
        sorted(needs, key=lambda need: (cards.index(need.card.id), by_number(need.colour.number)))
    )


def by_number(number: str) -> tuple[tuple[str, int], ...]:
    """What to sort the numbers of colours by: '9' before '10', 'E2' before 'E10'."""
    return tuple(
        (letters, int(digits or 0)) for letters, digits in re.findall(r"(\D*)(\d*)", number)
    )


def _totals(columns: list[tuple[Need, ...]]) -> tuple[Total, ...]:
    by_column = [units_by_word(column) for column in columns]
    return tuple(
        Total(sold_as, tuple(units[sold_as] for units in by_column)) for sold_as in by_column[0]
    )


def units_by_word(needs: Iterable[Need]) -> dict[str, int]:
    """{'skein': 23, 'reel': 1}: the units of these needs by what they are sold as."""
    units: dict[str, int] = {}
    for need in needs:
        units[need.card.sold_as] = units.get(need.card.sold_as, 0) + need.units
    return units


def _warnings(row: BuyRow, cloths: tuple[ClothOption, ...]) -> tuple[Warned, ...]:
    by_sentence: dict[str, list[ClothOption]] = {}
    for need, option in zip(row.needs, cloths):
        if need.warning:
            by_sentence.setdefault(need.warning, []).append(option)
    return tuple(Warned(row.card, row.colour, said, tuple(on)) for said, on in by_sentence.items())


@dataclass(frozen=True)
class Shared:
    """One colour for several patterns together."""

    card: ThreadCard
    colour: Colour
    strand: Lengths
    units: int
    units_apart: int  # if each pattern were bought for by itself
    warning: str  # '' or one plain sentence about the units


def shared_needs(lists: tuple[tuple[Need, ...], ...]) -> tuple[Shared, ...]:
    """One list for several patterns, card by card, each by number: the generous figures are summed
    before they are rounded up, so what is left of a unit in one design serves the next. It is never
    short of what all of them take generously, and never more than they would take one by one."""
    cards: dict[str, ThreadCard] = {}
    strand: dict[tuple[str, str], Lengths] = {}
    apart: dict[tuple[str, str], int] = {}
    for need in (need for needs in lists for need in needs):
        cards[need.card.id] = need.card
        key = (need.card.id, need.colour.number)
        strand[key] = strand.get(key, Lengths()) + need.strand
        apart[key] = apart.get(key, 0) + need.units
    return tuple(
        _shared(card, colour, strand[key], apart[key])
        for card in cards.values()
        for number, colour in sorted(card.colours.items(), key=lambda one: by_number(one[0]))
        if (key := (card.id, number)) in strand
    )


def _shared(card: ThreadCard, colour: Colour, strand: Lengths, apart: int) -> Shared:
    # Lists that are each whole but for the dust of floating point may sum to a unit more.
    units = min(units_to_buy(strand, card), apart)
    return Shared(card, colour, strand, units, apart, warning(strand, card))
