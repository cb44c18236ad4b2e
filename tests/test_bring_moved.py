"""A drawing that is brought in again with another edge: what lay on the old chart would lie beside its place."""

import re

from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st

from packetgen.bring.moved import moved
from packetgen.cli import main
from packetgen.model import BARE
from tests.content_builder import CHART, MOSS, PATTERN, TINY, build, picture

OLD = ("ab.c", "b.aa", "cc.b")


def bordered(rows, left, right, top, bottom, mark=BARE):
    wide = len(rows[0]) + left + right
    return (
        *(mark * wide,) * top,
        *(mark * left + row + mark * right for row in rows),
        *(mark * wide,) * bottom,
    )


margins = st.tuples(*(st.integers(0, 6) for _ in range(4)))


@given(margins, st.sampled_from((BARE, "g")))
def test_a_chart_with_an_edge_lies_as_far_in_as_its_edge_is_wide(of, mark):
    left, _, top, _ = of
    assert moved(OLD, bordered(OLD, *of, mark)) == (left, top)


@given(margins)
def test_a_chart_whose_edge_was_trimmed_lies_as_far_out(of):
    left, _, top, _ = of
    assert moved(bordered(OLD, *of), OLD) == (-left, -top)


def test_another_drawing_lies_nowhere_in_it():
    other = bordered(("aaaa", "aaaa", "aaaa"), 1, 2, 1, 0)
    assert moved(OLD, other) == (0, 0)
    assert moved(("....",), OLD) == (0, 0), "nothing is stitched"


def test_a_stitch_that_was_mended_does_not_hide_where_a_chart_lies():
    rows = [*("abcabcabcabc",) * 4]
    mended = bordered([rows[0].replace("c", "a", 1), *rows[1:]], 3, 0, 2, 0)
    assert moved(rows, mended) == (3, 2)


def test_a_drawing_brought_in_without_the_options_of_the_first_time_is_told_with_them(
    tmp_path, monkeypatch
):
    """The white of the paper is stitched then, and the lines lie beside their places."""
    frost = TINY[MOSS].replace(
        "colours:\n", 'colours:\n  - {number: F1, name: frost, hex: "#fdfdfd"}\n'
    )
    one_set = re.sub(r", spool(: (\[.*?\]|\"..\"))?", "", TINY[PATTERN])
    plain = re.sub(r"close_ups:(\n  .*)+", "", one_set)
    build(tmp_path / "content", {MOSS: frost, PATTERN: plain, CHART: "rrbb\nrkkk\n"})
    monkeypatch.chdir(tmp_path)

    def bring(drawn, *how: str) -> str:
        (tmp_path / "design.png").write_bytes(picture(drawn))
        words = ["bring", "design.png", "--pattern", "fern", "--replace", *how]
        result = CliRunner().invoke(main, words)
        assert result.exit_code == 0, result.output
        return result.output

    design = [["#a04030", "#6b503a", "#4f7942", "#a04030"] * 3] * 6
    paper = [["#ffffff"] * 16] * 2
    drawn = [*paper, *(["#ffffff"] * 2 + row + ["#ffffff"] * 2 for row in design), *paper]
    said = bring(drawn, "--bare", "#ffffff", "--trim")
    assert "stays on the new one: " in said and "farther" not in said
    said = bring(drawn)
    assert (
        "The old chart was 12 × 6 stitches, and lies in the new one 2 columns farther to the right and 2 rows farther "
        "down, so all that stays lies beside its place: bring the drawing in again with the same --bare and --trim as "
        "before, or change each number by as much."
    ) in said
    last, next_step = said.splitlines()[-2:]
    assert last.startswith("The ground #ffffff is stitched, see above; ") and "Next: " in next_step


def test_a_chart_without_a_row_lies_nowhere():
    assert moved((), OLD) == moved(OLD, ()) == (0, 0)
