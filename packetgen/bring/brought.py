"""A drawing in threads of one card: the rows of its chart, the lines of its key, and what was lost."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from functools import cache

import numpy as np

from packetgen.bring.apart import each_apart, lab_of, rgb_of, table
from packetgen.bring.choosing import Choice, Merge
from packetgen.bring.chosen import chosen
from packetgen.bring.drawing import Cells, Drawing, Wish
from packetgen.bring.key_text import KnownLine
from packetgen.bring.marks import marks_for, may_be_mark
from packetgen.bring.small_colours import Small, small_colours
from packetgen.bring.speckles import alone, tidied
from packetgen.bring.together import Together, together
from packetgen.model import BARE, Colour, Stitch

MOST_DRAWN = 2000  # colours; beyond that nobody has drawn them one by one


@dataclass(frozen=True)
class Entry:
    """A line of the new key. The differences are CIEDE2000 from what was drawn, over its stitches of which the
    file has a colour: a shade along a soft edge stands for the colour that it is a shade of."""

    mark: str
    colour: Colour
    stitch: Stitch
    stitches: int
    coloured: int  # of them: of which the file has a colour, and not only a code
    mean: float
    largest: float
    kept: bool  # whether the pattern's key had it
    codes: tuple[str, ...] = ()  # of a table or grid that became it, that of most stitches first


@dataclass(frozen=True, eq=False)
class Brought:
    rows: tuple[str, ...]
    entries: tuple[Entry, ...]
    cells: Cells  # n for the n-th entry
    remarks: str  # the drawing's own, where all its marks are as it had them; else ''
    merges: tuple[Merge, ...]
    together: tuple[Together, ...]
    soft_squares: int  # whose colour is a shade along a soft edge, told nowhere else
    soft_most: float  # CIEDE2000 of such a shade from the colour that was drawn
    tidied: tuple[Merge, ...]
    small: tuple[Small, ...]
    alone: int  # stitches that stand alone now
    could_tidy: tuple[int, ...]  # of them, how many would go within each of TIDY_HINTS
    told: tuple[str, ...]

    @property
    def stitches(self) -> int:
        return sum(entry.stitches for entry in self.entries)

    @property
    def coloured(self) -> int:
        """Of how many stitches the file has a colour."""
        return sum(entry.coloured for entry in self.entries)

    @property
    def mean(self) -> float:
        """CIEDE2000 of these from what was drawn; 0 where there are none."""
        return sum(one.mean * one.coloured for one in self.entries) / max(self.coloured, 1)

    @property
    def largest(self) -> float:
        return max(entry.largest for entry in self.entries)


TIDY_HINTS = (10.0, 20.0)


@dataclass(frozen=True)
class _Slot:
    """A thread worked in one way: a line of the key to be."""

    colour: Colour
    stitch: Stitch
    place: int  # among the card's, or after them for a line that was there
    known: KnownLine | None = None


def bring(
    drawing: Drawing,
    card: Sequence[Colour],
    known: Sequence[KnownLine] = (),
    taken: Collection[str] = (),
    most: int | None = None,
    tidy: float | None = None,
) -> Brought:
    """The drawing in at most `most` threads of the card.

    `known` are lines of the key that the pattern has: where one of them has the colour, it stays, mark and
    all. `taken` are marks that nothing else may have. With `tidy`, a stitch that stands alone takes a
    neighbour's colour where that is at most so far (CIEDE2000) from its own. Raises TooFewAsked.
    """
    if not drawing.photograph and len(drawing.colours) > MOST_DRAWN:
        many = (
            f"{len(drawing.colours):,} colours are more than anybody draws: taken for a photograph"
        )
        drawing = replace(drawing, photograph=True, told=(*drawing.told, many))
    held, choice = chosen(drawing, card, known, most)
    slots, slot_of = _slots(drawing, card, known, held, choice)
    cells = np.concatenate(([0], slot_of + 1))[drawing.cells]
    labs = lab_of(rgb_of(tuple(slot.colour.hex for slot in slots)))
    gaps = np.pad(table(labs, labs), ((1, 0), (1, 0)))
    cells, went = tidied(cells, gaps, tidy) if tidy is not None else (cells, {})
    used = sorted(set(np.unique(cells).tolist()) - {0}, key=lambda n: _order(slots[n - 1], known))
    marks = _marks(drawing, [slots[n - 1] for n in used], [slot_of == n - 1 for n in used], taken)
    fallen = together(drawing, card, held, choice)
    own = lab_of(drawing.colours)
    strayed = each_apart(own, own[fallen.drawn_as - 1])
    soft = fallen.drawn_as != np.arange(1, len(own) + 1)
    entries = _entries(drawing, cells, own[fallen.drawn_as - 1], labs, used, slots, marks)
    renumbered = np.zeros(len(slots) + 1, np.int32)
    renumbered[used] = np.arange(1, len(used) + 1)
    signs = np.array([BARE, *(entry.mark for entry in entries)])
    final = renumbered[cells]
    left = alone(cells)
    return Brought(
        rows=tuple("".join(row) for row in signs[final]),
        entries=entries,
        cells=final,
        remarks=drawing.remarks if _as_wished(drawing, final, entries) else "",
        merges=choice.merges,
        together=fallen.together,
        soft_squares=int(drawing.counts()[1:][soft].sum()),
        soft_most=float(strayed.max()),
        tidied=tuple(
            Merge(slots[a - 1].colour, slots[b - 1].colour, number, float(gaps[a, b]))
            for (a, b), number in sorted(went.items(), key=lambda one: (-one[1], one[0]))
        ),
        small=small_colours(drawing, card, known, [(one.colour, one.stitches) for one in entries]),
        alone=int(left.sum()),
        could_tidy=()
        if tidy is not None
        else tuple(tidied(cells, gaps, most)[1].total() for most in TIDY_HINTS),
        told=drawing.told,
    )


def _slots(
    drawing: Drawing,
    card: Sequence[Colour],
    known: Sequence[KnownLine],
    held: dict[int, KnownLine],
    choice: Choice,
) -> tuple[list[_Slot], np.ndarray]:
    """The lines of the key, and which of them (from 0) each colour has."""
    plain: dict[tuple[str, Stitch], KnownLine] = {}
    for line in known:
        if line.number:
            plain.setdefault((line.number, line.stitch), line)
    by_mark = {line.mark: line for line in known}
    slots: dict[_Slot, int] = {}

    @cache  # a photograph has a colour for every stitch
    def of_card(place: int, mark: str, stitch: Stitch) -> int:
        colour = card[place]
        same = by_mark.get(mark)
        if same is None or (same.number, same.stitch) != (colour.number, stitch):
            same = plain.get((colour.number, stitch))
        return slots.setdefault(_Slot(colour, stitch, place, same), len(slots))

    slot_of = np.empty(len(drawing.colours), int)
    for n, place in enumerate(choice.thread_of.tolist()):
        if own := held.get(n + 1):
            slot = _Slot(own.colour, own.stitch, len(card), own)
            slot_of[n] = slots.setdefault(slot, len(slots))
        else:
            wish = drawing.wish(n + 1)
            slot_of[n] = of_card(place, wish.mark, wish.stitch)
    return list(slots), slot_of


def _order(slot: _Slot, known: Sequence[KnownLine]) -> tuple[int, int, str]:
    """As the key had it, then as the card has it."""
    before = known.index(slot.known) if slot.known in known else len(known)
    return before, slot.place, slot.stitch.value


def _marks(
    drawing: Drawing, slots: list[_Slot], colours: list[np.ndarray], taken: Collection[str]
) -> list[str]:
    """Those of the key that was there; else as the drawing wishes; else a letter of the thread's name."""
    found = [slot.known.mark if slot.known else "" for slot in slots]
    used = set(taken) | set(found)
    for n, of in enumerate(colours):
        for number in (np.flatnonzero(of) + 1).tolist() if not found[n] and drawing.wishes else ():
            mark = _wished(drawing.wish(number))
            if mark not in used and may_be_mark(mark):
                found[n] = mark
                used.add(mark)
                break
    names = [slot.colour.name for slot, mark in zip(slots, found) if not mark]
    wished = set(map(_wished, drawing.wishes.values()))  # in the file they mean another thread
    new = iter(marks_for(names, used | wished))
    return [mark or next(new) for mark in found]


def _wished(wish: Wish) -> str:
    """The mark that a colour had; or the author's own code for it, which is one where it is a single sign."""
    return wish.mark or (wish.code if wish.code != wish.number else "")


def _entries(
    drawing: Drawing,
    cells: Cells,
    drawn: np.ndarray,
    labs: np.ndarray,
    used: list[int],
    slots: list[_Slot],
    marks: list[str],
) -> tuple[Entry, ...]:
    """`cells` has the slot of each stitch, from 1; `drawn` is the CIELAB of what was drawn in each colour, and
    `labs` that of each slot."""
    found = []
    for n, mark in zip(used, marks):
        slot = slots[n - 1]
        colours, times = np.unique(drawing.cells[cells == n], return_counts=True)
        order = np.argsort(-times, kind="stable")
        colours, times = colours[order], times[order]
        wishes = [drawing.wish(one) for one in colours.tolist()]
        of_file = np.array([wish.coloured for wish in wishes])
        apart = table(drawn[colours[of_file] - 1], labs[[n - 1]])[:, 0]
        coloured = int(times[of_file].sum())
        found.append(
            Entry(
                mark,
                slot.colour,
                slot.stitch,
                int(times.sum()),
                coloured,
                float(apart @ times[of_file]) / max(coloured, 1),
                float(apart.max(initial=0)),
                slot.known is not None,
                tuple(wish.code for wish in wishes if wish.code),
            )
        )
    return tuple(found)


def _as_wished(drawing: Drawing, cells: Cells, entries: tuple[Entry, ...]) -> bool:
    """Whether every stitch has the very mark that the drawing gave it."""
    if not drawing.remarks or len(drawing.wishes) < len(drawing.colours):
        return False
    wished = np.array(["", *(drawing.wishes[n].mark for n in range(1, len(drawing.colours) + 1))])
    got = np.array(["", *(entry.mark for entry in entries)])
    return bool((wished[drawing.cells] == got[cells]).all())
