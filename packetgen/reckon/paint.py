"""How much paint the wooden piece takes, and in which order its coats go on."""

from collections.abc import Iterable
from dataclasses import dataclass

from packetgen.model import Coating, FinishingPiece, Paint, PaintWay, Part
from packetgen.reckon.outline import area_mm2, perimeter_mm
from packetgen.units import up_to_step

# Paint that a spray blows past a small part, and that stays in the brush and the tin: from memory.
SPRAY_LOSS = 0.4
BRUSH_LOSS = 0.1
# The hand's own time for one coat of one paint on all its parts: from memory.
HAND_H = 0.25
# What shows where nothing is painted.
BARE_WOOD = "#d9c4a0"


@dataclass(frozen=True)
class PartPaint:
    part: Part
    coating: Coating
    area_mm2: float  # painted once, all pieces


@dataclass(frozen=True)
class WayNeed:
    """What one way of putting a paint on takes."""

    way: PaintWay
    volume_ml: float  # all coats, with the loss of that way
    tins: int


@dataclass(frozen=True)
class PaintNeed:
    paint: Paint
    parts: tuple[PartPaint, ...]
    ways: tuple[WayNeed, ...]  # the author's first choice, and the other way if there is one
    coats: int  # the most that a part has

    @property
    def volume_ml(self) -> float:
        """By the way that the author puts first."""
        return self.ways[0].volume_ml

    @property
    def tins(self) -> int:
        """By the way that the author puts first."""
        return self.ways[0].tins


@dataclass(frozen=True)
class Coat:
    """One coat of one paint on all the parts that are ready for it; hours from the start of painting."""

    paint: Paint
    number: int  # 1 is the first coat
    last: bool
    parts: tuple[PartPaint, ...]
    starts_h: float
    done_h: float  # the brush is laid down
    dry_h: float


def front_hex(part: Part) -> str:
    """The colour that the part shows from the front."""
    return part.seen.paint.hex if part.seen else BARE_WOOD


def faces_painted(faces: str) -> int:
    """How many of the two faces a coating covers."""
    return {"front": 1, "back": 1, "edges": 0, "both": 2}[faces]


def edges_painted(faces: str) -> bool:
    """Whether a coating goes round the edges."""
    return faces in ("edges", "both")


def painted_area_mm2(part: Part, coating: Coating) -> float:
    """A face is the area of the outline, the edges are its perimeter times the thickness; all pieces
    together."""
    area = faces_painted(coating.faces) * area_mm2(part.outline)
    if edges_painted(coating.faces):
        area += perimeter_mm(part.outline) * part.thickness_mm
    return part.pieces * area


def loss_of(way: PaintWay) -> float:
    """The share of the paint that does not end on the wood."""
    return SPRAY_LOSS if way.put_on_with == "spray" else BRUSH_LOSS


def paint_needs(piece: FinishingPiece) -> tuple[PaintNeed, ...]:
    """Area × coats ÷ coverage of the label ÷ (1 − loss), for every paint that some part uses."""
    result = []
    for paint in piece.paints:
        parts = tuple(one for one in part_paints(piece) if one.coating.paint.name == paint.name)
        if parts:
            ways = tuple(_way_need(way, parts) for way in paint.ways)
            result.append(PaintNeed(paint, parts, ways, max(p.coating.coats for p in parts)))
    return tuple(result)


def part_paints(piece: FinishingPiece) -> tuple[PartPaint, ...]:
    """Every coating of every part, in the author's order."""
    return tuple(
        PartPaint(part, coating, painted_area_mm2(part, coating))
        for part in piece.parts
        for coating in part.painted
    )


def _way_need(way: PaintWay, parts: tuple[PartPaint, ...]) -> WayNeed:
    coated_m2 = sum(p.area_mm2 * p.coating.coats for p in parts) / 1e6
    volume_ml = coated_m2 / way.covers_m2_per_litre * 1000 / (1 - loss_of(way))
    return WayNeed(way, volume_ml, round(up_to_step(volume_ml / way.tin_ml, 1)))


def paint_cautions(piece: FinishingPiece) -> tuple[str, ...]:
    """Names of the cautions that the ways of painting this piece call for, listed by its author or not."""
    used = [need.paint for need in paint_needs(piece)]
    ways = {way.put_on_with for paint in used for way in paint.ways}
    names = [
        name for way, name in (("spray", "spray paint"), ("brush", "brush paint")) if way in ways
    ]
    return (*names, *(["solvents"] if any(p.cleaned_with == "solvent" for p in used) else []))


# --- the order of work ----------------------------------------------------------------------------

# The paint's name, which of a part's paints it is (from 0), and the coat (from 1).
_Step = tuple[str, int, int]


def order_of_work(piece: FinishingPiece) -> tuple[Coat, ...]:
    """Every coat with its hours, one pair of hands, other paints going on while one dries.

    A coat waits until the last one on the same parts is dry, and a part's next paint until its paint
    before is dry. Of what is ready, that comes first which has the most drying still to come (list
    scheduling by the longest way to the end); equals go in the author's order. Times are those of
    each paint's first way.
    """
    paints = {paint.name: paint for paint in piece.paints}
    on = _parts_of_steps(piece)
    before = {step: _steps_before(step, on) for step in on}
    rest = _longest_rest(on, before, paints)
    order = {step: number for number, step in enumerate(_in_authors_order(on, piece))}
    dry: dict[_Step, float] = {}
    coats: list[Coat] = []
    now = 0.0
    while len(dry) < len(on):
        open_steps = [s for s in on if s not in dry and all(b in dry for b in before[s])]
        ready = {s: max((dry[b] for b in before[s]), default=0.0) for s in open_steps}
        now = max(now, min(ready.values()))
        step = min((s for s in ready if ready[s] <= now), key=lambda s: (-rest[s], order[s]))
        name, _, number = step
        done = now + HAND_H
        dry[step] = done + paints[name].dries_in_h
        last = not any(s[:2] == step[:2] and s[2] > number for s in on)
        coats.append(Coat(paints[name], number, last, on[step], now, done, dry[step]))
        now = done
    return tuple(coats)


def _parts_of_steps(piece: FinishingPiece) -> dict[_Step, tuple[PartPaint, ...]]:
    steps: dict[_Step, list[PartPaint]] = {}
    for part in piece.parts:
        for place, coating in enumerate(part.painted):
            painted = PartPaint(part, coating, painted_area_mm2(part, coating))
            for number in range(1, coating.coats + 1):
                steps.setdefault((coating.paint.name, place, number), []).append(painted)
    return {step: tuple(parts) for step, parts in steps.items()}


def _steps_before(step: _Step, on: dict[_Step, tuple[PartPaint, ...]]) -> tuple[_Step, ...]:
    """The coat before it, or the last coats of what its parts are painted with before."""
    name, place, number = step
    if number > 1:
        return ((name, place, number - 1),)
    earlier = {
        (coating.paint.name, place - 1, coating.coats)
        for painted in on[step]
        for coating in painted.part.painted[place - 1 : place]
        if place
    }
    return tuple(sorted(earlier))


def _longest_rest(
    on: Iterable[_Step], before: dict[_Step, tuple[_Step, ...]], paints: dict[str, Paint]
) -> dict[_Step, float]:
    """Hours from the start of a step until all that waits for it is dry."""
    rest: dict[_Step, float] = {}
    for step in sorted(on, key=lambda s: (s[1], s[2]), reverse=True):  # what waits comes first
        after = (rest[s] for s, steps in before.items() if step in steps)
        rest[step] = HAND_H + paints[step[0]].dries_in_h + max(after, default=0.0)
    return rest


def _in_authors_order(on: Iterable[_Step], piece: FinishingPiece) -> list[_Step]:
    names = [paint.name for paint in piece.paints]
    return sorted(on, key=lambda step: (step[1], names.index(step[0]), step[2]))
