"""What is said of patterns that need a revision and have none."""

from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from packetgen.cli.saying import say

if TYPE_CHECKING:
    from packetgen.model import Pattern


def say_of_unrevised(
    patterns: "Iterable[Pattern]", build_folder: Path, content_folder: Path
) -> None:
    """A line for each: buyers would hold two packets of one revision that differ."""
    for pattern in patterns:
        file = (content_folder / pattern.place.path).as_posix()
        say(
            f"{pattern.title} is stitched otherwise than the last build in '{build_folder}' had it, and is revision "
            f"{len(pattern.revisions)} as before: where its packet is sold already, add a line under 'revisions' in {file}."
        )
