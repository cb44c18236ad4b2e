"""Finishes that need no wooden piece: framed, in a hoop, as a flat-fold, a pillow, an ornament."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.model import GENERIC_FINISHES
from packetgen.reckon.figures import figures
from packetgen.reckon.generic_finishes import (
    Finish,
    flat_fold,
    framed,
    generic_finishes,
    hoop,
    ornament,
    oval_hoop_in,
    pillow,
    pillow_litres,
    round_hoop_in,
)
from packetgen.reckon.sizes import FRAMING_MARGIN_MM, Size
from packetgen.render.other_finishes import other_finishes
from packetgen.render.packet import packet
from packetgen.render.templates import environment
from tests.stitching import option, pattern, piece, series

DESIGN = Size(152.4, 101.6)  # six inches by four


def cut(finish: Finish, name: str):
    (found,) = (one for one in finish.cuts if one.name == name)
    return found


def inches(size: Size) -> tuple[float, float]:
    return pytest.approx((size.width_mm / 25.4, size.height_mm / 25.4))


def test_a_frame_by_hand():
    """6 × 4 in: the board has an inch more on every side, 8 × 6 in; the cloth 2 in more again, 12 × 10 in;
    the rebate is 3 mm larger than the board."""
    made = framed(DESIGN)
    assert (8, 6) == inches(cut(made, "Mount board").size)
    assert (12, 10) == inches(cut(made, "Cloth").size)
    rebate = cut(made, "Frame, inside its rebate").size
    assert (rebate.width_mm, rebate.height_mm) == pytest.approx((206.2, 155.4))


def test_the_cloth_for_a_frame_is_the_cut_that_the_page_of_sizes_names():
    assert cut(framed(DESIGN), "Cloth").size == DESIGN.grown(FRAMING_MARGIN_MM)


def test_a_hoop_by_hand():
    """The diagonal of 6 × 4 in is √52 = 7.21 in; with ⅜ in at either end 7.96: a hoop of 8 in. Its cloth is
    8 + 3 = 11 in across, the felt 8 − ¼ in; the thread goes round 11 in, 34.56 in, and 8 in more."""
    made = hoop(DESIGN)
    assert round_hoop_in(DESIGN) == 8
    assert cut(made, "Hoop, round").said == ("8 in", "20.3 cm")
    assert cut(made, "Cloth, a circle for the round hoop").across_mm == pytest.approx(279.4)
    assert cut(made, "Felt for its back, a circle").across_mm == pytest.approx(7.75 * 25.4)
    thread = cut(made, "Strong thread to gather").length_mm
    assert thread == pytest.approx(42.56 * 25.4, abs=0.2)


def test_an_oval_hoop_by_hand():
    """√2 · 6 + ¾ = 9.24, √2 · 4 + ¾ = 6.41: an oval of 10 × 7 in."""
    assert oval_hoop_in(DESIGN) == (10, 7)
    assert cut(hoop(DESIGN), "or oval, at least").said == ("10 × 7 in", "25.4 × 17.8 cm")
    square = hoop(Size(100, 100))
    assert cut(square, "or oval, at least").said == ("–",), "as wide as high it is a round one"


def test_a_design_too_large_for_a_usual_hoop_is_told():
    said = cut(hoop(Size(250, 200)), "Hoop, round").said
    assert said == ("14 in", "35.6 cm", "larger than usual")


def test_a_flat_fold_by_hand():
    """6 × 4 in: boards of 7 × 5 in, cloth and back of 9 × 7 in; a lining is folded under by ½ in and lies ⅛ in
    inside: 7 + 1 − ¼ in wide; the hinge is 5 in long and 2⅜ in wide."""
    made = flat_fold(DESIGN)
    assert (7, 5) == inches(cut(made, "Mount board").size)
    assert cut(made, "Mount board").pieces == 2
    assert (9, 7) == inches(cut(made, "Cloth").size)
    assert cut(made, "Lining").size.width_mm == pytest.approx(7.75 * 25.4)
    assert (2.375, 5) == inches(cut(made, "Hinge of fabric tape").size)


def test_a_pillow_by_hand():
    """6 × 4 in: an inch that shows and half an inch of seam on every side make 9 × 7 in."""
    made = pillow(DESIGN)
    assert (9, 7) == inches(cut(made, "Cloth, the front").size)
    assert (9, 7) == inches(cut(made, "Fabric for the back").size)


def test_a_square_pillow_holds_a_little_less_than_the_largest_bag():
    """A bag of two sheets of side 1 holds at most about 0.2055 (from memory); the formula gives
    1 / π − 0.142 · 0.9 = 0.1905 by hand. Eight ounces fill one of twelve inches, to a tenth (from memory)."""
    assert pillow_litres(Size(100, 100)) == pytest.approx(0.1905, abs=1e-4)
    assert pillow_litres(Size(304.8, 304.8)) * 40 == pytest.approx(8 * 28.35, rel=0.1)


def test_an_ornament_by_hand():
    """6 × 4 in: boards of 6½ × 4½ in, cloth of 8 × 6 in; a cord of 22 in round them and 8 in more."""
    made = ornament(DESIGN)
    assert (6.5, 4.5) == inches(cut(made, "Mount board").size)
    assert (8, 6) == inches(cut(made, "Cloth, the front").size)
    assert cut(made, "Cord").length_mm == pytest.approx(30 * 25.4)


SIDE = st.floats(10, 600)


def measures(finish: Finish) -> dict[tuple[str, int], float]:
    """Every measure of every cut by its name."""
    found = {}
    for one in finish.cuts:
        sizes = (one.size.width_mm, one.size.height_mm) if one.size else ()
        for number, value in enumerate((*sizes, one.across_mm, one.length_mm, one.weight_g)):
            if value is not None:
                found[one.name, number] = value
    return found


@given(SIDE, SIDE)
def test_whatever_is_cut_is_at_least_as_large_as_the_design(width, height):
    """Boards, wadding, cloth and backs cover the design; cloth that is turned or sewn has an inch to spare
    at least; a felt and its hoop reach round the design's corners."""
    finished = Size(width, height)
    for made in generic_finishes(GENERIC_FINISHES, finished):
        for one in made.cuts:
            if one.size and not one.name.startswith("Hinge"):
                assert one.size.width_mm >= width and one.size.height_mm >= height
            if one.name.startswith("Cloth") and one.size:
                assert one.size.width_mm >= width + 25.4 and one.size.height_mm >= height + 25.4
            if one.across_mm:
                assert one.across_mm >= (width**2 + height**2) ** 0.5


@given(SIDE, SIDE, st.floats(0.3, 1))
def test_a_finer_cloth_never_needs_more(width, height, finer):
    """The same design on a finer cloth is smaller, and so is all that is cut and every hoop."""
    coarse, fine = Size(width, height), Size(width * finer, height * finer)
    for made, smaller in zip(
        generic_finishes(GENERIC_FINISHES, coarse), generic_finishes(GENERIC_FINISHES, fine)
    ):
        more, less = measures(made), measures(smaller)
        assert more.keys() == less.keys()
        assert all(less[name] <= more[name] + 1e-9 for name in more)
    assert round_hoop_in(fine) <= round_hoop_in(coarse)


@given(SIDE, SIDE)
def test_the_design_lies_inside_both_hoops(width, height):
    """The corners of a rectangle lie in an oval where (w / a)² + (h / b)² ≤ 1, a and b its axes."""
    finished = Size(width, height)
    wide, high = oval_hoop_in(finished)
    assert (width / (wide * 25.4)) ** 2 + (height / (high * 25.4)) ** 2 < 1
    assert (width**2 + height**2) ** 0.5 < round_hoop_in(finished) * 25.4


def test_every_finish_is_printed_with_a_column_for_each_cloth():
    """Both systems, rounded up; a finish that the author did not choose is not there."""
    shown = pattern("m" * 84, cloths=(option(14), option(28, 1)))
    of = figures(replace(shown, also_finished_as=("framed", "pillow")), piece())
    page = other_finishes(of)
    assert [view.kind for view in page.finishes] == ["framed", "pillow"]
    board = next(row for row in page.finishes[0].rows if row.name == "Mount board")
    # 84 stitches are 6 in at 14 count and 3 in at 28 over one; one stitch is 0.071 or 0.036 in high.
    assert board.cells == (
        ("8 × 2 1/8 in", "20.5 × 5.5 cm"),
        ("5 × 2 1/8 in", "13 × 5.5 cm"),
    )


def packet_html(*kinds: str) -> str:
    shown = pattern("m" * 84, cloths=(option(14),), also_finished_as=kinds)
    return packet(series(shown), figures(shown, piece()), b"cover", environment()).html


@pytest.mark.parametrize("kind", GENERIC_FINISHES)
def test_every_finish_that_can_be_asked_for_has_cuts_and_steps(kind):
    """Each kind has its table, and three numbered steps or more."""
    (made,) = generic_finishes((kind,), DESIGN)
    assert made.kind == kind and made.cuts
    section = packet_html(kind).partition("Other ways to finish it")[2].partition("</section>")[0]
    assert section.count("<li>") >= 3 and section.count("<tr>") == len(made.cuts) + 1
    assert ' in</span> <span class="unbroken">(' in section and "None" not in section


def test_a_packet_without_other_finishes_does_not_speak_of_them():
    assert "Other ways to finish it" not in packet_html()
