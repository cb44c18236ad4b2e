"""What steps, story and notes tell otherwise than the piece and the pattern have it, and what is said of that."""

from tests.content_builder import FINISH, PATTERN, TINY
from tests.wrong_input_case import Case

FERN = PATTERN.rpartition("/")[0]
MOSS = "threads/moss.yaml"
STEPS, STORY, NOTES = "finishes/shelf/steps.md", f"{FERN}/story.md", f"{FERN}/stitching.md"
WELCOME = "series/garden-year/welcome.md"
RAIL = '  - {name: rail, outline: "0,0 120,0 120,20 0,20", at: "0,118", thickness: 12 mm, paint: sage, coats: 2}\n'

KNOB = '  - {name: knob, outline: "0,0 20,0 20,20 0,20", at: "50,-20", thickness: 12 mm, paint: sage, coats: 2}\n'
_CRESS = '  - {name: cress, hex: "#50783c", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n'


def steps(*sentences: str) -> dict[str, str]:
    """Steps that speak of the back first, of which it consists."""
    told = ("Saw the back.", *sentences)
    return {STEPS: "".join(f"{number}. {one}\n" for number, one in enumerate(told, 1))}


def piece(old: str, new: str) -> dict[str, str]:
    return {FINISH: TINY[FINISH].replace(old, new)}


def screws(pieces: int) -> dict[str, str]:
    entry = f"  - {{name: wood screw, pieces: {pieces}, size: 3 × 16 mm}}\n"
    return {FINISH: f"{TINY[FINISH]}hardware:\n{entry}"}


def and_parts(parts: str) -> dict[str, str]:
    """Parts that are listed after the back."""
    return piece("paints:\n", f"{parts}paints:\n")


def of_step(column: int, wrong: str) -> str:
    return f"{STEPS}:2:{column}: advice: the step says {wrong}"


_LENGTHS = (
    ("Turn 30 mm to the back and lace it.", 4, "'Turn 30 mm'", "'fold_over' is 20 mm"),
    (
        "Cut the card 1 cm larger on all sides than the design.",
        17,
        "'1 cm larger on all sides than the design'",
        "'border' is 6 mm",
    ),
    (
        "Cut the wadding 4 mm smaller on every side, cover the back, sew on the trim.",
        12,
        "'wadding 4 mm smaller'",
        "'wadding_inset' is 1 mm",
    ),
    (
        "Let the ends overlap by 30 mm.",
        17,
        "'overlap by 30 mm'",
        "'overlap' of the trim is 20 mm",
    ),
    (
        "Glue in the 8 mm magnets, the washers opposite.",
        16,
        "'8 mm magnets'",
        "a magnet is 10 mm across and 2 mm thick",
    ),
    (
        "Trim the cloth to the fold-over of 30 mm and lace it, the backing over it.",
        26,
        "'fold-over of 30 mm'",
        "'fold_over' is 20 mm",
    ),
    (
        "Stick the wadding to the card, 3 mm inside its edge, cover the back, sew on the trim.",
        14,
        "'wadding to the card, 3 mm inside'",
        "'wadding_inset' is 1 mm",
    ),
    (
        "Glue in the magnets, 12 mm across, the washers opposite.",
        16,
        "'magnets, 12 mm'",
        "a magnet is 10 mm across and 2 mm thick",
    ),
    ("Plane the back until it is 5 mm thick.", 31, "'5 mm thick'", "'back' is 6 mm thick"),
    ("Take 9 mm birch plywood.", 9, "'9 mm birch plywood'", "its parts are 6 mm thick"),
)
_GLUE = {
    FINISH: TINY[FINISH] + "glue: [{name: wood glue, cures_in: 24 h, for: the wooden parts}]\n"
}

TWO_RAILS = and_parts(
    RAIL.replace("name: rail", "name: top rail").replace("0,118", "0,-18")
    + RAIL.replace("name: rail", "name: lower rail")
)
TWO_RAILS[FINISH] = str(TWO_RAILS[FINISH]).replace(
    "0,0 100,0 100,100 0,100", "10,0 110,0 110,100 10,100", 1
)

CASES = (
    *(
        Case(
            f"a length of which a step tells otherwise: {sentence}",
            _GLUE | steps(sentence),
            of_step(column, f"{said}, and by finish.yaml {own}; mend one of the two"),
        )
        for sentence, column, said, own in _LENGTHS
    ),
    Case(
        "lengths that steps tell as the piece has them, or of other things",
        _GLUE
        | steps(
            "Turn 20 mm to the back, and the backing 15 mm under.",
            "Cut the card 6 mm larger on all sides than the design.",
            "Let the ends of the trim overlap by 2 cm.",
            "Glue in the 10 mm magnets, 15 mm from the edge, the washers opposite.",
            "Plane the back until it is 6 mm thick, of 6 mm plywood; a 1/4 in board will do.",
            "Use card 2 mm thick, and a 20 mm wood screw as a peg.",
        ),
    ),
    Case(
        "a trim as wide as another",
        piece("overlap: 20 mm}", "overlap: 20 mm, width: 8 mm}")
        | steps("Pin on the trim, 12 mm wide."),
        of_step(
            15,
            "'trim, 12 mm wide', and by finish.yaml 'width' of the trim is 8 mm; mend one of the two",
        ),
    ),
    Case(
        "a screw of another length",
        screws(2) | steps("Drive in two 25 mm wood screws."),
        of_step(
            17,
            "'25 mm wood screws', and by finish.yaml 'wood screw' has the size '3 × 16 mm'; mend one of the two",
        ),
    ),
    Case(
        "two screws and two more, of three",
        screws(3) | steps("Put two screws through the top and two through the foot."),
        of_step(
            8,
            "'two screws and more, 4 in all', and of 'wood screw' there are 3 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
        ),
    ),
    Case(
        "two screws, and in another step two through another part, of three",
        screws(3) | steps("Put two screws through the top.", "Put two screws through the foot."),
        f"{STEPS}:3:8: advice: the step speaks of 'two screws' more, which makes 4, and of 'wood screw' there are 3 to buy; mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "the same two screws of three steps",
        screws(2)
        | steps(
            "Bore two holes for two screws.",
            "Put two screws through the top.",
            "Drive the two screws into the foot.",
        ),
    ),
    Case(
        "a rail and a back that are rectangles, and a roof, sawn by templates",
        and_parts(
            '  - {name: roof, outline: "0,20 25,0 50,20", at: "25,-20", thickness: 6 mm, paint: sage, coats: 2}\n'
            '  - {name: rail, outline: "0,0 120,0 120,10 0,10", at: "0,100", thickness: 6 mm, paint: sage, coats: 2}\n'
        )
        | steps("Saw the roof, the back and the rail by their templates, and paint all three."),
        f"{STEPS}:2:22: advice: the step saws 'back' and 'rail' by a template, and there is none: by finish.yaml they are rectangles; say that the measures are meant, or mend the outline there",
    ),
    Case(
        "two coats on the one of two parts that has one",
        and_parts(RAIL.replace("coats: 2", "coats: 1"))
        | steps("Brush two coats of sage on the back, and then two coats of sage on the rail."),
        f"{STEPS}:2:50: advice: here stands 'two coats of sage on the rail', and in finish.yaml 'rail' has 1; mend the number here, or 'coats' there",
    ),
    Case(
        "a part with two, of coats of which it has one",
        and_parts(RAIL.replace("coats: 2", "coats: 1"))
        | steps("Paint the back with two coats of sage, and the rail with two."),
        f"{STEPS}:2:51: advice: here stands 'rail with two', and in finish.yaml 'rail' has 1; mend the number here, or 'coats' there",
    ),
    Case(
        "coats of a paint that is called otherwise",
        steps("Give the back two coats of saga, and let each dry."),
        of_step(
            18,
            "'two coats of saga', and no paint of finish.yaml is called 'saga'; did you mean 'sage'? Else add it under 'paints' there, and to what it is put on",
        ),
    ),
    Case(
        "a part in a paint that is called otherwise",
        steps("Paint the edges first, then the back in sege."),
        of_step(
            36,
            "'back in sege', and no paint of finish.yaml is called 'sege'; did you mean 'sage'? Else add it under 'paints' there, and to what it is put on",
        ),
    ),
    Case(
        "coats of what nobody is told to buy, and of paint, and a part in thin layers",
        steps(
            "Put on two coats of paint, the back in thin layers.", "Rub in two coats of tea, cold."
        ),
        f"{STEPS}:3:11: advice: the step says 'two coats of tea', and no paint of finish.yaml is called 'tea'; mend the name, or add it under 'paints' there, and to what it is put on",
    ),
    Case(
        "two pins of one hanger, and a hanger more",
        {
            FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: flat hanger with two pins, pieces: 1, size: 40 mm}}\n"
        }
        | steps("Fix the flat hanger with its two pins.", "Add two hangers."),
        f"{STEPS}:3:8: advice: the step says 'two hangers', and of 'flat hanger with two pins' there is 1 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
    ),
    Case(
        "a coat that dries too soon",
        steps("Wait half an hour between coats."),
        of_step(
            9,
            "'half an hour', and 'sage' takes 1 h by its 'dries_in' in finish.yaml; mend one of the two; what the label says counts",
        ),
    ),
    Case(
        "glue that cures too soon, and times that are long enough or those of a clamp",
        _GLUE
        | steps(
            "Let the wood glue dry for 2 hours.",
            "Clamp the wood glue until dry, 1 hour.",
            "Wait two hours between coats.",
        ),
        of_step(
            30,
            "'2 hours', and 'wood glue' takes 24 h by its 'cures_in' in finish.yaml; mend one of the two; what the label says counts",
        ),
    ),
    *(
        Case(
            f"wood glue that is left for {hours} hours, two sentences later",
            _GLUE | steps(f"Peg it with wood glue. Press it well. Leave it for {hours} hours."),
            *[
                of_step(
                    55,
                    f"'{hours} hours', and 'wood glue' takes 24 h by its 'cures_in' in finish.yaml; mend one of the two; what the label says counts",
                )
            ]
            * (hours < 24),
        )
        for hours in (12, 24)
    ),
    *(
        Case(
            f"glue of which the step before tells what it is for, that cures for {hours} hours",
            {
                FINISH: f"{TINY[FINISH]}glue:\n  - {{name: wood glue, cures_in: 12 h, for: the wooden parts}}\n"
                "  - {name: metal glue, cures_in: 24 h, for: washers and magnets}\n"
            }
            | steps(
                f"Glue the magnets and washers to the back. Let the glue cure for {hours} hours."
            ),
            *[
                of_step(
                    68,
                    f"'{hours} hours', and 'metal glue' takes 24 h by its 'cures_in' in finish.yaml; mend one of the two; what the label says counts",
                )
            ]
            * (hours < 24),
        )
        for hours in (12, 24)
    ),
    Case(
        "a trim of another kind",
        steps("Pin the straight trim round it."),
        of_step(
            12,
            "'straight trim', and the 'kind' of the trim in finish.yaml is 'gathered'; mend one of the two",
        ),
    ),
    Case(
        "brushes washed in what does not clean them",
        steps("Clean your brush with white spirit."),
        of_step(
            4,
            "'Clean your brush with white spirit', and by 'cleaned_with' in finish.yaml every paint wants 'water'; mend one of the two; what the tin says counts",
        ),
    ),
    Case(
        "a glue of another kind",
        _GLUE | steps("Glue the felt on with hot glue, and the back with wood glue."),
        f"{STEPS}:2:26: advice: here stands 'hot glue', and no glue in finish.yaml is called so; write 'wood glue', or add it to 'glue' there",
    ),
    *(
        Case(
            f"screws that steps tell of in two goes: {pieces}",
            screws(pieces)
            | {
                STEPS: "1. Saw the back.\n2. Put in two of the wood screws from behind, and the other two screws below.\n"
            },
            *[
                f"{STEPS}:2:61: advice: the steps tell of 'the other two screws, 4 in all' alone, and of 'wood screw' there are 6 to buy; mend the number and the places here, or 'pieces' in finish.yaml, or tell what the others are for"
            ]
            * told,
        )
        for pieces, told in ((6, 1), (4, 0))
    ),
    *(
        Case(
            f"screws into each of two posts: {sentence}",
            {
                FINISH: screws(4)[FINISH].replace(
                    "paints:\n",
                    RAIL.replace("rail", "upper post")
                    + RAIL.replace("rail", "lower post").replace("0,118", "0,130")
                    + "paints:\n",
                )
            }
            | {STEPS: f"1. Saw all parts: the back and the posts.\n2. {sentence}\n"},
            *[
                of_step(
                    column,
                    f"'{told}', and of 'wood screw' there are 4 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
                )
            ]
            * bool(column),
        )
        for sentence, column, told in (
            (
                "Put three screws through it into each post.",
                8,
                "three into each post, 6 in all",
            ),
            (
                "Put in the four screws from below, three into each post.",
                15,
                "three into each post, 6 in all",
            ),
            ("Put in the four screws from below, two into each post.", 0, ""),
            ("Put two screws into each post.", 0, ""),
        )
    ),
    *(
        Case(
            f"more pieces of a part than the steps have: {sentence}",
            {
                FINISH: TINY[FINISH].replace(
                    "paints:\n", RAIL.replace("12 mm", "12 mm, pieces: 3") + "paints:\n"
                )
            }
            | {STEPS: f"1. Saw all parts: the back and the rails.\n2. {sentence}\n"},
            *[
                of_step(
                    column,
                    f"'{told}', and of parts called 'rail' there are 3 in finish.yaml; mend the number here, or the parts there",
                )
            ]
            * bool(column),
        )
        for sentence, column, told in (
            ("Peg both rails below the back.", 8, "both rails"),
            ("Peg the two rails below the back.", 12, "two rails"),
            ("Peg two rails below the back.", 0, ""),
            ("Peg the three rails below the back.", 0, ""),
        )
    ),
    Case(
        "more screws of one kind than there are, and enough of two kinds",
        {
            FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: wood screw, pieces: 2, size: 3 × 16 mm}}\n  - {{name: long wood screw, pieces: 2, size: 3 × 40 mm}}\n"
        }
        | steps("Put in the two wood screws, then the three long wood screws."),
        of_step(
            41,
            "'three long wood screws', and of 'long wood screw' there are 2 to buy; mend the number here, or 'pieces' under 'hardware' in finish.yaml",
        ),
    ),
    Case(
        "more parts in all than the piece has",
        steps("Paint all three parts."),
        of_step(
            14,
            "'three parts', and of parts there is 1 in finish.yaml; mend the number here, or the parts there",
        ),
    ),
    Case(
        "fewer parts painted than the piece has",
        {
            FINISH: TINY[FINISH].replace(
                "paints:\n",
                RAIL.replace("rail", "foot")
                .replace("0,118", "0,95")
                .replace("120,0 120,20", "50,0 50,20")
                + RAIL
                + "paints:\n",
            )
        }
        | {STEPS: "1. Saw the back, the rail and the foot.\n2. Paint both parts.\n"},
        f"{STEPS}:2:10: advice: the step says 'both parts', and of parts there are 3 in finish.yaml; mend the number here, or the parts there",
    ),
    *(
        Case(
            f"three parts of which one is there twice: {verb}",
            {
                FINISH: TINY[FINISH].replace(
                    "paints:\n",
                    RAIL.replace("12 mm", "12 mm, pieces: 2") + KNOB + "paints:\n",
                ),
                STEPS: f"1. {verb} the three parts: the back, the rails and the knob.\n",
            },
            *[
                f"{STEPS}:1:{len(verb) + 9}: advice: the step says 'three parts', and of parts there are 4 in finish.yaml; mend the number here, or the parts there"
            ]
            * told,
        )
        for verb, told in (("Saw", True), ("Paint", False))
    ),
    Case(
        "two feet of one",
        {FINISH: TINY[FINISH].replace("paints:\n", RAIL.replace("rail", "foot") + "paints:\n")}
        | steps("Peg the two feet below the back."),
        f"{STEPS}:2:12: advice: the step says 'two feet', and of parts called 'foot' there is 1 in finish.yaml; mend the number here, or the parts there",
    ),
    *(
        Case(
            f"a part with the paint of another: {sentence}",
            {
                FINISH: TINY[FINISH]
                .replace("paints:\n", RAIL.replace("paint: sage", "paint: cress") + "paints:\n")
                .replace("trim:", _CRESS + "trim:")
            }
            | steps("Peg on the rail.", sentence),
            f"{STEPS}:3:{column}: advice: here stands '{said}', and in finish.yaml 'rail' is painted with 'cress'; name that here, or mend 'paint' there",
        )
        for sentence, column, said in (
            ("Give the rail two coats of sage.", 13, "rail two coats of sage"),
            ("The rail takes three coats of sage.", 8, "rail takes three coats of sage"),
            ("Paint the rail twice in sage.", 14, "rail twice in sage"),
            ("The rail is painted with the sage.", 8, "rail is painted with the sage"),
        )
    ),
    Case(
        "a part put behind the one that it is listed after",
        and_parts(RAIL) | steps("Peg the rail behind the lower edge of the back."),
        f"{STEPS}:2:17: advice: the step puts 'rail' behind 'back', and finish.yaml lists it after that, from the back to the front; mend the word, or let the two change places in the list of parts",
    ),
    Case(
        "a part put before the one that it is listed after",
        and_parts(RAIL) | steps("Peg the rail in front of the lower edge of the back."),
    ),
    Case(
        "a part put above the one that it stands below",
        and_parts(RAIL) | steps("Peg the rail above the back."),
        f"{STEPS}:2:17: advice: the step puts 'rail' above 'back', and by 'at' in finish.yaml it stands below that; mend the word, or the 'at' of one of the two there",
    ),
    Case(
        "a part put where it stands, and screwed on from another side",
        and_parts(RAIL) | steps("Peg the rail below the back, from above the back."),
    ),
    *(
        Case(
            f"a joint that is none: {sentence}",
            and_parts(RAIL + KNOB)
            | {STEPS: f"1. Saw the back, the rail and the knob.\n2. {sentence}\n"},
            f"{STEPS}:2:{column}: advice: the step {wrong}",
        )
        for sentence, column, wrong in (
            (
                "Peg the rail on the rail.",
                12,
                "joins 'rail' to itself; name the part that is meant in one of the two places",
            ),
            (
                "Peg the knob on the rail.",
                12,
                "joins 'knob' to 'rail', and in finish.yaml the two, at 50,-20 and 0,118, stand 118 mm apart; name the part that is meant, or mend the 'at' of one of the two there",
            ),
            (
                "Screw it through the knob into the rail.",
                25,
                "joins 'knob' to 'rail', and in finish.yaml the two, at 50,-20 and 0,118, stand 118 mm apart; name the part that is meant, or mend the 'at' of one of the two there",
            ),
            (
                "Peg the rail on the upper edge of the back.",
                12,
                "puts 'rail' at the upper edge of 'back', and by 'at' in finish.yaml it stands 118 mm below that; mend the word, or the 'at' of one of the two there",
            ),
            (
                "Peg the knob on the upper edge of the back and the rail on its upper edge.",
                55,
                "puts 'rail' at the upper edge of 'back', and by 'at' in finish.yaml it stands 118 mm below that; mend the word, or the 'at' of one of the two there",
            ),
            (
                "Peg the rail across the rail.",
                12,
                "joins 'rail' to itself; name the part that is meant in one of the two places",
            ),
            (
                "Peg the rail on the back, in its upper left corner.",
                12,
                "puts 'rail' at the upper edge of 'back', and by 'at' in finish.yaml it stands 118 mm below that; mend the word, or the 'at' of one of the two there",
            ),
            (
                "Peg the back to the front of the rail.",
                12,
                "puts 'back' on the front of 'rail', and finish.yaml lists it before that, from the back to the front; mend the word, or let the two change places in the list of parts",
            ),
            (
                "Press the magnets into the knob, and stick the washers on.",
                31,
                "puts the magnets on 'knob', and the panel, with all their places, lies on 'back'; name that part here, or mend the outline of the panel",
            ),
        )
    ),
    *(
        Case(
            f"a slow paint of which its own words tell {hours} h, beside a fast one",
            {
                FINISH: TINY[FINISH]
                .replace("paints:\n", RAIL.replace("paint: sage", "paint: cress") + "paints:\n")
                .replace("dries_in: 1 h", "dries_in: 3 h")
                .replace("trim:", _CRESS + "trim:")
            }
            | steps(
                "Peg on the rail.",
                f"Paint the back sage and the rail cress, two coats each, and let each coat of sage dry for {hours} h.",
            ),
            *[
                f"{STEPS}:3:94: advice: the step says '2 h', and 'sage' takes 3 h by its 'dries_in' in finish.yaml; mend one of the two; what the label says counts"
            ]
            * (hours < 3),
        )
        for hours in (2, 3)
    ),
    Case(
        "coats of a part and a paint that only another part has of another paint",
        {
            FINISH: TINY[FINISH]
            .replace("paints:\n", RAIL.replace("sage, coats: 2", "cress, coats: 3") + "paints:\n")
            .replace("trim:", _CRESS + "trim:")
        }
        | steps("Peg on the rail.", "Give the back three coats of sage."),
        f"{STEPS}:3:13: advice: here stands 'back three coats', and in finish.yaml 'back' has 2; mend the number here, or 'coats' there",
    ),
    Case(
        "a part painted three times",
        steps("Paint the back three times in sage; turn the back twice."),
        f"{STEPS}:2:14: advice: here stands 'back three times', and in finish.yaml 'back' has 2; mend the number here, or 'coats' there",
    ),
    Case(
        "coats that are listed for each part, and those of one other than it has",
        and_parts(RAIL + KNOB)
        | {
            STEPS: "1. Saw the back, the rail and the knob.\n2. Paint them: two coats for the back, the knob and three for the rail.\n"
        },
        f"{STEPS}:2:67: advice: here stands 'three for rail', and in finish.yaml 'rail' has 2; mend the number here, or 'coats' there",
    ),
    Case(
        "joints as the piece has them",
        and_parts(RAIL + KNOB)
        | {
            STEPS: "1. Saw the back, the rail and the knob.\n"
            "2. Peg the knob on the upper edge of the back and the rail on its lower edge.\n"
            "3. Screw it through the rail into the back, and the rail to the front of the back.\n"
            "4. Press the magnets into the back, and stick the washers on.\n"
        },
    ),
    Case(
        "a part and that part again",
        and_parts(RAIL + KNOB)
        | {STEPS: "1. Saw the back, the rail and the knob.\n2. Paint the rail and the rail.\n"},
        f"{STEPS}:2:27: advice: the step names 'rail' twice; name each part once",
    ),
    Case(
        "a part that is sawn twice, and another not at all",
        and_parts(RAIL + KNOB)
        | {STEPS: "1. Saw the back, the rail and the back.\n2. Peg the knob on.\n"},
        f"{STEPS}:1:35: advice: the step names 'back' twice, and 'knob' not at all; name each part once",
    ),
    Case(
        "a part that is sawn in a sentence of its own, and another named twice in the next",
        and_parts(RAIL + KNOB)
        | {
            STEPS: "1. Saw the back. Saw the rail and the knob; round the corners of the knob, or the rail.\n"
        },
    ),
    *(
        Case(
            f"a rail of {wide} mm, and {told} mm told of each",
            and_parts(RAIL.replace("0,0 120,0 120,20 0,20", f"0,0 {wide},0 {wide},20 0,20"))
            | {STEPS: "1. Saw both the back and the rail from wood, 120 mm wide each.\n"},
            *[
                f"{STEPS}:1:46: advice: the step says '120 mm wide', and by finish.yaml 'rail' is 118 × 20 mm and 12 mm thick; mend one of the two"
            ]
            * (wide != told),
        )
        for wide, told in ((120, 120), (118, 120))
    ),
    *(
        Case(
            f"a back {words}",
            and_parts(RAIL)
            | {STEPS: f"1. Saw two parts from wood: the back {words}. Smooth all edges.\n"},
            f"{STEPS}:1:%d: advice: the step says '{told}', and by finish.yaml {own}; mend one of the two"
            % (27 + len("the back") + words.index(told) + 3),
        )
        for words, told, own in (
            (
                "itself 9 mm thick, the rail 12 mm",
                "9 mm thick",
                "'back' is 120 × 120 mm and 6 mm thick",
            ),
            (
                "itself 6 mm thick, the rail 10 mm",
                "10 mm",
                "'rail' is 120 × 20 mm and 12 mm thick",
            ),
        )
    ),
    Case(
        "three other parts in another paint",
        {
            FINISH: TINY[FINISH]
            .replace("paints:\n", RAIL.replace("sage", "cress") + "paints:\n")
            .replace("trim:", _CRESS + "trim:")
        }
        | {
            STEPS: "1. Saw the back and the rail.\n2. Paint the back with two coats of sage and the other part with two coats of cress.\n"
        },
    ),
    Case(
        "magnets of a piece that has none, in its steps and in a welcome",
        {
            FINISH: TINY[FINISH].replace(
                "magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}\n"
                "cautions: [small magnets, dust]",
                "cautions: [dust]",
            ),
            STEPS: "1. Saw the back and let four magnets in.\n2. Stick the washers to the card.\n",
            "series/garden-year/welcome.md": "It is a shelf. Four magnets hold the picture.\n",
        },
        f"{STEPS}:1:30: advice: here stands 'magnets', and this piece has no magnets; take that out; so too line 2; or add a line, for example magnets: {{pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}}",
        "series/garden-year/welcome.md:1:16: advice: here stands 'Four magnets', and 'The Shelf' has no magnets in finish.yaml; mend the words here, or the piece there",
    ),
    Case(
        "how wide a part of the design is, behind its name",
        {STORY: "Begin with the lamp: it is 40 stitches wide.\n"},
    ),
    Case(
        "a design of another size",
        {STORY: "The design is 40 stitches wide and grew at night.\n"},
        f"{STORY}:1:1: advice: here stands 'The design is 40 stitches wide', and the chart has 4 columns and 2 rows; mend the number, or leave it out: the page of sizes tells it",
    ),
    *(
        Case(
            f"two rails, of which the next sentence says: {words}",
            TWO_RAILS | steps(f"Peg the two rails on. {words}."),
            *[of_step(column, told)] * bool(told),
        )
        for words, column, told in (
            ("They are 20 mm high", 0, ""),
            (
                "They are 26 mm high",
                35,
                "'26 mm high', and by finish.yaml 'top rail' is 120 × 20 mm and 12 mm thick; mend one of the two",
            ),
            (
                "Each rail is 26 mm high",
                39,
                "'26 mm high', and by finish.yaml 'top rail' is 120 × 20 mm and 12 mm thick; mend one of the two",
            ),
            ("The back is wide, and they are not", 0, ""),
        )
    ),
    *(
        Case(
            f"how far one laps over the edge of another, and what is free between two: {words}",
            TWO_RAILS | steps(words),
            *[of_step(column, told)] * bool(told),
        )
        for words, column, told in (
            (
                "Peg the top rail on, so that it laps over the upper edge of the back by 2 mm. Peg the lower rail on.",
                0,
                "",
            ),
            (
                "Peg the top rail on, so that it laps over the upper edge of the back by 9 mm. Peg the lower rail on.",
                36,
                "'laps over the upper edge of the back by…', and by finish.yaml no edges of the parts that it names lie so far apart: 2 mm comes nearest; mend the step, or an 'outline' or 'at' there",
            ),
            (
                "Peg the top rail on, with 2 mm of it hidden behind the back, flush at both ends. Peg the lower rail on.",
                0,
                "",
            ),
            (
                "Peg the top rail on, with 9 mm of it hidden behind the back. Peg the lower rail on.",
                30,
                "'9 mm of it hidden', and by finish.yaml no edges of the parts that it names lie so far apart: 2 mm comes nearest; mend the step, or an 'outline' or 'at' there",
            ),
            ("Peg the two rails on, so that 116 mm of the back stay free between them.", 0, ""),
            (
                "Peg the two rails on, so that 126 mm of the back stay free between them.",
                34,
                "'126 mm of the back stay free between th…', and by finish.yaml no edges of the parts that it names lie so far apart: 120 mm comes nearest; mend the step, or an 'outline' or 'at' there",
            ),
        )
    ),
    *(
        Case(
            f"two rails that are told as one and the other: {words}",
            TWO_RAILS
            | steps(f"Saw both rails: {words}.", "Peg the top rail and the lower rail on."),
            *[
                of_step(
                    column,
                    f"'{long}', and by finish.yaml 'lower rail' is 120 × 20 mm and 12 mm thick; mend one of the two",
                )
            ]
            * bool(long),
        )
        for words, column, long in (
            ("the top one 20 mm high, the lower one 20 mm", 0, ""),
            ("the top one 20 mm high, the lower one 26 mm", 58, "26 mm"),
            ("the top one 20 mm high, the lower one 26 mm high", 58, "26 mm high"),
        )
    ),
    *(
        Case(
            f"a piece that has a part of that size, of which the welcome says: {words}",
            and_parts(RAIL) | {WELCOME: f"{words}.\n"},
            *[
                f"{WELCOME}:1:{column}: advice: here stands '20 mm wide', and 'The Shelf' is 120 × 138 mm in finish.yaml; mend the words here, or the piece there"
            ]
            * bool(column),
        )
        for words, column in (
            ("The shelf is 20 mm wide", 14),
            ("One shelf, a painted shelf 20 mm wide", 28),
            ("Hang it on the shelf. It is 20 mm wide", 29),
            ("The shelf, which is sawn from board in three parts and is 20 mm wide", 59),
            ("The shelf, which has room for a picture in the middle and is 20 mm wide", 0),
            ("The shelf has a rail 20 mm wide", 0),
            ("The shelf is 120 mm wide", 0),
        )
    ),
    *(
        Case(
            f"a piece that has a part of that size, and says of itself: {words}",
            {
                FINISH: and_parts(RAIL)[FINISH].replace(
                    "about: A shelf with a back.", f"about: {words}"
                )
            },
            *[
                f"{FINISH}:2:{column}: advice: here stands '20 mm wide', and 'The Shelf' is 120 × 138 mm in finish.yaml; mend the words here, or the piece there"
            ]
            * bool(column),
        )
        for words, column in (
            ("A shelf seen from the front, 20 mm wide.", 37),
            ("A shelf for the door, with a rail 20 mm wide.", 0),
        )
    ),
    *(
        Case(
            f"a piece that the welcome tells to be {told}",
            {WELCOME: f"All hang on the one painted shelf, {told}, at the door.\n"},
            *[
                f"{WELCOME}:1:36: advice: here stands '{told}', and 'The Shelf' is 120 × 120 mm in finish.yaml; mend the words here, or the piece there"
            ]
            * other,
        )
        for told, other in (
            ("120 mm wide", False),
            ("12 cm wide and 120 mm high", False),
            ("4.7 in high", False),
            ("110 mm wide", True),
            ("120 mm wide and 16 cm high", True),
            ("about 110 mm wide", False),
            ("with a design of 80 mm wide", False),
        )
    ),
    *(
        Case(
            f"a piece of two hooks, of which the welcome tells {told}",
            {
                WELCOME: f"The painted shelf has {told} below.\n",
                FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: cup hook, pieces: 2, size: 20 mm}}\n",
                STEPS: "1. Saw the back.\n2. Screw the two cup hooks into it from below.\n",
            },
            *[
                f"{WELCOME}:1:23: advice: here stands '{told}', and 'The Shelf' has {has} in finish.yaml; mend the words here, or the piece there"
            ]
            * bool(has),
        )
        for told, has in (
            ("two hooks", ""),
            ("three brass hooks", "2 hooks"),
            ("two pegs", "no pegs"),
            ("four magnets", ""),
            ("six magnets", "4 magnets"),
        )
    ),
    *(
        Case(
            f"a piece of two hooks, of which it tells {told} itself",
            {
                FINISH: f"{TINY[FINISH]}hardware:\n  - {{name: cup hook, pieces: 2, size: 20 mm}}\n".replace(
                    "A shelf with a back.", f"A shelf with {told}."
                ),
                STEPS: "1. Saw the back.\n2. Screw the two cup hooks into it from below.\n",
            },
            *[
                f"{FINISH}:2:21: advice: here stands '{told}', and 'The Shelf' has {has} in finish.yaml; mend the words here, or the piece there"
            ]
            * bool(has),
        )
        for told, has in (("two hooks", ""), ("three brass hooks", "2 hooks"))
    ),
    *(
        Case(
            f"nails that are knots, {told} of them",
            {f"{FERN}/stitching.md": f"The {told} nails of the pot are French knots in brick.\n"},
            *[
                f"{FERN}/stitching.md:1:5: advice: here stands '{told} nails of the pot are French knots', and the pattern has 2; mend the number, or leave it out"
            ]
            * (told == "six"),
        )
        for told in ("two", "six")
    ),
    *(
        Case(
            f"screws of which a step takes two of the four, and another {told}",
            screws(4)
            | {
                STEPS: f"1. Saw the back.\n2. Put two of the four screws through it from behind.\n3. Fix it with the other {told} screws.\n"
            },
            *[
                f"{STEPS}:3:26: advice: the step speaks of '{told} screws' more, which makes 5, and of 'wood screw' there are 4 to buy; mend a number in the steps, or 'pieces' under 'hardware' in finish.yaml"
            ]
            * (told == "three"),
        )
        for told in ("two", "three")
    ),
    *(
        Case(
            f"a frond as wide as the chart was: {told}",
            {STORY: f"The frond runs across the whole width of {told} stitches.\n"},
            *[
                f"{STORY}:1:27: advice: here stands 'whole width of 6 stitches', and the chart has 4 columns and 2 rows; mend the number, or leave it out: the page of sizes tells it"
            ]
            * (told == 6),
        )
        for told in (4, 6)
    ),
    Case(
        "a design of its own size, and a leaf of it",
        {STORY: "The design is 4 × 2 stitches. A leaf is 3 stitches wide. The chart has 2 rows.\n"},
    ),
    Case(
        "more colours than there are",
        {STORY: "It grew in seven colours.\n"},
        f"{STORY}:1:12: advice: here stands 'seven colours', and the key has 3; mend the number, or leave it out",
    ),
    Case(
        "fewer colours than the design needs",
        {NOTES: "Two colours are dark. It needs two colours of thread.\n"},
        f"{NOTES}:1:32: advice: here stands 'two colours', and the key has 3; mend the number, or leave it out",
    ),
    Case(
        "more knots than lie on the chart",
        {NOTES: "Add two knots last.\nThen the three French knots.\n"},
        f"{NOTES}:2:10: advice: here stands 'three French knots', and the pattern has 2; mend the number, or leave it out",
    ),
    Case(
        "a cloth of another count",
        {STORY: "Mine is on 32-count linen. It might be worked on 18 count.\n"},
        f"{STORY}:1:12: advice: here stands '32-count', and the cloths of this pattern are of 28 to the inch; mend the number, or add that cloth to 'cloths' in pattern.yaml",
    ),
    Case("a cloth by the count of its stitches", {STORY: "It is worked as on 14-count.\n"}),
    Case(
        "over one where every cloth is worked over two",
        {NOTES: "Work over one thread.\n"},
        f"{NOTES}:1:6: advice: here stands 'over one thread', and the cloths of this pattern are worked over 2; mend the number, or 'over' of a cloth in pattern.yaml",
    ),
    *(
        Case(
            f"a piece that tells how large it is: {about}",
            {FINISH: TINY[FINISH].replace("A shelf with a back.", about)},
            *[
                f"{FINISH}:2:{column}: advice: here stands '180 mm wide', and 'The Shelf' is 120 × 120 mm in finish.yaml; mend the words here, or the piece there"
            ]
            * bool(column),
        )
        for about, column in (
            ("A shelf, 180 mm wide, with room for pictures.", 17),
            ("A shelf, 120 mm wide, with room for pictures.", 0),
            ("A shelf for pictures up to 180 mm wide.", 0),
        )
    ),
    *(
        Case(
            f"magnets that the welcome counts: {number}",
            {"series/garden-year/welcome.md": f"Come in. {number} magnets hold each picture.\n"},
            *[
                "series/garden-year/welcome.md:1:10: advice: here stands 'Six magnets', and 'The Shelf' has 4 magnets in finish.yaml; mend the words here, or the piece there"
            ]
            * (number == "Six"),
        )
        for number in ("Four", "Six")
    ),
    *(
        Case(
            f"lines of backstitch as the notes count them: {notes}",
            {
                PATTERN: TINY[PATTERN].replace(
                    'path: "1,1 4,1 4,2.5"}',
                    'path: "1,1 4,1 4,2.5"}\n  - {colour: k, path: "1,2 2,2 2,3 1,2"}',
                ),
                f"{FERN}/stitching.md": f"{notes}.\n",
            },
            *[
                f"{FERN}/stitching.md:1:{1 + notes.index(told)}: advice: here stands '{told}', and the pattern has {has}; mend the number, or leave it out"
            ]
            * bool(told),
        )
        for notes, told, has in (
            ("Five lines of backstitch in K4 peat", "", 0),
            ("Six lines of backstitch in K4 peat", "Six lines of backstitch", 5),
            ("Six lines of backstitch in all", "Six lines of backstitch", 5),
            ("Six lines in peat", "Six lines", 5),
            ("Six lines in two rows", "", 0),
            ("Two rings of backstitch go round it in peat", "Two rings of backstitch", 1),
            ("Two rings in brick go round it", "Two rings", 1),
            (
                "Each of the two buds has a ring of backstitch in peat",
                "two buds has a ring of backstitch",
                1,
            ),
            ("Each of the two buds has a line of backstitch in peat", "", 0),
        )
    ),
    Case(
        "half stitches of which the story tells, and the key has none",
        {STORY: "The sky is in half cross.\n"},
        f"{STORY}:1:15: advice: here stands 'half cross', and this pattern has no 'stitch: half'; take it out, or add 'stitch: half' to pattern.yaml",
    ),
    Case(
        "a release on another day than that of the series",
        {WELCOME: "All comes out on 16 January 2027.\n"},
        f"{WELCOME}:1:18: advice: here stands '16 January 2027', and the release is on 2027-01-15; mend the day here, or 'release'",
    ),
    Case(
        "a release on its own day, and a day that is none of a release",
        {WELCOME: "It comes out on 15 January. Sow on 3 March 2027.\n"},
    ),
    Case(
        "an occasion on another weekday than the pattern's",
        {STORY: "Hang it up on the second Monday of May.\n"},
        f"{STORY}:1:19: advice: here stands 'second Monday of May', and 'First warm day' is on 'second Sunday of May' in pattern.yaml; mend one of the two",
    ),
    Case(
        "an occasion by its name, in another month",
        {STORY: "For the first warm day, the second Sunday of June.\n"},
        f"{STORY}:1:29: advice: here stands 'second Sunday of June', and 'First warm day' is on 'second Sunday of May' in pattern.yaml; mend one of the two",
    ),
    Case(
        "days that are not that of the occasion, and that day",
        {STORY: "On the second Sunday of June it flowers; on the second Sunday of May it wakes.\n"},
    ),
    Case(
        "a name with a letter too few",
        {STORY: "Hazel Pen's model hangs in the shed, and Hazel Penn is proud.\n"},
        f"{STORY}:1:1: advice: here stands 'Hazel Pen', and in the credits or among the designers 'Hazel Penn'; look once more which of the two is right",
    ),
    Case(
        "a remark behind a key line that has lost its sign",
        {
            PATTERN: TINY[PATTERN].replace(
                '{moss: E2, spool: "10"}\n', '{moss: E2, spool: "10"}   young fern\n'
            )
        },
        f"{PATTERN}:9:32: the value has ended before 'young fern'; write '# young fern' if it is a remark, or take it away",
    ),
    *(
        Case(
            f"a bracket or a sign that is lost: {written}",
            {file: TINY[file].replace(old, written)},
            *lines,
        )
        for file, old, written, *lines in (
            (
                FINISH,
                "magnets: {pairs: 4,",
                "magnets: pairs: 4,",
                f"{FINISH}:25:10: names and their values on one line have only a closing brace round them; write magnets: {{pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}}",
            ),
            (
                MOSS,
                '{number: "07",',
                'number: "07",',
                f'{MOSS}:11:5: names and their values on one line have only a closing brace round them; write - {{number: "07", name: fern, hex: "#4f7942"}}',
            ),
            (
                PATTERN,
                "\nkey:\n",
                "\nkey\n",
                f"{PATTERN}:8:1: no colon stands after 'key'; write key:",
            ),
            (
                PATTERN,
                "\nrevisions:\n",
                "\nrevisions\n",
                f"{PATTERN}:26:1: no colon stands after 'revisions'; write revisions:",
            ),
            (
                MOSS,
                "name: fern",
                "name; fern",
                f"{MOSS}:11:20: no colon with a space stands after 'name'; write name: fern",
            ),
            (
                FINISH,
                "cautions: [small",
                "cautions: small",
                f"{FINISH}:26:11: 'cautions' should be a list, and is 'small magnets, dust]'; its opening bracket is missing: write cautions: [small magnets, dust]",
            ),
            (
                PATTERN,
                'b: {moss: [E2, "07"]',
                'b: {moss: E2, "07"]',
                f"{PATTERN}:11:21: the bracket '{{' is met by a ']'; its opening one is missing: write moss: [E2, \"07\"]",
            ),
            (
                FINISH,
                "gathered, ratio: 1.5, overlap",
                "gathered; ratio: 1.5; overlap",
                f"{FINISH}:24:23: no comma stands between 'gathered' and 'ratio'; write gathered, ratio: 1.5, overlap: 20 mm",
            ),
        )
    ),
)
