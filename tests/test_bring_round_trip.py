"""A chart drawn as a picture and read again is the very same chart."""

from io import BytesIO

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from packetgen.bring.brought import bring
from packetgen.bring.drawn import chart_png, mark_notes
from packetgen.bring.key_text import KnownLine
from packetgen.bring.picture import MarkNote, read_pixels
from packetgen.bring.pixel_chart import read_chart
from packetgen.colour import blended
from packetgen.diagnostics import Problems
from packetgen.model import Colour, Pattern, Stitch
from tests.any_pattern import patterns
from tests.demo_patterns import PATTERNS


def drawing_of(data: bytes):
    problems = Problems()
    pixels = read_pixels(data, "chart.png", problems)
    drawing = read_chart(pixels, None, "chart.png", problems)
    assert [str(problem) for problem in problems] == []
    return drawing


def known(pattern: Pattern) -> tuple[KnownLine, ...]:
    """The key as it stands in a pattern.yaml."""
    model = pattern.thread_sets[0]
    lines = []
    for line in pattern.key:
        colours = line.threads[model.id]
        own = all(card == model.card for card in line.cards_in(model))
        drawn = Colour("", "", blended(tuple(one.hex for one in colours)))
        number = colours[0].number if own and len(colours) == 1 else ""
        lines.append(KnownLine(line.mark, drawn, number, line.stitch))
    return tuple(lines)


def brought(pattern: Pattern, data: bytes):
    card = tuple(pattern.thread_sets[0].card.colours.values())
    return bring(drawing_of(data), card, known(pattern))


def in_full_colour(data: bytes, cell: int = 1) -> bytes:
    """As another program saves it: no palette, no words in it, perhaps enlarged."""
    picture = Image.open(BytesIO(data)).convert("RGBA")
    size = picture.width * cell, picture.height * cell
    target = BytesIO()
    picture.resize(size, Image.Resampling.NEAREST).save(target, "PNG")
    return target.getvalue()


@pytest.fixture(scope="module", params=PATTERNS)
def design(request, demo):
    return next(
        figure.pattern
        for each in demo.reckoned
        for figure in each.figures
        if figure.pattern.id == request.param
    )


@pytest.mark.parametrize("px", [1, 2, 8])
def test_every_demo_chart_comes_back(design, px):
    """Bare cloth, half stitches, blends and braids too, though some of them share a colour."""
    found = brought(design, chart_png(design.grid.rows, mark_notes(design), px))
    assert found.rows == design.grid.rows
    assert all(entry.kept for entry in found.entries) and found.largest == 0


@pytest.mark.parametrize("cell", [1, 9])
def test_in_full_colour_a_chart_comes_back_but_for_marks_that_share_a_colour(design, cell):
    notes = mark_notes(design)
    found = brought(design, in_full_colour(chart_png(design.grid.rows, notes), cell))
    hex_of = {note.mark: note.hex for note in notes}
    used = set("".join(design.grid.rows)) - {"."}
    shared = {mark for mark in used if sum(hex_of[mark] == note.hex for note in notes) > 1}
    for was, row in zip(design.grid.rows, found.rows, strict=True):
        for before, after in zip(was, row, strict=True):
            assert after == before or (before in shared and hex_of[after] == hex_of[before])


@settings(max_examples=60, deadline=None)
@given(patterns(), st.integers(1, 9))
def test_any_chart_comes_back(pattern, px):
    """Also one of a single stitch, from whose picture alone no size could be found."""
    if not set("".join(pattern.grid.rows)) - {"."}:
        return
    found = brought(pattern, chart_png(pattern.grid.rows, mark_notes(pattern), px))
    assert found.rows == pattern.grid.rows


@settings(max_examples=60, deadline=None)
@given(st.data())
def test_marks_and_kinds_of_stitch_come_back_where_there_is_no_key_yet(data):
    """The picture alone says them."""
    card = tuple(Colour(f"N{n}", f"colour {n}", f"#{n * 9:02x}4080") for n in range(1, 12))
    signs = data.draw(
        st.lists(
            st.characters(categories=("L", "N", "S"), exclude_characters=".#"),
            min_size=1,
            max_size=8,
            unique=True,
        )
    )
    ways = st.tuples(
        st.sampled_from(card), st.sampled_from((Stitch.FULL, Stitch.HALF, Stitch.HALF_BACK))
    )
    worked = data.draw(st.lists(ways, min_size=len(signs), max_size=len(signs), unique=True))
    notes = [MarkNote(sign, colour.hex, stitch) for sign, (colour, stitch) in zip(signs, worked)]
    row = st.lists(st.sampled_from([".", *signs]), min_size=6, max_size=6).map("".join)
    rows = tuple(data.draw(st.lists(row, min_size=1, max_size=6)))
    if not set("".join(rows)) - {"."}:
        return
    drawing = drawing_of(chart_png(rows, notes, 3))
    found = bring(drawing, card)
    assert found.rows == rows
    assert {(one.mark, one.colour.hex, one.stitch) for one in found.entries} <= {
        (note.mark, note.hex, note.stitch) for note in notes
    }


def test_the_words_in_a_picture_are_not_believed_where_its_palette_has_changed():
    """Another program has sorted the palette anew and kept the words: colours decide."""
    rows = ("aab", "b..")
    notes = [MarkNote("a", "#a04030", Stitch.FULL), MarkNote("b", "#4f7942", Stitch.FULL)]
    picture = Image.open(BytesIO(chart_png(rows, notes)))
    words = dict(picture.info)
    other = np.array([0, 2, 1], np.uint8)[np.array(picture)]
    again = Image.fromarray(other, "P")
    again.putpalette([255, 255, 255, 0x4F, 0x79, 0x42, 0xA0, 0x40, 0x30])
    from PIL.PngImagePlugin import PngInfo

    kept = PngInfo()
    kept.add_itxt("Chart marks", words["Chart marks"])
    target = BytesIO()
    again.save(target, "PNG", transparency=0, pnginfo=kept)
    card = (Colour("1", "brick", "#a04030"), Colour("2", "fern", "#4f7942"))
    assert bring(drawing_of(target.getvalue()), card).rows == rows
