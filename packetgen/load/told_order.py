"""Parts of a finishing piece that its steps put behind what the list of parts has behind them."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.placed_parts import placed_part
from packetgen.load.prose_words import any_of, step_sentences
from packetgen.load.words import said
from packetgen.model import Part

_LAPS_MM2 = 25.0  # less in common is a joint along an edge


def complain_of_told_order(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first 'the roof behind the board' where the roof is listed after the board, and so is drawn before it."""
    numbers = {part.name.casefold(): number for number, part in enumerate(parts)}
    name = any_of(numbers)
    behind = re.compile(
        rf"\b(?P<one>{name})\b[^,;:]{{0,20}}?\b(?P<side>behind|in\s+front\s+of)\s+(?:the\s+)?(?:[a-z]+\s+){{0,4}}?"
        rf"(?P<other>{name})\b(?!\s+edge)",
        re.IGNORECASE,
    )
    for start, sentence in step_sentences(steps):
        for found in behind.finditer(sentence):
            one, other = (numbers[found[of].casefold()] for of in ("one", "other"))
            is_behind = found["side"].casefold() == "behind"
            if one != other and is_behind == (one > other) and _laps(parts[one], parts[other]):
                facts = {"part": said(parts[one].name), "other": said(parts[other].name)}
                facts |= {"said": "behind" if is_behind else "in front of"}
                facts |= {"listed": "after" if one > other else "before"}
                problems.add(
                    place_in(steps, start + found.start("side"), path), "step-order-other", **facts
                )
                return


def _laps(one: Part, other: Part) -> bool:
    return placed_part(one).intersection(placed_part(other)).area >= _LAPS_MM2
