"""Names that point to something written elsewhere."""

from collections.abc import Mapping
from typing import TypeVar

from packetgen.diagnostics import Place, Problems
from packetgen.load.words import offer, said, shown

T = TypeVar("T")


def resolve(
    name: str | None,
    place: Place,
    known: Mapping[str, T | None] | None,
    what: str,
    problems: Problems,
    called: Mapping[str, str] | None = None,
    of: str = "",
) -> T | None:
    """What `name` stands for; None where it is unknown (reported) or was broken itself (reported
    there).

    known: name → thing, None for a thing that exists and could not be read;
    None altogether where nobody can tell.
    called: what the author may have written in place of the name → the name.
    of: the card or cloth that would have to have it.
    """
    if name is None or known is None:
        return None
    if name in known:
        return known[name]
    right = (called or {}).get(name.casefold())
    hint = f"write {said(right)}, which goes by that name" if right else offer(name, tuple(known))
    if of:
        problems.add(place, "colour-unknown", of=shown(of), what=what, name=said(name), hint=hint)
    else:
        problems.add(place, "reference-unknown", what=what, name=said(name), hint=hint)
    return None
