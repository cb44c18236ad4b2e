"""Templates at full size: what a ruler would measure on the printed page."""

import io
import subprocess
import sys
from dataclasses import replace
from functools import cache
from math import dist
from pathlib import Path

import pypdfium2
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pdfminer.high_level import extract_pages
from pdfminer.layout import LTAnno, LTChar, LTContainer, LTCurve, LTLine, LTRect
from pypdf import PdfReader

from packetgen.chart.editions import COLOUR
from packetgen.chart.full_size import (
    OVERLAP_MM,
    ROOM_HIGH_MM,
    ROOM_WIDE_MM,
    Disc,
    Loop,
    Template,
    leaves,
    rectangle,
)
from packetgen.chart.mounting_templates import card_templates, named_cards
from packetgen.model import KeepOut, Magnets
from packetgen.reckon.figures import figures
from packetgen.render.full_size_pages import MOST_PAGES, full_size
from packetgen.render.look_style import packet_style
from packetgen.render.pdf import PAPERS_MM, documents
from packetgen.render.templates import environment
from tests.outside import rows as published
from tests.stitching import option, pattern, piece, series

MM = 72 / 25.4
NEAR_MM = 0.1
SPRIG = pattern(*("m" * 70,) * 60, cloths=(option(14), option(16), option(28, 2)))
ONE = pattern(*("m" * 70,) * 60, cloths=(option(14),))
LARGE = pattern(*("m" * 200,) * 150, cloths=(option(14),))
BOARD = piece(500, 400)


_DOCUMENT = """<!DOCTYPE html><html lang="en-GB"><head><meta charset="utf-8"><title>Templates</title>
<style>{{ font_css|safe }}{% include "packet/packet.css" %}</style></head>
<body><h1>Templates</h1>{% include "packet/full-size.html" %}</body></html>"""


@cache
def made(which: str, paper: str = "a4") -> bytes:
    """The full-size pages of a design as they stand in its packet, and nothing else of it."""
    of, finish = {"sprig": (SPRIG, piece()), "large": (LARGE, BOARD), "house": (ONE, HOUSE)}[which]
    return _document(full_size(series(of, finish=finish), figures(of, finish)), paper)


def _document(whole, paper: str = "a4") -> bytes:
    html = environment().from_string(_DOCUMENT).render(full_size=whole, font_css=packet_style())
    day = SPRIG.revisions[-1].on
    return documents(html, whole.assets, b"x", {}, COLOUR.page_mm, PAPERS_MM, {}, day)[paper]


class Page:
    """One full-size page as pdfminer sees it, in mm from its lower left corner."""

    def __init__(self, number: int, page) -> None:
        self.number, self.width, self.height = number, page.width / MM, page.height / MM
        self.rects, self.curves, self.lines, self.text = [], [], [], ""
        self.small: list[
            tuple[str, float, float]
        ] = []  # letters within the drawing, with their place
        # The words stand above the drawing, the number of the page below it.
        foot = (self.height - 279.4) / 2 + 17
        self.drawing = (foot, foot + ROOM_HIGH_MM + 1.5)
        self._walk(page)

    def _walk(self, item) -> None:
        for each in item:
            if isinstance(each, LTContainer):
                self._walk(each)
            elif isinstance(each, LTChar | LTAnno):
                self.text += each.get_text().replace("\n", " ")
                if isinstance(each, LTChar) and self.drawing[0] <= each.y0 / MM <= self.drawing[1]:
                    self.small.append((each.get_text(), each.x0 / MM, each.y0 / MM))
            elif isinstance(each, LTCurve) and each.stroke:
                box = tuple(edge / MM for edge in each.bbox)
                kind = (
                    self.rects if isinstance(each, LTRect)
                    else self.lines if isinstance(each, LTLine)
                    else self.curves
                )  # fmt: skip
                kind.append((box, each))

    def sizes(self) -> list[tuple[float, float]]:
        return [(right - left, top - foot) for (left, foot, right, top), _ in self.rects]

    @property
    def crosses(self) -> list[tuple[float, float]]:
        """Middles of two short lines that cross there."""
        middles = {}
        for (left, foot, right, top), _ in self.lines:
            if max(right - left, top - foot) <= 7.1:
                at = (round((left + right) / 2, 2), round((foot + top) / 2, 2))
                middles[at] = middles.get(at, 0) + 1
        return [at for at, times in middles.items() if times == 2]


@cache
def full_size_pages(which: str, paper: str = "a4") -> tuple[Page, ...]:
    return _pages_of(made(which, paper))


def _pages_of(pdf: bytes) -> tuple[Page, ...]:
    found = (Page(n, page) for n, page in enumerate(extract_pages(io.BytesIO(pdf), laparams=None)))
    return tuple(page for page in found if "100 %" in page.text and "Template" in page.text)


HOUSE = piece(
    panel=((0, 40), (90, 0), (180, 40), (180, 170), (0, 170)),
    keep_outs=(KeepOut("step", ((150, 150), (180, 150), (180, 170), (150, 170))),),
    magnets=Magnets(4, 10.0, 2.0, 15.0),
)


# --- measured on the page ---------------------------------------------------------------------------


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize(("which", "pages"), [("sprig", 1 + 2), ("large", 4 + 8), ("house", 1 + 1)])
def test_every_full_size_page_has_a_square_of_fifty_millimetres(which, pages, paper):
    found = full_size_pages(which, paper)
    assert len(found) == pages
    for page in found:
        squares = [s for s in page.sizes() if abs(s[0] - 50) < NEAR_MM and abs(s[1] - 50) < NEAR_MM]
        assert len(squares) == 1


def test_the_square_measures_fifty_millimetres_when_printed():
    """Rasterised by another library at ten dots to the millimetre, and measured from edge to edge of its ink."""
    card = full_size_pages("sprig")[0]
    document = pypdfium2.PdfDocument(made("sprig"))
    image = document[card.number].render(scale=254 / 72).to_pil().convert("L")
    (box,) = [b for b, _ in card.rects if abs(b[2] - b[0] - 50) < NEAR_MM]
    middle_y = round((card.height - (box[1] + box[3]) / 2 + 10) * 10)
    row = [x for x in range(image.width) if image.getpixel((x, middle_y)) < 128]
    edges = [x for x in row if box[0] * 10 - 8 < x < box[2] * 10 + 8]
    middles = [run for run in (edges[0], edges[-1])]
    assert middles[1] - middles[0] == pytest.approx(500, abs=4)


def test_card_and_wadding_measure_what_was_reckoned_by_hand():
    """70 × 60 crosses at 14 are 70 · 25.4/14 = 127 mm × 108.857 mm; with 5 mm of border 137 × 118.857; the wadding
    1 mm less on every side. At 16: 111.125 × 95.25 mm, the card 121.125 × 105.25 mm."""
    sizes = full_size_pages("sprig")[0].sizes()
    for wanted in ((137, 118.857), (135, 116.857), (121.125, 105.25), (119.125, 103.25)):
        assert any(
            abs(w - wanted[0]) < NEAR_MM and abs(h - wanted[1]) < NEAR_MM for w, h in sizes
        ), wanted


def test_the_panel_measures_what_its_author_wrote():
    """A panel with a gable: its five corners stand where they were written, to a tenth, and so does its step."""
    (_, panel) = full_size_pages("house")
    ((box, shape),) = [(b, c) for b, c in panel.curves if b[2] - b[0] > 100]
    points = {(round(x / MM - box[0], 1), round(box[3] - y / MM, 1)) for x, y in shape.pts}
    assert points == {(0, 40), (90, 0), (180, 40), (180, 170), (0, 170)}
    keep_outs = [s for s in panel.sizes() if abs(s[0] - 30) < NEAR_MM and abs(s[1] - 20) < NEAR_MM]
    assert len(keep_outs) == 1


def test_washers_and_magnets_have_their_crosses_at_the_places_of_the_plan():
    """On the panel of a gable: as far from its left edge and its top as the plan says."""
    (card, panel) = full_size_pages("house")
    plan = figures(ONE, HOUSE).magnets
    ((box, _),) = [(b, c) for b, c in panel.curves if b[2] - b[0] > 100]
    found = [(x - box[0], box[3] - y) for x, y in panel.crosses]
    assert len(plan.centres_mm) == 4
    for centre in plan.centres_mm:
        assert min(dist(centre, at) for at in found) < NEAR_MM
    between = sorted(dist(a, b) for a in card.crosses for b in card.crosses)
    assert between == pytest.approx(sorted(dist(a, b) for a in found for b in found), abs=NEAR_MM)


@pytest.mark.parametrize("which", ["sprig", "large", "house"])
def test_a_full_size_page_fits_both_papers(which):
    """Nothing drawn is nearer than a quarter of an inch to the edge of A4 or Letter (ISO 216, ANSI/ASME Y14.1):
    what printers leave free (common practice, no source). Lines that go on on the next page are cut by the
    edge of the drawing."""
    sizes = {row["name"].lower(): row for row in published("paper_sizes_points")}
    for paper in ("a4", "letter"):
        for page in full_size_pages(which, paper):
            assert page.width == pytest.approx(float(sizes[paper]["width_mm"]), abs=0.01)
            assert page.height == pytest.approx(float(sizes[paper]["height_mm"]), abs=0.01)
            side, foot = (page.width - ROOM_WIDE_MM) / 2, (page.height - 279.4) / 2
            assert side >= 25.4 / 4 and foot + 8 >= 25.4 / 4
            for _, x, y in page.small:
                assert side <= x <= page.width - side and foot + 6 <= y


# --- on several pages --------------------------------------------------------------------------------


def joins(page: Page) -> dict[str, tuple[float, float]]:
    """Small letter → the cross that it stands beside."""
    found = {}
    for at in page.crosses:
        near = [t for t, x, y in page.small if 0 < x - at[0] < 2 and 0 < y - at[1] + 1 < 2.5]
        if near and near[0].islower():
            found[near[0]] = at
    return found


def test_neighbouring_pages_meet_at_their_crosses():
    """A card of 372.857 × 282.143 mm on four pages: by letters laid over each other, every shared cross meets to
    0.1 mm, and the outline of the whole is where it was on the first page."""
    pages = full_size_pages("large")[:4]
    all_joins = [joins(page) for page in pages]
    letters = [letter for found in all_joins for letter in found]
    assert sorted(letters) == sorted(2 * "abcdefgh")
    laid = {0: (0.0, 0.0)}
    while len(laid) < 4:
        for number, at in list(laid.items()):
            for other in set(range(4)) - set(laid):
                shared = set(all_joins[number]) & set(all_joins[other])
                if shared:
                    one = min(shared)
                    laid[other] = tuple(
                        at[k] + all_joins[number][one][k] - all_joins[other][one][k] for k in (0, 1)
                    )
    placed: dict[str, list[tuple[float, float]]] = {}
    outlines = []
    for number, page in enumerate(pages):
        move = laid[number]
        for letter, at in all_joins[number].items():
            placed.setdefault(letter, []).append((at[0] + move[0], at[1] + move[1]))
        (box,) = [b for b, _ in page.rects if b[2] - b[0] > 372]
        assert box[2] - box[0] == pytest.approx(372.857, abs=NEAR_MM)
        assert box[3] - box[1] == pytest.approx(282.143, abs=NEAR_MM)
        outlines.append((box[0] + move[0], box[1] + move[1]))
    for one, other in placed.values():
        assert dist(one, other) < NEAR_MM
    for outline in outlines[1:]:
        assert dist(outline, outlines[0]) < NEAR_MM


def on_page(page, spot) -> bool:
    x, y = spot[0] - page.left_mm, spot[1] - page.top_mm
    return -1e-6 <= x <= ROOM_WIDE_MM + 1e-6 and -1e-6 <= y <= ROOM_HIGH_MM + 1e-6


def test_a_page_with_nothing_on_it_is_left_out():
    """A board of 500 × 400 mm takes three by three pages; the middle one shows no edge, and has no magnet on it."""
    board = Loop(rectangle(0, 0, 500, 400))
    assert len(leaves(Template((board,), (), ()))) == 8
    assert len(leaves(Template((board,), (Disc((250, 200), 10, "1"),), ()))) == 9


@given(st.floats(20, 1500), st.floats(20, 1500), st.floats(-50, 50))
def test_all_of_an_outline_is_on_some_page_and_every_seam_has_two_crosses(wide, high, at):
    template = Template((Loop(rectangle(at, -at, at + wide, -at + high)),), (), ())
    pages = leaves(template)
    for share in (step / 40 for step in range(41)):
        x, y = at + share * wide, -at + share * high
        for spot in ((x, -at), (x, -at + high), (at, y), (at + wide, y)):
            assert any(on_page(page, spot) for page in pages), spot
    by_place = {(p.column, p.row): p for p in pages}
    for (column, row), page in by_place.items():
        for step, neighbour in (
            ((1, 0), by_place.get((column + 1, row))),
            ((0, 1), by_place.get((column, row + 1))),
        ):
            if neighbour is None:
                continue
            shared = set(page.joins) & set(neighbour.joins)
            assert len(shared) == 2
            apart = (neighbour.left_mm - page.left_mm, neighbour.top_mm - page.top_mm)
            wanted = (step[0] * (ROOM_WIDE_MM - OVERLAP_MM), step[1] * (ROOM_HIGH_MM - OVERLAP_MM))
            assert apart == pytest.approx(wanted, abs=1e-6)
            for join in shared:
                for one in (page, neighbour):
                    assert 4 < join.at[0] - one.left_mm < ROOM_WIDE_MM - 4
                    assert 4 < join.at[1] - one.top_mm < ROOM_HIGH_MM - 4
    letters = [join.letter for page in pages for join in page.joins]
    assert all(letters.count(letter) == 2 for letter in letters)


def test_a_template_of_too_many_sheets_is_left_out_and_said_so():
    """A banner of 900 × 700 crosses would take dozens of sheets."""
    banner = pattern(*("m" * 900,) * 700)
    wall = piece(2000, 2000)
    whole = full_size(series(banner, finish=wall), figures(banner, wall))
    assert whole.pages == () and whole.assets == {} and whole.too_large
    assert MOST_PAGES == 9


# --- what a stitcher reads ----------------------------------------------------------------------------


def test_every_size_of_card_has_a_letter_that_stands_on_the_drawing():
    """Three cloths, two sizes: 14 and 28 over two are the same."""
    of = figures(SPRIG, piece())
    assert [(n.letter, len(n.options)) for n in named_cards(of)] == [("A", 2), ("B", 1)]
    page = full_size_pages("sprig")[0]
    assert "A: Cloth 14 (the model), Cloth 28 over 2; B: Cloth 16." in page.text
    drawn = "".join(text for text, _, _ in page.small).replace(" ", "")
    assert "A·5.39×4.68in·13.7×11.9cm" in drawn and "B·4.77×4.14in·12.1×10.5cm" in drawn


def test_a_size_that_has_no_room_on_its_card_is_told_above_it():
    """By hand: 14 crosses and 7 on 14 count are 25.4 and 12.7 mm, with 5 mm of border 35.4 × 22.7 mm."""
    tiny = pattern(*("m" * 14,) * 7, cloths=(option(14),))
    (card,) = card_templates(figures(tiny, piece()), piece())
    assert [note.words for note in card.template.notes] == ["A"]
    (page, *_) = full_size(series(tiny), figures(tiny, piece())).pages
    assert "A: 1.39 × 0.89 in (3.5 × 2.3 cm), for Cloth 14 (the model)." in page.words


def test_cards_too_alike_to_lie_inside_each_other_have_a_template_each():
    """14 and 14.3 to the inch: 2.7 mm between them leaves no line for the words."""
    alike = pattern(*("m" * 70,) * 60, cloths=(option(14), option(14.3)))
    assert len(card_templates(figures(alike, piece()), piece())) == 2


def test_without_magnets_there_is_no_template_of_the_panel():
    finish = piece(magnets=Magnets(0, 10.0, 2.0, 18.0))
    whole = full_size(series(SPRIG, finish=finish), figures(SPRIG, finish))
    assert [page.title for page in whole.pages] == ["Template: card and wadding"]
    assert "magnet" not in " ".join((*whole.pages[0].words, whole.pages[0].alt))


def test_the_words_say_where_on_the_wood_the_panel_lies():
    """By hand: a panel 15,15–185,160 on a board of 200 × 180 mm."""
    finish = piece(panel=((15, 15), (185, 15), (185, 160), (15, 160)))
    whole = full_size(series(SPRIG, finish=finish), figures(SPRIG, finish))
    said = " ".join(whole.pages[-1].words)
    assert (
        "On the part “board” it lies 0.59 in (15 mm) from the left edge, 0.59 in (15 mm) from the right edge, "
        "0.59 in (15 mm) from the upper edge and 0.79 in (20 mm) from the lower edge." in said
    )


@pytest.mark.parametrize(
    ("panel", "words"),
    [
        (rectangle(0, 0, 190, 180), "Its edges are those of the board."),
        # A hundredth of a millimetre smaller, which no rule shows.
        (rectangle(0.01, 0.01, 190, 179.99), "Its edges are those of the board."),
        (
            rectangle(0, 20, 190, 180),
            "On the part “board” it reaches the left edge, the right edge and the lower edge and lies 0.79 in (20 mm) from the upper edge.",
        ),
        (
            ((20, 0), (170, 0), (190, 90), (170, 180), (20, 180), (0, 90)),
            "On the part “board” it reaches the left edge, the right edge, the upper edge and the lower edge.",
        ),
    ],
)
def test_no_panel_lies_nothing_from_an_edge(panel, words):
    finish = piece(190, 180, panel=panel)
    whole = full_size(series(SPRIG, finish=finish), figures(SPRIG, finish))
    said = " ".join(whole.pages[-1].words)
    assert words in said and "0.00 in" not in said


def test_of_a_panel_on_two_planks_the_words_say_where_it_lies_on_the_whole_piece():
    """By hand: planks of 200 × 90 mm, one below the other, and a panel 15,15–185,160."""
    finish = piece(panel=((15, 15), (185, 15), (185, 160), (15, 160)))
    (board,) = finish.parts
    planks = tuple(
        replace(board, name=name, at_mm=(0, down), outline=rectangle(0, 0, 200, 90))
        for name, down in (("upper", 0), ("lower", 90))
    )
    finish = replace(finish, parts=planks)
    said = " ".join(full_size(series(SPRIG, finish=finish), figures(SPRIG, finish)).pages[-1].words)
    assert (
        "On the whole piece it lies 0.59 in (15 mm) from the left edge, 0.59 in (15 mm) from the right edge, "
        "0.59 in (15 mm) from the upper edge and 0.79 in (20 mm) from the lower edge." in said
    )


@pytest.mark.parametrize("which", ["sprig", "large", "house"])
def test_every_full_size_page_says_how_to_print_it_and_is_black_on_white(which):
    for page in full_size_pages(which):
        assert "“actual size”" in page.text and "not “fit to page”" in page.text
        for _, shape in (*page.rects, *page.curves, *page.lines):
            assert (
                shape.stroking_color in ((0, 0, 0), (0,), 0, [0, 0, 0]) or shape.bbox[1] > 200 * MM
            )


@pytest.mark.parametrize("which", ["sprig", "large"])
def test_a_screen_reader_hears_what_each_drawing_is(which, tmp_path):
    """Every figure has its words, and PDF/UA-1 (ISO 14289-1) is kept, says an independent checker."""
    path = tmp_path / "packet.pdf"
    path.write_bytes(made(which))
    said = subprocess.run(
        [Path(sys.executable).with_name("outloud"), "-q", path], capture_output=True, text=True
    )
    assert said.returncode == 0, said.stdout + said.stderr
    assert " 0 error" in said.stdout or "PASS" in said.stdout, said.stdout
    alts = [f["/Alt"] for f in _figures(PdfReader(path).trailer["/Root"]["/StructTreeRoot"])]
    squares = [alt for alt in alts if alt.startswith("Check square")]
    drawn = [alt for alt in alts if "at full size" in alt]
    assert len(squares) == len(drawn) == len(full_size_pages(which))


def _figures(node):
    node = node.get_object()
    if isinstance(node, list):
        for kid in node:
            yield from _figures(kid)
    elif hasattr(node, "get") and "/K" in node:
        if node.get("/S") == "/Figure":
            yield node
        yield from _figures(node["/K"])


def test_long_names_are_set_close_and_nothing_of_them_is_lost():
    """Eight cloths of long names on cards of one size: all words stand beside the check square, none below it."""
    names = (
        f"{word} Evenweave of the Long Garden"
        for word in "First Second Third Fourth Fifth Sixth Seventh Eighth".split()
    )
    plain = option(14)
    cloths = tuple(replace(plain, cloth=replace(plain.cloth, name=name)) for name in names)
    of = pattern(*("m" * 70,) * 60, cloths=cloths)
    finish = piece(180, 190, name="The Quite Unusually Long-Named Potting Bench by the Door")
    whole = full_size(series(of, finish=finish), figures(of, finish))
    assert whole.pages[0].close_set
    for page, wanted in zip(_pages_of(_document(whole)), whole.pages, strict=True):
        spoken = "".join(page.text.split())
        assert all("".join(words.split()) in spoken for words in wanted.words)
        in_drawing = "".join(letter for letter, _, _ in page.small).replace(" ", "")
        assert not any("".join(words.split())[-12:] in in_drawing for words in wanted.words)


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_every_packet_of_the_demo_ends_with_its_full_size_pages(demo, built, paper):
    """Two to six pages, each with its square, and the cards of every cloth among the outlines to 0.1 mm."""
    each = demo.reckoned[0]
    for figure in each.figures:
        path = built / "packets" / each.series.id / f"{figure.pattern.id}-{paper}.pdf"
        last = range(len(PdfReader(path).pages) - 6, len(PdfReader(path).pages))
        pages = [Page(0, page) for page in extract_pages(path, page_numbers=last)]
        marked = ["100 %" in page.text and "Template" in page.text for page in pages]
        assert 2 <= sum(marked) <= 6 and all(marked[-sum(marked) :])
        found = [page for page, full in zip(pages, marked, strict=True) if full]
        for page in found:
            assert sum(abs(w - 50) + abs(h - 50) < NEAR_MM for w, h in page.sizes()) == 1
        sizes = [size for page in found for size in page.sizes()]
        for on in figure.cloths:
            card = on.finished.width_mm + 10, on.finished.height_mm + 10  # 5 mm of border
            assert min(abs(w - card[0]) + abs(h - card[1]) for w, h in sizes) < NEAR_MM
