"""One hostile change of the tiny folder, and what comes of it."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from tests.content_builder import Change


@dataclass(frozen=True)
class Case:
    """`says` is every fault told, as 'code file' (advice counts only where it is listed); empty means that
    the folder is in order and its output safe. `prepare` does what no mapping of files can say; `heavy`
    cases are run in a process with limits.
    """

    slip: str
    changes: Mapping[str, Change] = field(default_factory=dict)
    says: tuple[str, ...] = ()
    prepare: Callable[[Path], None] | None = None
    heavy: bool = False


def told(slip: str, changes: Mapping[str, Change], *says: str, **more: object) -> Case:
    """A case that ends in these faults."""
    return Case(slip, changes, says, **more)


def safe(slip: str, changes: Mapping[str, Change], **more: object) -> Case:
    """A case whose output is looked through."""
    return Case(slip, changes, (), **more)
