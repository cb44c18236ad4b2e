"""Finishing pieces: the painted wood on which the designs of a series are shown."""

from collections.abc import Mapping, Sequence

from packetgen.diagnostics import Place, Problems
from packetgen.load.documents import read_document, read_markdown
from packetgen.load.files import ContentFolder, valid_id
from packetgen.load.once import Once
from packetgen.load.placed_parts import Hidden, beyond_wood, hidden, over_panel, standing_apart
from packetgen.load.references import resolve
from packetgen.load.shape_finish import FINISH
from packetgen.load.sure import all_sure
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import (
    Coating,
    FinishingPiece,
    Glue,
    Hardware,
    KeepOut,
    Magnets,
    Paint,
    PaintWay,
    Part,
    Trim,
)
from packetgen.nouns import listed
from packetgen.units import plain


def load_finishes(folder: ContentFolder, problems: Problems) -> Mapping[str, FinishingPiece | None]:
    """Every finishing piece by its folder's name; None for one that is not in order."""
    pieces: dict[str, FinishingPiece | None] = {}
    for name in folder.folders("finishes"):
        path = f"finishes/{name}"
        named_well = valid_id(name, Place(path), problems)
        filled = read_document(folder, f"{path}/finish.yaml", FINISH, problems)
        steps = read_markdown(folder, f"{path}/steps.md", problems)
        folder.unread(path, ("finish.yaml", "steps.md"))
        pieces[name] = None
        if filled is None:
            continue
        paints = _paints(filled, problems)
        parts = _parts(filled, paints, problems)
        _look_over(filled, problems)
        _look_at_border(filled, problems)
        if None not in parts:
            _look_at_panel(filled, all_sure(parts), problems)
        if (
            named_well
            and filled.whole
            and steps is not None
            and None not in parts
            and None not in paints.values()
        ):
            pieces[name] = _piece(name, filled, all_sure(paints.values()), all_sure(parts), steps)
    return pieces


def _paints(filled: Filled, problems: Problems) -> dict[str, Paint | None]:
    paints: dict[str, Paint | None] = {}
    once = Once("paint", problems, another="name")
    for given in filled.each("paints"):
        paint = given.value
        if paint is None or paint["name"] is None:
            continue
        name = paint["name"]
        paints[name] = None
        if once.again(name, paint.place_of("name")):
            continue
        if given.whole:
            paints[name] = Paint(
                name,
                paint["hex"],
                paint["put_on_with"],
                paint["covers"],
                paint["dries_in"],
                paint["tin"],
                _other_way(paint, problems),
                paint["cleaned_with"],
            )
    return paints


def _other_way(paint: Filled, problems: Problems) -> PaintWay | None:
    other = paint["or_with"]
    if other is None:
        return None
    if other["put_on_with"] == paint["put_on_with"]:
        problems.add(
            other.place_of("put_on_with"),
            "same-way-twice",
            paint=said(paint["name"]),
            way=other["put_on_with"],
        )
    dries_in = other["dries_in"]
    return PaintWay(
        other["put_on_with"],
        other["covers"],
        paint["dries_in"] if dries_in is None else dries_in,
        other["tin"],
    )


def _parts(
    filled: Filled, paints: dict[str, Paint | None], problems: Problems
) -> tuple[Part | None, ...]:
    # Without a readable list of paints nobody can say whether a part names a paint that exists.
    named = all(
        one.value is not None and one.value["name"] is not None for one in filled.each("paints")
    )
    known = paints if filled["paints"] is not None and named else None
    parts: list[Part | None] = []
    once = Once("part", problems, another="name")
    for given in filled.each("parts"):
        part = given.value
        if part is None:
            continue
        if part["name"]:
            once.again(part["name"], part.place_of("name"))
        painted = _painted(part, known, problems)
        if not given.whole or None in painted:
            parts.append(None)
            continue
        parts.append(
            Part(
                name=part["name"],
                outline=part["outline"],
                at_mm=part["at"],
                thickness_mm=part["thickness"],
                pieces=part["pieces"],
                painted=all_sure(painted),
            )
        )
    return tuple(parts)


def _painted(
    part: Filled, known: dict[str, Paint | None] | None, problems: Problems
) -> tuple[Coating | None, ...]:
    """The part's paints in their order, written in either of the two ways."""
    faces = part.given.get("faces")
    if part["painted"] is not None and faces is not None and faces.name_place is not None:
        problems.add(
            faces.name_place,
            "names-instead",
            name=said("faces"),
            other=said("painted"),
            what="a part",
        )
    several = [one.value for one in part.each("painted") if one.value is not None]
    coatings: list[Coating | None] = []
    for one in several or [part]:
        paint = resolve(one["paint"], one.place_of("paint"), known, "paint", problems)
        if paint is None or one["coats"] is None or one["faces"] is None:
            coatings.append(None)
            continue
        for before in coatings:
            if before and before.paint is paint and (shared := _shared_face(before, one["faces"])):
                problems.add(
                    one.place_of("paint"),
                    "coat-twice",
                    part=said(part["name"] or "the part"),
                    face=shared,
                    paint=said(paint.name),
                )
        coatings.append(Coating(paint, one["coats"], one["faces"]))
    return tuple(coatings)


def _shared_face(before: Coating, faces: str) -> str:
    """A face that both cover, in words; '' where they share none."""
    if before.faces == faces or faces == "both":
        return {"both": "front"}.get(before.faces, before.faces)
    return faces if before.faces == "both" else ""


def _look_over(filled: Filled, problems: Problems) -> None:
    """What is wrong with trim and magnets although each of their figures can be read."""
    trim, magnets = filled["trim"], filled["magnets"]
    if trim is not None and trim.whole and trim["kind"] == "straight" and not trim["width"]:
        problems.add(trim.place_of("kind"), "trim-width")
    if trim is not None and trim.whole and trim["kind"] == "gathered":
        ratio = trim["ratio"]
        if ratio < _LEAST_GATHERED:
            given = trim.given["ratio"].name_place is not None
            told = f"is {plain(ratio)} times as long" if ratio > 1 else "is just as long"
            told = told if given else "has no 'ratio'"
            problems.add(trim.place_of("ratio" if given else "kind"), "trim-flat", ratio=told)
    if magnets is None or not magnets.whole or not magnets["pairs"]:
        return
    if magnets["inset"] < magnets["diameter"] / 2:
        problems.add(
            magnets.place_of("inset"),
            "magnet-over-edge",
            across=_mm(magnets["diameter"]),
            inset=_mm(magnets["inset"]),
            least=_mm(magnets["diameter"] / 2),
        )


def _look_at_border(filled: Filled, problems: Problems) -> None:
    """Whether border and trim leave any of the panel to a design."""
    panel, trim, border = filled["panel"], filled["trim"], filled["border"]
    if panel is None or panel["outline"] is None or border is None:
        return
    wide, high = (max(side) - min(side) for side in zip(*panel["outline"]))
    width = (trim["width"] or 0.0) if trim is not None and trim.whole else 0.0
    if 2 * (border + width) < min(wide, high):
        return
    broad = trim.place_of("width") if width > border else filled.place_of("border")
    around = f"a border of {_mm(border)}" + (f" and {_mm(width)} of trim" if width else "")
    problems.add(
        broad, "border-fills-panel", around=around, panel=f"{plain(round(wide, 2))} × {_mm(high)}"
    )


_LEAST_GATHERED = 1.2  # times the length of the edge; less shows no gathers
_SIDES = ("to the left", "above", "to the right", "below")


def _look_at_panel(filled: Filled, parts: tuple[Part, ...], problems: Problems) -> None:
    """Whether there is wood below it, and none before it."""
    panel = filled["panel"]
    if panel is None or panel["outline"] is None or not parts:
        return
    beyond = beyond_wood(panel["outline"], parts)
    if beyond is None:
        _look_at_parts(filled, panel, parts, problems)
        return
    sides = [
        f"{_mm(over)} {side}"
        for over, side in zip(beyond.sides_mm, _SIDES, strict=True)
        if round(over, 2) > 0
    ]
    corner = f"{_mm(beyond.most_mm)} at its corner {_point(beyond.at)}"
    problems.add(
        panel.place_of("outline"),
        "panel-beyond-wood",
        much=listed(tuple(sides)) if sides else corner,
        first=_point(beyond.bounds[:2]),
        last=_point(beyond.bounds[2:]),
        other=_other_cure(filled),
    )


def _other_cure(filled: Filled) -> str:
    """Where some parts have a place and others none, the first of these may be the one that is missed."""
    parts = [one.value for one in filled.each("parts")]
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
        problems.add(
            stand[over.number].place_of("at"),
            "part-over-panel",
            **_place_of_part(stand[over.number]),
            share=max(1, round(100 * over.share)),
            first=_point(over.bounds[:2]),
            last=_point(over.bounds[2:]),
        )
    # What stands in a wrong place may hide others, or be hidden, only there.
    wrong = {over.number for over in all_over}
    _look_at_hidden(
        stand, [one for one in hidden(parts) if not wrong & {one.number, one.behind}], problems
    )
    for far in standing_apart(panel["outline"], parts):
        part = stand[far.number]
        facts = _place_of_part(part) | {"gap": _mm(far.gap_mm)}
        if far.swapped:
            facts["mend"] = f"write at: {_point(part['at'][::-1])}"
        problems.add(part.place_of("at"), "part-apart", **facts)


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


def _piece(
    name: str, filled: Filled, paints: tuple[Paint, ...], parts: tuple[Part, ...], steps: str
) -> FinishingPiece:
    panel, trim, magnets = filled["panel"], filled["trim"], filled["magnets"]
    return FinishingPiece(
        id=name,
        name=filled["name"],
        about=filled["about"],
        panel=panel["outline"],
        keep_outs=tuple(
            KeepOut(area.value["name"], area.value["outline"]) for area in panel.each("keep_out")
        ),
        border_mm=filled["border"],
        fold_over_mm=filled["fold_over"],
        wadding_inset_mm=filled["wadding_inset"],
        parts=parts,
        paints=paints,
        trim=Trim(trim["kind"], trim["ratio"], trim["overlap"], trim["width"]),
        magnets=Magnets(
            magnets["pairs"],
            magnets["diameter"],
            magnets["thickness"],
            magnets["inset"],
            magnets["holds"],
        ),
        hardware=tuple(
            Hardware(item.value["name"], item.value["pieces"], item.value["size"])
            for item in filled.each("hardware")
        ),
        cautions=tuple(caution.value for caution in filled.each("cautions")),
        steps_markdown=steps,
        place=filled.place,
        glues=tuple(
            Glue(one.value["name"], one.value["cures_in"], one.value["for"])
            for one in filled.each("glue")
        ),
    )
