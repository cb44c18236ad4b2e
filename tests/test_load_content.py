"""A content folder becomes nouns that know each other; what is left out gets its usual value."""

import dataclasses
import os
from datetime import UTC, date, datetime, timedelta

import pytest

from packetgen.load import load_content
from packetgen.model import Corner, Fraction, Sells, Stitch, Weave
from tests.content_builder import CHART, FERN, FINISH, MOSS, PATTERN, SERIES, TINY, build
from tests.demo_patterns import CONTENT


@pytest.fixture
def load(tmp_path):
    """Loads the tiny folder with changes; fails on any problem."""

    def loader(changes=None):
        content, problems = load_content(build(tmp_path / "content", changes))
        assert [str(problem) for problem in problems] == []
        return content

    return loader


@pytest.fixture
def series(load):
    return load().series[0]


def test_the_demo_folder_is_in_order():
    content, problems = load_content(CONTENT)
    assert [str(problem) for problem in problems] == []
    assert [len(series.patterns) for series in content.series] == [8]


def test_lengths_are_kept_in_one_unit(series):
    """50 yd is 45.72 m (international yard, 0.9144 m exactly, agreed 1959)."""
    assert [one.card.length_m for one in series.thread_sets] == [8, pytest.approx(45.72, abs=1e-12)]
    assert series.finish.paints[0].tin_ml == 100
    assert series.finish.magnets.diameter_mm == 10


@pytest.mark.parametrize(
    ("written", "metres"),
    [
        ("8 m", 8),
        ("800 cm", 8),
        ("315 in", 8.001),
        ("8 3/4 yd", 8.001),
        ("1/2 m", 0.5),
        ("8.5m", 8.5),
    ],
)
def test_a_length_may_be_written_in_any_unit(load, written, metres):
    """One inch is 25.4 mm exactly (international inch, 1959):
    315 in and 8 3/4 yd are both 8.001 m.
    """
    content = load({MOSS: ("length: 8 m", f"length: {written}")})
    assert content.series[0].thread_sets[0].card.length_m == pytest.approx(metres, abs=1e-12)


@pytest.mark.parametrize(("written", "hours"), [("1 h", 1), ("90 min", 1.5), ("2 days", 48)])
def test_a_drying_time_may_be_written_in_minutes_hours_and_days(load, written, hours):
    content = load({FINISH: ("dries_in: 1 h", f"dries_in: {written}")})
    assert content.series[0].finish.paints[0].dries_in_h == pytest.approx(hours)


def test_names_are_resolved(series):
    """A pattern holds its designer, cards, cloth and beads themselves."""
    pattern = series.patterns[0]
    assert pattern.designer is series.designers[0]
    assert pattern.thread_sets == series.thread_sets
    assert pattern.cloths[0].cloth.weave is Weave.EVENWEAVE
    assert pattern.cloths[0].colour.hex == "#f2f2ee"
    assert pattern.beads[0].colour.name == "hip red"
    assert series.to_come[0].designer is series.designers[0]
    assert series.finish.parts[0].painted[0].paint is series.finish.paints[0]


def test_what_is_left_out_has_its_usual_value(series):
    """A cloth is plain unless it says otherwise and worked over its own number of threads."""
    pattern = series.patterns[0]
    assert not pattern.cloths[0].cloth.hand_dyed
    assert pattern.cloths[0].over == pattern.cloths[0].cloth.over == 2
    assert series.thread_sets[0].backstitch_strands == 1
    assert pattern.key[0].stitch is Stitch.FULL
    assert (pattern.model_stitcher, pattern.finisher) == ("Hazel Penn", "")
    assert series.designers[0].sells is Sells.PDF
    assert pattern.photo is None


def test_a_cloth_may_be_worked_over_another_number_of_threads(load):
    content = load({PATTERN: ("colour: frost}", "colour: frost, over: 1}")})
    assert content.series[0].patterns[0].cloths[0].over == 1


def test_the_address_of_the_site_may_be_given(load):
    address = "https://almanac.example.org/"
    assert load().series[0].address is None
    assert (
        load({SERIES: ("finish: shelf", f"finish: shelf\naddress: {address}")}).series[0].address
        == address
    )


def test_two_numbers_are_a_blend(series):
    """The blend keeps its two colours in the author's order, in every thread set."""
    blend = series.patterns[0].key[2]
    assert [colour.number for colour in blend.threads["moss"]] == ["E2", "07"]
    assert [colour.number for colour in blend.threads["spool"]] == ["10", "14"]


def test_a_thread_may_come_from_another_card(load):
    """Its card is kept with the line where it is not the set's own, and only there."""
    named = '{moss: {card: spool, number: "14"}, spool: {card: spool, number: "10"}}'
    content = load({PATTERN: ('{moss: E2, spool: "10"}', named)})
    pattern = content.series[0].patterns[0]
    line = pattern.key[0]
    assert [colour.name for colour in line.threads["moss"]] == ["leaf"]
    assert {name: [card.id for card in cards] for name, cards in line.cards.items()} == {
        "moss": ["spool"]
    }
    assert [card.id for card in line.cards_in(pattern.thread_sets[1])] == ["spool"]


def test_all_threads_of_a_set_may_come_from_another_card(load):
    """Their numbers are none of the set's own card, and that is no fault."""
    key = TINY[PATTERN]
    for old, new in (("moss: E2", "10"), ("moss: K4", "12"), ('moss: [E2, "07"]', "14")):
        key = key.replace(old, f'moss: {{card: spool, number: "{new}"}}', 1)
    pattern = load({PATTERN: key}).series[0].patterns[0]
    names = [colour.number for line in pattern.key for colour in line.threads["moss"]]
    assert names == ["10", "12", "14"]


def test_a_blend_may_have_a_thread_of_another_card(load):
    content = load({PATTERN: ('[E2, "07"]', '[E2, {card: spool, number: "14"}]')})
    line = content.series[0].patterns[0].key[2]
    assert [card.id for card in line.cards["moss"]] == ["moss", "spool"]
    assert [colour.name for colour in line.threads["moss"]] == ["brick", "leaf"]


def test_a_braid_is_a_card_that_says_so(load):
    assert not load().series[0].thread_sets[1].card.braid
    braid = TINY["threads/spool.yaml"] + "braid: true\n"
    content = load({"threads/spool.yaml": braid, PATTERN: ('["10", "14"]', '"14"')})
    assert content.series[0].thread_sets[1].card.braid


def test_a_lazy_daisy_has_a_base_and_a_tip(load):
    content = load(
        {
            PATTERN: (
                "french_knots:",
                'lazy_daisies:\n  - {colour: k, path: "2,2 3,2.5"}\nfrench_knots:',
            )
        }
    )
    (daisy,) = content.series[0].patterns[0].daisies
    assert (daisy.mark, daisy.base, daisy.tip) == ("k", (2, 2), (3, 2.5))


def test_strands_of_a_key_line_are_kept(load):
    content = load(
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", strands: {moss: 3}}')}
    )
    assert content.series[0].patterns[0].key[0].strands == {"moss": 3}


def test_lines_knots_and_beads_lie_on_corner_coordinates(series):
    pattern = series.patterns[0]
    assert pattern.lines[0].points == ((1, 1), (4, 1), (4, 2.5))
    assert not pattern.lines[0].long
    assert [knot.at for knot in pattern.knots] == [(2.5, 2.5), (3, 3)]
    assert pattern.beads[0].at == (3.5, 1.5)


def test_a_long_stitch_has_two_ends(load):
    content = load(
        {
            PATTERN: (
                'backstitch:\n  - {colour: k, path: "1,1 4,1 4,2.5"}',
                'long_stitch:\n  - {colour: k, path: "1,1 5,3"}',
            )
        }
    )
    line = content.series[0].patterns[0].lines[0]
    assert line.long and line.points == ((1, 1), (5, 3))


def test_a_close_up_gives_fractional_stitches(series):
    assert series.patterns[0].fractions == (
        Fraction(3, 2, "k", Stitch.THREE_QUARTER, Corner.TOP_RIGHT),
        Fraction(4, 2, "k", Stitch.QUARTER, Corner.TOP_RIGHT),
    )


def test_the_release_knows_its_time_zone(series):
    """London keeps UTC in January (European Union summer time begins in March)."""
    assert series.release == datetime(2027, 1, 15, 9, 0, tzinfo=UTC)
    assert series.release.utcoffset() == timedelta(0)
    assert series.release.tzinfo.key == "Europe/London"
    assert series.notices[0].on == date(2026, 11, 20)


def test_places_are_those_of_the_file(series):
    """A later stage that complains about a cloth or a line points at the author's own words."""
    pattern = series.patterns[0]
    lines = TINY[PATTERN].split("\n")
    assert lines[pattern.cloths[0].place.line - 1][pattern.cloths[0].place.column - 1 :].startswith(
        "{cloth:"
    )
    assert lines[pattern.key[1].place.line - 1][pattern.key[1].place.column - 1 :].startswith("k:")
    assert lines[pattern.knots[1].place.line - 1][pattern.knots[1].place.column - 1 :].startswith(
        "3,3"
    )
    assert str(pattern.grid.place) == f"{CHART}:2:1"


def test_nothing_loaded_can_be_changed(series):
    """The nouns are frozen, and so are the tables in them."""
    pattern = series.patterns[0]
    with pytest.raises(dataclasses.FrozenInstanceError):
        pattern.title = "Another"
    with pytest.raises(TypeError):
        pattern.key[0].threads["moss"] = ()
    with pytest.raises(TypeError):
        series.thread_sets[0].card.colours["X"] = None


def test_patterns_stand_in_the_authors_order(load):
    """The order is that of series.yaml, whatever the folders are called."""
    second = {
        path.replace("/fern/", "/acorn/"): text for path, text in TINY.items() if "/fern/" in path
    }
    own = {
        path: text.replace("A fern uncurls.", "An acorn falls.").replace("rrbb", "rbbb")
        for path, text in second.items()
    }
    own["series/garden-year/acorn/story.md"] = "It lay below the oak.\n"
    content = load(own | {SERIES: ("order: [fern]", "order: [fern, acorn]")})
    assert [pattern.id for pattern in content.series[0].patterns] == ["fern", "acorn"]


def test_two_revisions_may_be_of_one_day(load):
    second = "  - {date: 2026-11-25, note: First issue.}\n  - {date: 2026-11-25, note: Again.}"
    content = load({PATTERN: ("  - {date: 2026-11-25, note: First issue.}", second)})
    assert [revision.note for revision in content.series[0].patterns[0].revisions] == [
        "First issue.",
        "Again.",
    ]


def test_series_stand_in_the_order_of_their_folders(load):
    other = {
        path.replace("garden-year", "a-year"): text
        for path, text in TINY.items()
        if "garden-year" in path
    }
    assert [series.id for series in load(other).series] == ["a-year", "garden-year"]


@pytest.mark.parametrize("name", ["_draft", ".hidden"])
def test_what_begins_with_an_underscore_or_a_dot_is_left_alone(load, name):
    load(
        {
            f"series/garden-year/{name}/pattern.yaml": "[",
            f"threads/{name}.yaml": "[",
            f"{FERN}/{name}": "[",
        }
    )


def test_a_mark_of_the_byte_order_and_foreign_line_ends_do_no_harm(load):
    """Files from other systems: a byte order mark at the start, CR LF or CR at line ends."""
    windows = b"\xef\xbb\xbf" + TINY[PATTERN].replace("\n", "\r\n").encode()
    old = TINY[CHART].replace("\n", "\r").encode()
    changed = load({PATTERN: windows, CHART: old}).series[0].patterns[0]
    plain = load().series[0].patterns[0]
    assert changed == plain and changed.knots[1].place == plain.knots[1].place


def test_story_and_notes_are_kept_as_written(series):
    assert series.patterns[0].story_markdown == "It grew behind the tap.\n"
    assert series.welcome_markdown == "Welcome to the garden.\n"
    assert series.finish.steps_markdown == "1. Saw the wood.\n"


def test_a_link_out_of_the_folder_is_not_followed(tmp_path):
    """Whatever a file points to, nothing outside the content folder is read."""
    secret = tmp_path / "secret.md"
    secret.write_text("for nobody")
    root = build(tmp_path / "content", {f"{FERN}/story.md": None})
    os.symlink(secret, root / FERN / "story.md")
    content, problems = load_content(root)
    assert content is None
    assert [str(problem) for problem in problems] == [
        f"{FERN}/story.md:1:1: 'story.md' lies outside its folder; "
        "move the file in, and write its bare name, without '/' or '..'"
    ]


def test_a_link_within_the_folder_is_followed(tmp_path):
    """Two patterns may share a text by a link."""
    root = build(tmp_path / "content", {f"{FERN}/story.md": None})
    os.symlink(root / "series/garden-year/welcome.md", root / FERN / "story.md")
    content, _ = load_content(root)
    assert content.series[0].patterns[0].story_markdown == "Welcome to the garden.\n"


def test_a_link_in_a_circle_is_told(tmp_path):
    root = build(tmp_path / "content", {f"{FERN}/story.md": None})
    os.symlink(root / FERN / "story.md", root / FERN / "story.md")
    _, problems = load_content(root)
    assert [(problem.place.path, problem.code) for problem in problems] == [
        (f"{FERN}/story.md", "file-unreadable")
    ]


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes in folders")
def test_a_pipe_is_not_waited_for(tmp_path):
    root = build(tmp_path / "content", {f"{FERN}/story.md": None})
    os.mkfifo(root / FERN / "story.md")
    _, problems = load_content(root)
    assert [problem.code for problem in problems] == ["file-unreadable"]


def test_a_file_name_that_is_no_text_does_no_harm(tmp_path):
    """A name in bytes that are no UTF-8, or with a line break in it, is told and passed over."""
    root = build(tmp_path / "content", {f"{FERN}/new\nline.txt": "x"})
    try:
        (root / FERN / os.fsdecode(b"\xff.txt")).write_text("x")
    except OSError:
        pytest.skip("this system refuses such names itself")
    _, problems = load_content(root)
    assert {problem.code for problem in problems} == {"file-name"}
    assert all(str(problem).isprintable() for problem in problems)
