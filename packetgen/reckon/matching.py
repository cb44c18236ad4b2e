"""The nearest colours on another thread card. The one door to scipy's assignment of pairs.

Colours are compared as a screen shows them, by CIEDE2000 (`packetgen.colour`). Taken each by
itself, two colours may fall on one; kept distinct, the pairs are those whose differences have the
least sum (the linear assignment problem). A thread set of a pattern may be matched like that where
the author gave no colours of her own.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from packetgen.colour import difference, in_words, lab
from packetgen.diagnostics import Problems
from packetgen.model import Colour, KeyLine, MatchedSet, Pattern, ThreadCard, ThreadSet

# Between equally near colours the very same one goes first; far below any difference that is printed.
_TIE = 1e-9


@dataclass(frozen=True)
class Match:
    """A colour, and what stands for it on another card."""

    source: Colour
    target: Colour
    difference: float  # CIEDE2000

    @property
    def words(self) -> str:
        return in_words(self.difference)


class TooFewColours(ValueError):
    """More colours are to be kept distinct than the other card has."""

    def __init__(self, wanted: int, free: int) -> None:
        super().__init__(f"{wanted} colours cannot each have their own among {free}")
        self.wanted, self.free = wanted, free


def match(source: Colour, target: Colour) -> Match:
    return Match(source, target, difference(lab(source.hex), lab(target.hex)))


def nearest_matches(sources: Iterable[Colour], targets: Sequence[Colour]) -> tuple[Match, ...]:
    """The nearest of `targets` for each of `sources`, in their order; of equals the first."""
    sources = tuple(sources)
    return tuple(
        Match(source, *min(zip(targets, row), key=lambda pair: _cost(source, *pair)))
        for source, row in zip(sources, _differences(sources, targets))
    )


def distinct_matches(sources: Iterable[Colour], targets: Sequence[Colour]) -> tuple[Match, ...]:
    """One of `targets` for each of `sources`, none of them twice, with the least sum of differences.

    Raises TooFewColours where there are more sources than targets.
    """
    sources = tuple(sources)
    if len(sources) > len(targets):
        raise TooFewColours(len(sources), len(targets))
    if not sources:
        return ()
    from scipy.optimize import linear_sum_assignment  # half a second: only when pairs are asked for

    table = _differences(sources, targets)
    costs = [
        [_cost(source, target, apart) for target, apart in zip(targets, row)]
        for source, row in zip(sources, table)
    ]
    _, columns = linear_sum_assignment(costs)
    return tuple(
        Match(source, targets[column], row[column])
        for source, row, column in zip(sources, table, columns.tolist())
    )


def collisions(matches: Iterable[Match]) -> tuple[tuple[Match, ...], ...]:
    """The groups of matches that fall on one target, in the order of their first."""
    groups: dict[str, list[Match]] = {}
    for one in matches:
        groups.setdefault(one.target.number, []).append(one)
    return tuple(tuple(group) for group in groups.values() if len(group) > 1)


def _differences(sources: Sequence[Colour], targets: Sequence[Colour]) -> list[list[float]]:
    seen = [lab(target.hex) for target in targets]
    return [[difference(lab(source.hex), other) for other in seen] for source in sources]


def _cost(source: Colour, target: Colour, apart: float) -> float:
    return apart - _TIE if source == target else apart


# --- threads in needles ---------------------------------------------------------------------------


@dataclass(frozen=True)
class Thread:
    """A colour of a card. Two cards may use the same number."""

    card_id: str
    colour: Colour
    card: ThreadCard = field(compare=False, repr=False)


Needle = tuple[Thread, ...]  # one thread, or the two of a blend


@dataclass(frozen=True)
class Pair:
    """What a key line has in one set, and what stands for it in another."""

    source: Needle
    target: Needle


def needle(line: KeyLine, thread_set: ThreadSet) -> Needle:
    cards, colours = line.cards_in(thread_set), line.threads[thread_set.id]
    return tuple(Thread(card.id, colour, card) for card, colour in zip(cards, colours))


def pairs(line: KeyLine, one: ThreadSet, other: ThreadSet) -> tuple[Pair, ...]:
    """Thread by thread, those of two blends the way round that brings them nearer; a blend and a
    single thread as they are."""
    source, target = needle(line, one), needle(line, other)
    if len(source) != len(target):
        return (Pair(_sorted(source), _sorted(target)),)
    if len(source) == 2 and _sum(source, target) > _sum(source, target[::-1]):
        target = target[::-1]
    return tuple(Pair((ours,), (theirs,)) for ours, theirs in zip(source, target))


def _sum(source: Needle, target: Needle) -> float:
    return sum(match(a.colour, b.colour).difference for a, b in zip(source, target))


def _sorted(threads: Needle) -> Needle:
    return tuple(sorted(threads, key=lambda thread: (thread.card_id, thread.colour.number)))


# --- a set of a pattern that is matched -----------------------------------------------------------


def with_matches(pattern: Pattern, problems: Problems) -> Pattern:
    """The pattern with every matched set filled: each thread that has no colour of the author's gets
    its own, none that is taken already; a thread of another card than the set's stays as it is.

    A set that has too few colours is reported, and filled with the nearest.
    """
    for request in pattern.matched:
        pattern = _filled(pattern, request, problems)
        _complain_of_lines_alike(pattern, request.into, problems)
    return pattern


def _filled(pattern: Pattern, request: MatchedSet, problems: Problems) -> Pattern:
    into, source = request.into, request.source
    empty = [line for line in pattern.key if into.id in line.matched]
    chosen = _chosen(pattern, request)
    needed = list(dict.fromkeys(thread for line in empty for thread in needle(line, source)))
    known = {thread: thread for thread in needed if thread.card_id != source.card.id} | {
        thread: chosen[thread] for thread in needed if thread in chosen
    }
    wanted = [thread for thread in needed if thread not in known]
    own = [line for line in pattern.key if into.id not in line.matched]
    taken = {thread for line in own for thread in needle(line, into)} | set(known.values())
    colours = tuple(into.card.colours.values())
    free = [one for one in colours if Thread(into.card.id, one, into.card) not in taken]
    try:
        found = distinct_matches((thread.colour for thread in wanted), free)
    except TooFewColours as too_few:
        problems.add(
            request.place,
            "match-too-few",
            wanted=too_few.wanted,
            source=source.card.name,
            card=into.card.name,
            free=too_few.free,
            set=into.id,
        )
        found = nearest_matches((thread.colour for thread in wanted), colours)
    known |= {
        thread: Thread(into.card.id, one.target, into.card) for thread, one in zip(wanted, found)
    }
    key = tuple(
        _line_with(line, into, [known[thread] for thread in needle(line, source)])
        if into.id in line.matched
        else line
        for line in pattern.key
    )
    return replace(pattern, key=key)


def _chosen(pattern: Pattern, request: MatchedSet) -> dict[Thread, Thread]:
    """What the author's own lines give for a thread, those in a single thread first: a blend is chosen
    for its mixture. A braid is no guide: it cannot stand in every needle."""
    chosen: dict[Thread, Thread] = {}
    own = [line for line in pattern.key if request.into.id not in line.matched]
    for line in sorted(own, key=lambda line: len(line.threads[request.source.id])):
        for pair in pairs(line, request.source, request.into):
            if len(pair.source) == len(pair.target) == 1 and not pair.target[0].card.braid:
                chosen.setdefault(pair.source[0], pair.target[0])
    return chosen


def _line_with(line: KeyLine, into: ThreadSet, threads: Iterable[Thread]) -> KeyLine:
    threads = tuple(dict.fromkeys(threads))  # two that became one colour are one thread
    own = all(thread.card_id == into.card.id for thread in threads)
    cards = {} if own else {into.id: tuple(thread.card for thread in threads)}
    return replace(
        line,
        threads=MappingProxyType(
            {**line.threads, into.id: tuple(thread.colour for thread in threads)}
        ),
        cards=MappingProxyType({**line.cards, **cards}),
    )


def _complain_of_lines_alike(pattern: Pattern, into: ThreadSet, problems: Problems) -> None:
    """A stitcher must be able to tell two lines apart, as where the author gives both."""
    first: dict[tuple[object, ...], KeyLine] = {}
    for line in pattern.key:
        threads = _sorted(needle(line, into))
        same = first.setdefault((threads, line.stitch, line.strands.get(into.id)), line)
        if same is not line and into.id in same.matched + line.matched:
            problems.add(
                line.place,
                "key-lines-alike",
                mark=f"'{line.mark}'",
                other=f"'{same.mark}'",
                numbers=" and ".join(f"'{thread.colour.number}'" for thread in threads),
                set=f"'{into.id}'",
                mend="change the one that is a slip; or use one mark for both, in the chart too",
            )


def matches_of(pattern: Pattern, request: MatchedSet) -> tuple[Match, ...]:
    """What the tool chose in a matched set that `with_matches` has filled: one a thread, in the order
    of the key."""
    own = _chosen(pattern, request)
    found: dict[Thread, Match] = {}
    for line in pattern.key:
        if request.into.id not in line.matched:
            continue
        ours, theirs = needle(line, request.source), needle(line, request.into)
        if len(theirs) == 1:
            theirs *= len(ours)
        for thread, target in zip(ours, theirs):
            if thread.card_id == request.source.card.id and thread not in own:
                found.setdefault(thread, match(thread.colour, target.colour))
    return tuple(found.values())
