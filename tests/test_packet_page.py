"""The packet of a tiny pattern as a golden page, with what an author may get wrong in her prose."""

import re
from dataclasses import replace
from io import BytesIO

from PIL import Image

from packetgen.chart.drawing import chart
from packetgen.model import Corner, Fraction, Knot, Line, Magnets, Stitch
from packetgen.pipeline.packets import papers
from packetgen.reckon.figures import figures
from packetgen.reckon.series_magnets import series_figures
from packetgen.render.chart_paint import painted
from packetgen.render.packet import packet
from packetgen.render.prose import prose
from packetgen.render.templates import environment
from tests.golden_pages import same_as_golden
from tests.read_back import Document
from tests.stitching import HERE, option, pattern, piece, series

MM = 72 / 25.4
SPRIG = pattern(
    "..mm..",
    ".mttm.",
    "..mm.s",
    cloths=(option(14), option(32, 2)),
    lines=(Line("s", ((1, 1), (3, 1)), False, HERE), Line("s", ((1, 1), (2, 3)), True, HERE)),
    knots=(Knot("t", (3.5, 2.5), HERE),),
    fractions=(Fraction(1, 1, "m", Stitch.THREE_QUARTER, Corner.TOP_LEFT),),
)


def source(of=SPRIG, cover=b"cover"):
    return packet(series(of), figures(of, piece()), cover, environment())


def cover() -> bytes:
    """A picture that the PDF engine can read."""
    written = BytesIO()
    Image.new("RGB", (4, 4), "white").save(written, "JPEG")
    return written.getvalue()


def test_finishing_begins_below_the_notes_of_a_small_packet_and_the_piece_stands_beside_its_designs():
    """What to cut needs little room and comes first; the drawing is right of the designs, inside the margin."""
    made = papers(SPRIG.id, 1, source(cover=cover()), environment())
    document = Document(made["sprig-a4.pdf"])
    (notes,) = (text for text in document.texts if "What to cut" in text)
    assert "Finishing" in notes and "French knot: wind" in notes
    (at,) = (n for n, text in enumerate(document.texts) if "The room it leaves" in text)
    size = [letter for letter in document.letters[at] if not letter.upright]
    assert size, "the height of the piece is written upright beside it"
    assert all(128 * MM < letter.x0 and letter.x1 < 198 * MM for letter in size)


def test_the_packet_of_a_sprig_is_as_we_last_saw_it():
    """The fonts' rules and the style are left out: they have no words."""
    html = re.sub(r"<style>.*?</style>", "<style></style>", source().html, flags=re.S)
    same_as_golden("packet.html", html)


def test_the_chart_of_a_sprig_is_as_we_last_saw_it():
    made = source()
    (page,) = made.charts.values()
    same_as_golden("chart.svg", chart(page.sheet, "Potting Symbols"))
    same_as_golden("chart-page.txt", painted(page, {1: 6}).decode())
    same_as_golden("piece.svg", made.assets["piece.svg"].decode())


def test_a_design_too_small_for_magnets_is_held_otherwise():
    """No magnet in its list, no place of one, no template; and on its large cloth they are there."""
    small = source(pattern(*["m" * 20] * 12, cloths=(option(14),))).html
    assert "card is too small for the magnets: hold it to the panel" in small
    assert "steel washers" not in small and "Template: magnets on the panel" not in small
    large = source(pattern(*["m" * 20] * 12, cloths=(option(14), option(6)))).html
    assert "On Cloth 14 the card is too small for the magnets" in large
    assert "4 steel washers" in large and "Template: magnets on the panel" in large
    assert "B has no room for them." in large


def test_the_packet_promises_a_magnet_for_every_corner_only_where_there_is_one():
    """By hand: 50 · 25.4 ÷ 40 + 10 − 18 = 23.8 mm of its fine cloth, and 20 · 25.4 ÷ 18 + 10 − 18 = 20.2 mm of
    the small design; on the fine cloth alone they would stand 23.8 × 32.6 mm apart, on the coarse one 82.7 × 108.1."""
    large = pattern(*["m" * 50] * 64, cloths=(option(14), option(40)))
    small = pattern(*["m" * 28] * 20, id="moth", title="A Moth", cloths=(option(18),))
    finish = piece(magnets=Magnets(4, 10.0, 2.0, 9.0))

    def words(*patterns):
        whole = series(*patterns, finish=finish)
        html = packet(whole, series_figures(whole)[0], b"cover", environment()).html
        return " ".join(re.sub(r"<[^>]*>", "", html).split())

    corners = (
        "There are four magnets at least, one for every corner, so that none lifts or swings. All"
    )
    assert corners in words(replace(large, cloths=(option(14),)))
    together = words(large, small)
    assert (
        "one for every corner" not in together
        and "There are four magnets at least. All" in together
    )
    assert (
        "So they hold only the middle 0.94 × 0.80 in (2.4 × 2.0 cm) of the card on Cloth 14: near its corners "
        "hold it with strips of hooks and loops as well, or with tape that sticks on both sides, so that none lifts."
    ) in together


def test_only_the_stitches_of_the_chart_are_explained():
    assets = source().assets
    assert {name for name in assets if name.startswith("stitch-")} == {
        "stitch-full.svg",
        "stitch-three-quarter.svg",
        "stitch-backstitch.svg",
        "stitch-long.svg",
        "stitch-knot.svg",
    }


def test_every_asset_that_the_page_names_is_there():
    made = source()
    named = set(re.findall(r'src="asset:([^"]+)"', made.html))
    assert named and named <= set(made.assets)


def test_words_of_an_author_stay_words():
    """Titles with signs of their own, and prose with what must not be run."""
    html = source(
        pattern("mm", title="Moss & <b>Clay</b>", story_markdown="Hi <script>x()</script>")
    ).html
    assert "Moss &amp; &lt;b&gt;Clay&lt;/b&gt;" in html
    assert "<script" not in html


def test_prose_keeps_plain_elements_and_drops_the_rest():
    made = prose(
        "# Stems\n\n*green* ![p](https://x.example/p.png) [a](javascript:x()) [b](https://b.example/)\n\n"
        "<iframe src='https://x.example'></iframe><p onclick='x()'>kept</p>",
        lower=1,
    )
    assert "<h2>Stems</h2>" in made and "<em>green</em>" in made
    assert 'href="https://b.example/"' in made
    for gone in ("<img", "javascript", "iframe", "onclick"):
        assert gone not in made
