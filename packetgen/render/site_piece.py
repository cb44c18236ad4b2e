"""What the page of the finishing piece shows."""

from collections.abc import Mapping
from dataclasses import dataclass

from markupsafe import Markup

from packetgen.cautions import CAUTIONS
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.model import FinishingPiece, Glue, Hardware, Magnets, Part, Series
from packetgen.nouns import listed
from packetgen.reckon.alt_text import bench_alt
from packetgen.reckon.figures import Figures
from packetgen.reckon.fit_table import FitTable, fit_table
from packetgen.reckon.magnets import MagnetPlan
from packetgen.reckon.mounting import Mounting
from packetgen.reckon.precautions import precautions
from packetgen.reckon.sawing import Blank, any_shaped, blank
from packetgen.render.inline_drawing import inline
from packetgen.render.painting import Painting, coating_said, painting
from packetgen.render.room_left import Laid, cloth_said, laid_on_panel
from packetgen.render.site_given import Paper, papers_said
from packetgen.render.site_nav import PIECE_PAGE, piece_title
from packetgen.render.site_pictures import BENCH_STEM, Shown, SitePictures, shown
from packetgen.render.site_text import prose_under


@dataclass(frozen=True)
class CoatingView:
    paint: str
    hex: str
    said: str  # '2 coats, front'


@dataclass(frozen=True)
class PartRow:
    name: str
    pieces: int
    blank: Blank
    coatings: tuple[CoatingView, ...]


@dataclass(frozen=True)
class LaidView:
    """One design on every cloth that it is offered for, lying on the panel."""

    title: str
    href: str
    cloths: tuple[tuple[Laid, Markup], ...]  # each with its drawing as part of the page


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
    title: str  # of its page and of what leads there
    about: str
    href: str
    picture: Shown
    drawing: Markup  # SVG
    drawn_with: str  # '' while no pattern is out
    parts: tuple[PartRow, ...]
    shaped: bool  # some of them
    templates: tuple[Paper, ...]  # of those at full size; none before a build has set them
    painting: Painting
    glues: tuple[Glue, ...]
    laid: tuple[LaidView, ...]
    trim_width_mm: float
    hardware: tuple[Hardware, ...]
    magnets: Magnets
    plan: MagnetPlan | None  # None while no pattern is out
    without_magnets: (
        str  # 'A Sprig on Linen 32 and A Leaf on Linen 32'; '' where all have room for them
    )
    trim: str
    border_mm: float
    fold_over_mm: float
    steps: Markup
    mountings: tuple[MountingBlock, ...]
    fits: tuple[FitTable, ...]  # in the order of the year; all with the same columns
    cautions: tuple[CautionView, ...]


def piece_view(
    series: Series,
    year: tuple[Figures, ...],
    pictures: SitePictures,
    templates: Mapping[str, bytes],
) -> PieceView:
    """`year` holds the patterns as the calendar has them; the first one lies in the drawing. `templates` are the
    files of its shaped parts at full size."""
    piece, first = series.finish, year[0] if year else None
    return PieceView(
        name=piece.name,
        title=piece_title(series),
        about=piece.about,
        href=PIECE_PAGE,
        picture=shown(pictures.bench, BENCH_STEM, bench_alt(piece)),
        drawing=_drawing(piece, first),
        drawn_with=f"{first.pattern.title} on {first.cloths[0].option.cloth.name}" if first else "",
        parts=tuple(_part_row(part) for part in piece.parts),
        shaped=any_shaped(piece),
        templates=papers_said(templates),
        painting=painting(piece),
        glues=piece.glues,
        laid=tuple(_laid_view(figures, piece) for figures in year),
        trim_width_mm=piece.trim.width_mm,
        hardware=piece.hardware,
        magnets=piece.magnets,
        plan=first.magnets if first else None,
        without_magnets=listed(
            tuple(
                f"{figures.pattern.title} on {cloth_said(on.option)}"
                for figures in year
                for on in figures.without_magnets
            )
        ),
        trim=f"{piece.trim.kind} trim" if piece.trim.kind else "",
        border_mm=piece.border_mm,
        fold_over_mm=piece.fold_over_mm,
        steps=prose_under(piece.steps_markdown, 3),
        mountings=tuple(_mounting_block(figures) for figures in year),
        fits=tuple(fit_table(figures.pattern, series) for figures in year),
        cautions=caution_views(piece),
    )


def caution_views(piece: FinishingPiece) -> tuple[CautionView, ...]:
    """The cautions that the piece lists or needs, each with the anchor other pages link to."""
    return tuple(
        CautionView(f"caution-{name.replace(' ', '-')}", CAUTIONS[name].title, CAUTIONS[name].text)
        for name in precautions(piece)
    )


def _drawing(piece: FinishingPiece, first: Figures | None) -> Markup:
    alt = f"{piece.name}, drawn to scale"
    if first is None:
        return inline(piece_drawing(piece), alt)
    on = first.cloths[0]
    alt += f", with the card of {first.pattern.title} on it"
    return inline(piece_drawing(piece, on.fit, on.finished), alt)


def _part_row(part: Part) -> PartRow:
    return PartRow(
        name=part.name,
        pieces=part.pieces,
        blank=blank(part),
        coatings=tuple(
            CoatingView(one.paint.name, one.paint.hex, coating_said(one, part))
            for one in part.painted
        ),
    )


def _laid_view(figures: Figures, piece: FinishingPiece) -> LaidView:
    pattern = figures.pattern
    cloths = tuple((laid, inline(laid.drawing, laid.alt)) for laid in laid_on_panel(figures, piece))
    return LaidView(pattern.title, f"{pattern.id}/index.html", cloths)


def _mounting_block(figures: Figures) -> MountingBlock:
    pattern, on = figures.pattern, figures.cloths[0]
    cloth = f"{on.option.cloth.name}, {on.option.colour.name}"
    return MountingBlock(pattern.title, f"{pattern.id}/index.html", cloth, on.mounting)
