"""What the PDF engine complains of in an author's own template is told with its file and line."""

import shutil
from datetime import date
from functools import cache

import pytest

from packetgen.chart.editions import COLOUR
from packetgen.digest import afresh
from packetgen.pipeline import packets
from packetgen.program import project_templates
from packetgen.reckon.figures import figures
from packetgen.render.engine_words import told
from packetgen.render.look_style import packet_style
from packetgen.render.pdf import PAPERS_MM, EngineComplaint, documents
from packetgen.render.prose import prose
from packetgen.render.templates import environment
from tests.stitching import option, pattern, piece, series

OF = pattern("mmtt", "ttmm", cloths=(option(14),))
SERIES = series(OF, finish=piece())


@cache
def of_one() -> object:
    return figures(OF, piece())


@pytest.fixture
def own(tmp_path):
    """An author's folder of templates, with the project's of packets in it to be changed."""
    shutil.copytree(project_templates() / "packet", tmp_path / "packet")
    return tmp_path


def put(own, name: str, line: int, words: str) -> None:
    """Writes `words` as a line of their own, that many lines from the top of a template."""
    path = own / "packet" / name
    lines = path.read_text("utf-8").split("\n")
    path.write_text("\n".join([*lines[: line - 1], words, *lines[line - 1 :]]), "utf-8")


def complained(own) -> list[str]:
    """What building the packet with these templates says, line by line."""
    with pytest.raises(EngineComplaint) as caught:
        packets.colour_papers(SERIES, of_one(), environment(own), afresh)
    return str(caught.value).split("\n")


def test_the_project_s_own_templates_make_no_complaint():
    made = packets.colour_papers(SERIES, of_one(), environment(), afresh)
    assert len(made) == 2


def test_every_slip_in_an_author_s_style_sheet_is_told_with_its_line_all_in_one_go(own):
    """Of one sheet: an unknown property, a value, a selector, a margin box, a bracket too many, an import."""
    for line, words in (
        (12, "p { colour: red }"),
        (15, "h2 { margin: many; color: black }"),
        (18, "p::frist-line { color: red }"),
        (21, "@page { @bottom-middle { content: 'x' } }"),
        (24, ".bracket } { color: red }"),
        (27, '@import url("more.css");'),
    ):
        put(own, "packet.css", line, words)
    said = complained(own)
    places = {line.partition(": ")[0] for line in said}
    assert {place.rpartition(":")[0] for place in places} == {
        f"templates/packet/packet.css:{line}" for line in (12, 15, 18, 21, 24, 27)
    }
    assert (
        "templates/packet/packet.css:12:5: the PDF engine passes over 'colour: red', unknown property; "
        "correct it or leave it out"
    ) in said


def test_a_slip_in_a_style_within_the_page_is_told_with_its_line(own):
    put(own, "notes.html", 2, '<p style="color: no-such">Words</p>')
    assert complained(own) == [
        "templates/packet/notes.html:2:11: the PDF engine passes over 'color: no-such', invalid value; "
        "correct it or leave it out"
    ]


def test_what_an_author_s_page_lacks_is_told_with_its_line(own):
    """A letter that no face has, a picture without words, a link into nothing, an id given twice."""
    put(own, "notes.html", 2, "<p>A quaver: \U0001d160</p>")
    put(own, "credits.html", 3, '<img src="asset:blank.svg">')
    put(own, "credits.html", 4, '<p>See <a href="#nowhere">there</a>.</p>')
    put(own, "cautions.html", 2, '<p id="same">One</p>')
    put(own, "cautions.html", 3, '<p id="same">Two</p>')
    assert sorted(complained(own)) == [
        "templates/packet/cautions.html:2:4: the id 'same' is given twice; an id names one element",
        "templates/packet/credits.html:3:1: the picture 'asset:blank.svg' has no words for who cannot see "
        'it; give it alt="…"',
        "templates/packet/credits.html:4:17: a link leads to '#nowhere', which is nowhere; give that id to "
        "an element",
        "templates/packet/notes.html:2:14: the type of the packet has no '\U0001d160' (U+1D160); write it "
        "in letters that it has",
    ]


@pytest.mark.parametrize(
    ("name", "words", "place"),
    [
        ("cover.html", '<img alt="Me" src="asset:portrait.jpg">', "cover.html:1:20"),
        ("cover.html", '<img alt="Me" src="https://example.org/me.jpg">', "cover.html:1:20"),
        ("packet.css", '.cover { background: url("file:///etc/hosts") }', "packet.css:1:27"),
    ],
)
def test_a_file_that_a_packet_may_not_have_is_told_where_it_is_named(own, name, words, place):
    put(own, name, 1, words)
    (said,) = complained(own)
    assert said.startswith(f"templates/packet/{place}: there is no '")


def test_a_packet_that_does_not_say_its_language_is_told(own):
    path = own / "packet" / "packet.html"
    path.write_text(path.read_text("utf-8").replace(' lang="en-GB"', ""), "utf-8")
    (said,) = complained(own)
    assert said.startswith("templates/packet/packet.html:1:1: the page does not say its language")


def test_the_large_line_of_another_template_is_not_taken_for_it():
    """A line of the sheet that is filled in stands in no template: what it quotes is looked for."""
    page = "<html><style>\np { colour: #123456 }\n</style></html>"
    templates = {"packet/a.css": "p { color: red }", "packet/b.css": "\np { colour: {{ it }} }"}
    said = told(
        "Ignored `colour: #123456` at 2:5, unknown property.", page, "packet/a.html", templates
    )
    assert said.startswith("templates/packet/a.html:1:1: the PDF engine passes over 'colour")


def test_a_complaint_like_none_that_we_know_is_passed_on_as_it_is():
    assert told("Something else", "<html></html>", "packet/a.html", {}) == "Something else"


@pytest.mark.parametrize(
    "text",
    [
        "- one\n    - two\n        - three\n            - four",
        "1. one\n    1. two\n        1. three",
        "a | b\n--|--\n1 | 2 | 3 | 4",
        "# One\n###### Six\n# One",
        "> " * 30 + "deep",
        "a" * 5000,
        "***\n\n`" + "x" * 3000 + "`",
        "\"Quoted\" 'so' -- and --- so ...",
        "[nowhere](#nowhere) [half](http://[::1) [port](http://a.test:99999999/) <http://[v1.a]/>",
        "<table><tr><td>a</td></tr><tr><td>b</td><td colspan=9>c</td><td>d</td></tr></table>",
        "<table><td>x<table><tr><td>y</table></table><td>z</td><li>q",
        "<table><thead></thead><tbody></tbody></table>",
        '<p id="x" lang="">a</p><p id="x" style="colour: red">b</p><img src="x">',
        "<style>p { colour: red }</style><math><mi>x</mi></math><svg><image href='x'/></svg>",
    ],
)
def test_no_prose_of_an_author_makes_the_engine_complain(text):
    """What is left of it after cleaning holds nothing that the engine warns of."""
    sheet = environment().get_template("packet/packet.css").render()
    page = (
        f'<html lang="en-GB"><head><title>t</title><style>{packet_style()}{sheet}</style></head>'
        f"<body>{prose(text, 1)}</body></html>"
    )
    made = documents(page, {}, b"x", {}, COLOUR.page_mm, PAPERS_MM, {}, date(2026, 11, 25))
    assert set(made) == set(PAPERS_MM)
