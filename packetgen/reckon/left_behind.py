"""Lines, knots, daisies and beads that stay where they were while the stitches under them were moved."""

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise, product
from math import ceil, dist, floor

from packetgen.diagnostics import Place, Problems
from packetgen.model import BARE, Pattern, Point
from packetgen.nouns import counted, listed

_FAR = 10  # columns and rows, that a motif is moved by hand
_NEAR = 1.5  # stitches, from a line to the middle of those that count as under it
_NAMED = 5  # lines of a file, in one message
_STEP = 0.5  # stitches, from one point to the next at which one looks
# Of the stitches under it: so many are found where they were moved to, and so many fewer where they were: our own choice.
_FOUND, _FEWER = 0.75, 0.4
# Of all stitches that are gone from where they were, and of all that are new where they are: so many at least of so many
# go together, where a motif was moved; our own choice too.
_ALIKE, _ENOUGH = 0.6, 4

Stitches = Mapping[tuple[int, int], str]  # column and row from 1 → mark


@dataclass(frozen=True)
class Laid:
    """What lies on the stitches: of which kind and colour, from point to point, or at one."""

    kind: str
    colour: str
    points: tuple[Point, ...]
    place: Place = field(default=Place(""), compare=False)


@dataclass(frozen=True)
class Drawn:
    """A chart and what lies on it, as it was at another time."""

    rows: tuple[str, ...]
    laid: frozenset[Laid]


def laid_on(pattern: Pattern) -> Iterator[Laid]:
    """All that lies on the stitches of a pattern."""
    for line in pattern.lines:
        yield Laid("line", line.mark, line.points, line.place)
    for knot in pattern.knots:
        yield Laid("knot", knot.mark, (knot.at,), knot.place)
    for daisy in pattern.daisies:
        yield Laid("daisy", daisy.mark, (daisy.base, daisy.tip), daisy.place)
    for bead in pattern.beads:
        yield Laid("bead", " ".join(bead.kind), (bead.at,), bead.place)


def complain_of_left_behind(pattern: Pattern, before: Drawn, problems: Problems) -> None:
    """Advice on what lies where it lay `before`, while the stitches under it now stand so many columns and rows from
    there: one line for all that would have to move alike."""
    if before.rows == pattern.grid.rows:
        return
    old, new = _stitches(before.rows), _stitches(pattern.grid.rows)
    now = set(laid_on(pattern))
    under = {one: _under(one, old) for one in laid_on(pattern) if one in before.laid}
    ways = {one: _ways(cells, new) for one, cells in under.items()}
    motifs = {way: _motif(way, old, new) for way in _ways_of_motif(old, new)}
    times = Counter((*(way for found in ways.values() for way in found), *motifs))
    left: dict[tuple[int, int], list[Laid]] = {}
    for one, found in ways.items():
        found = found or [way for way in motifs if _hung_on(one, motifs[way], new)]
        if found:  # as most of the others, and else the shortest way
            way = min(found, key=lambda each: (-times[each], abs(each[0]) + abs(each[1]), each))
            # What was moved along may stand where its neighbour stood.
            if now <= before.laid or _moved_by(one, way) not in now:
                left.setdefault(way, []).append(one)
    for way, these in left.items():
        _complain(way, sorted({one.place for one in these}), problems)


def _moved_by(laid: Laid, way: tuple[int, int]) -> Laid:
    return replace(laid, points=tuple((x + way[0], y + way[1]) for x, y in laid.points))


def _stitches(rows: Sequence[str]) -> Stitches:
    return {
        (column, row): mark
        for row, line in enumerate(rows, 1)
        for column, mark in enumerate(line, 1)
        if mark != BARE
    }


def _under(laid: Laid, stitches: Stitches) -> Stitches:
    """The stitches, and the bare cloth, on which it lies and beside which."""
    cells = {
        cell
        for start, end in pairwise((laid.points[0], *laid.points))
        for x, y in _along(start, end)
        for cell in product(_beside(x), _beside(y))
    }
    return {cell: stitches.get(cell, BARE) for cell in cells}


def _along(start: Point, end: Point) -> Iterator[Point]:
    steps = max(1, ceil(dist(start, end) / _STEP))
    for step in range(steps + 1):
        share = step / steps
        yield (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))


def _beside(at: float) -> range:
    """The columns, or rows, whose middle is nearer than that."""
    return range(floor(at - 0.5 - _NEAR) + 1, ceil(at - 0.5 + _NEAR))


def _ways(under: Stitches, now: Stitches) -> list[tuple[int, int]]:
    """By how many columns and rows the stitches may have moved; none where they are where they were, or where there were
    none."""
    by = range(-_FAR, _FAR + 1)
    if set(under.values()) == {BARE} or _share(under, (0, 0), now) > 1 - _FEWER:
        return []
    moved = [way for way in product(by, by) if _is_moved(under, way, now)]
    best = max((_share(under, way, now) for way in moved), default=0.0)
    return [way for way in moved if _share(under, way, now) == best]


def _ways_of_motif(old: Stitches, new: Stitches) -> list[tuple[int, int]]:
    """By how many columns and rows the stitches of the chart that changed were moved; none where they were changed otherwise."""
    gone = {cell: mark for cell, mark in old.items() if new.get(cell) != mark}
    arrived = {cell: mark for cell, mark in new.items() if old.get(cell) != mark}
    if min(len(gone), len(arrived)) < _ENOUGH:
        return []
    by = range(-_FAR, _FAR + 1)
    alike = {
        (across, down): min(
            _share(gone, (across, down), new), _share(arrived, (-across, -down), old)
        )
        for across, down in product(by, by)
    }
    best = max(alike.values())
    return [way for way, share in alike.items() if share == best >= _ALIKE]


def _motif(way: tuple[int, int], old: Stitches, new: Stitches) -> Stitches:
    """Each patch of one colour of which some stitches are gone, and all are found so many columns and rows from there."""
    motif: dict[tuple[int, int], str] = {}
    seen = set[tuple[int, int]]()
    for begin, mark in old.items():
        if begin in seen or new.get(begin) == mark:
            continue
        patch, edge = {begin}, [begin]
        while edge:
            column, row = edge.pop()
            beside = ((column + 1, row), (column - 1, row), (column, row + 1), (column, row - 1))
            more = {cell for cell in beside if old.get(cell) == mark} - patch
            patch |= more
            edge += more
        seen |= patch
        stitches = dict.fromkeys(patch, mark)
        if _share(stitches, way, new) == 1:
            motif |= stitches
    return motif


def _hung_on(laid: Laid, motif: Stitches, now: Stitches) -> bool:
    """Whether it began or ended at stitches of a motif that are gone from there."""
    return any(
        cell in motif and now.get(cell) != motif[cell]
        for x, y in (laid.points[0], laid.points[-1])
        for cell in product(range(ceil(x) - 1, floor(x) + 1), range(ceil(y) - 1, floor(y) + 1))
    )


def _is_moved(under: Stitches, way: tuple[int, int], now: Stitches) -> bool:
    found, stayed = _share(under, way, now), _share(under, (0, 0), now)
    return found >= _FOUND and found - stayed >= _FEWER


def _share(under: Stitches, way: tuple[int, int], now: Stitches) -> float:
    """Of those stitches, the share that is found so many columns and rows from where they were."""
    across, down = way
    return sum(
        now.get((column + across, row + down), BARE) == mark
        for (column, row), mark in under.items()
    ) / len(under)


def _complain(way: tuple[int, int], places: Collection[Place], problems: Problems) -> None:
    across, down = way
    moved = [
        f"{counted(abs(by), noun)} {sides[by > 0]}"
        for by, noun, sides in (
            (across, "column", ("to the left", "to the right")),
            (down, "row", ("up", "down")),
        )
        if by
    ]
    numbers = [
        f"{'add' if by > 0 else 'take'} {abs(by)} {'to' if by > 0 else 'from'} the {which} number"
        for by, which in ((across, "first"), (down, "second"))
        if by
    ]
    first, *others = sorted(places)
    lines = sorted({one.line for one in others} - {first.line})
    also = f" and what {len(lines)} more lines tell" if lines else ""
    if len(lines) == 1:
        also = f" and what line {lines[0]} tells"
    elif len(lines) <= _NAMED and lines:
        also = f" and what lines {listed(tuple(map(str, lines)))} tell"
    problems.add(
        first,
        "stitches-moved",
        also=also,
        moved=" and ".join(moved),
        mend=" and ".join(numbers),
    )
