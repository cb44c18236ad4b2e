"""Charts, and what is drawn on them.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import (
    CHART,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    TINY,
    cut,
    photo_with_place,
    picture,
    picture_that_claims,
)
from tests.wrong_input_case import Case

ANYWHERE = "look where in the row it stops agreeing with those above and below"
ABOVE = "rrrrkkkkbbbbrrrrkkkkbbbb"
RED, BROWN, CLEAR = "#a04030", "#6b503a", (0, 0, 0, 0)
ENLARGED = picture(
    [
        [one for one in row for _ in range(100)]
        for row in ([RED] * 2 + [BROWN] * 2, [RED, BROWN, CLEAR, CLEAR])
        for _ in range(100)
    ]
)
STRANGE = picture([[f"#0000{n:02x}" for n in range(13)]])
CASES = (
    Case(
        "knots and lines of which the notes tell, in a pattern that has none",
        {
            PATTERN: cut(PATTERN, "backstitch:", "beads:"),
            f"{FERN}/stitching.md": "There are no lazy daisies. Put two\nFrench knots above, and a bead below.\n",
        },
        "series/garden-year/fern/stitching.md:2:1: advice: here stands 'French knots', and this pattern has no 'french_knots'; take it out, or add 'french_knots' to pattern.yaml",
    ),
    Case(
        "more stitches in the notes than the chart has",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            f"{FERN}/stitching.md": "Leave the 19 stitches of E2 brick for the last, and 2 stitches of brick too.\n",
        },
        "series/garden-year/fern/stitching.md:1:11: advice: here stands '19 stitches of E2 brick', and the chart has 5 of that colour; mend the number or the chart, or leave it out: the key's page counts them",
    ),
    *(
        Case(
            f"more stitches in the notes than the chart has: {notes}",
            {
                PATTERN: cut(PATTERN, "close_ups:", "credits:"),
                f"{FERN}/stitching.md": f"{notes}.\n",
            },
            *[
                f"series/garden-year/fern/stitching.md:1:{column}: advice: here {told} of that colour{where}; mend the number or the chart, or leave it out: the key's page counts them"
            ]
            * bool(column),
        )
        for notes, column, told, where in (
            (
                "The eye is seven stitches of E2 brick; two stitches of brick are the mouth",
                12,
                "stands 'seven stitches of E2 brick', and the chart has 5",
                "",
            ),
            (
                "Brick (E2) over all, 7 stitches",
                1,
                "stands 'Brick (E2) over all, 7 stitches', and the chart has 5",
                "",
            ),
            ("Brick (E2) over all, 7 stitches wide", 0, "", ""),
            (
                "Row 2 is 1 stitches of peat and 2 of brick",
                33,
                "stands '2 of brick', and the chart has 1",
                " in row 2",
            ),
            ("Row 2 is 1 stitches of peat and 1 of brick", 0, "", ""),
            (
                "Begin with the row of E2 brick: it is straight and 3 stitches long",
                52,
                "stands '3 stitches long', and the chart has 4",
                " in its longest row",
            ),
            ("Begin with the row of brick, which is 4 stitches long", 0, "", ""),
            ("Begin with the row of peat beside brick, which is 4 stitches long", 0, "", ""),
        )
    ),
    Case(
        "a chart in an office format",
        {PATTERN: ("revisions:", "chart: chart.xls\nrevisions:")},
        "series/garden-year/fern/pattern.yaml:26:8: 'chart.xls' cannot be a chart; a chart's file ends in .txt, .csv or .png",
    ),
    Case(
        "a chart outside the pattern's folder",
        {PATTERN: ("revisions:", "chart: ../chart.txt\nrevisions:")},
        "series/garden-year/fern/pattern.yaml:26:8: '../chart.txt' lies outside its folder; move the file in, and write its bare name, without '/' or '..'",
    ),
    Case(
        "a chart named that is not there",
        {PATTERN: ("revisions:", "chart: big.txt\nrevisions:")},
        "series/garden-year/fern/pattern.yaml:26:8: there is no file 'big.txt' here; the folder holds 'chart.txt', 'pattern.yaml', 'stitching.md' and 'story.md'",
    ),
    Case(
        "two charts for one pattern",
        {f"{FERN}/chart.csv": "r,r\n"},
        "series/garden-year/fern/chart.csv:1:1: several charts: 'chart.txt' and 'chart.csv'; keep one, or write chart: chart.txt in pattern.yaml, or bring the CSV in (codes are asked): packetgen bring content/series/garden-year/fern/chart.csv --pattern fern --replace",
    ),
    Case(
        "a chart without rows",
        {CHART: "# soon\n"},
        "series/garden-year/fern/chart.txt:1:1: the chart is empty; draw one character for each stitch, '.' for bare cloth",
    ),
    Case(
        "a chart wider than a thousand stitches",
        {CHART: "r" * 1001 + "\n"},
        "series/garden-year/fern/chart.txt:1:1: the chart is 1001 × 1 stitches; 1000 × 1000 is the most that can be used",
    ),
    Case(
        "a chart of bare cloth",
        {PATTERN: cut(PATTERN, "backstitch:", "credits:"), CHART: "....\n"},
        "series/garden-year/fern/chart.txt:1:1: nothing is stitched on this chart; put marks of the key on it",
    ),
    Case(
        "a row too short",
        {CHART: "# A fern\nrrbb\nrk..\nrrr\n"},
        f"series/garden-year/fern/chart.txt:4:1: row 3 is 3 stitches long, most are 4; add 1 where missing ('.' if bare): {ANYWHERE}",
    ),
    Case(
        "a row too long",
        {CHART: "# A fern\nrrbb\nrk..\nrrrrrr\n"},
        f"series/garden-year/fern/chart.txt:4:1: row 3 is 6 stitches long, most are 4; take 2 away: {ANYWHERE}",
    ),
    Case(
        "a chart without the full stops at the right end of its rows",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            CHART: "# A fern\nrrrrkk\n..rk\n...kb\nr.b\nrr\n",
        },
        f"{CHART}:3:5: 4 rows, from row 2 to row 5, end with their last stitch; write '.' behind it for bare cloth, so many that each row is 6 long",
    ),
    Case(
        "a chart without the full stops at the left end of its rows",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            CHART: "# A fern\nrrrrkk\nr..k\nbr..k\nr.k\nkk\n",
        },
        f"{CHART}:3:1: 4 rows, from row 2 to row 5, begin with their first stitch; write '.' before it for bare cloth, so many that each row is 6 long",
    ),
    Case(
        "spaces for full stops, and fewer of them",
        {CHART: "# A fern\nrrbb\nr k\nrkkk\n"},
        f"{CHART}:3:2: a space at column 2, row 2; write '.' for bare cloth, 2 in all: each row is 4 long",
    ),
    Case(
        "a row that lacks a stitch in its middle",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            CHART: f"# A fern\n{ABOVE}\n{ABOVE[:8]}{ABOVE[9:]}\n{ABOVE}\n",
        },
        f"{CHART}:3:9: row 2 is 23 stitches long, most are 24; add 1 ('.' is bare cloth), most likely at column 9: the row is then most like those beside it",
    ),
    Case(
        "a row with two stitches too many",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            CHART: f"# A fern\n{ABOVE}\n{ABOVE[:18]}rr{ABOVE[18:]}\n{ABOVE}\n",
        },
        f"{CHART}:3:19: row 2 is 26 stitches long, most are 24; take 2 away, most likely at column 19: the row is then most like those beside it",
    ),
    Case(
        "a row that lacks its last stitches",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            CHART: f"# A fern\n{ABOVE}\n{ABOVE[:21]}\n{ABOVE}\n",
        },
        f"{CHART}:3:22: row 2 is 21 stitches long, most are 24; add 3 ('.' is bare cloth), most likely at column 22: the row is then most like those beside it",
    ),
    Case(
        "an empty row inside the chart",
        {CHART: "# A fern\nrrbb\n\nrk..\n"},
        "series/garden-year/fern/chart.txt:3:1: row 2 is 0 stitches long, most are 4; add 4 ('.' is bare cloth), or take the line away",
    ),
    Case(
        "a mark in the chart that the key lacks",
        {CHART: "# A fern\nrrbb\nRk.R\n"},
        "series/garden-year/fern/chart.txt:3:1: the mark 'R' at column 1, row 2 (2 stitches in all) is not in the key; did you mean 'r'?",
    ),
    Case(
        "a word processor's sign for three full stops",
        {CHART: "# A fern\nrrbb\nr…\nb...\n"},
        "series/garden-year/fern/chart.txt:3:2: '…' at column 2, row 2 is one sign and no three full stops; bare cloth is full stops: write '...'",
    ),
    Case(
        "dots in the middle of the line for bare cloth",
        {CHART: "# A fern\nrrbb\nrk··\nb···\n"},
        "series/garden-year/fern/chart.txt:3:3: '·' at column 3, row 2 (5 in all) is another dot than a full stop; bare cloth is full stops: write '.' for each",
    ),
    Case(
        "a mark in a letter of another alphabet that looks like one of the key",
        {CHART: "rrbb\nrк..\n"},
        "series/garden-year/fern/chart.txt:2:2: the mark 'к' at column 2, row 2 is not in the key; it is a letter of the Cyrillic alphabet, however it looks: write 'k'",
    ),
    Case(
        "a mark in the letters of another alphabet",
        {CHART: "# A fern\nrrbb\nгk..\n"},
        "series/garden-year/fern/chart.txt:3:1: the mark 'г' at column 1, row 2 is not in the key; it is a letter of the Cyrillic alphabet, however it looks; known here: b, k, r",
    ),
    Case(
        "a space between two marks of the chart",
        {CHART: "rrbb\nrk. .\nrk..\n"},
        "series/garden-year/fern/chart.txt:2:4: a space at column 4, row 2; take it away",
    ),
    Case(
        "a chart that is set in",
        {CHART: "  rrbb\n  rk..\n"},
        "series/garden-year/fern/chart.txt:1:1: a space at column 1, row 1 (4 in all); take them away",
    ),
    Case(
        "a space before two rows of the chart, and one for bare cloth",
        {CHART: "rrbb\n rk..\n rk..\nrk..\nr ..\n"},
        "series/garden-year/fern/chart.txt:2:1: a space at column 1, row 2 (2 in all); take them away",
        "series/garden-year/fern/chart.txt:5:2: a space at column 2, row 5; write '.' for bare cloth",
    ),
    Case(
        "spaces for bare cloth, some of them at the ends of rows",
        {CHART: "rrbb\nrk\n rr\n   b\n  r\n", PATTERN: cut(PATTERN, "close_ups:", "credits:")},
        "series/garden-year/fern/chart.txt:3:1: a space at column 1, row 3 (and in 2 more rows); write '.' for bare cloth, so many that each row is 4 long",
    ),
    Case(
        "a tab before a row",
        {CHART: "rrbb\n\trk..\nrrbb\n"},
        "series/garden-year/fern/chart.txt:2:1: a tab at column 1, row 2; take it away",
    ),
    Case(
        "commas between the marks",
        {CHART: "r,r,b,b\nr,k,.,.\n"},
        "series/garden-year/fern/chart.txt:1:2: a comma stands between any two marks of this chart; take those signs out: one character is one stitch, or call the file chart.csv",
    ),
    Case(
        "a comma and a space between the marks",
        {CHART: "r, r, b, b\nr, k, ., .\n"},
        "series/garden-year/fern/chart.txt:1:2: a comma stands between any two marks of this chart; take those signs out: one character is one stitch, or call the file chart.csv",
    ),
    Case(
        "bars round all marks",
        {CHART: "|r|r|b|b|\n|r|k|.|.|\n"},
        "series/garden-year/fern/chart.txt:1:1: a bar stands between any two marks of this chart; take those signs out: one character is one stitch",
    ),
    Case(
        "spaces between the marks, and rows of two lengths",
        {CHART: "r r b b\nr k . .\nr r b\n"},
        "series/garden-year/fern/chart.txt:1:2: a space stands between any two marks of this chart; take those signs out: one character is one stitch",
    ),
    Case(
        "spaces for bare cloth, and a row of nothing else",
        {CHART: "rrbb\n    \n   b\n   r\nrk..\n", PATTERN: cut(PATTERN, "close_ups:", "credits:")},
        "series/garden-year/fern/chart.txt:2:1: a space at column 1, row 2 (and in 2 more rows); write '.' for bare cloth, so many that each row is 4 long",
    ),
    Case(
        "spaces for bare cloth in every second column",
        {CHART: "r k b r\n r k b\n", PATTERN: cut(PATTERN, "close_ups:", "credits:")},
        "series/garden-year/fern/chart.txt:1:2: a space at column 2, row 1 (and in 1 more row); write '.' for bare cloth, so many that each row is 7 long",
    ),
    Case(
        "numbers before the rows",
        {CHART: "8 rrbb\n9 rk..\n10 rrbb\n"},
        "series/garden-year/fern/chart.txt:1:1: numbers stand before the rows of this chart, here '8'; take them away, with what parts them from the row",
    ),
    Case(
        "numbers before the rows, from below, with bars",
        {CHART: " 3|rrbb\n 2|rk..\n 1|rrbb\n"},
        "series/garden-year/fern/chart.txt:1:1: numbers stand before the rows of this chart, here '3|'; take them away, with what parts them from the row",
    ),
    Case(
        "a space in the chart",
        {CHART: "rrbb\nrk .\n", PATTERN: cut(PATTERN, "close_ups:", "credits:")},
        "series/garden-year/fern/chart.txt:2:3: a space at column 3, row 2; write '.' for bare cloth",
    ),
    Case(
        "the mark # in the chart",
        {CHART: "# A fern\nrrbb\nrk#.\n"},
        "series/garden-year/fern/chart.txt:3:3: '#' cannot be a mark: it begins a remark; choose another sign",
    ),
    Case(
        "a table with a quote not closed",
        {CHART: None, f"{FERN}/chart.csv": 'r,r,b,b\nr,"k,,\n'},
        "series/garden-year/fern/chart.csv:2:1: row 2 of the table has a quote that is not closed; take the quotes away",
    ),
    Case(
        "a table that numbers its rows and columns, in a key with a mark too few",
        {CHART: None, f"{FERN}/chart.csv": ",A,B,C,D\n1,r,r,b,b\n2,r,x,,\n"},
        f"{FERN}/chart.csv:1:1: a spreadsheet's table, with headings (A, B, C, …); bring it in: packetgen bring content/{FERN}/chart.csv --pattern fern --replace --headings",
        f"{FERN}/chart.csv:3:3: the mark 'x' at column 2, row 2 is not in the key; add it to the key, or write one of b, k, r for it",
    ),
    Case(
        "a table that numbers its rows and columns, with what is empty beside them",
        {CHART: None, f"{FERN}/chart.csv": ",A,B,C,D,,\n1,r,r,b,b,,\n2,r,k,,,,\n,,,,,,\n"},
        f"{FERN}/chart.csv:1:1: a spreadsheet's table, with headings (A, B, C, …); bring it in: packetgen bring content/{FERN}/chart.csv --pattern fern --replace --headings",
    ),
    Case(
        "a table that numbers its columns up to ten and more",
        {
            PATTERN: cut(PATTERN, "close_ups:", "credits:"),
            CHART: None,
            f"{FERN}/chart.csv": ",".join(map(str, range(1, 13)))
            + "\n"
            + ",".join("rrbb" * 3)
            + "\n"
            + ",".join("rkbk" * 3),
        },
        f"{FERN}/chart.csv:1:1: a spreadsheet's table, with headings (1, 2, 3, …); bring it in: packetgen bring content/{FERN}/chart.csv --pattern fern --replace --headings",
    ),
    Case(
        "a table with two marks in a cell",
        {CHART: None, f"{FERN}/chart.csv": "r,r,b,b\nr,kk,,\n"},
        "series/garden-year/fern/chart.csv:2:2: the cell 'kk' at column 2, row 2 is more than one mark; write one mark in a cell",
    ),
    Case(
        "a table with two marks in a cell, for which its row is one too short",
        {CHART: None, f"{FERN}/chart.csv": "r,r,b,b\nrk,,\nr,k,,\n"},
        "series/garden-year/fern/chart.csv:2:1: the cell 'rk' at column 1, row 2 is more than one mark; write 'r' and 'k' in cells of their own: what parts them was lost",
    ),
    Case(
        "a table with codes of its own, with headings",
        {
            CHART: None,
            f"{FERN}/chart.csv": "1,2,3,4\nBRN,BRN, MOSS ,k\nBRN,GOLD,,MOSS\n",
        },
        f"{FERN}/chart.csv:1:1: a spreadsheet's table, with headings (1, 2, 3, …) and codes of its own ('BRN', 'MOSS', …); bring it in: packetgen bring content/{FERN}/chart.csv --pattern fern --replace --headings",
    ),
    Case(
        "a table with codes of one sign that the key lacks",
        {CHART: None, f"{FERN}/chart.csv": "x,o,w,k\nr,b,,\n"},
        f"{FERN}/chart.csv:1:1: a spreadsheet's table, with codes of its own ('x', 'o', …); bring it in: packetgen bring content/{FERN}/chart.csv --pattern fern --replace",
    ),
    Case(
        "a mark that is none, where all round it is another",
        {CHART: "# A fern\nrrbbb\nrk...\nrr...\n0rkkk\nrr...\n"},
        f"{CHART}:5:1: the mark '0' at column 1, row 4 is not in the key; did you mean 'r', as all round it?",
    ),
    Case(
        "a table with a mark that the key lacks",
        {CHART: None, f"{FERN}/chart.csv": "r,r,b,b\nr,k,x,\n"},
        "series/garden-year/fern/chart.csv:2:3: the mark 'x' at column 3, row 2 is not in the key; add it to the key, or write one of b, k, r for it",
    ),
    Case(
        "a chart that is no PNG",
        {CHART: None, f"{FERN}/chart.png": b"GIF89a"},
        "series/garden-year/fern/chart.png:1:1: this is not a PNG picture that can be read; save it again as PNG",
    ),
    Case(
        "a picture wider than a thousand stitches",
        {CHART: None, f"{FERN}/chart.png": picture([["#a04030"] * 1001])},
        "series/garden-year/fern/chart.png:1:1: the chart is 1001 × 1 stitches; 1000 × 1000 is the most that can be used",
    ),
    Case(
        "a pixel that is half clear",
        {
            CHART: None,
            f"{FERN}/chart.png": picture(
                [
                    ["#a04030", "#a04030", "#6b503a", (1, 2, 3, 128)],
                    ["#a04030", (0, 0, 0, 0), (0, 0, 0, 0), (0, 0, 0, 0)],
                ]
            ),
        },
        "series/garden-year/fern/chart.png:1:4: the pixel at column 4, row 1 is partly see-through; make it either quite clear (bare cloth) or quite solid",
    ),
    Case(
        "a pixel in the colour of no thread",
        {
            CHART: None,
            f"{FERN}/chart.png": picture(
                [
                    ["#a04030", "#a04031", "#a04031", "#6b503a"],
                    ["#a04030", (0, 0, 0, 0), (0, 0, 0, 0), (0, 0, 0, 0)],
                ]
            ),
        },
        "series/garden-year/fern/chart.png:1:2: the pixel at column 2, row 1 (2 stitches in all) is #a04031, the colour of no key line; the nearest is the mark 'r': #a04030",
    ),
    Case(
        "a photograph that cannot be read",
        {f"{FERN}/photo.jpg": b"\xff\xd8\xff nope"},
        "series/garden-year/fern/photo.jpg:1:1: this is not a JPEG picture that can be read; save it again as JPEG",
    ),
    Case(
        "a PNG that calls itself a JPEG",
        {f"{FERN}/photo.jpg": picture([["#a04030"]])},
        "series/garden-year/fern/photo.jpg:1:1: this is a PNG picture, and its name ends like one of JPEG; call it 'photo.png', or save it again as JPEG",
    ),
    Case(
        "a mark of another pattern, typed into a row that it makes too long",
        {CHART: "# A fern\nrrbb\nrDk..\nrrbb\n"},
        "series/garden-year/fern/chart.txt:3:2: the mark 'D' at column 2, row 2 is not in the key; take it out: the row is 1 too long",
    ),
    Case(
        "a photograph under the name that the camera gave it",
        {f"{FERN}/IMG_2041.JPG": picture([["#a04030"]], "JPEG")},
        "series/garden-year/fern/IMG_2041.JPG:1:1: advice: nothing reads 'IMG_2041.JPG'; if it is the photograph of the model, call it 'photo.jpg' (a name that begins with '_' is left alone)",
    ),
    Case(
        "a photograph in a kind that is not read",
        {f"{FERN}/fern.HEIC": b"ftypheic"},
        "series/garden-year/fern/fern.HEIC:1:1: advice: nothing reads 'fern.HEIC'; if it is the photograph of the model, save it as 'photo.jpg' (a name that begins with '_' is left alone)",
    ),
    Case(
        "a second picture beside the photograph",
        {
            f"{FERN}/photo.jpg": picture([["#a04030"]], "JPEG"),
            f"{FERN}/IMG_2041.JPG": picture([["#a04030"]], "JPEG"),
        },
        "series/garden-year/fern/IMG_2041.JPG:1:1: advice: nothing reads 'IMG_2041.JPG'; known here: chart.txt, pattern.yaml, photo.jpg, photo.png, stitching.md, story.md, symbols.yaml (a name that begins with '_' is left alone)",
    ),
    Case(
        "notes on finishing in the folder of a pattern",
        {"series/garden-year/fern/finishing.md": "Glue it.\n"},
        "series/garden-year/fern/finishing.md:1:1: advice: nothing reads 'finishing.md'; tell in steps.md of the finishing piece how it is made and painted, and how the stitching is mounted (a name that begins with '_' is left alone)",
    ),
    Case(
        "the same in the folder of a finishing piece",
        {"finishes/shelf/painting.md": "Paint it.\n"},
        "finishes/shelf/painting.md:1:1: advice: nothing reads 'painting.md'; tell in steps.md how the piece is made and painted, and how the stitching is mounted (a name that begins with '_' is left alone)",
    ),
    Case(
        "a chart in pixels whose name has a slip",
        {CHART: None, f"{FERN}/chrat.png": picture([["#a04030"]])},
        "series/garden-year/fern/chart.txt:1:1: there is no file 'chart.txt' here; draw one character for each stitch, '.' for bare cloth, or bring a drawing in with packetgen bring",
        "series/garden-year/fern/chrat.png:1:1: advice: nothing reads 'chrat.png'; did you mean 'chart.png'? (a name that begins with '_' is left alone)",
    ),
    Case(
        "two photographs",
        {
            f"{FERN}/photo.jpg": picture([["#a04030"]], "JPEG"),
            f"{FERN}/photo.png": picture([["#a04030"]]),
        },
        "series/garden-year/fern/photo.png:1:1: there are two photographs; keep photo.jpg or photo.png",
    ),
    Case(
        "backstitch of one point",
        {PATTERN: ('"1,1 4,1 4,2.5"', '"1,1"')},
        "series/garden-year/fern/pattern.yaml:13:24: a line with the single point '1,1'; give two points or more",
    ),
    Case(
        "backstitch without points",
        {PATTERN: ('"1,1 4,1 4,2.5"', '""')},
        "series/garden-year/fern/pattern.yaml:13:24: 'path' has no value; write one, for example path: \"12,30 15,30 15,34.5\"",
    ),
    Case(
        "the same point twice running",
        {PATTERN: ('"1,1 4,1 4,2.5"', '"1,1 4,1 4.0,1 4,2"')},
        "series/garden-year/fern/pattern.yaml:13:32: the point '4.0,1' stands twice running; take one of the two away",
    ),
    Case(
        "a long stitch that bends",
        {PATTERN: ("backstitch:", "long_stitch:")},
        "series/garden-year/fern/pattern.yaml:13:32: a long stitch with 3 points; give its two ends; use backstitch for a line that bends",
    ),
    Case(
        "the end of a line with two figures in each other's place",
        {
            CHART: ("rrbb" + "." * 12 + "\n") * 30,
            PATTERN: TINY[PATTERN]
            .replace('"1,1 4,1 4,2.5"', '"3,5 21,2"')
            .replace("at: 3,2", "at: 5,2"),
        },
        "series/garden-year/fern/pattern.yaml:13:28: the point '21,2' is outside the chart of 16 × 30 stitches; points go from 1,1 to 17,31; should it be 12,2?",
    ),
    *(
        Case(
            f"a knot whose full stop was lost: {said}",
            {PATTERN: ('at: "2.5,2.5 3,3"', f'at: "{said}"')},
            f"series/garden-year/fern/pattern.yaml:15:22: the point '{said}' is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3; should it be 2.5,1.5?",
        )
        for said in ("25,1.5", "2.5,15")
    ),
    Case(
        "a knot whose full stop was lost, or whose figures changed places",
        {
            CHART: "rrbb" + "." * 50 + ("\nrk.." + "." * 50) * 29,
            PATTERN: ('at: "2.5,2.5 3,3"', 'at: "65,2.5"'),
        },
        "series/garden-year/fern/pattern.yaml:15:22: the point '65,2.5' is outside the chart of 54 × 30 stitches; points go from 1,1 to 55,31; should it be 6.5,2.5?",
    ),
    Case(
        "backstitch outside the chart",
        {PATTERN: ('"1,1 4,1 4,2.5"', '"1,1 14,1"')},
        "series/garden-year/fern/pattern.yaml:13:28: the point '14,1' is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3",
    ),
    Case(
        "a French knot outside the chart",
        {PATTERN: ('"2.5,2.5 3,3"', '"0,0"')},
        "series/garden-year/fern/pattern.yaml:15:22: the point '0,0' is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3; they count from 1: should it be 1,1?",
    ),
    Case(
        "a bead outside the chart",
        {PATTERN: ('"3.5,1.5"', '"3.5,4"')},
        "series/garden-year/fern/pattern.yaml:17:37: the point '3.5,4' is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3",
    ),
    Case(
        "a close-up of half a row",
        {PATTERN: ("      kk..\n", "")},
        "series/garden-year/fern/pattern.yaml:20:11: this close-up has 1 row of characters; write two for each row of stitches, after 'rows: |'",
    ),
    Case(
        "a close-up on one line",
        {PATTERN: ("rows: |\n      k..k\n      kk..", "rows: k..k kk..")},
        "series/garden-year/fern/pattern.yaml:20:11: this close-up has 1 row of characters; write two for each row of stitches, after 'rows: |'",
    ),
    Case(
        "a close-up with a row too short",
        {PATTERN: ("      kk..\n", "      kk.\n")},
        "series/garden-year/fern/pattern.yaml:22:7: row 2 of this close-up has 3 characters; write two for each stitch, in each row the same: 4",
    ),
    Case(
        "a close-up of one stitch and a half",
        {PATTERN: ("      k..k\n      kk..\n", "      k..\n      kk.\n")},
        "series/garden-year/fern/pattern.yaml:21:7: row 1 of this close-up has 3 characters; write two for each stitch, in each row the same: 4",
    ),
    Case(
        "a close-up over the edge of the chart",
        {PATTERN: ("at: 3,2", "at: 4,2")},
        "series/garden-year/fern/pattern.yaml:19:9: this close-up of 2 × 1 stitches at 4,2 does not fit on the chart; columns go from 1 to 4 and rows from 1 to 2",
    ),
    Case(
        "a close-up with a mark that the key lacks",
        {PATTERN: ("      kk..\n", "      kz..\n")},
        "series/garden-year/fern/pattern.yaml:22:8: the mark 'z' is not in the key; known here: b, k, r",
    ),
    Case(
        "a full cross in a close-up",
        {PATTERN: ("      k..k\n      kk..\n", "      kk.k\n      kk..\n")},
        "series/garden-year/fern/pattern.yaml:21:7: 'kk' over 'kk' is a full cross, at column 3, row 2; put 'k' in the chart itself, and '.' here",
    ),
    Case(
        "a stitch that cannot be worked",
        {PATTERN: ("      k..k\n      kk..\n", "      kk.k\n      ....\n")},
        "series/garden-year/fern/pattern.yaml:21:7: 'kk' over '..' is no stitch, at column 3, row 2; three alike make a three-quarter, two alike on a diagonal a half, single ones quarters",
    ),
    Case(
        "a close-up over a stitch of the chart",
        {PATTERN: ("at: 3,2", "at: 2,2")},
        "series/garden-year/fern/pattern.yaml:21:7: the chart already has 'k' at column 2, row 2; write '.' in the chart there, or '..' over '..' here; or mend 'at', if it lies elsewhere",
    ),
    Case(
        "a close-up in another place, over two stitches of the chart",
        {PATTERN: ("at: 3,2", "at: 1,2")},
        "series/garden-year/fern/pattern.yaml:21:7: the chart already has 'r' at column 1, row 2, and stitches below 1 more of this close-up; write '.' in the chart there, or '..' over '..' here; or mend 'at', if it lies elsewhere",
    ),
    Case(
        "two close-ups over each other",
        {PATTERN: ("close_ups:\n", "close_ups:\n  - at: 3,2\n    rows: |\n      r.\n      ..\n")},
        "series/garden-year/fern/pattern.yaml:25:7: column 3, row 2 is filled by another close-up (line 21); keep one of the two",
    ),
    Case(
        "revisions in the wrong order",
        {
            PATTERN: (
                "  - {date: 2026-11-25, note: First issue.}",
                "  - {date: 2026-11-25, note: First issue.}\n  - {date: 2026-10-25, note: Second issue.}",
            )
        },
        "series/garden-year/fern/pattern.yaml:28:12: the revision of 2026-10-25 stands after that of 2026-11-25, the first issue; mend the day, to 2026-11-25 or later",
    ),
    Case(
        "a photograph that tells where it was taken",
        {f"{FERN}/photo.jpg": photo_with_place()},
        "series/garden-year/fern/photo.jpg:1:1: advice: the photograph tells where it was taken; save it without its position if the place is private",
    ),
    Case(
        "a photograph far too large",
        {f"{FERN}/photo.png": picture_that_claims(9000, 9000)},
        "series/garden-year/fern/photo.png:1:1: the picture has too many pixels; make it smaller: 50 million in all is the most",
    ),
    Case(
        "a chart in far too many pixels",
        {CHART: None, f"{FERN}/chart.png": picture_that_claims(90000, 90000)},
        "series/garden-year/fern/chart.png:1:1: the picture has too many pixels; make it smaller: 50 million in all is the most",
    ),
    Case(
        "a semicolon in a point",
        {PATTERN: ("2.5,2.5 3,3", "2.5;2.5 3,3")},
        "series/garden-year/fern/pattern.yaml:15:22: '2.5;2.5' is not a point; write a comma in each point and a space between two: 2.5,2.5 3,3",
    ),
    Case(
        "points with a space behind each comma",
        {PATTERN: ("1,1 4,1 4,2.5", "1, 1 4, 1 4, 2.5")},
        "series/garden-year/fern/pattern.yaml:13:24: '1,' is not a point; write a comma in each point and a space between two: 1,1 4,1 4,2.5",
    ),
    Case(
        "points with a semicolon between two",
        {PATTERN: ("1,1 4,1 4,2.5", "1,1; 4,1")},
        "series/garden-year/fern/pattern.yaml:13:24: '1,1;' is not a point; write a comma in each point and a space between two: 1,1 4,1",
    ),
    Case(
        "corners of wood with a slash in each",
        {FINISH: ("outline: 0,0 120,0 120,120 0,120", "outline: 0/0 120/0 120/120 0/120")},
        "finishes/shelf/finish.yaml:10:14: '0/0' is not a point; write a comma in each point and a space between two: 0,0 120,0 120,120 0,120",
    ),
    Case(
        "decimal commas in a point",
        {PATTERN: ("1,1 4,1 4,2.5", "2,5;1,5")},
        "series/garden-year/fern/pattern.yaml:13:24: '2,5;1,5' is not a point; write a full stop before decimals, and one comma, for example 12,30.5",
    ),
    Case(
        "decimal commas in all points of knots",
        {PATTERN: ('at: "2.5,2.5 3,3"', 'at: "2,5,2,5 3,3 3,2,25 2,5,1"')},
        "series/garden-year/fern/pattern.yaml:15:22: '2,5,2,5' is not a point; write a full stop before decimals, and one comma: 2.5,2.5 3,3 3,2.25 2.5,1",
    ),
    Case(
        "a decimal comma in a knot's place, which reads as two knots on bare cloth",
        {
            CHART: "rrbb........\nrk..........\n" + "............\n" * 4,
            PATTERN: ('at: "2.5,2.5 3,3"', 'at: "1,5 2,5"'),
        },
        "series/garden-year/fern/pattern.yaml:15:22: advice: these 2 points are on no stitch; if their commas are those of decimals, write 1.5,2.5, which is on stitches",
    ),
    Case(
        "a decimal comma that may stand in either number",
        {PATTERN: ('at: "2.5,2.5 3,3"', 'at: "2,5,5 3,3"')},
        "series/garden-year/fern/pattern.yaml:15:22: '2,5,5' is not a point; write a full stop before decimals, and one comma, for example 12,30.5",
    ),
    Case(
        "two points without a space between",
        {PATTERN: ('at: "2.5,2.5 3,3"', 'at: "2.5,1.53,2"')},
        "series/garden-year/fern/pattern.yaml:15:22: '2.5,1.53,2' is not a point; write a space between two points: 2.5,1.5 3,2",
    ),
    Case(
        "numbers that may be points or decimals",
        {PATTERN: ("1,1 4,1 4,2.5", "1,1,4,1")},
        "series/garden-year/fern/pattern.yaml:13:24: '1,1,4,1' is not a point; write a full stop before decimals, and one comma, for example 12,30.5",
    ),
    Case(
        "a mark of the key with a capital that the chart has not, beside its kept symbol",
        {
            PATTERN: ("  b: {moss", "  B: {moss"),
            f"{FERN}/symbols.yaml": "symbols:\n  r: heart\n  k: disc\n  b: leaf-veined\n",
        },
        "series/garden-year/fern/pattern.yaml:11:3: the mark 'B' is never used, and the chart has 'b' (2 stitches), which is not in the key; write 'b:' here, or put 'B' in the chart for it",
    ),
    Case(
        "two marks of the key with capitals that the chart has not",
        {
            PATTERN: TINY[PATTERN]
            .replace("  b: {moss", "  B: {moss")
            .replace("  r: {moss", "  R: {moss")
            .replace("  - {colour: r,", "  - {colour: k,")
        },
        "series/garden-year/fern/chart.txt:2:1: the chart has 'b' and 'r' where the key has 'B' and 'R': capitals and small letters are different marks; write them in one way, in the chart or in the key",
    ),
    Case(
        "a mark of the key mistyped",
        {PATTERN: ("  b: {moss", "  v: {moss")},
        "series/garden-year/fern/pattern.yaml:11:3: the mark 'v' is never used, and the chart has 'b' (2 stitches), which is not in the key; write 'b:' here, or put 'v' in the chart for it",
    ),
    Case(
        "a row cut in two by a line break",
        {CHART: "rrbb\nrk..\nr\nrbb\nrrbb\n"},
        "series/garden-year/fern/chart.txt:3:2: rows 3 and 4 are 1 and 3 stitches long, together 4 as most are; if a row was cut in two there, make one line of them",
    ),
    Case(
        "two rows on one line",
        {CHART: "rrbb\nrk..rrbb\nrrbb\n"},
        "series/garden-year/fern/chart.txt:2:5: row 2 is 8 stitches long, 2 times as long as most; begin a new line after every 4 stitches",
    ),
    Case(
        "a chart that was put in twice",
        {CHART: "rrbb\nrk..\n\nrrbb\nrk..\n"},
        "series/garden-year/fern/chart.txt:3:1: the whole chart stands here a second time, from row 4 on; take that away, with the empty line before it",
    ),
    Case(
        "a blend written with a plus",
        {PATTERN: ('b: {moss: [E2, "07"],', "b: {moss: E2+07,")},
        "series/garden-year/fern/pattern.yaml:11:13: Moss Stranded has no colour 'E2+07'; for a blend of the two write [E2, 07]",
    ),
    Case(
        "a blend written with a plus, with a space alone",
        {PATTERN: ('b: {moss: [E2, "07"],', "b: {moss: E2 07,")},
        "series/garden-year/fern/pattern.yaml:11:13: Moss Stranded has no colour 'E2 07'; for a blend of the two write [E2, 07]",
    ),
    Case(
        "a blend without its brackets",
        {PATTERN: ("r: {moss: E2,", "r: {moss: E2, K4,")},
        "series/garden-year/fern/pattern.yaml:9:17: 'K4' is no thread set and not part of a key line; for a blend of the two write [E2, K4]",
    ),
    Case(
        "a blend without its brackets that another mark is stitched with",
        {PATTERN: ('k: {moss: K4, spool: "12"}', 'k: {moss: "E2", "07", spool: "12"}')},
        "series/garden-year/fern/pattern.yaml:10:19: '07' is no thread set and not part of a key line; for a blend of the two write [E2, 07]",
    ),
    Case(
        "a thread set without a number",
        {PATTERN: ("r: {moss: E2,", "r: {moss,")},
        """series/garden-year/fern/pattern.yaml:9:11: 'moss' has no value; write one, for example moss: "E2\"""",
    ),
    Case(
        "an equals sign between braces",
        {PATTERN: ("{cloth: hopsack-28, colour: frost}", "{cloth=hopsack-28, colour = frost}")},
        "series/garden-year/fern/pattern.yaml:6:6: no colon with a space stands after 'cloth'; write cloth: hopsack-28",
        "series/garden-year/fern/pattern.yaml:6:24: no colon with a space stands after 'colour'; write colour: frost",
    ),
    Case(
        "a semicolon between braces",
        {PATTERN: ("{cloth: hopsack-28, colour: frost}", "{cloth: hopsack-28; colour: frost}")},
        "series/garden-year/fern/pattern.yaml:6:24: no comma stands between 'hopsack-28' and 'colour'; write hopsack-28, colour: frost",
    ),
    Case(
        "a space in a point",
        {PATTERN: ("2.5,2.5 3,3", "2.5, 2.5")},
        "series/garden-year/fern/pattern.yaml:15:22: '2.5,' is not a point; write a comma in each point and a space between two: 2.5,2.5",
    ),
    Case(
        "a point on a third of a stitch",
        {PATTERN: ("2.5,2.5 3,3", "2.5,2.5 3,2.3")},
        "series/garden-year/fern/pattern.yaml:15:30: '3,2.3' is not on a quarter of a stitch; the nearest point that is: '3,2.25'",
    ),
    *(
        Case(
            f"points with {way}",
            {PATTERN: ("1,1 4,1 4,2.5", points)},
            f"series/garden-year/fern/pattern.yaml:13:{24 + 4 * at}: '{points.split()[at]}' is not a point; write a comma in each point and a space between two: 1,1 4,1 4,2.5",
        )
        for way, points, at in (
            ("an x between two", "1x1 4x1 4x2.5", 0),
            ("letters before them", "x1 y1 x4 y1 x4 y2.5", 0),
            ("semicolons between pairs", "1 1; 4 1; 4 2.5", 0),
            ("a comma left out in one of them", "1,1 4 1 4,2.5", 1),
        )
    ),
    *(
        Case(
            f"points with {way} between two",
            {PATTERN: ("1,1 4,1 4,2.5", f"1,1 {way} 4,1 {way} 4,2.5")},
            f"series/garden-year/fern/pattern.yaml:13:28: '{way}' is not a point; write a comma in each point and a space between two: 1,1 4,1 4,2.5",
        )
        for way in ("to", "->", "→")
    ),
    Case(
        "a close-up at half a stitch",
        {PATTERN: ("at: 3,2", "at: 3.5,2")},
        "series/garden-year/fern/pattern.yaml:19:9: '3.5,2' is not a stitch of the chart; write its column,row in whole numbers, for example 12,30",
    ),
    Case(
        "points without quotes, between brackets",
        {PATTERN: ('at: "2.5,2.5 3,3"', "at: 2.5,2.5 3,3")},
        """series/garden-year/fern/pattern.yaml:15:21: points have commas, and between braces a comma ends a value; put quotes round them: at: "2.5,2.5 3,3\"""",
    ),
    Case(
        "points between curly quotes",
        {PATTERN: ('at: "2.5,2.5 3,3"', "at: “2.5,2.5 3,3”")},
        """series/garden-year/fern/pattern.yaml:15:21: points have commas, and between braces a comma ends a value; put straight quotes round them: at: "2.5,2.5 3,3\"""",
    ),
    Case(
        "no comma before points between quotes",
        {PATTERN: ('{colour: k, path: "1,1 4,1 4,2.5"}', '{colour: k path: "1,1 4,1 4,2.5"}')},
        """series/garden-year/fern/pattern.yaml:13:15: no comma stands between 'k' and 'path'; write k, path: "1,1 4,1 4,2.5\"""",
    ),
    Case(
        "a remark above the chart without its sign",
        {
            CHART: "A fern by the tap: one character a stitch\n# r is rust\nrrbb\nrk..\nrrbb\nrk..\nrrbb\n"
        },
        "series/garden-year/fern/chart.txt:1:1: 'A fern by the tap: one character a stit…' is words and no row of stitches; put # before it",
    ),
    Case(
        "backstitch in as many strands as the crosses, and what may be meant otherwise",
        {
            f"{FERN}/stitching.md": "The crosses have two strands.\nBackstitch in one strand.\nThe backstitch comes last, in two strands.\nThe backstitch has one strand and its crosses two strands.\n"
        },
        "series/garden-year/fern/stitching.md:3:31: advice: here stands 'two strands' for backstitch, worked with 1 in this pattern; mend the number here, or 'backstitch_strands' in series.yaml",
    ),
    *(
        Case(
            f"backstitch in as many strands as the crosses: {words}",
            {f"{FERN}/stitching.md": f"## Of strands and lines\n\n{words}.\n"},
            f"series/garden-year/fern/stitching.md:3:{column}: advice: here stands '{told}' for backstitch, worked with 1 in this pattern; mend the number here, or 'backstitch_strands' in series.yaml",
        )
        for words, column, told in (
            ("Backstitch in two strands", 15, "two strands"),
            ("Backstitch in two strands round the halves of the daisies", 15, "two strands"),
            ("Crosses take two strands of thread, lines two", 43, "two"),
        )
    ),
    Case(
        "knots in as many strands as nothing of theirs",
        {f"{FERN}/stitching.md": "Every knot has two strands.\nThe knots have two strands.\n"},
        "series/garden-year/fern/stitching.md:2:16: advice: here stands 'two strands' for knots, worked with 1 in this pattern; mend the number here, or 'knot_strands' in series.yaml",
    ),
    Case(
        "all knots in as many strands as nothing of theirs",
        {f"{FERN}/stitching.md": "All two French knots are worked last, with two strands.\n"},
        "series/garden-year/fern/stitching.md:1:44: advice: here stands 'two strands' for knots, worked with 1 in this pattern; mend the number here, or 'knot_strands' in series.yaml",
    ),
    Case(
        "notes that count strands with which nothing is worked",
        {
            f"{FERN}/stitching.md": "Part the thread: take two strands of the six strands, and keep four strands.\nThe tip has 3\nstrands.\n"
        },
        "series/garden-year/fern/stitching.md:2:13: advice: here stand '3 strands', and this pattern is worked with 1 and 2; mend the number here, or 'strands' in the key or in series.yaml",
    ),
    Case(
        "notes that send to columns beyond the chart",
        {
            f"{FERN}/stitching.md": "Begin in column 1, row 2, and leave row 2 bare.\nColumns 2 to 6 are last, of which row 1 and 150 others are green.\n"
        },
        "series/garden-year/fern/stitching.md:2:1: advice: here stands 'Columns 2 to 6', and the chart has 4 columns; mend the number, or say what is meant",
    ),
    Case(
        "a key line that lost its mark's letter, though lines and knots are in it",
        {PATTERN: ("  k: {moss", "  1: {moss")},
        "series/garden-year/fern/pattern.yaml:10:3: the mark '1' is never used, and the chart has 'k', which is not in the key; write 'k:' here, or put '1' in the chart for it",
    ),
    Case(
        "a comma too many in a row of a table",
        {
            CHART: None,
            f"{FERN}/chart.csv": "r,r,b,b,,\nr,k,,,,\nr,k,,k,k,k,\n,,,,r,\n",
        },
        "series/garden-year/fern/chart.csv:3:3: row 3 is 7 stitches long, most are 6; take 1 away, perhaps at column 3: compare the rows above and below before you do",
    ),
    Case(
        "a remark of the marks alone that lost its sign, above one that has it",
        {CHART: "b r k\n# the brick pot\n# and its fern\n" + TINY[CHART] + "kkkk\n"},
        "series/garden-year/fern/chart.txt:1:1: 'b r k' is words and no row of stitches; put # before it",
    ),
    Case(
        "a row that got above the remarks",
        {CHART: "....\n# the brick pot\n# and its fern\nrrbb\nrk..\nrrbb\nrk..\nrrbb\nrk..\n"},
        "series/garden-year/fern/chart.txt:2:1: '# the brick pot' is words and no row of stitches; nor is the line below it; move both above the first row of the chart",
    ),
    Case(
        "a word and a remark between rows",
        {CHART: "rrbb\nrk..\nantennae\nrrbb\n# the wings\nrk..\nrrbb\n"},
        "series/garden-year/fern/chart.txt:3:1: 'antennae' is words and no row of stitches; take it out: remarks stand above the chart",
        "series/garden-year/fern/chart.txt:5:1: '# the wings' is words and no row of stitches; take it out: remarks stand above the chart",
    ),
    Case(
        "points of which two pieces are alike, without quotes",
        {PATTERN: ('path: "1,1 4,1 4,2.5"', "path: 1,1 4,1 4,2.5")},
        """series/garden-year/fern/pattern.yaml:13:23: points have commas, and between braces a comma ends a value; put quotes round them: path: "1,1 4,1 4,2.5\"""",
    ),
    Case(
        "a pixel in the colour of two marks",
        {
            MOSS: ("#6b503a", "#a04030"),
            CHART: None,
            f"{FERN}/chart.png": picture([["#a04030"] * 4] * 2),
        },
        "series/garden-year/fern/chart.png:1:1: the pixel colour #a04030 could be the marks 'r' and 'k'; draw this chart as chart.txt, which tells them apart",
        "threads/moss.yaml:10:35: advice: 'K4' has the very colour of 'E2', #a04030; look once more at both, or lay this aside in series.yaml where they are the same",
    ),
    *(
        Case(
            f"a picture of the chart {how}",
            {CHART: None, f"{FERN}/chart.png": data},
            f"{FERN}/chart.png:1:1: {what}, and in a chart a pixel is a stitch; bring it in, and then take it out: packetgen bring content/{FERN}/chart.png --pattern fern --replace",
        )
        for how, data, what in (
            ("enlarged", ENLARGED, "a stitch is 100 pixels wide"),
            ("in colours of its own", STRANGE, "13 of its colours are no key line's"),
        )
    ),
    Case(
        "a picture of the chart beside the chart",
        {f"{FERN}/chart.png": ENLARGED},
        f"{FERN}/chart.png:1:1: several charts: 'chart.txt' and 'chart.png'; keep one, or write chart: chart.txt in pattern.yaml, or bring the PNG in: packetgen bring content/{FERN}/chart.png --pattern fern --replace",
    ),
    Case(
        "points with hyphens between them and no spaces",
        {PATTERN: ('path: "1,1 4,1 4,2.5"', 'path: "1,1-4,1-4,2.5"')},
        "series/garden-year/fern/pattern.yaml:13:24: '1,1-4,1-4,2.5' is not a point; write a comma in each point and a space between two: 1,1 4,1 4,2.5",
    ),
    *(
        Case(
            f"a chart with {what}",
            {CHART: "\n".join(rows) + "\n"},
            f"series/garden-year/fern/chart.txt:{spot}: {told}",
        )
        for what, rows, spot, told in (
            (
                "quotes round its rows",
                ('"rrbb"', '"rk.."', '"rrbb"'),
                "1:1",
                """'"' stands at both ends of every row of this chart and is no mark of the key; take it away""",
            ),
            (
                "commas behind its rows",
                ("rrbb,", "rk..,", "rrbb,"),
                "1:1",
                "',' stands behind every row of this chart and is no mark of the key; take it away",
            ),
            (
                "numbers behind its rows",
                ("rrbb 1", "rk.. 2", "rrbb 3"),
                "1:6",
                "numbers stand behind the rows of this chart, here '1'; take them away, with what parts them from the row",
            ),
            (
                "its columns counted above it",
                ("1234", "rrbb", "rk..", "rrbb"),
                "1:1",
                "'1234' is words and no row of stitches; put # before it",
            ),
            (
                "another sign for bare cloth",
                ("rrbb", "rk--", "----", "----", "----"),
                "2:3",
                "the mark '-' at column 3, row 2 (14 stitches in all) is not in the key; if it is bare cloth, write '.' in its place",
            ),
        )
    ),
)
