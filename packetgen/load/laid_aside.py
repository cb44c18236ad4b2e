"""Which advice an author lays aside, and why."""

from collections.abc import Mapping

from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS, Level
from packetgen.load.once import Once
from packetgen.load.references import resolve
from packetgen.load.values import Filled
from packetgen.model import LaidAside

_ADVICE = {code: code for code, fault in FAULTS.items() if fault.level is Level.ADVICE}


def _like(code: str | None) -> Mapping[str, str]:
    """All kinds of advice, or of one that is none those that have a word in common with it."""
    if code is None or code in _ADVICE:
        return _ADVICE
    words = {*code.casefold().replace("_", "-").split("-")}
    return {one: one for one in _ADVICE if words & {*one.split("-")}} or _ADVICE


def read_laid_aside(filled: Filled, problems: Problems) -> tuple[LaidAside, ...]:
    """Those that can be read; the others are reported."""
    found: list[LaidAside] = []
    once = Once("kind of advice", problems)
    for one in filled.each("laid_aside"):
        if one.value is None:
            continue
        place: Place = one.value.place_of("advice")
        code = resolve(
            one.value["advice"], place, _like(one.value["advice"]), "kind of advice", problems
        )
        about = one.value["about"] or ""
        if not code or not one.value["because"]:
            continue
        name = f"{code} about {about}" if about else code
        if not once.again(name, place, (code, about.casefold())):
            found.append(LaidAside(code, one.value["because"], place, about))
    return tuple(found)
