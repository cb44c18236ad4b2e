"""The page of a pattern: what a stitcher decides by, on whichever cloth; and all of it where it is free."""

import random
import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from datetime import UTC, date, datetime
from itertools import pairwise

import pytest

from packetgen.chart.assignment import shapes_for
from packetgen.chart.page_chart import page_chart, symbol_id
from packetgen.chart.size_drawing import OneSize, same_together, size_drawing, sizes_said
from packetgen.model import (
    BARE,
    Colour,
    Corner,
    Counter,
    Designer,
    Fraction,
    KeyLine,
    Knot,
    Line,
    Photo,
    Revision,
    Sells,
    Stitch,
)
from packetgen.pipeline import proof, public_files
from packetgen.pipeline.public import SetPapers
from packetgen.reckon.figures import figures
from packetgen.reckon.sizes import Size, cell_mm
from packetgen.reckon.standing import standing
from packetgen.render.site import site_files
from packetgen.render.site_pictures import OF_PIECE, OF_SERIES, Picture, Shares, SitePictures
from packetgen.render.templates import environment
from tests import stitching
from tests.content_builder import PATTERN, build

MM_PER_INCH = 25.4  # exactly
PICTURE = Picture(b"\xff\xd8", 900, 960)


def page_of(pattern, packet: dict[str, bytes] | None = None) -> str:
    return files_of(pattern, packet)[f"{pattern.id}/index.html"].decode()


def files_of(pattern, packet: dict[str, bytes] | None = None) -> dict[str, bytes]:
    series = stitching.series(pattern)
    shares = Shares(b"", b"", b"")
    pictures = SitePictures(
        mounted={pattern.id: (PICTURE,)},
        details={},
        shares={name: shares for name in (OF_SERIES, OF_PIECE, pattern.id)},
        bench=(PICTURE,),
    )
    seen = standing(series, (figures(pattern, series.finish),), None)
    return site_files(seen, pictures, environment(), {pattern.id: packet} if packet else {})


def text_of(html: str) -> str:
    return " ".join(re.sub(r"<[^>]*>", " ", html.partition("<body")[2]).split())


def section(html: str, anchor: str) -> str:
    return re.search(f'<section id="{anchor}".*?</section>', html, re.DOTALL)[0]


# --- the picture ----------------------------------------------------------------------------------

IMPRESSION = "The picture is drawn, to give an impression; the chart has other and finer stitches."


def test_a_reader_is_told_that_a_drawn_picture_is_not_the_chart():
    """Not where it is a photograph, nor where the chart is given away and the picture shows all of it."""
    assert IMPRESSION in text_of(page_of(stitching.pattern("mm")))
    assert IMPRESSION in text_of(page_of(stitching.pattern("mm", given_away=("packet",))))
    photo = Photo(b"\xff\xd8", 900, 960)
    assert IMPRESSION not in text_of(page_of(stitching.pattern("mm", photo=photo)))
    assert IMPRESSION not in text_of(page_of(stitching.pattern("mm", given_away=("chart",))))


def test_one_knot_alone_is_no_french_knots():
    one, two = (
        tuple(Knot("m", (1.5 + n, 1.5), stitching.HERE) for n in range(many)) for many in (1, 2)
    )
    assert "cross stitch and one French knot" in text_of(
        page_of(stitching.pattern("mm", knots=one))
    )
    assert "cross stitch and French knots" in text_of(page_of(stitching.pattern("mm", knots=two)))


def test_a_reader_is_told_that_so_small_a_design_is_only_hinted_at():
    """From 30 stitches on the drawn picture is known for what it shows; by eye."""
    hint = "Of a design as small as this it can only give a hint."
    assert hint in text_of(page_of(stitching.pattern(*["m" * 40] * 29)))
    assert hint not in text_of(page_of(stitching.pattern(*["m" * 30] * 30)))
    given = stitching.pattern("mm", given_away=("chart",))
    assert hint not in text_of(page_of(given))


def test_the_picture_is_said_to_hang_as_its_card_allows():
    """A card of 45 × 31 mm has no room for magnets 18 mm in from its edges; nor does an author who wants none
    read of any."""
    large, small = ["m" * 60] * 60, ["m" * 20] * 12
    assert "is held by magnets on The Board" in text_of(page_of(stitching.pattern(*large)))
    said = text_of(page_of(stitching.pattern(*small)))
    assert "is shown on The Board . It is too small for magnets there" in said
    assert "is held by magnets" not in said
    both = stitching.option(14), stitching.option(60, 1)
    said = text_of(page_of(stitching.pattern(*large, cloths=both)))
    assert "is held by magnets on The Board . On Cloth 60 it is too small for them" in said


def test_one_time_serves_both_paces_where_they_are_the_same():
    """Two stitches are done within the hour by any hand."""
    assert "Time less than an hour at any pace" in text_of(page_of(stitching.pattern("mm")))
    long = text_of(page_of(stitching.pattern(*["m" * 60] * 50)))
    assert "Time 15 hours at a quick pace, 30 hours at a slow one" in long


# --- sizes, drawn ---------------------------------------------------------------------------------


def sizes(width: int, height: int, *cloths: tuple[str, float, int]) -> tuple[OneSize, ...]:
    return same_together(
        tuple(
            OneSize((name,), Size(width * a, height * a), f"{count / over:g}")
            for name, count, over in cloths
            for a in (cell_mm(count, over),)
        )
    )


FIVE = sizes(
    84,
    76,
    ("Aida 18", 18, 1),
    ("Aida 16", 16, 1),
    ("Evenweave 28", 28, 2),
    ("Linen 32", 32, 2),
    ("Linen 36", 36, 2),
)


def drawn(svg: str) -> ET.Element:
    return ET.fromstring(svg.replace(' xmlns="http://www.w3.org/2000/svg"', ""))


def inch_ticks(drawing: ET.Element) -> list[float]:
    """Where the ticks of the first measure stand: its line goes from the first to the last of them."""
    path = drawing.findall("path")[0].get("d")
    return [float(x) for x in re.findall(r"M([\d.]+) [\d.]+v", path)]


def test_cloths_on_which_a_design_is_equally_large_share_an_outline():
    """Over two threads, 32 count is 16 stitches to the inch and 36 count is 18."""
    said = [(one.letter, one.cloths, one.per_inch) for one in FIVE]
    assert said == [
        ("A", ("Evenweave 28",), "14"),
        ("B", ("Aida 16", "Linen 32"), "16"),
        ("C", ("Aida 18", "Linen 36"), "18"),
    ]


def test_outlines_and_both_measures_are_at_one_scale():
    """84 stitches at 14 to the inch are 6 inches, at 16 they are 5.25, at 18 they are 4 2/3; 76 are 5 3/7."""
    drawing = drawn(size_drawing(FIVE))
    ticks = inch_ticks(drawing)
    an_inch = ticks[1] - ticks[0]
    assert all(
        after - before == pytest.approx(an_inch, abs=0.02) for before, after in pairwise(ticks)
    )
    widths = [float(box.get("width")) / an_inch for box in drawing.findall("rect")]
    heights = [float(box.get("height")) / an_inch for box in drawing.findall("rect")]
    assert widths == pytest.approx([6, 5.25, 14 / 3], rel=1e-3)
    assert heights == pytest.approx([76 / 14, 76 / 16, 76 / 18], rel=1e-3)
    cm = [float(x) for x in re.findall(r"M([\d.]+) [\d.]+v", drawing.findall("path")[1].get("d"))]
    assert (cm[1] - cm[0]) / an_inch == pytest.approx(10 / MM_PER_INCH, rel=1e-3)


def test_a_measure_ends_with_the_widest_outline():
    """Six inches are measured by six, and not by seven."""
    drawing = drawn(size_drawing(FIVE))
    assert len(inch_ticks(drawing)) == 7  # from nought to six


def test_labels_of_outlines_that_nearly_meet_do_not_lie_upon_each_other():
    close = sizes(300, 400, ("One", 27, 2), ("Two", 14, 1), ("Three", 40, 2), ("Four", 41, 2))
    drawing = drawn(size_drawing(close))
    labels = [g for g in drawing.iter("g") if g.get("class") == "size-label"][0]
    heights = [float(text.get("y")) for text in labels]
    size = float(labels.get("font-size"))
    assert len(heights) == 4
    assert all(below - above >= size for above, below in pairwise(heights))


@pytest.mark.parametrize("counts", [(14, 15), (16, 17), (14, 16, 17, 18), (14, 14.4, 14.7)])
def test_no_outline_is_drawn_through_a_label(counts):
    """Where two sizes nearly meet there is no room for a word between their upper edges."""
    near = sizes(58, 52, *((f"Cloth {count}", count, 1) for count in counts))
    drawing = drawn(size_drawing(near))
    (labels,) = (g for g in drawing.iter("g") if g.get("class") == "size-label")
    edges = [float(box.get("y")) for box in drawing.findall("rect")]
    size, said = float(labels.get("font-size")), labels.findall("text")
    assert [text.text[0] for text in said] == [one.letter for one in near]
    for text in said:
        base = float(text.get("y"))
        assert not [y for y in edges if base - 0.8 * size < y < base + 0.25 * size]


def test_the_drawing_takes_the_colour_of_the_text_around_it():
    """So that it is read by day and by night."""
    painted = re.findall(r'(?:fill|stroke)="([^"]*)"', size_drawing(FIVE))
    assert painted and set(painted) == {"currentColor", "none"}


@pytest.mark.parametrize(
    ("width", "height"), [(12, 4), (4, 300), (1000, 1000)], ids=["tiny", "tall", "vast"]
)
def test_a_design_of_any_size_stays_inside_its_drawing(width, height):
    drawing = drawn(size_drawing(sizes(width, height, ("Aida 14", 14, 1), ("Linen 40", 40, 1))))
    _, _, across, down = map(float, drawing.get("viewBox").split(","))
    for box in drawing.findall("rect"):
        x, y, wide, high = (float(box.get(side)) for side in ("x", "y", "width", "height"))
        assert x >= 0 and y >= 0 and x + wide <= across and y + high <= down
    for text in drawing.iter("text"):
        assert 0 <= float(text.get("x")) < across and 0 < float(text.get("y")) <= down


def test_who_does_not_see_the_drawing_reads_its_sizes():
    """76 / 16 in = 4.75 in = 12.065 cm."""
    said = sizes_said(FIVE)
    assert "B, on Aida 16 and Linen 32: 5.25 in × 4.75 in (13.3 cm × 12.1 cm)" in said


# --- the cloth chooser ----------------------------------------------------------------------------

LARGE = stitching.pattern(
    *("m" * 100,) * 100,
    cloths=(stitching.option(11), stitching.option(40, 2), stitching.option(28, 1)),
)


def panels(html: str) -> list[tuple[str, str, str]]:
    """Radio button, label and panel of each cloth, as they follow each other on the page."""
    return re.findall(
        r'(<input type="radio"[^>]*>)\s*(<label.*?</label>)\s*<div class="panel">(.*?)</dl>',
        section(html, "cloths"),
        re.DOTALL,
    )


def test_every_cloth_has_a_button_with_its_label_and_its_panel_and_the_model_s_is_chosen():
    html = page_of(LARGE)
    found = panels(html)
    assert len(found) == 3
    for button, label, _ in found:
        assert 'name="cloth"' in button
        assert re.search(r'id="([^"]*)"', button)[1] == re.search(r'for="([^"]*)"', label)[1]
    assert [" checked" in button for button, *_ in found] == [True, False, False]
    chooser = section(html, "cloths")
    assert chooser.count("<fieldset") == chooser.count("<legend>") == 1
    assert "<script" not in chooser


def test_a_panel_says_what_to_cut_and_how_the_card_sits():
    """12 × 4 stitches at 14 count: 21.77 × 7.26 mm. The card is 5 mm larger all round, 31.77 × 17.26 mm, on a
    board of 200 × 180: (200 - 31.77) / 2 = 84.1 mm of wood on either side, (180 - 17.26) / 2 = 81.4 above
    and below. With 3 in all round 6.86 × 6.29 in, cut at 6 7/8 × 6 3/8. To mount it, 25 mm are folded over
    each side of the card: 81.77 mm, which is 3.22 in and cut at 3 1/4."""
    pattern = stitching.pattern("mmmmtttt....", *("m.ttmm.tt.ss",) * 3)
    ((_, _, panel),) = panels(page_of(pattern))
    said = text_of("<body>" + panel)
    for words in (
        "0.86 in × 0.29 in",
        "1.25 in × 0.68 in 3.2 cm × 1.7 cm It fits with room to spare.",
        "3.31 in (8.4 cm) each",
        "3.20 in (8.1 cm) each",
        "6 7/8 in × 6 3/8 in",
        "3 1/4 in ×",
    ):
        assert words in said, words
    assert 'role="img"' in panel and "lying on the panel, to scale" in panel


def test_thread_is_told_cloth_by_cloth_where_a_larger_count_takes_less():
    """100 × 100 crosses in one colour: more skeins at 11 count than over two of 40."""
    bought = [
        re.search(r"(\d+) skeins? of Bramble", text_of("<body>" + p))
        for *_, p in panels(page_of(LARGE))
    ]
    large, fine, _ = (int(found[1]) for found in bought)
    assert large > fine
    assert "in all, on any of these cloths" not in page_of(LARGE)


def test_thread_is_told_once_where_every_cloth_takes_the_same():
    cloths = (stitching.option(14), stitching.option(32, 2))
    html = page_of(stitching.pattern("mmtt", "sstt", cloths=cloths))
    assert "3 skeins in all, on any of these cloths" in text_of(html)
    assert "skeins of" not in text_of("<body>" + section(html, "cloths"))


def test_each_row_of_the_table_names_its_outline():
    table = text_of("<body>" + section(page_of(LARGE), "sizes").partition("<tbody>")[2])
    assert [
        re.search(f"{name}, white .*? ([A-Z]) ", table)[1]
        for name in ("Cloth 11", "Cloth 40", "Cloth 28")
    ] == ["A", "B", "C"]


# --- what it says, and in which order -------------------------------------------------------------


def test_colours_stand_as_their_card_has_them_and_not_by_how_much_is_used():
    """Soot is used most and clay least; the card has moss, clay, soot."""
    html = page_of(stitching.pattern("ssssssss", "ssssmmmt"))
    assert re.findall(r"</span>(moss|clay|soot)</li>", html) == ["moss", "clay", "soot"]


def test_where_to_buy_comes_before_anything_long():
    pattern = stitching.pattern("mt", sold_at=(Counter("By post", "https://post.example.org/"),))
    html = page_of(pattern)
    bought_at = html.index('href="https://post.example.org/"')
    assert html.index("<img") < html.index("<h1>") < bought_at < html.index("The story")


@pytest.mark.parametrize(
    ("sells", "said"),
    [
        (Sells.NEITHER, "Isolde Fernsby sells no PDFs."),
        (Sells.PRINTED, "Isolde Fernsby sells printed patterns, and no PDFs."),
        (Sells.BOTH, "Isolde Fernsby sells PDFs and printed patterns."),
    ],
    ids=lambda value: getattr(value, "value", ""),
)
def test_it_says_plainly_what_is_not_sold_as_pdf(sells, said):
    designer = replace(stitching.DESIGNER, sells=sells)
    assert said in text_of(page_of(stitching.pattern("mt", designer=designer)))


def test_a_name_that_is_written_from_right_to_left_does_not_turn_its_line_round():
    """HTML Living Standard, 4.5.24: bdi keeps a text apart from the direction of what stands around it."""
    name = "\u05de\u05d9\u05e8\u05d9\u05dd \u05e9\u05d3\u05d4"
    designer = Designer("sadeh", name, "Draws.", Sells.PDF, None)
    html = page_of(stitching.pattern("mt", designer=designer, model_stitcher=name, finisher=name))
    body = html.partition("<main")[2].partition("<footer")[0]
    alone = re.sub(r'"[^"]*"', '""', body)
    assert (
        alone.count(name)
        == alone.count(f"<bdi>{name}</bdi>") + alone.count(f'<bdi dir="auto">{name}</bdi>')
        >= 4
    )


def test_revisions_are_numbered_and_the_newest_comes_first():
    revisions = (
        Revision(date(2026, 5, 1), "First issue."),
        Revision(date(2026, 6, 2), "Row 3: a leaf mended."),
    )
    html = page_of(stitching.pattern("mt", revisions=revisions))
    text = text_of(html)
    assert text.index("Revision 2, 2 June 2026") < text.index("Revision 1, 1 May 2026")
    assert 'href="../corrections.html#sprig"' in html
    assert "corrections.html#" not in page_of(stitching.pattern("mt"))


# --- a pattern that is given away -----------------------------------------------------------------

GIFT = stitching.pattern(
    "mmmmtttt....",
    "m.ttmm.tt.ss",
    "ss..mmtt.mm.",
    "ttttssss.m.m",
    fractions=(
        Fraction(2, 2, "s", Stitch.THREE_QUARTER, Corner.TOP_LEFT),
        Fraction(3, 3, "t", Stitch.QUARTER, Corner.BOTTOM_RIGHT),
    ),
    lines=(Line("s", ((1, 1), (3, 1), (3, 2.5)), False, stitching.HERE),),
    knots=(Knot("t", (2.5, 2.5), stitching.HERE),),
    given_away=("chart", "packet"),
)
PACKET = {
    "sprig-letter.pdf": b"%PDF" + bytes(1_240_000),
    "sprig-a4.pdf": b"%PDF" + bytes(1_310_000),
}


def shapes_of(pattern) -> dict[str, str]:
    counts = {
        work.line.mark: work.total_stitches for work in figures(pattern, stitching.piece()).works
    }
    return shapes_for(pattern, counts)


def cells_read_back(svg: str, pattern) -> list[list[str]]:
    """The chart as a reader sees it: each path of cells is marked with the symbol that is laid over it."""
    shapes = {symbol_id(name): mark for mark, name in shapes_of(pattern).items()}
    rows = [[BARE] * pattern.grid.width for _ in range(pattern.grid.height)]
    drawing = drawn(svg)
    paths = {path.get("id"): path.get("d") for path in drawing.iter("path") if path.get("id")}
    tiles = {tile.get("id"): tile.find("use").get("href")[1:] for tile in drawing.iter("pattern")}
    laid = [use for use in drawing.findall("use") if (use.get("fill") or "").startswith("url(#")]
    for use in laid:
        mark = shapes[tiles[use.get("fill")[5:-1]]]
        for x, y, length in re.findall(r"M(\d+) (\d+)h(\d+)v1h-\3z", paths[use.get("href")[1:]]):
            for column in range(int(x), int(x) + int(length)):
                assert rows[int(y)][column] == BARE, "two symbols lie on one cell"
                rows[int(y)][column] = mark
    return rows


def test_the_chart_on_the_page_holds_every_stitch_of_the_pattern():
    svg = page_chart(GIFT, shapes_of(GIFT))
    assert ["".join(row) for row in cells_read_back(svg, GIFT)] == list(GIFT.grid.rows)
    small = [use for use in drawn(svg).findall("use") if use.get("width") == "0.5"]
    assert len(small) == len(GIFT.fractions)
    assert "M0 0L2 0L2 1.5" in svg  # the line, its corners counted from nought
    assert svg.count("<circle") == len(GIFT.knots)


def test_the_demo_s_gift_can_be_read_back_from_its_page(demo):
    series = demo.reckoned[0].series
    gifts = [pattern for pattern in series.patterns if "chart" in pattern.given_away]
    assert len(gifts) == 1
    for pattern in gifts:
        read = cells_read_back(page_chart(pattern, shapes_of(pattern)), pattern)
        assert ["".join(row) for row in read] == list(pattern.grid.rows)


def test_a_large_chart_stays_light():
    """100 × 100 stitches in thirty colours, scattered in short runs: below 150 KB."""
    chance = random.Random(7)
    marks = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcd"
    rows = []
    for _ in range(100):
        row = ""
        while len(row) < 100:
            row += chance.choice(marks) * chance.randint(1, 6)
        rows.append(row[:100])
    key = tuple(
        KeyLine(mark, Stitch.FULL, {"bramble": (colour,)}, {}, stitching.HERE)
        for place, mark in enumerate(marks)
        for colour in (
            Colour(str(place), f"shade {place}", f"#{40 + 6 * place:02x}80{220 - 6 * place:02x}"),
        )
    )
    pattern = replace(stitching.pattern(*rows), key=key)
    shapes = shapes_for(pattern, {mark: sum(row.count(mark) for row in rows) for mark in marks})
    svg = page_chart(pattern, shapes)
    assert len(svg) < 150_000
    assert svg.count("<use") < 100


def test_a_free_pattern_shows_its_chart_with_a_key_and_says_that_it_costs_nothing():
    html = page_of(GIFT, PACKET)
    text = text_of(html)
    assert "This pattern costs nothing. Its whole chart is on this page." in text
    assert "Where to buy" not in text and "No shop" not in text
    chart = section(html, "chart")
    assert "M1 moss" in chart and "T1 clay" in chart and "C1 soot" in chart
    window = re.search('<div class="chart-window"[^>]*>', chart)[0]
    assert 'tabindex="0"' in window and 'role="region"' in window and "aria-label" in window
    assert re.search(r'<svg viewBox="[^"]*" role="img" aria-label="The chart of A Sprig', chart)
    shown = set(re.findall(r'<symbol[^>]* id="([^"]*)"', chart))
    assert shown and {name for name in re.findall(r'<use href="#([^"]*)" width', chart)} <= shown


def test_a_free_packet_stands_beside_its_page_with_its_size():
    """1,240,004 bytes are 1.2 million."""
    files = files_of(GIFT, PACKET)
    html = files["sprig/index.html"].decode()
    for name, data in PACKET.items():
        assert files[f"sprig/{name}"] == data
        assert f'href="{name}"' in html
    assert "The packet to print, Letter PDF, 1.2 MB" in text_of(html)
    assert "The packet to print, A4 PDF, 1.3 MB" in text_of(html)


def test_before_a_build_has_set_it_a_free_packet_is_promised_and_not_linked():
    files = files_of(GIFT)
    html = files["sprig/index.html"].decode()
    assert "a build adds its PDF files" in html and ".pdf" not in html
    assert not [path for path in files if path.endswith(".pdf")]


def test_the_chart_in_words_stands_beside_the_drawn_one():
    files = files_of(GIFT)
    (link,) = re.findall(r'href="([^"]*\.txt)"', files["sprig/index.html"].decode())
    assert files[f"sprig/{link}"].startswith(b"A Sprig, in words")


@pytest.mark.parametrize("away", [(), ("packet",)], ids=["sold", "packet alone"])
def test_a_page_shows_no_chart_that_its_author_has_not_opened(away):
    files = files_of(replace(GIFT, given_away=away))
    html = files["sprig/index.html"].decode()
    assert "<use" not in html and "<symbol" not in html and 'id="chart"' not in html
    assert not [path for path in files if path.startswith("sprig/") and path.endswith(".txt")]


def test_only_the_packets_of_patterns_that_are_out_are_set_for_the_site(tmp_path, quick_pictures):
    """For a series as it stands: without the revision that is dated later."""
    away = "sold_at:\n  - {name: Alder's counter, url: https://alder.example/by-fern}\n"
    text = (build(tmp_path / "as-sold") / PATTERN).read_text(encoding="utf-8")
    assert away in text
    text = (
        text.replace(away, "given_away: [packet]\n")
        + "  - {date: 2027-02-03, note: Row 2 mended.}\n"
    )
    checked = proof(build(tmp_path / "given", {PATTERN: text}))
    assert checked.sound, [str(problem) for problem in checked.problems]
    asked = []

    def set_packet(series, figure):
        asked.append((series, figure))
        return {"fern-a4.pdf": b"%PDF"}

    day = datetime(2027, 1, 14, tzinfo=UTC)
    before = public_files(
        checked, environment(), day, set_papers=SetPapers(set_packet, lambda series: {})
    )
    assert not asked and not [path for path in before if path.endswith(".pdf")]
    after = public_files(
        checked,
        environment(),
        date(2027, 1, 20),
        set_papers=SetPapers(set_packet, lambda series: {}),
    )
    assert after["site/fern/fern-a4.pdf"] == b"%PDF"
    ((series, figure),) = asked
    assert [one.note for one in figure.pattern.revisions] == ["First issue."]
    assert series.patterns == (figure.pattern,)
