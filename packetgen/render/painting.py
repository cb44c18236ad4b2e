"""Paint as packet and site print it: parts that are painted alike together, each way with its quantity."""

from collections.abc import Sequence
from dataclasses import dataclass

from packetgen.cautions import CAUTIONS
from packetgen.model import Coating, FinishingPiece, Part
from packetgen.nouns import counted
from packetgen.reckon.paint import (
    BRUSH_LOSS,
    HAND_H,
    SPRAY_LOSS,
    Coat,
    PaintNeed,
    PartPaint,
    WayNeed,
    order_of_work,
    paint_cautions,
    paint_needs,
)
from packetgen.reckon.sawing import blank
from packetgen.units import about_percent, hours_minutes, plain, up_to_step

FACES_SAID = {
    "front": "front",
    "back": "back",
    "edges": "edges",
    "both": "both faces and the edges",
}
# Of a board that is seen from its edge, whose outline is that edge.
_ON_EDGE_SAID = {
    "front": "the edge in front",
    "back": "the edge behind",
    "edges": "both broad faces and the ends",
    "both": "both faces and the edges",
}
_LOSSES = {
    "brush": f"{about_percent(BRUSH_LOSS)} of the paint stays in the brush",
    "spray": f"{about_percent(SPRAY_LOSS)} is blown past the wood",
}


@dataclass(frozen=True)
class WayView:
    put_on_with: str
    volume_ml: int
    tins: str  # '2 tins of 100 ml'
    dries: str  # '2 h', or a dash where no coat need dry


@dataclass(frozen=True)
class PaintView:
    name: str
    hex: str
    parts: tuple[str, ...]  # 'shelf, leg (2 pieces): 2 coats, both faces and the edges'
    ways: tuple[WayView, ...]


@dataclass(frozen=True)
class CoatView:
    starts_h: float
    starts: str
    name: str
    hex: str
    coat: str  # 'first coat'
    put_on_with: str
    parts: str  # with their faces, if not on all; '' where it goes on the whole of all that paint's parts
    dry: str


@dataclass(frozen=True)
class PaintCaution:
    title: str
    gist: str  # its first sentence


@dataclass(frozen=True)
class Painting:
    """All that a page says of painting one finishing piece."""

    paints: tuple[PaintView, ...]
    coats: tuple[CoatView, ...]
    cautions: tuple[PaintCaution, ...]
    losses: str
    hand: str  # the time for putting on one coat

    @property
    def several_ways(self) -> bool:
        """Whether a paint may be put on in more ways than one, of which the order of work has the first."""
        return any(len(paint.ways) > 1 for paint in self.paints)


def painting(piece: FinishingPiece) -> Painting:
    needs = paint_needs(piece)
    return Painting(
        paint_views(needs),
        coat_views(order_of_work(piece), needs),
        cautions_of_painting(piece),
        losses_said(needs),
        hours_minutes(HAND_H),
    )


def paint_views(needs: Sequence[PaintNeed]) -> tuple[PaintView, ...]:
    """Every paint in the author's order."""
    return tuple(
        PaintView(need.paint.name, need.paint.hex, _grouped(need.parts), _ways(need.ways))
        for need in needs
    )


def coat_views(coats: Sequence[Coat], needs: Sequence[PaintNeed]) -> tuple[CoatView, ...]:
    """The order of work, a line a coat."""
    all_parts = {need.paint.name: len(need.parts) for need in needs}
    return tuple(
        CoatView(
            coat.starts_h,
            hours_minutes(coat.starts_h),
            coat.paint.name,
            coat.paint.hex,
            f"{_ORDINALS[coat.number]} coat",
            coat.paint.put_on_with,
            _where(coat.parts, len(coat.parts) == all_parts[coat.paint.name]),
            hours_minutes(coat.dry_h),
        )
        for coat in coats
    )


def losses_said(needs: Sequence[PaintNeed]) -> str:
    """'10 % of the paint stays in the brush and 40 % is blown past the wood', as far as it is true."""
    used = {by.way.put_on_with for need in needs for by in need.ways}
    return " and ".join(said for way, said in _LOSSES.items() if way in used)


def cautions_of_painting(piece: FinishingPiece) -> tuple[PaintCaution, ...]:
    """What the ways of painting ask for, in a sentence each; in full they stand among the cautions."""
    found = (CAUTIONS[name] for name in paint_cautions(piece))
    return tuple(PaintCaution(one.title, one.text.partition(". ")[0] + ".") for one in found)


def coating_said(coating: Coating, part: Part) -> str:
    """'2 coats, front', as whoever saws the part calls its faces and edges."""
    return f"{counted(coating.coats, 'coat')}, {_faces(coating, part)}"


def _faces(coating: Coating, part: Part) -> str:
    return (_ON_EDGE_SAID if blank(part).on_edge else FACES_SAID)[coating.faces]


def _where(parts: Sequence[PartPaint], all_of_them: bool) -> str:
    """'shelf (the edge in front), leg (2 pieces)': where one coat goes on."""
    faces = {
        "" if one.coating.faces == "both" else _faces(one.coating, one.part): None for one in parts
    }
    if all_of_them and len(parts) > 1 and len(faces) == 1:
        (face,) = faces
        return f"all its parts, {face}" if face else ""
    return _names(parts, with_faces=True)


def _grouped(parts: Sequence[PartPaint]) -> tuple[str, ...]:
    alike: dict[str, list[PartPaint]] = {}
    for painted in parts:
        alike.setdefault(coating_said(painted.coating, painted.part), []).append(painted)
    return tuple(f"{_names(group)}: {said}" for said, group in alike.items())


def _names(parts: Sequence[PartPaint], with_faces: bool = False) -> str:
    """A part that is called like a face of the wood is said to be a part."""
    return ", ".join(_name(painted, with_faces) for painted in parts)


def _name(painted: PartPaint, with_faces: bool) -> str:
    part = painted.part
    called = "the part " if part.name.casefold() in FACES_SAID else ""
    pieces = f"{part.pieces} pieces" if part.pieces > 1 else ""
    partly = with_faces and painted.coating.faces != "both"
    more = ", ".join(filter(None, (pieces, _faces(painted.coating, part) if partly else "")))
    return f"{called}{part.name} ({more})" if more else f"{called}{part.name}"


def _ways(ways: Sequence[WayNeed]) -> tuple[WayView, ...]:
    return tuple(
        WayView(
            by.way.put_on_with,
            round(up_to_step(by.volume_ml, 1)),
            f"{counted(by.tins, 'tin')} of {plain(by.way.tin_ml)} ml",
            hours_minutes(by.way.dries_in_h) if by.way.dries_in_h else "–",
        )
        for by in ways
    )


_ORDINALS = (
    "", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth",
)  # fmt: skip
