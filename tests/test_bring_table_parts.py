"""A table from a spreadsheet has more than stitches: headings that count, a legend below or beside, empty fields."""

from itertools import product

import pytest

from packetgen.bring.codes import Codes
from packetgen.bring.drawing import Drawing
from packetgen.bring.written import read_table
from packetgen.diagnostics import Problems
from packetgen.model import Colour

# Numbers that the columns and rows have too, as those of most cards.
CARD = tuple(
    Colour(number, name, "#a04030")
    for number, name in (("3", "brick"), ("07", "fern"), ("11", "peat"), ("12", "frost"))
)
LEGEND = (("BK", "3"), ("R1", "11"), ("LF", "07"))
ROWS = tuple(
    tuple(("", "BK", "R1", "LF")[(column * row + column // 3) % 4] for column in range(12))
    for row in range(1, 15)
)
SHAPES = tuple(
    (counted, place, words, padded)
    for counted, place, words, padded in product(
        ("neither", "row", "column", "both"),
        ("below", "beside"),
        ("numbers", "names", "headed", "sums"),
        (False, True),
    )
)


def legend_rows(words: str) -> list[list[str]]:
    names = {colour.number: colour.name for colour in CARD}
    rows = [[code, names[number] if words == "names" else number] for code, number in LEGEND]
    if words == "headed":
        rows.insert(0, ["code", "thread"])
    if words == "sums":
        for row in rows:
            row += [names[row[1]], str(sum(each.count(row[0]) for each in ROWS))]
    return rows


def table(counted: str, place: str, words: str, padded: bool) -> str:
    """As a spreadsheet saves it."""
    rows = [list(row) for row in ROWS]
    if counted in ("column", "both"):
        rows = [[f"{number}", *row] for number, row in enumerate(rows, 1)]
    if counted in ("row", "both"):
        corner = [""] * (counted == "both")
        rows.insert(0, corner + [f"{number}" for number in range(1, len(ROWS[0]) + 1)])
    legend = legend_rows(words)
    if place == "beside":
        for row, said in zip(rows[2:], legend):
            row += ["", *said]
    else:
        rows += [[], *legend]
    wide = max(map(len, rows))
    if padded:
        rows = [row + [""] * (wide - len(row)) for row in rows]
    return "".join(";".join(row) + "\n" for row in rows)


@pytest.mark.parametrize("shape", SHAPES, ids=lambda shape: "-".join(map(str, shape)))
def test_stitches_are_told_from_all_that_stands_around_them(shape):
    problems = Problems()
    read = read_table(table(*shape), "design.csv", Codes(CARD), True, problems)
    assert list(problems) == []
    assert isinstance(read, Drawing)
    code = {number: wish.code for number, wish in read.wishes.items()}
    found = tuple(tuple(code.get(cell, "") for cell in row) for row in read.cells.tolist())
    assert found == ROWS


@pytest.mark.parametrize("shape", SHAPES, ids=lambda shape: "-".join(map(str, shape)))
def test_what_stands_around_them_is_one_line_until_its_author_has_said_so(shape):
    problems = Problems()
    read_table(table(*shape), "design.csv", Codes(CARD), None, problems)
    (found,) = problems
    assert found.code == ("bring-legend" if shape[0] == "neither" else "bring-headings")
    assert "like a legend" in found.wrong


def read(text: str) -> tuple[tuple[tuple[str, ...], ...] | None, list[str]]:
    """The codes of the stitches, and the lines that are told, where the author has said that there are headings."""
    problems = Problems()
    found = read_table(text, "design.csv", Codes(CARD), True, problems)
    told = [problem.printed for problem in problems]
    if not isinstance(found, Drawing):
        return None, told
    code = {number: wish.code for number, wish in found.wishes.items()}
    return tuple(tuple(code.get(cell, "") for cell in row) for row in found.cells.tolist()), told


BELOW = table("both", "below", "numbers", False)
ALONE = BELOW.split("\n\n")[0] + "\n"


@pytest.mark.parametrize("counted", ["neither", "both"])
def test_a_legend_may_stand_above_the_stitches(counted):
    stitches = table(counted, "below", "numbers", False).split("\n\n")[0]
    assert read(f"BK;3\nR1;11\nLF;07\n\n{stitches}\n") == (ROWS, [])


def test_lines_are_counted_from_the_first_of_the_file_also_below_a_legend():
    _, told = read(f"BK;3\nR1;11\nLF;07\n\n{ALONE.replace('BK', 'oops', 1)}")
    assert [line.partition("'oops'")[0] for line in told] == ["design.csv:6:3: "]


def test_a_legend_may_have_its_code_and_thread_in_one_field():
    text = BELOW.replace("BK;3", "BK = 3").replace("R1;11", "R1: 11 peat").replace("LF;07", "LF=07")
    assert read(text) == (ROWS, [])


TITLES = (["Poppies"], ["Poppies", "for March", "2027"], ["Title:", "Poppies"], ["Poppies, red"])


@pytest.mark.parametrize("counted", ["neither", "both"])
@pytest.mark.parametrize("gap", ["", "\n"])
@pytest.mark.parametrize("title", TITLES, ids=" ".join)
def test_a_title_is_the_one_thing_told(counted, gap, title):
    """Whatever it holds, and although fields are parted otherwise in it."""
    _, (told,) = read(";".join(title) + f"\n{gap}" + table(counted, "below", "numbers", False))
    assert told.startswith(f"design.csv:1:1: row 1 ({title[0]!r}")
    assert "may be a title" in told and ("empty row" in told) == bool(gap)


def test_a_column_that_counts_the_stitches_of_each_row_is_told():
    first, *lines = ALONE.splitlines()
    sums = [str(sum(map(bool, row))) for row in ROWS]
    text = "\n".join((f"{first};in all", *map(";".join, zip(lines, sums)))) + "\n"
    _, (told,) = read(text)
    assert told.startswith("design.csv:1:14: column 14 ('in all', '8', ")
    assert "beside the stitches, and may be the sum of each row" in told
    other = text.replace(";8\n", ";9\n", 1)
    assert not [line for line in read(other)[1] if "bring-beside" in line]


def test_one_stitch_at_the_top_in_a_colour_of_its_own_is_no_title():
    _, told = read(";;;SUN;;;;;;;;\n" + table("neither", "below", "numbers", False))
    assert not [line for line in told if "bring-beside" in line]
