"""How much of a chart somebody could read out of another, coarser one that is laid over it."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import product
from math import exp

import numpy as np

Rows = Sequence[str]
Part = Callable[[np.ndarray, np.ndarray], np.ndarray]
_FEWEST = 25  # cells from which a share says anything
_VOTE = 0.8  # standard deviation, in cells, with which near crosses speak for a cell


@dataclass(frozen=True)
class Told:
    """Shares of the cells that differ from a neighbour: flat areas give nothing away.

    `at_once` are right by the cross that lies over them, after the best of nine shifts by up to a cell,
    since all may have strayed one way; `voted` are right by what the crosses round them say
    together, `guessed` if the commonest mark is put into them all, without any picture.
    """

    at_once: float
    voted: float
    guessed: float


class Detail:
    """The cells of a chart that differ from a neighbour, and `border` cells of bare cloth round it."""

    def __init__(self, rows: Rows, border: float) -> None:
        self._signs, self._border = signs(rows), border
        self._at = np.nonzero(detail_of(self._signs))

    def told(self, shown: Rows, part: Part | None = None) -> Told:
        """What `shown`, which lies over the chart and its border, tells of it.

        `part` says of places, in crosses of `shown` across and down, which of them count.
        """
        seen = signs(shown)
        ys, xs = self._at
        if part:
            middles = (
                (at + 0.5 + self._border) * crosses / (cells + 2 * self._border)
                for at, crosses, cells in zip((xs, ys), seen.shape[::-1], self._signs.shape[::-1])
            )
            counted = part(*middles)
            ys, xs = ys[counted], xs[counted]
        count = len(ys)
        if count < _FEWEST:
            return Told(0, 0, 0)
        right = self._signs[ys, xs]
        (over_x, across), (over_y, down) = (
            self._near(cells, crosses)
            for cells, crosses in zip(self._signs.shape[::-1], seen.shape[::-1])
        )
        at_once = max(
            (seen[over_y[ys + dy], over_x[xs + dx]] == right).mean()
            for dx, dy in product((0, 1, 2), repeat=2)
        )
        marks, said = np.unique(seen, return_inverse=True)
        said = said.reshape(seen.shape)
        votes, each = np.zeros((count, len(marks))), np.arange(count)
        for (to_y, tall), (to_x, wide) in product(zip((-1, 0, 1), down), zip((-1, 0, 1), across)):
            rows = np.clip(over_y[ys + 1] + to_y, 0, seen.shape[0] - 1)
            columns = np.clip(over_x[xs + 1] + to_x, 0, seen.shape[1] - 1)
            votes[each, said[rows, columns]] += tall[ys] * wide[xs]
        voted = (marks[votes.argmax(axis=1)] == right).mean()
        guessed = np.unique(right, return_counts=True)[1].max() / count
        return Told(float(at_once), float(voted), float(guessed))

    def _near(self, cells: int, crosses: int) -> tuple[np.ndarray, np.ndarray]:
        """For every cell, and one more before and after, the cross over its middle; and for every cell the
        weights of the cross before that one, of that one and of the one after."""
        pitch = (cells + 2 * self._border) / crosses
        middles = [cell + 0.5 + self._border for cell in range(-1, cells + 1)]
        over = [min(max(0, int(middle / pitch)), crosses - 1) for middle in middles]
        weights = [
            [
                exp(-((((n + 0.5) * pitch - middle) / _VOTE) ** 2) / 2) if 0 <= n < crosses else 0.0
                for middle, n in zip(middles[1:-1], (one + step for one in over[1:-1]))
            ]
            for step in (-1, 0, 1)
        ]
        return np.array(over), np.array(weights)


def detail_of(chart: np.ndarray) -> np.ndarray:
    """Which cells differ from a neighbour, of a chart in signs."""
    near = np.pad(chart, 1, mode="edge")
    beside = (near[1:-1, :-2], near[1:-1, 2:], near[:-2, 1:-1], near[2:, 1:-1])
    return np.any([side != chart for side in beside], axis=0)


def signs(rows: Rows) -> np.ndarray:
    """The number of every mark as Unicode has it; height × width."""
    return np.array(rows, f"U{len(rows[0])}").view(np.uint32).reshape(len(rows), len(rows[0]))
