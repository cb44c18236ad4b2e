"""Cutting: from a pile of black and white paper to the outlines of what is still black."""

from collections.abc import Iterable, Sequence
from math import hypot
from typing import TypeVar

from packetgen.chart.shapes_paper import CELL, MIDDLE, Outline, Pile, Point

_Dot = tuple[int, int]
Contour = tuple[_Dot, ...]
_Run = tuple[_Dot, _Dot]
_Box = tuple[float, float, float, float]  # left, top, right, bottom
_Corner = TypeVar("_Corner")

MARGIN = 120  # kept clear on every side, so that no shape touches a grid line
_NEAR = 1e-7
_BESIDE = 0.01  # how far to either side of an edge we look for paper


def cut(pile: Pile) -> tuple[Contour, ...]:
    """Outlines of the black paper still to be seen, centred on the cell.

    Whole units; black lies to the right of the way each contour runs (outer
    contours clockwise, holes anticlockwise, as TrueType asks). Contours never
    cross each other. The bounding box is centred on (500, 500), to the unit, and
    lies within the margin.
    """
    boxes = [_bounds(piece.outline) for piece in pile]
    runs: dict[tuple[int, int], list[tuple[int, int]]] = {}
    seen: set[tuple[tuple[int, int], tuple[int, int]]] = set()
    for index, piece in enumerate(pile):
        others = [
            p.outline for i, p in enumerate(pile) if i != index and _meet(boxes[i], boxes[index])
        ]
        for start, end in _edges(piece.outline):
            for a, b in _split(start, end, others):
                run = _border(a, b, pile, boxes)
                if run and run[0] != run[1] and run not in seen:
                    seen.add(run)
                    runs.setdefault(run[0], []).append(run[1])
    return _placed(_chained(runs))


def _bounds(outline: Iterable[Point]) -> _Box:
    xs, ys = zip(*outline)
    return min(xs), min(ys), max(xs), max(ys)


def _meet(a: _Box, b: _Box) -> bool:
    return a[0] <= b[2] + 1 and b[0] <= a[2] + 1 and a[1] <= b[3] + 1 and b[1] <= a[3] + 1


def _edges(outline: Sequence[_Corner]) -> Iterable[tuple[_Corner, _Corner]]:
    return zip(outline, [*outline[1:], *outline[:1]])


def _split(start: Point, end: Point, others: list[Outline]) -> list[tuple[Point, Point]]:
    """The edge in parts, parted wherever another outline meets it."""
    (x, y), dx, dy = start, end[0] - start[0], end[1] - start[1]
    low_x, high_x = min(x, end[0]) - 1, max(x, end[0]) + 1
    low_y, high_y = min(y, end[1]) - 1, max(y, end[1]) + 1
    length2 = dx * dx + dy * dy
    stops = {0.0, 1.0}
    for outline in others:
        for (ax, ay), (bx, by) in _edges(outline):
            if (
                (ax < low_x and bx < low_x)
                or (ax > high_x and bx > high_x)
                or (ay < low_y and by < low_y)
                or (ay > high_y and by > high_y)
            ):
                continue
            ex, ey = bx - ax, by - ay
            across = dx * ey - dy * ex
            if abs(across) > _NEAR * length2:
                t = ((ax - x) * ey - (ay - y) * ex) / across
                u = ((ax - x) * dy - (ay - y) * dx) / across
                if -_NEAR < u < 1 + _NEAR:
                    stops.add(t)
            elif abs((ax - x) * dy - (ay - y) * dx) < _NEAR * length2:
                stops.add(((ax - x) * dx + (ay - y) * dy) / length2)
                stops.add(((bx - x) * dx + (by - y) * dy) / length2)
    order = sorted(t for t in stops if 0 <= t <= 1)
    points = [(x + dx * t, y + dy * t) for t in order]
    return list(zip(points, points[1:]))


def _border(a: Point, b: Point, pile: Pile, boxes: Sequence[_Box]) -> _Run | None:
    """The part as a run with black on its right, or None if it parts nothing."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = hypot(dx, dy)
    if length < _BESIDE:
        return None
    x, y = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2
    nx, ny = -dy / length * _BESIDE, dx / length * _BESIDE
    left = _is_black(x + nx, y + ny, pile, boxes)
    right = _is_black(x - nx, y - ny, pile, boxes)
    if left == right:
        return None
    first, last = (a, b) if right else (b, a)
    return (round(first[0]), round(first[1])), (round(last[0]), round(last[1]))


def _is_black(x: float, y: float, pile: Pile, boxes: Sequence[_Box]) -> bool:
    for piece, (x0, y0, x1, y1) in zip(reversed(pile), reversed(boxes)):
        if x0 < x < x1 and y0 < y < y1 and _within(x, y, piece.outline):
            return piece.black
    return False


def _within(x: float, y: float, outline: Outline) -> bool:
    inside = False
    for (ax, ay), (bx, by) in _edges(outline):
        if (ay > y) != (by > y) and x < ax + (y - ay) * (bx - ax) / (by - ay):
            inside = not inside
    return inside


def _chained(runs: dict[_Dot, list[_Dot]]) -> list[list[tuple[int, int]]]:
    """Closed contours from single runs, points on straight stretches dropped."""
    contours = []
    while runs:
        first = min(runs)
        contour, here = [], first
        while True:
            contour.append(here)
            following = runs[here].pop(0)
            if not runs[here]:
                del runs[here]
            here = following
            if here == first:
                break
        corners = [
            b
            for a, b, c in zip(contour[-1:] + contour[:-1], contour, contour[1:] + contour[:1])
            if (b[0] - a[0]) * (c[1] - b[1]) != (b[1] - a[1]) * (c[0] - b[0])
        ]
        contours.append(corners)
    return contours


def _placed(contours: Sequence[Sequence[_Dot]]) -> tuple[Contour, ...]:
    """Contours centred by their bounding box, made smaller if they pass the margin."""
    x0, y0, x1, y1 = _bounds(point for contour in contours for point in contour)
    size = min(1, (CELL - 2 * MARGIN) / max(x1 - x0, y1 - y0))
    mid_x, mid_y = (x0 + x1) / 2, (y0 + y1) / 2

    def placed(x: float, y: float) -> tuple[int, int]:
        return int(MIDDLE + (x - mid_x) * size), int(MIDDLE + (y - mid_y) * size)

    return tuple(tuple(placed(x, y) for x, y in contour) for contour in contours)


def area(contours: Iterable[Contour]) -> float:
    """Black area in square units of contours as `cut` returns them."""
    return sum(
        (bx - ax) * (ay + by) / 2 for contour in contours for (ax, ay), (bx, by) in _edges(contour)
    )
