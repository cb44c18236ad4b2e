"""Somebody who tries to read the chart of a sold pattern out of its public pictures.

He is given more than a real one would have: the exact place, scale and tilt of the design in every picture,
the exact colours of the key, the size and place of the shown crosses, the best straight correction of his
colours that the true chart itself can give, and the best of several shifts by a whole cell. Of all his ways,
and of every number of rounds, only the best counts. He is judged on the cells that differ from a neighbour,
since flat areas give nothing away, and in a part of a picture only on those that it shows. What he has not
got is the sold chart, and so not how its places have strayed, which is drawn from it.
"""

from dataclasses import dataclass
from functools import cached_property
from math import ceil, cos, radians, sin

import numpy as np
from PIL import Image
from scipy.special import erf

from packetgen.colour import blended, channels, mix
from packetgen.model import BARE, Stitch
from packetgen.render.picture_bench import scene
from packetgen.render.picture_retold import crosses as shown_crosses
from packetgen.render.picture_view import DETAIL_PX, DETAIL_TILT_DEGREES, detail_view
from packetgen.render.public_picture import TILT_DEGREES, close_box, middle_mm
from packetgen.render.share_picture import PICTURE_PX
from packetgen.render.site_pictures import SHARE_SIZES_PX

PX = 8  # of the straightened picture, for one cell
_ROUNDS = (2, 4, 7, 12, 20, 40, 80, 150)
# Softenings that he undoes, as standard deviations in cells: the crosses' own size alone, and as much
# again as places have strayed at least.
_SOFTENINGS = (0.05, 0.8)
_VOTES = (0.5, 0.8, 1.2)


# --- where the design lies in a picture -----------------------------------------------------------


@dataclass(frozen=True)
class View:
    """Where the chart lies in a picture: px of its corner, and of one cell across and one down."""

    corner: np.ndarray
    across: np.ndarray
    down: np.ndarray

    def of_part(self, box, size) -> "View":
        """The same in a part of the picture that is brought to `size`."""
        scale = np.array([size[0] / (box[2] - box[0]), size[1] / (box[3] - box[1])])
        return View((self.corner - box[:2]) * scale, self.across * scale, self.down * scale)


def mounted_view(figures, piece, width_px) -> View:
    """In a picture of the mounted design."""
    on, view = figures.cloths[0], scene(piece, width_px)
    scale, tilt = on.cell_mm * view.px_per_mm, radians(TILT_DEGREES)
    across = scale * np.array([cos(tilt), -sin(tilt)])
    down = scale * np.array([sin(tilt), cos(tilt)])
    grid = figures.pattern.grid
    middle = np.array(view.px(*middle_mm(on)))
    return View(middle - across * grid.width / 2 - down * grid.height / 2, across, down)


def share_view(figures, piece, shape, width_px=1200) -> View:
    """In the picture of a share picture of a design that is out."""
    size = (width_px, scene(piece, width_px).height_px)
    box, room = close_box(figures.cloths[0], piece, size, PICTURE_PX[shape]), PICTURE_PX[shape]
    return mounted_view(figures, piece, width_px).of_part(box, room)


def close_up_view(figures, shown, border_mm, width_px=DETAIL_PX[0]) -> View:
    """In a close-up of a design that is awaited."""
    view, on, grid = detail_view(shown.pattern), figures.cloths[0], figures.pattern.grid
    border, turn = border_mm / on.cell_mm, radians(DETAIL_TILT_DEGREES)
    px = view.cross_px * width_px / DETAIL_PX[0]
    across = px * shown.size[0] / (grid.width + 2 * border) * np.array([cos(turn), -sin(turn)])
    down = px * shown.size[1] / (grid.height + 2 * border) * np.array([sin(turn), cos(turn)])
    middle = [
        m / crosses * (cells + 2 * border) - border
        for m, crosses, cells in zip(view.middle, shown.size, (grid.width, grid.height))
    ]
    height = width_px * DETAIL_PX[1] / DETAIL_PX[0]
    corner = np.array([width_px / 2, height / 2]) - across * middle[0] - down * middle[1]
    return View(corner, across, down)


def close_up_share_view(figures, shown, border_mm, shape) -> View:
    """In the picture of a share picture of a design that is awaited: the middle of its close-up."""
    (width, height), (wide, high) = PICTURE_PX[shape], DETAIL_PX
    scale = max(width / wide, height / high)
    left, top = (wide - width / scale) / 2, (high - height / scale) / 2
    box = (left, top, wide - left, high - top)
    return close_up_view(figures, shown, border_mm).of_part(box, PICTURE_PX[shape])


def without_words(image, shape):
    """The part of a share picture that is a picture: at its right, or at its top."""
    left, (width, height) = SHARE_SIZES_PX[shape][0] - PICTURE_PX[shape][0], PICTURE_PX[shape]
    return image.convert("RGB").crop((left, 0, left + width, height))


# --- what he wants --------------------------------------------------------------------------------


class Chart:
    """The colour of every cell, as an index into the palette."""

    def __init__(self, pattern, on):
        cloth = on.option.colour.hex
        palette = {BARE: cloth}
        for line in pattern.key:
            thread = blended(tuple(c.hex for c in line.threads[pattern.thread_sets[0].id]))
            # A half stitch is seen as thread and cloth together.
            palette[line.mark] = thread if line.stitch is Stitch.FULL else mix(thread, cloth, 0.5)
        self.marks = list(palette)
        self.palette = np.array([channels(palette[mark]) for mark in self.marks], float)
        self.truth = self.indices(pattern.grid.rows)
        near = np.pad(self.truth, 1, mode="edge")
        neighbours = (near[1:-1, :-2], near[1:-1, 2:], near[:-2, 1:-1], near[2:, 1:-1])
        self.detail = np.any([side != self.truth for side in neighbours], axis=0)
        self.colours = self.palette[self.truth]

    def indices(self, rows):
        return np.array([[self.marks.index(mark) for mark in row] for row in rows])

    def nearest(self, seen):
        return ((seen[:, :, None, :] - self.palette) ** 2).sum(-1).argmin(-1)

    def right(self, said, visible) -> float:
        """Share of the detailed cells of which the right colour is said, after the best of nine shifts."""
        judged = self.detail & visible
        shifts = ((down, across) for down in (-1, 0, 1) for across in (-1, 0, 1))
        return max(float((np.roll(said, by, (0, 1)) == self.truth)[judged].mean()) for by in shifts)


# --- how he goes about it -------------------------------------------------------------------------


class Attacker:
    """Pictures of one design, each with its View, laid straight over the chart and averaged."""

    def __init__(self, pictures, figures, piece):
        self._on = figures.cloths[0]
        self.chart = Chart(figures.pattern, self._on)
        self._rows, self._columns = self.chart.truth.shape
        self._border = piece.border_mm / self._on.cell_mm
        self._margin = ceil(self._border) + 1
        laid = [self._straightened(image.convert("RGBA"), view) for image, view in pictures]
        weight = sum((each[..., 3:] > 250).astype(float) for each in laid)
        total = sum(each[..., :3] * (each[..., 3:] > 250) for each in laid)
        self._straight = total / np.maximum(weight, 1)
        self._seen = weight[..., 0] > 0
        middles = self._seen[self._inside()][PX // 2 :: PX, PX // 2 :: PX]
        self.visible = middles[: self._rows, : self._columns]

    def as_published(self) -> float:
        """The middle of each cell, its mean, or the cross shown there; as it is or colour-corrected."""
        inside = self._straight[self._inside()]
        blocks = inside.reshape(self._rows, PX, self._columns, PX, 3)
        crosses = self.crosses_seen[0]
        seen = [blocks[:, 3:5, :, 3:5].mean((1, 3)), blocks.mean((1, 3)), self._spread(crosses)]
        down, across = self._softening(*crosses.shape[:2], _SOFTENINGS[0])
        expected = self._spread(combined(down, self.chart.colours, across))
        return max(
            self.chart.right(self.chart.nearest(each), self.visible)
            for plain in seen
            for each in (plain, corrected(plain, expected, self.visible))
        )

    def deblurred(self, crosses=None) -> float:
        """The best of turning the softening round and of letting the crosses vote."""
        crosses, known = self.crosses_seen if crosses is None else crosses
        return max(
            self.voted(crosses, known), *(self._turned(crosses, known, s) for s in _SOFTENINGS)
        )

    def voted(self, crosses, known) -> float:
        """Each cross is taken for its nearest colour; the crosses round a cell speak for it, the near loudly."""
        down, across = self._softening(*crosses.shape[:2], _SOFTENINGS[0])
        expected = combined(down, self.chart.colours, across)
        best = 0.0
        for each in (crosses, corrected(crosses, expected, known)):
            said = self.chart.nearest(each)
            for far in _VOTES:
                rows, columns = (self._near(n, far, i) for i, n in enumerate(said.shape))
                votes = [
                    rows @ ((said == mark) & known) @ columns.T
                    for mark in range(len(self.chart.palette))
                ]
                best = max(best, self.chart.right(np.argmax(votes, axis=0), self.visible))
        return best

    def _turned(self, crosses, known, softening) -> float:
        """Turns the softening round, step by step (projected gradient, momentum of Nesterov)."""
        down, across = self._softening(*crosses.shape[:2], softening)
        cloth = self.chart.palette[0]
        wanted = self.chart.colours - cloth

        def soften(cells):
            return combined(down, cells, across)

        seen = corrected(crosses, soften(wanted) + cloth, known) - cloth
        step = 1 / (np.linalg.norm(down, 2) * np.linalg.norm(across, 2)) ** 2
        guess = ahead = np.zeros_like(wanted)
        momentum, best = 1.0, 0.0
        for turn in range(1, _ROUNDS[-1] + 1):
            off = (seen - soften(ahead)) * known[..., None]
            back = combined(down.T, off, across.T)
            better = np.clip(ahead + step * back, -cloth, 255 - cloth)
            following = (1 + (1 + 4 * momentum**2) ** 0.5) / 2
            ahead = better + (momentum - 1) / following * (better - guess)
            guess, momentum = better, following
            if turn in _ROUNDS:
                said = self.chart.nearest(guess + cloth)
                best = max(best, self.chart.right(said, self.visible))
        return best

    @cached_property
    def crosses_seen(self):
        """(the mean colour of every shown cross, which of them are seen whole)."""
        columns, rows = shown_crosses((self._columns, self._rows), self._border)
        down = self._gather(rows, self._rows, self._straight.shape[0])
        across = self._gather(columns, self._columns, self._straight.shape[1])
        return combined(down, self._straight, across), down @ self._seen @ across.T > 0.99

    def guess_without_a_picture(self) -> float:
        """The commonest colour of the detailed cells, put into all of them."""
        judged = self.chart.truth[self.chart.detail & self.visible]
        return float(np.bincount(judged).max() / judged.size)

    def _inside(self):
        start = self._margin * PX
        return np.s_[start : start + self._rows * PX, start : start + self._columns * PX]

    def _straightened(self, image, view):
        size = [(n + 2 * self._margin) * PX for n in (self._columns, self._rows)]
        across, down = view.across / PX, view.down / PX
        start = view.corner - self._margin * (view.across + view.down)
        turn = (across[0], down[0], start[0], across[1], down[1], start[1])
        way = Image.Transform.AFFINE, turn, Image.Resampling.BICUBIC
        return np.asarray(image.transform(size, *way), float)

    def _gather(self, crosses, cells, length_px):
        """Matrix: px of the straightened picture to the mean of each cross."""
        at = (np.arange(length_px) + 0.5) / PX - (self._margin - self._border)
        which = np.floor(at / (cells + 2 * self._border) * crosses)
        matrix = (which[None, :] == np.arange(crosses)[:, None]).astype(float)
        return matrix / matrix.sum(1, keepdims=True)

    def _softening(self, rows, columns, softening):
        """Matrices: cells of the chart to shown crosses, down and across."""
        return (
            self._soft(rows, self._rows, softening),
            self._soft(columns, self._columns, softening),
        )

    def _soft(self, crosses, cells, softening, fine=16):
        at = (np.arange(crosses * fine) + 0.5) / fine * (cells + 2 * self._border) / crosses
        edge = (np.arange(cells + 1)[None, :] - (at - self._border)[:, None]) / (softening * 2**0.5)
        under = erf(edge) / 2
        return np.diff(under, axis=1).reshape(crosses, fine, cells).mean(1)

    def _near(self, crosses, far, axis):
        """Matrix: how loudly each cross speaks for each cell."""
        cells = (self._rows, self._columns)[axis]
        at = (np.arange(crosses) + 0.5) * (cells + 2 * self._border) / crosses - self._border
        away = (np.arange(cells) + 0.5)[:, None] - at[None, :]
        return np.exp(-(away**2) / (2 * far**2))

    def _spread(self, crosses):
        """The cross that is shown over the middle of each cell."""

        def under(cells, count):
            at = (np.arange(cells) + 0.5 + self._border) / (cells + 2 * self._border)
            return (at * count).astype(int)

        rows, columns = crosses.shape[:2]
        return crosses[under(self._rows, rows)][:, under(self._columns, columns)]


def combined(down, colours, across):
    """The colours with their rows put together by one matrix and their columns by the other."""
    # Part by part: a product of numbers that do not lie side by side takes many times as long.
    parts = (np.ascontiguousarray(colours[..., part]) for part in range(3))
    return np.stack([down @ part @ across.T for part in parts], axis=-1)


def corrected(seen, expected, known):
    """The straight-line change of colours that brings what is known of `seen` nearest to `expected`."""
    flat = np.concatenate([seen.reshape(-1, 3), np.ones((seen.size // 3, 1))], axis=1)
    where = known.reshape(-1)
    way = np.linalg.lstsq(flat[where], expected.reshape(-1, 3)[where], rcond=None)[0]
    return (flat @ way).reshape(seen.shape)
