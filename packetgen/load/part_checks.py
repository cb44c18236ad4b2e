"""What is wrong with the wood below the panel of a finishing piece; then how its parts stand together is looked at."""

from packetgen.diagnostics import Problems
from packetgen.load.panel_on_wood import (
    LARGE,
    across_parts,
    beside_middle,
    beyond_board,
    beyond_wood,
    held_by_boxes,
    in_cm,
    lies_on,
    over_gap,
    place_below,
)
from packetgen.load.parts_aligned import complain_of_alignment
from packetgen.load.parts_together import complain_of_parts, has_place
from packetgen.load.piece_words import (
    SHOWN,
    extent_of,
    from_cm,
    mm_said,
    sides_of,
    size_said,
)
from packetgen.load.placed_parts import over_panel
from packetgen.load.points import point_said
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Outline, Part
from packetgen.nouns import listed

# A drawing program that counts in pixels has 96 to the inch (CSS Values and Units, level 3, 5.2).
_MM_A_PX = 25.4 / 96
Corner = tuple[float, float]

_SIDES = ("to the left", "above", "to the right", "below")


def complain_of_places(
    filled: Filled, parts: tuple[Part, ...], texts: str, problems: Problems
) -> None:
    """Whether there is wood below the panel and none before it, and whether the parts touch; `texts` tell how
    they are joined."""
    panel = filled["panel"]
    if panel is None or panel["outline"] is None or not parts:
        return
    beyond = beyond_wood(panel["outline"], parts)
    if beyond is None:
        if (large := _in_px(filled)) is not None:
            _part_in_px(large, panel, problems)
            return
        if (small := in_cm(panel["outline"], parts)) is not None:
            _part_in_cm([one.value for one in filled.each("parts")][small], problems)
            return
        outline = _look_at_corners(panel, parts, problems)
        before = len(problems)
        _look_at_middle(filled, parts, problems)
        complain_of_parts(filled, outline, parts, texts, problems)
        if len(problems) == before:
            stand = [one.value for one in filled.each("parts")]
            complain_of_alignment(panel, parts, stand, problems)
        return
    corner = f"its corner {point_said(beyond.at)} by {mm_said(beyond.most_mm)}"
    sides = [
        f"{mm_said(over)} {side}"
        for over, side in zip(beyond.sides_mm, _SIDES, strict=True)
        if round(over, 2) > 0
    ]
    bounds = f"from {point_said(beyond.bounds[:2])} to {point_said(beyond.bounds[2:])}"
    within = f"keep it within the parts, which stand {bounds}"
    if not sides:  # within the bounds of parts that are no rectangle
        sides, within = [corner], "keep each of its corners on a part"
    much = listed(tuple(sides))
    if in_other_unit := _in_other_unit(filled):
        part, cure = in_other_unit
        place, of_panel = part.place_of("outline"), within.replace("keep it", "keep the panel")
        problems.add(place, "panel-beyond-wood", much=much, within=cure, other=of_panel)
        return
    other = (
        _from_own_corner(panel["outline"], parts)
        or _rectangle_said(panel["outline"], parts)
        or _corner_lost(panel["outline"], parts)
        or _place_missing(filled)
        or _board_moved(panel["outline"], parts)
        or "add the part that it lies on"
    )
    place = panel.place_of("outline")
    problems.add(place, "panel-beyond-wood", much=much, within=within, other=other)


def _look_at_middle(filled: Filled, parts: tuple[Part, ...], problems: Problems) -> None:
    """Advice on a panel that was measured from the corner of the board it lies on, and is on wood, or between parts, all
    the same."""
    panel, outline = filled["panel"], filled["panel"]["outline"]
    if gap := over_gap(outline, parts):
        part, share = parts[gap[0]], max(1, round(100 * gap[1]))
        at = place_below(outline, part)
        facts = {"share": share, "mend": _moved(outline, part), "part": said(part.name)}
        facts["other"] = f"; or at: {point_said(at)} for {facts['part']}" if at else ""
        problems.add(panel.place_of("outline"), "panel-over-gap", **facts)
    elif bare := beyond_board(outline, parts):
        _board_beside(filled, parts, *bare, problems)
    elif across := across_parts(outline, parts):
        part, onto = parts[across.number], parts[across.onto]
        facts = {"part": said(part.name), "onto": said(onto.name), "mend": _moved(outline, part)}
        problems.add(panel.place_of("outline"), "panel-across", **facts)
    elif beside := beside_middle(outline, parts):
        part, much = parts[beside.number], mm_said(beside.by_mm)
        facts = {"much": much, "side": beside.side, "mend": _moved(outline, part)}
        problems.add(
            panel.place_of("outline"), "panel-beside-middle", part=said(part.name), **facts
        )


def _board_beside(
    filled: Filled, parts: tuple[Part, ...], number: int, share: float, problems: Problems
) -> None:
    part, own = parts[number], [one.value for one in filled.each("parts")][number]
    facts = {"share": max(1, round(100 * share)), "part": said(part.name)}
    at = place_below(filled["panel"]["outline"], part)
    if at and at != part.at_mm:
        place = own.place_of("at" if has_place(own) else "name")
        facts["mend"] = f"write at: {point_said(at)}, or move the panel"
    else:
        place, sizes = own.place_of("outline"), (extent_of(part.outline), sides_of(filled["panel"]))
        of_part, of_panel = map(size_said, sizes)
        facts["mend"] = f"it is {of_part}, and the panel {of_panel}: mend one of the two"
    problems.add(place, "panel-beside-board", **facts)


def _moved(outline: Outline, part: Part) -> str:
    """What to write for an outline that was measured from the part's own corner."""
    if len(outline) > SHOWN:
        return f"add {point_said(part.at_mm)} to each of its corners"
    corners = ((x + part.at_mm[0], y + part.at_mm[1]) for x, y in outline)
    return f"write {' '.join(map(point_said, corners))}"


def _in_px(filled: Filled) -> Filled | None:
    """The one part that is much larger than the panel and all others, both ways, and would lie below the panel were
    it counted in pixels."""
    sides = sides_of(filled["panel"])
    parts = [(one.value, extent_of(one.value["outline"])) for one in filled.each("parts")]
    large = [
        (part, extent)
        for part, extent in parts
        if all(
            LARGE * side < one and side <= one * _MM_A_PX <= LARGE * side
            for one, side in zip(extent, sides)
        )
    ]
    if len(large) != 1:
        return None
    ((part, extent),) = large
    others = [of for one, of in parts if one is not part]
    small = all(2 * other < one for of in others for other, one in zip(of, extent))
    return part if small else None


def _part_in_px(part: Filled, panel: Filled, problems: Problems) -> None:
    extent = extent_of(part["outline"])
    problems.add(
        part.place_of("outline"),
        "part-in-px",
        part=said(part["name"]),
        size=size_said(extent),
        panel=size_said(sides_of(panel)),
        better=_size_of_px(extent),
    )


def _size_of_px(extent: tuple[float, float]) -> str:
    return size_said((round(extent[0] * _MM_A_PX, 1), round(extent[1] * _MM_A_PX, 1)))


def _part_in_cm(part: Filled, problems: Problems) -> None:
    problems.add(
        part.place_of("outline"),
        "part-in-cm",
        part=said(part["name"]),
        size=size_said(extent_of(part["outline"])),
        better=from_cm(part["outline"]),
    )


def _from_own_corner(panel: Outline, parts: tuple[Part, ...]) -> str:
    """The panel's corners in the drawing of the whole, where they seem to be those on the one part that it lies on,
    measured from that part's own 0,0."""
    moved = [
        (part, tuple((x + part.at_mm[0], y + part.at_mm[1]) for x, y in panel))
        for part in parts
        if part.at_mm != (0, 0)
    ]
    lies = [part for part, outline in moved if lies_on(outline, part, parts)]
    if len(lies) != 1:
        return ""
    (part,) = lies
    return f"{_moved(panel, part)} if it is measured from the corner of {said(part.name)}"


def _look_at_corners(panel: Filled, parts: tuple[Part, ...], problems: Problems) -> Outline:
    """The outline as it is meant, by which the parts are to be looked at."""
    outline: Outline = panel["outline"]
    if found := _as_rectangle(outline, parts):
        corner, right = map(point_said, found)
        problems.add(panel.place_of("outline"), "panel-corner", corner=corner, right=right)
        return tuple(found[1] if one == found[0] else one for one in outline)
    fourth = _fourth(outline)
    if fourth and beyond_wood((*outline, fourth), parts) is None:
        problems.add(panel.place_of("outline"), "panel-three", right=point_said(fourth))
        return (*outline, fourth)
    return outline


def _fourth(panel: Outline) -> Corner | None:
    """What makes three corners an upright rectangle."""
    across, down = ([corner[of] for corner in panel] for of in (0, 1))
    if len(panel) != 3 or len(set(across)) != 2 or len(set(down)) != 2:
        return None
    return min(across, key=across.count), min(down, key=down.count)


def _rectangle_said(panel: Outline, parts: tuple[Part, ...]) -> str:
    found = _as_rectangle(panel, parts)
    if found is None:
        return ""
    corner, right = map(point_said, found)
    return f"write {right} for {corner}: it is a rectangle then"


def _as_rectangle(panel: Outline, parts: tuple[Part, ...]) -> tuple[Corner, Corner] | None:
    """The one corner of four that keeps a panel from being an upright rectangle on the wood, and what it would be, for the
    rectangle over which least of a part lies, and the largest of such; None where it is none, or that is no cure."""
    if len(panel) != 4:
        return None
    found: dict[tuple[float, float], tuple[Corner, Corner]] = {}
    for number, corner in enumerate(panel):
        before, across, after = (panel[number - back] for back in (1, 2, 3))
        for right in ((before[0], after[1]), (after[0], before[1])):
            mended = (*panel[:number], right, *panel[number + 1 :])
            upright = {across[0], right[0]} == {x for x, _ in mended} and {
                across[1],
                right[1],
            } == {y for _, y in mended}
            if right != corner and upright and beyond_wood(mended, parts) is None:
                hidden_share = sum(over.share for over in over_panel(mended, (), parts))
                area = abs((right[0] - across[0]) * (right[1] - across[1]))
                found[-round(hidden_share, 2), area] = corner, right
    return found[max(found)] if found else None


def _in_other_unit(filled: Filled) -> tuple[Filled, str] | None:
    """The part that is much larger or smaller than the panel, as in another unit, and what is to be written for it."""
    parts = [one.value for one in filled.each("parts")]
    sides = sides_of(filled["panel"])
    if (large := _in_px(filled)) is not None:
        extent = extent_of(large["outline"])
        px = f"write {said(large['name'])} in mm, {_size_of_px(extent)}, if its {size_said(extent)} are px"
        return large, px
    for part in parts:
        extent = extent_of(part["outline"])
        if all(one < side <= 10 * one for one, side in zip(extent, sides, strict=True)):
            if 10 * max(extent) <= LARGE * max(sides):
                return part, f"write {said(part['name'])} in mm if its {size_said(extent)} are cm"
    return None


def _corner_lost(panel: Outline, parts: tuple[Part, ...]) -> str:
    """Where the rectangle round the one part that is none would hold the panel, one of its corners may be lost."""
    held = held_by_boxes(panel, parts)
    return (
        f"look whether a corner of {said(parts[held[0]].name)} was lost" if len(held) == 1 else ""
    )


def _board_moved(panel: Outline, parts: tuple[Part, ...]) -> str:
    """Where one part alone would hold the panel if it were moved along one side, it may have been moved away from there."""
    found = []
    for part in parts:
        at = place_below(panel, part)
        if at and part.pieces == 1 and sum(a != b for a, b in zip(at, part.at_mm)) == 1:
            found.append(f"write at: {point_said(at)} for {said(part.name)}")
    return found[0] if len(found) == 1 else ""


def _place_missing(filled: Filled) -> str:
    """Where some parts have a place and others none, the first of these may be the one that is missed."""
    parts = [one.value for one in filled.each("parts")]
    placeless = [part for part in parts if not has_place(part)]
    if not placeless or len(placeless) == len(parts):
        return ""
    return f"give {said(placeless[0]['name'])} its 'at'"
