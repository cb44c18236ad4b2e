"""What stands twice in an author's files where one is meant: lines of a text, stitches, shops, and things to buy."""

from collections.abc import Hashable, Iterable, Iterator, Mapping, Sequence
from urllib.parse import urlsplit

from packetgen.diagnostics import Place, Problems
from packetgen.load.alike_words import misspelt
from packetgen.load.prose_words import words_of_entry
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Pattern

_ENOUGH_WORDS = 6  # of a line that nobody writes twice: our own choice


def complain_of_lines_twice(texts: Mapping[str, str | None], path: str, problems: Problems) -> None:
    """Advice on the first line of each Markdown text, by its file in the folder `path`, that stands in it already."""
    for file, text in texts.items():
        first: dict[tuple[str, ...], int] = {}
        for row, line in enumerate((text or "").split("\n") if file.endswith(".md") else (), 1):
            words = tuple(words_of_entry(line))
            if len(words) >= _ENOUGH_WORDS and (before := first.setdefault(words, row)) != row:
                problems.add(Place(f"{path}/{file}", row), "text-twice", line=before)
                break


def complain_of_pattern_twice(pattern: Pattern, problems: Problems) -> None:
    """Advice on the first line or knot that lies on one of the same colour, and on a shop that is listed twice."""
    lines = ((("line", one.mark, _either_way(one.points)), one.place) for one in pattern.lines)
    daisies = ((("daisy", one.mark, (one.base, one.tip)), one.place) for one in pattern.daisies)
    knots = ((("knot", one.mark, one.at), one.place) for one in pattern.knots)
    for place, before in _again((*lines, *daisies, *knots)):
        problems.add(place, "stitch-twice", line=before.line)
        break
    counters = (((one.name, one.url), one.place or pattern.place) for one in pattern.sold_at)
    for place, before in _again(counters):
        problems.add(place, "entry-twice", line=before.line)


def complain_of_bought_twice(filled: Filled, problems: Problems) -> None:
    """Advice on a glue or a piece of hardware that is listed twice, with the same size."""
    for group, also in (("glue", "for"), ("hardware", "size")):
        entries = [one.value for one in filled.each(group) if one.value and one.value["name"]]
        facts = [((one["name"].casefold(), one[also]), one.place_of("name")) for one in entries]
        for place, before in _again(facts):
            problems.add(place, "entry-twice", line=before.line)


def complain_of_shop_names(patterns: Sequence[Pattern], problems: Problems) -> None:
    """Advice on the first shop that has the address of one before it, up to its path, and nearly its name."""
    first: dict[str, str] = {}
    for pattern in patterns:
        for counter in pattern.sold_at:
            name = first.setdefault(urlsplit(counter.url).netloc, counter.name)
            if misspelt(counter.name, name):
                place = counter.place or pattern.place
                facts = {"name": said(counter.name), "other": said(name)}
                problems.add(place, "counter-name-near", **facts)
                return


def _either_way(points: tuple[tuple[float, float], ...]) -> tuple[tuple[float, float], ...]:
    return min(points, points[::-1])


def _again(entries: Iterable[tuple[Hashable, Place]]) -> Iterator[tuple[Place, Place]]:
    """The place of each that has been there before, and the first place."""
    first: dict[Hashable, Place] = {}
    for entry, place in entries:
        before = first.setdefault(entry, place)
        if before is not place:
            yield place, before
