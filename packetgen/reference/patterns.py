"""The form of single values as regular expressions, for editors that check while someone types.

They keep to what ECMA-262 and Python both read alike, as JSON Schema asks (2020-12, core, 6.4): no flags,
no ASCII-only `\\d`. Each takes everything that the reader of that value takes.
"""

from collections.abc import Iterable

from packetgen.load.dates import NTH, SEASONS, WEEKDAYS
from packetgen.load.schema import DaysBefore, Measure
from packetgen.load.spoken_days import MONTHS
from packetgen.yarn_numbers import DIRECT, INDIRECT

_SYNTAX = set("^$\\.*+?()[]{}|/")
_GAP = r"\s+"
_DECIMAL = r"[0-9]{1,12}(?:\.[0-9]{1,12})?"
_FRACTION = r"(?:[0-9]{1,6} )?[0-9]{1,6}/0{0,5}[1-9][0-9]{0,5}"
_DAY = r"(?:20[0-9]{2}|2100)-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])"
_COORDINATE = r"-?[0-9]{1,6}(?:\.[0-9]{1,9})?"
# A quarter of a stitch, whatever noughts follow.
_QUARTERS = r"-?[0-9]{1,6}(?:\.(?:0{1,9}|[27]50{0,7}|50{0,8}))?"

_DOTS = r"(?!\s*(?:…|\.\.\.)\s*$)"  # alone they stand for what is to be written
SOME_WORD = rf"^{_DOTS}[\s\S]*\S"
ONE_LINE = rf"^{_DOTS}\s*\S[^\n]*(?:\n\s*)?$"  # nothing but room after its line
SHORT_NAME = r"^[a-z0-9]+(?:-[a-z0-9]+)*$"
WHOLE = r"^-?[0-9]{1,12}$"
NUMBER = rf"^-?{_DECIMAL}$"
MONEY = r"^\s*[0-9]{1,9}(?:\.[0-9]{1,3})?\s*[A-Z]{3}\s*$"
HEX = r"^#[0-9a-fA-F]{6}$"
DAY = f"^{_DAY}$"
MOMENT = rf"^\s*{_DAY}(?:{_GAP}(?:[01]?[0-9]|2[0-3]):[0-5][0-9]{_GAP}\S+)?\s*$"
PAIR = rf"^\s*{_COORDINATE},{_COORDINATE}\s*$"
CELL = r"^\s*[0-9]{1,5},[0-9]{1,5}\s*$"
POINTS = rf"^\s*{_QUARTERS},{_QUARTERS}(?:\s+{_QUARTERS},{_QUARTERS})*\s*$"
# Three corners or more, or the data of an SVG path, of which only the first letter is looked at.
OUTLINE = rf"^\s*(?:{_COORDINATE},{_COORDINATE}(?:\s+{_COORDINATE},{_COORDINATE}){{2,}}\s*$|[Mm](?![A-Za-z]))"
WEB_ADDRESS = r"^[hH][tT][tT][pP][sS]?://[^\s<>\"'`\\{}|^@/?#]+(?:[/?#][^\s<>\"'`\\{}|^]*)?$"


def any_case(word: str) -> str:
    """'may' → '[mM][aA][yY]', since these expressions have no flags."""
    return "".join(
        f"[{letter.lower()}{letter.upper()}]" if letter.isalpha() else _plain(letter)
        for letter in word
    )


def measure(kind: Measure) -> str:
    """A number or a fraction, and one of the units."""
    units = (_GAP.join(map(_plain, unit.split())) for unit in _longest_first(kind.units))
    return rf"^\s*(?:{_FRACTION}|{_DECIMAL})\s*(?:{'|'.join(units)})\s*$"


def days_before(kind: DaysBefore) -> str:
    """'7 days', '2 weeks', 'on the day', up to the most that is allowed."""
    days, weeks = (
        "|".join(str(number) for number in range(kind.at_most // length + 1)) for length in (1, 7)
    )
    number = rf"0{{0,2}}(?:{days})\s*days?|0{{0,2}}(?:{weeks})\s*weeks?"
    return rf"^(?:(?:{number})(?:\s+before)?|{any_case('on the day')})$"


def yarn_size() -> str:
    """'Ne 12/2', 'Nm 34', '225 denier', 'dtex 280', '140 dtex x 2'."""
    number, direct = r"[0-9]{1,5}(?:\.[0-9]{1,4})?", _either(DIRECT)
    plies = r"(?:\s*[x×]\s*[0-9]{1,2})?"
    counted = rf"{_either(INDIRECT)}\s*{number}(?:\s*/\s*[0-9]{{1,2}})?"
    weighed = rf"(?:{direct}\s*{number}|{number}\s*{direct}){plies}"
    return rf"^\s*(?:{counted}|{weighed})\s*$"


def rule() -> str:
    """A day of every year in each of the forms that `load.dates` reads."""
    month, weekday = _either(MONTHS), _either(WEEKDAYS)
    beside = (
        rf"(?:[0-9]{{1,3}}{_GAP}{any_case('day')}[sS]?{_GAP}{_either(('before', 'after'))}{_GAP})?"
    )
    the = rf"(?:{any_case('the')}{_GAP})?"
    equinox = _either(("March", "September", "spring", "autumn")) + _GAP + any_case("equinox")
    solstice = _either(("June", "December", "summer", "winter")) + _GAP + any_case("solstice")
    within = any_case("in") + _GAP
    forms = (
        rf"{beside}(?:{any_case('julian')}{_GAP})?{any_case('easter')}",
        rf"{beside}{the}(?:{equinox}|{solstice})",
        rf"(?:{within})?{_either(SEASONS)}",
        rf"{within}{month}",
        rf"(?:0?[1-9]|[12][0-9]|3[01]){_GAP}{month}",
        rf"{_either(NTH)}{_GAP}{weekday}{_GAP}{_either(('of', 'in'))}{_GAP}{month}",
    )
    return rf"^\s*(?:{'|'.join(forms)})\s*$"


def _either(words: Iterable[str]) -> str:
    return f"(?:{'|'.join(any_case(word) for word in _longest_first(words))})"


def _longest_first(words: Iterable[str]) -> list[str]:
    return sorted(words, key=lambda word: (-len(word), word))


def _plain(word: str) -> str:
    return "".join(f"\\{letter}" if letter in _SYNTAX else letter for letter in word)
