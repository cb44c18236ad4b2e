"""'39,5 23,5' is two points, unless none of them is on a stitch and the one point 39.5,23.5 is."""

import pytest

from packetgen.load.content import load_content
from tests.content_builder import CHART, PATTERN, build

# Worked in columns 1–4 of row 1 and 1–2 of row 2.
BARE_BELOW = "rrbb........\nrk..........\n" + "............\n" * 6


def told(folder, pattern: tuple[str, str]) -> list[str]:
    _, problems = load_content(build(folder, {CHART: BARE_BELOW, PATTERN: pattern}))
    return [one.right for one in problems if one.code == "points-on-bare"]


@pytest.mark.parametrize(
    ("at", "right"),
    [
        ("1,5 2,5", "1.5,2.5, which is on stitches"),
        ("2,5 2,25", "2.5,2.25, which is on stitches"),
        ("2,75 2,5", "2.75,2.5, which is on stitches"),
        ("1,5 2,5 2,5 1,5", "1.5,2.5 2.5,1.5, which are on stitches"),
        ("1,5 2,5 3,5", ""),  # no pairs
        ("1,4 2,4", ""),  # four tenths of a stitch are no place
        ("1,5 2.25,5", ""),  # she writes full stops
        ("3,5 4,5", ""),  # 3.5,4.5 lies on bare cloth too
        ("1,5 2,5 9,5 8,5", ""),  # and so does 9.5,8.5
        ("4,1 2,5", ""),  # on a stitch as it is
        ("1,5 2,2", ""),
    ],
)
def test_knots_on_bare_cloth_may_be_one_on_a_stitch(tmp_path, at, right):
    found = told(tmp_path, ('at: "2.5,2.5 3,3"', f'at: "{at}"'))
    assert found == ([f"if their commas are those of decimals, write {right}"] if right else [])


def test_a_bead_is_told_and_a_line_only_where_it_would_still_be_one(tmp_path):
    (bead,) = told(tmp_path / "a", ('at: "3.5,1.5"', 'at: "2,5 1,5"'))
    assert "write 2.5,1.5, which" in bead
    (line,) = told(tmp_path / "b", ("1,1 4,1 4,2.5", "1,5 2,5 2,5 1,5"))
    assert "write 1.5,2.5 2.5,1.5, which are" in line
    assert not told(tmp_path / "c", ("1,1 4,1 4,2.5", "1,5 2,5"))
