"""Parts that cannot be sawn and paints that contradict themselves.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import FINISH, PATTERN, TINY, cut
from tests.wrong_input_case import Case

_PANEL = "outline: 0,0 100,0 100,100 0,100"
_PAINTED = "    paint: sage\n    coats: 2\n    faces: both\n"


def panel(path: str) -> dict[str, tuple[str, str]]:
    return {FINISH: (_PANEL, f"outline: {path}")}


def painted(lines: str) -> dict[str, tuple[str, str]]:
    return {FINISH: (_PAINTED, lines)}


def rail(outline: str, at: str = "") -> str:
    at = f"    at: {at}\n" if at else ""
    return f"  - name: rail\n    outline: {outline}\n{at}    thickness: 6 mm\n{_PAINTED}"


def also(outline: str, at: str = "") -> dict[str, tuple[str, str]]:
    """A second part before the back."""
    return {FINISH: ("paints:\n", f"{rail(outline, at)}paints:\n")}


def behind(*parts: str) -> dict[str, tuple[str, str]]:
    """Parts that are listed before the back."""
    return {FINISH: ("parts:\n", "parts:\n" + "".join(parts))}


_PLACELESS = (
    TINY[FINISH]
    .replace("    at: 0,0\n", "")
    .replace("parts:\n", f"parts:\n{rail('0,0 120,0 120,5 0,5', '0,0')}")
    .replace(_PANEL, "outline: 5,5 125,5 125,115 5,115")
)

_SILL = (
    TINY[FINISH]
    .replace(_PANEL, "outline: 0,0 100,0 100,60 0,60")
    .replace("paints:\n", f"{rail('0,0 120,0 120,10 0,10', '70,0')}paints:\n")
)
_GABLED = (
    TINY[FINISH]
    .replace(
        "outline: 0,0 120,0 120,120 0,120\n    at: 0,0",
        "outline: 0,40 60,0 120,40 120,160 0,160\n    at: 0,30",
    )
    .replace(
        "paints:\n",
        f"{rail('0,40 60,0 120,40 120,60 60,20 0,60', '0,0').replace('rail', 'roof')}paints:\n",
    )
    .replace(_PANEL, "outline: 10,20 110,20 110,120 10,120")
)


# A rail in another paint than the back.
_RAIL_IN_CRESS = TINY[FINISH].replace(
    "paints:\n",
    rail("0,0 120,0 120,10 0,10", "0,120").replace("paint: sage", "paint: cress")
    + 'paints:\n  - {name: cress, hex: "#d8c48a", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n',
)

CASES = (
    Case(
        "no parts at all, and steps that speak of them",
        {
            FINISH: cut(FINISH, "parts:", "paints:", "parts: []\n")
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 5 mm}\n",
            "finishes/shelf/steps.md": "1. Drive the two screws through the back, and give it two coats of sage.\n",
        },
        "finishes/shelf/finish.yaml:8:8: 'parts' has no entries; write at least one, for example parts: [{name: backboard, outline: ...}]",
    ),
    Case(
        "a corner of the panel with two figures exchanged",
        {FINISH: (_PANEL, "outline: 0,0 100,0 100,108 0,180")},
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, 60 mm below; keep it within the parts, which stand from 0,0 to 120,120, or write 0,108 for 0,180: it is a rectangle then",
    ),
    Case(
        "a panel whose fourth corner was forgotten",
        panel("0,0 100,0 100,100"),
        "finishes/shelf/finish.yaml:4:12: advice: the panel has only three of a rectangle's corners; add the fourth, 0,100",
    ),
    Case(
        "a corner of the panel that slants it",
        panel("0,0 100,0 100,100 0,80"),
        "finishes/shelf/finish.yaml:4:12: advice: the panel would be a rectangle but for its corner 0,80; write 0,100 for it",
    ),
    Case(
        "a corner of the panel in whose figures a part would lie over it",
        {
            FINISH: TINY[FINISH]
            .replace("0,0 100,0 100,100 0,100", "10,0 110,0 110,117 10,100")
            .replace(
                "paints:\n",
                '  - {name: rail, outline: "0,0 120,0 120,16 0,16", at: "0,104", thickness: 12 mm, paint: sage, coats: 2}\n'
                + "paints:\n",
            )
        },
        "finishes/shelf/finish.yaml:4:12: advice: the panel would be a rectangle but for its corner 110,117; write 110,100 for it",
    ),
    Case(
        "the three screws of which there are two",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Drive in the three screws from below.\n",
        },
        "finishes/shelf/steps.md:1:17: advice: the step says 'three screws', and of 'wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "more screws in the steps than are to buy",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Saw the wood.\n2. Drill for 16 mm screws, and put in the four long screws.\n",
        },
        "finishes/shelf/steps.md:2:43: advice: the step says 'four long screws', and of 'wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    *(
        Case(
            f"what nobody is told to buy: {words}",
            {"finishes/shelf/steps.md": f"1. Saw the wood.\n2. Fix {words} at the back.\n"},
            *[
                f"finishes/shelf/steps.md:2:8: advice: the step says '{words}', and nobody is told to buy any; add it to 'hardware' in finish.yaml, as {{name: {words.split(' ', 1)[1]}, pieces: 1, size: …}}"
            ]
            * told,
        )
        for words, told in (("the picture ring", 1), ("a hanger", 1), ("the ring of cork", 0))
    ),
    *(
        Case(
            f"a thing to buy that was exchanged for a {now}, and the step not: {words}",
            {
                FINISH: TINY[FINISH]
                + f"hardware:\n  - {{name: {now}, pieces: {1 + ('two' in words)}, size: 20 mm}}\n",
                "finishes/shelf/steps.md": f"1. Saw the wood.\n2. {words} into the back.\n",
            },
            *lines,
        )
        for words, now, lines in (
            (
                "Screw the two cup hooks",
                "brass tag",
                (
                    "finishes/shelf/steps.md:2:4: advice: the step says 'Screw the two cup hooks', and nobody is told to buy any; did you mean 'two brass tags'? Else add it to 'hardware' in finish.yaml, as {name: cup hook, pieces: 2, size: …}",
                ),
            ),
            (
                "Press the plate hanger",
                "saw-tooth hanger",
                (
                    "finishes/shelf/steps.md:2:14: advice: the step says 'plate hanger', and nobody is told to buy any; did you mean 'saw-tooth hanger'? Else add it to 'hardware' in finish.yaml, as {name: plate hanger, pieces: 1, size: …}",
                ),
            ),
            (
                "Turn the two cup hooks",
                "turned tag",
                (
                    "finishes/shelf/steps.md:2:4: advice: the step says 'Turn the two cup hooks', and nobody is told to buy any; did you mean 'two turned tags'? Else add it to 'hardware' in finish.yaml, as {name: cup hook, pieces: 2, size: …}",
                ),
            ),
            (
                "Screw the two cup hooks",
                "shoulder hook",
                (
                    "finishes/shelf/steps.md:2:18: advice: the step says 'cup hooks', and nobody is told to buy any; did you mean 'shoulder hooks'? Else add it to 'hardware' in finish.yaml, as {name: cup hook, pieces: 2, size: …}",
                ),
            ),
            ("Screw the two brass hooks", "brass cup hook", ()),
            (
                "Let the hanging plate",
                "screw for the hanging plate",
                (
                    "finishes/shelf/steps.md:2:8: advice: the step says 'the hanging plate', and nobody is told to buy any; add it to 'hardware' in finish.yaml, as {name: hanging plate, pieces: 1, size: …}",
                ),
            ),
            ("Let the hanging plate", "brass hanging plate", ()),
            (
                "Press the 20 mm plate hanger in place",
                "keyhole plate",
                (
                    "finishes/shelf/steps.md:2:10: advice: the step says 'the 20 mm plate hanger', and nobody is told to buy any; add it to 'hardware' in finish.yaml, as {name: plate hanger, pieces: 1, size: …}",
                ),
            ),
            *(
                (
                    "Screw the two picture rings",
                    name,
                    (
                        f"finishes/shelf/steps.md:2:10: advice: the step says 'the two picture rings', and nobody is told to buy any; did you mean '{meant}'? Else add it to 'hardware' in finish.yaml, as {{name: picture ring, pieces: 2, size: …}}",
                    ),
                )
                for name, meant in (
                    ("saw-tooth hanger", "two saw-tooth hangers"),
                    ("picture hook", "two picture hooks"),
                )
            ),
            ("Screw the two picture rings", "picture ring", ()),
            ("Screw the two hooks", "cup hook", ()),
            (
                "Screw two of the four cup hooks into the back on each side",
                "back peg",
                (
                    "finishes/shelf/steps.md:2:4: advice: the step says 'Screw two of the four cup hooks', and nobody is told to buy any; did you mean '2 back pegs'? Else add it to 'hardware' in finish.yaml, as {name: cup hook, pieces: 4, size: …}",
                ),
            ),
            ("Press the hanger", "plate hanger", ()),
        )
    ),
    *(
        Case(
            f"screws in two steps that were exchanged for pegs: {first} and {second}",
            {
                FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: oak dowel, pieces: 4, size: 6 × 30 mm}}\n",
                "finishes/shelf/steps.md": f"1. Saw the wood.\n2. Put in {first}.\n3. Put in {second}.\n",
            },
            *[f"finishes/shelf/steps.md:{line}"] * bool(line),
        )
        for first, second, line in (
            (
                "two screws",
                "the two other screws",
                "2:11: advice: the step says 'two screws' (and line 3 'two other screws'), and nobody is told to buy any; did you mean 'two oak dowels'? Else add it to 'hardware' in finish.yaml, as {name: screw, pieces: 4, size: …}",
            ),
            (
                "two dowels",
                "the two other screws",
                "3:15: advice: the step says 'two other screws', and nobody is told to buy any; did you mean 'two other oak dowels'? Else add it to 'hardware' in finish.yaml, as {name: screw, pieces: 2, size: …}",
            ),
            (
                "4 dowels",
                "the two other dowels",
                "3:15: advice: the step speaks of 'two other dowels' more, which makes 6, and of 'oak dowel' there are 4 to buy; mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml",
            ),
            ("two dowels", "the two other dowels", ""),
            ("two dowels", "two more from below", ""),
            ("two dowels into each post", "the hands in water", ""),
            (
                "two dowels",
                "the hands in water",
                "2:11: advice: the steps tell of 'two dowels' alone, and of 'oak dowel' there are 4 to buy; mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for",
            ),
        )
    ),
    Case(
        "a cord to hang by that nobody is told to buy",
        {"finishes/shelf/steps.md": "1. Saw the wood.\n2. Hang it by a cord through both.\n"},
        "finishes/shelf/steps.md:2:4: advice: the step says 'Hang it by a cord', and nobody is told to buy any; add it to 'hardware' in finish.yaml, as {name: cord, pieces: 1, size: …}",
    ),
    Case(
        "a mounting that forgets the trim",
        {
            "finishes/shelf/steps.md": "1. Saw the wood.\n2. Stick the wadding on, lace the cloth, and cover the back with the backing.\n"
        },
        "finishes/shelf/steps.md:2:14: advice: the steps tell of mounting, and none sews on the trim that finish.yaml has and everybody is told to buy; tell it there, or take 'trim' out of finish.yaml",
    ),
    Case(
        "a cord that is sewn round, and the piece lost its trim",
        {
            FINISH: TINY[FINISH].replace(
                "trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}\n", ""
            ),
            "finishes/shelf/steps.md": "1. Saw the wood.\n2. Pin the cord round the edge.\n",
        },
        "finishes/shelf/steps.md:2:12: advice: here stands 'cord', and this piece has no trim; take that out, or add a line to finish.yaml, for example trim: {kind: round, overlap: 20 mm, width: 3 mm}",
    ),
    Case(
        "a cord that is sewn round, where the trim is gathered",
        {"finishes/shelf/steps.md": "1. Saw the wood.\n2. Pin the cord round the edge.\n"},
        "finishes/shelf/steps.md:2:12: advice: the step says 'cord', and the 'kind' of the trim in finish.yaml is 'gathered'; mend one of the two",
    ),
    *(
        Case(
            f"screws of more than there are: {words}",
            {
                FINISH: TINY[FINISH]
                + "hardware:\n  - {name: wood screw, pieces: 4, size: 3 × 16 mm}\n",
                "finishes/shelf/steps.md": f"1. Saw the wood.\n2. Fix it with {words}.\n",
            },
            *[
                f"finishes/shelf/steps.md:2:16: advice: the step says '{words}', and of 'wood screw' there are 4 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml"
            ]
            * told,
        )
        for words, told in (
            ("two of the six screws", 1),
            ("2 of the 6 screws", 1),
            ("two of the four screws", 0),
        )
    ),
    *(
        Case(
            f"three brass cup hooks in a step, of {pieces} called {name}",
            {
                FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: {name}, pieces: {pieces}, size: 20 mm}}\n",
                "finishes/shelf/steps.md": "1. Saw the back.\n2. Turn the three brass cup hooks into its edge.\n",
            },
            *[f"finishes/shelf/steps.md:2:{told}"] * bool(told),
        )
        for name, pieces, told in (
            ("brass cup hook", 3, ""),
            (
                "brass cup hook",
                2,
                "13: advice: the step says 'three brass cup hooks', and of 'brass cup hook' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
            ),
            (
                "iron peg hook",
                3,
                "25: advice: the step says 'cup hooks', and nobody is told to buy any; did you mean 'iron peg hooks'? Else add it to 'hardware' in finish.yaml, as {name: cup hook, pieces: 1, size: …}",
            ),
        )
    ),
    Case(
        "screw eyes beside fewer wood screws",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 16 mm}\n  - {name: screw eye, pieces: 3, size: 10 mm}\n",
            "finishes/shelf/steps.md": "1. Put in the two wood screws.\n2. Turn the three screw eyes into the edge.\n",
        },
    ),
    *(
        Case(
            f"pegs for the screws that a step counts: {words}",
            {
                FINISH: TINY[FINISH]
                + "hardware:\n  - {name: oak peg, pieces: 4, size: 6 × 16 mm}\n",
                "finishes/shelf/steps.md": f"1. Saw the back.\n2. Put in {words}.\n",
            },
            f"finishes/shelf/steps.md:2:11: advice: the step says '{words}', and nobody is told to buy any; did you mean '{meant}'? Else add it to 'hardware' in finish.yaml, as {{name: wood screw, pieces: {pieces}, size: …}}",
        )
        for words, meant, pieces in (
            ("two of the four wood screws", "two of the four oak pegs", 4),
            ("four wood screws", "four oak pegs", 4),
            ("two wood screws", "4 oak pegs", 2),
        )
    ),
    *(
        Case(
            f"screws through a part, and {words} of them into the next, of five",
            {
                FINISH: TINY[FINISH]
                + "hardware:\n  - {name: wood screw, pieces: 5, size: 3 × 16 mm}\n",
                "finishes/shelf/steps.md": f"1. Drive {words} of the 16 mm screws through it from above.\n2. Set the foot under it, with three of the screws from below.\n",
            },
            *[
                "finishes/shelf/steps.md:2:32: advice: the step speaks of 'three of the screws' more, which makes 6, and of 'wood screw' there are 5 to buy; mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml"
            ]
            * told,
        )
        for words, told in (("two", 0), ("three", 1))
    ),
    Case(
        "six screws, four into each of two posts",
        {
            FINISH: TINY[FINISH].replace(
                "paints:\n",
                rail("0,0 10,0 10,120 0,120", "-10,0").replace("rail", "left post")
                + rail("0,0 10,0 10,120 0,120", "120,0").replace("rail", "right post")
                + "paints:\n",
            )
            + "hardware:\n  - {name: wood screw, pieces: 6, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Saw the back and the two posts.\n2. Put in the six screws, 3 × 16 mm, from behind, four into each post.\n",
        },
        "finishes/shelf/steps.md:2:15: advice: the step says 'four into each post, 8 in all', and of 'wood screw' there are 6 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    *(
        Case(
            f"two screws from above and {words} from below, of {number}",
            {
                FINISH: TINY[FINISH]
                + f"hardware:\n  - {{name: wood screw, pieces: {number}, size: 3 × 16 mm}}\n",
                "finishes/shelf/steps.md": f"1. Saw the wood.\n2. Put in two screws from above. Then put in {words} from below.\n",
            },
            *[
                "finishes/shelf/steps.md:2:46: advice: the step speaks of 'two screws' more, which makes 4, and of 'wood screw' there are 2 to buy; mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml"
            ]
            * told,
        )
        for words, number, told in (("two screws", 2, 1), ("two screws", 4, 0))
    ),
    Case(
        "a part that the steps still call by its old name",
        also("0,120 120,120 120,140 0,140", "0,0")
        | {"finishes/shelf/steps.md": "1. Saw the back and the peg board.\n"},
        "finishes/shelf/finish.yaml:17:11: advice: no step in steps.md speaks of the part 'rail', and of each other part one does; tell there what becomes of it, or call it there by this name",
    ),
    Case(
        "a panel measured from the corner of a board below an arch",
        {
            FINISH: TINY[FINISH]
            .replace(
                "outline: 0,0 120,0 120,120 0,120\n    at: 0,0",
                "outline: 0,0 120,0 120,120 0,120\n    at: 0,40",
            )
            .replace(
                "paints:\n",
                f"{rail('0,40 0,0 120,0 120,40 110,40 110,10 10,10 10,40', '0,0').replace('rail', 'arch')}paints:\n",
            )
            .replace(_PANEL, "outline: 10,20 110,20 110,110 10,110")
        },
        "finishes/shelf/finish.yaml:4:12: advice: below 22 % of the panel there is no wood; write 10,60 110,60 110,150 10,150 if it was measured from the corner of 'back': corners are those in the drawing of the whole; or at: 0,5 for 'back'",
    ),
    Case(
        "a panel measured from the corner of a board that a rail lies above",
        {
            FINISH: TINY[FINISH]
            .replace("outline: 0,0 100,0 100,100 0,100", "outline: 10,6 110,6 110,106 10,106")
            .replace("    at: 0,0\n", "    at: 0,30\n", 1)
            .replace(
                "    faces: both\n",
                "    faces: both\n  - name: rail\n    outline: 0,0 160,0 160,25 0,25\n    at: -20,5\n    thickness: 6 mm\n    pieces: 1\n    paint: sage\n    coats: 2\n    faces: both\n",
                1,
            )
        },
        "finishes/shelf/finish.yaml:4:12: advice: the panel lies on 'back' with a part of it only, and on 'rail'; write 10,36 110,36 110,136 10,136 if it was measured from the corner of 'back': corners are those in the drawing of the whole",
    ),
    Case(
        "a panel measured from the corner of a board that stands elsewhere",
        {
            FINISH: TINY[FINISH]
            .replace(
                "outline: 0,0 120,0 120,120 0,120\n    at: 0,0",
                "outline: 0,0 140,0 140,140 0,140\n    at: 20,0",
            )
            .replace(_PANEL, "outline: 20,20 120,20 120,120 20,120")
        },
        "finishes/shelf/finish.yaml:4:12: advice: the panel lies 20 mm to the left of the middle of 'back'; write 40,20 140,20 140,120 40,120 if it was measured from that part's corner: corners are those in the drawing of the whole",
    ),
    Case(
        "an outline that comes back on itself",
        panel("0,0 100,0 100,100 50,0 0,100"),
        "finishes/shelf/finish.yaml:4:12: the outline meets itself near 50.0,0.0; let its sides run round one shape without touching each other",
    ),
    # By hand: x(t) − 50 = 700 u³ − 75 u with u = t − ½, so it meets itself at u² = 75/700, y = 300 (¼ − u²).
    Case(
        "a curve that crosses itself",
        panel("M 0,0 C 150,100 -50,100 100,0 Z"),
        "finishes/shelf/finish.yaml:4:12: the outline meets itself near 50.0,42.9; let its sides run round one shape without touching each other",
    ),
    Case(
        "a panel told by its size",
        panel("100 x 90 mm"),
        "finishes/shelf/finish.yaml:4:12: '100 x 90 mm' is not a point; write its corners: 0,0 100,0 100,90 0,90",
    ),
    Case(
        "a panel told by its size in centimetres",
        panel("10 × 9.5 cm"),
        "finishes/shelf/finish.yaml:4:12: '10 × 9.5 cm' is not a point; write its corners: 0,0 100,0 100,95 0,95",
    ),
    Case(
        "a border with a nought too many",
        {FINISH: ("border: 6 mm", "border: 60 mm")},
        "finishes/shelf/finish.yaml:5:9: there is no room for a design on a panel of 100 × 100 mm: round it comes a border of 60 mm, on every side; write less, where a few millimetres are usual, or let the panel be larger",
    ),
    Case(
        "a panel in centimetres",
        {FINISH: ("outline: 0,0 100,0 100,100 0,100", "outline: 1,1 9.5,1 9.5,11 1,11")},
        "finishes/shelf/finish.yaml:4:12: a panel of 8.5 × 10 mm has no room for a design, and corners are in mm; if these are cm, write 10,10 95,10 95,110 10,110",
    ),
    *(
        Case(
            f"an outline written as {way}",
            {FINISH: ("outline: 0,0 120,0 120,120 0,120", f"outline: {way}")},
            f"finishes/shelf/finish.yaml:10:{column}: '{first}' is not a point; write a comma in each point and a space between two: 0,0 120,0 120,120 0,120",
        )
        for way, first, column in (
            ("0,0, 120,0, 120,120, 0,120,", "0,0,", 14),
            ("0,0mm 120mm,0 120mm,120mm 0,120 mm", "0,0mm", 14),
            ("0,0 mm 120,0 mm 120,120 mm 0,120 mm", "mm", 18),
            ("0,0,120,0,120,120,0,120", "0,0,120,0,120,120,0,120", 14),
        )
    ),
    Case(
        "an outline in centimetres, which says so",
        {FINISH: ("outline: 0,0 120,0 120,120 0,120", "outline: 0,0 12cm,0 12cm,12cm 0,12cm")},
        "finishes/shelf/finish.yaml:10:18: '12cm,0' is not a point; write x,y in mm without a space between, for example 180,12.5",
    ),
    Case(
        "an inset in centimetres",
        {FINISH: ("inset: 15 mm", "inset: 12 cm")},
        "finishes/shelf/finish.yaml:25:62: an inset of 120 mm reaches beyond the middle of a panel of 100 × 100 mm; write how far a magnet's middle is from the edge of the smallest card, for example 12 mm",
    ),
    Case(
        "a board in centimetres",
        {FINISH: ("thickness: 6 mm", "thickness: 9 cm")},
        "finishes/shelf/finish.yaml:12:16: advice: a board of 90 mm is hardly sold so thick; look once more: should it be 9 mm?",
    ),
    Case(
        "a board whose two numbers of its place changed places",
        {
            FINISH: TINY[FINISH]
            .replace("    at: 0,0\n", "    at: 14,5\n")
            .replace("outline: 0,0 100,0 100,100 0,100", "outline: 20,20 110,20 110,110 20,110")
            .replace(
                "paints:",
                '  - {name: foot, outline: "0,0 100,0 100,12 0,12", at: "0,134", thickness: 6 mm, paint: sage, '
                "coats: 2, faces: both}\npaints:",
            )
        },
        "finishes/shelf/finish.yaml:17:56: advice: 'foot', at 0,134, stands 9 mm away from the nearest other part; mend that, so that the two touch, as at 0,125; or 'back' at 5,14",
    ),
    Case(
        "a board whose two numbers of its place changed places, above two feet",
        {
            FINISH: TINY[FINISH]
            .replace("    at: 0,0\n", "    at: 14,5\n")
            .replace("outline: 0,0 100,0 100,100 0,100", "outline: 20,20 110,20 110,110 20,110")
            .replace(
                "paints:",
                "".join(
                    f'  - {{name: {name} foot, outline: "0,0 20,0 20,12 0,12", at: "{across},134", thickness: 6 mm, '
                    "paint: sage, coats: 2, faces: both}\n"
                    for name, across in (("left", 15), ("right", 90))
                )
                + "paints:",
            )
        },
        "finishes/shelf/finish.yaml:11:9: advice: with 'back' at 14,5 the parts do not all touch one another; should it be 5,14? Then they do",
    ),
    Case(
        "a trim with a nought too many",
        {FINISH: ("overlap: 20 mm}", "overlap: 20 mm, width: 100 mm}")},
        "finishes/shelf/finish.yaml:24:59: there is no room for a design on a panel of 100 × 100 mm: round it comes a border of 6 mm and 100 mm of trim, on every side; write less, where a few millimetres are usual, or let the panel be larger",
    ),
    Case(
        "a path that does not say where it starts",
        panel("L 0,0 100,0 100,100 Z"),
        "finishes/shelf/finish.yaml:4:12: a path that begins with 'L'; begin it where the shape starts, for example M 0,24",
    ),
    Case(
        "a path with a letter that draws nothing",
        panel("M 0,0 L 100,0 B 100,100 Z"),
        "finishes/shelf/finish.yaml:4:26: 'B' is not part of a path; the letters are M L H V C S Q T A Z, large or small",
    ),
    Case(
        "a path with a stray sign",
        panel("M 0,0 L 100,0; 100,100 Z"),
        "finishes/shelf/finish.yaml:4:25: ';' is not part of a path; take it away, or write a comma",
    ),
    Case(
        "a curve with a handle too few",
        panel("M 0,0 C 50,50 100,0 Z"),
        "finishes/shelf/finish.yaml:4:18: after 'C' stand 4 numbers, and it takes 6 at a time; write 6: a lost number, comma or minus is the usual slip",
    ),
    Case(
        "a path with a hole in it",
        panel("M 0,0 H 100 V 100 Z M 20,20 h 9 v 9 Z"),
        "finishes/shelf/finish.yaml:4:32: a second shape begins here, and wood is sawn without holes; end the outline before it, and give the other shape as a part of its own",
    ),
    Case(
        "a panel wider and higher than the wood",
        panel("0,0 200,0 200,132.5 0,132.5"),
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, 80 mm to the right and 12.5 mm below; keep it within the parts, which stand from 0,0 to 120,120, or add the part that it lies on",
    ),
    Case(
        "a board whose place lost a figure, so that it went from below the panel",
        {
            FINISH: TINY[FINISH]
            .replace(
                "outline: 0,0 120,0 120,120 0,120\n    at: 0,0",
                "outline: 0,0 120,0 120,120 0,120\n    at: 7,0",
            )
            .replace(_PANEL, "outline: 80,10 180,10 180,110 80,110")
        },
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, 53 mm to the right; keep it within the parts, which stand from 7,0 to 127,120, or write at: 70,0 for 'back'",
    ),
    Case(
        "a panel that stands beside the wood",
        {FINISH: ("    at: 0,0\n", "    at: 10,-30\n")},
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, 10 mm to the left and 10 mm below; keep it within the parts, which stand from 10,-30 to 130,90, or write 10,-30 110,-30 110,70 10,70 if it is measured from the corner of 'back'",
    ),
    # By hand: the slant from 0,60 to 60,0 is 30 √2 mm away from 0,0.
    Case(
        "a corner of the panel beyond a slant of the wood",
        {FINISH: ("outline: 0,0 120,0 120,120 0,120", "outline: 60,0 120,0 120,120 0,120 0,60")},
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, its corner 0,0 by 42.43 mm; keep each of its corners on a part, or look whether a corner of 'back' was lost",
    ),
    # By hand: the roof's slant from 0,40 to 60,0 is |400 + 1200 − 2400| / √5200 mm away from 10,20.
    Case(
        "a comma before the decimals of a path",
        panel("M 0,0 L 100,0 L 100,90,5 L 0,100 Z"),
        "finishes/shelf/finish.yaml:4:26: after 'L' stand 3 numbers, and it takes 2 at a time; write 100,90.5 for 100,90,5: decimals have a full stop",
    ),
    Case(
        "a heading that lost its signs",
        {
            "finishes/shelf/steps.md": "## The wood\n\n1. Saw the back.\n\nThe picture\n\n1. Lay it on.\n"
        },
        "finishes/shelf/steps.md:5:1: advice: 'The picture' stands by itself and is printed as plain text, and other headings here have their signs; if it is a heading, write '## The picture'",
    ),
    Case(
        "screws of a step that nobody is told to buy",
        {"finishes/shelf/steps.md": "1. Drive in the two wood screws.\n"},
        "finishes/shelf/steps.md:1:17: advice: the step says 'two wood screws', and nobody is told to buy any; add it to 'hardware' in finish.yaml, as {name: wood screw, pieces: 2, size: …}",
    ),
    Case(
        "a rail in the air, beside a step that laces",
        also("0,0 120,0 120,10 0,10", "0,129")
        | {"finishes/shelf/steps.md": "1. Fix the rail below, and lace it to the back.\n"},
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,129, stands 9 mm away from the nearest other part; mend that, so that the two touch, as at 0,120",
    ),
    Case(
        "a ledge hung too low, where a post would lie on another one if its two numbers changed places",
        {
            FINISH: (
                "paints:\n",
                rail("0,0 8,0 8,120 0,120", "-8,0").replace("rail", "left post")
                + rail("0,0 8,0 8,120 0,120", "120,0").replace("rail", "right post")
                + rail("0,0 136,0 136,12 0,12", "-8,138").replace("rail", "ledge")
                + "paints:\n",
            )
        },
        "finishes/shelf/finish.yaml:33:9: advice: 'ledge', at -8,138, stands 18 mm away from the nearest other part; mend that, so that the two touch, as at -8,120; or 'right post' at 0,120",
    ),
    Case(
        "a gap of a few millimetres, where nothing hangs",
        also("0,0 120,0 120,10 0,10", "0,122")
        | {"finishes/shelf/steps.md": "1. Fix the rail below the back.\n"},
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,122, stands 2 mm away from the nearest other part; mend that, so that the two touch, as at 0,120",
    ),
    Case(
        "a gap of a few millimetres in a piece that hangs, between two parts that a step joins",
        also("0,0 120,0 120,10 0,10", "0,124")
        | {
            "finishes/shelf/steps.md": "1. Peg the rail to the back.\n2. Hang it by its ring; tie the cord to the back.\n"
        },
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,124, stands 4 mm away from the nearest other part; mend that, so that the two touch, as at 0,120",
    ),
    Case(
        "a screw whose two measures changed places",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 16 × 3 mm}\n",
            "finishes/shelf/steps.md": "1. Drive in the two wood screws.\n",
        },
        "finishes/shelf/finish.yaml:28:41: advice: 'wood screw' of 16 × 3 mm is thicker than it is long; look once more: should it be 3 × 16 mm?",
    ),
    Case(
        "more screws in figures than there are to buy",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Drive in 4 wood screws of 16 mm.\n",
        },
        "finishes/shelf/steps.md:1:13: advice: the step says '4 wood screws', and of 'wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "two screws and the other two, of three",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 3, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Drive in two of the screws. Let the two screws stand out.\n2. Drive in the other two screws.\n",
        },
        "finishes/shelf/steps.md:2:23: advice: the step speaks of 'two screws' more, which makes 4, and of 'wood screw' there are 3 to buy; mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "fewer screws in the steps than are to buy",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 3, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Drive the two screws up through it.\n",
        },
        "finishes/shelf/steps.md:1:14: advice: the steps tell of 'two screws' alone, and of 'wood screw' there are 3 to buy; mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for",
    ),
    *(
        Case(
            f"{pieces} screws to buy, and two to each end told, four in all",
            {
                FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: wood screw, pieces: {pieces}, size: 3 × 16 mm}}\n",
                "finishes/shelf/steps.md": "1. Fix it to each end with two 3 × 16 mm screws from behind, four in all.\n",
            },
            *told,
        )
        for pieces, told in (
            (4, ()),
            (
                3,
                (
                    "finishes/shelf/steps.md:1:62: advice: the step says 'four in all', and of 'wood screw' there are 3 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
                ),
            ),
            (
                6,
                (
                    "finishes/shelf/steps.md:1:62: advice: the steps tell of 'four in all' alone, and of 'wood screw' there are 6 to buy; mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for",
                ),
            ),
        )
    ),
    Case(
        "wood screws that are all told of, and eye screws for which the steps still have hooks",
        {
            FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: wood screw, pieces: 3, size: 3 × 16 mm}}\n  - {{name: eye screw, pieces: 2, size: 15 mm}}\n",
            "finishes/shelf/steps.md": "1. Screw the foot on with three wood screws.\n2. Turn two cup hooks into the foot.\n",
        },
        "finishes/shelf/steps.md:2:4: advice: the step says 'Turn two cup hooks', and nobody is told to buy any; did you mean 'two eye screws'? Else add it to 'hardware' in finish.yaml, as {name: cup hook, pieces: 2, size: …}",
    ),
    *(
        Case(
            f"{screws} screws to buy and {hooks} hooks, and steps that tell of four and of two",
            {
                FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: wood screw, pieces: {screws}, size: 3 × 16 mm}}\n  - {{name: cup hook, pieces: {hooks}, size: 20 mm}}\n",
                "finishes/shelf/steps.md": "1. Put in two wood screws.\n2. Put in two more wood screws.\n3. Screw two cup hooks into the back.\n",
            },
            *told,
        )
        for screws, hooks, told in (
            (4, 2, ()),
            (
                4,
                3,
                (
                    "finishes/shelf/steps.md:3:10: advice: the steps tell of 'two cup hooks' alone, and of 'cup hook' there are 3 to buy; mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for",
                ),
            ),
            (
                6,
                2,
                (
                    "finishes/shelf/steps.md:2:11: advice: the steps tell of 'two more wood screws, 4 in all' alone, and of 'wood screw' there are 6 to buy; mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for",
                ),
            ),
        )
    ),
    Case(
        "a screw that ends within the board that it goes through",
        {
            FINISH: TINY[FINISH] + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 5 mm}\n",
            "finishes/shelf/steps.md": "1. Screw through the back with the two screws.\n",
        },
        "finishes/shelf/finish.yaml:28:41: advice: 'wood screw' of 5 mm goes 'through the back' in a step, which is 6 mm thick, and so holds in nothing behind it; write one of 9 mm or more, or mend the step, or that 'thickness'",
    ),
    Case(
        "a screw that hardly comes out of the board that it goes through",
        {
            FINISH: TINY[FINISH] + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 7 mm}\n",
            "finishes/shelf/steps.md": "1. Screw through the back with the two screws.\n",
        },
        "finishes/shelf/finish.yaml:28:41: advice: 'wood screw' of 7 mm goes 'through the back' in a step, which is 6 mm thick, and so holds in nothing behind it; write one of 9 mm or more, or mend the step, or that 'thickness'",
    ),
    Case(
        "two hooks of one",
        {
            FINISH: TINY[FINISH] + "hardware:\n  - {name: picture hook, pieces: 1, size: 30 mm}\n",
            "finishes/shelf/steps.md": "1. Fix the two picture hooks.\n",
        },
        "finishes/shelf/steps.md:1:12: advice: the step says 'two picture hooks', and of 'picture hook' there is 1 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "more parts in a step than the piece has",
        {"finishes/shelf/steps.md": "1. Saw the two backs.\n"},
        "finishes/shelf/steps.md:1:12: advice: the step says 'two backs', and of parts called 'back' there is 1 in finish.yaml; mend the number here, or the parts there",
    ),
    Case(
        "six magnets of four",
        {
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Sink the six magnets into it.\n3. Stick four washers to the card.\n"
        },
        "finishes/shelf/steps.md:2:13: advice: the step says 'six magnets', and 'pairs' under 'magnets' in finish.yaml is 4; mend one of the two, or name no number here: every packet tells how many there are",
    ),
    Case(
        "coats of no paint by name, of which no part has so many",
        {
            "finishes/shelf/steps.md": "1. Saw the back, and give it three thin coats.\n2. Then two coats, and four coats of varnish.\n"
        },
        "finishes/shelf/steps.md:1:30: advice: here stands 'three thin coats', and in finish.yaml parts have 2 coats; mend the number here, or 'coats' there",
        "finishes/shelf/steps.md:2:24: advice: the step says 'four coats of varnish', and nobody is told to buy 'varnish'; add it to 'paints' in finish.yaml, and to what it is put on; or to 'hardware'",
    ),
    Case(
        "a paint over another face than the part has it on",
        {
            FINISH: ("    faces: both", "    faces: front"),
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Wipe two coats of sage over the back of the back.\n",
        },
        "finishes/shelf/steps.md:2:22: advice: the step says 'sage over the back of the back', and in finish.yaml that paint of 'back' is for its front; name that here, or mend 'faces' there",
    ),
    Case(
        "magnets that no step puts on the wood",
        {
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Stick steel washers to the card, opposite the magnets.\n"
        },
        "finishes/shelf/steps.md:2:16: advice: no step puts the magnets on the wood, and here they or their washers are spoken of; tell it in a step, for example: Glue the magnets to the wood at the places of the template.",
    ),
    Case(
        "magnets, and no washers for them to hold",
        {"finishes/shelf/steps.md": "1. Saw the back.\n2. Sink the magnets into it.\n"},
        "finishes/shelf/steps.md:2:13: advice: every packet lists a steel washer for each magnet, and no step speaks of washers; tell it in a step, for example: Glue the steel washers to the back where the template was pricked through.",
    ),
    Case(
        "a trim that the steps sew on, and the piece lost",
        {
            FINISH: ("trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}\n", ""),
            "finishes/shelf/steps.md": "1. Saw the back, and trim the cloth.\n2. Gather the trim, and sew it on.\n",
        },
        "finishes/shelf/steps.md:2:15: advice: here stands 'trim', and this piece has no trim; take that out, or add a line to finish.yaml, for example trim: {kind: straight, overlap: 20 mm, width: 6 mm}",
    ),
    *(
        Case(
            f"a {kind} trim that the steps let one {verb}",
            {
                FINISH: ("kind: gathered, ratio: 1.5, overlap: 20 mm", f"{trim}, overlap: 20 mm"),
                "finishes/shelf/steps.md": f"1. Saw the back.\n2. {verb} the trim, and sew it on.\n",
            },
            *[
                f"finishes/shelf/steps.md:2:4: advice: the step says '{verb} the trim', and the 'kind' of the trim in finish.yaml is '{kind}'; mend one of the two"
            ]
            * told,
        )
        for kind, trim, verb, told in (
            ("round", "kind: round, width: 3 mm", "Gather", 1),
            ("straight", "kind: straight, width: 6 mm", "Pleat", 1),
            ("gathered", "kind: gathered, ratio: 2", "Gather", 0),
        )
    ),
    *(
        Case(
            f"hardware whose size is {dots}, as in the message that offered it",
            {
                FINISH: (
                    "trim:",
                    f"hardware:\n  - {{name: shelf pin, pieces: 2, size: {dots}}}\ntrim:",
                )
            },
            "finishes/shelf/finish.yaml:25:40: 'size' has no value; write one, for example size: 10 mm across",
        )
        for dots in ("…", "...")
    ),
    Case(
        "coats and faces behind each other's name",
        {FINISH: ("    coats: 2\n    faces: both", "    coats: both\n    faces: 2")},
        "finishes/shelf/finish.yaml:15:12: 'coats' and 'faces' have each what the other is for; they have changed places: write coats: 2 and faces: both",
    ),
    Case(
        "a paint that dries in minutes, where hours were meant",
        {FINISH: ("dries_in: 1 h", "dries_in: 1 min")},
        "finishes/shelf/finish.yaml:22:15: advice: 1 min is short for a paint until its next coat; look once more at the tin: should it be 1 h?",
    ),
    *(
        Case(
            f"{covers} m2 of one litre with {way}",
            {
                FINISH: TINY[FINISH].replace(
                    "put_on_with: brush\n    covers: 10 m2",
                    f"put_on_with: {way}\n    covers: {covers} m2",
                )
            },
            *[
                f"finishes/shelf/finish.yaml:21:13: advice: {covers} m2 is {much} for a litre of paint put on with {way}; look once more at the label: should it be {better} m2 per litre?"
            ]
            * bool(much),
        )
        for way, covers, much, better in (
            ("brush", "1", "little", 10),
            ("brush", "2.5", "", 0),
            ("brush", "16", "", 0),
            ("brush", "50", "much", 5),
            ("spray", "0.4", "little", 4),
            ("spray", "1.2", "", 0),
            ("spray", "40", "much", 4),
        )
    ),
    Case(
        "a tin with two noughts too many",
        {FINISH: ("tin: 100 ml", "tin: 10000 ml")},
        "finishes/shelf/finish.yaml:23:10: advice: a tin of 10000 ml is large for one small piece; look once more: should it be 100 ml?",
    ),
    Case(
        "magnets that would hold what none does",
        {FINISH: ("inset: 15 mm}", "inset: 15 mm, holds: 10 kg}")},
        "finishes/shelf/finish.yaml:25:76: advice: no magnet 10 mm across holds 10 kg: the strongest that are sold could hold 7.2 kg; write what its label says of one; should it be 1 kg?",
    ),
    Case(
        "a paint that the steps spray and the piece brushes",
        {
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Spray all three as the painting page says.\n"
        },
        "finishes/shelf/steps.md:2:4: advice: the step says 'Spray all', and no paint of the piece is put on with spray; say here how it is put on, or write put_on_with: spray, or or_with, at the paint in finish.yaml",
    ),
    Case(
        "more of the screws than there are to buy",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 16 mm}\n",
            "finishes/shelf/steps.md": "1. Drive in three of the wood screws.\n",
        },
        "finishes/shelf/steps.md:1:13: advice: the step says 'three of the wood screws', and of 'wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "a top coat listed before the one below it",
        {
            FINISH: TINY[FINISH]
            .replace(
                "    paint: sage\n    coats: 2\n    faces: both\n",
                "    painted:\n      - {paint: cress, coats: 2, faces: front}\n      - {paint: sage, coats: 1, faces: both}\n",
            )
            .replace(
                "paints:\n",
                'paints:\n  - {name: cress, hex: "#d8c48a", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n',
            )
        },
        "finishes/shelf/finish.yaml:15:17: advice: 'cress' on 'back' is covered all over by 'sage', which goes on after it; let 'sage' stand before it under 'painted', or mend 'faces'",
    ),
    Case(
        "two faces in one entry of paint",
        {
            FINISH: (
                "    paint: sage\n    coats: 2\n    faces: both\n",
                "    painted:\n      - {paint: sage, coats: 2, faces: front and edges}\n",
            )
        },
        "finishes/shelf/finish.yaml:15:40: 'faces' cannot be 'front and edges'; 'both' is front, back and edges; for two of them write two entries like this one, each with one of its faces",
    ),
    Case(
        "a step that counts more coats than the part has",
        {
            "finishes/shelf/steps.md": "1. Saw the back, and give it two coats of sage.\n2. Give it three\n   coats of sage.\n"
        },
        "finishes/shelf/steps.md:2:12: advice: here stands 'three coats of sage', and in finish.yaml parts have 2 coats of 'sage'; mend the number here, or 'coats' there",
    ),
    Case(
        "a board that lost a corner",
        {
            FINISH: (
                "outline: 0,0 120,0 120,120 0,120",
                "outline: 10,0 110,0 120,10 120,110 110,120 0,10",
            )
        },
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, its corner 0,100 by 63.64 mm; keep each of its corners on a part, or look whether a corner of 'back' was lost",
    ),
    Case(
        "a part with as many coats as another has",
        {
            FINISH: TINY[FINISH].replace(
                "paints:\n",
                rail("0,0 120,0 120,10 0,10", "0,120").replace("coats: 2", "coats: 3")
                + "paints:\n",
            ),
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Give the rail two coats of sage, and the back two.\n",
        },
        "finishes/shelf/steps.md:2:13: advice: here stands 'rail two coats', and in finish.yaml 'rail' has 3; mend the number here, or 'coats' there",
    ),
    Case(
        "two parts, each with the other's paint in the steps",
        {
            FINISH: _RAIL_IN_CRESS,
            "finishes/shelf/steps.md": "1. Paint the rail in sage, and the back in cress.\n",
        },
        "finishes/shelf/steps.md:1:14: advice: the steps give 'rail' and 'back' each the other's paint; let the two paints change places here, or in finish.yaml",
    ),
    Case(
        "a step that paints a part with another of the paints",
        {
            FINISH: _RAIL_IN_CRESS,
            "finishes/shelf/steps.md": "1. Saw the rail and the back.\n2. Paint the rail in cress, and the back\n   in cress too; the back with two thin coats of cress, and two coats of cress over the back.\n",
        },
        "finishes/shelf/steps.md:2:37: advice: here stands 'back in cress', and in finish.yaml 'back' is painted with 'sage'; name that here, or mend 'paint' there",
        "finishes/shelf/steps.md:3:22: advice: here stands 'back with two thin coats of cress', and in finish.yaml 'back' is painted with 'sage'; name that here, or mend 'paint' there",
        "finishes/shelf/steps.md:3:74: advice: here stands 'cress over the back', and in finish.yaml 'back' is painted with 'sage'; name that here, or mend 'paint' there",
    ),
    Case(
        "a screw with a nought too many",
        {
            FINISH: TINY[FINISH]
            + "hardware:\n  - {name: wood screw, pieces: 2, size: 3 × 250 mm}\n",
            "finishes/shelf/steps.md": "1. Drive in the two wood screws.\n",
        },
        "finishes/shelf/finish.yaml:28:41: advice: 'wood screw' of 250 mm is longer than the whole piece, which is 120 mm at its longest; look once more: a nought too many, or another unit?",
    ),
    Case(
        "how many litres a square metre takes, of which the units changed places",
        {FINISH: ("covers: 10 m2 per litre", "covers: 11 litre per m2")},
        "finishes/shelf/finish.yaml:21:16: 'litre per m2' is not a unit for 'covers'; write 11 m2 per litre",
    ),
    Case(
        "hinges that no step puts on",
        {FINISH: TINY[FINISH] + "hardware:\n  - {name: brass hinge, pieces: 2, size: 20 mm}\n"},
        "finishes/shelf/finish.yaml:28:12: advice: every packet lists 'brass hinge' to buy, and no step has a word of it; let a step name it, or take this entry out",
    ),
    Case(
        "a step that sends to a step that there is not",
        {"finishes/shelf/steps.md": "1. Saw the back.\n2. Do it as in step 7.\n"},
        "finishes/shelf/steps.md:2:16: advice: here stands 'step 7', and the longest list of these steps ends with 2; mend the number, or say what is meant",
    ),
    Case(
        "a drying time in hours and minutes",
        {FINISH: ("dries_in: 1 h", "dries_in: 1 h 30 min")},
        "finishes/shelf/finish.yaml:22:17: 'h 30 min' is not a unit for 'dries_in'; write 90 min",
    ),
    Case(
        "a rail in inches, which touches nothing",
        also("0,0 4.7,0 4.7,0.4 0,0.4", "0,140"),
        "finishes/shelf/finish.yaml:18:14: advice: 'rail' of 4.7 × 0.4 mm can hardly be sawn, and corners are in mm; if these are cm, write 0,0 47,0 47,4 0,4",
    ),
    Case(
        "screws of which the number stands alone",
        {FINISH: TINY[FINISH] + "hardware:\n  - {name: wood screw, 2, size: 3 × 16 mm}\n"},
        "finishes/shelf/finish.yaml:28:24: '2' stands there without its name; write pieces: 2",
    ),
    Case(
        "a panel measured from the corner of a gable, which reaches below the roof",
        {FINISH: _GABLED},
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, its corner 10,20 by 11.09 mm; keep each of its corners on a part, or write 10,50 110,50 110,150 10,150 if it is measured from the corner of 'back'",
    ),
    Case(
        "a panel beyond the wood, and a part without a place",
        {FINISH: _PLACELESS},
        "finishes/shelf/finish.yaml:4:12: the panel reaches beyond the wood, 5 mm to the right; keep it within the parts, which stand from 0,0 to 120,120, or give 'back' its 'at'",
    ),
    Case(
        "a sill with the two numbers of its place changed about",
        {FINISH: _SILL},
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 70,0, lies over the panel from 70,0 to 100,10 and hides 5 % of it; write at: 0,70, or name the area under 'keep_out'",
    ),
    Case(
        "a rail whose place lost a figure that the steps tell",
        also("0,0 120,0 120,10 0,10", "0,11")
        | {
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Peg the rail over its lower edge, 110 mm from the upper.\n"
        },
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,11, lies over the panel from 0,11 to 100,21 and hides 10 % of it; write at: 0,110, or name the area under 'keep_out'",
    ),
    Case(
        "how much paint a square metre takes, for how much a litre covers",
        {FINISH: ("covers: 10 m2 per litre", "covers: 80 ml per m2")},
        "finishes/shelf/finish.yaml:21:16: 'ml per m2' is not a unit for 'covers'; the other way round that is 12.5 m2 per litre",
    ),
    Case(
        "a sill drawn in its place, and given the place besides",
        also("0,120 120,120 120,130 0,130", "0,120"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,120, stands 120 mm away from the nearest other part; its outline begins there already: take 'at' away, so that the two touch",
    ),
    Case(
        "a rail across the panel",
        also("0,0 120,0 120,10 0,10", "0,50"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,50, lies over the panel from 0,50 to 100,60 and hides 10 % of it; mend that, as at 0,100, or name the area under 'keep_out'",
    ),
    Case(
        "a rail whose place was forgotten",
        also("0,0 20,0 20,30 0,30"),
        "finishes/shelf/finish.yaml:17:5: advice: 'rail', at 0,0 since it has no 'at', lies over the panel from 0,0 to 20,30 and hides 6 % of it; give it one, or name the area under 'keep_out'",
    ),
    Case(
        "a rail with a digit too many in its place",
        also("0,0 120,0 120,10 0,10", "-10,1420"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at -10,1420, stands 1300 mm away from the nearest other part; mend that, so that the two touch, as at -10,120",
    ),
    Case(
        "two rails that touch only one another",
        {
            FINISH: (
                "paints:\n",
                "".join(
                    f"  - {{name: {name}, outline: '0,0 9,0 9,9 0,9', at: '{at}', thickness: 6 mm, pieces: 1, paint: sage, coats: 2, faces: both}}\n"
                    for name, at in (("rail", "150,0"), ("knob", "159,0"))
                )
                + "paints:\n",
            )
        },
        "finishes/shelf/finish.yaml:17:50: advice: 'rail', at 150,0, with 'knob', which it touches, stands 30 mm away from the nearest other part; mend that, so that the two touch",
    ),
    Case(
        "two pots whose shelf stands elsewhere",
        {
            FINISH: (
                "paints:\n",
                "".join(
                    f"  - {{name: {name}, outline: '0,0 {wide},0 {wide},9 0,9', at: '{at}', thickness: 6 mm, pieces: 1, paint: sage, coats: 2, faces: both}}\n"
                    for name, wide, at in (
                        ("sill", 120, "0,220"),
                        ("pot", 9, "40,141"),
                        ("jug", 9, "49,141"),
                    )
                )
                + "paints:\n",
            )
        },
        "finishes/shelf/finish.yaml:17:54: advice: 'sill', at 0,220, stands 70 mm away from the nearest other part; mend that, so that the two touch, as at 0,150",
    ),
    Case(
        "a knob with its two numbers the other way round",
        also("0,0 18,0 18,18 0,18", "149,61"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 149,61, stands 29 mm away from the nearest other part; mend that, so that the two touch, as at 120,61",
    ),
    Case(
        "the second of two posts laid over the first",
        {
            FINISH: (
                "paints:\n",
                rail("0,0 18,0 18,160 0,160", "-18,0")
                + rail("0,0 18,0 18,160 0,160", "-18,12").replace("name: rail", "name: other rail")
                + "paints:\n",
            )
        },
        "finishes/shelf/finish.yaml:26:9: advice: 'other rail' lies over 92 % of 'rail', which has the same outline; mend its 'at'; or lay this aside where the two are meant to lie so",
    ),
    Case(
        "a post with its place in cm",
        also("0,0 18,0 18,120 0,120", "12,0"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 12,0, lies over the panel from 12,0 to 30,100 and hides 18 % of it; write at: 120,0, or name the area under 'keep_out'",
    ),
    Case(
        "steps that never cover the back",
        {
            "finishes/shelf/steps.md": "1. Saw the back.\n2. Lay the cloth over card and wadding, and lace it. Sew on the trim.\n"
        },
        "finishes/shelf/steps.md:2:32: advice: every packet lists a backing fabric, and no step uses it; add a step, for example: Cover the back with the backing fabric, and slip-stitch it down; or say that it may be left out",
    ),
    Case(
        "a lid whose slanting edge meets the board with one corner",
        also("0,0 120,11 120,30 0,30", "0,120"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail' meets 'back' in one point only, at 0,120, where no glue would hold it; let it lie over 'back', or meet it along an edge",
    ),
    Case(
        "a rail that is listed before what it lies on",
        behind(rail("0,0 120,0 120,10 0,10", "0,105")),
        "finishes/shelf/finish.yaml:9:11: advice: 'rail' lies wholly behind 'back' and is not seen; mend the place or size of one, or put it after that one (parts go from back to front); if it belongs there, write faces: back",
    ),
    Case(
        "a rail that is listed too early and has no place",
        behind(rail("0,0 120,0 120,10 0,10")),
        "finishes/shelf/finish.yaml:9:11: advice: 'rail', at 0,0 since it has no 'at', lies wholly behind 'back' and is not seen; give it one, or put it after that one (parts go from back to front); if it belongs there, write faces: back",
    ),
    Case(
        "a backboard that is listed last",
        behind(
            rail("0,0 120,0 120,10 0,10", "0,105"),
            rail("0,0 120,0 120,5 0,5", "0,0").replace("rail", "lath"),
        ),
        "finishes/shelf/finish.yaml:23:11: advice: 2 parts lie wholly behind 'back' and are not seen; put it before 'rail', as parts go from the back to the front, or mend its size; if they belong there, write faces: back",
    ),
    Case(
        "a semicolon in a point of an outline",
        panel("0,0 100;0 100,100 0,100"),
        "finishes/shelf/finish.yaml:4:16: '100;0' is not a point; write a comma in each point and a space between two: 0,0 100,0 100,100 0,100",
    ),
    Case(
        "a part painted in both ways of writing",
        painted(_PAINTED + "    painted:\n      - {paint: sage, coats: 1, faces: edges}\n"),
        "finishes/shelf/finish.yaml:17:5: 'paint', 'coats' and 'faces' stand beside 'painted' in a part; keep these, or 'painted'",
    ),
    Case(
        "a part that is not painted at all",
        painted(""),
        "finishes/shelf/finish.yaml:9:5: 'coats' is missing in a part; add a line, for example coats: 2",
        "finishes/shelf/finish.yaml:9:5: 'paint' is missing in a part; add a line, for example paint: soft sage",
    ),
    Case(
        "a second paint that does not exist",
        painted(
            "    painted:\n      - {paint: sage, coats: 2, faces: front}\n      - {paint: sago, coats: 1, faces: edges}\n"
        ),
        "finishes/shelf/finish.yaml:16:17: there is no paint 'sago'; did you mean 'sage'?",
    ),
    Case(
        "the same paint on the same edges twice",
        painted(
            "    painted:\n      - {paint: sage, coats: 2, faces: both}\n      - {paint: sage, coats: 1, faces: edges}\n"
        ),
        "finishes/shelf/finish.yaml:16:17: 'back' is painted with 'sage' twice on its edges; add the coats together in one entry ('both' has the edges too)",
    ),
    Case(
        "a choice between a brush and a brush",
        {
            FINISH: (
                "    tin: 100 ml\n",
                "    tin: 100 ml\n    or_with: {put_on_with: brush, covers: 4 m2 per litre, tin: 150 ml}\n",
            )
        },
        "finishes/shelf/finish.yaml:24:28: 'sage' is put on with a brush both ways; give the other way, or take 'or_with' away",
    ),
    *(
        Case(
            f"{words} in the steps, and no glue is listed",
            {"finishes/shelf/steps.md": f"1. Saw the back.\n2. {words}\n"},
            *told,
        )
        for words, told in (
            (
                "Then glue it.",
                (
                    "finishes/shelf/steps.md:2:9: advice: the steps say 'glue', and finish.yaml lists no glue, so nobody is told to buy it; add a line there, for example glue: [{name: wood glue, cures_in: 24 h, for: the wooden parts}]",
                ),
            ),
            ("Screw it; no glue is needed.", ()),
        )
    ),
    Case(
        "a glue that never cures",
        {
            FINISH: (
                "trim:",
                "glue:\n  - {name: wood glue, cures_in: a day, for: the parts}\ntrim:",
            )
        },
        "finishes/shelf/finish.yaml:25:33: 'cures_in' is 'a day', which is not a time; write a number and its unit, for example cures_in: 24 h",
    ),
    Case(
        "a finish that nobody has steps for",
        {PATTERN: ("key:\n", "also_finished_as: [framed, hop]\nkey:\n")},
        "series/garden-year/fern/pattern.yaml:8:28: an entry of 'also_finished_as' cannot be 'hop'; did you mean 'hoop'?",
    ),
    Case(
        "two faces as a list",
        {FINISH: ("faces: both", "faces: [front, edges]")},
        "finishes/shelf/finish.yaml:16:12: 'faces' has a list, and needs one value; 'both' is front, back and edges; for two of them write two entries in 'painted', as {paint: sage, coats: 2, faces: front}, in place of paint, coats and faces",
    ),
    Case(
        "two faces in words",
        {FINISH: ("faces: both", "faces: front and edges")},
        "finishes/shelf/finish.yaml:16:12: 'faces' cannot be 'front and edges'; 'both' is front, back and edges; for two of them write two entries in 'painted', as {paint: sage, coats: 2, faces: front}, in place of paint, coats and faces",
    ),
    Case(
        "a second part of several without its place",
        {
            FINISH: (
                "paints:\n",
                "  - {name: rail, outline: '0,0 9,0 9,9 0,9', at: '120,0', thickness: 6 mm, paint: sage, coats: 2}\n"
                "  - {name: knob, outline: '110,0 119,0 119,9 110,9', thickness: 6 mm, paint: sage, coats: 2}\npaints:\n",
            )
        },
        "finishes/shelf/finish.yaml:18:12: advice: 'knob' has no 'at', so it stands at 0,0, while other parts say where they stand; give it one; write at: 0,0 if that is right",
    ),
    Case(
        "a rail in centimetres",
        {
            FINISH: (
                "paints:\n",
                "  - {name: rail, outline: '0,0 12,0 12,1.2 0,1.2', at: '0,110', thickness: 6 mm, paint: sage, coats: 2}\npaints:\n",
            )
        },
        "finishes/shelf/finish.yaml:17:27: advice: 'rail' of 12 × 1.2 mm can hardly be sawn, and corners are in mm; if these are cm, write 0,0 120,0 120,12 0,12",
    ),
    Case(
        "the board in centimetres, and the panel in millimetres",
        {FINISH: ("outline: 0,0 120,0 120,120 0,120", "outline: 0,0 12,0 12,12 0,12")},
        "finishes/shelf/finish.yaml:10:14: the panel reaches beyond the wood, 88 mm to the right and 88 mm below; write 'back' in mm if its 12 × 12 mm are cm, or keep the panel within the parts, which stand from 0,0 to 12,12",
    ),
    Case(
        "a board saved in pixels, 96 to the inch",
        {FINISH: ("outline: 0,0 120,0 120,120 0,120", "outline: 0,0 453.5,0 453.5,453.5 0,453.5")},
        "finishes/shelf/finish.yaml:10:14: advice: 'back' of 453.5 × 453.5 mm is more than three times as wide and as high as the panel of 100 × 100 mm; if these are pixels of a drawing, 96 to the inch, it is 120 × 120 mm: let the drawing count in mm",
    ),
    Case(
        "a board saved in pixels that leaves the panel at a corner",
        {
            FINISH: (
                "outline: 0,0 120,0 120,120 0,120",
                "outline: 0,200 200,0 453.5,200 453.5,453.5 0,453.5",
            )
        },
        "finishes/shelf/finish.yaml:10:14: the panel reaches beyond the wood, its corner 0,0 by 141.42 mm; write 'back' in mm, 120 × 120 mm, if its 453.5 × 453.5 mm are px, or keep each of its corners on a part",
    ),
    Case(
        "an outline copied with its name from a drawing file",
        {FINISH: (_PANEL, """outline: d="m 0,0 h 100 v 100 h -100 z\"""")},
        "finishes/shelf/finish.yaml:4:12: 'd=' is how a drawing file names the shape, and no part of it; take it and its quotes away, so that it begins: outline: m 0,0 h …",
    ),
    Case(
        "corners copied with their name from a drawing file",
        {FINISH: (_PANEL, """outline: <polygon points="0,0 100,0 100,100 0,100" />""")},
        "finishes/shelf/finish.yaml:4:12: 'points=' is how a drawing file names the shape, and no part of it; take it and its quotes away, so that it begins: outline: 0,0 100,0 100,100 …",
    ),
    Case(
        "a number lost in the second of two curves",
        {FINISH: (_PANEL, "outline: M 0,0 C 0,40 0,60 0,100 40,100 60,100 100 L 100,0 Z")},
        "finishes/shelf/finish.yaml:4:18: after 'C' stand 11 numbers, and it takes 6 at a time; write 6 or 12: a lost number, comma or minus is the usual slip",
    ),
    Case(
        "a board made lower, and not the place of the shelf below it",
        also("0,0 120,0 120,8 0,8", "0,144"),
        "finishes/shelf/finish.yaml:19:9: advice: 'rail', at 0,144, stands 24 mm away from the nearest other part; mend that, so that the two touch, as at 0,120",
    ),
    Case(
        "width and overlap of the trim that changed places",
        {
            FINISH: (
                "trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}",
                "trim: {kind: round, overlap: 3 mm, width: 20 mm}",
            )
        },
        "finishes/shelf/finish.yaml:24:43: advice: the trim is 20 mm wide, and its ends overlap by no more than 3 mm; look once more: did 'width' and 'overlap' change places?",
    ),
    Case(
        "fold and wadding that changed places",
        {
            FINISH: (
                "fold_over: 20 mm\nwadding_inset: 1 mm",
                "fold_over: 1 mm\nwadding_inset: 20 mm",
            )
        },
        "finishes/shelf/finish.yaml:6:12: advice: 1 mm of cloth behind the card can hardly be laced or glued; it and 'wadding_inset', 20 mm, seem to have changed places",
    ),
    Case(
        "a fold in another unit",
        {FINISH: ("fold_over: 20 mm", "fold_over: 2 mm")},
        "finishes/shelf/finish.yaml:6:12: advice: 2 mm of cloth behind the card can hardly be laced or glued; look once more: 20 to 40 mm are usual; should it be 20 mm?",
    ),
    Case(
        "wadding that ends below the stitching",
        {FINISH: ("wadding_inset: 1 mm", "wadding_inset: 10 mm")},
        "finishes/shelf/finish.yaml:7:16: advice: wadding 10 mm smaller than its card on every side leaves a step below the stitching; look once more: 1 or 2 mm are usual; should it be 1 mm?",
    ),
    Case(
        "a magnet with a nought too many in its thickness",
        {FINISH: ("thickness: 2 mm, inset", "thickness: 20 mm, inset")},
        "finishes/shelf/finish.yaml:25:49: advice: a magnet 20 mm thick and 10 mm across would keep the picture 20 mm away from the panel; look once more: should it be 2 mm?",
    ),
    Case(
        "a magnet whose two measures changed places",
        {FINISH: ("diameter: 10 mm, thickness: 2 mm", "diameter: 2 mm, thickness: 10 mm")},
        "finishes/shelf/finish.yaml:25:48: advice: a magnet 10 mm thick and 2 mm across would keep the picture 10 mm away from the panel; look once more: have the two changed places?",
    ),
    Case(
        "wadding in another unit",
        {FINISH: ("wadding_inset: 1 mm", "wadding_inset: 15 mm")},
        "finishes/shelf/finish.yaml:7:16: advice: wadding 15 mm smaller than its card on every side leaves a step below the stitching; look once more: 1 or 2 mm are usual; should it be 1.5 mm?",
    ),
    Case(
        "a copied part of which only the name was changed",
        {
            FINISH: (
                "paints:\n",
                "  - {name: second back, outline: '0,0 120,0 120,120 0,120', at: '0,0', thickness: 6 mm, paint: sage, coats: 2}\npaints:\n",
            )
        },
        "finishes/shelf/finish.yaml:17:65: advice: 'second back' is as large as 'back' and at the same place, so one of the two is not seen; give it its own 'at'; if both make one board, write one part, thickness: 12 mm",
    ),
    Case(
        "the middle board of three in centimetres",
        {
            FINISH: TINY[FINISH]
            .replace("outline: 0,0 120,0 120,120 0,120", "outline: 0,0 12,0 12,12 0,12")
            .replace(
                "paints:\n",
                f"{rail('0,0 120,0 120,9 0,9', '0,-9')}{rail('0,0 120,0 120,9 0,9', '0,120').replace('rail', 'shelf')}paints:\n",
            )
        },
        "finishes/shelf/finish.yaml:10:14: 'back' of 12 × 12 mm carries no panel and holds no parts together, and corners are in mm; if these are cm, write 0,0 120,0 120,120 0,120",
    ),
    Case(
        "an overlap in another unit",
        {FINISH: ("overlap: 20 mm", "overlap: 20 cm")},
        "finishes/shelf/finish.yaml:24:45: advice: an overlap of 200 mm is much for the two ends of a trim; look once more: should it be 20 mm?",
    ),
)
