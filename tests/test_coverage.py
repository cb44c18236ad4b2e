"""How a thread covers the cloth: geometry, and what the trade usually does."""

import re
from dataclasses import replace
from math import pi, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Polygon

from packetgen.diagnostics import Problems
from packetgen.model import KeyLine, Stitch, Weave
from packetgen.reckon.coverage import (
    LAYER_MM,
    complain_of_coverage,
    coverage,
    coverage_at_counts,
    covered_share,
    diameter_mm,
    section_mm2,
)
from packetgen.reckon.figures import figures
from packetgen.reckon.sizes import cell_mm
from packetgen.reckon.thread import work_of
from packetgen.render.packet import packet
from packetgen.render.templates import environment
from packetgen.units import plain
from tests.stitching import CLAY, HERE, MOSS, card, option, pattern, piece, series, thread_set

SIX_PLY = card()  # cotton, six strands of 25 tex
TWELVE = replace(card(strands=1), id="twelve", name="Twelve", tex=50)  # used whole


# --- geometry -------------------------------------------------------------------------------------


def test_a_strand_of_25_tex_by_hand():
    """25 mg in a metre of cotton at 1.54 g/cm³, half of its room fibre: 0.025 / 0.77 = 0.03247 mm²."""
    assert section_mm2(SIX_PLY) == pytest.approx(0.032468, abs=1e-6)
    assert diameter_mm(SIX_PLY) == pytest.approx(0.20332, abs=1e-5)
    assert pi * diameter_mm(SIX_PLY) ** 2 / 4 == pytest.approx(section_mm2(SIX_PLY))


def test_a_soft_strand_is_a_little_thicker_than_a_spun_yarn_of_that_count():
    """Peirce's cotton yarn is 1/(28 √Ne) inch across (F. T. Peirce, The Geometry of Cloth Structure, 1937;
    from memory). Stranded cotton is twisted less, so it is thicker, but not by a fifth."""
    ne = 590.541 / 25
    spun = 25.4 / (28 * sqrt(ne))
    assert spun < diameter_mm(SIX_PLY) < 1.2 * spun


def test_silk_is_lighter_than_cotton_so_a_strand_of_one_weight_is_thicker():
    """1.54 against 1.34 g/cm³ (from memory); a fibre that is not known counts as cotton."""
    silk = replace(SIX_PLY, material="Filament silk")
    assert section_mm2(silk) / section_mm2(SIX_PLY) == pytest.approx(1.54 / 1.34)
    braid = replace(SIX_PLY, material="metallic braid")
    assert section_mm2(braid) == section_mm2(SIX_PLY)


@given(section=st.floats(0.001, 1.0), cell=st.floats(0.5, 4.0))
def test_the_covered_share_is_the_area_of_two_ribbons_laid_corner_to_corner(section, cell):
    """Against a general polygon library: two ribbons of width ΣA / t, cut off at the edge of the cell."""
    square = Polygon([(0, 0), (cell, 0), (cell, cell), (0, cell)])
    half = section / LAYER_MM / 2
    legs = [
        LineString([(-cell, -cell), (2 * cell, 2 * cell)]).buffer(half, cap_style="flat"),
        LineString([(-cell, 2 * cell), (2 * cell, -cell)]).buffer(half, cap_style="flat"),
    ]
    under = legs[0].union(legs[1]).intersection(square)
    assert covered_share(section, cell) == pytest.approx(under.area / square.area, abs=1e-9)


# --- what the trade does: common practice, no source ----------------------------------------------


@pytest.mark.parametrize(
    ("strands", "count", "over"),
    [
        (2, 14, 1),
        (2, 16, 1),
        (2, 28, 2),
        (2, 32, 2),
        (2, 18, 1),
        (2, 36, 2),
        (1, 25, 1),
        (1, 28, 1),
        (1, 32, 1),
        (3, 11, 1),
    ],
)
def test_the_usual_choices_cover_well(strands, count, over):
    found = coverage((SIX_PLY,), strands, cell_mm(count, over))
    assert (found.word, found.suggested_strands, found.better) == ("good", strands, None)


@pytest.mark.parametrize(
    ("strands", "count", "over", "word", "better"),
    [
        (1, 11, 1, "thin", 3),
        (2, 11, 1, "thin", 3),
        (1, 14, 1, "thin", 2),
        (1, 28, 2, "thin", 2),
        (1, 16, 1, "thin", 2),
        (4, 14, 1, "crowded", 2),
        (6, 14, 1, "crowded", 2),
        (3, 18, 1, "crowded", 2),
        (2, 28, 1, "crowded", 1),
        (2, 25, 1, "crowded", 1),
    ],
)
def test_choices_that_are_wrong_are_told_and_mended(strands, count, over, word, better):
    found = coverage((SIX_PLY,), strands, cell_mm(count, over))
    assert (found.word, found.suggested_strands, found.better) == (word, better, better)
    assert coverage((SIX_PLY,), better, cell_mm(count, over)).word == "good"


def test_one_strand_of_a_twelve_weight_covers_as_two_of_the_six_ply():
    """50 tex against two times 25: common practice, no source."""
    cell = cell_mm(28, 2)
    assert coverage((TWELVE,), 1, cell).share == pytest.approx(coverage((SIX_PLY,), 2, cell).share)


def test_where_no_number_of_strands_is_good_none_is_offered():
    """A thread used whole is thin on 8 count, and nothing can be added to it."""
    found = coverage((TWELVE,), 1, cell_mm(8, 1))
    assert (found.word, found.suggested_strands, found.better) == ("thin", 1, None)


def test_a_braid_is_never_more_than_one():
    braid = replace(SIX_PLY, braid=True)
    assert coverage((braid,), 1, cell_mm(11, 1)).suggested_strands == 1


# --- blends ---------------------------------------------------------------------------------------


def test_in_a_blend_the_sections_of_both_threads_add():
    """One strand of 25 tex with one of 50 covers as three of 25."""
    cell = cell_mm(14, 1)
    mixed = coverage((SIX_PLY, TWELVE), 2, cell)
    assert mixed.share == pytest.approx(coverage((SIX_PLY,), 3, cell).share)
    assert coverage((SIX_PLY, SIX_PLY), 2, cell).share == coverage((SIX_PLY,), 2, cell).share


def test_a_blend_is_never_advised_to_have_fewer_strands_than_colours():
    """Two threads used whole in one needle crowd, and one of them alone is no blend."""
    found = coverage((TWELVE, TWELVE), 2, cell_mm(14, 1))
    assert (found.word, found.suggested_strands, found.better) == ("crowded", 2, None)


# --- what must always hold ------------------------------------------------------------------------


@given(st.integers(1, 6), st.floats(8, 40))
def test_more_strands_and_finer_cloth_never_cover_less(strands, count):
    cell = cell_mm(count, 1)
    here = coverage((SIX_PLY,), strands, cell)
    assert 0 < here.share <= 1
    assert coverage((SIX_PLY,), strands + 1, cell).share >= here.share
    assert coverage((SIX_PLY,), strands, cell * 0.9).share >= here.share
    order = ("thin", "good", "crowded")
    finer = coverage((SIX_PLY,), strands, cell * 0.9)
    assert order.index(finer.word) >= order.index(here.word)


@given(st.integers(1, 6), st.floats(8, 40))
def test_what_is_offered_as_better_is_good(strands, count):
    found = coverage((SIX_PLY,), strands, cell_mm(count, 1))
    assert 1 <= found.suggested_strands <= 6
    if found.better is not None:
        assert coverage((SIX_PLY,), found.better, cell_mm(count, 1)).word == "good"
        assert found.word != "good"


# --- advice ---------------------------------------------------------------------------------------


def advice(of):
    problems = Problems()
    complain_of_coverage(of, work_of(of), problems)
    assert not problems.errors
    assert all(len(f"{problem.wrong}; {problem.right}") <= 220 for problem in problems)
    return [str(problem) for problem in problems]


def test_usual_choices_give_no_advice():
    cloths = (option(14), option(16), option(28, 2, Weave.EVENWEAVE), option(32, 2, Weave.LINEN))
    assert advice(pattern("mts", cloths=cloths)) == []


def test_a_strand_too_few_is_told_once_for_all_lines_with_that_needle():
    assert advice(pattern("mts", sets=(thread_set(1),))) == [
        "tests:1:1: advice: with 1 strand of Bramble for 'm', 't', 's', Cloth 14 is covered to 29 %, "
        "which looks thin; 2 strands would cover 53 %"
    ]


def test_each_cloth_has_a_line_of_its_own():
    said = advice(pattern("m", cloths=(option(11), option(14), option(28, 1, Weave.EVENWEAVE))))
    assert sorted(line.split("'m', ")[1].split(",")[0] for line in said) == [
        "Cloth 11 is covered to 44 %",
        "Cloth 28 is covered to 87 %",
    ]


def test_strands_of_a_key_line_are_judged_by_themselves():
    plain = pattern("mt")
    four = replace(plain.key[0], strands={"bramble": 4})
    (said,) = advice(pattern("mt", key=(four, *plain.key[1:])))
    assert "with 4 strands of Bramble for 'm', Cloth 14" in said
    assert said.endswith("which is crowded; 2 strands would cover 53 %")


def test_a_blend_of_whole_threads_that_crowds_is_told():
    both = KeyLine("m", Stitch.FULL, {"bramble": (MOSS, CLAY)}, {}, HERE)
    (said,) = advice(pattern("m", key=(both,), sets=(thread_set(1, TWELVE),)))
    assert "a blend of 2 strands of Twelve for 'm'" in said
    assert "one colour instead of the blend" in said


def test_half_stitches_and_unused_lines_are_not_judged():
    """A half stitch is meant to let the cloth show."""
    assert advice(pattern("mm", sets=(thread_set(1),), stitch=Stitch.HALF)) == []


# --- for the packet -------------------------------------------------------------------------------


def test_the_table_has_every_usual_count_and_the_pattern_s_own():
    """11 to 20 aida, 25 to 40 over one and over two (12.5 to 20), and a 30 over two that is offered."""
    rows = coverage_at_counts(pattern("m", cloths=(option(30, 2, Weave.LINEN), option(14))))
    assert [row.stitches_per_inch for row in rows] == [
        11, 12.5, 14, 15, 16, 18, 20, 25, 28, 32, 36, 40,
    ]  # fmt: skip
    assert [row.stitches_per_inch for row in rows if row.offered] == [14, 15]
    by_count = {row.stitches_per_inch: row.by_set[0].word for row in rows}
    assert (by_count[11], by_count[14], by_count[28]) == ("thin", "good", "crowded")


def test_figures_hold_the_coverage_of_every_cloth_and_set():
    sets = (thread_set(2), replace(thread_set(1, TWELVE), id="twelve"))
    key = (KeyLine("m", Stitch.FULL, {"bramble": (MOSS,), "twelve": (MOSS,)}, {}, HERE),)
    of = figures(pattern("m", key=key, sets=sets, cloths=(option(14), option(11))), piece())
    words = [[found.word for found in on.coverage] for on in of.cloths]
    assert words == [["good", "good"], ["thin", "thin"]]
    assert all(len(row.by_set) == 2 for row in of.coverage)


def test_the_packet_says_thin_and_what_would_do():
    of = pattern("m")
    page = packet(series(of), figures(of, piece()), b"cover", environment()).html
    table = page[page.index("How the thread covers") :].partition("</table>")[0]
    assert "Bramble, 2 strands</th><td>11</td><td>thin; 3 strands would be good</td>" in table
    assert "<tr><td>12.5, 14*, 16, 18, 20</td><td>good</td></tr>" in table
    assert "crowded; 1 strand would be good" in table
    every = [plain(at.stitches_per_inch) for at in figures(of, piece()).coverage]
    told = re.findall(r"<td>([\d., *]+)</td>", table)
    assert ", ".join(told).replace("*", "").split(", ") == every
