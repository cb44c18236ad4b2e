"""Lines, lazy daisies, French knots and beads: everything that lies on corner coordinates."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from itertools import pairwise

from packetgen.diagnostics import Place, Problems
from packetgen.load.cards import Cards
from packetgen.load.chart import Chart
from packetgen.load.point_commas import complain_of_commas
from packetgen.load.points import Spot, point_otherwise
from packetgen.load.references import resolve
from packetgen.load.values import Filled
from packetgen.load.words import counted, offer, said, shown
from packetgen.model import Bead, BeadCard, Colour, Daisy, Knot, Line
from packetgen.units import plain

_LONGEST_TURNED = 60  # letters of points in a message
_MOST_MEANT = 2  # points that are offered for one
_FREE_MARKS = "zyxwvutsrqponmlkjihgfedcba"


@dataclass(frozen=True)
class Threads:
    """By numbers and names of threads, in small letters: the mark of the key that stands for each, and the thread set and
    colour of each that is on a card."""

    marks: Mapping[str, str]
    on_cards: Mapping[str, tuple[str, Colour]]

    def instead_of(self, word: str, marks: Collection[str]) -> str:
        """What to write for a word that is none of the `marks` of the key."""
        if meant := self.marks.get(word.casefold()):
            return f"write {said(meant)}, which has that thread"
        if (found := self.on_cards.get(word.casefold())) is None:
            return offer(word, marks)
        name, colour = found
        mark = next((one for one in _FREE_MARKS if one not in marks), "?")
        line = f'{mark}: {{{name}: "{shown(colour.number)}"}}'
        thread = shown(f"{colour.number} {colour.name}")
        return (
            f"for the thread {thread} add a line to the key, such as {line}, and write {mark} here"
        )


def read_line(
    filled: Filled,
    long: bool,
    marks: Collection[str] | None,
    threads: Threads,
    chart: Chart | None,
    problems: Problems,
) -> Line | None:
    """Backstitch along a path, or one long stitch."""
    mark = _mark(filled, marks, threads, problems)
    spots = filled["path"]
    if spots is None:
        return None
    place = filled.given["path"]
    if len(spots) < 2:
        problems.add(place.at(0), "path-short", said=said(spots[0].said))
        return None
    if long and len(spots) > 2:
        problems.add(place.at(spots[2].offset), "long-stitch-bends", number=len(spots))
    for before, after in pairwise(spots):
        if (before.x, before.y) == (after.x, after.y):
            problems.add(place.at(after.offset), "point-twice", point=said(after.said))
    _inside(spots, filled, "path", chart, problems)
    complain_of_commas(spots, filled, "path", chart, 2, problems)
    return Line(mark or "", tuple((spot.x, spot.y) for spot in spots), long, filled.place)


def read_daisy(
    filled: Filled,
    marks: Collection[str] | None,
    threads: Threads,
    chart: Chart | None,
    problems: Problems,
) -> Daisy | None:
    """A lazy daisy from the base of its loop to its tip."""
    mark = _mark(filled, marks, threads, problems)
    spots = filled["path"]
    if spots is None:
        return None
    place = filled.given["path"]
    if len(spots) != 2:
        odd = place.at(spots[min(2, len(spots) - 1)].offset)
        problems.add(odd, "daisy-points", number=counted(len(spots), "point"))
        return None
    base, tip = ((spot.x, spot.y) for spot in spots)
    if base == tip:
        problems.add(place.at(spots[1].offset), "daisy-flat", point=said(spots[1].said))
    _inside(spots, filled, "path", chart, problems)
    return Daisy(mark or "", base, tip, filled.place)


def read_knots(
    filled: Filled,
    marks: Collection[str] | None,
    threads: Threads,
    chart: Chart | None,
    problems: Problems,
) -> tuple[Knot, ...]:
    """The French knots of one entry."""
    mark = _mark(filled, marks, threads, problems)
    spots = filled["at"] or ()
    _inside(spots, filled, "at", chart, problems)
    complain_of_commas(spots, filled, "at", chart, 1, problems)
    return tuple(
        Knot(mark or "", (spot.x, spot.y), filled.given["at"].at(spot.offset)) for spot in spots
    )


def read_beads(
    filled: Filled, cards: Cards[BeadCard], chart: Chart | None, problems: Problems
) -> tuple[Bead, ...]:
    """The beads of one entry."""
    card = resolve(filled["card"], filled.place_of("card"), cards, "bead card", problems)
    colour = None
    if card is not None:
        called = {one.name.casefold(): number for number, one in card.colours.items()}
        place = filled.place_of("number")
        file = f"beads/{card.id}.yaml"
        colour = resolve(
            filled["number"], place, card.colours, "bead", problems, called, card.name, file
        )
    spots = filled["at"] or ()
    _inside(spots, filled, "at", chart, problems)
    complain_of_commas(spots, filled, "at", chart, 1, problems)
    if card is None or colour is None:
        return ()
    return tuple(
        Bead(card, colour, (spot.x, spot.y), filled.given["at"].at(spot.offset)) for spot in spots
    )


def _mark(
    filled: Filled, marks: Collection[str] | None, threads: Threads, problems: Problems
) -> str | None:
    mark: str | None = filled["colour"]
    if mark is not None and marks is not None and mark not in marks:
        place: Place = filled.place_of("colour")
        hint = threads.instead_of(mark, marks)
        problems.add(place, "mark-unknown", mark=said(mark), hint=hint)
    return mark


def _inside(
    spots: tuple[Spot, ...], filled: Filled, name: str, chart: Chart | None, problems: Problems
) -> None:
    if chart is None:
        return
    wide, high = len(chart.rows[0]), len(chart.rows)

    def outside(x: float, y: float) -> bool:
        return not (1 <= x <= wide + 1 and 1 <= y <= high + 1)

    beyond = [spot for spot in spots if outside(spot.x, spot.y)]
    if not beyond:
        return
    more = f" (and {counted(len(beyond) - 1, 'more point')})" if len(beyond) > 1 else ""
    hint = f"points go from 1,1 to {wide + 1},{high + 1}"
    turned = " ".join(f"{plain(spot.y)},{plain(spot.x)}" for spot in spots)
    mostly = 2 * len(beyond) >= len(spots)  # else the others are right as they are
    within = not any(outside(spot.y, spot.x) for spot in spots)
    taken = {(spot.x, spot.y) for spot in spots}
    meant = [at for at in point_otherwise(beyond[0].said) if not outside(*at) and at not in taken]
    # Of one point among right ones its own figures are the slip, rather than the order of all.
    one_slip = len(beyond) == 1 and 1 <= len(meant) <= _MOST_MEANT
    turned_round = mostly and within and len(turned) <= _LONGEST_TURNED
    turned_round = turned_round and not (one_slip and len(spots) > 1)
    said_so = " or ".join(f"{plain(x)},{plain(y)}" for x, y in meant) if one_slip else ""
    if turned_round:
        or_so = f", or {said_so}" if said_so else ""
        hint = f"{hint}; the column comes first: should it be {turned}{or_so}?"
    elif said_so:
        hint = f"{hint}; should it be {said_so}?"
    from_one = " ".join(f"{plain(spot.x + 1)},{plain(spot.y + 1)}" for spot in spots)
    counted_from_0 = any(0 in (spot.x, spot.y) for spot in spots)
    inside = not any(outside(spot.x + 1, spot.y + 1) for spot in spots)
    if counted_from_0 and inside and len(from_one) <= _LONGEST_TURNED:
        hint = f"{hint}; they count from 1: should it be {from_one}?"
    problems.add(
        filled.given[name].at(beyond[0].offset),
        "point-outside",
        point=said(beyond[0].said),
        more=more,
        size=f"{wide} × {high}",
        hint=hint,
    )
