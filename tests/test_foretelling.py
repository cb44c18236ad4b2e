"""`proof --against` says what the build that follows really does."""

import re
from datetime import date, timedelta

import pytest
from PIL import Image

from packetgen.edition_names import EDITION_NAMES
from packetgen.pipeline import Order, foretold, packet_files, proof
from packetgen.pipeline.foretelling import Days, Kind
from packetgen.pipeline.packets import packet_paths
from packetgen.pipeline.reasons import reasons
from packetgen.render import pictures
from tests.content_builder import CHART, CLOTH, FERN, FINISH, MOSS, SERIES, TINY, picture
from tests.content_builder import build as write_content
from tests.running import OUT as OUT_DAY
from tests.running import run
from tests.test_builds import IVY, OTHER, OUT, TWO, Desk, engine, tree  # noqa: F401

COLOURED = [["#a04030", "#4f7942"] * 40] * 50


@pytest.fixture
def wide_pictures(monkeypatch, engine):  # noqa: F811
    """Plain, but as wide as real ones, and each one of its own; titles of what was drawn."""
    drawn = []

    def plain(*facts, **_):
        drawn.append(facts)
        return Image.new("RGB", (1200, 800 + len(drawn) % 7), (len(drawn) % 251, 90, 90))

    for name in ("bench", "gathering", "mounted_public", "detail", "share_picture"):
        monkeypatch.setattr(pictures, name, plain)
    return drawn


@pytest.fixture
def desk(tmp_path, wide_pictures):
    return Desk(tmp_path, TWO)


@pytest.fixture
def shelf(tmp_path, wide_pictures):
    return Desk(tmp_path, OTHER)


def foretold_at(desk, **more):
    """What is foretold; nothing is written for it."""
    before = whole(desk)
    facts = dict(content=desk.content, build=desk.folder, as_of=OUT) | more
    found = foretold(Order(**facts), proof(desk.content))
    assert whole(desk) == before
    return found


def whole(desk):
    """Every file beside the content, with what the disk says of it."""
    files = [path for path in desk.folder.parent.rglob("*") if desk.content not in path.parents]
    return {path: path.stat().st_mtime_ns for path in files}


def compared(desk, engine, drawn, **more):  # noqa: F811
    """Foretell, then build: the two must agree. Gives what was foretold."""
    found = foretold_at(desk, **more)
    engine.clear()
    drawn.clear()
    built = desk.build(**more)
    assert built.sound
    said = dict(found.lines)
    new = {path for path, what in said.items() if what == "new"}
    gone = {path for path, what in said.items() if what == "gone"}
    sure = {path for path, what in said.items() if what.startswith("made anew: ")}
    perhaps = {path for path, what in said.items() if "may change: " in what}
    assert new == set(built.outputs) - set(built.before)
    assert gone == set(built.gone)
    assert new | sure <= set(built.made) <= new | sure | perhaps
    of_kind = {Kind.NEW: new, Kind.MADE_ANEW: sure, Kind.MAY_CHANGE: perhaps, Kind.GONE: gone}
    for kind, paths in of_kind.items():
        assert {path for path, one in found.kinds.items() if one is kind} == paths
    assert found.left == len(built.outputs) - len(new | sure | perhaps)
    why = dict(reasons(built))
    for path in set(built.made) - new:
        assert said[path].partition(": ")[2] == why[path].partition(": ")[2], path
    assert found.packets == sum(name in ("fern/1", "ivy/1") for name in engine)
    assert bool(found.pictures) == bool(drawn)
    assert not foretold_at(desk, **more).work  # and then nothing is left to do
    return found


def test_where_nothing_has_changed_nothing_is_foretold(desk):
    desk.build()
    found = foretold_at(desk)
    assert not found.lines and not found.work and found.left == len(desk.build().outputs)


def test_an_edited_story(desk, engine, wide_pictures):  # noqa: F811
    desk.build()
    desk.write(f"{FERN}/story.md", "It grew behind the tap, and then before it.\n")
    said = dict(compared(desk, engine, wide_pictures).lines)
    because = f"{FERN}/story.md"
    assert said["packets/garden-year/fern-a4.pdf"] == f"set anew, may change: {because}"
    assert said["site/fern/index.html"] == f"made anew: {because}"
    assert not [path for path in said if "ivy" in path or path.endswith((".jpg", ".png"))]


def test_an_edited_thread_card(desk, engine, wide_pictures):  # noqa: F811
    desk.build()
    desk.write(MOSS, TINY[MOSS].replace("#4f7942", "#4f7943"))
    found = compared(desk, engine, wide_pictures)
    said = dict(found.lines)
    assert found.packets == 2
    assert said["site/fern/mounted-480.jpg"] == "drawn anew, may change: threads/moss.yaml"
    # A page names its pictures by their width, and says their height, which is not known yet.
    assert said["site/fern/index.html"].endswith("may change: threads/moss.yaml")


def test_an_edited_outline_of_a_shaped_part(tmp_path, engine, wide_pictures):  # noqa: F811
    """Its templates are set anew; nothing is known of them before, and nothing of them is foretold after a story."""
    shaped = TINY[FINISH].replace("120,120 0,120", "120,110 110,120 0,120")
    desk, papers = Desk(tmp_path, {**TWO, FINISH: shaped}), "site/garden-year-parts-a4.pdf"
    desk.build()
    desk.write(f"{FERN}/story.md", "It grew behind the tap, and then before it.\n")
    assert papers not in dict(compared(desk, engine, wide_pictures).lines)
    desk.write(FINISH, shaped.replace("120,110 110,120", "120,105 105,120"))
    said = dict(compared(desk, engine, wide_pictures).lines)
    assert said[papers] == f"set anew, may change: {FINISH}"


def test_an_edited_chart(desk, engine, wide_pictures):  # noqa: F811
    desk.build()
    desk.write(CHART, "rrbb\nrr..\n")
    said = dict(compared(desk, engine, wide_pictures).lines)
    assert said["packets/garden-year/fern-a4.pdf"].startswith("set anew, may change: ")
    assert "packets/garden-year/ivy-a4.pdf" not in said
    assert {"site/fern/mounted-480.jpg", "share/garden-year/fern-wide.png"} <= set(said)
    assert "site/ivy/mounted-480.jpg" not in said


def test_a_template_of_one_s_own(desk, engine, wide_pictures, tmp_path):  # noqa: F811
    desk.build()
    own = tmp_path / "own"
    for name in ("site/404.html", "packet/notes.html"):
        (own / name).parent.mkdir(parents=True)
        (own / name).write_text("<p>Nothing grows here.</p>")
    said = dict(compared(desk, engine, wide_pictures, own_templates=own).lines)
    assert said["site/404.html"] == "made anew: own templates/site/404.html"
    assert said["packets/garden-year/ivy.zip"] == (
        "set anew, may change: own templates/packet/notes.html"
    )


def test_another_day(desk, engine, wide_pictures):  # noqa: F811
    before = date(2026, 12, 1)
    desk.build(as_of=before)
    said = dict(compared(desk, engine, wide_pictures, as_of=OUT).lines)
    assert said["site/fern/mounted-1200.jpg"] == "new"
    assert said["site/fern/detail-1200.jpg"] == "gone"
    assert said["site/index.html"].endswith("another day")
    assert not [path for path in said if path.startswith(("packets/", "ledger/"))]
    compared(desk, engine, wide_pictures, as_of=before)


def test_the_day_of_the_build_that_is_there_is_known(desk):
    """All the days that give its site, and one of them to type."""
    desk.build()
    shown = foretold_at(desk, as_of=date(2026, 12, 1)).shown
    assert shown == Days(date(2027, 1, 15), None) and shown.one == date(2027, 1, 15)
    desk.build(as_of=date(2026, 12, 1))
    shown = foretold_at(desk).shown
    assert shown == Days(date(2026, 11, 20), date(2027, 1, 14)) and shown.one == date(2026, 11, 20)
    assert not foretold_at(desk, as_of=shown.one).lines
    assert not foretold_at(desk, as_of=shown.last).lines
    for outside in (shown.first - timedelta(days=1), shown.last + timedelta(days=1)):
        assert foretold_at(desk, as_of=outside).lines


@pytest.mark.parametrize(
    "path",
    [
        "packets/garden-year/fern-a4.pdf",
        "site/index.html",
        "site/fern/mounted-800.jpg",
        "ledger/ledger.schema.json",
    ],
)
def test_a_file_that_was_taken_away(desk, engine, wide_pictures, path):  # noqa: F811
    desk.build()
    (desk.folder / path).unlink()
    found = compared(desk, engine, wide_pictures)
    assert dict(found.lines)[path].endswith("it was taken away or changed in the build folder")


def test_another_edition(desk, engine, wide_pictures):  # noqa: F811
    desk.build()
    found = compared(desk, engine, wide_pictures, editions=("tablet", "written"))
    said = dict(found.lines)
    assert said["packets/garden-year/fern-tablet.pdf"] == "new"
    assert said["packets/garden-year/fern-written.txt"] == "new"
    assert (
        said["packets/garden-year/fern.zip"]
        == "set anew, may change: the editions that are asked for"
    )


def test_a_pattern_that_comes_and_one_that_goes(tmp_path, engine, wide_pictures):  # noqa: F811
    desk = Desk(tmp_path, {})
    desk.build()
    write_content(desk.content, TWO)
    said = dict(compared(desk, engine, wide_pictures).lines)
    assert said["packets/garden-year/ivy.zip"] == said["site/ivy/mounted-480.jpg"] == "new"
    desk.write(SERIES, TINY[SERIES])
    for path in sorted((desk.content / IVY).iterdir()):
        path.unlink()
    (desk.content / IVY).rmdir()
    said = dict(compared(desk, engine, wide_pictures).lines)
    assert said["packets/garden-year/ivy.zip"] == said["site/ivy/mounted-480.jpg"] == "gone"


def test_a_photo_says_itself_how_wide_its_pictures_are(desk, engine, wide_pictures):  # noqa: F811
    desk.build()
    (desk.content / FERN / "photo.png").write_bytes(picture(COLOURED))
    said = dict(foretold_at(desk).lines)
    made = desk.build()
    new = {path for path, what in said.items() if what == "new"}
    assert new == set(made.outputs) - set(made.before) != set()
    assert {path for path, what in said.items() if what == "gone"} == set(made.gone) != set()


def test_a_packet_that_is_given_away(tmp_path, engine, wide_pictures):  # noqa: F811
    pattern = f"{FERN}/pattern.yaml"
    start, end = TINY[pattern].index("sold_at:"), TINY[pattern].index("revisions:")
    free = TINY[pattern][:start] + TINY[pattern][end:] + "given_away: [packet]\n"
    desk = Desk(tmp_path, TWO | {pattern: free})
    desk.build()
    desk.write(f"{FERN}/story.md", "Another one.\n")
    said = dict(compared(desk, engine, wide_pictures).lines)
    assert said["site/fern/fern-a4.pdf"] == f"set anew, may change: {FERN}/story.md"


def test_several_series(shelf, engine, wide_pictures):  # noqa: F811
    shelf.build()
    other = FERN.replace("garden-year", "winter-year")
    shelf.write(f"{other}/story.md", "Another one.\n")
    said = dict(compared(shelf, engine, wide_pictures).lines)
    assert "site/winter-year/fern/index.html" in said
    assert not [path for path in said if "garden-year" in path]
    shelf.write(CLOTH, TINY[CLOTH].replace("#f2f2ee", "#f2f2ef"))
    assert compared(shelf, engine, wide_pictures).packets == 2


def test_one_by_one_everything_is_foretold_of_a_build_that_is_another_version_s(desk):
    desk.build()
    before = set(tree(desk.folder))
    (desk.folder / "manifest.json").write_text("{}")
    found = foretold_at(desk)
    assert {what for _, what in found.lines} == {"new"}
    assert {path for path, _ in found.lines} == before - {"manifest.json"}


@pytest.mark.slow
def test_the_paths_of_a_packet_are_those_of_its_files(tmp_path, engine, quick_pictures):  # noqa: F811
    from packetgen.render.templates import environment

    (each,) = proof(write_content(tmp_path / "content")).reckoned
    (figure,) = each.figures
    for editions in (None, frozenset(), frozenset(EDITION_NAMES)):
        files = packet_files(each.series, figure, b"", editions, environment())
        assert set(files) == set(packet_paths(each.series, figure.pattern, editions))


# --- what a person types --------------------------------------------------------------------------


@pytest.mark.slow
def test_the_command_tells_and_the_build_does(last_good):
    against = ("proof", "--against", "build", *OUT_DAY)
    assert "A build would change nothing: " in run(*against, folder=last_good).stdout
    (last_good / "content" / FERN / "story.md").write_text("It grew on.\n")
    said = run(*against, folder=last_good).stdout
    assert f"\nFor {FERN}/story.md:\n  " in said, "many files are told together"
    assert "\n  site/fern/index.html: made anew\n" in said
    assert "\n  packets/garden-year/fern-a4.pdf: set anew, may change\n" in said
    assert "A build would set 1 packet and fill the pages of 1 series. Its files: " in said
    assert (
        "site/fern/index.html: made anew"
        in run("build", "--why", *OUT_DAY, folder=last_good).stdout
    )
    assert "A build would change nothing: " in run(*against, folder=last_good).stdout


@pytest.mark.slow
def test_a_correction_without_a_revision_is_told_where_it_belongs_until_it_has_one(last_good):
    chart, pattern = (last_good / "content" / FERN / name for name in ("chart.txt", "pattern.yaml"))
    series = last_good / "content" / SERIES
    series.write_text(series.read_text().replace("release: 2027-01-15", "release: 2020-01-15"))
    run("build", folder=last_good)
    chart.write_text("rrrb\nrr..\n")
    assert "first built" not in run("build", "--as-of", "2999-01-01", folder=last_good).stdout
    line = (
        rf"^content/{FERN}/pattern\.yaml:\d+:\d+: advice: Fern by the Tap has another chart, key or lines than revision 1 "
        r"when it was first built into 'build'; if it is sold already, add under 'revisions', for example, "
        r"(- \{date: 2\d{3}-\d\d-\d\d, note: .*\}) \[revision-missing\]$"
    )
    against = ("proof", "--against", "build", "--strict")
    assert re.search(line, run(*against, folder=last_good, code=1).stdout, re.M)
    assert re.search(line, run("build", folder=last_good).stdout, re.M)
    again = run("build", folder=last_good).stdout
    assert "Nothing has changed" in again
    told = re.search(line, again, re.M)
    said = run(*against, folder=last_good, code=1).stdout
    assert re.search(line, said, re.M)
    assert "--strict: 1 pattern without the revision that buyers need to be told of." in said
    text = pattern.read_text()
    pattern.write_text(re.sub(r"(revisions:\n(?: .*\n)+)", rf"\1  {told[1]}\n", text))
    assert "first built" not in run("build", folder=last_good).stdout


@pytest.mark.slow
def test_what_only_the_day_makes_other_is_one_line_with_the_day_to_type(last_good):
    said = run("proof", "--against", "build", "--as-of", "2026-12-01", folder=last_good).stdout
    assert "another day\n" not in said
    (line,) = (one for one in said.splitlines() if "files differ" in one)
    found = re.fullmatch(
        r"Nothing of yours has changed\. This looks as of 2026-12-01, and 'build' shows what stands from (\S+) on; \d+ "
        r"files differ for that alone\. To compare with the day of 'build', add --as-of (\S+)\.",
        line,
    )
    assert found and found[1] == found[2]
    again = run("proof", "--against", "build", "--as-of", found[1], folder=last_good).stdout
    assert "A build would change nothing: " in again


def test_what_goes_for_the_day_alone_is_not_told_for_a_change_that_would_make_it_anew(desk):
    desk.build()
    desk.write(CHART, "rrrb\nrr..\n")
    found = foretold_at(desk, as_of=date(2026, 12, 1))
    gone = {path for path, what in found.lines if what == "gone"}
    assert "site/fern/mounted-1200.jpg" in gone and gone <= found.for_the_day
    assert "packets/garden-year/fern-a4.pdf" not in found.for_the_day


@pytest.mark.slow
def test_beside_other_changes_those_of_the_day_alone_are_counted_and_not_told_one_by_one(last_good):
    """A file is not said to change for the story that would come out as it is on the day of its build."""
    (last_good / "content" / FERN / "story.md").write_text("It grew on and on.\n")
    said = run("proof", "--against", "build", "--as-of", "2026-12-01", folder=last_good).stdout
    found = re.search(
        r"^This looks as of .* more, not listed, differ for that alone\. To compare .* add (--as-of \S+)\.$",
        said,
        re.M,
    )
    assert found
    again = run("proof", "--against", "build", *found[1].split(), folder=last_good).stdout
    assert "not listed" not in again
    told, told_again = (
        {line.split(": ")[0].strip() for line in text.splitlines() if ".html: " in line}
        for text in (said, again)
    )
    assert told <= told_again and {"site/fern/index.html"} <= told


def test_what_is_no_build_is_wrong_usage(tmp_path):
    content = write_content(tmp_path / "content")
    said = run("proof", "--content", content, "--against", content, folder=tmp_path, code=2)
    assert "holds no build" in said.stderr
    run("proof", "--against", "nothing", folder=tmp_path, code=2)
    said = run("proof", "--as-of", "2027-01-15", folder=tmp_path, code=2)
    assert "say which with --against" in said.stderr


def test_content_that_is_wrong_is_said_first(tmp_path):
    content = write_content(tmp_path / "content", {CHART: "rrbb\nr?..\n"})
    (tmp_path / "build").mkdir()
    (tmp_path / "build" / "manifest.json").write_text("{}")
    said = run("proof", "--content", content, "--against", "build", folder=tmp_path, code=1)
    assert "1 thing to mend" in said.stdout and "A build would" not in said.stdout
