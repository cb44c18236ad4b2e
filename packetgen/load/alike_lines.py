"""Lines of a key that stitch exactly what another does, so that a stitcher could not tell them apart."""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass

from packetgen.colour import blended, difference, lab
from packetgen.diagnostics import Place, Problems
from packetgen.load.key_remarks import colour_named
from packetgen.load.strange_keys import Sets
from packetgen.load.words import listed, said
from packetgen.model import Colour, KeyLine, ThreadSet

_EITHER = "change the one that is a slip; or use one mark for both, in the chart too"
_ONE_OF_TWO = "change the one that is a slip: in {other} they are two"


@dataclass(frozen=True)
class Alike:
    """Two marks of one thread set; `mend` says what to write for the first, '' where nobody knows which is wrong."""

    mark: str
    other: str
    place: Place  # of the first mark's numbers
    other_place: Place  # of the other's
    set_name: str
    numbers: str
    mend: str


class AlikeLines:
    """Hears of one key line after another, and remembers what they stitch."""

    def __init__(self, sets: Sets, remarks: Mapping[int, str]) -> None:
        self._sets, self._remarks = sets, remarks
        # What a line stitches → the mark that does so first, and its line in the file.
        self._stitched: dict[tuple[object, ...], tuple[str, Place]] = {}
        self.found: list[Alike] = []

    def hear(
        self, mark: str, place: Place, name: str, numbers: list[tuple[str, str]], how: object
    ) -> None:
        """The threads of the set `name`, by card and number, that the mark is worked with, and `how`."""
        here = mark, place
        first = self._stitched.setdefault((name, *numbers, how), here)
        if first[0] == mark:
            return
        slips = ((one, self._by_remark(*one, name, numbers)) for one in (here, first))
        wrong, mend = next((slip for slip in slips if slip[1]), (here, ""))
        right = first if wrong is here else here
        both = listed((number for _, number in numbers), "and")
        self.found.append(Alike(wrong[0], right[0], wrong[1], right[1], name, both, mend))

    def _by_remark(
        self, mark: str, place: Place, name: str, numbers: Collection[tuple[str, str]]
    ) -> str:
        """What to write for a mark whose line's remark names another colour than its number; '' where it names none."""
        own = (self._sets or {}).get(name)
        meant = (
            colour_named(self._remarks.get(place.line, ""), own.card) if own is not None else None
        )
        if meant is None or len(numbers) > 1 or ("", meant.number) in numbers:
            return ""
        return (
            f"write {said(meant.number)} for {said(mark)}, as its remark says, {said(meant.name)}"
        )


def tell_alike(
    found: Iterable[Alike],
    unused: Collection[str],
    sets: Mapping[str, ThreadSet | None],
    lines: Iterable[KeyLine],
    problems: Problems,
) -> None:
    """Two marks are told once, at what is surely wrong or in the first set; of those that nothing uses that is told. `sets` are
    all for which the key has numbers, `lines` those of the key that could be read."""
    by_mark = {line.mark: line for line in lines}
    of_two: dict[frozenset[str], list[Alike]] = {}
    for one in found:
        if not {one.mark, one.other} & set(unused):
            of_two.setdefault(frozenset((one.mark, one.other)), []).append(one)
    for in_sets in of_two.values():
        alike_in = {one.set_name for one in in_sets}
        other = [name for name in sets if name not in alike_in]
        either = _ONE_OF_TWO.format(other=said(other[0])) if other else _EITHER
        surely = [one for one in in_sets if one.mend] or in_sets[:1]
        too = listed((one.set_name for one in in_sets if one not in surely), "and")
        if other and not surely[0].mend:
            surely = [_by_colour(surely[0], other[0], sets.get(surely[0].set_name), by_mark)]
        for one in surely:
            problems.add(
                one.place,
                "key-lines-alike",
                mark=said(one.mark),
                other=said(one.other),
                numbers=one.numbers,
                set=said(one.set_name) + (f" (and in {too})" if too else ""),
                mend=one.mend or either,
            )


def _by_colour(
    alike: Alike, set_name: str, own: ThreadSet | None, lines: Mapping[str, KeyLine]
) -> Alike:
    """The same with the mark first whose colour in another set is farther from the one that both have, and with what to write
    for it: the nearest colour of the card that no line has."""
    one, other = (lines.get(mark) for mark in (alike.mark, alike.other))
    if own is None or one is None or other is None or one.cards or other.cards:
        return alike
    both = one.threads[alike.set_name]
    used = {line.threads[alike.set_name] for line in lines.values()}
    free = [colour for colour in own.card.colours.values() if (colour,) not in used]
    if len(both) > 1 or not free:
        return alike
    wrong = max(one, other, key=lambda line: _apart(line, set_name, both[0]))
    nearest = min(free, key=lambda colour: _apart(wrong, set_name, colour))
    mend = f"write {said(nearest.number)} for {said(wrong.mark)}: of the free colours {said(nearest.name)} is the nearest to that in {said(set_name)}"
    first, second = (alike.mark, alike.place), (alike.other, alike.other_place)
    if wrong is other:
        first, second = second, first
    return Alike(first[0], second[0], first[1], second[1], alike.set_name, alike.numbers, mend)


def _apart(line: KeyLine, set_name: str, colour: Colour) -> float:
    """The difference of a colour from that of the line in a set."""
    seen = blended(tuple(one.hex for one in line.threads[set_name]))
    return difference(lab(seen), lab(colour.hex))
