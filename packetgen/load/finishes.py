"""Finishing pieces: the painted wood on which the designs of a series are shown."""

from collections.abc import Mapping

from packetgen.diagnostics import Place, Problems
from packetgen.load.documents import read_document, read_markdown
from packetgen.load.files import ContentFolder, valid_id
from packetgen.load.references import resolve
from packetgen.load.shape_finish import FINISH
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import FinishingPiece, Hardware, KeepOut, Magnets, Paint, Part, Trim


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
        if (
            named_well
            and filled.whole
            and steps is not None
            and None not in parts
            and None not in paints.values()
        ):
            pieces[name] = _piece(name, filled, tuple(paints.values()), parts, steps)
    return pieces


def _paints(filled: Filled, problems: Problems) -> dict[str, Paint | None]:
    paints: dict[str, Paint | None] = {}
    lines: dict[str, int] = {}
    for given in filled.each("paints"):
        paint = given.value
        if paint is None or paint["name"] is None:
            continue
        name, place = paint["name"], paint.place_of("name")
        if name in paints:
            problems.add(place, "name-twice", what="paint", name=said(name), line=lines[name])
            paints[name] = None
            continue
        lines[name] = place.line
        paints[name] = None
        if given.whole:
            paints[name] = Paint(
                name,
                paint["hex"],
                paint["put_on_with"],
                paint["covers"],
                paint["dries_in"],
                paint["tin"],
            )
    return paints


def _parts(
    filled: Filled, paints: dict[str, Paint | None], problems: Problems
) -> tuple[Part | None, ...]:
    # Without a readable list of paints nobody can say whether a part names a paint that exists.
    named = all(
        one.value is not None and one.value["name"] is not None for one in filled.each("paints")
    )
    known = paints if filled["paints"] is not None and named else None
    parts = []
    lines: dict[str, int] = {}
    for given in filled.each("parts"):
        part = given.value
        if part is None:
            continue
        place = part.place_of("name")
        if part["name"] in lines:
            problems.add(
                place, "name-twice", what="part", name=said(part["name"]), line=lines[part["name"]]
            )
        elif part["name"]:
            lines[part["name"]] = place.line
        paint = resolve(part["paint"], part.place_of("paint"), known, "paint", problems)
        if not given.whole or paint is None:
            parts.append(None)
            continue
        parts.append(
            Part(
                name=part["name"],
                outline=part["outline"],
                at_mm=part["at"],
                thickness_mm=part["thickness"],
                pieces=part["pieces"],
                paint=paint,
                coats=part["coats"],
                both_faces=part["faces"] == "both",
            )
        )
    return tuple(parts)


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
        trim=Trim(trim["kind"], trim["ratio"], trim["overlap"]),
        magnets=Magnets(
            magnets["pairs"], magnets["diameter"], magnets["thickness"], magnets["inset"]
        ),
        hardware=tuple(
            Hardware(item.value["name"], item.value["pieces"], item.value["size"])
            for item in filled.each("hardware")
        ),
        cautions=tuple(caution.value for caution in filled.each("cautions")),
        steps_markdown=steps,
        place=filled.place,
    )
