"""Templates at full size: what lies on them, how they go on pages, and their drawings.

A template is drawn in the panel's own millimetres. Where it is larger than the room on a page it goes on
several, which overlap; there each page has the same crosses, with the same letters beside them.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import product
from math import ceil
from string import ascii_lowercase

import svgwrite

from packetgen.model import Outline, Point
from packetgen.reckon.outline import edge_meets

# Room for a template on a page, between its words and its foot.
ROOM_WIDE_MM, ROOM_HIGH_MM = 194.0, 200.0
# Shown on both of two pages that are joined.
OVERLAP_MM = 14.0
CHECK_MM = 50.0  # side of the square that tells whether a page is printed at its size
LETTER_MM = 3.2  # size of the words on a template

_LINE, _FINE, _DASHES = 0.25, 0.18, "2.4 1.6"
_EDGE = 0.5  # beyond the outermost line
_ARM = 3.5  # of a cross
# Mean width of a letter of the text face, in ems; rather too much.
_MEAN_ADVANCE = 0.56


@dataclass(frozen=True)
class Loop:
    """A closed line to cut or lay by."""

    outline: Outline
    dashed: bool = False


@dataclass(frozen=True)
class Disc:
    """A magnet or washer, with the cross at which its middle is pricked or drilled."""

    at: Point
    diameter_mm: float
    name: str


@dataclass(frozen=True)
class Note:
    """Words that begin at a point of their baseline."""

    at: Point
    words: str

    @property
    def width_mm(self) -> float:
        return len(self.words) * _MEAN_ADVANCE * LETTER_MM


@dataclass(frozen=True)
class Template:
    loops: tuple[Loop, ...]
    discs: tuple[Disc, ...]
    notes: tuple[Note, ...]

    @property
    def bounds_mm(self) -> tuple[float, float, float, float]:
        """Left, top, right, bottom, with room for half a line."""
        xs = [x for loop in self.loops for x, _ in loop.outline]
        ys = [y for loop in self.loops for _, y in loop.outline]
        return min(xs) - _EDGE, min(ys) - _EDGE, max(xs) + _EDGE, max(ys) + _EDGE


@dataclass(frozen=True)
class Join:
    """A cross at the same place of a template on two pages."""

    at: Point
    letter: str


@dataclass(frozen=True)
class Leaf:
    """One page of a template: what of it is seen, and where it joins its neighbours."""

    left_mm: float
    top_mm: float
    column: int
    row: int
    joins: tuple[Join, ...]


def rectangle(left: float, top: float, right: float, bottom: float) -> Outline:
    return (left, top), (right, top), (right, bottom), (left, bottom)


# --- on pages -------------------------------------------------------------------------------------


def leaves(template: Template) -> tuple[Leaf, ...]:
    """The pages of a template, row by row; it stands in their middle. A page on which nothing would lie,
    in the middle of a large outline, is left out."""
    left, top, right, bottom = template.bounds_mm
    lefts = _starts(left, right, ROOM_WIDE_MM)
    tops = _starts(top, bottom, ROOM_HIGH_MM)
    grid = product(range(len(tops)), range(len(lefts)))
    whole = (Leaf(lefts[column], tops[row], column, row, ()) for row, column in grid)
    found = {(leaf.column, leaf.row): leaf for leaf in whole if _shows_any(leaf, template)}
    joins: dict[tuple[int, int], list[Join]] = {page: [] for page in found}
    seams = (seam for seam in _crosses(lefts, tops) if all(page in found for page in seam[1]))
    for number, (at, pages) in enumerate(seams):
        for page in pages:
            joins[page].append(Join(at, _letter(number)))
    return tuple(replace(leaf, joins=tuple(joins[page])) for page, leaf in found.items())


def _shows_any(leaf: Leaf, template: Template) -> bool:
    right, bottom = leaf.left_mm + ROOM_WIDE_MM, leaf.top_mm + ROOM_HIGH_MM
    return any(
        edge_meets(loop.outline, leaf.left_mm, leaf.top_mm, right, bottom)
        for loop in template.loops
    ) or any(_seen(leaf, disc.at, disc.diameter_mm / 2) for disc in template.discs)


def _starts(low: float, high: float, room: float) -> tuple[float, ...]:
    """Where each page begins along one side."""
    step = room - OVERLAP_MM
    number = max(1, ceil((high - low - OVERLAP_MM) / step - 1e-9))
    spare = number * step + OVERLAP_MM - (high - low)
    return tuple(low - spare / 2 + index * step for index in range(number))


def _crosses(
    lefts: tuple[float, ...], tops: tuple[float, ...]
) -> Iterator[tuple[Point, tuple[tuple[int, int], tuple[int, int]]]]:
    """Two on every seam, in the middle of the overlap, with the two pages that share them."""
    for row, top in enumerate(tops):
        for column, left in enumerate(lefts[1:]):
            for share in (0.25, 0.75):
                at = left + OVERLAP_MM / 2, top + share * ROOM_HIGH_MM
                yield at, ((column, row), (column + 1, row))
    for row, top in enumerate(tops[1:]):
        for column, left in enumerate(lefts):
            for share in (0.25, 0.75):
                at = left + share * ROOM_WIDE_MM, top + OVERLAP_MM / 2
                yield at, ((column, row), (column, row + 1))


def _letter(number: int) -> str:
    """a … z, then aa, bb, …"""
    times, letter = divmod(number, len(ascii_lowercase))
    return ascii_lowercase[letter] * (times + 1)


# --- drawings -------------------------------------------------------------------------------------


def leaf_drawing(template: Template, leaf: Leaf) -> str:
    """SVG of one page, in millimetres; what lies wholly on other pages is left out."""
    drawing = _drawing(leaf.left_mm, leaf.top_mm, ROOM_WIDE_MM, ROOM_HIGH_MM)
    for loop in template.loops:
        shape = drawing.polygon(loop.outline).fill("none").stroke("#000000", width=_LINE)
        if loop.dashed:
            shape.update({"stroke-dasharray": _DASHES, "stroke-width": _FINE})
        drawing.add(shape)
    for disc in template.discs:
        if _seen(leaf, disc.at, disc.diameter_mm / 2):
            circle = drawing.circle(disc.at, disc.diameter_mm / 2)
            drawing.add(circle.fill("none").stroke("#000000", width=_LINE))
            _add_cross(drawing, disc.at, min(_ARM, disc.diameter_mm * 0.35))
            x, y = disc.at
            _add_words(drawing, disc.name, (x + disc.diameter_mm / 2 + 0.8, y + LETTER_MM * 0.35))
    for note in template.notes:
        if shows(leaf, note):
            _add_words(drawing, note.words, note.at)
    for join in leaf.joins:
        _add_cross(drawing, join.at, _ARM)
        _add_words(drawing, join.letter, (join.at[0] + 1, join.at[1] - 1))
    return drawing.tostring()


def check_square() -> str:
    """SVG of the square to measure a print by: `CHECK_MM` from the middle of line to middle of line."""
    drawing = _drawing(-1, -1, CHECK_MM + 2, CHECK_MM + 2)
    square = drawing.rect((0, 0), (CHECK_MM, CHECK_MM))
    drawing.add(square.fill("none").stroke("#000000", width=_LINE))
    _add_words(drawing, f"{CHECK_MM:.0f} mm · {CHECK_MM / 25.4:.2f} in", (12.5, CHECK_MM / 2 + 1))
    return drawing.tostring()


def _drawing(left: float, top: float, width: float, height: float) -> svgwrite.Drawing:
    drawing = svgwrite.Drawing(size=(f"{width}mm", f"{height}mm"), debug=False)
    drawing.viewbox(round(left, 6), round(top, 6), width, height)
    return drawing


def _seen(leaf: Leaf, at: Point, reach: float) -> bool:
    x, y = at[0] - leaf.left_mm, at[1] - leaf.top_mm
    return -reach < x < ROOM_WIDE_MM + reach and -reach < y < ROOM_HIGH_MM + reach


def shows(leaf: Leaf, note: Note) -> bool:
    """Whether the page has the words whole."""
    x, y = note.at[0] - leaf.left_mm, note.at[1] - leaf.top_mm
    return 0 <= x <= ROOM_WIDE_MM - note.width_mm and LETTER_MM <= y <= ROOM_HIGH_MM - 1


def _add_cross(drawing: svgwrite.Drawing, at: Point, arm: float) -> None:
    x, y = at
    for start, end in (((x - arm, y), (x + arm, y)), ((x, y - arm), (x, y + arm))):
        drawing.add(drawing.line(start, end).stroke("#000000", width=_FINE))


def _add_words(drawing: svgwrite.Drawing, words: str, at: Point) -> None:
    insert = round(at[0], 3), round(at[1], 3)
    drawing.add(
        drawing.text(
            words, insert=insert, font_size=LETTER_MM, font_family="Packet Text", fill="#000000"
        )
    )
