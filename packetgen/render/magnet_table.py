"""Where every magnet and its washer go, as the packet lists them beside the full-size pages."""

from dataclasses import dataclass

from packetgen.model import FinishingPiece
from packetgen.reckon.figures import Figures
from packetgen.reckon.outline import bounds


@dataclass(frozen=True)
class FromMiddle:
    """A place in a card seen from the front: so far to a side of its middle, and so far up or down."""

    across_mm: float
    side: str  # left or right
    along_mm: float
    way: str  # up or down


@dataclass(frozen=True)
class MagnetRow:
    number: int
    from_left_mm: float  # on the panel, of its left edge
    from_top_mm: float
    in_cards: tuple[FromMiddle, ...]  # one a column


@dataclass(frozen=True)
class MagnetTable:
    """A column for all cards with magnets that lie alike on the panel: nearly always a single one, of all cloths."""

    columns: tuple[str, ...]  # the cloths of each; empty where all cards lie alike
    rows: tuple[MagnetRow, ...]


def magnet_table(figures: Figures, piece: FinishingPiece) -> MagnetTable:
    middles: dict[tuple[float, float], list[str]] = {}
    for on in figures.by_magnets:
        x, y = on.card.middle_mm
        named = on.option.cloth.name + (f" over {on.option.over}" if on.option.over > 1 else "")
        middles.setdefault((round(x, 6), round(y, 6)), []).append(named)
    left, top, _, _ = bounds(piece.panel)
    rows = tuple(
        MagnetRow(
            number,
            x - left,
            y - top,
            tuple(_from_middle(x - at_x, y - at_y) for at_x, at_y in middles),
        )
        for number, (x, y) in enumerate(figures.magnets.centres_mm, 1)
    )
    columns = tuple(", ".join(names) for names in middles.values())
    return MagnetTable(columns if len(columns) > 1 else (), rows)


def _from_middle(x: float, y: float) -> FromMiddle:
    return FromMiddle(abs(x), "left" if x < 0 else "right", abs(y), "up" if y < 0 else "down")
