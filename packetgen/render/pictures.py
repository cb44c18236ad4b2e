"""Every picture that a build needs, as finished files. What was drawn once is asked of `keep`."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cached_property

from PIL import Image

from packetgen.digest import Keep, digest
from packetgen.model import FinishingPiece, Series
from packetgen.reckon.cover import PHOTO_PX, drawn_px_per_cell
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import Standing
from packetgen.render.apostrophes import curled
from packetgen.render.photo import close_up, upright
from packetgen.render.picture_detail import detail
from packetgen.render.picture_file import jpeg_bytes, png_bytes, size_of
from packetgen.render.picture_view import DETAIL_PX
from packetgen.render.public_picture import (
    MOST_GATHERED,
    Face,
    bench,
    close_box,
    face,
    gathering,
    mounted_public,
)
from packetgen.render.share_picture import PICTURE_PX, share_picture
from packetgen.render.site_nav import piece_title
from packetgen.render.site_pictures import (
    OF_PIECE,
    OF_SERIES,
    Picture,
    Shares,
    SitePictures,
    Widths,
)
from packetgen.render.stitched_picture import picture_cells, stitched

# Raise it whenever the same design would be drawn otherwise than before.
_DRAWING = 8
_PHOTO_PX = 1800
# Width in px → the most bytes, so that a page with its picture stays below 300 kB.
WIDTHS_PX = {480: 60_000, 800: 110_000, 1200: 230_000}
_WIDEST_PX = max(WIDTHS_PX)
_MOST_SHARE_BYTES = {"wide": 690_000, "square": 900_000, "upright": 1_100_000}

Draw = Callable[[], Image.Image]
DrawShape = Callable[[str], Image.Image]


def cover_jpeg(figures: Figures, keep: Keep) -> bytes:
    """The photo of the stitched model, or the stitched design drawn sharp, for the packet's cover."""
    pattern = figures.pattern

    def make() -> bytes:
        if pattern.photo:
            return jpeg_bytes(upright(pattern.photo, PHOTO_PX))
        px_per_cell = drawn_px_per_cell(*picture_cells(pattern))
        return jpeg_bytes(stitched(pattern, pattern.cloths[0], px_per_cell))

    return keep(cover_name(figures), make)


def cover_name(figures: Figures) -> str:
    """Under which `keep` is asked for the cover's picture."""
    return f"cover-{digest(_DRAWING, 'cover', _stitched_from(figures))}"


def site_pictures(standing: Standing, keep: Keep) -> SitePictures:
    """What the site shows: every design that is out, a close-up of each that is awaited, the empty bench,
    and share pictures.

    A design is shown by the author's photo of it, or else told anew and mounted on the bench.
    """
    series, piece = standing.series, standing.series.finish
    of_out = {
        each.pattern.id: _of_pattern(_Hand(each, piece), True, series, keep)
        for each in standing.figures
    }
    of_awaited = {
        each.pattern.id: _of_pattern(_Hand(_not_yet_given(each), piece), False, series, keep)
        for each in standing.teased
    }
    of_piece = digest(_of_piece(piece))
    first = [_Hand(each, piece) for each in standing.figures[:MOST_GATHERED]]
    together = tuple(hand.drawn_from for hand in first)

    def empty() -> Image.Image:
        return bench(piece, _WIDEST_PX)

    def gathered(shape: str) -> Image.Image:
        faces = [hand.face for hand in first]
        if not faces:
            return bench(piece, *PICTURE_PX[shape])
        return gathering(faces, piece, *PICTURE_PX[shape])

    shares = {name: shared for name, (_, shared) in (of_out | of_awaited).items()}
    lines = (series.tagline,)
    shares[OF_SERIES] = _shares(series, series.title, lines, (together, of_piece), gathered, keep)
    shares[OF_PIECE] = _shares(
        series,
        piece_title(series),
        (series.title,),
        of_piece,
        lambda shape: bench(piece, *PICTURE_PX[shape]),
        keep,
    )
    return SitePictures(
        mounted={name: widths for name, (widths, _) in of_out.items()},
        details={name: widths for name, (widths, _) in of_awaited.items()},
        shares=shares,
        bench=_widths(("bench", of_piece), empty, keep),
    )


def pattern_pictures(
    series: Series, figures: Figures, out: bool, keep: Keep
) -> tuple[Widths, Shares]:
    """What the site shows of one pattern: the whole of it when it is `out`, else a close-up."""
    return _of_pattern(_Hand(figures, series.finish), out, series, keep)


def _of_pattern(hand: "_Hand", out: bool, series: Series, keep: Keep) -> tuple[Widths, Shares]:
    pattern = hand.figures.pattern
    lines = (series.title, f"designed by {pattern.designer.name}")
    if out:
        shares = _shares(series, pattern.title, lines, hand.drawn_from, hand.close, keep)
        return _widths(("mounted", hand.drawn_from), lambda: hand.whole, keep), shares
    of = ("detail", hand.drawn_from)
    shares = _shares(series, pattern.title, lines, of, lambda shape: hand.part, keep)
    return _widths(of, lambda: hand.part, keep), shares


def _shares(
    series: Series, title: str, lines: Sequence[str], of: object, draw: DrawShape, keep: Keep
) -> Shares:
    """`of` is what `draw` draws from."""
    look = series.look
    title, lines = curled(title), tuple(map(curled, lines))
    words = (title, lines, look.light, look.faces)

    def made(shape: str) -> bytes:
        def make() -> bytes:
            picture = share_picture(title, lines, draw(shape), shape, look)
            return png_bytes(picture, _MOST_SHARE_BYTES[shape])

        return keep(f"{shape}-{digest(_DRAWING, 'share', shape, words, of)}", make)

    return Shares(**{shape: made(shape) for shape in _MOST_SHARE_BYTES})


def _not_yet_given(figures: Figures) -> Figures:
    """Until it is out, a chart that will be given away is hidden like any other."""
    return replace(figures, pattern=replace(figures.pattern, given_away=()))


class _Hand:
    """Draws one design, each thing at most once, and only when a file of it must be made."""

    def __init__(self, figures: Figures, piece: FinishingPiece) -> None:
        self.figures, self._piece, self._photo = figures, piece, figures.pattern.photo
        self.drawn_from = digest(_drawn_from(figures, piece))

    @cached_property
    def face(self) -> Face:
        return face(self.figures, self._piece)

    def close(self, shape: str) -> Image.Image:
        """The design large in its place."""
        whole, room = self.whole, PICTURE_PX[shape]
        if self._photo:
            return whole
        box = close_box(self.figures.cloths[0], self._piece, whole.size, room)
        return whole.resize(room, Image.Resampling.LANCZOS, box)

    @cached_property
    def whole(self) -> Image.Image:
        if self._photo:
            return upright(self._photo, _PHOTO_PX)
        return mounted_public(self.face, self._piece, _WIDEST_PX)

    @cached_property
    def part(self) -> Image.Image:
        if self._photo:
            return close_up(upright(self._photo, 2 * _PHOTO_PX), DETAIL_PX)
        return detail(self.face)


def _widths(name: tuple[str, str], draw: Draw, keep: Keep) -> Widths:
    """A picture in all of WIDTHS_PX; of one that is narrower than some of them, in its own instead."""

    def made(width_px: int) -> Picture:
        def make() -> bytes:
            return jpeg_bytes(_narrowed(draw(), width_px), WIDTHS_PX[width_px])

        data = keep(f"{width_px}-{digest(_DRAWING, width_px, name)}", make)
        return Picture(data, *size_of(data))

    by_width = {picture.width_px: picture for picture in map(made, WIDTHS_PX)}
    return tuple(by_width.values())


def _narrowed(image: Image.Image, width_px: int) -> Image.Image:
    if image.width <= width_px:
        return image
    size = (width_px, round(image.height * width_px / image.width))
    return image.resize(size, Image.Resampling.LANCZOS)


def _drawn_from(figures: Figures, piece: FinishingPiece) -> tuple[object, ...]:
    """Everything that a picture of the mounted design is drawn from, and nothing else."""
    pattern, on = figures.pattern, figures.cloths[0]
    if pattern.photo:
        return (pattern.photo,)
    shown = "chart" in pattern.given_away
    trim = piece.trim, pattern.trim_hex
    return (*_stitched_from(figures), on.fit, trim, shown, _of_piece(piece))


def _stitched_from(figures: Figures) -> tuple[object, ...]:
    """Everything that the stitched design is drawn from: no words and no prices."""
    pattern, option = figures.pattern, figures.cloths[0].option
    if pattern.photo:
        return (pattern.photo,)
    first, cloth = pattern.thread_sets[0], option.cloth
    strands = (
        first.strands, first.backstitch_strands, first.knot_strands, first.daisy_strands,
    )  # fmt: skip
    key = tuple(
        (
            line.mark,
            line.stitch,
            tuple(colour.hex for colour in line.threads[first.id]),
            line.strands.get(first.id),
            tuple((card.strands, card.tex, card.braid) for card in line.cards_in(first)),
        )
        for line in pattern.key
    )
    beads = tuple((bead.card.size_mm, bead.colour.hex, bead.at) for bead in pattern.beads)
    stitches = (pattern.grid, pattern.fractions, pattern.lines, pattern.knots, pattern.daisies)
    cloths = (cloth.weave, cloth.count_per_inch, option.over, option.colour.hex)
    return stitches, beads, key, strands, cloths


def _of_piece(piece: FinishingPiece) -> tuple[object, ...]:
    return piece.panel, piece.border_mm, piece.parts
