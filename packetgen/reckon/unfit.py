"""Designs that the finishing piece does not hold, each told where it can be mended: at a cloth, or once of the piece."""

from dataclasses import replace
from math import ceil

from packetgen.diagnostics import Problems
from packetgen.model import ClothOption, FinishingPiece, Pattern, Series
from packetgen.model.extent import bare_margins
from packetgen.nouns import counted, listed
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.fit import Verdict, around_mm, holds, room_for, too_many
from packetgen.reckon.outline import bounds
from packetgen.reckon.sizes import Size
from packetgen.units import plain

# Said of a design that no narrower and no lower one helps.
_IN_THE_WAY = "in the way of a part that the panel must keep free"
_OTHER_WAYS = "offer a finer cloth, a smaller design, or larger panel and parts in {file}"


def complain_of_unfit(all_figures: tuple[Figures, ...], series: Series, problems: Problems) -> None:
    """Every design must fit the series' finishing piece on every cloth that is offered for it."""
    piece = series.finish
    if (broad := _broad(piece)) and (without_room := _for_edge_alone(all_figures, piece)):
        around, across = (f"{plain(round(one, 2))} mm" for one in broad)
        problems.add(
            piece.edge_place or piece.place,
            "border-broad",
            around=around,
            across=across,
            number=without_room,
        )
        return
    if _none_fits(all_figures, problems, piece):
        return
    for figure in all_figures:
        out = [on for on in figure.cloths if on.fit.verdict is Verdict.DOES_NOT_FIT]
        for on in figure.cloths:
            if on.fit.verdict is not Verdict.DOES_NOT_FIT:
                _complain_of_blocks(on.option, problems)
        if 1 < len(out) == len(figure.cloths):
            finest = min(out, key=lambda on: on.cell_mm)
            _complain(figure, finest, f", the finest of its {len(out)} cloths,", piece, problems)
            continue
        for on in out:
            _complain(figure, on, "", piece, problems)


def _none_fits(all_figures: tuple[Figures, ...], problems: Problems, piece: FinishingPiece) -> bool:
    """Whether of several designs none fits on any of several cloths: then the panel is looked at, in one line."""
    every = [(figure, on) for figure in all_figures for on in figure.cloths]
    cloths = {on.option.cloth.name for _, on in every}
    fits = any(on.fit.verdict is not Verdict.DOES_NOT_FIT for _, on in every)
    if fits or len(all_figures) < 2 or len(cloths) < 2:
        return False
    ways = [
        (sum(way), figure.pattern.title, on.option.cloth.name, _excess(*way))
        for figure, on in every
        for way in too_many(
            (figure.pattern.grid.width, figure.pattern.grid.height), on.cell_mm, piece
        )
    ]
    nearest = ""
    if ways:
        _, title, cloth, excess = min(ways)
        nearest = f"; the nearest, {title} on {cloth}, is {excess}"
    left, top, right, bottom = bounds(piece.panel)
    problems.add(
        piece.panel_place or piece.place,
        "none-fits",
        number=len(all_figures),
        panel=f"{plain(round(right - left, 2))} × {plain(round(bottom - top, 2))} mm",
        free=" and 'keep_out'" if piece.keep_outs else "",
        nearest=nearest,
    )
    return True


def _complain(
    figure: Figures, on: OnCloth, which: str, piece: FinishingPiece, problems: Problems
) -> None:
    grid = figure.pattern.grid
    ways = too_many((grid.width, grid.height), on.cell_mm, piece)
    # Of two ways the room of each; else as wide and as high as may be, or as near to it.
    most = [(grid.width - wide, grid.height - high) for wide, high in ways]
    if len(ways) < 2:
        most = [room_for(on.fit, on.cell_mm, piece)]
    problems.add(
        on.option.place,
        "does-not-fit",
        title=figure.pattern.title,
        cloth=f"{on.option.cloth.name}{which}",
        size=_as_outlines(on.fit.covered),
        piece=piece.name,
        most=" or ".join(f"{wide} × {high}" for wide, high in most),
        excess=", or ".join(_excess(*way) for way in ways) or _IN_THE_WAY,
        way=_over_way(on.option)
        or _border_way(piece)
        or _bare_way(figure.pattern, on.cell_mm, piece)
        or _OTHER_WAYS.format(file=piece.place.path),
    )


def _complain_of_blocks(option: ClothOption, problems: Problems) -> None:
    """Advice on a choice of aida that a pattern works over several blocks, where the cloth's own file does not."""
    if option.over_blocks and option.over != option.cloth.over:
        problems.add(
            option.place, "over-rare", over=option.over, hint="take over out of this choice"
        )


def _over_way(option: ClothOption) -> str:
    """What to do where a stitch covers several blocks of aida."""
    return f"write over: 1, as usual on aida, and not {option.over}" if option.over_blocks else ""


def _as_outlines(size: Size) -> str:
    """In mm, as outlines are."""
    wide, high = (plain(ceil(10 * side - 1e-6) / 10) for side in (size.width_mm, size.height_mm))
    return f"{wide} × {high} mm"


def _bare_way(pattern: Pattern, cell_mm: float, piece: FinishingPiece) -> str:
    """What to do where only the bare columns and rows at its edges are too many; '' where that is not so."""
    left, right, above, below = bare_margins(pattern)
    wide, high = pattern.grid.width - left - right, pattern.grid.height - above - below
    if not holds((wide, high), cell_mm, piece):
        return ""
    return (
        f"without its bare edges it is {wide} × {high} and fits: packetgen chart crop, or bring with --trim, "
        "takes them off"
    )


def _border_way(piece: FinishingPiece) -> str:
    """What to do where border and trim take more of the panel than they leave; '' where that is not so."""
    broad = _broad(piece)
    if not broad:
        return ""
    around, across = (plain(round(one, 2)) for one in broad)
    return f"border and trim take {around} of the panel's {across} mm: look at them in {piece.place.path}"


def _for_edge_alone(all_figures: tuple[Figures, ...], piece: FinishingPiece) -> str:
    """How many designs do not fit on one of their cloths, where without border and trim some of these would; ''
    otherwise."""
    bare = replace(piece, border_mm=0.0, trim=replace(piece.trim, width_mm=0.0))
    out = [
        (figure.pattern, on)
        for figure in all_figures
        for on in figure.cloths
        if on.fit.verdict is Verdict.DOES_NOT_FIT
    ]
    if not any(holds((of.grid.width, of.grid.height), on.cell_mm, bare) for of, on in out):
        return ""
    all_cuts = sum(len(figure.cloths) for figure in all_figures)
    if len(out) == all_cuts:
        return "no design of the series fits"
    titles = dict.fromkeys(of.title for of, _ in out)
    return f"{listed(tuple(titles)[:2])}{' and more' if len(titles) > 2 else ''} {'do' if len(titles) > 1 else 'does'} not fit"


def _broad(piece: FinishingPiece) -> tuple[float, float] | None:
    """What border and trim take of the panel's shorter side, and how long that is, in mm, where they take more
    than they leave."""
    left, top, right, bottom = bounds(piece.panel)
    across, around = min(right - left, bottom - top), 2 * around_mm(piece)
    return (around, across) if around > across / 2 else None


def _excess(too_wide: int, too_high: int) -> str:
    """(6, 2) → '6 stitches too wide and 2 too high'."""
    if too_wide and too_high:
        return f"{counted(too_wide, 'stitch')} too wide and {too_high} too high"
    return f"{counted(too_wide or too_high, 'stitch')} too {'wide' if too_wide else 'high'}"
