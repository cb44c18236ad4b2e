"""A design written down: a table with a field a stitch, or a grid with a sign a stitch."""

import csv
import re
import shlex
from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from packetgen.bring.chart_text import first_line, remarks_of, rows_of
from packetgen.bring.codes import BARE_WORDS, Codes, is_colour
from packetgen.bring.drawing import Drawing, Wish
from packetgen.bring.given_codes import complain_of_given, options
from packetgen.bring.headings import column_of_sums, counted_columns, headings, rows_beside
from packetgen.bring.legends import (
    Legend,
    legend_of,
    legend_of_signs,
    strange_in_legend,
    title_above,
)
from packetgen.colour import channels
from packetgen.diagnostics import MOST_ALIKE, Place, Problems
from packetgen.load.chart import LARGEST, blank_said
from packetgen.load.headings import filled, without_headings
from packetgen.load.headings import headings as counted_headings
from packetgen.load.words import LOST, counted, offer, said, shown
from packetgen.model import BARE, Stitch
from packetgen.nouns import listed

_HEADINGS_SHOWN = 3  # enough to know them by
_LEGEND_SHOWN = 6
_NOUGHTS_SHOWN = 4  # numbers
_LEGEND = re.compile(r"#\s+(\S)\s+(\S+)")


@dataclass(frozen=True)
class Unexplained:
    """Codes that stand for nothing known, each with its stitches, as they come; none where the file has other
    faults. And what of the author's own list is told already: it cannot be of one code."""

    stitches: Mapping[str, int]
    misgiven: frozenset[tuple[str, str]] = frozenset()


def read_table(
    text: str, path: str, codes: Codes, headed: bool | None, problems: Problems
) -> Drawing | Unexplained | None:
    """A CSV: one field a stitch; '' or '.' is bare cloth.

    `headed` says whether it has headings, which are left out; with None, what looks like them is told.
    """
    lines = text.rstrip("\n").split("\n")
    separator = max(",;\t", key=lambda one: sum(one in line for line in lines))  # a title has none
    table = []
    for number, line in enumerate(lines, 1):
        try:
            fields = next(csv.reader([line], delimiter=separator, strict=True), [])
            table.append([field.strip() for field in fields])
        except csv.Error:
            problems.add(Place(path, number), "table-row", row=number)
            return None
    codes = codes.for_signs({field for row in table for field in row})

    def meaning(code: str) -> tuple[str, Wish] | None:
        return codes.listed(code) or codes.meaning(code) or codes.of_key(code)

    told = []
    legend = legend_of(table, codes.is_thread) if headed is not False else None
    if legend:
        told.append(f"{legend.where} are a legend and left out: {_taken(legend.said)}")
        codes = replace(codes, given=(*legend.said, *codes.given))
        table = [list(row) for row in legend.stitches]
    above = legend.above if legend else 0
    part = wide, high = filled(table)
    all_rows = [[field or BARE for field in fields] for fields in table]
    if headed is False or max(part) > LARGEST + 1:
        return _drawing(all_rows, path, meaning, codes, problems, 1 + above)
    rows = [row[:wide] for row in all_rows[:high]]
    beside = _complain_of_beside(
        rows, path, above, lambda field: meaning(field) is not None, problems
    )
    if beside or _complain_of_beyond(rows, path, above, problems):
        if headed is None:
            _complain_of_what_to_leave_out((), legend, path, problems)
        return None
    across, down = headings(rows, lambda field: meaning(field) is not None, codes.own)
    if headed:  # fewer fields that are counted through are enough where there are headings
        loosely = counted_headings(rows, ())
        across, down = max((across, down), loosely, key=lambda of: sum(map(bool, of)))
        across = across if across or down or legend else rows[0]
    named = tuple(_named(across, down, above))
    told += [f"{one} is headings and left out" for one in named]
    if headed is None:
        _complain_of_what_to_leave_out(named, legend, path, problems)
    top, left = int(bool(across)), int(bool(down))
    rows = without_headings(all_rows, part, bool(across), bool(down))
    told += _beyond(table, wide if across else None, high if down else None)
    told += _shorter(rows, above + top + 1)
    drawing = _drawing(rows, path, meaning, codes, problems, above + top + 1, left + 1)
    if not isinstance(drawing, Drawing):
        return drawing
    return replace(drawing, told=(*told, *drawing.told))


def _taken(legend: Sequence[tuple[str, str]]) -> str:
    """'PK is 118, PU is 110'; of a long one how many there are more."""
    named = [(code, "bare cloth" if one.casefold() in BARE_WORDS else one) for code, one in legend]
    words = [f"{code} is {thread}" for code, thread in named[:_LEGEND_SHOWN]]
    more = len(legend) - len(words)
    return ", ".join(words) + (f" and {more} more" if more else "")


def _complain_of_beside(
    rows: Sequence[Sequence[str]],
    path: str,
    above: int,
    known: Callable[[str], bool],
    problems: Problems,
) -> bool:
    """Report a title above the table, which begins below so many lines, and sums below it or beside; whether there is
    any."""
    titles, sums = rows_beside(rows, known)
    found = [(1, "above", "a title")] * bool(titles)
    found += [(n, "below", "a sum") for n in range(len(rows) - sums + 1, len(rows) + 1)]
    for number, side, what in found:
        where = f"row {above + number} ({_few_words(rows[number - 1])})"
        if side == "above" and titles > 1:
            where += ", with the empty row below it,"
        place = Place(path, above + number)
        problems.add(place, "bring-beside", where=where, side=side, what=what)
    column = column_of_sums(rows[titles : len(rows) - sums])
    if column is not None:
        words = _few_words([row[column] for row in rows[titles:] if len(row) > column])
        place = Place(path, above + titles + 1, column + 1)
        facts = {"where": f"column {column + 1} ({words})", "side": "beside"}
        problems.add(place, "bring-beside", **facts, what="the sum of each row")
    return bool(found) or column is not None


def _few_words(fields: Sequence[str]) -> str:
    words = [said(field) for field in fields if field != BARE]
    return ", ".join(words[:_HEADINGS_SHOWN] + ["…"] * (len(words) > _HEADINGS_SHOWN))


def _complain_of_beyond(
    rows: Sequence[Sequence[str]], path: str, above: int, problems: Problems
) -> bool:
    """Report what stands to the right of headings that count the columns and end before it; whether there is any."""
    last = counted_columns(rows)
    found = [
        (number, column, field)
        for number, row in enumerate(rows, 1)
        for column, field in enumerate(row[last:], last + 1)
        if field != BARE
    ]
    for number, column, field in found if last else ():
        problems.add(
            Place(path, above + number, column),
            "bring-beyond",
            what=said(field),
            last=said(rows[0][last - 1]),
        )
    return bool(found and last)


def _beyond(table: Sequence[Sequence[str]], wide: int | None, high: int | None) -> Iterator[str]:
    """What is empty beyond so many columns and rows, which headings count."""
    columns = max(map(len, table)) - wide if wide else 0
    rows = len(table) - high if high else 0
    found = [f"{counted(columns, 'empty column')} at the right"] * bool(columns)
    found += [f"{counted(rows, 'empty row')} at the end"] * bool(rows)
    if found:
        yield f"{' and '.join(found)}, beyond the headings, left out"


def _shorter(rows: Sequence[Sequence[str]], top: int) -> Iterator[str]:
    """That rows have fewer fields than others; line `top` of the file is the first of them."""
    wide = max(map(len, rows), default=0)
    short = [(number, len(row)) for number, row in enumerate(rows, top) if len(row) < wide]
    if short:
        (number, fields), more = short[0], len(short) - 1
        others = f", with {counted(more, 'row')} more," if more else ""
        yield (
            f"row {number}{others} has fewer fields than others ({fields} of {wide}) and ends in bare cloth: "
            "see that none is missing"
        )


def _named(across: Sequence[str], down: Sequence[str], above: int) -> Iterator[str]:
    """Where headings stand, with the first of them."""
    for where, fields in ((f"row {above + 1}", across), ("column 1", down)):
        if words := _few_words(fields):
            yield f"{where} ({words})"


def _complain_of_what_to_leave_out(
    headings: tuple[str, ...], legend: Legend | None, path: str, problems: Problems
) -> None:
    """One line for all that one option leaves out."""
    of_legend = ", ".join((*map(said, legend.said[0]), "…")) if legend else ""
    if headings:
        looks = "looks" if len(headings) == 1 else "look"
        what = f"{listed(headings)} {looks} like headings"
        what += f", and {legend.where} ({of_legend}) like a legend" if legend else ""
        one = not legend and len(headings) == 1
        them, are = ("it", "it is") if one else ("them", "they are")
        problems.add(Place(path), "bring-headings", what=what, them=them, are=are)
    elif legend:
        place = Place(path, legend.line)
        problems.add(place, "bring-legend", where=legend.where, what=of_legend)


def read_signs(
    text: str, path: str, codes: Codes, problems: Problems
) -> Drawing | Unexplained | None:
    """A plain grid: one sign a stitch; '.' or a space is bare cloth. Remarks above it may say the thread of
    a sign: '# w  C1 chalk white', and so may lines that an empty one parts from it: 'w = C1'."""
    told: tuple[str, ...] = ()
    if found_legend := legend_of_signs(text.split("\n"), codes.is_thread):
        told = (f"{found_legend.where} are a legend and left out: {_taken(found_legend.said)}",)
        codes = replace(codes, given=(*found_legend.said, *codes.given))
        text = "\n".join(found_legend.grid)
    elif strange := strange_in_legend(text.split("\n"), codes.is_thread):
        facts = {"where": strange.where, "what": said(strange.word), "card": shown(codes.card_name)}
        problems.add(
            Place(path, strange.line), "bring-legend-word", **facts, sign=shown(strange.sign)
        )
        return None
    lines = text.split("\n")
    if (number := title_above(lines)) is not None:
        told += (f"line {number + 1} is a title, and kept as a remark",)
        lines[number] = f"# {lines[number].strip()}"
        text = "\n".join(lines)
    remarks = remarks_of(text)
    rows = [list(row.replace(" ", BARE)) for row in rows_of(text)]
    codes = codes.for_signs({sign for row in rows for sign in row})
    found = (_LEGEND.match(line) for line in remarks.split("\n"))
    legend = {match[1]: match[2] for match in found if match}

    def meaning(sign: str) -> tuple[str, Wish] | None:
        if sign in codes.own:
            return _with_mark(codes.listed(sign), sign)
        return codes.of_key(sign) or _with_mark(codes.meaning(legend.get(sign, sign)), sign)

    drawing = _drawing(rows, path, meaning, codes, problems, first_line(text))
    if not isinstance(drawing, Drawing):
        return drawing
    return replace(drawing, remarks=remarks, told=(*told, *drawing.told))


def _with_mark(found: tuple[str, Wish] | None, mark: str) -> tuple[str, Wish] | None:
    if found is None:
        return None
    return found[0], Wish(mark, found[1].number, Stitch.FULL, found[1].coloured)


def _drawing(
    rows: list[list[str]],
    path: str,
    meaning: Callable[[str], tuple[str, Wish] | None],
    codes: Codes,
    problems: Problems,
    top: int = 1,
    left: int = 1,
) -> Drawing | Unexplained | None:
    """The drawing of rows of codes, of which short ones end in bare cloth; line `top` of the file is the
    first, and its field `left` the first of each."""
    height, width = len(rows), max(map(len, rows), default=0)
    if max(width, height) > LARGEST:
        problems.add(Place(path), "chart-large", width=width, height=height, limit=LARGEST)
        return None
    rows = [row + [BARE] * (width - len(row)) for row in rows]
    bare = {code for code, meant in codes.own.items() if codes.is_bare(meant)}
    met = Counter(code for row in rows for code in row if code != BARE)
    rows = [[BARE if code in bare else code for code in row] for row in rows]
    times = {code: number for code, number in met.items() if code not in bare}
    first: dict[str, Place] = {}
    for line, row in enumerate(rows, top):
        for column, code in enumerate(row, left):
            if code not in first:
                first[code] = Place(path, line, column)
    if not times:
        problems.add(Place(path), "bring-all-bare")
        return None
    misgiven = dict(complain_of_given(codes, met, path, problems))
    named = {code for parts in misgiven.values() for code, _ in parts}
    numbers, colours, wishes = {BARE: 0}, [], {}
    unknown: dict[str, int] = {}
    robbed = _robbed([one for one in times if one not in named and meaning(one) is None], codes)
    spoilt = False
    for code in times:  # in the order in which they come
        found = meaning(code)
        if found is None:
            if LOST in code:
                spoilt = True
                continue  # told already
            if code.isspace():
                spoilt = True
                spot = f"column {first[code].column - left + 1}, row {first[code].line - top + 1}"
                hint = "write '.' for bare cloth"
                what = blank_said(code)
                problems.add(first[code], "chart-space", what=what, spot=spot, hint=hint)
                continue
            if code in named:
                continue  # explained, though not as it can be read
            unknown[code] = times[code]
            if code in codes.own:
                continue  # what is said of it cannot be: told where it is said
            if code in robbed:
                continue
            near = codes.nearest(code)
            problems.add(
                first[code],
                "bring-code-unknown",
                what=said(code),
                number=counted(times[code], "stitch", "stitches"),
                card=codes.card_name,
                nearest=f"; did you mean {said(f'{near.number} {near.name}')}?"
                if near
                else _or_bare(code),
            )
            if len(unknown) > MOST_ALIKE:  # more of them are not shown
                return Unexplained({}, frozenset(misgiven))
            continue
        colours.append(channels(found[0]))
        numbers[code] = len(colours)
        wishes[len(colours)] = replace(found[1], code=code)
    _complain_of_noughts(robbed, first, codes, problems)
    for code in codes.own:
        if code not in met and (code, codes.own[code]) not in misgiven:
            known = tuple(one for one in met if not is_colour(one))
            problems.add(
                Place(path), "bring-code-unused", what=said(code), nearest=offer(code, known)
            )
    if spoilt or unknown or misgiven:
        return Unexplained({} if spoilt else unknown, frozenset(misgiven))
    cells = np.array([[numbers[code] for code in row] for row in rows], np.int32)
    told = tuple(f"{said(code)} is bare cloth" for code in met if code in bare)
    return Drawing(cells, np.array(colours, np.uint8), wishes, told=told)


def _robbed(unknown: Sequence[str], codes: Codes) -> dict[str, str]:
    """The codes that a spreadsheet robbed of the noughts before them, each with its number on the card; none where
    other numbers mean nothing either."""
    numbers = [code for code in unknown if code.isdecimal() and code not in codes.own]
    found = {code: one.number for code in numbers if (one := codes.without_noughts(code))}
    return found if len(found) == len(numbers) else {}


def _complain_of_noughts(
    robbed: Mapping[str, str], first: Mapping[str, Place], codes: Codes, problems: Problems
) -> None:
    """One line for all numbers that a spreadsheet robbed of their noughts: it is one slip."""
    if robbed:
        more = len(robbed) - _NOUGHTS_SHOWN
        words = [*map(said, robbed)][:_NOUGHTS_SHOWN] + [f"{more} more"] * (more > 0)
        one = len(robbed) == 1
        problems.add(
            first[next(iter(robbed))],
            "bring-noughts",
            what=f"{listed(tuple(words))} {'is a number' if one else 'are numbers'}",
            card=codes.card_name,
            them="it" if one else "them",
            words=options(tuple(robbed.items())),
        )


def _or_bare(code: str) -> str:
    """A sign like '-' is often bare cloth."""
    sign = len(code) == 1 and not code.isalnum() and shown(code) == code
    return f", or --code {shlex.quote(f'{code}=.')} if it is bare cloth" if sign else ""
