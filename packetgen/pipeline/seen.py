"""What the packet of one pattern gets to see: of all that patterns share, what this one prints and no more.

No template can print what is not there, so an edit of what is cut out here sets no packet anew.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, is_dataclass, replace
from functools import cache
from operator import is_
from types import MappingProxyType
from typing import Any, TypeVar, cast, get_args, get_type_hints

from packetgen.model import (
    BeadCard,
    Cloth,
    ClothOption,
    Colour,
    Designer,
    Grid,
    Pattern,
    Sells,
    Series,
    ThreadCard,
    ToCome,
)
from packetgen.model.look import BY_NIGHT, ORNAMENTS
from packetgen.reckon.figures import Figures
from packetgen.reckon.magnets import MagnetPlan
from packetgen.reckon.sawing import any_shaped

# Goods by kind and id → the colours of them that a pattern takes, by what its card calls them.
_Taken = Mapping[tuple[type, str], frozenset[str]]
_GOODS = (ThreadCard, BeadCard, Cloth)
_NO_COLOUR = Colour("", "", "")
_T = TypeVar("_T")


@dataclass(frozen=True)
class Seen:
    """All that a packet is made from, but for options, templates and program."""

    series: Series
    figures: Figures


def as_packets_see(series: Series, all_figures: Iterable[Figures]) -> dict[str, Seen]:
    """By pattern id, what the packet of each of these figures' patterns sees.

    Of the other patterns that is title, designer's name, day and cloths; of other designers a name, where
    they share the studio; of thread, beads and cloth the colours that the pattern itself takes, and no
    price; the address where a part of the piece is shaped, since the packet sends to its drawing on the site;
    no notices and no welcome, and nothing else that only the site shows.
    """
    covers = tuple(map(_cover, series.patterns))
    place_of = {one.id: place for place, one in enumerate(series.patterns)}
    shared = replace(
        series,
        to_come=tuple(map(_named, series.to_come)),
        notices=(),
        tagline="",
        welcome_markdown="",
        address=series.address if any_shaped(series.finish) else None,
        before_release="teaser",
        look=replace(series.look, dark=BY_NIGHT, ornament=ORNAMENTS[0]),
    )
    return {of.pattern.id: _seen(shared, covers, place_of[of.pattern.id], of) for of in all_figures}


def _seen(shared: Series, covers: tuple[Pattern, ...], place: int, figures: Figures) -> Seen:
    pattern = figures.pattern
    cut = _Cut(_taken(pattern))
    figures = replace(cut(figures), magnets=_told(figures.magnets))
    series = replace(
        shared,
        patterns=(*covers[:place], figures.pattern, *covers[place + 1 :]),
        thread_sets=cut(tuple(one for one in shared.thread_sets if one in pattern.thread_sets)),
        designers=tuple(
            one if one.id == pattern.designer.id else _by_name(one)
            for one in shared.designers
            if one.id == pattern.designer.id
            or (one.studio and one.studio == pattern.designer.studio)
        ),
    )
    return Seen(series, figures)


# --- others of the series -------------------------------------------------------------------------


def _cover(pattern: Pattern) -> Pattern:
    return Pattern(
        id=pattern.id,
        title=pattern.title,
        about="",
        designer=replace(_by_name(pattern.designer), studio=""),
        occasion=pattern.occasion,
        cloths=tuple(map(_bare, pattern.cloths)),
        thread_sets=(),
        key=(),
        grid=Grid((), pattern.place),
        fractions=(),
        lines=(),
        knots=(),
        beads=(),
        model_stitcher="",
        finisher="",
        sold_at=(),
        revisions=(),
        story_markdown="",
        notes_markdown="",
        photo=None,
        place=pattern.place,
    )


def _named(one: ToCome) -> ToCome:
    return replace(one, designer=replace(_by_name(one.designer), studio=""))


def _by_name(designer: Designer) -> Designer:
    return replace(designer, about="", sells=Sells.NEITHER, shop=None, links=())


def _bare(option: ClothOption) -> ClothOption:
    """By name and count."""
    cloth = replace(option.cloth, hand_dyed=False, colours=MappingProxyType({}), price=None)
    return replace(option, cloth=cloth, colour=_NO_COLOUR)


def _told(plan: MagnetPlan) -> MagnetPlan:
    """What the heaviest design weighs is told only where that asks for magnets, and no place where they
    have no room in common."""
    if not plan.by_weight:
        plan = replace(plan, heaviest_g=0.0)
    return plan if plan.spots else replace(plan, first_mm=(0.0, 0.0), last_mm=(0.0, 0.0))


# --- goods ----------------------------------------------------------------------------------------


def _taken(pattern: Pattern) -> _Taken:
    """The colours that a pattern takes, in all its thread sets."""
    taken: dict[tuple[type, str], set[str]] = {}

    def take(goods: ThreadCard | BeadCard | Cloth, colour: Colour) -> None:
        taken.setdefault((type(goods), goods.id), set()).add(colour.number)

    for thread_set in pattern.thread_sets:
        for line in pattern.key:
            for card, colour in zip(line.cards_in(thread_set), line.threads[thread_set.id]):
                take(card, colour)
    for bead in pattern.beads:
        take(bead.card, bead.colour)
    for option in pattern.cloths:
        take(option.cloth, option.colour)
    return {goods: frozenset(numbers) for goods, numbers in taken.items()}


class _Cut:
    """Gives a value, however deep, in which all goods have only the colours that are taken, and no price.
    What holds no goods stays the very object that it was."""

    def __init__(self, taken: _Taken) -> None:
        self._taken = taken
        self._done: dict[int, tuple[object, object]] = {}  # by identity, with what has it

    def __call__(self, value: _T) -> _T:
        return cast(_T, self._of(value))

    def _of(self, value: object) -> object:
        if isinstance(value, tuple):
            inside = tuple(map(self._of, value))
            return value if all(map(is_, inside, value)) else inside
        if isinstance(value, Mapping):
            held = {key: self._of(one) for key, one in value.items()}
            return value if all(map(is_, held.values(), value.values())) else MappingProxyType(held)
        if not is_dataclass(value):
            return value
        if id(value) not in self._done:
            self._done[id(value)] = value, self._made(value)
        return self._done[id(value)][1]

    def _made(self, value: Any) -> object:
        """Of a dataclass."""
        if isinstance(value, _GOODS):
            taken = self._taken.get((type(value), value.id), frozenset())
            colours = {key: one for key, one in value.colours.items() if key in taken}
            return replace(value, colours=MappingProxyType(colours), price=None)
        kind: Any = type(value)
        before = {name: getattr(value, name) for name in _with_goods(kind)}
        after = {name: self._of(one) for name, one in before.items()}
        changed = {name: one for name, one in after.items() if one is not before[name]}
        return replace(value, **changed) if changed else value


@cache
def _with_goods(kind: type) -> tuple[str, ...]:
    """The fields of a dataclass in which goods may be, by their types; a chart with its stitches has none."""
    return tuple(name for name, hint in get_type_hints(kind).items() if _may_hold_goods(hint))


def _may_hold_goods(hint: Any) -> bool:
    if is_dataclass(hint) and isinstance(hint, type):
        return hint in _GOODS or bool(_with_goods(hint))
    return any(map(_may_hold_goods, get_args(hint)))
