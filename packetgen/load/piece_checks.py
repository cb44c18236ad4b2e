"""What is wrong with a finishing piece although each of its figures can be read."""

import re
from math import inf, pi

from packetgen.diagnostics import Place, Problems
from packetgen.load.nearly_level import complain_of_nearly_level
from packetgen.load.part_checks import complain_of_places
from packetgen.load.piece_words import extent_of, from_cm, mm_said, sides_of, size_said, slim
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Outline, Part
from packetgen.units import plain

_LEAST_GATHERED = 1.2  # times the length of the edge; less shows no gathers: from memory
_USUAL_INSET_MM = 15  # our own choice
_THICK_MM = 40  # boards for craft work are sold to 30 mm or so: from memory
_LEAST_PANEL_MM = 40  # from side to side; hardly a panel is smaller: our own choice
# Of cloth that is laced or glued behind the card, and what wadding is smaller by, seen beside the card: our own choice.
# Wadding that ends below the stitching is told, but not where the card has hardly a border.
_SCANT_FOLD_MM, _LARGE_STEP_MM, _BESIDE_BORDER_MM = 8, 10, 3
# Ends of a trim that overlap by so little, of one that is so wide, were changed about with its width: our own choice.
_SCANT_OVERLAP_MM, _WIDE_TRIM_MM = 8, 12
_THICK_MAGNET_MM = 5  # thinner ones are not told, however small: our own choice
_LONG_OVERLAP_MM = 60  # of the two ends of a trim: our own choice
# Until another coat, and of one tin, for so small a piece: our own choice.
_SHORT_DRYING_H, _LARGE_TIN_ML = 5 / 60, 2500
_LONG_DRYING_H = 48  # our own choice
# What a litre covers from a tin or a can lies well within these: from memory.
_COVERS_M2 = {"brush": (2.5, 25), "spray": (0.8, 15)}
_SHORT_CURING_H = 1  # common practice, no source
# What reaches to the back, and is seen from its small end.
_CUBE = 0.7  # of its smaller side, and more than twice as thick as all others, no figure of wood is: our own choice
_DEEP = re.compile(r"\b(?:foot|feet|legs?|pegs?|knobs?|blocks?|brackets?|arms?)\b", re.IGNORECASE)
# What is mostly seen from its edge.
_ON_EDGE = re.compile(
    r"\b(?:shelf|ledge|lid|sill|step|roof|eaves|base|plinth|foot|tray|bench|seat|top|bottom|floor|cap|bracket|deck|table)\b",
    re.IGNORECASE,
)
_WOOD = re.compile(r"\b(?:wood|wooden|timber)\b", re.IGNORECASE)
_METAL = re.compile(r"\b(?:magnets?|washers?|metal|steel)\b", re.IGNORECASE)
_QUICK = re.compile(
    r"hot|instant|rapid|quick|super|fast|minute|second|spray|contact|tape", re.IGNORECASE
)
# The flux that the strongest magnets for sale have at their face, on thick steel: from memory; and µ0, in SI units.
_MOST_TESLA, _VACUUM = 1.5, 4e-7 * pi
_G_PER_NEWTON = 1000 / 9.80665  # standard gravity: ISO 80000-4


def complain_of_piece(
    filled: Filled, parts: tuple[Part, ...] | None, steps: str, problems: Problems
) -> None:
    """Its trim, its magnets, its border, and, where all `parts` could be read, how they stand."""
    _look_at_trim(filled["trim"], problems)
    _look_at_mounting(filled, problems)
    _look_at_paints(filled, problems)
    _look_at_glues(filled, problems)
    _look_at_thickness(filled, problems)
    _look_at_slim_parts(filled, problems)
    if _panel_in_cm(filled, problems):
        return
    _look_at_magnets(filled["magnets"], filled["panel"], problems)
    _look_at_border(filled, problems)
    if parts is not None:
        named = [one.value["name"] or "" for one in filled.each("hardware") if one.value]
        texts = ". ".join([filled["about"] or "", *named, steps])
        complain_of_places(filled, parts, texts, problems)
        complain_of_nearly_level([one.value for one in filled.each("parts")], problems)


def _look_at_trim(trim: Filled | None, problems: Problems) -> None:
    if trim is None or not trim.whole:
        return
    if trim["kind"] == "straight" and not trim["width"]:
        problems.add(trim.place_of("kind"), "trim-width")
    if (trim["overlap"] or 0.0) > _LONG_OVERLAP_MM:
        long, better = mm_said(trim["overlap"]), mm_said(trim["overlap"] / 10)
        problems.add(trim.place_of("overlap"), "overlap-long", long=long, better=better)
    width_mm, overlap_mm = trim["width"] or 0.0, trim["overlap"]
    if width_mm >= _WIDE_TRIM_MM and overlap_mm is not None and overlap_mm < _SCANT_OVERLAP_MM:
        facts = {"width": mm_said(width_mm), "overlap": mm_said(overlap_mm)}
        problems.add(trim.place_of("width"), "trim-turned", **facts)
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
    edge_mm = min(_LARGE_STEP_MM, max(filled["border"] or 0.0, _BESIDE_BORDER_MM))
    large = inset_mm is not None and inset_mm > edge_mm
    if scant:
        tenfold = f"should it be {mm_said(10 * fold_mm)}?"
        mend = "look once more: 20 to 40 mm are usual" + f"; {tenfold}" * (fold_mm >= 1.5)
        if large:
            mend = f"it and 'wadding_inset', {mm_said(inset_mm)}, seem to have changed places"
        problems.add(filled.place_of("fold_over"), "fold-scant", fold=mm_said(fold_mm), mend=mend)
    elif large:
        better = mm_said(inset_mm / 10)
        place = filled.place_of("wadding_inset")
        problems.add(place, "wadding-small", inset=mm_said(inset_mm), better=better)


def _look_at_paints(filled: Filled, problems: Problems) -> None:
    """Advice on a paint that dries in no time or for days, that covers far too little or too much, and on a tin as large as for a
    house: other units, mostly, or a nought."""
    for given in filled.each("paints"):
        ways = () if given.value is None else (given.value, given.value["or_with"])
        for way in ways:
            if way is None:
                continue
            dries_h, tin_ml, covers_m2 = way["dries_in"], way["tin"], way["covers"]
            if dries_h is not None and dries_h > _LONG_DRYING_H:
                problems.add(way.place_of("dries_in"), "dries-slow", hours=plain(dries_h))
            if dries_h is not None and 0 < dries_h < _SHORT_DRYING_H:
                minutes = plain(round(60 * dries_h, 1))
                problems.add(way.place_of("dries_in"), "dries-fast", minutes=minutes)
            least_m2, most_m2 = _COVERS_M2.get(way["put_on_with"] or "", (0, inf))
            if covers_m2 is not None and not least_m2 <= covers_m2 <= most_m2:
                little = covers_m2 < least_m2
                facts = {"covers": f"{plain(covers_m2)} m2", "much": "little" if little else "much"}
                better = 10 * covers_m2 if little else covers_m2 / 10
                facts |= {"way": way["put_on_with"], "better": f"{plain(better)} m2 per litre"}
                problems.add(way.place_of("covers"), "covers-odd", **facts)
            if tin_ml is not None and tin_ml > _LARGE_TIN_ML:
                tin, better = (f"{plain(round(one, 1))} ml" for one in (tin_ml, tin_ml / 100))
                problems.add(way.place_of("tin"), "tin-large", tin=tin, better=better)


def _look_at_glues(filled: Filled, problems: Problems) -> None:
    """Advice on a glue for wood that is to hold metal, and on one that is hard in minutes, and is not called so."""
    for given in filled.each("glue"):
        glue = given.value
        if glue is None:
            continue
        name, use = glue["name"] or "", glue["for"] or ""
        if _WOOD.search(name) and _METAL.search(use) and not _WOOD.search(use):
            problems.add(glue.place_of("for"), "glue-for-other", name=said(name), use=said(use))
        if not glue["cures_in"] or _QUICK.search(name):
            continue
        if glue["cures_in"] < _SHORT_CURING_H:
            minutes = plain(round(60 * glue["cures_in"], 1))
            problems.add(glue.place_of("cures_in"), "cures-fast", minutes=minutes)


def _most_held_g(across_mm: float) -> float:
    """What no magnet of that size holds more than: B² · area ÷ (2 · µ0), the pull of a face of flux B on iron (Maxwell's
    stress)."""
    area_m2 = pi * (across_mm / 2000) ** 2
    return _MOST_TESLA**2 * area_m2 / (2 * _VACUUM) * _G_PER_NEWTON


def _look_at_magnets(magnets: Filled | None, panel: Filled | None, problems: Problems) -> None:
    if magnets is None or not magnets.whole or not magnets["pairs"]:
        return
    if panel is not None and panel["outline"] is not None:
        sides = sides_of(panel)
        if magnets["inset"] >= min(sides) / 2:
            tenth = magnets["inset"] / 10
            least, most = magnets["diameter"] / 2, min(sides) / 2
            usual = max(magnets["diameter"], _USUAL_INSET_MM)
            better = tenth if least <= tenth < most else usual if usual < most else least
            problems.add(
                magnets.place_of("inset"),
                "inset-far",
                inset=mm_said(magnets["inset"]),
                panel=size_said(sides),
                better=mm_said(better),
            )
    if magnets["thickness"] >= max(magnets["diameter"], _THICK_MAGNET_MM):
        thick_mm, across_mm = magnets["thickness"], magnets["diameter"]
        slip = f"should it be {mm_said(thick_mm / 10)}?"
        if thick_mm == across_mm or across_mm < _THICK_MAGNET_MM:
            slip = "have the two changed places?" if thick_mm > across_mm else "2 or 3 mm are usual"
        problems.add(
            magnets.place_of("thickness"),
            "magnet-thick",
            thick=mm_said(thick_mm),
            across=mm_said(across_mm),
            slip=slip,
        )
    holds_g, most_g = magnets["holds"], _most_held_g(magnets["diameter"])
    if holds_g is not None and holds_g > most_g:
        facts = {
            "holds": f"{plain(holds_g / 1000)} kg",
            "most": f"{plain(round(most_g / 1000, 1))} kg",
        }
        facts |= {"across": mm_said(magnets["diameter"]), "better": f"{plain(holds_g / 10000)} kg"}
        problems.add(magnets.place_of("holds"), "magnet-strong", **facts)
    if magnets["inset"] < magnets["diameter"] / 2:
        problems.add(
            magnets.place_of("inset"),
            "magnet-over-edge",
            across=mm_said(magnets["diameter"]),
            inset=mm_said(magnets["inset"]),
            least=mm_said(magnets["diameter"] / 2),
        )


def _panel_in_cm(filled: Filled, problems: Problems) -> bool:
    """Whether no design has room on the panel, and would have if its corners were in centimetres."""
    panel, around = filled["panel"], _around(filled)
    if panel is None or panel["outline"] is None or around is None:
        return False
    sides = sides_of(panel)
    if around < min(sides) or not around < 10 * min(sides) < 10 * _LEAST_PANEL_MM:
        return False
    better = from_cm(panel["outline"])
    problems.add(panel.place_of("outline"), "panel-in-cm", panel=size_said(sides), better=better)
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
    sides = sides_of(panel)
    if taken < min(sides):
        return
    width = taken / 2 - border
    around = f"a border of {mm_said(border)}" + (f" and {mm_said(width)} of trim" if width else "")
    problems.add(broader_place(filled), "border-fills-panel", around=around, panel=size_said(sides))


def broader_place(filled: Filled) -> Place:
    """Where the border stands, or the trim where that is broader."""
    trim, border = filled["trim"], filled["border"]
    width = (trim["width"] or 0.0) if trim is not None and trim.whole else 0.0
    broad = trim is not None and border is not None and width > border
    return trim.place_of("width") if broad else filled.place_of("border")


def _is_upright(outline: Outline) -> bool:
    """Whether it is a rectangle with level sides."""
    return len(outline) == 4 and all(len(set(side)) == 2 for side in zip(*outline))


def _look_at_thickness(filled: Filled, problems: Problems) -> None:
    """Advice on the first board that is hardly sold so thick: a measure in another unit, mostly."""
    for given in filled.each("parts"):
        thick_mm = given.value["thickness"] if given.value is not None else None
        outline = given.value["outline"] if given.value is not None else None
        if outline is None:
            continue  # it may lie flat
        deep = slim(outline) or _DEEP.search(given.value["name"] or "")
        in_cm = thick_mm is not None and _is_block(thick_mm, outline, filled)
        if thick_mm is not None and not deep and (in_cm or thick_mm > max(extent_of(outline))):
            facts = {"thick": mm_said(thick_mm), "size": size_said(extent_of(outline))}
            facts["better"] = mm_said(thick_mm / 10)
            problems.add(given.value.place_of("thickness"), "part-thicker", **facts)
            return
        tenfold = thick_mm is not None and _tenfold(given.value["name"] or "", thick_mm, filled)
        if thick_mm is not None and _is_upright(outline) and not tenfold:
            thick_mm = min(thick_mm, *extent_of(outline))  # a shelf's outline shows its edge
        if thick_mm is not None and thick_mm >= _THICK_MM:
            problems.add(
                given.value.place_of("thickness"),
                "part-thick",
                thick=mm_said(thick_mm),
                better=mm_said(thick_mm / 10),
            )
            return


def _tenfold(name: str, thick_mm: float, filled: Filled) -> bool:
    """Whether it is ten times as thick as another part, and not called as what is seen from its edge."""
    others_mm = [one.value["thickness"] for one in filled.each("parts") if one.value is not None]
    return thick_mm / 10 in others_mm and not _ON_EDGE.search(name)


def _is_block(thick_mm: float, outline: Outline, filled: Filled) -> bool:
    """Whether a shaped part is nearly as thick as broad, and more than twice as thick as any board beside it."""
    others_mm = [
        one.value["thickness"]
        for one in filled.each("parts")
        if one.value is not None
        and one.value["outline"] is not None
        and one.value["thickness"]
        and one.value["thickness"] < min(thick_mm, *extent_of(one.value["outline"]))
    ]
    broad = _is_upright(outline) or thick_mm < _CUBE * min(extent_of(outline))
    return not broad and bool(others_mm) and thick_mm > 2 * max(others_mm)


def _look_at_slim_parts(filled: Filled, problems: Problems) -> None:
    """Advice on parts that nobody can saw: in another unit, mostly."""
    for given in filled.each("parts"):
        outline = given.value["outline"] if given.value is not None else None
        if outline is not None and slim(outline):
            problems.add(
                given.value.place_of("outline"),
                "part-slim",
                part=said(given.value["name"] or "this part"),
                size=size_said(extent_of(outline)),
                better=from_cm(outline),
            )
