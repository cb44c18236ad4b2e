"""A photograph reduced to stitches: smaller by averaging light, and in few colours by k-means.

The room's door to scipy's clustering. No colour is mixed out of two by strewing stitches of both: that
makes stitches that stand alone.
"""

import warnings

import numpy as np

from packetgen.bring.apart import encoded, lab_of, linear
from packetgen.bring.drawing import Drawing

MOST_CLUSTERS = 256
_SAMPLE = 20_000  # stitches that the clusters are found from
_ROUNDS = 25
_SEED = 20270115  # any number: the same photograph must give the same chart


def reduced(rgba: np.ndarray, wide: int) -> np.ndarray:
    """The picture `wide` stitches wide, its height in proportion: each stitch has the mean of the light
    that falls on its part of the picture, by area. height × width × 4."""
    height_px, width_px = rgba.shape[:2]
    high = max(1, round(height_px * wide / width_px))
    across, down = (
        np.linspace(0, length, n + 1) for length, n in ((width_px, wide), (height_px, high))
    )
    light_of = linear(np.arange(256))
    found = np.empty((high, wide, 4), np.uint8)
    for row, (start, end) in enumerate(zip(down, down[1:])):
        part = rgba[int(start) : int(np.ceil(end))]
        first = int(start) + np.arange(len(part))
        share = np.minimum(first + 1, end) - np.maximum(first, start)
        opacity = share[:, None] * (part[..., 3] / 255)
        clear = _summed(opacity.sum(0)[:, None], across)
        light = (light_of[part[..., :3]] * opacity[..., None]).sum(0)
        found[row, :, :3] = encoded(_summed(light, across) / np.maximum(clear, 1e-9))
        found[row, :, 3] = np.rint(clear[:, 0] * 255 / ((end - start) * np.diff(across)))
    return found


def drawing_of(rgba: np.ndarray, told: tuple[str, ...]) -> Drawing:
    """One stitch a pixel; what is less than half opaque is bare cloth."""
    stitched = rgba[..., 3] >= 128
    whole = rgba[..., :3].astype(np.uint32)
    codes = whole[..., 0] << 16 | whole[..., 1] << 8 | whole[..., 2]
    kinds, back = np.unique(codes[stitched], return_inverse=True)
    cells = np.zeros(codes.shape, np.int32)
    cells[stitched] = back + 1
    colours = np.stack([kinds >> shift & 255 for shift in (16, 8, 0)], -1).astype(np.uint8)
    return Drawing(cells, colours, photograph=True, told=told)


def clusters(drawing: Drawing, most: int) -> tuple[np.ndarray, np.ndarray]:
    """(CIELAB of at most `most` colours that stand for the photograph, how many stitches each has)."""
    from scipy.cluster.vq import kmeans2, vq  # slow to load: only for photographs

    labs = lab_of(drawing.colours)
    counts = drawing.counts()[1:]
    if len(labs) <= most:
        return labs, counts
    stitches = np.repeat(np.arange(len(labs)), counts)
    sample = labs[stitches[:: max(1, len(stitches) // _SAMPLE)]]
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # of a cluster that is left empty; it is dropped below
        centres, _ = kmeans2(sample, min(most, len(sample)), _ROUNDS, minit="++", seed=_SEED)
    nearest, _ = vq(labs, centres)
    weights = np.bincount(nearest, counts, len(centres))
    return centres[weights > 0], weights[weights > 0]


def _summed(values: np.ndarray, ends: np.ndarray) -> np.ndarray:
    """Sums of the rows between `ends`; a row that an end cuts is shared out."""
    heaped = np.zeros((len(values) + 1, values.shape[1]))
    np.cumsum(values, 0, out=heaped[1:])
    below = np.minimum(ends.astype(int), len(values) - 1)
    return np.diff(heaped[below] + (ends - below)[:, None] * values[below], axis=0)
