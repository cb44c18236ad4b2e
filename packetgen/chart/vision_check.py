"""Warns where two key colours fall together for eyes that lack a kind of cone, and their symbols too."""

from collections.abc import Mapping
from itertools import combinations

from packetgen.chart.assignment import LOOKS_ALIKE_TO_SOME, shapes_for
from packetgen.chart.likeness import likeness
from packetgen.chart.tints import tints_of
from packetgen.colour import difference, lab
from packetgen.diagnostics import Problems
from packetgen.model import KeyLine, Pattern
from packetgen.reckon.vision import EYES, seen
from packetgen.shape_names import SHAPE_NAMES

# Chosen by eye from blurred pairs: at 0.55 they are still told apart at a glance, at 0.65 some begin
# to be taken for each other (a fir and a hanging drop), at 0.75 most.
SYMBOLS_ALIKE = 0.6


def complain_of_likeness(pattern: Pattern, counts: Mapping[str, int], problems: Problems) -> None:
    """Advice at the later of two key lines that some eyes can tell apart by neither colour nor symbol.

    `counts` holds the stitches of each mark; only marks with stitches have a symbol on the chart.
    """
    shapes = shapes_for(pattern, counts)
    in_cells = [line for line in pattern.key if counts.get(line.mark)]
    alike = [
        (one, other)
        for one, other in combinations(in_cells, 2)
        if likeness(shapes[one.mark], shapes[other.mark]) >= SYMBOLS_ALIKE
    ]
    tints = tints_of(pattern) if alike else {}  # they cost more than the symbols
    for one, other in alike:
        for eyes in EYES:
            pair = (lab(seen(tints[line.mark], eyes)) for line in (one, other))
            if difference(*pair) < LOOKS_ALIKE_TO_SOME:
                problems.add(
                    other.place,
                    "symbols-alike",
                    eyes=eyes,
                    mark=repr(one.mark),
                    colour=colour_name(pattern, one),
                    other=repr(other.mark),
                    other_colour=colour_name(pattern, other),
                    symbol=shapes[one.mark],
                    other_symbol=shapes[other.mark],
                    better=free_shape(shapes),
                )
                break


def colour_name(pattern: Pattern, line: KeyLine) -> str:
    """Of a blend both, as the model's set has them."""
    return " with ".join(colour.name for colour in line.threads[pattern.thread_sets[0].id])


def free_shape(shapes: Mapping[str, str]) -> str:
    """The free shape least like any that the chart has."""
    taken = set(shapes.values())
    free = (name for name in SHAPE_NAMES if name not in taken)
    return min(free, key=lambda name: max(likeness(name, held) for held in taken))
