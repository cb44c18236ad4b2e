"""A drawing that is brought in again with another edge: what lay on the old chart would lie beside its place."""

import re

import pytest
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


@pytest.fixture
def bring(tmp_path, monkeypatch):
    """A pattern with backstitch and a knot, whose drawing is brought in; what is said, and what pattern.yaml is then."""
    frost = TINY[MOSS].replace(
        "colours:\n", 'colours:\n  - {number: F1, name: frost, hex: "#fdfdfd"}\n'
    )
    one_set = re.sub(r", spool(: (\[.*?\]|\"..\"))?", "", TINY[PATTERN])
    plain = re.sub(r"close_ups:(\n  .*)+", "", one_set)
    build(tmp_path / "content", {MOSS: frost, PATTERN: plain, CHART: "rrbb\nrkkk\n"})
    monkeypatch.chdir(tmp_path)

    def brought(drawn, *how: str) -> tuple[str, str]:
        (tmp_path / "design.png").write_bytes(picture(drawn))
        words = ["bring", "design.png", "--pattern", "fern", "--replace", *how]
        result = CliRunner().invoke(main, words)
        assert result.exit_code == 0, result.output
        return result.output, (tmp_path / "content" / PATTERN).read_text()

    return brought


def with_edge(design, columns: int, rows: int, paper: str = "#ffffff"):
    wide = [[paper] * columns + row + [paper] * columns for row in design]
    edge = [[paper] * len(wide[0])] * rows
    return [*edge, *wide, *edge]


DESIGN = [["#a04030", "#6b503a", "#4f7942", "#a04030"] * 3] * 6


def lying(pattern: str) -> list[str]:
    """Whatever says where something lies."""
    return re.findall(r"(?:path|at): (\"[^\"]*\"|[\d.,]+)", pattern)


def test_what_lay_on_a_chart_is_moved_along_with_its_stitches(bring):
    """The white of the paper is stitched the second time, so all lies 2 columns and 3 rows farther in."""
    drawn = with_edge(DESIGN, 2, 3)
    said, before = bring(drawn, "--bare", "#ffffff", "--trim")
    assert "stays on the new one: " in said and "farther" not in said
    said, farther = bring(drawn)
    assert (
        "The old chart was 12 × 6 stitches, and lies in the new one 2 columns farther to the right and 3 rows farther "
        "down: all that stays was moved along, and is kept as it was beside it."
    ) in said
    points = [re.findall(r"[\d.]+", one) for one in (*lying(before), *lying(farther))]
    old, new = points[: len(points) // 2], points[len(points) // 2 :]
    assert old and [[float(one) for one in of] for of in new] == [
        [float(one) + (3 if n % 2 else 2) for n, one in enumerate(of)] for of in old
    ]
    last, next_step = said.splitlines()[-2:]
    assert last.startswith("The ground #ffffff is stitched, see above; ") and "Next: " in next_step
    said, again = bring(drawn, "--bare", "#ffffff", "--trim")
    assert "2 columns farther to the left and 3 rows farther up: all that stays was moved" in said
    assert lying(again) == lying(before)


def test_a_border_that_was_added_and_is_gone_again_takes_nothing_beside_its_place(bring):
    """`chart border` moves all by 3, so the drawing without its border moves all back."""
    said, before = bring(DESIGN)
    done = CliRunner().invoke(main, ["chart", "border", "fern", "3"])
    assert done.exit_code == 0, done.output
    said, after = bring(DESIGN)
    assert (
        "The old chart was 18 × 12 stitches, and lies in the new one 3 columns farther to" in said
    )
    assert lying(after) == lying(before)


def test_where_something_would_fall_off_all_stays_and_is_told(bring, tmp_path):
    """Of a knot on the bare edge nobody knows where it shall lie on a chart without that edge."""
    drawn = with_edge(DESIGN, 2, 2)
    _, before = bring(drawn, "--bare", "#ffffff")
    (tmp_path / "content" / PATTERN).write_text(
        before.replace("french_knots:\n", 'french_knots:\n  - {colour: r, at: "1,1"}\n', 1)
    )
    said, after = bring(drawn, "--bare", "#ffffff", "--trim")
    assert (
        "The old chart was 16 × 10 stitches, and lies in the new one 2 columns farther to the left and 2 rows farther "
        "up. The numbers of what lies on it stay as they were: right if you wrote them for the new one; else change each "
        "by as much, or bring the drawing in again with the same --bare and --trim as before."
    ) in said
    assert lying(after) == sorted(lying(before) + ['"1,1"'], key=lying(after).index)


def test_a_chart_without_a_row_lies_nowhere():
    assert moved((), OLD) == moved(OLD, ()) == (0, 0)
