"""The buy list as plain text for a terminal."""

from itertools import groupby

from packetgen.diagnostics import nearest
from packetgen.model import ThreadSet
from packetgen.reckon.buying import Shared, shared_needs
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.thread import Need
from packetgen.units import cut_centimetres, cut_inches, metres


class KitError(Exception):
    """A set or a cloth was asked for that a pattern does not offer; says which it has."""


def kit_table(chosen: tuple[Figures, ...], set_name: str | None, cloth_name: str | None) -> str:
    """What to buy for the chosen patterns. One thread set for all; each on its model's cloth unless
    `cloth_name` names another that it offers. Raises KitError."""
    on_cloths = [_on(figure, cloth_name) for figure in chosen]
    sets = [_set(figure, set_name) for figure in chosen]
    lists = tuple(_needs(on, thread_set) for on, thread_set in zip(on_cloths, sets))
    lines = [
        f"{figure.pattern.title}: {on.option.cloth.name} ({on.option.colour.name}), cut "
        f"{cut_inches(on.mounting.cloth.width_mm)} × {cut_inches(on.mounting.cloth.height_mm)} "
        f"({cut_centimetres(on.mounting.cloth.width_mm)} × {cut_centimetres(on.mounting.cloth.height_mm)})"
        for figure, on in zip(chosen, on_cloths)
    ]
    together = len(chosen) > 1
    lines += ["", *_thread_lines(shared_needs(lists), together)]
    if not together:
        lines += [
            f"* {n.colour.number} {n.colour.name}: {n.warning}" for n in lists[0] if n.warning
        ]
    for figure in chosen:
        for bead in figure.beads:
            lines.append(
                f"Beads: {bead.with_spares} of {bead.sample.card.name} {bead.sample.colour.number} "
                f"{bead.sample.colour.name} ({bead.packets} to buy)"
            )
    return "\n".join(lines)


def _on(figure: Figures, cloth_name: str | None) -> OnCloth:
    if cloth_name is None:
        return figure.cloths[0]
    for on in figure.cloths:
        if on.option.cloth.id == cloth_name:
            return on
    offered = [on.option.cloth.id for on in figure.cloths]
    raise KitError(
        f"{figure.pattern.title} is not offered on {cloth_name!r}; {nearest(cloth_name, offered)}"
    )


def _set(figure: Figures, set_name: str | None) -> ThreadSet:
    sets = figure.pattern.thread_sets
    for thread_set in sets:
        if set_name in (None, thread_set.id):
            return thread_set
    raise KitError(
        f"{figure.pattern.title} has no thread set {set_name!r}; "
        f"{nearest(set_name or '', [s.id for s in sets])}"
    )


def _needs(on: OnCloth, wanted: ThreadSet) -> tuple[Need, ...]:
    return next(needs for thread_set, needs in on.needs if thread_set.id == wanted.id)


def _thread_lines(shared: tuple[Shared, ...], together: bool) -> list[str]:
    """One block a card, each with what is to be bought of it in all."""
    blocks = [(card, tuple(block)) for card, block in groupby(shared, key=lambda item: item.card)]
    names = [f"{item.colour.number} {item.colour.name}" for item in shared]
    wide = max(map(len, [*(card.name for card, _ in blocks), *names])) + 2
    lines: list[str] = []
    for card, block in blocks:
        lines.append(f"{card.name:<{wide}}{'buy':>4}  strand, usually")
        lines += [
            f"{f'{item.colour.number} {item.colour.name}':<{wide}}{item.units:>4}  "
            f"{metres(item.strand.usual_m):>8}"
            for item in block
        ]
        units, apart = sum(item.units for item in block), sum(item.units_apart for item in block)
        lines.append(f"{card.sold_as + 's in all':<{wide}}{units:>4}")
        if together and apart > units:
            lines.append(
                f"Bought for each design by itself it would be {apart}: {apart - units} saved."
            )
    return lines
