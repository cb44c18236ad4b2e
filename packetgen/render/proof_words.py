"""Advice on words that do not find their room: on the cover and at the feet of a packet, on share pictures.

Cover and feet are measured as templates/packet/packet.css has them.
"""

from collections.abc import Sequence
from math import ceil

from packetgen.diagnostics import Place, Problems
from packetgen.model import Faces, Series
from packetgen.nouns import counted
from packetgen.reckon.figures import Figures
from packetgen.render.cover_room import (
    MEASURED_PX,
    TITLE_LINE_MM,
    edition_line,
    licence_line,
    picture_high_mm,
    picture_room_mm,
    plain_face,
    title_lines,
)
from packetgen.render.share_picture import title_size_px
from packetgen.render.site_pictures import SHARE_SIZES_PX
from packetgen.units import MM_PER_INCH

# Smaller letters are lost where a list of posts shows the picture no wider than a hand: our own choice.
LEAST_SHARE_PX = 36
# A picture on the cover that is less high than this sells little: our own choice.
LEAST_PICTURE_MM = 120.0
_FOOT_MM = 8 * MM_PER_INCH / 72
_FOOT_WIDE_MM = 159.0  # a millimetre less than there is: what is set may be a hair wider


def complain_of_words(series: Series, figures: Sequence[Figures], problems: Problems) -> None:
    """Advice for titles that crowd the cover or a share picture, and for feet that run on."""
    for one in figures:
        pattern = one.pattern
        _complain_of_cover(series, one, problems)
        _complain_of_foot(edition_line(pattern), "the title", pattern.place, series, problems)
        lines = (series.title, f"designed by {pattern.designer.name}")
        _complain_of_share(pattern.title, lines, pattern.place, series, problems)
    feet = (licence_line(series, one.pattern) for one in figures)
    longest = max(feet, key=lambda foot: _foot_mm(foot, series.look.faces), default="")
    _complain_of_foot(longest, "the first sentence of 'licence'", series.place, series, problems)
    _complain_of_share(series.title, (series.tagline,), series.place, series, problems)
    piece = series.finish
    _complain_of_share(piece.name, (series.title,), piece.place, series, problems)


# --- the cover ------------------------------------------------------------------------------------


def _complain_of_cover(series: Series, figures: Figures, problems: Problems) -> None:
    room_mm = picture_room_mm(series, figures)
    lines = title_lines(series, figures.pattern)
    fitting = len(lines) - ceil((LEAST_PICTURE_MM - room_mm) / TITLE_LINE_MM)
    if room_mm < min(LEAST_PICTURE_MM, picture_high_mm(figures.pattern)) and fitting > 0:
        problems.add(
            figures.pattern.place,
            "cover-full",
            lines=len(lines),
            high=f"{room_mm:.0f}",
            letters=len(" ".join(lines[:fitting])),
        )


# --- the feet of pages ----------------------------------------------------------------------------


def _foot_mm(text: str, faces: Faces) -> float:
    return plain_face(faces).width(" ".join(text.split())) / MEASURED_PX * _FOOT_MM


def _complain_of_foot(
    text: str, what: str, place: Place, series: Series, problems: Problems
) -> None:
    """What a line has too much stands on another one."""
    long_mm = _foot_mm(text, series.look.faces)
    if long_mm > _FOOT_WIDE_MM:
        problems.add(
            place,
            "foot-long",
            begins=text[:24].rstrip(),
            long=ceil(long_mm),
            room=f"{_FOOT_WIDE_MM:g}",
            what=what,
            letters=counted(ceil(len(text) * (1 - _FOOT_WIDE_MM / long_mm)), "letter"),
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
