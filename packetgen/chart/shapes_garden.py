"""Garden things for chart symbols: leaves, flowers, fruit, pots and weather."""

from math import cos, pi, sin

from packetgen.chart.shapes_paper import (
    Outline,
    Pile,
    arc,
    black,
    box,
    disc,
    lens,
    mirrored,
    oval,
    scaled,
    shifted,
    stroke,
    turned,
    white,
)
from packetgen.chart.shapes_plain import two_ways


def _heart() -> Outline:
    """A heart: two half rounds above two curves that meet in a point."""
    right = ((500, 150), (640, 270), (760, 390), (835, 490))
    left = ((1000 - x, y) for x, y in right[:0:-1])
    return (*right, *arc(195, -20, 158, 685, 625), *arc(195, 22, 200, 315, 625), *left)


def _drop() -> Outline:
    """A water drop, point upwards."""
    return ((500, 880), *arc(270, 152, 388, 500, 395))


def _petals(count: int, length: float, width: float, first: float = 0) -> Pile:
    """Pointed petals round the middle, their inner ends meeting there."""
    petal = shifted(black(lens(length, width)), 0, length / 2)
    return tuple(p for i in range(count) for p in turned(petal, first + i * 360 / count))


def _spiral() -> Outline:
    points = [(pi * (0.4 + 2.7 * i / 40), 65 + 270 * i / 40) for i in range(41)]
    return stroke([(500 + r * cos(a), 500 + r * sin(a)) for a, r in points], 100)


_LEAF = black(lens(900, 430))
_HEART = black(_heart())
_SPROUT_LEAF = shifted(turned(black(lens(500, 260)), -55), 190, 120)
_POT = black(box(700, 200, 500, 740), ((230, 690), (770, 690), (660, 150), (340, 150)))

GARDEN: dict[str, Pile] = {
    **two_ways("leaf", turned(_LEAF, -45), ("rising", "falling")),
    **two_ways("leaf", turned(black(lens(760, 400)), 90)),
    "leaf-veined": turned(black(lens(900, 560)) + white(box(110, 700, 500, 250)), -45),
    "heart": _HEART,
    "heart-open": scaled(_HEART, 1.05) + white(*(p.outline for p in scaled(_HEART, 0.66))),
    "clover": black(
        *(disc(175, x, y) for x, y in ((500, 690), (315, 430), (685, 430))), disc(90, 500, 520)
    )
    + black(((455, 480), (545, 480), (620, 140), (380, 140))),
    "drop": black(_drop()),
    "drop-hanging": turned(black(_drop()), 180),
    "drop-slant": turned(black(_drop()), -135),
    "daisy": black(*(disc(150, *arc(235, a, a)[0]) for a in range(90, 450, 72)), disc(200))
    + white(disc(115)),
    "three-leaves": _petals(3, 420, 300) + black(disc(70)),
    "tulip": black(
        (*arc(300, 180, 360, 500, 480), (800, 860), (640, 640), (500, 860), (360, 640), (200, 860))
    )
    + black(box(110, 200, 500, 160)),
    "acorn": black((*arc(330, 0, 180, 500, 570),), box(110, 100, 500, 910))
    + black((*arc(290, 180, 225, 500, 575), (500, 130), *arc(290, 315, 360, 500, 575)))
    + white((*arc(135, 180, 230, 500, 490), (500, 335), *arc(135, 310, 360, 500, 490))),
    "mushroom": black(
        (*arc(380, 0, 180, 500, 470),), ((400, 480), (600, 480), (640, 150), (360, 150))
    ),
    "pot": _POT,
    "fir": black(((500, 880), (740, 560), (260, 560)), ((500, 720), (840, 260), (160, 260)))
    + black(box(130, 200, 500, 200)),
    "sprout": black(box(110, 430, 500, 330)) + _SPROUT_LEAF + mirrored(_SPROUT_LEAF),
    "apple": black(disc(220, 380, 430), disc(220, 620, 430), box(240, 200, 500, 330))
    + shifted(turned(black(lens(330, 170)), -45), 95, 370),
    "pennant": black(box(120, 760, 220), ((220, 880), (830, 670), (220, 460))),
    "pennant-left": mirrored(black(box(120, 760, 220), ((220, 880), (830, 670), (220, 460)))),
    "bolt": black(((600, 880), (210, 450), (455, 450), (380, 120), (790, 580), (540, 580))),
    "crown": black(
        ((150, 200), (850, 200), (880, 780), (680, 520), (500, 830), (320, 520), (120, 780))
    ),
    "cup": black((*arc(300, 180, 360, 420, 560), (720, 780), (120, 780)), disc(190, 720, 610))
    + white(disc(95, 735, 610))
    + black(box(200, 300, 600, 630), box(640, 110, 430, 100)),
    "snail": black(_spiral()),
    "ladder": black(
        box(110, 760, 270), box(110, 760, 730), *(box(460, 100, 500, y) for y in (260, 500, 740))
    ),
    "bird": black(
        (*arc(300, 180, 360, 460, 560), (880, 700), (700, 700), (560, 560)), disc(130, 700, 690)
    ),
    "beehive": black(oval(380, 380)) + white(box(900, 95, 500, 620), box(900, 95, 500, 380)),
    "hat": black(box(760, 150, 500, 250), (*arc(250, 0, 180, 500, 500), (250, 200), (750, 200))),
}
