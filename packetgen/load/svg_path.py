"""A shape written as the data of an SVG path, flattened to its corners.

Commands and numbers are those of SVG 2, chapter 9 (Paths); an elliptical arc is turned from its end
points to its centre as in that standard's notes on implementing arcs. One closed shape is read: an
outline of wood has no holes.
"""

import re
from dataclasses import dataclass
from math import acos, atan2, ceil, cos, hypot, pi, radians, sin, sqrt

from packetgen.diagnostics import Report
from packetgen.load.sure import sure
from packetgen.load.words import said

Spot = tuple[float, float]

# How far a straight side may stand off the curve that it stands for. No saw follows a tenth of a
# millimetre; this is less, so that the areas of small parts come out right to a thousandth too.
FLAT_WITHIN_MM = 0.005
_MOST_SIDES = 2000  # of one curve
MOST_CORNERS = 5000  # of the whole shape
_GAP = re.compile(r"[\s,]*")
_THREE = re.compile(r"-?\d+,-?\d+,\d+", re.ASCII)
_USUAL = ": a lost number, comma or minus is the usual slip"
_NUMBER = re.compile(r"[+-]?(?:\d{1,9}\.?\d{0,12}|\.\d{1,12})(?:[eE][+-]?\d{1,2})?", re.ASCII)
_FLAG = re.compile(r"[01]")
_TAKES = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "A": 7, "Z": 0}
_BEGINS_PATH = re.compile(r"\s*[MmLlHhVvCcSsQqTtAaZz](?![A-Za-z])")


def is_path(text: str) -> bool:
    """Whether an outline is written as a path: a letter stands first, and not a word."""
    return bool(_BEGINS_PATH.match(text))


def path_corners(text: str, report: Report) -> list[Spot] | None:
    """The corners of the one shape that `text` draws; None where it cannot be read (reported).

    A side stands nowhere further than `FLAT_WITHIN_MM` from its curve. Raises OverflowError where one
    arc is so far from another that no number holds their ratio.
    """
    steps = _steps(text, report)
    if steps is None:
        return None
    pen = _Pen()
    for step in steps:
        pen.draw(step)
        if len(pen.corners) > MOST_CORNERS:
            number = f"more than {MOST_CORNERS} corners"
            report("list-long", step.begun, number=number, limit=MOST_CORNERS)
            return None
    return pen.corners


@dataclass(frozen=True)
class _Step:
    """One command with the numbers of one use of it."""

    letter: str
    numbers: tuple[float, ...]
    begun: int  # where its letter stands in the text


def _steps(text: str, report: Report) -> list[_Step] | None:
    """The commands one by one; a command whose numbers run on is given once for each use."""
    steps: list[_Step] = []
    at = _past_gap(text, 0)
    while at < len(text):
        letter = text[at]
        kind = letter.upper()
        if kind not in _TAKES:
            word = text[at:].split(maxsplit=1)[0]
            if letter.isalpha():
                hint = "the letters are M L H V C S Q T A Z, large or small"
            else:
                hint = "take it away, or write a comma"
            report("path-sign", at, sign=said(word), hint=hint)
            return None
        if not steps and kind != "M":
            report("path-start", at, letter=said(letter))
            return None
        if steps and (kind == "M" or (steps[-1].letter in "Zz" and kind != "Z")):
            report("path-second", at)
            return None
        begun, at = at, at + 1
        first, read = True, 0
        while True:
            here = _past_gap(text, at)
            if not first and (kind == "Z" or not _NUMBER.match(text, here)):
                at = here
                break
            numbers, at = _numbers(text, here, kind)
            if len(numbers) < _TAKES[kind]:
                takes = _TAKES[kind]
                report(
                    "path-numbers",
                    begun,
                    letter=said(letter),
                    takes=takes,
                    number=read + len(numbers),
                    better=_with_full_stop(text[begun + 1 :])
                    or (f"{read} or " if read else "") + f"{read + takes}{_USUAL}",
                )
                return None
            read += len(numbers)
            # Points that follow a first M without a letter are straight lines.
            follows = {"M": "L", "m": "l"}.get(letter, letter)
            steps.append(_Step(letter if first else follows, numbers, begun))
            first = False
    return steps


def _with_full_stop(after: str) -> str:
    """The one point behind the letter that has three numbers, with a full stop before what may be its decimals: '150,135,5'
    as '150,135.5'; '' where there is none."""
    numbers = re.split(r"[A-Za-z]", after, maxsplit=1)[0].split()
    odd = [one for one in numbers if _THREE.fullmatch(one)]
    if len(odd) != 1 or any("," not in one for one in numbers):
        return ""
    across, down, decimals = odd[0].split(",")
    return f"{across},{down}.{decimals} for {odd[0]}: decimals have a full stop"


def _past_gap(text: str, at: int) -> int:
    return sure(_GAP.match(text, at)).end()


def _numbers(text: str, at: int, kind: str) -> tuple[tuple[float, ...], int]:
    """As many numbers as the command takes, or as there are, and where the text goes on."""
    numbers: list[float] = []
    for index in range(_TAKES[kind]):
        sign = _FLAG if kind == "A" and index in (3, 4) else _NUMBER
        match = sign.match(text, _past_gap(text, at))
        if not match:
            break
        numbers.append(float(match[0]))
        at = match.end()
    return tuple(numbers), at


class _Pen:
    """Walks along the commands and keeps the corners."""

    def __init__(self) -> None:
        self.corners: list[Spot] = []
        self.at: Spot = (0.0, 0.0)
        self._handle: Spot | None = None  # of the last curve, for the smooth one after it
        self._curve = ""  # the kind of that curve: C or Q

    def draw(self, step: _Step) -> None:
        kind = step.letter.upper()
        if kind == "Z":
            return
        from_x, from_y = (0.0, 0.0) if step.letter.isupper() else self.at
        numbers, curve, handle = step.numbers, "", None
        if kind == "H":
            self._go([(numbers[0] + from_x, self.at[1])])
        elif kind == "V":
            self._go([(self.at[0], numbers[0] + from_y)])
        elif kind == "A":
            rx, ry, turned, large, sweep, x, y = numbers
            end = (x + from_x, y + from_y)
            self._go(_arc(self.at, rx, ry, turned, large != 0, sweep != 0, end))
        else:
            points = [
                (x + from_x, y + from_y) for x, y in zip(numbers[::2], numbers[1::2], strict=True)
            ]
            if kind in "CQST":
                curve = {"S": "C", "T": "Q"}.get(kind, kind)
                if kind in "ST":
                    points.insert(0, self._mirrored(curve))
                handle = points[-2]
                self._go(_bezier((self.at, *points)))
            else:
                self._go(points)
        self._handle, self._curve = handle, curve

    def _mirrored(self, curve: str) -> Spot:
        """The last handle seen from the other side, or the point itself after another command."""
        if self._handle is None or self._curve != curve:
            return self.at
        return 2 * self.at[0] - self._handle[0], 2 * self.at[1] - self._handle[1]

    def _go(self, corners: list[Spot]) -> None:
        for corner in corners:
            if not self.corners or corner != self.corners[-1]:
                self.corners.append(corner)
        self.at = corners[-1] if corners else self.at


def _bezier(points: tuple[Spot, ...]) -> list[Spot]:
    """A quadratic or cubic curve as straight sides, without its first point.

    Sides enough: √(n (n − 1) m / (8 · tolerance)) for a curve of degree n, m the largest second
    difference of its points (Wang's formula, from memory; the tests measure what is left).
    """
    degree = len(points) - 1
    most = max(
        hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1])
        for a, b, c in zip(points, points[1:], points[2:], strict=False)
    )
    sides = ceil(sqrt(degree * (degree - 1) * most / (8 * FLAT_WITHIN_MM)))
    sides = min(max(1, sides), _MOST_SIDES)
    inner = [_on_curve(points, step / sides) for step in range(1, sides)]
    return [*inner, points[-1]]


def _on_curve(points: tuple[Spot, ...], t: float) -> Spot:
    """The point at `t`, found by halving the polygon of handles (de Casteljau)."""
    while len(points) > 1:
        points = tuple(
            (a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]))
            for a, b in zip(points, points[1:], strict=False)
        )
    return points[0]


def _arc(
    start: Spot, rx: float, ry: float, turned: float, large: bool, sweep: bool, end: Spot
) -> list[Spot]:
    """An elliptical arc as straight sides, without its first point."""
    rx, ry = abs(rx), abs(ry)
    if start == end:
        return []
    if rx == 0 or ry == 0:
        return [end]
    c, s = cos(radians(turned)), sin(radians(turned))
    half_x, half_y = (start[0] - end[0]) / 2, (start[1] - end[1]) / 2
    x, y = c * half_x + s * half_y, c * half_y - s * half_x
    reach = (x / rx) ** 2 + (y / ry) ** 2
    if reach > 1:  # radii too small to reach the end are made just large enough
        rx, ry, reach = rx * sqrt(reach), ry * sqrt(reach), 1.0
    off = sqrt(max(0.0, 1 / reach - 1)) * (1 if large != sweep else -1)
    centre_x, centre_y = off * rx * y / ry, -off * ry * x / rx
    first = atan2((y - centre_y) / ry, (x - centre_x) / rx)
    last = atan2((-y - centre_y) / ry, (-x - centre_x) / rx)
    angle = (last - first) % (2 * pi) if sweep else -((first - last) % (2 * pi))
    sides = _sides_of_arc(max(rx, ry), abs(angle))
    middle_x, middle_y = (start[0] + end[0]) / 2, (start[1] + end[1]) / 2

    def at(turn: float) -> Spot:
        ux, uy = rx * cos(turn) + centre_x, ry * sin(turn) + centre_y
        return c * ux - s * uy + middle_x, s * ux + c * uy + middle_y

    return [*(at(first + angle * step / sides) for step in range(1, sides)), end]


def _sides_of_arc(radius: float, angle: float) -> int:
    """A side over an angle a stands off its circle by r (1 − cos(a / 2)) in the middle."""
    widest = 2 * acos(max(0.0, 1 - FLAT_WITHIN_MM / radius))
    return min(max(1, ceil(angle / widest)), _MOST_SIDES)
