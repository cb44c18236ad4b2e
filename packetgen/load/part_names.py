"""What the steps of a finishing piece may call its parts."""

from collections.abc import Sequence

from packetgen.model import Part
from packetgen.nouns import plural

# Of any part a text may say so.
OF_ANY = {
    "top",
    "bottom",
    "back",
    "front",
    "side",
    "edge",
    "end",
    "face",
    "middle",
    "piece",
    "part",
    "wood",
}


def parts_by_name_or_each(parts: Sequence[Part]) -> dict[str, tuple[int, ...]]:
    """Likewise, and by 'a post' and 'each post' all posts."""
    found = parts_by_name(parts)
    kinds = {part.name.casefold().split()[-1] for part in parts} - found.keys()
    each = {f"{word} {kind}": kind for kind in kinds for word in ("a", "an", "each", "either")}
    return found | {
        name: found[plural(kind)] for name, kind in each.items() if plural(kind) in found
    }


def parts_by_name(parts: Sequence[Part]) -> dict[str, tuple[int, ...]]:
    """The numbers of the parts that are meant: by 'left post' and its plural that one, by 'posts' all posts, and by 'rail' the
    only one of several rails that there is."""
    found: dict[str, tuple[int, ...]] = {}
    kinds = [(number, part.name.casefold().split()[-1]) for number, part in enumerate(parts)]
    kinds = [(number, kind) for number, kind in kinds if kind not in OF_ANY]
    for number, kind in kinds:
        found[plural(kind)] = (*found.get(plural(kind), ()), number)
    for number, kind in kinds:
        if found[plural(kind)] == (number,):
            found[kind] = (number,)
    for number, part in enumerate(parts):
        for name in (part.name.casefold(), plural(part.name.casefold())):
            found[name] = (number,)
    return found
