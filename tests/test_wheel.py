"""The wheel: what it carries, and that it works where nothing else of the project is."""

import json
import os
import subprocess
import sys
import sysconfig
import zipfile
from pathlib import Path

import pytest

from packetgen.record import MANIFEST

pytest.importorskip("hatchling", reason="comes with the project's test extra")
pytestmark = pytest.mark.skipif(
    os.name != "posix", reason="looks for programs where POSIX has them"
)

ROOT = Path(__file__).parent.parent
LIBRARIES = Path(sysconfig.get_path("purelib"))
# Nothing of this process tells a clean one where the project is.
CLEAN = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}


def run(*command: object, folder: Path, code: int = 0) -> str:
    done = subprocess.run(
        [*map(str, command)], cwd=folder, env=CLEAN, capture_output=True, text=True, timeout=600
    )
    assert done.returncode == code, f"{command}\n{done.stdout}\n{done.stderr}"
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory) -> Path:
    folder = tmp_path_factory.mktemp("wheel")
    run(sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", folder, folder=ROOT)
    (made,) = folder.glob("*.whl")
    return made


@pytest.fixture(scope="module")
def carried(wheel) -> frozenset[str]:
    """Paths of all files in the wheel."""
    return frozenset(zipfile.ZipFile(wheel).namelist())


def files_below(folder: Path) -> set[str]:
    return {
        path.relative_to(folder).as_posix()
        for path in folder.rglob("*")
        if path.is_file() and path.suffix != ".pyc"
    }


def test_the_wheel_carries_every_module_template_and_font(carried):
    """What the program needs at work is in it, where the program looks for it."""
    program = files_below(ROOT / "packetgen")
    templates = files_below(ROOT / "templates")
    assert len(program) > 200 and len(templates) > 40
    assert {f"packetgen/{path}" for path in program} <= carried
    assert {f"packetgen/templates/{path}" for path in templates} <= carried


def test_the_wheel_carries_its_licences(carried):
    """Whoever has the wheel alone can read under what terms the program and its fonts may be used."""
    names = {path.partition("/licenses/")[2] for path in carried if "/licenses/" in path}
    assert names == {"LICENSE", "packetgen/fonts/OFL.txt"}


def test_the_wheel_carries_nothing_but_the_program(carried):
    """No tests, no content of the demo, nothing that a run has left behind."""
    assert {path.partition("/")[0].partition("-")[0] for path in carried} == {"packetgen"}
    assert not [path for path in carried if "__pycache__" in path or path.endswith(".pyc")]


def builds_a_series(python: Path, elsewhere: Path) -> None:
    """An empty folder in, a series begun, its site and packet out, by the command that stands beside
    `python`."""
    author = elsewhere / "author"
    author.mkdir()
    command = python.with_name("packetgen")
    run(command, "begin", "--yes", folder=author)
    assert "files made" in run(command, "build", "--as-of", "2099-12-31", folder=author)
    papers = {path.name.rpartition("-")[2] for path in (author / "build/packets").rglob("*.pdf")}
    assert papers == {"a4.pdf", "letter.pdf"}
    for packet in (author / "build/packets").rglob("*.pdf"):
        assert packet.read_bytes().startswith(b"%PDF-")
    assert (author / "build/site/index.html").is_file()


def program_files(author: Path) -> set[str]:
    """The files of the program, as a build has noted them."""
    inputs = json.loads((author / "build" / MANIFEST).read_bytes())["inputs"]
    return {path for path in inputs if path.startswith("packetgen/")}


_WHERE = """
import importlib, pkgutil, packetgen
from packetgen.program import project_templates
print(project_templates())
for module in pkgutil.walk_packages(packetgen.__path__, "packetgen."):
    if module.name != "packetgen.__main__":
        print(importlib.import_module(module.name).__file__)
"""


def comes_from(python: Path, environment: Path, elsewhere: Path) -> None:
    """Every module and template that the installed program uses lies in its own environment."""
    places = run(python, "-c", _WHERE, folder=elsewhere).split("\n")[:-1]
    assert len(places) > 200
    assert [place for place in places if not Path(place).is_relative_to(environment)] == []


@pytest.mark.slow
def test_an_installed_wheel_builds_a_series_in_an_empty_folder(wheel, carried, tmp_path):
    """In an environment that has the libraries but nothing of the project, the wheel is all that is needed."""
    environment, elsewhere = tmp_path / "environment", tmp_path / "elsewhere"
    elsewhere.mkdir()
    run(sys.executable, "-m", "venv", "--without-pip", environment, folder=tmp_path)
    python = environment / "bin/python"
    lend_libraries(python, tmp_path / "libraries", tmp_path)
    run(python, "-c", "import weasyprint", folder=elsewhere)
    run(python, "-c", "import packetgen", folder=elsewhere, code=1)
    install = ("pip", "--python", python, "install", "--quiet", "--no-index", "--no-deps", wheel)
    run(sys.executable, "-m", *install, folder=tmp_path)
    builds_a_series(python, elsewhere)
    guide = "packetgen/guide/"  # with which nothing is built
    assert program_files(elsewhere / "author") == {
        path for path in carried if path.startswith("packetgen/") and not path.startswith(guide)
    }
    assert any(path.startswith(guide) for path in carried)
    comes_from(python, environment, elsewhere)


def lend_libraries(python: Path, libraries: Path, tmp_path: Path) -> None:
    """All that is installed here but the project itself, so that nothing need be fetched."""
    libraries.mkdir()
    for entry in LIBRARIES.iterdir():
        if "packetgen" not in entry.name and entry.suffix != ".pth":
            (libraries / entry.name).symlink_to(entry)
    place = run(
        python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))", folder=tmp_path
    )
    Path(place.strip(), "libraries.pth").write_text(f"{libraries}\n", "utf-8")


@pytest.mark.exhaustive
def test_a_wheel_fetches_what_it_needs(wheel, tmp_path):
    """With nothing but pip, the wheel brings its libraries along and builds a series."""
    environment, elsewhere = tmp_path / "environment", tmp_path / "elsewhere"
    elsewhere.mkdir()
    run(sys.executable, "-m", "venv", environment, folder=tmp_path)
    python = environment / "bin/python"
    run(python, "-m", "pip", "install", "--quiet", wheel, folder=elsewhere)
    builds_a_series(python, elsewhere)
    comes_from(python, environment, elsewhere)
