"""Reckonings of thread that nobody could stitch by.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import SERIES
from tests.wrong_input_case import Case


def reckoning(block: str) -> dict[str, tuple[str, str]]:
    """The tiny series with this block on its fourth line."""
    return {SERIES: ("finish: shelf", f"reckoning: {block}\nfinish: shelf")}


CASES = (
    Case(
        "a needleful without its unit",
        reckoning("{needleful: 45}"),
        "series/garden-year/series.yaml:4:24: 'needleful' is '45', without a unit; write the unit, for example '45 cm'",
    ),
    Case(
        "a needleful as long as a room",
        reckoning("{needleful: 4 m}"),
        "series/garden-year/series.yaml:4:24: 'needleful' is '4 m', beyond what can be right; it goes from 20 cm to 150 cm",
    ),
    Case(
        "tails that use the needleful up",
        reckoning("{needleful: 20 cm, tail: 10 cm}"),
        "series/garden-year/series.yaml:4:37: two tails of 10 cm leave nothing of a needleful of 20 cm; let 5 cm or more be left: shorten 'tail' or lengthen 'needleful'",
    ),
    Case(
        "a needleful with hardly a stitch between its tails",
        reckoning("{needleful: 12 in, tail: 13 cm}"),
        "series/garden-year/series.yaml:4:37: two tails of 13 cm leave only 4.48 cm of a needleful of 30.48 cm; let 5 cm or more be left: shorten 'tail' or lengthen 'needleful'",
    ),
    Case(
        "a travel of no stitch",
        reckoning("{travel: 0}"),
        "series/garden-year/series.yaml:4:21: 'travel' is '0', beyond what can be right; it goes from 1 to 20",
    ),
    Case(
        "an ease without its sign",
        reckoning("{ease: {careful: 13}}"),
        "series/garden-year/series.yaml:4:29: 'careful' is '13', without a unit; write the unit, for example '13 %'",
    ),
    Case(
        "a careful hand that takes more than a generous one",
        reckoning("{ease: {careful: 30 %, usual: 18 %, generous: 12.5 %}}"),
        "series/garden-year/series.yaml:4:19: an ease of 30 % careful, 18 % usual and 12.5 % generous; let careful be the least and generous the most",
    ),
    Case(
        "a careful hand that takes more than is usual unsaid",
        reckoning("{ease: {careful: 20 %}}"),
        "series/garden-year/series.yaml:4:19: an ease of 20 % careful, 18 % usual and 25 % generous; let careful be the least and generous the most",
    ),
    Case(
        "an ease that nobody knows",
        reckoning("{ease: {carefull: 13 %}}"),
        "series/garden-year/series.yaml:4:20: 'carefull' is not part of an ease; did you mean 'careful'?",
    ),
)
