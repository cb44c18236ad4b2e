"""Chart symbols: which code point shows a shape, and which colour gets which shape."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from packetgen.chart.shapes import NAMES, shape
from packetgen.chart.shapes_order import GIVING_ORDER

BLANK = "\ue000"  # a bare cell; a character of its own so that it survives text extraction


@dataclass(frozen=True)
class Symbol:
    """A shape as the chart uses it."""

    name: str
    code_point: str

    @property
    def ink(self) -> float:
        """The black share of its cell, 0 to 1."""
        return shape(self.name).ink


SHAPES: tuple[Symbol, ...] = tuple(
    Symbol(name, chr(ord(BLANK) + 1 + place)) for place, name in enumerate(NAMES)
)
_BY_NAME = {symbol.name: symbol for symbol in SHAPES}


def code_point(shape_name: str) -> str:
    """The private-use character that shows this shape; "blank" is the bare cell.

    Raises ValueError for a shape that does not exist.
    """
    if shape_name == "blank":
        return BLANK
    return _symbol(shape_name).code_point


def ink(shape_name: str) -> float:
    """The black share of the cell, 0 to 1. Raises ValueError for an unknown shape."""
    return 0.0 if shape_name == "blank" else _symbol(shape_name).ink


def _symbol(shape_name: str) -> Symbol:
    try:
        return _BY_NAME[shape_name]
    except KeyError:
        raise ValueError(f"There is no chart shape called {shape_name!r}.") from None


# Giving shapes to colours ---------------------------------------------------

_BLOCK = 30  # the first so many colours get the first so many shapes, in whatever order
_DENSE_SHARE = 1 / 10  # one stitch in ten or more: a light shape
_RARE_SHARE = 1 / 50  # fewer than one in fifty: a heavy shape


def assign(
    marks: tuple[str, ...], stitches: Mapping[str, int], pins: Mapping[str, str]
) -> dict[str, str]:
    """A shape name for every mark, all different.

    `marks` in the author's order, `stitches` the number of stitches of each
    (0 if missing), `pins` the shapes the author chose. Dense colours get light
    shapes and rare ones heavy, so that a chart reads evenly grey and a single
    stitch is not overlooked. Pins win; a pin for a mark not in `marks` still
    keeps its shape from the others. A mark keeps its shape when marks are added
    after it, when stitches change within its class (dense, middling, rare) and
    when a pin takes some other shape.

    Raises ValueError for an unknown or twice pinned shape, or when there are
    more marks than shapes.
    """
    _check_pins(pins)
    if len(set(marks) | set(pins)) > len(GIVING_ORDER):
        raise ValueError(
            f"{len(set(marks) | set(pins))} colours want a chart shape each, "
            f"but there are only {len(GIVING_ORDER)} shapes."
        )
    total = sum(stitches.get(mark, 0) for mark in marks)
    weights = {mark: _weight(stitches.get(mark, 0), total) for mark in marks}
    natural: dict[str, str] = {}
    for mark in marks:
        natural[mark] = _first_free(weights[mark], set(natural.values()))
    # Only now the pins: so a pin moves its own mark and the one it displaces, no other.
    given = {mark: pins.get(mark, natural[mark]) for mark in marks}
    pinned = set(pins.values())
    for mark in marks:
        if mark not in pins and given[mark] in pinned:
            held = pinned | set(given.values())
            untouched = held | set(natural.values())
            crowded = len(untouched) == len(GIVING_ORDER)
            given[mark] = _first_free(weights[mark], held if crowded else untouched)
    return given


def _check_pins(pins: Mapping[str, str]) -> None:
    holders: dict[str, str] = {}
    for mark, name in pins.items():
        _symbol(name)
        if name in holders:
            raise ValueError(
                f"The shape {name!r} is pinned to both {holders[name]!r} and {mark!r}."
            )
        holders[name] = mark


def _weight(count: int, total: int) -> int:
    """Wanted heaviness of a shape: 0 light, 1 middling, 2 heavy."""
    if count >= total * _DENSE_SHARE:
        return 0
    return 1 if count >= total * _RARE_SHARE else 2


def _first_free(weight: int, held: set[str]) -> str:
    return next(name for name in _wishes(weight) if name not in held)


def _wishes(weight: int) -> Iterator[str]:
    """All shapes, most fitting first: block by block, in each the wanted weight first."""
    nearest = sorted(range(3), key=lambda other: abs(other - weight))
    for start in range(0, len(GIVING_ORDER), _BLOCK):
        block = GIVING_ORDER[start : start + _BLOCK]
        rank = {name: i for i, name in enumerate(sorted(block, key=ink))}
        for wanted in nearest:
            yield from (name for name in block if rank[name] * 3 // len(block) == wanted)
