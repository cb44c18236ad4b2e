"""A smooth wandering of places: the same for the same key, and unknown to whoever has not the key."""

from collections.abc import Iterable, Sequence
from math import floor
from random import Random

from packetgen.render.picture_thread import Vector

# Cells from one node to the next, and the share of the wandering that is its own. The long one is what
# cloth does when it is drawn over wadding; the short one is what a hand does.
_WAVES = ((12.0, 0.6), (30.0, 0.8))
# Standard deviation of a cubic B-spline surface over nodes of deviation 1: from 0.46 between its nodes
# to 0.5 on them (its weights squared and summed, from their formula).
_SURFACE = 0.48
_ROUND = 3  # nodes beyond every edge


Weights = tuple[float, float, float, float]


class Wander:
    """How far each place of a design strays: each coordinate by a standard deviation of about 1 cell.

    Every node of two meshes is moved by chance, drawn from a generator that starts from `key`, so nothing
    but the key tells how a place has strayed. Places near each other stray alike, and shapes stay shapes.
    """

    def __init__(self, key: str, columns: int, rows: int) -> None:
        self._meshes = [
            _Mesh(Random(f"{key} {spacing}"), columns, rows, spacing, share / _SURFACE)
            for spacing, share in _WAVES
        ]

    def over(self, xs: Sequence[float], ys: Iterable[float]) -> list[list[Vector]]:
        """The straying at every place of a grid, a list for each of `ys`."""
        return [
            [(x0 + x1, y0 + y1) for (x0, y0), (x1, y1) in zip(*lines)]
            for lines in zip(*(mesh.over(xs, ys) for mesh in self._meshes))
        ]

    def at(self, place: Vector) -> Vector:
        (x0, y0), (x1, y1) = (mesh.at(*place) for mesh in self._meshes)
        return x0 + x1, y0 + y1


class _Mesh:
    def __init__(self, rng: Random, columns: int, rows: int, spacing: float, reach: float) -> None:
        self._spacing = spacing
        across, down = (int(n / spacing) + 2 * _ROUND + 2 for n in (columns, rows))
        self._nodes = [
            [(rng.gauss(0, reach), rng.gauss(0, reach)) for _ in range(across)] for _ in range(down)
        ]

    def over(self, xs: Sequence[float], ys: Iterable[float]) -> list[list[Vector]]:
        columns = [self._weights(x, len(self._nodes[0])) for x in xs]
        return [self._line(columns, *self._weights(y, len(self._nodes))) for y in ys]

    def at(self, x: float, y: float) -> Vector:
        left, across = self._weights(x, len(self._nodes[0]))
        top, down = self._weights(y, len(self._nodes))
        nodes = (row[left : left + 4] for row in self._nodes[top : top + 4])
        return _mean([_mean(row, across) for row in nodes], down)

    def _line(self, columns: list[tuple[int, Weights]], top: int, down: Weights) -> list[Vector]:
        drawn = [_mean(nodes, down) for nodes in zip(*self._nodes[top : top + 4])]
        return [_mean(drawn[left : left + 4], across) for left, across in columns]

    def _weights(self, place: float, nodes: int) -> tuple[int, Weights]:
        """The first of the four nodes that move a place, and the weight of each: a cubic B-spline."""
        at = place / self._spacing + _ROUND
        before = min(max(floor(at), 1), nodes - 3)
        t = at - before
        return before - 1, (
            (1 - t) ** 3 / 6,
            (3 * t**3 - 6 * t**2 + 4) / 6,
            (-3 * t**3 + 3 * t**2 + 3 * t + 1) / 6,
            t**3 / 6,
        )


def _mean(four: Sequence[Vector], weights: Weights) -> Vector:
    a, b, c, d = weights
    (x0, y0), (x1, y1), (x2, y2), (x3, y3) = four
    return a * x0 + b * x1 + c * x2 + d * x3, a * y0 + b * y1 + c * y2 + d * y3
