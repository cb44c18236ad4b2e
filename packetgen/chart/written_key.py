"""The colours of a written chart and its totals: what the printed key holds, as words."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from packetgen.chart.spoken import Spoken, stitch_words, strand_words
from packetgen.chart.written_lines import bead_name
from packetgen.model import Colour, KeyLine, Pattern, Stitch, ThreadCard, ThreadSet
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
)
from packetgen.reckon.stitches import path_length
from packetgen.reckon.thread import Work

_Strands = Callable[[KeyLine, ThreadSet], int]


@dataclass(frozen=True)
class WrittenColour:
    mark: str
    heading: str  # as it is said in the rows
    threads: str


@dataclass(frozen=True)
class Total:
    name: str
    kind: str
    figure: int


@dataclass(frozen=True)
class _Way:
    """A way of working on top of the rows."""

    kind: str  # in the totals
    several: str  # behind 'for'
    figure: int
    strands: _Strands


def in_key_order(works: tuple[Work, ...]) -> tuple[Work, ...]:
    """As in the printed key: the most used first, what has no stitches in the rows last."""
    return tuple(
        sorted(works, key=lambda w: (not w.total_stitches, -w.total_stitches, w.line.mark))
    )


def written_colours(
    pattern: Pattern, works: tuple[Work, ...], said: Mapping[str, Spoken]
) -> tuple[WrittenColour, ...]:
    """Every key line with its thread in each thread set, and the strands of every way it is worked."""
    return tuple(
        WrittenColour(
            work.line.mark,
            said[work.line.mark].heading,
            _threads(pattern, work),
        )
        for work in works
    )


def totals(
    pattern: Pattern, works: tuple[Work, ...], said: Mapping[str, Spoken]
) -> tuple[Total, ...]:
    """How many of every kind in every colour, and the beads."""
    result = []
    for work in works:
        one = said[work.line.mark]
        result += [
            Total(one.name, stitch_words(stitch), work.stitches[stitch])
            for stitch in Stitch
            if stitch in work.stitches
        ]
        result += [
            Total(one.thread, way.kind, way.figure) for way in _ways(pattern, work.line.mark)
        ]
    beads: dict[str, int] = {}
    for bead in pattern.beads:
        beads[bead_name(bead)] = beads.get(bead_name(bead), 0) + 1
    return (*result, *(Total(name, "bead", count) for name, count in beads.items()))


def _ways(pattern: Pattern, mark: str) -> Iterator[_Way]:
    """The ways in which a colour is worked on top of the rows."""
    drawn = [line for line in pattern.lines if line.mark == mark]
    backstitch = sum(path_length(line.points) for line in drawn if not line.long)
    in_stitches = max(1, round(backstitch)) if backstitch else 0  # as in the printed key
    ways = (
        _Way(
            "backstitch, by its length in stitches",
            "backstitch",
            in_stitches,
            line_strands_for,
        ),
        _Way("long stitch", "long stitches", sum(line.long for line in drawn), line_strands_for),
        _Way(
            "lazy daisy",
            "lazy daisies",
            sum(daisy.mark == mark for daisy in pattern.daisies),
            daisy_strands_for,
        ),
        _Way(
            "French knot",
            "French knots",
            sum(knot.mark == mark for knot in pattern.knots),
            knot_strands_for,
        ),
    )
    return (way for way in ways if way.figure)


def _threads(pattern: Pattern, work: Work) -> str:
    """The line's thread in the model's set, then in every other set that has another."""
    model, *others = pattern.thread_sets

    def words(thread_set: ThreadSet, named: bool) -> str:
        return _needle(work.line, thread_set, named) + _strands(pattern, work, thread_set)

    found = [words(model, False)]
    found += [words(one, True) for one in others if words(one, False) != found[0]]
    return "; or ".join(found) + "."


def _needle(line: KeyLine, thread_set: ThreadSet, named: bool) -> str:
    """'Bramble M1 with T1': a card is said once for all its colours that follow one another."""
    words, last = [], ""
    for card, colour in zip(line.cards_in(thread_set), line.threads[thread_set.id]):
        words.append(_thread(card, colour, named, new_card=card.id != last))
        last = card.id
    return " with ".join(words)


def _thread(card: ThreadCard, colour: Colour, named: bool, new_card: bool) -> str:
    words = f"{card.name} {colour.number}" if new_card else colour.number
    return f"{words} {colour.name}" if named else words


def _strands(pattern: Pattern, work: Work, thread_set: ThreadSet) -> str:
    """', 2 strands in the rows, 1 strand for backstitch and French knots'."""
    found = [("in the rows", strands_for(work.line, thread_set))] if work.total_stitches else []
    on_top: dict[int, list[str]] = {}
    for way in _ways(pattern, work.line.mark):
        on_top.setdefault(way.strands(work.line, thread_set), []).append(way.several)
    found += [(f"for {_listed(several)}", strands) for strands, several in on_top.items()]
    if len({strands for _, strands in found}) == 1:
        return f", {strand_words(found[0][1])}"
    return "".join(f", {strand_words(strands)} {where}" for where, strands in found)


def _listed(words: list[str]) -> str:
    *most, last = words
    return f"{', '.join(most)} and {last}" if most else last
