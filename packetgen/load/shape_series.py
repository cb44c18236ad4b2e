"""What stands in the file of a series."""

from dataclasses import replace

from packetgen.load.schema import (
    Choice,
    Day,
    DaysBefore,
    Field,
    Group,
    ListOf,
    Measure,
    Moment,
    Needs,
    Number,
    Reference,
    ShortName,
    Text,
    WebAddress,
    Whole,
)
from packetgen.load.shape_common import ABOUT, LAID_ASIDE, OCCASION
from packetgen.load.shape_look import LOOK
from packetgen.model import BEFORE_RELEASE, NOTICE_KINDS, Assumptions, Sells
from packetgen.units import MM_PER_UNIT, plain

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

_LINK = Group(
    "a link",
    (
        Field("name", Text(at_most=80), "What the link says.", "Her garden notes"),
        Field("url", WebAddress(), "Where it leads.", "https://example.org/notes"),
    ),
)
_SELLS_MEANS = (("yes", "PDF"), ("true", "PDF"), ("no", "neither"), ("false", "neither"))

_DESIGNER = Group(
    "a designer",
    (
        Field("id", ShortName(), "What patterns call her.", "thackwray"),
        Field("name", Text(at_most=80), "Her name.", "Oriel Thackwray"),
        replace(
            ABOUT,
            doc="One sentence about her. It stands below her name, so begin with what she does.",
            example="Draws what she sees from the scullery window.",
        ),
        Field(
            "sells",
            Choice(tuple(sells.value for sells in Sells), (("pdf", "PDF"), *_SELLS_MEANS)),
            "What she sells of her patterns: files, paper, both or neither; "
            "yes is short for PDF and no for neither.",
            "PDF",
            required=False,
            default=Sells.PDF.value,
        ),
        Field(
            "shop", WebAddress(), "Her own shop.", "https://example.org/thackwray", required=False
        ),
        Field(
            "links",
            ListOf(_LINK, at_most=20),
            "Further links of hers.",
            "- {name: Her garden notes, url: https://example.org/notes}",
            required=False,
            default=(),
        ),
        Field(
            "studio",
            Text(at_most=80),
            "A studio that she shares with others.",
            "Two Tables",
            required=False,
            default="",
        ),
    ),
)

_TO_COME = Group(
    "a pattern to come",
    (Field("title", Text(at_most=100), "Its name.", "Squash Barrow"), DESIGNER, OCCASION),
)


def _length_cm(low: float, high: float) -> Measure:
    """A length in the hand, which people say in cm."""
    units = {unit: mm / 10 for unit, mm in MM_PER_UNIT.items()}
    return Measure("a length", "cm", units, low, high)


_PERCENT = Measure("a share", "%", {"%": 1}, 0, 100)
_USUAL = Assumptions()


def _ease(name: str, doc: str, share: float) -> Field:
    percent = round(100 * share, 2)
    return Field(name, _PERCENT, doc, f"{plain(percent)} %", required=False, default=percent)


_RECKONING = Group(
    "a reckoning",
    (
        Field(
            "needleful",
            _length_cm(20, 150),
            "The thread that is cut for the needle.",
            "45 cm",
            required=False,
            default=_USUAL.needleful_mm / 10,
        ),
        Field(
            "tail",
            _length_cm(1, 20),
            "What is left at either end of a needleful, to hold it.",
            "4 cm",
            required=False,
            default=_USUAL.tail_mm / 10,
        ),
        Field(
            "travel",
            Whole(1, 20),
            "How many stitches on a thread is led behind the cloth, at most.",
            "5",
            required=False,
            default=_USUAL.travel_stitches,
        ),
        Field(
            "ease",
            Group(
                "an ease",
                (
                    _ease("careful", "What a sparing hand takes.", _USUAL.ease.careful),
                    _ease("usual", "What most hands take.", _USUAL.ease.usual),
                    _ease("generous", "What is bought for.", _USUAL.ease.generous),
                ),
            ),
            "Thread beyond what the stitches measure, for thick cloth and a slack hand.",
            "{careful: 13 %, usual: 18 %, generous: 25 %}",
            required=False,
        ),
    ),
)

_PACE = Group(
    "a pace",
    (
        Field("slow", Number(1, 2000), "Stitches of a slow hour.", "100"),
        Field("usual", Number(1, 2000), "Stitches of a usual hour.", "150"),
        Field("quick", Number(1, 2000), "Stitches of a quick hour.", "200"),
    ),
)

NOTICE = Group(
    "a notice",
    (
        Field("date", Day(), "When it was written.", "2026-11-20"),
        Field("title", Text(at_most=100), "Its heading.", "A word on linen"),
        Field(
            "text",
            Text(long=True, at_most=20_000, markdown=True),
            "Its text, in Markdown.",
            "The linen is back.",
        ),
        Field(
            "kind",
            Choice(NOTICE_KINDS),
            "What it tells of. A prize draw needs opens, closes and who.",
            "open call",
            required=False,
            default=NOTICE_KINDS[0],
        ),
        Field("opens", Day(), "The first day of a call or draw.", "2027-02-01", required=False),
        Field("closes", Day(), "Its last day.", "2027-02-28", required=False),
        Field(
            "who",
            Text(at_most=200),
            "Who may enter.",
            "Anyone of eighteen or over",
            required=False,
            default="",
        ),
    ),
    # Without these nobody can enter a prize draw, or know whether she may.
    needs=(Needs("kind", "prize draw", ("opens", "closes", "who")),),
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
            "before_release",
            Choice(BEFORE_RELEASE),
            "What may be shown until then: its title alone, a teaser, or all that the site has.",
            "teaser",
            required=False,
            default="teaser",
        ),
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
            "goes_up",
            DaysBefore(60),
            "How long before its day each design is hung up.",
            "7 days",
            required=False,
            default=7,
        ),
        Field(
            "reckoning",
            _RECKONING,
            "How thread is reckoned, where it is not as usual.",
            "{needleful: 45 cm, tail: 4 cm, travel: 5}",
            required=False,
        ),
        Field(
            "pace",
            _PACE,
            "Stitches in an hour, for the working time; 100, 150 and 200 where it is left out.",
            "{slow: 100, usual: 150, quick: 200}",
            required=False,
        ),
        Field(
            "look",
            LOOK,
            "Colours and faces of its own, for site and packet.",
            '{light: {accent: "#7d3a1f"}, heading: titles.ttf}',
            required=False,
        ),
        Field(
            "licence",
            Text(long=True, at_most=20_000),
            "What a buyer may do. The first sentence stands at the foot of every page of the packet, all of it "
            "with the credits: begin with what matters most.",
            "For your own stitching.",
        ),
        Field(
            "notices",
            ListOf(NOTICE),
            "News for readers.",
            "- {date: 2026-11-20, title: ..., text: ...}",
            required=False,
            default=(),
        ),
        replace(LAID_ASIDE, example="- {advice: named-twice, because: she signs with her name}"),
    ),
)
