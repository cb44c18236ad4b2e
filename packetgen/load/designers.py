"""The designers of a series."""

from collections.abc import Mapping

from packetgen.diagnostics import Problems
from packetgen.load.once import Once
from packetgen.load.values import Filled
from packetgen.model import Designer, Link, Sells

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
            called[one["name"].casefold()] = name
        designers[name] = _designer(one) if given.whole else None
    lost = any(one.value is None or one.value["id"] is None for one in series.each("designers"))
    if lost or repeated:
        return None, called  # which id is missing nobody can tell; of two alike one may be it
    return designers, called


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
