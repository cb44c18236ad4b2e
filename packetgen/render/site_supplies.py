"""What the supply list of a series shows: everything to buy for the patterns that are out, to be ticked off.

Thread is told in whole units alone: in the sum of several patterns a number of skeins says nothing of a
chart, and where only one pattern is out it says no more of it than how many skeins to buy. Lengths of
strand, numbers of stitches and "one skein will nearly do" are closer, and stay in the packets.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby

from packetgen.model import ThreadCard, ThreadSet
from packetgen.nouns import plural
from packetgen.reckon.buying import Shared
from packetgen.reckon.cutting import FAT_QUARTER
from packetgen.reckon.figures import Figures
from packetgen.reckon.kit import (
    Beads,
    Chosen,
    ClothPieces,
    cloth_pieces,
    kit,
    shared_beads,
    unit_of,
)
from packetgen.reckon.mounting import Mounting
from packetgen.reckon.series_list import Row, finishing_rows, series_list
from packetgen.reckon.sizes import Size
from packetgen.reckon.standing import Standing
from packetgen.render.site_text import about_metres, capital, counted, listed
from packetgen.units import plain

# What finishing takes is of two kinds: the piece is made once, and every picture is mounted.
_MOUNTING = ("card", "wadding", "backing", "trim", "washer")
_BY_PICTURE = ("card", "wadding", "backing")
_BY_HAND = "dyed by hand, so buy all of it at once"


@dataclass(frozen=True)
class Tick:
    """One line to buy. Its key holds how much: where a later pattern needs more, an old tick is no answer."""

    key: str
    name: str
    much: str  # '2 skeins'
    hex: str = ""
    detail: str = ""


@dataclass(frozen=True)
class Group:
    """Lines of one card, or of one kind."""

    title: str
    about: str
    ticks: tuple[Tick, ...]


@dataclass(frozen=True)
class ThreadList:
    """All thread for a stitcher who takes this set."""

    id: str
    title: str
    total: str  # '41 skeins and 1 reel'; '' while no pattern is out
    groups: tuple[Group, ...]
    without: str  # 'Holly and A Rose', which are not offered in it


@dataclass(frozen=True)
class Cuts:
    """The sizes to cut for one picture."""

    title: str
    sizes: Mounting


@dataclass(frozen=True)
class SuppliesView:
    series_id: str
    designs: tuple[str, ...]  # titles of those that the list is for, as the year has them
    threads: tuple[ThreadList, ...]
    cloths: tuple[Tick, ...]
    beads: tuple[Group, ...]
    mounting: tuple[Tick, ...]
    cuts: tuple[Cuts, ...]
    piece: tuple[Tick, ...]
    fat_quarter: Size = FAT_QUARTER

    @property
    def said(self) -> str:
        """'Holly, A Rose and A Sprig'."""
        return listed(self.designs)


def supplies_view(standing: Standing, year: tuple[Figures, ...]) -> SuppliesView:
    """One list for `year`, the patterns that are out, each on the cloth of its model."""
    series = standing.series
    chosen = [Chosen(each, each.cloths[0], each.pattern.thread_sets[0]) for each in year]
    rows = finishing_rows(series_list(chosen, series.finish))
    return SuppliesView(
        series_id=series.id,
        designs=tuple(each.pattern.title for each in year),
        threads=tuple(_thread_list(one, year, series.thread_sets) for one in series.thread_sets),
        cloths=tuple(tick for line in cloth_pieces(chosen) for tick in _cloth_ticks(line, chosen)),
        beads=tuple(
            _bead_group(tuple(lines))
            for _, lines in groupby(shared_beads(year), key=lambda line: line.card.id)
        ),
        mounting=tuple(_finishing_tick(row) for row in rows if row.item in _MOUNTING and year),
        cuts=tuple(Cuts(one.figures.pattern.title, one.on.mounting) for one in chosen),
        piece=tuple(
            _finishing_tick(row) if year or row.item != "magnet" else _magnets_at_least(row)
            for row in rows
            if row.item not in _MOUNTING
        ),
    )


def _thread_list(
    one: ThreadSet, year: Sequence[Figures], all_sets: Sequence[ThreadSet]
) -> ThreadList:
    chosen, without = [], []
    for each in year:
        offered = {thread_set.id: thread_set for thread_set in each.pattern.thread_sets}
        if one.id in offered:
            chosen.append(Chosen(each, each.cloths[0], offered[one.id]))
        else:
            without.append(each.pattern.title)
    lines = kit(chosen).threads
    by_card = {key: tuple(of) for key, of in groupby(lines, key=lambda line: line.card.id)}
    # The set's own card leads, also while nothing is out.
    groups = [_thread_group(one, one.card, by_card.pop(one.card.id, ()))]
    groups += [_thread_group(one, of[0].card, of) for of in by_card.values()]
    alike = sum(other.card.id == one.card.id for other in all_sets) > 1
    title = f"{one.card.name}, {counted(one.strands, 'strand')}" if alike else one.card.name
    return ThreadList(one.id, title, _total(lines), tuple(groups), listed(tuple(without)))


def _thread_group(one: ThreadSet, card: ThreadCard, lines: Sequence[Shared]) -> Group:
    about = capital(f"{card.material}, in {plural(card.sold_as)} of {about_metres(card.length_m)}")
    ticks = tuple(
        Tick(
            f"{one.id}/{card.id}/{line.colour.number}/{line.units}",
            f"{line.colour.number} {line.colour.name}",
            counted(line.units, card.sold_as),
            line.colour.hex,
        )
        for line in lines
    )
    return Group(card.name, f"{about}; {_BY_HAND}" if card.hand_dyed else about, ticks)


def _total(lines: Sequence[Shared]) -> str:
    units: dict[str, int] = {}
    for line in lines:
        units[line.card.sold_as] = units.get(line.card.sold_as, 0) + line.units
    return listed(tuple(counted(number, thing) for thing, number in units.items()))


def _cloth_ticks(line: ClothPieces, chosen: Sequence[Chosen]) -> Iterator[Tick]:
    """The fat quarters, then each piece that none of them holds."""
    cloth, colour = line.cloth, line.colour
    name, key = f"{cloth.name}, {colour.name}", f"{cloth.id}/{colour.name}"
    about = f"{plain(cloth.count_per_inch)}-count {cloth.weave.value}"
    about = f"{about}, {_BY_HAND}" if cloth.hand_dyed else about
    cut_from_it = [
        one
        for one in chosen
        if one.on.option.cloth.id == cloth.id and one.on.option.colour.name == colour.name
    ]
    held = [one.figures.pattern.title for one in cut_from_it if one.cut not in line.by_measure]
    if line.units:
        much = counted(line.units, unit_of(line))
        said = f"{about}; for {listed(tuple(held))}"
        yield Tick(f"{key}/{line.units}", name, much, colour.hex, said)
    for one in cut_from_it:
        if one.cut in line.by_measure:
            title = one.figures.pattern.title
            said = f"{about}; for {title}, too large for a fat quarter"
            yield Tick(f"{key}/{title}", name, "1 piece", colour.hex, said)


def _bead_group(lines: Sequence[Beads]) -> Group:
    card = lines[0].card
    ticks = tuple(
        Tick(
            f"{card.id}/{line.colour.number}/{line.units}",
            f"{line.colour.number} {line.colour.name}",
            counted(line.units, unit_of(line)),
            line.colour.hex,
        )
        for line in lines
    )
    about = f"{plain(card.size_mm)} mm, in packets of {counted(card.per_packet, 'bead')}"
    return Group(card.name, about, ticks)


def _magnets_at_least(row: Row) -> Tick:
    """How many they are depends on the heaviest picture."""
    known = _finishing_tick(row)
    more = "how many they are is told with the first pattern"
    return replace(known, much=f"at least {known.much}", detail=f"{known.detail}; {more}")


def _finishing_tick(row: Row) -> Tick:
    much = f"{plain(row.quantity)} {row.unit}"
    # Sizes have a table of their own, by picture.
    detail = "" if row.item in _BY_PICTURE else row.detail
    return Tick(f"{row.item}/{row.name}/{much}", capital(row.name), much, "", detail)
