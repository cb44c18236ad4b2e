"""Names of colours of the key that an author's texts misspell."""

import re
from collections.abc import Collection, Iterator, Sequence
from difflib import SequenceMatcher

from packetgen.diagnostics import Place, Problems
from packetgen.load.words import said, shown
from packetgen.model import ThreadCard

_WORD = re.compile(r"[^\W\d_](?:['’]?[^\W\d_])*")
_ALIKE = 0.85  # of the letters, for what is believed to be the same name: our own choice
_ENOUGH = 5  # letters of a name that stands beside its number: our own choice
# Of a name that stands alone: 'old boot' is not 'old soot'. Our own choice.
_MUCH_ALIKE, _LONG = 0.92, 10
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
    for row, line in enumerate(text.split("\n"), 1):
        for name, (number, card) in sought.items():
            for start, phrase in _phrases(line, name.count(" ") + 1):
                lower = phrase.casefold()
                if lower in known or lower in told:
                    continue
                beside = _beside(line, start, phrase, number)
                if (beside or " " in name) and _misspells(lower, name, beside):
                    told.add(lower)
                    facts = {"number": said(number), "card": shown(card.name), "name": said(name)}
                    place = Place(path, row, start + 1)
                    problems.add(place, "colour-told-near", told=said(phrase), **facts)


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
    before = not counts and re.search(rf"(?<![\w#]){one}\s+$", line[:start])
    return bool(before or re.match(rf"\s*\({one}\)", line[start + len(phrase) :]))


def _misspells(phrase: str, name: str, beside: bool) -> bool:
    """Whether the words are another spelling of the name, and no other form of its words."""
    alike, enough = (_ALIKE, _ENOUGH) if beside else (_MUCH_ALIKE, _LONG)
    pairs = zip(phrase.split(), name.split(), strict=True)
    return (
        len(name) >= enough
        and SequenceMatcher(None, phrase, name).ratio() >= alike
        and any(word != own and not _of_one(word, own) for word, own in pairs)
    )


def _of_one(word: str, own: str) -> bool:
    """'berries' and 'berry', 'planks' and 'plank'."""
    shared = 0
    while shared < min(len(word), len(own)) and word[shared] == own[shared]:
        shared += 1
    return shared >= 3 and all(_ENDINGS.fullmatch(one[shared:]) for one in (word, own))
