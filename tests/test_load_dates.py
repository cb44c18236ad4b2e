"""Days and moments: what an author may write for them."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.load.dates import (
    WEEKDAYS,
    read_day,
    read_days_before,
    read_moment,
    read_rule,
)
from packetgen.load.spoken_days import MONTHS, spoken_day
from packetgen.load.spoken_rules import meant_rule
from packetgen.model import DateRule


def refuse(code, offset=0, **facts):
    raise AssertionError(code)


@pytest.mark.parametrize(
    ("said", "rule"),
    [
        ("6 January", DateRule("6 January", fixed=(1, 6))),
        ("31 december", DateRule("31 december", fixed=(12, 31))),
        ("28 February", DateRule("28 February", fixed=(2, 28))),
        ("second Sunday of May", DateRule("second Sunday of May", nth=(2, 6, 5))),
        ("First monday in March", DateRule("First monday in March", nth=(1, 0, 3))),
        ("last Monday of May", DateRule("last Monday of May", nth=(-1, 0, 5))),
        ("Easter", DateRule("Easter", easter=(0, False))),
        ("21 days before Easter", DateRule("21 days before Easter", easter=(-21, False))),
        ("1 day after Easter", DateRule("1 day after Easter", easter=(1, False))),
        ("3 days after Julian Easter", DateRule("3 days after Julian Easter", easter=(3, True))),
        ("June solstice", DateRule("June solstice", sun=(0, 6))),
        ("the winter solstice", DateRule("the winter solstice", sun=(0, 12))),
        ("Spring Equinox", DateRule("Spring Equinox", sun=(0, 3))),
        (
            "3 days before September equinox",
            DateRule("3 days before September equinox", sun=(-3, 9)),
        ),
        (
            "1 day after the summer solstice",
            DateRule("1 day after the summer solstice", sun=(1, 6)),
        ),
        ("in May", DateRule("in May", fixed=(5, 1), whole="May")),
        ("spring", DateRule("spring", fixed=(3, 1), whole="spring")),
        ("Summer", DateRule("Summer", fixed=(6, 1), whole="summer")),
        ("in autumn", DateRule("in autumn", fixed=(9, 1), whole="autumn")),
        ("winter", DateRule("winter", fixed=(12, 1), whole="winter")),
    ],
)
def test_a_day_of_every_year_is_read(said, rule):
    assert read_rule(said, refuse) == rule


@given(st.dates(date(2023, 1, 1), date(2023, 12, 31)))
def test_every_day_of_a_common_year_comes_every_year(day):
    """The calendar of 2023, which has no 29 February, is that of every year."""
    said = f"{day.day} {MONTHS[day.month - 1]}"
    assert read_rule(said, refuse).fixed == (day.month, day.day)


@given(
    st.sampled_from(("first", "second", "third", "fourth")), st.integers(0, 6), st.integers(1, 12)
)
def test_a_counted_weekday_is_read(count, weekday, month):
    rule = read_rule(f"{count} {WEEKDAYS[weekday]} of {MONTHS[month - 1]}", refuse)
    assert rule.nth == (("first", "second", "third", "fourth").index(count) + 1, weekday, month)


@pytest.mark.parametrize(
    ("seasonal", "monthly"),
    [
        ("spring equinox", "March equinox"),
        ("summer solstice", "June solstice"),
        ("autumn equinox", "September equinox"),
        ("winter solstice", "December solstice"),
    ],
)
def test_a_solstice_named_for_a_season_is_that_of_the_north(seasonal, monthly):
    assert read_rule(seasonal, refuse).sun == read_rule(monthly, refuse).sun


@pytest.mark.parametrize(
    ("said", "days"),
    [
        ("7 days", 7),
        ("1 day", 1),
        ("2 weeks", 14),
        ("10 days before", 10),
        ("0 days", 0),
        ("On the day", 0),
    ],
)
def test_a_design_goes_up_some_days_before(said, days):
    assert read_days_before(said, 60, refuse) == days


def test_names_of_days_and_months_are_those_of_the_calendar():
    """As Python's own calendar in its C locale counts them: Monday 0, January 1."""
    assert [date(2024, 1, 1 + number).strftime("%A") for number in range(7)] == list(WEEKDAYS)
    assert [date(2024, month, 1).strftime("%B") for month in range(1, 13)] == list(MONTHS)


@given(st.dates(date(2000, 1, 1), date(2100, 12, 31)))
def test_a_date_is_read_as_iso_8601_writes_it(day):
    assert read_day(day.isoformat(), refuse) == day


@pytest.mark.parametrize(
    ("said", "offset"),
    [
        # Greenwich time in winter, one hour ahead in summer;
        # Kathmandu 5 h 45 min ahead (IANA time zone database).
        ("2027-01-15 09:00 Europe/London", timedelta(0)),
        ("2027-07-15 9:00 Europe/London", timedelta(hours=1)),
        ("2027-07-15 09:00 Asia/Kathmandu", timedelta(hours=5, minutes=45)),
    ],
)
def test_a_moment_has_the_offset_of_its_zone_on_that_day(said, offset):
    moment = read_moment(said, refuse)
    assert moment.utcoffset() == offset and moment.hour == 9


def test_a_time_that_comes_twice_is_the_first():
    """On 31 October 2027 London's clocks go back at 02:00 (last Sunday of October):
    01:30 is first in summer time.
    """
    assert read_moment("2027-10-31 01:30 Europe/London", refuse).utcoffset() == timedelta(hours=1)


@given(st.dates(date(2000, 1, 1), date(2100, 12, 31)))
def test_a_day_alone_begins_with_its_first_minute(day):
    moment = read_moment(day.isoformat(), refuse)
    assert moment.isoformat() == f"{day.isoformat()}T00:00:00+00:00"


@pytest.mark.parametrize(
    ("said", "hint"),
    [
        ("1 May 2027", "write 2027-05-01, or with hour and place 2027-05-01 09:00 Europe/London"),
        (
            "May 1st, 2027 8:30",
            "write 2027-05-01, or with hour and place 2027-05-01 8:30 Europe/London",
        ),
        ("2027/5/1", "write 2027-05-01, or with hour and place 2027-05-01 09:00 Europe/London"),
        ("1 May 1027", "write 2027-01-15, or with hour and place 2027-01-15 09:00 Europe/London"),
        ("in spring", "write 2027-01-15, or with hour and place 2027-01-15 09:00 Europe/London"),
    ],
)
def test_of_a_release_in_other_words_the_day_that_is_meant_is_offered_first(said, hint):
    told = []
    assert read_moment(said, lambda code, offset=0, **facts: told.append((code, facts))) is None
    assert [facts["hint"] for code, facts in told if code == "moment-form"] == [hint]


@pytest.mark.parametrize(
    ("said", "hint"),
    [
        ("14 March 2027", "write '14 March'"),
        ("14.3.2027", "write '14 March'"),
        ("second Sunday of March 2027", "write 'second Sunday of March'"),
        ("1st Sunday in May, 2027", "write 'first Sunday of May'"),
        ("Easter 2027", "write 'Easter'"),
    ],
)
def test_of_a_day_of_one_year_the_same_of_every_year_is_offered(said, hint):
    told = []
    assert read_rule(said, lambda code, offset=0, **facts: told.append((code, facts))) is None
    assert [(code, facts["hint"]) for code, facts in told] == [("rule-form", hint)]


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("35 days befor Easter", "35 days before Easter"),
        ("35 dys before Eastr", "35 days before Easter"),
        ("2 weeks befor Easter", "14 days before Easter"),
        ("3 days after June solstise", "3 days after June solstice"),
        ("Mach 14", "14 March"),
        ("sprng", "spring"),
    ],
)
def test_of_a_day_of_every_year_that_is_spelt_wrong_the_whole_is_offered(said, meant):
    """Never the feast alone, which would move the day by weeks."""
    told = []
    assert read_rule(said, lambda code, offset=0, **facts: told.append((code, facts))) is None
    assert [(code, facts["hint"]) for code, facts in told] == [
        ("rule-form", f"did you mean '{meant}'?")
    ]


@pytest.mark.parametrize(
    ("said", "hint"),
    [
        ("2026-18-12", "months go from 01 to 12; did you mean 2026-12-18?"),
        ("2026-13-31", "months go from 01 to 12"),
        ("2026-31-02", "months go from 01 to 12"),  # there is no 31 February either
        ("2026-18-00", "months go from 01 to 12"),
    ],
)
def test_of_a_day_before_its_month_the_two_are_exchanged(said, hint):
    told = []
    assert read_day(said, lambda code, offset=0, **facts: told.append((code, facts))) is None
    assert [(code, facts["hint"]) for code, facts in told] == [("no-such-day", hint)]


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("January 6", "6 January"),
        ("6th of January", "6 January"),
        ("2027-01-06", "6 January"),
        ("the 2nd Sunday in May", "second Sunday of May"),
        ("1st Mon of September", "first Monday of September"),
        ("last Sunday before November", "last Sunday of October"),
        ("the last Friday before January", "last Friday of December"),
        ("first Monday after December", "first Monday of January"),
        ("two weeks before Easter", "14 days before Easter"),
        ("Mothering Sunday", "21 days before Easter"),
        ("April", "in April"),
        ("St Swithin", ""),
    ],
)
def test_a_day_of_every_year_is_understood_as_people_say_it(said, meant):
    """What is offered can be read; Mothering Sunday is the fourth in Lent (common knowledge, no source)."""
    assert meant_rule(said) == meant
    assert not meant or read_rule(meant, refuse) is not None


def test_a_day_with_strokes_is_understood_where_only_one_number_can_be_a_month():
    assert spoken_day("20/05/2028") == spoken_day("5/20/2028") == date(2028, 5, 20)
    assert spoken_day("05/06/2028") is None and spoken_day("31/02/2028") is None
