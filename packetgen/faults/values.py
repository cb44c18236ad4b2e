"""Faults of single values, and of names that point elsewhere."""

from packetgen.faults.fault import Fault, Level

VALUES: dict[str, Fault] = {
    # single values
    "number-for-name": Fault(
        "the number is {number} and the name {name}, which look changed about",
        "write number: {name}, name: {number}",
    ),
    "count-other": Fault(
        "the count is {count}, and the cloth is called {name}",
        "{hint}",
        Level.ADVICE,
    ),
    "count-unfit": Fault(
        "{count}, and by that count {designs} not fit the finishing piece",
        "{hint}",
    ),
    "tex-whole": Fault(
        "{tex} tex is much for one of {strands} strands",
        "write how fine one strand is; if that is the whole thread, {better}",
        Level.ADVICE,
    ),
    "weave-other": Fault(
        "{name} is woven as {weave}, by this line",
        "write {right}, or mend the name; or leave them, if it is called so",
        Level.ADVICE,
    ),
    "colour-name-twice": Fault(
        "{said} has the very name of {other}, {name}",
        "look once more at both, or lay this aside in series.yaml where they are the same",
        Level.ADVICE,
    ),
    "hex-twice": Fault(
        "{said} has the very colour of {other}, {hex}",
        "look once more at both, or lay this aside in series.yaml where they are the same",
        Level.ADVICE,
    ),
    "entry-astray": Fault(
        "an entry with {names} belongs to {home}, and stands in the list {here}", "{mend}"
    ),
    "values-exchanged": Fault(
        "{name} and {other} have each what the other is for",
        "they have changed places: write {right}",
    ),
    "two-measures": Fault(
        "{name} has two measures, and the second has a name of its own", "write {right}"
    ),
    "none-said": Fault("{name} is {said}", "take this line away where there is none"),
    "over-rare": Fault(
        "with over: {over} each stitch covers {over} blocks of this aida, and so is much larger than usual",
        "aida is worked with over: 1; {hint}",
        Level.ADVICE,
    ),
    "over-single": Fault(
        "with over: 1 each stitch covers a single thread of {count} to the inch, and so is much smaller than usual",
        "{weave} so fine has over: 2; where one pattern wants it otherwise, write over in that pattern's cloth choice",
        Level.ADVICE,
    ),
    "count-rare": Fault(
        "{woven} is hardly woven",
        "look once more: {usual}",
        Level.ADVICE,
    ),
    "curly-quotes": Fault("{said} stands between curly quotes", "use straight ones: {straight}"),
    "quote-stray": Fault("{said} ends with a quote that nothing opens", "{hint}"),
    "text-one-line": Fault("{name} runs over several lines", "write it on one line"),
    "text-long": Fault("{name} is {length} characters long", "shorten it to {limit}"),
    "short-name": Fault(
        "{name} is {said}, which cannot be part of a file name",
        "use small letters, digits and hyphens, for example '{better}'",
    ),
    "not-whole-number": Fault("{name} is {said}, which is not a whole number", "{hint}"),
    "not-a-number": Fault("{name} is {said}, which is not a number", "{hint}"),
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
    "range-given": Fault(
        "{name} is {said}, and {what} is one number with its unit",
        "write one only, for example {better}",
    ),
    "not-a-price": Fault(
        "{name} is {said}, which is not a price",
        "write the amount and the three letters of its currency, for example {example}",
    ),
    "price-dear": Fault(
        "{price} is a high price for {of}",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "length-short": Fault(
        "{length} is little for one {unit}",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "length-long": Fault(
        "{length} is long for one skein",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "unit-more": Fault(
        "{said} is printed as the word for one unit, with its plural, and says more",
        "write {right}: length, weight and price have lines of their own",
        Level.ADVICE,
    ),
    "unit-plural": Fault(
        "{said} is printed as the word for one unit, and its plural would be {plural}",
        "write {right}",
        Level.ADVICE,
    ),
    "bead-large": Fault(
        "{size} across is large for a bead that is sewn on a stitch",
        "look once more: should it be {better}?",
        Level.ADVICE,
    ),
    "currency-other": Fault(
        "this price is in {currency}{more}, and those of most cards are in {usual}, so what is to buy has no single total",
        "write them all in one currency",
        Level.ADVICE,
    ),
    "price-order": Fault("{name} is {said}", "write a price as {better}"),
    "not-a-yarn-number": Fault(
        "{name} is {said}, which is not the size of a thread",
        "write it like Ne 12/2, Nm 34/2, 225 denier, 280 dtex or 140 dtex x 2",
    ),
    "weight-odd": Fault(
        "{weight} of this thread would be {length}",
        "it goes from {low} to {high}: look at weight, strands and size once more",
    ),
    "choice-unknown": Fault("{name} cannot be {said}", "{hint}"),
    "not-yes-no": Fault("{name} is {said}", "write true or false"),
    "not-a-colour": Fault(
        "{name} is {said}, which is not a colour of six digits or letters a to f", "{hint}"
    ),
    "not-an-address": Fault("{said} is not a web address", "{hint}"),
    "address-scheme": Fault(
        "a link may not start with {scheme}", "use an address that starts with https://"
    ),
    "address-login": Fault(
        "a link with a name or a password in it, for all to read", "take it out: {better}"
    ),
    "address-host": Fault(
        "{host} is not a host that every reader can reach",
        "write its full name, for example https://example.org/counter",
    ),
    "address-port": Fault("{port} is not a port", "it goes from 1 to 65535; most links have none"),
    "not-a-mail-address": Fault(
        "{said} is not an address for letters", "write it like mailto:wren@example.org"
    ),
    "prose-long": Fault(
        "this text has {length} letters", "{limit} are the most that can be set; tell it shorter"
    ),
    "prose-brackets": Fault(
        "this text has {number} signs '[' and '<'", "{limit} are the most that can be read"
    ),
    "prose-too-deep": Fault(
        "this text has lists or quotations too many levels deep", "let them stand side by side"
    ),
    "prose-picture": Fault(
        "the picture {picture} is left out, since texts are printed without pictures",
        "take it out of the text; the picture of a pattern is photo.jpg beside its pattern.yaml",
        Level.ADVICE,
    ),
    "prose-no-day": Fault(
        "{day} is no day: {hint}", "look once more at your calendar", Level.ADVICE
    ),
    "prose-day-misspelt": Fault(
        "{said} is no month and no day of the week", "did you mean {near}?", Level.ADVICE
    ),
    "prose-weekday": Fault("{day} is a {weekday}", "mend the weekday or the day", Level.ADVICE),
    "prose-link-open": Fault(
        "the link that opens with {link} is not closed, so its signs are printed",
        "end its address with ')'",
        Level.ADVICE,
    ),
    "prose-link-parted": Fault(
        "a space parts {link} from its address, so no link is made of them",
        "write '(' straight behind ']'",
        Level.ADVICE,
    ),
    "prose-list-sign": Fault(
        "{entry} makes no entry of a list, so its lines are printed as a run of words",
        "begin each as in {right}",
        Level.ADVICE,
    ),
    "prose-heading-lost": Fault(
        "{words} stands by itself and is printed as plain text, and other headings here have their signs",
        "if it is a heading, write {right}",
        Level.ADVICE,
    ),
    "prose-list-above": Fault(
        "the list that begins with {entry} is printed as a run of words, since the text above goes on in it",
        "put an empty line above it",
        Level.ADVICE,
    ),
    "prose-struck": Fault(
        "{words} is not struck out, and its signs are printed",
        "take the words out, or the signs round them",
        Level.ADVICE,
    ),
    "prose-bold-open": Fault(
        "the two stars before {word} make nothing bold, since no two end it in this paragraph",
        "{hint}",
        Level.ADVICE,
    ),
    "prose-bold-long": Fault(
        "of the three stars behind {word} two end the bold words, and one is printed",
        "take one away",
        Level.ADVICE,
    ),
    "prose-tag": Fault(
        "the tag {tag} is left out, and only the words round it are printed",
        "take it out; *words* are set slanting and **words** bold, and \\< is printed as it stands",
        Level.ADVICE,
    ),
    "day-form": Fault("{said} is not a date", "{hint}"),
    "year-range": Fault("the year {year} in {said} cannot be right", "it goes from 2000 to 2100"),
    "no-such-day": Fault("there is no day {said}", "{hint}"),
    "moment-form": Fault("{said} is neither a day nor a day with hour and place", "{hint}"),
    "no-such-time": Fault("there is no time {said} on that day", "{hint}"),
    "zone-unknown": Fault("{said} is not a time zone", "{hint}"),
    "rule-form": Fault("{said} is not a day that comes every year", "{hint}"),
    "rule-not-every-year": Fault("{said} does not come every year", "{hint}"),
    "rule-too-far": Fault(
        "{said} is too far from {anchor}", "stay within {limit} days, or name the day itself"
    ),
    "days-before-form": Fault(
        "{said} does not say how many days before",
        "write it like '7 days', '2 weeks' or 'on the day'",
    ),
    "word-unknown": Fault("{said} is not a {what}", "{hint}"),
    "braid-parted": Fault(
        "a braid with {strands} strands", "a braid is used whole: write 1, or take 'braid' away"
    ),
    # points and outlines
    "not-a-point": Fault("{point} is not a point", "{hint}"),
    "not-a-stitch": Fault(
        "{said} is not a stitch of the chart",
        "write its column,row in whole numbers, for example 12,30",
    ),
    "not-a-quarter": Fault(
        "{point} is not on a quarter of a stitch", "the nearest point that is: {better}"
    ),
    "outline-short": Fault("an outline with {corners}", "give three or more{rectangle}"),
    "outline-crosses": Fault(
        "the outline crosses itself: side {first} runs over side {second}",
        "{order}",
    ),
    "outline-touches": Fault(
        "the outline meets itself near {near}",
        "let its sides run round one shape without touching each other",
    ),
    "path-start": Fault(
        "a path that begins with {letter}", "begin it where the shape starts, for example M 0,24"
    ),
    "path-sign": Fault("{sign} is not part of a path", "{hint}"),
    "path-numbers": Fault(
        "after {letter} stand {number} numbers, and it takes {takes} at a time",
        "write {better}",
    ),
    "strands-all": Fault(
        "by its card {card} parts into {strands} strands, and all of them go into the needle",
        "{mend}",
        Level.ADVICE,
    ),
    "outline-attribute": Fault(
        "{name} is how a drawing file names the shape, and no part of it",
        "take it and its quotes away, so that it begins: outline: {start}",
    ),
    "path-second": Fault(
        "a second shape begins here, and wood is sawn without holes",
        "end the outline before it, and give the other shape as a part of its own",
    ),
    "outline-flat": Fault(
        "the outline has no area: its corners lie on one line", "move a corner away from that line"
    ),
    # paints of a finishing piece
    "coat-covered": Fault(
        "{paint} on {part} is covered all over by {later}, which goes on after it",
        "let {later} stand before it under 'painted', or mend 'faces'",
        Level.ADVICE,
    ),
    "coat-twice": Fault(
        "{part} is painted with {paint} twice on its {face}",
        "add the coats together in one entry ('both' has the edges too)",
    ),
    "same-way-twice": Fault(
        "{paint} is put on with a {way} both ways", "give the other way, or take 'or_with' away"
    ),
    # names that point elsewhere
    "reference-unknown": Fault("there is no {what} {name}", "{hint}"),
    "colour-unknown": Fault("{of} has no {what} {name}", "{hint}"),
    "mark-unknown": Fault("the mark {mark} is not in the key", "{hint}"),
    "name-twice": Fault(
        "the {what} {name} stands here a second time (first on line {line})",
        "keep one of the two{other}",
    ),
    "card-copied": Fault(
        "the {number} colours of {name} are those of {other}, in number, name and hex",
        "write its own; or lay this aside where one maker sells the same colours in two ways",
        Level.ADVICE,
    ),
    "card-of-one-name": Fault(
        "{other} is called {name} too, so a packet does not tell the two apart",
        "give one of them another name",
        Level.ADVICE,
    ),
    "colour-twice": Fault(
        "the {by} {said} stands here a second time (first on line {line})",
        "{mend}",
    ),
    "name-reserved": Fault(
        "a thread set cannot be called {name}, which has a meaning in key lines",
        "choose another name",
    ),
}
