"""Cut paper: outlines made from black and white pieces laid one over another.

Every chart symbol is a short pile of paper pieces inside a 1000-unit square
cell, y upwards. A later piece hides what lies under it. `cut` looks at the
pile from above and returns the outlines of what is still black.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from math import cos, hypot, pi, sin, tau

Point = tuple[float, float]
Outline = tuple[Point, ...]

CELL = 1000
MIDDLE = CELL / 2
_ROUND_STEPS = 48  # flat sides of a whole circle: off the true curve by < 1 unit


@dataclass(frozen=True)
class Piece:
    """One piece of paper: a simple closed outline, black or white."""

    outline: Outline
    black: bool


Pile = tuple[Piece, ...]


def black(*outlines: Outline) -> Pile:
    """Black pieces of these outlines."""
    return tuple(Piece(outline, True) for outline in outlines)


def white(*outlines: Outline) -> Pile:
    """White pieces of these outlines: what they cover is cut away."""
    return tuple(Piece(outline, False) for outline in outlines)


# Outlines -----------------------------------------------------------------


def disc(radius: float, x: float = MIDDLE, y: float = MIDDLE) -> Outline:
    """A round of `radius` units about (x, y)."""
    return oval(radius, radius, x, y)


def oval(radius_x: float, radius_y: float, x: float = MIDDLE, y: float = MIDDLE) -> Outline:
    """An ellipse about (x, y), its axes along the cell sides."""
    steps = (tau * step / _ROUND_STEPS for step in range(_ROUND_STEPS))
    return tuple((x + radius_x * cos(a), y + radius_y * sin(a)) for a in steps)


def box(width: float, height: float, x: float = MIDDLE, y: float = MIDDLE) -> Outline:
    """A rectangle centred on (x, y)."""
    w, h = width / 2, height / 2
    return ((x - w, y - h), (x + w, y - h), (x + w, y + h), (x - w, y + h))


def arc(radius: float, start: float, end: float, x: float = MIDDLE, y: float = MIDDLE) -> Outline:
    """Points along an arc from `start` to `end` degrees, anticlockwise from east."""
    steps = max(2, round(_ROUND_STEPS * abs(end - start) / 360))
    angles = (pi / 180 * (start + (end - start) * step / steps) for step in range(steps + 1))
    return tuple((x + radius * cos(a), y + radius * sin(a)) for a in angles)


def sector(
    radius: float, start: float, end: float, x: float = MIDDLE, y: float = MIDDLE
) -> Outline:
    """A slice of a round, its tip at (x, y)."""
    return ((x, y), *arc(radius, start, end, x, y))


def rosette(tips: int, outer: float, inner: float, start: float = 90) -> Outline:
    """A star of `tips` points; the first points to `start` degrees."""
    turns = range(2 * tips)
    return tuple(
        arc(outer if i % 2 == 0 else inner, start + i * 180 / tips, start + i * 180 / tips)[0]
        for i in turns
    )


def regular(sides: int, radius: float) -> Outline:
    """A regular polygon standing on end: one corner at the top."""
    turns = (90 + i * 360 / sides for i in range(sides))
    return tuple(arc(radius, turn, turn)[0] for turn in turns)


def lens(length: float, width: float) -> Outline:
    """An upright pointed oval between two arcs, as a leaf."""
    half, bulge = length / 2, width / 2
    radius = (half * half + bulge * bulge) / (2 * bulge)
    steps = 16
    ys = [half * (2 * i / steps - 1) for i in range(steps + 1)]
    xs = [(radius * radius - y * y) ** 0.5 - (radius - bulge) for y in ys]
    right = [(MIDDLE + x, MIDDLE + y) for x, y in zip(xs, ys)]
    left = [(MIDDLE - x, MIDDLE + y) for x, y in zip(xs, ys)][1:-1]
    return tuple(right + left[::-1])


def stroke(points: Iterable[Point], width: float) -> Outline:
    """An open line `width` thick with mitred bends and square-cut ends."""
    line = tuple(dict.fromkeys(points))  # a bend said twice is one bend
    left, right = [], []
    for i, (x, y) in enumerate(line):
        before = _unit(line[i - 1], line[i]) if i else _unit(line[0], line[1])
        after = _unit(line[i], line[i + 1]) if i + 1 < len(line) else before
        nx, ny = -(before[1] + after[1]), before[0] + after[0]
        # The mitre reaches further out the sharper the bend.
        scale = width / (nx * nx + ny * ny)
        left.append((x + nx * scale, y + ny * scale))
        right.append((x - nx * scale, y - ny * scale))
    return tuple(left + right[::-1])


def _unit(start: Point, end: Point) -> Point:
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy)
    return dx / length, dy / length


# Moving piles ---------------------------------------------------------------


def turned(pile: Pile, degrees: float) -> Pile:
    """The pile turned anticlockwise about the middle of the cell."""
    a = pi / 180 * degrees
    c, s = round(cos(a), 12), round(sin(a), 12)  # exact for quarter turns
    return _moved(pile, lambda x, y: (c * x - s * y, s * x + c * y))


def mirrored(pile: Pile) -> Pile:
    """The pile with left and right exchanged."""
    return _moved(pile, lambda x, y: (-x, y))


def scaled(pile: Pile, across: float, up: float | None = None) -> Pile:
    """The pile made larger or smaller about the middle of the cell."""
    return _moved(pile, lambda x, y: (x * across, y * (across if up is None else up)))


def shifted(pile: Pile, dx: float, dy: float) -> Pile:
    """The pile moved by (dx, dy) units."""
    return _moved(pile, lambda x, y: (x + dx, y + dy))


def _moved(pile: Pile, place: Callable[[float, float], Point]) -> Pile:
    def moved(point: Point) -> Point:
        x, y = place(point[0] - MIDDLE, point[1] - MIDDLE)
        return x + MIDDLE, y + MIDDLE

    return tuple(Piece(tuple(map(moved, piece.outline)), piece.black) for piece in pile)
