"""The ledger's figures of cloth: cells, sizes, cuts, pieces, and the place on the finishing piece."""

from collections.abc import Iterator
from dataclasses import fields

from packetgen.model import ClothOption, FinishingPiece, Magnets, Outline
from packetgen.reckon.cutting import FAT_QUARTER
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.fit import TIGHT_MM
from packetgen.reckon.magnets import AGAINST_SLIDING, FEWEST, THROUGH_CLOTH, MagnetPlan
from packetgen.reckon.mounting import SEAM_MM, cloth_margin_mm, trim_corner_mm
from packetgen.reckon.outline import bounds
from packetgen.reckon.sizes import FRAMING_MARGIN_MM, Size, cell_mm
from packetgen.render.ledger_entry import Entry
from packetgen.units import MM_PER_INCH, up_to_step

Of = dict[str, object]


def cloth_entries(figures: Figures, piece: FinishingPiece) -> Iterator[Entry]:
    for on in figures.cloths:
        of = of_cloth(on.option)
        count = on.option.cloth.count_per_inch
        yield from _sizes(figures, of, count, on.option.over, on.finished, on.framing_cut)
        yield from _mounting(of, on, piece)
        yield from _fit(of, on, piece)
    yield from _magnets(figures.magnets, piece.magnets)
    for row in figures.usual_sizes:
        of = {"weave": row.weave, "count_per_inch": row.count_per_inch, "over": row.over}
        yield from _sizes(figures, of, row.count_per_inch, row.over, row.finished, row.framing_cut)


def of_cloth(option: ClothOption) -> Of:
    return {"cloth": option.cloth.id, "cloth_colour": option.colour.name, "over": option.over}


def _sizes(
    figures: Figures, of: Of, count: float, over: int, finished: Size, cut: Size
) -> Iterator[Entry]:
    cell = cell_mm(count, over)
    yield Entry("cell", of, cell, "mm", "cell", {"count_per_inch": count, "over": over})
    grid = figures.pattern.grid
    for side, stitches, done in (
        ("width", grid.width, finished.width_mm),
        ("height", grid.height, finished.height_mm),
    ):
        inputs = {"stitches": stitches, "cell_mm": cell}
        yield Entry(f"finished {side}", of, done, "mm", "finished size", inputs)
    yield from _cut("cut for framing", of, finished, cut, FRAMING_MARGIN_MM)


def _cut(name: str, of: Of, finished: Size, cut: Size, margin_mm: float) -> Iterator[Entry]:
    """A cut to the hair, and as it is printed in inches and centimetres."""
    yield from _grown(name, of, finished, cut, margin_mm)
    for side, mm in (("width", cut.width_mm), ("height", cut.height_mm)):
        inputs, eighth = {"length_mm": mm}, up_to_step(mm / MM_PER_INCH, 1 / 8)
        yield Entry(f"{name}, {side}", of, eighth, "in", "eighths of an inch", inputs)
        half = up_to_step(mm / 10, 0.5)
        yield Entry(f"{name}, {side}", of, half, "cm", "half centimetres", inputs)


def _grown(name: str, of: Of, inner: Size, outer: Size, margin_mm: float) -> Iterator[Entry]:
    for side, length, value in (
        ("width", inner.width_mm, outer.width_mm),
        ("height", inner.height_mm, outer.height_mm),
    ):
        inputs = {"length_mm": length, "margin_mm": margin_mm}
        yield Entry(f"{name}, {side}", of, value, "mm", "with margin", inputs)


def _mounting(of: Of, on: OnCloth, piece: FinishingPiece) -> Iterator[Entry]:
    mounting, card = on.mounting, on.mounting.card
    yield from _cut(
        "cut for the finishing piece", of, on.finished, mounting.cloth, cloth_margin_mm(piece)
    )
    yield from _grown("mounting card", of, on.finished, card, piece.border_mm)
    yield from _grown("wadding", of, card, mounting.wadding, -piece.wadding_inset_mm)
    yield from _grown("backing", of, card, mounting.backing, SEAM_MM)
    if piece.trim.kind:
        inputs = {
            "width_mm": card.width_mm,
            "height_mm": card.height_mm,
            "ratio": piece.trim.ratio,
            "corner_mm": trim_corner_mm(piece.trim),
            "overlap_mm": piece.trim.overlap_mm,
        }
        yield Entry("trim", of, mounting.trim_mm, "mm", "trim", inputs)
    yield from _weight(of, on)
    for name, pieces, cut in (
        ("pieces for framing", on.framing_pieces, on.framing_cut),
        ("pieces for the finishing piece", on.finishing_pieces, mounting.cloth),
    ):
        inputs = {
            "cloth_width_mm": FAT_QUARTER.width_mm,
            "cloth_height_mm": FAT_QUARTER.height_mm,
            "piece_width_mm": cut.width_mm,
            "piece_height_mm": cut.height_mm,
        }
        yield Entry(f"{name} from a fat quarter", of, pieces, "pieces", "pieces from cloth", inputs)


def _weight(of: Of, on: OnCloth) -> Iterator[Entry]:
    """Of the mounted design, without its washers."""
    parts = tuple(getattr(on.weight, field.name) for field in fields(on.weight))
    yield Entry("mounted weight", of, on.weight.total_g, "g", "sum", {"parts": parts})


def _magnets(plan: MagnetPlan, magnets: Magnets) -> Iterator[Entry]:
    """How many, and where on the panel: the same for all designs of the series. None without room."""
    if magnets.holds_g is not None and plan.spots:
        inputs = {
            "heaviest_g": plan.heaviest_g,
            "holds_g": magnets.holds_g,
            "through_cloth": THROUGH_CLOTH,
            "against_sliding": AGAINST_SLIDING,
        }
        yield Entry("magnets by weight", {}, plan.by_weight, "pieces", "magnets by weight", inputs)
    if plan.spots:
        inputs = {"fewest": FEWEST, "asked": magnets.pairs, "by_weight": plan.by_weight}
        yield Entry("magnets", {}, plan.pairs, "pieces", "the most of these", inputs)
    ends = tuple(zip(plan.first_mm, plan.last_mm))
    for number, (spot, at) in enumerate(zip(plan.spots, plan.centres_mm), 1):
        for way, steps, (start, end), value in zip(
            ("across", "down"), (spot.across, spot.down), ends, at
        ):
            inputs = {"first_mm": start, "last_mm": end, "step": steps[0], "steps": steps[1]}
            of = {"magnet": number}
            yield Entry(f"magnet on the panel, {way}", of, value, "mm", "evenly between", inputs)


def _fit(of: Of, on: OnCloth, piece: FinishingPiece) -> Iterator[Entry]:
    fit, (left, top, right, bottom) = on.fit, bounds(piece.panel)
    trim_mm, covered = piece.trim.width_mm, fit.covered
    at_x, at_y = (at - trim_mm for at in fit.at_mm)  # where the trim begins
    yield from _grown("card with its trim", of, fit.card, covered, trim_mm)
    inputs: Of
    for name, value, at, edge in (
        ("free at the left", fit.reveal_left_mm, at_x, left),
        ("free above", fit.reveal_above_mm, at_y, top),
    ):
        yield Entry(name, of, value, "mm", "free before", {"at_mm": at, "edge_mm": edge})
    for name, value, at, edge, side in (
        ("free at the right", fit.reveal_right_mm, at_x, right, covered.width_mm),
        ("free below", fit.reveal_below_mm, at_y, bottom, covered.height_mm),
    ):
        inputs = {"at_mm": at, "edge_mm": edge, "covered_mm": side}
        yield Entry(name, of, value, "mm", "free after", inputs)
    for name, most, panel_mm in (
        ("most stitches across", fit.most_stitches_wide, right - left),
        ("most stitches down", fit.most_stitches_high, bottom - top),
    ):
        inputs = {
            "panel_mm": panel_mm,
            "border_mm": piece.border_mm,
            "trim_mm": trim_mm,
            "cell_mm": on.cell_mm,
        }
        yield Entry(name, of, most, "stitches", "most stitches", inputs)
    free = (
        fit.reveal_left_mm,
        fit.reveal_right_mm,
        fit.reveal_above_mm,
        fit.reveal_below_mm,
    )
    keep_outs: list[Outline] = [keep_out.outline for keep_out in piece.keep_outs]
    inputs = {
        "panel": piece.panel,
        "keep_outs": keep_outs,
        "at_mm": (at_x, at_y),
        "covered_mm": (covered.width_mm, covered.height_mm),
        "free_mm": free,
        "tight_mm": TIGHT_MM,
    }
    yield Entry("fit", of, fit.verdict.value, "word", "verdict", inputs)
