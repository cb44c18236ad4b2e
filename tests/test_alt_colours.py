"""Words for colours in what is said of a picture, beside the colours that are in it."""

from dataclasses import replace

import pytest
from PIL import ImageColor

from packetgen.reckon.alt_colours import colour_not_there
from tests.stitching import MOSS, pattern, piece

# Named colours of CSS Color Module Level 4, as Pillow has them, under words that people call them by.
CALLED = {
    "red": "red darkred firebrick crimson tomato indianred",
    "pink": "pink hotpink lightpink salmon palevioletred mediumvioletred",
    "orange": "orange darkorange coral sandybrown",
    "yellow": "yellow gold khaki goldenrod lemonchiffon",
    "green": "green forestgreen olive seagreen darkolivegreen palegreen lime darkseagreen",
    "blue": "blue navy steelblue skyblue slateblue cadetblue lightsteelblue royalblue",
    "purple": "purple indigo orchid plum rebeccapurple",
    "violet": "violet mediumorchid blueviolet thistle",
}
# Words that nobody would use of such a colour.
NEVER = {
    "red": "green blue navy forestgreen skyblue",
    "pink": "green blue forestgreen yellow",
    "orange": "blue navy green purple",
    "yellow": "blue red purple navy",
    "green": "red purple navy orange cornsilk wheat moccasin",
    "blue": "red orange yellow forestgreen",
    "purple": "yellow green orange forestgreen",
    "violet": "yellow green orange forestgreen",
}


def said_of(word: str, css: str) -> str:
    """Of a picture stitched in that one colour, on cloth and wood in plain grey."""
    grey = replace(MOSS, name="stone", hex="#808080")
    of = pattern("mm")
    thread = replace(grey, hex="#{:02x}{:02x}{:02x}".format(*ImageColor.getrgb(css)))
    lines = tuple(
        replace(line, threads={name: (thread,) for name in line.threads}) for line in of.key
    )
    cloths = tuple(replace(option, colour=grey) for option in of.cloths)
    of = replace(of, title="A Sprig", key=lines, cloths=cloths)
    wood = piece()
    grey_wood = replace(
        wood, paints=tuple(replace(one, name="stone", hex=grey.hex) for one in wood.paints)
    )
    return colour_not_there(f"A {word} leaf, seen from above.", of, grey_wood)


@pytest.mark.parametrize(
    ("word", "css"), [(word, one) for word, some in CALLED.items() for one in some.split()]
)
def test_a_colour_may_be_called_by_its_word(word, css):
    assert said_of(word, css) == ""


@pytest.mark.parametrize(
    ("word", "css"), [(word, one) for word, some in NEVER.items() for one in some.split()]
)
def test_a_word_for_a_colour_that_is_nowhere_is_told(word, css):
    assert said_of(word, css) == word


def test_a_word_that_a_colour_or_the_title_has_is_let_be():
    of = pattern("mm")
    assert colour_not_there("A purple leaf.", of, piece()) == "purple"
    assert colour_not_there("A purple leaf.", replace(of, title="Purple Sprig"), piece()) == ""
    assert colour_not_there("A purpleish leaf in a purple-ish pot.", of, piece()) == ""
