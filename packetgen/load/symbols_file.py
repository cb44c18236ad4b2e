"""symbols.yaml: the chart symbols that a pattern has once got, and keeps when its key is edited."""

from collections.abc import Mapping
from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.load.documents import read_document
from packetgen.load.files import ContentFolder
from packetgen.load.references import resolve
from packetgen.load.schema import Field, Group, MapOf, Reference
from packetgen.load.words import offer, said
from packetgen.model import KeyLine
from packetgen.shape_names import SHAPE_NAMES

SYMBOLS_FILE = "symbols.yaml"
SYMBOLS = Group(
    "a list of kept symbols",
    (
        Field(
            "symbols",
            MapOf(Reference("a chart shape"), "marks of the key", "heart"),
            "The chart shape of each mark.",
            "{r: heart}",
        ),
    ),
)


def read_symbols(
    folder: ContentFolder, path: str, marks: tuple[str, ...] | None, problems: Problems
) -> Mapping[str, str]:
    """Mark → its kept shape, of the pattern in the folder `path`; empty where it has no such file.

    `marks` are those of the key and of the chart; None where nobody can tell.
    """
    if SYMBOLS_FILE not in folder.files(path):
        return {}
    filled = read_document(folder, f"{path}/{SYMBOLS_FILE}", SYMBOLS, problems)
    if filled is None:
        return {}
    kept: dict[str, str] = {}
    holders: dict[str, str] = {}
    for key, given in filled["symbols"] or ():
        mark = key.value
        shapes = dict.fromkeys(SHAPE_NAMES, given.value)
        shape = resolve(given.value, given.place, shapes, "chart shape", problems)
        if marks is not None and mark not in marks:
            problems.add(key.place, "symbol-left-over", mark=said(mark), hint=offer(mark, marks))
        if shape is None:
            continue
        holder = holders.setdefault(shape, mark)
        if holder != mark:
            problems.add(
                given.place, "symbol-twice", mark=said(mark), other=said(holder), symbol=said(shape)
            )
        kept[mark] = shape
    return kept


def with_kept(lines: tuple[KeyLine, ...], kept: Mapping[str, str]) -> tuple[KeyLine, ...]:
    """The key lines with their kept shapes. What a line of the key asks for goes before."""
    asked = {line.symbol for line in lines}
    return tuple(
        replace(line, symbol=shape)
        if line.symbol is None and (shape := kept.get(line.mark)) not in asked
        else line
        for line in lines
    )
