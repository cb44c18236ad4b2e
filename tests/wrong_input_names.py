"""Names that stand for nothing or twice, and keys that cannot be stitched from.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

import re

from tests.content_builder import (
    CHART,
    CLOTH,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    SERIES,
    TINY,
    Change,
    cut,
)
from tests.wrong_input_case import BLEND, PART, Case

SYMBOLS = f"{FERN}/symbols.yaml"


def fern_called(name: str, in_order: str) -> dict[str, Change]:
    """The pattern's folder has this name, and the order of the series says another or the same."""
    files = [path for path in TINY if path.startswith(f"{FERN}/")]
    moved: dict[str, Change] = {path.replace("/fern/", f"/{name}/"): TINY[path] for path in files}
    return {**dict.fromkeys(files), **moved, SERIES: ("order: [fern]", f"order: [{in_order}]")}


_CAPITALS = "the name 'Fern' cannot be part of a web address; use small letters, digits and hyphens, for example 'fern', in the order of series.yaml too"

CASES = (
    Case(
        "a folder with a capital",
        fern_called("Fern", "fern"),
        f"series/garden-year/Fern:1:1: {_CAPITALS}",
    ),
    Case(
        "a folder with a capital, and the order has it too",
        fern_called("Fern", "Fern"),
        f"series/garden-year/Fern:1:1: {_CAPITALS}",
    ),
    Case(
        "a pattern's folder copied in a file manager, with a new title",
        {
            f"{FERN} copy/{name}": TINY[f"{FERN}/{name}"].replace("Fern by the Tap", "Ivy Wall")
            for name in ("pattern.yaml", "chart.txt", "story.md", "stitching.md")
        },
        "series/garden-year/series.yaml:13:8: advice: the folder 'fern copy' is not in the series' order, so it is left out; call it 'ivy-wall' and add that here, or let the folder's name begin with '_'",
    ),
    Case(
        "cloth and colour that changed places",
        {PATTERN: ("{cloth: hopsack-28, colour: frost}", "{cloth: frost, colour: hopsack-28}")},
        "series/garden-year/fern/pattern.yaml:6:13: cloth and colour changed places; write cloth: hopsack-28, colour: frost",
    ),
    Case(
        "a folder with spaces and another name in the order",
        fern_called("By the Tap", "fern"),
        "series/garden-year/series.yaml:13:8: advice: the folder 'By the Tap' is not in the series' order, so it is left out; call it 'by-the-tap' and add that here, or let the folder's name begin with '_'",
        "series/garden-year/series.yaml:13:9: there is no pattern folder 'fern'; known here: by-the-tap",
    ),
    Case(
        "an unknown thread card",
        {SERIES: ("card: moss", "card: mos")},
        "series/garden-year/series.yaml:6:24: there is no thread card 'mos'; did you mean 'moss'? (or write threads/mos.yaml)",
    ),
    Case(
        "advice laid aside by a name that there is not",
        {
            PATTERN: TINY[PATTERN]
            + "laid_aside: [{advice: skein-litle, because: the eye is worth it}]\n"
        },
        "series/garden-year/fern/pattern.yaml:28:23: there is no kind of advice 'skein-litle'; did you mean 'skein-little'?",
    ),
    Case(
        "advice laid aside twice",
        {
            SERIES: TINY[SERIES]
            + "laid_aside:\n  - {advice: photo-missing, because: no model yet}\n  - {advice: photo-missing, because: really}\n"
        },
        "series/garden-year/series.yaml:21:14: the kind of advice 'photo-missing' stands here a second time (first on line 20); keep one of the two",
    ),
    Case(
        "an unknown cloth",
        {PATTERN: ("cloth: hopsack-28", "cloth: hopsak-28")},
        "series/garden-year/fern/pattern.yaml:6:13: there is no cloth 'hopsak-28'; did you mean 'hopsack-28'? (or write cloths/hopsak-28.yaml)",
    ),
    Case(
        "an unknown colour of cloth",
        {PATTERN: ("colour: frost", "colour: forst")},
        "series/garden-year/fern/pattern.yaml:6:33: Hopsack 28 has no colour 'forst'; did you mean 'frost'?",
    ),
    Case(
        "an unknown bead card",
        {PATTERN: ("card: drop", "card: drip")},
        "series/garden-year/fern/pattern.yaml:17:12: there is no bead card 'drip'; did you mean 'drop'? (or write beads/drip.yaml)",
    ),
    Case(
        "a bead's number without its nought",
        {PATTERN: ('card: drop, number: "07"', 'card: drop, number: "7"')},
        "series/garden-year/fern/pattern.yaml:17:26: Drop Glass has no bead '7'; did you mean '07' (hip red)?",
    ),
    Case(
        "an unknown designer",
        {PATTERN: ("designer: alder", "designer: elder")},
        "series/garden-year/fern/pattern.yaml:2:11: there is no designer 'elder'; did you mean 'alder'? (or add elder to 'designers' in series.yaml)",
    ),
    Case(
        "a designer's name where her id is due",
        {PATTERN: ("designer: alder", "designer: Wren Alder")},
        "series/garden-year/fern/pattern.yaml:2:11: there is no designer 'Wren Alder'; write 'alder', which goes by that name",
    ),
    Case(
        "an unknown finishing piece",
        {SERIES: ("finish: shelf", "finish: shelve")},
        "series/garden-year/series.yaml:4:9: there is no finishing piece 'shelve'; did you mean 'shelf'? (or write finishes/shelve/finish.yaml)",
    ),
    Case(
        "an unknown paint",
        {FINISH: ("paint: sage", "paint: sago")},
        "finishes/shelf/finish.yaml:14:12: there is no paint 'sago'; did you mean 'sage'?",
    ),
    Case(
        "an unknown thread set",
        {PATTERN: ("thread_sets: [moss, spool]", "thread_sets: [moss, spol]")},
        "series/garden-year/fern/pattern.yaml:7:21: there is no thread set 'spol'; did you mean 'spool'?",
    ),
    Case(
        "a thread number that the card lacks",
        {PATTERN: ("r: {moss: E2,", "r: {moss: E3,")},
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'E3'; known in threads/moss.yaml: E2 brick, K4 peat, 07 fern; or add it there",
    ),
    *(
        Case(
            f"a thread number that the card lacks, one slip from {free} and from one of another line",
            {
                PATTERN: TINY[PATTERN]
                .replace("r: {moss: E2,", 'r: {moss: "114",')
                .replace("k: {moss: K4,", 'k: {moss: "117",')
                .replace('[E2, "07"]', '["117", "214"]'),
                MOSS: TINY[MOSS]
                .replace("E2", f'"{free}"')
                .replace("K4", '"117"')
                .replace('"07"', '"214"'),
            },
            f"series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour '114'; {offered}",
        )
        for free, offered in (
            ("141", "did you mean '141' (brick)?"),
            (
                "E2",
                "known in threads/moss.yaml: 117 peat, 214 fern, E2 brick; or add it there",
            ),
        )
    ),
    Case(
        "a thread number that the card lacks, and the right one beside the chart",
        {
            PATTERN: ("k: {moss: K4,", "k: {moss: K5,"),
            CHART: "# k: K4 peat\n" + TINY[CHART],
        },
        "series/garden-year/fern/pattern.yaml:10:13: Moss Stranded has no colour 'K5'; known in threads/moss.yaml: K4 peat, E2 brick, 07 fern; or add it there",
    ),
    Case(
        "two thread numbers that changed places",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: "10", spool: E2}')},
        """series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour '10'; it and 'E2' have changed places: write moss: "E2", spool: "10\"""",
    ),
    Case(
        "a thread of another card without its braces",
        {
            PATTERN: ("r: {moss: E2,", "r: {moss: braid G3,"),
            "threads/braid.yaml": TINY[MOSS]
            .replace("Moss Stranded", "Moth Braid")
            .replace("E2", "G3")
            .replace("strands: 6", "strands: 1"),
        },
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'braid G3'; write {card: braid, number: G3}",
    ),
    Case(
        "a colour's name where its number is due",
        {PATTERN: ("r: {moss: E2,", "r: {moss: peat,")},
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'peat'; write 'K4', which goes by that name",
    ),
    Case(
        "a thread number without its nought",
        {PATTERN: ('[E2, "07"]', "[E2, 7]")},
        "series/garden-year/fern/pattern.yaml:11:18: Moss Stranded has no colour '7'; did you mean '07' (fern)?",
    ),
    Case(
        "number and name of a thread together",
        {PATTERN: ("r: {moss: E2,", "r: {moss: E2 brick,")},
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'E2 brick'; write 'E2', the number alone",
    ),
    Case(
        "a thread number with a name that is not quite its own",
        {PATTERN: ("r: {moss: E2,", "r: {moss: E2 bricks,")},
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'E2 bricks'; did you mean 'E2' (brick)?",
    ),
    Case(
        "a number and a name that are of two threads",
        {PATTERN: ("r: {moss: E2,", "r: {moss: E2 peat,")},
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'E2 peat'; known in threads/moss.yaml: E2 brick, K4 peat, 07 fern; or add it there",
    ),
    Case(
        "backstitch in an unknown mark",
        {PATTERN: ("colour: k, path", "colour: K, path")},
        "series/garden-year/fern/pattern.yaml:13:14: the mark 'K' is not in the key; did you mean 'k'?",
    ),
    Case(
        "a French knot in an unknown mark",
        {PATTERN: ("colour: r, at", "colour: z, at")},
        "series/garden-year/fern/pattern.yaml:15:14: the mark 'z' is not in the key; known here: b, k, r",
    ),
    Case(
        "a designer's id given twice",
        {SERIES: ("designers:\n", "designers:\n  - {id: alder, name: A, about: B}\n")},
        "series/garden-year/series.yaml:10:9: the designer 'alder' stands here a second time (first on line 9); keep one of the two, or give one of them another id",
    ),
    Case(
        "a pattern twice in the order",
        {SERIES: ("order: [fern]", "order: [fern, fern]")},
        "series/garden-year/series.yaml:13:15: the pattern 'fern' stands here a second time (first on line 13); keep one of the two",
    ),
    Case(
        "a paint given twice",
        {
            FINISH: (
                "paints:\n",
                'paints:\n  - {name: sage, hex: "#b0c8b3", put_on_with: brush, covers: 10 m2 per litre, dries_in: 1 h, tin: 100 ml}\n',
            )
        },
        "finishes/shelf/finish.yaml:19:11: the paint 'sage' stands here a second time (first on line 18); keep one of the two, or give one of them another name",
    ),
    Case(
        "a thread number given twice",
        {MOSS: ("number: K4", "number: E2")},
        "threads/moss.yaml:10:14: the number 'E2' stands here a second time (first on line 9); give each colour its own",
    ),
    Case(
        "a colour of cloth given twice",
        {CLOTH: ("name: oatmeal", "name: frost")},
        "cloths/hopsack-28.yaml:7:12: the name 'frost' stands here a second time (first on line 6); give each colour its own",
    ),
    Case(
        "two cloths of one name",
        {"cloths/sacking-20.yaml": TINY[CLOTH].replace("Hopsack 28", "hopsack 28")},
        "cloths/sacking-20.yaml:1:7: advice: 'cloths/hopsack-28.yaml' is called 'hopsack 28' too, so a packet does not tell the two apart; give one of them another name",
    ),
    Case(
        "two thread cards of one name",
        {"threads/spool.yaml": ("name: Spool Twelve", "name: Moss Stranded")},
        "threads/spool.yaml:1:7: advice: 'threads/moss.yaml' is called 'Moss Stranded' too, so a packet does not tell the two apart; give one of them another name",
    ),
    Case(
        "a pattern folder with a new name that has a space",
        {path: None for path in TINY if path.startswith(FERN)}
        | {
            path.replace("/fern/", "/The Fern/"): text
            for path, text in TINY.items()
            if path.startswith(FERN)
        },
        "series/garden-year/series.yaml:13:9: there is no pattern folder 'fern'; give the folder 'The Fern' that name, or call it 'the-fern' and write that here",
    ),
    Case(
        "the name of a card for that of its thread set",
        {
            "threads/reel.yaml": TINY["threads/spool.yaml"],
            "threads/spool.yaml": None,
            SERIES: ("card: spool", "card: reel"),
            PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, reel: "10"}'),
        },
        "series/garden-year/fern/pattern.yaml:9:17: 'reel' is no thread set and not part of a key line; it is the card of the thread set 'spool': write spool here",
    ),
    Case(
        "a thread set misspelt in a key line",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spol: "10"}')},
        "series/garden-year/fern/pattern.yaml:9:17: 'spol' is no thread set and not part of a key line; did you mean 'spool'?",
    ),
    Case(
        "a stitch with a word too many",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", stitch: half cross}')},
        "series/garden-year/fern/pattern.yaml:9:38: 'stitch' cannot be 'half cross'; did you mean 'half'?",
    ),
    Case(
        "a thread set with a name of another meaning",
        {SERIES: ("name: moss,", "name: strands,")},
        "series/garden-year/fern/pattern.yaml:7:15: there is no thread set 'moss', named on 4 lines; known in series.yaml: spool, strands",
        "series/garden-year/series.yaml:6:12: a thread set cannot be called 'strands', which has a meaning in key lines; choose another name",
    ),
    Case(
        "a content folder without a series",
        {path: None for path in TINY if path.startswith("series")},
        "series:1:1: there is no series in this folder; make a folder for it, for example series/garden-year, with a series.yaml",
    ),
    Case(
        "a pattern in the order that has no folder",
        {SERIES: ("order: [fern]", "order: [fern, ferns]")},
        "series/garden-year/series.yaml:13:15: there is no pattern folder 'ferns'; did you mean 'fern'?",
    ),
    Case(
        "a slip in the order: the folder that is meant has no line of its own",
        {SERIES: ("order: [fern]", "order: [fren]")},
        "series/garden-year/series.yaml:13:9: there is no pattern folder 'fren'; did you mean 'fern'?",
    ),
    Case(
        "a cloth that nobody has written yet",
        {PATTERN: ("cloth: hopsack-28", "cloth: linen-32")},
        "series/garden-year/fern/pattern.yaml:6:13: there is no cloth 'linen-32'; known here: hopsack-28 (or write cloths/linen-32.yaml)",
    ),
    Case(
        "a pattern folder that is not in the order",
        {f"{FERN}-two/pattern.yaml": "title: Draft\n"},
        "series/garden-year/series.yaml:13:8: advice: the folder 'fern-two' is not in the series' order, so it is left out; add it here, or let the folder's name begin with '_'",
    ),
    Case(
        "a key without lines",
        {PATTERN: cut(PATTERN, "key:", "credits:", "key: {}\n"), CHART: "..\n"},
        "series/garden-year/fern/pattern.yaml:8:6: the key has no lines; write one for each mark of the chart, for example r: {larkmoss: E2}",
    ),
    Case(
        "the mark for bare cloth in the key",
        {PATTERN: ("  r: {moss", "  .: {moss")},
        "series/garden-year/fern/pattern.yaml:9:3: '.' cannot be a mark: it stands for bare cloth; choose another sign",
    ),
    Case(
        "a mark of two characters",
        {PATTERN: ("  r: {moss", "  rr: {moss")},
        "series/garden-year/fern/pattern.yaml:9:3: the mark 'rr' is 2 characters long; use a single one, such as its first",
    ),
    Case(
        "a mark that cannot stand alone",
        {PATTERN: ("  r: {moss", '  "\u0301": {moss')},
        "series/garden-year/fern/pattern.yaml:9:3: U+0301 cannot be a mark: it cannot be seen by itself; choose another sign",
    ),
    Case(
        "a knot in a mark that is none",
        {PATTERN: ("french_knots:\n  - {colour: r", "french_knots:\n  - {colour: q")},
        "series/garden-year/fern/pattern.yaml:15:14: the mark 'q' is not in the key; known here: b, k, r",
    ),
    Case(
        "a key line that leaves out a thread set",
        {PATTERN: ('r: {moss: E2, spool: "10"}', "r: {moss: E2}")},
        "series/garden-year/fern/pattern.yaml:9:3: the key line 'r' says nothing for the thread set 'spool'; add its number there",
    ),
    Case(
        "a second thread set that the whole key leaves out",
        {
            PATTERN: TINY[PATTERN]
            .replace(', spool: "10"', "")
            .replace(', spool: "12"', "")
            .replace(', spool: ["10", "14"]', "")
        },
        "series/garden-year/fern/pattern.yaml:9:3: no line of the key says anything for the thread set 'spool'; add its numbers, r: {moss: …, spool: …}, or let them be matched: matched: {spool: moss}",
    ),
    Case(
        "a model's set that the whole key leaves out",
        {
            PATTERN: TINY[PATTERN]
            .replace("[moss, spool]", "[spool, moss]")
            .replace(', spool: "10"', "")
            .replace(', spool: "12"', "")
            .replace(', spool: ["10", "14"]', "")
        },
        "series/garden-year/fern/pattern.yaml:9:3: no line of the key says anything for the thread set 'spool'; add its numbers, r: {moss: …, spool: …}, or put moss first in thread_sets, with matched: {spool: moss}",
    ),
    Case(
        "a key with a thread set that the pattern does not offer",
        {PATTERN: ("thread_sets: [moss, spool]", "thread_sets: [moss]")},
        "series/garden-year/fern/pattern.yaml:9:17: the key names the thread set 'spool', which this pattern does not offer; add it to thread_sets, or take it out of every key line",
    ),
    Case(
        "a name misspelt in a key line",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", stich: half}')},
        "series/garden-year/fern/pattern.yaml:9:30: 'stich' is no thread set and not part of a key line; did you mean 'stitch'?",
    ),
    Case(
        "more strands than the thread has",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", strands: {moss: 7}}')},
        "series/garden-year/fern/pattern.yaml:9:46: 7 strands of Moss Stranded, which has 6; write how many a stitch is worked with, 2 on most cloth, or mend 'strands' in threads/moss.yaml",
    ),
    Case(
        "strands for an unknown thread set",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", strands: {mos: 1}}')},
        "series/garden-year/fern/pattern.yaml:9:40: there is no thread set 'mos'; did you mean 'moss'?",
    ),
    Case(
        "two strands of a thread used whole",
        {SERIES: ("card: spool, strands: 1", "card: spool, strands: 2")},
        "series/garden-year/series.yaml:7:41: 2 strands of Spool Twelve, which has 1; it is used whole, so write 1, or mend 'strands' in threads/spool.yaml",
    ),
    Case(
        "a blend of three colours",
        {PATTERN: ('[E2, "07"]', '[E2, "07", K4]')},
        "series/garden-year/fern/pattern.yaml:11:13: a blend of 3 colours; give one number, or two for a blend",
    ),
    Case(
        "a blend of a colour with itself",
        {PATTERN: ('[E2, "07"]', "[E2, E2]")},
        "series/garden-year/fern/pattern.yaml:11:18: a blend of 'E2' with itself; give that number once, without brackets",
    ),
    Case(
        "two marks stitched alike",
        {PATTERN: ("k: {moss: K4", "k: {moss: E2")},
        "series/garden-year/fern/pattern.yaml:10:13: 'k' and 'r' are stitched alike in 'moss', both with 'E2'; write 'K4' for 'k': of the free colours 'peat' is the nearest to that in 'spool'",
    ),
    Case(
        "two marks stitched alike of which the first is the slip",
        {PATTERN: ("r: {moss: E2", "r: {moss: K4")},
        "series/garden-year/fern/pattern.yaml:9:13: 'r' and 'k' are stitched alike in 'moss', both with 'K4'; write 'E2' for 'r': of the free colours 'brick' is the nearest to that in 'spool'",
    ),
    Case(
        "two marks stitched alike where the tool chooses the other set",
        {
            PATTERN: TINY[PATTERN]
            .replace('k: {moss: K4, spool: "12"}', "k: {moss: E2}")
            .replace(', spool: "10"}', "}")
            .replace(', spool: ["10", "14"]}', "}")
            .replace("key:\n", "matched: {spool: moss}\nkey:\n")
        },
        "series/garden-year/fern/pattern.yaml:11:13: 'k' and 'r' are stitched alike in 'moss', both with 'E2'; change the one that is a slip; or use one mark for both, in the chart too",
    ),
    Case(
        "a line in a thread that the key lacks, by its number",
        {
            PATTERN: ("{colour: k, path", '{colour: "08", path'),
            MOSS: ("colours:\n", 'colours:\n  - {number: "08", name: slate, hex: "#50565e"}\n'),
        },
        "series/garden-year/fern/pattern.yaml:13:14: the mark '08' is not in the key; for the thread 08 slate add a line to the key, such as z: {moss: \"08\"}, and write z here",
    ),
    Case(
        "a thread in the instructions that the key has no more",
        {
            PATTERN: TINY[PATTERN].replace(
                '"07"], spool: ["10", "14"]', 'K4], spool: ["10", "12"]'
            ),
            f"{FERN}/stitching.md": "Begin in the middle, with 07 fern.\n",
        },
        "series/garden-year/fern/stitching.md:1:27: advice: '07' is fern of Moss Stranded, and no line of the key has that thread; name one of the key, or take '07 fern' out; or mend the key",
    ),
    *(
        Case(
            f"a number and a name of two colours, of which the key has one: {words}",
            {
                MOSS: TINY[MOSS] + '  - {number: K5, name: marl, hex: "#705040"}\n',
                f"{FERN}/stitching.md": f"Fill it with {words}.\n",
            },
            f"series/garden-year/fern/stitching.md:1:14: advice: here stands '{words}', and {told}",
        )
        for words, told in (
            ("K4 marl", "'marl' is 'K5' on Moss Stranded; write 'peat', which is 'K4'"),
            ("K5 peat", "'peat' is 'K4' on Moss Stranded; write 'K4', or take the number out"),
        )
    ),
    *(
        Case(
            f"a colour that the key has no more, in a step of its own: {notes}",
            {
                PATTERN: TINY[PATTERN].replace(
                    '"07"], spool: ["10", "14"]', 'K4], spool: ["10", "12"]'
                ),
                f"{FERN}/stitching.md": f"{notes}\n",
            },
            *[
                f"series/garden-year/fern/stitching.md:1:{column}: advice: 'fern' is 07 of Moss Stranded, and no line of the key has that thread; name one of the key{', as ' + repr('brick') if 'peat' in notes else ''}, or take it out; or mend the key"
            ]
            * bool(column),
        )
        for notes, column in (
            ("Work the lace in fern.", 18),
            ("Work the rail, in fern: two rows.", 19),
            ("Outline it with one strand of fern.", 31),
            ("Work the rim in peat, then the lace in fern from the rim upwards.", 40),
            ("Work the lace in fern shade.", 0),
            ("Work the lace in the fern.", 0),
        )
    ),
    *(
        Case(
            f"a short name of two words, misspelt where something is worked in it: {notes}",
            {
                MOSS: TINY[MOSS].replace("name: brick", "name: plum dusk"),
                f"{FERN}/stitching.md": f"{notes}\n",
            },
            *[
                f"series/garden-year/fern/stitching.md:1:{column}: advice: here stands 'plum dust', and 'E2' of Moss Stranded is called 'plum dusk'; write 'plum dusk'"
            ]
            * bool(column),
        )
        for notes, column in (
            ("The rim is in peat and plum dust.", 24),
            ("Fill it with plum dust.", 14),
            ("A plum dust lay on it.", 0),
        )
    ),
    *(
        Case(
            f"a card with numbers of one figure: {notes}",
            {
                MOSS: TINY[MOSS].replace("E2", "9")
                + '  - {number: "8", name: marl, hex: "#705040"}\n',
                PATTERN: TINY[PATTERN].replace("E2", '"9"'),
                f"{FERN}/stitching.md": f"{notes}\n",
            },
            *[f"series/garden-year/fern/stitching.md:1:{told}"] * bool(told),
        )
        for notes, told in (
            ("Fill it with 9 brick.", ""),
            ("There are 8 brick pots, and 3 brick stitches. A brick wall has 1 peat heap.", ""),
            (
                "Fill it with 8 brick.",
                "14: advice: here stands '8 brick', and 'brick' is '9' on Moss Stranded; write '9', or take the number out",
            ),
            (
                "Fill it with 12 brick.",
                "14: advice: here stands '12 brick', and 'brick' is '9' on Moss Stranded; write '9', or 'earth', which is '12', or take the number out",
            ),
            (
                "Fill it with 8 marl.",
                "14: advice: '8' is marl of Moss Stranded, and no line of the key has that thread; name one of the key, or take '8 marl' out; or mend the key",
            ),
        )
    ),
    *(
        Case(
            f"a thread of one word in the notes beside one of the key, that the key has no more: {words}",
            {
                PATTERN: TINY[PATTERN].replace(
                    '"07"], spool: ["10", "14"]', 'K4], spool: ["10", "12"]'
                ),
                f"{FERN}/stitching.md": f"A fern stands in the peat. Fill it in {words}.\n",
            },
            f"series/garden-year/fern/stitching.md:1:{column}: advice: 'fern' is 07 of Moss Stranded, and no line of the key has that thread; name one of the key, or take it out; or mend the key",
        )
        for words, column in (
            ("brick and fern", 49),
            ("fern and the brick", 39),
        )
    ),
    Case(
        "a thread in the notes, by its number alone, that the key has no more",
        {
            PATTERN: TINY[PATTERN].replace(
                '"07"], spool: ["10", "14"]', 'K4], spool: ["10", "12"]'
            ),
            f"{FERN}/stitching.md": "Begin in the middle, with thread 07.\n",
        },
        "series/garden-year/fern/stitching.md:1:34: advice: '07' is fern of Moss Stranded, and no line of the key has that thread; name one of the key, or take it out; or mend the key",
    ),
    Case(
        "a thread in the notes that no card has",
        {f"{FERN}/stitching.md": "Begin in the middle, with thread 99, and use 2 threads.\n"},
        "series/garden-year/fern/stitching.md:1:34: advice: here stands thread '99', and neither Moss Stranded nor Spool Twelve has it; write the number of one in the key, or take it out",
    ),
    Case(
        "a thread in the list at the chart's head that the key has no more",
        {
            PATTERN: TINY[PATTERN].replace(
                '"07"], spool: ["10", "14"]', 'K4], spool: ["10", "12"]'
            ),
            CHART: "# b  07 fern\nrrbb\nrk..\n",
        },
        "series/garden-year/fern/chart.txt:1:6: advice: '07' is fern of Moss Stranded, and no line of the key has that thread; take this line out of the list",
    ),
    Case(
        "a designer whose name is spelt otherwise than her id",
        {PATTERN: ("designer: alder", "designer: wren-alder")}
        | {
            SERIES: TINY[SERIES]
            .replace("alder\n    name: Wren Alder", "wren-alder\n    name: Wren Aldr")
            .replace("designer: alder", "designer: wren-alder")
        },
        "series/garden-year/series.yaml:10:11: advice: the name 'Wren Aldr' and the id 'wren-alder' are spelt nearly alike; mend the one that is wrong; the name stands on every page",
    ),
    *(
        Case(
            f"a title in the welcome that is nearly one: {words}",
            {"series/garden-year/welcome.md": f"Begin with {words} in May.\n"},
            *[
                f"series/garden-year/welcome.md:1:{column}: advice: here stands '{words.strip('*')}', and no pattern of the series is called so; write 'Fern by the Tap', if that is meant"
            ]
            * bool(column),
        )
        for words, column in (
            ("Fern by the Tub", 12),
            ("*Rose by the Tap*", 13),
            ("Fern by the Tap", 0),
            ("The Fern by the Tap", 0),
            ("Fern by the June tap", 0),
        )
    ),
    *(
        Case(
            f"words in the welcome that are no title, beside '{title}': {words}",
            {
                "series/garden-year/fern/pattern.yaml": (
                    "title: Fern by the Tap",
                    f"title: {title}",
                ),
                "series/garden-year/welcome.md": f"{words}\n",
            },
            *[
                f"series/garden-year/welcome.md:1:{column}: advice: here stands '{words[column - 1 :].partition(' is')[0]}', and no pattern of the series is called so; write '{title}', if that is meant"
            ]
            * bool(column),
        )
        for title, words, column in (
            ("The Clamp", "The French knots come last.", 0),
            ("The Clamp", "The October letter was the longest.", 0),
            ("First Ferns", "First French knots, then the rest.", 0),
            ("Under the Tap", "Under the October moon is a tap.", 0),
            ("Under the Tap", "Under the Tub is a tap.", 1),
        )
    ),
    *(
        Case(
            f"a notice of {day} to a release on 9 March: {text}",
            {
                SERIES: TINY[SERIES]
                .replace("2027-01-15 09:00", "2027-03-09 09:00")
                .replace("date: 2026-11-20", f"date: {day}")
                .replace("text: The linen is back.", f"text: {text}")
            },
            *[
                f"series/garden-year/series.yaml:18:12: advice: the notice is of {day}, and the release of 2027-03-09; mend the day here, or the release on line 3; or say in the notice what it is for"
            ]
            * told,
        )
        for day, text, told in (
            ("2027-09-03", "The linen is back.", 1),
            ("2027-02-01", "Both patterns come out today.", 1),
            ("2027-03-09", "Both patterns come out today.", 0),
            ("2027-02-01", "The linen is back today.", 0),
        )
    ),
    Case(
        "a title in a notice that is nearly one",
        {SERIES: ("text: The linen is back.", "text: Fern by the Tree is ready.")},
        "series/garden-year/series.yaml:18:44: advice: here stands 'Fern by the Tree', and no pattern of the series is called so; write 'Fern by the Tap', if that is meant",
    ),
    *(
        Case(
            f"another number of patterns in the welcome: {words}",
            {"series/garden-year/welcome.md": f"{words} for your wall.\n"},
            *[
                f"series/garden-year/welcome.md:1:{told.partition(' ')[0]}: advice: here stands '{told.partition(' ')[2]}', and the series has 2 patterns; mend the number"
            ]
            * bool(told),
        )
        for words, told in (
            ("All three designs are", "1 All three designs"),
            ("Here are the 3 small patterns", "10 the 3 small patterns"),
            ("Each of the two patterns is", ""),
            ("One of the three designs is", "1 One of the three designs"),
        )
    ),
    *(
        Case(
            f"a cloth in the notes that the pattern is not on: {words}",
            {f"{FERN}/stitching.md": f"{words}, begin in the middle.\n"},
            *[f"series/garden-year/fern/stitching.md:1:{told}"] * bool(told),
        )
        for words, told in (
            ("On the frost evenweave", ""),
            ("On Hopsack 28", ""),
            (
                "On Hopsack 32",
                "4: advice: here stands 'Hopsack 32', and the cloths of this pattern are of 28 to the inch; mend the number, or add that cloth to 'cloths' in pattern.yaml",
            ),
            (
                "On the oatmeal evenweave",
                "1: advice: here stands 'On the oatmeal evenweave', and Hopsack 28 is offered in 'frost'; mend the word, or 'cloths' in pattern.yaml",
            ),
        )
    ),
    *(
        Case(
            f"rows in which a colour is not: {notes}",
            {
                CHART: "rr....\nrr....\n......\n..kk..\n..kk..\n....bb\n",
                f"{FERN}/stitching.md": f"{notes}\n",
            },
            *[f"series/garden-year/fern/stitching.md:1:{told}"] * bool(told),
        )
        for notes, told in (
            ("Begin with E2 brick, rows 1 to 2.", ""),
            ("K4 peat comes in rows 3 to 5, and E2 brick.", ""),
            ("Peat (K4), rows 4 to 5, then columns 3 to 4.", ""),
            ("Begin with the peat, rows 1 to 2.", ""),
            ("Begin in peat, rows 4 and 5.", ""),
            ("Begin with peat to the left of rows 1 to 2.", ""),
            (
                "Begin with peat in rows 2 and 3.",
                "20: advice: here stands 'rows 2 and 3' of 'peat', and most of these have none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            (
                "Begin with rows 2 and 3 of peat.",
                "12: advice: here stands 'rows 2 and 3' of 'peat', and most of these have none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            (
                "Begin with the lower bed, in peat: two rows right across, rows 2 and 3.",
                "59: advice: here stands 'rows 2 and 3' of 'peat', and most of these have none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            (
                "Begin with K4 peat, rows 1 to 3.",
                "21: advice: here stands 'rows 1 to 3' of 'peat', and most of these have none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            ("Begin with E2 brick in row 1, K4 peat in row 4, and end.", ""),
            ("Begin with rows 4 and 5: a row of peat, and a row of it below that.", ""),
            (
                "Begin with E2 brick in row 1, K4 peat in row 6, and end.",
                "42: advice: here stands 'row 6' of 'peat', and that one has none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            (
                "Begin with rows 1 and 2 of brick and rows 2 and 3 of peat.",
                "38: advice: here stands 'rows 2 and 3' of 'peat', and most of these have none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            (
                "Begin with rows 2 and 3: a row of brick, and a row of peat below it.",
                "12: advice: here stands 'row 3' of 'peat', and that one has none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            ("Begin with K4 peat, rows 4 to 5.", ""),
            ("Begin with E2 brick in row 1, and K4 peat in row 4, at the foot.", ""),
            (
                "Begin with K4 peat, rows 5 to 6.",
                "21: advice: here stands 'rows 5 to 6' of 'peat', and one of these has none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            ("The peat bed is rows 4 and 5, columns 3 to 4.", ""),
            ("The peat bed is columns 3 to 4 from row 4 down, and column 3 is its edge.", ""),
            (
                "The peat bed is rows 3 and 4, columns 3 to 4.",
                "17: advice: here stands 'rows 3 and 4' of 'peat', and one of these has none of it on the chart; it lies in rows 4 to 5: mend the numbers, or the colour",
            ),
            (
                "The peat bed is rows 4 and 5, column 3.",
                "31: advice: here stands 'column 3' of 'peat', and the next is just so on the chart; it lies in columns 3 to 4: mend the numbers, or the colour",
            ),
            (
                "Peat (K4) fills columns 4 to 6.",
                "17: advice: here stands 'columns 4 to 6' of 'peat', and most of these have none of it on the chart; it lies in columns 3 to 4: mend the numbers, or the colour",
            ),
        )
    ),
    *(
        Case(
            f"rows of peat that are counted, of three: {notes}",
            {
                CHART: "rrbb....\n" + "kk..kkkk\n" * 3,
                f"{FERN}/stitching.md": f"First the band in brick. {notes}.\n",
            },
            *[
                f"series/garden-year/fern/stitching.md:1:{column}: advice: here stands 'four rows' of 'peat', and the chart has 3; it lies in rows 2 to 4: mend the numbers, or the colour"
            ]
            * bool(column),
        )
        for notes, column in (
            ("Then peat below it, three rows", 0),
            ("Then peat below it, the last four rows", 0),
            ("Then peat below it, four rows", 46),
            ("Then K4 peat for the ground: four rows", 55),
            ("Then four rows of peat", 31),
            ("Then peat, and four rows of brick", 0),
        )
    ),
    *(
        Case(
            f"{foot} rows of peat at the foot, of which the notes tell two",
            {
                CHART: "rrbb....\n" + "kk..kkkk\n" * foot,
                f"{FERN}/stitching.md": "First the band, row 1, in E2 brick, and the ground, rows 2 to 3, in peat.\n",
            },
            *[
                f"series/garden-year/fern/stitching.md:1:53: advice: here stands 'rows 2 to 3' of 'peat', and the next is just so on the chart; it lies in rows 2 to {foot + 1}: mend the numbers, or the colour"
            ]
            * (foot > 2),
        )
        for foot in (2, 4)
    ),
    *(
        Case(
            f"a line of the notes copied from another pattern: {line}",
            {
                SERIES: ("order: [fern]", "order: [fern, ivy]"),
                f"{FERN}/stitching.md": f"Begin with the frond.\n\n1. {line}\n",
                "series/garden-year/ivy/pattern.yaml": TINY[PATTERN]
                .replace("K4", "K14")
                .replace("Fern by the Tap", "Ivy on the Wall")
                .replace("A fern uncurls", "An ivy climbs")
                .replace("First warm day, on: second", "Ivy day, on: third")
                .replace("by-fern", "by-ivy"),
                "series/garden-year/ivy/chart.txt": "rrbb\nkk..\n",
                "series/garden-year/ivy/story.md": "It grew on the wall.\n",
                "series/garden-year/ivy/stitching.md": f"Begin at the left.\n\n- {line}\n",
                MOSS: TINY[MOSS].replace("K4", "K14"),
                PATTERN: TINY[PATTERN].replace("K4", "K14"),
            },
            *[
                "series/garden-year/ivy/stitching.md:3:1: advice: this line stands word for word in the notes of 'Fern by the Tap' too (line 3 of fern/stitching.md); write what is so of this pattern, or lay this aside"
            ]
            * told,
        )
        for line, told in (
            ("Work the three brown bands in K14 peat, then the stalk.", 1),
            ("Use two strands throughout, and begin in the middle of it.", 0),
            ("The peat is K14, mostly.", 0),
        )
    ),
    *(
        Case(
            f"a name of the model stitcher in another pattern: {name}",
            {
                SERIES: ("order: [fern]", "order: [fern, ivy]"),
                "series/garden-year/ivy/pattern.yaml": TINY[PATTERN]
                .replace("Fern by the Tap", "Ivy on the Wall")
                .replace("A fern uncurls", "An ivy climbs")
                .replace("First warm day, on: second", "Ivy day, on: third")
                .replace("by-fern", "by-ivy")
                .replace("Hazel Penn", name),
                "series/garden-year/ivy/chart.txt": "rrbb\nkk..\n",
                "series/garden-year/ivy/story.md": "It grew on the wall.\n",
                "series/garden-year/ivy/stitching.md": "Begin at the left.\n",
            },
            *[
                f"series/garden-year/ivy/pattern.yaml:23:10: advice: the credits name '{name}' here, and 'Hazel Penn' in Fern by the Tap; look once more which of the two is right"
            ]
            * told,
        )
        for name, told in (("Hazel Pen", 1), ("Hazel Penn", 0), ("Rose Tully", 0))
    ),
    Case(
        "a month misspelt in the welcome",
        {
            "series/garden-year/welcome.md": "It hangs from Septmber to May, in August and on Sundays.\n"
        },
        "series/garden-year/welcome.md:1:15: advice: 'Septmber' is no month and no day of the week; did you mean September?",
    ),
    Case(
        "a colour misspelt beside its number in the notes",
        {f"{FERN}/stitching.md": "Fill it with brik (E2), then K4 peat.\n"},
        "series/garden-year/fern/stitching.md:1:14: advice: here stands 'brik', and 'E2' of Moss Stranded is called 'brick'; write 'brick'",
    ),
    Case(
        "an old number in the notes",
        {f"{FERN}/stitching.md": "Begin in the middle.\n\nPeat (K5) hides well.\n"},
        "series/garden-year/fern/stitching.md:3:7: advice: here stands 'Peat (K5)', and 'peat' is 'K4' on Moss Stranded; write 'K4', or take the number out",
    ),
    Case(
        "a line of the key copied with its number",
        {
            PATTERN: (
                'r: {moss: E2, spool: "10"}\n  k: {moss: K4, spool: "12"}',
                'r: {moss: E2, spool: "10"}   # brick\n  k: {moss: E2, spool: "12"}   # peat',
            )
        },
        "series/garden-year/fern/pattern.yaml:10:13: 'k' and 'r' are stitched alike in 'moss', both with 'E2'; write 'K4' for 'k', as its remark says, 'peat'",
    ),
    Case(
        "a line of the key copied with its number over an earlier one",
        {
            PATTERN: (
                'r: {moss: E2, spool: "10"}\n  k: {moss: K4, spool: "12"}',
                'r: {moss: K4, spool: "10"}   # brick\n  k: {moss: K4, spool: "12"}   # peat',
            )
        },
        "series/garden-year/fern/pattern.yaml:9:13: 'r' and 'k' are stitched alike in 'moss', both with 'K4'; write 'E2' for 'r', as its remark says, 'brick'",
    ),
    Case(
        "a line of the key copied with its numbers in both sets",
        {PATTERN: ('k: {moss: K4, spool: "12"}', 'k: {moss: E2, spool: "10"}')},
        "series/garden-year/fern/pattern.yaml:10:13: 'k' and 'r' are stitched alike in 'moss' (and in 'spool'), both with 'E2'; change the one that is a slip; or use one mark for both, in the chart too",
    ),
    Case(
        "a line of the key copied that nothing uses",
        {PATTERN: ("  k: {moss: K4", '  q: {moss: K4, spool: "12"}\n  k: {moss: K4')},
        "series/garden-year/fern/pattern.yaml:10:3: the mark 'q' is never used; take its key line out, or stitch something with it",
    ),
    Case(
        "two blends of the same two colours",
        {
            PATTERN: (BLEND, BLEND + '  c: {moss: ["07", E2], spool: "14"}\n'),
            CHART: "crbb\nrk..\n",
        },
        "series/garden-year/fern/pattern.yaml:12:13: 'c' and 'b' are stitched alike in 'moss', both with '07' and 'E2'; change the one that is a slip: in 'spool' they are two",
    ),
    Case(
        "a key line that nothing uses",
        {CHART: "rrrr\nrk..\n"},
        "series/garden-year/fern/pattern.yaml:11:3: the mark 'b' is never used; take its key line out, or stitch something with it",
    ),
    Case(
        "a part of wood given twice",
        {FINISH: (PART, PART + PART)},
        "finishes/shelf/finish.yaml:17:11: the part 'back' stands here a second time (first on line 9); keep one of the two, or give one of them another name",
    ),
    Case(
        "a thread set given twice",
        {SERIES: ("thread_sets:\n", "thread_sets:\n  - {name: moss, card: moss, strands: 1}\n")},
        "series/garden-year/series.yaml:7:12: the thread set 'moss' stands here a second time (first on line 6); keep one of the two, or give one of them another name",
    ),
    Case(
        "a cloth choice given twice",
        {PATTERN: ("cloths:\n", "cloths:\n  - {cloth: hopsack-28, colour: frost, over: 2}\n")},
        "series/garden-year/fern/pattern.yaml:7:5: the cloth choice 'hopsack-28' stands here a second time (first on line 6); keep one of the two",
    ),
    Case(
        "a thread set twice in a pattern",
        {PATTERN: ("thread_sets: [moss, spool]", "thread_sets: [moss, spool, moss]")},
        "series/garden-year/fern/pattern.yaml:7:28: the thread set 'moss' stands here a second time (first on line 7); keep one of the two",
    ),
    Case(
        "a stroke and a blend that look alike in the second thread set",
        {PATTERN: ('spool: "12"', 'spool: "10"')},
        "series/garden-year/fern/pattern.yaml:10:24: 'k' and 'r' are stitched alike in 'spool', both with '10'; write '12' for 'k': of the free colours 'earth' is the nearest to that in 'moss'",
    ),
    Case(
        "a chart shape that there is not",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", symbol: hart}')},
        "series/garden-year/fern/pattern.yaml:9:38: there is no chart shape 'hart'; did you mean 'heart'?",
    ),
    Case(
        "a chart shape by another word",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10", symbol: triangle}')},
        "series/garden-year/fern/pattern.yaml:9:38: there is no chart shape 'triangle'; write 'wedge-up', which goes by that name",
    ),
    Case(
        "a chart shape asked for twice",
        {
            PATTERN: (
                'r: {moss: E2, spool: "10"}\n  k: {moss: K4, spool: "12"}',
                'r: {moss: E2, spool: "10", symbol: heart}\n  k: {moss: K4, spool: "12", symbol: heart}',
            )
        },
        "series/garden-year/fern/pattern.yaml:10:38: 'k' and 'r' both ask for the chart shape 'heart'; give each mark its own",
    ),
    Case(
        "a kept symbol of a mark that is gone",
        {SYMBOLS: "symbols:\n  q: heart\n  r: disc\n"},
        "series/garden-year/fern/symbols.yaml:2:3: advice: the key has no mark 'q'; take the line out; known here: b, k, r",
    ),
    Case(
        "a kept symbol that there is not, and one kept twice",
        {SYMBOLS: "symbols:\n  r: hart\n  k: disc\n  b: disc\n"},
        "series/garden-year/fern/symbols.yaml:2:6: there is no chart shape 'hart'; did you mean 'heart'?",
        "series/garden-year/fern/symbols.yaml:4:6: 'b' and 'k' both ask for the chart shape 'disc'; give each mark its own",
    ),
    Case(
        "a number with a letter for a figure",
        {PATTERN: ('[E2, "07"]', '[E2, "O7"]')},
        "series/garden-year/fern/pattern.yaml:11:18: Moss Stranded has no colour 'O7'; did you mean '07' (fern)?",
    ),
    Case(
        "a number with its two figures exchanged",
        {PATTERN: ('[E2, "07"]', '[E2, "70"]')},
        "series/garden-year/fern/pattern.yaml:11:18: Moss Stranded has no colour '70'; did you mean '07' (fern)?",
    ),
    *(
        Case(
            f"backstitch in a thread by its {what}",
            {PATTERN: ("{colour: k, path", f"{{colour: {said}, path")},
            f"series/garden-year/fern/pattern.yaml:13:14: the mark '{said.strip(chr(34))}' is not in the key; write 'k', which has that thread",
        )
        for what, said in (("number", "K4"), ("name", "Peat"), ("number in another set", '"12"'))
    ),
    Case(
        "a number that the card no longer has, whose colour the remark names",
        {PATTERN: ('{moss: E2, spool: "10"}', '{moss: X9, spool: "10"}   # Peat')},
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'X9'; your remark says 'Peat', which is 'K4' there; write 'K4' here, or 'X9' in threads/moss.yaml",
    ),
    Case(
        "the number of another colour than the remark names",
        {PATTERN: ('{moss: E2, spool: "10"}', '{moss: E2, spool: "10"}   # peat')},
        "series/garden-year/fern/pattern.yaml:9:3: advice: the remark says 'peat', and 'E2' is called 'brick'; write 'K4' if that is meant, or put 'brick' into the remark",
    ),
    Case(
        "a remark of begin beside a colour of her own",
        {PATTERN: ('{moss: E2, spool: "10"}', '{moss: E2, spool: "10"}   # example yew')},
        "series/garden-year/fern/pattern.yaml:9:3: advice: the remark says 'example yew', and 'E2' is called 'brick'; put 'brick' into the remark",
    ),
    Case(
        "a thread set renamed in series.yaml alone",
        {SERIES: ("{name: moss, card: moss", "{name: stranded, card: moss")},
        "series/garden-year/fern/pattern.yaml:7:15: there is no thread set 'moss', named on 4 lines; known in series.yaml: spool, stranded",
    ),
    Case(
        "another card in the place of the one that the key was written for",
        {
            MOSS: TINY[MOSS]
            .replace("number: E2", "number: 301")
            .replace("number: K4", "number: 302")
            .replace('number: "07"', "number: 303")
            .replace("name: brick", "name: tile")
            .replace("name: peat", "name: soil")
            .replace("name: fern", "name: frond")
        },
        "series/garden-year/fern/pattern.yaml:9:13: none of the 3 numbers that the key has for 'moss' is a colour of Moss Stranded; write that card's own; or bring your drawing in for a new key: packetgen bring FILE --pattern fern --replace",
    ),
    Case(
        "a colour with a new number on the card, told at once in the key and in the chart's list",
        {
            MOSS: ("number: E2", "number: E9"),
            PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10"}   # brick'),
            CHART: "# A fern\n# r  E2 brick\nrrbb\nrk..\n",
        },
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'E2', named here and on line 11 and line 2 of fern/chart.txt; your remark says 'brick', which is 'E9' there; write 'E9' here, or 'E2' in threads/moss.yaml",
    ),
    Case(
        "no space behind the colon of a key line with one thread",
        {
            SERIES: TINY[SERIES].replace("  - {name: spool, card: spool, strands: 1}\n", ""),
            PATTERN: re.sub(r", spool(: (\[.*?\]|\"..\"))?", "", TINY[PATTERN]).replace(
                "  r: {moss", "  r:{moss"
            ),
        },
        "series/garden-year/fern/pattern.yaml:9:3: no space stands after the colon of 'r'; put one there: r: {moss: E2}",
    ),
    Case(
        "a list above the chart that says what the key no longer has",
        {
            PATTERN: ("r: {moss: E2", 'r: {moss: "07"'),
            CHART: "# A fern\n# r  E2 brick\n# k  K4 peat\nrrbb\nrk..\n",
        },
        "series/garden-year/fern/chart.txt:2:6: advice: this list of the colours says 'E2 brick' of the mark 'r', and the key has '07 fern'; if the key is right, write # r  07 fern; else mend the key",
    ),
    Case(
        "a list above the chart of which two lines say what the key no longer has",
        {
            PATTERN: TINY[PATTERN]
            .replace("r: {moss: E2", 'r: {moss: "07"')
            .replace("k: {moss: K4", "k: {moss: E2"),
            CHART: "# A fern\n# r  E2 brick\n# k  K4 peat\nrrbb\nrk..\n",
        },
        "series/garden-year/fern/chart.txt:2:6: advice: this list of the colours says 'E2 brick' of the mark 'r', and the key has '07 fern', and another thread for 'k' too; if the key is right, write # r  07 fern; else mend the key",
    ),
    Case(
        "a mark that stands in the list a second time, where a colour was replaced all over",
        {CHART: "# r  E2 brick\n# r  K4 peat\n# k  K4 peat\nrrbb\nrk..\n"},
        "series/garden-year/fern/chart.txt:2:6: advice: this list of the colours says 'K4 peat' of the mark 'r', and the key has 'E2 brick'; if the key is right, take this line out, since line 1 has it; else mend the key",
    ),
    Case(
        "threads of two marks that changed places in the key",
        {
            PATTERN: TINY[PATTERN]
            .replace("r: {moss: E2", "r: {moss: K4")
            .replace("k: {moss: K4", "k: {moss: E2"),
            CHART: "# A fern\n# r  E2 brick\n# k  K4 peat\nrrbb\nrk..\n",
            "series/garden-year/fern/stitching.md": "Begin with the brick.\n",
        },
        "series/garden-year/fern/chart.txt:2:6: advice: this list of the colours says 'E2 brick' of the mark 'r', and the key has 'K4 peat'; if the key is right, write # r  K4 peat and # k  E2 brick, and mend stitching.md, where it is named; else mend the key",
    ),
    Case(
        "a colour of one word that the notes name, and that the key had before",
        {
            CHART: "# k  K4 peat\nrrbb\nrk..\n",
            PATTERN: TINY[PATTERN].replace(
                'k: {moss: K4, spool: "12"}', 'k: {moss: "07", spool: "14"}'
            ),
            f"{FERN}/stitching.md": "Work the rim: brick for the pot, peat at its foot.\n",
        },
        "series/garden-year/fern/chart.txt:1:6: advice: this list of the colours says 'K4 peat' of the mark 'k', and the key has '07 fern'; if the key is right, write # k  07 fern; else mend the key",
        "series/garden-year/fern/stitching.md:1:34: advice: 'peat' is K4 of Moss Stranded, and no line of the key has that thread; if the key is right, write '07 fern' or take it out; else mend the key",
    ),
    Case(
        "colours of one word for one thing and another, of which the key has one no more",
        {
            PATTERN: TINY[PATTERN].replace(
                '"07"], spool: ["10", "14"]', 'K4], spool: ["10", "12"]'
            ),
            f"{FERN}/stitching.md": "The pot: brick for the rim, peat for the foot, fern for the stem.\n",
        },
        "series/garden-year/fern/stitching.md:1:48: advice: 'fern' is 07 of Moss Stranded, and no line of the key has that thread; name one of the key, or take it out; or mend the key",
    ),
    Case(
        "a colour exchanged in the key, and its name left in the words for the page and the picture",
        {
            PATTERN: TINY[PATTERN]
            .replace("k: {moss: K4", 'k: {moss: "07"')
            .replace(
                "about: A fern uncurls.",
                "about: A fern in peat.\nphoto_alt: A fern, and peat below it.",
            ),
            "series/garden-year/fern/story.md": "It grows in peat.\n",
            CHART: "# A fern\n# k  K4 peat\nrrbb\nrk..\n",
        },
        "series/garden-year/fern/chart.txt:2:6: advice: this list of the colours says 'K4 peat' of the mark 'k', and the key has '07 fern'; if the key is right, write # k  07 fern, and look at 'about' and 'photo_alt' for 'peat'; else mend the key",
    ),
    Case(
        "notes that name the colour that the list above the chart has, and the key no longer",
        {
            PATTERN: ("k: {moss: K4", 'k: {moss: "07"'),
            CHART: "# A fern\n# k  K4 peat\nrrbb\nrk..\n",
            "series/garden-year/fern/stitching.md": "Begin with thread K4.\n",
        },
        "series/garden-year/fern/chart.txt:2:6: advice: this list of the colours says 'K4 peat' of the mark 'k', and the key has '07 fern'; if the key is right, write # k  07 fern; else mend the key",
        "series/garden-year/fern/stitching.md:1:19: advice: 'K4' is peat of Moss Stranded, and no line of the key has that thread; if the key is right, write '07 fern' or take it out; else mend the key",
    ),
    Case(
        "a colour with a new number on the card, and the old one in texts too",
        {
            MOSS: ("number: E2", "number: E9"),
            PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10"}   # brick'),
            CHART: "# A fern\n# r  E2 brick\nrrbb\nrk..\n",
            f"{FERN}/story.md": "Stitch the pot in brick (E2).\n",
        },
        "series/garden-year/fern/pattern.yaml:9:13: Moss Stranded has no colour 'E2', named here and on line 11, and in the remarks at the head of 1 chart and story.md; your remark says 'brick', which is 'E9' there; write 'E9' here, or 'E2' in threads/moss.yaml",
    ),
    Case(
        "a card with numbers of its own, one of which looks like one of the key",
        {
            MOSS: TINY[MOSS]
            .replace("number: E2", "number: E3x")
            .replace("number: K4", "number: '070'")
            .replace('number: "07"', "number: '072'")
            .replace("name: brick", "name: tile")
            .replace("name: peat", "name: soil")
            .replace("name: fern", "name: frond")
        },
        "series/garden-year/fern/pattern.yaml:9:13: none of the 3 numbers that the key has for 'moss' is a colour of Moss Stranded; write that card's own; or bring your drawing in for a new key: packetgen bring FILE --pattern fern --replace",
    ),
    Case(
        "a thread set renamed, and its card another with other numbers",
        {
            MOSS: TINY[MOSS]
            .replace("number: E2", "number: 301")
            .replace("number: K4", "number: 302")
            .replace('number: "07"', "number: 303")
            .replace("name: brick", "name: tile")
            .replace("name: peat", "name: soil")
            .replace("name: fern", "name: frond"),
            SERIES: ("{name: moss, card: moss", "{name: stranded, card: moss"),
            PATTERN: ("thread_sets: [moss, spool]", "thread_sets: [stranded, spool]"),
        },
        "series/garden-year/fern/pattern.yaml:9:13: none of the 3 numbers that the key has for 'moss', which is now 'stranded', is a colour of Moss Stranded; write that card's own; or bring your drawing in for a new key: packetgen bring FILE --pattern fern --replace",
    ),
    Case(
        "a thread set renamed where the sets are listed, and not in the key",
        {
            SERIES: ("{name: moss, card: moss", "{name: stranded, card: moss"),
            PATTERN: ("thread_sets: [moss, spool]", "thread_sets: [stranded, spool]"),
        },
        "series/garden-year/fern/pattern.yaml:9:3: all 3 key lines name a thread set 'moss', which there is not, and none says anything for 'stranded'; write 'stranded' in place of 'moss' in each of them, or give the set its old name back",
    ),
)
