"""Parts of a finishing piece that do not agree with one another, and what the author reads.

The tiny piece gets more parts here: its panel is 100 mm wide, and all stand in the middle of it until one is changed.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import FINISH, TINY
from tests.wrong_input_case import Case

STEPS = "finishes/shelf/steps.md"
_CRESS = '  - {name: cress, hex: "#50783c", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n'
_STEP = "1. Saw the back, {saw}, the lid and the foot{smooth}.\n2. {sentence}\n"


def _part(name: str, outline: str, at: str, other: str = "") -> str:
    thick = other if "thickness" in other else "thickness: 8 mm"
    coats = other if "coats" in other else "coats: 2"
    paint = other if "paint" in other else "paint: sage"
    return f'  - {{name: {name}, outline: "{outline}", at: "{at}", {thick}, {paint}, {coats}}}\n'


_AS_IT_IS = {
    "back": ("0,0 120,0 120,120 0,120", "10,10"),
    "left post": ("0,0 12,0 12,124 0,124", "0,10"),
    "right post": ("0,0 12,0 12,124 0,124", "128,10"),
    "lid": ("0,0 140,0 140,12 0,12", "0,0"),
    "foot": ("0,0 140,0 140,10 0,10", "0,130"),
}


def _case(
    slip: str,
    *lines: str,
    saw: str = "the posts",
    smooth: str = "",
    sentence: str = "Paint all as the table has it.",
    panel: str = "20,20 120,20 120,120 20,120",
    first: str = "",
    drop: str = "",
    **changed: tuple[str, ...],
) -> Case:
    parts: dict[str, tuple[str, ...]] = {first: ()} if first else {}
    parts |= _AS_IT_IS | {name.replace("_", " "): part for name, part in changed.items()}
    parts.pop(drop, None)
    begins, ends = TINY[FINISH].index("parts:\n"), TINY[FINISH].index("paints:\n")
    text = (
        TINY[FINISH][:begins].replace("0,0 100,0 100,100 0,100", panel)
        + "parts:\n"
        + "".join(_part(name, *part) for name, part in parts.items())
        + TINY[FINISH][ends:]
    )
    text = text.replace("trim:", _CRESS + "trim:") if "paint: cress" in text else text
    return Case(
        slip,
        {
            FINISH: text,
            STEPS: _STEP.format(saw=saw, smooth=smooth and f", and {smooth}", sentence=sentence),
        },
        *lines,
    )


def _of_step(column: int, wrong: str) -> str:
    return f"{STEPS}:2:{column}: advice: the step {wrong}"


def _of_coats(column: int, words: str, part: str, own: int) -> str:
    return f"{STEPS}:2:{column}: advice: here stands '{words}', and in finish.yaml '{part}' has {own}; mend the number here, or 'coats' there"


_POST = _AS_IT_IS["left post"][0]
_LIKE = (
    "mend the one that is wrong, here or that of 'left post' on line 10, so that the two are alike"
)

CASES = (
    _case("a piece whose parts agree"),
    _case(
        "a back that was made narrower than the panel",
        f"{FINISH}:9:27: advice: 34 % of the panel lies beside 'back', and no wood is below it; it is 76 × 120 mm, and the panel 100 × 100 mm: mend one of the two",
        back=("0,0 76,0 76,120 0,120", "10,10"),
    ),
    _case(
        "a back that was moved",
        f"{FINISH}:4:12: advice: below 12 % of the panel there is no wood; write 52,30 152,30 152,130 52,130 if it was measured from the corner of 'back': corners are those in the drawing of the whole; or at: 10,10 for 'back'",
        back=("0,0 120,0 120,120 0,120", "32,10"),
        right_post=(_POST, "140,10"),
    ),
    _case(
        "a back that was moved beyond where the panel could be measured from it",
        f"{FINISH}:9:58: advice: 12 % of the panel lies beside 'back', and no wood is below it; write at: 7,10, or move the panel",
        panel="8,20 108,20 108,120 8,120",
        back=("0,0 102,0 102,120 0,120", "25,10"),
    ),
    _case(
        "a panel beside the middle of all parts",
        f"{FINISH}:4:12: advice: the panel lies 5 mm to the left of the middle that its parts share; mend its corners",
        panel="15,20 115,20 115,120 15,120",
    ),
    _case(
        "a lid that was made wider",
        f"{FINISH}:12:55: advice: 'lid' stands 10 mm to the right of the middle that the panel and other parts share; if it stays so wide, write at: -10,0 (and should 'foot' grow with it?); else mend its outline",
        lid=("0,0 160,0 160,12 0,12", "0,0"),
        sentence="Peg the lid on the left post.",
    ),
    _case(
        "a back that was made wider, and lies along a post still",
        f"{FINISH}:9:27: advice: 'back' stands 4 mm to the right of the middle that the panel and other parts share; mend its outline",
        back=("0,0 124,0 124,120 0,120", "12,10"),
        sentence="Peg the posts on the foot.",
    ),
    _case(
        "a back that was made wider to both sides, and posts that are joined to its edges",
        _of_step(
            12,
            "joins 'left post' to the edge of 'back', and in finish.yaml it lies 3 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        back=("0,0 124,0 124,120 0,120", "8,10"),
        left_post=("0,0 12,0 12,124 0,124", "-1,10"),
        right_post=(_POST, "129,10"),
        sentence="Peg the left post and the right post to the edges of the back.",
    ),
    _case(
        "posts that lie on the edges of the back",
        left_post=("0,0 12,0 12,114 0,114", "10,12"),
        right_post=("0,0 12,0 12,114 0,114", "118,12"),
        sentence="Peg the left post and the right post to the edges of the back.",
    ),
    _case(
        "a lower bar that was put above the upper one",
        f"{FINISH}:14:12: advice: 'upper bar' stands below 'lower bar'; mend 'at' of the one that was moved, or exchange their names",
        panel="20,70 120,70 120,120 20,120",
        upper_bar=("0,0 120,0 120,12 0,12", "10,40"),
        lower_bar=("0,0 120,0 120,12 0,12", "10,14"),
        sentence="Peg the bars on the back.",
    ),
    *(
        _case(
            f"two bars that stand out beyond a back with slanting sides by {much}",
            *[
                _of_step(
                    53,
                    f"says 'standing over by {much}', and by finish.yaml where those parts meet, their edges are 30 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            panel="50,70 100,70 100,120 50,120",
            back=("20,0 100,0 120,120 0,120", "10,10"),
            upper_bar=("0,0 150,0 150,12 0,12", "-5,14"),
            lower_bar=("0,0 150,0 150,12 0,12", "-5,30"),
            sentence=f"Peg the upper bar and the lower bar on the back, standing over by {much} at both ends.",
        )
        for much, told in (("0 mm", 1), ("15 mm", 1), ("33 mm", 0))
    ),
    _case(
        "two posts that changed their names",
        f"{FINISH}:10:12: advice: 'left post' stands to the right of 'right post'; mend 'at' of the one that was moved, or exchange their names",
        left_post=(_POST, "128,10"),
        right_post=(_POST, "0,10"),
    ),
    _case(
        "a knob whose place has two figures exchanged",
        f"{FINISH}:14:52: advice: 'knob' stands 9 mm to the left of the middle that the panel and other parts share; should its 'at' be 65,2?",
        knob=("0,0 10,0 10,8 0,8", "56,2"),
        saw="the knob, the posts",
    ),
    _case(
        "a ledge between two posts that was made shorter",
        f"{FINISH}:14:28: advice: 'ledge' stands 5 mm to the left of the middle that the panel and other parts share; if it shall reach 'right post', make it 116 mm wide; else mend its outline",
        ledge=("0,0 106,0 106,8 0,8", "12,121"),
        saw="the ledge, the posts",
    ),
    _case(
        "one of two posts that was made longer",
        f"{FINISH}:11:33: advice: 'right post' is 12 × 124 mm, and 'left post' 12 × 120 mm; {_LIKE}",
        left_post=("0,0 12,0 12,120 0,120", "0,10"),
    ),
    _case(
        "one of two posts that stands lower",
        f"{FINISH}:11:62: advice: 'right post' stands 3 mm lower than 'left post'; {_LIKE}",
        right_post=(_POST, "128,13"),
    ),
    _case(
        "one of two posts that has more coats",
        f"{FINISH}:11:109: advice: 'right post' has 2 coats, and 'left post' 3; {_LIKE}",
        left_post=(_POST, "0,10", "coats: 3"),
    ),
    _case(
        "one of two posts that is thicker",
        f"{FINISH}:10:80: advice: 'left post' is 12 mm thick, and 'right post' 8 mm; mend the one that is wrong, here or that of 'right post' on line 11, so that the two are alike",
        left_post=(_POST, "0,10", "thickness: 12 mm"),
    ),
    _case(
        "a back so long that the foot behind it is not seen",
        f"{FINISH}:10:27: advice: 'back' reaches 5 mm further down than 'foot'; mend its outline or its 'at'; or write at: 15,145 for 'foot'",
        first="foot",
        foot=("0,0 110,0 110,10 0,10", "15,130"),
        back=("0,0 120,0 120,135 0,135", "10,10"),
    ),
    _case(
        "posts of which one has not so many coats",
        _of_coats(4, "Two coats each", "left post", 3),
        left_post=(_POST, "0,10", "coats: 3"),
        right_post=(_POST, "128,10", "coats: 3"),
        sentence="Two coats each, and no more.",
    ),
    _case(
        "parts listed before their paint",
        sentence="Paint the back, the posts, the lid and the foot in sage.",
    ),
    _case(
        "parts listed before a paint of which one has another",
        f"{STEPS}:2:35: advice: here stands 'lid in sage', and in finish.yaml 'top lid' is painted with 'cress'; name that here, or mend 'paint' there",
        drop="lid",
        top_lid=("0,0 140,0 140,12 0,12", "0,0", "paint: cress"),
        sentence="Paint the back, the posts, the lid and the foot in sage.",
    ),
    _case(
        "a lid and a foot that are joined to the back with other words",
        sentence="Peg the lid on the upper edge of the back and the foot under its lower edge.",
    ),
    _case(
        "a rail that lies far above the edge at which a step puts it",
        _of_step(
            12,
            "puts 'rail' at the lower edge of 'back', and by 'at' in finish.yaml it stands 110 mm above that; mend the word, or the 'at' of one of the two there",
        ),
        saw="the posts, the rail",
        rail=("0,0 140,0 140,10 0,10", "0,10"),
        sentence="Peg the rail along the lower edge of the back.",
    ),
    _case(
        "screws that are put in through a part which the sentence glues",
        sentence="Peg the foot up the middle of its back, and put in two pegs through the foot.",
    ),
    _case(
        "a step that stands there twice",
        f"{STEPS}:3:1: advice: this step stands on line 2 already, word for word; write what was meant here, or take it out",
        sentence="Let it all dry over night.\n3. Let it all dry over night.",
    ),
    _case(
        "two parts that get fewer coats than one of them has",
        _of_coats(8, "lid and the back get two coats", "lid", 3),
        lid=("0,0 140,0 140,12 0,12", "0,0", "coats: 3"),
        sentence="The lid and the back get two coats.",
    ),
    _case(
        "a lid below the panel that stands above it",
        _of_step(
            29,
            "puts 'lid' below the panel, and by 'at' in finish.yaml it stands above that; mend the word, or the 'at' of one of the two there",
        ),
        sentence="Peg the lid on the back, below the panel.",
    ),
    _case(
        "a foot 2 mm above the lower edge of the back, and so below the back's middle",
        sentence="Peg the foot 2 mm above the lower edge of the back.",
        foot=("0,0 140,0 140,10 0,10", "0,118"),
    ),
    _case(
        "a rail that is named after what is pushed into it, and is only painted",
        sentence="Paint all, before they are joined: two coats of sage on the back, two on the peg rail and the lid, two on the foot.",
        saw="the posts, the peg rail",
        peg_rail=("0,0 100,0 100,8 0,8", "20,12"),
    ),
    _case(
        "a lid above the panel, and a foot below",
        sentence="Peg the lid on the back, above the panel, and the foot below the panel.",
    ),
    _case(
        "a back that reaches below the foot",
        f"{FINISH}:9:27: advice: 'back' reaches 5 mm further down than 'foot'; mend its outline or its 'at'; or write at: 0,145 for 'foot'",
        back=("0,0 120,0 120,135 0,135", "10,10"),
    ),
    _case(
        "a left post in whose place two figures changed places",
        f"{FINISH}:10:61: advice: 'left post' reaches 49 mm to the left of the middle of panel and parts, and 'right post' 58 mm to the right; should its 'at' be 12,10?",
        left_post=(_POST, "21,10"),
        right_post=(_POST, "116,10"),
        panel="40,20 100,20 100,120 40,120",
    ),
    _case(
        "a left post that is a lfet one",
        f"{FINISH}:13:12: advice: 'lfet post' is nearly 'left post', and no step has its words; should it be 'left post', the twin of 'right post'?",
        saw="both posts",
        drop="left post",
        lfet_post=(_POST, "0,10"),
    ),
    _case(
        "a left pest, which the steps have too",
        saw="the left pest, the right post",
        drop="left post",
        left_pest=(_POST, "0,10"),
    ),
    *(
        _case(
            f"posts that reach {much} below the back, which the sentence calls 'it'",
            *[
                _of_step(
                    47,
                    f"says '{much} below it', and by finish.yaml no edges of the parts that it names lie so far apart: 4 mm comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the posts on the back. The posts reach {much} below it.",
        )
        for much, told in (("4 mm", 0), ("9 mm", 1))
    ),
    *(
        _case(
            f"a lid that stands over the back by {much}, and the foot over it by 5",
            *[
                _of_step(
                    46,
                    f"says 'stands over the back by {much}', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            foot=("0,0 150,0 150,10 0,10", "-5,130"),
            sentence=f"Peg the back on the foot, so that the lid stands over the back by {much} at both ends.",
        )
        for much, told in (("10 mm", 0), ("5 mm", 1))
    ),
    *(
        _case(
            f"a lid and a foot that both stand over by {much}, and a back that does not",
            *[
                _of_step(
                    82,
                    f"says 'stand over by {much}', and by finish.yaml where 'foot' meets others, its edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            lid=("0,0 150,0 150,12 0,12", "-5,0"),
            sentence=f"Lay the lid and the foot face down and peg the back behind them, so that both stand over by {much} at both ends.",
        )
        for much, told in (("15 mm", 1),)
    ),
    *(
        _case(
            f"a lid with {much} over at each end, and so far above",
            *[
                _of_step(
                    29,
                    f"says '{much} standing over at each end', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the lid on the back, {much} standing over at each end and 10 mm above it.",
        )
        for much, told in (("10 mm", 0), ("14 mm", 1))
    ),
    *(
        _case(
            f"a foot of which the next sentence says that it stands over by {much}",
            *[
                _of_step(
                    33,
                    f"says 'stands over by {much}', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the foot to the back. It stands over by {much} on each side.",
        )
        for much, told in (("10 mm", 0), ("15 mm", 1))
    ),
    *(
        _case(
            f"a foot of which {much} are to stay free",
            *[
                _of_step(
                    34,
                    f"says '{much} of the foot free at either end', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the back on the foot with {much} of the foot free at either end.",
        )
        for much, told in (("10 mm", 0), ("8 mm", 1))
    ),
    _case(
        "a lid that ends before one of the posts it is glued to",
        f"{FINISH}:10:61: advice: 'left post' reaches 60 mm to the left of the middle of panel and parts, and 'right post' 70 mm to the right; write at: 0,10 here, or at: 118,10 for 'right post' on line 11",
        _of_step(
            12,
            "joins 'lid' to 'right post', and in finish.yaml the two, at 20,0 and 128,10, stand 8 mm apart; name the part that is meant, or mend the 'at' of one of the two there",
        ),
        lid=("0,0 100,0 100,12 0,12", "20,0"),
        left_post=(_POST, "10,10"),
        sentence="Peg the lid across the upper ends of the posts.",
    ),
    _case(
        "boards of two thicknesses, told together",
        saw="the posts from board 8 mm and 6 mm thick",
    ),
    _case(
        "a foot below the lid, and the gap between them told",
        sentence="Peg the lid on the back. Peg the foot below the lid, 118 mm from it.",
    ),
    _case(
        "a foot below the lid, and another gap told",
        _of_step(
            37,
            "joins 'foot' to 'lid', and in finish.yaml the two, at 0,130 and 0,0, stand 118 mm apart; name the part that is meant, or mend the 'at' of one of the two there",
        ),
        sentence="Peg the lid on the back. Peg the foot below the lid, 108 mm from it.",
    ),
    *(
        _case(
            f"a gap that is told as {told} mm, and is as wide as a board is thick",
            *[
                _of_step(
                    42,
                    "says '8 mm below the', and by finish.yaml no edges of the parts that it names lie so far apart: 118 mm comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * (told != 118),
            sentence=f"Peg the lid on the back. Peg the foot {told} mm below the lid.",
        )
        for told in (8, 118)
    ),
    _case(
        "a lid that is glued to the back, and butted against posts that end lower",
        _of_step(
            48,
            "joins 'lid' to 'left post', and in finish.yaml the two, at 0,-8 and 0,10, stand 6 mm apart; name the part that is meant, or mend the 'at' of one of the two there",
        ),
        lid=("0,0 140,0 140,12 0,12", "0,-8"),
        back=("0,0 120,0 120,130 0,130", "10,0"),
        sentence="Peg the lid across the back, butted against the ends of the posts, and the foot under it.",
    ),
    _case(
        "the same by the names of both",
        f"{FINISH}:10:61: advice: 'left post' reaches 60 mm to the left of the middle of panel and parts, and 'right post' 70 mm to the right; write at: 0,10 here, or at: 118,10 for 'right post' on line 11",
        _of_step(
            12,
            "joins 'lid' to 'right post', and in finish.yaml the two, at 20,0 and 128,10, stand 8 mm apart; name the part that is meant, or mend the 'at' of one of the two there",
        ),
        lid=("0,0 100,0 100,12 0,12", "20,0"),
        left_post=(_POST, "10,10"),
        sentence="Peg the lid across the left post and the right post.",
    ),
    _case(
        "a foot that is put below the back, and lies over it",
        _of_step(
            12,
            "joins 'foot' to the edge of 'back', and in finish.yaml it lies 4 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        foot=("0,0 140,0 140,10 0,10", "0,126"),
        sentence="Peg the foot below the back.",
    ),
    _case(
        "a lid that stands in otherwise",
        _of_step(
            30,
            "says 'standing in by 3 mm', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the back on the foot, standing in by 3 mm at both ends.",
    ),
    *(
        _case(
            f"a knob at {at}: {sentence}",
            *[
                _of_step(
                    12,
                    "puts 'knob' in the middle of 'lid', and by 'at' in finish.yaml it stands 40 mm to the left of that; mend the word, or the 'at' of one of the two there",
                )
            ]
            * told,
            saw="the posts, the knob",
            knob=("0,0 20,0 20,12 0,12", f"{at},0"),
            sentence=sentence,
        )
        for sentence, at, told in (
            ("Peg the knob to the middle of the lid.", 20, 1),
            ("Peg the knob on the lid, in the middle.", 20, 1),
            ("Peg the knob to the middle of the lid.", 60, 0),
            ("Peg the knob on the lid.", 20, 0),
        )
    ),
    *(
        _case(
            f"posts that are level with the other end: {words}",
            *[
                _of_step(
                    31,
                    f"says '{words}', and by finish.yaml such edges of the parts that it names are not on one line; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the posts to the back, {words} back.",
        )
        for words, told in (("level with the bottom of", 1), ("level with the top of", 0))
    ),
    _case(
        "a back that lies over the foot on which it stands",
        _of_step(
            12,
            "joins 'back' to the edge of 'foot', and in finish.yaml it lies 4 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        foot=("0,0 140,0 140,10 0,10", "0,126"),
        sentence="Peg the back on the top of the foot.",
    ),
    _case(
        "a back that stands upright, and lies over the foot",
        _of_step(
            12,
            "joins 'back' to the edge of 'foot', and in finish.yaml it lies 4 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        foot=("0,0 140,0 140,10 0,10", "0,126"),
        sentence="Peg the back upright on the foot.",
    ),
    *(
        _case(
            f"posts that stand out above and below: {sentence}",
            *[
                _of_step(
                    column,
                    f"says '{told}', and by finish.yaml no edges of the parts that it names lie so far apart: {nearest} comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * bool(column),
            left_post=("0,0 12,0 12,132 0,132", "0,6"),
            right_post=("0,0 12,0 12,132 0,132", "128,6"),
            sentence=sentence,
        )
        for sentence, column, told, nearest in (
            (
                "Peg the posts, level with its left and right edges, so that they stand out 4 mm above the back and 8 mm below it.",
                0,
                "",
                "",
            ),
            (
                "Peg the posts, level with its left and right edges, so that they stand out 5 mm above the back and 8 mm below it.",
                69,
                "stand out 5 mm",
                "4 mm",
            ),
            (
                "Peg the posts so that their tops are 4 mm above the upper edge of the back and their ends 9 mm below its lower edge.",
                94,
                "9 mm below its lower edge",
                "8 mm",
            ),
        )
    ),
    _case(
        "posts that stand out as told",
        sentence="Peg the posts on the back, standing out 10 mm on either side.",
    ),
    _case(
        "a lid that stands out to the front by its thickness",
        sentence="Peg the lid on the back, standing out 8 mm.",
    ),
    _case(
        "posts that stand out less",
        _of_step(
            31,
            "says 'standing out 12 mm', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the posts on the back, standing out 12 mm on either side.",
    ),
    _case(
        "posts whose ends stand as far above the foot's as told",
        sentence="Peg the posts on the foot, their lower ends 6 mm above its lower edge.",
    ),
    _case(
        "a lid that reaches less far below the back's upper edge",
        _of_step(
            35,
            "says '5 mm below the upper edge', and by finish.yaml no edges of the parts that it names lie so far apart: 2 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid so that it reaches 5 mm below the upper edge of the back.",
    ),
    _case(
        "a lid that reaches as far below the back's upper edge as is told",
        sentence="Peg the lid so that it reaches 2 mm below the upper edge of the back.",
    ),
    _case(
        "parts of which one is not sawn",
        f"{STEPS}:1:4: advice: the step says 'Saw', and no step saws 'right post'; name it in one, or mend the name that stands for it",
        saw="the left post",
    ),
    _case(
        "a part that was given another name in finish.yaml, and its old one left in the steps",
        f"{STEPS}:1:4: advice: the step says 'Saw', and no step saws 'right post'; write it for 'upright', the name of no part, here and on line 2; or name it in a step",
        saw="the left post and the upright",
        sentence="Paint all, the upright last.",
    ),
    _case(
        "parts of which one is not sawn, and all are smoothed",
        f"{STEPS}:1:4: advice: the step says 'Saw', and no step saws 'right post'; name it in one, or mend the name that stands for it",
        saw="the left post",
        smooth="smooth every edge",
    ),
    *(
        _case(
            f"the coats of two parts that are called by one word: {sentence}",
            *[_of_coats(19, "pocket 2 coats", "pocket front", 3)] * told,
            saw="the posts, the pocket",
            pocket_front=("0,0 40,0 40,10 0,10", "50,-20", "coats: 3"),
            pocket_floor=("0,0 40,0 40,10 0,10", "50,-10"),
            sentence=sentence,
        )
        for sentence, told in (
            ("Paint all, the pocket in two coats of sage.", 1),
            ("Paint all, the pocket in sage.", 0),
        )
    ),
    *(
        _case(
            f"a size of a part: {sentence}",
            *[
                _of_step(
                    column,
                    f"says '{words}', and by finish.yaml 'foot' is 140 × 10 mm and 8 mm thick; mend one of the two",
                )
            ]
            * bool(column),
            sentence=sentence,
        )
        for sentence, column, words in (
            ("Saw the foot, 150 × 10 mm, from wood of 8 mm.", 18, "150 × 10 mm"),
            ("Saw the foot, 140 × 10 mm, from wood of 9 mm, and the lid.", 36, "wood of 9 mm"),
            ("Saw the 150 × 10 mm foot.", 12, "150 × 10 mm"),
            ("Saw the foot to 150 mm and the lid too.", 17, "to 150 mm"),
            ("The foot is 14 cm wide, 2 cm high and 8 mm thick.", 28, "2 cm high"),
            ("The foot is 140 × 140 mm.", 16, "140 × 140 mm"),
            ("Saw the foot, 140 × 10 mm, from wood of 8 mm.", 0, ""),
            ("Saw the foot, rough, 150 × 20 mm.", 0, ""),
            ("Peg the foot, 150 × 10 mm pegs in hand, to the back.", 0, ""),
            ("Drill the foot 12 mm deep.", 0, ""),
            ("The foot is 5 1/2 in wide.", 0, ""),
        )
    ),
    _case(
        "coats that are counted without their word, before a paint that is called like a part",
        sentence="Paint all, two coats of sage on the posts, three of lid green on the lid.",
    ),
    _case(
        "a foot of which one lower corner has a slip",
        f"{FINISH}:13:27: advice: the edge of 'foot' from 140,10 to 0,15 is nearly level, 5 mm off over 140 mm; if it is to be level, write 140,15 or 0,10 for one of the two corners",
        foot=("0,0 140,0 140,10 0,15", "0,130"),
    ),
    _case(
        "a foot of which one corner has two figures exchanged",
        f"{FINISH}:13:27: advice: the corner 104,10 of 'foot' misses the rectangle of its other three corners; if a figure was lost there, or two changed places, write 140,10",
        foot=("0,0 140,0 104,10 0,10", "0,130"),
    ),
    _case(
        "a foot of another width than all, in the middle, of which one corner has two figures exchanged",
        f"{FINISH}:13:27: advice: the corner 103,10 of 'foot' misses the rectangle of its other three corners; if a figure was lost there, or two changed places, write 130,10",
        foot=("0,0 130,0 103,10 0,10", "5,130"),
    ),
    _case(
        "a post of which one corner has lost a figure",
        f"{FINISH}:10:32: advice: the corner 12,14 of 'left post' misses the rectangle of its other three corners; if a figure was lost there, or two changed places, write 12,124",
        left_post=("0,0 12,0 12,14 0,124", "0,10"),
    ),
    *(
        _case(
            f"posts of which the next sentence tells how far they stand out: {told} mm",
            *[
                _of_step(
                    72,
                    "says 'stands 7 mm over', and by finish.yaml no edges of the parts that it names lie so far apart: 6 mm comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * (told == 7),
            sentence=f"Peg the left post and the right post to the edges of the back. Each stands {told} mm over at the side.",
        )
        for told in (7, 10)
    ),
    _case(
        "a lid that is told to lie 6 mm over the back's left edge",
        _of_step(
            29,
            "says '6 mm over its left edge', and by finish.yaml no edges of the parts that it names lie so far apart: 10 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid on the back, 6 mm over its left edge.",
    ),
    _case(
        "a lid that lies 10 mm over the back's left edge, as is told",
        sentence="Peg the lid on the back, 10 mm over its left edge.",
    ),
    _case("a foot like a low roof", foot=("0,4 70,0 140,4 140,10 0,10", "0,130")),
    *(
        _case(
            f"a lid of which the steps say that its ends are {much} beyond the back's",
            *[
                _of_step(
                    33,
                    "says 'ends 6 mm beyond it on either side', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the lid on the back, its ends {much} beyond it on either side.",
        )
        for much, told in (("6 mm", 1), ("10 mm", 0))
    ),
    *(
        _case(
            f"posts that alone are named, and stand {much} above",
            *[
                _of_step(
                    36,
                    f"says '{much} of each stand', and by finish.yaml no edges of the parts that it names lie so far apart: 6 mm comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the posts behind it so that {much} of each stand out above.",
        )
        for much, told in (("7 mm", 1), ("10 mm", 0))
    ),
    *(
        _case(
            f"a lock {where} of the lid, {much} to the right of that",
            *[
                _of_step(
                    12,
                    f"puts 'lock' in the middle of 'lid', and by 'at' in finish.yaml it stands {much} to the right of that; mend the word, or the 'at' of one of the two there",
                )
            ]
            * bool(much),
            saw="all else, the posts",
            lock=("0,0 20,0 20,20 0,20", at),
            sentence=f"Peg the lock {where} of the lid.",
        )
        for where, at, much in (
            ("over the middle", "70,2", "10 mm"),
            ("over the middle", "60,2", ""),
            ("to the middle of the lower edge", "70,2", "10 mm"),
            ("to the middle of the lower edge", "60,2", ""),
        )
    ),
    *(
        _case(
            f"boards that are told in one sentence: {thick}",
            *[
                _of_step(
                    28,
                    "says '9 mm thick', and by finish.yaml 'foot' is 140 × 10 mm and 8 mm thick; mend one of the two",
                )
            ]
            * told,
            sentence=f"Saw the foot from board {thick} thick, and the lid and all else from board 8 mm thick.",
        )
        for thick, told in (("9 mm", 1), ("8 mm", 0))
    ),
    _case(
        "a back that alone was made wider to one side, with two others in the middle still",
        f"{FINISH}:9:58: advice: 'back' stands 6 mm to the right of the middle that the panel and other parts share; if it stays so wide, write at: 4,10; else mend its outline",
        back=("0,0 132,0 132,120 0,120", "10,10"),
        lid=("0,0 60,0 60,12 0,12", "40,0"),
        foot=("0,0 60,0 60,10 0,10", "40,130"),
        sentence="Paint it all as the table has it.",
    ),
    *(
        _case(
            f"posts that are told to lie {much} apart",
            *[
                _of_step(
                    37,
                    f"says '{much} apart', and by finish.yaml no edges of the parts that it names lie so far apart: {nearest} comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * bool(nearest),
            sentence=f"Lay the left post and right post {much} apart, and peg the back on them.",
        )
        for much, nearest in (
            ("110 mm", "116 mm"),
            ("130 mm", "128 mm"),
            ("116 mm", ""),
            ("128 mm", ""),
            ("140 mm", ""),
        )
    ),
    *(
        _case(
            f"posts that are sawn from {thick}",
            *[
                _of_step(
                    18,
                    f"says 'from {thick}', and by finish.yaml 'left post' is 12 × 124 mm and 8 mm thick; mend one of the two",
                )
            ]
            * told,
            sentence=f"Cut the posts from {thick}, and the lid too.",
        )
        for thick, told in (("9 mm", 1), ("8 mm", 0))
    ),
    *(
        _case(
            f"a lid across both posts, 10 mm {way} their upper ends",
            *[
                _of_step(
                    34,
                    "says '10 mm below their upper ends', and by finish.yaml edges of the parts that it names lie so far apart, but the other way; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the lid across the posts, 10 mm {way} their upper ends.",
        )
        for way, told in (("below", 1), ("above", 0))
    ),
    _case(
        "holes that are told to lie apart, and not the parts",
        sentence="Bore three holes through the foot and the back, one beside the other, 70 mm apart.",
    ),
    *(
        _case(
            f"posts that stand over the side by {much}",
            *[
                _of_step(
                    44,
                    f"says 'standing over its side by {much}', and by finish.yaml no edges of the parts that it names lie so far apart: 10 mm comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            sentence=f"Peg the posts to the edges of the back, standing over its side by {much}.",
        )
        for much, told in (("8 mm", 1), ("6 mm", 1), ("10 mm", 0))
    ),
    *(
        _case(
            f"a {name} ten times as thick as others",
            *[
                f"{FINISH}:14:75: advice: a board of 80 mm is hardly sold so thick; look once more: should it be 8 mm?"
            ]
            * told,
            saw=f"the {name}, the posts",
            sentence="Paint all as the table has it.",
            **{name: ("0,0 140,0 140,10 0,10", "0,-10", "thickness: 80 mm")},
        )
        for name, told in (("arm", 1), ("ledge", 0))
    ),
    _case(
        "hooks that are told to be 30 mm from the ends, and not the parts",
        sentence="Bore two holes into the underside of the lid, 30 mm from either end.",
    ),
    *(
        _case(
            f"parts that the step tells to be alike: {sentence}",
            *[
                _of_step(
                    column,
                    "says '140 mm wide', and by finish.yaml 'lid' is 150 × 12 mm and 8 mm thick; mend one of the two",
                )
            ]
            * bool(column),
            lid=("0,0 150,0 150,12 0,12", "-5,0"),
            sentence=sentence,
        )
        for sentence, column in (
            ("Saw the lid and the foot. Both are 140 mm wide.", 39),
            ("Saw the foot and the lid. All two of them are 140 mm wide.", 50),
            ("Saw the foot and the lid. They are all 140 mm wide.", 43),
            ("Saw the lid and the foot. They are 10 mm and 12 mm high.", 0),
        )
    ),
    _case(
        "a lid that is told to be as wide as the foot",
        _of_step(
            16,
            "says '140 mm wide', and by finish.yaml 'back' is 120 × 120 mm and 8 mm thick; mend one of the two",
        ),
        sentence="The foot is 140 mm wide, and so is the back.",
    ),
    *(
        _case(
            f"a lid that is told to be 150 mm wide: {words}",
            *[
                _of_step(
                    column,
                    "says '150 mm wide', and by finish.yaml 'lid' is 140 × 12 mm and 8 mm thick; mend one of the two",
                )
            ]
            * bool(column),
            sentence=f"{words}.",
        )
        for words, column in (
            ("Peg the lid along the top, 150 mm wide", 31),
            ("Peg the lid along the top. It is 150 mm wide", 37),
            ("Peg the lid to the back. It is 150 mm wide", 0),
            ("Peg the lid along the top, 140 mm wide", 0),
        )
    ),
    *(
        _case(
            f"a lid that is told to be moved: {words}",
            *[
                _of_step(
                    column,
                    f"says '{told}', and by finish.yaml no edges of the parts that it names lie so far apart: 10 mm comes nearest; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * bool(column),
            sentence=f"{words}.",
        )
        for words, column, told in (
            ("Peg the lid to the back, 15 mm from its left edge", 29, "15 mm from its left edge"),
            ("Peg the lid to the back, 10 mm from its left edge", 0, ""),
            ("Peg the lid to the back with two pegs, 15 mm from its left edge", 0, ""),
        )
    ),
    *(
        _case(
            f"a lid and a foot that are told together to stand over by {much} mm",
            *[
                _of_step(
                    50,
                    "says 'stand over by 10 mm', and by finish.yaml where 'lid' meets others, its edges are 15 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
                )
            ]
            * told,
            lid=(f"0,0 {120 + 2 * much},0 {120 + 2 * much},12 0,12", f"{10 - much},0"),
            sentence="Lay the back on, so that the lid and the foot stand over by 10 mm at both ends.",
        )
        for much, told in ((15, 1), (10, 0))
    ),
    *(
        _case(
            f"a lid that is told to be put on the back, {wide} mm wide",
            *[
                _of_step(
                    42,
                    f"says '{wide} mm wide', and by finish.yaml 'back' is 120 × 120 mm and 8 mm thick; mend one of the two",
                )
            ]
            * told,
            sentence=f"Lay the lid on the front of the back, {wide} mm wide.",
        )
        for wide, told in ((140, 0), (130, 1))
    ),
    *(
        _case(
            f"two parts that the step tells to stand over alike, and {name} does by 15 mm",
            _of_step(
                29,
                "says '10 mm over at both ends', and by finish.yaml where those parts meet, their edges are 15 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
            ),
            sentence="Peg the lid on the back, 10 mm over at both ends, and the foot below it in the same way.",
            **{name: part},
        )
        for name, part in (
            ("lid", ("0,0 150,0 150,12 0,12", "-5,0")),
            ("foot", ("0,0 150,0 150,10 0,10", "-5,130")),
        )
    ),
    *(
        _case(
            f"a lid wider than the foot, and both are told to stand over alike: {sentence}",
            _of_step(
                column,
                f"says '{told}', and by finish.yaml where {whose} edges are 15 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
            ),
            lid=("0,0 150,0 150,12 0,12", "-5,0"),
            sentence=sentence,
        )
        for sentence, column, told, whose in (
            (
                "Peg the lid and the foot on the back, standing over by 10 mm at both ends.",
                42,
                "standing over by 10 mm",
                "'lid' meets others, its",
            ),
            (
                "Peg the lid across the top of the back, standing out 12 mm at both ends, and end.",
                44,
                "standing out 12 mm",
                "those parts meet, their",
            ),
        )
    ),
    _case(
        "a lid and a foot that stand over what lies between them, which the step does not name",
        sentence="Peg the lid across the top and the foot across the bottom, standing out 10 mm at both ends.",
    ),
    _case(
        "a post at either side, and not one on the other",
        sentence="Peg the left post to the left and the right post to the right, as the drawing has it.",
    ),
    _case(
        "posts that are told to stand out by the thickness of the back over its edges",
        _of_step(
            44,
            "says 'stand 8 mm out', and by finish.yaml no edges of the parts that it names lie so far apart: 10 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the posts on the back, so that they stand 8 mm out over its edges.",
    ),
    _case(
        "a post whose place has two figures exchanged, over the panel",
        "finishes/shelf/finish.yaml:11:62: advice: 'right post', at 28,10, lies over the panel from 28,20 to 40,120 and hides 12 % of it; write at: 128,10, or name the area under 'keep_out'",
        right_post=("0,0 12,0 12,124 0,124", "28,10"),
    ),
    _case(
        "a foot whose place has two figures exchanged, over the panel, and that stands over the back",
        "finishes/shelf/finish.yaml:13:56: advice: 'foot', at 0,103, lies over the panel from 20,103 to 120,113 and hides 10 % of it; write at: 0,130, or name the area under 'keep_out'",
        foot=("0,0 140,0 140,10 0,10", "0,103"),
    ),
    _case(
        "two posts that were made wider, and only one of which would stay behind the lid",
        f"{FINISH}:11:62: advice: 'left post' reaches 70 mm to the left of the middle of panel and parts, and 'right post' 74 mm to the right; write at: 124,10",
        left_post=("0,0 16,0 16,124 0,124", "0,10"),
        right_post=("0,0 16,0 16,124 0,124", "128,10"),
    ),
    _case(
        "a lid that was made wider than it is told together with the foot",
        _of_step(
            35,
            "says '140 mm long', and by finish.yaml 'lid' is 150 × 12 mm and 8 mm thick; mend one of the two",
        ),
        lid=("0,0 150,0 150,12 0,12", "-5,0"),
        sentence="Peg the lid and the foot, each 140 mm long, on the back.",
    ),
    _case(
        "a lid that is as wide as the foot, as is told",
        sentence="The foot is 140 mm wide, and so is the lid.",
    ),
    *(
        _case(
            f"a lid that was made wider than the sentence has it that {words}",
            *[
                _of_step(
                    29 + len(words) - len("the foot are"),
                    "says '140 mm long', and by finish.yaml 'lid' is 150 × 12 mm and 8 mm thick, 'foot' is 140 × 10 mm and 8 mm thick; mend one of the two",
                )
            ]
            * told,
            lid=("0,0 150,0 150,12 0,12", "-5,0"),
            sentence=f"The lid and {words} 140 mm long.",
        )
        for words, told in (("the foot are", 1), ("the foot are both", 1), ("back, the foot is", 0))
    ),
    *(
        _case(
            f"a lid, seen from its edge, that the step has {long} mm long",
            *[
                _of_step(
                    17,
                    "says '150 × 45 mm', and by finish.yaml 'lid' is a board of 140 × 45 mm, 12 mm thick; mend one of the two",
                )
            ]
            * (long == 150),
            lid=("0,0 140,0 140,12 0,12", "0,0", "thickness: 45 mm"),
            sentence=f"Saw the lid, {long} × 45 mm, once more.",
        )
        for long in (140, 150)
    ),
    *(
        _case(
            f"a left post that was made shorter than the step has {words}",
            f"{FINISH}:11:33: advice: 'right post' is 12 × 124 mm, and 'left post' 12 × 114 mm; mend the one that is wrong, here or that of 'left post' on line 10, so that the two are alike",
            *[
                _of_step(
                    20,
                    "says '124 mm high', and by finish.yaml 'left post' is 12 × 114 mm and 8 mm thick; mend one of the two",
                )
            ]
            * told,
            left_post=("0,0 12,0 12,114 0,114", "0,10"),
            sentence=f"Peg {words}, 124 mm high, on.",
        )
        for words, told in (("both posts", 1), ("the posts", 0))
    ),
    _case(
        "two parts told alike of which the step has neither",
        _of_step(
            34,
            "says '150 mm long', and by finish.yaml 'lid' is 140 × 12 mm and 8 mm thick, 'foot' is 140 × 10 mm and 8 mm thick; mend one of the two",
        ),
        sentence="The lid and the foot are both 150 mm long.",
    ),
    _case(
        "an upper rail that was made wider than the lower, and stands at the same place",
        f"{FINISH}:14:60: advice: 'upper rail' stands 10 mm to the right of the middle that the panel and other parts share; if it stays so wide, write at: -10,12 (and should 'lid' and 'foot' grow with it?); else mend its outline",
        saw="the posts, the upper rail and the low rail",
        upper_rail=("0,0 160,0 160,8 0,8", "0,12"),
        low_rail=("0,0 140,0 140,10 0,10", "0,118"),
    ),
    _case("parts that are all sawn", saw="every other part"),
    _case(
        "a post that is put below the board beside which it stands",
        _of_step(
            23,
            "puts 'right post' below 'back', and by 'at' in finish.yaml it stands beside that; mend the word, or the 'at' of one of the two there",
        ),
        sentence="Peg the right post below the back.",
    ),
    _case("a foot that is put below the back", sentence="Peg the foot below the back."),
    _case(
        "a lid at the other end of the back",
        _of_step(
            12,
            "puts 'lid' at the bottom of 'back', and by 'at' in finish.yaml it stands 118 mm above that; mend the word, or the 'at' of one of the two there",
        ),
        sentence="Peg the lid across the bottom of the back.",
    ),
    _case("a lid at its end of the back", sentence="Peg the lid across the top of the back."),
    _case(
        "pegs through a foot into the other edge of the back",
        _of_step(
            25,
            "puts 'foot' at the upper edge of 'back', and by 'at' in finish.yaml it stands 120 mm below that; mend the word, or the 'at' of one of the two there",
        ),
        sentence="Put pegs through the foot into the upper edge of the back.",
    ),
    _case(
        "posts that are level with another edge",
        _of_step(
            31,
            "says 'level with the upper edge', and by finish.yaml such edges of the parts that it names are not on one line; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the posts to the foot, level with the upper edge of it.",
    ),
    _case(
        "posts of which the ends are not level",
        _of_step(
            35,
            "says 'upper and lower ends level', and by finish.yaml such edges of the parts that it names are not on one line; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the left post to the back, upper and lower ends level.",
    ),
    _case(
        "posts of which the upper ends are level",
        sentence="Peg the left post to the back, upper ends level.",
    ),
    _case(
        "a foot that lies over the edge on which it is put",
        _of_step(
            12,
            "joins 'foot' to the edge of 'back', and in finish.yaml it lies 4 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        foot=("0,0 140,0 140,10 0,10", "0,126"),
        sentence="Peg the foot on the lower edge of the back.",
    ),
    _case(
        "a foot that lies over the edge as far as is told",
        foot=("0,0 140,0 140,10 0,10", "0,126"),
        sentence="Peg the foot on the lower edge of the back, so that it lies 4 mm over it.",
    ),
    _case(
        "a foot that is told to be thicker",
        _of_step(
            35,
            "says '9 mm thick', and by finish.yaml 'foot' is 140 × 10 mm and 8 mm thick; mend one of the two",
        ),
        sentence="Put pegs up the foot, which is 9 mm thick, into the back.",
    ),
    *(
        _case(
            f"a post with the paint or the coats of others: {sentence}",
            _of_coats(column, words, part, own)
            if own
            else f"{STEPS}:2:{column}: advice: here stands '{words}', and in finish.yaml '{part}' is painted with 'cress'; name that here, or mend 'paint' there",
            lid=("0,0 140,0 140,12 0,12", "0,0", "paint: cress"),
            foot=("0,0 140,0 140,10 0,10", "0,130", "coats: 3"),
            sentence=sentence,
        )
        for sentence, column, words, part, own in (
            ("Paint the back sage and the lid sage.", 32, "lid in sage", "lid", 0),
            (
                "Paint the back, the lid, the foot and the posts with 2 coats of sage.",
                24,
                "lid in sage",
                "lid",
                0,
            ),
            ("Paint the posts and the foot sage, two coats.", 28, "foot 2 coats", "foot", 3),
            ("Paint the foot and the posts with 2 coats of sage.", 14, "foot 2 coats", "foot", 3),
        )
    ),
    *(
        _case(
            f"parts with their own paints and coats: {sentence}",
            lid=("0,0 140,0 140,12 0,12", "0,0", "paint: cress"),
            foot=("0,0 140,0 140,10 0,10", "0,130", "coats: 3"),
            sentence=sentence,
        )
        for sentence in (
            "Paint the back sage and the lid cress.",
            "Paint the back and the posts sage, two coats each, the lid cress, two coats, and the foot sage, three coats.",
        )
    ),
    _case(
        "a lid that alone is said to stand out otherwise",
        _of_step(
            17,
            "says 'standing out 7 mm', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid, standing out 7 mm at both ends.",
    ),
    _case(
        "a post that stands out aside otherwise, by as much as it is thick",
        _of_step(
            35,
            "says 'standing out 8 mm', and by finish.yaml no edges of the parts that it names lie so far apart: 10 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the left post on the back, standing out 8 mm at its side.",
    ),
    _case(
        "a lid that lies otherwise over the back",
        _of_step(
            27,
            "says 'lies 5 mm over', and by finish.yaml no edges of the parts that it names lie so far apart: 2 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid so that it lies 5 mm over the back.",
    ),
    _case(
        "another paint for a lid, when the first is dry",
        f"{STEPS}:2:14: advice: here stands 'lid in sage', and in finish.yaml 'lid' is painted with 'cress'; name that here, or mend 'paint' there",
        lid=("0,0 140,0 140,12 0,12", "0,0", "paint: cress"),
        sentence="Paint the lid with two coats of cress, and when that is dry with two coats of sage.",
    ),
    _case(
        "a lid that overlaps the back otherwise",
        _of_step(
            17,
            "says 'overlapping the back by 5 mm', and by finish.yaml no edges of the parts that it names lie so far apart: 2 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid, overlapping the back by 5 mm.",
    ),
    _case(
        "posts whose ends stand elsewhere above the foot's",
        _of_step(
            37,
            "says 'lower ends 16 mm above its lower edge', and by finish.yaml no edges of the parts that it names lie so far apart: 6 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the posts on the foot, their lower ends 16 mm above its lower edge.",
    ),
    _case(
        "a lid that stands out less to the left and to the right",
        _of_step(
            29,
            "says 'standing over by 3 mm', and by finish.yaml where those parts meet, their edges are 10 mm apart at both ends; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid on the back, standing over by 3 mm on the left and on the right.",
    ),
    _case(
        "a lid that is flush with the sides of the foot",
        sentence="Paint the lid and the foot, flush with the sides.",
    ),
    _case(
        "a lid that is not flush with the sides of the back",
        _of_step(
            29,
            "says 'flush with its sides', and by finish.yaml such edges of the parts that it names are not on one line; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Peg the lid on the back, flush with its sides.",
    ),
    _case(
        "a lid that is said to stand beyond the back",
        _of_step(
            12,
            "says 'stands 3 mm beyond', and by finish.yaml no edges of the parts that it names lie so far apart: 10 mm comes nearest; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="The lid stands 3 mm beyond the back.",
    ),
    *(
        _case(f"ends that lie as the step says: {sentence}", sentence=sentence)
        for sentence in (
            "Peg the foot to the back, its ends in line with those of the lid.",
            "Peg the lid on the back, 10 mm over at both ends.",
            "Peg the lid over the back, each 10 mm from its ends.",
            "Peg the back on the foot, 10 mm from either end.",
            "Peg the left post on the back, so that 4 mm of it stand below the back's lower edge.",
            "Peg the posts on the back, their feet 4 mm below its lower edge. Peg the lid on them.",
            "Peg a post on either side, so that it laps over the back by 2 mm.",
            "Peg the posts on the back, each over it by 2 mm.",
            "Peg the lid on the posts, so that 2 mm of it overlap.",
            "Peg the lid on the posts, so that 2 mm of it lie on them.",
        )
    ),
    *(
        _case(
            f"ends that do not lie as the step says: {sentence}",
            _of_step(
                column,
                f"says '{told}', and by finish.yaml {how}; mend the step, or an 'outline' or 'at' there",
            ),
            sentence=sentence,
        )
        for sentence, column, told, how in (
            (
                "Smooth the foot, its ends in line with those of the back.",
                25,
                "ends in line with those of",
                "such edges of the parts that it names are not on one line",
            ),
            (
                "Peg the posts on the back, their tops 4 mm above its upper edge.",
                37,
                "tops 4 mm above its upper edge",
                "no edges of the parts that it names lie so far apart",
            ),
            (
                "Peg the posts on the back, 4 mm above its top.",
                31,
                "4 mm above its top",
                "no edges of the parts that it names lie so far apart",
            ),
            (
                "Peg the back on the foot, 12 mm from either end.",
                30,
                "12 mm from either end",
                "where those parts meet, their edges are 10 mm apart at both ends",
            ),
            (
                "Peg the left post on the back, so that 4 mm of it stand above the back's upper edge.",
                43,
                "4 mm of it stand above the back's upper…",
                "no edges of the parts that it names lie so far apart",
            ),
            (
                "Peg a post on either side, so that it laps over the back by 6 mm.",
                42,
                "laps over the back by 6 mm",
                "no edges of the parts that it names lie so far apart: 2 mm comes nearest",
            ),
            (
                "Peg the posts on the back, each over it by 6 mm.",
                36,
                "over it by 6 mm",
                "no edges of the parts that it names lie so far apart: 4 mm comes nearest",
            ),
            (
                "Peg the lid on the posts, so that 4 mm of it overlap.",
                38,
                "4 mm of it overlap",
                "no edges of the parts that it names lie so far apart: 2 mm comes nearest",
            ),
            (
                "Peg the lid on the back, 12 mm over at both ends.",
                29,
                "12 mm over at both ends",
                "where those parts meet, their edges are 10 mm apart at both ends",
            ),
            (
                "Peg the posts on the foot, each 16 mm from its end.",
                31,
                "each 16 mm from its end",
                "where those parts meet, their edges are 0 mm apart at both ends",
            ),
        )
    ),
    *(
        _case(
            f"a knob at {at}: {sentence}",
            *[
                _of_step(
                    4 + sentence.index("knob"),
                    f"puts 'knob' {said}, and by 'at' in finish.yaml it stands {stands} that; mend the word, or the 'at' of one of the two there",
                )
            ]
            * bool(said),
            saw="the posts, the knob",
            foot=("0,0 140,0 140,30 0,30", "0,130"),
            knob=("0,0 12,0 12,12 0,12", at),
            sentence=sentence,
        )
        for sentence, at, said, stands in (
            (
                "Put the knob on the middle of the foot.",
                "64,148",
                "in the middle of 'foot'",
                "9 mm below",
            ),
            ("Put the knob on the middle of the foot.", "64,139", "", ""),
            ("Put the knob on the middle of the foot, just below the back.", "64,148", "", ""),
            (
                "Lay the foot on the table, peg the knob on it, in the middle.",
                "84,139",
                "in the middle of 'foot'",
                "20 mm to the right of",
            ),
            ("Lay the foot on the table, peg the knob on it, in the middle.", "64,148", "", ""),
            ("Lay the foot below the back, peg the knob on it, in the middle.", "84,139", "", ""),
            ("Put the pegs of the knob in the middle of the foot.", "64,148", "", ""),
            (
                "Peg the knob over the bottom of the back.",
                "64,6",
                "at the bottom of 'back'",
                "112 mm above",
            ),
            ("Peg the knob over the top of the back.", "64,6", "", ""),
        )
    ),
    *(
        _case(
            f"a knob at the other edge: {sentence}",
            _of_step(
                column,
                "puts 'knob' at the right edge of 'lid', and by 'at' in finish.yaml it stands 128 mm to the left of that; mend the word, or the 'at' of one of the two there",
            ),
            saw="the posts, the knob",
            knob=("0,0 12,0 12,12 0,12", "0,0"),
            sentence=sentence,
        )
        for sentence, column in (
            ("Peg the knob on the front of the lid at its right edge.", 12),
            (
                "Peg the lid on the posts, and the knob on the front of the lid at its right edge.",
                43,
            ),
        )
    ),
    *(
        _case(
            f"a paint before its parts, of which one is {paint}: {sentence}",
            *[f"{STEPS}:2:{column}: advice: here stands {told}"] * bool(column),
            lid=("0,0 140,0 140,12 0,12", "0,0", f"paint: {paint}"),
            sentence=sentence,
        )
        for paint, sentence, column, told in (
            ("sage", "Paint two coats of sage on the back and two on the lid.", 0, ""),
            (
                "sage",
                "Paint two coats of sage on the back and three on the lid.",
                57,
                "'lid 3 coats', and in finish.yaml 'lid' has 2; mend the number here, or 'coats' there",
            ),
            (
                "cress",
                "Paint two coats of sage on the back and two on the lid.",
                55,
                "'sage on the lid', and in finish.yaml 'lid' is painted with 'cress'; name that here, or mend 'paint' there",
            ),
            (
                "cress",
                "Paint two coats of sage on the back, and the lid in cress.",
                0,
                "",
            ),
        )
    ),
    *(
        _case(
            f"a foot between the posts, {edge}",
            *[
                _of_step(
                    12,
                    "puts 'foot' at the upper edge of 'back', and by 'at' in finish.yaml it stands 120 mm below that; mend the word, or the 'at' of one of the two there",
                )
            ]
            * (edge == "upper"),
            left_post=("0,0 12,0 12,120 0,120", "0,10"),
            right_post=("0,0 12,0 12,120 0,120", "128,10"),
            sentence=f"Peg the foot between the posts, against the {edge} edge of the back. Peg the lid on the posts.",
        )
        for edge in ("lower", "upper")
    ),
    _case(
        "a back that lies behind each post which is to be at its side",
        _of_step(
            8,
            "joins 'left post' to the edge of 'back', and in finish.yaml it lies 12 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        back=("0,0 140,0 140,120 0,120", "0,10"),
        sentence="Peg a post to each side of the back.",
    ),
    _case(
        "a back that was made too broad to stand between the posts",
        _of_step(
            12,
            "joins 'back' to the edge of 'left post', and in finish.yaml it lies 5 mm over it; mend an 'outline' or 'at' there, or the step",
        ),
        back=("0,0 126,0 126,120 0,120", "7,10"),
        sentence="Peg the back between the two posts.",
    ),
    _case(
        "a foot that is no longer than the lid",
        _of_step(
            32,
            "says 'standing over at both ends', and by finish.yaml none of the parts that it names does; mend the step, or an 'outline' or 'at' there",
        ),
        sentence="Smooth the foot and the lid standing over at both ends.",
    ),
    _case(
        "a lid that is longer than the back",
        sentence="Smooth the back and the lid standing over at both ends.",
    ),
    *(
        _case(
            f"a foot in the same sentence as the lid: {sentence}",
            *[
                _of_step(
                    column,
                    "puts 'foot' on the front of 'back', and by 'at' in finish.yaml it stands below that; mend the word, or the 'at' of one of the two there",
                )
            ]
            * bool(column),
            sentence=sentence,
        )
        for sentence, column in (
            ("Peg the lid on the posts, and the foot on the front of the back.", 43),
            (
                "Peg the foot on the posts, and both of them on the front of the back. Peg the lid on them.",
                48,
            ),
            ("Peg the lid on the posts, and the posts on the foot. Peg the back on them.", 0),
        )
    ),
    _case(
        "steps that speak twice of a part which the piece has not",
        _of_step(
            23,
            "speaks of 'plinth', here and on line 3, and no part in finish.yaml is called so; name one of its parts, 'back', 'left post', 'right post', 'lid' and 1 more, or take it out",
        ),
        sentence="Peg the lid on the plinth.\n3. Paint the plinth.",
    ),
    _case(
        "a step that glues on a part which the piece has not",
        _of_step(
            23,
            "speaks of 'plinth', and no part in finish.yaml is called so; name one of its parts, 'back', 'left post', 'right post', 'lid' and 1 more, or take it out",
        ),
        sentence="Peg the lid on the plinth.",
    ),
    _case(
        "a part by nearly its name, and the handle of a tool",
        sentence="Peg the lid on the shelf, and hold the saw by the handle of it.",
    ),
)
