"""Causes and cures of the faults of a series and its patterns."""

from packetgen.faults.why import Why

WHY_PATTERNS: dict[str, Why] = {
    # a series
    "series-missing": Why(
        "The content has cards and no series, so there is nothing to make.",
        "Make a folder below series, with a series.yaml in it.",
    ),
    "pattern-missing": Why(
        "The order of the series names a pattern whose folder is not there.",
        "Correct the name. A pattern that is not begun yet is written under to_come, or gets its folder from packetgen "
        "begin, which enters it in the order.",
    ),
    "pattern-not-in-order": Why(
        "The folder of a pattern is there, and the series does not list it.",
        "Add it to order, or let its name begin with '_' while it is not ready.",
    ),
    "closes-early": Why(
        "A call or draw ends before it begins, or on the same day.",
        "Look at both dates; closes is the last day on which one may enter.",
    ),
    "opens-early": Why(
        "A draw or a call among those who have stitched a design opens before any of them is out: mostly the release was moved, and "
        "the notice was not.",
        "Move the notice too; or lay the advice aside in series.yaml where a design can be had before.",
    ),
    "closes-told-other": Why(
        "The text of a draw or a call tells by which day one may enter, and its closes is another day: the page then has both.",
        "Mend the one that is wrong; or lay the advice aside in series.yaml where the day is another's.",
    ),
    "needleful-short": Why(
        "Two tails use up so much of a needleful that hardly a stitch is left.",
        "Give a longer needleful or a shorter tail.",
    ),
    "ease-order": Why(
        "A careful hand takes less thread than a generous one, and the numbers say otherwise.",
        "Put them in order. What is left out is as usual.",
    ),
    "pace-order": Why(
        "In a slow hour there are fewer stitches than in a quick one, and the numbers say otherwise.",
        "Put them in order.",
    ),
    # a key
    "key-empty": Why(
        "Without key lines no mark of the chart means anything.",
        "Write a line for each mark.",
    ),
    "mark-reserved": Why(
        "Some signs mean something in a chart already, or cannot be seen or stand alone.",
        "Choose a letter, a digit or another plain sign.",
    ),
    "mark-long": Why(
        "A mark is one character, since each character of the chart is one stitch.",
        "Use a single one, in the key and in the chart.",
    ),
    "set-missing": Why(
        "The pattern offers a thread set, and this key line has no number for it.",
        "Add the number, or let the set be matched with matched.",
    ),
    "set-unsaid": Why(
        "The pattern offers a thread set that is new to its key: none of the lines has a number for it.",
        "Add a number to each line, behind that of the other set; or write a line matched beside key, and the nearest "
        "colours of that card are taken; or take the set out of thread_sets.",
    ),
    "set-renamed": Why(
        "A thread set has another name in series.yaml than in the key: mostly it was changed there, or the key was copied "
        "from another series.",
        "Exchange the word in all key lines in one go with your editor's search and replace, or change the name in "
        "series.yaml back, and in thread_sets.",
    ),
    "thread-told-none": Why(
        "A text tells of a thread by a number that no thread card of the pattern has, though it looks like theirs.",
        "Correct the number; where a thread of no card is proposed, lay the advice aside.",
    ),
    "sets-one-card": Why(
        "A thread set names the card of another, and the keys of the patterns have numbers of its own card.",
        "Write the id of its card: the name of its file in threads, without .yaml.",
    ),
    "release-told-other": Why(
        "The welcome, a notice, the story or the notes say on which day it comes out, is released, is published, appears, or goes on sale, and "
        "'release' in series.yaml, or in pattern.yaml where it stands there, is another day.",
        "Correct the day that is wrong.",
    ),
    "occasion-told-other": Why(
        "The story or the notes tell of the occasion by its name, or of a day like 'second Sunday of May' that is nearly that of "
        "the pattern, and it is another day.",
        "Correct the day that is wrong. Where another day is meant, lay the advice aside in pattern.yaml.",
    ),
    "size-told-other": Why(
        "The story or the notes tell how many stitches the design, chart or pattern is wide, high, or both, and the chart has "
        "another number, with its bare edges and without.",
        "Correct the number, or leave it out.",
    ),
    "colours-told-other": Why(
        "The story or the notes count more colours than the key has, or say that the design has, needs, takes or uses "
        "fewer.",
        "Correct the number, or leave it out. Where other colours are meant, lay the advice aside in pattern.yaml.",
    ),
    "count-told-none": Why(
        "The story or the notes speak of cloth of a count that no cloth of the pattern has, neither in threads nor in "
        "stitches. What might be, or was once, is let be.",
        "Correct the number, or add the cloth. Where another cloth is meant, lay the advice aside in pattern.yaml.",
    ),
    "over-told-other": Why(
        "The story or the notes work over one thread or over two, and no cloth of the pattern is worked so.",
        "Correct the number, or 'over' of the cloth.",
    ),
    "name-told-near": Why(
        "The story or the notes name somebody who is called almost like a designer of the series, or one of the pattern's "
        "credits: mostly a slip of a letter.",
        "Correct the name that is wrong. Where two people are meant, lay the advice aside in pattern.yaml.",
    ),
    "kind-told-number": Why(
        "The story or the notes count more French knots, lazy daisies, beads or lines of backstitch than lie on the chart, or fewer where they say "
        "that these are all.",
        "Correct the number, or add those that are missing in pattern.yaml.",
    ),
    "kind-told-none": Why(
        "The notes tell how to work backstitch, knots, daisies or beads, and the pattern has none: mostly they were copied from "
        "another pattern, or the lines are not written yet.",
        "Take it out of the notes, or add what they tell of; where it is only proposed, lay the advice aside.",
    ),
    "stitches-told-other": Why(
        "The notes count more stitches of a colour than the chart has, or a few less than all of them: mostly the chart was changed "
        "after they were written, or one of its signs slipped.",
        "Correct the number, or the chart; or take the number out, since the packet counts the stitches of each colour.",
    ),
    "list-behind": Why(
        "Above the chart stands what each mark is, as bringing the design in wrote it, and the key says otherwise now. Nothing "
        "but people read that list.",
        "Write in the list what the key has, or take the list out; where the list is right, correct the key.",
    ),
    "thread-idle": Why(
        "A text tells of a thread that the chart is not stitched in: its number was exchanged in the key, or it is another "
        "pattern's. A buyer would look for its skein on the list of what to buy.",
        "Name the thread that the key has; where another is only proposed, lay the advice aside.",
    ),
    "colours-of-another": Why(
        "All numbers of the key are strange to the thread card of the set: mostly the card was exchanged, and the key is "
        "still that of the example or of another card.",
        "Bring the drawing in, and its colours are matched to the card; or write the numbers of the card in each key line.",
    ),
    "set-not-offered": Why(
        "Key lines have numbers for a thread set that the pattern does not list.",
        "Add the set to thread_sets, or take its numbers out.",
    ),
    "matched-model": Why(
        "Other sets are matched from the model's own colours, which must be given.",
        "Write the model's numbers in the key.",
    ),
    "matched-round": Why(
        "A set is to be matched from one that is itself matched, or from itself.",
        "Name a set whose numbers stand in the key.",
    ),
    "key-name-unknown": Why(
        "A name in a key line is no thread set of the series and no field of the line.",
        "Take the name that is offered.",
    ),
    "backstitch-heavy": Why(
        "Backstitch is worked over the finished crosses, mostly in fewer strands than they have (common practice, no source); this "
        "thread set has more.",
        "Correct backstitch_strands, or strands; or lay the advice aside in series.yaml.",
    ),
    "strands-too-many": Why(
        "More strands are asked for than the thread can be parted into.",
        "Ask for fewer, or correct the strands of the thread card, where those are wrong.",
    ),
    "blend-of-many": Why(
        "A blend is two colours in one needle; more are not drawn and not reckoned.",
        "Give one number, or two.",
    ),
    "blend-of-one": Why(
        "Both numbers of a blend are the same.",
        "Give the number once.",
    ),
    "braid-in-blend": Why(
        "A braid is used whole and by itself, so it cannot share a needle.",
        "Give the braid a key line of its own.",
    ),
    "braid-strands": Why(
        "A braid has one strand, whatever the thread set says, and a number of strands is given for it.",
        "Take the set out of strands.",
    ),
    "key-lines-alike": Why(
        "Two marks mean the same stitch in the same colour of a thread set, so that its chart would have two symbols for one thing.",
        "Change the number that is wrong; or use one mark for both, where they are one in every thread set.",
    ),
    "key-remark-other": Why(
        "The remark behind a line of the key is the name of another colour of the card, or of an example that the "
        "card no longer has. Nobody but you reads it; but where number and name do not agree, either may be the slip, "
        "and the number is what is stitched and printed.",
        "Correct the one that is wrong, or take the remark out.",
    ),
    "symbol-twice": Why(
        "Two marks ask for the same chart shape, and nobody could tell them apart.",
        "Give each its own, or leave one to be chosen.",
    ),
    "symbol-left-over": Why(
        "A shape is kept in symbols.yaml for a mark that the key no longer has.",
        "Take the line out, or settle the pattern again.",
    ),
    "key-line-unused": Why(
        "The key explains a mark that stands nowhere, and a buyer would buy its thread for nothing.",
        "Take the line out, or stitch something with it.",
    ),
    # a chart
    "chart-kind": Why(
        "The pattern names a chart of a kind that is not read.",
        "Save the chart as .txt, .csv or .png.",
    ),
    "chart-dots": Why(
        "Bare cloth is full stops in a chart. Word processors make one sign of three of them, and there are other dots.",
        "Write full stops, best in a plain text editor; or explain that dot in the key, as any mark.",
    ),
    "chart-words": Why(
        "A line of a chart has words. Remarks stand above the chart, each behind the sign #.",
        "Put # before the line, or take it out.",
    ),
    "charts-several": Why(
        "The folder has several charts and the pattern does not say which is meant.",
        "Keep one, or name it with chart. A table or a picture that is to take the chart's place is brought in; of a table "
        "you are asked for each code that is no mark of the key and no thread, or told what to add to the command.",
    ),
    "chart-empty": Why(
        "The chart has no rows.",
        "Draw one character for each stitch.",
    ),
    "chart-large": Why(
        "The chart is larger than any that can be drawn and printed.",
        "Look whether it is a picture with many pixels to a stitch.",
    ),
    "nothing-stitched": Why(
        "Every stitch of the chart is bare cloth.",
        "Put marks of the key on it.",
    ),
    "rows-short": Why(
        "Bare cloth at one end of the rows was left out, so that nearly each row has another length. Only a chart "
        "of which all rows are as long can be read.",
        "Fill the rows up with '.' at that end, all to the length of the widest.",
    ),
    "row-ragged": Why(
        "A row is longer or shorter than the others, so all below it would stand wrong.",
        "Look where it stops agreeing with the rows above and below: stitches may be missing, or too many, "
        "anywhere in it. Put them in there, '.' for bare cloth, or take them out.",
    ),
    "rows-broken": Why(
        "A line break too many has made two rows of one, or one that is missing has made one of several; or the chart was "
        "put in twice.",
        "Mend the one place, and all rows are as long as the others.",
    ),
    "key-mark-other": Why(
        "One mark of the key is never stitched and one of the chart is not explained: mostly they were meant to be the same, "
        "and one of the two was mistyped.",
        "Give both the same sign. Capitals and small letters are two marks.",
    ),
    "cloth-colour-turned": Why(
        "What stands as the colour is a cloth, and what stands as the cloth is none.",
        "Write the name of the cloth's file at cloth, and one of its colours at colour.",
    ),
    "chart-of-another": Why(
        "The marks of this chart.txt do not agree with the key beside it, and do with that of another pattern of the series, "
        "whose own chart is missing, is the same, or has the marks of this key. A chart was put into the wrong folder.",
        "Move the charts; the first line of one that was brought in says whose it is.",
    ),
    "chart-mark-unknown": Why(
        "The chart has a mark that no key line explains. Capitals and small letters are two marks.",
        "Correct the mark, or add a key line.",
    ),
    "chart-parted": Why(
        "In a chart.txt one character is one stitch, and here the same sign parts all of them.",
        "Take those signs out. A table with commas or semicolons is read too, under the name chart.csv.",
    ),
    "chart-edged": Why(
        "Tables and other programs put quotes round a row, or a comma behind it. Here one character is one stitch.",
        "Take the signs away from all rows, with your editor's search and replace.",
    ),
    "chart-case": Why(
        "All marks of the chart that the key does not have are there as capitals, or as small letters.",
        "Change the letters of one of the two, all alike.",
    ),
    "chart-numbered": Why(
        "Rows are counted from the top by themselves; numbers written before them would be stitches.",
        "Take the numbers away.",
    ),
    "chart-space": Why(
        "A space cannot be told from nothing, so it is no stitch.",
        "Write '.' for bare cloth; where the row is too long with it, take it away.",
    ),
    "corner-unsaid": Why(
        "A three-quarter, quarter or petite stitch sits in one corner, and a chart has no word for it.",
        "Write '.' in the chart, and the stitch in a close-up.",
    ),
    "table-row": Why(
        "A cell of the table begins with a quote that is never closed.",
        "Take the quotes away; marks need none.",
    ),
    "picture-to-bring": Why(
        "A chart.png is read a pixel a stitch, in the very colours of the key. This one is drawn larger, or in colours "
        "of its own.",
        "Bring it in with the command, which finds the size of a stitch and the nearest threads and writes a chart.txt.",
    ),
    "bring-table": Why(
        "A chart's table has one mark of the key in each cell. This one has what a spreadsheet is drawn with: "
        "headings that count its columns or rows, or codes of its own.",
        "Have the chart and the key made of it, with the command that is offered. Which thread each code is you "
        "are asked on a terminal; elsewhere you are shown what to add with --code. Or mend it cell by cell: leave out the headings, and write marks of the key.",
    ),
    "cell-long": Why(
        "A cell of the table holds more than one character. A table with codes of its own is no chart yet.",
        "Write one mark in each cell, or make the table a chart and its key with packetgen bring.",
    ),
    "picture-other-kind": Why(
        "What a picture is stands in its first bytes, and its name says another kind: renaming a file does not make it another.",
        "Give it the ending of what it is; or open it in an image program and export it as the other.",
    ),
    "picture-unreadable": Why(
        "The picture is damaged, cut off, or of another kind than its name says.",
        "Open it in a picture program and save it again.",
    ),
    "picture-large": Why(
        "The picture has more pixels than can be worked on.",
        "Make it smaller.",
    ),
    "pixel-half-clear": Why(
        "A pixel is neither stitch nor bare cloth: soft edges come from drawing tools that smooth.",
        "Draw with a hard pencil; make each pixel clear or solid.",
    ),
    "pixel-unknown": Why(
        "A pixel has a colour of no key line: mostly from scaling, or from saving as JPEG.",
        "Give it the colour of the mark that is offered, or add a key line.",
    ),
    "pixel-of-several": Why(
        "Two key lines look alike on the screen, so a picture cannot say which is meant.",
        "Draw this chart as chart.txt.",
    ),
    # stitches on the lines of the chart
    "path-short": Why(
        "A line needs two ends.",
        "Give two points or more.",
    ),
    "point-twice": Why(
        "The same point stands twice running, which makes a stitch of no length.",
        "Take one of the two away.",
    ),
    "long-stitch-bends": Why(
        "A long stitch goes straight from end to end.",
        "Give its two ends, or use backstitch.",
    ),
    "daisy-points": Why(
        "A lazy daisy is a loop with a base and a tip.",
        "Give these two points.",
    ),
    "daisy-flat": Why(
        "Base and tip are the same point.",
        "Move the tip away.",
    ),
    "point-outside": Why(
        "The point lies beyond the edge of the chart.",
        "Columns and rows count from 1 at the top left; the far edge is one more than their number.",
    ),
    "points-on-bare": Why(
        "Each of these points has 5, 25 or 75 behind its comma and lies on bare cloth. Read as decimals, two by two, all of "
        "them lie on stitches: mostly a comma was written for the full stop of a decimal.",
        "Write a full stop before decimals, and a comma between column and row. If bare cloth is meant, lay the advice aside "
        "with laid_aside in pattern.yaml.",
    ),
    # close-ups
    "close-up-rows": Why(
        "Each stitch is two characters by two, so the rows of a close-up come in pairs.",
        "Add the row that is missing.",
    ),
    "close-up-ragged": Why(
        "A row of the close-up is longer or shorter than the others, or has half a stitch.",
        "Write two characters for each stitch; '.' is nothing.",
    ),
    "close-up-outside": Why(
        "The window lies partly beyond the edge of the chart.",
        "Correct at, which is the stitch at its top left.",
    ),
    "close-up-full": Why(
        "Four alike are a whole cross, which belongs in the chart.",
        "Put the mark in the chart and '.' here.",
    ),
    "close-up-block": Why(
        "These four characters stand for no stitch that can be worked.",
        "Use three alike, two alike on a diagonal, or single ones.",
    ),
    "close-up-halves": Why(
        "Two colours share the stitch and nobody can say which is the three-quarter.",
        "Draw the line between them as the message shows.",
    ),
    "close-up-line": Why(
        "A line between two marks is drawn the wrong way, or not between two marks.",
        "Write 'A/' over '/B', or '\\A' over 'B\\'.",
    ),
    "close-up-over-stitch": Why(
        "The chart has a whole stitch where the close-up puts a part of one.",
        "Write '.' in the chart there.",
    ),
    "close-up-twice": Why(
        "Two close-ups fill the same stitch.",
        "Keep it in one of them.",
    ),
    # what is sold and what is given away
    "given-and-sold": Why(
        "A pattern is given away and has a shop too, which would puzzle readers.",
        "Take one of the two out.",
    ),
    # texts, photographs and dates
    "chart-copied": Why(
        "Of two patterns of the series all whole stitches are the same, in the same colours: the folder of one was copied "
        "for the other and its chart was not changed yet, or one chart was saved over the other.",
        "Draw the new chart, or bring it in. A second set of colours for one design is a thread set of its own, not a "
        "pattern.",
    ),
    "counter-of-another": Why(
        "Two patterns are sold at one address, which has a word of the other's title in it: in a copied file it is easily "
        "forgotten, and buyers come to the wrong pattern.",
        "Write the address of this pattern, or lay the advice aside where both are on that page.",
    ),
    "stitch-beyond": Why(
        "The notes send a stitcher to a column or a row by its number, and the chart has not so many: the number is mistyped, or the "
        "chart was cropped since. Columns count from the left and rows from the top, both from 1.",
        "Correct the number; or lay the advice aside in pattern.yaml, where the columns or rows of something else are meant.",
    ),
    "rows-told-other": Why(
        "The notes send a stitcher to rows or columns to work a colour there, and on the chart most of these have no stitch in "
        "it: figures were exchanged, or the chart was cropped or shifted since. Rows count from the top, columns from the left.",
        "Mend the numbers; or lay the advice aside where the colour is only named beside them.",
    ),
    "strands-told-other": Why(
        "The notes count strands, and in no thread set of the pattern and in no line of its key are there so many, nor on its thread "
        "cards, nor left over of a thread. The key of the packet says another number.",
        "Let both say the same; or lay the advice aside in pattern.yaml.",
    ),
    "strands-of-kind-other": Why(
        "A sentence of the notes speaks of crosses alone, of backstitch or of knots, and counts other strands than these are "
        "worked with: others of these may have so many. The key of the packet says another number.",
        "Let both say the same; or lay the advice aside in pattern.yaml.",
    ),
    "colour-told-near": Why(
        "A text of yours names a colour of the key in letters that are nearly those of its name on the thread card. "
        "A stitcher who looks it up in the key finds no such name.",
        "Write the name as the card has it; where other words are meant, lay the advice aside.",
    ),
    "name-near-file": Why(
        "A folder or file is mostly called after what is in it, and the two names differ by a letter or two of one word, so that one "
        "of them is misspelt.",
        "Mend the name, which stands on the pages; or lay the advice aside where the two are meant so.",
    ),
    "text-twice": Why(
        "A line of a text stands there twice, word for word: it was pasted once too often.",
        "Take one of the two out.",
    ),
    "knot-alone": Why(
        "Of the French knots in one colour all but one lie on stitches, or touch one, or all but those of one entry: what lay below "
        "was taken out of the chart, or they lie elsewhere than was meant.",
        "Give it its place, take it out, or draw what it lay on; or lay the advice aside with laid_aside in pattern.yaml.",
    ),
    "line-alone": Why(
        "The line ends where it begins, as an outline does, and no stitch is within it or beside it, while other lines lie on "
        "stitches: what it went round was taken out of the chart, or it lies elsewhere than it was meant.",
        "Give it its place, take it out, or draw what it goes round; where bare cloth is meant, lay the advice aside with "
        "laid_aside in pattern.yaml.",
    ),
    "line-long": Why(
        "One line of backstitch slants over three times as many stitches as the next, or more: a figure of one of its points is "
        "wrong, and the line crosses what it should go round.",
        "Mend the point, or put those between that were left out; or lay the advice aside with laid_aside in pattern.yaml.",
    ),
    "stitch-twice": Why(
        "Two lines of stitches in one colour, or two knots, lie on one another: an entry was copied, and its numbers not changed. "
        "Thread and stitches are counted twice.",
        "Give the second its own place, or take it out.",
    ),
    "entry-twice": Why(
        "A shop, a glue or a piece of hardware is listed twice with the same words: a line was copied, and not changed.",
        "Take one of the two out, or correct the name, the address or the size of one.",
    ),
    "counter-name-near": Why(
        "Two patterns are sold at one address, and the names of that shop differ by a letter or two.",
        "Mend the one that is wrong; buyers see both.",
    ),
    "designer-name-near": Why(
        "The id of a designer is mostly made from her name, and the two differ by a letter or two, so that one of them is "
        "misspelt.",
        "Mend it; or lay the advice aside in series.yaml where the two are meant so.",
    ),
    "notice-day-other": Why(
        "The day of a notice is that of a release with day and month exchanged, or the notice says that something comes out today, "
        "and on its day nothing does. It is shown from its day on.",
        "Mend the day; or lay the advice aside in series.yaml where another thing comes out.",
    ),
    "piece-told-other": Why(
        "The welcome, a notice, a story, the notes or the piece's own 'about' tell how wide or high it is, and neither the whole of it nor one "
        "of its parts is so by their outlines; or they count hooks, pegs or knobs of which it has another number. Mostly the piece "
        "was changed since.",
        "Let both say the same; or lay the advice aside in series.yaml where something else is measured.",
    ),
    "kind-thread-other": Why(
        "A text works the backstitch, the knots or the daisies in one thread of the key, and on the chart they have another: one of "
        "the two was changed. A stitcher who goes by the text takes the wrong thread.",
        "Write the thread of the key, or give the lines or knots the colour that the text has.",
    ),
    "title-told-former": Why(
        "A text of yours still calls the series, or a pattern, what its folder is called, and its title is another: one of the two "
        "was changed. A buyer would look for a pattern that is not there.",
        "Write the title as series.yaml or pattern.yaml has it; or lay the advice aside where something else is called so.",
    ),
    "title-told-near": Why(
        "A text of yours names something with a capital that is a title of this series but for one word. A buyer would look for "
        "that pattern.",
        "Write the title as pattern.yaml has it; or lay the advice aside where something else is called so.",
    ),
    "patterns-told-other": Why(
        "The welcome or a notice tells how many patterns the series has, those to come with them, and it has another number: "
        "one was added or taken out since.",
        "Mend the number; or lay the advice aside where other patterns are counted.",
    ),
    "cloth-told-other": Why(
        "A text of this pattern speaks of a colour of one of its cloths that the pattern is not offered in, so that what it says "
        "of light and dark is not so on the cloth that is bought.",
        "Name the colour that pattern.yaml has; or lay the advice aside where the other is only compared.",
    ),
    "number-told-other": Why(
        "A text of yours names a colour with its number, and on no thread card of the pattern that colour has this number: "
        "it may have been renumbered since. Stitchers read it beside the key.",
        "Write the number that the card has, or leave it out: names are enough beside the key.",
    ),
    "line-copied": Why(
        "A line of the notes that names a thread by its number is the same as one in another pattern's notes, mostly since it was "
        "copied from there and not written anew.",
        "Write what is so of this pattern. Where both are stitched alike, lay the advice aside in the later one.",
    ),
    "texts-copied": Why(
        "The sentence about the pattern, the words for those who do not see its picture, or its story are the same as "
        "those of another pattern of the series. A reader who sees both takes one for a mistake.",
        "Write them anew. Where two patterns do have one story, lay the advice aside in the later one.",
    ),
    "photos-two": Why(
        "The folder has a photo.jpg and a photo.png.",
        "Keep one.",
    ),
    "photographer-idle": Why(
        "A photographer is thanked for a picture, and page and packet show none of hers but a drawn one.",
        "Put the photograph beside pattern.yaml as photo.jpg. Until there is one, leave the name out.",
    ),
    "photo-tells-place": Why(
        "Cameras write into a photograph where it was taken. The project's own pictures leave that out.",
        "Save it without its position before you share the file itself.",
    ),
    "revision-first": Why(
        "Every revision but the first tells readers what has changed, and this one calls itself the first issue.",
        "Write what has changed; or put the first issue first, and mend the days.",
    ),
    "revision-twice": Why(
        "Each revision raises the number that stands on every page, and two are the same: mostly lines were copied and not changed.",
        "Take one of them out, or write what has changed and its day.",
    ),
    "revisions-order": Why(
        "Revisions are listed from the first issue on, and one stands out of order.",
        "Put the oldest first, or correct its day.",
    ),
}
