"""All figures of a pattern and of a series, gathered for the pages that print them."""

from dataclasses import dataclass

from packetgen.model import (
    Assumptions,
    Bead,
    ClothOption,
    FinishingPiece,
    Pace,
    Pattern,
    ThreadSet,
)
from packetgen.reckon.bead_fit import BeadFit, bead_fits
from packetgen.reckon.coverage import AtCount, Coverage, coverage_at_counts, set_coverage
from packetgen.reckon.cutting import FAT_QUARTER, as_cut, pieces_from
from packetgen.reckon.fit import Fit, Verdict, fit
from packetgen.reckon.isolated import Isolated, isolated
from packetgen.reckon.magnets import Card, MagnetPlan, card_on_panel, plan_for_most
from packetgen.reckon.mounting import Mounting, mounting
from packetgen.reckon.paint import Coat, PaintNeed, order_of_work, paint_needs
from packetgen.reckon.sizes import (
    FRAMING_MARGIN_MM,
    Size,
    UsualSize,
    cell_mm,
    finished_size,
    usual_sizes,
)
from packetgen.reckon.thread import Lengths, Need, Work, bead_lengths, needs, work_of, worked_of
from packetgen.reckon.weighing import Weight, washers_g, weight
from packetgen.reckon.working_time import Difficulty, WorkingTime, difficulty, working_time
from packetgen.units import up_to_step

# Spare beads: one in ten, never fewer than five: common practice, no source.
SPARE_BEADS, FEWEST_SPARE_BEADS = 0.10, 5


_PACE, _USUAL = Pace(), Assumptions()


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
    framing_pieces: int  # cuts for framing that one fat quarter gives
    finishing_pieces: int  # and cuts for the finishing piece
    coverage: tuple[Coverage, ...]  # of full crosses; one a thread set
    weight: Weight  # mounted, in the heaviest of the thread sets
    card: Card  # as it lies on the panel


@dataclass(frozen=True)
class BeadNeed:
    sample: Bead  # card and colour
    sewn: int
    with_spares: int
    packets: int
    strand: Lengths  # to sew them on
    fits: tuple[BeadFit, ...]


@dataclass(frozen=True)
class Figures:
    pattern: Pattern
    works: tuple[Work, ...]
    cloths: tuple[OnCloth, ...]  # in the author's order; the first is the model's
    usual_sizes: tuple[UsualSize, ...]
    beads: tuple[BeadNeed, ...]
    paints: tuple[PaintNeed, ...]
    coats: tuple[Coat, ...]  # of all paints, in the order of work
    coverage: tuple[AtCount, ...]
    isolated: Isolated
    time: WorkingTime
    difficulty: Difficulty
    assumptions: Assumptions  # that all thread was reckoned with
    magnets: MagnetPlan  # for this pattern alone, or for its whole series

    @property
    def by_magnets(self) -> tuple[OnCloth, ...]:
        """The cloths on which the card hangs by the magnets."""
        return tuple(on for on in self.cloths if self.magnets.serves(on.card))

    @property
    def bunched(self) -> tuple[OnCloth, ...]:
        """Those of them on which the magnets hold the middle of the card and not its corners."""
        return tuple(on for on in self.by_magnets if any(self.magnets.drawn_in(on.card)))

    @property
    def without_magnets(self) -> tuple[OnCloth, ...]:
        """Those on which it fits the panel and has no room for the magnets; none where none are wanted."""
        return tuple(
            on
            for on in self.cloths
            if self.magnets.pairs
            and on.fit.verdict is not Verdict.DOES_NOT_FIT
            and not self.magnets.serves(on.card)
        )

    @property
    def stitches(self) -> int:
        """Stitches in cells, of every kind and colour."""
        return sum(work.total_stitches for work in self.works)


def figures(
    pattern: Pattern,
    piece: FinishingPiece,
    pace: Pace = _PACE,
    assumptions: Assumptions = _USUAL,
) -> Figures:
    """Reckon one pattern. Complaints about what does not fit are `complain`'s."""
    works = work_of(pattern, assumptions)
    alone = isolated(pattern)
    cloths = tuple(
        _on_cloth(pattern, works, option, piece, assumptions) for option in pattern.cloths
    )
    return Figures(
        pattern,
        works,
        cloths,
        usual_sizes(pattern),
        _bead_needs(pattern, assumptions),
        paint_needs(piece),
        order_of_work(piece),
        coverage_at_counts(pattern),
        alone,
        working_time(pattern, works, pace),
        difficulty(pattern, works, alone),
        assumptions,
        plan_for_most(cards_on_panel(cloths), piece.magnets),
    )


def cards_on_panel(cloths: tuple[OnCloth, ...]) -> tuple[Card, ...]:
    """The mounting cards of a design: of every cloth on which it fits the panel."""
    return tuple(on.card for on in cloths if on.fit.verdict is not Verdict.DOES_NOT_FIT)


def _on_cloth(
    pattern: Pattern,
    works: tuple[Work, ...],
    option: ClothOption,
    piece: FinishingPiece,
    assumptions: Assumptions,
) -> OnCloth:
    cell = cell_mm(option.cloth.count_per_inch, option.over)
    finished = finished_size(pattern.grid.width, pattern.grid.height, cell)
    worked = worked_of(works, cell, assumptions)
    framing_cut, mounted = finished.grown(FRAMING_MARGIN_MM), mounting(finished, piece)
    laid = fit(finished, cell, piece)
    threads = tuple((s, needs(worked, s)) for s in pattern.thread_sets)
    weights = (weight(mounted, needed, pattern.beads) for _, needed in threads)
    heaviest = max(weights, key=lambda one: one.total_g)
    return OnCloth(
        option,
        cell,
        finished,
        framing_cut,
        laid,
        mounted,
        threads,
        framing_pieces=pieces_from(FAT_QUARTER, as_cut(framing_cut)),
        finishing_pieces=pieces_from(FAT_QUARTER, as_cut(mounted.cloth)),
        coverage=tuple(set_coverage(s, cell) for s in pattern.thread_sets),
        weight=heaviest,
        card=card_on_panel(laid, heaviest.total_g + washers_g(piece.magnets)),
    )


def beads_with_spares(sewn: int) -> int:
    """One in ten more, and never fewer than five."""
    return sewn + max(FEWEST_SPARE_BEADS, round(up_to_step(sewn * SPARE_BEADS, 1)))


def _bead_needs(pattern: Pattern, assumptions: Assumptions) -> tuple[BeadNeed, ...]:
    groups: dict[tuple[str, str], list[Bead]] = {}
    for bead in pattern.beads:
        groups.setdefault(bead.kind, []).append(bead)
    result = []
    for beads in groups.values():
        total = beads_with_spares(len(beads))
        packets = round(up_to_step(total / beads[0].card.per_packet, 1))
        fits = bead_fits(beads[0].card.size_mm, pattern.cloths)
        strand = bead_lengths(tuple(beads), assumptions)
        result.append(BeadNeed(beads[0], len(beads), total, packets, strand, fits))
    return tuple(result)
