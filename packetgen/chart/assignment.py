"""Which colour gets which chart shape.

Colours that look alike, or that touch in the chart, must not have shapes that look alike; colours with
many stitches get light shapes, so that a page does not turn black.

Shapes stay where they are as far as can be. Each line of the key has a home shape by its place, and
leaves it only where it is too like a shape above. So a shape depends on the lines above it and on the
author's pins alone: a line added at the end moves no shape; a changed one moves none above it, few or
none below in a key of up to thirty lines, and none at all while the same colours stay close and dense.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations, pairwise
from math import gcd

from packetgen.chart.likeness import blackness, likeness
from packetgen.chart.paintbox import tint
from packetgen.chart.shapes_order import GIVING_ORDER
from packetgen.chart.symbols import code_point
from packetgen.colour import blended, difference, lab
from packetgen.model import BARE, Pattern
from packetgen.reckon.vision import EYES, seen

Pair = frozenset[str]  # of two marks

# Tints that differ by less look alike (CIEDE2000); chosen by eye, as are all figures here.
LOOKS_ALIKE = 8.0
# The same for eyes that lack a kind of cone.
LOOKS_ALIKE_TO_SOME = 3.0
# Two colours touch when so much of one's edge with other colours lies against the other.
_TOUCHING_SHARE = 1 / 6

# The likeness that the first line of the key puts up with between shapes of close colours and of any
# others, and what each line further down puts up with besides, having fewer shapes to choose from.
# Stricter limits would have more lines leave their homes, and then one that moves moves others.
_ALIKE_IF_CLOSE, _ALIKE_AT_ALL, _MORE_A_LINE = 0.33, 0.58, 0.0025

# A colour with one stitch in twenty or more gets one of the lightest shapes, or a page would turn
# black. There can be no more than twenty such colours, so the light shapes do not run out.
_DENSE_SHARE, _LIGHT_SHAPES = 1 / 20, 40

# Figures may be taken for a chart's own numbers, and are given when all others are.
_FIGURES = tuple(name for name in GIVING_ORDER if name.startswith("figure-"))
_PLAIN = tuple(name for name in GIVING_ORDER if name not in _FIGURES)
_BY_INK = tuple(sorted(_PLAIN, key=blackness))
# The most different shapes first, in both.
_LIGHT = tuple(name for name in _PLAIN if name in _BY_INK[:_LIGHT_SHAPES])
_OTHERS = tuple(name for name in _PLAIN if name in _BY_INK[_LIGHT_SHAPES:])
_STRIDES = (29, 31, 37, 41, 43, 47, 53, 59)


@dataclass(frozen=True)
class Wish:
    """A colour that wants a shape; `pinned` is the shape that its author chose."""

    mark: str
    stitches: int = 0
    pinned: str | None = None


def symbols_for(pattern: Pattern, counts: Mapping[str, int]) -> dict[str, str]:
    """Key mark → the character of its shape in the symbol face; `counts` holds the stitches of each."""
    return {mark: code_point(name) for mark, name in shapes_for(pattern, counts).items()}


def shapes_for(pattern: Pattern, counts: Mapping[str, int]) -> dict[str, str]:
    """Key mark → the name of its shape. Raises ValueError as `assign`."""
    wishes = [Wish(line.mark, counts.get(line.mark, 0), line.symbol) for line in pattern.key]
    return assign(wishes, close_pairs(pattern))


def assign(wishes: Sequence[Wish], close: frozenset[Pair]) -> dict[str, str]:
    """A shape for every mark, all different, pins as the author set them.

    Raises ValueError for an unknown or twice pinned shape, or when there are more marks than shapes.
    """
    if len(wishes) > len(GIVING_ORDER):
        raise ValueError(
            f"{len(wishes)} colours want a chart shape each, "
            f"but there are only {len(GIVING_ORDER)} shapes."
        )
    given = _pins(wishes)
    dense = _DENSE_SHARE * sum(wish.stitches for wish in wishes)
    for place, wish in enumerate(wishes):
        if wish.pinned is None:
            order = _own_order(place, light=0 < dense <= wish.stitches)
            given[wish.mark] = _choice(order, place, wish.mark, given, close)
    return {wish.mark: given[wish.mark] for wish in wishes}


def _pins(wishes: Sequence[Wish]) -> dict[str, str]:
    holders: dict[str, str] = {}
    for wish in wishes:
        if wish.pinned is None:
            continue
        if wish.pinned not in GIVING_ORDER:
            raise ValueError(f"There is no chart shape called {wish.pinned!r}.")
        if wish.pinned in holders:
            raise ValueError(
                f"The shape {wish.pinned!r} is pinned to both "
                f"{holders[wish.pinned]!r} and {wish.mark!r}."
            )
        holders[wish.pinned] = wish.mark
    return {mark: name for name, mark in holders.items()}


def _choice(
    order: Iterable[str], place: int, mark: str, given: Mapping[str, str], close: frozenset[Pair]
) -> str:
    """The first shape in the order that is like none given; if there is none, the least bad."""
    more = place * _MORE_A_LINE
    limits = [
        (name, (_ALIKE_IF_CLOSE if frozenset((mark, other)) in close else _ALIKE_AT_ALL) + more)
        for other, name in given.items()
    ]
    limits.sort(key=lambda entry: entry[1])  # the strictest first: most shapes fail there
    taken = set(given.values())
    free = [name for name in order if name not in taken]
    for name in free:
        if all(likeness(name, held) <= limit for held, limit in limits):
            return name
    return min(free, key=lambda name: max(likeness(name, held) / limit for held, limit in limits))


def _own_order(place: int, light: bool) -> Iterator[str]:
    """All shapes as the line at this place of the key likes them; for a light one the lightest first."""
    yield from _from_home(_LIGHT if light else _OTHERS, place)
    yield from _BY_INK[_LIGHT_SHAPES:] if light else _LIGHT
    yield from _FIGURES


def _from_home(shapes: Sequence[str], place: int) -> Iterator[str]:
    """The line's home, then the others, for each line in another order.

    The homes of the first lines are the most different shapes. Lines that have to move look round in
    different orders, so that they do not queue for the same shape.
    """
    yield shapes[place % len(shapes)]
    stride = _STRIDES[place % len(_STRIDES)]
    while gcd(stride, len(shapes)) > 1:  # or it would not come by all of them
        stride += 1
    start = place * 11 + len(shapes) // 2
    yield from (shapes[(start + step * stride) % len(shapes)] for step in range(len(shapes)))


# Which colours are close -------------------------------------------------------------------------


def close_pairs(pattern: Pattern) -> frozenset[Pair]:
    """The pairs of marks that look alike to some eyes where each is thinned for itself, or that touch in
    the chart. `chart.tints` keeps more of them apart, but there each hangs on all others, and a shape
    shall hang on the lines above it alone."""
    tints = _thinned(pattern)
    touching = _touching(contacts(pattern))
    return touching | {
        frozenset(pair)
        for pair in combinations(tints, 2)
        if _look_alike(*(tints[mark] for mark in pair))
    }


def _thinned(pattern: Pattern) -> dict[str, str]:
    """Key mark → the colour of the model's thread set, thinned with white."""
    model_set = pattern.thread_sets[0].id
    return {
        line.mark: tint(blended(tuple(colour.hex for colour in line.threads[model_set])))
        for line in pattern.key
    }


def _look_alike(one: str, other: str) -> bool:
    return difference(lab(one), lab(other)) < LOOKS_ALIKE or any(
        difference(lab(seen(one, eyes)), lab(seen(other, eyes))) < LOOKS_ALIKE_TO_SOME
        for eyes in EYES
    )


def contacts(pattern: Pattern) -> Counter[Pair]:
    """How many sides of cells lie between two colours. Lines and knots lie on top and do not count."""
    sides: Counter[tuple[str, str]] = Counter()
    rows = pattern.grid.rows
    for each in rows:
        sides.update(pairwise(each))
    for above, below in pairwise(rows):
        sides.update(zip(above, below))
    parts: dict[tuple[int, int], set[str]] = {}
    for fraction in pattern.fractions:
        parts.setdefault((fraction.column, fraction.row), set()).add(fraction.mark)
    for (column, row), marks in parts.items():
        sides.update(combinations(sorted(marks), 2))
        for x, y in ((column - 1, row), (column + 1, row), (column, row - 1), (column, row + 1)):
            beside: Iterable[str] = parts.get((x, y), ())
            if (x, y) not in parts and 1 <= x <= pattern.grid.width and 1 <= y <= len(rows):
                beside = rows[y - 1][x - 1]
            sides.update((mark, other) for mark in marks for other in beside)
    met: Counter[Pair] = Counter()
    for (one, other), count in sides.items():
        if one != other and BARE not in (one, other):
            met[frozenset((one, other))] += count
    return met


def _touching(met: Mapping[Pair, int]) -> frozenset[Pair]:
    edges: Counter[str] = Counter()
    for pair, count in met.items():
        edges.update(dict.fromkeys(pair, count))
    return frozenset(
        pair
        for pair, count in met.items()
        if count >= _TOUCHING_SHARE * min(edges[mark] for mark in pair)
    )
