"""What a pattern has of every key line, by the ways in which it is worked."""

from collections import Counter
from dataclasses import dataclass

from packetgen.model import KeyLine, Stitch
from packetgen.reckon.figures import Figures
from packetgen.reckon.stitches import path_length

_HALVES = (Stitch.HALF, Stitch.HALF_BACK)


@dataclass(frozen=True)
class ColourCount:
    """Backstitch is measured in sides of a stitch; everything else is counted."""

    lines: tuple[KeyLine, ...]
    whole: int
    half: int
    fractional: int
    backstitch: float
    long_stitches: int
    daisies: int
    knots: int

    @property
    def in_cells(self) -> int:
        return self.whole + self.half + self.fractional

    def __add__(self, other: "ColourCount") -> "ColourCount":
        return ColourCount(
            self.lines + other.lines,
            self.whole + other.whole,
            self.half + other.half,
            self.fractional + other.fractional,
            self.backstitch + other.backstitch,
            self.long_stitches + other.long_stitches,
            self.daisies + other.daisies,
            self.knots + other.knots,
        )


def line_counts(figures: Figures) -> tuple[ColourCount, ...]:
    """One for each key line, in the order of the key."""
    pattern = figures.pattern
    long_stitches = Counter(line.mark for line in pattern.lines if line.long)
    daisies = Counter(daisy.mark for daisy in pattern.daisies)
    knots = Counter(knot.mark for knot in pattern.knots)
    backstitch: dict[str, float] = {}
    for line in pattern.lines:
        if not line.long:
            backstitch[line.mark] = backstitch.get(line.mark, 0.0) + path_length(line.points)
    counts = []
    for work in figures.works:
        mark, whole = work.line.mark, work.stitches.get(Stitch.FULL, 0)
        half = sum(work.stitches.get(stitch, 0) for stitch in _HALVES)
        counts.append(
            ColourCount(
                (work.line,),
                whole,
                half,
                work.total_stitches - whole - half,
                backstitch.get(mark, 0.0),
                long_stitches[mark],
                daisies[mark],
                knots[mark],
            )
        )
    return tuple(counts)


def colour_counts(figures: Figures) -> tuple[ColourCount, ...]:
    """One for each colour of the model's thread set, or blend of two, in the order of the key."""
    model = figures.pattern.thread_sets[0]
    found: dict[tuple[tuple[str, str], ...], ColourCount] = {}
    for count in line_counts(figures):
        (line,) = count.lines
        threads = zip(line.cards_in(model), line.threads[model.id])
        needle = tuple(sorted((card.id, colour.number) for card, colour in threads))
        found[needle] = found[needle] + count if needle in found else count
    return tuple(found.values())
