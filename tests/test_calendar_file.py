"""The swap calendar as a file for calendar programs, read back with another library."""

from dataclasses import replace
from datetime import date, datetime, timedelta

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from icalendar import Calendar

from packetgen.model import Occasion, Revision
from packetgen.reckon.swaps import swaps
from packetgen.render.calendar_file import CALENDAR_FILE, calendar_file
from tests import stitching
from tests.test_site import ADDRESS, YEAR, Page, links, site_of
from tests.test_swaps import year_of


def events(series) -> list:
    calendar = Calendar.from_ical(calendar_file(series))
    assert not calendar.errors
    for event in calendar.walk("VEVENT"):
        assert not event.errors
    return calendar.walk("VEVENT")


def test_every_design_has_an_event_in_each_of_three_years():
    """Easter: 28 March 2027, 16 April 2028, 1 April 2029 (OEIS A060958), a week before."""
    series = year_of("6 January", "Easter")
    days = {(str(event["SUMMARY"]), event["DTSTART"].dt) for event in events(series)}
    assert days == {
        ("Put up Design 0: Day 0", date(2027, 12, 30)),
        ("Put up Design 0: Day 0", date(2028, 12, 30)),
        ("Put up Design 0: Day 0", date(2029, 12, 30)),
        ("Put up Design 1: Day 1", date(2027, 3, 21)),
        ("Put up Design 1: Day 1", date(2028, 4, 9)),
        ("Put up Design 1: Day 1", date(2029, 3, 25)),
    }


def test_an_event_is_a_whole_day_and_ends_before_the_next():
    """RFC 5545, section 3.6.1: DTEND is the day after the last one, both are dates."""
    for event in events(YEAR):
        start, end = event["DTSTART"], event["DTEND"]
        assert start.params["VALUE"] == end.params["VALUE"] == "DATE"
        assert type(start.dt) is date and end.dt - start.dt == timedelta(days=1)


def test_an_event_says_whose_day_it_is_and_how_long_the_design_hangs():
    """A Rose by Isolde Fernsby: 21 days before Easter, which is on 28 March 2027; then May Day."""
    (first, *_) = (event for event in events(YEAR) if "A Rose" in event["SUMMARY"])
    assert first["DESCRIPTION"] == (
        "For Rose Sunday, 7 March 2027. A Rose by Isolde Fernsby hangs until 24 April 2027."
    )


def test_the_head_is_what_the_standard_asks_for():
    """RFC 5545, sections 3.4 and 3.6: version 2.0, a product, then events with UID and DTSTAMP."""
    calendar = Calendar.from_ical(calendar_file(YEAR))
    assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
    assert calendar["NAME"] == YEAR.title
    for event in events(YEAR):
        assert event["UID"] and event["DTSTAMP"].dt.utcoffset() == timedelta(0)


def test_each_event_has_an_identifier_of_its_own_that_never_changes():
    """Also when a design that was announced comes out, so that programs replace what they have."""
    known = [event["UID"] for event in events(YEAR)]
    assert len(set(known)) == len(known) == 3 * 4
    (announced,) = YEAR.to_come
    out = stitching.pattern(
        "mm", id="onions-in-a-row", title=announced.title, occasion=announced.occasion
    )
    later = replace(YEAR, patterns=(*YEAR.patterns, out), to_come=())
    assert [event["UID"] for event in events(later)] == known


def test_two_designs_of_one_title_are_told_apart():
    """21 days before Easter and Easter, both called A Rose."""
    series = year_of("21 days before Easter", "Easter")
    (other,) = series.to_come
    twins = replace(series, to_come=(replace(other, title="DESIGN 0"),))
    assert len({event["UID"] for event in events(twins)}) == 6


@pytest.mark.parametrize("said", ["95 days before Easter", "11 days after winter solstice"])
def test_two_days_in_one_year_are_two_events(said):
    """95 days before Easter is 23 December 2026, 12 January 2028 and 27 December 2028, for Easter is on
    28 March 2027, 16 April 2028 and 1 April 2029 (OEIS A060958).
    """
    series = year_of(said, release=date(2026, 12, 1))
    assert len({event["UID"] for event in events(series)}) == 3
    if "Easter" in said:
        days = [turn.day for swap in swaps(series) for turn in swap.turns]
        assert days == [date(2026, 12, 23), date(2028, 1, 12), date(2028, 12, 27)]


def test_the_stamp_is_the_day_of_the_last_revision():
    """Of its own, or for a design still to come that of the newest: no clock is asked."""
    stamps = {
        event["SUMMARY"].split(":")[0]: event["DTSTAMP"].dt.replace(tzinfo=None)
        for event in events(YEAR)
    }
    assert stamps == {
        "Put up A Sprig": datetime(2026, 6, 2),
        "Put up A Rose": datetime(2026, 5, 1),
        "Put up Holly": datetime(2026, 5, 1),
        "Put up Onions": datetime(2026, 6, 2),
    }


def test_the_file_is_the_same_each_time():
    assert calendar_file(YEAR) == calendar_file(YEAR)


TITLES = st.text(
    st.characters(codec="utf-8", exclude_categories=["Cc", "Cs", "Zl", "Zp"]), min_size=1
).filter(str.strip)


@given(TITLES)
@example("Äpfel, Birnen; und\\noch mehr")
@example("🌻" * 60)
@example("x" * 60 + "é" * 60)
@example("a\\;b\\,c\\\\n")
def test_any_title_comes_back_as_it_was_written(title):
    """Commas, semicolons and backslashes are escaped (RFC 5545, section 3.3.11)."""
    named = replace(
        YEAR.patterns[0], title=title, occasion=Occasion(title, YEAR.patterns[0].occasion.rule)
    )
    for event in events(replace(YEAR, patterns=(named,), to_come=())):
        assert event["SUMMARY"] == f"Put up {title}: {title}"


def test_a_new_line_in_a_text_is_kept_as_one():
    named = replace(YEAR.patterns[0], title="One\r\nTwo")
    (event, *_) = events(replace(YEAR, patterns=(named,), to_come=()))
    assert event["SUMMARY"] == "Put up One\nTwo: The shortest day"


@given(TITLES)
@example("🌻" * 60)
@example("x" * 60 + "é" * 60)
def test_no_line_is_longer_than_75_octets_and_no_character_is_cut(title):
    """RFC 5545, section 3.1: lines end with CR and LF, and go on after a line end and a space."""
    data = calendar_file(
        replace(YEAR, title=title, patterns=(replace(YEAR.patterns[0], title=title),))
    )
    assert data.endswith(b"\r\n")
    lines = data.removesuffix(b"\r\n").split(b"\r\n")
    for line in lines:
        assert 0 < len(line) <= 75
        assert b"\r" not in line and b"\n" not in line
        line.decode("utf-8")


def test_an_event_leads_to_the_page_of_its_design_once_there_is_an_address():
    """And of a design to come there is no page yet."""
    assert not any("URL" in event for event in events(YEAR))
    standing = replace(YEAR, address=ADDRESS)
    urls = {event["SUMMARY"].split(":")[0]: event.get("URL") for event in events(standing)}
    assert urls["Put up A Rose"] == f"{ADDRESS}/rose/index.html"
    assert urls["Put up Onions"] is None


def test_nothing_of_a_chart_is_in_it():
    """The words are titles, designers, occasions and days: what the site's page says as well."""
    site = site_of()
    assert site[CALENDAR_FILE] == calendar_file(YEAR)
    text = Page(site["index.html"]).text
    for swap in swaps(YEAR):
        for word in (swap.title, swap.designer, swap.occasion.name):
            assert word in text
    kinds = {line.split(":")[0].split(";")[0] for line in lines_of(site[CALENDAR_FILE])}
    assert kinds == {
        "BEGIN", "END", "VERSION", "PRODID", "CALSCALE", "NAME", "UID", "DTSTAMP", "DTSTART", "DTEND",
        "SUMMARY", "DESCRIPTION", "TRANSP",
    }  # fmt: skip
    for pattern in YEAR.patterns:
        for row in pattern.grid.rows:
            assert row.encode() not in site[CALENDAR_FILE]


def lines_of(data: bytes) -> list[str]:
    """The lines of the file, unfolded."""
    return data.decode().replace("\r\n ", "").split("\r\n")[:-1]


def test_the_first_page_of_the_site_leads_to_it():
    assert CALENDAR_FILE in links(Page(site_of()["index.html"]))


@pytest.mark.parametrize("revised", [date(2026, 5, 1), date(2027, 8, 9)])
def test_a_revision_changes_the_stamp_and_nothing_else(revised):
    pattern = replace(YEAR.patterns[0], revisions=(Revision(revised, "Mended."),))
    series = replace(YEAR, patterns=(pattern,), to_come=())
    kept = [line for line in lines_of(calendar_file(series)) if not line.startswith("DTSTAMP")]
    same = replace(YEAR, patterns=YEAR.patterns[:1], to_come=())
    assert kept == [
        line for line in lines_of(calendar_file(same)) if not line.startswith("DTSTAMP")
    ]
    assert f"DTSTAMP:{revised:%Y%m%d}T000000Z" in lines_of(calendar_file(series))
