"""Causes and cures of what an editor's review says."""

from packetgen.faults.why import Why

WHY_REVIEW: dict[str, Why] = {
    "laid-aside-idle": Why(
        "The file lays advice aside which is not given, of the file's own folder: since the design has changed, "
        "perhaps, or since it belongs to the other file, pattern.yaml or series.yaml; or no such line has the words "
        "under 'about'. An entry for skein-little is not told while "
        "another design of the series uses one of this pattern's threads, since its advice comes back when that one changes.",
        "Take the line out of laid_aside, or write it in the other file. Let about be words that stand in the advice.",
    ),
    "skein-little": Why(
        "Hardly any thread of this colour is used, a fiftieth of a unit or less, and a stitcher must buy a whole one. Other patterns of the "
        "series that are charted for this thread set count too: what they use of it is no waste. Where five colours or "
        "more and two thirds of those of a card are so, one line tells it of all.",
        "Take a colour that is bought anyway, or use more of it, here or in another pattern of the series. Where it is "
        "told of nearly all colours, look first whether the card has the right length.",
    ),
    "skein-short": Why(
        "The thread for these stitches is a little more than whole units, so nearly one unit is left over.",
        "Give some of these stitches another colour, or offer a finer cloth.",
    ),
    "cut-wastes": Why(
        "The piece of cloth is so little too large that a fat quarter gives fewer pieces than it could. Of several "
        "cloths the pieces stand in the order of their names. Pieces are counted by inches and by centimetres, and the smaller "
        "number is told. Where bare edges are why, they alone are told of.",
        "Take the columns or rows off, or let border or fold_over of the piece be a little smaller.",
    ),
    "edges-bare": Why(
        "The size of a design is that of its chart. Bare rows and columns at its edges make the finished size, the "
        "fit and the cloth to cut larger than the stitching; a fat quarter may give fewer pieces for them.",
        "Take them off with packetgen chart crop. Where the magnets of a series need so large a card, they stay, and "
        "packetgen chart shift brings the design to the middle. Where room is meant to be there, lay the advice aside "
        "with laid_aside in pattern.yaml.",
    ),
    "thread-unseen": Why(
        "A thread of nearly the cloth's colour (up to 6 by CIEDE2000, as colours are on a screen) is seen by what lies "
        "round it. Where more than half of that is bare cloth, and no line is drawn there, the patch is lost in it, in every "
        "picture too; and so are knots and lines of which most lie on bare cloth.",
        "Offer the cloth in another colour, take a darker thread, or draw backstitch round the patch. Where white on white "
        "is what you want, lay the advice aside with laid_aside in pattern.yaml.",
    ),
    "ground-worked": Why(
        "Half of the stitches or more are of a thread that is, to the eye (up to 1 by CIEDE2000, as colours are on a screen), the "
        "colour of the cloth on which the model is worked: mostly a ground that was drawn, and was meant to be bare.",
        "Bring the picture once more with --bare and that colour, or put full stops for its mark in the chart. Where the ground is "
        "to be stitched, lay the advice aside with laid_aside in pattern.yaml.",
    ),
    "colours-alike": Why(
        "Two colours of one card are so near that they are mixed up in the hand and hardly seen on the cloth.",
        "Take a lighter or a darker one, or use one of the two for both.",
    ),
    "colours-alike-to-some": Why(
        "Eyes that lack a kind of cone (protanopia, deuteranopia, tritanopia) see these two colours as one. The numbers are "
        "their difference by CIEDE2000, to such eyes and to others: up to 1 nobody tells two colours apart. On the chart "
        "their symbols tell them apart.",
        "Make them lighter and darker, which all eyes see, or tell in the notes which is which, and lay the advice aside with laid_aside in pattern.yaml.",
    ),
    "colours-of-one-name": Why(
        "Two colours of one card that a pattern uses have the same name, and only their numbers differ: "
        "mostly a line that was copied.",
        "Correct the name on the card. Where the maker calls both so, lay the advice aside.",
    ),
    "symbols-alike-in-grey": Why(
        "In the edition in black and white, and on a grey printer, symbols alone tell colours apart.",
        "Pin the symbol that is offered.",
    ),
    "fit-tight": Why(
        "The mounted design fits, and hardly any wood is seen beside it.",
        "Offer a finer cloth, take the columns or rows off, or make border narrower; or, while no piece is sawn yet, make the "
        "panel larger.",
    ),
    "not-sold": Why(
        "The pattern's page tells where it can be bought, or that it costs nothing, and can tell neither.",
        "Name a shop in sold_at, or say in given_away what anybody may have.",
    ),
    "templates-unaddressed": Why(
        "A part with slopes or curves is sawn by its template, which a build puts beside the piece's page of the site. A "
        "packet can name that page only where the series has an address.",
        "Write 'address' in series.yaml; or put the two files SERIES-parts-a4.pdf and SERIES-parts-letter.pdf of "
        "build/site with what you sell, and lay the advice aside in series.yaml.",
    ),
    "named-twice": Why(
        "Packet and site print a designer's name and then the sentence about her, so her name stands there twice.",
        "Leave the name out of 'about' in series.yaml, as in 'Draws what grows by the door'.",
    ),
    "story-short": Why(
        "The story is what a reader of the page learns of the design, and there is next to nothing.",
        "Tell where it comes from, or what to look for in it.",
    ),
    "story-long": Why(
        "The story goes on over a whole page of the packet and more.",
        "Keep what belongs to the design.",
    ),
    "example-left": Why(
        "A new series and a new pattern begin with examples: sentences that say what to write, and names that "
        "begin with 'example'; in credits, one name that was made up. This one is still there.",
        "Put your own words in its place. As it stands, it would be printed and published.",
    ),
    "example-host": Why(
        "The name example.org and all names below it are kept for examples (RFC 2606): nobody may own one, and nothing "
        "of yours is there. Names that end in .example are kept likewise and let be: what is invented on purpose stands there.",
        "Write the address that your site, your shop or your page really has, or take the line out. A series without a "
        "site needs no address: what then asks for one may be laid aside in series.yaml, with that as the reason.",
    ),
    "example-remark": Why(
        "A chart, outlines or figures are those of an example, or nobody has said that they are not.",
        "Draw, measure or look up your own. Then take out the remark, which says no more than that.",
    ),
    "photo-small": Why(
        "The photograph has fewer pixels than the cover of the packet needs to print it sharp.",
        "Take the picture as the camera made it, or photograph the model again.",
    ),
    "photo-tells-chart": Why(
        "The picture is published, and lies over the chart stitch for stitch, as a drawing of the design does, soft "
        "or sharp. Whoever lays a grid over it reads the chart that others pay for. What counts as detail is "
        "every stitch that has another colour beside it. Of a pattern that is given away nobody is told this.",
        "Photograph the finished piece at an angle, in its place; or take the picture out of the folder, and one is "
        "drawn that shows other stitches than the chart has.",
    ),
    "cover-full": Why(
        "Title, picture and facts share one page, and so long a title leaves little of it for the picture.",
        "Shorten the title so that it takes a line or two less.",
    ),
    "foot-long": Why(
        "The line at the foot of every page is longer than its room, and takes a second one.",
        "Shorten it; of a licence only the first sentence stands there.",
    ),
    "share-title-small": Why(
        "On a picture for sharing the title is set smaller until it finds room.",
        "Take fewer words, or shorter ones.",
    ),
}
