"""Charts as text and as tables; which file holds a pattern's chart."""

import csv
from collections import Counter
from collections.abc import Collection, Sequence

from packetgen.diagnostics import Place, Problems
from packetgen.load.chart import Chart, check_size
from packetgen.load.chart_habits import without_habits
from packetgen.load.examples import complain_of_example_remark
from packetgen.load.files import ContentFolder
from packetgen.load.headings import filled, headings, without_headings
from packetgen.load.pixels import chart_from_picture
from packetgen.load.words import LOST, listed, said
from packetgen.model import BARE
from packetgen.offered import bring_words

_SHORT = 12  # letters of a code
CHART_FILES = ("chart.txt", "chart.csv", "chart.png")


def chart_file(
    folder: ContentFolder, path: str, named: str | None, place: Place, problems: Problems
) -> str | None:
    """The name of the chart's file in the folder `path`:
    the one that is `named`, or the one that is there.
    """
    files = folder.files(path)
    if named is not None:
        if "/" in named or "\\" in named or ".." in named:
            problems.add(place, "outside-folder", name=said(named))
        elif not named.endswith((".txt", ".csv", ".png")):
            problems.add(place, "chart-kind", name=said(named))
        elif named not in files:
            hint = (
                f"the folder holds {listed(files[:5], 'and')}" if files else "the folder is empty"
            )
            problems.add(place, "file-missing", name=said(named), hint=hint)
        else:
            return named
        return None
    found = [name for name in CHART_FILES if name in files]
    if not found:
        folder.missing(
            path,
            "chart.txt",
            "draw one character for each stitch, '.' for bare cloth, or bring a drawing in with packetgen bring",
        )
    elif len(found) > 1:
        drawn = next((one for one in ("chart.csv", "chart.png") if one in found), "")
        bring = bring_words(folder.root, f"{path}/{drawn}", False) if drawn else ""
        asks = " (codes are asked)" if drawn == "chart.csv" else ""
        problems.add(
            Place(f"{path}/{found[-1]}"),
            "charts-several",
            found=listed(found, "and"),
            example=f"chart: {found[0]}",
            bring=f", or bring the {drawn[-3:].upper()} in{asks}: {bring}" if bring else "",
        )
    return found[0] if len(found) == 1 else None


def read_chart(
    folder: ContentFolder,
    path: str,
    colours: dict[str, list[str]] | None,
    marks: Collection[str] | None,
    problems: Problems,
) -> Chart | None:
    """The chart in the file `path`; None where there is nothing to check.

    marks: of the key, which tell stitches from headings; None where nobody can tell them.
    colours: for a picture, the marks that each colour ('#rrggbb') may stand for;
    None where the key is not sound.
    """
    if path.endswith(".png"):
        data = folder.picture(path)
        bring = bring_words(folder.root, path, False)
        return None if data is None else chart_from_picture(data, path, colours, bring, problems)
    text = folder.text(path)
    if text is None:
        return None
    complain_of_example_remark(text, path, folder.for_review)
    if path.endswith(".csv"):
        return _from_table(folder, text, path, marks, problems)
    chart = without_habits(_from_text(text, path), marks, problems)
    return None if chart is None else check_size(chart, problems)


def _from_text(text: str, path: str) -> Chart:
    lines = [line.rstrip(" \t") for line in text.split("\n")]
    while lines and not lines[-1]:
        lines.pop()
    remarks = 0
    while remarks < len(lines) and (not lines[remarks] or lines[remarks].startswith("#")):
        remarks += 1
    return Chart(tuple(lines[remarks:]), path, remarks + 1)


def _from_table(
    folder: ContentFolder,
    text: str,
    path: str,
    marks: Collection[str] | None,
    problems: Problems,
) -> Chart | None:
    """None where it is to be brought in, or too large."""
    table = _fields(text, path, problems)
    wide, high = filled(table)
    across, down = headings([fields[:wide] for fields in table[:high]], marks)
    top, left = int(bool(across)), int(bool(down))
    inside = without_headings(table, (wide, high), bool(across), bool(down))
    cells = [[field or BARE for field in fields] for fields in inside]
    codes = _own_codes(cells, marks)
    if across or down or codes:
        found = [f"headings ({', '.join((across or down)[:3])}, …)"] * bool(across or down)
        found += [f"codes of its own ({_begin(codes)})"] * bool(codes)
        bring = bring_words(folder.root, path, bool(across or down))
        problems.add(Place(path), "bring-table", what=" and ".join(found), bring=bring)
    parted: Sequence[Sequence[str]] = cells
    if not codes:
        usual = Counter(map(len, cells)).most_common(1)[0][0] if cells else 0
        parted = [_parted(row, usual, marks or ()) for row in cells]
        _complain_of_codes(cells, parted, path, top + 1, left + 1, problems)
    rows = ("".join(cell if len(cell) == 1 else LOST for cell in row) for row in parted)
    chart = check_size(Chart(tuple(rows), path, top + 1, left + 1), problems)
    return (
        None if codes else chart
    )  # how each is mended by hand would only speak against the command


def _own_codes(cells: Sequence[Sequence[str]], marks: Collection[str] | None) -> tuple[str, ...]:
    """What stands in cells as codes do, and is no mark of the key: of more than one sign and not only in one
    cell, or else at least half of what there is. A slip is none."""
    times = Counter(cell for row in cells for cell in row if cell != BARE and LOST not in cell)
    long = tuple(code for code in times if len(code) > 1)
    strange = tuple(code for code in times if len(code) > 1 or (marks and code not in marks))
    if len(strange) > 1 and 2 * len(strange) >= len(times):
        return strange
    return long if sum(times[code] for code in long) > 1 else ()


def _begin(codes: Sequence[str]) -> str:
    """The first of them, in a line that has to hold a command too."""
    short = (code if len(code) <= _SHORT else f"{code[: _SHORT - 1]}…" for code in codes[:2])
    return ", ".join([*map(said, short), *["…"] * (len(codes) > 2)])


def _parted(row: Sequence[str], usual: int, marks: Collection[str]) -> Sequence[str]:
    """A row that is too short by a comma lost, 'hl' for 'h,l', with these marks of the key in cells of their own."""
    run_together = [cell for cell in row if len(cell) > 1 and {*cell} <= {*marks, BARE}]
    if len(row) + sum(len(cell) - 1 for cell in run_together) != usual:
        return row
    return [mark for cell in row for mark in (cell if cell in run_together else (cell,))]


def _complain_of_codes(
    cells: Sequence[Sequence[str]],
    parted: Sequence[Sequence[str]],
    path: str,
    top: int,
    left: int,
    problems: Problems,
) -> None:
    """Report each text that is more than one mark once, in the first of its cells, and how it is `parted`, if it is; the first
    of all cells is at row `top`, column `left`."""
    told: set[str] = set()
    for number, (row, in_parts) in enumerate(zip(cells, parted, strict=True), top):
        for column, cell in enumerate(row, left):
            if len(cell) > 1 and cell not in told:
                told.add(cell)
                facts = {"what": said(cell), "spot": f"column {column}, row {number}"}
                facts["hint"] = "write one mark in a cell"
                if cell not in in_parts:
                    facts["hint"] = (
                        f"write {listed(cell, 'and')} in cells of their own: what parts them was lost"
                    )
                problems.add(Place(path, number, column), "cell-long", **facts)


def _fields(text: str, path: str, problems: Problems) -> list[list[str]]:
    """The table cell by cell, without the room round what stands in it; none where it is empty."""
    lines = text.rstrip("\n").split("\n")
    # A spreadsheet of a country that writes 2,5 for two and a half separates cells by ';'.
    first = lines[0]
    separator = (
        ";"
        if ";" in first and "," not in first
        else "\t"
        if "\t" in first and "," not in first
        else ","
    )
    rows = []
    for number, line in enumerate(lines, 1):
        try:
            fields = next(csv.reader([line], delimiter=separator, strict=True), [])
        except csv.Error:
            problems.add(Place(path, number), "table-row", row=number)
            fields = [LOST] * (line.count(separator) + 1)
        rows.append([field.strip() for field in fields])
    return rows if "".join(lines).strip() else []
