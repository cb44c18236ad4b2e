"""A smooth wandering of places: the same for the same key, and unknown to whoever has not the key."""

from random import Random

import numpy as np

# Cells from one node to the next, and the share of the wandering that is its own. The long one is what
# cloth does when it is drawn over wadding; the short one is what a hand does.
_WAVES = ((12.0, 0.6), (30.0, 0.8))
# Standard deviation of a cubic B-spline surface over nodes of deviation 1: from 0.46 between its nodes
# to 0.5 on them (its weights squared and summed, from their formula).
_SURFACE = 0.48
_ROUND = 3  # nodes beyond every edge


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

    def over(self, xs: np.ndarray, ys: np.ndarray) -> np.ndarray:
        """The straying at every place of a grid: rows × columns × (across, down)."""
        return self._both(xs[None, :], ys[:, None])

    def at(self, places: np.ndarray) -> np.ndarray:
        """The straying at each of these places: both are places × (across, down)."""
        return self._both(places[:, 0], places[:, 1])

    def _both(self, xs: np.ndarray, ys: np.ndarray) -> np.ndarray:
        moved: np.ndarray = np.add(*(mesh.at(xs, ys) for mesh in self._meshes))
        return moved


class _Mesh:
    def __init__(self, rng: Random, columns: int, rows: int, spacing: float, reach: float) -> None:
        self._spacing = spacing
        across, down = (int(n / spacing) + 2 * _ROUND + 2 for n in (columns, rows))
        moved = [rng.gauss(0, reach) for _ in range(2 * across * down)]
        self._nodes = np.array(moved).reshape(down, across, 2)

    def at(self, xs: np.ndarray, ys: np.ndarray) -> np.ndarray:
        (left, across), (top, down) = (
            self._weights(places, nodes)
            for places, nodes in ((xs, self._nodes.shape[1]), (ys, self._nodes.shape[0]))
        )
        moved = np.zeros((*np.broadcast(xs, ys).shape, 2))
        for row, tall in enumerate(down):
            for column, wide in enumerate(across):
                moved += (tall * wide)[..., None] * self._nodes[top + row, left + column]
        return moved

    def _weights(self, places: np.ndarray, nodes: int) -> tuple[np.ndarray, tuple[np.ndarray, ...]]:
        """The first of the four nodes that move a place, and the weight of each: a cubic B-spline."""
        at = places / self._spacing + _ROUND
        before = np.clip(np.floor(at), 1, nodes - 3).astype(int)
        t = at - before
        return before - 1, (
            (1 - t) ** 3 / 6,
            (3 * t**3 - 6 * t**2 + 4) / 6,
            (-3 * t**3 + 3 * t**2 + 3 * t + 1) / 6,
            t**3 / 6,
        )
