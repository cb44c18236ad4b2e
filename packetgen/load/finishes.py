"""Finishing pieces: the painted wood on which the designs of a series are shown."""

from collections.abc import Mapping

from packetgen.diagnostics import Place, Problems
from packetgen.load.alike_words import complain_of_file_name
from packetgen.load.documents import read_document, read_markdown
from packetgen.load.files import ContentFolder, valid_id
from packetgen.load.once import Once
from packetgen.load.piece_checks import broader_place, complain_of_piece
from packetgen.load.references import resolve
from packetgen.load.shape_finish import FINISH
from packetgen.load.sure import all_sure
from packetgen.load.told_in_steps import complain_of_steps
from packetgen.load.told_piece import complain_of_told_about
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import (
    NO_MAGNETS,
    NO_TRIM,
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

_OF_STEPS = {
    name: "tell in steps.md how the piece is made and painted, and how the stitching is mounted"
    for name in ("finishing.md", "painting.md", "mounting.md")
}


def load_finishes(folder: ContentFolder, problems: Problems) -> Mapping[str, FinishingPiece | None]:
    """Every finishing piece by its folder's name; None for one that is not in order."""
    pieces: dict[str, FinishingPiece | None] = dict.fromkeys(sorted(folder.moved_names()))
    for name in folder.folders("finishes"):
        path = f"finishes/{name}"
        named_well = valid_id(name, Place(path), problems)
        filled = read_document(folder, f"{path}/finish.yaml", FINISH, problems)
        steps = read_markdown(folder, f"{path}/steps.md", problems)
        folder.unread(path, ("finish.yaml", "steps.md"), hints=_OF_STEPS)
        pieces[name] = None
        if filled is None:
            continue
        complain_of_file_name(filled, "name", name, "folder", problems)
        paints = _paints(filled, problems)
        parts = _parts(filled, paints, problems)
        complain_of_piece(filled, None if None in parts else all_sure(parts), steps or "", problems)
        complain_of_steps(
            filled,
            None if None in paints.values() else all_sure(paints.values()),
            None if None in parts or not parts else all_sure(parts),
            steps or "",
            f"{path}/steps.md",
            problems,
        )
        if (
            named_well
            and filled.whole
            and steps is not None
            and None not in parts
            and None not in paints.values()
        ):
            piece = _piece(name, filled, all_sure(paints.values()), all_sure(parts), steps)
            uneven = {one.place.path for one in problems if one.code == "part-pair-uneven"}
            if filled.place.path not in uneven:  # by which it may be wider
                complain_of_told_about(piece, filled.given["about"], problems)
            pieces[name] = piece
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
                paint.place_of("name"),
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
    for number, before in enumerate(coatings):
        later = [one for one in coatings[number + 1 :] if before and one and _covers(one, before)]
        if before and later:
            problems.add(
                several[number].place_of("paint"),
                "coat-covered",
                part=said(part["name"] or "the part"),
                paint=said(before.paint.name),
                later=said(later[0].paint.name),
            )
    return tuple(coatings)


def _covers(later: Coating, before: Coating) -> bool:
    """Whether it goes on all faces of the other, and on more: on the same ones that may be a primer."""
    other_paint = later.paint is not before.paint
    return other_paint and later.faces == "both" and before.faces != "both"


def _shared_face(before: Coating, faces: str) -> str:
    """A face that both cover, in words; '' where they share none."""
    if before.faces == faces or faces == "both":
        return {"both": "front"}.get(before.faces, before.faces)
    return faces if before.faces == "both" else ""


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
        trim=Trim(trim["kind"], trim["ratio"], trim["overlap"], trim["width"])
        if trim is not None
        else NO_TRIM,
        magnets=Magnets(
            magnets["pairs"],
            magnets["diameter"],
            magnets["thickness"],
            magnets["inset"],
            magnets["holds"],
        )
        if magnets is not None
        else NO_MAGNETS,
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
        edge_place=broader_place(filled),
        panel_place=filled["panel"].place_of("outline"),
        magnets_place=magnets.place_of("diameter") if magnets is not None else None,
        inset_place=magnets.place_of("inset") if magnets is not None else None,
    )
