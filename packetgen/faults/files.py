"""Faults of files as such: their names, characters, and the build of YAML."""

from packetgen.faults.fault import Fault, Level


def _broken(wrong: str, right: str) -> Fault:
    return Fault(wrong, right, ends_file=True)


FILES: dict[str, Fault] = {
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
    "file-name-kept": Fault(
        "some machines keep the name {name} for themselves, and no file there can have it",
        "add a word to it, for example {better}",
    ),
    "file-name-long": Fault(
        "the name {name} has {length} letters", "{limit} are the most that fit everywhere"
    ),
    "names-alike": Fault(
        "{name} and {other} are one and the same name on many machines",
        "give one of the two another name",
    ),
    "file-ending": Fault(
        "the name {name} has another ending than is read here", "call it {better}"
    ),
    "file-elsewhere": Fault(
        "this file has the names of {what} and not those of {own}", "move it to the folder {folder}"
    ),
    "folder-elsewhere": Fault(
        "this is the folder of {what}, and nothing reads it here", "move it into {where}"
    ),
    "card-elsewhere": Fault(
        "this file has the names of {what}, and nothing reads it here",
        "move it into the folder {where}",
    ),
    "change-unfinished": Fault(
        "a change of several files is not finished, and {files} must still come from here",
        "look again in a moment; if it was cut off, move all that is in {folder} to the same places "
        "outside of it",
    ),
    "file-not-read": Fault(
        "nothing reads {name}", "{hint} (a name that begins with '_' is left alone)", Level.ADVICE
    ),
    "more-alike": Fault(
        "this file has more than {limit} faults of one kind, and the others are not shown",
        "mend one and see: they may all have one cause",
        Level.ADVICE,
    ),
    # characters
    "not-utf8": Fault("{what}", "save the file again and choose UTF-8 as its encoding"),
    "not-text": Fault(
        "this is not a text file", "write it with a plain text editor and save it as UTF-8"
    ),
    "text-kept-otherwise": Fault(
        "{name} is no plain text, but {kind}",
        "open it where you wrote it, and save it as plain text (UTF-8) under this name",
    ),
    "unseen-character": Fault(
        "here stands {what}, which nobody can see{more}", "delete it and type the word again"
    ),
    "letter-lost": Fault(
        "the sign '\ufffd' stands where another program lost a letter{more}",
        "type the letter again",
    ),
    # the build of a YAML file
    "indent-not-spaces": _broken("here stands {what} where the line is set in{more}", "{hint}"),
    "tab": _broken("here stands a tab", "write one space in its place"),
    "name-repeated": Fault("{name} stands here a second time (first on line {line})", "{hint}"),
    "name-not-a-word": Fault(
        "only a single word or sign can stand before a colon", "take the brackets away"
    ),
    "needs-quotes": _broken(
        "what begins with the sign {sign} is not taken as plain text",
        "put it between quotes{word}",
    ),
    "second-document": _broken("a line '---' starts a second set of values", "take that line away"),
    "too-deep": _broken(
        "this is set in more than {limit} steps deep", "count the brackets and the spaces before it"
    ),
    "too-many-values": _broken(
        "the file holds more than {limit} values", "take out what is not needed"
    ),
    "quote-open": _broken(
        "the quote {quote} that opens here is not closed",
        "{hint}",
    ),
    "bracket-open": _broken(
        "the bracket '{bracket}' that opens here is not closed",
        "close it with '{closing}' after the last value",
    ),
    "bracket-over": _broken("{what} nothing here", "take {it} away"),
    "braces-missing": _broken("names and their values on one line have {how} round them", "{hint}"),
    "bracket-other": _broken("the bracket '{bracket}' is met by a '{met}'", "{hint}"),
    "comma-over": _broken(
        "a comma stands behind the value, and no bracket is open any more", "take it away"
    ),
    "bracket-early": _broken(
        "the bracket '{bracket}' closes here, and after it comes {said}",
        "put the bracket at the end, or take it away where there is one already",
    ),
    "comma-missing": _broken(
        "something is missing between the brackets, just before {said}",
        "put commas between the values, and quotes round a value that has a comma or colon itself",
    ),
    "comma-left-out": _broken("no comma stands between {value} and {name}", "write {right}"),
    "colour-unquoted": _broken(
        "everything after '#' counts as a remark, so this colour is not seen",
        "put it between quotes: {example}",
    ),
    "text-unquoted": _broken(
        "everything after '#' counts as a remark, so this text is cut off",
        "put it between quotes{example}",
    ),
    "colon-in-value": _broken(
        "a colon with a space after it stands within a value",
        "{hint}",
    ),
    "colon-missing": _broken("{what}", "{hint}"),
    "line-goes-on": _broken(
        "this line{more} seems to go on with {name} of line {line}", "set {what} in by {spaces}"
    ),
    "space-left-out": _broken(
        "no space stands after the colon of {name}", "put one there: {right}"
    ),
    "name-left-out": Fault("{said} stands there without its name", "write {right}"),
    "colon-left-out": Fault("no colon with a space stands after {name}", "{hint}"),
    "hard-space": _broken(
        "a space of an unusual kind stands here and parts nothing", "write {right} with a plain one"
    ),
    "indentation": _broken(
        "{said} {how}, which fits none of the lines around it",
        "{hint}",
    ),
    "dash-missing": _broken("this entry of a list has {what}", "write {right}"),
    "comma-for-colon": Fault("a comma stands after {name} in place of a colon", "write {right}"),
    "name-gone": _broken(
        "the line {name} is missing above this one", "write it there, at the margin"
    ),
    "name-gone-within": Fault(
        "the line {name} is missing above this entry, which does not belong to {other}",
        "write it there, {where}",
    ),
    "dash-too-many": _broken(
        "a dash stands before {name}, and the names beside it have none", "{hint}"
    ),
    "list-beside-name": _broken(
        "a list cannot start on the line of its name", "put each dash on a line of its own below"
    ),
    "after-value": _broken("the value has ended before {said}", "{hint}"),
    "quote-inside": _broken("the {quote} here ends the text that the same sign began", "{hint}"),
    "backslash": _broken(
        "a backslash between double quotes has a special meaning",
        "write it twice, or use single quotes",
    ),
    "bar-then-line": _broken(
        "the sign '|' or '>' must end its line", "start the text on the next line, set in by spaces"
    ),
    "bar-left-out": _broken(
        "the text below {name} has a colon in one of its lines, which makes a name of the words before it",
        "write {right}, and leave the lines set in",
    ),
    "name-in-remark": _broken(
        "{name} is still a remark, and its value on the line below is not one",
        "take this '#' away too, or put one before that line",
    ),
    "line-unclear": _broken("this cannot be read", "{hint}"),
    # the shape of a file
    "name-unknown": Fault("{name} is not part of {what}", "{hint}"),
    "name-set-out": Fault(
        "{name} is not part of {what}, and seems to belong to {other} above",
        "begin it with {spaces}",
    ),
    "name-alone": Fault(
        "{name} is not part of {what}, and has no value",
        "put a value that has commas itself between quotes",
    ),
    "points-unquoted": Fault(
        "points have commas, and between braces a comma ends a value",
        "put {quotes} round them: {example}",
    ),
    "name-missing": Fault("{name} is missing in {what}", "{how}, for example {example}"),
    "text-goes-on": Fault(
        "{more} is no name, and seems to go on with the text of {name} above",
        "write {right} and below it the whole text, each line set in by 2 spaces",
    ),
    "names-instead": Fault("{both} in {what}", "{hint}"),
    "colour-empty": Fault(
        "{name} has no value (what follows a bare '#' counts as a remark)",
        "put it between quotes: {example}",
    ),
    "text-cut": Fault(
        "{rest} counts as a remark and is not printed",
        "if it belongs to the text, {quoted}; else put two spaces before the '#' and one behind it",
        Level.ADVICE,
    ),
    "value-in-remark": Fault(
        "{name} has no value, and the line below it is still a remark",
        "take the '#' of all lines of the value away",
    ),
    "remark-in-text": Fault(
        "{said}{more} is set in below {name}, so it is part of that text and is printed",
        "if it is a remark, let it begin at the margin, below the text",
        Level.ADVICE,
    ),
    "value-empty": Fault("{name} has no value", "write one, for example {example}"),
    "wants-one-value": Fault("{name} has {shape}, and needs one value", "{hint}"),
    "wants-list": Fault(
        "{name} should be a list, and is {shape}",
        "{hint}",
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
    # fonts
    "font-kind": Fault(
        "{name} is no file of a face that is read here",
        "give a file that ends in .ttf, .otf or .woff2",
    ),
    "font-unreadable": Fault(
        "{name} cannot be read as a font", "fetch the file once more from where it comes from"
    ),
    "font-embedding": Fault(
        "the maker of {name} does not allow {refused} (the file itself says so)",
        "take another face, or ask the maker for a file that may be embedded",
    ),
    "font-print-only": Fault(
        "the maker of {name} allows it in documents to read and print; a site hands out the file itself",
        "look whether its licence has a word on web pages",
        Level.ADVICE,
    ),
    "font-heavy": Fault(
        "{name} has {size} kB, which every reader of the site must load",
        "stay below {limit} kB: a .woff2 file, or one with only the letters that you need",
        Level.ADVICE,
    ),
    "font-no-bold": Fault(
        "{name} has no bold beside it, so bold words stand in the project's own face",
        "add a line, for example text_bold: bold.ttf",
        Level.ADVICE,
    ),
    "letters-missing": Fault(
        "the type of the packet has no {letters}",
        "write it in letters that it has, or give the series a face that has them: "
        "look: {{text: your-face.ttf}}",
    ),
    "font-letters": Fault(
        "{name} lacks {letters}, which this series has in its titles",
        "they are set in the project's own face; take a face that has them",
        Level.ADVICE,
    ),
}
