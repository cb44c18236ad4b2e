"""A build knows its files again: by their contents, and without reading what the disk says is the same."""

import os
import time
from pathlib import Path

import pytest

from packetgen.load.inputs import Seen, changed, seen_files

LATER_NS = 10_000_000_000


def look(root: Path, known=None, wait_ns: int = LATER_NS) -> dict[str, Seen]:
    return seen_files(root, known or {}, time.time_ns() + wait_ns)


@pytest.fixture
def folder(tmp_path):
    (tmp_path / "fern").mkdir()
    (tmp_path / "fern" / "chart.txt").write_text("mm")
    (tmp_path / "moss.yaml").write_text("name: Moss")
    return tmp_path


def test_every_file_is_found_by_its_path(folder):
    assert set(look(folder)) == {"fern/chart.txt", "moss.yaml"}
    assert set(seen_files(folder, {}, 0, "content/")) == {
        "content/fern/chart.txt",
        "content/moss.yaml",
    }


def test_hidden_files_and_folders_are_left_out(folder):
    (folder / ".moss.yaml.swp").write_text("x")
    (folder / ".git").mkdir()
    (folder / ".git" / "index").write_text("x")
    assert set(look(folder)) == {"fern/chart.txt", "moss.yaml"}


@pytest.mark.parametrize(
    ("change", "paths"),
    [
        (lambda root: (root / "fern/chart.txt").write_text("mt"), ("fern/chart.txt",)),
        (lambda root: (root / "new.yaml").write_text(""), ("new.yaml",)),
        (lambda root: (root / "moss.yaml").unlink(), ("moss.yaml",)),
        (lambda root: (root / "moss.yaml").rename(root / "leaf.yaml"), ("leaf.yaml", "moss.yaml")),
        (lambda root: os.utime(root / "moss.yaml"), ()),
        (lambda root: None, ()),
    ],
)
def test_what_has_other_contents_has_changed(folder, change, paths):
    before = look(folder)
    change(folder)
    assert changed(before, look(folder, before)) == paths


def test_a_file_of_the_same_size_and_time_is_seen_to_have_changed(folder):
    """As a program leaves it that sets the old time again."""
    file = folder / "moss.yaml"
    before, stat = look(folder), file.stat()
    file.write_text("name: Mist")
    os.utime(file, ns=(stat.st_atime_ns, stat.st_mtime_ns))
    assert changed(before, look(folder, before)) == ("moss.yaml",)


def test_a_file_that_the_disk_says_is_the_same_is_not_read(folder, monkeypatch):
    before = look(folder)
    monkeypatch.setattr(Path, "open", lambda *_: pytest.fail("a file was read"))
    assert look(folder, before) == before


def test_a_file_that_was_just_written_is_read_again(folder):
    """Within the step of the disk's clock it may change without its time changing."""
    fresh = look(folder, wait_ns=0)
    assert {seen.sign for seen in fresh.values()} == {""}
    assert not changed(fresh, look(folder, fresh))


def test_a_file_that_cannot_be_read_is_no_reason_to_stop(folder):
    (folder / "loop").symlink_to(folder / "loop")
    assert look(folder)["loop"] == Seen("", "")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes with names")
def test_a_pipe_is_not_waited_for(folder):
    os.mkfifo(folder / "pipe")
    assert look(folder)["pipe"] == Seen("", "")
