"""Occasions fall on the day that their rule says."""

from datetime import date

import pytest

from packetgen.model import DateRule
from packetgen.reckon.calendar import day_of
from tests.outside import rows


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


def test_a_fixed_day_is_that_day():
    assert day_of(DateRule("6 January", fixed=(1, 6)), 2027) == date(2027, 1, 6)


def test_leap_day_is_kept_on_the_last_of_february_in_common_years():
    rule = DateRule("29 February", fixed=(2, 29))
    assert day_of(rule, 2028) == date(2028, 2, 29)
    assert day_of(rule, 2027) == date(2027, 2, 28)
