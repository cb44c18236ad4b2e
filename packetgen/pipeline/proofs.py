"""From an author's folder to figures: what every command begins with. load → model → reckon."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from packetgen.chart.vision_check import complain_of_likeness
from packetgen.diagnostics import Problem, Problems
from packetgen.load.asides import asides_in
from packetgen.load.content import load_content
from packetgen.load.examples import example_charts
from packetgen.load.titles import titles_in
from packetgen.model import LaidAside, Series, ThreadCard
from packetgen.nouns import counted
from packetgen.pipeline.stages import stages
from packetgen.reckon.bead_fit import complain_of_beads
from packetgen.reckon.contrast import complain_of_contrast
from packetgen.reckon.conversions import complain_of_conversions
from packetgen.reckon.coverage import complain_of_coverage
from packetgen.reckon.coverage_of_sets import complain_of_sets
from packetgen.reckon.doubted import without_examples, without_what_follows
from packetgen.reckon.figures import Figures
from packetgen.reckon.isolated import complain_of_isolated
from packetgen.reckon.laid_aside import asides_of, parted
from packetgen.reckon.letters import complain_of_letters
from packetgen.reckon.matching import with_matches
from packetgen.reckon.series_checks import complain_of_series
from packetgen.reckon.series_magnets import complain_of_magnets, series_figures
from packetgen.reckon.small_tins import complain_of_small_tins
from packetgen.reckon.unfit import complain_of_unfit


@dataclass(frozen=True)
class Reckoned:
    """A series with the figures of its patterns, in the same order."""

    series: Series
    figures: tuple[Figures, ...]


@dataclass(frozen=True)
class Proof:
    """What checking found. `reckoned` is empty when the content could not be read."""

    reckoned: tuple[Reckoned, ...]
    problems: Problems
    thread_cards: Mapping[str, ThreadCard] = field(default_factory=dict)  # by id, used or not
    examples: tuple[Problem, ...] = ()  # that are left in the files: for a review
    aside: tuple[Problem, ...] = ()  # advice that the author has laid aside
    asides: Mapping[str, tuple[LaidAside, ...]] = field(default_factory=dict)  # by folder
    titles: Mapping[str, str] = field(default_factory=dict)  # by folder, where nothing is reckoned

    @property
    def sound(self) -> bool:
        return not self.problems.errors


def proof(
    content_folder: Path,
    only: frozenset[str] | None = None,
    instead: Mapping[str, bytes] | None = None,
) -> Proof:
    """Load and reckon everything, or the series whose ids are in `only`; report every problem; write nothing.

    The files of `instead`, by path, are taken as they are there and not as the disk has them.
    """
    ended = stages()
    content, problems = load_content(content_folder, only, instead)
    if content is None:
        ended(f"read: {counted(len(problems.errors), 'thing')} to mend")
        asides = asides_in(content_folder, instead)
        left = parted(problems, asides)
        titles = titles_in(content_folder, instead)
        return Proof((), left.told, aside=left.aside, asides=asides, titles=titles)
    patterns = sum(len(series.patterns) for series in content.series)
    ended(f"read: {counted(patterns, 'pattern')}, {len(content.series)} series")
    reckoned = tuple(_reckon(_matched(series, problems)) for series in content.series)
    ended("reckoned")
    for each in reckoned:
        complain_of_unfit(each.figures, each.series, problems)
        complain_of_magnets(each.figures, each.series, problems)
        complain_of_series(each.series, problems)
        complain_of_small_tins(each.series.finish, problems)
        complain_of_contrast(each.series, problems)
        complain_of_letters(each.series, problems)
        works = [(figure.pattern, figure.works) for figure in each.figures]
        told_sets = complain_of_sets(each.series, works, problems)
        for figure in each.figures:
            counts = {work.line.mark: work.total_stitches for work in figure.works}
            complain_of_likeness(figure.pattern, counts, problems)
            complain_of_coverage(figure.pattern, figure.works, problems, told_sets)
            complain_of_beads(figure.pattern, problems)
            complain_of_isolated(figure.pattern, figure.isolated, problems)
            complain_of_conversions(figure.pattern, problems)
    asides = asides_of(content.series)
    left = parted(problems, asides)
    told = without_what_follows(left.told, content.series)
    told = without_examples(told, example_charts(content.examples))
    errors = len(problems.errors)
    ended(f"checked: {counted(errors, 'thing')} to mend, {len(told) - errors} to think of")
    return Proof(reckoned, told, content.thread_cards, content.examples, left.aside, asides)


def with_photos_told(checked: Proof) -> Proof:
    """The proof with advice on photographs that give a sold chart away: a build publishes them."""
    from packetgen.render.photo_told import complain_of_photo_told

    found = Problems()
    for each in checked.reckoned:
        for figures in each.figures:
            complain_of_photo_told(figures.pattern, found)
    return with_more(checked, found)


def with_more(checked: Proof, found: Problems) -> Proof:
    """The proof with what was found besides, but for what the author has laid aside."""
    told = Problems()
    left = parted(found, checked.asides)
    told.take((*checked.problems, *left.told))
    return replace(checked, problems=told, aside=(*checked.aside, *left.aside))


def _matched(series: Series, problems: Problems) -> Series:
    patterns = tuple(with_matches(pattern, problems) for pattern in series.patterns)
    return replace(series, patterns=patterns)


def _reckon(series: Series) -> Reckoned:
    return Reckoned(series, series_figures(series))
