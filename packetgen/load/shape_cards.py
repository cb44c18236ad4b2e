"""What stands in the cards of threads, cloths and beads."""

from packetgen.load.schema import (
    WEIGHT,
    Choice,
    Field,
    Group,
    ListOf,
    Number,
    Text,
    Whole,
    YarnSize,
    YesNo,
    length_m,
    length_mm,
)
from packetgen.load.shape_common import (
    COLOUR_NAME,
    DYED,
    HEX,
    NUMBERED_COLOURS,
    name_such_as,
    price_of,
)
from packetgen.model import Weave

TEX = (1, 2000)  # of one strand
LENGTH_M = (0.1, 5000)  # of one unit

THREAD_CARD = Group(
    "a thread card",
    (
        name_such_as("Larkmoss Stranded"),
        Field("material", Text(at_most=60), "What the thread is spun of.", "cotton"),
        Field("strands", Whole(1, 12), "Plies that can be parted; 1 is a thread used whole.", "6"),
        Field(
            "tex",
            Number(*TEX),
            "Weight of one strand: grams in 1000 m; or give its size.",
            "25",
            required=False,
        ),
        Field(
            "size",
            YarnSize(*TEX),
            "Size of one strand as its label has it, instead of tex.",
            "Ne 50/2",
            required=False,
        ),
        Field("sold_as", Text(at_most=30), "The word for one unit: skein, spool, ball.", "skein"),
        Field(
            "length",
            length_m(*LENGTH_M),
            "Length of one unit, with its unit of length; or give its weight.",
            "8 m",
            required=False,
        ),
        Field(
            "weight",
            WEIGHT,
            "Weight of the thread in one unit, instead of its length.",
            "10 g",
            required=False,
        ),
        DYED,
        Field(
            "braid",
            YesNo(),
            "Whether it is a metallic braid: one strand of it, whatever the thread set says.",
            "true",
            required=False,
            default=False,
        ),
        price_of("one unit"),
        NUMBERED_COLOURS,
    ),
    one_of=(("tex", "size"), ("length", "weight")),
)

CLOTH = Group(
    "a cloth",
    (
        name_such_as("Brindle Linen 32"),
        Field(
            "weave",
            Choice(tuple(weave.value for weave in Weave)),
            "How the cloth is woven.",
            "linen",
        ),
        Field(
            "count",
            Number(5, 60, per_inch=True),
            "Threads to the inch; blocks to the inch for aida.",
            "32",
        ),
        Field(
            "over",
            Whole(1, 2),
            "Threads that one stitch usually covers; 1 of aida.",
            "2",
            example_for=(
                ("weave", "aida", "1"),
                ("weave", "linen", "2  # threads that a stitch covers"),
                ("weave", "evenweave", "2  # threads that a stitch covers"),
            ),
        ),
        DYED,
        price_of("a fat quarter"),
        Field(
            "colours",
            ListOf(Group("a colour", (COLOUR_NAME, HEX)), at_least=1),
            "Every colour it comes in.",
            '- {name: oatmeal, hex: "#e6dcc6"}',
        ),
    ),
)

BEAD_CARD = Group(
    "a bead card",
    (
        name_such_as("Dewdrop Glass"),
        Field("size", length_mm(0.5, 30), "Across one bead.", "2.2 mm"),
        Field("packet", Whole(1, 100_000), "Beads in one packet.", "300"),
        price_of("one packet"),
        NUMBERED_COLOURS,
    ),
)
