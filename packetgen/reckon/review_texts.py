"""Advice on what stands beside the chart: the story, the photograph on the cover, and where what is found."""

import re
from math import ceil

from packetgen.diagnostics import Place, Problems
from packetgen.model import Pattern, Series
from packetgen.nouns import counted
from packetgen.reckon.cover import filling_mm_a_px, px_per_inch
from packetgen.reckon.sawing import any_shaped, blank
from packetgen.units import MM_PER_INCH

# Words of a story: fewer are a caption, more than these fill a page of the packet. Our own choice.
FEWEST_WORDS, MOST_WORDS = 20, 700
# Below this a printed photograph looks soft: common practice, no source.
LEAST_PX_PER_INCH = 150
_LONGEST_EXAMPLE = 40  # letters of an author's own sentence that a message shows
_PNG_BEGINS = b"\x89PNG"


def complain_of_story(pattern: Pattern, problems: Problems) -> None:
    """Advice for a story that says next to nothing, and for one that nobody reads to its end."""
    place = Place(f"{_folder(pattern)}/story.md")
    words = len(pattern.story_markdown.split())
    if words < FEWEST_WORDS:
        problems.add(place, "story-short", words=counted(words, "word"), least=FEWEST_WORDS)
    elif words > MOST_WORDS:
        problems.add(place, "story-long", words=f"{words:,} words", most=MOST_WORDS)


def complain_of_names(series: Series, problems: Problems) -> None:
    """Advice for a sentence about a designer that begins with her name: pages print it before that."""
    for one in series.designers:
        begins = one.about.casefold().startswith(one.name.casefold())
        rest = one.about[len(one.name) :]
        if begins and not rest[:1].isalnum():
            said = re.sub(r"^(?:\W|(?:is|was)\b)+", "", rest)
            example = f"{said[:1].upper()}{said[1:]}" or "Draws what grows by the door."
            shown = (
                example if len(example) <= _LONGEST_EXAMPLE else f"{example[:_LONGEST_EXAMPLE]}…"
            )
            problems.add(one.place, "named-twice", name=one.name, example=shown)


def complain_of_photo(pattern: Pattern, problems: Problems) -> None:
    """Advice for a photograph that has too few px for the size in which the cover prints it."""
    photo = pattern.photo
    if photo is None or px_per_inch(photo) >= LEAST_PX_PER_INCH:
        return
    size = photo.width_px, photo.height_px
    times = LEAST_PX_PER_INCH / MM_PER_INCH * filling_mm_a_px(*size)
    problems.add(
        photo_place(pattern),
        "photo-small",
        size=" × ".join(map(str, size)),
        resolution=round(px_per_inch(photo)),
        least=LEAST_PX_PER_INCH,
        wanted=" × ".join(str(ceil(side * times)) for side in size),
    )


def photo_place(pattern: Pattern) -> Place:
    """The file of the pattern's photograph."""
    png = pattern.photo is not None and pattern.photo.data.startswith(_PNG_BEGINS)
    return Place(f"{_folder(pattern)}/photo.{'png' if png else 'jpg'}")


def complain_of_unsold(pattern: Pattern, problems: Problems) -> None:
    """Advice where no page could tell a reader how to come by the pattern."""
    if pattern.sold_at or pattern.given_away:
        return
    url = pattern.designer.shop or "https://example.org/counter"
    own = "" if pattern.designer.shop else " with your shop's own address"
    problems.add(pattern.place, "not-sold", url=url, own=own)


def complain_of_unaddressed(series: Series, problems: Problems) -> None:
    """Advice where packets cannot name the page on which the templates of shaped parts are."""
    if series.address or not any_shaped(series.finish):
        return
    first, *others = [part.name for part in series.finish.parts if blank(part).shaped]
    facts = {"shaped": f"'{first}' is no rectangle", "templates": "its template at full size is"}
    if others:
        more = counted(len(others), "more part")
        facts = {
            "shaped": f"'{first}' and {more} are no rectangles",
            "templates": "their templates at full size are",
        }
    problems.add(series.place, "templates-unaddressed", **facts)


def _folder(pattern: Pattern) -> str:
    return pattern.place.path.rpartition("/")[0]
