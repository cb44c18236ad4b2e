"""The demo series is built once for all tests that look at what a build makes."""

import os
from collections.abc import Callable
from io import BytesIO
from pathlib import Path

import pytest
from filelock import FileLock
from PIL import Image

from tests.demo_patterns import CONTENT


@pytest.fixture(scope="session")
def demo():
    """The demo series with its figures, as `proof` gives it."""
    from packetgen.pipeline import proof

    checked = proof(CONTENT)
    assert checked.sound, [str(problem) for problem in checked.problems]
    return checked


def _made_once(tmp_path_factory, name: str, make: Callable[[Path], None]) -> Path:
    """The folder that `make` fills; where tests run side by side, one fills it and the others wait."""
    shared = tmp_path_factory.getbasetemp()
    if "PYTEST_XDIST_WORKER" in os.environ:
        shared = shared.parent
    folder = shared / name
    with FileLock(shared / f"{name}.lock"):
        if not folder.exists():
            unfinished = shared / f"{name}.unfinished"
            unfinished.mkdir()
            make(unfinished)
            unfinished.rename(folder)
    return folder


@pytest.fixture(scope="session")
def built(demo, tmp_path_factory) -> Path:
    """The build folder of the whole demo."""
    from packetgen.pipeline import build

    return _made_once(tmp_path_factory, "build", lambda folder: build(demo, folder, None))


def _cover() -> bytes:
    """A small picture does for a cover that nobody looks at."""
    target = BytesIO()
    Image.new("RGB", (80, 80), "#b7c6b4").save(target, "JPEG")
    return target.getvalue()


@pytest.fixture(scope="session")
def editions(demo, tmp_path_factory) -> dict[str, bytes]:
    """File name → bytes of every edition of every demo pattern."""
    folder = _made_once(tmp_path_factory, "editions", lambda into: _make_editions(demo, into))
    return {path.name: path.read_bytes() for path in sorted(folder.iterdir())}


def _make_editions(demo, folder: Path) -> None:
    from packetgen.model import EDITION_NAMES
    from packetgen.pipeline import packet_files
    from packetgen.render.templates import environment

    env = environment()
    for each in demo.reckoned:
        for figure in each.figures:
            made = packet_files(each.series, figure, _cover(), frozenset(EDITION_NAMES), env)
            for path, data in made.items():
                (folder / path.rpartition("/")[2]).write_bytes(data)
