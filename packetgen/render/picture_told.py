"""How much of a chart somebody could read out of another, coarser one that is laid over it."""

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import exp

Rows = Sequence[str]
Part = Callable[[float, float], bool]
_SHIFTS = tuple((dx, dy) for dx in (-1, 0, 1) for dy in (-1, 0, 1))
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
        self._columns, self._rows, self._border = len(rows[0]), len(rows), border
        self._cells = [
            (x, y, mark)
            for y, row in enumerate(rows)
            for x, mark in enumerate(row)
            if any(
                0 <= x + dx < len(row) and 0 <= y + dy < len(rows) and rows[y + dy][x + dx] != mark
                for dx, dy in ((-1, 0), (1, 0), (0, -1), (0, 1))
            )
        ]

    def told(self, shown: Rows, part: Part | None = None) -> Told:
        """What `shown`, which lies over the chart and its border, tells of it.

        `part` says of a place, in crosses of `shown`, whether it counts.
        """
        across = self._near(self._columns, len(shown[0]))
        down = self._near(self._rows, len(shown))
        wide, high = (
            count / (cells + 2 * self._border)
            for count, cells in ((len(shown[0]), self._columns), (len(shown), self._rows))
        )
        voted, at_once = 0, dict.fromkeys(_SHIFTS, 0)
        seen: Counter[str] = Counter()
        for x, y, mark in self._cells:
            middle = (x + 0.5 + self._border) * wide, (y + 0.5 + self._border) * high
            if part and not part(*middle):
                continue
            columns, rows = across[x + 1][1], down[y + 1][1]
            seen[mark] += 1
            for dx, dy in _SHIFTS:
                at_once[dx, dy] += shown[down[y + 1 + dy][0]][across[x + 1 + dx][0]] == mark
            votes: dict[str, float] = {}
            for there, weight in rows:
                for here, share in columns:
                    said = shown[there][here]
                    votes[said] = votes.get(said, 0) + weight * share
            voted += max(votes, key=votes.__getitem__) == mark
        count = seen.total()
        if count < _FEWEST:
            return Told(0, 0, 0)
        return Told(max(at_once.values()) / count, voted / count, max(seen.values()) / count)

    def _near(self, cells: int, crosses: int) -> list[tuple[int, list[tuple[int, float]]]]:
        """For every cell, and one more before and after, the cross over its middle, and the crosses near
        it with their weights."""
        pitch = (cells + 2 * self._border) / crosses
        result = []
        for cell in range(-1, cells + 1):
            over = min(max(0, int((cell + 0.5 + self._border) / pitch)), crosses - 1)
            near = range(max(0, over - 1), min(crosses, over + 2))
            away = [((n + 0.5) * pitch - self._border - cell - 0.5) / _VOTE for n in near]
            result.append((over, [(n, exp(-(d**2) / 2)) for n, d in zip(near, away)]))
        return result
