"""The colours that somebody drew in a picture with soft edges, and which of them each stitch is in.

However its edges became soft, a stitch shows its own colour and a part of each step to a neighbour: about the
same parts all over the picture. They are found by least squares where the colours are known; what the
neighbours leave unexplained is a further colour, the most common first. So the shade of an edge is told from
a colour that somebody drew. The method is our own.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np

# Luma and two differences of colour, which JPEG softens each by itself (ITU-T T.871); and opacity.
_PARTED = np.array(
    [
        [0.299, 0.587, 0.114, 0],
        [-0.1687, -0.3313, 0.5, 0],
        [0.5, -0.4187, -0.0813, 0],
        [0, 0, 0, 1],
    ]
).T
_WHOLE = np.linalg.inv(_PARTED)
_BESIDE = ((0, 1), (0, -1), (1, 0), (-1, 0))
_CORNERS = ((1, 1), (1, -1), (-1, 1), (-1, -1))
# Those of one kind have the same part: pictures are softened alike across and down.
_NEIGHBOURS = (_BESIDE, _CORNERS, tuple((2 * y, 2 * x) for y, x in _BESIDE))
_NEAR, _NEARLY = ((0, 0), *_BESIDE, *_CORNERS), 0.25
_NOISE, _LEAST_APART, _MOST_APART = 3, 6, 16  # times what strays on average; steps of a channel
_FEW, _STANDS_OUT = 4, 2  # fewer squares are a colour only if they are so many times as far
_TRIED = (
    0,
    -0.03,
    0.03,
    0.06,
    0.09,
    0.12,
)  # parts that a square has of the next, each way, to begin with
_ENOUGH = 50  # steps between neighbours, or the parts stay as they are
_MOST_PART, _LEAST_OWN, _MOST_OWN = 0.3, 0.4, 1.6
_MOST_COLOURS, _MOST_SQUARES = 60, 40_000  # in more the search takes too long
_MOST_STRANGE = 0.02  # of the squares: what leaves more unexplained explains nothing


@dataclass(eq=False)
class _Guess:
    """Which of the colours each square is in, and how much of its neighbours each shows.

    `shown` is rows × columns × 4, parted; `parts` has for each of these four a part for each kind of neighbour,
    once for most colours and once for those at an end of what can be shown, as white is: of what a filter
    would make brighter still the pixels are cut off, and more of the neighbours is seen.
    """

    shown: np.ndarray
    room: float  # what may be left unexplained
    colours: np.ndarray
    cells: np.ndarray
    parts: np.ndarray


def own_colours(found: np.ndarray, noise: float) -> np.ndarray | None:
    """Each stitch in the colour that was drawn: rows × columns × 4, 0 to 255, as `found` is.

    None where they cannot be told, as of too many. `noise` is how far colours stray on average.
    """
    if found.shape[0] * found.shape[1] > _MOST_SQUARES:
        return None
    shown = found.astype(np.float64)
    shown[..., :3] *= shown[..., 3:] / 255
    shown = shown @ _PARTED
    room = float(np.clip(_NOISE * noise, _LEAST_APART, _MOST_APART))
    nothing = np.zeros((2, 4, len(_NEIGHBOURS)))
    guess = _Guess(shown, room, np.empty((0, 4)), np.zeros(shown.shape[:2], int), nothing)
    flat = _apart(_moved(shown, _NEAR), shown).max(0) <= room / 2
    for more in _heaps(shown[flat] if flat.any() else shown.reshape(-1, 4), room):
        guess.colours = np.vstack((guess.colours, more))
        if not flat.any() or len(guess.colours) == _MOST_COLOURS:
            break
    if not _searched(guess):
        return None
    _thin_out(guess)
    whole = guess.colours @ _WHOLE
    whole[:, :3] /= np.clip(whole[:, 3:], 1, 255) / 255
    return np.clip(np.rint(whole), 0, 255).astype(np.uint8)[guess.cells]


def _searched(guess: _Guess) -> bool:
    """Add colours until nothing asks for a further one; whether that comes to an end, and explains the picture."""
    refused = np.zeros(guess.cells.shape, bool)
    _begin(guess)
    while True:
        _settle(guess)
        far, own = _left(guess)
        left = ~refused & (far > guess.room)
        more = _further(own[left], far[left], guess.room)
        if more is None:
            return bool((far > _STANDS_OUT * guess.room).mean() <= _MOST_STRANGE)
        if len(guess.colours) == _MOST_COLOURS:
            return False
        guess.colours = np.vstack((guess.colours, more))
        _label(guess)
        if not (guess.cells == len(guess.colours) - 1).any():
            guess.colours = guess.colours[:-1]
            refused |= left & (_apart(own, more) <= guess.room)


def _begin(guess: _Guess) -> None:
    """The colours and parts, alike in all four, that explain most squares to begin with."""
    tried = []
    for each_way in _TRIED:
        guess.parts = np.tile([each_way * (1 - 2 * each_way), each_way**2, 0], (2, 4, 1))
        _label(guess, everywhere=True)
        tried.append((_strangeness(guess), guess.parts, guess.cells))
    _, guess.parts, guess.cells = min(tried, key=lambda one: one[0])


def _strangeness(guess: _Guess) -> float:
    """How far squares are from what explains them, those of unknown colours no farther than others."""
    return float(np.minimum(_left(guess)[0], guess.room).mean())


def _further(own: np.ndarray, far: np.ndarray, room: float) -> np.ndarray | None:
    """A colour for what is left unexplained: of most squares, or of one that stands out; None: there is none."""
    if not len(own):
        return None
    colour = next(_heaps(own, room))
    if (_apart(own, colour) <= room).sum() >= _FEW:
        return colour
    return own[far.argmax()] if far.max() > _STANDS_OUT * room else None


def _heaps(colours: np.ndarray, room: float) -> Iterator[np.ndarray]:
    """The colours around which the others gather, the most common first."""
    while len(colours):
        _, box_of, heaps = np.unique(
            np.floor(colours / room), axis=0, return_inverse=True, return_counts=True
        )
        middle = np.median(colours[box_of.ravel() == heaps.argmax()], 0)
        near = _apart(colours, middle) <= room
        if near.any():
            middle = np.median(colours[near], 0)
        yield middle
        left = _apart(colours, middle) > room
        colours = colours[left] if not left.all() else colours[:0]


def _thin_out(guess: _Guess) -> None:
    """Take out the colours whose squares their neighbours explain as well, those of few squares first."""
    while (gone := _needless(guess)) is not None:
        guess.colours = np.delete(guess.colours, gone, 0)
        guess.cells = np.where(guess.cells > gone, guess.cells - 1, guess.cells)
        guess.cells = np.minimum(guess.cells, len(guess.colours) - 1)
        _label(guess)
        _settle(guess)


def _needless(guess: _Guess) -> int | None:
    around, own = _around(guess)
    ends = _at_end(guess.colours)
    sure = set(np.unique(guess.cells[_inner(guess)]).tolist())  # nothing near has coloured these
    counts = np.bincount(guess.cells.ravel(), minlength=len(guess.colours))
    for number in np.argsort(counts, kind="stable")[:-1].tolist():
        here = guess.cells == number
        others, of = (np.delete(all_, number, 0) for all_ in (guess.colours, ends))
        seen = around[of][:, here] + (own[of] * others)[:, None]
        far = _strays(guess.shown[here], seen).min(0)
        may = guess.room * (1 if counts[number] >= _FEW else _STANDS_OUT)
        alike = _apart(guess.colours[number], others).min() <= guess.room
        if not here.any() or ((alike or number not in sure) and np.median(far) <= may):
            return number
    return None


def _settle(guess: _Guess) -> None:
    for _ in range(2):
        _fit(guess)
        _mix(guess)
        _label(guess)


def _label(guess: _Guess, everywhere: bool = False) -> None:
    """Each square that is not explained well gets the colour that explains it best."""
    around, own = known = _around(guess)
    far, _ = _left(guess, known)
    open_to = np.ones(far.shape, bool) if everywhere else far > _NEARLY * guess.room
    shown, around, best = guess.shown[open_to], around[:, open_to], far[open_to]
    cells = guess.cells[open_to]
    for number, (colour, end) in enumerate(zip(guess.colours, _at_end(guess.colours))):
        far = _strays(shown, around[end] + own[end] * colour)
        cells[far < best] = number
        best = np.minimum(far, best)
    guess.cells = guess.cells.copy()
    guess.cells[open_to] = cells


def _fit(guess: _Guess) -> None:
    """The parts of the neighbours, of most colours from squares that are at no end of what can be shown."""
    drawn = guess.colours[guess.cells]
    ends = _at_end(guess.colours)[guess.cells]
    whole = guess.shown @ _WHOLE
    inside = (~np.isclose(whole, 0) & ~np.isclose(whole, whole[..., 3:]))[..., :3].all(-1)
    steps = np.stack([of - len(kind) * drawn for of, kind in zip(_sums(drawn), _NEIGHBOURS)], -1)
    far = _any(np.abs(steps) > 1)
    left = guess.shown - drawn
    guess.parts = guess.parts.copy()
    for end, channel in np.ndindex(2, 4):
        use = (ends == 1 if end else inside) & far[..., channel]
        if use.sum() < _ENOUGH:
            continue
        of, to = steps[..., channel, :][use], left[..., channel][use]
        parts = guess.parts[end, channel]
        for _ in range(3):  # squares of colours that are not known yet would lead astray
            strays = np.abs(to - of @ parts)
            near = strays <= max(np.quantile(strays, 0.8), 2)
            known, seen = of[near], to[near] - of[near, 1] * parts[1]
            known = known[:, [0, 2]]
            steady = 1e-3 * len(known) * np.eye(2)
            beside, beyond = np.linalg.solve(known.T @ known + steady, known.T @ seen)
            # A picture is softened along its rows and its columns, one after the other.
            own = np.clip(1 - 4 * (beside + parts[1] + beyond), _LEAST_OWN, _MOST_OWN)
            parts = np.array([beside, beside**2 / own, beyond])
        own = 1 - (parts * [len(kind) for kind in _NEIGHBOURS]).sum()
        if _LEAST_OWN < own < _MOST_OWN and np.abs(parts).max() < _MOST_PART:
            guess.parts[end, channel] = parts


def _mix(guess: _Guess) -> None:
    """Each colour as squares amid their like show it, or what its squares show without their neighbours."""
    _, own = _left(guess)
    inner = _inner(guess)
    for number in range(len(guess.colours)):
        here = guess.cells == number
        if (amid := here & inner).sum() >= 3:
            guess.colours[number] = np.median(guess.shown[amid], 0)
        elif here.any():
            guess.colours[number] = np.median(own[here], 0)


def _inner(guess: _Guess) -> np.ndarray:
    """The squares amid squares of their own colour."""
    return (_moved(guess.cells[..., None], _NEAR)[..., 0] == guess.cells).all(0)


def _left(
    guess: _Guess, around: tuple[np.ndarray, np.ndarray] | None = None
) -> tuple[np.ndarray, np.ndarray]:
    """How far each square is from what explains it; and its colour without its neighbours."""
    both_around, both_own = around or _around(guess)
    ends = _at_end(guess.colours)[guess.cells]
    beside, own = np.where(ends[..., None], both_around[1], both_around[0]), both_own[ends]
    far = _strays(guess.shown, beside + own * guess.colours[guess.cells])
    return far, _possible((guess.shown - beside) / own)


def _around(guess: _Guess) -> tuple[np.ndarray, np.ndarray]:
    """What each square shows of its neighbours, and the part of its own colour; both twice, as `parts` is."""
    drawn = guess.colours[guess.cells]
    around = np.zeros((2, *drawn.shape))
    for of, parts in zip(_sums(drawn), guess.parts.transpose(2, 0, 1)):
        around += of * parts[:, None, None]
    return around, 1 - guess.parts @ [len(kind) for kind in _NEIGHBOURS]


def _at_end(parted: np.ndarray) -> np.ndarray:
    """Whether colours are as bright or as dark in red, green or blue as can be: 0 or 1 for each."""
    whole = (parted @ _WHOLE)[..., :3]
    return ((whole < 1) | (whole > 254)).any(-1).astype(int)


def _sums(of: np.ndarray) -> list[np.ndarray]:
    """What each square's neighbours of a kind are together, for each kind."""
    moved = _mover(of)
    return [sum(map(moved, others), moved(first)) for first, *others in _NEIGHBOURS]


def _moved(of: np.ndarray, ways: tuple[tuple[int, int], ...]) -> np.ndarray:
    """The array with each square's neighbour in its place, one way after another."""
    return np.stack(list(map(_mover(of), ways)))


def _mover(of: np.ndarray) -> Callable[[tuple[int, int]], np.ndarray]:
    """Gives for a way the array with each square's neighbour of that way in its place."""
    height, width = of.shape[:2]
    padded = np.pad(of, ((2, 2), (2, 2), (0, 0)), "edge")
    return lambda way: padded[2 + way[0] :, 2 + way[1] :][:height, :width]


def _possible(parted: np.ndarray) -> np.ndarray:
    """The nearest colours that a picture can show."""
    return np.clip(parted @ _WHOLE, 0, 255) @ _PARTED


def _strays(shown: np.ndarray, expected: np.ndarray) -> np.ndarray:
    """How far squares are from what is expected of them; what is brighter or darker than a picture can show
    was cut off pixel by pixel, so that they may stray by as much."""
    far = _apart(shown, expected)
    whole = expected @ _WHOLE
    beyond = _any((whole < 0) | (whole > 255))
    if beyond.any():
        possible = np.clip(whole[beyond], 0, 255) @ _PARTED
        seen = np.broadcast_to(shown, expected.shape)[beyond]
        far[beyond] = np.maximum(_apart(seen, possible) - _apart(expected[beyond], possible), 0)
    return far


def _any(of: np.ndarray) -> np.ndarray:
    """As `of.any(-1)`, which is slow where the last of the dimensions is short."""
    return np.logical_or.reduce([of[..., channel] for channel in range(of.shape[-1])])


def _apart(ones: np.ndarray, others: np.ndarray) -> np.ndarray:
    steps = ones - others
    return np.sqrt(np.einsum("...n,...n", steps, steps))
