"""Which stitches of a colour are worked in one go: patches joined by short travels behind the cloth."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from packetgen.model import Point

# The furthest a thread is led behind bare cloth, in stitches: common practice, no source.
TRAVEL_LIMIT = 5

Cell = tuple[int, int]


@dataclass(frozen=True)
class Patch:
    """`stitches` worked from one start, and the cells of bare cloth travelled behind between them."""

    stitches: int
    travel_cells: int


# Steps to the cells below or to the right, nearest first: every pair of cells is met once.
_STEPS = sorted(
    (max(abs(dx), dy), dx, dy)
    for dy in range(TRAVEL_LIMIT + 1)
    for dx in range(-TRAVEL_LIMIT, TRAVEL_LIMIT + 1)
    if (dy, dx) > (0, 0)
)


def patches(cells: Iterable[Cell]) -> tuple[Patch, ...]:
    """The patches of a colour's cells. A cell that holds several stitches is given as often.

    Cells belong together where the larger of their column and row distance is at most TRAVEL_LIMIT.
    Nearest cells are joined first, so the travel is that of a shortest tree through the clusters.
    """
    times = Counter(cells)
    where = set(times)
    # Only a stitch with a free side can be the near end of a travel.
    edge = sorted(
        (x, y) for x, y in where if not {(x + 1, y), (x - 1, y), (x, y + 1), (x, y - 1)} <= where
    )
    parent = {cell: cell for cell in where}
    travel: dict[Cell, int] = dict.fromkeys(where, 0)

    def root(cell: Cell) -> Cell:
        while parent[cell] != cell:
            parent[cell] = parent[parent[cell]]
            cell = parent[cell]
        return cell

    for distance, dx, dy in _STEPS:
        for x, y in sorted(where) if distance == 1 else edge:
            other = (x + dx, y + dy)
            if other not in where:
                continue
            here, there = root((x, y)), root(other)
            if here != there:
                parent[there] = here
                travel[here] += travel[there] + distance - 1

    stitches: dict[Cell, int] = {}
    for cell in where:
        stitches[root(cell)] = stitches.get(root(cell), 0) + times[cell]
    return tuple(Patch(stitches[cell], travel[cell]) for cell in sorted(stitches))


def runs(paths: Iterable[tuple[Point, ...]]) -> tuple[tuple[int, ...], ...]:
    """Groups of lines or knots worked in one go: indexes of `paths` that come within TRAVEL_LIMIT."""
    groups: list[tuple[set[int], list[Point]]] = []
    for index, points in enumerate(paths):
        near = [group for group in groups if _within_travel(group[1], points)]
        merged: tuple[set[int], list[Point]] = ({index}, list(points))
        for group in near:
            merged[0].update(group[0])
            merged[1].extend(group[1])
            groups.remove(group)
        groups.append(merged)
    return tuple(tuple(sorted(indexes)) for indexes, _ in sorted(groups, key=lambda g: min(g[0])))


def _within_travel(some: list[Point], others: tuple[Point, ...]) -> bool:
    return any(max(abs(x - u), abs(y - v)) <= TRAVEL_LIMIT for x, y in some for u, v in others)
