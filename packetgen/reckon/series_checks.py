"""What a series as a whole lacks: titles, credits, photographs, dates, and names that nothing uses.

Whether every design fits the finishing piece is `reckon.figures.complain`'s.
"""

from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.model import DateRule, Pattern, Series, ToCome
from packetgen.reckon.alt_text import model_alt
from packetgen.reckon.small import only_hinted_at

# A name in the credits → how a sentence asks for it.
_ASKED = {"model_stitcher": "who stitched the model", "finisher": "who finished it"}


def complain_of_series(series: Series, problems: Problems) -> None:
    """An error for two patterns of one title; for the rest, advice."""
    _titles(series, problems)
    _days(series, problems)
    _unused(series, problems)
    for pattern in series.patterns:
        _picture(pattern, series, problems)
        _credits(pattern, problems)
        _release(pattern, series, problems)


def _titles(series: Series, problems: Problems) -> None:
    """Readers, shops and search engines know a pattern by its title, capitals or not."""
    first: dict[str, Pattern] = {}
    for pattern in series.patterns:
        other = first.setdefault(pattern.title.casefold(), pattern)
        if other is not pattern:
            problems.add(pattern.place, "title-twice", title=pattern.title, other=other.id)
    for coming in series.to_come:
        if coming.title.casefold() in first:
            problems.add(coming.place or series.place, "to-come-here", title=coming.title)


def _days(series: Series, problems: Problems) -> None:
    """Designs with one day hang at the same time, and a reader has room for one. Two rules that fall together
    in some years only, Easter and a day of March, are let be."""
    designs: tuple[Pattern | ToCome, ...] = (*series.patterns, *series.to_come)
    first: dict[DateRule, str] = {}
    for one in designs:
        title, rule = one.title, one.occasion.rule
        other = first.setdefault(replace(rule, said="", whole=""), title)
        if other.casefold() != title.casefold():  # of one title twice is told already
            place = one.occasion.place
            problems.add(place, "day-shared", title=title, other=other, said=rule.said)


def _unused(series: Series, problems: Problems) -> None:
    """Thread sets, designers and paints that are listed for nothing."""
    sets = {thread_set.id for pattern in series.patterns for thread_set in pattern.thread_sets}
    for thread_set in series.thread_sets:
        if thread_set.id not in sets:
            problems.add(thread_set.place, "thread-set-unused", set=thread_set.id)
    busy = {pattern.designer.id for pattern in series.patterns}
    busy |= {coming.designer.id for coming in series.to_come}
    for designer in series.designers:
        if designer.id not in busy:
            problems.add(designer.place, "designer-idle", name=designer.name, id=designer.id)
    piece = series.finish
    painted = {coating.paint.name for part in piece.parts for coating in part.painted}
    for paint in piece.paints:
        if paint.name not in painted:
            problems.add(piece.place, "paint-unused", piece=piece.name, paint=paint.name)


def _picture(pattern: Pattern, series: Series, problems: Problems) -> None:
    """Told of each pattern, so that one whose model is not stitched yet can lay it aside for itself."""
    if pattern.photo is None and not pattern.photo_awaited:
        needed = "; a small design needs one" if only_hinted_at(pattern) else ""
        problems.add(pattern.place, "photo-missing", title=pattern.title, needed=needed)
    if not pattern.photo_alt:
        problems.add(pattern.place, "alt-missing", alt=model_alt(pattern, series.finish))


def _credits(pattern: Pattern, problems: Problems) -> None:
    missing = [name for name in _ASKED if not getattr(pattern, name)]
    if missing:
        who = " and ".join(_ASKED[name] for name in missing)
        problems.add(pattern.place, "credit-missing", who=who, name=missing[0])


def _release(pattern: Pattern, series: Series, problems: Problems) -> None:
    latest = max(pattern.revisions, key=lambda revision: revision.on)
    release = (pattern.release or series.release).date()
    if release < latest.on:
        problems.add(
            pattern.release_place or latest.place or pattern.place,
            "release-early",
            release=release,
            by="" if pattern.release else " with its series",
            revision=latest.on,
        )
