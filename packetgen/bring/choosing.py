"""Threads of one card for the colours of a drawing: the nearest for each, and no more than were asked for.

Where there are too many, that thread goes whose stitches lose least by taking another's colour: the sum
of CIEDE2000 over its stitches, measured from the drawing. A choice of our own, one thread at a time.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from packetgen.bring.apart import lab_of, rgb_of, table
from packetgen.bring.drawing import Drawing
from packetgen.bring.photograph import MOST_CLUSTERS, clusters
from packetgen.model import Colour


@dataclass(frozen=True)
class Merge:
    """A thread that gave way to another, which is `difference` (CIEDE2000) from it."""

    gone: Colour
    into: Colour
    stitches: int
    difference: float


@dataclass(frozen=True, eq=False)
class Choice:
    """`thread_of[n - 1]` is the place of colour n's thread among the card's, counted from 0; `nearest` is
    the same before any thread gave way to another."""

    thread_of: np.ndarray
    nearest: np.ndarray
    merges: tuple[Merge, ...] = ()


class TooFewAsked(ValueError):
    """Fewer colours are asked for than the file, or the key that stays, names threads."""

    def __init__(self, named: int) -> None:
        super().__init__(f"the file names {named}")
        self.named = named


def choose(drawing: Drawing, card: Sequence[Colour], named: Mapping[int, int], most: int) -> Choice:
    """A thread for every colour; at most `most` threads.

    `named` holds colours that the file gives a thread of the card itself (colour → place in the card);
    those stay. Raises TooFewAsked.
    """
    if len(set(named.values())) > most:
        raise TooFewAsked(len(set(named.values())))
    labs = lab_of(rgb_of(tuple(colour.hex for colour in card)))
    if drawing.photograph:
        return _for_photograph(drawing, labs, most)
    weights = drawing.counts()[1:]
    costs = table(lab_of(drawing.colours), labs)
    thread_of = np.argmin(costs, 1)
    for number, thread in named.items():
        thread_of[number - 1] = thread
    became = _fewer(thread_of, costs * weights[:, None], set(named.values()), most)
    return Choice(
        became[thread_of], thread_of, tuple(_merges(became, weights, thread_of, card, labs))
    )


def _for_photograph(drawing: Drawing, labs: np.ndarray, most: int) -> Choice:
    """The colours of a photograph in clusters, these in threads, and each stitch in the nearest of them."""
    centres, weights = clusters(drawing, MOST_CLUSTERS)
    costs = table(centres, labs)
    nearest = np.argmin(costs, 1)
    nearest = _fewer(nearest, costs * weights[:, None], set(), most)[nearest]
    threads = np.unique(nearest)
    thread_of = threads[np.argmin(table(lab_of(drawing.colours), labs[threads]), 1)]
    return Choice(thread_of, thread_of)


def _fewer(thread_of: np.ndarray, losses: np.ndarray, kept: set[int], most: int) -> np.ndarray:
    """Thread → what it has become.

    `losses[n, t]` is what colour n loses in thread t, over all its stitches.
    """
    threads = np.unique(thread_of)
    own = np.stack([losses[thread_of == thread][:, threads].sum(0) for thread in threads])
    became = np.arange(losses.shape[1])
    alive = np.ones(len(threads), bool)
    stays = np.array([thread in kept for thread in threads.tolist()])
    while alive.sum() > most:
        more = own - np.diag(own)[:, None]
        more[~alive | stays] = np.inf
        more[:, ~alive] = np.inf
        np.fill_diagonal(more, np.inf)
        gone, into = divmod(int(np.argmin(more)), len(threads))
        own[into] += own[gone]
        alive[gone] = False
        became[became == threads[gone]] = threads[into]
    return became


def _merges(
    became: np.ndarray,
    weights: np.ndarray,
    thread_of: np.ndarray,
    card: Sequence[Colour],
    labs: np.ndarray,
) -> Iterator[Merge]:
    stitches = np.bincount(thread_of, weights, len(card))
    for gone in np.flatnonzero((stitches > 0) & (became != np.arange(len(card)))).tolist():
        into = int(became[gone])
        apart = float(table(labs[[gone]], labs[[into]])[0, 0])
        yield Merge(card[gone], card[into], int(stitches[gone]), apart)
