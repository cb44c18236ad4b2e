"""Paths of thread laid anew: corners rounded off, and cut into pieces of even length."""

from math import dist

from packetgen.render.picture_thread import Vector

_STEP = 0.5  # from one point to the next while a path is smoothed
_REACH = 2  # points to either side that a point is averaged with
_TIMES = 2


def smooth(points: tuple[Vector, ...]) -> list[Vector]:
    """The path with its corners rounded off, as points close together. Its ends stay, if it has any."""
    dense = _dense(points)
    closed = points[0] == points[-1]
    for _ in range(_TIMES):
        dense = _averaged(dense[:-1], closed) if closed else _averaged(dense, closed)
        if closed:
            dense.append(dense[0])
    return dense


def pieces(path: list[Vector], length: float) -> tuple[Vector, ...]:
    """Points of a dense path about `length` apart, with both of its ends."""
    kept = [path[0]]
    for point in path[1:]:
        if dist(point, kept[-1]) >= length:
            kept.append(point)
    if kept[-1] != path[-1]:
        if len(kept) > 1 and dist(kept[-1], path[-1]) < length / 2:
            kept.pop()
        kept.append(path[-1])
    return tuple(kept)


def _dense(points: tuple[Vector, ...]) -> list[Vector]:
    dense = []
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        steps = max(1, round(dist((x0, y0), (x1, y1)) / _STEP))
        dense += [
            (x0 + (x1 - x0) * step / steps, y0 + (y1 - y0) * step / steps) for step in range(steps)
        ]
    return [*dense, points[-1]]


def _averaged(path: list[Vector], closed: bool) -> list[Vector]:
    count, result = len(path), list[Vector]()
    for index in range(count):
        reach = _REACH if closed else min(_REACH, index, count - 1 - index)
        near = [path[(index + step) % count] for step in range(-reach, reach + 1)]
        xs, ys = zip(*near)
        result.append((sum(xs) / len(near), sum(ys) / len(near)))
    return result
