"""What a mounted design weighs, as far as magnets must know it."""

from collections.abc import Iterable
from dataclasses import dataclass
from math import pi

from packetgen.model import Bead, Magnets
from packetgen.reckon.mounting import Mounting
from packetgen.reckon.sizes import Size
from packetgen.reckon.thread import Need

# All from memory, and rather too heavy than too light.
CARD_G_A_M2 = 1250.0  # mounting board of 2 mm
WADDING_G_A_M2 = 200.0
CLOTH_G_A_M2 = 250.0  # aida; linen and evenweave are lighter
BACKING_G_A_M2 = 150.0
TRIM_G_A_M = 5.0
GLASS_G_A_CM3 = 2.5
STEEL_G_A_CM3 = 7.85
# A seed bead holds about half the glass of the cube round it: from memory.
GLASS_SHARE = 0.5


@dataclass(frozen=True)
class Weight:
    """Grams of each layer of a mounted design, without its washers."""

    card_g: float
    wadding_g: float
    cloth_g: float
    backing_g: float
    trim_g: float
    thread_g: float
    beads_g: float

    @property
    def total_g(self) -> float:
        flat_g = self.card_g + self.wadding_g + self.cloth_g + self.backing_g
        return flat_g + self.trim_g + self.thread_g + self.beads_g


def weight(sizes: Mounting, needs: Iterable[Need], beads: Iterable[Bead]) -> Weight:
    """Area of every layer × its grams a square metre; thread by its tex (grams in 1000 m, ISO 1144)."""
    return Weight(
        card_g=_m2(sizes.card) * CARD_G_A_M2,
        wadding_g=_m2(sizes.wadding) * WADDING_G_A_M2,
        cloth_g=_m2(sizes.cloth) * CLOTH_G_A_M2,
        backing_g=_m2(sizes.backing) * BACKING_G_A_M2,
        trim_g=sizes.trim_mm / 1000 * TRIM_G_A_M,
        thread_g=sum(need.strand.usual_m * need.card.tex / 1000 for need in needs),
        beads_g=sum(bead_g(bead.card.size_mm) for bead in beads),
    )


def bead_g(size_mm: float) -> float:
    return GLASS_SHARE * (size_mm / 10) ** 3 * GLASS_G_A_CM3


def washers_g(magnets: Magnets) -> float:
    """As many steel discs as the author has magnets, and as large: π/4 · d² · thickness × density each.
    Their holes are left out, so this is rather too heavy."""
    volume_mm3 = pi / 4 * magnets.diameter_mm**2 * magnets.thickness_mm
    return magnets.pairs * volume_mm3 / 1000 * STEEL_G_A_CM3


def _m2(size: Size) -> float:
    """Wadding can be inset until nothing is left of it."""
    return max(0.0, size.width_mm) * max(0.0, size.height_mm) / 1e6
