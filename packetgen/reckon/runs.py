"""Which lines, knots and daisies of a colour are worked in one go."""

from collections.abc import Iterable

from packetgen.model import Point


def runs(paths: Iterable[tuple[Point, ...]], limit: float) -> tuple[tuple[int, ...], ...]:
    """Groups of lines or knots worked in one go: indexes of `paths` of which a point is within
    `limit` of a point of another."""
    group: list[int] = []  # by index, another of its group with no greater index

    def first(index: int) -> int:
        while group[index] != index:
            group[index] = group[group[index]]
            index = group[index]
        return index

    def join(one: int, other: int) -> None:
        one, other = sorted((first(one), first(other)))
        group[other] = one

    # In a square whose sides are the limit all are near; only squares that touch need comparing.
    squares: dict[tuple[int, int], list[tuple[Point, int]]] = {}
    for index, points in enumerate(paths):
        group.append(index)
        for x, y in points:
            square = squares.setdefault((int(x // limit), int(y // limit)), [])
            square.append(((x, y), index))
            join(square[0][1], index)
    for (across, down), square in squares.items():
        for step in ((1, 0), (-1, 1), (0, 1), (1, 1)):
            other = squares.get((across + step[0], down + step[1]), [])
            if other and first(square[0][1]) != first(other[0][1]):
                if any(_near(one, two, limit) for one, _ in square for two, _ in other):
                    join(square[0][1], other[0][1])
    found: dict[int, list[int]] = {}
    for index in range(len(group)):
        found.setdefault(first(index), []).append(index)
    return tuple(map(tuple, found.values()))


def _near(one: Point, other: Point, limit: float) -> bool:
    return max(abs(one[0] - other[0]), abs(one[1] - other[1])) <= limit
