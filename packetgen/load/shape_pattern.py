"""What stands in the file of a pattern."""

from packetgen.load.schema import (
    Cell,
    Choice,
    Day,
    Field,
    Group,
    Hex,
    ListOf,
    MapOf,
    Moment,
    Points,
    Reference,
    Text,
    TextOr,
    WebAddress,
    Whole,
)
from packetgen.load.shape_common import ABOUT, LAID_ASIDE, OCCASION
from packetgen.load.shape_series import DESIGNER, STRANDS
from packetgen.model import EDITION_NAMES, GENERIC_FINISHES, GIVEN_AWAY, Stitch

_THREAD = Group(
    "a thread of another card",
    (
        Field(
            "card", Reference("a thread card"), "The card's file name, without .yaml.", "glimmer"
        ),
        Field("number", Text(at_most=20), "The colour's number.", "G3"),
    ),
)

# What lies on a chart beside its stitches, as pattern.yaml calls it.
ON_THE_CHART = ("backstitch", "long_stitch", "lazy_daisies", "french_knots", "beads", "close_ups")

KEY_LINE = Group(
    "a key line",
    (
        Field(
            "stitch",
            Choice(tuple(stitch.value for stitch in Stitch)),
            "How the mark is worked.",
            "half",
            required=False,
            default=Stitch.FULL.value,
        ),
        Field(
            "strands",
            MapOf(STRANDS, "a number for each thread set", "1"),
            "Strands in the needle, where they differ from the set's.",
            "{larkmoss: 1}",
            required=False,
        ),
        Field(
            "symbol",
            Reference("a chart shape"),
            "The shape that shows the mark on the printed chart; chosen by itself when left out. The guide's page on "
            "charts shows all of them.",
            "leaf-veined",
            required=False,
        ),
    ),
    others=Field(
        "<thread set>",
        ListOf(TextOr(Text(at_most=20), _THREAD), at_least=1, or_one=True),
        "The colour's number in that thread set, or two numbers for a blend in one needle; "
        "a thread of another card is {card: glimmer, number: G3}.",
        "E2",
    ),
)

_CLOTH_CHOICE = Group(
    "a cloth choice",
    (
        Field(
            "cloth",
            Reference("a cloth"),
            "The cloth's file name, without .yaml.",
            "brindle-linen-32",
        ),
        Field("colour", Reference("a colour of that cloth"), "Its colour.", "oatmeal"),
        Field(
            "over", Whole(1, 2), "Threads a stitch covers, where not as usual.", "2", required=False
        ),
    ),
)

_MARK = Field("colour", Reference("a mark of the key"), "The mark of a key line.", "k")
_LINE = Group(
    "a line",
    (_MARK, Field("path", Points(), "The points it runs through.", '"12,30 15,30 15,34.5"')),
)
_DAISY = Group(
    "a lazy daisy",
    (_MARK, Field("path", Points(), "The base of its loop and its tip.", '"12,30 14,31"')),
)
_KNOTS = Group(
    "an entry of knots", (_MARK, Field("at", Points(), "Where they sit.", '"12.5,30.5 14,31"'))
)
_BEADS = Group(
    "an entry of beads",
    (
        Field(
            "card", Reference("a bead card"), "The bead card's file name, without .yaml.", "dewdrop"
        ),
        Field("number", Reference("a colour of that card"), "The bead's number.", '"07"'),
        Field("at", Points(), "Where they sit.", '"22.5,40.5"'),
    ),
)
_CLOSE_UP = Group(
    "a close-up",
    (
        Field("at", Cell(), "The stitch at its top left: column,row.", "12,30"),
        Field(
            "rows", Text(long=True, at_most=20_000), "Two characters by two for each stitch.", "|"
        ),
    ),
)
_CREDITS = Group(
    "the credits",
    (
        Field(
            "model_stitcher",
            Text(at_most=80),
            "Who stitched the model.",
            "Maud Fennimore",
            required=False,
            default="",
        ),
        Field(
            "finisher",
            Text(at_most=80),
            "Who finished it.",
            "Maud Fennimore",
            required=False,
            default="",
        ),
        Field(
            "dyer",
            Text(at_most=80),
            "Who dyed the cloth or the thread, where that was done by hand.",
            "Maud Fennimore",
            required=False,
            default="",
        ),
        Field(
            "photographer",
            Text(at_most=80),
            "Who took the photograph, which lies beside pattern.yaml; without one nobody reads this name.",
            "Maud Fennimore",
            required=False,
            default="",
        ),
    ),
)
_COUNTER = Group(
    "a counter",
    (
        Field("name", Text(at_most=100), "What the link says.", "Thackwray's own counter"),
        Field("url", WebAddress(), "Where the link leads.", "https://example.org/counter"),
    ),
)
_REVISION = Group(
    "a revision",
    (
        Field("date", Day(), "When it was issued.", "2026-11-25"),
        Field("note", Text(at_most=400), "What changed.", "First issue."),
    ),
)


def _optional_list(name: str, entry: Group, doc: str, example: str) -> Field:
    return Field(name, ListOf(entry), doc, example, required=False, default=())


PATTERN = Group(
    "a pattern",
    (
        Field("title", Text(at_most=100), "The design's name.", "Robin on the Spade"),
        DESIGNER,
        ABOUT,
        OCCASION,
        Field(
            "cloths",
            ListOf(_CLOTH_CHOICE, at_least=1),
            "Cloths it can be worked on; the first is the model's.",
            "- {cloth: brindle-linen-32, colour: oatmeal}",
        ),
        Field(
            "thread_sets",
            ListOf(Reference("a thread set of the series"), at_least=1),
            "Thread sets it is charted for; the first is the model's.",
            "[larkmoss]",
        ),
        Field(
            "matched",
            MapOf(
                Reference("a thread set of this pattern"), "thread sets of this pattern", "larkmoss"
            ),
            "Thread sets that the tool matches from another's colours, where a key line gives none.",
            "{tansywick: larkmoss}",
            required=False,
            default=(),
        ),
        Field(
            "editions",
            ListOf(Choice(EDITION_NAMES)),
            "Editions of the chart beside the packet, each a document of its own.",
            "[black-and-white, large-print]",
            required=False,
            default=(),
        ),
        Field(
            "also_finished_as",
            ListOf(Choice(GENERIC_FINISHES)),
            "Finishes beside the series' own piece that the packet gives cuts and steps for.",
            "[framed, hoop]",
            required=False,
            default=(),
        ),
        Field(
            "key",
            MapOf(KEY_LINE, "key lines", "{larkmoss: E2}"),
            "One line for each mark of the chart, and of lines and knots in further colours: a sign that can be seen, but not '.' or '#'.",
            "{r: {larkmoss: E2}}",
        ),
        _optional_list(
            "backstitch", _LINE, "Lines of backstitch.", '- {colour: k, path: "12,30 15,30"}'
        ),
        _optional_list(
            "long_stitch", _LINE, "Single long stitches.", '- {colour: k, path: "12,30 20,44"}'
        ),
        _optional_list(
            "lazy_daisies", _DAISY, "Lazy daisies.", '- {colour: k, path: "12,30 14,31"}'
        ),
        _optional_list("french_knots", _KNOTS, "French knots.", '- {colour: y, at: "12.5,30.5"}'),
        _optional_list(
            "beads", _BEADS, "Beads sewn on.", '- {card: dewdrop, number: "07", at: "22.5,40.5"}'
        ),
        _optional_list(
            "close_ups", _CLOSE_UP, "Windows with fractional stitches.", "- {at: 12,30, rows: ...}"
        ),
        Field(
            "trim_hex",
            Hex(),
            "The colour of the trim round it in pictures that are drawn; of its strongest colour when left out.",
            '"#7d9b76"',
            required=False,
            default="",
        ),
        Field(
            "photo_alt",
            Text(at_most=400),
            "What the picture shows, for someone who does not see it; "
            "made from 'about' when left out.",
            "A robin on a spade handle, hung on a sage green bench.",
            required=False,
            default="",
        ),
        Field("credits", _CREDITS, "Thanks.", "{model_stitcher: Maud Fennimore}", required=False),
        _optional_list(
            "sold_at",
            _COUNTER,
            "Where it can be bought.",
            "- {name: ..., url: https://example.org/counter}",
        ),
        Field(
            "given_away",
            ListOf(Choice(GIVEN_AWAY)),
            "For a pattern that costs nothing: what of it anybody may have from its page.",
            "[chart, packet]",
            required=False,
            default=(),
        ),
        Field(
            "release",
            Moment(),
            "When its page may be shown, where that is not with the series.",
            "2027-03-01 09:00 Europe/London",
            required=False,
        ),
        Field(
            "revisions",
            ListOf(_REVISION, at_least=1),
            "Its issues, the oldest first.",
            "- {date: 2026-11-25, note: First issue.}",
        ),
        Field(
            "chart",
            Text(at_most=80),
            "The chart's file, where there are several.",
            "chart.txt",
            required=False,
        ),
        LAID_ASIDE,
    ),
)
