"""What only an editor's review says, and no build: all of it is advice."""

from packetgen.faults.fault import Fault, Level


def _advice(wrong: str, right: str) -> Fault:
    return Fault(wrong, right, Level.ADVICE)


REVIEW: dict[str, Fault] = {
    # what an author has thought of already
    "laid-aside-idle": _advice(
        "'{kind}' is laid aside, and no advice of that kind comes here", "{hint}"
    ),
    # what a stitcher buys
    "skein-little": _advice("{what} would take a whole {unit}, for {strand} of strand", "{hint}"),
    "skein-short": _advice(
        "on {cloths} {units} of {colour} will not quite do: {more} must be bought",
        "{share} % less of it would do with {units}",
    ),
    "cut-wastes": _advice(
        "a fat quarter of {cloths} gives {pieces}", "with {off} less{fold} it would give {more}"
    ),
    "edges-bare": _advice(
        "nothing is worked on {where} of this chart, {why}",
        "{mend}",
    ),
    # what she takes for something else
    "thread-unseen": _advice(
        "{stitches} of {colour} can hardly be seen on {cloths}: nearly of that colour, and {where} on bare cloth",
        "offer a cloth of another colour, or {mend}",
    ),
    "ground-worked": _advice(
        "{stitches} of {of} stitches are in {colour}, to the eye the colour of {cloth}",
        "if that ground is bare cloth, put '.' in the chart for its mark; if it is to be stitched, lay this aside in pattern.yaml",
    ),
    "colours-alike": _advice(
        "{one} and {other} are taken for each other ({words}, {apart})",
        "move them apart, or make them one{saves}",
    ),
    "colours-alike-to-some": _advice(
        "to eyes with {eyes} {one} and {other} are one ({apart}; to others {ordinary})",
        "make one of the two lighter or darker; or warn of them in stitching.md, and lay this aside in pattern.yaml",
    ),
    "colours-of-one-name": _advice(
        "{one} and {other} have one name",
        "give one of the two another name on its card, unless that is how they are sold",
    ),
    "symbols-alike-in-grey": _advice(
        "printed without colours, the symbols of {mark} and {other}, {symbol} and {other_symbol}, look alike",
        "pin another, for example symbol: {better}",
    ),
    # how it looks when it is finished
    "fit-tight": _advice(
        "on {cloth} only {wood} mm of wood show {sides}, which looks pinched",
        "{least} mm or more look well: {other}, {off}, or {panel}",
    ),
    # texts, and whether they find room
    "not-sold": _advice(
        "nobody can buy this pattern, since no shop is named for it and it is not given away",
        "add sold_at: [{{url: {url}, name: Name of the shop}}]{own}, or given_away: [chart, packet]",
    ),
    "templates-unaddressed": _advice(
        "{shaped}, and without the site's address no packet says where {templates}",
        "give the series the 'address' that its site has, or send the templates along and lay this aside",
    ),
    "named-twice": _advice(
        "the sentence about {name} begins with her name, which is printed before it",
        "begin it with what she does, for example {example}",
    ),
    "story-short": _advice(
        "a story of {words}", "tell in {least} or more what is behind the design"
    ),
    "story-long": _advice(
        "a story of {words}", "{most} fill a page of the packet: tell it shorter"
    ),
    "example-left": _advice(
        "{what} {are} that begin wrote",
        "put your own in {its} place, or take {it} out",
    ),
    "example-host": _advice(
        "{name} is at {host}, a name that is kept for examples, so nobody comes to a page of yours",
        "write your own site's address, or take it out{then}",
    ),
    "example-remark": _advice(
        "what begin wrote as an example is still marked as one: {what}",
        "put your own in its place, and take this remark out",
    ),
    "photo-small": _advice(
        "the photograph of {size} pixels is printed with {resolution} to the inch, which looks soft",
        "{least} or more look sharp: {wanted} pixels",
    ),
    "photo-tells-chart": _advice(
        "the chart can be copied from this picture, which shows {share} % of its detail as an even cell a stitch",
        "photograph the finished piece at an angle, in its place, or leave the photo out so that a picture is drawn",
    ),
    "cover-full": _advice(
        "the title takes {lines} lines of the cover, and leaves {high} mm for the picture",
        "shorten it to about {letters} letters",
    ),
    "foot-long": _advice(
        "'{begins}…' at the foot of each page is {long} mm long, and has {room} mm",
        "shorten {what} by about {letters}",
    ),
    "share-title-small": _advice(
        "{title} stands in letters of {size} px on its {shape} picture for sharing",
        "{least} px or more can be read in a list of posts: take fewer or shorter words",
    ),
}
