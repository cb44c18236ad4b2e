"""Templates of the shaped parts of a finishing piece: each at its size, none over another, and where they stand."""

import io
import re
from dataclasses import replace
from functools import cache

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from pypdf import PdfReader
from shapely import Polygon

from packetgen.chart.full_size import ROOM_HIGH_MM, ROOM_WIDE_MM, leaves, shows
from packetgen.chart.part_templates import part_templates
from packetgen.pipeline import proof, public_files
from packetgen.pipeline.packets import papers
from packetgen.reckon.sawing import to_saw
from packetgen.render.part_pages import parts_source, parts_stem
from packetgen.render.templates import environment
from tests.content_builder import FERN, FINISH, TINY, build
from tests.stitching import pattern, piece, series
from tests.test_builds import Desk, engine  # noqa: F401
from tests.test_full_size import MM, NEAR_MM, _pages_of

BOARD = piece().parts[0]
# A half moon, a gable like that of another test, and a ring of a bow wider than a sheet.
MOON = tuple(
    (10 * x, 10 * y) for x, y in ((0, 0), (4, 0), (3.8, 1), (3, 1.8), (2, 2), (1, 1.8), (0.2, 1))
)
GABLE = ((0.0, 40.0), (50.8, 0.0), (101.6, 40.0))
BOW = ((0.0, 60.0), (150.0, 0.0), (300.0, 60.0), (150.0, 30.0))


def part(name: str, outline, pieces: int = 1):
    return replace(BOARD, name=name, outline=outline, pieces=pieces)


def whole(*parts):
    return series(pattern("mt"), finish=piece(parts=(BOARD, *parts)))


SHAPED = whole(
    part("moon", MOON, 2), part("gable", GABLE), part("bow", BOW), part("other moon", MOON)
)


@cache
def document(paper: str = "a4") -> bytes:
    env = environment()
    return papers(parts_stem(SHAPED), 1, parts_source(SHAPED, env), env)[
        f"hedge-year-parts-{paper}.pdf"
    ]


# --- measured on the page ---------------------------------------------------------------------------


def test_every_corner_of_a_shaped_part_measures_on_paper_what_its_author_wrote():
    """Read from the PDF by another library: the half moon of 40 × 20 mm and the gable of 101.6 × 40 mm."""
    sheet = _pages_of(document())[0]
    by_width = sorted(sheet.curves, key=lambda one: one[0][2] - one[0][0])
    assert len(by_width) == 2
    for (box, shape), outline in zip(by_width, (MOON, GABLE), strict=True):
        found = [(x / MM - box[0], box[3] - y / MM) for x, y in shape.pts]
        for at in outline:
            assert min(abs(x - at[0]) + abs(y - at[1]) for x, y in found) < 2 * NEAR_MM


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_every_sheet_has_its_check_square_and_says_how_it_is_printed(paper):
    pages = _pages_of(document(paper))
    assert len(pages) == 1 + 2, "the bow of 300 mm needs two"
    for page in pages:
        squares = [s for s in page.sizes() if abs(s[0] - 50) < NEAR_MM and abs(s[1] - 50) < NEAR_MM]
        assert len(squares) == 1


def test_a_sheet_says_which_number_is_which_part_and_how_many_are_sawn():
    """Two parts of one shape are one template; the board is a rectangle, which a ruler draws."""
    told = [
        " ".join(page.extract_text().split()) for page in PdfReader(io.BytesIO(document())).pages
    ]
    assert "1: moon and other moon, 3 pieces; 2: gable." in told[1]
    assert "Template: bow, page 1 of 2" in told[2] and "Template: bow, page 2 of 2" in told[3]
    assert "its template at full size on the pages that follow" in told[0]
    assert "Sanding dust" in told[0] and "board 1 7.87 × 7.09 in" in told[0]
    assert not any("Template: board" in page for page in told)


# --- on sheets --------------------------------------------------------------------------------------

_SIDES = st.floats(1, 400).map(lambda side: round(side, 1))
_TRIANGLES = st.tuples(_SIDES, _SIDES).map(
    lambda side: ((0.0, side[1]), (side[0] / 2, 0.0), (side[0], side[1]))
)


@given(st.lists(_TRIANGLES, max_size=40))
@example([((0.0, 1.0), (93.0, 0.0), (186.0, 1.0)), ((0.0, 1.0), (0.5, 0.0), (1.0, 1.0))])
def test_every_shape_lies_on_one_template_at_its_size_and_none_on_another(outlines):
    parts = tuple(part(f"part {number}", outline) for number, outline in enumerate(outlines))
    finish = piece(parts=(BOARD, *parts))
    templates = part_templates(finish)
    names = [name for one in templates for _, alike in one.parts for name in alike.names]
    assert sorted(names) == sorted(one.name for one in parts)
    for one in templates:
        shapes = [Polygon(loop.outline) for loop in one.template.loops]
        areas = sorted(Polygon(alike.outline_mm).area for _, alike in one.parts)
        assert sorted(shape.area for shape in shapes) == pytest.approx(areas)
        assert all(a.distance(b) > 1 for n, a in enumerate(shapes) for b in shapes[:n])
        if len(shapes) > 1:
            (page,) = leaves(one.template)
            left, top, right, bottom = one.template.bounds_mm
            assert right - left <= ROOM_WIDE_MM and bottom - top <= ROOM_HIGH_MM
            assert [note.words for note in one.template.notes]
            assert all(shows(page, note) for note in one.template.notes)
            numbers = {note.words for note in one.template.notes}
            assert numbers == {str(number) for number, _ in one.parts}


def test_many_small_parts_are_named_beside_the_check_square():
    """No more lie on a sheet than can be said there."""
    many = tuple(
        part(f"leaf {n}", ((0, 10 + n / 10), (5, 0), (10, 10 + n / 10))) for n in range(30)
    )
    templates = part_templates(piece(parts=many))
    assert [len(one.parts) for one in templates] == [12, 12, 6]
    assert {n for one in templates for n, _ in one.parts} == set(range(1, 31))


def test_what_is_sawn_alike_is_one_template():
    (alike,) = (one for one in to_saw(SHAPED.finish) if "moon" in one.names)
    assert alike.names == ("moon", "other moon") and alike.pieces == 3
    assert (
        sum("moon" in of.names for one in part_templates(SHAPED.finish) for _, of in one.parts) == 1
    )


# --- where they stand -------------------------------------------------------------------------------

_CUT = {FINISH: TINY[FINISH].replace("120,120 0,120", "120,110 110,120 0,120")}
_PAPERS = {f"site/garden-year-parts-{paper}.pdf" for paper in ("a4", "letter")}


def test_a_piece_of_rectangles_has_no_templates_and_its_page_says_nothing_of_them(tmp_path, engine):  # noqa: F811
    assert parts_source(whole(), environment()) is None
    desk = Desk(tmp_path, None)
    build(desk.content)
    built = desk.build()
    assert built.sound and not any("parts" in path for path in built.outputs)
    assert "full size, to print" not in (desk.folder / "site/finishing-piece.html").read_text()


def test_a_build_puts_them_beside_the_page_of_the_piece_and_makes_them_once(tmp_path, engine):  # noqa: F811
    desk = Desk(tmp_path, _CUT)
    built = desk.build()
    assert built.sound and {path for path in built.outputs if "parts" in path} == _PAPERS
    page = (desk.folder / "site/finishing-piece.html").read_text()
    assert set(re.findall(r'href="([^"]*-parts[^"]*)"', page)) == {
        path.removeprefix("site/") for path in _PAPERS
    }
    assert engine.count("garden-year-parts/1") == 1
    engine.clear()
    desk.write(f"{FERN}/story.md", "It grew behind the tap, and then before it.\n")
    assert not _PAPERS & set(desk.build().made) and engine == ["fern/1"]
    desk.write(FINISH, _CUT[FINISH].replace("name: back", "name: rear board"))
    assert set(desk.build().made) >= _PAPERS and "garden-year-parts/1" in engine


def test_they_go_when_the_last_shaped_part_goes(tmp_path, engine):  # noqa: F811
    desk = Desk(tmp_path, _CUT)
    desk.build()
    desk.write(FINISH, TINY[FINISH])
    assert set(desk.build().gone) >= _PAPERS


def test_a_look_before_the_build_says_that_they_will_stand_there(tmp_path):
    checked = proof(build(tmp_path, _CUT))
    page = public_files(checked, environment())["site/finishing-piece.html"].decode()
    assert "Templates of the shaped parts at full size stand here once the series is built." in page
