"""Lines of a key that stitch exactly what another does, so that a stitcher could not tell them apart."""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Place, Problems
from packetgen.load.key_remarks import colour_named
from packetgen.load.strange_keys import Sets
from packetgen.load.words import listed, said

_EITHER = "change the one that is a slip; or use one mark for both, in the chart too"
_ONE_OF_TWO = "change the one that is a slip: in {other} they are two"


@dataclass(frozen=True)
class Alike:
    """Two marks of one thread set; `mend` says what to write for the first, '' where nobody knows which is wrong."""

    mark: str
    other: str
    place: Place  # of the first mark's numbers
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
        self.found.append(Alike(wrong[0], right[0], wrong[1], name, both, mend))

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
    found: Iterable[Alike], unused: Collection[str], sets: Sequence[str], problems: Problems
) -> None:
    """Two marks are told once, at what is surely wrong or in the first set; of those that nothing uses that is told. `sets` are
    the names of all for which the key has numbers."""
    of_two: dict[frozenset[str], list[Alike]] = {}
    for one in found:
        if not {one.mark, one.other} & set(unused):
            of_two.setdefault(frozenset((one.mark, one.other)), []).append(one)
    for in_sets in of_two.values():
        surely = [one for one in in_sets if one.mend] or in_sets[:1]
        alike_in = {one.set_name for one in in_sets}
        other = [said(name) for name in sets if name not in alike_in]
        either = _ONE_OF_TWO.format(other=other[0]) if other else _EITHER
        too = listed((one.set_name for one in in_sets if one not in surely), "and")
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
