"""A line of backstitch that runs slanting over many more stitches than any other, as where a figure of a point is wrong."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import dist

from packetgen.diagnostics import Problems
from packetgen.load.points import point_otherwise, point_said, point_with_figure
from packetgen.model import Grid, Line, Pattern, Point

# Over so many stitches at least, of so many lines at least, and so many times the next: limits of our own choice.
_LONG, _FEWEST, _TIMES = 12, 4, 3


@dataclass(frozen=True)
class _Leg:
    """From one point of a line to the next."""

    line: Line
    start: Point
    end: Point

    @property
    def length(self) -> float:
        return dist(self.start, self.end)

    @property
    def slants(self) -> bool:
        return self.start[0] != self.end[0] and self.start[1] != self.end[1]

    @property
    def over(self) -> float:
        return max(abs(one - other) for one, other in zip(self.start, self.end))

    @property
    def from_corner_to_corner(self) -> bool:
        """Of its stitches, as a line may well run that has no fellow."""
        return abs(self.end[0] - self.start[0]) == abs(self.end[1] - self.start[1])

    def adjoins(self, other: "_Leg") -> bool:
        """Of a corner set wrong the line to it and that from it are both long."""
        return self.line is other.line and not {self.start, self.end}.isdisjoint(
            (other.start, other.end)
        )


def complain_of_long_line(pattern: Pattern, problems: Problems) -> None:
    """Advice on the longest slanting line of backstitch from one point to the next, where all others are far shorter; or
    all other slanting ones are, and one figure more, or two exchanged, would make it as they are."""
    legs = [leg for line in pattern.lines if not line.long for leg in _legs(line, line.points)]
    slanting = sorted((leg for leg in legs if leg.slants), key=lambda leg: -leg.length)
    if len(legs) < _FEWEST or not slanting:
        return
    longest = slanting[0]
    others = [leg for leg in legs if not leg.adjoins(longest)]
    if not others or longest.length < _LONG:
        return
    slants = max((leg.length for leg in others if leg.slants), default=0.0)
    next_long = max(leg.length for leg in others)
    said = {at: point_said(at) for at in (longest.start, longest.end)}
    exchanged, lost = (
        [
            (at, other)
            for at, word in said.items()
            for other in {*ways(at, word)} - {at}
            if _mends(longest, at, other, slants, pattern.grid)
        ]
        for ways in (_with_figures_exchanged, lambda _, word: point_with_figure(word))
    )
    alone = not longest.from_corner_to_corner and longest.length >= _TIMES * next_long
    if alone or ((exchanged or lost) and longest.length >= _TIMES * slants):
        facts = {"start": said[longest.start], "end": said[longest.end]}
        facts |= {"over": f"{longest.over:g}", "slip": ""}
        if len(exchanged) == 1:  # of figures that were lost there are mostly several
            ((at, other),) = exchanged
            facts["slip"] = f"should {said[at]} be {point_said(other)}? Else "
        which, far = ("no other", next_long) if alone else ("no other slanting one", slants)
        facts["others"] = f"{which} over more than {far:.0f}" if far else "no other slants"
        problems.add(longest.line.place, "line-long", **facts)


def _legs(line: Line, points: tuple[Point, ...]) -> list[_Leg]:
    return [_Leg(line, *two) for two in pairwise(points)]


def _with_figures_exchanged(at: Point, said: str) -> Iterator[Point]:
    """Points that may be meant by `at`: its two numbers in each other's place, or two figures of one of them."""
    yield at[::-1]
    yield from point_otherwise(said)


def _mends(leg: _Leg, at: Point, other: Point, slants: float, grid: Grid) -> bool:
    """Whether with the `other` point in place of the one `at` which it ends no slanting line to it or from it is long."""
    points = tuple(other if point == at else point for point in leg.line.points)
    beside = [one for one in _legs(leg.line, points) if other in (one.start, one.end)]
    inside = 1 <= other[0] <= grid.width + 1 and 1 <= other[1] <= grid.height + 1
    return inside and not any(one.slants and one.length >= max(_LONG, slants) for one in beside)
