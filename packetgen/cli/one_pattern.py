"""The one pattern that a command is about."""

from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen.cli.common import nothing_written, say_problems

if TYPE_CHECKING:
    from packetgen.reckon.figures import Figures


def figures_of(name: str, content_folder: Path) -> "Figures":
    """The figures of one pattern; ends the command where it cannot be reckoned, or is not there."""
    from packetgen.diagnostics import nearest
    from packetgen.pipeline import proof

    checked = proof(content_folder)
    known = {one.pattern.id: one for each in checked.reckoned for one in each.figures}
    if not known and not checked.sound:
        say_problems(checked.problems.errors, content_folder)
        nothing_written(len(checked.problems.errors))
    if name not in known:
        raise click.UsageError(
            f"there is no pattern called {name!r}; {nearest(name, sorted(known))}"
        )
    return known[name]
