"""Why a fault comes about, and what mends it: more than fits on its one line."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Why:
    cause: str
    cure: str
