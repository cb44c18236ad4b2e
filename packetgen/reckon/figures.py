"""All figures of a pattern and of a series, gathered for the pages that print them."""

from dataclasses import dataclass, replace
from math import ceil

from packetgen.diagnostics import Problems
from packetgen.model import (
    Assumptions,
    Bead,
    ClothOption,
    FinishingPiece,
    Pace,
    Pattern,
    Series,
    ThreadSet,
)
from packetgen.model.extent import bare_margins
from packetgen.nouns import counted, listed
from packetgen.reckon.bead_fit import BeadFit, bead_fits
from packetgen.reckon.coverage import AtCount, Coverage, coverage_at_counts, set_coverage
from packetgen.reckon.cutting import FAT_QUARTER, as_cut, pieces_from
from packetgen.reckon.fit import Fit, Verdict, around_mm, fit, holds, room_for, too_many
from packetgen.reckon.isolated import Isolated, isolated
from packetgen.reckon.magnets import Card, MagnetPlan, card_on_panel, plan_for_most
from packetgen.reckon.mounting import Mounting, mounting
from packetgen.reckon.outline import bounds
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
from packetgen.units import inches, plain, up_to_step

# Spare beads: one in ten, never fewer than five: common practice, no source.
SPARE_BEADS, FEWEST_SPARE_BEADS = 0.10, 5


_PACE, _USUAL = Pace(), Assumptions()
# Said of a design that no narrower and no lower one helps.
_IN_THE_WAY = "in the way of a part that the panel must keep free"
_OTHER_WAYS = "offer a finer cloth, make the design smaller, or panel and parts larger in {file}"


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


def complain(all_figures: tuple[Figures, ...], series: Series, problems: Problems) -> None:
    """Every design must fit the series' finishing piece on every cloth that is offered for it."""
    piece = series.finish
    if (broad := _broad(piece)) and (without_room := _for_edge_alone(all_figures, piece)):
        around, across = (f"{plain(round(one, 2))} mm" for one in broad)
        problems.add(
            piece.edge_place or piece.place,
            "border-broad",
            around=around,
            across=across,
            number=without_room,
        )
        return
    for figure in all_figures:
        grid = figure.pattern.grid
        for on in figure.cloths:
            if on.fit.verdict is not Verdict.DOES_NOT_FIT:
                _complain_of_blocks(on.option, problems)
                continue
            ways = too_many((grid.width, grid.height), on.cell_mm, piece)
            # Of two ways the room of each; else as wide and as high as may be, or as near to it.
            most = [(grid.width - wide, grid.height - high) for wide, high in ways]
            if len(ways) < 2:
                most = [room_for(on.fit, on.cell_mm, piece)]
            problems.add(
                on.option.place,
                "does-not-fit",
                title=figure.pattern.title,
                cloth=on.option.cloth.name,
                size=_both(on.fit.covered),
                piece=piece.name,
                most=" or ".join(f"{wide} × {high}" for wide, high in most),
                excess=", or ".join(_excess(*way) for way in ways) or _IN_THE_WAY,
                way=_over_way(on.option)
                or _border_way(piece)
                or _bare_way(figure.pattern, on.cell_mm, piece)
                or _OTHER_WAYS.format(file=piece.place.path),
            )


def _complain_of_blocks(option: ClothOption, problems: Problems) -> None:
    """Advice on a choice of aida that a pattern works over several blocks, where the cloth's own file does not."""
    if option.over_blocks and option.over != option.cloth.over:
        problems.add(
            option.place, "over-rare", over=option.over, hint="take over out of this choice"
        )


def _over_way(option: ClothOption) -> str:
    """What to do where a stitch covers several blocks of aida."""
    return f"write over: 1, as usual on aida, and not {option.over}" if option.over_blocks else ""


def _both(size: Size) -> str:
    """In inches, and in mm as outlines are."""
    wide, high = (plain(ceil(10 * side - 1e-6) / 10) for side in (size.width_mm, size.height_mm))
    return f"{inches(size.width_mm)} × {inches(size.height_mm)} ({wide} × {high} mm)"


def _bare_way(pattern: Pattern, cell_mm: float, piece: FinishingPiece) -> str:
    """What to do where only the bare columns and rows at its edges are too many; '' where that is not so."""
    left, right, above, below = bare_margins(pattern)
    wide, high = pattern.grid.width - left - right, pattern.grid.height - above - below
    if not holds((wide, high), cell_mm, piece):
        return ""
    return (
        f"without its bare edges it is {wide} × {high} and fits: packetgen chart crop, or bring with --trim, "
        "takes them off"
    )


def _border_way(piece: FinishingPiece) -> str:
    """What to do where border and trim take more of the panel than they leave; '' where that is not so."""
    broad = _broad(piece)
    if not broad:
        return ""
    around, across = (plain(round(one, 2)) for one in broad)
    return f"border and trim take {around} of the panel's {across} mm: look at them in {piece.place.path}"


def _for_edge_alone(all_figures: tuple[Figures, ...], piece: FinishingPiece) -> str:
    """How many designs do not fit on one of their cloths, where without border and trim some of these would; ''
    otherwise."""
    bare = replace(piece, border_mm=0.0, trim=replace(piece.trim, width_mm=0.0))
    out = [
        (figure.pattern, on)
        for figure in all_figures
        for on in figure.cloths
        if on.fit.verdict is Verdict.DOES_NOT_FIT
    ]
    if not any(holds((of.grid.width, of.grid.height), on.cell_mm, bare) for of, on in out):
        return ""
    all_cuts = sum(len(figure.cloths) for figure in all_figures)
    if len(out) == all_cuts:
        return "no design of the series fits"
    titles = dict.fromkeys(of.title for of, _ in out)
    return f"{listed(tuple(titles)[:2])}{' and more' if len(titles) > 2 else ''} {'do' if len(titles) > 1 else 'does'} not fit"


def _broad(piece: FinishingPiece) -> tuple[float, float] | None:
    """What border and trim take of the panel's shorter side, and how long that is, in mm, where they take more
    than they leave."""
    left, top, right, bottom = bounds(piece.panel)
    across, around = min(right - left, bottom - top), 2 * around_mm(piece)
    return (around, across) if around > across / 2 else None


def _excess(too_wide: int, too_high: int) -> str:
    """(6, 2) → '6 stitches too wide and 2 stitches too high'."""
    sides = (too_wide, "too wide"), (too_high, "too high")
    return " and ".join(f"{counted(over, 'stitch')} {side}" for over, side in sides if over)
