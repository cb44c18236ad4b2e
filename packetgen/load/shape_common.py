"""Fields that several kinds of file share."""

from packetgen.load.schema import (
    Choice,
    Field,
    Group,
    Hex,
    ListOf,
    Money,
    OutlineOf,
    Reference,
    Rule,
    Text,
)


def name_such_as(example: str) -> Field:
    """What a card, a cloth or a piece is called."""
    return Field("name", Text(at_most=80), "What readers see.", example)


ABOUT = Field(
    "about", Text(at_most=400), "One sentence.", "A robin waits for the digging to start."
)
DYED = Field(
    "dyed",
    Choice(("plain", "by hand")),
    "Goods dyed by hand differ from batch to batch, and the packet says so.",
    "plain",
    required=False,
    default="plain",
)
COLOUR_NUMBER = Field(
    "number",
    Text(at_most=20, inches=False),
    "The number on the label; leading noughts are kept.",
    '"07"',
)
COLOUR_NAME = Field("name", Text(at_most=60), "The colour's own name.", "tilled earth")
HEX = Field("hex", Hex(), "The colour on screen and paper, between quotes.", '"#6b503a"')
NUMBERED_COLOURS = Field(
    "colours",
    ListOf(Group("a colour", (COLOUR_NUMBER, COLOUR_NAME, HEX)), at_least=1),
    "Every colour of the card.",
    '- {number: K4, name: tilled earth, hex: "#6b503a"}',
)


def price_of(unit: str) -> Field:
    """The field for what `unit` costs."""
    return Field(
        "price",
        Money(),
        f"What {unit} costs: the amount and the three letters of its currency.",
        "1.40 EUR",
        required=False,
    )


OUTLINE = Field(
    "outline",
    OutlineOf(),
    "The corners in mm, or an SVG path (M L H V C S Q T A Z): x to the right, y down; it closes by itself.",
    "0,0 180,0 180,176 0,176",
)
LAID_ASIDE = Field(
    "laid_aside",
    ListOf(
        Group(
            "advice laid aside",
            (
                Field(
                    "advice",
                    Reference("a kind of advice"),
                    "The code in brackets at the end of its line.",
                    "skein-little",
                ),
                Field(
                    "about",
                    Text(at_most=80),
                    "Words of its line, such as a thread, a cloth or a picture, where not all lines of the kind are "
                    "meant.",
                    "K4 tilled earth",
                    required=False,
                    default="",
                ),
                Field(
                    "because",
                    Text(at_most=200),
                    "Why it stays as it is.",
                    "the eye is worth a skein",
                ),
            ),
        ),
        at_most=20,
    ),
    "Advice that you have thought of and leave as it is; it is not told again, and --strict lets it pass.",
    "- {advice: skein-little, because: the eye is worth a skein}",
    required=False,
    default=(),
)
OCCASION = Field(
    "occasion",
    Group(
        "an occasion",
        (
            Field("name", Text(at_most=80), "What the day is called.", "Twelfth Night"),
            Field("on", Rule(), "When it comes, every year.", "second Sunday of May"),
        ),
    ),
    "The day of the year that the design is for.",
    "{name: Twelfth Night, on: 6 January}",
)
