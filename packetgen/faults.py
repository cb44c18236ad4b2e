"""Every message that an author can be given, in one table:
code → what is wrong, what would be right.

The words are templates; whoever finds a fault fills the gaps with facts. A code is never reused for
something else, and each one is provoked by at least one case in the tests.
"""

from dataclasses import dataclass
from enum import Enum


class Level(Enum):
    ERROR = "error"  # nothing is written
    ADVICE = "advice"  # printed, and the build goes on


@dataclass(frozen=True)
class Fault:
    wrong: str
    right: str
    level: Level = Level.ERROR


FAULTS: dict[str, Fault] = {
    # reading files
    "folder-missing": Fault("there is no such folder", "{hint}"),
    "file-missing": Fault("there is no file {name} here", "{hint}"),
    "file-unreadable": Fault(
        "{name} cannot be opened",
        "check that it is an ordinary file and that you are allowed to read it",
    ),
    "outside-folder": Fault(
        "{name} lies outside its folder",
        "move the file in, and write its bare name, without '/' or '..'",
    ),
    "file-too-big": Fault("{name} is larger than {limit} MB", "{hint}"),
    "file-empty": Fault("the file is empty", "write something into it"),
    "file-name": Fault(
        "the name {name} cannot be part of a web address",
        "use small letters, digits and hyphens, {hint}",
    ),
    "file-ending": Fault(
        "the name {name} has another ending than is read here", "call it {better}"
    ),
    "file-not-read": Fault(
        "nothing reads {name}", "{hint} (a name that begins with '_' is left alone)", Level.ADVICE
    ),
    # characters
    "not-utf8": Fault("{what}", "save the file again and choose UTF-8 as its encoding"),
    "not-text": Fault(
        "this is not a text file", "write it with a plain text editor and save it as UTF-8"
    ),
    "unseen-character": Fault(
        "here stands {what}, which nobody can see{more}", "delete it and type the word again"
    ),
    "letter-lost": Fault(
        "the sign '\ufffd' stands where another program lost a letter{more}",
        "type the letter again",
    ),
    # the build of a YAML file
    "indent-not-spaces": Fault(
        "here stands {what} where the line is set in{more}", "use plain spaces only"
    ),
    "tab": Fault("here stands a tab", "use a space instead"),
    "name-repeated": Fault(
        "{name} stands here a second time (first on line {line})", "keep one of the two"
    ),
    "name-not-a-word": Fault(
        "only a single word or sign can stand before a colon", "take the brackets away"
    ),
    "needs-quotes": Fault(
        "what begins with the sign {sign} is not taken as plain text",
        "put it between quotes: {word}",
    ),
    "second-document": Fault("a line '---' starts a second set of values", "take that line away"),
    "too-deep": Fault(
        "this is set in more than {limit} steps deep", "count the brackets and the spaces before it"
    ),
    "too-many-values": Fault(
        "the file holds more than {limit} values", "take out what is not needed"
    ),
    "quote-open": Fault(
        "the quote {quote} that opens here is not closed",
        "write the same sign again at the end of the text",
    ),
    "bracket-open": Fault(
        "the bracket '{bracket}' that opens here is not closed",
        "close it with '{closing}' after the last value",
    ),
    "comma-missing": Fault(
        "something is missing between the brackets, just before {said}",
        "put commas between the values, and quotes round a value that has a comma or colon itself",
    ),
    "colour-unquoted": Fault(
        "everything after '#' counts as a remark, so this colour is not seen",
        "put it between quotes: {example}",
    ),
    "colon-in-value": Fault(
        "a second colon with a space on one line",
        "put the whole value between quotes, or start a new line",
    ),
    "colon-missing": Fault(
        "{said} has no colon and no value", "write a name, a colon, a space and the value"
    ),
    "indentation": Fault(
        "{said} is set in by {spaces} spaces, which fits none of the lines above",
        "set it in exactly as far as the lines it belongs with",
    ),
    "list-beside-name": Fault(
        "a list cannot start on the line of its name", "put each dash on a line of its own below"
    ),
    "after-value": Fault(
        "the value has ended before {said}", "put the whole value between one pair of quotes"
    ),
    "backslash": Fault(
        "a backslash between double quotes has a special meaning",
        "write it twice, or use single quotes",
    ),
    "bar-then-line": Fault(
        "the sign '|' or '>' must end its line", "start the text on the next line, set in by spaces"
    ),
    "line-unclear": Fault("this cannot be read", "{hint}"),
    # the shape of a file
    "name-unknown": Fault("{name} is not part of {what}", "{hint}"),
    "name-alone": Fault(
        "{name} is not part of {what}, and has no value",
        "put a value that has commas itself between quotes",
    ),
    "name-missing": Fault("{name} is missing in {what}", "add a line, for example {example}"),
    "colour-empty": Fault(
        "{name} has no value (what follows a bare '#' counts as a remark)",
        "put it between quotes: {example}",
    ),
    "value-empty": Fault("{name} has no value", "write one, for example {example}"),
    "wants-one-value": Fault(
        "{name} has {shape}, and needs one value", "write for example {example}"
    ),
    "wants-list": Fault(
        "{name} should be a list, and is {shape}",
        "put brackets round it, or a dash before each entry, for example {example}",
    ),
    "file-not-names": Fault(
        "this file should hold {what}, line by line", "begin each line with a name, as in {example}"
    ),
    "wants-names": Fault(
        "{name} should be made of names with values, and is {shape}", "write for example {example}"
    ),
    "wants-lines": Fault(
        "{name} should hold {what}, and is {shape}", "write for example {example}"
    ),
    "list-empty": Fault("{name} has no entries", "write at least one, for example {example}"),
    "list-long": Fault("{name} has {number}", "{limit} is the most that can be used"),
    # single values
    "curly-quotes": Fault("{said} stands between curly quotes", "use straight ones: {straight}"),
    "text-one-line": Fault("{name} runs over several lines", "write it on one line"),
    "text-long": Fault("{name} is {length} characters long", "shorten it to {limit}"),
    "short-name": Fault(
        "{name} is {said}, which cannot be part of a file name",
        "use small letters, digits and hyphens, for example '{better}'",
    ),
    "not-whole-number": Fault(
        "{name} is {said}, which is not a whole number", "write {words}, in plain digits"
    ),
    "not-a-number": Fault(
        "{name} is {said}, which is not a number", "write {words}, in plain digits"
    ),
    "decimal-comma": Fault("{said} has a comma in its number", "write a full stop: {better}"),
    "out-of-range": Fault(
        "{name} is {said}, beyond what can be right", "it goes from {low} to {high}"
    ),
    "unit-missing": Fault(
        "{name} is {said}, without a unit", "write the unit, for example {better}"
    ),
    "unit-unknown": Fault("{unit} is not a unit for {name}", "{hint}"),
    "not-a-measure": Fault(
        "{name} is {said}, which is not {what}",
        "write a number and its unit, for example {example}",
    ),
    "choice-unknown": Fault("{name} cannot be {said}", "{hint}"),
    "not-yes-no": Fault("{name} is {said}", "write true or false"),
    "not-a-colour": Fault(
        "{name} is {said}, which is not a colour of six digits or letters a to f", "{hint}"
    ),
    "not-an-address": Fault(
        "{said} is not a web address", "write it in full, for example https://example.org/counter"
    ),
    "address-scheme": Fault(
        "a link may not start with {scheme}", "use an address that starts with https://"
    ),
    "day-form": Fault("{said} is not a date", "write year-month-day, for example 2026-11-25"),
    "year-range": Fault("the year {year} in {said} cannot be right", "it goes from 2000 to 2100"),
    "no-such-day": Fault("there is no day {said}", "{hint}"),
    "moment-form": Fault(
        "{said} is not a date with time and time zone",
        "write it like 2027-01-15 09:00 Europe/London",
    ),
    "no-such-time": Fault("there is no time {said} on that day", "{hint}"),
    "zone-unknown": Fault("{said} is not a time zone", "{hint}"),
    "rule-form": Fault(
        "{said} is not a day that comes every year",
        "write it like '6 January', 'second Sunday of May' or '21 days before Easter'",
    ),
    "rule-not-every-year": Fault("{said} does not come every year", "{hint}"),
    "rule-too-far": Fault(
        "{said} is too far from Easter", "stay within {limit} days, or name the day itself"
    ),
    "word-unknown": Fault("{said} is not a {what}", "{hint}"),
    "braid-parted": Fault(
        "a braid with {strands} strands", "a braid is used whole: write 1, or take 'braid' away"
    ),
    # points and outlines
    "not-a-point": Fault(
        "{point} is not a point", "write column,row without a space between, for example {example}"
    ),
    "not-a-stitch": Fault(
        "{said} is not a stitch of the chart",
        "write its column,row in whole numbers, for example 12,30",
    ),
    "not-a-quarter": Fault(
        "{point} is not on a quarter of a stitch", "the nearest point that is: {better}"
    ),
    "outline-short": Fault("an outline with {number} corners", "give three or more"),
    "outline-crosses": Fault(
        "the outline crosses itself: side {first} runs over side {second}",
        "give the corners in order round the shape",
    ),
    "outline-flat": Fault(
        "the outline has no area: its corners lie on one line", "move a corner away from that line"
    ),
    # names that point elsewhere
    "reference-unknown": Fault("there is no {what} {name}", "{hint}"),
    "colour-unknown": Fault("{of} has no {what} {name}", "{hint}"),
    "mark-unknown": Fault("the mark {mark} is not in the key", "{hint}"),
    "name-twice": Fault(
        "the {what} {name} stands here a second time (first on line {line})", "keep one of the two"
    ),
    "colour-twice": Fault(
        "the {by} {said} stands here a second time (first on line {line})",
        "give each colour its own",
    ),
    "name-reserved": Fault(
        "a thread set cannot be called {name}, which has a meaning in key lines",
        "choose another name",
    ),
    # a series
    "series-missing": Fault(
        "there is no series in this folder",
        "make a folder for it, for example series/garden-year, with a series.yaml",
    ),
    "pattern-missing": Fault("there is no pattern folder {name}", "{hint}"),
    "pattern-not-in-order": Fault(
        "{name} is not in the series' order, so it is left out",
        "add it there, or begin the folder's name with '_'",
        Level.ADVICE,
    ),
    # a key
    "key-empty": Fault(
        "the key has no lines",
        "write one for each mark of the chart, for example r: {{larkmoss: E2}}",
    ),
    "mark-reserved": Fault("{mark} cannot be a mark: it {why}", "choose another sign"),
    "mark-long": Fault(
        "the mark {mark} is {length} characters long", "use a single one, such as its first"
    ),
    "set-missing": Fault(
        "the key line {mark} says nothing for the thread set {set}", "add its number there"
    ),
    "set-not-offered": Fault(
        "the key names the thread set {set}, which this pattern does not offer",
        "add it to thread_sets, or take it out of every key line",
    ),
    "key-name-unknown": Fault("{name} is no thread set and not part of a key line", "{hint}"),
    "strands-too-many": Fault("{strands} strands of {card}, which has {has}", "{hint}"),
    "blend-of-many": Fault("a blend of {number} colours", "give one number, or two for a blend"),
    "blend-of-one": Fault(
        "a blend of {number} with itself", "give that number once, without brackets"
    ),
    "braid-in-blend": Fault(
        "a blend with the braid {card}, which is used by itself",
        "give the braid a key line of its own",
    ),
    "braid-strands": Fault(
        "the braid {card} is used whole, one strand of it", "take {set} out of 'strands'"
    ),
    "key-lines-alike": Fault(
        "{mark} and {other} are stitched alike in {set}, both with {numbers}",
        "use one mark for both, or change one of them",
    ),
    "symbol-twice": Fault(
        "{mark} and {other} both ask for the chart shape {symbol}", "give each mark its own"
    ),
    "symbol-left-over": Fault(
        "the key has no mark {mark}", "take the line out; {hint}", Level.ADVICE
    ),
    "key-line-unused": Fault(
        "the mark {mark} is never used", "take its key line out, or stitch something with it"
    ),
    # a chart
    "chart-kind": Fault("{name} cannot be a chart", "a chart's file ends in .txt, .csv or .png"),
    "charts-several": Fault(
        "there are several charts here: {found}",
        "keep one, or name it in pattern.yaml, as in {example}",
    ),
    "chart-empty": Fault(
        "the chart is empty", "draw one character for each stitch, '.' for bare cloth"
    ),
    "chart-large": Fault(
        "the chart is {width} × {height} stitches", "{limit} × {limit} is the most that can be used"
    ),
    "nothing-stitched": Fault("nothing is stitched on this chart", "put marks of the key on it"),
    "row-ragged": Fault("row {row} is {length} long, most are {usual}", "{hint}"),
    "chart-mark-unknown": Fault("the mark {mark} at {spot} is not in the key", "{hint}"),
    "chart-space": Fault("a space at {spot}", "write '.' for bare cloth"),
    "corner-unsaid": Fault(
        "{mark} at {spot} is {stitch} stitch, and a chart cannot say in which corner",
        "write '.' there, and the mark in a close-up",
    ),
    "table-row": Fault(
        "row {row} of the table has a quote that is not closed", "take the quotes away"
    ),
    "cell-long": Fault(
        "the cell {cell} at column {column}, row {row} is more than one mark",
        "write one mark in a cell",
    ),
    "picture-unreadable": Fault(
        "this is not a {kind} picture that can be read", "save it again as {kind}"
    ),
    "picture-large": Fault(
        "the picture has too many pixels", "make it smaller: {limit} million in all is the most"
    ),
    "pixel-half-clear": Fault(
        "the pixel at {spot} is partly see-through",
        "make it either quite clear (bare cloth) or quite solid",
    ),
    "pixel-unknown": Fault(
        "the pixel at {spot} is {colour}, the colour of no key line",
        "the nearest is the mark {mark}: {nearest}",
    ),
    "pixel-of-several": Fault(
        "the pixel colour {colour} could be the marks {marks}",
        "draw this chart as chart.txt, which tells them apart",
    ),
    # stitches on the lines of the chart
    "path-short": Fault("a line with the single point {said}", "give two points or more"),
    "point-twice": Fault("the point {point} stands twice running", "take one of the two away"),
    "long-stitch-bends": Fault(
        "a long stitch with {number} points",
        "give its two ends; use backstitch for a line that bends",
    ),
    "daisy-points": Fault(
        "a lazy daisy with {number}", "give two: the base of its loop and its tip"
    ),
    "daisy-flat": Fault("a lazy daisy of no length, from {point} to itself", "move its tip away"),
    "point-outside": Fault(
        "the point {point} is outside the chart of {size} stitches",
        "columns go from {columns} and rows from {rows}",
    ),
    # close-ups
    "close-up-rows": Fault(
        "this close-up has {number} of characters",
        "write two for each row of stitches, after 'rows: |'",
    ),
    "close-up-ragged": Fault(
        "row {row} of this close-up has {length} characters",
        "write two for each stitch, in each row the same: {usual}",
    ),
    "close-up-outside": Fault(
        "this close-up of {window} stitches at {at} does not fit on the chart",
        "columns go from {columns} and rows from {rows}",
    ),
    "close-up-full": Fault(
        "{block} is a full cross, at column {column}, row {row}",
        "put {mark} in the chart itself, and '.' here",
    ),
    "close-up-block": Fault(
        "{block} is no stitch, at column {column}, row {row}",
        "three alike make a three-quarter, two alike on a diagonal a half, single ones quarters",
    ),
    "close-up-halves": Fault(
        "{block} does not say how the two share the stitch at column {column}, row {row}",
        "for two three-quarters write {rising} or {falling}, as the line between them runs",
    ),
    "close-up-line": Fault(
        "{block} draws no line between two marks, at column {column}, row {row}",
        "two three-quarters are written 'A/' over '/B', or '\\A' over 'B\\'",
    ),
    "close-up-over-stitch": Fault(
        "the chart already has {mark} at column {column}, row {row}",
        "write '.' in the chart there, or '..' over '..' here",
    ),
    "close-up-twice": Fault(
        "column {column}, row {row} is filled by another close-up (line {line})",
        "keep one of the two",
    ),
    # texts, photographs and dates
    "photos-two": Fault("there are two photographs", "keep photo.jpg or photo.png"),
    "photo-tells-place": Fault(
        "the photograph tells where it was taken",
        "save it without its position if the place is private",
        Level.ADVICE,
    ),
    "revisions-order": Fault(
        "the revision of {date} stands after that of {before}", "put the oldest first"
    ),
    # the chart's symbols (found by chart)
    "key-too-long": Fault(
        "the key has {number} lines", "{limit} is the most: there is one chart shape for each"
    ),
    "symbols-alike": Fault(
        "seen with {eyes}, {mark} ({colour}) and {other} ({other_colour}) look alike, and so do their "
        "symbols {symbol} and {other_symbol}",
        "pin another, for example symbol: {better}",
        Level.ADVICE,
    ),
    # the fit of a design (found by reckon)
    "does-not-fit": Fault(
        "on {cloth} the mounted design is {width} × {height} and {piece} does not hold it",
        "it is {excess} (room for {most} stitches); offer a finer cloth instead or make the design "
        "smaller",
    ),
}
