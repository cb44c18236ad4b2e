"""The tints of a whole key: each near its own thread's colour, and no two taken for each other.

Thinned each for itself, dark threads all come to lie about the least lightness on which black is read, and
two greens that nobody mixes up in the hand are one green on paper. So the darkest keeps its thinned colour,
and each lighter one moves as far as it must to be seen beside those, and beside the bare paper.
"""

from collections.abc import Sequence
from functools import cache, lru_cache
from itertools import islice, product
from math import dist
from operator import itemgetter

import numpy as np

from packetgen.chart.assignment import LOOKS_ALIKE, LOOKS_ALIKE_TO_SOME
from packetgen.chart.paintbox import INK, LEAST_CONTRAST, PAPER, tint
from packetgen.colour import blended, contrast, difference, lab
from packetgen.model import Pattern
from packetgen.reckon.vision import EYES, seen

# Tints are this far apart (CIEDE2000), or as far as their threads, if those are nearer.
APART = LOOKS_ALIKE
# So many colours find such places whatever they are: tried with a thousand random keys. More of them
# stand closer, by the room that each then has.
_ROOM_FOR = 80
_CHOICE = 40  # of free places, so many are asked whether all eyes tell them apart
_STEP = 15  # of a channel, between the colours that a tint may move to
# What lightness, chroma and hue weigh when a tint moves: a thread is known by its hue first.
_LIGHTNESS, _CHROMA, _HUE = 1.0, 0.25, 2.25


def tints_of(pattern: Pattern) -> dict[str, str]:
    """Key mark → its tint on the chart, of the model's thread set; a blend is mixed as the eye mixes it."""
    model_set = pattern.thread_sets[0].id
    hexes = tuple(
        blended(tuple(colour.hex for colour in line.threads[model_set])) for line in pattern.key
    )
    return {line.mark: found for line, found in zip(pattern.key, tints(hexes))}


@lru_cache(maxsize=64)
def tints(hexes: tuple[str, ...]) -> tuple[str, ...]:
    """A tint for each thread, in their order, on which INK stands at LEAST_CONTRAST or better. Whatever
    their order, the same threads have the same tints; threads of one colour have one tint."""
    apart = APART * min(1.0, (_ROOM_FOR / max(1, len(hexes))) ** (1 / 3))
    given = {PAPER: PAPER}
    for thread in sorted(set(hexes) - {PAPER}, key=lambda one: (lab(one), one)):
        thinned = tint(thread)
        moved = _moved(lab(thinned), np.array([lab(placed) for placed in given.values()]).T)
        near = [other for _, other in sorted(zip(moved, given), key=itemgetter(0))]
        beside = [_Beside(other, given[other], thread, apart) for other in near]
        given[thread] = _place(thinned, beside)
    return tuple(given[thread] for thread in hexes)


class _Beside:
    """A tint that has its place, and how far the one of another thread keeps off it."""

    def __init__(self, thread: str, placed: str, other: str, apart: float) -> None:
        self._thinned, self._placed, self._other = tint(thread), placed, tint(other)
        self.at = lab(placed)
        self.least = min(apart, _threads_apart(*sorted((thread, other))))

    def told_from(self, place: str) -> bool:
        """Whether eyes that lack a kind of cone tell it from a place too, or told neither from the other
        where both were thinned."""
        return all(
            _apart_to(eyes, self._placed, place) >= LOOKS_ALIKE_TO_SOME
            or _apart_to(eyes, self._thinned, self._other) < LOOKS_ALIKE_TO_SOME
            for eyes in EYES
        )


def _place(thinned: str, beside: Sequence[_Beside]) -> str:
    """The thinned colour or the nearest place that is free, if possible to all eyes; the thinned one
    where none is."""

    def free(place: str) -> bool:
        at = lab(place)
        # Most places are told at once: a difference is hardly more than half again the distance in Lab.
        if any(dist(at, other.at) * 1.5 < other.least for other in beside):
            return False
        return all(difference(at, other.at) >= other.least for other in beside)

    if free(thinned):
        return thinned
    first = ""
    for place in islice(filter(free, _nearest(thinned)), _CHOICE):
        first = first or place
        if all(other.told_from(place) for other in beside):
            return place
    return first or thinned


# The patterns of a series share their threads, so each of these is asked for again and again.
@lru_cache(maxsize=4096)
def _threads_apart(one: str, other: str) -> float:
    return difference(lab(one), lab(other))


@lru_cache(maxsize=256)
def _nearest(thinned: str) -> tuple[str, ...]:
    """All places, those first that are like it."""
    places, at = _bright()
    return tuple(places[place] for place in np.argsort(_moved(lab(thinned), at.T), kind="stable"))


@lru_cache(maxsize=4096)
def _apart_to(eyes: str, one: str, other: str) -> float:
    return difference(lab(seen(one, eyes)), lab(seen(other, eyes)))


def _moved(one: Sequence[float], others: np.ndarray) -> np.ndarray:
    """How far a tint has gone to each of the others, squared and weighed; a row of them each for L, a, b."""
    (l1, a1, b1), (l2, a2, b2) = one, others
    chroma2 = (np.hypot(a1, b1) - np.hypot(a2, b2)) ** 2
    hue2 = np.maximum(0.0, (a1 - a2) ** 2 + (b1 - b2) ** 2 - chroma2)
    moved: np.ndarray = _LIGHTNESS * (l1 - l2) ** 2 + _CHROMA * chroma2 + _HUE * hue2
    return moved


@cache
def _bright() -> tuple[tuple[str, ...], np.ndarray]:
    """Colours all over sRGB on which black is read, and their Lab, a row each."""
    steps = range(0, 256, _STEP)
    colours = (f"#{red:02x}{green:02x}{blue:02x}" for red, green, blue in product(steps, repeat=3))
    bright = tuple(colour for colour in colours if contrast(colour, INK) >= LEAST_CONTRAST)
    return bright, np.array([lab(colour) for colour in bright])
