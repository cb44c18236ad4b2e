"""What is said of patterns that need a revision and have none."""

from collections.abc import Iterable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from packetgen.cli.saying import say

if TYPE_CHECKING:
    from packetgen.record import Issued


def say_of_unrevised(
    patterns: "Iterable[Issued]", build_folder: Path, content_folder: Path, today: date
) -> None:
    """A line for each: buyers would hold two packets of one revision that differ."""
    for one in patterns:
        say(
            f"{content_folder.as_posix()}/{one.place}: {one.title} has another chart, key or lines than revision "
            f"{one.revision} when it was first built into '{build_folder}'; where its packet is sold already, add a line "
            f"under 'revisions', for example - {{date: {today}, note: What has changed.}}; where not, nothing is to do"
        )
