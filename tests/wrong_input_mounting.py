"""Trims and magnets that nobody could mount a design with.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import FINISH
from tests.wrong_input_case import Case

_TRIM = "trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}"
_MAGNETS = "magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}"


def magnets(inset: str, holds: str = "") -> dict[str, tuple[str, str]]:
    holds = f", holds: {holds}" if holds else ""
    return {
        FINISH: (
            _MAGNETS,
            f"magnets: {{pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: {inset}{holds}}}",
        )
    }


CASES = (
    Case(
        "a ribbon whose width is not said",
        {FINISH: (_TRIM, "trim: {kind: straight, overlap: 20 mm}")},
        "finishes/shelf/finish.yaml:24:14: advice: a straight trim whose width is not said, so its corners are not counted; add it, for example width: 10 mm",
    ),
    Case(
        "a gathered trim as long as the edge",
        {FINISH: ("ratio: 1.5", "ratio: 1")},
        "finishes/shelf/finish.yaml:24:31: advice: a gathered trim is longer than the edge, and this one is just as long; 1.5 to 2 is a usual 'ratio' (common practice, no source); a flat one is straight, a cord round",
    ),
    Case(
        "a gathered trim with next to nothing to gather",
        {FINISH: ("ratio: 1.5", "ratio: 1.1")},
        "finishes/shelf/finish.yaml:24:31: advice: a gathered trim is longer than the edge, and this one is 1.1 times as long; 1.5 to 2 is a usual 'ratio' (common practice, no source); a flat one is straight, a cord round",
    ),
    Case(
        "a gathered trim without its ratio",
        {FINISH: ("ratio: 1.5, ", "")},
        "finishes/shelf/finish.yaml:24:14: advice: a gathered trim is longer than the edge, and this one has no 'ratio'; 1.5 to 2 is a usual 'ratio' (common practice, no source); a flat one is straight, a cord round",
    ),
    Case(
        "a trim as wide as a shawl",
        {FINISH: (_TRIM, "trim: {kind: round, overlap: 20 mm, width: 2 m}")},
        "finishes/shelf/finish.yaml:24:44: 'width' is '2 m', beyond what can be right; it goes from 0 mm to 100 mm",
    ),
    Case(
        "magnets that stand over the edge of the card",
        magnets("4.5 mm"),
        "finishes/shelf/finish.yaml:25:62: a magnet 10 mm across with its middle 4.5 mm in from the edge would stand over it; let 'inset' be 5 mm or more, or take a smaller magnet",
    ),
    Case(
        "a pull without its unit",
        magnets("15 mm", "800"),
        "finishes/shelf/finish.yaml:25:76: 'holds' is '800', without a unit; write the unit, for example '800 g'",
    ),
    Case(
        "a pull measured as a length",
        magnets("15 mm", "30 mm"),
        "finishes/shelf/finish.yaml:25:79: 'mm' is not a unit for 'holds'; known here: g, kg, oz",
    ),
    Case(
        "a magnet that holds next to nothing",
        magnets("15 mm", "2 g"),
        "finishes/shelf/finish.yaml:25:76: 'holds' is '2 g', beyond what can be right; it goes from 20 g to 50000 g",
    ),
)
