"""Whether the type of a packet has every letter that it is to print.

No face of the machine is used, so that a packet looks the same everywhere; a letter that its own faces
lack would be an empty box.
"""

from collections.abc import Iterator
from dataclasses import replace

from packetgen.diagnostics import Place, Problems
from packetgen.model import Faces, FinishingPiece, Pattern, Series

# What all of the project's own faces have: first and last of each run, in hexadecimal.
_RUNS = """
0020-007E 00A0-00AC 00AE-00B4 00B6-0107 010A-0113 0116-011B 011E-0123 0126-0127 012A-012B 012E-0133
0136-0137 0139-013E 0141-0148 0150-0155 0158-015B 015E-0165 016A-016B 016E-017E 0192-0192 0218-021B
0237-0237 02C6-02C7 02DA-02DA 02DC-02DD 0300-0301 0303-0304 0308-0308 1E80-1E85 1E9E-1E9E 1EF2-1EF3
2013-2014 2018-201A 201C-201E 2020-2020 2022-2022 2026-2026 2039-203A 2044-2044 20AC-20AC 20B9-20B9
2122-2122 2212-2212 2215-2215
"""
OWN_LETTERS = frozenset(
    code for run in _RUNS.split() for code in range(int(run[:4], 16), int(run[5:], 16) + 1)
)
_NEVER_DRAWN = frozenset(map(ord, "\n\r\t\u00ad\u200b\u200c\u200d\u2060\ufeff"))
_MOST_NAMED = 8

Text = tuple[str, Place]


def complain_of_letters(series: Series, problems: Problems) -> None:
    """Tell of every text for a packet that has letters which none of its faces has."""
    texts = [*_of_series(series), *_of_piece(series.finish)]
    for pattern in series.patterns:
        texts += _of_pattern(pattern)
    for text, place in texts:
        for line, words in enumerate(text.split("\n")):
            missing = letters_missing(words, series.look.faces)
            if missing:
                problems.add(
                    replace(place, line=place.line + line) if line else place,
                    "letters-missing",
                    letters=missing,
                )


def letters_missing(text: str, faces: Faces) -> str:
    """The letters of `text` that no face of a packet has, a few of them by name; '' where there are none."""
    known = OWN_LETTERS | _NEVER_DRAWN | (faces.text.letters if faces.text else frozenset())
    missing = list(dict.fromkeys(sign for sign in text if ord(sign) not in known))
    more = len(missing) - _MOST_NAMED
    return " ".join(missing[:_MOST_NAMED]) + (f" and {more} more" if more > 0 else "")


def _of_series(series: Series) -> Iterator[Text]:
    for text in (series.title, series.licence.replace("\n", " ")):
        yield text, series.place
    for designer in series.designers:
        for text in (designer.name, designer.studio):
            yield text, designer.place
    for one in series.to_come:
        for text in (one.title, one.occasion.name):
            yield text, series.place
    for thread_set in series.thread_sets:
        yield thread_set.card.name, thread_set.place


def _of_pattern(pattern: Pattern) -> Iterator[Text]:
    place = pattern.place
    words = (
        *(pattern.title, pattern.about, pattern.occasion.name, pattern.model_stitcher),
        *(pattern.finisher, pattern.dyer, pattern.photographer),
        *(revision.note for revision in pattern.revisions),
        *(counter.name for counter in pattern.sold_at),
    )
    for text in words:
        yield text.replace("\n", " "), place
    for option in pattern.cloths:
        yield f"{option.cloth.name} {option.colour.name}", option.place
    for line in pattern.key:
        for colours in line.threads.values():
            for colour in colours:
                yield f"{colour.number} {colour.name}", line.place
    for bead in pattern.beads:
        yield f"{bead.card.name} {bead.colour.number} {bead.colour.name}", bead.place
    folder = place.path.rpartition("/")[0]
    yield pattern.story_markdown, Place(f"{folder}/story.md")
    yield pattern.notes_markdown, Place(f"{folder}/stitching.md")


def _of_piece(piece: FinishingPiece) -> Iterator[Text]:
    words = (
        *(piece.name, piece.about),
        *(part.name for part in piece.parts),
        *(paint.name for paint in piece.paints),
        *(f"{thing.name} {thing.size}" for thing in piece.hardware),
        *(f"{glue.name} {glue.used_for}" for glue in piece.glues),
    )
    for text in words:
        yield text.replace("\n", " "), piece.place
    folder = piece.place.path.rpartition("/")[0]
    yield piece.steps_markdown, Place(f"{folder}/steps.md")
