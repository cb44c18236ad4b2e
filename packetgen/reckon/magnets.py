"""How many magnets hold a mounted design to the wood, and where: the same for all designs of a series.

One painted piece takes every design, so its magnets cannot move. The magnets sit inside what all cards
cover together, as each is laid on the panel, along the edge of that rectangle. A card that leaves them no
room there is left out, and is held otherwise.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import product
from math import ceil, dist

from packetgen.model import Magnets, Point
from packetgen.reckon.fit import Fit
from packetgen.reckon.sizes import Size

# One at every corner, so that no corner lifts and nothing swings: common practice, no source.
FEWEST = 4
# Of the pull on the label, which is measured on bare thick steel: what is left through cloth and on a thin
# washer; and what of that keeps the piece from sliding down the wood. Both from memory.
THROUGH_CLOTH, AGAINST_SLIDING = 0.4, 0.2
# Between the rims of two magnets, so that they neither touch nor snap together: from memory.
APART_MM = 2.0
# Of what the magnets of a card alone would stand apart: with less, in width or height, they hold its middle
# and not its corners. Our own choice.
SPREAD = 0.5
_DUST = 1e-9


@dataclass(frozen=True)
class Card:
    """A mounting card as it lies on the panel, in the panel's own millimetres, and what it weighs."""

    left_mm: float
    top_mm: float
    right_mm: float
    bottom_mm: float
    weight_g: float = 0.0

    @property
    def middle_mm(self) -> Point:
        return (self.left_mm + self.right_mm) / 2, (self.top_mm + self.bottom_mm) / 2


def card_on_panel(fit: Fit, weight_g: float) -> Card:
    """The card where `fit` lays it."""
    left, top = fit.at_mm
    return Card(left, top, left + fit.card.width_mm, top + fit.card.height_mm, weight_g)


@dataclass(frozen=True)
class Spot:
    """A magnet's place: how many steps of how many it is from the first magnet towards the last."""

    across: tuple[int, int]
    down: tuple[int, int]


@dataclass(frozen=True)
class MagnetPlan:
    """The magnets of a series. Where no card has room for them, `spots` is empty, and none are used."""

    pairs: int  # asked for, whether there is room for them or not
    by_weight: int  # pairs that the weight alone asks for; 0 where no pull is given
    heaviest_g: float
    first_mm: Point  # the place of the upper left magnet, in the panel's own mm
    last_mm: Point  # and of the lower right one
    spots: tuple[Spot, ...]
    inset_mm: float = 0.0  # at least, from the middle of a magnet to the edge of every card

    def serves(self, card: Card) -> bool:
        """Whether a card has room for all of them where they are, and they carry it."""
        if not self.spots or (self.by_weight and card.weight_g > self.heaviest_g):
            return False
        (left, top), (right, bottom), inset = self.first_mm, self.last_mm, self.inset_mm - _DUST
        inside = (
            left - card.left_mm,
            card.right_mm - right,
            top - card.top_mm,
            card.bottom_mm - bottom,
        )
        return min(inside) >= inset

    @property
    def apart(self) -> Size:
        """How wide and how high the outermost magnets stand apart, from middle to middle."""
        return Size(self.last_mm[0] - self.first_mm[0], self.last_mm[1] - self.first_mm[1])

    def drawn_in(self, card: Card) -> tuple[bool, bool]:
        """Whether they stand so close together, in width and in height, that they hold the middle of a card
        that they serve and not its corners (`SPREAD`)."""
        alone = Size(card.right_mm - card.left_mm, card.bottom_mm - card.top_mm).grown(
            -self.inset_mm
        )
        return (
            self.apart.width_mm < SPREAD * alone.width_mm - _DUST,
            self.apart.height_mm < SPREAD * alone.height_mm - _DUST,
        )

    @property
    def centres_mm(self) -> tuple[Point, ...]:
        (left, top), (right, bottom) = self.first_mm, self.last_mm
        return tuple(
            (_between(left, right, *spot.across), _between(top, bottom, *spot.down))
            for spot in self.spots
        )


def magnet_plan(cards: Sequence[Card], magnets: Magnets) -> MagnetPlan:
    """The places that serve all of `cards`. Without cards, or where the author wants no magnets, none."""
    if not cards:
        return MagnetPlan(*pairs_for(0.0, magnets), 0.0, (0.0, 0.0), (0.0, 0.0), ())
    common, inset = in_common(*cards), magnets.inset_mm
    heaviest_g = common.weight_g
    pairs, by_weight = pairs_for(heaviest_g, magnets)
    first = common.left_mm + inset, common.top_mm + inset
    last = common.right_mm - inset, common.bottom_mm - inset
    wide, high = last[0] - first[0], last[1] - first[1]
    spots = spots_round(wide, high, pairs) if min(wide, high) > 0 else ()
    plan = MagnetPlan(pairs, by_weight, heaviest_g, first, last, spots, inset)
    return plan if _have_room(plan.centres_mm, magnets.diameter_mm) else replace(plan, spots=())


def plan_for_most(cards: Sequence[Card], magnets: Magnets) -> MagnetPlan:
    """The places that serve all of `cards`, or else the larger ones: of a smaller card, which would take
    the others' magnets away, `serves` then says that it has no room. Where none has room, the plan of all.
    """
    plan = magnet_plan(cards, magnets)
    if plan.spots or not magnets.pairs:
        return plan
    kept: tuple[Card, ...] = ()  # what all cards that are served have in common, as one card
    for card in sorted(cards, key=_size_mm2, reverse=True):
        found = magnet_plan((*kept, card), magnets)
        if found.spots:
            plan, kept = found, (in_common(*kept, card),)
    return plan


def in_common(*cards: Card) -> Card:
    """What all of them cover, as heavy as the heaviest."""
    return Card(
        max(card.left_mm for card in cards),
        max(card.top_mm for card in cards),
        min(card.right_mm for card in cards),
        min(card.bottom_mm for card in cards),
        max(card.weight_g for card in cards),
    )


def _size_mm2(card: Card) -> float:
    return (card.right_mm - card.left_mm) * (card.bottom_mm - card.top_mm)


def pairs_for(weight_g: float, magnets: Magnets) -> tuple[int, int]:
    """How many pairs, and how many of them the weight asks for (0 where no pull is given).

    By weight: what is to be carried ÷ (the pull of one × what is left of it). Never fewer than the author's
    own number, nor than one for every corner; with none of the author's, none at all.
    """
    if not magnets.pairs:
        return 0, 0
    by_weight = 0
    if magnets.holds_g is not None:
        carried_by_one_g = magnets.holds_g * THROUGH_CLOTH * AGAINST_SLIDING
        by_weight = ceil(weight_g / carried_by_one_g - _DUST)
    return max(FEWEST, magnets.pairs, by_weight), by_weight


def spots_round(wide_mm: float, high_mm: float, pairs: int) -> tuple[Spot, ...]:
    """The four corners first; each further one goes on the side with the widest gap, and the gaps of a side
    are equal."""
    if not pairs:
        return ()
    corners = [Spot((x, 1), (y, 1)) for y, x in product((0, 1), repeat=2)]
    sides = {"top": wide_mm, "bottom": wide_mm, "left": high_mm, "right": high_mm}
    between = dict.fromkeys(sides, 0)
    for _ in range(pairs - FEWEST):
        widest = max(sides, key=lambda side: round(sides[side] / (between[side] + 1), 6))
        between[widest] += 1
    on_sides = []
    for side, number in between.items():
        for step in range(1, number + 1):
            along = (step, number + 1)
            on_sides.append(
                {
                    "top": Spot(along, (0, 1)),
                    "bottom": Spot(along, (1, 1)),
                    "left": Spot((0, 1), along),
                    "right": Spot((1, 1), along),
                }[side]
            )
    return tuple(corners + on_sides)


def _between(start: float, end: float, step: int, steps: int) -> float:
    return start + (end - start) * step / steps


def _have_room(centres: Sequence[Point], diameter_mm: float) -> bool:
    least_mm = diameter_mm + APART_MM
    return all(
        dist(one, other) >= least_mm - _DUST
        for number, one in enumerate(centres)
        for other in centres[:number]
    )
