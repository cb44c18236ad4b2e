"""The designers of a series."""

import unicodedata
from collections.abc import Mapping
from difflib import SequenceMatcher

from packetgen.diagnostics import Problems
from packetgen.load.once import Once
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Designer, Link, Sells

_ALIKE = 0.9  # of the letters: our own choice
# Each by her id; None for one that could not be read.
Designers = dict[str, Designer | None]


def read_designers(
    series: Filled, problems: Problems
) -> tuple[Designers | None, Mapping[str, str]]:
    """Designers by id, and ids by the designers' names. None where it cannot be told who there is."""
    if series["designers"] is None:
        return None, {}
    designers: Designers = {}
    called: dict[str, str] = {}
    once, repeated = Once("designer", problems, another="id"), False
    for given in series.each("designers"):
        one = given.value
        if one is None or one["id"] is None:
            continue
        name = one["id"]
        repeated |= once.again(name, one.place_of("id"))
        if one["name"]:
            _look_at_name(one, problems)
            called[one["name"].casefold()] = name
        designers[name] = _designer(one) if given.whole else None
    lost = any(one.value is None or one.value["id"] is None for one in series.each("designers"))
    if lost or repeated:
        return None, called  # which id is missing nobody can tell; of two alike one may be it
    return designers, called


def _look_at_name(one: Filled, problems: Problems) -> None:
    """Advice where the name and the id made from it are spelt nearly alike."""
    name, of_id = _letters(one["name"]), _letters(one["id"])
    if name != of_id and SequenceMatcher(None, name, of_id).ratio() >= _ALIKE:
        facts = {"name": said(one["name"]), "id": said(one["id"])}
        problems.add(one.place_of("name"), "designer-name-near", **facts)


def _letters(text: str) -> str:
    """Without accents, spaces and hyphens."""
    plain = unicodedata.normalize("NFKD", text.casefold())
    return "".join(one for one in plain if one.isalnum())


def _designer(one: Filled) -> Designer:
    return Designer(
        id=one["id"],
        name=one["name"],
        about=one["about"],
        sells=Sells(one["sells"]),
        shop=one["shop"],
        links=tuple(Link(link.value["name"], link.value["url"]) for link in one.each("links")),
        studio=one["studio"],
        place=one.place_of("id"),
    )
