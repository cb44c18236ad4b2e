"""A slip in the place of one part of a finishing piece, for which parts do not touch that belong together."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace

from packetgen.load.placed_parts import ROUNDED_MM, Point, area_on, placed_part, touching
from packetgen.model import Part
from packetgen.units import plain


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
