"""Advice on what a stitcher must buy: a unit of which hardly any is used, and one that will not quite do."""

from collections.abc import Mapping, Sequence

from packetgen.diagnostics import Problems
from packetgen.model import KeyLine, Pattern, ThreadSet
from packetgen.nouns import counted, listed, plural
from packetgen.reckon.alike import Alike, Use, alike
from packetgen.reckon.buying import Warned, buy_tables, shared_needs
from packetgen.reckon.colour import FAR
from packetgen.reckon.colour import in_words as closeness_in_words
from packetgen.reckon.colour_counts import ColourCount, line_counts
from packetgen.reckon.figures import Figures
from packetgen.reckon.thread import Need, in_words, strand_m_per_unit, units_to_buy
from packetgen.units import metres

# Less than this share of a unit is hardly any: about a needleful of two strands from a six-ply 8 m skein.
# Our own choice.
LITTLE = 0.02
# Further apart than this no two colours are.
_ANY_DIFFERENCE = 1000.0


def complain_of_little(all_figures: Sequence[Figures], problems: Problems) -> None:
    """Advice at each colour of a model's set of which a whole unit is bought for hardly any thread: by none of
    the patterns of a series that have this set, all together, is more of it used.

    The nearest colour of the same card that the key has already is offered, where it is not far off and would
    save a unit.
    """
    for figures in all_figures:
        _of_little(figures, _in_series(all_figures, figures.pattern.thread_sets[0]), problems)


def _in_series(
    all_figures: Sequence[Figures], thread_set: ThreadSet
) -> dict[tuple[str, str], float]:
    """By card and number, how much strand of each colour all patterns take that are charted for the set."""
    lists = [
        needs
        for figures in all_figures
        for of, needs in figures.cloths[0].needs
        if of.id == thread_set.id
    ]
    return {
        (one.card.id, one.colour.number): one.strand.generous_m
        for one in shared_needs(tuple(lists))
    }


def _of_little(
    figures: Figures, in_series_m: Mapping[tuple[str, str], float], problems: Problems
) -> None:
    pairs = alike(figures, figures.pattern.thread_sets[0], _ANY_DIFFERENCE)
    for use in {id(one): one for pair in pairs for one in (pair.one, pair.other)}.values():
        need = use.need
        used_m = in_series_m[need.card.id, need.colour.number]
        if need.units != 1 or used_m > LITTLE * strand_m_per_unit(need.card):
            continue
        problems.add(
            line_of(figures.pattern, use.marks).place,
            "skein-little",
            stitches=_worked(figures, use),
            colour=f"{need.colour.number} {need.colour.name}",
            unit=need.card.sold_as,
            strand=metres(need.strand.generous_m),
            hint=_instead(use, pairs),
        )


def _instead(use: Use, pairs: tuple[Alike, ...]) -> str:
    near = (pair for pair in pairs if use in (pair.one, pair.other) and pair.difference <= FAR)
    nearest = next((pair for pair in near if pair.saved), None)
    if nearest is None:
        return f"no other {use.need.card.name} of the key would do for it: use more of it, or none"
    other = nearest.other if nearest.one is use else nearest.one
    return (
        f"{other.need.colour.number} {other.need.colour.name} is the nearest in the key "
        f"({closeness_in_words(nearest.difference)}, {nearest.difference:.1f}) and would save "
        f"{counted(nearest.saved or 0, use.need.card.sold_as)}"
    )


def _worked(figures: Figures, use: Use) -> str:
    """'3 stitches and 2 knots' in one colour."""
    counts = [one for one in line_counts(figures) if one.lines[0].mark in use.marks]
    return _said(sum(counts[1:], counts[0]))


def _said(count: ColourCount) -> str:
    counts = (
        (count.in_cells, "stitch"),
        (count.long_stitches, "long stitch"),
        (count.daisies, "lazy daisy"),
        (count.knots, "knot"),
    )
    words = [counted(number, noun) for number, noun in counts if number]
    if count.backstitch:
        words.append("backstitch" if words else "a little backstitch")
    return listed(tuple(words))


def complain_of_short(figures: Figures, problems: Problems) -> None:
    """Advice at each colour of which a little less would do with a unit less, once a thread set."""
    for table, (thread_set, _) in zip(buy_tables(figures), figures.cloths[0].needs):
        for warned in table.warnings:
            need = _need_of(figures, thread_set, warned)
            whole = round(need.strand.usual_m / strand_m_per_unit(need.card))
            if units_to_buy(need.strand, need.card) <= whole:
                continue  # it will only just do
            over = 1 - whole * strand_m_per_unit(need.card) / need.strand.generous_m
            noun = need.card.sold_as
            problems.add(
                _line_with(figures.pattern, thread_set, need).place,
                "skein-short",
                colour=f"{need.colour.number} {need.colour.name}",
                cloths=listed(tuple(dict.fromkeys(on.cloth.name for on in warned.cloths))),
                units=f"{in_words(whole)} {noun if whole == 1 else plural(noun)}",
                more=in_words(need.units),
                share=max(1, round(over * 100)),
            )


def _need_of(figures: Figures, thread_set: ThreadSet, warned: Warned) -> Need:
    """The need for the first of the cloths that the warning is about."""
    on = next(on for on in figures.cloths if on.option == warned.cloths[0])
    needs = next(needs for of, needs in on.needs if of.id == thread_set.id)
    return next(need for need in needs if (need.card, need.colour) == (warned.card, warned.colour))


def _line_with(pattern: Pattern, thread_set: ThreadSet, need: Need) -> KeyLine:
    return next(
        line
        for line in pattern.key
        if (need.card.id, need.colour)
        in (
            (card.id, one)
            for card, one in zip(line.cards_in(thread_set), line.threads[thread_set.id])
        )
    )


def line_of(pattern: Pattern, marks: tuple[str, ...]) -> KeyLine:
    """The first key line with one of the marks."""
    return next(line for line in pattern.key if line.mark in marks)
