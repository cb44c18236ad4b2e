"""Occasions fall on the day that their rule says."""

import time
from datetime import UTC, date, datetime, timedelta, timezone
from functools import cache
from zoneinfo import ZoneInfo

import holidays
import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.load.dates import read_rule
from packetgen.model import DateRule
from packetgen.reckon.calendar import coming, day_of
from packetgen.reckon.solstices import sun_turns
from tests.outside import rows


def rule(said: str) -> DateRule:
    """The rule as an author writes it."""
    return read_rule(said, pytest.fail)


@pytest.mark.parametrize("row", rows("easter_1980_2060"), ids=lambda row: row["year"])
def test_easter_and_its_feasts_are_those_of_the_tables(row):
    """Western Easter by four algorithms and a published sequence; see the table's first line."""
    year = int(row["year"])
    for column, days in (
        ("easter", 0),
        ("good_friday", -2),
        ("shrove_tuesday", -47),
        ("pentecost", 49),
    ):
        rule = DateRule(column, easter=(days, False))
        assert day_of(rule, year) == date.fromisoformat(row[column])


@pytest.mark.parametrize(
    ("year", "day"),
    [(2024, date(2024, 5, 5)), (2025, date(2025, 4, 20)), (2026, date(2026, 4, 12))],
)
def test_julian_easter_is_the_orthodox_one(year, day):
    """Dates of Orthodox Easter in the Gregorian calendar: from memory."""
    assert day_of(DateRule("Julian Easter", easter=(0, True)), year) == day


@pytest.mark.parametrize("year", range(1950, 2100))
def test_julian_easter_is_that_of_a_second_algorithm(year):
    """Meeus, Astronomical Algorithms, chapter 8, Easter in the Julian calendar (from memory), which is
    13 days behind the Gregorian one from March 1900 to February 2100."""
    a, b, c = year % 4, year % 7, year % 19
    d = (19 * c + 15) % 30
    e = (2 * a + 4 * b - d + 34) % 7
    month, day = divmod(d + e + 114, 31)
    easter = date(year, month, day + 1) + timedelta(days=13)
    assert day_of(rule("Julian Easter"), year) == easter


def _nth_rows():
    return [row for row in rows("nth_weekday_2024_2035") if row["rule"].startswith("month")]


@pytest.mark.parametrize("row", _nth_rows(), ids=lambda row: f"{row['year']} {row['holiday']}")
def test_the_nth_weekday_of_a_month_is_that_of_the_holidays(row):
    """A reference library's holidays and own arithmetic; see the table's first line."""
    words = row["rule"].replace("n=", "n ").split()
    month, weekday = int(words[1]), int(words[3])
    n = int(words[words.index("n") + 1])
    assert day_of(DateRule("", nth=(n, weekday, month)), int(row["year"])) == date.fromisoformat(
        row["date"]
    )


# What the laws of these countries say; the library holidays knows the days.
LAWFUL = (
    ("US", "Martin Luther King Jr. Day", "third Monday of January"),
    ("US", "Washington's Birthday", "third Monday of February"),
    ("US", "Memorial Day", "last Monday of May"),
    ("US", "Labor Day", "first Monday of September"),
    ("US", "Columbus Day", "second Monday of October"),
    ("US", "Thanksgiving Day", "fourth Thursday of November"),
    ("NZ", "Labour Day", "fourth Monday of October"),
    ("JP", "Coming of Age Day", "second Monday of January"),
    ("JP", "Respect for the Aged Day", "third Monday of September"),
    ("DE", "Easter Monday", "1 day after Easter"),
    ("DE", "Good Friday", "2 days before Easter"),
    ("DE", "Ascension Day", "39 days after Easter"),
    ("DE", "Pentecost Monday", "50 days after Easter"),
    ("GR", "Green Monday", "48 days before Julian Easter"),
    ("GR", "Easter Monday", "1 day after Julian Easter"),
    ("RO", "Children's Day", "1 June"),
    ("SE", "Epiphany", "6 January"),
)


@cache
def lawful(country: str, year: int):
    return holidays.country_holidays(country, years=year, language="en_US")


@pytest.mark.parametrize(("country", "holiday", "said"), LAWFUL)
def test_a_rule_gives_the_holiday_of_a_country_for_forty_years(country, holiday, said):
    """Days: the library holidays, which takes Easter, but not the other days, from the same library
    as the project does."""
    for year in range(2018, 2058):
        day = day_of(rule(said), year)
        assert holiday in lawful(country, year).get_list(day), (year, day)


@given(
    st.sampled_from((1, 2, 3, 4, -1)),
    st.integers(0, 6),
    st.integers(1, 12),
    st.integers(1950, 2150),
)
def test_an_nth_weekday_is_that_weekday_in_its_week_of_the_month(n, weekday, month, year):
    """The first is one of the days 1 to 7, the second 8 to 14; a week after the last is another month."""
    day = day_of(DateRule("", nth=(n, weekday, month)), year)
    assert (day.year, day.month, day.weekday()) == (year, month, weekday)
    if n == -1:
        assert (day + timedelta(days=7)).month != month
    else:
        assert 7 * n - 6 <= day.day <= 7 * n


def test_a_fixed_day_is_that_day():
    assert day_of(DateRule("6 January", fixed=(1, 6)), 2027) == date(2027, 1, 6)


def test_leap_day_is_kept_on_the_last_of_february_in_common_years():
    rule = DateRule("29 February", fixed=(2, 29))
    assert day_of(rule, 2028) == date(2028, 2, 29)
    assert day_of(rule, 2027) == date(2027, 2, 28)


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("spring", date(2027, 3, 1)),
        ("in summer", date(2027, 6, 1)),
        ("autumn", date(2027, 9, 1)),
        ("winter", date(2027, 12, 1)),
        ("in May", date(2027, 5, 1)),
    ],
)
def test_a_season_or_month_begins_on_its_first_day(said, day):
    """The seasons of the weather, as meteorologists count them in the north: common practice, no source."""
    assert day_of(rule(said), 2027) == day


SUN_ROWS = rows("equinoxes_solstices_2000_2100")
SOURCES = ("ephem", "astronomy_engine", "skyfield_de421")


def moments(row):
    return [datetime.fromisoformat(row[source]) for source in SOURCES if row[source]]


@pytest.mark.parametrize("row", SUN_ROWS, ids=lambda row: f"{row['year']}-{row['month']}")
def test_equinoxes_and_solstices_are_those_of_three_libraries(row):
    """To 75 s until 2050; later to three minutes, for they do not agree how the earth will turn.

    Sources: see the table's first line.
    """
    year = int(row["year"])
    most = timedelta(seconds=75 if year <= 2050 else 180)
    for moment in moments(row):
        assert abs(sun_turns(year, int(row["month"])) - moment) <= most


ZONES = tuple(timezone(timedelta(hours=hours)) for hours in range(-11, 15))


def test_the_day_of_an_equinox_or_solstice_is_that_of_the_libraries_in_every_zone():
    """Left out are moments within three minutes of midnight, where the libraries may differ: one in 200."""
    asked = checked = 0
    for row in SUN_ROWS:
        year, month = int(row["year"]), int(row["month"])
        for zone in ZONES:
            asked += 1
            days = {
                (moment + timedelta(minutes=off)).astimezone(zone).date()
                for moment in moments(row)
                for off in (-3, 3)
            }
            if len(days) == 1:
                checked += 1
                assert day_of(DateRule("", sun=(0, month)), year, zone) in days
    assert asked == 101 * 4 * 26 and checked > 0.98 * asked


@pytest.mark.parametrize("year", range(2000, 2100))
def test_the_equinoxes_are_the_holidays_of_japan(year):
    """By law the days of the equinoxes in Japan's time; the library holidays knows them."""
    zone = ZoneInfo("Asia/Tokyo")
    for said, holiday in (
        ("spring equinox", "Vernal Equinox Day"),
        ("September equinox", "Autumnal Equinox Day"),
    ):
        assert holiday in lawful("JP", year).get_list(day_of(rule(said), year, zone))


def test_a_solstice_falls_on_the_day_that_it_is_where_the_series_is_released():
    """02:42 on 22 December 2027 in UTC, when it is still the 21st in Honolulu. Source: the table of libraries."""
    solstice = rule("winter solstice")
    assert day_of(solstice, 2027) == date(2027, 12, 22)
    assert day_of(solstice, 2027, ZoneInfo("Pacific/Honolulu")) == date(2027, 12, 21)


RULES = st.one_of(
    st.builds(
        lambda day: DateRule("", fixed=(day.month, day.day)),
        st.dates(date(2023, 1, 1), date(2023, 12, 31)),
    ),
    st.builds(
        lambda *nth: DateRule("", nth=nth),
        st.sampled_from((1, 2, 3, 4, -1)),
        st.integers(0, 6),
        st.integers(1, 12),
    ),
    st.builds(
        lambda days, julian: DateRule("", easter=(days, julian)),
        st.integers(-150, 150),
        st.booleans(),
    ),
    st.builds(
        lambda days, month: DateRule("", sun=(days, month)),
        st.integers(-90, 90),
        st.sampled_from((3, 6, 9, 12)),
    ),
)


@given(RULES, st.dates(date(2000, 1, 1), date(2100, 12, 31)), st.integers(1, 6))
def test_coming_days_follow_one_another_a_year_apart_from_the_first_that_is_not_over(
    rule, since, number
):
    """Easter is at most five weeks earlier or later than the year before (22 March to 25 April)."""
    found = coming(rule, since, number, UTC)
    days = [day for _, day in found]
    assert len(days) == number and since <= days[0] <= since + timedelta(days=366 + 35)
    assert all(330 <= (after - day).days <= 401 for day, after in zip(days, days[1:]))
    assert [day_of(rule, year) for year, _ in found] == days
    assert day_of(rule, found[0][0] - 1) < since


@pytest.mark.skipif(not hasattr(time, "tzset"), reason="this system has no zone to set")
def test_without_a_zone_the_sun_turns_by_utc_wherever_the_machine_stands(monkeypatch):
    """14:11 UTC on 21 June 2027 is the 22nd where clocks are fourteen hours ahead."""
    monkeypatch.setenv("TZ", "UTC-14")
    time.tzset()
    try:
        assert day_of(rule("June solstice"), 2027) == date(2027, 6, 21)
        assert coming(rule("June solstice"), date(2027, 1, 1), 1, None) == (
            (2027, date(2027, 6, 21)),
        )
    finally:
        monkeypatch.undo()
        time.tzset()
