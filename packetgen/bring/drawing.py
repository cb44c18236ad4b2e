"""What was read from an author's file, before any thread is chosen for it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np

from packetgen.model import Stitch

Cells = np.ndarray  # height × width of numbers; 0 is bare cloth


@dataclass(frozen=True)
class Wish:
    """What the file itself says of one of its colours; '' where it says nothing."""

    mark: str = ""
    number: str = ""  # of the thread card
    stitch: Stitch = Stitch.FULL
    coloured: bool = True  # whether the colour is the file's own, and not only that of the number
    code: str = ""  # as it stands in a table or grid


_NOTHING = Wish()


@dataclass(frozen=True, eq=False)
class Drawing:
    """`cells[y, x]` is 0 for bare cloth, or n for the n-th of `colours`, counted from 1."""

    cells: Cells
    colours: np.ndarray  # n × 3: red, green, blue of sRGB, 0 to 255
    wishes: Mapping[int, Wish] = field(default_factory=dict)  # by the number of the colour
    remarks: str = ""  # the chart's own first lines, where the file has kept them
    photograph: bool = False
    soft: bool = False  # whether its colours were read from soft edges or noise, and stray a little
    own: bool = False  # whether no shade of a soft edge is among its colours
    bare: tuple[str, ...] = ()  # colours of the file that became bare cloth
    nearly_bare: int = 0  # squares of it that are stitched, and may be bare cloth
    told: tuple[str, ...] = ()  # what had to be decided while it was read

    @property
    def width(self) -> int:
        return int(self.cells.shape[1])

    @property
    def height(self) -> int:
        return int(self.cells.shape[0])

    def wish(self, number: int) -> Wish:
        """What the file says of the colour of that number."""
        return self.wishes.get(number, _NOTHING)

    def counts(self) -> np.ndarray:
        """How many stitches each colour has; the first is bare cloth."""
        return np.bincount(self.cells.ravel(), minlength=len(self.colours) + 1)


def hex_of(colour: np.ndarray) -> str:
    """(107, 80, 58) → '#6b503a'."""
    return "#" + "".join(f"{int(channel):02x}" for channel in colour[:3])
