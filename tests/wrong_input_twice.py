"""What stands twice in an author's files, and names that are misspelt in one of two places; and what the author reads."""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

import re

from tests.content_builder import CHART, CLOTH, FINISH, MOSS, PATTERN, SERIES, TINY
from tests.wrong_input_case import Case
from tests.wrong_input_series import TWO_PATTERNS

NOTES = "series/garden-year/fern/stitching.md"
STEPS = "finishes/shelf/steps.md"
_BACKSTITCH = '  - {colour: k, path: "1,1 4,1 4,2.5"}\n'
_KNOTS = '  - {colour: r, at: "2.5,2.5 3,3"}\n'
_SHOP = "  - {name: Alder's counter, url: https://alder.example/by-fern}\n"
_TAKE_OUT = "take one of the two out"
_LIES = "this lies where one of the same colour lies already, of line {}; mend where one of the two lies, or take it out"
_STANDS = f"this stands in the list already, on line {{}}; {_TAKE_OUT}, or mend what should differ"

# One thread set, and its lines in two strands.
_ONE_SET = re.sub(r", spool(: (\[.*?\]|\"..\"))?", "", TINY[PATTERN])
_TWO_STRANDS = (
    TINY[SERIES]
    .replace("  - {name: spool, card: spool, strands: 1}\n", "")
    .replace("strands: 2}", "strands: 2, backstitch_strands: 2}")
)


def _bought(*lines: str) -> dict[str, str]:
    return {FINISH: TINY[FINISH] + "".join(f"{line}\n" for line in lines)}


CASES = (
    Case(
        "a line of the notes that was pasted twice",
        {
            NOTES: "Begin where the fern uncurls, and end.\n\n2. Begin where the fern uncurls, and end.\n"
        },
        f"{NOTES}:3:1: advice: this line stands in the text already, on line 1; {_TAKE_OUT}",
    ),
    Case("a short line that stands twice", {NOTES: "Rest a while.\n\nRest a while.\n"}),
    Case(
        "a line of backstitch that was copied and turned about",
        {PATTERN: (_BACKSTITCH, _BACKSTITCH + '  - {colour: k, path: "4,2.5 4,1 1,1"}\n')},
        f"{PATTERN}:14:5: advice: {_LIES.format(13)}",
    ),
    Case(
        "lines of backstitch in two colours on one another",
        {PATTERN: (_BACKSTITCH, _BACKSTITCH + _BACKSTITCH.replace("k", "r"))},
    ),
    Case(
        "a French knot that was copied",
        {PATTERN: (_KNOTS, _KNOTS + '  - {colour: r, at: "1.5,2.5 3,3"}\n')},
        f"{PATTERN}:16:30: advice: {_LIES.format(15)}",
    ),
    Case(
        "a shop that was copied and not changed",
        {PATTERN: (_SHOP, _SHOP * 2)},
        f"{PATTERN}:26:34: advice: {_STANDS.format(25)}",
    ),
    Case(
        "a glue and a screw that are listed twice",
        _bought(
            "glue:",
            *["  - {name: wood glue, cures_in: 24 h, for: the wooden parts}"] * 2,
            "hardware:",
            "  - {name: hook, pieces: 1, size: 20 mm}",
            "  - {name: hook, pieces: 1, size: 30 mm}",
            "  - {name: Hook, pieces: 1, size: 20 mm}",
        )
        | {STEPS: "1. Saw the back, and glue the hooks on.\n"},
        f"{FINISH}:29:12: advice: {_STANDS.format(28)}",
        f"{FINISH}:33:12: advice: {_STANDS.format(31)}",
    ),
    *(
        Case(
            f"a glue that holds after {time}: {name}",
            _bought(f"glue: [{{name: {name}, cures_in: {time}, for: the wooden parts}}]")
            | {STEPS: "1. Saw the back, and glue it.\n"},
            *[
                f"{FINISH}:27:36: advice: 12 min is short for a glue until it holds; look once more at its label: should it be 12 h?"
            ]
            * told,
        )
        for name, time, told in (
            ("wood glue", "12 min", 1),
            ("quick glue", "12 min", 0),
            ("wood glue", "12 h", 0),
        )
    ),
    Case(
        "a glue for wood that is to hold magnets",
        _bought("glue: [{name: wood glue, cures_in: 24 h, for: washers and magnets}]")
        | {STEPS: "1. Saw the back, and glue it.\n"},
        f"{FINISH}:27:47: advice: 'wood glue' is for 'washers and magnets', and these are no wood; mend the name, or what it is for",
    ),
    Case(
        "a colour that has the name of another",
        {
            MOSS: ("name: fern", "name: Brick"),
        },
        f"{MOSS}:11:26: advice: '07' has the very name of 'E2', 'Brick'; look once more at both, or lay this aside in series.yaml where they are the same",
    ),
    Case(
        "a lazy daisy that was copied",
        {PATTERN: (_KNOTS, _KNOTS + "lazy_daisies:\n" + '  - {colour: k, path: "1,1 2,2"}\n' * 2)},
        f"{PATTERN}:18:5: advice: {_LIES.format(17)}",
    ),
    Case(
        "a notice on the day of the release in another year",
        {SERIES: ("date: 2026-11-20", "date: 2028-01-15")},
        f"{SERIES}:18:12: advice: the notice is of 2028-01-15, and the release of 2027-01-15; mend the day here, or the release on line 3; or say in the notice what it is for",
    ),
    *(
        Case(
            f"{name} of {size} for a piece of 120 mm",
            _bought("hardware:", f"  - {{name: {name}, pieces: 1, size: {size}}}")
            | {STEPS: f"1. Saw the back.\n2. Put in the {name}.\n"},
            *[
                f"{FINISH}:28:{31 + len(name)}: advice: '{name}' of {long} is longer than {half}the whole piece, which is 120 mm at its longest; look once more: a nought too many, or another unit?"
            ]
            * bool(long),
        )
        for name, size, long, half in (
            ("wood screw", "3 × 7 cm", "7 cm", "half of "),
            ("wood screw", "3 × 16 mm", "", ""),
            ("hanger", "13 cm", "13 cm", ""),
            ("hanger", "9 cm", "", ""),
        )
    ),
    *(
        Case(
            f"a screw eye of {size} in wood of 6 mm: {sentence}",
            _bought("hardware:", f"  - {{name: screw eye, pieces: 1, size: {size}}}")
            | {STEPS: f"1. Saw the back.\n2. {sentence}\n"},
            *[
                f"{FINISH}:28:40: advice: 'screw eye' of 12 mm goes 'into the back of the back', which is 6 mm thick, and so comes out in front; write a shorter one; or lay this aside where the size counts more than goes into the wood"
            ]
            * told,
        )
        for size, sentence, told in (
            ("3 × 12 mm", "Turn the screw eye into the back of the back.", 1),
            ("3 × 5 mm", "Turn the screw eye into the back of the back.", 0),
            ("3 × 12 mm", "Turn the screw eye into the top of the back.", 0),
        )
    ),
    *(
        Case(
            f"a bird of 37 × 34 mm that is {thick} thick, and {shape}",
            {
                FINISH: TINY[FINISH].replace(
                    "paints:\n",
                    f'  - {{name: bird, outline: "{outline}", at: "50,-30", thickness: {thick}, paint: sage, coats: 2}}\npaints:\n',
                ),
                STEPS: "1. Saw the back and the bird, and peg the bird on the back.\n",
            },
            *[
                f"{FINISH}:17:{56 + len(outline)}: advice: the part is 30 mm thick, and only 37 × 34 mm; look once more: should it be 3 mm?"
            ]
            * told,
        )
        for thick, shape, outline, told in (
            ("3 cm", "shaped", "0,10 20,0 37,12 20,34", 1),
            ("12 mm", "shaped", "0,10 20,0 37,12 20,34", 0),
            ("3 cm", "a block", "0,0 37,0 37,34 0,34", 0),
        )
    ),
    *(
        Case(
            f"{name} of 20 × 26 mm that is {thick} thick",
            {
                FINISH: TINY[FINISH].replace(
                    "paints:\n",
                    f'  - {{name: {name}, outline: "0,0 20,0 20,26 0,26", at: "50,-24", thickness: {thick}, paint: sage, coats: 2}}\npaints:\n',
                )
            }
            | {STEPS: f"1. Saw the back and the {name}, and peg the {name} on the back.\n"},
            *[
                f"{FINISH}:17:74: advice: the part is 30 mm thick, and only 20 × 26 mm; look once more: should it be 3 mm?"
            ]
            * told,
        )
        for name, thick, told in (("egg", "3 cm", 1), ("egg", "3 mm", 0), ("knob", "3 cm", 0))
    ),
    Case(
        "a paint that dries for days",
        {FINISH: ("dries_in: 1 h", "dries_in: 90 h")},
        f"{FINISH}:22:15: advice: 90 h is long for a paint until its next coat; look once more at the tin: should it be 90 min?",
    ),
    *(
        Case(
            f"a correction of row {row}",
            {
                PATTERN: (
                    "note: First issue.}",
                    f"note: First issue.}}\n  - {{date: 2026-11-26, note: In row {row} a mark was wrong.}}",
                )
            },
            *[
                f"{PATTERN}:28:30: advice: here stands 'row 63', and the chart has 2 rows; mend the number, or say what is meant"
            ]
            * told,
        )
        for row, told in ((63, 1), (2, 0))
    ),
    *(
        Case(
            f"a kind of glue: {name}",
            _bought(f"glue: [{{name: {name}, cures_in: 24 h, for: washers and magnets}}]")
            | {STEPS: "1. Saw the back, and glue it with the two-part glue.\n"},
        )
        for name in ("two-part glue for metal", "two-part glue")
    ),
    *(
        Case(
            f"a notice that tells of a day of release: {text}",
            {SERIES: ("text: The linen is back.", f"text: '{text}'")},
            *[
                f"{SERIES}:18:{45 + text.find('16')}: advice: here stands '16 January 2027', and the release is on 2027-01-15; mend the day here, or 'release'"
            ]
            * told,
        )
        for text, told in (
            ("The series comes out on 16 January 2027.", 1),
            ("The series comes out on 15 January 2027.", 0),
            ("The two come out together, both of them, on 16 January 2027.", 1),
            ("The first comes out soon, and the swap is on 16 January 2027.", 0),
            ("On 16 January 2027 we rest.", 0),
        )
    ),
    *(
        Case(
            f"{name} that is woven as {weave}",
            {
                CLOTH: TINY[CLOTH]
                .replace("Hopsack", name)
                .replace("weave: evenweave", f"weave: {weave}")
            },
            *[
                f"{CLOTH}:2:8: advice: '{name} 28' is woven as {weave}, by this line; write weave: {called}, or mend the name; or leave them, if it is called so"
            ]
            * bool(called),
        )
        for name, weave, called in (
            ("Fen Linen", "evenweave", "linen"),
            ("Fen Linen", "linen", ""),
            ("Fen Cloth", "linen", ""),
        )
    ),
    *(
        Case(
            f"{pieces} of which the steps speak as of one: {sentence}",
            _bought("hardware:", f"  - {{name: {name}, pieces: {pieces}, size: 3 × 12 mm}}")
            | {STEPS: f"1. Saw the back.\n2. {sentence}\n"},
            *[
                f"{FINISH}:28:{column}: advice: there are 2 of '{name}', and the steps speak of one: '{told}'; mend 'pieces' here, or the steps"
            ]
            * bool(told),
        )
        for name, pieces, sentence, column, told in (
            ("knob screw", 2, "Put the knob on with the knob screw.", 32, "the knob screw"),
            ("brass hook", 2, "Put it on with the brass hook.", 32, "the brass hook"),
            ("knob screw", 1, "Put the knob on with the knob screw.", 0, ""),
            ("knob screw", 2, "Put the knob on with a screw on each side of the screw.", 0, ""),
            ("knob screw", 2, "Put in the knob screws, the screw below last.", 0, ""),
        )
    ),
    *(
        Case(
            f"a series that is called {title} in its welcome",
            {
                "series/garden-year/welcome.md": f"Welcome to {title}.\n",
                SERIES: TINY[SERIES].replace("title: The Garden Year", "title: A Year of Beds"),
            },
            *[
                f"series/garden-year/welcome.md:1:12: advice: here stands '{title}', as the folder is called, and the title is 'A Year of Beds'; write that, if the title was changed; or mend the title"
            ]
            * told,
        )
        for title, told in (("Garden Year", 1), ("a garden year", 0), ("A Year of Beds", 0))
    ),
    *(
        Case(
            f"a series whose title has the words of its folder's name in another order: {told}",
            {
                "series/garden-year/welcome.md": f"Welcome to {told}.\n",
                SERIES: TINY[SERIES].replace("title: The Garden Year", "title: Years in a Garden"),
            },
            *[
                f"series/garden-year/welcome.md:1:12: advice: here stands '{told}', as the folder is called, and the title is 'Years in a Garden'; write that, if the title was changed; or mend the title"
            ]
            * (told == "Garden Year"),
        )
        for told in ("Garden Year", "Years in a Garden")
    ),
    *(
        Case(
            f"steps that are numbered {', '.join(numbers)}",
            {
                STEPS: "".join(
                    f"{number}. Saw the back{'!' * at}\n" for at, number in enumerate(numbers)
                )
            },
            *[f"{STEPS}:{told}"] * bool(told),
        )
        for numbers, told in (
            ("123", ""),
            ("111", ""),
            ("1223", ""),
            ("12312", ""),
            (
                "132",
                "2:1: advice: step 3 stands behind step 1, and is printed as 2; put them in order, or number them anew",
            ),
            (
                "134",
                "2:1: advice: step 3 stands behind step 1, and is printed as 2; put back what stood between them, or number them anew",
            ),
            (
                "2134",
                "2:1: advice: step 1 stands behind step 2, and is printed as 2; put them in order, or number them anew",
            ),
            (
                "3214",
                "2:1: advice: step 2 stands behind step 3, and is printed as 2; put them in order, or number them anew",
            ),
        )
    ),
    *(
        Case(
            f"a thread of another kind: {notes}",
            {NOTES: f"{notes}\n"},
            *[
                f"{NOTES}:1:{column}: advice: here stands '{told}', and the {works} worked in {own}; mend the thread here, or 'colour' in pattern.yaml"
            ]
            * bool(column),
        )
        for notes, column, told, works, own in (
            ("Put a French knot of brick (E2) above.", 0, "", "", ""),
            ("You may put a French knot of K4 peat above.", 0, "", "", ""),
            ("Backstitch the edge of the brick in K4 peat.", 0, "", "", ""),
            (
                "Backstitch the edge of the brick in 07 fern.",
                1,
                "Backstitch the edge of the brick",
                "backstitch of this chart is",
                "'K4 peat'",
            ),
            (
                "Put a French knot of K4 peat above.",
                14,
                "knot of K4 peat",
                "French knots of this chart are",
                "'E2 brick'",
            ),
            (
                "Last comes the backstitch in brick (E2).",
                16,
                "backstitch in brick (E2)",
                "backstitch of this chart is",
                "'K4 peat'",
            ),
            (
                "Backstitch the stem with one strand of brick.",
                1,
                "Backstitch the stem with one strand of …",
                "backstitch of this chart is",
                "'K4 peat'",
            ),
        )
    ),
    *(
        Case(
            f"knots of one colour, {told} in all",
            {
                PATTERN: ("beads:\n", '  - {colour: k, at: "1.5,1.5"}\nbeads:\n'),
                NOTES: f"Put a French knot in K4 peat on each frond, {told} in all.\n",
            },
            *[
                f"{NOTES}:1:45: advice: here stands '{told} in all', and the pattern has 1 in 'peat'; mend the number, or leave it out"
            ]
            * (told != 1),
        )
        for told in (1, 2)
    ),
    *(
        Case(
            f"knots, {told} in all",
            {NOTES: f"Put a French knot on each frond, {told} in all.\n"},
            *[
                f"{NOTES}:1:34: advice: here stands '{told} in all', and the pattern has 2; mend the number, or leave it out"
            ]
            * (told != 2),
        )
        for told in (1, 2, 4)
    ),
    *(
        Case(
            f"strands of backstitch, two in one thread set and one in the other: {thread}",
            {
                SERIES: TINY[SERIES].replace("strands: 2}", "strands: 2, backstitch_strands: 2}"),
                NOTES: f"Backstitch the rim{thread} with one strand.\n",
            },
            *[
                f"{NOTES}:1:{19 + len(thread) + 6}: advice: here stands 'one strand' for backstitch, worked with 2 for Moss Stranded; mend the number here, or 'backstitch_strands' in series.yaml"
            ]
            * told,
        )
        for thread, told in ((" in K4 peat", True), (" in 12 earth", False), ("", False))
    ),
    *(
        Case(
            f"strands of knots, {strands}, in a sentence that speaks of all behind a semicolon",
            {
                SERIES: TINY[SERIES].replace(
                    "strands: 2}", f"strands: 3, knot_strands: {strands}}}"
                ),
                CLOTH: TINY[CLOTH].replace("28", "22"),
                PATTERN: _ONE_SET,
                NOTES: "The drops are French knots in E2 brick, two strands; work all two last.\n",
            },
            *[
                f"{NOTES}:1:41: advice: here stands 'two strands' for knots, worked with 1 in this pattern; mend the number here, or 'knot_strands' in series.yaml"
            ]
            * (strands == 1),
        )
        for strands in (1, 2)
    ),
    *(
        Case(
            f"strands of knots of one thread set, or of the other: {words} of Spool Twelve",
            {
                SERIES: TINY[SERIES].replace("strands: 2}", "strands: 2, knot_strands: 2}"),
                NOTES: f"Knots have two strands of Moss Stranded, or {words} of Spool Twelve.\n",
            },
            *[
                f"{NOTES}:1:45: advice: here stands '{words} of Spool Twelve' for knots, worked with 1 for Spool Twelve; mend the number here, or 'knot_strands' in series.yaml"
            ]
            * told,
        )
        for words, told in (("one", 0), ("one strand", 0), ("two", 1), ("two strands", 1))
    ),
    *(
        Case(
            f"strands of crosses, as the notes tell them: {words}",
            {
                SERIES: TINY[SERIES].replace("strands: 2}", "strands: 3, knot_strands: 2}"),
                NOTES: f"{words}.\n",
                CLOTH: TINY[CLOTH].replace("28", "22"),
            },
            *[
                f"{NOTES}:1:{column}: advice: here stands 'two strands' for crosses, worked with 1 and 3 in this pattern; mend the number here, or 'strands' in series.yaml"
            ]
            * bool(column),
        )
        for words, column in (
            ("Use three strands for the crosses", 0),
            ("The knots want two strands, and crosses three", 0),
            ("Use two strands for the crosses", 5),
            (
                "Crosses want three strands of Moss Stranded, or one of Spool Twelve",
                0,
            ),
            ("Work the crosses in two strands and the knots in two", 21),
        )
    ),
    Case(
        "strands of backstitch between words for other work",
        {
            PATTERN: _ONE_SET,
            SERIES: _TWO_STRANDS,
            NOTES: "The line is backstitch in K4 peat, with 1 strand, and the knots are in E2 brick.\n",
        },
        f"{NOTES}:1:41: advice: here stands '1 strand' for backstitch, worked with 2 in this pattern; mend the number here, or 'backstitch_strands' in series.yaml",
    ),
    Case(
        "strands of lines, as people call backstitch",
        {
            PATTERN: _ONE_SET,
            SERIES: _TWO_STRANDS,
            NOTES: "Last come the lines, in one strand of peat, and the single French knot of brick in the eye.\n",
        },
        f"{NOTES}:1:25: advice: here stands 'one strand' for backstitch, worked with 2 in this pattern; mend the number here, or 'backstitch_strands' in series.yaml",
    ),
    Case(
        "strands of backstitch in a sentence that speaks of knots too",
        {
            PATTERN: _ONE_SET,
            SERIES: _TWO_STRANDS,
            NOTES: "The legs are backstitch with one strand, and the eye is a French knot.\n",
        },
        f"{NOTES}:1:30: advice: here stands 'one strand' for backstitch, worked with 2 in this pattern; mend the number here, or 'backstitch_strands' in series.yaml",
    ),
    Case(
        "notes of which a line was lost",
        {NOTES: "1. Begin where the fern uncurls.\n2. Then the pot.\n4. Last the soil.\n"},
        f"{NOTES}:3:1: advice: step 4 stands behind step 2, and is printed as 3; put back what stood between them, or number them anew",
    ),
    *(
        Case(
            f"a glue for {use}: {sentence}",
            _bought("glue:", f"  - {{name: {name}, cures_in: 24 h, for: {use}}}")
            | {STEPS: f"1. Saw the back.\n2. {sentence}\n"},
            *[
                f"{STEPS}:2:{column}: advice: the step glues {told}; add one to 'glue' there, or name this in its 'for'"
            ]
            * bool(column),
        )
        for name, use, sentence, column, told in (
            ("bond", "the wooden parts", "Glue the back on a rail.", 0, ""),
            ("wood glue", "the back", "Glue the back on a rail.", 0, ""),
            (
                "bond",
                "felt",
                "Glue the back on a rail.",
                13,
                "'back', and no glue in finish.yaml is for that: there 'bond' is for something else",
            ),
            ("bond", "felt", "Glue the felt on.", 0, ""),
            ("bond", "everything", "Glue the back on a rail.", 0, ""),
        )
    ),
    *(
        Case(
            f"four screws that a step shares out: {sentence}",
            _bought("hardware:", f"  - {{name: wood screw, pieces: {pieces}, size: 3 × 30 mm}}")
            | {STEPS: f"1. Saw the back.\n2. {sentence}\n"},
            *[
                f"{STEPS}:2:15: advice: the step says 'four screws', and of 'wood screw' there are 3 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml"
            ]
            * (pieces < 4),
        )
        for pieces, sentence in (
            (4, "Put in the four screws from below, two into the back and one into each post."),
            (
                4,
                "Put in the four screws: two into the back, one into the left and one into the right.",
            ),
            (
                3,
                "Put in the four screws from below, two of them into the back and two into the ends.",
            ),
        )
    ),
    *(
        Case(
            f"{pieces} screws of which one goes through each rail: {sentence}",
            {
                FINISH: (
                    TINY[FINISH]
                    + f"hardware:\n  - {{name: wood screw, pieces: {pieces}, size: 3 × 30 mm}}\n"
                ).replace(
                    "paints:\n",
                    "".join(
                        f'  - {{name: {side} rail, outline: "0,0 20,0 20,100 0,100", at: "{at},0", thickness: 6 mm, paint: sage, coats: 2}}\n'
                        for side, at in (("left", -20), ("right", 100))
                    )
                    + "paints:\n",
                ),
                STEPS: f"1. Saw the back and the rails.\n2. {sentence} Peg the rails to the back, and put in the other two screws.\n",
            },
            *[told] * bool(told),
        )
        for pieces, sentence, told in (
            (4, "Put one wood screw of 3 × 30 mm through each rail.", ""),
            (4, "Put one wood screw through each of the two rails into an end of it.", ""),
        )
    ),
    *(
        Case(
            f"plain words for what is not on the chart: {notes}",
            {
                PATTERN: TINY[PATTERN]
                .replace('backstitch:\n  - {colour: k, path: "1,1 4,1 4,2.5"}\n', "")
                .replace("french_knots:\n" + _KNOTS, ""),
                NOTES: f"{notes}\n",
            },
            *[
                f"{NOTES}:1:{column}: advice: here stands '{told}', and this pattern has no '{kind}'; take it out, or add '{kind}' to pattern.yaml"
            ]
            * bool(column),
        )
        for notes, column, told, kind in (
            ("Leave the soil and the lines until last.", 20, "the lines", "backstitch"),
            ("The outlines are worked last.", 1, "The outlines", "backstitch"),
            ("At the end the knots come.", 12, "the knots", "french_knots"),
            ("Mind the lines of the chart.", 0, "", ""),
            ("Hide the knots on the back.", 0, "", ""),
        )
    ),
    *(
        Case(
            f"a series of one pattern and one to come: {tagline}",
            {SERIES: TINY[SERIES].replace("tagline: Small patterns", f"tagline: {tagline}")},
            *[
                f"{SERIES}:2:10: advice: here stands '{tagline}', and the series has 2 patterns; mend the number"
            ]
            * told,
        )
        for tagline, told in (("Six patterns", 1), ("Two small patterns", 0), ("Two patterns", 0))
    ),
    *(
        Case(
            f"two screws of 3 × 30 mm: {sentence}",
            _bought("hardware:", "  - {name: wood screw, pieces: 2, size: 3 × 30 mm}")
            | {STEPS: f"1. Saw the back.\n2. {sentence}\n"},
            *[f"{STEPS}:2:{column}: advice: the step says {told}"] * bool(column),
        )
        for sentence, column, told in (
            ("Put in the two 3 × 30 mm screws.", 0, ""),
            ("Put in the two screws of 3 × 30 mm.", 0, ""),
            (
                "Put in the two 3 × 40 mm screws.",
                19,
                "'3 × 40 mm screws', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Put in the two 4 × 30 mm wood screws.",
                19,
                "'4 × 30 mm wood screws', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Put in the two 3.5 × 30 mm screws.",
                19,
                "'3.5 × 30 mm screws', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Put in the two screws, 40 mm long.",
                19,
                "'screws, 40 mm', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Put in the two screws (3 × 40 mm).",
                19,
                "'screws (3 × 40 mm', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Put in the two screws, 5 × 30 mm.",
                19,
                "'screws, 5 × 30 mm', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Put in the two screws of 3 × 40 mm.",
                19,
                "'screws of 3 × 40 mm', and by finish.yaml 'wood screw' has the size '3 × 30 mm'; mend one of the two",
            ),
            (
                "Drive one of the three screws into the back.",
                10,
                "'one of the three screws', and of 'wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
            ),
            (
                "Put in the three 3 × 30 mm screws.",
                15,
                "'three 3 × 30 mm screws', and of 'wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
            ),
        )
    ),
    Case(
        "a paint that dries in minutes by the steps, and another by its tin",
        {
            FINISH: TINY[FINISH].replace(
                "paints:\n",
                'paints:\n  - {name: cress, hex: "#50783c", put_on_with: brush, covers: 10 m2 per litre, dries_in: 3 h, tin: 100 ml}\n',
            ),
            STEPS: "1. Saw the back.\n2. Let a coat of cress dry 3 minutes and a coat of sage 1 hour.\n",
        },
        f"{STEPS}:2:28: advice: the step says '3 minutes', and 'cress' takes 3 h by its 'dries_in' in finish.yaml; mend one of the two; what the label says counts",
    ),
    *(
        Case(
            f"times of two paints: {sentence}",
            {
                FINISH: ("dries_in: 1 h", "dries_in: 3 h"),
                STEPS: f"1. Saw the back.\n2. {sentence}\n",
            },
            *[
                f"{STEPS}:2:22: advice: the step says '2 hours', and 'sage' takes 3 h by its 'dries_in' in finish.yaml; mend one of the two; what the label says counts"
            ]
            * told,
        )
        for sentence, told in (
            ("Let each coat dry 2 hours, the sage 3 hours.", 0),
            ("Let each coat dry 2 hours, the sage too.", 1),
        )
    ),
    *(
        Case(
            f"notes that count the strands of backstitch: {notes}",
            {
                PATTERN: _ONE_SET.replace("french_knots:\n" + _KNOTS, ""),
                SERIES: _TWO_STRANDS,
                NOTES: f"{notes}\n",
            },
            *[
                f"{NOTES}:1:{column}: advice: here stands '1 strand' for backstitch, worked with 2 in this pattern; mend the number here, or 'backstitch_strands' in series.yaml"
            ]
            * bool(column),
        )
        for notes, column in (
            ("Backstitch the rim and the left edge, with 1 strand.", 44),
            ("Backstitch the rim with 2 strands.", 0),
            ("Backstitch the rim with one strand left over.", 0),
        )
    ),
    *(
        Case(
            f"a title beside the name of its folder: {title}",
            {SERIES: ("title: The Garden Year\n", f"title: {title}\n")},
            *[
                f"{SERIES}:1:8: advice: the name '{title}' and that of its folder, 'garden-year', are spelt nearly alike; mend the one that is wrong"
            ]
            * told,
        )
        for title, told in (
            ("Gadren Year", 1),
            ("The Gadren Year", 1),
            ("Garnet Year", 0),
            ("Gárden Year", 0),
        )
    ),
    *(
        Case(
            f"a shop of two patterns by two names: {name}",
            {
                path: text.replace("by-fern", "by-ivy").replace("Alder's counter", name)
                if "ivy" in path and isinstance(text, str)
                else text
                for path, text in TWO_PATTERNS.items()
            },
            *[
                f"series/garden-year/ivy/pattern.yaml:25:33: advice: the shop is called '{name}' here and 'Alder's counter' in another pattern, with the same address; mend the one that is wrong"
            ]
            * told,
        )
        for name, told in (("Alder's couter", 1), ("Alder's counter", 0), ("Garden Post", 0))
    ),
    *(
        Case(
            f"backstitch along {path}",
            {
                CHART: "rrbb......\n" + "kk........\n" * 30 + "kkkkkkkkkk\n",
                PATTERN: TINY[PATTERN].replace('path: "1,1 4,1 4,2.5"', f'path: "{path}"'),
            },
            *[
                f"{PATTERN}:13:5: advice: this line runs from {line}, and {others}; {slip}mend the point that is wrong, or lay this aside in pattern.yaml"
            ]
            * bool(line),
        )
        for path, line, others, slip in (
            ("1,1 4,1 4,2 6,2 6,30", "", "", ""),
            ("1,1 4,1 4,2 9,7", "", "", ""),
            ("1,1 4,1 4,2 6,2 8,11", "", "", ""),
            ("1,1 3,30", "", "", ""),
            (
                "1,1 4,1 4,2 6,2 8,30",
                "6,2 straight to 8,30, over 28 stitches",
                "no other over more than 3",
                "",
            ),
            (
                "1,1 4,1 4,2 6,2 8,31",
                "6,2 straight to 8,31, over 29 stitches",
                "no other over more than 3",
                "should 8,31 be 8,13? Else ",
            ),
            (
                "1,1 4,1 4,2 6,2 8,22 8,3 6,3",
                "6,2 straight to 8,22, over 20 stitches",
                "no other over more than 3",
                "",
            ),
            # Beside a long level or upright line, where a figure more or exchanged gives a short one.
            (
                "1,2 2,1 1,1 1,28 8,28 8,29 9,2",
                "8,29 straight to 9,2, over 27 stitches",
                "no other slanting one over more than 1",
                "",
            ),
            ("1,2 2,1 1,1 1,28 2,28 2,29 4,14", "", "", ""),
            # From corner to corner of its stitches.
            (
                "1,1 1,30 2,30 11,32 2,23",
                "11,32 straight to 2,23, over 9 stitches",
                "no other slants",
                "",
            ),
            ("1,1 1,30 2,30 4,31 9,31 9,15 2,15", "", "", ""),
        )
    ),
    *(
        Case(
            f"a line {path} on a chart that was redrawn",
            {
                PATTERN: TINY[PATTERN].replace(
                    '"1,1 4,1 4,2.5"', f'"1,1 4,1 4,2.5"}}\n  - {{colour: k, path: "{path}"'
                ),
                CHART: "# A fern\nrrbb......\nrk........\n..........\n..........\n",
            },
            *[
                f"{PATTERN}:14:5: advice: this line of 'k' goes round bare cloth, and touches no stitch; mend 'path', or the chart there, or take the line out; or lay this aside in pattern.yaml"
            ]
            * told,
        )
        for path, told in (
            ("7,3 9,3 9,4 7,4 7,3", 1),
            ("7,3 9,3 9,4 7,4", 0),
            ("5,1 9,1 9,4 5,4 5,1", 0),
        )
    ),
    *(
        Case(
            f"French knots in two entries, the second at {at}",
            {
                PATTERN: TINY[PATTERN].replace(
                    'at: "2.5,2.5 3,3"', f'at: "2.5,2.5 3,3 1.5,1.5"}}\n  - {{colour: r, at: "{at}"'
                ),
                CHART: "# A fern\nrrbb......\nrk........\n..........\n",
            },
            *[
                f"{PATTERN}:16:22: advice: these 2 French knots of 'r' have bare cloth all round them, and the other 3 lie on stitches; mend 'at', or the chart there; or lay this aside in pattern.yaml"
            ]
            * told,
        )
        for at, told in (("8.5,1.5 9.5,2.5", 1), ("8.5,1.5 3.5,1.5 9.5,2.5", 0))
    ),
    *(
        Case(
            f"French knots at {at}",
            {
                PATTERN: TINY[PATTERN].replace('at: "2.5,2.5 3,3"', f'at: "{at}"'),
                CHART: "# A fern\nrrbb......\nrk........\n..........\n",
            },
            *[
                f"{PATTERN}:15:{column}: advice: this French knot of 'r' has bare cloth all round it, and the other 2 lie on stitches; mend 'at', or the chart there; or lay this aside in pattern.yaml"
            ]
            * bool(column),
        )
        for at, column in (
            ("2.5,2.5 3,3 8.5,2.5", 34),
            ("2.5,2.5 8.5,2.5", 0),
            ("2.5,2.5 8.5,1.5 9.5,2.5", 0),
            ("2.5,2.5 3,3 5.5,2.5", 0),
            ("1.5,1.5 2.5,1.5 5.5,1.5", 38),
            ("1.5,1.5 2,3 5.5,1.5", 0),
        )
    ),
    *(
        Case(
            f"a welcome that names {name}",
            {"series/garden-year/welcome.md": f"Drawn by {name} in a shed.\n"},
            *[
                f"series/garden-year/welcome.md:1:10: advice: here stands '{name}', and in the credits or among the designers '{near}'; look once more which of the two is right"
            ]
            * bool(near),
        )
        for name, near in (
            ("Wren Oakley", "Wren Alder"),
            ("Wren Aldr", "Wren Alder"),
            ("Wren Alder", ""),
            ("Tansy Oakley", ""),
        )
    ),
)
