"""The demo series' folder names: every test that speaks of the demo speaks of all its patterns."""

from pathlib import Path

CONTENT = Path(__file__).parent.parent / "content"
SERIES = "potting-bench-almanac"
PATTERNS = tuple(
    sorted(path.name for path in (CONTENT / "series" / SERIES).iterdir() if path.is_dir())
)
