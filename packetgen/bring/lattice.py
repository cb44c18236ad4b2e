"""How large a stitch is drawn, told by where the edges of a picture stand, however soft they are.

Colours change most where one stitch ends and the next begins: a whole number of stitches from one another, also
where the edges were blurred or saved with loss. So the steepest places of all rows and columns stand on a
lattice. How well they do is the length of the sum of their phases (a Fourier transform of them), as a share of
all: 1 where each stands on it. Parts of a stitch do as well as the whole, so the largest counts. Where colours
pass evenly from one middle to the next there are no such places, and `comb` sees the stitches by their bends. The
method is our own; the limits are from 2,400 enlarged drawings, softened and saved with loss, and 300 soft
drawings without stitches, made for it.
"""

from dataclasses import dataclass

import numpy as np

from packetgen.bring.waves import points_for

_PARTS = 8  # of a pixel, in which places are told apart
_FINER = 8  # steps in which the transform looks between its own frequencies
_LEAST_PX = 2.2  # a stitch
_LEAST_NUMBER = 4  # of stitches along the shorter side
_LEAST_STEP = 12  # of 255 for each channel, all of them added up: less is no edge
_STEEP = 0.35  # of what nine of ten edges have at most: what loss leaves about is less
_COHERENT = 0.7  # seen with stitches: 0.78 and more; without: 0.53 and less
_AS_GOOD = 0.85  # of the best: seen at twice the size of a stitch: 0.66 and less
_WHOLE = 0.02  # of a multiple: so far it may be from a whole number
_NOTHING = 0.01  # of all edges: a side with less does not count
_EACH = 0.5  # of its edges: so much a lattice holds of each side that counts
_MOST_HELD = 0.98  # what is better is the same place again, and no more evidence
_CHANCE = 1e-4  # that edges which stand anywhere would stand so
_PLENTY_PX = 2_000_000  # in so many the edges are seen


@dataclass(frozen=True)
class Lattice:
    """Stitches begin at these places and every `cell_px` from there, across and down. `softness` says how far the
    colour changes in one direction over the pixels of an edge, from -1 to 1: seen 0.8 and more where edges were
    softened; where a pixel is a stitch, its neighbours have nothing to do with each other."""

    cell_px: float
    across_px: float
    down_px: float
    softness: float


def lattice_of(rgba: np.ndarray) -> Lattice | None:
    """The lattice on which the edges of a picture stand, height × width × 4; None where they stand on none."""
    every = max(1, rgba[..., 0].size // _PLENTY_PX)
    sides = _Side(rgba[::every]), _Side(rgba[:, ::every].transpose(1, 0, 2))
    strengths = np.concatenate([side.strength for side in sides])
    if not len(strengths):
        return None
    least = _STEEP * np.percentile(strengths, 90)
    edges = [side.edges(least) for side in sides]
    cell_px = _largest(edges, min(rgba.shape[:2]) / _LEAST_NUMBER)
    if cell_px is None or not _convinces(edges, cell_px):
        return None
    across, down = (_phase(side, cell_px) for side in edges)
    beside = sum(side.beside for side in sides)
    along = sum(side.along for side in sides)
    return Lattice(cell_px, across, down, along / beside if beside else -1)


class _Side:
    """Along one side of the picture: where in each line colours change more than before and behind, and how much;
    and of the change before and behind what there is, and how much of it goes the same way."""

    def __init__(self, lines: np.ndarray) -> None:
        self.length = lines.shape[1]
        self.beside = self.along = 0.0
        places, strengths = [np.zeros(0)], [np.zeros(0)]
        for line in lines:
            step = np.zeros((len(line) + 1, line.shape[1]))
            step[1:-1] = np.diff(line.astype(np.int16), axis=0)
            change = np.abs(step).sum(1)
            before, here, behind = change[:-2], change[1:-1], change[2:]
            at = np.flatnonzero((here > _LEAST_STEP) & (here >= before) & (here > behind))
            before, here, behind = before[at], here[at], behind[at]
            aside = (before - behind) / 2 / (before - 2 * here + behind)  # the vertex of a parabola
            places.append(at + 1 + aside)
            strengths.append(here)
            both = step[at] + step[at + 2]
            self.along += float((both * step[at + 1]).sum())
            long = np.linalg.norm(step[at], axis=1) + np.linalg.norm(step[at + 2], axis=1)
            self.beside += float((long * np.linalg.norm(step[at + 1], axis=1)).sum())
        self.at, self.strength = np.concatenate(places), np.concatenate(strengths)

    def edges(self, least: float) -> np.ndarray:
        """The strength of all edges that have so much, by their place in parts of a pixel."""
        strong = self.strength > least
        at = np.rint(self.at[strong] * _PARTS).astype(int)
        return np.bincount(at, self.strength[strong], (self.length + 1) * _PARTS)


def _largest(edges: list[np.ndarray], most_px: float) -> float | None:
    """The size whose lattice holds the edges best, or the largest of its multiples that holds them about as well.
    Of several that do, one at which also the weaker edges stand: each place counts by its root."""
    points = points_for(_FINER * max(map(len, edges)))
    held, by_roots = (
        _held(weights, points) for weights in (edges, [np.sqrt(one) for one in edges])
    )
    peaks = np.flatnonzero((held[1:-1] > held[:-2]) & (held[1:-1] >= held[2:])) + 1
    size = points / _PARTS / peaks
    peaks = peaks[(size > _LEAST_PX) & (size < most_px)]
    if not len(peaks) or held[peaks].max() < _COHERENT:
        return None
    good = peaks[held[peaks] > _AS_GOOD * held[peaks].max()]
    best = good[np.argmax(by_roots[good])]
    times = best / good
    multiples = good[(times > 1.5) & (np.abs(times - np.rint(times)) < _WHOLE * np.rint(times))]
    peak = int(np.append(multiples, best).min())
    left, top, right = held[peak - 1 : peak + 2]
    bend = left - 2 * top + right  # none where all three are as high
    beside = (left - right) / 2 / bend if bend else 0.0
    return float(points / _PARTS / (peak + beside))


def _held(edges: list[np.ndarray], points: int) -> np.ndarray:
    """For each frequency how well its lattice holds the edges, 1 at most."""
    total = sum(side.sum() for side in edges)
    return np.asarray(np.sum([np.abs(np.fft.rfft(side, points)) for side in edges], 0) / total)


def _convinces(edges: list[np.ndarray], cell_px: float) -> bool:
    """Whether so many edges would hardly stand so well on any of all lattices by chance. Each line of the lattice
    weighs by the root of its edges: a long one is no more evidence than several short ones.

    The sum of n random phases, n - 1 of which are free, has the length r n or more with a chance of about
    (1 - r²)^(n - 1): from memory."""
    evidence = 0.0
    total = sum(side.sum() for side in edges)
    for side in edges:
        at = np.flatnonzero(side)
        if side.sum() < _NOTHING * total:
            continue
        roots = np.sqrt(side)
        held = abs(_wave(roots, cell_px * _PARTS)) / roots.sum()
        if held < _EACH:
            return False
        line = np.rint((at / _PARTS - _phase(side, cell_px)) / cell_px).astype(int)
        lines = np.bincount(line - line.min(), roots[at])
        number = lines.sum() ** 2 / (lines**2).sum()  # as many as there would be if all were alike
        evidence -= (number - 1) * np.log(1 - min(held, _MOST_HELD) ** 2)
    tried = max(map(len, edges)) / _PARTS
    return bool(tried * np.exp(-evidence) < _CHANCE)


def _phase(side: np.ndarray, cell_px: float) -> float:
    """Where a stitch begins, by edges in parts of a pixel."""
    return float(np.angle(_wave(side, cell_px * _PARTS)) / (2 * np.pi) * cell_px)


def _wave(weights: np.ndarray, length: float) -> complex:
    """The sum of the phases of places 0, 1, 2, …, each by its weight, on a lattice of that length."""
    at = np.flatnonzero(weights)
    return complex((weights[at] * np.exp(2j * np.pi * at / length)).sum())
