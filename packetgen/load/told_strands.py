"""Strands that an author's notes count, beside those that the pattern is worked with."""

import re
from collections.abc import Collection, Iterable

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.words import said
from packetgen.model import KeyLine, ThreadSet

_NAMED = re.compile(rf"{COUNTED}\s+(?:strands\b|strand\s+in\s+the\s+needle)", re.IGNORECASE)


def complain_of_told_strands(
    notes: str,
    path: str,
    sets: Iterable[ThreadSet],
    lines: Iterable[KeyLine],
    on_chart: Collection[str],
    problems: Problems,
) -> None:
    """Advice on 'three strands' where nothing in the pattern is worked with so many, no thread has them, and they are not
    what is left of one. `on_chart` is what lies on the chart beside its stitches; beads
    are taken to be sewn on with as many as lines."""
    used, beside = set[int](), set[int]()
    for one in sets:
        of_kinds = {
            "backstitch": one.backstitch_strands,
            "long_stitch": one.backstitch_strands,
            "french_knots": one.knot_strands,
            "lazy_daisies": one.daisy_strands,
            "beads": one.backstitch_strands,
        }
        of_set = {one.strands, *(of_kinds[kind] for kind in on_chart if kind in of_kinds)}
        used |= of_set
        beside |= {one.card.strands, *(one.card.strands - few for few in of_set)}
    used = used.union(*(line.strands.values() for line in lines))
    for named in _NAMED.finditer(notes):
        number = counted_number(named["number"])
        if number is not None and number not in used | beside:
            own = " and ".join(map(str, sorted(used)))
            facts = {"said": said(named[0]), "own": own}
            problems.add(place_in(notes, named.start(), path), "strands-told-other", **facts)
