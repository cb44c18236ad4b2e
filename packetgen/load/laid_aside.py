"""Which advice an author lays aside, and why."""

from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS, Level
from packetgen.load.references import resolve
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import LaidAside

_ADVICE = {code: code for code, fault in FAULTS.items() if fault.level is Level.ADVICE}


def read_laid_aside(filled: Filled, problems: Problems) -> tuple[LaidAside, ...]:
    """Those that can be read; the others are reported."""
    found: dict[tuple[str | None, str], LaidAside] = {}
    for one in filled.each("laid_aside"):
        if one.value is None:
            continue
        place: Place = one.value.place_of("advice")
        code = resolve(one.value["advice"], place, _ADVICE, "kind of advice", problems)
        about = one.value["about"] or ""
        key = code, about.casefold()
        if key in found:
            name = said(f"{code} about {about}" if about else str(code))
            line = found[key].place.line
            problems.add(place, "name-twice", what="kind of advice", other="", name=name, line=line)
        elif code and one.value["because"]:
            found[key] = LaidAside(code, one.value["because"], place, about)
    return tuple(found.values())
