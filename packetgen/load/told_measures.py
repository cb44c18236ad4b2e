"""Lengths that the steps of a finishing piece tell otherwise than the piece has them."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Problems, place_in
from packetgen.load.piece_words import UNIT, WOOD, extent_of, mm_said, near_mm
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import listed, plural
from packetgen.units import MM_PER_UNIT

_N = r"(?<![\w.,/×-])\d{1,4}(?:\.\d{1,2})?"
# One length; of 'a × b' and 'a to b' nothing is said here.
_LONG = rf"(?<!× )(?<!x )(?P<long>{_N})[ -]?(?P<unit>{UNIT})(?!\s*(?:×|x|by|to|or|-|–)\s*\d)"
# Of '3 × 30 mm' the one and the other.
_BY = (
    rf"(?P<long>{_N})\s?(?:×|x|by)\s?\d{{1,4}}(?:\.\d{{1,2}})?[ -]?(?P<unit>{UNIT})",
    rf"{_N}\s?(?:×|x|by)\s?(?P<long>\d{{1,4}}(?:\.\d{{1,2}})?)[ -]?(?P<unit>{UNIT})",
)
_BETWEEN = r"[^\d,;:()]{0,30}?"  # words that tell of nothing else
_EXACT_MM = 0.05
_ALL_ROUND = r"(?:\s+all\s+round|\s+on\s+(?:all|every|each)\s+sides?)?"


@dataclass(frozen=True)
class _Measure:
    """What the piece has, in words and in mm, and how steps tell of it: what its sentence has beside, and has not."""

    own: str
    own_mm: tuple[float, ...]
    told: tuple[str, ...]
    beside: str = ""
    never: str = r"(?!)"
    exact: bool = False  # screws of 3 mm and of 3.5 mm are two kinds


def complain_of_told_measures(
    filled: Filled, parts: Sequence[Part] | None, steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first length of each kind that the piece has otherwise."""
    in_turn = sentences(steps)
    for measure in (*_measures(filled), *_of_hardware(filled), *_of_wood(parts or ())):
        for start, sentence in in_turn:
            if found := _otherwise(measure, sentence):
                facts = {"said": said(found[0]), "own": measure.own}
                place = place_in(steps, start + found.start(), path)
                problems.add(place, "step-measure-other", **facts)
                break


def _otherwise(measure: _Measure, sentence: str) -> re.Match[str] | None:
    if not _find(measure.beside, sentence) or _find(measure.never, sentence):
        return None
    for pattern in measure.told:
        found = _find(pattern, sentence)
        if found:
            long_mm = float(found["long"]) * MM_PER_UNIT[found["unit"].casefold()]
            exact = measure.exact and found["unit"].casefold() != "in"
            near = _EXACT_MM if exact else near_mm(found["unit"])
            return None if any(abs(long_mm - one) <= near for one in measure.own_mm) else found
    return None


def _find(pattern: str, sentence: str) -> re.Match[str] | None:
    return re.search(pattern, sentence, re.IGNORECASE | re.ASCII)


def _measures(filled: Filled) -> Iterator[_Measure]:
    """Of mounting: what is folded over, the border, the wadding, the trim and the magnets."""
    if (fold_mm := filled["fold_over"]) is not None:
        yield _Measure(
            f"'fold_over' is {mm_said(fold_mm)}",
            (fold_mm,),
            (rf"\b(?:fold|turn|bring|wrap|lace|tape)s?\b{_BETWEEN}{_LONG}",),
            r"\bback\b",
            r"\b(?:backing|trim|under|hem|tape|apart|stitches)\b",
        )
        yield _Measure(
            f"'fold_over' is {mm_said(fold_mm)}",
            (fold_mm,),
            (rf"\bfold[ -]?over\s+of\s+{_LONG}", rf"{_LONG}\s+(?:of\s+)?fold[ -]?over\b"),
        )
    if (border_mm := filled["border"]) is not None:
        yield _Measure(
            f"'border' is {mm_said(border_mm)}",
            (border_mm,),
            (
                rf"{_LONG}\s+(?:larger|bigger|wider){_ALL_ROUND}\s+than\s+the\s+(?:design|stitching)",
            ),
            r"\bcard\b",
            r"\b(?:in all|cloth|fabric|each way|both ways)\b",
        )
    if (inset_mm := filled["wadding_inset"]) is not None:
        yield _Measure(
            f"'wadding_inset' is {mm_said(inset_mm)}",
            (inset_mm,),
            (rf"\bwadding\b[^\d;:()]{{0,40}}?{_LONG}\s+(?:smaller|inside)\b",),
            never=r"\b(?:in all|each way|both ways)\b",
        )
    trim, magnets = filled["trim"], filled["magnets"]
    if trim is not None and trim["overlap"] is not None:
        overlap_mm = trim["overlap"]
        yield _Measure(
            f"'overlap' of the trim is {mm_said(overlap_mm)}",
            (overlap_mm,),
            (rf"\boverlap\w*\b{_BETWEEN}{_LONG}",),
            r"\b(?:trim|ends)\b",
        )
    if trim is not None and trim["width"]:
        yield _Measure(
            f"'width' of the trim is {mm_said(trim['width'])}",
            (trim["width"],),
            (
                rf"\btrim\b,?{_BETWEEN}{_LONG}\s+wide\b",
                rf"{_LONG}(?:\s+wide)?\s+(?:[a-z]+\s+)?trim\b",
            ),
        )
    if (
        magnets is not None
        and magnets["pairs"]
        and None not in (magnets["diameter"], magnets["thickness"])
    ):
        across_mm, thick_mm = magnets["diameter"], magnets["thickness"]
        yield _Measure(
            f"a magnet is {mm_said(across_mm)} across and {mm_said(thick_mm)} thick",
            (across_mm, thick_mm),
            (rf"{_LONG}\s+(?:[a-z]+\s+)?magnets?\b", rf"\bmagnets?(?:\s+of|,)\s+{_LONG}"),
        )


def _of_hardware(filled: Filled) -> Iterator[_Measure]:
    """Of kinds of which each entry has its size."""
    entries: dict[str, list[tuple[str, str]]] = {}
    for one in filled.each("hardware"):
        if one.value is not None and (name := one.value["name"]):
            kind = name.casefold().split()[-1]
            entries.setdefault(kind, []).append((name, one.value["size"] or ""))
    for kind, of_kind in entries.items():
        names, all_sizes = zip(*of_kind, strict=True)
        if not all(all_sizes):
            continue
        many = rf"(?:{re.escape(kind)}|{re.escape(plural(kind))})\b"
        all_mm = tuple(
            float(number) * factor
            for size in all_sizes
            for number in re.findall(r"\d{1,4}(?:\.\d{1,2})?", size)
            for factor in {MM_PER_UNIT[unit] for unit in re.findall(r"mm|cm|in\b", size)}
        )
        for told in (
            (
                rf"{_LONG}(?:\s+long)?\s+(?:[a-z-]+\s+)?{many}",
                rf"\b{many}(?:\s+of\s+|,\s+|\s+\(){_LONG}",
            ),
            *(
                (rf"{size}\s+(?:[a-z-]+\s+)?{many}", rf"\b{many}(?:\s+of\s+|,\s+|\s+\(){size}")
                for size in _BY
            ),
        ):
            own = f"{said(kind if len(names) > 1 else names[0])} has the size {listed(tuple(map(said, all_sizes)))}"
            yield _Measure(own, all_mm, told, exact=True)


def _of_wood(parts: Sequence[Part]) -> Iterator[_Measure]:
    """How thick each part is, and what is sawn for it; where no part is named, of any."""
    names = any_of(part.name.casefold() for part in parts)
    thick = (
        rf"{_LONG}\s+thick\b",
        rf"{_LONG}(?:\s+(?:birch|pine|oak|beech|lime|poplar))?\s+{WOOD}\b(?!\s+(?:screw|glue|dowel|pin|nail|filler|peg))",
        rf"\b{WOOD}\s+of\s+{_LONG}",
    )
    never = r"\b(?:card|wadding|felt|cork|foam|glass|coats?|magnets?|washers?|scrap|waste|spacer)\b"
    for part in parts:
        wide_mm, high_mm = extent_of(part.outline)
        one_name = rf"\b{re.escape(part.name.casefold())}s?\b"
        others = any_of(one.name.casefold() for one in parts if one is not part)
        beside, beside_none = one_name, rf"{never}|\b(?:{others})s?\b"
        own = f"{said(part.name)} is {mm_said(part.thickness_mm)} thick"
        yield _Measure(own, (part.thickness_mm, wide_mm, high_mm), thick, beside, beside_none)
    if parts:
        all_mm = tuple(sorted({part.thickness_mm for part in parts}))
        own = listed(tuple(map(mm_said, all_mm)))
        yield _Measure(
            f"its parts are {own} thick", all_mm, thick, never=rf"{never}|\b(?:{names})s?\b"
        )
