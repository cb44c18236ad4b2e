"""The kit command's list: which pattern on which cloth with which thread, in one of three formats."""

from collections.abc import Callable, Mapping, Sequence

from packetgen.diagnostics import nearest
from packetgen.model import ThreadSet
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.kit import Chosen, Kit, kit
from packetgen.reckon.series_list import Row
from packetgen.render.kit_data import as_csv, as_json
from packetgen.render.kit_table import as_table

FORMATS: Mapping[str, Callable[[Kit, Sequence[Row]], str]] = {
    "table": as_table,
    "csv": as_csv,
    "json": as_json,
}


class KitError(Exception):
    """A set or a cloth was asked for that a pattern does not offer; says which it has."""


def kit_table(chosen: tuple[Figures, ...], set_name: str | None, cloth_name: str | None) -> str:
    """`kit_of` as text for a terminal. Raises KitError."""
    return as_table(kit_of(chosen, set_name, cloth_name))


def kit_of(chosen: tuple[Figures, ...], set_name: str | None, cloth_name: str | None) -> Kit:
    """What to buy for the chosen patterns. One thread set for all; each on its model's cloth unless
    `cloth_name` names another that it offers. Raises KitError."""
    return kit([Chosen(f, _on(f, cloth_name), _set(f, set_name)) for f in chosen])


def _on(figure: Figures, cloth_name: str | None) -> OnCloth:
    if cloth_name is None:
        return figure.cloths[0]
    for on in figure.cloths:
        if on.option.cloth.id == cloth_name:
            return on
    offered = [on.option.cloth.id for on in figure.cloths]
    raise KitError(
        f"{figure.pattern.title} is not offered on {cloth_name!r}; {nearest(cloth_name, offered)}"
    )


def _set(figure: Figures, set_name: str | None) -> ThreadSet:
    sets = figure.pattern.thread_sets
    for thread_set in sets:
        if set_name in (None, thread_set.id):
            return thread_set
    raise KitError(
        f"{figure.pattern.title} has no thread set {set_name!r}; "
        f"{nearest(set_name or '', [s.id for s in sets])}"
    )
