"""One design as a designer might draw it, made here: patches of colour with ragged edges on bare cloth,
a few lines, knots and beads. The same design for the same seed.
"""

from dataclasses import dataclass
from random import Random

import numpy as np
from scipy import ndimage

from packetgen.model import BARE
from tests.many_colours import MARKS

# (random values across the chart, weight): broad patches, and their ragged edges.
_FIELDS = ((3, 1.0), (8, 0.4), (50, 0.05))
_BEAD_STEP = 4  # stitches between two beads at least, so that they crowd on no cloth
_STEPS = ((1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1))
Cell = tuple[int, int]


@dataclass(frozen=True)
class Design:
    rows: tuple[str, ...]
    marks: str  # those that the rows use
    lines: tuple[tuple[str, str], ...]  # mark, path
    knots: tuple[str, str]  # mark, places
    beads: str  # places; '' for none


def design(seed: int) -> Design:
    random = Random(f"design {seed}")
    width, height = (round(random.triangular(80, 120)) for _ in range(2))
    colours = random.randint(15, 30)
    ranks = _patches(width, height, colours, np.random.default_rng(seed))
    rows = tuple("".join(BARE if rank < 0 else MARKS[rank] for rank in row) for row in ranks)
    marks = "".join(sorted({*"".join(rows)} - {BARE}, key=MARKS.index))
    stitched = [
        (x, y) for y, row in enumerate(rows, 1) for x, mark in enumerate(row, 1) if mark != BARE
    ]
    lines = tuple(
        (random.choice(marks), _path(random, width, height)) for _ in range(random.randint(8, 30))
    )
    knots = random.choice(marks), _places(random.sample(stitched, random.randint(3, 12)))
    apart = [(x, y) for x, y in stitched if x % _BEAD_STEP == y % _BEAD_STEP == 0]
    beads = _places(random.sample(apart, 12)) if random.random() < 0.4 else ""
    return Design(rows, marks, lines, knots, beads)


def _patches(width: int, height: int, colours: int, random: np.random.Generator) -> np.ndarray:
    """For each cell the number of its colour, as many cells of each; -1 where the cloth is bare."""
    heights = sum(weight * _field(width, height, across, random) for across, weight in _FIELDS)
    y, x = np.mgrid[-1 : 1 : height * 1j, -1 : 1 : width * 1j]
    stitched = np.hypot(x, y) < 0.95 + 0.3 * (_field(width, height, 6, random) - 0.5)
    ranks = np.full((height, width), -1)
    order = np.argsort(heights[stitched], kind="stable")
    values = np.empty(len(order), int)
    values[order] = np.arange(len(order)) * colours // len(order)
    ranks[stitched] = values
    return _joined(ranks)


def _joined(ranks: np.ndarray) -> np.ndarray:
    """A stitch without a neighbour of its colour takes that of the stitches around it, as a designer
    would have it."""
    alone = ndimage.generic_filter(ranks, _is_alone, size=3, mode="nearest") > 0
    around = ndimage.median_filter(ranks, size=3, mode="nearest")
    return np.where(alone & (ranks >= 0), np.maximum(around, 0), ranks)


def _is_alone(nine: np.ndarray) -> bool:
    return np.count_nonzero(nine == nine[4]) == 1


def _field(width: int, height: int, across: int, random: np.random.Generator) -> np.ndarray:
    """A value from 0 to 1 for each stitch, blended from random ones."""
    down = max(2, round(across * height / width))
    lattice = random.random((down, across))
    return ndimage.zoom(lattice, (height / down, width / across), order=1, grid_mode=False)


def _path(random: Random, width: int, height: int) -> str:
    """A line that wanders over the chart by whole and half stitches."""
    x, y = 2 * random.randint(10, width - 10), 2 * random.randint(10, height - 10)
    towards = random.randrange(len(_STEPS))
    points = [(x, y)]
    for _ in range(random.randint(2, 14)):
        towards = (towards + random.choice((-1, 0, 0, 1))) % len(_STEPS)
        long = random.choice((1, 2, 2))
        x, y = x + long * _STEPS[towards][0], y + long * _STEPS[towards][1]
        if not (2 <= x <= 2 * width and 2 <= y <= 2 * height):
            break
        points.append((x, y))
    if len(points) < 2:
        points.append((points[0][0] + 2, points[0][1]))
    return " ".join(f"{x / 2:g},{y / 2:g}" for x, y in points)


def _places(cells: list[Cell]) -> str:
    """The middles of these cells, as a pattern's file writes them."""
    return " ".join(f"{x}.5,{y}.5" for x, y in sorted(cells))
