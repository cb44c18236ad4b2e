"""The program is tidy: lint, formatting and types, each by its own tool as pyproject.toml sets it."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent


def said_by(*tool: str) -> str:
    """What a tool has to say of the project; '' where it is content."""
    ran = subprocess.run(
        [sys.executable, "-m", *tool], cwd=ROOT, capture_output=True, text=True, check=False
    )
    return "" if ran.returncode == 0 else (ran.stdout + ran.stderr).strip() or f"{tool} failed"


@pytest.mark.parametrize(
    "tool",
    [
        ("ruff", "check", "--quiet", "--output-format=concise", "."),
        ("ruff", "format", "--quiet", "--check", "."),
        ("mypy",),
    ],
    ids=["lint", "formatting", "types"],
)
def test_the_tools_find_nothing_to_mend(tool):
    said = said_by(*tool)
    assert not said, "\n" + said
