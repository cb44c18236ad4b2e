"""Advice on colours that a stitcher takes for each other: to ordinary eyes, to eyes that lack a cone, or
by their names."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from packetgen.colour import CLOSE, SAME, difference, in_words, lab
from packetgen.diagnostics import Problems
from packetgen.nouns import counted
from packetgen.reckon.alike import Alike, Use, alike, uses
from packetgen.reckon.figures import Figures
from packetgen.reckon.review_buying import line_of
from packetgen.reckon.vision import EYES, seen

_ANY_DIFFERENCE = 1000.0


@dataclass(frozen=True)
class Nearest:
    """The two colours of a pattern that are nearest to each other for any eyes."""

    one: str
    other: str
    difference: float  # CIEDE2000
    eyes: str  # '' for ordinary ones


def complain_of_alike(figures: Figures, problems: Problems) -> None:
    """Advice at the later of two colours of one card that are hardly told apart.

    Colours of two cards are told apart by their sheen, and are passed over.
    """
    for pair in _pairs(figures):
        one, other = (_name(use) for use in (pair.one, pair.other))
        place = line_of(figures.pattern, pair.other.marks).place
        if pair.difference <= CLOSE:
            noun = pair.other.need.card.sold_as
            saves = f", which would save {counted(pair.saved, noun)}" if pair.saved else ""
            problems.add(
                place,
                "colours-alike",
                one=one,
                other=other,
                words=in_words(pair.difference),
                apart=f"{pair.difference:.1f}",
                saves=saves,
            )
            continue
        eyes, apart = min(_to_some(pair), key=lambda found: found[1])
        if apart <= SAME:
            problems.add(
                place,
                "colours-alike-to-some",
                eyes=eyes,
                one=one,
                other=other,
                apart=f"{apart:.1f}",
                ordinary=f"{pair.difference:.1f}",
            )


def complain_of_one_name(figures: Figures, problems: Problems) -> None:
    """Advice at the later of two colours of one card that have one name."""
    for thread_set in figures.pattern.thread_sets:
        for one, other in combinations(uses(figures, thread_set), 2):
            called = {use.need.colour.name.casefold() for use in (one, other)}
            if one.need.card.id == other.need.card.id and len(called) == 1:
                place = line_of(figures.pattern, other.marks).place
                names = {"one": _name(one), "other": _name(other)}
                problems.add(place, "colours-of-one-name", **names)


def nearest_colours(figures: Figures) -> Nearest | None:
    """None for a pattern of a single colour."""
    model = figures.pattern.thread_sets[0]
    colours = {one.hex: one.name for line in figures.pattern.key for one in line.threads[model.id]}
    found = [
        Nearest(colours[one], colours[other], _apart(one, other, eyes), eyes)
        for one, other in combinations(colours, 2)
        for eyes in ("", *EYES)
    ]
    return min(found, key=lambda near: near.difference, default=None)


def _pairs(figures: Figures) -> tuple[Alike, ...]:
    found = alike(figures, figures.pattern.thread_sets[0], _ANY_DIFFERENCE)
    return tuple(pair for pair in found if pair.saved is not None)


def _to_some(pair: Alike) -> Iterator[tuple[str, float]]:
    one, other = pair.one.need.colour.hex, pair.other.need.colour.hex
    for eyes in EYES:
        yield eyes, _apart(one, other, eyes)


def _apart(one: str, other: str, eyes: str) -> float:
    if eyes:
        one, other = seen(one, eyes), seen(other, eyes)
    return difference(lab(one), lab(other))


def _name(use: Use) -> str:
    return f"{use.need.colour.number} {use.need.colour.name}"
