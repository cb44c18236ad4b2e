"""The public web site: whole by itself, open to everyone, and silent about what is sold."""

import io
import posixpath
import re
import struct
from dataclasses import replace
from datetime import date, datetime
from html.parser import HTMLParser
from urllib.parse import unquote, urlsplit
from zoneinfo import ZoneInfo

import pytest
from PIL import Image

from packetgen.cautions import CAUTIONS
from packetgen.model import (
    Bead,
    BeadCard,
    Colour,
    Counter,
    DateRule,
    Designer,
    Fraction,
    Hardware,
    Knot,
    Line,
    Listed,
    Notice,
    Occasion,
    Revision,
    Sells,
    Stitch,
    ToCome,
)
from packetgen.reckon.figures import figures
from packetgen.reckon.standing import standing
from packetgen.render.apostrophes import curled
from packetgen.render.site import series_list_files, site_files
from packetgen.render.site_pictures import OF_PIECE, OF_SERIES, Picture, Shares, SitePictures
from packetgen.render.site_text import counted, listed, prose_under
from packetgen.render.templates import environment
from tests import stitching
from tests.content_builder import picture as picture_data
from tests.golden_pages import same_as_golden

QUIET = Designer("moorcroft-lane", "Tamsin Hedgerow", "Draws by lamplight.", Sells.NEITHER, None)
COUNTER = "https://fernsby.example.org/"
SELLER = Designer("fernsby", "Isolde Fernsby", "Draws in the rain.", Sells.PDF, COUNTER)
HIP = Bead(
    BeadCard("drop", "Drop Glass", 2.2, 300, {}),
    Colour("07", "hip red", "#b32c2e"),
    (3.5, 2.5),
    stitching.HERE,
)
SPRIG = stitching.pattern(
    "mmmmtttt....",
    "m.ttmm.tt.ss",
    "ss..mmtt.mm.",
    "ttttssss.m.m",
    designer=QUIET,
    occasion=Occasion("May Day", DateRule("1 May", fixed=(5, 1))),
    cloths=(stitching.option(14), stitching.option(32, 2)),
    fractions=(Fraction(2, 2, "m", Stitch.HALF, None),),
    lines=(Line("s", ((1, 1), (3, 1), (3, 2)), False, stitching.HERE),),
    knots=(Knot("t", (2.5, 2.5), stitching.HERE),),
    beads=(HIP,),
    sold_at=(Counter("By post", "https://post.example.org/sprig?from=site&kind=booklet"),),
    revisions=(
        Revision(date(2026, 5, 1), "First issue."),
        Revision(date(2026, 6, 2), "Row 3: a leaf & its <stalk> mended."),
    ),
    story_markdown="It grew by the gate.\n\n#### Later\n\nIt was cut.\n\n## After that\n\nNothing.",
)
ROSE = stitching.pattern(
    "tttttttttttt",
    "tm.tm.tmmtmt",
    "tttttmtttttt",
    id="rose",
    title="A Rose",
    designer=SELLER,
    occasion=Occasion("Rose Sunday", DateRule("21 days before Easter", easter=(-21, False))),
)
HOLLY = stitching.pattern(
    "mmmmmmmm",
    "mtmtmmtm",
    "mmmmtmmm",
    id="holly",
    title="Holly",
    designer=SELLER,
    occasion=Occasion("The shortest day", DateRule("21 December", fixed=(12, 21))),
)
LIFTING = Occasion("Lifting", DateRule("third Sunday of August", nth=(3, 6, 8)))
BOARD = stitching.piece(
    cautions=tuple(CAUTIONS),
    hardware=(Hardware("wood screw", 4, "3 × 12 mm"),),
    steps_markdown="## Sawing\n\n1. Saw it.\n\n## Painting\n\n1. Paint it.",
)
YEAR = replace(
    stitching.series(HOLLY, SPRIG, ROSE, finish=BOARD),
    release=datetime(2027, 1, 15, 9, tzinfo=ZoneInfo("Europe/London")),
    designers=(QUIET, SELLER),
    to_come=(ToCome("Onions", QUIET, LIFTING),),
    notices=(
        Notice(date(2026, 4, 1), "An older notice", "Read *this*."),
        Notice(date(2026, 7, 1), "A newer notice", "# Shouted\n\n|a|b|\n|-|-|\n|1|2|\n"),
    ),
)
ADDRESS = "https://hedge.example.org/year"


def plain_picture(colour: str = "#b7a98c") -> Picture:
    return Picture(picture_data([[colour]], "JPEG"), 900, 960)


def share_picture() -> bytes:
    data = io.BytesIO()
    Image.new("RGB", (1200, 630), "#fbf8f1").save(data, "PNG")
    return data.getvalue()


def site_of(series=YEAR, as_of=None) -> dict[str, bytes]:
    share = Shares(*(share_picture(),) * 3)
    reckoned = tuple(figures(pattern, series.finish) for pattern in series.patterns)
    seen = standing(series, reckoned, as_of)
    pictures = SitePictures(
        mounted={of.pattern.id: (plain_picture(),) for of in seen.figures},
        details={of.pattern.id: (plain_picture(),) for of in seen.teased},
        shares={name: share for name in [OF_SERIES, OF_PIECE, *(p.id for p in series.patterns)]},
        bench=(plain_picture("#b0c8b3"),),
    )
    return site_files(seen, pictures, environment())


class Page(HTMLParser):
    """What a test asks of a page: its tags with their attributes, and its words."""

    VOID = {"meta", "link", "img", "br", "hr", "path", "polygon", "rect", "line"}

    def __init__(self, html: bytes) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str]]] = []
        self.words: list[str] = []
        self.feed(html.decode("utf-8"))

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, {name: value or "" for name, value in attrs}))

    def handle_data(self, data):
        if self.tags and self.tags[-1][0] != "script":  # that is for machines
            self.words.append(data)

    def all(self, *names: str) -> list[dict[str, str]]:
        return [attributes for tag, attributes in self.tags if tag in names]

    def shared(self, name: str) -> str | None:
        """The first content of a meta property, or None. Only of pictures, and of tags, there may be
        several (ogp.me, Arrays)."""
        found = [m["content"] for m in self.all("meta") if m.get("property") == name]
        several = name.startswith("og:image") or name.endswith(":tag")
        assert several or len(found) < 2, f"{name} is said {len(found)} times"
        return found[0] if found else None

    @property
    def text(self) -> str:
        return " ".join(" ".join(self.words).split())


@pytest.fixture(scope="module")
def site() -> dict[str, bytes]:
    return site_of()


@pytest.fixture(scope="module")
def standing_site() -> dict[str, bytes]:
    """The same site once its author has said where it will stand."""
    return site_of(replace(YEAR, address=ADDRESS))


def pages_of(files: dict[str, bytes]) -> dict[str, Page]:
    return {path: Page(data) for path, data in files.items() if path.endswith(".html")}


def is_own(url: str) -> bool:
    """A link that stays in the site: neither another host nor data written into the page."""
    return not urlsplit(url).scheme and not url.startswith("//")


def beside(path: str, link: str) -> str:
    """Where a relative link on the page at `path` leads."""
    return posixpath.normpath(posixpath.join(posixpath.dirname(path), link))


def links(page: Page) -> list[str]:
    return [a[name] for _, a in page.tags for name in ("href", "src") if name in a]


# --- whole by itself ------------------------------------------------------------------------------


def test_every_page_is_there(site):
    """One for the series, for each pattern, for the finishing piece, for what tells of all patterns
    together, and for lost visitors."""
    assert set(pages_of(site)) == {
        "index.html",
        "corrections.html",
        "designers.html",
        "notices.html",
        "supplies.html",
        "finishing-piece.html",
        "404.html",
        "sprig/index.html",
        "rose/index.html",
        "holly/index.html",
    }


def test_every_link_leads_to_a_file_of_the_site_and_every_anchor_to_a_place_on_its_page(site):
    """Nothing dangles: the site can be opened from a folder or stand under any path."""
    pages = pages_of(site)
    followed = 0
    for path, page in pages.items():
        for link in filter(is_own, links(page)):
            assert not link.startswith("/"), f"{path}: {link} is not relative"
            file, _, anchor = link.partition("#")
            target = beside(path, unquote(file)) if file else path
            assert target in site, f"{path}: {link}"
            if anchor:
                assert anchor in {a.get("id") for _, a in pages[target].tags}, f"{path}: {link}"
            followed += 1
    assert followed > 60


def test_the_style_asks_only_for_faces_that_the_site_holds(site):
    style = site["site.css"].decode()
    asked = [url for url in re.findall(r'url\("([^"]+)"\)', style) if not url.startswith("data:")]
    assert asked and set(asked) <= set(site)
    assert "@import" not in style


def test_faces_stand_beside_their_licence_and_the_chart_symbols_stay_at_home(site):
    """The SIL Open Font License 1.1, condition 2, asks that each copy contains the licence."""
    fonts = {path for path in site if path.startswith("fonts/")}
    assert "fonts/OFL.txt" in fonts
    assert any(path.endswith(".woff2") for path in fonts)
    assert not any("symbol" in path.lower() for path in site)
    assert "symbol" not in site["site.css"].decode().lower()


def test_no_page_asks_another_host_for_anything(site, standing_site):
    """Only links that a reader follows herself lead away, and only where the author sends her."""
    for files in (site, standing_site):
        for path, page in pages_of(files).items():
            assert not page.all("iframe", "object", "embed", "form", "base")
            scripts = page.all("script")
            assert all(one.get("type") == "application/ld+json" or "src" in one for one in scripts)
            for _, attributes in page.tags:
                for name in ("src", "srcset", "data", "poster", "action"):
                    assert is_own(attributes.get(name, "")), f"{path}: {attributes}"
            away = {link for link in links(page) if not is_own(link) and link != "data:,"}
            authors_own = {COUNTER, SPRIG.sold_at[0].url}
            assert all(link in authors_own or link.startswith(ADDRESS) for link in away), path
            assert not re.search(r"url\(\s*[\"']?(?!data:)(https?:)?//", files[path].decode())


def test_the_page_for_a_wrong_address_leans_on_no_other_file(site, standing_site):
    """A host shows it under any path, where a relative style sheet would not be found."""
    lost = Page(site["404.html"])
    assert len(lost.all("style")) == 1 and not lost.all("img")
    assert not [link for link in lost.all("link") if link["rel"] == "stylesheet"]
    home = [a["href"] for a in Page(standing_site["404.html"]).all("a") if a["href"] != "#main"]
    assert home == [f"{ADDRESS}/index.html"]


def test_pages_are_the_same_each_time():
    assert site_of() == site_of()


# --- silent about what is sold --------------------------------------------------------------------


def test_no_page_holds_a_row_of_a_chart(site):
    rows = {row for pattern in YEAR.patterns for row in pattern.grid.rows}
    assert all(len(row) >= 8 for row in rows)
    for path, data in site.items():
        if not path.startswith("fonts/"):
            assert not [row for row in rows if row.encode() in data], path


def test_no_page_holds_a_chart_symbol_or_a_pdf(site):
    """Symbols of charts live in the private use area: U+E000 to U+F8FF in the Unicode standard."""
    for path, page in pages_of(site).items():
        text = site[path].decode()
        assert not [c for c in text if 0xE000 <= ord(c) <= 0xF8FF], path
        assert not [link for link in links(page) if re.search(r"\.(pdf|zip)", link.lower())]
    assert not [
        path
        for path in site
        if path.lower().endswith((".pdf", ".zip", ".txt", ".json"))
        and path not in ("fonts/OFL.txt", "robots.txt")
    ]
    assert not [data for data in site.values() if data.startswith((b"%PDF", b"PK"))]


def test_stitches_are_not_counted_colour_by_colour():
    """With thousands of stitches in one colour, that figure is on no public page."""
    rows = ("m" * 61,) * 37 + ("t" * 61,) * 7
    pattern = stitching.pattern(*rows, id="bed", title="A Bed")
    text = Page(site_of(stitching.series(pattern))["bed/index.html"]).text
    assert "61 wide × 44 high" in text
    for count in (61 * 37, 61 * 7):
        assert str(count) not in text and f"{count:,}" not in text


# --- shared and found -----------------------------------------------------------------------------

# "The four required properties for every page": title, type, image, url. Source: the Open Graph
# protocol, ogp.me. The url is canonical, so there is none before the author has said where the site
# will stand, nor for the page that a host shows under any address.
ALWAYS = ("title", "type", "image", "description", "image:width", "image:height", "image:alt")


def test_every_page_says_what_is_shown_where_its_link_is_shared(standing_site):
    for path, page in pages_of(standing_site).items():
        for name in ALWAYS:
            assert page.shared(f"og:{name}"), f"{path}: og:{name}"
        if path != "404.html":
            assert page.shared("og:url") == f"{ADDRESS}/{path.removesuffix('index.html')}"
            canonical = [link["href"] for link in page.all("link") if link["rel"] == "canonical"]
            assert canonical == [page.shared("og:url")]


def test_a_shared_picture_is_a_full_address_and_as_large_as_it_says(standing_site):
    """Width and height stand in bytes 16 to 24 of a PNG (W3C PNG, chapter 11: IHDR)."""
    for page in pages_of(standing_site).values():
        image = page.shared("og:image")
        assert image.startswith(f"{ADDRESS}/")
        data = standing_site[image.removeprefix(f"{ADDRESS}/")]
        said = [page.shared(f"og:image:{side}") for side in ("width", "height")]
        assert [str(side) for side in struct.unpack(">II", data[16:24])] == said == ["1200", "630"]


def test_without_an_address_shared_pictures_are_relative_and_nothing_pretends_to_be_canonical(site):
    for path, page in pages_of(site).items():
        assert page.shared("og:url") is None
        assert not [link for link in page.all("link") if link["rel"] == "canonical"]
        assert beside(path, page.shared("og:image")) in site


def test_every_page_has_a_title_a_description_and_a_language_of_its_own(site):
    pages = pages_of(site)
    titles = [re.findall("<title>(.*?)</title>", site[path].decode()) for path in pages]
    assert all(len(title) == 1 for title in titles)
    assert len({title[0] for title in titles}) == len(titles)
    for page in pages.values():
        assert page.all("html") == [{"lang": "en-GB"}]
        assert [m["content"] for m in page.all("meta") if m.get("name") == "viewport"]
        assert [m["content"] for m in page.all("meta") if m.get("name") == "description"] != [""]


# --- open to everyone -----------------------------------------------------------------------------


def test_every_page_has_one_first_heading_and_no_level_is_skipped(site):
    """Also where an author's own headings skip one."""
    for path, page in pages_of(site).items():
        levels = [int(tag[1]) for tag, _ in page.tags if re.fullmatch("h[1-6]", tag)]
        assert levels[0] == 1 and levels.count(1) == 1, path
        assert all(after <= before + 1 for before, after in zip(levels, levels[1:])), (path, levels)


def test_every_picture_has_words_and_its_size(site):
    for path, page in pages_of(site).items():
        for image in page.all("img"):
            assert image["alt"] and (image["width"], image["height"]) == ("900", "960"), path


def test_the_drawing_of_the_piece_has_a_name(site):
    page = Page(site["finishing-piece.html"])
    drawing = next(a for a in page.all("svg") if a.get("role") == "img")
    assert drawing["aria-label"].startswith("The Board, drawn to scale, with the card of ")


def test_ids_are_used_once_and_the_first_link_skips_to_the_page(site):
    for page in pages_of(site).values():
        ids = [a["id"] for _, a in page.tags if "id" in a]
        assert len(set(ids)) == len(ids)
        assert page.all("a")[0] == {"class": "skip", "href": "#main"}
        assert [a["id"] for a in page.all("main")] == ["main"]


def test_every_table_says_which_cells_are_headings(site):
    for page in pages_of(site).values():
        assert all(cell.get("scope") for cell in page.all("th"))


# --- what the pages say ---------------------------------------------------------------------------


def test_patterns_follow_the_year_and_not_the_author_s_order(site):
    """Rose Sunday in March, May Day, the shortest day."""
    text = Page(site["index.html"]).text
    places = [text.index(title) for title in ("A Rose", "A Sprig", "Holly")]
    assert places == sorted(places)


def test_a_moving_feast_is_printed_for_the_next_three_years(site):
    """21 days before Easter, which is on 28 March 2027, 16 April 2028 and 1 April 2029.

    Source: OEIS A060958, as in check_values/easter_1980_2060.csv.
    """
    days = [time["datetime"] for time in Page(site["rose/index.html"]).all("time")]
    assert days[:3] == ["2027-03-07", "2028-03-26", "2029-03-11"]


def test_a_feast_that_passed_before_the_release_is_not_announced_again():
    """Released on 15 January 2027, a pattern for the second Sunday of January begins in 2028."""
    rule = DateRule("second Sunday of January", nth=(2, 6, 1))
    late = replace(HOLLY, occasion=Occasion("Plough Sunday", rule))
    text = Page(site_of(stitching.series(late))["holly/index.html"]).text
    assert "9 January 2028" in text and "10 January 2027" not in text


def test_the_release_names_its_day_hour_and_zone(site):
    text = Page(site["index.html"]).text
    assert "15 January 2027, 09:00 Europe/London time, UTC+00:00" in text


@pytest.mark.parametrize("zone", ["UTC", "Europe/London"])
@pytest.mark.parametrize("as_of", [None, date(2027, 4, 30)])
def test_a_release_on_a_plain_day_has_no_hour_and_no_zone(zone, as_of):
    """A day without an hour is its first minute; on every page, before the release and after it."""
    plain = replace(YEAR, release=datetime(2027, 5, 1, tzinfo=ZoneInfo(zone)))
    files = site_of(plain, as_of)
    for path in ("index.html", "sprig/index.html", "supplies.html"):
        text = Page(files[path]).text
        assert "00:00" not in text and "UTC+" not in text, path
        assert ("1 May 2027" in text) or path == "supplies.html"
    assert "Release 1 May 2027 " in Page(files["index.html"]).text


def test_a_pattern_s_page_and_the_calendar_say_the_same_day_of_hanging():
    """Released on 29 April, the picture for 1 May cannot go up a week before its day."""
    late = replace(YEAR, release=datetime(2027, 4, 29, 9, tzinfo=ZoneInfo("Europe/London")))
    files = site_of(late)
    assert "First goes up on 29 April 2027 : swap calendar" in Page(files["sprig/index.html"]).text
    assert "29 April 2027 A Sprig" in Page(files["index.html"]).text
    assert (
        "None goes up before the release, and each waits until the day"
        in Page(files["index.html"]).text
    )


def test_a_month_is_printed_without_a_day_and_stands_where_it_comes_after_the_release():
    """Released on 1 May 2027: the picture for 2 May of that year goes before the one for April, which first
    hangs in 2028."""
    sowing = Occasion("Sowing", DateRule("in April", fixed=(4, 1), whole="April"))
    early = Occasion("Early May", DateRule("first Sunday of May", nth=(1, 6, 5)))
    series = replace(
        stitching.series(replace(HOLLY, occasion=sowing), replace(SPRIG, occasion=early)),
        release=datetime(2027, 5, 1, tzinfo=ZoneInfo("UTC")),
        to_come=(ToCome("Onions", SELLER, sowing),),
    )
    files = site_of(series)
    text = Page(files["index.html"]).text
    assert text.index("2 May 2027 Early May") < text.index("April 2028 Sowing")
    everything = text + Page(files["designers.html"]).text + Page(files["holly/index.html"]).text
    assert "April 2028" in Page(files["designers.html"]).text and "1 April" not in everything


def test_all_days_of_a_list_are_told_with_their_year_or_none_is():
    """Easter moves and needs its year; 1 May does not, unless it stands beside Easter."""
    mixed = Page(site_of(stitching.series(SPRIG, ROSE))["index.html"]).text
    assert "1 May 2027 May Day" in mixed and "7 March 2027 Rose Sunday" in mixed
    fixed = Page(site_of(stitching.series(SPRIG, HOLLY))["index.html"]).text
    assert "1 May May Day" in fixed and "21 December The shortest day" in fixed


def test_a_welcome_of_a_line_or_two_has_no_large_first_letter():
    def opening(words: str) -> bool:
        series = replace(YEAR, welcome_markdown=words)
        return 'class="welcome prose opens-large"' in site_of(series)["index.html"].decode()

    assert not opening("Come in.")
    assert not opening("Come in.\n\n" + "The gate is open. " * 30)
    assert opening("The gate is open, and the kettle is on. " * 6)


def test_a_pattern_s_page_gives_its_sizes(site):
    """12 stitches at 14 count: 12 / 14 in = 0.86 in = 2.2 cm; with 3 in on both sides 6.86 in,
    which is cut at 6 7/8 in."""
    text = Page(site["sprig/index.html"]).text
    for said in ("12 wide × 4 high", "0.86 in × 0.29 in", "2.2 cm × 0.7 cm", "6 7/8 in × 6 3/8 in"):
        assert said in text


def test_a_pattern_s_page_says_how_it_is_worked_and_who_made_it(site):
    text = Page(site["sprig/index.html"]).text
    assert "cross stitch, half stitch, backstitch, one French knot and one bead" in text
    beads = "1 packet of Drop Glass, hip red"
    for said in ("Tamsin Hedgerow", "Osbert Lindle", "3 colours", beads):
        assert said in text


def test_a_designer_who_sells_no_pdfs_is_said_to_sell_none(site):
    text = Page(site["sprig/index.html"]).text
    assert "Tamsin Hedgerow sells no PDFs; others sell this pattern. By post" in text


def test_a_designer_who_sells_and_names_no_counter_sells_at_her_own(site):
    page = Page(site["holly/index.html"])
    assert COUNTER in links(page)
    assert "sells no PDFs" not in page.text


def test_a_pattern_that_nobody_sells_yet_says_so():
    text = Page(site_of(stitching.series(stitching.pattern("mm")))["sprig/index.html"]).text
    assert "No shop is named for this pattern yet" in text


def test_the_newest_revision_and_the_newest_notice_come_first(site):
    text = Page(site["sprig/index.html"]).text
    assert text.index("2 June 2026") < text.index("1 May 2026")
    text = Page(site["notices.html"]).text
    assert text.index("A newer notice") < text.index("An older notice")


def test_thread_is_summed_a_set_and_listed_by_cloth_only_where_cloths_differ(site):
    """One skein of each of three colours on both cloths."""
    text = Page(site["sprig/index.html"]).text
    assert "3 skeins in all, on any of these cloths" in text
    assert "Thread to buy" not in text


def test_thread_is_listed_by_cloth_where_a_larger_count_takes_less():
    """100 × 100 crosses in one colour: more skeins at 11 count than over two of 40."""
    cloths = (stitching.option(11), stitching.option(40, 2))
    pattern = stitching.pattern(*("m" * 100,) * 100, cloths=cloths)
    page = Page(site_of(stitching.series(pattern))["sprig/index.html"]).text
    bought = re.findall(r"Thread to buy, all colours together (\d+) skeins of Bramble", page)
    large, small = bought  # a panel a cloth, in the author's order
    assert int(large) > int(small)


def test_every_caution_of_the_piece_is_printed_in_full_and_linked_from_every_pattern(site):
    text = Page(site["finishing-piece.html"]).text
    for caution in CAUTIONS.values():
        assert curled(caution.text) in text
    linked = [link for link in links(Page(site["rose/index.html"])) if "#caution-" in link]
    assert len(linked) == len(CAUTIONS)


def test_what_an_author_writes_is_text_and_never_markup(site):
    assert "a leaf &amp; its &lt;stalk&gt; mended." in site["sprig/index.html"].decode()


def test_a_first_page_leads_to_several_series():
    other = replace(YEAR, id="other-year", title="The Other Year")
    files = series_list_files(YEAR, (Listed.of(YEAR), Listed.of(other)), environment())
    page = Page(files["index.html"])
    assert {"hedge-year/index.html", "other-year/index.html"} <= set(links(page))
    assert page.shared("og:image") == "hedge-year/share.png"
    assert {"site.css", "favicon.svg", "404.html", "fonts/OFL.txt"} <= set(files)


def test_an_author_s_own_template_goes_before_the_project_s(tmp_path):
    """One file of hers changes one page; the others stay."""
    (tmp_path / "site").mkdir()
    (tmp_path / "site" / "404.html").write_text("Gone to seed.", encoding="utf-8")
    files = series_list_files(YEAR, (Listed.of(YEAR),), environment(tmp_path))
    assert files["404.html"] == b"Gone to seed."
    assert b"The Hedge Year" in files["index.html"]


def test_a_pattern_s_page_is_the_one_on_record(site):
    made = site["sprig/index.html"].decode()
    same_as_golden("site_pattern.html", made)


# --- words ----------------------------------------------------------------------------------------


def test_headings_of_a_text_sink_below_the_page_s_own():
    """Levels 2, 4, 2, 3 under a heading of level 2 become 3, 4, 3, 4."""
    text = "## a\n\n#### b\n\n## c\n\n### d\n"
    assert re.findall(r"<h(\d)>", prose_under(text, 3)) == ["3", "4", "3", "4"]


def test_things_are_counted_and_listed_in_words():
    assert [counted(n, "skein") for n in (1, 2, 1200)] == ["1 skein", "2 skeins", "1,200 skeins"]
    said = [listed(words) for words in ((), ("a",), ("a", "b"), ("a", "b", "c"))]
    assert said == ["", "a", "a and b", "a, b and c"]
