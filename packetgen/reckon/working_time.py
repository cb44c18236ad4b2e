"""How long a pattern takes to stitch, and how hard it is: both by stated rules.

Time: every stitch in a cell counts as one, whatever part of the cell it fills, since each is found, placed
and pulled through; a half stitch is one half. Lines and the stitches laid on top are weighed in the table
below. The weights and the pace are our own assumptions.

Difficulty: points for the number of colours, for the share of fractional stitches and for the share of
stitches that stand alone. The limits are our own.
"""

from dataclasses import dataclass

from packetgen.model import Pace, Pattern, Stitch
from packetgen.nouns import listed
from packetgen.reckon.isolated import Isolated
from packetgen.reckon.needle import threads_used
from packetgen.reckon.stitches import path_length
from packetgen.reckon.thread import Work

# Of a full cross.
WEIGHTS: dict[Stitch, float] = {
    Stitch.FULL: 1.0,
    Stitch.HALF: 0.5,
    Stitch.HALF_BACK: 0.5,
    Stitch.THREE_QUARTER: 1.0,
    Stitch.QUARTER: 1.0,
    Stitch.PETITE: 1.0,
}
BACKSTITCH_A_CELL = 1.0  # for each cell of its length
LONG_STITCH, DAISY, KNOT, BEAD = 1.0, 2.0, 2.0, 2.0  # each


@dataclass(frozen=True)
class WorkingTime:
    counted: float  # full crosses that would take as long
    slow_h: float
    usual_h: float
    quick_h: float


def working_time(pattern: Pattern, works: tuple[Work, ...], pace: Pace) -> WorkingTime:
    """Hours with the needle, at the three paces."""
    in_cells = sum(
        WEIGHTS[stitch] * number for work in works for stitch, number in work.stitches.items()
    )
    lines = sum(
        LONG_STITCH if line.long else BACKSTITCH_A_CELL * path_length(line.points)
        for line in pattern.lines
    )
    on_top = DAISY * len(pattern.daisies) + KNOT * len(pattern.knots) + BEAD * len(pattern.beads)
    counted = in_cells + lines + on_top
    return WorkingTime(counted, counted / pace.slow, counted / pace.usual, counted / pace.quick)


def weights_said(pattern: Pattern, works: tuple[Work, ...]) -> str:
    """'a half stitch counts as a half and every other stitch in a cell as one, …': of what the pattern has."""
    in_cells = {stitch for work in works for stitch, number in work.stitches.items() if number}
    half = {stitch for stitch in in_cells if WEIGHTS[stitch] == 0.5}
    if not half or not in_cells - half:
        said = [
            "a half stitch counts as a half" if half else "every stitch in a cell counts as one"
        ]
    else:
        said = ["a half stitch counts as a half and every other stitch in a cell as one"]
    if not all(line.long for line in pattern.lines):
        said.append("backstitch as one for each cell of its length")
    if any(line.long for line in pattern.lines):
        said.append("a long stitch as one")
    twice = {
        "lazy daisy": pattern.daisies,
        "French knot": pattern.knots,
        "bead": pattern.beads,
    }
    if any(twice.values()):
        said.append(
            f"a {listed(tuple(name for name, found in twice.items() if found), 'or')} as two"
        )
    return ", ".join(said)


@dataclass(frozen=True)
class Rule:
    """A point where the measure is above the first limit, two where it is above the second. `what` has a
    pair of braces for the first."""

    what: str
    limits: tuple[float, float]
    percent: bool = True

    def points(self, measure: float) -> int:
        return sum(measure > limit for limit in self.limits)

    @property
    def said(self) -> str:
        one, two = (
            f"{limit:.0%}".replace("%", " %") if self.percent else f"{limit:.0f}"
            for limit in self.limits
        )
        return f"{self.what.format(one)} (two for more than {two})"


COLOURS = Rule("more than {} colours", (15, 30), percent=False)
FRACTIONS = Rule("more than {} of fractional stitches", (0.01, 0.10))
ALONE = Rule("more than {} of stitches with no neighbour of their colour", (0.02, 0.08))
# Points from which a word holds.
WORDS = ((0, "gentle"), (2, "steady"), (4, "patient"))

RULE_SAID = (
    f"A pattern gets one point for {COLOURS.said}, one for {FRACTIONS.said} and one for {ALONE.said}. "
    + "With {} or fewer the work is {}, with {} or {} it is {}, and with {} or more {}.".format(
        WORDS[1][0] - 1, WORDS[0][1], WORDS[1][0], WORDS[2][0] - 1, WORDS[1][1], *WORDS[2]
    )
)


@dataclass(frozen=True)
class Difficulty:
    word: str  # gentle, steady or patient
    points: int
    colours: int
    fractional_share: float
    isolated_share: float


def difficulty(pattern: Pattern, works: tuple[Work, ...], alone: Isolated) -> Difficulty:
    """The word for a pattern, with all that it follows from."""
    total = sum(work.total_stitches for work in works)
    in_corners = sum(fraction.stitch.in_a_corner for fraction in pattern.fractions)
    fractional = in_corners / total if total else 0.0
    colours = len(threads_used(pattern, pattern.thread_sets[0]))
    points = COLOURS.points(colours) + FRACTIONS.points(fractional) + ALONE.points(alone.share)
    word = next(word for least, word in reversed(WORDS) if points >= least)
    return Difficulty(word, points, colours, fractional, alone.share)
