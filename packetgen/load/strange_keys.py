"""A key that was written for other thread sets, or for another card, than the pattern has."""

from collections.abc import Collection, Mapping
from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.load.references import nearest_number
from packetgen.load.shape_pattern import KEY_LINE
from packetgen.load.values import Filled, Given
from packetgen.load.words import said, shown
from packetgen.model import ThreadSet

# By name, the model's first; None for a broken one, None altogether where nobody can tell.
Sets = Mapping[str, ThreadSet | None] | None

_SEVERAL = 3  # numbers of a key that cannot all be slips
_FIELDS = tuple(field.name for field in KEY_LINE.fields)


def renamed_set(given: Given, sets: Sets, series_sets: Sets) -> tuple[str, str] | None:
    """A name that all lines, of several, have for a thread set and that is none, with the one set that none of them
    names: its name was changed where the sets are listed."""
    lines = [line.value for _, line in given.value or ()]
    if sets is None or len(lines) < 2 or None in lines:
        return None
    known = {*sets, *(series_sets or ()), *_FIELDS}
    strange = [{name for name in line.given if name not in known} for line in lines]
    missing = [name for name in sets if not any(name in line.given for line in lines)]
    same = set.intersection(*strange)
    if len(same) == len(missing) == 1 and set.union(*strange) == same:
        return same.pop(), missing[0]
    return None


def sets_of_another_card(
    given: Given, sets: Sets, renamed: tuple[str, str] | None, problems: Problems
) -> Collection[str]:
    """The sets of which no number of several lines is on their card, nor most like one that is: told once for all. Of one
    that was `renamed` too, that is told with it."""
    lines = [line.value for _, line in given.value or () if line.value is not None]
    if renamed:
        lines = [with_name(line, renamed) for line in lines]
    found: list[str] = []
    for name, one in (sets or {}).items():
        places = {
            number: line.given[name].place
            for line in reversed(lines)  # of a number that stands twice the first place is told
            for card, number in filter(None, map(named_thread, line[name] or ()))
            if not card
        }
        if one is None or len(places) < _SEVERAL:
            continue
        colours = one.card.colours
        called = {colour.name.casefold() for colour in colours.values()}
        near = sum(nearest_number(number, colours) is not None for number in places)
        if 2 * near > len(places) or any(
            number in colours or number.casefold() in called for number in places
        ):
            continue
        found.append(name)
        of = said(name)
        if renamed and name == renamed[1]:
            of = f"{said(renamed[0])}, which is now {of},"
        place = min(places.values())
        facts = {"number": len(places), "card": shown(one.card.name), "of": of}
        pattern = place.path.split("/")[-2]
        problems.add(place, "colours-of-another", pattern=pattern, **facts)
    return found


def set_of_card(name: str, sets: Sets) -> str:
    """The one set whose thread card has that id or name; '' where there is none, or several."""
    called = name.casefold()
    of = [
        set_name
        for set_name, one in (sets or {}).items()
        if one is not None and called in (one.card.id, one.card.name.casefold())
    ]
    return of[0] if len(of) == 1 else ""


def with_name(line: Filled, renamed: tuple[str, str]) -> Filled:
    old, new = renamed
    return replace(
        line, given={new if name == old else name: one for name, one in line.given.items()}
    )


def named_thread(given: Given) -> tuple[str, str] | None:
    """(card, number) as the author names a thread, '' for the set's own card; None where it is broken."""
    if not isinstance(given.value, Filled):
        return None if given.value is None else ("", given.value)
    card, number = given.value["card"], given.value["number"]
    return None if card is None or number is None else (card, number)
