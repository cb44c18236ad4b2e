"""Causes and cures of the faults of files as such."""

from packetgen.faults.why import Why

WHY_FILES: dict[str, Why] = {
    # reading files
    "folder-missing": Why(
        "The folder of the content does not exist where it was looked for.",
        "Go to the folder that holds it, or name it with --content.",
    ),
    "file-missing": Why(
        "A file that must be there is not, or another file names one that does not exist.",
        "Write the file, or correct the name. Names are exact, capitals included.",
    ),
    "file-unreadable": Why(
        "The file is no ordinary file, or the system does not let you open it.",
        "Look at its permissions, and put a plain file in its place.",
    ),
    "outside-folder": Why(
        "A name leads out of the folder, by a path or by a link. Nothing outside the content is read.",
        "Copy the file into the folder of the series or pattern and write its bare name.",
    ),
    "file-too-big": Why(
        "Texts, pictures and fonts each have a largest size, so that a slip cannot fill the machine.",
        "Make the picture smaller, split the text, or cut the font down to the letters in use.",
    ),
    "file-empty": Why(
        "The file is there and nothing stands in it, often since it was made and not yet written.",
        "Write it; a sentence is enough. Where it is not needed, delete it.",
    ),
    "file-name": Why(
        "Names of cards, pieces, series and patterns become parts of web addresses.",
        "Rename the file or folder in small letters, digits and hyphens; then mend whoever names it.",
    ),
    "file-name-kept": Why(
        "Some systems keep a few short names for devices and can store no file under them.",
        "Add a word to the name.",
    ),
    "file-name-long": Why(
        "Other words are added to the name of a file, and disks have a longest name.",
        "Take a shorter name; the title may be as long as it is.",
    ),
    "names-alike": Why(
        "Many disks do not tell capitals from small letters, so two such files would be one.",
        "Give one of the two a name that differs in more than capitals or accents.",
    ),
    "file-ending": Why(
        "The file is of a kind that is read here, and its name ends otherwise.",
        "Rename it with the ending that the message gives.",
    ),
    "file-elsewhere": Why(
        "Cards of threads, cloths and beads stand in folders of their own, and each folder has its own names.",
        "Move the file to the folder that the message names.",
    ),
    "folder-elsewhere": Why(
        "Series are read in the folder 'series', their patterns each in the folder of its series, and finishing pieces in "
        "'finishes'. This folder has been moved, or dropped into another one by the mouse.",
        "Move the whole folder.",
    ),
    "card-elsewhere": Why(
        "Cards are read in the folders threads, cloths and beads, and this one lies beside them.",
        "Move the file.",
    ),
    "change-unfinished": Why(
        "Files that belong together are put in their places when all of them are whole, and the machine "
        "stopped meanwhile. What is in this folder is whole; files that are not in it have their places.",
        "Move what is in '_next' over the files of the same path, and delete it. To go back instead, put "
        "your old files there; where stitches were given up they are kept as '_before-…'.",
    ),
    "file-not-read": Why(
        "The file has no name that means anything in this folder: mostly a slip in the name.",
        "Give it the right name, or a name that begins with '_' to keep it aside.",
    ),
    "more-alike": Why(
        "One slip, such as a wrong mark, can make hundreds of faults of one kind in one file.",
        "Mend the first and look again.",
    ),
    # characters
    "not-utf8": Why(
        "The file was saved in another encoding than UTF-8, so some letters cannot be told.",
        "Save it once more and choose UTF-8.",
    ),
    "not-text": Why(
        "The file holds no text: it comes from an office program, or it is a picture.",
        "Copy the words into a plain text editor and save them from there.",
    ),
    "text-kept-otherwise": Why(
        "Word processors and spreadsheets keep type, colours and pages with the words, in forms of their own. Another "
        "name does not make plain text of such a file.",
        "Open it in the program that wrote it and save it as plain text (a table as CSV), in UTF-8; or copy the words "
        "into a plain text editor.",
    ),
    "unseen-character": Why(
        "Characters that nobody can see come along when text is copied from a page or a document.",
        "Delete the word round that place and type it by hand.",
    ),
    "letter-lost": Why(
        "Another program could not read a letter and put this sign in its place.",
        "Type the letter that should stand there.",
    ),
    # the build of a YAML file
    "indent-not-spaces": Why(
        "In YAML the space before a line says what it belongs to, and only plain spaces count.",
        "Replace tabs by spaces; most editors can do that for the whole file.",
    ),
    "tab": Why(
        "A tab stands where YAML allows only spaces.",
        "Replace it by a space.",
    ),
    "name-repeated": Why(
        "The same name stands twice in one group, so nobody can say which value is meant.",
        "Keep one of the two lines; in a key, or give one of them another mark.",
    ),
    "name-not-a-word": Why(
        "Before a colon stands a list or a group in brackets.",
        "Write a single word or sign there; a mark that is a bracket goes between quotes.",
    ),
    "needs-quotes": Why(
        "YAML gives some signs a meaning of their own at the start of a value: & * ! and others.",
        "Put the whole value between quotes.",
    ),
    "second-document": Why(
        "A line of three hyphens starts a second file within the file.",
        "Take the line out; to draw a rule in Markdown, use a text that is set in.",
    ),
    "too-deep": Why(
        "Groups stand within groups many times over, mostly since a bracket was not closed.",
        "Count the brackets of that line, and the spaces before the lines round it.",
    ),
    "too-many-values": Why(
        "The file holds far more than any pattern or card needs.",
        "Look for something that was pasted many times.",
    ),
    "quote-open": Why(
        "A text begins with a quote and the same quote never comes again.",
        "Close it; where the text has an apostrophe, use double quotes round it.",
    ),
    "bracket-open": Why(
        "A list or group in brackets is not closed.",
        "Close it with the bracket that the message names.",
    ),
    "bracket-over": Why(
        "There is one closing bracket more than was opened.",
        "Take it away, or put the opening one where its list or group begins.",
    ),
    "braces-missing": Why(
        "Several names with their values on one line belong between { and }. Round brackets mean nothing in YAML.",
        "Write { before the first name and } behind the last value.",
    ),
    "bracket-other": Why(
        "What opens with { ends with }, and what opens with [ ends with ].",
        "Write the bracket that the message names.",
    ),
    "comma-over": Why(
        "Commas part values between brackets. Behind the last bracket of a line none is needed.",
        "Take the comma away.",
    ),
    "bracket-early": Why(
        "A list or group is closed, and goes on after its bracket.",
        "Keep one closing bracket, after the last value.",
    ),
    "comma-missing": Why(
        "Between brackets, values stand side by side without a comma.",
        "Put a comma between them; put quotes round a value that has a comma or colon itself.",
    ),
    "comma-left-out": Why(
        "Between braces a name begins right behind the value before it, so both are taken for one value.",
        "Put a comma between the value and the name.",
    ),
    "colour-unquoted": Why(
        "What follows a space and a '#' is a remark in YAML, so the colour is lost.",
        "Put the colour between quotes.",
    ),
    "text-unquoted": Why(
        "What follows a space and a '#' is a remark in YAML. Here the bracket that closes stands behind it, or the "
        "text goes on below.",
        "Put quotes round the whole text.",
    ),
    "colon-in-value": Why(
        "A colon with a space after it begins a value, and this line has two of them.",
        "Put the value between quotes, or begin a new line.",
    ),
    "colon-missing": Why(
        "A line that should give a name its value has no colon.",
        "Write the name, a colon, a space and the value.",
    ),
    "bar-left-out": Why(
        "A text may stand in lines below its name; but words, a colon and a space are a name with its value, "
        "unless a '|' behind the name says that all that is set in below is text.",
        "Write the '|' behind the colon of the name.",
    ),
    "name-in-remark": Why(
        "A name and its value stand on two lines, both of them remarks at first, and only the second lost its '#'. "
        "The value then belongs to whatever stands above.",
        "Take the '#' before the name away too.",
    ),
    "value-in-remark": Why(
        "A name and its value stand on two lines, both of them remarks at first, and only the first lost its '#'.",
        "Take the '#' of each line of the value away too, and leave the spaces behind it.",
    ),
    "remark-in-text": Why(
        "Below a name with '|' or '>' each line that is set in is text, with a '#' at its beginning too, and is "
        "printed.",
        "Let remarks begin at the margin, below the text; a '#' that belongs to the text may stay.",
    ),
    "line-goes-on": Why(
        "A line without a name stands right behind a longer text, and is not set in as the lines of it are.",
        "Set each line of the text in by as many spaces as its first line, below the name.",
    ),
    "space-left-out": Why(
        "A name and its value are parted by a colon and a space. With a colon alone the two are one word.",
        "Put a space after the colon.",
    ),
    "hard-space": Why(
        "Text that comes from a page or a word processor can have spaces at which no line breaks; after a colon "
        "or a dash only the space bar's own will do.",
        "Type the space anew.",
    ),
    "indentation": Why(
        "The line is set in by another number of spaces than the lines it belongs with.",
        "Set it in exactly as far as they are.",
    ),
    "dash-missing": Why(
        "Each entry of a list begins with a dash and a space. One has none, or another sign that a word processor "
        "puts there.",
        "Write the dash, which is the hyphen of the keyboard, and a space before the entry.",
    ),
    "comma-for-colon": Why(
        "Between braces a comma parts one name with its value from the next, so the name has no value.",
        "Put a colon and a space in the comma's place.",
    ),
    "name-gone": Why(
        "These lines stand below a name, and the line of that name has been deleted.",
        "Write the name with its colon at the margin, on a line of its own above them.",
    ),
    "name-gone-within": Why(
        "These entries belong to another list than those above them, and the line with its name has been deleted.",
        "Write the name of the list with its colon on a line of its own above them. They were read as if it stood there.",
    ),
    "dash-too-many": Why(
        "A dash begins an entry of a list. Names with values that belong together, as in a key, have none.",
        "Take the dash away, or put one before each where it is a list.",
    ),
    "list-beside-name": Why(
        "A dash begins an entry of a list, and it stands on the line of the list's name.",
        "Put each dash on a line of its own below the name.",
    ),
    "after-value": Why(
        "Something follows a value that has ended: mostly after a closing quote, or a remark without its '#' after a closing "
        "bracket.",
        "Put the whole value between one pair of quotes, or '#' before the remark.",
    ),
    "quote-inside": Why(
        "Between quotes the next sign of the same kind closes the text, an apostrophe too, and the second of "
        "two apostrophes when a text begins with one.",
        "Put quotes of the other kind round the whole text.",
    ),
    "backslash": Why(
        "Between double quotes a backslash and the letter after it stand for another sign.",
        "Write two backslashes, or use single quotes.",
    ),
    "bar-then-line": Why(
        "The sign | or > says that a longer text follows, and that text begins on the next line.",
        "End the line after the sign and set the text in below it.",
    ),
    "line-unclear": Why(
        "The line follows no rule of YAML, and what was meant cannot be guessed.",
        "Compare it with the same line in the reference; put quotes round the value.",
    ),
    # the shape of a file
    "name-unknown": Why(
        "The name is misspelt, belongs to another part of the file, or is set in too far or too little.",
        "Take the name that is offered, or look it up in the reference.",
    ),
    "name-left-out": Why(
        "Between braces each value stands behind its name, and this one has none.",
        "Write the name, a colon and a space before it.",
    ),
    "colon-left-out": Why(
        "Between braces, a name and its value are parted by a colon and a space, and one of these is missing.",
        "Put it between the two.",
    ),
    "name-set-out": Why(
        "The last lines below a name are not set in, and so no longer belong to it.",
        "Set them in by as many spaces as the lines above them.",
    ),
    "name-alone": Why(
        "Between braces, what follows a comma is the next name. A text with a comma was cut in two there.",
        "Put that text between quotes.",
    ),
    "points-unquoted": Why(
        "Between braces a comma parts two values, and points have commas of their own.",
        "Put quotes round all points of the path.",
    ),
    "name-missing": Why(
        "A value that is needed is not given.",
        "Add the line that the message shows, with your own value.",
    ),
    "text-goes-on": Why(
        "A text goes on in the next line, which stands at the margin, and a colon in it makes a name of the words before it.",
        "Put a bar behind the colon of the text's name, and its lines below, set in. Only texts that may be long take "
        "several lines; others stand on one, between quotes.",
    ),
    "names-instead": Why(
        "Two fields say the same thing in two ways, and they could contradict each other.",
        "Keep the one that your label or plan gives.",
    ),
    "colour-empty": Why(
        "A colour without quotes is taken for a remark, so nothing is left of the value.",
        "Put the colour between quotes.",
    ),
    "text-cut": Why(
        "What follows a space and a '#' is a remark in YAML, so a text ends before it. A remark has a space behind "
        "its '#', and two before it where it stands behind words; this looks like more of the text.",
        "Put the whole text between quotes, or set the remark off.",
    ),
    "value-empty": Why(
        "The name is there and nothing follows it, or only the dots that stand for it in an example.",
        "Write the value, or take the line out where the field is optional.",
    ),
    "wants-one-value": Why(
        "A list or a group stands where one value is due.",
        "Take the brackets or dashes away.",
    ),
    "wants-list": Why(
        "A single value stands where a list is due.",
        "Put brackets round it, or a dash before each entry.",
    ),
    "file-not-names": Why(
        "The file is a list or a plain text; it should be lines that each begin with a name.",
        "Begin each line with a name and a colon, as the message shows.",
    ),
    "wants-names": Why(
        "A single value or a list stands where a group of names with values is due.",
        "Write the names below, set in, or between braces.",
    ),
    "wants-lines": Why(
        "A single value or a list stands where names of your own with values are due.",
        "Write one line for each, set in, or all of them between braces.",
    ),
    "list-empty": Why(
        "The list has no entries, and at least one is needed.",
        "Add an entry.",
    ),
    "list-long": Why(
        "The list or path is longer than can be used.",
        "Split it into several entries, or look for something that was pasted twice.",
    ),
    # fonts
    "font-kind": Why(
        "The file is named as a face and is none that site and packet can both use.",
        "Give a TrueType, OpenType or WOFF2 file.",
    ),
    "font-unreadable": Why(
        "The file is damaged, cut off, or something else under the name of a font.",
        "Fetch it once more from where it comes from.",
    ),
    "font-embedding": Why(
        "A font says in itself what its maker allows (OpenType, table OS/2, fsType), and this forbids it.",
        "Take another face, or ask the maker for a file that may be embedded.",
    ),
    "font-print-only": Why(
        "The font may stand in documents to read and print; whether on web pages too is not said.",
        "Read its licence. If it says nothing of web pages, take another face for the site.",
    ),
    "font-heavy": Why(
        "Every reader of the site loads the font before the words are set in it.",
        "Take the .woff2 file, or one with only the letters that the series uses.",
    ),
    "font-no-bold": Why(
        "Bold words need a face of their own; without one they stand in the project's own face.",
        "Add the bold of your face as text_bold.",
    ),
    "letters-missing": Why(
        "The type that the packet is set in has no shapes for these letters, so they would be boxes.",
        "Write the word in letters that it has, or give the series a face that has them.",
    ),
    "font-letters": Why(
        "Your face for headings lacks letters that stand in titles of the series.",
        "Take a face that has them, or let the project's own face stand in.",
    ),
}
