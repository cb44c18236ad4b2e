"""What is shown of a pattern that is not out yet: its title, its designer, its day and a close-up."""

from dataclasses import dataclass

from packetgen.model import Designer, Occasion, Series
from packetgen.reckon.alt_text import detail_alt
from packetgen.reckon.standing import Awaited, Standing
from packetgen.reckon.swaps import hangs_from
from packetgen.render.site_pictures import Shown, SitePictures, detail_stem, shown
from packetgen.render.site_year import (
    Hanging,
    Release,
    hanging,
    in_order,
    pattern_page,
    release,
)


@dataclass(frozen=True)
class TeaserView:
    id: str
    href: str
    title: str
    designer: str
    designer_id: str
    hanging: Hanging
    release: Release
    picture: Shown

    @property
    def about(self) -> str:
        """What the page says of itself."""
        return (
            f"{self.title}, a cross stitch design by {self.designer} for {self.hanging.name}. "
            f"It comes out on {self.release.said}."
        )


def teaser_views(standing: Standing, pictures: SitePictures) -> tuple[TeaserView, ...]:
    """A view of each awaited pattern that has a page, as the year has them."""
    series = standing.series
    teased = (
        (one, one.designer, one.occasion)
        for one in standing.awaited
        if one.designer is not None and one.occasion is not None
    )
    year = in_order(teased, lambda each: each[2], series.release)
    return tuple(_teaser_view(*each, series, pictures) for each in year)


def _teaser_view(
    one: Awaited, designer: Designer, occasion: Occasion, series: Series, pictures: SitePictures
) -> TeaserView:
    picture = shown(
        pictures.details[one.pattern_id],
        detail_stem(one.pattern_id),
        detail_alt(one.title),
    )
    return TeaserView(
        one.pattern_id,
        pattern_page(one.pattern_id),
        one.title,
        designer.name,
        designer.id,
        hanging(occasion, hangs_from(series, one.release)),
        release(one.release),
        picture,
    )
