"""Advice on words that do not find their room: on the cover and at the feet of a packet, on share pictures.

Cover and feet are measured as templates/packet/packet.css has them.
"""

from collections.abc import Sequence
from math import ceil

from packetgen.diagnostics import Place, Problems
from packetgen.model import Faces, Pattern, Series
from packetgen.reckon.cover import DRAWN_PX_PER_CELL, photo_px, printed_mm
from packetgen.reckon.figures import Figures
from packetgen.reckon.needle import threads_used
from packetgen.render.picture_letters import Face
from packetgen.render.share_picture import title_size_px
from packetgen.render.site_pictures import SHARE_SIZES_PX
from packetgen.render.stitched_picture import MARGIN_CELLS
from packetgen.units import MM_PER_INCH

# Smaller letters are lost where a list of posts shows the picture no wider than a hand: our own choice.
LEAST_SHARE_PX = 36
_POINT_MM = MM_PER_INCH / 72
# A page of the packet without its margins. What stands on the cover beside its title, picture and facts:
# the margins, and the lines of the series, the designer and the edition.
_WIDE_MM, PAGE_HIGH_MM = 186.0, 250.4
_LEADING, _TITLE_LEADING = 1.42, 1.15
_TITLE_MM, _PLAIN_MM, _FOOT_MM = 36 * _POINT_MM, 10.5 * _POINT_MM, 8 * _POINT_MM
_BESIDES_MM = 6 + 3 + 3 + 7 + 7 + 6 + 2.5 + 1.5 + 1 + (12 + 12.5 + 2 * 9) * _LEADING * _POINT_MM
_FACT_WIDE_MM = (_WIDE_MM - 5 * 4) / 4
_FOOT_WIDE_MM = 150.0
_MEASURED_PX = 200  # the size at which faces are measured


def complain_of_words(series: Series, figures: Sequence[Figures], problems: Problems) -> None:
    """Advice for titles that the cover or a share picture has no room for, and for feet that run on."""
    for one in figures:
        pattern = one.pattern
        _complain_of_cover(series, one, problems)
        _complain_of_foot(_title_foot(pattern), "the title", pattern.place, series, problems)
        lines = (series.title, f"designed by {pattern.designer.name}")
        _complain_of_share(pattern.title, lines, pattern.place, series, problems)
    feet = (_licence_foot(series, one.pattern) for one in figures)
    longest = max(feet, key=lambda foot: _foot_mm(foot, series.look.faces), default="")
    _complain_of_foot(longest, "the first sentence of 'licence'", series.place, series, problems)
    _complain_of_share(series.title, (series.tagline,), series.place, series, problems)
    piece = series.finish
    _complain_of_share(piece.name, (series.title,), piece.place, series, problems)


# --- the cover ------------------------------------------------------------------------------------


def cover_high_mm(series: Series, figures: Figures) -> float:
    """How high all that stands on the cover is; it has PAGE_HIGH_MM."""
    title_mm = len(_title_lines(series, figures.pattern)) * _TITLE_MM * _TITLE_LEADING
    facts_mm = _fact_lines(series, figures) * _PLAIN_MM * _LEADING
    return _BESIDES_MM + title_mm + facts_mm + _picture_high_mm(figures.pattern)


def _complain_of_cover(series: Series, figures: Figures, problems: Problems) -> None:
    over_mm = cover_high_mm(series, figures) - PAGE_HIGH_MM
    lines = _title_lines(series, figures.pattern)
    fitting = len(lines) - ceil(over_mm / (_TITLE_MM * _TITLE_LEADING))
    if over_mm > 0 and fitting > 0:
        problems.add(
            figures.pattern.place,
            "cover-full",
            lines=len(lines),
            letters=len(" ".join(lines[:fitting])),
        )


def _title_lines(series: Series, pattern: Pattern) -> list[str]:
    face = _heading(series.look.faces)
    return face.broken(pattern.title, _WIDE_MM / _TITLE_MM * _MEASURED_PX)


def _fact_lines(series: Series, figures: Figures) -> int:
    """Lines of the highest of the four facts."""
    pattern, model = figures.pattern, figures.cloths[0].option
    card = pattern.thread_sets[0].card
    threads = [of.id == card.id for of, _ in threads_used(pattern, pattern.thread_sets[0])]
    over = f", over {'two' if model.over == 2 else model.over}" if model.over > 1 else ""
    shown = _lines(f"{model.cloth.name}, {model.colour.name}{over}", series.look.faces)
    colours = _lines(f"{sum(threads)} of {card.name}", series.look.faces)
    return max(4, 1 + shown, 1 + colours + (not all(threads)))


def _lines(text: str, faces: Faces) -> int:
    return len(_plain(faces).broken(text, _FACT_WIDE_MM / _PLAIN_MM * _MEASURED_PX))


def _picture_high_mm(pattern: Pattern) -> float:
    if pattern.photo:
        return printed_mm(*photo_px(pattern.photo))[1]
    cells = pattern.grid.width + 2 * MARGIN_CELLS, pattern.grid.height + 2 * MARGIN_CELLS
    return printed_mm(*(DRAWN_PX_PER_CELL * side for side in cells))[1]


# --- the feet of pages ----------------------------------------------------------------------------


def _title_foot(pattern: Pattern) -> str:
    latest = pattern.revisions[-1].on
    number = len(pattern.revisions)
    return f"{pattern.title} · revision {number}, {latest.day} {latest:%B %Y}"


def _licence_foot(series: Series, pattern: Pattern) -> str:
    first = series.licence.partition(".")[0]
    return f"© {pattern.revisions[-1].on.year} {pattern.designer.name}. {first}."


def _foot_mm(text: str, faces: Faces) -> float:
    return _plain(faces).width(" ".join(text.split())) / _MEASURED_PX * _FOOT_MM


def _complain_of_foot(
    text: str, what: str, place: Place, series: Series, problems: Problems
) -> None:
    """The line does not break: what it has too much runs into the number of the page."""
    long_mm = _foot_mm(text, series.look.faces)
    if long_mm > _FOOT_WIDE_MM:
        problems.add(
            place,
            "foot-long",
            begins=text[:24].rstrip(),
            long=ceil(long_mm),
            room=f"{_FOOT_WIDE_MM:g}",
            what=what,
            letters=ceil(len(text) * (1 - _FOOT_WIDE_MM / long_mm)),
        )


# --- pictures for sharing -------------------------------------------------------------------------


def _complain_of_share(
    title: str, lines: Sequence[str], place: Place, series: Series, problems: Problems
) -> None:
    """Of the three shapes the one with the smallest letters is told."""
    sizes = {shape: title_size_px(title, lines, shape, series.look) for shape in SHARE_SIZES_PX}
    shape = min(sizes, key=sizes.__getitem__)
    if sizes[shape] < LEAST_SHARE_PX:
        problems.add(
            place,
            "share-title-small",
            title=title,
            size=sizes[shape],
            shape=shape,
            least=LEAST_SHARE_PX,
        )


def _heading(faces: Faces) -> Face:
    return Face("heading.ttf", "heading-ext.ttf", _MEASURED_PX, faces.heading)


def _plain(faces: Faces) -> Face:
    return Face("text-regular.ttf", "text-regular-ext.ttf", _MEASURED_PX, faces.text)
