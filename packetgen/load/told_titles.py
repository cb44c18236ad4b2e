"""Titles of patterns, and how many patterns there are, that the texts of a series tell otherwise than it has them."""

import re
from collections.abc import Iterator, Sequence

from packetgen.diagnostics import Place, Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.words import said
from packetgen.model import Series
from packetgen.nouns import counted

# A capital begins what may stand for one word of a title; an article does not: 'The Lantern'.
_CAPITAL = r"(?!(?:The|A|An|This|That|These|Each|Every|Our|My|Your|His|Her|Its|In|On|At|With|And|For|To|Or)\b)[^\W\d_a-z][\w'’-]*"
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

Text = tuple[str, str, Place | None]


def complain_of_told_titles(
    series: Series, path: str, notices: Sequence[tuple[str, Place]], problems: Problems
) -> None:
    """Advice on the welcome of the series in the folder `path`, its `notices` with their places, and the stories and notes of
    its patterns: on the first in each that is nearly a title, and in the first two on another number of patterns."""
    of_series: list[Text] = [(series.welcome_markdown, f"{path}/welcome.md", None)]
    of_series += [(text, "", place) for text, place in notices]
    of_patterns: list[Text] = [
        (text, f"{path}/{pattern.id}/{file}", None)
        for pattern in series.patterns
        for file, text in pattern.texts.items()
    ]
    for text in of_series:
        _look_at_number(text, len(series.patterns) + len(series.to_come), problems)
    titles = [*(one.title for one in series.patterns), *(one.title for one in series.to_come)]
    forms = [form for title in titles for form in _nearly(title)]
    names = "\n".join(_names(series))
    for text in (*of_series, *of_patterns):
        _look_at_titles(text, forms, names, problems)


def _look_at_number(text: Text, number: int, problems: Problems) -> None:
    words, path, place = text
    for form in (_IN_ALL, _MORE):
        for found in form.finditer(words):
            told = counted_number(found["number"])
            if told is not None and (told > number or (form is _IN_ALL and told != number)):
                facts = {"said": said(found[0]), "has": counted(number, "pattern")}
                where = place or place_in(words, found.start(), path)
                problems.add(where, "patterns-told-other", **facts)
                return


def _look_at_titles(
    text: Text, forms: Sequence[tuple[str, re.Pattern[str]]], names: str, problems: Problems
) -> None:
    words, path, place = text
    for title, form in forms:
        for found in form.finditer(words):
            if " ".join(found[0].split()) not in names:
                where = place or place_in(words, found.start(), path)
                problems.add(where, "title-told-near", said=said(found[0]), near=said(title))
                return


def _nearly(title: str) -> Iterator[tuple[str, re.Pattern[str]]]:
    """Finds 'Cider Lamp' for 'Cider Lantern': a title of two words or more with one of its large ones exchanged."""
    words = title.split()
    if len(words) < 2:
        return
    for number, word in enumerate(words):
        if word[0].isupper():
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
    yield from (one.card.name for one in series.thread_sets)
    yield from (one.title for one in series.to_come)
    for pattern in series.patterns:
        yield pattern.title
        yield pattern.occasion.name
        yield from (option.cloth.name for option in pattern.cloths)
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
