"""What a series says of how its stitchers work reaches every figure of thread, and the packet says it."""

import re

import pytest

from packetgen.load import load_content
from packetgen.model import Assumptions, Ease
from packetgen.pipeline import proof
from packetgen.reckon.figures import figures
from packetgen.render.packet import packet
from packetgen.render.templates import environment
from tests.content_builder import SERIES, build
from tests.stitching import pattern, piece, series


def loaded(tmp_path, block: str) -> Assumptions:
    changed = ("finish: shelf", f"reckoning: {block}\nfinish: shelf")
    content, problems = load_content(build(tmp_path, {SERIES: changed}))
    assert [str(problem) for problem in problems] == []
    return content.series[0].assumptions


def test_a_series_that_says_nothing_is_reckoned_as_usual(tmp_path):
    """45 cm, two tails of 4 cm, five stitches; 13, 18 and 25 %: common practice, no source."""
    content, _ = load_content(build(tmp_path))
    assumed = content.series[0].assumptions
    assert (assumed.needleful_mm, assumed.tail_mm, assumed.travel_stitches) == (450, 40, 5)
    assert assumed.ease == Ease(0.13, 0.18, 0.25)


def test_what_a_series_says_counts_and_the_rest_is_as_usual(tmp_path):
    """In any unit; a yard is 914.4 mm, exactly (international yard and pound agreement, 1959)."""
    assert loaded(tmp_path / "1", "{needleful: 1 yd}") == Assumptions(needleful_mm=914.4)
    assert loaded(tmp_path / "2", "{tail: 2 in, travel: 3}") == Assumptions(
        tail_mm=50.8, travel_stitches=3
    )
    assert loaded(tmp_path / "3", "{ease: {generous: 33.5 %}}") == Assumptions(
        ease=Ease(generous=0.335)
    )
    assert loaded(tmp_path / "4", "{ease: {careful: 0 %, usual: 0 %, generous: 0 %}}") == (
        Assumptions(ease=Ease(0, 0, 0))
    )


def test_a_needleful_may_leave_just_enough_between_its_tails(tmp_path):
    """5 cm of 25 cm are left: enough, and no complaint."""
    assumed = loaded(tmp_path, "{needleful: 25 cm, tail: 10 cm}")
    assert assumed == Assumptions(needleful_mm=250, tail_mm=100)


def test_every_figure_of_thread_is_reckoned_by_the_series_own_assumptions(tmp_path):
    """Shorter needlefuls lose more tails: what the whole tiny series needs is reckoned with them."""
    block = "{needleful: 20 cm, tail: 7 cm, travel: 1}"
    changed = ("finish: shelf", f"reckoning: {block}\nfinish: shelf")
    usual, own = (
        proof(build(tmp_path / str(number), changes)).reckoned[0].figures[0]
        for number, changes in enumerate(({}, {SERIES: changed}))
    )
    assert own.assumptions == Assumptions(needleful_mm=200, tail_mm=70, travel_stitches=1)
    for on, on_usual in zip(own.cloths, usual.cloths):
        for (_, needs), (_, needs_usual) in zip(on.needs, on_usual.needs):
            for need, need_usual in zip(needs, needs_usual):
                assert need.strand.usual_m > need_usual.strand.usual_m
    assert own.beads[0].strand.usual_m > usual.beads[0].strand.usual_m


def test_travel_decides_what_is_one_patch():
    """By hand: crosses three columns apart, one strand and no ease. A travel of three joins them: one
    pair of tails and two cells of travel; a travel of two does not."""
    none = Ease(0, 0, 0)
    cell = 25.4 / 14
    crosses = 2 * (2 * 2**0.5 + 2) * cell
    for travel, by_hand in ((3, crosses + 2 * cell + 80), (2, crosses + 2 * 80)):
        of = figures(
            pattern("m..m"), piece(), assumptions=Assumptions(travel_stitches=travel, ease=none)
        )
        ((thread_set, needs),) = of.cloths[0].needs
        assert needs[0].strand.usual_m * 1000 / thread_set.strands == pytest.approx(by_hand)


def sentence(assumed: Assumptions) -> str:
    """The first paragraph of the page of what to buy, in plain text."""
    of = figures(pattern("mmts"), piece(), assumptions=assumed)
    html = packet(series(of.pattern), of, b"cover", environment()).html
    (found,) = re.findall(r"What to buy is reckoned generously: (.*?)</p>", html)
    return re.sub("<[^>]*>", "", found)


def test_the_packet_says_how_thread_was_reckoned_in_two_sentences():
    said = sentence(Assumptions())
    for figure in ("25 %", "18 %", "13 %", "17 3/4 in (45 cm)", "1 5/8 in (4 cm)", "5 stitches"):
        assert figure in said
    assert said.count(".") == 2 and said.endswith(".")


def test_no_figure_of_these_sentences_is_typed():
    """With other assumptions every figure is another."""
    other = Assumptions(609.6, 50.8, 1, Ease(0.05, 0.125, 0.4))
    said = sentence(other)
    assert re.findall(r"[\d./]+(?: \d/\d)?(?= %| in| cm| stitch)", said) == [
        "40", "24", "60.96", "2", "5.08", "1", "12.5", "5",
    ]  # fmt: skip
    assert "1 stitch away" in said
