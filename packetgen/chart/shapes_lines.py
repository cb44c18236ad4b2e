"""Lines for chart symbols: crosses, bars, chevrons, arrows and stars."""

from math import pi, sin

from packetgen.chart.shapes_paper import (
    Pile,
    arc,
    black,
    box,
    disc,
    rosette,
    stroke,
    turned,
    white,
)
from packetgen.chart.shapes_plain import four_ways, two_ways

_DOTS = tuple(disc(88, x, y) for x in (258, 742) for y in (258, 742))

CROSSES: dict[str, Pile] = {
    "plus": black(box(740, 120), box(120, 740)),
    "plus-broad": black(box(740, 270), box(270, 740)),
    "plus-open": black(box(760, 360), box(360, 760)) + white(box(560, 160), box(160, 560)),
    "saltire": turned(black(box(900, 120), box(120, 900)), 45),
    "saltire-broad": turned(black(box(820, 270), box(270, 820)), 45),
    "saltire-open": turned(
        black(box(800, 360), box(360, 800)) + white(box(600, 160), box(160, 600)), 45
    ),
    "crossbars": black(
        box(760, 110, 500, 370), box(760, 110, 500, 630), box(110, 760, 370), box(110, 760, 630)
    ),
    "asterisk": black(box(110, 760))
    + turned(black(box(110, 760)), 60)
    + turned(black(box(110, 760)), 120),
    "spark": black(box(95, 760), box(760, 95))
    + turned(black(box(95, 760), box(760, 95)), 45)
    + black(disc(190)),
    "plus-dots": black(box(740, 110), box(110, 740), *_DOTS),
    "post": black(box(130, 760), box(640, 130, 500, 815), box(640, 130, 500, 185)),
    **two_ways(
        "fork",
        black(box(120, 760), stroke(((180, 880), (180, 500), (820, 500), (820, 880)), 120)),
        ("up", "down"),
        180,
    ),
    **four_ways("tee", black(box(720, 180, 500, 770), box(180, 720))),
}

_LEAN = ("rising", "falling")
_WAVE = tuple((130 + 740 * i / 24, 500 + 190 * sin(2 * pi * i / 24)) for i in range(25))

BARS: dict[str, Pile] = {
    **two_ways("bar", black(box(760, 240))),
    **two_ways("slash", turned(black(box(880, 190)), 45), _LEAN),
    **two_ways("two-bars", black(box(720, 170, 500, 330), box(720, 170, 500, 670))),
    **two_ways("three-bars", black(*(box(740, 130, 500, y) for y in (200, 500, 800)))),
    **two_ways(
        "two-slashes", turned(black(box(700, 150, 500, 360), box(700, 150, 500, 640)), 45), _LEAN
    ),
    **two_ways("bar-dots", black(box(660, 120), disc(117, 500, 768), disc(117, 500, 232))),
    **two_ways(
        "slash-dots",
        turned(black(box(880, 120), disc(120, 500, 772), disc(120, 500, 228)), 45),
        _LEAN,
    ),
    **two_ways(
        "zigzag", black(stroke(((130, 350), (315, 650), (500, 350), (685, 650), (870, 350)), 125))
    ),
    **two_ways("wave", black(stroke(_WAVE, 150))),
}

_CHEVRON = ((140, 330), (500, 690), (860, 330))
_ARROW = ((500, 880), (830, 530), (590, 530), (590, 130), (410, 130), (410, 530), (170, 530))

CHEVRONS: dict[str, Pile] = {
    **four_ways("chevron", black(stroke(_CHEVRON, 190))),
    **four_ways(
        "two-chevrons",
        black(*(stroke(((170, y), (500, y + 270), (830, y)), 120) for y in (190, 490))),
    ),
    **four_ways("arrow", black(_ARROW)),
    **four_ways(
        "arrow",
        turned(black(_ARROW), 45),
        ("nw", "sw", "se", "ne"),
    ),
}

STARS: dict[str, Pile] = {
    "star": black(rosette(5, 400, 165)),
    "star-eye": black(rosette(5, 410, 210)) + white(disc(100, 500, 490)),
    "star-four": black(rosette(4, 380, 165)),
    "star-six": black(rosette(6, 380, 215)),
    "star-three": black(rosette(3, 420, 120)),
    "star-three-down": black(rosette(3, 420, 120, 270)),
    "sun": black(disc(165))
    + black(*(stroke((arc(265, a, a)[0], arc(380, a, a)[0]), 105) for a in range(0, 360, 45))),
    "burst": black(rosette(8, 380, 250)) + white(disc(110)),
}
