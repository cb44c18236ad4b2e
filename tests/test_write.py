"""A build is swapped in whole, and the last good one survives a failure."""

import io
import os
import subprocess
import sys
import zipfile
from contextlib import suppress
from pathlib import Path
from random import Random
from threading import Thread
from time import sleep

import pytest

from packetgen.write import next_build, staging, swap_in, zipped
from packetgen.write.exchange import CannotExchange


def tree(folder):
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def test_a_build_replaces_the_one_before(tmp_path):
    swap_in(tmp_path, {"site/index.html": b"one", "site/old.html": b"gone", "packets/a.pdf": b"1"})
    swap_in(tmp_path, {"site/index.html": b"two", "packets/a.pdf": b"2"})
    assert tree(tmp_path) == {"site/index.html": b"two", "packets/a.pdf": b"2"}


def test_one_packet_made_anew_leaves_the_others(tmp_path):
    swap_in(tmp_path, {"packets/a.pdf": b"1", "packets/b.pdf": b"1"})
    swap_in(tmp_path, {"packets/a.pdf": b"2"}, keep_others=True)
    assert tree(tmp_path) == {"packets/a.pdf": b"2", "packets/b.pdf": b"1"}


def test_files_beside_the_build_are_left_alone(tmp_path):
    (tmp_path / ".gitignore").write_text("*")
    swap_in(tmp_path, {"site/index.html": b"one"})
    assert (tmp_path / ".gitignore").read_text() == "*"


def test_a_failure_while_writing_keeps_the_last_build(tmp_path):
    """A file whose name is also a folder cannot be written."""
    swap_in(tmp_path, {"site/index.html": b"one"})
    with pytest.raises(OSError):
        swap_in(tmp_path, {"site/a": b"", "site/a/b": b""})
    assert tree(tmp_path) == {"site/index.html": b"one"}


def refuse(*_):
    raise OSError(28, "No space left on device")


def cannot(*_):
    raise CannotExchange


def test_a_failure_while_swapping_leaves_the_last_build(tmp_path, monkeypatch):
    build = tmp_path / "build"
    swap_in(build, {"packets/a.pdf": b"1", "site/index.html": b"one"})
    monkeypatch.setattr(staging, "exchange", refuse)
    with pytest.raises(OSError):
        swap_in(build, {"packets/a.pdf": b"2", "site/index.html": b"two"})
    assert tree(build) == {"packets/a.pdf": b"1", "site/index.html": b"one"}
    assert [path.name for path in tmp_path.iterdir()] == ["build"]


def test_where_folders_cannot_be_exchanged_the_last_build_is_set_aside(tmp_path, monkeypatch):
    build = tmp_path / "build"
    monkeypatch.setattr(staging, "exchange", cannot)
    swap_in(build, {"site/index.html": b"one"})
    swap_in(build, {"site/index.html": b"two"})
    assert tree(tmp_path) == {"build/site/index.html": b"two"}


@pytest.mark.parametrize("moment", [1, 2])
def test_a_last_build_that_was_set_aside_comes_back(tmp_path, monkeypatch, moment):
    """Two moves, either of which may fail."""
    build = tmp_path / "build"
    swap_in(build, {"site/index.html": b"one"})
    monkeypatch.setattr(staging, "exchange", cannot)
    real, calls = os.replace, []

    def replace(source, target):
        calls.append(target)
        return refuse() if len(calls) == moment else real(source, target)

    monkeypatch.setattr(os, "replace", replace)
    with pytest.raises(OSError):
        swap_in(build, {"site/index.html": b"two"})
    assert tree(tmp_path) == {"build/site/index.html": b"one"}


def test_a_build_that_was_cut_off_while_the_last_one_was_aside_is_put_right(tmp_path):
    """As `kill -9` between the two moves would leave it."""
    aside = tmp_path / ".build-next"
    swap_in(aside / "old", {"site/index.html": b"one"})
    swap_in(aside / "new", {"site/index.html": b"half"})
    with pytest.raises(RuntimeError), next_build(tmp_path / "build"):
        raise RuntimeError("stopped before anything was written")
    assert tree(tmp_path) == {"build/site/index.html": b"one"}


def test_a_folder_that_cannot_be_moved_has_its_top_folders_exchanged(tmp_path, monkeypatch):
    """A disk that is mounted as the build folder, for example."""
    monkeypatch.setattr(os.path, "ismount", lambda path: True)
    (tmp_path / "mine.txt").write_text("mine")
    for way in (staging.exchange, cannot):
        monkeypatch.setattr(staging, "exchange", way)
        for word in (b"one", b"two"):
            swap_in(tmp_path, {"site/index.html": word, "packets/a.pdf": word})
            assert tree(tmp_path) == {
                "mine.txt": b"mine",
                "packets/a.pdf": word,
                "site/index.html": word,
            }


def test_a_file_kept_from_the_last_build_does_not_change_with_the_next(tmp_path):
    """It is the same file on the disk as long as nothing new is written over it."""
    build = tmp_path / "build"
    swap_in(build, {"packets/a.pdf": b"1", "packets/b.pdf": b"1"})
    with next_build(build) as coming:
        coming.keep("packets/a.pdf")
        coming.keep("packets/b.pdf")
        coming.write("packets/a.pdf", b"2")
        assert tree(build) == {"packets/a.pdf": b"1", "packets/b.pdf": b"1"}
    assert tree(build) == {"packets/a.pdf": b"2", "packets/b.pdf": b"1"}


@pytest.mark.parametrize("path", ["../a", "site/../../a", "/a", "", "C:/a", "site\\..\\a"])
def test_no_path_leads_out_of_the_build_folder(tmp_path, path):
    with pytest.raises(ValueError), next_build(tmp_path / "build") as coming:
        coming.write(path, b"")
    assert tree(tmp_path) == {}


def test_two_builds_at_once_take_turns(tmp_path):
    build, waited = tmp_path / "build", []

    def second():
        with next_build(build, lambda: waited.append(1)) as coming:
            coming.write("site/index.html", b"second")

    with next_build(build) as coming:
        other = Thread(target=second)
        other.start()
        sleep(0.3)
        assert waited == [1]
        coming.write("site/index.html", b"first")
    other.join(10)
    assert tree(tmp_path) == {"build/site/index.html": b"second"}


STAMPED = """
import sys
from pathlib import Path
from packetgen.write import swap_in
build, turn = Path(sys.argv[1]), int(sys.argv[2])
print("ready", flush=True)
while True:
    turn += 1
    swap_in(build, {f"{top}/{n}/f": b"%d" % turn for top in ("site", "packets") for n in range(40)})
"""


def stamps(build: Path) -> set[bytes]:
    """What every file of a build says, read through one look at the folder."""
    folder = os.open(build, os.O_DIRECTORY)
    try:
        found = set()
        for _, _, names, here in os.fwalk(".", dir_fd=folder):
            for name in names:
                opened = os.open(name, os.O_RDONLY, dir_fd=here)
                found.add(os.read(opened, 100))
                os.close(opened)
        return found
    finally:
        os.close(folder)


@pytest.mark.skipif(sys.platform != "linux", reason="reads a folder through its descriptor")
@pytest.mark.slow
def test_a_build_that_is_killed_at_any_moment_leaves_a_whole_one(tmp_path):
    """A hundred times `kill -9`; and whoever looks, while it works or after, sees files of one build."""
    build, generator = tmp_path / "build", Random(7)
    files = {f"{top}/{n}/f": b"0" for top in ("site", "packets") for n in range(40)}
    swap_in(build, files)
    seen = set()
    for turn in range(1_000_000, 101_000_000, 1_000_000):
        process = subprocess.Popen(
            [sys.executable, "-c", STAMPED, str(build), str(turn)],
            stdout=subprocess.PIPE,
            cwd=Path(__file__).parent.parent,
        )
        process.stdout.readline()
        sleep(generator.uniform(0.01, 0.15))
        with suppress(FileNotFoundError):  # the build that was looked at is thrown away meanwhile
            assert len(stamps(build)) <= 1
        process.kill()
        process.wait()
        process.stdout.close()
        assert len(stamps(build)) == 1
        assert set(tree(build)) == set(files)
        seen |= stamps(build)
    assert len(seen) > 5  # builds were really made between the kills
    swap_in(build, {"site/index.html": b"well"})
    assert tree(tmp_path) == {"build/site/index.html": b"well"}


def test_a_zip_is_the_same_bytes_each_time_and_opens():
    files = {"robin-letter.pdf": b"%PDF", "robin-a4.pdf": b"%PDF2"}
    assert zipped(files) == zipped(dict(files))
    with zipfile.ZipFile(io.BytesIO(zipped(files))) as archive:
        assert {name: archive.read(name) for name in archive.namelist()} == files
        assert archive.testzip() is None
