"""The ways in which a chart is printed: for colour, for black ink alone, for weak eyes, for a tablet."""

from collections.abc import Mapping
from dataclasses import dataclass

from packetgen.chart.sheet import Manner


@dataclass(frozen=True)
class Edition:
    """How large things are in an edition; all in mm.

    The page is the area that its papers share; margins are those of the style sheet.
    """

    id: str
    title: str
    manner: Manner
    least_cell_mm: float
    largest_cell_mm: float
    key_text_mm: float
    key_columns: int
    page_mm: tuple[float, float] = (210.0, 279.4)
    margins_mm: tuple[float, float, float] = (12.0, 12.0, 17.0)  # above, beside, below
    number_mm: float = 2.6  # height of the type of numbers and notes round the grid
    on_paper: bool = True  # Letter and A4, or a page of its own size


# Smaller cells than 3 mm try weak eyes: from memory. Larger ones than 6.5 would make a small chart a poster.
COLOUR = Edition("colour", "in colour", Manner.TINTED, 3.0, 6.5, 3.0, 4)
EDITIONS: Mapping[str, Edition] = {
    edition.id: edition
    for edition in (
        COLOUR,
        Edition("black-and-white", "in black and white", Manner.BLACK_AND_WHITE, 3.0, 6.5, 3.0, 4),
        Edition("large-print", "in large print", Manner.TINTED, 4.5, 6.5, 4.6, 3, number_mm=3.6),
        Edition(
            "tablet",
            "for a tablet",
            Manner.TINTED,
            3.0,
            5.0,
            3.2,
            4,
            page_mm=(180.0, 240.0),
            margins_mm=(6.0, 6.0, 11.0),
            on_paper=False,
        ),
    )
}
