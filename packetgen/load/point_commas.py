"""Points whose commas may be those of decimals: '39,5 23,5' for the one point 39.5,23.5."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems
from packetgen.load.chart import Chart
from packetgen.load.points import Spot
from packetgen.load.values import Filled
from packetgen.load.words import shown
from packetgen.model import BARE

_QUARTER = re.compile(r"(\d+),(5|25|75)", re.ASCII)


def complain_of_commas(
    spots: Sequence[Spot],
    filled: Filled,
    name: str,
    chart: Chart | None,
    least: int,
    problems: Problems,
) -> None:
    """Advice where none of the points under `name` is on a stitch, and all are, two by two as decimals: they make points
    of their own, `least` of them or more."""
    found = [_QUARTER.fullmatch(spot.said) for spot in spots]
    few = len(spots) < 2 * least  # none at all, if the name is missing
    if chart is None or len(spots) % 2 or few:
        return
    numbers = [f"{one[1]}.{one[2]}" for one in found if one]
    if len(numbers) < len(spots) or any(_on_stitch(spot.x, spot.y, chart) for spot in spots):
        return
    meant = list(zip(numbers[::2], numbers[1::2]))
    if all(_on_stitch(float(x), float(y), chart) for x, y in meant):
        problems.add(
            filled.given[name].at(spots[0].offset),
            "points-on-bare",
            number=len(spots),
            meant=shown(" ".join(f"{x},{y}" for x, y in meant)),
            on="which is on stitches" if len(meant) == 1 else "which are on stitches",
        )


def _on_stitch(x: float, y: float, chart: Chart) -> bool:
    """Whether anything is worked in the stitch at that point, or in one of those that meet there."""
    columns = {int(x) - 1, int(x) - (2 if x.is_integer() else 1)}
    rows = {int(y) - 1, int(y) - (2 if y.is_integer() else 1)}
    return any(
        0 <= row < len(chart.rows)
        and 0 <= column < len(chart.rows[row])
        and chart.rows[row][column] != BARE
        for row in rows
        for column in columns
    )
