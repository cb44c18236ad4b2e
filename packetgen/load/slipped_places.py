"""A slip in the place of one part of a finishing piece, for which it lies on the panel, or parts do not touch that belong
together."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace

from packetgen.load.placed_parts import (
    ROUNDED_MM,
    Misplaced,
    Point,
    area_on,
    better_at,
    placed_part,
    told_at,
    touching,
)
from packetgen.model import Part
from packetgen.units import plain


def place_meant(one: Misplaced, told_mm: Iterable[float]) -> Point | None:
    """The other place that a part on the panel may be meant to have: with its two numbers changed or in centimetres, as steps
    have `told` one of them, or with two of its figures changed; one that makes the whole larger comes last."""
    better, whole = better_at(one), one.whole_of_others
    if better and whole.covers(one.moved_to(better)):
        return better
    if told := told_at(one, told_mm):
        return told
    # Up or down it may stand out, as a foot does, but not aside; and it is meant to be beside the panel.
    first, _, last, _ = whole.bounds
    exchanged = []
    for place in exchanged_places(*one.at_mm):
        moved = one.moved_to(place)
        left, _, right, _ = moved.bounds
        beside = one.on_panel_mm2(place) <= ROUNDED_MM * moved.length
        if beside and first <= left and right <= last and one.is_free_at(place):
            exchanged.append(place)
    return exchanged[0] if len(exchanged) == 1 else better


def turned_about(parts: Sequence[Part]) -> int | None:
    """The number of the part with the two numbers of whose place changed all parts hang together, where they do not."""
    found = _all_touch_with(parts, lambda across, down: [(down, across)])
    return found[0][0] if len(found) == 1 else None


def figures_exchanged(parts: Sequence[Part]) -> tuple[int, Point] | None:
    """The number of the part, and its place with two neighbouring figures of one of the two numbers changed, with which all
    parts hang together, where they do not."""
    found = _all_touch_with(parts, exchanged_places)
    return found[0] if len(found) == 1 else None


def exchanged_places(across: float, down: float) -> list[Point]:
    """The places with two neighbouring figures of one of the two numbers changed."""
    return [
        *((one, down) for one in _neighbours_exchanged(across)),
        *((across, one) for one in _neighbours_exchanged(down)),
    ]


def _neighbours_exchanged(number: float) -> Iterator[float]:
    """146.5 → 416.5 and 164.5: the figures before the full stop."""
    figures, stop, rest = plain(number).partition(".")
    for at in range(len(figures) - 1):
        pair = figures[at : at + 2]
        if pair.isdigit() and pair[0] != pair[1]:
            yield float(f"{figures[:at]}{pair[::-1]}{figures[at + 2 :]}{stop}{rest}")


def _all_touch_with(
    parts: Sequence[Part], meant: Callable[[float, float], Iterable[Point]]
) -> list[tuple[int, Point]]:
    """The parts, by number, and their places as they may be `meant`, with which all hang together that do not. They are sought
    among those that most of the wood hangs together with, since what stands alone may hang on cord; and not where one would
    then lie on others."""
    placed = [placed_part(part) for part in parts]
    groups = touching(placed)
    if len(groups) < 2:
        return []
    main = max(groups, key=lambda group: sum(placed[number].area for number in group))
    found = []
    for number in main:
        rest = [one for at, one in enumerate(placed) if at != number]
        for place in meant(*parts[number].at_mm):
            moved = placed_part(replace(parts[number], at_mm=place))
            others = [moved if at == number else one for at, one in enumerate(placed)]
            laps = area_on(moved, rest) > area_on(placed[number], rest) + ROUNDED_MM * moved.length
            if place != parts[number].at_mm and len(touching(others)) == 1 and not laps:
                found.append((number, place))
    return found
