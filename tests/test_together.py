"""Files that belong together are written all or none, and a change that is cut off loses nothing of an author's
work, old or new."""

import os
import shutil
import signal
import sys
from functools import partial
from itertools import count
from pathlib import Path

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.diagnostics import Problems
from packetgen.load.files import UNFINISHED, ContentFolder
from packetgen.pipeline import beginnings, bringing, chart_edits, proof
from packetgen.write.together import ChangeWaits, written_together
from tests.content_builder import build, picture

# What a process does to a disk, as Python's audit hooks tell it ("Audit events table" of its library reference).
WRITES = ("os.rename", "os.mkdir", "os.rmdir", "os.remove")
COMMANDS = {
    "an edit": ("chart", "turn", "fern", "90"),
    "an edit with loss": ("chart", "crop", "fern", "--right", "2", "--lose"),
    "an edited copy": ("chart", "mirror", "fern", "left-right", "--to", "fern-right"),
    "a design brought in": (
        *("bring", "design.png", "--pattern", "fern", "--replace", "--drop-lines"),
    ),
    "a new pattern": ("begin", "--pattern", "Ferns", "--wide", "20", "--high", "20"),
}


def tree(folder):
    """Every file below the folder; of what was left beside by a change only that which is whole."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and f"{UNFINISHED}.part" not in path.parts
    }


def killed_after(writes, act):
    """Whether `kill -9` came after so many writings; else the act was done before."""
    child = os.fork()
    if child == 0:
        left = [writes]

        def count(event, given):
            opened = event == "open" and isinstance(given[2], int) and given[2] & os.O_CREAT
            if event in WRITES or opened:
                left[0] -= 1
                if left[0] < 0:
                    os.kill(os.getpid(), signal.SIGKILL)

        sys.addaudithook(count)
        act()
        os._exit(0)
    _, status = os.waitpid(child, 0)
    return os.WIFSIGNALED(status)


def intended(monkeypatch, *words):
    """What a command would have written together: root, new files, changed ones."""
    asked = []
    for module in (beginnings, bringing, chart_edits):
        monkeypatch.setattr(module, "written_together", lambda *given: asked.append(given))
    done = CliRunner().invoke(main, list(words))
    assert done.exit_code == 0, done.output
    ((root, new, changed),) = asked
    return root, new, changed


def move_all(folder):
    """As the line tells an author to do."""
    for path in list((folder / UNFINISHED).rglob("*")):
        place = folder / path.relative_to(folder / UNFINISHED)
        if path.is_file():
            place.parent.mkdir(parents=True, exist_ok=True)
            shutil.move(path, place)
    shutil.rmtree(folder / UNFINISHED)


@pytest.mark.skipif(not hasattr(os, "fork"), reason="kills a process of its own")
@pytest.mark.parametrize("words", COMMANDS.values(), ids=COMMANDS)
def test_whenever_a_change_is_killed_old_or_new_work_is_whole_and_it_is_said(
    tmp_path, monkeypatch, words, record_property
):
    """After each single writing: the files are as they were or as they shall be, or one line says which
    of them still wait, and moving these is all that there is to do."""
    content = build(tmp_path / "content")
    monkeypatch.chdir(tmp_path)
    Path("design.png").write_bytes(picture([["#a04030", "#6b503a"], ["#4f7942", (0, 0, 0, 0)]]))
    old = tree(content)
    root, new, changed = intended(monkeypatch, *words)
    assert root == Path("content") and tree(content) == old
    wanted = old | new | changed
    before_any = {path: data for path, data in new.items() if "_before" in path}
    kills, told = 0, set()
    while killed_after(kills, lambda: written_together(root, new, changed)):
        kills += 1
        there = tree(content)
        waiting = {path: data for path, data in there.items() if path.startswith(f"{UNFINISHED}/")}
        placed = {path: data for path, data in there.items() if path not in waiting}
        if not waiting:
            assert placed in (old, wanted)
        else:
            coming = {path.removeprefix(f"{UNFINISHED}/"): data for path, data in waiting.items()}
            assert placed | coming == wanted
            for path, data in changed.items():  # what is exchanged is kept, or was on purpose not
                assert placed[path] in (old[path], data)
                assert placed[path] == old[path] or before_any.items() <= placed.items()
            (line,) = [str(one) for one in proof(content).problems.errors]
            number = f"{len(coming)} file{'s' * (len(coming) > 1)}"
            assert line.startswith(
                f"{UNFINISHED}:1:1: a change of several files is not finished, and {number} must still"
            )
            told.add(frozenset(coming))
            done = CliRunner().invoke(main, ["chart", "show", "fern"])
            assert done.exit_code == 1 and f"content/{line}" in done.stderr
            move_all(content)
            assert tree(content) == wanted
        shutil.rmtree(content)
        build(content)
    assert tree(content) == wanted and not (content / UNFINISHED).exists()
    assert proof(content).sound
    assert len(told) == len(new) + len(changed)  # from all waiting down to the last
    record_property("shown", f"{' '.join(words[:2])}: {kills} kills, {len(told)} of them told")


def test_a_change_that_was_cut_off_stops_every_command_that_writes(tmp_path, monkeypatch):
    content = build(tmp_path / "content")
    monkeypatch.chdir(tmp_path)
    (content / UNFINISHED).mkdir()
    (content / UNFINISHED / "threads.yaml").write_text("name: Moss\n")
    Path("design.png").write_bytes(picture([["#a04030"]]))
    before = tree(content)
    for words in COMMANDS.values():
        done = CliRunner().invoke(main, list(words))
        assert done.exit_code == 1, done.output
        first, last = done.stderr.splitlines()[-2:]
        assert first == (
            "content/_next:1:1: a change of several files is not finished, and 1 file must still "
            "come from here; look again in a moment; if it was cut off, move all that is in '_next' to the "
            "same places outside of it [change-unfinished]"
        )
        assert last == "1 thing to mend; nothing was written."
    with pytest.raises(FileExistsError, match="cut off"):
        written_together(content, {"a": b"1"}, {})
    assert tree(content) == before


def test_an_empty_content_folder_with_such_a_change_is_told_too(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("content/_next/series").mkdir(parents=True)
    Path("content/_next/series/series.yaml").write_text("title: Mine\n")
    done = CliRunner().invoke(main, ["begin", "--yes"])
    assert done.exit_code == 1 and done.stderr.startswith("content/_next:1:1: ")
    assert tree(Path("content")) == {"_next/series/series.yaml": b"title: Mine\n"}


def test_a_file_that_somebody_else_has_written_meanwhile_stays(tmp_path):
    (tmp_path / "two").write_text("hers")
    with pytest.raises(FileExistsError):
        written_together(tmp_path, {"one": b"1", "deep/in/one": b"1", "two": b"2"}, {})
    assert tree(tmp_path) == {"two": b"hers"}
    assert [path.name for path in tmp_path.iterdir()] == ["two"]


def test_what_a_killed_change_left_before_it_was_whole_disturbs_no_later_one(tmp_path):
    (tmp_path / "_next.part").mkdir()
    (tmp_path / "_next.part" / "one").write_bytes(b"half")
    (tmp_path / "_next").mkdir()
    (tmp_path / "three").write_bytes(b"old")
    written_together(tmp_path, {"two": b"2"}, {"three": b"3"})
    assert tree(tmp_path) == {"three": b"3", "two": b"2"}


def test_stopping_it_puts_everything_back(tmp_path, monkeypatch):
    """Ctrl-C between two files."""
    (tmp_path / "one").write_bytes(b"old")
    (tmp_path / "two").write_bytes(b"old")
    real = os.replace

    def stopped(source, target):
        if Path(target).name == "two" and Path(source).read_bytes() == b"2":
            raise KeyboardInterrupt
        real(source, target)

    monkeypatch.setattr("packetgen.write.together.os.replace", stopped)
    with pytest.raises(KeyboardInterrupt):
        written_together(tmp_path, {"new/file": b"n"}, {"one": b"1", "two": b"2"})
    assert tree(tmp_path) == {"one": b"old", "two": b"old"}
    assert sorted(path.name for path in tmp_path.iterdir()) == ["one", "two"]


DONE, UNDONE, WAITS = range(3)


def spoilt(fails_at, works_then, act):
    """Act in a process whose disk refuses one writing, takes so many after it, and then none. What became of
    it (DONE, UNDONE or WAITS), and whether a writing was refused, and any after those that it took."""
    child = os.fork()
    if child == 0:
        done = 0

        def refuse(event, given):
            nonlocal done
            opened = event == "open" and isinstance(given[2], int) and given[2] & os.O_CREAT
            if event in WRITES or opened:
                done += 1
                if done == fails_at or done > fails_at + works_then:
                    raise OSError(5, "Input/output error")

        sys.addaudithook(refuse)
        became = DONE
        try:
            act()
        except ChangeWaits:
            became = WAITS
        except OSError:
            became = UNDONE
        os._exit(3 * ((done >= fails_at) + (done > fails_at + works_then)) + became)
    _, status = os.waitpid(child, 0)
    refused, became = divmod(os.waitstatus_to_exitcode(status), 3)
    return became, refused > 0, refused > 1


@pytest.mark.skipif(not hasattr(os, "fork"), reason="spoils a disk for a process of its own")
def test_where_even_putting_back_fails_the_change_waits_whole(tmp_path, record_property):
    """Whichever writing fails, and whichever of those that undo it: nothing is lost, old or new."""
    old = {"one": b"1 old", "two": b"2 old"}
    new, changed = {"new/file": b"n"}, {"one": b"1 new", "two": b"2 new"}
    back = waiting = fails_at = 0
    refused = True
    while refused:
        fails_at += 1
        for works_then in count():
            folder = tmp_path / f"{fails_at}-{works_then}"
            folder.mkdir()
            for path, data in old.items():
                (folder / path).write_bytes(data)
            act = partial(written_together, folder, new, changed)
            became, refused, again = spoilt(fails_at, works_then, act)
            there = {
                path: data for path, data in tree(folder).items() if not path.startswith(UNFINISHED)
            }
            if became == DONE:
                assert there == new | changed
            elif became == WAITS:
                waiting += 1
                assert ContentFolder(folder, told := Problems()).unfinished() and told.errors
                move_all(folder)
                assert tree(folder) == new | changed
            else:
                back += 1
                assert there == old and not (folder / UNFINISHED).exists()
            if not again:
                break  # with more that it takes, the same would come of it
    assert back and waiting
    record_property(
        "shown", f"writings refused: {back} changes put back, {waiting} wait to be finished"
    )
