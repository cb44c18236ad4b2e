"""The ledger's figures of stitches and thread: counts, patches, lengths, and units to buy."""

from collections import Counter
from collections.abc import Iterator, Mapping

from packetgen.model import ThreadSet
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.thread import Need, Work
from packetgen.reckon.workings import Step, step_strands, steps
from packetgen.render.ledger_cloth import of_cloth
from packetgen.render.ledger_entry import Entry

Of = dict[str, object]
OneStrand = Mapping[tuple[str, str, str], float]  # mark, kind, way → metres
THREE_WAYS = ("careful", "usual", "generous")


def thread_entries(figures: Figures) -> Iterator[Entry]:
    yield from _stitches(figures)
    for on in figures.cloths:
        of = of_cloth(on.option)
        found = {work.line.mark: tuple(steps(work, on.cell_mm)) for work in figures.works}
        every = [step for of_mark in found.values() for step in of_mark]
        one_strand = {
            (step.mark, step.kind, way): step.strand_m(ease, figures.assumptions)
            for step in every
            for way, ease, _ in ways(figures)
        }
        for step in every:
            yield from _step(figures, of, step, one_strand)
        for thread_set, needs in on.needs:
            yield from _bought(figures, on, thread_set, needs, found, one_strand)


def _stitches(figures: Figures) -> Iterator[Entry]:
    pattern = figures.pattern
    in_chart = Counter(mark for row in pattern.grid.rows for mark in row)
    in_close_ups = Counter((one.mark, one.stitch) for one in pattern.fractions)
    for work in figures.works:
        mark = work.line.mark
        for stitch, number in work.stitches.items():
            of: Of = {"mark": mark, "kind": stitch}
            inputs: Of = {
                "in_chart": in_chart[mark] if stitch is work.line.stitch else 0,
                "in_close_ups": in_close_ups[mark, stitch],
            }
            yield Entry("stitches", of, number, "stitches", "in chart and close-ups", inputs)
        # Patches are the same on every cloth.
        for step in steps(work, 1.0):
            of, groups = {"mark": mark, "kind": step.kind}, step.groups
            number = sum(times for _, _, times in groups)
            inputs = {"groups": groups}
            yield Entry("patches", of, number, "patches", "number of groups", inputs)
    parts = {"parts": [work.total_stitches for work in figures.works]}
    yield Entry("stitches in all", {}, figures.stitches, "stitches", "sum", parts)


def step_inputs(step: Step) -> dict[str, object]:
    return {"groups": step.groups, "each_mm": step.each_mm, "travel_mm": step.travel_mm}


def ways(figures: Figures) -> Iterator[tuple[str, float, dict[str, object]]]:
    """Each way of reckoning with its ease, and what is assumed as inputs."""
    assumed = figures.assumptions
    for way in THREE_WAYS:
        ease = getattr(assumed.ease, way)
        inputs = {"ease": ease, "needleful_mm": assumed.needleful_mm, "tail_mm": assumed.tail_mm}
        yield way, ease, inputs


def _step(figures: Figures, of: Of, step: Step, one_strand: OneStrand) -> Iterator[Entry]:
    of = of | {"mark": step.mark, "kind": step.kind}
    inputs = step_inputs(step)
    yield Entry("worked thread", of, step.worked_mm, "mm", "worked thread", inputs)
    for way, _, assumed in ways(figures):
        length_m = one_strand[step.mark, step.kind, way]
        yield Entry("one strand", of | {"way": way}, length_m, "m", "one strand", inputs | assumed)


def _bought(
    figures: Figures,
    on: OnCloth,
    thread_set: ThreadSet,
    needs: tuple[Need, ...],
    found: dict[str, tuple[Step, ...]],
    one_strand: OneStrand,
) -> Iterator[Entry]:
    for need in needs:
        of = of_cloth(on.option) | {
            "set": thread_set.id,
            "card": need.card.id,
            "colour": need.colour.number,
        }
        parts = tuple(_parts(figures.works, need, thread_set, found))
        for way in THREE_WAYS:
            listed = [
                {
                    "mark": step.mark,
                    "kind": step.kind,
                    "one_strand_m": one_strand[step.mark, step.kind, way],
                    "strands": strands,
                    "colours_in_needle": colours,
                }
                for step, strands, colours in parts
            ]
            length_m = getattr(need.strand, f"{way}_m")
            inputs: Of = {"parts": listed}
            yield Entry("strand", of | {"way": way}, length_m, "m", "strand of a colour", inputs)
        inputs = {
            "strand_m": need.strand.generous_m,
            "length_m": need.card.length_m,
            "strands": need.card.strands,
        }
        yield Entry("to buy", of, need.units, "units", "units to buy", inputs)


def _parts(
    works: tuple[Work, ...],
    need: Need,
    thread_set: ThreadSet,
    found: dict[str, tuple[Step, ...]],
) -> Iterator[tuple[Step, int, int]]:
    """Every step in which the thread is worked: once for each time that it is in the needle."""
    for work in works:
        needle = work.line.threads[thread_set.id]
        for card, colour in zip(work.line.cards_in(thread_set), needle):
            if (card.id, colour.number) == (need.card.id, need.colour.number):
                for step in found[work.line.mark]:
                    yield step, step_strands(step, work, thread_set), len(needle)
