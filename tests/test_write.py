"""A build is swapped in whole, and the last good one survives a failure."""

import io
import zipfile

import pytest

from packetgen.write import swap_in, zipped


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


@pytest.mark.parametrize("moment", [1, 2, 3, 4])
def test_a_failure_while_swapping_puts_the_last_build_back(tmp_path, monkeypatch, moment):
    """Two top folders are set aside and replaced: four moves, any of which may fail."""
    swap_in(tmp_path, {"packets/a.pdf": b"1", "site/index.html": b"one"})
    import os

    real, calls = os.replace, []

    def refuse(source, target):
        calls.append(target)
        if len(calls) == moment:
            raise OSError("no space left")
        return real(source, target)

    monkeypatch.setattr(os, "replace", refuse)
    with pytest.raises(OSError):
        swap_in(tmp_path, {"packets/a.pdf": b"2", "site/index.html": b"two"})
    assert tree(tmp_path) == {"packets/a.pdf": b"1", "site/index.html": b"one"}


def test_a_zip_is_the_same_bytes_each_time_and_opens():
    files = {"robin-letter.pdf": b"%PDF", "robin-a4.pdf": b"%PDF2"}
    assert zipped(files) == zipped(dict(files))
    with zipfile.ZipFile(io.BytesIO(zipped(files))) as archive:
        assert {name: archive.read(name) for name in archive.namelist()} == files
        assert archive.testzip() is None
