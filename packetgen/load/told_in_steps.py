"""What the steps of a finishing piece tell, beside what it has: parts, paints, hardware, glue, magnets and backing."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in, seen_from
from packetgen.load.counted_hardware import (
    complain_of_counted_hardware,
    complain_of_sorted_hardware,
    complain_of_unlisted_hardware,
    hardware_names,
)
from packetgen.load.counted_parts import complain_of_counted_magnets, complain_of_counted_parts
from packetgen.load.hardware_in_all import complain_of_hardware_in_all
from packetgen.load.hardware_sizes import (
    complain_of_long_hardware,
    complain_of_piercing_hardware,
    complain_of_scant_hardware,
    complain_of_turned_hardware,
)
from packetgen.load.listed_paints import complain_of_listed_paints
from packetgen.load.one_of_several import complain_of_one_of_several
from packetgen.load.paint_names import complain_of_unknown_paint
from packetgen.load.parts_aligned import STANDS_OTHERWISE
from packetgen.load.told_glue import complain_of_told_glue, names_of_glues
from packetgen.load.told_joints import (
    complain_of_told_joints,
    complain_of_told_magnets,
)
from packetgen.load.told_measures import complain_of_told_measures
from packetgen.load.told_order import complain_of_told_order
from packetgen.load.told_overhangs import complain_of_told_overhangs
from packetgen.load.told_paints import (
    complain_of_coats_of_parts,
    complain_of_listed_coats,
    complain_of_told_coats,
    complain_of_told_paints,
    complain_of_told_spray,
    complain_of_unlisted_coats,
)
from packetgen.load.told_sizes import complain_of_told_sizes
from packetgen.load.told_steps import (
    complain_of_mixed_steps,
    complain_of_step_twice,
    complain_of_told_steps,
)
from packetgen.load.told_templates import complain_of_told_templates
from packetgen.load.told_times import complain_of_told_times
from packetgen.load.told_ways import (
    MOUNTED,
    complain_of_no_trim,
    complain_of_told_cleaning,
    complain_of_told_trim,
    complain_of_unsewn_trim,
)
from packetgen.load.twice import complain_of_bought_twice
from packetgen.load.unknown_parts import complain_of_unknown_part
from packetgen.load.unsaid_part import (
    complain_of_unsaid_hardware,
    complain_of_unsaid_part,
    unsaid_hardware,
)
from packetgen.load.unworked_parts import complain_of_part_twice, complain_of_unworked_part
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Paint, Part
from packetgen.nouns import listed

_MAGNETS = re.compile(r"(?<!no )(?<!without )\b(?:small )?magnets?\b", re.IGNORECASE)
_AND_WASHERS = re.compile(rf"{_MAGNETS.pattern}|(?<!no )(?<!without )\bwashers?\b", re.IGNORECASE)
_BACKED = re.compile(r"\bbacking\b|\bcovers? the back\b", re.IGNORECASE)
_HELD = re.compile(r"\b(?:magnets?|washers?)\b", re.IGNORECASE)
_HOLDING = re.compile(
    r"\b(?:washers?|discs?|disks?|plates?|pairs?|(?:steel|iron|metal)\s+[a-z]+s)\b", re.IGNORECASE
)
_PLACED = re.compile(
    r"\b(?:glu|fix|set|sink|press|stick|put|let|push|plac|attach|secur|fasten|bed|fit|seat|drop|lay|mount|hold)\w*"
    r"(?:(?!washer)[^.!?]){0,80}?\bmagnets?\b|\bmagnets?\s+(?:\w+\s+){0,3}?(?:glu|fix|set|sunk|go|sit|are)\w*",
    re.IGNORECASE,
)
_SHOWN = 4  # further lines that one advice names


def complain_of_steps(
    filled: Filled,
    paints: Sequence[Paint] | None,
    parts: Sequence[Part] | None,
    steps: str,
    path: str,
    problems: Problems,
) -> None:
    """Advice on the `steps` in the file `path`, and on hardware that they do not fit. `paints` and `parts` are None where
    there are none, or one could not be read: of them nothing is said then."""
    own = filled.place.path
    complain_of_told_glue(filled, parts or (), steps, path, problems)
    _complain_of_no_magnets(filled, steps, path, problems)
    _complain_of_no_backing(steps, path, problems)
    complain_of_unsaid_part(filled, steps, problems)
    complain_of_bought_twice(filled, problems)
    complain_of_one_of_several(filled, steps, problems)
    complain_of_told_steps(steps, path, problems)
    complain_of_mixed_steps(steps, path, problems)
    complain_of_step_twice(steps, path, problems)
    complain_of_counted_hardware(filled, steps, path, problems)
    complain_of_hardware_in_all(filled, steps, path, problems)
    unsaid = unsaid_hardware(filled, steps) if steps.strip() else ()
    untold = [line["name"] for line in unsaid]
    offered = complain_of_unlisted_hardware(filled, untold, steps, path, problems)
    complain_of_unsaid_hardware(unsaid, offered, problems)
    complain_of_sorted_hardware(filled, steps, path, problems)
    complain_of_turned_hardware(filled, problems)
    complain_of_told_measures(filled, parts, steps, path, problems)
    complain_of_told_times(filled, paints, steps, path, problems)
    complain_of_told_trim(filled["trim"], steps, path, problems)
    magnets = filled["magnets"]
    if magnets is not None and magnets["pairs"]:
        _complain_of_unplaced_magnets(steps, path, problems)
        complain_of_counted_magnets(magnets["pairs"], steps, path, problems)
    if "trim" not in filled.given:
        complain_of_no_trim(steps, path, problems)
    elif filled["trim"] is not None and filled["trim"]["kind"]:
        complain_of_unsewn_trim(steps, path, problems)
    if paints is not None:
        bought = " ".join(
            [*(paint.name for paint in paints), *names_of_glues(filled), hardware_names(filled)]
        )
        complain_of_unlisted_coats(bought, steps, path, problems)
        names = tuple(paint.name for paint in paints)
        part_names = tuple(part.name for part in parts or ())
        complain_of_unknown_paint(names, part_names, bought, steps, path, problems)
        complain_of_told_spray(paints, steps, path, problems)
        complain_of_told_cleaning(paints, steps, path, problems)
    if parts is not None:
        complain_of_listed_paints(parts, steps, path, problems)
        told = complain_of_told_paints(parts, steps, path, problems)
        told += complain_of_coats_of_parts(parts, steps, path, told, problems)
        complain_of_told_coats(parts, steps, path, told, problems)
        complain_of_listed_coats(parts, steps, path, problems)
        outline = filled["panel"]["outline"] if filled["panel"] is not None else None
        complain_of_told_order(parts, outline, steps, path, problems)
        if not any(one.code in STANDS_OTHERWISE and one.place.path == own for one in problems):
            complain_of_told_joints(parts, steps, path, problems)
        complain_of_told_overhangs(parts, steps, path, problems)
        complain_of_told_sizes(parts, steps, path, problems)
        complain_of_unknown_part(filled, parts, hardware_names(filled), steps, path, problems)
        if not complain_of_part_twice(parts, steps, path, problems):
            complain_of_unworked_part(parts, steps, path, problems)
        complain_of_told_templates(parts, steps, path, problems)
        complain_of_told_magnets(outline, parts, steps, path, problems)
        complain_of_counted_parts(parts, hardware_names(filled), steps, path, problems)
        complain_of_long_hardware(filled, _longest_mm(parts), problems)
        complain_of_scant_hardware(filled, parts, steps, problems)
        complain_of_piercing_hardware(filled, parts, steps, problems)


def _longest_mm(parts: Sequence[Part]) -> float:
    """Across or down, of all parts together in their places."""
    corners = [(x + part.at_mm[0], y + part.at_mm[1]) for part in parts for x, y in part.outline]
    return max((max(side) - min(side) for side in zip(*corners)), default=0.0)


def _complain_of_unplaced_magnets(steps: str, path: str, problems: Problems) -> None:
    """Advice where the steps speak of magnets or washers, and none puts the magnets on the wood; or they speak of magnets
    alone, and of nothing that these hold."""
    spoken = _HELD.search(steps)
    if spoken and not _PLACED.search(steps):
        problems.add(place_in(steps, spoken.start(), path), "magnets-unplaced")
    elif spoken and not _HOLDING.search(steps):
        problems.add(place_in(steps, spoken.start(), path), "washers-unsaid")


def _complain_of_no_backing(steps: str, path: str, problems: Problems) -> None:
    """Advice where the steps tell of mounting, and not what the backing fabric is for that every packet lists."""
    said_at = MOUNTED.search(steps)
    if said_at and not _BACKED.search(steps):
        problems.add(place_in(steps, said_at.start(), path), "backing-idle")


def _complain_of_no_magnets(filled: Filled, steps: str, path: str, problems: Problems) -> None:
    """Advice where cautions, glue, hardware or steps speak of magnets, or of their washers, and the piece has none."""
    magnets = filled["magnets"]
    if magnets is None and "magnets" in filled.given:  # what is wrong with them is told
        return
    if magnets is not None and magnets["pairs"] != 0:
        return
    texts = [(given.value, given.place) for given in filled.each("cautions")]
    for group, name in (("glue", "for"), ("hardware", "name")):
        texts += [
            (given.value[name], given.value.place_of(name))
            for given in filled.each(group)
            if given.value is not None
        ]
    # Washers that are to buy are those of a screw.
    words = _MAGNETS if "washer" in hardware_names(filled) else _AND_WASHERS
    spoken = [(place, words.search(text)) for text, place in texts if text]
    found = [(place, word[0]) for place, word in spoken if word]
    found += [(place_in(steps, word.start(), path), word[0]) for word in words.finditer(steps)]
    if not found:
        return
    place, word = found[0]
    also = dict.fromkeys(seen_from(place, other) for other, _ in found[1:])
    more = f"; so too {listed(tuple(also)[:_SHOWN])}" if also else ""
    problems.add(place, "magnets-none", word=said(word), more=more)
