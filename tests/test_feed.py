"""The feed of a series, and what programs that look for pages are told.

Sections are those of RFC 4287, The Atom Syndication Format, unless another source is named.
"""

import re
from dataclasses import replace
from datetime import date, datetime
from urllib.parse import urlsplit
from uuid import UUID
from xml.etree import ElementTree
from zoneinfo import ZoneInfo

import pytest

from packetgen.model import Notice, Revision
from packetgen.reckon.figures import figures
from packetgen.reckon.standing import standing
from packetgen.render.feed import feed
from tests import stitching
from tests.test_site import Page, site_of

LONDON = ZoneInfo("Europe/London")
RELEASE = datetime(2027, 7, 15, 9, tzinfo=LONDON)  # British summer time
MOSS = stitching.pattern(
    "mm",
    id="moss",
    title="Moss & <Lichen>",
    about="A cushion of moss.",
    revisions=(
        Revision(date(2027, 5, 1), "First issue."),
        Revision(date(2027, 6, 1), "Mended before anybody had it."),
        Revision(date(2027, 8, 1), "Row 1: a leaf mended."),
    ),
)
ROSE = stitching.pattern("tt", id="rose", title="Rose", release=datetime(2027, 9, 1, tzinfo=LONDON))
YEAR = replace(
    stitching.series(MOSS, ROSE),
    release=RELEASE,
    notices=(
        Notice(date(2027, 7, 1), "Soon", "It is *nearly* here.\n\n## How near\n\nVery."),
        Notice(date(2027, 12, 1), "Winter", "One."),
        Notice(date(2027, 12, 1), "Winter again", "Two."),
    ),
)
STANDING_AT = replace(YEAR, address="https://hedge.example.org/year")
ATOM = "{http://www.w3.org/2005/Atom}"  # section 2
# RFC 3339, section 5.6; the letter Z is a distance from UTC too.
MOMENT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)")


def feed_of(series=YEAR, as_of=None) -> ElementTree.Element:
    made = tuple(figures(each, series.finish) for each in series.patterns)
    return ElementTree.fromstring(feed(standing(series, made, as_of)))


def entries(root) -> list:
    return root.findall(f"{ATOM}entry")


def said(element, name: str) -> str:
    """The words of the one element of that name."""
    found = element.findall(f"{ATOM}{name}")
    assert len(found) == 1, f"{len(found)} of {name}"
    return found[0].text or ""


def titles(root) -> list[str]:
    return [said(entry, "title") for entry in entries(root)]


@pytest.fixture(scope="module", params=[YEAR, STANDING_AT], ids=["no address", "address"])
def root(request):
    return feed_of(request.param)


# --- what the standard asks -----------------------------------------------------------------------


def test_a_feed_and_each_entry_have_an_identifier_a_title_and_a_moment(root):
    """Sections 4.1.1 and 4.1.2: exactly one atom:id, one atom:title and one atom:updated each."""
    assert root.tag == f"{ATOM}feed"
    assert len(entries(root)) == 6
    for element in (root, *entries(root)):
        assert said(element, "title").strip()
        UUID(said(element, "id").removeprefix("urn:uuid:"))  # RFC 9562; raises for any other text
        assert MOMENT.fullmatch(said(element, "updated"))


def test_no_two_entries_have_the_same_identifier(root):
    """Section 4.2.6: it is permanent and universally unique."""
    names = [said(element, "id") for element in (root, *entries(root))]
    assert len(set(names)) == len(names)


def test_every_entry_has_an_author(root):
    """Section 4.1.1: the feed's own where an entry names nobody; section 3.2.1: one atom:name."""
    assert said(root.find(f"{ATOM}author"), "name") == "The Hedge Year"
    of_moss = next(entry for entry in entries(root) if said(entry, "title") == MOSS.title)
    assert said(of_moss.find(f"{ATOM}author"), "name") == "Isolde Fernsby"


def test_every_entry_has_content_and_a_page_to_read_it_on(root):
    """Section 4.1.2: an entry has content or an alternate link, and no two alternates of one type."""
    for entry in entries(root):
        assert entry.find(f"{ATOM}content").get("type") in ("text", "html")  # section 4.1.3.1
        (link,) = entry.findall(f"{ATOM}link")
        assert (link.get("rel"), link.get("type")) == ("alternate", "text/html")


def test_moments_are_printed_with_their_distance_from_utc(root):
    """Section 3.3 with RFC 3339: nine o'clock on 15 July in London is at +01:00, in winter at +00:00."""
    moments = {said(entry, "title"): said(entry, "updated") for entry in entries(root)}
    assert moments[MOSS.title] == "2027-07-15T09:00:00+01:00"
    assert moments["Winter"] == "2027-12-01T00:00:00+00:00"


def test_an_author_s_text_is_html_that_reads_back_from_within_the_xml(root):
    """Section 3.1.1.2 and 4.1.3.3: HTML is escaped, so that it is text to the XML parser."""
    soon = next(entry for entry in entries(root) if said(entry, "title") == "Soon")
    content = soon.find(f"{ATOM}content")
    assert content.get("type") == "html" and not list(content)
    assert "<em>nearly</em>" in content.text and "How near" in content.text


def test_a_character_that_xml_forbids_breaks_nothing():
    """XML 1.0, production 2: U+000B may stand in no document."""
    torn = replace(YEAR, notices=(Notice(date(2027, 7, 1), "To\x0brn", "A\x0bB"),))
    assert "Torn" in titles(feed_of(torn))


def test_the_feed_says_where_it_stands_only_where_that_is_known():
    """Section 4.2.7.2: 'self' is the feed's own address, which nothing relative can say."""
    (own,) = [
        link for link in feed_of(STANDING_AT).findall(f"{ATOM}link") if link.get("rel") == "self"
    ]
    assert own.get("href") == "https://hedge.example.org/year/feed.atom"
    assert own.get("type") == "application/atom+xml"  # section 7
    assert not [link for link in feed_of().findall(f"{ATOM}link") if link.get("rel") == "self"]


@pytest.mark.parametrize(
    ("series", "before"), [(YEAR, ""), (STANDING_AT, "https://hedge.example.org/year/")]
)
def test_every_link_of_the_feed_leads_to_a_place_of_the_site(series, before):
    site = site_of(series)
    for link in feed_of(series).iterfind(f"{ATOM}entry/{ATOM}link"):
        href = link.get("href")
        assert href.startswith(before)
        parts = urlsplit(href.removeprefix(before))
        file = parts.path + "index.html" if parts.path.endswith("/") else parts.path
        page = Page(site[file])
        if parts.fragment:
            assert parts.fragment in {attributes.get("id") for _, attributes in page.tags}


# --- what it tells --------------------------------------------------------------------------------


def test_the_newest_stands_first_and_the_feed_is_as_new_as_that(root):
    moments = [datetime.fromisoformat(said(entry, "updated")) for entry in entries(root)]
    assert moments == sorted(moments, reverse=True)
    assert datetime.fromisoformat(said(root, "updated")) == moments[0]


def test_notices_patterns_and_corrections_are_told(root):
    assert titles(root) == [
        "Winter", "Winter again", "Rose", f"{MOSS.title}: revision 3", MOSS.title, "Soon",
    ]  # fmt: skip


def test_what_was_mended_before_the_release_is_no_news(root):
    assert "Mended before anybody had it." not in "".join(root.itertext())


@pytest.mark.parametrize(
    ("as_of", "told"),
    [
        (date(2027, 6, 30), []),
        (date(2027, 7, 14), ["Soon"]),
        (RELEASE, [MOSS.title, "Soon"]),
        (date(2027, 8, 1), [f"{MOSS.title}: revision 3", MOSS.title, "Soon"]),
        (date(2027, 9, 1), ["Rose", f"{MOSS.title}: revision 3", MOSS.title, "Soon"]),
    ],
)
def test_nothing_is_told_before_its_time(as_of, told):
    root = feed_of(as_of=as_of)
    assert titles(root) == told
    if not told:
        assert MOMENT.fullmatch(said(root, "updated"))  # a feed needs one all the same


def test_an_entry_keeps_its_identifier_while_others_come_and_its_title_is_mended():
    """Section 4.2.6: an identifier never changes, whatever happens to the document."""
    early = {
        said(entry, "title"): said(entry, "id") for entry in entries(feed_of(as_of=RELEASE.date()))
    }
    late = {said(entry, "title"): said(entry, "id") for entry in entries(feed_of())}
    assert early.items() <= late.items()
    soon, *others = YEAR.notices
    mended = replace(YEAR, notices=(replace(soon, title="Soon now"), *others))
    renamed = {said(entry, "title"): said(entry, "id") for entry in entries(feed_of(mended))}
    assert renamed["Soon now"] == late["Soon"]


def test_two_series_share_no_identifier():
    other = replace(YEAR, id="other-year")
    names = [{said(entry, "id") for entry in entries(feed_of(each))} for each in (YEAR, other)]
    assert not names[0] & names[1]


def test_every_page_leads_programs_to_the_feed():
    site = site_of()
    assert "feed.atom" in site
    for path, data in site.items():
        if path.endswith(".html") and path != "404.html":
            (link,) = [a for a in Page(data).all("link") if a["rel"] == "alternate"]
            assert link["type"] == "application/atom+xml"
            assert link["href"] == "../" * path.count("/") + "feed.atom"


# --- sitemap.xml and robots.txt -------------------------------------------------------------------

SITEMAP = "{http://www.sitemaps.org/schemas/sitemap/0.9}"  # sitemaps.org, protocol 0.9


def sitemap_of(**more) -> dict[str, str]:
    """Address → day of its last change, '' where none is said."""
    root = ElementTree.fromstring(site_of(STANDING_AT, **more)["sitemap.xml"])
    assert root.tag == f"{SITEMAP}urlset"
    return {
        url.find(f"{SITEMAP}loc").text: url.findtext(f"{SITEMAP}lastmod", "")
        for url in root.findall(f"{SITEMAP}url")
    }


def test_a_sitemap_holds_every_page_as_the_page_names_itself():
    """sitemaps.org: full addresses, all below the place of the sitemap; pages say theirs as canonical."""
    site = site_of(STANDING_AT)
    canonical = [
        link["href"]
        for path, data in site.items()
        if path.endswith(".html")
        for link in Page(data).all("link")
        if link["rel"] == "canonical"
    ]
    assert sorted(sitemap_of()) == sorted(canonical)
    assert all(one.startswith("https://hedge.example.org/year/") for one in canonical)


def test_a_page_changed_last_when_the_newest_thing_on_it_was_said():
    """sitemaps.org: lastmod is a day or moment as W3C writes them."""
    changed = {
        address.removeprefix("https://hedge.example.org/year/"): day
        for address, day in sitemap_of(as_of=date(2027, 8, 15)).items()
    }
    assert changed["moss/"] == changed["corrections.html"] == changed[""] == "2027-08-01"
    assert changed["notices.html"] == "2027-07-01"
    assert changed["rose/"] == ""  # a teaser: nothing is known of it yet
    assert sitemap_of(as_of=RELEASE)["https://hedge.example.org/year/moss/"] == "2027-07-15"


def test_without_an_address_there_is_no_sitemap():
    assert "sitemap.xml" not in site_of()


def test_robots_are_told_that_nothing_is_closed_and_where_the_sitemap_is():
    """RFC 9309, section 2.2: groups of user-agent and rules; sitemaps.org for the line 'Sitemap:'."""
    plain = ["User-agent: *", "Allow: /"]
    assert site_of()["robots.txt"].decode().splitlines() == plain
    assert site_of(STANDING_AT)["robots.txt"].decode().splitlines() == [
        *plain, "Sitemap: https://hedge.example.org/year/sitemap.xml",
    ]  # fmt: skip
