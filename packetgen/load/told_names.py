"""Names of people that an author's texts spell otherwise than her credits and the list of designers."""

import re
from collections.abc import Mapping
from difflib import get_close_matches

from packetgen.diagnostics import Problems, place_in
from packetgen.load.words import said
from packetgen.model import Designer, Pattern

_NAME = re.compile(r"\b[^\W\d_a-z][\w'’-]*(?:\s+[^\W\d_a-z][\w'’-]*)+")
_OWNS = re.compile(r"['’]s?\Z")
_ONE_NAME = 0.85  # of letters in common; our own choice


def complain_of_told_names(
    pattern: Pattern, path: str, designers: Mapping[str, Designer | None] | None, problems: Problems
) -> None:
    """Advice on the first name in the story and in the notes that is nearly one that is known."""
    known = [one.name for one in (designers or {}).values() if one]
    known += [pattern.model_stitcher, pattern.finisher, pattern.dyer, pattern.photographer]
    full = [name for name in dict.fromkeys(known) if " " in name]
    for file, text in pattern.texts.items():
        for found in _NAME.finditer(text):
            name = " ".join(_OWNS.sub("", found[0]).split())
            near = get_close_matches(name, full, n=1, cutoff=_ONE_NAME)
            if near and not any(_is_of(name, one) for one in full):
                facts = {"said": said(name), "near": said(near[0])}
                problems.add(
                    place_in(text, found.start(), f"{path}/{file}"), "name-told-near", **facts
                )
                break


def _is_of(name: str, one: str) -> bool:
    """Whether it is that name, with more before or behind it, or some of its words."""
    return one in name or set(name.split()) <= set(one.split())
