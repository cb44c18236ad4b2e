"""The texts of a series and of its patterns, and where each letter of them stands."""

from collections.abc import Callable, Iterator, Sequence

from packetgen.diagnostics import Place, place_in
from packetgen.load.values import Given
from packetgen.model import Series

Text = tuple[str, Callable[[int], Place]]


def texts_of_series(series: Series, path: str, notices: Sequence[Given]) -> list[Text]:
    """The welcome of the series in the folder `path`, and the texts of its `notices`."""
    welcome = _of_file(series.welcome_markdown, f"{path}/welcome.md")
    return [welcome, *((notice.value, notice.letter) for notice in notices)]


def texts_of_patterns(series: Series, path: str) -> Iterator[Text]:
    """Their stories and notes."""
    for pattern in series.patterns:
        for file, text in pattern.texts.items():
            yield _of_file(text, f"{path}/{pattern.id}/{file}")


def _of_file(words: str, path: str) -> Text:
    return words, lambda start: place_in(words, start, path)
