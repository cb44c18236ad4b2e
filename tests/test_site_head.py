"""What pages say of themselves to programs: Open Graph (ogp.me) and schema.org as JSON-LD.

Both are read back with extruct, a library that gathers such data from pages.
"""

import json
import re
from dataclasses import replace
from datetime import date
from html.parser import HTMLParser

import extruct
import jsonschema
import pytest
from rdflib.namespace import SDO

from packetgen.model import Link, Listed, Notice, Revision
from packetgen.reckon.figures import figures
from packetgen.render import json_ld
from packetgen.render.site import series_list_files
from packetgen.render.templates import environment
from tests import json_ld_schema as shape
from tests import stitching
from tests.test_site import ADDRESS, COUNTER, HOLLY, QUIET, ROSE, SELLER, SPRIG, YEAR, site_of

BEFORE = date(2026, 11, 25)  # YEAR comes out on 15 January 2027
THERE = replace(
    YEAR,
    address=ADDRESS,
    designers=(
        replace(QUIET, studio="Two Tables", links=(Link("Notes", "https://q.example.org/"),)),
        SELLER,
    ),
)
PAGES = {
    "index.html": shape.SERIES,
    "finishing-piece.html": shape.PIECE,
    "supplies.html": shape.WEB_PAGE,
    "designers.html": shape.DESIGNERS,
    "notices.html": shape.NOTICES,
    "corrections.html": shape.WEB_PAGE,
    "404.html": shape.WEB_PAGE,
    "sprig/index.html": shape.SOLD,  # somebody sells it for its designer, who sells nothing herself
    "holly/index.html": shape.SOLD,  # at its designer's own counter
    "rose/index.html": shape.SOLD,
}


class Head(HTMLParser):
    """The meta properties of a page in their order, and the contents of its scripts of data."""

    def __init__(self, html: bytes) -> None:
        super().__init__()
        self.said: list[tuple[str, str]] = []
        self.scripts: list[str] = []
        self._in_script = False
        self.feed(html.decode())

    def handle_starttag(self, tag, attrs):
        given = dict(attrs)
        if tag == "meta" and "property" in given:
            self.said.append((given["property"], given["content"]))
        if tag == "script" and given.get("type") == "application/ld+json":
            self._in_script = True
            self.scripts.append("")

    def handle_endtag(self, tag):
        self._in_script = False

    def handle_data(self, data):
        if self._in_script:
            self.scripts[-1] += data

    def all(self, name: str) -> list[str]:
        return [content for said, content in self.said if said == name]

    @property
    def graph(self) -> list[dict]:
        (script,) = self.scripts
        return json.loads(script)["@graph"]


def heads(files: dict[str, bytes]) -> dict[str, Head]:
    return {path: Head(data) for path, data in files.items() if path.endswith(".html")}


@pytest.fixture(scope="module")
def there() -> dict[str, bytes]:
    """The site once its author has said where it will stand."""
    return site_of(THERE)


@pytest.fixture(scope="module")
def nowhere() -> dict[str, bytes]:
    return site_of(replace(THERE, address=None))


@pytest.fixture(scope="module")
def before() -> dict[str, bytes]:
    """The site on a day before the release."""
    return site_of(THERE, BEFORE)


# --- schema.org -----------------------------------------------------------------------------------


def test_every_page_says_one_thing_of_the_shape_that_fits_it(there, nowhere):
    """Checked against a schema that allows no name that it does not know."""
    for files in (there, nowhere):
        assert set(heads(files)) == set(PAGES)
        for path, head in heads(files).items():
            (script,) = head.scripts
            jsonschema.validate(json.loads(script), shape.page_of(PAGES[path]))


def test_a_reader_of_such_data_finds_the_same(there):
    for path, head in heads(there).items():
        found = extruct.extract(there[path].decode(), syntaxes=["json-ld"])["json-ld"]
        assert found == [json.loads(script) for script in head.scripts]


def names_in(value: object) -> set[str]:
    if isinstance(value, dict):
        kinds = value.get("@type", [])
        own = {name for name in value if not name.startswith("@")}
        return own.union(
            [kinds] if isinstance(kinds, str) else kinds, *map(names_in, value.values())
        )
    return set().union(*map(names_in, value)) if isinstance(value, list) else set()


def test_every_name_is_one_of_schema_org(there, before):
    """The terms of schema.org as rdflib 7 lists them."""
    names = set()
    for files in (there, before):
        names |= set().union(*(names_in(head.graph) for head in heads(files).values()))
    assert len(names) > 40
    assert sorted(name for name in names if name not in SDO) == []


def test_no_word_of_an_author_ends_the_script(there):
    """HTML (WHATWG), 4.12.1.3: neither '<!--' nor '</script' may stand in a script."""
    rude = replace(
        SPRIG,
        title="A </script><script>alert(1)</script>",
        about="<!-- & so on \u2028 and on",
    )
    page = site_of(replace(THERE, patterns=(rude,)))["sprig/index.html"]
    head = Head(page)
    assert head.graph[0]["name"] == rude.title and head.graph[0]["description"] == rude.about
    (script,) = head.scripts
    assert not re.search("[<>&\u2028\u2029]", script)


def test_the_series_lists_what_is_out_and_nothing_else(there, before):
    def parts(files):
        return [part["name"] for part in heads(files)["index.html"].graph[0].get("hasPart", [])]

    assert parts(there) == [HOLLY.title, SPRIG.title, ROSE.title]
    assert parts(before) == []


def test_before_its_release_a_pattern_gives_its_name_its_designer_and_its_moment(before):
    """The release in full, with its distance from UTC."""
    pages = heads(before)
    for path in ("sprig/index.html", "rose/index.html"):
        graph = pages[path].graph
        jsonschema.validate(
            {"@context": "https://schema.org", "@graph": graph}, shape.page_of(shape.TEASER)
        )
        assert graph[0]["datePublished"] == "2027-01-15T09:00:00+00:00"


def test_a_pattern_that_is_sold_says_where_and_never_for_how_much(there):
    pages = heads(there)
    offers = pages["sprig/index.html"].graph[0]["offers"]
    assert offers == [{"@type": "Offer", "name": "By post", "url": SPRIG.sold_at[0].url}]
    assert pages["holly/index.html"].graph[0]["offers"][0]["url"] == COUNTER
    assert pages["sprig/index.html"].graph[0]["isAccessibleForFree"] is False
    assert not [path for path, head in pages.items() if "rice" in "".join(head.scripts)]


def work_of(pattern, **more):
    series = replace(THERE, patterns=(pattern,), **more)
    of_issue = json_ld.issued(pattern, series, ("cross stitch",))
    return json_ld._without_gaps(
        json_ld.pattern_work(figures(pattern, series.finish), series, of_issue)
    )


def test_a_free_pattern_is_no_product_and_says_that_it_is_free():
    free = work_of(replace(SPRIG, sold_at=(), given_away=("chart", "packet")))
    assert free["@type"] == "CreativeWork" and free["isAccessibleForFree"] is True
    assert "offers" not in free


def test_of_a_pattern_that_nobody_sells_yet_nothing_is_claimed():
    quiet = work_of(replace(SPRIG, sold_at=()))
    assert quiet["@type"] == "CreativeWork" and "isAccessibleForFree" not in quiet


def test_sizes_are_centimetres_by_their_code():
    """12 stitches at 14 count: 12 × 2.54 / 14 = 2.18 cm; over two of 32: 12 × 2.54 × 2 / 32 = 1.9 cm.

    CMT is the centimetre: UN/CEFACT Recommendation 20."""
    sizes = {one["name"]: one for one in work_of(SPRIG)["size"]}
    assert sizes["width on Cloth 14"] == {
        "@type": "QuantitativeValue",
        "name": "width on Cloth 14",
        "value": 2.2,
        "unitCode": "CMT",
    }
    assert sizes["width on Cloth 32, over 2"]["value"] == 1.9
    assert sizes["width"]["value"] == 12 and sizes["width"]["unitText"] == "stitches"


def test_a_size_is_rounded_as_it_is_in_print():
    """16 stitches over two of 32 are an inch, and 40 two inches and a half: 40 × 25.4 / 16 = 63.5 mm, a half up."""
    plain = stitching.pattern("m" * 40, cloths=SPRIG.cloths)
    sizes = {one["name"]: one for one in work_of(plain)["size"]}
    assert sizes["width on Cloth 32, over 2"]["value"] == 6.4


def test_a_correction_after_the_release_is_a_modification_and_one_before_it_is_not():
    """A day of London in February begins when that of UTC does."""
    first, early, late = (
        Revision(date(2026, 5, 1), "First issue."),
        Revision(date(2026, 6, 2), "A leaf."),
        Revision(date(2027, 2, 3), "A stalk."),
    )
    assert "dateModified" not in work_of(replace(SPRIG, revisions=(first, early)))
    mended = work_of(replace(SPRIG, revisions=(first, early, late)))
    assert mended["dateModified"] == "2027-02-03T00:00:00+00:00" and mended["version"] == 3


def test_the_way_back_to_the_series_stands_on_every_page_below_it(there):
    for path, head in heads(there).items():
        crumbs = [thing for thing in head.graph if thing["@type"] == "BreadcrumbList"]
        assert len(crumbs) == (path not in ("index.html", "404.html")), path
        for way in crumbs:
            first, here = way["itemListElement"]
            assert first["item"] == f"{ADDRESS}/" and here["item"] == head.all("og:url")[0]


def test_without_an_address_nothing_claims_one(nowhere):
    """A relative address would mean another page on each host."""
    for head in heads(nowhere).values():
        said = json.dumps(head.graph)
        urls = set(re.findall(r'"(?:url|item|contentUrl)": "([^"]*)"', said))
        assert urls <= {COUNTER, SPRIG.sold_at[0].url}


def test_designers_are_listed_with_what_leads_to_them(there):
    listed = heads(there)["designers.html"].graph[0]["mainEntity"]["itemListElement"]
    quiet, seller = (one["item"] for one in listed)
    assert quiet["affiliation"]["name"] == "Two Tables"
    assert quiet["sameAs"] == ["https://q.example.org/"]
    assert seller["sameAs"] == [COUNTER] and "affiliation" not in seller


def test_notices_carry_their_day_with_its_zone():
    """Midsummer in London is an hour ahead of UTC."""
    series = replace(THERE, notices=(Notice(date(2026, 7, 1), "Linen", "It is back."),))
    (post,) = heads(site_of(series))["notices.html"].graph[0]["blogPost"]
    assert post["headline"] == "Linen" and post["datePublished"] == "2026-07-01T00:00:00+01:00"
    assert "It is back" not in json.dumps(post)


def test_the_page_above_several_series_names_them():
    other = replace(YEAR, id="other", title="Other")
    files = series_list_files(YEAR, (Listed.of(YEAR), Listed.of(other)), environment())
    head = Head(files["index.html"])
    (script,) = head.scripts
    jsonschema.validate(json.loads(script), shape.page_of(shape.SERIES_LIST))
    assert [part["name"] for part in head.graph[0]["hasPart"]] == [YEAR.title, "Other"]
    assert head.all("og:image")[0] == "hedge-year/share.png"


# --- Open Graph -----------------------------------------------------------------------------------

# ogp.me, "Arrays": "Put structured properties after you declare their root tag."
GROUP = ["og:image", "og:image:type", "og:image:width", "og:image:height", "og:image:alt"]
SIZES = [("1200", "630"), ("1080", "1080"), ("1080", "1350")]


def test_three_pictures_are_offered_the_wide_one_first_each_with_its_size_and_words(there, before):
    for files in (there, before):
        for path, head in heads(files).items():
            about = [pair for pair in head.said if pair[0].startswith("og:image")]
            assert [name for name, _ in about] == GROUP * 3, path
            sizes = zip(head.all("og:image:width"), head.all("og:image:height"))
            assert list(sizes) == SIZES
            for url, words in zip(head.all("og:image"), head.all("og:image:alt"), strict=True):
                assert url.removeprefix(f"{ADDRESS}/") in files, path
                assert 0 < len(words) <= 400


def test_a_reader_of_open_graph_finds_title_type_picture_and_address(there):
    """The four required properties: ogp.me, "Basic Metadata"."""
    for path in PAGES:
        (found,) = extruct.extract(there[path].decode(), syntaxes=["opengraph"])["opengraph"]
        names = {name for name, _ in found["properties"]}
        assert {"og:title", "og:type", "og:image"} <= names
        assert ("og:url" in names) == (path != "404.html")
        prefixes = re.findall(r'<head prefix="([^"]*)">', there[path].decode())
        # "Object Types": the addresses of the two vocabularies.
        assert prefixes == ["og: https://ogp.me/ns# article: https://ogp.me/ns/article#"]


def test_only_a_pattern_that_is_out_is_an_article_with_its_moment(there, before):
    """ogp.me, "No Vertical": article:published_time is when the article was first published."""
    for path, head in heads(there).items():
        out = path in ("sprig/index.html", "rose/index.html", "holly/index.html")
        assert head.all("og:type") == ["article" if out else "website"]
        assert head.all("article:published_time") == ["2027-01-15T09:00:00+00:00"] * out
    for head in heads(before).values():
        assert head.all("og:type") == ["website"]
        assert not [name for name, _ in head.said if name.startswith("article:")]


def test_no_page_says_a_property_of_no_open_standard(there):
    for head in heads(there).values():
        assert all(re.match(r"(og|article):", name) for name, _ in head.said)


def test_what_is_said_of_a_page_before_the_release_is_said_of_no_pattern(before):
    """Neither its own words nor its numbers."""
    for path, head in heads(before).items():
        said = json.dumps([head.said, head.graph])
        for pattern in (SPRIG, ROSE, HOLLY):
            assert pattern.about not in said, path
            assert "stitches" not in said
