"""An editor's review of a proof: more advice than a build gives, and what is well done."""

from packetgen.chart.review_symbols import complain_of_symbols, praise_of_symbols
from packetgen.diagnostics import Problems
from packetgen.load.examples import example_charts
from packetgen.pipeline.proofs import Proof, Reckoned
from packetgen.pipeline.stages import stages
from packetgen.reckon.bunched import bare_rows_to_spare, draws_magnets_in
from packetgen.reckon.doubted import without_examples, without_what_follows
from packetgen.reckon.laid_aside import complain_of_idle, parted, reasons
from packetgen.reckon.review import EXAMPLES, Praised, Review, folder_of, pattern_folder, review_of
from packetgen.reckon.review_buying import complain_of_little, complain_of_short
from packetgen.reckon.review_cloth import complain_of_cloths
from packetgen.reckon.review_colours import complain_of_alike, complain_of_one_name
from packetgen.reckon.review_edges import bare_edges, complain_of_bare_edges
from packetgen.reckon.review_praise import praise_of_pattern, praise_of_series
from packetgen.reckon.review_texts import (
    complain_of_names,
    complain_of_photo,
    complain_of_story,
    complain_of_unaddressed,
    complain_of_unsold,
)
from packetgen.reckon.review_unseen import complain_of_unseen
from packetgen.render.photo_told import complain_of_photo_told
from packetgen.render.proof_words import complain_of_words
from packetgen.starting.left_over import complain_of_example_lines

# While these are told, other advice may be gone only until they are mended.
_SLIPS = frozenset({"chart-copied", "strands-all", "count-other", "count-rare", "over-single"})


def review(checked: Proof) -> Review:
    """Everything that the proof found and an editor adds. The proof's own problems stay as they are."""
    ended = stages()
    problems = Problems()
    problems.take((*checked.problems, *checked.examples, *checked.aside))
    begun = {problem.place.path for problem in checked.examples if problem.code in EXAMPLES}
    for each in checked.reckoned:
        folder = f"{folder_of(each.series.place.path)}/"
        bunched = any(
            problem.code == "magnets-bunched" and problem.place.path.startswith(folder)
            for problem in checked.problems
        )
        _complain(each, bunched, problems)
        if each.series.finish.place.path not in begun:  # it will be another piece
            complain_of_unaddressed(each.series, problems)
    all_series = [each.series for each in checked.reckoned]
    left = parted(problems, checked.asides)
    told = without_what_follows(left.told, all_series)
    told = _bare_edges_first(without_examples(told, example_charts(checked.examples)))
    # Where a pattern is still the example, advice on the whole series may come again with her own.
    slips = {problem.place.path for problem in told if problem.code in _SLIPS}
    unfinished = {
        series.id
        for series in all_series
        if any(path.startswith(f"{folder_of(series.place.path)}/") for path in begun | slips)
    }
    complain_of_idle(all_series, left.aside, told, unfinished)
    chapters = review_of(
        [(each.series, each.figures, _praised(each, problems)) for each in checked.reckoned],
        told,
        reasons(all_series, left.aside),
        checked.titles,
    )
    ended("reviewed")
    return chapters


def _bare_edges_first(told: Problems) -> Problems:
    """Without the bare rows that are asked for to hold magnets apart, where others go first: how many, is known then."""
    series = {folder_of(folder_of(one.place.path)) for one in told if one.code == "edges-bare"}
    left = Problems()
    for one in told:
        if one.code != "magnets-bunched" or folder_of(folder_of(one.place.path)) not in series:
            left.take((one,))
    return left


def _complain(each: Reckoned, bunched: bool, problems: Problems) -> None:
    """`bunched` says whether bare rows are asked for that hold magnets apart: which others of the small designs are
    needed then, nobody can tell."""
    complain_of_little(each.figures, problems)
    bordered = [one.pattern for one in each.figures if any(bare_edges(one.pattern))]
    spare = bare_rows_to_spare(bordered, each.figures, each.series.finish)
    small = draws_magnets_in(each.figures) if bunched else frozenset()
    without_small = tuple(one for one in each.figures if one.pattern.id not in small)
    others = [pattern for pattern in bordered if pattern.id not in small]
    spare_anyhow = bare_rows_to_spare(others, without_small, each.series.finish)
    for figures in each.figures:
        complain_of_short(figures, problems)
        complain_of_alike(figures, problems)
        complain_of_one_name(figures, problems)
        complain_of_unseen(figures.pattern, problems)
        complain_of_symbols(figures, problems)
        in_vain = figures.pattern.id in spare and not problems.errors
        complain_of_cloths(figures, each.series.finish, in_vain, problems)
        unsure = bunched and figures.pattern.id not in spare_anyhow
        if not problems.errors and not unsure:  # beside a fault nobody can tell either
            needed = figures.pattern.id not in spare
            complain_of_bare_edges(figures.pattern, needed, problems, bunched)
        complain_of_story(figures.pattern, problems)
        if not complain_of_photo_told(figures.pattern, problems):
            complain_of_photo(figures.pattern, problems)
        complain_of_unsold(figures.pattern, problems)
        complain_of_example_lines(figures.pattern, problems)
    complain_of_names(each.series, problems)
    complain_of_words(each.series, each.figures, problems)


def _praised(each: Reckoned, problems: Problems) -> Praised:
    codes: dict[str, set[str]] = {}
    for problem in problems:
        codes.setdefault(folder_of(problem.place.path), set()).add(problem.code)
    of_series = folder_of(each.series.place.path)
    below = {
        code for folder, found in codes.items() if folder.startswith(of_series) for code in found
    }
    of_cards = codes.get("", set())
    of_sets = (of_cards | codes.get(of_series, set())) & {"coverage-everywhere"}
    return Praised(
        {
            figures.pattern.id: (
                *praise_of_pattern(
                    figures,
                    each.series,
                    of_sets | codes.get(pattern_folder(figures.pattern), set()),
                ),
                *praise_of_symbols(figures),
            )
            for figures in each.figures
        },
        praise_of_series(each.series, each.figures, below | of_cards),
    )
