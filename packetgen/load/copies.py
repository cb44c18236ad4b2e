"""What a pattern still has of the one whose folder its own was copied from."""

import re
from collections.abc import Collection, Iterator, Sequence
from urllib.parse import urlsplit

from packetgen.diagnostics import Place, Problems, seen_from
from packetgen.load.examples import example_charts, is_example
from packetgen.load.prose_words import words_of_entry
from packetgen.load.words import listed, said
from packetgen.model import Pattern

_STITCHING = "stitching.md"
# Told of notes that speak of threads and stitches of another pattern.
_OF_ANOTHER = {
    "thread-idle",
    "thread-told-none",
    "number-told-other",
    "rows-told-other",
    "kind-told-none",
}
_ENOUGH_WORDS = 8  # of a line that nobody writes twice: our own choice
_COUNTS = 2  # figures that may count something else than threads
_IN_MANY = {"the", "and", "for", "from", "with", "pattern", "patterns"}  # titles and addresses


def complain_of_copies(patterns: Sequence[Pattern], examples: Problems, problems: Problems) -> None:
    """Advice on each pattern whose chart, or whose texts, are those of one before it in the series. What begin
    wrote is told of for itself, in `examples`."""
    of_size: dict[tuple[int, int], list[Pattern]] = {}
    of_text: dict[tuple[str, str], Pattern] = {}
    of_id = {pattern.id: pattern for pattern in patterns}
    begun = example_charts(examples)
    for pattern in patterns:
        if pattern.place.path.rpartition("/")[0] not in begun:
            before = of_size.setdefault((pattern.grid.width, pattern.grid.height), [])
            if same := [one for one in before if _drawn(one) == _drawn(pattern)]:
                problems.add(pattern.place, "chart-copied", other=said(same[0].title))
            before.append(pattern)
        alike: dict[str, list[str]] = {}
        for name, text in _texts(pattern):
            other = of_text.setdefault((name, " ".join(text.split())), pattern)
            if other is not pattern:
                alike.setdefault(other.id, []).append(name)
        for other_id, names in alike.items():
            other = of_id[other_id]
            notes = _place_of(pattern, _STITCHING).path
            wrong_here = any(
                one.place.path == notes and one.code in _OF_ANOTHER for one in problems
            )
            named = _names_it(pattern.notes_markdown, other, pattern)
            if names == [_STITCHING] and not named and not wrong_here:
                continue  # designs of one series may well be stitched alike
            same_day = other.occasion.rule == pattern.occasion.rule
            if other.title == pattern.title and same_day:
                names.append("occasion")  # told by itself once they are called otherwise
            are = "is that" if len(names) == 1 else "are those"
            what = listed(names, "and")
            place = _place_of(pattern, names[0])
            where = seen_from(place, _place_of(other, names[0]))
            facts = {"what": what, "are": are, "other": said(other.title), "where": where}
            problems.add(place, "texts-copied", **facts)


def complain_of_copied_lines(patterns: Sequence[Pattern], problems: Problems) -> None:
    """Advice on the first line of each pattern's notes that names a thread by its number and stands, word for word, in those
    of one before it; of notes that are the same as a whole it is told elsewhere, or they may well be."""
    of_line: dict[str, tuple[Pattern, Place]] = {}
    for pattern in patterns:
        told = False
        numbers = {one.number for line in pattern.key for of in line.threads.values() for one in of}
        of_own = dict(_specific_lines(pattern, numbers))
        for words, place in of_own.items():
            other, where = of_line.get(words, (pattern, place))
            same_notes = other.notes_markdown.split() == pattern.notes_markdown.split()
            if not told and not same_notes:
                facts = {"other": said(other.title), "where": seen_from(place, where)}
                problems.add(place, "line-copied", **facts)
                told = True
        for words, place in of_own.items():
            of_line.setdefault(words, (pattern, place))


def _specific_lines(pattern: Pattern, numbers: Collection[str]) -> Iterator[tuple[str, Place]]:
    folder = pattern.place.path.rpartition("/")[0]
    for row, line in enumerate(pattern.notes_markdown.split("\n"), 1):
        words = words_of_entry(line)
        named = {word.strip(".,;:()*") for word in words} & set(numbers)
        if len(words) >= _ENOUGH_WORDS and any(len(one) > _COUNTS for one in named):
            yield " ".join(words), Place(f"{folder}/{_STITCHING}", row)


def complain_of_counters(patterns: Sequence[Pattern], problems: Problems) -> None:
    """Advice on the address of a shop that is another pattern's too, and has a word of that one's title and none of this
    one's."""
    sold_there: dict[str, list[Pattern]] = {}
    for pattern in patterns:
        for counter in pattern.sold_at:
            sold_there.setdefault(counter.url, []).append(pattern)
    for pattern in patterns:
        own = _words(pattern.title)
        for counter in pattern.sold_at:
            said_there = _words(urlsplit(counter.url).path)
            meant = (one for one in sold_there[counter.url] if said_there & _words(one.title))
            other = next(meant, None)
            if other and counter.place and not said_there & own:
                problems.add(counter.place, "counter-of-another", other=said(other.title))


def _names_it(text: str, one: Pattern, other: Pattern) -> bool:
    """Whether it has a word of the title of `one`, and none of the title of the `other`."""
    words = _words(text)
    return bool(words & _words(one.title)) and not words & _words(other.title)


def _words(text: str) -> set[str]:
    return set(re.findall(r"[^\W\d_]{3,}", text.casefold())) - _IN_MANY


def _drawn(pattern: Pattern) -> object:
    """The same for two patterns of which all whole stitches are worked alike in the same colours, by whatever marks; lines
    and knots tell apart only those without. They stay behind where a chart was copied over another."""
    key = {line.mark: (line.stitch, line.threads, line.strands) for line in pattern.key}
    in_cells = dict.fromkeys(mark for row in pattern.grid.rows for mark in row if mark in key)
    if not in_cells:
        others = (pattern.fractions, pattern.lines, pattern.daisies, pattern.knots, pattern.beads)
        return pattern.key, others
    signs = {ord(mark): chr(0x100 + number) for number, mark in enumerate(in_cells)}
    rows = tuple(row.translate(signs) for row in pattern.grid.rows)
    return tuple(key[mark] for mark in in_cells), rows


def _place_of(pattern: Pattern, text: str) -> Place:
    folder = pattern.place.path.rpartition("/")[0]
    places = {
        "about": pattern.about_place,
        "photo_alt": pattern.photo_alt_place,
        "story.md": Place(f"{folder}/story.md"),
        _STITCHING: Place(f"{folder}/{_STITCHING}"),
    }
    return places[text] or pattern.place


def _texts(pattern: Pattern) -> list[tuple[str, str]]:
    texts = {
        "about": pattern.about,
        "photo_alt": pattern.photo_alt,
        "story.md": pattern.story_markdown,
        _STITCHING: pattern.notes_markdown,
    }
    return [(name, text) for name, text in texts.items() if text and not is_example(name, text)]
