"""One kind of fault, in words with gaps for facts."""

from dataclasses import dataclass
from enum import Enum


class Level(Enum):
    ERROR = "error"  # nothing is written
    ADVICE = "advice"  # printed, and the build goes on


@dataclass(frozen=True)
class Fault:
    wrong: str
    right: str
    level: Level = Level.ERROR
    hinders: bool = True  # an error: whether nothing can be reckoned until it is mended
    ends_file: bool = False  # whether the rest of its file was not looked at
