"""The names of the chart shapes, in the order their code points follow.

The order is a promise: a new name goes to the end, or charts saved earlier would read back as
something else. `packetgen.chart.shapes` draws them; authors may write them in a key.
"""

from collections.abc import Mapping
from types import MappingProxyType

SHAPE_NAMES: tuple[str, ...] = tuple(
    """
disc seed ring halo target dome-up dome-left dome-down dome-right ring-filled-up
ring-filled-left ring-filled-down ring-filled-right ring-slash-rising ring-slash-falling
ring-plus ring-quartered-rising ring-quartered-falling disc-plus disc-saltire disc-slot-across
disc-slot-upright disc-slash-rising disc-slash-falling pie pie-left crescent-right crescent-left
ring-gap-up ring-gap-left ring-gap-down ring-gap-right two-dots-across two-dots-upright
two-dots-rising two-dots-falling three-dots-up three-dots-down four-dots five-dots seven-dots
pin-up pin-left pin-down pin-right square square-open square-dot square-filled-up
square-filled-left square-filled-down square-filled-right square-corner-nw square-corner-sw
square-corner-se square-corner-ne chequer-rising chequer-falling window envelope nine-patch
corners square-plus tray-up tray-left tray-down tray-right angle-sw angle-se angle-ne angle-nw
steps-rising steps-falling brick-across brick-upright diamond diamond-open diamond-filled-up
diamond-filled-left diamond-filled-down diamond-filled-right diamond-slot-across
diamond-slot-upright wedge-up wedge-left wedge-down wedge-right wedge-open-up wedge-open-left
wedge-open-down wedge-open-right half-square-nw half-square-sw half-square-se half-square-ne
hourglass-upright hourglass-across two-wedges-up two-wedges-left two-wedges-down
two-wedges-right wedge-bar-up wedge-bar-left wedge-bar-down wedge-bar-right plus plus-broad
plus-open saltire saltire-broad saltire-open crossbars asterisk spark plus-dots post fork-up
fork-down tee-up tee-left tee-down tee-right bar-across bar-upright slash-rising slash-falling
two-bars-across two-bars-upright three-bars-across three-bars-upright two-slashes-rising
two-slashes-falling bar-dots-across bar-dots-upright slash-dots-rising slash-dots-falling
zigzag-across zigzag-upright wave-across wave-upright chevron-up chevron-left chevron-down
chevron-right two-chevrons-up two-chevrons-left two-chevrons-down two-chevrons-right arrow-up
arrow-left arrow-down arrow-right arrow-nw arrow-sw arrow-se arrow-ne star star-eye star-four
star-six star-three star-three-down sun burst leaf-rising leaf-falling leaf-across leaf-upright
leaf-veined heart heart-open clover drop drop-hanging drop-slant daisy three-leaves tulip acorn
mushroom pot fir sprout apple pennant pennant-left bolt crown cup snail ladder bird beehive hat
letter-a letter-e letter-h letter-j letter-k letter-m letter-n letter-r letter-y figure-2
figure-3 figure-4 figure-5 figure-7
""".split()
)

# Other words for some of them, which people may write first.
SHAPE_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "triangle": "wedge-up",
        "circle": "ring",
        "dot": "disc",
        "x": "saltire",
        "cross": "plus",
        "line": "bar-upright",
        "box": "square-open",
        "rhombus": "diamond-open",
        "moon": "crescent-right",
        "flower": "daisy",
        "tree": "fir",
        "flag": "pennant",
    }
)
