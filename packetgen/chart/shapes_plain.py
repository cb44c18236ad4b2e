"""Plain geometry for chart symbols: rounds, squares, diamonds and triangles."""

from collections.abc import Sequence

from packetgen.chart.shapes_paper import (
    Pile,
    arc,
    black,
    box,
    disc,
    mirrored,
    regular,
    sector,
    shifted,
    turned,
    white,
)


def four_ways(
    name: str, pile: Pile, order: Sequence[str] = ("up", "left", "down", "right")
) -> dict[str, Pile]:
    """One pile in four quarter turns; the pile as drawn points up."""
    return {f"{name}-{way}": turned(pile, 90 * i) for i, way in enumerate(order)}


def two_ways(
    name: str, pile: Pile, order: Sequence[str] = ("across", "upright"), degrees: float = 90
) -> dict[str, Pile]:
    """One pile as drawn and once turned."""
    return {f"{name}-{order[0]}": pile, f"{name}-{order[1]}": turned(pile, degrees)}


def quarters(radius: float, first: float) -> Pile:
    """Two opposite white quarter rounds, drawn back so that black joins between them."""
    back = 64
    pile: Pile = ()
    for start in (first, first + 180):
        dx, dy = arc(back * 2**0.5, start + 45, start + 45, 0, 0)[0]
        pile += shifted(white(sector(radius - back, start, start + 90)), dx, dy)
    return pile


_RING = black(disc(380)) + white(disc(275))
_LEAN = ("rising", "falling")

ROUNDS: dict[str, Pile] = {
    "disc": black(disc(330)),
    "seed": black(disc(160)),
    "ring": black(disc(350)) + white(disc(245)),
    "halo": black(disc(375)) + white(disc(140)),
    "target": _RING + black(disc(150)),
    **four_ways("dome", black(arc(380, 0, 180))),
    **four_ways("ring-filled", black(disc(375)) + white(arc(270, 180, 360))),
    **two_ways("ring-slash", turned(_RING + black(box(700, 105)), 45), _LEAN),
    "ring-plus": _RING + black(box(700, 100), box(100, 700)),
    **two_ways("ring-quartered", black(disc(380)) + quarters(275, 0), _LEAN),
    "disc-plus": black(disc(380)) + white(box(800, 120), box(120, 800)),
    "disc-saltire": turned(black(disc(380)) + white(box(800, 120), box(120, 800)), 45),
    **two_ways("disc-slot", black(disc(370)) + white(box(800, 130))),
    **two_ways("disc-slash", turned(black(disc(370)) + white(box(800, 130)), 45), _LEAN),
    "pie": black(disc(370)) + white(sector(600, 0, 90)),
    "pie-left": black(disc(370)) + white(sector(600, 180, 270)),
    "crescent-right": black(disc(380)) + white(disc(310, 350, 500)),
    "crescent-left": black(disc(380)) + white(disc(310, 650, 500)),
    **four_ways("ring-gap", black(disc(380)) + white(disc(250), box(360, 500, 500, 800))),
    **two_ways("two-dots", black(disc(165, 290), disc(165, 710))),
    **two_ways("two-dots", turned(black(disc(180, 250), disc(180, 750)), 45), _LEAN),
    "three-dots-up": black(disc(155, 290, 330), disc(155, 710, 330), disc(155, 500, 690)),
    "three-dots-down": black(disc(155, 290, 690), disc(155, 710, 690), disc(155, 500, 330)),
    "four-dots": black(*(disc(145, x, y) for x in (290, 710) for y in (290, 710))),
    "five-dots": black(disc(120), *(disc(120, x, y) for x in (260, 740) for y in (260, 740))),
    "seven-dots": black(disc(88), *(disc(88, *arc(275, a, a)[0]) for a in range(0, 360, 60))),
    **four_ways("pin", black(disc(215, 500, 665), box(120, 500, 500, 370))),
}

_STEPS = black(
    ((140, 140), (860, 140), (860, 830), (620, 830), (620, 600), (380, 600), (380, 370), (140, 370))
)

SQUARES: dict[str, Pile] = {
    "square": black(box(620, 620)),
    "square-open": black(box(690, 690)) + white(box(470, 470)),
    "square-dot": black(box(760, 760)) + white(box(574, 574)) + black(disc(190)),
    **four_ways("square-filled", black(box(720, 720)) + white(box(510, 255, 500, 372))),
    **four_ways(
        "square-corner",
        black(box(740, 740)) + white(((300, 240), (760, 240), (760, 700))),
        ("nw", "sw", "se", "ne"),
    ),
    "chequer-rising": black(box(740, 740))
    + white(box(225, 225, 342, 658), box(225, 225, 658, 342)),
    "chequer-falling": black(box(740, 740))
    + white(box(225, 225, 342, 342), box(225, 225, 658, 658)),
    "window": black(box(760, 760))
    + white(*(box(220, 220, x, y) for x in (335, 665) for y in (335, 665))),
    "envelope": black(box(760, 760))
    + white(box(570, 570))
    + turned(black(box(860, 95), box(95, 860)), 45),
    "nine-patch": black(*(box(170, 170, x, y) for x in (225, 500, 775) for y in (225, 500, 775))),
    "corners": black(box(750, 750)) + white(box(510, 510), box(230, 800), box(800, 230)),
    "square-plus": black(box(740, 740)) + white(box(520, 150), box(150, 520)),
    **four_ways("tray", black(box(740, 460)) + white(box(460, 460, 500, 640))),
    **four_ways(
        "angle", black(box(660, 660)) + white(box(500, 500, 620, 620)), ("sw", "se", "ne", "nw")
    ),
    "steps-rising": _STEPS,
    "steps-falling": mirrored(_STEPS),
    **two_ways("brick", black(box(760, 440)) + white(box(540, 220))),
}
_DIAMOND = black(regular(4, 380))

DIAMONDS: dict[str, Pile] = {
    "diamond": black(regular(4, 370)),
    "diamond-open": _DIAMOND + white(regular(4, 220)),
    **four_ways("diamond-filled", _DIAMOND + white(((275, 480), (725, 480), (500, 255)))),
    **two_ways("diamond-slot", _DIAMOND + white(box(800, 120))),
}

_WEDGE = ((120, 170), (880, 170), (500, 830))

TRIANGLES: dict[str, Pile] = {
    **four_ways("wedge", black(_WEDGE)),
    **four_ways("wedge-open", black(_WEDGE) + white(((307, 280), (693, 280), (500, 615)))),
    **four_ways(
        "half-square", black(((170, 170), (830, 830), (170, 830))), ("nw", "sw", "se", "ne")
    ),
    **two_ways(
        "hourglass",
        black(((160, 130), (840, 130), (560, 500), (840, 870), (160, 870), (440, 500))),
        ("upright", "across"),
    ),
    **four_ways(
        "two-wedges",
        black(((150, 140), (850, 140), (500, 450)), ((150, 550), (850, 550), (500, 860))),
    ),
    **four_ways("wedge-bar", black(((130, 360), (870, 360), (500, 870)), box(740, 130, 500, 195))),
}
