"""What patterns may name: the cards, cloths and finishing pieces of a content folder."""

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
    return Library(
        threads=load_threads(folder, problems),
        cloths=load_cloths(folder, problems),
        beads=load_beads(folder, problems),
        finishes=load_finishes(folder, problems),
    )
