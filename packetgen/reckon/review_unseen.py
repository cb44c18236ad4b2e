"""Advice on stitches, knots and lines that hardly show, since their thread is nearly of the cloth's colour."""

from collections.abc import Collection, Iterator, Sequence
from itertools import pairwise
from math import ceil, floor

from packetgen.colour import FAR, SAME, difference, lab
from packetgen.diagnostics import Problems
from packetgen.model import BARE, ClothOption, Colour, Line, Pattern, Point
from packetgen.nouns import counted

# Fewer stitches are a glint; a patch is told from the cloth by half of its edge; and half of all is a ground: our own choice.
FEWEST, EDGE, _GROUND = 10, 0.5, 0.5

_Spot = tuple[int, int]  # in half stitches, from the chart's upper left corner


def complain_of_unseen(pattern: Pattern, problems: Problems) -> None:
    """Advice, at the first of the cloths, on each thread of the model's card that shows neither by its colour nor by
    what lies round it. Another card's thread shows by its sheen, and is passed over."""
    outlined: Collection[_Spot] | None = None
    for colour, marks in _marks_of(pattern).items():
        near = [
            one for one in pattern.cloths if difference(lab(colour.hex), lab(one.colour.hex)) <= FAR
        ]
        if not near:
            continue
        if on_bare := _on_bare(pattern, marks):
            _tell(
                pattern,
                colour,
                near,
                problems,
                on_bare,
                "mostly",
                "work them in another thread",
            )
        stitches = sum(row.count(mark) for row in pattern.grid.rows for mark in marks)
        if stitches < FEWEST:
            continue
        if outlined is None:
            outlined = frozenset(_near_lines(pattern))
        bare = tuple(_edge(pattern, marks, outlined))
        if sum(bare) <= EDGE * len(bare):
            _complain_of_ground(pattern, colour, stitches, problems)
            continue
        number = f"{stitches:,} stitches"
        _tell(pattern, colour, near, problems, number, "most of their edge lies", "outline them")


def _tell(
    pattern: Pattern,
    colour: Colour,
    near: Sequence[ClothOption],
    problems: Problems,
    stitches: str,
    where: str,
    mend: str,
) -> None:
    more = f" and {counted(len(near) - 1, 'more cloth')}" if len(near) > 1 else ""
    problems.add(
        near[0].place,
        "thread-unseen",
        stitches=stitches,
        colour=f"{colour.number} {colour.name}",
        cloths=f"{near[0].cloth.name} in {near[0].colour.name}{more}",
        where=where,
        mend=mend,
    )


def _on_bare(pattern: Pattern, marks: Collection[str]) -> str:
    """'3 French knots', where most knots in these marks have only bare cloth round them, or 'the lines', of which most has;
    else ''."""
    knots = [knot.at for knot in pattern.knots if knot.mark in marks]
    if knots and sum(_is_bare(pattern, at) for at in knots) > EDGE * len(knots):
        return counted(len(knots), "French knot")
    along = [at for line in pattern.lines if line.mark in marks for at in _along(line)]
    return "the lines" * (sum(_is_bare(pattern, at) for at in along) > EDGE * len(along))


def _is_bare(pattern: Pattern, at: Point) -> bool:
    """Whether nothing is worked in any square that the point is in or touches."""
    rows = pattern.grid.rows
    across, down = ({floor(one - 1), ceil(one - 1) - 1} for one in at)
    worked = {(one.column - 1, one.row - 1) for one in pattern.fractions}
    inside = [(x, y) for x in across for y in down if 0 <= x < len(rows[0]) and 0 <= y < len(rows)]
    return all(rows[y][x] == BARE and (x, y) not in worked for x, y in inside)


def _along(line: Line) -> Iterator[Point]:
    """Points of a line, half a stitch from one to the next."""
    for (x, y), (to_x, to_y) in pairwise(line.points):
        steps = max(1, round(2 * max(abs(to_x - x), abs(to_y - y))))
        for step in range(steps + 1):
            yield x + (to_x - x) * step / steps, y + (to_y - y) * step / steps


def _complain_of_ground(
    pattern: Pattern, colour: Colour, stitches: int, problems: Problems
) -> None:
    """Advice on half of all stitches or more in what is, to the eye, the colour of the model's cloth."""
    model = pattern.cloths[0]
    worked = sum(mark != BARE for row in pattern.grid.rows for mark in row)
    apart = difference(lab(colour.hex), lab(model.colour.hex))
    if apart <= SAME and stitches >= _GROUND * worked:
        problems.add(
            model.place,
            "ground-worked",
            stitches=f"{stitches:,}",
            of=f"{worked:,}",
            colour=f"{colour.number} {colour.name}",
            cloth=f"{model.cloth.name} in {model.colour.name}",
        )


def _marks_of(pattern: Pattern) -> dict[Colour, set[str]]:
    """The marks of each colour of the model's card that is worked alone."""
    model = pattern.thread_sets[0]
    found: dict[Colour, set[str]] = {}
    for line in pattern.key:
        threads, cards = line.threads[model.id], line.cards_in(model)
        if len(threads) == 1 and cards[0].id == model.card.id:
            found.setdefault(threads[0], set()).add(line.mark)
    return found


def _edge(pattern: Pattern, marks: Collection[str], outlined: Collection[_Spot]) -> Iterator[bool]:
    """For each side of a stitch beyond which another colour begins, whether bare cloth lies there and no line on it."""
    rows = pattern.grid.rows
    high, wide = len(rows), len(rows[0])
    worked = {(one.column - 1, one.row - 1) for one in pattern.fractions}
    for y, row in enumerate(rows):
        for x, mark in enumerate(row):
            if mark not in marks:
                continue
            for right, down in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                at = x + right, y + down
                inside = 0 <= at[0] < wide and 0 <= at[1] < high
                beyond = rows[at[1]][at[0]] if inside else BARE
                if beyond not in marks:
                    middle = 2 * x + 1 + right, 2 * y + 1 + down
                    yield beyond == BARE and at not in worked and middle not in outlined


def _near_lines(pattern: Pattern) -> Iterator[_Spot]:
    """All within half a stitch of a backstitch or a long stitch."""
    for line in pattern.lines:
        for x, y in _along(line):
            across, down = round(2 * (x - 1)), round(2 * (y - 1))
            for right in (-1, 0, 1):
                for below in (-1, 0, 1):
                    yield across + right, down + below
