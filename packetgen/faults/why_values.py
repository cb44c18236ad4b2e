"""Causes and cures of the faults of single values, and of names that point elsewhere."""

from packetgen.faults.why import Why

WHY_VALUES: dict[str, Why] = {
    # single values
    "number-for-name": Why(
        "Here the number of a colour has no figure, and its name no letter. In the kit list a stranger would look for a "
        "number that no shop has.",
        "Exchange the two. Where the maker gives his colours no numbers, use the name as both.",
    ),
    "count-other": Why(
        "Cloth mostly has its count in its name, and all sizes come of the count: in a copied file it is easily "
        "forgotten.",
        "Look at the label, and correct the count or the name.",
    ),
    "count-unfit": Why(
        "Cloth mostly has its count in its name, and this one has another there. By the count that is written, a design "
        "would come out larger than the finishing piece holds, so the count is probably the slip.",
        "Look at the label, and correct the count or the name. Where both are right, take the other number out of the "
        "name: you are told then how large the design is, and what would fit.",
    ),
    "tex-whole": Why(
        "The field tex says how fine one strand is, and a strand of a thread that can be parted has 20 to 60 tex (from memory). The "
        "number of the whole thread makes every cloth look crowded.",
        "Divide the number of the whole thread by its strands.",
    ),
    "weave-other": Why(
        "Cloth mostly has its weave in its name. Over how many threads a stitch goes, and what the packet says of the cloth, come of "
        "the weave.",
        "Write the weave that the label says.",
    ),
    "colour-name-twice": Why(
        "Two numbers of a card have one name: mostly a line was copied and its name forgotten. A stitcher who reads the name alone "
        "takes the wrong one.",
        "Correct the name of one of the two.",
    ),
    "hex-twice": Why(
        "Two numbers of a card have one colour on screen and paper: mostly a line was copied and its colour forgotten.",
        "Correct the colour of one of the two.",
    ),
    "entry-astray": Why(
        "An entry of a list has nothing that its list asks for, and all that another list of the file asks for: mostly the name of that "
        "other list is still a remark, or the entry slipped above it.",
        "Write the name of its list above it, at the margin; or move the entry there.",
    ),
    "values-exchanged": Why(
        "Two values of one group can each be read as the other alone: they were written behind each other's names.",
        "Let the two change places.",
    ),
    "two-measures": Why(
        "Labels say two measures in one, such as width and thickness. Here each has its own name.",
        "Give each its name.",
    ),
    "none-said": Why(
        "A word stands where a list or a group of names is due, and says that there is none.",
        "What may be left out is left out with its whole line.",
    ),
    "over-rare": Why(
        "Aida is woven in blocks, and a stitch covers one of them (common practice, no source). A 2 is right for linen and "
        "evenweave, and mostly comes from the file of one.",
        "Write over: 1, or lay the advice aside in series.yaml.",
    ),
    "over-single": Why(
        "Linen and evenweave of 25 threads to the inch and more are mostly worked over two threads (common practice, no "
        "source), so that a single one is mostly a slip, and all patterns on the cloth come out half as large.",
        "Write over: 2, or lay the advice aside in series.yaml. Where it is meant for one pattern, write over: 1 in that "
        "pattern's cloth choice.",
    ),
    "count-rare": Why(
        "Aida is woven in blocks, from 6 to 22 to the inch (common practice, no source), and cloth of which a stitch covers "
        "two threads or more has 18 threads to the inch and more (from memory): with fewer, the number is mostly that "
        "of its stitches.",
        "Write the count that stands on its label, which counts the threads; aida of threads and not blocks is an "
        "evenweave.",
    ),
    "curly-quotes": Why(
        "Word processors turn quotes into curly ones, which mean nothing in YAML.",
        "Type straight quotes in a plain text editor.",
    ),
    "quote-stray": Why(
        "A quote stands at the end of a value and none at its beginning, so that it would be a sign of the value.",
        "Write the quote at both ends, or at none.",
    ),
    "text-one-line": Why(
        "The text becomes a heading or a cell of a table and has to stand on one line.",
        "Join its lines.",
    ),
    "text-long": Why(
        "The text has a place of a fixed size on page and packet.",
        "Shorten it; longer words belong in story.md or stitching.md.",
    ),
    "short-name": Why(
        "The name is used in file names and by other files.",
        "Use small letters, digits and hyphens.",
    ),
    "not-whole-number": Why(
        "Something else than plain digits stands where a number of things is due.",
        "Write digits alone: no words, no unit, no decimals.",
    ),
    "not-a-number": Why(
        "The value has letters or signs in it where a plain number is due.",
        "Write digits, with a full stop before decimals and no unit.",
    ),
    "decimal-comma": Why(
        "Decimals are written with a comma in many countries, and with a full stop here.",
        "Write the full stop.",
    ),
    "out-of-range": Why(
        "The number is outside what thread, cloth or wood can have: mostly a slip in the unit.",
        "Look at the number and its unit once more.",
    ),
    "unit-missing": Why(
        "A length, weight or time without its unit could be anything.",
        "Write the unit after the number.",
    ),
    "unit-unknown": Why(
        "The unit is misspelt or not one that is read for this value.",
        "Take the one that is offered; the reference lists them all.",
    ),
    "not-a-measure": Why(
        "The value is no number with a unit.",
        "Write a number, a space and a unit; fractions such as 2 1/2 are read too.",
    ),
    "range-given": Why(
        "Labels give a time or a size from one number to another; figures are reckoned with one.",
        "Choose one: of a time the longer, of a length what you work with.",
    ),
    "not-a-price": Why(
        "A price is an amount and the three letters of a currency, as ISO 4217 has them.",
        "Write it like 1.40 EUR.",
    ),
    "price-dear": Why(
        "A skein or a packet hardly ever costs 60 or more, a fat quarter of cloth 300 (our own choice). Mostly the "
        "decimal sign was forgotten, and the kit would cost a hundred times too much.",
        "Correct the price. Where it is right, lay the advice aside in series.yaml.",
    ),
    "length-short": Why(
        "One unit of thread as sold holds metres of it, and this one less than 1.5 m, written in cm, mm or in, or less than 5 m on "
        "a spool (our own choices): mostly the unit is another, or a figure was lost. By it kits and packets say how many to buy.",
        "Correct the length. Where it is right, lay the advice aside in series.yaml.",
    ),
    "length-long": Why(
        "A skein of thread for stitching holds 5 to 30 m (common practice, no source), and this one more than 60 (our own "
        "choice): mostly the decimal sign was forgotten, and a kit would hold too few skeins. Spools and hanks hold more.",
        "Correct the length, or write in sold_as how it is sold. Where it is right, lay the advice aside in series.yaml.",
    ),
    "unit-more": Why(
        "Where a packet says how many skeins, spools or balls to buy, it takes the word from sold_as and makes its plural.",
        "Write the word alone. Where a figure belongs to it, lay the advice aside in series.yaml.",
    ),
    "unit-plural": Why(
        "Packets say how many skeins to buy and what one skein holds: the word is that for one of them, and its plural is made "
        "of it.",
        "Write the word for one. Where it is right, lay the advice aside in series.yaml.",
    ),
    "bead-large": Why(
        "Beads for a stitch are 1.5 to 4 mm across (common practice, no source), and from 10 mm on (our own choice) mostly "
        "the decimal sign was forgotten: whether beads fit the cloth, and how large they are drawn, goes by it.",
        "Correct the size. Where it is right, lay the advice aside in series.yaml.",
    ),
    "currency-other": Why(
        "What a pattern or the whole series costs is added up for each currency alone, and a stitcher reads several "
        "totals that nobody can compare.",
        "Write what each card costs in the currency of most of your readers. Where two are meant, lay the advice aside in "
        "series.yaml.",
    ),
    "price-order": Why(
        "Amount and currency stand the other way round, or the letters are small, are missing, or have a sign or a "
        "word in their place.",
        "Write the amount first, with a full stop in it, and then the three letters in capitals.",
    ),
    "not-a-yarn-number": Why(
        "Labels give the size of a thread in one of five systems, and this is none of them.",
        "Copy it from the label: tex, dtex, denier, Nm or Ne with its number.",
    ),
    "weight-odd": Why(
        "Weight, strands and size of the thread together give a length that no shop sells.",
        "Check all three; a size of the whole thread may have been given as that of one strand.",
    ),
    "choice-unknown": Why(
        "Only a few words are possible here, and this is none of them.",
        "Take one of those that are offered.",
    ),
    "not-yes-no": Why(
        "The field is a yes or a no.",
        "Write true or false.",
    ),
    "not-a-colour": Why(
        "A colour is six digits or letters a to f after the sign #, two each for red, green and blue.",
        "Write all six between quotes.",
    ),
    "not-an-address": Why(
        "A link must be a full web address, since it is also printed and shared.",
        "Copy it from the browser, from https:// on.",
    ),
    "address-scheme": Why(
        "The link begins with something that opens no web page: a file, a program, a script.",
        "Use an address that begins with https://.",
    ),
    "address-login": Why(
        "The address has a name or a password before its host, and everybody would read it.",
        "Take that part out; if it was real, change the password.",
    ),
    "address-host": Why(
        "The host is one of your own machine or network, or its name is not complete.",
        "Write the full name of the host that readers reach.",
    ),
    "address-port": Why(
        "A port is a number from 1 to 65535 (RFC 3986 and RFC 9293).",
        "Take it out; ordinary addresses have none.",
    ),
    "not-a-mail-address": Why(
        "What follows mailto: is no address for letters.",
        "Write it like mailto:wren@example.org.",
    ),
    "prose-long": Why(
        "The text is longer than some ten pages; setting it would take very long.",
        "Tell it shorter, or split it.",
    ),
    "prose-brackets": Why(
        "Each [ and < may begin a link, and so many of them make the text slow to read.",
        "Look for something that was pasted by mistake.",
    ),
    "prose-too-deep": Why(
        "Lists or quotations stand within each other many times over.",
        "Let them stand side by side.",
    ),
    "prose-picture": Why(
        "A text has a picture in it. Page and packet print its words alone, and their pictures come from the chart and from photo.jpg.",
        "Take it out. The photograph of a stitched model is called photo.jpg or photo.png and lies beside pattern.yaml.",
    ),
    "prose-no-day": Why(
        "A text names a day that its month has not, as 31 June.",
        "Correct the day or the month.",
    ),
    "prose-day-misspelt": Why(
        "A word with a capital is the name of a month or of a day of the week but for a letter or two.",
        "Mend it; or lay the advice aside where it is the name of somebody or something else.",
    ),
    "prose-weekday": Why(
        "A text names a day with its weekday and year, and by the calendar it is another weekday; readers would not know which of "
        "the two to believe.",
        "Correct the weekday, the day, the month or the year.",
    ),
    "prose-link-open": Why(
        "A link is written [words](address), and the bracket behind its address is missing.",
        "Write ')' straight behind the address.",
    ),
    "prose-link-parted": Why(
        "A link is written [words](address), with nothing between the two brackets.",
        "Take the space or the end of the line between them away.",
    ),
    "prose-list-sign": Why(
        "Word processors begin the entries of a list with signs of their own. In Markdown each begins, on a line of "
        "its own, with a hyphen and a space, or with a number, a full stop and a space.",
        "Begin each entry so. A dash that shall stand as it is can have a backslash before it.",
    ),
    "prose-heading-lost": Why(
        "A few words by themselves, with no full stop at their end, are mostly a heading that has lost its signs.",
        "Write one or more # and a space before it; or end the words as a sentence.",
    ),
    "prose-list-above": Why(
        "In Markdown a list begins below an empty line; else its lines belong to the paragraph above them.",
        "Put an empty line between the two.",
    ),
    "prose-struck": Why(
        "Two waves before and behind words strike them out in some programs, and not here: a reader would see both.",
        "Take out what shall no longer be read.",
    ),
    "prose-bold-long": Why(
        "Two stars begin bold words and two end them; a third is printed as it stands.",
        "Take it away, or begin with three, which makes words bold and slanting.",
    ),
    "prose-bold-open": Why(
        "Two stars begin bold words and two more end them, within one paragraph. These never end.",
        "Write two stars behind the last bold word, or take the first two away.",
    ),
    "prose-tag": Why(
        "A text has a tag of HTML in it, or words between < and > that look like one. They are not printed.",
        "Take it out, and use the signs of Markdown: *slanting*, **bold**. For the sign itself write a backslash "
        "before it.",
    ),
    "day-form": Why(
        "Dates are written the same way everywhere (ISO 8601), so that no month is taken for a day.",
        "Write year-month-day with two digits for month and day.",
    ),
    "year-range": Why(
        "The year is far from ours: mostly a slip of a digit.",
        "Correct the year.",
    ),
    "no-such-day": Why(
        "The calendar has no such day.",
        "Look at month and day once more.",
    ),
    "moment-form": Why(
        "A release is a day, or a day with an hour and the place by whose clock that hour is meant.",
        "Write the day alone, or all three with a space between.",
    ),
    "no-such-time": Why(
        "The clock never shows that time, or leaps over it on that day as summer time begins.",
        "Take a time that the clock shows.",
    ),
    "zone-unknown": Why(
        "A time zone is named by a region and a city, as in the tz database.",
        "Take the name that is offered.",
    ),
    "rule-form": Why(
        "A day that comes every year can be said in a few ways, and this is none of them.",
        "Take one of the ways that the message shows.",
    ),
    "rule-not-every-year": Why(
        "Some years have no such day: no 29 February, no fifth Sunday.",
        "Choose a day that each year has.",
    ),
    "rule-too-far": Why(
        "So many days from that feast, nobody would find the day again.",
        "Name the day itself, or stay nearer.",
    ),
    "days-before-form": Why(
        "The time before a day is said in days or weeks.",
        "Write it like 7 days, 2 weeks or on the day.",
    ),
    "word-unknown": Why(
        "A month, weekday or count is misspelt.",
        "Take the word that is offered; the names are English.",
    ),
    "braid-parted": Why(
        "A braid is used whole, and the card gives it several strands.",
        "Write strands: 1, or take braid away.",
    ),
    # points and outlines
    "not-a-point": Why(
        "A point is two numbers with a comma and no space between them.",
        "Write column,row (in an outline of wood x,y in mm), with a space only between two points.",
    ),
    "not-a-stitch": Why(
        "A single stitch is named by two whole numbers.",
        "Count column and row from 1 at the top left.",
    ),
    "not-a-quarter": Why(
        "Needles go in at corners, middles of sides and quarters of a stitch.",
        "Take the nearest such point, which the message names.",
    ),
    "outline-short": Why(
        "Less than three corners make no shape. Two may be opposite corners of a rectangle, or one corner and its size: "
        "nobody can tell, so both are offered.",
        "Give the other corners, or take the rectangle that you meant.",
    ),
    "outline-crosses": Why(
        "The corners are not in order round the shape, so two of its sides cross.",
        "List them one after the other, as a pencil would go.",
    ),
    "outline-touches": Why(
        "The shape meets itself, so that nobody can say what is inside.",
        "Move a corner; cut a shape of two parts into two parts.",
    ),
    "path-start": Why(
        "An SVG path begins by saying where the pencil stands.",
        "Begin it with M and a point.",
    ),
    "path-sign": Why(
        "A letter or sign is no part of an SVG path (SVG 2, chapter 9).",
        "Take it away, or write a letter that draws.",
    ),
    "path-numbers": Why(
        "Each letter of a path takes a fixed number of numbers, or several times as many for several lines or curves "
        "one after the other, and some are missing or too many.",
        "Count the numbers after that letter: two make a point, and a comma or a minus parts them. Decimals have a full stop.",
    ),
    "strands-all": Why(
        "On a thread card 'strands' says into how many the thread parts, and in a thread set how many of them go into the "
        "needle. Both have the same number, and a skein then gives much less than it may. Most "
        "stranded cotton parts into 6 (common practice, no source).",
        "Look at the label, and write on the card what the thread parts into; or lay the advice aside in series.yaml.",
    ),
    "outline-attribute": Why(
        "The line was copied from a drawing file with the name before it. An outline is only what stands between the "
        "quotes there.",
        "Take the name, the equals sign and the quotes away; what is left is a path or corners.",
    ),
    "path-second": Why(
        "A second shape in one path would be a hole, and parts are sawn without holes.",
        "Give the second shape as a part of its own.",
    ),
    "outline-flat": Why(
        "All corners lie on one line, so the shape has no area.",
        "Move a corner away from that line.",
    ),
    # paints of a finishing piece
    "coat-covered": Why(
        "Paints go on in the order of 'painted'. A later one is put on every face that this one has, and on others too, so nothing of "
        "this one is seen: mostly the two have changed places. A primer goes on the same faces as what covers it, and is not "
        "told.",
        "List what is put on last below; or correct the faces; or lay the advice aside in series.yaml.",
    ),
    "coat-twice": Why(
        "The same paint stands twice for the same face of a part.",
        "Write one entry and add the coats together.",
    ),
    "same-way-twice": Why(
        "The other way of putting a paint on is the same as the first.",
        "Give the other way, or take or_with out.",
    ),
    # names that point elsewhere
    "reference-unknown": Why(
        "The name points to something that is not there: mostly a slip, or a card not yet written.",
        "Take the name that is offered, or write the file. Files are named without .yaml.",
    ),
    "colour-unknown": Why(
        "The card or cloth has no such colour. Numbers are compared as written, leading noughts too. A number that was changed "
        "on a card is told once, with all lines of keys, charts' lists and texts that still have the old one.",
        "Take the one that is offered, in all those lines, or add the colour to the card.",
    ),
    "mark-unknown": Why(
        "A line, knot or close-up is worked in a mark that no key line explains.",
        "Add a key line, or take a mark of the key.",
    ),
    "name-twice": Why(
        "Two entries have the same name, and who names it would not know which is meant.",
        "Keep one, or give the other another name.",
    ),
    "card-copied": Why(
        "Two cards have the very same colours: mostly a file was copied to begin another card, and its colours are still "
        "those of the first. A conversion to it would send buyers for numbers that it does not have.",
        "Write the card's own numbers, names and hexes; or lay the advice aside in series.yaml, where the same colours are "
        "sold in two ways, as on skeins and on spools.",
    ),
    "card-of-one-name": Why(
        "A buyer reads the name and not the file's, so two cards or two cloths of one name are one to her.",
        "Give one of the two another name, or keep one file.",
    ),
    "colour-twice": Why(
        "Two colours of one card have the same number or name.",
        "Give each its own.",
    ),
    "name-reserved": Why(
        "The name of a thread set stands beside other names in a key line, and this one has a meaning there.",
        "Call the set something else.",
    ),
}
