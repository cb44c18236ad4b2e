"""A chart that is mirrored, turned, cropped, shifted or bordered, as a design and in its author's files."""

import shutil
from dataclasses import replace

import numpy
import pytest
from click.testing import CliRunner
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from packetgen.chart_edit.change import bordered, mirrored, shifted, turned
from packetgen.chart_edit.design import in_order, lost, marks_used, moved
from packetgen.chart_edit.mentions import mentions
from packetgen.cli import main
from packetgen.diagnostics import Problems
from packetgen.load.content import load_content
from packetgen.model import BARE, Corner, Daisy, Fraction, Knot, Line, Stitch
from packetgen.model.extent import bare_margins
from packetgen.pipeline import proof
from packetgen.pipeline.chart_edits import NotSound, edit_chart
from tests.any_pattern import patterns
from tests.chart_folders import CHART_CSV, CHART_TXT, folders
from tests.content_builder import CHART, FERN, PATTERN, build, picture
from tests.demo_patterns import CONTENT, PATTERNS, SERIES
from tests.stitching import HERE, pattern

UNHURRIED = settings(
    derandomize=True,
    deadline=None,
    database=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)


# --- as a design ----------------------------------------------------------------------------------


def raster(one):
    """The design as numbers: each mark once a quarter of a cell, each point on a grid four times as fine.

    Half stitches and the corners of fractions show as the quarters that they cross or fill.
    """
    marks = {BARE: 0} | {line.mark: n for n, line in enumerate(one.key, 1)}
    wide, high = one.grid.width, one.grid.height
    quarters = numpy.zeros((2 * high, 2 * wide, len(one.fractions) + 1), int)
    quarters[:, :, 0] = numpy.kron(
        [[marks[mark] for mark in row] for row in one.grid.rows], numpy.ones((2, 2), int)
    )
    for n, fraction in enumerate(one.fractions, 1):
        block = quarters[2 * fraction.row - 2 : 2 * fraction.row, :, n]
        block = block[:, 2 * fraction.column - 2 : 2 * fraction.column]
        block += marks[fraction.mark] * filled(fraction)
    points = numpy.zeros((4 * high + 1, 4 * wide + 1), int)
    of_lines = [(line.mark, at) for line in one.lines for at in line.points]
    of_daisies = [(daisy.mark, at) for daisy in one.daisies for at in (daisy.base, daisy.tip)]
    of_knots = [(knot.mark, knot.at) for knot in one.knots]
    for mark, (x, y) in (*of_lines, *of_daisies, *of_knots):
        points[round(4 * y) - 4, round(4 * x) - 4] += 2 ** marks[mark]
    for bead in one.beads:
        points[round(4 * bead.at[1]) - 4, round(4 * bead.at[0]) - 4] += 1
    return numpy.sort(quarters, axis=2), points


def filled(fraction):
    """The quarters of a cell that a fractional stitch stands in."""
    if fraction.stitch is Stitch.HALF:
        return numpy.array([[0, 1], [1, 0]])
    if fraction.stitch is Stitch.HALF_BACK:
        return numpy.array([[1, 0], [0, 1]])
    at = list(Corner).index(fraction.corner)
    corner = numpy.array([n == at for n in range(4)], int).reshape(2, 2)
    return 1 - corner if fraction.stitch is Stitch.THREE_QUARTER else corner


def kept(one):
    """The pattern with every key line in use, so that none goes with what falls off."""
    small = [f for f in one.fractions if f.stitch.in_a_corner or f.corner is None]
    half = [replace(f, corner=None) for f in one.fractions if not f.stitch.in_a_corner]
    single = {(f.column, f.row): f for f in small + half}
    one = replace(one, fractions=tuple(single.values()))
    used = marks_used(one)
    return replace(one, key=tuple(line for line in one.key if line.mark in used))


def same(one, other):
    return all(numpy.array_equal(a, b) for a, b in zip(one, other))


@UNHURRIED
@given(patterns())
def test_a_mirrored_or_turned_design_is_its_picture_mirrored_or_turned(drawn):
    """numpy turns the picture, and knows nothing of corners, paths or half stitches."""
    one = kept(drawn)
    before = raster(one)
    for change, on_picture in (
        (mirrored(one.grid, True), numpy.fliplr),
        (mirrored(one.grid, False), numpy.flipud),
        (turned(one.grid, 90), lambda picture: numpy.rot90(picture, -1)),
        (turned(one.grid, 180), lambda picture: numpy.rot90(picture, 2)),
        (turned(one.grid, 270), numpy.rot90),
    ):
        assert same(raster(moved(one, change)), [on_picture(part) for part in before])


@UNHURRIED
@given(patterns(), st.tuples(*[st.integers(0, 5)] * 4))
def test_a_border_moves_the_design_and_a_crop_takes_the_border_off(drawn, sides):
    one = in_order(kept(drawn))
    left, right, top, bottom = sides
    wider = moved(one, bordered(one.grid, left, right, top, bottom))
    quarters, points = raster(wider)
    high, wide = one.grid.height, one.grid.width
    inner = quarters[2 * top : 2 * (top + high), 2 * left : 2 * (left + wide)]
    fine = points[4 * top : 4 * (top + high) + 1, 4 * left : 4 * (left + wide) + 1]
    assert same((inner, fine), raster(one))
    assert (quarters.sum(), points.sum()) == (inner.sum(), fine.sum())
    off = bordered(wider.grid, -left, -right, -top, -bottom)
    assert moved(wider, off) == one and not lost(wider, off)


@UNHURRIED
@given(patterns(), st.integers(-5, 5), st.integers(-5, 5))
def test_what_is_lost_and_what_stays_is_what_there_was(drawn, right, down):
    one = kept(drawn)
    change = shifted(one.grid, right, down)
    after, falling = moved(one, change), lost(one, change)

    def number(of, *words):
        return sum(each.number for each in of if each.what in words)

    def stitches(of):
        return sum(mark != BARE for row in of.grid.rows for mark in row)

    assert stitches(one) - stitches(after) == number(falling, "stitch")
    assert len(one.fractions) - len(after.fractions) == number(falling, "stitch of a close-up")
    assert len(one.knots) - len(after.knots) == number(falling, "French knot")
    assert len(one.beads) - len(after.beads) == number(falling, "bead")
    assert len(one.daisies) - len(after.daisies) == number(falling, "lazy daisy")
    stretches = [sum(len(line.points) - 1 for line in of.lines) for of in (one, after)]
    lines = number(falling, "stretch of backstitch", "long stitch")
    assert stretches[0] - stretches[1] == lines
    assert {line.mark for line in after.key} == marks_used(after)


def test_a_path_that_leaves_the_chart_and_comes_back_becomes_two():
    path = Line("m", ((1, 1), (2, 1), (2, 4), (3, 4), (3, 1), (4, 1)), False, HERE)
    one = pattern("mmm", "mmm", "...", lines=(path,))
    change = bordered(one.grid, 0, 0, 0, -1)
    after = moved(one, change)
    assert [line.points for line in after.lines] == [((1, 1), (2, 1)), ((3, 1), (4, 1))]
    assert [(each.number, each.what) for each in lost(one, change)] == [
        (3, "stretch of backstitch")
    ]


def test_half_stitches_lean_the_other_way_in_a_mirror_and_after_a_quarter_turn():
    one = pattern("mt", "..", stitch=Stitch.HALF)
    leaning = [
        (mirrored(one.grid, True), Stitch.HALF_BACK),
        (mirrored(one.grid, False), Stitch.HALF_BACK),
        (turned(one.grid, 90), Stitch.HALF_BACK),
        (turned(one.grid, 270), Stitch.HALF_BACK),
        (turned(one.grid, 180), Stitch.HALF),
        (bordered(one.grid, 1, 1, 1, 1), Stitch.HALF),
    ]
    for change, stitch in leaning:
        assert {line.stitch for line in moved(one, change).key} == {stitch}


def test_bare_margins_are_those_of_everything_that_is_worked():
    rows = ("......", "..m...", "......", "......")
    assert bare_margins(pattern(*rows)) == (2, 3, 1, 2)
    knot = Knot("m", (4.25, 1.0), HERE)  # reaches into the fourth column, and the first row's edge
    assert bare_margins(pattern(*rows, knots=(knot,))) == (2, 2, 0, 2)
    small = Fraction(6, 4, "m", Stitch.QUARTER, Corner.TOP_LEFT)
    assert bare_margins(pattern(*rows, fractions=(small,))) == (2, 0, 1, 0)
    daisy = Daisy("m", (1.0, 2.0), (2.0, 2.0), HERE)
    assert bare_margins(pattern(*rows, daisies=(daisy,))) == (0, 3, 1, 2)
    assert bare_margins(pattern("...", "...")) == (0, 0, 0, 0)


# --- in the author's files ------------------------------------------------------------------------


def read(folder, files, name="fern", series="garden-year"):
    """The pattern as it is read with these files; what is wrong otherwise."""
    content, problems = load_content(folder, frozenset({series}), files)
    assert content is not None, [str(problem) for problem in problems.errors]
    return next(one for one in content.series[0].patterns if one.id == name)


def edited(files, one, change):
    """The files after the change, without anything being written."""
    from packetgen.pipeline.chart_edits import _after

    return _after(files, one, change, marks_used(one) - marks_used(moved(one, change)))


def changes_of(grid):
    """Every kind of change, with all of its ways."""
    numbers = st.integers(0, 4)
    return st.one_of(
        st.booleans().map(lambda way: mirrored(grid, way)),
        st.sampled_from((90, 180, 270)).map(lambda degrees: turned(grid, degrees)),
        st.builds(shifted, st.just(grid), st.integers(-4, 4), st.integers(-4, 4)),
        st.builds(bordered, st.just(grid), *[numbers] * 4, st.sampled_from(BARE)),
        st.tuples(*[numbers] * 4)
        .filter(lambda off: off[0] + off[1] < grid.width and off[2] + off[3] < grid.height)
        .map(lambda off: bordered(grid, *(-number for number in off))),
    )


@pytest.fixture(scope="module")
def tiny(tmp_path_factory):
    """The tiny folder without its pattern's own files, which every drawn folder brings."""
    return build(tmp_path_factory.mktemp("tiny"), {CHART: None, PATTERN: None})


@settings(UNHURRIED, max_examples=150)
@given(folders(), st.data())
def test_edited_files_are_read_as_the_changed_design(tiny, files, data):
    """load(edit(files)) == change(load(files)), however the author writes, whatever falls off."""
    one = read(tiny, files)
    change = data.draw(changes_of(one.grid))
    wanted = moved(one, change)
    assume(marks_used(wanted))
    assert in_order(read(tiny, edited(files, one, change))) == wanted


@settings(UNHURRIED, max_examples=25)
@given(folders())
def test_four_turns_and_two_mirrors_give_the_same_bytes_back(tiny, files):
    one = read(tiny, files)
    for ways in (
        [lambda grid: turned(grid, 90)] * 4,
        [lambda grid: turned(grid, 180)] * 2,
        [lambda grid: turned(grid, 90), lambda grid: turned(grid, 270)],
        [lambda grid: mirrored(grid, True)] * 2,
        [lambda grid: mirrored(grid, False)] * 2,
        [lambda grid: bordered(grid, 1, 2, 3, 0), lambda grid: bordered(grid, -1, -2, -3, 0)],
    ):
        there, design = files, one
        for way in ways:
            there = edited(there, design, way(design.grid))
            design = read(tiny, there)
        assert there == files


def only(folder, name):
    """The demo's content with one pattern alone, which is read sooner."""
    others = shutil.ignore_patterns(*(other for other in PATTERNS if other != name))
    shutil.copytree(CONTENT, folder, ignore=others)
    series = folder / "series" / SERIES / "series.yaml"
    gone = {f"  - {other}" for other in PATTERNS if other != name}
    lines = series.read_text("utf-8").split("\n")
    series.write_text("\n".join(line for line in lines if line not in gone), "utf-8")
    return folder


@pytest.mark.parametrize("name", PATTERNS)
def test_the_demo_goes_along_whole_and_comes_back_to_the_byte(name, tmp_path):
    path, folder = f"series/{SERIES}/{name}", only(tmp_path / "content", name)
    one = read(folder, None, name, SERIES)
    files = {
        f"{path}/{file}": (CONTENT / path / file).read_bytes()
        for file in ("chart.txt", "pattern.yaml", "symbols.yaml")
    }
    grid, mark = one.grid, next(line.mark for line in one.key if not line.stitch.in_a_corner)
    for change in (
        mirrored(grid, True),
        mirrored(grid, False),
        turned(grid, 90),
        turned(grid, 180),
        turned(grid, 270),
        shifted(grid, 7, -5),
        bordered(grid, 3, 0, 2, 1),
        bordered(grid, 1, 1, 1, 1, mark),
        bordered(grid, -20, -25, -10, -30),
    ):
        after = read(folder, edited(files, one, change), name, SERIES)
        assert in_order(after) == moved(one, change)
    there, design = files, one
    for _ in range(4):
        there = edited(there, design, turned(design.grid, 90))
        design = read(folder, there, name, SERIES)
    assert there == files
    wide = edited(files, one, bordered(grid, 5, 5, 5, 5))
    design = read(folder, wide, name, SERIES)
    there = edited(wide, design, shifted(design.grid, -5, 4))
    design = read(folder, there, name, SERIES)
    assert edited(there, design, shifted(design.grid, 5, -4)) == wide


def test_only_what_says_a_place_is_written_anew(tiny):
    """Remarks, quotes, the order of names, decimals and blank lines stay as they are."""
    text = """\
# a fern, 1,1
title: Fern by the Tap
designer: alder
about: A fern uncurls.
occasion: {name: First warm day, on: second Sunday of May}

cloths:
  - {cloth: hopsack-28, colour: frost}
thread_sets: [moss, spool]
close_ups:
  - rows: |  # 9,9
      r/.k
      /kkk
    # after it
    at: 1,2
key:
  k: {moss: K4, spool: "12"}   # 2,2
  r:
    stitch:   half
    moss: E2
    spool: "10"
backstitch:

  # the stem: 3,3
  - path: '1,1  2.50,1
      2.5,2'
    colour: k
revisions:
  - {date: 2026-11-25, note: "4,4 was wrong."}
"""
    files = {
        PATTERN: text.encode(),
        CHART_TXT: b"# a fern\nr.k\n...\n\n",
    }
    wanted = (
        text.replace("r/.k\n      /kkk", "k.\\r\n      kkk\\")
        .replace("at: 1,2", "at: 2,2")
        .replace("stitch:   half", "stitch:   half back")
        .replace("'1,1  2.50,1\n      2.5,2'", "'4,1  2.50,1\n      2.5,2'")
    )
    one = read(tiny, files)
    after = edited(files, one, mirrored(one.grid, True))
    assert after[PATTERN].decode() == wanted
    assert after[CHART_TXT] == b"# a fern\nk.r\n...\n\n"


def test_a_table_keeps_its_separators_quotes_and_empty_cells(tiny):
    text = b'r; k ;\r\n;"k";r\r\n'
    files = {PATTERN: _plain_pattern(), CHART_CSV: text}
    one = read(tiny, files)
    assert one.grid.rows == ("rk.", ".kr")
    after = edited(files, one, turned(one.grid, 90))
    assert after[CHART_CSV] == b';r\r\n"k"; k \r\nr;\r\n'
    after = edited(files, one, bordered(one.grid, 1, 0, 0, 0))
    assert after[CHART_CSV] == b';r; k ;\r\n;;"k";r\r\n'
    after = edited(files, one, bordered(one.grid, -2, 0, 0, 0))
    assert after[CHART_CSV] == b".\r\nr\r\n"


def _plain_pattern():
    return b"""\
title: Fern by the Tap
designer: alder
about: A fern uncurls.
occasion: {name: First warm day, on: second Sunday of May}
cloths: [{cloth: hopsack-28, colour: frost}]
thread_sets: [moss]
key: {r: {moss: E2}, k: {moss: K4}}
revisions: [{date: 2026-11-25, note: First issue.}]
"""


# --- written --------------------------------------------------------------------------------------


def everything(folder):
    return {path: path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()}


def grid_of(folder):
    return read(folder, None).grid


def test_a_design_that_does_not_fit_is_looked_at_and_cropped(tmp_path):
    """Half of what is too much is taken off: a fault is left, and none has come."""
    folder = build(tmp_path / "content", {CHART: "\n".join(["rrbb" + "." * 296, "rr" + "." * 298])})
    before = proof(folder).problems.errors
    assert [one.code for one in before] == ["does-not-fit"]
    shown = CliRunner().invoke(main, ["chart", "alone", "fern", "--content", str(folder)])
    assert shown.exit_code == 0, shown.output
    edit_chart(folder, FERN, bordered(grid_of(folder), 0, -100, 0, 0))
    (after,) = proof(folder).problems.errors
    assert after.code == "does-not-fit" and after != before[0]
    edit_chart(folder, FERN, bordered(grid_of(folder), 0, -196, 0, 0))
    assert proof(folder).sound


def test_an_edit_that_makes_a_design_too_large_is_refused(tmp_path):
    folder = build(tmp_path / "content")
    before = everything(folder)
    with pytest.raises(NotSound):
        edit_chart(folder, FERN, bordered(grid_of(folder), 0, 300, 0, 0))
    assert everything(folder) == before


def test_a_full_disk_leaves_every_file_as_it_was(tmp_path, monkeypatch):
    """The second of two files cannot be exchanged: the first is put back."""
    folder = build(tmp_path / "content")
    before = everything(folder)
    import os

    real, calls = os.replace, []

    def full(source, target):
        calls.append(target)
        if len(calls) == 2:
            raise OSError(28, "No space left on device", str(target))
        real(source, target)

    monkeypatch.setattr("packetgen.write.together.os.replace", full)
    with pytest.raises(OSError):
        edit_chart(folder, FERN, turned(grid_of(folder), 90))
    assert len(calls) == 4 and everything(folder) == before


def test_a_photograph_and_the_thanks_for_it_do_not_go_along_with_a_copy(tmp_path):
    """Its photographer stays in the copy's file; whoever takes a photograph of it is thanked again."""
    from packetgen.pipeline.chart_edits import Copy

    thanked = "{model_stitcher: Hazel Penn, photographer: Flint Hale}"
    changes = {
        PATTERN: ("{model_stitcher: Hazel Penn}", thanked),
        f"{FERN}/photo.jpg": picture([["#a04030"]], "JPEG"),
    }
    folder = build(tmp_path / "content", changes)
    done = edit_chart(folder, FERN, turned(grid_of(folder), 90), to=Copy("fern-two", "Fern Two"))
    assert done.photo_left == "photo.jpg"
    copied = (folder / FERN).with_name("fern-two")
    assert not (copied / "photo.jpg").exists()
    assert "Flint Hale" in (copied / "pattern.yaml").read_text()
    assert not proof(folder).problems.errors


def test_a_copy_that_cannot_be_written_leaves_no_folder(tmp_path, monkeypatch):
    from packetgen.pipeline.chart_edits import Copy

    folder = build(tmp_path / "content")
    before = everything(folder)

    def full(source, target):
        raise OSError(28, "No space left on device", str(target))

    monkeypatch.setattr("packetgen.write.together.os.replace", full)
    with pytest.raises(OSError):
        edit_chart(folder, FERN, turned(grid_of(folder), 90), to=Copy("fern-two", "Fern Two"))
    assert everything(folder) == before and not (folder / FERN).with_name("fern-two").exists()


def test_instead_of_the_disk_other_files_are_read(tmp_path):
    """What a change checks before it writes: also a folder that is not there yet."""
    folder = build(tmp_path / "content")
    whole = {path.relative_to(folder).as_posix(): data for path, data in everything(folder).items()}
    elsewhere, problems = load_content(tmp_path, None, whole)
    there, _ = load_content(folder)
    assert list(problems.errors) == [] and elsewhere == there
    assert isinstance(problems, Problems)


# --- texts that speak of places --------------------------------------------------------------------


MIRRORED = mirrored(pattern("rb").grid, left_right=True)
UPSIDE_DOWN = mirrored(pattern("rb").grid, left_right=False)


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("Begin at the left edge.", "left"),
        ("On the right: three knots.", "right"),
        ("The top three rows are worked last.", None),
        ("Count the columns.", "columns"),
        ("The cloth is left bare there, and one knot is left out.", None),
        ("Stitch what you like.", None),
    ],
)
def test_a_line_that_speaks_of_a_side_is_one_to_look_at_after_mirroring(line, word):
    told = list(mentions("stitching.md", line, MIRRORED, "Fern"))
    assert [found for _, found in told] == ([word] if word else [])


def test_of_a_chart_upside_down_it_is_one_that_speaks_of_rows():
    for line, words in (
        ("The top three rows come last.", ["top, rows"]),
        ("Begin at the left.", []),
    ):
        told = mentions("stitching.md", line, UPSIDE_DOWN, "Fern")
        assert [found for _, found in told] == words


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("Begin on row 3.", ["row 3"]),
        ("Leave the last two columns.", ["last two columns"]),
        ("It is in the 12th row.", ["12th row"]),
        ("The shelf is three rows high.", []),
    ],
)
def test_of_a_chart_that_was_shifted_it_is_one_that_tells_a_row_by_its_place(line, words):
    told = mentions("stitching.md", line, shifted(pattern("rb").grid, 0, 1), "Fern")
    assert [found for _, found in told] == words


def test_a_side_or_a_row_in_the_title_is_no_word_about_the_chart():
    head = "# A Row of Beans. Look at the left row."
    ((place, word),) = mentions("chart.txt", head, MIRRORED, "A Row of Beans")
    assert (place.column, word) == (31, "left")


def test_the_field_of_a_close_up_is_no_word_about_rows():
    assert not list(mentions("pattern.yaml", "#    rows: |", UPSIDE_DOWN, "Fern"))
    ((place, word),) = mentions("pattern.yaml", "#  the rows above", UPSIDE_DOWN, "Fern")
    assert (place.line, place.column, word) == (1, 8, "rows")
