"""What stands in the file of a finishing piece."""

from packetgen.cautions import CAUTIONS
from packetgen.load.schema import (
    COVERAGE,
    DURATION,
    VOLUME,
    WEIGHT,
    Choice,
    Field,
    Group,
    ListOf,
    Measure,
    Number,
    Pair,
    Reference,
    Text,
    Whole,
    length_mm,
)
from packetgen.load.shape_common import ABOUT, HEX, OUTLINE, name_such_as
from packetgen.model import PAINTED_FACES

_PUT_ON_WITH = Field("put_on_with", Choice(("brush", "spray")), "How it is put on.", "brush")
_COVERS = Field(
    "covers", COVERAGE, "What a litre covers in one coat, from the tin's label.", "10 m2 per litre"
)
_TIN = Field("tin", VOLUME, "What one tin holds.", "100 ml")

_PULL = Measure("a weight", "g", WEIGHT.units, 20, 50000)

_KEEP_OUT = Group(
    "an area to keep free",
    (Field("name", Text(at_most=60), "What is there.", "the pots"), OUTLINE),
)

_SEVERAL_FACES = (
    "'both' is front, back and edges; for two of them write two entries in 'painted', as {paint: sage, coats: 2, faces: front}, "
    "in place of paint, coats and faces"
)

_ENTRIES = "'both' is front, back and edges; for two of them write two entries like this one, each with one of its faces"

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

_COATING = Group(
    "a painting",
    (
        Field("paint", Reference("a paint of this file"), "What is put on.", "soft sage"),
        Field("coats", Whole(1, 10), "Coats of it.", "2"),
        Field(
            "faces",
            Choice(PAINTED_FACES, several=_ENTRIES),
            "Where: the front, the back, the edges, or both faces with the edges.",
            "edges",
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
        Field(
            "thickness",
            length_mm(0.5, 100),
            "Of the wood, from front to back; of a part that lies flat, such as a shelf, its depth. The outline "
            "shows its edge then, and the thinner of the two is the board's thickness.",
            "6 mm",
        ),
        Field(
            "pieces",
            Whole(1, 100),
            "How many are cut. One of them is drawn: of two that both show, such as posts, each is a part of its own.",
            "1",
            required=False,
            default=1,
        ),
        Field(
            "paint",
            Reference("a paint of this file"),
            "What it is painted with.",
            "soft sage",
            required=False,
        ),
        Field("coats", Whole(1, 10), "Coats of paint.", "2", required=False),
        Field(
            "faces",
            Choice(PAINTED_FACES, several=_SEVERAL_FACES),
            "What is painted: the front, the back, the edges, or both faces with the edges. Front and back are seen in "
            "the outline; of a part that lies flat they are its edges in front and behind, and 'edges' is all the rest.",
            "both",
            required=False,
            default="both",
        ),
        Field(
            "painted",
            ListOf(_COATING, at_least=1),
            "Instead of paint, coats and faces, where it has several paints, in their order.",
            "- {paint: soft sage, coats: 2, faces: front}",
            required=False,
        ),
    ),
    one_of=(("paint", "painted"), ("coats", "painted")),
    apart=(("faces", "painted"),),
)

_OTHER_WAY = Group(
    "another way of putting it on",
    (
        _PUT_ON_WITH,
        _COVERS,
        _TIN,
        Field("dries_in", DURATION, "Where it differs.", "30 min", required=False),
    ),
)

_PAINT = Group(
    "a paint",
    (
        Field("name", Text(at_most=60), "The colour in words.", "soft sage"),
        HEX,
        _PUT_ON_WITH,
        _COVERS,
        Field("dries_in", DURATION, "Time until the next coat.", "1 h"),
        _TIN,
        Field(
            "or_with",
            _OTHER_WAY,
            "The other way of putting it on, where there is a choice.",
            "{put_on_with: spray, covers: 4 m2 per litre, tin: 150 ml}",
            required=False,
        ),
        Field(
            "cleaned_with",
            Choice(("water", "solvent")),
            "What brushes are cleaned with.",
            "water",
            required=False,
            default="water",
        ),
    ),
)

_GLUE = Group(
    "a glue",
    (
        Field("name", Text(at_most=60), "What to ask for.", "wood glue"),
        Field("cures_in", DURATION, "Until it holds, from its label.", "24 h"),
        Field("for", Text(at_most=120), "What is glued with it.", "the wooden parts"),
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
        Field(
            "width",
            length_mm(0, 100),
            "How far it stands out from the edge: corners take more of a wide trim.",
            "10 mm",
            required=False,
            default=0.0,
        ),
    ),
)

_MAGNETS = Group(
    "the magnets",
    (
        Field(
            "pairs",
            Whole(0, 50),
            "How many at least; a magnet on the wood and a washer in the stitching make a pair.",
            "4",
            required=False,
            default=4,
        ),
        Field("diameter", length_mm(1, 60), "Of one magnet.", "10 mm"),
        Field("thickness", length_mm(0.3, 30), "Of one magnet.", "2 mm"),
        Field(
            "inset",
            length_mm(0, 200),
            "From a magnet's middle to the edge of the smallest card of the series.",
            "15 mm",
        ),
        Field(
            "holds",
            _PULL,
            "What one magnet carries on bare steel, from its label; heavy pieces get more pairs by it.",
            "1 kg",
            required=False,
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
        name_such_as("The Little Potting Bench"),
        ABOUT,
        Field(
            "panel",
            _PANEL,
            "Where the stitched piece sits, in the drawing of the whole, like the at of parts.",
            '{outline: "0,0 100,0 100,80 0,80"}',
        ),
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
            "The sawn pieces, from the back to the front.",
            "- {name: backboard, outline: ...}",
        ),
        Field(
            "paints",
            ListOf(_PAINT, at_least=1),
            "Every paint that a part names.",
            "- {name: soft sage, hex: ...}",
        ),
        Field(
            "glue",
            ListOf(_GLUE),
            "What it is glued with.",
            "- {name: wood glue, cures_in: 24 h, for: the wooden parts}",
            required=False,
            default=(),
        ),
        Field(
            "trim",
            _TRIM,
            "What runs round the mounted stitching; without this line nothing does.",
            "{kind: gathered, ratio: 1.5, overlap: 20 mm}",
            required=False,
        ),
        Field(
            "magnets",
            _MAGNETS,
            "What holds the stitching to the wood; without this line no magnets do.",
            "{pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}",
            required=False,
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
