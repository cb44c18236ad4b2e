"""Every message that an author can be given, in one table:
code → what is wrong, what would be right.

The words are templates; whoever finds a fault fills the gaps with facts. A code is never reused for
something else, and each one is provoked by at least one case in the tests.
"""

from packetgen.faults.bringing import BRINGING
from packetgen.faults.fault import Fault, Level
from packetgen.faults.figures import FIGURES
from packetgen.faults.files import FILES
from packetgen.faults.patterns import PATTERNS
from packetgen.faults.review import REVIEW
from packetgen.faults.values import VALUES

FAULTS: dict[str, Fault] = {**FILES, **VALUES, **PATTERNS, **FIGURES, **REVIEW, **BRINGING}

__all__ = ["FAULTS", "Fault", "Level"]
