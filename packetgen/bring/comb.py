"""How large a stitch is drawn in a picture that was enlarged softly or by no whole number, or saved with
loss; and the colour of each stitch.

Whatever an enlargement does, the slope of its colours bends at the edges of the stitches or at their
middles: the bends stand like the teeth of a comb. A Fourier transform of them finds the distance of the
teeth and where they stand. What is found is believed only if stitches there explain the picture far better
than stitches half a width aside: in photographs, and where a pixel is a stitch, neither explains it better.
The method is our own.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

import numpy as np

from packetgen.bring.lattice import Lattice
from packetgen.bring.noise import as_one
from packetgen.bring.own_colours import own_colours
from packetgen.bring.waves import points_for

_LEAST_PX = 2.2  # a stitch; in less there is no edge and middle
_LEAST_NUMBER = 8  # of stitches along the longer side
_FINER = 16  # steps in which the transform looks between its own frequencies
_APART = (1, 2, 4)  # pixels by which a bend is seen; in few colours it is lost among their steps
_TEETH = 8  # combs that are tried of each, the clearest first
# JPEG works in blocks of 8 px (ITU-T T.81); with much loss their third wave looks like stitches.
_IMITATED_PX = 8 / 3
_LINES = 100  # rows, and columns, on which they are tried
_PLENTY_PX = 2_000_000  # in so many the bends are seen
_LOOKED_AT = 200_000  # pixels of these in all, or a large picture would take half a minute
_SURE = 0.35  # of what is left unexplained half a width aside: no other size is tried
_BELIEVED = 0.5  # of it
_GUESSED = 0.65  # of it: no more than a guess
_HALVED = (
    0.56  # of it: such stitches twice as wide explain it too. Seen: 0.53 at most, else 0.6 and more
)
_WHOLE = 0.2  # of a stitch: so much may lack at the edge of the picture
_STEADY = 1e-4  # keeps stitches determined of which hardly anything is seen
_ROUNDED = 1.0  # step that a blended colour may be off by rounding alone
_SEEN_PX = 4  # or more has a stitch of which some pixels show no neighbour
_EXACT = 0.1  # left unexplained: nothing but rounding
# Of a stitch of no whole pixels so much is read: farther out the filter's own waves are seen.
_MIDDLE = 0.25
_ROWS_AT_ONCE = 256


@dataclass(frozen=True)
class Teeth:
    """The stitches along one side: the first whole one begins at `start_px`."""

    start_px: float
    cell_px: float
    length_px: int

    @property
    def number(self) -> int:
        return max(int((self.length_px - self.start_px) / self.cell_px + _WHOLE), 0)

    @property
    def before(self) -> int:
        """1 where a stitch before the first is cut off by the edge of the picture, else 0."""
        return int(self.start_px > _WHOLE * self.cell_px)

    @property
    def after(self) -> int:
        left = self.length_px - self.start_px - self.number * self.cell_px
        return int(left > _WHOLE * self.cell_px)

    @property
    def even(self) -> bool:
        """Whether all stitches are of the same whole pixels, so that their middles are alike."""
        return abs(self.cell_px - round(self.cell_px)) * self.number < 1

    def blend(self) -> tuple[np.ndarray, np.ndarray]:
        """For each pixel the stitch whose middle lies before it, and its share of the next one's colour."""
        seen = self.number + self.before + self.after
        at = (np.arange(self.length_px) + 0.5 - self.start_px) / self.cell_px - 0.5 + self.before
        at = np.clip(at, 0, seen - 1)
        below = np.minimum(at.astype(int), max(seen - 2, 0))
        return below, at - below


@dataclass(frozen=True)
class Comb:
    """`blended`: colours pass from one middle to the next, where else they end at the edges."""

    across: Teeth
    down: Teeth
    blended: bool
    unexplained: float  # mean difference from what the stitches explain, of 255
    doubt: float  # that, as a share of what is left half a width aside; 1 is no evidence at all
    on_lattice: bool = False  # its edges themselves have told the size: there is no doubt of that

    @property
    def cell_px(self) -> float:
        return (self.across.cell_px + self.down.cell_px) / 2

    @property
    def believed(self) -> bool:
        return self.on_lattice or self.doubt < _BELIEVED

    @property
    def sure(self) -> bool:
        return self.on_lattice or self.doubt < _SURE

    @property
    def framed(self) -> bool:
        return any(side.before or side.after for side in (self.across, self.down))


def comb_of(rgba: np.ndarray) -> Comb | None:
    """The stitches of a picture, height × width × 4; a guess that is not `believed`, or None, where there
    are none to be seen."""
    guess = None
    for cell, stand in _combs(rgba):
        if 2 * cell > min(rgba.shape[:2]):
            continue
        comb = _best(rgba, cell, (stand,))
        if guess and guess.believed and _divides(cell, guess.cell_px):
            continue
        if comb.sure:
            return _not_halved(rgba, comb)
        if comb.doubt < (guess.doubt if guess else _GUESSED):
            guess = comb
    return guess and _not_halved(rgba, guess)


def _not_halved(rgba: np.ndarray, comb: Comb) -> Comb:
    """The stitches, or those that are twice as wide where these explain the picture too: halves of a stitch
    always do, and the soft edge between two whole ones may stand at the middle of a half."""
    twice = comb_at(rgba, 2 * comb.cell_px)
    few = min(twice.across.number, twice.down.number) < 2
    return comb if few or twice.doubt > _HALVED else twice


def _divides(cell: float, larger: float) -> bool:
    """Whether stitches of one size are those of the other, each cut in several: where the edges are soft,
    that explains them better yet."""
    times = larger / cell
    return round(times) > 1 and abs(times - round(times)) < _WHOLE / 2


def comb_at(rgba: np.ndarray, cell_px: float) -> Comb:
    """The stitches of a picture whose author says how large they are, 2 px or more."""
    return next(combs_at(rgba, (cell_px,)))


def combs_at(rgba: np.ndarray, sizes_px: Iterable[float]) -> Iterator[Comb]:
    """The stitches of each of these sizes, one after another."""
    across, down = _bends(rgba, 1)
    for cell in sizes_px:
        stand = _stand(across, cell, 1), _stand(down, cell, 1)
        yield _best(rgba, cell, ((0.0, 0.0), stand))


def comb_on(rgba: np.ndarray, lattice: Lattice) -> Comb:
    """The stitches of a picture whose edges stand on a lattice."""
    lines, stand = (_lines(rgba, 0), _lines(rgba, 1)), (lattice.across_px, lattice.down_px)
    found = []
    for blended in (False, True):
        (least, (across, down)), (other, _) = (
            _at(lines, lattice.cell_px, stand, blended, aside) for aside in (0.0, 0.5)
        )
        doubt = least / max(other, 1e-9)
        found.append(Comb(across, down, blended, least, doubt, on_lattice=True))
    return min(found, key=lambda comb: comb.unexplained)


def stitches(rgba: np.ndarray, comb: Comb) -> tuple[np.ndarray, bool]:
    """The colour of each stitch, rows × columns × 4, 0 to 255; and whether these are the very colours that
    were drawn, without shades of soft edges."""
    found, strays = _middles(rgba, comb)
    even = comb.across.even and comb.down.even
    exact = comb.unexplained < _EXACT and (comb.blended or not even)
    if not exact and (even or comb.cell_px >= _SEEN_PX):
        drawn = own_colours(found if even else _evenly(rgba, comb), min(strays, comb.unexplained))
        if drawn is not None:
            return drawn, True
    if comb.blended:
        return as_one(_unblended(rgba, comb), comb.unexplained + _ROUNDED), False
    return as_one(found, comb.unexplained if comb.cell_px < _SEEN_PX else strays), False


# --- finding -----------------------------------------------------------------------------------------


def _combs(rgba: np.ndarray) -> Iterator[tuple[float, tuple[float, float]]]:
    """Distances of teeth, the clearest first, and where the teeth stand, across and down."""
    for apart in _APART:
        yield from _combs_of(_bends(rgba, apart), apart)


def _combs_of(
    bends: tuple[np.ndarray, np.ndarray], apart: int
) -> Iterator[tuple[float, tuple[float, float]]]:
    sides = [np.clip(one - np.percentile(one, 20), 0, None) for one in bends if len(one)]
    if len(sides) < 2:
        return
    points = points_for(_FINER * (max(map(len, sides)) + 2 * apart))
    clear = np.sum([np.abs(np.fft.rfft(side, points)) for side in sides], 0)
    here = np.arange(1, len(clear) - 1)
    peaks = here[(clear[1:-1] > clear[:-2]) & (clear[1:-1] >= clear[2:])]
    peaks = peaks[(peaks > _FINER * _LEAST_NUMBER) & (peaks < points / _LEAST_PX)]
    for peak in peaks[np.argsort(-clear[peaks], kind="stable")[:_TEETH]].tolist():
        left, top, right = clear[peak - 1 : peak + 2]
        cell = points / (peak + (left - right) / 2 / (left - 2 * top + right))
        if abs(cell - _IMITATED_PX) < _IMITATED_PX / 100:
            continue
        yield cell, (_stand(sides[0], cell, apart), _stand(sides[1], cell, apart))


def _bends(rgba: np.ndarray, apart: int) -> tuple[np.ndarray, np.ndarray]:
    """How much the slope changes at each column that has others so far apart on both sides; and each row. Of a
    large picture so many rows (columns) are looked at as are plenty."""
    height, width = rgba.shape[:2]
    every = max(1, height * width // _PLENTY_PX)
    across, down = (np.zeros(max(length - 2 * apart, 0)) for length in (width, height))
    for top in range(0, height, _ROWS_AT_ONCE * every):
        part = rgba[top : top + _ROWS_AT_ONCE * every : every].astype(np.int16)
        across += _bent(part.transpose(1, 0, 2), apart)
    for top in range(0, height, _ROWS_AT_ONCE):
        part = rgba[top : top + _ROWS_AT_ONCE + 2 * apart, ::every].astype(np.int16)
        bent = _bent(part, apart)
        down[top : top + len(bent)] = bent
    return across, down


def _bent(lines: np.ndarray, apart: int) -> np.ndarray:
    sums = lines[2 * apart :] - 2 * lines[apart:-apart] + lines[: -2 * apart]
    return np.abs(sums).sum((1, 2), dtype=np.float64)


def _stand(bends: np.ndarray, cell: float, apart: int) -> float:
    turn = 2 * np.pi / cell
    wave = (bends * np.exp(-1j * turn * (np.arange(len(bends)) + apart + 0.5))).sum()
    return float(-np.angle(wave) / turn)


def _lines(rgba: np.ndarray, along: int) -> np.ndarray:
    """Some rows (or columns) of the picture: their length × all their channels."""
    lines = rgba if along == 0 else rgba.transpose(1, 0, 2)
    number = min(_LINES, max(_LOOKED_AT // lines.shape[1], 1))
    chosen = np.unique(np.linspace(0, len(lines) - 1, number).astype(int))
    lines = lines[chosen].transpose(1, 0, 2).astype(np.float64)
    return lines.reshape(len(lines), -1)


def _best(rgba: np.ndarray, cell: float, stands: Iterable[tuple[float, float]]) -> Comb:
    """The stitches of that size that explain the picture best."""
    lines = _lines(rgba, 0), _lines(rgba, 1)
    found = [_kind(lines, cell, stand, blended) for stand in stands for blended in (False, True)]
    return min(found, key=lambda comb: comb.unexplained)


def _kind(
    lines: tuple[np.ndarray, np.ndarray], cell: float, stand: tuple[float, float], blended: bool
) -> Comb:
    """The better of two places, by how far it is better than the other."""
    tried = [_at(lines, cell, stand, blended, aside) for aside in (0.0, 0.5)]
    (least, (across, down)), (other, _) = sorted(tried, key=lambda one: one[0])
    return Comb(across, down, blended, least, least / max(other, 1e-9))


def _at(
    lines: tuple[np.ndarray, np.ndarray],
    cell: float,
    stand: tuple[float, float],
    blended: bool,
    aside: float,
) -> tuple[float, tuple[Teeth, Teeth]]:
    """What is left unexplained by stitches that stand so much of a width aside; and these."""
    across, down = (_teeth(at + aside * cell, cell, len(of)) for at, of in zip(stand, lines))
    left = (_left(lines[0], across, blended) + _left(lines[1], down, blended)) / 2
    return left, (across, down)


def _teeth(edge: float, cell: float, length_px: int) -> Teeth:
    """The stitches of which one begins at `edge`; as wide as the picture asks, if that holds all of them."""
    start = edge % cell
    if start > (1 - _WHOLE) * cell:
        start -= cell
    number = round((length_px - start) / cell)
    if abs(start) < _WHOLE * cell / 2 and abs(number * cell - length_px) < _WHOLE * cell:
        return Teeth(0.0, length_px / number, length_px)
    return Teeth(start, cell, length_px)


def _left(lines: np.ndarray, side: Teeth, blended: bool) -> float:
    """How far the lines are on average from what the best stitches explain."""
    if blended:
        below, share = side.blend()
        found = _solved(side, _gathered(lines, below, share))
        share = share[:, None]
        return float(np.abs(lines - found[below] * (1 - share) - found[below + 1] * share).mean())
    begin = (np.arange(len(lines)) - side.start_px) / side.cell_px
    at = np.floor(begin).astype(int)
    whole = at == np.floor(begin + 0.999 / side.cell_px).astype(int)  # no edge passes through it
    at, lines = at[whole], lines[whole]
    begins = np.flatnonzero(np.diff(at, prepend=at[0] - 1))
    sizes = np.diff(begins, append=len(at))
    means = np.add.reduceat(lines, begins, 0) / sizes[:, None]
    return float(np.abs(lines - np.repeat(means, sizes, 0)).mean())


# --- reading -----------------------------------------------------------------------------------------


def _gathered(lines: np.ndarray, below: np.ndarray, share: np.ndarray) -> np.ndarray:
    """For each stitch the sum of its pixels, each by its share in them."""
    begins = np.flatnonzero(np.diff(below, prepend=-1))
    sums = np.zeros((below[-1] + 2, lines.shape[1]))
    own = share.reshape(-1, 1)
    sums[below[begins]] += np.add.reduceat(lines * (1 - own), begins, 0)
    sums[below[begins] + 1] += np.add.reduceat(lines * own, begins, 0)
    return sums


def _solved(side: Teeth, sums: np.ndarray) -> np.ndarray:
    """The stitches whose blend comes nearest to the lines (least squares).

    A pixel is blended of two neighbours at most, so each equation has three unknowns: they are taken out one
    by one and put in again from the end, which takes time in proportion to their number.
    """
    below, share = side.blend()
    number = len(sums)
    firsts, seconds = (
        np.bincount(below, (1 - share) ** 2, number),
        np.bincount(below + 1, share**2, number),
    )
    own = firsts + seconds + _STEADY
    both = np.bincount(below, (1 - share) * share, number)
    found = sums.copy()
    for n in range(1, number):
        part = both[n - 1] / own[n - 1]
        own[n] -= part * both[n - 1]
        found[n] -= part * found[n - 1]
    found[-1] /= own[-1]
    for n in range(number - 2, -1, -1):
        found[n] = (found[n] - both[n] * found[n + 1]) / own[n]
    return found


def _unblended(rgba: np.ndarray, comb: Comb) -> np.ndarray:
    """Colours weigh by their opacity, as they do where pictures are enlarged."""
    across, down = comb.across, comb.down
    below, share = down.blend()
    beside, part = across.blend()
    rows = np.zeros((below[-1] + 2, (beside[-1] + 2) * 4))
    for y, (row, own) in enumerate(zip(below.tolist(), share.tolist())):
        line = rgba[y].astype(np.float64)
        line[:, :3] *= line[:, 3:] / 255
        flat = _gathered(line, beside, part).ravel()
        rows[row] += (1 - own) * flat
        rows[row + 1] += own * flat
    solved = _solved(down, rows).reshape(len(rows), -1, 4).transpose(1, 0, 2)
    found = _solved(across, solved.reshape(len(solved), -1))
    found = found.reshape(len(found), -1, 4).transpose(1, 0, 2)
    found = found[down.before :, across.before :][: down.number, : across.number]
    opacity = np.clip(found[..., 3:], 1, 255) / 255
    whole = np.concatenate((found[..., :3] / opacity, found[..., 3:]), -1)
    return np.clip(np.rint(whole), 0, 255).astype(np.uint8)


def _middles(rgba: np.ndarray, comb: Comb) -> tuple[np.ndarray, float]:
    """The mean of the pixels in the middle of each stitch, and how far these are from it on average."""
    rows, columns = _spots(comb.down), _spots(comb.across)
    middle = np.mean if comb.across.even and comb.down.even else np.median
    found = np.empty((len(rows), len(columns), 4), np.uint8)
    strays = 0.0
    for number, row in enumerate(rows):
        spots = rgba[row[:, None, None], columns[None]].astype(np.int16)
        middles = np.rint(middle(spots, (0, 2)))
        found[number] = middles
        strays += float(np.abs(spots - middles[:, None]).mean())
    return found, strays / max(len(rows), 1)


def _evenly(rgba: np.ndarray, comb: Comb) -> np.ndarray:
    """The mean of a narrow part amid each stitch, equally wide wherever the pixels lie: so all show equal parts of
    their neighbours, as `own_colours` needs."""
    (rows, parts), (columns, shares) = _windows(comb.down), _windows(comb.across)
    found = np.empty((len(rows), len(columns), 4), np.uint8)
    for number, (row, part) in enumerate(zip(rows, parts)):
        line = np.tensordot(part, rgba[row], 1)
        found[number] = np.rint((line[columns] * shares[..., None]).sum(1))
    return found


def _windows(side: Teeth) -> tuple[np.ndarray, np.ndarray]:
    """The pixels that this part of each stitch touches, and the share of it that lies in each."""
    middles = side.start_px + (np.arange(side.number) + 0.5) * side.cell_px
    wide = max(_MIDDLE * side.cell_px, 1)
    begin = (middles - wide / 2)[:, None]
    pixels = np.floor(begin + 1e-6).astype(int) + np.arange(int(np.ceil(wide)) + 1)
    parts = np.minimum(pixels + 1, begin + wide) - np.maximum(pixels, begin)
    return np.clip(pixels, 0, side.length_px - 1), np.clip(parts, 0, None) / wide


def _spots(side: Teeth) -> np.ndarray:
    """The pixels of each stitch's middle, 1 or more, as many on either side of it: stitches × pixels."""
    middles = side.start_px + (np.arange(side.number) + 0.5) * side.cell_px - 0.5
    whole = round(side.cell_px)
    if side.even:
        wide = max(whole - 2 * max(whole // 4, 1), 1)
    else:
        wide = max(int(side.cell_px / 2), 1)
    spots = np.floor(middles[:, None] + np.arange(wide) - (wide - 1) / 2 + 0.5 + 1e-6)
    return np.clip(spots, 0, side.length_px - 1).astype(int)
