"""Whatever happens to a build, its folder holds the last good one, whole; and the next build succeeds.

Always the real command, as a process of its own.
"""

import os
import shutil
import sys
from glob import glob
from pathlib import Path
from random import Random
from subprocess import Popen, TimeoutExpired
from threading import Event, Thread
from time import monotonic, sleep

import pytest

from tests.content_builder import CHART, FERN
from tests.disks import fill, only_to_read, small_disk, where_mounted
from tests.running import OUT, PACKETGEN, begin, is_whole, kill_all, meddling, run
from tests.test_builds import IVY

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(sys.platform != "linux", reason="looks at folders through descriptors"),
]


def edit(desk: Path, word: object) -> None:
    for folder in (FERN, IVY):
        (desk / "content" / folder / "story.md").write_text(f"It grew, {word}.\n")


def record(desk: Path) -> bytes:
    return (desk / "build" / "manifest.json").read_bytes()


def next_build_succeeds(desk: Path) -> None:
    before = record(desk)
    run("build", *OUT, folder=desk)
    assert is_whole(desk / "build") and record(desk) != before
    assert not [path for path in desk.iterdir() if path.name.startswith(".")]
    assert not (desk / "build" / ".next").exists()


class Reader:
    """Opens the build folder again and again, and reads every file in it."""

    def __init__(self, build: Path) -> None:
        self._build, self._enough = build, Event()
        self.looks, self.halves = 0, []
        self._thread = Thread(target=self._look_on)

    def __enter__(self) -> "Reader":
        self._thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._enough.set()
        self._thread.join()

    def _look_on(self) -> None:
        while not self._enough.is_set():
            before = os.stat(self._build).st_ino
            try:
                whole = is_whole(self._build)
            except FileNotFoundError:  # fair only where that folder has been replaced meanwhile
                whole = os.stat(self._build).st_ino != before
            self.looks += 1
            if not whole:
                self.halves.append(self.looks)
            sleep(0.03)


def until_its_record_is_written(desk: Path, process: Popen) -> None:
    """What comes after it are the last moments of a build, in which folders are exchanged."""
    record = str(desk / ".build-next/new-*/manifest.json")
    while process.poll() is None and not glob(record):  # which folders that go away do not disturb
        sleep(0.001)


@pytest.mark.parametrize("kills", [10, pytest.param(100, marks=pytest.mark.exhaustive)])
def test_a_build_that_is_killed_at_any_moment(last_good, record_property, kills):
    """`kill -9` of everything that the command began; in between some builds that are let be."""
    chance = Random(11)
    killed = at_the_end = ended = 0
    with Reader(last_good / "build") as reader:
        begun = monotonic()  # with the reader beside it, as all the others
        edit(last_good, "first")
        run("build", "--workers", 2, *OUT, folder=last_good)
        takes_s = monotonic() - begun
        while killed < kills:
            edit(last_good, f"{killed} {ended}")
            if killed % 5 == 4:  # pictures are drawn too
                rows = chance.choice(("rrbb\nrr..\n", "rbbb\nrk..\n", "rrbb\n.k..\n"))
                (last_good / "content" / CHART).write_text(rows)
            begun = monotonic()
            process = begin("build", "--workers", 2, *OUT, folder=last_good)
            moment_s = chance.uniform(0.02, 1.1 * takes_s)
            if late := killed % 4 == 3:
                until_its_record_is_written(last_good, process)
                moment_s = chance.uniform(0, 0.1)
            try:
                code = process.wait(moment_s)
            except TimeoutExpired:
                killed += 1
                at_the_end += late
            else:
                assert code == 0, process.stderr.read()
                takes_s = monotonic() - begun  # on the machine as busy as it is now
                ended += 1
            kill_all(process)
            assert is_whole(last_good / "build")
    record_property(
        "shown",
        f"kill -9: {killed} builds killed, {at_the_end} of them with their record written, {ended} had ended before; "
        f"{reader.looks} looks at the folder, {len(reader.halves)} of them at a half build",
    )
    assert reader.looks > kills and reader.halves == [] and at_the_end
    edit(last_good, "last")
    next_build_succeeds(last_good)


def test_only_the_first_process_is_killed(last_good):
    """Its workers end with it, and what one of them still writes is in nobody's way."""
    edit(last_good, "left alone")
    before = record(last_good)
    process = begin("build", "--workers", 2, *OUT, folder=last_good)
    assert "pages" in process.stdout.readline()  # the packets are still at work
    process.kill()
    process.stdout.read()  # until the last one that may write there has ended
    process.communicate()
    assert record(last_good) == before and is_whole(last_good / "build")
    next_build_succeeds(last_good)


@pytest.mark.parametrize("workers", [pytest.param(1, marks=pytest.mark.exhaustive), 2])
def test_a_disk_that_is_full(last_good, tmp_path, workers):
    with small_disk(tmp_path / "disk", 40) as disk:
        desk = shutil.copytree(last_good, disk / "desk")
        ballast = fill(disk, 150_000)
        edit(desk, "more")
        before = record(desk)
        said = run("build", "--workers", workers, *OUT, folder=desk, code=2)
        assert "cannot write the build: No space left on device" in said.stderr
        assert record(desk) == before and is_whole(desk / "build")
        assert not (desk / ".build-next").exists()
        ballast.unlink()
        next_build_succeeds(desk)


@pytest.mark.parametrize(
    "most_bytes",
    [30_000, *(pytest.param(n, marks=pytest.mark.exhaustive) for n in (3_000, 120_000))],
)
def test_files_that_find_no_room_in_the_middle(last_good, most_bytes):
    """A limit of the system on the size of a file: at another one, another file is cut off."""
    edit(last_good, "more")
    before = record(last_good)
    size = (most_bytes, most_bytes)
    code = f"import resource\nresource.setrlimit(resource.RLIMIT_FSIZE, {size})\n"
    facts = meddling(last_good / "x", code)
    said = run("build", "--workers", 1, *OUT, folder=last_good, code=2, **facts)
    assert "cannot write the build: File too large" in said.stderr
    assert record(last_good) == before and is_whole(last_good / "build")
    shutil.rmtree(last_good / "x")
    next_build_succeeds(last_good)


def test_a_disk_that_may_only_be_read(last_good, tmp_path):
    with small_disk(tmp_path / "disk", 40) as disk:
        desk = shutil.copytree(last_good, disk / "desk")
        edit(desk, "more")
        with only_to_read(disk):
            said = run("build", *OUT, folder=desk, code=2)
            assert "cannot write the build: Read-only file system" in said.stderr
            assert is_whole(desk / "build")
        next_build_succeeds(desk)


def test_a_build_folder_on_a_disk_of_its_own(last_good, tmp_path):
    """Where nothing may be written beside it, its folders are exchanged one after the other."""
    with small_disk(tmp_path / "disk", 40) as disk:
        shutil.copytree(last_good / "content", disk / "content")
        edit(disk, "more")
        with small_disk(disk / "build", 40) as build:
            shutil.copytree(last_good / "build", build, dirs_exist_ok=True)
            with only_to_read(disk):
                with only_to_read(build):
                    said = run("build", *OUT, folder=disk, code=2)
                    assert "cannot write the build: Read-only file system" in said.stderr
                    assert is_whole(build)
                next_build_succeeds(disk)
                assert os.path.ismount(build)


def test_a_build_folder_that_is_a_mounted_folder(last_good, tmp_path):
    """Of the same disk, as a container is given it."""
    kept = (last_good / "build").rename(tmp_path / "kept")
    (last_good / "build").mkdir()
    edit(last_good, "in a container")
    before = (kept / "manifest.json").read_bytes()
    words = (*PACKETGEN, "build", *OUT, "--content", last_good / "content")
    said = where_mounted(kept, last_good / "build", *words, "--into", last_good / "build")
    assert said.returncode == 0, said.stdout + said.stderr
    assert is_whole(kept) and (kept / "manifest.json").read_bytes() != before
    assert not (kept / ".next").exists()


def test_a_folder_that_is_mounted_in_the_build_is_told_and_nothing_is_touched(last_good, tmp_path):
    """Its files would go with the last build, and the next one's would not come into it."""
    kept = tmp_path / "kept"
    shutil.copytree(last_good / "build" / "site", kept)
    edit(last_good, "in a container")
    before, files = record(last_good), sorted(kept.rglob("*"))
    words = (*PACKETGEN, "build", *OUT, "--content", last_good / "content")
    at = last_good / "build" / "site"
    said = where_mounted(kept, at, *words, "--into", last_good / "build")
    assert said.returncode == 2
    assert "cannot write the build: a folder or disk is mounted there" in said.stderr
    assert str(at) in said.stderr
    assert record(last_good) == before and sorted(kept.rglob("*")) == files
    assert not (last_good / ".build-next").exists()


def test_two_builds_at_once(last_good):
    """They take turns, and the second one builds upon what the first one left."""
    edit(last_good, "twice")
    both = [
        begin("build", *OUT, *more, folder=last_good)
        for more in ((), ("--edition", "written"), ("--edition", "tablet"))
    ]
    with Reader(last_good / "build") as reader:
        said = [process.communicate(timeout=300) for process in both]
    assert [process.returncode for process in both] == [0, 0, 0], said
    assert any("another build is at work there" in err for _, err in said)
    assert reader.halves == [] and is_whole(last_good / "build")
    edit(last_good, "once more")
    next_build_succeeds(last_good)
