"""How large the finishing piece is, and what is screwed into it, by an author's texts, beside finish.yaml."""

import re
from collections.abc import Callable, Sequence

from packetgen.diagnostics import Place, Problems
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.piece_words import UNIT, extent_of, size_said
from packetgen.load.placed_parts import placed_part
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.series_texts import texts_of_patterns, texts_of_series
from packetgen.load.values import Given
from packetgen.load.words import said
from packetgen.model import FinishingPiece, Series
from packetgen.units import MM_PER_UNIT

_N = r"(?<![\w.,/])\d{1,4}(?:\.\d)?"
_SIDE = rf"{_N}\s?{UNIT}\s+(?:wide|high|tall|broad|across|long)"
# 'The gate, which is sawn from board and is ', 'The gate. It stands '.
_BETWEEN = (
    r"[^.;:!?\d]{0,25}?"
    r"|[^.;:!?\d]{0,90}?\band\s+(?:is|measures|stands)\s+"
    r"|\.\s+It\s+(?:is|measures|stands)\s+"
)
# What lies on it, between it and the figure, and what makes a figure none of the piece's own.
_ELSE = re.compile(
    r"\b(?:designs?|stitch\w*|pictures?|patterns?|charts?|cards?|cloths?|magnets?|hooks?|panel|room|border|trim"
    r"|about|some|nearly|almost|hardly|roughly|over|under|than)\b",
    re.IGNORECASE,
)
_SCREWED_IN = re.compile(
    rf"\b{COUNTED}\s+(?:[a-z-]+\s+)?(?P<kind>hook|peg|knob|magnet)s?\b", re.IGNORECASE
)
_MAGNETS = re.compile(rf"\b{COUNTED}\s+(?:[a-z-]+\s+)?(?P<kind>magnet)s?\b", re.IGNORECASE)


def complain_of_told_piece(
    series: Series, path: str, notices: Sequence[Given], problems: Problems
) -> None:
    """Advice on 'the painted gate, 200 mm wide' in a text of the series in the folder `path`, where the whole
    piece is so long on no side, nor, if the words name a part or one is called so too, one of its parts; and on 'the gate has two hooks', where
    it has another number."""
    piece = series.finish
    if not piece.parts:
        return
    noun = re.escape(piece.name.split()[-1])
    named = re.compile(rf"\b{noun}\b", re.IGNORECASE)
    told = re.compile(
        rf"\b{noun}\b(?P<between>{_BETWEEN})(?P<sides>{_SIDE}(?:\s*(?:and|,|by)\s+{_SIDE})?)\b",
        re.IGNORECASE,
    )
    # 'The gate is 200 mm wide', 'a painted gate 200 mm wide' tells of the whole.
    of_part = _of_parts(piece)
    alone = not any(named.search(part.name) for part in piece.parts)
    wide_mm, high_mm, *_ = sides_mm = _sides_mm(piece)
    has = f"is {size_said((wide_mm, high_mm))}"
    of_series = texts_of_series(series, path, notices)
    for text, place_of in (*of_series, *texts_of_patterns(series, path)):
        for found in told.finditer(text):
            may_be = sides_mm if not alone or of_part.search(found["between"]) else sides_mm[:2]
            right = (
                any(abs(one - long) <= near for one in may_be) for long, near in _mm(found["sides"])
            )
            if not _ELSE.search(found["between"]) and not all(right):
                facts = {"said": said(found["sides"]), "piece": said(piece.name), "has": has}
                problems.add(place_of(found.start("sides")), "piece-told-other", **facts)
        for start, sentence in sentences(text):
            if named.search(sentence):
                _look_at_hardware(_SCREWED_IN, sentence, piece, start, place_of, problems)
            # A heavy picture may need more of them, where there are any.
            elif not piece.magnets.pairs or (text, place_of) in of_series:
                _look_at_hardware(_MAGNETS, sentence, piece, start, place_of, problems)


def _of_parts(piece: FinishingPiece) -> re.Pattern[str]:
    """Words by which a part, or something on the piece, is meant."""
    names = any_of({part.name.split()[-1] for part in piece.parts})
    return re.compile(rf"\b(?:{names}|with|has)\b", re.IGNORECASE)


def complain_of_told_about(piece: FinishingPiece, about: Given, problems: Problems) -> None:
    """Advice on 'three hooks below it' in what the piece says of itself, where it has another number, and on '200 mm wide' where
    it is not so, nor a part or the panel that its clause names."""
    _look_at_hardware(_SCREWED_IN, piece.about, piece, 0, about.letter, problems)
    sides_mm = _sides_mm(piece) if piece.parts else ()
    of_part = _of_parts(piece)
    for start, sentence in sentences(piece.about):
        for found in re.finditer(_SIDE, sentence, re.IGNORECASE):
            ((long_mm, near_mm),) = _mm(found[0])
            # 'A frame, 180 mm wide, with room for a picture'.
            clause = sentence[: found.end()] + re.split("[,;:]", sentence[found.end() :])[0]
            may_be = sides_mm if of_part.search(clause) else sides_mm[:2]
            right = any(abs(one - long_mm) <= near_mm for one in may_be)
            if sides_mm and not right and not _ELSE.search(clause):
                wide_mm, high_mm, *_ = sides_mm
                facts = {"said": said(found[0]), "piece": said(piece.name)}
                facts["has"] = f"is {size_said((wide_mm, high_mm))}"
                problems.add(about.letter(start + found.start()), "piece-told-other", **facts)


def _look_at_hardware(
    counted: re.Pattern[str],
    words: str,
    piece: FinishingPiece,
    start: int,
    place_of: Callable[[int], Place],
    problems: Problems,
) -> None:
    for found in counted.finditer(words):
        kind = found["kind"].casefold()
        number = _pieces(piece, kind)
        # 'Hang it on one hook of the board' counts none.
        if counted_number(found["number"]) not in (None, 1, number):
            facts = {"said": said(found[0]), "piece": said(piece.name)}
            facts["has"] = f"has {number or 'no'} {kind}{'s' * (number != 1)}"
            problems.add(place_of(start + found.start()), "piece-told-other", **facts)


def _pieces(piece: FinishingPiece, kind: str) -> int:
    """How many are bought or sawn whose name has that word; the magnets of the piece."""
    if kind == "magnet":
        return piece.magnets.pairs
    word = re.compile(rf"\b{kind}s?\b", re.IGNORECASE)
    listed = [(one.name, one.pieces) for one in piece.hardware]
    listed += [(one.name, one.pieces) for one in piece.parts]
    return sum(pieces for name, pieces in listed if word.search(name))


def _mm(sides: str) -> list[tuple[float, float]]:
    """Each length, and how far it may have been rounded: half of the last figure that is told."""
    told = re.findall(rf"({_N})\s?({UNIT})", sides, re.IGNORECASE)
    return [
        (float(number) * unit_mm, unit_mm / (20 if "." in number else 2))
        for number, unit in told
        for unit_mm in (MM_PER_UNIT[unit.casefold()],)
    ]


def _sides_mm(piece: FinishingPiece) -> tuple[float, ...]:
    """Of the whole, across and down, and of each part and the panel."""
    left, upper, right, lower = zip(
        *(placed_part(part).bounds for part in piece.parts), strict=True
    )
    whole = max(right) - min(left), max(lower) - min(upper)
    outlines = (piece.panel, *(part.outline for part in piece.parts))
    return (*whole, *(side for outline in outlines for side in extent_of(outline)))
