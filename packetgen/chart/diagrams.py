"""Small drawings that show how each stitch is made, for the working notes."""

from collections.abc import Callable, Mapping

import svgwrite

_CELL = 10.0
_THREAD, _UNDER, _CLOTH = "#333333", "#9a9a9a", "#bdbdb8"
_Shape = Callable[[svgwrite.Drawing], None]


def diagram(kind: str) -> str:
    """The SVG of one kind of stitch. Raises KeyError for a kind without a diagram."""
    drawing = svgwrite.Drawing(size=(60, 60), debug=False)
    drawing.viewbox(-5, -5, 3 * _CELL, 3 * _CELL)
    for x in range(3):
        for y in range(3):
            drawing.add(drawing.circle((x * _CELL, y * _CELL), 0.9).fill(_CLOTH))
    _KINDS[kind](drawing)
    return drawing.tostring()


def _leg(
    drawing: svgwrite.Drawing,
    start: tuple[float, float],
    end: tuple[float, float],
    under: bool = False,
) -> None:
    points = [(start[0] * _CELL, start[1] * _CELL), (end[0] * _CELL, end[1] * _CELL)]
    line = drawing.line(*points).stroke(_UNDER if under else _THREAD, width=2.4)
    line.update({"stroke-linecap": "round"})
    drawing.add(line)


def _number(drawing: svgwrite.Drawing, text: str, x: float, y: float) -> None:
    """Where the needle comes up (odd) or goes down (even)."""
    drawing.add(
        drawing.text(
            text,
            insert=(x * _CELL, y * _CELL),
            font_size=4.6,
            font_family="Packet Text",
            fill="#000000",
        )
    )


def _full(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 1), (1, 0), under=True)
    _leg(drawing, (0, 0), (1, 1))
    _leg(drawing, (1, 1), (2, 0), under=True)
    _leg(drawing, (1, 0), (2, 1))
    for text, x, y in (("1", -0.35, 1.35), ("2", 0.9, -0.15), ("3", -0.35, -0.1), ("4", 0.9, 1.45)):
        _number(drawing, text, x, y)


def _half(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 1), (1, 0))
    _leg(drawing, (1, 1), (2, 0))
    _number(drawing, "1", -0.35, 1.4)
    _number(drawing, "2", 0.9, -0.15)


def _half_back(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 0), (1, 1))
    _leg(drawing, (1, 0), (2, 1))
    _number(drawing, "1", -0.35, -0.1)
    _number(drawing, "2", 0.9, 1.45)


def _three_quarter(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 2), (2, 0), under=True)
    _leg(drawing, (0, 0), (1, 1))
    for text, x, y in (("1", -0.4, 2.2), ("2", 2.1, -0.1), ("3", -0.4, -0.1), ("4", 1.2, 1.4)):
        _number(drawing, text, x, y)


def _quarter(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 0), (1, 1))
    _number(drawing, "1", -0.4, -0.1)
    _number(drawing, "2", 1.2, 1.4)


def _backstitch(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 1), (1, 1))
    _leg(drawing, (1, 1), (2, 1))
    for text, x, y in (("1", 0.85, 0.8), ("2", -0.1, 0.8), ("3", 1.9, 0.8), ("4", 0.85, 1.55)):
        _number(drawing, text, x, y)


def _long(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 2), (2, 0))
    _number(drawing, "1", -0.4, 2.2)
    _number(drawing, "2", 2.1, -0.1)


def _knot(drawing: svgwrite.Drawing) -> None:
    centre = (_CELL, _CELL)
    drawing.add(drawing.circle(centre, 3.6).fill("#ffffff").stroke(_THREAD, width=2))
    drawing.add(drawing.circle(centre, 1.3).fill(_THREAD))
    _leg(drawing, (1.0, 1.36), (1.0, 2.2))


def _bead(drawing: svgwrite.Drawing) -> None:
    _leg(drawing, (0, 2), (2, 0), under=True)
    drawing.add(drawing.circle((_CELL, _CELL), 5).fill("#ffffff").stroke(_THREAD, width=1.2))
    drawing.add(drawing.circle((_CELL, _CELL), 1.4).fill("#ffffff").stroke(_THREAD, width=0.8))


_KINDS: Mapping[str, _Shape] = {
    "full": _full,
    "half": _half,
    "half back": _half_back,
    "three-quarter": _three_quarter,
    "quarter": _quarter,
    "backstitch": _backstitch,
    "long": _long,
    "knot": _knot,
    "bead": _bead,
}
