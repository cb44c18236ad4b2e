"""Every kind of file that an author writes in YAML, for checking, for the reference page and for a
JSON Schema.
"""

from packetgen.load.schema import FileShape
from packetgen.load.shape_cards import BEAD_CARD, CLOTH, THREAD_CARD
from packetgen.load.shape_finish import FINISH
from packetgen.load.shape_pattern import PATTERN
from packetgen.load.shape_series import SERIES
from packetgen.load.symbols_file import SYMBOLS

FILES = (
    FileShape(
        "threads/<card>.yaml", "A line of thread: how it is sold, and its colours.", THREAD_CARD
    ),
    FileShape("cloths/<cloth>.yaml", "A cloth and the colours it comes in.", CLOTH),
    FileShape("beads/<card>.yaml", "A kind of bead and its colours.", BEAD_CARD),
    FileShape(
        "finishes/<piece>/finish.yaml", "The painted wood on which designs are shown.", FINISH
    ),
    FileShape(
        "series/<series>/series.yaml",
        "A series: designers, thread sets, patterns in order.",
        SERIES,
    ),
    FileShape(
        "series/<series>/<pattern>/pattern.yaml",
        "One pattern: its key and all that is not in the chart.",
        PATTERN,
    ),
    FileShape(
        "series/<series>/<pattern>/symbols.yaml",
        "The chart symbols that a pattern keeps when its key is edited; written by the tool.",
        SYMBOLS,
    ),
)
