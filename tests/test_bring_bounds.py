"""`packetgen bring` of files that are heavy on purpose: the command itself, with 10 s, 500 MB and no more."""

import io
import re
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from tests.content_builder import build
from tests.hostile.limits import limited

LOCATED = re.compile(r"[^\0]+:\d+:\d+: \S.*; \S.*\[[a-z-]+\]")


def _png(pixels: np.ndarray) -> bytes:
    data = io.BytesIO()
    Image.fromarray(pixels).save(data, "PNG", compress_level=1)
    return data.getvalue()


def _steps(height: int, width: int) -> np.ndarray:
    """Bands of colours that pass into one another, and no stitch among them."""
    return (np.add.outer(np.arange(height), np.arange(width) // 28) % 256).astype(np.uint8)


# What is in the file; how it is asked for; what is said of it, '' where it is read.
HEAVY = {
    "a table of 100 MB": ("d.csv", lambda: b"E2,K4,07\n" * 11_000_000, (), "file-too-big"),
    "a grid of 100 MB": ("d.txt", lambda: b"rkbb\n" * 20_000_000, (), "file-too-big"),
    "a long row over many short ones": (
        *("d.csv", lambda: b"," * 900_000 + b"\n" + b"x\n" * 500_000, (), "chart-large"),
    ),
    "a long line over many short ones": (
        *("d.txt", lambda: b"x" * 900_000 + b"\n" + b"x\n" * 500_000, (), "chart-large"),
    ),
    "a table of a quarter of a million words": (
        "d.csv",
        lambda: b"\n".join(
            b",".join(b"w%d" % (n * 250 + m) for m in range(250)) for n in range(999)
        ),
        (),
        "bring-code-unknown",
    ),
    "a picture of 29 million pixels without a stitch": (
        *("d.png", lambda: _png(np.stack([_steps(5400, 5400)] * 3, -1)), (), "bring-"),
    ),
    "a photograph of 29 million pixels": (
        *("d.png", lambda: _png(np.stack([_steps(5400, 5400)] * 4, -1)), ("--wide", "90"), ""),
    ),
    "a picture that is long and thin": (
        *("d.png", lambda: _png(_steps(655_370, 12)), (), "bring-not-found"),
    ),
    "a picture almost as long as may be": (
        *("d.png", lambda: _png(_steps(19_500, 1400)), (), "bring-"),
    ),
    "a photograph in which no two stitches are alike": (
        "d.png",
        lambda: _png(np.random.default_rng(1).integers(0, 256, (800, 800, 3)).astype(np.uint8)),
        ("--wide", "800", "--tidy", "100"),
        "",
    ),
    "a photograph of 29 million pixels, grey and of 16 bits": (
        "d.png",
        lambda: _png(_steps(5400, 5400).astype(np.uint16) * 257),
        ("--wide", "90"),
        "",
    ),
}


@pytest.mark.parametrize("case", HEAVY.values(), ids=HEAVY)
def test_a_heavy_design_stays_within_its_room_and_time(tmp_path, case):
    name, made, words, said = case
    content = build(tmp_path / "content")
    (tmp_path / name).write_bytes(made())
    into = ("--into", tmp_path / "new")
    done = limited(
        *("bring", tmp_path / name, "--content", content, "--threads", "moss"), *words, *into
    )
    assert "Traceback" not in done.stderr
    assert done.returncode == (1 if said else 0), done.stderr[-1000:]
    if said:
        *lines, last = done.stderr.splitlines()
        assert all(LOCATED.fullmatch(line) for line in lines) and said in lines[0]
        assert last.endswith("nothing was written.")
    assert Path(tmp_path, "new").exists() == (not said)
