"""The demo series is built once for all tests that look at what a build makes."""

from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

CONTENT = Path(__file__).parent.parent / "content"


@pytest.fixture(scope="session")
def demo():
    """The demo series with its figures, as `proof` gives it."""
    from packetgen.pipeline import proof

    checked = proof(CONTENT)
    assert checked.sound, [str(problem) for problem in checked.problems]
    return checked


@pytest.fixture(scope="session")
def built(demo, tmp_path_factory) -> Path:
    """The build folder of the whole demo."""
    from packetgen.pipeline import build

    folder = tmp_path_factory.mktemp("build")
    build(demo, folder, None)
    return folder


def _cover() -> bytes:
    """A small picture does for a cover that nobody looks at."""
    target = BytesIO()
    Image.new("RGB", (80, 80), "#b7c6b4").save(target, "JPEG")
    return target.getvalue()


@pytest.fixture(scope="session")
def editions(demo) -> dict[str, bytes]:
    """File name → bytes of every edition of every demo pattern."""
    from packetgen.model import EDITION_NAMES
    from packetgen.pipeline import packet_files
    from packetgen.render.templates import environment

    env, made = environment(), {}
    for each in demo.reckoned:
        for figure in each.figures:
            made |= packet_files(each.series, figure, _cover(), frozenset(EDITION_NAMES), env)
    return {path.rpartition("/")[2]: data for path, data in made.items()}
