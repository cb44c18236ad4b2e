"""Whether the parts of a finishing piece stand where they can: beside its panel, and together."""

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from shapely import Polygon, box, unary_union
from shapely.affinity import translate
from shapely.geometry.base import BaseGeometry

from packetgen.load.corner_slips import much_alike
from packetgen.model import Outline, Part
from packetgen.units import plain

# Limits of what is told; all are our own choice. Less beyond the wood is a rounded figure.
ROUNDED_MM = 0.5
# So far a part may lie over the edge of the panel: there only the card's border and the trim are below it.
_EDGE_MM = 5
# What is hung up on cord or wire hangs no further away, and no further than it is long; next to nothing counts as
# so long. What is glued or screwed touches.
_HUNG_MM, _LEAST_LONG_MM, TOUCHES_MM = 30, 5, 1
# A layer of wood carries the panel if it reaches below so much of it, and fills half.
_REACHES, _FILLS = 0.9, 0.5
_TWIN = 0.6  # of a part, that another of its outline hardly lies over on purpose

_NEAR_MM = 60  # that a part may be moved on the advice of where it lies: our own choice
_FAR_MM = 10_000.0  # beyond any piece

Point = tuple[float, float]
Bounds = tuple[float, float, float, float]  # left, top, right, bottom


@dataclass(frozen=True)
class Over:
    """A part, by its number, that hides a share of the panel, within the bounds."""

    number: int
    share: float
    bounds: Bounds


@dataclass(frozen=True)
class Hidden:
    """A part, by its number, of which nothing is seen, and the frontmost of those that lie before all of it."""

    number: int
    behind: int


@dataclass(frozen=True)
class Apart:
    """A part, by its number, that stands so far from all others but those that it hangs together with; and where it
    touches one: the places that are most likely meant, else how far it must be moved."""

    number: int
    together_with: tuple[int, ...]
    gap_mm: float
    meant_mm: tuple[Point, ...]
    placed_twice: bool  # its outline begins at its place already, and touches one there
    nearer_mm: Point | None


def over_panel(
    panel: Outline, keep_outs: Iterable[Outline], parts: Sequence[Part]
) -> tuple[Over, ...]:
    """The parts that lie before the wood which carries the panel, and on it, though not in what is kept free.
    What only reaches over the panel's edge does no harm. Where no layer of wood carries the panel, as in an open
    frame, nobody can tell what is before it and what behind."""
    shape = Polygon(panel)
    on_panel = [placed_part(part).intersection(shape) for part in parts]
    layers = _layers(on_panel)
    carrying = [number for number, layer in enumerate(layers) if _carries(layer, on_panel, shape)]
    if not carrying:
        return ()
    shown = shape.buffer(-_EDGE_MM).difference(unary_union([Polygon(one) for one in keep_outs]))
    before = sorted(number for layer in layers[carrying[-1] + 1 :] for number in layer)
    return tuple(
        Over(number, on_panel[number].area / shape.area, on_panel[number].bounds)
        for number in before
        if on_panel[number].intersection(shown).area > ROUNDED_MM**2
    )


@dataclass(frozen=True)
class Misplaced:
    """A part, by its number, that lies over the panel, and what else its place must leave free."""

    panel: Outline
    keep_outs: Sequence[Outline]
    parts: Sequence[Part]
    number: int

    @property
    def at_mm(self) -> Point:
        return self.parts[self.number].at_mm

    @property
    def others(self) -> list[Polygon]:
        return [placed_part(one) for at, one in enumerate(self.parts) if at != self.number]

    @property
    def whole_of_others(self) -> Polygon:
        """The rectangle round all of them, and a little more."""
        return box(*unary_union(self.others).bounds).buffer(ROUNDED_MM)

    def moved_to(self, place: Point) -> Polygon:
        return placed_part(replace(self.parts[self.number], at_mm=place))

    def on_panel_mm2(self, place: Point) -> float:
        return area_on(self.moved_to(place), [Polygon(self.panel)])

    def is_over_panel_at(self, place: Point) -> bool:
        parts = list(self.parts)
        parts[self.number] = replace(parts[self.number], at_mm=place)
        over = over_panel(self.panel, self.keep_outs, parts)
        return self.number in {one.number for one in over}

    def is_free_at(self, place: Point) -> bool:
        """Whether the part touches others there and leaves the panel free."""
        touches = _gap_mm(self.moved_to(place), self.others) <= ROUNDED_MM
        return touches and not self.is_over_panel_at(place)


def better_at(one: Misplaced) -> Point | None:
    """The one other place, with its two numbers changed or one or both of them in centimetres, at which the part can
    stand."""
    across, down = one.at_mm
    places = {(down, across), (10 * across, down), (across, 10 * down), (10 * across, 10 * down)}
    places.discard((across, down))
    found = [place for place in places if _can_stand(place, one)]
    return found[0] if len(found) == 1 else None


def told_at(one: Misplaced, told_mm: Iterable[float]) -> Point | None:
    """The one place, with a figure that was lost or the figures in another order, as steps have `told` that number, at which
    the part touches others, makes the whole no larger and leaves the panel free."""
    across, down = one.at_mm
    places = {(told, down) for told in told_mm if _may_be(told, across)}
    places |= {(across, told) for told in told_mm if _may_be(told, down)}
    whole = one.whole_of_others
    found = [
        place
        for place in places - {(across, down)}
        if whole.covers(one.moved_to(place)) and one.is_free_at(place)
    ]
    return found[0] if len(found) == 1 else None


def _may_be(told_mm: float, at_mm: float) -> bool:
    told, at = plain(told_mm), plain(at_mm)
    return len(told) >= len(at) and much_alike(told, at)


def clear_at(one: Misplaced) -> Point | None:
    """The nearest place, straight up, down or aside, at which the part lies wholly on others, at the panel's edge; None where
    that is far."""
    wood = unary_union(one.others)
    across, down = one.at_mm
    left, top, right, bottom = Polygon(one.panel).bounds
    first, upper, last, lower = one.moved_to(one.at_mm).bounds
    moves = ((0.0, top - lower), (0.0, bottom - upper), (left - last, 0.0), (right - first, 0.0))
    near = (move for move in moves if abs(move[0] + move[1]) <= _NEAR_MM)
    for aside, along in sorted(near, key=lambda move: abs(move[0] + move[1])):
        place = (across + aside, down + along)
        if wood.covers(one.moved_to(place)) and _can_stand(place, one):
            return place
    return None


def _can_stand(place: Point, one: Misplaced) -> bool:
    """Whether the part there touches another, does not reach beyond what it lies on, lies over no panel, and hides none
    and is hidden by none."""
    moved, others = one.moved_to(place), one.others
    if not others or _gap_mm(moved, others) > ROUNDED_MM:
        return False
    before, behind = others[: one.number], others[one.number :]
    wood = unary_union(others)
    lies_mm2 = wood.intersection(moved).area
    return bool(
        (lies_mm2 <= ROUNDED_MM * moved.length or wood.buffer(ROUNDED_MM).covers(moved))
        and not any(_hides(moved, other) for other in before)
        and not any(_hides(other, moved) for other in behind)
        and not one.is_over_panel_at(place)
    )


def _hides(front: BaseGeometry, back: BaseGeometry) -> bool:
    """More than half of it."""
    return bool(front.intersection(back).area > back.area / 2)


def hidden(parts: Sequence[Part]) -> Iterator[Hidden]:
    """The parts that lie wholly behind a single larger one although their front is painted: boards of one shape
    are put together to make a thicker one."""
    placed = [placed_part(part) for part in parts]
    before = [one.buffer(ROUNDED_MM) for one in placed]
    for number, part in enumerate(parts):
        if part.seen:
            front = max(
                at
                for at, shape in enumerate(before)
                if at == number
                or (at > number and shape.covers(placed[number]))
                and not before[number].covers(placed[at])
            )
            if front != number:
                yield Hidden(number, front)


@dataclass(frozen=True)
class Twin:
    """A part, by its number, that covers a share of an earlier one of the same outline."""

    number: int
    earlier: int
    share: float


def over_twins(parts: Sequence[Part]) -> Iterator[Twin]:
    """Parts that are seen from the front and lie, a little beside it, over one of their own outline: mostly the other of a
    pair whose place is wrong."""
    placed = [placed_part(part) for part in parts]
    for number, part in enumerate(parts):
        for earlier in range(number):
            other = parts[earlier]
            alike = part.outline == other.outline and part.at_mm != other.at_mm
            share = placed[number].intersection(placed[earlier]).area / placed[earlier].area
            if alike and part.seen and other.seen and share > _TWIN:
                yield Twin(number, earlier, share)


def doubled(parts: Sequence[Part]) -> Iterator[tuple[int, int]]:
    """The parts, by number, that are seen from the front and as large as an earlier such one at the same place, and
    that one."""
    placed = [placed_part(part) for part in parts]
    for number, part in enumerate(parts):
        same = (
            earlier
            for earlier in range(number)
            if part.seen
            and parts[earlier].seen
            and placed[number].symmetric_difference(placed[earlier]).area
            <= ROUNDED_MM * placed[number].length / 2
        )
        if (first := next(same, None)) is not None:
            yield number, first


def standing_apart(
    panel: Outline, parts: Sequence[Part], hung: bool, joined: Collection[frozenset[int]] = ()
) -> Iterator[Apart]:
    """The parts that neither touch another nor lie at the panel, and likewise those that touch only one another,
    beyond gaps that may be meant: where anything is `hung` up, that is what stands below or above others; what
    stands beside them is not, nor what is `joined` to others, by their numbers."""
    placed = [placed_part(part) for part in parts]
    shape = Polygon(panel)
    groups = touching(placed)
    for group in groups if len(groups) > 1 else ():
        one = unary_union([placed[number] for number in group])
        others = [other for number, other in enumerate(placed) if number not in group]
        if not one.intersects(shape):
            gap_mm = _gap_mm(one, others)
            fixed = any(joint & set(group) and joint - set(group) for joint in joined)
            if gap_mm > (_may_hang_mm(one, others) if hung and not fixed else TOUCHES_MM):
                part = parts[group[0]]
                by_itself = Polygon(part.outline)
                twice = (
                    len(group) == 1
                    and by_itself.bounds[:2] == part.at_mm
                    and _gap_mm(by_itself, others) <= ROUNDED_MM
                )
                nearer = _nearer(one, others, gap_mm) if len(group) == 1 else None
                meant = _meant(group[0], parts, others, nearer) if len(group) == 1 else ()
                yield Apart(group[0], group[1:], gap_mm, meant, twice, nearer)


def _may_hang_mm(one: BaseGeometry, others: Sequence[Polygon]) -> float:
    """How far from the others it may hang on cord."""
    left, top, right, bottom = one.bounds
    hangs = any(left < other.bounds[2] and other.bounds[0] < right for other in others)
    long = max(right - left, bottom - top) if hangs else 0
    return min(_HUNG_MM, max(_LEAST_LONG_MM, long))


def _meant(
    number: int, parts: Sequence[Part], others: Sequence[Polygon], nearer: Point | None
) -> tuple[Point, ...]:
    """The places that are most likely meant: where the part touches another with its two numbers changed, or as near as may
    be; only what lines up with one of the same outline, if anything does. Nothing where no number tells more for the
    nearest place than for others."""
    across, down = parts[number].at_mm
    turned = placed_part(replace(parts[number], at_mm=(down, across)))
    near = [(across + nearer[0], down + nearer[1])] if nearer else []
    swapped = [(down, across)] if _gap_mm(turned, others) <= ROUNDED_MM else []
    twins = [one for at, one in enumerate(parts) if at != number]
    twins = [one for one in twins if one.outline == parts[number].outline]
    lined = [
        place
        for place in near + swapped
        for twin in twins
        for of, was, to in zip(place, (across, down), twin.at_mm, strict=True)
        if of == to != was
    ]
    return tuple(dict.fromkeys(lined or (swapped and near + swapped)))


def _nearer(one: BaseGeometry, others: Sequence[Polygon], gap_mm: float) -> Point | None:
    """How far it must be moved across and down so that it touches another and lies on none, if it is straight up, down
    or aside."""
    for across, down in ((0.0, -gap_mm), (0.0, gap_mm), (-gap_mm, 0.0), (gap_mm, 0.0)):
        moved = translate(one, across, down)
        if (
            _gap_mm(moved, others) <= ROUNDED_MM
            and area_on(moved, others) <= ROUNDED_MM * moved.length
        ):
            return across, down
    return None


def touching(placed: Sequence[Polygon]) -> list[tuple[int, ...]]:
    """The numbers of what hangs together, in the order of the first of each group."""
    whole = unary_union([one.buffer(ROUNDED_MM / 2) for one in placed])
    islands = getattr(whole, "geoms", [whole])
    groups = (
        tuple(number for number, one in enumerate(placed) if island.intersects(one))
        for island in islands
    )
    return sorted(groups)


def area_on(one: BaseGeometry, others: Iterable[Polygon]) -> float:
    """How much of it lies on them, mm²."""
    return float(sum(one.intersection(other).area for other in others))


def _gap_mm(one: BaseGeometry, others: Iterable[Polygon]) -> float:
    return min(one.distance(other) for other in others)


def edges_where_they_meet(one: Part, other: Part) -> Iterator[tuple[float, ...]]:
    """How far apart their left, upper, right and lower edges are; of the left and right ones as far up and down as they lie on
    each other: on the whole, and at the beginning and end of that, since a part may be narrower there than elsewhere."""
    shapes = placed_part(one), placed_part(other)
    bounds = shapes[0].bounds, shapes[1].bounds
    upper, lower = max(bounds[0][1], bounds[1][1]), min(bounds[0][3], bounds[1][3])
    for first, last in ((upper, lower), (upper, upper), (lower, lower)):
        there = bounds if last < first else tuple(_between(shape, first, last) for shape in shapes)
        apart = [(abs(a - b), abs(c - d)) for a, b, c, d in zip(*there, *bounds)]
        yield apart[0][0], apart[1][1], apart[2][0], apart[3][1]


def _between(shape: Polygon, upper: float, lower: float) -> Bounds:
    """How far the shape reaches within these heights."""
    there = shape.intersection(Polygon.from_bounds(-_FAR_MM, upper, _FAR_MM, lower))
    return shape.bounds if there.is_empty else there.bounds


def placed_part(part: Part) -> Polygon:
    return Polygon([(x + part.at_mm[0], y + part.at_mm[1]) for x, y in part.outline])


def _layers(pieces: Sequence[BaseGeometry]) -> list[list[int]]:
    """The numbers of the pieces, which are told from the back to the front, in layers: each lies in front of the
    frontmost layer that has more than half of it before it. A piece of nothing lies in none."""
    layers: list[list[int]] = []
    for number, piece in enumerate(pieces):
        if piece.area <= ROUNDED_MM**2:
            continue
        level = len(layers)
        while level and not _lies_on(piece, [pieces[one] for one in layers[level - 1]]):
            level -= 1
        if level == len(layers):
            layers.append([])
        layers[level].append(number)
    return layers


def _lies_on(piece: BaseGeometry, layer: Sequence[BaseGeometry]) -> bool:
    # The pieces of a layer hardly lie on each other, so what each has below it may be added up.
    return bool(sum(piece.intersection(one).area for one in layer) > piece.area / 2)


def _carries(layer: Sequence[int], pieces: Sequence[BaseGeometry], panel: Polygon) -> bool:
    wood = unary_union([pieces[number] for number in layer])
    reaches = wood.convex_hull.area >= _REACHES * panel.area
    return bool(reaches and wood.area >= _FILLS * panel.area)
