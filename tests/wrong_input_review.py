"""What a buyer would complain of, and only an editor's review says.

Each case changes a tiny content folder of which the review has nothing to say, and stands beside every line
that it then says. (That folder's own pattern is so small that a whole skein of each colour is too much.)
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from collections.abc import Mapping
from io import BytesIO

from PIL import Image, ImageFilter

from tests.content_builder import (
    CHART,
    CLOTH,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    SERIES,
    TINY,
    Change,
    picture,
)
from tests.wrong_input_case import Case

_WORDY = "stitching and for that of your friends and neighbours, in any number that your own two hands can make"


def photo(width_px: int, height_px: int) -> bytes:
    return picture([["#a04030"] * width_px] * height_px, "JPEG")


PATCHES = ("rrkkbbrr", "rr..bbrr", "bbrrkkbb", "bbrrkkbb", "kkbbrrkk", "kkbbrrkk")


def rendering() -> bytes:
    """The patches as somebody draws them, 150 pixels a stitch, and softens them by half of one."""
    colours = {"r": "#a04030", "k": "#6b503a", "b": "#4f7942", ".": "#f2f2ee"}
    small = Image.open(BytesIO(picture([[colours[mark] for mark in row] for row in PATCHES])))
    drawn = small.convert("RGB").resize((1200, 900), Image.Resampling.NEAREST)
    data = BytesIO()
    drawn.filter(ImageFilter.GaussianBlur(75)).save(data, "JPEG")
    return data.getvalue()


def cushion(fold_over: str) -> str:
    """The tiny piece with a wide border and as much cloth folded over."""
    text = TINY[FINISH].replace("border: 6 mm", "border: 20 mm")
    return text.replace("fold_over: 20 mm", f"fold_over: {fold_over}")


SHORT_SKEINS = TINY[MOSS].replace("length: 8 m", "length: 0.5 m")
CALM: dict[str, Change] = {
    MOSS: SHORT_SKEINS,
    f"{FERN}/story.md": "It grew behind the tap, where nobody had sown it, and in the first warm week of the "
    "year it stood there uncurled.\n",
}


# Two colours more, each with one knot.
FIVE_COLOURS: dict[str, Change] = {
    MOSS: TINY[MOSS]
    + '  - {number: N1, name: soot, hex: "#101010"}\n  - {number: S3, name: sky, hex: "#8fb4e0"}\n',
    "threads/spool.yaml": TINY["threads/spool.yaml"].replace("50 yd", "5 m")
    + '  - {number: "16", name: coal, hex: "#121212"}\n  - {number: "18", name: air, hex: "#90b5e1"}\n',
    PATTERN: TINY[PATTERN]
    .replace(
        "backstitch:", '  n: {moss: N1, spool: "16"}\n  s: {moss: S3, spool: "18"}\nbackstitch:'
    )
    .replace(
        "french_knots:\n",
        'french_knots:\n  - {colour: n, at: "1.5,1.5"}\n  - {colour: s, at: "2.5,1.5"}\n',
    ),
}


def review_case(slip: str, changes: Mapping[str, Change], *lines: str) -> Case:
    return Case(slip, CALM | changes, *lines)


KEY = "series/garden-year/fern/pattern.yaml"
CASES = (
    review_case(
        "a line of a card that was copied and kept its name",
        {MOSS: SHORT_SKEINS.replace("name: peat", "name: Brick")},
        f"{KEY}:10:3: advice: E2 brick and K4 Brick have one name; give one of the two another name on its card, unless that is how they are sold",
    ),
    review_case(
        "a whole skein for a stitch or two",
        {MOSS: TINY[MOSS].replace("length: 8 m", "length: 3 m")},
        f"{KEY}:11:3: advice: 2 stitches of 07 fern would take a whole skein, for 0.1 m of strand; no other colour of Moss Stranded in the key would do for it: use more of it, do without, or lay this aside",
    ),
    review_case(
        "a skein that is told ten times as long as it is",
        FIVE_COLOURS,
        f"{KEY}:1:1: advice: 5 of 5 colours of Moss Stranded would take a whole skein of 8 m each, for 0.6 m or less of strand; if a skein is that long, take fewer colours, or lay this aside in pattern.yaml; else mend its length in threads/moss.yaml",
    ),
    review_case(
        "a whole skein for a stitch or two, with a near colour in the key",
        {MOSS: TINY[MOSS].replace("length: 8 m", "length: 3 m").replace("#6b503a", "#4d7038")},
        f"{KEY}:11:3: advice: 2 stitches of 07 fern would take a whole skein, for 0.1 m of strand; K4 peat is the nearest in the key (visible, 3.4) and would save 1 skein",
    ),
    review_case(
        "rows and columns at the edges on which nothing is worked",
        {CHART: "rrbb.\nrr...\n.....\n.....\n"},
        "series/garden-year/fern/chart.txt:3:1: advice: nothing is worked on rows 3–4 and column 5 of this chart, and they count in its size; a chart without them is 4 × 2; 'packetgen chart crop fern' makes it",
    ),
    review_case(
        "rows put in above by hand, under lines that stayed",
        {CHART: "....\n....\nrrbb\nrr..\n", PATTERN: TINY[PATTERN].replace("1,1 4,1 4,2.5", "1,3 4,3 4,4.5").replace("2.5,2.5 3,3", "2.5,3.5").replace("3.5,1.5", "3.5,3.5").replace("at: 3,2", "at: 3,4")},
        "series/garden-year/fern/chart.txt:1:1: advice: nothing is worked on rows 1–2 of this chart, and they count in its size; a chart without them is 4 × 2; 'packetgen chart crop fern' makes it and moves lines and knots along; rows that slipped in, delete by hand",
    ),
    review_case(
        "words that only ask for the author's own",
        {f"{FERN}/story.md": "A story of this series.\n\nWrite here where the design comes from, which readers see beside the picture before they buy, and why it was drawn that way.\n"},
        "series/garden-year/fern/story.md:3:1: advice: the text is still the example that begin wrote; put your own in its place, or take it out",
    ),
    review_case(
        "a shaped part, and no address at which its template could be found",
        {FINISH: ("120,120 0,120", "120,110 110,120 0,120")},
        "series/garden-year/series.yaml:1:1: advice: 'back' is no rectangle, and without the site's address no packet says where its template at full size is; give the series the 'address' that its site has, or send the templates along and lay this aside",
    ),
    review_case(
        "a pattern that is neither sold nor given away",
        {PATTERN: ("sold_at:\n  - {name: Alder's counter, url: https://alder.example/by-fern}\n", "")},
        f"{KEY}:1:1: advice: nobody can buy this pattern, since no shop is named for it and it is not given away; add sold_at: [{{url: https://alder.example/alder, name: Name of the shop}}], or given_away: [chart, packet]",
    ),
    review_case(
        "a remark which says that a chart is an example",
        {CHART: "# EXAMPLE: a sprig in a frame. Draw your own.\n" + TINY[CHART]},
        "series/garden-year/fern/chart.txt:1:1: advice: what begin wrote as an example is still marked as one: 'a sprig in a frame'; put your own in its place, and take this remark out",
    ),
    review_case(
        "a remark which says that what stands on a label is an example",
        {MOSS: f"{SHORT_SKEINS}# EXAMPLE: weight and length. Look at your label.\n# EXAMPLE: colours.\n"},
        "threads/moss.yaml:12:1: advice: what begin wrote as an example is still marked as one: 'weight and length'; put your own in its place, and take this remark out",
        "threads/moss.yaml:13:1: advice: what begin wrote as an example is still marked as one: 'colours'; put your own in its place, and take this remark out",
    ),
    review_case(
        "a link to a host that is nobody's",
        {
            f"{FERN}/story.md": "By [the lock](https://lock.example.org/gate) the fern grew for twelve years, in the wet wall "
            "below the upper gate, and nobody ever took it away.\n"
        },
        f"{FERN}/story.md:1:4: advice: the link is at lock.example.org, a name that is kept for examples, so nobody comes to a page of yours; write your own site's address, or take it out",
    ),
    review_case(
        "a link in a value to a host that is nobody's",
        {SERIES: ("licence: For your own stitching.", 'licence: "By [me](https://lock.example.org/gate)."')},
        f"{SERIES}:16:10: advice: a link in 'licence' is at lock.example.org, a name that is kept for examples, so nobody comes to a page of yours; write your own site's address, or take it out",
    ),
    review_case(
        "an address of one's own below a name that is kept for examples",
        {SERIES: TINY[SERIES] + "address: https://fern.example.org/\n"},
        f"{SERIES}:19:10: advice: 'address' is at fern.example.org, a name that is kept for examples, so nobody comes to a page of yours; write your own site's address, or take it out while there is no site, and lay templates-unaddressed aside if told",
    ),
    review_case(
        "thanks to somebody who was made up",
        {PATTERN: ("credits: {model_stitcher: Hazel Penn}", "credits: {model_stitcher: Hazel Penn, finisher: Maud Fennimore}")},
        f"{KEY}:23:49: advice: 'finisher' in 'credits' is still the example that begin wrote; put your own in its place, or take it out",
    ),
    review_case(
        "a length a little too short",
        {MOSS: TINY[MOSS].replace("length: 8 m", "length: 0.1 m")},
        f"{KEY}:10:3: advice: on Hopsack 28 one skein of K4 peat will not quite do: two must be bought; 5 % less of it would do with one skein",
    ),
    review_case(
        "two browns of which one will do",
        {MOSS: SHORT_SKEINS.replace("#6b503a", "#a34232")},
        f"{KEY}:10:3: advice: E2 brick and K4 peat are taken for each other (same to the eye, 0.8); move them apart, or make them one, which would save 1 skein",
    ),
    review_case(
        "a red and a green that are one to some",
        {MOSS: SHORT_SKEINS.replace("#a04030", "#a9522f").replace("#6b503a", "#43642c")},
        f"{KEY}:10:3: advice: to eyes with protanopia E2 brick and K4 peat are one (0.9; to others 40.6); make one of the two lighter or darker; or warn of them in stitching.md, and lay this aside in pattern.yaml",
    ),
    review_case(
        "advice laid aside that nobody gives",
        {PATTERN: TINY[PATTERN] + "laid_aside: [{advice: skein-little, because: it is worth it}]\n"},
        f"{KEY}:28:23: advice: 'skein-little' is laid aside, and no advice of that kind comes here; take this entry out",
    ),
    review_case(
        "two signs with a bar",
        {PATTERN: TINY[PATTERN].replace('r: {moss: E2, spool: "10"', 'r: {moss: E2, spool: "10", symbol: plus').replace('k: {moss: K4, spool: "12"', 'k: {moss: K4, spool: "12", symbol: bar-dots-upright')},
        f"{KEY}:10:3: advice: printed without colours, the symbols of 'r' and 'k', plus and bar-dots-upright, look alike; pin another, for example symbol: ring-slash-rising",
    ),
    review_case(
        "hardly any wood beside it",
        {FINISH: ("border: 6 mm", "border: 45 mm")},
        f"{KEY}:6:5: advice: on Hopsack 28 only 1.4 mm of wood show at the left and at the right, which looks pinched; 3 mm or more look well: offer a finer cloth, take 2 columns off, or make the panel 3.5 mm wider",
    ),
    review_case(
        "a row too many for the cloth",
        {FINISH: cushion("71 mm")},
        f"{KEY}:6:5: advice: a fat quarter of Hopsack 28 gives 4 pieces of 7 1/2 × 7 3/8 in (19 × 19 cm); with 1 row less, or for all designs fold_over: 70 mm in finish.yaml, it would give 6",
    ),
    review_case(
        "a designer's name printed twice",
        {SERIES: ("about: Draws what grows by the door.", "about: Wren Alder draws what grows by the door.")},
        "series/garden-year/series.yaml:9:9: advice: the sentence about Wren Alder begins with her name, which is printed before it; begin it with what she does, for example Draws what grows by the door.",
    ),
    review_case(
        "a designer whose whole name another word begins with",
        {SERIES: ("about: Draws what grows by the door.", "about: Wren Alders grow by her door.")},
    ),
    review_case(
        "a story that goes on",
        {f"{FERN}/story.md": "and then " * 351},
        "series/garden-year/fern/story.md:1:1: advice: a story of 702 words; 700 fill a page of the packet: tell it shorter",
    ),
    review_case(
        "next to no story",
        {f"{FERN}/story.md": "Grown."},
        "series/garden-year/fern/story.md:1:1: advice: a story of 1 word; tell in 20 or more what is behind the design",
    ),
    review_case(
        "a photograph from a small camera",
        {f"{FERN}/photo.jpg": photo(60, 40)},
        "series/garden-year/fern/photo.jpg:1:1: advice: the photograph of 60 × 40 pixels is printed with 96 to the inch, which looks soft; 150 or more look sharp: 993 × 662 pixels",
    ),
    review_case(
        "a photograph that is the chart, a little softened",
        {CHART: "\n".join(PATCHES), f"{FERN}/photo.jpg": rendering()},
        "series/garden-year/fern/photo.jpg:1:1: advice: the chart can be copied from this picture, which shows 100 % of its detail as an even cell a stitch; photograph the finished piece at an angle, in its place, or leave the photo out so that a picture is drawn",
    ),
    review_case(
        "a title of many lines over a square photograph",
        {
            PATTERN: ("title: Fern by the Tap", "title: A Fern that Uncurls behind the Tap while Nobody Looks, and a Second One that Does Not, nor Ever Will"),
            f"{FERN}/photo.jpg": photo(900, 900),
        },
        f"{KEY}:1:1: advice: the title takes 4 lines of the cover, and leaves 108 mm for the picture; shorten it to about 81 letters",
        f"{KEY}:1:1: advice: 'A Fern that Uncurls behi…' at the foot of each page is 168 mm long, and has 159 mm; shorten the title by about 7 letters",
    ),
    review_case(
        "a thread of the cloth's own colour",
        {CLOTH: ('name: frost, hex: "#f2f2ee"', 'name: frost, hex: "#a24231"'), CHART: "rrbb.rrrrrr\nrr...rrrrrr\n"},
        f"{FERN}/pattern.yaml:6:5: advice: 16 stitches of E2 brick can hardly be seen on Hopsack 28 in frost: nearly of that colour, and most of their edge lies on bare cloth; offer a cloth of another colour, or outline them",
    ),
    review_case(
        "a ground of the cloth's colour within a frame",
        {
            CLOTH: ('name: frost, hex: "#f2f2ee"', 'name: frost, hex: "#a04131"'),
            CHART: "kkkkkkkkkk\nkr..rrrrrk\nkr..rrrrrk\nkrrrbbrrrk\nkrrrrrrrrk\nkrrrrrrrrk\nkkkkkkkkkk\n",
        },
        f"{FERN}/pattern.yaml:6:5: advice: 34 of 66 stitches are in E2 brick, to the eye the colour of Hopsack 28 in frost; if that ground is bare cloth, put '.' in the chart for its mark; if it is to be stitched, lay this aside in pattern.yaml",
    ),
    review_case(
        "a licence that runs on",
        {SERIES: ("licence: For your own stitching.", f"licence: For your own {_WORDY}.")},
        "series/garden-year/series.yaml:1:1: advice: '© 2026 Wren Alder. For y…' at the foot of each page is 171 mm long, and has 159 mm; shorten the first sentence of 'licence' by about 10 letters",
    ),
    review_case(
        "a title of one word without an end",
        {PATTERN: ("title: Fern by the Tap", f"title: {'Fern' * 12}")},
        f"{KEY}:1:1: advice: {'Fern' * 12} stands in letters of 34 px on its square picture for sharing; 36 px or more can be read in a list of posts: take fewer or shorter words",
    ),
)  # fmt: skip
