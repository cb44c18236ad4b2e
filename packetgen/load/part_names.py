"""What the steps of a finishing piece may call its parts."""

from collections.abc import Sequence

from packetgen.model import Part
from packetgen.nouns import plural


def parts_by_name(parts: Sequence[Part]) -> dict[str, tuple[int, ...]]:
    """The numbers of the parts that are meant: by 'left post' and its plural that one, by 'posts' all posts, and by 'rail' the
    only one of several rails that there is."""
    found: dict[str, tuple[int, ...]] = {}
    for number, part in enumerate(parts):
        kind = plural(part.name.casefold().split()[-1])
        found[kind] = (*found.get(kind, ()), number)
    for number, part in enumerate(parts):
        last = part.name.casefold().split()[-1]
        if found[plural(last)] == (number,):
            found[last] = (number,)
    for number, part in enumerate(parts):
        for name in (part.name.casefold(), plural(part.name.casefold())):
            found[name] = (number,)
    return found
