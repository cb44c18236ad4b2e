"""Published values to check against. Each file names its sources in its first lines."""

import csv
from pathlib import Path

_FOLDER = Path(__file__).parent / "check_values"


def rows(name: str) -> list[dict[str, str]]:
    """The rows of a table of published values."""
    lines = (_FOLDER / f"{name}.csv").read_text(encoding="utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("# ")))
