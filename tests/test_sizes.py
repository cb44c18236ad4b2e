"""A chart becomes a size on a cloth."""

import pytest

from packetgen.model import Weave
from packetgen.reckon.sizes import FRAMING_MARGIN_MM, cell_mm, finished_size, usual_sizes
from packetgen.units import cut_inches
from tests.stitching import pattern


@pytest.mark.parametrize(
    ("count", "over", "stitches_per_inch"),
    [(14, 1, 14), (28, 2, 14), (32, 2, 16), (36, 2, 18), (25, 1, 25), (11, 1, 11)],
)
def test_stitches_in_an_inch_are_the_count_over_the_threads_crossed(count, over, stitches_per_inch):
    """28 count over two gives the same 14 stitches in an inch as 14 count aida: common practice, no source."""
    assert 25.4 / cell_mm(count, over) == pytest.approx(stitches_per_inch)


def test_eighty_four_stitches_on_fourteen_count_are_six_inches():
    """By hand: 84 / 14 = 6 in = 152.4 mm; 70 / 14 = 5 in."""
    size = finished_size(84, 70, cell_mm(14, 1))
    assert size.width_mm == pytest.approx(152.4)
    assert size.height_mm == pytest.approx(127.0)


def test_a_framer_gets_three_inches_on_every_side():
    """By hand: 6 × 5 in and twice 3 in make 12 × 11 in. The margin is common practice, no source."""
    cut = finished_size(84, 70, cell_mm(14, 1)).grown(FRAMING_MARGIN_MM)
    assert (cut_inches(cut.width_mm), cut_inches(cut.height_mm)) == ("12 in", "11 in")


def test_every_usual_count_has_a_row():
    rows = usual_sizes(pattern("mmmm", "mmmm"))
    counts = {(row.weave, row.count_per_inch, row.over) for row in rows}
    assert {(Weave.AIDA, c, 1) for c in (11, 14, 16, 18, 20)} <= counts
    assert {(Weave.EVENWEAVE, c, o) for c in (25, 28, 32, 36, 40) for o in (1, 2)} <= counts
    assert len(rows) == 15


def test_a_finer_cloth_makes_a_smaller_picture():
    aida = [row.finished.width_mm for row in usual_sizes(pattern("mm")) if row.weave is Weave.AIDA]
    assert aida == sorted(aida, reverse=True)
    assert len(set(aida)) == 5
