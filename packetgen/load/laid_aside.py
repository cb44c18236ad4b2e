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
    found: dict[str, LaidAside] = {}
    for one in filled.each("laid_aside"):
        if one.value is None:
            continue
        place: Place = one.value.place_of("advice")
        code = resolve(one.value["advice"], place, _ADVICE, "kind of advice", problems)
        if code in found:
            line = found[code].place.line
            problems.add(
                place, "name-twice", what="kind of advice", other="", name=said(code), line=line
            )
        elif code and one.value["because"]:
            found[code] = LaidAside(code, one.value["because"], place)
    return tuple(found.values())
