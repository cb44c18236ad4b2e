"""What a pattern's page shows. Public: never a chart, a symbol or the stitches of one colour, unless the
pattern is given away."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from markupsafe import Markup

from packetgen.model import Colour, Counter, Pattern, Revision, Sells, Series, Stitch
from packetgen.nouns import plural
from packetgen.reckon.alt_text import model_alt
from packetgen.reckon.figures import Figures
from packetgen.reckon.sizes import FRAMING_MARGIN_MM
from packetgen.reckon.small import only_hinted_at
from packetgen.reckon.standing import release_of
from packetgen.reckon.swaps import hangs_from
from packetgen.render.people import counters, sells_said, studio_said
from packetgen.render.site_cloths import ClothsView, ClothView, cloths_view
from packetgen.render.site_given import Given, given
from packetgen.render.site_pictures import Shown, SitePictures, mounted_stem, shown
from packetgen.render.site_text import listed, prose_under
from packetgen.render.site_thread import (
    BeadRow,
    CardColours,
    SetRow,
    bead_rows,
    card_colours,
    set_rows,
)
from packetgen.render.site_year import Hanging, Release, hanging, pattern_page, release

_WORKED_IN = (
    ("cross stitch", {Stitch.FULL}),
    ("half stitch", {Stitch.HALF, Stitch.HALF_BACK}),
    ("three-quarter and quarter stitches", {Stitch.THREE_QUARTER, Stitch.QUARTER}),
    ("petite stitches", {Stitch.PETITE}),
)
# A picture lower than this, in its own width, ends well above the facts beside it.
_LOW = 1.25


@dataclass(frozen=True)
class NumberedRevision:
    number: int  # from 1
    revision: Revision


@dataclass(frozen=True)
class PatternView:
    id: str
    href: str
    title: str
    about: str
    designer: str
    designer_id: str
    picture: Shown
    told_anew: bool  # whether the picture shows other stitches than the chart has
    only_hinted_at: bool  # whether they are too few to know the design by
    hanging: Hanging
    release: Release
    width_stitches: int
    height_stitches: int
    worked_in: str
    hours: tuple[float, float]  # with the needle, at the quick pace and at the slow one
    palette: tuple[CardColours, ...]  # of the model's set
    cloths: ClothsView
    sets: tuple[SetRow, ...]
    beads: tuple[BeadRow, ...]
    story: Markup
    model_stitcher: str
    finisher: str
    studio: str  # 'Two Tables, with Corin Bellwether'
    dyer: str
    photographer: str
    designer_sells: Sells
    sells_said: str
    sold_at: tuple[Counter, ...]
    given: Given | None  # what it gives away
    revisions: tuple[NumberedRevision, ...]  # the newest first
    margin_mm: float = FRAMING_MARGIN_MM  # of cloth round the stitching

    @property
    def colours(self) -> tuple[Colour, ...]:
        return tuple(colour for one in self.palette for colour in one.colours)

    @property
    def model(self) -> ClothView:
        return self.cloths.model

    @property
    def picture_low(self) -> bool:
        """Whether the words beside the picture reach down far below it."""
        return self.picture.height_px < _LOW * self.picture.width_px

    @property
    def units_vary(self) -> bool:
        """Whether some cloth takes more units of a line of thread than another."""
        return not all(row.to_buy for row in self.sets)


def pattern_view(
    figures: Figures, series: Series, pictures: SitePictures, packet: Mapping[str, bytes]
) -> PatternView:
    """Everything the page of one pattern prints. `packet` holds the files of a packet that is given away,
    by name, and is empty where none has been set."""
    pattern = figures.pattern
    cloths = cloths_view(figures, series.finish)
    return PatternView(
        id=pattern.id,
        href=pattern_page(pattern.id),
        title=pattern.title,
        about=pattern.about,
        designer=pattern.designer.name,
        designer_id=pattern.designer.id,
        picture=shown(
            pictures.mounted[pattern.id],
            mounted_stem(pattern.id),
            model_alt(pattern, series.finish),
        ),
        told_anew=pattern.photo is None and "chart" not in pattern.given_away,
        only_hinted_at=only_hinted_at(pattern),
        hanging=hanging(pattern.occasion, hangs_from(series, pattern.release)),
        release=release(release_of(pattern, series)),
        width_stitches=pattern.grid.width,
        height_stitches=pattern.grid.height,
        worked_in=worked_in(pattern),
        hours=(figures.time.quick_h, figures.time.slow_h),
        palette=card_colours(pattern),
        cloths=cloths,
        sets=set_rows(pattern, tuple(cloth.to_buy for cloth in cloths.each)),
        beads=bead_rows(figures.beads),
        story=prose_under(pattern.story_markdown, 3),
        model_stitcher=pattern.model_stitcher,
        finisher=pattern.finisher,
        studio=studio_said(pattern.designer, series.designers),
        dyer=pattern.dyer,
        photographer=pattern.photographer,
        designer_sells=pattern.designer.sells,
        sells_said=sells_said(pattern.designer),
        sold_at=counters(pattern),
        given=given(figures, packet),
        revisions=tuple(
            NumberedRevision(number, one) for number, one in enumerate(pattern.revisions, 1)
        )[::-1],
    )


def worked_in(pattern: Pattern) -> str:
    """'cross stitch, backstitch and one French knot': the kinds of stitch, without their numbers beyond one."""
    single = {
        plural(noun): f"one {noun}" for noun, those in _counted(pattern).items() if len(those) == 1
    }
    return listed(tuple(single.get(way, way) for way in ways_of_working(pattern)))


def _counted(pattern: Pattern) -> dict[str, Sequence[object]]:
    return {"lazy daisy": pattern.daisies, "French knot": pattern.knots, "bead": pattern.beads}


def ways_of_working(pattern: Pattern) -> tuple[str, ...]:
    marks = {mark for row in pattern.grid.rows for mark in row}
    kinds = {line.stitch for line in pattern.key if line.mark in marks}
    kinds |= {fraction.stitch for fraction in pattern.fractions}
    words = [word for word, stitches in _WORKED_IN if kinds & stitches]
    words += ["backstitch"] * any(not line.long for line in pattern.lines)
    words += ["long stitch"] * any(line.long for line in pattern.lines)
    words += [plural(noun) for noun, those in _counted(pattern).items() if those]
    return tuple(words)
