"""A sign for each thread of a chart: a letter of its name if one is free."""

import string
import unicodedata
from collections.abc import Collection, Iterator, Sequence

from packetgen.model import BARE

# Letters and figures that are taken for one another come late; what YAML, tables and close-ups use never.
_LATE = "lIoO01"
_SIGNS = "*+=%&$@?!^~<>"
_OTHER_LETTERS = (
    "äöüßéèçñåøæþð"
    "αβγδεζηθικλμνξπρστυφχψω"
    "бгджзийлпфцчшщъыьэюя"
    "ΓΔΘΛΞΠΣΦΨΩБГДЖЗИЛПЦЧШЩЪЫЬЭЮЯ"
    "ĀāĂăĄąĆćČčĎďĐđĒēĘęĚěĞğĢģĪīĶķŁłŃńŇňŐőŘřŚśŞşŠšŤťŪūŮůŰűŹźŻżŽž"
)


def marks_for(names: Sequence[str], taken: Collection[str] = ()) -> tuple[str, ...]:
    """One mark for each name, in their order; none of `taken`, none twice.

    The first letter of the name's last word, then those of its other words, then its other letters, in
    small and then as capitals; where all are taken, whatever is free. A name keeps its mark whatever comes
    after it.
    """
    used = set(taken)
    found = []
    for name in names:
        mark = next(mark for mark in _wanted(name) if mark not in used)
        used.add(mark)
        found.append(mark)
    return tuple(found)


def may_be_mark(sign: str) -> bool:
    """Whether a key takes it: one sign that is seen by itself and means nothing else in a chart."""
    return (
        len(sign) == 1
        and sign.isprintable()
        and not sign.isspace()
        and not unicodedata.category(sign).startswith("M")
        and sign not in f"{BARE}#"
    )


def _wanted(name: str) -> Iterator[str]:
    letters = [letter for letter in name.lower() if letter in string.ascii_lowercase]
    words = [word for word in name.lower().split() if word[0] in string.ascii_lowercase]
    first = [word[0] for word in reversed(words)]
    clear = [letter for letter in dict.fromkeys(first + letters) if letter not in _LATE]
    yield from clear
    yield from (letter.upper() for letter in clear if letter.upper() not in _LATE)
    rest = string.ascii_letters + string.digits
    yield from (letter for letter in rest if letter not in _LATE)
    yield from _SIGNS + _LATE + _OTHER_LETTERS
