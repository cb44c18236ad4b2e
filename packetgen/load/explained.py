"""A broken line of YAML as a fault of the author's, at the place that she must mend."""

from dataclasses import dataclass, field

Spot = tuple[int, int]  # line, column, from 1


@dataclass(frozen=True)
class Explained:
    code: str
    line: int
    column: int
    facts: dict[str, object] = field(default_factory=dict)
