"""The finishes beside the wooden piece as the packet prints them: cuts for every cloth, in both systems."""

from dataclasses import dataclass

from packetgen.model import ClothOption
from packetgen.reckon.figures import Figures
from packetgen.reckon.generic_finishes import NOTHING, Cut, Finish, generic_finishes
from packetgen.units import (
    cut_centimetres,
    cut_inches,
    cut_size_centimetres,
    cut_size_inches,
    up_to_step,
)

_TITLES = {
    "framed": "Framed",
    "hoop": "In a hoop",
    "flat-fold": "A flat-fold that stands",
    "pillow": "A small pillow",
    "ornament": "An ornament",
}
_G_PER_OZ = 453.59237 / 16  # the pound is 453.59237 g exactly


@dataclass(frozen=True)
class CutRow:
    name: str
    cells: tuple[tuple[str, ...], ...]  # one a cloth, each of a line or two


@dataclass(frozen=True)
class FinishView:
    kind: str
    title: str
    rows: tuple[CutRow, ...]
    model: Finish  # for the model's cloth: the lengths that the steps speak of


@dataclass(frozen=True)
class OtherFinishes:
    cloths: tuple[ClothOption, ...]  # the columns
    finishes: tuple[FinishView, ...]


def other_finishes(figures: Figures) -> OtherFinishes:
    """What the pattern's author chose, with a column for each cloth."""
    kinds = figures.pattern.also_finished_as
    options = tuple(on.option for on in figures.cloths)
    by_cloth = tuple(generic_finishes(kinds, on.finished) for on in figures.cloths)
    views = tuple(_view(of_kind) for of_kind in zip(*by_cloth, strict=True))
    return OtherFinishes(options, views)


def _view(finishes: tuple[Finish, ...]) -> FinishView:
    """One kind of finish on every cloth."""
    first = finishes[0]
    rows = tuple(
        CutRow(
            cuts[0].name + (f", {cuts[0].pieces} pieces" if cuts[0].pieces > 1 else ""),
            tuple(_printed(cut) for cut in cuts),
        )
        for cuts in zip(*(finish.cuts for finish in finishes), strict=True)
        if any(cut.said != NOTHING for cut in cuts)
    )
    return FinishView(first.kind, _TITLES[first.kind], rows, first)


def _printed(cut: Cut) -> tuple[str, ...]:
    """Rounded up, inches above centimetres."""
    if cut.size:
        width, height = cut.size.width_mm, cut.size.height_mm
        return cut_size_inches(width, height), cut_size_centimetres(width, height)
    if cut.across_mm is not None:
        return f"{cut_inches(cut.across_mm)} across", f"{cut_centimetres(cut.across_mm)} across"
    if cut.length_mm is not None:
        return cut_inches(cut.length_mm), cut_centimetres(cut.length_mm)
    if cut.weight_g is not None:
        ounces = up_to_step(cut.weight_g / _G_PER_OZ, 0.5)
        return f"{ounces:g} oz", f"{up_to_step(cut.weight_g, 10):.0f} g"
    return cut.said
