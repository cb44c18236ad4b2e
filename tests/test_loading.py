"""A command loads what it needs: what is quick to say is said quickly."""

import subprocess
import sys

import click
import pytest

from packetgen.cli import main
from tests.content_builder import build
from tests.running import OUT, ROOT, environment

COMMANDS = main.list_commands(click.Context(main))
# What names commands and their options, and nothing that works.
LIGHT = {"cli", "edition_names", "nouns", "offered", "starting"}
_AND_THEN = """
import sys
from packetgen.cli import main
try:
    main(sys.argv[1:])
except SystemExit as end:
    assert end.code == 0, end.code
print("loaded", *sorted(sys.modules))
"""


def loaded(*words, folder=ROOT) -> set[str]:
    """Names of all modules that are there when the command has ended."""
    said = subprocess.run(
        [sys.executable, "-c", _AND_THEN, *map(str, words)],
        capture_output=True,
        text=True,
        check=True,
        cwd=folder,
        env=environment(),
    )
    return set(said.stdout.splitlines()[-1].split()[1:])


def rooms(modules: set[str]) -> set[str]:
    """The rooms of the house among the modules."""
    return {name.split(".")[1] for name in modules if name.startswith("packetgen.")}


def test_help_loads_nothing_but_the_command_line():
    modules = loaded("--help")
    assert rooms(modules) <= LIGHT
    assert not modules & {"yaml", "numpy", "shapely", "coloraide", "PIL", "jinja2", "weasyprint"}


@pytest.mark.parametrize("name", COMMANDS)
def test_help_of_one_command_loads_no_other(name):
    modules = loaded(name, "--help")
    assert rooms(modules) <= LIGHT
    assert {one for one in COMMANDS if f"packetgen.cli.{one}" in modules} == {name}


def test_proof_loads_neither_the_pdf_engine_nor_the_templates(tmp_path):
    modules = loaded("proof", "--content", build(tmp_path / "content"))
    assert "yaml" in modules
    assert not modules & {"weasyprint", "pydyf", "jinja2", "filelock", "watchfiles"}


@pytest.mark.slow
def test_a_build_with_nothing_changed_reads_no_content(last_good):
    """Neither the loaders nor anything that comes after them."""
    modules = loaded("build", *OUT, folder=last_good)
    assert rooms(modules) == {
        *("cli", "digest", "diagnostics", "edition_names", "faults", "load", "nouns"),
        *("offered", "pipeline", "program", "reckon", "record", "systemlibs"),
    }
    assert {
        name for name in modules if name.startswith(("packetgen.load.", "packetgen.reckon."))
    } == {
        "packetgen.load.inputs",
        "packetgen.reckon.moments",
    }
    engines = {"yaml", "numpy", "shapely", "coloraide", "PIL", "jinja2", "weasyprint", "filelock"}
    assert not modules & engines
