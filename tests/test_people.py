"""Who made a pattern, how it is sold, and what readers are called to: on the packet and on the site."""

import re
from dataclasses import replace
from datetime import date

import pytest

from packetgen.load import load_content
from packetgen.model import Designer, Link, Notice, Sells
from packetgen.reckon.series_magnets import series_figures
from packetgen.render.packet import packet
from packetgen.render.people import sells_said, studio_said
from packetgen.render.templates import environment
from tests.content_builder import FERN, PATTERN, SERIES, build, picture
from tests.stitching import pattern, series
from tests.test_site import Page, links, site_of

NOTES = Link("Garden notes", "https://example.org/notes")
AMBER = Designer(
    *("amber", "Amber Lowe", "Draws at the window.", Sells.BOTH, "https://example.org/amber"),
    links=(NOTES,),
    studio="Two Tables",
)
CORIN = Designer(
    "corin", "Corin Vane", "Has the other table.", Sells.PRINTED, None, studio="Two Tables"
)
CALL = Notice(
    *(date(2027, 1, 2), "Send us your posies", "Pictures, please.", "open call"),
    opens=date(2027, 2, 1),
    closes=date(2027, 2, 28),
    who="Anyone with a needle",
)
DRAW = replace(CALL, title="A tin of needles", kind="prize draw")


def year(designer=AMBER, **more):
    design = pattern("mm", designer=designer, dyer="Madder Moss", photographer="Flint Hale")
    return replace(series(design), designers=(AMBER, CORIN), **more)


def home(of) -> str:
    return Page(site_of(of)["index.html"]).text


def credits_page(of) -> str:
    (figures,) = series_figures(of)
    html = packet(of, figures, b"", environment()).html
    return html[html.index("<h2>Credits") :]


# --- from the author's file --------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "means"),
    [
        *(("PDF", Sells.PDF), ("pdf", Sells.PDF), ("yes", Sells.PDF), ("true", Sells.PDF)),
        *(("no", Sells.NEITHER), ("false", Sells.NEITHER), ("neither", Sells.NEITHER)),
        *(("printed", Sells.PRINTED), ("both", Sells.BOTH)),
    ],
)
def test_how_a_designer_sells_is_read_in_the_new_words_and_the_old(said, means, tmp_path):
    changes = {SERIES: ("    shop: https://alder.example/alder", f"    sells: {said}")}
    content, problems = load_content(build(tmp_path, changes))
    assert not list(problems)
    assert content.series[0].designers[0].sells is means


def test_links_studio_and_credits_are_read(tmp_path):
    more = (
        "    studio: Two Tables\n    links: [{name: Garden notes, url: https://example.org/notes}]"
    )
    credits = "{dyer: Madder Moss, photographer: Flint Hale}\nphoto_alt: A fern in a frame."
    changes = {
        SERIES: ("    shop: https://alder.example/alder", more),
        PATTERN: ("{model_stitcher: Hazel Penn}", credits),
        f"{FERN}/photo.jpg": picture([["#a04030"]], "JPEG"),
    }
    content, problems = load_content(build(tmp_path, changes))
    assert not list(problems)
    (of,) = content.series
    assert (of.designers[0].studio, of.designers[0].links) == ("Two Tables", (NOTES,))
    made = of.patterns[0]
    assert (made.dyer, made.photographer, made.photo_alt) == (
        *("Madder Moss", "Flint Hale"),
        "A fern in a frame.",
    )


@pytest.mark.parametrize("there", [True, False])
def test_a_photographer_is_thanked_only_for_a_photograph_that_there_is(there, tmp_path):
    thanked = "{model_stitcher: Hazel Penn, photographer: Flint Hale}"
    changes = {PATTERN: ("{model_stitcher: Hazel Penn}", thanked)}
    if there:
        changes[f"{FERN}/photo.jpg"] = picture([["#a04030"]], "JPEG")
    content, problems = load_content(build(tmp_path, changes))
    (of,) = content.series
    page = Page(site_of(of)["fern/index.html"]).text
    assert ("Flint Hale" in page) == ("Flint Hale" in credits_page(of)) == there
    assert [problem.code for problem in problems] == ([] if there else ["photographer-idle"])


def test_a_notice_is_read_with_its_days(tmp_path):
    lines = (
        "kind: open call",
        "opens: 2027-02-01",
        "closes: 2027-02-28",
        "who: Anyone with a needle",
    )
    notice = "\n    ".join(("  - date: 2027-01-02", "title: Posies", "text: Pictures.", *lines))
    tiny = "  - {date: 2026-11-20, title: Linen, text: The linen is back.}"
    content, problems = load_content(build(tmp_path, {SERIES: (tiny, notice)}))
    assert not list(problems)
    (read,) = content.series[0].notices
    assert (read.kind, read.opens, read.closes, read.who) == (
        *("open call", date(2027, 2, 1), date(2027, 2, 28)),
        "Anyone with a needle",
    )


def test_a_notice_is_news_and_a_series_teases_unless_the_author_says_otherwise(tmp_path):
    content, _ = load_content(build(tmp_path))
    assert content.series[0].notices[0].kind == "news"
    assert content.series[0].before_release == "teaser"
    changes = {SERIES: ("finish: shelf", "finish: shelf\nbefore_release: title")}
    content, _ = load_content(build(tmp_path, changes))
    assert content.series[0].before_release == "title"


# --- on paper and on the site --------------------------------------------------------------------------


def test_a_studio_is_named_with_those_who_share_it():
    assert studio_said(AMBER, (AMBER, CORIN)) == "Two Tables, with Corin Vane"
    assert studio_said(AMBER, (AMBER,)) == "Two Tables"
    assert studio_said(replace(AMBER, studio=""), (AMBER, CORIN)) == ""


def test_the_credits_page_names_everyone_who_had_a_hand_in_it():
    said = credits_page(year())
    for name in (
        "Osbert Lindle",
        "Dyed by",
        "Madder Moss",
        "Photograph by",
        "Flint Hale",
        NOTES.url,
    ):
        assert name in said
    assert "Amber Lowe, of Two Tables, with Corin Vane" in said


def test_nobody_is_thanked_by_an_empty_line():
    of = series(pattern("mm", model_stitcher="", finisher=""))
    said = credits_page(of)
    for craft in ("Model stitched by", "Finished by", "Dyed by", "Photograph by", "Sold at"):
        assert craft not in said


def test_the_pattern_s_page_names_dyer_photographer_and_studio():
    text = Page(site_of(year())["sprig/index.html"]).text
    for name in (
        "Dyed by Madder Moss",
        "Photograph by Flint Hale",
        "of Two Tables, with Corin Vane",
    ):
        assert name in text


@pytest.mark.parametrize("sells", [Sells.PRINTED, Sells.BOTH])
def test_a_designer_who_sells_on_paper_is_said_to(sells):
    designer = replace(AMBER, sells=sells)
    page = Page(site_of(year(designer))["sprig/index.html"])
    assert f"Amber Lowe {sells_said(designer)}." in page.text
    assert AMBER.shop in links(page)
    assert f"Amber Lowe {sells_said(designer)}." in credits_page(year(designer))


def test_the_designers_part_has_shop_links_and_studio():
    page = Page(site_of(year())["designers.html"])
    assert "The shop of Amber Lowe sells PDFs and printed patterns" in page.text
    assert "Sells printed patterns, and no PDFs; each pattern’s page says where." in page.text
    assert "Of the studio Two Tables, with Corin Vane." in page.text
    assert {AMBER.shop, NOTES.url} <= set(links(page))


def test_a_picture_is_told_in_the_author_s_own_words():
    design = pattern("mm", photo_alt="Two stitches in a tiny hoop.")
    html = site_of(series(design))["sprig/index.html"].decode()
    assert 'alt="Two stitches in a tiny hoop."' in html


def test_a_picture_without_such_words_is_told_from_what_the_pattern_is_about():
    html = site_of(series(pattern("mm")))["sprig/index.html"].decode()
    assert re.search(r'alt="A Sprig, stitched on [^"]*A sprig of something green\."', html)


def test_a_call_says_when_and_who():
    text = home(year(notices=(CALL,)))
    assert "2 January 2027 · Open call Send us your posies" in text
    assert re.search(
        r"Opens on 1 February 2027 ?\. Closes at the end of 28 February 2027 ?\.", text
    )
    assert "Who may enter: Anyone with a needle." in text
    assert "prize draws" not in text


def test_a_prize_draw_always_reminds_of_local_rules():
    assert "Local rules on prize draws apply" in home(year(notices=(DRAW,)))


def test_news_are_told_as_before():
    text = home(year(notices=(Notice(date(2027, 1, 2), "Linen", "It is back."),)))
    assert "2 January 2027 Linen It is back." in text


def test_the_finishing_piece_s_page_says_what_fits_in_words():
    """Every design by every size of stitch, with a star where it is offered."""
    page = Page(site_of(year())["finishing-piece.html"])
    assert "What fits" in page.text and "A Sprig fits* fits fits" in page.text
