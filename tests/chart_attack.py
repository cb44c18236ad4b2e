"""Somebody who tries to read the chart of a sold pattern out of its public picture.

He is given more than a real one would have: the exact place, scale and tilt of the design, the exact
colours of the key, the exact softening and the size and place of the shown crosses, and the best straight
correction of his colours that the true chart itself can give. Of all his ways, and of every number of
rounds, only the best counts. He is judged on the cells that differ from a neighbour, since flat areas
give nothing away.
"""

from math import ceil, cos, erf, radians, sin

import numpy as np
from PIL import Image

from packetgen.model import Stitch
from packetgen.reckon.colour import blended, channels, mix
from packetgen.render import public_picture
from packetgen.render.picture_bench import scene

PX = 8  # of the straightened picture, for one cell
_ROUNDS = (2, 4, 7, 12, 20, 40, 80, 150)


class Chart:
    """What he wants: the colour of every cell, as an index into the palette."""

    def __init__(self, pattern, on):
        cloth = on.option.colour.hex
        palette = {".": cloth}
        for line in pattern.key:
            thread = blended(tuple(c.hex for c in line.threads[pattern.thread_sets[0].id]))
            # A half stitch is seen as thread and cloth together.
            palette[line.mark] = thread if line.stitch is Stitch.FULL else mix(thread, cloth, 0.5)
        marks = list(palette)
        self.palette = np.array([channels(palette[mark]) for mark in marks], float)
        self.truth = np.array([[marks.index(mark) for mark in row] for row in pattern.grid.rows])
        near = np.pad(self.truth, 1, mode="edge")
        neighbours = (near[1:-1, :-2], near[1:-1, 2:], near[:-2, 1:-1], near[2:, 1:-1])
        self.detail = np.any([side != self.truth for side in neighbours], axis=0)
        self.colours = self.palette[self.truth]

    def recovered(self, seen) -> float:
        """Share of the detailed cells whose nearest palette colour is the right one."""
        apart = ((seen[:, :, None, :] - self.palette) ** 2).sum(-1)
        return float((apart.argmin(-1) == self.truth)[self.detail].mean())


class Attacker:
    """One public picture of one pattern, laid straight over the chart."""

    def __init__(self, image, figures, piece):
        self._on = figures.cloths[0]
        self.chart = Chart(figures.pattern, self._on)
        self._rows, self._columns = self.chart.truth.shape
        self._border = piece.border_mm / self._on.cell_mm
        self._margin = ceil(self._border) + 1
        self._straight = self._straightened(image.convert("RGB"), piece)

    def as_published(self) -> float:
        """The middle of each cell, its mean, or the cross shown there; as it is or colour-corrected."""
        inside = self._straight[self._margin * PX :, self._margin * PX :]
        inside = inside[: self._rows * PX, : self._columns * PX]
        blocks = inside.reshape(self._rows, PX, self._columns, PX, 3)
        crosses = self.crosses_seen()
        seen = [blocks[:, 3:5, :, 3:5].mean((1, 3)), blocks.mean((1, 3)), self._spread(crosses)]
        down, across = self._softening(*crosses.shape[:2])
        expected = self._spread(down @ self.chart.colours.transpose(2, 0, 1) @ across.T, first=True)
        return max(
            self.chart.recovered(each)
            for plain in seen
            for each in (plain, corrected(plain, expected))
        )

    def deblurred(self, crosses=None) -> float:
        """Turns the softening round, step by step (projected gradient, momentum of Nesterov)."""
        crosses = self.crosses_seen() if crosses is None else crosses
        down, across = self._softening(*crosses.shape[:2])
        cloth = self.chart.palette[0]
        wanted = self.chart.colours - cloth

        def soften(cells):
            return (down @ cells.transpose(2, 0, 1) @ across.T).transpose(1, 2, 0)

        seen = corrected(crosses, soften(wanted) + cloth) - cloth
        step = 1 / (np.linalg.norm(down, 2) * np.linalg.norm(across, 2)) ** 2
        guess = ahead = np.zeros_like(wanted)
        momentum, best = 1.0, 0.0
        for turn in range(1, _ROUNDS[-1] + 1):
            off = seen - soften(ahead)
            back = (down.T @ off.transpose(2, 0, 1) @ across).transpose(1, 2, 0)
            better = np.clip(ahead + step * back, -cloth, 255 - cloth)
            following = (1 + (1 + 4 * momentum**2) ** 0.5) / 2
            ahead = better + (momentum - 1) / following * (better - guess)
            guess, momentum = better, following
            if turn in _ROUNDS:
                best = max(best, self.chart.recovered(guess + cloth))
        return best

    def crosses_seen(self):
        """The mean colour of every shown cross."""
        columns, rows = (
            round((n + 2 * self._border) / public_picture.SHOWN_CELLS)
            for n in (self._columns, self._rows)
        )
        down = self._gather(rows, self._rows, self._straight.shape[0])
        across = self._gather(columns, self._columns, self._straight.shape[1])
        return (down @ self._straight.transpose(2, 0, 1) @ across.T).transpose(1, 2, 0)

    def _straightened(self, image, piece):
        view, card, at = scene(piece, image.width), self._on.fit.card, self._on.fit.at_mm
        middle = view.px(at[0] + card.width_mm / 2, at[1] + card.height_mm / 2)
        size = [(n + 2 * self._margin) * PX for n in (self._columns, self._rows)]
        scale = self._on.cell_mm * view.px_per_mm / PX
        tilt = radians(public_picture.TILT_DEGREES)
        right, down = scale * cos(tilt), scale * sin(tilt)
        turn = (
            *(right, down, middle[0] - right * size[0] / 2 - down * size[1] / 2),
            *(-down, right, middle[1] + down * size[0] / 2 - right * size[1] / 2),
        )
        way = Image.Transform.AFFINE, turn, Image.Resampling.BICUBIC
        return np.asarray(image.transform(size, *way), float)

    def _gather(self, crosses, cells, length_px):
        """Matrix: px of the straightened picture to the mean of each cross."""
        at = (np.arange(length_px) + 0.5) / PX - (self._margin - self._border)
        which = np.floor(at / (cells + 2 * self._border) * crosses)
        matrix = (which[None, :] == np.arange(crosses)[:, None]).astype(float)
        return matrix / matrix.sum(1, keepdims=True)

    def _softening(self, rows, columns):
        """Matrices: cells of the chart to shown crosses, down and across."""
        return self._soft(rows, self._rows), self._soft(columns, self._columns)

    def _soft(self, crosses, cells, fine=16):
        at = (np.arange(crosses * fine) + 0.5) / fine * (cells + 2 * self._border) / crosses
        edge = (np.arange(cells + 1)[None, :] - (at - self._border)[:, None]) / (
            public_picture.SOFT_CELLS * 2**0.5
        )
        under = np.vectorize(erf)(edge) / 2
        return np.diff(under, axis=1).reshape(crosses, fine, cells).mean(1)

    def _spread(self, crosses, first=False):
        """The cross that is shown over the middle of each cell."""
        crosses = crosses.transpose(1, 2, 0) if first else crosses

        def under(cells, count):
            at = (np.arange(cells) + 0.5 + self._border) / (cells + 2 * self._border)
            return (at * count).astype(int)

        rows, columns = crosses.shape[:2]
        return crosses[under(self._rows, rows)][:, under(self._columns, columns)]


def corrected(seen, expected):
    """The straight-line change of colours that brings `seen` nearest to `expected`."""
    flat = np.concatenate([seen.reshape(-1, 3), np.ones((seen.size // 3, 1))], axis=1)
    way = np.linalg.lstsq(flat, expected.reshape(-1, 3), rcond=None)[0]
    return (flat @ way).reshape(seen.shape)
