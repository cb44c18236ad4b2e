"""What was corrected in a pattern, and when."""

from itertools import pairwise

from packetgen.diagnostics import Problems
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Revision

_FIRST = "first issue"  # as notes of it begin


def read_revisions(filled: Filled, problems: Problems) -> tuple[Revision, ...]:
    """In the order in which they stand; told are those that are twice, out of order, or a first issue that is none."""
    revisions = [one.value for one in filled.each("revisions") if one.value is not None]
    dated = [one for one in revisions if one["date"] is not None]
    for before, after in pairwise(dated):
        if after["date"] < before["date"]:
            place = after.place_of("date")
            first = (before["note"] or "").casefold().startswith(_FIRST)
            mend = (
                f"mend the day, to {before['date']} or later"
                if first
                else "put the oldest first, or mend the day"
            )
            facts = {"date": after["date"], "before": before["date"], "mend": mend}
            facts["first"] = ", the first issue" if first else ""
            problems.add(place, "revisions-order", **facts)
        elif (after["date"], after["note"]) == (before["date"], before["note"]):
            problems.add(after.place_of("date"), "revision-twice")
        elif (note := after["note"] or "").casefold().startswith(_FIRST):
            problems.add(after.place_of("note"), "revision-first", note=said(note))
    return tuple(Revision(one["date"], one["note"], one.place_of("date")) for one in revisions)
