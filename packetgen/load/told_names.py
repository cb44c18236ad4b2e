"""Names of people that an author's texts spell otherwise than her credits and the list of designers."""

import re
from collections.abc import Iterable, Mapping, Sequence
from difflib import get_close_matches

from packetgen.diagnostics import Problems, place_in
from packetgen.load.words import said

_NAME = re.compile(r"\b[^\W\d_a-z][\w'’-]*(?:\s+[^\W\d_a-z][\w'’-]*)+")
_OWNS = re.compile(r"['’]s?\Z")
_ONE_NAME = 0.85  # of letters in common; our own choice


def complain_of_told_names(
    texts: Mapping[str, str], people: Iterable[str], path: str, problems: Problems
) -> None:
    """Advice on the first name in each of the texts, by their files in the folder `path`, that is nearly that of one of these
    people, or has the same first name, where the text does not name that one."""
    full = [name for name in dict.fromkeys(people) if " " in name]
    for file, text in texts.items():
        for found in _NAME.finditer(text):
            name = " ".join(_OWNS.sub("", found[0]).split())
            near = get_close_matches(name, full, n=1, cutoff=_ONE_NAME) or _of_one_first_name(
                name, [one for one in full if one not in text]
            )
            if near and not any(_is_of(name, one) for one in full):
                facts = {"said": said(name), "near": said(near[0])}
                problems.add(
                    place_in(text, found.start(), f"{path}/{file}"), "name-told-near", **facts
                )
                break


def _of_one_first_name(name: str, full: Sequence[str]) -> list[str]:
    """The one of these that is called so, and otherwise by her family: 'Tam Harrow' of 'Tam Wexford'."""
    words = name.split()
    alike = [
        one for one in full if len(words) == 2 == len(one.split()) and one.split()[0] == words[0]
    ]
    return alike if len(alike) == 1 else []


def _is_of(name: str, one: str) -> bool:
    """Whether it is that name, with more before or behind it, or some of its words."""
    return one in name or set(name.split()) <= set(one.split())
