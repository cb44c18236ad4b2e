"""What the threads and stitches of a chart are called when it is read aloud."""

import re
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, replace

from packetgen.model import Colour, Fraction, Pattern, Stitch, ThreadCard
from packetgen.reckon.needle import strands_for, threads_used

CLOTH = "bare"
PARTS = "in parts"

# One stitch and several, as they stand behind the name of a thread; a full cross goes without saying.
_BESIDE: Mapping[Stitch, tuple[str, str]] = {
    Stitch.FULL: ("", ""),
    Stitch.HALF: (" half stitch", " half stitches"),
    Stitch.HALF_BACK: (" falling half stitch", " falling half stitches"),
    Stitch.THREE_QUARTER: (" three-quarter stitch", " three-quarter stitches"),
    Stitch.QUARTER: (" quarter stitch", " quarter stitches"),
    Stitch.PETITE: (" petite stitch", " petite stitches"),
}
# What a listener must know about a kind of stitch to place it right.
EXPLAINED: Mapping[Stitch, str] = {
    Stitch.HALF: "A half stitch rises from the lower left to the upper right.",
    Stitch.HALF_BACK: "A falling half stitch goes from the upper left to the lower right.",
    Stitch.THREE_QUARTER: "A three-quarter stitch leaves 1 corner of its square open.",
    Stitch.QUARTER: "A quarter stitch goes from 1 corner to the middle of its square.",
    Stitch.PETITE: "A petite stitch is a whole small cross in 1 quarter of its square.",
}
_PART: Mapping[Stitch, str] = {
    Stitch.HALF: "half {name}, rising",
    Stitch.HALF_BACK: "half {name}, falling",
    Stitch.THREE_QUARTER: "three-quarter {name}, open at the {corner}",
    Stitch.QUARTER: "quarter {name} at the {corner}",
    Stitch.PETITE: "petite {name} at the {corner}",
}
# Signs at which a voice pauses, or that divide one count from the next.
_PAUSES = re.compile(r"[\s,;:]+")


@dataclass(frozen=True)
class Spoken:
    """A key line as it is said. No two of a pattern are said alike."""

    mark: str
    stitch: Stitch
    thread: str  # its name alone
    name: str  # the same for stitches in rows, with what it needs to be told from other lines
    part: str  # the same for part stitches, with the strands where other lines have others

    def counted(self, count: int) -> str:
        """'3 moss', '1 rain butt half stitch'."""
        return f"{count} {self.name}{_BESIDE[self.stitch][count != 1]}"

    @property
    def heading(self) -> str:
        """'moss', 'rain butt half stitches'."""
        return self.name + _BESIDE[self.stitch][1]


def spoken(pattern: Pattern) -> dict[str, Spoken]:
    """Key mark → how the line is said, by the names of the model's thread set.

    Two threads of one name get their numbers. Lines that are still said alike differ in their strands,
    which are then said too; should even these be the same, the mark of the chart is.
    """
    model = pattern.thread_sets[0]
    called = _thread_names(threads_used(pattern, model))
    names = {
        line.mark: " with ".join(
            called[card.id, colour.number]
            for card, colour in zip(line.cards_in(model), line.threads[model.id])
        )
        for line in pattern.key
    }
    strands = {line.mark: strands_for(line, model) for line in pattern.key}
    behind = {mark: f" in {strand_words(count)}" for mark, count in strands.items()}
    ways = Counter(name for name, _ in {(names[mark], strands[mark]) for mark in names})
    said = {}
    for line in pattern.key:
        name = names[line.mark]
        part = name + behind[line.mark] if ways[name] > 1 else name
        said[line.mark] = Spoken(line.mark, line.stitch, name, name, part)
    said = _apart(said, behind)
    return _apart(said, {mark: f" marked {mark}" for mark in said})


def _thread_names(
    threads: tuple[tuple[ThreadCard, Colour], ...],
) -> dict[tuple[str, str], str]:
    """(card, number) → the colour's name, with number and card where the name alone would not tell."""
    names = {
        (card.id, colour.number): _PAUSES.sub(" ", colour.name).strip() for card, colour in threads
    }
    cards = {card.id: _PAUSES.sub(" ", card.name).strip() for card, _ in threads}
    often = Counter(name.casefold() for name in names.values())
    twice = Counter((name.casefold(), number) for (_, number), name in names.items())
    called = {}
    for (card_id, number), name in names.items():
        plain = name.casefold()
        if often[plain] > 1 or plain in (CLOTH, PARTS):
            of = f" of {cards[card_id]}" if twice[plain, number] > 1 else ""
            called[card_id, number] = f"{name} number {number}{of}"
        else:
            called[card_id, number] = name
    return called


def _apart(said: Mapping[str, Spoken], more: Mapping[str, str]) -> dict[str, Spoken]:
    """Those that are said alike, with `more` behind their names."""
    often = Counter(one.heading.casefold() for one in said.values())
    return {
        mark: replace(one, name=one.name + more[mark]) if often[one.heading.casefold()] > 1 else one
        for mark, one in said.items()
    }


def part_words(fraction: Fraction, name: str) -> str:
    """'three-quarter moss, open at the top left'."""
    corner = fraction.corner.value if fraction.corner else ""
    return _PART[fraction.stitch].format(name=name, corner=corner)


def stitch_words(stitch: Stitch) -> str:
    """'cross stitch', 'falling half stitch'."""
    return _BESIDE[stitch][0].strip() or "cross stitch"


def strand_words(strands: int) -> str:
    return counted(strands, "strand", "strands")


def counted(count: int, one: str, several: str) -> str:
    """'1 stitch', '4 stitches'."""
    return f"{count} {one if count == 1 else several}"
