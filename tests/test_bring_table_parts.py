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
