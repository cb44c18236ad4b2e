"""Parts of a finishing piece that its steps list before one paint, beside the paints that they have."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.part_names import parts_by_name
from packetgen.load.prose_words import any_of
from packetgen.load.words import listed, said
from packetgen.model import Part


def complain_of_listed_paints(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first of 'the posts, the rail and the slat in old straw' that has not that paint. Of a part by its whole
    name, straight before the paint, it is told elsewhere."""
    numbers = parts_by_name(parts)
    paints = {coat.paint.name.casefold() for part in parts for coat in part.painted}
    whole = {part.name.casefold() for part in parts}
    name = rf"(?:both\s+|all\s+)?(?:the\s+)?(?:two\s+|three\s+|four\s+)?(?:{any_of(numbers)})"
    before_paint = re.compile(
        rf"(?<![\w-])(?P<parts>{name}(?:(?:,\s*|,?\s+and\s+){name})*)\s+(?:(?:is|are)\s+)?(?:both\s+|all\s+)?(?:painted\s+)?"
        rf"(?:in|with)\s+(?:the\s+)?(?P<paint>{any_of(paints)})(?![\w-])",
        re.IGNORECASE,
    )
    one = re.compile(rf"(?<![\w-])(?:{any_of(numbers)})(?![\w-])", re.IGNORECASE)
    for found in before_paint.finditer(steps) if paints else ():
        called = list(one.finditer(steps, *found.span("parts")))
        for word in called:
            name_told, paint = word[0].casefold(), found["paint"].casefold()
            if word is called[-1] and name_told in whole:
                continue
            for number in numbers[name_told]:
                part = parts[number]
                own = list(dict.fromkeys(coat.paint.name for coat in part.painted))
                if own and paint not in map(str.casefold, own):
                    facts = {
                        "said": said(f"{word[0]} in {found['paint']}"),
                        "part": said(part.name),
                    }
                    facts["own"] = listed(own, "and")
                    place = place_in(steps, word.start(), path)
                    problems.add(place, "step-paint-other", **facts)
                    return
