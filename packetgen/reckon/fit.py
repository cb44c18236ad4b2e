"""Whether a mounted design fits the panel of the finishing piece, and with how much room to spare."""

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from math import floor

from packetgen.model import FinishingPiece, Outline
from packetgen.reckon.outline import Room
from packetgen.reckon.sizes import Size

# Less free wood than this on a side looks pinched: common practice, no source.
TIGHT_MM = 3.0
# A count that is whole but for the dust of floating point must not lose a stitch.
_DUST = 1e-9
# Halvings of a size in search of the largest: a panel's width to within a millionth of a millimetre.
_HALVINGS = 30

Stitches = tuple[int, int]  # columns, rows


class Verdict(Enum):
    FITS = "fits"
    TIGHT = "tight"
    DOES_NOT_FIT = "does not fit"


@dataclass(frozen=True)
class Fit:
    """The mounting card (stitching and border) on the panel. Reveal is the wood left free beside the card
    and the trim round it; where the design does not fit, `at_mm` and the reveals are those of a card laid
    in the middle.

    `most_stitches_wide` and `_high` are what the panel measures across and down at its widest, keep-outs
    or not; `largest` is a design of the same proportion that really finds a place (0, 0 where none does).
    """

    verdict: Verdict
    card: Size
    covered: Size  # the card with its trim, which hides wood as well
    at_mm: tuple[float, float]  # the card's top left corner, in the panel's own millimetres
    reveal_left_mm: float
    reveal_right_mm: float
    reveal_above_mm: float
    reveal_below_mm: float
    most_stitches_wide: int
    most_stitches_high: int
    largest: Stitches


def around_mm(piece: FinishingPiece) -> float:
    """What lies round the stitching on every side: the border of card, and the trim sewn round its edge.
    0 mm of trim where its author does not say how far it stands out. Common practice, no source.
    """
    return piece.border_mm + piece.trim.width_mm


def fit(finished: Size, cell_mm: float, piece: FinishingPiece) -> Fit:
    """Lay card and trim in the middle of the panel, or as near to it as the keep-outs allow."""
    room = _room_of(piece)
    around = around_mm(piece)
    covered = finished.grown(around)
    at = _place(room, covered)
    found = at is not None
    at = at or _middle(room, covered)
    reveals = (
        at[0] - room.left,
        room.right - at[0] - covered.width_mm,
        at[1] - room.top,
        room.bottom - at[1] - covered.height_mm,
    )
    verdict = Verdict.DOES_NOT_FIT
    if found:
        verdict = Verdict.TIGHT if min(reveals) < TIGHT_MM else Verdict.FITS
    across, down = _measured(room, cell_mm, around)
    stitches = round(finished.width_mm / cell_mm), round(finished.height_mm / cell_mm)
    return Fit(
        verdict,
        finished.grown(piece.border_mm),
        covered,
        (at[0] + piece.trim.width_mm, at[1] + piece.trim.width_mm),
        *reveals,
        most_stitches_wide=across,
        most_stitches_high=down,
        largest=_largest(stitches, cell_mm, piece),
    )


def holds(stitches: Stitches, cell_mm: float, piece: FinishingPiece) -> bool:
    """Whether a design of so many columns and rows finds a place."""
    return _place(_room_of(piece), _covered(stitches, cell_mm, around_mm(piece))) is not None


def too_many(stitches: Stitches, cell_mm: float, piece: FinishingPiece) -> tuple[Stitches, ...]:
    """The fewest columns and rows to take from a design so that it fits: one way, or two where a keep-out
    or a slant lets it be narrower or lower. () where it fits, and where taking off one side never helps.
    """
    if holds(stitches, cell_mm, piece):
        return ()
    most = _measured(_room_of(piece), cell_mm, around_mm(piece))
    if min(most) < 1:
        return ()
    wide, high = min(stitches[0], most[0]), min(stitches[1], most[1])
    if holds((wide, high), cell_mm, piece):
        return ((stitches[0] - wide, stitches[1] - high),)
    narrower = _most(wide, lambda n: holds((n, high), cell_mm, piece))
    lower = _most(high, lambda n: holds((wide, n), cell_mm, piece))
    return (*[(stitches[0] - narrower, stitches[1] - high)] * bool(narrower),
            *[(stitches[0] - wide, stitches[1] - lower)] * bool(lower))  # fmt: skip


def room_for(fitted: Fit, cell_mm: float, piece: FinishingPiece) -> Stitches:
    """The largest design to name in words: as wide and as high as the panel where that finds a place, else
    the largest of the same proportion."""
    most = fitted.most_stitches_wide, fitted.most_stitches_high
    return most if min(most) > 0 and holds(most, cell_mm, piece) else fitted.largest


def _most(below: int, good: Callable[[int], bool]) -> int:
    """The largest number from 1 to `below` - 1 that is good, all smaller ones being so; 0 for none."""
    low, high = 0, below
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if good(middle) else (low, middle)
    return low


def _measured(room: Room, cell_mm: float, around_mm: float) -> Stitches:
    inside = Size(room.right - room.left, room.bottom - room.top).grown(-around_mm)
    return floor(inside.width_mm / cell_mm + _DUST), floor(inside.height_mm / cell_mm + _DUST)


def _largest(stitches: Stitches, cell_mm: float, piece: FinishingPiece) -> Stitches:
    """Both sides are rounded down from the size at which the design itself just fits."""
    keep_outs = tuple(keep_out.outline for keep_out in piece.keep_outs)
    stitches = max(1, stitches[0]), max(1, stitches[1])
    times = _largest_cell_mm(piece.panel, keep_outs, around_mm(piece), stitches) / cell_mm
    columns, rows = (max(1, floor(side * times + 1e-6)) for side in stitches)
    return (columns, rows) if holds((columns, rows), cell_mm, piece) else (0, 0)


@lru_cache(maxsize=512)
def _largest_cell_mm(
    panel: Outline, keep_outs: tuple[Outline, ...], around_mm: float, stitches: Stitches
) -> float:
    """The largest side of a stitch at which the design fits; one search serves every cloth."""
    room = _room(panel, keep_outs)
    inside = Size(room.right - room.left, room.bottom - room.top).grown(-around_mm)
    high = min(inside.width_mm / stitches[0], inside.height_mm / stitches[1])

    def fits(cell_mm: float) -> bool:
        return _place(room, _covered(stitches, cell_mm, around_mm)) is not None

    if high <= 0 or fits(high):
        return max(0.0, high)
    low = 0.0
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    return low


def _covered(stitches: Stitches, cell_mm: float, around_mm: float) -> Size:
    return Size(stitches[0] * cell_mm, stitches[1] * cell_mm).grown(around_mm)


def _room_of(piece: FinishingPiece) -> Room:
    return _room(piece.panel, tuple(keep_out.outline for keep_out in piece.keep_outs))


@lru_cache(maxsize=64)
def _room(panel: Outline, keep_outs: tuple[Outline, ...]) -> Room:
    return Room(panel, keep_outs)


def _middle(room: Room, covered: Size) -> tuple[float, float]:
    return (
        (room.left + room.right - covered.width_mm) / 2,
        (room.top + room.bottom - covered.height_mm) / 2,
    )


def _place(room: Room, covered: Size) -> tuple[float, float] | None:
    return room.nearest_place(*_middle(room, covered), covered.width_mm, covered.height_mm)
