"""What stands in the file of a finishing piece."""

from packetgen.cautions import CAUTIONS
from packetgen.load.schema import (
    COVERAGE,
    DURATION,
    VOLUME,
    Choice,
    Field,
    Group,
    ListOf,
    Number,
    Pair,
    Reference,
    Text,
    Whole,
    length_mm,
)
from packetgen.load.shape_common import ABOUT, HEX, NAME, OUTLINE

_KEEP_OUT = Group(
    "an area to keep free",
    (Field("name", Text(at_most=60), "What is there.", "the pots"), OUTLINE),
)

_PANEL = Group(
    "a panel",
    (
        OUTLINE,
        Field(
            "keep_out",
            ListOf(_KEEP_OUT),
            "Areas that the stitching may not cover.",
            "- {name: the pots, outline: ...}",
            required=False,
            default=(),
        ),
    ),
)

_PART = Group(
    "a part",
    (
        Field("name", Text(at_most=60), "The word for this piece of wood.", "backboard"),
        OUTLINE,
        Field(
            "at",
            Pair(),
            "Where its own 0,0 stands in the drawing of the whole, in mm.",
            "0,0",
            required=False,
            default=(0.0, 0.0),
        ),
        Field("thickness", length_mm(0.5, 100), "Of the wood.", "6 mm"),
        Field("pieces", Whole(1, 100), "How many are cut.", "1", required=False, default=1),
        Field("paint", Reference("a paint of this file"), "What it is painted with.", "soft sage"),
        Field("coats", Whole(1, 10), "Coats of paint.", "2"),
        Field(
            "faces",
            Choice(("front", "both")),
            "What is painted: the front alone, or both faces and the edges.",
            "both",
            required=False,
            default="both",
        ),
    ),
)

_PAINT = Group(
    "a paint",
    (
        Field("name", Text(at_most=60), "The colour in words.", "soft sage"),
        HEX,
        Field("put_on_with", Choice(("brush", "spray")), "How it is put on.", "brush"),
        Field(
            "covers",
            COVERAGE,
            "What a litre covers in one coat, from the tin's label.",
            "10 m2 per litre",
        ),
        Field("dries_in", DURATION, "Time until the next coat.", "1 h"),
        Field("tin", VOLUME, "What one tin holds.", "100 ml"),
    ),
)

_TRIM = Group(
    "a trim",
    (
        Field(
            "kind",
            Choice(("straight", "round", "gathered")),
            "How it runs round the edge.",
            "gathered",
        ),
        Field(
            "ratio",
            Number(1, 5),
            "Length of trim for a length of edge.",
            "1.5",
            required=False,
            default=1.0,
        ),
        Field("overlap", length_mm(0, 200), "Where its two ends meet.", "20 mm"),
    ),
)

_MAGNETS = Group(
    "the magnets",
    (
        Field(
            "pairs",
            Whole(0, 50),
            "A magnet in the stitching and a washer on the wood make a pair.",
            "4",
        ),
        Field("diameter", length_mm(1, 60), "Of one magnet.", "10 mm"),
        Field("thickness", length_mm(0.3, 30), "Of one magnet.", "2 mm"),
        Field(
            "inset", length_mm(0, 200), "From a magnet's middle to the edge of the card.", "15 mm"
        ),
    ),
)

_HARDWARE = Group(
    "a piece of hardware",
    (
        Field("name", Text(at_most=60), "What to ask for.", "steel washer"),
        Field("pieces", Whole(1, 1000), "How many.", "4"),
        Field("size", Text(at_most=80), "In words.", "10 mm across"),
    ),
)

FINISH = Group(
    "a finishing piece",
    (
        NAME,
        ABOUT,
        Field("panel", _PANEL, "Where the stitched piece sits.", "{outline: ...}"),
        Field(
            "border",
            length_mm(0, 100),
            "Card that shows round the stitching, every side, at least.",
            "6 mm",
        ),
        Field(
            "fold_over", length_mm(1, 200), "Cloth that is turned to the back of the card.", "20 mm"
        ),
        Field(
            "wadding_inset", length_mm(0, 50), "What the wadding is smaller by, every side.", "1 mm"
        ),
        Field(
            "parts",
            ListOf(_PART, at_least=1),
            "The sawn pieces.",
            "- {name: backboard, outline: ...}",
        ),
        Field(
            "paints",
            ListOf(_PAINT, at_least=1),
            "Every paint that a part names.",
            "- {name: soft sage, hex: ...}",
        ),
        Field(
            "trim",
            _TRIM,
            "What runs round the mounted stitching.",
            "{kind: gathered, ratio: 1.5, overlap: 20 mm}",
        ),
        Field(
            "magnets",
            _MAGNETS,
            "What holds the stitching to the wood.",
            "{pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}",
        ),
        Field(
            "hardware",
            ListOf(_HARDWARE),
            "Everything else to buy.",
            "- {name: steel washer, pieces: 4, size: 10 mm across}",
            required=False,
            default=(),
        ),
        Field(
            "cautions",
            ListOf(Choice(tuple(CAUTIONS))),
            "Dangers that the instructions warn of.",
            "[small magnets, dust]",
            required=False,
            default=(),
        ),
    ),
)
