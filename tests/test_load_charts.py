"""The same chart as text, as a table and as a picture; close-ups; photographs."""

import io
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from packetgen.diagnostics import MOST_ALIKE, Place, Problems
from packetgen.load import load_content
from packetgen.load.blocks import read_block
from packetgen.load.chart import slipped
from packetgen.load.close_ups import read_close_up
from packetgen.load.pixels import read_photo
from packetgen.load.values import Filled, Given
from packetgen.load.yaml_nodes import TextNode
from packetgen.model import Corner, Fraction, Stitch
from tests.content_builder import CHART, FERN, PATTERN, TINY, build, cut, picture
from tests.demo_patterns import CONTENT as DEMO

CLEAR = (0, 0, 0, 0)
TOP_LEFT, TOP_RIGHT = Corner.TOP_LEFT, Corner.TOP_RIGHT
BOTTOM_LEFT, BOTTOM_RIGHT = Corner.BOTTOM_LEFT, Corner.BOTTOM_RIGHT


def chart_of(folder, changes):
    content, problems = load_content(build(folder / "content", changes))
    assert [str(problem) for problem in problems] == []
    return content.series[0].patterns[0].grid


def test_a_chart_is_one_character_a_stitch(tmp_path):
    """Remarks at the top are passed over, and so is what cannot be seen at line ends and below."""
    grid = chart_of(tmp_path, {CHART: "# A fern\n#\n\nrrbb  \nrk..\t\n\n\n"})
    assert grid.rows == ("rrbb", "rk..")
    assert (grid.width, grid.height) == (4, 2)
    assert grid.place == Place(CHART, 4, 1)


def test_marks_of_the_key_that_stand_in_order_are_stitches_and_no_headings(tmp_path):
    """r, k and b are called A, B and C, and a rainbow of them is a row like any other."""
    text = TINY[PATTERN]
    for old, new in (("r", "A"), ("k", "B"), ("b", "C")):
        text = text.replace(f"  {old}: {{moss", f"  {new}: {{moss").replace(
            f"colour: {old},", f"colour: {new},"
        )
    changes = {PATTERN: text.replace("k..k", "B..B").replace("kk..", "BB.."), CHART: None}
    grid = chart_of(tmp_path, changes | {f"{FERN}/chart.csv": "A,B,C,A\nA,B,,\n"})
    assert grid.rows == ("ABCA", "AB..")


@pytest.mark.parametrize(
    "table",
    [
        "r,r,b,b\nr,k,,\n",
        "r;r;b;b\nr;k;.;.\n",
        "r\tr\tb\tb\nr\tk\t\t\n",
        '"r","r","b","b"\r\n"r","k",". ",""\r\n',
    ],
    ids=["commas", "semicolons", "tabs", "quotes"],
)
def test_a_table_holds_one_mark_a_cell(tmp_path, table):
    """An empty cell is bare cloth; cells may be parted as a spreadsheet of any country does."""
    assert chart_of(tmp_path, {CHART: None, f"{FERN}/chart.csv": table}).rows == ("rrbb", "rk..")


def test_a_comma_can_be_a_mark_in_a_table(tmp_path):
    """Between quotes, as RFC 4180 has it."""
    changes = {CHART: None, f"{FERN}/chart.csv": 'r,",",b,b\nr,k,,\n'}
    changes[PATTERN] = (
        '  r: {moss: E2, spool: "10"}\n',
        '  r: {moss: E2, spool: "10"}\n  ",": {moss: "07", spool: "14"}\n',
    )
    assert chart_of(tmp_path, changes).rows == ("r,bb", "rk..")


def test_a_pixel_is_a_stitch_in_the_colour_of_the_models_thread(tmp_path):
    """Clear pixels are bare cloth; a colour is a plain line's before it is a blend's."""
    rows = [["#a04030", "#a04030", "#4f7942", "#4f7942"], ["#a04030", "#6b503a", CLEAR, CLEAR]]
    changes = {
        CHART: None,
        f"{FERN}/chart.png": picture(rows),
        PATTERN: ('[E2, "07"]', '["07", E2]'),
    }
    assert chart_of(tmp_path, changes).rows == ("rrbb", "rk..")


@pytest.mark.parametrize("mode", ["P", "RGB"])
def test_a_picture_may_be_saved_with_a_palette_or_without_clear_pixels(tmp_path, mode):
    drawn = picture([["#a04030", "#4f7942"], ["#6b503a", "#6b503a"]])
    image = Image.open(io.BytesIO(drawn)).convert("RGB")
    image = image.quantize(4) if mode == "P" else image
    assert image.mode == mode
    data = io.BytesIO()
    image.save(data, "PNG")
    grid = load_without_drawing(tmp_path, {CHART: None, f"{FERN}/chart.png": data.getvalue()})
    assert grid.rows == ("rb", "kk")


def load_without_drawing(folder, changes):
    """The chart of a pattern with nothing drawn on it besides."""
    bare = cut(PATTERN, "backstitch:", "credits:").replace('[E2, "07"]', '["07", E2]')
    return chart_of(folder, changes | {PATTERN: bare})


@given(st.lists(st.text("rkb.", min_size=5, max_size=5), min_size=1, max_size=6))
def test_text_table_and_picture_say_the_same(tmp_path_factory, rows):
    """Any chart drawn in all three ways is one chart."""
    drawn = [*rows, "rkb.."]  # every mark is used
    colours = {"r": "#a04030", "k": "#6b503a", "b": "#4f7942", ".": CLEAR}
    files = {
        "chart.txt": "\n".join(drawn),
        "chart.csv": "\n".join(",".join(row) for row in drawn),
        "chart.png": picture([[colours[mark] for mark in row] for row in drawn]),
    }
    for name, data in files.items():
        folder = tmp_path_factory.mktemp("chart")
        grid = load_without_drawing(folder, {CHART: None, f"{FERN}/{name}": data})
        assert grid.rows == tuple(drawn)


def test_one_of_several_charts_may_be_named(tmp_path):
    changes = {
        f"{FERN}/large.csv": "r,r,b,b\nr,k,,\nr,k,b,r\n",
        PATTERN: ("credits:", "chart: large.csv\ncredits:"),
    }
    assert chart_of(tmp_path, {**changes, CHART: None}).height == 3
    content, problems = load_content(build(tmp_path / "both", changes))
    assert content.series[0].patterns[0].grid.height == 3
    assert not problems, "the author has said which: no slip in a name is behind the other"


# --- close-ups ------------------------------------------------------------------------------------


MARKS = {
    **dict.fromkeys("ABCD", Stitch.FULL),
    **{"p": Stitch.PETITE, "P": Stitch.PETITE, "q": Stitch.QUARTER},
}


def close_up(*rows: str) -> tuple[Fraction, ...]:
    """The fractional stitches of a window at column 5, row 7."""
    place = Place("pattern.yaml", 1, 1)
    text = TextNode("\n".join(rows), place)
    filled = Filled(
        {"at": Given((5, 7), place), "rows": Given(text.value, place, text=text)}, place, True
    )
    problems = Problems()
    fractions, _ = read_close_up(filled, MARKS, None, {}, problems)
    assert [str(problem) for problem in problems] == []
    return fractions


def fraction(mark: str, stitch: Stitch, corner: Corner | None) -> Fraction:
    return Fraction(5, 7, mark, stitch, corner)


@pytest.mark.parametrize(
    ("top", "bottom", "stitches"),
    [
        ("A.", "..", [("A", Stitch.QUARTER, TOP_LEFT)]),
        (".A", "..", [("A", Stitch.QUARTER, TOP_RIGHT)]),
        ("..", "A.", [("A", Stitch.QUARTER, BOTTOM_LEFT)]),
        ("..", ".A", [("A", Stitch.QUARTER, BOTTOM_RIGHT)]),
        (".A", "A.", [("A", Stitch.HALF, None)]),
        ("A.", ".A", [("A", Stitch.HALF_BACK, None)]),
        (".A", "AA", [("A", Stitch.THREE_QUARTER, TOP_LEFT)]),
        ("AA", "A.", [("A", Stitch.THREE_QUARTER, BOTTOM_RIGHT)]),
        ("AB", "AA", [("A", Stitch.THREE_QUARTER, TOP_RIGHT), ("B", Stitch.QUARTER, TOP_RIGHT)]),
        ("AB", "..", [("A", Stitch.QUARTER, TOP_LEFT), ("B", Stitch.QUARTER, TOP_RIGHT)]),
        (
            "AB",
            "C.",
            [
                ("A", Stitch.QUARTER, TOP_LEFT),
                ("B", Stitch.QUARTER, TOP_RIGHT),
                ("C", Stitch.QUARTER, BOTTOM_LEFT),
            ],
        ),
        (
            "A/",
            "/B",
            [("A", Stitch.THREE_QUARTER, BOTTOM_RIGHT), ("B", Stitch.THREE_QUARTER, TOP_LEFT)],
        ),
        (
            "B/",
            "/A",
            [("B", Stitch.THREE_QUARTER, BOTTOM_RIGHT), ("A", Stitch.THREE_QUARTER, TOP_LEFT)],
        ),
        (
            "\\A",
            "B\\",
            [("A", Stitch.THREE_QUARTER, BOTTOM_LEFT), ("B", Stitch.THREE_QUARTER, TOP_RIGHT)],
        ),
        (
            "\\B",
            "A\\",
            [("B", Stitch.THREE_QUARTER, BOTTOM_LEFT), ("A", Stitch.THREE_QUARTER, TOP_RIGHT)],
        ),
        ("p.", "..", [("p", Stitch.PETITE, TOP_LEFT)]),
        ("..", ".p", [("p", Stitch.PETITE, BOTTOM_RIGHT)]),
        ("pp", ".p", [("p", Stitch.PETITE, c) for c in (TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT)]),
        ("pA", "AA", [("p", Stitch.PETITE, TOP_LEFT), ("A", Stitch.THREE_QUARTER, TOP_LEFT)]),
        ("pA", "A.", [("p", Stitch.PETITE, TOP_LEFT), ("A", Stitch.HALF, None)]),
        ("qq", "..", [("q", Stitch.QUARTER, TOP_LEFT), ("q", Stitch.QUARTER, TOP_RIGHT)]),
        (
            "qp",
            ".A",
            [
                ("q", Stitch.QUARTER, TOP_LEFT),
                ("p", Stitch.PETITE, TOP_RIGHT),
                ("A", Stitch.QUARTER, BOTTOM_RIGHT),
            ],
        ),
        ("..", "..", []),
    ],
)
def test_two_by_two_characters_are_a_fractional_stitch(top, bottom, stitches):
    """A half stitch leans as its diagonal does:
    '/' from lower left to upper right, '\\' the other way.
    """
    assert close_up(top, bottom) == tuple(fraction(*stitch) for stitch in stitches)


@pytest.mark.parametrize("sign", ["/", "\\"])
def test_a_key_may_have_the_signs_of_the_line_as_marks(sign):
    """Between two marks it is still the line; anywhere else it is the mark."""
    key = {**MARKS, sign: Stitch.FULL}
    parted, alone = (
        (f"A{sign}{sign}B", f".{sign}..") if sign == "/" else (f"{sign}AB{sign}", f".{sign}..")
    )
    assert [one.mark for one in read_block(parted, 5, 7, key)] == ["A", "B"]
    assert read_block(alone, 5, 7, key) == (fraction(sign, Stitch.QUARTER, TOP_RIGHT),)


def test_four_petites_fill_a_cell_and_are_no_full_cross():
    assert [(one.stitch, one.corner) for one in close_up("pp", "pp")] == [
        (Stitch.PETITE, corner) for corner in (TOP_LEFT, TOP_RIGHT, BOTTOM_LEFT, BOTTOM_RIGHT)
    ]


def test_four_marks_are_four_quarters():
    assert [(one.mark, one.corner) for one in close_up("AB", "CD")] == list(
        zip("ABCD", (TOP_LEFT, TOP_RIGHT, BOTTOM_LEFT, BOTTOM_RIGHT), strict=True)
    )


def test_a_window_covers_stitches_to_the_right_and_down():
    placed = close_up("....", "...A", "A...", "....")
    assert [(one.column, one.row, one.corner) for one in placed] == [
        (6, 7, BOTTOM_RIGHT),
        (5, 8, TOP_LEFT),
    ]


BLOCKS = st.text("ABpq./\\", min_size=4, max_size=4)


@given(BLOCKS)
def test_every_block_is_a_stitch_or_is_told(block):
    """Any two by two characters are stitches in exactly the marked quarters, or one problem."""
    place = Place("pattern.yaml", 1, 1)
    text = TextNode(f"{block[:2]}\n{block[2:]}", place)
    filled = Filled(
        {"at": Given((1, 1), place), "rows": Given(text.value, place, text=text)}, place, True
    )
    problems = Problems()
    fractions, marks = read_close_up(filled, MARKS, None, {}, problems)
    assert marks - set("/\\") == set(block) - set("./\\")
    quarters = {
        **{Stitch.QUARTER: 1, Stitch.PETITE: 1, Stitch.HALF: 2, Stitch.HALF_BACK: 2},
        Stitch.THREE_QUARTER: 3,
    }
    covered = sum(quarters[one.stitch] for one in fractions)
    shared = 2 if set(block) & set("/\\") else 0  # two three-quarters share their diagonal
    assert covered - shared == (-shared if len(problems) else 4 - block.count("."))
    assert len(problems) <= 1


# --- photographs ----------------------------------------------------------------------------------


def photograph(width: int, height: int, orientation: int) -> bytes:
    exif = Image.Exif()
    exif[0x0112] = orientation
    data = io.BytesIO()
    Image.new("RGB", (width, height)).save(data, "JPEG", exif=exif)
    return data.getvalue()


@pytest.mark.parametrize(
    ("orientation", "size"),
    [(1, (4, 2)), (4, (4, 2)), (5, (2, 4)), (6, (2, 4)), (7, (2, 4)), (8, (2, 4))],
)
def test_a_photograph_has_the_size_it_is_shown_in(orientation, size):
    """Orientations 5 to 8 lie on their side (Exif, CIPA DC-008, tag 0x0112)."""
    data = photograph(4, 2, orientation)
    problems = Problems()
    photo = read_photo(data, "photo.jpg", problems)
    assert len(problems) == 0
    assert (photo.width_px, photo.height_px) == size
    assert photo.data == data


def test_where_a_stitch_was_left_out_is_told_where_it_mostly_was():
    """One stitch after another is taken out of rows of the demo's charts; with it put in where we say, the row is as it
    was but for two stitches at most in two of three, and always where it has all in common with the rows beside it."""
    rng = random.Random(7)
    right, wrong = 0, 0
    for path in sorted(DEMO.glob("series/*/*/chart.txt")):
        rows = [row for row in path.read_text("utf-8").split("\n") if row and row[0] != "#"]
        for _ in range(200):
            number, column = rng.randrange(1, len(rows) - 1), rng.randrange(len(rows[0]))
            row = rows[number]
            short, beside = row[:column] + row[column + 1 :], [rows[number - 1], rows[number + 1]]
            found = slipped(short, len(row), beside)
            if found is None:
                continue
            mended = short[: found[0] - 1] + row[column] + short[found[0] - 1 :]
            odd = sum(one != other for one, other in zip(mended, row, strict=True))
            right, wrong = right + (odd <= 2), wrong + (odd > 2)
            assert odd <= 2 or not found[1]
    assert right > 2 * wrong and right > 100, (right, wrong)


def test_of_very_many_strange_marks_the_same_are_told_each_time(tmp_path):
    """In the order of the marks, whichever way a set of them is gone through in this run."""
    strange = [chr(0x4E00 + number) for number in range(MOST_ALIKE + 100)]
    random.Random(3).shuffle(strange)
    _, problems = load_content(build(tmp_path / "content", {CHART: "".join(strange) + "\n"}))
    told = {one.wrong[10] for one in problems if one.code == "chart-mark-unknown"}
    assert told == set(sorted(strange)[:MOST_ALIKE])
