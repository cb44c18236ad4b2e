"""The key of a pattern: what each mark of the chart is stitched with."""

import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from packetgen.diagnostics import Place, Problems
from packetgen.load.references import resolve
from packetgen.load.shape_pattern import KEY_LINE
from packetgen.load.values import Filled, Given
from packetgen.load.words import LOST, listed, offer, said, shown
from packetgen.model import BARE, Colour, KeyLine, Stitch, ThreadCard, ThreadSet

# By name, the model's first; None for a broken one, None altogether where nobody can tell.
Sets = Mapping[str, ThreadSet | None] | None

_FIELDS = tuple(field.name for field in KEY_LINE.fields)


@dataclass(frozen=True)
class Key:
    """The key lines in order.

    `places` has every usable mark, also of a line that is broken in itself; `marks` has besides
    these the signs of marks that cannot be used ('rr' for 'r'): nobody need call them unknown.
    """

    lines: tuple[KeyLine, ...]
    places: Mapping[str, Place]
    marks: tuple[str, ...]
    sound: bool  # whether every line could be read


def read_key(given: Given, sets: Sets, series_sets: Sets, problems: Problems) -> Key:
    """The key, checked against the thread sets of the pattern (`sets`) and of its series."""
    reader = _KeyReader(sets, series_sets, problems)
    lines: list[KeyLine] = []
    places: dict[str, Place] = {}
    meant: set[str] = set()
    sound = given.whole
    if not given.value and given.whole:
        problems.add(given.place, "key-empty")
    for key, line in given.value or ():
        if LOST in key.value or not _usable_mark(key.value, key.place, problems):
            meant.update(key.value if len(key.value) > 1 else "")
            sound = False
            continue
        places[key.value] = key.place
        read = None if line.value is None else reader.line(key.value, key.place, line.value)
        if read is None:
            sound = False
        else:
            lines.append(read)
    marks = (*places, *sorted(meant - {BARE, LOST} - set(places)))
    return Key(tuple(lines), MappingProxyType(places), marks, sound)


def check_strands(
    strands: int | None, place: Place, card: ThreadCard | None, problems: Problems
) -> None:
    """A needle cannot hold more strands than the thread has."""
    if strands is not None and card is not None and strands > card.strands:
        hint = (
            "it is used whole, so write 1"
            if card.strands == 1
            else f"write {card.strands} or fewer"
        )
        problems.add(
            place,
            "strands-too-many",
            strands=strands,
            card=shown(card.name),
            has=card.strands,
            hint=hint,
        )


def _usable_mark(mark: str, place: Place, problems: Problems) -> bool:
    if mark in (BARE, "#", " ", ""):
        why = {BARE: "stands for bare cloth", "#": "begins a remark"}.get(mark, "cannot be seen")
        problems.add(
            place, "mark-reserved", mark=said(mark) if mark.strip() else "a space", why=why
        )
    elif len(mark) > 1:
        problems.add(place, "mark-long", mark=said(mark), length=len(mark))
    elif not mark.isprintable() or mark.isspace() or unicodedata.category(mark).startswith("M"):
        problems.add(
            place, "mark-reserved", mark=f"U+{ord(mark):04X}", why="cannot be seen by itself"
        )
    else:
        return True
    return False


class _KeyReader:
    """Reads one key line after another, and remembers what they stitch."""

    def __init__(self, sets: Sets, series_sets: Sets, problems: Problems) -> None:
        self._sets = sets
        self._series_sets = series_sets
        self._problems = problems
        self._stitched: dict[tuple, str] = {}  # what a line stitches → the mark that does so first
        self._not_offered: set[str] = set()

    def line(self, mark: str, place: Place, filled: Filled) -> KeyLine | None:
        """The key line of `mark`; None where it is not sound, or nobody can tell."""
        strands = self._own_strands(filled)
        threads: dict[str, tuple[Colour, ...]] = {}
        sound = filled.whole and self._sets is not None
        for name, given in filled.given.items():
            if name in _FIELDS:
                continue
            if self._sets is not None and name not in self._sets:
                self._unknown_set(name, given.name_place or place)
                sound = False
                continue
            self._once(mark, name, given, filled["stitch"], strands.get(name))
            colours = self._colours(given, self._sets[name] if self._sets else None)
            if colours is None:
                sound = False
            else:
                threads[name] = colours
        for name in self._sets or ():
            if name not in filled.given:
                self._problems.add(place, "set-missing", mark=said(mark), set=said(name))
                sound = False
        if not sound:
            return None
        return KeyLine(
            mark,
            Stitch(filled["stitch"]),
            MappingProxyType(threads),
            MappingProxyType(strands),
            place,
        )

    def _unknown_set(self, name: str, place: Place) -> None:
        if name in (self._series_sets or ()):
            if name not in self._not_offered:  # said once: it will stand in every line
                self._problems.add(place, "set-not-offered", set=said(name))
            self._not_offered.add(name)
            return
        hint = offer(name, [*self._sets, *_FIELDS])
        self._problems.add(place, "key-name-unknown", name=said(name), hint=hint)

    def _own_strands(self, filled: Filled) -> dict[str, int]:
        own: dict[str, int] = {}
        for key, given in filled["strands"] or ():
            one = resolve(key.value, key.place, self._sets, "thread set", self._problems)
            check_strands(given.value, given.place, one.card if one else None, self._problems)
            if given.value is not None:
                own[key.value] = given.value
        return own

    def _colours(self, given: Given, one: ThreadSet | None) -> tuple[Colour, ...] | None:
        """The one colour of a line, or the two of a blend; None where they cannot be told."""
        numbers = given.value or ()
        if len(numbers) > 2:
            self._problems.add(given.place, "blend-of-many", number=len(numbers))
            return None
        if (
            len(numbers) == 2
            and numbers[0].value is not None
            and numbers[0].value == numbers[1].value
        ):
            self._problems.add(numbers[1].place, "blend-of-one", number=said(numbers[0].value))
            return None
        if one is None or not numbers:
            return None
        called = {colour.name.casefold(): number for number, colour in one.card.colours.items()}
        colours = [
            resolve(
                number.value,
                number.place,
                one.card.colours,
                "colour",
                self._problems,
                called,
                of=one.card.name,
            )
            for number in numbers
        ]
        return None if None in colours else tuple(colours)

    def _once(
        self, mark: str, name: str, given: Given, stitch: str | None, strands: int | None
    ) -> None:
        """Report a line that stitches exactly what another does:
        the stitcher could not tell them apart.
        """
        numbers = tuple(sorted(number.value or "" for number in given.value or ()))
        if not numbers or "" in numbers:
            return
        same = self._stitched.setdefault((name, numbers, stitch, strands), mark)
        if same != mark:
            both = listed(numbers, "and")
            self._problems.add(
                given.place,
                "key-lines-alike",
                mark=said(mark),
                other=said(same),
                numbers=both,
                set=said(name),
            )
