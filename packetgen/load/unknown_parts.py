"""Parts that the steps of a finishing piece name, and that it does not have."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, nearest_of, place_in
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import listed, one_of, plural

# What pieces of wood have, and little else in a step has: our own choice.
_KINDS = (
    "shelf roof lid base plinth foot post rail ledge handle door slat batten gable sill leg drawer canopy crossbar beam"
).split()
_WORKED = re.compile(
    r"\b(?:glue|screw|nail|peg|dowel|saw|sand|smooth|paint|brush|varnish|wax|coats?|fix|fasten|join|mount)\w*\b",
    re.IGNORECASE,
)
_SHOWN = 4


def complain_of_unknown_part(
    filled: Filled, parts: Sequence[Part], hardware: str, steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first 'the shelf' in a sentence on working wood where nothing of the piece is called so. `hardware` are the
    names of what is bought."""
    if len(parts) < 2:
        return  # steps may speak of more than is sawn
    texts = [hardware, filled["name"] or "", filled["about"] or "", *(part.name for part in parts)]
    texts += [one.value["name"] or "" for one in filled.each("keep_out") if one.value]
    known = {word for text in texts for word in re.findall(r"[^\W\d_]+", text.casefold())}
    known |= {one_of(word) for word in known}
    strange = [kind for kind in _KINDS if kind not in known]
    named = re.compile(
        rf"\b(?<!along )(?<!at )(?:the|both|each|all)\s+(?P<part>{any_of([*strange, *map(plural, strange)])})\b(?!-|\s+(?:of|coat)\b)",
        re.IGNORECASE,
    )
    spoken_of = [
        (start + found.start("part"), found["part"])
        for start, sentence in sentences(steps)
        if _WORKED.search(sentence)
        for found in named.finditer(sentence)
    ]
    if not spoken_of:
        return
    start, word = spoken_of[0]
    names = tuple(dict.fromkeys(part.name for part in parts))
    near = nearest_of(word, names)
    several = tuple(map(said, names[:_SHOWN]))
    more = len(names) - _SHOWN
    all_named = f"{', '.join(several)} and {more} more" if more > 0 else listed(several, "or")
    there = f"name one of its parts, {all_named}, or take it out"
    mend = f"did you mean {said(near)}? Else {there}" if near else there
    place = place_in(steps, start, path)
    lines = [place_in(steps, at, path).line for at, one in spoken_of if one_of(one) == one_of(word)]
    others = tuple(str(line) for line in dict.fromkeys(lines) if line != place.line)
    also = f", here and on line{'s' * (len(others) > 1)} {listed(others)}" if others else ""
    facts = {"said": said(word), "also": also, "mend": mend}
    problems.add(place, "step-part-unknown", **facts)
