"""Faults of a picture, table or grid from which a design is brought in."""

from packetgen.faults.fault import Fault, Level

BRINGING: dict[str, Fault] = {
    "bring-kind": Fault(
        "{name} is no kind of file that a design is read from",
        "give a PNG, a JPEG, a grid of signs (.txt) or a table (.csv); of a spreadsheet, save it as CSV "
        "(comma separated) and bring that",
    ),
    "bring-not-found": Fault(
        "the picture has {width} × {height} pixels, and no size was found at which a stitch is drawn; "
        "one pixel a stitch, {limit} is the most either way",
        "say how many stitches wide it shall become, --wide 100; or how many pixels wide a square is, with --cell",
    ),
    "bring-no-squares": Fault(
        "no even squares show in its {width} × {height} pixels that could be stitches",
        "say how many stitches wide it shall become, --wide {wide}; or, if it is drawn in squares, how many pixels "
        "wide each is, with --cell, which is 1 where a pixel is a stitch",
    ),
    "bring-cell-unsure": Fault(
        "stitches some {cell} pixels wide show through in the picture, but not clearly enough to be read",
        "say how wide they are, for example --cell {cell}; --cell 1 where each pixel is a stitch",
    ),
    "bring-one-pixel": Fault(
        "no even squares show in its {width} × {height} pixels, so each is read as a stitch; but no key has room "
        "for so many colours",
        "say how many stitches wide it shall become, --wide {wide}; or how many pixels wide a square is, with "
        "--cell, which is 1 where a pixel is a stitch",
        Level.ADVICE,
    ),
    "bring-cell-large": Fault(
        "a stitch of {cell} pixels finds no room in a picture of {width} × {height}",
        "give --cell a smaller number, or leave it out",
    ),
    "bring-photo-wide": Fault(
        "a JPEG is read as a photograph, and nobody has said how wide it shall become",
        "say how many stitches, --wide 100; or of a drawn chart how many pixels wide a stitch is, with --cell, "
        "better yet saved as PNG",
    ),
    "bring-photo-high": Fault(
        "{wide} stitches wide, the picture becomes {high} high",
        "{limit} is the most; give --wide {most} or less",
    ),
    "bring-all-bare": Fault(
        "there is no stitch in it, all is bare cloth",
        "look whether it is the right file, and what stands for bare cloth",
    ),
    "bring-half-clear": Fault(
        "{number} half transparent, the first at {spot}",
        "what is less than half opaque became bare cloth, the rest full stitches: look at them",
        Level.ADVICE,
    ),
    "bring-headings": Fault(
        "{what}, and each field of a table is a stitch",
        "add --headings to leave {them} out, or --no-headings where {are} stitches",
    ),
    "bring-legend": Fault(
        "{where} look like a legend ({what}), and each field of a table is a stitch",
        "add --headings to leave it out and take its threads, or --no-headings where it is stitches",
    ),
    "bring-legend-word": Fault(
        "{where} look like a legend, and {what} is no number or name of {card}",
        "write its thread, or {sign} = bare where it is bare cloth",
    ),
    "bring-beyond": Fault(
        "{what} stands beyond the headings, which end at {last}",
        "take it out, or let the headings go as far, or add --no-headings where each field is a stitch",
    ),
    "bring-beside": Fault(
        "{where} stands {side} the stitches, and may be {what}",
        "take it out, or add --no-headings where each field is a stitch",
    ),
    "bring-code-unknown": Fault(
        "{what}, which stands for {number}, is no colour, with a # and six digits, and no number or name of {card}",
        "say with --code which thread it is{nearest}",
    ),
    "bring-noughts": Fault(
        "{what} of {card} without the noughts before {them}",
        "add {words}, or keep the noughts in the table: a spreadsheet does so in cells of text",
    ),
    "bring-codes-together": Fault(
        "--code {what} is of several codes",
        "each has a --code of its own: {words}",
    ),
    "bring-code-turned": Fault(
        "--code {what} is the wrong way round: the code of the file stands before the '='",
        "write {words}",
    ),
    "bring-code-unused": Fault(
        "no stitch has the code {what}, of which --code says what it is", "{nearest}", Level.ADVICE
    ),
}
