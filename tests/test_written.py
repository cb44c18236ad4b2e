"""The chart in words: what a stitcher hears is what a stitcher sees."""

import html as html_entities
import re
import shutil
import subprocess
import sys
from collections import Counter
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from packetgen.chart.sheet import Manner, look_of
from packetgen.chart.spoken import spoken
from packetgen.chart.written import as_text, written
from packetgen.model import (
    BARE,
    Bead,
    BeadCard,
    Colour,
    Corner,
    Daisy,
    Fraction,
    KeyLine,
    Knot,
    Line,
    Revision,
    Stitch,
    ThreadCard,
    ThreadSet,
)
from packetgen.reckon.figures import figures
from packetgen.reckon.thread import work_of
from packetgen.render.apostrophes import curled
from packetgen.render.key import key_rows
from packetgen.render.packet import symbols_of
from packetgen.render.templates import environment
from packetgen.render.written_page import written_source
from tests.demo_patterns import CONTENT
from tests.stitching import CLAY, HERE, MOSS, SOOT, card, pattern, piece, series, thread_set

OTHER_MOSS = Colour("M7", "moss", "#556b2f")
BARE_EARTH = Colour("K4", "Bare", "#6b503a")
FIREFLY = Colour("F3", "firefly, pale", "#e6e08a")
GLIMMER = ThreadCard(
    "glimmer", "Glimmer Braid", "metallic", 1, 60, "reel", 10.0, False, {"F3": FIREFLY}, braid=True
)
HIP = Colour("07", "hip red", "#b32c2e")
SEED_BEADS = BeadCard("dewdrop", "Dewdrop Glass", 2.2, 150, {"07": HIP})


def key_line(mark, *colours, stitch=Stitch.FULL, strands=None, cards=None):
    """A line of the key in the one thread set of these tests."""
    own = {"bramble": strands} if strands else {}
    return KeyLine(
        mark, stitch, {"bramble": colours}, own, HERE, {"bramble": cards} if cards else {}
    )


def sprig(*rows, **more):
    """A pattern in a thread that has every colour of these tests."""
    colours = {colour.number: colour for colour in (MOSS, CLAY, SOOT, OTHER_MOSS, BARE_EARTH)}
    return pattern(*rows, **{"sets": (thread_set(2, replace(card(), colours=colours)),)} | more)


def said(*rows, **more):
    return as_text(written(sprig(*rows, **more)))


def after(text, heading):
    """The lines that stand under a heading of the plain text, as far as the next empty line."""
    return text.split(f"\n{heading}\n", 1)[1].split("\n\n", 1)[0].rstrip("\n").split("\n")


# --- a small chart, written out by hand -----------------------------------------------------------

EVERY_STITCH = dict(
    key=(
        key_line("m", MOSS),
        key_line("t", CLAY),
        key_line("s", SOOT),
        key_line("h", CLAY, stitch=Stitch.HALF),
        key_line("b", MOSS, stitch=Stitch.HALF_BACK),
        key_line("w", MOSS, CLAY),
        key_line("g", FIREFLY, cards=(GLIMMER,)),
    ),
    fractions=(
        Fraction(3, 6, "m", Stitch.THREE_QUARTER, Corner.TOP_LEFT),
        Fraction(3, 6, "t", Stitch.QUARTER, Corner.TOP_LEFT),
        Fraction(4, 6, "s", Stitch.PETITE, Corner.BOTTOM_RIGHT),
        Fraction(5, 6, "t", Stitch.HALF, None),
    ),
    lines=(
        Line("s", ((1, 1), (3, 1), (3, 2.5), (1, 1)), False, HERE),
        Line("g", ((2, 2), (4, 2)), False, HERE),
        Line("s", ((4.25, 5), (5, 5)), False, HERE),
        Line("t", ((1, 6), (3, 7)), True, HERE),
    ),
    daisies=(Daisy("m", (2, 2), (2, 4.5), HERE),),
    knots=(Knot("s", (1.5, 3.5), HERE), Knot("s", (2.5, 1.5), HERE)),
    beads=(Bead(SEED_BEADS, HIP, (6, 6), HERE),),
    revisions=(
        Revision(date(2026, 5, 1), "First issue."),
        Revision(date(2026, 6, 2), "A knot more."),
    ),
)
EVERY_ROW = ("mmm.tw", "......", "......", "hh..bg", "hh..bg", "m....m")

BY_HAND = """\
A Sprig, in words
Designed by Isolde Fernsby
Revision 2, 2 June 2026

How to read this
The chart is 6 columns wide and 6 rows high. Row 1 is at the top and column 1 at the left, and every row is read from the left to the right. The middle of the design is between columns 3 and 4 and between rows 3 and 4.
Each row begins with its number and its total of stitches. Then come the counts, one after the other: '3 moss' means 3 squares side by side, each with 1 cross stitch in moss. Bare cloth is counted too, 1 square for each stitch that would fit, and 'rest bare' means that nothing more comes in this row. 'To column 6' is a check for you: the square you have just counted is in that column. You hear it after every 10 counts and after the last stitch of a row.
'As row 4' means that a row is the same as row 4, stitch by stitch.
A square 'in parts' holds less than a whole cross, or parts of 2 colours. What lies in it follows straight after its row, column by column, and each part counts as 1 part stitch.
A half stitch rises from the lower left to the upper right. A falling half stitch goes from the upper left to the lower right. A three-quarter stitch leaves 1 corner of its square open. A quarter stitch goes from 1 corner to the middle of its square. A petite stitch is a whole small cross in 1 quarter of its square.

Colours
moss: Bramble M1, 2 strands in the rows, 1 strand for lazy daisies.
clay half stitches: Bramble T1, 2 strands.
clay: Bramble T1, 2 strands in the rows, 1 strand for long stitches.
moss falling half stitches: Bramble M1, 2 strands.
firefly pale: Glimmer Braid F3, 1 strand.
soot: Bramble C1, 2 strands in the rows, 1 strand for backstitch and French knots.
moss with clay: Bramble M1 with T1, 2 strands.

Rows

Rows 1 to 6
Row 1, 5 stitches: 3 moss, 1 bare, 1 clay, 1 moss with clay to column 6.
Rows 2 to 3: bare.
Row 4, 4 stitches: 2 clay half stitches, 2 bare, 1 moss falling half stitch, 1 firefly pale to column 6.
Row 5, 4 stitches: as row 4.
Row 6, 2 stitches and 4 part stitches: 1 moss, 1 bare, 3 in parts, 1 moss to column 6.
Row 6, in parts. Column 3: three-quarter moss, open at the top left; quarter clay at the top left. Column 4: petite soot at the bottom right. Column 5: half clay, rising.

Lines and knots
These lie on top of the stitches in the rows, and their places are told by corners, the column first and then the row: corner 6, 6 is the upper left corner of the stitch in column 6, row 6, and 6.5, 6.5 is the middle of that stitch. A lazy daisy is a loop that is held down at its tip. Beads are sewn on with 1 strand.

Backstitch
Line 1 of 2 in soot: from corner 1, 1 to 3, 1, then 3, 2.5, then back to 1, 1.
Line 2 of 2 in soot: from corner 4.25, 5 to 5, 5.
Line 1 of 1 in firefly pale: from corner 2, 2 to 4, 2.

Long stitches
Long stitch 1 of 1 in clay: from corner 1, 6 to 3, 7.

Lazy daisies
Lazy daisy 1 of 1 in moss: from corner 2, 2 to its tip at 2, 4.5.

French knots
French knots 1 to 2 of 2 in soot: at 2.5, 1.5; 1.5, 3.5.

Beads
Bead 1 of 1 in hip red, Dewdrop Glass 07: at 6, 6.

Totals
moss, cross stitch: 5
moss, three-quarter stitch: 1
moss, lazy daisy: 1
clay, half stitch: 4
clay, cross stitch: 1
clay, half stitch: 1
clay, quarter stitch: 1
clay, long stitch: 1
moss, falling half stitch: 2
firefly pale, cross stitch: 2
firefly pale, backstitch, by its length in stitches: 2
soot, petite stitch: 1
soot, backstitch, by its length in stitches: 7
soot, French knot: 2
moss with clay, cross stitch: 1
hip red, Dewdrop Glass 07, bead: 1
All stitches in the rows: 19
"""


def test_a_chart_with_every_stitch_reads_as_written_out_by_hand():
    """Backstitch in soot by hand: 2 + 1.5 + √(2² + 1.5²) + 0.75 = 6.75, to the nearest stitch 7."""
    assert said(*EVERY_ROW, **EVERY_STITCH) == BY_HAND


# --- rows -----------------------------------------------------------------------------------------


def test_bare_rows_are_joined_but_never_across_a_heading():
    """A listener who jumps to 'Rows 11 to 20' finds row 11 there."""
    text = said(*["..."] * 12, "m..")
    assert after(text, "Rows 1 to 10") == ["Rows 1 to 10: bare."]
    assert after(text, "Rows 11 to 13") == [
        "Rows 11 to 12: bare.",
        "Row 13, 1 stitch: 1 moss to column 1, rest bare.",
    ]


def test_a_repeated_row_names_the_row_that_is_written_out():
    """Row 3 is said to be as row 1, not as row 2, which says nothing itself; row 11 begins anew."""
    text = said(*["mt"] * 11)
    assert after(text, "Rows 1 to 10")[:3] == [
        "Row 1, 2 stitches: 1 moss, 1 clay to column 2.",
        "Row 2, 2 stitches: as row 1.",
        "Row 3, 2 stitches: as row 1.",
    ]
    assert after(text, "Row 11") == ["Row 11, 2 stitches: 1 moss, 1 clay to column 2."]


def test_rows_of_the_same_crosses_but_other_part_stitches_are_both_written_out():
    parts = (Fraction(2, 1, "t", Stitch.HALF, None), Fraction(2, 2, "t", Stitch.HALF_BACK, None))
    text = said("m.", "m.", fractions=parts)
    assert after(text, "Rows 1 to 2") == [
        "Row 1, 1 stitch and 1 part stitch: 1 moss, 1 in parts to column 2.",
        "Row 1, in parts. Column 2: half clay, rising.",
        "Row 2, 1 stitch and 1 part stitch: 1 moss, 1 in parts to column 2.",
        "Row 2, in parts. Column 2: half clay, falling.",
    ]


def test_a_long_row_says_its_column_after_every_ten_counts():
    """Twelve counts of two stitches each: the tenth ends at column 20, the last at column 24."""
    text = said("mmtt" * 6 + "..")
    assert after(text, "Row 1") == [
        "Row 1, 24 stitches: 2 moss, 2 clay, 2 moss, 2 clay, 2 moss, 2 clay, 2 moss, 2 clay, "
        "2 moss, 2 clay to column 20, 2 moss, 2 clay to column 24, rest bare."
    ]


def test_a_chart_of_lines_alone_still_says_that_its_rows_are_bare():
    text = said("..", "..", lines=(Line("s", ((1, 1), (3, 3)), False, HERE),))
    assert after(text, "Rows 1 to 2") == ["Rows 1 to 2: bare."]
    assert "All stitches in the rows: 0" in text
    assert "'rest bare'" not in text


def test_the_middle_is_told_for_odd_and_even_charts():
    assert "The middle of the design is in column 2 and between rows 1 and 2." in said("mmm", "mmm")


# --- names ----------------------------------------------------------------------------------------


def test_two_threads_of_one_name_are_told_apart_by_their_numbers():
    text = said("mn", key=(key_line("m", MOSS), key_line("n", OTHER_MOSS)))
    assert after(text, "Row 1") == [
        "Row 1, 2 stitches: 1 moss number M1, 1 moss number M7 to column 2."
    ]


def test_one_number_on_two_cards_is_told_apart_by_the_card():
    moss_too = replace(FIREFLY, number="M1", name="moss")
    other = replace(GLIMMER, colours={"M1": moss_too})
    text = said("mg", key=(key_line("m", MOSS), key_line("g", moss_too, cards=(other,))))
    assert after(text, "Row 1") == [
        "Row 1, 2 stitches: 1 moss number M1 of Bramble, "
        "1 moss number M1 of Glimmer Braid to column 2."
    ]


def test_one_thread_in_two_thicknesses_is_told_apart_by_its_strands():
    text = said("mn", key=(key_line("m", MOSS), key_line("n", MOSS, strands=1)))
    assert after(text, "Row 1") == [
        "Row 1, 2 stitches: 1 moss in 2 strands, 1 moss in 1 strand to column 2."
    ]


def test_a_thread_called_bare_is_not_taken_for_cloth():
    text = said("m.m", key=(key_line("m", BARE_EARTH),))
    assert after(text, "Row 1") == [
        "Row 1, 2 stitches: 1 Bare number K4, 1 bare, 1 Bare number K4 to column 3."
    ]


def test_every_thread_set_is_named_with_its_strands():
    nettle = ThreadSet("nettle", replace(card(1), id="nettle", name="Nettle Twelve"), 1, 1, 1)
    text = said("m", sets=(thread_set(2), nettle))
    assert (
        after(text, "Colours")[0]
        == "moss: Bramble M1, 2 strands; or Nettle Twelve M1 moss, 1 strand."
    )


def test_a_braid_that_every_thread_set_shares_is_named_once():
    nettle = ThreadSet("nettle", replace(card(1), id="nettle", name="Nettle Twelve"), 1, 1, 1)
    both = ("bramble", "nettle")
    line = KeyLine(
        "g", Stitch.FULL, {s: (FIREFLY,) for s in both}, {}, HERE, {s: (GLIMMER,) for s in both}
    )
    text = said("g", key=(line,), sets=(thread_set(2), nettle))
    assert after(text, "Colours")[0] == "firefly pale: Glimmer Braid F3, 1 strand."


def test_a_part_stitch_says_its_strands_where_its_thread_is_used_in_two_ways():
    key = (key_line("m", MOSS), key_line("n", MOSS, stitch=Stitch.HALF, strands=1))
    text = said("mn.", key=key, fractions=(Fraction(3, 1, "n", Stitch.HALF, None),))
    assert "Column 3: half moss in 1 strand, rising." in text


# --- lines and knots ------------------------------------------------------------------------------


def test_many_knots_come_in_tens_row_by_row():
    knots = tuple(Knot("t", (13 - n + 0.5, 1.5), HERE) for n in range(1, 13))
    assert after(said("." * 13, knots=knots), "French knots") == [
        "French knots 1 to 10 of 12 in clay: at 1.5, 1.5; 2.5, 1.5; 3.5, 1.5; 4.5, 1.5; 5.5, 1.5; "
        "6.5, 1.5; 7.5, 1.5; 8.5, 1.5; 9.5, 1.5; 10.5, 1.5.",
        "French knots 11 to 12 of 12 in clay: at 11.5, 1.5; 12.5, 1.5.",
    ]


# --- read back ------------------------------------------------------------------------------------

_CHECK = re.compile(r" to column (\d+)$")
_ROW = re.compile(
    r"Row (\d+), (?:(\d+) stitch(?:es)?)?(?: and )?(?:(\d+) part stitch(?:es)?)?: (.*)\."
)
_BARE_ROWS = re.compile(r"Rows? (\d+)(?: to (\d+))?: bare\.")
_PARTS = re.compile(r"Row (\d+), in parts\. (.*)")
_KINDS = {
    re.compile(r"three-quarter (.*), open at the (.*)"): Stitch.THREE_QUARTER,
    re.compile(r"quarter (.*) at the (.*)"): Stitch.QUARTER,
    re.compile(r"petite (.*) at the (.*)"): Stitch.PETITE,
    re.compile(r"half (.*), rising()"): Stitch.HALF,
    re.compile(r"half (.*), falling()"): Stitch.HALF_BACK,
}


def read_back(text, of):
    """Rows of marks, and part stitches with their threads' names for marks, as a listener would chart
    them; every check on the way is made."""
    marks = {c.heading.replace("stitches", "stitch"): c.mark for c in written(of).colours}
    width = int(re.search(r"The chart is (\d+) column", text)[1])
    rows, parts, totals = [], [], Counter()
    body = text.split("\nRows\n")[1].split("\nLines and knots\n")[0].split("\nTotals\n")[0]
    for line in filter(None, body.split("\n")):
        if bare := _BARE_ROWS.fullmatch(line):
            first, last = int(bare[1]), int(bare[2] or bare[1])
            assert first == len(rows) + 1
            rows += [BARE * width] * (last - first + 1)
        elif row := _ROW.fullmatch(line):
            assert int(row[1]) == len(rows) + 1
            again = re.fullmatch(r"as row (\d+)", row[4])
            source = int(again[1]) if again else len(rows) + 1
            rows.append(rows[source - 1] if again else _row_back(row[4], width, marks))
            if again:
                parts += [replace(part, row=len(rows)) for part in parts if part.row == source]
            assert int(row[2] or 0) == width - rows[-1].count(BARE)
            totals["stitches"] += int(row[2] or 0)
            totals["parts"] += int(row[3] or 0)
        elif cells := _PARTS.fullmatch(line):
            parts += _parts_back(int(cells[1]), cells[2])
        else:
            assert re.fullmatch(r"Rows? \d+( to \d+)?", line), line
    assert totals["parts"] == len(parts)
    return rows, parts


def named_parts(of):
    """The part stitches of a pattern with their threads' names for marks, in reading order."""
    names = {mark: one.part for mark, one in spoken(of).items()}
    ordered = sorted(of.fractions, key=lambda part: (part.row, part.column))
    return [replace(part, mark=names[part.mark]) for part in ordered]


def _row_back(words, width, marks):
    row = ""
    for count in words.split(", "):
        if count == "rest bare":
            assert len(row) < width
            row += BARE * (width - len(row))
            continue
        check = _CHECK.search(count)
        number, name = _CHECK.sub("", count).split(" ", 1)
        name = name.replace("stitches", "stitch")
        row += {"bare": BARE, "in parts": BARE}.get(name, marks.get(name, "?")) * int(number)
        assert check is None or int(check[1]) == len(row), count
    assert len(row) == width, words
    return row


def _parts_back(row, words):
    for column, said_parts in re.findall(r"Column (\d+): (.*?)\.(?= Column|$)", words):
        for words in said_parts.split("; "):
            kind, found = next((s, m) for r, s in _KINDS.items() if (m := r.fullmatch(words)))
            corner = Corner(found[2]) if found[2] else None
            yield Fraction(int(column), row, found[1], kind, corner)


PART_MARKS = "mntw"  # those of `PARTS_OF_A_CELL`
KEY = (
    key_line("m", MOSS),
    key_line("n", OTHER_MOSS),
    key_line("t", CLAY),
    key_line("w", CLAY, SOOT),
    key_line("h", CLAY, stitch=Stitch.HALF),
    key_line("b", CLAY, stitch=Stitch.HALF_BACK),
)


@st.composite
def charts(draw):
    """Charts from 1 × 1 to 60 × 60, in which rows come again and cloth stays bare, with part stitches."""
    width = draw(st.integers(1, 60))
    a_run = st.tuples(st.sampled_from("mntwhb..."), st.integers(1, 12))
    a_row = st.lists(a_run, max_size=60).map(
        lambda runs: "".join(mark * cells for mark, cells in runs)[:width].ljust(width, BARE)
    )
    kinds = draw(st.lists(a_row, min_size=1, max_size=8))
    which = draw(st.lists(st.integers(0, len(kinds) - 1), min_size=1, max_size=60))
    rows = [kinds[index] for index in which]
    fractions = {}
    for _ in range(draw(st.integers(0, 6))):
        column, row = draw(st.integers(1, width)), draw(st.integers(1, len(rows)))
        if rows[row - 1][column - 1] == BARE:
            fractions[row, column] = draw(st.sampled_from(PARTS_OF_A_CELL))
    return sprig(
        *rows,
        key=KEY,
        fractions=tuple(
            Fraction(column, row, mark, stitch, corner)
            for (row, column), parts in sorted(fractions.items())
            for mark, stitch, corner in parts
        ),
    )


PARTS_OF_A_CELL = (
    [("m", Stitch.HALF, None)],
    [("w", Stitch.HALF_BACK, None)],
    [
        ("t", Stitch.THREE_QUARTER, Corner.BOTTOM_LEFT),
        ("n", Stitch.QUARTER, Corner.BOTTOM_LEFT),
    ],
    [("m", Stitch.PETITE, Corner.TOP_RIGHT), ("m", Stitch.PETITE, Corner.TOP_LEFT)],
)


@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(charts())
def test_any_chart_written_as_words_and_read_back_is_the_same_chart(chart):
    rows, parts = read_back(as_text(written(chart)), chart)
    assert tuple(rows) == chart.grid.rows
    assert parts == named_parts(chart)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(charts())
def test_the_totals_read_back_are_those_of_the_reckoning(chart):
    """Counted from what was read back, and compared with the thread reckoning and the printed totals."""
    text = as_text(written(chart))
    rows, parts = read_back(text, chart)
    stitch_of = {line.mark: line.stitch for line in chart.key}
    heard = Counter((mark, stitch_of[mark]) for row in rows for mark in row if mark != BARE)
    mark_of = {one.part: mark for mark, one in spoken(chart).items() if mark in PART_MARKS}
    heard.update((mark_of[part.mark], part.stitch) for part in parts)
    assert heard == {
        (work.line.mark, stitch): count
        for work in work_of(chart)
        for stitch, count in work.stitches.items()
    }
    printed = [int(line.rsplit(": ")[1].replace(",", "")) for line in after(text, "Totals")]
    assert printed[-1] == sum(printed[:-1]) == sum(heard.values())


# --- the demo -------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def demo_figures(demo):
    return [(each.series, figure) for each in demo.reckoned for figure in each.figures]


def test_the_demo_read_back_from_words_is_what_its_authors_drew(demo_figures):
    """Row by row against the author's own chart file."""
    for of_series, figure in demo_figures:
        path = CONTENT / "series" / of_series.id / figure.pattern.id / "chart.txt"
        drawn = [
            line
            for line in path.read_text("utf-8").splitlines()
            if line and not line.startswith("#")
        ]
        rows, parts = read_back(as_text(written(figure.pattern)), figure.pattern)
        assert rows == drawn
        assert parts == named_parts(figure.pattern)


def test_the_totals_are_those_of_the_printed_key(demo_figures):
    """Line by line in the same order, each kind with the same figure, then the beads."""
    of_sprig = figures(sprig(*EVERY_ROW, **EVERY_STITCH), piece())
    for figure in [of_sprig, *(figure for _, figure in demo_figures)]:
        look = look_of(figure.pattern, symbols_of(figure), Manner.TINTED)
        printed = [kind.count for row in key_rows(figure, look) for kind in row.kinds]
        printed += [bead.sewn for bead in figure.beads]
        assert [total.figure for total in written(figure.pattern).totals] == printed
        assert written(figure.pattern).stitches == figure.stitches


def test_backstitch_however_short_is_counted():
    text = said(".", lines=(Line("s", ((1, 1), (1.25, 1)), False, HERE),))
    assert "soot, backstitch, by its length in stitches: 1" in text


def test_every_line_and_knot_of_the_demo_is_told(demo_figures):
    """Every point of every path, in order; knots and beads in any order."""
    for _, figure in demo_figures:
        text = as_text(written(figure.pattern))
        paths = re.findall(r"^L(?:ine|ong stitch) .*: from corner (.*)\.$", text, re.M)
        told = Counter(tuple(re.findall(r"([\d.]+), ([\d.]+)", path)) for path in paths)
        drawn = Counter(
            tuple((f"{x:g}", f"{y:g}") for x, y in line.points) for line in figure.pattern.lines
        )
        assert told == drawn
        loops = re.findall(r"^Lazy daisy .*: from corner (.*) to its tip at (.*)\.$", text, re.M)
        assert Counter(loops) == Counter(
            tuple(f"{x:g}, {y:g}" for x, y in (daisy.base, daisy.tip))
            for daisy in figure.pattern.daisies
        )
        places = re.findall(r"^(?:French knot|Bead).*: at (.*)\.$", text, re.M)
        told = Counter(place for line in places for place in line.split("; "))
        assert told == Counter(
            f"{one.at[0]:g}, {one.at[1]:g}"
            for one in (*figure.pattern.knots, *figure.pattern.beads)
        )


def test_it_speaks_plainly(demo_figures):
    """No words of the trade of programming, one of a thing is one, and every sentence ends."""
    texts = [as_text(written(figure.pattern)) for _, figure in demo_figures]
    for text in [*texts, said(*EVERY_ROW, **EVERY_STITCH)]:
        for word in (
            "cell",
            "grid",
            "mark ",
            "fraction",
            "None",
            "index",
            "null",
            "mark)",
            "color",
        ):
            assert not re.search(rf"\b{re.escape(word)}", text), word
        assert not re.search(r"\b1 (part )?(stitches|half stitches|strands|columns|rows)\b", text)
        assert "  " not in text and "\r" not in text and text.endswith("\n")
        for line in text.split("\n\nRows\n")[1].split("\nTotals\n")[0].split("\n"):
            assert not line or line.endswith(".") or re.fullmatch(r"[A-Z][A-Za-z\d ]+", line), line


# --- the document ---------------------------------------------------------------------------------


def words_of(html):
    """The text of the page's body, one space between words."""
    body = html.split("<body", 1)[1].split(">", 1)[1]
    return " ".join(html_entities.unescape(re.sub(r"<[^>]+>", "\n", body)).split())


def page_of(of):
    return written_source(series(of), figures(of, piece()), environment()).html


def test_the_document_says_what_the_plain_text_says_in_the_same_order():
    words = words_of(page_of(sprig(*EVERY_ROW, **EVERY_STITCH)))
    sentences = BY_HAND.split("\n\nTotals\n")[0].split("\n")[4:]
    at = 0
    for sentence in filter(None, sentences):
        found = words.find(sentence, at)
        assert found >= 0, sentence
        at = found + len(sentence)
    totals = words[at:].replace(",", "")
    for line in after(BY_HAND, "Totals")[:-1]:
        assert line.replace(",", "").replace(":", "") in totals
    assert totals.endswith("All colours stitches in the rows 19")


def test_every_ten_rows_have_a_heading_to_jump_to():
    headings = re.findall(r"<h3>(.*?)</h3>", page_of(sprig(*["mt"] * 24)))
    assert headings == ["Rows 1 to 10", "Rows 11 to 20", "Rows 21 to 24"]


def test_words_of_an_author_stay_words_in_the_written_chart():
    html = page_of(sprig("m", title="Moss & <b>Clay</b>"))
    assert "Moss &amp; &lt;b&gt;Clay&lt;/b&gt;" in html


@pytest.fixture(scope="module")
def written_pdf(demo_figures, tmp_path_factory) -> Path:
    """A written chart of the demo, on A4."""
    from packetgen.render.pdf import PAPERS_MM, documents

    of_series, figure = demo_figures[-1]
    source = written_source(of_series, figure, environment())
    made = documents(
        source.html,
        source.assets,
        identifier=b"words",
        charts=source.charts,
        page_mm=source.edition.page_mm,
        papers_mm={"a4": PAPERS_MM["a4"]},
        attached=source.attached,
        dated=source.dated,
    )
    path = tmp_path_factory.mktemp("written") / "words.pdf"
    path.write_bytes(made["a4"])
    return path


@pytest.mark.slow
def test_an_accessibility_checker_reports_no_error_in_the_written_chart(written_pdf):
    """PDF/UA-1 (ISO 14289-1) by an independent checker."""
    checker = Path(sys.executable).with_name("outloud")
    result = subprocess.run([checker, "-q", written_pdf], capture_output=True, text=True)
    assert result.returncode == 0, result.stdout + result.stderr
    assert " 0 error" in result.stdout or "PASS" in result.stdout, result.stdout


@pytest.mark.slow
def test_a_second_reader_finds_no_fault_in_the_syntax_of_the_written_chart(written_pdf):
    if not shutil.which("qpdf"):
        pytest.skip("qpdf is not installed here")
    result = subprocess.run(["qpdf", "--check", written_pdf], capture_output=True, text=True)
    assert result.returncode == 0, result.stdout + result.stderr


@pytest.mark.slow
def test_the_rows_read_from_the_document_are_the_chart(written_pdf, demo_figures):
    """By an independent reader of PDF, page after page, without what is printed at the foot."""
    from pypdf import PdfReader

    figure = demo_figures[-1][1]
    lines = [
        line
        for page in PdfReader(written_pdf).pages
        for line in page.extract_text().split("\n")
        if not re.match(r"(page \d|©)|.*· revision", line)
    ]
    text = " ".join(" ".join(lines).split())
    at = 0
    for group in written(figure.pattern).groups:
        for row in group.rows:
            sentence = curled(f"{row.lead}: {row.said}")
            at = text.find(sentence, at)
            assert at >= 0, sentence
