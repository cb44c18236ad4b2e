"""Pages as they stood when somebody last looked at them.

`UPDATE_GOLDEN=1` in the environment writes them anew: look at the difference before you commit it.
"""

import os
from pathlib import Path

_FOLDER = Path(__file__).parent / "golden"


def same_as_golden(name: str, made: str) -> None:
    """Fail with the difference where `made` is not the page that is kept as `name`."""
    kept = _FOLDER / name
    if os.environ.get("UPDATE_GOLDEN"):
        kept.parent.mkdir(exist_ok=True)
        kept.write_text(made, encoding="utf-8", newline="\n")
    assert made == kept.read_text(encoding="utf-8")
