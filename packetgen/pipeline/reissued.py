"""Patterns that are out, whose stitches are others than in the last build although no revision says so."""

import json
from collections.abc import Callable, Iterable, Iterator, Mapping
from pathlib import Path

from packetgen.model import Pattern
from packetgen.pipeline.packets import ledger_path
from packetgen.reckon.standing import Standing
from packetgen.record import Output

# What of a ledger's pattern is stitched.
_STITCHED = ("chart", "key", "fractions", "lines", "knots", "daisies", "beads")


def unrevised(
    all_stand: Iterable[Standing],
    before: Mapping[str, Output],
    last: Path,
    ledger_now: Callable[[str], bytes | None],
) -> Iterator[Pattern]:
    """Of the patterns that are out and were so in the `last` build, of which `before` has the files, those that need
    a revision and have none. `ledger_now` gives the ledger that stands at a path; None for one that stays as it is."""
    for stands in all_stand:
        for pattern in (figures.pattern for figures in stands.figures):
            path = ledger_path(stands.series.id, pattern.id)
            if path not in before or not _was_out(stands.series.id, pattern.id, before):
                continue
            now = ledger_now(path)
            if now is not None and _stitched_otherwise(_read(last / path), now):
                yield pattern


def _was_out(series_id: str, pattern_id: str, before: Mapping[str, Output]) -> bool:
    """A picture of the whole design was on the site."""
    return any(
        one.series == series_id and path.startswith("site/") and f"/{pattern_id}/mounted-" in path
        for path, one in before.items()
    )


def _read(ledger: Path) -> bytes | None:
    try:
        return ledger.read_bytes()
    except OSError:
        return None


def _stitched_otherwise(before: bytes | None, now: bytes) -> bool:
    if before is None:
        return False
    try:
        old, new = json.loads(before)["pattern"], json.loads(now)["pattern"]
    except (ValueError, LookupError):  # of another release of this program
        return False
    same_revision = old.get("revision") == new.get("revision")
    return same_revision and any(old.get(name) != new.get(name) for name in _STITCHED)
