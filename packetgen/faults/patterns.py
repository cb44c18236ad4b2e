"""Faults of a series and its patterns, found while they are read."""

from packetgen.faults.fault import Fault, Level

PATTERNS: dict[str, Fault] = {
    # a series
    "series-missing": Fault(
        "there is no series in this folder",
        "make a folder for it, for example series/garden-year, with a series.yaml",
    ),
    "pattern-missing": Fault("there is no pattern folder {name}", "{hint}"),
    "pattern-not-in-order": Fault(
        "the folder {name} is not in the series' order, so it is left out",
        "{hint}, or let the folder's name begin with '_'",
        Level.ADVICE,
    ),
    "closes-early": Fault(
        "it closes on {closes}, and opens on {opens}", "let 'closes' be a later day than 'opens'"
    ),
    "opens-early": Fault(
        "it opens on {opens}, before the release on {released}, and 'who' asks for {said}",
        "nobody can stitch a design that is not out: mend the day here, or the release",
        Level.ADVICE,
    ),
    "closes-told-other": Fault(
        "here stands {said}, and it closes on {closes}",
        "mend the day here, or 'closes'",
        Level.ADVICE,
    ),
    "needleful-short": Fault(
        "two tails of {tail} leave {left} of a needleful of {needleful}",
        "let {least} or more be left: shorten 'tail' or lengthen 'needleful'",
    ),
    "ease-order": Fault(
        "an ease of {careful} careful, {usual} usual and {generous} generous",
        "let careful be the least and generous the most",
    ),
    "pace-order": Fault(
        "a pace of {slow} slow, {usual} usual and {quick} quick stitches an hour",
        "let slow be the smallest number and quick the largest",
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
    "set-unsaid": Fault(
        "no line of the key says anything for the thread set {set}",
        "add its numbers, {example}{matched}",
    ),
    "set-renamed": Fault(
        "all {number} key lines name a thread set {old}, which there is not, and none says anything for {new}",
        "write {new} in place of {old} in each of them, or give the set its old name back",
    ),
    "thread-told-none": Fault(
        "here stands thread {number}, and {cards}",
        "{hint}",
        Level.ADVICE,
    ),
    "list-behind": Fault(
        "this list of the colours says {told} of the mark {mark}, and the key has {key}{more}",
        "if the key is right, {right}; else mend the key",
        Level.ADVICE,
    ),
    "thread-idle": Fault(
        "{number} is {name} of {card}, and no line of the key has that thread{also}",
        "{mend}",
        Level.ADVICE,
    ),
    "colours-of-another": Fault(
        "none of the {number} numbers that the key has for {of} is a colour of {card}",
        "write that card's own; or bring your drawing in for a new key: packetgen bring FILE --pattern {pattern} --replace",
    ),
    "set-not-offered": Fault(
        "the key names the thread set {set}, which this pattern does not offer",
        "add it to thread_sets, or take it out of every key line",
    ),
    "matched-model": Fault(
        "the model's own set {set} cannot be matched",
        "{hint}",
    ),
    "matched-round": Fault(
        "{set} cannot be matched from {source}, which is to be matched itself",
        "name a set whose colours stand in the key, such as the model's",
    ),
    "key-name-unknown": Fault("{name} is no thread set and not part of a key line", "{hint}"),
    "backstitch-heavy": Fault(
        "lines in {strands} strands lie over crosses in {crosses}, and hide them",
        "look once more: 1 is usual, and as many as the crosses have are much",
        Level.ADVICE,
    ),
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
        "{mend}",
    ),
    "symbol-twice": Fault(
        "{mark} and {other} both ask for the chart shape {symbol}", "give each mark its own"
    ),
    "symbol-left-over": Fault(
        "the key has no mark {mark}", "take the line out; {hint}", Level.ADVICE
    ),
    "key-remark-other": Fault(
        "the remark says {remark}, and {number} is called {name}",
        "{meant}put {name} into the remark",
        Level.ADVICE,
    ),
    "key-line-unused": Fault(
        "the mark {mark} is never used",
        "take its key line out, or stitch something with it",
        hinders=False,
    ),
    # a chart
    "chart-kind": Fault("{name} cannot be a chart", "a chart's file ends in .txt, .csv or .png"),
    "chart-dots": Fault("{said} at {spot} is {what}", "bare cloth is full stops: write {hint}"),
    "chart-words": Fault(
        "{said} is words and no row of stitches",
        "{hint}",
    ),
    "charts-several": Fault(
        "several charts: {found}",
        "keep one, or write {example} in pattern.yaml{bring}",
    ),
    "chart-empty": Fault(
        "the chart is empty", "draw one character for each stitch, '.' for bare cloth"
    ),
    "chart-large": Fault(
        "the chart is {width} × {height} stitches", "{limit} × {limit} is the most that can be used"
    ),
    "nothing-stitched": Fault("nothing is stitched on this chart", "put marks of the key on it"),
    "rows-short": Fault(
        "{what}", "write '.' {where} for bare cloth, so many that each row is {width} long"
    ),
    "row-ragged": Fault("row {row} is {length} long, most are {usual}", "{hint}"),
    "rows-broken": Fault("{what}", "{hint}"),
    "key-mark-other": Fault(
        "the mark {mark} is never used, and the chart has {other}{times}, which is not in the key",
        "write {right} here, or put {mark} in the chart for it",
    ),
    "cloth-colour-turned": Fault(
        "cloth and colour changed places",
        "write {right}",
    ),
    "chart-of-another": Fault(
        "this chart has marks that its key lacks, and all of them are in the key of {other}",
        "{mend}",
    ),
    "chart-mark-unknown": Fault("the mark {mark} at {spot} is not in the key", "{hint}"),
    "chart-parted": Fault(
        "a {sign} stands between any two marks of this chart",
        "take those signs out: one character is one stitch{else_call}",
    ),
    "chart-edged": Fault(
        "{sign} stands {where} every row of this chart and is no mark of the key", "take it away"
    ),
    "chart-case": Fault(
        "the chart has {marks} where the key has {others}: capitals and small letters are different marks",
        "write them in one way, in the chart or in the key",
    ),
    "chart-numbered": Fault(
        "numbers stand {where} the rows of this chart, here {begins}",
        "take them away, with what parts them from the row",
    ),
    "chart-space": Fault("{what} at {spot}", "{hint}"),
    "corner-unsaid": Fault(
        "{mark} at {spot} is {stitch} stitch, and a chart cannot say in which corner",
        "write '.' there, and the mark in a close-up",
    ),
    "table-row": Fault(
        "row {row} of the table has a quote that is not closed", "take the quotes away"
    ),
    "picture-to-bring": Fault(
        "{what}, and in a chart a pixel is a stitch", "bring it in, and then take it out: {bring}"
    ),
    "bring-table": Fault("a spreadsheet's table, with {what}", "bring it in: {bring}"),
    "cell-long": Fault("the cell {what} at {spot} is more than one mark", "{hint}"),
    "picture-other-kind": Fault(
        "this is a {is_a} picture, and its name ends like one of {kind}",
        "call it {right}, or save it again as {kind}",
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
        "the point {point}{more} is outside the chart of {size} stitches", "{hint}"
    ),
    "points-on-bare": Fault(
        "these {number} points are on no stitch",
        "if their commas are those of decimals, write {meant}, {on}",
        Level.ADVICE,
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
        "the chart already has {mark} at column {column}, row {row}{more}",
        "write '.' in the chart there, or '..' over '..' here; or mend 'at', if it lies elsewhere",
    ),
    "close-up-twice": Fault(
        "column {column}, row {row} is filled by another close-up (line {line})",
        "keep one of the two",
    ),
    # what is sold and what is given away
    "given-and-sold": Fault(
        "this pattern is given away, and has a shop as well (line {line})",
        "take out 'given_away' if it is sold, or 'sold_at' if it costs nothing",
    ),
    # what was copied with a folder
    "chart-copied": Fault(
        "all whole stitches are the very same as those of {other}, in the same threads",
        "put this pattern's own chart and key there, or bring it in with packetgen bring",
        Level.ADVICE,
    ),
    "counter-of-another": Fault(
        "this is the very address of {other}", "write that of this pattern", Level.ADVICE
    ),
    "stitch-beyond": Fault(
        "here stands {said}, and the chart has {most} {what}",
        "mend the number, or say what is meant",
        Level.ADVICE,
    ),
    "rows-told-other": Fault(
        "here stands {said} of {colour}, and {none}",
        "it lies in {what} {own}: mend the numbers, or the colour",
        Level.ADVICE,
    ),
    "strands-told-other": Fault(
        "here stand {said}, and this pattern is worked with {own}",
        "mend the number here, or 'strands' in the key or in series.yaml",
        Level.ADVICE,
    ),
    "strands-of-kind-other": Fault(
        "here stands {said} for {what}, worked with {own} {where}",
        "mend the number here, or '{field}' in series.yaml",
        Level.ADVICE,
    ),
    "sets-one-card": Fault(
        "the thread sets {other} and {name} have the one card {card}, and none of the numbers in the keys for {name} is on it",
        "write the id of that set's own card",
    ),
    "release-told-other": Fault(
        "here stands {said}, and the release is on {released}",
        "mend the day here, or 'release'",
        Level.ADVICE,
    ),
    "occasion-told-other": Fault(
        "here stands {said}, and {name} is on {own} in pattern.yaml",
        "mend one of the two",
        Level.ADVICE,
    ),
    "size-told-other": Fault(
        "here stands {said}, and the chart has {across} columns and {down} rows",
        "mend the number, or leave it out: the page of sizes tells it",
        Level.ADVICE,
    ),
    "colours-told-other": Fault(
        "here stands {said}, and the key has {has}",
        "mend the number, or leave it out",
        Level.ADVICE,
    ),
    "count-told-none": Fault(
        "here stands {said}, and the cloths of this pattern are of {own} to the inch",
        "mend the number, or add that cloth to 'cloths' in pattern.yaml",
        Level.ADVICE,
    ),
    "over-told-other": Fault(
        "here stands {said}, and the cloths of this pattern are worked over {own}",
        "mend the number, or 'over' of a cloth in pattern.yaml",
        Level.ADVICE,
    ),
    "name-told-near": Fault(
        "here stands {said}, and in the credits or among the designers {near}",
        "look once more which of the two is right",
        Level.ADVICE,
    ),
    "kind-told-number": Fault(
        "here stands {said}, and the pattern has {has}",
        "mend the number, or leave it out",
        Level.ADVICE,
    ),
    "kind-told-none": Fault(
        "here stands {said}, and this pattern has no {name}",
        "take it out, or add {name} to pattern.yaml",
        Level.ADVICE,
    ),
    "stitches-told-other": Fault(
        "here stands {said}, and the chart has {has} of that colour{where}",
        "mend the number or the chart, or leave it out: the key's page counts them",
        Level.ADVICE,
    ),
    "colour-told-near": Fault(
        "here stands {told}, and {number} of {card} is called {name}",
        "write {name}",
        Level.ADVICE,
    ),
    "name-near-file": Fault(
        "the name {name} and that of its {what}, {id}, are spelt nearly alike",
        "mend the one that is wrong",
        Level.ADVICE,
    ),
    "text-twice": Fault(
        "this line stands in the text already, on line {line}",
        "take one of the two out",
        Level.ADVICE,
    ),
    "knot-alone": Fault(
        "{knots} bare cloth all round {them}, and the other {others} lie on stitches",
        "mend 'at', or the chart there; or lay this aside in pattern.yaml",
        Level.ADVICE,
    ),
    "line-alone": Fault(
        "this line of {mark} goes round bare cloth, and touches no stitch",
        "mend 'path', or the chart there, or take the line out; or lay this aside in pattern.yaml",
        Level.ADVICE,
    ),
    "line-long": Fault(
        "this line runs from {start} straight to {end}, over {over} stitches, and {others}",
        "{slip}mend the point that is wrong, or lay this aside in pattern.yaml",
        Level.ADVICE,
    ),
    "stitch-twice": Fault(
        "this lies where one of the same colour lies already, of line {line}",
        "mend where one of the two lies, or take it out",
        Level.ADVICE,
    ),
    "entry-twice": Fault(
        "this stands in the list already, on line {line}",
        "take one of the two out, or mend what should differ",
        Level.ADVICE,
    ),
    "counter-name-near": Fault(
        "the shop is called {name} here and {other} in another pattern, with the same address",
        "mend the one that is wrong",
        Level.ADVICE,
    ),
    "designer-name-near": Fault(
        "the name {name} and the id {id} are spelt nearly alike",
        "mend the one that is wrong; the name stands on every page",
        Level.ADVICE,
    ),
    "notice-day-other": Fault(
        "the notice is of {day}, and the release of {released}",
        "mend the day here, or the release{line}; or say in the notice what it is for",
        Level.ADVICE,
    ),
    "piece-told-other": Fault(
        "here stands {said}, and {piece} {has} in finish.yaml",
        "mend the words here, or the piece there",
        Level.ADVICE,
    ),
    "kind-thread-other": Fault(
        "here stands {said}, and the {kind} of this chart {are} worked in {own}",
        "mend the thread here, or 'colour' in pattern.yaml",
        Level.ADVICE,
    ),
    "title-told-former": Fault(
        "here stands {said}, as the folder is called, and the title is {title}",
        "write that, if the title was changed; or mend the title",
        Level.ADVICE,
    ),
    "title-told-near": Fault(
        "here stands {said}, and no pattern of the series is called so",
        "write {near}, if that is meant",
        Level.ADVICE,
    ),
    "patterns-told-other": Fault(
        "here stands {said}, and the series has {has}",
        "mend the number",
        Level.ADVICE,
    ),
    "cloth-told-other": Fault(
        "here stands {said}, and {cloth} is offered in {own}",
        "mend the word, or 'cloths' in pattern.yaml",
        Level.ADVICE,
    ),
    "number-told-other": Fault(
        "here stands {told}, and {name} is {number} on {card}",
        "{mend}",
        Level.ADVICE,
    ),
    "line-copied": Fault(
        "this line stands word for word in the notes of {other} too ({where})",
        "write what is so of this pattern, or lay this aside",
        Level.ADVICE,
    ),
    "texts-copied": Fault(
        "{what} {are} of {other}, word for word ({where})",
        "write for each of the two what is so of it",
        Level.ADVICE,
    ),
    # texts, photographs and dates
    "photos-two": Fault("there are two photographs", "keep photo.jpg or photo.png"),
    "photographer-idle": Fault(
        "the credits name a photographer, and there is no photo.jpg, so a drawn picture is shown and nobody reads the name",
        "put a photo.jpg beside pattern.yaml, or take the name out",
        Level.ADVICE,
    ),
    "photo-tells-place": Fault(
        "the photograph tells where it was taken",
        "save it without its position if the place is private",
        Level.ADVICE,
    ),
    "revision-first": Fault(
        "{note} stands after another revision",
        "say what has changed, or put the first issue first",
        Level.ADVICE,
    ),
    "revision-twice": Fault(
        "the revision above stands here once more, word for word",
        "take one of the two out, or write what has changed",
        Level.ADVICE,
    ),
    "revisions-order": Fault(
        "the revision of {date} stands after that of {before}{first}",
        "{mend}",
    ),
}
