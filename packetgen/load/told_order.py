"""Parts of a finishing piece that its steps put elsewhere than finish.yaml has them: behind, below or beside another."""

import re
from collections.abc import Sequence
from dataclasses import replace

from packetgen.diagnostics import Problems, place_in
from packetgen.load.placed_parts import placed_part
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.words import said
from packetgen.model import Outline, Part

_JOINED = re.compile(r"\b(?:glue|screw|nail|peg|dowel|fix|fasten|attach|mount)\b", re.IGNORECASE)
_LAPS_MM2 = 25.0  # less in common is a joint along an edge
# A side in words → the number of the direction, 0 across and 1 down, and whether the middle lies further on.
_SIDES = {
    "above": (1, False),
    "below": (1, True),
    "to the left of": (0, False),
    "to the right of": (0, True),
}
_OPPOSITE = {
    "above": "below",
    "below": "above",
    "to the left of": "to the right of",
    "to the right of": "to the left of",
}
_EDGE = re.compile(r"\b(?:edge|end|top|bottom)\b", re.IGNORECASE)


def complain_of_told_order(
    parts: Sequence[Part], panel: Outline | None, steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first 'glue the tap to the board, below the panel' where the tap stands above the `panel`; on the first 'the
    roof behind the board' where the roof is listed after the board, and so is drawn before
    it; on the first 'the foot above the board' where it stands below."""
    numbers = {part.name.casefold(): number for number, part in enumerate(parts)}
    name = any_of(numbers)
    sides = "|".join(("behind", "in front of", *_SIDES)).replace(" ", r"\s+")
    told = re.compile(
        rf"\b(?P<one>{name})\b[^,;:]{{0,20}}?\b(?<!from )(?P<side>{sides})\s+(?:the\s+)?(?:[a-z]+\s+){{0,4}}?"
        rf"(?P<other>{name})\b(?!\s+edge)",
        re.IGNORECASE,
    )
    done = set[str]()
    by_panel = re.compile(
        rf"\b(?:glue|fix|screw|peg|nail|dowel)\s+(?:the\s+)?(?P<one>{name})\b[^.;:]{{0,60}}?\b(?P<side>above|below)\s+the\s+panel\b",
        re.IGNORECASE,
    )
    for start, sentence in sentences(steps):
        found = by_panel.search(sentence) if panel else None
        if panel and found:
            part, side = parts[numbers[found["one"].casefold()]], found["side"].casefold()
            of_panel = replace(part, outline=panel, at_mm=(0.0, 0.0))
            if _stands_opposite(part, of_panel, side):
                facts = {"part": said(part.name), "other": "the panel", "said": side}
                facts["stands"] = _OPPOSITE[side]
                place = place_in(steps, start + found.start("side"), path)
                problems.add(place, "step-side-other", **facts)
                done.add("step-side-other")
        for found in told.finditer(sentence):
            one, other = (numbers[found[of].casefold()] for of in ("one", "other"))
            side = " ".join(found["side"].casefold().split())
            facts = {"part": said(parts[one].name), "other": said(parts[other].name), "said": side}
            code = ""
            if one == other:
                continue
            # 'Above the lower edge of the back' may be below its middle.
            if side in _SIDES and _EDGE.search(sentence, found.end("side"), found.start("other")):
                continue
            if side in _SIDES:
                opposite = _stands_opposite(parts[one], parts[other], side)
                beside = _JOINED.search(sentence) and _stands_beside(parts[one], parts[other], side)
                code = "step-side-other" if opposite or beside else ""
                facts["stands"] = _OPPOSITE[side] if opposite else "beside"
            elif (side == "behind") == (one > other) and laps(parts[one], parts[other]):
                code = "step-order-other"
                facts["listed"] = "after" if one > other else "before"
            if code and code not in done:
                problems.add(place_in(steps, start + found.start("side"), path), code, **facts)
                done.add(code)


def laps(one: Part, other: Part) -> bool:
    """Whether one lies before the other, by more than a joint along an edge."""
    return placed_part(one).intersection(placed_part(other)).area >= _LAPS_MM2


def _stands_beside(one: Part, other: Part, side: str) -> bool:
    """Whether the one lies hardly before the other, and more than half of one of them neither further up nor down; or, of the
    left and the right, neither further left nor right."""
    direction, _ = _SIDES[side]
    bounds, of_other = placed_part(one).bounds, placed_part(other).bounds
    begins, ends = direction, direction + 2
    shared = min(bounds[ends], of_other[ends]) - max(bounds[begins], of_other[begins])
    least = min(bounds[ends] - bounds[begins], of_other[ends] - of_other[begins])
    first, then = placed_part(one), placed_part(other)
    before_mm2 = first.intersection(then).area
    return bool(shared > least / 2 and before_mm2 < min(first.area, then.area) / 2)


def _stands_opposite(one: Part, other: Part, side: str) -> bool:
    """Whether all of the one lies on the other side of the middle of the other."""
    direction, further = _SIDES[side]
    bounds, of_other = placed_part(one).bounds, placed_part(other).bounds
    middle = (of_other[direction] + of_other[direction + 2]) / 2
    return bounds[direction + 2] <= middle if further else bounds[direction] >= middle
