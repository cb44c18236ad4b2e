"""Cause and cure of every message, by its code."""

from packetgen.faults.why import Why
from packetgen.faults.why_bringing import WHY_BRINGING
from packetgen.faults.why_figures import WHY_FIGURES
from packetgen.faults.why_files import WHY_FILES
from packetgen.faults.why_patterns import WHY_PATTERNS
from packetgen.faults.why_review import WHY_REVIEW
from packetgen.faults.why_values import WHY_VALUES

WHYS: dict[str, Why] = {
    **WHY_FILES,
    **WHY_VALUES,
    **WHY_PATTERNS,
    **WHY_FIGURES,
    **WHY_REVIEW,
    **WHY_BRINGING,
}
