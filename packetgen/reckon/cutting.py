"""How many pieces a piece of cloth gives, and how much cloth a list of pieces takes.

A fat quarter is half a yard of cloth, cut through once more: 18 × 22 in (common practice, no source).
Pieces are reckoned as they are cut: rounded up to the eighth of an inch or the half centimetre,
whichever makes the larger piece, so that both rulers may be trusted. All cuts go right across
(a rotary cutter's way), which is simple to follow and never promises what scissors cannot do.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from packetgen.reckon.sizes import Size
from packetgen.units import MM_PER_INCH, up_to_step

FAT_QUARTER = Size(18 * MM_PER_INCH, 22 * MM_PER_INCH)
EIGHTH_MM = MM_PER_INCH / 8
HALF_CM_MM = 5.0
# A piece that fills its cloth exactly must not be lost to the dust of floating point.
_DUST_MM = 1e-6


@dataclass(frozen=True)
class Block:
    """Equal pieces side by side: `columns` × `rows` of them, from `x_mm`, `y_mm`."""

    x_mm: float
    y_mm: float
    piece: Size
    columns: int
    rows: int

    @property
    def pieces(self) -> int:
        return self.columns * self.rows


@dataclass(frozen=True)
class Placed:
    """One piece on a cloth: which of the list, and the place it takes there."""

    index: int
    x_mm: float
    y_mm: float
    size: Size


Laid = tuple[Placed, ...]  # on one cloth


@dataclass(frozen=True)
class Order:
    """Pieces of a list laid on equal cloths; `too_large` are those that go on none, by their index."""

    cloths: tuple[Laid, ...]
    too_large: tuple[int, ...]


def as_cut(size: Size) -> Size:
    """The larger of the two roundings that are printed, on each side."""

    def rounded(mm: float) -> float:
        return max(up_to_step(mm, EIGHTH_MM), up_to_step(mm, HALF_CM_MM))

    return Size(rounded(size.width_mm), rounded(size.height_mm))


def pieces_from(cloth: Size, piece: Size) -> int:
    """How many pieces `layout` finds."""
    return sum(block.pieces for block in layout(cloth, piece))


def pieces_one_way(cloth: Size, piece: Size) -> int:
    """How many pieces, none of them turned."""
    return _filled(0, 0, cloth, piece).pieces


def layout(cloth: Size, piece: Size) -> tuple[Block, ...]:
    """The most pieces of one size from a cloth: all upright, all turned, or a block of each beside or
    above the other. One block or two; none where not even one piece fits."""
    best: tuple[Block, ...] = ()
    for blocks in _layouts(cloth, piece):
        if sum(block.pieces for block in blocks) > sum(block.pieces for block in best):
            best = tuple(block for block in blocks if block.pieces)
    return best


def _layouts(cloth: Size, piece: Size) -> Iterator[tuple[Block, Block]]:
    """Every number of upright columns, then of upright rows, and what is left filled with turned ones."""
    turned = Size(piece.height_mm, piece.width_mm)
    columns = _times(cloth.width_mm, piece.width_mm)
    rows = _times(cloth.height_mm, piece.height_mm)
    for taken in range(columns, -1, -1):
        x = taken * piece.width_mm
        strip = Size(cloth.width_mm - x, cloth.height_mm)
        yield Block(0, 0, piece, taken, rows), _filled(x, 0, strip, turned)
    for taken in range(rows, -1, -1):
        y = taken * piece.height_mm
        strip = Size(cloth.width_mm, cloth.height_mm - y)
        yield Block(0, 0, piece, columns, taken), _filled(0, y, strip, turned)


def _filled(x_mm: float, y_mm: float, room: Size, piece: Size) -> Block:
    columns = _times(room.width_mm, piece.width_mm)
    return Block(x_mm, y_mm, piece, columns, _times(room.height_mm, piece.height_mm))


def _times(room_mm: float, side_mm: float) -> int:
    return max(0, int((room_mm + _DUST_MM) // side_mm))


Room = tuple[float, float, Size]  # where it begins, and how large it is
Cut = Callable[[Size, Size], tuple[Size, Size]]


def order(pieces: Sequence[Size], cloth: Size = FAT_QUARTER) -> Order:
    """How many equal cloths a list of pieces takes, each piece once; the fewest of a few simple ways.

    Either every size has its own cloths, laid out as `layout` does; or the largest piece is laid first and
    each in the first room that holds it, and what it leaves is cut into two rooms. Nothing is promised of
    the fewest possible; what is ordered is always enough.
    """
    too_large = tuple(i for i, piece in enumerate(pieces) if not _ways(piece, cloth))
    rest = [index for index in range(len(pieces)) if index not in too_large]
    rest.sort(key=lambda index: (-_area(pieces[index]), index))
    tried = [_by_size(pieces, rest, cloth)]
    tried += [
        _first_fit(pieces, rest, cloth, cut, turned)
        for cut in (_across, _down)
        for turned in (False, True)
    ]
    return Order(min(tried, key=len), too_large)


def _by_size(pieces: Sequence[Size], indexes: list[int], cloth: Size) -> tuple[Laid, ...]:
    alike: dict[Size, list[int]] = {}
    for index in indexes:
        alike.setdefault(pieces[index], []).append(index)
    cloths: list[Laid] = []
    for piece, of_it in alike.items():
        places = [
            (
                block.x_mm + column * block.piece.width_mm,
                block.y_mm + row * block.piece.height_mm,
                block,
            )
            for block in layout(cloth, piece)
            for row in range(block.rows)
            for column in range(block.columns)
        ]
        cloths += (
            tuple(
                Placed(index, x, y, block.piece)
                for index, (x, y, block) in zip(of_it[start:], places)
            )
            for start in range(0, len(of_it), len(places))
        )
    return tuple(cloths)


def _first_fit(
    pieces: Sequence[Size], indexes: list[int], cloth: Size, cut: Cut, turned: bool
) -> tuple[Laid, ...]:
    """`cut` makes two rooms of what a piece leaves; `turned` lays it turned where both ways fit."""
    taken: list[list[Placed]] = []
    rooms: list[list[Room]] = []
    for index in indexes:
        found = _first_room(pieces[index], rooms)
        if found is None:
            taken.append([])
            rooms.append([(0.0, 0.0, cloth)])
            found = len(rooms) - 1, 0
        number, at = found
        x, y, room = rooms[number].pop(at)
        laid = _ways(pieces[index], room)[-1 if turned else 0]
        taken[number].append(Placed(index, x, y, laid))
        beside, below = cut(room, laid)
        left = [(x + laid.width_mm, y, beside), (x, y + laid.height_mm, below)]
        # Small rooms first, so that small pieces go where nothing else fits.
        rooms[number] += sorted(left, key=lambda place: _area(place[2]))
    return tuple(map(tuple, taken))


def _first_room(piece: Size, rooms: list[list[Room]]) -> tuple[int, int] | None:
    for number, free in enumerate(rooms):
        for at, (_, _, room) in enumerate(free):
            if _ways(piece, room):
                return number, at
    return None


def _ways(piece: Size, room: Size) -> list[Size]:
    """Upright, turned, both or neither."""
    return [
        laid
        for laid in (piece, Size(piece.height_mm, piece.width_mm))
        if laid.width_mm <= room.width_mm + _DUST_MM and laid.height_mm <= room.height_mm + _DUST_MM
    ]


def _across(room: Size, laid: Size) -> tuple[Size, Size]:
    """Beside and below a piece in the corner of its room, cut along its lower edge."""
    wide, high = room.width_mm - laid.width_mm, room.height_mm - laid.height_mm
    return Size(wide, laid.height_mm), Size(room.width_mm, high)


def _down(room: Size, laid: Size) -> tuple[Size, Size]:
    """Beside and below, cut along its right edge."""
    wide, high = room.width_mm - laid.width_mm, room.height_mm - laid.height_mm
    return Size(wide, room.height_mm), Size(laid.width_mm, high)


def _area(size: Size) -> float:
    return size.width_mm * size.height_mm
