"""Whether words can be read on the paper of a series: contrast, by the measure of WCAG 2.2.

Success criterion 1.4.3 asks for 4.5:1, and compares the ratio before rounding.
"""

from collections.abc import Iterable
from math import floor

from packetgen.colour import contrast, difference, lab, mix
from packetgen.diagnostics import Problems
from packetgen.model import Palette, Series

LEAST = 4.5
WORDS = ("ink", "heading", "accent", "quiet")
GROUNDS = ("paper", "shade")
PRINTED = "#ffffff"  # a packet is printed on white
_STEPS = 200


def complain_of_contrast(series: Series, problems: Problems) -> None:
    """Tells of every colour of words that is too near to what it stands on, and of one that would do."""
    look = series.look
    places = dict(look.places)
    for mode, palette in (("light", look.light), ("dark", look.dark)):
        grounds = _grounds(mode, palette)
        for words in WORDS:
            colour = getattr(palette, words)
            faint = [ground for ground in grounds.items() if contrast(colour, ground[1]) < LEAST]
            if not faint:
                continue
            name, ground = min(faint, key=lambda one: contrast(colour, one[1]))
            better = nearest_legible(colour, grounds.values()) or nearest_legible(colour, [ground])
            blamed = places.get(f"{mode}.{words}") or places.get(f"{mode}.{name}") or series.place
            problems.add(
                blamed,
                "contrast-low",
                words=f"'{words}' of the {mode} colours",
                colour=colour,
                ground=f"'{name}'" if name in GROUNDS else name,
                ground_colour=ground,
                ratio=f"{floor(contrast(colour, ground) * 100) / 100:.2f}",
                least=LEAST,
                better=better,
            )


def nearest_legible(colour: str, grounds: Iterable[str]) -> str | None:
    """The colour nearest to `colour`, towards black or white, that is legible on all the grounds.

    None where no shade is: the grounds are too unlike each other.
    """
    grounds = tuple(grounds)
    found = []
    for end in ("#000000", "#ffffff"):
        shades = (mix(colour, end, step / _STEPS) for step in range(_STEPS + 1))
        legible = (shade for shade in shades if all(contrast(shade, on) >= LEAST for on in grounds))
        found += [shade for shade in [next(legible, None)] if shade]
    return min(found, key=lambda shade: difference(lab(shade), lab(colour)), default=None)


def _grounds(mode: str, palette: Palette) -> dict[str, str]:
    """What words stand on: name → colour. The light colours are those of print as well."""
    grounds = {name: getattr(palette, name) for name in GROUNDS}
    return grounds | {"white paper in print": PRINTED} if mode == "light" else grounds
