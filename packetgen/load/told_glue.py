"""Glue of which the steps of a finishing piece tell, beside what is to buy and what it is for."""

import re
from collections.abc import Iterator, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import listed

_GLUED = re.compile(r"(?<!no )(?<!without )\bglu(?:e|ed|ing)\b", re.IGNORECASE)
_KIND_OF_GLUE = re.compile(
    r"\b(?P<kind>hot|wood|fabric|textile|craft|contact|paper|white|clear|tacky|two-part|epoxy|spray)\s+glue\b",
    re.IGNORECASE,
)
_TO_GLUE = re.compile(r"\bglue\s+(?:the|a|an|both|each|all|one|two|three|four|\d)\b", re.IGNORECASE)
_METAL = re.compile(r"\b(?:magnet|washer)s?\b", re.IGNORECASE)
_EVERYTHING = r"all|any|every(?:thing)?|whole|piece"
_FOR_METAL = re.compile(rf"\b(?:magnets?|washers?|metal|steel|iron|{_EVERYTHING})\b", re.IGNORECASE)
_FOR_WOOD = rf"wood(?:en)?|parts?|boards?|frame|joints?|timber|ply|plywood|sawn|{_EVERYTHING}"


def complain_of_told_glue(
    filled: Filled, parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice where the steps glue, and no glue is to buy; on 'hot glue' where none is called so; and on the first step that
    glues wood, or magnets and washers, where no glue is for that."""
    said_at = _GLUED.search(steps)
    names = names_of_glues(filled)
    if not filled["glue"] and said_at:
        problems.add(place_in(steps, said_at.start(), path), "glue-unlisted", word=said(said_at[0]))
    words = set(re.findall(r"[\w-]+", " ".join(names).casefold()))
    for found in _KIND_OF_GLUE.finditer(steps) if names else ():
        if found["kind"].casefold() not in words:
            facts = {"said": said(found[0]), "names": listed(tuple(map(said, names)), "or")}
            problems.add(place_in(steps, found.start(), path), "glue-told-other", **facts)
            return
    for start, word in _without_glue(filled, parts, steps):
        facts = {"what": said(word), "names": listed(tuple(map(said, names)))}
        problems.add(place_in(steps, start, path), "glue-for-none", **facts)
        return


def _without_glue(filled: Filled, parts: Sequence[Part], steps: str) -> Iterator[tuple[int, str]]:
    """Where what is glued stands, and its word, of which no glue tells that it is for that; each glue must tell for what."""
    glues = [one.value for one in filled.each("glue") if one.value is not None]
    if not glues or not all(glue["for"] for glue in glues):
        return
    uses = " ; ".join(f"{glue['name']} {glue['for']}" for glue in glues)
    names = {part.name.casefold() for part in parts}
    for_wood = re.search(rf"\b(?:{_FOR_WOOD}|{any_of(names)})", uses, re.IGNORECASE)
    for_metal = _FOR_METAL.search(uses)
    for start, sentence in sentences(steps):
        if not (glued := _TO_GLUE.search(sentence)):
            continue
        metal = _METAL.search(sentence, glued.start())
        wood = re.compile(rf"\b(?:{any_of(names)})\b", re.IGNORECASE).search(
            sentence, glued.start()
        )
        if metal and not for_metal:
            yield start + metal.start(), metal[0]
        elif wood and not metal and not for_wood:
            yield start + wood.start(), wood[0]


def names_of_glues(filled: Filled) -> list[str]:
    return [one.value["name"] or "" for one in filled.each("glue") if one.value is not None]
