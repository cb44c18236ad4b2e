"""`packetgen chart`: a chart looked at and edited by an author at her terminal."""

import re
from dataclasses import replace
from itertools import product

import pytest
from click.testing import CliRunner
from coloraide import Color

from packetgen.cli import main
from packetgen.model import Colour
from packetgen.reckon.alike import alike
from packetgen.reckon.colour_counts import colour_counts, line_counts
from packetgen.reckon.figures import figures
from packetgen.render.chart_tables import alike_list, alone_list
from packetgen.render.terminal import Depth, depth_of, nearest_of_256
from packetgen.render.terminal_chart import terminal_chart
from tests.content_builder import CHART, FERN, PATTERN, TINY, build, picture
from tests.demo_patterns import CONTENT, PATTERNS
from tests.stitching import CLAY, MOSS, card, pattern, piece, thread_set

CHANGED_TOO = f"{FERN}/symbols.yaml"
LEAN = (
    PATTERN,
    (
        '  b: {moss: [E2, "07"]',
        '  h: {moss: "07", spool: "14", stitch: half}\n  b: {moss: [E2, "07"]',
    ),
)


def said(content, *words, code=0):
    """What the command says, on both outputs together."""
    result = CliRunner().invoke(main, ["chart", *words, "--content", str(content)])
    assert result.exit_code == code, result.output
    return result.output


def everything(folder):
    return {path: path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()}


# --- show -----------------------------------------------------------------------------------------


def looked_at(text):
    """Lines of (character, ink, paper) of a text with 24-bit escapes."""
    lines, ink, paper = [], None, None
    for line in text.split("\n"):
        cells = []
        for escape, character in re.findall(r"\x1b\[([\d;]*)m|([^\x1b])", line):
            for layer, *channels in re.findall(r"([34]8);2;(\d+);(\d+);(\d+)", escape):
                colour = "#" + "".join(f"{int(channel):02x}" for channel in channels)
                ink, paper = (colour, paper) if layer == "38" else (ink, colour)
            if escape == "0":
                ink, paper = None, None
            if character:
                cells.append((character, ink, paper))
        lines.append(cells)
    return lines


def test_without_colours_a_chart_is_its_marks_with_a_number_at_every_tenth_row():
    one = pattern(*("mt." * 4 for _ in range(11)))
    lines = terminal_chart(figures(one, piece()), Depth.NONE, None, False).split("\n")
    assert lines[0] == "           10"
    assert lines[1] == "   ---------|--"
    assert lines[2:13] == [
        f"{'10' if number == 10 else '':>2} {row}" for number, row in enumerate(one.grid.rows, 1)
    ]


def test_in_colour_a_line_shows_two_rows_of_stitches():
    one = pattern("mt", ".m", "tt")
    lines = looked_at(terminal_chart(figures(one, piece()), Depth.EVERY, None, False))
    first, second = lines[1], lines[2]  # below the ticks
    cloth = one.cloths[0].colour.hex
    assert first[-2:] == [("▀", MOSS.hex, cloth), ("▀", CLAY.hex, MOSS.hex)]
    assert second[-2:] == [("▀", CLAY.hex, None)] * 2  # below the last row there is nothing


def test_large_stitches_have_their_mark_in_an_ink_that_is_read():
    one = pattern("mt.")
    lines = looked_at(terminal_chart(figures(one, piece()), Depth.EVERY, None, True))
    shown = lines[1][-6:]
    assert "".join(character for character, _, _ in shown) == "m t . "
    assert [paper for _, _, paper in shown[::2]] == [MOSS.hex, CLAY.hex, "#ffffff"]
    for _, ink, paper in shown:
        assert Color(ink).contrast(paper, method="wcag21") >= 4.5


@pytest.mark.parametrize(("name", "depth"), product(PATTERNS, Depth))
def test_no_line_of_a_chart_is_wider_than_the_terminal_and_no_stitch_is_left_out(demo, name, depth):
    (each,) = demo.reckoned
    of = next(figure for figure in each.figures if figure.pattern.id == name)
    text = terminal_chart(of, depth, 50, depth is Depth.MANY)
    plain = re.sub(r"\x1b\[[\d;]*m", "", text).split("\n\n")[:-1]
    grid = of.pattern.grid
    margin = len(str(grid.height)) + 1
    assert all(len(line) <= 50 for strip in plain for line in strip.split("\n"))
    strips = [
        [line[margin:] for line in strip.split("\n") if not set(line) <= set(" -|0123456789")]
        for strip in plain
    ]
    rows = ["".join(parts) for parts in zip(*strips)]
    if depth is Depth.EVERY:
        assert rows == ["▀" * grid.width] * -(-grid.height // 2)
        return
    across = 2 if depth is Depth.MANY else 1
    small = {(one.column, one.row) for one in of.pattern.fractions}
    assert [row[::across] for row in rows] == [
        "".join(
            rows[y][x * across] if (x + 1, y + 1) in small else mark for x, mark in enumerate(row)
        )
        for y, row in enumerate(grid.rows)
    ]


@pytest.mark.parametrize(
    ("environment", "on_terminal", "depth"),
    [
        ({"COLORTERM": "truecolor", "TERM": "xterm-256color"}, True, Depth.EVERY),
        ({"COLORTERM": "24bit"}, True, Depth.EVERY),
        ({"TERM": "screen-256color"}, True, Depth.MANY),
        ({"TERM": "vt100"}, True, Depth.NONE),
        ({"COLORTERM": "truecolor", "NO_COLOR": "1"}, True, Depth.NONE),
        ({"COLORTERM": "truecolor", "NO_COLOR": ""}, True, Depth.EVERY),
        ({"COLORTERM": "truecolor", "TERM": "dumb"}, True, Depth.NONE),
        ({"COLORTERM": "truecolor"}, False, Depth.NONE),
    ],
)
def test_colours_are_those_that_the_terminal_says_it_has(environment, on_terminal, depth):
    assert depth_of(environment, on_terminal) is depth


def test_the_nearest_of_256_colours_is_the_nearest_by_another_library_too():
    """coloraide's CIEDE2000; the table of terminals is from memory."""
    steps = (0, 95, 135, 175, 215, 255)
    table = {
        16 + 36 * r + 6 * g + b: Color("srgb", [steps[n] / 255 for n in (r, g, b)])
        for r in range(6)
        for g in range(6)
        for b in range(6)
    } | {232 + n: Color("srgb", [(8 + 10 * n) / 255] * 3) for n in range(24)}
    assert [nearest_of_256(colour) for colour in ("#000000", "#ffffff", "#5f0000")] == [16, 231, 52]
    for colour in (MOSS.hex, CLAY.hex, "#5d6265", "#f2f2ee"):
        found = table[nearest_of_256(colour)].delta_e(colour, method="2000")
        least = min(one.delta_e(colour, method="2000") for one in table.values())
        assert found == pytest.approx(least, abs=0.05)


def test_half_stitches_and_fractions_let_the_cloth_show(tmp_path):
    content = build(tmp_path / "content")
    shown = said(content, "show", "fern", "--colours", "24-bit", "--width", "80")
    colours = {colour for line in looked_at(shown) for _, *both in line for colour in both}
    # Peat #6b503a on frost #f2f2ee: three quarters of it (0.75 × 107 + 0.25 × 242 = 141), and one.
    assert {"#6b503a", "#8d7867", "#d0cac1"} <= colours


# --- counts ---------------------------------------------------------------------------------------


def test_counts_of_the_demo_are_those_of_its_figures(demo):
    (each,) = demo.reckoned
    for of in each.figures:
        counts = colour_counts(of)
        assert sum(count.in_cells for count in counts) == of.stitches
        assert sum(count.knots for count in counts) == len(of.pattern.knots)
        assert sum(count.daisies for count in counts) == len(of.pattern.daisies)
        assert sum(count.long_stitches for count in counts) == sum(
            line.long for line in of.pattern.lines
        )
        assert [line for count in line_counts(of) for line in count.lines] == list(of.pattern.key)
        model = of.pattern.thread_sets[0].id
        needles = [frozenset(count.lines[0].threads[model]) for count in counts]
        assert len(set(needles)) == len(needles)  # each colour, or blend, has one line


def test_a_table_of_counts_leaves_out_what_does_not_occur(tmp_path):
    """Worked by hand: crosses of r, k and the blend; a three-quarter and a quarter stitch; sides 3 and 1.5 long."""
    content = build(tmp_path / "content")
    lines = said(content, "count", "fern").split("\n")
    assert lines[:5] == [
        "Moss Stranded             whole  fractional  backstitch  knots",
        "r  E2 brick                   3                              2",
        "k  K4 peat                    1           2         4.5",
        "b  E2 brick with 07 fern      2",
        "all together                  6           2         4.5      2",
    ]
    assert lines[5] == "1 bead: Drop Glass 07 hip red"
    # Sides of two threads of 28 to the inch: 4.5 × 25.4 / 14 = 8.2 mm.
    assert lines[6].endswith("in all 0.8 cm on Hopsack 28.")


def test_stitches_that_stand_alone_are_told_with_column_and_row():
    one = pattern("mm..t", "mm...", "....m", "t....", "t....")
    text = alone_list(figures(one, piece()))
    assert text.split("\n") == [
        "2 of 8 stitches (25.0 %) have no other of their colour beside them (column,row):",
        "m  M1 moss: 5,3",
        "t  T1 clay: 5,1",
    ]
    assert alone_list(figures(pattern("mm"), piece())).endswith("beside them.")


# --- colours alike --------------------------------------------------------------------------------

NEARLY_MOSS = Colour("M2", "lichen", "#688b38")


def two_greens(stitches):
    """A pattern of moss and a colour nearly like it, in the same number of stitches."""
    greens = replace(card(), colours={"M1": MOSS, "M2": NEARLY_MOSS, "T1": CLAY})
    sets = (replace(thread_set(), card=greens),)
    one = pattern("m" * stitches, "t" * stitches, sets=sets)
    key = (one.key[0], replace(one.key[1], threads={"bramble": (NEARLY_MOSS,)}))
    return replace(one, key=key)


def test_two_colours_that_are_nearly_one_are_found_with_what_one_would_save():
    """Half a skein of each is one skein in all."""
    of = figures(two_greens(100), piece())
    (pair,) = alike(of, of.pattern.thread_sets[0], 3.0)
    assert {pair.one.marks, pair.other.marks} == {("m",), ("t",)}
    assert (pair.one.stitches, pair.other.stitches, pair.saved) == (100, 100, 1)
    apart = Color(MOSS.hex).delta_e(NEARLY_MOSS.hex, method="2000")
    assert pair.difference == pytest.approx(apart, abs=0.02)
    text = alike_list([pair], of.pattern.thread_sets[0], 3.0)
    assert "same to the eye, 0.4; as one colour they would save 1 skein" in text
    assert not alike(of, of.pattern.thread_sets[0], 0.1)
    asked = replace(pair, difference=9.3)
    assert "\n   told apart, 9.3; " in alike_list([asked], of.pattern.thread_sets[0], 12)


def test_what_one_colour_would_take_is_what_the_figures_say_of_one():
    """The same pattern with both lines in moss: thread is summed, and so many units fewer are bought."""
    for stitches in (100, 900, 1000):
        one = two_greens(stitches)
        of = figures(one, piece())
        same = replace(one.key[1], threads={"bramble": (MOSS,)})
        together = figures(replace(one, key=(one.key[0], same)), piece())
        (pair,) = alike(of, one.thread_sets[0], 3.0)

        def units(figure):
            return sum(need.units for need in figure.cloths[0].needs[0][1])

        assert units(of) - units(together) == pair.saved


def test_a_set_that_is_not_there_is_told_with_the_nearest(tmp_path):
    content = build(tmp_path / "content")
    assert "did you mean 'spool'?" in said(content, "alike", "fern", "--threads", "spol", code=2)
    assert "did you mean 'fern'?" in said(content, "count", "firn", code=2)


# --- editing --------------------------------------------------------------------------------------


def test_a_chart_is_turned_and_the_line_that_it_says_turns_it_back(tmp_path):
    content = build(tmp_path / "content")
    before = everything(content)
    told = said(content, "turn", "fern", "90")
    assert (content / CHART).read_text("utf-8") == "# A fern\nrr\nkr\n.b\n.b\n"
    assert 'path: "3,1 3,4 1.5,4"' in (content / PATTERN).read_text("utf-8")
    undo = told.strip().split("\n")[-1].removeprefix("To undo it: packetgen chart ").split()
    said(content, *undo[: undo.index("--content")])
    assert everything(content) == before


@pytest.mark.parametrize(
    "words",
    [
        ("mirror", "fern", "left-right"),
        ("mirror", "fern", "top-bottom"),
        ("turn", "fern", "180"),
        ("turn", "fern", "270"),
        ("border", "fern", "2"),
        ("border", "fern", "--left", "3", "--mark", "r"),
    ],
)
def test_every_edit_that_loses_nothing_says_how_to_undo_it(tmp_path, words):
    content = build(tmp_path / "content")
    before = everything(content)
    undo = said(content, *words).strip().split("\n")[-1].split("chart ")[1].split()
    assert everything(content) != before
    said(content, *undo[: undo.index("--content")])
    after = everything(content)
    assert {path: data for path, data in after.items() if path.name[0] != "_"} == before


def test_a_crop_with_no_number_takes_off_what_is_bare_and_a_border_brings_it_back(tmp_path):
    wide = "# A fern\n......\n.rrbb.\n.rk...\n......\n......\n"
    around = (
        ("at: 3,2", "at: 4,3"),
        ("1,1 4,1 4,2.5", "2,2 5,2 5,3.5"),
        ("2.5,2.5 3,3", "3.5,3.5 4,4"),
    )
    text = TINY[PATTERN].replace("3.5,1.5", "4.5,2.5")
    for old, new in around:
        text = text.replace(old, new)
    content = build(tmp_path / "content", {CHART: wide, PATTERN: text})
    told = said(content, "crop", "fern")
    assert (content / CHART).read_text("utf-8") == TINY[CHART]
    assert (content / PATTERN).read_text("utf-8") == TINY[PATTERN]
    assert "border fern --left 1 --right 1 --top 1 --bottom 2" in told
    assert "Nothing has changed." in said(content, "crop", "fern")


def test_what_would_fall_off_is_told_at_its_place_and_nothing_is_written(tmp_path):
    content = build(tmp_path / "content")
    before = everything(content)
    told = said(content, "shift", "fern", "--right", "3", code=1).split("\n")
    assert (
        f"{content}/{CHART}:2:2: 1 stitch of 'r' would fall off the chart; move less, or add --lose"
        in told
    )
    line = TINY[PATTERN][: TINY[PATTERN].index("- {colour: k")].count("\n") + 1
    where = f"{content}/{PATTERN}:{line}:5: 2 stretches of backstitch of 'k'"
    assert any(one.startswith(where) for one in told)
    assert told[-2] == "Nothing was written." and everything(content) == before


def test_with_lose_what_falls_off_goes_with_its_key_lines_and_the_old_files_are_kept(tmp_path):
    content = build(
        tmp_path / "content", {CHANGED_TOO: "symbols:\n  r: disc\n  k: heart\n  b: cup\n"}
    )
    old = everything(content)
    told = said(content, "crop", "fern", "--right", "2", "--lose")
    assert "Lost: 2 stitches of 'b'" in told and "'b'." in told
    text = (content / PATTERN).read_text("utf-8")
    assert "  b: " not in text and "close_ups: []" in text and "beads: []" in text
    assert (content / CHANGED_TOO).read_text("utf-8") == "symbols:\n  r: disc\n  k: heart\n"
    for name in ("chart.txt", "pattern.yaml", "symbols.yaml"):
        kept = content / FERN / f"_before-{name}"
        assert kept.read_bytes() == old[content / FERN / name]
    assert "_before-chart.txt, _before-pattern.yaml and _before-symbols.yaml" in told
    assert "undo" not in told
    assert "No fault" in CliRunner().invoke(main, ["proof", "--content", str(content)]).output


def test_half_stitches_that_lean_otherwise_are_told(tmp_path):
    path, words = LEAN
    content = build(tmp_path / "content", {path: words, CHART: "rrbb\nrkh.\n"})
    (content / path).write_text(
        (content / path)
        .read_text("utf-8")
        .replace("at: 3,2", "at: 4,2")
        .replace("k..k\n      kk..", "k.\n      kk"),
        "utf-8",
    )
    told = said(content, "mirror", "fern", "left-right")
    assert "Half stitches lean the other way now: 'h'." in told
    assert "stitch: half back}" in (content / path).read_text("utf-8")
    assert "Half stitches" not in said(content, "turn", "fern", "180")


def test_words_that_name_sides_are_told_where_they_stand(tmp_path):
    content = build(
        tmp_path / "content",
        {f"{FERN}/stitching.md": "Begin.\n\nThe left frond first, in row 3.\n"},
    )
    assert f"{FERN}/stitching.md:3:5: 'left'" in said(content, "mirror", "fern", "left-right")
    assert f"{FERN}/stitching.md:3:26: 'row 3'" in said(content, "border", "fern", "1")


def test_a_copy_of_a_chart_that_begins_with_its_title_begins_with_its_own(tmp_path):
    rows = TINY[CHART].removeprefix("# A fern\n")
    content = build(tmp_path / "content", {CHART: f"# Fern by the Tap: as it grew.\n{rows}"})
    said(content, "turn", "fern", "90", "--to", "lying", "--title", "Lying Fern")
    new = (content / "series/garden-year/lying/chart.txt").read_text("utf-8")
    assert new.startswith("# Lying Fern: as it grew.\n")


def test_a_copy_is_a_pattern_of_its_own_in_the_order_of_the_series(tmp_path):
    content = build(tmp_path / "content", {f"{FERN}/photo.png": picture([["#a04030"]])})
    before = everything(content)
    told = said(
        content, "mirror", "fern", "left-right", "--to", "fern-right", "--title", 'Fern "Right"'
    )
    after = everything(content)
    assert {path for path in before if after[path] != before[path]} == {
        content / "series/garden-year/series.yaml"
    }
    assert "order: [fern, fern-right]" in (content / "series/garden-year/series.yaml").read_text(
        "utf-8"
    )
    new = content / "series/garden-year/fern-right"
    assert sorted(path.name for path in new.iterdir()) == [
        "chart.txt",
        "pattern.yaml",
        "stitching.md",
        "story.md",
    ]
    assert (new / "chart.txt").read_text("utf-8") == "# A fern\nbbrr\n..kr\n"
    assert (new / "pattern.yaml").read_text("utf-8").startswith('title: "Fern \\"Right\\""\n')
    assert told.startswith(
        'A new pattern, Fern "Right", of 4 × 2 stitches.\nFern by the Tap stays as it was. Written:\n'
    )
    assert "photo.png did not go along" in told
    assert "No fault" in CliRunner().invoke(main, ["proof", "--content", str(content)]).output
    there = said(content, "turn", "fern", "90", "--to", "fern-right", code=2)
    assert "there is series/garden-year/fern-right already" in there
    for name in ("Fern 3", "../fern-three", "con"):
        told = said(content, "turn", "fern", "90", "--to", name, code=1)
        assert f"{content}/series/garden-year:1:1: " in told and "nothing was written" in told
    assert everything(content) == after


def test_what_would_be_wrong_afterwards_is_told_and_nothing_is_written(tmp_path):
    """The shelf holds no design of that width."""
    content = build(tmp_path / "content")
    before = everything(content)
    told = said(content, "border", "fern", "90", code=1)
    assert "The Shelf has room for" in told and "nothing was written" in told
    assert everything(content) == before


def test_content_with_a_fault_is_told_and_not_touched(tmp_path):
    content = build(tmp_path / "content", {PATTERN: ("colour: k, path", "colour: K, path")})
    before = everything(content)
    assert "1 thing to mend; nothing was written." in said(content, "turn", "fern", "90", code=1)
    assert everything(content) == before


def test_a_chart_that_is_a_picture_is_refused_in_plain_words(tmp_path):
    rows = [
        ["#a04030", "#a04030", "#4f7942", "#6b503a"],
        ["#a04030", "#6b503a", (0,) * 4, (0,) * 4],
    ]
    text = TINY[PATTERN].replace(
        'b: {moss: [E2, "07"], spool: ["10", "14"]}', 'b: {moss: "07", spool: "14"}'
    )
    content = build(
        tmp_path / "content",
        {CHART: None, f"{FERN}/chart.png": picture(rows), PATTERN: text},
    )
    assert "chart.png is a picture" in said(content, "turn", "fern", "90", code=2)


def test_slips_in_the_words_are_told(tmp_path):
    content = build(tmp_path / "content")
    assert "border fern 4, or --top 2" in said(content, "border", "fern", code=2)
    assert "did you mean" in said(content, "border", "fern", "1", "--mark", "R", code=2)
    assert "nothing would be left" in said(content, "crop", "fern", "--left", "4", code=2)
    assert "--title belongs to --to" in said(content, "turn", "fern", "90", "--title", "x", code=2)


def test_help_of_the_group_loads_no_content():
    import subprocess
    import sys

    code = (
        "import sys\nfrom packetgen.cli import main\n"
        "try:\n    main(['chart', '--help'])\nexcept SystemExit:\n    pass\n"
        "print([name for name in ('packetgen.pipeline', 'packetgen.load', 'yaml') if name in sys.modules])"
    )
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert told.stdout.strip().endswith("[]")


def test_the_demo_content_itself_is_shown():
    assert "Robin on the Spade: 78 × 84 stitches" in said(CONTENT, "show", "robin-on-the-spade")


def test_old_files_that_are_kept_are_never_written_over(tmp_path):
    content = build(tmp_path / "content")
    first = everything(content)
    said(content, "crop", "fern", "--right", "1", "--lose")
    second = everything(content)
    said(content, "crop", "fern", "--right", "1", "--lose")
    for name in ("chart.txt", "pattern.yaml"):
        path = content / FERN / name
        assert path.with_name(f"_before-{name}").read_bytes() == first[path]
        assert path.with_name(f"_before-2-{name}").read_bytes() == second[path]


def test_a_shift_to_the_left_and_up_is_undone_by_the_shift_that_is_offered(tmp_path):
    content = build(tmp_path / "content")
    said(content, "border", "fern", "2")
    before = (content / CHART).read_text()
    told = said(content, "shift", "fern", "--left", "2", "--up", "1")
    assert (content / CHART).read_text() != before
    (back,) = re.findall(r"packetgen chart (shift fern --right 2 --down 1)\b", told)
    said(content, *back.split())
    assert (content / CHART).read_text() == before
