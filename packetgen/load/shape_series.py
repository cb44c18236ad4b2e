"""What stands in the file of a series."""

from packetgen.load.schema import (
    Day,
    Field,
    Group,
    ListOf,
    Moment,
    Reference,
    ShortName,
    Text,
    WebAddress,
    Whole,
    YesNo,
)
from packetgen.load.shape_common import ABOUT, OCCASION

STRANDS = Whole(1, 12)
DESIGNER = Field(
    "designer", Reference("a designer of this series"), "Her id in series.yaml.", "thackwray"
)

_THREAD_SET = Group(
    "a thread set",
    (
        Field("name", ShortName(), "What patterns call it.", "larkmoss"),
        Field(
            "card",
            Reference("a thread card"),
            "The thread card's file name, without .yaml.",
            "larkmoss",
        ),
        Field("strands", STRANDS, "Strands in the needle for crosses.", "2"),
        Field(
            "backstitch_strands", STRANDS, "Strands for backstitch.", "1", required=False, default=1
        ),
        Field("knot_strands", STRANDS, "Strands for French knots.", "1", required=False, default=1),
        Field(
            "daisy_strands", STRANDS, "Strands for lazy daisies.", "1", required=False, default=1
        ),
    ),
)

_DESIGNER = Group(
    "a designer",
    (
        Field("id", ShortName(), "What patterns call her.", "thackwray"),
        Field("name", Text(at_most=80), "Her name.", "Oriel Thackwray"),
        ABOUT,
        Field(
            "sells",
            YesNo(),
            "Whether she sells her patterns as PDF files.",
            "true",
            required=False,
            default=True,
        ),
        Field(
            "shop", WebAddress(), "Her own shop.", "https://example.org/thackwray", required=False
        ),
    ),
)

_TO_COME = Group(
    "a pattern to come",
    (Field("title", Text(at_most=100), "Its name.", "Squash Barrow"), DESIGNER, OCCASION),
)

_NOTICE = Group(
    "a notice",
    (
        Field("date", Day(), "When it was written.", "2026-11-20"),
        Field("title", Text(at_most=100), "Its heading.", "A word on linen"),
        Field(
            "text", Text(long=True, at_most=20_000), "Its text, in Markdown.", "The linen is back."
        ),
    ),
)

SERIES = Group(
    "a series",
    (
        Field("title", Text(at_most=100), "The series' name.", "The Potting Bench Almanac"),
        Field(
            "tagline",
            Text(at_most=200),
            "One line below the title.",
            "A gardener's year in stitches.",
        ),
        Field("release", Moment(), "When its page may be shown.", "2027-01-15 09:00 Europe/London"),
        Field(
            "address",
            WebAddress(),
            "Where its site will stand; links that are shared need it in full.",
            "https://almanac.example.org/",
            required=False,
        ),
        Field(
            "finish",
            Reference("a finishing piece"),
            "The folder of its finishing piece.",
            "potting-bench",
        ),
        Field(
            "thread_sets",
            ListOf(_THREAD_SET, at_least=1),
            "The lines of thread that its patterns are charted for.",
            "- {name: larkmoss, card: larkmoss, strands: 2}",
        ),
        Field(
            "designers",
            ListOf(_DESIGNER, at_least=1),
            "Who drew the patterns.",
            "- {id: thackwray, name: Oriel Thackwray, about: ...}",
        ),
        Field(
            "order",
            ListOf(Reference("a pattern folder"), at_least=1),
            "The pattern folders, first to last.",
            "[robin-on-the-spade]",
        ),
        Field(
            "to_come",
            ListOf(_TO_COME),
            "Patterns that are announced.",
            "- {title: Squash Barrow, designer: thackwray, occasion: ...}",
            required=False,
            default=(),
        ),
        Field(
            "licence",
            Text(long=True, at_most=20_000),
            "What a buyer may do.",
            "For your own stitching.",
        ),
        Field(
            "notices",
            ListOf(_NOTICE),
            "News for readers.",
            "- {date: 2026-11-20, title: ..., text: ...}",
            required=False,
            default=(),
        ),
    ),
)
