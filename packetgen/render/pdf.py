"""Sets a packet in the PDF engine: tagged, bookmarked, fonts embedded, for both papers at once.

The pages are laid out on the area that Letter and A4 share (210 × 279.4 mm) and centred on either
paper, so both have the same pages with the same numbers. The only module that knows the engine.
"""

import logging
import os
from collections.abc import Mapping
from functools import partial
from importlib.resources import files

import pydyf

from packetgen.render.faces import font_files

# ISO 216 (A4) and ANSI/ASME Y14.1 size A (Letter), mm.
PAPERS_MM: Mapping[str, tuple[float, float]] = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}
COMMON_MM = (210.0, 279.4)
_POINTS_PER_MM = 72 / 25.4
# The alternative text of a chart page begins with this; see `_fold_charts`.
CHART_ALT = "Chart page"


class EngineComplaint(Exception):
    """The engine warned or failed; a packet with a warning is not published."""


def packets(html: str, assets: Mapping[str, bytes], identifier: bytes) -> dict[str, bytes]:
    """The packet as one PDF for each paper of PAPERS_MM.

    `assets` are the files that the HTML may name as `asset:NAME`; nothing else is fetched.
    Raises EngineComplaint with the engine's own words.
    """
    _use_no_system_fonts()
    from weasyprint import HTML  # takes a second to load, and only builds need it

    complaints = _Complaints()
    logger = logging.getLogger("weasyprint")
    logger.addHandler(complaints)
    try:
        document = HTML(string=html, base_url="asset:", url_fetcher=_fetcher(assets)).render(
            pdf_variant="pdf/ua-1"
        )
        result = {
            paper: document.write_pdf(
                finisher=partial(_finish, size_mm=size_mm),
                pdf_variant="pdf/ua-1",
                pdf_identifier=identifier,
            )
            for paper, size_mm in PAPERS_MM.items()
        }
    finally:
        logger.removeHandler(complaints)
    if complaints.lines:
        raise EngineComplaint("; ".join(complaints.lines))
    return result


def _finish(_document: object, pdf: pydyf.PDF, size_mm: tuple[float, float]) -> None:
    """The last touches before the file is written."""
    _fold_charts(pdf)
    _print_links(pdf)
    _set_paper(pdf, size_mm)


class _Complaints(logging.Handler):
    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(record.getMessage())


def _fetcher(assets: Mapping[str, bytes]) -> object:
    from weasyprint.urls import FatalURLFetchingError, URLFetcher, URLFetcherResponse

    class OwnFilesOnly(URLFetcher):
        """Serves `asset:` names from memory and refuses all else."""

        def fetch(self, url: str, headers: object = None) -> URLFetcherResponse:
            name = url.removeprefix("asset:")
            found = assets.get(name) or font_files().get(name)
            if found is None:
                raise FatalURLFetchingError(f"a packet may not fetch {url!r}")
            kind = {"svg": "image/svg+xml", "png": "image/png", "jpg": "image/jpeg"}
            content_type = kind.get(name.rpartition(".")[2], "application/octet-stream")
            return URLFetcherResponse(url, found, {"Content-Type": content_type})

    return OwnFilesOnly()


def _use_no_system_fonts() -> None:
    """Hides the machine's fonts: a letter that the project's own faces lack must look the same
    everywhere, not be borrowed from whatever is installed."""
    os.environ["FONTCONFIG_FILE"] = str(files("packetgen") / "fonts" / "fonts.conf")


def _set_paper(pdf: pydyf.PDF, size_mm: tuple[float, float]) -> None:
    side, head = ((paper - common) / 2 for paper, common in zip(size_mm, COMMON_MM))
    box = [
        round(edge * _POINTS_PER_MM, 3)
        for edge in (-side, -head, COMMON_MM[0] + side, COMMON_MM[1] + head)
    ]
    for page in pdf.objects:
        if isinstance(page, pydyf.Dictionary) and page.get("Type") == "/Page":
            for name in ("MediaBox", "TrimBox", "BleedBox"):
                page[name] = pydyf.Array(box)


def _fold_charts(pdf: pydyf.PDF) -> None:
    """Makes each chart one figure with one alternative text.

    The engine tags the tints as a figure and the symbol rows beside it as text, which a screen reader
    would spell as private characters. The element that holds both becomes the figure instead.
    """
    by_reference = {
        item.reference: item
        for item in pdf.objects
        if isinstance(item, pydyf.Dictionary) and item.get("Type") == "/StructElem"
    }
    for figure in list(by_reference.values()):
        alt = figure.get("Alt")
        if figure["S"] != "/Figure" or not alt or not alt.string.startswith(CHART_ALT):
            continue
        holder = by_reference[figure["P"]]
        holder["S"], holder["Alt"], holder["A"] = "/Figure", alt, figure["A"]
        for kid in holder["K"]:
            inner = by_reference.get(kid)
            if inner is not None and inner["S"] == "/Figure":
                inner["S"] = "/NonStruct"
                inner.pop("Alt", None)
                inner.pop("A", None)


def _print_links(pdf: pydyf.PDF) -> None:
    """Sets the flag that link areas may be printed (ISO 32000-1, 12.5.3): PDF/UA asks for it."""
    for item in pdf.objects:
        if isinstance(item, pydyf.Dictionary) and item.get("Subtype") == "/Link":
            item["F"] = 4
