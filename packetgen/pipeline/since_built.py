"""What only the last build can tell of the content: what was moved since, and what was forgotten then."""

import json
from pathlib import Path

from packetgen.diagnostics import Problems
from packetgen.pipeline.packets import ledger_path
from packetgen.pipeline.proofs import Proof, with_more
from packetgen.reckon.left_behind import Drawn, Laid, complain_of_left_behind


def with_left_behind(checked: Proof, build: Path) -> Proof:
    """The proof with advice on lines and knots whose stitches were moved since the build in a folder; as it is where
    nothing was built there."""
    found = Problems()
    for each in checked.reckoned:
        for figures in each.figures:
            ledger = build / ledger_path(each.series.id, figures.pattern.id)
            if before := _drawn(ledger):
                complain_of_left_behind(figures.pattern, before, found)
    return with_more(checked, found)


def _drawn(ledger: Path) -> Drawn | None:
    """The chart of a ledger, and what lies on it; None where it cannot be read, or is of another form."""
    try:
        of = json.loads(ledger.read_bytes())["pattern"]
        lines = (("line", one["mark"], one["points"]) for one in of["lines"])
        knots = (("knot", one["mark"], [one["at"]]) for one in of["knots"])
        daisies = (("daisy", one["mark"], [one["base"], one["tip"]]) for one in of["daisies"])
        beads = (("bead", f"{one['card']} {one['number']}", [one["at"]]) for one in of["beads"])
        return Drawn(
            tuple(map(str, of["chart"])),
            frozenset(
                Laid(kind, colour, tuple((float(x), float(y)) for x, y in points))
                for kind, colour, points in (*lines, *knots, *daisies, *beads)
            ),
        )
    except (OSError, ValueError, KeyError, TypeError, RecursionError):
        return None
