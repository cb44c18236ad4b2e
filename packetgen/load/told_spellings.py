"""Names of colours of the key that an author's texts misspell."""

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher
from functools import lru_cache

from packetgen.diagnostics import Place, Problems
from packetgen.load.told_numbers import counts_something
from packetgen.load.words import said, shown
from packetgen.model import ThreadCard

_WORD = re.compile(r"[^\W\d_](?:['’]?[^\W\d_])*")
_ALIKE = 0.85  # of the letters, for what is believed to be the same name: our own choice
_ENOUGH = 5  # letters of a name that stands beside its number: our own choice
# Of a name that stands alone: 'old boot' is not 'old soot'. Our own choice.
_MUCH_ALIKE, _LONG = 0.92, 10
_WORKED_IN = re.compile(
    r"\b(?:in|with)\s+(?:[a-z ]{2,24}\s+and\s+)?\Z", re.IGNORECASE
)  # before a colour rather than a thing
_NEAR = 16  # letters before a name, with its number among them
_LONGER = 3  # letters more or less than the name has
_ENDINGS = re.compile(r"(?:ies|e?s|['’]s|e?d|e?r|e?st|ing|ish|y|en|ly)?")


def complain_of_told_spellings(
    text: str,
    path: str,
    cards: Sequence[ThreadCard],
    used: Collection[str],
    former: Mapping[str, str],
    problems: Problems,
) -> frozenset[tuple[int, str]]:
    """Advice on '110 windfall yelow' and 'in windfall yelow' where colour 110, which the key has `used`, is windfall
    yellow. A name of one word is sought beside its number alone, and so is one of the `former` names, by the numbers of the
    colours that seem to have had them. Given back are the lines of what is told, with those numbers."""
    known = {colour.name.casefold() for card in cards for colour in card.colours.values()}
    sought = _sought(cards, used, former)
    counts = {one.spelt.count(" ") + 1 for one in sought}
    least = min((len(one.spelt) for one in sought), default=0) - _LONGER
    told: dict[tuple[int, str], str] = {}  # the line and what stands there → the number
    in_notes = path.endswith("stitching.md")  # a story may well speak of the fruit
    for row, line in enumerate(text.split("\n"), 1):
        if len(line) < least:
            continue
        for count in counts:
            # A name of one word is believed beside its number alone.
            here = [
                one
                for one in sought
                if one.spelt.count(" ") == count - 1
                and (count > 1 or one.number in line or (in_notes and "*" in line))
            ]
            for start, phrase in _phrases(line, count) if here else ():
                lower = phrase.casefold()
                if lower in known or (row, lower) in told:
                    continue
                for one in here:
                    if one.told_by(lower, line, start, in_notes):
                        told[row, lower] = one.number
                        facts = {"number": said(one.number), "card": shown(one.card.name)}
                        facts |= {"name": said(one.name), "told": said(phrase)}
                        problems.add(Place(path, row, start + 1), "colour-told-near", **facts)
                        break
    return frozenset((row, number) for (row, _), number in told.items())


@dataclass(frozen=True)
class _Sought:
    """A colour of the key, and what is looked for: its name, of which other spellings are told, or its `former` one."""

    number: str
    name: str
    card: ThreadCard
    spelt: str
    former: bool

    def told_by(self, phrase: str, line: str, start: int, in_notes: bool) -> bool:
        """Whether the phrase, in small letters, stands there for the colour by neither more nor less than a wrong name; what
        is not beside its number does only `in_notes`."""
        alone = in_notes and " " in phrase
        if self.former:
            return phrase == self.spelt and (alone or self._beside(phrase, line, start))
        if self.spelt[0] != phrase[0] and self.spelt[-1] != phrase[-1]:
            return False  # nor looked at more closely: texts are long
        if not _misspells(phrase, self.spelt):
            return False
        sure = len(self.spelt) >= _LONG and _ratio(phrase, self.spelt) >= _MUCH_ALIKE
        alone = alone and (sure or bool(_WORKED_IN.search(line, 0, start)))
        return (
            alone
            or self._beside(phrase, line, start)
            or (in_notes and _set_out(phrase, line, start))
        )

    def _beside(self, phrase: str, line: str, start: int) -> bool:
        """Whether its number stands before the phrase, or behind it between brackets."""
        one = re.escape(self.number)
        counts = counts_something(self.number, line, start + len(phrase), True)
        near = line[max(0, start - _NEAR) : start]
        before = not counts and re.search(rf"(?<![\w#]){one}\s+$", near)
        return bool(before or re.match(rf"\s*\({one}\)", line[start + len(phrase) :]))


def _set_out(phrase: str, line: str, start: int) -> bool:
    """'*Eelgras*'."""
    return line[:start].endswith("*") and line[start + len(phrase) :].startswith("*")


def _sought(
    cards: Sequence[ThreadCard], used: Collection[str], former: Mapping[str, str]
) -> tuple[_Sought, ...]:
    of_key = {
        colour.number: (colour.name.casefold(), card)
        for card in reversed(cards)
        for colour in card.colours.values()
        if colour.number in used
    }
    own = [_Sought(number, name, card, name, False) for number, (name, card) in of_key.items()]
    was = [
        _Sought(number, *of_key[number], name.casefold(), True)
        for number, name in former.items()
        if number in of_key
    ]
    return (*was, *own)


def _phrases(line: str, count: int) -> Iterator[tuple[int, str]]:
    """Where each run of so many words with nothing but spaces between them begins, and the run."""
    words = list(_WORD.finditer(line))
    for at in range(len(words) - count + 1):
        run = words[at : at + count]
        phrase = line[run[0].start() : run[-1].end()]
        if phrase.split() == [word[0] for word in run]:
            yield run[0].start(), phrase


@lru_cache(maxsize=4096)
def _misspells(phrase: str, name: str) -> bool:
    """Whether the words are another spelling of the name, and no other form of its words."""
    if abs(len(phrase) - len(name)) > _LONGER:
        return False
    pairs = zip(phrase.split(), name.split(), strict=True)
    return (
        len(name) >= _ENOUGH
        and _ratio(phrase, name) >= _ALIKE
        and any(word != own and not _of_one(word, own) for word, own in pairs)
    )


def _ratio(one: str, other: str) -> float:
    return SequenceMatcher(None, one, other).ratio()


def _of_one(word: str, own: str) -> bool:
    """'berries' and 'berry', 'planks' and 'plank'."""
    shared = 0
    while shared < min(len(word), len(own)) and word[shared] == own[shared]:
        shared += 1
    return shared >= 3 and all(_ENDINGS.fullmatch(one[shared:]) for one in (word, own))
