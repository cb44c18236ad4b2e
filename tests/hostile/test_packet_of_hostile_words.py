"""Hostile words all at once, through the PDF engine: the packet holds them as words, and nothing acts."""

import io
import re
from datetime import date

import pytest
from pypdf import PdfReader

from packetgen.pipeline import packet_files, proof
from packetgen.render.pdf import PAPERS_MM, EngineComplaint, documents
from packetgen.render.templates import environment
from tests.content_builder import FERN, FINISH, MOSS, PATTERN, SERIES, TINY, build, picture
from tests.hostile.limits import guarded

WORDS = "</title><script>alert(1)</script>"
MARKDOWN = (
    "A <script>alert(1)</script> <img src=http://x.test/a.png onerror=alert(1)>\n\n"
    "<style>@import url(http://x.test/a.css); body { background: url(file:///etc/passwd) }</style>\n\n"
    "![a](http://x.test/a.png) <iframe src=file:///etc/passwd></iframe>\n\n"
    "<svg><image href=http://x.test/a.png /></svg> [shop](https://example.org/a)\n"
)


@pytest.fixture
def folders(tmp_path):
    for name in ("content", "out", "secret"):
        (tmp_path / name).mkdir()
    return tmp_path / "content", tmp_path / "out", tmp_path / "secret"


def test_hostile_words_are_printed_as_words(folders):
    """Titles, names and prose that are full of markup: no request, no script, no link but the author's own."""
    changes = {
        SERIES: TINY[SERIES]
        .replace("The Garden Year", f'"{WORDS}"')
        .replace("Wren Alder", f'"{WORDS}"'),
        PATTERN: TINY[PATTERN].replace("Fern by the Tap", f'"{WORDS}"'),
        MOSS: TINY[MOSS].replace("Moss Stranded", f'"{WORDS}"').replace("brick", f'"{WORDS}"'),
        FINISH: TINY[FINISH].replace("The Shelf", f'"{WORDS}"'),
        f"{FERN}/story.md": MARKDOWN,
        f"{FERN}/stitching.md": MARKDOWN,
        "finishes/shelf/steps.md": MARKDOWN,
    }
    (reckoned,) = proof(build(folders[0], changes)).reckoned
    env = environment()
    (figure,) = reckoned.figures
    cover = picture([["#a04030"]], "JPEG")
    packet_files(reckoned.series, figure, cover, None, env)  # what loads late is loaded
    with guarded(*folders):
        files = packet_files(reckoned.series, figure, cover, None, env)
    data = files["packets/garden-year/fern-a4.pdf"]
    reader = PdfReader(io.BytesIO(data))
    assert WORDS in re.sub(r"\s+", "", "".join(page.extract_text() for page in reader.pages))
    actions = [
        annotation.get_object()["/A"]
        for page in reader.pages
        for annotation in page.get("/Annots", ())
        if "/A" in annotation.get_object()
    ]
    assert {action["/S"] for action in actions} <= {"/URI", "/GoTo"}
    followed = {action["/URI"] for action in actions if "/URI" in action}
    assert followed and all(link.startswith("https://") for link in followed)
    for sign in (b"/JavaScript", b"/JS ", b"/Launch", b"/SubmitForm", b"/OpenAction", b"x.test"):
        assert sign not in data


ELSEWHERE = (
    "http://x.test/a.png",
    "HTTPS://x.test/a.png",
    "ftp://x.test/a.png",
    "file:///etc/passwd",
    "//x.test/a.png",
    "/etc/passwd",
    "../secret/plan.txt",
    "a.png",
    "data:image/png;base64,AAAA",
    "data:text/html,x",
    "asset:../../etc/passwd",
    "asset:///etc/passwd",
    "asset:http://x.test/a.png",
    "ASSET:a.png",
    "javascript:alert(1)",
)
PLACES = (
    '<p>a</p><img alt="a" src="{}">',
    '<p>a</p><object data="{}">b</object>',
    '<p>a</p><svg width="9" height="9"><image href="{}" width="9" height="9"/></svg>',
    '<p style="background: url({})">a</p>',
    '<p style="list-style-image: url({}); display: list-item">a</p>',
    '<p style="border-image-source: url({})">a</p>',
    "<style>@import url({});</style><p>a</p>",
    "<style>@page {{ background: url({}) }}</style><p>a</p>",
    "<style>p::before {{ content: url({}) }}</style><p>a</p>",
    "<style>@font-face {{ font-family: q; src: url({}) }} p {{ font-family: q }}</style><p>a</p>",
    "<style>@color-profile --c {{ src: url({}) }}</style><p>a</p>",
    '<link rel="stylesheet" href="{}"><p>a</p>',
    '<link rel="attachment" href="{}"><p>a</p>',
    '<p>a <a rel="attachment" href="{}">b</a></p>',
)
DRAWN = (
    '<image href="{}" width="9" height="9"/>',
    '<image xlink:href="{}" width="9" height="9"/>',
    "<style>@import url({});</style><rect width='1' height='1'/>",
    "<style>@font-face {{ font-family: z; src: url({}) }}</style><text y='5' font-family='z'>a</text>",
)
# What the engine knows nothing of: it may go on, but may ask for nothing.
PASSED_OVER = (
    '<use href="{}#b"/>',
    '<rect width="9" height="9" fill="url({}#b)"/>',
    '<foreignObject width="9" height="9"><img src="{}"/></foreignObject>',
    '<script href="{}"/>',
    '<filter id="f"><feImage href="{}"/></filter><rect width="9" height="9" filter="url(#f)"/>',
)


def drawing(inner: str, before: str = "") -> bytes:
    names = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'
    return f'{before}<svg {names} width="9" height="9">{inner}</svg>'.encode()


def made(body: str, **assets: bytes) -> None:
    """A document with this body. Raises EngineComplaint."""
    known = {"a.png": picture([["#a04030"]])} | {
        f"{name}.svg": data for name, data in assets.items()
    }
    documents(
        f'<html lang="en"><head><title>t</title></head><body>{body}</body></html>',
        known,
        b"x",
        {},
        (210, 279.4),
        {"a4": PAPERS_MM["a4"]},
        {},
        date(2026, 11, 25),
    )


@pytest.fixture(scope="module", autouse=True)
def _engine_is_loaded():
    made('<p>a</p><img alt="a" src="asset:a.png">')


def test_the_engine_serves_what_the_project_gave_it(folders):
    with guarded(*folders):
        made('<p>a</p><img alt="a" src="asset:a.png">')


@pytest.mark.parametrize("place", PLACES)
def test_the_engine_asks_for_nothing_else(place, folders):
    """From HTML and CSS, of an author's own template too: refused in words, and nothing opened or called."""
    for url in ELSEWHERE if place is PLACES[0] else ELSEWHERE[:5]:
        with guarded(*folders), pytest.raises(EngineComplaint):
            made(place.format(url))


@pytest.mark.parametrize("inner", DRAWN)
def test_a_drawing_asks_for_nothing_else(inner, folders):
    for url in ELSEWHERE[:5]:
        with guarded(*folders), pytest.raises(EngineComplaint):
            made('<p>a</p><img alt="a" src="asset:s.svg">', s=drawing(inner.format(url)))


@pytest.mark.parametrize("inner", PASSED_OVER)
def test_what_the_engine_does_not_know_asks_for_nothing(inner, folders):
    for url in ELSEWHERE[:5]:
        with guarded(*folders):
            try:
                made('<p>a</p><img alt="a" src="asset:s.svg">', s=drawing(inner.format(url)))
            except EngineComplaint:
                pass


def test_entities_of_a_drawing_bring_nothing_in(folders):
    """Neither a file of the machine nor a thousand million letters."""
    laughs = '<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa">' + "".join(
        f'<!ENTITY {chr(98 + n)} "{f"&{chr(97 + n)};" * 10}">' for n in range(12)
    )
    for before, entity in (
        ('<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>', "x"),
        ('<!DOCTYPE svg SYSTEM "http://x.test/a.dtd">', "x"),
        (laughs + "]>", "m"),
    ):
        inner = f'<text y="5">&{entity};</text>'
        with guarded(*folders), pytest.raises(EngineComplaint):
            made('<p>a</p><img alt="a" src="asset:s.svg">', s=drawing(inner, before))
