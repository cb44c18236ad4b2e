"""The pages besides those of patterns: supplies, designers, notices, corrections, and what is awaited."""

import re
from dataclasses import replace
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from packetgen.model import (
    Colour,
    Counter,
    DateRule,
    Designer,
    Link,
    Listed,
    Notice,
    Occasion,
    Revision,
    Sells,
    ThreadSet,
    ToCome,
)
from packetgen.reckon.figures import figures
from packetgen.reckon.kit import Chosen, kit
from packetgen.reckon.mounting import mounting
from packetgen.render.site import series_list_files
from packetgen.render.templates import environment
from tests import stitching
from tests.test_site import Page, links, pages_of
from tests.test_site import site_of as site_of_series

LONDON = ZoneInfo("Europe/London")
RELEASE = datetime(2027, 7, 15, 9, tzinfo=LONDON)
MIRIAM = Designer("miriam", "מרים כהן", "Draws by lamplight.", Sells.NEITHER, None)
FERN = Designer(
    "fernsby",
    "Isolde Fernsby",
    "Draws in the rain.",
    Sells.BOTH,
    "https://fernsby.example.org/",
    links=(Link("Letters", "https://letters.example.org/"),),
    studio="The Shed",
)
LATER = RELEASE + timedelta(days=60)
HOLLY = stitching.pattern(
    "mmmmmmmm", "mtmtmmtm",
    id="holly", title="Holly", designer=FERN,
    occasion=Occasion("The shortest day", DateRule("21 December", fixed=(12, 21))),
    revisions=(
        Revision(date(2027, 5, 1), "First issue."),
        Revision(date(2027, 8, 1), "Row 2: a berry & its stalk."),
        Revision(date(2027, 8, 20), "Row 1: a leaf."),
    ),
)  # fmt: skip
SPRIG = stitching.pattern("mt", designer=MIRIAM)
# Everything that may not be seen of it before its day has a word of its own.
ROSE = stitching.pattern(
    "ss", "ss",
    id="rose", title="A Rose", designer=MIRIAM, release=LATER,
    about="Zzabout of it.",
    occasion=Occasion("Zzoccasion", DateRule("1 March", fixed=(3, 1))),
    cloths=(replace(stitching.option(16), cloth=replace(stitching.option(16).cloth, id="zz", name="Zzcloth 16")),),
    model_stitcher="Zzstitcher", finisher="Zzfinisher", dyer="Zzdyer",
    sold_at=(Counter("Zzcounter", "https://zzcounter.example.org/"),),
    revisions=(Revision(date(2027, 6, 1), "Zzfirst."), Revision(date(2027, 10, 1), "Zzsecond.")),
    story_markdown="Zzstory.", notes_markdown="Zznotes.",
)  # fmt: skip
YEAR = replace(
    stitching.series(HOLLY, SPRIG, ROSE),
    release=RELEASE,
    designers=(FERN, MIRIAM),
    to_come=(
        ToCome("Onions", FERN, Occasion("Lifting", DateRule("third Sunday of August", nth=(3, 6, 8)))),
    ),
    notices=(
        Notice(date(2027, 1, 1), "Soon", "Soon."),
        Notice(
            date(2027, 7, 15), "A draw", "A bench.", "prize draw",
            opens=date(2027, 7, 15), closes=date(2027, 12, 24), who="Anybody.",
        ),
        Notice(date(2027, 7, 15), "Out", "Now."),
        Notice(date(2027, 11, 1), "Zznotice", "Zznotice."),
    ),
)  # fmt: skip
BEFORE, ONE_DAY = date(2027, 7, 1), date(2027, 8, 10)
NAVIGATION = [
    "index.html", "index.html#calendar", "finishing-piece.html", "supplies.html", "designers.html",
    "notices.html", "corrections.html",
]  # fmt: skip


def site_of(series=YEAR, as_of=None) -> dict[str, bytes]:
    return site_of_series(series, as_of)


def shown(html: bytes) -> bytes:
    """A page without what only programs read."""
    return re.sub(rb"<head.*?</head>|<script.*?</script>", b"", html, flags=re.DOTALL)


def page(name: str, series=YEAR, as_of=None) -> Page:
    return Page(shown(site_of(series, as_of)[name]))


def navigation(html: str) -> list[tuple[str, bool]]:
    """(link, is this page) of the first navigation on a page."""
    nav = re.search(r'<nav aria-label="Pages of the series">(.*?)</nav>', html, re.DOTALL)[1]
    found = re.findall(r'<a href="([^"]*)"( aria-current="page")?>', nav)
    return [(href, bool(here)) for href, here in found]


def part(html: bytes, anchor: str) -> str:
    """The words of one section, by its id."""
    return Page(
        re.search(rf'<section id="{anchor}".*?</section>', html.decode(), re.DOTALL)[0].encode()
    ).text


# --- the way about --------------------------------------------------------------------------------


@pytest.mark.parametrize("as_of", [BEFORE, ONE_DAY, None])
def test_every_page_lists_all_pages_and_marks_itself(as_of):
    files = site_of(as_of=as_of)
    for path in pages_of(files):
        if path == "404.html":
            continue
        up = "../" * path.count("/")
        ways = navigation(files[path].decode())
        assert [href for href, _ in ways] == [up + one for one in NAVIGATION]
        here = [href for href, current in ways if current]
        assert here == [path] * (path in NAVIGATION), path


def test_a_piece_that_is_named_as_its_series_is_called_by_what_it_is():
    """Else two pages of the site would have one title, and the menu two links of the same words."""
    of_one_name = replace(YEAR, finish=replace(YEAR.finish, name=YEAR.title.upper()))
    html = site_of(of_one_name)["finishing-piece.html"].decode()
    assert f"<title>The finishing piece · {YEAR.title}</title>" in html
    assert ">The finishing piece</a>" in html and f">{YEAR.finish.name}</a>" not in html
    assert f">{YEAR.finish.name}</a>" in site_of()["finishing-piece.html"].decode()


def test_only_the_supply_list_has_a_script_and_it_is_the_site_s_own():
    files = site_of()
    for path, one in pages_of(files).items():
        scripts = [script["src"] for script in one.all("script") if "src" in script]
        assert scripts == (["ticks.js"] if path == "supplies.html" else []), path
    assert "ticks.js" in files


# --- what may be seen when ------------------------------------------------------------------------


@pytest.mark.parametrize("as_of", [BEFORE, ONE_DAY])
def test_nothing_of_a_pattern_that_is_not_out_is_anywhere_but_title_designer_and_day(as_of):
    for path, data in site_of(as_of=as_of).items():
        if not path.startswith("fonts/"):
            found = set(re.findall(rb"Zz\w+", data)) - {b"Zzoccasion"}
            assert not found, f"{path}: {found}"


def test_a_series_that_shows_titles_only_tells_neither_designer_nor_day():
    secret = replace(YEAR, before_release="title")
    files = site_of(secret, ONE_DAY)
    for path, data in files.items():
        if not path.startswith("fonts/"):
            assert not re.findall(rb"Zz\w+", data), path
    assert "rose/index.html" not in files
    assert "A Rose" in part(files["index.html"], "to-come")
    assert "A Rose" not in Page(files["designers.html"]).text


def test_of_a_pattern_that_is_out_everything_is_told_again():
    """So that the words looked for above are known to be found."""
    found = set(re.findall(rb"Zz\w+", b"".join(site_of().values())))
    assert {b"Zzabout", b"Zzcloth", b"Zzstitcher", b"Zzsecond", b"Zzstory", b"Zznotice"} <= found


@pytest.mark.parametrize("way", ["teaser", "title"])
def test_the_first_page_stands_while_no_pattern_is_out(way):
    files = site_of(replace(YEAR, before_release=way), BEFORE)
    text = Page(files["index.html"]).text
    assert "4 patterns to come" in text
    for title in ("Holly", "A Sprig", "A Rose", "Onions"):
        assert title in text
    assert ("holly/index.html" in files) == (way == "teaser")
    assert Page(files["index.html"]).all("section")[0]["id"] == "patterns"


def test_a_series_of_which_nothing_at_all_is_known_has_its_pages():
    bare = replace(YEAR, patterns=(), to_come=(), notices=())
    files = site_of(bare, BEFORE)
    text = Page(files["index.html"]).text
    assert "The first comes out on 15 July 2027, 09:00 , Europe/London time, UTC+01:00" in text
    assert "No pattern is out yet" in Page(files["corrections.html"]).text
    assert "None yet." in Page(files["notices.html"]).text


def test_awaited_patterns_follow_the_year_and_are_listed_once():
    """The rose is of March, the sprig of May, the holly of December."""
    html = site_of(as_of=BEFORE)["index.html"]
    text = part(html, "patterns")
    assert text.index("A Rose") < text.index("A Sprig") < text.index("Holly")
    assert part(html, "to-come").count("Onions") == 1 and "Holly" not in part(html, "to-come")


def test_out_and_awaited_stand_apart():
    html = site_of(as_of=ONE_DAY)["index.html"]
    assert "A Rose" in part(html, "teasers") and "A Rose" not in part(html, "patterns")
    assert "2 patterns, 2 to come" in Page(html).text


def test_a_teaser_tells_when_it_comes_out_and_leads_to_the_others():
    one = page("rose/index.html", as_of=BEFORE)
    assert "13 September 2027, 09:00 Europe/London time, UTC+01:00" in one.text
    ways = links(one)
    assert {"../holly/index.html", "../sprig/index.html", "../designers.html#miriam"} <= set(ways)
    assert {"../feed.atom", "../calendar.ics"} <= set(ways) and "../rose/index.html" not in ways
    assert "Also to come" in one.text and "Onions Lifting" in one.text


# --- supplies -------------------------------------------------------------------------------------


def ticks(one: Page) -> list[str]:
    return [box["value"] for box in one.all("input") if box["type"] == "checkbox"]


def test_what_is_left_of_a_skein_serves_the_next_picture():
    """A few crosses in each of two patterns are one skein a colour, and soot waits for the rose."""
    one = page("supplies.html", as_of=ONE_DAY)
    assert "bramble/bramble/M1/1" in ticks(one) and "bramble/bramble/T1/1" in ticks(one)
    assert not [value for value in ticks(one) if "C1" in value]
    assert "2 skeins in all" in one.text
    assert "bramble/bramble/C1/1" in ticks(page("supplies.html"))


def test_units_are_those_of_the_kit_and_no_length_of_strand_is_told():
    big = stitching.pattern(*("m" * 90,) * 60, *("t" * 90,) * 30)
    series = replace(stitching.series(big, HOLLY), release=RELEASE, designers=(FERN,))
    text = page("supplies.html", series).text
    chosen = [
        Chosen(each, each.cloths[0], each.pattern.thread_sets[0])
        for each in (figures(one, series.finish) for one in series.patterns)
    ]
    lines = kit(chosen).threads
    assert max(line.units for line in lines) > 1
    for line in lines:
        assert f"{line.colour.number} {line.colour.name} {line.units} skein" in text
        for length in (line.strand.careful_m, line.strand.usual_m, line.strand.generous_m):
            assert f"{length:.1f}" not in text and f"{length:.0f} m" not in text
    for count in (90 * 60, 90 * 30):
        assert str(count) not in text and f"{count:,}" not in text


def test_every_line_can_be_ticked_by_its_name_and_no_two_ticks_are_one():
    html = site_of()["supplies.html"].decode()
    values = ticks(Page(html.encode()))
    assert len(values) == len(set(values)) > 10
    labelled = re.findall(
        r'<label><input type="checkbox" value="([^"]*)".*?</label>', html, re.DOTALL
    )
    assert labelled == [value.replace("&", "&amp;") for value in values]


def test_an_old_tick_is_no_answer_where_more_is_needed():
    """The key of a line holds how much: a later pattern in the same colour unticks it."""
    wide = stitching.pattern(*("m" * 90,) * 60, id="wide", title="Wide")
    small = replace(stitching.series(HOLLY), designers=(FERN,))
    large = replace(stitching.series(HOLLY, wide), designers=(FERN,))
    of_moss = [
        next(value for value in ticks(page("supplies.html", one)) if "/M1/" in value)
        for one in (small, large)
    ]
    assert of_moss[0] != of_moss[1]


def test_a_thread_set_that_a_pattern_is_not_offered_in_says_so():
    spool = ThreadSet(
        "spool", replace(stitching.card(1, 50, "spool"), id="spool", name="Spool"), 1, 1, 1
    )
    both = stitching.pattern("mt", sets=(stitching.thread_set(), spool))
    series = replace(stitching.series(both, HOLLY), designers=(FERN,))
    text = page("supplies.html", series).text
    assert "Not with Holly, which cannot be worked in it." in text
    assert text.count("Not with") == 1


def test_a_card_that_only_single_colours_come_from_has_a_list_of_its_own():
    rime = Colour("G3", "rime", "#c5ddea")
    braid = replace(stitching.card(1, 11, "reel"), id="glow", name="Glow", colours={"G3": rime})
    moss, clay, _ = SPRIG.key
    key = (moss, replace(clay, threads={"bramble": (rime,)}, cards={"bramble": (braid,)}))
    text = page("supplies.html", stitching.series(replace(SPRIG, key=key))).text
    assert "1 skein and 1 reel in all" in text
    assert "Glow Cotton, in reels of 11 m G3 rime 1 reel" in text


def test_cloth_is_counted_in_fat_quarters_and_said_for_which_pictures():
    text = page("supplies.html", as_of=ONE_DAY).text
    assert "Cloth 14, white 1 fat quarter 14-count aida; for A Sprig and Holly" in text


def test_sizes_to_cut_are_those_of_mounting():
    """Two stitches at 14 count are 3.63 mm; with 5 mm of card on both sides 13.63 mm: 5/8 in, 1.5 cm."""
    of_sprig = mounting(figures(SPRIG, YEAR.finish).cloths[0].finished, YEAR.finish)
    assert of_sprig.card.width_mm == pytest.approx(2 / 14 * 25.4 + 10)
    text = page("supplies.html", as_of=ONE_DAY).text
    assert re.search(r"A Sprig .{0,80}5/8 in × 1/2 in 1.5 cm × 1.5 cm", text)


def test_before_the_first_release_only_the_finishing_piece_is_on_the_list():
    one = page("supplies.html", as_of=BEFORE)
    assert "on 15 July 2027, 09:00" in one.text and "Bramble" in one.text
    kinds = [value.partition("/")[0] for value in ticks(one)]
    assert kinds == ["print-plain", "wood", "paint", "magnet"]
    assert "Mounting" not in one.text
    assert "at least 4 pieces" in one.text and "told with the first pattern" in one.text
    piece = page("finishing-piece.html", as_of=BEFORE).text
    assert "Magnets 4 or more, 0.39 in (1.0 cm) across" in piece
    assert "at least" not in page("supplies.html", as_of=ONE_DAY).text


# --- designers ------------------------------------------------------------------------------------


def test_a_designer_s_patterns_are_shown_once_they_are_out_and_named_until_then():
    html = site_of(as_of=ONE_DAY)["designers.html"]
    hers = part(html, "miriam")
    assert "In this series A Sprig May Day" in hers
    assert "And to come A Rose Zzoccasion 1 March 2028" in hers
    assert "Holly" not in hers and "Onions" in part(html, "fernsby")


def test_a_name_may_be_read_from_right_to_left():
    """HTML, the bdi element: text whose direction is its own."""
    html = site_of(as_of=BEFORE)["designers.html"].decode()
    assert '<bdi dir="auto">מרים כהן</bdi>' in html
    for path, data in site_of().items():
        if path.endswith(".html") and path.count("/") == 0:
            html = shown(data).decode()
            for found in re.finditer("מרים", html):
                assert re.search(r"(<bdi[^>]*>|alt=\"[^\"]*)$", html[: found.start()]), path


def test_how_a_designer_sells_is_said():
    html = site_of()["designers.html"]
    assert "Sells no PDFs." in part(html, "miriam")
    assert "The shop of Isolde Fernsby sells PDFs and printed patterns." in part(html, "fernsby")
    assert "Of the studio The Shed" in part(html, "fernsby")
    assert {"https://fernsby.example.org/", "https://letters.example.org/"} <= set(
        links(Page(html))
    )


def test_the_first_page_names_the_designers_and_leads_to_them():
    assert {"designers.html#miriam", "designers.html#fernsby"} <= set(links(page("index.html")))


# --- notices --------------------------------------------------------------------------------------


def test_the_newest_notice_comes_first_and_stands_on_the_first_page_too():
    text = page("notices.html").text
    assert text.index("Zznotice") < text.index("A draw") < text.index("Soon")
    first = part(site_of(as_of=ONE_DAY)["index.html"], "notices")
    assert "A draw" in first and "Soon" not in first


def test_each_notice_has_an_anchor_for_good():
    """Two of one day are told apart by their order, and a title may be mended."""
    anchors = [section["id"] for section in page("notices.html").all("section")]
    assert anchors == [
        "notice-2027-11-01", "notice-2027-07-15", "notice-2027-07-15-2", "notice-2027-01-01",
    ]  # fmt: skip


def test_days_of_a_notice_are_moments_where_the_series_keeps_its_clock():
    """HTML, the time element: a global date and time. London is at +01:00 in July, at +00:00 in December."""
    moments = {one["datetime"] for one in page("notices.html").all("time")}
    assert {"2027-07-15T00:00+01:00", "2027-12-24T23:59+00:00", "2027-01-01T00:00+00:00"} <= moments
    assert "by Europe/London time" in page("notices.html").text


def test_a_draw_has_its_rules_beside_it():
    text = part(site_of()["notices.html"], "notice-2027-07-15")
    assert (
        "Prize draw" in text
        and "Closes at the end of 24 December 2027 . Who may enter: Anybody." in text
    )
    assert "Local rules on prize draws apply" in text


# --- corrections ----------------------------------------------------------------------------------


def test_corrections_stand_by_pattern_the_newest_first_with_their_numbers():
    text = part(site_of()["corrections.html"], "holly")
    assert text.startswith("Holly The newest is revision 3, 20 August 2027")
    assert text.index("Revision 3 20 August 2027 Row 1") < text.index(
        "Revision 2 1 August 2027 Row 2"
    )
    assert "First issue." not in text


def test_a_correction_is_not_told_before_its_day():
    text = page("corrections.html", as_of=ONE_DAY).text
    assert "Row 2: a berry" in text and "Row 1: a leaf" not in text


def test_every_pattern_that_is_out_has_its_place_among_the_corrections():
    anchors = {attributes.get("id") for _, attributes in page("corrections.html").tags}
    assert {"holly", "sprig", "rose"} <= anchors


def test_where_nothing_was_corrected_that_is_said():
    assert "No corrections so far" in page("corrections.html", as_of=RELEASE).text


# --- several series -------------------------------------------------------------------------------


def test_the_page_above_several_series_tells_robots_of_each_sitemap():
    """A host's robots.txt is read at its root alone: RFC 9309, section 2.3."""
    other = replace(YEAR, id="other", address="https://other.example.org/")
    files = series_list_files(YEAR, (Listed.of(YEAR), Listed.of(other)), environment())
    assert b"Sitemap: https://other.example.org/sitemap.xml\n" in files["robots.txt"]
    assert not [a for a in Page(files["index.html"]).all("link") if a["rel"] == "alternate"]
