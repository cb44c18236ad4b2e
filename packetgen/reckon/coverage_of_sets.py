"""Thread sets that cover every cloth of a series thinly, or crowd it: that is told of the set, once, or of its card."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.model import Pattern, Series, ThreadSet
from packetgen.nouns import counted
from packetgen.reckon.coverage import needles, set_coverage, usual_needle
from packetgen.reckon.sizes import cell_mm
from packetgen.reckon.thread import Work
from packetgen.yarn_numbers import seems_whole

_MANY = 3  # choices of cloth: of fewer each is told for itself
_CODES = {"coverage-thin", "coverage-crowded"}
_HOW = {"thin": "which looks thin", "crowded": "which is crowded"}
_ELSE = {
    "thin": "finer cloths or a thicker thread would be covered better",
    "crowded": "coarser cloths or a finer thread would lie flatter",
}

Works = tuple[Pattern, tuple[Work, ...]]


def complain_of_sets(series: Series, works: Sequence[Works], problems: Problems) -> frozenset[str]:
    """Advice on each such set; their ids. Where an author lays one of their cloths aside, she looks at each."""
    singly = any(one.code in _CODES for pattern, _ in works for one in pattern.laid_aside)
    told = set()
    for thread_set in series.thread_sets if not singly else ():
        cells_mm = list(_cells_mm(thread_set, works))
        found = [set_coverage(thread_set, each) for each in cells_mm]
        words = {one.word for one in found}
        whole = seems_whole(thread_set.card.tex, thread_set.card.strands)
        if len(found) < _MANY or len(words) > 1 or "good" in words or whole:
            continue  # of a card whose weight is that of the whole thread that is told
        (word,) = words
        told.add(thread_set.id)
        cards, strands = usual_needle(thread_set)
        low, high = (pick(one.percent for one in found) for pick in (min, max))
        ((better, _),) = Counter(one.better for one in found).most_common(1)
        slip = _slip(thread_set, cells_mm, better)
        problems.add(
            (slip and thread_set.card.tex_place) or thread_set.place,
            "coverage-everywhere",
            needle=f"{counted(strands, 'strand')} of {cards[0].name}",
            number=len(found),
            share=f"{low} %" if low == high else f"{low} to {high} %",
            how=_HOW[word],
            better=slip or _mend(thread_set, better) or _ELSE[word],
        )
    return frozenset(told)


def _slip(thread_set: ThreadSet, cells_mm: Sequence[float], strands: int | None) -> str:
    """The question whether the two figures of the card's tex are exchanged, where that makes it thinner and covers every
    cloth well; else ''."""
    card = thread_set.card
    figures = f"{card.tex:g}"
    turned = figures[::-1]
    if len(figures) != 2 or not "0" < turned[0] or turned >= figures:
        return ""
    meant = replace(thread_set, card=replace(card, tex=float(turned)))
    if any(set_coverage(meant, each).word != "good" for each in cells_mm):
        return ""
    other = f" Else write strands: {strands} for '{thread_set.id}'" if strands else ""
    return f"should 'tex' be {turned} in threads/{card.id}.yaml?{other}"


def _mend(thread_set: ThreadSet, strands: int | None) -> str:
    """The strands that would do, or else the weight to look at; '' where no number of strands does."""
    file = f"threads/{thread_set.card.id}.yaml"
    return f"write strands: {strands}; or mend 'tex' in {file}" if strands else ""


def _cells_mm(thread_set: ThreadSet, works: Sequence[Works]) -> Iterator[float]:
    """Of each choice of cloth on which something is worked with the set's own needle."""
    for pattern, its in works:
        if thread_set not in pattern.thread_sets:
            continue
        used = [(one.cards, one.strands) for one in needles(its, thread_set)]
        if usual_needle(thread_set) in used:
            for option in pattern.cloths:
                if not option.over_blocks:
                    yield cell_mm(option.cloth.count_per_inch, option.over)
