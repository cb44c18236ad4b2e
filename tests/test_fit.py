"""Every design must lie on the panel of the finishing piece, whatever the cloth."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.diagnostics import Problems
from packetgen.model import KeepOut, Trim, Weave
from packetgen.pipeline import proof
from packetgen.reckon.coverage import complain_of_coverage
from packetgen.reckon.figures import figures
from packetgen.reckon.fit import Verdict, fit, holds, too_many
from packetgen.reckon.fit_table import columns_of, fit_table, fit_tables
from packetgen.reckon.sizes import Size, cell_mm
from packetgen.reckon.unfit import complain_of_unfit
from tests.bench.fit_tables import CLOTHS, DESIGNS, year
from tests.content_builder import CHART, FERN, FINISH, SERIES, TINY, build
from tests.stitching import option, pattern, piece, series


def test_a_card_lies_in_the_middle_with_the_same_wood_on_both_sides():
    """By hand: 150 × 100 mm and 5 mm border make 160 × 110 mm on a board of 200 × 180 mm."""
    laid = fit(Size(150, 100), 1.0, piece())
    assert laid.verdict is Verdict.FITS
    assert (laid.card.width_mm, laid.card.height_mm) == (160, 110)
    assert (laid.reveal_left_mm, laid.reveal_right_mm) == (20, 20)
    assert (laid.reveal_above_mm, laid.reveal_below_mm) == (35, 35)


def test_room_is_counted_in_whole_stitches():
    """By hand: a board of 200 mm less twice 5 mm holds 190 mm: 104.72 cells of 14 count, so 104."""
    laid = fit(Size(10, 10), cell_mm(14, 1), piece())
    assert laid.most_stitches_wide == 104
    assert laid.most_stitches_high == 93


def test_a_card_that_just_touches_the_edge_is_tight_and_a_larger_one_does_not_fit():
    assert fit(Size(190, 170), 1.0, piece()).verdict is Verdict.TIGHT
    assert fit(Size(190.5, 170), 1.0, piece()).verdict is Verdict.DOES_NOT_FIT


FRILL = Trim("gathered", 1.5, 20.0, 8.0)


def test_the_trim_round_a_card_covers_wood_on_every_side():
    """By hand: a card of 160 × 110 mm with 8 mm of frill is 176 × 126 mm on a board of 200 × 180 mm. Besides
    5 mm of border and 8 mm of frill, twice, the board holds 174 stitches of 1 mm, and 154 down."""
    laid = fit(Size(150, 100), 1.0, piece(trim=FRILL))
    assert (laid.card, laid.covered) == (Size(160, 110), Size(176, 126))
    assert laid.at_mm == (20, 35)
    assert (laid.reveal_left_mm, laid.reveal_right_mm) == (12, 12)
    assert (laid.reveal_above_mm, laid.reveal_below_mm) == (27, 27)
    assert (laid.most_stitches_wide, laid.most_stitches_high) == (174, 154)


def test_a_card_whose_trim_would_hang_over_the_board_does_not_fit():
    assert fit(Size(180, 100), 1.0, piece()).verdict is Verdict.FITS
    assert fit(Size(180, 100), 1.0, piece(trim=FRILL)).verdict is Verdict.DOES_NOT_FIT
    assert too_many((180, 100), 1.0, piece(trim=FRILL)) == ((6, 0),)


def test_a_board_on_which_only_the_trim_leaves_little_wood_is_tight():
    """By hand: 200 − 170 − 2 · (5 + 8) leave 2 mm on either side."""
    assert fit(Size(170, 100), 1.0, piece()).verdict is Verdict.FITS
    assert fit(Size(170, 100), 1.0, piece(trim=FRILL)).verdict is Verdict.TIGHT


def test_the_author_of_a_design_with_its_trim_over_the_edge_is_told_how_large_it_is_with_it():
    """By hand: 100 × 60 crosses at 14 are 181.4 × 108.9 mm, with border and frill 207.43 × 134.86 mm, told to a tenth and no less."""
    whole = series(pattern(*("m" * 100,) * 60), finish=piece(trim=FRILL))
    problems = Problems()
    complain_of_unfit((figures(whole.patterns[0], whole.finish),), whole, problems)
    (said,) = map(str, problems)
    assert "207.5 × 134.9 mm" in said


def test_a_card_moves_up_to_clear_a_pot_at_the_foot_of_the_board():
    """The pot keeps the lowest 60 mm free of cards; a card of 110 mm has to go up from the middle by 25 mm."""
    pot = KeepOut("a pot", ((90, 120), (110, 120), (110, 180), (90, 180)))
    laid = fit(Size(150, 100), 1.0, piece(keep_outs=(pot,)))
    assert laid.verdict is Verdict.FITS
    assert laid.at_mm == (20, 10)


def test_a_card_that_a_pot_leaves_no_room_for_does_not_fit():
    pot = KeepOut("a pot", ((90, 80), (110, 80), (110, 180), (90, 180)))
    assert fit(Size(150, 100), 1.0, piece(keep_outs=(pot,))).verdict is Verdict.DOES_NOT_FIT


@given(st.floats(10, 260), st.floats(10, 260))
def test_on_a_plain_board_a_card_fits_exactly_when_it_is_no_larger(width, height):
    laid = fit(Size(width, height), 1.0, piece())
    fits = width + 10 <= 200 and height + 10 <= 180
    assert (laid.verdict is not Verdict.DOES_NOT_FIT) == fits


def test_a_cloth_on_which_the_design_does_not_fit_is_told_by_how_many_stitches():
    """By hand: at 14 count a board of 100 × 180 mm holds 90 mm, 49 stitches; the design has 60."""
    narrow = piece(100)
    wide = pattern("m" * 60, cloths=(option(14), option(36, 2)))
    problems = Problems()
    complain_of_unfit((figures(wide, narrow),), series(wide, finish=narrow), problems)
    assert [str(problem) for problem in problems] == [
        "tests:1:1: on Cloth 14 the mounted design, 118.9 × 11.9 mm, is 11 stitches too wide: The Board has room for "
        "49 × 93; offer a finer cloth, a smaller design, or larger panel and parts in tests"
    ]


def test_a_border_that_takes_more_of_the_panel_than_it_leaves_is_named():
    """By hand: twice 30 mm of a panel 100 mm wide."""
    broad = piece(100, border_mm=30.0)
    wide = pattern("m" * 60, cloths=(option(14),))
    problems = Problems()
    complain_of_unfit((figures(wide, broad),), series(wide, finish=broad), problems)
    (told,) = (str(problem) for problem in problems)
    assert told.endswith("; border and trim take 60 of the panel's 100 mm: look at them in tests")


def test_of_aida_that_is_worked_over_two_blocks_that_is_the_remedy():
    """By hand: at 14 over 2 a board of 100 mm holds 24 of 40 stitches, and over 1 all of them. Where it fits all the same
    the choice is told as rare, unless the cloth's own file has it so; coverage of such large stitches is not told."""
    narrow = piece(100)
    for stitches, told in ((40, "does-not-fit"), (20, "over-rare")):
        wide = pattern("m" * stitches, cloths=(replace(option(14, 2), cloth=option(14).cloth),))
        found = figures(wide, narrow)
        problems = Problems()
        complain_of_unfit((found,), series(wide, finish=narrow), problems)
        complain_of_coverage(wide, found.works, problems)
        (only,) = problems
        assert only.code == told
        assert only.right.endswith(
            "write over: 1, as usual on aida, and not 2"
            if stitches == 40
            else "take over out of this choice"
        )


def test_where_the_edge_keeps_some_designs_from_fitting_they_are_named_in_one_line():
    """By hand: twice 30 mm of a panel of 100 mm; the other design is 5.4 mm wide."""
    broad = piece(100, border_mm=30.0)
    wide, dot = pattern("m" * 30, cloths=(option(14),)), pattern("mmm", id="dot", title="A Dot")
    problems = Problems()
    complain_of_unfit(
        tuple(figures(one, broad) for one in (wide, dot)), series(wide, dot, finish=broad), problems
    )
    (only,) = problems
    assert only.wrong == (
        "border and trim take 60 mm of the panel's 100 mm, and A Sprig does not fit what is left"
    )


@pytest.mark.parametrize(
    ("edge", "line"),
    [
        ({FINISH: ("border: 6 mm", "border: 48 mm")}, "finishes/shelf/finish.yaml:5:9"),
        ({FINISH: ("overlap: 20 mm}", "overlap: 20 mm, width: 42 mm}")}, "finishes/shelf/finish.yaml:24:59"),
    ],
    ids=["border", "trim"],
)  # fmt: skip
def test_where_the_edge_alone_keeps_all_designs_from_fitting_it_is_told_once_at_its_place(
    tmp_path, edge, line
):
    """By hand: twice 48 mm, of border or of border and trim, of a panel of 100 mm."""
    two = {path: text for path, text in TINY.items() if FERN in path}
    ivy = {path.replace("fern", "ivy"): text.replace("Fern", "Ivy") for path, text in two.items()}
    changes = {**ivy, SERIES: ("order: [fern]", "order: [fern, ivy]"), **edge}
    (told,) = proof(build(tmp_path / "content", changes)).problems.errors
    assert str(told.place) == line
    assert told.wrong == (
        "border and trim take 96 mm of the panel's 100 mm, and no design of the series fits what is left"
    )


@pytest.mark.parametrize("count", [14, 16, 18])
def test_a_design_that_fits_is_not_complained_of(count):
    small = pattern("m" * 60, cloths=(option(count),))
    problems = Problems()
    complain_of_unfit((figures(small, piece()),), series(small), problems)
    assert not list(problems)


# --- keep-outs and panels that are no rectangles ----------------------------------------------------

POT = KeepOut("a pot", ((140, 120), (200, 120), (200, 180), (140, 180)))
GABLE = ((0.0, 80.0), (100.0, 0.0), (200.0, 80.0), (200.0, 180.0), (0.0, 180.0))


def test_a_card_finds_its_place_between_pots_to_the_tenth_of_a_millimetre():
    """By hand: pots leave x from 20.25 to 130.75, so a card of 110.5 mm has one place across."""
    left = KeepOut("left pot", ((0, 0), (20.25, 0), (20.25, 180), (0, 180)))
    right = KeepOut("right pot", ((130.75, 0), (200, 0), (200, 180), (130.75, 180)))
    between = piece(keep_outs=(left, right))
    assert fit(Size(100.5, 100), 1.0, between).at_mm == (20.25, 35)
    assert fit(Size(100.6, 100), 1.0, between).verdict is Verdict.DOES_NOT_FIT


def test_a_card_goes_no_farther_from_the_middle_than_it_must():
    """By hand: a card of 130 × 130 mm would stand at 35, 25 and reach 25 mm into the pot from the left and
    35 mm from above; the shorter way out is to the left."""
    laid = fit(Size(120, 120), 1.0, piece(keep_outs=(POT,)))
    assert laid.at_mm == (10, 25)


def test_the_largest_design_clears_the_pot():
    """By hand: 100 × 100 stitches with 5 mm of border and the pot of 60 mm in the corner of 200 × 180 mm: the
    card may be 140 mm wide beside it, so 130 mm of stitching: 71 stitches of 14 count (128.8 mm)."""
    cell = cell_mm(14, 1)
    laid = fit(Size(100 * cell, 100 * cell), cell, piece(keep_outs=(POT,)))
    assert laid.largest == (71, 71)
    assert (laid.most_stitches_wide, laid.most_stitches_high) == (104, 93)


def test_a_slanted_panel_takes_what_its_slants_leave():
    """By hand: under a gable of slope 0.8 on a board 200 mm wide, a card of w × w reaches the slant at a
    height of 0.8 · w / 2 from the ridge, so 0.4 · w + w is at most 180: w is 128.57, the stitching 118.57 mm.
    """
    laid = fit(Size(90, 90), 1.0, piece(panel=GABLE))
    assert laid.largest == (118, 118)
    assert fit(Size(118.5, 118.5), 1.0, piece(panel=GABLE)).verdict is not Verdict.DOES_NOT_FIT
    assert fit(Size(118.7, 118.7), 1.0, piece(panel=GABLE)).verdict is Verdict.DOES_NOT_FIT


@st.composite
def panels(draw):
    """A board, a gable or an L, with no pot, or one that is square or three-cornered."""
    ell = ((0.0, 0.0), (120.0, 0.0), (120.0, 60.0), (200.0, 60.0), (200.0, 180.0), (0.0, 180.0))
    outline = draw(st.sampled_from((piece().panel, GABLE, ell)))
    x, y = draw(st.integers(20, 150)), draw(st.integers(60, 150))
    wide, high = draw(st.integers(5, 40)), draw(st.integers(5, 40))
    shape = draw(st.sampled_from((((0, 0), (1, 0), (1, 1), (0, 1)), ((0, 1), (0.5, 0), (1, 1)))))
    pot = KeepOut("a pot", tuple((x + wide * u, y + high * v) for u, v in shape))
    return piece(panel=outline, keep_outs=(pot,) if draw(st.booleans()) else ())


@settings(max_examples=60, deadline=None)
@given(panels(), st.integers(10, 140), st.integers(10, 140))
def test_the_largest_of_a_shape_fits_and_a_size_more_does_not(on, wide, high):
    """The largest finds a place; the design itself finds one exactly when it is no larger; and no design of
    the shape that is a stitch more on both sides finds one."""
    cell = cell_mm(16, 1)
    laid = fit(Size(wide * cell, high * cell), cell, on)
    columns, rows = laid.largest
    assert holds((columns, rows), cell, on)
    fits = laid.verdict is not Verdict.DOES_NOT_FIT
    assert fits == (columns >= wide and rows >= high)
    # Both sides were rounded down from one scale, so with a stitch more each the scale is beyond.
    assert not holds((columns + 1, rows + 1), cell, on)


@settings(max_examples=60, deadline=None)
@given(panels(), st.integers(60, 140), st.integers(60, 140))
def test_what_is_too_much_is_the_least_that_helps(on, wide, high):
    """Without those columns and rows the design fits; with one of them more it does not."""
    cell = cell_mm(14, 1)
    ways = too_many((wide, high), cell, on)
    if holds((wide, high), cell, on):
        assert ways == ()
    for columns, rows in ways:
        assert holds((wide - columns, high - rows), cell, on)
        if columns:
            assert not holds((wide - columns + 1, high - rows), cell, on)
        if rows:
            assert not holds((wide - columns, high - rows + 1), cell, on)


@settings(max_examples=40, deadline=None)
@given(panels(), st.integers(10, 120), st.integers(10, 120))
def test_a_card_that_is_laid_lies_in_the_room(on, wide, high):
    """Looked at with a grid of points, not with polygons: no point inside the card is on a pot."""
    laid = fit(Size(wide, high), 1.0, on)
    if laid.verdict is Verdict.DOES_NOT_FIT:
        return
    x, y = laid.at_mm
    for i in range(1, 20):
        for j in range(1, 20):
            at = x + laid.card.width_mm * i / 20, y + laid.card.height_mm * j / 20
            assert inside(at, on.panel)
            assert not any(inside(at, pot.outline) for pot in on.keep_outs)


def inside(at, outline) -> bool:
    """By crossings of a ray to the right."""
    x, y = at
    sides = zip(outline, (*outline[1:], outline[0]))
    return (
        sum(
            (ya > y) != (yb > y) and x < xa + (y - ya) * (xb - xa) / (yb - ya)
            for (xa, ya), (xb, yb) in sides
        )
        % 2
        == 1
    )


# --- what the author is told ------------------------------------------------------------------------


def complaint(of, on) -> str:
    problems = Problems()
    complain_of_unfit((figures(of, on),), series(of, finish=on), problems)
    (problem,) = problems
    return str(problem)


def test_a_design_two_stitches_too_wide_is_told_so():
    """By hand: 200 mm less 10 mm of border hold 104 stitches of 14 count; the design has 106."""
    said = complaint(pattern("m" * 106), piece())
    assert "is 2 stitches too wide: The Board has room for 104 × 93" in said


def test_proof_fails_a_series_with_a_design_two_stitches_too_wide(tmp_path):
    """By hand: a shelf of 100 mm less 12 mm of border holds 88 mm, 48 stitches of 14 an inch; here are 50."""
    wide = {CHART: f"rrbb{'r' * 46}\nrk..{'r' * 46}\n"}
    checked = proof(build(tmp_path, wide))
    assert not checked.sound
    (error,) = checked.problems.errors
    assert error.code == "does-not-fit"
    assert "is 2 stitches too wide: The Shelf has room for 48 × 48" in str(error)
    narrower = {CHART: f"rrbb{'r' * 44}\nrk..{'r' * 44}\n"}
    assert proof(build(tmp_path / "narrower", narrower)).sound


def test_a_design_too_large_on_all_of_its_cloths_is_told_once_on_the_finest():
    """By hand: of 200 mm less 10 mm of border 18 to the inch hold 134 stitches, 14 to the inch 104."""
    cloths = (option(14), option(18), option(16))
    said = complaint(pattern("m" * 140, cloths=cloths), piece())
    assert f"on {cloths[1].cloth.name}, the finest of its 3 cloths, the mounted design, " in said
    assert "is 6 stitches too wide: The Board has room for 134 × " in said


def test_where_no_design_fits_on_any_cloth_the_panel_is_told_once():
    """By hand: 50 mm less 10 mm of border hold 28 stitches at 18 to the inch; of the two designs one has 40, one 30."""
    cloths, small = (option(14), option(18)), piece(50)  # 180 mm high
    wide = pattern("m" * 40, cloths=cloths)
    less = pattern("m" * 30, cloths=cloths, id="less", title="A Leaf")
    problems = Problems()
    found = tuple(figures(one, small) for one in (wide, less))
    complain_of_unfit(found, series(wide, less, finish=small), problems)
    (only,) = problems
    assert only.code == "none-fits"
    assert only.wrong == "none of the 2 designs fits a panel of 50 × 180 mm, on any of its cloths"
    assert only.right == (
        f"look once more at 'outline' here; the nearest, A Leaf on {cloths[1].cloth.name}, is 2 stitches too wide"
    )
    problems = Problems()
    dot = pattern("mmm", cloths=cloths, id="dot", title="A Dot")
    found = tuple(figures(one, small) for one in (wide, dot))
    complain_of_unfit(found, series(wide, dot, finish=small), problems)
    assert [one.code for one in problems] == ["does-not-fit"], "one fits, so the other is told"


def test_where_only_bare_edges_are_too_many_it_is_told_that_the_rest_fits():
    """By hand: 200 mm less 10 mm of border hold 104 stitches of 14 count; of 106 two at the left are bare."""
    said = complaint(pattern(".." + "m" * 104), piece())
    assert "is 2 stitches too wide: The Board has room for 104 × 93" in said
    assert said.endswith(
        "without its bare edges it is 104 × 1 and fits: packetgen chart crop, or bring with --trim, takes them off"
    )
    assert "bare edges" not in complaint(pattern("." + "m" * 105), piece())


def test_both_sides_are_told_where_both_are_too_long():
    said = complaint(pattern(*["m" * 105] * 96), piece())
    assert "is 1 stitch too wide and 3 too high: The Board has room for 104 × 93" in said


def test_a_pot_is_told_by_either_way_round_it():
    """By hand: 140 mm beside the pot hold 130 mm, 71 stitches, so 80 are 9 too many; 120 mm above it hold
    110 mm, 60 stitches, so 80 are 20 too many."""
    said = complaint(pattern(*["m" * 80] * 80), piece(keep_outs=(POT,)))
    assert (
        "is 9 stitches too wide, or 20 stitches too high: The Board has room for 71 × 80 or 80 × 60"
        in said
    )


def test_a_panel_that_is_all_pot_is_told_without_a_number():
    pot = KeepOut("a pot", ((0, 0), (200, 0), (200, 180), (0, 180)))
    assert "in the way of a part that the panel must keep free" in complaint(
        pattern("mm"), piece(keep_outs=(pot,))
    )


# --- the tables -------------------------------------------------------------------------------------


def test_cloths_with_the_same_stitches_in_an_inch_share_a_row():
    """By the definition of count: 28 threads over two are 14 stitches an inch, as are 14 blocks."""
    aida, even, fine = option(14), option(28, 2, Weave.EVENWEAVE), option(40, 2, Weave.LINEN)
    year = series(pattern("mm", cloths=(aida, even)), pattern("mm", cloths=(fine,), id="other"))
    columns = columns_of(year)
    assert [column.stitches_per_inch for column in columns] == [14, 16, 18, 20]
    assert [ground.name for ground in columns[0].of_series] == ["Cloth 14", "Cloth 28, over 2"]
    assert [ground.name for ground in columns[1].grounds] == [
        "16-count aida",
        "32-count evenweave or linen over 2 threads",
    ]


def test_a_design_is_tried_on_the_cloths_of_the_others_too():
    aida, fine = option(14), option(40, 2, Weave.LINEN)
    year = series(
        pattern("m" * 120, cloths=(fine,)),
        pattern("mm", cloths=(aida,), id="other"),
        finish=piece(),
    )
    coarse, *_, finest = fit_tables(year)[0].rows
    assert coarse.fit.verdict is Verdict.DOES_NOT_FIT and coarse.promised == ()
    assert finest.fit.verdict is Verdict.FITS
    assert [ground.name for ground in finest.promised] == ["Cloth 40, over 2"]
    assert fit_table(year.patterns[0], year) == fit_tables(year)[0]


def test_the_table_says_what_is_promised_as_the_figures_do():
    year = series(pattern("m" * 100, cloths=(option(14), option(16))), finish=piece())
    (table,) = fit_tables(year)
    by_size = {row.column.cell_mm: row.fit for row in table.rows}
    for on in figures(year.patterns[0], year.finish).cloths:
        assert by_size[on.cell_mm] == on.fit


def test_eight_designs_on_fifteen_cloths_have_a_row_for_each_cloth():
    tables = fit_tables(year())
    assert len(tables) == DESIGNS and {len(table.rows) for table in tables} == {CLOTHS}
