"""What the page of the finishing piece shows."""

import re
from dataclasses import dataclass

from markupsafe import Markup

from packetgen.cautions import CAUTIONS
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.model import FinishingPiece, Hardware, Magnets, Part, Series
from packetgen.reckon.figures import Figures
from packetgen.reckon.finishing import Mounting, PaintNeed
from packetgen.reckon.outline import bounds
from packetgen.reckon.sizes import Size
from packetgen.render.site_pictures import BENCH_STEM, Shown, SitePictures, shown
from packetgen.render.site_text import counted, listed, prose_under
from packetgen.units import plain, up_to_step

PIECE_PAGE = "finishing-piece.html"
_OPENING_TAG = re.compile(r'^.*?<svg[^>]*viewBox="([^"]*)"[^>]*>', re.DOTALL)


@dataclass(frozen=True)
class PartRow:
    name: str
    pieces: int
    size: Size  # of the smallest rectangle round it
    thickness_mm: float
    paint: str
    hex: str
    coats: str
    faces: str


@dataclass(frozen=True)
class PaintRow:
    name: str
    hex: str
    put_on_with: str
    parts: str
    dries: str
    volume_ml: int
    tins: str
    tin_ml: float


@dataclass(frozen=True)
class MountingBlock:
    """What to cut for one pattern on the cloth of its model."""

    title: str
    href: str
    cloth: str
    sizes: Mounting


@dataclass(frozen=True)
class CautionView:
    anchor: str
    title: str
    text: str


@dataclass(frozen=True)
class PieceView:
    name: str
    about: str
    href: str
    picture: Shown
    drawing: Markup  # SVG
    drawn_with: str
    parts: tuple[PartRow, ...]
    paints: tuple[PaintRow, ...]
    hardware: tuple[Hardware, ...]
    magnets: Magnets
    trim: str
    border_mm: float
    fold_over_mm: float
    steps: Markup
    mountings: tuple[MountingBlock, ...]
    cautions: tuple[CautionView, ...]


def piece_view(series: Series, year: tuple[Figures, ...], pictures: SitePictures) -> PieceView:
    """`year` holds the patterns as the calendar has them; the first one lies in the drawing."""
    piece, first = series.finish, year[0]
    alt = f"{piece.name}, painted and with nothing on it yet. {piece.about}"
    return PieceView(
        name=piece.name,
        about=piece.about,
        href=PIECE_PAGE,
        picture=shown(pictures.bench, BENCH_STEM, alt),
        drawing=_drawing(piece, first),
        drawn_with=f"{first.pattern.title} on {first.cloths[0].option.cloth.name}",
        parts=tuple(_part_row(part) for part in piece.parts),
        paints=tuple(_paint_row(need) for need in first.paints),
        hardware=piece.hardware,
        magnets=piece.magnets,
        trim=f"{piece.trim.kind} trim",
        border_mm=piece.border_mm,
        fold_over_mm=piece.fold_over_mm,
        steps=prose_under(piece.steps_markdown, 3),
        mountings=tuple(_mounting_block(figures) for figures in year),
        cautions=caution_views(piece),
    )


def caution_views(piece: FinishingPiece) -> tuple[CautionView, ...]:
    """The cautions that the piece lists, each with the anchor other pages link to."""
    return tuple(
        CautionView(f"caution-{name.replace(' ', '-')}", CAUTIONS[name].title, CAUTIONS[name].text)
        for name in piece.cautions
    )


def _drawing(piece: FinishingPiece, first: Figures) -> Markup:
    """The drawing as part of a page: named, as wide as its column, no file of its own."""
    on = first.cloths[0]
    title = f"{piece.name}, drawn to scale, with the card of {first.pattern.title} on it"
    opening = Markup(
        '<svg viewBox="\\1" role="img" aria-labelledby="piece-drawing-title">'
    ) + Markup('<title id="piece-drawing-title">{}</title>').format(title)
    drawn = piece_drawing(piece, on.fit, on.finished)
    return Markup(_OPENING_TAG.sub(lambda m: opening.replace("\\1", m[1]), drawn))


def _part_row(part: Part) -> PartRow:
    left, top, right, bottom = bounds(part.outline)
    return PartRow(
        name=part.name,
        pieces=part.pieces,
        size=Size(right - left, bottom - top),
        thickness_mm=part.thickness_mm,
        paint=part.paint.name,
        hex=part.paint.hex,
        coats=counted(part.coats, "coat"),
        faces="both faces and the edges" if part.both_faces else "the front",
    )


def _paint_row(need: PaintNeed) -> PaintRow:
    paint = need.paint
    return PaintRow(
        name=paint.name,
        hex=paint.hex,
        put_on_with=paint.put_on_with,
        parts=listed(tuple(painted.part.name for painted in need.parts)),
        dries=f"{plain(paint.dries_in_h)} {'hour' if paint.dries_in_h == 1 else 'hours'}",
        volume_ml=round(up_to_step(need.volume_ml, 1)),
        tins=counted(need.tins, "tin"),
        tin_ml=paint.tin_ml,
    )


def _mounting_block(figures: Figures) -> MountingBlock:
    pattern, on = figures.pattern, figures.cloths[0]
    cloth = f"{on.option.cloth.name}, {on.option.colour.name}"
    return MountingBlock(pattern.title, f"{pattern.id}/index.html", cloth, on.mounting)
