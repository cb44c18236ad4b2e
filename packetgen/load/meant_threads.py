"""Which thread a number of a key line means that its card does not have."""

import re
from collections.abc import Mapping
from itertools import combinations

from packetgen.load.cards import Cards
from packetgen.load.values import Given
from packetgen.load.words import said, shown
from packetgen.model import ThreadCard, ThreadSet

_LONGEST = 100  # characters of what may be two numbers


def parted_numbers(number: str) -> tuple[str, ...]:
    """'C1+C2' and 'C1 C2' as their parts."""
    return tuple(re.split(r"\s*(?:[+/&,;]|\sand\s)\s*|\s+", number[:_LONGEST]))


def exchanged(numbers: Mapping[str, tuple[ThreadCard, Given]]) -> tuple[str, str, str] | None:
    """The first two thread sets whose numbers stand for one another, and what is right; `numbers` has each set's card and
    its single number in the line."""
    for (name, (own, first)), (other_name, (other, second)) in combinations(numbers.items(), 2):
        one, two = first.value, second.value
        here = isinstance(one, str) and one not in own.colours and one in other.colours
        there = isinstance(two, str) and two not in other.colours and two in own.colours
        if here and there:
            right = f'{shown(name)}: "{shown(two)}", {shown(other_name)}: "{shown(one)}"'
            return name, other_name, f"it and {said(two)} have changed places: write {right}"
    return None


def on_other_card(text: str, sets: Mapping[str, ThreadSet | None], cards: Cards[ThreadCard]) -> str:
    """What names the one card that no thread set is of, and its number: of 'glimmer G3', or of 'G3' alone; '' where there
    is none."""
    *first, number = parted_numbers(text)
    of_sets = {one.card.id for one in sets.values() if one is not None}
    found = [
        card
        for card in cards.values()
        if card is not None and card.id not in of_sets and number in card.colours
    ]
    named = " ".join(first).casefold()
    found = [one for one in found if named in ("", one.id.casefold(), one.name.casefold())]
    return f"card: {found[0].id}, number: {shown(number)}" if len(found) == 1 else ""
