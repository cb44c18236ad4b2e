"""Colours that were one before noise told them apart: of a picture saved with loss, or rounded."""

import numpy as np

_NOISE, _MOST_APART = 3, 16  # times what strays on average; steps of a channel
_MOST_HEAPS = 20_000  # of colours; in more nothing drawn is left to be seen


def as_one(found: np.ndarray, noise: float) -> np.ndarray:
    """Colours that noise alone may tell apart become their median; where most are, they begin to gather."""
    room = min(_NOISE * noise, _MOST_APART)
    boxes, box_of, heaps = np.unique(
        found.reshape(-1, 4) // max(int(room / 2), 1),
        axis=0,
        return_inverse=True,
        return_counts=True,
    )
    if room < 1 or len(boxes) > _MOST_HEAPS:
        return found
    flat, box_of = found.reshape(-1, 4), box_of.ravel()
    middles = np.stack([np.bincount(box_of, of) / heaps for of in flat.T], -1)
    group = np.full(len(boxes), -1)
    for box in np.argsort(-heaps, kind="stable").tolist():
        if group[box] < 0:
            group[(np.abs(middles - middles[box]).max(1) <= room) & (group < 0)] = box
    of_stitch = group[box_of]
    together = np.argsort(of_stitch, kind="stable")
    flat = flat.copy()
    for here in np.split(together, np.flatnonzero(np.diff(of_stitch[together])) + 1):
        flat[here] = np.rint(np.median(flat[here], 0))
    return flat.reshape(found.shape)
