"""Whether a mounted design fits the panel of the finishing piece, and with how much room to spare."""

from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from math import floor, hypot

from packetgen.model import FinishingPiece
from packetgen.reckon.outline import Room
from packetgen.reckon.sizes import Size

# Less free wood than this on a side looks pinched: common practice, no source.
TIGHT_MM = 3.0
_STEP_MM = 1.0


class Verdict(Enum):
    FITS = "fits"
    TIGHT = "tight"
    DOES_NOT_FIT = "does not fit"


@dataclass(frozen=True)
class Fit:
    """The mounting card (stitching and border) on the panel. Reveal is the wood left free; where the
    design does not fit, `at_mm` and the reveals are those of a card laid in the middle."""

    verdict: Verdict
    card: Size
    at_mm: tuple[float, float]  # its top left corner, in the panel's own millimetres
    reveal_left_mm: float
    reveal_right_mm: float
    reveal_above_mm: float
    reveal_below_mm: float
    most_stitches_wide: int
    most_stitches_high: int


def fit(finished: Size, cell_mm: float, piece: FinishingPiece) -> Fit:
    """Lay the card in the middle of the panel, or as near to it as the keep-outs allow."""
    room = Room(piece.panel, (keep_out.outline for keep_out in piece.keep_outs))
    card = finished.grown(piece.border_mm)
    middle = (
        (room.left + room.right - card.width_mm) / 2,
        (room.top + room.bottom - card.height_mm) / 2,
    )
    found = _nearest_place(room, card, middle)
    at = found or middle
    reveals = (
        at[0] - room.left,
        room.right - at[0] - card.width_mm,
        at[1] - room.top,
        room.bottom - at[1] - card.height_mm,
    )
    verdict = Verdict.DOES_NOT_FIT
    if found:
        verdict = Verdict.TIGHT if min(reveals) < TIGHT_MM else Verdict.FITS
    inside = Size(room.right - room.left, room.bottom - room.top).grown(-piece.border_mm)
    return Fit(
        verdict,
        card,
        at,
        *reveals,
        most_stitches_wide=floor(inside.width_mm / cell_mm + 1e-9),
        most_stitches_high=floor(inside.height_mm / cell_mm + 1e-9),
    )


def _nearest_place(
    room: Room, card: Size, middle: tuple[float, float]
) -> tuple[float, float] | None:
    spare_x = max(0, floor((room.right - room.left - card.width_mm) / 2 / _STEP_MM))
    spare_y = max(0, floor((room.bottom - room.top - card.height_mm) / 2 / _STEP_MM))
    for dx, dy in _shifts(spare_x, spare_y):
        left, top = middle[0] + dx * _STEP_MM, middle[1] + dy * _STEP_MM
        if room.holds(left, top, card.width_mm, card.height_mm):
            return left, top
    return None


@lru_cache(maxsize=64)
def _shifts(spare_x: int, spare_y: int) -> tuple[tuple[int, int], ...]:
    """Whole steps away from the middle, the shortest first; straight up before sideways."""
    steps = ((dx, dy) for dx in range(-spare_x, spare_x + 1) for dy in range(-spare_y, spare_y + 1))
    return tuple(sorted(steps, key=lambda s: (hypot(*s), abs(s[0]), s[1], s[0])))
