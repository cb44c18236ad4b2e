"""What to cut for finishes that need no wooden piece: framed, in a hoop, as a flat-fold, a pillow, an
ornament.

Every allowance below is common practice, no source, unless its line says otherwise. Sizes are before
any rounding; the pages round up.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import hypot, pi, sqrt

from packetgen.reckon.sizes import Size
from packetgen.units import MM_PER_INCH, up_to_step

MOUNT_BORDER_MM = 1 * MM_PER_INCH  # cloth that shows round the stitching in a frame
LACING_MM = 2 * MM_PER_INCH  # turned to the back of the mount board and laced
REBATE_PLAY_MM = 3.0  # a frame is larger than its board by this, so that the cloth finds room

HOOP_CLEAR_MM = 3 / 8 * MM_PER_INCH  # between the design's corners and the ring
HOOP_GATHER_MM = 1.5 * MM_PER_INCH  # cloth beyond the ring, gathered behind it
LARGEST_HOOP_IN = 12
FELT_INSET_MM = MM_PER_INCH / 8  # a felt back is smaller than its ring by this all round
GATHER_TAILS_MM = 8 * MM_PER_INCH

FOLD_BORDER_MM = MM_PER_INCH / 2
FOLD_TURN_MM = 1 * MM_PER_INCH  # cloth and fabric turned to the back of a board
LINING_INSET_MM = MM_PER_INCH / 8  # a lining's folded edge lies inside the board by this
LINING_SEAM_MM = MM_PER_INCH / 2
HINGE_GLUED_MM = 1 * MM_PER_INCH  # of the hinge on each of the two boards
HINGE_GAP_MM = 3 / 8 * MM_PER_INCH  # between the boards: twice a board with its cloth

PILLOW_BORDER_MM = 1 * MM_PER_INCH
PILLOW_SEAM_MM = MM_PER_INCH / 2
# A plump pillow: eight ounces of polyester in one of twelve inches. From memory.
STUFFING_G_PER_LITRE = 40.0

ORNAMENT_BORDER_MM = MM_PER_INCH / 4
ORNAMENT_TURN_MM = 0.75 * MM_PER_INCH
HANGER_MM = 6 * MM_PER_INCH  # of the cord, for the loop
CORD_ENDS_MM = 2 * MM_PER_INCH  # tucked in between the boards


@dataclass(frozen=True)
class Cut:
    """One thing to cut or buy. Exactly one of the measures is filled."""

    name: str
    pieces: int = 1
    size: Size | None = None
    across_mm: float | None = None  # of a circle
    length_mm: float | None = None
    weight_g: float | None = None
    said: tuple[str, ...] = ()  # the least size to buy, line by line


@dataclass(frozen=True)
class Finish:
    """One way of finishing a design on one cloth. `allowances` are the lengths that its steps speak of, mm."""

    kind: str  # of model.GENERIC_FINISHES
    cuts: tuple[Cut, ...]
    allowances: Mapping[str, float]


def generic_finishes(kinds: tuple[str, ...], finished: Size) -> tuple[Finish, ...]:
    """The finishes of these kinds for a design of `finished` size. Raises KeyError for another kind."""
    return tuple(_KINDS[kind](finished) for kind in kinds)


def framed(finished: Size) -> Finish:
    """Board = design + 2 · 1 in; cloth = board + 2 · 2 in for lacing (together the 3 in that a framer asks
    for); the frame's rebate = board + 3 mm."""
    board = finished.grown(MOUNT_BORDER_MM)
    return Finish(
        "framed",
        (
            Cut("Cloth", size=board.grown(LACING_MM)),
            Cut("Mount board", size=board),
            Cut("Frame, inside its rebate", size=board.grown(REBATE_PLAY_MM / 2)),
        ),
        {"border": MOUNT_BORDER_MM, "lacing": LACING_MM},
    )


NOTHING = ("–",)  # on this cloth


def hoop(finished: Size) -> Finish:
    """A round hoop holds the design's diagonal and ⅜ in at either end of it, in whole inches.

    The smallest oval round a rectangle has its axes √2 times as long as the rectangle's sides (the circle
    round a square, stretched); ⅜ in is added to either end of both. Cloth = ring + 2 · 1½ in, felt =
    ring − 2 · ⅛ in, gathering thread = the cloth's circumference and 8 in.
    """
    ring = round_hoop_in(finished) * MM_PER_INCH
    wide, high = oval_hoop_in(finished)
    cloth = ring + 2 * HOOP_GATHER_MM
    return Finish(
        "hoop",
        (
            Cut("Hoop, round", said=_round_said(round_hoop_in(finished))),
            Cut("or oval, at least", said=_bought(wide, high) if wide != high else NOTHING),
            Cut("Cloth, a circle for the round hoop", across_mm=cloth),
            Cut("Felt for its back, a circle", across_mm=ring - 2 * FELT_INSET_MM),
            Cut("Strong thread to gather", length_mm=pi * cloth + GATHER_TAILS_MM),
        ),
        {"gather": HOOP_GATHER_MM, "free": HOOP_CLEAR_MM},
    )


def round_hoop_in(finished: Size) -> int:
    """Inches across of the smallest round hoop."""
    diagonal = hypot(finished.width_mm, finished.height_mm)
    return round(up_to_step((diagonal + 2 * HOOP_CLEAR_MM) / MM_PER_INCH, 1))


def oval_hoop_in(finished: Size) -> tuple[int, int]:
    """Inches of the smallest oval hoop, width and height."""
    sides = (finished.width_mm, finished.height_mm)
    wide, high = (
        round(up_to_step((sqrt(2) * side + 2 * HOOP_CLEAR_MM) / MM_PER_INCH, 1)) for side in sides
    )
    return wide, high


def _round_said(inches: int) -> tuple[str, ...]:
    larger = ("larger than usual",) if inches > LARGEST_HOOP_IN else ()
    return (*_bought(inches), *larger)


def _bought(*inches: int) -> tuple[str, str]:
    """Hoops are sold by the whole inch: (10, 7) → '10 × 7 in', '25.4 × 17.8 cm'."""
    metric = " × ".join(f"{side * MM_PER_INCH / 10:.1f}" for side in inches)
    return " × ".join(map(str, inches)) + " in", f"{metric} cm"


def flat_fold(finished: Size) -> Finish:
    """Two boards, each the design + 2 · ½ in. Cloth and back fabric = board + 2 · 1 in; a lining, folded
    under by ½ in, lies ⅛ in inside its board; the hinge is as long as the boards are high, and 1 in on each
    of them with ⅜ in between wide."""
    board = finished.grown(FOLD_BORDER_MM)
    hinge = Size(2 * HINGE_GLUED_MM + HINGE_GAP_MM, board.height_mm)
    return Finish(
        "flat-fold",
        (
            Cut("Mount board", 2, size=board),
            Cut("Wadding", size=board),
            Cut("Cloth", size=board.grown(FOLD_TURN_MM)),
            Cut("Fabric for the back board", size=board.grown(FOLD_TURN_MM)),
            Cut("Lining", 2, size=board.grown(LINING_SEAM_MM - LINING_INSET_MM)),
            Cut("Hinge of fabric tape", size=hinge),
        ),
        {
            "turn": FOLD_TURN_MM,
            "seam": LINING_SEAM_MM,
            "inset": LINING_INSET_MM,
            "glued": HINGE_GLUED_MM,
            "gap": HINGE_GAP_MM,
        },
    )


def pillow(finished: Size) -> Finish:
    """Front and back = design + 2 · (1 in that shows + ½ in of seam); filling by volume."""
    sewn = finished.grown(PILLOW_BORDER_MM)
    return Finish(
        "pillow",
        (
            Cut("Cloth, the front", size=sewn.grown(PILLOW_SEAM_MM)),
            Cut("Fabric for the back", size=sewn.grown(PILLOW_SEAM_MM)),
            Cut("Stuffing", weight_g=pillow_litres(sewn) * STUFFING_G_PER_LITRE),
        ),
        {"border": PILLOW_BORDER_MM, "seam": PILLOW_SEAM_MM},
    )


def pillow_litres(sewn: Size) -> float:
    """What a pillow of two flat sheets holds: w³ (h / (π w) − 0.142 (1 − 10^(−h / w))), w the shorter side
    (A. C. Robin, Paper bag problem, Mathematics Today, June 2004; from memory)."""
    w, h = sorted((sewn.width_mm / 100, sewn.height_mm / 100))
    return w**3 * (h / (pi * w) - 0.142 * (1 - 10 ** (-h / w)))


def ornament(finished: Size) -> Finish:
    """Two boards = design + 2 · ¼ in, wadding on each, cloth and back = board + 2 · ¾ in; the cord goes
    round the boards, with 6 in for the loop and 2 in for its ends."""
    board = finished.grown(ORNAMENT_BORDER_MM)
    cord = 2 * (board.width_mm + board.height_mm) + HANGER_MM + CORD_ENDS_MM
    return Finish(
        "ornament",
        (
            Cut("Mount board", 2, size=board),
            Cut("Wadding", 2, size=board),
            Cut("Cloth, the front", size=board.grown(ORNAMENT_TURN_MM)),
            Cut("Fabric for the back", size=board.grown(ORNAMENT_TURN_MM)),
            Cut("Cord", length_mm=cord),
        ),
        {"turn": ORNAMENT_TURN_MM, "loop": HANGER_MM},
    )


_KINDS: Mapping[str, Callable[[Size], Finish]] = {
    "framed": framed,
    "hoop": hoop,
    "flat-fold": flat_fold,
    "pillow": pillow,
    "ornament": ornament,
}
