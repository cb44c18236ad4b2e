"""Cloth: pieces are cut both ways round, and what is ordered is always enough."""

from functools import cache
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.reckon.cutting import FAT_QUARTER, as_cut, layout, order, pieces_from
from packetgen.reckon.sizes import Size


def inches(width: float, height: float) -> Size:
    return Size(width * 25.4, height * 25.4)


# --- a piece as it is cut -------------------------------------------------------------------------


def test_a_piece_is_rounded_up_by_the_ruler_that_makes_it_larger():
    """By hand: 100.1 mm is 3.94 in, so 4 in = 101.6 mm; or 10.5 cm = 105 mm. 130 mm is 13 cm; or 5.118 in,
    so 5 1/8 in = 130.175 mm."""
    cut = as_cut(Size(100.1, 130.0))
    assert (cut.width_mm, cut.height_mm) == pytest.approx((105.0, 130.175))


@given(st.floats(1, 600), st.floats(1, 600))
def test_a_cut_is_never_smaller_and_less_than_half_a_centimetre_larger(width, height):
    cut = as_cut(Size(width, height))
    assert width - 1e-6 <= cut.width_mm < width + 5 and height - 1e-6 <= cut.height_mm < height + 5


# --- equal pieces from one cloth ------------------------------------------------------------------


def test_a_fat_quarter_is_half_a_yard_by_twenty_two_inches():
    """18 × 22 in: common practice, no source; half a yard is 457.2 mm (a yard is 0.9144 m exactly by the
    international yard and pound agreement of 1959; NIST SP 811, appendix B.8)."""
    assert FAT_QUARTER.width_mm == pytest.approx(914.4 / 2)
    assert FAT_QUARTER.height_mm == pytest.approx(22 * 25.4)


@pytest.mark.parametrize(
    ("width", "height", "pieces"),
    [
        (11, 9, 4),  # 2 columns of 11, 2 rows of 9: 4
        (9, 11, 4),  # the same pieces, turned
        (12, 11, 2),  # 1 × 1 upright; turned 11 × 12: 2 × 1
        (
            6,
            4,
            16,
        ),  # 3 × 4 = 12 upright; 5 × 3 = 15 turned; 3 columns of 6 and a strip of 4 by 18: 12 + 3 = 15;
        # 1 column (4), and 16 in of turned ones: 4 × 3 = 12: 16 in all
        (22, 18, 1),  # the whole of it
        (18, 22, 1),
        (22.125, 18, 0),  # an eighth too wide
    ],
)
def test_pieces_of_a_fat_quarter_by_hand(width, height, pieces):
    """Counted by hand on 22 × 18 in, as written beside each line."""
    assert pieces_from(FAT_QUARTER, inches(width, height)) == pieces


def places_on(sheet, piece):
    """Every place of a whole piece, either way round, on a sheet of whole units."""
    for wide, high in {piece, piece[::-1]}:
        for x, y in product(range(sheet[0] - wide + 1), range(sheet[1] - high + 1)):
            yield frozenset(product(range(x, x + wide), range(y, y + high)))


@cache
def by_force(sheet, piece) -> int:
    """The most pieces that any laying at all puts on a sheet: every free cell is tried bare and covered."""
    places = tuple(places_on(sheet, piece))
    cells = tuple(product(range(sheet[0]), range(sheet[1])))

    @cache
    def most(left: frozenset) -> int:
        first = next((cell for cell in cells if cell in left), None)
        if first is None or len(left) < piece[0] * piece[1]:
            return 0
        covered = (1 + most(left - place) for place in places if first in place and place <= left)
        return max((most(left - {first}), *covered))

    return most(frozenset(cells))


def by_every_straight_cut(sheet, piece) -> int:
    """The best of one straight cut through the sheet with each part filled one way, written out apart."""

    def filled(wide, high):
        return {
            "upright": (wide // piece[0]) * (high // piece[1]),
            "turned": (wide // piece[1]) * (high // piece[0]),
        }

    wide, high = sheet
    splits = [((x, high), (wide - x, high)) for x in range(wide + 1)]
    splits += [((wide, y), (wide, high - y)) for y in range(high + 1)]
    return max(filled(*a)["upright"] + filled(*b)["turned"] for a, b in splits)


SMALL = [
    ((wide, high), (long, short))
    for wide, high in product(range(1, 6), repeat=2)
    for long, short in product(range(1, 6), repeat=2)
    if wide >= high and long >= short and long * short >= 2
]


def test_no_single_cut_through_the_cloth_gives_more():
    """Against every whole cut through every small sheet, found by trying them all."""
    for wide, high, long, short in product(range(1, 13), range(1, 13), range(1, 7), range(1, 7)):
        mine = pieces_from(Size(wide, high), Size(long, short))
        assert mine == by_every_straight_cut((wide, high), (long, short))


def test_only_a_pinwheel_beats_a_straight_cut():
    """Against an exhaustive search of every laying on small sheets: the same number, but for the two
    pinwheels round the middle of a square, one piece more, which no cut right across makes."""
    found = {
        (sheet, piece): (pieces_from(Size(*sheet), Size(*piece)), by_force(sheet, piece))
        for sheet, piece in SMALL
    }
    differing = {at: pair for at, pair in found.items() if pair[0] != pair[1]}
    assert differing == {((5, 5), (3, 2)): (3, 4), ((5, 5), (3, 1)): (7, 8)}


@given(st.floats(20, 600), st.floats(20, 600), st.floats(20, 600), st.floats(20, 600))
def test_a_layout_lies_on_its_cloth_and_nothing_on_anything(wide, high, long, short):
    blocks = layout(Size(wide, high), Size(long, short))
    areas = []
    for block in blocks:
        right = block.x_mm + block.columns * block.piece.width_mm
        below = block.y_mm + block.rows * block.piece.height_mm
        assert right <= wide + 1e-4 and below <= high + 1e-4
        areas.append((block.x_mm, block.y_mm, right, below))
    assert len(areas) <= 2
    assert not any(overlap(a, b) for a in areas for b in areas if a is not b)
    assert sum(block.pieces for block in blocks) >= 1 or not (
        (long <= wide and short <= high) or (short <= wide and long <= high)
    )


def overlap(one, other) -> bool:
    across = min(one[2], other[2]) - max(one[0], other[0])
    down = min(one[3], other[3]) - max(one[1], other[1])
    return across > 1e-4 and down > 1e-4


@given(st.floats(40, 600), st.floats(40, 600), st.floats(20, 600), st.floats(20, 600))
def test_turning_the_piece_changes_nothing_and_a_larger_cloth_gives_no_less(w, h, long, short):
    pieces = pieces_from(Size(w, h), Size(long, short))
    assert pieces_from(Size(w, h), Size(short, long)) == pieces
    assert pieces_from(Size(w + 25, h), Size(long, short)) >= pieces


# --- several designs from one cloth ---------------------------------------------------------------

SIZES = st.lists(st.builds(Size, st.floats(20, 700), st.floats(20, 700)), min_size=0, max_size=12)


@given(SIZES)
def test_an_order_is_never_short(pieces):
    """Every piece lies on some fat quarter, upright or turned, over no other and not over the edge; only
    what no fat quarter holds is left out, and there is never more cloth than pieces."""
    ordered = order(pieces)
    laid = [placed for cloth in ordered.cloths for placed in cloth]
    assert sorted([p.index for p in laid] + list(ordered.too_large)) == list(range(len(pieces)))
    for placed in laid:
        sides = {placed.size.width_mm, placed.size.height_mm}
        assert sides == {pieces[placed.index].width_mm, pieces[placed.index].height_mm}
        assert placed.x_mm + placed.size.width_mm <= FAT_QUARTER.width_mm + 1e-4
        assert placed.y_mm + placed.size.height_mm <= FAT_QUARTER.height_mm + 1e-4
    for cloth in ordered.cloths:
        assert cloth
        areas = [
            (p.x_mm, p.y_mm, p.x_mm + p.size.width_mm, p.y_mm + p.size.height_mm) for p in cloth
        ]
        assert not any(overlap(a, b) for i, a in enumerate(areas) for b in areas[:i])
    for index in ordered.too_large:
        assert pieces_from(FAT_QUARTER, pieces[index]) == 0
    assert len(ordered.cloths) <= len(laid)


def test_two_pieces_that_lie_side_by_side_take_one_fat_quarter():
    """By hand on 22 × 18 in: 11 × 18 twice fits; a third does not."""
    assert len(order([inches(11, 18)] * 2).cloths) == 1
    assert len(order([inches(11, 18)] * 3).cloths) == 2


def test_small_pieces_go_into_what_a_large_one_leaves():
    """By hand: 14 × 18 in leaves a strip of 8 × 18 in, in which two of 8 × 9 in lie."""
    assert len(order([inches(8, 9), inches(14, 18), inches(9, 8)]).cloths) == 1


def test_a_piece_that_no_fat_quarter_holds_is_named():
    ordered = order([inches(8, 9), inches(19, 19)])
    assert ordered.too_large == (1,)
    assert len(ordered.cloths) == 1


@given(st.integers(1, 30), st.floats(60, 300), st.floats(60, 300))
def test_equal_pieces_are_ordered_as_one_cloth_gives_them(number, long, short):
    """What is said of one fat quarter holds for many: no more cloth than so many pieces from each."""
    piece = Size(long, short)
    from_one = pieces_from(FAT_QUARTER, piece)
    assert len(order([piece] * number).cloths) <= -(-number // from_one)
