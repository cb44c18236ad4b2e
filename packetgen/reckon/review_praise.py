"""What is well done, each in a true and exact sentence: only what was checked, and only where it was earned."""

from collections.abc import Collection, Iterator
from math import floor

from packetgen.colour import FAR, blended, contrast, difference, lab
from packetgen.model import KeyLine, Pattern, Series, ThreadSet
from packetgen.nouns import all_of, counted, listed
from packetgen.reckon.contrast import GROUNDS, WORDS
from packetgen.reckon.cover import px_per_inch
from packetgen.reckon.coverage import CROWDED_ABOVE, THIN_BELOW
from packetgen.reckon.cutting import FAT_QUARTER, as_cut
from packetgen.reckon.figures import Figures
from packetgen.reckon.fit import Verdict
from packetgen.reckon.review import Praise
from packetgen.reckon.review_cloth import least_wood_mm
from packetgen.reckon.review_colours import CLOSE, nearest_colours
from packetgen.reckon.review_texts import LEAST_PX_PER_INCH
from packetgen.reckon.thread import NEARLY, strand_m_per_unit
from packetgen.units import from_to

# From this share of a fat quarter on little is left over; and the contrast that WCAG 2.2 asks for at its
# highest level (1.4.6).
_WELL_USED, _BEST_CONTRAST = 0.85, 7.0
_OF_CONVERSIONS = {"conversion-collides", "conversion-far", "match-too-few"}
_OF_COVER = {"coverage-thin", "coverage-crowded", "coverage-everywhere", "beads-crowd"}
_OF_MAGNETS = {"magnets-no-room", "magnets-bunched"}
_FOR_NOTHING = {"thread-set-unused", "designer-idle", "paint-unused"}


def praise_of_pattern(
    figures: Figures, series: Series, codes: Collection[str]
) -> tuple[Praise, ...]:
    """`codes` are those of all that was found wrong with the pattern."""
    return tuple(
        praise
        for found in (
            _fit(figures, series),
            _cloth(figures),
            _alone(figures),
            _colours(figures, codes),
            _thread(figures),
            _conversions(figures.pattern, codes),
            _cover(figures, codes),
            _picture(figures.pattern, codes),
            _credits(figures.pattern),
        )
        for praise in found
    )


def praise_of_series(
    series: Series, figures: tuple[Figures, ...], codes: Collection[str]
) -> tuple[Praise, ...]:
    """`codes` are those of all that was found wrong with the series or with a pattern of it."""
    return (
        *_of_all(series, codes),
        *_magnets(figures, series, codes),
        *_contrast(series),
        *_nothing_idle(series, codes),
    )


# --- patterns -------------------------------------------------------------------------------------


def _fit(figures: Figures, series: Series) -> Iterator[Praise]:
    if all(on.fit.verdict is Verdict.FITS for on in figures.cloths):
        least_mm = min(map(least_wood_mm, figures.cloths))
        number = len(figures.cloths)
        on = "its cloth" if number == 1 else all_of(number, "cloth")
        beside = " beside its trim" if series.finish.trim.width_mm else ""
        words = (
            f"It fits {series.finish.name} on {on}, with {least_mm:.1f} mm of wood or more on each "
            f"side{beside}."
        )
        yield Praise(f"fits on {on}", words)


def _cloth(figures: Figures) -> Iterator[Praise]:
    on, pieces = figures.cloths[0], figures.cloths[0].finishing_pieces
    cut, whole = as_cut(on.mounting.cloth), FAT_QUARTER
    share = pieces * cut.width_mm * cut.height_mm / (whole.width_mm * whole.height_mm)
    if share >= _WELL_USED:
        words = (
            f"A fat quarter of {on.option.cloth.name} gives {counted(pieces, 'piece')} for it, "
            f"and {_percent(share)} of the cloth is used."
        )
        left = f"{100 - floor(share * 100)} %"
        many = counted(pieces, "piece")
        yield Praise(
            f"a fat quarter of {on.option.cloth.name} gives {many}, with {left} left over", words
        )


def _alone(figures: Figures) -> Iterator[Praise]:
    found = figures.isolated
    if found.stitches and not found.alone:
        words = f"None of its {found.stitches:,} stitches stands alone."
        yield Praise("no stitch alone", words)


def _colours(figures: Figures, codes: Collection[str]) -> Iterator[Praise]:
    near = nearest_colours(figures)
    if not {"colours-alike", "thread-unseen"}.isdisjoint(codes):
        return
    if near and near.difference > CLOSE:
        eyes = f" to eyes with {near.eyes}" if near.eyes else ""
        words = (
            f"All its colours are told apart by any eyes; the nearest, {near.one} and {near.other}, "
            f"are {near.difference:.1f} apart{eyes} (CIEDE2000)."
        )
        yield Praise("colours told apart by any eyes", words)
    elif near and "symbols-alike" not in codes:
        words = (
            "To no eyes are two lines of its key alike in both colour and symbol as the chart prints them (tried for "
            "protanopia, deuteranopia and tritanopia); two skeins may be alike all the same."
        )
        yield Praise("colours that eyes may take for one have unlike symbols on the chart", words)


def _thread(figures: Figures) -> Iterator[Praise]:
    spares = [
        (thread_set.card, _spare(figures, thread_set)) for thread_set in figures.pattern.thread_sets
    ]
    enough = [(card, spare) for card, spare in spares if spare >= NEARLY]
    if enough:
        said = (
            f"{card.name} (one {card.sold_as}, {_percent(spare)} to spare)"
            for card, spare in enough
        )
        words = f"One of each colour is enough on every cloth, with so much or more to spare: {listed(tuple(said))}."
        least = min(spare for _, spare in enough)
        yield Praise(
            f"one of each colour is enough, {_percent(least)} to spare of the most used", words
        )


def _spare(figures: Figures, thread_set: ThreadSet) -> float:
    """The least share of one unit that is left over, of any colour on any cloth; below 0 where one does
    not do."""
    needs = (
        need
        for on in figures.cloths
        for of, found in on.needs
        if of.id == thread_set.id
        for need in found
    )
    return min(
        (1 - need.strand.generous_m / strand_m_per_unit(need.card) for need in needs), default=-1.0
    )


def _apart(line: KeyLine, one: ThreadSet, other: ThreadSet) -> float:
    """How far its colours in two thread sets are from each other, by CIEDE2000."""
    needles = (line.threads[of.id] for of in (one, other))
    return difference(*(lab(blended(tuple(colour.hex for colour in needle))) for needle in needles))


def _conversions(pattern: Pattern, codes: Collection[str]) -> Iterator[Praise]:
    model, *more = pattern.thread_sets
    others = tuple(one.card.name for one in more)
    copied = any(one.card.colours == model.card.colours for one in more)  # nothing is converted
    far = any(_apart(line, model, other) > FAR for line in pattern.key for other in more)
    if others and not copied and not far and not _OF_CONVERSIONS & set(codes):
        words = f"In {listed(others)} no two of its colours become one, and none is far off while a nearer one is free."
        yield Praise("clean conversions", words)


def _cover(figures: Figures, codes: Collection[str]) -> Iterator[Praise]:
    every = [coverage for on in figures.cloths for coverage in on.coverage]
    if all(coverage.word == "good" for coverage in every) and not _OF_COVER & set(codes):
        shares = sorted(coverage.percent for coverage in every)
        said = from_to(str(shares[0]), str(shares[-1]))
        words = (
            f"Full crosses cover {said} % of the cloth, on every cloth in every thread set; "
            f"{round(THIN_BELOW * 100)} to {round(CROWDED_ABOVE * 100)} % counts as well covered."
        )
        yield Praise("covers well", words)


def _picture(pattern: Pattern, codes: Collection[str]) -> Iterator[Praise]:
    if pattern.photo_alt and "texts-copied" not in codes:
        yield Praise("picture in your own words", "Its picture is described in your own words.")
    if pattern.photo and px_per_inch(pattern.photo) >= LEAST_PX_PER_INCH:
        sharp = round(px_per_inch(pattern.photo))
        yield Praise(
            "photograph large enough to print",
            f"Its photograph is large enough to print, with {sharp} pixels to the inch.",
        )


def _credits(pattern: Pattern) -> Iterator[Praise]:
    if pattern.model_stitcher and pattern.finisher:
        yield Praise("credits", "Whoever stitched and finished the model is named.")


def _percent(share: float) -> str:
    """Rounded down, since it is said to be that or more."""
    return f"{floor(share * 100)} %"


# --- a series -------------------------------------------------------------------------------------


def _sentence(who: str, rest: str) -> str:
    return f"{who[0].upper()}{who[1:]} {rest}."


def _of_all(series: Series, codes: Collection[str]) -> Iterator[Praise]:
    number = len(series.patterns)
    if number < 2:
        return
    if all(pattern.photo for pattern in series.patterns):
        yield Praise(
            "photographs of all", _sentence(all_of(number, "pattern"), "have a photograph")
        )
    if all(pattern.photo_alt for pattern in series.patterns) and "texts-copied" not in codes:
        yield Praise(
            "all pictures in your own words",
            _sentence(all_of(number, "picture"), "are described by hand"),
        )
    if all(line.symbol for pattern in series.patterns for line in pattern.key):
        yield Praise(
            "symbols of all settled", f"The symbols of {all_of(number, 'pattern')} are settled."
        )


def _magnets(
    figures: tuple[Figures, ...], series: Series, codes: Collection[str]
) -> Iterator[Praise]:
    if len(figures) > 1 and series.finish.magnets.pairs and not _OF_MAGNETS & set(codes):
        designs = all_of(len(figures), "design")
        words = _sentence(designs, "hang on the same magnets, on every cloth")
        yield Praise("one set of magnets for all", words)


def _contrast(series: Series) -> Iterator[Praise]:
    lowest = min(
        contrast(getattr(palette, words), getattr(palette, ground))
        for palette in (series.look.light, series.look.dark)
        for words in WORDS
        for ground in GROUNDS
    )
    if lowest >= _BEST_CONTRAST:
        words = f"All words of its pages stand at {int(lowest * 10) / 10}:1 or more, by day and by night."
        yield Praise("words easily read", words)


def _nothing_idle(series: Series, codes: Collection[str]) -> Iterator[Praise]:
    if not _FOR_NOTHING & set(codes):
        words = "Every thread set, designer and paint that it lists is used."
        yield Praise("no thread set, designer or paint left over", words)
