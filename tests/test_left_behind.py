"""Stitches that were moved since the last build, and what lies on them that was not."""

from dataclasses import replace

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.diagnostics import Place, Problems
from packetgen.model import Grid, Knot, Line
from packetgen.pipeline import proof
from packetgen.pipeline.packets import ledger_path
from packetgen.pipeline.since_built import with_left_behind
from packetgen.reckon.left_behind import Drawn, complain_of_left_behind, laid_on
from packetgen.render.ledger import ledger
from tests.content_builder import CHART, PATTERN, TINY, build
from tests.stitching import pattern

# A leaf of moss with a vein of soot at the left, and a pot of clay with two knots at the right.
ROWS = (
    "....................",
    "..mmm...............",
    ".mmmmm.....ttttt....",
    "..mmm......ttttt....",
    "...m........ttt.....",
    "....................",
)
VEIN = Line("s", ((3, 3), (5, 4)), False, Place("sprig/pattern.yaml", 10, 5))
RIM = Line("s", ((12, 3), (17, 3)), False, Place("sprig/pattern.yaml", 11, 5))
FOOT = Line("s", ((13, 6), (16, 6)), False, Place("sprig/pattern.yaml", 12, 5))
KNOTS = tuple(
    Knot("m", at, Place("sprig/pattern.yaml", 14, 22)) for at in ((13.5, 4.5), (15.5, 4.5))
)


def told(rows, lines=(VEIN, RIM, FOOT), knots=KNOTS) -> list[str]:
    was = pattern(*ROWS, lines=(VEIN, RIM, FOOT), knots=KNOTS)
    problems = Problems()
    now = replace(was, grid=Grid(tuple(rows), was.place), lines=lines, knots=knots)
    complain_of_left_behind(now, Drawn(was.grid.rows, frozenset(laid_on(was))), problems)
    return [str(one) for one in problems]


def shifted(rows, across):
    return tuple("." * across + row[:-across] for row in rows)


def with_pot_moved(across: int, down: int) -> tuple[str, ...]:
    """The pot alone moved to the right and down."""
    at = {
        (x + across, y + down): mark
        for y, row in enumerate(ROWS)
        for x, mark in enumerate(row)
        if mark == "t"
    }
    leaf = [row.replace("t", ".") for row in ROWS]
    return tuple(
        "".join(at.get((x, y), mark) for x, mark in enumerate(row)) for y, row in enumerate(leaf)
    )


def test_columns_put_before_a_chart_leave_all_that_lies_on_it_behind():
    assert told(shifted(ROWS, 2)) == [
        "sprig/pattern.yaml:10:5: advice: the stitches under this and what lines 11, 12 and 14 tell moved 2 columns"
        " to the right since the last build; add 2 to the first number of each point there, or put the stitches back;"
        " where it is meant, the next build ends this"
    ]


def test_a_motif_that_was_moved_leaves_its_own_behind_and_no_others():
    (line,) = told(with_pot_moved(2, 1))
    assert line.startswith("sprig/pattern.yaml:11:5: ")
    assert (
        "under this and what lines 12 and 14 tell moved 2 columns to the right and 1 row down since"
        in line
    )
    assert (
        "; add 2 to the first number and add 1 to the second number of each point there, or" in line
    )


def test_a_column_and_a_row_taken_off_leave_it_behind_too():
    (line,) = told((*(row[1:] + "." for row in ROWS[1:]), ROWS[0]))
    assert "moved 1 column to the left and 1 row up since" in line
    assert "; take 1 from the first number and take 1 from the second number of each point" in line


@pytest.mark.parametrize(
    "rows",
    [
        ROWS,
        # Single stitches, a leaf that is gone, and one in another colour: nothing was moved.
        (*ROWS[:4], "...mm.......tttt....", ROWS[5]),
        tuple(row.replace("m", ".") for row in ROWS),
        tuple(row.replace("t", "m") for row in ROWS),
    ],
)
def test_stitches_that_are_where_they_were_or_nowhere_are_not_told_as_moved(rows):
    assert told(rows) == []


# A lamp on bare cloth with a handle above it, a mast that stands on the ground, and a fly that touches neither.
LAMP = (
    "..........ttttt.....",
    "..........ttttt.....",
    "............m.......",
    "............m.......",
    "ssssssssssssssssssss",
)
HANDLE = Line(
    "s", ((11, 1), (11, -1), (16, -1), (16, 1)), False, Place("sprig/pattern.yaml", 10, 5)
)
ROOT = Line("t", ((13.5, 5), (11, 5.5)), False, Place("sprig/pattern.yaml", 11, 5))
FLY = Line("t", ((4, 2), (6, 2)), False, Place("sprig/pattern.yaml", 12, 5))
MAST = Line("t", ((2, 5), (2, 2)), False, Place("sprig/pattern.yaml", 13, 5))


def _with_all_moved(row: str, across: int) -> str:
    stitches = row.strip(".")
    return ("." * (row.index(stitches) + across) + stitches).ljust(len(row), ".")


@pytest.mark.parametrize(
    ("across", "lines"), [(3, "line 11 tells"), (-4, "line 11 tells"), (0, "")]
)
def test_what_is_hung_on_a_motif_and_lies_on_bare_cloth_goes_with_it(across, lines):
    was = pattern(*LAMP, lines=(HANDLE, ROOT, FLY, MAST))
    rows = [_with_all_moved(row, across) if "." in row else row for row in LAMP]
    problems = Problems()
    now = replace(was, grid=Grid(tuple(rows), was.place))
    complain_of_left_behind(now, Drawn(was.grid.rows, frozenset(laid_on(was))), problems)
    found = [str(one) for one in problems]
    assert len(found) == bool(across)
    for line in found:
        assert (
            line.startswith("sprig/pattern.yaml:10:5: ") and f"under this and what {lines}" in line
        )


def test_what_was_moved_along_is_right_where_it_is():
    along = [
        replace(line, points=tuple((x + 2, y) for x, y in line.points))
        for line in (VEIN, RIM, FOOT)
    ]
    knots = [replace(knot, at=(knot.at[0] + 2, knot.at[1])) for knot in KNOTS]
    assert told(shifted(ROWS, 2), lines=tuple(along), knots=tuple(knots)) == []


# --- as proof tells it, from the folder of the last build -----------------------------------------


WIDER = "rrbb......\nrk........\nrk........\n"
MOVED = "......rrbb\n......rk..\n......rk..\n"
CALM = {
    PATTERN: TINY[PATTERN].partition("close_ups")[0]
    + "revisions"
    + TINY[PATTERN].partition("revisions")[2]
}


@pytest.fixture
def desk(tmp_path, monkeypatch):
    """The tiny pattern on a wider chart, and the ledger of its build."""
    monkeypatch.chdir(tmp_path)
    content = build(tmp_path / "content", CALM | {CHART: WIDER})
    (each,) = proof(content).reckoned
    path = tmp_path / "build" / ledger_path(each.series.id, each.figures[0].pattern.id)
    path.parent.mkdir(parents=True)
    path.write_bytes(ledger(each.series, each.figures[0], {}))
    (content / CHART).write_text(MOVED)
    return tmp_path


def moved(*arguments: str) -> list[str]:
    said = CliRunner().invoke(main, ["proof", *arguments]).output
    return [line for line in said.splitlines() if "[stitches-moved]" in line]


def test_proof_looks_at_the_build_beside_the_content(desk):
    (line,) = moved()
    assert line.startswith(f"content/{PATTERN}:13:5: advice: the stitches under this")
    assert "moved 6 columns to the right" in line


def test_it_can_be_laid_aside(desk):
    file = desk / "content" / PATTERN
    entry = "laid_aside: [{advice: stitches-moved, because: it shall float}]\n"
    file.write_text(file.read_text() + entry)
    assert moved() == []
    assert with_left_behind(proof(desk / "content"), desk / "build").aside


@pytest.mark.parametrize("text", ["", "{", "[]", '{"pattern": {"chart": 3}}', "[" * 9999])
def test_a_ledger_that_cannot_be_read_tells_nothing(desk, text):
    (ledger_of,) = (desk / "build").rglob("fern.json")
    ledger_of.write_text(text)
    assert moved() == []


def test_where_nothing_was_built_nothing_is_told(desk):
    (desk / "build").rename(desk / "elsewhere")
    assert moved() == []
