"""Files as office programs keep them, of which nothing is read but the plain text that they can be saved as."""

from collections.abc import Iterable
from difflib import get_close_matches

from packetgen.load.words import said

_DOCUMENTS = (".docx", ".odt", ".doc", ".rtf", ".pages", ".pdf")
_TABLES = (".xlsx", ".xls", ".ods", ".numbers")
_TEXTS = (".md", ".yaml", ".txt", ".csv")  # that are read here
# What such files begin with, whatever they are called.
_BEGINNINGS = {
    b"{\\rtf": "a document with its type and colours (RTF)",
    b"%PDF-": "a PDF",
    b"PK\x03\x04": "a document or a table as an office program keeps it",
    b"\xd0\xcf\x11\xe0": "a document or a table as an office program keeps it",
}
_NEAR = 0.75


def kept_as(data: bytes) -> str | None:
    """What kind of such a file it is, by how it begins."""
    return next((what for begins, what in _BEGINNINGS.items() if data.startswith(begins)), None)


def office_file_for(wanted: str, names: Iterable[str]) -> str | None:
    """The one of the files `names` that may hold what is to be called `wanted`: 'Story.docx' for 'story.md'."""
    if _ending(wanted) not in _TEXTS:
        return None
    stems = {_stem(name): name for name in names if _ending(name) in (*_DOCUMENTS, *_TABLES)}
    close = get_close_matches(_stem(wanted), stems, n=1, cutoff=_NEAR)
    return stems[close[0]] if close else None


def saved_for(name: str, wanted: Iterable[str]) -> str | None:
    """How what the file `name` holds comes into the first of the `wanted` that it may be; None where it is no
    such file, or none of these is near. A table takes the place of a chart as a table."""
    near = next((one for one in wanted if office_file_for(one, (name,))), None)
    if near is None:
        return None
    kind = "plain text"
    if _ending(name) in _TABLES and _ending(near) in (".txt", ".csv"):
        kind, near = "CSV", f"{_stem(near)}.csv"
    return f"save {said(name)} as {kind} (UTF-8) under the name {said(near)}"


def _stem(name: str) -> str:
    return name.rpartition(".")[0].casefold()


def _ending(name: str) -> str:
    return "." + name.rpartition(".")[2].casefold()
