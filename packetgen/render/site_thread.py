"""What a pattern's page says of thread and beads: never the stitches of one colour, nor their order by use."""

from dataclasses import dataclass

from packetgen.model import Bead, Colour, Pattern, ThreadCard, ThreadSet
from packetgen.nouns import plural
from packetgen.reckon.figures import BeadNeed
from packetgen.reckon.needle import threads_used
from packetgen.render.site_text import about_metres, counted


@dataclass(frozen=True)
class CardColours:
    """The colours of one thread card that the model is stitched in, in the card's own order."""

    card: str
    colours: tuple[Colour, ...]


@dataclass(frozen=True)
class OtherThread:
    """A card besides the set's own: '1 colour of Glowmoth Braid, metallic braid, in reels of 11 m'."""

    name: str
    said: str


@dataclass(frozen=True)
class SetRow:
    """One line of thread that the pattern may be stitched in."""

    name: str
    material: str
    unit: str
    unit_length: str
    strands: str
    colours: int  # of its own card
    others: tuple[OtherThread, ...]  # that single colours come from
    hand_dyed: bool
    to_buy: str  # '18 skeins' where that is the same on every cloth; else ''


@dataclass(frozen=True)
class BeadRow:
    name: str
    colour: Colour
    size_mm: float
    packets: str


def card_colours(pattern: Pattern) -> tuple[CardColours, ...]:
    """The colours of the model's thread set, its own card first."""
    cards: dict[str, list[Colour]] = {}
    for card, colour in threads_used(pattern, pattern.thread_sets[0]):
        cards.setdefault(card.name, []).append(colour)
    return tuple(CardColours(name, tuple(colours)) for name, colours in cards.items())


def set_rows(pattern: Pattern, to_buy: tuple[tuple[str, ...], ...]) -> tuple[SetRow, ...]:
    """`to_buy` has an entry a cloth, each with one a thread set."""
    return tuple(
        SetRow(
            name=thread_set.card.name,
            material=thread_set.card.material,
            unit=thread_set.card.sold_as,
            unit_length=about_metres(thread_set.card.length_m),
            strands=counted(thread_set.strands, "strand"),
            colours=sum(card == thread_set.card for card, _ in threads_used(pattern, thread_set)),
            others=_others(pattern, thread_set),
            hand_dyed=thread_set.card.hand_dyed,
            to_buy=bought[0] if len(set(bought)) == 1 else "",
        )
        for thread_set, bought in zip(pattern.thread_sets, zip(*to_buy))
    )


def bead_rows(needs: tuple[BeadNeed, ...]) -> tuple[BeadRow, ...]:
    return tuple(_bead_row(need) for need in needs)


def _others(pattern: Pattern, thread_set: ThreadSet) -> tuple[OtherThread, ...]:
    used = [card for card, _ in threads_used(pattern, thread_set) if card != thread_set.card]
    return tuple(
        OtherThread(
            card.name,
            f"{counted(used.count(card), 'colour')} of {card.name}: {card.material}, "
            f"in {plural(card.sold_as)} of {about_metres(card.length_m)}{_whole(card)}",
        )
        for card in {card.id: card for card in used}.values()
    )


def _whole(card: ThreadCard) -> str:
    return ", used whole" if card.strands == 1 else ""


def _bead_row(need: BeadNeed) -> BeadRow:
    bead: Bead = need.sample
    packets = counted(need.packets, "packet")
    return BeadRow(bead.card.name, bead.colour, bead.card.size_mm, packets)
