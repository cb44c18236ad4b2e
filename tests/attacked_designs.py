"""Designs that a picture has much to hide of: many colours, two, or one, by rule."""

from math import atan2, cos, hypot

from packetgen.model import Colour, KeyLine, Pattern, Stitch
from tests.stitching import HERE, option, pattern

SIDE = 84
TINTS = {
    **{"t": "#cb7347", "u": "#e3a178", "b": "#a9522f", "g": "#5a7f69", "G": "#38594b"},
    **{"l": "#95b34f", "y": "#e5b440", "w": "#fdfbf4", "p": "#f2b3b8", "r": "#e07c88"},
    **{"R": "#c44a5e", "h": "#9a7fbe", "W": "#47789f", "s": "#aed0e4"},
}


def flowers(side: int = SIDE) -> Pattern:
    """A chart full of detail, by rule: a chequered frame, a shaded pot, leaves, flowers, a sprigged sky."""

    def mark(x: int, y: int) -> str:
        for across, down, petals in (
            *((22, 30, "pr"), (42, 20, "wy"), (62, 30, "hW")),
            *((33, 38, "wy"), (53, 40, "pR")),
        ):
            away = hypot(x - across, y - down)
            if away < 2.4:
                return "y"
            if away < 6.5 + 2 * cos((x - across) * 0.9 + (y - down) * 1.3):
                return petals[away > 6]
        edge, aside = min(x, y, side - 1 - x, side - 1 - y), x - side / 2 + 0.5
        if edge == 0:
            return "gR"[(x + y) // 2 % 2]
        if 54 <= y < 78 and abs(aside) < 20 - max(0, y - 60) * 0.35:
            return "u" if aside < -6 else "t" if aside + (x + y) % 2 * 4 < 9 else "b"
        if y < 54 and hypot(aside, (y - 46) * 1.3) < 24:
            return "Ggl."[(x * x + y * 3 + x * y) // 7 % 4]
        return "s" if (x * 7 + y * 3) % 23 == 0 else "."

    rows = tuple("".join(mark(x, y) for x in range(side)) for y in range(side))
    key = tuple(
        KeyLine(m, Stitch.FULL, {"bramble": (Colour(m, m, tint),)}, {}, HERE)
        for m, tint in TINTS.items()
    )
    return pattern(*rows, key=key, cloths=(option(14),), id="flowers")


def lace() -> Pattern:
    """One colour: rings and a lattice two stitches wide, and a sprigged ground."""

    def worked(x: int, y: int) -> bool:
        across, down = x - SIDE / 2 + 0.5, y - SIDE / 2 + 0.5
        away, rim = hypot(across, down), 30 + 8 * cos(8 * atan2(down, across))
        ring = min(abs(away - rim), abs(away - rim * 0.7), abs(away - rim * 0.45)) < 1.2
        lattice = away < rim * 0.7 and ((x + y) % 8 < 2 or (x - y) % 8 < 2)
        return ring or lattice or (away > rim + 3 and x % 6 < 2 and y % 6 < 2)

    return _drawn("lace", lambda x, y: "m" if worked(x, y) else ".")


def heart() -> Pattern:
    """One colour, and nothing but its outline to hide: of all designs the hardest."""

    def worked(x: int, y: int) -> bool:
        across, up = (x - SIDE / 2 + 0.5) / 32, (SIDE / 2 - 0.5 - y) / 32 + 0.1
        return (across**2 + up**2 - 1) ** 3 < across**2 * up**3

    return _drawn("heart", lambda x, y: "m" if worked(x, y) else ".")


def bars() -> Pattern:
    """One colour in bars of six stitches."""
    return _drawn("bars", lambda x, y: "m" if x // 6 % 2 else ".")


def ripples() -> Pattern:
    """Two colours that ripple through each other, on a strewn ground."""

    def mark(x: int, y: int) -> str:
        across, down = x - SIDE / 2 + 0.5, y - SIDE / 2 + 0.5
        away, turn = hypot(across, down), atan2(down, across)
        if away < 34 + 5 * cos(6 * turn):
            return "mt"[int((away + 6 * cos(5 * turn)) // 4) % 2]
        return "t" if (x * x + 3 * y + x * y) % 11 == 0 else "."

    return _drawn("ripples", mark)


def _drawn(name: str, mark) -> Pattern:
    rows = ("".join(mark(x, y) for x in range(SIDE)) for y in range(SIDE))
    return pattern(*rows, id=name)


DESIGNS = {of.__name__: of for of in (flowers, lace, heart, bars, ripples)}
