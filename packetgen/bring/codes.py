"""What the codes of a design that is written down stand for."""

import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from difflib import SequenceMatcher
from functools import cached_property

from packetgen.bring.drawing import Wish
from packetgen.bring.key_text import KnownLine
from packetgen.diagnostics import nearest_of
from packetgen.model import BARE, Colour

_HEX = re.compile(r"#([0-9a-f]{3}|[0-9a-f]{6})", re.IGNORECASE)
BARE_WORDS = (
    *(BARE, "bare", "none", "nothing", "empty", "blank"),
    *("cloth", "bare cloth", "fabric", "background", "ground"),
)
_LIKE = 0.7  # of a code and a colour's name that may be meant by it


def known_for(
    signs: Collection[str], known: Sequence[KnownLine], of_example: bool
) -> Sequence[KnownLine]:
    """The lines of a key that say something of a design in these signs. One that begin wrote says nothing where a sign is
    none of its marks: a 'b' beside others is the author's own then; nor of a picture, which has no signs."""
    its_own = {*(line.mark for line in known), BARE, ""}
    return () if of_example and not (signs and its_own.issuperset(signs)) else known


@dataclass(frozen=True)
class Codes:
    """What a code in a file may stand for: numbers and names of the card, the author's own list, and the
    lines that the pattern's key has."""

    card: Sequence[Colour]
    given: Sequence[
        tuple[str, str]
    ] = ()  # codes, each with a number or name of the card, or a colour
    known: Sequence[KnownLine] = ()
    card_name: str = "the card"
    of_example: bool = False  # whether the key is one that begin wrote

    @cached_property
    def own(self) -> Mapping[str, str]:
        """What the author says of each code; where she says several things, the last."""
        return dict(self.given)

    def meaning(self, code: str) -> tuple[str, Wish] | None:
        """(colour, wish) of a code as it stands in a table or in the author's list."""
        if is_colour(code):
            return _whole_hex(code), Wish()
        for colour in self.card:
            if code in (colour.number, colour.name):
                return colour.hex, Wish(number=colour.number, coloured=False)
        folded = [
            one
            for one in self.card
            if code.casefold() in (one.number.casefold(), one.name.casefold())
        ]
        if len(folded) == 1:
            return folded[0].hex, Wish(number=folded[0].number, coloured=False)
        return None

    def of_key(self, code: str) -> tuple[str, Wish] | None:
        """The same where it is a mark of the key."""
        for line in self.known:
            if line.mark == code:
                return line.hex, Wish(code, stitch=line.stitch, coloured=False)
        return None

    def for_signs(self, signs: Collection[str]) -> "Codes":
        """The same for a file in these signs."""
        return replace(self, known=known_for(signs, self.known, self.of_example))

    def is_bare(self, meant: str) -> bool:
        """Whether that is no thread, but says that a code stands for bare cloth."""
        return meant.casefold() in BARE_WORDS and self.meaning(meant) is None

    def without_noughts(self, code: str) -> Colour | None:
        """The thread of whose number only the noughts before it are missing, as a spreadsheet leaves it: 70 for
        070; None where there is none, or several."""
        found = [one for one in self.card if one.number.lstrip("0") == code != one.number]
        return found[0] if len(found) == 1 and code.isdecimal() else None

    def nearest(self, code: str) -> Colour | None:
        """The thread whose number or name is nearly the code; None where none is."""
        if numbered := self.without_noughts(code):
            return numbered
        by_word = {word: one for one in self.card for word in (one.number, one.name)}
        near = nearest_of(code, tuple(by_word))
        # 'shell' is like 'holly' in its letters, and means another thing.
        far = near is None or (
            {*code.casefold().split()}.isdisjoint(near.casefold().split())
            and SequenceMatcher(None, code.casefold(), near.casefold()).ratio() < _LIKE
        )
        return None if far or near is None else by_word[near]

    def listed(self, code: str) -> tuple[str, Wish] | None:
        """The same where the author has said it for this code."""
        return self.meaning(self.own[code]) if code in self.own else None

    def is_thread(self, said: str) -> bool:
        """Whether that can be said of a code: it is a thread, a colour or bare cloth."""
        return self.meaning(said) is not None or self.is_bare(said)


def is_colour(code: str) -> bool:
    """Whether that is a colour: '#fff' or '#ffffff'."""
    return _HEX.fullmatch(code) is not None


def _whole_hex(code: str) -> str:
    digits = code[1:].lower()
    return "#" + (digits if len(digits) == 6 else "".join(digit * 2 for digit in digits))
