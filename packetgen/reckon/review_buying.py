"""Advice on what a stitcher must buy: a unit of which hardly any is used, and one that will not quite do."""

from collections.abc import Mapping, Sequence

from packetgen.colour import FAR
from packetgen.colour import in_words as closeness_in_words
from packetgen.diagnostics import Problems
from packetgen.model import KeyLine, Pattern, ThreadSet
from packetgen.nouns import counted, listed, plural
from packetgen.reckon.alike import Alike, Use, alike
from packetgen.reckon.buying import Warned, buy_tables, shared_needs
from packetgen.reckon.colour_counts import ColourCount, line_counts
from packetgen.reckon.figures import Figures
from packetgen.reckon.thread import Need, in_words, strand_m_per_unit, units_to_buy
from packetgen.units import metres, plain

# Less than this share of a unit is hardly any: about a needleful of two strands from a six-ply 8 m skein.
# Our own choice.
LITTLE = 0.02
# Of so many colours of a card, and of this share of those that the pattern has of it, no line each is told: then the
# design is tiny, or the card tells of a unit that is longer than the real one. Our own choice.
_MANY, _NEARLY_ALL = 5, 2 / 3
# Further apart than this no two colours are.
_ANY_DIFFERENCE = 1000.0


def complain_of_little(all_figures: Sequence[Figures], problems: Problems) -> None:
    """Advice at each colour of a model's set of which a whole unit is bought for hardly any thread: by none of
    the patterns of a series that have this set, all together, is more of it used. Where that is so of nearly all
    colours of a card, one line at the pattern says it of all.

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
    by_card: dict[str, list[Use]] = {}
    for use in {id(one): one for pair in pairs for one in (pair.one, pair.other)}.values():
        by_card.setdefault(use.need.card.id, []).append(use)
    for of_card in by_card.values():
        little = [
            use
            for use in of_card
            if use.need.units == 1
            and in_series_m[use.need.card.id, use.need.colour.number]
            <= LITTLE * strand_m_per_unit(use.need.card)
        ]
        many = len(little) >= max(_MANY, _NEARLY_ALL * len(of_card))
        if many and not _laid_aside_singly(figures.pattern, little):
            _tell_of_many(figures.pattern, little, len(of_card), problems)
            continue
        for use in little:
            problems.add(
                line_of(figures.pattern, use.marks).place,
                "skein-little",
                what=f"{_worked(figures, use)} of {_colour(use)}",
                unit=use.need.card.sold_as,
                strand=metres(use.need.strand.generous_m),
                hint=_instead(use, pairs),
            )


def _laid_aside_singly(pattern: Pattern, little: Sequence[Use]) -> bool:
    """Whether the author lays one of the colours aside, and so looks at each."""
    abouts = [one.about.casefold() for one in pattern.laid_aside if one.code == "skein-little"]
    colours = [_colour(use).casefold() for use in little]
    return any(about and about in colour for about in abouts for colour in colours)


def _tell_of_many(
    pattern: Pattern, little: Sequence[Use], of_card: int, problems: Problems
) -> None:
    card = little[0].need.card
    problems.add(
        pattern.place,
        "skein-little",
        what=f"{len(little)} of {of_card} colours of {card.name}",
        unit=f"{card.sold_as} of {plain(round(card.length_m, 2))} m each",
        strand=f"{metres(max(use.need.strand.generous_m for use in little))} or less",
        hint=f"if a {card.sold_as} is that long, take fewer colours, or lay this aside in pattern.yaml; "
        f"else mend its length in threads/{card.id}.yaml",
    )


def _colour(use: Use) -> str:
    return f"{use.need.colour.number} {use.need.colour.name}"


def _instead(use: Use, pairs: tuple[Alike, ...]) -> str:
    near = (pair for pair in pairs if use in (pair.one, pair.other) and pair.difference <= FAR)
    nearest = next((pair for pair in near if pair.saved), None)
    if nearest is None:
        return f"no other colour of {use.need.card.name} in the key would do for it: use more of it, do without, or lay this aside"
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
