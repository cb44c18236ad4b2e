"""How well a thread covers the cloth, from its weight, its strands and the stitch's size.

A strand of `tex` grams in 1000 m, spun of a fibre of density f and packed to a share p of its room, has
the cross-section A = tex · 10⁻³ / (f · p) mm² (f in g/cm³), and as long as it is round the diameter
d = 2 · √(A / π). In a stitch it is not round: the strands of a needle lie side by side, pressed by the
cloth and by one another to a layer of thickness t. Their cross-sections add, also those of two colours
in one needle, so a leg of the cross is a ribbon of width

    w = ΣA / t

A full cross is two such ribbons on the diagonals of a cell of side a. What they leave bare are four
triangles, one on the middle of each side, whose legs stand on a side of a − w·√2; together they are a
square of that side, so the share of the cell that is covered is

    1 − (1 − √2 · w / a)²      and all of it from w = a / √2 on.

What is assumed: p, t, and the two limits, which are set so that what the trade usually does comes out
good (common practice, no source): two strands of a six-ply of 25 tex each on 14 and 16 aida and on 28
and 32 over two, one on 25 and 28 over one, three on 11.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from math import pi, sqrt

from packetgen.diagnostics import Problems
from packetgen.model import Pattern, Stitch, ThreadCard, ThreadSet
from packetgen.reckon.needle import strands_for
from packetgen.reckon.sizes import USUAL_COUNTS, cell_mm
from packetgen.reckon.thread import Work
from packetgen.yarn_numbers import seems_whole

# Grams in a cubic centimetre of the bare fibre: handbook values, from memory.
FIBRES_G_PER_CM3 = {
    "cotton": 1.54,
    "linen": 1.50,
    "silk": 1.34,
    "wool": 1.31,
    "viscose": 1.52,
    "rayon": 1.52,
    "polyester": 1.38,
    "nylon": 1.14,
}
OTHER_FIBRES_G_PER_CM3 = 1.54  # as cotton
# The share of a soft strand's room that is fibre: our own assumption.
PACKED = 0.5
# The layer to which strands are pressed: a strand of 25 tex of cotton (0.203 mm when round) then lies as
# wide as it was, only flat: d · π / 4. Our own assumption.
LAYER_MM = 0.16
# Shares of the cell between which coverage is good; see above.
THIN_BELOW, CROWDED_ABOVE = 0.45, 0.76
# What is aimed at where several numbers of strands are good: between 14 and 16 count with two strands.
BEST = 0.56


@dataclass(frozen=True)
class Coverage:
    """Of a full cross: the share of its cell that lies under thread."""

    share: float
    word: str  # thin, good or crowded
    suggested_strands: int  # of the same needle; those it has where these are good
    better: int | None  # the suggested ones, where they would be good and the needle's are not

    @property
    def percent(self) -> int:
        return round(self.share * 100)


def section_mm2(card: ThreadCard) -> float:
    """The cross-section of one strand, with the air in it."""
    named = (g for name, g in FIBRES_G_PER_CM3.items() if name in card.material.casefold())
    return card.tex * 1e-3 / (next(named, OTHER_FIBRES_G_PER_CM3) * PACKED)


def diameter_mm(card: ThreadCard) -> float:
    """Across one strand while nothing presses it."""
    return 2 * sqrt(section_mm2(card) / pi)


def covered_share(sections_mm2: float, cell: float) -> float:
    """The share of a cell that a full cross covers, with these cross-sections in the needle together."""
    return 1 - (1 - min(1.0, sqrt(2) * sections_mm2 / LAYER_MM / cell)) ** 2


def word_for(share: float) -> str:
    if share < THIN_BELOW:
        return "thin"
    return "crowded" if share > CROWDED_ABOVE else "good"


def coverage(cards: Sequence[ThreadCard], strands: int, cell: float) -> Coverage:
    """A needle with `strands` strands on a cell of side `cell` mm.

    cards: that of each colour in the needle; colours share the strands evenly. A braid is always one
    strand, and a thread never more than its plies.
    """
    section = sum(section_mm2(card) for card in cards) / len(cards)
    most = 1 if any(card.braid for card in cards) else min(card.strands for card in cards)
    shares = {
        number: covered_share(number * section, cell)
        for number in range(len(cards), len(cards) * most + 1)
    }
    share = covered_share(strands * section, cell)
    word = word_for(share)
    best = min(shares, key=lambda number: (abs(shares[number] - BEST), number))
    if word == "good":
        return Coverage(share, word, strands, None)
    return Coverage(share, word, best, best if word_for(shares[best]) == "good" else None)


def set_coverage(thread_set: ThreadSet, cell: float) -> Coverage:
    """As most of its key lines are worked."""
    return coverage(*usual_needle(thread_set), cell)


def usual_needle(thread_set: ThreadSet) -> tuple[tuple[ThreadCard, ...], int]:
    """The set's own card, in the set's own strands."""
    return (thread_set.card,), 1 if thread_set.card.braid else thread_set.strands


@dataclass(frozen=True)
class AtCount:
    """Coverage with so many stitches in an inch, whatever the cloth."""

    stitches_per_inch: float
    offered: bool  # on a cloth of the pattern
    by_set: tuple[Coverage, ...]  # one a thread set


def coverage_at_counts(pattern: Pattern) -> tuple[AtCount, ...]:
    """At all usual counts and on the pattern's own cloths, the coarsest first."""
    offered = {option.cloth.count_per_inch / option.over for option in pattern.cloths}
    usual = {count / over for _, count, over in USUAL_COUNTS}
    return tuple(
        AtCount(
            stitches,
            stitches in offered,
            tuple(set_coverage(one, cell_mm(stitches, 1)) for one in pattern.thread_sets),
        )
        for stitches in sorted(offered | usual)
    )


@dataclass(frozen=True)
class Needle:
    """What full crosses are worked with, and the marks of the key that are."""

    cards: tuple[ThreadCard, ...]  # one a colour
    strands: int
    marks: tuple[str, ...]


def needles(works: tuple[Work, ...], thread_set: ThreadSet) -> tuple[Needle, ...]:
    """Every needle of the full crosses once, in the order of the key."""
    found: dict[tuple[object, ...], Needle] = {}
    for work in works:
        if work.stitches.get(Stitch.FULL):
            cards, strands = work.line.cards_in(thread_set), strands_for(work.line, thread_set)
            name = (*(card.id for card in cards), strands)
            before = found[name].marks if name in found else ()
            found[name] = Needle(cards, strands, (*before, work.line.mark))
    return tuple(found.values())


def complain_of_coverage(
    pattern: Pattern,
    works: tuple[Work, ...],
    problems: Problems,
    told_sets: Collection[str] = (),
) -> None:
    """Advice where full crosses as their author has them come out thin or crowded on a cloth of hers:
    one line a cloth, thread set and needle. Of the strands of `told_sets`, by id, that is told."""
    for option in pattern.cloths:
        if option.over_blocks:
            continue  # is told for itself
        cell = cell_mm(option.cloth.count_per_inch, option.over)
        for thread_set in pattern.thread_sets:
            for needle in needles(works, thread_set):
                if thread_set.id in told_sets and needle.strands == usual_needle(thread_set)[1]:
                    continue
                found = coverage(needle.cards, needle.strands, cell)
                whole = any(seems_whole(card.tex, card.strands) for card in needle.cards)
                if found.word == "good" or (whole and found.word == "crowded"):
                    continue  # of such a card that is told
                problems.add(
                    option.place,
                    f"coverage-{found.word}",
                    marks=_listed(needle.marks),
                    cloth=option.cloth.name + (f" over {option.over}" if option.over > 1 else ""),
                    needle=_spoken(needle),
                    share=found.percent,
                    better=_better(needle, found, cell),
                )


def _listed(marks: tuple[str, ...]) -> str:
    more = f" and {len(marks) - 3} more" if len(marks) > 3 else ""
    return ", ".join(repr(mark) for mark in marks[:3]) + more


def _spoken(needle: Needle) -> str:
    """'2 strands of Bramble', 'a blend of 2 strands of Bramble'."""
    names = " and ".join(dict.fromkeys(card.name for card in needle.cards))
    strands = f"{needle.strands} strand{'' if needle.strands == 1 else 's'} of {names}"
    return f"a blend of {strands}" if len(needle.cards) > 1 else strands


def _better(needle: Needle, found: Coverage, cell: float) -> str:
    """The number of strands that is good, or what else there is to change."""
    if found.better:
        better = coverage(needle.cards, found.better, cell)
        strands = f"{found.better} strand{'' if found.better == 1 else 's'}"
        return f"{strands} would cover {better.percent} %"
    if found.word == "thin":
        return "a finer cloth or a thicker thread would be covered better"
    if len(needle.cards) > 1:
        return (
            "one colour instead of the blend, a coarser cloth or a finer thread would lie flatter"
        )
    return "a coarser cloth or a finer thread would lie flatter"
