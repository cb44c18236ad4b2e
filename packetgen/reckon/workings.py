"""The steps of the thread reckoning one by one, for whoever checks it.

A step is one key line in one kind of work on one cloth: so many equal groups of stitches, each worked
from one start. `thread` sums the same steps over kinds, strands and key lines.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from packetgen.model import Assumptions, Bead, ThreadSet
from packetgen.reckon.needle import (
    daisy_strands_for,
    knot_strands_for,
    line_strands_for,
    strands_for,
)
from packetgen.reckon.runs import runs
from packetgen.reckon.stitches import BEAD_MM, KNOT_MM, stitch_mm
from packetgen.reckon.thread import Work, with_tails

Group = tuple[float, int, int]  # how much is worked, cells travelled behind, how many such groups


@dataclass(frozen=True)
class Step:
    """`groups` count stitches, cells of line, knots or beads, of which one takes `each_mm` of thread."""

    mark: str
    kind: str  # a stitch of the cells, or lines, knots, daisies, beads
    groups: tuple[Group, ...]
    each_mm: float
    travel_mm: float  # for one cell

    @property
    def worked_mm(self) -> float:
        """Thread in the cloth, before any ease."""
        return sum(times * self.one_mm(done, behind) for done, behind, times in self.groups)

    def one_mm(self, done: float, behind: int) -> float:
        """Thread in one group."""
        return done * self.each_mm + behind * self.travel_mm

    def strand_m(self, ease: float, assumptions: Assumptions) -> float:
        """One strand for all groups, with this ease and its tails."""
        return sum(
            times * with_tails(self.one_mm(done, behind) * (1 + ease), assumptions) / 1000
            for done, behind, times in self.groups
        )


def steps(work: Work, cell_mm: float) -> Iterator[Step]:
    """Every kind of work of a key line; none where there is nothing of a kind."""
    mark = work.line.mark
    for stitch, found in work.cells.items():
        patches = tuple((p.stitches, p.travel_cells, times) for p, times in found.items())
        yield Step(mark, stitch.value, patches, stitch_mm(stitch, cell_mm), cell_mm)
    for kind, counted, each_mm in (
        ("lines", work.line_runs, cell_mm),
        ("knots", work.knot_runs, KNOT_MM),
        ("daisies", work.daisy_runs, cell_mm),
    ):
        if counted:
            groups = tuple((done, 0, times) for done, times in sorted(counted.items()))
            yield Step(mark, kind, groups, each_mm, 0.0)


def bead_step(beads: tuple[Bead, ...], assumptions: Assumptions) -> Step:
    """Sewing on beads of one colour."""
    together = runs(((bead.at,) for bead in beads), assumptions.travel_stitches)
    sewn = Counter(map(len, together))
    groups = tuple((done, 0, times) for done, times in sorted(sewn.items()))
    return Step("", "beads", groups, BEAD_MM, 0.0)


def step_strands(step: Step, work: Work, thread_set: ThreadSet) -> int:
    """Strands in the needle for this kind of work."""
    strands_of = {
        "lines": line_strands_for,
        "knots": knot_strands_for,
        "daisies": daisy_strands_for,
    }.get(step.kind, strands_for)
    return strands_of(work.line, thread_set)
