"""Numbers of colours in an author's texts: where a colour's name stands beside another number than its card has, the
number is old, mostly."""

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import lru_cache

from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS
from packetgen.load.words import said, shown
from packetgen.model import ThreadCard

_NUMBER = r"[A-Za-z]{0,2}\d{1,5}[A-Za-z]?"
# A number in brackets behind a name, one that is called so, one between a comma and the next sign, and one that follows it
# straight, which is believed only if a card has it.
_BEHIND = ("after", "said", "listed", "straight")
# What stands before a name and counts something is shorter, and tells of what: '12 green stitches'. Our own choice.
_SHORT = re.compile(r"\d{1,2}")
_THINGS = (
    r"(?:stitch(?:es)?|cross(?:es)?|rows?|columns?|knots?|beads?|squares?|ones?|strands?|skeins?|lines?"
    r"|leaves|dots?|petals?|berries|times)\b"
)
# Behind one of these begins something else: '35 briar with one strand'.
_ELSE = r"(?!(?:and|or|with|in|on|of|by|at|as|for|from|round|over|under|above|below|beside|behind|before|after|the|a|all|one|two|three)\b)"
# '12 green, 14 red and 3 white stitches' counts with all of its numbers.
_COUNTED = re.compile(
    rf"(?:\s*(?:,|,?\s+and|\s+or)\s+\d{{1,2}}(?:\s+[a-z-]+){{1,3}}?)*\s+(?:{_ELSE}[a-z-]+\s+){{0,2}}?{_THINGS}|-",
    re.IGNORECASE,
)
_SEVERAL = re.compile(r"\s+(?:[a-z-]+\s+)?[a-z-]+s\b", re.IGNORECASE)  # '4 brick pots'


def complain_of_told_numbers(
    text: str,
    path: str,
    cards: Sequence[ThreadCard],
    problems: Problems,
    used: Collection[str] = (),
    respelt: Collection[tuple[int, str]] = (),
) -> None:
    """Advice on 'Wet plank (119)', '119 wet plank' and 'wet plank 119' where no card has that number for that name. Of a
    chart only the list at its head is looked at. `used` are numbers that the key has, `respelt` those
    of which, on that line, it is told already that the name is another."""
    found = tuple(_told(text, path.endswith(".txt"), cards, used))
    known = _numbers_of(cards) if found else {}
    for place, number, one in found:
        if (place[0], number) in respelt:
            continue
        name = one["name"].casefold()
        of = known.get(name, [])
        alike = [(own, card) for own, card in of if _may_be(own, number, card)]
        if alike and number.casefold() not in (own.casefold() for own, _ in of):
            own, card = alike[0]
            facts = {"of": shown(card.name), "what": "colour", "name": said(number)}
            lost = FAULTS["colour-unknown"].wrong.format(**facts)
            told = [one for one in problems if one.code == "colour-unknown" and one.wrong == lost]
            if told:  # here too: it is one slip, and told once
                problems.take([replace(told[0], place=Place(path, *place))])
                continue
            called = [
                f"{said(card.colours[number].name)}, which is {said(number)}"
                for card in cards
                if number in used and number in card.colours
            ]
            if used and own not in used:  # nor is it to be written then
                mend = (
                    f"write {called[0]}" if called else "name a colour of the key, with its number"
                )
            else:
                mend = f"write {said(own)}{''.join(f', or {one}' for one in called[:1])}, or take the number out"
            told_there = one[0][one.start("before") :] if path.endswith(".txt") else one[0]
            problems.add(
                Place(path, *place),
                "number-told-other",
                mend=mend,
                told=said(" ".join(told_there.split())),
                name=said(name),
                number=said(own),
                card=shown(card.name),
            )


def _told(
    text: str, chart: bool, cards: Sequence[ThreadCard], used: Collection[str]
) -> Iterator[tuple[tuple[int, int], str, re.Match[str]]]:
    """Line and column of each number that stands beside a name, the number, and both."""
    for row, line in enumerate(text.split("\n"), 1):
        if (chart and not line.startswith("#")) or not re.search(r"\d", line):
            continue
        names = {colour.name.casefold() for card in cards for colour in card.colours.values()}
        of_line, beside = _sought(tuple(sorted(names, key=lambda name: (-len(name), name))))
        whole = of_line.fullmatch(line)
        for one in (whole,) if chart and whole else () if chart else beside.finditer(line):
            side = next((side for side in _BEHIND if not chart and one[side]), "before")
            number = one[side]
            # 'One leek and a bed of chives' has no thread.
            known_one = number != "1" and any(number in card.colours for card in cards)
            counts = number and (
                (side in ("straight", "listed") and _SHORT.fullmatch(number))
                or (side == "before" and counts_something(number, line, one.end(), known_one))
            )
            # 'the slug eyes (120)' may be in another colour of the key.
            of_thing = not chart and one["thing"] and " " not in one["name"] and number in used
            on_no_card = side == "straight" and not any(number in card.colours for card in cards)
            strange = of_thing or on_no_card
            if number and (chart or not counts) and not strange:
                yield (row, one.start(side) + 1), number, one


@lru_cache(maxsize=8)
def _sought(names: tuple[str, ...]) -> tuple[re.Pattern[str], re.Pattern[str]]:
    """A line of the list at a chart's head, and a name in a sentence with what may be its number; the longest name
    first."""
    any_of = "|".join(map(re.escape, names)) or r"(?!)"
    before, name = rf"(?P<before>{_NUMBER})\s+", rf"(?P<name>{any_of})"
    # 'duckweed boot (131)'.
    thing = rf"(?P<thing>\s+(?!(?:{any_of})\b|(?:and|or|then|with|in|on)\b)[^\W\d_]+)"
    return (
        re.compile(rf"#\s+\S\s+{before}{name}\s*", re.IGNORECASE),
        re.compile(
            rf"(?<![\w#])(?:{before})?{name}\b(?:{thing}?\s*\((?P<after>{_NUMBER})\)|,?\s+(?:no\.?|number)\s+(?P<said>{_NUMBER})(?!\w)"
            rf"|,\s+(?P<listed>{_NUMBER})(?=\s*(?:[;:)]|[.,](?!\d)|\Z))"
            rf"|\s+(?P<straight>{_NUMBER})(?![\w%-]|\.\d|\s+(?:stitch|row|column|cross|times|mm\b|cm\b|in\b|m\b)))?",
            re.IGNORECASE,
        ),
    )


def _numbers_of(cards: Sequence[ThreadCard]) -> Mapping[str, list[tuple[str, ThreadCard]]]:
    """By the names of colours the numbers that cards have for them."""
    found: dict[str, list[tuple[str, ThreadCard]]] = {}
    for card in cards:
        for colour in card.colours.values():
            found.setdefault(colour.name.casefold(), []).append((colour.number, card))
    return found


def counts_something(number: str, line: str, end: int, on_card: bool) -> bool:
    """Whether a number that stands before a colour's name, which ends there, may count what follows; of a single figure,
    whether it is a number `on_card` at all."""
    if not _SHORT.fullmatch(number):
        return False
    may_be_one = len(number) > 1 or (on_card and not _SEVERAL.match(line, end))
    return bool(not may_be_one or _COUNTED.match(line, end))


def _may_be(own: str, number: str, card: ThreadCard) -> bool:
    """Whether the number has the form of the colour's own, or of another of its card with more figures or fewer."""
    form = form_of(number)
    as_many = re.sub("9+", "9", form) == re.sub("9+", "9", form_of(own))
    return form == form_of(own) or (as_many and form in set(map(form_of, card.colours)))


def form_of(number: str) -> str:
    """'A9' of 'E2': what has another form than any number of the card may count years or skeins."""
    return re.sub(r"[A-Za-z]", "A", re.sub(r"\d", "9", number))
