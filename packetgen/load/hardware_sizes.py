"""Sizes of hardware, beside the parts that it is driven into."""

import re
from collections.abc import Iterable

from packetgen.diagnostics import Problems
from packetgen.load.counted_hardware import kind_of
from packetgen.load.piece_words import mm_said
from packetgen.load.prose_words import SENTENCE, any_of
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import plural
from packetgen.units import MM_PER_UNIT

# What goes into wood, and so is no longer than the piece is.
_DRIVEN_IN = "screw|nail|bolt|dowel|pin|tack"
_DRIVEN = re.compile(rf"\b(?:{_DRIVEN_IN})s?\b", re.IGNORECASE)
_INTO_WOOD = re.compile(
    rf"\b(?:{_DRIVEN_IN}|hook|eye|hanger|ring|plate|hinge|bracket|latch|knob|clip)s?\b",
    re.IGNORECASE,
)
_LAST_LENGTH = re.compile(r"(\d+(?:\.\d+)?)\s*(mm|cm|in)\b(?!.*\d)", re.ASCII)
# '16 × 3 mm': of what is driven in, thickness comes first.
_TWO_SIDES = re.compile(
    r"(?P<first>\d+(?:\.\d+)?)\s*(?:×|x|by)\s*(?P<last>\d+(?:\.\d+)?)\s*(?P<unit>mm|cm|in)\b",
    re.ASCII,
)
_PIERCES = re.compile(rf"\b(?:{_DRIVEN_IN}|screw\s+eye)s?\b", re.IGNORECASE)
# So far at least what holds comes out of the part that it goes through; our own choice, below what is common practice.
_HOLDS_MM = 3


def complain_of_turned_hardware(filled: Filled, problems: Problems) -> None:
    """Advice on a screw and the like that would be thicker than it is long."""
    for one in filled.each("hardware"):
        line = one.value
        if line is None or not line["name"] or not _DRIVEN.search(line["name"]):
            continue
        size = _TWO_SIDES.search(line["size"] or "")
        if size and float(size["first"]) > float(size["last"]):
            right = f"{size['last']} × {size['first']} {size['unit']}"
            facts = {"name": said(line["name"]), "size": size[0], "right": right}
            problems.add(line.place_of("size"), "hardware-turned", **facts)


def complain_of_long_hardware(filled: Filled, longest_mm: float, problems: Problems) -> None:
    """Advice on what goes into wood or hangs on it, and is longer than the whole piece is wide and high; on a screw and the
    like that is longer than half of that."""
    for one in filled.each("hardware"):
        line = one.value
        if line is None or not line["name"] or not line["size"]:
            continue
        length = _LAST_LENGTH.search(line["size"])
        if not length or not _INTO_WOOD.search(line["name"]):
            continue
        length_mm = float(length[1]) * MM_PER_UNIT[length[2]]
        if length_mm > (longest_mm / 2 if _DRIVEN.search(line["name"]) else longest_mm):
            facts = {"name": said(line["name"]), "size": length[0], "piece": mm_said(longest_mm)}
            facts["half"] = "" if length_mm > longest_mm else "half of "
            problems.add(line.place_of("size"), "hardware-long", **facts)


def complain_of_scant_hardware(
    filled: Filled, parts: Iterable[Part], steps: str, problems: Problems
) -> None:
    """Advice on a screw and the like that comes hardly out of a part through which a step drives it, however it lies."""
    thick_mm = {}
    for part in parts:
        wide_mm, high_mm = (max(side) - min(side) for side in zip(*part.outline))
        thick_mm[part.name.casefold()] = min(part.thickness_mm, wide_mm, high_mm)
    through = re.compile(
        rf"\bthrough\s+(?:the\s+|each\s+|both\s+)?(?P<part>{any_of(thick_mm)})s?\b", re.IGNORECASE
    )
    entries = [one.value for one in filled.each("hardware") if one.value is not None]
    for line in entries:
        length = _LAST_LENGTH.search(line["size"] or "")
        if not line["name"] or not _DRIVEN.search(line["name"]) or not length:
            continue
        kind = kind_of(line["name"])
        length_mm = float(length[1]) * MM_PER_UNIT[length[2]]
        alike = [one for one in entries if one["name"] and kind_of(one["name"]) == kind]
        for sentence in SENTENCE.finditer(steps):
            found = through.search(sentence[0])
            spoken_of = re.search(rf"\b{re.escape(kind)}", sentence[0], re.IGNORECASE)
            if len(alike) > 1 or not found or not spoken_of:
                continue
            thick = thick_mm[found["part"].casefold()]
            if length_mm < (enough_mm := thick + _HOLDS_MM):
                facts = {"name": said(line["name"]), "size": length[0], "said": said(found[0])}
                facts |= {"thick": mm_said(thick), "enough": mm_said(enough_mm)}
                problems.add(line.place_of("size"), "hardware-scant", **facts)
                return


def complain_of_piercing_hardware(
    filled: Filled, parts: Iterable[Part], steps: str, problems: Problems
) -> None:
    """Advice on a screw and the like that goes into the back of a part, and is longer than that is thick."""
    thick_mm = {part.name.casefold(): part.thickness_mm for part in parts}
    thick_mm |= {plural(name): thick for name, thick in thick_mm.items()}
    kinds = {name.split()[-1] for name in thick_mm}
    for kind in kinds - thick_mm.keys():  # 'the posts' are as thick as one another
        of_kind = {of for name, of in thick_mm.items() if name.split()[-1] == kind}
        if len(of_kind) == 1:
            thick_mm[kind] = of_kind.pop()
    into_back = re.compile(
        rf"\b(?:into|to)\s+the\s+backs?\s+of\s+(?:the\s+|both\s+|each\s+)?(?P<part>{any_of(thick_mm)})(?![\w-])",
        re.IGNORECASE,
    )
    for one in filled.each("hardware"):
        line = one.value
        if line is None or not line["name"] or not _PIERCES.search(line["name"]):
            continue
        name, length = line["name"].casefold(), _LAST_LENGTH.search(line["size"] or "")
        for sentence in SENTENCE.finditer(steps) if length else ():
            found = into_back.search(sentence[0])
            named = re.search(rf"\b{re.escape(name)}", sentence[0], re.IGNORECASE)
            if not found or not named or _is_apart(sentence[0], named, found):
                continue
            thick = thick_mm[found["part"].casefold()]
            if (
                length
                and "across" not in line["size"]
                and float(length[1]) * MM_PER_UNIT[length[2]] > thick
            ):
                facts = {"name": said(line["name"]), "size": length[0]}
                facts |= {"said": said(found[0]), "thick": mm_said(thick)}
                problems.add(line.place_of("size"), "hardware-through", **facts)
                return


def _is_apart(sentence: str, one: re.Match[str], other: re.Match[str]) -> bool:
    """Whether a comma or 'and' parts the two: 'glue it to the back of the tray, and put in the screws'."""
    between = sentence[min(one.end(), other.end()) : max(one.start(), other.start())]
    return bool(re.search(r",\s+(?!\d)|\band\b", between, re.IGNORECASE))
