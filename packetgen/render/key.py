"""The key as it is printed: one row a key line, in an order that a stitcher can search."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from packetgen.chart.sheet import Look
from packetgen.colour import blended, closeness
from packetgen.model import (
    Colour,
    Daisy,
    KeyLine,
    Knot,
    Pattern,
    Stitch,
    ThreadCard,
    ThreadSet,
)
from packetgen.reckon.figures import Figures
from packetgen.reckon.matching import Match, matches_of
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
    threads_used,
)
from packetgen.reckon.stitches import path_length
from packetgen.reckon.thread import Work

STITCH_WORDS: Mapping[Stitch, str] = {
    Stitch.FULL: "cross stitch",
    Stitch.HALF: "half stitch, rising",
    Stitch.HALF_BACK: "half stitch, falling",
    Stitch.THREE_QUARTER: "three-quarter stitch",
    Stitch.QUARTER: "quarter stitch",
    Stitch.PETITE: "petite stitch",
}
# What the rows of a key may take of a packet's page, a line of words, a symbol, and what a row has besides
# (templates/packet/packet.css: 9 points, 1.25 apart, and its padding and line).
_PAGE_MM, _LINE_MM, _SYMBOL_MM, _ROW_BESIDES_MM = 208.0, 3.97, 5.0, 1.3


@dataclass(frozen=True)
class KeyThread:
    """A key line in one thread set."""

    set: ThreadSet
    colours: tuple[Colour, ...]
    cards: tuple[ThreadCard, ...]  # of each colour
    strands: int  # in cells
    closeness: str  # to the model's set, in words; '' for the model's set itself

    @property
    def other_cards(self) -> tuple[str, ...]:
        """For each colour the name of its card, '' where that is the set's own."""
        return tuple("" if card.id == self.set.card.id else card.name for card in self.cards)


@dataclass(frozen=True)
class KindOfWork:
    """One way in which a key line is worked, as the key prints it."""

    kind: str  # as in `chart.diagrams`: 'full', 'petite', 'backstitch', 'long', 'knot', 'daisy'
    words: str
    count: int  # how many; of backstitch its length in stitches
    strands: tuple[int, ...]  # one a thread set


@dataclass(frozen=True)
class KeyRow:
    mark: str
    symbol: str  # '' where the line has no stitches in cells
    knot_symbol: str  # what its knots carry on a chart without colours
    hex: str
    tint: str
    threads: tuple[KeyThread, ...]
    kinds: tuple[KindOfWork, ...]

    @property
    def name(self) -> str:
        return " with ".join(colour.name for colour in self.threads[0].colours)

    @property
    def knots(self) -> int:
        return sum(one.count for one in self.kinds if one.kind == "knot")

    @property
    def draws_lines(self) -> bool:
        """Whether a sample of its line belongs in the key."""
        return any(one.kind in ("backstitch", "long", "daisy") for one in self.kinds)


def fits_a_page(rows: Sequence[KeyRow]) -> bool:
    """Whether the key table stands whole on one page of the packet, with its heading and its notes."""
    high_mm = sum(max(_SYMBOL_MM, len(row.kinds) * _LINE_MM) + _ROW_BESIDES_MM for row in rows)
    return high_mm <= _PAGE_MM


@dataclass(frozen=True)
class MatchedNote:
    """What a reader is told of a set that the tool matched."""

    card: ThreadCard
    source: ThreadCard
    colours: int  # how many the tool chose
    others: bool  # whether the designer, or another card, gives some
    widest: Match


def matched_notes(pattern: Pattern) -> tuple[MatchedNote, ...]:
    """One a matched set in which the tool chose any colour."""
    notes = []
    for request in pattern.matched:
        found = matches_of(pattern, request)
        if found:
            threads = threads_used(pattern, request.into)
            widest = max(found, key=lambda one: one.difference)
            notes.append(
                MatchedNote(
                    request.into.card,
                    request.source.card,
                    len(found),
                    len(threads) > len(found),
                    widest,
                )
            )
    return tuple(notes)


def key_rows(figures: Figures, look: Look) -> tuple[KeyRow, ...]:
    """Cell stitches first, the most used first; then the lines that only draw lines, daisies and knots."""
    pattern = figures.pattern
    rows = []
    for work in figures.works:
        mark = work.line.mark
        rows.append(
            KeyRow(
                mark=mark,
                symbol=look.symbols[mark] if work.total_stitches else "",
                knot_symbol=look.symbols[mark],
                hex=look.lines[mark],
                tint=look.cells[mark],
                threads=tuple(_thread(pattern, work.line, s) for s in pattern.thread_sets),
                kinds=tuple(_kinds(pattern, work)),
            )
        )
    total = {work.line.mark: work.total_stitches for work in figures.works}
    return tuple(sorted(rows, key=lambda row: (not row.symbol, -total[row.mark], row.mark)))


def _kinds(pattern: Pattern, work: Work) -> Iterator[KindOfWork]:
    """The ways of working that a line has, in the order in which a stitcher meets them."""
    line = work.line
    drawn = [one for one in pattern.lines if one.mark == line.mark]
    backstitch = sum(path_length(one.points) for one in drawn if not one.long)
    in_stitches = max(1, round(backstitch)) if backstitch else 0  # a line however short is counted
    found = [(s.value, STITCH_WORDS[s], work.stitches.get(s, 0), strands_for) for s in Stitch]
    found += [
        ("backstitch", "backstitch", in_stitches, line_strands_for),
        ("long", "long stitch", sum(one.long for one in drawn), line_strands_for),
        ("daisy", "lazy daisy", _of(line.mark, pattern.daisies), daisy_strands_for),
        ("knot", "French knot", _of(line.mark, pattern.knots), knot_strands_for),
    ]
    for kind, words, count, strands in found:
        if count:
            yield KindOfWork(
                kind, words, count, tuple(strands(line, s) for s in pattern.thread_sets)
            )


def _of(mark: str, pieces: tuple[Daisy, ...] | tuple[Knot, ...]) -> int:
    return sum(piece.mark == mark for piece in pieces)


def _thread(pattern: Pattern, line: KeyLine, thread_set: ThreadSet) -> KeyThread:
    model = pattern.thread_sets[0]
    colours, cards = line.threads[thread_set.id], line.cards_in(thread_set)
    said = ""
    if thread_set.id != model.id:
        if (cards, colours) == (line.cards_in(model), line.threads[model.id]):
            said = "the same thread"
        else:
            both = (line.threads[model.id], colours)
            said = closeness(*(blended(tuple(c.hex for c in needle)) for needle in both))
    return KeyThread(thread_set, colours, cards, strands_for(line, thread_set), said)
