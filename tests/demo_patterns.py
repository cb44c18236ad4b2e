"""The demo series' folder names: every test that speaks of the demo speaks of all its patterns."""

from datetime import date
from pathlib import Path

CONTENT = Path(__file__).parent.parent / "content"
SERIES = "potting-bench-almanac"
RELEASED = date(2027, 1, 15)  # its release day, by whose end everything is out
BEFORE = date(2026, 11, 25)
PATTERNS = tuple(
    sorted(path.name for path in (CONTENT / "series" / SERIES).iterdir() if path.is_dir())
)
