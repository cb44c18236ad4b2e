"""Files that cannot be read, and lines that fit no file.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import (
    BEADS,
    CHART,
    CLOTH,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    SERIES,
    TINY,
    Change,
)
from tests.wrong_input_case import KEY_LINE, Case


def moved(*where: tuple[str, str]) -> dict[str, Change]:
    """What begins with the first of each two begins with the second."""
    return {
        path: change
        for one, other in where
        for old in TINY
        if old.startswith(one)
        for path, change in ((old, None), (old.replace(one, other, 1), TINY[old]))
    }


CASES = (
    Case(
        "a sentence that lost its sign of a remark",
        {PATTERN: ("designer: alder", "\nHer id in series.yaml.\ndesigner: alder")},
        "series/garden-year/fern/pattern.yaml:3:1: 'Her id in series.yaml.' has no colon; put # before it, if it is a remark; else set it in by 2 spaces, if it goes on with 'title'",
    ),
    Case(
        "a sentence that lost its sign of a remark, below a word",
        {PATTERN: ("about: A fern", "\nOne sentence.\nabout: A fern")},
        "series/garden-year/fern/pattern.yaml:4:1: 'One sentence.' has no colon; put # before it, if it is a remark; else write a name, a colon, a space and the value",
    ),
    Case(
        "two versions of a file put into one",
        {
            PATTERN: (
                "designer: alder",
                "<<<<<<< mine\ndesigner: alder\n=======\ndesigner: reed\n>>>>>>> hers",
            )
        },
        "series/garden-year/fern/pattern.yaml:2:1: '<<<<<<< mine' has no colon; two versions of this file were put into one: keep one of the two, and take out all lines that begin like this",
    ),
    Case(
        "a word behind a name that has lines of its own",
        {FINISH: ("panel:\n", "panel: none\n  keep_out: []\n")},
        "finishes/shelf/finish.yaml:4:3: 'keep_out: []' is set in by 2 spaces, which fits none of the lines around it; if it belongs to 'panel' above, take 'none' away there; else let it begin at the margin",
    ),
    Case(
        "a pattern without a chart",
        {CHART: None},
        "series/garden-year/fern/chart.txt:1:1: there is no file 'chart.txt' here; draw one character for each stitch, '.' for bare cloth, or bring a drawing in with packetgen bring",
    ),
    Case(
        "a change of several files that was cut off",
        {f"_next/{PATTERN}": TINY[PATTERN], "_next/a.txt": "", "_next/b.txt": ""},
        "_next:1:1: a change of several files is not finished, and 3 files must still come from here; look again in a moment; if it was cut off, move all that is in '_next' to the same places outside of it",
    ),
    Case(
        "a file with another ending",
        {PATTERN: None, f"{FERN}/pattern.yml": TINY[PATTERN]},
        "series/garden-year/fern/pattern.yaml:1:1: there is no file 'pattern.yaml' here; rename 'pattern.yml' to 'pattern.yaml'",
    ),
    Case(
        "a file with a capital letter in its name",
        {PATTERN: None, f"{FERN}/Pattern.yaml": TINY[PATTERN]},
        "series/garden-year/fern/pattern.yaml:1:1: there is no file 'pattern.yaml' here; rename 'Pattern.yaml' to 'pattern.yaml'",
    ),
    Case(
        "a pattern without its story",
        {f"{FERN}/story.md": None},
        "series/garden-year/fern/story.md:1:1: there is no file 'story.md' here; write one (it may be short)",
    ),
    Case(
        "a story with nothing in it",
        {f"{FERN}/story.md": "\n"},
        "series/garden-year/fern/story.md:1:1: the file is empty; write something into it",
    ),
    Case(
        "a thread card with nothing but a remark",
        {MOSS: "# nothing yet\n"},
        "threads/moss.yaml:1:1: the file is empty; write something into it",
    ),
    Case(
        "a file saved in an old encoding",
        {MOSS: TINY[MOSS].replace("brick", "café").encode("latin-1")},
        "threads/moss.yaml:9:27: the letter after 'caf' is not in UTF-8; save the file again and choose UTF-8 as its encoding",
    ),
    Case(
        "a file saved as UTF-16",
        {MOSS: TINY[MOSS].encode("utf-16")},
        "threads/moss.yaml:1:1: the whole file is in UTF-16; save the file again and choose UTF-8 as its encoding",
    ),
    Case(
        "a file that is not text",
        {MOSS: b"name: a\x00b\n"},
        "threads/moss.yaml:1:8: this is not a text file; write it with a plain text editor and save it as UTF-8",
    ),
    Case(
        "a story as a word processor keeps it",
        {f"{FERN}/story.md": None, f"{FERN}/Story.docx": b"PK\x03\x04"},
        "series/garden-year/fern/story.md:1:1: there is no file 'story.md' here; save 'Story.docx' as plain text (UTF-8) under the name 'story.md'",
    ),
    Case(
        "a story whose document was given another name",
        {f"{FERN}/story.md": "{\\rtf1\\ansi It grew behind the tap.}"},
        "series/garden-year/fern/story.md:1:1: 'story.md' is no plain text, but a document with its type and colours (RTF); open it where you wrote it, and save it as plain text (UTF-8) under this name",
    ),
    Case(
        "a card that was written in a spreadsheet",
        {MOSS: b"PK\x03\x04\x00"},
        "threads/moss.yaml:1:1: 'moss.yaml' is no plain text, but a document or a table as an office program keeps it; open it where you wrote it, and save it as plain text (UTF-8) under this name",
    ),
    Case(
        "a chart as a spreadsheet keeps it",
        {CHART: None, f"{FERN}/chart.xlsx": b"PK\x03\x04"},
        "series/garden-year/fern/chart.txt:1:1: there is no file 'chart.txt' here; save 'chart.xlsx' as CSV (UTF-8) under the name 'chart.csv'",
    ),
    Case(
        "documents beside what was saved of them",
        {f"{FERN}/{name}": b"%PDF-" for name in ("story.odt", "chart.ods")},
        "series/garden-year/fern/chart.ods:1:1: advice: nothing reads 'chart.ods'; save 'chart.ods' as CSV (UTF-8) under the name 'chart.csv' (a name that begins with '_' is left alone)",
        "series/garden-year/fern/story.odt:1:1: advice: nothing reads 'story.odt'; save 'story.odt' as plain text (UTF-8) under the name 'story.md' (a name that begins with '_' is left alone)",
    ),
    Case(
        "a mark that turns the direction of writing",
        {PATTERN: ("A fern", "A \u202efern")},
        "series/garden-year/fern/pattern.yaml:3:10: here stands a mark that turns the direction of writing (U+202E), which nobody can see; delete it and type the word again",
    ),
    Case(
        "a number behind a '#' in a title",
        {PATTERN: ("title: Fern by the Tap", "title: Fern by the Tap #2")},
        "series/garden-year/fern/pattern.yaml:1:24: advice: '#2' counts as a remark and is not printed; if it belongs to the text, write \"Fern by the Tap #2\"; else put two spaces before the '#' and one behind it",
    ),
    Case(
        "a number behind a '#' in a title that is too long to be said",
        {PATTERN: ("title: Fern by the Tap", f"title: {'Fern by the Tap and ' * 4}Ivy #2")},
        "series/garden-year/fern/pattern.yaml:1:92: advice: '#2' counts as a remark and is not printed; if it belongs to the text, put all of it between quotes, this too; else put two spaces before the '#' and one behind it",
    ),
    Case(
        "a '#' between two words",
        {PATTERN: ("A fern uncurls.", "A fern # one uncurls.")},
        "series/garden-year/fern/pattern.yaml:3:15: advice: '# one uncurls.' counts as a remark and is not printed; if it belongs to the text, write \"A fern # one uncurls.\"; else put two spaces before the '#' and one behind it",
    ),
    Case(
        "a title that begins with a '#'",
        {PATTERN: ("title: Fern by the Tap", "title: #2 Fern")},
        "series/garden-year/fern/pattern.yaml:1:7: 'title' has no value (what follows a bare '#' counts as a remark); put it between quotes: title: \"#2 Fern\"",
    ),
    Case(
        "a '#' in a text that goes on below",
        {PATTERN: ("A fern uncurls.", "A fern #2 uncurls\n  in the rain.")},
        "series/garden-year/fern/pattern.yaml:3:15: everything after '#' counts as a remark, so this text is cut off; put it between quotes: \"A fern #2 uncurls in the rain.\"",
    ),
    Case(
        "a '#' on the second line of a text",
        {PATTERN: ("A fern uncurls.", "A fern\n  #2 uncurls\n  in the rain.")},
        "series/garden-year/fern/pattern.yaml:4:3: everything after '#' counts as a remark, so this text is cut off; put it between quotes: \"A fern #2 uncurls in the rain.\"",
    ),
    Case(
        "a name between braces that begins with a '#'",
        {MOSS: ("name: brick,", "name: #1 brick,")},
        "threads/moss.yaml:9:24: everything after '#' counts as a remark, so this text is cut off; put it between quotes: \"#1 brick\"",
    ),
    Case(
        "a '#' between braces",
        {MOSS: ("name: brick,", "name: brick #1,")},
        "threads/moss.yaml:9:30: everything after '#' counts as a remark, so this text is cut off; put it between quotes: \"brick #1\"",
    ),
    Case(
        "a '#' that takes the comma before the next line with it",
        {MOSS: ("name: brick,", "name: brick #1,\n    ")},
        "threads/moss.yaml:9:30: everything after '#' counts as a remark, so this text is cut off; put it between quotes: \"brick #1\"",
    ),
    Case(
        "a zero-width space inside a name",
        {SERIES: ("finish: shelf", "finish: sh\u200belf")},
        "series/garden-year/series.yaml:4:11: here stands a zero-width space, which nobody can see; delete it and type the word again",
    ),
    Case(
        "a letter lost by another program",
        {SERIES: ("Wren Alder", "Wr\ufffdn Alder")},
        "series/garden-year/series.yaml:10:13: the sign '�' stands where another program lost a letter; type the letter again",
    ),
    Case(
        "a hidden mark brought in by a backslash",
        {PATTERN: ("about: A fern uncurls.", 'about: "A \\u202efern"')},
        "series/garden-year/fern/pattern.yaml:3:8: here stands a mark that turns the direction of writing (U+202E), which nobody can see; delete it and type the word again",
    ),
    Case(
        "a tab at the start of a line",
        {MOSS: ("length: 8 m", "\tlength: 8 m")},
        "threads/moss.yaml:6:1: here stands a tab where the line is set in; let it begin at the margin",
    ),
    Case(
        "a tab below a name that opens a list",
        {PATTERN: ("  - {cloth: hopsack", "\t- {cloth: hopsack")},
        "series/garden-year/fern/pattern.yaml:6:1: here stands a tab where the line is set in; begin it with 2 plain spaces",
    ),
    Case(
        "a tab after a colon",
        {MOSS: ("length: 8 m", "length:\t8 m")},
        "threads/moss.yaml:6:8: here stands a tab; write one space in its place",
    ),
    Case(
        "a space of an unusual kind at the start of a line",
        {PATTERN: ("  - {cloth: hopsack", "\u00a0 - {cloth: hopsack")},
        "series/garden-year/fern/pattern.yaml:6:1: here stands a space of an unusual kind where the line is set in; begin it with 2 plain spaces",
    ),
    Case(
        "a name given twice",
        {MOSS: ("length: 8 m", "length: 8 m\ntex: 30")},
        "threads/moss.yaml:7:1: 'tex' stands here a second time (first on line 4); keep one of the two",
    ),
    Case(
        "a bracket before a colon",
        {MOSS: ("length: 8 m", "[a]: 8 m")},
        "threads/moss.yaml:1:1: 'length' is missing in a thread card; add a line, for example length: 8 m",
        "threads/moss.yaml:6:1: only a single word or sign can stand before a colon; take the brackets away",
    ),
    Case(
        "a value that begins with &",
        {MOSS: ("length: 8 m", "length: &l 8 m")},
        'threads/moss.yaml:6:9: what begins with the sign & is not taken as plain text; put it between quotes: "&l 8 m"',
    ),
    Case(
        "a value that begins with *",
        {MOSS: ("length: 8 m", "length: *l")},
        'threads/moss.yaml:6:9: what begins with the sign * is not taken as plain text; put it between quotes: "*l"',
    ),
    Case(
        "a mark * without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  *: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign * is not taken as plain text; put it between quotes: "*"',
    ),
    Case(
        "a mark @ without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  @: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign @ is not taken as plain text; put it between quotes: "@"',
    ),
    Case(
        "a mark % without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  %: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign % is not taken as plain text; put it between quotes: "%"',
    ),
    Case(
        "a mark & without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  &: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign & is not taken as plain text; put it between quotes: "&"',
    ),
    Case(
        "a mark ! without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  !: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign ! is not taken as plain text; put it between quotes: "!"',
    ),
    Case(
        "a mark | without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  |: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign | is not taken as plain text; put it between quotes: "|"',
    ),
    Case(
        "a mark > without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  >: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign > is not taken as plain text; put it between quotes: ">"',
    ),
    Case(
        "a mark } without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  }: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign } is not taken as plain text; put it between quotes: "}"',
    ),
    Case(
        "a mark { without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  {: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign { is not taken as plain text; put it between quotes: "{"',
    ),
    Case(
        "a mark , without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + '  ,: {moss: E2, spool: "10"}\n')},
        'series/garden-year/fern/pattern.yaml:10:3: what begins with the sign , is not taken as plain text; put it between quotes: ","',
    ),
    Case(
        "a mark ' without quotes",
        {PATTERN: (KEY_LINE, KEY_LINE + "  ': {moss: E2, spool: 10}\n")},
        "series/garden-year/fern/pattern.yaml:10:3: what begins with the sign ' is not taken as plain text; put it between quotes: \"'\"",
    ),
    Case(
        "the mark #",
        {PATTERN: (KEY_LINE, KEY_LINE + '  "#": {moss: E2, spool: "10"}\n')},
        "series/garden-year/fern/pattern.yaml:10:3: '#' cannot be a mark: it begins a remark; choose another sign",
    ),
    Case(
        "a value that begins with !",
        {MOSS: ("length: 8 m", "length: !big 8 m")},
        'threads/moss.yaml:6:9: what begins with the sign ! is not taken as plain text; put it between quotes: "!big 8 m"',
    ),
    Case(
        "a line of three dashes in the middle",
        {MOSS: ("length: 8 m", "---\nlength: 8 m")},
        "threads/moss.yaml:6:1: a line '---' starts a second set of values; take that line away",
    ),
    Case(
        "brackets in brackets in brackets",
        {MOSS: ("length: 8 m", "length: " + "[" * 14 + "]" * 14)},
        "threads/moss.yaml:6:20: this is set in more than 12 steps deep; count the brackets and the spaces before it",
    ),
    *(
        Case(
            f"the line {name} deleted",
            {path: (f"{name}\n", "")},
            f"{path}:{line}: the line '{name}' is missing above this one; write it there, at the margin",
        )
        for name, path, line in (
            ("key:", PATTERN, "8:3"),
            ("colours:", MOSS, "8:3"),
            ("parts:", FINISH, "8:3"),
            ("cloths:", PATTERN, "5:3"),
            ("panel:", FINISH, "3:3"),
            ("thread_sets:", SERIES, "5:3"),
        )
    ),
    Case(
        "the line backstitch: deleted, which stands above lines as long stitches and lazy daisies have them too",
        {PATTERN: ("backstitch:\n", "")},
        "series/garden-year/fern/pattern.yaml:12:3: the line 'backstitch:', 'long_stitch:' or 'lazy_daisies:' is missing above this one; write it there, at the margin",
    ),
    *(
        Case(
            f"the line {name} deleted, and so a list is more of the one above it",
            {path: (f"{name}\n", "")},
            f"{path}:{line}: the line '{name}' is missing above this entry, which does not belong to '{above}'; write it there, at the margin",
        )
        for name, path, line, above in (
            ("paints:", FINISH, "17:5", "parts"),
            ("designers:", SERIES, "8:5", "thread_sets"),
            ("french_knots:", PATTERN, "14:5", "backstitch"),
            ("beads:", PATTERN, "16:5", "french_knots"),
        )
    ),
    Case(
        "the line order: deleted, and its entries on lines of their own",
        {SERIES: ("order: [fern]\n", "  - fern\n")},
        "series/garden-year/series.yaml:13:5: the line 'order:' is missing above this entry, which does not belong to 'designers'; write it there, at the margin",
    ),
    Case(
        "a key line with an equals sign",
        {PATTERN: ("  k: {moss", "  k = {moss")},
        """series/garden-year/fern/pattern.yaml:10:3: no colon stands after 'k'; write k: {moss: K4, spool: "12"}""",
    ),
    Case(
        "a key line with a dash among others",
        {PATTERN: ("  k: {moss", "  - k: {moss")},
        """series/garden-year/fern/pattern.yaml:10:3: a dash stands before 'k', and the names beside it have none; write k: {moss: K4, spool: "12"}""",
    ),
    Case(
        "a name of a file with a dash",
        {MOSS: ("material:", "- material:")},
        "threads/moss.yaml:2:1: a dash stands before 'material', and the names beside it have none; write material: cotton",
    ),
    Case(
        "a quote not closed, between brackets",
        {MOSS: ('"#a04030"', '"#a04030')},
        'threads/moss.yaml:9:36: the quote " that opens here is not closed; write "#a04030"',
    ),
    Case(
        "the same where remarks with quotes stand below",
        {PATTERN: ('spool: "10"}', 'spool: "10}\n# or one bead:\n#  - {card: drop, number: "07"}')},
        'series/garden-year/fern/pattern.yaml:9:24: the quote " that opens here is not closed; write "10"',
    ),
    Case(
        "points whose quote is not closed",
        {PATTERN: ('4,2.5"}', "4,2.5}")},
        'series/garden-year/fern/pattern.yaml:13:23: the quote " that opens here is not closed; write "1,1 4,1 4,2.5"',
    ),
    Case(
        "points whose quote was not opened",
        {PATTERN: ('"1,1 4,1', "1,1 4,1")},
        """series/garden-year/fern/pattern.yaml:13:23: points have commas, and between braces a comma ends a value; put quotes round them: path: "1,1 4,1 4,2.5\"""",
    ),
    Case(
        "a number whose quote was not opened",
        {MOSS: ('number: "07"', 'number: 07"')},
        """threads/moss.yaml:11:14: '07"' ends with a quote that nothing opens; write "07\"""",
    ),
    Case(
        "a name whose quote was not opened",
        {MOSS: ("name: brick", 'name: brick"')},
        """threads/moss.yaml:9:24: 'brick"' ends with a quote that nothing opens; write "brick\"""",
    ),
    Case(
        "a quote not closed",
        {MOSS: ("name: Moss Stranded", "name: 'Moss Stranded")},
        "threads/moss.yaml:1:7: the quote ' that opens here is not closed; write the same sign again at the end of the text, or put double quotes round all of it",
    ),
    Case(
        "a space that does not break after a colon",
        {PATTERN: ("title: Fern", "title:\u00a0Fern")},
        "series/garden-year/fern/pattern.yaml:1:7: a space of an unusual kind stands here and parts nothing; write title: Fern by the Tap with a plain one",
    ),
    Case(
        "a space that does not break after a colon, at the margin among others",
        {PATTERN: ("about: A fern", "about:\u00a0A fern")},
        "series/garden-year/fern/pattern.yaml:3:7: a space of an unusual kind stands here and parts nothing; write about: A fern uncurls. with a plain one",
    ),
    Case(
        "a space that does not break after a colon, a remark below",
        {PATTERN: ("title: Fern by the Tap\n", "title:\u00a0Fern by the Tap\n\n# Her id.\n")},
        "series/garden-year/fern/pattern.yaml:1:7: a space of an unusual kind stands here and parts nothing; write title: Fern by the Tap with a plain one",
    ),
    Case(
        "a space that does not break after a colon, the value below",
        {PATTERN: ("backstitch:\n", "backstitch:\u00a0\n")},
        "series/garden-year/fern/pattern.yaml:12:12: a space of an unusual kind stands here and parts nothing; write backstitch: with a plain one",
    ),
    Case(
        "a space that does not break after the colon of a mark",
        {PATTERN: ("  r: {", "  r:\u00a0{")},
        'series/garden-year/fern/pattern.yaml:9:5: a space of an unusual kind stands here and parts nothing; write r: {moss: E2, spool: "10"} with a plain one',
    ),
    Case(
        "a space that does not break after a colon between braces",
        {PATTERN: ("colour: frost", "colour:\u00a0frost")},
        "series/garden-year/fern/pattern.yaml:6:25: no colon with a space stands after 'colour'; type the space after the colon anew: colour: frost",
    ),
    Case(
        "a name with an equals sign",
        {PATTERN: ("title: Fern", "title = Fern")},
        "series/garden-year/fern/pattern.yaml:1:1: 'title = Fern by the Tap' has no colon; write title: Fern by the Tap",
    ),
    Case(
        "a sign of its own meaning before words of a title",
        {PATTERN: ("title: Fern", "title: & Fern")},
        'series/garden-year/fern/pattern.yaml:1:8: what begins with the sign & is not taken as plain text; put it between quotes: "& Fern by the Tap"',
    ),
    Case(
        "a dash without its space",
        {SERIES: ("order: [fern]", "order:\n  -fern")},
        "series/garden-year/series.yaml:14:3: 'order' should be a list, and is '-fern'; put a space after each dash: - fern",
    ),
    Case(
        "a unit in full",
        {MOSS: ("length: 8 m", "length: 8 yards")},
        "threads/moss.yaml:6:11: 'yards' is not a unit for 'length'; did you mean 'yd'?",
    ),
    Case(
        "inches by their sign",
        {FINISH: ("border: 6 mm", 'border: 1/4"')},
        "finishes/shelf/finish.yaml:5:12: '\"' is not a unit for 'border'; did you mean 'in'?",
    ),
    Case(
        "an apostrophe in a text between single quotes",
        {PATTERN: ("title: Fern by the Tap", "title: 'the robin's fork'")},
        """series/garden-year/fern/pattern.yaml:1:18: the ' here ends the text that the same sign began; write "the robin's fork\"""",
    ),
    Case(
        "two apostrophes, of which one begins the text",
        {PATTERN: ("title: Fern by the Tap", "title: 'Tis the Fern's Tap")},
        """series/garden-year/fern/pattern.yaml:1:21: the ' here ends the text that the same sign began; write "'Tis the Fern's Tap\"""",
    ),
    Case(
        "an apostrophe that begins a text, and another far below",
        {PATTERN: ("title: Fern by the Tap", "title: 'Tis the Season")},
        "series/garden-year/fern/pattern.yaml:1:8: the quote ' that opens here is not closed; write \"'Tis the Season\"",
    ),
    Case(
        "an apostrophe at the end of a word",
        {PATTERN: ("title: Fern by the Tap", "title: 'The robins' fork'")},
        "series/garden-year/fern/pattern.yaml:1:19: the ' here ends the text that the same sign began; write \"The robins' fork\"",
    ),
    Case(
        "an apostrophe beside double quotes",
        {PATTERN: ("title: Fern by the Tap", "title: '\"Robin's\" fork'")},
        "series/garden-year/fern/pattern.yaml:1:15: the ' here ends the text that the same sign began; write '\"Robin''s\" fork'",
    ),
    Case(
        "an apostrophe, and the quote at the end left out",
        {PATTERN: ("title: Fern by the Tap", "title: 'The robin's fork")},
        "series/garden-year/fern/pattern.yaml:1:18: the ' here ends the text that the same sign began; write \"The robin's fork\"",
    ),
    Case(
        "double quotes within double quotes",
        {PATTERN: ("title: Fern by the Tap", 'title: "The "red" robin"')},
        'series/garden-year/fern/pattern.yaml:1:13: the " here ends the text that the same sign began; write \'The "red" robin\'',
    ),
    Case(
        "a word cut short between braces, and an apostrophe later",
        {MOSS: ("name: brick,", "name: 'Tis the robin's,")},
        "threads/moss.yaml:9:38: the ' here ends the text that the same sign began; write \"'Tis the robin's\"",
    ),
    Case(
        "an apostrophe between braces, and the quote at the end left out",
        {PATTERN: ("note: First issue.", "note: 'The robin's first issue")},
        "series/garden-year/fern/pattern.yaml:27:40: the ' here ends the text that the same sign began; write \"The robin's first issue\"",
    ),
    Case(
        "an apostrophe between braces and a comma, and the quote at the end left out",
        {PATTERN: ("note: First issue.", "note: 'The robin's first, and last, issue")},
        "series/garden-year/fern/pattern.yaml:27:40: the ' here ends the text that the same sign began; put double quotes round all of it, or write the apostrophe twice",
    ),
    Case(
        "an apostrophe in a text of two lines",
        {PATTERN: ("about: A fern uncurls.", "about: 'A robin's fork,\n  and a fern'")},
        "series/garden-year/fern/pattern.yaml:3:16: the ' here ends the text that the same sign began; put double quotes round all of it, or write the apostrophe twice",
    ),
    Case(
        "an apostrophe in the second line of a text",
        {PATTERN: ("about: A fern uncurls.", "about: 'A fern,\n  and a robin's fork'")},
        "series/garden-year/fern/pattern.yaml:4:14: the ' here ends the text that the same sign began; put double quotes round all of it, or write the apostrophe twice",
    ),
    Case(
        "an apostrophe before a number sign",
        {PATTERN: ("about: A fern uncurls.", "about: 'Tis the robin's #2")},
        "series/garden-year/fern/pattern.yaml:3:22: the ' here ends the text that the same sign began; put double quotes round all of it, or write the apostrophe twice",
    ),
    Case(
        "a word cut short, and an apostrophe in the line below",
        {
            PATTERN: (
                "title: Fern by the Tap\ndesigner: alder\nabout: A fern uncurls.",
                "title: 'Tis spring\ndesigner: alder\nabout: The robin's fork",
            )
        },
        "series/garden-year/fern/pattern.yaml:1:8: the quote ' that opens here is not closed; write \"'Tis spring\"",
    ),
    Case(
        "a word cut short, and an apostrophe at the end of a line below",
        {
            PATTERN: (
                "title: Fern by the Tap\ndesigner: alder\nabout: A fern uncurls.",
                "title: 'Tis spring\ndesigner: alder\nabout: The fork is the robins'",
            )
        },
        "series/garden-year/fern/pattern.yaml:1:8: the quote ' that opens here is not closed; write \"'Tis spring\"",
    ),
    Case(
        "two quoted texts without a comma, of which the first ends with an s",
        {SERIES: ("order: [fern]", "order: ['ferns' 'ivy']")},
        "series/garden-year/series.yaml:13:17: something is missing between the brackets, just before ''ivy']'; put commas between the values, and quotes round a value that has a comma or colon itself",
    ),
    Case(
        "quotes in a text between quotes, within braces",
        {PATTERN: ("name: First warm day", 'name: "the "first" day"')},
        """series/garden-year/fern/pattern.yaml:4:23: the " here ends the text that the same sign began; write 'the "first" day'""",
    ),
    Case(
        "a thread card among the cloths",
        {CLOTH: TINY[MOSS]},
        "cloths/hopsack-28.yaml:1:1: this file has the names of a thread card and not those of a cloth; move it to the folder 'threads'",
    ),
    Case(
        "an entry whose braces are left out",
        {PATTERN: ("- {cloth: hopsack-28, colour: frost}", "- cloth: hopsack-28, colour: frost")},
        "series/garden-year/fern/pattern.yaml:6:5: names and their values on one line have no braces round them; write - {cloth: hopsack-28, colour: frost}",
    ),
    Case(
        "a key line between round brackets",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: (moss: E2, spool: "10")')},
        'series/garden-year/fern/pattern.yaml:9:6: names and their values on one line have other brackets than braces round them; write r: {moss: E2, spool: "10"}',
    ),
    Case(
        "a brace too many",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: E2, spool: "10"}}')},
        "series/garden-year/fern/pattern.yaml:9:29: the bracket '}' closes nothing here; take it away",
    ),
    Case(
        "a brace too early",
        {PATTERN: ('r: {moss: E2, spool: "10"}', 'r: {moss: "E2"}, spool: "10"}')},
        "series/garden-year/fern/pattern.yaml:9:17: the bracket '}' closes here, and after it comes ', spool: \"10\"}'; put the bracket at the end, or take it away where there is one already",
    ),
    Case(
        "two brackets too many, and a remark",
        {SERIES: ("order: [fern]", "order: [fern] ]] # one")},
        "series/garden-year/series.yaml:13:15: the brackets ']]' close nothing here; take them away",
    ),
    Case(
        "a comma at the end of an entry",
        {MOSS: ('name: brick, hex: "#a04030"}', 'name: brick, hex: "#a04030"},')},
        "threads/moss.yaml:9:46: a comma stands behind the value, and no bracket is open any more; take it away",
    ),
    Case(
        "a list closed with the bracket of a group",
        {SERIES: ("order: [fern]", "order: [fern}")},
        "series/garden-year/series.yaml:13:13: the bracket '[' is met by a '}'; write ']' in place of '}'",
    ),
    Case(
        "a list closed with two brackets of a group",
        {SERIES: ("order: [fern]", "order: [fern}}")},
        "series/garden-year/series.yaml:13:13: the bracket '[' is met by a '}'; write ']' in place of '}}'",
    ),
    Case(
        "a blend whose bracket is left out",
        {PATTERN: ('spool: ["10", "14"]}', 'spool: ["10", "14"}')},
        "series/garden-year/fern/pattern.yaml:11:43: the bracket '[' is met by a '}'; write ']}' in place of '}'",
    ),
    Case(
        "a blend closed with the bracket of its key line, which goes on",
        {PATTERN: ('b: {moss: [E2, "07"],', 'b: {moss: [E2, "07"},')},
        "series/garden-year/fern/pattern.yaml:11:22: the bracket '[' is met by a '}'; write ']' in place of '}'",
    ),
    Case(
        "a blend whose bracket is left out within a key line",
        {PATTERN: ('b: {moss: [E2, "07"],', 'b: {moss: [E2, "07",')},
        "series/garden-year/fern/pattern.yaml:11:13: the bracket '[' that opens here is not closed; close it with ']' after the last value",
    ),
    Case(
        "a bracket too many within a key line",
        {PATTERN: ('b: {moss: [E2, "07"],', 'b: {moss: [E2, "07"]],')},
        "series/garden-year/fern/pattern.yaml:11:23: the bracket '{' is met by a ']'; take it away",
    ),
    Case(
        "names with values that begin with the bracket of a list",
        {PATTERN: ("- {colour: k, path:", "- [colour: k, path:")},
        "series/garden-year/fern/pattern.yaml:13:38: the bracket '[' is met by a '}'; a list stands between [ and ], names with values between { and }",
    ),
    Case(
        "a group closed with the bracket of a list, on a line of a longer list",
        {SERIES: ("order: [fern]", "order: [\n  {a: fern]\n]")},
        "series/garden-year/series.yaml:14:11: the bracket '{' is met by a ']'; close '{' with '}' after its last value",
    ),
    Case(
        "a bracket not closed",
        {MOSS: ('name: brick, hex: "#a04030"}', 'name: brick, hex: "#a04030"')},
        "threads/moss.yaml:9:5: the bracket '{' that opens here is not closed; close it with '}' after the last value",
    ),
    Case(
        "a comma missing between braces",
        {MOSS: ("name: brick, hex", "name: brick hex")},
        "threads/moss.yaml:9:29: no comma stands between 'brick' and 'hex'; write brick, hex: \"#a04030\"",
    ),
    Case(
        "a comma missing before a name of the author's own",
        {PATTERN: (KEY_LINE, '  r: {moss: E2 spool: "10"}\n')},
        "series/garden-year/fern/pattern.yaml:9:15: no comma stands between 'E2' and 'spool'; write E2, spool: \"10\"",
    ),
    Case(
        "a colon and a comma within a text between braces",
        {PATTERN: ("note: First issue.", "note: Correction: the beak is 214, not 218.")},
        'series/garden-year/fern/pattern.yaml:27:40: a colon with a space after it stands within a value; write note: "Correction: the beak is 214, not 218."',
    ),
    Case(
        "a colon within a text between braces, which no name stands before",
        {PATTERN: ("note: First issue.", "note: First issue: of many")},
        'series/garden-year/fern/pattern.yaml:27:41: a colon with a space after it stands within a value; write note: "First issue: of many"',
    ),
    Case(
        "a colon missing before a brace in the key",
        {PATTERN: (KEY_LINE, '  r {moss: E2, spool: "10"}   # brick\n')},
        "series/garden-year/fern/pattern.yaml:9:3: no colon stands after 'r'; write r: {moss: E2, spool: \"10\"}",
    ),
    Case(
        "a colon missing before a brace with one name in it",
        {PATTERN: ("credits: {", "credits {")},
        "series/garden-year/fern/pattern.yaml:23:1: no colon stands after 'credits'; write credits: {model_stitcher: Hazel Penn}",
    ),
    Case(
        "a colon missing before a brace that is closed on the next line",
        {PATTERN: ("occasion: {name: First warm day, ", "occasion {name: First warm day,\n    ")},
        "series/garden-year/fern/pattern.yaml:4:1: no colon stands after 'occasion'; write occasion: {name: First warm day,",
    ),
    Case(
        "a colon missing before a bracket between braces",
        {PATTERN: ("b: {moss: [", "b: {moss [")},
        "series/garden-year/fern/pattern.yaml:11:7: no colon stands after 'moss'; write moss: [E2, \"07\"]",
    ),
    Case(
        "a dash missing before the first entry of a list",
        {MOSS: ("  - {number: E2", "  {number: E2")},
        'threads/moss.yaml:9:3: this entry of a list has no dash before it; write - {number: E2, name: brick, hex: "#a04030…',
    ),
    Case(
        "a dash missing before a later entry",
        {MOSS: ("  - {number: K4", "  {number: K4")},
        'threads/moss.yaml:10:3: this entry of a list has no dash before it; write - {number: K4, name: peat, hex: "#6b503a"}',
    ),
    Case(
        "a dash without a space behind it",
        {SERIES: ("order: [fern]", "order:\n  - fern\n  -ivy\n  - rose")},
        "series/garden-year/series.yaml:15:3: this entry of a list has no space after its dash; write - ivy",
    ),
    Case(
        "a dash missing before a word in a list",
        {SERIES: ("order: [fern]", "order:\n  - fern\n  ivy\n  - rose")},
        "series/garden-year/series.yaml:15:3: this entry of a list has no dash before it; write - ivy",
    ),
    Case(
        "a dash too many, among names with values",
        {PATTERN: ("  k: {moss", "  - {moss")},
        "series/garden-year/fern/pattern.yaml:10:3: '- {moss: K4, spool: \"12\"}' is set in by 2 spaces, which fits none of the lines around it; set it in exactly as far as the lines it belongs with",
    ),
    Case(
        "a colour without quotes, between brackets",
        {MOSS: ('"#a04030"', "#a04030")},
        "threads/moss.yaml:9:36: everything after '#' counts as a remark, so this colour is not seen; put it between quotes: \"#a04030\"",
    ),
    Case(
        "a colour without quotes, in the last line",
        {MOSS: ('"#4f7942"', "#4f7942")},
        "threads/moss.yaml:11:37: everything after '#' counts as a remark, so this colour is not seen; put it between quotes: \"#4f7942\"",
    ),
    Case(
        "a colour without quotes, on its own line",
        {FINISH: ('"#b0c8b3"', "#b0c8b3")},
        "finishes/shelf/finish.yaml:19:9: 'hex' has no value (what follows a bare '#' counts as a remark); put it between quotes: hex: \"#b0c8b3\"",
    ),
    Case(
        "a colon inside a title",
        {PATTERN: ("title: Fern by the Tap", "title: Fern: by the Tap")},
        'series/garden-year/fern/pattern.yaml:1:12: a colon with a space after it stands within a value; write title: "Fern: by the Tap"',
    ),
    Case(
        "a colon inside a note between braces",
        {PATTERN: ("name: First warm day", "name: Spring: first warm day")},
        'series/garden-year/fern/pattern.yaml:4:24: a colon with a space after it stands within a value; write name: "Spring: first warm day"',
    ),
    Case(
        "a colon in a value that has a hyphen which nobody sees",
        {PATTERN: ("title: Fern by the Tap", "title: Fern: by the Ta\u00adp")},
        "series/garden-year/fern/pattern.yaml:1:12: a colon with a space after it stands within a value; put the whole value between quotes; where a new field begins there, start a new line",
    ),
    Case(
        "the lines of a name that are not set in",
        {
            PATTERN: (
                "occasion: {name: First warm day, on: second Sunday of May}",
                "occasion:\nname: First warm day\non: second Sunday of May",
            )
        },
        "series/garden-year/fern/pattern.yaml:5:1: 'name' is not part of a pattern, and seems to belong to 'occasion' above; begin it with 2 spaces",
        "series/garden-year/fern/pattern.yaml:6:1: 'on' is not part of a pattern, and seems to belong to 'occasion' above; begin it with 2 spaces",
    ),
    Case(
        "an entry whose dash has no space behind it",
        {SERIES: ("  - id: alder", "  -id: alder")},
        "series/garden-year/series.yaml:9:3: this entry of a list has no space after its dash; write - id: alder",
    ),
    Case(
        "a second entry between braces without its dash",
        {
            PATTERN: (
                "  - {cloth: hopsack-28, colour: frost}",
                "  - {cloth: hopsack-28, colour: frost}\n    {cloth: hopsack-28, colour: oatmeal}",
            )
        },
        "series/garden-year/fern/pattern.yaml:7:5: this entry of a list has no dash before it; write - {cloth: hopsack-28, colour: oatmeal}",
    ),
    Case(
        "two fields on one line",
        {MOSS: ("material: cotton\n", "material: cotton ")},
        "threads/moss.yaml:2:25: a colon with a space after it stands within a value; start a new line before 'strands'",
    ),
    Case(
        "a quote that only the next text's quote closes",
        {PATTERN: ("about: A fern uncurls.", 'about: "A fern uncurls.')},
        'series/garden-year/fern/pattern.yaml:3:8: the quote " that opens here is not closed; write the same sign again at the end of the text',
    ),
    Case(
        "the same between the braces of a card",
        {MOSS: ("name: Moss Stranded", 'name: "Moss Stranded')},
        'threads/moss.yaml:1:7: the quote " that opens here is not closed; write the same sign again at the end of the text',
    ),
    Case(
        "a quote that only the quote of a colour below it closes",
        {MOSS: ("material: cotton", 'material: "cotton')},
        'threads/moss.yaml:2:11: the quote " that opens here is not closed; write the same sign again at the end of the text',
    ),
    Case(
        "a quote that the next colour closes, which nothing else would tell",
        {FINISH: ('name: sage\n    hex: "#b0c8b3"', 'name: "sage\n    hex: "#b0c8b3"')},
        'finishes/shelf/finish.yaml:18:11: the quote " that opens here is not closed; write the same sign again at the end of the text',
    ),
    Case(
        "the same on one line between braces",
        {MOSS: ("name: brick", 'name: "brick')},
        'threads/moss.yaml:9:24: the quote " that opens here is not closed; write "brick"',
    ),
    Case(
        "a line that is no name of the file and has no colon",
        {MOSS: ("length: 8 m", "length: 8 m\nas sold everywhere")},
        "threads/moss.yaml:7:1: 'as sold everywhere' has no colon; write a name, a colon, a space and the value",
    ),
    Case(
        "a text that has left its place, with remarks below it",
        {
            SERIES: (
                "licence: For your own stitching.",
                "licence: |\nFor your own stitching.\n\n# News, if there is any.\n#pace: 100",
            )
        },
        "series/garden-year/series.yaml:17:1: this line seems to go on with 'licence' of line 16; set it in by 2 spaces",
    ),
    Case(
        "a text in lines without its bar, with a colon in it",
        {
            SERIES: (
                "licence: For your own stitching.",
                "licence:\n  You may: stitch it.\n  You may give it away.\n\n# News.",
            )
        },
        "series/garden-year/series.yaml:16:1: the text below 'licence' has a colon in one of its lines, which makes a name of the words before it; write licence: |, and leave the lines set in",
    ),
    Case(
        "remarks set in below a text",
        {
            SERIES: (
                "licence: For your own stitching.",
                "licence: |\n  For your own stitching.\n  # News, if there is any.\n  #notices:",
            )
        },
        "series/garden-year/series.yaml:18:3: advice: '# News, if there is any.' (and 1 more line) is set in below 'licence', so it is part of that text and is printed; if it is a remark, let it begin at the margin, below the text",
    ),
    Case(
        "remarks in words set in below a text",
        {
            SERIES: (
                "licence: For your own stitching.",
                "licence: |\n  For your own stitching.\n  # What follows is news,\n  # if there is any.",
            )
        },
        "series/garden-year/series.yaml:18:3: advice: '# What follows is news,' (and 1 more line) is set in below 'licence', so it is part of that text and is printed; if it is a remark, let it begin at the margin, below the text",
    ),
    Case(
        "a name that is still a remark above its value",
        {
            PATTERN: (
                "revisions:",
                "#sold_at:\n  - {name: Stall, url: https://example.org/}\nrevisions:",
            )
        },
        "series/garden-year/fern/pattern.yaml:26:1: '#sold_at:' is still a remark, and its value on the line below is not one; take this '#' away too, or put one before that line",
    ),
    Case(
        "two names that are still remarks above their values",
        {
            SERIES: (
                "notices:",
                '#pace:\n  crosses: 90\n#look:\n#  light:\n    ink: "#222222"\nnotices:',
            )
        },
        "series/garden-year/series.yaml:17:1: '#pace:' is still a remark, and its value on the line below is not one; take this '#' away too, or put one before that line",
        "series/garden-year/series.yaml:20:1: '# light:' is still a remark, and its value on the line below is not one; take this '#' away too, or put one before that line",
    ),
    Case(
        "a value that is still a remark below its name",
        {PATTERN: ("revisions:", "long_stitch:\n#  - {colour: k, path: 1}\nrevisions:")},
        "series/garden-year/fern/pattern.yaml:26:13: 'long_stitch' has no value, and the line below it is still a remark; take the '#' of all lines of the value away",
    ),
    Case(
        "a key line that is not set in",
        {PATTERN: ("  k: {moss", "k: {moss")},
        "series/garden-year/fern/pattern.yaml:10:1: 'k: {moss: K4, spool: \"12\"}' stands at the margin, which fits none of the lines around it; begin it with 2 spaces",
    ),
    Case(
        "the first key line not set in",
        {PATTERN: ("  r: {moss", "r: {moss")},
        "series/garden-year/fern/pattern.yaml:9:1: 'r: {moss: E2, spool: \"10\"}' stands at the margin, which fits none of the lines around it; begin it with 2 spaces",
    ),
    Case(
        "the last key lines not set in",
        {
            PATTERN: (
                '  k: {moss: K4, spool: "12"}\n  b: {moss',
                'k: {moss: K4, spool: "12"}\nb: {moss',
            )
        },
        "series/garden-year/fern/pattern.yaml:10:1: 'k' is not part of a pattern, and seems to belong to 'key' above; begin it with 2 spaces",
        "series/garden-year/fern/pattern.yaml:11:1: 'b' is not part of a pattern, and seems to belong to 'key' above; begin it with 2 spaces",
    ),
    Case(
        "the last name of a part not set in",
        {FINISH: ("    faces: both", "faces: both")},
        "finishes/shelf/finish.yaml:16:1: 'faces' is not part of a finishing piece, and seems to belong to 'parts' above; begin it with 4 spaces",
    ),
    Case(
        "an entry of a list at the margin, below one that is set in",
        {SERIES: ("order: [fern]", "order:\n  - fern\n- houseleek")},
        "series/garden-year/series.yaml:15:1: '- houseleek' stands at the margin, which fits none of the lines around it; begin it with 2 spaces",
    ),
    Case(
        "an entry with names at the margin, below one that is set in",
        {FINISH: ("paints:", "- name: front\n  pieces: 1\npaints:")},
        "finishes/shelf/finish.yaml:17:1: '- name: front' stands at the margin, which fits none of the lines around it; begin it with 2 spaces",
    ),
    Case(
        "the first line of a file set in",
        {MOSS: ("name: Moss Stranded", " name: Moss Stranded")},
        "threads/moss.yaml:1:2: 'name: Moss Stranded' is set in by 1 space, which fits none of the lines around it; let it begin at the margin",
    ),
    Case(
        "the first entry of a list set in further than the others",
        {SERIES: ("order: [fern]", "order:\n    - fern\n  - houseleek\n  - quince")},
        "series/garden-year/series.yaml:14:5: '- fern' is set in by 4 spaces, which fits none of the lines around it; begin it with 2 spaces",
    ),
    Case(
        "the first name of a part not set in",
        {FINISH: ("    outline: 0,0 120,0", "outline: 0,0 120,0")},
        "finishes/shelf/finish.yaml:10:1: 'outline: 0,0 120,0 120,120 0,120' stands at the margin, which fits none of the lines around it; begin it with 4 spaces",
    ),
    Case(
        "a name of the second part not set in",
        {
            FINISH: (
                "paints:",
                "  - name: front\n    outline: 0,0 9,0 9,9\n    at: 0,0\n    thickness: 6 mm\n    pieces: 1\n    paint: sage\ncoats: 2\n    faces: both\npaints:",
            )
        },
        "finishes/shelf/finish.yaml:23:1: 'coats: 2' stands at the margin, which fits none of the lines around it; begin it with 4 spaces",
    ),
    Case(
        "a name of the file set in, below one that is in its place",
        {FINISH: ("fold_over: 20 mm", "  fold_over: 20 mm")},
        "finishes/shelf/finish.yaml:6:3: 'fold_over: 20 mm' is set in by 2 spaces, which fits none of the lines around it; let it begin at the margin",
    ),
    Case(
        "a line that has left its text",
        {
            PATTERN: (
                "about: A fern uncurls.",
                "about: |\n  A fern uncurls.\nPlease do not pass it on.\nNor sell it.",
            )
        },
        "series/garden-year/fern/pattern.yaml:5:1: this line (and 1 more line) seems to go on with 'about' of line 3; set them in by 2 spaces",
    ),
    Case(
        "a name misspelt and without its colon",
        {PATTERN: ("about: A fern uncurls.", "abuot A fern uncurls.   # soon")},
        "series/garden-year/fern/pattern.yaml:3:1: 'abuot A fern uncurls.' has no colon; write about: A fern uncurls.",
    ),
    Case(
        "a colon missing",
        {MOSS: ("length: 8 m", "length 8 m")},
        "threads/moss.yaml:6:1: 'length 8 m' has no colon; write length: 8 m",
    ),
    Case(
        "a colon missing in the first line",
        {MOSS: ("name: Moss Stranded", "name Moss Stranded")},
        "threads/moss.yaml:1:1: 'name Moss Stranded' has no colon; write name: Moss Stranded",
    ),
    Case(
        "a colon missing between braces",
        {PATTERN: (KEY_LINE, '  r: {moss "E2", spool: "10"}\n')},
        "series/garden-year/fern/pattern.yaml:9:7: no colon with a space stands after 'moss'; write moss: \"E2\"",
    ),
    Case(
        "a thing without the word name before it",
        {FINISH: ("trim:", "hardware:\n  - {wood screw, pieces: 2, size: 3 × 25 mm}\ntrim:")},
        "finishes/shelf/finish.yaml:25:6: 'wood screw' stands there without its name; write name: wood screw",
    ),
    Case(
        "a space missing after a colon between braces",
        {PATTERN: (KEY_LINE, '  r: {moss: E2, spool:"10"}\n')},
        "series/garden-year/fern/pattern.yaml:9:17: no colon with a space stands after 'spool'; put a space after the colon: spool: \"10\"",
    ),
    Case(
        "a colon missing after a name that a colour must have",
        {MOSS: ("name: brick", "name brick")},
        "threads/moss.yaml:9:18: no colon with a space stands after 'name'; write name: brick",
    ),
    Case(
        "a text with a comma between braces",
        {PATTERN: ("note: First issue.", "note: First, of many.")},
        "series/garden-year/fern/pattern.yaml:27:37: 'of many.' is not part of a revision, and has no value; put a value that has commas itself between quotes",
    ),
    Case(
        "a space missing after a colon",
        {MOSS: ("length: 8 m", "length:8 m")},
        "threads/moss.yaml:6:1: no space stands after the colon of 'length'; put one there: length: 8 m",
    ),
    Case(
        "a space missing after a colon in the first line",
        {MOSS: ("name: Moss Stranded", "name:Moss Stranded")},
        "threads/moss.yaml:1:1: no space stands after the colon of 'name'; put one there: name: Moss Stranded",
    ),
    Case(
        "a space missing before a brace, and a remark behind it",
        {PATTERN: (KEY_LINE, '  r:{moss: E2, spool: "10"}   # brick\n')},
        "series/garden-year/fern/pattern.yaml:9:3: no space stands after the colon of 'r'; put one there: r: {moss: E2, spool: \"10\"}",
    ),
    Case(
        "a space missing before a text with commas",
        {PATTERN: ('path: "1,1 4,1 4,2.5"', 'path:"1,1 3,2 4,2.5"')},
        "series/garden-year/fern/pattern.yaml:13:17: no colon with a space stands after 'path'; put a space after the colon: path: \"1,1 3,2 4,2.5\"",
    ),
    Case(
        "a line set in too far",
        {MOSS: ("length: 8 m", "  length: 8 m")},
        "threads/moss.yaml:6:3: 'length: 8 m' is set in by 2 spaces, which fits none of the lines around it; let it begin at the margin",
    ),
    Case(
        "a line not set in far enough",
        {FINISH: ("    at: 0,0", "   at: 0,0")},
        "finishes/shelf/finish.yaml:11:4: 'at: 0,0' is set in by 3 spaces, which fits none of the lines around it; begin it with 4 spaces",
    ),
    Case(
        "a list on the line of its name",
        {MOSS: ("colours:\n  - {number: E2,", "colours: - {number: E2,")},
        "threads/moss.yaml:8:10: a list cannot start on the line of its name; put each dash on a line of its own below",
    ),
    Case(
        "a quote closed too early",
        {PATTERN: ("title: Fern by the Tap", 'title: "Fern" by the Tap')},
        "series/garden-year/fern/pattern.yaml:1:15: the value has ended before 'by the Tap'; write '\"Fern\" by the Tap'",
    ),
    Case(
        "a backslash between double quotes",
        {PATTERN: ("title: Fern by the Tap", 'title: "Fern \\by\\Salt"')},
        "series/garden-year/fern/pattern.yaml:1:18: a backslash between double quotes has a special meaning; write it twice, or use single quotes",
    ),
    Case(
        "a backslash that names no character",
        {PATTERN: ("title: Fern by the Tap", 'title: "Fern \\UFFFFFFFF"')},
        "series/garden-year/fern/pattern.yaml:1:14: a backslash between double quotes has a special meaning; write it twice, or use single quotes",
    ),
    Case(
        "rows of a close-up on the line of the bar",
        {PATTERN: ("    rows: |\n      k..k", "    rows: | k..k")},
        "series/garden-year/fern/pattern.yaml:20:13: the sign '|' or '>' must end its line; start the text on the next line, set in by spaces",
    ),
    Case(
        "a comma with nothing before it",
        {MOSS: ("length: 8 m", "length: [,]")},
        "threads/moss.yaml:6:10: this cannot be read; take a needless comma away, and put odd signs between quotes",
    ),
    Case(
        "a story of two million letters",
        {f"{FERN}/story.md": "x" * 2_000_001},
        "series/garden-year/fern/story.md:1:1: 'story.md' is larger than 2 MB; split it, or take out what is not needed",
    ),
    Case(
        "a second story, a second photograph, and what editors leave beside them",
        {
            **{
                f"{FERN}/{name}": "Old.\n"
                for name in ("story.md~", "#story.md#", ".story.md.swp", "~$story.md")
            },
            f"{FERN}/story copy.md": "Another one.\n",
            f"{FERN}/photo (2).jpg": b"",
        },
        "series/garden-year/fern/photo (2).jpg:1:1: advice: nothing reads 'photo (2).jpg'; did you mean 'photo.jpg'? (a name that begins with '_' is left alone)",
        "series/garden-year/fern/story copy.md:1:1: advice: nothing reads 'story copy.md'; did you mean 'story.md'? (a name that begins with '_' is left alone)",
    ),
    Case(
        "a file that nothing reads",
        {f"{FERN}/storey.md": "x"},
        "series/garden-year/fern/storey.md:1:1: advice: nothing reads 'storey.md'; did you mean 'story.md'? (a name that begins with '_' is left alone)",
    ),
    Case(
        "a thread card with another ending",
        {MOSS: None, "threads/moss.yml": TINY[MOSS]},
        "threads/moss.yml:1:1: the name 'moss.yml' has another ending than is read here; call it 'moss.yaml'",
    ),
    Case(
        "a thread card behind whose name an editor put another ending",
        {MOSS: None, "threads/moss.yaml.txt": TINY[MOSS]},
        "threads/moss.yaml.txt:1:1: the name 'moss.yaml.txt' has another ending than is read here; call it 'moss.yaml'",
    ),
    Case(
        "a copy of a thread card with another ending, beside it",
        {"threads/moss.yaml.txt": TINY[MOSS]},
        "threads/moss.yaml.txt:1:1: advice: nothing reads 'moss.yaml.txt'; each card is a file that ends in .yaml (a name that begins with '_' is left alone)",
    ),
    Case(
        "a thread card with a space in its name",
        {MOSS: None, "threads/Moss Card.yaml": TINY[MOSS]},
        "series/garden-year/series.yaml:6:24: there is no thread card 'moss'; did you mean 'moss-card'? (or write threads/moss.yaml)",
        "threads/Moss Card.yaml:1:1: the name 'Moss Card' cannot be part of a web address; use small letters, digits and hyphens, for example 'moss-card'",
    ),
    Case(
        "a folder misspelt",
        {"thread/moss.yaml": TINY[MOSS]},
        "thread:1:1: advice: nothing reads 'thread'; did you mean 'threads'? (a name that begins with '_' is left alone)",
    ),
    Case(
        "a series without a folder of its own",
        {"series/series.yaml": "x"},
        "series/series.yaml:1:1: advice: nothing reads 'series.yaml'; each series has a folder of its own in here (a name that begins with '_' is left alone)",
    ),
    Case(
        "a file of far too many values",
        {MOSS: "- a\n" * 50_001},
        "threads/moss.yaml:49999:3: the file holds more than 50000 values; take out what is not needed",
    ),
    Case(
        "a control character in a story",
        {f"{FERN}/story.md": "It grew\x07 behind the tap\x07.\n"},
        "series/garden-year/fern/story.md:1:8: here stands a control character (U+0007), which nobody can see (and 1 more in this file); delete it and type the word again",
    ),
    Case(
        "a mark twice in the key",
        {PATTERN: (KEY_LINE, KEY_LINE + KEY_LINE)},
        "series/garden-year/fern/pattern.yaml:10:3: 'r' stands here a second time (first on line 9); keep one of the two, or give one of them another mark",
    ),
    Case(
        "a mark typed a second time in the place of another, which the chart has",
        {PATTERN: ("  k: {moss: K4", "  r: {moss: K4")},
        "series/garden-year/fern/pattern.yaml:10:3: 'r' stands here a second time (first on line 9); keep one of the two, or give one of them another mark",
    ),
    Case(
        "a folder in the place of a file",
        {f"{FERN}/story.md": None, f"{FERN}/story.md/inner.txt": "x"},
        "series/garden-year/fern/story.md:1:1: 'story.md' cannot be opened; check that it is an ordinary file and that you are allowed to read it",
    ),
    Case(
        "an en dash before a group of names with values",
        {PATTERN: ("  - {cloth: hopsack-28", "  – {cloth: hopsack-28")},
        "series/garden-year/fern/pattern.yaml:6:3: this entry of a list has '–' before it in place of a hyphen; write - {cloth: hopsack-28, colour: frost}",
    ),
    Case(
        "round signs before all groups of names with values",
        {
            PATTERN: (
                "  - {cloth: hopsack-28, colour: frost}",
                "  • {cloth: hopsack-28, colour: frost}\n  • {cloth: hopsack-28, colour: oatmeal}",
            )
        },
        "series/garden-year/fern/pattern.yaml:6:3: this entry of a list has '•' before it in place of a hyphen (and 1 more entry); write - {cloth: hopsack-28, colour: frost}",
    ),
    Case(
        "a colon left out behind a mark that looks like the sign before an entry",
        {PATTERN: ("  r: {", "  • {")},
        "series/garden-year/fern/pattern.yaml:9:3: no colon stands after '•'; write •: {moss: E2, spool: \"10\"}",
    ),
    *(
        Case(
            f"the folder {old} moved to {new}",
            moved((f"{old}/", f"{new}/")),
            f"{new}:1:1: this is the folder of {what}, and nothing reads it here; move it into '{where}'",
        )
        for old, new, what, where in (
            ("series/garden-year", "garden-year", "a series", "series"),
            ("series/garden-year", "finishes/garden-year", "a series", "series"),
            ("finishes/shelf", "shelf", "a finishing piece", "finishes"),
            (FERN, "fern", "a pattern", "series/garden-year"),
            (FERN, "series/fern", "a pattern", "series/garden-year"),
        )
    ),
    Case(
        "a pattern dropped into another pattern's folder",
        {f"{FERN}/moss/pattern.yaml": TINY[PATTERN]},
        f"{FERN}/moss:1:1: this is the folder of a pattern, and nothing reads it here; move it into 'series/garden-year'",
    ),
    *(
        Case(
            f"the card {old} moved out of its folder",
            moved((old, old.rpartition("/")[2])),
            f"{old.rpartition('/')[2]}:1:1: this file has the names of {what}, and nothing reads it here; move it into the folder '{old.rpartition('/')[0]}'",
        )
        for old, what in ((MOSS, "a thread card"), (CLOTH, "a cloth"), (BEADS, "a bead card"))
    ),
    *(
        Case(
            f"the file {old} moved into {new}",
            moved((old, f"{new}/{old.rpartition('/')[2]}")),
            f"{old}:1:1: there is no file '{old.rpartition('/')[2]}' here; move it here from the folder '{new}'",
        )
        for old, new in ((SERIES, FERN), (FINISH, "finishes"), (CHART, "series/garden-year"))
    ),
    Case(
        "a list that stands twice",
        {SERIES: ("licence:", "order: [oak]\nlicence:")},
        "series/garden-year/series.yaml:16:1: 'order' stands here a second time (first on line 13); put its entries below those of the first, and take this line away; or keep one of the two",
    ),
    Case(
        "a story that was saved as plain text",
        {f"{FERN}/story.md": None, f"{FERN}/story.txt": "It grew."},
        f"{FERN}/story.md:1:1: there is no file 'story.md' here; rename 'story.txt' to 'story.md'",
    ),
    Case(
        "a licence that goes on in a line with a colon",
        {
            SERIES: (
                "licence: For your own stitching.\n",
                "licence: For your own stitching.\nGifts are fine: selling is not.\n",
            )
        },
        "series/garden-year/series.yaml:17:1: 'Gifts are fine' is no name, and seems to go on with the text of 'licence' above; write licence: | and below it the whole text, each line set in by 2 spaces",
    ),
)
