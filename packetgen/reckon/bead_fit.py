"""Whether a bead fits the stitch on which it is sewn.

Beads are sewn on with a half stitch, so all their holes lie on one diagonal of the cells. Across their
holes the nearest two are those of cells that meet at a corner, and these are √2 · a apart: a bead that is
wider than the cell's diagonal pushes its neighbour away, and crowds. In a row or a column beads give way to
one another, since they lean and are shorter along the hole than across. A bead much narrower than the
cell's side lies loose, with cloth to be seen round it.

A bead of 2.2 mm fits a 14 count (diagonal 2.57 mm) and crowds on an 18 (2.00 mm), as stitchers say
(common practice, no source). The rule and its lower limit are our own.
"""

from dataclasses import dataclass
from math import sqrt

from packetgen.diagnostics import Problems
from packetgen.model import Bead, ClothOption, Pattern
from packetgen.reckon.sizes import cell_mm
from packetgen.units import plain

# Narrower than this share of the cell's side is loose: our own limit.
LOOSE_BELOW = 0.85


def bead_fit(size_mm: float, cell: float) -> str:
    """'fits', 'crowds' or 'loose' for a bead of `size_mm` across on a cell of side `cell` mm."""
    if size_mm > sqrt(2) * cell:
        return "crowds"
    return "loose" if size_mm < LOOSE_BELOW * cell else "fits"


@dataclass(frozen=True)
class BeadFit:
    """The cloths of a pattern on which a bead does the same."""

    word: str
    cloths: tuple[ClothOption, ...]


def bead_fits(size_mm: float, options: tuple[ClothOption, ...]) -> tuple[BeadFit, ...]:
    """What beads of this size do on each cloth, together where they do the same; in the cloths' order."""
    found: dict[str, tuple[ClothOption, ...]] = {}
    for option in options:
        word = bead_fit(size_mm, _cell(option))
        found[word] = (*found.get(word, ()), option)
    return tuple(BeadFit(*item) for item in found.items())


def side_by_side(beads: tuple[Bead, ...]) -> tuple[Bead, ...]:
    """The beads that have another in a cell that touches their own, in the author's order."""
    where: dict[tuple[int, int], list[Bead]] = {}
    for bead in beads:
        where.setdefault((int(bead.at[0]), int(bead.at[1])), []).append(bead)
    return tuple(bead for bead in beads if _has_neighbour(bead, where))


def _has_neighbour(bead: Bead, where: dict[tuple[int, int], list[Bead]]) -> bool:
    column, row = int(bead.at[0]), int(bead.at[1])
    return any(
        other is not bead and max(abs(other.at[0] - bead.at[0]), abs(other.at[1] - bead.at[1])) <= 1
        for x in (column - 1, column, column + 1)
        for y in (row - 1, row, row + 1)
        for other in where.get((x, y), ())
    )


def complain_of_beads(pattern: Pattern, problems: Problems) -> None:
    """Advice where beads stand in neighbouring cells of a cloth that is too fine for their size."""
    numbers: dict[float, int] = {}
    for bead in side_by_side(pattern.beads):
        numbers[bead.card.size_mm] = numbers.get(bead.card.size_mm, 0) + 1
    for option in pattern.cloths:
        for size_mm, number in numbers.items():
            if bead_fit(size_mm, _cell(option)) == "crowds":
                problems.add(
                    option.place,
                    "beads-crowd",
                    number=number,
                    size=plain(size_mm),
                    cloth=option.cloth.name + (f" over {option.over}" if option.over > 1 else ""),
                    most=f"{sqrt(2) * _cell(option) - 0.05:.1f}",
                )


def _cell(option: ClothOption) -> float:
    return cell_mm(option.cloth.count_per_inch, option.over)
