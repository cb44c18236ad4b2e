"""Parts of a finishing piece that stand otherwise than those they belong to: beside the middle of the others, unlike their
twin, or below the foot."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import islice, pairwise
from statistics import median

from packetgen.diagnostics import Problems
from packetgen.load.piece_words import extent_of, mm_said, size_said
from packetgen.load.placed_parts import ROUNDED_MM, Bounds, placed_part
from packetgen.load.points import point_said
from packetgen.load.slipped_places import exchanged_places
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Outline, Part
from packetgen.nouns import counted, listed

# Limits of what is told; all are our own choice. So near to the middle is in it.
_MIDDLE_MM = 1
_AGREE = 3  # that share a middle at least, beside the one that does not
_LONE = 3  # that share a middle at least, where a pair stands unevenly about it
_BROAD = 0.5  # of the width of the whole; what is narrower may well stand at one side
_SIDE = re.compile(r"\b(?:left|right)(?:-hand)?\b")
_SIDES = (
    (("left", "right"), 0, "to the right of"),
    (("upper", "lower"), 1, "below"),
    (("top", "bottom"), 1, "below"),
)
# Of what is told so no step is said to join it wrongly.
STANDS_OTHERWISE = {"part-pair-unlike", "part-pair-sides", "part-below-foot", "part-off-middle"}
_FEET = {"foot", "base", "plinth"}


def complain_of_alignment(
    panel: Filled, parts: Sequence[Part], stand: Sequence[Filled], problems: Problems
) -> None:
    """Advice on the first pair of a left and a right part that differ in one direction, on the one part that has left the
    middle of the others, or would be in it but for two figures, and on the one that reaches below the foot. `stand` are the parts as the author wrote them."""
    if unlike := _unlike_pair(parts):
        number, twin, (field, told) = unlike
        line = stand[twin].place_of(field).line
        facts = {"told": told, "twin": said(parts[twin].name), "line": line}
        problems.add(stand[number].place_of(field), "part-pair-unlike", **facts)
        return
    if sides := _on_other_sides(parts):
        one, other, stands = sides
        facts = {"one": said(parts[one].name), "stands": stands, "other": said(parts[other].name)}
        problems.add(stand[one].place_of("name"), "part-pair-sides", **facts)
        return
    if low := below_foot(parts):
        facts = {"part": said(parts[low.number].name), "other": said(parts[low.foot].name)}
        facts |= {"much": mm_said(low.by_mm), "right": point_said(_foot_below(parts, low))}
        problems.add(stand[low.number].place_of("outline"), "part-below-foot", **facts)
        return
    if uneven := _uneven_pair(panel["outline"], parts):
        left, right, middle_mm = uneven
        from_left = round(middle_mm - placed_part(parts[left]).bounds[0], 2)
        from_right = round(placed_part(parts[right]).bounds[2] - middle_mm, 2)
        facts = {"left": said(parts[left].name), "right": said(parts[right].name)}
        facts |= {"from_left": mm_said(from_left), "from_right": mm_said(from_right)}
        line = stand[right].place_of("at").line
        moved, facts["mend"] = _moved(parts, left, right, from_left - from_right, line)
        problems.add(stand[moved].place_of("at"), "part-pair-uneven", **facts)
        return
    if odd := _beside_middle(panel["outline"], parts):
        side = "right" if odd.by_mm > 0 else "left"
        facts = {"much": mm_said(abs(odd.by_mm)), "side": side}
        if odd.number is None:
            problems.add(panel.place_of("outline"), "panel-off-middle", **facts)
            return
        part = parts[odd.number]
        facts["mend"], field = "mend its outline", "outline"
        if (reached := _short_of(odd, parts)) is not None:
            wide = mm_said(round(extent_of(part.outline)[0] + 2 * abs(odd.by_mm), 2))
            end = said(parts[reached].name)
            facts["mend"] = f"if it shall reach {end}, make it {wide} wide; else mend its outline"
        elif not _beside_another(part, parts):
            at = point_said((part.at_mm[0] - odd.by_mm, part.at_mm[1]))
            with_it = _as_wide_without(odd, parts)
            grow = f" (and should {listed(with_it, 'and')} grow with it?)" if with_it else ""
            facts["mend"] = f"if it stays so wide, write at: {at}{grow}; else mend its outline"
            field = "at" if stand[odd.number].given["at"].name_place else "name"
        problems.add(
            stand[odd.number].place_of(field), "part-off-middle", part=said(part.name), **facts
        )
    elif slip := _slipped_aside(panel["outline"], parts):
        number, by_mm, meant_mm = slip
        facts = {"part": said(parts[number].name), "much": mm_said(abs(by_mm))}
        facts |= {"side": "right" if by_mm > 0 else "left"}
        facts["mend"] = f"should its 'at' be {point_said(meant_mm)}?"
        problems.add(stand[number].place_of("at"), "part-off-middle", **facts)


def _moved(
    parts: Sequence[Part], left: int, right: int, by_mm: float, line: int
) -> tuple[int, str]:
    """The one of two unevenly standing parts at which it is told, and the places that `by_mm` more to the right would make
    even: the one whose place has two figures exchanged, or that stays within the other parts; or else both, the right one's
    as that of its line."""
    even = {one: (parts[one].at_mm[0] + by_mm, parts[one].at_mm[1]) for one in (left, right)}
    slipped = [one for one in even if even[one] in exchanged_places(*parts[one].at_mm)]
    if len(slipped) == 1:
        return slipped[0], f"should its 'at' be {point_said(even[slipped[0]])}?"
    others = [placed_part(part).bounds for number, part in enumerate(parts) if number not in even]
    first, _, last, _ = _around(others)
    within = [
        one
        for one in even
        if first - ROUNDED_MM <= placed_part(parts[one]).bounds[0] + by_mm
        and placed_part(parts[one]).bounds[2] + by_mm <= last + ROUNDED_MM
    ]
    if len(within) == 1:
        return within[0], f"write at: {point_said(even[within[0]])}"
    other = f"at: {point_said(even[right])} for {said(parts[right].name)} on line {line}"
    return left, f"write at: {point_said(even[left])} here, or {other}"


def _as_wide_without(odd: "_Odd", parts: Sequence[Part]) -> tuple[str, ...]:
    """At most two other parts that end where the wide one does on one side, and on the other where it would end in the
    middle."""
    left, _, right, _ = placed_part(parts[odd.number or 0]).bounds
    ends = (left, right - 2 * odd.by_mm) if odd.by_mm > 0 else (left - 2 * odd.by_mm, right)
    spans = (placed_part(one).bounds[::2] for one in parts)
    alike = (
        said(one.name)
        for one, span in zip(parts, spans, strict=True)
        if max(abs(span[0] - ends[0]), abs(span[1] - ends[1])) <= ROUNDED_MM
    )
    return tuple(islice(alike, 2))


def _short_of(odd: "_Odd", parts: Sequence[Part]) -> int | None:
    """The number of the part that one would reach with its free end if it were so much longer that it stands in the middle."""
    left, upper, right, lower = placed_part(parts[odd.number or 0]).bounds
    for number, part in enumerate(parts):
        first, start, last, end = placed_part(part).bounds
        gap_mm = left - last if odd.by_mm > 0 else first - right
        beside = min(lower, end) - max(upper, start) > ROUNDED_MM
        if beside and abs(gap_mm - 2 * abs(odd.by_mm)) <= ROUNDED_MM:
            return number
    return None


def _beside_another(part: Part, parts: Sequence[Part]) -> bool:
    """Whether its left or right edge lies along one of another part still: then it was not moved."""
    left, upper, right, lower = placed_part(part).bounds
    return any(
        min(abs(left - last), abs(right - first)) <= ROUNDED_MM
        and min(lower, end) - max(upper, start) > ROUNDED_MM
        for first, start, last, end in (placed_part(one).bounds for one in parts)
    )


def _unlike_pair(parts: Sequence[Part]) -> tuple[int, int, tuple[str, str]] | None:
    """The number of a part, that of its twin, the field in which the two differ, and what is told of them: of the second, unless
    that one is as thick as some other part and its twin is not."""
    first: dict[str, int] = {}
    for number, part in enumerate(parts):
        if not _SIDE.search(part.name.casefold()):
            continue
        twin = first.setdefault(_SIDE.sub("*", part.name.casefold()), number)
        others = {one.thickness_mm for at, one in enumerate(parts) if at not in (number, twin)}
        usual = part.thickness_mm in others and parts[twin].thickness_mm not in others
        one, other = (twin, number) if usual else (number, twin)
        if twin != number and (how := _how_unlike(parts[one], parts[other])):
            return one, other, how
    return None


def _on_other_sides(parts: Sequence[Part]) -> tuple[int, int, str] | None:
    """The numbers of a left part that stands to the right of its right twin, or of an upper one below its lower twin, of that
    one, and where it stands."""
    for (first, last), direction, stands in _SIDES:
        for one, other in _twins(parts, first, last):
            if _middle_mm(parts[one], direction) > _middle_mm(parts[other], direction) + ROUNDED_MM:
                return one, other, stands
    return None


def _uneven_pair(panel: Outline, parts: Sequence[Part]) -> tuple[int, int, float] | None:
    """The numbers of a left part and its right twin that stand out unevenly from the one middle that the panel and all broad
    parts without a twin share, and where that middle is."""
    middle_mm = _shared_middle_mm(panel, parts)
    if middle_mm is None:
        return None
    for left, right in _twins(parts, "left", "right"):
        before_mm = middle_mm - placed_part(parts[left]).bounds[0]
        behind_mm = placed_part(parts[right]).bounds[2] - middle_mm
        if abs(before_mm - behind_mm) > 2 * _MIDDLE_MM:
            return left, right, middle_mm
    return None


def _shared_middle_mm(panel: Outline, parts: Sequence[Part]) -> float | None:
    """The one middle of the panel and all broad parts without a twin; None where they are few or differ."""
    lone = [
        (left + right) / 2
        for of, (left, _, right, _) in _broad(panel, parts).items()
        if not isinstance(of, str)
    ]
    if len(lone) < _LONE or max(lone) - min(lone) > _MIDDLE_MM:
        return None
    return sum(lone) / len(lone)


def _slipped_aside(
    panel: Outline, parts: Sequence[Part]
) -> tuple[int, float, tuple[float, float]] | None:
    """The number of a part, how far it stands to the right of the shared middle, and its place with two figures exchanged, at
    which it stands in it."""
    middle_mm = _shared_middle_mm(panel, parts)
    if middle_mm is None:
        return None
    for number, part in enumerate(parts):
        by_mm = _middle_mm(part, 0) - middle_mm
        for at in exchanged_places(*part.at_mm):
            if at[1] == part.at_mm[1] and abs(at[0] - part.at_mm[0] + by_mm) <= ROUNDED_MM:
                return number, round(by_mm, 2), at
    return None


def even_with_twin(
    panel: Outline, parts: Sequence[Part], number: int
) -> tuple[float, float] | None:
    """The place at which a part would stand as far from the middle as its twin, where it does not; else None."""
    uneven = _uneven_pair(panel, parts)
    if uneven is None or number not in uneven[:2]:
        return None
    left, right, middle_mm = uneven
    outer_mm = placed_part(parts[left]).bounds[0] + placed_part(parts[right]).bounds[2]
    across, down = parts[number].at_mm
    return round(across + 2 * middle_mm - outer_mm, 2), down


def _twins(parts: Sequence[Part], first: str, last: str) -> Iterator[tuple[int, int]]:
    """The numbers of parts that are called alike but for their side."""
    called = {part.name.casefold(): number for number, part in enumerate(parts)}
    for name, one in called.items():
        other = called.get(re.sub(rf"\b{first}\b", last, name), one)
        if other != one:
            yield one, other


def _middle_mm(part: Part, direction: int) -> float:
    """Of its width, 0, or of its height, 1, where it stands."""
    bounds = placed_part(part).bounds
    return float(bounds[direction] + bounds[direction + 2]) / 2


def _how_unlike(part: Part, twin: Part) -> tuple[str, str] | None:
    """The field and what is told; None of twins that are alike, and of two that differ both ways, as large and small ones
    do."""
    name, other = said(part.name), said(twin.name)
    size, of_twin = extent_of(part.outline), extent_of(twin.outline)
    unlike = [abs(one - two) > ROUNDED_MM for one, two in zip(size, of_twin, strict=True)]
    if unlike.count(True) == 1:
        return "outline", f"{name} is {size_said(size)}, and {other} {size_said(of_twin)}"
    if any(unlike):
        return None
    if part.thickness_mm != twin.thickness_mm:
        thick, of_twin_mm = mm_said(part.thickness_mm), mm_said(twin.thickness_mm)
        return "thickness", f"{name} is {thick} thick, and {other} {of_twin_mm}"
    coats, of_twin_coats = (sum(coat.coats for coat in one.painted) for one in (part, twin))
    if coats and of_twin_coats and coats != of_twin_coats:
        return "coats", f"{name} has {counted(coats, 'coat')}, and {other} {of_twin_coats}"
    lower_mm = placed_part(part).bounds[1] - placed_part(twin).bounds[1]
    if abs(lower_mm) <= ROUNDED_MM:
        return None
    way = "lower" if lower_mm > 0 else "higher"
    return "at", f"{name} stands {mm_said(abs(lower_mm))} {way} than {other}"


@dataclass(frozen=True)
class Low:
    """The numbers of a part, and of the foot below which it reaches, and how far."""

    number: int
    foot: int
    by_mm: float


def below_foot(parts: Sequence[Part]) -> Low | None:
    """The one part that reaches below the one foot of a piece."""
    feet = [number for number, part in enumerate(parts) if _kind(part) in _FEET]
    if len(feet) != 1 or parts[feet[0]].pieces > 1:
        return None
    ends = [placed_part(part).bounds[3] for part in parts]
    below = [number for number, end in enumerate(ends) if end > ends[feet[0]] + ROUNDED_MM]
    return Low(below[0], feet[0], ends[below[0]] - ends[feet[0]]) if len(below) == 1 else None


def _foot_below(parts: Sequence[Part], low: Low) -> tuple[float, float]:
    """The 'at' with which the foot begins where the other part ends."""
    foot = parts[low.foot]
    begins, ends = placed_part(foot).bounds[1], placed_part(parts[low.number]).bounds[3]
    return foot.at_mm[0], foot.at_mm[1] + ends - begins


@dataclass(frozen=True)
class _Odd:
    """The number of a part, or None for the panel, that stands so far to the right of the middle of all others."""

    number: int | None
    by_mm: float


def _beside_middle(panel: Outline, parts: Sequence[Part]) -> _Odd | None:
    of_all = {
        of: (left + right) / 2 for of, (left, _, right, _) in _alone_or_together(panel, parts)
    }
    middles = {of: of_all[of] for of in _broad(panel, parts)}
    for odd, own in middles.items():
        others = [middle for of, middle in middles.items() if of != odd]
        if len(others) < _AGREE - (odd is not None) or isinstance(odd, str):
            continue
        by_mm = own - median(others)
        together = max(others) - min(others) <= _MIDDLE_MM
        agree = sum(abs(middle - median(others)) <= _MIDDLE_MM for middle in of_all.values())
        if together and agree >= _AGREE and abs(by_mm) > _MIDDLE_MM:
            return _Odd(odd, round(by_mm, 2))
    return None


def _broad(panel: Outline, parts: Sequence[Part]) -> dict[int | str | None, Bounds]:
    """Those of `_alone_or_together` that take up much of the whole width."""
    shapes = dict(_alone_or_together(panel, parts))
    wide = max(one[2] for one in shapes.values()) - min(one[0] for one in shapes.values())
    return {of: one for of, one in shapes.items() if one[2] - one[0] >= _BROAD * wide}


def _alone_or_together(
    panel: Outline, parts: Sequence[Part]
) -> Iterator[tuple[int | str | None, Bounds]]:
    """The bounds of the panel, under None, of each part that is the only one of its kind, or that stands above or below the
    others of its kind, under its number, and of all slats or posts side by side together."""
    across, down = zip(*panel)
    yield None, (min(across), min(down), max(across), max(down))
    kinds = Counter(map(_kind, parts))
    for kind, many in kinds.items():
        numbers = [number for number, part in enumerate(parts) if _kind(part) == kind]
        if all(parts[number].pieces == 1 for number in numbers):
            of_kind = [placed_part(parts[number]).bounds for number in numbers]
            if many == 1 or _above_each_other(of_kind):
                yield from zip(numbers, of_kind, strict=True)
            else:
                yield kind, _around(of_kind)


def _above_each_other(bounds: Sequence[Bounds]) -> bool:
    """Whether they have more of their width in common than the half of any of them, and none of their height."""
    left, top, right, bottom = zip(*bounds, strict=True)
    common_mm = min(right) - max(left)
    high = sorted(zip(top, bottom, strict=True))
    apart = all(upper[1] <= lower[0] + ROUNDED_MM for upper, lower in pairwise(high))
    return apart and all(2 * common_mm > last - first for first, last in zip(left, right))


def _around(bounds: Sequence[Bounds]) -> Bounds:
    """What all of them take together."""
    left, top, right, bottom = zip(*bounds, strict=True)
    return min(left), min(top), max(right), max(bottom)


def _kind(part: Part) -> str:
    return part.name.casefold().split()[-1]
