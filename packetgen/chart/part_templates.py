"""The shaped parts of a finishing piece as templates at full size: many small ones lie on one sheet."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from packetgen.chart.full_size import LETTER_MM, ROOM_HIGH_MM, ROOM_WIDE_MM, Loop, Note, Template
from packetgen.model import FinishingPiece, Outline
from packetgen.reckon.sawing import Alike, to_saw

_GAP_MM = 6.0  # between two parts
_BAND_MM = LETTER_MM + 1.6  # above a part, for its number
_WIDE_MM, _HIGH_MM = ROOM_WIDE_MM - 1.0, ROOM_HIGH_MM - 2 * _BAND_MM
# As many parts as can be named beside the check square.
_MOST_ON_SHEET = 12


@dataclass(frozen=True)
class PartTemplate:
    parts: tuple[tuple[int, Alike], ...]  # each with its number, which is not shown of one alone
    template: Template


@dataclass(frozen=True)
class _Row:
    """Parts side by side, as high as the first of them."""

    top_mm: float
    high_mm: float
    wide_mm: float = -_GAP_MM
    parts: tuple[tuple[int, Alike, float], ...] = ()  # each with its left edge

    def takes(self, part: Alike) -> bool:
        size = part.blank.size
        fits = self.wide_mm + _GAP_MM + size.width_mm <= _WIDE_MM
        return fits and size.height_mm <= self.high_mm

    def with_part(self, number: int, part: Alike) -> "_Row":
        left_mm = self.wide_mm + _GAP_MM
        wide_mm = left_mm + part.blank.size.width_mm
        return replace(self, wide_mm=wide_mm, parts=(*self.parts, (number, part, left_mm)))


def part_templates(piece: FinishingPiece) -> tuple[PartTemplate, ...]:
    """Every shape once: first the sheets of those that leave room for others, with numbers in the author's order,
    then those that fill a sheet or more. Rectangles need a ruler and no template."""
    shaped = tuple(part for part in to_saw(piece) if part.blank.shaped)
    small = enumerate((part for part in shaped if _leaves_room(part)), 1)
    sheets = tuple(_together(rows) for rows in _sheets(tuple(small)))
    return sheets + tuple(
        PartTemplate(((1, part),), Template((Loop(part.outline_mm),), (), ()))
        for part in shaped
        if not _leaves_room(part)
    )


def _leaves_room(part: Alike) -> bool:
    size = part.blank.size
    return size.width_mm <= _WIDE_MM and size.height_mm <= _HIGH_MM


def _sheets(parts: Sequence[tuple[int, Alike]]) -> Iterator[tuple[_Row, ...]]:
    """Highest first, each in the first row with room for it."""
    rows: list[_Row] = []
    for number, part in sorted(parts, key=lambda one: -one[1].blank.size.height_mm):
        full = sum(len(row.parts) for row in rows) == _MOST_ON_SHEET
        at = next((at for at, row in enumerate(rows) if not full and row.takes(part)), None)
        if at is not None:
            rows[at] = rows[at].with_part(number, part)
            continue
        high_mm = part.blank.size.height_mm
        top_mm = rows[-1].top_mm + rows[-1].high_mm + _GAP_MM + _BAND_MM if rows else 0.0
        if full or top_mm + high_mm > _HIGH_MM:
            yield tuple(rows)
            rows, top_mm = [], 0.0
        rows.append(_Row(top_mm, high_mm).with_part(number, part))
    if rows:
        yield tuple(rows)


def _together(rows: tuple[_Row, ...]) -> PartTemplate:
    placed = [(row.top_mm, *one) for row in rows for one in row.parts]
    right_mm = max(row.wide_mm for row in rows)
    return PartTemplate(
        tuple(sorted(((number, part) for _, number, part, _ in placed), key=lambda one: one[0])),
        Template(
            tuple(Loop(_moved(part.outline_mm, left, top)) for top, _, part, left in placed),
            (),
            tuple(
                _number(str(number), left, top, right_mm)
                for top, number, _, left in placed
                if len(placed) > 1
            ),
        ),
    )


def _number(words: str, left_mm: float, top_mm: float, right_mm: float) -> Note:
    """Over a part narrower than its number it ends with the sheet's parts at the latest."""
    width_mm = Note((0, 0), words).width_mm
    return Note((min(left_mm, right_mm - width_mm), top_mm - 1.2), words)


def _moved(outline: Outline, across_mm: float, down_mm: float) -> Outline:
    return tuple((x + across_mm, y + down_mm) for x, y in outline)
