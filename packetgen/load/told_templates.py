"""Parts of a finishing piece that its steps saw by a template, and that have none."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT
from packetgen.load.placed_parts import placed_part
from packetgen.load.prose_words import any_of
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import listed, plural

_ALL = re.compile(r"\b(?:all|each|every)\b.*\b(?:parts?|pieces?)\b", re.IGNORECASE | re.DOTALL)
_DUST = 1e-6  # of a part's box, that a rectangle may leave of it


def complain_of_told_templates(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on 'saw the board and the rail by their templates' where the rail is a rectangle, so that none is printed."""
    names = any_of({name for part in parts for name in _names(part)})
    one = rf"(?:the|a|both|all|each|every|of|and|parts?|pieces?|{COUNT}|{names})"
    by_template = re.compile(
        rf"\b(?:saw|cut)\s+(?:out\s+)?(?P<what>(?>{one}[,\s]+)++)(?:by|with|from|after|along|round|to)\s+"
        r"(?:(?:the|its|their|a|printed|paper|full-size)\s+)++templates?\b",
        re.IGNORECASE,
    )
    for found in by_template.finditer(steps):
        every = _ALL.search(found["what"])
        told = list(re.finditer(names, found["what"], re.IGNORECASE))
        spoken_of = [one[0].casefold() for one in told]
        ruled = [
            part
            for part in parts
            if (every or {*spoken_of} & {*_names(part)}) and _is_rectangle(part)
        ]
        if ruled:
            of_ruled = {name for part in ruled for name in _names(part)}
            first = next((one.start() for one in told if one[0].casefold() in of_ruled), 0)
            are = "it is a rectangle" if len(ruled) == 1 else "they are rectangles"
            facts = {"parts": listed(tuple(said(part.name) for part in ruled)), "are": are}
            place = place_in(steps, found.start("what") + first, path)
            problems.add(place, "step-template-none", **facts)
            return


def _names(part: Part) -> tuple[str, ...]:
    """As a text may speak of it: by its name, or as one of several."""
    name = part.name.casefold()
    return name, plural(name), plural(name.split()[-1])


def _is_rectangle(part: Part) -> bool:
    outline = placed_part(part)
    return bool(outline.envelope.area - outline.area <= _DUST * outline.envelope.area)
