"""What a series says of how its stitchers work with thread; what it leaves out is as usual."""

from packetgen.diagnostics import Problems
from packetgen.load.values import Filled
from packetgen.model import Assumptions, Ease
from packetgen.units import plain

# Less than this between two tails is no needleful to stitch with.
LEAST_LEFT_MM = 50.0


def read_assumptions(series: Filled, problems: Problems) -> Assumptions:
    """The block `reckoning` of a series file. What is wrong goes to `problems`."""
    given = series["reckoning"]
    if given is None or not given.whole:
        return Assumptions()
    needleful_mm, tail_mm = 10 * given["needleful"], 10 * given["tail"]
    left_mm = needleful_mm - 2 * tail_mm
    if left_mm < LEAST_LEFT_MM:
        problems.add(
            given.place_of("tail"),
            "needleful-short",
            tail=_cm(tail_mm),
            needleful=_cm(needleful_mm),
            left="nothing" if left_mm <= 0 else f"only {_cm(left_mm)}",
            least=_cm(LEAST_LEFT_MM),
        )
    return Assumptions(needleful_mm, tail_mm, given["travel"], _ease(given, problems))


def _ease(reckoning: Filled, problems: Problems) -> Ease:
    given, usual = reckoning["ease"], Ease()
    if given is None:
        return usual
    percents = [given[name] for name in ("careful", "usual", "generous")]
    if percents != sorted(percents):
        careful, middle, generous = (f"{plain(percent)} %" for percent in percents)
        problems.add(given.place, "ease-order", careful=careful, usual=middle, generous=generous)
    return Ease(*(percent / 100 for percent in percents))


def _cm(mm: float) -> str:
    return f"{plain(round(mm / 10, 2))} cm"
