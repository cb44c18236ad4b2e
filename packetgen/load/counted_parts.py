"""Parts and magnets that the steps count, beside those that the piece has."""

import re
from collections.abc import Iterable, Iterator

from packetgen.diagnostics import Problems, place_in
from packetgen.load.counted_hardware import THE, are, counting, told_in_all
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import plural

# What is done to all parts of a piece.
_ALL = re.compile(
    r"\b(?:(?P<sawn>saw|cut)|paint|sand|smooth|varnish|wax)\s+(?:out\s+)?(?:(?:all|each|both)\s+of\s+|all\s+)?(?:the\s+|its\s+|these\s+)?"
    rf"(?P<what>(?:both|{COUNTED})(?:\s+(?:parts|pieces)\b|(?=\s+as\b)))",
    re.IGNORECASE,
)
_HELD_BY = ("magnet", "washer")


def complain_of_counted_parts(
    parts: Iterable[Part], hardware: str, steps: str, path: str, problems: Problems
) -> None:
    """Advice where a step counts more parts of a kind than there are, 'eight slats' of seven, or does something to fewer
    parts in all, 'paint both parts' of three. `hardware` are the names of
    what is bought, which may be called alike."""
    pieces = {"part": 0}
    kinds = tuple(parts)
    several = {part.name.casefold().split()[-1] for part in kinds if part.pieces > 1}
    for part in kinds:
        pieces["part"] += part.pieces
        kind = part.name.casefold().split()[-1]
        pieces[kind] = pieces.get(kind, 0) + part.pieces
    for found in _ALL.finditer(steps):
        told = counted_number(found["number"]) if found["number"] else 2
        beyond = told is not None and told > pieces["part"] and "part" in found["what"].casefold()
        # Kinds of parts may be painted; what is sawn are pieces.
        right = {pieces["part"]} if found["sawn"] else {pieces["part"], len(kinds)}
        if told is not None and told not in right and not beyond:
            facts = {"said": said(found["what"]), "of": "parts", "are": are(pieces["part"])}
            problems.add(place_in(steps, found.start("what"), path), "step-parts-more", **facts)
            break
    for kind, number in pieces.items():
        if kind in hardware.casefold() or not kind.isalpha():
            continue
        for found, told, every in _told(kind, steps):
            if told > number or (told < number and kind in several and every):
                facts = {
                    "said": said(found[0]),
                    "of": "parts" if kind == "part" else f"parts called {said(kind)}",
                    "are": are(number),
                }
                problems.add(place_in(steps, found.start(), path), "step-parts-more", **facts)
                break


def _told(kind: str, steps: str) -> Iterator[tuple[re.Match[str], int, bool]]:
    """Where parts of the kind are counted, how many, and whether these are all."""
    for found in counting(kind).finditer(steps):
        every = not found["what"] and bool(THE.search(steps, 0, found.start()))
        yield found, told_in_all(found) or 0, every
    for found in re.finditer(rf"\bboth\s+(?:the\s+)?{plural(kind)}\b", steps, re.IGNORECASE):
        yield found, 2, True


def complain_of_counted_magnets(pairs: int, steps: str, path: str, problems: Problems) -> None:
    """Advice where a step counts magnets or washers otherwise than the piece: 'the six magnets' of four pairs."""
    for kind in _HELD_BY:
        for found in counting(kind).finditer(steps):
            told = told_in_all(found)
            if told is not None and (
                told > pairs or (told < pairs and THE.search(steps, 0, found.start()))
            ):
                facts = {"said": said(found[0]), "pairs": pairs}
                problems.add(place_in(steps, found.start(), path), "step-magnets-other", **facts)
                return
