"""Whether symbols alone tell the colours of a chart apart, as they must in black and white."""

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import combinations

from packetgen.chart.assignment import shapes_for
from packetgen.chart.likeness import likeness
from packetgen.chart.vision_check import SYMBOLS_ALIKE, colour_name, free_shape
from packetgen.diagnostics import Problems
from packetgen.model import KeyLine
from packetgen.reckon.figures import Figures
from packetgen.reckon.review import Praise

# Shapes as alike as this are mostly taken for each other; chosen by eye, as `vision_check` says.
TAKEN_FOR_EACH_OTHER = 0.75


@dataclass(frozen=True)
class _Pair:
    one: KeyLine
    other: KeyLine
    likeness: float


def complain_of_symbols(figures: Figures, problems: Problems) -> None:
    """Advice at the later of two key lines whose symbols are taken for each other without their colours."""
    shapes = _shapes(figures)
    for pair in _pairs(figures, shapes):
        if pair.likeness >= TAKEN_FOR_EACH_OTHER:
            problems.add(
                pair.other.place,
                "symbols-alike-in-grey",
                mark=repr(pair.one.mark),
                other=repr(pair.other.mark),
                symbol=shapes[pair.one.mark],
                other_symbol=shapes[pair.other.mark],
                better=free_shape(shapes),
            )


def praise_of_symbols(figures: Figures) -> tuple[Praise, ...]:
    """For symbols that are settled, and for symbols that tell the colours apart without any tint."""
    praise = []
    if all(line.symbol for line in figures.pattern.key):
        words = (
            f"All {len(figures.pattern.key)} symbols are settled: no change of the key moves one."
        )
        praise.append(Praise("symbols settled", words))
    shapes = _shapes(figures)
    pairs = _pairs(figures, shapes)
    most = max(pairs, key=lambda pair: pair.likeness, default=None)
    if most and most.likeness < SYMBOLS_ALIKE:
        one, other = (colour_name(figures.pattern, line) for line in (most.one, most.other))
        words = (
            "Printed in black and white, the symbols still tell its colours apart; the most alike are "
            f"those of {one} and {other} (likeness {most.likeness:.2f} of 1)."
        )
        short = f"all symbols clear in black and white, even {one} and {other}"
        symbols = (shapes[most.one.mark], one), (shapes[most.other.mark], other)
        praise.append(Praise(short, words, symbols))
    return tuple(praise)


def _shapes(figures: Figures) -> dict[str, str]:
    return shapes_for(figures.pattern, _counts(figures))


def _counts(figures: Figures) -> Mapping[str, int]:
    return {work.line.mark: work.total_stitches for work in figures.works}


def _pairs(figures: Figures, shapes: Mapping[str, str]) -> list[_Pair]:
    """Only marks with stitches have a symbol on the chart."""
    counts = _counts(figures)
    lines = [line for line in figures.pattern.key if counts.get(line.mark)]
    return [
        _Pair(one, other, likeness(shapes[one.mark], shapes[other.mark]))
        for one, other in combinations(lines, 2)
    ]
