"""What a series may say of its look: colours, faces and the ornament below its titles."""

from packetgen.load.schema import Choice, Field, Group, Hex, Text
from packetgen.model import BY_DAY, BY_NIGHT, ORNAMENTS, Palette

_COLOURS = (
    ("paper", "The page."),
    ("shade", "What is set off from the page."),
    ("ink", "Words."),
    ("heading", "Headings and links."),
    ("accent", "Dates, names of columns, the line below a link."),
    ("quiet", "Notes and captions."),
    ("rule", "Lines between things."),
)
_FACES = (
    (
        "text",
        "The face of plain words: a .ttf, .otf or .woff2 file in the series' folder.",
        "plain",
    ),
    ("text_bold", "Its bold.", "bold"),
    ("text_italic", "Its italic.", "italic"),
    ("heading", "The face of titles and headings.", "titles"),
)


def _palette(of: Palette) -> Group:
    return Group(
        "a set of colours",
        tuple(
            Field(name, Hex(), doc, f'"{getattr(of, name)}"', required=False)
            for name, doc in _COLOURS
        ),
    )


LOOK = Group(
    "a look",
    (
        Field(
            "light",
            _palette(BY_DAY),
            "Colours of the site by day, and of what is printed.",
            '{heading: "#1f3a2d", accent: "#7d3a1f"}',
            required=False,
        ),
        Field(
            "dark",
            _palette(BY_NIGHT),
            "Colours of the site for readers who have set their screens to dark.",
            '{heading: "#c3d6ae", accent: "#e6a079"}',
            required=False,
        ),
        *(
            Field(name, Text(at_most=120), doc, f"{example}.ttf", required=False)
            for name, doc, example in _FACES
        ),
        Field(
            "ornament",
            Choice(ORNAMENTS),
            "What stands below the titles of its pages, and on the tab of a browser: a cross stitch, a "
            "flowerpot, or nothing (the tab then has the stitch).",
            "pot",
            required=False,
            default=ORNAMENTS[0],
        ),
    ),
)
