"""Patterns that are out, and stitched otherwise than when their revision was first built, with no revision that says so."""

import json
from collections.abc import Callable, Collection, Iterable, Mapping
from dataclasses import replace

from packetgen.digest import digest
from packetgen.model import Pattern
from packetgen.pipeline.packets import ledger_path
from packetgen.reckon.standing import Standing
from packetgen.record import Issued

# What of a ledger's pattern is stitched.
_STITCHED = ("chart", "key", "fractions", "lines", "knots", "daisies", "beads")


def issued(
    all_stand: Iterable[Standing],
    before: Mapping[str, Issued],
    resting: Collection[str],
    changed: Callable[[str], bool],
    ledger_at: Callable[[str], bytes | None],
    ahead: bool = False,
) -> dict[str, Issued]:
    """By the path of its ledger what is kept of each pattern that is out, after what was kept of it `before`; all that was
    of the `resting` series, by id.
    `changed` says whether the ledger at a path is another than it was, and `ledger_at` gives it as it is; None
    where there is none. With `ahead` nobody has yet what is made, so it counts as no first one."""
    found = {path: one for path, one in before.items() if path.split("/")[1] in resting}
    for stands in all_stand:
        for pattern in (figures.pattern for figures in stands.figures):
            path = ledger_path(stands.series.id, pattern.id)
            last = before.get(path)
            now = last.now if last and not changed(path) else _stitched(ledger_at(path))
            if now:
                found[path] = _issued(pattern, last, now, ahead)
    return found


def _issued(pattern: Pattern, last: Issued | None, now: str, ahead: bool) -> Issued:
    if last and last.ahead:
        last = None
    if last and ahead:
        return replace(last, now=now)
    revision = len(pattern.revisions)
    first = last.first if last and last.revision == revision else now
    place = pattern.revisions[-1].place or pattern.place
    return Issued(pattern.title, revision, f"{place}", first, now, ahead)


def _stitched(ledger: bytes | None) -> str:
    """A name for all that is stitched; '' for a ledger that cannot be read."""
    if ledger is None:
        return ""
    try:
        pattern = json.loads(ledger)["pattern"]
    except (ValueError, LookupError):  # of another release of this program
        return ""
    return digest(*(json.dumps(pattern.get(name), sort_keys=True) for name in _STITCHED))
