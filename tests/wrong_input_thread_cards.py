"""Sizes, weights and lengths of thread that cannot be, and a pace that runs backwards.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import MOSS, SERIES, TINY
from tests.wrong_input_case import Case


def pace(numbers: str) -> dict[str, tuple[str, str]]:
    return {SERIES: ("finish: shelf\n", f"finish: shelf\npace: {numbers}\n")}


CASES = (
    Case(
        "the word for several skeins",
        {MOSS: ("sold_as: skein", "sold_as: skeins")},
        "threads/moss.yaml:5:10: advice: 'skeins' is printed as the word for one unit, and its plural would be 'skeinses'; "
        "write sold_as: skein",
    ),
    Case(
        "a skein in centimetres",
        {MOSS: ("length: 8 m", "length: 80 cm")},
        "threads/moss.yaml:6:9: advice: 0.8 m is little for one skein; look once more: should it be 8 m?",
    ),
    *(
        Case(
            f"a {unit} of 4 m",
            {
                MOSS: TINY[MOSS]
                .replace("sold_as: skein", f"sold_as: {unit}")
                .replace("length: 8 m", "length: 4 m")
            },
            *[
                "threads/moss.yaml:6:9: advice: 4 m is little for one spool; look once more: should it be 40 m?"
            ]
            * told,
        )
        for unit, told in (("spool", 1), ("skein", 0))
    ),
    Case(
        "lines in more strands than the crosses below them",
        {SERIES: ("card: moss, strands: 2", "card: moss, strands: 2, backstitch_strands: 4")},
        "series/garden-year/series.yaml:6:62: advice: lines in 4 strands lie over crosses in 2, and hide them; look once more: 1 is usual, and as many as the crosses have are much",
    ),
    Case(
        "a colour's number and name changed about",
        {MOSS: ("{number: E2, name: brick,", "{number: brick, name: '102',")},
        "threads/moss.yaml:9:14: the number is 'brick' and the name '102', which look changed about; write number: '102', name: 'brick'",
    ),
    Case(
        "a thread with tex and size",
        {MOSS: ("tex: 25", "tex: 25\nsize: Ne 24")},
        "threads/moss.yaml:5:1: 'tex' and 'size' both stand in a thread card; keep one of the two",
    ),
    Case(
        "a thread with neither tex nor size",
        {MOSS: ("tex: 25\n", "")},
        "threads/moss.yaml:1:1: 'tex' is missing in a thread card; add a line, for example tex: 25",
    ),
    Case(
        "a slip in the name of a size",
        {MOSS: ("tex: 25", "siz: Ne 24")},
        "threads/moss.yaml:4:1: 'siz' is not part of a thread card; did you mean 'size'?",
    ),
    Case(
        "a size without its system",
        {MOSS: ("tex: 25", "size: 12/2")},
        "threads/moss.yaml:4:7: 'size' is '12/2', which is not the size of a thread; write it like Ne 12/2, Nm 34/2, 225 denier, 280 dtex or 140 dtex x 2",
    ),
    Case(
        "a denier that may be of one ply or of the whole",
        {MOSS: ("tex: 25", "size: 120/2 denier")},
        "threads/moss.yaml:4:7: 'size' is '120/2 denier', which is not the size of a thread; write it like Ne 12/2, Nm 34/2, 225 denier, 280 dtex or 140 dtex x 2",
    ),
    Case(
        "a comma in a size",
        {MOSS: ("tex: 25", "size: Nm 3,4")},
        "threads/moss.yaml:4:7: 'Nm 3,4' has a comma in its number; write a full stop: 'Nm 3.4'",
    ),
    Case(
        "a size finer than any thread",
        {MOSS: ("tex: 25", "size: 1 denier")},
        "threads/moss.yaml:4:7: 'size' is '1 denier', beyond what can be right; it goes from 1 tex to 2000 tex",
    ),
    Case(
        "a thread with length and weight",
        {MOSS: ("length: 8 m", "length: 8 m\nweight: 1.2 g")},
        "threads/moss.yaml:7:1: 'length' and 'weight' both stand in a thread card; keep one of the two",
    ),
    Case(
        "a weight without its unit",
        {MOSS: ("length: 8 m", "weight: 10")},
        "threads/moss.yaml:6:9: 'weight' is '10', without a unit; write the unit, for example '10 g'",
    ),
    Case(
        "a weight of many miles",
        {MOSS: ("length: 8 m", "weight: 2 kg")},
        "threads/moss.yaml:6:9: 2000 g of this thread would be 13,333.33 m; it goes from 0.1 m to 5000 m: look at weight, strands and size once more",
    ),
    Case(
        "a slow hour with the most stitches",
        pace("{slow: 200, usual: 150, quick: 100}"),
        "series/garden-year/series.yaml:5:7: a pace of 200 slow, 150 usual and 100 quick stitches an hour; let slow be the smallest number and quick the largest",
    ),
    Case(
        "a pace of one number",
        pace("150"),
        "series/garden-year/series.yaml:5:7: 'pace' should be made of names with values, and is '150'; write for example pace: {slow: 100, usual: 150, quick: 200}",
    ),
    Case(
        "a pace without its quick hour",
        pace("{slow: 100, usual: 150}"),
        "series/garden-year/series.yaml:5:7: 'quick' is missing in a pace; add it within the braces, for example quick: 200",
    ),
    Case(
        "the number of the whole thread for that of a strand",
        {MOSS: ("tex: 25", "tex: 150")},
        "threads/moss.yaml:4:6: advice: 150 tex is much for one of 6 strands; write how fine one strand is; if that is the whole thread, that is 25 tex",
    ),
    Case(
        "a skein a hundred times as long as it is",
        {MOSS: ("length: 8 m", "length: 800 m")},
        "threads/moss.yaml:6:9: advice: 800 m is long for one skein; look once more: should it be 8 m?",
    ),
    Case(
        "a skein ten times as long as it is",
        {MOSS: ("length: 8 m", "length: 80 m")},
        "threads/moss.yaml:6:9: advice: 80 m is long for one skein; look once more: should it be 8 m?",
    ),
    Case(
        "a word for one skein that tells its length too",
        {MOSS: ("sold_as: skein", "sold_as: 'skein, 8 m'")},
        "threads/moss.yaml:5:10: advice: 'skein, 8 m' is printed as the word for one unit, with its plural, and says more; write sold_as: skein: length, weight and price have lines of their own",
    ),
    Case(
        "a bead without its decimal sign",
        {"beads/drop.yaml": ("size: 2.2 mm", "size: 22 mm")},
        "beads/drop.yaml:2:7: advice: 22 mm across is large for a bead that is sewn on a stitch; look once more: should it be 2.2 mm?",
    ),
    Case(
        "a colour line copied with its colour",
        {MOSS: ('hex: "#4f7942"', 'hex: "#a04030"')},
        "threads/moss.yaml:11:37: advice: '07' has the very colour of 'E2', #a04030; look once more at both, or lay this aside in series.yaml where they are the same",
    ),
    *(
        Case(
            f"a number typed twice on a card, with {behind} behind it",
            {
                MOSS: f"""{TINY[MOSS]}\
  - {{number: "08", name: rim, hex: "#102030"}}
  - {{number: "08", name: ash, hex: "#a0b0c0"}}
  - {{number: "{behind}", name: tar, hex: "#303030"}}
"""
            },
            f"threads/moss.yaml:13:14: the number '08' stands here a second time (first on line 12); {mend}",
        )
        for behind, mend in (
            ("10", "should it be '09'? Else give each colour its own"),
            ("12", "give each colour its own"),
        )
    ),
)
