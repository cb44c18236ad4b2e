"""How large a stitch is drawn in an enlarged picture with hard edges, and the colour of each.

An enlarged chart changes colour only where one stitch ends and the next begins: at one place in every
so many pixels. Where that holds of all change, across and down, the size of a stitch is found. Thin
lines between the stitches change colour twice: so the place may be a window of several pixels, the
narrowest that will do. Soft edges are for `comb`. The method is our own.
"""

from dataclasses import dataclass

import numpy as np

from packetgen.bring.waves import points_for

_WIDE = range(1, 9)  # pixels of the window
_ENOUGH = 0.9999  # of all change of colour must lie in it
_CHANCE = 1e-3  # that edges thrown down anywhere would all fall into it
_FAINT = 0.02  # of the strongest edge: no edge of its own
_MOST_PEAKS = 60
_ROWS_AT_ONCE = 256


@dataclass(frozen=True)
class Raster:
    """Along one side: the first whole stitch begins at `start_px`, and its pure colour is `pure_px` wide."""

    start_px: float
    pure_px: float
    number: int


@dataclass(frozen=True)
class Found:
    cell_px: float
    across: Raster
    down: Raster
    framed: bool  # whether something less than a stitch is left over at an edge


def edges(pixels: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """How much the colour changes between neighbouring columns, and between neighbouring rows.

    `pixels` is height × width × channels. The first number stands for the change before column 1.
    """
    height, width = pixels.shape[:2]
    across, down = np.zeros(max(width - 1, 0)), np.zeros(max(height - 1, 0))
    for top in range(0, height, _ROWS_AT_ONCE):
        part = pixels[top : top + _ROWS_AT_ONCE + 1].astype(np.int16)
        own = part[:_ROWS_AT_ONCE]
        across += np.abs(np.diff(own, axis=1)).sum((0, 2), dtype=np.float64)
        change = np.abs(np.diff(part, axis=0)).sum((1, 2), dtype=np.float64)
        down[top : top + len(change)] = change
    return across, down


def find(across: np.ndarray, down: np.ndarray, must: bool = False) -> Found | None:
    """The size of a stitch that explains the edges; None where one pixel is one stitch.

    With `must` the least evidence will do: the picture is too large to be one pixel a stitch.
    """
    sides = _Side(across), _Side(down)
    if not any(side.total for side in sides):
        return None
    sizes = _sizes(sides, _parts(across, down))
    for wide in _WIDE:
        for cell in sizes:
            if cell < (2 if wide == 1 else wide + 2):
                continue  # too little of a stitch would be left between two windows
            if _explain(sides, cell, wide) and _convinces(sides, cell, wide, must):
                return _found(sides, cell, wide)
    return None


def _sizes(sides: "tuple[_Side, _Side]", parts: list[float]) -> list[float]:
    """Sizes of a stitch that the widest window explains: whole ones first, and the largest of them."""
    longest = max(side.length for side in sides)
    between = (part for part in parts if 2.5 <= part <= longest / 4)
    sizes: dict[float, None] = dict.fromkeys((*range(longest // 2, 1, -1), *between))
    return [cell for cell in sizes if _explain(sides, cell, _WIDE[-1])]


def _explain(sides: "tuple[_Side, _Side]", cell: float, wide: int) -> bool:
    """Whether windows that come again every `cell` hold all change, but for next to nothing."""
    may_lack = (1 - _ENOUGH) * sum(side.total for side in sides)
    # The shorter first: it is soonest looked through, and most sizes fail there.
    for side in sorted(sides, key=lambda side: side.length):
        may_lack -= side.total - side.held(cell, wide)
        if may_lack < 0:
            return False
    return True


def given(width_px: int, height_px: int, cell_px: int) -> Found:
    """The stitches of a picture that is known to be made of whole ones of that size."""
    across, down = (Raster(0, cell_px, length // cell_px) for length in (width_px, height_px))
    return Found(cell_px, across, down, framed=False)


def sampled(codes: np.ndarray, found: Found) -> np.ndarray:
    """The code (a colour, an entry of a palette) that most of nine spots in each stitch have."""
    nine = [
        codes[np.ix_(_spots(found.down, found.cell_px, y), _spots(found.across, found.cell_px, x))]
        for y in (0, -1, 1)
        for x in (0, -1, 1)
    ]
    votes = [np.sum([one == other for other in nine], 0) for one in nine]
    best = np.argmax(np.stack(votes), 0)
    return np.take_along_axis(np.stack(nine), best[None], 0)[0]


class _Side:
    """The edges along one side of the picture: where they are, and how strong."""

    def __init__(self, change: np.ndarray) -> None:
        self.length = len(change) + 1
        self.at = np.flatnonzero(change) + 1.0
        self.strength = change[change > 0]
        self.total = float(self.strength.sum())
        strong = self.strength > _FAINT * self.strength.max(initial=0)
        self.strong = self.at[strong]

    def window(self, cell: float, wide: int) -> tuple[float, float]:
        """(explained, start): the most strength that lies in a window that comes again every `cell`."""
        if not self.total:
            return 0.0, 0.0
        phase = self.at % cell
        order = np.argsort(phase, kind="stable")
        phase, strength = phase[order], self.strength[order]
        round_again = np.concatenate((phase, phase + cell))
        heaped = np.concatenate(([0.0], np.cumsum(np.concatenate((strength, strength)))))
        last = np.searchsorted(round_again, phase + wide - 0.5)
        held = heaped[last] - heaped[: len(phase)]
        best = int(np.argmax(held))
        return float(held[best]), float(phase[best])

    def held(self, cell: float, wide: int) -> float:
        """The most strength that windows hold which come again every `cell`; quickly where that is whole."""
        if not isinstance(cell, int):
            return self.window(cell, wide)[0]
        phases = np.bincount(self.at.astype(int) % cell, self.strength, cell)
        heaped = np.concatenate(([0.0], np.cumsum(np.concatenate((phases, phases)))))
        return float((heaped[min(wide, cell) :][:cell] - heaped[:cell]).max())

    def groups(self, wide: int) -> int:
        """How many edges there are, neighbours within `wide` pixels taken for one."""
        return int((np.diff(self.strong) > wide).sum() + 1) if len(self.strong) else 0


def _convinces(sides: tuple[_Side, _Side], cell: float, wide: int, must: bool) -> bool:
    """Whether the edges are too many to lie so well by chance."""
    free = sum(max(side.groups(wide) - 1, 0) for side in sides)
    return must or (wide / cell) ** free < _CHANCE


def _parts(across: np.ndarray, down: np.ndarray) -> list[float]:
    """Sizes that come again and again along the sides, largest first; whole numbers need not be."""
    points = points_for(16 * (max(len(across), len(down)) + 1))
    strength = np.sum([np.abs(np.fft.rfft(change, points)) for change in (across, down)], 0)
    peaks = np.flatnonzero((strength[1:-1] > strength[:-2]) & (strength[1:-1] >= strength[2:])) + 1
    highest = peaks[np.argsort(-strength[peaks], kind="stable")[:_MOST_PEAKS]]
    return sorted({times * points / peak for peak in highest for times in (1, 2, 3)}, reverse=True)


def _found(sides: tuple[_Side, _Side], cell: float, wide: int) -> Found:
    rasters = []
    framed = False
    for side in sides:
        start = side.window(cell, wide)[1]
        pure = cell - (wide - 1)
        first = (start + wide - 1) % cell
        if first > cell - 0.5:
            first -= cell
        number = int((side.length - first - pure + 0.5) // cell) + 1
        after = side.length - (first + (number - 1) * cell + pure)
        framed |= first > wide + 0.5 or after > wide + 0.5
        rasters.append(Raster(first, pure, max(number, 0)))
    return Found(cell, rasters[0], rasters[1], framed)


def _spots(side: Raster, cell: float, third: int) -> np.ndarray:
    """Pixels a third of the pure colour before, at and after the middle of each stitch."""
    middle = side.start_px + (side.pure_px - 1) / 2 + third * side.pure_px / 4
    return np.clip(np.rint(middle + np.arange(side.number) * cell), 0, None).astype(int)
