"""The demo series is built once for all tests that look at what a build makes."""

from pathlib import Path

import pytest

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
