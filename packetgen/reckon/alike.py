"""Colours of a pattern that are nearly the same, and what it would save if they were one."""

from dataclasses import dataclass
from itertools import combinations

from packetgen.model import ThreadSet
from packetgen.reckon.figures import Figures
from packetgen.reckon.matching import match
from packetgen.reckon.thread import Need, units_to_buy


@dataclass(frozen=True)
class Use:
    """A colour with the marks that are worked in it, alone or in a blend, and their stitches in cells."""

    need: Need
    marks: tuple[str, ...]
    stitches: int


@dataclass(frozen=True)
class Alike:
    one: Use
    other: Use
    difference: float  # CIEDE2000
    saved: int | None  # units; None for colours of two cards, which are not sold alike


def alike(figures: Figures, thread_set: ThreadSet, limit: float) -> tuple[Alike, ...]:
    """The pairs of colours no further apart than `limit`, the nearest first.

    Thread is reckoned on the model's cloth. What is saved is the units bought of both, less the units
    that hold the strand of both together.
    """
    found = (_pair(one, other) for one, other in combinations(uses(figures, thread_set), 2))
    near = (pair for pair in found if pair.difference <= limit)
    return tuple(sorted(near, key=lambda pair: pair.difference))


def uses(figures: Figures, thread_set: ThreadSet) -> tuple[Use, ...]:
    """Every colour that is bought for a thread set, and what is worked in it."""
    needs = next(needs for of, needs in figures.cloths[0].needs if of.id == thread_set.id)
    uses = []
    for need in needs:
        works = [
            work
            for work in figures.works
            if (need.card.id, need.colour)
            in (
                (card.id, colour)
                for card, colour in zip(
                    work.line.cards_in(thread_set), work.line.threads[thread_set.id]
                )
            )
        ]
        marks = tuple(work.line.mark for work in works)
        uses.append(Use(need, marks, sum(work.total_stitches for work in works)))
    return tuple(uses)


def _pair(one: Use, other: Use) -> Alike:
    apart = match(one.need.colour, other.need.colour).difference
    if one.need.card.id != other.need.card.id:
        return Alike(one, other, apart, None)
    together = units_to_buy(one.need.strand + other.need.strand, one.need.card)
    return Alike(one, other, apart, one.need.units + other.need.units - together)
