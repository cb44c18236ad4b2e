"""When each design of a series goes up, and when it makes room for the next."""

from dataclasses import replace
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from hypothesis import given
from hypothesis import strategies as st

from packetgen.load.dates import read_rule
from packetgen.model import DateRule, Occasion, Series, ToCome
from packetgen.reckon.figures import figures
from packetgen.reckon.swaps import YEARS_AHEAD, hangs_from, swaps
from packetgen.render.calendar_file import calendar_file
from packetgen.render.packet import packet
from packetgen.render.site_year import before_its_day, in_order
from packetgen.render.site_year import swaps as on_pages
from packetgen.render.templates import environment
from tests import stitching
from tests.test_calendar import RULES

LONDON = ZoneInfo("Europe/London")


def refuse(code, offset=0, **facts):
    raise AssertionError(code)


def rule(said: str) -> DateRule:
    return read_rule(said, refuse)


def year_of(
    *days: str | DateRule, goes_up_days: int = 7, release: date = date(2027, 1, 15)
) -> Series:
    """A series of which the first design is out and the others are to come, with these days."""
    rules = [rule(day) if isinstance(day, str) else day for day in days]
    first, *others = [Occasion(f"Day {number}", each) for number, each in enumerate(rules)]
    return replace(
        stitching.series(stitching.pattern("mm", title="Design 0", occasion=first)),
        release=datetime(release.year, release.month, release.day, 9, tzinfo=LONDON),
        to_come=tuple(
            ToCome(f"Design {number}", stitching.DESIGNER, occasion)
            for number, occasion in enumerate(others, 1)
        ),
        goes_up_days=goes_up_days,
    )


def first_turns(series: Series) -> list[tuple[str, date, date, date]]:
    """Of every design: title, up, day and down, the first time."""
    turns = [(swap.title, swap.turns[0]) for swap in swaps(series)]
    return [(title, turn.up, turn.day, turn.down) for title, turn in turns]


def test_a_design_waits_for_its_own_release():
    """Worked by hand: the solstice of June 2027 is on the 21st, and that of 2028 on the 20th (as in test_calendar)."""
    late = datetime(2027, 6, 29, 9, tzinfo=LONDON)
    series = year_of("June solstice", "31 October")
    (first,) = series.patterns
    own = replace(series, patterns=(replace(first, release=late),))
    assert first_turns(own) == [
        ("Design 1", date(2027, 10, 24), date(2027, 10, 31), date(2028, 6, 13)),
        ("Design 0", date(2028, 6, 13), date(2028, 6, 20), date(2028, 10, 24)),
    ]
    # Two days before its day it goes up when it is out, and the same while it is still to come.
    soon = replace(first, release=late.replace(day=19))
    coming = ToCome(first.title, first.designer, first.occasion, first.id, soon.release)
    for one in (
        replace(series, patterns=(soon,)),
        replace(series, patterns=(), to_come=(coming, *series.to_come)),
    ):
        assert first_turns(one)[0] == (
            "Design 0",
            date(2027, 6, 19),
            date(2027, 6, 21),
            date(2027, 10, 24),
        )


def test_days_of_a_design_begin_with_its_own_release_on_every_page():
    series = year_of("June solstice")
    late = datetime(2027, 6, 29, 9, tzinfo=LONDON)
    own = replace(series, patterns=(replace(series.patterns[0], release=late),))
    (swap,) = on_pages(own)
    assert swap.hanging.first == date(2028, 6, 20)
    # Later by the clock of the series, and never sooner than it.
    there = datetime(2027, 6, 29, 1, tzinfo=ZoneInfo("Pacific/Auckland"))
    assert hangs_from(series, there).date() == date(2027, 6, 28)
    assert hangs_from(series, series.release - timedelta(days=9)) == series.release


def test_a_design_goes_up_a_week_before_its_day_and_comes_down_for_the_next():
    """Worked by hand: Easter of 2027 is on 28 March (OEIS A060958, as in easter_1980_2060)."""
    series = year_of("6 January", "Easter", "31 October")
    assert first_turns(series) == [
        ("Design 1", date(2027, 3, 21), date(2027, 3, 28), date(2027, 10, 24)),
        ("Design 2", date(2027, 10, 24), date(2027, 10, 31), date(2027, 12, 30)),
        ("Design 0", date(2027, 12, 30), date(2028, 1, 6), date(2028, 4, 9)),
    ]


def test_a_design_stays_until_its_own_day_is_over():
    """1 June and 4 June: the second goes up on the 2nd, two days before its day."""
    series = year_of("1 June", "4 June")
    assert first_turns(series) == [
        ("Design 0", date(2027, 5, 25), date(2027, 6, 1), date(2027, 6, 2)),
        ("Design 1", date(2027, 6, 2), date(2027, 6, 4), date(2028, 5, 25)),
    ]


def test_designs_with_the_same_day_share_it():
    """Easter was on 1 April in 2029 (OEIS A060958); one design is for Easter, the other for the date."""
    series = year_of("1 April", "Easter", "1 May", release=date(2029, 1, 1))
    april = (date(2029, 3, 25), date(2029, 4, 1), date(2029, 4, 24))
    assert first_turns(series)[:2] == [("Design 0", *april), ("Design 1", *april)]


def test_nothing_goes_up_before_the_release():
    series = year_of("18 January", "1 May")
    assert first_turns(series)[0][1:3] == (date(2027, 1, 15), date(2027, 1, 18))


def test_on_the_day_is_the_day_itself():
    title, up, day, down = first_turns(year_of("1 May", "1 June", goes_up_days=0))[0]
    assert (up, day, down) == (date(2027, 5, 1), date(2027, 5, 1), date(2027, 6, 1))


def test_a_day_that_was_over_at_the_release_comes_again_next_year():
    assert swaps(year_of("14 January"))[0].turns[0].day == date(2028, 1, 14)
    assert swaps(year_of("15 January"))[0].turns[0].day == date(2027, 1, 15)


YEARS = st.builds(
    lambda rules, lead, release: year_of(*rules, goes_up_days=lead, release=release),
    st.lists(RULES, min_size=1, max_size=8),
    st.integers(0, 60),
    st.dates(date(2000, 1, 1), date(2100, 12, 31)),
)


@given(YEARS)
def test_every_design_is_up_on_its_day_and_comes_down_after_it(series):
    for swap in swaps(series):
        assert len(swap.turns) == YEARS_AHEAD
        for turn in swap.turns:
            assert series.release.date() <= turn.up <= turn.day < turn.down
            assert turn.day - turn.up <= timedelta(days=series.goes_up_days)
        for turn, after in zip(swap.turns, swap.turns[1:]):
            assert turn.down <= after.up


@given(YEARS)
def test_one_design_hangs_at_a_time_and_no_day_is_bare(series):
    """But for designs with the same day. Looked at as far as every design has turns."""
    turns = {(turn.up, turn.day, turn.down) for swap in swaps(series) for turn in swap.turns}
    end = min(swap.turns[-1].day for swap in swaps(series))
    ordered = sorted(turn for turn in turns if turn[1] <= end)
    assert all(down == up for (_, _, down), (up, _, _) in zip(ordered, ordered[1:]))


@given(YEARS)
def test_a_series_is_in_the_order_of_the_year(series):
    """As designs first go up after the release; so too in the lists of the site, which tell fixed days alone
    without a year and from January to December."""
    days = [swap.turns[0].day for swap in swaps(series)]
    assert days == sorted(days)
    listed = [
        swap.turns[0].day
        for swap in in_order(swaps(series), lambda one: one.occasion, series.release)
    ]
    if any(swap.moves for swap in swaps(series)):
        assert listed == days
    else:
        assert listed == sorted(days, key=lambda day: (day.month, day.day))


def test_a_month_and_a_season_are_printed_by_their_names_and_not_by_their_first_day():
    """Of 'in April' nobody is told 1 April: in the packet, in the calendar as a file, nowhere."""
    series = year_of("in April", "spring", "1 June")
    (pattern,) = series.patterns
    html = packet(series, figures(pattern, series.finish), b"cover", environment()).html
    page = html[html.index("<h2>Swap calendar</h2>") :]
    assert "April 2027" in page and "1 April" not in page
    assert "spring 2027" in page and "1 June 2027" in page
    file = calendar_file(series).decode().replace("\r\n ", "")
    assert "For Day 0\\, April 2028." in file and "1 April" not in file


def test_the_packet_prints_the_calendar_and_three_years_of_the_days_that_move():
    """Easter: 28 March 2027, 16 April 2028, 1 April 2029 (OEIS A060958)."""
    series = year_of("6 January", "Easter", "31 October")
    (pattern,) = series.patterns
    html = packet(series, figures(pattern, series.finish), b"cover", environment()).html
    page = html[html.index("<h2>Swap calendar</h2>") :]
    first, moving = page.split("<h3>Days that move</h3>")
    assert "goes up 7 days before its day" in first
    places = [
        first.index(f'<td class="short">{said}</td>')
        for said in ("21 March 2027", "24 October 2027", "30 December 2027")
    ]
    assert places == sorted(places)
    for said in ("28 March 2027", "16 April 2028", "1 April 2029", "up 9 April 2028"):
        assert said in moving
    assert "Design 1" in moving and "Design 2" not in moving


def test_a_year_without_moving_days_prints_none():
    series = year_of("6 January", "31 October")
    (pattern,) = series.patterns
    html = packet(series, figures(pattern, series.finish), b"cover", environment()).html
    assert "Swap calendar" in html and "Days that move" not in html


def test_the_time_before_is_said_in_words():
    assert before_its_day(0) == "on the morning of its day"
    assert before_its_day(1) == "1 day before its day"
    assert before_its_day(14) == "14 days before its day"
