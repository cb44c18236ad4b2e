"""A build makes what has changed, takes over what has not, and puts everything in place at once."""

import json
import os
import re
import shutil
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.load.series import load_series
from packetgen.pipeline import Order, build, foretold, proof
from packetgen.pipeline.reasons import reasons
from packetgen.record import ISSUED, MANIFEST, SIGNS
from packetgen.render import pdf, pictures
from tests.content_builder import CHART, CLOTH, FERN, MOSS, PATTERN, SERIES, TINY
from tests.content_builder import build as write_content
from tests.test_write import tree as whole_tree

OUT = date(2027, 1, 15)


def tree(folder: Path) -> dict[str, bytes]:
    """All files of a build but for what the disk says of its inputs."""
    files = whole_tree(folder)
    for name in (SIGNS, ISSUED):
        files.pop(name, None)
    return files


IVY = "series/garden-year/ivy"
TWO = {
    SERIES: TINY[SERIES].replace("order: [fern]", "order: [fern, ivy]"),
    f"{IVY}/pattern.yaml": TINY[PATTERN].replace("Fern by the Tap", "Ivy on the Wall"),
    f"{IVY}/chart.txt": TINY[CHART],
    f"{IVY}/story.md": "It climbed.\n",
    f"{IVY}/stitching.md": "Begin below.\n",
}
# A second series, of one pattern.
OTHER = {
    path.replace("garden-year", "winter-year"): text
    for path, text in TINY.items()
    if path.startswith("series/")
}


@pytest.fixture
def engine(monkeypatch, quick_pictures) -> list[str]:
    """Titles of the documents that the PDF engine sets; it is not really asked."""
    set_now = []

    def documents(html, assets, identifier, *rest):
        set_now.append(identifier.decode())
        papers = rest[2]
        return {paper: b"%PDF " + identifier + html.encode() for paper in papers}

    monkeypatch.setattr(pdf, "documents", documents)
    return set_now


class Desk:
    """An author's folder and her build."""

    def __init__(self, root: Path, changes: dict | None) -> None:
        """With the tiny content and its changes; None leaves what is there."""
        self.content, self.folder = root / "content", root / "build"
        if changes is not None:
            write_content(self.content, changes)

    def build(self, **more):
        facts = dict(content=self.content, build=self.folder, as_of=OUT) | more
        return build(Order(**facts))

    def write(self, path: str, text: str) -> None:
        (self.content / path).write_text(text)


@pytest.fixture
def desk(tmp_path, engine):
    return Desk(tmp_path, TWO)


def test_a_build_with_nothing_changed_makes_nothing(desk, engine):
    first = desk.build()
    assert first.sound and len(first.made) == len(first.outputs) > 50
    engine.clear()
    before = tree(desk.folder)
    again = desk.build()
    assert again.sound and not again.made and not again.gone and not engine
    assert tree(desk.folder) == before


def test_a_file_that_was_only_touched_has_not_changed(desk, engine):
    desk.build()
    engine.clear()
    os.utime(desk.content / MOSS)
    assert not desk.build().made and not engine


def test_an_edited_story_sets_its_own_packet_and_no_other(desk, engine):
    desk.build()
    engine.clear()
    desk.write(f"{FERN}/story.md", "It grew behind the tap, and then before it.\n")
    built = desk.build()
    assert engine == ["fern/1"]
    assert "site/fern/index.html" in built.made
    assert not [path for path in built.made if "ivy" in path or path.endswith((".jpg", ".png"))]


def test_what_is_taken_over_is_the_same_file_on_the_disk(desk):
    desk.build()
    packet = desk.folder / "packets/garden-year/ivy-a4.pdf"
    before = packet.stat().st_ino
    desk.write(f"{FERN}/story.md", "Another one.\n")
    desk.build()
    assert packet.stat().st_ino == before


def test_an_edited_chart_draws_its_own_pictures_and_no_others(desk, engine, monkeypatch):
    desk.build()
    drawn = []
    real = pictures.mounted_public
    monkeypatch.setattr(pictures, "mounted_public", lambda *a: drawn.append(a) or real(*a))
    desk.write(CHART, "rrbb\nrr..\n")
    assert desk.build().sound
    assert len(drawn) == 1


def test_a_changed_colour_of_a_card_reaches_every_packet_that_uses_the_card(desk, engine):
    desk.build()
    engine.clear()
    desk.write(MOSS, TINY[MOSS].replace("#4f7942", "#4f7943"))
    desk.build()
    assert sorted(engine) == ["fern/1", "ivy/1"]


def test_a_notice_sets_no_packet(desk, engine):
    desk.build()
    engine.clear()
    desk.write(SERIES, TWO[SERIES].replace("The linen is back", "The linen is gone"))
    built = desk.build()
    assert built.made and not engine


def test_a_new_title_reaches_the_calendar_in_the_other_packets(desk, engine):
    desk.build()
    engine.clear()
    desk.write(PATTERN, TINY[PATTERN].replace("Fern by the Tap", "Fern by the Pump"))
    desk.build()
    assert sorted(engine) == ["fern/1", "ivy/1"]


def test_another_day_makes_the_site_anew_and_no_packet(desk, engine):
    desk.build(as_of=date(2026, 12, 1))
    engine.clear()
    built = desk.build(as_of=OUT)
    assert "site/fern/index.html" in built.made and not engine
    assert "site/fern/detail-120.jpg" in built.gone


def test_a_later_day_on_which_nothing_comes_out_makes_nothing(desk, engine):
    desk.build(as_of=OUT)
    assert not desk.build(as_of=datetime(2027, 3, 1, 9, 0)).made


@pytest.mark.parametrize(
    "path",
    [
        "packets/garden-year/fern-a4.pdf",
        "packets/garden-year/fern.zip",
        "site/index.html",
        "site/fern/mounted-120.jpg",
        "site/site.css",
        "share/garden-year/fern-wide.png",
        "ledger/garden-year/fern.json",
    ],
)
def test_a_file_that_somebody_took_away_is_made_again(desk, path):
    desk.build()
    before = tree(desk.folder)
    (desk.folder / path).unlink()
    desk.build()
    assert tree(desk.folder) == before


def test_a_picture_that_somebody_painted_over_is_not_believed(desk):
    desk.build()
    picture = desk.folder / "site/fern/mounted-120.jpg"
    before = picture.read_bytes()
    picture.write_bytes(bytes(len(before)))
    desk.write(f"{FERN}/story.md", "Another one.\n")
    desk.build()
    assert picture.read_bytes() == before


@pytest.mark.parametrize("record", [None, b"", b"{}", b"[1"])
def test_without_a_record_that_can_be_believed_everything_is_made(desk, engine, record):
    desk.build()
    engine.clear()
    before = tree(desk.folder)
    if record is None:
        shutil.rmtree(desk.folder)
    else:
        (desk.folder / MANIFEST).write_bytes(record)
    assert desk.build().sound
    assert sorted(engine) == ["fern/1", "ivy/1"]
    assert tree(desk.folder) == before


def test_what_is_asked_afresh_is_made_whatever_there_is(desk, engine):
    desk.build()
    engine.clear()
    assert len(desk.build(afresh=True).made) > 50 and len(engine) == 2


def test_one_packet_asked_for_by_name_leaves_the_others(desk, engine):
    desk.build()
    engine.clear()
    desk.write(MOSS, TINY[MOSS].replace("#4f7942", "#4f7943"))
    built = desk.build(choose=lambda checked: frozenset({"ivy"}))
    assert engine == ["ivy/1"]
    assert "packets/garden-year/fern-a4.pdf" in built.outputs
    engine.clear()
    desk.build()
    assert engine == ["fern/1"]  # it was left behind, and is not forgotten


def test_a_pattern_that_is_taken_out_takes_its_files_with_it(desk):
    desk.build()
    desk.write(SERIES, TINY[SERIES])
    shutil.rmtree(desk.content / IVY)
    desk.build()
    assert not [path for path in tree(desk.folder) if "ivy" in path and path != MANIFEST]


def test_a_fault_in_the_content_leaves_the_last_build(desk):
    desk.build()
    before = tree(desk.folder)
    desk.write(CHART, "rrbb\nr?..\n")
    built = desk.build()
    assert not built.sound and tree(desk.folder) == before


def test_a_packet_that_cannot_be_set_leaves_the_last_build_and_hides_no_other(
    desk, monkeypatch, engine
):
    desk.build()
    before = tree(desk.folder)
    desk.write(MOSS, TINY[MOSS].replace("#4f7942", "#4f7943"))

    def refuse(html, assets, identifier, *rest):
        raise pdf.EngineComplaint(f"no room for {identifier.decode()}")

    monkeypatch.setattr(pdf, "documents", refuse)
    built = desk.build()
    assert [str(fault) for fault in built.faults] == ["no room for fern/1", "no room for ivy/1"]
    assert tree(desk.folder) == before


def test_a_fault_in_a_template_of_the_site_leaves_the_last_build(desk, tmp_path):
    desk.build()
    before = tree(desk.folder)
    own = tmp_path / "own" / "site"
    own.mkdir(parents=True)
    (own / "404.html").write_text("{% if %}")
    built = desk.build(own_templates=own.parent)
    (fault,) = built.faults
    assert str(fault).startswith("templates/site/404.html:1:1: ")
    assert not built.sound and tree(desk.folder) == before


def test_the_record_says_what_each_file_is(desk):
    """SHA-256 of every file there is, but for the record itself."""
    import hashlib

    desk.build()
    files = tree(desk.folder)
    read = json.loads(files.pop(MANIFEST))["outputs"]
    assert {path: hashlib.sha256(data).hexdigest() for path, data in files.items()} == {
        path: one["sha256"] for path, one in read.items()
    }


def test_a_build_tells_why_it_made_a_file(desk):
    desk.build()
    desk.write(f"{FERN}/story.md", "Another one.\n")
    desk.write(f"{IVY}/stitching.md", "Begin above.\n")
    why = dict(reasons(desk.build()))
    assert why["packets/garden-year/fern-a4.pdf"] == ("made anew: series/garden-year/fern/story.md")
    assert why["packets/garden-year/ivy-a4.pdf"] == (
        "made anew: series/garden-year/ivy/stitching.md"
    )
    assert why["site/fern/mounted-120.jpg"] == "as it was"


def test_a_packet_that_is_set_anew_and_comes_out_as_it_was_is_told_as_that(desk):
    """As after symbols were settled as the chart has them."""
    desk.build()
    runner = CliRunner().invoke(main, ["settle", "--content", str(desk.content)])
    assert runner.exit_code == 0, runner.output
    why = dict(reasons(desk.build()))
    assert why["packets/garden-year/fern-a4.pdf"] == "set anew, and came out as it was"


def test_advice_is_said_again_when_nothing_has_changed(desk):
    desk.write(f"{FERN}/stroy.md", "A slip in a name.\n")
    first, again = desk.build(), desk.build()
    said = [problem.printed for problem in first.problems]
    assert any("stroy.md" in line for line in said)
    assert list(again.advice) == said


def test_advice_on_a_pattern_that_did_not_change_is_counted_beside_one_that_did(desk):
    """One saved text does not bring back a line for each of a hundred patterns without a photograph."""
    first = desk.build()
    bare = [one.printed for one in first.problems if one.code == "photo-missing"]
    assert [FERN in line for line in bare] == [True, False] and first.advice == ()
    desk.write(f"{IVY}/story.md", "Another one.\n")
    again = desk.build()
    assert [one.printed for one in again.problems if IVY in one.place.path] == [
        one.printed for one in first.problems if IVY in one.place.path
    ]
    assert bare[0] in again.advice and bare[1] not in again.advice
    said = {one.printed for one in again.problems} | set(again.advice)
    assert said == {one.printed for one in first.problems}
    assert set(desk.build().advice) == said


def test_new_advice_is_said_though_its_folder_did_not_change(desk):
    """A coarser cloth tells of the patterns on it, whose own files are as they were."""
    first = desk.build()
    desk.write(CLOTH, TINY[CLOTH].replace("28", "18"))
    again = desk.build()
    thin = {one.place.path for one in again.problems if one.code == "coverage-thin"}
    assert thin == {PATTERN, f"{IVY}/pattern.yaml"}
    assert "coverage-thin" not in {one.code for one in first.problems}


# --- several series ---------------------------------------------------------------------------------


@pytest.fixture
def shelf(tmp_path, engine):
    return Desk(tmp_path, OTHER)


@pytest.fixture
def read(monkeypatch) -> list[str]:
    """Names of the series that are read."""
    names, real = [], load_series
    monkeypatch.setattr(
        "packetgen.load.content.load_series",
        lambda folder, name, *rest: names.append(name) or real(folder, name, *rest),
    )
    return names


WINTER = SERIES.replace("garden-year", "winter-year")


@pytest.mark.parametrize("name", ["garden-year", "winter-year"])
def test_a_series_in_which_nothing_changed_is_not_even_read(shelf, read, engine, name):
    """Not even the first one, in whose look the page above them all stands."""
    shelf.build()
    engine.clear()
    read.clear()
    before = tree(shelf.folder)
    shelf.write(f"{FERN.replace('garden-year', name)}/story.md", "Another one.\n")
    built = shelf.build()
    assert read == [name] and engine == ["fern/1"]
    assert "site/index.html" not in built.made
    assert tree(shelf.folder)["site/index.html"] == before["site/index.html"]


def test_a_build_says_how_much_of_what_begin_wrote_still_stands(desk):
    """What is laid aside is no more; what rests is not looked at."""
    remark = "# EXAMPLE: the chart. Draw your own over it.\n"
    desk.write(f"{FERN}/pattern.yaml", remark + TINY[f"{FERN}/pattern.yaml"])
    assert desk.build().examples == 1
    assert desk.build().examples == 0
    aside = "laid_aside: [{advice: example-remark, because: it teaches}]\n"
    desk.write(f"{FERN}/pattern.yaml", remark + TINY[f"{FERN}/pattern.yaml"] + aside)
    assert desk.build().examples == 0


def test_a_pattern_that_is_out_and_stitched_otherwise_needs_a_revision(desk):
    """Else two packets that differ are sold as one revision. Nothing of the kind before it is out, nor where a story
    or a price has changed."""

    def built(**more) -> list[str]:
        found = desk.build(**more)
        assert found.sound
        return [pattern.title for pattern in found.unrevised]

    early = date(2026, 12, 1)
    assert built(as_of=early) == []
    desk.write(CHART, "rrbb\nrr..\n")
    assert built(as_of=early) == []
    assert built() == []  # it comes out as it is
    desk.write(f"{FERN}/story.md", "It grew on.\n")
    assert built() == []
    desk.write(CHART, "rrrb\nrr..\n")
    order = Order(content=desk.content, build=desk.folder, as_of=OUT)

    def foretold_of() -> list[str]:
        return [of.title for of in foretold(order, proof(desk.content)).unrevised]

    fern = ["Fern by the Tap"]
    assert foretold_of() == fern
    assert built() == fern
    assert built() == foretold_of() == fern, "it is told until it is mended, though nothing is made"
    desk.write(f"{FERN}/story.md", "It grew on and on.\n")
    assert foretold_of() == fern
    assert built() == fern
    assert built(afresh=True) == fern
    desk.write(CHART, "rrbb\nrr..\n")
    assert built() == [], "it is stitched as it was"
    desk.write(CHART, "rrrb\nrr..\n")
    assert built() == fern
    again = "  - {date: 2027-01-15, note: Four stitches above.}\n"
    desk.write(PATTERN, TINY[PATTERN].replace("First issue.}\n", "First issue.}\n" + again))
    assert foretold_of() == []
    assert built() == []
    assert built(as_of=early) == []
    desk.write(CHART, "rrbb\nrr..\n")
    assert built(as_of=early) == [], "what is not out may be mended without a word"


def test_a_build_for_a_day_to_come_is_no_first_one_of_its_revision(desk):
    """It is made to look at; what is mended then needs no word, and is kept as the first when the day is there."""

    def built(chart: str, **more) -> list[str]:
        desk.write(CHART, chart)
        found = desk.build(**more)
        assert found.sound
        return [pattern.title for pattern in found.unrevised]

    first, second, third = "rrbb\nrr..\n", "rrrb\nrr..\n", "rbrb\nrr..\n"
    assert built(first, ahead=True) == built(second, ahead=True) == []
    assert built(third) == []
    assert built(second, ahead=True) == [], "it is no release"
    assert built(second) == ["Fern by the Tap"]
    assert built(third, ahead=True) == built(third) == []
    assert built(first) == ["Fern by the Tap"]


def test_the_first_build_on_the_day_itself_counts_also_where_it_makes_nothing_new(desk):
    desk.build(ahead=True)
    assert not desk.build().made
    desk.write(CHART, "rrrb\nrr..\n")
    order = Order(content=desk.content, build=desk.folder, as_of=OUT)
    checked = proof(desk.content)
    assert not foretold(replace(order, ahead=True), checked).unrevised
    assert len(foretold(order, checked).unrevised) == 1
    assert len(desk.build().unrevised) == 1


def test_advice_on_series_at_rest_is_counted_and_that_on_the_others_said(shelf):
    """And nothing of it is an error, nor hinders one from being found."""
    winter = FERN.replace("garden-year", "winter-year")
    for folder in (FERN, winter):
        shelf.write(f"{folder}/stroy.md", "A slip in a name.\n")

    more = (
        f"packetgen proof --content {shelf.content} tells more: what a buyer might complain of, and what is "
        "well done."
    )

    def said(code=0):
        words = ("build", "--workers", 1, "--as-of", OUT, "--content", shelf.content)
        told = CliRunner().invoke(main, [*map(str, words), "--into", str(shelf.folder)])
        assert told.exit_code == code, told.output
        assert told.stdout.splitlines()[-1:] == ([more] if code == 0 else [])
        return [
            line for line in told.stderr.splitlines() if re.search("to mend|of advice|stroy", line)
        ]

    look = f"of advice where nothing has changed: see packetgen proof --content {shelf.content}"
    first = said()
    assert len(first) == 2
    each = len(shelf.build(afresh=True).problems) // 2
    shelf.write(f"{winter}/story.md", "Another one.\n")
    assert said() == [line for line in first if "winter" in line] + [f"{each} pieces {look}"]
    assert said() == [f"{2 * each} pieces {look}"]
    shelf.write(f"{winter}/chart.txt", "rrbb\nr?..\n")
    assert said(1)[1:] == [f"{each} pieces {look}", "1 thing to mend; nothing was written."]


def test_the_page_above_several_series_takes_over_another_title(shelf, read):
    """For that the first series is read too."""
    shelf.build()
    read.clear()
    shelf.write(WINTER, TINY[SERIES].replace("The Garden Year", "The Winter Year"))
    shelf.build()
    assert set(read) == {"garden-year", "winter-year"}
    assert b"The Winter Year" in tree(shelf.folder)["site/index.html"]


def test_the_page_above_several_series_comes_back_when_it_is_lost(shelf):
    shelf.build()
    before = tree(shelf.folder)
    (shelf.folder / "site" / "index.html").unlink()
    shelf.build()
    assert tree(shelf.folder) == before


def test_a_build_by_steps_ends_as_one_made_afresh(shelf):
    """Whatever was edited in between, in whichever series."""
    other = FERN.replace("garden-year", "winter-year")
    shelf.build()
    for path, text in (
        (f"{other}/story.md", "Another one.\n"),
        (CHART, "rrbb\nrr..\n"),
        (CLOTH, TINY[CLOTH].replace("oatmeal", "straw")),
        (CLOTH, TINY[CLOTH].replace("#f2f2ee", "#f2f2ef")),
        (SERIES.replace("garden-year", "winter-year"), TINY[SERIES].replace("Twelve", "Nine")),
    ):
        shelf.write(path, text)
        assert shelf.build().sound
    by_steps = tree(shelf.folder)
    shutil.rmtree(shelf.folder)
    shelf.build()
    assert tree(shelf.folder) == by_steps


def test_a_second_series_moves_the_first_into_a_folder_of_its_own(tmp_path, engine):
    desk = Desk(tmp_path, {})
    desk.build()
    assert "site/fern/index.html" in tree(desk.folder)
    write_content(desk.content, OTHER)
    desk.build()
    files = tree(desk.folder)
    assert "site/garden-year/fern/index.html" in files and "site/fern/index.html" not in files
    assert b"winter-year/index.html" in files["site/index.html"]


def test_a_build_before_the_release_says_what_is_left_out_until_then(shelf):
    """Also where nothing has changed; after the release there is nothing to say."""

    def said(*words):
        words = ("build", "--workers", 1, *words, "--content", shelf.content)
        told = CliRunner().invoke(main, [*map(str, words), "--into", str(shelf.folder)])
        assert told.exit_code == 0, told.output
        return [line for line in told.stdout.splitlines() if "comes out on" in line]

    [line] = said("--as-of", "2026-12-24")
    assert (
        "Of The Garden Year and of 1 more series not all is out yet; something more comes out on 15 January 2027."
        in line
    )
    assert "With --as-of 2027-01-15 site and share are made" in line
    assert said("--as-of", "2026-12-24") == [line]
    assert said("--as-of", OUT) == []


def test_editions_that_a_build_was_not_asked_for_are_gone_and_it_says_so(desk):
    """A pattern's own papers, which another build makes as well, are no matter of it."""

    def said(*words):
        words = ("build", "--workers", 1, *words, "--content", desk.content)
        told = CliRunner().invoke(main, [*map(str, words), "--into", str(desk.folder)])
        assert told.exit_code == 0, told.output
        return [line for line in told.stdout.splitlines() if line.startswith("Taken away: ")]

    assert said("--as-of", OUT, "--edition", "written") == []
    (line,) = said("--as-of", OUT)
    assert line.startswith("Taken away: packets/garden-year/fern-written")
    assert "pattern.yaml lists it under editions, or --edition asks for it" in line
    assert said("--as-of", OUT) == []
    assert said("--as-of", "2026-12-24") == []


def test_a_build_as_of_today_is_the_build_as_it_stands_now(shelf):
    words = [
        "build",
        "--workers",
        "1",
        "--content",
        str(shelf.content),
        "--into",
        str(shelf.folder),
    ]
    assert CliRunner().invoke(main, words).exit_code == 0
    before = tree(shelf.folder)
    told = CliRunner().invoke(main, [*words, "--as-of", "today"])
    assert told.exit_code == 0 and "Nothing has changed" in told.stdout
    assert tree(shelf.folder) == before
