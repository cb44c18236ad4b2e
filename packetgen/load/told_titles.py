"""Titles of patterns, and how many patterns there are, that the texts of a series tell otherwise than it has them."""

import re
from collections.abc import Iterator, Sequence, Set

from packetgen.diagnostics import Problems
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.series_texts import Text, texts_of_patterns, texts_of_series
from packetgen.load.spoken_days import MONTHS, WEEKDAYS
from packetgen.load.values import Given
from packetgen.load.words import said
from packetgen.model import Series
from packetgen.nouns import counted

# None of these makes a title by itself: 'The French knots' is nearly no 'The Lantern'.
_LITTLE = frozenset(
    "the a an this that these those each every our my your his her its in on at with and for to or of by from under over "
    "one two three four five six seven eight nine ten first second third fourth fifth sixth last next all some no".split()
)
# Nor of those that have a capital anyway: 'Under the October moon' is no 'Under the Log'.
_CAPITAL_ANYWAY = {*MONTHS, *WEEKDAYS, "French"}
# A capital begins what may stand for one word of a title; one of these does not: 'The Lantern'.
_NOT = "|".join(sorted({one.capitalize() for one in _LITTLE} | _CAPITAL_ANYWAY))
_CAPITAL = rf"(?P<word>(?!(?:{_NOT})\b)[^\W\d_a-z][\w'’-]*)"
_PATTERNS = r"(?:designs|patterns|packets)\b"
# 'The two patterns' may be two of eight; all of them, and those that a series has, are all.
_IN_ALL = re.compile(
    rf"\b(?:all(?:\s+of)?(?:\s+the)?|each\s+of\s+the|every\s+one\s+of\s+the|series\s+(?:has|of)|(?:one|two|three|four|five|six)\s+of\s+the)\s+"
    rf"{COUNTED}\s+(?:\w+\s+)?{_PATTERNS}",
    re.IGNORECASE,
)
_MORE = re.compile(
    rf"\b(?:the|these|its|our|my|first|last)\s+{COUNTED}\s+(?:\w+\s+)?{_PATTERNS}", re.IGNORECASE
)
_OF_TAGLINE = re.compile(
    rf"{COUNTED}\s+(?:\w+\s+)?{_PATTERNS}(?!\s+(?:a|each|every|per)\b)", re.IGNORECASE
)

_MANY = 4  # our own choice
_SET_OUT = "*_\"“”‘’'"


def complain_of_told_titles(
    series: Series,
    path: str,
    notices: Sequence[Given],
    tagline: Given,
    problems: Problems,
) -> None:
    """Advice on the welcome of the series in the folder `path`, the texts of its `notices`, and the stories and notes of
    its patterns: on the first in each that is nearly a title, or that a folder is called by and its title is not, and in the
    first two on another number of patterns, as in its tagline."""
    of_series = texts_of_series(series, path, notices)
    number = len(series.patterns) + len(series.to_come)
    for text in of_series:
        _look_at_number(text, (_IN_ALL, _MORE), number, problems)
    _look_at_number((tagline.value, tagline.letter), (_OF_TAGLINE,), number, problems)
    titles = [*(one.title for one in series.patterns), *(one.title for one in series.to_come)]
    forms = [form for title in titles for form in _nearly(title)]
    names = "\n".join(_names(series))
    brands = {word for name in _brands(series) for word in name.split()}
    former = [
        (title, form)
        for id, title in (
            (series.id, series.title),
            *((one.id, one.title) for one in series.patterns),
        )
        if (form := _former(id, title))
    ]
    for text in (*of_series, *texts_of_patterns(series, path)):
        if not _look_at_former(text, former, names, problems):
            _look_at_titles(text, forms, names, brands, problems)


def _look_at_number(
    text: Text, forms: Sequence[re.Pattern[str]], number: int, problems: Problems
) -> None:
    words, place_of = text
    for form in forms:
        for found in form.finditer(words):
            told = counted_number(found["number"])
            if told is not None and (told > number or (form is not _MORE and told != number)):
                facts = {"said": said(found[0]), "has": counted(number, "pattern")}
                where = place_of(found.start())
                problems.add(where, "patterns-told-other", **facts)
                return


def _look_at_titles(
    text: Text,
    forms: Sequence[tuple[str, re.Pattern[str]]],
    names: str,
    brands: Set[str],
    problems: Problems,
) -> None:
    words, place_of = text
    for title, form in forms:
        for found in form.finditer(words):
            if found["word"] not in brands and " ".join(found[0].split()) not in names:
                where = place_of(found.start())
                problems.add(where, "title-told-near", said=said(found[0]), near=said(title))
                return


def _look_at_former(
    text: Text, forms: Sequence[tuple[str, re.Pattern[str]]], names: str, problems: Problems
) -> bool:
    """Whether one is told."""
    words, place_of = text
    for title, form in forms:
        found = form.search(words)
        if found and (_as_title(found) or " ".join(found[0].split()) not in names):
            where = place_of(found.start())
            problems.add(where, "title-told-former", said=said(found[0]), title=said(title))
            return True
    return False


def _as_title(found: re.Match[str]) -> bool:
    """Whether it is set out from the words round it, '*Radish Monday*', as an occasion of that name is hardly."""
    before, behind = found.string[: found.start()][-1:], found.string[found.end() :][:1]
    return bool(before and behind) and before in _SET_OUT and behind in _SET_OUT


def _former(id: str, title: str) -> re.Pattern[str] | None:
    """Finds what a folder is called by, several words that begin with a capital, where they do not stand in the title so."""
    words = id.split("-")
    of_title = re.findall(r"\w+", re.sub(r"['’]", "", title).casefold())
    if len(words) < 2 or " ".join(words) in " ".join(of_title):
        return None
    rest = "".join(rf"[\s-]+(?i:{re.escape(word)})" for word in words[1:])
    # So many words in a row are the title, even without a capital.
    first = re.escape(words[0]) if len(words) >= _MANY else re.escape(words[0].capitalize())
    return re.compile(rf"\b(?i:{first}){rest}\b" if len(words) >= _MANY else rf"\b{first}{rest}\b")


def _nearly(title: str) -> Iterator[tuple[str, re.Pattern[str]]]:
    """Finds 'Cider Lamp' for 'Cider Lantern': a title with one of its weighty words exchanged, where another is left, or two
    of any kind."""
    words = title.split()
    weighty = {at for at, word in enumerate(words) if word.casefold() not in _LITTLE}
    enough = len(words) > 2 or len(weighty) > 1
    for number, word in enumerate(words):
        if enough and number in weighty and word[0].isupper():
            others = [re.escape(one) for one in words]
            others[number] = _CAPITAL
            whole = r"\s+".join(others)
            yield (
                title,
                re.compile(rf"(?<![^\W\d_a-z] )(?<![\w-]){whole}(?![\w-]|['’]|\s+[^\W\d_a-z])"),
            )


def _names(series: Series) -> Iterator[str]:
    """All that is called by a name of its own, so that a title is not meant."""
    yield series.title
    yield series.finish.name
    yield from (designer.name for designer in series.designers)
    yield from (designer.studio or "" for designer in series.designers)
    yield from _brands(series)
    yield from (one.title for one in series.to_come)
    for pattern in series.patterns:
        yield pattern.title
        yield pattern.occasion.name
        yield from (counter.name for counter in pattern.sold_at)
        yield from (
            one or ""
            for one in (
                pattern.model_stitcher,
                pattern.finisher,
                pattern.dyer,
                pattern.photographer,
            )
        )


def _brands(series: Series) -> Iterator[str]:
    """What its threads and cloths are called."""
    yield from (one.card.name for one in series.thread_sets)
    for pattern in series.patterns:
        yield from (option.cloth.name for option in pattern.cloths)
