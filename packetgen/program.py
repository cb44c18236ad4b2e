"""The files that the program itself consists of: whatever it makes depends on them too."""

import os
import sys
from functools import cache
from importlib.util import find_spec
from pathlib import Path

from packetgen.digest import digest

PACKAGE = Path(__file__).parent


def project_templates() -> Path:
    """The project's own templates: beside the package in a clone, inside it once installed."""
    inside = PACKAGE / "templates"
    return inside if inside.is_dir() else PACKAGE.parent / "templates"


def guide_sources() -> dict[str, bytes]:
    """Every file of the guide by its path in it: Markdown, schemas, pictures."""
    guide = PACKAGE / "guide"
    return {
        path.relative_to(guide).as_posix(): path.read_bytes()
        for path in sorted(guide.rglob("*"))
        if path.is_file()
    }


def message_examples() -> bytes:
    """The examples of messages, in JSON."""
    return (PACKAGE / "reference" / "examples.json").read_bytes()


@cache
def libraries() -> str:
    """A digest of the Python that runs and of every library installed beside the PDF engine, by their
    names and versions."""
    engine = find_spec("weasyprint")
    beside = Path(engine.origin).parent.parent if engine and engine.origin else Path()
    installed = sorted(name for name in os.listdir(beside) if name.endswith(".dist-info"))
    return digest(sys.version, sys.platform, tuple(installed))
