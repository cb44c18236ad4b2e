"""Causes and cures of what can be wrong with a picture, table or grid that is brought in."""

from packetgen.faults.why import Why

WHY_BRINGING: dict[str, Why] = {
    "bring-kind": Why(
        "The file is of a kind that no design is read from, or its name has another ending.",
        "Save the design as PNG, CSV or plain text.",
    ),
    "bring-not-found": Why(
        "The picture is too large to have one pixel a stitch, and no even grid of stitches is seen in it.",
        "Say how many stitches wide it shall become; or, of a picture drawn in squares, how many pixels wide each is.",
    ),
    "bring-no-squares": Why(
        "The picture is drawn freely, without a square for each stitch, or so softly that none can be told: any "
        "size of stitch explains it about as well as any other.",
        "Say how many stitches wide it shall become; it is brought down to that as a photograph is. If it was drawn "
        "in squares, measure some of them in an image editor and give their width in pixels with --cell.",
    ),
    "bring-cell-unsure": Why(
        "The picture was enlarged softly or saved with loss, and stitches of that size explain it a little "
        "better than others, which may be chance.",
        "Measure some stitches in an image editor and give their width, which may have a fraction; or save the "
        "drawing anew, one pixel a stitch.",
    ),
    "bring-one-pixel": Why(
        "The picture is small enough to have one pixel a stitch, but has the many colours of one that was "
        "enlarged softly, saved with loss, or photographed.",
        "Look at the chart that came out. Give the width of a stitch; or, of a photograph and of what is drawn freely, "
        "how many stitches wide it shall become.",
    ),
    "bring-cell-large": Why(
        "The size given for a stitch is larger than the picture itself.",
        "Give a smaller one, or let it be found.",
    ),
    "bring-photo-wide": Why(
        "JPEG blurs the edges of stitches, so such a file is taken for a photograph, and needs a width.",
        "Give the width in stitches. If it is a drawn chart, save it as PNG, or measure how many pixels wide a "
        "stitch is drawn and give that with --cell.",
    ),
    "bring-photo-high": Why(
        "Made as wide as asked, the picture becomes higher than the largest chart.",
        "Ask for a smaller width, or crop the picture.",
    ),
    "bring-all-bare": Why(
        "Everything in it was taken for bare cloth.",
        "Look whether it is the right file. Clear pixels, empty cells and '.' are bare cloth.",
    ),
    "bring-half-clear": Why(
        "Soft edges of a drawing are neither stitch nor bare cloth, and had to become one of the two.",
        "Look at the chart; draw with a hard pencil if it came out wrong.",
    ),
    "bring-headings": Why(
        "Spreadsheets often have a first row or column that names or counts the others. Here it would be stitched.",
        "Say which it is: with --headings it is left out, with --no-headings each of its fields is a stitch. Threads of "
        "a legend beside the stitches are taken with --headings.",
    ),
    "bring-legend": Why(
        "Above or below the stitches, parted from them by an empty row, or at their right, by an empty column, stand codes, "
        "each with its thread. Here they would be stitched.",
        "Say which it is: with --headings the legend is left out, and its codes are the threads that it names; with "
        "--no-headings each of its fields is a stitch.",
    ),
    "bring-legend-word": Why(
        "Below or above the grid of signs stands a line for each of them, as 'K = 101', and one of these lines names "
        "nothing that the card has.",
        "Write the number or the name of a colour of the card; a sign for bare cloth is 'bare'.",
    ),
    "bring-beyond": Why(
        "The first row of the table counts its columns, and stops before the table does: what stands farther to the right "
        "may be a note in the margin, or the last stitches of rows whose headings were not filled in.",
        "Take the note out, or count the columns to the last stitch.",
    ),
    "bring-beside": Why(
        "The name of a table above its stitches, or sums below its last row or beside its last column, would be stitched as if "
        "they were part of the chart; and while they are there, the headings are not seen.",
        "Take that row or column out in the spreadsheet, and save the table again. If it is stitches, say so with --no-headings.",
    ),
    "bring-code-unknown": Why(
        "A sign or cell of the design stands for no colour that is known.",
        "Say which thread it is: below the faults stand the threads of the card, and what to add to the command. "
        "On a terminal you are asked instead.",
    ),
    "bring-noughts": Why(
        "A spreadsheet takes 070 for the number 70 and leaves out the nought. The card has no 70, and has 070; or "
        "your codes are numbers of your own, and other threads are meant.",
        "If they are threads of the card, add to the command what stands below the faults, or set the cells to text in "
        "the spreadsheet and type the numbers again. If not, say with --code which thread each is.",
    ),
    "bring-codes-together": Why(
        "One --code says what one code is. No stitch of the file has the code that this one would be, and it looks "
        "like several of them, set in a row.",
        "Write --code before each of them, as the line says it.",
    ),
    "bring-code-turned": Why(
        "What stands before the '=' is a thread and no code of the file, and what stands behind it is a code of the "
        "file and no thread.",
        "Write the code first and then its thread, as the line says it.",
    ),
    "bring-code-unused": Why(
        "You say with --code what a code is, and no stitch of the file has that code: mostly a slip of the pen.",
        "Look how the code is written in the file, capitals and all; or leave out that --code.",
    ),
}
