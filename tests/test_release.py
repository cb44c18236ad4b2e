"""A site that is published before the release holds nothing of what comes out later."""

import re
from dataclasses import fields, is_dataclass, replace
from datetime import UTC, date, datetime
from enum import Enum

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.diagnostics import Place
from packetgen.model import Pattern
from packetgen.pipeline import proof, public_files
from packetgen.render.templates import environment
from tests.content_builder import PATTERN, SERIES, build
from tests.demo_patterns import BEFORE
from tests.test_write import tree

TEXT = (".html", ".css", ".svg", ".txt", ".xml", ".atom", ".ics", ".js", ".json")


def words_of(value: object) -> set[str]:
    """Every text that a noun holds, however deep, sentence by sentence."""
    match value:
        case str():
            return {part.strip() for part in re.split(r"[.!?\n]\s*", value)} - {""}
        case Enum() | Place() | bytes():
            return set()
        case dict():
            return set().union(*map(words_of, value.keys()), *map(words_of, value.values()))
        case tuple() | list():
            return set().union(*map(words_of, value))
        case _ if is_dataclass(value):
            return set().union(*(words_of(getattr(value, field.name)) for field in fields(value)))
    return set()


def secrets_of(pattern: Pattern, series) -> set[str]:
    """What only this pattern says: all its words without those that its teaser or its series may say."""
    told = (pattern.title, pattern.designer, pattern.occasion, pattern.id)
    around = replace(series, patterns=(), place=Place(""))
    mine = words_of(replace(pattern, place=Place("")))
    return {
        word
        for word in mine - words_of(told) - words_of(around)
        if len(word) > 11 and "/" not in word
    }


def texts(folder) -> dict[str, str]:
    return {path: data.decode() for path, data in tree(folder).items() if path.endswith(TEXT)}


@pytest.mark.slow
def test_before_the_release_no_word_of_a_pattern_is_published(demo, awaited):
    series = demo.reckoned[0].series
    published = texts(awaited)
    assert len(published) > 20
    searched = 0
    for pattern in series.patterns:
        secrets = secrets_of(pattern, series)
        searched += len(secrets)
        size = f"{pattern.grid.width} × {pattern.grid.height}"
        for path, text in published.items():
            found = [word for word in {*secrets, size} if word in text]
            assert not found, f"{path}: {found}"
    assert searched > 500


@pytest.mark.slow
def test_the_search_finds_all_that_once_it_is_out(demo, built):
    """Else the silence above would say nothing."""
    series = demo.reckoned[0].series
    published = "\n".join(text for path, text in texts(built / "site").items())
    for pattern in series.patterns:
        assert any(word in published for word in secrets_of(pattern, series))
        assert f"{pattern.grid.width} × {pattern.grid.height}" in published


@pytest.mark.slow
def test_before_the_release_a_pattern_has_a_page_with_a_close_up_and_a_day(demo, awaited):
    files = tree(awaited)
    for pattern in demo.reckoned[0].series.patterns:
        page = files[f"site/{pattern.id}/index.html"].decode()
        for word in (pattern.title, pattern.designer.name, "15 January 2027", "Europe/London"):
            assert word in page
        assert [path for path in files if path.startswith(f"site/{pattern.id}/detail-")]
        assert not [path for path in files if "mounted" in path]


@pytest.mark.slow
def test_a_notice_of_a_later_day_is_not_published(demo, awaited, built):
    series = demo.reckoned[0].series
    later = [notice for notice in series.notices if notice.on > BEFORE]
    assert later
    before, after = ("\n".join(texts(folder).values()) for folder in (awaited, built / "site"))
    for notice in later:
        assert notice.title not in before
        assert notice.title in after


TITLE_LINES = {PATTERN: "title: Fern by the Tap", SERIES: "title: The Garden Year"}


@pytest.fixture
def public(tmp_path, quick_pictures):
    return lambda *asked, **more: public_of(tmp_path, *asked, **more)


def public_of(tmp_path, as_of, said: dict[str, str] | None = None) -> dict[str, bytes]:
    """The public files of the tiny series, whose files (by path) say one line more."""
    changes = {
        path: (TITLE_LINES[path], f"{line}\n{TITLE_LINES[path]}")
        for path, line in (said or {}).items()
    }
    checked = proof(build(tmp_path, changes))
    assert checked.sound, [str(problem) for problem in checked.problems]
    return public_files(checked, environment(), as_of)


def pages(files: dict[str, bytes]) -> str:
    return "\n".join(data.decode() for path, data in files.items() if path.endswith(TEXT))


FERN_PAGE = "site/fern/index.html"


def test_a_release_is_at_an_hour_of_the_clock_where_the_author_lives(public):
    early, late = (public(datetime(2027, 1, 15, hour, 0, tzinfo=UTC)) for hour in (8, 9))
    assert b"A fern uncurls" not in early[FERN_PAGE] and b"A fern uncurls" in late[FERN_PAGE]


def test_a_pattern_may_come_out_later_than_its_series(public):
    later = {PATTERN: "release: 2027-05-01 09:00 Europe/London"}
    files = public(date(2027, 2, 1), later)
    assert b"A fern uncurls" not in files[FERN_PAGE]
    assert b"1 May 2027, 09:00" in files[FERN_PAGE]


def test_a_series_may_show_its_titles_alone(public):
    files = public(date(2026, 12, 1), {SERIES: "before_release: title"})
    assert not [path for path in files if "/fern" in path and not path.startswith("site/fonts")]
    said = pages(files)
    assert "Fern by the Tap" in said and "First warm day" not in said


def test_a_series_may_show_everything_before_its_release(public):
    files = public(date(2026, 12, 1), {SERIES: "before_release: all"})
    assert b"A fern uncurls" in files[FERN_PAGE]


def test_the_pictures_of_a_teaser_show_only_a_close_up(public):
    files = public(date(2026, 12, 1))
    drawn = {path for path in files if path.startswith("site/fern/") and path.endswith("jpg")}
    assert drawn and all("/detail-" in path for path in drawn)


def test_build_takes_a_day_and_says_what_a_day_is(tmp_path):
    folder = build(tmp_path / "content")
    said = CliRunner().invoke(
        main, ["build", "--content", str(folder), "--as-of", "the 15th", "--into", str(tmp_path)]
    )
    assert said.exit_code == 2
    assert (
        "'the 15th' is not how a day is written here; write for example 2027-01-15" in said.output
    )


@pytest.mark.parametrize(
    ("day", "told"),
    [
        (
            "2027-02-30",
            "there is no day '2027-02-30'; February 2027 has 28 days; write for example",
        ),
        ("2027-01-15 25:00", "there is no time '25:00' on that day; hours go from 00 to 23"),
        ("31 June", "there is no day '31 June'; June has 30 days; write for example"),
        ("soon", "'soon' is not how a day is written here; write for example 2027-01-15"),
    ],
)
def test_a_day_of_a_command_that_there_is_not_is_told_by_the_calendar(day, told):
    done = CliRunner().invoke(main, ["build", "--as-of", day])
    assert done.exit_code == 2
    assert told in " ".join(done.output.split())
