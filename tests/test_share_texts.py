"""Words that an author pastes elsewhere: whole, within their lengths, and silent about what is sold."""

import re
from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from packetgen.markdown_text import paragraphs
from packetgen.model import Bead, BeadCard, Colour, Counter, Occasion, Sells, ToCome
from packetgen.reckon.alt_text import LONGEST_ALT, model_alt, series_alt, share_alt
from packetgen.reckon.figures import figures
from packetgen.reckon.standing import standing
from packetgen.render.share_tags import hashtags, tags
from packetgen.render.share_texts import excerpt, share_texts
from packetgen.render.templates import environment
from tests import stitching
from tests.test_site import ADDRESS, HOLLY, QUIET, ROSE, SELLER, SPRIG, YEAR

BEFORE = date(2026, 11, 25)  # YEAR comes out on 15 January 2027
THERE = replace(YEAR, address=ADDRESS)


def texts(series=THERE, as_of=None) -> dict[str, str]:
    reckoned = tuple(figures(pattern, series.finish) for pattern in series.patterns)
    made = share_texts(standing(series, reckoned, as_of), environment())
    return {name.removesuffix(".txt"): data.decode("utf-8") for name, data in made.items()}


def texts_of(pattern, **more) -> dict[str, str]:
    """Of a series with this pattern alone, 'sprig' whatever its title."""
    return texts(replace(THERE, patterns=(pattern,), **more))


@pytest.fixture(scope="module")
def out() -> dict[str, str]:
    return texts()


@pytest.fixture(scope="module")
def awaited() -> dict[str, str]:
    return texts(as_of=BEFORE)


# --- which there are, and their form ----------------------------------------------------------------


def test_each_pattern_has_a_listing_two_posts_and_words_for_its_picture(out):
    kinds = ("listing", "short-post", "long-post", "alt")
    of_patterns = {f"{one.id}-{kind}" for one in YEAR.patterns for kind in kinds}
    of_series = {f"{YEAR.id}-{kind}" for kind in kinds[1:]} | {"finishing-piece-alt"}
    assert set(out) == of_patterns | of_series


def test_a_pattern_that_is_not_out_has_no_listing(awaited):
    assert not [name for name in awaited if name.endswith("-listing")]
    assert {
        f"{one.id}-{kind}" for one in YEAR.patterns for kind in ("short-post", "long-post")
    } <= set(awaited)


def test_a_pattern_whose_title_alone_may_be_shown_has_no_texts_at_all():
    names = set(texts(replace(THERE, before_release="title"), BEFORE))
    assert not [name for name in names if name.startswith(("sprig", "rose", "holly"))]


def test_texts_are_plain_with_a_paragraph_on_a_line(out, awaited):
    """No markup, no space at a line's end, no two empty lines running, one line end at the end."""
    for name, text in (out | awaited).items():
        assert text.strip() and text == text.lstrip("\n"), name
        assert text.endswith("\n") and not text.endswith("\n\n"), name
        assert not re.search(r"[ \t]\n|\n\n\n|<[a-z/]|&(amp|lt|#)|\{|\}", text), name
        assert "None" not in text and "  " not in text, name


def test_a_paragraph_of_the_author_is_not_broken():
    long = " ".join(["It grew by the gate and was cut."] * 10)
    assert (
        long
        in texts_of(replace(SPRIG, story_markdown=long.replace("was ", "was\n")))["sprig-long-post"]
    )


# --- what they say --------------------------------------------------------------------------------


def test_the_listing_says_what_a_buyer_asks(out):
    """12 stitches at 14 count are 0.86 in, 2.2 cm; over two of 32, 0.75 in, 1.9 cm."""
    text = out["sprig-listing"]
    for said in (
        "A Sprig\n",
        "A cross stitch pattern by Tamsin Hedgerow for May Day, from The Hedge Year.",
        "Chart: 12 × 4 stitches, 3 colours",
        "- Cloth 14: 0.86 × 0.29 in (2.2 × 0.7 cm)",
        "- Cloth 32, over 2: 0.75 × 0.25 in (1.9 × 0.6 cm)",
        "- 3 colours of Bramble (cotton)",
        "- Drop Glass, 2.2 mm: hip red",
        "mounting, finishing and painting of The Board",
        "No thread, cloth or beads are included.",
        "Tags: cross stitch, ",
    ):
        assert said in text, said


def test_a_pattern_without_beads_on_one_cloth_is_told_of_in_the_singular(out):
    text = out["rose-listing"]
    assert "No thread or cloth is included." in text and "bead" not in text
    assert "- the cloth above" in text and "thread to buy for the cloth" in text


def test_a_second_thread_is_offered_instead_of_the_first():
    other = replace(stitching.thread_set(), id="other")
    other = replace(other, card=replace(other.card, id="other", name="Teasel"))
    sets = (stitching.thread_set(), other)
    text = texts_of(stitching.pattern("mt", sets=sets))["sprig-listing"]
    assert "- 3 colours of Bramble (cotton)\n- or 3 colours of Teasel (cotton)\n" in text


@pytest.mark.parametrize(
    ("sells", "short", "form"),
    [
        (Sells.PDF, "Sold as PDF.", "A PDF to download."),
        (Sells.PRINTED, "Sold on paper, not as PDF.", "Printed on paper; not sold as PDF."),
        (Sells.BOTH, "Sold as PDF and on paper.", "A PDF to download, or printed on paper."),
        (Sells.NEITHER, "Not sold as PDF.", "Not sold as PDF."),
    ],
)
def test_how_it_is_sold_follows_the_designer(sells, short, form):
    pattern = replace(SPRIG, designer=replace(SELLER, sells=sells))
    made = texts_of(pattern)
    assert short in made["sprig-short-post"] and short in made["sprig-long-post"]
    assert form in made["sprig-listing"]


def test_a_long_post_says_where_it_is_sold_and_who_made_it(out):
    text = out["sprig-long-post"]
    assert "- By post: https://post.example.org/sprig?from=site&kind=booklet" in text
    assert "Designed by Tamsin Hedgerow · Model stitched by Osbert Lindle" in text
    assert f"\n{ADDRESS}/sprig/\n" in text


def test_a_free_pattern_says_so_and_names_no_counter():
    free = replace(SPRIG, designer=SELLER, sold_at=(), given_away=("chart", "packet"))
    made = texts_of(free)
    assert "It is free." in made["sprig-short-post"]
    assert "Free: the packet stands on the pattern’s page" in made["sprig-listing"]
    assert "free pattern" in made["sprig-listing"]
    assert not [name for name in made if "old as PDF" in made[name] or SELLER.shop in made[name]]


def test_of_a_pattern_that_nobody_sells_yet_no_post_says_that_it_is_sold():
    quiet = replace(SPRIG, designer=replace(SELLER, shop=None), sold_at=())
    made = texts_of(quiet)
    assert "old as" not in made["sprig-short-post"] + made["sprig-long-post"]


def test_without_an_address_no_link_is_made_up():
    for name, text in texts(YEAR).items():
        links = set(re.findall(r"https?://\S+", text))
        assert links <= {SELLER.shop, SPRIG.sold_at[0].url}, name


def test_no_text_tells_more_of_a_chart_than_its_size_and_its_colours():
    """61 × 44 stitches, most of them in one colour: neither their number nor how far a skein goes."""
    rows = ("m" * 61,) * 37 + ("t" * 61,) * 7
    made = texts_of(stitching.pattern(*rows, title="A Bed"))
    said = " ".join(made.values())
    assert "Chart: 61 × 44 stitches" in said
    for count in (61 * 44, 61 * 37, 61 * 7):
        assert str(count) not in said and f"{count:,}" not in said
    assert "skein" not in said and rows[0] not in said


# --- before the release -----------------------------------------------------------------------------


def test_before_its_release_a_pattern_says_when_it_comes_and_nothing_else(awaited):
    when = "on 15 January 2027, 09:00 (Europe/London time, UTC+00:00)."
    assert awaited["rose-short-post"] == (
        f"A Rose, a cross stitch design by Isolde Fernsby for Rose Sunday, comes out {when} "
        f"{ADDRESS}/rose/\n"
    )
    assert awaited["rose-long-post"] == (
        "A Rose\n\n"
        "A cross stitch design by Isolde Fernsby for Rose Sunday, from The Hedge Year.\n\n"
        f"It comes out {when}\n\n{ADDRESS}/rose/\n"
    )
    for text in awaited.values():
        assert SPRIG.about not in text and "stitches" not in text.replace("cross stitch", "")


def test_a_plain_day_has_no_hour_and_no_zone():
    plain = replace(THERE, release=datetime(2027, 5, 1, tzinfo=UTC))
    for name, text in texts(plain, BEFORE).items():
        assert "00:00" not in text and "UTC" not in text, name
    assert "comes out on 1 May 2027. " in texts(plain, BEFORE)["rose-short-post"]
    assert "It begins on 1 May 2027." in texts(plain, BEFORE)[f"{YEAR.id}-long-post"]


def test_a_series_says_what_is_out_or_when_it_begins(out, awaited):
    assert (
        "3 cross stitch patterns by Isolde Fernsby and Tamsin Hedgerow."
        in out["hedge-year-short-post"]
    )
    assert (
        "Out now:\n- Holly by Isolde Fernsby, for The shortest day\n" in out["hedge-year-long-post"]
    )
    assert "It begins on 15 January 2027" in awaited["hedge-year-short-post"]
    assert "Out now" not in awaited["hedge-year-long-post"]
    assert "To come:\n- Holly by Isolde Fernsby" in awaited["hedge-year-long-post"]


def test_a_series_of_one_pattern_is_told_of_in_the_singular():
    made = texts_of(SPRIG, to_come=())
    assert "1 cross stitch pattern by Tamsin Hedgerow." in made["hedge-year-short-post"]
    assert "To come" not in made["hedge-year-long-post"]


# --- lengths ----------------------------------------------------------------------------------------

# 280 characters: common practice, no source.
WORDY = "The Long and Winding Border Down by the Water Butt "


@pytest.mark.parametrize("times", [1, 2, 3, 4, 6, 20])
@pytest.mark.parametrize("address", [ADDRESS, f"https://example.org/{'hedge/' * 30}", None])
def test_a_short_post_keeps_within_its_length_whatever_the_title(times, address):
    title = (WORDY * times).strip()
    series = replace(YEAR, address=address, title=title, patterns=(replace(SPRIG, title=title),))
    for as_of in (None, BEFORE):
        for name, text in texts(series, as_of).items():
            if name.endswith("short-post"):
                assert len(text.strip()) <= 280, name
                assert text.startswith(WORDY.strip()), name


def test_a_short_post_loses_its_hashtags_before_its_link():
    title = (WORDY * 3).strip()
    text = texts_of(replace(SPRIG, title=title))["sprig-short-post"]
    assert "#" not in text and f"{ADDRESS}/sprig/" in text
    assert "#CrossStitch" in texts_of(SPRIG)["sprig-short-post"]


def test_an_excerpt_ends_with_a_sentence():
    story = "# Once\n\nIt grew, e.g. by the gate. “Was it cut?” It was cut.\n\nThen nothing more came of it."
    assert excerpt(story, 400) == (
        "It grew, e.g. by the gate. “Was it cut?” It was cut.",
        "Then nothing more came of it.",
    )
    assert excerpt(story, 60) == ("It grew, e.g. by the gate. “Was it cut?” It was cut.",)
    assert excerpt(story, 45) == ("It grew, e.g. by the gate. “Was it cut?”",)
    assert excerpt(story, 30) == ("It grew, e.g. by the gate.",)
    assert excerpt(story, 20) == ("It grew, e.g. by…",)


def test_an_excerpt_is_never_longer_than_it_may_be_and_always_a_beginning():
    story = "Rain fell. " * 300
    for most in range(1, 700, 13):
        (text,) = excerpt(story, most) or ("",)
        assert len(text) <= most
        assert paragraphs(story)[0].startswith(text.rstrip("…"))


def test_a_story_of_a_list_alone_has_no_excerpt():
    assert excerpt("- one\n- two\n") == ()


# --- tags -------------------------------------------------------------------------------------------


def test_tags_keep_within_what_shops_take():
    """Thirteen of twenty characters: common practice, no source."""
    many = tuple(stitching.option(count) for count in range(11, 25))
    wordy = replace(
        SPRIG, cloths=many, title=WORDY, occasion=replace(SPRIG.occasion, name="Day " * 9)
    )
    for pattern in (SPRIG, ROSE, HOLLY, wordy):
        found = tags(pattern, YEAR)
        assert 5 <= len(found) <= 13 and all(0 < len(tag) <= 20 for tag in found)
        assert len({tag.casefold() for tag in found}) == len(found)
        assert found[:3] == ("cross stitch", "cross stitch pattern", "counted cross stitch")


def test_tags_come_from_facts_and_name_no_goods():
    found = tags(SPRIG, YEAR)
    assert {
        "may day",
        "a sprig",
        "the hedge year",
        "14 count aida",
        "32 count evenweave",
        "beads",
    } <= set(found)
    goods = ("bramble", "cloth 14", "drop glass", "board")
    assert not [tag for tag in found if tag in goods]
    assert "pdf pattern" not in found  # its designer sells none
    assert "pdf pattern" in tags(HOLLY, YEAR) and "beads" not in tags(HOLLY, YEAR)


def test_hashtags_are_letters_and_digits_without_a_space():
    odd = replace(SPRIG, occasion=Occasion("St. Wendel's first-sowing", SPRIG.occasion.rule))
    found = hashtags(odd, YEAR)
    assert found[:3] == ("#CrossStitch", "#TheHedgeYear", "#StWendelsFirstSowing")
    assert len(found) == 5 and all(re.fullmatch(r"#\w+", tag) for tag in found)


# --- pictures in words ------------------------------------------------------------------------------


def test_a_picture_is_described_in_the_author_s_words_and_else_from_facts():
    piece = YEAR.finish
    assert (
        model_alt(replace(SPRIG, photo_alt="A sprig in a frame."), piece) == "A sprig in a frame."
    )
    assert model_alt(SPRIG, piece) == (
        "A Sprig, stitched on Cloth 14 in white, mounted on card and shown on The Board. "
        "A sprig of something green."
    )


def test_words_for_pictures_are_never_too_long(out, awaited):
    long = replace(SPRIG, about="Green and growing. " * 40)
    said = [model_alt(long, YEAR.finish), share_alt("A", "b " * 400), series_alt(YEAR)]
    said += [text.strip() for name, text in (out | awaited).items() if name.endswith("-alt")]
    assert all(0 < len(words) <= LONGEST_ALT for words in said)
    assert said[0].endswith("growing…") or said[0].endswith("and…") or said[0].endswith("Green…")


def test_a_picture_for_sharing_says_its_title_and_what_is_behind_it(out, awaited):
    assert out["rose-alt"].startswith("The words “A Rose” with a picture. A Rose, stitched on")
    assert awaited["rose-alt"].startswith("The words “A Rose” with a picture. A close-up of A Rose")
    assert "with Holly, A Sprig and A Rose stitched" in out["hedge-year-alt"]
    assert "stitched" not in awaited["hedge-year-alt"]


def test_beads_are_told_by_card_and_colour():
    drop = BeadCard("drop", "Drop Glass", 2.2, 300, {})
    beads = tuple(
        Bead(drop, Colour(number, name, "#b32c2e"), (x, 2.5), stitching.HERE)
        for number, name, x in (
            ("07", "hip red", 1.5),
            ("09", "frost", 2.5),
            ("07", "hip red", 3.5),
        )
    )
    text = texts_of(replace(SPRIG, beads=beads))["sprig-listing"]
    assert "- Drop Glass, 2.2 mm: hip red and frost\n" in text


def test_what_is_still_to_come_is_listed_with_the_series():
    coming = ToCome("Onions", QUIET, Occasion("Lifting", SPRIG.occasion.rule))
    text = texts(replace(THERE, to_come=(coming,)))["hedge-year-long-post"]
    assert "To come:\n- Onions by Tamsin Hedgerow, for Lifting\n" in text


def test_counters_keep_their_author_s_order():
    two = (Counter("B", "https://b.example.org/"), Counter("A", "https://a.example.org/"))
    text = texts_of(replace(SPRIG, sold_at=two))["sprig-long-post"]
    assert "- B: https://b.example.org/\n- A: https://a.example.org/\n" in text
