"""What patterns may name: the cards, cloths and finishing pieces of a content folder."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass

from packetgen.diagnostics import Problems
from packetgen.load.cards import Cards, load_beads, load_cloths, load_threads
from packetgen.load.files import ContentFolder
from packetgen.load.finishes import load_finishes
from packetgen.model import BeadCard, Cloth, FinishingPiece, ThreadCard


@dataclass(frozen=True)
class Library:
    threads: Cards[ThreadCard]
    cloths: Cards[Cloth]
    beads: Cards[BeadCard]
    finishes: Mapping[str, FinishingPiece | None]


def load_library(folder: ContentFolder, problems: Problems) -> Library:
    library = Library(
        threads=load_threads(folder, problems),
        cloths=load_cloths(folder, problems),
        beads=load_beads(folder, problems),
        finishes=load_finishes(folder, problems),
    )
    _complain_of_currencies(library, problems)
    return library


def _complain_of_currencies(library: Library, problems: Problems) -> None:
    """Advice on the first price in each currency that is not the one of most cards."""
    cards = (*library.threads.values(), *library.cloths.values(), *library.beads.values())
    prices = [card.price for card in cards if card and card.price]
    (usual, _), *others = Counter(price.currency for price in prices).most_common() or [("", 0)]
    for currency, number in others:
        first = next(price for price in prices if price.currency == currency)
        more = f" (and {number - 1} more)" if number > 1 else ""
        problems.add(first.place, "currency-other", currency=currency, usual=usual, more=more)
