"""The ledger's other figures: beads, paint, cover, time, difficulty and stitches that stand alone."""

from collections import Counter
from collections.abc import Iterator

from packetgen.model import FinishingPiece, Pace, Stitch, ThreadSet
from packetgen.reckon import working_time as time
from packetgen.reckon.bead_fit import LOOSE_BELOW
from packetgen.reckon.coverage import (
    CROWDED_ABOVE,
    LAYER_MM,
    PACKED,
    THIN_BELOW,
    Coverage,
    section_mm2,
)
from packetgen.reckon.figures import FEWEST_SPARE_BEADS, SPARE_BEADS, BeadNeed, Figures
from packetgen.reckon.isolated import Window, isolated_cells
from packetgen.reckon.outline import area_mm2, perimeter_mm
from packetgen.reckon.paint import PartPaint, edges_painted, faces_painted, loss_of
from packetgen.reckon.sizes import cell_mm
from packetgen.reckon.stitches import path_length
from packetgen.reckon.workings import bead_step
from packetgen.render.ledger_cloth import of_cloth
from packetgen.render.ledger_entry import Entry
from packetgen.render.ledger_thread import step_inputs, ways

Of = dict[str, object]


def bead_entries(figures: Figures) -> Iterator[Entry]:
    for need in figures.beads:
        card, colour = need.sample.card, need.sample.colour
        of: Of = {"card": card.id, "colour": colour.number}
        beads = tuple(bead for bead in figures.pattern.beads if bead.kind == need.sample.kind)
        at = [bead.at for bead in beads]
        yield Entry("beads sewn", of, need.sewn, "beads", "places", {"at": at})
        inputs: Of = {"sewn": need.sewn, "share": SPARE_BEADS, "fewest": FEWEST_SPARE_BEADS}
        yield Entry("with spares", of, need.with_spares, "beads", "with spares", inputs)
        inputs = {"amount": need.with_spares, "in_one": card.per_packet}
        yield Entry("packets", of, need.packets, "packets", "whole packs", inputs)
        step = bead_step(beads, figures.assumptions)
        for way, _, assumed in ways(figures):
            length_m = getattr(need.strand, f"{way}_m")
            inputs = step_inputs(step) | assumed
            yield Entry("to sew beads on", of | {"way": way}, length_m, "m", "one strand", inputs)
        yield from _bead_fit(of, need)


def _bead_fit(of: Of, need: BeadNeed) -> Iterator[Entry]:
    for fit in need.fits:
        for option in fit.cloths:
            inputs = {
                "size_mm": need.sample.card.size_mm,
                "cell_mm": cell_mm(option.cloth.count_per_inch, option.over),
                "loose_below": LOOSE_BELOW,
            }
            on = of | of_cloth(option)
            yield Entry("bead on its stitch", on, fit.word, "word", "bead on cell", inputs)


def paint_entries(figures: Figures) -> Iterator[Entry]:
    for need in figures.paints:
        of: Of = {"paint": need.paint.name}
        for painted in need.parts:
            faces = painted.coating.faces
            yield from _part(of | {"part": painted.part.name, "faces": faces}, painted)
        for by in need.ways:
            inputs = {
                "parts": [(painted.area_mm2, painted.coating.coats) for painted in need.parts],
                "covers_m2_per_litre": by.way.covers_m2_per_litre,
                "loss": loss_of(by.way),
            }
            on = of | {"put_on_with": by.way.put_on_with}
            yield Entry("paint", on, by.volume_ml, "ml", "paint", inputs)
            inputs = {"amount": by.volume_ml, "in_one": by.way.tin_ml}
            yield Entry("tins", on, by.tins, "tins", "whole packs", inputs)


def _part(of: Of, painted: PartPaint) -> Iterator[Entry]:
    part = painted.part
    face, round_it = area_mm2(part.outline), perimeter_mm(part.outline)
    outline = {"outline": part.outline}
    yield Entry("face", of, face, "mm2", "area", outline)
    yield Entry("edge", of, round_it, "mm", "perimeter", outline)
    inputs = {
        "pieces": part.pieces,
        "face_mm2": face,
        "perimeter_mm": round_it,
        "thickness_mm": part.thickness_mm,
        "faces": faces_painted(painted.coating.faces),
        "edges": int(edges_painted(painted.coating.faces)),
    }
    yield Entry("painted area", of, painted.area_mm2, "mm2", "painted area", inputs)


def cover_entries(figures: Figures) -> Iterator[Entry]:
    sets = figures.pattern.thread_sets
    for card in {one.card.id: one.card for one in sets}.values():
        section = section_mm2(card)
        # What the fibre weighs is the card's material looked up; the rest of the formula is open here.
        fibre = card.tex / 1000 / section / PACKED
        inputs = {"tex": card.tex, "fibre_g_per_cm3": fibre, "packed": PACKED}
        yield Entry("section of a strand", {"card": card.id}, section, "mm2", "section", inputs)
    for on in figures.cloths:
        for thread_set, cover in zip(sets, on.coverage):
            of = of_cloth(on.option) | {"set": thread_set.id}
            yield from _cover(of, thread_set, cover, on.cell_mm)
    for at in figures.coverage:
        for thread_set, cover in zip(sets, at.by_set):
            of = {"stitches_per_inch": at.stitches_per_inch, "set": thread_set.id}
            yield from _cover(of, thread_set, cover, cell_mm(at.stitches_per_inch, 1))


def _cover(of: Of, thread_set: ThreadSet, cover: Coverage, cell: float) -> Iterator[Entry]:
    inputs = {
        "section_mm2": section_mm2(thread_set.card),
        "strands": 1 if thread_set.card.braid else thread_set.strands,
        "layer_mm": LAYER_MM,
        "cell_mm": cell,
    }
    yield Entry("cover", of, cover.share, "share", "cover", inputs)
    limits = {"share": cover.share, "thin_below": THIN_BELOW, "crowded_above": CROWDED_ABOVE}
    yield Entry("cover in words", of, cover.word, "word", "cover in words", limits)


def time_entries(figures: Figures, pace: Pace) -> Iterator[Entry]:
    pattern, found = figures.pattern, figures.time
    by_kind: Counter[Stitch] = Counter()
    for work in figures.works:
        by_kind.update(work.stitches)
    backstitch = sum(path_length(line.points) for line in pattern.lines if not line.long)
    weighed: list[tuple[float, float]] = [
        (time.WEIGHTS[stitch], number) for stitch, number in by_kind.items()
    ]
    weighed += [
        (time.BACKSTITCH_A_CELL, backstitch),
        (time.LONG_STITCH, sum(line.long for line in pattern.lines)),
        (time.DAISY, len(pattern.daisies)),
        (time.KNOT, len(pattern.knots)),
        (time.BEAD, len(pattern.beads)),
    ]
    inputs: Of = {"parts": weighed}
    yield Entry("stitches as time counts them", {}, found.counted, "stitches", "weighed", inputs)
    for way in ("slow", "usual", "quick"):
        inputs = {"stitches": found.counted, "stitches_an_hour": getattr(pace, way)}
        hours = getattr(found, f"{way}_h")
        yield Entry("working time", {"way": way}, hours, "h", "hours", inputs)
    yield from _difficulty(figures)


def _difficulty(figures: Figures) -> Iterator[Entry]:
    found = figures.difficulty
    measures = [
        (found.colours, *time.COLOURS.limits),
        (found.fractional_share, *time.FRACTIONS.limits),
        (found.isolated_share, *time.ALONE.limits),
    ]
    yield Entry(
        "points of difficulty", {}, found.points, "points", "points", {"measures": measures}
    )
    inputs = {"points": found.points, "words": time.WORDS}
    yield Entry("difficulty", {}, found.word, "word", "word for points", inputs)


def isolated_entries(figures: Figures) -> Iterator[Entry]:
    found, cells = figures.isolated, tuple(isolated_cells(figures.pattern))
    rows = Counter(y for _, y in cells)
    inputs: Of = {"parts": [rows[y] for y in range(1, figures.pattern.grid.height + 1)]}
    yield Entry("stitches alone", {}, found.alone, "stitches", "sum", inputs)
    inputs = {"part": found.alone, "whole": found.stitches}
    yield Entry("share alone", {}, found.share, "share", "share", inputs)
    for window in found.worst:
        yield _window(window, cells)


def _window(window: Window, cells: tuple[tuple[int, int], ...]) -> Entry:
    rows = Counter(y for x, y in cells if window.first_column <= x <= window.last_column)
    of: Of = {
        "columns": (window.first_column, window.last_column),
        "rows": (window.first_row, window.last_row),
    }
    parts = [rows[y] for y in range(window.first_row, window.last_row + 1)]
    return Entry("stitches alone here", of, window.alone, "stitches", "sum", {"parts": parts})


def besides_entries(figures: Figures, piece: FinishingPiece, pace: Pace) -> Iterator[Entry]:
    yield from bead_entries(figures)
    yield from paint_entries(figures)
    yield from cover_entries(figures)
    yield from time_entries(figures, pace)
    yield from isolated_entries(figures)
