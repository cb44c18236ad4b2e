"""The demo series is built once for all tests that look at what a build makes."""

import gc
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from filelock import FileLock
from hypothesis import HealthCheck, settings
from PIL import Image

from tests.demo_patterns import BEFORE, CONTENT, RELEASED

# The tests run on all cores already; threads of a library's arithmetic would only wait for one another.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

# How fast the machine is says nothing about stitching.
settings.register_profile("unhurried", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("unhurried")


# The files that take longest, the longest first. They are begun before all others, or a process might be
# left alone with one of them at the end.
LONGEST = (
    "test_packet.py",
    "test_public_pictures.py",
    "browser/test_accessibility.py",
    "browser/test_guide_pages.py",
    "test_all_or_nothing.py",
    "hostile/test_corpus.py",
    "test_guide_words.py",
    "browser/test_pages.py",
    "test_ending.py",
    "test_reckoning_walked.py",
    "test_round_trip.py",
    "test_full_size.py",
    "test_chart_edit.py",
    "test_json_schema.py",
)
TESTS = Path(__file__).parent


def pytest_addoption(parser):
    parser.addoption(
        "--exhaustive",
        action="store_true",
        help="also run what takes many minutes, for example 100 kills",
    )


def pytest_configure(config):
    config.addinivalue_line("markers", "exhaustive: takes many minutes; run only with --exhaustive")


def pytest_collection_modifyitems(config, items):
    if not config.getoption("--exhaustive"):
        left_out = [one for one in items if one.get_closest_marker("exhaustive")]
        config.hook.pytest_deselected(items=left_out)
        items[:] = [one for one in items if not one.get_closest_marker("exhaustive")]
    begun = {TESTS / path: turn for turn, path in enumerate(LONGEST)}
    items.sort(key=lambda one: begun.get(one.path, len(begun)))


def pytest_collection_finish(session):
    """Thousands of tests stay as long as the run, so nobody need look through them for garbage again and again; of
    what a reader of PDFs makes, hardly any is."""
    gc.freeze()
    gc.set_threshold(50_000, 20, 20)


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
    """The build folder of the whole demo, on its release day."""
    from packetgen.pipeline import Order, build

    def make(folder: Path) -> None:
        built = build(Order(CONTENT, folder, as_of=RELEASED, workers=2))
        assert built.sound, built.faults

    return _made_once(tmp_path_factory, "build", make)


@pytest.fixture(scope="session")
def _tiny_built(tmp_path_factory) -> Path:
    from tests.content_builder import build
    from tests.running import OUT, run
    from tests.test_builds import TWO

    def make(folder: Path) -> None:
        build(folder / "content", TWO)
        run("build", *OUT, folder=folder)

    return _made_once(tmp_path_factory, "tiny-built", make)


@pytest.fixture
def last_good(_tiny_built, tmp_path) -> Path:
    """A folder with the tiny series, of two patterns, in `content` and its build in `build`."""
    return shutil.copytree(_tiny_built, tmp_path / "desk")


@pytest.fixture(scope="session")
def awaited(demo, tmp_path_factory) -> Path:
    """The public folders of the demo before its release: site and share."""
    from packetgen.pipeline import public_files
    from packetgen.render.templates import environment

    def make(folder: Path) -> None:
        for path, data in public_files(demo, environment(), BEFORE).items():
            (folder / path).parent.mkdir(parents=True, exist_ok=True)
            (folder / path).write_bytes(data)

    return _made_once(tmp_path_factory, "awaited", make)


@pytest.fixture
def quick_pictures(monkeypatch):
    """For tests to which it is of no matter what is drawn: a small plain picture in place of every one."""
    from packetgen.render import pictures

    def small(*_: object, **__: object) -> Image.Image:
        return Image.new("RGB", (120, 80), "#b7c6b4")

    for name in ("bench", "gathering", "mounted_public", "detail", "share_picture", "stitched"):
        monkeypatch.setattr(pictures, name, small)
    monkeypatch.setattr(pictures, "face", lambda *_: None)
    monkeypatch.setattr(pictures, "close_box", lambda *_: (0, 0, 10, 10))


@pytest.fixture(scope="session")
def editions(demo, tmp_path_factory) -> dict[str, bytes]:
    """File name → bytes of every edition of every demo pattern, but the packet itself, which `built` has."""
    folder = _made_once(tmp_path_factory, "editions", lambda into: _make_editions(demo, into))
    return {path.name: path.read_bytes() for path in sorted(folder.iterdir())}


def _make_editions(demo, folder: Path) -> None:
    from packetgen.chart.editions import COLOUR, EDITIONS
    from packetgen.pipeline.packets import papers
    from packetgen.render.packet import booklet
    from packetgen.render.templates import environment
    from packetgen.render.written_page import written_source

    env = environment()
    for series, figure in ((each.series, one) for each in demo.reckoned for one in each.figures):
        sources = {"-written": written_source(series, figure, env)} | {
            f"-{edition.id}": booklet(series, figure, edition, env)
            for edition in EDITIONS.values()
            if edition is not COLOUR
        }
        for ending, source in sources.items():
            for name, data in papers(f"{figure.pattern.id}{ending}", 1, source, env).items():
                (folder / name).write_bytes(data)


def pytest_terminal_summary(terminalreporter):
    """Print what a test has to show, sound or not: `record_property("shown", text)` says it."""
    for outcome in ("passed", "failed"):
        for report in terminalreporter.stats.get(outcome, ()):
            for name, text in report.user_properties:
                if name == "shown":
                    terminalreporter.write_line(text)
