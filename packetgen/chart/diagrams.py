"""Small drawings that show how each stitch is made, for the working notes.

The needle comes up at odd numbers and goes down at even ones. What is worked first is pale and lies
beneath; what is worked last is dark. Upper legs run from lower left to upper right.
"""

from collections.abc import Callable, Mapping

import svgwrite

from packetgen.chart.outlines import daisy_anchor, daisy_loop
from packetgen.diagnostics import Place
from packetgen.model import Daisy, Point

_CELL = 10.0
_FIRST, _LAST, _HOLE, _EDGE, _BEHIND = "#9a9a9a", "#2e2e2e", "#8d8d88", "#d6d6d1", "#6e6e6e"
_THICK, _THIN, _CASING = 2.6, 1.8, 1.2
_Shape = Callable[[svgwrite.Drawing], None]


def diagram(kind: str) -> str:
    """The SVG of one kind of stitch. Raises KeyError for a kind without a diagram."""
    drawing = svgwrite.Drawing(size=(60, 60), debug=False)
    drawing.viewbox(-6, -6, 32, 32)
    _KINDS[kind](drawing)
    return drawing.tostring()


def _cloth(drawing: svgwrite.Drawing, side: int) -> None:
    """Holes, and the edges of cells that are `side` holes wide."""
    for at in range(0, 3, side):
        for start, end in (((at, 0), (at, 2)), ((0, at), (2, at))):
            drawing.add(drawing.line(_at(start), _at(end)).stroke(_EDGE, width=0.5))
    for x in range(3):
        for y in range(3):
            drawing.add(drawing.circle(_at((x, y)), 0.9).fill(_HOLE))


def _at(point: Point) -> Point:
    return point[0] * _CELL, point[1] * _CELL


def _leg(
    drawing: svgwrite.Drawing, *points: Point, colour: str = _LAST, thick: float = _THICK
) -> None:
    """Thread on the front, with a white edge where it crosses another."""
    for shade, width in (("#ffffff", thick + _CASING), (colour, thick)):
        line = drawing.polyline([_at(point) for point in points]).fill("none")
        line.stroke(shade, width=width)
        line.update({"stroke-linecap": "round", "stroke-linejoin": "round"})
        drawing.add(line)


def _behind(drawing: svgwrite.Drawing, start: Point, end: Point) -> None:
    line = drawing.line(_at(start), _at(end)).stroke(_BEHIND, width=0.7)
    line.update({"stroke-dasharray": "1.6 1.4"})
    drawing.add(line)


def _numbers(drawing: svgwrite.Drawing, *places: Point) -> None:
    """1, 2, 3 … with their middles at these places."""
    for number, (x, y) in enumerate(places, 1):
        text = drawing.text(
            str(number),
            insert=(x * _CELL, y * _CELL + 1.7),
            font_size=4.8,
            font_family="Packet Text",
            font_weight="bold",
            text_anchor="middle",
            fill="#000000",
        )
        drawing.add(text)


def _full(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 1)
    for x in (0, 1):
        _leg(drawing, (x, 0), (x + 1, 1), colour=_FIRST)
    for x in (0, 1):
        _leg(drawing, (x, 1), (x + 1, 0))
    _numbers(drawing, (-0.32, -0.25), (1.0, 1.42), (-0.32, 1.32), (1.0, -0.36))


def _half(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 1)
    for x in (0, 1):
        _leg(drawing, (x, 1), (x + 1, 0))
    _numbers(drawing, (-0.32, 1.32), (1.0, -0.36))


def _half_back(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 1)
    for x in (0, 1):
        _leg(drawing, (x, 0), (x + 1, 1))
    _numbers(drawing, (-0.32, -0.25), (1.0, 1.42))


def _three_quarter(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 2)
    _leg(drawing, (0, 0), (1, 1), colour=_FIRST)
    _leg(drawing, (0, 2), (2, 0))
    _numbers(drawing, (-0.35, -0.25), (1.0, 1.42), (-0.35, 2.2), (2.3, -0.25))


def _two_three_quarters(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 2)
    _leg(drawing, (0, 0), (1, 1), colour=_FIRST)
    _leg(drawing, (2, 2), (1, 1))
    _leg(drawing, (0, 1.86), (1.86, 0), colour=_FIRST)
    _leg(drawing, (0.14, 2), (2, 0.14))


def _quarter(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 2)
    _leg(drawing, (0, 0), (1, 1))
    _numbers(drawing, (-0.35, -0.25), (1.25, 1.42))


def _petite(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 2)
    _leg(drawing, (0, 0), (1, 1), colour=_FIRST)
    _leg(drawing, (0, 1), (1, 0))
    _numbers(drawing, (-0.35, -0.25), (1.3, 1.3), (-0.35, 1.1), (1.1, -0.36))


def _backstitch(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 1)
    _behind(drawing, (0, 1.22), (2, 1.22))
    _leg(drawing, (0.06, 1), (0.94, 1), colour=_FIRST)
    _leg(drawing, (1.06, 1), (1.94, 1))
    _numbers(drawing, (0.74, 0.66), (0.0, 0.66), (2.0, 0.66), (1.26, 0.66))


def _long(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 1)
    _leg(drawing, (0, 2), (2, 0))
    _numbers(drawing, (-0.35, 2.2), (2.3, -0.25))


def _daisy(drawing: svgwrite.Drawing) -> None:
    daisy = Daisy("", (2.0, 2.9), (2.0, 1.2), Place(""))
    _cloth(drawing, 1)
    _leg(drawing, *((x + (x - 1) * 0.9, y) for x, y in daisy_loop(daisy)), colour=_FIRST)
    (x0, y0), (x1, y1) = daisy_anchor(daisy)
    _leg(drawing, (x0, y0 + 0.14), (x1, y1))
    _numbers(drawing, (0.72, 2.2), (1.28, 2.2), (1.0, 0.76), (1.0, -0.36))


def _knot(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 1)
    needle = drawing.line(_at((0.1, 1.9)), _at((1.9, 0.1))).stroke("#b9b9b4", width=1.4)
    drawing.add(needle)
    _leg(drawing, (1.0, 2.2), (1.06, 1.3), colour=_FIRST, thick=_THIN)
    for shift in (-0.13, 0.13):
        x, y = 1 + shift, 1 - shift
        _leg(drawing, (x - 0.26, y - 0.26), (x + 0.26, y + 0.26), thick=_THIN)
    _behind(drawing, (1.12, 1.3), (1.34, 2.14))  # the way down
    _numbers(drawing, (0.74, 2.2), (1.62, 2.2))


def _bead(drawing: svgwrite.Drawing) -> None:
    _cloth(drawing, 2)
    _leg(drawing, (0, 2), (2, 0), colour=_FIRST, thick=_THIN)
    drawing.add(drawing.circle(_at((1, 1)), 5).fill("#ffffff").stroke(_LAST, width=1.2))
    drawing.add(drawing.circle(_at((1, 1)), 1.4).fill("#ffffff").stroke(_LAST, width=0.8))
    _numbers(drawing, (-0.35, 2.2), (2.3, -0.25))


_KINDS: Mapping[str, _Shape] = {
    "full": _full,
    "half": _half,
    "half back": _half_back,
    "three-quarter": _three_quarter,
    "two three-quarters": _two_three_quarters,
    "quarter": _quarter,
    "petite": _petite,
    "backstitch": _backstitch,
    "long": _long,
    "daisy": _daisy,
    "knot": _knot,
    "bead": _bead,
}
