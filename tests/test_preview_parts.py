"""What the preview is made of: pictures that are drawn later, what is shown, and what counts as saved."""

import os
import threading
from datetime import date

import pytest

from packetgen.preview.board import Board, Sight
from packetgen.preview.kept import Interrupted, Kept
from packetgen.preview.page import strip, with_strip
from packetgen.preview.rounds import Rounds
from packetgen.preview.watching import Watch
from tests.content_builder import CHART, FERN, TINY, build

STORY = TINY[f"{FERN}/story.md"].strip().encode()


def never() -> bool:
    return False


def rounds(content, as_of=None, templates=None) -> Rounds:
    return Rounds(content, lambda: templates, lambda: as_of, Kept())


# --- pictures --------------------------------------------------------------------------------------


def test_a_picture_is_drawn_once_and_until_then_it_is_blank():
    kept, drawn = Kept(), []

    def make() -> bytes:
        drawn.append(1)
        return b"robin"

    assert kept.or_blank()("a", make).startswith(b"\x89PNG") and not drawn
    assert kept.missing == {"a"}
    assert kept.or_drawn(never, lambda done: None)("a", make) == b"robin"
    assert kept.or_blank()("a", make) == b"robin"
    assert drawn == [1] and kept.missing == frozenset()


def test_drawing_stops_between_two_pictures():
    kept, done = Kept(), []
    keep = kept.or_drawn(lambda: len(done) == 2, done.append)
    keep("a", lambda: b"a")
    keep("b", lambda: b"b")
    assert keep("a", lambda: b"other") == b"a"
    with pytest.raises(Interrupted):
        keep("c", lambda: b"c")
    assert done == [1, 2]


def test_a_picture_that_no_page_shows_is_drawn_when_it_is_asked_for():
    kept = Kept()
    blanks = kept.or_blank()
    share, page = blanks("share", lambda: b"share"), blanks("page", lambda: b"page")
    kept.aside = frozenset({"share"})
    assert kept.missing == {"page"}
    assert kept.or_drawn(lambda: True, lambda done: None)("share", lambda: b"") == share
    assert kept.drawn(share) == b"share"
    assert kept.drawn(page) == page and kept.drawn(b"a page") == b"a page"


def test_the_oldest_pictures_go_when_there_are_too_many(monkeypatch):
    monkeypatch.setattr("packetgen.preview.kept._MOST_BYTES", 10)
    kept = Kept()
    keep = kept.or_drawn(never, lambda done: None)
    for name in "abc":
        keep(name, lambda: b"1234")
    keep("d", lambda: bytes(40))
    blank = kept.or_blank()
    for name in "abcd":
        blank(name, bytes)
    assert kept.missing == {"a", "b", "c"}


# --- what is shown ---------------------------------------------------------------------------------


def test_the_version_changes_with_the_files_and_with_nothing_else():
    board = Board("now")
    assert board.sight.version == ""
    board.show({"a": b"1"}, advice=("rest",))
    first = board.sight
    board.show(None, errors=("torn",))
    assert (board.sight.version, board.sight.files) == (first.version, {"a": b"1"})
    assert board.sight.errors == ("torn",) and board.sight.advice == ()
    board.show({"a": b"1"})
    assert board.sight.version == first.version
    board.show({"a": b"2"})
    assert board.sight.version != first.version


def test_whoever_looks_hears_of_a_change_at_once_and_of_the_end():
    board = Board("now")
    seen = board.sight
    assert board.after(seen, 0.01) is None
    heard = []
    waiting = threading.Thread(target=lambda: heard.append(board.after(seen, 30)))
    waiting.start()
    board.show({"a": b"1"})
    waiting.join(30)
    assert heard == [board.sight]
    waiting = threading.Thread(target=lambda: heard.append(board.after(board.sight, 30)))
    waiting.start()
    board.close()
    waiting.join(30)
    assert heard[1] is None and not waiting.is_alive()


def test_words_of_an_author_are_words_and_not_markup():
    said = strip(Sight(errors=("a.md:1:1: <script>alert(1)</script>",), advice=("x: <b>",)))
    assert "<script>" not in said and "&lt;script&gt;alert(1)" in said and "&lt;b&gt;" in said


def test_advice_is_quiet_and_faults_are_not():
    assert strip(Sight()) == ""
    advice = strip(Sight(advice=("one", "two")))
    assert "<details><summary>2 pieces of advice: no fault" in advice and "alert" not in advice
    assert 'role="alert"' in strip(Sight(errors=("one",)))
    assert "The page below" not in strip(Sight(errors=("one",)))
    assert "Drawing pictures: 3 of 8 are done." in strip(Sight(drawn=3, to_draw=8))


def test_a_page_without_an_end_of_its_own_still_follows():
    html = with_strip(b"<p>moss", Sight(version="v-1"))
    assert html.startswith(b"<p>moss<link ") and b'data-version="v-1"' in html


# --- rounds ----------------------------------------------------------------------------------------


def test_a_look_shows_everything_at_once_and_drawing_fills_in_the_pictures(tmp_path):
    """Two looks at the same files are the same; the share pictures are left until they are asked for."""
    some = rounds(build(tmp_path / "content"))
    first = some.look()
    assert first.blanks and not first.errors and STORY in first.files["fern/index.html"]
    done = []
    part = some.draw(lambda: len(done) == 1, done.append)
    assert done == [1] and part.blanks == first.blanks - 1
    whole = some.draw(never, done.append)
    assert whole.blanks == 0 and done == [1, *range(1, first.blanks)]
    assert whole.files["fern/mounted-1200.jpg"].startswith(b"\xff\xd8")
    assert some.look() == whole
    assert whole.files["fern/share.png"].startswith(b"\x89PNG")


def test_a_fault_gives_its_line_and_no_site(tmp_path):
    content = build(tmp_path / "content", {CHART: ("rk..", "rk.")})
    made = rounds(content).look()
    assert made.files is None
    assert len(made.errors) == 1 and made.errors[0].startswith(f"{content}/{CHART}:3:")


def test_a_folder_that_is_not_there_is_a_fault(tmp_path):
    assert rounds(tmp_path / "nothing").look().errors


@pytest.mark.parametrize(
    ("as_of", "out"), [(None, True), (date(2027, 1, 14), False), (date(2027, 1, 15), True)]
)
def test_what_is_not_out_is_shown_to_its_author_unless_she_asks_for_a_day(tmp_path, as_of, out):
    made = rounds(build(tmp_path / "content"), as_of).look()
    assert any(STORY in data for data in made.files.values()) is out


def test_a_fault_of_the_tool_is_a_line_too(tmp_path, monkeypatch):
    def stumble(*_):
        raise ZeroDivisionError("no stitches")

    monkeypatch.setattr("packetgen.preview.rounds.public_files", stumble)
    made = rounds(build(tmp_path / "content")).look()
    assert made.errors == (
        "packetgen: a fault of the tool, not of yours: ZeroDivisionError: no stitches",
    )


# --- watching --------------------------------------------------------------------------------------


@pytest.fixture
def looks(tmp_path):
    """A folder with one file, and a way to say what the next look at it finds."""
    folder = tmp_path / "content"
    folder.mkdir()
    (folder / "a.md").write_text("moss")
    stop = threading.Event()
    watch = Watch(lambda: (folder,), stop)
    found = watch.looks()

    def following() -> set[str]:
        for _ in range(40):
            if names := {path.name for path in next(found)}:
                return names
        return set()

    yield folder, watch, following
    stop.set()
    assert list(found) == []


def test_each_saved_file_is_seen_once(looks):
    folder, watch, following = looks
    (folder / "a.md").write_text("fern")
    assert watch.changed()
    assert following() == {"a.md"}
    assert not watch.changed()
    (folder / "new").mkdir()
    (folder / "new" / "b.md").write_text("ivy")
    assert following() == {"b.md"}
    (folder / "a.md").unlink()
    assert following() == {"a.md"}


def test_a_file_of_the_same_size_and_time_put_in_place_of_another_is_seen(looks):
    folder, watch, following = looks
    old = (folder / "a.md").stat()
    (folder / ".next").write_text("fern")
    os.utime(folder / ".next", ns=(old.st_atime_ns, old.st_mtime_ns))
    os.replace(folder / ".next", folder / "a.md")
    assert following() == {"a.md"}


def test_hidden_files_and_copies_of_an_editor_are_not_looked_at(looks):
    folder, watch, following = looks
    for name in (".a.md.swp", "a.md~", "a.tmp", ".#a.md"):
        (folder / name).write_text("moss")
    (folder / ".git").mkdir()
    (folder / ".git" / "index").write_text("moss")
    assert not watch.changed()


def test_a_folder_that_goes_and_comes_back_is_watched_again(looks):
    folder, watch, following = looks
    aside = folder.with_name("aside")
    folder.rename(aside)
    assert following() == {"a.md"}
    aside.rename(folder)
    assert following() == {"a.md"}
    (folder / "a.md").write_text("fern")
    assert following() == {"a.md"}
