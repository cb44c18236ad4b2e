"""What is wrong with a finishing piece although each of its figures can be read."""

from collections.abc import Sequence

from packetgen.diagnostics import Place, Problems
from packetgen.load.placed_parts import (
    Hidden,
    better_turned,
    beyond_wood,
    doubled,
    hidden,
    in_cm,
    lies_on,
    over_panel,
    standing_apart,
    turned_about,
)
from packetgen.load.values import Filled
from packetgen.load.words import counted, said
from packetgen.model import Outline, Part
from packetgen.nouns import listed
from packetgen.units import plain

_LEAST_GATHERED = 1.2  # times the length of the edge; less shows no gathers: from memory
_USUAL_INSET_MM = 15  # our own choice
_THICK_MM = 40  # boards for craft work are sold to 30 mm or so: from memory
_LEAST_PANEL_MM = 40  # from side to side; hardly a panel is smaller: our own choice
_LARGE = 3  # times the panel: no wood round it is larger in both. Our own choice
_SHOWN = 4  # corners of an outline
# Of cloth that is laced or glued behind the card, and what wadding is smaller by, seen beside the card: our own choice.
_SCANT_FOLD_MM, _LARGE_STEP_MM = 8, 10
_LONG_OVERLAP_MM = 60  # of the two ends of a trim: our own choice
_SLIM_MM = 3  # from side to side; a narrower piece of wood is hardly sawn: our own choice
# A drawing program that counts in pixels has 96 to the inch (CSS Values and Units, level 3, 5.2).
_MM_A_PX = 25.4 / 96
_SIDES = ("to the left", "above", "to the right", "below")


def complain_of_piece(filled: Filled, parts: tuple[Part, ...] | None, problems: Problems) -> None:
    """Its trim, its magnets, its border, and, where all `parts` could be read, how they stand."""
    _look_at_trim(filled["trim"], problems)
    _look_at_mounting(filled, problems)
    _look_at_thickness(filled, problems)
    _look_at_slim_parts(filled, problems)
    if _panel_in_cm(filled, problems):
        return
    _look_at_magnets(filled["magnets"], filled["panel"], problems)
    _look_at_border(filled, problems)
    if parts is not None:
        _look_at_panel(filled, parts, problems)


def _look_at_trim(trim: Filled | None, problems: Problems) -> None:
    if trim is None or not trim.whole:
        return
    if trim["kind"] == "straight" and not trim["width"]:
        problems.add(trim.place_of("kind"), "trim-width")
    if (trim["overlap"] or 0.0) > _LONG_OVERLAP_MM:
        long, better = _mm(trim["overlap"]), _mm(trim["overlap"] / 10)
        problems.add(trim.place_of("overlap"), "overlap-long", long=long, better=better)
    ratio = trim["ratio"]
    if trim["kind"] == "gathered" and ratio < _LEAST_GATHERED:
        given = trim.given["ratio"].name_place is not None
        told = f"is {plain(ratio)} times as long" if ratio > 1 else "is just as long"
        told = told if given else "has no 'ratio'"
        problems.add(trim.place_of("ratio" if given else "kind"), "trim-flat", ratio=told)


def _look_at_mounting(filled: Filled, problems: Problems) -> None:
    """Advice on a fold too small to be laced, and on wadding much smaller than its card: in one line where the two
    changed places."""
    fold_mm, inset_mm = filled["fold_over"], filled["wadding_inset"]
    scant = fold_mm is not None and fold_mm < _SCANT_FOLD_MM
    large = inset_mm is not None and inset_mm > _LARGE_STEP_MM
    if scant:
        tenfold = f"should it be {_mm(10 * fold_mm)}?"
        mend = "look once more: 20 to 40 mm are usual" + f"; {tenfold}" * (fold_mm >= 1.5)
        if large:
            mend = f"it and 'wadding_inset', {_mm(inset_mm)}, seem to have changed places"
        problems.add(filled.place_of("fold_over"), "fold-scant", fold=_mm(fold_mm), mend=mend)
    elif large:
        better = _mm(inset_mm / 10)
        place = filled.place_of("wadding_inset")
        problems.add(place, "wadding-small", inset=_mm(inset_mm), better=better)


def _look_at_magnets(magnets: Filled | None, panel: Filled | None, problems: Problems) -> None:
    if magnets is None or not magnets.whole or not magnets["pairs"]:
        return
    if panel is not None and panel["outline"] is not None:
        sides = _sides(panel)
        if magnets["inset"] >= min(sides) / 2:
            tenth = magnets["inset"] / 10
            least, most = magnets["diameter"] / 2, min(sides) / 2
            usual = max(magnets["diameter"], _USUAL_INSET_MM)
            better = tenth if least <= tenth < most else usual if usual < most else least
            problems.add(
                magnets.place_of("inset"),
                "inset-far",
                inset=_mm(magnets["inset"]),
                panel=_size(sides),
                better=_mm(better),
            )
    if magnets["inset"] < magnets["diameter"] / 2:
        problems.add(
            magnets.place_of("inset"),
            "magnet-over-edge",
            across=_mm(magnets["diameter"]),
            inset=_mm(magnets["inset"]),
            least=_mm(magnets["diameter"] / 2),
        )


def _panel_in_cm(filled: Filled, problems: Problems) -> bool:
    """Whether no design has room on the panel, and would have if its corners were in centimetres."""
    panel, around = filled["panel"], _around(filled)
    if panel is None or panel["outline"] is None or around is None:
        return False
    sides = _sides(panel)
    if around < min(sides) or not around < 10 * min(sides) < 10 * _LEAST_PANEL_MM:
        return False
    better = _from_cm(panel["outline"])
    problems.add(panel.place_of("outline"), "panel-in-cm", panel=_size(sides), better=better)
    return True


def _around(filled: Filled) -> float | None:
    """What border and trim take of the panel's width or height; None where the border could not be read."""
    trim, border = filled["trim"], filled["border"]
    width = (trim["width"] or 0.0) if trim is not None and trim.whole else 0.0
    return None if border is None else float(2 * (border + width))


def _look_at_border(filled: Filled, problems: Problems) -> None:
    """Whether border and trim leave any of the panel to a design."""
    panel, border, taken = filled["panel"], filled["border"], _around(filled)
    if panel is None or panel["outline"] is None or taken is None:
        return
    sides = _sides(panel)
    if taken < min(sides):
        return
    width = taken / 2 - border
    around = f"a border of {_mm(border)}" + (f" and {_mm(width)} of trim" if width else "")
    problems.add(broader_place(filled), "border-fills-panel", around=around, panel=_size(sides))


def broader_place(filled: Filled) -> Place:
    """Where the border stands, or the trim where that is broader."""
    trim, border = filled["trim"], filled["border"]
    width = (trim["width"] or 0.0) if trim is not None and trim.whole else 0.0
    broad = trim is not None and border is not None and width > border
    return trim.place_of("width") if broad else filled.place_of("border")


def _sides(panel: Filled) -> tuple[float, float]:
    return _extent(panel["outline"])


def _extent(outline: Outline) -> tuple[float, float]:
    wide, high = (max(side) - min(side) for side in zip(*outline))
    return wide, high


def _is_upright(outline: Outline) -> bool:
    """Whether it is a rectangle with level sides."""
    return len(outline) == 4 and all(len(set(side)) == 2 for side in zip(*outline))


def _size(sides: tuple[float, float]) -> str:
    return f"{plain(round(sides[0], 2))} × {_mm(sides[1])}"


def _look_at_thickness(filled: Filled, problems: Problems) -> None:
    """Advice on the first board that is hardly sold so thick: a measure in another unit, mostly."""
    for given in filled.each("parts"):
        thick_mm = given.value["thickness"] if given.value is not None else None
        outline = given.value["outline"] if given.value is not None else None
        if outline is None:
            continue  # it may lie flat
        if thick_mm is not None and _is_upright(outline):
            thick_mm = min(thick_mm, *_extent(outline))  # a shelf's outline shows its edge
        if thick_mm is not None and thick_mm >= _THICK_MM:
            problems.add(
                given.value.place_of("thickness"),
                "part-thick",
                thick=_mm(thick_mm),
                better=_mm(thick_mm / 10),
            )
            return


def _look_at_slim_parts(filled: Filled, problems: Problems) -> None:
    """Advice on parts that nobody can saw: in another unit, mostly."""
    for given in filled.each("parts"):
        outline = given.value["outline"] if given.value is not None else None
        if outline is not None and min(_extent(outline)) < _SLIM_MM:
            problems.add(
                given.value.place_of("outline"),
                "part-slim",
                part=said(given.value["name"] or "this part"),
                size=_size(_extent(outline)),
                better=_from_cm(outline),
            )


def _from_cm(outline: Outline) -> str:
    """The first corners in mm, as they are if the author's are cm."""
    corners = " ".join(_point((10 * x, 10 * y)) for x, y in outline[:_SHOWN])
    return corners + " …" * (len(outline) > _SHOWN)


def _look_at_panel(filled: Filled, parts: tuple[Part, ...], problems: Problems) -> None:
    """Whether there is wood below it, and none before it."""
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
        _look_at_parts(filled, panel, parts, problems)
        return
    corner = f"which is {_mm(beyond.most_mm)} from its corner {_point(beyond.at)}"
    sides = [
        f"{_mm(over)} {side}"
        for over, side in zip(beyond.sides_mm, _SIDES, strict=True)
        if round(over, 2) > 0
    ]
    bounds = f"from {_point(beyond.bounds[:2])} to {_point(beyond.bounds[2:])}"
    within = f"keep it within the parts, which stand {bounds}"
    if not sides:  # within the bounds of parts that are no rectangle
        sides, within = [corner], "keep each of its corners on a part"
    problems.add(
        panel.place_of("outline"),
        "panel-beyond-wood",
        much=listed(tuple(sides)),
        within=within,
        other=_from_own_corner(panel["outline"], parts) or _other_cure(filled),
    )


def _in_px(filled: Filled) -> Filled | None:
    """The one part that is much larger than the panel and all others, both ways, and would lie below the panel were
    it counted in pixels."""
    sides = _sides(filled["panel"])
    parts = [(one.value, _extent(one.value["outline"])) for one in filled.each("parts")]
    large = [
        (part, extent)
        for part, extent in parts
        if all(
            _LARGE * side < one and side <= one * _MM_A_PX <= _LARGE * side
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
    extent = _extent(part["outline"])
    problems.add(
        part.place_of("outline"),
        "part-in-px",
        part=said(part["name"]),
        size=_size(extent),
        panel=_size(_sides(panel)),
        better=_size_of_px(extent),
    )


def _size_of_px(extent: tuple[float, float]) -> str:
    return _size((round(extent[0] * _MM_A_PX, 1), round(extent[1] * _MM_A_PX, 1)))


def _part_in_cm(part: Filled, problems: Problems) -> None:
    problems.add(
        part.place_of("outline"),
        "part-in-cm",
        part=said(part["name"]),
        size=_size(_extent(part["outline"])),
        better=_from_cm(part["outline"]),
    )


def _from_own_corner(panel: Outline, parts: tuple[Part, ...]) -> str:
    """The panel's corners in the drawing of the whole, where they seem to be those on the one part that it lies on,
    measured from that part's own 0,0."""
    moved = [
        (part, tuple((x + part.at_mm[0], y + part.at_mm[1]) for x, y in panel))
        for part in parts
        if part.at_mm != (0, 0)
    ]
    lies = [(part, outline) for part, outline in moved if lies_on(outline, part, parts)]
    if len(lies) != 1 or len(panel) > _SHOWN:
        return ""
    part, outline = lies[0]
    return f"write {' '.join(map(_point, outline))} if it is measured from the corner of {said(part.name)}"


def _other_cure(filled: Filled) -> str:
    """A part that is much larger or smaller than the panel may be in another unit; where some parts have a place and others
    none, the first of these may be the one that is missed."""
    parts = [one.value for one in filled.each("parts")]
    sides = _sides(filled["panel"])
    if (large := _in_px(filled)) is not None:
        extent = _extent(large["outline"])
        return f"write {said(large['name'])} in mm, {_size_of_px(extent)}, if its {_size(extent)} are px"
    for part in parts:
        extent = _extent(part["outline"])
        if all(one < side <= 10 * one for one, side in zip(extent, sides, strict=True)):
            if 10 * max(extent) <= _LARGE * max(sides):
                return f"write {said(part['name'])} in mm if its {_size(extent)} are cm"
    placeless = [part for part in parts if not _has_place(part)]
    if not placeless or len(placeless) == len(parts):
        return "add the part that it lies on"
    return f"give {said(placeless[0]['name'])} its 'at'"


def _has_place(part: Filled) -> bool:
    return part.given["at"].name_place is not None  # else it is the default


def _look_at_parts(
    filled: Filled, panel: Filled, parts: tuple[Part, ...], problems: Problems
) -> None:
    """Whether each stands where the others leave it room, told at its 'at'."""
    kept_free = [area.value["outline"] for area in panel.each("keep_out") if area.whole]
    stand = [one.value for one in filled.each("parts")]
    all_over = over_panel(panel["outline"], kept_free, parts)
    for over in all_over:
        facts = _place_of_part(stand[over.number])
        if better_turned(panel["outline"], kept_free, parts, over.number):
            facts["mend"] = f"write at: {_point(stand[over.number]['at'][::-1])}"
        problems.add(
            stand[over.number].place_of("at"),
            "part-over-panel",
            **facts,
            share=max(1, round(100 * over.share)),
            first=_point(over.bounds[:2]),
            last=_point(over.bounds[2:]),
        )
    # What stands in a wrong place may hide others, or be hidden, only there.
    wrong = {over.number for over in all_over}
    unseen = [one for one in hidden(parts) if not wrong & {one.number, one.behind}]
    _look_at_hidden(stand, unseen, problems)
    for copy, first in doubled(parts):
        if parts[copy].name == parts[first].name:
            continue  # told of the name
        thick_mm = parts[copy].thickness_mm + parts[first].thickness_mm
        problems.add(
            stand[copy].place_of("at" if _has_place(stand[copy]) else "name"),
            "part-doubled",
            part=said(stand[copy]["name"]),
            other=said(stand[first]["name"]),
            thick=_mm(thick_mm),
        )
    _look_at_placeless(stand, wrong | {one.number for one in unseen}, problems)
    apart = tuple(standing_apart(panel["outline"], parts))
    if not apart and (number := turned_about(parts)) is not None:
        at = stand[number]["at"]
        problems.add(
            stand[number].place_of("at"),
            "part-turned",
            part=said(stand[number]["name"]),
            at=_point(at),
            better=_point(at[::-1]),
        )
    for far in apart:
        part = stand[far.number]
        facts = _place_of_part(part) | {"gap": _mm(far.gap_mm)}
        if far.placed_twice:
            facts["mend"] = "its outline begins there already: take 'at' away"
        elif far.swapped:
            facts["mend"] = f"write at: {_point(part['at'][::-1])}"
        if len(far.together_with) == 1:
            other = stand[far.together_with[0]]["name"]
            facts["part"] = f"{facts['part']} with {said(other)}, which it touches,"
        elif far.together_with:
            parts_more = counted(len(far.together_with), "part")
            facts["part"] = f"{facts['part']} with {parts_more} that it hangs together with,"
        problems.add(part.place_of("at"), "part-apart", **facts)


def _look_at_placeless(stand: Sequence[Filled], told: set[int], problems: Problems) -> None:
    """Advice on the one part that has no place while others have, unless it is the first, from which they may be
    measured, or something is told of it."""
    placeless = [number for number, part in enumerate(stand) if not _has_place(part)]
    later = [number for number in placeless if number]
    if len(later) == 1 and len(placeless) < len(stand) and later[0] not in told:
        part = stand[later[0]]
        problems.add(part.place_of("name"), "part-placeless", part=said(part["name"]))


def _look_at_hidden(
    stand: Sequence[Filled], all_hidden: Sequence[Hidden], problems: Problems
) -> None:
    """A part that hides several is told of itself: it is the one that is listed in a wrong place."""
    for front in dict.fromkeys(one.behind for one in all_hidden):
        behind = [stand[one.number] for one in all_hidden if one.behind == front]
        if len(behind) > 1:
            problems.add(
                stand[front].place_of("name"),
                "part-hides",
                part=said(stand[front]["name"]),
                number=len(behind),
                first=said(behind[0]["name"]),
            )
            continue
        lost = _place_of_part(behind[0]) if not _has_place(behind[0]) else None
        problems.add(
            behind[0].place_of("name"),
            "part-hidden",
            part=lost["part"] if lost else said(behind[0]["name"]),
            front=said(stand[front]["name"]),
            mend=f"{lost['mend']}, or " if lost else "",
        )


def _place_of_part(part: Filled) -> dict[str, object]:
    """What is said of the place of a part, and how it gets another."""
    if not _has_place(part):
        return {
            "part": f"{said(part['name'])}, at 0,0 since it has no 'at',",
            "mend": "give it one",
        }
    return {"part": f"{said(part['name'])}, at {_point(part['at'])},", "mend": "mend that"}


def _point(xy: Sequence[float]) -> str:
    return ",".join(plain(round(one, 2)) for one in xy)


def _mm(length_mm: float) -> str:
    return f"{plain(round(length_mm, 2))} mm"
