"""Everything on a pattern that is worked besides the chart's own stitches."""

from dataclasses import dataclass

from packetgen.diagnostics import Problems
from packetgen.load.chart import Chart
from packetgen.load.close_ups import Marks, Taken, read_close_up
from packetgen.load.library import Library
from packetgen.load.stitches import Threads, read_beads, read_daisy, read_knots, read_line
from packetgen.load.values import Filled
from packetgen.model import Bead, Daisy, Fraction, Knot, Line


@dataclass(frozen=True)
class Worked:
    """`marks` are the key marks used in any of it, right or wrong."""

    lines: tuple[Line, ...]
    daisies: tuple[Daisy, ...]
    knots: tuple[Knot, ...]
    beads: tuple[Bead, ...]
    fractions: tuple[Fraction, ...]
    marks: frozenset[str]


def read_worked(
    filled: Filled,
    library: Library,
    marks: Marks,
    known: Marks,
    threads: Threads,
    chart: Chart | None,
    problems: Problems,
) -> Worked:
    """All of it, checked against the chart and the key's `marks`, lines and knots against these and all others that are
    `known`; None for any where it cannot be told.
    """
    drawn = (
        chart if chart is not None and chart.even else None
    )  # on a ragged chart "outside" means nothing
    lines = tuple(
        read_line(one.value, name == "long_stitch", known, threads, drawn, problems)
        for name in ("backstitch", "long_stitch")
        for one in filled.each(name)
        if one.value is not None
    )
    daisies = [
        read_daisy(one.value, known, threads, drawn, problems)
        for one in filled.each("lazy_daisies")
        if one.value is not None
    ]
    knots = [
        knot
        for one in filled.each("french_knots")
        if one.value is not None
        for knot in read_knots(one.value, known, threads, drawn, problems)
    ]
    beads = [
        bead
        for one in filled.each("beads")
        if one.value is not None
        for bead in read_beads(one.value, library.beads, drawn, problems)
    ]
    taken: Taken = {}
    windows = [
        read_close_up(one.value, marks, drawn, taken, problems, known or ())
        for one in filled.each("close_ups")
        if one.value is not None
    ]
    used = {
        one.value["colour"]
        for name in ("backstitch", "long_stitch", "lazy_daisies", "french_knots")
        for one in filled.each(name)
        if one.value is not None and one.value["colour"] is not None
    }
    return Worked(
        lines=tuple(line for line in lines if line is not None),
        daisies=tuple(daisy for daisy in daisies if daisy is not None),
        knots=tuple(knots),
        beads=tuple(beads),
        fractions=tuple(fraction for fractions, _ in windows for fraction in fractions),
        marks=frozenset(used).union(*(marks for _, marks in windows)),
    )
