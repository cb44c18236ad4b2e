"""Yarn numbers against the published definitions, and what a thread card may say of its size."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.load import load_content
from packetgen.yarn_numbers import (
    DIRECT,
    INDIRECT,
    YarnNumber,
    from_tex,
    metres_in,
    read_yarn_number,
    to_tex,
)
from tests.content_builder import MOSS, build
from tests.outside import rows

TABLE = rows("yarn_numbers")  # ISO 1144, ASTM D861 and D2260; see the head of the file
SYSTEMS = ("tex", "dtex", "denier", "Nm", "Ne")
G_PER_POUND, M_PER_YARD = 453.59237, 0.9144


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("row", TABLE, ids=lambda row: row["case"])
def test_every_system_says_the_same_of_a_published_thread(row, system):
    """From each column of a row of the table all the other columns follow, to the table's four decimals."""
    tex = to_tex(system, float(row[system]))
    for other in SYSTEMS:
        # The start has four decimals itself, so the result is as fine as the coarser of the two.
        slack = 0.00005 * (1 + float(row[other]) / float(row[system]))
        assert from_tex(other, tex) == pytest.approx(float(row[other]), abs=2 * slack)


@pytest.mark.parametrize("row", TABLE, ids=lambda row: row["case"])
def test_a_weight_of_a_published_thread_has_its_published_length(row):
    """Metres in a gram, in a ball of 50 g, and yards in a pound."""
    tex = float(row["tex"])
    assert metres_in(1, tex) == pytest.approx(float(row["m_per_g"]), abs=0.00005, rel=1e-5)
    assert metres_in(50, tex) == pytest.approx(float(row["m_per_50g"]), rel=1e-5)
    yards = metres_in(G_PER_POUND, tex) / M_PER_YARD
    assert yards == pytest.approx(float(row["yd_per_lb"]), rel=1e-5)


@pytest.mark.parametrize(
    ("written", "case"),
    [
        ("tex 10", "tex 10"),
        ("25 tex", "tex 25"),
        ("250 dtex", "tex 25"),
        ("Nm 28", "Nm 28 (single)"),
        ("Nm 28/2", "Nm 28/2 resultant"),
        ("Ne 20", "Ne 20"),
        ("Ne 30/2", "Ne 30/2 resultant"),
        ("denier 150", "denier 150"),
        ("150 denier", "denier 150"),
        ("75 denier x 2", "denier 150"),
    ],
)
def test_a_label_is_read_as_its_published_tex(written, case):
    (row,) = (row for row in TABLE if row["case"] == case)
    assert read_yarn_number(written).tex == pytest.approx(float(row["tex"]), abs=0.00005)


def test_two_plies_of_a_count_are_one_thread_of_half_that_count():
    """Nm 34/2 is Nm 17 (the definition); Ne 50/2 is Ne 25."""
    assert read_yarn_number("Nm 34/2").tex == pytest.approx(to_tex("Nm", 17))
    assert read_yarn_number("Ne 50/2").tex == pytest.approx(to_tex("Ne", 25))
    assert read_yarn_number("ne50 / 2") == YarnNumber("Ne", 50, 2)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "25",
        "Ne",
        "Ne 0",
        "Nm 34/0",
        "12/2",
        "denier 120/2",
        "-5 tex",
        "Ne 12/2/3",
        "8 m",
        "٣ tex",
    ],
)
def test_what_is_no_yarn_number_is_not_guessed(text):
    """Also a stroke after a denier, which labels use in two ways."""
    assert read_yarn_number(text) is None


@given(st.sampled_from(SYSTEMS), st.sampled_from(SYSTEMS), st.floats(0.1, 5000))
def test_there_and_back_is_the_same_number(one, other, number):
    there = from_tex(other, to_tex(one, number))
    assert from_tex(one, to_tex(other, there)) == pytest.approx(number, rel=1e-12)


@given(st.sampled_from(SYSTEMS), st.floats(0.1, 5000))
def test_a_heavier_thread_has_more_tex_and_a_lower_count(system, number):
    heavier = from_tex(system, 2 * to_tex(system, number))
    assert heavier > number if system in DIRECT else heavier < number
    assert system in DIRECT or system in INDIRECT


# --- on a thread card -----------------------------------------------------------------------------


def moss(tmp_path, *changes):
    """The thread of the tiny folder after lines of its card are replaced."""
    text = build(tmp_path / "content").joinpath(MOSS).read_text("utf-8")
    for before, after in changes:
        assert text.count(before) == 1
        text = text.replace(before, after)
    content, problems = load_content(build(tmp_path / "content", {MOSS: text}))
    assert [str(problem) for problem in problems] == []
    return content.series[0].thread_sets[0].card


@pytest.mark.parametrize(
    ("size", "tex"), [("Ne 30/2", 39.3694), ("Nm 28/2", 71.4286), ("150 denier", 16.6667)]
)
def test_a_card_may_give_the_size_of_its_label(tmp_path, size, tex):
    """The tex of the published table."""
    assert moss(tmp_path, ("tex: 25", f"size: {size}")).tex == pytest.approx(tex, abs=0.00005)


def test_a_card_may_weigh_its_skein(tmp_path):
    """By hand: six strands of 25 tex are 150 g in 1000 m, so 1.2 g are 8 m."""
    assert moss(tmp_path, ("length: 8 m", "weight: 1.2 g")).length_m == pytest.approx(8.0)


def test_a_ball_of_five_grams_is_as_long_as_the_table_says(tmp_path):
    """25 m in a 5 g ball: a bundle of 200 tex."""
    ball = moss(
        tmp_path,
        ("strands: 6", "strands: 4"),
        ("tex: 25", "size: 50 tex"),
        ("length: 8 m", "weight: 5 g"),
    )
    assert ball.length_m == pytest.approx(25.0)
