"""Inputs that once found something are given again, and a few hundred new ones each time."""

import re
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from tests.fuzz.designs import bring_targets
from tests.fuzz.edits import edit_targets
from tests.fuzz.targets import file_targets, value_targets

FOUND = sorted(path for path in (Path(__file__).parent / "found").iterdir() if path.is_file())
VALUES = value_targets()
PIECES = re.compile(rb"[^\s,:;]+|[\s,:;]")


@pytest.fixture(scope="module")
def targets(tmp_path_factory):
    root = tmp_path_factory.mktemp("strange")
    files = file_targets(root / "content")
    return VALUES | files | bring_targets(root / "desk") | edit_targets(root / "chart")


@pytest.fixture(scope="module")
def target(targets):
    """The target of a name, asked for. All of them are too long to be shown, and would hide what was found."""
    return lambda name: targets[name]


@pytest.mark.parametrize("path", FOUND, ids=lambda path: path.name)
def test_what_was_found_is_mended(path, targets):
    """Each file is named after its target; the target takes it without a finding."""
    targets[target_of(path.name, targets)].run(path.read_bytes())


def target_of(name: str, targets) -> str:
    """The target whose name the file's own begins with."""
    return max((one for one in targets if name.startswith(f"{one}-")), key=len)


def test_every_target_takes_its_seeds(targets):
    """Inputs in order are no findings; there are targets for files and for single values."""
    assert len(targets) >= 32
    for target in targets.values():
        for seed in target.seeds:
            target.run(seed)


@st.composite
def strange(draw) -> tuple[str, bytes]:
    """A target and one of its seeds with pieces of it, or of another's, put elsewhere."""
    name = draw(st.sampled_from(sorted(VALUES)))
    seeds = VALUES[name].seeds
    pieces = PIECES.findall(draw(st.sampled_from(seeds)))
    others = [piece for seed in seeds for piece in PIECES.findall(seed)]
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(pieces)))
        new = draw(
            st.sampled_from(others) | st.binary(max_size=6) | st.text(max_size=4).map(_bytes)
        )
        pieces[at : at + draw(st.integers(0, 2))] = [new] * draw(st.sampled_from((1, 1, 1, 2, 300)))
    return name, b"".join(pieces)


def _bytes(text: str) -> bytes:
    return text.encode("utf-8", "replace")


@settings(max_examples=400, deadline=None)
@given(strange())
@example(("outline", b"M0,0 A1e-99 1e-99 0 0 0 9e99,1 L0,5 Z"))
@example(("markdown", b"* " * 3000 + b"a"))
def test_no_value_makes_a_reader_fall_over(case):
    name, data = case
    VALUES[name].run(data)


WAYS_IN = (
    "bring-jpeg",
    "bring-png",
    "bring-signs",
    "bring-table",
    "edit-pattern",
    "edit-table",
    "edit-text",
)
STRANGE = (
    *(b'"', b"''", b",,", b";", b"\t", b"\r\n", b"\n\n", b"\x00", b"\xff\xfe", b"#", b"=1+1", b"."),
    *("\u202e".encode(), "\u0301".encode(), "\U0001f331".encode(), b"x" * 300, b",\n" * 300),
    *(b"tRNS\x00\x01\x80", b"cutS\x00\x02\x00\x09", b"\x00\x00\xff\xff", b"IEND\x00\x00"),
)


@settings(
    max_examples=150,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(st.data())
def test_no_way_in_for_a_design_falls_over(target, data):
    """A seed with bytes exchanged, taken out or put in, and any options before it."""
    name = data.draw(st.sampled_from(WAYS_IN))
    given = bytearray(data.draw(st.sampled_from(target(name).seeds)))
    head = data.draw(st.binary(min_size=1, max_size=5))
    given[: len(head)] = head
    for _ in range(data.draw(st.integers(0, 4))):
        at = data.draw(st.integers(1, len(given)))
        new = data.draw(st.binary(max_size=4) | st.sampled_from(STRANGE))
        given[at : at + data.draw(st.integers(0, 4))] = new
    target(name).run(bytes(given))
