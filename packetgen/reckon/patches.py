"""Which stitches of a colour are worked in one go: patches joined by short travels behind the cloth.

Stitches of one key mark and one kind belong together where the larger of their column and row
distance is within the limit of travel. The nearest are joined first, so what is travelled in a patch
is the shortest tree through its stitches (Kruskal 1956), counted in bare cells. All colours are joined
at once: the chart is compared with itself, moved by each step in turn.
"""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import product

import numpy as np

from packetgen.model import BARE, Grid, Pattern, Stitch

Cell = tuple[int, int]  # column, row, from 1


@dataclass(frozen=True, order=True)
class Patch:
    """`stitches` worked from one start, and the cells of bare cloth travelled behind between them."""

    stitches: int
    travel_cells: int


# Equal patches → how many of them there are, small ones first.
Patches = Mapping[Patch, int]


def patches_of(pattern: Pattern, limit: int) -> dict[tuple[str, Stitch], Patches]:
    """The patches of every key mark in every kind of stitch that it is worked in, in cells.

    `limit` is the furthest that a thread is led behind, in stitches. Ordered as the key, a mark's own
    kind first.
    """
    groups = {(line.mark, line.stitch): number for number, line in enumerate(pattern.key, 1)}
    numbers = _numbered(pattern.grid, {mark: number for (mark, _), number in groups.items()})
    fractions = [
        (one.column, one.row, groups.setdefault((one.mark, one.stitch), len(groups) + 1))
        for one in pattern.fractions
    ]
    found = _patches(numbers, fractions, limit)
    return {group: found[number] for group, number in groups.items() if number in found}


def patches(cells: Iterable[Cell], limit: int) -> Patches:
    """The patches of one colour's cells. A cell that holds several stitches is given as often."""
    cells = list(cells)
    width, height = (max(along) for along in zip(*cells))
    none = np.zeros((height, width), np.int16)
    return _patches(none, [(column, row, 1) for column, row in cells], limit)[1]


def _numbered(grid: Grid, number_of: Mapping[str, int]) -> np.ndarray:
    """The chart with a number for each mark and 0 for bare cloth; height × width."""
    signs = np.array(grid.rows, f"U{grid.width}").view(np.uint32).reshape(grid.height, grid.width)
    table = np.zeros(signs.max() + 1, np.int16)
    for mark in set().union(*grid.rows) - {BARE}:
        table[ord(mark)] = number_of[mark]
    return table[signs]


Fractions = list[tuple[int, int, int]]  # column, row, group


def _patches(numbers: np.ndarray, fractions: Fractions, limit: int) -> Mapping[int, Patches]:
    """Patches by group. `numbers` has a group for each cell, 0 for none; `fractions` come on top."""
    held, times = _layers(numbers, fractions, limit)
    label, travel = _joined(held, _along(numbers.shape[1], limit), limit)
    stitches = np.bincount(label.ravel(), times.ravel(), len(travel)).astype(int)
    group = np.zeros(len(travel), int)
    group[label] = held
    here = np.flatnonzero(stitches)
    alike = Counter(zip(*(of[here].tolist() for of in (group, stitches, travel))))
    found: dict[int, dict[Patch, int]] = {}
    for (number, *patch), count in sorted(alike.items()):
        found.setdefault(number, {})[Patch(*patch)] = count
    return found


def _layers(numbers: np.ndarray, fractions: Fractions, limit: int) -> tuple[np.ndarray, np.ndarray]:
    """The group in each cell, and how many stitches of it: two arrays, layers × cells.

    The cells stand row by row in one line. A cell that several groups share holds one of them in each
    layer. There is a bare row above and a bare column at the left, and at the right so many that no
    step of travel comes round to the next row.
    """
    height, width = numbers.shape
    chart = np.zeros((height + 1, _along(width, limit)), np.int16)
    chart[1:, 1 : width + 1] = numbers
    cells = chart.ravel()
    if not fractions:
        return cells[None], (cells > 0)[None].astype(np.int32)
    column, row, group = np.array(fractions).T
    place = row * chart.shape[1] + column
    # What the chart itself has in such a cell is one more of its groups.
    taken = np.unique(place)
    taken = taken[cells[taken] > 0]
    pairs = np.stack((np.append(place, taken), np.append(group, cells[taken])))
    (place, group), count = np.unique(pairs, axis=1, return_counts=True)
    first = np.append(True, place[1:] != place[:-1])
    order = np.arange(place.size)
    layer = order - np.maximum.accumulate(np.where(first, order, 0))
    held = np.zeros((layer.max() + 1, cells.size), np.int16)
    held[0] = cells
    times = (held > 0).astype(np.int32)
    held[layer, place], times[layer, place] = group, count
    return held, times


def _along(width: int, limit: int) -> int:
    """Cells in a line of `_layers` from one row to the next."""
    return 1 + width + limit


def _joined(held: np.ndarray, along: int, limit: int) -> tuple[np.ndarray, np.ndarray]:
    """A label for each cell of each layer, the same within a patch and 0 where nothing is held; and
    what is travelled within each patch, by label. From one row to the next it is `along` cells."""
    # Cells side by side are one from the start, so that fewer need joining.
    cells = held.ravel()
    label: np.ndarray = np.zeros(cells.size, np.intp)
    np.cumsum(cells[1:] != cells[:-1], out=label[1:])
    label[cells == 0] = 0
    travel = np.zeros(label.max() + 1, np.intp)
    label = label.reshape(held.shape)
    for distance in range(1, limit + 1):
        pairs = [_meeting(held, label, dy * along + dx) for dx, dy in _steps(distance)]
        root = _roots(len(travel), *map(np.concatenate, zip(*pairs)))
        joined = np.flatnonzero(root != np.arange(len(root)))
        np.add.at(travel, root[joined], travel[joined] + distance - 1)
        label = root[label]
    return label, travel


def _steps(distance: int) -> list[tuple[int, int]]:
    """Steps of this distance to cells on the right or below, so that every two cells meet once."""
    return [
        (dx, dy)
        for dy in range(distance + 1)
        for dx in range(-distance, distance + 1)
        if max(abs(dx), dy) == distance and (dy, dx) > (0, 0)
    ]


def _meeting(held: np.ndarray, label: np.ndarray, step: int) -> tuple[np.ndarray, np.ndarray]:
    """Labels of cells one step apart that hold the same and are not yet joined."""
    pairs = []
    for one, other in product(range(len(held)), repeat=2):
        here, there = label[one, :-step], label[other, step:]
        at = np.flatnonzero((held[one, :-step] == held[other, step:]) & (here != there))
        here, there = here[at], there[at]
        # Long edges meet in the same pair again and again.
        anew = np.ones(at.size, bool)
        anew[1:] = (here[1:] != here[:-1]) | (there[1:] != there[:-1])
        pairs.append((here[anew], there[anew]))
    here, there = map(np.concatenate, zip(*pairs))
    return here, there


def _roots(count: int, here: np.ndarray, there: np.ndarray) -> np.ndarray:
    """For each of `count` labels the least of those that the pairs join it with, itself perhaps.

    Every label points at a smaller one that it is paired with, then straight at the last in the
    line, until no pair is left that points at two.
    """
    root = np.arange(count)
    while here.size:
        np.minimum.at(root, np.maximum(here, there), np.minimum(here, there))
        while (root != (further := root[root])).any():
            root = further
        here, there = root[here], root[there]
        apart = here != there
        here, there = here[apart], there[apart]
    return root
