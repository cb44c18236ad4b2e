"""What is said of patterns that need a revision and have none."""

from collections.abc import Iterable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from packetgen.cli.saying import say

if TYPE_CHECKING:
    from packetgen.diagnostics import Problems
    from packetgen.record import Issued


def say_of_unrevised(
    patterns: "Iterable[Issued]", build_folder: Path, content_folder: Path, today: date
) -> None:
    """A line for each: buyers would hold two packets of one revision that differ."""
    for problem in unrevised(patterns, build_folder, today):
        say(f"{content_folder.as_posix()}/{problem.printed}")


def unrevised(patterns: "Iterable[Issued]", build_folder: Path, today: date) -> "Problems":
    """Advice on each, at its last revision or its first line."""
    from packetgen.diagnostics import Place, Problems

    found = Problems()
    for one in patterns:
        path, line, column = one.place.rsplit(":", 2)
        found.add(
            Place(path, int(line), int(column)),
            "revision-missing",
            title=one.title,
            revision=one.revision,
            build=build_folder,
            today=today,
        )
    return found
