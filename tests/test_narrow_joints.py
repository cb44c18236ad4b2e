"""Parts of a finishing piece that meet the others in one point, or along an edge.

A joint that holds is common practice, no source; from which length on is our own choice.
"""

from dataclasses import replace

import pytest

from packetgen.load.narrow_joints import met_in_a_point
from packetgen.load.outlines import read_outline
from packetgen.load.panel_on_wood import across_parts
from tests.stitching import piece

(BOARD,) = piece().parts


def part(outline: str, at: tuple[float, float] = (0, 0)):
    """A part as its author writes it."""

    def refuse(code: str, offset: int = 0, **facts: object) -> None:
        raise AssertionError(f"{code} at {offset}: {facts}")

    return replace(BOARD, outline=read_outline(outline, refuse), at_mm=at)


BACK = part("0,0 120,0 120,120 0,120")


@pytest.mark.parametrize(
    ("outline", "at", "where"),
    [
        ("0,0 120,11 120,30 0,30", (0, 120), (0, 120)),  # a wedge opens from its corner
        ("0,0 120,11 120,30 0,30", (0, 121), (0, 121)),  # 1 mm below, as glue or a stroke of paint
        ("60,0 90,40 30,40", (0, 120), (60, 120)),  # a triangle on its tip
        ("60,0 90,40 30,40", (0, 110), None),  # its tip lies over the board, where glue holds it
        ("0,0 120,0 120,30 0,30", (0, 120), None),  # an edge along an edge
        ("0,0 12,0 12,30 0,30", (50, 120), None),  # a narrow leg, by all of its width
        # By hand: below a round of 100 mm the chord half a millimetre up is 2·√(100·0.5 − 0.25) = 14.1 mm long.
        ("M 0,50 A 50,50 0 0 1 100,50 A 50,50 0 0 1 0,50 Z", (10, 120), None),
        ("0,0 120,11 120,30 0,30", (0, 140), None),  # it stands apart, and is told of as that
        ("0,0 9,9 0,9", (60, 120), None),  # a button is held by anything
    ],
)
def test_a_part_is_held_by_an_edge_and_not_by_a_corner(outline, at, where):
    found = [
        (one.number, one.other, one.at_mm) for one in met_in_a_point([BACK, part(outline, at)])
    ]
    assert found == ([] if where is None else [(1, 0, pytest.approx(where))])


def test_two_corners_hold_a_part_as_an_arch_stands_on_its_feet():
    arch = part("0,30 0,10 60,0 120,10 120,30 60,20", (0, -30))
    assert list(met_in_a_point([BACK, arch])) == []


PANEL = ((10.0, 6.0), (110.0, 6.0), (110.0, 106.0), (10.0, 106.0))
LID = part("0,0 130,0 130,26 0,26", (-5, 0))


def test_a_panel_from_the_corner_of_the_board_below_a_lid_lies_across_both():
    """The board begins at 0,26, so its own 10,6 is 10,32 in the drawing of the whole."""
    found = across_parts(PANEL, [replace(BACK, at_mm=(0, 26)), LID])
    assert found is not None and (found.number, found.onto) == (0, 1)
    right = tuple((x, y + 26) for x, y in PANEL)
    assert across_parts(right, [replace(BACK, at_mm=(0, 26)), LID]) is None


def test_a_panel_on_planks_is_meant_to_lie_across_them():
    planks = [part("0,0 120,0 120,40 0,40", (0, 40.0 * n)) for n in range(3)]
    assert across_parts(PANEL, planks) is None
