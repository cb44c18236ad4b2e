"""What room the cover of a packet has for its picture: what title and facts leave of the page.

Measured as templates/packet/packet.css has them.
"""

from collections.abc import Iterable

from packetgen.model import Faces, Pattern, Series
from packetgen.reckon.cover import ROOM_MM, drawn_px_per_cell, photo_px, printed_mm
from packetgen.reckon.figures import Figures
from packetgen.reckon.needle import threads_used
from packetgen.render.picture_letters import Face
from packetgen.render.stitched_picture import picture_cells
from packetgen.units import MM_PER_INCH

_POINT_MM = MM_PER_INCH / 72
# A page of the packet without its margins. What stands on the cover beside its title, picture and facts:
# the margins, and the lines of the series, the designer and the edition.
_WIDE_MM, _PAGE_HIGH_MM = 186.0, 250.4
_LEADING = 1.42
_TITLE_MM, _PLAIN_MM = 36 * _POINT_MM, 10.5 * _POINT_MM
TITLE_LINE_MM = 1.15 * _TITLE_MM
_EDITION_MM = 9 * _POINT_MM
_BESIDES_MM = 6 + 3 + 3 + 7 + 7 + 6 + 2.5 + 1.5 + 1 + (12 + 12.5) * _LEADING * _POINT_MM
_FACT_WIDE_MM = (_WIDE_MM - 5 * 4) / 4
MEASURED_PX = 200  # the size at which faces are measured


def picture_room_mm(series: Series, figures: Figures) -> float:
    """How high the picture may be: as packet.css says, or less where the title takes several lines."""
    title_mm = len(title_lines(series, figures.pattern)) * TITLE_LINE_MM
    facts_mm = _fact_lines(series, figures) * _PLAIN_MM * _LEADING
    edition = edition_line(figures.pattern), licence_line(series, figures.pattern)
    edition_mm = _lines(edition, _EDITION_MM, _WIDE_MM, series.look.faces) * _EDITION_MM * _LEADING
    left_mm = _PAGE_HIGH_MM - _BESIDES_MM - title_mm - facts_mm - edition_mm
    return round(max(0.0, min(ROOM_MM[1], left_mm)), 1)


def picture_high_mm(pattern: Pattern) -> float:
    """How high the picture would be if it had all the room that packet.css gives it."""
    if pattern.photo:
        return printed_mm(*photo_px(pattern.photo))[1]
    cells = picture_cells(pattern)
    px = drawn_px_per_cell(*cells)
    return printed_mm(*(px * side for side in cells))[1]


def title_lines(series: Series, pattern: Pattern) -> list[str]:
    """The title as it breaks on the cover."""
    face = heading_face(series.look.faces)
    return face.broken(pattern.title, _WIDE_MM / _TITLE_MM * MEASURED_PX)


def edition_line(pattern: Pattern) -> str:
    """What stands at the foot of the cover and of every page."""
    latest = pattern.revisions[-1].on
    number = len(pattern.revisions)
    return f"{pattern.title} · revision {number}, {latest.day} {latest:%B %Y}"


def licence_line(series: Series, pattern: Pattern) -> str:
    """What stands below it: of the licence its first sentence."""
    first = series.licence.partition(".")[0]
    return f"© {pattern.revisions[-1].on.year} {pattern.designer.name}. {first}."


def heading_face(faces: Faces) -> Face:
    return Face("heading.ttf", "heading-ext.ttf", MEASURED_PX, faces.heading)


def plain_face(faces: Faces) -> Face:
    return Face("text-regular.ttf", "text-regular-ext.ttf", MEASURED_PX, faces.text)


def _fact_lines(series: Series, figures: Figures) -> int:
    """Lines of the highest of the four facts."""
    pattern, model = figures.pattern, figures.cloths[0].option
    card = pattern.thread_sets[0].card
    threads = [of.id == card.id for of, _ in threads_used(pattern, pattern.thread_sets[0])]
    over = f", over {'two' if model.over == 2 else model.over}" if model.over > 1 else ""
    shown = f"{model.cloth.name}, {model.colour.name}{over}"
    colours = f"{sum(threads)} of {card.name}"
    shown_lines, colour_lines = (
        _lines((words,), _PLAIN_MM, _FACT_WIDE_MM, series.look.faces) for words in (shown, colours)
    )
    return max(4, 1 + shown_lines, 1 + colour_lines + (not all(threads)))


def _lines(texts: Iterable[str], letter_mm: float, wide_mm: float, faces: Faces) -> int:
    face, wide_px = plain_face(faces), wide_mm / letter_mm * MEASURED_PX
    return sum(len(face.broken(text, wide_px)) for text in texts)
