"""Points: 'x,y x,y' with a space between points and none inside."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Report
from packetgen.load.words import said, shown
from packetgen.units import plain

_PAIR = re.compile(r"(-?\d{1,6}(?:\.\d{1,9})?),(-?\d{1,6}(?:\.\d{1,9})?)", re.ASCII)
_N = r"-?\d{1,6}(?:\.\d{1,9})?"
_PLAIN = _N.removeprefix("-?")
_APART = rf"{_N}\s*,\s*{_N}"
_ON = r"(?:to|and|then|->|=>|>|→|–|—|-)"  # between two points, with blanks round it
_NAMED = rf"x\s*[=:]?\s*{_N}[\s,;]*y\s*[=:]?\s*{_N}"
# Other ways of writing points of which there is no doubt what is meant.
_MEANT = tuple(
    re.compile(way, re.ASCII)
    for way in (
        rf"{_APART}(?:(?:\s*[;|]\s*|,?\s+){_APART})*[;,]?",
        rf"{_N}\s*,\s+{_N}(?:\s*,\s+{_N}\s*,\s+{_N})*",
        rf"{_N}[,;/|]{_N}(?:\s+{_N}[,;/|]{_N})*",
        rf"\({_APART}\)(?:[\s,;]*\({_APART}\))*",
        rf"{_N}\s+{_N}(?:\s+{_N}\s+{_N})+",
        rf"{_N}\s+{_N}(?:\s*[;|,]\s*{_N}\s+{_N})+[;|]?",
        rf"(?:{_N},{_N}|{_N}\s+{_N})(?:\s+(?:{_N},{_N}|{_N}\s+{_N}))*",
        rf"{_N}[x×]{_N}(?:\s+{_N}[x×]{_N})*",
        rf"\(?{_APART}\)?(?:\s+{_ON}\s+\(?{_APART}\)?)+",
        rf"{_PLAIN},{_PLAIN}(?:[-–—]{_PLAIN},{_PLAIN})+",
        rf"{_NAMED}(?:[\s,;]+{_NAMED})*",
    )
)
_ALL_COMMAS = re.compile(rf"{_N},{_N}(?:,{_N},{_N}){{2,}},?", re.ASCII)  # of corners
_BETWEEN = re.compile(r"\d[-–—]\d", re.ASCII)  # a hyphen that belongs to no number
_TWO = re.compile(rf"({_N})\s+({_N})", re.ASCII)
_ONE_NUMBER = re.compile(r"\d{1,4}\.\d{1,4}", re.ASCII)  # where two belong
# Two points without a space between, of which the first ends in a part of a stitch: '7.5,1.511.5,1.5'.
_RUN_TOGETHER = re.compile(
    r"(\d{1,4}(?:\.\d{1,2})?,\d{1,4}\.(?:25|5|75))(\d{1,4}(?:\.\d{1,2})?,\d{1,4}(?:\.\d{1,2})?)",
    re.ASCII,
)
_QUARTERS = "0|00|25|5|50|75"
# Points with a comma before the quarters of both numbers, of the first or of the second.
_X, _Y = r"(?P<x>-?\d{1,6})", r"(?P<y>-?\d{1,6})"
_COMMAS = tuple(
    re.compile(way, re.ASCII)
    for way in (
        rf"{_X},(?P<X>{_QUARTERS}),{_Y},(?P<Y>{_QUARTERS})",
        rf"{_X},(?P<X>{_QUARTERS}),{_Y}(?P<Y>)",
        rf"{_X}(?P<X>),{_Y},(?P<Y>{_QUARTERS})",
    )
)
# '2,5;3,25' may be one point with decimal commas.
_DECIMAL_COMMAS = re.compile(r"\s*(?:\d+,(?:5|25|75)\s*[;|,]?\s*)+", re.ASCII)

_STOP_BETWEEN = re.compile(r"(\d{1,4}\.\d{1,2})\.(\d{1,4}\.\d{1,2})", re.ASCII)  # '32.5.20.5'

IN_MM = "x,y in mm"
_MM = re.compile(r"(?<=\d)\s*mm\b", re.ASCII)  # needless, since no other unit may stand there
_UNIT = re.compile(r"""(?<=\d)\s*(?:[cm]m|in|inch|inches|["'])(?![a-z])""", re.ASCII)


@dataclass(frozen=True)
class Spot:
    """A point, the author's own writing of it, and where it starts in the line."""

    x: float
    y: float
    said: str
    offset: int


def read_points(text: str, at_most: int, report: Report) -> tuple[Spot, ...] | None:
    """All points of `text`, each a quarter of a stitch or coarser;
    None where one cannot be read.
    """
    spots = read_spots(text, report, "column,row", "12,30.5")
    if spots is None:
        return None
    if len(spots) > at_most:
        report("list-long", 0, number=f"{len(spots)} points", limit=at_most)
        return None
    uneven = [spot for spot in spots if spot.x * 4 % 1 or spot.y * 4 % 1]
    for spot in uneven:
        report(
            "not-a-quarter",
            spot.offset,
            point=said(spot.said),
            better=said(f"{_quarter(spot.x)},{_quarter(spot.y)}"),
        )
    return None if uneven else spots


def _with_full_stops(words: Sequence[tuple[int, str]]) -> str:
    """Points whose decimals, all quarters of a stitch, have a comma before them: '9,5,4 4,2,25' → '9.5,4 4,2.25'; ''
    where that of one cannot be told."""
    points = []
    for _, word in words:
        if _PAIR.fullmatch(word):
            points.append(word)
            continue
        ways = [way for way in (form.fullmatch(word) for form in _COMMAS) if way]
        if len(ways) != 1:
            return ""
        x, more_x, y, more_y = ways[0].group("x", "X", "y", "Y")
        points.append(f"{x}{more_x and f'.{more_x}'},{y}{more_y and f'.{more_y}'}")
    return " ".join(points)


def read_cell(text: str, report: Report) -> tuple[int, int] | None:
    """'12,30' as column and row of one stitch."""
    if not re.fullmatch(r"\d{1,5},\d{1,5}", text.strip(), re.ASCII):
        report("not-a-stitch", 0)
        return None
    column, row = (int(part) for part in text.split(","))
    return column, row


def read_pair(text: str, report: Report) -> tuple[float, float] | None:
    """'0,0' as x and y in mm."""
    match = _PAIR.fullmatch(text.strip())
    if not match:
        apart = _TWO.fullmatch(text.strip())
        right = f"{apart[1]},{apart[2]}" if apart else _meant(text, IN_MM)
        stops = _with_full_stops([(0, text.strip())])
        hint = f"write {right}" if right and " " not in right else _written(IN_MM, "0,0")
        if _ONE_NUMBER.fullmatch(text.strip()):
            hint = f"write {text.strip().replace('.', ',')}"
        if text.count(",") > 1:
            hint = f"write a full stop before decimals, and one comma, {f'as in {stops}' if stops else 'for example 72.5,164'}"
        report("not-a-point", 0, point=said(text), hint=hint)
        return None
    return float(match[1]), float(match[2])


def read_spots(text: str, report: Report, how: str, example: str) -> tuple[Spot, ...] | None:
    """All points of `text`, whatever their decimals; None where one cannot be read. `how` points are written
    here, and an `example`."""
    words = [(match.start(), match[0]) for match in re.finditer(r"\S+", text)]
    spots = []
    wrong = []
    for offset, word in words:
        match = _PAIR.fullmatch(word)
        if match:
            spots.append(Spot(float(match[1]), float(match[2]), word, offset))
        else:
            wrong.append((offset, word))
    right = _meant(text, how) if wrong else ""
    stops = _with_full_stops(words) if wrong and how != IN_MM else ""
    once = right or stops or not spots or (how == IN_MM and _UNIT.search(text))
    for offset, word in wrong[:1] if once else wrong:
        hint = _written(how, example)
        if right:
            hint = f"write a comma in each point and a space between two: {shown(right)}"
        elif stops:
            hint = f"write a full stop before decimals, and one comma: {shown(stops)}"
        elif how != IN_MM and (two := _RUN_TOGETHER.fullmatch(word)):
            hint = f"write a space between two points: {two[1]} {two[2]}"
        elif _ONE_NUMBER.fullmatch(word):
            hint = f"write a comma between its numbers: {word.replace('.', ',')}"
        elif four := _STOP_BETWEEN.fullmatch(word):
            hint = f"write a comma between its numbers: {four[1]},{four[2]}"
        elif word.strip(",").count(",") > 1:
            hint = f"write a full stop before decimals, and one comma, for example {example}"
        report("not-a-point", offset, point=said(word), hint=hint)
    if not words:
        report("value-empty", 0)
    return tuple(spots) if words and len(spots) == len(words) else None


def _written(how: str, example: str) -> str:
    return f"write {how} without a space between, for example {example}"


def _meant(text: str, how: str) -> str:
    """The points of `text` as they are written here; '' where it can be taken for others, or for none."""
    in_mm = how == IN_MM
    text = _MM.sub("", text.strip()) if in_mm else text.strip()
    ways = (*_MEANT, _ALL_COMMAS) if in_mm else _MEANT
    if not any(way.fullmatch(text) for way in ways) or _DECIMAL_COMMAS.fullmatch(text):
        return ""
    numbers = re.findall(_PLAIN if _BETWEEN.search(text) else _N, text, re.ASCII)
    return " ".join(f"{x},{y}" for x, y in zip(numbers[::2], numbers[1::2]))


def _quarter(value: float) -> str:
    return f"{round(value * 4) / 4:g}"


def point_said(xy: Sequence[float]) -> str:
    """'12,30.5', as it is written."""
    return ",".join(plain(round(one, 2)) for one in xy)


def point_otherwise(written: str) -> Iterator[tuple[float, float]]:
    """The point as it may be meant: with a full stop that was lost, '155,48.5' → 15.5,48.5, or with two neighbouring figures of
    one of its numbers in each other's place, '12,41' → 12,14."""
    for number in re.finditer(r"(?<![\d.])(\d{1,3})(25|5|75)(?![\d.])", written):
        x, y = f"{written[: number.start()]}{number[1]}.{number[2]}{written[number.end() :]}".split(
            ","
        )
        yield float(x), float(y)
    for found in re.finditer(r"\d[1-9]", written):  # of three figures the first two
        start, end = found.span()
        turned = re.fullmatch(
            r"(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)", f"{written[:start]}{found[0][::-1]}{written[end:]}"
        )
        if turned and found[0] != found[0][::-1]:
            yield float(turned[1]), float(turned[2])


def point_with_figure(written: str) -> Iterator[tuple[float, float]]:
    """The point as it may be meant where a figure was lost: '2,23' → 20,23, 12,23, 2,123 …"""
    for place in re.finditer(r"(?<![\d.])(?=\d)|(?<=\d)(?![\d.])", written):
        before, behind = written[: place.start()], written[place.start() :]
        if "." not in before.rpartition(",")[2]:
            for figure in "0123456789":
                x, y = f"{before}{figure}{behind}".split(",")
                yield float(x), float(y)
