"""Bytes to text: UTF-8 only, and no character that an author cannot see."""

import unicodedata

from packetgen.diagnostics import Place, Problems
from packetgen.load.office_files import kept_as
from packetgen.load.words import LOST, said

_BOM = b"\xef\xbb\xbf"
_UNSEEN = {
    "\x00": "a NUL",
    "\u200b": "a zero-width space",
    "\u2028": "an unseen line break (U+2028)",
    "\u2029": "an unseen paragraph break (U+2029)",
    "\ufeff": "a byte order mark",
}
# Marks that turn the direction of writing:
# with them a line can read otherwise than it is built (Unicode UAX #9).
_DIRECTION = set("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")


# Control characters, halves of characters, private and unassigned ones (Unicode general
# categories).
_NO_LETTERS = ("Cc", "Cs", "Co", "Cn")


def checked_text(data: bytes, path: str, problems: Problems) -> str | None:
    """The text in `data` with line ends as '\\n'. None where it is no text at all.

    A character that cannot stand is reported and replaced by LOST, so that the rest can still be
    checked.
    """
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        problems.add(Place(path), "not-utf8", what="the whole file is in UTF-16")
        return None
    if kind := kept_as(data):
        name = said(path.rpartition("/")[2])
        problems.add(Place(path), "text-kept-otherwise", name=name, kind=kind)
        return None
    data = data.removeprefix(_BOM).replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    if b"\x00" in data:
        start = data.index(b"\x00")
        problems.add(_place_of_byte(data, start, path), "not-text")
        return None
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as error:
        before = data[data.rfind(b"\n", 0, error.start) + 1 : error.start].decode("utf-8").split()
        what = (
            f"the letter after {said(before[-1][-20:])} is"
            if before
            else "the first letter of this line is"
        )
        problems.add(
            _place_of_byte(data, error.start, path), "not-utf8", what=f"{what} not in UTF-8"
        )
        # Only the first bad byte is worth a message: the remedy mends them all.
        return without_unseen(
            data.decode("utf-8", "replace").replace(LOST, "\x1a"), path, problems, quiet="\x1a"
        )
    return without_unseen(text, path, problems)


def without_unseen(text: str, path: str, problems: Problems, quiet: str = "") -> str:
    """`text` with each unseen character reported (once for each kind) and replaced by LOST."""
    bad = {letter for letter in set(text) if unseen(letter)}
    for letter in sorted(bad - set(quiet)):
        first = text.index(letter)
        line_start = text.rfind("\n", 0, first) + 1
        place = Place(path, text.count("\n", 0, first) + 1, first - line_start + 1)
        times = text.count(letter)
        more = f" (and {times - 1} more in this file)" if times > 1 else ""
        if letter == LOST:
            problems.add(place, "letter-lost", more=more)
        else:
            problems.add(place, "unseen-character", what=describe(letter), more=more)
    return text.translate({ord(letter): LOST for letter in bad})


def unseen(letter: str) -> bool:
    """Whether a character may not stand in an author's text."""
    if letter in _UNSEEN or letter in _DIRECTION or letter == LOST:
        return True
    return letter not in "\n\t" and unicodedata.category(letter) in _NO_LETTERS


def describe(letter: str) -> str:
    """An unseen character in words: 'a mark that turns the direction of writing (U+202E)'."""
    if letter in _UNSEEN:
        return _UNSEEN[letter]
    kind = "a character of no script"
    if letter in _DIRECTION:
        kind = "a mark that turns the direction of writing"
    elif unicodedata.category(letter) == "Cc":
        kind = "a control character"
    return f"{kind} (U+{ord(letter):04X})"


def _place_of_byte(data: bytes, index: int, path: str) -> Place:
    line_start = data.rfind(b"\n", 0, index) + 1
    column = len(data[line_start:index].decode("utf-8", "replace")) + 1
    return Place(path, data.count(b"\n", 0, index) + 1, column)
