"""What of a drawn picture is bare cloth: the colours that its author names, soft edges that come near to
one of them, and the rows and columns around the design that have nothing else."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from packetgen.bring.apart import lab_of, rgb_of, table
from packetgen.bring.drawing import Cells, Drawing, hex_of
from packetgen.nouns import at_the_ends

# CIEDE2000 from a bare colour. Seen in drawings on white whose edges were softened in eight ways: what
# strays is within 3, but for one square in 500, and is nowhere two squares wide both ways. A cream or an
# ivory is 4 and more from white, and what somebody draws is somewhere two squares wide. About 1 is just
# visible side by side.
_SAME, _NEAR, _TOLD = 1.0, 3.0, 5.0
_OF_BORDER, _OF_ALL = 0.6, 0.25  # shares that a ground has at the least
# And that white paper has, as behind a drawing: where it is two squares wide, since a frame is none.
_WHITE, _WHITE_OF_BORDER, _WHITE_OF_ALL = ("#ffffff",), 0.2, 0.1
# Of all, where a frame or a scene goes round it; and of what is pale, by its CIELAB lightness: our own choice.
_WHITE_FRAMED, _PALE_FRAMED, _PALE = 1 / 3, 1 / 2, 90.0
_MOST_OFFERED = 3
_DIGITS = 9  # what is left is the dust of floating point, by which a colour may differ from itself


@dataclass(frozen=True)
class Ground:
    """A colour that may well be bare cloth, though nobody has said so."""

    hex: str
    stitches: int  # that are worked in it
    of: int
    most: bool  # of the border, and not only much
    framed: bool = False  # it is hardly of the border

    def in_words(self) -> str:
        if self.framed:
            return f"{self.hex}, within what is drawn round it, is {self.stitches:,} of {self.of:,} stitches"
        share = "most" if self.most else "much"
        return f"{self.hex} is {share} of the border and {self.stitches:,} of {self.of:,} stitches"


def ground_of(drawing: Drawing) -> Ground | None:
    """The colour around the design: most of the border, and much of the whole; or white paper, or a pale colour that is
    most of it, within a frame. None
    where there is none, where some of the cloth is bare already, or where the file says what each colour is."""
    border = np.concatenate(
        (drawing.cells[0], drawing.cells[-1], drawing.cells[:, 0], drawing.cells[:, -1])
    )
    number = int(np.bincount(border).argmax())
    if not drawing.cells.all() or len(drawing.colours) == 1:
        return None
    around = _around(drawing, border, number)
    white = int(_apart(drawing, _WHITE)[1:].argmin()) + 1
    if around:
        return around
    if _apart(drawing, _WHITE)[white] <= _SAME:
        return _around(drawing, border, white, paper=True) or _framed(drawing, white, _WHITE_FRAMED)
    most = int(np.bincount(drawing.cells.ravel()).argmax())
    is_pale = lab_of(drawing.colours[most - 1 : most])[0, 0] >= _PALE
    return _framed(drawing, most, _PALE_FRAMED) if is_pale else None


def _framed(drawing: Drawing, number: int, least: float) -> Ground | None:
    """That colour where it has at least such a share of the whole, wherever it lies, and the file does not say what it is."""
    there = drawing.cells == number
    if _explained(drawing, number) or _in_squares(there).mean() < least:
        return None
    named = hex_of(drawing.colours[number - 1])
    return Ground(named, int(there.sum()), drawing.cells.size, most=False, framed=True)


def _around(
    drawing: Drawing, border: np.ndarray, number: int, paper: bool = False
) -> Ground | None:
    """That colour of the drawing, where it has the shares of a ground, or of `paper`, and the file does not say what
    it is."""
    if _explained(drawing, number):
        return None
    named = hex_of(drawing.colours[number - 1])
    near = _apart(drawing, (named,)) <= (_NEAR if drawing.soft or drawing.photograph else 0)
    around, there = float(near[border].mean()), near[drawing.cells]
    wide, least = (_in_squares(there), _WHITE_OF_ALL) if paper else (there, _OF_ALL)
    if around < (_WHITE_OF_BORDER if paper else _OF_BORDER) or wide.mean() < least:
        return None
    return Ground(named, int(there.sum()), drawing.cells.size, around >= _OF_BORDER)


def _explained(drawing: Drawing, number: int) -> bool:
    """Whether the file says what that colour is."""
    wish = drawing.wishes.get(number)
    return wish is not None and bool(wish.mark or not wish.coloured)


def with_bare(drawing: Drawing, bare: Sequence[str]) -> Drawing:
    """The drawing in which the colours of `bare` are bare cloth.

    Where its edges are soft, so are squares that hardly differ from one of them; and those that differ little,
    stand alone or in a line, and have bare cloth beside them. What may be an edge or not stays and is told.
    """
    if not bare or not drawing.cells.any():
        return drawing
    apart = _apart(drawing, bare)[drawing.cells]
    named = apart == 0
    near = ~named & (apart <= _NEAR)
    same = named | (apart <= _SAME)
    strayed = near & (same | (~_in_squares(near & ~same) & _beside(same)))
    gone = named | strayed if drawing.soft else named
    close = ~gone & (apart <= _TOLD)
    between = ~_in_squares(close) & _beside(gone) & _beside(apart > _TOLD)
    left = close & (between | (apart <= _NEAR))
    told = list(drawing.told)
    if (gone & ~named).any():
        told.append(f"{_squares(gone & ~named)} hardly other than a bare colour, and bare too")
    if left.any():
        told.append(
            f"{_squares(left)} nearly a bare colour, and stitched: where that is a soft edge, add "
            + " ".join(f'--bare "{one}"' for one in _most_common(drawing, left))
        )
    left_over = _left(drawing, np.where(gone, 0, drawing.cells), told)
    return replace(left_over, bare=tuple(bare), nearly_bare=int(left.sum()))


def trimmed(drawing: Drawing, trim: bool) -> Drawing:
    """The drawing without the bare rows and columns at its edges; without `trim` they are only told."""
    if not drawing.cells.any():
        return drawing
    rows, columns = stitched_part(drawing)
    sides = (("row", rows, drawing.height), ("column", columns, drawing.width))
    bare = [at_the_ends(noun, of.start, length - of.stop, length) for noun, of, length in sides]
    words = " and ".join(one for one in bare if one)
    if not words:
        return drawing
    if not trim:
        number = sum(length - (of.stop - of.start) for _, of, length in sides)
        them = "it" if number == 1 else "them"
        return replace(drawing, told=(*drawing.told, f"bare: {words}; --trim leaves {them} out"))
    before = [f"{of.start} {way}" for way, of in (("across", columns), ("down", rows)) if of.start]
    moved = f"; points that you noted on it are less by {' and '.join(before)}" if before else ""
    return replace(
        drawing,
        cells=drawing.cells[rows, columns],
        told=(*drawing.told, f"bare and left out: {words}{moved}"),
    )


def stitched_part(drawing: Drawing) -> tuple[slice, slice]:
    """From the first row to the last that are not all bare, and so the columns, of a drawing with stitches."""
    rows, columns = (np.flatnonzero((drawing.cells > 0).any(side)) for side in (1, 0))
    return slice(int(rows[0]), int(rows[-1]) + 1), slice(int(columns[0]), int(columns[-1]) + 1)


def _apart(drawing: Drawing, bare: Sequence[str]) -> np.ndarray:
    """How far (CIEDE2000) each of its colours is from the nearest that is bare; bare cloth itself is not."""
    gaps = table(lab_of(drawing.colours), lab_of(rgb_of(tuple(bare)))).min(1)
    gaps = np.round(gaps, _DIGITS)
    return np.concatenate(([0.0], gaps))


def _left(drawing: Drawing, cells: Cells, told: Sequence[str]) -> Drawing:
    """The drawing with these cells, and no colour that none of them has."""
    used = np.unique(cells[cells > 0])
    numbers = np.zeros(len(drawing.colours) + 1, np.int32)
    numbers[used] = np.arange(1, len(used) + 1)
    wishes = {int(numbers[old]): wish for old, wish in drawing.wishes.items() if numbers[old]}
    return replace(
        drawing,
        cells=numbers[cells],
        colours=drawing.colours[used - 1],
        wishes=wishes,
        told=tuple(told),
    )


def _in_squares(of: np.ndarray) -> np.ndarray:
    """Which of them lie in a square of four of them."""
    fours = of[:-1, :-1] & of[1:, :-1] & of[:-1, 1:] & of[1:, 1:]
    found = np.zeros(of.shape, bool)
    for corner in (found[:-1, :-1], found[1:, :-1], found[:-1, 1:], found[1:, 1:]):
        corner |= fours
    return found


def _beside(of: np.ndarray) -> np.ndarray:
    """Where one of the eight around is one of them."""
    padded = np.pad(of, 1)
    height, width = of.shape
    around = [(y, x) for y in range(3) for x in range(3) if (y, x) != (1, 1)]
    return np.any([padded[y : y + height, x : x + width] for y, x in around], 0)


def _squares(of: np.ndarray) -> str:
    """'12 squares, the first at row 3, column 7, are'."""
    number = int(of.sum())
    row, column = (int(side) + 1 for side in np.argwhere(of)[0])
    spot = f"row {row}, column {column}"
    return (
        f"1 square at {spot} is" if number == 1 else f"{number:,} squares, the first at {spot}, are"
    )


def _most_common(drawing: Drawing, of: np.ndarray) -> Iterator[str]:
    counts = np.bincount(drawing.cells[of])
    for number in np.argsort(-counts, kind="stable")[:_MOST_OFFERED].tolist():
        if counts[number]:
            yield hex_of(drawing.colours[number - 1])
