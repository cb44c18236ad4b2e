"""Advice on conversions: key colours that fall together in another thread set, or land far away."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from packetgen.colour import FAR, blended, difference, in_words, lab
from packetgen.diagnostics import Problems
from packetgen.model import Colour, KeyLine, Pattern, ThreadSet
from packetgen.reckon.matching import Needle, Thread, needle, pairs


def complain_of_conversions(pattern: Pattern, problems: Problems) -> None:
    """Advice for every set but the model's, with the nearest colour that is free where there is one."""
    for thread_set in pattern.thread_sets[1:]:
        conversion = _Conversion(pattern, thread_set, problems)
        conversion.complain_of_collisions()
        conversion.complain_of_distance()


@dataclass(frozen=True)
class _Better:
    """A thread of a line that had better be another colour of its card."""

    thread: Thread
    colour: Colour
    difference: float  # of the whole needle from the model's, then


class _Conversion:
    """One thread set of a pattern beside the model's; remembers which lines had advice."""

    def __init__(self, pattern: Pattern, into: ThreadSet, problems: Problems) -> None:
        self._model, self._into, self._problems = pattern.thread_sets[0], into, problems
        self._notes = pattern.notes_markdown
        # Where the tool chose, there is no nearer colour to advise.
        self._lines = [line for line in pattern.key if into.id not in line.matched]
        self._advised: set[str] = set()  # marks
        self._sources: dict[Thread, set[Needle]] = {}  # what each thread stands for
        for line in pattern.key:
            for pair in pairs(line, self._model, into):
                for thread in pair.target:
                    self._sources.setdefault(thread, set()).add(pair.source)

    def complain_of_collisions(self) -> None:
        """Different threads of the model that are one here, at the later of their lines."""
        first: dict[Needle, tuple[Needle, KeyLine]] = {}
        told: set[tuple[Needle, Needle]] = set()
        for line in self._lines:
            for pair in pairs(line, self._model, self._into):
                source, earlier = first.setdefault(pair.target, (pair.source, line))
                if source == pair.source or (source, pair.source) in told:
                    continue
                told.add((source, pair.source))
                self._advised.add(line.mark)
                self._problems.add(
                    line.place,
                    "conversion-collides",
                    set=self._into.id,
                    one=_numbers(source),
                    mark=earlier.mark,
                    other=_numbers(pair.source),
                    other_mark=line.mark,
                    number=_numbers(pair.target),
                    hint=self._way_out(pair.source, pair.target[0]),
                )

    def _way_out(self, source: Needle, thread: Thread) -> str:
        apart = {one: _apart(source, (one,)) for one in self._free(thread, source)}
        if not apart:
            return f"{thread.card.name} has no colour that is still free"
        better = min(apart, key=apart.__getitem__)
        return (
            f"the nearest free colour for the latter is '{better.colour.number}' "
            f"{better.colour.name} ({in_words(apart[better])}, {apart[better]:.1f})"
        )

    def complain_of_distance(self) -> None:
        """Lines that are far from the model's colour although a nearer one is free.

        What counts is what the eye mixes from a needle, as on the key page.
        """
        for line in self._lines:
            whole = _apart(needle(line, self._model), needle(line, self._into))
            if whole <= FAR or line.mark in self._advised:
                continue
            better = min(self._instead(line), key=lambda one: one.difference, default=None)
            if better is None or better.difference >= whole:
                continue
            thread = Thread(better.thread.card_id, better.colour, better.thread.card)
            self._sources.setdefault(thread, set()).add(needle(line, self._model))  # offered once
            self._problems.add(
                line.place,
                "conversion-far",
                mark=line.mark,
                set=self._into.id,
                number=better.thread.colour.number,
                apart=f"{whole:.1f}",
                hint=self._slip(line) + f"'{better.colour.number}' {better.colour.name} is nearer "
                f"({in_words(better.difference)}, {better.difference:.1f})",
            )

    def _slip(self, line: KeyLine) -> str:
        """A question that goes before the nearer colour, where another of the model's card whose number is almost the key's is
        near the conversion: the model's number may be the slip, where the notes do not name its colour."""
        model, into = needle(line, self._model), needle(line, self._into)
        if len(model) > 1:
            return ""
        (own,) = model
        if re.search(rf"\b{re.escape(own.colour.name)}\b", self._notes, re.IGNORECASE):
            return ""
        used = {thread.colour for one in self._lines for thread in needle(one, self._model)}
        meant = [
            colour
            for colour in own.card.colours.values()
            if colour not in used
            and _may_be_slip(colour.number, own.colour.number)
            and _apart((Thread(own.card_id, colour, own.card),), into) <= FAR
        ]
        if len(meant) != 1:
            return ""
        return f"should '{own.colour.number}' be '{meant[0].number}' {meant[0].name}? Else of the other card "

    def _instead(self, line: KeyLine) -> Iterator[_Better]:
        """The line with one thread replaced, in every way that is open."""
        model, whole = needle(line, self._model), needle(line, self._into)
        for pair in pairs(line, self._model, self._into):
            for thread in pair.target:
                for free in self._free(thread, pair.source):
                    changed = tuple(free if one == thread else one for one in whole)
                    yield _Better(thread, free.colour, _apart(model, changed))

    def _free(self, thread: Thread, source: Needle) -> Iterator[Thread]:
        """The colours of the thread's card that stand for nothing else than `source`."""
        for colour in thread.card.colours.values():
            one = Thread(thread.card_id, colour, thread.card)
            if one != thread and self._sources.get(one, set()) <= {source}:
                yield one


def _apart(one: Needle, other: Needle) -> float:
    seen = (blended(tuple(thread.colour.hex for thread in both)) for both in (one, other))
    return difference(*map(lab, seen))


def _numbers(threads: Needle) -> str:
    return " with ".join(f"'{thread.colour.number}'" for thread in threads)


def _may_be_slip(one: str, other: str) -> bool:
    """Whether two numbers are of the same signs in another order, or differ in one sign."""
    differing = sum(a != b for a, b in zip(one, other))
    return len(one) == len(other) and (differing == 1 or sorted(one) == sorted(other))
