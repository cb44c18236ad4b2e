"""The remark behind a key line, which names its colour: where it names another than the line's number, one of the two
is a slip."""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Mapping, Sequence

from packetgen.diagnostics import Problems
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Colour, KeyLine, ThreadCard, ThreadSet

# What bring says behind a letter that stands in quotes is no part of the name.
_REMARK = re.compile(r"[^#]*\}\s+#\s*(?P<name>[^(]{1,80}?)\s*(?:\(. in quotes: .*)?")
_NAME = re.compile(r"[^\W\d_]+(?:[ -][^\W\d_]+){0,2}")
_ENOUGH = 3  # remarks that are names, for one more to be one: our own choice
_EXAMPLE = "example "  # what begin writes


def names_in_remarks(text: str, on_lines: Collection[int]) -> Mapping[int, str]:
    """By the numbers of the lines of the key what the remark behind each says, where the line has one mark."""
    lines, alone = text.split("\n"), Counter(on_lines)
    found = {line: _REMARK.fullmatch(lines[line - 1]) for line in on_lines if alone[line] == 1}
    return {line: remark["name"] for line, remark in found.items() if remark}


def called_in_remarks(
    lines: Iterable[Filled], remarks: Mapping[int, str], sets: Collection[str]
) -> Mapping[str, str]:
    """By its number what the remarks call a colour that is stitched with alone; none that they call by two names."""
    found: dict[str, set[str]] = {}
    for line in lines:
        for name in sets:
            numbers = line[name] if name in line.given else None
            if numbers and len(numbers) == 1 and isinstance(number := numbers[0].value, str):
                if remark := remarks.get(numbers[0].place.line):
                    found.setdefault(number, set()).add(remark)
    return {number: remark for number, (remark, *more) in found.items() if not more}


def colour_named(remark: str, card: ThreadCard) -> Colour | None:
    """The colour that a remark names, capitals or not."""
    asked = remark.casefold()
    return next((one for one in card.colours.values() if one.name.casefold() == asked), None)


def former_names(
    key: Sequence[KeyLine], remarks: Mapping[int, str], sets: Sequence[ThreadSet]
) -> dict[str, str]:
    """By the number of its thread the remark of the one key line that no colour of a card is called by, where the remarks
    of three lines or more, and of all others, are the names that cards have: that colour was called otherwise before."""
    names = {colour.name.casefold() for one in sets for colour in one.card.colours.values()}
    strange: dict[str, str] = {}
    exact = 0
    for line in key:
        remark = remarks.get(line.place.line)
        alone = [colours[0] for colours in line.threads.values() if len(colours) == 1]
        if not remark or not alone:
            continue
        if remark.casefold() in (colour.name.casefold() for colour in alone):
            exact += 1
        elif (
            remark.casefold() not in names
            and _NAME.fullmatch(remark)
            and not any(colour.name.casefold() in remark.casefold() for colour in alone)
        ):
            strange[alone[0].number] = remark
    return strange if len(strange) == 1 and exact >= _ENOUGH else {}


def complain_of_remarks(
    remarks: Mapping[int, str],
    former: Mapping[str, str],
    key: Sequence[KeyLine],
    sets: Sequence[ThreadSet],
    problems: Problems,
) -> None:
    """Advice on each line of the key whose remark is the name of another colour on its card, of one of the examples
    that its card no longer has, or of what seems to have been its colour's name, one of the `former`."""
    for line in key:
        remark = remarks.get(line.place.line)
        own = {one.name: one.number for colours in line.threads.values() for one in colours}
        if not remark or not own or remark.casefold() in map(str.casefold, own):
            continue
        asked, (name, number) = remark.casefold(), next(iter(own.items()))
        others = {
            colour.name.casefold(): colour.number
            for one in sets
            if one.id in line.threads
            for colour in one.card.colours.values()
        }
        was = former.get(number) == remark
        if asked not in others and not was and not asked.startswith(_EXAMPLE):
            continue
        meant = f"write {said(others[asked])} if that is meant, or " if asked in others else ""
        problems.add(
            line.place,
            "key-remark-other",
            remark=said(remark),
            number=said(number),
            name=said(name),
            meant=meant,
        )
