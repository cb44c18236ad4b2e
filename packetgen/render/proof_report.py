"""An editor's review for a terminal: of each chapter its faults, its advice, and in a few words its praise.

Each problem is the one located line that every command gives; nothing is indented before its file.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from textwrap import wrap

from packetgen.diagnostics import Problem
from packetgen.faults import Level
from packetgen.nouns import counted
from packetgen.reckon.figures import Figures
from packetgen.reckon.isolated import isolated_cells
from packetgen.reckon.review import Chapter, Praise, Review
from packetgen.render.terminal import Depth, painted
from packetgen.units import percent

_WIDE = 88
_FEW = 2  # stitches alone of which it is told where they are
_GOOD, _ASIDE = "  good: ", "  laid aside: "


class Tone(Enum):
    """What a line tells. The value is its ink on a terminal: read on black and on white alike; '' is plain."""

    HEADING = "#2e86ab"
    FAULT = "#d1495b"
    ADVICE = "#b9770e"
    PRAISE = "#3f8f4f"
    PLAIN = ""


@dataclass(frozen=True)
class Line:
    text: str
    tone: Tone

    def shown(self, depth: Depth) -> str:
        """With colour, as far as there is any."""
        return painted(self.text, self.tone.value or None, None, depth)


def lines_of(review: Review, content_folder: str, with_places: bool) -> Iterator[Line]:
    """The whole review; `with_places` adds the ten places of a pattern where most stitches stand alone."""
    for number, chapter in enumerate(review.chapters):
        if number:
            yield Line("", Tone.PLAIN)
        if not _of_no_folder(chapter):
            yield Line(_heading(chapter), Tone.HEADING)
        if with_places and chapter.figures:
            yield from (Line(place, Tone.PLAIN) for place in _places(chapter.figures))
        for problem in (*chapter.faults, *chapter.advice):
            yield Line(f"{content_folder}/{problem.printed}", _tone(problem))
        yield from (Line(f"{_ASIDE}{line}", Tone.PLAIN) for line in chapter.aside)
        yield from (Line(text, Tone.PRAISE) for text in _praise(chapter.praise))


def summary(review: Review) -> str:
    """The last line, where there is nothing to mend."""
    aside = f", {review.aside} laid aside" if review.aside else ""
    advice = counted(review.advice, "piece of advice") if review.advice else "no advice"
    return (
        f"No fault: {counted(review.patterns, 'pattern')} checked; "
        f"{advice}{aside}, {review.praise} well done."
    )


def _of_no_folder(chapter: Chapter) -> bool:
    """Whether there is no content folder at all, and so nothing that a heading could be about."""
    return any(not problem.place.path for problem in chapter.problems)


def _heading(chapter: Chapter) -> str:
    if chapter.figures is None:
        return chapter.title
    found, grid = chapter.figures.isolated, chapter.figures.pattern.grid
    # With its size, in which a lost row is seen.
    head = f"{chapter.title}, {grid.width} × {grid.height}"
    if not found.alone:
        return f"{head}: none of {found.stitches:,} stitches stands alone"
    stand = "stands" if found.alone == 1 else "stand"
    where = ""
    if found.alone <= _FEW:  # one may be a slip of the pen
        cells = isolated_cells(chapter.figures.pattern)
        where = ": " + " and ".join(f"column {column}, row {row}" for column, row in cells)
    return f"{head}: {found.alone:,} of {found.stitches:,} stitches ({percent(found.share)}) {stand} alone{where}"


def _places(figures: Figures) -> Iterator[str]:
    for window in figures.isolated.worst:
        yield (
            f"  columns {window.first_column}–{window.last_column}, "
            f"rows {window.first_row}–{window.last_row}: {window.alone}"
        )


def _tone(problem: Problem) -> Tone:
    return Tone.FAULT if problem.level is Level.ERROR else Tone.ADVICE


def _praise(praise: tuple[Praise, ...]) -> list[str]:
    """All of it in a line or two."""
    said = "; ".join(one.short for one in praise)
    return wrap(said, _WIDE, initial_indent=_GOOD, subsequent_indent=" " * len(_GOOD))
