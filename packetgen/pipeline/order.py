"""What is asked of a build, and who hears how it goes on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from packetgen.pipeline.proofs import Proof
    from packetgen.reckon.moments import AsOf


def _nothing(*_: object) -> None:
    pass


class WorkerLost(Exception):
    """A process that worked on a pattern was ended from outside."""


@dataclass(frozen=True)
class Order:
    """What is to be built, and where to."""

    content: Path
    build: Path
    own_templates: Path | None = None
    editions: tuple[str, ...] | None = None  # instead of the patterns' own choice
    as_of: AsOf = None  # what the site shows
    ahead: bool = False  # as it will be shown one day: nobody has what is made
    afresh: bool = False  # take nothing over from the last build
    workers: int = 1
    # Ids of the patterns whose packets may be made anew, of what was found; None for all of them.
    choose: Callable[[Proof], frozenset[str] | None] | None = None


@dataclass(frozen=True)
class Told:
    """Who hears how a build goes on."""

    expect: Callable[[int], None] = _nothing  # how many steps there will be
    step: Callable[[str], None] = _nothing  # one of them is done
    wait: Callable[[], None] = _nothing  # another build is at work there, and is waited for


NOBODY = Told()
