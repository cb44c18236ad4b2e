"""How a series looks: its own colours and faces, readable by everyone, the same on its site and in its packets."""

import io
import re
from dataclasses import fields, replace
from datetime import date
from importlib.resources import files
from pathlib import Path

import pypdf
import pytest
from fontTools.ttLib import TTFont
from hypothesis import given
from hypothesis import strategies as st

from packetgen.colour import contrast, difference, lab
from packetgen.diagnostics import Place, Problems
from packetgen.load import load_content
from packetgen.model import BY_DAY, BY_NIGHT, Faces, FontFile, Look, Palette
from packetgen.reckon.contrast import GROUNDS, WORDS, complain_of_contrast, nearest_legible
from packetgen.render.faces import font_files, series_font_files, web_font_css, web_font_files
from packetgen.render.look_style import packet_style, site_colours, site_style
from packetgen.render.pdf import documents
from packetgen.render.templates import environment, fill, project_templates
from tests import stitching
from tests.content_builder import SERIES, TINY, build
from tests.outside import rows

FONTS = files("packetgen") / "fonts"
FOLDER = "series/garden-year"
COLOURS = tuple(field.name for field in fields(Palette))


def font(name: str = "heading.ttf", flavour: str | None = None) -> bytes:
    """One of the project's own faces as an author would give it."""
    face = TTFont(io.BytesIO((FONTS / name).read_bytes()), recalcTimestamp=False)
    face.flavor = flavour
    data = io.BytesIO()
    face.save(data)
    return data.getvalue()


def given_face(name: str = "heading.ttf") -> FontFile:
    return FontFile(name, font(name), frozenset())


def look_of(tmp_path: Path, *lines: str, **more: bytes) -> Look:
    """The look of the tiny series when its file ends with these lines."""
    text = TINY[SERIES] + "look:\n" + "".join(f"  {line}\n" for line in lines)
    changes = {SERIES: text} | {f"{FOLDER}/{name}": data for name, data in more.items()}
    content, problems = load_content(build(tmp_path / "content", changes))
    assert content is not None, [str(problem) for problem in problems]
    return content.series[0].look


def complaints(look: Look) -> list[str]:
    problems = Problems()
    complain_of_contrast(replace(stitching.series(stitching.pattern("mm")), look=look), problems)
    return [str(problem) for problem in problems]


# --- colours --------------------------------------------------------------------------------------


def test_our_own_colours_can_be_read_by_day_and_by_night():
    """Every colour of words has at least 4.5:1 on both papers (WCAG 2.2, 1.4.3)."""
    for palette in (BY_DAY, BY_NIGHT):
        ratios = [
            contrast(getattr(palette, words), getattr(palette, ground))
            for words in WORDS
            for ground in GROUNDS
        ]
        assert min(ratios) >= 4.5
    assert complaints(Look()) == []


@pytest.mark.parametrize(
    "row", rows("wcag_contrast"), ids=lambda row: f"{row['fg']} on {row['bg']}"
)
def test_words_are_refused_exactly_where_the_published_table_fails_them(row):
    """Ink that the table fails for text is refused with the ratio of the table, cut and not rounded up."""
    night = replace(BY_NIGHT, paper=row["bg"], shade=row["bg"], ink=row["fg"])
    said = [line for line in complaints(Look(dark=night)) if "'ink'" in line]
    assert bool(said) == (row["AA_text"] == "fail")
    for line in said:
        whole, _, rest = row["ratio_formula"].partition(".")
        assert f"stands at {whole}.{rest[:2]}:1 on " in line


def test_a_faint_colour_is_told_where_it_stands_with_one_that_would_do():
    """The worst ground is named; the shade that is offered can be read on all of them."""
    place = Place("series/hedge/series.yaml", 31, 14)
    look = Look(replace(BY_DAY, accent="#b0653f"), places=(("light.accent", place),))
    assert contrast("#b0653f", BY_DAY.shade) == pytest.approx(3.798, abs=0.001)
    (line,) = complaints(look)
    better = re.search(r"; at least 4.5:1 is needed to be read; (#[0-9a-f]{6}) would do", line)
    assert line.startswith(
        "series/hedge/series.yaml:31:14: 'accent' of the light colours, #b0653f, stands at 3.79:1 on "
        f"'shade', {BY_DAY.shade}"
    )
    assert all(contrast(better[1], getattr(BY_DAY, ground)) >= 4.5 for ground in GROUNDS)


def test_light_words_for_a_dark_paper_by_day_would_be_lost_in_print():
    """Packets are printed on white, whatever paper the site has by day."""
    said = complaints(Look(light=BY_NIGHT))
    assert len(said) == len(WORDS)
    assert all("on white paper in print, #ffffff" in line for line in said)


@given(st.integers(0, 0xFFFFFF), st.integers(0, 0xFFFFFF))
def test_the_shade_that_is_offered_is_legible_and_near(colour, ground):
    """On any one paper some shade can be read; what can be read already is offered unchanged."""
    colour, ground = f"#{colour:06x}", f"#{ground:06x}"
    better = nearest_legible(colour, [ground])
    assert contrast(better, ground) >= 4.5
    if contrast(colour, ground) >= 4.5:
        assert better == colour
    for end in ("#000000", "#ffffff"):
        if contrast(end, ground) >= 4.5:
            assert difference(lab(better), lab(colour)) <= difference(lab(end), lab(colour))


def test_a_series_may_set_some_colours_and_has_ours_for_the_rest(tmp_path):
    look = look_of(tmp_path, 'light: {heading: "#1A2B55", accent: "#7a1f4a"}')
    assert look.light == replace(BY_DAY, heading="#1a2b55", accent="#7a1f4a")
    assert look.dark == BY_NIGHT
    assert dict(look.places)["light.accent"].line == 20


def test_the_site_has_its_colours_by_day_and_by_night_and_prints_by_day():
    """Night holds for screens alone."""
    look = Look(replace(BY_DAY, ink="#112233"), replace(BY_NIGHT, ink="#ddeeff"))
    by_day, night = site_colours(look).split("@media")
    assert night.startswith(" screen and (prefers-color-scheme: dark)")
    for style, palette in ((by_day, look.light), (night, look.dark)):
        assert [f"--{name}: {getattr(palette, name)}" in style for name in COLOURS] == [True] * 7
    assert "color-scheme: light dark" in by_day


def test_the_packet_takes_the_headings_of_the_light_colours():
    look = Look(replace(BY_DAY, heading="#123456"), replace(BY_NIGHT, heading="#fedcba"))
    assert "--heading: #123456" in packet_style(look) and "#fedcba" not in packet_style(look)


@pytest.mark.parametrize("kind", ["site", "packet"])
def test_every_property_that_a_style_asks_for_is_given(kind):
    """A property that nobody sets would leave words in no colour at all."""
    set_here = {"site": site_style("fonts/"), "packet": packet_style()}[kind]
    env, folder = environment(), project_templates() / kind
    styles = "\n".join(fill(env, f"{kind}/{file.name}") for file in sorted(folder.glob("*.css")))
    inline = "\n".join(file.read_text("utf-8") for file in sorted(folder.glob("*.html")))
    asked = set(re.findall(r"var\((--[a-z-]+)", styles + inline))
    assert asked and asked <= set(re.findall(r"(--[a-z-]+):", set_here + styles + inline))


@pytest.mark.parametrize("kind", ["site", "packet"])
def test_headings_have_no_colour_but_that_of_the_look(kind):
    """In the styles of headings and links no colour is written out."""
    for file in sorted((project_templates() / kind).glob("*.css")):
        for rule in re.findall(r"(?m)^ *(?:h[1-6]|a)[ ,:{][^\n]*", file.read_text("utf-8")):
            assert not re.search(r"#[0-9a-f]{3}", rule), rule


# --- faces ----------------------------------------------------------------------------------------


def test_faces_of_a_series_go_before_ours(tmp_path):
    look = look_of(tmp_path, "heading: titles.ttf", **{"titles.ttf": font()})
    assert look.faces == Faces(heading=FontFile("titles.ttf", font(), frozenset()))
    assert "Series Heading" in web_font_css("fonts/", look)
    assert '--face-heading: "Series Heading", "Packet Heading", ' in site_style("fonts/", look)
    assert '--face-text: "Packet Text", ' in site_style("fonts/", look)


def test_a_face_that_comes_compressed_is_unpacked_once_for_all_who_draw_with_it(tmp_path):
    """Pictures and packets want the plain file; its letters are the same."""
    look = look_of(tmp_path, "heading: t.woff2", **{"t.woff2": font(flavour="woff2")})
    face = look.faces.heading
    assert face.suffix == ".ttf" and face.data[:4] == b"\0\1\0\0"
    plain = TTFont(io.BytesIO(face.data))
    assert face.letters == set(plain.getBestCmap()) == set(TTFont(io.BytesIO(font())).getBestCmap())


def test_a_text_face_without_bold_has_our_bold_and_italic():
    """Bold words stay bold: no engine has to make up a weight."""
    look = Look(faces=Faces(text=given_face("text-regular.ttf")))
    css = web_font_css("fonts/", look)
    rules = [rule for rule in css.splitlines() if '"Series Text"' in rule]
    found = {
        (
            re.search(r"font-weight: (\d+); font-style: (\w+)", rule).groups(),
            re.search(r'url\("fonts/([^"]+)', rule)[1],
        )
        for rule in rules
    }
    assert found == {
        (("400", "normal"), "series-text.woff2"),
        (("400", "italic"), "text-italic.woff2"),
        (("700", "normal"), "text-bold.woff2"),
    }


@pytest.mark.parametrize("look", [Look(), Look(faces=Faces(heading=given_face()))])
def test_the_style_names_exactly_the_font_files_that_the_site_has(look):
    named = set(re.findall(r'url\("fonts/([^"]+)"\)', web_font_css("fonts/", look)))
    assert named == set(web_font_files(look))
    assert all(data[:4] == b"wOF2" for data in web_font_files(look).values())  # W3C WOFF2, 4.1


def test_compressed_faces_have_the_letters_and_the_same_bytes_every_time():
    """A second build gives the same files, and no letter is lost on the way: neither of the project's faces,
    which lie there compressed, nor of an author's."""
    from packetgen.render import faces

    look = Look(faces=Faces(heading=given_face()))
    first = web_font_files(look)
    faces._woff2.cache_clear()
    assert web_font_files(look) == first
    plain = font_files() | series_font_files(look)
    named = {name.rpartition(".")[0]: TTFont(io.BytesIO(data)) for name, data in plain.items()}
    for name, data in first.items():
        original, compressed = named[name.removesuffix(".woff2")], TTFont(io.BytesIO(data))
        assert compressed.getBestCmap() == original.getBestCmap()
        for glyph in original.getGlyphOrder():  # the outlines too, to the last unit
            assert compressed["glyf"][glyph] == original["glyf"][glyph]


def test_compressed_faces_weigh_less():
    first = web_font_files(Look())
    assert sum(map(len, first.values())) < 0.6 * sum(
        len(data) for name, data in font_files().items() if name != "symbols.ttf"
    )


def codes_of(ranges: str) -> set[int]:
    """The code points of a CSS `unicode-range` (CSS Fonts 4, 4.5)."""
    found: set[int] = set()
    for one in ranges.split(","):
        first, _, last = one.strip().removeprefix("U+").partition("-")
        found |= set(range(int(first, 16), int(last or first, 16) + 1))
    return found


def test_files_of_further_letters_are_asked_for_by_those_letters_alone():
    """An English page loads none of them; a Czech or Polish name loads the one that it needs."""
    ranges = dict(
        re.findall(r'url\("([^"]+)-ext\.woff2"\);[^}]*unicode-range: ([^;}]+) }', web_font_css(""))
    )
    assert set(ranges) == {"text-regular", "text-bold", "heading"}
    for name, said in ranges.items():
        letters = codes_of(said)
        further = set(TTFont(io.BytesIO(font_files()[f"{name}-ext.ttf"])).getBestCmap())
        main = set(TTFont(io.BytesIO(font_files()[f"{name}.ttf"])).getBestCmap())
        assert letters == further - main
        assert {ord(letter) for letter in "ěřůŁńş"} <= letters
        assert not letters & set(range(0x20, 0x7F))


def test_a_packet_is_set_in_the_faces_of_its_series():
    """The PDF embeds the author's face for headings, and ours for the words."""
    look = Look(faces=Faces(heading=given_face()))
    html = (
        '<!DOCTYPE html><html lang="en-GB"><head><title>Fern</title><style>'
        f"{packet_style(look)}{fill(environment(), 'packet/packet.css')}</style></head>"
        "<body><h1>Fern by the Tap</h1><p>It uncurls.</p></body></html>"
    )
    assets = series_font_files(look)
    assert list(assets) == ["series-heading.ttf"]
    page_mm = (210.0, 279.4)
    made = documents(html, assets, b"fern", {}, page_mm, {"": page_mm}, {}, date(2026, 11, 25))
    page = pypdf.PdfReader(io.BytesIO(made[""])).pages[0]
    embedded = {one.get_object()["/BaseFont"] for one in page["/Resources"]["/Font"].values()}
    assert len(embedded) == 2
    assert any("Series-Heading" in name for name in embedded), embedded


@pytest.mark.parametrize(("kind", "drawn"), [("stitch", True), ("pot", True), ("none", False)])
def test_an_author_chooses_what_stands_below_her_titles(tmp_path, kind, drawn):
    """A cross stitch unless she says otherwise: a series need not be about gardens."""
    assert Look().ornament == "stitch"
    look = look_of(tmp_path, f"ornament: {kind}")
    shown = fill_macro(look.ornament)
    assert ("<svg" in shown) == drawn
    assert (shown == fill_macro("pot")) == (kind == "pot")
    icon = fill(environment(), "site/favicon.svg", ornament=kind)
    pot = fill(environment(), "site/favicon.svg", ornament="pot")
    assert (icon == pot) == (kind == "pot")


def fill_macro(kind: str) -> str:
    return str(environment().get_template("site/macros.html").module.ornament(kind)).strip()
