"""Where an old chart lies in a new one of another size, as when a ground was trimmed off the first and not the second."""

from collections.abc import Sequence

import numpy as np

from packetgen.model import BARE

_ALIKE = 0.9  # of the stitches of the old one, that are the same in the new
_MOST = 300_000_000  # cells that are compared


def moved(old: Sequence[str], new: Sequence[str]) -> tuple[int, int]:
    """By how many columns to the right, and rows down, the stitches of the old chart lie farther in the new one; 0, 0
    where they do not, or elsewhere than one chart within the other. A ground round the old one, all of one mark, need
    not be in the new one."""
    if not old or not new:
        return 0, 0
    before, after = _cells(old), _cells(new)
    (high, wide), (new_high, new_wide) = before.shape, after.shape
    rows, columns = _between(high, new_high), _between(wide, new_wide)
    if len(rows) * len(columns) * before.size > _MOST:
        return 0, 0
    same = {(x, y): _same(before, after, x, y) for y in rows for x in columns}
    best = max(same, key=lambda place: (same[place], place == (0, 0)))
    ground = _ground(before, after, *best)
    stitches = int(((before != BARE) & (before != ground)).sum())
    alike = _same(before, after, *best, ground)
    return best if stitches and alike >= _ALIKE * stitches else (0, 0)


def _between(old: int, new: int) -> range:
    return range(min(0, new - old), max(0, new - old) + 1)


def _same(before: np.ndarray, after: np.ndarray, x: int, y: int, ground: str = BARE) -> int:
    """How many stitches are alike if the old chart lies so far to the right and down, without those of a ground."""
    high, wide = min(before.shape[0], after.shape[0]), min(before.shape[1], after.shape[1])
    old = before[max(0, -y) : max(0, -y) + high, max(0, -x) : max(0, -x) + wide]
    new = after[max(0, y) : max(0, y) + high, max(0, x) : max(0, x) + wide]
    return int(((old == new) & (old != BARE) & (old != ground)).sum())


def _ground(before: np.ndarray, after: np.ndarray, x: int, y: int) -> str:
    """The mark that alone stands wherever the old chart reaches beyond the new one; a full stop where there is none."""
    beyond = np.ones(before.shape, bool)
    beyond[max(0, -y) : max(0, -y) + after.shape[0], max(0, -x) : max(0, -x) + after.shape[1]] = 0
    marks = set(before[beyond])
    return str(marks.pop()) if len(marks) == 1 else BARE


def _cells(rows: Sequence[str]) -> np.ndarray:
    wide = max(map(len, rows), default=0)
    return np.array([list(row.ljust(wide, BARE)) for row in rows])
