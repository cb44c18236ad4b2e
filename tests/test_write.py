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

from packetgen.write import next_build, staging, zipped
from packetgen.write.exchange import CannotExchange
from packetgen.write.mounts import is_mounted, mount_points
from tests.disks import where_mounted


def put(build, files):
    """A build that consists of these files."""
    with next_build(build) as coming:
        for path, data in files.items():
            coming.write(path, data)


def tree(folder):
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def test_a_build_replaces_the_one_before(tmp_path):
    put(tmp_path, {"site/index.html": b"one", "site/old.html": b"gone", "packets/a.pdf": b"1"})
    put(tmp_path, {"site/index.html": b"two", "packets/a.pdf": b"2"})
    assert tree(tmp_path) == {"site/index.html": b"two", "packets/a.pdf": b"2"}


def test_files_beside_the_build_are_left_alone(tmp_path):
    (tmp_path / ".gitignore").write_text("*")
    put(tmp_path, {"site/index.html": b"one"})
    assert (tmp_path / ".gitignore").read_text() == "*"


def test_a_failure_while_writing_keeps_the_last_build(tmp_path):
    """A file whose name is also a folder cannot be written."""
    put(tmp_path, {"site/index.html": b"one"})
    with pytest.raises(OSError):
        put(tmp_path, {"site/a": b"", "site/a/b": b""})
    assert tree(tmp_path) == {"site/index.html": b"one"}


def refuse(*_):
    raise OSError(28, "No space left on device")


def cannot(*_):
    raise CannotExchange


def test_a_failure_while_swapping_leaves_the_last_build(tmp_path, monkeypatch):
    build = tmp_path / "build"
    put(build, {"packets/a.pdf": b"1", "site/index.html": b"one"})
    monkeypatch.setattr(staging, "exchange", refuse)
    with pytest.raises(OSError):
        put(build, {"packets/a.pdf": b"2", "site/index.html": b"two"})
    assert tree(build) == {"packets/a.pdf": b"1", "site/index.html": b"one"}
    assert [path.name for path in tmp_path.iterdir()] == ["build"]


def test_where_folders_cannot_be_exchanged_the_last_build_is_set_aside(tmp_path, monkeypatch):
    build = tmp_path / "build"
    monkeypatch.setattr(staging, "exchange", cannot)
    put(build, {"site/index.html": b"one"})
    put(build, {"site/index.html": b"two"})
    assert tree(tmp_path) == {"build/site/index.html": b"two"}


@pytest.mark.parametrize("moment", [1, 2])
def test_a_last_build_that_was_set_aside_comes_back(tmp_path, monkeypatch, moment):
    """Two moves, either of which may fail."""
    build = tmp_path / "build"
    put(build, {"site/index.html": b"one"})
    monkeypatch.setattr(staging, "exchange", cannot)
    real, calls = os.replace, []

    def replace(source, target):
        calls.append(target)
        return refuse() if len(calls) == moment else real(source, target)

    monkeypatch.setattr(os, "replace", replace)
    with pytest.raises(OSError):
        put(build, {"site/index.html": b"two"})
    assert tree(tmp_path) == {"build/site/index.html": b"one"}


def test_a_build_that_was_cut_off_while_the_last_one_was_aside_is_put_right(tmp_path):
    """As `kill -9` between the two moves would leave it."""
    aside = tmp_path / ".build-next"
    put(aside / "old", {"site/index.html": b"one"})
    put(aside / "new-7", {"site/index.html": b"half"})
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
            put(tmp_path, {"site/index.html": word, "packets/a.pdf": word})
            assert tree(tmp_path) == {
                "mine.txt": b"mine",
                "packets/a.pdf": word,
                "site/index.html": word,
            }


def test_a_folder_that_is_mounted_as_the_build_folder(tmp_path):
    """From the same disk, so that it looks like any other folder; a blank in its name is listed as \\040."""
    kept, build = tmp_path / "kept", tmp_path / "my build"
    kept.mkdir()
    build.mkdir()
    for word in ("one", "two"):
        files = f"{{'site/index.html': b'{word}', 'manifest.json': b'{word}'}}"
        done = where_mounted(
            kept,
            build,
            sys.executable,
            "-c",
            f"import pathlib, tests.test_write; tests.test_write.put(pathlib.Path({str(build)!r}), {files})",
        )
        assert done.returncode == 0, done.stderr
        assert tree(kept) == {"site/index.html": word.encode(), "manifest.json": word.encode()}
    assert sorted(path.name for path in tmp_path.iterdir()) == ["kept", "my build"]


def test_the_list_of_what_is_mounted():
    """Lines in the form of proc(5), with and without the optional fields before the hyphen."""
    listed = rb"""
40 36 98:0 / /desk/disk rw,relatime shared:3 - ext4 /dev/sda1 rw
41 36 98:0 /desk/kept /desk/my\040build rw,relatime - ext4 /dev/root rw
42 36 98:0 /odd /a\134b\011c\012d rw shared:7 master:2 - ext4 /dev/root rw
43 36 98:0 /umlaut /b\303\274ro rw - ext4 /dev/root rw

no such line
"""
    assert mount_points(listed) == {
        b"/desk/disk",
        b"/desk/my build",
        b"/a\\b\tc\nd",
        "/büro".encode(),
    }


@pytest.mark.skipif(sys.platform != "linux", reason="NOT CHECKED: only Linux has such a list")
def test_the_root_is_mounted_and_a_new_folder_is_not(tmp_path):
    assert is_mounted(Path("/")) and is_mounted(Path("/proc"))
    assert not is_mounted(tmp_path) and not is_mounted(tmp_path / "not there")


def test_a_disk_as_build_folder_is_never_left_with_a_record_of_other_files(tmp_path, monkeypatch):
    """What the folders hold is told by the single files: none of them stands there while folders move."""
    monkeypatch.setattr(os.path, "ismount", lambda path: True)
    put(tmp_path, {"manifest.json": b"one", "packets/a.pdf": b"one", "site/index.html": b"one"})
    looks, real = [], staging.exchange

    def look(*two):
        looks.append((tmp_path / "manifest.json").exists())
        real(*two)

    monkeypatch.setattr(staging, "exchange", look)
    put(tmp_path, {"manifest.json": b"two", "packets/a.pdf": b"two", "site/index.html": b"two"})
    assert looks == [False, False]
    assert set(tree(tmp_path).values()) == {b"two"}


def test_a_failure_between_two_folders_of_such_a_disk_puts_both_back(tmp_path, monkeypatch):
    monkeypatch.setattr(os.path, "ismount", lambda path: True)
    files = {"manifest.json": b"one", "packets/a.pdf": b"one", "site/index.html": b"one"}
    put(tmp_path, files)
    real, calls = staging.exchange, []

    def second_fails(*two):
        calls.append(two)
        return refuse() if len(calls) == 2 else real(*two)

    monkeypatch.setattr(staging, "exchange", second_fails)
    with pytest.raises(OSError):
        put(tmp_path, dict.fromkeys(files, b"two"))
    assert tree(tmp_path) == files


def test_a_last_build_that_cannot_be_put_back_on_such_a_disk_is_kept_and_said(
    tmp_path, monkeypatch
):
    """From the second move on the disk takes nothing more: no record stands beside the mixed folders."""
    monkeypatch.setattr(os.path, "ismount", lambda path: True)
    files = {"manifest.json": b"one", "packets/a.pdf": b"one", "site/index.html": b"one"}
    put(tmp_path, files)
    real, calls = staging.exchange, []

    def once(*two):
        calls.append(two)
        return refuse() if len(calls) > 1 else real(*two)

    monkeypatch.setattr(staging, "exchange", once)
    with pytest.raises(
        staging.NotPutBack, match="could not be put back whole.*the rest of it lies"
    ) as told:
        put(tmp_path, dict.fromkeys(files, b"two"))
    assert told.value.filename == str(tmp_path / ".next")
    there = tree(tmp_path)
    assert "manifest.json" not in there
    assert there[".next/old/manifest.json"] == b"one"
    assert b"one" in [data for path, data in there.items() if path.endswith("packets/a.pdf")]
    assert there["site/index.html"] == b"one"
    monkeypatch.setattr(staging, "exchange", real)
    put(tmp_path, dict.fromkeys(files, b"three"))
    assert tree(tmp_path) == dict.fromkeys(files, b"three")


def test_a_last_build_that_was_set_aside_and_cannot_come_back_is_never_thrown_away(
    tmp_path, monkeypatch
):
    put(tmp_path / "build", {"site/index.html": b"one"})
    monkeypatch.setattr(staging, "exchange", cannot)
    real, calls = os.replace, []

    def once(*two):
        calls.append(two)
        return refuse() if len(calls) > 1 else real(*two)

    monkeypatch.setattr(os, "replace", once)
    with pytest.raises(staging.NotPutBack):
        put(tmp_path / "build", {"site/index.html": b"two"})
    assert len(calls) == 3 and tree(tmp_path)[".build-next/old/site/index.html"] == b"one"
    monkeypatch.setattr(os, "replace", real)
    with pytest.raises(RuntimeError), next_build(tmp_path / "build"):
        raise RuntimeError("the next build stops too")
    assert tree(tmp_path) == {"build/site/index.html": b"one"}


def test_what_is_left_of_a_build_that_was_cut_off_cannot_write_into_the_next(tmp_path):
    """A worker may outlive the process that began it."""
    build = tmp_path / "build"
    with suppress(RuntimeError), next_build(build) as cut_off:
        raise RuntimeError
    with next_build(build) as coming:
        coming.write("site/index.html", b"well")
        cut_off.write("site/index.html", b"late")
    assert tree(tmp_path) == {"build/site/index.html": b"well"}


def test_a_file_kept_from_the_last_build_does_not_change_with_the_next(tmp_path):
    """It is the same file on the disk as long as nothing new is written over it."""
    build = tmp_path / "build"
    put(build, {"packets/a.pdf": b"1", "packets/b.pdf": b"1"})
    with next_build(build) as coming:
        coming.keep("packets/a.pdf")
        coming.keep("packets/b.pdf")
        coming.write("packets/a.pdf", b"2")
        assert tree(build) == {"packets/a.pdf": b"1", "packets/b.pdf": b"1"}
    assert tree(build) == {"packets/a.pdf": b"2", "packets/b.pdf": b"1"}


INTERRUPTED = """
import sys
from itertools import count
from pathlib import Path
from packetgen.write import next_build

def interrupted_at(number):
    lines = count(1)
    def trace(frame, event, _):
        if not any(name in frame.f_code.co_filename for name in ("write/staging.py", "/filelock/")):
            return None
        if event == "line" and next(lines) == number:
            raise KeyboardInterrupt
        return trace
    return trace

for number in count(1):
    sys.settrace(interrupted_at(number))
    try:
        with next_build(Path("build")):
            sys.settrace(None)
            break
    except KeyboardInterrupt:
        sys.settrace(None)
    print(number, *Path().iterdir())
"""


def test_ctrl_c_while_a_first_build_makes_its_folder_leaves_nothing(tmp_path):
    """At each line, of the lock's library too, until there is something to write into."""
    code = [sys.executable, "-c", INTERRUPTED]
    said = subprocess.run(
        code, cwd=tmp_path, capture_output=True, text=True, timeout=60, check=True
    )
    lines = said.stdout.splitlines()
    assert lines == [str(number) for number in range(1, len(lines) + 1)] and len(lines) > 20


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
from packetgen.write import next_build
build, turn = Path(sys.argv[1]), int(sys.argv[2])
print("ready", flush=True)
while True:
    turn += 1
    with next_build(build) as coming:
        for path in [f"{top}/{n}/f" for top in ("site", "packets") for n in range(40)]:
            coming.write(path, b"%d" % turn)
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
@pytest.mark.parametrize("kills", [10, pytest.param(100, marks=pytest.mark.exhaustive)])
@pytest.mark.slow
def test_a_build_that_is_killed_at_any_moment_leaves_a_whole_one(tmp_path, kills):
    """Whoever looks, while builds are put in place again and again or after `kill -9`, sees files of one
    build."""
    build, generator = tmp_path / "build", Random(7)
    files = {f"{top}/{n}/f": b"0" for top in ("site", "packets") for n in range(40)}
    put(build, files)
    seen = set()
    for turn in range(1_000_000, (kills + 1) * 1_000_000, 1_000_000):
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
    assert len(seen) > kills / 20  # builds were really made between the kills
    put(build, {"site/index.html": b"well"})
    assert tree(tmp_path) == {"build/site/index.html": b"well"}


def test_a_zip_is_the_same_bytes_each_time_and_opens():
    files = {"robin-letter.pdf": b"%PDF", "robin-a4.pdf": b"%PDF2"}
    assert zipped(files) == zipped(dict(files))
    with zipfile.ZipFile(io.BytesIO(zipped(files))) as archive:
        assert {name: archive.read(name) for name in archive.namelist()} == files
        assert archive.testzip() is None
