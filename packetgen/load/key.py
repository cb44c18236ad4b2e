"""The key of a pattern: what each mark of the chart is stitched with."""

import unicodedata
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from itertools import pairwise
from types import MappingProxyType

from packetgen.diagnostics import Place, Problems, nearest_of
from packetgen.load.alike_lines import Alike, AlikeLines
from packetgen.load.cards import Cards
from packetgen.load.key_remarks import called_in_remarks, colour_named, names_in_remarks
from packetgen.load.meant_threads import exchanged, on_other_card, parted_numbers
from packetgen.load.references import resolve
from packetgen.load.shape_pattern import KEY_LINE
from packetgen.load.strange_keys import (
    Sets,
    named_thread,
    renamed_set,
    set_of_card,
    sets_of_another_card,
    with_name,
)
from packetgen.load.values import Filled, Given
from packetgen.load.words import LOST, offer, said, shown
from packetgen.model import BARE, Colour, KeyLine, MatchedSet, Stitch, ThreadCard, ThreadSet
from packetgen.shape_names import SHAPE_NAMES, SHAPE_WORDS

# The sets that a line may leave to the tool; None for a request that cannot be, None altogether where
# nobody can tell.
Requests = Mapping[str, MatchedSet | None] | None

FEW_STRANDS = 4  # of a whole thread: most stranded cotton has 6 (common practice, no source)
_FIELDS = tuple(field.name for field in KEY_LINE.fields)


@dataclass(frozen=True)
class Key:
    """The key lines in order.

    `places` has every usable mark, also of a line that is broken in itself; `marks` has besides
    these the signs of marks that cannot be used ('rr' for 'r'): nobody need call them unknown. It
    says how each is worked, None where that cannot be told. `alike` is not told of yet.
    """

    lines: tuple[KeyLine, ...]
    places: Mapping[str, Place]
    marks: Mapping[str, Stitch | None]
    sound: bool  # whether every line could be read
    nameless: bool = False  # whether a line has a sign that cannot be a mark, such as a full stop
    alike: tuple[Alike, ...] = ()


def read_key(
    given: Given,
    sets: Sets,
    series_sets: Sets,
    requests: Requests,
    cards: Cards[ThreadCard],
    text: str,
    problems: Problems,
) -> Key:
    """The key, checked against the thread sets of the pattern (`sets`) and of its series; `text` is its file, of which
    the remarks say what the colours are called."""
    lines: list[KeyLine] = []
    places: dict[str, Place] = {}
    worked: dict[str, Stitch | None] = {}
    meant: set[str] = set()
    nameless = False
    sound = given.whole
    if not given.value and given.whole:
        problems.add(given.place, "key-empty")
    renamed = renamed_set(given, sets, series_sets)
    strange = sets_of_another_card(given, sets, renamed, problems)
    if renamed:
        old, new = renamed
        if new not in strange:
            facts = {"number": len(given.value), "old": said(old), "new": said(new)}
            problems.add(given.place, "set-renamed", **facts)
        sound = False
    remarks = names_in_remarks(text, [key.place.line for key, _ in given.value or ()])
    sound_lines = [line.value for _, line in given.value or () if line.value is not None]
    called = called_in_remarks(sound_lines, remarks, tuple(sets or ()))
    written = frozenset(
        number.value
        for line in sound_lines
        for name in sets or ()
        if name in line.given
        for number in line[name] or ()
        if isinstance(number.value, str)
    )
    reader = _KeyReader(
        sets, series_sets, requests, cards, strange, remarks, called, written, problems
    )
    for key, line in given.value or ():
        if LOST in key.value or not _usable_mark(key.value, key.place, problems):
            meant.update(key.value if len(key.value) > 1 else "")
            nameless |= len(key.value) == 1
            sound = False
            continue
        places[key.value] = key.place
        how = line.value["stitch"] if line.value is not None else None
        worked[key.value] = Stitch(how) if how else None
        beyond = len(places) > len(SHAPE_NAMES)  # told below, and looked at no further
        broken = beyond or line.value is None
        filled = with_name(line.value, renamed) if renamed and not broken else line.value
        read = None if broken else reader.line(key.value, key.place, filled)
        if read is None:
            sound = False
        else:
            lines.append(read)
    reader.tell_missing(len(given.value or ()))
    marks = worked | dict.fromkeys(sorted(meant - {BARE, LOST} - set(places)))
    if len(places) > len(SHAPE_NAMES):
        problems.add(given.place, "key-too-long", number=len(places), limit=len(SHAPE_NAMES))
    return Key(
        tuple(lines),
        MappingProxyType(places),
        MappingProxyType(marks),
        sound,
        nameless,
        tuple(reader.alike.found),
    )


def check_strands(
    strands: int | None, place: Place, card: ThreadCard | None, problems: Problems
) -> None:
    """A needle cannot hold more strands than the thread has."""
    if strands is not None and card is not None and strands > card.strands:
        hint = (
            "it is used whole, so write 1"
            if card.strands == 1
            else f"write {card.strands} or fewer"
            if card.strands <= FEW_STRANDS
            else "write how many a stitch is worked with, 2 on most cloth"
        )
        if not card.braid:
            hint += f", or mend 'strands' in threads/{card.id}.yaml"
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

    def __init__(
        self,
        sets: Sets,
        series_sets: Sets,
        requests: Requests,
        cards: Cards[ThreadCard],
        passed_over: Collection[str],
        remarks: Mapping[int, str],
        called: Mapping[str, str],
        written: Collection[str],
        problems: Problems,
    ) -> None:
        self._sets = sets
        self._requests = requests
        self._cards = cards
        self._series_sets = series_sets
        self._problems = problems
        self.alike = AlikeLines(sets, remarks)
        self._not_offered: set[str] = set()
        self._passed_over = passed_over  # sets of whose numbers all is told
        self._called = called  # by its number what the remarks of the key call a colour
        self._written = written  # all numbers of the key: of these another line has what is meant
        self._missing: dict[str, list[tuple[str, Place]]] = {}  # a set → lines that lack it
        self._pinned: dict[str, str] = {}  # chart shape → the mark that has it first

    def line(self, mark: str, place: Place, filled: Filled) -> KeyLine | None:
        """The key line of `mark`; None where it is not sound, or nobody can tell."""
        strands = self._own_strands(filled)
        symbol = self._symbol(mark, filled)
        threads: dict[str, tuple[Colour, ...]] = {}
        cards: dict[str, tuple[ThreadCard, ...]] = {}
        sound = filled.whole and self._sets is not None
        blends = {
            name: (last, blend)
            for last, name in pairwise(filled.given)
            if (blend := self._blend(last, name, filled))
        }
        told = {last for last, _ in blends.values()} | self._exchanged(filled)
        for name, given in filled.given.items():
            if name in _FIELDS:
                continue
            if self._sets is not None and name not in self._sets:
                _, blend = blends.get(name, ("", ""))
                self._unknown_set(name, given.name_place or place, self._sets, blend)
                sound = False
                continue
            if given.value == ():
                example = f'{shown(name)}: "{next(iter(self._numbers(name)), "07")}"'
                self._problems.add(given.place, "value-empty", name=said(name), example=example)
            if name in told:
                sound = False
                continue
            self._hear_alike(mark, name, given, filled["stitch"], strands.get(name))
            own = (self._sets or {}).get(name)
            needle = None if name in self._passed_over else self._needle(given, own)
            if own is None or needle is None:
                sound = False
                continue
            self._check_strands(name, filled, [card for card, _ in needle])
            threads[name] = tuple(colour for _, colour in needle)
            if any(card != own.card for card, _ in needle):
                cards[name] = tuple(card for card, _ in needle)
        known = self._sets or {}
        strange = [name for name in filled.given if name not in known and name not in _FIELDS]
        misspelt = {
            set_of_card(name, self._sets) or nearest_of(name, tuple(known)) for name in strange
        }
        left_out = tuple(name for name in self._sets or () if name not in filled.given)
        for name in left_out:
            if self._requests is not None and name not in self._requests and name not in misspelt:
                self._missing.setdefault(name, []).append((mark, place))
            request = (self._requests or {}).get(name)
            if request is None or request.source.id not in threads:
                sound = False
                continue
            whole = (request.source.card,) * len(threads[request.source.id])
            self._check_matched(place, filled, request, cards.get(request.source.id, whole))
            threads[name] = ()
        if not sound:
            return None
        return KeyLine(
            mark,
            Stitch(filled["stitch"]),
            MappingProxyType(threads),
            MappingProxyType(strands),
            place,
            cards=MappingProxyType(cards),
            symbol=symbol,
            matched=left_out,
        )

    def tell_missing(self, lines: int) -> None:
        """Of each set the lines that say nothing for it; once for all where that are all of so many."""
        for name, found in self._missing.items():
            mark, place = found[0]
            if len(found) == lines > 1:
                self._problems.add(place, "set-unsaid", **self._for_unsaid(name, mark, lines))
                continue
            for mark, place in found:
                self._problems.add(place, "set-missing", mark=said(mark), set=said(name))

    def _for_unsaid(self, name: str, mark: str, lines: int) -> dict[str, str]:
        """What is told of a set that none of so many lines has; it can be matched from one that stands in the key."""
        set_name, first = shown(name), next(iter(self._sets or ()))
        in_key = [
            shown(one)
            for one in self._sets or ()
            if one not in (self._requests or ()) and len(self._missing.get(one, ())) < lines
        ]
        written = ", ".join(f"{one}: …" for one in (*in_key[:1], set_name))
        facts = {"set": said(name), "example": f"{shown(mark)}: {{{written}}}", "matched": ""}
        if in_key:
            how = (
                f"put {in_key[0]} first in thread_sets, with"
                if name == first
                else "let them be matched:"
            )
            facts["matched"] = f", or {how} matched: {{{set_name}: {in_key[0]}}}"
        return facts

    def _numbers(self, name: str) -> Collection[str]:
        """Those of the thread card of that set."""
        own = (self._sets or {}).get(name)
        return () if own is None else own.card.colours

    def _blend(self, last: str, name: str, filled: Filled) -> str:
        """How a blend is written whose second number stands as a name behind the first: '{moss: C1, C2}'; ''
        where it is none."""
        own = (self._sets or {}).get(last)
        numbers = [named_thread(number) for number in filled[last] or ()] if own is not None else []
        if own is None or len(numbers) != 1 or numbers[0] is None or name not in own.card.colours:
            return ""
        card, first = numbers[0]
        return "" if card or first not in own.card.colours else f"[{first}, {name}]"

    def _unknown_set(self, name: str, place: Place, sets: Collection[str], blend: str) -> None:
        if name in (self._series_sets or ()):
            if name not in self._not_offered:  # said once: it will stand in every line
                self._problems.add(place, "set-not-offered", set=said(name))
            self._not_offered.add(name)
            return
        hint = offer(name, [*sets, *_FIELDS])
        if own := set_of_card(name, self._sets):
            hint = f"it is the card of the thread set {said(own)}: write {own} here"
        if name in {one.value for one in Stitch}:
            hint = f"write stitch: {name}"
        if blend:
            hint = f"for a blend of the two write {blend}"
        self._problems.add(place, "key-name-unknown", name=said(name), hint=hint)

    def _symbol(self, mark: str, filled: Filled) -> str | None:
        """The chart shape that the author chose for the line."""
        place = filled.place_of("symbol")
        shapes = dict.fromkeys(SHAPE_NAMES, filled["symbol"])
        symbol: str | None = resolve(
            filled["symbol"], place, shapes, "chart shape", self._problems, SHAPE_WORDS
        )
        if symbol is None:
            return None
        same = self._pinned.setdefault(symbol, mark)
        if same != mark:
            self._problems.add(
                place, "symbol-twice", mark=said(mark), other=said(same), symbol=said(symbol)
            )
        return symbol

    def _own_strands(self, filled: Filled) -> dict[str, int]:
        own: dict[str, int] = {}
        for key, given in filled["strands"] or ():
            resolve(key.value, key.place, self._sets, "thread set", self._problems)
            if given.value is not None:
                own[key.value] = given.value
        return own

    def _check_strands(self, name: str, filled: Filled, cards: list[ThreadCard]) -> None:
        """The line's own strands of the set `name`, against what its threads can be parted into."""
        for key, given in filled["strands"] or ():
            if key.value != name:
                continue
            fewest = min(cards, key=lambda card: card.strands)
            if fewest.braid:
                card, own = shown(fewest.name), said(name)
                self._problems.add(key.place, "braid-strands", card=card, set=own)
            else:
                check_strands(given.value, given.place, fewest, self._problems)

    def _check_matched(
        self, place: Place, filled: Filled, request: MatchedSet, source: tuple[ThreadCard, ...]
    ) -> None:
        """What the tool will put into the needle: `source` are the cards that it is matched from."""
        into = request.into
        cards = [into.card if card == request.source.card else card for card in source]
        self._check_strands(into.id, filled, cards)
        if len(cards) == 2 and into.card.braid and into.card in cards:
            self._problems.add(place, "braid-in-blend", card=shown(into.card.name))

    def _needle(
        self, given: Given, one: ThreadSet | None
    ) -> tuple[tuple[ThreadCard, Colour], ...] | None:
        """The one thread of a line, or the two of a blend; None where they cannot be told."""
        numbers: tuple[Given, ...] = given.value or ()
        if len(numbers) > 2:
            self._problems.add(given.place, "blend-of-many", number=len(numbers))
            return None
        if len(numbers) == 2:
            first, second = (named_thread(number) for number in numbers)
            if second is not None and first == second:
                self._problems.add(numbers[1].place, "blend-of-one", number=said(second[1]))
                return None
        if one is None or not numbers:
            return None
        found = [self._thread(number, one.card) for number in numbers]
        needle = tuple(thread for thread in found if thread is not None)
        if len(needle) < len(found):
            return None
        braids = [(number, card) for number, (card, _) in zip(numbers, needle) if card.braid]
        if len(needle) == 2 and braids:
            number, braid = braids[0]
            self._problems.add(number.place, "braid-in-blend", card=shown(braid.name))
            return None
        return needle

    def _thread(self, given: Given, own: ThreadCard) -> tuple[ThreadCard, Colour] | None:
        """A number of the set's own card, or a card with its number."""
        card: ThreadCard | None = own
        number, place = given.value, given.place
        if isinstance(number, Filled):
            named, place = number["card"], number.place_of("number")
            at = number.place_of("card")
            card = resolve(named, at, self._cards, "thread card", self._problems)
            number = number["number"]
        if card is None:
            return None
        both = (
            parted_numbers(number) if isinstance(number, str) and number not in card.colours else ()
        )
        if len({*both} & {*card.colours}) == len(both) == 2:
            hint = f"for a blend of the two write [{shown(', '.join(both))}]"
            self._unknown(card, number, place, hint)
            return None
        if card is own and number is not None and number not in card.colours:
            if beside := on_other_card(number, self._sets or {}, self._cards):
                self._unknown(card, number, place, f"write {{{beside}}}")
                return None
        called = {colour.name.casefold(): number for number, colour in card.colours.items()}
        remark = self._called.get(number or "", "")
        meant = colour_named(remark, card)
        if meant and number is not None and number not in card.colours:
            own_number = said(meant.number)
            hint = f"your remark says {said(remark)}, which is {own_number} there; write {own_number} here, or {said(number)} in threads/{card.id}.yaml"
            self._unknown(card, number, place, hint)
            return None
        file = f"threads/{card.id}.yaml"
        colour = resolve(
            number,
            place,
            card.colours,
            "colour",
            self._problems,
            called,
            card.name,
            file,
            self._written,
        )
        return None if colour is None else (card, colour)

    def _exchanged(self, filled: Filled) -> set[str]:
        """The two sets, if any, whose numbers stand for one another in this line; it is told of the first."""
        numbers = {
            name: (one.card, given.value[0])
            for name, one in (self._sets or {}).items()
            if one is not None and name not in self._passed_over
            if (given := filled.given.get(name)) and len(given.value or ()) == 1
        }
        found = exchanged(numbers)
        if found is None:
            return set()
        name, other, hint = found
        card, given = numbers[name]
        self._unknown(card, given.value, given.place, hint)
        return {name, other}

    def _unknown(self, card: ThreadCard, number: str, place: Place, hint: str) -> None:
        facts = {"of": shown(card.name), "what": "colour", "name": said(number), "hint": hint}
        self._problems.add(place, "colour-unknown", **facts)

    def _hear_alike(
        self, mark: str, name: str, given: Given, stitch: str | None, strands: int | None
    ) -> None:
        found = [named_thread(number) for number in given.value or ()]
        names = sorted(name for name in found if name is not None)
        if names and len(names) == len(found):
            self.alike.hear(mark, given.place, name, names, (stitch, strands))
