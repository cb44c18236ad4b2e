"""Designers, links, notices and credits that nobody could make use of.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import CHART, FERN, PATTERN, SERIES, TINY, Change
from tests.wrong_input_case import Case

FILE = "series/garden-year/series.yaml"
SHOP = "    shop: https://alder.example/alder"
NOTICE = "  - {date: 2026-11-20, title: Linen, text: The linen is back.}"


def designer(line: str) -> dict[str, tuple[str, str]]:
    """The tiny designer with this line, the twelfth, in place of her shop."""
    return {SERIES: (SHOP, f"    {line}")}


def notice(*more: str) -> dict[str, tuple[str, str]]:
    """The tiny notice, on line 18, with these lines after it."""
    lines = ("  - date: 2026-11-20", "title: Linen", "text: The linen is back.", *more)
    return {SERIES: (NOTICE, "\n    ".join(lines))}


IVY = "series/garden-year/ivy"
AND_IVY: dict[str, Change] = {SERIES: ("order: [fern]", "order: [fern, ivy]")}


def next_to_fern(old: str, new: str) -> dict[str, Change]:
    """A copy of the pattern in which one thing is changed."""
    files = {path.replace(FERN, IVY): text for path, text in TINY.items() if FERN in path}
    return {**files, f"{IVY}/pattern.yaml": TINY[PATTERN].replace(old, new)}


# A second pattern with marks of its own.
_OF_IVY = "# Ivy\nyyxx\nxz..\n"
_OTHER_MARKS = {
    "  r: {": "  x: {",
    "  k: {": "  z: {",
    "  b: {": "  y: {",
    "colour: k": "colour: z",
    "colour: r": "colour: x",
    "k..k": "z..z",
    "kk..": "zz..",
    "Fern by the Tap": "Ivy on the Wall",
    "A fern uncurls": "Ivy climbs",
}
_IVY_PATTERN = TINY[PATTERN]
for _mark, _other in _OTHER_MARKS.items():
    _IVY_PATTERN = _IVY_PATTERN.replace(_mark, _other)
TWO_PATTERNS: dict[str, Change] = {
    **AND_IVY,
    f"{IVY}/pattern.yaml": _IVY_PATTERN,
    f"{IVY}/chart.txt": _OF_IVY,
    f"{IVY}/story.md": "It climbs.\n",
    f"{IVY}/stitching.md": "Upwards.\n",
}

_IVY_TOO = {
    path.replace("/fern/", "/ivy/"): text.replace("Fern", "Ivy")
    for path, text in TINY.items()
    if path.startswith(f"{FERN}/")
}
CASES = (
    Case(
        "two thread sets that name one card",
        {
            **TWO_PATTERNS,
            SERIES: TINY[SERIES]
            .replace("order: [fern]", "order: [fern, ivy]")
            .replace("card: spool,", "card: moss,"),
        },
        "series/garden-year/series.yaml:7:25: the thread sets 'moss' and 'spool' have the one card moss, and none of the numbers in the keys for 'spool' is on it; write the id of that set's own card",
    ),
    Case(
        "a designer's name with two letters exchanged among the credits",
        {
            PATTERN: (
                "credits: {model_stitcher: Hazel Penn}",
                "credits: {model_stitcher: Wren Adler, finisher: Wren Alder}",
            )
        },
        "series/garden-year/fern/pattern.yaml:23:27: advice: the credits name 'Wren Adler' here, and 'Wren Alder' among the designers; look once more which of the two is right",
    ),
    Case(
        "a designer with one more name than the credits know",
        {
            PATTERN: (
                "credits: {model_stitcher: Hazel Penn}",
                "credits: {model_stitcher: Hazel Penn, finisher: Wren Alder}",
            ),
            SERIES: ("name: Wren Alder", "name: Wren Alder-Croft"),
        },
        "series/garden-year/fern/pattern.yaml:23:49: advice: the credits name 'Wren Alder' here, and 'Wren Alder-Croft' among the designers; look once more which of the two is right",
    ),
    Case(
        "a designer's id that stands twice, in place of her own",
        {
            SERIES: (
                "designers:\n",
                "designers:\n  - {id: reed, name: Tamsin Reed, about: Draws ponds.}\n",
            ),
            PATTERN: ("designer: alder", "designer: reeds"),
        },
        "series/garden-year/fern/pattern.yaml:2:11: there is no designer 'reeds'; did you mean 'reed'? (or add reeds to 'designers' in series.yaml)",
    ),
    Case(
        "two designers with one id, and a pattern of the second",
        {
            SERIES: (
                "designers:\n",
                "designers:\n  - {id: alder, name: Tamsin Reed, about: Draws ponds.}\n",
            ),
            PATTERN: ("designer: alder", "designer: reed"),
        },
        "series/garden-year/series.yaml:10:9: the designer 'alder' stands here a second time (first on line 9); keep one of the two, or give one of them another id",
    ),
    Case(
        "the charts of two patterns that changed places",
        {**TWO_PATTERNS, CHART: _OF_IVY, f"{IVY}/chart.txt": TINY[CHART]},
        "series/garden-year/fern/chart.txt:1:1: this chart has marks that its key lacks, and all of them are in the key of 'ivy'; put each back into its own folder",
    ),
    Case(
        "a chart that was copied over that of another pattern",
        {**TWO_PATTERNS, CHART: _OF_IVY},
        "series/garden-year/fern/chart.txt:1:1: this chart has marks that its key lacks, and all of them are in the key of 'ivy'; the very same lies there, so put this pattern's own here again",
    ),
    Case(
        "a chart in the folder of another pattern",
        {
            name: text
            for name, text in {**TWO_PATTERNS, CHART: _OF_IVY}.items()
            if name != f"{IVY}/chart.txt"
        },
        "series/garden-year/fern/chart.txt:1:1: this chart has marks that its key lacks, and all of them are in the key of 'ivy'; move it into that folder",
    ),
    Case(
        "an entry of a list that is set in one space too deep",
        {SERIES: ("order: [fern]", "order:\n  - fern\n   - ivy")},
        "series/garden-year/series.yaml:15:4: '- ivy' is set in by 3 spaces, which fits none of the lines around it; begin it with 2 spaces",
    ),
    Case(
        "stars before the entries of a list",
        {SERIES: ("order: [fern]", "order:\n  * fern\n  * ivy")},
        "series/garden-year/series.yaml:14:3: this entry of a list has '*' before it in place of a hyphen (and 1 more entry); write - fern",
    ),
    Case(
        "a star before one entry of a list",
        {SERIES: ("order: [fern]", "order:\n  - fern\n  * ivy")},
        "series/garden-year/series.yaml:15:3: this entry of a list has '*' before it in place of a hyphen; write - ivy",
    ),
    Case(
        "an en dash before one entry of a list",
        {SERIES: ("order: [fern]", "order:\n  - fern\n  – ivy")},
        "series/garden-year/series.yaml:15:3: this entry of a list has '–' before it in place of a hyphen; write - ivy",
    ),
    Case(
        "en dashes before all entries of a list",
        {SERIES: ("order: [fern]", "order:\n  – fern\n  – ivy")},
        "series/garden-year/series.yaml:14:3: 'order' should be a list, and is '– fern – ivy'; begin each entry with a hyphen and a space: - fern",
    ),
    Case(
        "a dash left out before the second of several entries",
        {
            SERIES: (
                "order: [fern]",
                "  - id: ash\n    name: Ash Elder\n    about: Rests.\n    id: yew\n    name: Yew\n    about: Waits.\norder: [fern]",
            )
        },
        "series/garden-year/series.yaml:16:5: this entry of a list has no dash before it; write - id: yew",
    ),
    Case(
        "a designer who sells perhaps",
        designer("sells: perhaps"),
        f"{FILE}:12:12: 'sells' cannot be 'perhaps'; known here: PDF, both, neither, printed",
    ),
    Case(
        "a designer who sells prints",
        designer("sells: print"),
        f"{FILE}:12:12: 'sells' cannot be 'print'; did you mean 'printed'?",
    ),
    Case(
        "a link without its name",
        designer("links: [{url: https://example.org/notes}]"),
        f"{FILE}:12:13: 'name' is missing in a link; add it within the braces, for example name: Her garden notes",
    ),
    Case(
        "a link that leads nowhere",
        designer("links: [{name: Notes, url: example.org}]"),
        f"{FILE}:12:32: 'example.org' is not a web address; write https://example.org",
    ),
    Case(
        "a link that runs a script",
        designer("links: [{name: Notes, url: 'javascript:alert(1)'}]"),
        f"{FILE}:12:33: a link may not start with 'javascript:'; use an address that starts with https://",
    ),
    Case(
        "a studio in two lines",
        designer("studio: |\n      Two\n      Tables"),
        f"{FILE}:13:7: 'studio' runs over several lines; write it on one line",
    ),
    Case(
        "a notice of a kind that nobody knows",
        notice("kind: open cal"),
        f"{FILE}:21:11: 'kind' cannot be 'open cal'; did you mean 'open call'?",
    ),
    Case(
        "a call that closes before it opens",
        notice("kind: open call", "opens: 2027-03-02", "closes: 2027-03-01"),
        f"{FILE}:23:13: it closes on 2027-03-01, and opens on 2027-03-02; let 'closes' be a later day than 'opens'",
    ),
    Case(
        "a call that closes as it opens",
        notice("kind: open call", "opens: 2027-03-01", "closes: 2027-03-01"),
        f"{FILE}:23:13: it closes on 2027-03-01, and opens on 2027-03-01; let 'closes' be a later day than 'opens'",
    ),
    *(
        Case(
            f"a prize draw that opens on {opens} for {who}",
            notice("kind: prize draw", f"opens: {opens}", "closes: 2027-03-01", f"who: {who}"),
            *[
                f"{FILE}:22:12: advice: it opens on 2027-01-10, before the release on 2027-01-15, and 'who' asks for 'finished design'; nobody can stitch a design that is not out: mend the day here, or the release"
            ]
            * told,
        )
        for who, opens, told in (
            ("Anyone of full age who sends a picture of a finished design.", "2027-01-10", True),
            ("Anyone of full age who sends a picture of a finished design.", "2027-01-15", False),
            ("Anyone of full age who reads the letter.", "2027-01-10", False),
            ("Anyone of full age who has stitched for a year.", "2027-01-10", False),
        )
    ),
    *(
        Case(
            f"a call whose text tells: {words}",
            {
                SERIES: (
                    NOTICE,
                    "\n    ".join(
                        (
                            "  - date: 2026-11-20",
                            "title: Linen",
                            f"text: {words}.",
                            "kind: open call",
                            "opens: 2027-02-01",
                            "closes: 2027-03-31",
                        )
                    ),
                )
            },
            *[
                f"{FILE}:20:26: advice: here stands '13 March 2027', and it closes on 2027-03-31; mend the day here, or 'closes'"
            ]
            * ("13" in words),
            *[
                f"{FILE}:20:{column}: advice: here stands '31 May 2027' as its last day, and it closes on 2027-03-31; mend the day here, or 'closes'"
            ]
            * bool(column),
            *[
                f"{FILE}:20:26: advice: here stands '2 May 2027, the day after it closes', and it closes on 2027-03-31; mend the day here, or 'closes'"
            ]
            * ("2 May" in words),
            *[
                f"{FILE}:20:29: advice: here stands '31 May 2027', and it closes on 2027-03-31; mend the day here, or 'closes'"
            ]
            * ("after 31 May 2027, by lot" in words),
        )
        for words, column in (
            ("It is drawn on 1 April 2027, the day after it closes", 0),
            ("It is drawn on 2 May 2027, the day after it closes", 0),
            ("Send it by 31 March 2027", 0),
            ("Send it by 31 May 2027", 22),
            ("We meet at the gate on 31 May 2027", 0),
            ("It is drawn on 13 March 2027", 0),
            ("It is drawn on 14 March 2027", 0),
            ("It is drawn by lot after 15 April 2027", 0),
            ("It is drawn after 31 May 2027, by lot", 0),
            ("It is drawn on the day after 31 May 2027", 40),
            ("It is drawn on the day after 31 March 2027", 0),
        )
    ),
    Case(
        "a call that closes on no day",
        notice("kind: open call", "closes: 2027-02-30"),
        f"{FILE}:22:13: there is no day '2027-02-30'; February 2027 has 28 days",
    ),
    Case(
        "a prize draw that says nothing else",
        notice("kind: prize draw"),
        f"{FILE}:18:5: 'closes' is missing in a prize draw; add a line, for example closes: 2027-02-28",
        f"{FILE}:18:5: 'opens' is missing in a prize draw; add a line, for example opens: 2027-02-01",
        f"{FILE}:18:5: 'who' is missing in a prize draw; add a line, for example who: Anyone of eighteen or over",
    ),
    Case(
        "a prize draw without its end",
        notice("kind: prize draw", "opens: 2027-03-01", "who: Anyone"),
        f"{FILE}:18:5: 'closes' is missing in a prize draw; add a line, for example closes: 2027-02-28",
    ),
    Case(
        "something shown before the release that is no choice",
        {SERIES: ("finish: shelf", "before_release: teasers\nfinish: shelf")},
        f"{FILE}:4:17: 'before_release' cannot be 'teasers'; did you mean 'teaser'?",
    ),
    Case(
        "thanks to a designer by her id",
        {PATTERN: ("model_stitcher: Hazel Penn", "model_stitcher: alder")},
        "series/garden-year/fern/pattern.yaml:23:27: advice: 'alder' is the id of a designer, and credits are printed as they stand; write model_stitcher: Wren Alder",
    ),
    Case(
        "a credit for a craft that nobody knows",
        {
            PATTERN: (
                "{model_stitcher: Hazel Penn}",
                "{model_stitcher: Hazel Penn, fotographer: Ash}",
            )
        },
        "series/garden-year/fern/pattern.yaml:23:39: 'fotographer' is not part of the credits; did you mean 'photographer'?",
    ),
    Case(
        "a pattern in the order that is to be drawn yet",
        {SERIES: ("order: [fern]", "order: [fern, Rhubarb in the Trug]")},
        "series/garden-year/series.yaml:13:15: there is no pattern folder 'Rhubarb in the Trug'; take it out and begin it with packetgen begin --pattern \"Rhubarb in the Trug\", or let it be under 'to_come'",
    ),
    Case(
        "a dash without the name of a folder",
        {SERIES: ("order: [fern]", "order:\n  - fern\n  -")},
        "series/garden-year/series.yaml:15:4: an entry of 'order' has no value; write one, for example - robin-on-the-spade, or take its dash away",
    ),
    Case(
        "thanks for a photograph that is not there",
        {PATTERN: ("{model_stitcher: Hazel Penn}", "{photographer: Hazel Penn}")},
        "series/garden-year/fern/pattern.yaml:23:25: advice: the credits name a photographer, and there is no photo.jpg, so a drawn picture is shown and nobody reads the name; put a photo.jpg beside pattern.yaml, or take the name out",
    ),
    Case(
        "words for the picture that say nothing",
        {PATTERN: ("credits:", "photo_alt:\ncredits:")},
        "series/garden-year/fern/pattern.yaml:23:11: 'photo_alt' has no value; write one, for example photo_alt: A robin on a spade handle, hung on a sage green bench.",
    ),
    Case(
        "a pattern copied for the next, with a title of its own",
        {**next_to_fern("title: Fern by the Tap", "title: Ivy by the Tap"), **AND_IVY},
        "series/garden-year/ivy/pattern.yaml:1:1: advice: all whole stitches are the very same as those of 'Fern by the Tap', in the same threads; put this pattern's own chart and key there, or bring it in with packetgen bring",
        "series/garden-year/ivy/pattern.yaml:3:8: advice: 'about', 'story.md' and 'stitching.md' are those of 'Fern by the Tap', word for word (line 3 of fern/pattern.yaml); write for each of the two what is so of it",
        "series/garden-year/ivy/pattern.yaml:25:34: advice: this is the very address of 'Fern by the Tap'; write that of this pattern",
    ),
    Case(
        "a pattern copied for the next, of which only the story was forgotten",
        {
            **next_to_fern("about: A fern uncurls.", "about: An ivy climbs."),
            **AND_IVY,
            f"{IVY}/chart.txt": TINY[CHART].replace("rrbb", "rbbb", 1),
        },
        "series/garden-year/ivy/story.md:1:1: advice: 'story.md', 'stitching.md' and 'occasion' are those of 'Fern by the Tap', word for word (line 1 of fern/story.md); write for each of the two what is so of it",
    ),
    Case(
        "the shop's address of the pattern that was copied",
        {**TWO_PATTERNS},
        "series/garden-year/ivy/pattern.yaml:25:34: advice: this is the very address of 'Fern by the Tap'; write that of this pattern",
    ),
    Case(
        "one design in two ranges of colours",
        {
            **next_to_fern('r: {moss: E2, spool: "10"}', 'r: {moss: "07", spool: "10"}'),
            **AND_IVY,
            f"{IVY}/story.md": "An ivy.\n",
        },
        "series/garden-year/ivy/pattern.yaml:3:8: advice: 'about', 'stitching.md' and 'occasion' are those of 'Fern by the Tap', word for word (line 3 of fern/pattern.yaml); write for each of the two what is so of it",
    ),
    Case(
        "an order without its commas",
        {
            SERIES: ("order: [fern]", "order: [fern ivy]"),
            **_IVY_TOO,
        },
        "series/garden-year/series.yaml:13:9: there is no pattern folder 'fern ivy'; put a comma between the names: fern, ivy",
    ),
    Case(
        "two patterns of which the second has lost its dash",
        {
            SERIES: ("order: [fern]", "order: \n  - fern\n    ivy"),
            **_IVY_TOO,
        },
        "series/garden-year/series.yaml:14:5: there is no pattern folder 'fern ivy'; write each name behind a dash of its own, in a line of its own: - fern and - ivy",
    ),
    Case(
        "two patterns between brackets behind one dash",
        {
            SERIES: ("order: [fern]", "order: \n  - [fern, ivy]"),
            **_IVY_TOO,
        },
        "series/garden-year/series.yaml:14:5: an entry of 'order' has a list, and needs one value; take its brackets away, and let each value be an entry of its own",
    ),
    Case(
        "two patterns behind one dash",
        {
            SERIES: ("order: [fern]", "order: \n  - fern, ivy"),
            **_IVY_TOO,
        },
        "series/garden-year/series.yaml:14:5: there is no pattern folder 'fern, ivy'; write each name behind a dash of its own, in a line of its own: - fern and - ivy",
    ),
)
