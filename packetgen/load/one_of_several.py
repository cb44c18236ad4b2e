"""Parts and hardware of which a finishing piece has several, and of which its steps speak as of one."""

import re

from packetgen.diagnostics import Problems
from packetgen.load.number_words import COUNT
from packetgen.load.prose_words import named
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.nouns import plural

_HEADING = re.compile(r"^#.*$", re.MULTILINE)
_THE = re.compile(r"\b(?:the|its|this)\s+\Z", re.IGNORECASE)
# Before a name in the singular, they tell of several.
_SEVERAL = re.compile(
    rf"\b(?:each|every|either|neither|another|one|other|second|next|a|an|per|{COUNT})\s+(?:[a-z-]+\s+)?\Z",
    re.IGNORECASE,
)


def complain_of_one_of_several(filled: Filled, steps: str, problems: Problems) -> None:
    """Advice on each number of pieces above 1, of what the steps call 'the cap' throughout and never 'caps' or 'each cap'."""
    text = _HEADING.sub("", steps)
    entries = [one.value for group in ("parts", "hardware") for one in filled.each(group)]
    names = {line["name"].casefold() for line in entries if line is not None and line["name"]}
    for line in entries:
        if line is None or not line["name"] or (line["pieces"] or 1) == 1:
            continue
        name = line["name"].casefold()
        kind = name.split()[-1]
        if re.search(rf"\b(?:{re.escape(plural(kind))}|pairs?\s+of)\b", text, re.IGNORECASE):
            continue
        spoken = [
            one for one in named(names | {kind}).finditer(text) if one[0].casefold() in (name, kind)
        ]
        before = [text[max(0, one.start() - 30) : one.start()] for one in spoken]
        ones = [one for one, words in zip(spoken, before) if _THE.search(words)]
        if ones and not any(map(_SEVERAL.search, before)):
            facts = {
                "number": line["pieces"],
                "name": said(line["name"]),
                "said": said(f"the {ones[0][0]}"),
            }
            problems.add(line.place_of("pieces"), "pieces-told-one", **facts)
