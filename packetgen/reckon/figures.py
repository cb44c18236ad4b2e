"""All figures of a pattern and of a series, gathered for the pages that print them."""

from dataclasses import dataclass

from packetgen.diagnostics import Problems
from packetgen.model import Bead, ClothOption, FinishingPiece, Pattern, Series, ThreadSet
from packetgen.reckon.finishing import Mounting, PaintNeed, mounting, paint_needs
from packetgen.reckon.fit import Fit, Verdict, fit
from packetgen.reckon.sizes import (
    FRAMING_MARGIN_MM,
    Size,
    UsualSize,
    cell_mm,
    finished_size,
    usual_sizes,
)
from packetgen.reckon.thread import Lengths, Need, Work, bead_lengths, needs, work_of
from packetgen.units import inches, up_to_step

# Spare beads: one in ten, never fewer than five: common practice, no source.
SPARE_BEADS, FEWEST_SPARE_BEADS = 0.10, 5


@dataclass(frozen=True)
class OnCloth:
    """Everything that depends on the cloth option."""

    option: ClothOption
    cell_mm: float
    finished: Size
    framing_cut: Size
    fit: Fit
    mounting: Mounting
    needs: "tuple[tuple[ThreadSet, tuple[Need, ...]], ...]"  # one entry a thread set


@dataclass(frozen=True)
class BeadNeed:
    sample: Bead  # card and colour
    sewn: int
    with_spares: int
    packets: int
    strand: Lengths  # to sew them on


@dataclass(frozen=True)
class Figures:
    pattern: Pattern
    works: tuple[Work, ...]
    cloths: tuple[OnCloth, ...]  # in the author's order; the first is the model's
    usual_sizes: tuple[UsualSize, ...]
    beads: tuple[BeadNeed, ...]
    paints: tuple[PaintNeed, ...]

    @property
    def stitches(self) -> int:
        """Stitches in cells, of every kind and colour."""
        return sum(work.total_stitches for work in self.works)


def figures(pattern: Pattern, piece: FinishingPiece) -> Figures:
    """Reckon one pattern. Complaints about what does not fit are `complain`'s."""
    works = work_of(pattern)
    return Figures(
        pattern,
        works,
        tuple(_on_cloth(pattern, works, option, piece) for option in pattern.cloths),
        usual_sizes(pattern),
        _bead_needs(pattern),
        paint_needs(piece),
    )


def _on_cloth(
    pattern: Pattern, works: tuple[Work, ...], option: ClothOption, piece: FinishingPiece
) -> OnCloth:
    cell = cell_mm(option.cloth.count_per_inch, option.over)
    finished = finished_size(pattern.grid.width, pattern.grid.height, cell)
    return OnCloth(
        option,
        cell,
        finished,
        finished.grown(FRAMING_MARGIN_MM),
        fit(finished, cell, piece),
        mounting(finished, piece),
        tuple((s, needs(pattern, works, s, cell)) for s in pattern.thread_sets),
    )


def _bead_needs(pattern: Pattern) -> tuple[BeadNeed, ...]:
    groups: dict[tuple[str, str], list[Bead]] = {}
    for bead in pattern.beads:
        groups.setdefault((bead.card.id, bead.colour.number), []).append(bead)
    result = []
    for beads in groups.values():
        spare = max(FEWEST_SPARE_BEADS, round(up_to_step(len(beads) * SPARE_BEADS, 1)))
        total = len(beads) + spare
        packets = round(up_to_step(total / beads[0].card.per_packet, 1))
        result.append(BeadNeed(beads[0], len(beads), total, packets, bead_lengths(tuple(beads))))
    return tuple(result)


def complain(all_figures: tuple[Figures, ...], series: Series, problems: Problems) -> None:
    """Every design must fit the series' finishing piece on every cloth that is offered for it."""
    piece = series.finish
    for figure in all_figures:
        grid = figure.pattern.grid
        for on in figure.cloths:
            if on.fit.verdict is not Verdict.DOES_NOT_FIT:
                continue
            too_wide = max(0, grid.width - on.fit.most_stitches_wide)
            too_high = max(0, grid.height - on.fit.most_stitches_high)
            problems.add(
                on.option.place,
                "does-not-fit",
                title=figure.pattern.title,
                cloth=on.option.cloth.name,
                width=inches(on.fit.card.width_mm),
                height=inches(on.fit.card.height_mm),
                piece=piece.name,
                most=f"{on.fit.most_stitches_wide} × {on.fit.most_stitches_high}",
                excess=_excess(too_wide, too_high),
            )


def _excess(too_wide: int, too_high: int) -> str:
    """'6 stitches too wide and 2 too high'; a keep-out may be all that is in the way."""
    said = []
    if too_wide:
        said.append(f"{too_wide} stitches too wide")
    if too_high:
        said.append(f"{too_high} stitches too high")
    return " and ".join(said) or "in the way of a part that the panel must keep free"
