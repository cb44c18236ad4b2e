"""What of a series may be seen on a day: everything that is out, and nothing that comes later."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from packetgen.model import Notice, Revision
from packetgen.reckon.figures import figures
from packetgen.reckon.standing import release_of, standing
from packetgen.reckon.swaps import swaps
from tests.stitching import pattern, piece, series

LONDON = ZoneInfo("Europe/London")
RELEASE = datetime(2027, 7, 15, 9, tzinfo=LONDON)  # British summer time: 08:00 UTC
MOSS = pattern("mm", id="moss", title="Moss", revisions=(
    Revision(date(2027, 7, 1), "First issue."), Revision(date(2027, 8, 1), "A leaf mended."),
))  # fmt: skip
ROSE = pattern("tt", id="rose", title="Rose", release=RELEASE + timedelta(days=30))
YEAR = replace(
    series(MOSS, ROSE),
    release=RELEASE,
    notices=(
        Notice(date(2027, 7, 15), "Out", "Today."),
        Notice(date(2027, 7, 16), "After", "Later."),
    ),
)
FIGURES = tuple(figures(each, piece()) for each in YEAR.patterns)


def seen(as_of, **changes):
    return standing(replace(YEAR, **changes), FIGURES, as_of)


def titles(stand) -> list[str]:
    return [one.title for one in stand.series.patterns]


def test_without_a_day_everything_is_seen():
    stand = seen(None)
    assert stand.series == YEAR and stand.figures == FIGURES and not stand.awaited


@pytest.mark.parametrize(
    ("as_of", "out"),
    [
        (RELEASE - timedelta(seconds=1), []),
        (RELEASE, ["Moss"]),
        (datetime(2027, 7, 15, 7, 59, tzinfo=UTC), []),
        (datetime(2027, 7, 15, 8, 0, tzinfo=UTC), ["Moss"]),
        (datetime(2027, 7, 15, 8, 59), []),  # by the clock of the series
        (datetime(2027, 7, 15, 9, 0), ["Moss"]),
        (date(2027, 7, 14), []),
        (date(2027, 7, 15), ["Moss"]),  # a bare day is taken at its end
        (date(2027, 8, 14), ["Moss", "Rose"]),
    ],
)
def test_a_pattern_is_out_from_its_moment_on(as_of, out):
    stand = seen(as_of)
    assert titles(stand) == [each.pattern.title for each in stand.figures] == out


def test_a_pattern_of_a_series_comes_out_with_it_unless_it_says_otherwise():
    assert release_of(MOSS, YEAR) == RELEASE
    assert release_of(ROSE, YEAR) == RELEASE + timedelta(days=30)


def test_a_teaser_tells_title_designer_day_and_release_and_no_more():
    (moss, rose) = seen(date(2027, 7, 1)).awaited
    assert moss.teaser and (moss.title, moss.designer, moss.release) == (
        "Moss",
        MOSS.designer,
        RELEASE,
    )
    assert rose.release == RELEASE + timedelta(days=30)
    assert set(vars(moss)) == {"pattern_id", "title", "designer", "occasion", "release"}


def test_the_calendar_knows_what_is_awaited_and_leads_to_its_teaser():
    calendar = swaps(seen(date(2027, 7, 20)).series)
    assert {(swap.title, swap.pattern_id) for swap in calendar} == {
        ("Moss", "moss"),
        ("Rose", "rose"),
    }


def test_a_series_that_shows_titles_only_gives_no_designer_no_day_and_no_picture():
    stand = seen(date(2027, 7, 1), before_release="title")
    assert [one.title for one in stand.awaited] == ["Moss", "Rose"]
    assert not any(one.teaser for one in stand.awaited)
    assert not stand.teased and not swaps(stand.series)


def test_a_series_may_show_all_before_its_release():
    stand = seen(date(2027, 7, 1), before_release="all")
    assert titles(stand) == ["Moss", "Rose"] and not stand.awaited


def test_only_what_has_a_teaser_is_drawn_for_one():
    stand = seen(date(2027, 7, 20))
    assert [each.pattern.id for each in stand.teased] == ["rose"]


@pytest.mark.parametrize(
    ("as_of", "notices", "revisions"),
    [
        (date(2027, 7, 15), ["Out"], 1),
        (date(2027, 7, 31), ["Out", "After"], 1),
        (date(2027, 8, 1), ["Out", "After"], 2),
        # Half past midnight in London is still the day before by UTC.
        (datetime(2027, 7, 15, 23, 30, tzinfo=UTC), ["Out", "After"], 1),
    ],
)
def test_notices_and_corrections_are_seen_from_their_day_on(as_of, notices, revisions):
    stand = seen(as_of)
    assert [notice.title for notice in stand.series.notices] == notices
    moss = next(one for one in stand.series.patterns if one.id == "moss")
    assert len(moss.revisions) == revisions
    assert stand.figures[0].pattern == moss


def test_a_pattern_that_is_out_keeps_its_first_issue_whatever_its_date():
    late = replace(MOSS, revisions=(Revision(date(2028, 1, 1), "First issue."),))
    stand = standing(replace(YEAR, patterns=(late,)), (figures(late, piece()),), date(2027, 7, 15))
    assert len(stand.series.patterns[0].revisions) == 1


@pytest.mark.parametrize(
    ("as_of", "until"),
    [
        # A notice's day; the first issue's is earlier, and nothing comes out on it.
        (date(2027, 6, 1), datetime(2027, 7, 15, tzinfo=LONDON)),
        (date(2027, 7, 14), datetime(2027, 7, 15, tzinfo=LONDON)),
        (datetime(2027, 7, 15, 8, 0), RELEASE),
        (date(2027, 7, 15), datetime(2027, 7, 16, tzinfo=LONDON)),
        (date(2027, 7, 20), datetime(2027, 8, 1, tzinfo=LONDON)),  # a correction's day begins
        (date(2027, 8, 1), RELEASE + timedelta(days=30)),
        (date(2027, 8, 14), None),
        (None, None),
    ],
)
def test_a_series_stands_until_something_more_comes_out(as_of, until):
    assert seen(as_of).until == until
    if until:
        assert seen(until).since == until
        assert seen(until) != seen(until - timedelta(microseconds=1))


@pytest.mark.parametrize(
    ("before_release", "until"),
    [("teaser", RELEASE), ("title", RELEASE), ("all", datetime(2027, 7, 5, tzinfo=LONDON))],
)
def test_a_correction_before_the_release_comes_out_with_its_pattern_unless_all_is_shown(
    before_release, until
):
    mended = replace(MOSS, revisions=(*MOSS.revisions[:1], Revision(date(2027, 7, 5), "Mended.")))
    early = replace(YEAR, patterns=(mended,), notices=(), before_release=before_release)
    before = date(2027, 7, 1)
    assert standing(early, (figures(mended, piece()),), before).until == until
