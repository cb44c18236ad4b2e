"""How alike chart shapes look when small and a little blurred.

Run as a script to print the giving order of the shapes (see
packetgen/chart/shapes_order.py) and the pairs most alike, or the table that
packetgen/chart/likeness.py reads:

    python -m tests.bench.symbol_likeness
    python -m tests.bench.symbol_likeness table > packetgen/chart/likeness_table.py
"""

import sys
from functools import cache
from textwrap import fill

import numpy
from PIL import Image, ImageDraw, ImageFilter

from packetgen.chart.likeness import SCALE
from packetgen.chart.shapes import NAMES, shape

PIXELS = 24  # a 2.5 mm cell, about as finely as the eye parts it at reading distance
BLUR = 1.2  # pixels; as in a photocopy
COARSE_BLUR = 3.0  # pixels; leaves only "a dark blot in the middle", which all shapes share
TURNED_TWIN = 0.15  # how much less alike a shape is when it must first be turned or mirrored
_FINE = 4


def picture(name: str) -> Image.Image:
    """The shape in its cell, black 255 on white 0, half a cell of white round it."""
    size = 2 * PIXELS * _FINE
    image = Image.new("L", (size, size), 0)
    draw = ImageDraw.Draw(image)
    # Larger contours first, so that holes and what stands in them follow.
    for contour in sorted(shape(name).contours, key=lambda c: -abs(_turn(c))):
        points = [((500 + x) * size / 2000, (1500 - y) * size / 2000) for x, y in contour]
        draw.polygon(points, fill=255 if _turn(contour) < 0 else 0)
    return image.resize((2 * PIXELS, 2 * PIXELS), Image.Resampling.BOX)


def _turn(contour) -> float:
    """Twice the area within, below zero for a contour that runs clockwise."""
    return sum(ax * by - bx * ay for (ax, ay), (bx, by) in zip(contour, contour[1:] + contour[:1]))


def _blurred(name: str, radius: float) -> numpy.ndarray:
    return numpy.asarray(picture(name).filter(ImageFilter.GaussianBlur(radius)), dtype=float)


@cache
def blurred_likeness() -> numpy.ndarray:
    """Pearson's correlation of every pair, blurred, in the order of NAMES."""
    return numpy.corrcoef([_blurred(name, BLUR).ravel() for name in NAMES])


@cache
def likeness() -> numpy.ndarray:
    """The same of the blurred pictures less their coarsely blurred ones.

    1 is the same, 0 unrelated. Taking the coarse picture away leaves the
    detail by which eyes tell two dark blots apart.
    """
    return numpy.corrcoef([row.ravel() for row in _details()])


def _details() -> list[numpy.ndarray]:
    return [_blurred(name, BLUR) - _blurred(name, COARSE_BLUR) for name in NAMES]


@cache
def kinship() -> numpy.ndarray:
    """Likeness that also sees turned and mirrored twins, as a stitcher confuses them."""
    details = _details()
    best = likeness().copy()
    rows = _normed(details)
    for mirror in (False, True):
        for quarter in range(4):
            turned = [numpy.rot90(d[:, ::-1] if mirror else d, quarter) for d in details]
            best = numpy.maximum(best, rows @ _normed(turned).T - TURNED_TWIN)
    return numpy.maximum(best, best.T)


def _normed(pictures) -> numpy.ndarray:
    rows = numpy.array([p.ravel() - p.mean() for p in pictures])
    return rows / numpy.linalg.norm(rows, axis=1, keepdims=True)


def most_alike(table: numpy.ndarray, count: int = 1, names=NAMES) -> list[tuple[float, str, str]]:
    """The pairs among `names` most alike by this table, most alike first."""
    place = [NAMES.index(name) for name in names]
    pairs = [
        (float(table[i, j]), NAMES[i], NAMES[j]) for k, i in enumerate(place) for j in place[:k]
    ]
    return sorted(pairs, reverse=True)[:count]


def farthest_first(first: str = "disc") -> tuple[str, ...]:
    """Every shape, each as unlike the nearest of those before it as can be had."""
    table = kinship()
    order = [NAMES.index(first)]
    nearest = table[order[0]].copy()
    while len(order) < len(NAMES):
        nearest[order] = numpy.inf
        order.append(int(numpy.argmin(nearest)))
        nearest = numpy.maximum(nearest, table[order[-1]])
    return tuple(NAMES[i] for i in order)


def table_module() -> str:
    """The source of packetgen/chart/likeness_table.py: kinship and ink in hundredths."""
    table = kinship()
    rows = "\n".join(
        f'    "{"".join(_sign(table[i, j]) for j in range(i))}",' for i in range(1, len(NAMES))
    )
    inks = "".join(_sign(shape(name).ink) for name in NAMES)
    return f'''"""Measured by tests/bench/symbol_likeness.py, which writes this file; read by likeness.py."""

# One sign for each shape, in the order of their names: how black it is.
INKS = "{inks}"

# One row for each shape but the first, in it one sign for each shape before it: how alike they are.
ROWS = (
{rows}
)
'''


def _sign(share: float) -> str:
    return SCALE[round(100 * max(0.0, share))]


if __name__ == "__main__" and sys.argv[1:] == ["table"]:
    print(table_module(), end="")
elif __name__ == "__main__":
    print(fill(" ".join(farthest_first()), 88, break_on_hyphens=False))
    for table in (likeness(), blurred_likeness()):
        print(*(f"{value:.3f} {a} {b}" for value, a, b in most_alike(table, 20)), sep="\n")
