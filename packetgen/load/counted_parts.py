"""Parts and magnets that the steps count, beside those that the piece has."""

from collections.abc import Iterable

from packetgen.diagnostics import Problems, place_in
from packetgen.load.counted_hardware import THE, are, counting
from packetgen.load.number_words import counted_number
from packetgen.load.words import said
from packetgen.model import Part

_HELD_BY = ("magnet", "washer")


def complain_of_counted_parts(
    parts: Iterable[Part], hardware: str, steps: str, path: str, problems: Problems
) -> None:
    """Advice where a step counts more parts of a kind than there are: 'eight slats' of seven. `hardware` are the names of
    what is bought, which may be called alike."""
    pieces = {"part": 0}
    for part in parts:
        pieces["part"] += part.pieces
        kind = part.name.casefold().split()[-1]
        pieces[kind] = pieces.get(kind, 0) + part.pieces
    for kind, number in pieces.items():
        if kind in hardware.casefold() or not kind.isalpha():
            continue
        for found in counting(kind).finditer(steps):
            if (counted_number(found["number"]) or 0) > number:
                facts = {
                    "said": said(found[0]),
                    "of": "parts" if kind == "part" else f"parts called {said(kind)}",
                    "are": are(number),
                }
                problems.add(place_in(steps, found.start(), path), "step-parts-more", **facts)
                break


def complain_of_counted_magnets(pairs: int, steps: str, path: str, problems: Problems) -> None:
    """Advice where a step counts magnets or washers otherwise than the piece: 'the six magnets' of four pairs."""
    for kind in _HELD_BY:
        for found in counting(kind).finditer(steps):
            told = counted_number(found["number"])
            if told is not None and (
                told > pairs or (told < pairs and THE.search(steps, 0, found.start()))
            ):
                facts = {"said": said(found[0]), "pairs": pairs}
                problems.add(place_in(steps, found.start(), path), "step-magnets-other", **facts)
                return
