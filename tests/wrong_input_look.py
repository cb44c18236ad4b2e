"""Looks of a series that could not be read, or not be handed on.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

import io
from importlib.resources import files

from fontTools.ttLib import TTFont

from tests.content_builder import SERIES, TINY, Change
from tests.wrong_input_case import Case

FILE = "series/garden-year/series.yaml"
FOLDER = "series/garden-year"
OWN = files("packetgen") / "fonts"


def look(*lines: str, **more: Change) -> dict[str, Change]:
    """The tiny series with a block `look` of these lines, the first on line 20; font files beside it."""
    block = "look:\n" + "".join(f"  {line}\n" for line in lines)
    return {SERIES: TINY[SERIES] + block} | {
        f"{FOLDER}/{name}": data for name, data in more.items()
    }


def font(embedding: int = 0, name: str = "heading.ttf", padding: int = 0) -> bytes:
    """One of the project's own faces, with these bits in OS/2.fsType and so many needless bytes."""
    face = TTFont(io.BytesIO((OWN / name).read_bytes()), recalcTimestamp=False)
    face["OS/2"].fsType = embedding
    data = io.BytesIO()
    face.save(data)
    return data.getvalue() + bytes(padding)


CASES = (
    Case(
        "a colour of the look without its sign",
        look('light: {ink: "2b2b24"}'),
        f"""{FILE}:20:17: 'ink' is '2b2b24', which is not a colour of six digits or letters a to f; write the sign # before it: "#2b2b24\"""",
    ),
    Case(
        "a colour that no page has",
        look('light: {inks: "#2b2b24"}'),
        f"{FILE}:20:11: 'inks' is not part of a set of colours; did you mean 'ink'?",
    ),
    Case(
        "a face that is a picture",
        look("heading: title.png"),
        f"{FILE}:20:12: 'title.png' is no file of a face that is read here; give a file that ends in .ttf, .otf or .woff2",
    ),
    Case(
        "a face outside the folder",
        look("heading: ../title.ttf"),
        f"{FILE}:20:12: '../title.ttf' lies outside its folder; move the file in, and write its bare name, without '/' or '..'",
    ),
    Case(
        "a face that is not there",
        look("heading: title.ttf"),
        f"{FILE}:20:12: there is no file 'title.ttf' here; put the file there",
    ),
    Case(
        "a face under another name",
        look("heading: title.ttf", **{"titles.ttf": font()}),
        f"{FILE}:20:12: there is no file 'title.ttf' here; the folder holds 'titles.ttf'",
        f"{FOLDER}/titles.ttf:1:1: advice: nothing reads 'titles.ttf'; did you mean 'title.ttf'? (a name that begins with '_' is left alone)",
    ),
    Case(
        "a face that is a letter to the editor",
        look("heading: title.ttf", **{"title.ttf": b"Dear Sir"}),
        f"{FILE}:20:12: 'title.ttf' cannot be read as a font; fetch the file once more from where it comes from",
    ),
    Case(
        "a face cut off in the middle",
        look("heading: title.ttf", **{"title.ttf": font()[:9000]}),
        f"{FILE}:20:12: 'title.ttf' cannot be read as a font; fetch the file once more from where it comes from",
    ),
    Case(
        "a face that may not be embedded",
        look("heading: title.ttf", **{"title.ttf": font(0x0002)}),
        f"{FILE}:20:12: the maker of 'title.ttf' does not allow any embedding (the file itself says so); take another face, or ask the maker for a file that may be embedded",
    ),
    Case(
        "a face of which only pictures of letters may be embedded",
        look("heading: title.ttf", **{"title.ttf": font(0x0200)}),
        f"{FILE}:20:12: the maker of 'title.ttf' does not allow embedding of outlines (the file itself says so); take another face, or ask the maker for a file that may be embedded",
    ),
    Case(
        "a face that may only be embedded whole",
        look("heading: title.ttf", **{"title.ttf": font(0x0108)}),
        f"{FILE}:20:12: the maker of 'title.ttf' does not allow embedding of the letters in use alone (the file itself says so); take another face, or ask the maker for a file that may be embedded",
    ),
    Case(
        "a face for print and preview",
        look("heading: title.ttf", **{"title.ttf": font(0x0004)}),
        f"{FILE}:20:12: advice: the maker of 'title.ttf' allows it in documents to read and print; a site hands out the file itself; look whether its licence has a word on web pages",
    ),
    Case(
        "a face as heavy as a page",
        look("heading: title.ttf", **{"title.ttf": font(padding=200_000)}),
        f"{FILE}:20:12: advice: 'title.ttf' has 236 kB, which every reader of the site must load; stay below 200 kB: a .woff2 file, or one with only the letters that you need",
    ),
    Case(
        "a plain face with no bold",
        look("text: plain.ttf", **{"plain.ttf": font()}),
        f"{FILE}:20:9: advice: 'plain.ttf' has no bold beside it, so bold words stand in the project's own face; add a line, for example text_bold: bold.ttf",
    ),
    Case(
        "a face that lacks letters of the titles",
        look("heading: title.ttf", **{"title.ttf": font(name="text-bold-ext.ttf")}),
        f"{FILE}:20:3: advice: 'title.ttf' lacks 'F', 'G', 'O', 'T', 'Y' and 'a' (and 12 more), which this series has in its titles; they are set in the project's own face; take a face that has them",
    ),
)
