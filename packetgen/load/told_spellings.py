"""Names of colours of the key that an author's texts misspell."""

import re
from collections.abc import Collection, Iterator, Sequence
from difflib import SequenceMatcher
from functools import lru_cache

from packetgen.diagnostics import Place, Problems
from packetgen.load.words import said, shown
from packetgen.model import ThreadCard

_WORD = re.compile(r"[^\W\d_](?:['’]?[^\W\d_])*")
_ALIKE = 0.85  # of the letters, for what is believed to be the same name: our own choice
_ENOUGH = 5  # letters of a name that stands beside its number: our own choice
# Of a name that stands alone: 'old boot' is not 'old soot'. Our own choice.
_MUCH_ALIKE, _LONG = 0.92, 10
_NEAR = 16  # letters before a name, with its number among them
_LONGER = 3  # letters more or less than the name has
_ENDINGS = re.compile(r"(?:ies|e?s|['’]s|e?d|e?r|ing|ish|y|en|ly)?")


def complain_of_told_spellings(
    text: str, path: str, cards: Sequence[ThreadCard], used: Collection[str], problems: Problems
) -> None:
    """Advice on '110 windfall yelow' and 'in windfall yelow' where colour 110, which the key has `used`, is windfall
    yellow. A name of one word is sought beside its number alone."""
    known = {colour.name.casefold() for card in cards for colour in card.colours.values()}
    sought = {
        colour.name.casefold(): (colour.number, card)
        for card in reversed(cards)
        for colour in card.colours.values()
        if colour.number in used
    }
    told: set[str] = set()
    counts = sorted({name.count(" ") + 1 for name in sought})
    names = {count: [name for name in sought if name.count(" ") + 1 == count] for count in counts}
    least = min(map(len, sought), default=0) - 2  # letters that a misspelt name may lack
    for row, line in enumerate(text.split("\n"), 1):
        if len(line) < least:
            continue
        for count in counts:
            # A name of one word is believed beside its number alone.
            sought_here = [one for one in names[count] if count > 1 or sought[one][0] in line]
            for start, phrase in _phrases(line, count):
                lower = phrase.casefold()
                if lower in known or lower in told:
                    continue
                for name in sought_here:
                    if name[0] != lower[0] and name[-1] != lower[-1]:
                        continue  # nor looked at more closely: texts are long
                    number, card = sought[name]
                    if _misspells(lower, name) and (
                        _beside(line, start, phrase, number)
                        or (len(name) >= _LONG and count > 1 and _ratio(lower, name) >= _MUCH_ALIKE)
                    ):
                        told.add(lower)
                        facts = {"number": said(number), "card": shown(card.name)}
                        place = Place(path, row, start + 1)
                        facts |= {"name": said(name), "told": said(phrase)}
                        problems.add(place, "colour-told-near", **facts)
                        break


def _phrases(line: str, count: int) -> Iterator[tuple[int, str]]:
    """Where each run of so many words with nothing but spaces between them begins, and the run."""
    words = list(_WORD.finditer(line))
    for at in range(len(words) - count + 1):
        run = words[at : at + count]
        phrase = line[run[0].start() : run[-1].end()]
        if phrase.split() == [word[0] for word in run]:
            yield run[0].start(), phrase


def _beside(line: str, start: int, phrase: str, number: str) -> bool:
    """Whether its number stands before the phrase, or behind it between brackets."""
    one, counts = re.escape(number), re.fullmatch(r"\d{1,2}", number)  # '12 white stitches'
    near = line[max(0, start - _NEAR) : start]
    before = not counts and re.search(rf"(?<![\w#]){one}\s+$", near)
    return bool(before or re.match(rf"\s*\({one}\)", line[start + len(phrase) :]))


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
